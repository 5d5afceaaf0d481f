//! The steps and feeding times of one planned rework, with counts, shares and the total.

use serde::Serialize;

use super::distribution::{Counted, Spread};
use super::parts::{Pace, PartOf, TimePart, paced_line, parts};
use super::severing::Severing;
use super::step::{Per, Step, StepContext, usual};
use super::three_point::{ThreePoint, ThreePointError};
use crate::job::WorkStep;
use crate::quantity::Time;
use crate::working::Figure;

/// One step of a geared head-stock: the series R 10 of ISO 3 grows by 1.25. Common practice, no source.
const SPEED_STEP: f64 = 1.25;

/// How near the spindle comes to the speed that the feeding times were reckoned with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum SpindleSteps {
    /// The speed is one that the machine has.
    Known,
    /// A geared machine may have no nearer speed than a step of 1.25 lower.
    NearestLower,
}

/// What is done in a rework, as far as it takes time.
#[derive(Clone, Debug, PartialEq)]
pub struct Operations {
    /// How the part is held and cut off.
    pub context: StepContext,
    /// How long the tool feeds in each turning pass, in order; a polishing pass is not among them.
    pub passes: Vec<Time>,
    /// How many of these, at the end, are last cuts: no more than there are.
    pub last_passes: u32,
    /// How long the tool feeds in facing; `None` where the end is not faced.
    pub facing: Option<Time>,
    /// How long the drill feeds; `None` where no centre is made.
    pub centring: Option<Time>,
    /// How near the spindle comes to the speeds of all these.
    pub spindle: SpindleSteps,
    /// Changes of tool, turned inserts among them.
    pub tool_changes: u32,
    /// Edges ground anew.
    pub regrinds: u32,
    /// Whether it is brought to size by polishing.
    pub polished: bool,
    /// The person's own times in the place of the usual ones; the last one for a step counts. One for
    /// [`Step::CutOff`] holds setting up and cutting through.
    pub own: Vec<(Step, ThreePoint)>,
    /// Steps whose time the person typed: no learned pace changes them.
    pub typed: Vec<Step>,
    /// What earlier jobs taught of the steps of the work.
    pub paces: Vec<Pace>,
}

/// A step with its count.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StepLine {
    /// Which step.
    pub step: Step,
    /// How often it is done, at least once.
    pub count: u32,
    /// How long it takes each time.
    pub each: ThreePoint,
    /// Its part of the mean of the total, all its times together.
    pub share: f64,
}

/// What the lathe feeds for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Feeding {
    /// Parting off.
    Parting,
    /// Facing.
    Facing,
    /// Drilling the centre.
    Centring,
    /// All turning passes.
    Turning,
}

/// A feeding time.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FeedLine {
    /// What for.
    pub feeding: Feeding,
    /// In how many passes.
    pub count: u32,
    /// All passes together: one speed of the spindle serves them all, so that they are long or short together.
    pub together: ThreePoint,
    /// Its part of the mean of the total.
    pub share: f64,
}

/// All that a rework takes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PlannedTime {
    /// The steps beside the feeding, in working order; those not done are left out.
    pub steps: Vec<StepLine>,
    /// What the lathe feeds.
    pub feeding: Vec<FeedLine>,
    /// The total as a spread.
    pub spread: Spread,
    /// The likely total with its range and working.
    pub total: Figure<Time>,
    /// The steps of the work whose time was scaled by what earlier jobs taught.
    pub learned: Vec<Pace>,
    /// The same time by the steps of the work.
    #[serde(skip)]
    pub parts: Vec<TimePart>,
}

/// Lists the steps of a rework and adds them up.
///
/// # Errors
/// [`ThreePointError`] when a feeding time is below zero, or so long that no total comes of it.
/// # Accuracy
/// That of the single times; for the sum see [`Spread::of`].
/// # Source
/// Handling, machining and tool changes add up as in M. P. Groover, Fundamentals of Modern Manufacturing, machining
/// economics. Which step is counted by what, and that all of a step of the work goes at its learned pace: common
/// practice, no source.
/// # Example
/// ```
/// use skimwright::costing::{HoldingWay, Operations, SpindleSteps, Step, StepContext, planned};
/// use skimwright::quantity::Time;
/// let operations = Operations {
///     context: StepContext { holding: HoldingWay::Collet, severing: None },
///     passes: vec![Time::minutes(1.0); 4],
///     last_passes: 2,
///     facing: None,
///     centring: None,
///     spindle: SpindleSteps::Known,
///     tool_changes: 0,
///     regrinds: 0,
///     polished: false,
///     own: vec![],
///     typed: vec![],
///     paces: vec![],
/// };
/// let time = planned(&operations).unwrap();
/// let measured = time.steps.iter().find(|line| line.step == Step::Measure).unwrap();
/// assert_eq!(measured.count, 4);
/// assert_eq!(time.spread.feeding_mean, Time::minutes(4.0));
/// ```
pub fn planned(operations: &Operations) -> Result<PlannedTime, ThreePointError> {
    let mut steps = step_lines(operations);
    let mut feeding = feed_lines(operations)?;
    let parts = parts(operations, &steps, &feeding);
    let handling = handling(&steps, &parts);
    for line in &mut steps {
        line.each = paced_line(line.each, PartOf::Handling(line.step), &parts);
    }
    for line in &mut feeding {
        line.together = paced_line(line.together, PartOf::Fed(line.feeding), &parts);
    }
    let fed: Vec<Counted> = feeding
        .iter()
        .map(|line| Counted {
            each: line.together,
            count: 1,
        })
        .collect();
    let spread = Spread::of(&handling, &fed);
    for line in &mut steps {
        line.share = share(line.each.mean() * f64::from(line.count), spread.mean);
    }
    for line in &mut feeding {
        line.share = share(line.together.mean(), spread.mean);
    }
    Ok(PlannedTime {
        steps,
        feeding,
        spread,
        total: spread.figure(),
        learned: operations.learned(&parts),
        parts,
    })
}

/// What is handled, each step's times as one where they are alike.
fn handling(steps: &[StepLine], parts: &[TimePart]) -> Vec<Counted> {
    let mut draws: Vec<Counted> = Vec::new();
    for line in steps {
        let from = draws.len();
        let own = parts
            .iter()
            .filter(|part| part.of == PartOf::Handling(line.step));
        for part in own {
            let (each, count) = (part.paced(), part.count);
            match draws.iter_mut().skip(from).find(|it| it.each == each) {
                Some(alike) => alike.count = alike.count.saturating_add(count),
                None => draws.push(Counted { each, count }),
            }
        }
    }
    draws
}

/// The part of a whole; nought of nothing.
fn share(part: Time, whole: Time) -> f64 {
    if whole > Time::ZERO {
        part / whole
    } else {
        0.0
    }
}

/// The steps that are done, their shares still open.
fn step_lines(operations: &Operations) -> Vec<StepLine> {
    Step::ALL
        .into_iter()
        .map(|step| StepLine {
            step,
            count: count(step, operations),
            each: operations.time_of(step),
            share: 0.0,
        })
        .filter(|line| line.count > 0)
        .collect()
}

/// How often a step is done.
fn count(step: Step, operations: &Operations) -> u32 {
    match step.per() {
        Per::Pass if step == Step::Measure => {
            // What was polished is measured as well.
            operations
                .pass_count()
                .saturating_add(u32::from(operations.polished))
        }
        Per::Pass => operations.pass_count(),
        Per::ToolChange => operations.tool_changes,
        Per::Regrind => operations.regrinds,
        Per::Rework => u32::from(match step {
            Step::CutOff => operations.context.severing.is_some(),
            Step::Face => operations.facing.is_some(),
            Step::Centre => operations.centring.is_some(),
            Step::Polish => operations.polished,
            _ => true,
        }),
    }
}

impl Operations {
    fn pass_count(&self) -> u32 {
        u32::try_from(self.passes.len()).unwrap_or(u32::MAX)
    }

    /// The factor that was learned of a step of the work.
    pub(super) fn pace_of(&self, step: WorkStep) -> Option<f64> {
        let found = self.paces.iter().rev().find(|pace| pace.step == step);
        found.map(|pace| pace.factor)
    }

    /// Those of the paces that changed a part.
    fn learned(&self, parts: &[TimePart]) -> Vec<Pace> {
        let scaled = |step| {
            let own = |part: &&TimePart| part.work == Some(step);
            parts
                .iter()
                .filter(own)
                .any(|part| part.paced() != part.each)
        };
        WorkStep::ALL
            .into_iter()
            .filter(|step| scaled(*step))
            .filter_map(|step| self.paces.iter().rev().find(|pace| pace.step == step))
            .copied()
            .collect()
    }

    fn time_of(&self, step: Step) -> ThreePoint {
        let own = self.own.iter().rev().find(|(own, _)| *own == step);
        own.map_or_else(|| usual(step, &self.context), |(_, time)| *time)
    }
}

/// What is fed, in working order, the shares still open.
fn feed_lines(operations: &Operations) -> Result<Vec<FeedLine>, ThreePointError> {
    let mut lines = Vec::new();
    let parting = operations.context.severing.and_then(Severing::feeding);
    let once = [
        (Feeding::Parting, parting),
        (Feeding::Facing, operations.facing),
        (Feeding::Centring, operations.centring),
    ];
    for (feeding, time) in once {
        if let Some(time) = time {
            lines.push(feed_line(feeding, &[time], operations.spindle)?);
        }
    }
    if !operations.passes.is_empty() {
        lines.push(feed_line(
            Feeding::Turning,
            &operations.passes,
            operations.spindle,
        )?);
    }
    Ok(lines)
}

fn feed_line(
    feeding: Feeding,
    passes: &[Time],
    spindle: SpindleSteps,
) -> Result<FeedLine, ThreePointError> {
    // Each by itself: one below zero must not hide in the sum.
    for pass in passes {
        ThreePoint::exact(*pass)?;
    }
    let time: Time = passes.iter().copied().sum();
    let longest = match spindle {
        SpindleSteps::Known => time,
        SpindleSteps::NearestLower => time * SPEED_STEP,
    };
    Ok(FeedLine {
        feeding,
        count: u32::try_from(passes.len()).unwrap_or(u32::MAX),
        together: ThreePoint::new(time, time, longest)?,
        share: 0.0,
    })
}
