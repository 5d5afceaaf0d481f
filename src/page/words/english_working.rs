//! English: what symbols stand for, and where formulas come from.

use skimwright::tables::Confirmed;
use skimwright::working::{Meaning, Source};

use super::english_fields;

pub(super) fn meaning(meaning: Meaning) -> String {
    let fixed = match meaning {
        Meaning::Field(field) => return english_fields::in_full(field),
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
        Meaning::MaterialDensity => "Density of the material",
        Meaning::PassCount => "Number of roughing passes",
        Meaning::CuttingTime => "Under feed, approach included",
        Meaning::HandlingTime => "Setting, returning, measuring, all passes",
        Meaning::PolishingTime => "Polishing and measuring",
        Meaning::SmallestStock => "Smallest diameter of the stock over the length",
        Meaning::EngagedDiameter => "Largest diameter cut",
        Meaning::BoreDiameter => "Hole there, threads at their major diameter",
        Meaning::OuterDiameter => "Outside there, smallest permitted",
        Meaning::AxisOffset => "Axis off by half the runout",
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
