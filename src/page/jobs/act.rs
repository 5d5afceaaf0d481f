//! What is done with the jobs that are kept.

use std::rc::Rc;

use skimwright::job::{Field, Job};

use super::entry::{Entry, JobId};
use super::found::Found;
use super::import::{Fates, FileTrouble, Incoming};
use super::list::{Jobs, Keeping, Steps, Trouble};
use crate::page::edit::Edit;
use crate::page::state::{Notice, Saved, State};
use crate::page::view::{Cover, Spot};
use crate::page::words::Words;

/// What is done with the jobs that are kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum JobsAction {
    // By the person
    Search(String),
    /// Shows the ways of changing a job, or closes them.
    Pick(Option<JobId>),
    ShowAll,
    ShowTrash(bool),
    Open(JobId),
    Duplicate(JobId),
    Rename(JobId, String),
    Trash(JobId),
    Restore(JobId),
    /// The answer to the question is yes.
    EmptyTrash,
    /// To the job that was open before this one was begun.
    Back,
    /// These jobs came from a file; and these could not be read, and why.
    TakeIn(Rc<Vec<Incoming>>, Rc<Vec<(Rc<str>, String)>>),
    // By the browser
    /// A file with so many jobs was handed to the browser.
    FileSaved(usize),
    FileFailed(FileTrouble),
    /// This is what the database holds as the page opens.
    Found(Rc<Found>),
    /// There is no database that this page may use.
    NoDatabase(Keeping),
    Written(Rc<Vec<Written>>),
    /// Another tab had written this one; that is what it wrote. Nothing of it was overwritten.
    Conflict(Rc<Entry>),
    Failed(Trouble),
    TryAgain,
    /// Another tab wrote it.
    Seen(Rc<Entry>),
    /// Another tab deleted it.
    SeenGone(JobId),
    Elsewhere(bool),
    Lasting(bool),
}

/// A job of which the browser said that it is kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Written {
    pub(crate) id: JobId,
    /// How many changes made here it holds.
    pub(crate) edits: u32,
    pub(crate) revision: u32,
    pub(crate) created: u64,
    pub(crate) changed: u64,
    pub(crate) gone: bool,
}

/// What was done last with the jobs.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Told {
    Trashed(JobId),
    Restored,
    Duplicated,
    /// How many were deleted.
    Emptied(usize),
    /// What became of the jobs of a file.
    TakenIn(Fates),
    /// How many are in the file that was saved.
    Saved(usize),
    FileFailed(FileTrouble),
}

impl State {
    pub(in crate::page) fn do_with_jobs(&mut self, action: JobsAction) {
        match action {
            JobsAction::Search(text) => {
                self.jobs.search = text;
                self.jobs.shows_all = false;
            }
            JobsAction::Pick(id) => self.jobs.picked = id,
            JobsAction::ShowAll => self.jobs.shows_all = true,
            JobsAction::ShowTrash(shows) => self.jobs.shows_trash = shows,
            JobsAction::Open(id) => {
                if self.own.is_none() && self.jobs.current.as_ref() == Some(&id) {
                    self.cover = None;
                } else if self.open_job(&id) {
                    self.cover = None;
                    self.notice = None;
                }
            }
            JobsAction::Duplicate(id) => self.duplicate(&id),
            JobsAction::Rename(id, title) => self.rename(&id, title),
            JobsAction::Trash(id) => self.trash(&id),
            JobsAction::Restore(id) => {
                if let Some(entry) = self.jobs.entry_mut(&id) {
                    entry.trashed = false;
                    entry.touch();
                    self.jobs.call();
                    self.tell_in_jobs(Told::Restored);
                }
            }
            JobsAction::EmptyTrash => self.empty_trash(),
            JobsAction::Back => self.back(),
            JobsAction::TakeIn(incoming, unread) => self.take_in(&incoming, &unread),
            JobsAction::FileSaved(count) => self.tell_in_jobs(Told::Saved(count)),
            JobsAction::FileFailed(trouble) => self.tell_in_jobs(Told::FileFailed(trouble)),
            JobsAction::Found(found) => {
                self.take_found(&found);
                self.jobs_are_known();
            }
            JobsAction::NoDatabase(keeping) => {
                self.jobs.keeping = keeping;
                self.jobs_are_known();
            }
            JobsAction::Written(written) => self.take_written(&written),
            JobsAction::Conflict(stored) => self.keep_both(&stored),
            JobsAction::Failed(trouble) => self.jobs.trouble = Some(trouble),
            JobsAction::TryAgain => self.jobs.call(),
            JobsAction::Seen(entry) => self.see(&entry),
            JobsAction::SeenGone(id) => self.see_gone(&id),
            JobsAction::Elsewhere(is) => self.jobs.elsewhere = is,
            JobsAction::Lasting(lasts) => self.jobs.lasting = Some(lasts),
        }
    }

    /// One's own job: the one on the screen, unless that is a visitor's.
    pub(in crate::page) fn mine(&self) -> &Rc<Job> {
        self.own.as_ref().unwrap_or(&self.job)
    }

    /// Notes in the list what has become of the open job; to be called after every action.
    pub(in crate::page) fn note_job(&mut self) {
        let mine = Rc::clone(self.mine());
        let noted = self
            .jobs
            .at
            .as_ref()
            .is_some_and(|at| Rc::ptr_eq(at, &mine));
        if !noted {
            let known = self.jobs.current.clone();
            let filled = match known.and_then(|id| self.jobs.entry_mut(&id)) {
                Some(entry) => {
                    // Whoever goes on with it wants it.
                    entry.trashed = false;
                    entry.fill(&mine)
                }
                None => self.add_open(&mine),
            };
            if !filled {
                self.jobs.trouble = Some(Trouble::Refused);
            }
            self.jobs.at = Some(mine);
            self.jobs.call();
        }
        self.saved = self.saved_now();
    }

    /// Puts a job that has no entry yet into the list, as the open one; `false` where it is too large for a text.
    pub(super) fn add_open(&mut self, job: &Rc<Job>) -> bool {
        let id = self.jobs.new_id();
        let Some(mut entry) = Entry::of(Rc::clone(&id), job) else {
            return false;
        };
        entry.touch();
        self.jobs.put(entry);
        self.jobs.current = Some(id);
        self.jobs.at = Some(Rc::clone(job));
        self.jobs.elsewhere = false;
        self.jobs.call();
        true
    }

    fn saved_now(&self) -> Saved {
        let jobs = &self.jobs;
        match jobs.open_entry() {
            _ if self.own.is_some() => Saved::Visiting,
            None => Saved::Nothing,
            Some(_) if jobs.keeping == Keeping::Reading => Saved::Pending,
            Some(_) if jobs.keeping != Keeping::All => {
                if jobs.small_stands {
                    Saved::One
                } else {
                    Saved::Refused
                }
            }
            Some(entry) if !entry.waits() => Saved::Yes,
            Some(_) => match jobs.trouble {
                None => Saved::Pending,
                Some(Trouble::Full) => Saved::Full,
                Some(Trouble::Refused) => Saved::Again,
            },
        }
    }

    /// A new job beside all others; the one before can be gone back to.
    pub(in crate::page) fn begin(&mut self, job: Rc<Job>) {
        self.cover = None;
        let before = self.jobs.current.clone();
        if self.own.is_none() && *self.job == *job {
            return;
        }
        self.leave_job();
        self.own = None;
        self.add_open(&job);
        self.jobs.before = before;
        self.notice = Some(Notice::Begun);
        self.set_job(job);
    }

    /// Makes a visitor's job one of one's own, beside all others.
    pub(in crate::page) fn keep_visitor(&mut self) {
        if self.own.take().is_some() {
            self.print.handed_back = false;
            let before = self.jobs.current.clone();
            let job = Rc::clone(&self.job);
            self.add_open(&job);
            self.jobs.before = before;
            self.notice = Some(Notice::Begun);
            self.editing = None;
        }
    }

    /// Puts the undo of the open job away.
    fn leave_job(&mut self) {
        if self.own.is_none()
            && let Some(of) = self.jobs.current.clone()
        {
            let (past, future) = (
                core::mem::take(&mut self.past),
                core::mem::take(&mut self.future),
            );
            self.jobs.put_steps(Steps { of, past, future });
        }
        self.forget_edits();
        self.jobs.before = None;
        self.jobs.elsewhere = false;
    }

    /// Opens a job of the list; `false` where it cannot be read.
    pub(in crate::page) fn open_job(&mut self, id: &str) -> bool {
        let Some((id, job)) = self
            .jobs
            .entry(id)
            .and_then(|it| Some((Rc::clone(&it.id), Rc::new(it.job()?))))
        else {
            return false;
        };
        self.leave_job();
        self.own = None;
        if let Some(steps) = self.jobs.take_steps(&id) {
            (self.past, self.future) = (steps.past, steps.future);
        }
        self.jobs.current = Some(id);
        self.jobs.at = Some(Rc::clone(&job));
        // The small copy follows.
        self.jobs.call();
        self.set_job(job);
        true
    }

    pub(super) fn words(&self) -> Words {
        Words::new(self.units, &self.job).in_tongue(self.tongue)
    }

    fn duplicate(&mut self, id: &str) {
        let words = self.words();
        let Some(mut job) = self.jobs.entry(id).and_then(Entry::job) else {
            return;
        };
        job.title = shortened(&words.copy_of(&job.title));
        // Its owner was shown the other one, and answers to that.
        job.record
            .events
            .retain(|event| !event.what.is_with_owner());
        let new = self.jobs.new_id();
        if let Some(mut entry) = Entry::of(new, &job) {
            entry.touch();
            self.jobs.put(entry);
            self.jobs.call();
            self.jobs.picked = None;
            self.tell_in_jobs(Told::Duplicated);
        }
    }

    fn rename(&mut self, id: &str, title: String) {
        let is_open = self.jobs.current.as_deref() == Some(id);
        if is_open && self.own.is_none() {
            self.edit(&Edit::Text(Field::Title, title));
            return;
        }
        let Some(mut job) = self.jobs.entry(id).and_then(Entry::job) else {
            return;
        };
        job.title = shortened(&title);
        if let Some(entry) = self.jobs.entry_mut(id) {
            entry.fill(&job);
            self.jobs.call();
        }
        if is_open {
            let job = Rc::new(job);
            self.jobs.at = Some(Rc::clone(&job));
            self.own = Some(job);
        }
    }

    fn trash(&mut self, id: &JobId) {
        let Some(entry) = self.jobs.entry_mut(id) else {
            return;
        };
        entry.trashed = true;
        entry.touch();
        self.jobs.call();
        self.jobs.picked = None;
        self.tell_in_jobs(Told::Trashed(Rc::clone(id)));
        if self.jobs.current.as_ref() == Some(id) {
            self.open_another();
        }
    }

    /// Opens the newest job that can be read, or a plain new one; a visitor's job stays on the screen.
    pub(super) fn open_another(&mut self) {
        let visitor = self.own.is_some().then(|| Rc::clone(&self.job));
        let is_report = self.print.handed_back;
        let aside = self.jobs.aside.clone();
        let opens = |it: &&Entry| Some(&it.text) != aside.as_ref() && it.job().is_some();
        let next = self.jobs.standing().find(opens);
        let next = next.map(|it| Rc::clone(&it.id));
        let opened = next.is_some_and(|id| self.open_job(&id));
        if !opened {
            self.leave_job();
            let job = Rc::new(Job::default());
            self.jobs.current = None;
            self.jobs.at = Some(Rc::clone(&job));
            self.own = None;
            self.set_job(job);
        }
        if let Some(visitor) = visitor {
            self.own = Some(Rc::clone(&self.job));
            self.past.clear();
            self.future.clear();
            self.set_job(visitor);
            // A report stays one: there is nothing to change in it.
            self.print.handed_back = is_report;
        }
    }

    fn empty_trash(&mut self) {
        self.cover = Some(Cover::Jobs);
        let mut count = 0;
        let list = Rc::make_mut(&mut self.jobs.list);
        for entry in list.iter_mut().filter(|it| it.trashed && !it.newer) {
            entry.gone = true;
            entry.touch();
            count += 1;
        }
        self.jobs.call();
        self.tell_in_jobs(Told::Emptied(count));
    }

    fn back(&mut self) {
        let Some(before) = self.jobs.before.clone() else {
            return;
        };
        let left = self.jobs.current.clone();
        let untouched = self.past.is_empty() && self.future.is_empty() && self.own.is_none();
        if !self.open_job(&before) {
            return;
        }
        self.notice = None;
        // Nothing was entered in it: it was only looked at.
        if untouched && let Some(entry) = left.and_then(|id| self.jobs.entry_mut(&id)) {
            entry.gone = true;
            entry.touch();
        }
    }

    /// Tells what was done, and takes the focus there: what had it may be gone.
    pub(super) fn tell_in_jobs(&mut self, told: Told) {
        self.jobs.told = Some(told);
        self.panels.focus(Spot::JobsTold);
    }
}

impl Jobs {
    /// Whether the small copy of the open job stands.
    pub(in crate::page) const fn note_small(&mut self, stands: bool) {
        self.small_stands = stands;
    }

    /// The jobs in order, as the list is opened.
    pub(in crate::page) fn open_list(&mut self) {
        self.arrange();
        self.picked = None;
        self.told = None;
        self.search.clear();
        self.shows_all = false;
        self.shows_trash = false;
    }
}

/// A title that is not too long for a job.
pub(super) fn shortened(title: &str) -> String {
    title.chars().take(Job::MOST_TITLE_CHARACTERS).collect()
}
