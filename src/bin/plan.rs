//! Prints the plan of a job file, for scripts.
//!
//! The forms of job and plan are described in `skimwright::json`.

use std::fmt;
use std::fs::File;
use std::io::{self, ErrorKind, Read, Write};
use std::process::ExitCode;

use serde::Serialize;
use skimwright::job::Job;
use skimwright::json::{JsonError, MOST_BYTES, read_job};
use skimwright::link::{self, LinkError};
use skimwright::plan::plan;

const HELP: &str = "\
Plans the rework of a turned part and prints the plan as JSON.

  skimwright-plan JOB          the plan of a job
  skimwright-plan --job JOB    the job itself, complete
  skimwright-plan --link JOB   the text that a link to it carries behind its #
  skimwright-plan --default    the job that stands for everything left out

JOB is a file, or - for standard input, with a job as JSON or a link in it; or a link itself.
Lengths in a plan are mm, times s, masses g, speeds m/min, feeds mm/rev, angles rad.
Exit status: 0 when there is a plan, whatever it says; 2 when there is none.
";

/// Why nothing can be printed.
enum Failure {
    Usage(String),
    File { name: String, error: io::Error },
    TooLong { name: String },
    Job { name: String, error: JsonError },
    Link { name: String, error: LinkError },
    NeitherFileNorLink { name: String, error: LinkError },
    Encode(LinkError),
    Json(serde_json::Error),
    Output(io::Error),
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Usage(message) => write!(f, "{message}; --help says how it is used"),
            Self::File { name, error } => write!(f, "{name} cannot be read: {error}"),
            Self::TooLong { name } => write!(f, "{name} is longer than {MOST_BYTES} bytes"),
            Self::Job { name, error } => write!(f, "{name}: {error}"),
            Self::Link { name, error } => write!(f, "{name}: {error}"),
            Self::NeitherFileNorLink { name, error } => {
                write!(f, "there is no file {name}, and as a link: {error}")
            }
            Self::Encode(error) => write!(f, "{error}"),
            Self::Json(error) => write!(f, "the result cannot be written as JSON: {error}"),
            Self::Output(error) => write!(f, "the result cannot be printed: {error}"),
        }
    }
}

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let printed = answer(&words).and_then(|text| {
        io::stdout()
            .write_all(text.as_bytes())
            .map_err(Failure::Output)
    });
    match printed {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever read the output has seen enough.
        Err(Failure::Output(error)) if error.kind() == ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(failure) => {
            // Nothing is left to be done when not even this can be said.
            let _ = writeln!(io::stderr(), "skimwright-plan: {failure}");
            ExitCode::from(2)
        }
    }
}

fn answer(words: &[&str]) -> Result<String, Failure> {
    match words {
        ["--help" | "-h"] => Ok(HELP.to_owned()),
        ["--default"] => to_json(&Job::default()),
        ["--link", name] => {
            let text = link::encode(&read(name)?).map_err(Failure::Encode)?;
            Ok(text + "\n")
        }
        ["--job", name] => to_json(&read(name)?),
        [name] if *name == "-" || !name.starts_with('-') => to_json(&plan(&read(name)?)),
        [] => Err(Failure::Usage("a job is missing".to_owned())),
        _ => Err(Failure::Usage(format!(
            "'{}' is not understood",
            words.join(" ")
        ))),
    }
}

fn to_json<T: Serialize>(value: &T) -> Result<String, Failure> {
    let text = serde_json::to_string_pretty(value).map_err(Failure::Json)?;
    Ok(text + "\n")
}

/// The job that a word on the command line stands for.
fn read(name: &str) -> Result<Job, Failure> {
    let shown = if name == "-" { "standard input" } else { name }.to_owned();
    let text = if name == "-" {
        read_bounded(io::stdin().lock(), shown.clone())?
    } else {
        match File::open(name) {
            Ok(file) => read_bounded(file, shown.clone())?,
            // A long link is no name that a file can have.
            Err(error)
                if matches!(
                    error.kind(),
                    ErrorKind::NotFound | ErrorKind::InvalidFilename
                ) || name.contains('#') =>
            {
                return link::decode(name)
                    .map_err(|error| Failure::NeitherFileNorLink { name: shown, error });
            }
            Err(error) => return Err(Failure::File { name: shown, error }),
        }
    };
    if text.trim_start().starts_with(['{', '[', '"']) || text.trim().is_empty() {
        read_job(&text).map_err(|error| Failure::Job { name: shown, error })
    } else {
        link::decode(&text).map_err(|error| Failure::Link { name: shown, error })
    }
}

/// All of a text, unless it is longer than any job.
fn read_bounded(source: impl Read, name: String) -> Result<String, Failure> {
    let most = u64::try_from(MOST_BYTES).unwrap_or(u64::MAX);
    let mut text = String::new();
    match source.take(most + 1).read_to_string(&mut text) {
        Err(error) => Err(Failure::File { name, error }),
        Ok(length) if length > MOST_BYTES => Err(Failure::TooLong { name }),
        Ok(_) => Ok(text),
    }
}
