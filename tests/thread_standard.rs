//! Threads against their profiles and against rows of other printed tables.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::Length;
use skimwright::tables::ThreadSeries::{Bsw, MetricCoarse, MetricFine, Unc, Unf};
use skimwright::tables::{THREADS, ThreadSize};

/// Half a thousandth of a millimetre for each of the rounded diameters, and as much for the pitch.
const ROUNDING: f64 = 0.001_1;

/// ISO and Unified: D1 = d − 1.0825 P, that is d less five quarters of the sharp height. Whitworth: d − 1.2807 P.
#[test]
fn minor_diameters_follow_the_profile() {
    for row in THREADS {
        let depth = match row.series {
            MetricCoarse | MetricFine | Unc | Unf => 1.25 * 3.0_f64.sqrt() / 2.0,
            Bsw => 2.0 * 0.640_327,
        };
        let wanted = row.major - row.pitch * depth;
        let difference = (row.minor_internal - wanted).to_mm();
        assert!(
            difference.abs() <= ROUNDING,
            "{}: {difference}",
            row.designation
        );
    }
}

#[test]
fn inch_pitches_are_an_inch_over_the_threads() {
    for row in THREADS {
        match row.threads_per_inch {
            Some(threads) => {
                let difference = row.pitch.to_mm() * f64::from(threads) - 25.4;
                assert!(
                    difference.abs() < 0.001_5,
                    "{}: {difference}",
                    row.designation
                );
                let named = format!("-{threads} ");
                assert!(row.designation.contains(&named), "{}", row.designation);
            }
            None => assert!(row.designation.starts_with('M')),
        }
    }
}

/// A metric name carries diameter and, if fine, pitch; an inch name a number or a fraction of an inch.
#[test]
fn names_agree_with_diameters() {
    for row in THREADS {
        let name = row.designation;
        let major = if let Some(metric) = name.strip_prefix('M') {
            let (major, pitch) = metric.split_once('x').unwrap_or((metric, ""));
            if !pitch.is_empty() {
                assert_eq!(row.pitch, Length::mm(pitch.parse().unwrap()), "{name}");
            }
            assert_eq!(pitch.is_empty(), row.series == MetricCoarse, "{name}");
            Length::mm(major.parse().unwrap())
        } else if let Some(number) = name.strip_prefix('#') {
            // A numbered screw is 0.060 in and 0.013 in more for each number.
            let number: f64 = number.split_once('-').unwrap().0.parse().unwrap();
            Length::inch(0.060 + 0.013 * number)
        } else {
            let size = name.rsplit_once('-').unwrap().0;
            Length::inch(size.split('-').map(fraction).sum())
        };
        assert!((row.major - major).abs().to_mm() <= 0.000_51, "{name}");
    }
}

fn fraction(text: &str) -> f64 {
    match text.split_once('/') {
        Some((above, below)) => above.parse::<f64>().unwrap() / below.parse::<f64>().unwrap(),
        None => text.parse().unwrap(),
    }
}

/// Rows of other tables: designation, pitch, D1, tap drill with tolerance, where from.
type Printed = (&'static str, f64, f64, Option<(f64, f64)>, &'static str);

#[rustfmt::skip]
const PRINTED: &[Printed] = &[
    ("M3",         0.5,     2.459, Some((2.5, 0.0)),      "drill list of an open CAD library"),
    ("M8",         1.25,    6.647, Some((6.8, 0.0)),      "drill list of an open CAD library"),
    ("M12",        1.75,   10.106, Some((10.2, 0.0)),     "two printed tables; the CAD library has 10.3"),
    ("M14",        2.0,    11.835, Some((12.0, 0.0)),     "two printed tables; the CAD library has 12.1"),
    ("M22",        2.5,    19.294, Some((19.5, 0.0)),     "two printed tables; the CAD library has 18.5"),
    ("M12x1.5",    1.5,    10.376, None,                  "printed ISO 724 fine table"),
    ("M20x1",      1.0,    18.917, None,                  "printed ISO 724 fine table"),
    ("1/2-13 UNC", 1.9538, 10.585, Some((10.716, 0.01)),  "inch drill list: 27/64"),
    ("3/8-16 UNC", 1.5875,  7.806, Some((7.938, 0.01)),   "inch drill list: 5/16"),
    ("3/8-16 BSW", 1.5875,  7.492, Some((7.938, 0.05)),   "Whitworth table: 5/16"),
    ("3/4-10 BSW", 2.54,   15.797, Some((16.272, 0.05)),  "Whitworth table: 41/64"),
];

#[test]
fn rows_agree_with_other_tables() {
    for &(name, pitch, minor, drill, source) in PRINTED {
        let row = ThreadSize::from_code(name).unwrap().get().unwrap();
        assert_eq!(row.pitch, Length::mm(pitch), "{name}, {source}");
        assert_eq!(row.minor_internal, Length::mm(minor), "{name}, {source}");
        if let Some((drill, tolerance)) = drill {
            let difference = (row.tap_drill.to_mm() - drill).abs();
            assert!(difference <= tolerance, "{name}, {source}: {difference}");
        }
    }
}

#[test]
fn every_series_is_there() {
    let count = |series| ThreadSize::of(series).count();
    let counts = [MetricCoarse, MetricFine, Unc, Unf, Bsw].map(count);
    assert_eq!(counts, [24, 50, 16, 1, 11]);
}
