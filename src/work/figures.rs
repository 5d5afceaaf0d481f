//! What to set, dial or mark at each step, from the plan.

use serde::Serialize;

use crate::cutting::passes::PassKind;
use crate::cutting::{
    CENTRE_DRILL_SPEED, Lathe, PARTING_SPEED_SHARE, Pass, centre_drill_spindle_speed,
    parting_feeds, spindle_speed,
};
use crate::holding::support;
use crate::job::{
    CentreOrder, CutMadeKind, CutOffMethod, DialReads, Field, Job, SectionField, Support, What,
    WorkStep,
};
use crate::plan::{Checked, Plan, section};
use crate::quantity::{Angle, Feed, Length, RotationalSpeed};
use crate::rework::CentreOn;

/// The figure of a step.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "value", rename_all = "kebab-case")]
pub enum Dial {
    /// What the shank was said to measure, where its longest plain section is: here it is checked.
    AsGiven(Length),
    /// Where to mark the cut, from the free end.
    CutMark(Length),
    /// How much of the head to grip.
    Grip(Length),
    /// The most that the indicator may still show, all round.
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

/// A further figure of a step.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "value", rename_all = "kebab-case")]
pub enum StepFigure {
    /// The diameter of the head beside the shoulder, as it was entered.
    HeadDiameter(Length),
    /// Shoulder to free end, as it was entered.
    ShankLength(Length),
    /// The mark of the cut from the shoulder.
    FromShoulder(Length),
    /// How the offcut comes off.
    Method(CutOffMethod),
    /// Width of the cut.
    Kerf(Length),
    /// How long the piece is that falls off.
    OffcutLength(Length),
    /// What holds the part.
    Support(Support),
    /// The diameter that is held.
    HeldDiameter(Length),
    /// From the chuck to the free end.
    Overhang(Length),
    /// From the shoulder to the finished face.
    FinishedLength(Length),
    /// Whether the depth of the centre counts from the rough face or the finished one; `None` of a hole: from first touch
    /// on its edge.
    DepthFrom(Option<CentreOrder>),
    /// The centre drill, by its designation.
    CentreDrill(&'static str),
    /// The mouth of the countersink.
    Mouth(Length),
    /// What a pass takes off the diameter.
    OffDiameter(Length),
    /// The diameter after it.
    DiameterAfter(Length),
    /// What the marks of the dial mean.
    DialReads(DialReads),
    /// Passes left of the step, this one counted.
    PassesLeft(u32),
    /// What the compound slide is set to.
    CompoundAngle(Angle),
    /// How far the compound slide travels.
    CompoundTravel(Length),
    /// The smallest permitted diameter.
    LowerLimit(Length),
    /// The largest permitted diameter.
    UpperLimit(Length),
    /// The length wanted, from the shoulder.
    WantedLength(Length),
    /// The roughness Ra wanted.
    Roughness(Length),
}

/// A step of a plan.
pub(super) struct AtStep<'a> {
    pub(super) job: &'a Job,
    pub(super) checked: &'a Checked<'a>,
    pub(super) plan: &'a Plan,
    pub(super) step: WorkStep,
}

/// The least runout that is asked for: a division of a common indicator. Common practice, no source.
const LEAST_RUNOUT: Length = Length::mm(0.01);

/// The one figure of a step.
pub(super) fn dial(at: &AtStep) -> Option<Dial> {
    let plan = at.plan;
    Some(match at.step {
        WorkStep::Hold => Dial::Grip(plan.holding.as_ref()?.grip_length),
        WorkStep::DialIn => Dial::Runout(runout_allowed(plan)?),
        WorkStep::CutOff => Dial::CutMark(plan.cut_off.as_ref()?.from_free_end.value),
        WorkStep::Face => Dial::Facing(plan.cut_off.as_ref()?.facing),
        WorkStep::Centre => Dial::CentreDepth(plan.centre.as_ref()?.feed_depth.value),
        WorkStep::Rough | WorkStep::LastCuts => {
            let (pass, _) = next_pass(at)?;
            Dial::Infeed(pass.dialled(at.job.shop.machine.dial_reads))
        }
        WorkStep::Polish => Dial::PolishOff(plan.stock_off.as_ref()?.polishing),
        WorkStep::Chamfer => Dial::Chamfer(plan.finish.as_ref()?.chamfer?.width),
        WorkStep::Check => Dial::Diameter(at.checked.length(Field::WantedDiameter)?),
        WorkStep::Receive => Dial::AsGiven(given_diameter(at)?),
        WorkStep::Clean => return None,
    })
}

/// The diameter of the longest plain section of the shank as it was entered; a taper or a thread has none of its own.
fn given_diameter(at: &AtStep) -> Option<Length> {
    let of = |index, name| at.checked.length(Field::Section(index, name));
    let sections = (0..=u8::MAX).zip(&at.job.part.sections);
    let mut longest: Option<(Length, Length)> = None;
    for (index, _) in sections {
        let Some(diameter) = of(index, SectionField::Diameter) else {
            continue;
        };
        let length = of(index, SectionField::Length).unwrap_or_default();
        if longest.is_none_or(|(most, _)| most < length) {
            longest = Some((length, diameter));
        }
    }
    longest.map(|(_, diameter)| diameter)
}

/// How far the head may still run out when it is dialled in, all round.
///
/// The stock must clean up beside the runout that it has of its own, and what is turned should run as true to the head
/// as its size is held, but nobody asks for less than a division of the indicator. `None` where it does not clean up.
///
/// # Source
/// Clean-up: geometry. No more than the tolerance on size: common practice, no source.
fn runout_allowed(plan: &Plan) -> Option<Length> {
    let limits = plan.limits?;
    let spare = plan.clean_up.as_ref()?.largest_diameter.value - limits.aim;
    let held = (limits.upper - limits.lower).max(LEAST_RUNOUT);
    (Length::ZERO < spare).then(|| spare.min(held))
}

/// The pass of a step that comes next, and how many are left with it: cuts in the record count as done in their order.
fn next_pass<'a>(at: &AtStep<'a>) -> Option<(&'a Pass, u32)> {
    let (kind, made) = match at.step {
        WorkStep::Rough => (PassKind::Rough, CutMadeKind::Rough),
        WorkStep::LastCuts => (PassKind::Last, CutMadeKind::Last),
        _ => return None,
    };
    let standing = at.job.record.standing();
    let made = standing
        .filter(|(_, event)| matches!(&event.what, What::Cut(cut) if cut.kind == made))
        .count();
    let passes = &at.plan.stock_off.as_ref()?.passes;
    let left = passes.iter().filter(|pass| pass.kind == kind).skip(made);
    let count = u32::try_from(left.clone().count()).unwrap_or(u32::MAX);
    left.into_iter().next().map(|pass| (pass, count))
}

/// The further figures of a step.
pub(super) fn figures(at: &AtStep) -> Vec<StepFigure> {
    use StepFigure as F;
    let (job, plan) = (at.job, at.plan);
    let cut = plan.cut_off.as_ref();
    match at.step {
        WorkStep::Hold => {
            let held = plan.holding.as_ref();
            let support = held.map_or_else(|| support(job), |it| it.support);
            let sizes = held.map(|it| {
                [
                    F::HeldDiameter(it.gripped_diameter),
                    F::Overhang(it.overhang),
                ]
            });
            let sizes = sizes.into_iter().flatten();
            [F::Support(support)].into_iter().chain(sizes).collect()
        }
        WorkStep::CutOff => cut.map_or_else(Vec::new, |it| {
            vec![
                F::FromShoulder(it.from_shoulder.value),
                F::Method(job.shop.cut_off_method),
                F::Kerf(it.kerf),
                F::OffcutLength(it.offcut_length.value),
            ]
        }),
        WorkStep::Face => cut
            .map(|it| F::FinishedLength(it.shank_finished.value))
            .into_iter()
            .collect(),
        WorkStep::Centre => centre_figures(at),
        WorkStep::Rough | WorkStep::LastCuts => {
            next_pass(at).map_or_else(Vec::new, |(pass, left)| {
                vec![
                    F::DialReads(job.shop.machine.dial_reads),
                    F::OffDiameter(pass.off_diameter),
                    F::DiameterAfter(pass.diameter_after),
                    F::PassesLeft(left),
                ]
            })
        }
        WorkStep::Polish => limits(at),
        WorkStep::Chamfer => {
            let chamfer = plan.finish.as_ref().and_then(|it| it.chamfer);
            let set = chamfer.map(|it| [F::CompoundAngle(it.angle), F::CompoundTravel(it.travel)]);
            set.into_iter().flatten().collect()
        }
        WorkStep::Check => {
            let length = at.checked.length(Field::WantedLength).map(F::WantedLength);
            let roughness = at.checked.length(Field::Roughness).map(F::Roughness);
            let mut all = limits(at);
            all.extend(length.into_iter().chain(roughness));
            all
        }
        WorkStep::Receive => {
            let head = at.checked.length(Field::HeadDiameter);
            let shank = at.checked.length(Field::ShankLength);
            let head = head.map(F::HeadDiameter);
            head.into_iter().chain(shank.map(F::ShankLength)).collect()
        }
        WorkStep::DialIn | WorkStep::Clean => Vec::new(),
    }
}

fn centre_figures(at: &AtStep) -> Vec<StepFigure> {
    let Some(centre) = &at.plan.centre else {
        return Vec::new();
    };
    let mouth = StepFigure::Mouth(centre.mouth);
    match centre.on {
        CentreOn::Solid { drill, .. } => vec![
            StepFigure::CentreDrill(drill),
            StepFigure::DepthFrom(Some(at.job.shop.centre_order)),
            mouth,
        ],
        CentreOn::Hole { .. } => vec![StepFigure::DepthFrom(None), mouth],
    }
}

fn limits(at: &AtStep) -> Vec<StepFigure> {
    let limits = at.plan.limits.map(|it| {
        [
            StepFigure::LowerLimit(it.lower),
            StepFigure::UpperLimit(it.upper),
        ]
    });
    limits.into_iter().flatten().collect()
}

/// The spindle speed of a step, one that the lathe has, and its feed.
pub(super) fn speed_and_feed(at: &AtStep) -> (Option<RotationalSpeed>, Option<Feed>) {
    let stock = at.plan.stock_off.as_ref();
    let last = || stock.and_then(|it| it.last_cut());
    let of = |pass: &Pass| (Some(pass.spindle_speed), Some(pass.feed));
    match at.step {
        // Facing goes at the speed and feed of the last cuts.
        WorkStep::Face => last().map(of).unwrap_or_default(),
        WorkStep::Rough | WorkStep::LastCuts => {
            next_pass(at).map(|(pass, _)| of(pass)).unwrap_or_default()
        }
        WorkStep::Polish => {
            let passes = stock.into_iter().flat_map(|it| &it.passes);
            let polish = passes.rev().find(|pass| pass.kind == PassKind::Polish);
            (polish.map(|pass| pass.spindle_speed), None)
        }
        WorkStep::Centre => (centre_speed(at), None),
        WorkStep::CutOff => parting(at).unzip(),
        _ => (None, None),
    }
}

fn centre_speed(at: &AtStep) -> Option<RotationalSpeed> {
    let lathe = Lathe::read(at.job, at.checked).0?;
    let pilot = at.plan.centre.as_ref()?.pilot();
    let speed = centre_drill_spindle_speed(pilot, CENTRE_DRILL_SPEED.typical, lathe.top_speed);
    Some(lathe.at_most(speed))
}

/// Only a parting tool cuts off by the spindle.
fn parting(at: &AtStep) -> Option<(RotationalSpeed, Feed)> {
    let feeds = (at.job.shop.cut_off_method == CutOffMethod::PartingTool)
        .then(|| parting_feeds(at.job.shop.tool))??;
    let lathe = Lathe::read(at.job, at.checked).0?;
    let plan = at.plan;
    let (outside, _) = section(plan.shape.received.as_ref()?, plan.cut_off.as_ref()?);
    let speed = plan.stock_off.as_ref()?.cutting_speed * PARTING_SPEED_SHARE.typical;
    let spindle = spindle_speed(speed, outside).min(lathe.top_speed);
    Some((lathe.at_most(spindle), feeds.typical))
}
