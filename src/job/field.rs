//! The name of each thing that can be entered: shared by the job, the findings, the page and the scripts.

use core::fmt;

use crate::quantity::Dimension;

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
    Runout,
    Sections,
    Section(u8, SectionField),
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
    ReceiverDepth,
    LeastGrip,
    Tool,
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
}

/// A field of one outer section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[expect(
    missing_docs,
    reason = "each field is documented where the job holds it"
)]
pub enum SectionField {
    Kind,
    Diameter,
    ShoulderDiameter,
    EndDiameter,
    Length,
    Taper,
    PastGauge,
}

/// A field of one bore.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[expect(
    missing_docs,
    reason = "each field is documented where the job holds it"
)]
pub enum BoreField {
    Kind,
    Diameter,
    Depth,
    Bottom,
    Thread,
    ThreadDepth,
    DrillDepth,
    CentreDrill,
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

const fn needed(dimension: Dimension, least: f64, most: f64) -> Bounds {
    Bounds {
        dimension,
        least,
        most,
        optional: false,
    }
}

const fn optional(dimension: Dimension, least: f64, most: f64) -> Bounds {
    Bounds {
        dimension,
        least,
        most,
        optional: true,
    }
}

impl Field {
    /// The allowed range, the one place that says it; `None` for fields that are no numbers.
    ///
    /// The upper ends are what a shop's lathe can swing or carry, generously; the lower ends are what can be
    /// measured at all.
    pub const fn bounds(self) -> Option<Bounds> {
        use Dimension::{Feed, Length, Rotation, Speed, Time};
        Some(match self {
            Self::HeadDiameter => needed(Length, 0.5, 2000.0),
            Self::HeadLength => needed(Length, 0.0, 5000.0),
            Self::Runout => needed(Length, 0.0, 10.0),
            Self::Section(_, field) => match field {
                SectionField::Diameter
                | SectionField::ShoulderDiameter
                | SectionField::EndDiameter => needed(Length, 0.5, 1000.0),
                SectionField::Length => needed(Length, 0.01, 3000.0),
                SectionField::PastGauge => needed(Length, -300.0, 300.0),
                SectionField::Kind | SectionField::Taper => return None,
            },
            Self::Bore(_, field) => match field {
                BoreField::Diameter => needed(Length, 0.2, 1000.0),
                BoreField::Depth | BoreField::ThreadDepth | BoreField::DrillDepth => {
                    needed(Length, 0.1, 5000.0)
                }
                BoreField::Kind
                | BoreField::Bottom
                | BoreField::Thread
                | BoreField::CentreDrill => return None,
            },
            Self::WantedDiameter => needed(Length, 0.5, 1000.0),
            Self::UpperDeviation | Self::LowerDeviation => needed(Length, -5.0, 5.0),
            Self::WantedLength => needed(Length, 0.5, 3000.0),
            Self::ShoulderRadius | Self::EndChamfer | Self::FacingStock => {
                needed(Length, 0.0, 50.0)
            }
            // No centre drill has a pilot thinner than 0.5 mm.
            Self::Countersink => optional(Length, 0.6, 60.0),
            Self::ReceiverDepth | Self::LeastGrip => optional(Length, 0.5, 3000.0),
            Self::Kerf => optional(Length, 0.0, 20.0),
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
            | Self::Sections
            | Self::Bores
            | Self::Tolerance
            | Self::Tool
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
            Self::Runout => "part.runout",
            Self::Sections => "part.sections",
            Self::Section(index, field) => {
                return write!(f, "part.sections[{index}].{}", field.name());
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
            Self::ReceiverDepth => "wanted.receiver_depth",
            Self::LeastGrip => "wanted.least_grip",
            Self::Tool => "shop.tool",
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
        };
        f.write_str(path)
    }
}

impl SectionField {
    const fn name(self) -> &'static str {
        match self {
            Self::Kind => "kind",
            Self::Diameter => "diameter",
            Self::ShoulderDiameter => "shoulder_diameter",
            Self::EndDiameter => "end_diameter",
            Self::Length => "length",
            Self::Taper => "taper",
            Self::PastGauge => "past_gauge",
        }
    }
}

impl BoreField {
    const fn name(self) -> &'static str {
        match self {
            Self::Kind => "kind",
            Self::Diameter => "diameter",
            Self::Depth => "depth",
            Self::Bottom => "bottom",
            Self::Thread => "thread",
            Self::ThreadDepth => "thread_depth",
            Self::DrillDepth => "drill_depth",
            Self::CentreDrill => "centre_drill",
        }
    }
}

impl serde::Serialize for Field {
    /// As its path.
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
