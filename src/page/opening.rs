//! What a link opens on the page: a job, the report of one that is handed back, an owner's answer.

use std::rc::Rc;

use skimwright::job::{Answered, Job, Moment};
use skimwright::link::{self, LinkError, Linked};

use super::state::{Action, Notice, Stage, State};

/// What a link brings.
enum Brings {
    Job(Job),
    /// A job that is handed back: it is read, and nothing of it becomes one's own unless asked.
    Report(Job),
    Answer(Answered, Moment),
}

fn brings(text: &str) -> Result<Brings, LinkError> {
    match link::open(text)? {
        Linked::Job(job) => Ok(Brings::Job(*job)),
        Linked::HandedBack(job) => Ok(Brings::Report(*job)),
        Linked::Answer(answered, at) => Ok(Brings::Answer(answered, at)),
        // An offer has a page of its own.
        Linked::Offer(_) => Err(LinkError::NotALink),
    }
}

impl State {
    /// The page as it opens: the job kept in this browser, or the one of the link.
    ///
    /// A link opens on Plan: whoever gets one asks what will be done.
    ///
    /// `address` is what stands after `#`, `last_address` what this page wrote there itself.
    pub(crate) fn open(stored: Option<&str>, address: &str, last_address: Option<&str>) -> Self {
        let own = stored.map(link::decode_kept_job);
        let unread = matches!(own, Some(Err(_)));
        let kept = matches!(own, Some(Ok(_)));
        let mut state = Self::of(own.and_then(Result::ok).unwrap_or_default());
        if unread {
            state.notice = Some(Notice::BadStore);
        }
        let ours = last_address.is_some_and(|last| last == address);
        if address.is_empty() || (ours && kept) {
            return state.settle(kept, false);
        }
        match brings(address) {
            // No job that can be read stands here, so there is nothing to ask about.
            Ok(Brings::Job(job)) if !kept => {
                let notice = state.notice.take();
                let mut state = Self::of(job);
                state.notice = notice;
                // This page's own address opens where the person was.
                if !ours {
                    state.stage = Stage::Plan;
                }
                state.settle(false, true)
            }
            // What is kept could not be read either, and that is told.
            Err(_) if unread => state.settle(false, false),
            brought => state.settle(kept, false).take_link(brought).noted(),
        }
    }

    pub(super) fn open_link(self, text: &str) -> Self {
        self.take_link(brings(text))
    }

    fn take_link(mut self, brought: Result<Brings, LinkError>) -> Self {
        let (job, back) = match brought {
            Err(error) => {
                self.notice = Some(Notice::BadLink(error));
                return self;
            }
            Ok(Brings::Answer(answered, at)) => {
                self.answer_came(answered, at);
                return self;
            }
            Ok(Brings::Job(job)) => (job, false),
            Ok(Brings::Report(job)) => (job, true),
        };
        if job == *self.job && back == self.print.handed_back {
            return self;
        }
        // The way back, as by the browser's own button.
        if !back && self.own.as_deref() == Some(&job) {
            return self.after(Action::BackToOwn);
        }
        if self.own.is_none() {
            self.own = Some(Rc::clone(&self.job));
        }
        self.forget_edits();
        self.stage = if back { Stage::HandBack } else { Stage::Plan };
        self.set_job(Rc::new(job));
        self.print.handed_back = back;
        self
    }
}
