//! Jobs into files, and back.

use std::rc::Rc;

use skimwright::job::{Job, Moment};
use skimwright::link::{KeptJob, decode_kept_job, encode_to_keep};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::File;

use super::clock::today;
use super::download::save_text;
use super::files::{FilesError, job_file_text, read_job_file};
use crate::page::jobs::{Entry, FileTrouble, Incoming, JobsAction};
use crate::page::state::Action;
use crate::page::store::Store;

const JSON: &str = "application/json";

/// The largest file that is read into memory at all: a few times of what the module takes.
const MOST_BYTES: f64 = 200e6;

/// Saves one job, or without a name all to choose from, as a file.
pub(crate) fn save_jobs(store: &Store, only: Option<&str>) {
    let entries: Vec<&Entry> = match only {
        Some(id) => store.jobs.entry(id).into_iter().collect(),
        None => store.jobs.standing().collect(),
    };
    let name = match (only, entries.as_slice()) {
        (Some(_), [one]) => format!("{}.json", file_name(&one.title)),
        _ => format!("skimwright-jobs-{}.json", today()),
    };
    let readable = entries.into_iter().filter(|it| it.job().is_some());
    save_kept(store, readable.map(kept_of).collect(), name);
}

/// Saves a job that is not kept here, as a file of this name.
pub(crate) fn save_job(store: &Store, job: &Job, name: String) {
    let Ok(text) = encode_to_keep(job) else {
        return;
    };
    let kept = KeptJob {
        id: "job".to_owned(),
        state: job.progress().code().to_owned(),
        changed: None,
        text,
    };
    save_kept(store, vec![kept], name);
}

fn save_kept(store: &Store, kept: Vec<KeptJob>, name: String) {
    let dispatcher = store.dispatcher();
    spawn_local(async move {
        let told = match job_file_text(&kept).await {
            Ok(text) => {
                save_text(&text, JSON, &name);
                JobsAction::FileSaved(kept.len())
            }
            Err(error) => JobsAction::FileFailed(trouble(&error)),
        };
        dispatcher.dispatch(Action::Jobs(told));
    });
}

/// Takes in what a file holds.
pub(crate) fn open_file(store: &Store, file: File) {
    let dispatcher = store.dispatcher();
    spawn_local(async move {
        let action = match jobs_of(&file).await {
            Ok((jobs, unread)) => JobsAction::TakeIn(Rc::new(jobs), Rc::new(unread)),
            Err(trouble) => JobsAction::FileFailed(trouble),
        };
        dispatcher.dispatch(Action::Jobs(action));
    });
}

type Read = (Vec<Incoming>, Vec<(Rc<str>, String)>);

async fn jobs_of(file: &File) -> Result<Read, FileTrouble> {
    if MOST_BYTES < file.size() {
        return Err(FileTrouble::TooLong);
    }
    let text = JsFuture::from(file.text()).await.ok();
    let text = text.and_then(|text| text.as_string());
    let text = text.ok_or(FileTrouble::NotRead)?;
    let read = read_job_file(&text)
        .await
        .map_err(|error| trouble(&error))?;
    let (mut jobs, mut unread) = (Vec::new(), Vec::new());
    for one in read {
        match one {
            Ok(kept) => match decode_kept_job(&kept.text) {
                Ok(job) => jobs.push(Incoming {
                    id: Some(kept.id.into()).filter(|id: &Rc<str>| !id.is_empty()),
                    job: Rc::new(job),
                }),
                Err(error) => unread.push((kept.id.into(), error.to_string())),
            },
            Err(not) => {
                let name = if not.title.is_empty() {
                    not.id
                } else {
                    not.title
                };
                let why = if not.path.is_empty() {
                    not.message
                } else {
                    format!("{}: {}", not.path, not.message)
                };
                unread.push((name.into(), why));
            }
        }
    }
    Ok((jobs, unread))
}

fn kept_of(entry: &Entry) -> KeptJob {
    KeptJob {
        id: entry.id.to_string(),
        state: entry.progress.code().to_owned(),
        changed: (0 < entry.changed).then(|| Moment::unix_seconds(entry.changed / 1000)),
        text: entry.text.to_string(),
    }
}

fn trouble(error: &FilesError) -> FileTrouble {
    match error.code.as_str() {
        "not-loaded" => FileTrouble::NotLoaded,
        "too-long" => FileTrouble::TooLong,
        "not-json" => FileTrouble::NotJson,
        "not-ours" => FileTrouble::NotOurs,
        "newer" => FileTrouble::Newer,
        _ => FileTrouble::NotRead,
    }
}

/// A title as the name of a file, which every system takes.
fn file_name(title: &str) -> String {
    let letter = |letter: char| match letter {
        '/' | '\\' | ':' | '*' | '?' | '"' | '<' | '>' | '|' | '.' => '-',
        other if other.is_control() => '-',
        other => other,
    };
    let name: String = title.trim().chars().map(letter).collect();
    if name.is_empty() {
        "job".to_owned()
    } else {
        name
    }
}
