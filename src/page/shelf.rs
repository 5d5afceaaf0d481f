//! The lathes and tools that are kept in the browser for other jobs.

use std::rc::Rc;

use skimwright::job::Job;
use skimwright::link::{Kept, KeptTool, decode_kept};

use super::edit::{Edit, ShopEdit};
use super::state::State;
use super::view::{Cover, Notice, Panel, Spot};

/// What is kept of a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shelf {
    Lathes,
    Tools,
}

/// What is asked before something that is kept goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Question {
    /// The one of this name gets the figures of the job.
    Replace(Shelf),
    Remove(Shelf, u8),
}

/// What is done with what is kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ShelfAction {
    /// Keeps what the job has; another of its name only after asking.
    Keep(Shelf),
    /// The answer to a question is yes.
    Yes(Question),
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
        }
    }

    /// Whether exactly what the job has is kept.
    pub(crate) fn holds(&self, kind: Shelf, job: &Job) -> bool {
        match kind {
            Shelf::Lathes => self.kept.machines.contains(&job.shop.machine),
            Shelf::Tools => self.kept.tools.contains(&KeptTool::of(&job.shop)),
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
    }
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
                    Question::Replace(kind) => self.put_on(kind),
                    Question::Remove(kind, index) => self.take_off(kind, index),
                }
            }
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
        });
    }

    fn take_off(&mut self, kind: Shelf, index: u8) {
        self.shelves.change(|kept| match kind {
            Shelf::Lathes => remove(&mut kept.machines, index),
            Shelf::Tools => remove(&mut kept.tools, index),
        });
        // The button that had the focus is gone.
        self.panels.focus(Spot::Opens(match kind {
            Shelf::Lathes => Panel::Lathe,
            Shelf::Tools => Panel::Tool,
        }));
    }
}
