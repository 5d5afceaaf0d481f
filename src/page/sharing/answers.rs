//! What becomes of an owner's answer that comes: whose it is, and whether it is taken.

use std::rc::Rc;

use skimwright::job::{Answered, Job, Moment, OfferMark, What};
use skimwright::link::{self, LinkError, Linked};
use skimwright::offer::{Fit, Incoming, incoming};
use skimwright::plan::{Plan, plan};

use super::state::AnswerTold;
use crate::page::edit::{Edit, RecordEdit};
use crate::page::jobs::{Entry, JobId, Keeping};
use crate::page::state::{Notice, Stage, State};

/// A job that made the offer which an answer is to.
struct Maker {
    /// Which of the kept ones; `None` for one's own job that is open.
    id: Option<JobId>,
    job: Rc<Job>,
    becomes: Incoming,
    /// When it was made; the end of time until that is known.
    created: u64,
}

impl State {
    pub(super) fn take_pasted(&mut self) {
        let told = match link::open(&self.sharing.pasted) {
            // Words begin with the letters of links, too.
            Err(LinkError::Damaged | LinkError::Newer { .. })
                if !is_link_like(&self.sharing.pasted) =>
            {
                AnswerTold::Bad(LinkError::NotALink)
            }
            Err(error) => AnswerTold::Bad(error),
            Ok(Linked::Answer(answered, at)) => self.take_answer(&answered, at),
            Ok(_) => AnswerTold::NotAnAnswer,
        };
        self.sharing.told = Some(told);
        if matches!(told, AnswerTold::Taken(_) | AnswerTold::Same) {
            self.sharing.pasted.clear();
            self.notice = Some(Notice::Answer(told));
        }
    }

    /// An answer was opened as a link. While the kept jobs are still being read it waits for them.
    pub(in crate::page) fn answer_came(&mut self, answered: Answered, at: Moment) {
        if self.jobs.keeping == Keeping::Reading {
            self.sharing.waiting = Some((answered, at));
            return;
        }
        let told = self.take_answer(&answered, at);
        self.notice = Some(Notice::Answer(told));
    }

    /// The kept jobs are known, as far as they ever will be.
    pub(in crate::page) fn jobs_are_known(&mut self) {
        if let Some((answered, at)) = self.sharing.waiting.take() {
            let told = self.take_answer(&answered, at);
            self.notice = Some(Notice::Answer(told));
        }
    }

    /// Puts an answer into the record of the job that it belongs to, and opens that one; a job whose answer is not taken
    /// stays where it is.
    fn take_answer(&mut self, answered: &Answered, at: Moment) -> AnswerTold {
        let Some(maker) = self.maker_of(answered, at) else {
            let made = |it: &Entry| it.job().is_some_and(|job| has_offered(&job, answered.to));
            return if self.jobs.trash().any(made) {
                AnswerTold::InTrash
            } else {
                AnswerTold::Foreign
            };
        };
        let edit = RecordEdit::Add(What::Answered(answered.clone()), at);
        let fit = match maker.becomes {
            Incoming::Foreign => return AnswerTold::Foreign,
            Incoming::Earlier => return AnswerTold::Earlier,
            Incoming::Same => None,
            Incoming::New(_) if edit.is_too_much(&maker.job.record) => return AnswerTold::Full,
            Incoming::New(fit) => Some(fit),
        };
        if !self.bring(maker.id.as_ref()) {
            return AnswerTold::Foreign;
        }
        match fit {
            None => AnswerTold::Same,
            Some(fit) => {
                self.edit(&Edit::Record(edit));
                AnswerTold::Taken(fit)
            }
        }
    }

    /// The job that an answer belongs to. Copies of a job made its offers, too: the one that has the answer comes first,
    /// then one that is still what its owner was shown, then the oldest.
    fn maker_of(&self, answered: &Answered, at: Moment) -> Option<Maker> {
        let open = self.jobs.current.as_ref();
        let created = |entry: &Entry| match entry.created {
            0 => u64::MAX,
            known => known,
        };
        let maker = |id, job: Rc<Job>, plan: &Plan, created| Maker {
            becomes: incoming(&job, plan, answered, at),
            id,
            job,
            created,
        };
        let mine = has_offered(self.mine(), answered.to).then(|| {
            let job = Rc::clone(self.mine());
            let created = self.jobs.open_entry().map_or(u64::MAX, created);
            if self.own.is_none() {
                maker(None, job, &self.plan, created)
            } else {
                let plan = plan(&job);
                maker(None, job, &plan, created)
            }
        });
        let kept = self.jobs.standing().filter(|it| Some(&it.id) != open);
        let kept = kept.filter_map(|it| {
            let job = it.job().filter(|job| has_offered(job, answered.to))?;
            let plan = plan(&job);
            Some(maker(
                Some(Rc::clone(&it.id)),
                Rc::new(job),
                &plan,
                created(it),
            ))
        });
        let rank = |it: &Maker| match it.becomes {
            Incoming::Same => 0,
            Incoming::New(Fit::Current) => 1,
            Incoming::New(_) | Incoming::Earlier | Incoming::Foreign => 2_u8,
        };
        let makers = mine.into_iter().chain(kept);
        makers.min_by_key(|it| (rank(it), it.created))
    }

    /// Brings a job on the screen: a kept one, or one's own that is open; `false` where it cannot be read.
    fn bring(&mut self, id: Option<&JobId>) -> bool {
        match id {
            Some(id) if !self.open_job(id) => return false,
            Some(_) => {}
            None => {
                if let Some(own) = self.own.take() {
                    self.forget_edits();
                    self.set_job(own);
                }
            }
        }
        // What is open over it was of another job, or of this one before the answer.
        self.cover = None;
        self.sharing.begin_anew();
        if self.stage != Stage::Cut {
            self.stage = Stage::Plan;
        }
        true
    }
}

fn has_offered(job: &Job, mark: OfferMark) -> bool {
    job.record
        .standing()
        .any(|(_, event)| matches!(&event.what, What::Offered(offered) if offered.mark == mark))
}

/// A piece as long as this was meant as a link; words are shorter.
pub(crate) const LINK_LIKE: usize = 24;

fn is_link_like(text: &str) -> bool {
    let foreign = |letter: char| !(letter.is_ascii_alphanumeric() || matches!(letter, '-' | '_'));
    text.split(foreign).any(|piece| LINK_LIKE <= piece.len())
}
