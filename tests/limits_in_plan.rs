//! Size limits in a plan against ISO 286-2, tables of limit deviations for shafts.
//!
//! The rows stand apart from the table of the program, as printed in shop tables of the classes; written from
//! memory but for 25 g6, which the documentation of a fits library prints.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use skimwright::job::{Field, SectionField, Tolerance};
use skimwright::plan::plan;
use skimwright::tables::ShaftClass::{self, G6, H5, H6, H7, H8, H9, K6};
use sound::{set, sound};

/// Nominal size as typed, class, upper and lower deviation in micrometres.
#[rustfmt::skip]
const ROWS: &[(&str, ShaftClass, f64, f64)] = &[
    ("3",    H6,   0.0,  -6.0), ("3",    G6,  -2.0,  -8.0), ("3",    K6,   6.0,   0.0),
    ("6",    H9,   0.0, -30.0), ("10",   H5,   0.0,  -6.0), ("10",   H8,   0.0, -22.0),
    ("17",   K6,  12.0,   1.0), ("18",   H7,   0.0, -18.0), ("20",   H6,   0.0, -13.0),
    ("25",   G6,  -7.0, -20.0), ("25",   H6,   0.0, -13.0), ("30",   H5,   0.0,  -9.0),
    ("32",   H6,   0.0, -16.0), ("40",   K6,  18.0,   2.0), ("50",   H7,   0.0, -25.0),
    ("60",   G6, -10.0, -29.0), ("80",   H8,   0.0, -46.0), ("100",  H9,   0.0, -87.0),
    ("100",  G6, -12.0, -34.0), ("120",  K6,  25.0,   3.0), ("120",  H6,   0.0, -22.0),
    // Two inches lie in the step over 50 mm, three quarters in the step over 18.
    ("2 in", H6,   0.0, -19.0), ("3/4 in", H7, 0.0, -21.0),
];

#[test]
fn limits_are_as_printed_and_the_last_pass_ends_between_them() {
    for &(nominal, class, upper, lower) in ROWS {
        let mut job = sound();
        set(&mut job, Field::HeadDiameter, "200");
        set(&mut job, Field::Section(0, SectionField::Diameter), "130");
        set(&mut job, Field::WantedDiameter, nominal);
        job.wanted.tolerance = Tolerance::Class(class);
        let size = job.wanted.diameter.value().to_mm();
        let plan = plan(&job);
        let limits = plan.limits.unwrap();
        let name = format!("{nominal} {}", class.code());
        let off = |got: f64, deviation: f64| (got - size - deviation / 1000.0).abs();
        assert!(
            off(limits.upper.to_mm(), upper) < 1e-9,
            "{name}: {limits:?}"
        );
        assert!(
            off(limits.lower.to_mm(), lower) < 1e-9,
            "{name}: {limits:?}"
        );
        assert!(
            off(limits.aim.to_mm(), f64::midpoint(upper, lower)) < 1e-9,
            "{name}"
        );
        let stock = plan.stock_off.unwrap();
        let last = stock.passes.last().unwrap().diameter_after;
        assert!(
            limits.lower <= last && last <= limits.upper,
            "{name}: {last:?}"
        );
    }
}
