//! What was done and read at the machine: a list of events in the order in which they were entered.
//!
//! An event is never changed in what it says; a wrong one is struck out and stays. Readings taken before the first cut
//! are of the part as received.

use serde::{Deserialize, Serialize};

use super::choice::DialReads;
use super::offered::{Answered, Offered};
use crate::quantity::{Entered, Length, Temperature};

/// The record of doing the job.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Record {
    /// Who does the work and measures, as he names himself; at most [`Job::MOST_NAME_CHARACTERS`](super::Job) characters.
    pub by: String,
    /// What happened; at most [`Record::MOST_EVENTS`].
    pub events: Vec<Event>,
}

impl Record {
    /// Most events: a hundred times what a long day leaves.
    pub const MOST_EVENTS: usize = 5000;
    /// Most characters of a note or a reason.
    pub const MOST_NOTE_CHARACTERS: usize = 400;

    /// The events that count, with their places in the list.
    pub fn standing(&self) -> impl DoubleEndedIterator<Item = (usize, &Event)> {
        self.events
            .iter()
            .enumerate()
            .filter(|(_, event)| !event.struck)
    }

    /// Whether anything stands in it that was done, read or noted at the machine: more than offers and answers.
    pub fn has_work(&self) -> bool {
        self.standing()
            .any(|(_, event)| !event.what.is_with_owner())
    }
}

/// A point in time by the clock of whoever entered it: seconds since the beginning of 1970, UTC.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Moment(u64);

impl Moment {
    /// From seconds since the beginning of 1970, UTC.
    pub const fn unix_seconds(seconds: u64) -> Self {
        Self(seconds)
    }

    /// Seconds since the beginning of 1970, UTC.
    pub const fn to_unix_seconds(self) -> u64 {
        self.0
    }
}

/// One thing that happened.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// When it was entered. Clocks are set back: only the order in the list is sure.
    pub at: Moment,
    /// Whether it was wrong, and no longer counts.
    #[serde(default)]
    pub struck: bool,
    /// What happened.
    pub what: What,
}

/// What happened.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum What {
    /// Something was measured.
    Reading(Reading),
    /// A cut was made.
    Cut(CutMade),
    /// Something changed, so that what was learned of the infeed no longer holds.
    Change(Change),
    /// Something to remember.
    Note(String),
    /// A step of the work began, was done, and so on.
    Step(StepEvent),
    /// The owner was given something to agree to.
    Offered(Offered),
    /// The owner answered.
    Answered(Answered),
}

impl What {
    /// Whether it was between the shop and the owner, and nothing was done or read at the machine.
    pub const fn is_with_owner(&self) -> bool {
        matches!(self, Self::Offered(_) | Self::Answered(_))
    }
}

/// Something measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// What of the work.
    pub of: Measured,
    /// What the instrument showed, uncorrected; a roughness is Ra.
    pub value: Entered<Length>,
    /// The instrument, by its place in the shop's list; `None` is the usual micrometer.
    #[serde(default)]
    pub instrument: Option<u8>,
    /// Temperature of the work; `None` is that of the room.
    #[serde(default)]
    pub temperature: Option<Entered<Temperature>>,
    /// Whether the person said that it is right, though it is not what was expected.
    #[serde(default)]
    pub confirmed: bool,
}

/// What of the work was measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Measured {
    /// The diameter of the shank at a place along it.
    Diameter(WorkPlace),
    /// The shank, from the shoulder to its end.
    Length,
    /// Total indicated runout of the shank to the head.
    Runout,
    /// Roughness Ra of the turned shank.
    Roughness,
}

/// A place along the shank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum WorkPlace {
    /// As near to the shoulder as the instrument comes.
    NearShoulder,
    /// Half way.
    Middle,
    /// Near the free end.
    FreeEnd,
    /// So far from the shoulder.
    At(Entered<Length>),
}

/// A cut that was made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CutMade {
    /// What kind.
    pub kind: CutMadeKind,
    /// How far the dial was turned in, as it is marked; nothing for a spring pass.
    pub dialled: Entered<Length>,
    /// What the dial's marks mean.
    pub reads: DialReads,
}

/// What kind of cut was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CutMadeKind {
    /// Roughing, at the roughing feed.
    Rough,
    /// A last cut, at the finishing feed.
    Last,
    /// Once more over the same setting.
    Spring,
    /// Polishing with abrasive: nothing is dialled.
    Polish,
}

impl CutMadeKind {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 4] = [Self::Rough, Self::Last, Self::Spring, Self::Polish];
}

/// What makes an infeed take off something else than before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Change {
    /// A fresh edge, or another tool.
    NewEdge,
    /// The part was taken out and held again.
    HeldAgain,
    /// The dial was set anew, or the tool touched on again.
    DialSet,
    /// Another feed or speed.
    OtherFeed,
}

impl Change {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 4] = [
        Self::NewEdge,
        Self::HeldAgain,
        Self::DialSet,
        Self::OtherFeed,
    ];
}

/// Something about a step of the work.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepEvent {
    /// Which step.
    pub step: WorkStep,
    /// What about it.
    pub state: StepState,
}

/// What about a step.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum StepState {
    /// Its clock runs from here.
    Started,
    /// Its clock stands from here.
    Paused,
    /// It is done.
    Done,
    /// It is left out, and why; at most [`Record::MOST_NOTE_CHARACTERS`] characters.
    Skipped(String),
    /// It was done or skipped, and is to do again.
    Reopened,
}

/// The steps of the work at the machine, in working order. The numbers are stored in links and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum WorkStep {
    /// Checking what came and noting its state.
    Receive = 0,
    /// Holding it.
    Hold = 1,
    /// Bringing it to run true.
    DialIn = 2,
    /// Cutting off.
    CutOff = 3,
    /// Facing the end.
    Face = 4,
    /// Drilling the centre.
    Centre = 5,
    /// Roughing.
    Rough = 6,
    /// The two equal last cuts.
    LastCuts = 7,
    /// Polishing to size.
    Polish = 8,
    /// Chamfering and deburring.
    Chamfer = 9,
    /// Measuring what leaves the shop.
    Check = 10,
    /// Cleaning and oiling.
    Clean = 11,
}

impl WorkStep {
    /// Every step in the order of its number, which is the working order.
    pub const ALL: [Self; 12] = [
        Self::Receive,
        Self::Hold,
        Self::DialIn,
        Self::CutOff,
        Self::Face,
        Self::Centre,
        Self::Rough,
        Self::LastCuts,
        Self::Polish,
        Self::Chamfer,
        Self::Check,
        Self::Clean,
    ];

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The step with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }
}
