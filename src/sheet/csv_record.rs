//! The record at the lathe as tables for a spreadsheet: the readings by themselves, and all else that happened.
//!
//! Both count events by their place in the record, so that they can be laid side by side again.

use super::csv::{DecimalMark, Table};
use super::csv_passes::dial_reads;
use super::date::iso_utc;
use crate::job::{
    Answered, Change, CutMade, CutMadeKind, Event, InstrumentKind, Job, Measured, OwnerSays,
    Reading, StepEvent, StepState, What, WorkPlace, WorkStep,
};
use crate::quantity::{Entered, Length};

/// Decimals of a millimetre: a nanometre.
const DECIMALS: usize = 6;

const READINGS: [&str; 11] = [
    "event",
    "time [UTC]",
    "what",
    "place",
    "from shoulder [mm]",
    "as typed",
    "value [mm]",
    "instrument",
    "temperature [°C]",
    "confirmed",
    "struck out",
];

const REST: [&str; 10] = [
    "event",
    "time [UTC]",
    "what",
    "kind",
    "dialled as typed",
    "dialled [mm]",
    "dial reads",
    "step",
    "text",
    "struck out",
];

/// The readings of a job's record, one row each, as CSV; a head without rows while there are none.
///
/// The value stands there as it was typed, with its unit, and in millimetres, uncorrected. Without an instrument it is the
/// usual micrometer; without a temperature it was that of the room.
///
/// # Accuracy
/// Millimetres to a nanometre, temperatures to a hundredth of a degree.
///
/// # Example
/// ```
/// use skimwright::job::{Event, Job, Measured, Moment, Reading, What};
/// use skimwright::quantity::{Entered, Unit};
/// use skimwright::sheet::{DecimalMark, readings_csv};
/// let value = Entered::read("1.0002 in", Unit::Millimetre)?;
/// let of = Measured::Length;
/// let reading = Reading { of, value, instrument: None, temperature: None, confirmed: false };
/// let mut job = Job::default();
/// job.record.events = vec![Event { at: Moment::unix_seconds(0), struck: false, what: What::Reading(reading) }];
/// let text = readings_csv(&job, DecimalMark::Comma);
/// let row = r#"1;1970-01-01T00:00:00Z;length;;;"1,0002 in";25,40508;micrometer;;no;no"#;
/// assert_eq!(text.lines().last(), Some(row));
/// # Ok::<(), skimwright::quantity::ReadError>(())
/// ```
pub fn readings_csv(job: &Job, mark: DecimalMark) -> String {
    let mut table = Table::new(mark, &READINGS);
    for (number, event) in (1_u32..).zip(&job.record.events) {
        if let What::Reading(reading) = &event.what {
            begin(&mut table, number, event);
            read(&mut table, job, reading, mark);
            table.yes(event.struck);
            table.end_row();
        }
    }
    table.into_text()
}

/// What else is in a job's record, one row each, as CSV: cuts, changes, notes and steps.
pub fn events_csv(job: &Job, mark: DecimalMark) -> String {
    let mut table = Table::new(mark, &REST);
    for (number, event) in (1_u32..).zip(&job.record.events) {
        let row = match &event.what {
            What::Reading(_) => continue,
            What::Cut(cut) => Row::cut(cut),
            What::Change(change) => Row::change(*change),
            What::Note(note) => Row {
                what: "note",
                text: note,
                ..Row::default()
            },
            What::Step(step) => Row::step(step),
            What::Offered(_) => Row {
                what: "offer",
                ..Row::default()
            },
            What::Answered(answered) => Row::answer(answered),
        };
        begin(&mut table, number, event);
        table.say(row.what);
        table.say(row.kind);
        match row.cut {
            Some(cut) => {
                typed(&mut table, &cut.dialled, mark);
                table.say(dial_reads(cut.reads));
            }
            None => (0..3).for_each(|_| table.empty()),
        }
        table.say(row.step);
        table.say(row.text);
        table.yes(event.struck);
        table.end_row();
    }
    table.into_text()
}

/// An event that is no reading.
#[derive(Default)]
struct Row<'a> {
    what: &'static str,
    kind: &'static str,
    cut: Option<&'a CutMade>,
    step: &'static str,
    text: &'a str,
}

impl<'a> Row<'a> {
    fn cut(cut: &'a CutMade) -> Self {
        let kind = match cut.kind {
            CutMadeKind::Rough => "rough",
            CutMadeKind::Last => "last",
            CutMadeKind::Spring => "spring",
            CutMadeKind::Polish => "polish",
        };
        // Nothing is dialled for the last two.
        let dialled = matches!(cut.kind, CutMadeKind::Rough | CutMadeKind::Last);
        Self {
            what: "cut",
            kind,
            cut: dialled.then_some(cut),
            ..Self::default()
        }
    }

    fn change(change: Change) -> Self {
        let kind = match change {
            Change::NewEdge => "new edge",
            Change::HeldAgain => "held again",
            Change::DialSet => "dial set",
            Change::OtherFeed => "other feed or speed",
        };
        Self {
            what: "change",
            kind,
            ..Self::default()
        }
    }

    fn answer(answered: &'a Answered) -> Self {
        let kind = match answered.says {
            OwnerSays::Agree => "agrees",
            OwnerSays::AgreeWithChange => "agrees with a change",
            OwnerSays::Decline => "declines",
            OwnerSays::Ask => "asks",
        };
        Self {
            what: "answer",
            kind,
            text: &answered.words,
            ..Self::default()
        }
    }

    fn step(event: &'a StepEvent) -> Self {
        let (kind, text) = match &event.state {
            StepState::Started => ("started", ""),
            StepState::Paused => ("paused", ""),
            StepState::Done => ("done", ""),
            StepState::Skipped(why) => ("skipped", why.as_str()),
            StepState::Reopened => ("reopened", ""),
        };
        Self {
            what: "step",
            kind,
            step: step_name(event.step),
            text,
            ..Self::default()
        }
    }
}

fn begin(table: &mut Table, number: u32, event: &Event) {
    table.number(f64::from(number), 0);
    table.say(&iso_utc(event.at).unwrap_or_default());
}

fn read(table: &mut Table, job: &Job, reading: &Reading, mark: DecimalMark) {
    let (what, place) = match &reading.of {
        Measured::Diameter(place) => ("diameter", Some(place)),
        Measured::Length => ("length", None),
        Measured::Runout => ("runout", None),
        Measured::Roughness => ("roughness Ra", None),
    };
    table.say(what);
    table.say(place.map_or("", |place| match place {
        WorkPlace::NearShoulder => "near shoulder",
        WorkPlace::Middle => "middle",
        WorkPlace::FreeEnd => "free end",
        WorkPlace::At(_) => "at",
    }));
    let from_shoulder = place.and_then(|place| match place {
        WorkPlace::At(entered) => Some(entered.value().to_mm()),
        _ => None,
    });
    table.number(from_shoulder, DECIMALS);
    typed(table, &reading.value, mark);
    table.say(&instrument(job, reading.instrument));
    let warm = reading.temperature.as_ref();
    table.number(warm.map(|it| it.value().to_celsius()), 2);
    table.yes(reading.confirmed);
}

/// A length as typed and in millimetres.
fn typed(table: &mut Table, entered: &Entered<Length>, mark: DecimalMark) {
    table.say(&mark.typed(&entered.entry().to_string()));
    table.number(entered.value().to_mm(), DECIMALS);
}

/// What an instrument is called, or else what it is and its place in the list.
fn instrument(job: &Job, index: Option<u8>) -> String {
    let Some(index) = index else {
        return "micrometer".to_owned();
    };
    let listed = job.shop.instruments.get(usize::from(index));
    let number = u16::from(index) + 1;
    match listed {
        Some(listed) if !listed.name.trim().is_empty() => listed.name.clone(),
        Some(listed) => {
            let kind = match listed.kind {
                InstrumentKind::Micrometer => "micrometer",
                InstrumentKind::Calliper => "calliper",
                InstrumentKind::Indicator => "indicator",
                InstrumentKind::Gauge => "comparator",
            };
            format!("{kind} {number}")
        }
        None => format!("instrument {number}"),
    }
}

const fn step_name(step: WorkStep) -> &'static str {
    match step {
        WorkStep::Receive => "receive",
        WorkStep::Hold => "hold",
        WorkStep::DialIn => "dial in",
        WorkStep::CutOff => "cut off",
        WorkStep::Face => "face",
        WorkStep::Centre => "centre",
        WorkStep::Rough => "rough",
        WorkStep::LastCuts => "last cuts",
        WorkStep::Polish => "polish",
        WorkStep::Chamfer => "chamfer",
        WorkStep::Check => "check",
        WorkStep::Clean => "clean",
    }
}
