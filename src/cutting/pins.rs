//! Passes that are pinned by hand, put onto the places of the dial.

use super::bench::Grid;
use super::engine::Pin;
use super::lathe::Lathe;
use crate::job::{Field, Job, PinField};
use crate::plan::Checked;
use crate::quantity::{Feed, Length, RotationalSpeed};

/// A pinned pass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pinned {
    /// Its place in the job's list.
    pub(super) index: u8,
    pub(super) pin: Pin,
    /// The feed that was asked for, or the nearest that the machine has.
    pub(super) feed: Option<f64>,
    /// The same of the spindle speed.
    pub(super) spindle: Option<f64>,
}

/// The pinned passes of a job; one with a figure out of bounds is left out, as its finding says.
pub(super) fn pinned(job: &Job, checked: &Checked, lathe: &Lathe, grid: &Grid) -> Vec<Pinned> {
    let mut pins = as_entered(job, checked, lathe, grid);
    join(&mut pins, grid);
    pins
}

/// Pinned passes that nearly meet follow one another: their figures were rounded, each for itself.
fn join(pins: &mut [Pinned], grid: &Grid) {
    /// What rounding to a hundredth on diameter and infeed can put two passes apart, on radius.
    const ROUNDED: Length = Length::mm(0.01);
    let apart = |one: u32, other: u32| grid.step * f64::from(one.abs_diff(other));
    let ends: Vec<u32> = pins
        .iter()
        .map(|it| it.pin.to)
        .chain([grid.steps])
        .collect();
    for it in pins {
        let above = |end: &&u32| it.pin.to < **end && apart(**end, it.pin.from) <= ROUNDED;
        if let Some(end) = ends.iter().find(above) {
            it.pin.from = *end;
        }
    }
}

fn as_entered(job: &Job, checked: &Checked, lathe: &Lathe, grid: &Grid) -> Vec<Pinned> {
    (0..=u8::MAX)
        .zip(job.setup.pins.iter().take(Job::MOST_PINS))
        .filter_map(|(index, pin)| {
            let field = |name| Field::Pin(index, name);
            let after = checked.length(field(PinField::After))? / 2.0;
            let infeed = checked.length(field(PinField::Infeed))?;
            let feed: Option<Feed> = checked.value(field(PinField::Feed));
            let spindle: Option<RotationalSpeed> = checked.value(field(PinField::Speed));
            let bad = (pin.feed.is_some() && feed.is_none())
                || (pin.speed.is_some() && spindle.is_none());
            if bad {
                return None;
            }
            Some(Pinned {
                index,
                pin: pin_at(after, infeed, grid),
                feed: feed.map(|feed| nearest(&lathe.feeds, feed.to_mm_per_rev())),
                spindle: spindle.map(|speed| {
                    let list = lathe.speeds.clone().into_list();
                    match list {
                        Some(list) => nearest(&list, speed.to_per_min()),
                        None => speed.to_per_min(),
                    }
                }),
            })
        })
        .collect()
}

/// The places of a pinned pass. One that goes below the size is made to take nothing, which is no pass and is said so.
fn pin_at(after: Length, infeed: Length, grid: &Grid) -> Pin {
    let from = place(after + infeed, grid);
    let below = after < grid.zero - grid.step * 0.5;
    let to = if below { from } else { place(after, grid) };
    Pin { from, to }
}

/// The place nearest to a radius; beyond the stock it is beyond the start.
fn place(radius: Length, grid: &Grid) -> u32 {
    let steps = ((radius - grid.zero) / grid.step).round();
    // The start need not stand on a whole step.
    if (radius - grid.start).abs() < grid.step * 0.5 {
        return grid.steps;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number within the bounds of its type"
    )]
    let steps = steps.clamp(0.0, f64::from(u32::MAX)) as u32;
    steps
}

/// The value of a rising list that is nearest by ratio.
fn nearest(list: &[f64], wanted: f64) -> f64 {
    let off = |value: f64| (value / wanted).ln().abs();
    let closer = |best: f64, value: f64| if off(value) < off(best) { value } else { best };
    list.iter().copied().reduce(closer).unwrap_or(wanted)
}
