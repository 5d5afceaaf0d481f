//! The clock against rows of events.

use super::*;
use crate::job::{Answered, OfferMark, OwnerSays, StepEvent};

const DAY: u64 = 86_400;

/// An event by a short text: a letter for what happened, and its moment in seconds.
///
/// `S` started, `P` paused, `D` done, `K` skipped, `R` reopened; `s`, `d` the same of another step; `n` a note, `a` an owner's answer; a struck one
/// begins with `-`.
fn event(text: &str) -> Event {
    let (struck, text) = match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let (what, at) = text.split_at(1);
    let of = |step, state| What::Step(StepEvent { step, state });
    let what = match what {
        "S" => of(WorkStep::Rough, StepState::Started),
        "P" => of(WorkStep::Rough, StepState::Paused),
        "D" => of(WorkStep::Rough, StepState::Done),
        "K" => of(WorkStep::Rough, StepState::Skipped("short".to_owned())),
        "R" => of(WorkStep::Rough, StepState::Reopened),
        "s" => of(WorkStep::Polish, StepState::Started),
        "d" => of(WorkStep::Polish, StepState::Done),
        "n" => What::Note(String::new()),
        "a" => What::Answered(Answered {
            to: OfferMark(1),
            says: OwnerSays::Agree,
            words: String::new(),
            by: String::new(),
        }),
        other => panic!("no event {other}"),
    };
    Event {
        at: Moment::unix_seconds(at.parse().unwrap()),
        struck,
        what,
    }
}

fn clock(events: &str) -> Clock {
    let events = events.split_whitespace().map(event).collect();
    let record = Record {
        events,
        ..Record::default()
    };
    clock_of(&record, WorkStep::Rough)
}

#[test]
fn stretches_are_counted_as_the_events_say() {
    // Events; counted seconds; since; broken.
    let rows: &[(&str, f64, Option<u64>, bool)] = &[
        ("", 0.0, None, false),
        ("n5", 0.0, None, false),
        ("S100", 0.0, Some(100), false),
        ("S100 D100", 0.0, None, false),
        ("S100 D160", 60.0, None, false),
        ("S100 P160", 60.0, None, false),
        ("S100 K160", 60.0, None, false),
        ("S100 R160", 60.0, None, false),
        // Several stretches add up, over a reopened step too.
        ("S100 P160 S200 D230", 90.0, None, false),
        ("S100 D160 R300 S400 D405", 65.0, None, false),
        ("S100 P160 S200", 60.0, Some(200), false),
        // A second start, a second stop and a stop without a start change nothing.
        ("S100 S150 D160", 60.0, None, false),
        ("S100 P160 P190 D200", 60.0, None, false),
        ("P160 D200", 0.0, None, false),
        // One pair of hands: another start stops it, another end does not.
        ("S100 s160", 60.0, None, false),
        ("S100 s160 D200", 60.0, None, false),
        ("S100 d160 D200", 100.0, None, false),
        ("S100 s160 S190 D200", 70.0, None, false),
        // Struck out: as if it had not been.
        ("S100 -D160 D190", 90.0, None, false),
        ("-S100 D160", 0.0, None, false),
        ("S100 -s160 D190", 90.0, None, false),
        // Set back: by the stop itself, by what happened between, and before it.
        ("S100 D90", 0.0, None, true),
        ("S100 n900 D500", 0.0, None, true),
        ("S100 n50 D500", 0.0, None, true),
        ("S100 n500 D500", 400.0, None, false),
        ("n900 S100 D160", 60.0, None, false),
        ("S100 D160 n50", 60.0, None, false),
        ("S100 P160 S50 D70", 80.0, None, false),
        // An owner's answer has the moment of his own clock, before or after.
        ("S100 a50 D500", 400.0, None, false),
        ("S100 a900 D500", 400.0, None, false),
        ("S100 a50", 0.0, Some(100), false),
        // The good stretches stay counted beside a broken one.
        ("S100 P160 S200 P190 S300 D310", 70.0, None, true),
        // Still running, and set back meanwhile.
        ("S100 n90", 0.0, Some(100), true),
        // A day counts, a second more does not.
        ("S0 D86400", 86_400.0, None, false),
        ("S0 D86401", 0.0, None, true),
        ("S0 D18446744073709551615", 0.0, None, true),
        ("S18446744073709551615 D0", 0.0, None, true),
    ];
    for (events, counted, since, broken) in rows {
        let wanted = Clock {
            counted: Time::seconds(*counted),
            since: since.map(Moment::unix_seconds),
            broken: *broken,
        };
        assert_eq!(clock(events), wanted, "{events}");
    }
}

#[test]
fn what_runs_is_added_while_it_can_be_counted() {
    let running = clock("S100 P160 S200");
    let rows = [
        (200, 60.0),
        (201, 61.0),
        (0, 60.0),
        (200 + DAY, 86_460.0),
        (201 + DAY, 60.0),
        (u64::MAX, 60.0),
    ];
    for (now, wanted) in rows {
        let shown = elapsed(running, Moment::unix_seconds(now));
        assert_eq!(shown, Time::seconds(wanted), "{now}");
    }
    let stands = clock("S100 P160");
    assert_eq!(
        elapsed(stands, Moment::unix_seconds(5000)),
        Time::minutes(1.0)
    );
}

/// At any moment, what all steps show is never more than what the wall clock did: no second is counted twice.
#[test]
fn no_second_is_counted_for_two_steps() {
    let rows = [
        "S0 s60 S90 D100",
        "s0 S10 s20 S30 d40 D50",
        "S0 n10 s20 d30 S40",
    ];
    for events in rows {
        let record = Record {
            events: events.split_whitespace().map(event).collect(),
            ..Record::default()
        };
        let now = Moment::unix_seconds(100);
        let sum: Time = WorkStep::ALL
            .into_iter()
            .map(|step| elapsed(clock_of(&record, step), now))
            .sum();
        assert!(Time::ZERO < sum && sum <= Time::seconds(100.0), "{events}");
    }
}
