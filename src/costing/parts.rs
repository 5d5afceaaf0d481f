//! The time of a rework by the steps of the work at the machine, each at the pace that was learned of it.
//!
//! What is reckoned by the pass, the change of tool or the edge comes to the step in which it is done.

use serde::Serialize;

use super::planned::{FeedLine, Feeding, Operations, StepLine};
use super::step::Step;
use super::three_point::ThreePoint;
use crate::job::WorkStep;
use crate::quantity::Time;

/// Part of a step's time, or of what the lathe feeds, in one step of the work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimePart {
    /// The step of the work; `None` for packing.
    pub work: Option<WorkStep>,
    /// What of it.
    pub of: PartOf,
    /// How often.
    pub count: u32,
    /// How long each time, at the usual pace.
    pub each: ThreePoint,
    /// How much longer it takes here: 1 where nothing was learned, or the person typed the time.
    pub pace: f64,
    /// Whether the person typed the time.
    pub typed: bool,
}

/// What a part is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PartOf {
    /// A step beside the feeding.
    Handling(Step),
    /// What the lathe feeds.
    Fed(Feeding),
}

/// How long a step of the work takes against the usual, as earlier jobs on the lathe taught.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pace {
    /// Which.
    pub step: WorkStep,
    /// Real over planned time, within [`LEAST_PACE`] and [`MOST_PACE`].
    pub factor: f64,
    /// From how many jobs.
    pub jobs: u32,
}

/// The least factor that is believed: under it a clock was started late or stopped early. Common practice, no source.
pub const LEAST_PACE: f64 = 0.2;

/// The largest factor that is believed: over it the clock ran through the lunch break. Common practice, no source.
pub const MOST_PACE: f64 = 5.0;

impl Pace {
    /// A pace, its factor brought into what is believed.
    pub const fn new(step: WorkStep, factor: f64, jobs: u32) -> Self {
        let factor = if factor.is_finite() {
            factor.clamp(LEAST_PACE, MOST_PACE)
        } else {
            1.0
        };
        Self { step, factor, jobs }
    }
}

impl TimePart {
    /// How long each time, at the pace of it.
    #[expect(clippy::float_cmp, reason = "exactly one leaves a time as it is")]
    pub fn paced(&self) -> ThreePoint {
        if self.pace == 1.0 {
            return self.each;
        }
        let of = |time: Time| time * self.pace;
        let (low, likely, high) = (self.each.low(), self.each.likely(), self.each.high());
        // What would be longer than any job stays as it is.
        ThreePoint::new(of(low), of(likely), of(high)).unwrap_or(self.each)
    }
}

/// All parts of the lines of steps and feeding.
pub(super) fn parts(
    operations: &Operations,
    steps: &[StepLine],
    feeding: &[FeedLine],
) -> Vec<TimePart> {
    let passes = Passes::of(operations);
    let mut parts = Vec::new();
    for line in steps {
        for (work, count) in passes.counts(line.step, line.count) {
            let learned = work.and_then(|work| operations.pace_of(work));
            let typed = operations.typed.contains(&line.step);
            parts.push(TimePart {
                work,
                of: PartOf::Handling(line.step),
                count,
                each: line.each,
                pace: learned.filter(|_| !typed).unwrap_or(1.0),
                typed,
            });
        }
    }
    for line in feeding {
        for (work, share) in passes.shares(line.feeding) {
            parts.push(TimePart {
                work: Some(work),
                of: PartOf::Fed(line.feeding),
                count: 1,
                each: line.together.part(share),
                pace: operations.pace_of(work).unwrap_or(1.0),
                typed: false,
            });
        }
    }
    parts
}

/// The time of a line from its parts: as it is where they have one pace, else what they come to on average.
pub(super) fn paced_line(line: ThreePoint, of: PartOf, parts: &[TimePart]) -> ThreePoint {
    let own: Vec<&TimePart> = parts.iter().filter(|part| part.of == of).collect();
    let weight = |part: &TimePart| match of {
        PartOf::Handling(_) => f64::from(part.count),
        // Parts of what is fed are shares of it, not draws.
        PartOf::Fed(_) => part.each.likely().to_seconds(),
    };
    let all: f64 = own.iter().map(|part| weight(part)).sum();
    let Some(first) = own.first().filter(|_| 0.0 < all) else {
        return line;
    };
    let alike = own
        .iter()
        .all(|part| part.pace.total_cmp(&first.pace).is_eq());
    let pace = if alike {
        first.pace
    } else {
        own.iter().map(|part| weight(part) * part.pace).sum::<f64>() / all
    };
    TimePart {
        each: line,
        pace,
        ..**first
    }
    .paced()
}

/// How many passes, and the share of the feeding of all of them that is roughing.
struct Passes {
    rough: u32,
    last: u32,
    rough_share: f64,
}

impl Passes {
    fn of(operations: &Operations) -> Self {
        let all = u32::try_from(operations.passes.len()).unwrap_or(u32::MAX);
        let last = operations.last_passes.min(all);
        let rough = all - last;
        let count = usize::try_from(rough).unwrap_or(usize::MAX);
        let fed: Time = operations.passes.iter().copied().sum();
        let roughing: Time = operations.passes.iter().take(count).copied().sum();
        let rough_share = if last == 0 {
            1.0
        } else if fed > Time::ZERO {
            roughing / fed
        } else {
            0.0
        };
        Self {
            rough,
            last,
            rough_share,
        }
    }

    /// In which steps of the work something is done, and how often, where it is done `all` times.
    fn counts(&self, what: Step, all: u32) -> Vec<(Option<WorkStep>, u32)> {
        let once = |step| vec![(Some(step), all)];
        match what {
            Step::SetDepth | Step::Return | Step::Measure => {
                // What was polished is measured as well.
                let polished = all.saturating_sub(self.rough.saturating_add(self.last));
                [
                    (WorkStep::Rough, self.rough),
                    (WorkStep::LastCuts, self.last),
                    (WorkStep::Polish, polished),
                ]
                .into_iter()
                .filter(|(_, count)| 0 < *count)
                .map(|(step, count)| (Some(step), count))
                .collect()
            }
            Step::ToolChange | Step::Regrind if self.rough == 0 => once(WorkStep::LastCuts),
            Step::ToolChange | Step::Regrind => once(WorkStep::Rough),
            Step::ReceiveAndCheck => once(WorkStep::Receive),
            Step::Hold => once(WorkStep::Hold),
            Step::DialIn => once(WorkStep::DialIn),
            Step::CutOff => once(WorkStep::CutOff),
            Step::Face => once(WorkStep::Face),
            Step::Centre => once(WorkStep::Centre),
            Step::Polish => once(WorkStep::Polish),
            Step::Chamfer => once(WorkStep::Chamfer),
            Step::Clean => once(WorkStep::Clean),
            Step::FinalCheck => once(WorkStep::Check),
            Step::Pack => vec![(None, all)],
        }
    }

    /// In which steps of the work something is fed, and which share of it.
    fn shares(&self, what: Feeding) -> Vec<(WorkStep, f64)> {
        match what {
            Feeding::Parting => vec![(WorkStep::CutOff, 1.0)],
            Feeding::Facing => vec![(WorkStep::Face, 1.0)],
            Feeding::Centring => vec![(WorkStep::Centre, 1.0)],
            Feeding::Turning => [
                (WorkStep::Rough, self.rough, self.rough_share),
                (WorkStep::LastCuts, self.last, 1.0 - self.rough_share),
            ]
            .into_iter()
            .filter(|(_, count, _)| 0 < *count)
            .map(|(step, _, share)| (step, share))
            .collect(),
        }
    }
}
