//! What is said of the jobs that are kept.

use skimwright::job::{Job, Progress};

use super::{Text, Words};
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

impl Moment {
    /// The time of the day.
    fn clock(self) -> String {
        format!("{:02}:{:02}", self.hour, self.minute)
    }
}

/// What tells a job from the one that it stands beside, behind its name; and what stands for a name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Suffix {
    Copy,
    OtherTab,
    File,
    Nameless,
}

impl Words {
    /// When something was changed: the time of today, or the day.
    pub(crate) fn moment(self, moment: Moment) -> String {
        if moment.is_today {
            format!("{} {}", self.tongue.today(), moment.clock())
        } else {
            self.date(moment)
        }
    }

    /// A day.
    pub(crate) fn date(self, moment: Moment) -> String {
        self.tongue.day(moment)
    }

    /// A day and the time of it.
    pub(crate) fn date_time(self, moment: Moment) -> String {
        format!("{} {}", self.date(moment), moment.clock())
    }

    /// What goes on after "More" for readers.
    pub(crate) fn more_about(self, title: &str) -> String {
        spoken!(self, jobs::more_about(title))
    }

    /// The title of a copy.
    pub(crate) fn copy_of(self, title: &str) -> String {
        self.with_suffix(title, Suffix::Copy)
    }

    /// The title of what was changed here while another tab changed the same job.
    pub(crate) fn of_other_tab(self, title: &str) -> String {
        self.with_suffix(title, Suffix::OtherTab)
    }

    /// The title of a job from a file beside the one that it is another state of.
    pub(crate) fn of_file(self, title: &str) -> String {
        self.with_suffix(title, Suffix::File)
    }

    fn with_suffix(self, title: &str, suffix: Suffix) -> String {
        let title = title.trim();
        let suffix = said!(self, jobs::suffix(suffix));
        if title.is_empty() {
            let nameless = said!(self, jobs::suffix(Suffix::Nameless));
            format!("{nameless} {suffix}")
        } else if title.ends_with(suffix) {
            title.to_owned()
        } else {
            // The end says which it is, so that it must not be cut off.
            let most = Job::MOST_TITLE_CHARACTERS.saturating_sub(suffix.chars().count() + 1);
            let title: String = title.chars().take(most).collect();
            format!("{title} {suffix}")
        }
    }

    /// What became of a job of a file.
    pub(crate) fn fate(self, title: &str, fate: &Fate) -> String {
        let title = match title.trim() {
            "" => self.say(Text::JobUntitled),
            title => title,
        };
        let said = said!(self, jobs::fate(fate));
        match fate {
            Fate::Unread(why) if !why.is_empty() => format!("{title}: {said} {why}"),
            _ => format!("{title}: {said}"),
        }
    }

    /// So many were put into a file.
    pub(crate) fn in_file(self, count: usize) -> String {
        said!(self, jobs::in_file(self, count))
    }

    /// So many were deleted for good.
    pub(crate) fn emptied(self, count: usize) -> String {
        said!(self, jobs::emptied(self, count))
    }

    /// So many more can be shown.
    pub(crate) fn show_more(self, count: usize) -> String {
        said!(self, jobs::show_more(count))
    }

    /// So many jobs were kept and are gone.
    pub(crate) fn cleared(self, count: usize) -> String {
        said!(self, jobs::cleared(self, count))
    }
}
