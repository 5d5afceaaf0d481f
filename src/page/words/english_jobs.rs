//! English: the jobs that are kept.

use skimwright::job::Progress;

use super::about_jobs::{Moment, OfJobs};
use crate::page::jobs::{Fate, FileTrouble};
use crate::page::state::Saved;

pub(super) const fn text(text: OfJobs) -> &'static str {
    match text {
        OfJobs::Title => "Jobs",
        OfJobs::New => "New job",
        OfJobs::Search => "Search by name",
        OfJobs::None => "No job is kept yet. What you enter is kept here by itself.",
        OfJobs::NoneFound => "No job has this in its name.",
        OfJobs::Open => "open now",
        OfJobs::More => "More",
        OfJobs::Name => "Name",
        OfJobs::Duplicate => "Duplicate",
        OfJobs::ToTrash => "Into the trash",
        OfJobs::Restore => "Restore",
        OfJobs::Trash => "Trash",
        OfJobs::EmptyTrash => "Empty the trash",
        OfJobs::EmptyQuestion => {
            "Delete all jobs in the trash for good? This cannot be undone. Your other jobs stay."
        }
        OfJobs::EmptyNo => "Keep them",
        OfJobs::Progress(Progress::New) => "new",
        OfJobs::Progress(Progress::Planned) => "planned",
        OfJobs::Progress(Progress::Cutting) => "cutting",
        OfJobs::Progress(Progress::Done) => "done",
        OfJobs::NotRead => "cannot be read; left as it is",
        OfJobs::FromNewer => "from a newer version of the page; left as it is",
        OfJobs::Trashed => "Put into the trash.",
        OfJobs::Restored => "Back among your jobs.",
        OfJobs::Duplicated => "Duplicated. The copy stands first.",
        OfJobs::UndoTrash => "Undo",
        OfJobs::TakenIn => "What became of the jobs in the file:",
        OfJobs::SaveFile => "Save as file",
        OfJobs::SaveAll => "Save all as file",
        OfJobs::OpenFile => "Open a file",
        OfJobs::DropHere => "Or drop a file of jobs here. Nothing that is kept is overwritten.",
        OfJobs::FileFailed(trouble) => match trouble {
            FileTrouble::NotLoaded => {
                "The part of the page that writes and reads files could not be loaded. Try again with a network."
            }
            FileTrouble::TooLong => {
                "The file is larger than any file of jobs. Nothing was taken in."
            }
            FileTrouble::NotJson => "The file is damaged, or holds no jobs. Nothing was taken in.",
            FileTrouble::NotOurs => "The file holds no jobs of this page. Nothing was taken in.",
            FileTrouble::Newer => {
                "The file comes from a newer version of the page. Reload the page and open it again. Nothing was taken in."
            }
            FileTrouble::NotRead => "The file could not be read or written. Nothing was changed.",
        },
        OfJobs::Lasting => "This browser has promised not to clear your jobs by itself.",
        OfJobs::NotLasting => {
            "This browser may clear your jobs by itself when room is short, or when you do not come for weeks."
        }
        OfJobs::OneOnly => {
            "This browser keeps only the job that is open. The others are here until the page is closed."
        }
        OfJobs::NewerKeeps => {
            "A newer version of this page keeps your jobs in this browser. They are left alone: reload the page to get \
             that version."
        }
        OfJobs::StillReading => "Your jobs are being read…",
        OfJobs::Begun => "A new job is open. The one before is kept under Jobs.",
        OfJobs::Back => "Back to the one before",
        OfJobs::OtherTab => {
            "Another tab changed this job at the same time. Both are kept under Jobs: yours has “(other tab)” in its name."
        }
        OfJobs::Elsewhere => {
            "This job is open in another tab too. What is changed there shows here."
        }
        OfJobs::Full => {
            "There is no room left on this device: the last change is NOT saved. It stays here while the page is open, \
             and is tried again."
        }
    }
}

pub(super) const fn saved(saved: Saved) -> &'static str {
    match saved {
        Saved::Pending => "saving…",
        Saved::Nothing => "nothing entered yet",
        Saved::Yes => "saved on this device",
        Saved::One => "saved on this device, this job only",
        Saved::Full => "NOT saved: no room left",
        Saved::Again => "NOT saved: the browser refused; trying again",
        Saved::Refused => "NOT saved: this browser keeps nothing. Share the link to yourself.",
        Saved::Visiting => "from a link, not saved here",
    }
}

const MONTHS: [&str; 12] = [
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
];

pub(super) fn moment(moment: Moment) -> String {
    let Moment {
        year,
        month,
        day,
        hour,
        minute,
        is_today,
    } = moment;
    if is_today {
        return format!("today {hour:02}:{minute:02}");
    }
    let month = MONTHS.into_iter().nth(usize::try_from(month).unwrap_or(12));
    format!("{day} {} {year}", month.unwrap_or_default())
}

pub(super) fn copy_of(title: &str) -> String {
    with_suffix(title, "(copy)")
}

pub(super) fn of_other_tab(title: &str) -> String {
    with_suffix(title, "(other tab)")
}

pub(super) fn of_file(title: &str) -> String {
    with_suffix(title, "(from a file)")
}

pub(super) fn fate(title: &str, fate: &Fate) -> String {
    let title = title.trim();
    let title = if title.is_empty() {
        "Job without a name"
    } else {
        title
    };
    match fate {
        Fate::Taken => format!("{title}: taken in."),
        Fate::Beside => {
            format!(
                "{title}: another state of it is kept here, so this one stands beside it as a copy."
            )
        }
        Fate::Same => format!("{title}: kept here already, the same; left out."),
        Fate::Restored => format!("{title}: the same was in the trash, and is back."),
        Fate::Unread(why) if why.is_empty() => format!("{title}: not taken in: it cannot be read."),
        Fate::Unread(why) => format!("{title}: not taken in: {why}"),
    }
}

fn with_suffix(title: &str, suffix: &str) -> String {
    let title = title.trim();
    if title.is_empty() {
        format!("Job {suffix}")
    } else if title.ends_with(suffix) {
        title.to_owned()
    } else {
        // The end says which it is, so that it must not be cut off.
        let most = skimwright::job::Job::MOST_TITLE_CHARACTERS - suffix.len() - 1;
        let title: String = title.chars().take(most).collect();
        format!("{title} {suffix}")
    }
}

pub(super) fn emptied(count: usize) -> String {
    match count {
        1 => "1 job was deleted.".to_owned(),
        more => format!("{more} jobs were deleted."),
    }
}

pub(super) fn in_file(count: usize) -> String {
    match count {
        1 => "1 job is in the file, among your downloads.".to_owned(),
        more => format!("{more} jobs are in the file, among your downloads."),
    }
}

pub(super) fn cleared(count: usize) -> String {
    let (jobs, are) = if count == 1 {
        ("job", "is")
    } else {
        ("jobs", "are")
    };
    format!(
        "{count} {jobs} kept in this browser {are} gone: it has cleared its storage. The job that was open last is here \
         if its second copy was left. Open a file that you saved, or a link that you shared, to bring others back."
    )
}
