//! What is said of receivers, of what the part could become, of strength, and of tapers that were measured.

use skimwright::job::{Job, ReceiverKind};
use skimwright::part::{Candidate, Recognition};
use skimwright::plan::Plan;
use skimwright::quantity::Length;
use skimwright::receiver::Becomes;
use skimwright::rework::{Because, Offer, SurfaceLeft, Take, UnderDuty, Weakest};
use skimwright::strength::Basis;
use skimwright::tables::{ColletSize, FitKind, HoleClass, SeatLoad, Shank, ShankForm, SleeveDuty};

use super::{
    Language, Words, english_becomes, english_receiver, english_recognise, english_strength,
};
use crate::page::options::Standard;

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
    /// All that the job's receiver asks.
    pub(crate) fn asks(self, job: &Job, plan: &Plan) -> Vec<Ask> {
        match self.language {
            Language::English => english_receiver::asks(self, job, plan),
        }
    }

    /// A collet and what it takes.
    pub(crate) fn collet(self, size: ColletSize) -> String {
        match self.language {
            Language::English => english_receiver::collet(self, size),
        }
    }

    /// A standard shank by its size, in the unit of its standard.
    pub(crate) fn shank(self, shank: &Shank) -> String {
        match self.language {
            Language::English => english_receiver::shank(shank),
        }
    }

    /// A standard shank by form and size.
    pub(crate) fn shank_in_full(self, shank: &Shank, standard: Option<&str>) -> String {
        match self.language {
            Language::English => english_receiver::shank_in_full(shank, standard),
        }
    }

    /// Whether a shank has the length of its standard.
    pub(crate) fn how_long(self, one: &Becomes) -> String {
        match self.language {
            Language::English => english_becomes::how_long(self, one),
        }
    }

    /// A receiver and how much of the shank it grips.
    pub(crate) fn gripped_by(self, one: &Becomes) -> String {
        match self.language {
            Language::English => english_becomes::gripped_by(self, one),
        }
    }

    /// That it was taken.
    pub(crate) fn taken(self, shank: &Shank) -> String {
        match self.language {
            Language::English => english_becomes::taken(shank),
        }
    }

    /// How many there are.
    pub(crate) fn how_many(self, shanks: usize) -> String {
        match self.language {
            Language::English => english_becomes::how_many(shanks),
        }
    }

    /// What is in the way, and the most that can be had all the same.
    pub(crate) fn in_the_way(self, because: Because, at: Length, offer: Option<&Offer>) -> String {
        match self.language {
            Language::English => english_becomes::in_the_way(self, because, at, offer),
        }
    }

    /// A place on the curve of the most that can be had.
    pub(crate) fn offer(self, offer: &Offer) -> String {
        match self.language {
            Language::English => english_becomes::offer(self, offer),
        }
    }

    /// Where the shank is weakest, before and after.
    pub(crate) fn weakest(self, before: &Weakest, after: &Weakest) -> String {
        match self.language {
            Language::English => english_strength::weakest(self, before, after),
        }
    }

    /// By which approximations the weakest section was reckoned.
    pub(crate) fn reckoned_with(self, bases: &[Basis]) -> String {
        match self.language {
            Language::English => english_strength::reckoned_with(bases),
        }
    }

    /// What is at the surface of the finished shank.
    pub(crate) fn surface_left(self, left: SurfaceLeft) -> String {
        match self.language {
            Language::English => english_strength::surface(left),
        }
    }

    /// The load that counts, and where safety is least.
    pub(crate) fn under_duty(self, duty: &UnderDuty) -> String {
        match self.language {
            Language::English => english_strength::under_duty(self, duty),
        }
    }

    /// What can be said of a taper that was measured.
    pub(crate) fn verdict(self, found: &Recognition) -> String {
        match self.language {
            Language::English => english_recognise::verdict(self, found),
        }
    }

    /// The taper as it was measured: its ratio and what a top slide is set to.
    pub(crate) fn measured_taper(self, found: &Recognition) -> Option<String> {
        match self.language {
            Language::English => english_recognise::measured(found),
        }
    }

    /// The name of a taper that it may be.
    pub(crate) fn candidate(self, candidate: &Candidate) -> String {
        match self.language {
            Language::English => english_recognise::name(self, candidate),
        }
    }

    /// How well a taper agrees, and where its gauge plane falls.
    pub(crate) fn agrees(self, candidate: &Candidate, plane: Option<Length>) -> String {
        match self.language {
            Language::English => english_recognise::agrees(self, candidate, plane),
        }
    }
}
