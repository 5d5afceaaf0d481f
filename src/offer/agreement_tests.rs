//! Answers that come in another order than they were given, and to other offers.

use super::*;
use crate::demo::demo_jobs;
use crate::job::{Event, Shows};
use crate::plan::plan;

fn add(job: &mut Job, at: u64, what: What) {
    job.record.events.push(Event {
        at: Moment::unix_seconds(at),
        struck: false,
        what,
    });
}

fn offer(job: &mut Job, at: u64, shows: Shows) -> OfferMark {
    let mark = offer_mark(&Offer::of(job, &plan(job), shows)).unwrap();
    let offered = Offered {
        mark,
        shows,
        link: String::new(),
    };
    add(job, at, What::Offered(offered));
    mark
}

fn answer(to: OfferMark, says: OwnerSays) -> Answered {
    Answered {
        to,
        says,
        words: String::new(),
        by: String::new(),
    }
}

fn becomes(job: &Job, answered: &Answered, at: u64) -> Incoming {
    incoming(job, &plan(job), answered, Moment::unix_seconds(at))
}

#[test]
fn earlier_is_asked_only_among_the_answers_to_one_offer() {
    let [mut job, ..] = demo_jobs();
    let first = offer(&mut job, 100, Shows::default());
    add(&mut job, 900, What::Answered(answer(first, OwnerSays::Ask)));
    let with_rates = Shows {
        rates: true,
        ..Shows::default()
    };
    let second = offer(&mut job, 950, with_rates);
    // The clock of the device that answers now is behind that of the one which asked.
    let agrees = answer(second, OwnerSays::Agree);
    assert_eq!(becomes(&job, &agrees, 500), Incoming::New(Fit::Current));
    let declines = answer(first, OwnerSays::Decline);
    assert_eq!(becomes(&job, &declines, 500), Incoming::Earlier);
    assert_eq!(becomes(&job, &declines, 901), Incoming::New(Fit::Older));
}

#[test]
fn the_answer_to_the_newest_offer_counts_whatever_comes_after_it() {
    let [mut job, ..] = demo_jobs();
    let first = offer(&mut job, 100, Shows::default());
    let with_rates = Shows {
        rates: true,
        ..Shows::default()
    };
    let second = offer(&mut job, 200, with_rates);
    let says = |job: &Job| {
        let agreement = agreement(job, &plan(job));
        let says = agreement.answered.map(|(_, answered)| answered.says);
        (says, agreement.fit)
    };
    assert_eq!(says(&job), (None, None));
    add(&mut job, 150, What::Answered(answer(first, OwnerSays::Ask)));
    assert_eq!(says(&job), (Some(OwnerSays::Ask), Some(Fit::Older)));
    add(
        &mut job,
        300,
        What::Answered(answer(second, OwnerSays::Agree)),
    );
    let late = answer(first, OwnerSays::Decline);
    add(&mut job, 310, What::Answered(late));
    assert_eq!(says(&job), (Some(OwnerSays::Agree), Some(Fit::Current)));
    assert!(agreement(&job, &plan(&job)).holds());
}
