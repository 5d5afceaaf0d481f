//! Jobs that come from a file: nothing that is kept is ever overwritten by them.

use std::rc::Rc;

use skimwright::job::Job;

use super::act::Told;
use super::entry::{Entry, JobId};
use crate::page::state::State;

/// A job of a file.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Incoming {
    /// What it was known by where it was kept; `None` where the file says nothing of it.
    pub(crate) id: Option<JobId>,
    pub(crate) job: Rc<Job>,
}

/// What became of a job of a file.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Fate {
    Taken,
    /// One of its name is kept and holds something else: both stand there now.
    Beside,
    /// The same is kept already.
    Same,
    /// The same was in the trash, and is back.
    Restored,
    /// It could not be read, and why.
    Unread(String),
}

/// Why a file was not written or not taken in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum FileTrouble {
    /// The part of the program that writes and reads files could not be loaded.
    NotLoaded,
    TooLong,
    NotJson,
    /// It is a file of another program.
    NotOurs,
    /// It is a newer version's.
    Newer,
    NotRead,
}

/// What became of each job of a file, by its title.
pub(crate) type Fates = Rc<Vec<(Rc<str>, Fate)>>;

impl State {
    /// Takes in the jobs of a file, and tells of each what became of it; `unread` are those that could not be read.
    pub(super) fn take_in(&mut self, incoming: &[Incoming], unread: &[(Rc<str>, String)]) {
        let mut fates: Vec<(Rc<str>, Fate)> = Vec::new();
        for one in incoming {
            let title: Rc<str> = one.job.title.as_str().into();
            fates.push((title, self.take_in_one(one)));
        }
        let unread = unread.iter().cloned();
        fates.extend(unread.map(|(title, why)| (title, Fate::Unread(why))));
        self.jobs.call();
        self.tell_in_jobs(Told::TakenIn(Rc::new(fates)));
    }

    fn take_in_one(&mut self, one: &Incoming) -> Fate {
        let too_large = || Fate::Unread(String::new());
        let known = one.id.as_deref().and_then(|id| self.jobs.entry(id));
        let Some(known) = known else {
            let id = one.id.clone().filter(|id| !id.is_empty());
            let id = id.unwrap_or_else(|| self.jobs.new_id());
            return match self.add(id, &one.job) {
                Some(()) => Fate::Taken,
                None => too_large(),
            };
        };
        if known.job().as_ref() != Some(&*one.job) {
            let id = self.jobs.new_id();
            let mut job = Job::clone(&one.job);
            job.title = self.words().of_file(&job.title);
            // Opened twice, the file must not leave two copies.
            let alike = self
                .jobs
                .standing()
                .any(|it| it.job().as_ref() == Some(&job));
            if alike {
                return Fate::Same;
            }
            return match self.add(id, &job) {
                Some(()) => Fate::Beside,
                None => too_large(),
            };
        }
        if known.stands() {
            return Fate::Same;
        }
        let id = Rc::clone(&known.id);
        if let Some(entry) = self.jobs.entry_mut(&id) {
            entry.trashed = false;
            entry.gone = false;
            entry.touch();
        }
        Fate::Restored
    }

    /// Puts a job into the list that is not opened.
    fn add(&mut self, id: JobId, job: &Job) -> Option<()> {
        let mut entry = Entry::of(id, job)?;
        entry.touch();
        self.jobs.put(entry);
        Some(())
    }
}
