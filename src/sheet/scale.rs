//! From the part to the canvas: one scale in both directions, the axis horizontal, the head at the left.

use super::body::OVERHANG;
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
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Scale {
    /// Pixels a millimetre.
    pub(crate) factor: f64,
    /// x of the shoulder.
    pub(crate) shoulder: f64,
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

    pub(crate) fn x(&self, z: Length) -> f64 {
        self.shoulder + z.to_mm() * self.factor
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
        let points = run.iter().map(|at| self.point(side, at.z, at.radius));
        on_axis(run.first())
            .into_iter()
            .chain(points)
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
