//! English: measuring instruments, and what jobs taught of the lathe.

use skimwright::job::{Instrument, InstrumentField, InstrumentKind};

use super::about_instruments::OfInstruments;
use super::english_fields::lower_first;
use super::english_lathe_steps;
use crate::page::shelf::Lesson;

pub(super) const fn label(field: InstrumentField) -> &'static str {
    match field {
        InstrumentField::Name => "Name of the instrument",
        InstrumentField::Kind => "Instrument",
        InstrumentField::Graduation => "One division, or step of the display",
        InstrumentField::PermissibleError => "Largest error allowed, either way",
        InstrumentField::Reference => "Set or compared on a size of",
        InstrumentField::Repeat => "Scatter of repeated readings",
    }
}

pub(super) const fn hint(field: InstrumentField) -> Option<&'static str> {
    Some(match field {
        InstrumentField::Graduation => "As marked. Empty: usual of its kind.",
        InstrumentField::PermissibleError => {
            "From its papers or its calibration. Empty: what the standard allows for its kind and the size."
        }
        InstrumentField::Reference => {
            "A gauge block or master near the size measured: then only the difference counts. May stay empty."
        }
        InstrumentField::Repeat => {
            "Standard deviation of ten readings at one place. Empty: usual of its kind."
        }
        InstrumentField::Name | InstrumentField::Kind => return None,
    })
}

pub(super) const ROOM: &str = "Temperature of the room";

pub(super) const ROOM_HINT: &str =
    "Of work and instruments too, where a reading says nothing else. Empty: 20 °C.";

/// The name of an instrument, counted from 1.
pub(super) fn title(index: u8) -> String {
    format!("Instrument {}", u16::from(index) + 1)
}

pub(super) fn line(instrument: &Instrument, graduation: Option<String>) -> String {
    let name = instrument.name.trim();
    let name = if name.is_empty() {
        kind(instrument.kind)
    } else {
        name
    };
    match graduation {
        Some(graduation) => format!("{name}, {graduation}"),
        None => name.to_owned(),
    }
}

const fn kind(kind: InstrumentKind) -> &'static str {
    match kind {
        InstrumentKind::Micrometer => "Outside micrometer",
        InstrumentKind::Calliper => "Calliper",
        InstrumentKind::Indicator => "Dial indicator",
        InstrumentKind::Gauge => "Comparator, set on a master",
    }
}

pub(super) fn takes(share: &[String; 2], offset: &[String; 2], cuts: &str) -> String {
    let [share, share_deviation] = share;
    let [offset, offset_deviation] = offset;
    format!(
        "Of what is dialled in, {share} ± {share_deviation} comes off, and {offset} ± {offset_deviation} on diameter \
         beside it. From {cuts} cuts."
    )
}

pub(super) fn pace(factor: &str, jobs: &str) -> String {
    let from = if jobs == "1" {
        "1 job".to_owned()
    } else {
        format!("{jobs} jobs")
    };
    format!("{factor} of the usual time, from {from}")
}

pub(super) const fn lesson(lesson: Lesson) -> &'static str {
    match lesson {
        Lesson::Takes => "What an infeed takes off",
        Lesson::Pace(step) => english_lathe_steps::name(step),
    }
}

pub(super) fn by_own_times(names: &[&str]) -> String {
    let names: Vec<String> = names.iter().map(|name| lower_first(name)).collect();
    format!(
        "By your own times on this lathe, from earlier jobs: {}.",
        names.join(", ")
    )
}

/// What is asked before something that was learned is forgotten.
pub(super) fn ask_forget(name: &str) -> String {
    format!(
        "Forget what this lathe taught of “{}”? Plans go back to the usual. A lathe that is kept stays as it is until it \
         is kept anew.",
        lower_first(name)
    )
}

pub(super) const fn text(text: OfInstruments) -> &'static str {
    match text {
        OfInstruments::Title => "Measuring instruments",
        OfInstruments::Lead => {
            "What a reading is worth hangs on what it was taken with. Without one, a usual micrometer is taken."
        }
        OfInstruments::NoneYet => "None yet.",
        OfInstruments::Add(InstrumentKind::Micrometer) => "Add a micrometer",
        OfInstruments::Add(InstrumentKind::Calliper) => "Add a calliper",
        OfInstruments::Add(InstrumentKind::Indicator) => "Add an indicator",
        OfInstruments::Add(InstrumentKind::Gauge) => "Add a comparator",
        OfInstruments::Kind(of) => kind(of),
        OfInstruments::Used => "Readings were taken with it, so it stays.",
        OfInstruments::LearnedTitle => "What this lathe has taught",
        OfInstruments::LearnedLead => {
            "From jobs done on it. It goes with the lathe into its next job, and makes that plan nearer to your day."
        }
        OfInstruments::NothingLearned => {
            "Nothing yet. Work a job on the Cut stage, then keep what it taught."
        }
        OfInstruments::Takes => lesson(Lesson::Takes),
        OfInstruments::Paces => "Times of the steps",
        OfInstruments::Forget => "Forget",
        OfInstruments::Teach => "Keep what this job taught",
        OfInstruments::TeachNote => {
            "How long the steps took goes with this lathe, and into the one of its name that you keep."
        }
    }
}
