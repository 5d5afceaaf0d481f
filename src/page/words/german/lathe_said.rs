//! German: what is said of readings, cuts, doubts, parallelism and verdicts.

use skimwright::job::CutMadeKind;
use skimwright::measuring::{
    BarrelCause, DoubtKind, Takes, TakesFrom, Verdict, VerdictIs, WhenMeasure, one_in,
};
use skimwright::quantity::{Length, Share};

use crate::page::words::Words;

pub(in crate::page::words) fn missing(words: Words, field: skimwright::job::Field) -> String {
    format!("Es fehlt: {}.", words.field_in_full(field))
}

pub(in crate::page::words) fn divisions(_: Words, count: &str, of: &str) -> String {
    let noun = if count == "1" {
        "Teilstrich"
    } else {
        "Teilstriche"
    };
    format!("{count} {noun} zu {of}")
}

pub(in crate::page::words) fn odds_under(_: Words, odds: Share) -> String {
    match one_in(odds) {
        None => "kaum je".to_owned(),
        Some(0 | 1) => "fast sicher".to_owned(),
        Some(2) => "halb und halb".to_owned(),
        Some(often) => format!("etwa 1 von {often}"),
    }
}

pub(in crate::page::words) fn when_measure(_: Words, when: WhenMeasure) -> String {
    match when {
        WhenMeasure::AfterThis | WhenMeasure::After(0 | 1) => "nach diesem Schnitt".to_owned(),
        WhenMeasure::After(cuts) => format!("nach {cuts} Schnitten"),
    }
}

pub(in crate::page::words) fn takes(words: Words, takes: &Takes) -> Vec<String> {
    let percent = |share: Share| words.share(share.to_whole());
    let mut said = vec![format!(
        "Vom Zugestellten gehen {} ab, ± {}.",
        percent(takes.share),
        percent(takes.share_deviation),
    )];
    let offset = words.difference(takes.offset.abs());
    let give = words.difference(takes.offset_deviation);
    let more = if takes.offset < Length::ZERO {
        "weniger"
    } else {
        "mehr"
    };
    said.push(format!("Außerdem {offset} {more}, ± {give}."));
    said.push(format!(
        "Streuung von Schnitt zu Schnitt: {}.",
        words.difference(takes.scatter)
    ));
    if Length::ZERO < takes.left {
        said.push(format!(
            "Weggefedert und noch daran: {}. Ein Leerschnitt nimmt etwas davon.",
            words.difference(takes.left)
        ));
    }
    said.push(match (takes.cuts, takes.from) {
        (0, TakesFrom::Guess) => {
            "Noch grob geschätzt: Bisher wurde kein Schnitt gemessen.".to_owned()
        }
        (0, TakesFrom::Stiffness) => {
            "Aus der Steifigkeit von Teil und Maschine: Bisher wurde kein Schnitt gemessen."
                .to_owned()
        }
        (0, TakesFrom::Learned) => "Aus anderen Aufträgen an dieser Maschine.".to_owned(),
        (1, _) => "Gelernt aus 1 gemessenen Schnitt.".to_owned(),
        (cuts, _) => format!("Gelernt aus {cuts} gemessenen Schnitten."),
    });
    said
}

pub(in crate::page::words) const fn cut_made(_: Words, kind: CutMadeKind) -> &'static str {
    match kind {
        CutMadeKind::Rough => "Schruppschnitt",
        CutMadeKind::Last => "Schlichtschnitt",
        CutMadeKind::Spring => "Leerschnitt",
        CutMadeKind::Polish => "Poliert",
    }
}

/// A reading, and what was expected instead.
pub(in crate::page::words) fn against(read: &str, expected: Option<&str>) -> String {
    match expected {
        Some(expected) => format!("{read}, wo etwa {expected} erwartet war"),
        None => read.to_owned(),
    }
}

/// What is odd, behind the reading; one turn of the thimble stands behind its own.
pub(in crate::page::words) const fn doubt(kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "Zoll statt Millimeter, oder umgekehrt?",
        DoubtKind::WholeTurn => "um eine Umdrehung der Trommel verlesen,",
        DoubtKind::SwappedDigits => "zwei Ziffern vertauscht?",
        DoubtKind::SlippedMark => "Komma um eine Stelle verrutscht?",
        DoubtKind::Larger => "Es kann nicht wachsen, wo Metall abging.",
        DoubtKind::Unlikely => "weit weg von dem, was der Schnitt stehen lassen sollte.",
        DoubtKind::Impossible => "größer als das Teil, das hereinkam.",
    }
}

pub(in crate::page::words) const fn doubt_short(_: Words, kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "Einheit?",
        DoubtKind::WholeTurn => "eine Umdrehung?",
        DoubtKind::SwappedDigits => "Ziffern vertauscht?",
        DoubtKind::SlippedMark => "Komma?",
        DoubtKind::Larger => "größer als vorher?",
        DoubtKind::Unlikely => "unwahrscheinlich",
        DoubtKind::Impossible => "unmöglich",
    }
}

pub(in crate::page::words) fn i_meant(_: Words, meant: &str) -> String {
    format!("Gemeint war {meant}")
}

/// What helps: common practice, no source.
pub(in crate::page::words) const fn barrel_cause(cause: BarrelCause) -> &'static str {
    match cause {
        BarrelCause::WorkBends => {
            "Wohl biegt sich das Teil vom Werkzeug weg: leichter schlichten, scharfe Schneide, Lünette."
        }
        BarrelCause::EndsGiveWay => {
            "Wohl gibt, was die Enden hält, mehr nach als das Teil: Körnerspitze fester anstellen, Reitstock klemmen."
        }
        BarrelCause::Elsewhere => {
            "Der Plan sieht es nicht vor: Führungen abgenutzt oder verdreht, Schneide stumpf, Wärme."
        }
    }
}

pub(in crate::page::words) fn verdict_next(_: Words, verdict: &Verdict) -> Option<String> {
    let said = match (verdict.is, verdict.more_readings) {
        (_, Some(1)) => "Eine Messung mehr dort entscheidet es, wenn sie dasselbe zeigt.",
        (_, Some(more)) => {
            return Some(format!(
                "{more} Messungen mehr dort entscheiden es, wenn sie dasselbe zeigen."
            ));
        }
        (VerdictIs::NotProven, None) => {
            "Mehr Messungen mit diesem Messmittel entscheiden es nicht."
        }
        (VerdictIs::TooCoarse, None) => {
            "Feineres Messmittel nehmen, oder mit einem Endmaß vergleichen."
        }
        (VerdictIs::Over, None) => "Es lässt sich nachdrehen.",
        _ => return None,
    };
    Some(said.to_owned())
}
