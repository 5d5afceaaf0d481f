//! Places worth a look: numbered on the drawing, said in words beside it.

use super::geometry::Point;
use super::scale::{CLEAR, Scale, Side};
use crate::part::{Pick, Received};
use crate::plan::Plan;
use crate::quantity::Length;

/// What a mark points out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MarkKind {
    /// The least wall round a hole in the finished shank.
    ThinnestWall,
    /// Where the stock has least to spare for the finished shank.
    TightestCleanUp,
    /// Where the finished shank bears least in bending.
    WeakestSection,
}

/// A marked place: a line across it and a number in a circle.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// What it points out.
    pub what: MarkKind,
    /// The number in its circle, from 1 on.
    pub number: u8,
    /// Where, from the shoulder.
    pub z: Length,
    /// The nearer end of the line across it, from the axis.
    pub from: Length,
    /// The farther end.
    pub to: Length,
    /// That line on the canvas.
    pub line: (Point, Point),
    /// The middle of the circle.
    pub at: Point,
}

impl Mark {
    /// Radius of the circle over the text height.
    pub const RADIUS: f64 = 0.6;
}

/// The marks of a plan, as many as have a place on the canvas; `text` is the height of a line of text.
pub(super) fn marks(plan: &Plan, received: &Received, scale: &Scale, text: f64) -> Vec<Mark> {
    let mut found = Vec::new();
    let least = |wall: &&crate::rework::Wall| wall.least.value.to_mm();
    let walls = plan.walls.iter();
    let thinnest = walls.min_by(|a, b| least(a).total_cmp(&least(b)));
    if let Some(wall) = thinnest {
        let hole = received.bores.iter().find(|bore| bore.index == wall.bore);
        let beside = hole.map_or(Length::ZERO, |hole| hole.off_centre);
        let hole_radius = wall.bore_diameter / 2.0;
        let from = hole_radius + beside;
        let to = (hole_radius + wall.least.value + wall.offset).max(from);
        found.push((MarkKind::ThinnestWall, Side::Section, wall.at, from, to));
    }
    if let (Some(clean), Some(shank)) = (&plan.clean_up, &plan.shape.shank) {
        let (stock, wanted) = (clean.largest_diameter.value / 2.0, shank.diameter / 2.0);
        let (from, to) = (stock.min(wanted), stock.max(wanted));
        found.push((MarkKind::TightestCleanUp, Side::View, clean.at, from, to));
    }
    if let Some(kept) = &plan.kept {
        let (at, to) = (kept.after.at, kept.after.diameter / 2.0);
        found.push((MarkKind::WeakestSection, Side::View, at, Length::ZERO, to));
    }
    let radius = text * Mark::RADIUS;
    let mut taken: Vec<Point> = Vec::new();
    let outer = received.outer.merge(&received.head, Pick::Larger);
    (1..=u8::MAX)
        .zip(found)
        .map(|(number, (what, side, z, from, to))| {
            let shown = scale.seen(z);
            let edge = outer.radius_at(shown);
            let ends = (
                scale.point(side, shown, from.min(edge)),
                scale.point(side, shown, to.min(edge)),
            );
            // Beside the line, inside the part or at least clear of the dimensions.
            let reach = edge.to_mm() * scale.factor + CLEAR - radius - 1.0;
            let middle = (f64::midpoint(ends.0.y, ends.1.y) - scale.axis).abs();
            let out = middle.min(reach).max(0.0);
            let y = match side {
                Side::View => scale.axis - out,
                Side::Section => scale.axis + out,
            };
            let aside = radius + 3.0;
            let end = scale.x(received.shank_length);
            let free = |x: &f64| {
                let apart = |other: &Point| (other.x - x).hypot(other.y - y) > 2.0 * radius;
                radius < *x && x + radius <= end && taken.iter().all(apart)
            };
            // Beyond its line, before it, or past a circle that stands there.
            let places = [aside, -aside, 3.0 * aside, -3.0 * aside].map(|by| ends.0.x + by);
            let x = places.into_iter().find(free).unwrap_or(ends.0.x - aside);
            taken.push(Point::new(x, y));
            Mark {
                what,
                number,
                z,
                from,
                to,
                line: ends,
                at: Point::new(x, y),
            }
        })
        .collect()
}
