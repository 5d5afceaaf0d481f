//! Recognising standard tapers: cones that are none, near tapers, places beyond a table, swapped and odd input.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/cones.rs"]
mod cones;

use cones::{
    CALLIPER, Dice, FINE, MICROMETER, Setting, exactly, length, measure, mm, reading, row, whole,
};
use proptest::prelude::*;
use skimwright::part::{LEAST_SHARE, LargeEnd, Recognition, TaperReading, Verdict, recognise};
use skimwright::quantity::Length;
use skimwright::tables::TaperSize;

#[test]
fn a_cone_of_no_standard_is_none_of_these() {
    let fifteen_degrees = 2.0 * 7.5_f64.to_radians().tan();
    for (ratio, distance) in [
        (0.1, 20.0),
        (0.1, 50.0),
        (fifteen_degrees, 20.0),
        (fifteen_degrees, 50.0),
        (1.0 / 30.0, 60.0),
        (1.0, 10.0),
    ] {
        for setting in [MICROMETER, CALLIPER] {
            let large = 31.0;
            let answer = recognise(&reading(large, large - ratio * distance, distance, setting));
            assert_eq!(
                answer.verdict,
                Verdict::NoneOfThese,
                "{ratio}, {}",
                setting.name
            );
            assert_eq!(answer.candidates.len(), 1);
            assert!(answer.candidates[0].share < LEAST_SHARE);
            assert!((answer.ratio.unwrap().value - ratio).abs() < 1e-9);
        }
    }
}

/// A ratio of a standard taper, and diameters that none of its sizes has.
#[test]
fn the_right_ratio_on_the_wrong_size_is_none_of_these() {
    let answer = recognise(&reading(114.0, 114.0 - 7.0, 24.0, MICROMETER));
    assert_eq!(answer.verdict, Verdict::NoneOfThese);
    assert_eq!(answer.candidates[0].size.code(), "steep-60");
    assert!(!answer.candidates[0].on_taper);
    assert!(answer.candidates[0].gauge_plane.value < Length::mm(0.0));
}

/// By hand: 4 mm over 80 mm is 1:20. The change is off by √(0.02² + 0.02²) = 0.0283 mm, the distance by 0.1 mm, which
/// is 0.005 mm of change; together 0.02872 mm, over 80 mm.
#[test]
fn ratio_and_angle_by_hand() {
    let answer = recognise(&reading(30.0, 26.0, 80.0, MICROMETER));
    let ratio = answer.ratio.unwrap();
    assert!((ratio.value - 0.05).abs() < 1e-12);
    assert!((ratio.error - 3.590e-4).abs() < 1e-7, "{}", ratio.error);
    let angle = answer.half_angle.unwrap();
    assert!((angle.value.to_degrees() - 1.432_10).abs() < 1e-5);
    assert!((angle.error.to_degrees() - 0.010_28).abs() < 1e-5);
}

#[test]
fn the_gauge_plane_is_where_it_was_put() {
    for size in TaperSize::all() {
        let taper = size.get().unwrap();
        let length = taper.length.to_mm();
        for (from, to) in [(0.0, 0.9), (0.2, 1.0), (-0.05, 0.8)] {
            let (from, to) = (from * length, to * length);
            let answer = recognise(&exactly(taper, from, to, MICROMETER));
            let found = answer
                .candidates
                .iter()
                .find(|found| found.size == size)
                .unwrap();
            assert!((found.gauge_plane.value.to_mm() - from).abs() < 1e-6);
            assert!(found.residual.abs() < 1e-6 && (found.share - 1.0).abs() < 1e-4);
        }
    }
}

#[test]
fn places_beyond_the_table_are_told() {
    let on_taper = |code: &str, from: f64, to: f64| {
        let (size, taper) = row(code);
        let answer = recognise(&exactly(taper, from, to, FINE));
        answer
            .candidates
            .iter()
            .find(|found| found.size == size)
            .map(|found| found.on_taper)
    };
    // A Morse shank runs 5 mm past its gauge plane; no table says that a Jarno shank does.
    assert_eq!(on_taper("morse-2", -4.5, 50.0), Some(true));
    assert_eq!(on_taper("morse-2", -6.0, 50.0), Some(false));
    assert_eq!(on_taper("jarno-7", 0.0, 88.0), Some(true));
    assert_eq!(on_taper("jarno-7", -4.0, 80.0), Some(false));
    assert_eq!(on_taper("jarno-7", 5.0, 91.0), Some(false));
    assert_eq!(on_taper("jarno-7", -20.0, 80.0), None);
}

/// Codes of the candidates, likeliest first.
fn named(answer: &Recognition) -> Vec<&'static str> {
    answer
        .candidates
        .iter()
        .map(|found| found.size.code())
        .collect()
}

#[test]
fn near_tapers_are_told_apart_only_as_far_as_the_instruments_go() {
    // Where Jarno 8 and Morse 3 have the same diameters: 0.012 mm in 60 mm is between them.
    let (_, jarno) = row("jarno-8");
    let coarse = recognise(&exactly(jarno, 35.0, 95.0, MICROMETER));
    assert_eq!(coarse.verdict, Verdict::NotToldApart);
    assert!(named(&coarse).contains(&"jarno-8") && named(&coarse).contains(&"morse-3"));
    let fine = recognise(&exactly(jarno, 35.0, 95.0, FINE));
    assert!(named(&fine).contains(&"jarno-8") && !named(&fine).contains(&"morse-3"));
    // Brown & Sharpe 9 and Morse 4: the same diameters, and ratios far apart.
    let (_, brown_sharpe) = row("brown-sharpe-9");
    let answer = recognise(&exactly(brown_sharpe, 2.0, 30.0, MICROMETER));
    assert_eq!(answer.verdict, Verdict::Found);
    assert_eq!(named(&answer), ["brown-sharpe-9"]);
}

#[test]
fn a_piece_of_a_taper_comes_before_the_whole() {
    let (_, piece) = row("chuck-b12");
    let answer = recognise(&exactly(piece, 1.0, 17.5, MICROMETER));
    assert_eq!(answer.verdict, Verdict::NotToldApart);
    assert_eq!(named(&answer)[0], "chuck-b12");
    assert!(named(&answer).contains(&"morse-1"));
    let (_, whole) = row("morse-1");
    let answer = recognise(&exactly(whole, 1.0, 52.0, MICROMETER));
    assert_eq!(named(&answer)[0], "morse-1");
    assert!(!named(&answer).contains(&"chuck-b12"));
}

fn swapped(reading: &TaperReading) -> TaperReading {
    TaperReading {
        large: reading.small,
        small: reading.large,
        distance: reading.distance,
    }
}

#[test]
fn swapped_diameters_give_the_same_and_say_so() {
    let mut dice = Dice(11);
    for size in TaperSize::all() {
        let taper = size.get().unwrap();
        let places = whole(&mut dice, taper);
        let mut reading = measure(&mut dice, taper, places, MICROMETER);
        reading.small.error = Length::mm(0.03);
        let straight = recognise(&reading);
        let turned = recognise(&swapped(&reading));
        assert_eq!(straight.large_end, LargeEnd::TowardShoulder);
        assert_eq!(turned.large_end, LargeEnd::TowardFreeEnd);
        assert_eq!(
            turned,
            Recognition {
                large_end: LargeEnd::TowardFreeEnd,
                ..straight
            }
        );
    }
}

/// Both places a step along the taper: all is the same but the gauge plane, which is a step farther.
#[test]
fn a_step_along_the_taper_moves_only_the_gauge_plane() {
    const STEP: f64 = 3.0;
    for code in ["morse-5", "jarno-12", "brown-sharpe-11", "steep-60"] {
        let (size, taper) = row(code);
        let base = exactly(taper, 10.0, 60.0, MICROMETER);
        let moved = exactly(taper, 10.0 + STEP, 60.0 + STEP, MICROMETER);
        let [base, moved] = [base, moved].map(|mut reading| {
            reading.large.value += Length::um(8.0);
            let answer = recognise(&reading);
            *answer
                .candidates
                .iter()
                .find(|found| found.size == size)
                .unwrap()
        });
        assert!((base.share - moved.share).abs() < 1e-9);
        assert!((base.residual - moved.residual).abs() < 1e-9);
        let step = (moved.gauge_plane.value - base.gauge_plane.value).to_mm();
        assert!((step - STEP).abs() < 1e-9, "{code}: {step}");
    }
}

#[test]
fn odd_input_has_a_verdict() {
    let [nan, endless] = [f64::NAN, f64::INFINITY];
    for (large, small, distance, wanted) in [
        (nan, 20.0, 50.0, Verdict::NotALength),
        (22.0, nan, 50.0, Verdict::NotALength),
        (22.0, 20.0, nan, Verdict::NotALength),
        (endless, 20.0, 50.0, Verdict::NotALength),
        (22.0, 20.0, endless, Verdict::NotALength),
        (1e300, 20.0, 50.0, Verdict::NotALength),
        (22.0, 0.0, 50.0, Verdict::NotALength),
        (-22.0, -20.0, 50.0, Verdict::NotALength),
        (22.0, 20.0, 0.0, Verdict::NoDistance),
        (22.0, 20.0, -50.0, Verdict::NoDistance),
        (22.0, 20.0, 0.09, Verdict::NoDistance),
        (20.0, 20.0, 50.0, Verdict::NoChange),
        (20.02, 20.0, 50.0, Verdict::NoChange),
        (40.0, 20.0, 9.9, Verdict::TooSteep),
        (40.0, 20.0, 10.1, Verdict::NoneOfThese),
    ] {
        let answer = recognise(&reading(large, small, distance, MICROMETER));
        assert_eq!(answer.verdict, wanted, "{large}, {small}, {distance}");
        let has_candidates = wanted == Verdict::NoneOfThese;
        assert_eq!(!answer.candidates.is_empty(), has_candidates);
    }
    for error in [nan, endless, -0.01] {
        let mut odd = reading(22.0, 20.0, 40.0, MICROMETER);
        odd.small.error = length(error);
        assert_eq!(recognise(&odd).verdict, Verdict::NotALength, "{error}");
    }
    // Instruments without any error are taken at the tables' own rounding.
    let (_, taper) = row("morse-3");
    let perfect = Setting {
        name: "perfect",
        diameter: 0.0,
        distance: 0.0,
    };
    let answer = recognise(&exactly(taper, 2.0, 78.0, perfect));
    assert_eq!(named(&answer), ["morse-3"]);
}

/// Any number, for figures that cannot be.
fn figure() -> impl Strategy<Value = f64> {
    prop_oneof![prop::num::f64::ANY, -1.0..300.0_f64, 0.0..0.5_f64]
}

fn check_figures(answer: &Recognition) -> Result<(), TestCaseError> {
    if let (Some(ratio), Some(angle)) = (answer.ratio, answer.half_angle) {
        prop_assert!(ratio.value.is_finite() && ratio.value >= 0.0);
        prop_assert!(ratio.error.is_finite() && ratio.error > 0.0);
        prop_assert!(angle.value.is_finite() && angle.error.is_finite());
    }
    let mut last = 1.0;
    for (place, found) in answer.candidates.iter().enumerate() {
        prop_assert!((0.0..=1.0).contains(&found.share) && found.residual.is_finite());
        prop_assert!((0.0..=last).contains(&found.likelihood));
        prop_assert!(place > 0 || found.likelihood >= 1.0);
        last = found.likelihood;
        prop_assert!(found.gauge_plane.value.is_finite());
        prop_assert!(found.gauge_plane.error > Length::mm(0.0));
    }
    Ok(())
}

proptest! {
    #[test]
    fn no_input_gives_a_figure_that_is_none(
        [large, small, distance] in [figure(), figure(), figure()],
        [large_error, small_error, distance_error] in [figure(), figure(), figure()],
    ) {
        check_figures(&recognise(&TaperReading {
            large: mm(large, large_error),
            small: mm(small, small_error),
            distance: mm(distance, distance_error),
        }))?;
    }

    #[test]
    fn every_reading_gives_sound_figures(
        [large, small, distance] in [0.1..220.0_f64, 0.1..220.0_f64, 0.1..300.0_f64],
        [large_error, small_error, distance_error] in [0.0..0.2_f64, 0.0..0.2_f64, 0.0..1.0_f64],
    ) {
        let answer = recognise(&TaperReading {
            large: mm(large, large_error),
            small: mm(small, small_error),
            distance: mm(distance, distance_error),
        });
        check_figures(&answer)?;
        prop_assert!(answer.verdict != Verdict::NotALength);
        let is_cone = matches!(
            answer.verdict,
            Verdict::Found | Verdict::NotToldApart | Verdict::NoneOfThese
        );
        prop_assert_eq!(is_cone, !answer.candidates.is_empty());
    }
}
