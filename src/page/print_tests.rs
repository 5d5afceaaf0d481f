//! Printing and handing back, by the reducer.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{Event, Field, Job, Moment, What};
use skimwright::link;
use skimwright::offer::handed_back;
use skimwright::sheet::DecimalMark;

use super::edit::Edit;
use super::print::PrintAction;
use super::state::{Action, Stage, State};

fn recorded() -> Job {
    let [mut job, ..] = demo_jobs();
    job.record.by = "M. Turner".to_owned();
    job.record.events = vec![Event {
        at: Moment::unix_seconds(1_700_000_000),
        struck: false,
        what: What::Note("a burr at the hole".to_owned()),
    }];
    job
}

fn back_link(job: &Job) -> String {
    link::encode_handed_back(&handed_back(job)).unwrap()
}

#[test]
fn the_sheet_is_there_until_something_else_is_so() {
    let state = State::open(None, "", None);
    assert!(!state.print.sheet);
    let state = state.after(Action::Print(PrintAction::Sheet));
    assert_eq!((state.print.sheet, state.print.asked), (true, 1));
    let state = state.after(Action::Print(PrintAction::Sheet));
    assert_eq!(state.print.asked, 2);
    let left = state.clone().after(Action::GoTo(Stage::Cut));
    assert_eq!((left.print.sheet, left.print.asked), (false, 0));
    let edited = state.after(Action::Type(Field::Title, "Other".to_owned()));
    assert_eq!((edited.print.sheet, edited.print.asked), (false, 0));
}

#[test]
fn a_browser_that_prints_by_itself_is_not_asked_to() {
    let state = State::open(None, "", None).after(Action::Print(PrintAction::Ready));
    assert_eq!((state.print.sheet, state.print.asked), (true, 0));
}

#[test]
fn the_decimal_mark_is_the_browsers_until_one_is_chosen() {
    let state = State::open(None, "", None);
    assert_eq!(state.print.mark, None);
    let state = state.after(Action::Print(PrintAction::Mark(DecimalMark::Comma)));
    assert_eq!(state.print.mark, Some(DecimalMark::Comma));
}

#[test]
fn a_link_that_hands_back_opens_the_report_and_is_not_kept() {
    let job = recorded();
    let state = State::open(None, &back_link(&job), None);
    assert_eq!(state.stage, Stage::HandBack);
    assert!(state.print.handed_back && state.own.is_some());
    assert_eq!(state.job.record, job.record);
    assert_eq!(state.job.shop.rates, Job::default().shop.rates);
    assert_eq!(state.jobs.standing().count(), 0);
    let left = state.after(Action::BackToOwn);
    assert!(!left.print.handed_back && left.own.is_none());
    assert_eq!(*left.job, Job::default());
}

#[test]
fn a_report_beside_ones_own_job_leaves_it_alone_and_can_be_kept() {
    let own = link::encode_to_keep(&Job::default()).unwrap();
    let job = recorded();
    let state = State::open(Some(&own), &back_link(&job), None);
    assert_eq!(
        (state.stage, state.print.handed_back),
        (Stage::HandBack, true)
    );
    assert_eq!(state.own.as_deref(), Some(&Job::default()));
    let kept = state.after(Action::KeepVisitor);
    assert!(!kept.print.handed_back && kept.own.is_none());
    assert_eq!(kept.job.title, job.title);
}

#[test]
fn the_same_job_as_a_report_and_as_a_job_are_two_things() {
    let job = handed_back(&recorded());
    let state = State::open(None, &link::encode(&job).unwrap(), None);
    assert_eq!((state.stage, state.print.handed_back), (Stage::Plan, false));
    let state = state.after(Action::OpenLink(back_link(&job)));
    assert_eq!(
        (state.stage, state.print.handed_back),
        (Stage::HandBack, true)
    );
    let state = state.after(Action::OpenLink(link::encode(&job).unwrap()));
    assert!(!state.print.handed_back);
}

#[test]
fn who_measured_is_typed_as_one_step_of_undo() {
    let mut state = State::open(None, "", None);
    for text in ["M", "M.", "M. T"] {
        state = state.after(Action::Edit(Edit::Text(Field::MeasuredBy, text.to_owned())));
    }
    assert_eq!(state.job.record.by, "M. T");
    let plan = Rc::clone(&state.plan);
    let state = state.after(Action::Undo);
    assert_eq!(state.job.record.by, "");
    // A name changes nothing that was planned.
    assert!(Rc::ptr_eq(&plan, &state.plan));
}
