//! What is said of the jobs that are kept.

use skimwright::job::Progress;

use super::{Language, Words, english_jobs};
use crate::page::jobs::{Fate, FileTrouble};

/// A fixed text about the jobs that are kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfJobs {
    Title,
    New,
    Search,
    None,
    NoneFound,
    Open,
    More,
    Name,
    Duplicate,
    ToTrash,
    Restore,
    Trash,
    EmptyTrash,
    EmptyQuestion,
    EmptyNo,
    Progress(Progress),
    NotRead,
    FromNewer,
    Trashed,
    Restored,
    Duplicated,
    UndoTrash,
    TakenIn,
    // Files
    SaveFile,
    SaveAll,
    OpenFile,
    DropHere,
    FileFailed(FileTrouble),
    // How safe they are
    Lasting,
    NotLasting,
    OneOnly,
    NewerKeeps,
    StillReading,
    // Told above the page
    Begun,
    Back,
    OtherTab,
    Elsewhere,
    Full,
}

/// A moment by the calendar and the clock of the person.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Moment {
    pub(crate) year: u32,
    /// From nought.
    pub(crate) month: u32,
    pub(crate) day: u32,
    pub(crate) hour: u32,
    pub(crate) minute: u32,
    pub(crate) is_today: bool,
}

impl Words {
    /// When something was changed.
    pub(crate) fn moment(self, moment: Moment) -> String {
        match self.language {
            Language::English => english_jobs::moment(moment),
        }
    }

    /// What goes on after "More" for readers.
    pub(crate) fn more_about(self, title: &str) -> String {
        match self.language {
            Language::English => format!(" about {title}"),
        }
    }

    /// The title of a copy.
    pub(crate) fn copy_of(self, title: &str) -> String {
        match self.language {
            Language::English => english_jobs::copy_of(title),
        }
    }

    /// The title of what was changed here while another tab changed the same job.
    pub(crate) fn of_other_tab(self, title: &str) -> String {
        match self.language {
            Language::English => english_jobs::of_other_tab(title),
        }
    }

    /// The title of a job from a file beside the one that it is another state of.
    pub(crate) fn of_file(self, title: &str) -> String {
        match self.language {
            Language::English => english_jobs::of_file(title),
        }
    }

    /// What became of a job of a file.
    pub(crate) fn fate(self, title: &str, fate: &Fate) -> String {
        match self.language {
            Language::English => english_jobs::fate(title, fate),
        }
    }

    /// So many were put into a file.
    pub(crate) fn in_file(self, count: usize) -> String {
        match self.language {
            Language::English => english_jobs::in_file(count),
        }
    }

    /// So many were deleted for good.
    pub(crate) fn emptied(self, count: usize) -> String {
        match self.language {
            Language::English => english_jobs::emptied(count),
        }
    }

    /// So many more can be shown.
    pub(crate) fn show_more(self, count: usize) -> String {
        match self.language {
            Language::English => format!("Show {count} more"),
        }
    }

    /// So many jobs were kept and are gone.
    pub(crate) fn cleared(self, count: usize) -> String {
        match self.language {
            Language::English => english_jobs::cleared(count),
        }
    }
}
