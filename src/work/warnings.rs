//! What to watch at each step: the usual cautions, and only those that apply.
//!
//! The cautions are common practice of every workshop, no source; which conditions call for which stands here once, for
//! the steps at the lathe and for the page.

use serde::Serialize;

use super::figures::AtStep;
use crate::cutting::passes::PassKind;
use crate::cutting::{ChipVerdict, PassCut, is_hard};
use crate::holding::{Caution, GripVerdict, is_short_grip, support};
use crate::job::{CutOffMethod, Job, Support, WorkStep};
use crate::plan::{Plan, end_is_hard};
use crate::quantity::Mass;
use crate::rework::{CentreOn, CutKind};
use crate::tables::{ToolKind, WorkMaterial};

/// What to watch at a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum StepWarning {
    /// Take the chuck key out before the spindle turns.
    ChuckKey,
    /// The jaws hold with less than the safety, or not at all.
    GripWeak,
    /// Little of the head is held against its diameter, or the weight hangs out of the jaws: it may come loose.
    LosesGrip,
    /// Unsupported length can whip: start slowly, support the end.
    LongOverhang,
    /// Never turn the chuck faster than is marked on it.
    ChuckSpeed,
    /// The live centre nips up as the work warms and grows: ease it and set it again.
    CentreNipsUp,
    /// An abrasive disc: guard, eyes, ears, sparks, its top speed.
    Disc,
    /// Abrasive dust of a disc or a wheel: cover the ways, wear a mask.
    Grit,
    /// Offcut and work are hot after an abrasive cut.
    HotOffcut,
    /// The offcut falls, or drops onto the blade: catch it, never with the hand.
    OffcutFalls,
    /// A parting tool grabs and jams: square, sharp, on centre, as short as can be, oil.
    PartingJams,
    /// A saw cannot cut hard work.
    SawOnHard,
    /// Long chips: stop the spindle, use a hook.
    ChipsLong,
    /// Chips of hard work are hot and sharp.
    ChipsHard,
    /// Cast iron makes fine abrasive dust.
    DustOfCastIron,
    /// Titanium chips can burn.
    TitaniumFire,
    /// An interrupted cut on a hard edge may chip it.
    Knocks,
    /// Grinding in the lathe: mask, ways covered, the wheel no faster than marked.
    Grinding,
    /// Hot work measures too large: let it cool, and mind the fingers.
    HotWork,
    /// Stop the spindle to measure.
    StopToMeasure,
    /// The tip of a centre drill breaks off: on centre, light feed, clear the chips, oil.
    CentreDrillBreaks,
    /// A high-speed steel centre drill does not touch a hardened end.
    CentreOnHard,
    /// Files and emery at a turning spindle: handle on the file, left hand over, strip open-handed, never wound round.
    FingersAtSpindle,
    /// Edges are sharp until they are broken.
    SharpEdges,
    /// What was done to it before, and hidden flaws, cannot be seen.
    UnknownPast,
    /// No air line on chips, grit and dust: brush and vacuum cleaner.
    NoAirLine,
}

/// A part that two fingers no longer hold: it hangs in the jaws by its weight. Common practice, no source.
const HEAVY: Mass = Mass::grams(2000.0);

/// The cautions of a step that apply, the most pressing first.
pub(super) fn warnings(at: &AtStep) -> Vec<StepWarning> {
    use StepWarning as W;
    let (job, plan) = (at.job, at.plan);
    let own: Vec<Option<W>> = match at.step {
        WorkStep::Receive => vec![Some(W::SharpEdges), Some(W::UnknownPast)],
        WorkStep::Hold => holding_warnings(job, plan).into_iter().map(Some).collect(),
        WorkStep::DialIn => vec![in_chuck(job).then_some(W::ChuckKey)],
        WorkStep::CutOff => cut_off_warnings(job, plan).into_iter().map(Some).collect(),
        WorkStep::Face => chips(job, plan, None)
            .into_iter()
            .chain([W::SharpEdges])
            .map(Some)
            .collect(),
        WorkStep::Centre => centre_warnings(at),
        WorkStep::Rough | WorkStep::LastCuts => {
            let last = at.step == WorkStep::LastCuts;
            let kind = if last {
                PassKind::Last
            } else {
                PassKind::Rough
            };
            let said = pass_warnings(job, plan, Some(kind)).into_iter().map(Some);
            let further = [
                has_live_centre(job).then_some(W::CentreNipsUp),
                last.then_some(W::HotWork),
                Some(W::StopToMeasure),
            ];
            said.chain(further).collect()
        }
        WorkStep::Polish => vec![
            Some(W::FingersAtSpindle),
            has_live_centre(job).then_some(W::CentreNipsUp),
            Some(W::Grit),
            Some(W::HotWork),
            Some(W::StopToMeasure),
        ],
        WorkStep::Chamfer => vec![Some(W::FingersAtSpindle), Some(W::SharpEdges)],
        WorkStep::Check => vec![Some(W::HotWork)],
        WorkStep::Clean => vec![Some(W::NoAirLine)],
    };
    own.into_iter().flatten().collect()
}

/// The cautions about how the part is held, those of the plan's holding among them.
///
/// # Source
/// Common practice, no source.
pub fn holding_warnings(job: &Job, plan: &Plan) -> Vec<StepWarning> {
    use StepWarning as W;
    let held = plan.holding.as_ref();
    let weak = held
        .and_then(|it| it.grip?.ratio)
        .is_some_and(|it| it.verdict != GripVerdict::Holds);
    let long = held
        .and_then(|it| it.slender)
        .is_some_and(|it| it.caution != Caution::None);
    let said = [
        in_chuck(job).then_some(W::ChuckKey),
        weak.then_some(W::GripWeak),
        loses_grip(job, plan).then_some(W::LosesGrip),
        long.then_some(W::LongOverhang),
        in_chuck(job).then_some(W::ChuckSpeed),
    ];
    said.into_iter().flatten().collect()
}

/// The cautions about cutting off.
///
/// # Source
/// Common practice, no source.
pub fn cut_off_warnings(job: &Job, plan: &Plan) -> Vec<StepWarning> {
    use StepWarning as W;
    let cuts = plan.cut_off.as_ref();
    if cuts.is_none_or(|it| it.kind != CutKind::CutAndFace) {
        return Vec::new();
    }
    let method = job.shop.cut_off_method;
    let disc = matches!(method, CutOffMethod::HandDisc | CutOffMethod::ChopWheel);
    let hard = is_hard(job.part.material);
    let parted = method == CutOffMethod::PartingTool;
    let said = [
        disc.then_some(W::Disc),
        disc.then_some(W::Grit),
        disc.then_some(W::HotOffcut),
        parted.then_some(W::PartingJams),
        (method == CutOffMethod::Saw && hard).then_some(W::SawOnHard),
        Some(W::OffcutFalls),
        parted.then(|| of_metal(job)).flatten(),
        // A disc throws sparks of any metal; titanium burns from them too.
        (disc && job.part.material == WorkMaterial::TitaniumAlloy).then_some(W::TitaniumFire),
    ];
    said.into_iter().flatten().collect()
}

/// The cautions about chips and knocks of the passes, of all kinds or of one.
///
/// # Source
/// Common practice, no source.
pub fn pass_warnings(job: &Job, plan: &Plan, kind: Option<PassKind>) -> Vec<StepWarning> {
    use StepWarning as W;
    if job.shop.tool == ToolKind::Grinding {
        return vec![W::Grinding];
    }
    let knocks =
        job.shop.tool != ToolKind::HighSpeedSteel && cuts(plan, kind).any(|cut| cut.interrupted);
    let mut said = chips(job, plan, kind);
    said.extend(knocks.then_some(W::Knocks));
    said
}

fn cuts(plan: &Plan, kind: Option<PassKind>) -> impl Iterator<Item = &PassCut> {
    let passes = plan.stock_off.iter().flat_map(|it| &it.passes);
    passes
        .filter(move |pass| kind.is_none_or(|kind| pass.kind == kind))
        .filter_map(|pass| pass.cut.as_ref())
}

/// What the chips ask for; a wheel makes none.
fn chips(job: &Job, plan: &Plan, kind: Option<PassKind>) -> Vec<StepWarning> {
    if job.shop.tool == ToolKind::Grinding {
        return Vec::new();
    }
    let long = cuts(plan, kind)
        .any(|cut| matches!(cut.chip, ChipVerdict::MayBeLong | ChipVerdict::Stringy));
    let long = long.then_some(StepWarning::ChipsLong);
    of_metal(job).into_iter().chain(long).collect()
}

/// What chips of the metal ask for.
const fn of_metal(job: &Job) -> Option<StepWarning> {
    match job.part.material {
        WorkMaterial::GreyIron | WorkMaterial::DuctileIron => Some(StepWarning::DustOfCastIron),
        WorkMaterial::TitaniumAlloy => Some(StepWarning::TitaniumFire),
        other if is_hard(other) => Some(StepWarning::ChipsHard),
        _ => None,
    }
}

fn centre_warnings(at: &AtStep) -> Vec<Option<StepWarning>> {
    use StepWarning as W;
    let (job, plan) = (at.job, at.plan);
    let hard = plan
        .cut_off
        .as_ref()
        .is_some_and(|cut| end_is_hard(job, cut));
    let solid = plan
        .centre
        .as_ref()
        .is_some_and(|it| matches!(it.on, CentreOn::Solid { .. }));
    vec![
        hard.then_some(W::CentreOnHard),
        solid.then_some(W::CentreDrillBreaks),
        of_metal(job),
    ]
}

fn in_chuck(job: &Job) -> bool {
    matches!(support(job), Support::Chuck | Support::ChuckAndCentre)
}

fn has_live_centre(job: &Job) -> bool {
    matches!(
        support(job),
        Support::ChuckAndCentre | Support::BetweenCentres
    )
}

/// Whether the part may work itself out of the jaws: held short, or heavy with its weight beyond them and no centre.
fn loses_grip(job: &Job, plan: &Plan) -> bool {
    let Some(held) = plan.holding.as_ref() else {
        return false;
    };
    if held.support == Support::BetweenCentres {
        return false;
    }
    let heavy = plan
        .masses
        .as_ref()
        .is_some_and(|it| HEAVY < it.before.value && held.chuck_face < it.balance_before.value);
    let short = is_short_grip(held.grip_length, held.gripped_diameter);
    short && in_chuck(job) || heavy && !has_live_centre(job)
}
