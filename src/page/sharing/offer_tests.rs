//! Offers that are undone, closed again or copied, and whose answers find their job.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{
    Answered, Event, Field, Job, Moment, OfferMark, Offered, OwnerSays, Record, Shows, What,
};
use skimwright::link;
use skimwright::offer::Fit;

use super::{AnswerTold, Handed, NoLink, ShareAction, ShareTo};
use crate::page::jobs::{JobsAction, Keeping};
use crate::page::state::{Action, Cover, Notice, State};

const AT: Moment = Moment::unix_seconds(1_790_000_000);
const LATER: Moment = Moment::unix_seconds(1_790_000_600);

fn share(state: State, actions: impl IntoIterator<Item = ShareAction>) -> State {
    actions
        .into_iter()
        .fold(state, |state, action| state.after(Action::Share(action)))
}

fn with_job(job: Job) -> State {
    State::open(None, "", None)
        .after(Action::Jobs(JobsAction::NoDatabase(Keeping::One)))
        .after(Action::TakeExample(Rc::new(job)))
}

fn with_example() -> State {
    let [job, ..] = demo_jobs();
    with_job(job)
}

fn handed(handed: Handed) -> [ShareAction; 3] {
    [
        ShareAction::Open(ShareTo::Owner),
        ShareAction::Given(AT),
        ShareAction::Handed(handed),
    ]
}

fn offered(state: State) -> State {
    share(state, handed(Handed::Shared))
}

fn typed(state: State, text: &str) -> State {
    state
        .after(Action::Type(Field::WantedLength, text.to_owned()))
        .after(Action::Leave(Field::WantedLength))
}

fn marks(job: &Job) -> Vec<OfferMark> {
    let events = job.record.standing();
    let mark = |what: &What| match what {
        What::Offered(offered) => Some(offered.mark),
        _ => None,
    };
    events.filter_map(|(_, event)| mark(&event.what)).collect()
}

fn answer(to: OfferMark, at: Moment) -> String {
    let answered = Answered {
        to,
        says: OwnerSays::Agree,
        words: String::new(),
        by: String::new(),
    };
    link::encode_answer(&answered, at).unwrap()
}

fn told(state: &State) -> AnswerTold {
    match state.notice {
        Some(Notice::Answer(told)) => told,
        ref other => panic!("{other:?}"),
    }
}

fn answers(job: &Job) -> usize {
    let is = |event: &&Event| matches!(event.what, What::Answered(_));
    job.record.events.iter().filter(is).count()
}

#[test]
fn undo_keeps_an_offer_that_is_with_its_owner() {
    let before = typed(with_example(), "49");
    let steps = before.past.len();
    assert!(0 < steps);
    let state = offered(before.clone());
    let all = marks(&state.job);
    assert_eq!(all.len(), 1);
    // It is no step of undo: the next one takes the length back.
    assert_eq!(state.past.len(), steps);
    let undone = state.after(Action::Undo);
    assert_ne!(undone.job.wanted, before.job.wanted);
    assert_eq!(marks(&undone.job), all);
    let to = all.first().copied().unwrap();
    let came = undone.clone().after(Action::OpenLink(answer(to, LATER)));
    assert_eq!(told(&came), AnswerTold::Taken(Fit::Changed));
    let redone = undone.after(Action::Redo);
    assert_eq!(redone.job.wanted, before.job.wanted);
    assert_eq!(marks(&redone.job), all);
    let came = redone.after(Action::OpenLink(answer(to, LATER)));
    assert_eq!(told(&came), AnswerTold::Taken(Fit::Current));

    // What can be done again keeps it, too.
    let undone = offered(before.after(Action::Undo));
    let all = marks(&undone.job);
    let redone = undone.after(Action::Redo);
    assert_eq!((marks(&redone.job), all.len()), (all, 1));
}

#[test]
fn a_share_sheet_that_was_closed_again_showed_nothing() {
    let given = [ShareAction::Open(ShareTo::Owner), ShareAction::Given(AT)];
    let state = share(with_example(), given);
    assert!(marks(&state.job).is_empty());
    // Ticked otherwise meanwhile, it is not what was given.
    let other = [
        ShareAction::Rates(true),
        ShareAction::Handed(Handed::Shared),
    ];
    assert!(marks(&share(state, other).job).is_empty());
    for way in [Handed::Shared, Handed::Copied, Handed::Failed] {
        let state = share(with_example(), handed(way));
        assert_eq!(marks(&state.job).len(), 1, "{way:?}");
    }
    let code = [ShareAction::Open(ShareTo::Owner), ShareAction::Qr(true, AT)];
    assert_eq!(marks(&share(with_example(), code).job).len(), 1);
}

#[test]
fn an_answer_goes_to_the_job_that_was_offered_and_not_to_its_copy() {
    let state = offered(with_example());
    let to = marks(&state.job).first().copied().unwrap();
    let original = state.jobs.current.clone().unwrap();
    let known: Vec<_> = state.jobs.standing().map(|it| Rc::clone(&it.id)).collect();
    let state = state.after(Action::Jobs(JobsAction::Duplicate(Rc::clone(&original))));
    let mut new = state.jobs.standing().map(|it| Rc::clone(&it.id));
    let copy = new.find(|id| !known.contains(id)).unwrap();
    drop(new);
    let state = state.after(Action::Jobs(JobsAction::Open(Rc::clone(&copy))));
    assert_eq!(state.jobs.current, Some(copy));
    assert!(marks(&state.job).is_empty());
    let state = state.after(Action::OpenLink(answer(to, LATER)));
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Current));
    assert_eq!(state.jobs.current, Some(original));
}

#[test]
fn of_two_jobs_with_the_same_offer_the_one_that_is_still_so_gets_the_answer() {
    let state = offered(with_example());
    let to = marks(&state.job).first().copied().unwrap();
    let original = state.jobs.current.clone();
    // As after "Keep as a job": the offers are in it, and it was changed since.
    let mut copy = Job::clone(&state.job);
    copy.title.push('2');
    let state = typed(state.after(Action::TakeExample(Rc::new(copy))), "47");
    let changed = state.jobs.current.clone();
    assert_ne!(changed, original);
    assert_eq!(marks(&state.job), [to]);
    let came = answer(to, LATER);
    let state = state
        .after(Action::Show(Some(Cover::Share)))
        .after(Action::OpenLink(came.clone()));
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Current));
    assert_eq!((&state.jobs.current, &state.cover), (&original, &None));
    assert_eq!(answers(&state.job), 1);
    // The same again goes to where it is, also when that was changed meanwhile.
    let state = typed(state, "46").after(Action::OpenLink(came));
    assert_eq!(told(&state), AnswerTold::Same);
    assert_eq!(state.jobs.current, original);

    // One that is not taken opens nothing.
    let before = Moment::unix_seconds(1_780_000_000);
    let state = state
        .after(Action::Jobs(JobsAction::Open(changed.clone().unwrap())))
        .after(Action::Show(Some(Cover::Share)));
    let state = state.after(Action::Jobs(JobsAction::Trash(changed.unwrap())));
    let other = demo_jobs().into_iter().nth(2).unwrap();
    let state = state.after(Action::TakeExample(Rc::new(other)));
    let open = state.jobs.current.clone();
    let state = state
        .after(Action::Show(Some(Cover::Share)))
        .after(Action::OpenLink(answer(to, before)));
    assert_eq!(told(&state), AnswerTold::Earlier);
    assert_eq!(
        (state.jobs.current, state.cover),
        (open, Some(Cover::Share))
    );
}

#[test]
fn what_was_ticked_for_one_owner_is_not_ticked_for_the_next() {
    let state = share(
        with_example(),
        [
            ShareAction::Open(ShareTo::Owner),
            ShareAction::Rates(true),
            ShareAction::Given(AT),
            ShareAction::Handed(Handed::Copied),
        ],
    );
    let first = state.jobs.current.clone().unwrap();
    let other = demo_jobs().into_iter().nth(1).unwrap();
    let state = state.after(Action::TakeExample(Rc::new(other)));
    let state = share(state, [ShareAction::Open(ShareTo::Owner)]);
    assert_eq!(state.sharing.shows, Shows::default());
    let state = state.after(Action::Jobs(JobsAction::Open(first)));
    let state = state.after(Action::Show(Some(Cover::Share)));
    assert!(state.sharing.shows.rates && !state.sharing.shows.machine);
}

#[test]
fn only_ones_own_job_with_room_in_its_record_is_offered() {
    let [_, visitor, ..] = demo_jobs();
    let link = link::encode(&visitor).unwrap();
    let back = link::encode_handed_back(&visitor).unwrap();
    for text in [link, back] {
        let state = with_example().after(Action::OpenLink(text));
        assert!(state.own.is_some());
        let state = share(state, [ShareAction::Open(ShareTo::Owner)]);
        assert!(state.share_to().all(|to| to != ShareTo::Owner));
        assert_eq!(state.sharing.to, ShareTo::Colleague);
        let state = share(state, [ShareAction::To(ShareTo::Owner)]);
        assert_eq!(state.given(), Err(NoLink::NotOnesOwn));
    }
    let [mut job, ..] = demo_jobs();
    let event = |what| Event {
        at: AT,
        struck: false,
        what,
    };
    let notes = (1..Record::MOST_EVENTS).map(|_| event(What::Note(String::new())));
    job.record.events = notes.collect();
    let last = share(with_job(job.clone()), handed(Handed::Copied));
    // The last one that found room is given again, and no other.
    assert_eq!(marks(&last.job).len(), 1);
    assert!(last.given().is_ok());
    let other = share(last, [ShareAction::Rates(true)]);
    assert_eq!(other.given(), Err(NoLink::RecordFull));
}

#[test]
fn an_offer_alone_is_nothing_to_report_and_only_its_own_link_shows_it() {
    let state = offered(with_example());
    assert!(state.share_to().all(|to| to != ShareTo::HandBack));
    let mark = marks(&state.job).first().copied().unwrap();
    assert!(state.offer_made(mark).is_some());
    // The link of another offer under this mark.
    let foreign = share(state.clone(), [ShareAction::Machine(true)]);
    let text = foreign.given().unwrap().text;
    let mut job = Job::clone(&state.job);
    for event in &mut job.record.events {
        if let What::Offered(Offered { link, .. }) = &mut event.what {
            *link = text.clone();
        }
    }
    assert!(with_job(job).offer_made(mark).is_none());
}
