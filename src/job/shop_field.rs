//! The names of the fields of the machine, the tool, the holding, a pinned pass and the rates.

use super::field::{Bounds, needed, optional};
use super::item_field::item_fields;
use crate::quantity::Dimension::{
    Angle, Count, Feed, Force, Length, Money, Power, Rotation, Share, Stiffness, Time, Torque,
};

item_fields! {
    /// A field of the machine.
    MachineField {
        Name "name",
        Rigidity "rigidity",
        Speeds "speeds",
        SlowestSpeed "speeds.from",
        FastestSpeed "speeds.to",
        Feeds "feeds",
        FinestFeed "feeds.from",
        CoarsestFeed "feeds.to",
        Power "power",
        Efficiency "efficiency",
        Torque "torque",
        Swing "swing",
        ChuckTopSpeed "chuck_top_speed",
        Graduation "graduation",
        DialReads "dial_reads",
        CompoundGraduation "compound_graduation",
        FineInfeed "fine_infeed",
        HeadStiffness "head_stiffness",
        TailStiffness "tail_stiffness",
        PostStiffness "post_stiffness",
    }
}
item_fields! {
    /// A field of the turning tool, beyond what its edge is made of.
    EdgeField {
        Name "name",
        NoseRadius "nose_radius",
        CuttingEdgeAngle "cutting_edge_angle",
        Rake "rake",
        LeastFeed "least_feed",
        MostFeed "most_feed",
        LeastDepth "least_depth",
        MostDepth "most_depth",
        Price "price",
        Edges "edges",
        RegrindTime "regrind_time",
    }
}
item_fields! {
    /// A field of how the part is held.
    HoldingField {
        Support "support",
        Jaws "jaws",
        GripLength "grip_length",
        GripForce "grip_force",
        TailForce "tail_force",
        NearPlace "near_place",
        FarPlace "far_place",
    }
}
item_fields! {
    /// A field of one pass that is pinned by hand.
    PinField {
        After "after",
        Infeed "infeed",
        Speed "speed",
        Feed "feed",
    }
}
item_fields! {
    /// A field of one measuring instrument.
    InstrumentField {
        Name "name",
        Kind "kind",
        Graduation "graduation",
        PermissibleError "permissible_error",
        Reference "reference",
        Repeat "repeat",
    }
}
item_fields! {
    /// What a job costs beside its time.
    RateField {
        Currency "currency",
        PerHour "per_hour",
        Least "least",
        Consumables "consumables",
        Postage "postage",
    }
}

item_fields! {
    /// Which of the three times of a step.
    TimeBound {
        Low "low",
        Likely "likely",
        High "high",
    }
}

impl MachineField {
    /// Its range; `None` for choices, lists and names.
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Name | Self::Rigidity | Self::Speeds | Self::Feeds | Self::DialReads => {
                return None;
            }
            Self::SlowestSpeed | Self::FastestSpeed | Self::ChuckTopSpeed => {
                optional(Rotation, 1.0, 50_000.0)
            }
            Self::FinestFeed | Self::CoarsestFeed => optional(Feed, 0.001, 10.0),
            // A motor without power turns nothing.
            Self::Power => optional(Power, 10.0, 1e6),
            Self::Efficiency => optional(Share, 0.1, 1.0),
            Self::Torque => optional(Torque, 0.1, 1e6),
            Self::Swing => optional(Length, 10.0, 5000.0),
            Self::Graduation | Self::CompoundGraduation => optional(Length, 0.0005, 1.0),
            Self::FineInfeed => optional(Length, 0.0001, 1.0),
            Self::HeadStiffness | Self::TailStiffness | Self::PostStiffness => {
                optional(Stiffness, 0.1, 10_000.0)
            }
        })
    }
}

impl EdgeField {
    /// Its range; `None` for the name.
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Name => return None,
            Self::NoseRadius => optional(Length, 0.0, 20.0),
            Self::CuttingEdgeAngle => optional(Angle, 10.0, 120.0),
            Self::Rake => optional(Angle, -30.0, 40.0),
            Self::LeastFeed | Self::MostFeed => optional(Feed, 0.001, 10.0),
            Self::LeastDepth | Self::MostDepth => optional(Length, 0.0005, 50.0),
            Self::Price => optional(Money, 0.0, 1e6),
            Self::Edges => optional(Count, 1.0, 100.0),
            Self::RegrindTime => optional(Time, 0.0, 36_000.0),
        })
    }
}

impl HoldingField {
    /// Its range; `None` for choices.
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Support | Self::Jaws => return None,
            Self::GripLength => optional(Length, 0.5, 5000.0),
            Self::GripForce | Self::TailForce => optional(Force, 1.0, 1e7),
            // Planes may lie on the shank, from the shoulder outward, or back on the head.
            Self::NearPlace | Self::FarPlace => optional(Length, -5000.0, 5000.0),
        })
    }
}

impl PinField {
    /// Its range.
    pub(super) const fn bounds(self) -> Bounds {
        match self {
            Self::After => needed(Length, 0.5, 2000.0),
            Self::Infeed => needed(Length, 0.001, 50.0),
            Self::Speed => optional(Rotation, 1.0, 50_000.0),
            Self::Feed => optional(Feed, 0.001, 10.0),
        }
    }
}

impl InstrumentField {
    /// Its range; `None` for name and kind. From a tenth of a micrometre, below which no shop measures, to what a folding
    /// rule shows.
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Name | Self::Kind => return None,
            Self::Graduation => optional(Length, 0.0001, 1.0),
            Self::PermissibleError | Self::Repeat => optional(Length, 0.0, 1.0),
            Self::Reference => optional(Length, 0.5, 2000.0),
        })
    }
}

impl RateField {
    /// Its range; `None` for the currency, which is a text.
    pub(super) const fn bounds(self) -> Option<Bounds> {
        Some(match self {
            Self::Currency => return None,
            Self::PerHour | Self::Least | Self::Consumables | Self::Postage => {
                optional(Money, 0.0, 1e9)
            }
        })
    }
}
