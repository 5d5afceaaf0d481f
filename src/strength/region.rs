//! Area and moments of a disc cut by straight lines, exact, by the sum over its boundary (Green's theorem).
//!
//! Plain millimetres and radians inside; x and y run from the axis of the bar.

use core::f64::consts::TAU;
use core::ops::{Add, Sub};

/// All points on one side of a straight line: those whose distance along the normal is `limit` at most.
#[derive(Clone, Copy)]
pub(super) struct HalfPlane {
    pub(super) normal: (f64, f64),
    pub(super) limit: f64,
}

impl HalfPlane {
    pub(super) fn new(angle: f64, limit: f64) -> Self {
        let (sin, cos) = angle.sin_cos();
        Self {
            normal: (cos, sin),
            limit,
        }
    }

    fn seen_from(self, centre: (f64, f64)) -> Self {
        Self {
            limit: self.limit - dot(self.normal, centre),
            ..self
        }
    }
}

/// Area, first and second moments about the axis of the bar.
#[derive(Clone, Copy, Default)]
pub(super) struct Moments {
    pub(super) area: f64,
    pub(super) first: (f64, f64),
    /// The integrals of x², y² and xy.
    pub(super) second: (f64, f64, f64),
}

impl Moments {
    /// The triangle from the origin over one edge; negative where the edge runs clockwise.
    fn add_edge(&mut self, (px, py): (f64, f64), (qx, qy): (f64, f64)) {
        let double = px * qy - qx * py;
        self.area += double / 2.0;
        self.first.0 += double / 6.0 * (px + qx);
        self.first.1 += double / 6.0 * (py + qy);
        self.second.0 += double / 12.0 * (px * px + px * qx + qx * qx);
        self.second.1 += double / 12.0 * (py * py + py * qy + qy * qy);
        self.second.2 += double / 24.0 * (px * qy + 2.0 * (px * py + qx * qy) + qx * py);
    }

    /// The sector from the origin over one arc.
    fn add_arc(&mut self, radius: f64, from: f64, to: f64) {
        let square = radius * radius;
        let angle = to - from;
        let double = ((2.0 * to).sin() - (2.0 * from).sin()) / 2.0;
        self.area += square / 2.0 * angle;
        self.first.0 += square * radius / 3.0 * (to.sin() - from.sin());
        self.first.1 += square * radius / 3.0 * (from.cos() - to.cos());
        self.second.0 += square * square / 8.0 * (angle + double);
        self.second.1 += square * square / 8.0 * (angle - double);
        self.second.2 += square * square / 8.0 * (to.sin().powi(2) - from.sin().powi(2));
    }

    /// The same region moved by `by` (parallel axes).
    fn moved(self, by: (f64, f64)) -> Self {
        let (x, y) = by;
        let (sx, sy) = self.first;
        let (xx, yy, xy) = self.second;
        Self {
            area: self.area,
            first: (sx + self.area * x, sy + self.area * y),
            second: (
                xx + 2.0 * x * sx + self.area * x * x,
                yy + 2.0 * y * sy + self.area * y * y,
                xy + x * sy + y * sx + self.area * x * y,
            ),
        }
    }

    /// The second moments about the centroid; nothing where no area is left.
    pub(super) fn central(self) -> (f64, f64, f64) {
        if self.area <= 0.0 {
            return (0.0, 0.0, 0.0);
        }
        let (sx, sy) = self.first;
        let (xx, yy, xy) = self.second;
        (
            xx - sx * sx / self.area,
            yy - sy * sy / self.area,
            xy - sx * sy / self.area,
        )
    }
}

impl Add for Moments {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            area: self.area + other.area,
            first: (self.first.0 + other.first.0, self.first.1 + other.first.1),
            second: (
                self.second.0 + other.second.0,
                self.second.1 + other.second.1,
                self.second.2 + other.second.2,
            ),
        }
    }
}

impl Sub for Moments {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self {
            area: self.area - other.area,
            first: (self.first.0 - other.first.0, self.first.1 - other.first.1),
            second: (
                self.second.0 - other.second.0,
                self.second.1 - other.second.1,
                self.second.2 - other.second.2,
            ),
        }
    }
}

fn dot(a: (f64, f64), b: (f64, f64)) -> f64 {
    a.0 * b.0 + a.1 * b.1
}

/// The moments, about the axis of the bar, of what lies both in the disc and in every half-plane.
pub(super) fn disc_within(radius: f64, centre: (f64, f64), planes: &[HalfPlane]) -> Moments {
    let planes: Vec<HalfPlane> = planes
        .iter()
        .map(|plane| plane.seen_from(centre))
        .filter(|plane| plane.limit < radius)
        .collect();
    if planes.iter().any(|plane| plane.limit <= -radius) {
        return Moments::default();
    }
    let mut sum = Moments::default();
    for index in 0..planes.len() {
        add_chord(&mut sum, radius, &planes, index);
    }
    add_arcs(&mut sum, radius, &planes);
    sum.moved(centre)
}

/// Adds the piece of one straight line that bounds the region.
fn add_chord(sum: &mut Moments, radius: f64, planes: &[HalfPlane], index: usize) {
    let Some(line) = planes.get(index) else {
        return;
    };
    // Along the line with the region on the left.
    let along = (-line.normal.1, line.normal.0);
    let half = (radius * radius - line.limit * line.limit).max(0.0).sqrt();
    let (mut from, mut to) = (-half, half);
    for (place, other) in planes.iter().enumerate() {
        if place == index {
            continue;
        }
        let slope = dot(other.normal, along);
        let cosine = dot(other.normal, line.normal);
        let room = other.limit - line.limit * cosine;
        if slope.abs() < 1e-12 {
            // Of two lines that coincide, the first bounds the region and the second does not.
            let room = other.limit - line.limit * cosine.signum();
            if room < 0.0 || (room <= 0.0 && place < index) {
                return;
            }
        } else if slope > 0.0 {
            to = to.min(room / slope);
        } else {
            from = from.max(room / slope);
        }
    }
    if from < to {
        let at = |t: f64| {
            (
                line.limit * line.normal.0 + t * along.0,
                line.limit * line.normal.1 + t * along.1,
            )
        };
        sum.add_edge(at(from), at(to));
    }
}

/// Adds the pieces of the circle that bound the region.
fn add_arcs(sum: &mut Moments, radius: f64, planes: &[HalfPlane]) {
    let mut breaks: Vec<f64> = planes
        .iter()
        .flat_map(|plane| {
            let middle = plane.normal.1.atan2(plane.normal.0);
            let half = (plane.limit / radius).acos();
            [middle - half, middle + half]
        })
        // Both lie within one turn of nought.
        .map(|angle| if angle < 0.0 { angle + TAU } else { angle })
        .collect();
    crate::order::numbers(&mut breaks);
    let first = breaks.first().copied().unwrap_or(0.0);
    let ends = breaks.iter().skip(1).copied().chain([first + TAU]);
    let starts = breaks
        .iter()
        .copied()
        .chain(breaks.is_empty().then_some(0.0));
    for (from, to) in starts.zip(ends) {
        let (sin, cos) = f64::midpoint(from, to).sin_cos();
        let middle = (radius * cos, radius * sin);
        if planes
            .iter()
            .all(|plane| dot(plane.normal, middle) <= plane.limit)
        {
            sum.add_arc(radius, from, to);
        }
    }
}
