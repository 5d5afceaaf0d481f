//! Where each dimension stands: rows above and below the part, none overlapping another.
//!
//! Rows are as high as a finger needs. Diameters and leaders come first, nearest to the part, then lengths from
//! the shortest to the longest, so that extension lines cross as few dimension lines as can be. A narrow canvas
//! has more rows, never smaller ones.

use super::dimension::{DimensionMark, Kind, Target, Wish};
use super::drawing::Canvas;
use super::geometry::{Area, Point, arrow, interrupted};
use super::scale::{Scale, Side};
use crate::job::Field;
use crate::order;
use crate::quantity::Length;

/// Mean width of a character over the text height, for the proportions of common sans-serif figures.
pub(crate) const CHARACTER: f64 = 0.6;
/// Arrow head over text height.
const ARROW: f64 = 0.6;
/// From text to the lines beside and below it, in pixels.
const GAP: f64 = 4.0;
/// How far extension lines run past the dimension line, in pixels.
const PAST: f64 = 5.0;
/// Where in its row the dimension line lies, from the top.
const LINE_AT: f64 = 0.7;
/// How far a leader goes aside for each pixel upward, the better slant first.
const SLANTS: [f64; 3] = [0.35, 0.12, 0.7];

/// A dimension with its row and its place along the row.
#[derive(Clone, Debug)]
pub(super) struct Placed {
    pub(super) wish: Wish,
    pub(super) row: u32,
    spot: Spot,
}

/// A place along a row.
#[derive(Clone, Copy, Debug)]
pub(super) struct Spot {
    /// Middle of the text.
    text: f64,
    /// What it occupies: text, line and a finger's breadth.
    from: f64,
    to: f64,
}

/// All dimensions of a drawing in their rows.
#[derive(Clone)]
pub(crate) struct Layout {
    pub(super) canvas: Canvas,
    pub(super) placed: Vec<Placed>,
}

/// Where lines square to the axis will stand; several on one and the same place count once.
pub(super) fn uprights(wishes: &[Wish], scale: &Scale) -> Vec<f64> {
    let mut uprights: Vec<f64> = wishes
        .iter()
        .flat_map(|wish| wish.uprights(scale))
        .collect();
    order::numbers(&mut uprights);
    uprights.dedup_by(|a, b| (*a - *b).abs() < 1.0);
    uprights
}

/// Every dimension of one side in a row.
pub(super) fn rows_of(mut wishes: Vec<Wish>, scale: &Scale, canvas: Canvas) -> Layout {
    let mut layout = Layout {
        canvas,
        placed: Vec::with_capacity(wishes.len()),
    };
    let order = |wish: &Wish| match wish.target {
        Target::Diameter { z, .. } | Target::Leader { z, .. } => (0_u8, z.to_mm()),
        Target::Along { from, to } => (1, (to.0 - from.0).to_mm()),
    };
    order::by(&mut wishes, |a, b| {
        let (a, b) = (order(a), order(b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
    });
    let uprights = uprights(&wishes, scale);
    for wish in wishes {
        layout.add(wish, scale, &uprights, u32::MAX);
    }
    layout
}

impl Wish {
    /// Where its lines square to the axis stand.
    fn uprights(&self, scale: &Scale) -> [f64; 2] {
        match self.target {
            Target::Along { from, to } => [scale.x(from.0), scale.x(to.0)],
            Target::Diameter { z, .. } | Target::Leader { z, .. } => [scale.x(z); 2],
        }
    }
}

impl Layout {
    /// Whether a dimension of a field is among them.
    pub(crate) fn shows(&self, field: Field) -> bool {
        self.placed.iter().any(|placed| placed.wish.field == field)
    }

    /// How many rows a side has.
    pub(crate) fn rows(&self, side: Side) -> u32 {
        let rows = self.placed.iter().filter(|placed| placed.wish.side == side);
        rows.map(|placed| placed.row + 1).max().unwrap_or(0)
    }

    /// Puts a dimension where it disturbs least, if one of the first `most` rows has room for it.
    pub(super) fn add(&mut self, wish: Wish, scale: &Scale, uprights: &[f64], most: u32) {
        /// A row further out is worse than a text that interrupts a line, crossing a leader is worse than both.
        const CROSSING: u32 = 3;
        const LEADER: u32 = 12;
        const ROW: u32 = 4;
        let own = wish.uprights(scale);
        let mut best: Option<(u32, u32, Spot)> = None;
        // Every row so far may be taken, so the one after the last is always free.
        for row in 0..(self.rows(wish.side) + 1).min(most) {
            for (order, spot) in (0_u32..).zip(self.spots(&wish, row, scale)) {
                if !self.is_free(wish.side, row, spot) {
                    continue;
                }
                let half = self.text_width(&wish.text) / 2.0 + GAP;
                let crossed = uprights.iter().filter(|x| {
                    let hidden = (*x - spot.text).abs() < half;
                    own.iter().all(|own| (own - *x).abs() >= 1.0) && hidden
                });
                let leaders = self.placed.iter().filter(|placed| {
                    let [x, _] = placed.wish.uprights(scale);
                    let radial = !matches!(placed.wish.target, Target::Along { .. });
                    let over = placed.wish.side == wish.side && placed.row > row;
                    radial && over && spot.from < x && x < spot.to
                });
                let through = self.struck(&wish, row, spot, scale);
                let cost = row * ROW
                    + order / 2
                    + count(crossed) * CROSSING
                    + (count(leaders) + through) * LEADER;
                if best.is_none_or(|(least, ..)| cost < least) {
                    best = Some((cost, row, spot));
                }
            }
        }
        if let Some((_, row, spot)) = best {
            self.placed.push(Placed { wish, row, spot });
        }
    }

    /// How often the line of a leader or a diameter would run through a text, its own included.
    fn struck(&self, wish: &Wish, row: u32, spot: Spot, scale: &Scale) -> u32 {
        let here = Placed {
            wish: wish.clone(),
            row,
            spot,
        };
        let through = |line: &Placed, text: &Placed| {
            let area = self.text_area(text, scale);
            self.stroke(line, scale)
                .is_some_and(|(from, to)| interrupted(from, to, &[area]) != [(from, to)])
        };
        let others = self
            .placed
            .iter()
            .filter(|other| other.wish.side == wish.side);
        others.fold(u32::from(through(&here, &here)), |sum, other| {
            sum + u32::from(through(&here, other)) + u32::from(through(other, &here))
        })
    }

    /// The line from the outline to the text of a diameter or a leader.
    fn stroke(&self, placed: &Placed, scale: &Scale) -> Option<(Point, Point)> {
        let line_y = self.line_y(placed.wish.side, placed.row, scale);
        match placed.wish.target {
            Target::Along { .. } => None,
            Target::Diameter { z, radius } => {
                let tip = scale.point(placed.wish.side, z, radius);
                Some((tip, Point::new(tip.x, line_y)))
            }
            Target::Leader { z, radius } => {
                let tip = scale.point(placed.wish.side, z, radius);
                let half = self.text_width(&placed.wish.text) / 2.0 + GAP;
                let ends = [placed.spot.text - half, placed.spot.text + half];
                // To the end of the text that is nearer.
                let near = if (ends[1] - tip.x).abs() < (ends[0] - tip.x).abs() {
                    ends[1]
                } else {
                    ends[0]
                };
                Some((tip, Point::new(near, line_y)))
            }
        }
    }

    fn text_area(&self, placed: &Placed, scale: &Scale) -> Area {
        let foot = self.line_y(placed.wish.side, placed.row, scale) - GAP;
        let width = self.text_width(&placed.wish.text) + GAP;
        Area {
            x: placed.spot.text - width / 2.0,
            y: foot - self.canvas.text_height,
            width,
            height: self.canvas.text_height * 1.2,
        }
    }

    /// How near to the axis a side's rows can begin, so that none touches the part: rows that stand wholly beside
    /// the head need only be clear of the shank.
    pub(crate) fn clear_of(&self, side: Side, whole: f64, shank: f64, scale: &Scale) -> f64 {
        let pitch = |row: u32| f64::from(row) * self.canvas.target;
        let needed = |row: u32| {
            let mut spots = self
                .placed
                .iter()
                .filter(|it| it.wish.side == side && it.row == row);
            let beside = spots.all(|it| scale.x(Length::ZERO) + GAP < it.spot.from);
            let clear = if beside { shank } else { whole };
            clear - pitch(row)
        };
        let rows = self.rows(side);
        (0..rows).map(needed).fold(whole - pitch(rows), f64::max)
    }

    fn is_free(&self, side: Side, row: u32, spot: Spot) -> bool {
        self.placed
            .iter()
            .filter(|placed| placed.wish.side == side && placed.row == row)
            .all(|placed| spot.to <= placed.spot.from || placed.spot.to <= spot.from)
    }

    fn text_width(&self, text: &str) -> f64 {
        text.chars().map(character_width).sum::<f64>() * self.canvas.text_height
    }

    fn arrow(&self) -> f64 {
        ARROW * self.canvas.text_height
    }

    /// The places that a dimension may take in a row, the best first.
    fn spots(&self, wish: &Wish, row: u32, scale: &Scale) -> Vec<Spot> {
        let width = self.text_width(&wish.text);
        let [from, to] = wish.uprights(scale);
        let mut spots = Vec::new();
        match wish.target {
            Target::Along { .. } => {
                let tail = self.tail(from, to);
                let reach = (from - tail, to + tail);
                if to - from >= width + 2.0 * GAP {
                    spots.push(self.spot(f64::midpoint(from, to), width, reach));
                } else {
                    let aside = tail.max(GAP) + GAP + width / 2.0;
                    spots.push(self.spot(to + aside, width, reach));
                    spots.push(self.spot(from - aside, width, reach));
                }
            }
            Target::Diameter { .. } => {
                let aside = GAP + width / 2.0;
                for text in [from + aside, from - aside, from] {
                    spots.push(self.spot(text, width, (from, from)));
                }
            }
            Target::Leader { radius, .. } => {
                let rise = (scale.y(wish.side, radius) - self.line_y(wish.side, row, scale)).abs();
                let half = width / 2.0;
                for reach in SLANTS.map(|slant| rise * slant + GAP) {
                    // The text goes on from the elbow, or stands back over the place that is met.
                    for aside in [reach + half, -reach - half, reach - half, half - reach] {
                        spots.push(self.spot(from + aside, width, (from + aside, from + aside)));
                    }
                }
            }
        }
        // What stands half outside is pushed in, and only taken when nothing stands whole.
        let whole = |spot: &Spot| {
            GAP <= spot.text - width / 2.0 && spot.text + width / 2.0 <= self.canvas.width - GAP
        };
        if spots.iter().any(whole) {
            spots.retain(whole);
        } else {
            let room = self.canvas.width - width / 2.0 - GAP;
            let text = f64::midpoint(from, to).min(room).max(width / 2.0 + GAP);
            spots = vec![self.spot(text, width, (from, to))];
        }
        spots
    }

    /// How far the line runs on outside, where there is no room for the arrow heads between its ends.
    fn tail(&self, from: f64, to: f64) -> f64 {
        if to - from < 2.5 * self.arrow() {
            2.0 * self.arrow()
        } else {
            0.0
        }
    }

    /// A place with its text at `text`, at least as broad as a finger, and inside the canvas.
    fn spot(&self, text: f64, width: f64, reach: (f64, f64)) -> Spot {
        let half = width / 2.0 + GAP;
        let (mut from, mut to) = ((text - half).min(reach.0), (text + half).max(reach.1));
        let missing = (self.canvas.target - (to - from)).max(0.0) / 2.0;
        (from, to) = (from - missing, to + missing);
        let (low, high) = (from.max(0.0), to.min(self.canvas.width));
        // What one border takes, the other side gets back.
        let target = self.canvas.target.min(self.canvas.width);
        if high - low < target {
            let low = low.min(self.canvas.width - target);
            return Spot {
                text,
                from: low,
                to: low + target,
            };
        }
        Spot {
            text,
            from: low,
            to: high,
        }
    }

    /// The upper side of a row.
    fn row_y(&self, side: Side, row: u32, scale: &Scale) -> f64 {
        let pitch = self.canvas.target;
        match side {
            Side::View => scale.top() - pitch * f64::from(row + 1),
            Side::Section => scale.bottom() + pitch * f64::from(row),
        }
    }

    fn line_y(&self, side: Side, row: u32, scale: &Scale) -> f64 {
        self.row_y(side, row, scale) + self.canvas.target * LINE_AT
    }

    /// Every dimension as it is drawn.
    pub(crate) fn marks(self, scale: &Scale) -> Vec<DimensionMark> {
        let mut marks: Vec<DimensionMark> = self
            .placed
            .iter()
            .map(|placed| self.mark(placed, scale))
            .collect();
        let texts: Vec<Area> = self
            .placed
            .iter()
            .map(|placed| self.text_area(placed, scale))
            .collect();
        for mark in &mut marks {
            mark.lines = core::mem::take(&mut mark.lines)
                .into_iter()
                .flat_map(|(from, to)| interrupted(from, to, &texts))
                .collect();
        }
        marks
    }

    fn mark(&self, placed: &Placed, scale: &Scale) -> DimensionMark {
        let Placed { wish, row, spot } = placed;
        let line_y = self.line_y(wish.side, *row, scale);
        let half = self.text_width(&wish.text) / 2.0;
        let text = (spot.text - half, spot.text + half);
        let (kind, lines, arrows) = match wish.target {
            Target::Along { from, to } => {
                let starts = [from, to].map(|(z, radius)| scale.point(wish.side, z, radius));
                let (lines, arrows) = self.along(starts, line_y, text);
                (Kind::Along, lines, arrows)
            }
            Target::Diameter { z, radius } => {
                let tip = scale.point(wish.side, z, radius);
                let elbow = Point::new(tip.x, line_y);
                (
                    Kind::Diameter,
                    landing(tip, elbow, text),
                    vec![arrow(tip, elbow, self.arrow())],
                )
            }
            Target::Leader { z, radius } => {
                let tip = scale.point(wish.side, z, radius);
                let near = self.stroke(placed, scale).map_or(tip, |(_, elbow)| elbow);
                let elbow = Point::new(near.x, line_y);
                (
                    Kind::Leader,
                    landing(tip, elbow, text),
                    vec![arrow(tip, elbow, self.arrow())],
                )
            }
        };
        DimensionMark {
            field: wish.field,
            measure: wish.measure,
            kind,
            text: wish.text.clone(),
            text_at: Point::new(spot.text, line_y - GAP),
            lines,
            arrows,
            hit: Area {
                x: spot.from,
                y: self.row_y(wish.side, *row, scale),
                width: spot.to - spot.from,
                height: self.canvas.target,
            },
        }
    }

    /// Extension lines, the dimension line under the text, and two arrow heads, outside where it is narrow.
    fn along(&self, starts: [Point; 2], line_y: f64, text: (f64, f64)) -> Drawn {
        let [from, to] = starts.map(|start| start.x);
        let past = |start: Point| {
            let outward = (line_y - start.y).signum();
            Point::new(start.x, line_y + PAST * outward)
        };
        let tail = self.tail(from, to);
        let line = |a: f64, b: f64| (Point::new(a, line_y), Point::new(b, line_y));
        let lines = vec![
            (starts[0], past(starts[0])),
            (starts[1], past(starts[1])),
            line((from - tail).min(text.0), (to + tail).max(text.1)),
        ];
        // The heads point at the extension lines: from inside, or from outside along the tails.
        let (left, right) = if tail > 0.0 {
            (from - tail, to + tail)
        } else {
            (to, from)
        };
        let head = |tip: f64, tail: f64| {
            let (tip, tail) = (Point::new(tip, line_y), Point::new(tail, line_y));
            arrow(tip, tail, self.arrow())
        };
        (lines, vec![head(from, left), head(to, right)])
    }
}

/// Lines and arrow heads.
type Drawn = (Vec<(Point, Point)>, Vec<Vec<Point>>);

/// A line from a place of the outline to its elbow, and on under the text.
fn landing(tip: Point, elbow: Point, text: (f64, f64)) -> Vec<(Point, Point)> {
    let under = |x| Point::new(x, elbow.y);
    vec![
        (tip, elbow),
        (under(text.0.min(elbow.x)), under(text.1.max(elbow.x))),
    ]
}

/// Width of a character over the text height, for a broad sans-serif: rather too much than too little.
const fn character_width(character: char) -> f64 {
    match character {
        'm' | 'M' => 0.95,
        '⌀' | '×' | '≈' => 0.85,
        'A'..='Z' => 0.74,
        ' ' | '\u{a0}' | '.' | ',' | 'i' => 0.33,
        '(' | ')' | '/' | '-' => 0.38,
        _ => 0.63,
    }
}

fn count<T>(items: impl Iterator<Item = T>) -> u32 {
    u32::try_from(items.count()).unwrap_or(u32::MAX)
}
