//! Everything that a person enters: the part as received, what is wanted of it, and the shop it is done in.
//!
//! A job is plain data with a complete default. Nothing in it is checked beyond its form: [`crate::plan`]
//! says what is wrong with it.

mod choice;
mod field;
mod form;
mod item_field;
mod kinds;
mod part;
mod receiver;
mod slot;

use serde::{Deserialize, Serialize};

pub use choice::{BoreBottom, BoreEnd, CentreOrder, CutOffMethod, Datum, Flats};
pub use field::{Bounds, Field};
pub use item_field::{BoreField, FeatureField, HeadField, ReceiverField, SectionField};
pub use part::{
    Bore, Cut, CutKind, Feature, HeadPiece, Hole, HoleKind, Part, Place, Section, Turned,
    TurnedKind,
};
pub use receiver::{Receiver, ReceiverKind};

use crate::quantity::{
    Entered, Feed, Force, Length, Power, RotationalSpeed, Speed, Time, Torque, Unit,
};
use crate::tables::{ShaftClass, ToolKind, WorkMaterial};

/// One part, what is wanted of it, and the shop it is done in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Job {
    /// The version of this form, 1.
    pub version: FormVersion,
    /// What the job is called; at most [`Job::MOST_TITLE_CHARACTERS`] characters.
    pub title: String,
    /// The part before the work.
    pub part: Part,
    /// What is wanted.
    pub wanted: Wanted,
    /// What it is done with.
    pub shop: Shop,
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

/// What the job is done with. An empty optional field means the usual value for the material and the tool.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Shop {
    /// The turning tool.
    pub tool: ToolKind,
    /// How the offcut is taken off.
    pub cut_off_method: CutOffMethod,
    /// Width of the cut.
    pub kerf: Option<Entered<Length>>,
    /// Left on the end for facing.
    pub facing_stock: Entered<Length>,
    /// Whether the centre is made before or after facing.
    pub centre_order: CentreOrder,
    /// Most infeed of a roughing pass, on radius.
    pub rough_infeed: Option<Entered<Length>>,
    /// What each of the two equal last cuts takes off the diameter.
    pub last_cut: Entered<Length>,
    /// Left on the diameter for polishing.
    pub polishing_stock: Entered<Length>,
    /// Cutting speed.
    pub cutting_speed: Option<Entered<Speed>>,
    /// Feed of the roughing passes.
    pub rough_feed: Option<Entered<Feed>>,
    /// Feed of the two last cuts.
    pub finish_feed: Option<Entered<Feed>>,
    /// The highest spindle speed that machine, chuck and work allow.
    pub top_speed: Entered<RotationalSpeed>,
    /// Travel before the tool meets metal.
    pub approach: Entered<Length>,
    /// Setting the depth and engaging the feed, each pass.
    pub set_time: Entered<Time>,
    /// Bringing the carriage back, each pass.
    pub return_time: Entered<Time>,
    /// Measuring, each pass.
    pub measure_time: Entered<Time>,
    /// Polishing to size, once.
    pub polish_time: Entered<Time>,
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
    /// Most passes that a plan lists.
    pub const MOST_PASSES: u32 = 200;
}

/// The version of the JSON form: always 1 so far.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FormVersion;

impl Serialize for FormVersion {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_u8(1)
    }
}

impl<'de> Deserialize<'de> for FormVersion {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        match u8::deserialize(deserializer)? {
            1 => Ok(Self),
            other => Err(serde::de::Error::custom(format_args!(
                "version {other} of the job form is not known here; this program reads version 1"
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
            receiver: Receiver::default(),
            receiver_depth: None,
            least_grip: None,
            duty: Duty::default(),
        }
    }
}

impl Default for Shop {
    /// Depths and times by common practice: two equal last cuts of 0.25 mm on diameter, 0.02 mm for polishing.
    fn default() -> Self {
        Self {
            tool: ToolKind::IndexableCarbide,
            cut_off_method: CutOffMethod::Saw,
            kerf: None,
            facing_stock: mm(1, 0),
            centre_order: CentreOrder::AfterFacing,
            rough_infeed: None,
            last_cut: mm(25, 2),
            polishing_stock: mm(2, 2),
            cutting_speed: None,
            rough_feed: None,
            finish_feed: None,
            top_speed: Entered::plain(2000, 0, Unit::RevolutionPerMinute),
            approach: mm(2, 0),
            set_time: Entered::plain(13, 0, Unit::Second),
            return_time: Entered::plain(9, 0, Unit::Second),
            measure_time: Entered::plain(24, 0, Unit::Second),
            polish_time: Entered::plain(120, 0, Unit::Second),
        }
    }
}
