//! The steps of the work in working order, each with what to dial in and what to watch.

use serde::Serialize;

use crate::job::{Job, WorkStep};
use crate::plan::Plan;
use crate::quantity::{Length, RotationalSpeed, Time};

/// One step of the work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepNow {
    /// Which.
    pub step: WorkStep,
    /// How it stands.
    pub how: StepHow,
    /// The one figure to set, dial or mark; `None` where there is none.
    pub dial: Option<Dial>,
    /// Spindle speed; `None` where the spindle stands or the plan has none.
    pub spindle_speed: Option<RotationalSpeed>,
    /// How long it takes by the plan, as a range of low, likely and high; `None` where the plan has none.
    pub planned: Option<[Time; 3]>,
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

/// The figure of a step.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "value", rename_all = "kebab-case")]
pub enum Dial {
    /// Where to mark the cut, from the free end.
    CutMark(Length),
    /// How much of the head to grip.
    Grip(Length),
    /// The most that the indicator may still show.
    Runout(Length),
    /// How much to face off.
    Facing(Length),
    /// How deep to drill for the countersink.
    CentreDepth(Length),
    /// The infeed of the next pass, as the dial is marked; the advice has the rest.
    Infeed(Length),
    /// What to polish off the diameter.
    PolishOff(Length),
    /// The chamfer along the axis.
    Chamfer(Length),
    /// The diameter wanted.
    Diameter(Length),
}

/// What to watch at a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum StepWarning {
    /// Take the chuck key out before the spindle turns.
    ChuckKey,
}

/// The steps of a job in working order; those that the plan has no work for are left out.
pub fn steps(job: &Job, plan: &Plan) -> Vec<StepNow> {
    let _ = (job, plan);
    Vec::new()
}
