//! What is kept as the page opens, brought together with the job that is on the screen by then.

use std::rc::Rc;

use skimwright::offer::on_paper;

use super::entry::{Entry, Newer, Of, newer};
use super::list::Keeping;
use crate::page::state::{Notice, State};

/// What the database holds as the page opens.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Found {
    pub(crate) entries: Vec<Entry>,
    /// How many there must be, as was noted apart from it.
    pub(crate) noted: usize,
    /// The text of a job that was put aside since the page stopped over it: it is not opened unasked.
    pub(crate) aside: Option<String>,
}

impl State {
    /// Begins to keep jobs: whose the small copy is, and the random name of this tab.
    pub(in crate::page) fn with_kept(mut self, tab: Rc<str>, small: Option<&Of>) -> Self {
        self.jobs.tab = tab;
        // The names given before had none of the tab in them.
        if let Some(id) = self.jobs.current.take() {
            let named = small.filter(|_| self.jobs.open_is_small).cloned();
            let new = named.as_ref().map(|of| Rc::clone(&of.id));
            let new = new.unwrap_or_else(|| self.jobs.new_id());
            if let Some(entry) = self.jobs.entry_mut(&id) {
                entry.id = Rc::clone(&new);
                if let Some(of) = &named {
                    entry.revision = of.revision;
                    entry.changed = of.changed;
                    entry.tab = Rc::clone(&of.tab);
                }
            }
            let text = self.jobs.entry(&new).map(|it| Rc::clone(&it.text));
            self.jobs.current = Some(new);
            self.jobs.small = named.zip(text);
        }
        self.noted()
    }

    /// The same, with its job noted in the list.
    pub(in crate::page) fn noted(mut self) -> Self {
        self.note_job();
        self
    }

    /// The job that the page opened with becomes an entry of the list.
    pub(in crate::page) fn settle(mut self, is_small: bool, is_new: bool) -> Self {
        let mine = Rc::clone(self.mine());
        if is_small || is_new {
            self.add_open(&mine);
            self.jobs.open_is_small = is_small;
            if is_small && let Some(id) = self.jobs.current.clone() {
                // It is kept already, as far as is known.
                if let Some(entry) = self.jobs.entry_mut(&id) {
                    entry.kept = entry.edits;
                }
            }
        }
        self.jobs.at = Some(mine);
        self.noted()
    }

    /// Takes in what the database holds.
    pub(super) fn take_found(&mut self, found: &Found) {
        self.jobs.keeping = Keeping::All;
        let ours = core::mem::take(&mut self.jobs.list);
        let read = found.entries.iter().any(|it| it.job().is_some());
        let lost = found.entries.is_empty() && 0 < found.noted;
        self.jobs.list = Rc::new(found.entries.clone());
        self.jobs.aside = found.aside.as_deref().map(Rc::from);
        self.jobs.arrange();
        if self.jobs.current.is_none() && self.own.is_none() && read {
            self.open_another();
        }
        for entry in ours.iter().rev() {
            self.join(entry.clone());
        }
        self.open_later_one(found);
        self.jobs.arrange();
        self.jobs.small = None;
        self.know_own_link();
        self.jobs.call();
        if lost {
            self.notice = Some(Notice::Cleared(found.noted));
        }
    }

    /// Browsers write local storage to the disk seconds later: after a crash, another job may have been open since.
    fn open_later_one(&mut self, found: &Found) {
        let Some((of, _)) = &self.jobs.small else {
            return;
        };
        let untouched = self.jobs.current.as_ref() == Some(&of.id) && self.past.is_empty();
        let later = found.entries.iter().filter(|it| of.at < it.changed);
        let later = later.filter(|it| it.stands() && it.job().is_some());
        let newest = later.max_by_key(|it| it.changed);
        if let Some(newest) = newest
            && untouched
            && newest.id != of.id
            && self.own.is_none()
            && self.jobs.aside.as_ref() != Some(&newest.text)
        {
            self.open_job(&newest.id);
        }
    }

    /// A job that was here before the database was read, together with what the database holds of it.
    fn join(&mut self, mut ours: Entry) {
        let edited = ours.waits();
        let is_open = self.jobs.current.as_ref() == Some(&ours.id);
        let small = self.jobs.small.clone();
        let small = small.filter(|(of, _)| of.id == ours.id);
        let Some(stored) = self.jobs.entry(&ours.id).cloned() else {
            let alike = self.jobs.standing().find(|it| it.text == ours.text);
            let alike = alike.map(|it| Rc::clone(&it.id));
            if small.is_none()
                && let Some(alike) = alike
            {
                // The same job, of which it was not known that it is.
                if is_open {
                    self.jobs.current = Some(alike);
                }
                return;
            }
            ours.revision = 0;
            if !edited {
                ours.touch();
            }
            self.jobs.put(ours);
            return;
        };
        let which = match &small {
            _ if stored.text == ours.text => Newer::Same,
            // What was typed since goes on from the small copy.
            Some((of, text)) => newer(of, text, &stored),
            None => Newer::Both,
        };
        match which {
            Newer::Same if edited => self.overwrite(&ours, stored.revision),
            Newer::Same if !stored.trashed || !is_open => {}
            Newer::Same => self.open_another(),
            Newer::Small => self.overwrite(&ours, stored.revision),
            Newer::Stored if !edited && !is_open => {}
            Newer::Stored if !edited && stored.trashed => self.open_another(),
            Newer::Stored if !edited => self.show_stored(&stored),
            Newer::Stored | Newer::Both => {
                if let Some(entry) = self.jobs.entry_mut(&ours.id) {
                    *entry = ours;
                }
                self.keep_both(&stored);
            }
        }
    }

    /// What is here takes the place of what the database holds: it is the same job, further on.
    fn overwrite(&mut self, ours: &Entry, revision: u32) {
        if let Some(entry) = self.jobs.entry_mut(&ours.id) {
            let created = entry.created;
            *entry = ours.clone();
            entry.created = created;
            entry.revision = revision;
            entry.touch();
        }
    }

    /// What the database holds is further on than what the page opened with.
    fn show_stored(&mut self, stored: &Entry) {
        let Some(job) = stored.job() else {
            // Not to be read by this version: what the page opened with goes on as a job of its own.
            let mine = Rc::clone(self.mine());
            self.add_open(&mine);
            return;
        };
        let job = Rc::new(job);
        self.jobs.at = Some(Rc::clone(&job));
        if self.own.is_some() {
            self.own = Some(job);
        } else {
            self.set_job(job);
        }
    }

    /// A link that holds a job of one's own opens that one.
    pub(in crate::page) fn know_own_link(&mut self) {
        // A report is read as what it is, also where the job is one's own.
        if self.own.is_none() || self.print.handed_back {
            return;
        }
        let Ok(text) = skimwright::link::encode_to_keep(&self.job) else {
            return;
        };
        let known = self.jobs.standing().find(|it| *it.text == *text);
        // The code on paper holds it without what is private.
        let printed = |it: &&Entry| it.job().is_some_and(|job| on_paper(&job) == *self.job);
        let known = known.or_else(|| self.jobs.standing().find(printed));
        if let Some(id) = known.map(|it| Rc::clone(&it.id)) {
            self.open_job(&id);
        }
    }
}
