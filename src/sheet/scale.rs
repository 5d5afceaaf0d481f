//! From the part to the canvas: one scale in both directions, the axis horizontal, the head at the left.
//!
//! A long thin part has stretches taken out, each drawn as a narrow gap; the true lengths stand at the dimensions.

use super::body::OVERHANG;
use super::breaks::{Break, GAP};
use super::geometry::Point;
use crate::part::{self, Pick, Profile};
use crate::quantity::Length;

/// Which side of the axis: the outside view stands above it, the section below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    /// The outside view.
    View,
    /// The section.
    Section,
}

/// Where the part stands on the canvas.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Scale {
    /// Pixels a millimetre.
    pub(crate) factor: f64,
    /// Where the part begins, in millimetres from the shoulder.
    pub(crate) start: f64,
    /// x of that place.
    pub(crate) left: f64,
    /// What is taken out, in order.
    pub(crate) breaks: Vec<Break>,
    /// y of the axis.
    pub(crate) axis: f64,
    /// From the axis to the first row of dimensions, above and below, in pixels.
    pub(crate) above: f64,
    pub(crate) below: f64,
}

/// From the part, its cut line included, to the first row of dimensions, in pixels.
pub(crate) const CLEAR: f64 = OVERHANG + 4.0;

impl Scale {
    /// Where the rows of dimensions above the part begin.
    pub(crate) fn top(&self) -> f64 {
        self.axis - self.above
    }

    /// Where the rows of dimensions below the part begin.
    pub(crate) fn bottom(&self) -> f64 {
        self.axis + self.below
    }

    /// x of a place: never falling, and rising all through the part.
    pub(crate) fn x(&self, z: Length) -> f64 {
        let z = z.to_mm();
        let taken_out = |gap: &Break| {
            let share = ((z - gap.from) / (gap.to - gap.from)).clamp(0.0, 1.0);
            share * ((gap.to - gap.from) * self.factor - GAP)
        };
        self.left + (z - self.start) * self.factor - self.breaks.iter().map(taken_out).sum::<f64>()
    }

    /// The same place, or the nearest one towards the shoulder that is not taken out.
    pub(crate) fn seen(&self, z: Length) -> Length {
        /// So far beside the break line an arrow head is clear of it, in pixels.
        const BESIDE: f64 = 6.0;
        let hidden = |gap: &&Break| {
            let beside = BESIDE / self.factor;
            gap.from - beside < z.to_mm() && z.to_mm() < gap.to + beside
        };
        let gap = self.breaks.iter().find(hidden);
        gap.map_or(z, |gap| Length::mm(gap.from - BESIDE / self.factor))
    }

    pub(crate) fn y(&self, side: Side, radius: Length) -> f64 {
        let reach = radius.to_mm() * self.factor;
        match side {
            Side::View => self.axis - reach,
            Side::Section => self.axis + reach,
        }
    }

    pub(crate) fn point(&self, side: Side, z: Length, radius: Length) -> Point {
        Point::new(self.x(z), self.y(side, radius))
    }

    /// Points joined by straight lines of the part; on the canvas they bend where a stretch is taken out.
    pub(crate) fn path(&self, side: Side, points: &[part::Point]) -> Vec<Point> {
        let mut path = Vec::with_capacity(points.len());
        let mut last: Option<part::Point> = None;
        for at in points {
            if let Some(from) = last {
                let (low, high) = (from.z.min(at.z).to_mm(), from.z.max(at.z).to_mm());
                let edges = self.breaks.iter().flat_map(|gap| [gap.from, gap.to]);
                let mut bends: Vec<f64> = edges.filter(|z| low < *z && *z < high).collect();
                if at.z < from.z {
                    bends.reverse();
                }
                path.extend(bends.into_iter().map(|z| {
                    let share = (Length::mm(z) - from.z) / (at.z - from.z);
                    let radius = from.radius + (at.radius - from.radius) * share;
                    self.point(side, Length::mm(z), radius)
                }));
            }
            path.push(self.point(side, at.z, at.radius));
            last = Some(*at);
        }
        path
    }

    /// An outline on one side; where nothing stands between its ends it runs along the axis.
    pub(crate) fn line(&self, side: Side, profile: &Profile) -> Vec<Point> {
        profile
            .runs()
            .iter()
            .flat_map(|run| self.run(side, run))
            .collect()
    }

    /// One stretch of an outline on one side, from the axis and back to it.
    pub(crate) fn run(&self, side: Side, run: &[part::Point]) -> Vec<Point> {
        let on_axis = |at: Option<&part::Point>| at.map(|at| self.point(side, at.z, Length::ZERO));
        on_axis(run.first())
            .into_iter()
            .chain(self.path(side, run))
            .chain(on_axis(run.last()))
            .collect()
    }

    /// The closed outline of what lies between two outlines, over the whole of the outer one.
    ///
    /// `inner` may reach beyond the outer one; it is cut back to it.
    pub(crate) fn ring(&self, side: Side, outer: &Profile, inner: &Profile) -> Vec<Point> {
        let (from, to) = (outer.start(), outer.end());
        let inner = inner.between(from, to).merge(outer, Pick::Smaller);
        let mut ring = vec![self.point(side, from, Length::ZERO)];
        ring.extend(self.line(side, outer));
        ring.push(self.point(side, to, Length::ZERO));
        ring.extend(self.line(side, &inner).into_iter().rev());
        ring
    }
}
