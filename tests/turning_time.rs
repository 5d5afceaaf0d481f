//! Speed and time of turning against worked examples in print.
//!
//! * M. P. Groover, Fundamentals of Modern Manufacturing: problems 22.1 and 22.3, and the example of the turning
//!   section (its answer from memory).
//! * S. Kalpakjian and S. Schmid, Manufacturing Engineering and Technology, turning example (answer from memory).
//! * Elementary Technical Mathematics, section 1.8.
//! * A university worksheet on turning; its answer from memory.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use skimwright::costing::{Feeding, Step};
use skimwright::cutting::{PassKind, spindle_speed, surface_speed, turning_time};
use skimwright::job::{Field, Job, SectionField, Tolerance};
use skimwright::plan::plan;
use skimwright::quantity::{Feed, Length, RotationalSpeed, Speed};
use sound::{ample, listed, mm, sound, with};

#[track_caller]
fn close(what: &str, got: f64, wanted: f64, tolerance: f64) {
    let off = got - wanted;
    assert!(
        off.abs() <= tolerance,
        "{what}: {got}, printed {wanted}, off by {off}"
    );
}

/// A shank that the first pass takes down by `depth` on radius over `length`, with nothing but cutting in its time.
fn one_pass(diameter: f64, length: f64, depth: f64) -> Job {
    let last = 0.5;
    let text = |value: f64| format!("{value:.6}");
    let mut job = with(
        ample(sound()),
        &[
            (Field::HeadDiameter, "400"),
            (Field::Section(0, SectionField::Diameter), &text(diameter)),
            (
                Field::Section(0, SectionField::Length),
                &text(length + 10.0),
            ),
            (
                Field::WantedDiameter,
                &text(diameter - 2.0 * depth - 2.0 * last),
            ),
            (Field::WantedLength, &text(length)),
            (Field::ShoulderRadius, "0"),
            (Field::LastCut, "0.5"),
            (Field::PolishingStock, "0"),
            (Field::RoughInfeed, &text(depth)),
            (Field::TopSpeed, "5000"),
            (Field::Approach, "0"),
            (Field::SetTime, "0"),
            (Field::ReturnTime, "0"),
            (Field::MeasureTime, "0"),
        ],
    );
    // Wide, so that no giving way limits the last cuts; the middle is the size itself.
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0.05"),
        lower: mm("-0.05"),
    };
    job
}

/// Source, diameter, length, depth in mm; cutting speed, feed as typed; printed rev/min and seconds with half of
/// their last printed digit.
type Row = (
    &'static str,
    f64,
    f64,
    f64,
    &'static str,
    &'static str,
    (f64, f64),
    (f64, f64),
);

#[rustfmt::skip]
const ROWS: &[Row] = &[
    // Printed 3.66 rev/s and 598 s.
    ("Groover 22.1",            200.0, 700.0, 1.8, "138 m/min", "0.32", (3.66 * 60.0, 0.3), (598.0, 0.5)),
    // Printed about 339 s; the speed is own arithmetic: 2 m/s over π · 0.12 m.
    ("Groover, turning section", 120.0, 450.0, 2.2, "120 m/min", "0.25", (318.31, 0.01),    (339.0, 0.5)),
    // Printed 191 rpm and 3.74 min.
    ("worksheet",                50.0, 500.0, 2.5, "30 m/min",  "0.7",  (191.0, 0.5),       (3.74 * 60.0, 0.3)),
];

#[test]
fn a_planned_pass_takes_the_printed_time() {
    for &(source, diameter, length, depth, speed, feed, rpm, seconds) in ROWS {
        let mut job = with(
            one_pass(diameter, length, depth),
            &[(Field::CuttingSpeed, speed), (Field::RoughFeed, feed)],
        );
        // Feeds are chosen from those that the lathe has; speeds are free.
        job.shop.machine.feeds = listed(&["0.08 mm/rev", &format!("{feed} mm/rev")]);
        let plan = plan(&job);
        let stock = plan.stock_off.unwrap();
        let first = &stock.passes[0];
        assert_eq!(first.kind, PassKind::Rough);
        close(source, first.infeed.to_mm(), depth, 1e-9);
        close(source, first.travel.to_mm(), length, 1e-9);
        close(source, first.spindle_speed.to_per_min(), rpm.0, rpm.1);
        close(source, first.feeding.to_seconds(), seconds.0, seconds.1);
        // And by the one-step formula of the same book: T = π D L/(v f).
        let v = skimwright::quantity::Entered::<Speed>::read(
            speed,
            skimwright::quantity::Unit::MetrePerMinute,
        )
        .unwrap()
        .value()
        .to_m_per_min()
            * 1000.0
            / 60.0;
        let one_step = core::f64::consts::PI * diameter * length / (v * first.feed.to_mm_per_rev());
        close(source, first.feeding.to_seconds(), one_step, 1e-6);
    }
}

/// Elementary Technical Mathematics, section 1.8: 9 9/64 in at 3/128 in a revolution and 45 rpm take 8 2/3 min.
#[test]
fn a_geared_lathe_at_its_one_speed_takes_the_printed_time() {
    let mut job = one_pass(50.0, 232.0, 1.0);
    for (field, text) in [
        (Field::WantedLength, "9 9/64 in"),
        (Field::RoughFeed, "3/128 in/rev"),
        (Field::FinishFeed, "3/128 in/rev"),
        (Field::CuttingSpeed, "3000"),
    ] {
        sound::set(&mut job, field, text);
    }
    job.shop.machine.speeds = listed(&["45 rpm"]);
    job.shop.machine.feeds = listed(&["3/128 in/rev"]);
    let stock = plan(&job).stock_off.unwrap();
    let first = &stock.passes[0];
    close("speed", first.spindle_speed.to_per_min(), 45.0, 1e-12);
    close("minutes", first.feeding.to_minutes(), 8.0 + 2.0 / 3.0, 1e-9);
    let revolutions = first.travel.to_mm() / first.feed.to_mm_per_rev();
    close("revolutions", revolutions, 390.0, 1e-9);
}

/// Groover 22.3: facing 6 in at 180 rpm and 0.008 in a revolution takes 2.083 min.
#[test]
fn facing_from_the_rim_to_the_axis_takes_the_printed_time() {
    let time = turning_time(
        Length::inch(3.0),
        Feed::inch_per_rev(0.008),
        RotationalSpeed::per_min(180.0),
    );
    close("minutes", time.to_minutes(), 2.083, 0.0005);
}

/// Kalpakjian: 12.5 mm at 400 rpm is 15.7 m/min, 15.1 at 12 mm; 150 mm at 200 mm/min take 0.75 min.
#[test]
fn speed_and_time_of_a_thin_bar_are_as_printed() {
    let turns = RotationalSpeed::per_min(400.0);
    close(
        "outside",
        surface_speed(Length::mm(12.5), turns).to_m_per_min(),
        15.7,
        0.05,
    );
    close(
        "after",
        surface_speed(Length::mm(12.0), turns).to_m_per_min(),
        15.1,
        0.05,
    );
    let time = turning_time(Length::mm(150.0), Feed::mm_per_rev(0.5), turns);
    close("minutes", time.to_minutes(), 0.75, 1e-12);
    let back = spindle_speed(Speed::m_per_min(15.707_963_267_948_966), Length::mm(12.5));
    close("back", back.to_per_min(), 400.0, 1e-9);
}

/// Approach and handling by plain sums: what a pass takes, and what all passes take in the whole time.
#[test]
fn the_whole_time_holds_each_pass_with_its_handling() {
    let job = with(sound(), &[(Field::Runout, "0.1")]);
    let plan = plan(&job);
    let (stock, time) = (plan.stock_off.unwrap(), plan.time.unwrap());
    let mut cutting = 0.0;
    let mut cuts = 0;
    for pass in stock.passes.iter().filter(|pass| pass.cut.is_some()) {
        let minutes = (pass.travel.to_mm() + 2.0)
            / (pass.feed.to_mm_per_rev() * pass.spindle_speed.to_per_min());
        cutting += minutes * 60.0;
        cuts += 1;
        close(
            "under feed",
            pass.feeding.to_seconds(),
            minutes * 60.0,
            1e-9,
        );
        // 13 s setting, 9 s returning, 24 s measuring.
        close("pass", pass.time.to_seconds(), minutes * 60.0 + 46.0, 1e-9);
    }
    let turning = time
        .feeding
        .iter()
        .find(|line| line.feeding == Feeding::Turning)
        .unwrap();
    assert_eq!(turning.count, cuts);
    close(
        "turning",
        turning.together.likely().to_seconds(),
        cutting,
        1e-9,
    );
    // Polishing is measured once more.
    let steps = [
        (Step::SetDepth, cuts, 13.0),
        (Step::Return, cuts, 9.0),
        (Step::Measure, cuts + 1, 24.0),
        (Step::Polish, 1, 120.0),
    ];
    for (step, count, each) in steps {
        let line = time.steps.iter().find(|line| line.step == step).unwrap();
        assert_eq!(line.count, count, "{step:?}");
        close(step.code(), line.each.likely().to_seconds(), each, 1e-9);
    }
    let polishing = stock.passes.last().unwrap();
    assert_eq!(polishing.kind, PassKind::Polish);
    close("polishing", polishing.time.to_seconds(), 120.0 + 24.0, 1e-9);
}
