//! English: what symbols stand for, and where formulas come from.

use skimwright::tables::Confirmed;
use skimwright::working::{Meaning, Source};

use super::{Words, english_fields};

#[expect(clippy::too_many_lines, reason = "a catalogue: one line each")]
pub(super) fn meaning(words: Words, meaning: Meaning) -> String {
    let fixed = match meaning {
        Meaning::Field(field) => return english_fields::in_full(words, field),
        Meaning::ShankReceived => "Shank as received",
        Meaning::CutFromShoulder => "Mark from the shoulder",
        Meaning::ShankFinished => "Shank after facing",
        Meaning::FacingTaken => "Faced off",
        Meaning::LargestDiameter => "Largest diameter of the stock",
        Meaning::AimedDiameter => "Diameter aimed at, middle of the tolerance",
        Meaning::ToTurn => "To be turned off the diameter, polishing stock left on",
        Meaning::BoreAtFace => "Hole at the finished face",
        Meaning::BoreAtCone => "Hole where the cone runs out into it",
        Meaning::PilotDiameter => "Pilot diameter of the drill",
        Meaning::PilotLength => "Pilot length of the drill, middle",
        Meaning::HalfAngle => "Half the included angle",
        Meaning::ConeDepth => "Depth of the cone",
        Meaning::FacingStillOn => "Facing stock still on",
        Meaning::OffcutVolume => "Volume",
        Meaning::SectionBefore => "Weakest section, as received",
        Meaning::SectionAfter => "Weakest section, finished",
        Meaning::PartVolume => "Volume of the whole part",
        Meaning::VolumeMoment => {
            "Each bit of volume times its distance from the shoulder, added up"
        }
        Meaning::ChipVolume => "Volume of all chips",
        Meaning::MaterialDensity => "Density of the material",
        Meaning::PassCount => "Number of roughing passes",
        Meaning::CuttingTime => "Under feed, approach included",
        Meaning::HandlingTime => "Setting, returning, measuring, all passes",
        Meaning::PolishingTime => "Polishing and measuring",
        Meaning::SmallestStock => "Smallest diameter of the stock over the length",
        Meaning::EngagedDiameter => "Largest diameter cut",
        Meaning::BoreDiameter => "Hole there, threads at their major diameter",
        Meaning::OuterDiameter => "Outside there, smallest permitted",
        Meaning::AxisOffset => "How far the axes of hole and shank may lie apart",
        Meaning::StepAtShoulder => "Head over shank, diameters",
        Meaning::ReceiverLength => "Length of the receiver itself",
        Meaning::FilletThatCounts => "Fillet that can be cut; a sharp corner counts 0.2 mm",
        Meaning::PeakStress => "Peak of the stress where safety is least",
        Meaning::FilletShare => "Fillet over the shank's diameter",
        Meaning::HeadAtShoulder => "Head at the shoulder",
        Meaning::YieldStrength => "Yield strength, likely",
        Meaning::TensileStrength => "Tensile strength, likely",
        Meaning::EquivalentStress => "Equivalent stress where safety is least",
        Meaning::StressAmplitude => "Stress that changes sign with each turn",
        Meaning::MeanStress => "Stress that stays",
        Meaning::EnduranceLimit => "What the steel stands for ever",
        Meaning::Interference => {
            "Interference, middle; at the least, 2 · 0.8 · 4 µm of roughness is pressed flat"
        }
        Meaning::Pressure => "Pressure between sleeve and shank",
        Meaning::Friction => "Friction, likely",
        Meaning::SeatLength => "Length of the seat",
        Meaning::RoomToAssemble => "Room to slip on",
        Meaning::SpindlePower => "Power that reaches the spindle",
        Meaning::HighForce => "Tangential force, high end",
        Meaning::SpecificForce => "Specific force of a chip of 1 mm × 1 mm, likely",
        Meaning::ChipThickness => "Mean thickness of the chip",
        Meaning::ForceExponent => "How it falls with thickness",
        Meaning::PassInfeed => "Infeed of the pass",
        Meaning::PassFeed => "Feed of the pass",
        Meaning::PassSpeed => "Cutting speed of the pass",
        Meaning::RakeFactor => "Factor for the rake",
        Meaning::SlowFactor => "Factor for slow cutting",
        Meaning::AcrossForce => "Force across the work in the last cut, at most",
        Meaning::StiffnessThere => "Stiffness between work and tool there",
        Meaning::Overhang => "Sticks out",
        Meaning::EqualDiameter => "Plain bar that is as stiff",
        Meaning::RunoutThere => "Runout there, full reading",
        Meaning::FeedingMean => "Under feed, mean",
        Meaning::StepsMean => "All else, mean",
        Meaning::TimeDeviation => "Standard deviation of the total",
        Meaning::TimeSkewness => {
            "Skewness: above zero, it is more often much slower than much quicker"
        }
        Meaning::PaceSpread => "How much quicker or slower than usual one person may work",
        Meaning::TotalTime => "Whole time, likely",
        Meaning::MeasuredNow => "Measured now",
        Meaning::TakesOffset => "Comes off whatever is dialled",
        Meaning::TakesShare => "Share of the infeed that comes off",
        Meaning::DialledOnDiameter => "Dialled in, on diameter",
        Meaning::LeftStanding => "Dialled in before, not off yet",
        Meaning::HourlyRate => "Charge for an hour",
        Meaning::EdgesCharged => "Edges charged",
        Meaning::EdgePrice => "Price of an edge",
        Meaning::DiscsUsed => "Cut-off discs used up",
        Meaning::DiscPrice => "Price of a disc",
        Meaning::Consumables => "Oil, cloth, abrasive, packing",
        Meaning::MinimumCharge => "Least that is charged, postage apart",
        Meaning::Postage => "Postage",
        Meaning::ReadingShown => "Shown by the instrument",
        Meaning::ReadingCount => "Readings",
        Meaning::WorkExpansion => "Expansion of the work",
        Meaning::WorkAboveReference => "Work warmer than 20 °C",
        Meaning::InstrumentExpansion => "Expansion of the instrument",
        Meaning::InstrumentAboveReference => "Instrument warmer than 20 °C",
        Meaning::OwnUncertainty => "Standard uncertainty that more readings make smaller",
        Meaning::CommonUncertainty => "Standard uncertainty that all readings share",
        Meaning::TaperSlope => "Growth of the diameter along the shank",
        Meaning::TaperUncertainty => "Its standard uncertainty over the length",
        Meaning::StraightPart => "Straight part of the shank",
        Meaning::BetweenSupports => "Chuck to live centre",
    };
    fixed.to_owned()
}

pub(super) fn source(source: Source) -> String {
    match source {
        Source::Geometry => "Plain geometry.".to_owned(),
        Source::CommonPractice => "Common practice, no source.".to_owned(),
        Source::Published { title, confirmed } => {
            let mark = match confirmed {
                Confirmed::TwoSources => "figures seen in two sources",
                Confirmed::OneSource => "figures seen in one source",
                Confirmed::Memory => "figures from memory: measure your own",
            };
            format!("{title}; {mark}.")
        }
    }
}
