//! What must hold for every drawing, whatever the job.

use super::*;
use crate::demo::demo_jobs;
use crate::job::{Hole, Turned};
use crate::plan::{Level, plan};
use crate::quantity::{Entered, Unit};
use crate::sheet::any_job;
use crate::sheet::{Area, Kind, Mark, Measure, Point, Role};
use crate::tables::ThreadSize;
use proptest::prelude::*;

#[path = "kinds_tests.rs"]
mod kinds;
#[path = "layers_tests.rs"]
mod layers;

const STAGES: [Stage; 3] = [Stage::Received, Stage::Wanted, Stage::Plan];

fn canvas(width: f64) -> Canvas {
    Canvas {
        width,
        ..Canvas::default()
    }
}

/// Head ⌀50 × 35, shank ⌀32 × 71.5 with an M12 hole, for ⌀25 × 56.
fn arbor() -> Job {
    let mm = |digits, decimals| Entered::plain(digits, decimals, Unit::Millimetre);
    let mut job = Job::default();
    (job.part.head_diameter, job.part.head_length) = (mm(50, 0), mm(35, 0));
    let (diameter, length) = (mm(32, 0), mm(715, 1));
    job.part.sections = vec![Turned::Cylinder { diameter, length }.into()];
    let thread = ThreadSize::from_code("M12").unwrap();
    let (thread_depth, drill_depth) = (mm(30, 0), mm(38, 0));
    job.part.bores = vec![
        Hole::Tapped {
            thread,
            thread_depth,
            drill_depth,
        }
        .into(),
    ];
    (job.wanted.diameter, job.wanted.length) = (mm(25, 0), mm(56, 0));
    job.wanted.shoulder_radius = mm(12, 1);
    job.wanted.countersink = Some(mm(15, 0));
    job
}

/// Where the text of a dimension stands at least.
fn text_area(mark: &DimensionMark, height: f64) -> Area {
    let characters = f64::from(u32::try_from(mark.text.chars().count()).unwrap());
    // The narrowest reckoning of its width: half of the height for a character.
    let width = (characters * height * 0.5).min(mark.hit.width);
    Area {
        x: mark.text_at.x - width / 2.0,
        y: mark.text_at.y - height * 0.75,
        width,
        height: height * 0.75,
    }
}

/// Nothing overlaps, nothing stands outside, everything is finite.
#[track_caller]
fn check(job: &Job, width: f64, units: Units) {
    let plan = plan(job);
    for stage in STAGES {
        let sheet = drawing(job, &plan, stage, canvas(width), units);
        let target = canvas(width).checked().target;
        // Sums of rows round by less than this.
        let rounding = 1e-6;
        let within = |value: f64, most: f64| -rounding <= value && value <= most + rounding;
        let paper = |point: &Point| within(point.x, sheet.width) && within(point.y, sheet.height);
        for shape in &sheet.shapes {
            let points = shape.geometry.points();
            assert!(points.iter().all(paper), "{stage:?}: {shape:?}");
        }
        for mark in &sheet.dimensions {
            let Area {
                x,
                y,
                width,
                height,
            } = mark.hit;
            assert!(width >= target - 1e-6 && height >= target - 1e-6);
            assert!(paper(&Point::new(x, y)) && paper(&Point::new(x + width, y + height)));
            let ends = mark.lines.iter().flat_map(|(a, b)| [a, b]);
            assert!(
                ends.chain(mark.arrows.iter().flatten()).all(paper),
                "{stage:?}: {mark:?}"
            );
            assert!(
                x <= mark.text_at.x && mark.text_at.x <= x + width,
                "{mark:?}"
            );
            assert!(!mark.text.is_empty());
            let text = text_area(mark, sheet.text_height);
            assert!(
                paper(&Point::new(text.x, text.y))
                    && paper(&Point::new(text.x + text.width, text.y)),
                "{stage:?}: {mark:?}"
            );
            // No line runs through it, its own included.
            let lines = sheet.dimensions.iter().flat_map(|other| &other.lines);
            for (from, to) in lines {
                let left = crate::sheet::geometry::interrupted(*from, *to, &[text]);
                assert_eq!(left, [(*from, *to)], "{stage:?}: {text:?} {mark:?}");
            }
        }
        for mark in &sheet.marks {
            let radius = sheet.text_height * Mark::RADIUS;
            let (low, high) = (mark.at.y - radius, mark.at.y + radius);
            assert!(paper(&Point::new(mark.at.x, low)) && paper(&Point::new(mark.at.x, high)));
            let texts = sheet
                .dimensions
                .iter()
                .map(|it| text_area(it, sheet.text_height));
            let circle = Area {
                x: mark.at.x - radius,
                y: low,
                width: 2.0 * radius,
                height: 2.0 * radius,
            };
            for text in texts {
                assert!(!text.overlaps(&circle), "{stage:?}: {mark:?} {text:?}");
            }
        }
        for (index, mark) in sheet.dimensions.iter().enumerate() {
            for other in &sheet.dimensions[index + 1..] {
                assert!(
                    !mark.hit.overlaps(&other.hit),
                    "{stage:?}: {mark:?} {other:?}"
                );
            }
        }
    }
}

#[test]
fn the_examples_have_room_on_every_canvas() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        for width in [240.0, 328.0, 640.0, 1200.0] {
            for units in [Units::Metric, Units::InchDecimal, Units::InchFraction] {
                check(&job, width, units);
            }
        }
    }
}

#[test]
fn no_leader_runs_through_a_text() {
    for job in demo_jobs().into_iter().chain([Job::default()]) {
        let plan = plan(&job);
        for width in [328.0, 378.0, 640.0] {
            for units in [Units::Metric, Units::InchDecimal, Units::InchFraction] {
                let sheet = drawing(&job, &plan, Stage::Wanted, canvas(width), units);
                let slanting = |mark: &&DimensionMark| mark.kind == Kind::Leader;
                for mark in sheet.dimensions.iter().filter(slanting) {
                    // From the outline to the elbow, and on under the text; a text between would make them more.
                    assert_eq!(mark.lines.len(), 2, "{} at {width}: {mark:?}", job.title);
                }
            }
        }
    }
}

#[test]
fn rows_beside_the_head_stand_near_the_shank() {
    // Head ⌀50, shank ⌀32: M12 and its depths stand beside the head, the length over all below it.
    let arbor = arbor();
    let sheet = drawing(
        &arbor,
        &plan(&arbor),
        Stage::Received,
        Canvas::default(),
        Units::Metric,
    );
    let axis_of = |shape: &&Shape| shape.role == Role::Axis;
    let axis = sheet.shapes.iter().find(axis_of).unwrap().geometry.points()[0].y;
    let head = axis + 25.0 * sheet.scale;
    let of = |text: &str| sheet.dimensions.iter().find(|it| it.text == text).unwrap();
    assert!(of("M12").hit.y < head + 10.0);
    assert!(of("(106.50\u{a0}mm)").hit.y > head + 10.0);
}

#[test]
fn both_directions_have_one_scale() {
    // Default: head ⌀40 × 30, shank ⌀20 × 80, finished ⌀16 × 50.
    let job = Job::default();
    let sheet = drawing(&job, &plan(&job), Stage::Plan, canvas(640.0), Units::Metric);
    let outline = sheet
        .shapes
        .iter()
        .find(|shape| shape.role == Role::ThinOutline)
        .unwrap()
        .geometry
        .points();
    let reach = |pick: fn(&Point) -> f64| {
        let values: Vec<f64> = outline.iter().map(pick).collect();
        values.iter().copied().fold(f64::MIN, f64::max)
            - values.iter().copied().fold(f64::MAX, f64::min)
    };
    assert!((reach(|point| point.x) - 110.0 * sheet.scale).abs() < 1e-9);
    assert!((reach(|point| point.y) - 20.0 * sheet.scale).abs() < 1e-9);
    let mark = |measure| {
        let found = sheet.dimensions.iter().find(|mark| mark.measure == measure);
        found.unwrap()
    };
    let finished = mark(Measure::ShankFinished);
    let tips: Vec<f64> = finished.arrows.iter().map(|arrow| arrow[0].x).collect();
    assert!((tips[1] - tips[0] - 50.0 * sheet.scale).abs() < 1e-9);
    assert_eq!(mark(Measure::CutFromFreeEnd).text, "29.00\u{a0}mm");
}

#[test]
fn what_was_typed_stands_on_the_drawing() {
    let arbor = arbor();
    let plan = plan(&arbor);
    let texts = |stage, units| -> Vec<String> {
        drawing(&arbor, &plan, stage, canvas(640.0), units)
            .dimensions
            .into_iter()
            .map(|mark| mark.text.replace('\u{a0}', " "))
            .collect()
    };
    let received = texts(Stage::Received, Units::Metric);
    for wanted in ["⌀50 mm", "71.5 mm", "M12", "38 mm", "(106.50 mm)"] {
        assert!(
            received.iter().any(|text| text == wanted),
            "{wanted}: {received:?}"
        );
    }
    let wanted = texts(Stage::Wanted, Units::Metric);
    for text in ["⌀25 mm", "R1.2 mm", "1 mm × 45°", "⌀15 mm"] {
        assert!(
            wanted.iter().any(|found| found == text),
            "{text}: {wanted:?}"
        );
    }
    assert!(texts(Stage::Wanted, Units::InchDecimal).contains(&"⌀0.98425 in".to_owned()));
}

#[test]
fn a_thread_is_thin_at_its_major_diameter_and_hatched_to_its_crests() {
    let arbor = arbor();
    let plan = plan(&arbor);
    let sheet = drawing(&arbor, &plan, Stage::Received, canvas(640.0), Units::Metric);
    let of = |role| sheet.shapes.iter().filter(move |shape| shape.role == role);
    let axis = of(Role::Axis).next().unwrap().geometry.points()[0].y;
    let major = of(Role::ThreadThin).next().unwrap().geometry.points()[0].y;
    assert!((major - axis - 6.0 * sheet.scale).abs() < 1e-9);
    // M12 has its crests at 10.106: hatching between there and 12 reaches into the thread.
    let thread = of(Role::ThreadThin).next().unwrap().geometry.points();
    let reaches = of(Role::SectionHatch).any(|shape| {
        let inside =
            |point: &Point| thread[0].x < point.x && point.x < thread[1].x && point.y < major - 0.1;
        shape.geometry.points().iter().any(inside)
    });
    assert!(reaches);
}

#[test]
fn a_plan_with_gaps_is_drawn_as_far_as_it_goes() {
    let mut job = Job::default();
    job.wanted.length = Entered::plain(0, 0, Unit::Millimetre);
    let sheet = drawing(
        &job,
        &plan(&job),
        Stage::Received,
        Canvas::default(),
        Units::Metric,
    );
    assert!(
        sheet
            .shapes
            .iter()
            .any(|shape| shape.role == Role::SectionHatch)
    );
    assert!(
        sheet
            .shapes
            .iter()
            .all(|shape| shape.role != Role::ThickOutline)
    );
    assert_eq!(sheet.dimensions.len(), 5);
    job.part.sections.clear();
    let empty = drawing(
        &job,
        &plan(&job),
        Stage::Plan,
        Canvas::default(),
        Units::Metric,
    );
    assert!(empty.shapes.is_empty() && empty.dimensions.is_empty());
    let odd = Canvas {
        width: f64::NAN,
        text_height: f64::INFINITY,
        target: -1.0,
        height: f64::NAN,
        ..Canvas::default()
    };
    let job = Job::default();
    let sheet = drawing(&job, &plan(&job), Stage::Wanted, odd, Units::Metric);
    assert!(
        sheet.height.is_finite()
            && sheet
                .dimensions
                .iter()
                .any(|mark| mark.kind == Kind::Leader)
    );
}

proptest! {
    #[test]
    fn any_part_has_room(
        job in any_job::job(),
        width in 240.0..900.0_f64,
        inch in any::<bool>(),
    ) {
        check(&job, width, if inch { Units::InchDecimal } else { Units::Metric });
    }
}

/// A countersink far too large for a small part would be drilled through head and all: a finding says so, and no
/// dimension points beside the part.
#[test]
fn a_centre_hole_deeper_than_the_part_is_not_measured() {
    let mm = |digits, decimals| Entered::plain(digits, decimals, Unit::Millimetre);
    let mut job = arbor();
    let has_depth = |job: &Job| {
        let sheet = drawing(job, &plan(job), Stage::Plan, canvas(600.0), Units::Metric);
        let mut marks = sheet.dimensions.iter();
        marks.any(|it| it.measure == Measure::CentreDepth)
    };
    assert!(has_depth(&job));
    job.part.bores.clear();
    job.part.head_length = mm(5, 1);
    job.part.sections = vec![
        Turned::Cylinder {
            diameter: mm(12, 1),
            length: mm(15, 1),
        }
        .into(),
    ];
    (job.wanted.diameter, job.wanted.length) = (mm(1, 0), mm(11, 1));
    let planned = plan(&job);
    assert!(planned.centre.is_some());
    assert!(
        planned
            .findings
            .iter()
            .any(|it| it.code.level() == Level::Stop)
    );
    assert!(!has_depth(&job));
}
