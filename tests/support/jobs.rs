//! Jobs of every kind for property tests. A test takes this file in with
//! `#[path = "support/jobs.rs"] mod jobs;`.
//!
//! [`any_job`] holds back nothing that a job can be: every section and hole, every choice, numbers that are
//! negative, nought or huge, sums, fractions, inch and millimetre, titles in any script. Half of its jobs keep to
//! the sizes of a workshop, so that most of them can be planned to the end.
#![allow(dead_code, reason = "each test uses a part of it")]

use std::fmt::Debug;
use std::ops::{Range, RangeInclusive};

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::job::{
    Bore, BoreBottom, CentreOrder, CutOffMethod, FormVersion, Job, Part, Section, Shop, Tolerance,
    Wanted,
};
use skimwright::quantity::{Dimension, Entered, Entry, Length, Number, Term, Typed, Unit};
use skimwright::tables::{
    CentreDrillSize, ShaftClass, TaperSize, ThreadSize, ToolKind, WorkMaterial,
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
    prop_oneof![job(Numbers::Usual), job(Numbers::Any)]
}

/// A job of one sort of numbers.
pub(crate) fn job(numbers: Numbers) -> impl Strategy<Value = Job> {
    (title(), part(numbers), wanted(numbers), shop(numbers)).prop_map(
        |(title, part, wanted, shop)| Job {
            version: FormVersion,
            title,
            part,
            wanted,
            shop,
        },
    )
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
        Numbers::Any => prop_oneof![4 => Just(1), 1 => 2..=Entry::MOST_TERMS].boxed(),
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
        Unit::Degree | Unit::RockwellC => (1..60, 0..=0),
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

/// Any outer section.
pub(crate) fn section(numbers: Numbers) -> impl Strategy<Value = Section> {
    let length = move || length(numbers);
    let tapers: Vec<TaperSize> = TaperSize::all().collect();
    prop_oneof![
        (length(), length()).prop_map(|(diameter, length)| Section::Cylinder { diameter, length }),
        (length(), length(), length()).prop_map(|(shoulder_diameter, end_diameter, length)| {
            Section::Taper {
                shoulder_diameter,
                end_diameter,
                length,
            }
        }),
        (select(tapers), length(), option::of(length())).prop_map(|(taper, past_gauge, length)| {
            Section::StandardTaper {
                taper,
                past_gauge,
                length,
            }
        }),
    ]
}

/// Any hole.
pub(crate) fn bore(numbers: Numbers) -> impl Strategy<Value = Bore> {
    let length = move || length(numbers);
    let threads: Vec<ThreadSize> = ThreadSize::all().collect();
    let drills: Vec<CentreDrillSize> = CentreDrillSize::all().collect();
    prop_oneof![
        (length(), length(), select(BoreBottom::ALL.to_vec())).prop_map(
            |(diameter, depth, bottom)| Bore::Drilled {
                diameter,
                depth,
                bottom,
            }
        ),
        (select(threads), length(), length()).prop_map(|(thread, thread_depth, drill_depth)| {
            Bore::Tapped {
                thread,
                thread_depth,
                drill_depth,
            }
        }),
        select(drills).prop_map(|centre_drill| Bore::CentreHole { centre_drill }),
    ]
}

/// Any part; seldom many sections.
pub(crate) fn part(numbers: Numbers) -> impl Strategy<Value = Part> {
    let sections = prop_oneof![4 => 0..=3_usize, 1 => 0..=Job::MOST_SECTIONS]
        .prop_flat_map(move |count| vec(section(numbers), count));
    let bores = vec(bore(numbers), 0..=Job::MOST_BORES);
    (
        select(WorkMaterial::ALL.to_vec()),
        length(numbers),
        length(numbers),
        length(numbers),
        sections,
        bores,
    )
        .prop_map(
            |(material, head_diameter, head_length, runout, sections, bores)| Part {
                material,
                head_diameter,
                head_length,
                runout,
                sections,
                bores,
            },
        )
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
        ),
    )
        .prop_map(|(size, ends, optional)| Wanted {
            diameter: size.0,
            tolerance: size.1,
            length: size.2,
            shoulder_radius: ends.0,
            end_chamfer: ends.1,
            countersink: optional.0,
            receiver_depth: optional.1,
            least_grip: optional.2,
        })
}

/// Any shop.
pub(crate) fn shop(numbers: Numbers) -> impl Strategy<Value = Shop> {
    let length = move || length(numbers);
    let time = move || entered(numbers);
    (
        (
            select(ToolKind::ALL.to_vec()),
            select(CutOffMethod::ALL.to_vec()),
            select(CentreOrder::ALL.to_vec()),
        ),
        (option::of(length()), length()),
        (option::of(length()), length(), length()),
        (
            option::of(entered(numbers)),
            option::of(entered(numbers)),
            option::of(entered(numbers)),
            entered(numbers),
            length(),
        ),
        (time(), time(), time(), time()),
    )
        .prop_map(|(choices, cut_off, depths, speeds, times)| Shop {
            tool: choices.0,
            cut_off_method: choices.1,
            kerf: cut_off.0,
            facing_stock: cut_off.1,
            centre_order: choices.2,
            rough_infeed: depths.0,
            last_cut: depths.1,
            polishing_stock: depths.2,
            cutting_speed: speeds.0,
            rough_feed: speeds.1,
            finish_feed: speeds.2,
            top_speed: speeds.3,
            approach: speeds.4,
            set_time: times.0,
            return_time: times.1,
            measure_time: times.2,
            polish_time: times.3,
        })
}
