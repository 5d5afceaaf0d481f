//! Offers, answers and jobs that are handed back.
#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use super::{
    LinkError, Linked, decode, encode, encode_answer, encode_handed_back, encode_offer, offer_mark,
    open,
};
use crate::demo::demo_jobs;
use crate::job::{
    Answered, Event, Job, LearnedPace, Moment, OfferMark, Offered, OwnerSays, Shows, StepEvent,
    StepState, What, WorkStep,
};
use crate::offer::{Fit, Offer, agreement, answer_fits, handed_back, on_paper};
use crate::plan::plan;
use crate::quantity::{Entered, Unit};

const NOON: Moment = Moment::unix_seconds(1_790_000_000);

fn example(index: usize) -> Job {
    demo_jobs()[index].clone()
}

fn priced(mut job: Job) -> Job {
    job.shop.rates.per_hour = Some(Entered::plain(60, 0, Unit::Currency));
    "EUR".clone_into(&mut job.shop.rates.currency);
    "Old lathe".clone_into(&mut job.shop.machine.name);
    job
}

fn offer(job: &Job, shows: Shows) -> Offer {
    Offer::of(job, &plan(job), shows)
}

fn add(job: &mut Job, what: What) {
    let struck = false;
    job.record.events.push(Event {
        at: NOON,
        struck,
        what,
    });
}

fn offered(job: &Job) -> What {
    let offer = offer(job, Shows::default());
    What::Offered(Offered {
        mark: offer_mark(&offer).unwrap(),
        shows: offer.shows,
        link: encode_offer(&offer).unwrap(),
    })
}

fn answer(to: OfferMark, says: OwnerSays) -> Answered {
    let (words, by) = ("Please leave the flats.".to_owned(), String::new());
    Answered {
        to,
        says,
        words,
        by,
    }
}

#[test]
fn an_offer_comes_back_as_it_was_and_an_ordinary_one_is_short() {
    for job in demo_jobs() {
        for rates in [false, true] {
            for machine in [false, true] {
                let offer = offer(&priced(job.clone()), Shows { rates, machine });
                assert!(
                    offer.time.is_some() && offer.price.is_some(),
                    "{}",
                    job.title
                );
                let text = encode_offer(&offer).unwrap();
                assert!(text.len() < 400, "{} takes {}", job.title, text.len());
                assert_eq!(open(&text), Ok(Linked::Offer(Box::new(offer))));
                assert_eq!(decode(&text), Err(LinkError::NotALink));
            }
        }
    }
}

#[test]
fn an_offer_holds_nothing_of_the_shop_unless_that_is_asked_for() {
    let job = priced(example(0));
    let bare = offer(&job, Shows::default());
    assert_eq!(bare.job.shop.machine, Job::default().shop.machine);
    assert_eq!(bare.job.shop.rates, Job::default().shop.rates);
    let open = offer(
        &job,
        Shows {
            rates: true,
            machine: true,
        },
    );
    assert_eq!(open.job.shop.rates, job.shop.rates);
    assert_eq!(open.job.shop.machine.name, "Old lathe");
}

#[test]
fn an_owner_sees_the_same_shape_as_the_shop() {
    for job in demo_jobs() {
        let shown = offer(&job, Shows::default()).job;
        let (ours, his) = (plan(&job), plan(&shown));
        assert_eq!(ours.cut_off, his.cut_off, "{}", job.title);
        assert_eq!(ours.kept, his.kept, "{}", job.title);
        assert_eq!(ours.centre, his.centre, "{}", job.title);
        assert_eq!(ours.shape, his.shape, "{}", job.title);
    }
}

#[test]
fn answers_come_back_and_are_never_another_when_changed() {
    let mark = OfferMark(0x0123_4567_89ab_cdef);
    for says in OwnerSays::ALL {
        let answered = answer(mark, says);
        let text = encode_answer(&answered, NOON).unwrap();
        assert!(text.len() < 70, "{}", text.len());
        assert_eq!(open(&text), Ok(Linked::Answer(answered, NOON)));
        for at in 0..text.len() {
            assert!(open(&text[..at]).is_err(), "cut to {at}");
            for letter in ["A", "b", "7", "_"] {
                let changed = [&text[..at], letter, &text[at + 1..]].concat();
                assert!(
                    changed == text || open(&changed).is_err(),
                    "{letter} at {at}"
                );
            }
        }
    }
    let bare = Answered {
        words: String::new(),
        ..answer(mark, OwnerSays::Agree)
    };
    assert_eq!(encode_answer(&bare, NOON).unwrap().len(), 28);
    let long = Answered {
        words: "x".repeat(401),
        ..bare
    };
    assert_eq!(encode_answer(&long, NOON), Err(LinkError::TooLarge));
}

#[test]
fn what_was_agreed_holds_until_the_job_changes() {
    let mut job = priced(example(0));
    assert_eq!(agreement(&job, &plan(&job)).offered, None);
    let first = offered(&job);
    let What::Offered(Offered { mark, .. }) = first else {
        return;
    };
    add(&mut job, first);
    let yes = answer(mark, OwnerSays::Agree);
    assert_eq!(answer_fits(&job, &plan(&job), &yes), Fit::Current);
    add(&mut job, What::Answered(yes.clone()));
    let of = |job: &Job| {
        let plan = plan(job);
        let agreement = agreement(job, &plan);
        (agreement.holds(), agreement.fit, agreement.unchanged)
    };
    assert_eq!(of(&job), (true, Some(Fit::Current), true));

    let mut other = job.clone();
    other.wanted.length = Entered::plain(40, 0, Unit::Millimetre);
    assert_eq!(of(&other), (false, Some(Fit::Changed), false));
    // Offered anew: the answer is to the older one.
    let second = offered(&other);
    add(&mut other, second);
    assert_eq!(of(&other), (false, Some(Fit::Older), true));
    // Changed back, the newest offer is no longer what it is.
    other.wanted.length = job.wanted.length.clone();
    assert_eq!(of(&other), (false, Some(Fit::Older), false));

    let stranger = answer(OfferMark(1), OwnerSays::Agree);
    assert_eq!(answer_fits(&job, &plan(&job), &stranger), Fit::Foreign);
    add(&mut job, What::Answered(answer(mark, OwnerSays::Decline)));
    assert_eq!(of(&job), (false, Some(Fit::Current), true));
}

#[test]
fn a_job_is_handed_back_with_its_record_and_without_the_shop() {
    let mut job = priced(example(1));
    let what = offered(&job);
    add(&mut job, what);
    add(&mut job, What::Note("Polished with 400 grit.".to_owned()));
    let back = handed_back(&job);
    assert_eq!(back.record.events.len(), 2);
    assert!(matches!(&back.record.events[0].what, What::Offered(it) if it.link.is_empty()));
    assert_eq!(back.shop.rates, Job::default().shop.rates);
    let text = encode_handed_back(&back).unwrap();
    assert_eq!(open(&text), Ok(Linked::HandedBack(Box::new(back))));
}

#[test]
fn what_was_struck_out_is_handed_back_without_its_words() {
    let secret = || "the customer is a nuisance".to_owned();
    let mut job = example(1);
    let skipped = StepState::Skipped(secret());
    let step = WorkStep::Polish;
    for what in [
        What::Note(secret()),
        What::Step(StepEvent {
            step,
            state: skipped,
        }),
        What::Answered(Answered {
            words: secret(),
            by: secret(),
            ..answer(OfferMark(1), OwnerSays::Ask)
        }),
    ] {
        add(&mut job, what.clone());
        job.record.events.last_mut().unwrap().struck = true;
        add(&mut job, what);
    }
    let back = handed_back(&job);
    assert_eq!(back.record.events.len(), 6);
    for (kept, had) in back.record.events.iter().zip(&job.record.events) {
        assert_eq!((kept.at, kept.struck), (had.at, had.struck));
        assert_eq!(format!("{kept:?}").contains("nuisance"), !kept.struck);
        assert_eq!(kept == had, !kept.struck);
    }
    let text = encode_handed_back(&back).unwrap();
    assert_eq!(open(&text), Ok(Linked::HandedBack(Box::new(back))));
}

#[test]
fn the_code_on_paper_holds_nothing_private() {
    let plain = example(1);
    assert_eq!(on_paper(&plain), plain, "nothing of it is private");
    let mut job = priced(plain);
    job.shop.edge.price = Some(Entered::plain(7, 0, Unit::Currency));
    job.shop.machine.learned.paces = vec![LearnedPace {
        step: WorkStep::Rough,
        factor: Entered::plain(150, 0, Unit::Percent),
        jobs: Entered::plain(2, 0, Unit::Piece),
    }];
    let what = offered(&job);
    add(&mut job, what);
    add(
        &mut job,
        What::Answered(answer(OfferMark(1), OwnerSays::Agree)),
    );
    add(&mut job, What::Note("Polished with 400 grit.".to_owned()));
    let held = decode(&encode(&on_paper(&job)).unwrap()).unwrap();
    assert_eq!(held.shop.rates, Job::default().shop.rates);
    assert_eq!(held.shop.edge.price, None);
    assert_eq!(
        held.shop.machine.learned,
        Job::default().shop.machine.learned
    );
    assert_eq!(held.record.events.len(), 1);
    // What the work needs is there.
    assert_eq!(held.shop.machine.name, "Old lathe");
    assert_eq!((&held.part, &held.wanted), (&job.part, &job.wanted));
    assert_eq!(held.setup, job.setup);
}

#[test]
fn a_record_with_offers_and_answers_comes_back() {
    let mut job = example(2);
    "K. M.".clone_into(&mut job.record.by);
    let what = offered(&job);
    add(&mut job, what);
    for says in OwnerSays::ALL {
        add(&mut job, What::Answered(answer(OfferMark(u64::MAX), says)));
    }
    assert_eq!(decode(&encode(&job).unwrap()), Ok(job));
}

/// The very texts, so that what is in people's letters stays readable.
#[test]
fn the_forms_are_frozen() {
    let job = priced(Job::default());
    let offer = offer(
        &job,
        Shows {
            rates: true,
            machine: false,
        },
    );
    assert_eq!(open(OFFER), Ok(Linked::Offer(Box::new(offer))));
    let mark = OfferMark(0x0123_4567_89ab_cdef);
    let answered = answer(mark, OwnerSays::AgreeWithChange);
    assert_eq!(open(ANSWER), Ok(Linked::Answer(answered, NOON)));
}

const OFFER: &str = "oDRAdECMQKQLMFgKDGwL7HwNFVVIAAQAoAB4AAAEAABQAUAAAAAAQAAEAMgEIAAEBNQ4OAA4AAgIOAAEADgIZAgIODg4A0A8AAgANAAkAGAB4EANFVVIAPA4ODtn1mRk";
const ANSWER: &str = "rAe_Nq4lnRSMBF1BsZWFzZSBsZWF2ZSB0aGUgZmxhdHMuAID3xNUGLNc0Pg";
