//! English: the jobs that are kept.

use skimwright::job::Progress;

use super::Words;
use super::about_jobs::{OfJobs, Suffix};
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

/// What tells a job from the one that it stands beside.
pub(super) const fn suffix(suffix: Suffix) -> &'static str {
    match suffix {
        Suffix::Copy => "(copy)",
        Suffix::OtherTab => "(other tab)",
        Suffix::File => "(from a file)",
        Suffix::Nameless => "Job",
    }
}

pub(super) fn more_about(title: &str) -> String {
    format!(" about {title}")
}

pub(super) fn show_more(count: usize) -> String {
    format!("Show {count} more")
}

/// What became of a job of a file, behind its name; why it was not read comes behind that.
pub(super) const fn fate(fate: &Fate) -> &'static str {
    match fate {
        Fate::Taken => "taken in.",
        Fate::Beside => "another state of it is kept here, so this one stands beside it as a copy.",
        Fate::Same => "kept here already, the same; left out.",
        Fate::Restored => "the same was in the trash, and is back.",
        Fate::Unread(why) if why.is_empty() => "not taken in: it cannot be read.",
        Fate::Unread(_) => "not taken in:",
    }
}

pub(super) fn emptied(words: Words, count: usize) -> String {
    words.count(count, "job was deleted.", "jobs were deleted.")
}

pub(super) fn in_file(words: Words, count: usize) -> String {
    words.count(
        count,
        "job is in the file, among your downloads.",
        "jobs are in the file, among your downloads.",
    )
}

pub(super) fn cleared(words: Words, count: usize) -> String {
    let gone = words.count(
        count,
        "job kept in this browser is gone",
        "jobs kept in this browser are gone",
    );
    format!(
        "{gone}: it has cleared its storage. The job that was open last is here if its second copy was left. Open a file \
         that you saved, or a link that you shared, to bring others back."
    )
}
