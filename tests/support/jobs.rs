//! Jobs of every kind for property tests. A test takes this file in with
//! `#[path = "support/jobs.rs"] mod jobs;`.
//!
//! [`any_job`] holds back nothing that a job can be: every section and hole, every choice, numbers that are
//! negative, nought or huge, sums, fractions, inch and millimetre, titles in any script. Half of its jobs keep to
//! the sizes of a workshop, so that most of them can be planned to the end.
#![allow(dead_code, reason = "each test uses a part of it")]

#[path = "records.rs"]
mod records;
#[path = "shops.rs"]
mod shops;

use std::fmt::Debug;
use std::ops::{Range, RangeInclusive};

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
pub(crate) use records::record;
pub(crate) use shops::{setup, shop};
use skimwright::job::{
    Bore, BoreBottom, BoreEnd, Cut, Datum, Duty, Feature, Flats, FormVersion, HeadPiece, Hole, Job,
    Part, Place, Receiver, Section, Tolerance, Turned, Wanted,
};
use skimwright::quantity::{Dimension, Entered, Entry, Length, Number, Term, Typed, Unit};
use skimwright::tables::{
    CentreDrillSize, ColletSize, CuttingGroup, FileBite, HoleClass, SeatLoad, ShaftClass,
    ShankSize, SleeveDuty, TaperSize, ThreadSize, WorkMaterial,
};

/// Which numbers a job is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Numbers {
    /// One term, not below zero, of the size that its unit is used for.
    Usual,
    /// Everything that an entry can hold.
    Any,
}

/// Any job within the limits of its form.
pub(crate) fn any_job() -> impl Strategy<Value = Job> {
    prop_oneof![job(Numbers::Usual).boxed(), job(Numbers::Any).boxed()]
}

/// A job of one sort of numbers.
pub(crate) fn job(numbers: Numbers) -> impl Strategy<Value = Job> {
    // Boxed: a tree of all of them at once is too much for the stack of a test.
    (
        title().boxed(),
        part(numbers).boxed(),
        wanted(numbers).boxed(),
        shop(numbers).boxed(),
        setup(numbers).boxed(),
        record(numbers).boxed(),
    )
        .prop_map(|(title, part, wanted, shop, setup, record)| Job {
            version: FormVersion,
            title,
            part,
            wanted,
            shop,
            setup,
            record,
        })
}

/// A title of up to the most characters, most of them such as people write.
pub(crate) fn title() -> impl Strategy<Value = String> {
    let letter = prop_oneof![
        6 => proptest::char::range(' ', '~'),
        1 => select(vec!['é', 'ß', 'Ø', '½', 'я', '軸', '\u{301}', '\u{200f}', '\0', '\n', '😀']),
        1 => any::<char>(),
    ];
    vec(letter, 0..=Job::MOST_TITLE_CHARACTERS).prop_map(|letters| letters.into_iter().collect())
}

/// Any entry that measures `dimension`.
pub(crate) fn entry(dimension: Dimension, numbers: Numbers) -> BoxedStrategy<Entry> {
    let count = match numbers {
        Numbers::Usual => Just(1).boxed(),
        Numbers::Any => match dimension.most_terms() {
            ..=1 => Just(1).boxed(),
            most => prop_oneof![4 => Just(1), 1 => 2..=most].boxed(),
        },
    };
    count
        .prop_flat_map(move |count| vec(term(dimension, numbers), count))
        .prop_map(|terms| Entry::from_terms(terms).expect("terms of one dimension"))
        .boxed()
}

/// Any entry of a quantity.
pub(crate) fn entered<Q: Typed + Debug + 'static>(
    numbers: Numbers,
) -> impl Strategy<Value = Entered<Q>> {
    entry(Q::DIMENSION, numbers).prop_map(|entry| Entered::new(entry).expect("its own dimension"))
}

/// Any number, within its limits.
pub(crate) fn number() -> impl Strategy<Value = Number> {
    let most = 10_u64.pow(15) - 1;
    let decimals = 0..=Number::MOST_DECIMALS;
    let digits = prop_oneof![Just(0), Just(most), 0_u64..1000, 0_u64..1_000_000, 0..=most];
    prop_oneof![
        3 => (digits, decimals).prop_map(|(digits, decimals)| Number::Decimal { digits, decimals }),
        1 => (any::<u16>(), any::<u16>(), 1..=u16::MAX).prop_map(fraction),
        1 => inch_fraction(),
    ]
}

fn term(dimension: Dimension, numbers: Numbers) -> BoxedStrategy<Term> {
    let units: Vec<Unit> = Unit::ALL
        .into_iter()
        .filter(|unit| unit.dimension() == dimension)
        .collect();
    let unit = select(units);
    match numbers {
        Numbers::Usual => unit.prop_flat_map(usual_term).boxed(),
        Numbers::Any => (any::<bool>(), number(), unit)
            .prop_map(|(negative, number, unit)| Term {
                negative,
                number,
                unit,
            })
            .boxed(),
    }
}

/// A number such as is written with this unit in a workshop.
fn usual_term(unit: Unit) -> impl Strategy<Value = Term> {
    let (digits, decimals): (Range<u64>, RangeInclusive<u8>) = match unit {
        Unit::Millimetre => (0..9000, 0..=2),
        Unit::Centimetre => (0..90, 0..=1),
        Unit::Metre => (0..2, 0..=1),
        Unit::Micrometre | Unit::Thou => (0..900, 0..=0),
        Unit::Inch => (0..6000, 3..=3),
        Unit::MetrePerMinute | Unit::FootPerMinute => (1..400, 0..=0),
        Unit::MillimetrePerRevolution => (5..50, 2..=2),
        Unit::InchPerRevolution => (1..20, 3..=3),
        Unit::Second | Unit::Minute => (0..60, 0..=0),
        Unit::RevolutionPerMinute => (50..4000, 0..=0),
        Unit::Degree | Unit::RockwellC | Unit::NewtonPerMicrometre | Unit::Currency => {
            (1..60, 0..=0)
        }
        Unit::Vickers | Unit::Brinell => (150..700, 0..=0),
        Unit::Percent => (50..100, 0..=0),
        Unit::Piece => (1..8, 0..=0),
        Unit::Celsius => (10..60, 0..=1),
        Unit::Fahrenheit => (50..140, 0..=0),
        Unit::ToOne => (4..60, 0..=1),
        Unit::Newton | Unit::PoundForce | Unit::Watt => (1..5000, 0..=0),
        Unit::Kilonewton | Unit::Kilowatt | Unit::Horsepower => (1..50, 1..=1),
        Unit::NewtonMetre | Unit::PoundFoot => (1..500, 0..=0),
    };
    let decimal =
        (digits, decimals).prop_map(|(digits, decimals)| Number::Decimal { digits, decimals });
    let number = if unit == Unit::Inch {
        prop_oneof![decimal, inch_fraction()].boxed()
    } else {
        decimal.boxed()
    };
    number.prop_map(move |number| Term {
        negative: false,
        number,
        unit,
    })
}

fn inch_fraction() -> impl Strategy<Value = Number> {
    (0_u16..5, 1_u16..64, select(vec![2, 4, 8, 16, 32, 64])).prop_map(fraction)
}

fn fraction((whole, numerator, denominator): (u16, u16, u16)) -> Number {
    Number::Fraction {
        whole,
        numerator,
        denominator,
    }
}

fn length(numbers: Numbers) -> impl Strategy<Value = Entered<Length>> {
    entered(numbers)
}

fn any_of<T: Clone + Debug + 'static>(
    list: impl IntoIterator<Item = T>,
) -> impl Strategy<Value = T> {
    select(list.into_iter().collect::<Vec<T>>())
}

/// Any place along the shank.
fn place(numbers: Numbers) -> impl Strategy<Value = Place> {
    (any_of(Datum::ALL), length(numbers)).prop_map(|(from, start)| Place { from, start })
}

/// Any outer section.
pub(crate) fn section(numbers: Numbers) -> impl Strategy<Value = Section> {
    let length = move || length(numbers);
    let cone = move || (length(), entered(numbers), length());
    let turned = prop_oneof![
        3 => (length(), length()).prop_map(|(diameter, length)| Turned::Cylinder { diameter, length }),
        3 => (length(), length(), length(), option::of(length()), option::of(length())).prop_map(
            |(shoulder_diameter, end_diameter, length, diameter_error, length_error)| Turned::Taper {
                shoulder_diameter,
                end_diameter,
                length,
                diameter_error,
                length_error,
            }
        ),
        3 => (any_of(TaperSize::all()), length(), option::of(length())).prop_map(
            |(taper, past_gauge, length)| Turned::StandardTaper {
                taper,
                past_gauge,
                length,
            }
        ),
        1 => cone().prop_map(|(shoulder_diameter, ratio, length)| Turned::RatioTaper {
            shoulder_diameter,
            ratio,
            length,
        }),
        1 => (length(), entered(numbers), length()).prop_map(|(shoulder_diameter, angle, length)| {
            Turned::AngleTaper {
                shoulder_diameter,
                angle,
                length,
            }
        }),
        1 => (length(), length()).prop_map(|(diameter, length)| Turned::Groove { diameter, length }),
        1 => (length(), length()).prop_map(|(diameter, length)| Turned::Relief { diameter, length }),
        1 => (any_of(ThreadSize::all()), length())
            .prop_map(|(thread, length)| Turned::Thread { thread, length }),
    ];
    let place = prop_oneof![4 => Just(None), 1 => place(numbers).prop_map(Some)];
    (turned, place).prop_map(|(turned, place)| Section { turned, place })
}

/// Any feature.
pub(crate) fn feature(numbers: Numbers) -> impl Strategy<Value = Feature> {
    let length = move || length(numbers);
    let placed = prop_oneof![
        (length(), any_of(Flats::ALL), length()).prop_map(|(over, flats, length)| Cut::Flat {
            over,
            flats,
            length,
        }),
        (length(), length(), length()).prop_map(|(width, depth, length)| Cut::Keyway {
            width,
            depth,
            length,
        }),
        (length(), length(), length()).prop_map(|(width, depth, disc)| Cut::WoodruffKeyway {
            width,
            depth,
            disc,
        }),
        length().prop_map(|diameter| Cut::CrossHole { diameter }),
    ];
    let tang = (
        length(),
        length(),
        option::of(length()),
        option::of(length()),
    )
        .prop_map(|(thickness, length, slot_width, slot_depth)| Cut::Tang {
            thickness,
            length,
            slot_width,
            slot_depth,
        });
    prop_oneof![
        4 => (placed, place(numbers)).prop_map(|(cut, place)| Feature { cut, place: Some(place) }),
        1 => tang.prop_map(|cut| Feature { cut, place: None }),
    ]
}

/// Any hole.
pub(crate) fn bore(numbers: Numbers) -> impl Strategy<Value = Bore> {
    let length = move || length(numbers);
    let bottom = || any_of(BoreBottom::ALL);
    let hole = prop_oneof![
        (length(), length(), bottom()).prop_map(|(diameter, depth, bottom)| Hole::Drilled {
            diameter,
            depth,
            bottom,
        }),
        (length(), length(), length(), length(), bottom()).prop_map(
            |(diameter, depth, step_diameter, step_depth, bottom)| Hole::Stepped {
                diameter,
                depth,
                step_diameter,
                step_depth,
                bottom,
            }
        ),
        (any_of(ThreadSize::all()), length(), length()).prop_map(
            |(thread, thread_depth, drill_depth)| Hole::Tapped {
                thread,
                thread_depth,
                drill_depth,
            }
        ),
        (length(), length(), length()).prop_map(|(diameter, ream_depth, drill_depth)| {
            Hole::Reamed {
                diameter,
                ream_depth,
                drill_depth,
            }
        }),
        length().prop_map(|diameter| Hole::Through { diameter }),
        any_of(CentreDrillSize::all()).prop_map(|centre_drill| Hole::CentreHole { centre_drill }),
    ];
    let off_centre = prop_oneof![3 => Just(None), 1 => length().prop_map(Some)];
    (hole, any_of(BoreEnd::ALL), off_centre).prop_map(|(hole, end, off_centre)| Bore {
        hole,
        end,
        off_centre,
    })
}

/// Any part; seldom many sections.
pub(crate) fn part(numbers: Numbers) -> impl Strategy<Value = Part> {
    let sections = prop_oneof![4 => 0..=3_usize, 1 => 0..=Job::MOST_SECTIONS]
        .prop_flat_map(move |count| vec(section(numbers), count));
    let bores = vec(bore(numbers), 0..=Job::MOST_BORES);
    let features =
        prop_oneof![2 => Just(Vec::new()), 1 => vec(feature(numbers), 0..=Job::MOST_FEATURES)];
    let piece = (length(numbers), length(numbers))
        .prop_map(|(diameter, length)| HeadPiece { diameter, length });
    let hardness = move || option::of(entered(numbers));
    let cuts = (
        any_of(WorkMaterial::ALL),
        option::weighted(0.3, any_of(CuttingGroup::all())),
        option::weighted(0.3, any_of(FileBite::ALL)),
    );
    (
        cuts,
        (
            length(numbers),
            length(numbers),
            vec(piece, 0..=Job::MOST_HEAD_BEYOND),
        ),
        (length(numbers), option::of(length(numbers))),
        (hardness(), option::of(length(numbers)), hardness()),
        prop_oneof![4 => Just(None), 1 => length(numbers).prop_map(Some)],
        (sections, features, bores),
    )
        .prop_map(|(cuts, head, runout, hardness, shank_length, lists)| Part {
            material: cuts.0,
            cutting_group: cuts.1,
            file_bite: cuts.2,
            head_diameter: head.0,
            head_length: head.1,
            head_beyond: head.2,
            runout: runout.0,
            end_runout: runout.1,
            surface_hardness: hardness.0,
            case_depth: hardness.1,
            core_hardness: hardness.2,
            shank_length,
            sections: lists.0,
            features: lists.1,
            bores: lists.2,
        })
}

/// Any receiver.
fn receiver(numbers: Numbers) -> impl Strategy<Value = Receiver> {
    let edge = move || option::of(length(numbers));
    prop_oneof![
        edge().prop_map(|edge| Receiver::Own { edge }),
        any_of(ColletSize::all()).prop_map(|collet| Receiver::Collet { collet }),
        any_of(ShankSize::all()).prop_map(|shank| Receiver::SideLock { shank }),
        Just(Receiver::Hydraulic {}),
        (any_of(HoleClass::ALL), edge())
            .prop_map(|(hole, edge)| Receiver::PlainBore { hole, edge }),
        (any_of(SeatLoad::ALL), length(numbers))
            .prop_map(|(load, ring_chamfer)| Receiver::Bearing { load, ring_chamfer }),
        (
            any_of(SleeveDuty::ALL),
            any_of(WorkMaterial::ALL),
            length(numbers),
            edge()
        )
            .prop_map(|(duty, material, outside, edge)| Receiver::Sleeve {
                duty,
                material,
                outside,
                edge,
            }),
    ]
}

/// Any duty; most often none.
fn duty(numbers: Numbers) -> impl Strategy<Value = Duty> {
    let any = (
        option::of(entered(numbers)),
        option::of(entered(numbers)),
        option::of(length(numbers)),
        option::of(entered(numbers)),
        option::of(entered(numbers)),
    )
        .prop_map(|(torque, side_load, overhang, power, speed)| Duty {
            torque,
            side_load,
            overhang,
            power,
            speed,
        });
    prop_oneof![2 => Just(Duty::default()), 1 => any]
}

fn tolerance(numbers: Numbers) -> impl Strategy<Value = Tolerance> {
    prop_oneof![
        select(ShaftClass::ALL.to_vec()).prop_map(Tolerance::Class),
        (length(numbers), length(numbers))
            .prop_map(|(upper, lower)| Tolerance::Limits { upper, lower }),
    ]
}

/// Anything wanted.
pub(crate) fn wanted(numbers: Numbers) -> impl Strategy<Value = Wanted> {
    let length = move || length(numbers);
    (
        (length(), tolerance(numbers), length()),
        (length(), length()),
        (
            option::of(length()),
            option::of(length()),
            option::of(length()),
            option::weighted(0.3, length()),
        ),
        (receiver(numbers), duty(numbers)),
    )
        .prop_map(|(size, ends, optional, (receiver, duty))| Wanted {
            diameter: size.0,
            tolerance: size.1,
            length: size.2,
            shoulder_radius: ends.0,
            end_chamfer: ends.1,
            countersink: optional.0,
            roughness: optional.3,
            receiver_depth: optional.1,
            least_grip: optional.2,
            receiver,
            duty,
        })
}
