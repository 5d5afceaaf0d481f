//! The list of all jobs that are kept, and which of them is open.

use std::rc::Rc;

use skimwright::job::{Job, Progress};

use super::act::Told;
use super::entry::{Entry, JobId, Of};

/// What the browser gives to keep jobs in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Keeping {
    /// Not known yet: what is kept is being read.
    #[default]
    Reading,
    /// A database of all jobs.
    All,
    /// Only the one job in local storage: there is no database.
    One,
    /// The database is a newer version's, and is left alone.
    Newer,
}

/// Why the last change is not kept yet. It is tried again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Trouble {
    /// There is no room left.
    Full,
    /// The browser refused.
    Refused,
}

/// The undo of a job that is not open now, for as long as the page is.
#[derive(Clone, Debug)]
pub(super) struct Steps {
    pub(super) of: JobId,
    pub(super) past: Vec<Rc<Job>>,
    pub(super) future: Vec<Rc<Job>>,
}

/// All jobs that are kept.
#[expect(clippy::struct_excessive_bools, reason = "each is a fact of its own")]
#[derive(Clone, Debug, Default)]
pub(crate) struct Jobs {
    /// A random name of this tab.
    pub(crate) tab: Rc<str>,
    /// How many names of jobs it has given.
    pub(super) made: u32,
    pub(crate) list: Rc<Vec<Entry>>,
    /// The job that is open, or one's own while a visitor's is looked at; `None` while nothing was entered.
    pub(crate) current: Option<JobId>,
    /// The job that was open before this one was begun.
    pub(crate) before: Option<JobId>,
    /// The open job as its entry has it.
    pub(super) at: Option<Rc<Job>>,
    /// Whether the job that the page opened with is that of the small copy.
    pub(super) open_is_small: bool,
    /// Whose the small copy was as the page opened, and what it held.
    pub(super) small: Option<(Of, Rc<str>)>,
    pub(crate) keeping: Keeping,
    /// How often something has to be written: a change, or another try.
    pub(crate) calls: u32,
    pub(crate) trouble: Option<Trouble>,
    /// Whether the small copy of the open job stands.
    pub(super) small_stands: bool,
    /// The open job is open in another tab too.
    pub(crate) elsewhere: bool,
    /// Whether the browser has promised to clear nothing by itself.
    pub(crate) lasting: Option<bool>,
    pub(crate) search: String,
    /// The job whose ways of being changed are shown.
    pub(crate) picked: Option<JobId>,
    pub(crate) shows_all: bool,
    pub(crate) shows_trash: bool,
    /// What was done last, told in the dialog.
    pub(crate) told: Option<Told>,
    pub(super) steps: Vec<Steps>,
    /// The text of a job that is not opened unasked: the page stopped over it.
    pub(super) aside: Option<Rc<str>>,
}

/// Most jobs whose undo is remembered while they are not open.
const MOST_STEPS: usize = 20;

impl Jobs {
    pub(crate) fn entry(&self, id: &str) -> Option<&Entry> {
        self.list.iter().find(|it| &*it.id == id)
    }

    /// The entry of the open job.
    pub(crate) fn open_entry(&self) -> Option<&Entry> {
        self.entry(self.current.as_deref()?)
    }

    pub(super) fn entry_mut(&mut self, id: &str) -> Option<&mut Entry> {
        let list = Rc::make_mut(&mut self.list);
        list.iter_mut().find(|it| &*it.id == id)
    }

    /// A name that no other job has.
    pub(super) fn new_id(&mut self) -> JobId {
        self.made += 1;
        format!("{}-{}", self.tab, self.made).into()
    }

    /// Something has to be written.
    pub(super) fn call(&mut self) {
        self.calls = self.calls.wrapping_add(1);
    }

    /// Puts a job in front.
    pub(super) fn put(&mut self, entry: Entry) {
        Rc::make_mut(&mut self.list).insert(0, entry);
    }

    pub(super) fn drop_entry(&mut self, id: &str) {
        Rc::make_mut(&mut self.list).retain(|it| &*it.id != id);
    }

    /// Brings the list in order, newest first. The open job is the newest, whatever its clock says; then what was not
    /// written yet.
    pub(super) fn arrange(&mut self) {
        let time = |it: &Entry| match it.changed {
            _ if Some(&it.id) == self.current.as_ref() => u64::MAX,
            0 => u64::MAX - 1,
            changed => changed,
        };
        let mut sorted: Vec<Entry> = Vec::with_capacity(self.list.len());
        for entry in self.list.iter() {
            let at = sorted.iter().position(|it| time(it) < time(entry));
            sorted.insert(at.unwrap_or(sorted.len()), entry.clone());
        }
        self.list = Rc::new(sorted);
    }

    /// Those to choose from that the search finds.
    pub(crate) fn matching(&self) -> impl Iterator<Item = &Entry> {
        let wanted = folded(self.search.trim());
        self.standing()
            .filter(move |it| folded(&it.title).contains(&wanted))
    }

    /// Those to choose from.
    pub(crate) fn standing(&self) -> impl Iterator<Item = &Entry> {
        self.list.iter().filter(|it| it.stands())
    }

    /// Those in the trash.
    pub(crate) fn trash(&self) -> impl Iterator<Item = &Entry> {
        self.list.iter().filter(|it| it.trashed && !it.gone)
    }

    /// What has to be written, and what deleted.
    pub(crate) fn waiting(&self) -> Vec<Entry> {
        self.list.iter().filter(|it| it.waits()).cloned().collect()
    }

    /// How many there are in the database, as far as the browser has said so.
    pub(crate) fn kept_count(&self) -> usize {
        self.standing().filter(|it| 0 < it.revision).count()
    }

    /// Whether a job that is more than a plain new one is kept in the database.
    pub(crate) fn keeps_a_real_one(&self) -> bool {
        let real = |it: &Entry| 0 < it.revision && it.progress != Progress::New;
        self.standing().any(real)
    }

    /// Remembers the undo of a job that is left.
    pub(super) fn put_steps(&mut self, steps: Steps) {
        self.steps.retain(|it| it.of != steps.of);
        if steps.past.is_empty() && steps.future.is_empty() {
            return;
        }
        self.steps.push(steps);
        if MOST_STEPS < self.steps.len() {
            self.steps.remove(0);
        }
    }

    /// The undo of a job that is opened again.
    pub(super) fn take_steps(&mut self, id: &str) -> Option<Steps> {
        let at = self.steps.iter().position(|it| &*it.of == id)?;
        Some(self.steps.remove(at))
    }
}

/// A text as it is searched: small letters. Those of the Western languages; the library's own tables of all letters
/// are several kilobytes.
fn folded(text: &str) -> String {
    let small = |letter: char| match letter {
        'À'..='Ö' | 'Ø'..='Þ' => char::from_u32(u32::from(letter) + 32).unwrap_or(letter),
        other => other.to_ascii_lowercase(),
    };
    text.chars().map(small).collect()
}
