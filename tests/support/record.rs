//! Records written line by line.
#![allow(dead_code, reason = "each user takes a part of it")]

use skimwright::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Job, Measured, Moment, Reading, What, WorkPlace,
};
use skimwright::quantity::{Entered, Length, Temperature, Unit};

/// A reading of the diameter half way, as it is typed, in millimetres where no unit is named.
pub(crate) fn reading(text: &str) -> What {
    reading_at(text, WorkPlace::Middle)
}

/// A reading of the diameter somewhere.
pub(crate) fn reading_at(text: &str, place: WorkPlace) -> What {
    What::Reading(Reading {
        of: Measured::Diameter(place),
        value: length(text),
        instrument: None,
        temperature: None,
        confirmed: false,
    })
}

/// A reading of the diameter half way with the work so warm.
pub(crate) fn warm(text: &str, celsius: &str) -> What {
    let What::Reading(reading) = reading(text) else {
        unreachable!("a reading");
    };
    What::Reading(Reading {
        temperature: Some(Entered::<Temperature>::read(celsius, Unit::Celsius).unwrap()),
        ..reading
    })
}

/// The same reading, confirmed.
pub(crate) fn confirmed(text: &str) -> What {
    let What::Reading(reading) = reading(text) else {
        unreachable!("a reading");
    };
    What::Reading(Reading {
        confirmed: true,
        ..reading
    })
}

/// A cut with so much dialled in on the diameter.
pub(crate) fn cut(kind: CutMadeKind, text: &str) -> What {
    cut_as(kind, text, DialReads::Diameter)
}

/// A cut with so much dialled in by marks of either meaning.
pub(crate) fn cut_as(kind: CutMadeKind, text: &str, reads: DialReads) -> What {
    What::Cut(CutMade {
        kind,
        dialled: length(text),
        reads,
    })
}

pub(crate) fn rough(text: &str) -> What {
    cut(CutMadeKind::Rough, text)
}

pub(crate) fn last(text: &str) -> What {
    cut(CutMadeKind::Last, text)
}

pub(crate) fn change(change: Change) -> What {
    What::Change(change)
}

pub(crate) fn event(what: What) -> Event {
    Event {
        at: Moment::default(),
        struck: false,
        what,
    }
}

/// The job with this record.
pub(crate) fn with(job: &Job, whats: impl IntoIterator<Item = What>) -> Job {
    let mut job = job.clone();
    job.record.events = whats.into_iter().map(event).collect();
    job
}

pub(crate) fn length(text: &str) -> Entered<Length> {
    Entered::read(text, Unit::Millimetre).unwrap()
}
