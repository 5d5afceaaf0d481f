//! How a job stands with its owner: what he was shown last, what he said to which version, and whether the job is still
//! what he said it to.

use super::shown::Offer;
use crate::job::{Answered, Job, Moment, OfferMark, Offered, OwnerSays, Record, What};
use crate::link::offer_mark;
use crate::plan::Plan;

/// How a job stands with its owner.
#[derive(Clone, Debug, PartialEq)]
pub struct Agreement<'a> {
    /// The newest offer, and when it was made; `None` where none was.
    pub offered: Option<(Moment, &'a Offered)>,
    /// The newest answer to the newest offer, else the newest to any, and when it was given by its owner's clock; `None`
    /// where none came.
    pub answered: Option<(Moment, &'a Answered)>,
    /// What the answer is to; `None` without one.
    pub fit: Option<Fit>,
    /// Whether the job is what was offered last.
    pub unchanged: bool,
}

/// What an answer is to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fit {
    /// The job as it is now.
    Current,
    /// The newest offer, but the job was changed since.
    Changed,
    /// An older offer: a newer one was made since.
    Older,
    /// No offer of this job.
    Foreign,
}

impl Agreement<'_> {
    /// Whether the owner agreed to the job as it is now.
    pub fn holds(&self) -> bool {
        self.fit == Some(Fit::Current)
            && self
                .answered
                .is_some_and(|(_, answered)| answered.says == OwnerSays::Agree)
    }
}

/// How a job stands with its owner. Pure and total.
pub fn agreement<'a>(job: &'a Job, plan: &Plan) -> Agreement<'a> {
    let offered = last(&job.record, |what| match what {
        What::Offered(offered) => Some(offered),
        _ => None,
    });
    let newest = offered.map(|(_, offered)| offered.mark);
    let to_newest = last(&job.record, |what| match what {
        What::Answered(answered) if Some(answered.to) == newest => Some(answered),
        _ => None,
    });
    let answered = to_newest.or_else(|| {
        last(&job.record, |what| match what {
            What::Answered(answered) => Some(answered),
            _ => None,
        })
    });
    let unchanged = offered.is_some_and(|(_, offered)| is_still(job, plan, offered));
    Agreement {
        offered,
        answered,
        fit: answered.map(|(_, answered)| fit(job, answered.to, unchanged)),
        unchanged,
    }
}

/// When an offer was made last; `None` where this job made none with that mark.
pub fn shown_at(record: &Record, mark: OfferMark) -> Option<Moment> {
    let mut events = record.standing().rev();
    let made = |what: &What| matches!(what, What::Offered(offered) if offered.mark == mark);
    events.find_map(|(_, event)| made(&event.what).then_some(event.at))
}

/// What an answer that arrives would be to.
pub fn answer_fits(job: &Job, plan: &Plan, answered: &Answered) -> Fit {
    let unchanged = agreement(job, plan).unchanged;
    fit(job, answered.to, unchanged)
}

/// What becomes of an answer that arrives.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Incoming {
    /// It is to no offer of this job.
    Foreign,
    /// It is in the record already.
    Same,
    /// A later one to the same offer is in the record already.
    Earlier,
    /// It is new, and to this.
    New(Fit),
}

/// What becomes of an answer that arrives, given at a moment by its owner's clock.
pub fn incoming(job: &Job, plan: &Plan, answered: &Answered, at: Moment) -> Incoming {
    let fit = answer_fits(job, plan, answered);
    if fit == Fit::Foreign {
        return Incoming::Foreign;
    }
    let mut answers = job
        .record
        .standing()
        .filter_map(|(_, event)| match &event.what {
            // Another offer may have been answered on another device, whose clock is its own.
            What::Answered(known) if known.to == answered.to => Some((event.at, known)),
            _ => None,
        });
    let mut later = false;
    let same = answers.any(|(when, known)| {
        later |= at < when;
        when == at && known == answered
    });
    if same {
        Incoming::Same
    } else if later {
        Incoming::Earlier
    } else {
        Incoming::New(fit)
    }
}

fn fit(job: &Job, to: OfferMark, unchanged: bool) -> Fit {
    let marks = job
        .record
        .standing()
        .rev()
        .filter_map(|(_, event)| match &event.what {
            What::Offered(offered) => Some(offered.mark),
            _ => None,
        });
    match marks.enumerate().find(|(_, mark)| *mark == to) {
        None => Fit::Foreign,
        Some((0, _)) if unchanged => Fit::Current,
        Some((0, _)) => Fit::Changed,
        Some(_) => Fit::Older,
    }
}

/// Whether a job would make the same offer again.
fn is_still(job: &Job, plan: &Plan, offered: &Offered) -> bool {
    offer_mark(&Offer::of(job, plan, offered.shows)) == Some(offered.mark)
}

fn last<'a, T>(
    record: &'a Record,
    read: impl Fn(&'a What) -> Option<&'a T>,
) -> Option<(Moment, &'a T)> {
    let mut events = record.standing().rev();
    events.find_map(|(_, event)| Some((event.at, read(&event.what)?)))
}

#[cfg(test)]
#[path = "agreement_tests.rs"]
mod tests;
