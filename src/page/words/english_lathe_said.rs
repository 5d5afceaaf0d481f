//! English: what is said of readings, cuts, doubts, parallelism and verdicts.

use skimwright::job::CutMadeKind;
use skimwright::measuring::{
    BarrelCause, DoubtKind, Takes, TakesFrom, Verdict, VerdictIs, WhenMeasure, one_in,
};
use skimwright::quantity::{Length, Share};

use super::Words;

pub(super) fn missing(words: Words, field: skimwright::job::Field) -> String {
    format!("Missing: {}.", words.field_in_full(field))
}

pub(super) fn divisions(_: Words, count: &str, of: &str) -> String {
    let noun = if count == "1" {
        "division"
    } else {
        "divisions"
    };
    format!("{count} {noun} of {of}")
}

pub(super) fn odds_under(_: Words, odds: Share) -> String {
    match one_in(odds) {
        None => "hardly ever".to_owned(),
        Some(0 | 1) => "almost surely".to_owned(),
        Some(2) => "as likely as not".to_owned(),
        Some(often) => format!("about 1 in {often}"),
    }
}

pub(super) fn when_measure(_: Words, when: WhenMeasure) -> String {
    match when {
        WhenMeasure::AfterThis | WhenMeasure::After(0 | 1) => "after this cut".to_owned(),
        WhenMeasure::After(cuts) => format!("after {cuts} cuts"),
    }
}

pub(super) fn takes(words: Words, takes: &Takes) -> Vec<String> {
    let percent = |share: Share| words.share(share.to_whole());
    let mut said = vec![format!(
        "Of what is dialled in, {} comes off, give or take {}.",
        percent(takes.share),
        percent(takes.share_deviation),
    )];
    let offset = words.difference(takes.offset.abs());
    let give = words.difference(takes.offset_deviation);
    said.push(if takes.offset < Length::ZERO {
        format!("Besides, {offset} less, give or take {give}.")
    } else {
        format!("Besides, {offset} more, give or take {give}.")
    });
    said.push(format!(
        "Scatter from cut to cut: {}.",
        words.difference(takes.scatter)
    ));
    if Length::ZERO < takes.left {
        said.push(format!(
            "Sprung away and still on: {}. A spring pass takes some of it.",
            words.difference(takes.left)
        ));
    }
    said.push(match (takes.cuts, takes.from) {
        (0, TakesFrom::Guess) => "A wide guess so far: no cut was measured yet.".to_owned(),
        (0, TakesFrom::Stiffness) => {
            "From the stiffness of work and lathe: no cut was measured yet.".to_owned()
        }
        (0, TakesFrom::Learned) => "From other jobs on this lathe.".to_owned(),
        (1, _) => "Learned from 1 measured cut.".to_owned(),
        (cuts, _) => format!("Learned from {cuts} measured cuts."),
    });
    said
}

pub(super) const fn cut_made(_: Words, kind: CutMadeKind) -> &'static str {
    match kind {
        CutMadeKind::Rough => "Roughing cut",
        CutMadeKind::Last => "Last cut",
        CutMadeKind::Spring => "Spring pass",
        CutMadeKind::Polish => "Polished",
    }
}

/// A reading, and what was expected instead.
pub(super) fn against(read: &str, expected: Option<&str>) -> String {
    match expected {
        Some(expected) => format!("{read}, where about {expected} was expected"),
        None => read.to_owned(),
    }
}

/// What is odd, behind the reading; one turn of the thimble stands behind its own.
pub(super) const fn doubt(kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "inches for millimetres, or the other way round?",
        DoubtKind::WholeTurn => "misread by one turn of the thimble,",
        DoubtKind::SwappedDigits => "two digits swapped?",
        DoubtKind::SlippedMark => "the decimal mark one place off?",
        DoubtKind::Larger => "it cannot grow where metal came off.",
        DoubtKind::Unlikely => "far from what the cut should have left.",
        DoubtKind::Impossible => "larger than the part that came.",
    }
}

pub(super) const fn doubt_short(_: Words, kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::WrongUnit => "unit?",
        DoubtKind::WholeTurn => "one turn off?",
        DoubtKind::SwappedDigits => "digits swapped?",
        DoubtKind::SlippedMark => "decimal mark?",
        DoubtKind::Larger => "larger than before?",
        DoubtKind::Unlikely => "unlikely",
        DoubtKind::Impossible => "impossible",
    }
}

pub(super) fn i_meant(_: Words, meant: &str) -> String {
    format!("I meant {meant}")
}

/// What helps: common practice, no source.
pub(super) const fn barrel_cause(cause: BarrelCause) -> &'static str {
    match cause {
        BarrelCause::WorkBends => {
            "Likely the work bends away from the tool: lighter last cuts, a sharp edge, a steady."
        }
        BarrelCause::EndsGiveWay => {
            "Likely what holds the ends gives way more than the work: push the centre in further, clamp the tail-stock."
        }
        BarrelCause::Elsewhere => {
            "The plan does not foresee it: worn or twisted ways, a worn edge, heat."
        }
    }
}

pub(super) fn verdict_next(_: Words, verdict: &Verdict) -> Option<String> {
    match (verdict.is, verdict.more_readings) {
        (_, Some(1)) => Some("One more reading there settles it, if it shows the same.".to_owned()),
        (_, Some(more)) => Some(format!(
            "{more} more readings there settle it, if they show the same."
        )),
        (VerdictIs::NotProven, None) => {
            Some("More readings with this instrument do not settle it.".to_owned())
        }
        (VerdictIs::TooCoarse, None) => {
            Some("Use a finer instrument, or compare with a gauge.".to_owned())
        }
        (VerdictIs::Over, None) => Some("It can be cut again.".to_owned()),
        _ => None,
    }
}
