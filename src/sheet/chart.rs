//! Charts in canvas pixels: two axes with numbers, a line, a band, and points that are marked.

use super::geometry::{Area, Point};
use super::place::CHARACTER;
use crate::cutting::CountPoint;
use crate::holding::{FormError, FormPoint};
use crate::part::Profile;
use crate::quantity::{Length, Money, Time, Units, show};

/// A number at an axis.
#[derive(Clone, Debug, PartialEq)]
pub struct Tick {
    /// x of an upright axis' lines, y of a level one's.
    pub at: f64,
    /// The number, without its unit.
    pub text: String,
}

/// A point of the line.
#[derive(Clone, Debug, PartialEq)]
pub struct Dot {
    /// Where it is.
    pub at: Point,
    /// Its value with the unit, and the middle of that text's foot; `None` for one of many.
    pub label: Option<(Point, String)>,
}

/// A chart, ready to be painted.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// How wide it is.
    pub width: f64,
    /// How high it is.
    pub height: f64,
    /// Where the line runs.
    pub plot: Area,
    /// The numbers below it, from the left.
    pub across: Vec<Tick>,
    /// The numbers at its left, from below.
    pub up: Vec<Tick>,
    /// The unit of the numbers below it; empty for a count.
    pub across_unit: &'static str,
    /// The unit of the numbers at its left; empty for money.
    pub up_unit: &'static str,
    /// Where the line may run.
    pub band: Option<Area>,
    /// The line, from the left.
    pub line: Vec<Point>,
    /// The points that are marked.
    pub dots: Vec<Dot>,
    /// The upper half of the part above the plot, place below place; empty where it does not belong.
    pub outline: Vec<Point>,
}

impl Chart {
    /// Height of the numbers at the axes, in pixels.
    pub const TICK_TEXT: f64 = 13.0;
    /// Height of the values at the points, in pixels.
    pub const LABEL_TEXT: f64 = 16.0;
}

/// Room of the numbers below a plot.
const BELOW: f64 = 24.0;

/// Room beside a plot for half of the last number below it.
const RIGHT: f64 = 14.0;

/// Room inside a plot for a value above or below the line.
const INSIDE: f64 = 26.0;

/// Room above a plot, so that its uppermost number is whole.
const ABOVE: f64 = 8.0;

/// How high the outline of the part is at most.
const OUTLINE: f64 = 36.0;

/// How much larger the diameter comes out along the work than the tool was set to.
///
/// `allowed`: how much the diameter may vary; the band reaches so far up from the least. `finished`: the finished shank,
/// for its outline. `width`: how wide the chart is, in pixels. `None` where nothing is turned.
///
/// # Accuracy
/// The outline is to scale along the work; across it is made lower where it would be too high.
pub fn form_chart(
    form: &FormError,
    allowed: Length,
    finished: Option<&Profile>,
    width: f64,
    units: Units,
) -> Option<Chart> {
    let (first, last) = (form.points.first()?, form.points.last()?);
    let error = |length: Length| units.difference_value(length);
    let place = |length: Length| {
        if units.is_inch() {
            length.to_inch()
        } else {
            length.to_mm()
        }
    };
    let (low, most) = (form.least.size_error, form.greatest.size_error);
    let high = most.max(low + allowed);
    let across = Axis::exact(0.0, place(last.at), 6.0)?;
    let up = Axis::round(error(low), error(high), 0.1);
    let outline = if finished.is_some() { OUTLINE } else { 0.0 };
    let plot = Plot::new(width, outline, across, up);
    let at = |point: &FormPoint| plot.point(place(point.at), error(point.size_error));
    let band_top = plot.point(place(first.at), error(low + allowed));
    let band_end = plot.point(place(last.at), error(low));
    let named = |point: &FormPoint, side| {
        plot.labelled(at(point), units.difference(point.size_error), side)
    };
    Some(Chart {
        across_unit: if units.is_inch() { "in" } else { "mm" },
        up_unit: units.difference_unit(),
        band: Some(Area {
            x: band_top.x,
            y: band_top.y,
            width: band_end.x - band_top.x,
            height: band_end.y - band_top.y,
        }),
        line: form.points.iter().map(at).collect(),
        dots: vec![
            named(&form.greatest, Beside::Above),
            named(&form.least, Beside::Below),
        ],
        outline: finished.map_or_else(Vec::new, |it| plot.outline(it, last.at, place)),
        ..plot.chart()
    })
}

/// What is compared over the number of passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Compare {
    /// How long they take.
    Time,
    /// What they cost.
    Cost,
}

/// Time or cost over the number of passes, with the row that is planned marked.
///
/// `None` where there is nothing to compare, or no cost is known.
pub fn count_chart(counts: &[CountPoint], what: Compare, width: f64) -> Option<Chart> {
    let longest = counts.iter().map(|it| it.time).fold(Time::ZERO, Time::max);
    let (scale, unit) = match what {
        Compare::Time => time_scale(longest),
        Compare::Cost => (Time::seconds(1.0), ""),
    };
    let value = |point: &CountPoint| match what {
        Compare::Time => Some(point.time / scale),
        Compare::Cost => point.cost.map(Money::to_currency),
    };
    let points: Vec<(&CountPoint, f64)> = counts
        .iter()
        .filter_map(|it| Some((it, value(it)?)))
        .collect();
    let passes = |point: &CountPoint| f64::from(point.passes);
    let (first, last) = (points.first()?, points.last()?);
    let highest = points.iter().map(|it| it.1).fold(0.0, f64::max);
    let lowest = points.iter().map(|it| it.1).fold(highest, f64::min);
    // From nought where that leaves half of the height for the differences; else they could not be seen.
    let from = if lowest < highest / 2.0 { 0.0 } else { lowest };
    let across = Axis::whole(passes(first.0), passes(last.0))?;
    let plot = Plot::new(width, 0.0, across, Axis::round(from, highest, 0.01));
    let at = |(point, value): &(&CountPoint, f64)| plot.point(passes(point), *value);
    let dots = points.iter().map(|it| {
        let text = match (what, it.0.cost) {
            (Compare::Cost, Some(cost)) => show::money(cost),
            _ => show::time(it.0.time),
        };
        let dot = plot.labelled(at(it), text, Beside::Below);
        let label = dot.label.filter(|_| it.0.planned);
        Dot { label, ..dot }
    });
    Some(Chart {
        up_unit: unit,
        line: points.iter().map(at).collect(),
        dots: dots.collect(),
        ..plot.chart()
    })
}

/// What times up to this one are best written in.
fn time_scale(longest: Time) -> (Time, &'static str) {
    /// Up to here the smaller unit is used, as times are shown elsewhere.
    const MOST: f64 = 90.0;
    let minute = Time::minutes(1.0);
    if longest.to_seconds() < MOST {
        (Time::seconds(1.0), "s")
    } else if longest < minute * MOST {
        (minute, "min")
    } else {
        (Time::minutes(60.0), "h")
    }
}

/// An axis from one number to another, a number at each step.
#[derive(Clone, Copy, Debug)]
struct Axis {
    low: f64,
    high: f64,
    step: f64,
}

impl Axis {
    /// From a number to another as they are; `None` where there is nothing between.
    fn exact(low: f64, high: f64, most: f64) -> Option<Self> {
        let step = step((high - low) / most);
        (low < high && high.is_finite()).then_some(Self { low, high, step })
    }

    /// Over two numbers, from one step to another; `finest` is the least step that says anything.
    fn round(low: f64, high: f64, finest: f64) -> Self {
        /// Less than this share of the number itself is rounding.
        const NOTHING: f64 = 1e-6;
        let least = (low.abs().max(high.abs()) * NOTHING).max(finest);
        let step = step(((high - low) / 5.0).max(least));
        let low = (low / step).floor() * step;
        Self {
            low,
            high: ((high / step).ceil() * step).max(low + step),
            step,
        }
    }

    /// Over whole numbers, with room at each end.
    fn whole(first: f64, last: f64) -> Option<Self> {
        let axis = Self::exact(first - 0.5, last + 0.5, 8.0)?;
        let step = axis.step.max(1.0).round();
        Some(Self { step, ..axis })
    }

    /// The numbers, each with its text.
    fn numbers(self) -> Vec<(f64, String)> {
        /// More would only be there if rounding went astray.
        const MOST: u32 = 24;
        let decimals = (-self.step.log10().floor()).clamp(0.0, 9.0);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "from 0 to 9"
        )]
        let decimals = decimals as usize;
        let hair = self.step * 1e-6;
        let first = ((self.low - hair) / self.step).ceil();
        (0..MOST)
            .map(|index| (first + f64::from(index)) * self.step)
            .take_while(|number| *number <= self.high + hair)
            .map(|number| (number, show::decimal(number, decimals)))
            .collect()
    }
}

/// The step of 1, 2 or 5 times a power of ten that is no smaller than `least`.
fn step(least: f64) -> f64 {
    let power = 10.0_f64.powf(least.log10().floor());
    let steps = [1.0, 2.0, 5.0].map(|digit| digit * power);
    let fits = steps.into_iter().find(|step| least <= step * (1.0 + 1e-9));
    fits.unwrap_or(power * 10.0)
}

/// On which side of a point its value stands.
#[derive(Clone, Copy)]
enum Beside {
    Above,
    Below,
}

/// Where numbers lie on the canvas.
struct Plot {
    area: Area,
    across: Axis,
    up: Axis,
}

impl Plot {
    /// A plot below an outline of the part that is so high.
    fn new(width: f64, outline: f64, across: Axis, up: Axis) -> Self {
        /// From the numbers at the left to the plot.
        const GAP: f64 = 6.0;
        let width = if width.is_finite() { width } else { 0.0 }.max(200.0);
        let texts = up.numbers().into_iter();
        let widest = texts.map(|(_, text)| text_width(&text, Chart::TICK_TEXT));
        let left = widest.fold(0.0, f64::max).min(width / 3.0) + GAP;
        Self {
            area: Area {
                x: left,
                y: outline + ABOVE,
                width: width - left - RIGHT,
                height: (width * 0.5).clamp(150.0, 240.0) + 2.0 * INSIDE,
            },
            across,
            up,
        }
    }

    fn point(&self, across: f64, up: f64) -> Point {
        let share = |axis: Axis, number: f64| (number - axis.low) / (axis.high - axis.low);
        let high = self.area.height - 2.0 * INSIDE;
        Point {
            x: self.area.x + self.area.width * share(self.across, across),
            y: self.area.y + INSIDE + high * (1.0 - share(self.up, up)),
        }
    }

    /// A point with its value, which is kept inside the plot.
    fn labelled(&self, at: Point, text: String, side: Beside) -> Dot {
        /// Bold text is wider than reckoned, and a value must not touch the frame.
        const CLEAR: f64 = 10.0;
        let half = text_width(&text, Chart::LABEL_TEXT) / 2.0 + CLEAR;
        let half = half.min(self.area.width / 2.0);
        let x =
            at.x.max(self.area.x + half)
                .min(self.area.x + self.area.width - half);
        let y = match side {
            Beside::Above => at.y - 9.0,
            Beside::Below => at.y + 9.0 + Chart::LABEL_TEXT * 0.75,
        };
        Dot {
            at,
            label: Some((Point { x, y }, text)),
        }
    }

    /// The upper half of the finished shank up to its end, above the plot.
    fn outline(&self, shank: &Profile, end: Length, place: impl Fn(Length) -> f64) -> Vec<Point> {
        let shank = shank.between(Length::ZERO, end);
        let Some(most) = shank.largest(Length::ZERO, end) else {
            return Vec::new();
        };
        let along = self.area.width / (self.across.high - self.across.low);
        let room = OUTLINE - 2.0;
        let high = (along * place(most.radius)).min(room);
        let foot = Point {
            x: self.area.x,
            y: OUTLINE,
        };
        let x = |z| self.point(place(z), 0.0).x;
        let mut points = vec![foot];
        points.extend(shank.points().into_iter().map(|point| Point {
            x: x(point.z),
            y: foot.y - high * (point.radius / most.radius),
        }));
        points.push(Point { x: x(end), ..foot });
        points
    }

    /// The chart without its line.
    fn chart(&self) -> Chart {
        let area = self.area;
        let across = self.across.numbers().into_iter().map(|(number, text)| {
            let at = self.point(number, self.up.low).x;
            Tick { at, text }
        });
        let up = self.up.numbers().into_iter().map(|(number, text)| {
            let at = self.point(self.across.low, number).y;
            Tick { at, text }
        });
        Chart {
            width: area.x + area.width + RIGHT,
            height: area.y + area.height + BELOW,
            plot: area,
            across: across.collect(),
            up: up.collect(),
            across_unit: "",
            up_unit: "",
            band: None,
            line: Vec::new(),
            dots: Vec::new(),
            outline: Vec::new(),
        }
    }
}

fn text_width(text: &str, height: f64) -> f64 {
    text.chars().map(|_| height * CHARACTER).sum()
}
