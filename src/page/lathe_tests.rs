//! What is done and read at the lathe.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::rc::Rc;

use skimwright::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Field, Job, Measured, Moment, Reading, Record,
    StepState, What, WorkPlace, WorkStep,
};
use skimwright::quantity::{Entered, Length, ReadErrorKind, Temperature, Unit, Units};
use skimwright::work::{StepHow, how_of};

use super::edit::{Edit, RecordEdit};
use super::lathe::{
    Keypad, LatheAction, PadAction, PadFor, PadKey, PadPlace, PadSlot, PadWrong, Thumb,
};
use super::state::{Action, Notice, Spot, Stage, State};

const AT: Moment = Moment::unix_seconds(1_000_000);

fn fresh() -> State {
    State::open(None, "", None).after(Action::GoTo(Stage::Cut))
}

fn lathe(state: State, actions: impl IntoIterator<Item = LatheAction>) -> State {
    let actions = actions.into_iter().map(Action::Lathe);
    actions.fold(state, State::after)
}

fn typed(text: &str) -> Vec<LatheAction> {
    let key = |sign| LatheAction::Pad(PadAction::Key(PadKey::Sign(sign)));
    text.chars().map(key).collect()
}

fn reading(text: &str) -> Reading {
    Reading {
        of: Measured::Diameter(WorkPlace::Middle),
        value: Entered::read(text, Unit::Millimetre).unwrap(),
        instrument: None,
        temperature: None,
        confirmed: false,
    }
}

fn add(state: State, what: What) -> State {
    lathe(state, [LatheAction::Record(RecordEdit::Add(what, AT))])
}

fn events(state: &State) -> &[Event] {
    &state.job.record.events
}

#[test]
fn what_is_added_stands_and_undo_takes_it_back() {
    let state = add(fresh(), What::Reading(reading("20")));
    let state = add(state, What::Change(Change::NewEdge));
    assert_eq!(events(&state).len(), 2);
    assert_eq!(events(&state)[0].at, AT);
    let back = state.clone().after(Action::Undo);
    assert_eq!(events(&back).len(), 1);
    assert_eq!(events(&back.after(Action::Redo)), events(&state));
}

#[test]
fn struck_out_it_stays_and_can_be_brought_back() {
    let state = add(fresh(), What::Reading(reading("20")));
    let struck = lathe(state, [LatheAction::Record(RecordEdit::Strike(0))]);
    assert!(events(&struck)[0].struck);
    assert_eq!(events(&struck).len(), 1);
    let brought = lathe(struck.clone(), [LatheAction::Record(RecordEdit::Bring(0))]);
    assert!(!events(&brought)[0].struck);
    assert!(!events(&struck.after(Action::Undo))[0].struck);
    // What is not there cannot be struck.
    let same = lathe(
        brought.clone(),
        [LatheAction::Record(RecordEdit::Strike(7))],
    );
    assert_eq!(events(&same), events(&brought));
    assert_eq!(same.can_redo(), brought.can_redo());
}

#[test]
fn a_doubted_reading_is_confirmed_or_replaced_by_what_was_meant() {
    let state = add(fresh(), What::Reading(reading("20.512")));
    let right = lathe(state.clone(), [LatheAction::Record(RecordEdit::Confirm(0))]);
    assert!(matches!(&events(&right)[0].what, What::Reading(it) if it.confirmed));
    let meant = lathe(
        state.clone(),
        [LatheAction::Meant(0, reading("20.012"), AT)],
    );
    assert!(events(&meant)[0].struck);
    assert_eq!(events(&meant)[1].what, What::Reading(reading("20.012")));
    // One step of undo for both.
    assert_eq!(events(&meant.after(Action::Undo)), events(&state));
    // A cut has nothing to confirm.
    let cut = What::Cut(CutMade {
        kind: CutMadeKind::Spring,
        dialled: Entered::read("0", Unit::Millimetre).unwrap(),
        reads: DialReads::Diameter,
    });
    let state = add(fresh(), cut);
    let same = lathe(state.clone(), [LatheAction::Record(RecordEdit::Confirm(0))]);
    assert_eq!(events(&same), events(&state));
}

#[test]
fn the_plan_is_kept_when_only_the_record_changes() {
    let state = fresh();
    let plan = Rc::clone(&state.plan);
    let state = add(state, What::Reading(reading("20")));
    assert!(Rc::ptr_eq(&plan, &state.plan));
    let undone = state.clone().after(Action::Undo);
    assert!(Rc::ptr_eq(&plan, &undone.plan));
    let other = state.after(Action::Type(Field::WantedDiameter, "12".to_owned()));
    assert!(!Rc::ptr_eq(&plan, &other.plan));
    assert_eq!(events(&other).len(), 1);
}

#[test]
fn steps_and_advice_follow_the_record() {
    let state = fresh();
    let before = state.advice().clone();
    let state = add(state, What::Reading(reading("20")));
    assert_ne!(*state.advice(), before);
    let first = state.step_to_do().unwrap();
    let state = lathe(state, [LatheAction::Start(first, AT)]);
    assert_eq!(state.steps()[0].how, StepHow::Running);
}

#[test]
fn a_full_record_says_so_and_loses_nothing() {
    let mut job = Job::default();
    let event = Event {
        at: AT,
        struck: false,
        what: What::Change(Change::DialSet),
    };
    job.record.events = vec![event; Record::MOST_EVENTS - 1];
    let state = fresh().after(Action::TakeExample(Rc::new(job)));
    let state = lathe(state, [LatheAction::Start(WorkStep::Receive, AT)]);
    assert_eq!(events(&state).len(), Record::MOST_EVENTS);
    assert_ne!(state.notice, Some(Notice::RecordFull));
    // The keypad stays open, with what was typed.
    let open = lathe(state, [LatheAction::Measure]);
    let open = lathe(lathe(open, typed("19.5")), [LatheAction::Keep(AT)]);
    assert_eq!(open.notice, Some(Notice::RecordFull));
    assert_eq!(open.lathe.pad.as_ref().unwrap().value, "19.5");
    assert_eq!(events(&open).len(), Record::MOST_EVENTS);
    // Striking out needs no room.
    let struck = lathe(open, [LatheAction::Record(RecordEdit::Strike(0))]);
    assert!(events(&struck)[0].struck);
    // Two events where there is room for one are none.
    let edit = RecordEdit::Step(WorkStep::Receive, StepState::Done, Some(WorkStep::Hold), AT);
    assert_eq!(edit.adds(), 2);
}

#[test]
fn done_goes_on_to_the_next_step_and_takes_the_clock_along() {
    let state = fresh();
    let (first, second) = (state.steps()[0].step, state.steps()[1].step);
    let state = lathe(
        state,
        [LatheAction::Start(first, AT), LatheAction::Done(first, AT)],
    );
    assert_eq!(state.step_shown().unwrap().step, second);
    assert_eq!(how_of(&state.job.record, second), StepHow::Running);
    assert_eq!(state.panels.spot.unwrap().0, Spot::StepTitle);
    // Both are one step of undo, after which the screen is where the work is.
    let back = state.after(Action::Undo);
    assert_eq!(how_of(&back.job.record, first), StepHow::Running);
    assert_eq!(back.step_shown().unwrap().step, first);
    // Without a clock none is begun.
    let quiet = lathe(fresh(), [LatheAction::Done(first, AT)]);
    assert_eq!(how_of(&quiet.job.record, second), StepHow::ToDo);
    assert_eq!(quiet.step_shown().unwrap().step, second);
}

#[test]
fn a_step_is_left_out_with_its_reason_and_done_again() {
    let state = fresh();
    let first = state.steps()[0].step;
    let asked = lathe(
        state,
        [
            LatheAction::AskSkip(true),
            LatheAction::Why("late".to_owned()),
        ],
    );
    assert_eq!(asked.lathe.skipping.as_deref(), Some("late"));
    assert_eq!(asked.panels.spot.unwrap().0, Spot::SkipTitle);
    let long = "é".repeat(Record::MOST_NOTE_CHARACTERS + 50);
    let state = lathe(asked, [LatheAction::Skip(first, long, AT)]);
    assert_eq!(state.lathe.skipping, None);
    assert_eq!(how_of(&state.job.record, first), StepHow::Skipped);
    let What::Step(skipped) = &events(&state)[0].what else {
        panic!("a step was left out")
    };
    let StepState::Skipped(why) = &skipped.state else {
        panic!("it was left out")
    };
    assert_eq!(why.chars().count(), Record::MOST_NOTE_CHARACTERS);
    let look = lathe(
        state,
        [
            LatheAction::Look(Some(first)),
            LatheAction::Reopen(first, AT),
        ],
    );
    assert_eq!(look.step_shown().unwrap().step, first);
    assert_eq!(how_of(&look.job.record, first), StepHow::ToDo);
}

#[test]
fn every_step_done_leaves_the_last_on_the_screen() {
    let state = fresh();
    let all: Vec<WorkStep> = state.steps().iter().map(|it| it.step).collect();
    let state = lathe(state, all.iter().map(|step| LatheAction::Done(*step, AT)));
    assert_eq!(state.step_to_do(), None);
    assert_eq!(state.step_shown().unwrap().step, *all.last().unwrap());
    assert_eq!(state.step_before(all[0]), None);
    assert_eq!(state.step_before(all[2]), Some(all[1]));
}

#[test]
fn a_reading_is_keyed_in_by_its_last_digits() {
    let state = add(fresh(), What::Reading(reading("20.012")));
    let state = lathe(lathe(state, [LatheAction::Measure]), typed("08"));
    let pad = state.lathe.pad.clone().unwrap();
    let understood = pad
        .understood(&state.job, &state.plan, state.units)
        .unwrap();
    assert_eq!((understood.text.as_str(), understood.kept), ("20.008", 4));
    let kept = lathe(state, [LatheAction::Keep(AT)]);
    assert_eq!(kept.lathe.pad, None);
    let What::Reading(reading) = &events(&kept)[1].what else {
        panic!("a reading was kept")
    };
    assert_eq!(reading.value.value(), Length::mm(20.008));
}

#[test]
fn what_cannot_be_kept_says_where_and_stays() {
    let open = lathe(fresh(), [LatheAction::Measure, LatheAction::Keep(AT)]);
    let pad = open.lathe.pad.clone().unwrap();
    assert!(pad.tried);
    let wrong = pad
        .understood(&open.job, &open.plan, open.units)
        .unwrap_err();
    assert!(matches!(wrong, PadWrong::Unread(error) if error.kind == ReadErrorKind::Empty));
    // A wrong temperature takes the keys there; the value stays.
    let warm = PadAction::Text(PadSlot::Temperature, "400".to_owned());
    let open = lathe(
        lathe(open, typed("19.9")),
        [LatheAction::Pad(warm), LatheAction::Keep(AT)],
    );
    let pad = open.lathe.pad.clone().unwrap();
    assert_eq!(
        (pad.slot, pad.value.as_str()),
        (PadSlot::Temperature, "19.9")
    );
    assert_eq!(pad.temperature(Units::Metric), Err(PadWrong::OutOfBounds));
    // A place that is to be typed and is not.
    let mended = PadAction::Text(PadSlot::Temperature, "25".to_owned());
    let at = PadAction::For(PadFor::Diameter(PadPlace::At));
    let open = lathe(
        open,
        [
            LatheAction::Pad(mended),
            LatheAction::Pad(at),
            LatheAction::Keep(AT),
        ],
    );
    assert_eq!(open.lathe.pad.as_ref().unwrap().slot, PadSlot::Position);
    assert!(events(&open).is_empty());
    let kept = lathe(lathe(open, typed("12")), [LatheAction::Keep(AT)]);
    let What::Reading(reading) = &events(&kept)[0].what else {
        panic!("a reading was kept")
    };
    assert!(
        matches!(&reading.of, Measured::Diameter(WorkPlace::At(at)) if at.value() == Length::mm(12.0))
    );
    assert_eq!(
        reading.temperature.as_ref().unwrap().value(),
        Temperature::celsius(25.0)
    );
}

#[test]
fn keys_erase_and_never_overflow() {
    let open = lathe(
        lathe(fresh(), [LatheAction::Measure]),
        typed("12345678901234567890"),
    );
    assert_eq!(open.lathe.pad.as_ref().unwrap().value, "1234567890123456");
    let erase = LatheAction::Pad(PadAction::Key(PadKey::Erase));
    let empty = lathe(open, vec![erase; 20]);
    assert_eq!(empty.lathe.pad.as_ref().unwrap().value, "");
}

#[test]
fn another_infeed_is_a_cut_as_the_dial_is_marked() {
    let open = lathe(
        fresh(),
        [LatheAction::OpenPad(PadFor::Infeed(CutMadeKind::Rough))],
    );
    // Nothing stays in front of it: an infeed is all of its digits.
    let state = lathe(lathe(open, typed("0.35")), [LatheAction::Keep(AT)]);
    let What::Cut(cut) = &events(&state)[0].what else {
        panic!("a cut was kept")
    };
    assert_eq!(cut.dialled.value(), Length::mm(0.35));
    assert_eq!(cut.reads, state.job.shop.machine.dial_reads);
    let nothing = lathe(
        fresh(),
        [LatheAction::OpenPad(PadFor::Infeed(CutMadeKind::Rough))],
    );
    let nothing = lathe(lathe(nothing, typed("0")), [LatheAction::Keep(AT)]);
    assert!(
        events(&nothing).is_empty(),
        "nothing dialled in is a spring pass"
    );
}

#[test]
fn the_keypad_has_inches_and_micrometres_where_they_belong() {
    let job = Job::default();
    let pad = Keypad::open(PadFor::Roughness, &job, Unit::Inch);
    assert_eq!(
        pad.unit(PadSlot::Value, Units::InchDecimal),
        Unit::Micrometre
    );
    let dial = Keypad::open(PadFor::Infeed(CutMadeKind::Rough), &job, Unit::Inch);
    assert_eq!(
        dial.unit(PadSlot::Value, Units::Metric),
        Unit::Inch,
        "the dial's own"
    );
    let pad = Keypad::for_diameter(&job, Units::InchFraction, Unit::Inch);
    assert_eq!(pad.unit(PadSlot::Value, Units::InchFraction), Unit::Inch);
    assert_eq!(
        pad.unit(PadSlot::Temperature, Units::InchFraction),
        Unit::Fahrenheit
    );
    assert_eq!(pad.decimals(&job, Units::InchFraction), 4);
}

#[test]
fn another_job_leaves_what_was_looked_at() {
    let named = fresh().after(Action::Type(Field::Title, "Arbor".to_owned()));
    let state = lathe(
        named,
        [
            LatheAction::Look(Some(WorkStep::Check)),
            LatheAction::Measure,
        ],
    );
    let state = lathe(state, [LatheAction::Thumb(Thumb::Left)]);
    let other = state.after(Action::Reset);
    assert_eq!((other.lathe.step, other.lathe.pad.clone()), (None, None));
    // How the screen is held is the person's, not the job's.
    assert_eq!(other.lathe.thumb, Thumb::Left);
}

#[test]
fn notes_are_trimmed_and_bounded() {
    let state = add(fresh(), What::Note(format!("  {}  ", "x".repeat(500))));
    let What::Note(note) = &events(&state)[0].what else {
        panic!("a note was kept")
    };
    assert_eq!(note.chars().count(), Record::MOST_NOTE_CHARACTERS);
    let edit = Edit::Record(RecordEdit::Bring(0));
    assert_eq!(edit.typing(), None);
}
