//! The whole drawing of a stage: the part to scale and the dimensions round it.
//!
//! The axis lies across, the head at the left, z to the right. The outside view stands above the axis, the
//! section below. The scale is one in both directions: a long thin part is drawn long and thin.

use super::body::{Body, OVERHANG};
use super::dimension::{DimensionMark, wishes};
use super::geometry::Shape;
use super::place::{CHARACTER, place};
use super::scale::{CLEAR, Scale, Side};
use crate::job::Job;
use crate::part::{Pick, Received};
use crate::plan::Plan;
use crate::quantity::{Length, Units};

/// Which dimensions are shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// Those of the part as received.
    Received,
    /// Those of the finished shank.
    Wanted,
    /// Those of the cut, and what follows from it.
    Plan,
}

/// What there is to draw on, in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Canvas {
    /// How wide it is. Kept to 240–4096.
    pub width: f64,
    /// Height of a line of text. Kept to 8 up to a twentieth of the width.
    pub text_height: f64,
    /// Least breadth and height of what a finger should meet. Kept to 24 up to a quarter of the width.
    pub target: f64,
}

impl Default for Canvas {
    /// A phone: 328 pixels, text of 16, targets of 48.
    fn default() -> Self {
        Self {
            width: 328.0,
            text_height: 16.0,
            target: 48.0,
        }
    }
}

impl Canvas {
    /// The same within its limits; what is not finite becomes the usual.
    fn checked(self) -> Self {
        let usual = Self::default();
        let finite = |value: f64, usual: f64| if value.is_finite() { value } else { usual };
        let width = finite(self.width, usual.width).clamp(240.0, 4096.0);
        Self {
            width,
            text_height: finite(self.text_height, usual.text_height).clamp(8.0, width / 20.0),
            target: finite(self.target, usual.target).clamp(24.0, width / 4.0),
        }
    }
}

/// A drawing in canvas coordinates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawing {
    /// As wide as the canvas.
    pub width: f64,
    /// As high as it needs to be.
    pub height: f64,
    /// Height of a line of text, which the places of the texts were reckoned with.
    pub text_height: f64,
    /// Pixels a millimetre; zero when there is nothing to draw.
    pub scale: f64,
    /// The part, in the order that it is painted.
    pub shapes: Vec<Shape>,
    /// The dimensions, from left to right and from the top.
    pub dimensions: Vec<DimensionMark>,
}

/// Draws a job and its plan.
///
/// `plan` is the plan of `job`; `stage` says which dimensions are shown, `canvas` how much room there is, and
/// `units` how lengths are written. While the part as received cannot be put together the drawing is empty;
/// while nothing is planned it shows the part as received alone.
///
/// # Accuracy
/// To scale, but for the arc of the fillet, which is drawn in twelve chords.
///
/// # Source
/// Lines and hatching after ISO 128-2 and ISO 128-3, dimensions after ISO 129-1, threads after ISO 6410-1;
/// from memory.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::Units};
/// use skimwright::sheet::{Canvas, Stage, drawing};
/// let job = Job::default();
/// let sheet = drawing(&job, &plan(&job), Stage::Received, Canvas::default(), Units::Metric);
/// // Head ⌀40 × 30, shank ⌀20 × 80, and the length over all.
/// assert_eq!(sheet.dimensions.len(), 5);
/// ```
pub fn drawing(job: &Job, plan: &Plan, stage: Stage, canvas: Canvas, units: Units) -> Drawing {
    let canvas = canvas.checked();
    let Some(received) = &plan.shape.received else {
        return Drawing {
            width: canvas.width,
            text_height: canvas.text_height,
            ..Drawing::default()
        };
    };
    let mut scale = fit(received, canvas);
    let most_characters = canvas.most_characters();
    let wishes = wishes(job, plan, received, stage, units, most_characters);
    let layout = place(wishes, &scale, canvas);
    let rows = |side| f64::from(layout.rows(side)) * canvas.target;
    let whole = scale.below;
    let shank = received
        .outer
        .largest(received.outer.start(), received.outer.end())
        .map_or(whole, |point| point.radius.to_mm() * scale.factor + CLEAR);
    (scale.above, scale.below) = (
        layout.clear_of(Side::View, whole, shank, &scale),
        layout.clear_of(Side::Section, whole, shank, &scale),
    );
    scale.axis = rows(Side::View) + scale.above;
    let height = scale.bottom() + rows(Side::Section);
    let shapes = Body::new(received, plan).shapes(&scale);
    let mut dimensions = layout.marks(&scale);
    dimensions.sort_by(|a, b| {
        a.hit
            .y
            .total_cmp(&b.hit.y)
            .then(a.hit.x.total_cmp(&b.hit.x))
    });
    Drawing {
        width: canvas.width,
        height,
        text_height: canvas.text_height,
        scale: scale.factor,
        shapes,
        dimensions,
    }
}

impl Canvas {
    /// How many characters have room beside what they describe.
    fn most_characters(self) -> usize {
        /// Every single figure in bounds fits into the first, which is half of the narrowest canvas.
        const LENGTHS: [u8; 4] = [15, 20, 24, 32];
        let fits =
            |count: &u8| f64::from(*count) * self.text_height * CHARACTER <= self.width / 2.0;
        let most = LENGTHS.into_iter().rev().find(fits);
        usize::from(most.unwrap_or(LENGTHS[0]))
    }
}

/// The largest scale at which the part has room, the axis not yet placed.
fn fit(received: &Received, canvas: Canvas) -> Scale {
    /// Room at each end for overhangs and for arrow heads that stand outside.
    const MARGIN: f64 = 2.0 * OVERHANG + 4.0;
    let outer = received.whole_outer();
    let reach = outer
        .merge(&received.inner, Pick::Larger)
        .largest(outer.start(), outer.end())
        .map_or(Length::ZERO, |point| point.radius);
    let (long, across) = ((outer.end() - outer.start()).to_mm(), reach.to_mm() * 2.0);
    let room = canvas.width - 2.0 * MARGIN;
    // A short wide part is kept from growing higher than the canvas is wide.
    let factor = (room / long).min(room / across);
    let left = (canvas.width - long * factor) / 2.0;
    Scale {
        factor,
        shoulder: left - outer.start().to_mm() * factor,
        axis: 0.0,
        above: reach.to_mm() * factor + CLEAR,
        below: reach.to_mm() * factor + CLEAR,
    }
}

#[cfg(test)]
#[path = "drawing_tests.rs"]
mod tests;
