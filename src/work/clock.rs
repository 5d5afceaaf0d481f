//! How long a step took, by the events of its clock.
//!
//! Nothing ticks: a clock is the moments at which the step was started and stopped, so that it outlives a locked phone,
//! a closed page and a flat battery. There is one pair of hands: starting a step stops the clocks of all others.

use serde::Serialize;

use crate::job::{Event, Moment, Record, StepState, What, WorkStep};
use crate::quantity::Time;

/// The longest stretch that counts: who works on one step for a day forgot to stop its clock.
const LONGEST_STRETCH: u64 = 24 * 60 * 60;

/// The clock of a step.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Clock {
    /// What ran up until it was last stopped.
    pub counted: Time,
    /// Since when it runs; `None` while it stands.
    pub since: Option<Moment>,
    /// Whether the device's clock was set back, or the step ran longer than a day, so that it does not count.
    pub broken: bool,
}

/// The clock of a step, from the record.
///
/// It runs from its start to the next pause, end or skip of the step, or the start of another one; several stretches
/// add up. A second start while it runs is none. A stretch in which any later event bears an earlier moment, or which
/// is longer than a day, is not counted and marks the clock as broken: what is counted then is less than what was worked.
/// An owner's answer bears the moment of another device, and tells nothing of this one.
///
/// # Accuracy
/// That of the device's clock, in whole seconds. One set forward by less than a day cannot be told from work.
/// # Example
/// ```
/// use skimwright::job::{Event, Moment, Record, StepEvent, StepState, What, WorkStep};
/// use skimwright::quantity::Time;
/// use skimwright::work::clock_of;
/// let event = |seconds, state| Event {
///     at: Moment::unix_seconds(seconds),
///     struck: false,
///     what: What::Step(StepEvent { step: WorkStep::Face, state }),
/// };
/// let events = vec![event(100, StepState::Started), event(190, StepState::Done)];
/// let record = Record { events, ..Record::default() };
/// assert_eq!(clock_of(&record, WorkStep::Face).counted, Time::seconds(90.0));
/// ```
pub fn clock_of(record: &Record, step: WorkStep) -> Clock {
    let mut clock = Clock::default();
    // Only while the clock runs: the moment of the newest event, and whether one before it was later.
    let (mut newest, mut set_back) = (Moment::default(), false);
    let here = record
        .standing()
        .filter(|(_, event)| !matches!(event.what, What::Answered(_)));
    for (_, event) in here {
        let Some(since) = clock.since else {
            if is_start_of(event, step) {
                clock.since = Some(event.at);
                (newest, set_back) = (event.at, false);
            }
            continue;
        };
        set_back |= event.at < newest;
        newest = newest.max(event.at);
        if stops(event, step) {
            clock.since = None;
            match between(since, event.at).filter(|_| !set_back) {
                Some(time) => clock.counted += time,
                None => clock.broken = true,
            }
        }
    }
    // A clock that was set back while it runs cannot come right any more.
    clock.broken |= clock.since.is_some() && set_back;
    clock
}

/// What a clock shows at a moment: what it counted, and what runs. A stretch that cannot be counted is left out, as
/// when the device's clock was set back.
///
/// # Example
/// ```
/// use skimwright::job::Moment;
/// use skimwright::quantity::Time;
/// use skimwright::work::{Clock, elapsed};
/// let clock = Clock {
///     counted: Time::minutes(2.0),
///     since: Some(Moment::unix_seconds(1000)),
///     broken: false,
/// };
/// assert_eq!(elapsed(clock, Moment::unix_seconds(1060)), Time::minutes(3.0));
/// assert_eq!(elapsed(clock, Moment::unix_seconds(900)), Time::minutes(2.0));
/// ```
pub fn elapsed(clock: Clock, now: Moment) -> Time {
    let running = clock.since.and_then(|since| between(since, now));
    clock.counted + running.unwrap_or_default()
}

/// From one moment to a later one; `None` when it is earlier, or more than a day later.
fn between(from: Moment, to: Moment) -> Option<Time> {
    let seconds = to.to_unix_seconds().checked_sub(from.to_unix_seconds())?;
    let seconds = u32::try_from(seconds.min(LONGEST_STRETCH + 1)).ok()?;
    (u64::from(seconds) <= LONGEST_STRETCH).then(|| Time::seconds(f64::from(seconds)))
}

fn is_start_of(event: &Event, step: WorkStep) -> bool {
    matches!(&event.what, What::Step(it) if it.step == step && it.state == StepState::Started)
}

/// Whether an event stops the running clock of a step.
fn stops(event: &Event, step: WorkStep) -> bool {
    match &event.what {
        What::Step(it) if it.step == step => it.state != StepState::Started,
        What::Step(it) => it.state == StepState::Started,
        _ => false,
    }
}

#[cfg(test)]
#[path = "clock_tests.rs"]
mod tests;
