//! What a job teaches of its lathe, for the next one.

use super::progress::Progress;
use crate::job::{Job, LearnedTakes};
use crate::plan::Plan;
use crate::quantity::{Count, Entered, Entry, Length, Share, Typed, Unit};

/// So many measured last cuts at least: one alone shows no share apart from the offset.
const LEAST_CUTS: u32 = 2;

/// Cuts of earlier jobs count for no more than this, so that a lathe may change. Own choice: about ten jobs.
const MOST_WEIGHT: f64 = 40.0;

/// Between these a share, an offset and their deviations are kept; what lies outside is a slip and not a lathe.
const SHARES: (f64, f64) = (0.3, 1.1);
const SHARE_DEVIATIONS: (f64, f64) = (0.01, 0.2);
const OFFSETS: (f64, f64) = (-0.05, 0.05);
const OFFSET_DEVIATIONS: (f64, f64) = (0.003, 0.05);
const MOST_CUTS: f64 = 9999.0;

/// What a job has shown of its lathe, together with what was `known` of it before; `None` where it has shown
/// nothing.
///
/// Means are weighed by measured cuts. The deviations are those from job to job: how far this job lies from the mean
/// counts beside how well it knew itself, and shrinks only as more jobs agree.
///
/// # Source
/// Mean and variance of a mixture, each part weighed by its cuts; the bounds are own choice.
pub fn takes_after(job: &Job, plan: &Plan, known: Option<&LearnedTakes>) -> Option<LearnedTakes> {
    let learner = Progress::of(job, plan).learner;
    if learner.last_cuts < LEAST_CUTS {
        return None;
    }
    let belief = learner.belief;
    let new = f64::from(learner.last_cuts);
    let share = (belief.share, belief.share_variance.sqrt());
    let offset = (belief.offset, belief.offset_variance.sqrt());
    let (mut known_share, mut known_offset, mut old) = (share, offset, 0.0);
    if let Some(known) = known {
        old = known.cuts.value().to_pieces().max(0.0);
        known_share = (
            known.share.value().to_whole(),
            known.share_deviation.value().to_whole(),
        );
        known_offset = (
            known.offset.value().to_mm(),
            known.offset_deviation.value().to_mm(),
        );
    }
    let weight = old.min(MOST_WEIGHT);
    let merge = |one, other| mixture((one, weight), (other, new));
    let share = merge(known_share, share);
    let offset = merge(known_offset, offset);
    Some(LearnedTakes {
        share: per_cent(share.0, SHARES)?,
        share_deviation: per_cent(share.1, SHARE_DEVIATIONS)?,
        offset: millimetres(offset.0, OFFSETS)?,
        offset_deviation: millimetres(offset.1, OFFSET_DEVIATIONS)?,
        cuts: entered::<Count>((old + new).min(MOST_CUTS), 0, Unit::Piece)?,
    })
}

/// Mean and deviation of two opinions taken together, each of a weight.
fn mixture(
    ((one, of_one), by_one): ((f64, f64), f64),
    ((other, of_other), by_other): ((f64, f64), f64),
) -> (f64, f64) {
    let all = by_one + by_other;
    let mean = (one * by_one + other * by_other) / all;
    let spread = |it: f64, deviation: f64| deviation * deviation + (it - mean) * (it - mean);
    let variance = (spread(one, of_one) * by_one + spread(other, of_other) * by_other) / all;
    (mean, variance.sqrt())
}

fn per_cent(share: f64, (least, most): (f64, f64)) -> Option<Entered<Share>> {
    entered(share.clamp(least, most) * 100.0, 2, Unit::Percent)
}

fn millimetres(length: f64, (least, most): (f64, f64)) -> Option<Entered<Length>> {
    entered(length.clamp(least, most), 4, Unit::Millimetre)
}

fn entered<Q: Typed>(value: f64, decimals: u8, unit: Unit) -> Option<Entered<Q>> {
    Entered::new(Entry::decimal(value, decimals, unit)?)
}
