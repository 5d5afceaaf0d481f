//! Reading a job.

use core::fmt;

use serde_json::Value;

use super::file::check_events;
use crate::job::Job;

/// Longest text of a job, or of a file of jobs, that is read, in bytes. The longest record there is, all of it notes of
/// the most characters, takes twelve million.
pub const MOST_BYTES: usize = 16_000_000;

/// Why a text is no job, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JsonError {
    /// The path of the field, such as `part.sections[0].length`; empty when the whole text is meant.
    pub path: String,
    /// What is wrong there.
    pub message: String,
}

impl fmt::Display for JsonError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.path.is_empty() {
            write!(f, "{}: ", self.path)?;
        }
        f.write_str(&self.message)
    }
}

impl core::error::Error for JsonError {}

/// The job in a JSON text.
///
/// # Errors
/// [`JsonError`] when the text is no JSON, holds a field that a job does not have, lacks one that has no default, or a
/// field cannot be read. Numbers outside what a field allows are no error here: the plan has a finding for them.
///
/// # Example
/// ```
/// use skimwright::json;
/// let job = json::read_job(r#"{ "wanted": { "diameter": "5/8 in" } }"#)?;
/// assert!((job.wanted.diameter.value().to_mm() - 15.875).abs() < 1e-9);
/// let error = json::read_job(r#"{ "wanted": { "diameter": "5/8" } }"#).unwrap_err();
/// assert_eq!(error.path, "wanted.diameter");
/// # Ok::<(), json::JsonError>(())
/// ```
pub fn read_job(text: &str) -> Result<Job, JsonError> {
    check_length(text)?;
    let tree = serde_json::from_str(text).map_err(|error| no_json(&error))?;
    check_events(&tree)?;
    check_lists(&tree, "")?;
    // Read once more from the text, so that messages can name line and column.
    read_from(&mut serde_json::Deserializer::from_str(text))
}

/// The same for a text that a program made of an object, so that the places of letters in it mean nothing: they are
/// left out of the messages.
///
/// # Errors
/// As [`read_job`].
pub fn read_job_object(text: &str) -> Result<Job, JsonError> {
    check_length(text)?;
    let tree = serde_json::from_str(text).map_err(|error| no_json(&error))?;
    check_events(&tree)?;
    check_lists(&tree, "")?;
    read_from(tree)
}

/// Where a list belongs.
const LISTS: [&str; 12] = [
    "part.head_beyond",
    "part.sections",
    "part.features",
    "part.bores",
    "shop.machine.speeds",
    "shop.machine.feeds",
    "setup.near.readings",
    "setup.far.readings",
    "setup.pins",
    "shop.instruments",
    "shop.machine.learned.paces",
    "record.events",
];

/// Refuses a list where an object belongs: serde would take its items for the fields in their order.
pub(super) fn check_lists(tree: &Value, path: &str) -> Result<(), JsonError> {
    match tree {
        Value::Array(_) if !LISTS.contains(&path) => Err(JsonError {
            path: path.to_owned(),
            message: "a list has no place here".to_owned(),
        }),
        Value::Array(items) => (0..).zip(items).try_for_each(|(index, item): (usize, _)| {
            check_lists(item, &format!("{path}[{index}]"))
        }),
        Value::Object(fields) => fields.iter().try_for_each(|(name, field)| {
            let dot = if path.is_empty() { "" } else { "." };
            check_lists(field, &format!("{path}{dot}{name}"))
        }),
        _ => Ok(()),
    }
}

fn check_length(text: &str) -> Result<(), JsonError> {
    if text.len() <= MOST_BYTES {
        return Ok(());
    }
    Err(JsonError {
        path: String::new(),
        message: format!("the text is longer than {MOST_BYTES} bytes"),
    })
}

fn no_json(error: &serde_json::Error) -> JsonError {
    JsonError {
        path: String::new(),
        message: error.to_string(),
    }
}

pub(super) fn read_from<'de, D>(reader: D) -> Result<Job, JsonError>
where
    D: serde::Deserializer<'de, Error = serde_json::Error>,
{
    serde_path_to_error::deserialize(reader).map_err(|error| JsonError {
        path: match error.path().to_string() {
            // The whole of it.
            path if path == "." => String::new(),
            path => path,
        },
        message: error.inner().to_string(),
    })
}
