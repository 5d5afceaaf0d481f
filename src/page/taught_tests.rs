//! Tests of what is remembered of the days that taught.

use skimwright::job::{
    Answered, Event, Job, Learned, Moment, OwnerSays, Record, Shows, StepEvent, StepState, What,
    WorkStep,
};
use skimwright::link::offer_mark;
use skimwright::offer::Offer;
use skimwright::plan::plan;

use super::{MOST, Taught};

fn day(at: u64) -> Record {
    let state = StepState::Done;
    let step = WorkStep::Hold;
    Record {
        events: vec![Event {
            at: Moment::unix_seconds(at),
            struck: false,
            what: What::Step(StepEvent { step, state }),
        }],
        ..Record::default()
    }
}

#[test]
fn a_day_is_known_again_from_what_was_stored() {
    let known = Learned::default();
    let mut taught = Taught::default();
    assert!(!taught.by(&day(1)) && !taught.holds(&day(1), &known));
    taught.note(&day(1), &known);
    let again = Taught::read(&taught.text());
    assert_eq!(again, taught);
    assert!(again.by(&day(1)) && again.holds(&day(1), &known));
    assert!(!again.by(&day(2)));
}

#[test]
fn what_teaches_nothing_makes_no_other_day() {
    let known = Learned::default();
    let mut taught = Taught::default();
    taught.note(&day(1), &known);
    let with = |what, struck| {
        let mut record = day(1);
        record.by = "Ada".to_owned();
        record.events.push(Event {
            at: Moment::unix_seconds(2),
            struck,
            what,
        });
        record
    };
    let step = || {
        What::Step(StepEvent {
            step: WorkStep::Check,
            state: StepState::Done,
        })
    };
    let job = Job::default();
    let Some(to) = offer_mark(&Offer::of(&job, &plan(&job), Shows::default())) else {
        panic!("no mark");
    };
    let answer = Answered {
        to,
        says: OwnerSays::Agree,
        words: String::new(),
        by: String::new(),
    };
    for same in [
        with(What::Note("oiled".to_owned()), false),
        with(What::Answered(answer), false),
        with(step(), true),
    ] {
        assert!(taught.by(&same) && taught.holds(&same, &known));
    }
    assert!(!taught.by(&with(step(), false)));
}

#[test]
fn the_oldest_days_are_forgotten_and_rubbish_is_none() {
    let mut taught = Taught::default();
    for at in 1..=200 {
        taught.note(&day(at), &Learned::default());
    }
    assert!(taught.by(&day(200)) && !taught.by(&day(1)));
    assert!(taught.text().len() <= MOST * 9);
    assert_eq!(Taught::read("  x y\u{e4}\u{e4}\u{e4}"), Taught::default());
}
