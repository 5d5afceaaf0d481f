//! One job as it is kept, and the mark of the small second copy.

use std::rc::Rc;

use skimwright::job::{Job, Progress};
use skimwright::link;

/// What a kept job is known by: made of the random name of the tab that made it and a running number.
pub(crate) type JobId = Rc<str>;

/// The version of the stored form that is written. Version 0 was the text of one job in local storage, without a name.
pub(crate) const FORM: u32 = 1;

/// One job as it is kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Entry {
    pub(crate) id: JobId,
    pub(crate) title: Rc<str>,
    pub(crate) progress: Progress,
    /// When it was made, in milliseconds since the beginning of 1970, UTC; 0 until it is written.
    pub(crate) created: u64,
    /// When it was written last; each time later than the time before, whatever the clock says.
    pub(crate) changed: u64,
    pub(crate) trashed: bool,
    /// The job as text.
    pub(crate) text: Rc<str>,
    /// How often it was written, as far as this tab has seen.
    pub(crate) revision: u32,
    /// The tab that wrote it last.
    pub(crate) tab: Rc<str>,
    /// A newer version of the page wrote it: it is shown and left alone.
    pub(crate) newer: bool,
    /// How often it was changed here.
    pub(crate) edits: u32,
    /// How many of these changes the browser has said to be kept.
    pub(crate) kept: u32,
    /// It is to be deleted.
    pub(crate) gone: bool,
}

impl Entry {
    /// A job that is not written yet; `None` where it is too large for a text.
    pub(super) fn of(id: JobId, job: &Job) -> Option<Self> {
        let text = link::encode_to_keep(job).ok()?;
        Some(Self {
            id,
            title: job.title.as_str().into(),
            progress: job.progress(),
            created: 0,
            changed: 0,
            trashed: false,
            text: text.into(),
            revision: 0,
            tab: Rc::default(),
            newer: false,
            edits: 0,
            kept: 0,
            gone: false,
        })
    }

    /// The job in it; `None` where this version of the page cannot read it.
    pub(crate) fn job(&self) -> Option<Job> {
        if self.newer {
            return None;
        }
        link::decode_kept_job(&self.text).ok()
    }

    /// Whether it holds a change that the browser has not said to be kept.
    pub(crate) const fn waits(&self) -> bool {
        self.edits != self.kept
    }

    /// Whether it is one of those to choose from.
    pub(crate) const fn stands(&self) -> bool {
        !self.trashed && !self.gone
    }

    /// Takes another content; `false` where the job is too large for a text.
    pub(super) fn fill(&mut self, job: &Job) -> bool {
        let Ok(text) = link::encode_to_keep(job) else {
            return false;
        };
        self.text = text.into();
        self.title = job.title.as_str().into();
        self.progress = job.progress();
        self.touch();
        true
    }

    /// Notes a change that has to be written.
    pub(super) fn touch(&mut self) {
        self.edits = self.edits.wrapping_add(1);
    }
}

/// Whose the small copy in local storage is.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Of {
    pub(crate) id: JobId,
    /// The revision that it was made from.
    pub(crate) revision: u32,
    pub(crate) changed: u64,
    /// When it was put there: a job may be opened without being changed.
    pub(crate) at: u64,
    pub(crate) tab: Rc<str>,
}

/// How many characters of a text mark it: its checksum is in them.
const MARK: usize = 8;

fn mark(text: &str) -> &str {
    let from = text.len().saturating_sub(MARK);
    text.get(from..).unwrap_or_default()
}

/// What stands beside the small copy of a job. The two are written one after the other, so a mark ties them together.
pub(crate) fn write_of(of: &Of, text: &str) -> String {
    let Of {
        id,
        revision,
        changed,
        at,
        tab,
    } = of;
    format!("{FORM} {id} {revision} {changed} {at} {tab} {}", mark(text))
}

/// Whose the small copy is; `None` where that is not said, or was said of another text.
pub(crate) fn read_of(said: &str, text: &str) -> Option<Of> {
    let mut words = said.split(' ');
    let form: u32 = words.next()?.parse().ok()?;
    let id = words.next()?;
    let of = Of {
        id: id.into(),
        revision: words.next()?.parse().ok()?,
        changed: words.next()?.parse().ok()?,
        at: words.next()?.parse().ok()?,
        tab: words.next()?.into(),
    };
    let marks = words.next()? == mark(text) && words.next().is_none();
    (form == FORM && marks && !id.is_empty()).then_some(of)
}

/// Which of two copies of a job counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Newer {
    /// They hold the same.
    Same,
    /// The small one: it holds what was typed before the browser said the rest to be kept.
    Small,
    /// The one in the database.
    Stored,
    /// Neither: two tabs changed it without knowing of one another.
    Both,
}

/// Which of the small copy and the one in the database counts.
pub(crate) fn newer(of: &Of, text: &str, stored: &Entry) -> Newer {
    if *stored.text == *text {
        Newer::Same
    } else if stored.tab == of.tab {
        // One tab's own times are in order.
        if stored.changed < of.changed {
            Newer::Small
        } else {
            Newer::Stored
        }
    } else if stored.revision == of.revision {
        Newer::Small
    } else if stored.changed < of.changed {
        Newer::Both
    } else {
        // Every tab writes the small copy: had there been a later change than the stored one, it would stand there.
        Newer::Stored
    }
}
