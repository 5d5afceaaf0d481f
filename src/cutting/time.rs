//! How long the turning takes: cutting, approach, return, setting and measuring, pass by pass.
//!
//! An estimate. The cutting time is what the feed says; a geared lathe may have no nearer speed than a step
//! lower, so the high value counts one step of 1.25. Handling varies by a third either way.

use serde::Serialize;

use super::passes::{Pass, PassKind, TimeRange};
use super::turning::{TURNING_SOURCE, turning_time};
use crate::job::Field;
use crate::part::SAME;
use crate::plan::Checked;
use crate::quantity::{Feed, Length, RotationalSpeed, Time};
use crate::working::{Figure, Input, Meaning, Range, Value, Working};

/// One step of a geared head-stock: the series R 10 of ISO 3 grows by 1.25. Common practice, no source.
const SPEED_STEP: f64 = 1.25;

/// How much handling varies: 0.15 to 0.3 min for setting and 0.3 to 0.5 min for measuring are usual (from memory).
const HANDLING_SPREAD: f64 = 1.0 / 3.0;

/// What each pass takes beside cutting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct PassTimes {
    approach: Length,
    set: Time,
    back: Time,
    measure: Time,
    polish: Time,
}

impl PassTimes {
    pub(crate) fn read(checked: &Checked) -> Option<Self> {
        Some(Self {
            approach: checked.length(Field::Approach)?,
            set: checked.time(Field::SetTime)?,
            back: checked.time(Field::ReturnTime)?,
            measure: checked.time(Field::MeasureTime)?,
            polish: checked.time(Field::PolishTime)?,
        })
    }

    fn handling(&self) -> Time {
        self.set + self.back + self.measure
    }
}

/// The whole turning time.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CycleTime {
    /// All passes; low and high in its range.
    pub total: Figure<Time>,
    /// Of which the tool feeds.
    pub cutting: Time,
    /// Of which setting, returning and measuring.
    pub handling: Time,
    /// Of which polishing.
    pub polishing: Time,
}

/// How long one pass takes.
pub(crate) fn pass_time(
    times: &PassTimes,
    kind: PassKind,
    travel: Length,
    feed: (Feed, RotationalSpeed),
) -> TimeRange {
    let (cutting, handling) = shares(times, kind, travel, feed);
    TimeRange {
        low: cutting + handling * (1.0 - HANDLING_SPREAD),
        likely: cutting + handling,
        high: cutting * SPEED_STEP + handling * (1.0 + HANDLING_SPREAD),
    }
}

/// Time under feed, and all other time, of a pass.
fn shares(
    times: &PassTimes,
    kind: PassKind,
    travel: Length,
    (feed, speed): (Feed, RotationalSpeed),
) -> (Time, Time) {
    match kind {
        // Polishing is by feel: its own time stands for setting and rubbing, and it is measured.
        PassKind::Polish => (Time::ZERO, times.polish + times.measure),
        PassKind::Rough | PassKind::Last => {
            // A pass that meets no metal is air; only the handling is lost.
            let path = if travel.to_mm() > SAME {
                travel + times.approach
            } else {
                Length::ZERO
            };
            (turning_time(path, feed, speed), times.handling())
        }
    }
}

/// The whole turning time of a list of passes.
///
/// # Source
/// As [`turning_time`] for the cutting; the sum with handling is common practice. Spreads: the head of this file.
pub(crate) fn cycle_time(passes: &[Pass], times: &PassTimes) -> CycleTime {
    let mut cutting = Time::ZERO;
    let mut handling = Time::ZERO;
    let mut polishing = Time::ZERO;
    for pass in passes {
        let (feeding, other) = shares(
            times,
            pass.kind,
            pass.travel,
            (pass.feed, pass.spindle_speed),
        );
        cutting += feeding;
        match pass.kind {
            PassKind::Polish => polishing += other,
            PassKind::Rough | PassKind::Last => handling += other,
        }
    }
    let low = passes.iter().map(|pass| pass.time.low).sum();
    let high = passes.iter().map(|pass| pass.time.high).sum();
    let input = |symbol, meaning, time| Input::new(symbol, meaning, Value::Time(time));
    CycleTime {
        total: Figure {
            value: cutting + handling + polishing,
            range: Some(Range { low, high }),
            working: Working {
                symbol: "t",
                formula: "t₁ + t₂ + t₃",
                parts: &[
                    "t₁ = Σ (l + a)/(f · n)",
                    "t₂ = i · (set + return + measure)",
                    "t₃ = polish + measure",
                ],
                inputs: vec![
                    input("t₁", Meaning::CuttingTime, cutting),
                    input("t₂", Meaning::HandlingTime, handling),
                    input("t₃", Meaning::PolishingTime, polishing),
                ],
                source: TURNING_SOURCE,
            },
        },
        cutting,
        handling,
        polishing,
    }
}
