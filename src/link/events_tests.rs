//! Tests of the record's form.

use super::tests::body;
use super::*;
use crate::demo::demo_jobs;
use crate::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Measured, Moment, Reading, StepEvent,
    StepState, What, WorkPlace, WorkStep,
};
use crate::quantity::{Entered, Length, Unit};

fn length(text: &str) -> Entered<Length> {
    Entered::read(text, Unit::Millimetre).unwrap()
}

fn reading(of: Measured, value: &str) -> What {
    What::Reading(Reading {
        of,
        value: length(value),
        instrument: None,
        temperature: None,
        confirmed: false,
    })
}

fn diameter(place: WorkPlace, value: &str) -> What {
    reading(Measured::Diameter(place), value)
}

fn cut(kind: CutMadeKind, dialled: &str) -> What {
    What::Cut(CutMade {
        kind,
        dialled: length(dialled),
        reads: DialReads::Radius,
    })
}

fn done(step: WorkStep) -> What {
    What::Step(StepEvent {
        step,
        state: StepState::Done,
    })
}

/// Events so many seconds after one another.
fn record(events: Vec<(u64, What)>) -> Record {
    let mut at = 1_764_000_000;
    let events = events.into_iter().map(|(later, what)| {
        at += later;
        Event {
            at: Moment::unix_seconds(at),
            struck: false,
            what,
        }
    });
    Record {
        events: events.collect(),
        ..Record::default()
    }
}

/// A day as it usually is: twelve steps, eight cuts, twenty readings.
fn usual() -> Record {
    use WorkPlace::{FreeEnd, Middle, NearShoulder};
    let mut events = vec![
        (0, reading(Measured::Length, "80.1 mm")),
        (60, diameter(NearShoulder, "20.01 mm")),
        (30, diameter(FreeEnd, "20.00 mm")),
        (200, done(WorkStep::Receive)),
        (300, done(WorkStep::Hold)),
        (500, reading(Measured::Runout, "10 µm")),
        (10, done(WorkStep::DialIn)),
        (400, done(WorkStep::CutOff)),
        (250, done(WorkStep::Face)),
        (180, done(WorkStep::Centre)),
    ];
    let sizes = ["18.02 mm", "17.01 mm", "16.52 mm", "16.214 mm"];
    for size in sizes {
        events.push((150, cut(CutMadeKind::Rough, "0.5 mm")));
        events.push((60, diameter(Middle, size)));
    }
    events.push((20, done(WorkStep::Rough)));
    for (near, middle, end) in [
        ("16.108 mm", "16.106 mm", "16.101 mm"),
        ("16.009 mm", "16.007 mm", "16.003 mm"),
    ] {
        events.push((160, cut(CutMadeKind::Last, "0.05 mm")));
        events.push((55, diameter(NearShoulder, near)));
        events.push((20, diameter(Middle, middle)));
        events.push((20, diameter(FreeEnd, end)));
    }
    events.push((120, cut(CutMadeKind::Spring, "0.00 mm")));
    events.push((10, done(WorkStep::LastCuts)));
    events.push((180, cut(CutMadeKind::Polish, "0.00 mm")));
    events.push((20, done(WorkStep::Polish)));
    for (place, size) in [
        (NearShoulder, "15.998 mm"),
        (Middle, "15.997 mm"),
        (FreeEnd, "15.994 mm"),
    ] {
        events.push((30, diameter(place, size)));
    }
    events.push((60, done(WorkStep::Chamfer)));
    events.push((40, reading(Measured::Roughness, "0.8 µm")));
    events.push((30, reading(Measured::Runout, "8 µm")));
    events.push((10, reading(Measured::Length, "50.0 mm")));
    events.push((10, done(WorkStep::Check)));
    events.push((90, done(WorkStep::Clean)));
    record(events)
}

fn with_record(record: Record) -> Job {
    Job {
        record,
        ..Job::default()
    }
}

/// How many characters a usual record adds to a link.
#[test]
fn a_usual_record_is_short() {
    let record = usual();
    let of = |is: fn(&What) -> bool| record.events.iter().filter(|it| is(&it.what)).count();
    assert_eq!(of(|it| matches!(it, What::Reading(_))), 20);
    assert_eq!(of(|it| matches!(it, What::Cut(_))), 8);
    assert_eq!(of(|it| matches!(it, What::Step(_))), 12);
    let plain = encode(&Job::default()).unwrap().len();
    let job = with_record(record);
    let text = encode(&job).unwrap();
    println!("default {plain}, usual record {}", text.len());
    for job in demo_jobs() {
        println!("{}: {}", job.title, encode(&job).unwrap().len());
    }
    assert!(text.len() - plain <= USUAL, "{} and {plain}", text.len());
    assert_eq!(decode(&text), Ok(job));
}

const USUAL: usize = 240;

/// A hundred usual days, one behind the other, still have a link.
#[test]
fn a_record_of_the_most_events_has_a_link_where_it_is_of_the_usual_kind() {
    let events = usual().events.into_iter().cycle();
    let record = Record {
        events: events.take(Record::MOST_EVENTS).collect(),
        ..Record::default()
    };
    let job = with_record(record);
    let text = encode(&job).unwrap();
    println!("most events of the usual kind {}", text.len());
    assert!(text.len() < MOST_CHARACTERS);
    assert_eq!(decode(&text), Ok(job));
}

fn of_every_kind() -> Record {
    let mut record = usual();
    let steps = [
        StepState::Started,
        StepState::Paused,
        StepState::Skipped("No cut-off: short enough".to_owned()),
        StepState::Reopened,
        StepState::Done,
    ];
    let mut more: Vec<What> = steps
        .into_iter()
        .map(|state| {
            What::Step(StepEvent {
                step: WorkStep::Clean,
                state,
            })
        })
        .collect();
    more.extend(Change::ALL.map(What::Change));
    more.push(What::Note("Schlichtmeißel neu".to_owned()));
    for (instrument, temperature) in [
        (Some(0), None),
        (Some(255), Some(Entered::plain(31, 0, Unit::Celsius))),
        (None, Some(Entered::plain(88, 0, Unit::Fahrenheit))),
        (None, None),
    ] {
        for value in ["16.01 mm", "0.6302 in", "1 3/8 in", "16 - 0.01 mm"] {
            more.push(What::Reading(Reading {
                of: Measured::Diameter(WorkPlace::At(length("12.5 mm"))),
                value: length(value),
                instrument,
                temperature: temperature.clone(),
                confirmed: instrument.is_some(),
            }));
        }
    }
    more.push(cut(CutMadeKind::Rough, "-0.1 mm"));
    more.push(cut(CutMadeKind::Rough, "1/64 in"));
    // Clocks are set back, and were never set.
    let times = [u64::MAX, 0, 1, 1 << 63, (1 << 63) - 1];
    for (what, at) in more.into_iter().zip(times.into_iter().cycle()) {
        record.events.push(Event {
            at: Moment::unix_seconds(at),
            struck: at == 1,
            what,
        });
    }
    record
}

#[test]
fn every_kind_of_event_comes_back() {
    let job = with_record(of_every_kind());
    assert_eq!(decode(&encode(&job).unwrap()), Ok(job));
}

/// Whatever byte of a record is changed: it is refused, or it is another job that is written in just these bytes. Only a
/// whole number with noughts in front could be written shorter.
#[test]
fn a_record_has_one_form_only() {
    let plain = body(&Job::default()).len();
    let job = with_record(of_every_kind());
    let right = body(&job);
    let (mut opened, mut refused) = (0, 0);
    for place in plain..right.len() {
        for byte in 0..=255_u8 {
            let mut wrong = right.clone();
            wrong[place] = byte;
            match decode(&wrap(VERSION, wrong.clone())) {
                Ok(job) => {
                    opened += 1;
                    let again = body(&job);
                    assert!(
                        again == wrong || again.len() < wrong.len(),
                        "{byte} at {place}"
                    );
                }
                Err(error) => {
                    refused += 1;
                    assert_eq!(error, LinkError::BeyondLimits);
                }
            }
        }
        for cut in [place, place + 1] {
            let end = decode(&wrap(VERSION, right[..cut].to_vec()));
            assert_eq!(end.is_ok(), cut == right.len(), "cut to {cut}");
        }
    }
    assert!(
        0 < opened && 0 < refused,
        "{opened} opened, {refused} refused"
    );
}

/// A record that claims more events than there are bytes takes no time.
#[test]
fn more_events_than_are_taken_are_refused() {
    let plain = body(&Job::default());
    let start = &plain[..plain.len() - 1];
    let with = |count: u64, rest: &[u8]| {
        let mut to = bytes::Writer::default();
        to.whole(1 << 12);
        to.whole(count);
        decode_kept_job(&wrap(VERSION, [start, &to.into_bytes(), rest].concat()))
    };
    // Steps that begin: two bytes each.
    let steps = [4, 0].repeat(Record::MOST_EVENTS + 1);
    let most = steps.len() - 2;
    assert!(with(5000, &steps[..most]).is_ok());
    assert_eq!(with(5001, &steps), Err(LinkError::BeyondLimits));
    assert_eq!(with(u64::MAX, &steps), Err(LinkError::BeyondLimits));
    assert_eq!(with(5000, &steps[..2]), Err(LinkError::BeyondLimits));
    assert_eq!(with(0, &[]), Err(LinkError::BeyondLimits));
}
