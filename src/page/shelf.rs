//! The lathes, tools and instruments that are kept in the browser for other jobs.

use std::rc::Rc;

use skimwright::job::{Instrument, Job, Learned, WorkStep};
use skimwright::link::{Kept, KeptTool, decode_kept};
use skimwright::work::{learned_after, steps};

use super::edit::{Edit, ShopEdit};
use super::state::State;
use super::view::{Cover, Notice, Panel, Spot};

/// What is kept of a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shelf {
    Lathes,
    Tools,
    /// Instruments; of the job, the one of this place in its list.
    Instruments(u8),
}

/// Something that jobs taught of the lathe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lesson {
    /// What an infeed takes off.
    Takes,
    /// How long a step takes against the plan.
    Pace(WorkStep),
}

/// What is asked before something that is kept goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Question {
    /// The one of this name gets the figures of the job.
    Replace(Shelf),
    Remove(Shelf, u8),
    /// What was learned of the job's lathe is forgotten.
    Forget(Lesson),
}

/// What is done with what is kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ShelfAction {
    /// Keeps what the job has; another of its name only after asking.
    Keep(Shelf),
    /// The answer to a question is yes.
    Yes(Question),
    /// Keeps what this job taught with its lathe, and with the one of its name that is kept.
    Teach,
    /// This is what the browser keeps now; another window may have changed it.
    Found(Option<String>),
    /// The browser refused.
    Refused,
}

/// All that is kept.
#[derive(Clone, Debug, Default)]
pub(crate) struct Shelves {
    pub(crate) kept: Rc<Kept>,
    /// What the browser keeps could not be read, and is left alone until something is kept anew.
    pub(crate) unread: bool,
    /// How often it was changed here: what is changed has to be written.
    pub(crate) changes: u32,
}

impl Shelves {
    /// The names of a kind, in their order.
    pub(crate) fn names(&self, kind: Shelf) -> Vec<&str> {
        match kind {
            Shelf::Lathes => self
                .kept
                .machines
                .iter()
                .map(|it| it.name.as_str())
                .collect(),
            Shelf::Tools => self
                .kept
                .tools
                .iter()
                .map(|it| it.edge.name.as_str())
                .collect(),
            Shelf::Instruments(_) => {
                let all = self.kept.instruments.iter();
                all.map(|it| it.name.as_str()).collect()
            }
        }
    }

    /// Whether exactly what the job has is kept.
    pub(crate) fn holds(&self, kind: Shelf, job: &Job) -> bool {
        match kind {
            Shelf::Lathes => self.kept.machines.contains(&job.shop.machine),
            Shelf::Tools => self.kept.tools.contains(&KeptTool::of(&job.shop)),
            Shelf::Instruments(index) => {
                instrument(job, index).is_some_and(|it| self.kept.instruments.contains(it))
            }
        }
    }

    /// Whether what the job has can be kept: there is room, or one of its name whose place it takes.
    pub(crate) fn has_room(&self, kind: Shelf, job: &Job) -> bool {
        let names = self.names(kind);
        names.len() < Kept::MOST || names.contains(&name(kind, job))
    }

    /// The change that takes one of them into a job.
    pub(crate) fn take(&self, kind: Shelf, index: u8) -> Option<Edit> {
        let at = usize::from(index);
        Some(Edit::Shop(match kind {
            Shelf::Lathes => ShopEdit::TakeLathe(Rc::new(self.kept.machines.get(at)?.clone())),
            Shelf::Tools => ShopEdit::TakeTool(Rc::new(self.kept.tools.get(at)?.clone())),
            Shelf::Instruments(_) => {
                ShopEdit::TakeInstrument(Rc::new(self.kept.instruments.get(at)?.clone()))
            }
        }))
    }

    fn change(&mut self, change: impl FnOnce(&mut Kept)) {
        change(Rc::make_mut(&mut self.kept));
        self.unread = false;
        self.changes += 1;
    }
}

/// The name of what the job has; empty where it has none.
pub(crate) fn name(kind: Shelf, job: &Job) -> &str {
    match kind {
        Shelf::Lathes => &job.shop.machine.name,
        Shelf::Tools => &job.shop.edge.name,
        Shelf::Instruments(index) => instrument(job, index).map_or("", |it| it.name.as_str()),
    }
}

fn instrument(job: &Job, index: u8) -> Option<&Instrument> {
    job.shop.instruments.get(usize::from(index))
}

/// Puts one into the place of the one that is alike, or behind all.
fn put<T>(list: &mut Vec<T>, new: T, alike: impl Fn(&T) -> bool) {
    if let Some(old) = list.iter_mut().find(|it| alike(it)) {
        *old = new;
    } else if list.len() < Kept::MOST {
        list.push(new);
    }
}

fn remove<T>(list: &mut Vec<T>, index: u8) {
    if usize::from(index) < list.len() {
        list.remove(usize::from(index));
    }
}

impl State {
    pub(super) fn do_with_shelf(&mut self, action: ShelfAction) {
        match action {
            ShelfAction::Keep(kind) => self.keep(kind),
            ShelfAction::Yes(question) => {
                self.cover = None;
                match question {
                    Question::Forget(lesson) => {
                        self.edit(&Edit::Shop(ShopEdit::Forget(lesson)));
                    }
                    Question::Replace(kind) => self.put_on(kind),
                    Question::Remove(kind, index) => self.take_off(kind, index),
                }
            }
            ShelfAction::Teach => self.teach(),
            ShelfAction::Found(text) => {
                let read = text.as_deref().map(decode_kept).transpose();
                self.shelves.unread = read.is_err();
                self.shelves.kept = Rc::new(read.ok().flatten().unwrap_or_default());
            }
            ShelfAction::Refused => self.notice = Some(Notice::NotKept),
        }
    }

    fn keep(&mut self, kind: Shelf) {
        let name = name(kind, &self.job);
        if name.trim().is_empty() || self.shelves.holds(kind, &self.job) {
            return;
        }
        if self.shelves.names(kind).contains(&name) {
            self.cover = Some(Cover::Ask(Question::Replace(kind)));
        } else {
            self.put_on(kind);
        }
    }

    fn put_on(&mut self, kind: Shelf) {
        let shop = &self.job.shop;
        self.shelves.change(|kept| match kind {
            Shelf::Lathes => {
                let new = shop.machine.clone();
                put(&mut kept.machines, new, |it| it.name == shop.machine.name);
            }
            Shelf::Tools => {
                let new = KeptTool::of(shop);
                put(&mut kept.tools, new, |it| it.edge.name == shop.edge.name);
            }
            Shelf::Instruments(index) => {
                if let Some(new) = shop.instruments.get(usize::from(index)) {
                    put(&mut kept.instruments, new.clone(), |it| it.name == new.name);
                }
            }
        });
    }

    fn take_off(&mut self, kind: Shelf, index: u8) {
        self.shelves.change(|kept| match kind {
            Shelf::Lathes => remove(&mut kept.machines, index),
            Shelf::Tools => remove(&mut kept.tools, index),
            Shelf::Instruments(_) => remove(&mut kept.instruments, index),
        });
        // The button that had the focus is gone.
        self.panels.focus(Spot::Opens(match kind {
            Shelf::Lathes => Panel::Lathe,
            Shelf::Tools => Panel::Tool,
            Shelf::Instruments(_) => Panel::Instruments,
        }));
    }

    /// What the lathe of the job would know with what this job taught; `None` while the work is not over, where it taught
    /// nothing, and once it was kept.
    pub(crate) fn lesson(&self) -> Option<Learned> {
        let over = steps(&self.job, &self.plan)
            .iter()
            .all(|it| it.how.is_over());
        let known = &self.job.shop.machine.learned;
        if !over || self.taught.holds(&self.job.record, known) {
            return None;
        }
        let learned = learned_after(&self.job, &self.plan, known);
        (learned != *known).then_some(learned)
    }

    fn teach(&mut self) {
        let Some(learned) = self.lesson() else {
            return;
        };
        let (job, plan) = (Rc::clone(&self.job), Rc::clone(&self.plan));
        let name = &job.shop.machine.name;
        let anew = !self.taught.by(&job.record);
        // Other jobs may have taught the one that is kept since this job took its copy: theirs stays.
        let kept = self.shelves.kept.machines.iter();
        let kept = kept.filter(|it| anew && !name.trim().is_empty() && it.name == *name);
        let kept = kept
            .map(|it| learned_after(&job, &plan, &it.learned))
            .next();
        if let Some(kept) = kept {
            self.shelves.change(|all| {
                if let Some(lathe) = all.machines.iter_mut().find(|it| it.name == *name) {
                    lathe.learned = kept;
                }
            });
        }
        self.taught.note(&job.record, &learned);
        self.edit(&Edit::Shop(ShopEdit::Learn(Rc::new(learned))));
    }
}
