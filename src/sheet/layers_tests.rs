//! The layers of the passes: each where its diameter says, none outside the stock.

use super::{any_job, demo_jobs};
use crate::job::Job;
use crate::plan::{Plan, plan};
use crate::quantity::{Length, Units};
use crate::sheet::layers::APART;
use crate::sheet::{Canvas, Drawing, Point, Role, Stage, drawing};

fn drawn(job: &Job, plan: &Plan, width: f64, pass: Option<u8>) -> Drawing {
    let canvas = Canvas {
        width,
        pass,
        ..Canvas::default()
    };
    drawing(job, plan, Stage::Plan, canvas, Units::Metric)
}

fn points(sheet: &Drawing, role: Role) -> Vec<Point> {
    let shapes = sheet.shapes.iter().filter(|shape| shape.role == role);
    shapes.flat_map(|shape| shape.geometry.points()).collect()
}

/// The heights above the axis of all layers, each once.
fn heights(sheet: &Drawing, roles: &[Role]) -> Vec<f64> {
    let mut shapes = sheet.shapes.iter().rev();
    // The axis of the part is drawn after those of its holes.
    let axis = shapes
        .find(|shape| shape.role == Role::Axis)
        .unwrap()
        .geometry
        .points()[0]
        .y;
    let ends = roles.iter().flat_map(|role| points(sheet, *role));
    let mut heights: Vec<f64> = ends.map(|point| axis - point.y).collect();
    heights.sort_by(f64::total_cmp);
    heights.dedup_by(|a, b| (*a - *b).abs() < 1e-6);
    heights
}

/// Every layer lies on the stock as received and above what is finished, and no two run together.
#[track_caller]
fn check(job: &Job, plan: &Plan, width: f64, pass: Option<u8>) {
    let sheet = drawn(job, plan, width, pass);
    let Some(received) = &plan.shape.received else {
        return;
    };
    let most = received.outer.largest(Length::ZERO, received.shank_length);
    let most = most.map_or(0.0, |it| it.radius.to_mm() * sheet.scale);
    let all = heights(&sheet, &[Role::RoughLayer, Role::LastLayer]);
    assert!(
        all.iter()
            .all(|height| 0.0 < *height && *height <= most + 1e-6)
    );
    for pair in all.windows(2) {
        assert!(APART - 1e-6 <= pair[1] - pair[0], "{pair:?}");
    }
    for height in heights(&sheet, &[Role::PickedLayer]) {
        assert!(height.abs() <= most + 1e-6);
    }
}

/// ⌀20 to ⌀16 by passes whose number is known: each that has room has its line, where its diameter says.
#[test]
fn each_pass_with_room_has_its_line() {
    let job = Job::default();
    let plan = plan(&job);
    let stock = plan.stock_off.as_ref().unwrap();
    let sheet = drawn(&job, &plan, 4000.0, None);
    let after = stock.passes.iter().map(|pass| pass.diameter_after);
    let mut wanted: Vec<f64> = after.map(|it| it.to_mm() / 2.0 * sheet.scale).collect();
    // The last one is the finished outline, and what is left for polishing has no room above it.
    let finished = wanted.pop().unwrap();
    assert!((finished - 8.0 * sheet.scale).abs() < 0.1 * sheet.scale);
    wanted.retain(|height| APART <= height - finished);
    assert!(4 <= wanted.len());
    wanted.reverse();
    let found = heights(&sheet, &[Role::RoughLayer, Role::LastLayer]);
    assert_eq!(found.len(), wanted.len(), "{found:?} {wanted:?}");
    for (found, wanted) in found.iter().zip(&wanted) {
        assert!((found - wanted).abs() < 1e-6, "{found} {wanted}");
    }
    // The one above the finished size is a last cut.
    let last = heights(&sheet, &[Role::LastLayer]);
    assert_eq!(last, wanted[..1]);
    // The default shank is a cylinder of 50 mm once cut: so far goes each layer, from the fillet on.
    let ends = points(&sheet, Role::RoughLayer);
    let reach = ends.iter().map(|it| it.x).fold(f64::MIN, f64::max)
        - ends.iter().map(|it| it.x).fold(f64::MAX, f64::min);
    let metal = stock.passes[0].metal.to_mm() * sheet.scale;
    assert!((reach - metal).abs() < 1e-6, "{reach} {metal}");
}

#[test]
fn the_picked_pass_is_always_drawn() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        let plan = plan(&job);
        let passes = plan.stock_off.as_ref().map_or(0, |it| it.passes.len());
        for place in 0..u8::try_from(passes).unwrap() {
            let sheet = drawn(&job, &plan, 328.0, Some(place));
            let picked = points(&sheet, Role::PickedLayer);
            assert!(4 <= picked.len(), "{} pass {place}", job.title);
            check(&job, &plan, 328.0, Some(place));
        }
        let none = drawn(&job, &plan, 328.0, Some(u8::MAX));
        assert_eq!(points(&none, Role::PickedLayer), []);
        let wanted = drawing(&job, &plan, Stage::Wanted, Canvas::default(), Units::Metric);
        assert_eq!(
            heights(&wanted, &[Role::RoughLayer, Role::LastLayer]),
            [0.0; 0]
        );
    }
}

proptest::proptest! {
    #[test]
    fn layers_of_any_job_lie_in_the_stock(
        job in any_job::job(), width in 240.0..900.0_f64, pass in 0..12_u8,
    ) {
        let plan = plan(&job);
        check(&job, &plan, width, Some(pass));
    }
}
