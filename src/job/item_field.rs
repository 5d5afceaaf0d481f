//! The names of the fields of what a part has several of: sections, features, holes, pieces of the head.

use super::field::{Bounds, needed, optional};
use crate::quantity::Dimension::{Angle, Length, Taper};

/// Declares the fields of an item, each with its name in files.
macro_rules! item_fields {
    ($(#[$doc:meta])* $name:ident { $($field:ident $text:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        #[expect(
            missing_docs,
            reason = "each field is documented where the job holds it"
        )]
        pub enum $name {
            $($field,)*
        }

        impl $name {
            /// Its name in the JSON form.
            pub(super) const fn name(self) -> &'static str {
                match self {
                    $(Self::$field => $text,)*
                }
            }
        }
    };
}
pub(super) use item_fields;

item_fields! {
    /// A field of one outer section.
    SectionField {
        Kind "kind",
        Taper "taper",
        Thread "thread",
        Diameter "diameter",
        ShoulderDiameter "shoulder_diameter",
        EndDiameter "end_diameter",
        Ratio "ratio",
        Angle "angle",
        PastGauge "past_gauge",
        Length "length",
        DiameterError "diameter_error",
        LengthError "length_error",
        From "from",
        Start "start",
    }
}
item_fields! {
    /// A field of one feature that is cut into the shank.
    FeatureField {
        Kind "kind",
        Over "over",
        Flats "flats",
        Width "width",
        Depth "depth",
        Disc "disc",
        Diameter "diameter",
        Thickness "thickness",
        Length "length",
        SlotWidth "slot_width",
        SlotDepth "slot_depth",
        From "from",
        Start "start",
    }
}
item_fields! {
    /// A field of one hole along the axis.
    BoreField {
        Kind "kind",
        End "end",
        Diameter "diameter",
        Depth "depth",
        Bottom "bottom",
        StepDiameter "step_diameter",
        StepDepth "step_depth",
        Thread "thread",
        ThreadDepth "thread_depth",
        ReamDepth "ream_depth",
        DrillDepth "drill_depth",
        CentreDrill "centre_drill",
        OffCentre "off_centre",
    }
}
item_fields! {
    /// A field of the receiver.
    ReceiverField {
        Kind "kind",
        Collet "collet",
        Shank "shank",
        Hole "hole",
        Load "load",
        RingChamfer "ring_chamfer",
        SleeveDuty "duty",
        SleeveMaterial "material",
        Outside "outside",
        Edge "edge",
    }
}
item_fields! {
    /// A field of one further piece of the head.
    HeadField {
        Diameter "diameter",
        Length "length",
    }
}

impl SectionField {
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Diameter | Self::ShoulderDiameter | Self::EndDiameter => {
                needed(Length, 0.5, 1000.0)
            }
            // Below 1 in 1/2 a taper is steeper than 90 degrees included; below zero it grows outward.
            Self::Ratio => needed(Taper, -1000.0, 1000.0),
            // More than a right angle is no shank, but it is drawn, and its finding says so.
            Self::Angle => needed(Angle, -170.0, 170.0),
            Self::Length => needed(Length, 0.01, 3000.0),
            Self::PastGauge => needed(Length, -300.0, 300.0),
            Self::DiameterError | Self::LengthError => optional(Length, 0.0, 5.0),
            Self::Start => needed(Length, 0.0, 3000.0),
            Self::Kind | Self::Taper | Self::Thread | Self::From => return None,
        })
    }
}

impl FeatureField {
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Over | Self::Diameter | Self::Thickness | Self::Width | Self::Disc => {
                needed(Length, 0.2, 1000.0)
            }
            Self::Depth | Self::Length => needed(Length, 0.01, 3000.0),
            Self::SlotWidth | Self::SlotDepth => optional(Length, 0.0, 1000.0),
            Self::Start => needed(Length, 0.0, 3000.0),
            Self::Kind | Self::Flats | Self::From => return None,
        })
    }
}

impl BoreField {
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Diameter | Self::StepDiameter => needed(Length, 0.2, 1000.0),
            Self::Depth
            | Self::StepDepth
            | Self::ThreadDepth
            | Self::ReamDepth
            | Self::DrillDepth => needed(Length, 0.1, 5000.0),
            Self::OffCentre => optional(Length, 0.0, 500.0),
            Self::Kind | Self::End | Self::Bottom | Self::Thread | Self::CentreDrill => {
                return None;
            }
        })
    }
}

impl ReceiverField {
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            // The tables of shaft fillets begin and end there.
            Self::RingChamfer => needed(Length, 0.05, 9.5),
            Self::Outside => needed(Length, 0.5, 2000.0),
            Self::Edge => optional(Length, 0.0, 50.0),
            Self::Kind
            | Self::Collet
            | Self::Shank
            | Self::Hole
            | Self::Load
            | Self::SleeveDuty
            | Self::SleeveMaterial => return None,
        })
    }
}

impl HeadField {
    pub(super) const fn bounds(self) -> Bounds {
        match self {
            Self::Diameter => needed(Length, 0.5, 2000.0),
            Self::Length => needed(Length, 0.01, 5000.0),
        }
    }
}
