//! Jobs taken in from a file.
#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use super::act::{JobsAction, Told};
use std::rc::Rc;

use skimwright::job::Job;

use super::import::*;
use super::list_tests::{named, opened, written};
use crate::page::state::{Action, State};

fn take(state: State, id: &str, title: &str) -> (State, Fate) {
    let job = Job {
        title: title.to_owned(),
        ..Job::default()
    };
    let one = Incoming {
        id: Some(id.into()),
        job: Rc::new(job),
    };
    let action = JobsAction::TakeIn(Rc::new(vec![one]), Rc::default());
    let state = state.after(Action::Jobs(action));
    let Some(Told::TakenIn(fates)) = state.jobs.told.clone() else {
        panic!("nothing was told");
    };
    let fate = fates.first().unwrap().1.clone();
    (state, fate)
}

fn titles(state: &State) -> Vec<&str> {
    state.jobs.standing().map(|it| &*it.title).collect()
}

#[test]
fn a_file_overwrites_nothing() {
    let state = written(opened("tab").after(named("Mine")), 1);
    let (state, fate) = take(state, "other-1", "Theirs");
    assert_eq!(fate, Fate::Taken);
    assert_eq!(titles(&state), ["Theirs", "Mine"]);
    assert_eq!(state.job.title, "Mine", "the open one stays open");
    let (state, fate) = take(state, "tab-1", "Mine");
    assert_eq!(fate, Fate::Same);
    let (state, fate) = take(state, "tab-1", "Mine of yore");
    assert_eq!(fate, Fate::Beside);
    assert_eq!(
        titles(&state),
        ["Mine of yore (from a file)", "Theirs", "Mine"]
    );
    let (state, fate) = take(state, "tab-1", "Mine of yore");
    assert_eq!(fate, Fate::Same, "the same file twice");
    let trashed = state.after(Action::Jobs(JobsAction::Trash("other-1".into())));
    let (state, fate) = take(trashed, "other-1", "Theirs");
    assert_eq!(fate, Fate::Restored);
    assert!(titles(&state).contains(&"Theirs"));
}
