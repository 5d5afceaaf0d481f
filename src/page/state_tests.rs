//! What a person does, and what the page then remembers.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{Field, HoleKind, Job, SectionField, TurnedKind};
use skimwright::link::{LinkError, encode};
use skimwright::plan::Level;
use skimwright::quantity::{ReadErrorKind, Units};

use super::edit::{Edit, Kind, List};
use super::jobs::JobsAction;
use super::state::{Action, Notice, Saved, Stage, State, Wrong};
use super::words::Words;

fn fresh() -> State {
    State::open(None, "", None)
}

fn after(state: State, actions: impl IntoIterator<Item = Action>) -> State {
    actions.into_iter().fold(state, State::after)
}

fn typed(field: Field, text: &str) -> Action {
    Action::Type(field, text.to_owned())
}

fn mm(state: &State, field: Field) -> f64 {
    let entry = state.job.entry(field).unwrap();
    Units::Metric
        .entry_value(entry)
        .split('\u{a0}')
        .next()
        .unwrap()
        .parse()
        .unwrap()
}

#[test]
fn typing_changes_the_job_and_keeps_the_text() {
    let state = after(fresh(), [typed(Field::WantedDiameter, "31,2-15.4")]);
    assert!((mm(&state, Field::WantedDiameter) - 15.8).abs() < 1e-9);
    let reading = state.reading(Field::WantedDiameter);
    assert_eq!(reading.text, "31,2-15.4");
    assert_eq!(reading.said.as_deref(), Some("15.8\u{a0}mm"));
    let left = state.after(Action::Leave(Field::WantedDiameter));
    assert_eq!(left.reading(Field::WantedDiameter).text, "31.2 - 15.4");
}

#[test]
fn a_text_that_is_no_figure_stays_and_the_plan_goes_on() {
    let before = fresh();
    let state = after(
        before.clone(),
        [
            typed(Field::WantedDiameter, "sixteen"),
            Action::Leave(Field::WantedDiameter),
        ],
    );
    let reading = state.reading(Field::WantedDiameter);
    assert_eq!(reading.text, "sixteen");
    assert!(matches!(reading.wrong, Some(Wrong::Unread(_))));
    assert_eq!(state.plan, before.plan);
    assert!(!state.can_undo());
}

#[test]
fn while_a_text_is_not_understood_the_plan_is_that_of_before_the_typing() {
    let before = fresh();
    let passing = ["1", "1 ", "1 3", "1 3/", "1 3/8", "1 3/8 k", "1 3/8 kg"];
    let typing = passing.map(|text| typed(Field::WantedDiameter, text));
    let state = after(before.clone(), typing);
    assert_eq!(state.plan, before.plan);
    assert!(!state.can_undo());
    // Once it is understood again, the whole run of typing is one step of undo still.
    let read = after(state, [typed(Field::WantedDiameter, "1 3/8 in")]);
    assert!((mm(&read, Field::WantedDiameter) - 34.925).abs() < 1e-9);
    let back = read.after(Action::Undo);
    assert_eq!(back.job, before.job);
    assert!(!back.can_undo());
}

#[test]
fn a_text_that_is_not_understood_takes_back_no_other_field() {
    let state = after(
        fresh(),
        [
            typed(Field::WantedDiameter, "18"),
            Action::Leave(Field::WantedDiameter),
            typed(Field::WantedLength, "4"),
            typed(Field::WantedLength, "4x"),
        ],
    );
    assert!((mm(&state, Field::WantedDiameter) - 18.0).abs() < 1e-9);
    assert!((mm(&state, Field::WantedLength) - 50.0).abs() < 1e-9);
}

#[test]
fn a_link_opens_on_the_plan() {
    let [arbor, ..] = demo_jobs();
    let link = encode(&arbor).unwrap();
    assert_eq!(State::open(None, &link, None).stage, Stage::Plan);
    let own = encode(&Job::default()).unwrap();
    assert_eq!(State::open(Some(&own), &link, None).stage, Stage::Plan);
    // What this page wrote into the address itself is no link.
    let again = State::open(Some(&own), &own, Some(&own));
    assert_eq!(again.stage, Stage::Received);
}

#[test]
fn every_field_takes_any_text_without_harm() {
    let novel = "9".repeat(10_000);
    let texts = [
        "text", "", "-5", "0", "99999999", "NaN", "1e999", "25.4.1", "25;4", &novel, "<b>", "\u{0}",
    ];
    for job in demo_jobs() {
        let state = after(fresh(), [Action::TakeExample(Rc::new(job))]);
        for field in skimwright::plan::number_fields(&state.job) {
            for text in texts {
                let state = after(state.clone(), [typed(field, text), Action::Leave(field)]);
                let reading = state.reading(field);
                let optional = field.bounds().unwrap().optional;
                if text.is_empty() && optional {
                    assert_eq!(reading.wrong, None, "{field} {text:?}");
                } else if text.parse::<f64>().is_err()
                    || text.contains(['N', 'e'])
                    || text.len() > 64
                {
                    assert!(
                        matches!(reading.wrong, Some(Wrong::Unread(_))),
                        "{field} {text:?}"
                    );
                }
                assert!(!state.plan.findings.is_empty());
            }
        }
    }
}

#[test]
fn a_figure_outside_its_bounds_is_told_at_the_field_and_in_the_findings() {
    let state = after(fresh(), [typed(Field::HeadDiameter, "-5")]);
    assert_eq!(
        state.reading(Field::HeadDiameter).wrong,
        Some(Wrong::OutOfBounds)
    );
    let worst = state.plan.findings.first().unwrap();
    assert_eq!(
        (worst.level, worst.field),
        (Level::Stop, Field::HeadDiameter)
    );
}

#[test]
fn emptying_a_field_that_must_be_filled_asks_for_a_figure() {
    let state = after(fresh(), [typed(Field::WantedLength, "")]);
    let wrong = state.reading(Field::WantedLength).wrong;
    assert!(matches!(wrong, Some(Wrong::Unread(error)) if error.kind == ReadErrorKind::Empty));
    let none = after(fresh(), [typed(Field::Countersink, "")]);
    assert_eq!(none.reading(Field::Countersink).wrong, None);
    assert!(none.plan.centre.is_none());
}

#[test]
fn a_run_of_typing_is_one_step_of_undo() {
    let state = after(
        fresh(),
        [
            typed(Field::WantedLength, "4"),
            typed(Field::WantedLength, "45"),
            Action::Leave(Field::WantedLength),
            typed(Field::WantedDiameter, "15"),
            Action::Leave(Field::WantedDiameter),
        ],
    );
    let undone = after(state.clone(), [Action::Undo]);
    assert!((mm(&undone, Field::WantedDiameter) - 16.0).abs() < 1e-9);
    assert!((mm(&undone, Field::WantedLength) - 45.0).abs() < 1e-9);
    let both = after(undone.clone(), [Action::Undo]);
    assert!((mm(&both, Field::WantedLength) - 50.0).abs() < 1e-9);
    assert!(!both.can_undo());
    let again = after(both, [Action::Redo, Action::Redo]);
    assert_eq!(again.job, state.job);
    assert!(!again.can_redo());
    let branched = after(undone, [typed(Field::WantedDiameter, "14")]);
    assert!(!branched.can_redo());
}

#[test]
fn the_units_change_what_is_seen_and_never_the_job() {
    let state = fresh();
    let inch = after(state.clone(), [Action::ShowUnits(Units::InchDecimal)]);
    assert_eq!(inch.job, state.job);
    assert_eq!(inch.reading(Field::WantedDiameter).text, "0.62992");
    let typed_inch = after(
        inch,
        [
            typed(Field::WantedDiameter, "5/8"),
            Action::Leave(Field::WantedDiameter),
        ],
    );
    assert_eq!(typed_inch.reading(Field::WantedDiameter).text, "5/8");
    let back = after(typed_inch, [Action::ShowUnits(Units::Metric)]);
    assert_eq!(back.reading(Field::WantedDiameter).text, "15.875");
    // Looking at a field and leaving it changes nothing.
    let left = after(back.clone(), [Action::Leave(Field::WantedDiameter)]);
    assert_eq!(left.job, back.job);
}

#[test]
fn a_link_never_takes_the_place_of_ones_own_job_unasked() {
    let [own, other, _] = demo_jobs();
    let (stored, link) = (encode(&own).unwrap(), encode(&other).unwrap());
    let state = State::open(Some(&stored), &link, None);
    assert_eq!(*state.job, other);
    assert_eq!(state.own.as_deref(), Some(&own));
    assert_eq!(state.saved, Saved::Visiting);

    let back = after(state.clone(), [Action::BackToOwn]);
    assert_eq!(*back.job, own);
    assert_eq!(back.own, None);

    let kept = after(state, [Action::KeepVisitor]);
    assert_eq!((&*kept.job, &kept.own), (&other, &None));
    let back = after(kept, [Action::Undo, Action::Jobs(JobsAction::Back)]);
    assert_eq!(*back.job, own, "undo cannot lose it");
}

#[test]
fn a_link_is_opened_at_once_where_there_is_no_job_yet() {
    let [job, ..] = demo_jobs();
    let state = State::open(None, &encode(&job).unwrap(), None);
    assert_eq!(*state.job, job);
    assert_eq!(state.own, None);
    assert_eq!(state.notice, None);
}

#[test]
fn ones_own_address_asks_nothing_even_when_it_lags_behind() {
    let [own, older, _] = demo_jobs();
    let (stored, address) = (encode(&own).unwrap(), encode(&older).unwrap());
    let state = State::open(Some(&stored), &address, Some(&address));
    assert_eq!(*state.job, own);
    assert_eq!(state.own, None);
}

#[test]
fn a_damaged_link_is_told_and_changes_nothing() {
    let [own, other, _] = demo_jobs();
    let (stored, link) = (encode(&own).unwrap(), encode(&other).unwrap());
    let cut = &link[..link.len() - 3];
    let state = State::open(Some(&stored), cut, None);
    assert_eq!(*state.job, own);
    assert_eq!(state.notice, Some(Notice::BadLink(LinkError::Damaged)));
    let later = after(
        State::open(Some(&stored), "", None),
        [Action::OpenLink("hello".to_owned())],
    );
    assert!(matches!(later.notice, Some(Notice::BadLink(_))));
    assert_eq!(*later.job, own);
}

#[test]
fn garbage_in_the_store_is_told() {
    let state = State::open(Some("garbage"), "", None);
    assert_eq!(*state.job, Job::default());
    assert_eq!(state.notice, Some(Notice::BadStore));
}

#[test]
fn rows_are_added_changed_and_taken_out() {
    let state = after(
        fresh(),
        [
            Action::Edit(Edit::Add(Kind::Section(TurnedKind::Taper))),
            Action::Edit(Edit::MoveOn(List::Sections, 0)),
            Action::Edit(Edit::Kind(0, Kind::Section(TurnedKind::StandardTaper))),
            Action::Edit(Edit::Add(Kind::Bore(HoleKind::Tapped))),
            Action::Edit(Edit::Kind(0, Kind::Bore(HoleKind::CentreHole))),
        ],
    );
    assert_eq!(state.job.part.sections.len(), 2);
    assert_eq!(state.job.part.bores.len(), 1);
    assert!(state.job.has(Field::Section(0, SectionField::PastGauge)));
    let less = after(
        state,
        [
            Action::Edit(Edit::Remove(List::Sections, 0)),
            Action::Edit(Edit::Remove(List::Bores, 0)),
            Action::Edit(Edit::Remove(List::Bores, 9)),
        ],
    );
    assert_eq!(less.job.part.sections.len(), 1);
    assert!(less.job.part.bores.is_empty());
    let full = after(
        less,
        (0..40).map(|_| Action::Edit(Edit::Add(Kind::Section(TurnedKind::Cylinder)))),
    );
    assert_eq!(full.job.part.sections.len(), Job::MOST_SECTIONS);
}

#[test]
fn any_stage_opens_at_any_time() {
    for stage in Stage::ALL {
        assert_eq!(after(fresh(), [Action::GoTo(stage)]).stage, stage);
    }
}

#[test]
fn another_job_begun_over_a_visitors_leaves_ones_own() {
    let [own, other, third] = demo_jobs();
    let (stored, link) = (encode(&own).unwrap(), encode(&other).unwrap());
    let visiting = State::open(Some(&stored), &link, None);
    for action in [Action::Reset, Action::TakeExample(Rc::new(third))] {
        let begun = after(visiting.clone(), [action]);
        assert_eq!(begun.own, None);
        let back = after(begun, [Action::Jobs(JobsAction::Back)]);
        assert_eq!(*back.job, own);
        assert_eq!(back.notice, None, "it is back already");
    }
}

#[test]
fn the_way_back_to_ones_own_link_is_the_way_back_to_ones_own_job() {
    let [own, other, _] = demo_jobs();
    let (stored, link) = (encode(&own).unwrap(), encode(&other).unwrap());
    let visiting = State::open(Some(&stored), &link, None);
    let back = after(visiting, [Action::OpenLink(stored)]);
    assert_eq!(*back.job, own);
    assert_eq!(back.own, None);
}

#[test]
fn a_bad_link_is_told_until_the_person_goes_on() {
    let state = State::open(None, "b123", None);
    assert!(matches!(state.notice, Some(Notice::BadLink(_))));
    let later = after(state, [typed(Field::WantedLength, "33")]);
    assert_eq!(later.notice, None);
}

#[test]
fn garbage_in_the_store_leaves_the_job_of_the_address() {
    let [job, ..] = demo_jobs();
    let address = encode(&job).unwrap();
    let state = State::open(Some("garbage"), &address, Some(&address));
    assert_eq!(*state.job, job);
    assert_eq!(state.notice, Some(Notice::BadStore));
}

#[test]
fn a_name_is_one_step_of_undo_however_long() {
    let names =
        ["A", "Ar", "Arb"].map(|name| Action::Edit(Edit::Text(Field::Title, name.to_owned())));
    let state = after(fresh(), names);
    assert_eq!(state.job.title, "Arb");
    let back = after(state, [Action::Undo]);
    assert_eq!(back.job.title, "");
    assert!(!back.can_undo());
}

#[test]
fn a_choice_leaves_what_was_typed_wrongly_elsewhere() {
    let head = Field::HeadDiameter;
    let row = Field::Section(0, SectionField::Length);
    let state = after(
        fresh(),
        [
            typed(head, "forty"),
            typed(row, "long"),
            Action::Edit(Edit::Add(Kind::Bore(HoleKind::Drilled))),
        ],
    );
    assert_eq!(state.reading(row).text, "long");
    let moved = after(
        state,
        [Action::Edit(Edit::Kind(
            0,
            Kind::Section(TurnedKind::Taper),
        ))],
    );
    assert_eq!(moved.reading(head).text, "forty");
    assert_eq!(moved.reading(row).text, "80");
}

#[test]
fn the_length_over_all_opens_the_length_of_the_last_section() {
    let state = after(
        fresh(),
        [
            Action::Edit(Edit::Add(Kind::Section(TurnedKind::Cylinder))),
            Action::Pick(Some(Field::Sections)),
        ],
    );
    let last = Field::Section(1, SectionField::Length);
    assert_eq!(state.picked, Some(last));
    assert_eq!(
        after(fresh(), [Action::Pick(Some(Field::Bores))]).picked,
        None
    );
}

#[test]
fn what_would_mend_a_finding_names_what_is_to_be_changed() {
    let [arbor, ..] = demo_jobs();
    let said = |field, text| {
        let job = Rc::new(arbor.clone());
        let state = after(fresh(), [Action::TakeExample(job), typed(field, text)]);
        let words = Words::new(state.units, &state.job);
        let findings = state.plan.findings.iter().map(|it| words.finding(it));
        let said = findings.map(|it| format!("{} {}\n", it.what, it.mend));
        said.collect::<String>().replace('\u{a0}', " ")
    };
    let too_thick = said(Field::WantedDiameter, "40");
    assert!(
        too_thick.contains("from the shoulder. Flat 1 is in the way."),
        "{too_thick}"
    );
    assert!(said(Field::Countersink, "3").contains("Make it larger than 10.1"));
    assert!(said(Field::ReceiverDepth, "10").contains("Check its depth"));
}
