//! The steps of the work in working order, each with what to dial in and what to watch.

use serde::Serialize;

use super::clock::{Clock, clock_of};
use super::figures::{AtStep, Dial, StepFigure, dial, figures, speed_and_feed};
use super::times;
use super::warnings::{StepWarning, warnings};
use crate::costing::Spread;
use crate::cutting::passes::PassKind;
use crate::job::{CentreOrder, Job, Record, StepState, What, WorkStep};
use crate::plan::{Checked, Plan};
use crate::quantity::{Feed, Length, RotationalSpeed, Time};
use crate::rework::CutKind;

/// One step of the work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepNow {
    /// Which.
    pub step: WorkStep,
    /// How it stands.
    pub how: StepHow,
    /// Its clock.
    pub clock: Clock,
    /// The one figure to set, dial or mark; `None` where there is none.
    pub dial: Option<Dial>,
    /// Further figures, the most needed first.
    pub figures: Vec<StepFigure>,
    /// Spindle speed that the lathe has; `None` where the spindle stands, or the plan has none.
    pub spindle_speed: Option<RotationalSpeed>,
    /// Feed; `None` where nothing is fed by the lathe, or the plan has none.
    pub feed: Option<Feed>,
    /// How long it takes by the plan: one time in ten it is quicker than the first, as often quicker as slower than the
    /// second, one time in ten slower than the third, as the plan's total; `None` where the plan has none.
    pub planned: Option<[Time; 3]>,
    /// The mean of it: these add up to the mean of the plan's total without packing, which medians do not.
    pub planned_mean: Option<Time>,
    /// Cautions and things to watch, the most pressing first.
    pub warnings: Vec<StepWarning>,
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum StepHow {
    /// Not begun.
    ToDo,
    /// Its clock runs.
    Running,
    /// Begun, and its clock stands.
    Paused,
    /// Done.
    Done,
    /// Left out.
    Skipped,
}

impl StepHow {
    /// Whether nothing is left to do.
    pub const fn is_over(self) -> bool {
        matches!(self, Self::Done | Self::Skipped)
    }
}

/// The steps of a job in working order; those that the plan has no work for are left out. Pure and total.
///
/// The centre comes before facing where the job says so. Checking, holding, dialling in, chamfering (every turned edge is
/// deburred), the last check and cleaning are never left out. A step for which the plan has no work but that was begun
/// or done all the same, as when the job was changed at the lathe, stays.
///
/// # Source
/// The order: common practice, no source.
/// # Example
/// ```
/// use skimwright::{job::{Job, WorkStep}, plan::plan, work::{Dial, steps}};
/// let job = Job::default();
/// let steps = steps(&job, &plan(&job));
/// let cut = steps.iter().find(|it| it.step == WorkStep::CutOff).unwrap();
/// // 29 mm of 80 fall off or go to dust.
/// assert!(matches!(cut.dial, Some(Dial::CutMark(mark)) if (mark.to_mm() - 29.0).abs() < 1e-9));
/// ```
pub fn steps(job: &Job, plan: &Plan) -> Vec<StepNow> {
    let checked = Checked::new(job);
    let mut order = WorkStep::ALL;
    if job.shop.centre_order == CentreOrder::BeforeFacing {
        for step in &mut order {
            *step = match *step {
                WorkStep::Centre => WorkStep::Face,
                WorkStep::Face => WorkStep::Centre,
                other => other,
            };
        }
    }
    order
        .into_iter()
        .filter_map(|step| {
            let how = how_of(&job.record, step);
            if !has_work(plan, step) && how == StepHow::ToDo {
                return None;
            }
            let at = AtStep {
                job,
                checked: &checked,
                plan,
                step,
            };
            let (spindle_speed, feed) = speed_and_feed(&at);
            let time = plan.time.as_ref();
            let spread = time.and_then(|time| times::spread(time, &[step]));
            Some(StepNow {
                step,
                how,
                clock: clock_of(&job.record, step),
                dial: dial(&at),
                figures: figures(&at),
                spindle_speed,
                feed,
                planned: spread.map(|it| [it.low, it.likely, it.high]),
                planned_mean: spread.map(|it| it.mean),
                warnings: warnings(&at),
            })
        })
        .collect()
}

/// The step to work on, by its place: the one whose clock runs, else the first in working order that is neither done nor
/// skipped; the number of steps when nothing is left.
pub fn current(steps: &[StepNow]) -> usize {
    let runs = steps.iter().position(|it| it.how == StepHow::Running);
    let open = || steps.iter().position(|it| !it.how.is_over());
    runs.or_else(open).unwrap_or(steps.len())
}

/// The steps that are neither done nor left out, in working order.
pub fn open_steps(steps: &[StepNow]) -> Vec<WorkStep> {
    let open = steps.iter().filter(|it| !it.how.is_over());
    open.map(|it| it.step).collect()
}

/// Those of the open steps that are open whatever the lathe and the tool are: the ones that were begun, and the ones that
/// no plan leaves out.
///
/// A job that was handed back is without lathe and tool, and what is planned of it then is not what its shop planned: a
/// step of its cuts may be there or be missing. So of these steps only what the record says counts, and there may be more
/// that are open; never fewer.
pub fn surely_open_steps(steps: &[StepNow]) -> Vec<WorkStep> {
    let open = steps.iter().filter(|it| !it.how.is_over());
    let sure = open.filter(|it| it.how != StepHow::ToDo || is_always_there(it.step));
    sure.map(|it| it.step).collect()
}

/// How long the steps that are neither done nor skipped take by the plan, packing not counted; what was worked on a step
/// that is begun is not taken off. `None` where the plan has no time.
pub fn time_left(steps: &[StepNow], plan: &Plan) -> Option<Spread> {
    let left = steps.iter().filter(|it| !it.how.is_over());
    let left: Vec<WorkStep> = left.map(|it| it.step).collect();
    times::spread(plan.time.as_ref()?, &left)
}

/// How a step stands, from the record.
///
/// Who starts a step that was done has reopened it. Starting a step pauses the one that runs: there is one pair of hands.
pub fn how_of(record: &Record, step: WorkStep) -> StepHow {
    let mut how = StepHow::ToDo;
    let mut begun = false;
    for (_, event) in record.standing() {
        let What::Step(event) = &event.what else {
            continue;
        };
        let own = event.step == step;
        how = match (&event.state, how) {
            (StepState::Started, _) if own => {
                begun = true;
                StepHow::Running
            }
            (StepState::Started, StepHow::Running) => StepHow::Paused,
            (StepState::Paused, StepHow::Running) if own => StepHow::Paused,
            (StepState::Done, _) if own => StepHow::Done,
            (StepState::Skipped(_), _) if own => StepHow::Skipped,
            (StepState::Reopened, _) if own && begun => StepHow::Paused,
            (StepState::Reopened, _) if own => StepHow::ToDo,
            _ => how,
        };
    }
    how
}

/// Whether the plan has work for a step.
fn has_work(plan: &Plan, step: WorkStep) -> bool {
    if is_always_there(step) {
        return true;
    }
    let cut = plan.cut_off.as_ref();
    let stock = plan.stock_off.as_ref();
    let has = |kind| stock.is_some_and(|it| it.passes.iter().any(|pass| pass.kind == kind));
    match step {
        WorkStep::CutOff => cut.is_some_and(|it| it.kind == CutKind::CutAndFace),
        WorkStep::Face => cut.is_some_and(|it| Length::ZERO < it.facing),
        WorkStep::Centre => plan.centre.is_some(),
        WorkStep::Rough => has(PassKind::Rough),
        WorkStep::LastCuts => has(PassKind::Last),
        WorkStep::Polish => has(PassKind::Polish),
        WorkStep::Receive
        | WorkStep::Hold
        | WorkStep::DialIn
        | WorkStep::Chamfer
        | WorkStep::Check
        | WorkStep::Clean => false,
    }
}

/// Whether no plan leaves a step out.
const fn is_always_there(step: WorkStep) -> bool {
    matches!(
        step,
        WorkStep::Receive
            | WorkStep::Hold
            | WorkStep::DialIn
            | WorkStep::Chamfer
            | WorkStep::Check
            | WorkStep::Clean
    )
}

#[cfg(test)]
#[path = "steps_tests.rs"]
mod tests;
