//! Each kind of thing a part can have: which lines it gets, and where.
//!
//! Every part here is the plain one, head ⌀40 × 30 and shank ⌀20 × 80 that becomes ⌀16 × 50, with one thing added, so
//! that places can be reckoned by head.

use super::*;
use crate::job::{
    Bore, BoreBottom, BoreEnd, BoreField, Cut, Datum, Feature, FeatureField, Field, Flats,
    HeadField, HeadPiece, Hole, Place, Section, SectionField, Tolerance, Turned,
};
use crate::sheet::{Geometry, MarkKind};
use crate::tables::{CentreDrillSize, ThreadSize};
#[path = "whole_tests.rs"]
mod whole;

use Role::{Axis, FlatMark, OpenArea, ThickOutline, ThinOutline, ThreadThin};

fn mm(digits: u32, decimals: u8) -> Entered<Length> {
    Entered::plain(digits, decimals, Unit::Millimetre)
}

/// The plain part, turned to 16 mm exactly.
fn plain() -> Job {
    let mut job = Job::default();
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm(0, 0),
        lower: mm(0, 0),
    };
    job
}

fn place(from: Datum, start: u32) -> Place {
    let start = mm(start, 0);
    Place { from, start }
}

fn with(cut: Cut, place: impl Into<Option<Place>>) -> Job {
    let mut job = plain();
    let place = place.into();
    job.part.features = vec![Feature { cut, place }];
    job
}

fn bored(hole: Hole, end: BoreEnd, off_centre: Option<u32>) -> Job {
    let mut job = plain();
    let off_centre = off_centre.map(|off| mm(off, 0));
    job.part.bores = vec![Bore {
        hole,
        end,
        off_centre,
    }];
    job
}

/// z from the shoulder, and the distance from the axis, negative in the section.
type At = (f64, f64);

/// A drawing with the way from the part to its canvas.
struct Sheet {
    drawing: Drawing,
    /// x of the shoulder and y of the axis.
    origin: Point,
}

fn sheet(job: &Job, stage: Stage) -> Sheet {
    let drawing = drawing(job, &plan(job), stage, canvas(1400.0), Units::Metric);
    let mut chains = drawing.shapes.iter().filter(|shape| shape.role == Axis);
    // The axis of the part is painted last.
    let axis = chains.next_back().unwrap().geometry.points();
    let beyond: f64 = job
        .part
        .head_beyond
        .iter()
        .map(|it| it.length.value().to_mm())
        .sum();
    let head = job.part.head_length.value().to_mm() + beyond;
    let x = axis[0].x + OVERHANG + head * drawing.scale;
    Sheet {
        origin: Point::new(x, axis[0].y),
        drawing,
    }
}

impl Sheet {
    /// A place: z from the shoulder, and the distance from the axis, negative in the section.
    fn at(&self, z: f64, radius: f64) -> Point {
        let scale = self.drawing.scale;
        Point::new(self.origin.x + z * scale, self.origin.y - radius * scale)
    }

    /// Whether a line of a role runs straight from one place to another.
    fn has(&self, role: Role, from: At, to: At) -> bool {
        let (from, to) = (self.at(from.0, from.1), self.at(to.0, to.1));
        let same = |a: Point, b: Point| (a.x - b.x).abs() < 1e-6 && (a.y - b.y).abs() < 1e-6;
        let joins = |(a, b): (Point, Point)| {
            (same(a, from) && same(b, to)) || (same(a, to) && same(b, from))
        };
        let of_role = self
            .drawing
            .shapes
            .iter()
            .filter(|shape| shape.role == role);
        let mut lines = of_role.flat_map(|shape| match &shape.geometry {
            Geometry::Segments(lines) => lines.clone(),
            Geometry::Polyline { points, closed } => {
                let mut around = points.clone();
                around.extend(points.first().filter(|_| *closed));
                around.windows(2).map(|pair| (pair[0], pair[1])).collect()
            }
        });
        lines.any(joins)
    }

    #[track_caller]
    fn check(&self, role: Role, lines: &[(At, At)]) {
        for (from, to) in lines {
            assert!(self.has(role, *from, *to), "no {role:?} {from:?} {to:?}");
        }
    }

    fn count(&self, role: Role) -> usize {
        let shapes = self.drawing.shapes.iter();
        shapes.filter(|shape| shape.role == role).count()
    }

    /// From which z to which, and between which distances from the axis, the one open area lies.
    fn open(&self) -> (f64, f64, f64, f64) {
        let areas = self
            .drawing
            .shapes
            .iter()
            .filter(|shape| shape.role == OpenArea);
        let points: Vec<Point> = areas.flat_map(|shape| shape.geometry.points()).collect();
        let reach = |pick: fn(&Point) -> f64, from: f64| {
            let values = points
                .iter()
                .map(|it| (pick(it) - from) / self.drawing.scale);
            let least = values.clone().fold(f64::MAX, f64::min);
            [least, values.fold(f64::MIN, f64::max)]
        };
        let ([left, right], [near, far]) = (
            reach(|it| it.x, self.origin.x),
            reach(|it| it.y, self.origin.y),
        );
        let short = |value: f64| (value * 1e6).round() / 1e6;
        (short(left), short(right), short(near), short(far))
    }

    /// The text of a field's dimension.
    fn text(&self, field: Field) -> Option<String> {
        let mut marks = self.drawing.dimensions.iter();
        let mark = marks.find(|mark| mark.field == field)?;
        Some(mark.text.replace('\u{a0}', " "))
    }

    #[track_caller]
    fn check_texts(&self, wanted: &[(Field, &str)]) {
        for (field, text) in wanted {
            assert_eq!(self.text(*field).as_deref(), Some(*text), "{field}");
        }
    }

    /// From where to where the dimension of a field runs along the axis.
    fn run(&self, field: Field) -> (f64, f64) {
        let mut marks = self.drawing.dimensions.iter();
        let mark = marks.find(|mark| mark.field == field).unwrap();
        let z = |arrow: &Vec<Point>| {
            let z = (arrow[0].x - self.origin.x) / self.drawing.scale;
            (z * 1e6).round() / 1e6
        };
        (z(&mark.arrows[0]), z(&mark.arrows[1]))
    }
}

fn feature(name: FeatureField) -> Field {
    Field::Feature(0, name)
}

fn bore(name: BoreField) -> Field {
    Field::Bore(0, name)
}

#[test]
fn a_keyway_that_stays_is_thick_and_open() {
    let keyway = |depth| {
        let (width, length) = (mm(6, 0), mm(20, 0));
        with(
            Cut::Keyway {
                width,
                depth,
                length,
            },
            place(Datum::Shoulder, 10),
        )
    };
    let deep = sheet(&keyway(mm(35, 1)), Stage::Received);
    // Its bottom is 10 − 3.5 from the axis, the finished outside 8; its ends are round by half its width.
    deep.check(
        ThickOutline,
        &[
            ((10.0, -6.5), (30.0, -6.5)),
            ((10.0, -8.0), (10.0, -6.5)),
            ((13.0, 3.0), (27.0, 3.0)),
        ],
    );
    deep.check(ThinOutline, &[((10.0, -10.0), (10.0, -6.5))]);
    assert_eq!(deep.open(), (10.0, 30.0, 6.5, 10.0));
    deep.check_texts(&[
        (feature(FeatureField::Width), "6 mm"),
        (feature(FeatureField::Depth), "3.5 mm"),
        (feature(FeatureField::Length), "20 mm"),
        (feature(FeatureField::Start), "10 mm"),
    ]);
    assert_eq!(deep.run(feature(FeatureField::Length)), (10.0, 30.0));
    assert_eq!(deep.run(feature(FeatureField::Start)), (0.0, 10.0));
    // One of 1.5 mm is turned away: nothing of it is thick.
    let shallow = sheet(&keyway(mm(15, 1)), Stage::Received);
    shallow.check(ThinOutline, &[((10.0, -8.5), (30.0, -8.5))]);
    let thick = |sheet: &Sheet| sheet.count(ThickOutline);
    assert_eq!(thick(&shallow), thick(&sheet(&plain(), Stage::Received)));
}

#[test]
fn a_flat_has_its_diagonals_once_where_it_will_be() {
    let cut = Cut::Flat {
        over: mm(17, 0),
        flats: Flats::One,
        length: mm(12, 0),
    };
    let flat = sheet(&with(cut, place(Datum::FreeEnd, 40)), Stage::Received);
    // 80 − 40 − 12 = 28; 17 − 10 = 7 from the axis: half as wide as √(100 − 49) and, turned, √(64 − 49).
    let (before, after) = (51.0_f64.sqrt(), 15.0_f64.sqrt());
    flat.check(ThinOutline, &[((28.0, before), (40.0, before))]);
    flat.check(
        ThickOutline,
        &[((28.0, after), (40.0, after)), ((28.0, -7.0), (40.0, -7.0))],
    );
    flat.check(
        FlatMark,
        &[((28.0, 0.0), (40.0, after)), ((28.0, after), (40.0, 0.0))],
    );
    assert_eq!(flat.count(FlatMark), 1);
    flat.check_texts(&[(feature(FeatureField::Over), "17 mm")]);
    assert_eq!(flat.run(feature(FeatureField::Start)), (40.0, 80.0));
}

#[test]
fn two_flats_lie_at_half_their_distance() {
    let cut = Cut::Flat {
        over: mm(12, 0),
        flats: Flats::Two,
        length: mm(10, 0),
    };
    let flats = sheet(&with(cut, place(Datum::Shoulder, 5)), Stage::Received);
    flats.check(ThinOutline, &[((5.0, 8.0), (15.0, 8.0))]);
    flats.check(ThickOutline, &[((5.0, -6.0), (15.0, -6.0))]);
}

#[test]
fn a_woodruff_keyway_has_the_arc_of_its_disc() {
    let cut = Cut::WoodruffKeyway {
        width: mm(4, 0),
        depth: mm(5, 0),
        disc: mm(16, 0),
    };
    let keyway = sheet(&with(cut, place(Datum::Shoulder, 25)), Stage::Received);
    // The chord of a disc of radius 8 at 5 deep: 2 √(64 − 9).
    let half = 55.0_f64.sqrt();
    let (left, right, near, far) = keyway.open();
    assert!((left - (25.0 - half)).abs() < 1e-5 && (right - (25.0 + half)).abs() < 1e-5);
    assert!((near - 5.0).abs() < 1e-5 && (far - 10.0).abs() < 1e-5);
    keyway.check(ThinOutline, &[((25.0 - half, 2.0), (25.0 + half, 2.0))]);
    keyway.check_texts(&[
        (feature(FeatureField::Disc), "⌀16 mm"),
        (feature(FeatureField::Start), "25 mm"),
    ]);
}

#[test]
fn a_cross_hole_is_a_circle_with_its_axis() {
    let cut = Cut::CrossHole { diameter: mm(6, 0) };
    let hole = sheet(&with(cut, place(Datum::Shoulder, 20)), Stage::Received);
    assert_eq!(hole.open(), (17.0, 23.0, 0.0, 10.0));
    hole.check(
        ThickOutline,
        &[((17.0, 0.0), (17.0, -8.0)), ((23.0, 0.0), (23.0, -8.0))],
    );
    let (centre, radius) = (hole.at(20.0, 0.0), 3.0 * hole.drawing.scale);
    let circles = hole.drawing.shapes.iter().filter(|shape| {
        let points = shape.geometry.points();
        let off = |it: &Point| ((it.x - centre.x).hypot(it.y - centre.y) - radius).abs();
        points.len() > 20 && points.iter().all(|it| off(it) < 1e-6)
    });
    assert_eq!(circles.count(), 2, "one thin, one thick");
    let across = |shape: &&Shape| {
        let points = shape.geometry.points();
        shape.role == Axis && points.iter().all(|it| (it.x - centre.x).abs() < 1e-6)
    };
    assert_eq!(hole.drawing.shapes.iter().filter(across).count(), 1);
    hole.check_texts(&[(feature(FeatureField::Diameter), "⌀6 mm")]);
    assert_eq!(hole.run(feature(FeatureField::Start)), (0.0, 20.0));
}

#[test]
fn a_tang_has_its_face_and_its_slot() {
    let cut = Cut::Tang {
        thickness: mm(12, 0),
        length: mm(15, 0),
        slot_width: Some(mm(4, 0)),
        slot_depth: Some(mm(5, 0)),
    };
    let tang = sheet(&with(cut, None), Stage::Received);
    // 6 from the axis: half as wide as 8. It goes with the offcut, so all of it is thin.
    tang.check(
        ThinOutline,
        &[
            ((65.0, 8.0), (80.0, 8.0)),
            ((75.0, 0.0), (75.0, 2.0)),
            ((75.0, 2.0), (80.0, 2.0)),
            ((65.0, -6.0), (80.0, -6.0)),
            ((75.0, 0.0), (75.0, -6.0)),
        ],
    );
    tang.check(FlatMark, &[((65.0, 0.0), (80.0, 8.0))]);
    assert_eq!(tang.open(), (65.0, 80.0, 0.0, 10.0));
    tang.check_texts(&[
        (feature(FeatureField::Thickness), "12 mm"),
        (feature(FeatureField::Length), "15 mm"),
        (feature(FeatureField::SlotWidth), "4 mm"),
        (feature(FeatureField::SlotDepth), "5 mm"),
    ]);
}

#[test]
fn an_outside_thread_has_its_root_and_its_ends() {
    let thread = ThreadSize::from_code("M20").unwrap();
    let mut job = plain();
    job.part.sections = vec![
        Turned::Cylinder {
            diameter: mm(20, 0),
            length: mm(30, 0),
        }
        .into(),
        Turned::Thread {
            thread,
            length: mm(50, 0),
        }
        .into(),
    ];
    let sheet = sheet(&job, Stage::Received);
    // ISO 724: d3 of M20 is 16.933, 20 − 1.226869 × 2.5.
    let root = (20.0 - 1.226_869 * 2.5) / 2.0;
    for side in [1.0, -1.0] {
        sheet.check(ThreadThin, &[((30.0, side * root), (80.0, side * root))]);
    }
    // The end of the thread at the other cylinder shows in no outline.
    sheet.check(
        ThinOutline,
        &[((30.0, 0.0), (30.0, 10.0)), ((30.0, -root), (30.0, -10.0))],
    );
    sheet.check_texts(&[
        (Field::Section(1, SectionField::Thread), "M20"),
        (Field::Section(1, SectionField::Length), "50 mm"),
    ]);
}

#[test]
fn grooves_and_reliefs_are_steps_with_width_and_bottom() {
    let mut job = plain();
    job.part.sections = vec![
        Turned::Relief {
            diameter: mm(15, 0),
            length: mm(3, 0),
        }
        .into(),
        Turned::Cylinder {
            diameter: mm(20, 0),
            length: mm(40, 0),
        }
        .into(),
        Turned::Groove {
            diameter: mm(14, 0),
            length: mm(4, 0),
        }
        .into(),
        Turned::Cylinder {
            diameter: mm(20, 0),
            length: mm(33, 0),
        }
        .into(),
    ];
    let sheet = sheet(&job, Stage::Received);
    sheet.check(
        ThinOutline,
        &[((0.0, 7.5), (3.0, 7.5)), ((43.0, -7.0), (47.0, -7.0))],
    );
    // What is deeper than the finished size stays in the finished part.
    sheet.check(
        ThickOutline,
        &[((43.0, 7.0), (47.0, 7.0)), ((43.0, 7.0), (43.0, 8.0))],
    );
    sheet.check_texts(&[
        (Field::Section(0, SectionField::Diameter), "⌀15 mm"),
        (Field::Section(2, SectionField::Diameter), "⌀14 mm"),
        (Field::Section(2, SectionField::Length), "4 mm"),
    ]);
}

#[test]
fn a_placed_section_shows_where_it_begins() {
    let mut job = plain();
    let turned = Turned::Cylinder {
        diameter: mm(18, 0),
        length: mm(20, 0),
    };
    job.part.sections.push(Section {
        turned,
        place: Some(place(Datum::FreeEnd, 5)),
    });
    job.part.shank_length = Some(mm(105, 0));
    let sheet = sheet(&job, Stage::Received);
    assert_eq!(
        sheet.run(Field::Section(1, SectionField::Start)),
        (100.0, 105.0)
    );
    assert_eq!(sheet.run(Field::ShankLength), (0.0, 105.0));
}

#[test]
fn every_piece_of_the_head_is_drawn_and_measured() {
    let mut job = plain();
    job.part.head_beyond = vec![
        HeadPiece {
            diameter: mm(60, 0),
            length: mm(10, 0),
        },
        HeadPiece {
            diameter: mm(30, 0),
            length: mm(5, 0),
        },
    ];
    let sheet = sheet(&job, Stage::Received);
    sheet.check(
        ThickOutline,
        &[
            ((-40.0, 30.0), (-30.0, 30.0)),
            ((-45.0, 15.0), (-40.0, 15.0)),
        ],
    );
    sheet.check_texts(&[
        (Field::HeadDiameter, "⌀40 mm"),
        (Field::Head(0, HeadField::Diameter), "⌀60 mm"),
        (Field::Head(1, HeadField::Length), "5 mm"),
    ]);
    assert_eq!(sheet.run(Field::Head(1, HeadField::Length)), (-45.0, -40.0));
}
