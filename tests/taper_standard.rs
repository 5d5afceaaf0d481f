//! Standard tapers against a second published list.
//!
//! Morse and Brown & Sharpe: a tool dealer's list of taper dimensions (ends and taper per foot to four decimals, half
//! angle to four decimals of a degree). Morse taper per foot: a second copy of the handbook table, five decimals.
//! Jarno: the rule of the series. Left out: lengths, of which that list prints two decimals only.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::TaperSeries::{self, BrownSharpe, Jarno, Morse};
use skimwright::tables::{TAPERS, TaperSize};

/// Half the last printed digit of a diameter of four decimals of an inch, and the table's own last digit.
const DIAMETER: f64 = 0.000_056;

/// Half the last digit of a half angle with four decimals of a degree, rounded once more on the way.
const HALF_ANGLE: f64 = 0.000_1;

/// One size: taper in inches per foot with its tolerance, large and small end in inches, half angle in degrees.
type Case = (TaperSeries, &'static str, f64, f64, f64, f64, f64);

#[rustfmt::skip]
const CASES: &[Case] = &[
    //            no     in/ft    within      large   small   half angle
    (Morse,       "0",   0.62460, 0.000_005,  0.3561, 0.2520, 1.4908),
    (Morse,       "1",   0.59858, 0.000_005,  0.4750, 0.3690, 1.4287),
    (Morse,       "2",   0.59941, 0.000_005,  0.7000, 0.5720, 1.4307),
    (Morse,       "3",   0.60235, 0.000_005,  0.9380, 0.7780, 1.4377),
    (Morse,       "4",   0.62326, 0.000_005,  1.2310, 1.0200, 1.4876),
    (Morse,       "4.5", 0.6240,  0.000_05,   1.5000, 1.2660, 1.4894),
    (Morse,       "5",   0.63151, 0.000_005,  1.7480, 1.4750, 1.5073),
    (Morse,       "6",   0.62565, 0.000_005,  2.4940, 2.1160, 1.4933),
    (Morse,       "7",   0.62400, 0.000_005,  3.2700, 2.7500, 1.4894),
    (BrownSharpe, "1",   0.5020,  0.000_051,  0.2392, 0.2000, 1.1983),
    (BrownSharpe, "2",   0.5020,  0.000_051,  0.2997, 0.2500, 1.1983),
    (BrownSharpe, "3",   0.5020,  0.000_051,  0.3753, 0.3125, 1.1983),
    (BrownSharpe, "4",   0.5024,  0.000_051,  0.4207, 0.3500, 1.1992),
    (BrownSharpe, "5",   0.5016,  0.000_051,  0.5388, 0.4500, 1.1973),
    (BrownSharpe, "6",   0.5033,  0.000_051,  0.5996, 0.5000, 1.2013),
    (BrownSharpe, "7",   0.5015,  0.000_051,  0.7201, 0.6000, 1.1970),
    (BrownSharpe, "8",   0.5010,  0.000_051,  0.8987, 0.7500, 1.1959),
    (BrownSharpe, "9",   0.5009,  0.000_051,  1.0775, 0.9001, 1.1955),
    (BrownSharpe, "10",  0.5161,  0.000_051,  1.2597, 1.0447, 1.2320),
    (BrownSharpe, "11",  0.5010,  0.000_051,  1.4978, 1.2500, 1.1959),
    (BrownSharpe, "12",  0.4997,  0.000_051,  1.7968, 1.5001, 1.1928),
    (BrownSharpe, "13",  0.5002,  0.000_051,  2.0731, 1.7501, 1.1940),
    (BrownSharpe, "14",  0.5000,  0.000_051,  2.3438, 2.0000, 1.1935),
    (BrownSharpe, "15",  0.5000,  0.000_051,  2.6146, 2.2500, 1.1935),
    (BrownSharpe, "16",  0.5000,  0.000_051,  2.8854, 2.5000, 1.1935), // taper and angle from memory
];

#[track_caller]
fn check(name: &str, what: &str, got: f64, wanted: f64, tolerance: f64) {
    let difference = got - wanted;
    assert!(
        difference.abs() <= tolerance,
        "{name}, {what}: got {got}, wanted {wanted}, difference {difference}"
    );
}

#[test]
fn morse_and_brown_sharpe_agree_with_a_second_list() {
    for &(series, size, per_foot, within, large, small, half_angle) in CASES {
        let place = TaperSize::find(series, size).unwrap();
        let taper = place.get().unwrap();
        let name = place.code();
        check(name, "taper per foot", taper.ratio * 12.0, per_foot, within);
        check(
            name,
            "large end",
            taper.large_diameter.to_inch(),
            large,
            DIAMETER,
        );
        check(
            name,
            "small end",
            taper.small_diameter.to_inch(),
            small,
            DIAMETER,
        );
        check(
            name,
            "half angle",
            taper.half_angle().to_degrees(),
            half_angle,
            HALF_ANGLE,
        );
    }
}

#[test]
fn jarno_follows_the_rule_of_the_series() {
    for number in 2..=20_u8 {
        let place = TaperSize::find(Jarno, &number.to_string()).unwrap();
        let taper = place.get().unwrap();
        let name = place.code();
        let n = f64::from(number);
        check(name, "taper per foot", taper.ratio * 12.0, 0.6, 1e-12);
        check(
            name,
            "large end",
            taper.large_diameter.to_inch(),
            n / 8.0,
            1e-12,
        );
        check(
            name,
            "small end",
            taper.small_diameter.to_inch(),
            n / 10.0,
            1e-12,
        );
        check(name, "length", taper.length.to_inch(), n / 2.0, 1e-12);
        check(
            name,
            "half angle",
            taper.half_angle().to_degrees(),
            1.4321,
            HALF_ANGLE,
        );
    }
}

#[test]
fn every_row_has_a_case() {
    assert_eq!(CASES.len() + 19, TAPERS.len());
    assert_eq!(CASES.iter().filter(|case| case.0 == Morse).count(), 9);
    assert_eq!(
        CASES.iter().filter(|case| case.0 == BrownSharpe).count(),
        16
    );
}

/// The other lengths of Brown & Sharpe tapers share small end and ratio: number, length, large end in inches.
#[test]
fn brown_sharpe_of_another_length_fits_the_same_cone() {
    for (size, length, large) in [
        ("4", 1.25, 0.40233),
        ("5", 1.75, 0.52315),
        ("7", 3.0, 0.72537),
        ("9", 4.0, 1.06705),
        ("10", 5.6875, 1.28927),
        ("11", 6.75, 1.53176),
    ] {
        let taper = TaperSize::find(BrownSharpe, size).unwrap().get().unwrap();
        let got = taper.small_diameter + Length::inch(length) * taper.ratio;
        check(size, "large end", got.to_inch(), large, 0.000_04);
    }
}

/// An encyclopaedia gives No 2 Morse as 1:20.020 with a half angle of 1° 25′ 50″.
#[test]
fn morse_2_in_degrees_minutes_and_seconds() {
    let taper = TaperSize::from_code("morse-2").unwrap().get().unwrap();
    let printed = 1.0 + 25.0 / 60.0 + 50.0 / 3600.0;
    check(
        "morse-2",
        "half angle",
        taper.half_angle().to_degrees(),
        printed,
        0.000_2,
    );
    check("morse-2", "one in", 1.0 / taper.ratio, 20.020, 0.000_5);
}

/// A naval handbook's table of tapers per foot prints 1° 11′ 35″ for the half angle of ½ inch; read from rounded
/// tangents, it may be 4″ out.
#[test]
fn half_an_inch_per_foot() {
    let taper = TaperSize::from_code("brown-sharpe-14")
        .unwrap()
        .get()
        .unwrap();
    let printed = 1.0 + 11.0 / 60.0 + 35.0 / 3600.0;
    check(
        "brown-sharpe-14",
        "half angle",
        taper.half_angle().to_degrees(),
        printed,
        4.0 / 3600.0,
    );
}

/// How far a Morse shank runs past the gauge plane: what is left of the whole shank beyond gauge plane to tang end
/// in the table of tanged shanks of ISO 296, millimetres.
#[test]
fn morse_shanks_run_past_the_gauge_plane() {
    for (size, whole, gauge_to_end) in [
        ("0", 59.5, 56.5),
        ("1", 65.5, 62.0),
        ("2", 80.0, 75.0),
        ("3", 99.0, 94.0),
        ("4", 124.0, 117.5),
        ("5", 156.0, 149.5),
        ("6", 218.0, 210.0),
    ] {
        let taper = TaperSize::find(Morse, size).unwrap().get().unwrap();
        check(
            size,
            "past gauge",
            taper.past_gauge.unwrap().to_mm(),
            whole - gauge_to_end,
            1e-9,
        );
    }
}
