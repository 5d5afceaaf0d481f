//! Taper and barrel that the work has, by the readings along it, and how far to shift the tail-stock.
//!
//! What is off in all readings alike moves the whole line and not its slope: only what differs between places counts.

use serde::Serialize;

use super::budget::{COVERAGE, GUM, Shared, expanded, root_sum};
use super::corrected::{Mean, square};
use super::line::{Bow, Line, Placed, bow, line_through};
use super::places::{place_along, straight_part};
use super::since::diameters_now;
use crate::holding::{FormError, HoldingPlan};
use crate::job::{Job, Support};
use crate::plan::Plan;
use crate::quantity::Length;
use crate::rework::SizeLimits;
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// What of the tolerance on the diameter a taper may use up before it is worth mending.
///
/// # Source
/// A half: common practice, no source.
pub const FORGIVEN_SHARE: f64 = 0.5;

/// What of a barrel or waist the plan must foresee to be its likely cause.
///
/// # Source
/// A third: common practice, no source. Forces and springs of the plan are hardly known better.
pub const LIKELY_CAUSE_SHARE: f64 = 1.0 / 3.0;

/// Taper and barrel along the shank.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TaperFound {
    /// Growth of the diameter from the shoulder end to the free end of the shank, with its range (k = 2); below nothing
    /// where the free end is thinner.
    pub over_length: Figure<Length>,
    /// The length that it is said over: the straight part of the shank.
    pub length: Length,
    /// Its standard uncertainty over that length.
    pub uncertainty: Length,
    /// What the readings can tell.
    pub verdict: TaperVerdict,
    /// The taper that the tolerance forgives; `None` without one.
    pub forgiven: Option<Length>,
    /// How far to shift the tail-stock across, toward the tool where positive; `None` where nothing should be done.
    pub shift: Option<Figure<Length>>,
    /// How much the middle stands above the line through the ends, on diameter; below nothing for a waist. `None`
    /// without three places.
    pub barrel: Option<Length>,
    /// Its standard uncertainty.
    pub barrel_uncertainty: Option<Length>,
    /// The same by the plan of the last cut; `None` where the plan has none.
    pub barrel_planned: Option<Length>,
    /// What it likely comes from; `None` where there is none, or none that the readings can tell from noise.
    pub barrel_cause: Option<BarrelCause>,
    /// The diameters that it rests on, with what differs between them.
    pub places: Vec<Placed>,
}

impl TaperFound {
    /// What of a barrel or a waist the readings can tell; `None` without three places.
    pub fn middle(&self) -> Option<Middle> {
        let (bulge, uncertainty) = (self.barrel?, self.barrel_uncertainty?);
        Some(if bulge.abs() <= uncertainty * COVERAGE {
            Middle::NotTold
        } else if bulge < Length::ZERO {
            Middle::Waist
        } else {
            Middle::Barrel
        })
    }
}

/// How the middle of the shank stands to its ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Middle {
    /// The readings cannot tell it from noise.
    NotTold,
    /// Thicker.
    Barrel,
    /// Thinner.
    Waist,
}

/// What readings along the shank can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TaperVerdict {
    /// Parallel within what the tolerance forgives, and the readings are good enough to say so.
    Parallel,
    /// A taper is there.
    Tapered,
    /// The readings cannot tell it from noise, and it may be more than the tolerance forgives.
    NotTold,
}

/// What a barrel or a waist likely comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BarrelCause {
    /// A barrel that the plan foresees: the work bends away from the tool between what holds it.
    WorkBends,
    /// A waist that the plan foresees: chuck, centre or tail-stock give way more than the work.
    EndsGiveWay,
    /// Nothing that the plan foresees: worn or twisted ways, wear of the edge, heat.
    Elsewhere,
}

/// Taper and barrel by the readings since the last cut; `None` without two places apart.
///
/// Tapered where the taper is more than twice its uncertainty; else parallel where it is surely less than the tolerance
/// forgives, [`FORGIVEN_SHARE`] of it; else it is not told. The tail-stock is to be shifted where a taper is there, more
/// than is forgiven, and a centre holds the end.
///
/// # Accuracy
/// Two standard uncertainties, about 95 %. With different instruments at the places their scales count too.
/// # Source
/// Weighted least squares, see [`line_through`]; the shift is half the taper over the length between the supports:
/// plain geometry.
pub fn taper(job: &Job, plan: &Plan) -> Option<TaperFound> {
    let places = places(job, plan);
    let line = line_through(&places)?;
    let [from, to] = straight_part(plan)?;
    let length = to - from;
    let over = length * line.slope;
    let uncertainty = length * line.slope_uncertainty;
    let forgiven = plan.limits.map(forgiven_taper);
    let verdict = told(over, uncertainty, forgiven);
    let worth_mending =
        verdict == TaperVerdict::Tapered && forgiven.is_none_or(|most| over.abs() > most);
    let shift = plan
        .holding
        .as_ref()
        .filter(|_| worth_mending)
        .and_then(|holding| tail_shift(&line, holding));
    let bow = bow(&places);
    let planned = bow.and_then(|bow| planned_bulge(plan.holding.as_ref()?.form.as_ref()?, bow));
    Some(TaperFound {
        over_length: over_figure(over, uncertainty, &line, length),
        length,
        uncertainty,
        verdict,
        forgiven,
        shift,
        barrel: bow.map(|it| it.bulge),
        barrel_uncertainty: bow.map(|it| it.uncertainty),
        barrel_planned: planned,
        barrel_cause: bow.and_then(|bow| cause(bow, planned)),
        places,
    })
}

/// The taper that a tolerance forgives.
pub fn forgiven_taper(limits: SizeLimits) -> Length {
    (limits.upper - limits.lower) * FORGIVEN_SHARE
}

/// What a taper with its standard uncertainty tells, where so much is forgiven.
pub fn told(taper: Length, uncertainty: Length, forgiven: Option<Length>) -> TaperVerdict {
    let unsure = uncertainty * COVERAGE;
    if taper.abs() > unsure {
        TaperVerdict::Tapered
    } else if forgiven.is_some_and(|most| taper.abs() + unsure <= most) {
        TaperVerdict::Parallel
    } else {
        TaperVerdict::NotTold
    }
}

/// The diameters by place, each with what differs between places.
fn places(job: &Job, plan: &Plan) -> Vec<Placed> {
    let read = diameters_now(job);
    let mut all = read.iter().flat_map(|(_, readings)| readings);
    let first = all.next();
    let others = |differs: &dyn Fn(_, _) -> bool| {
        first.is_some_and(|first| all.clone().any(|other| differs(first, other)))
    };
    let instruments_differ =
        others(&|a: &super::Corrected, b: &super::Corrected| a.instrument != b.instrument);
    let warmth_differs =
        others(&|a: &super::Corrected, b: &super::Corrected| a.work_above != b.work_above);
    let differs = |shared| match shared {
        Shared::Reading => false,
        Shared::Place => true,
        Shared::Instrument => instruments_differ,
        Shared::Work => warmth_differs,
    };
    let each = read.iter().filter_map(|(place, readings)| {
        let mean = Mean::of(readings)?;
        let apart = square(root_sum(&mean.budget, differs)) + square(mean.own);
        Some(Placed {
            at: place_along(job, plan, place)?,
            diameter: mean.value,
            uncertainty: Length::mm(apart.sqrt()),
        })
    });
    each.collect()
}

fn over_figure(over: Length, uncertainty: Length, line: &Line, length: Length) -> Figure<Length> {
    Figure {
        value: over,
        range: Some(expanded(over, uncertainty)),
        working: Working {
            symbol: "T",
            formula: "s · L",
            parts: &[
                "s = Σ w · (z − z₀) · d / Σ w · (z − z₀)²",
                "w = 1/u²",
                "U = 2 · e",
            ],
            inputs: vec![
                Input::new("s", Meaning::TaperSlope, Value::Ratio(line.slope)),
                Input::new("L", Meaning::StraightPart, Value::length(length)),
                Input::new("e", Meaning::TaperUncertainty, Value::Fine(uncertainty)),
            ],
            source: GUM,
        },
    }
}

/// How far to shift the tail-stock; `None` where no centre holds the end.
fn tail_shift(line: &Line, holding: &HoldingPlan) -> Option<Figure<Length>> {
    let on_centre = matches!(
        holding.support,
        Support::ChuckAndCentre | Support::BetweenCentres
    );
    let between = holding.overhang;
    if !on_centre || between <= Length::ZERO {
        return None;
    }
    let per = between / 2.0;
    let reach = line.slope_uncertainty * COVERAGE;
    Some(Figure {
        value: per * line.slope,
        range: Some(Range {
            low: per * (line.slope - reach),
            high: per * (line.slope + reach),
        }),
        working: Working {
            symbol: "x",
            formula: "s · B/2",
            parts: &[],
            inputs: vec![
                Input::new("s", Meaning::TaperSlope, Value::Ratio(line.slope)),
                Input::new("B", Meaning::BetweenSupports, Value::length(between)),
            ],
            source: Source::Geometry,
        },
    })
}

/// How far the middle between two places stands above the line through them in the form that the plan foresees.
fn planned_bulge(form: &FormError, bow: Bow) -> Option<Length> {
    let [from, to] = bow.between;
    let middle = (from + to) / 2.0;
    let ends = (size_error(form, from)? + size_error(form, to)?) / 2.0;
    Some(size_error(form, middle)? - ends)
}

/// What the plan foresees at a place, between the places of its chart; beyond them that of the last.
fn size_error(form: &FormError, at: Length) -> Option<Length> {
    let mut before = form.points.first()?;
    for point in &form.points {
        if at <= point.at {
            let gap = point.at - before.at;
            if gap <= Length::ZERO {
                return Some(point.size_error);
            }
            let share = ((at - before.at) / gap).clamp(0.0, 1.0);
            return Some(before.size_error + (point.size_error - before.size_error) * share);
        }
        before = point;
    }
    Some(before.size_error)
}

/// What a barrel or waist likely comes from.
fn cause(bow: Bow, planned: Option<Length>) -> Option<BarrelCause> {
    if bow.bulge.abs() <= bow.uncertainty * COVERAGE {
        return None;
    }
    // Above nothing where plan and work stand off to the same side.
    let foreseen = planned.map_or(0.0, |planned| planned / bow.bulge);
    Some(if foreseen < LIKELY_CAUSE_SHARE {
        BarrelCause::Elsewhere
    } else if bow.bulge > Length::ZERO {
        BarrelCause::WorkBends
    } else {
        BarrelCause::EndsGiveWay
    })
}
