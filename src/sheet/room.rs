//! Which dimensions have room: all of them where the drawing may grow as it likes, else those that are missed most.

use super::dimension::Wish;
use super::drawing::Canvas;
use super::place::{Layout, rows_of, uprights};
use super::scale::{Scale, Side};
use crate::order;

/// The dimensions of one side: in the order of their rank, and all of them in rows.
struct Half<'a> {
    side: Side,
    wishes: Vec<Wish>,
    whole: Layout,
    scale: &'a Scale,
    canvas: Canvas,
}

/// Puts dimensions into rows, and says how many have no room. The axis need not be placed yet; `shank` is from there to
/// what must be clear of the shank, in pixels.
///
/// Where the rows would be higher than the canvas allows, by more than the one row that shows them all, the side with more of them gives way first, and of its
/// dimensions those that are missed least.
pub(crate) fn place(
    wishes: Vec<Wish>,
    shank: f64,
    scale: &Scale,
    canvas: Canvas,
) -> (Layout, usize) {
    let count = wishes.len();
    let (view, section): (Vec<Wish>, Vec<Wish>) =
        wishes.into_iter().partition(|wish| wish.side == Side::View);
    let [view, section] =
        [(Side::View, view), (Side::Section, section)].map(|(side, mut wishes)| {
            order::by(&mut wishes, |a, b| a.rank.cmp(&b.rank));
            Half {
                side,
                whole: rows_of(wishes.clone(), scale, canvas),
                wishes,
                scale,
                canvas,
            }
        });
    let [most_above, most_below] = [&view, &section].map(|half| half.whole.rows(half.side));
    let (mut above, mut below) = (most_above, most_below);
    // Rows beside the head begin nearer to the axis than the others.
    let high = |over: &Layout, under: &Layout| view.high(over, shank) + section.high(under, shank);
    let (part, pitch) = (scale.above + scale.below, canvas.target);
    let whole = canvas.all || high(&view.whole, &section.whole) <= canvas.height + pitch;
    let too_high = |rows: u32| canvas.height < part + f64::from(rows) * pitch;
    while !whole && 1 < above.max(below) && too_high(above + below) {
        if above < below {
            below -= 1;
        } else {
            above -= 1;
        }
    }
    let (mut over, mut under) = (view.in_rows(above), section.in_rows(below));
    // As drawn it can be lower than was reckoned, with room for one row more.
    if above < most_above {
        let more = view.in_rows(above + 1);
        if high(&more, &under) <= canvas.height {
            over = more;
        }
    }
    if below < most_below {
        let more = section.in_rows(below + 1);
        if high(&over, &more) <= canvas.height {
            under = more;
        }
    }
    over.placed.extend(under.placed);
    let hidden = count - over.placed.len();
    (over, hidden)
}

impl Half<'_> {
    /// From the axis to the end of the last row, in pixels.
    fn high(&self, layout: &Layout, shank: f64) -> f64 {
        let (side, whole) = (self.side, self.scale.below);
        layout.clear_of(side, whole, shank, self.scale)
            + f64::from(layout.rows(side)) * self.canvas.target
    }

    /// As many dimensions as have room in `most` rows, the first of the list before the others.
    fn in_rows(&self, most: u32) -> Layout {
        let side = &self.wishes;
        let first = |count: usize| {
            let first = side.iter().take(count).cloned().collect();
            rows_of(first, self.scale, self.canvas)
        };
        let fits = |layout: &Layout| layout.placed.iter().all(|placed| placed.row < most);
        if fits(&self.whole) {
            return self.whole.clone();
        }
        // None needs no rows; all need too many.
        let (mut low, mut high, mut best) = (0, side.len(), first(0));
        while low + 1 < high {
            let middle = usize::midpoint(low, high);
            let layout = first(middle);
            if fits(&layout) {
                (low, best) = (middle, layout);
            } else {
                high = middle;
            }
        }
        // What finds a gap between those is shown too.
        let uprights = uprights(side, self.scale);
        for wish in side.iter().skip(low) {
            best.add(wish.clone(), self.scale, &uprights, most);
        }
        best
    }
}
