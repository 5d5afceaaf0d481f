//! What is said of receivers, of what the part could become, of strength, and of tapers that were measured.

use skimwright::costing::Step;
use skimwright::cutting::{GrindReason, Verdict};
use skimwright::job::{
    Aim, DialPlane, DialReads, Field, GearsError, JawFace, Job, ReceiverKind, Rigidity, Support,
};
use skimwright::part::{Candidate, Recognition};
use skimwright::plan::Plan;
use skimwright::quantity::{Entry, Length};
use skimwright::receiver::Becomes;
use skimwright::rework::{Because, Offer, SurfaceLeft, Take, UnderDuty, Weakest};
use skimwright::strength::Basis;
use skimwright::tables::{
    ColletSize, CuttingGroup, FileBite, FitKind, HoleClass, SeatLoad, Shank, ShankForm, SleeveDuty,
};

use super::Words;
use super::about_instruments::OfInstruments;
use crate::page::options::Standard;
pub(super) use crate::page::shelf::Question;
use crate::page::shelf::Shelf;

/// A fixed text about receivers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfReceiver {
    Kind(ReceiverKind),
    Hole(HoleClass),
    Load(SeatLoad),
    Duty(SleeveDuty),
    Form(ShankForm),
    Fit(FitKind),
    IsoCollets,
    /// The collets that are no ISO 15488 ones.
    OtherCollets,
    /// The group of limits that no class gives.
    OwnLimits,
    Asks,
    TakeLimits,
}

/// A fixed text about what the part could become, and about the most that can be had.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfBecoming {
    Title,
    Lead,
    AnyReceiver,
    ReceiverFilter,
    StandardFilter,
    Standard(Standard),
    FullOnly,
    Bending,
    Stiffness,
    Torsion,
    CutOff,
    TurnedOff,
    Standards,
    GoesInto,
    NoneAtAll,
    NoneOfThese,
    NoPart,
    ShowAll,
    MostTitle,
    MostLead,
    MostSlider,
    AxisLength,
    AxisDiameter,
    WantedPoint,
    Take(Take),
    NothingToHave,
    Entered,
}

/// A fixed text about strength, hardness, safety and mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfStrength {
    Title,
    ShoulderTitle,
    ShoulderNote,
    ShoulderGuide,
    NoShoulder,
    SurfaceTitle,
    SafetyTitle,
    SafetyNone,
    SafetyEnter,
    SafetyNote,
    NoLoad,
    NoFatigue,
    MassTitle,
    BalanceNote,
    Tensile,
}

/// A fixed text about a taper that was measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfTaper {
    Title,
    Missing,
    ShareNote,
    LargeOutward,
    ItIsThis,
}

/// A fixed text about the shop and how the part is set up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfShop {
    Tool,
    Lathe,
    Holding,
    Dialling,
    DiallingLead,
    Pins,
    PinsLead,
    NoPins,
    PinPlanned,
    AddPin,
    ToolChoice,
    ToolChoiceLead,
    WhyGrind,
    StepTimes,
    StepTimesLead,
    Rates,
    Plane(DialPlane),
    Stepless,
    Listed,
    Support(Option<Support>),
    Jaws(Option<JawFace>),
    Rigidity(Rigidity),
    DialReads(DialReads),
    Aim(Aim),
    Mine(Shelf),
    Keep(Shelf),
    KeepNeedsName(Shelf),
    Kept,
    ShelfFull,
    ShelfUnread,
    ShelfRefused,
    TakeIn,
    AskTitle(Question),
    Replace,
    AskNo,
    Instruments(OfInstruments),
}

/// One thing that a receiver asks, and what the shank gives.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Ask {
    /// What it is about.
    pub(crate) name: &'static str,
    /// What is asked, and what the shank has.
    pub(crate) says: String,
    /// Whether the shank does not give it.
    pub(crate) off: bool,
}

impl Words {
    /// Whether a tool turns the metal.
    pub(crate) fn tool_verdict(self, verdict: Verdict) -> &'static str {
        said!(self, tools::verdict(verdict))
    }

    /// Why to grind instead of turning.
    pub(crate) fn grind_reason(self, reason: GrindReason) -> String {
        said!(self, tools::grind(self, reason))
    }

    /// A step of the rework.
    pub(crate) fn step(self, step: Step) -> &'static str {
        said!(self, cut::step(step))
    }

    /// A finer group of the material, with its hardness.
    pub(crate) fn cutting_group(self, group: Option<CuttingGroup>) -> String {
        said!(self, groups::cutting_group(group))
    }

    /// How a file takes to the part.
    pub(crate) fn file_bite(self, bite: Option<FileBite>) -> &'static str {
        said!(self, groups::file_bite(bite))
    }

    /// The label of a list of speeds or feeds itself.
    pub(crate) fn list_label(self, field: Field) -> &'static str {
        said!(self, shop::list_label(field))
    }

    /// The note under a list of speeds or feeds.
    pub(crate) fn list_hint(self) -> &'static str {
        said!(self, shop::LIST_HINT)
    }

    /// What a list of speeds or feeds comes to.
    pub(crate) fn gears(self, field: Field, list: &[&Entry]) -> String {
        let shown = |entry: Option<&&Entry>| {
            let entry = entry.map(|entry| self.marked(self.units().entry_value(entry)));
            entry.unwrap_or_default()
        };
        let (from, to) = (shown(list.first()), shown(list.last()));
        let (from, _) = super::split_unit(&from);
        said!(self, shop::gears(self, field, list.len(), from, &to))
    }

    /// What is wrong with a list of speeds or feeds.
    pub(super) fn bad_list(self, field: Field, error: &GearsError) -> String {
        said!(self, shop::bad_list(self, field, error))
    }

    /// The name of a pinned pass.
    pub(crate) fn pin(self, index: u8) -> String {
        said!(self, shop::pin(index))
    }

    /// What a pinned pass is, in one line.
    pub(crate) fn pin_line(self, job: &Job, index: u8) -> Option<String> {
        let pin = job.setup.pins.get(usize::from(index))?;
        let (after, infeed) = (self.entered(&pin.after), self.entered(&pin.infeed));
        Some(said!(self, shop::pin_line(&after, &infeed)))
    }

    /// A planned pass, as one that can be pinned.
    pub(crate) fn planned(self, number: usize, after: Length) -> String {
        said!(self, shop::planned(number, &self.size(after)))
    }

    /// What is asked before something that is kept goes.
    pub(crate) fn question(self, question: Question, name: &str) -> String {
        spoken!(self, shop::question(question, name))
    }

    /// All that the job's receiver asks.
    pub(crate) fn asks(self, job: &Job, plan: &Plan) -> Vec<Ask> {
        said!(self, receiver::asks(self, job, plan))
    }

    /// A collet and what it takes.
    pub(crate) fn collet(self, size: ColletSize) -> String {
        said!(self, receiver::collet(self, size))
    }

    /// A standard shank by its size, in the unit of its standard.
    pub(crate) fn shank(self, shank: &Shank) -> String {
        said!(self, receiver::shank(shank))
    }

    /// A standard shank by form and size.
    pub(crate) fn shank_in_full(self, shank: &Shank, standard: Option<&str>) -> String {
        said!(self, receiver::shank_in_full(shank, standard))
    }

    /// Whether a shank has the length of its standard.
    pub(crate) fn how_long(self, one: &Becomes) -> String {
        said!(self, becomes::how_long(self, one))
    }

    /// A receiver and how much of the shank it grips.
    pub(crate) fn gripped_by(self, one: &Becomes) -> String {
        said!(self, becomes::gripped_by(self, one))
    }

    /// That it was taken.
    pub(crate) fn taken(self, shank: &Shank) -> String {
        said!(self, becomes::taken(shank))
    }

    /// How many there are.
    pub(crate) fn how_many(self, shanks: usize) -> String {
        said!(self, becomes::how_many(self, shanks))
    }

    /// What is in the way, and the most that can be had all the same.
    pub(crate) fn in_the_way(self, because: Because, at: Length, offer: Option<&Offer>) -> String {
        said!(self, becomes::in_the_way(self, because, at, offer))
    }

    /// A place on the curve of the most that can be had.
    pub(crate) fn offer(self, offer: &Offer) -> String {
        said!(self, becomes::offer(self, offer))
    }

    /// Where the shank is weakest, before and after.
    pub(crate) fn weakest(self, before: &Weakest, after: &Weakest) -> String {
        said!(self, strength::weakest(self, before, after))
    }

    /// By which approximations the weakest section was reckoned.
    pub(crate) fn reckoned_with(self, bases: &[Basis]) -> String {
        said!(self, strength::reckoned_with(bases))
    }

    /// What is at the surface of the finished shank.
    pub(crate) fn surface_left(self, left: SurfaceLeft) -> String {
        said!(self, strength::surface(left))
    }

    /// The load that counts, and where safety is least.
    pub(crate) fn under_duty(self, duty: &UnderDuty) -> String {
        said!(self, strength::under_duty(self, duty))
    }

    /// What can be said of a taper that was measured.
    pub(crate) fn verdict(self, found: &Recognition) -> String {
        said!(self, recognise::verdict(self, found))
    }

    /// The taper as it was measured: its ratio and what a top slide is set to.
    pub(crate) fn measured_taper(self, found: &Recognition) -> Option<String> {
        said!(self, recognise::measured(found))
    }

    /// The name of a taper that it may be.
    pub(crate) fn candidate(self, candidate: &Candidate) -> String {
        said!(self, recognise::name(self, candidate))
    }

    /// How well a taper agrees, and where its gauge plane falls.
    pub(crate) fn agrees(self, candidate: &Candidate, plane: Option<Length>) -> String {
        said!(self, recognise::agrees(self, candidate, plane))
    }
}
