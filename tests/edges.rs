//! Jobs at the edge of what can be planned: sizes that just meet, stock that just runs out, sums that round.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use skimwright::cutting::PassKind;
use skimwright::job::{BoreBottom, Field, Job, SectionField, Tolerance};
use skimwright::plan::plan;
use skimwright::quantity::{Length, Speed};
use skimwright::rework::CutKind;
use skimwright::tables::{ToolKind, WorkMaterial};
use sound::{codes, cylinder, drilled, mm, sound, with};

fn limits(job: &mut Job, upper: &str, lower: &str) {
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm(upper),
        lower: mm(lower),
    };
}

/// 0.615 in and 0.334 in are 24.1046 mm in one order of rounding, and a hair more in another.
#[test]
fn a_shank_of_the_length_wanted_has_no_offcut_whatever_sums_round_to() {
    for (one, two, wanted) in [
        ("0.615 in", "0.334 in", "24.1046"),
        ("15.621", "8.4836", "0.949 in"),
        ("0.7", "0.1", "0.8"),
    ] {
        let mut job = with(sound(), &[(Field::WantedLength, "30")]);
        job.part.sections = vec![cylinder("20", one), cylinder("20", two)];
        job.wanted.length = mm(wanted);
        let cut = plan(&job).cut_off.unwrap();
        assert_eq!(cut.kind, CutKind::AsItIs);
        assert_eq!(cut.offcut_length.value, Length::ZERO);
        assert_eq!(cut.from_free_end.value, Length::ZERO);
        assert!(codes(&plan(&job)).contains(&"length-already".to_owned()));
    }
}

#[test]
fn a_rest_too_thin_to_cut_is_shared_by_the_two_last_cuts() {
    // 20 − 19.44 − 0.02 = 0.54: a roughing pass of 0.02 on radius would only rub, so 0.27 each.
    let mut job = with(
        sound(),
        &[
            (Field::WantedDiameter, "19.44"),
            (Field::ShoulderRadius, "0.2"),
        ],
    );
    limits(&mut job, "0.03", "-0.03");
    let plan_of = |job: &Job| plan(job).stock_off.unwrap();
    let stock = plan_of(&job);
    assert!((stock.last_each.to_mm() - 0.27).abs() < 1e-9);
    assert!(stock.rough_each.is_none() && stock.passes.len() == 3);
    assert_eq!(codes(&plan(&job)), ["all-clear"]);
    // With 0.1 more it is a pass of its own, 0.07 on radius.
    sound::set(&mut job, Field::WantedDiameter, "19.34");
    let stock = plan_of(&job);
    assert!((stock.last_each.to_mm() - 0.25).abs() < 1e-9);
    assert!((stock.passes[0].infeed.to_mm() - 0.07).abs() < 1e-9);
}

#[test]
fn less_than_the_polishing_stock_is_polished_off_as_it_is() {
    let mut job = with(sound(), &[(Field::WantedDiameter, "20")]);
    limits(&mut job, "0", "-0.02");
    let plan = plan(&job);
    let stock = plan.stock_off.as_ref().unwrap();
    assert!((stock.polishing.to_mm() - 0.01).abs() < 1e-9);
    assert_eq!(stock.passes.len(), 1);
    assert_eq!(stock.passes[0].kind, PassKind::Polish);
    assert!(codes(&plan).contains(&"nothing-to-turn".to_owned()));
}

#[test]
fn a_typed_speed_is_planned_with_though_the_tool_is_called_wrong() {
    let mut job = sound();
    // Boron nitride sticks to soft steel.
    job.part.material = WorkMaterial::MediumCarbonSteel;
    job.shop.tool = ToolKind::CubicBoronNitride;
    assert!(plan(&job).stock_off.is_none());
    sound::set(&mut job, Field::CuttingSpeed, "120");
    let plan = plan(&job);
    let used = plan.stock_off.as_ref().unwrap().cutting_speed;
    assert_eq!(used, Speed::m_per_min(120.0));
    assert_eq!(codes(&plan), ["tool-cannot-cut"]);
}

/// Limits that are one size leave nothing for giving way: the passes are planned all the same, as light as that asks.
#[test]
fn limits_without_room_between_them_still_have_passes() {
    let mut job = sound();
    limits(&mut job, "0", "0");
    let plan = plan(&job);
    assert!(plan.stock_off.is_some(), "{:?}", plan.findings);
    assert!(
        codes(&plan).contains(&"last-cuts-lighter".to_owned()),
        "{:?}",
        plan.findings
    );
}

/// A drill point that the cut lays open breaks out at the face, where the cone is widest.
#[test]
fn a_drill_point_cut_open_is_measured_at_the_face() {
    for thousandths in 200..320_u32 {
        let mut job = with(sound(), &[(Field::ShoulderRadius, "0.5")]);
        job.part.sections = vec![cylinder("10.16", "0.659 in"), cylinder("10.16", "0.19 in")];
        job.part.bores = vec![drilled("20.752", "0.558 in", BoreBottom::DrillPoint)];
        sound::set(&mut job, Field::WantedDiameter, "4.064");
        sound::set(
            &mut job,
            Field::WantedLength,
            &format!("0.{thousandths} in"),
        );
        limits(&mut job, "0", "0");
        let plan = plan(&job);
        let wall = &plan.walls[0];
        let face = f64::from(thousandths) * 0.0254;
        assert!(
            (wall.at.to_mm() - face.min(0.291 * 25.4)).abs() < 1e-9,
            "{thousandths}"
        );
        // Full diameter from 0.291 in, 118° below.
        let hole = 10.376 - (0.291 * 25.4 - face).max(0.0) * 59_f64.to_radians().tan();
        assert!(
            (wall.least.value.to_mm() - (2.032 - hole)).abs() < 1e-4,
            "{thousandths}"
        );
    }
}

/// On a stepped shank the wall is that of the thin step as received where nothing is turned off there.
#[test]
fn a_step_thinner_than_the_finished_size_has_the_least_wall() {
    let mut job = with(sound(), &[(Field::Runout, "0.1")]);
    job.part.sections = vec![
        cylinder("20", "20"),
        cylinder("14", "10"),
        cylinder("20", "50"),
    ];
    job.part.bores = vec![drilled("10", "100", BoreBottom::DrillPoint)];
    let plan = plan(&job);
    // (14 − 10)/2 − 0.1/2.
    let wall = &plan.walls[0];
    assert!((wall.least.value.to_mm() - 1.95).abs() < 1e-9);
    assert!((wall.at.to_mm() - 20.0).abs() < 1e-9);
}

/// In the head the wall is that of the head, and a hole through it has no bottom.
#[test]
fn a_hole_deep_in_the_head_is_measured_against_the_head() {
    let mut job = with(
        sound(),
        &[(Field::HeadDiameter, "17"), (Field::ShoulderRadius, "0.3")],
    );
    job.part.bores = vec![
        drilled("12", "120", BoreBottom::Flat),
        drilled("14.5", "40", BoreBottom::Flat),
    ];
    job.wanted.countersink = None;
    let plan = plan(&job);
    // (16 − 0.011 − 12)/2 in the shank is less than (17 − 12)/2 in the head.
    assert!((plan.walls[0].least.value.to_mm() - 1.9945).abs() < 1e-5);
    assert!((plan.walls[1].least.value.to_mm() - 0.7445).abs() < 1e-5);
    assert!((plan.walls[1].at.to_mm() - 40.0).abs() < 1e-9);
    let mut narrow = job;
    sound::set(&mut narrow, Field::HeadDiameter, "15");
    sound::set(&mut narrow, Field::Section(0, SectionField::Diameter), "30");
    let walls = skimwright::plan::plan(&narrow).walls;
    assert!((walls[0].least.value.to_mm() - 1.5).abs() < 1e-5);
    assert!(walls[0].at.to_mm() <= 0.0);
}
