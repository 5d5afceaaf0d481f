//! What the record says of the whole work: the part as it came and as it leaves, what was done, and what it was measured
//! with.

use serde::Serialize;

use super::clock::clock_of;
use super::steps::{StepHow, StepNow};
use crate::job::{
    CutMadeKind, Job, Measured, Moment, Reading, Record, StepEvent, StepState, What, WorkStep,
};
use crate::measuring::{instrument_figures, since_last_cut};
use crate::quantity::{Entered, Length, Temperature, Time};

/// What the record says of the whole work.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct WorkDone {
    /// Readings of the part as received, before the first cut, by their places in the record; all, where nothing was cut.
    pub received: Vec<usize>,
    /// Readings of the work as it leaves, since the last cut; none where nothing was cut.
    pub left: Vec<usize>,
    /// The cuts, a row for each kind, in the order in which each kind was first made.
    pub cuts: Vec<CutsDone>,
    /// The steps in working order.
    pub steps: Vec<StepDone>,
    /// Notes, by their places in the record.
    pub notes: Vec<usize>,
    /// What the readings of the part were taken with, in the order of first use.
    pub used: Vec<Used>,
    /// The coldest and the warmest that the work was measured at; `None` where it never was.
    pub temperatures: Option<[Temperature; 2]>,
    /// The first moment and the last that stand in the record, without offers and answers; `None` while nothing else is.
    pub span: Option<[Moment; 2]>,
    /// What the clocks of all steps counted.
    pub worked: Time,
    /// Whether a clock did not count for a while, so that more was worked than it says.
    pub broken: bool,
}

/// Cuts of one kind.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CutsDone {
    /// Which kind.
    pub kind: CutMadeKind,
    /// How many.
    pub count: u32,
    /// When the first was entered.
    pub first: Moment,
    /// When the last was.
    pub last: Moment,
}

/// How one step ended.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepDone {
    /// Which.
    pub step: WorkStep,
    /// How it stands.
    pub how: StepHow,
    /// When it was done or left out; `None` while it is neither.
    pub at: Option<Moment>,
    /// Why it was left out; empty where nobody said.
    pub why: String,
    /// What its clock counted.
    pub worked: Time,
}

/// An instrument that readings of the part were taken with.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Used {
    /// Which.
    pub with: UsedWith,
    /// The largest permissible error that was counted for it, either way; for [`UsedWith::Usual`] by the table of its kind.
    pub error: Length,
    /// How many readings were taken with it.
    pub readings: u32,
}

/// Which instrument.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", content = "place", rename_all = "kebab-case")]
pub enum UsedWith {
    /// One of the shop's list, by its place.
    Listed(u8),
    /// None was named: a usual micrometer.
    Usual,
    /// The same for a runout: a usual indicator.
    UsualIndicator,
    /// A roughness tester.
    RoughnessTester,
}

/// What the record of a job says of the whole work; `steps` are the steps as [`steps`](super::steps()) gives them.
///
/// Events that were struck out say nothing.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, work::{steps, work_done}};
/// let job = Job::default();
/// let done = work_done(&job, &steps(&job, &plan(&job)));
/// assert!(done.cuts.is_empty() && done.span.is_none());
/// ```
pub fn work_done(job: &Job, steps: &[StepNow]) -> WorkDone {
    let record = &job.record;
    let cuts = cuts_done(record);
    let received = before_first_cut(record);
    let left: Vec<usize> = if cuts.is_empty() {
        Vec::new()
    } else {
        since_last_cut(job).into_iter().map(|(at, _)| at).collect()
    };
    let proof: Vec<&Reading> = received
        .iter()
        .chain(&left)
        .filter_map(|at| match &record.events.get(*at)?.what {
            What::Reading(reading) => Some(reading),
            _ => None,
        })
        .collect();
    let clocks = WorkStep::ALL.map(|step| clock_of(record, step));
    // An offer is made before the work, and an answer bears the moment of its owner's clock.
    let moments = || {
        let worked = record
            .standing()
            .filter(|(_, event)| !event.what.is_with_owner());
        worked.map(|(_, event)| event.at)
    };
    WorkDone {
        cuts,
        steps: steps.iter().map(|step| step_done(record, step)).collect(),
        notes: record
            .standing()
            .filter(|(_, event)| matches!(event.what, What::Note(_)))
            .map(|(at, _)| at)
            .collect(),
        used: used(job, &proof),
        temperatures: temperatures(&proof),
        span: moments().min().zip(moments().max()).map(|(a, b)| [a, b]),
        worked: clocks
            .iter()
            .fold(Time::ZERO, |sum, clock| sum + clock.counted),
        broken: clocks.iter().any(|clock| clock.broken),
        received,
        left,
    }
}

/// The readings that stand before the first cut that does.
fn before_first_cut(record: &Record) -> Vec<usize> {
    record
        .standing()
        .take_while(|(_, event)| !matches!(event.what, What::Cut(_)))
        .filter(|(_, event)| matches!(event.what, What::Reading(_)))
        .map(|(at, _)| at)
        .collect()
}

fn cuts_done(record: &Record) -> Vec<CutsDone> {
    let mut done: Vec<CutsDone> = Vec::new();
    for (_, event) in record.standing() {
        let What::Cut(cut) = &event.what else {
            continue;
        };
        match done.iter_mut().find(|it| it.kind == cut.kind) {
            Some(it) => {
                it.count = it.count.saturating_add(1);
                it.last = event.at;
            }
            None => done.push(CutsDone {
                kind: cut.kind,
                count: 1,
                first: event.at,
                last: event.at,
            }),
        }
    }
    done
}

fn step_done(record: &Record, now: &StepNow) -> StepDone {
    let ended = record.standing().rev().find_map(|(_, event)| {
        let What::Step(StepEvent { step, state }) = &event.what else {
            return None;
        };
        let ends = matches!(state, StepState::Done | StepState::Skipped(_));
        (*step == now.step && ends).then_some((event.at, state))
    });
    let ended = ended.filter(|_| now.how.is_over());
    StepDone {
        step: now.step,
        how: now.how,
        at: ended.map(|(at, _)| at),
        why: match ended {
            Some((_, StepState::Skipped(why))) => why.trim().to_owned(),
            _ => String::new(),
        },
        worked: now.clock.counted,
    }
}

fn used(job: &Job, readings: &[&Reading]) -> Vec<Used> {
    let mut used: Vec<Used> = Vec::new();
    for reading in readings {
        let with = match (&reading.of, reading.instrument) {
            (Measured::Roughness, _) => UsedWith::RoughnessTester,
            (_, Some(place)) => UsedWith::Listed(place),
            (Measured::Runout, None) => UsedWith::UsualIndicator,
            (_, None) => UsedWith::Usual,
        };
        let size = reading.value.value();
        let error = instrument_figures(job, reading.instrument, &reading.of, size).error;
        match used.iter_mut().find(|it| it.with == with) {
            Some(it) => {
                it.error = it.error.max(error);
                it.readings = it.readings.saturating_add(1);
            }
            None => used.push(Used {
                with,
                error,
                readings: 1,
            }),
        }
    }
    used
}

fn temperatures(readings: &[&Reading]) -> Option<[Temperature; 2]> {
    let known = || {
        let entered = readings.iter().filter_map(|it| it.temperature.as_ref());
        entered.map(Entered::value)
    };
    let coldest = known().reduce(|a, b| if b < a { b } else { a })?;
    let warmest = known().reduce(|a, b| if a < b { b } else { a })?;
    Some([coldest, warmest])
}

#[cfg(test)]
#[path = "done_tests.rs"]
mod tests;
