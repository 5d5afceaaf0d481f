//! German: which tools turn the metal, and what speaks for grinding.

use skimwright::cutting::{Care, GrindReason, Unfit, Verdict};
use skimwright::quantity::show;

use crate::page::words::Words;

/// What a verdict says, without the speeds.
pub(in crate::page::words) const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Yes => "Ja",
        Verdict::WithCare(care) => match care {
            Care::CobaltGrade => "Mit Vorsicht: nur Kobaltsorte",
            Care::NoInterruptedCut => "Mit Vorsicht: keine Abflachungen, Nuten, Löcher im Weg",
            Care::LightCuts => "Mit Vorsicht: nur leichte Schnitte",
            Care::NearlyTooSoft => "Mit Vorsicht: das Metall ist fast zu weich",
            Care::Emergency => "Im Notfall: nur schlichten",
            Care::DustAndSlow => "Langsam: Führungen abdecken, Staub fernhalten",
            Care::HardnessUncertain => "Mit Vorsicht: an einem Ende der Härte versagt es",
        },
        Verdict::No(unfit) => match unfit {
            Unfit::TooHard => "Nein: das Metall ist zu hart",
            Unfit::TooSoft => "Nein: es klebt an so weichem Metall",
            Unfit::Reacts => "Nein: Schneide und Metall reagieren miteinander",
            Unfit::NoFigure => "Nein: die üblichen Werkzeuge sind besser",
        },
    }
}

/// Why to grind.
pub(in crate::page::words) fn grind(words: Words, reason: GrindReason) -> String {
    match reason {
        GrindReason::NoToolCuts => "Keine Art Schneide dreht dieses Metall.".to_owned(),
        GrindReason::HarderThanTurned { most } => format!(
            "Es ist härter als {}, bis wohin eine Schneide Maß hält.",
            show::hardness(most)
        ),
        GrindReason::LittleStock { least } => format!(
            "Es ist so wenig drauf, dass eine Schneide nur reibt: Sie braucht {} auf Radius.",
            words.size_at_least(least)
        ),
        GrindReason::FineTolerance { finest } => format!(
            "Die Toleranz ist feiner, als Drehen hält: bestenfalls {} auf den Durchmesser.",
            words.size_at_least(finest)
        ),
    }
}
