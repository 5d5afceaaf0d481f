//! ISO 286 against its printed tables, cell by cell, and against its own rules.
//!
//! ISO 286-1, table 1 (grades) and ISO 286-2 (limit deviations), as a fits library and printed tables give them, with
//! published examples of fits.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::{
    Confirmed, Deviations, HoleClass, ShaftClass, confirmed_deviations, confirmed_hole_deviations,
    deviations, hole_deviations, tolerance_grade,
};

/// Micrometres are whole numbers or halves; this only takes up the arithmetic.
const WHOLE: f64 = 1e-9;

/// Upper bounds of the steps in millimetres.
const STEPS: [f64; 9] = [3.0, 6.0, 10.0, 18.0, 30.0, 50.0, 80.0, 120.0, 180.0];

/// Upper bounds of the finer steps of r and s.
const FINE_STEPS: [f64; 13] = [
    3.0, 6.0, 10.0, 18.0, 30.0, 50.0, 65.0, 80.0, 100.0, 120.0, 140.0, 160.0, 180.0,
];

/// Grades IT5 to IT11, micrometres. ISO 286-1, table 1.
#[rustfmt::skip]
const GRADES: &[(u8, [f64; 9])] = &[
    (5, [4.0, 5.0, 6.0, 8.0, 9.0, 11.0, 13.0, 15.0, 18.0]),
    (6, [6.0, 8.0, 9.0, 11.0, 13.0, 16.0, 19.0, 22.0, 25.0]),
    (7, [10.0, 12.0, 15.0, 18.0, 21.0, 25.0, 30.0, 35.0, 40.0]),
    (8, [14.0, 18.0, 22.0, 27.0, 33.0, 39.0, 46.0, 54.0, 63.0]),
    (9, [25.0, 30.0, 36.0, 43.0, 52.0, 62.0, 74.0, 87.0, 100.0]),
    (10, [40.0, 48.0, 58.0, 70.0, 84.0, 100.0, 120.0, 140.0, 160.0]),
    (11, [60.0, 75.0, 90.0, 110.0, 130.0, 160.0, 190.0, 220.0, 250.0]),
];

/// Shafts, upper and lower deviation in micrometres. ISO 286-2; JIS B 0401 prints the same for f7 to s6 up to 80 mm.
#[rustfmt::skip]
const SHAFTS: &[(&str, [(f64, f64); 9])] = &[
    ("h5", [(0.0, -4.0), (0.0, -5.0), (0.0, -6.0), (0.0, -8.0), (0.0, -9.0), (0.0, -11.0), (0.0, -13.0), (0.0, -15.0), (0.0, -18.0)]),
    ("h6", [(0.0, -6.0), (0.0, -8.0), (0.0, -9.0), (0.0, -11.0), (0.0, -13.0), (0.0, -16.0), (0.0, -19.0), (0.0, -22.0), (0.0, -25.0)]),
    ("h7", [(0.0, -10.0), (0.0, -12.0), (0.0, -15.0), (0.0, -18.0), (0.0, -21.0), (0.0, -25.0), (0.0, -30.0), (0.0, -35.0), (0.0, -40.0)]),
    ("h8", [(0.0, -14.0), (0.0, -18.0), (0.0, -22.0), (0.0, -27.0), (0.0, -33.0), (0.0, -39.0), (0.0, -46.0), (0.0, -54.0), (0.0, -63.0)]),
    ("h9", [(0.0, -25.0), (0.0, -30.0), (0.0, -36.0), (0.0, -43.0), (0.0, -52.0), (0.0, -62.0), (0.0, -74.0), (0.0, -87.0), (0.0, -100.0)]),
    ("g6", [(-2.0, -8.0), (-4.0, -12.0), (-5.0, -14.0), (-6.0, -17.0), (-7.0, -20.0), (-9.0, -25.0), (-10.0, -29.0), (-12.0, -34.0), (-14.0, -39.0)]),
    ("k6", [(6.0, 0.0), (9.0, 1.0), (10.0, 1.0), (12.0, 1.0), (15.0, 2.0), (18.0, 2.0), (21.0, 2.0), (25.0, 3.0), (28.0, 3.0)]),
    ("js5", [(2.0, -2.0), (2.5, -2.5), (3.0, -3.0), (4.0, -4.0), (4.5, -4.5), (5.5, -5.5), (6.5, -6.5), (7.5, -7.5), (9.0, -9.0)]),
    ("j5", [(2.0, -2.0), (3.0, -2.0), (4.0, -2.0), (5.0, -3.0), (5.0, -4.0), (6.0, -5.0), (6.0, -7.0), (6.0, -9.0), (7.0, -11.0)]),
    ("j6", [(4.0, -2.0), (6.0, -2.0), (7.0, -2.0), (8.0, -3.0), (9.0, -4.0), (11.0, -5.0), (12.0, -7.0), (13.0, -9.0), (14.0, -11.0)]),
    ("js6", [(3.0, -3.0), (4.0, -4.0), (4.5, -4.5), (5.5, -5.5), (6.5, -6.5), (8.0, -8.0), (9.5, -9.5), (11.0, -11.0), (12.5, -12.5)]),
    ("k5", [(4.0, 0.0), (6.0, 1.0), (7.0, 1.0), (9.0, 1.0), (11.0, 2.0), (13.0, 2.0), (15.0, 2.0), (18.0, 3.0), (21.0, 3.0)]),
    ("m5", [(6.0, 2.0), (9.0, 4.0), (12.0, 6.0), (15.0, 7.0), (17.0, 8.0), (20.0, 9.0), (24.0, 11.0), (28.0, 13.0), (33.0, 15.0)]),
    ("m6", [(8.0, 2.0), (12.0, 4.0), (15.0, 6.0), (18.0, 7.0), (21.0, 8.0), (25.0, 9.0), (30.0, 11.0), (35.0, 13.0), (40.0, 15.0)]),
    ("n6", [(10.0, 4.0), (16.0, 8.0), (19.0, 10.0), (23.0, 12.0), (28.0, 15.0), (33.0, 17.0), (39.0, 20.0), (45.0, 23.0), (52.0, 27.0)]),
    ("p6", [(12.0, 6.0), (20.0, 12.0), (24.0, 15.0), (29.0, 18.0), (35.0, 22.0), (42.0, 26.0), (51.0, 32.0), (59.0, 37.0), (68.0, 43.0)]),
    ("f7", [(-6.0, -16.0), (-10.0, -22.0), (-13.0, -28.0), (-16.0, -34.0), (-20.0, -41.0), (-25.0, -50.0), (-30.0, -60.0), (-36.0, -71.0), (-43.0, -83.0)]),
    ("g5", [(-2.0, -6.0), (-4.0, -9.0), (-5.0, -11.0), (-6.0, -14.0), (-7.0, -16.0), (-9.0, -20.0), (-10.0, -23.0), (-12.0, -27.0), (-14.0, -32.0)]),
    ("h11", [(0.0, -60.0), (0.0, -75.0), (0.0, -90.0), (0.0, -110.0), (0.0, -130.0), (0.0, -160.0), (0.0, -190.0), (0.0, -220.0), (0.0, -250.0)]),
];

/// Shafts of the finer steps. ISO 286-2.
#[rustfmt::skip]
const PRESSED: &[(&str, [(f64, f64); 13])] = &[
    ("r6", [(16.0, 10.0), (23.0, 15.0), (28.0, 19.0), (34.0, 23.0), (41.0, 28.0), (50.0, 34.0), (60.0, 41.0), (62.0, 43.0), (73.0, 51.0), (76.0, 54.0), (88.0, 63.0), (90.0, 65.0), (93.0, 68.0)]),
    ("s6", [(20.0, 14.0), (27.0, 19.0), (32.0, 23.0), (39.0, 28.0), (48.0, 35.0), (59.0, 43.0), (72.0, 53.0), (78.0, 59.0), (93.0, 71.0), (101.0, 79.0), (117.0, 92.0), (125.0, 100.0), (133.0, 108.0)]),
];

/// Holes. ISO 286-2; a table of bearing housings prints the same for K7, N7 and P7 over 6 mm.
#[rustfmt::skip]
const HOLES: &[(&str, [(f64, f64); 9])] = &[
    ("H6", [(6.0, 0.0), (8.0, 0.0), (9.0, 0.0), (11.0, 0.0), (13.0, 0.0), (16.0, 0.0), (19.0, 0.0), (22.0, 0.0), (25.0, 0.0)]),
    ("H7", [(10.0, 0.0), (12.0, 0.0), (15.0, 0.0), (18.0, 0.0), (21.0, 0.0), (25.0, 0.0), (30.0, 0.0), (35.0, 0.0), (40.0, 0.0)]),
    ("H8", [(14.0, 0.0), (18.0, 0.0), (22.0, 0.0), (27.0, 0.0), (33.0, 0.0), (39.0, 0.0), (46.0, 0.0), (54.0, 0.0), (63.0, 0.0)]),
    ("G7", [(12.0, 2.0), (16.0, 4.0), (20.0, 5.0), (24.0, 6.0), (28.0, 7.0), (34.0, 9.0), (40.0, 10.0), (47.0, 12.0), (54.0, 14.0)]),
    ("K7", [(0.0, -10.0), (3.0, -9.0), (5.0, -10.0), (6.0, -12.0), (6.0, -15.0), (7.0, -18.0), (9.0, -21.0), (10.0, -25.0), (12.0, -28.0)]),
    ("N7", [(-4.0, -14.0), (-4.0, -16.0), (-4.0, -19.0), (-5.0, -23.0), (-7.0, -28.0), (-8.0, -33.0), (-9.0, -39.0), (-10.0, -45.0), (-12.0, -52.0)]),
    ("P7", [(-6.0, -16.0), (-8.0, -20.0), (-9.0, -24.0), (-11.0, -29.0), (-14.0, -35.0), (-17.0, -42.0), (-21.0, -51.0), (-24.0, -59.0), (-28.0, -68.0)]),
];

/// Just inside a step, in its middle, and on its bound.
fn sizes(steps: &[f64]) -> Vec<(usize, f64)> {
    let mut over = 0.0;
    let mut sizes = Vec::new();
    for (place, &upto) in steps.iter().enumerate() {
        sizes.extend([over + 0.001, f64::midpoint(over, upto), upto].map(|size| (place, size)));
        over = upto;
    }
    sizes
}

#[track_caller]
fn same(what: &str, nominal: f64, got: Option<Deviations>, (upper, lower): (f64, f64)) {
    let got = got.unwrap();
    let (got_upper, got_lower) = (got.upper.to_um(), got.lower.to_um());
    assert!(
        (got_upper - upper).abs() < WHOLE && (got_lower - lower).abs() < WHOLE,
        "{nominal} {what}: got {got_upper}/{got_lower}, wanted {upper}/{lower}"
    );
}

#[track_caller]
fn check(class: ShaftClass, nominal: f64, upper: f64, lower: f64) {
    let got = deviations(class, Length::mm(nominal));
    same(class.code(), nominal, got, (upper, lower));
    assert!(confirmed_deviations(class, Length::mm(nominal)).is_some());
}

fn shaft(class: ShaftClass, nominal: f64) -> Deviations {
    deviations(class, Length::mm(nominal)).unwrap()
}

fn hole(class: HoleClass, nominal: f64) -> Deviations {
    hole_deviations(class, Length::mm(nominal)).unwrap()
}

#[test]
fn every_shaft_is_as_printed() {
    let mut seen = 0;
    for (code, cells) in SHAFTS {
        let class = ShaftClass::from_code(code).unwrap();
        for (place, nominal) in sizes(&STEPS) {
            check(class, nominal, cells[place].0, cells[place].1);
        }
        seen += 1;
    }
    for (code, cells) in PRESSED {
        let class = ShaftClass::from_code(code).unwrap();
        for (place, nominal) in sizes(&FINE_STEPS) {
            check(class, nominal, cells[place].0, cells[place].1);
        }
        seen += 1;
    }
    assert_eq!(seen, ShaftClass::ALL.len());
}

#[test]
fn every_hole_is_as_printed() {
    for (code, cells) in HOLES {
        let class = HoleClass::from_code(code).unwrap();
        for (place, nominal) in sizes(&STEPS) {
            let got = hole_deviations(class, Length::mm(nominal));
            same(code, nominal, got, cells[place]);
            assert!(confirmed_hole_deviations(class, Length::mm(nominal)).is_some());
        }
    }
    assert_eq!(HOLES.len(), HoleClass::ALL.len());
}

#[test]
fn every_grade_is_as_printed() {
    for (grade, cells) in GRADES {
        for (place, nominal) in sizes(&STEPS) {
            let got = tolerance_grade(*grade, Length::mm(nominal)).unwrap();
            assert!(
                (got.to_um() - cells[place]).abs() < WHOLE,
                "IT{grade} at {nominal}"
            );
        }
    }
    for (grade, nominal) in [(4, 25.0), (12, 25.0), (7, 0.0), (7, 180.1)] {
        assert_eq!(tolerance_grade(grade, Length::mm(nominal)), None);
    }
}

/// ISO 286-1: the limits of a class lie one grade apart; h ends and H begins at the nominal size; js lies evenly about
/// it; G mirrors g; a hole of grade 7 mirrors the shaft of its letter, shifted by IT7 less IT6 over 3 mm.
#[test]
fn classes_keep_the_rules_of_the_standard() {
    for (_, nominal) in sizes(&FINE_STEPS) {
        let grade = |grade| tolerance_grade(grade, Length::mm(nominal)).unwrap().to_um();
        for class in ShaftClass::ALL {
            let limits = shaft(class, nominal);
            let width = (limits.upper - limits.lower).to_um();
            assert!(
                (width - grade(class.grade())).abs() < WHOLE,
                "{}",
                class.code()
            );
            match class.code() {
                code if code.starts_with('h') => assert_eq!(limits.upper, Length::ZERO),
                code if code.starts_with("js") => assert_eq!(limits.upper, -limits.lower),
                _ => {}
            }
        }
        for class in HoleClass::ALL {
            let limits = hole(class, nominal);
            let width = (limits.upper - limits.lower).to_um();
            assert!(
                (width - grade(class.grade())).abs() < WHOLE,
                "{}",
                class.code()
            );
            if class.code().starts_with('H') {
                assert_eq!(limits.lower, Length::ZERO);
            }
        }
        assert_eq!(
            hole(HoleClass::G7, nominal).lower,
            -shaft(ShaftClass::G6, nominal).upper
        );
        let shift = if nominal <= 3.0 {
            0.0
        } else {
            grade(7) - grade(6)
        };
        for (class, mirrored) in [
            (HoleClass::K7, ShaftClass::K6),
            (HoleClass::N7, ShaftClass::N6),
            (HoleClass::P7, ShaftClass::P6),
        ] {
            let wanted = shift - shaft(mirrored, nominal).lower.to_um();
            let upper = hole(class, nominal).upper.to_um();
            assert!((upper - wanted).abs() < WHOLE, "{} {nominal}", class.code());
        }
    }
}

/// From loose to tight: each of these begins no lower than the one before.
#[test]
fn letters_run_from_loose_to_tight() {
    use ShaftClass::{F7, G6, H6, J6, Js6, K6, M6, N6, P6, R6, S6};
    for (_, nominal) in sizes(&FINE_STEPS) {
        let uppers = [F7, G6, H6, Js6, K6, M6, N6, P6, R6, S6].map(|c| shaft(c, nominal).upper);
        assert!(uppers.is_sorted(), "{nominal}");
        assert!(shaft(J6, nominal).upper >= shaft(Js6, nominal).upper);
    }
}

#[test]
fn marks_name_the_weak_cells() {
    let mark = |class, mm| confirmed_deviations(class, Length::mm(mm)).unwrap();
    for (class, mm, wanted) in [
        (ShaftClass::H11, 150.0, Confirmed::TwoSources),
        (ShaftClass::K6, 80.0, Confirmed::TwoSources),
        (ShaftClass::K6, 80.1, Confirmed::OneSource),
        (ShaftClass::J6, 3.0, Confirmed::OneSource),
        (ShaftClass::J6, 80.0, Confirmed::TwoSources),
        (ShaftClass::J5, 121.0, Confirmed::Memory),
        (ShaftClass::R6, 25.0, Confirmed::OneSource),
    ] {
        assert_eq!(mark(class, mm), wanted, "{} {mm}", class.code());
    }
    let mark = |class, mm| confirmed_hole_deviations(class, Length::mm(mm)).unwrap();
    assert_eq!(mark(HoleClass::G7, 25.0), Confirmed::OneSource);
    assert_eq!(mark(HoleClass::P7, 6.0), Confirmed::OneSource);
    assert_eq!(mark(HoleClass::P7, 25.0), Confirmed::TwoSources);
}

/// 2 in in s6 by the metric table: 53 µm of lower deviation, where inch tables of a design textbook give 43.
#[test]
fn a_press_fit_on_two_inches() {
    let lower = deviations(ShaftClass::S6, Length::inch(2.0)).unwrap().lower;
    assert!((lower.to_um() - 53.0).abs() < WHOLE);
}

/// 25 H7/g6 in a fits library's manual: hole 0 to 21 µm, clearance 7 to 41 µm.
#[test]
fn published_running_fit() {
    check(ShaftClass::G6, 25.0, -7.0, -20.0);
    let (hole, shaft) = (hole(HoleClass::H7, 25.0), shaft(ShaftClass::G6, 25.0));
    let clearance = (
        (hole.lower - shaft.upper).to_um(),
        (hole.upper - shaft.lower).to_um(),
    );
    assert!((clearance.0 - 7.0).abs() < WHOLE && (clearance.1 - 41.0).abs() < WHOLE);
}

/// Two inches are 50.8 mm and fall over the bound at 50 mm, although the inch system's own table puts them below it.
#[test]
fn two_inches_lie_over_fifty_millimetres() {
    let shaft = deviations(ShaftClass::H6, Length::inch(2.0)).unwrap();
    assert!((shaft.lower.to_um() + 19.0).abs() < WHOLE);
}

/// The formula of ISO 286-1 for 18 to 30 mm: i = 0.45 ∛D + 0.001 D with D = √(18 × 30), IT6 = 10 i, IT7 = 16 i.
#[test]
fn grades_follow_the_formula_within_rounding() {
    let d = (18.0_f64 * 30.0).sqrt();
    let i = 0.45 * d.cbrt() + 0.001 * d;
    let lower = |class| deviations(class, Length::mm(25.0)).unwrap().lower.to_um();
    assert!((lower(ShaftClass::H6) + 10.0 * i).abs() < 0.5);
    assert!((lower(ShaftClass::H7) + 16.0 * i).abs() < 0.5);
}

/// Shanks as tool makers grind them: h6 by diameter, micrometres below the nominal size.
#[test]
fn ground_shanks() {
    for (diameter, lower) in [
        (6.0, -8.0),
        (10.0, -9.0),
        (12.0, -11.0),
        (20.0, -13.0),
        (32.0, -16.0),
    ] {
        check(ShaftClass::H6, diameter, 0.0, lower);
    }
}
