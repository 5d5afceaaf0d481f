//! Standard tapers against published lists other than those that the table was made from, where there are such.
//!
//! Morse, Brown & Sharpe and Jacobs: a tool dealer's list of taper dimensions (ends and taper per foot to four decimals,
//! half angle to four decimals of a degree). Morse taper per foot: a second copy of the handbook table, five decimals.
//! Jarno: the rule of the series. Left out: lengths of these, of which that list prints two decimals only, save for a
//! rough check. Metric: GOST 25557, equal to ISO 296. Drill chuck: GOST 9953 and the scope of ISO 239. 7/24: a machine
//! manual's table of MAS 403 shanks. Morse shank ends: a reproduced table of ISO 296 and DIN 228-1, form B.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::TaperSeries::{
    self, BrownSharpe, Chuck, Jacobs, Jarno, Metric, Morse, R8, Steep,
};
use skimwright::tables::{Confirmed, MORSE_ENDS, MorseEnd, StandardTaper, TAPERS, TaperSize};

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
    (Jacobs,      "0",   0.5915,  0.000_051,  0.2500, 0.2284, 1.4117),
    (Jacobs,      "1",   0.9251,  0.000_051,  0.3840, 0.3334, 2.2074),
    (Jacobs,      "2",   0.9786,  0.000_051,  0.5590, 0.4876, 2.3350),
    (Jacobs,  "2 short", 0.9786,  0.000_051,  0.5488, 0.4876, 2.3350),
    (Jacobs,      "3",   0.6390,  0.000_051,  0.8110, 0.7461, 1.5251),
    (Jacobs,      "4",   0.6289,  0.000_051,  1.1240, 1.0372, 1.5009),
    (Jacobs,      "5",   0.6201,  0.000_051,  1.4130, 1.3161, 1.4801),
    (Jacobs,      "6",   0.6229,  0.000_051,  0.6760, 0.6241, 1.4868),
    (Jacobs,      "33",  0.7619,  0.000_051,  0.6240, 0.5605, 1.8184),
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
fn morse_brown_sharpe_and_jacobs_agree_with_a_second_list() {
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
    const JARNO: usize = 19;
    const R8_ROWS: usize = 1;
    let elsewhere = JARNO + METRIC.len() + CHUCK.len() + STEEP.len() + R8_ROWS;
    assert_eq!(CASES.len() + elsewhere, TAPERS.len());
    for (series, count) in [(Morse, 9), (BrownSharpe, 16), (Jacobs, 9)] {
        assert_eq!(
            CASES.iter().filter(|case| case.0 == series).count(),
            count,
            "{series:?}"
        );
    }
    for series in TaperSeries::ALL {
        assert!(TAPERS.iter().any(|taper| taper.series == series));
    }
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

fn row(series: TaperSeries, size: &str) -> &'static StandardTaper {
    TaperSize::find(series, size).unwrap().get().unwrap()
}

/// Lengths of the dealer's list, two decimals of an inch.
#[test]
fn lengths_of_jacobs_tapers() {
    for (size, length) in [
        ("0", 0.44),
        ("1", 0.66),
        ("2", 0.88),
        ("2 short", 0.75),
        ("3", 1.22),
        ("4", 1.66),
        ("5", 1.88),
        ("6", 1.00),
        ("33", 1.00),
    ] {
        let got = row(Jacobs, size).length.to_inch();
        check(size, "length", got, length, 0.005_001);
    }
}

/// GOST 25557, equal to ISO 296: size, gauge diameter, diameter where the cone ends at the shoulder, small end to
/// 0.1 mm, millimetres.
#[rustfmt::skip]
const METRIC: &[(&str, f64, f64, f64)] = &[
    ("4",     4.0,   4.1,   2.9),
    ("6",     6.0,   6.2,   4.4),
    ("80",   80.0,  80.4,  70.2),
    ("100", 100.0, 100.5,  88.4),
    ("120", 120.0, 120.6, 106.6),
    ("160", 160.0, 160.8, 143.0),
    ("200", 200.0, 201.0, 179.4),
];

/// Half of 0.1 mm.
const PRINTED_TENTH: f64 = 0.050_001;

#[test]
fn metric_tapers_agree_with_the_standard() {
    for &(size, gauge, largest, small) in METRIC {
        let taper = row(Metric, size);
        let diameter = |past: Length| (taper.large_diameter + past * taper.ratio).to_mm();
        check(size, "ratio", taper.ratio, 0.05, 1e-12);
        check(size, "gauge", diameter(Length::mm(0.0)), gauge, 1e-9);
        check(
            size,
            "largest",
            diameter(taper.past_gauge.unwrap()),
            largest,
            PRINTED_TENTH,
        );
        check(
            size,
            "at the end",
            diameter(-taper.length),
            small,
            PRINTED_TENTH,
        );
        check(
            size,
            "small",
            taper.small_diameter.to_mm(),
            small,
            PRINTED_TENTH,
        );
        check(
            size,
            "half angle",
            taper.half_angle().to_degrees(),
            1.4321,
            HALF_ANGLE,
        );
        assert_eq!(taper.confirmed, Confirmed::OneSource);
    }
}

/// GOST 9953: size, large end, small end to 0.1 mm, length, millimetres; ISO 239: the Morse taper that it is cut from.
#[rustfmt::skip]
const CHUCK: &[(&str, f64, f64, f64, &str)] = &[
    ("B10", 10.094,  9.4, 14.5, "1"),
    ("B12", 12.065, 11.1, 18.5, "1"),
    ("B16", 15.733, 14.5, 24.0, "2"),
    ("B18", 17.780, 16.2, 32.0, "2"),
    ("B22", 21.793, 19.8, 40.5, "3"),
    ("B24", 23.825, 21.3, 50.5, "3"),
];

#[test]
fn drill_chuck_tapers_are_pieces_of_morse_tapers() {
    for &(size, large, small, length, number) in CHUCK {
        let taper = row(Chuck, size);
        let morse = row(Morse, number);
        check(size, "large", taper.large_diameter.to_mm(), large, 1e-9);
        check(
            size,
            "small",
            taper.small_diameter.to_mm(),
            small,
            PRINTED_TENTH,
        );
        check(size, "length", taper.length.to_mm(), length, 1e-9);
        check(size, "ratio", taper.ratio, morse.ratio, 1e-12);
        let at_large = (morse.large_diameter - taper.large_diameter).to_mm();
        let at_small = (taper.small_diameter - morse.small_diameter).to_mm();
        assert!(at_large > -0.001 && at_small > -0.01, "{size}");
        // A B taper is the large end of its Morse taper, or its small one.
        assert!(at_large.abs() < 0.001 || at_small.abs() < 0.01, "{size}");
    }
}

/// A machine manual's table of MAS 403 shanks, equal in the cone to ISO 297 and DIN 2080: size, large end, length,
/// small end, millimetres. Second, ASME B5.50 in a handbook: gauge diameter in inches.
#[rustfmt::skip]
const STEEP: &[(&str, f64, f64, f64, Option<f64>)] = &[
    ("30",  31.75,  48.4, 17.6333, Some(1.25)),
    ("35",  38.10,  56.4, 21.65,   None),
    ("40",  44.45,  65.4, 25.375,  Some(1.75)),
    ("45",  57.15,  82.8, 33.0,    Some(2.25)),
    ("50",  69.85, 101.8, 40.1583, Some(2.75)),
    ("55",  88.90, 126.8, 51.9167, None),
    ("60", 107.95, 161.8, 60.7583, Some(4.25)),
];

#[test]
fn steep_tapers_agree_with_the_standard() {
    for &(size, large, length, small, inches) in STEEP {
        let taper = row(Steep, size);
        check(size, "large", taper.large_diameter.to_mm(), large, 1e-9);
        check(size, "length", taper.length.to_mm(), length, 1e-9);
        check(size, "small", taper.small_diameter.to_mm(), small, 0.001);
        check(size, "ratio", taper.ratio, 7.0 / 24.0, 1e-12);
        if let Some(gauge) = inches {
            check(size, "gauge", taper.large_diameter.to_inch(), gauge, 1e-9);
        }
        // Commonly printed as 16° 35′ 40″ included, to the second; this figure from memory.
        let included = 16.0 + 35.0 / 60.0 + 40.0 / 3600.0;
        let half_angle = taper.half_angle().to_degrees();
        check(size, "half angle", half_angle, included / 2.0, 0.000_14);
    }
}

/// Its angle is printed as 16° 51′ included; all else is from memory, and marked so.
#[test]
fn r8_has_the_printed_angle() {
    let taper = row(R8, "R8");
    let printed_included = 16.0 + 51.0 / 60.0;
    check(
        "R8",
        "half angle",
        taper.half_angle().to_degrees(),
        printed_included / 2.0,
        HALF_ANGLE,
    );
    check("R8", "large", taper.large_diameter.to_inch(), 1.25, 1e-9);
    check("R8", "length", taper.length.to_inch(), 15.0 / 16.0, 1e-9);
    assert_eq!(taper.confirmed, Confirmed::Memory);
}

/// Every row is one cone: what the ends differ by is ratio times length, to the last digits of all four.
#[test]
fn ends_differ_by_ratio_times_length() {
    const PRINTED_ENDS: f64 = 0.004;
    for taper in TAPERS {
        let change = (taper.large_diameter - taper.small_diameter).to_mm();
        let wanted = taper.length.to_mm() * taper.ratio;
        check(taper.code, "change", change, wanted, PRINTED_ENDS);
    }
}

/// ISO 296 and DIN 228-1, form B: size, gauge plane to tang end, whole shank, tang length, thickness and diameter;
/// last, from GOST 25557, the largest diameter. Millimetres.
#[rustfmt::skip]
const ENDS: &[(&str, f64, f64, f64, f64, f64, f64)] = &[
    ("0",  56.5,  59.5, 10.5,  3.9,  6.0,  9.2),
    ("1",  62.0,  65.5, 13.5,  5.2,  8.7, 12.2),
    ("2",  75.0,  80.0, 16.0,  6.3, 13.5, 18.0),
    ("3",  94.0,  99.0, 20.0,  7.9, 18.5, 24.1),
    ("4", 117.5, 124.0, 24.0, 11.9, 24.5, 31.6),
    ("5", 149.5, 156.0, 29.0, 15.9, 35.7, 44.7),
    ("6", 210.0, 218.0, 40.0, 19.0, 51.0, 63.8),
];

#[test]
fn morse_shank_ends_agree_with_the_standard() {
    assert_eq!(ENDS.len(), MORSE_ENDS.len());
    for &(size, to_end, whole, long, thick, diameter, largest) in ENDS {
        let end = MorseEnd::of(TaperSize::find(Morse, size).unwrap()).unwrap();
        let past = end.past_gauge().unwrap();
        check(size, "to end", end.gauge_to_tang_end.to_mm(), to_end, 1e-9);
        check(
            size,
            "whole",
            (end.gauge_to_tang_end + past).to_mm(),
            whole,
            1e-9,
        );
        check(size, "tang", end.tang_length.to_mm(), long, 1e-9);
        check(size, "thickness", end.tang_thickness.to_mm(), thick, 1e-9);
        check(size, "diameter", end.tang_diameter.to_mm(), diameter, 1e-9);
        check(size, "largest", end.largest_diameter.to_mm(), largest, 1e-9);
    }
}
