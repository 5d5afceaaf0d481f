//! The drawing as a DXF file of release 12, for programs that draw or cut: true size in millimetres.
//!
//! x is 0 at the shoulder and grows towards the free end, y is 0 on the axis; above it stands the outside view, below it the
//! section, as in the drawing. Nothing is broken out. What a line stands for is its layer. Areas are not filled: hatching
//! ends where metal does, and the kerf has an outline.
//!
//! The shapes are those of the drawing, put together at a scale that is a power of two from the shoulder and the axis on:
//! such a scale is taken out again without any rounding, and lengths are the plan's own. Round shapes, which the drawing
//! has in chords, become arcs again: the plan says where their centres are.
//!
//! Dimensions are lines and texts, not DIMENSION entities: those need a block each in release 12, which readers make anew
//! in their own way or do not read at all.

use super::body::{Body, OVERHANG};
use super::drawing::{Canvas, Drawing, Stage, arrange};
use super::dxf_entity::{Entity, Layer, ascii, file};
use super::geometry::{Geometry, Point, Role, Shape};
use super::scale::{CLEAR, Scale};
use crate::job::Job;
use crate::order;
use crate::part::{CutShape, Pick, SAME};
use crate::plan::Plan;
use crate::quantity::{Length, Units};

/// How long the part is drawn at least, and how thick, in pixels: what sizes of texts, arrow heads and hatching go by.
const LEAST_DRAWN: (f64, f64) = (500.0, 60.0);

/// Room beside the part for dimensions, in pixels.
const MARGIN: f64 = 2.0 * OVERHANG + 40.0;

/// Height of capital letters over that of a line of text.
const CAPITALS: f64 = 0.6;

/// A job and its plan as the text of a DXF file.
///
/// `plan` is the plan of `job`, `stage` says which dimensions and passes are drawn, and `units` how the figures of
/// dimensions are written; the drawing itself is in millimetres. Of the job's texts it holds the title alone, cleaned.
/// While the part as received cannot be put together there is the title only.
///
/// # Accuracy
/// Coordinates and radii are the plan's, to a millionth of a micrometre. The round ends of a keyway that is shorter than
/// wide, and the edge of a flat on a cone, are chords.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::Units};
/// use skimwright::sheet::{Stage, dxf};
/// let job = Job::default();
/// let file = dxf(&job, &plan(&job), Stage::Plan, Units::Metric);
/// assert!(file.is_ascii() && file.contains("AC1009") && file.ends_with("EOF\r\n"));
/// ```
pub fn dxf(job: &Job, plan: &Plan, stage: Stage, units: Units) -> String {
    let mut entities = Vec::new();
    let canvas = Canvas {
        text_height: 14.0,
        target: 32.0,
        all: true,
        ..Canvas::default()
    };
    let mut pixel = 1.0;
    let mut foot = Point::new(0.0, 0.0);
    if let Some(received) = &plan.shape.received {
        let body = Body::of_stage(received, plan, stage, None);
        let (canvas, scale) = sheet(&body, canvas);
        pixel = 1.0 / scale.factor;
        entities = part(&body, plan, scale.factor);
        let (drawing, scale) = arrange(job, plan, (stage, units), canvas, &body, scale);
        let at = |point: Point| {
            Point::new(
                (point.x - scale.left) * pixel + scale.start,
                (scale.axis - point.y) * pixel,
            )
        };
        entities.extend(dimensions(&drawing, at, pixel));
        foot = at(Point::new(
            scale.left,
            drawing.height + 2.0 * drawing.text_height,
        ));
    }
    let height = canvas.text_height * CAPITALS * pixel;
    let title = Entity::Text {
        at: foot,
        height,
        text: ascii(&format!("{} mm 1:1", job.title)).trim().to_owned(),
        middle: false,
    };
    entities.push((Layer::Title, title));
    let notes = [
        "Skimwright: units are millimetres, scale 1:1; x = 0 at the shoulder, y = 0 on the axis",
        "Above the axis the outside view, below it the section; dimensions are lines and texts",
    ];
    file(&entities, &notes, pixel, height)
}

/// A canvas and a scale for the dimensions, the axis not yet placed.
fn sheet(body: &Body, canvas: Canvas) -> (Canvas, Scale) {
    let outer = &body.outer;
    let (start, long) = (outer.start().to_mm(), (outer.end() - outer.start()).to_mm());
    let reach = |profile: &crate::part::Profile| {
        let most = profile.largest(profile.start(), profile.end());
        most.map_or(0.0, |point| point.radius.to_mm())
    };
    let shank = reach(&body.received.outer);
    let wanted = (LEAST_DRAWN.0 / long).max(LEAST_DRAWN.1 / shank);
    let factor = power_of_two(wanted);
    let whole = outer.merge(&body.received.inner, Pick::Larger);
    let across = reach(&whole) * factor + CLEAR;
    let width = (long * factor + 2.0 * MARGIN).max(480.0);
    let scale = Scale {
        factor,
        start,
        left: (width - long * factor) / 2.0,
        breaks: Vec::new(),
        axis: 0.0,
        above: across,
        below: across,
    };
    (Canvas { width, ..canvas }, scale)
}

/// The smallest power of two that is no less than `wanted`, from 2⁻¹⁶ to 2¹⁶.
fn power_of_two(wanted: f64) -> f64 {
    let mut powers = (-16..=16).map(|power| 2.0_f64.powi(power));
    let below = powers.rfind(|power| *power < wanted);
    below.map_or(2.0_f64.powi(-16), |it| it * 2.0)
}

/// The part itself.
fn part(body: &Body, plan: &Plan, factor: f64) -> Vec<(Layer, Entity)> {
    let exact = Scale {
        factor,
        start: 0.0,
        left: 0.0,
        breaks: Vec::new(),
        axis: 0.0,
        above: 0.0,
        below: 0.0,
    };
    let shapes = body.shapes(&exact);
    let open: Vec<&Shape> = shapes
        .iter()
        .filter(|shape| shape.role == Role::OpenArea)
        .collect();
    let rounds = rounds(body, plan);
    let at = |point: &Point| Point::new(point.x / factor, -point.y / factor);
    let mut entities = Vec::new();
    for shape in &shapes {
        let Some(layer) = layer(shape.role) else {
            continue;
        };
        match &shape.geometry {
            Geometry::Polyline { points, closed } => {
                let mut points: Vec<Point> = points.iter().map(at).collect();
                if *closed {
                    points.extend(points.first().copied());
                }
                entities.extend(trace(points, &rounds).into_iter().map(|it| (layer, it)));
            }
            Geometry::Segments(lines) => {
                let mut lines = lines.clone();
                if matches!(shape.role, Role::RemovedHatch | Role::SectionHatch) {
                    for area in &open {
                        let outline = area.geometry.points();
                        lines = lines
                            .into_iter()
                            .flat_map(|line| outside(line, &outline))
                            .collect();
                    }
                }
                let lines = lines.iter().map(|(a, b)| (at(a), at(b)));
                let lines = lines.filter(|(a, b)| !same(*a, *b));
                entities.extend(lines.map(|(a, b)| (layer, Entity::Line(a, b))));
            }
        }
    }
    entities
}

/// Lines, arrow heads and texts of the dimensions.
fn dimensions(drawing: &Drawing, at: impl Fn(Point) -> Point, pixel: f64) -> Vec<(Layer, Entity)> {
    let mut entities = Vec::new();
    for mark in &drawing.dimensions {
        entities.extend(mark.lines.iter().map(|(a, b)| Entity::Line(at(*a), at(*b))));
        entities.extend(
            mark.arrows
                .iter()
                .filter_map(|arrow| match arrow.as_slice() {
                    [a, b, c] => Some(Entity::Solid([at(*a), at(*b), at(*c)])),
                    _ => None,
                }),
        );
        entities.push(Entity::Text {
            at: at(mark.text_at),
            height: drawing.text_height * CAPITALS * pixel,
            text: ascii(&mark.text),
            middle: true,
        });
    }
    let layer = Layer::Dimension;
    entities.into_iter().map(|entity| (layer, entity)).collect()
}

/// Where a role is drawn; areas are not.
const fn layer(role: Role) -> Option<Layer> {
    Some(match role {
        Role::RemovedArea | Role::OpenArea => return None,
        Role::KerfArea => Layer::Kerf,
        Role::RemovedHatch => Layer::Removed,
        Role::SectionHatch => Layer::Section,
        Role::ThinOutline | Role::BreakLine => Layer::Received,
        Role::ThreadThin => Layer::Thread,
        Role::FlatMark => Layer::Flat,
        Role::ThickOutline => Layer::Outline,
        Role::CutLine => Layer::Cut,
        Role::RoughLayer | Role::PickedLayer => Layer::Rough,
        Role::LastLayer => Layer::Last,
        Role::Axis => Layer::Axis,
    })
}

/// A circle that something of the part is round by.
struct Round {
    centre: Point,
    radius: f64,
}

/// The fillet on both sides, cross holes, the ends of keyways, the bottoms of Woodruff keyways.
fn rounds(body: &Body, plan: &Plan) -> Vec<Round> {
    let round = |z: Length, y: Length, radius: Length| Round {
        centre: Point::new(z.to_mm(), y.to_mm()),
        radius: radius.to_mm(),
    };
    let mut rounds = Vec::new();
    if let Some(shank) = &plan.shape.shank {
        let off = shank.diameter / 2.0 + shank.fillet;
        rounds.extend([off, -off].map(|off| round(shank.fillet, off, shank.fillet)));
    }
    for feature in &body.received.features {
        let middle = (feature.from + feature.to) / 2.0;
        match feature.cut {
            CutShape::CrossHole { diameter } => {
                rounds.push(round(middle, Length::ZERO, diameter / 2.0));
            }
            CutShape::Keyway { width, .. } => {
                let half = width / 2.0;
                let ends = [feature.from + half, feature.to - half];
                rounds.extend(ends.map(|z| round(z, Length::ZERO, half)));
            }
            CutShape::Woodruff {
                bottom,
                disc_radius,
                ..
            } => rounds.push(round(middle, -(bottom + disc_radius), disc_radius)),
            CutShape::Flat { .. } | CutShape::Tang { .. } => {}
        }
    }
    rounds.retain(|round| SAME < round.radius);
    rounds
}

impl Round {
    fn holds(&self, point: Point) -> bool {
        let (x, y) = (point.x - self.centre.x, point.y - self.centre.y);
        (x.hypot(y) - self.radius).abs() <= SAME
    }

    /// The arc through these points of it, the way round that they go.
    fn arc(&self, points: &[Point]) -> Option<Entity> {
        let ([first, next, ..], Some(last)) = (points, points.last()) else {
            return None;
        };
        let turn = |point: &Point| {
            let (x, y) = (point.x - self.centre.x, point.y - self.centre.y);
            y.atan2(x).to_degrees().rem_euclid(360.0)
        };
        let (x, y) = (first.x - self.centre.x, first.y - self.centre.y);
        let counter_clockwise = 0.0 < x * (next.y - first.y) - y * (next.x - first.x);
        let (from, to) = if counter_clockwise {
            (turn(first), turn(last))
        } else {
            (turn(last), turn(first))
        };
        Some(Entity::Arc {
            centre: self.centre,
            radius: self.radius,
            from,
            to,
        })
    }
}

/// Lines from point to point, and arcs where three or more lie on a round.
fn trace(mut points: Vec<Point>, rounds: &[Round]) -> Vec<Entity> {
    points.dedup_by(|a, b| same(*a, *b));
    let mut entities = Vec::new();
    let mut rest = points.as_slice();
    while let [from, to, ..] = rest {
        let along = rounds.iter().map(|round| {
            let count = rest.iter().take_while(|point| round.holds(**point)).count();
            (round, count)
        });
        let longest = along.max_by_key(|(_, count)| *count);
        let arc = longest
            .filter(|(_, count)| 3 <= *count)
            .and_then(|(round, count)| {
                let arc = round.arc(rest.get(..count)?)?;
                Some((arc, count - 1))
            });
        let (entity, taken) = arc.unwrap_or((Entity::Line(*from, *to), 1));
        entities.push(entity);
        rest = rest.get(taken..).unwrap_or_default();
    }
    entities
}

/// Whether two points are one: nearer than a picometre, which is the last decimal that is written.
fn same(a: Point, b: Point) -> bool {
    const NEAR: f64 = 1e-9;
    (a.x - b.x).abs() <= NEAR && (a.y - b.y).abs() <= NEAR
}

/// What of a line lies outside a closed outline.
fn outside((a, b): (Point, Point), outline: &[Point]) -> Vec<(Point, Point)> {
    let sides = || outline.iter().zip(outline.iter().cycle().skip(1));
    let (x, y) = (b.x - a.x, b.y - a.y);
    let mut shares = vec![0.0, 1.0];
    shares.extend(sides().filter_map(|(p, q)| {
        let (side_x, side_y) = (q.x - p.x, q.y - p.y);
        let across = x * side_y - y * side_x;
        let along_line = ((p.x - a.x) * side_y - (p.y - a.y) * side_x) / across;
        let along_side = ((p.x - a.x) * y - (p.y - a.y) * x) / across;
        let meets = (0.0..=1.0).contains(&along_side) && 0.0 < along_line && along_line < 1.0;
        meets.then_some(along_line)
    }));
    order::numbers(&mut shares);
    let at = |share: f64| Point::new(a.x + x * share, a.y + y * share);
    let is_inside = |point: Point| {
        let crossed = sides().filter(|(p, q)| {
            let spans = (p.y <= point.y) != (q.y <= point.y);
            spans && point.x < p.x + (q.x - p.x) * ((point.y - p.y) / (q.y - p.y))
        });
        crossed.count() % 2 == 1
    };
    let mut left: Vec<(f64, f64)> = Vec::new();
    for (from, to) in shares.iter().zip(shares.iter().skip(1)) {
        if to <= from || is_inside(at(f64::midpoint(*from, *to))) {
            continue;
        }
        match left.last_mut() {
            Some((_, end)) if from <= end => *end = *to,
            _ => left.push((*from, *to)),
        }
    }
    left.into_iter()
        .map(|(from, to)| (at(from), at(to)))
        .collect()
}

#[cfg(test)]
#[path = "dxf_tests.rs"]
mod tests;
