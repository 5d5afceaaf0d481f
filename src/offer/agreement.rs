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
    /// The newest answer, and when it came; `None` where none did.
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
    let answered = last(&job.record, |what| match what {
        What::Answered(answered) => Some(answered),
        _ => None,
    });
    let unchanged = offered.is_some_and(|(_, offered)| is_still(job, plan, offered));
    Agreement {
        offered,
        answered,
        fit: answered.map(|(_, answered)| fit(job, answered.to, unchanged)),
        unchanged,
    }
}

/// What an answer that arrives would be to.
pub fn answer_fits(job: &Job, plan: &Plan, answered: &Answered) -> Fit {
    let unchanged = agreement(job, plan).unchanged;
    fit(job, answered.to, unchanged)
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
