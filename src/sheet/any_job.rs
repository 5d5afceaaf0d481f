//! Any job at all, for the properties of drawings.

use crate::job::{
    Bore, BoreBottom, BoreEnd, Cut, Datum, Feature, Flats, HeadPiece, Hole, Job, Place, Section,
    Turned,
};
use crate::quantity::{Angle, Entered, Length, TaperRatio, Unit};
use crate::tables::{CentreDrillSize, TaperSize, ThreadSize};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

fn length(least: u32, most: u32) -> impl Strategy<Value = Entered<Length>> {
    (least..=most).prop_map(|hundredths| Entered::plain(hundredths, 2, Unit::Millimetre))
}

/// Lengths as they come, short ones as often as long ones.
fn any_length(most: u32) -> impl Strategy<Value = Entered<Length>> {
    prop_oneof![length(1, most / 100), length(1, most)]
}

fn place() -> impl Strategy<Value = Place> {
    (any::<bool>(), length(0, 60_000)).prop_map(|(end, start)| Place {
        from: Datum::ALL[usize::from(end)],
        start,
    })
}

fn thread() -> impl Strategy<Value = ThreadSize> {
    (0..20_u8).prop_map(|index| ThreadSize::from_index(index).unwrap())
}

fn turned() -> impl Strategy<Value = Turned> {
    let diameter = || length(50, 20_000);
    let long = || any_length(300_000);
    prop_oneof![
        (diameter(), long()).prop_map(|(diameter, length)| Turned::Cylinder { diameter, length }),
        (diameter(), diameter(), length(1, 30_000)).prop_map(
            |(shoulder_diameter, end_diameter, length)| Turned::Taper {
                shoulder_diameter,
                end_diameter,
                length,
                diameter_error: None,
                length_error: None,
            }
        ),
        (0..20_u8, length(0, 500), option::of(long())).prop_map(|(taper, past_gauge, length)| {
            Turned::StandardTaper {
                taper: TaperSize::from_index(taper).unwrap(),
                past_gauge,
                length,
            }
        }),
        (diameter(), 1..9999_u32, long()).prop_map(|(shoulder_diameter, ratio, length)| {
            Turned::RatioTaper {
                shoulder_diameter,
                ratio: Entered::<TaperRatio>::plain(ratio, 1, Unit::ToOne),
                length,
            }
        }),
        (diameter(), 1..8999_u32, long()).prop_map(|(shoulder_diameter, angle, length)| {
            Turned::AngleTaper {
                shoulder_diameter,
                angle: Entered::<Angle>::plain(angle, 2, Unit::Degree),
                length,
            }
        }),
        (diameter(), length(10, 2000))
            .prop_map(|(diameter, length)| Turned::Groove { diameter, length }),
        (thread(), long()).prop_map(|(thread, length)| Turned::Thread { thread, length }),
        (diameter(), length(10, 2000))
            .prop_map(|(diameter, length)| Turned::Relief { diameter, length }),
    ]
}

fn section() -> impl Strategy<Value = Section> {
    (
        turned(),
        prop_oneof![4 => Just(None), 1 => place().prop_map(Some)],
    )
        .prop_map(|(turned, place)| Section { turned, place })
}

fn cut() -> impl Strategy<Value = Cut> {
    let size = || length(20, 10_000);
    prop_oneof![
        (size(), any::<bool>(), any_length(60_000)).prop_map(|(over, two, length)| Cut::Flat {
            over,
            flats: Flats::ALL[usize::from(two)],
            length,
        }),
        (size(), size(), any_length(60_000)).prop_map(|(width, depth, length)| Cut::Keyway {
            width,
            depth,
            length,
        }),
        (size(), size(), size()).prop_map(|(width, depth, disc)| Cut::WoodruffKeyway {
            width,
            depth,
            disc
        }),
        size().prop_map(|diameter| Cut::CrossHole { diameter }),
        (
            size(),
            any_length(60_000),
            option::of(size()),
            option::of(size())
        )
            .prop_map(|(thickness, length, slot_width, slot_depth)| Cut::Tang {
                thickness,
                length,
                slot_width,
                slot_depth,
            }),
    ]
}

fn feature() -> impl Strategy<Value = Feature> {
    (cut(), place()).prop_map(|(cut, place)| {
        let is_tang = matches!(cut, Cut::Tang { .. });
        Feature {
            place: (!is_tang).then_some(place),
            cut,
        }
    })
}

fn hole() -> impl Strategy<Value = Hole> {
    let (size, deep) = (|| length(20, 30_000), || length(10, 300_000));
    prop_oneof![
        (size(), deep(), any::<bool>()).prop_map(|(diameter, depth, flat)| Hole::Drilled {
            diameter,
            depth,
            bottom: BoreBottom::ALL[usize::from(flat)],
        }),
        (size(), deep(), size(), deep(), any::<bool>()).prop_map(
            |(diameter, depth, step_diameter, step_depth, flat)| Hole::Stepped {
                diameter,
                depth,
                step_diameter,
                step_depth,
                bottom: BoreBottom::ALL[usize::from(flat)],
            }
        ),
        (thread(), length(10, 9000), length(10, 9000)).prop_map(
            |(thread, thread_depth, drill_depth)| Hole::Tapped {
                thread,
                thread_depth,
                drill_depth,
            }
        ),
        (size(), deep(), deep()).prop_map(|(diameter, ream_depth, drill_depth)| Hole::Reamed {
            diameter,
            ream_depth,
            drill_depth,
        }),
        size().prop_map(|diameter| Hole::Through { diameter }),
        (0..10_u8).prop_map(|drill| Hole::CentreHole {
            centre_drill: CentreDrillSize::from_index(drill).unwrap(),
        }),
    ]
}

fn bore() -> impl Strategy<Value = Bore> {
    let off = prop_oneof![3 => Just(None), 1 => length(1, 5000).prop_map(Some)];
    (hole(), any::<bool>(), off).prop_map(|(hole, head, off_centre)| Bore {
        hole,
        end: BoreEnd::ALL[usize::from(head)],
        off_centre,
    })
}

prop_compose! {
    /// Any part with all it can have, and any rework of it.
    pub(super) fn job()(
        head in (length(50, 200_000), length(0, 50_000)),
        beyond in vec((length(50, 200_000), length(1, 50_000)), 0..=4),
        shank_length in prop_oneof![3 => Just(None), 1 => length(50, 300_000).prop_map(Some)],
        sections in vec(section(), 1..=12),
        features in vec(feature(), 0..=8),
        bores in vec(bore(), 0..=6),
        wanted in (length(50, 20_000), length(50, 300_000), length(0, 5000), length(0, 5000)),
        countersink in option::of(length(60, 6000)),
        facing in length(0, 5000),
    ) -> Job {
        let mut job = Job::default();
        (job.part.head_diameter, job.part.head_length) = head;
        job.part.head_beyond = beyond
            .into_iter()
            .map(|(diameter, length)| HeadPiece { diameter, length })
            .collect();
        job.part.shank_length = shank_length;
        job.part.sections = sections;
        job.part.features = features;
        job.part.bores = bores;
        let made = &mut job.wanted;
        (made.diameter, made.length, made.shoulder_radius, made.end_chamfer) = wanted;
        job.wanted.countersink = countersink;
        job.shop.facing_stock = facing;
        job
    }
}
