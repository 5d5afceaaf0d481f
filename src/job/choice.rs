//! Choices from a short list, each with a stable code for files and a stable number for links.

use core::fmt;

use serde::{Deserialize, Serialize};

use crate::tables::{
    CentreDrillSize, ColletSize, CuttingGroup, FileBite, HoleClass, SeatLoad, ShaftClass,
    ShankSize, SleeveDuty, TaperSize, ThreadSize, ToolKind, WorkMaterial,
};

/// What the bottom of a plain hole is like.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BoreBottom {
    /// The 118° point of a twist drill.
    DrillPoint,
    /// Flat.
    Flat,
}

/// How the offcut is taken off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CutOffMethod {
    /// A thin abrasive disc in a hand grinder.
    HandDisc,
    /// An abrasive wheel in a stand.
    ChopWheel,
    /// A hacksaw or a band saw.
    Saw,
    /// A parting tool in the lathe.
    PartingTool,
}

/// Whether the centre is made before or after the end is faced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CentreOrder {
    /// The depth is dialled from the finished face.
    AfterFacing,
    /// The facing stock is still on, and the depth is dialled from the rough face.
    BeforeFacing,
}

/// What a place along the shank is measured from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Datum {
    /// The shoulder.
    Shoulder,
    /// The free end as received.
    FreeEnd,
}

/// Which end of the part a hole was made from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BoreEnd {
    /// The free end of the shank.
    FreeEnd,
    /// The far end of the head.
    HeadEnd,
}

/// How many flats there are round the shank.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Flats {
    /// One.
    One,
    /// Two, opposite one another.
    Two,
}

/// What the passes are chosen for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Aim {
    /// The least time.
    LeastTime,
    /// The least cost: an hour of the shop against the edges that are used up.
    LeastCost,
}

/// What one division of the cross-slide's dial means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DialReads {
    /// So much off the diameter.
    Diameter,
    /// So much movement of the slide.
    Radius,
}

/// How stiff a lathe is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Rigidity {
    /// A bench lathe, a worn one, or a slide run far out.
    Light,
    /// A common workshop lathe in fair order.
    Medium,
    /// A heavy lathe, slides short and gibs close.
    Heavy,
}

/// What holds the part while it is turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Support {
    /// A chuck on the head alone.
    Chuck,
    /// A chuck on the head and a live centre in the end.
    ChuckAndCentre,
    /// A centre in each end.
    BetweenCentres,
    /// A collet on the head alone.
    Collet,
}

/// What the jaws are like.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum JawFace {
    /// Ground or worn smooth, or soft jaws.
    Smooth,
    /// With teeth.
    Serrated,
}

macro_rules! all {
    ($($name:ident $count:literal [$($one:ident),*])*) => {$(
        impl $name {
            /// Every one, in the order that links count them by: append only.
            pub const ALL: [Self; $count] = [$(Self::$one),*];
        }
    )*};
}
all! {
    Aim 2 [LeastTime, LeastCost]
    DialReads 2 [Diameter, Radius]
    Rigidity 3 [Light, Medium, Heavy]
    Support 4 [Chuck, ChuckAndCentre, BetweenCentres, Collet]
    JawFace 2 [Smooth, Serrated]
}

impl Datum {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 2] = [Self::Shoulder, Self::FreeEnd];
}

impl BoreEnd {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 2] = [Self::FreeEnd, Self::HeadEnd];
}

impl Flats {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 2] = [Self::One, Self::Two];
}

impl BoreBottom {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 2] = [Self::DrillPoint, Self::Flat];
}

impl CutOffMethod {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 4] = [
        Self::HandDisc,
        Self::ChopWheel,
        Self::Saw,
        Self::PartingTool,
    ];
}

impl CentreOrder {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 2] = [Self::AfterFacing, Self::BeforeFacing];
}

/// Reads and writes a choice as its code.
macro_rules! as_code {
    ($($name:ident, $words:literal;)*) => {$(
        impl Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.code())
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let code = String::deserialize(deserializer)?;
                Self::from_code(&code).ok_or_else(|| {
                    serde::de::Error::custom(Unknown { what: $words, code: &code })
                })
            }
        }
    )*};
}
as_code! {
    TaperSize, "standard taper";
    ThreadSize, "thread";
    CentreDrillSize, "centre drill";
    ShaftClass, "tolerance class";
    HoleClass, "hole class";
    SeatLoad, "bearing load";
    ColletSize, "collet";
    ShankSize, "shank";
    SleeveDuty, "sleeve duty";
    ToolKind, "tool";
    WorkMaterial, "material";
    CuttingGroup, "material group";
    FileBite, "way of a file";
}

struct Unknown<'a> {
    what: &'static str,
    code: &'a str,
}

impl fmt::Display for Unknown<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let short: String = self.code.chars().take(40).collect();
        write!(f, "no {} is called '{short}'", self.what)
    }
}
