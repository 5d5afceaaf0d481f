//! Spanish: which tools turn the metal, and what speaks for grinding.

use skimwright::cutting::{Care, GrindReason, Unfit, Verdict};
use skimwright::quantity::show;

use crate::page::words::Words;

/// What a verdict says, without the speeds.
pub(in crate::page::words) const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Yes => "Sí",
        Verdict::WithCare(care) => match care {
            Care::CobaltGrade => "Con cuidado: solo si lleva cobalto",
            Care::NoInterruptedCut => "Con cuidado: sin planos, chaveteros ni agujeros por medio",
            Care::LightCuts => "Con cuidado: solo pasadas ligeras",
            Care::NearlyTooSoft => "Con cuidado: el metal es casi demasiado blando",
            Care::Emergency => "En un apuro: solo pasadas de acabado",
            Care::DustAndSlow => "Despacio: tapa las guías, que no entre polvo",
            Care::HardnessUncertain => "Con cuidado: en un extremo de la dureza falla",
        },
        Verdict::No(unfit) => match unfit {
            Unfit::TooHard => "No: el metal es demasiado duro",
            Unfit::TooSoft => "No: se pega a un metal tan blando",
            Unfit::Reacts => "No: filo y metal reaccionan entre sí",
            Unfit::NoFigure => "No: las herramientas corrientes van mejor",
        },
    }
}

/// Why to grind.
pub(in crate::page::words) fn grind(words: Words, reason: GrindReason) -> String {
    match reason {
        GrindReason::NoToolCuts => "Ninguna clase de filo tornea este metal.".to_owned(),
        GrindReason::HarderThanTurned { most } => format!(
            "Pasa de {}, hasta donde un filo mantiene la medida.",
            show::hardness(most)
        ),
        GrindReason::LittleStock { least } => format!(
            "Sobra tan poco que un filo solo roza: pide {} en radio.",
            words.size_at_least(least)
        ),
        GrindReason::FineTolerance { finest } => format!(
            "La tolerancia es más fina de lo que da el torneado: {} en diámetro, a lo mejor que llega.",
            words.size_at_least(finest)
        ),
    }
}
