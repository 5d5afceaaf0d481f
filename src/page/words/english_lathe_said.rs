//! English: what is said of readings, cuts, doubts, parallelism and verdicts.

use skimwright::job::{
    Change, CutMadeKind, DialReads, Event, Job, Measured, Reading, StepEvent, StepState, What,
    WorkPlace,
};
use skimwright::measuring::{
    BarrelCause, Doubt, DoubtKind, Takes, TakesFrom, TaperFound, TaperVerdict, Verdict, VerdictIs,
    VerdictOf, WhenMeasure, one_in,
};
use skimwright::quantity::{Length, Share, show};
use skimwright::working::{Figure, Value};

use super::about_lathe::OfLathe;
use super::{Text, Words, english_lathe_steps};

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

pub(super) fn with_range(words: Words, value: Length, range: Option<(Length, Length)>) -> String {
    let said = words.size(value);
    match range {
        Some((low, high)) => {
            let range = words.range(&words.size_bare(low), &words.size_bare(high));
            format!("{said} ({range})")
        }
        None => said,
    }
}

pub(super) fn takes(words: Words, takes: &Takes) -> Vec<String> {
    let percent = |share: Share| show::share(share.to_whole());
    let mut said = vec![format!(
        "Of what is dialled in, {} comes off, give or take {}.",
        percent(takes.share),
        percent(takes.share_deviation),
    )];
    let offset = words.units().difference(takes.offset.abs());
    let give = words.units().difference(takes.offset_deviation);
    said.push(if takes.offset < Length::ZERO {
        format!("Besides, {offset} less, give or take {give}.")
    } else {
        format!("Besides, {offset} more, give or take {give}.")
    });
    said.push(format!(
        "Scatter from cut to cut: {}.",
        words.units().difference(takes.scatter)
    ));
    if Length::ZERO < takes.left {
        said.push(format!(
            "Sprung away and still on: {}. A spring pass takes some of it.",
            words.units().difference(takes.left)
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

pub(super) fn event(words: Words, event: &Event, job: &Job) -> String {
    match &event.what {
        What::Reading(reading) => reading_line(words, reading, job),
        What::Cut(cut) => {
            let kind = cut_made(words, cut.kind);
            if cut.dialled.value() == Length::ZERO {
                return kind.to_owned();
            }
            let on = match cut.reads {
                DialReads::Diameter => "on the diameter",
                DialReads::Radius => "on the slide",
            };
            format!("{kind}, dialled in {} {on}", words.entered(&cut.dialled))
        }
        What::Change(change) => change_line(words, *change).to_owned(),
        What::Note(note) => format!("Note: {note}"),
        What::Step(StepEvent { step, state }) => {
            let name = english_lathe_steps::name(*step);
            match state {
                StepState::Started => format!("{name}: begun"),
                StepState::Paused => format!("{name}: paused"),
                StepState::Done => format!("{name}: done"),
                StepState::Skipped(why) if why.is_empty() => format!("{name}: left out"),
                StepState::Skipped(why) => format!("{name}: left out, {why}"),
                StepState::Reopened => format!("{name}: to do again"),
            }
        }
        What::Offered(_) => "Shown to the owner".to_owned(),
        What::Answered(_) => "The owner answered".to_owned(),
    }
}

fn change_line(words: Words, change: Change) -> &'static str {
    words.say(Text::Lathe(OfLathe::Change(change)))
}

fn reading_line(words: Words, reading: &Reading, job: &Job) -> String {
    let value = words.entered(&reading.value);
    let of = match &reading.of {
        Measured::Diameter(place) => format!("⌀{value} {}", work_place(words, place)),
        Measured::Length => format!("Length {value}"),
        Measured::Runout => format!("Runout {value}"),
        Measured::Roughness => format!("Ra {value}"),
    };
    let instrument = reading.instrument.and_then(|at| {
        let instrument = job.shop.instruments.get(usize::from(at))?;
        Some(format!(", {}", words.instrument(instrument)))
    });
    let warm = reading.temperature.as_ref();
    let warm = warm.map(|it| format!(", at {}", words.entered(it)));
    let right = reading.confirmed.then_some(", said to be right");
    format!(
        "{of}{}{}{}",
        instrument.unwrap_or_default(),
        warm.unwrap_or_default(),
        right.unwrap_or_default()
    )
}

pub(super) fn work_place(words: Words, place: &WorkPlace) -> String {
    match place {
        WorkPlace::NearShoulder => "near the shoulder".to_owned(),
        WorkPlace::Middle => "in the middle".to_owned(),
        WorkPlace::FreeEnd => "at the free end".to_owned(),
        WorkPlace::At(at) => format!("{} from the shoulder", words.entered(at)),
    }
}

pub(super) fn doubt(words: Words, read: &str, doubt: &Doubt) -> String {
    let metric_turn = if words.units().is_inch() {
        "0.025\u{a0}in"
    } else {
        "0.5\u{a0}mm"
    };
    let expected = doubt.expected.map(|it| words.size(it));
    let against = match &expected {
        Some(expected) => format!("{read}, where about {expected} was expected"),
        None => read.to_owned(),
    };
    match doubt.kind {
        DoubtKind::WrongUnit => {
            format!("{against}: inches for millimetres, or the other way round?")
        }
        DoubtKind::WholeTurn => {
            format!("{against}: one turn of the thimble, {metric_turn}, misread?")
        }
        DoubtKind::SwappedDigits => format!("{against}: two digits swapped?"),
        DoubtKind::SlippedMark => format!("{against}: the decimal mark one place off?"),
        DoubtKind::Larger => format!("{against}: it cannot grow where metal came off."),
        DoubtKind::Unlikely => format!("{against}: far from what the cut should have left."),
        DoubtKind::Impossible => format!("{against}: larger than the part that came."),
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

/// The range of a figure, as half of its width.
fn give_or_take(words: Words, uncertainty: Length) -> String {
    words.units().difference(uncertainty * 2.0)
}

pub(super) fn taper_found(words: Words, found: &TaperFound) -> Vec<String> {
    let mut said = Vec::new();
    let grows = found.over_length.value;
    let how_much = words.units().difference(grows.abs());
    let give = give_or_take(words, found.uncertainty);
    let over = words.length(found.length);
    said.push(if grows < Length::ZERO {
        format!("The free end is thinner by {how_much} ± {give} over {over}.")
    } else {
        format!("The free end is thicker by {how_much} ± {give} over {over}.")
    });
    said.push(match found.verdict {
        TaperVerdict::Parallel => words.say(Text::Lathe(OfLathe::Parallel)).to_owned(),
        TaperVerdict::Tapered => "There is a taper.".to_owned(),
        TaperVerdict::NotTold => words.say(Text::Lathe(OfLathe::NotTold)).to_owned(),
    });
    if let Some(Figure { value: shift, .. }) = &found.shift {
        let by = words.size(shift.abs());
        said.push(if *shift < Length::ZERO {
            format!("Shift the tail-stock {by} away from the tool.")
        } else {
            format!("Shift the tail-stock {by} toward the tool.")
        });
    }
    if let (Some(barrel), Some(unsure)) = (found.barrel, found.barrel_uncertainty) {
        let (by, give) = (
            words.units().difference(barrel.abs()),
            give_or_take(words, unsure),
        );
        said.push(if barrel.abs() < unsure * 2.0 {
            format!("No barrel or waist that the readings can tell: {by} ± {give}.")
        } else if barrel < Length::ZERO {
            format!("Waist: the middle is thinner by {by} ± {give}.")
        } else {
            format!("Barrel: the middle is thicker by {by} ± {give}.")
        });
    }
    if let Some(cause) = found.barrel_cause {
        said.push(barrel_cause(cause).to_owned());
    }
    said
}

/// What helps: common practice, no source.
const fn barrel_cause(cause: BarrelCause) -> &'static str {
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

pub(super) fn verdict_of(words: Words, of: &VerdictOf) -> String {
    match of {
        VerdictOf::Diameter(place) => format!("Diameter {}", work_place(words, place)),
        VerdictOf::Roughness => "Roughness Ra".to_owned(),
    }
}

/// A size, or a roughness where it is about one.
fn told(words: Words, of: &VerdictOf, length: Length) -> String {
    match of {
        VerdictOf::Diameter(_) => words.size(length),
        VerdictOf::Roughness => words.value(Value::Fine(length)),
    }
}

pub(super) fn verdict_measured(words: Words, verdict: &Verdict) -> Option<String> {
    let measured = verdict.measured.as_ref()?;
    let value = told(words, &verdict.of, measured.value);
    let give = match verdict.of {
        VerdictOf::Diameter(_) => give_or_take(words, verdict.uncertainty),
        VerdictOf::Roughness => words.value(Value::Fine(verdict.uncertainty * 2.0)),
    };
    Some(format!("{value} ± {give}"))
}

pub(super) fn verdict_limits(words: Words, verdict: &Verdict) -> Option<String> {
    let of = |limit: Length| told(words, &verdict.of, limit);
    match (verdict.lower, verdict.upper) {
        (Some(lower), Some(upper)) => Some(words.range(&of(lower), &of(upper))),
        (Some(lower), None) => Some(format!("{} or more", of(lower))),
        (None, Some(upper)) => Some(format!("{} or less", of(upper))),
        (None, None) => None,
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
