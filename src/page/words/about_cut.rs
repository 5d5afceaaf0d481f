//! What is said of the passes and what limits them, of holding and dialling in, and of finishing.

use skimwright::cutting::{
    ChamferPlan, ChipVerdict, FilletPlan, FineInfeed, HeldBy, Limit, Pass, PolishPlan, Saving,
};
use skimwright::holding::{
    DialPlan, Estimate, GripHeld, HoldingPlan, JawPacking, Shift, Slenderness,
};
use skimwright::quantity::{Force, Length, RotationalSpeed};
use skimwright::working::Value;

use super::Words;

/// A fixed text about passes, holding and finishing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfCut {
    Limit(Limit),
    Pinned,
    FreshEdge,
    Knocks,
    Core,
    Loads,
    Along,
    Across,
    CuttingSpeed,
    Roughness,
    EdgeUsed,
    Chip,
    ChipVerdict(ChipVerdict),
    Pin,
    Unpin,
    Estimates,
    DialReadsDiameter,
    DialReadsRadius,
    SavingsTitle,
    SavingsLead,
    NoSavings,
    // Holding
    HoldingTitle,
    Held,
    Gripped,
    SticksOut,
    GripTitle,
    JawsHold,
    CutNeeds,
    CentreTitle,
    Thrust,
    // Dialling
    DialTitle,
    RunoutNear,
    RunoutFar,
    OneLine,
    FlatJaws,
    NarrowJaws,
    Packing,
    // Finishing
    FinishTitle,
    FilletTitle,
    FromFace,
    InfeedLeft,
    Divisions,
    ChamferTitle,
    PolishTitle,
    FineTitle,
    // Cautions at their step
    CareKnocks,
    CareGrinding,
    CareLong,
    CareChuck,
}

impl Words {
    /// The title of a pass, counted from 1.
    pub(crate) fn pass_title(self, number: u32, pass: &Pass) -> String {
        said!(self, cut::pass_title(self, number, pass))
    }

    /// What keeps a pass from being deeper, coarser or faster.
    pub(crate) fn held_by(self, by: HeldBy) -> String {
        said!(self, cut::held_by(by))
    }

    /// The likely value of an estimate and its ends.
    pub(crate) fn spread(self, low: Value, likely: Value, high: Value) -> String {
        let likely = self.figure(likely);
        match self.figure_range((low, high)) {
            Some(range) => self.likely(&likely, &range),
            None => likely,
        }
    }

    /// A likely figure with its range behind it.
    pub(crate) fn likely(self, likely: &str, range: &str) -> String {
        self.marked(format!("{likely} ({range})"))
    }

    /// The same of a force.
    pub(crate) fn force_estimate(self, force: Estimate<Force>) -> String {
        self.spread(
            Value::Force(force.low),
            Value::Force(force.likely),
            Value::Force(force.high),
        )
    }

    /// What widening a limit saves.
    pub(crate) fn saving(self, saving: &Saving) -> String {
        said!(self, cut::saving(saving))
    }

    pub(crate) fn gripped(self, holding: &HoldingPlan) -> String {
        said!(self, holding::gripped(self, holding))
    }

    pub(crate) fn slender(self, slender: Slenderness) -> String {
        said!(self, holding::slender(slender))
    }

    /// The form that the last cut leaves.
    pub(crate) fn form(self, holding: &HoldingPlan) -> Option<String> {
        said!(self, holding::form(self, holding))
    }

    pub(crate) fn copied(self, share: f64) -> String {
        said!(self, holding::copied(share))
    }

    pub(crate) fn grip_verdict(self, grip: &GripHeld) -> &'static str {
        said!(self, holding::grip_verdict(grip))
    }

    /// What there is to say of the pressure in the centre's hole.
    pub(crate) fn centre_pressure(self, holding: &HoldingPlan) -> Option<&'static str> {
        said!(self, holding::centre_pressure(holding))
    }

    /// The top speed that is marked on the chuck.
    pub(crate) fn chuck_speed(self, speed: RotationalSpeed) -> String {
        said!(self, holding::chuck_speed(speed))
    }

    /// One move of the part, towards which jaw.
    pub(crate) fn first_move(self, shift: &Shift) -> String {
        said!(self, holding::first_move(self, shift))
    }

    /// The move at the free end, and what is left after it.
    pub(crate) fn then_tap(self, dial: &DialPlan) -> Option<String> {
        said!(self, holding::then_tap(self, dial))
    }

    /// Packing under each jaw.
    pub(crate) fn packing(self, thickness: [Length; 3]) -> String {
        said!(self, holding::packing(self, thickness))
    }

    pub(crate) fn thumb(self, packing: &JawPacking) -> String {
        said!(self, holding::thumb(self, packing))
    }

    pub(crate) fn fillet(self, plan: &FilletPlan) -> String {
        said!(self, holding::fillet(self, plan))
    }

    pub(crate) fn chamfer(self, plan: &ChamferPlan) -> String {
        said!(self, holding::chamfer(self, plan))
    }

    pub(crate) fn polish(self, plan: &PolishPlan) -> String {
        said!(self, holding::polish(self, plan))
    }

    pub(crate) fn fine_infeed(self, plan: &FineInfeed) -> String {
        said!(self, holding::fine_infeed(self, plan))
    }
}
