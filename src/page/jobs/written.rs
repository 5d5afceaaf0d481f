//! What was written, here or by another tab, and how both are brought together.

use std::rc::Rc;

use super::act::{Written, shortened};
use super::entry::Entry;
use crate::page::state::{Notice, State};

impl State {
    pub(super) fn take_written(&mut self, written: &[Written]) {
        for one in written {
            let is_open = self.jobs.current.as_ref() == Some(&one.id);
            let Some(entry) = self.jobs.entry_mut(&one.id) else {
                continue;
            };
            entry.kept = one.edits;
            entry.revision = one.revision;
            entry.created = one.created;
            entry.changed = one.changed;
            entry.tab = Rc::default();
            if one.gone && !entry.waits() && !is_open {
                self.jobs.drop_entry(&one.id);
            }
        }
        let tab = Rc::clone(&self.jobs.tab);
        for one in written {
            if let Some(entry) = self.jobs.entry_mut(&one.id) {
                entry.tab = Rc::clone(&tab);
            }
        }
        self.jobs.trouble = None;
    }

    /// What another tab wrote stays as it is; what was changed here goes on as a copy.
    pub(super) fn keep_both(&mut self, stored: &Entry) {
        let words = self.words();
        let id = Rc::clone(&stored.id);
        let Some(ours) = self.jobs.entry(&id).cloned() else {
            return;
        };
        let is_open = self.jobs.current.as_ref() == Some(&id);
        if let Some(entry) = self.jobs.entry_mut(&id) {
            *entry = stored.clone();
        }
        if ours.text == stored.text {
            return;
        }
        // A job that cannot be read is not changed here.
        let Some(mut job) = ours.job() else { return };
        job.title = shortened(&words.of_other_tab(&job.title));
        let job = Rc::new(job);
        if is_open {
            let new = self.add_open(&job);
            if !new {
                return;
            }
            self.notice = Some(Notice::OtherTab);
            if self.own.is_some() {
                self.own = Some(job);
            } else {
                // The undo goes on in the copy.
                self.set_job(job);
            }
        } else {
            let new = self.jobs.new_id();
            if let Some(mut entry) = Entry::of(new, &job) {
                entry.touch();
                self.jobs.put(entry);
                self.jobs.call();
                self.notice = Some(Notice::OtherTab);
            }
        }
    }

    /// Another tab wrote a job: it is shown here, unless there is something of one's own.
    pub(super) fn see(&mut self, seen: &Entry) {
        let is_open = self.jobs.current.as_ref() == Some(&seen.id);
        let typing = is_open && self.own.is_none() && !self.drafts.is_empty();
        let Some(entry) = self.jobs.entry_mut(&seen.id) else {
            self.jobs.put(seen.clone());
            return;
        };
        if entry.waits() || seen.revision <= entry.revision {
            // Writing it will bring both together.
            return;
        }
        if typing {
            // What is half typed belongs to the job as it was; the next change finds out.
            return;
        }
        let same = entry.text == seen.text;
        *entry = seen.clone();
        if !is_open || same {
            return;
        }
        if let Some(job) = seen.job() {
            let job = Rc::new(job);
            self.jobs.at = Some(Rc::clone(&job));
            if self.own.is_some() {
                self.own = Some(job);
            } else {
                self.past.clear();
                self.future.clear();
                self.editing = None;
                self.panels.after_step(&self.job, &job);
                self.set_job(job);
            }
        }
    }

    pub(super) fn see_gone(&mut self, id: &str) {
        let is_open = self.jobs.current.as_deref() == Some(id);
        let Some(entry) = self.jobs.entry_mut(id) else {
            return;
        };
        if is_open || entry.waits() {
            // It is still on the screen here, and written anew when it is changed.
            entry.revision = 0;
        } else {
            self.jobs.drop_entry(id);
        }
    }
}
