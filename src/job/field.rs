//! The name of each thing that can be entered: shared by the job, the findings, the page and the scripts.

use core::fmt;

use super::item_field::{BoreField, FeatureField, HeadField, ReceiverField, SectionField};
use super::shop_field::{
    EdgeField, HoldingField, InstrumentField, MachineField, PinField, RateField, TimeBound,
};
use crate::costing::Step;
use crate::quantity::show::base_value_in;
use crate::quantity::{Dimension, Unit, Units};

/// A field of the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[expect(
    missing_docs,
    reason = "each field is documented where the job holds it"
)]
pub enum Field {
    Title,
    Material,
    HeadDiameter,
    HeadLength,
    HeadBeyond,
    Head(u8, HeadField),
    Runout,
    EndRunout,
    SurfaceHardness,
    CaseDepth,
    CoreHardness,
    CuttingGroup,
    FileBite,
    ShankLength,
    Sections,
    Section(u8, SectionField),
    Features,
    Feature(u8, FeatureField),
    Bores,
    Bore(u8, BoreField),
    WantedDiameter,
    Tolerance,
    UpperDeviation,
    LowerDeviation,
    WantedLength,
    ShoulderRadius,
    EndChamfer,
    Countersink,
    Roughness,
    Receiver(ReceiverField),
    ReceiverDepth,
    LeastGrip,
    DutyTorque,
    DutyForce,
    DutyOverhang,
    DutyPower,
    DutySpeed,
    Tool,
    Edge(EdgeField),
    Machine(MachineField),
    Aim,
    CutOffMethod,
    Kerf,
    FacingStock,
    CentreOrder,
    RoughInfeed,
    LastCut,
    PolishingStock,
    CuttingSpeed,
    RoughFeed,
    FinishFeed,
    TopSpeed,
    Approach,
    SetTime,
    ReturnTime,
    MeasureTime,
    PolishTime,
    Step(Step, TimeBound),
    Rate(RateField),
    Holding(HoldingField),
    /// A reading of the indicator: the far plane or the near one, and the quarter, from 0.
    Dial(DialPlane, u8),
    Pins,
    Pin(u8, PinField),
    RoomTemperature,
    Instruments,
    Instrument(u8, InstrumentField),
    MeasuredBy,
}

/// Which of the two places along the part the indicator stands at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum DialPlane {
    /// Near the chuck.
    Near,
    /// Further out.
    Far,
}

/// What may be typed into a field of numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// What the field measures.
    pub dimension: Dimension,
    /// The least allowed, in the base unit of the dimension.
    pub least: f64,
    /// The most allowed, in the base unit of the dimension.
    pub most: f64,
    /// Whether it may be left empty.
    pub optional: bool,
}

pub(super) const fn needed(dimension: Dimension, least: f64, most: f64) -> Bounds {
    Bounds {
        dimension,
        least,
        most,
        optional: false,
    }
}

pub(super) const fn optional(dimension: Dimension, least: f64, most: f64) -> Bounds {
    Bounds {
        dimension,
        least,
        most,
        optional: true,
    }
}

impl Bounds {
    /// The least and the most, shown in a unit of the dimension.
    pub fn shown_in(self, unit: Unit) -> [String; 2] {
        [self.least, self.most].map(|end| base_value_in(end, unit))
    }
}

impl Field {
    /// The unit that a bare number takes in this field, or in this list of numbers; `None` for other fields.
    pub fn typed_unit(self, units: Units) -> Option<Unit> {
        let bounds = self.of_each().unwrap_or(self).bounds()?;
        Some(match self {
            // Millimetres are far too coarse for it, and so are inches.
            Self::Roughness => Unit::Micrometre,
            _ => units.typed_unit(bounds.dimension),
        })
    }

    /// The allowed range, the one place that says it; `None` for fields that are no numbers.
    ///
    /// The upper ends are what a shop's lathe can swing or carry, generously; the lower ends are what can be
    /// measured at all.
    pub const fn bounds(self) -> Option<Bounds> {
        use Dimension::{
            Feed, Force, Hardness, Length, Power, Rotation, Speed, Temperature, Time, Torque,
        };
        Some(match self {
            Self::HeadDiameter => needed(Length, 0.5, 2000.0),
            Self::HeadLength => needed(Length, 0.0, 5000.0),
            Self::Runout => needed(Length, 0.0, 10.0),
            Self::Section(_, field) => return field.bounds(),
            Self::Feature(_, field) => return field.bounds(),
            Self::Bore(_, field) => return field.bounds(),
            Self::Head(_, field) => return Some(field.bounds()),
            Self::Receiver(field) => return field.bounds(),
            Self::Edge(field) => return field.bounds(),
            Self::Machine(field) => return field.bounds(),
            Self::Holding(field) => return field.bounds(),
            Self::Rate(field) => return field.bounds(),
            Self::Pin(_, field) => return Some(field.bounds()),
            Self::Instrument(_, field) => return field.bounds(),
            // An unheated shed in winter, a foundry in summer.
            Self::RoomTemperature => optional(Temperature, -10.0, 60.0),
            Self::Step(..) => optional(Time, 0.0, 36_000.0),
            Self::Dial(..) => optional(Length, -10.0, 10.0),
            // Finer than lapped, coarser than a saw leaves it.
            Self::Roughness => optional(Length, 0.000_01, 0.1),
            Self::EndRunout => optional(Length, 0.0, 10.0),
            // Rockwell C is defined from 20 up; soft cores are written as 15 and less, which only says soft.
            Self::SurfaceHardness | Self::CoreHardness => optional(Hardness, 0.0, 70.0),
            Self::WantedDiameter => needed(Length, 0.5, 1000.0),
            Self::UpperDeviation | Self::LowerDeviation => needed(Length, -5.0, 5.0),
            Self::WantedLength => needed(Length, 0.5, 3000.0),
            Self::ShoulderRadius | Self::EndChamfer | Self::FacingStock => {
                needed(Length, 0.0, 50.0)
            }
            // No centre drill has a pilot thinner than 0.5 mm.
            Self::Countersink => optional(Length, 0.6, 60.0),
            Self::ShankLength | Self::ReceiverDepth | Self::LeastGrip => {
                optional(Length, 0.5, 3000.0)
            }
            Self::DutyTorque => optional(Torque, 0.0, 1e6),
            Self::DutyForce => optional(Force, 0.0, 1e7),
            Self::DutyOverhang => optional(Length, 0.0, 5000.0),
            Self::DutyPower => optional(Power, 0.0, 1e7),
            Self::DutySpeed => optional(Rotation, 1.0, 100_000.0),
            Self::CaseDepth | Self::Kerf => optional(Length, 0.0, 20.0),
            Self::RoughInfeed => optional(Length, 0.005, 10.0),
            Self::LastCut => needed(Length, 0.005, 5.0),
            Self::PolishingStock => needed(Length, 0.0, 1.0),
            Self::CuttingSpeed => optional(Speed, 0.5, 3000.0),
            Self::RoughFeed | Self::FinishFeed => optional(Feed, 0.005, 3.0),
            Self::TopSpeed => needed(Rotation, 5.0, 50_000.0),
            Self::Approach => needed(Length, 0.0, 100.0),
            Self::SetTime | Self::ReturnTime | Self::MeasureTime | Self::PolishTime => {
                needed(Time, 0.0, 7200.0)
            }
            Self::Title
            | Self::Material
            | Self::CuttingGroup
            | Self::FileBite
            | Self::HeadBeyond
            | Self::Sections
            | Self::Features
            | Self::Bores
            | Self::Tolerance
            | Self::Tool
            | Self::Aim
            | Self::Pins
            | Self::Instruments
            | Self::MeasuredBy
            | Self::CutOffMethod
            | Self::CentreOrder => return None,
        })
    }
}

impl fmt::Display for Field {
    /// The path of the field in the JSON form: `part.sections[0].length`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let path = match self {
            Self::Title => "title",
            Self::Material => "part.material",
            Self::HeadDiameter => "part.head_diameter",
            Self::HeadLength => "part.head_length",
            Self::HeadBeyond => "part.head_beyond",
            Self::Head(index, field) => {
                return write!(f, "part.head_beyond[{index}].{}", field.name());
            }
            Self::Runout => "part.runout",
            Self::EndRunout => "part.end_runout",
            Self::SurfaceHardness => "part.surface_hardness",
            Self::CaseDepth => "part.case_depth",
            Self::CoreHardness => "part.core_hardness",
            Self::CuttingGroup => "part.cutting_group",
            Self::FileBite => "part.file_bite",
            Self::ShankLength => "part.shank_length",
            Self::Sections => "part.sections",
            Self::Section(index, field) => {
                return write!(f, "part.sections[{index}].{}", field.name());
            }
            Self::Features => "part.features",
            Self::Feature(index, field) => {
                return write!(f, "part.features[{index}].{}", field.name());
            }
            Self::Bores => "part.bores",
            Self::Bore(index, field) => return write!(f, "part.bores[{index}].{}", field.name()),
            Self::WantedDiameter => "wanted.diameter",
            Self::Tolerance => "wanted.tolerance",
            Self::UpperDeviation => "wanted.tolerance.upper",
            Self::LowerDeviation => "wanted.tolerance.lower",
            Self::WantedLength => "wanted.length",
            Self::ShoulderRadius => "wanted.shoulder_radius",
            Self::EndChamfer => "wanted.end_chamfer",
            Self::Countersink => "wanted.countersink",
            Self::Roughness => "wanted.roughness",
            Self::Receiver(field) => return write!(f, "wanted.receiver.{}", field.name()),
            Self::ReceiverDepth => "wanted.receiver_depth",
            Self::LeastGrip => "wanted.least_grip",
            Self::DutyTorque => "wanted.duty.torque",
            Self::DutyForce => "wanted.duty.side_load",
            Self::DutyOverhang => "wanted.duty.overhang",
            Self::DutyPower => "wanted.duty.power",
            Self::DutySpeed => "wanted.duty.speed",
            Self::Tool => "shop.tool",
            Self::Edge(field) => return write!(f, "shop.edge.{}", field.name()),
            Self::Machine(field) => return write!(f, "shop.machine.{}", field.name()),
            Self::Aim => "shop.aim",
            Self::CutOffMethod => "shop.cut_off_method",
            Self::Kerf => "shop.kerf",
            Self::FacingStock => "shop.facing_stock",
            Self::CentreOrder => "shop.centre_order",
            Self::RoughInfeed => "shop.rough_infeed",
            Self::LastCut => "shop.last_cut",
            Self::PolishingStock => "shop.polishing_stock",
            Self::CuttingSpeed => "shop.cutting_speed",
            Self::RoughFeed => "shop.rough_feed",
            Self::FinishFeed => "shop.finish_feed",
            Self::TopSpeed => "shop.top_speed",
            Self::Approach => "shop.approach",
            Self::SetTime => "shop.set_time",
            Self::ReturnTime => "shop.return_time",
            Self::MeasureTime => "shop.measure_time",
            Self::PolishTime => "shop.polish_time",
            Self::Step(step, bound) => {
                return write!(f, "shop.times.{}.{}", step.code(), bound.name());
            }
            Self::Rate(field) => return write!(f, "shop.rates.{}", field.name()),
            Self::Holding(HoldingField::NearPlace) => "setup.near.place",
            Self::Holding(HoldingField::FarPlace) => "setup.far.place",
            Self::Holding(field) => return write!(f, "setup.{}", field.name()),
            Self::Dial(plane, quarter) => {
                let plane = match plane {
                    DialPlane::Near => "near",
                    DialPlane::Far => "far",
                };
                return write!(f, "setup.{plane}.readings[{quarter}]");
            }
            Self::Pins => "setup.pins",
            Self::Pin(index, field) => {
                return write!(f, "setup.pins[{index}].{}", field.name());
            }
            Self::RoomTemperature => "setup.room_temperature",
            Self::Instruments => "shop.instruments",
            Self::MeasuredBy => "record.by",
            Self::Instrument(index, field) => {
                return write!(f, "shop.instruments[{index}].{}", field.name());
            }
        };
        f.write_str(path)
    }
}

impl serde::Serialize for Field {
    /// As its path.
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
