//! The file that jobs are handed on and put away in: one job, or all of them.
//!
//! ```json
//! {
//!   "file": "skimwright-jobs",
//!   "version": 1,
//!   "jobs": [
//!     { "id": "k3f9", "state": "open", "changed": 1764000000, "job": { "wanted": { "diameter": "25 mm" } } }
//!   ]
//! }
//! ```
//!
//! `file` and `version` say what it is. Each of `jobs` holds a `job` in the form that [`crate::json`] describes; the rest
//! may be left out: `id`, by which a program tells jobs apart, once in a file; `state`, whatever the program that keeps
//! them calls it; `changed`, seconds since the beginning of 1970, UTC. Id and state are words of at most
//! [`MOST_WORD_CHARACTERS`] letters, digits, `-` and `_`. A job alone, without anything around it, is such a file too.
//!
//! What is wrong with one job says so in its place, and the others are read all the same.

use core::fmt;
use std::collections::HashSet;

use serde::Serialize;
use serde_json::{Map, Value};

use super::read::{JsonError, MOST_BYTES, check_lists, read_from};
use crate::job::{Job, Moment, Record};
use crate::link::{MOST_WORD_CHARACTERS, is_word};

/// What `file` says.
const NAME: &str = "skimwright-jobs";
/// The version that is written.
const VERSION: u64 = 1;

/// A job in a file.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct FiledJob {
    /// By what it is told apart from others; empty where the file does not say.
    pub id: String,
    /// Its state in the program that keeps it; empty where the file does not say.
    pub state: String,
    /// When it was changed last; `None` where the file does not say.
    pub changed: Option<Moment>,
    /// The job.
    pub job: Job,
}

/// Why a text is no file of jobs, or jobs no file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum JobFileError {
    /// The text is longer than [`MOST_BYTES`]: so many bytes.
    TooLong(usize),
    /// The text is no JSON, and where it ceases to be.
    NotJson(String),
    /// It is JSON, but of another program.
    NotOurs,
    /// It comes from a newer release: its version.
    Newer(u64),
    /// It is a file of jobs, but not of the form described here.
    Form(JsonError),
}

impl JobFileError {
    /// A short text for scripts, which never changes.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::TooLong(_) => "too-long",
            Self::NotJson(_) => "not-json",
            Self::NotOurs => "not-ours",
            Self::Newer(_) => "newer",
            Self::Form(_) => "form",
        }
    }
}

impl fmt::Display for JobFileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLong(bytes) => write!(
                f,
                "the file has {bytes} bytes; at most {MOST_BYTES} are read"
            ),
            Self::NotJson(message) => write!(f, "the file is no JSON: {message}"),
            Self::NotOurs => f.write_str("the file is JSON, but holds no jobs of this program"),
            Self::Newer(version) => write!(
                f,
                "the file is of version {version}, newer than this program, which reads version {VERSION}"
            ),
            Self::Form(error) => write!(f, "{error}"),
        }
    }
}

impl core::error::Error for JobFileError {}

/// What is wrong with one job of a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FiledJobError {
    /// Its id, as far as it has one.
    pub id: String,
    /// Its title, as far as it has one.
    pub title: String,
    /// What is wrong: the path begins at the job, or is `id`, `state`, `changed` or empty.
    pub error: JsonError,
}

impl fmt::Display for FiledJobError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.error)
    }
}

impl core::error::Error for FiledJobError {}

/// The jobs as the text of a file.
///
/// # Errors
/// [`JobFileError::TooLong`] when the text would be longer than is read.
pub fn write_jobs(jobs: &[FiledJob]) -> Result<String, JobFileError> {
    let mut text = format!(r#"{{"file":"{NAME}","version":{VERSION},"jobs":["#);
    for (index, job) in jobs.iter().enumerate() {
        text.push_str(if index == 0 { "\n" } else { ",\n" });
        let job =
            serde_json::to_string(job).map_err(|error| JobFileError::NotJson(error.to_string()))?;
        text.push_str(&job);
    }
    text.push_str("\n]}\n");
    check_length(&text)?;
    Ok(text)
}

/// The jobs in the text of a file, each or what is wrong with it; a job alone is read too.
///
/// # Errors
/// [`JobFileError`] when it is no file of jobs.
///
/// # Example
/// ```
/// use skimwright::json::read_jobs;
/// let jobs = read_jobs(r#"{ "file": "skimwright-jobs", "version": 1, "jobs": [{ "id": "a", "job": {} }, 5] }"#)?;
/// assert_eq!(jobs[0].as_ref().map(|filed| filed.id.as_str()), Ok("a"));
/// assert!(jobs[1].is_err());
/// # Ok::<(), skimwright::json::JobFileError>(())
/// ```
pub fn read_jobs(text: &str) -> Result<Vec<Result<FiledJob, FiledJobError>>, JobFileError> {
    check_length(text)?;
    // What Windows programs put in front of a text.
    let text = text.trim_start_matches('\u{feff}');
    let tree: Value =
        serde_json::from_str(text).map_err(|error| JobFileError::NotJson(error.to_string()))?;
    let Value::Object(mut file) = tree else {
        return Err(JobFileError::NotOurs);
    };
    match file.remove("file") {
        Some(Value::String(name)) if name == NAME => {}
        None if looks_like_a_job(&file) => {
            return Ok(vec![read_filed(
                Map::new(),
                Some(Value::Object(file)),
                None,
            )]);
        }
        _ => return Err(JobFileError::NotOurs),
    }
    match file.remove("version").as_ref().and_then(Value::as_u64) {
        Some(VERSION) => {}
        Some(newer) if VERSION < newer => return Err(JobFileError::Newer(newer)),
        _ => return Err(form("version", "the version of the file must be 1")),
    }
    let Some(Value::Array(jobs)) = file.remove("jobs") else {
        return Err(form("jobs", "a list of jobs must stand here"));
    };
    if let Some(name) = file.keys().next() {
        return Err(form(name, "a file of jobs has no such field"));
    }
    let mut seen = HashSet::new();
    Ok(jobs
        .into_iter()
        .map(|job| read_one(job, &mut seen))
        .collect())
}

/// Whether an object without a `file` has a field of a job.
fn looks_like_a_job(object: &Map<String, Value>) -> bool {
    let fields = ["part", "wanted", "shop", "setup", "record"];
    fields.iter().any(|field| object.contains_key(*field))
}

fn read_one(entry: Value, seen: &mut HashSet<String>) -> Result<FiledJob, FiledJobError> {
    let Value::Object(mut entry) = entry else {
        return Err(FiledJobError {
            id: String::new(),
            title: String::new(),
            error: wrong("", "an object with a job must stand here"),
        });
    };
    let job = entry.remove("job");
    read_filed(entry, job, Some(seen))
}

/// One job with what stands beside it.
fn read_filed(
    mut beside: Map<String, Value>,
    job: Option<Value>,
    seen: Option<&mut HashSet<String>>,
) -> Result<FiledJob, FiledJobError> {
    let text = |value: Option<&Value>| value.and_then(Value::as_str).unwrap_or_default().to_owned();
    let title = text(job.as_ref().and_then(|job| job.get("title")));
    let named = text(beside.get("id"));
    let read = move || {
        let id = word(&mut beside, "id")?;
        let state = word(&mut beside, "state")?;
        let changed = match beside.remove("changed") {
            None | Some(Value::Null) => None,
            Some(changed) => {
                let seconds = changed.as_u64();
                let seconds =
                    seconds.ok_or_else(|| wrong("changed", "seconds since 1970 as a whole number"));
                Some(Moment::unix_seconds(seconds?))
            }
        };
        if let Some(name) = beside.keys().next() {
            return Err(wrong(name, "a job in a file has no such field beside it"));
        }
        if let Some(seen) = seen
            && !id.is_empty()
            && !seen.insert(id.clone())
        {
            return Err(wrong(
                "id",
                &format!("a job with the id '{id}' stands in this file already"),
            ));
        }
        let job = read_value(job.ok_or_else(|| wrong("job", "the job is missing"))?)?;
        Ok(FiledJob {
            id,
            state,
            changed,
            job,
        })
    };
    read().map_err(|error| FiledJobError {
        id: named,
        title,
        error,
    })
}

/// The job in a tree; one with too many events is refused before they are looked at.
fn read_value(tree: Value) -> Result<Job, JsonError> {
    check_events(&tree)?;
    check_lists(&tree, "")?;
    read_from(tree)
}

/// Refuses more events than a record takes, before each of them is read.
pub(super) fn check_events(tree: &Value) -> Result<(), JsonError> {
    let events = tree.pointer("/record/events").and_then(Value::as_array);
    match events.map(Vec::len) {
        Some(count) if Record::MOST_EVENTS < count => Err(wrong(
            "record.events",
            &format!(
                "the record has {count} events; at most {} are taken",
                Record::MOST_EVENTS
            ),
        )),
        _ => Ok(()),
    }
}

/// A word beside a job; empty where there is none.
fn word(beside: &mut Map<String, Value>, name: &str) -> Result<String, JsonError> {
    match beside.remove(name) {
        None | Some(Value::Null) => Ok(String::new()),
        Some(Value::String(word)) if word.is_empty() || is_word(&word) => Ok(word),
        Some(_) => Err(wrong(
            name,
            &format!("a word of at most {MOST_WORD_CHARACTERS} letters, digits, - and _"),
        )),
    }
}

fn check_length(text: &str) -> Result<(), JobFileError> {
    if MOST_BYTES < text.len() {
        return Err(JobFileError::TooLong(text.len()));
    }
    Ok(())
}

fn form(path: &str, message: &str) -> JobFileError {
    JobFileError::Form(wrong(path, message))
}

fn wrong(path: &str, message: &str) -> JsonError {
    JsonError {
        path: path.to_owned(),
        message: message.to_owned(),
    }
}
