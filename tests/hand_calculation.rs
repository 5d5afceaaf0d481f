//! The whole plan of one job, calculated by hand: equal to the last digit that is shown.
//!
//! Formulas: the right triangle, solid geometry, and speed and time of turning as in M. P. Groover, Fundamentals of
//! Modern Manufacturing. Figures from standards: 22 h7 is 0 to −21 µm (ISO 286-2); M10 has 8.376 mm at the crests of
//! its nut thread (ISO 724); a drill point is 118° (common practice), a centre 60° (ISO 866). Steel is 7.85 g/cm³.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::float_cmp,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use skimwright::costing::{Feeding, Step};
use skimwright::cutting::PassKind::{Last, Polish, Rough};
use skimwright::job::{Field, Job, Pin, Tolerance};
use skimwright::plan::{Code, plan};
use skimwright::quantity::{Grade, Length, Units};
use skimwright::rework::{CentreOn, CutKind};
use skimwright::tables::{ShaftClass, ToolKind};
use sound::{ample, codes, cylinder, listed, mm, sound, taper, tapped, with};

/// A length as the page shows it, without its unit.
fn length(length: Length) -> String {
    shown(length, Grade::Length)
}

/// A diameter or an infeed as the page shows it, without its unit.
fn size(length: Length) -> String {
    shown(length, Grade::Size)
}

fn shown(length: Length, grade: Grade) -> String {
    let text = Units::Metric.length(length, grade);
    text.trim_end_matches("mm").trim_end().to_owned()
}

/// A 30 mm spigot of 40 mm that tapers from 28 to 24 mm over 60 mm more, with M10 in its end, for a 22 mm bore.
fn spigot() -> Job {
    let mut job = with(
        sound(),
        &[
            (Field::HeadDiameter, "50"),
            (Field::HeadLength, "20"),
            (Field::Runout, "0.04"),
            (Field::WantedDiameter, "22"),
            (Field::WantedLength, "70"),
            (Field::ShoulderRadius, "1"),
            (Field::EndChamfer, "1"),
            (Field::Countersink, "13"),
            (Field::ReceiverDepth, "75"),
            (Field::Kerf, "1.3"),
            (Field::FacingStock, "0.5"),
            (Field::RoughInfeed, "0.5"),
            (Field::LastCut, "0.25"),
            (Field::PolishingStock, "0.02"),
            (Field::CuttingSpeed, "100"),
            (Field::RoughFeed, "0.12"),
            (Field::FinishFeed, "0.08"),
            (Field::TopSpeed, "1200"),
            (Field::Approach, "2"),
        ],
    );
    job.part.sections = vec![cylinder("30", "40"), taper("28", "24", "60")];
    job.part.bores = vec![tapped("M10", "35", "45")];
    job.wanted.tolerance = Tolerance::Class(ShaftClass::H7);
    job.shop.tool = ToolKind::BrazedCarbide;
    job
}

#[test]
fn lengths_and_mass_are_as_by_hand() {
    let plan = plan(&spigot());
    let cut = plan.cut_off.unwrap();
    assert_eq!(cut.kind, CutKind::CutAndFace);
    // The shank is 40 + 60 = 100. Mark from the shoulder: 70 + 0.5 = 70.5; from the free end: 100 − 70.5 = 29.5.
    assert_eq!(length(cut.from_shoulder.value), "70.50");
    assert_eq!(length(cut.from_free_end.value), "29.50");
    // Offcut: 29.5 − 1.3 = 28.2.
    assert_eq!(length(cut.offcut_length.value), "28.20");
    // After cutting 70.5, after facing 70.
    assert_eq!(length(cut.shank_after_cut.value), "70.50");
    assert_eq!(length(cut.shank_finished.value), "70.00");
    // The taper loses 4 in 60, 1 in 15. The offcut begins at 71.8: 28 − 31.8/15 = 25.88, and ends at 24.
    // Frustum: π/12 · 28.2 · (25.88² + 25.88 · 24 + 24²) = 7.38274 · 1866.89 = 13 782.8 mm³.
    // Its hole, 45 deep, goes right through: π/4 · 8.3762² · 28.2 = 1553.9 mm³. Left 12 228.9 mm³.
    // 12.2289 cm³ · 7.85 g/cm³ = 96.0 g.
    assert_eq!(format!("{:.1}", cut.offcut_mass.value.to_grams()), "96.0");
    // Grip: the receiver is deeper than the shank without its fillet, so 70 − 1 − 1 = 68.
    assert_eq!(length(plan.grip.unwrap().value), "68.00");
}

#[test]
fn limits_clean_up_and_wall_are_as_by_hand() {
    let plan = plan(&spigot());
    let limits = plan.limits.unwrap();
    // 22 + 0 and 22 − 0.021; the middle is 21.9895.
    assert_eq!(size(limits.upper), "22.000");
    assert_eq!(size(limits.lower), "21.979");
    assert!((limits.aim.to_mm() - 21.9895).abs() < 1e-9);
    // Thinnest at the finished end: 28 − 30/15 = 26, less the runout of 0.04.
    let clean_up = plan.clean_up.unwrap();
    assert_eq!(size(clean_up.largest_diameter.value), "25.960");
    assert_eq!(length(clean_up.at), "70.00");
    // The stock is nowhere thinner than 24: all 100 mm clean up.
    assert_eq!(length(clean_up.longest), "100.00");
    // Wall over the thread: (21.979 − 10)/2 − 0.04/2 = 5.9695. It is met first where the thread begins, 35 from the
    // free end.
    let wall = &plan.walls[0];
    assert!((wall.least.value.to_mm() - 5.9695).abs() < 1e-5);
    assert_eq!(length(wall.at), "65.00");
}

/// Kind, infeed on radius, diameter after it, travel, spindle speed, seconds with handling.
///
/// The roughing passes are pinned by hand, so that speed and time can be calculated; which passes are best is another
/// matter. The lathe has the two feeds of the job and any speed, and power, grip and stiffness enough for both.
///
/// Roughing starts from 30 + 0.04 = 30.04. To turn: 30.04 − 21.99 − 0.02 = 8.03, of which two last cuts take 0.5. Of the
/// 7.53 left seven passes take 0.94 each, and the first of all the rest, 0.95: infeed 0.475.
///
/// A pass meets stock that is thicker than the diameter after it, less 0.04. The taper is that thick up to
/// z = 40 + 15 · (28 − D + 0.04): for 27.21 up to 52.45, for 26.27 up to 66.55.
///
/// Towards the shoulder it ends where the fillet of 1 mm rises above it. With h = (D − 21.99)/2 that is
/// z = 1 − √(1 − (1 − h)²): for 23.45, h = 0.73, 0.037; for 22.51, h = 0.26, 0.327; for 22.26, h = 0.135, 0.498; for
/// 22.01, h = 0.01, 0.859.
///
/// Speed: 1000 · 100/(π · D before), at most 1200: 100 000/(π · 30.04) = 1059.6. Seconds: 60 · (travel + 2)/(f · n)
/// and 13 + 9 + 24 = 46 for handling: 60 · 42/(0.12 · 1059.62) = 19.82, so 65.8.
#[rustfmt::skip]
const PASSES: &[(skimwright::cutting::PassKind, &str, &str, &str, &str, &str)] = &[
    (Rough,  "0.475", "29.090", "40.00", "1060",  "65.8"),
    (Rough,  "0.470", "28.150", "40.00", "1094",  "65.2"),
    (Rough,  "0.470", "27.210", "52.45", "1131",  "70.1"),
    (Rough,  "0.470", "26.270", "66.55", "1170",  "75.3"),
    (Rough,  "0.470", "25.330", "70.00", "1200",  "76.0"),
    (Rough,  "0.470", "24.390", "70.00", "1200",  "76.0"),
    (Rough,  "0.470", "23.450", "69.96", "1200",  "76.0"),
    (Rough,  "0.470", "22.510", "69.67", "1200",  "75.9"),
    (Last,   "0.125", "22.260", "69.50", "1200",  "90.7"),
    (Last,   "0.125", "22.010", "69.14", "1200",  "90.5"),
    (Polish, "0.000", "21.990", "69.00", "1200", "144.0"),
];

/// The spigot on an ample lathe, its roughing passes pinned.
fn pinned_spigot() -> Job {
    let mut job = ample(spigot());
    job.shop.machine.feeds = listed(&["0.08 mm/rev", "0.12 mm/rev"]);
    // The middle is 21.99.
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0.04"),
        lower: mm("-0.06"),
    };
    let after = [
        "29.09", "28.15", "27.21", "26.27", "25.33", "24.39", "23.45", "22.51",
    ];
    job.setup.pins = after
        .iter()
        .map(|after| Pin {
            after: mm(after),
            infeed: mm(if *after == "29.09" { "0.475" } else { "0.47" }),
            speed: None,
            feed: None,
        })
        .collect();
    job
}

#[test]
fn passes_and_time_are_as_by_hand() {
    let plan = plan(&pinned_spigot());
    let stock = plan.stock_off.unwrap();
    // 30.04 − 21.99 = 8.05.
    assert!((stock.most.value.to_mm() - 8.05).abs() < 1e-9);
    // 7.53 in eight passes.
    assert_eq!(size(stock.rough_each.unwrap().value), "0.941");
    // Off each section, without the runout: 30 − 21.99; 28 − 21.99 down to 26 − 21.99.
    let ends: Vec<f64> = stock
        .sections
        .iter()
        .flat_map(|section| [section.at_start.to_mm(), section.at_end.to_mm()])
        .collect();
    for (got, wanted) in ends.iter().zip([8.01, 8.01, 6.01, 4.01]) {
        assert!((got - wanted).abs() < 1e-9, "{ends:?}");
    }
    assert_eq!(ends.len(), 4);
    assert_eq!(stock.passes.len(), PASSES.len());
    for (pass, &(kind, infeed, after, travel, speed, seconds)) in stock.passes.iter().zip(PASSES) {
        assert_eq!(pass.kind, kind, "{after}");
        assert_eq!(size(pass.infeed), infeed, "{after}");
        assert_eq!(size(pass.diameter_after), after);
        assert_eq!(length(pass.travel), travel, "{after}");
        assert_eq!(length(pass.metal), travel, "{after}");
        let spindle = pass.spindle_speed.to_per_min();
        assert_eq!(format!("{spindle:.0}"), speed, "{after}");
        assert_eq!(format!("{:.1}", pass.time.to_seconds()), seconds, "{after}");
    }
    // Under feed 19.82 + 19.19 + 24.08 + 29.30 + 30.00 + 30.00 + 29.98 + 29.86 + 44.69 + 44.46 = 301.39 s.
    let time = plan.time.unwrap();
    let turning = time.feeding.last().unwrap();
    assert_eq!((turning.feeding, turning.count), (Feeding::Turning, 10));
    assert_eq!(
        format!("{:.1}", turning.together.likely().to_seconds()),
        "301.4"
    );
    // Ten passes are set and returned from, and eleven measured, the polished one too: 10 · 22 + 11 · 24 = 484 s.
    let handling = [Step::SetDepth, Step::Return, Step::Measure].map(|step| {
        let line = time.steps.iter().find(|line| line.step == step).unwrap();
        line.each.likely().to_seconds() * f64::from(line.count)
    });
    assert_eq!(handling, [130.0, 90.0, 264.0]);
}

#[test]
fn centre_and_findings_are_as_by_hand() {
    let plan = plan(&spigot());
    let centre = plan.centre.as_ref().unwrap();
    // The face lies 30 from the free end, inside the 35 of thread: the hole is 8.376 at the crests.
    let CentreOn::Hole { bore } = centre.on else {
        panic!("{:?}", centre.on);
    };
    assert_eq!(size(bore), "8.376");
    // (13 − 8.376)/2/tan 30° = 2.312 · 1.7321 = 4.00; the end is faced by then.
    assert_eq!(length(centre.cone_depth.value), "4.00");
    assert_eq!(length(centre.feed_depth.value), "4.00");
    // A sharp point reaches 6.5 · 1.7321 = 11.26 deep, and the hole is 15 deep below the face.
    assert_eq!(length(centre.point_reach), "11.26");
    // 13 mm lie outside the 10 mm of the thread and inside the end of 22 − 2 = 20. What there is to say: 5 mm of
    // the thread stay.
    assert_eq!(codes(&plan), ["thread-left"]);
    let Code::ThreadLeft { length: left } = plan.findings[0].code else {
        panic!("{:?}", plan.findings);
    };
    assert_eq!(length(left), "5.00");
}
