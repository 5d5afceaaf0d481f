//! Spanish: what is said of readings, cuts, doubts, parallelism and verdicts.

use skimwright::job::CutMadeKind;
use skimwright::measuring::{
    BarrelCause, DoubtKind, Takes, TakesFrom, Verdict, VerdictIs, WhenMeasure, one_in,
};
use skimwright::quantity::{Length, Share};

use crate::page::words::Words;

pub(in crate::page::words) fn missing(words: Words, field: skimwright::job::Field) -> String {
    format!("Falta: {}.", words.field_in_full(field))
}

pub(in crate::page::words) fn divisions(_: Words, count: &str, of: &str) -> String {
    let noun = if count == "1" {
        "división"
    } else {
        "divisiones"
    };
    format!("{count} {noun} de {of}")
}

pub(in crate::page::words) fn odds_under(_: Words, odds: Share) -> String {
    match one_in(odds) {
        None => "casi nunca".to_owned(),
        Some(0 | 1) => "casi seguro".to_owned(),
        Some(2) => "tan probable como no".to_owned(),
        Some(often) => format!("1 de cada {often}, más o menos"),
    }
}

pub(in crate::page::words) fn when_measure(_: Words, when: WhenMeasure) -> String {
    match when {
        WhenMeasure::AfterThis | WhenMeasure::After(0 | 1) => "tras esta pasada".to_owned(),
        WhenMeasure::After(cuts) => format!("tras {cuts} pasadas"),
    }
}

pub(in crate::page::words) fn takes(words: Words, takes: &Takes) -> Vec<String> {
    let percent = |share: Share| words.share(share.to_whole());
    let mut said = vec![format!(
        "De lo que se mete se quita {}, ± {}.",
        percent(takes.share),
        percent(takes.share_deviation),
    )];
    let offset = words.difference(takes.offset.abs());
    let give = words.difference(takes.offset_deviation);
    let more = if takes.offset < Length::ZERO {
        "menos"
    } else {
        "más"
    };
    said.push(format!("Además, {offset} {more}, ± {give}."));
    said.push(format!(
        "Dispersión de una pasada a otra: {}.",
        words.difference(takes.scatter)
    ));
    if Length::ZERO < takes.left {
        said.push(format!(
            "Ha flexado y sigue puesto: {}. Una pasada en vacío quita una parte.",
            words.difference(takes.left)
        ));
    }
    said.push(match (takes.cuts, takes.from) {
        (0, TakesFrom::Guess) => "De momento a ojo: aún no se ha medido ninguna pasada.".to_owned(),
        (0, TakesFrom::Stiffness) => {
            "De la rigidez de pieza y torno: aún no se ha medido ninguna pasada.".to_owned()
        }
        (0, TakesFrom::Learned) => "De otros trabajos en este torno.".to_owned(),
        (1, _) => "Aprendido de 1 pasada medida.".to_owned(),
        (cuts, _) => format!("Aprendido de {cuts} pasadas medidas."),
    });
    said
}

pub(in crate::page::words) const fn cut_made(_: Words, kind: CutMadeKind) -> &'static str {
    match kind {
        CutMadeKind::Rough => "Pasada de desbaste",
        CutMadeKind::Last => "Pasada de acabado",
        CutMadeKind::Spring => "Pasada en vacío",
        CutMadeKind::Polish => "Pulido",
    }
}

/// A reading, and what was expected instead.
pub(in crate::page::words) fn against(read: &str, expected: Option<&str>) -> String {
    match expected {
        Some(expected) => format!("{read}, donde se esperaba {expected} más o menos"),
        None => read.to_owned(),
    }
}

/// What is odd, behind the reading; one turn of the thimble stands behind its own.
pub(in crate::page::words) const fn doubt(kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "¿pulgadas por milímetros, o al revés?",
        DoubtKind::WholeTurn => "¿error de una vuelta del tambor,",
        DoubtKind::SwappedDigits => "¿dos cifras cambiadas?",
        DoubtKind::SlippedMark => "¿la coma corrida un lugar?",
        DoubtKind::Larger => "no puede crecer donde se quitó metal.",
        DoubtKind::Unlikely => "lejos de lo que la pasada debía dejar.",
        DoubtKind::Impossible => "más grande que la pieza que llegó.",
    }
}

pub(in crate::page::words) const fn doubt_short(_: Words, kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "¿unidad?",
        DoubtKind::WholeTurn => "¿una vuelta?",
        DoubtKind::SwappedDigits => "¿cifras cambiadas?",
        DoubtKind::SlippedMark => "¿coma?",
        DoubtKind::Larger => "¿más que antes?",
        DoubtKind::Unlikely => "improbable",
        DoubtKind::Impossible => "imposible",
    }
}

pub(in crate::page::words) fn i_meant(_: Words, meant: &str) -> String {
    format!("Quería decir {meant}")
}

/// What helps: common practice, no source.
pub(in crate::page::words) const fn barrel_cause(cause: BarrelCause) -> &'static str {
    match cause {
        BarrelCause::WorkBends => {
            "Probablemente la pieza se dobla ante la herramienta: acabado más ligero, filo vivo, una luneta."
        }
        BarrelCause::EndsGiveWay => {
            "Probablemente lo que sujeta los extremos cede más que la pieza: aprieta más el punto, bloquea el contrapunto."
        }
        BarrelCause::Elsewhere => {
            "El plan no lo prevé: guías gastadas o torcidas, filo gastado, calor."
        }
    }
}

pub(in crate::page::words) fn verdict_next(_: Words, verdict: &Verdict) -> Option<String> {
    let said = match (verdict.is, verdict.more_readings) {
        (_, Some(1)) => "Una lectura más ahí lo decide, si da lo mismo.",
        (_, Some(more)) => {
            return Some(format!(
                "{more} lecturas más ahí lo deciden, si dan lo mismo."
            ));
        }
        (VerdictIs::NotProven, None) => "Más lecturas con este instrumento no lo deciden.",
        (VerdictIs::TooCoarse, None) => {
            "Usa un instrumento más fino, o compara con un bloque patrón."
        }
        (VerdictIs::Over, None) => "Se puede dar otra pasada.",
        _ => return None,
    };
    Some(said.to_owned())
}
