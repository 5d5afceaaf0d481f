//! Break lines: a part that is long and thin has featureless stretches taken out, so that the rest is drawn larger.

use super::body::Body;
use super::geometry::{Area, Geometry, Point, Role, Shape, interrupted};
use super::scale::Scale;
use crate::order;
use crate::quantity::Length;

/// A stretch that is taken out, in millimetres from the shoulder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Break {
    pub(crate) from: f64,
    pub(crate) to: f64,
}

/// Between the two break lines, in pixels.
pub(crate) const GAP: f64 = 8.0;

/// What is left of a stretch on either side of its break, over the room that the part has, within pixels that show an
/// arrow head and need no more.
const STUB: (f64, f64, f64) = (0.045, 12.0, 24.0);

/// A stretch is broken when it would be so many times longer without its break.
const LEAST_SAVED: f64 = 3.0;

/// A part as long as this many mean diameters of its shank is too thin to see what is in it: 14 pixels on a phone.
const SLENDER: f64 = 22.0;

/// A shank drawn as thick as this share of the room needs no more breaks: 42 pixels on a phone. Both limits go with
/// the room, so that a larger canvas never draws a part smaller.
const THICK_ENOUGH: f64 = 0.14;

/// What decides the scale of a part.
#[derive(Clone, Debug)]
pub(crate) struct Extent {
    /// Where something of the part begins, ends or bends, in millimetres from the shoulder, in order; two at least.
    pub(crate) places: Vec<f64>,
    /// Stretches that must stay whole.
    pub(crate) whole: Vec<(f64, f64)>,
    /// The mean diameter of the shank.
    pub(crate) mean: f64,
    /// The largest diameter.
    pub(crate) across: f64,
}

impl Extent {
    /// The largest scale, in pixels a millimetre, that `room` pixels along and `high` across have for it, and what is
    /// taken out for it.
    ///
    /// `round` takes a scale down to one that may be used.
    pub(crate) fn fit(
        &self,
        room: f64,
        high: f64,
        round: impl Fn(f64) -> f64,
    ) -> (f64, Vec<Break>) {
        /// Scales that are tried, from the largest down.
        const STEPS: i32 = 64;
        let widest = high / self.across;
        let plain = (room / self.long()).min(widest);
        let most = widest.min(THICK_ENOUGH * room / self.mean);
        if SLENDER * self.mean < self.long() && plain < most {
            // No bisection: a larger scale can need less room, as one more stretch becomes long enough to break.
            let step = (plain / most).powf(1.0 / f64::from(STEPS));
            for tried in 0..STEPS {
                let factor = round(most * step.powi(tried));
                let breaks = self.breaks(factor, room);
                if self.drawn(factor, &breaks) <= room {
                    return (factor, breaks);
                }
            }
        }
        (round(plain), Vec::new())
    }

    /// How long the part is drawn, in pixels.
    pub(crate) fn drawn(&self, factor: f64, breaks: &[Break]) -> f64 {
        let taken_out = |gap: &Break| (gap.to - gap.from) * factor - GAP;
        self.long() * factor - breaks.iter().map(taken_out).sum::<f64>()
    }

    fn long(&self) -> f64 {
        let (first, last) = (self.places.first(), self.places.last());
        first.zip(last).map_or(0.0, |(first, last)| last - first)
    }

    /// As many breaks as are needed and can be had, in order, the longest stretches broken first.
    fn breaks(&self, factor: f64, room: f64) -> Vec<Break> {
        let stub = (STUB.0 * room).clamp(STUB.1, STUB.2);
        // A shorter one is worth more whole than what its break saves.
        let least = LEAST_SAVED * (2.0 * stub + GAP);
        let next = self.places.iter().skip(1);
        let stretches = self.places.iter().copied().zip(next.copied());
        let kept = |(from, to): &(f64, f64)| {
            let whole = |whole: &(f64, f64)| whole.0 < *to && *from < whole.1;
            least < (to - from) * factor && !self.whole.iter().any(whole)
        };
        let mut found: Vec<(f64, f64)> = stretches.filter(kept).collect();
        order::by_number(&mut found, |it| it.0 - it.1);
        let (mut breaks, stub) = (Vec::new(), stub / factor);
        for (from, to) in found {
            if self.drawn(factor, &breaks) <= room {
                break;
            }
            breaks.push(Break {
                from: from + stub,
                to: to - stub,
            });
        }
        order::by_number(&mut breaks, |it| it.from);
        breaks
    }
}

/// The shapes without what is taken out, and the break lines.
pub(crate) fn with_breaks(shapes: Vec<Shape>, scale: &Scale, body: &Body) -> Vec<Shape> {
    if scale.breaks.is_empty() {
        return shapes;
    }
    let gaps: Vec<(f64, f64)> = scale
        .breaks
        .iter()
        .map(|gap| (scale.x(Length::mm(gap.from)), scale.x(Length::mm(gap.to))))
        .collect();
    let mut left: Vec<Shape> = shapes
        .into_iter()
        .flat_map(|shape| interrupt(shape, &gaps))
        .collect();
    for (gap, edges) in scale.breaks.iter().zip(&gaps) {
        for (z, x) in [(gap.from, edges.0), (gap.to, edges.1)] {
            let points = break_line(x, scale.axis, body.reach_at(Length::mm(z), scale));
            left.push(Shape {
                role: Role::BreakLine,
                geometry: Geometry::Polyline {
                    points,
                    closed: false,
                },
            });
        }
    }
    left
}

/// A narrow line with a zigzag at the axis, a little longer than the part is thick.
fn break_line(x: f64, axis: f64, reach: f64) -> Vec<Point> {
    const PAST: f64 = 5.0;
    const ZIGZAG: [(f64, f64); 4] = [(0.0, -6.0), (-4.0, -2.0), (4.0, 2.0), (0.0, 6.0)];
    let end = (reach + PAST).max(6.0);
    let mut points = vec![Point::new(x, axis - end)];
    points.extend(ZIGZAG.map(|(aside, down)| Point::new(x + aside, axis + down)));
    points.push(Point::new(x, axis + end));
    points
}

/// What of a shape lies outside the gaps, each from one x to another.
fn interrupt(shape: Shape, gaps: &[(f64, f64)]) -> Vec<Shape> {
    /// Higher than any canvas.
    const TALL: f64 = 1e6;
    let role = shape.role;
    let strips: Vec<Area> = gaps
        .iter()
        .map(|(from, to)| Area {
            x: *from,
            y: -TALL,
            width: to - from,
            height: 2.0 * TALL,
        })
        .collect();
    let geometries = match shape.geometry {
        Geometry::Segments(lines) => vec![Geometry::Segments(
            lines
                .into_iter()
                .flat_map(|(from, to)| interrupted(from, to, &strips))
                .collect(),
        )],
        Geometry::Polyline { points, closed } if role.is_area() && closed => windows(gaps)
            .map(|window| clipped(&points, window))
            .filter(|points| !points.is_empty())
            .map(|points| Geometry::Polyline { points, closed })
            .collect(),
        Geometry::Polyline { mut points, closed } => {
            if closed {
                points.extend(points.first().copied());
            }
            pieces(&points, &strips)
                .into_iter()
                .map(|points| Geometry::Polyline {
                    points,
                    closed: false,
                })
                .collect()
        }
    };
    geometries
        .into_iter()
        .map(|geometry| Shape { role, geometry })
        .collect()
}

/// The pieces of a line outside the strips.
fn pieces(points: &[Point], strips: &[Area]) -> Vec<Vec<Point>> {
    let mut pieces: Vec<Vec<Point>> = Vec::new();
    for pair in points.windows(2) {
        let [from, to] = pair else { continue };
        for (start, end) in interrupted(*from, *to, strips) {
            match pieces.last_mut() {
                Some(piece) if piece.last() == Some(&start) => piece.push(end),
                _ => pieces.push(vec![start, end]),
            }
        }
    }
    pieces
}

/// What the gaps leave, from one x to another.
fn windows(gaps: &[(f64, f64)]) -> impl Iterator<Item = (f64, f64)> {
    let starts = core::iter::once(f64::NEG_INFINITY).chain(gaps.iter().map(|gap| gap.1));
    let ends = gaps
        .iter()
        .map(|gap| gap.0)
        .chain(core::iter::once(f64::INFINITY));
    starts.zip(ends)
}

/// A closed outline cut back to a window.
fn clipped(points: &[Point], (low, high): (f64, f64)) -> Vec<Point> {
    let right_of_low = half(points, |point| point.x - low);
    half(&right_of_low, |point| high - point.x)
}

/// A closed outline cut back to where `inside` is not negative.
fn half(points: &[Point], inside: impl Fn(&Point) -> f64) -> Vec<Point> {
    let next = points.iter().cycle().skip(1);
    let mut left = Vec::new();
    for (from, to) in points.iter().zip(next) {
        let (a, b) = (inside(from), inside(to));
        if 0.0 <= a {
            left.push(*from);
        }
        if (0.0 <= a) != (0.0 <= b) && a.is_finite() && b.is_finite() {
            let share = a / (a - b);
            left.push(Point::new(
                from.x + (to.x - from.x) * share,
                from.y + (to.y - from.y) * share,
            ));
        }
    }
    left
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// A shank of 20 mm and 3000 mm with a head, and a step 50 mm off the shoulder.
    fn long() -> Extent {
        Extent {
            places: vec![-30.0, 0.0, 50.0, 3000.0],
            whole: Vec::new(),
            mean: 20.0,
            across: 40.0,
        }
    }

    fn scale(extent: &Extent, room: f64) -> Scale {
        let (factor, breaks) = extent.fit(room, room, |factor| factor);
        Scale {
            factor,
            start: extent.places[0],
            left: 20.0,
            breaks,
            axis: 100.0,
            above: 0.0,
            below: 0.0,
        }
    }

    #[test]
    fn a_long_thin_part_is_shortened_where_nothing_is() {
        let scale = scale(&long(), 300.0);
        assert_eq!(scale.breaks.len(), 1);
        assert!(50.0 < scale.breaks[0].from && scale.breaks[0].to < 3000.0);
        // Unbroken it would be 300/3030 = 0.1 pixels a millimetre: a shank of 2 pixels.
        assert!(scale.factor * 20.0 >= 14.0);
        assert!(scale.x(Length::mm(3000.0)) <= 320.0 + 1e-6);
        // Next to the break the scale is the true one.
        let (a, b) = (scale.x(Length::mm(10.0)), scale.x(Length::mm(40.0)));
        assert!((b - a - 30.0 * scale.factor).abs() < 1e-9);
    }

    #[test]
    fn a_part_that_can_be_seen_is_left_whole() {
        let stout = Extent {
            places: vec![-30.0, 0.0, 80.0],
            ..long()
        };
        assert!(scale(&stout, 300.0).breaks.is_empty());
        let keyed = Extent {
            whole: vec![(100.0, 2000.0), (10.0, 20.0)],
            ..long()
        };
        assert!(scale(&keyed, 300.0).breaks.is_empty());
    }

    #[test]
    fn an_area_is_cut_at_the_gap() {
        let points = [(0.0, 0.0), (100.0, 0.0), (100.0, 10.0), (0.0, 10.0)]
            .map(|(x, y)| Point::new(x, y))
            .to_vec();
        let shape = Shape {
            role: Role::RemovedArea,
            geometry: Geometry::Polyline {
                points,
                closed: true,
            },
        };
        let left = interrupt(shape, &[(40.0, 48.0)]);
        let reach = |shape: &Shape| {
            let xs: Vec<f64> = shape.geometry.points().iter().map(|it| it.x).collect();
            (
                xs.iter().copied().fold(f64::MAX, f64::min),
                xs.iter().copied().fold(f64::MIN, f64::max),
            )
        };
        let reaches: Vec<_> = left.iter().map(reach).collect();
        assert_eq!(reaches, [(0.0, 40.0), (48.0, 100.0)]);
    }

    proptest! {
        /// However the part is divided, x rises with z, and nothing needs more than the room.
        #[test]
        fn the_mapping_rises(
            steps in proptest::collection::vec(0.01..1500.0_f64, 1..12),
            whole in proptest::collection::vec((-100.0..3000.0_f64, 0.0..500.0_f64), 0..4),
            mean in 0.5..200.0_f64,
            head in 1.0..3.0_f64,
            room in 200.0..2000.0_f64,
        ) {
            let mut places = vec![-20.0];
            for step in steps {
                places.push(places.last().unwrap() + step);
            }
            let end = *places.last().unwrap();
            let whole = whole.into_iter().map(|(from, long)| (from, from + long)).collect();
            let extent = Extent { places, whole, mean, across: mean * head };
            let scale = scale(&extent, room);
            let most = 400_u32;
            let mut last = f64::NEG_INFINITY;
            for step in 0..=most {
                let z = -20.0 + (end + 20.0) * f64::from(step) / f64::from(most);
                let x = scale.x(Length::mm(z));
                prop_assert!(last < x, "{last} {x} at {z}");
                prop_assert!(x.is_finite() && x <= 20.0 + room + 1e-6);
                last = x;
            }
            for gap in &scale.breaks {
                prop_assert!((scale.x(Length::mm(gap.to)) - scale.x(Length::mm(gap.from)) - GAP).abs() < 1e-6);
                let hidden = Length::mm(f64::midpoint(gap.from, gap.to));
                prop_assert!(scale.seen(hidden).to_mm() < gap.from);
            }
        }
    }
}
