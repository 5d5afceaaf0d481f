//! Centre drills against the geometry of the cone and the centre-hole table of DIN 332-1 and ISO 6411.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::{CENTRE_DRILLS, CentreDrill, CentreDrillSize, CentreDrillStandard};

#[track_caller]
fn drill(code: &str) -> &'static CentreDrill {
    CentreDrillSize::from_code(code).unwrap().get().unwrap()
}

/// Depth of a 60° cone from one diameter to another.
fn cone(large: Length, small: Length) -> f64 {
    (large - small).to_mm() / (2.0 * 30.0_f64.to_radians().tan())
}

/// The length of the cone as the table of holes prints it, and the hole itself: code, pilot, mouth, cone, least depth.
#[rustfmt::skip]
const HOLES: &[(&str, f64, f64, f64, f64)] = &[
    ("A1",     1.0,   2.12, 0.97,  1.9),
    ("A1.25",  1.25,  2.65, 1.21,  2.3),
    ("A1.6",   1.6,   3.35, 1.52,  2.9),
    ("A2",     2.0,   4.25, 1.95,  3.7),
    ("A2.5",   2.5,   5.3,  2.42,  4.6),
    ("A3.15",  3.15,  6.7,  3.07,  5.9),
    ("A4",     4.0,   8.5,  3.9,   7.4),
    ("A5",     5.0,  10.6,  4.85,  9.2),
    ("A6.3",   6.3,  13.2,  5.98, 11.5),
    ("A8",     8.0,  17.0,  7.79, 14.8),
    ("A10",   10.0,  21.2,  9.7,  18.4),
];

#[test]
fn cones_are_as_deep_as_printed() {
    for &(code, pilot, mouth, printed, depth) in HOLES {
        let drill = drill(code);
        assert_eq!(drill.pilot_diameter, Length::mm(pilot), "{code}");
        assert_eq!(
            drill.countersink_diameter,
            Some(Length::mm(mouth)),
            "{code}"
        );
        assert_eq!(drill.hole_depth_min, Some(Length::mm(depth)), "{code}");
        let got = cone(Length::mm(mouth), drill.pilot_diameter);
        // One place of the printed column, which cuts 2.425 to 2.42.
        assert!(
            (got - printed).abs() <= 0.006,
            "{code}: got {got}, wanted {printed}"
        );
    }
}

/// The least depth is that of a sharp 60° point seated at the mouth: 0.866 of its diameter.
#[test]
fn least_depth_is_that_of_a_sharp_point() {
    let mut compared = 0;
    for size in CentreDrillSize::of(CentreDrillStandard::Iso) {
        let drill = size.get().unwrap();
        let (Some(mouth), Some(depth)) = (drill.countersink_diameter, drill.hole_depth_min) else {
            continue;
        };
        let difference = depth.to_mm() - 0.866 * mouth.to_mm();
        assert!(difference.abs() <= 0.1, "{}: {difference}", drill.code);
        compared += 1;
    }
    assert_eq!(compared, 13);
}

/// A 2.5 × 6.3 mm drill sunk to a mouth of 5.3 mm: cone 2.425 mm, tip 5.525 to 6.525 mm below the face, which is
/// deeper than the 4.6 mm asked for.
#[test]
fn travel_to_the_standard_mouth() {
    let drill = drill("A2.5");
    let cone = cone(drill.countersink_diameter.unwrap(), drill.pilot_diameter);
    assert!((cone - 2.425).abs() < 0.000_5);
    let (least, most) = (
        drill.pilot_length_min.to_mm() + cone,
        drill.pilot_length_max.to_mm() + cone,
    );
    assert!((least - 5.525).abs() < 0.000_5 && (most - 6.525).abs() < 0.000_5);
    assert!(drill.hole_depth_min.unwrap().to_mm() < least);
}

/// A sharp point in the same hole reaches 4.590 mm below the face and clears the least depth by 0.010 mm only.
#[test]
fn point_clears_the_pilot() {
    let drill = drill("A2.5");
    let reach = cone(drill.countersink_diameter.unwrap(), Length::ZERO);
    assert!((reach - 4.590).abs() < 0.000_5);
    let clearance = drill.hole_depth_min.unwrap().to_mm() - reach;
    assert!((clearance - 0.010).abs() < 0.000_5);
}

/// In every row the shortest pilot, sunk to the standard mouth, reaches the least depth.
#[test]
fn a_drill_to_standard_makes_a_hole_to_standard() {
    for drill in CENTRE_DRILLS {
        if let (Some(mouth), Some(depth)) = (drill.countersink_diameter, drill.hole_depth_min) {
            let reach = drill.pilot_length_min.to_mm() + cone(mouth, drill.pilot_diameter);
            assert!(depth.to_mm() <= reach, "{}: {reach}", drill.code);
        }
    }
}

/// Inch No 4 sunk to a mouth of a quarter of an inch: 0.2333 in from the tip.
#[test]
fn inch_drill_to_a_quarter_of_an_inch() {
    let drill = drill("asme-4");
    let depth = drill.pilot_length_max.to_mm() + cone(Length::inch(0.25), drill.pilot_diameter);
    assert!((Length::mm(depth).to_inch() - 0.2333).abs() < 0.000_1);
}
