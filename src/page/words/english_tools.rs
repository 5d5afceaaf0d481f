//! English: which tools turn the metal, and what speaks for grinding.

use skimwright::cutting::{Care, GrindReason, Unfit, Verdict};

use super::Words;

/// What a verdict says, without the speeds.
pub(super) const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Yes => "Yes",
        Verdict::WithCare(care) => match care {
            Care::CobaltGrade => "With care: only a cobalt grade",
            Care::NoInterruptedCut => "With care: no flats, keyways or holes in its way",
            Care::LightCuts => "With care: light cuts only",
            Care::NearlyTooSoft => "With care: the metal is nearly too soft for it",
            Care::Emergency => "In an emergency: finishing cuts only",
            Care::DustAndSlow => "Slowly: cover the slides, keep the dust out",
            Care::HardnessUncertain => "With care: at one end of the hardness it fails",
        },
        Verdict::No(unfit) => match unfit {
            Unfit::TooHard => "No: the metal is too hard for it",
            Unfit::TooSoft => "No: it sticks to metal so soft",
            Unfit::Reacts => "No: edge and metal react with each other",
            Unfit::NoFigure => "No: the usual tools do better",
        },
    }
}

/// Why to grind.
pub(super) fn grind(words: Words, reason: GrindReason) -> String {
    match reason {
        GrindReason::NoToolCuts => "No kind of edge turns this metal.".to_owned(),
        GrindReason::HarderThanTurned { most } => format!(
            "It is harder than {}, up to which an edge holds a size.",
            skimwright::quantity::show::hardness(most)
        ),
        GrindReason::LittleStock { least } => format!(
            "So little is on that an edge only rubs: it wants {} on radius.",
            words.size_at_least(least)
        ),
        GrindReason::FineTolerance { finest } => format!(
            "The tolerance is finer than turning holds, {} on diameter at best.",
            words.size_at_least(finest)
        ),
    }
}
