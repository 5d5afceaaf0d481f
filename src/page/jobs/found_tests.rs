//! The small copy and the database brought together as the page opens.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::link::{encode, encode_handed_back, encode_to_keep};
use skimwright::offer::{handed_back, on_paper};

use super::act::JobsAction;
use super::entry::{Entry, Newer, Of, newer, read_of, write_of};
use super::found::Found;
use super::list_tests::{after, found, jobs, named, opened, written};
use crate::page::state::{Action, Notice, Saved, Stage, State};

fn job(title: &str) -> Job {
    Job {
        title: title.to_owned(),
        ..Job::default()
    }
}

fn text(title: &str) -> String {
    encode(&job(title)).unwrap()
}

/// A job as the database has it.
fn stored(id: &str, title: &str, revision: u32, changed: u64, tab: &str) -> Entry {
    let mut entry = Entry::of(id.into(), &job(title)).unwrap();
    entry.revision = revision;
    entry.changed = changed;
    entry.created = 1;
    entry.tab = tab.into();
    entry
}

fn of(id: &str, revision: u32, changed: u64, tab: &str) -> Of {
    Of {
        id: id.into(),
        revision,
        changed,
        at: changed,
        tab: tab.into(),
    }
}

/// A page that opens with this small copy and this database.
fn opens(small: Option<(Of, &str)>, database: Vec<Entry>) -> State {
    let kept = small.as_ref().map(|(_, title)| text(title));
    let of = small.map(|(of, _)| of);
    let state = State::open(kept.as_deref(), "", None).with_kept("new".into(), of.as_ref());
    state.after(found(database))
}

fn titles(state: &State) -> Vec<&str> {
    state.jobs.standing().map(|it| &*it.title).collect()
}

#[test]
fn a_mark_ties_the_small_copy_to_its_name() {
    let of = of("tab-1", 3, 99, "tab");
    let text = text("A");
    let said = write_of(&of, &text);
    assert_eq!(read_of(&said, &text), Some(of));
    let others = [
        read_of(&said, &self::text("B")),
        read_of(&said.replacen('1', "2", 1), &text),
        read_of("", &text),
        read_of("1 a x 4 4 tab abcdefgh", &text),
        read_of(&format!("{said} more"), &text),
    ];
    assert_eq!(others, [None, None, None, None, None]);
}

#[test]
fn the_newer_of_two_copies_counts() {
    let small = text("small");
    let cases = [
        (
            of("x", 2, 5, "a"),
            stored("x", "small", 9, 9, "b"),
            Newer::Same,
        ),
        // One tab: what it wrote last.
        (
            of("x", 2, 6, "a"),
            stored("x", "s", 3, 5, "a"),
            Newer::Small,
        ),
        (
            of("x", 2, 5, "a"),
            stored("x", "s", 3, 6, "a"),
            Newer::Stored,
        ),
        // Nobody has written since the small copy was begun from this.
        (
            of("x", 3, 1, "a"),
            stored("x", "s", 3, 5, "b"),
            Newer::Small,
        ),
        // Somebody has, before and after.
        (of("x", 2, 6, "a"), stored("x", "s", 3, 5, "b"), Newer::Both),
        (
            of("x", 2, 4, "a"),
            stored("x", "s", 3, 5, "b"),
            Newer::Stored,
        ),
    ];
    for (of, stored, which) in cases {
        assert_eq!(newer(&of, &small, &stored), which, "{of:?} {stored:?}");
    }
}

#[test]
fn an_old_profile_with_one_job_is_taken_in() {
    let state = State::open(Some(&text("Old")), "", None).with_kept("new".into(), None);
    assert_eq!(state.saved, Saved::Pending, "not in the database yet");
    let state = state.after(found(Vec::new()));
    assert_eq!(titles(&state), ["Old"]);
    assert_eq!(state.jobs.waiting().len(), 1);
    assert_eq!(written(state, 4).saved, Saved::Yes);
}

#[test]
fn a_small_copy_without_a_name_that_is_in_the_list_is_that_job() {
    let state = opens(None, vec![stored("x", "Old", 2, 5, "a")]);
    assert_eq!(state.job.title, "Old", "the newest opens");
    let kept = text("Old");
    let state = State::open(Some(&kept), "", None)
        .with_kept("new".into(), None)
        .after(found(vec![stored("x", "Old", 2, 5, "a")]));
    assert_eq!(titles(&state), ["Old"]);
    assert!(state.jobs.waiting().is_empty());
}

#[test]
fn what_was_typed_last_is_there_wherever_it_was_kept() {
    let behind = opens(
        Some((of("x", 2, 4, "a"), "old")),
        vec![stored("x", "new", 3, 5, "a")],
    );
    assert_eq!(behind.job.title, "new");
    assert!(behind.jobs.waiting().is_empty());
    let ahead = opens(
        Some((of("x", 2, 6, "a"), "new")),
        vec![stored("x", "old", 3, 5, "a")],
    );
    assert_eq!(ahead.job.title, "new");
    assert_eq!(titles(&ahead), ["new"]);
    assert_eq!(ahead.jobs.waiting()[0].revision, 3);
    let both = opens(
        Some((of("x", 2, 6, "a"), "mine")),
        vec![stored("x", "theirs", 3, 5, "b")],
    );
    assert_eq!(titles(&both), ["mine (other tab)", "theirs"]);
    assert_eq!(both.notice, Some(Notice::OtherTab));
}

#[test]
fn the_job_that_was_open_last_opens_though_local_storage_lags_behind() {
    let database = || {
        vec![
            stored("x", "Before", 3, 5, "a"),
            stored("y", "Last", 2, 9, "a"),
        ]
    };
    let state = opens(Some((of("x", 3, 5, "a"), "Before")), database());
    assert_eq!(state.job.title, "Last");
    assert!(state.jobs.waiting().is_empty());
    // Opened later than the other was changed, without a change of its own.
    let mut opened = of("x", 3, 5, "a");
    opened.at = 10;
    let state = opens(Some((opened, "Before")), database());
    assert_eq!(state.job.title, "Before");
}

#[test]
fn what_is_typed_before_the_database_answers_is_not_lost() {
    let kept = text("small");
    let small = Some(of("x", 2, 4, "a"));
    let state = State::open(Some(&kept), "", None).with_kept("new".into(), small.as_ref());
    let typed = state.after(named("typed"));
    let database = vec![stored("x", "newer", 3, 5, "a")];
    let both = typed.clone().after(found(database));
    assert_eq!(titles(&both), ["typed (other tab)", "newer"]);
    let database = vec![stored("x", "small", 2, 4, "a")];
    let one = typed.after(found(database));
    assert_eq!(titles(&one), ["typed"]);
    assert_eq!(one.jobs.waiting()[0].revision, 2);
}

#[test]
fn what_is_begun_before_the_database_answers_is_beside_what_was_there() {
    let state = State::open(Some(&text("Old")), "", None).with_kept("new".into(), None);
    let begun = after(state, [Action::Reset, named("New"), Action::Reset]);
    let state = begun.after(found(vec![stored("x", "Stored", 3, 5, "a")]));
    assert_eq!(titles(&state), ["", "New", "Old", "Stored"]);
    assert_eq!(state.jobs.waiting().len(), 3);
    assert_eq!(state.job.title, "");
}

#[test]
fn a_cleared_database_is_told_and_the_last_job_is_there() {
    let kept = text("Last");
    let small = Some(of("x", 2, 4, "a"));
    let state = State::open(Some(&kept), "", None).with_kept("new".into(), small.as_ref());
    let state = state.after(jobs(JobsAction::Found(Rc::new(Found {
        entries: Vec::new(),
        noted: 5,
        aside: None,
    }))));
    assert_eq!(state.notice, Some(Notice::Cleared(5)));
    assert_eq!(titles(&state), ["Last"]);
    assert_eq!(state.jobs.waiting().len(), 1);
}

#[test]
fn cleared_local_storage_opens_the_newest_of_the_database() {
    let database = vec![
        stored("x", "Older", 2, 4, "a"),
        stored("y", "Newer", 2, 9, "a"),
    ];
    let state = opens(None, database);
    assert_eq!(state.job.title, "Newer");
    assert_eq!(titles(&state), ["Newer", "Older"]);
    assert_eq!(state.saved, Saved::Yes);
}

#[test]
fn a_job_that_was_put_aside_is_not_opened_unasked() {
    let state = State::open(None, "", None).with_kept("new".into(), None);
    let state = state.after(jobs(JobsAction::Found(Rc::new(Found {
        entries: vec![
            stored("x", "Fine", 2, 4, "a"),
            stored("y", "Stops the page", 2, 9, "a"),
        ],
        noted: 2,
        aside: Some(text("Stops the page")),
    }))));
    assert_eq!(state.job.title, "Fine");
    let opened = state.after(jobs(JobsAction::Open("y".into())));
    assert_eq!(opened.job.title, "Stops the page");
}

#[test]
fn a_job_of_a_newer_version_is_shown_and_left_alone() {
    let mut newer = stored("x", "Future", 2, 9, "a");
    newer.newer = true;
    let state = opens(None, vec![newer.clone()]);
    assert_eq!(titles(&state), ["Future"]);
    assert_eq!(*state.job, Job::default());
    let tried = after(
        state,
        [
            jobs(JobsAction::Open("x".into())),
            jobs(JobsAction::Duplicate("x".into())),
            jobs(JobsAction::Rename("x".into(), "Mine".to_owned())),
        ],
    );
    assert_eq!(*tried.jobs.list, [newer]);
}

#[test]
fn the_link_of_ones_own_job_in_the_address_is_no_visitors() {
    let [other, ..] = demo_jobs();
    let address = encode(&other).unwrap();
    let mut kept = Entry::of("y".into(), &other).unwrap();
    kept.revision = 1;
    let small = Some(of("x", 2, 4, "a"));
    let state =
        State::open(Some(&text("Mine")), &address, None).with_kept("new".into(), small.as_ref());
    assert_eq!(state.saved, Saved::Visiting);
    let state = state.after(found(vec![stored("x", "Mine", 2, 4, "a"), kept]));
    assert_eq!(state.own, None);
    assert_eq!(state.jobs.current.as_deref(), Some("y"));
    assert_eq!(state.job.title, other.title);
}

#[test]
fn a_link_without_a_job_of_ones_own_is_kept_as_a_new_one() {
    let [other, ..] = demo_jobs();
    let address = encode(&other).unwrap();
    let state = State::open(None, &address, None).with_kept("new".into(), None);
    let state = state.after(found(vec![stored("x", "Mine", 2, 4, "a")]));
    assert_eq!(titles(&state), [other.title.as_str(), "Mine"]);
    assert_eq!(*state.job, other);
    let again = opened("tab");
    assert_eq!(again.jobs.list.len(), 0);
}

#[test]
fn a_report_stays_one_when_the_job_under_it_goes() {
    let mut state = opened("tab");
    for title in ["One", "Two"] {
        state = after(state, [Action::Reset, named(title)]);
    }
    let state = state.after(Action::OpenLink(
        encode_handed_back(&handed_back(&job("Theirs"))).unwrap(),
    ));
    let mut state = state;
    for _ in 0..2 {
        // Each time another one of one's own is opened under it, the last time a plain new one.
        let open = state.jobs.current.clone().unwrap();
        let left = state.clone().after(jobs(JobsAction::Trash(open)));
        assert!(left.print.handed_back && left.own.is_some());
        assert_eq!((left.stage, &left.job), (Stage::HandBack, &state.job));
        assert_ne!(left.jobs.current, state.jobs.current);
        state = left;
    }
    assert!(!state.after(Action::BackToOwn).print.handed_back);
}

#[test]
fn ones_own_job_is_known_by_the_code_on_its_sheet() {
    let mut job = job("Mine");
    job.shop.rates.currency = "EUR".to_owned();
    let own = encode_to_keep(&job).unwrap();
    let printed = encode(&on_paper(&job)).unwrap();
    assert_ne!(own, printed);
    let state = State::open(Some(&own), "", None).with_kept("tab".into(), None);
    let state = after(state, [found(Vec::new()), Action::Reset, named("Other")]);
    let state = state.after(Action::OpenLink(printed));
    assert!(state.own.is_none());
    assert_eq!(*state.job, job);
}
