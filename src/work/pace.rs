//! What a day at the lathe teaches of the next: planned against real time of each step, and what is believed after it.
//!
//! What is believed of a step is a factor on the plan's usual time. It starts as one, which counts as one job seen, and
//! each job moves its logarithm by an equal share: after n jobs that agree it has gone n/(n + 1) of the way. One odd day
//! must not swing it: no job counts as further from what is believed than twice or half, and after nine jobs the share
//! stays a tenth, so that what was learned long ago fades.

use serde::Serialize;

use super::clock::clock_of;
use super::steps::{StepHow, how_of, steps};
use super::times;
use crate::costing::{LEAST_PACE, MOST_PACE, Pace};
use crate::job::{Job, Learned, LearnedPace, WorkStep};
use crate::measuring::takes_after;
use crate::plan::Plan;
use crate::quantity::{Count, Entered, Share, Time, Unit};

/// Planned against real time of one step.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StepTimeReal {
    /// Which.
    pub step: WorkStep,
    /// As it was planned, quick, likely and slow, with what earlier jobs had taught; `None` where there was no plan.
    pub planned: Option<[Time; 3]>,
    /// As its clock counted; `None` where none ran, or it cannot be trusted.
    pub real: Option<Time>,
    /// Real over planned likely time.
    pub against_plan: Option<Share>,
    /// Real over the likely time at the usual pace, which is what is learned; `None` where it does not count.
    pub factor: Option<Share>,
    /// Why it does not count; `None` where it does.
    pub why: Option<WhyNoPace>,
}

/// Why the time of a step teaches nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum WhyNoPace {
    /// It is not done.
    NotDone,
    /// It was left out.
    Skipped,
    /// Its clock never ran.
    NotTimed,
    /// The device's clock was set back, or the step ran longer than a day.
    ClockBroken,
    /// The plan has no time for it.
    NotPlanned,
    /// The person typed a time of it, which is better than what is learned.
    OwnTimes,
    /// So quick that the clock was started late or stopped early: below [`LEAST_PACE`] of the usual.
    TooQuick,
    /// So slow that the clock ran on through something else: above [`MOST_PACE`] of the usual.
    TooSlow,
}

/// Each step of the job with its planned and its real time, in working order.
///
/// # Accuracy
/// That of the clocks, in whole seconds.
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, work::{WhyNoPace, real_times}};
/// let job = Job::default();
/// let times = real_times(&job, &plan(&job));
/// assert!(times.iter().all(|it| it.why == Some(WhyNoPace::NotDone)));
/// ```
pub fn real_times(job: &Job, plan: &Plan) -> Vec<StepTimeReal> {
    let steps = steps(job, plan).into_iter();
    steps
        .map(|now| real_time(job, plan, now.step, now.planned))
        .collect()
}

fn real_time(job: &Job, plan: &Plan, step: WorkStep, planned: Option<[Time; 3]>) -> StepTimeReal {
    let clock = clock_of(&job.record, step);
    let real = Some(clock.counted).filter(|real| Time::ZERO < *real && !clock.broken);
    let time = plan.time.as_ref();
    let usual = time.and_then(|time| times::spread_at_usual_pace(time, &[step]));
    let over = |planned: Time| {
        let real = real.filter(|_| Time::ZERO < planned)?;
        Some(real / planned)
    };
    let factor = usual.and_then(|usual| over(usual.likely));
    let why = match how_of(&job.record, step) {
        StepHow::Skipped => Some(WhyNoPace::Skipped),
        StepHow::ToDo | StepHow::Running | StepHow::Paused => Some(WhyNoPace::NotDone),
        StepHow::Done if clock.broken => Some(WhyNoPace::ClockBroken),
        StepHow::Done if real.is_none() => Some(WhyNoPace::NotTimed),
        StepHow::Done if time.is_some_and(|time| times::is_typed(time, step)) => {
            Some(WhyNoPace::OwnTimes)
        }
        StepHow::Done => match factor {
            None => Some(WhyNoPace::NotPlanned),
            Some(factor) if factor < LEAST_PACE => Some(WhyNoPace::TooQuick),
            Some(factor) if MOST_PACE < factor => Some(WhyNoPace::TooSlow),
            Some(_) => None,
        },
    };
    StepTimeReal {
        step,
        planned,
        real,
        against_plan: planned
            .and_then(|[_, likely, _]| over(likely))
            .map(Share::of_whole),
        factor: factor.filter(|_| why.is_none()).map(Share::of_whole),
        why,
    }
}

/// What is believed of the lathe's steps after this job, by what it knew before; steps that taught nothing keep theirs.
///
/// # Source
/// Mean of logarithms with a prior worth one job: A. Gelman and others, Bayesian Data Analysis, the normal mean with
/// known variance (from memory). Bounding what one value can do: P. J. Huber, Robust estimation of a location parameter,
/// 1964 (from memory). Twice, and nine jobs: common practice, no source.
pub fn paces_after(job: &Job, plan: &Plan) -> Vec<LearnedPace> {
    merged(&job.shop.machine.learned.paces, &real_times(job, plan))
}

/// What is known of a lathe after this job, by what was known of it before: that of the job, or of the lathe as it is
/// kept, which other jobs may have taught since.
pub fn learned_after(job: &Job, plan: &Plan, known: &Learned) -> Learned {
    Learned {
        takes: takes_after(job, plan, known.takes.as_ref()).or_else(|| known.takes.clone()),
        paces: merged(&known.paces, &real_times(job, plan)),
    }
}

/// A job counts as no further from what is believed than this factor either way.
const FARTHEST: f64 = 2.0;

/// More jobs than this weigh as so many.
const MOST_WEIGHT: u32 = 9;

fn merged(known: &[LearnedPace], real: &[StepTimeReal]) -> Vec<LearnedPace> {
    let of = |step| known.iter().rev().find(move |it| it.step == step);
    let after = |step| {
        let taught = real.iter().find(|it| it.step == step);
        let taught = taught.and_then(|it| it.factor);
        match (of(step), taught) {
            (known, None) => known.cloned(),
            (known, Some(taught)) => Some(moved(step, known, taught.to_whole())),
        }
    };
    WorkStep::ALL.into_iter().filter_map(after).collect()
}

fn moved(step: WorkStep, known: Option<&LearnedPace>, taught: f64) -> LearnedPace {
    let (believed, jobs) = known.map_or((1.0, 0), |it| {
        (
            it.factor.value().to_whole(),
            whole(it.jobs.value().to_pieces(), 1e6),
        )
    });
    let Pace { factor, .. } = Pace::new(step, believed, jobs);
    let apart = (taught / factor).clamp(1.0 / FARTHEST, FARTHEST);
    let share = 1.0 / (f64::from(jobs.min(MOST_WEIGHT - 1)) + 2.0);
    let Pace { factor, .. } = Pace::new(step, factor * apart.powf(share), jobs);
    LearnedPace {
        step,
        factor: Entered::<Share>::plain(whole(factor * 1000.0, 1e6), 1, Unit::Percent),
        jobs: Entered::<Count>::plain(jobs.saturating_add(1), 0, Unit::Piece),
    }
}

fn whole(number: f64, most: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number within the bounds of its type"
    )]
    let whole = number.round().clamp(0.0, most) as u32;
    whole
}

#[cfg(test)]
#[path = "pace_tests.rs"]
mod tests;
