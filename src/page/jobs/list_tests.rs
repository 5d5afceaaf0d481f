//! What is done with the jobs that are kept.

#![expect(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{Field, Job};
use skimwright::link::encode;

use super::act::{JobsAction, Told, Written};
use super::entry::{Entry, JobId};
use super::found::Found;
use super::list::{Keeping, Trouble};
use crate::page::edit::Edit;
use crate::page::state::{Action, Cover, Notice, Saved, State};

pub(super) fn after(state: State, actions: impl IntoIterator<Item = Action>) -> State {
    actions.into_iter().fold(state, State::after)
}

pub(super) fn jobs(action: JobsAction) -> Action {
    Action::Jobs(action)
}

pub(super) fn found(entries: Vec<Entry>) -> Action {
    jobs(JobsAction::Found(Rc::new(Found {
        entries,
        noted: 0,
        aside: None,
    })))
}

pub(super) fn named(title: &str) -> Action {
    Action::Edit(Edit::Text(Field::Title, title.to_owned()))
}

/// A page of a tab of this name with an empty database.
pub(super) fn opened(tab: &str) -> State {
    State::open(None, "", None)
        .with_kept(tab.into(), None)
        .after(found(Vec::new()))
}

/// All that waits was written.
pub(super) fn written(state: State, time: u64) -> State {
    let written = state.jobs.waiting().into_iter().map(|it| Written {
        id: it.id,
        edits: it.edits,
        revision: it.revision + 1,
        created: if it.created == 0 { time } else { it.created },
        changed: time,
        gone: it.gone,
    });
    let written = Rc::new(written.collect());
    state.after(jobs(JobsAction::Written(written)))
}

fn titles(state: &State) -> Vec<String> {
    let standing = state.jobs.standing();
    standing.map(|it| it.title.to_string()).collect()
}

fn id_of(state: &State, title: &str) -> JobId {
    let found = state.jobs.list.iter().find(|it| &*it.title == title);
    found.expect("a job of this title").id.clone()
}

/// Three jobs, written one after the other; the last is open.
fn three() -> State {
    let mut state = opened("tab");
    for (time, title) in (1..).zip(["One", "Two", "Three"]) {
        let begun = after(state, [Action::Reset, named(title)]);
        state = written(begun, time);
    }
    after(state, [Action::Show(Some(Cover::Jobs))])
}

#[test]
fn nothing_is_kept_before_something_is_entered() {
    let state = opened("tab");
    assert_eq!(state.saved, Saved::Nothing);
    assert_eq!(state.jobs.list.len(), 0);
    let named = state.after(named("Arbor"));
    assert_eq!(named.saved, Saved::Pending);
    assert_eq!(titles(&named), ["Arbor"]);
    assert_eq!(&*named.jobs.waiting()[0].id, "tab-1");
    let kept = written(named, 7);
    assert_eq!(kept.saved, Saved::Yes);
    assert!(kept.jobs.waiting().is_empty());
    assert_eq!(kept.jobs.list[0].created, 7);
}

#[test]
fn saved_is_said_only_of_the_last_change() {
    let first = opened("tab").after(named("A"));
    let waiting = first.jobs.waiting();
    let more = first.after(named("Ar"));
    let late = Written {
        id: waiting[0].id.clone(),
        edits: waiting[0].edits,
        revision: 1,
        created: 1,
        changed: 1,
        gone: false,
    };
    let told = more.after(jobs(JobsAction::Written(Rc::new(vec![late]))));
    assert_eq!(told.saved, Saved::Pending, "what was typed since is not");
    assert_eq!(written(told, 2).saved, Saved::Yes);
}

#[test]
fn a_refusal_is_said_and_tried_again() {
    let state = opened("tab").after(named("A"));
    let calls = state.jobs.calls;
    let full = state.after(jobs(JobsAction::Failed(Trouble::Full)));
    assert_eq!(full.saved, Saved::Full);
    let again = after(
        full,
        [
            jobs(JobsAction::TryAgain),
            jobs(JobsAction::Failed(Trouble::Refused)),
        ],
    );
    assert_eq!(again.saved, Saved::Again);
    assert_ne!(again.jobs.calls, calls, "it is tried again");
    assert_eq!(again.jobs.waiting().len(), 1);
    assert_eq!(written(again, 3).saved, Saved::Yes);
}

#[test]
fn without_a_database_the_open_job_is_kept_and_nothing_more_is_said() {
    let state = State::open(None, "", None).with_kept("tab".into(), None);
    let one = after(
        state,
        [jobs(JobsAction::NoDatabase(Keeping::One)), named("A")],
    );
    assert_eq!(one.saved, Saved::Refused);
    assert_eq!(one.after(Action::Stored(true)).saved, Saved::One);
}

#[test]
fn a_new_job_stands_beside_the_others_and_each_keeps_its_undo() {
    let state = opened("tab").after(named("Mine"));
    let [example, ..] = demo_jobs();
    let begun = state.after(Action::TakeExample(Rc::new(example.clone())));
    assert_eq!(*begun.job, example);
    assert_eq!(begun.notice, Some(Notice::Begun));
    assert!(
        !begun.can_undo(),
        "undo stays within a job, so that it can lose none"
    );
    assert_eq!(titles(&begun).len(), 2);
    let back = begun.after(jobs(JobsAction::Back));
    assert_eq!(back.job.title, "Mine");
    assert!(back.can_undo());
    assert_eq!(titles(&back), ["Mine"], "an example only looked at goes");
    // Changed, it stays.
    let changed = after(
        back,
        [
            Action::TakeExample(Rc::new(example)),
            named("Theirs"),
            jobs(JobsAction::Back),
        ],
    );
    assert_eq!(titles(&changed), ["Theirs", "Mine"]);
    let again = changed
        .clone()
        .after(jobs(JobsAction::Open(id_of(&changed, "Theirs"))));
    assert!(again.can_undo(), "its undo is still there");
}

#[test]
fn a_visitors_job_becomes_one_more() {
    let [own, other, _] = demo_jobs();
    let state = State::open(Some(&encode(&own).unwrap()), "", None)
        .with_kept("tab".into(), None)
        .after(found(Vec::new()));
    let visiting = state.after(Action::OpenLink(encode(&other).unwrap()));
    assert_eq!(visiting.saved, Saved::Visiting);
    assert_eq!(titles(&visiting), std::slice::from_ref(&own.title));
    let kept = visiting.after(Action::KeepVisitor);
    assert_eq!(titles(&kept), [other.title, own.title.clone()]);
    let undone = after(kept, [Action::Undo, jobs(JobsAction::Back)]);
    assert_eq!(*undone.job, own);
}

#[test]
fn a_link_of_a_job_in_the_list_opens_that_job() {
    let state = three();
    let one = id_of(&state, "One");
    let text = state.jobs.entry(&one).unwrap().text.to_string();
    let opened = state.after(Action::OpenLink(text));
    assert_eq!(opened.own, None);
    assert_eq!(opened.jobs.current, Some(one));
}

#[test]
fn the_list_is_newest_first_and_searched_by_name() {
    let state = three();
    assert_eq!(titles(&state), ["Three", "Two", "One"]);
    let state = after(
        state,
        [
            jobs(JobsAction::Rename("tab-1".into(), "ÄRBÖR one".to_owned())),
            jobs(JobsAction::Search(" ärbör O".to_owned())),
        ],
    );
    let matching: Vec<&str> = state.jobs.matching().map(|it| &*it.title).collect();
    assert_eq!(matching, ["ÄRBÖR one"]);
    let none = state.after(jobs(JobsAction::Search("x".to_owned())));
    assert_eq!(none.jobs.matching().count(), 0);
}

#[test]
fn a_job_is_renamed_duplicated_put_into_the_trash_and_brought_back() {
    let state = three();
    let one = id_of(&state, "One");
    let renamed = after(
        state,
        [jobs(JobsAction::Rename(one.clone(), "Uno".to_owned()))],
    );
    let job = renamed.jobs.entry(&one).unwrap().job().unwrap();
    assert_eq!(job.title, "Uno", "the title is the job's own");
    assert_eq!(renamed.jobs.waiting().len(), 1);

    let copied = renamed.after(jobs(JobsAction::Duplicate(one.clone())));
    assert!(titles(&copied).contains(&"Uno (copy)".to_owned()));
    assert_eq!(copied.job.title, "Three", "the open one stays open");

    let trashed = copied.after(jobs(JobsAction::Trash(one.clone())));
    assert!(!titles(&trashed).contains(&"Uno".to_owned()));
    assert_eq!(trashed.jobs.trash().count(), 1);
    assert_eq!(trashed.jobs.told, Some(Told::Trashed(one.clone())));
    let restored = trashed.clone().after(jobs(JobsAction::Restore(one)));
    assert!(titles(&restored).contains(&"Uno".to_owned()));

    let emptied = written(trashed.after(jobs(JobsAction::EmptyTrash)), 9);
    assert_eq!(emptied.jobs.trash().count(), 0);
    assert_eq!(emptied.jobs.list.len(), 3);
    assert_eq!(emptied.jobs.told, Some(Told::Emptied(1)));
}

#[test]
fn the_open_job_in_the_trash_gives_way_to_the_newest() {
    let state = three();
    let current = state.jobs.current.clone().unwrap();
    let gone = after(state, [jobs(JobsAction::Trash(current))]);
    assert_eq!(gone.job.title, "Two");
    let all = ["Two", "One"].map(|title| jobs(JobsAction::Trash(id_of(&gone, title))));
    let none = after(gone, all);
    assert_eq!(*none.job, Job::default());
    assert_eq!(none.saved, Saved::Nothing);
    assert_eq!(none.jobs.trash().count(), 3);
}

#[test]
fn titles_of_any_length_stay_within_a_jobs() {
    let long = "x".repeat(Job::MOST_TITLE_CHARACTERS);
    let state = written(opened("tab").after(named(&long)), 1);
    let id = state.jobs.current.clone().unwrap();
    let copied = state.after(jobs(JobsAction::Duplicate(id)));
    let copy = copied.jobs.list.first().unwrap();
    assert_eq!(copy.title.chars().count(), Job::MOST_TITLE_CHARACTERS);
    assert!(copy.title.ends_with(" (copy)"), "{}", copy.title);
}

#[test]
fn what_another_tab_writes_is_shown_unless_something_was_changed_here() {
    let state = written(opened("a").after(named("Mine")), 5);
    let mut theirs = state.jobs.open_entry().unwrap().clone();
    let job = Job {
        title: "Theirs".to_owned(),
        ..Job::default()
    };
    theirs.text = encode(&job).unwrap().into();
    theirs.title = "Theirs".into();
    theirs.revision += 1;
    theirs.tab = "b".into();
    let seen = state
        .clone()
        .after(jobs(JobsAction::Seen(Rc::new(theirs.clone()))));
    assert_eq!(seen.job.title, "Theirs");
    assert_eq!(seen.saved, Saved::Yes);
    assert!(!seen.can_undo(), "what is undone is one's own");
    assert!(seen.jobs.waiting().is_empty(), "there is nothing to write");

    let typing = state.after(named("Mine too"));
    let seen = typing.after(jobs(JobsAction::Seen(Rc::new(theirs.clone()))));
    assert_eq!(seen.job.title, "Mine too");
    // The writing finds out, and both are kept.
    let both = seen.after(jobs(JobsAction::Conflict(Rc::new(theirs))));
    assert_eq!(both.job.title, "Mine too (other tab)");
    assert_eq!(both.notice, Some(Notice::OtherTab));
    assert_eq!(titles(&both), ["Mine too (other tab)", "Theirs"]);
    let waiting = both.jobs.waiting();
    assert_eq!(waiting.len(), 1);
    assert_eq!(waiting[0].revision, 0, "it is a job of its own");
}

#[test]
fn what_another_tab_deletes_goes_unless_it_is_open_here() {
    let state = three();
    let one = id_of(&state, "One");
    let gone = state.after(jobs(JobsAction::SeenGone(one)));
    assert_eq!(titles(&gone), ["Three", "Two"]);
    let open = gone.jobs.current.clone().unwrap();
    let still = gone.after(jobs(JobsAction::SeenGone(open)));
    assert_eq!(still.job.title, "Three");
    assert_eq!(still.after(named("Again")).jobs.waiting()[0].revision, 0);
}
