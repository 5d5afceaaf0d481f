//! Links that are given away, and answers that come.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::{
    Answered, Event, Field, Job, Moment, OfferMark, OwnerSays, RateField, Shows, What,
};
use skimwright::link::{self, LinkError, Linked};
use skimwright::offer::{Fit, agreement, shown_at};

use super::{AnswerTold, Handed, NoLink, ShareAction, ShareTo};
use crate::page::edit::{Edit, RecordEdit};
use crate::page::jobs::{Found, JobsAction, Keeping};
use crate::page::state::{Action, Cover, Notice, Stage, State};
use crate::page::words::{AnswerOnPaper, Words};

const AT: Moment = Moment::unix_seconds(1_790_000_000);
const LATER: Moment = Moment::unix_seconds(1_790_000_600);

fn share(state: State, actions: impl IntoIterator<Item = ShareAction>) -> State {
    actions
        .into_iter()
        .fold(state, |state, action| state.after(Action::Share(action)))
}

/// An example as one's own job, with the list of jobs known.
fn with_example(index: usize) -> State {
    let job = demo_jobs().into_iter().nth(index).unwrap();
    State::open(None, "", None)
        .after(Action::Jobs(JobsAction::NoDatabase(Keeping::One)))
        .after(Action::TakeExample(Rc::new(job)))
}

fn offered(state: State) -> State {
    share(
        state,
        [
            ShareAction::To(ShareTo::Owner),
            ShareAction::Given(AT),
            ShareAction::Handed(Handed::Shared),
        ],
    )
}

fn offers(job: &Job) -> Vec<(OfferMark, bool)> {
    let events = job.record.events.iter();
    events
        .filter_map(|event| match &event.what {
            What::Offered(offered) => Some((offered.mark, offered.link.is_empty())),
            _ => None,
        })
        .collect()
}

fn answer_to(to: OfferMark, says: OwnerSays, at: Moment) -> String {
    let answered = Answered {
        to,
        says,
        words: "Go on".to_owned(),
        by: "Ada".to_owned(),
    };
    link::encode_answer(&answered, at).unwrap()
}

fn answer(state: &State, says: OwnerSays, at: Moment) -> String {
    answer_to(offers(&state.job).last().unwrap().0, says, at)
}

fn told(state: &State) -> AnswerTold {
    match state.notice {
        Some(Notice::Answer(told)) => told,
        ref other => panic!("{other:?}"),
    }
}

fn answers(state: &State) -> usize {
    let is = |event: &&Event| matches!(event.what, What::Answered(_));
    state.job.record.events.iter().filter(is).count()
}

#[test]
fn giving_it_to_a_colleague_records_nothing() {
    let given = [ShareAction::Given(AT), ShareAction::Handed(Handed::Copied)];
    let state = share(with_example(0), given);
    assert!(state.job.record.events.is_empty());
    let given = state.given().unwrap();
    assert_eq!(link::decode(&given.text).unwrap(), *state.job);
}

#[test]
fn an_offer_is_recorded_once_and_shows_what_is_ticked() {
    let state = offered(with_example(0));
    let again = share(
        state.clone(),
        [
            ShareAction::Given(LATER),
            ShareAction::Handed(Handed::Copied),
            ShareAction::Qr(true, LATER),
        ],
    );
    assert_eq!(offers(&again.job), offers(&state.job));
    assert_eq!(offers(&state.job).len(), 1);

    let given = state.given().unwrap();
    let Linked::Offer(offer) = link::open(&given.text).unwrap() else {
        panic!("no offer");
    };
    assert_eq!(offer.job.shop.rates, Job::default().shop.rates);
    assert_eq!(state.offer_made(offers(&state.job)[0].0), Some(*offer));

    let with_rates = share(
        state,
        [
            ShareAction::Rates(true),
            ShareAction::Given(LATER),
            ShareAction::Handed(Handed::Failed),
        ],
    );
    let all = offers(&with_rates.job);
    assert_eq!(all.len(), 2);
    // Nobody answered the first: its link is let go.
    assert_eq!([all[0].1, all[1].1], [true, false]);
}

#[test]
fn an_answered_offer_keeps_its_link() {
    let state = offered(with_example(0));
    let came = answer(&state, OwnerSays::Agree, LATER);
    let state = state.after(Action::OpenLink(came));
    let state = share(
        state.after(Action::Type(Field::WantedLength, "49".to_owned())),
        [
            ShareAction::Given(LATER),
            ShareAction::Handed(Handed::Shared),
        ],
    );
    let all = offers(&state.job);
    assert_eq!(all.len(), 2);
    assert_eq!([all[0].1, all[1].1], [false, false]);
    let shown = state.offer_made(all[0].0).unwrap();
    assert_ne!(shown.job.wanted, state.job.wanted);
}

#[test]
fn an_answer_is_taken_once_and_tells_what_it_is_to() {
    let state = offered(with_example(1));
    let came = answer(&state, OwnerSays::Agree, LATER);
    let state = state.after(Action::OpenLink(came.clone()));
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Current));
    assert!(agreement(&state.job, &state.plan).holds());
    assert_eq!(state.stage, Stage::Plan);

    let again = state.clone().after(Action::OpenLink(came.clone()));
    assert_eq!(told(&again), AnswerTold::Same);
    assert_eq!(answers(&again), 1);

    let earlier = answer(&state, OwnerSays::Decline, AT);
    let earlier = state.clone().after(Action::OpenLink(earlier));
    assert_eq!(told(&earlier), AnswerTold::Earlier);
    assert_eq!(answers(&earlier), 1);

    // Undo takes it back, and it can come again.
    let undone = state.clone().after(Action::Undo);
    assert_eq!(answers(&undone), 0);
    assert_eq!(answers(&undone.after(Action::OpenLink(came))), 1);

    let changed = state.after(Action::Type(Field::WantedLength, "1 7/8".to_owned()));
    let agreement = agreement(&changed.job, &changed.plan);
    assert_eq!(agreement.fit, Some(Fit::Changed));
    assert!(!agreement.holds());
}

#[test]
fn an_answer_to_an_older_offer_says_so() {
    let state = offered(with_example(0));
    let came = answer(&state, OwnerSays::Agree, LATER);
    let state = share(
        state.after(Action::Type(Field::WantedLength, "49".to_owned())),
        [
            ShareAction::Given(LATER),
            ShareAction::Handed(Handed::Shared),
        ],
    );
    let state = state.after(Action::OpenLink(came));
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Older));
}

#[test]
fn an_answer_opens_the_job_that_it_belongs_to() {
    let state = offered(with_example(0));
    let title = state.job.title.clone();
    let came = answer(&state, OwnerSays::Ask, LATER);
    let other = demo_jobs().into_iter().nth(2).unwrap();
    let state = state.after(Action::TakeExample(Rc::new(other)));
    assert_ne!(state.job.title, title);
    let state = state.after(Action::OpenLink(came));
    assert_eq!(state.job.title, title);
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Current));
}

#[test]
fn an_answer_to_a_job_in_the_trash_says_so() {
    let state = offered(with_example(0));
    let came = answer(&state, OwnerSays::Agree, LATER);
    let id = state.jobs.current.clone().unwrap();
    let other = demo_jobs().into_iter().nth(2).unwrap();
    let state = state
        .after(Action::TakeExample(Rc::new(other)))
        .after(Action::Jobs(JobsAction::Trash(id)))
        .after(Action::OpenLink(came));
    assert_eq!(told(&state), AnswerTold::InTrash);
    assert_eq!(answers(&state), 0);
}

#[test]
fn an_answer_waits_until_the_kept_jobs_are_read() {
    let made = offered(with_example(0));
    let kept = made.jobs.open_entry().unwrap().clone();
    let came = answer(&made, OwnerSays::Agree, LATER);
    let state = State::open(None, &came, None).with_kept("tab".into(), None);
    assert_eq!(state.notice, None);
    let found = Found {
        entries: vec![kept],
        noted: 1,
        aside: None,
    };
    let found = Rc::new(found);
    let state = state.after(Action::Jobs(JobsAction::Found(found)));
    assert_eq!(told(&state), AnswerTold::Taken(Fit::Current));
    assert_eq!(answers(&state), 1);

    // With nothing kept it is nobody's, and the page goes on.
    let state = State::open(None, &came, None).with_kept("tab".into(), None);
    let state = state.after(Action::Jobs(JobsAction::NoDatabase(Keeping::One)));
    assert_eq!(told(&state), AnswerTold::Foreign);
    assert_eq!(*state.job, Job::default());
}

#[test]
fn what_is_pasted_is_cleaned_or_told_to_be_wrong() {
    let state = offered(with_example(0));
    let state = state.after(Action::Show(Some(Cover::Share)));
    let came = answer(&state, OwnerSays::Agree, LATER);
    let paste = |text: &str| {
        let actions = [ShareAction::Paste(text.to_owned()), ShareAction::TakePasted];
        share(state.clone(), actions)
    };
    let (front, back) = came.split_at(20);
    for around in [
        came.clone(),
        format!("> Hello,\r\n> here: https://example.org/#{front}=\r\n> {back}\r\n> bye"),
        format!("<https://example.org/%23{came}>"),
        format!("\u{200b}#{front} {back}\u{feff}"),
    ] {
        let state = paste(&around);
        assert_eq!(told(&state), AnswerTold::Taken(Fit::Current), "{around}");
        assert_eq!(state.cover, None);
        assert!(state.sharing.pasted.is_empty());
    }
    let cut = came.get(..came.len() - 5).unwrap();
    let foreign = answer(&offered(with_example(2)), OwnerSays::Agree, LATER);
    let another = link::encode(&Job::default()).unwrap();
    let million = "x ".repeat(500_000);
    for (text, wanted) in [
        ("", AnswerTold::Bad(LinkError::Empty)),
        ("hello there", AnswerTold::Bad(LinkError::NotALink)),
        ("done and dusted", AnswerTold::Bad(LinkError::NotALink)),
        (cut, AnswerTold::Bad(LinkError::Damaged)),
        (&foreign, AnswerTold::Foreign),
        (&another, AnswerTold::NotAnAnswer),
        (&million, AnswerTold::Bad(LinkError::TooLong)),
    ] {
        let state = paste(text);
        assert_eq!(state.sharing.told, Some(wanted));
        assert_eq!(state.cover, Some(Cover::Share));
        assert_eq!(answers(&state), 0);
    }
}

#[test]
fn a_visitors_job_is_not_offered_and_an_answer_leads_back_to_ones_own() {
    let state = offered(with_example(0));
    let title = state.job.title.clone();
    let came = answer(&state, OwnerSays::Agree, LATER);
    let visitor = link::encode(&demo_jobs()[2]).unwrap();
    let state = state.after(Action::OpenLink(visitor));
    assert!(state.own.is_some());
    let state = share(
        state,
        [
            ShareAction::Given(LATER),
            ShareAction::Handed(Handed::Shared),
        ],
    );
    assert!(offers(&state.job).is_empty());
    let state = state.after(Action::OpenLink(came));
    assert_eq!(state.own, None);
    assert_eq!(state.job.title, title);
    assert_eq!(answers(&state), 1);
}

#[test]
fn the_report_is_given_with_nothing_of_the_shops_own_but_what_was_measured_with() {
    let state = with_example(0);
    let rate = Field::Rate(RateField::PerHour);
    let state = state.after(Action::Type(rate, "60".to_owned()));
    let to = |state: &State| state.share_to().collect::<Vec<_>>();
    assert_eq!(to(&state), [ShareTo::Colleague, ShareTo::Owner]);
    let noted = What::Note("a burr at the hole".to_owned());
    let state = state.after(Action::Edit(Edit::Record(RecordEdit::Add(noted, AT))));
    assert!(to(&state).contains(&ShareTo::HandBack));

    let before = state.job.record.clone();
    let state = share(
        state,
        [
            ShareAction::Rates(true),
            ShareAction::Open(ShareTo::HandBack),
            ShareAction::Given(LATER),
        ],
    );
    assert_eq!(state.cover, Some(Cover::Share));
    // Handing a part back is no offer.
    assert_eq!(state.job.record, before);
    let Ok(Linked::HandedBack(back)) = link::open(&state.given().unwrap().text) else {
        panic!("no report");
    };
    let plain = Job::default();
    assert_eq!(back.record, before);
    assert_eq!(back.shop.instruments, state.job.shop.instruments);
    assert_ne!(state.job.shop.rates, plain.shop.rates);
    assert_eq!(back.shop.rates, plain.shop.rates);
    assert_eq!(back.shop.machine, plain.shop.machine);
}

fn plain_day(at: Moment) -> crate::page::words::Moment {
    // Of the figures only the hour is told apart: the two moments are ten minutes apart.
    let minutes = at.to_unix_seconds() / 60;
    crate::page::words::Moment {
        year: 2026,
        month: 3,
        day: 2,
        hour: u32::try_from(minutes / 60 % 24).unwrap(),
        minute: u32::try_from(minutes % 60).unwrap(),
        is_today: true,
    }
}

fn on_paper(state: &State, most: usize, whole: bool) -> Option<String> {
    let agreement = agreement(&state.job, &state.plan);
    let (_, answered) = agreement.answered?;
    let answer = AnswerOnPaper {
        shown: shown_at(&state.job.record, answered.to),
        agreement,
        whole,
    };
    Words::new(state.units, &state.job).answer_in_a_line(&answer, most, plain_day)
}

#[test]
fn an_answer_stands_on_paper_in_one_line() {
    let state = offered(with_example(0));
    assert_eq!(on_paper(&state, 400, true), None);
    let came = answer(&state, OwnerSays::AgreeWithChange, LATER);
    let state = state.after(Action::OpenLink(came));
    let line = on_paper(&state, 400, true).unwrap();
    assert!(
        line.starts_with("Agreed with a change by \u{2068}Ada\u{2069}, 2 "),
        "{line}"
    );
    let shown = format!("{:02}:{:02}", plain_day(AT).hour, plain_day(AT).minute);
    assert!(line.contains("to what was shown on"), "{line}");
    assert!(line.contains(&shown), "{line}");
    assert!(
        line.ends_with("; change asked: \u{2068}Go on\u{2069}."),
        "{line}"
    );
    // Shortened where there is little room.
    let short = on_paper(&state, 2, true).unwrap();
    assert!(short.ends_with("\u{2068}Go…\u{2069}."), "{short}");
    // What changed since is said where the whole job is there to tell.
    let changed = state.after(Action::Type(Field::WantedLength, "47".to_owned()));
    let line = on_paper(&changed, 400, true).unwrap();
    assert!(line.ends_with(" The job was changed since."), "{line}");
    let back = on_paper(&changed, 400, false).unwrap();
    assert!(back.ends_with("cannot be told from this report."), "{back}");
}

#[test]
fn a_record_that_is_too_long_stays_out_of_a_colleagues_link_and_has_no_report_link() {
    let mut job = demo_jobs().into_iter().next().unwrap();
    job.record.events = (0..200)
        .map(|_| Event {
            at: AT,
            struck: false,
            what: What::Note("x".repeat(400)),
        })
        .collect();
    assert_eq!(link::encode(&job), Err(LinkError::TooLong));
    let state = State::open(Some(&link::encode_to_keep(&job).unwrap()), "", None);
    assert_eq!(state.job.record.events.len(), 200);
    let given = state.given().unwrap();
    assert!(given.without_record);
    let Ok(Linked::Job(bare)) = link::open(&given.text) else {
        panic!("no job");
    };
    assert!(bare.record.events.is_empty());
    assert_eq!(bare.part, job.part);
    let words = Words::new(state.units, &state.job);
    let shows = Shows::default();
    let inside = |record| words.in_link(&state.job, ShareTo::Colleague, shows, record);
    assert_eq!(inside(true).len(), inside(false).len() + 1);
    let outside = words.not_in_link(ShareTo::Colleague, shows, false);
    assert!(
        outside.iter().any(|it| it.contains("record")),
        "{outside:?}"
    );
    // An offer has no record in it, and goes as ever.
    let state = share(state, [ShareAction::To(ShareTo::Owner)]);
    assert!(!state.given().unwrap().without_record);
    let state = share(state, [ShareAction::To(ShareTo::HandBack)]);
    assert_eq!(state.given(), Err(NoLink::TooLong));
}

#[test]
fn another_job_is_not_handed_back_because_the_last_one_was() {
    let state = share(with_example(0), [ShareAction::Open(ShareTo::HandBack)]);
    assert_eq!(state.sharing.to, ShareTo::HandBack);
    let other = Rc::new(demo_jobs().into_iter().nth(1).unwrap());
    let state = state.after(Action::TakeExample(other));
    let state = state.after(Action::Show(Some(Cover::Share)));
    assert_eq!(state.sharing.to, ShareTo::Colleague);
}

#[test]
fn an_answer_that_brought_nothing_is_told_until_the_person_goes_on() {
    let state = offered(with_example(0));
    let foreign = answer_to(
        offers(&offered(with_example(1)).job)[0].0,
        OwnerSays::Agree,
        LATER,
    );
    let state = state.after(Action::OpenLink(foreign));
    assert_eq!(told(&state), AnswerTold::Foreign);
    assert!(state.notice.as_ref().is_some_and(Notice::is_of_link));
    let on = state.after(Action::Type(Field::WantedLength, "47".to_owned()));
    assert_eq!(on.notice, None);
}
