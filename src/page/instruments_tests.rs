//! Instruments of a job and on the shelf, and what a job teaches its lathe.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::rc::Rc;

use skimwright::job::{
    Event, Field, InstrumentField, InstrumentKind, Job, Learned, LearnedPace, Machine, Measured,
    Moment, Reading, Record, StepEvent, StepState, What, WorkPlace, WorkStep,
};
use skimwright::link::{Kept, encode, encode_kept};
use skimwright::quantity::{Entered, Unit};

use super::edit::{ShopEdit, is_read_with};
use super::shelf::{Lesson, Question, Shelf, ShelfAction};
use super::shop_tests::{after, fresh, named, shop, typed};
use super::state::{Action, Panel, State, Wrong};
use super::view::Spot;

const fn of(index: u8, field: InstrumentField) -> Field {
    Field::Instrument(index, field)
}

fn two() -> State {
    after(
        fresh(),
        [
            shop(ShopEdit::AddInstrument(InstrumentKind::Micrometer)),
            named(of(0, InstrumentField::Name), "Old micrometer"),
            shop(ShopEdit::AddInstrument(InstrumentKind::Indicator)),
            named(of(1, InstrumentField::Name), "Lever"),
            typed(of(1, InstrumentField::Graduation), "0.002"),
        ],
    )
}

fn names(state: &State) -> Vec<&str> {
    let all = state.job.shop.instruments.iter();
    all.map(|it| it.name.as_str()).collect()
}

#[test]
fn instruments_are_added_up_to_the_most_and_removed() {
    let state = two();
    assert_eq!(names(&state), ["Old micrometer", "Lever"]);
    let spot = state.panels.spot.map(|(spot, _)| spot);
    assert_eq!(spot, Some(Spot::Opens(Panel::Instrument(1))));
    let gone = state.clone().after(shop(ShopEdit::RemoveInstrument(0)));
    assert_eq!(names(&gone), ["Lever"]);
    assert_eq!(
        gone.reading(of(0, InstrumentField::Graduation)).text,
        "0.002"
    );
    assert_eq!(gone.after(Action::Undo).job, state.job);
    let none = state.clone().after(shop(ShopEdit::RemoveInstrument(2)));
    assert_eq!(none.job, state.job);
    let mut full = state;
    for _ in 0..20 {
        full = full.after(shop(ShopEdit::AddInstrument(InstrumentKind::Gauge)));
    }
    assert_eq!(full.job.shop.instruments.len(), Job::MOST_INSTRUMENTS);
}

#[test]
fn what_an_instrument_takes_is_bounded() {
    let state = two();
    let graduation = of(0, InstrumentField::Graduation);
    for (text, wrong) in [
        ("0.01", None),
        ("2", Some(Wrong::OutOfBounds)),
        ("0", Some(Wrong::OutOfBounds)),
    ] {
        let state = state.clone().after(typed(graduation, text));
        assert_eq!(state.reading(graduation).wrong, wrong, "{text}");
    }
    for (text, wrong) in [
        ("-10", None),
        ("60", None),
        ("61", Some(Wrong::OutOfBounds)),
    ] {
        let state = state.clone().after(typed(Field::RoomTemperature, text));
        assert_eq!(state.reading(Field::RoomTemperature).wrong, wrong, "{text}");
    }
}

/// A reading names its instrument by its place.
#[test]
fn readings_keep_the_instrument_that_they_were_taken_with() {
    let mut state = two();
    let mut job = Job::clone(&state.job);
    job.record.events = vec![Event {
        at: Moment::default(),
        struck: false,
        what: What::Reading(Reading {
            of: Measured::Diameter(WorkPlace::Middle),
            value: Entered::read("17", Unit::Millimetre).unwrap(),
            instrument: Some(1),
            temperature: None,
            confirmed: false,
        }),
    }];
    state.job = Rc::new(job);
    assert!(is_read_with(&state.job, 1) && !is_read_with(&state.job, 0));
    let same = state.clone().after(shop(ShopEdit::RemoveInstrument(1)));
    assert_eq!(same.job, state.job);
    let moved = state.after(shop(ShopEdit::RemoveInstrument(0)));
    assert_eq!(names(&moved), ["Lever"]);
    assert!(is_read_with(&moved.job, 0));
}

#[test]
fn an_instrument_is_kept_and_taken_into_another_job() {
    let keep = Action::Shelf(ShelfAction::Keep(Shelf::Instruments(1)));
    let kept = two().after(keep);
    assert_eq!(kept.shelves.names(Shelf::Instruments(0)), ["Lever"]);
    let text = encode_kept(&kept.shelves.kept).unwrap();
    let other = fresh().after(Action::Shelf(ShelfAction::Found(Some(text))));
    let take = other.shelves.take(Shelf::Instruments(0), 0).unwrap();
    let taken = after(other, [Action::Edit(take.clone()), Action::Edit(take)]);
    assert_eq!(names(&taken), ["Lever"], "the same one once");
    assert_eq!(
        taken.job.shop.instruments.first(),
        kept.job.shop.instruments.get(1)
    );
    let remove = ShelfAction::Yes(Question::Remove(Shelf::Instruments(0), 0));
    assert_eq!(
        *taken.after(Action::Shelf(remove)).shelves.kept,
        Kept::default()
    );
}

fn pace(step: WorkStep, percent: &str, jobs: &str) -> LearnedPace {
    LearnedPace {
        step,
        factor: Entered::read(percent, Unit::Percent).unwrap(),
        jobs: Entered::read(jobs, Unit::Piece).unwrap(),
    }
}

/// Every step done in two minutes, in working order.
fn day() -> Record {
    let steps = WorkStep::ALL.into_iter().zip(0_u64..);
    let events = steps.flat_map(|(step, at)| {
        [(0, StepState::Started), (120, StepState::Done)].map(|(after, state)| Event {
            at: Moment::unix_seconds(at * 200 + after),
            struck: false,
            what: What::Step(StepEvent { step, state }),
        })
    });
    Record {
        by: String::new(),
        events: events.collect(),
    }
}

fn worked() -> State {
    let mut job = Job::clone(&fresh().job);
    job.shop.machine.name = "Old faithful".to_owned();
    job.record = day();
    State::open(None, &encode(&job).unwrap(), None)
}

#[test]
fn a_day_is_learned_once_and_goes_onto_the_kept_lathe_too() {
    // Another job has taught the kept lathe since.
    let known = Learned {
        takes: None,
        paces: vec![pace(WorkStep::Hold, "150", "8")],
    };
    let lathe = Machine {
        name: "Old faithful".to_owned(),
        learned: known,
        ..Machine::default()
    };
    let kept = encode_kept(&Kept {
        machines: vec![lathe],
        ..Kept::default()
    });
    let state = worked().after(Action::Shelf(ShelfAction::Found(kept.ok())));
    assert!(state.lesson().is_some());
    let taught = state.clone().after(Action::Shelf(ShelfAction::Teach));
    let learned = &taught.job.shop.machine.learned;
    assert_eq!(Some(learned), state.lesson().as_ref());
    assert!(!learned.paces.is_empty());
    assert_eq!(taught.shelves.changes, 1);
    let on_shelf = &taught.shelves.kept.machines.first().unwrap().learned;
    let hold = |learned: &Learned| {
        let found = learned.paces.iter().find(|it| it.step == WorkStep::Hold);
        found.unwrap().jobs.value().to_pieces()
    };
    assert!((hold(learned) - 1.0).abs() < 1e-9);
    assert!((hold(on_shelf) - 9.0).abs() < 1e-9);
    // The plan goes by it, and says so.
    assert!(!taught.plan.time.as_ref().unwrap().learned.is_empty());
    // Once is enough.
    assert_eq!(taught.lesson(), None);
    let again = taught.clone().after(Action::Shelf(ShelfAction::Teach));
    assert_eq!((again.job, again.shelves.changes), (taught.job.clone(), 1));
    // Undone and taught again, the kept lathe is not taught twice.
    let redone = after(taught, [Action::Undo, Action::Shelf(ShelfAction::Teach)]);
    assert_eq!(redone.shelves.changes, 1);
}

#[test]
fn a_job_that_is_not_over_teaches_nothing() {
    let mut state = worked();
    let mut job = Job::clone(&state.job);
    job.record.events.pop();
    state.job = Rc::new(job);
    assert_eq!(state.lesson(), None);
    assert_eq!(fresh().lesson(), None);
}

#[test]
fn what_was_learned_is_afterten_after_asking() {
    let state = worked().after(Action::Shelf(ShelfAction::Teach));
    let count = state.job.shop.machine.learned.paces.len();
    let forget = ShelfAction::Yes(Question::Forget(Lesson::Pace(WorkStep::Hold)));
    let after = state.clone().after(Action::Shelf(forget));
    assert_eq!(after.cover, None);
    let paces = &after.job.shop.machine.learned.paces;
    assert_eq!(paces.len(), count - 1);
    assert!(paces.iter().all(|it| it.step != WorkStep::Hold));
    assert_eq!(after.after(Action::Undo).job, state.job);
}

#[test]
fn picking_a_field_of_an_instrument_opens_its_panels() {
    let field = of(1, InstrumentField::Repeat);
    let state = two().after(Action::Open(Panel::Instrument(1), false));
    let state = state.after(Action::Pick(Some(field)));
    assert_eq!(state.picked, Some(field));
    for panel in [Panel::Instruments, Panel::Instrument(1)] {
        assert!(state.panels.is_open(panel, &state.job));
    }
    let state = fresh().after(Action::Pick(Some(Field::Instruments)));
    assert!(state.panels.is_open(Panel::Instruments, &state.job));
    let state = fresh().after(Action::Pick(Some(Field::RoomTemperature)));
    assert_eq!(state.picked, Some(Field::RoomTemperature));
}
