//! Files of jobs from and to the texts that a page keeps, so that the page needs no JSON of its own.

use core::fmt;

use super::file::{FiledJob, FiledJobError, JobFileError, read_jobs, write_jobs};
use crate::link::{
    KeptJob, LinkError, UnreadJob, decode_kept_job, encode_to_keep, read_lines, write_lines,
};

/// Why kept jobs have no file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeptFileError {
    /// The text is not what [`write_lines`] makes, or names a job that could not be read.
    Lines,
    /// A job that is kept cannot be read.
    Kept {
        /// Its id.
        id: String,
        /// Why.
        error: LinkError,
    },
    /// The file would be wrong.
    File(JobFileError),
}

impl KeptFileError {
    /// A short text for scripts, which never changes.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Lines => "lines",
            Self::Kept { error, .. } => error.code(),
            Self::File(error) => error.code(),
        }
    }
}

impl fmt::Display for KeptFileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Lines => f.write_str("these are no lines of kept jobs"),
            Self::Kept { id, error } => write!(f, "the kept job '{id}' cannot be read: {error}"),
            Self::File(error) => write!(f, "{error}"),
        }
    }
}

impl core::error::Error for KeptFileError {}

/// The text of a file with the jobs in these lines, which [`write_lines`] made.
///
/// # Errors
/// Every way of [`KeptFileError`].
pub fn file_of_kept(lines: &str) -> Result<String, KeptFileError> {
    let lines = read_lines(lines).ok_or(KeptFileError::Lines)?;
    let jobs = lines.into_iter().map(|line| {
        let kept = line.map_err(|_| KeptFileError::Lines)?;
        let job = decode_kept_job(&kept.text);
        match job {
            Ok(job) => Ok(FiledJob {
                id: kept.id,
                state: kept.state,
                changed: kept.changed,
                job,
            }),
            Err(error) => Err(KeptFileError::Kept { id: kept.id, error }),
        }
    });
    let jobs: Vec<FiledJob> = jobs.collect::<Result<_, _>>()?;
    write_jobs(&jobs).map_err(KeptFileError::File)
}

/// The jobs of a file as lines, each or what is wrong with it.
///
/// # Errors
/// [`JobFileError`] when the text is no file of jobs.
pub fn kept_of_file(text: &str) -> Result<String, JobFileError> {
    let lines: Vec<Result<KeptJob, UnreadJob>> = read_jobs(text)?.into_iter().map(keep).collect();
    Ok(write_lines(&lines))
}

fn keep(filed: Result<FiledJob, FiledJobError>) -> Result<KeptJob, UnreadJob> {
    let filed = filed.map_err(|unread| UnreadJob {
        id: unread.id,
        title: unread.title,
        path: unread.error.path,
        message: unread.error.message,
    })?;
    match encode_to_keep(&filed.job) {
        Ok(text) => Ok(KeptJob {
            id: filed.id,
            state: filed.state,
            changed: filed.changed,
            text,
        }),
        // A title, a name, a note or a list beyond the limits of a job.
        Err(error) => Err(UnreadJob {
            id: filed.id,
            title: filed.job.title,
            path: String::new(),
            message: error.to_string(),
        }),
    }
}
