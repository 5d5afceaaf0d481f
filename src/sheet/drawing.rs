//! The whole drawing of a stage: the part to scale and the dimensions round it.
//!
//! The axis lies across, the head at the left, z to the right. The outside view stands above the axis, the
//! section below. The scale is one in both directions: a long thin part is drawn long and thin.

use super::body::{Body, OVERHANG};
use super::breaks::{Extent, with_breaks};
use super::dimension::{DimensionMark, Rank, Wishes};
use super::geometry::Shape;
use super::marks::{Mark, marks};
use super::place::CHARACTER;
use super::room::place;
use super::scale::{CLEAR, Scale, Side};
use crate::job::{Field, Job};
use crate::order;
use crate::part::{CutShape, Pick, Received};
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
    /// How high the drawing should be at most, from 0. One row more is taken when it shows all dimensions; the part
    /// and one row on each side of it are drawn in any case.
    pub height: f64,
    /// All dimensions are shown, even where that makes it higher.
    pub all: bool,
    /// The field that is looked at: where dimensions have to be left out, its own is not.
    pub picked: Option<Field>,
    /// The place in the plan of the pass that is looked at: its layer is drawn in any case, and wide.
    pub pass: Option<u8>,
}

impl Default for Canvas {
    /// A phone: 328 pixels, text of 16, targets of 48, as high as it needs to be.
    fn default() -> Self {
        Self {
            width: 328.0,
            text_height: 16.0,
            target: 48.0,
            height: f64::INFINITY,
            all: false,
            picked: None,
            pass: None,
        }
    }
}

impl Canvas {
    /// The same within its limits; what is not finite becomes the usual.
    pub(super) fn checked(self) -> Self {
        let usual = Self::default();
        let finite = |value: f64, usual: f64| if value.is_finite() { value } else { usual };
        let width = finite(self.width, usual.width).clamp(240.0, 4096.0);
        Self {
            width,
            text_height: finite(self.text_height, usual.text_height)
                .max(8.0)
                .min(width / 20.0),
            target: finite(self.target, usual.target).max(24.0).min(width / 4.0),
            height: finite(self.height, usual.height).max(0.0),
            ..self
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
    /// How many dimensions have no room here; the list has them all.
    pub hidden: usize,
    /// How many stretches are taken out, so that a long part is drawn larger.
    pub breaks: usize,
    /// Places worth a look, shown with the plan.
    pub marks: Vec<Mark>,
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
    draw(job, plan, (stage, units), canvas.checked(), |factor| factor)
}

/// The same with a scale that `round` takes down to one that may be used.
pub(super) fn draw(
    job: &Job,
    plan: &Plan,
    (stage, units): (Stage, Units),
    canvas: Canvas,
    round: impl Fn(f64) -> f64,
) -> Drawing {
    let Some(received) = &plan.shape.received else {
        return Drawing {
            width: canvas.width,
            text_height: canvas.text_height,
            ..Drawing::default()
        };
    };
    let body = Body::of_stage(received, plan, stage, canvas.pass);
    let scale = fit(received, &body, canvas, round);
    arrange(job, plan, (stage, units), canvas, &body, scale).0
}

/// The drawing at a scale whose axis is not yet placed, and the scale with its axis.
pub(super) fn arrange(
    job: &Job,
    plan: &Plan,
    (stage, units): (Stage, Units),
    canvas: Canvas,
    body: &Body,
    mut scale: Scale,
) -> (Drawing, Scale) {
    let received = body.received;
    let wishes = Wishes {
        job,
        units,
        scale: &scale,
        most_characters: canvas.most_characters(),
        list: Vec::new(),
    };
    let mut wishes = wishes.of_stage(plan, received, stage);
    let whole = scale.below;
    let shank = received
        .outer
        .largest(received.outer.start(), received.outer.end())
        .map_or(whole, |point| point.radius.to_mm() * scale.factor + CLEAR);
    let (mut layout, mut hidden) = place(wishes.clone(), shank, &scale, canvas);
    if let Some(field) = canvas.picked
        && 0 < hidden
        && !layout.shows(field)
    {
        let own = wishes.iter_mut().filter(|wish| wish.field == field);
        own.for_each(|wish| wish.rank = Rank::Picked);
        (layout, hidden) = place(wishes, shank, &scale, canvas);
    }
    let rows = |side| f64::from(layout.rows(side)) * canvas.target;
    (scale.above, scale.below) = (
        layout.clear_of(Side::View, whole, shank, &scale),
        layout.clear_of(Side::Section, whole, shank, &scale),
    );
    scale.axis = rows(Side::View) + scale.above;
    let height = scale.bottom() + rows(Side::Section);
    let shapes = with_breaks(body.shapes(&scale), &scale, body);
    let mut dimensions = layout.marks(&scale);
    order::by(&mut dimensions, |a, b| {
        a.hit
            .y
            .total_cmp(&b.hit.y)
            .then(a.hit.x.total_cmp(&b.hit.x))
    });
    let marks = match stage {
        Stage::Plan => marks(plan, received, &scale, canvas.text_height),
        Stage::Received | Stage::Wanted => Vec::new(),
    };
    let drawing = Drawing {
        width: canvas.width,
        height,
        text_height: canvas.text_height,
        scale: scale.factor,
        shapes,
        dimensions,
        hidden,
        breaks: scale.breaks.len(),
        marks,
    };
    (drawing, scale)
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
fn fit(received: &Received, body: &Body, canvas: Canvas, round: impl Fn(f64) -> f64) -> Scale {
    /// Room at each end for overhangs and for arrow heads that stand outside.
    const MARGIN: f64 = 2.0 * OVERHANG + 4.0;
    let outer = received.whole_outer();
    let reach = outer
        .merge(&received.inner, Pick::Larger)
        .largest(outer.start(), outer.end())
        .map_or(Length::ZERO, |point| point.radius);
    let (start, end) = (outer.start().to_mm(), outer.end().to_mm());
    let mut places: Vec<f64> = body.places().into_iter().map(Length::to_mm).collect();
    places.retain(|z| start < *z && *z < end);
    places.extend([start, end]);
    order::numbers(&mut places);
    let extent = Extent {
        places,
        whole: received.features.iter().filter_map(face).collect(),
        mean: mean_diameter(received),
        across: reach.to_mm() * 2.0,
    };
    let room = canvas.width - 2.0 * MARGIN;
    // Half is for the dimensions; of a very low canvas less, as a part that is too small cannot be read.
    let high = (canvas.height / 2.0).max(room / 3.0);
    let (factor, breaks) = extent.fit(room, high.min(room), round);
    Scale {
        factor,
        start,
        left: (canvas.width - extent.drawn(factor, &breaks)) / 2.0,
        breaks,
        axis: 0.0,
        above: reach.to_mm() * factor + CLEAR,
        below: reach.to_mm() * factor + CLEAR,
    }
}

/// The stretch of a feature whose face has diagonals, which a break would bend.
fn face(feature: &crate::part::FeatureShape) -> Option<(f64, f64)> {
    matches!(feature.cut, CutShape::Flat { .. } | CutShape::Tang { .. })
        .then(|| (feature.from.to_mm(), feature.to.to_mm()))
}

/// The mean diameter of the shank along it, in millimetres.
fn mean_diameter(received: &Received) -> f64 {
    let points = received.outer.points();
    let area: f64 = points
        .windows(2)
        .map(|pair| match pair {
            [a, b] => (b.z - a.z).to_mm() * (a.radius + b.radius).to_mm(),
            _ => 0.0,
        })
        .sum();
    area / received.shank_length.to_mm()
}

#[cfg(test)]
#[path = "drawing_tests.rs"]
mod tests;
