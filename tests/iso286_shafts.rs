//! Shaft deviations against a second statement: the standard tolerance grades and the fundamental deviations.
//!
//! ISO 286-1, table 1 (grades IT5 to IT9) and tables 4 and 5 (deviations g and k), with published examples of fits.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::{ShaftClass, confirmed_deviations, deviations};

/// Micrometres are whole numbers; this only takes up the arithmetic.
const WHOLE: f64 = 1e-9;

/// One step: over, up to (millimetres); IT5 to IT9; the upper deviation of g and the lower of k (micrometres).
type Step = (f64, f64, [f64; 5], f64, f64);

#[rustfmt::skip]
const STEPS: &[Step] = &[
    //  over   to     IT5   IT6   IT7   IT8   IT9       g     k
    (   0.0,   3.0, [ 4.0,  6.0, 10.0, 14.0,  25.0],  -2.0, 0.0),
    (   3.0,   6.0, [ 5.0,  8.0, 12.0, 18.0,  30.0],  -4.0, 1.0),
    (   6.0,  10.0, [ 6.0,  9.0, 15.0, 22.0,  36.0],  -5.0, 1.0),
    (  10.0,  18.0, [ 8.0, 11.0, 18.0, 27.0,  43.0],  -6.0, 1.0),
    (  18.0,  30.0, [ 9.0, 13.0, 21.0, 33.0,  52.0],  -7.0, 2.0),
    (  30.0,  50.0, [11.0, 16.0, 25.0, 39.0,  62.0],  -9.0, 2.0),
    (  50.0,  80.0, [13.0, 19.0, 30.0, 46.0,  74.0], -10.0, 2.0),
    (  80.0, 120.0, [15.0, 22.0, 35.0, 54.0,  87.0], -12.0, 3.0),
    ( 120.0, 180.0, [18.0, 25.0, 40.0, 63.0, 100.0], -14.0, 3.0),
];

#[track_caller]
fn check(class: ShaftClass, nominal: f64, upper: f64, lower: f64) {
    let got = deviations(class, Length::mm(nominal)).unwrap();
    let (got_upper, got_lower) = (got.upper.to_um(), got.lower.to_um());
    assert!(
        (got_upper - upper).abs() < WHOLE && (got_lower - lower).abs() < WHOLE,
        "{nominal} {}: got {got_upper}/{got_lower}, wanted {upper}/{lower}",
        class.code()
    );
    assert!(confirmed_deviations(class, Length::mm(nominal)).is_some());
    assert_eq!(ShaftClass::from_code(class.code()), Some(class));
}

#[test]
fn every_class_agrees_with_grade_and_fundamental_deviation() {
    for &(over, upto, grades, g, k) in STEPS {
        for nominal in [over + 0.001, f64::midpoint(over, upto), upto] {
            let [it5, it6, it7, it8, it9] = grades;
            check(ShaftClass::H5, nominal, 0.0, -it5);
            check(ShaftClass::H6, nominal, 0.0, -it6);
            check(ShaftClass::H7, nominal, 0.0, -it7);
            check(ShaftClass::H8, nominal, 0.0, -it8);
            check(ShaftClass::H9, nominal, 0.0, -it9);
            check(ShaftClass::G6, nominal, g, g - it6);
            check(ShaftClass::K6, nominal, k + it6, k);
        }
    }
}

/// 25 H7/g6 in a fits library's manual: hole 0 to 21 µm, clearance 7 to 41 µm.
#[test]
fn published_running_fit() {
    check(ShaftClass::G6, 25.0, -7.0, -20.0);
    let shaft = deviations(ShaftClass::G6, Length::mm(25.0)).unwrap();
    let clearance = (0.0 - shaft.upper.to_um(), 21.0 - shaft.lower.to_um());
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
