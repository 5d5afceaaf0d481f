//! What is keyed in at the lathe.

use super::*;
use crate::job::{Event, InstrumentKind, Moment};
use crate::plan::plan;

fn read(text: &str, before: f64) -> (String, usize) {
    let keyed = keyed(text, Some(Length::mm(before)), Unit::Millimetre, 3).unwrap();
    (keyed.text, keyed.kept)
}

#[test]
fn digits_without_a_mark_take_the_last_places() {
    for (typed, before, text, kept) in [
        ("08", 20.012, "20.008", 4),
        ("8", 20.012, "20.018", 5),
        ("008", 20.012, "20.008", 3),
        ("9987", 20.012, "29.987", 1),
        ("19987", 20.012, "19.987", 0),
        ("119987", 20.012, "119.987", 0),
        ("10012", 9.987, "10.012", 0),
        ("5", 0.004, "0.005", 4),
        // What the mark follows stays with its front: a kept 20. before three typed digits.
        ("987", 20.0, "20.987", 3),
    ] {
        assert_eq!(
            read(typed, before),
            (text.to_owned(), kept),
            "{typed} after {before}"
        );
    }
}

#[test]
fn a_mark_says_all_of_it() {
    assert_eq!(read("19.98", 20.012), ("19.98".to_owned(), 0));
    assert_eq!(read("19,98", 20.012).1, 0);
    assert_eq!(read("20.", 20.012).1, 0);
    let whole = keyed("25", None, Unit::Millimetre, 3).unwrap();
    assert_eq!(whole.value.value(), Length::mm(25.0));
    assert_eq!(whole.kept, 0);
}

#[test]
fn inches_and_coarser_instruments_align_with_their_own_last_digit() {
    let inch = keyed("87", Some(Length::inch(0.7512)), Unit::Inch, 4).unwrap();
    assert_eq!((inch.text.as_str(), inch.kept), ("0.7587", 4));
    assert_eq!(inch.value.value(), Length::inch(0.7587));
    let calliper = keyed("8", Some(Length::mm(20.01)), Unit::Millimetre, 2).unwrap();
    assert_eq!(calliper.text, "20.08");
    let whole = keyed("8", Some(Length::mm(20.0)), Unit::Millimetre, 0).unwrap();
    assert_eq!((whole.text.as_str(), whole.kept), ("28", 1));
}

#[test]
fn what_is_no_number_is_an_error() {
    for text in ["", ".", "2..0", "abc", "1 2 3", "9999999999999999999"] {
        let read = keyed(text, Some(Length::mm(20.0)), Unit::Millimetre, 3);
        assert!(read.is_err(), "{text:?} must not be read: {read:?}");
    }
    // Nothing is not completed.
    let bad = keyed("8", Some(Length::ZERO), Unit::Millimetre, 3).unwrap();
    assert_eq!(bad.text, "8");
}

fn instrument(kind: InstrumentKind, division: Option<&str>) -> Instrument {
    Instrument {
        kind,
        graduation: division.map(|text| Entered::read(text, Unit::Millimetre).unwrap()),
        ..Instrument::default()
    }
}

#[test]
fn decimals_are_those_of_the_instrument() {
    let (mm, inch) = (Unit::Millimetre, Unit::Inch);
    assert_eq!(shown_decimals(None, mm), 3);
    assert_eq!(shown_decimals(None, inch), 4);
    let calliper = instrument(InstrumentKind::Calliper, None);
    assert_eq!(shown_decimals(Some(&calliper), mm), 2);
    let coarse = instrument(InstrumentKind::Micrometer, Some("0.01"));
    assert_eq!(shown_decimals(Some(&coarse), mm), 2);
    let fine = instrument(InstrumentKind::Micrometer, Some("0.0005"));
    assert_eq!(shown_decimals(Some(&fine), mm), 4);
    // A metric division has no exact decimals in inches: the usual.
    assert_eq!(shown_decimals(Some(&coarse), inch), 4);
    let thou = instrument(InstrumentKind::Micrometer, Some("0.001 in"));
    assert_eq!(shown_decimals(Some(&thou), inch), 3);
}

fn job_with(events: Vec<What>) -> Job {
    let mut job = Job::default();
    job.record.events = events
        .into_iter()
        .map(|what| Event {
            at: Moment::unix_seconds(0),
            struck: false,
            what,
        })
        .collect();
    job
}

fn reading(text: &str, place: WorkPlace) -> What {
    What::Reading(Reading {
        of: Measured::Diameter(place),
        value: Entered::read(text, Unit::Millimetre).unwrap(),
        instrument: None,
        temperature: None,
        confirmed: false,
    })
}

fn cut(text: &str, reads: DialReads) -> What {
    What::Cut(CutMade {
        kind: CutMadeKind::Rough,
        dialled: Entered::read(text, Unit::Millimetre).unwrap(),
        reads,
    })
}

#[test]
fn what_is_expected_is_the_last_reading_less_the_infeed_since() {
    let fresh = Job::default();
    let first = expected(&fresh, &plan(&fresh)).unwrap();
    assert!(
        (first - Length::mm(20.0)).abs() < Length::mm(0.2),
        "{first:?}"
    );
    let job = job_with(vec![
        reading("20", WorkPlace::Middle),
        cut("0.5", DialReads::Diameter),
        reading("19.512", WorkPlace::Middle),
        cut("0.2", DialReads::Diameter),
        cut("0.1", DialReads::Radius),
    ]);
    let now = expected(&job, &plan(&job)).unwrap();
    assert!(
        (now - Length::mm(19.112)).abs() < Length::mm(1e-9),
        "{now:?}"
    );
    // Cut to nothing there is nothing to complete.
    let gone = job_with(vec![
        reading("20", WorkPlace::Middle),
        cut("30", DialReads::Diameter),
    ]);
    assert_eq!(expected(&gone, &plan(&gone)), None);
}

#[test]
fn the_next_place_is_where_it_was_measured_before_the_cut() {
    assert_eq!(next_place(&Record::default()), WorkPlace::FreeEnd);
    let events = vec![
        reading("20", WorkPlace::Middle),
        cut("0.5", DialReads::Diameter),
    ];
    assert_eq!(next_place(&job_with(events).record), WorkPlace::Middle);
    let events = vec![
        cut("0.5", DialReads::Diameter),
        reading("20", WorkPlace::FreeEnd),
        reading("20", WorkPlace::Middle),
    ];
    assert_eq!(
        next_place(&job_with(events).record),
        WorkPlace::NearShoulder
    );
}

#[test]
fn what_was_meant_keeps_unit_and_decimals() {
    let What::Reading(wrong) = reading("20.512", WorkPlace::Middle) else {
        unreachable!("a reading was made")
    };
    let meant = as_meant(&wrong, Length::mm(20.012)).unwrap();
    assert_eq!(meant.value.entry().to_string(), "20.012 mm");
    assert_eq!(meant.of, wrong.of);
    assert_eq!(
        as_meant(&wrong, Length::mm(1e12)),
        None,
        "no number of fifteen digits"
    );
}

#[test]
fn an_infeed_is_told_in_divisions() {
    assert_eq!(divisions(Length::mm(0.3), Length::mm(0.05)).unwrap(), "6");
    assert_eq!(divisions(Length::mm(0.3), Length::ZERO), None);
    assert_eq!(divisions(Length::ZERO, Length::mm(0.05)), None);
    let text = dialled_bare(Length::inch(0.01), Length::inch(0.001), Unit::Inch);
    assert_eq!(text, "0.010");
}

#[test]
fn odds_are_told_roundly() {
    let told = |odds| one_in(Share::of_whole(odds));
    assert_eq!(told(0.5), Some(2));
    assert_eq!(told(0.9), Some(1));
    assert_eq!(told(0.1), Some(10));
    assert_eq!(told(0.003), Some(500));
    assert_eq!(told(0.001), Some(1000));
    for none in [0.0, -1.0, 0.0005] {
        assert_eq!(told(none), None, "{none}");
    }
}
