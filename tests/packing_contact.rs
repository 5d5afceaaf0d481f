//! Packing under three jaws against numerical contact solutions, against worked figures, and by law.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use proptest::prelude::*;
use skimwright::holding::{
    FARTHEST_SHARE, JawContact, Offset, PackingError, movement, packing, packing_for_runout,
};
use skimwright::quantity::{Angle, Length};

/// Made by `tests/outside/packing_contact.py` with scipy 1.17.1: 64 sets of packing, each with both kinds of contact.
const SETTLED: &str = include_str!("outside/packing_contact.csv");

fn mm(value: f64) -> Length {
    Length::mm(value)
}

fn away_from_jaw_1(by: f64) -> Offset {
    Offset::towards(mm(by), Angle::degrees(180.0))
}

/// Where the work settles, and the way back: packing for that move is the packing that went in.
#[test]
fn work_settles_where_the_contact_equations_say() {
    let (mut cases, mut too_far, mut worst) = (0, 0, 0.0_f64);
    for line in SETTLED.lines().filter(|line| !line.starts_with('#')) {
        let (name, rest) = line.split_once(',').unwrap();
        let contact = match name {
            "flat" => JawContact::Flat,
            "line" => JawContact::Line,
            other => panic!("{other}"),
        };
        let row: Vec<f64> = rest.split(',').map(|it| it.parse().unwrap()).collect();
        let (radius, thickness) = (mm(row[0]), [row[1], row[2], row[3]].map(mm));
        let settled = Offset::new(mm(row[4]), mm(row[5]));
        cases += 1;
        let moved = match movement(thickness, radius, contact) {
            Ok(moved) => moved,
            Err(PackingError::TooFar { .. }) => {
                assert!(settled.size() > radius * FARTHEST_SHARE, "{line}");
                too_far += 1;
                continue;
            }
            Err(other) => panic!("{line}: {other:?}"),
        };
        // In millimetres: twelve digits behind the point were written down.
        let off = (moved - settled).size().to_mm();
        assert!(off < 1e-11, "{line}: {moved:?}, off {off:e}");
        worst = worst.max(off);
        let back = packing(settled, radius, contact).unwrap();
        let least = thickness.into_iter().reduce(Length::min).unwrap();
        for (got, wanted) in back.thickness.into_iter().zip(thickness) {
            assert!((got - (wanted - least)).abs().to_mm() < 1e-11, "{line}");
        }
    }
    assert_eq!((cases, too_far), (128, 0));
    println!("worst difference {worst:e} mm");
}

/// Worked apart: radius, packing under one jaw, how far the work moves with a line contact.
const ONE_JAW: &[[f64; 3]] = &[
    [10.0, 0.05, 0.03336],
    [10.0, 0.30, 0.20101],
    [15.0, 3.0, 2.0718],
    [15.0, 7.5, 5.5218],
];

#[test]
fn packing_under_one_jaw() {
    for [radius, thickness, wanted] in ONE_JAW.iter().copied() {
        let under = [mm(thickness), Length::ZERO, Length::ZERO];
        let line = movement(under, mm(radius), JawContact::Line).unwrap();
        assert!((line.size().to_mm() - wanted).abs() < 5.1e-5, "{line:?}");
        assert!((line.direction().to_degrees() - 180.0).abs() < 1e-9);
        let flat = movement(under, mm(radius), JawContact::Flat).unwrap();
        assert!((flat.size().to_mm() - thickness / 1.5).abs() < 1e-12);
        // t = 1.5 e − r + √(r² − 0.75 e²), the closed form for one jaw.
        let e = line.size().to_mm();
        let closed = 1.5 * e - radius + (radius * radius - 0.75 * e * e).sqrt();
        assert!((closed - thickness).abs() < 1e-12);
    }
}

/// A published formula for turning eccentrics, t = 1.5 e (1 − 0.125 e/D), disagrees with both kinds of contact: its
/// term in e² is a quarter of that of a line contact, where flat faces have none. For runout the three are the same
/// within 0.4 µm.
#[test]
fn a_published_formula_lies_between_the_two_contacts() {
    for (e, radius) in [(0.05, 10.0), (0.1, 10.0), (2.0718, 15.0), (5.0, 15.0)] {
        let published = 1.5 * e * (1.0 - 0.125 * e / (2.0 * radius));
        let ours = |contact| {
            let made = packing(away_from_jaw_1(e), mm(radius), contact).unwrap();
            made.thickness[0].to_mm()
        };
        let (flat, line) = (ours(JawContact::Flat), ours(JawContact::Line));
        assert!(
            line < published && published < flat,
            "{line} {published} {flat}"
        );
        let quarter = (flat - published) / (flat - line);
        assert!((0.22..0.26).contains(&quarter), "{quarter}");
        if e <= 0.1 {
            assert!(flat - line < 0.4e-3);
        }
    }
}

/// 0.030 mm towards 40° takes nothing, 0.0178 and 0.0512 mm under jaws 1 to 3, worked apart for flat faces.
#[test]
fn two_jaws_for_a_direction_between_them() {
    let wanted = Offset::towards(mm(0.030), Angle::degrees(40.0));
    let made = packing(wanted, mm(10.0), JawContact::Flat).unwrap();
    for (got, wanted) in made.thickness.into_iter().zip([0.0, 0.0178, 0.0512]) {
        assert!((got.to_mm() - wanted).abs() < 5e-5, "{got:?}");
    }
}

/// Runout 0.08 mm, high at jaw 2: three quarters of it, 0.06 mm, under jaw 2, and the rule of thumb is exact. High
/// half-way to jaw 3 the rule leaves a move of 0.04 mm short by the angle of 60°: as much again.
#[test]
fn the_rule_of_thumb_holds_at_a_jaw_only() {
    let at = |degrees| {
        packing_for_runout(
            mm(0.08),
            Angle::degrees(degrees),
            mm(12.0),
            JawContact::Flat,
        )
        .unwrap()
    };
    let made = at(120.0);
    assert!((made.thickness[1].to_mm() - 0.06).abs() < 1e-12);
    assert!(made.thickness[0].to_mm().abs() < 1e-12);
    assert_eq!(made.rule_of_thumb.jaw, 2);
    assert!((made.rule_of_thumb.thickness.to_mm() - 0.06).abs() < 1e-12);
    assert!(made.rule_of_thumb.leaves.unwrap().to_mm() < 1e-12);
    let between = at(180.0);
    assert!((between.rule_of_thumb.leaves.unwrap().to_mm() - 0.08).abs() < 1e-12);
    let near = at(100.0);
    assert_eq!(near.rule_of_thumb.jaw, 2);
    // Two sides of 0.04 mm that enclose 20°: 2 · 0.04 · sin 10°, and runout is twice that.
    let left = 4.0 * 0.04 * 10.0_f64.to_radians().sin();
    assert!((near.rule_of_thumb.leaves.unwrap().to_mm() - left).abs() < 1e-12);
}

#[test]
fn what_packing_cannot_do_is_refused() {
    let far = packing(away_from_jaw_1(5.1), mm(10.0), JawContact::Line);
    let Err(PackingError::TooFar { by, most }) = far else {
        panic!("{far:?}");
    };
    assert!((by.to_mm() - 5.1).abs() < 1e-12 && most == mm(5.0));
    assert!(packing(away_from_jaw_1(4.9), mm(10.0), JawContact::Line).is_ok());
    let none = packing(Offset::NONE, Length::ZERO, JawContact::Flat);
    assert_eq!(none, Err(PackingError::NoRadius));
    let negative = movement([mm(-0.1), mm(0.0), mm(0.0)], mm(10.0), JawContact::Flat);
    assert_eq!(negative, Err(PackingError::Negative));
    for contact in [JawContact::Flat, JawContact::Line] {
        let thick = movement([mm(90.0), mm(0.0), mm(40.0)], mm(10.0), contact);
        assert!(matches!(thick, Err(PackingError::TooFar { .. })));
    }
}

proptest! {
    /// The packing that was made moves the work as was asked.
    #[test]
    fn packing_moves_as_asked(radius in 1.0..80.0_f64, share in 0.0..0.5_f64, degrees in 0.0..360.0_f64) {
        let wanted = Offset::towards(mm(radius * share), Angle::degrees(degrees));
        for contact in [JawContact::Flat, JawContact::Line] {
            let made = packing(wanted, mm(radius), contact).unwrap();
            prop_assert!(made.thickness.iter().all(|it| *it >= Length::ZERO));
            prop_assert!(made.thickness.contains(&Length::ZERO));
            // A hair thinner than at the very limit, so that rounding cannot cross it.
            if share < 0.499 {
                let moved = movement(made.thickness, mm(radius), contact).unwrap();
                prop_assert!((moved - wanted).size().to_mm() < 1e-12 * radius);
            }
            prop_assert!(made.beside_middle <= wanted.size() * (1.0 + 1e-12));
        }
    }

    /// The same packing under all three jaws moves nothing.
    #[test]
    fn packing_all_round_moves_nothing(radius in 1.0..80.0_f64, thickness in 0.0..5.0_f64) {
        for contact in [JawContact::Flat, JawContact::Line] {
            let moved = movement([mm(thickness); 3], mm(radius), contact).unwrap();
            prop_assert!(moved.size().to_mm() < 1e-13 * (radius + thickness));
        }
    }

    /// Small moves differ by 0.44 e²/r at most between the two kinds of contact.
    #[test]
    fn contacts_differ_by_the_square(radius in 2.0..40.0_f64, share in 0.0..0.05_f64, degrees in 0.0..360.0_f64) {
        let e = radius * share;
        let wanted = Offset::towards(mm(e), Angle::degrees(degrees));
        let made = |contact| packing(wanted, mm(radius), contact).unwrap().thickness;
        let (flat, line) = (made(JawContact::Flat), made(JawContact::Line));
        for (flat, line) in flat.into_iter().zip(line) {
            prop_assert!((flat - line).abs().to_mm() <= 0.44 * e * e / radius + 1e-13);
        }
    }
}
