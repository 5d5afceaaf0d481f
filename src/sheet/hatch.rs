//! Hatching: 45° lines clipped to an area, so that no pattern fill is needed to draw or to export them.

use super::geometry::Point;
use crate::order;

/// Which way hatching leans; adjacent pieces of metal lean opposite ways (ISO 128-3).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lean {
    /// Rising to the right.
    Right,
    /// Rising to the left.
    Left,
}

/// Most lines of one hatching; where there would be more, they stand further apart.
pub(crate) const MOST_LINES: usize = 400;

/// Shorter lines are specks, and are left out.
const LEAST_LENGTH: f64 = 0.5;

/// The lines of a hatching inside closed outlines, `pitch` apart at least.
///
/// What lies inside an odd number of outlines is hatched. Lines of every hatching with one pitch and lean lie
/// on one grid.
pub(crate) fn hatch(outlines: &[Vec<Point>], pitch: f64, lean: Lean) -> Vec<(Point, Point)> {
    let mut pitch = pitch.max(1.0);
    loop {
        let lines = lines(outlines, pitch, lean);
        if lines.len() <= MOST_LINES {
            return lines;
        }
        pitch *= 1.5;
    }
}

fn lines(outlines: &[Vec<Point>], pitch: f64, lean: Lean) -> Vec<(Point, Point)> {
    let slant = match lean {
        Lean::Right => 1.0,
        Lean::Left => -1.0,
    };
    // A line is where y + slant · x keeps one value; these lie pitch · √2 apart.
    let value = |point: &Point| point.y + slant * point.x;
    let step = pitch * core::f64::consts::SQRT_2;
    let (low, high) = outlines
        .iter()
        .flatten()
        .map(value)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
            (low.min(at), high.max(at))
        });
    let mut found = Vec::new();
    if !low.is_finite() || !high.is_finite() {
        return found;
    }
    let mut level = (low / step).ceil() * step;
    while level <= high && found.len() <= MOST_LINES {
        let crossings = crossings(outlines, level, value);
        for pair in crossings.chunks_exact(2) {
            if let [from, to] = pair
                && (to - from) * core::f64::consts::SQRT_2 >= LEAST_LENGTH
            {
                let at = |x: f64| Point::new(x, level - slant * x);
                found.push((at(*from), at(*to)));
            }
        }
        level += step;
    }
    found
}

/// Where the line of a level crosses the outlines: x in order.
fn crossings(outlines: &[Vec<Point>], level: f64, value: impl Fn(&Point) -> f64) -> Vec<f64> {
    let mut crossings: Vec<f64> = outlines
        .iter()
        .flat_map(|outline| {
            let next = outline.iter().cycle().skip(1);
            outline.iter().zip(next)
        })
        .filter_map(|(a, b)| {
            let (from, to) = (value(a) - level, value(b) - level);
            // A corner on the line belongs to one of its two sides only, so crossings always pair up.
            ((from < 0.0) != (to < 0.0)).then(|| a.x + (b.x - a.x) * (from / (from - to)))
        })
        .collect();
    order::numbers(&mut crossings);
    crossings
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ring(points: &[(f64, f64)]) -> Vec<Point> {
        points.iter().map(|&(x, y)| Point::new(x, y)).collect()
    }

    /// Area by the shoelace formula.
    fn area(outline: &[Point]) -> f64 {
        let next = outline.iter().cycle().skip(1);
        let sum: f64 = outline
            .iter()
            .zip(next)
            .map(|(a, b)| a.x * b.y - b.x * a.y)
            .sum();
        sum.abs() / 2.0
    }

    fn covered(lines: &[(Point, Point)], pitch: f64) -> f64 {
        let length: f64 = lines
            .iter()
            .map(|(a, b)| (b.x - a.x).hypot(b.y - a.y))
            .sum();
        length * pitch
    }

    #[test]
    fn lines_times_pitch_is_the_area() {
        // A step with a hole: 60 × 40 less a 30 × 20 corner, less a 10 × 10 window.
        let step = ring(&[
            (0.0, 0.0),
            (30.0, 0.0),
            (30.0, 20.0),
            (60.0, 20.0),
            (60.0, 40.0),
            (0.0, 40.0),
        ]);
        let window = ring(&[(10.0, 15.0), (20.0, 15.0), (20.0, 25.0), (10.0, 25.0)]);
        let wanted = area(&step) - area(&window);
        let both = [step, window];
        for lean in [Lean::Left, Lean::Right] {
            let lines = lines(&both, 0.4, lean);
            assert!((covered(&lines, 0.4) / wanted - 1.0).abs() < 0.01);
            for (from, to) in lines {
                let middle = Point::new(f64::midpoint(from.x, to.x), f64::midpoint(from.y, to.y));
                let in_window =
                    10.0 < middle.x && middle.x < 20.0 && 15.0 < middle.y && middle.y < 25.0;
                let in_corner = 30.0 < middle.x && middle.y < 20.0;
                assert!(!in_window && !in_corner, "{middle:?}");
            }
        }
    }

    #[test]
    fn there_are_never_too_many() {
        let wide = ring(&[(0.0, 0.0), (90_000.0, 0.0), (90_000.0, 9.0), (0.0, 9.0)]);
        let found = hatch(&[wide], 2.0, Lean::Right);
        assert!(100 < found.len() && found.len() <= MOST_LINES);
        assert!(hatch(&[], 5.0, Lean::Left).is_empty());
    }

    proptest! {
        /// A convex outline holds every line: both ends lie on the inner side of each of its sides.
        #[test]
        fn lines_stay_inside(
            corners in proptest::collection::vec((0.0..300.0_f64, 0.0..200.0_f64), 3..=3),
            pitch in 2.0..12.0_f64,
        ) {
            let triangle = ring(&corners);
            let found = hatch(core::slice::from_ref(&triangle), pitch, Lean::Left);
            let turn = |a: Point, b: Point, c: Point| {
                (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
            };
            let whole = turn(triangle[0], triangle[1], triangle[2]).signum();
            for (from, to) in found {
                for end in [from, to] {
                    for side in 0..3 {
                        let (a, b) = (triangle[side], triangle[(side + 1) % 3]);
                        prop_assert!(turn(a, b, end) * whole > -1e-6);
                    }
                }
            }
        }
    }
}
