//! Holes, and what holds for a drawing as a whole: room, breaks, marks.

use super::*;

#[test]
fn holes_are_measured_from_their_own_end() {
    let stepped = Hole::Stepped {
        diameter: mm(6, 0),
        depth: mm(25, 0),
        step_diameter: mm(10, 0),
        step_depth: mm(8, 0),
        bottom: BoreBottom::Flat,
    };
    let head = sheet(
        &bored(stepped.clone(), BoreEnd::HeadEnd, None),
        Stage::Received,
    );
    head.check(
        ThickOutline,
        &[
            ((-30.0, -5.0), (-22.0, -5.0)),
            ((-22.0, -3.0), (-5.0, -3.0)),
        ],
    );
    assert_eq!(head.run(bore(BoreField::Depth)), (-30.0, -5.0));
    assert_eq!(head.run(bore(BoreField::StepDepth)), (-30.0, -22.0));
    head.check_texts(&[
        (bore(BoreField::Diameter), "⌀6 mm"),
        (bore(BoreField::StepDiameter), "⌀10 mm"),
    ]);
    let free = sheet(&bored(stepped, BoreEnd::FreeEnd, None), Stage::Received);
    free.check(
        ThinOutline,
        &[((72.0, -5.0), (80.0, -5.0)), ((55.0, -3.0), (72.0, -3.0))],
    );
    assert_eq!(free.run(bore(BoreField::Depth)), (55.0, 80.0));
}

#[test]
fn other_holes_show_what_they_are() {
    let reamed = Hole::Reamed {
        diameter: mm(8, 0),
        ream_depth: mm(10, 0),
        drill_depth: mm(14, 0),
    };
    let reamed = sheet(&bored(reamed, BoreEnd::HeadEnd, None), Stage::Received);
    assert_eq!(reamed.run(bore(BoreField::ReamDepth)), (-30.0, -20.0));
    assert_eq!(reamed.run(bore(BoreField::DrillDepth)), (-30.0, -16.0));
    let through = sheet(
        &bored(Hole::Through { diameter: mm(5, 0) }, BoreEnd::FreeEnd, None),
        Stage::Received,
    );
    through.check(ThinOutline, &[((-30.0, -2.5), (80.0, -2.5))]);
    through.check_texts(&[(bore(BoreField::Diameter), "⌀5 mm")]);
    let thread = ThreadSize::from_code("M8").unwrap();
    let tapped = Hole::Tapped {
        thread,
        thread_depth: mm(12, 0),
        drill_depth: mm(16, 0),
    };
    let tapped = sheet(&bored(tapped, BoreEnd::HeadEnd, None), Stage::Received);
    tapped.check(ThreadThin, &[((-30.0, -4.0), (-18.0, -4.0))]);
    tapped.check(ThickOutline, &[((-18.0, 0.0), (-18.0, -4.0))]);
    let centre_drill = CentreDrillSize::from_index(3).unwrap();
    let centre = sheet(
        &bored(Hole::CentreHole { centre_drill }, BoreEnd::HeadEnd, None),
        Stage::Received,
    );
    let drill = centre_drill.get().unwrap();
    centre.check_texts(&[(bore(BoreField::CentreDrill), drill.designation)]);
    let mouth = drill.countersink_diameter.unwrap().to_mm() / 2.0;
    centre.check(ThickOutline, &[((-30.0, 0.0), (-30.0, -mouth))]);
}

#[test]
fn a_hole_beside_the_axis_is_drawn_on_its_own_axis() {
    let hole = Hole::Drilled {
        diameter: mm(4, 0),
        depth: mm(20, 0),
        bottom: BoreBottom::Flat,
    };
    let beside = sheet(&bored(hole, BoreEnd::HeadEnd, Some(9)), Stage::Received);
    assert_eq!(beside.open(), (-30.0, -10.0, 7.0, 11.0));
    beside.check(
        ThickOutline,
        &[
            ((-30.0, -7.0), (-10.0, -7.0)),
            ((-30.0, -11.0), (-10.0, -11.0)),
            ((-10.0, -7.0), (-10.0, -11.0)),
        ],
    );
    let axis = beside.at(0.0, -9.0).y;
    let own = |shape: &&Shape| {
        let points = shape.geometry.points();
        shape.role == Axis && points.iter().all(|it| (it.y - axis).abs() < 1e-6)
    };
    assert_eq!(
        beside.drawing.shapes.iter().filter(own).count(),
        2,
        "thin and thick"
    );
    beside.check_texts(&[(bore(BoreField::OffCentre), "e 9 mm")]);
}

#[test]
fn what_has_no_room_is_counted_and_the_shank_comes_first() {
    let mut job = plain();
    job.part.sections = (10..22)
        .map(|size| {
            Turned::Cylinder {
                diameter: mm(40 - size, 0),
                length: mm(size, 0),
            }
            .into()
        })
        .collect();
    job.part.features = (0..8)
        .map(|at| Feature {
            cut: Cut::CrossHole { diameter: mm(3, 0) },
            place: Some(place(Datum::Shoulder, 10 + 20 * at)),
        })
        .collect();
    let plan = plan(&job);
    let on = |canvas| drawing(&job, &plan, Stage::Received, canvas, Units::Metric);
    let low = |width| Canvas {
        height: 640.0,
        ..canvas(width)
    };
    let drawn = |width| on(low(width));
    let (phone, desk) = (drawn(328.0), drawn(2000.0));
    let all = |sheet: &Drawing| sheet.dimensions.len() + sheet.hidden;
    assert_eq!(all(&phone), all(&desk));
    // Head 2, over all 1, sections 24, cross holes 16.
    assert_eq!(all(&desk), 43);
    assert!(desk.hidden < phone.hidden && 0 < phone.hidden);
    let features = |sheet: &Drawing| {
        let is_feature = |mark: &&DimensionMark| matches!(mark.field, Field::Feature(..));
        sheet.dimensions.iter().filter(is_feature).count()
    };
    let sections = phone.dimensions.len() - features(&phone);
    assert!(
        features(&phone) < sections,
        "{} {sections}",
        features(&phone)
    );
    assert!(phone.height <= 640.0, "{}", phone.height);
    // What is looked at is shown whatever its rank.
    let looked = Field::Feature(7, FeatureField::Start);
    let has = |sheet: &Drawing| sheet.dimensions.iter().any(|mark| mark.field == looked);
    assert!(!has(&phone));
    let looked_at = on(Canvas {
        picked: Some(looked),
        ..low(328.0)
    });
    assert!(has(&looked_at) && looked_at.height <= 640.0);
    // Without a limit all are shown; on no height at all the part and one row a side.
    assert_eq!(on(canvas(328.0)).hidden, 0);
    let asked = Canvas {
        all: true,
        ..low(328.0)
    };
    assert_eq!(on(asked).hidden, 0);
    let least = on(Canvas {
        height: 0.0,
        ..low(328.0)
    });
    let mut rows: Vec<f64> = least.dimensions.iter().map(|it| it.hit.y.round()).collect();
    rows.dedup();
    assert_eq!(rows.len(), 2, "{rows:?}");
}

#[test]
fn a_phone_shows_all_that_is_wanted_and_planned() {
    // Three fifths of a phone's height, and the one row more.
    let phone = Canvas {
        height: 444.0,
        ..canvas(328.0)
    };
    for job in demo_jobs() {
        let plan = plan(&job);
        for stage in [Stage::Wanted, Stage::Plan] {
            let sheet = drawing(&job, &plan, stage, phone, Units::Metric);
            assert_eq!(sheet.hidden, 0, "{stage:?}: {}", job.title);
            assert!(sheet.height <= 444.0 + 48.0, "{}", sheet.height);
        }
    }
}

#[test]
fn a_break_hides_nothing_but_length() {
    let mut job = plain();
    job.part.sections = vec![
        Turned::Cylinder {
            diameter: mm(20, 0),
            length: mm(3000, 0),
        }
        .into(),
    ];
    let sheet = drawing(
        &job,
        &plan(&job),
        Stage::Received,
        canvas(328.0),
        Units::Metric,
    );
    assert_eq!(sheet.breaks, 1);
    let edges: Vec<f64> = sheet
        .shapes
        .iter()
        .filter(|shape| shape.role == Role::BreakLine)
        .map(|shape| shape.geometry.points()[0].x)
        .collect();
    let [left, right] = edges[..] else {
        panic!("{edges:?}")
    };
    for shape in sheet
        .shapes
        .iter()
        .filter(|shape| shape.role != Role::BreakLine)
    {
        let inside = |it: &Point| left + 1e-6 < it.x && it.x < right - 1e-6;
        assert!(!shape.geometry.points().iter().any(inside), "{shape:?}");
    }
    let long = |mark: &&DimensionMark| mark.field == Field::Section(0, SectionField::Length);
    let mark = sheet.dimensions.iter().find(long).unwrap();
    assert_eq!(mark.text.replace('\u{a0}', " "), "3000 mm");
    // The shank as thick as it can be seen, and both ends of it on the canvas.
    assert!(sheet.scale * 20.0 > 30.0);
    assert!(mark.arrows[0][0].x < left && right < mark.arrows[1][0].x);
}

#[test]
fn marks_stand_where_the_plan_says() {
    let [_, _, roller] = demo_jobs();
    let plan = plan(&roller);
    let sheet = drawing(&roller, &plan, Stage::Plan, canvas(700.0), Units::Metric);
    let kinds: Vec<(MarkKind, u8)> = sheet.marks.iter().map(|it| (it.what, it.number)).collect();
    assert_eq!(
        kinds,
        [
            (MarkKind::ThinnestWall, 1),
            (MarkKind::TightestCleanUp, 2),
            (MarkKind::WeakestSection, 3)
        ]
    );
    let (wall, clean, weak) = (&sheet.marks[0], &sheet.marks[1], &sheet.marks[2]);
    let kept = plan.kept.as_ref().unwrap();
    assert_eq!(
        (weak.z, weak.to * 2.0),
        (kept.after.at, kept.after.diameter)
    );
    for (index, mark) in sheet.marks.iter().enumerate() {
        for other in &sheet.marks[index + 1..] {
            let apart = (mark.at.x - other.at.x).hypot(mark.at.y - other.at.y);
            assert!(apart > 2.0 * Mark::RADIUS * 16.0, "{mark:?} {other:?}");
        }
    }
    assert_eq!(
        (wall.z, clean.z),
        (plan.walls[0].at, plan.clean_up.as_ref().unwrap().at)
    );
    // A hole of 8 mm; the wall as the plan has it, and the runout of 0.05 that it already counts.
    assert!((wall.from.to_mm() - 4.0).abs() < 1e-9);
    let walled = (wall.to - wall.from - plan.walls[0].least.value).to_mm();
    assert!((walled - 0.025).abs() < 1e-9, "{walled}");
    let drawn = (wall.line.1.y - wall.line.0.y) / sheet.scale;
    assert!((drawn - (wall.to - wall.from).to_mm()).abs() < 1e-9);
    // Stock of 20 mm less the runout, 17 mm wanted.
    assert!((clean.to.to_mm() - 9.975).abs() < 1e-9);
}
