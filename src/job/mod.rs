//! Everything that a person enters: the part as received, what is wanted of it, and the shop it is done in.
//!
//! A job is plain data with a complete default. Nothing in it is checked beyond its form: [`crate::plan`]
//! says what is wrong with it.

mod choice;
mod field;
mod form;
mod gears;
mod instrument;
mod item_field;
mod kinds;
mod learned;
mod offered;
mod part;
mod progress;
mod receiver;
mod record;
mod setup;
mod shop;
mod shop_field;
mod slot;
mod text;
mod times;

use serde::{Deserialize, Serialize};

pub use choice::{
    Aim, BoreBottom, BoreEnd, CentreOrder, CutOffMethod, Datum, DialReads, Flats, JawFace,
    Rigidity, Support,
};
pub use field::{Bounds, DialPlane, Field};
pub use gears::{GearsError, MOST_LIST_CHARACTERS, read_gears};
pub use instrument::{Instrument, InstrumentKind};
pub use item_field::{BoreField, FeatureField, HeadField, ReceiverField, SectionField};
pub use learned::{Learned, LearnedPace, LearnedTakes};
pub use offered::{Answered, OfferMark, Offered, OwnerSays, Shows};
pub use part::{
    Bore, Cut, CutKind, Feature, HeadPiece, Hole, HoleKind, Part, Place, Section, Turned,
    TurnedKind,
};
pub use progress::Progress;
pub use receiver::{Receiver, ReceiverKind};
pub use record::{
    Change, CutMade, CutMadeKind, Event, Measured, Moment, Reading, Record, StepEvent, StepState,
    What, WorkPlace, WorkStep,
};
pub use setup::{Pin, Plane, Setup};
pub use shop::{Edge, Gears, Machine, Rates, Shop};
pub use shop_field::{
    EdgeField, HoldingField, InstrumentField, MachineField, PinField, RateField, TimeBound,
};
pub use times::{StepTime, StepTimes};

use crate::quantity::{Entered, Force, Length, Power, RotationalSpeed, Torque, Unit};
use crate::tables::{ShaftClass, WorkMaterial};

/// One part, what is wanted of it, and the shop it is done in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Job {
    /// The version of this form, 2.
    pub version: FormVersion,
    /// What the job is called; at most [`Job::MOST_TITLE_CHARACTERS`] characters.
    pub title: String,
    /// The part before the work.
    pub part: Part,
    /// What is wanted.
    pub wanted: Wanted,
    /// What it is done with.
    pub shop: Shop,
    /// How it is set up in the lathe.
    pub setup: Setup,
    /// What was done and read.
    pub record: Record,
}

/// What is wanted of the shank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Wanted {
    /// The finished diameter, the nominal size of the tolerance.
    pub diameter: Entered<Length>,
    /// The tolerance on the diameter.
    pub tolerance: Tolerance,
    /// From the shoulder to the finished end.
    pub length: Entered<Length>,
    /// Fillet radius at the shoulder.
    pub shoulder_radius: Entered<Length>,
    /// Chamfer at the end, 45°, measured along the axis.
    pub end_chamfer: Entered<Length>,
    /// Mouth diameter of the 60° countersink for the live centre; `None` when none is wanted.
    pub countersink: Option<Entered<Length>>,
    /// Roughness Ra that is wanted of the turned shank; `None` where nothing is asked.
    pub roughness: Option<Entered<Length>>,
    /// What the shank goes into.
    pub receiver: Receiver,
    /// How deep the receiver takes the shank; `None` is the usual of the receiver, or not known.
    pub receiver_depth: Option<Entered<Length>>,
    /// How much of the shank the receiver must grip at least; `None` is the usual of the receiver, or nothing.
    pub least_grip: Option<Entered<Length>>,
    /// What the shank has to carry, as far as it is known.
    pub duty: Duty,
}

/// What the finished shank has to carry. Torque can be given itself or by power and speed; the larger counts.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Duty {
    /// The largest torque.
    pub torque: Option<Entered<Torque>>,
    /// A force across the axis, on the head.
    pub side_load: Option<Entered<Force>>,
    /// How far from the shoulder it acts.
    pub overhang: Option<Entered<Length>>,
    /// The power carried.
    pub power: Option<Entered<Power>>,
    /// The speed that it is carried at.
    pub speed: Option<Entered<RotationalSpeed>>,
}

/// The tolerance on the finished diameter.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", try_from = "form::ToleranceForm")]
pub enum Tolerance {
    /// A class of ISO 286-2.
    Class(ShaftClass),
    /// Deviations from the nominal size, upper and lower.
    #[serde(untagged)]
    Limits {
        /// Added to the nominal size for the largest permitted.
        upper: Entered<Length>,
        /// Added to the nominal size for the smallest permitted.
        lower: Entered<Length>,
    },
}

impl Job {
    /// Longest title.
    pub const MOST_TITLE_CHARACTERS: usize = 80;
    /// Most outer sections.
    pub const MOST_SECTIONS: usize = 12;
    /// Most further pieces of the head.
    pub const MOST_HEAD_BEYOND: usize = 4;
    /// Most features cut into the shank.
    pub const MOST_FEATURES: usize = 8;
    /// Most holes.
    pub const MOST_BORES: usize = 6;
    /// Longest name of a machine or a tool.
    pub const MOST_NAME_CHARACTERS: usize = 40;
    /// Longest currency.
    pub const MOST_CURRENCY_CHARACTERS: usize = 8;
    /// Most speeds or feeds in a list.
    pub const MOST_GEARS: usize = 40;
    /// Most passes that are pinned by hand.
    pub const MOST_PINS: usize = 12;
    /// Most instruments.
    pub const MOST_INSTRUMENTS: usize = 8;
    /// Most passes that a plan lists.
    pub const MOST_PASSES: u32 = 200;
}

/// The version of the JSON form: 2 is written, and the older 1, which only lacks what came since, is read too.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FormVersion;

impl FormVersion {
    /// The version that is written.
    pub const NEWEST: u8 = 2;
}

impl Serialize for FormVersion {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_u8(Self::NEWEST)
    }
}

impl<'de> Deserialize<'de> for FormVersion {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        match u64::deserialize(deserializer)? {
            1 | 2 => Ok(Self),
            0 => Err(serde::de::Error::custom(
                "there is no version 0 of the job form",
            )),
            newer => Err(serde::de::Error::custom(format_args!(
                "version {newer} of the job form is newer than this program, which reads versions 1 and 2"
            ))),
        }
    }
}

/// A plain length in millimetres.
fn mm(digits: u32, decimals: u8) -> Entered<Length> {
    Entered::plain(digits, decimals, Unit::Millimetre)
}

impl Default for Job {
    /// A plain soft steel shank of 20 mm that becomes 16 mm: complete, so that every figure can be seen.
    fn default() -> Self {
        Self {
            version: FormVersion,
            title: String::new(),
            part: Part::default(),
            wanted: Wanted::default(),
            shop: Shop::default(),
            setup: Setup::default(),
            record: Record::default(),
        }
    }
}

impl Default for Part {
    fn default() -> Self {
        Self {
            material: WorkMaterial::MediumCarbonSteel,
            head_diameter: mm(40, 0),
            head_length: mm(30, 0),
            head_beyond: Vec::new(),
            runout: mm(0, 0),
            end_runout: None,
            surface_hardness: None,
            case_depth: None,
            core_hardness: None,
            cutting_group: None,
            file_bite: None,
            shank_length: None,
            sections: vec![
                Turned::Cylinder {
                    diameter: mm(20, 0),
                    length: mm(80, 0),
                }
                .into(),
            ],
            features: Vec::new(),
            bores: Vec::new(),
        }
    }
}

impl Default for Wanted {
    fn default() -> Self {
        Self {
            diameter: mm(16, 0),
            tolerance: Tolerance::Class(ShaftClass::H6),
            length: mm(50, 0),
            shoulder_radius: mm(8, 1),
            end_chamfer: mm(1, 0),
            countersink: Some(mm(53, 1)),
            roughness: None,
            receiver: Receiver::default(),
            receiver_depth: None,
            least_grip: None,
            duty: Duty::default(),
        }
    }
}
