//! Points, lines and areas on the canvas: x to the right, y downward, in pixels.
//!
//! Pixels are no quantity of the trade, so they are plain numbers here and nowhere else in the core.

use crate::quantity::digits::push_hundredths;

/// A point of the canvas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Downward.
    pub y: f64,
}

impl Point {
    /// A point by its two coordinates.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }
}

/// An upright rectangle of the canvas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Area {
    /// Its left side.
    pub x: f64,
    /// Its upper side.
    pub y: f64,
    /// To the right.
    pub width: f64,
    /// Downward.
    pub height: f64,
}

impl Area {
    /// Whether two areas have more than a border in common.
    pub fn overlaps(&self, other: &Self) -> bool {
        /// Rounding in a canvas of a few thousand pixels stays far below this.
        const TOUCHING: f64 = 1e-6;
        let apart = |a: f64, a_size: f64, b: f64| a + a_size <= b + TOUCHING;
        !(apart(self.x, self.width, other.x)
            || apart(other.x, other.width, self.x)
            || apart(self.y, self.height, other.y)
            || apart(other.y, other.height, self.y))
    }
}

/// What a line or an area stands for: the line types of ISO 128 and the fills.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Metal that goes: a tint.
    RemovedArea,
    /// What the cut turns into dust: a stronger tint.
    KerfArea,
    /// No metal where a feature or a hole beside the axis is: paper, over tint and hatching.
    OpenArea,
    /// Metal that goes, where the section cuts it.
    RemovedHatch,
    /// Metal that stays, where the section cuts it.
    SectionHatch,
    /// The part as received.
    ThinOutline,
    /// The bottom of a thread: the root of an outside one, the major diameter of an inside one.
    ThreadThin,
    /// The crossed diagonals that mark a flat face.
    FlatMark,
    /// The finished part.
    ThickOutline,
    /// The mark of the cut-off.
    CutLine,
    /// The surface that a roughing pass leaves.
    RoughLayer,
    /// The surface that a last cut leaves.
    LastLayer,
    /// The surface that the picked pass leaves.
    PickedLayer,
    /// The axis of the part, of a hole, of a cross hole.
    Axis,
    /// Where a stretch is taken out.
    BreakLine,
}

impl Role {
    /// Whether it is a filled area without a line round it.
    pub const fn is_area(self) -> bool {
        matches!(self, Self::RemovedArea | Self::KerfArea | Self::OpenArea)
    }
}

/// Where a shape runs.
#[derive(Clone, Debug, PartialEq)]
pub enum Geometry {
    /// From point to point.
    Polyline {
        /// In order.
        points: Vec<Point>,
        /// Whether the last point joins the first.
        closed: bool,
    },
    /// Single lines.
    Segments(Vec<(Point, Point)>),
}

/// One shape of the drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Shape {
    /// What it stands for.
    pub role: Role,
    /// Where it runs.
    pub geometry: Geometry,
}

impl Geometry {
    /// The text of an SVG path: absolute moves and lines, to a hundredth of a pixel.
    pub fn path(&self) -> String {
        let mut path = String::new();
        match self {
            Self::Polyline { points, closed } => {
                for (index, point) in points.iter().enumerate() {
                    push(&mut path, if index == 0 { 'M' } else { 'L' }, *point);
                }
                if *closed {
                    path.push('Z');
                }
            }
            Self::Segments(segments) => {
                for (from, to) in segments {
                    push(&mut path, 'M', *from);
                    push(&mut path, 'L', *to);
                }
            }
        }
        path
    }

    /// Every point of it.
    pub fn points(&self) -> Vec<Point> {
        match self {
            Self::Polyline { points, .. } => points.clone(),
            Self::Segments(segments) => segments.iter().flat_map(|(a, b)| [*a, *b]).collect(),
        }
    }
}

fn push(path: &mut String, letter: char, point: Point) {
    path.push(letter);
    push_hundredths(path, point.x);
    path.push(' ');
    push_hundredths(path, point.y);
}

/// A line without the stretches that lie inside areas, so that no line runs through a text.
pub(crate) fn interrupted(from: Point, to: Point, areas: &[Area]) -> Vec<(Point, Point)> {
    let mut pieces = vec![(0.0_f64, 1.0_f64)];
    for area in areas {
        let Some((enter, leave)) = inside(from, to, area) else {
            continue;
        };
        pieces = pieces
            .into_iter()
            .flat_map(|(start, end)| [(start, end.min(enter)), (start.max(leave), end)])
            .filter(|(start, end)| start < end)
            .collect();
    }
    let at = |share: f64| {
        // The end itself, not a hair beside it by rounding.
        if share >= 1.0 {
            return to;
        }
        Point::new(
            from.x + (to.x - from.x) * share,
            from.y + (to.y - from.y) * share,
        )
    };
    pieces
        .into_iter()
        .map(|(start, end)| (at(start), at(end)))
        .collect()
}

/// From which to which share of a line it lies inside an area.
fn inside(from: Point, to: Point, area: &Area) -> Option<(f64, f64)> {
    let (mut enter, mut leave) = (0.0_f64, 1.0_f64);
    let slabs = [
        (from.x, to.x - from.x, area.x, area.x + area.width),
        (from.y, to.y - from.y, area.y, area.y + area.height),
    ];
    for (start, run, low, high) in slabs {
        if run == 0.0 {
            if start <= low || high <= start {
                return None;
            }
            continue;
        }
        let (a, b) = ((low - start) / run, (high - start) / run);
        enter = enter.max(a.min(b));
        leave = leave.min(a.max(b));
    }
    (enter < leave).then_some((enter, leave))
}

/// An arrow head with its point at `tip`, coming along from `tail`: closed, 30° wide as ISO 129-1 draws it.
pub(crate) fn arrow(tip: Point, tail: Point, length: f64) -> Vec<Point> {
    /// Half the width over the length: tan 15°.
    const HALF_WIDTH: f64 = 0.268;
    let (run, rise) = (tail.x - tip.x, tail.y - tip.y);
    let reach = run.hypot(rise);
    if reach <= 0.0 {
        return Vec::new();
    }
    let (along_x, along_y) = (run / reach * length, rise / reach * length);
    let back = Point::new(tip.x + along_x, tip.y + along_y);
    let (side_x, side_y) = (-along_y * HALF_WIDTH, along_x * HALF_WIDTH);
    vec![
        tip,
        Point::new(back.x + side_x, back.y + side_y),
        Point::new(back.x - side_x, back.y - side_y),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_stops_before_a_text_and_goes_on_behind_it() {
        let text = Area {
            x: -5.0,
            y: 10.0,
            width: 10.0,
            height: 5.0,
        };
        let pieces = interrupted(Point::new(0.0, 0.0), Point::new(0.0, 20.0), &[text]);
        let ends: Vec<(f64, f64)> = pieces.iter().map(|(a, b)| (a.y, b.y)).collect();
        assert_eq!(ends, [(0.0, 10.0), (15.0, 20.0)]);
        let beside = interrupted(Point::new(6.0, 0.0), Point::new(6.0, 20.0), &[text]);
        assert_eq!(beside.len(), 1);
    }

    #[test]
    fn a_path_is_moves_and_lines() {
        let points = vec![Point::new(0.0, 1.0), Point::new(2.345_6, 1.0)];
        let closed = true;
        assert_eq!(Geometry::Polyline { points, closed }.path(), "M0 1L2.35 1Z");
    }

    #[test]
    fn areas_that_touch_do_not_overlap() {
        let left = Area {
            x: 0.0,
            y: 0.0,
            width: 10.0,
            height: 10.0,
        };
        assert!(!left.overlaps(&Area { x: 10.0, ..left }));
        assert!(left.overlaps(&Area { x: 9.0, ..left }));
    }
}
