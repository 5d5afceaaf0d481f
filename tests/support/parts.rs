//! Parts of a workshop's sizes with everything on them: sections of every kind but the standard taper, features, holes
//! from both ends, a shank that is tilted. A test takes this file in with `#[path = "support/parts.rs"] mod parts;`.
//!
//! Every length is a whole number of hundredths of a millimetre. Most parts can be planned to the end.
#![allow(dead_code, reason = "each test uses a part of it")]

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::job::{
    Bore, BoreBottom, BoreEnd, Cut, Datum, Duty, Feature, Flats, HeadPiece, Hole, Job, Part, Place,
    Section, Tolerance, Turned, Wanted,
};
use skimwright::quantity::{Entered, Entry, Length, Number, Term, Typed, Unit};
use skimwright::tables::{CentreDrillSize, ShaftClass, ThreadSize, WorkMaterial};

/// A number of `decimals` decimals as typed.
fn typed<Q: Typed>(digits: i64, decimals: u8, unit: Unit) -> Entered<Q> {
    let term = Term {
        negative: digits < 0,
        number: Number::Decimal {
            digits: digits.unsigned_abs(),
            decimals,
        },
        unit,
    };
    let entry = Entry::from_terms(vec![term]).expect("one sound number");
    Entered::new(entry).expect("its own dimension")
}

/// Hundredths of a millimetre as typed.
pub(crate) fn mm(hundredths: i64) -> Entered<Length> {
    typed(hundredths, 2, Unit::Millimetre)
}

/// The share of a length, in thousandths.
fn part_of(whole: i64, thousandths: i64) -> i64 {
    whole * thousandths / 1000
}

/// What a section is made of: its kind, the diameters at both ends, its length.
type Drawn = (u8, i64, i64, i64);

fn drawn() -> impl Strategy<Value = Drawn> {
    (0_u8..7, 1500_i64..4000, -300_i64..300, 300_i64..4000)
}

/// The section, its smallest diameter and its length, in hundredths.
fn section((kind, diameter, grows, length): Drawn) -> (Section, i64, i64) {
    let (long, short) = (mm(length), length.min(600));
    match kind {
        1 => {
            let end = diameter + grows;
            let turned = Turned::Taper {
                shoulder_diameter: mm(diameter),
                end_diameter: mm(end),
                length: long,
                diameter_error: None,
                length_error: None,
            };
            (turned.into(), diameter.min(end), length)
        }
        2 => {
            let turned = Turned::RatioTaper {
                shoulder_diameter: mm(diameter),
                ratio: typed(20, 0, Unit::ToOne),
                length: long,
            };
            (turned.into(), diameter - length / 20, length)
        }
        3 => {
            let turned = Turned::Groove {
                diameter: mm(diameter - 200),
                length: mm(short),
            };
            (turned.into(), diameter - 200, short)
        }
        4 => {
            let turned = Turned::Relief {
                diameter: mm(diameter - 150),
                length: mm(short),
            };
            (turned.into(), diameter - 150, short)
        }
        5 => {
            let code = if diameter < 2600 { "M20x1.5" } else { "M30x2" };
            let thread = ThreadSize::from_code(code).expect("a thread of the table");
            let turned = Turned::Thread {
                thread,
                length: long,
            };
            let root = if diameter < 2600 { 1800 } else { 2700 };
            (turned.into(), root, length)
        }
        _ => {
            let turned = Turned::Cylinder {
                diameter: mm(diameter),
                length: long,
            };
            (turned.into(), diameter, length)
        }
    }
}

/// Kind, place, size and depth of a feature, as shares of what there is.
type Share = (u8, i64, i64, i64, bool);

/// The feature on a shank this long and at least this thick.
fn feature((kind, place, size, depth, far): Share, whole: i64, thin: i64) -> Feature {
    let from = if far { Datum::FreeEnd } else { Datum::Shoulder };
    let length = part_of(whole, size / 4).max(150);
    let deep = part_of(thin, depth / 4).max(20);
    let cut = match kind {
        0 => Cut::Flat {
            over: mm(thin - deep / 2),
            flats: Flats::One,
            length: mm(length),
        },
        1 => Cut::Flat {
            over: mm(thin - deep),
            flats: Flats::Two,
            length: mm(length),
        },
        2 => Cut::Keyway {
            width: mm(part_of(thin, size / 3).max(100)),
            depth: mm(deep),
            length: mm(length),
        },
        3 => Cut::WoodruffKeyway {
            width: mm(part_of(thin, size / 4).max(100)),
            depth: mm(deep.min(600)),
            disc: mm(1600),
        },
        4 => Cut::CrossHole {
            diameter: mm(part_of(thin, size / 3).max(100)),
        },
        _ => {
            let tang = Cut::Tang {
                thickness: mm(thin - deep * 2),
                length: mm(length),
                slot_width: far.then(|| mm(200)),
                slot_depth: far.then(|| mm(length / 2)),
            };
            return Feature {
                cut: tang,
                place: None,
            };
        }
    };
    let start = mm(part_of(whole, place));
    Feature {
        cut,
        place: Some(Place { from, start }),
    }
}

/// A hole in a part this thick, of which the shank is this long.
fn bore((kind, end, size, depth, far): Share, whole: i64, thin: i64) -> Bore {
    let diameter = part_of(thin, size * 2 / 3).max(120);
    let deep = part_of(whole, end).max(200);
    let bottom = if depth % 2 == 0 {
        BoreBottom::Flat
    } else {
        BoreBottom::DrillPoint
    };
    let hole = match kind {
        0 | 1 => Hole::Drilled {
            diameter: mm(diameter),
            depth: mm(deep),
            bottom,
        },
        2 => Hole::Stepped {
            diameter: mm(diameter / 2),
            depth: mm(deep),
            step_diameter: mm(diameter),
            step_depth: mm(deep / 2),
            bottom,
        },
        3 => Hole::Tapped {
            thread: ThreadSize::from_code("M8").expect("a thread of the table"),
            thread_depth: mm(deep * 3 / 4),
            drill_depth: mm(deep),
        },
        4 => Hole::Through {
            diameter: mm(diameter / 2),
        },
        _ => Hole::CentreHole {
            centre_drill: CentreDrillSize::from_code("A2.5").expect("a drill of the table"),
        },
    };
    Bore {
        hole,
        end: if far {
            BoreEnd::HeadEnd
        } else {
            BoreEnd::FreeEnd
        },
        off_centre: (depth % 5 == 0).then(|| mm(depth / 20)),
    }
}

fn shares(kinds: u8, most: usize) -> impl Strategy<Value = Vec<Share>> {
    let share = (
        0..kinds,
        0_i64..1000,
        50_i64..1000,
        50_i64..1000,
        any::<bool>(),
    );
    vec(share, 0..=most)
}

/// A workshop's job on a part with everything.
pub(crate) fn workshop_job() -> impl Strategy<Value = Job> {
    let materials = vec![
        WorkMaterial::MediumCarbonSteel,
        WorkMaterial::AlloySteelHard,
        WorkMaterial::CaseHardenedSteel,
        WorkMaterial::Brass,
    ];
    let part = (
        vec(drawn(), 1..5),
        shares(6, 3),
        shares(6, 3),
        (0_i64..2000, 500_i64..4000, option::of(500_i64..4000)),
        (
            prop_oneof![Just(0_i64), 0_i64..30],
            option::of(0_i64..30),
            select(materials),
        ),
    );
    let wanted = (
        300_i64..1080,
        150_i64..1080,
        (0_i64..200, 0_i64..150),
        any::<bool>(),
        option::of((1_i64..200, 0_i64..3000, 1_i64..6000)),
    );
    (part, wanted).prop_map(|((sections, cuts, holes, head, rest), wanted)| {
        let made: Vec<(Section, i64, i64)> = sections.into_iter().map(section).collect();
        let whole: i64 = made.iter().map(|(.., length)| length).sum();
        let thin = made.iter().map(|(_, thin, _)| *thin).min().unwrap_or(1500);
        let (above, head_length, beyond) = head;
        let piece = |length| HeadPiece {
            diameter: mm(thin + 500),
            length: mm(length),
        };
        let (share, long, (fillet, chamfer), by_class, duty) = wanted;
        Job {
            part: Part {
                material: rest.2,
                head_diameter: mm(2500 + above),
                head_length: mm(head_length),
                head_beyond: beyond.into_iter().map(piece).collect(),
                runout: mm(rest.0),
                end_runout: rest.1.map(mm),
                sections: made.into_iter().map(|(section, ..)| section).collect(),
                features: cuts
                    .into_iter()
                    .map(|it| feature(it, whole, thin))
                    .collect(),
                bores: holes.into_iter().map(|it| bore(it, whole, thin)).collect(),
                ..Part::default()
            },
            wanted: Wanted {
                diameter: mm(part_of(thin, share).max(300)),
                tolerance: if by_class {
                    Tolerance::Class(ShaftClass::H6)
                } else {
                    Tolerance::Limits {
                        upper: mm(2),
                        lower: mm(-3),
                    }
                },
                length: mm(part_of(whole, long).max(200)),
                shoulder_radius: mm(fillet),
                end_chamfer: mm(chamfer),
                countersink: None,
                duty: duty.map_or_else(Duty::default, |(torque, force, arm)| Duty {
                    torque: Some(typed(torque, 0, Unit::NewtonMetre)),
                    side_load: Some(typed(force, 0, Unit::Newton)),
                    overhang: Some(mm(arm)),
                    ..Duty::default()
                }),
                ..Wanted::default()
            },
            ..Job::default()
        }
    })
}
