//! Files of jobs: what is written is read, those of every version still open, and what is wrong says so.
//!
//! `files/` holds a file of each version, and a job of each; they are only ever added to.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;

use std::time::{Duration, Instant};

use proptest::collection::vec;
use proptest::prelude::*;
use skimwright::demo::demo_jobs;
use skimwright::job::{Event, Job, Moment, Record, What};
use skimwright::json::{
    FiledJob, JobFileError, KeptFileError, MOST_BYTES, file_of_kept, kept_of_file, read_job,
    read_jobs, write_jobs,
};
use skimwright::link::{KeptJob, LinkError, encode_to_keep, read_lines, write_lines};

fn filed(index: usize, job: Job) -> FiledJob {
    FiledJob {
        id: format!("job-{index}"),
        state: "open".to_owned(),
        changed: Some(Moment::unix_seconds(1_764_000_000)),
        job,
    }
}

fn file_with(jobs: &str) -> String {
    format!(r#"{{ "file": "skimwright-jobs", "version": 1, "jobs": [{jobs}] }}"#)
}

#[test]
fn every_example_comes_back_from_a_file() {
    let jobs: Vec<FiledJob> = (0..)
        .zip(demo_jobs())
        .map(|(at, job)| filed(at, job))
        .collect();
    let text = write_jobs(&jobs).unwrap();
    let back: Vec<FiledJob> = read_jobs(&text)
        .unwrap()
        .into_iter()
        .map(Result::unwrap)
        .collect();
    assert_eq!(back, jobs);
    assert_eq!(write_jobs(&back).as_ref(), Ok(&text));
    assert_eq!(read_jobs(&write_jobs(&[]).unwrap()), Ok(Vec::new()));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn any_jobs_come_back_from_a_file(list in vec(jobs::any_job(), 0..4)) {
        let jobs: Vec<FiledJob> = (0..).zip(list).map(|(at, job)| filed(at, job)).collect();
        let text = write_jobs(&jobs).unwrap();
        let back: Vec<FiledJob> = read_jobs(&text).unwrap().into_iter().map(Result::unwrap).collect();
        prop_assert_eq!(back, jobs);
    }

    #[test]
    fn any_text_is_read_without_a_panic(text in "\\PC{0,200}") {
        let _ = read_jobs(&text);
        let _ = read_jobs(&file_with(&text));
    }
}

/// A file that was written by the first release that had them, and a job of each form alone.
#[test]
fn files_of_every_version_still_open() {
    let jobs = read_jobs(include_str!("files/jobs-1.json")).unwrap();
    let jobs: Vec<FiledJob> = jobs.into_iter().map(Result::unwrap).collect();
    let ids: Vec<&str> = jobs.iter().map(|job| job.id.as_str()).collect();
    assert_eq!(ids, ["k3f9", "", "arbor-2"]);
    assert_eq!(jobs[0].changed, Some(Moment::unix_seconds(1_764_000_000)));
    assert_eq!(
        (jobs[0].state.as_str(), jobs[1].state.as_str()),
        ("done", "")
    );
    assert_eq!(jobs[1].changed, None);
    assert_eq!(jobs[0].job.record.events.len(), 5);
    assert_eq!(jobs[2].job.title, "Arbor, 32 mm to 25 mm");

    let alone = |text: &str| {
        let mut jobs = read_jobs(text).unwrap();
        assert_eq!(jobs.len(), 1);
        let filed = jobs.pop().unwrap().unwrap();
        assert_eq!(
            (filed.id.as_str(), filed.state.as_str(), filed.changed),
            ("", "", None)
        );
        assert_eq!(read_job(text).as_ref(), Ok(&filed.job));
        filed.job
    };
    let first = alone(include_str!("files/job-1.json"));
    assert_eq!(
        (first.part.sections.len(), first.record),
        (3, Record::default())
    );
    let second = alone(include_str!("files/job-2.json"));
    assert_eq!(
        (second.record.events.len(), second.shop.instruments.len()),
        (5, 1)
    );
}

/// What a file as a whole can be wrong with.
#[test]
fn each_wrong_file_says_what_is_wrong() {
    let cases = [
        ("", "not-json", "the file is no JSON: EOF while parsing"),
        (
            "dAAAA",
            "not-json",
            "the file is no JSON: expected value at line 1 column 1",
        ),
        (r#"{ "file": "#, "not-json", "the file is no JSON: EOF"),
        ("[]", "not-ours", "holds no jobs of this program"),
        ("5", "not-ours", "holds no jobs of this program"),
        ("{}", "not-ours", "holds no jobs of this program"),
        (
            r#"{ "name": "app", "version": "1.0.0" }"#,
            "not-ours",
            "holds no jobs of this program",
        ),
        (
            r#"{ "file": "other", "version": 1, "jobs": [] }"#,
            "not-ours",
            "holds no jobs",
        ),
        (r#"{ "file": 5, "part": {} }"#, "not-ours", "holds no jobs"),
        (
            r#"{ "file": "skimwright-jobs", "version": 2, "jobs": 5 }"#,
            "newer",
            "the file is of version 2, newer than this program, which reads version 1",
        ),
        (
            r#"{ "file": "skimwright-jobs", "version": 0 }"#,
            "form",
            "version: the version of the file must be 1",
        ),
        (
            r#"{ "file": "skimwright-jobs" }"#,
            "form",
            "version: the version of the file must be 1",
        ),
        (
            r#"{ "file": "skimwright-jobs", "version": 1 }"#,
            "form",
            "jobs: a list of jobs must stand here",
        ),
        (
            r#"{ "file": "skimwright-jobs", "version": 1, "jobs": {} }"#,
            "form",
            "jobs: a list",
        ),
        (
            r#"{ "file": "skimwright-jobs", "version": 1, "jobs": [], "more": 1 }"#,
            "form",
            "more: a file of jobs has no such field",
        ),
    ];
    for (text, code, message) in cases {
        let error = read_jobs(text).unwrap_err();
        assert_eq!(error.code(), code, "{text}");
        assert!(error.to_string().contains(message), "{text}: {error}");
    }
    let deep = "[".repeat(200_000);
    assert_eq!(read_jobs(&deep).unwrap_err().code(), "not-json");
}

/// What one job can be wrong with, and that the others are read all the same.
#[test]
fn one_wrong_job_never_loses_the_others() {
    let cases = [
        ("5", "", "", "", "an object with a job must stand here"),
        (r#"{ "id": "x" }"#, "x", "", "job", "the job is missing"),
        (
            r#"{ "id": "a", "job": {} }"#,
            "a",
            "",
            "id",
            "the id 'a' stands in this file already",
        ),
        (
            r#"{ "id": "x y", "job": {} }"#,
            "x y",
            "",
            "id",
            "a word of at most 40",
        ),
        (
            r#"{ "id": 5, "job": {} }"#,
            "",
            "",
            "id",
            "a word of at most 40",
        ),
        (
            r#"{ "state": ["open"], "job": {} }"#,
            "",
            "",
            "state",
            "a word of at most 40",
        ),
        (
            r#"{ "changed": "today", "job": {} }"#,
            "",
            "",
            "changed",
            "seconds since 1970",
        ),
        (
            r#"{ "changed": -1, "job": {} }"#,
            "",
            "",
            "changed",
            "seconds since 1970",
        ),
        (
            r#"{ "colour": 1, "job": {} }"#,
            "",
            "",
            "colour",
            "no such field beside it",
        ),
        (r#"{ "job": [] }"#, "", "", "", "a list has no place here"),
        (r#"{ "job": null }"#, "", "", "", "invalid type"),
        (
            r#"{ "id": "x", "job": { "title": "Arbor", "version": 3 } }"#,
            "x",
            "Arbor",
            "version",
            "version 3 of the job form is newer than this program",
        ),
        (
            r#"{ "id": "x", "job": { "title": "Arbor", "record": { "events": [{ "at": 1, "what": "rest" }] } } }"#,
            "x",
            "Arbor",
            "record.events[0].what",
            "rest",
        ),
    ];
    for (entry, id, title, path, message) in cases {
        let text = file_with(&format!(
            r#"{{ "id": "a", "job": {{}} }}, {entry}, {{ "id": "b", "job": {{}} }}"#
        ));
        let jobs = read_jobs(&text).unwrap();
        assert_eq!(jobs.len(), 3);
        assert_eq!(jobs[0].as_ref().unwrap().id, "a");
        assert_eq!(jobs[2].as_ref().unwrap().id, "b");
        let error = jobs[1].as_ref().unwrap_err();
        assert_eq!(
            (error.id.as_str(), error.title.as_str()),
            (id, title),
            "{entry}"
        );
        assert!(error.error.path.starts_with(path), "{entry}: {error}");
        assert!(error.to_string().contains(message), "{entry}: {error}");
    }
    // Without ids nothing is twice.
    let jobs = read_jobs(&file_with(
        r#"{ "job": {} }, { "id": "", "job": {} }, { "id": null, "job": {} }"#,
    ))
    .unwrap();
    assert!(jobs.iter().all(Result::is_ok));
}

fn events(count: usize) -> String {
    let event =
        r#"{"at":1764000000,"what":{"reading":{"of":{"diameter":"middle"},"value":"16.012 mm"}}}"#;
    vec![event; count].join(",")
}

#[test]
fn a_hundred_thousand_events_are_refused_quickly_and_with_both_numbers() {
    let job = format!(
        r#"{{ "title": "Long", "record": {{ "events": [{}] }} }}"#,
        events(100_000)
    );
    let text = file_with(&format!(
        r#"{{ "id": "a", "job": {job} }}, {{ "id": "b", "job": {{}} }}"#
    ));
    let start = Instant::now();
    let tree: serde_json::Value = serde_json::from_str(&text).unwrap();
    let plain = start.elapsed();
    assert!(tree.is_object());
    let start = Instant::now();
    let jobs = read_jobs(&text).unwrap();
    let took = start.elapsed();
    let error = jobs[0].as_ref().unwrap_err();
    assert_eq!((error.id.as_str(), error.title.as_str()), ("a", "Long"));
    assert_eq!(
        error.to_string(),
        "record.events: the record has 100000 events; at most 5000 are taken"
    );
    assert_eq!(jobs[1].as_ref().unwrap().id, "b");
    // Hardly more than it takes to see that the text is JSON, and far from what reading each event would take.
    let most = plain * 4 + Duration::from_secs(1);
    assert!(took < most, "{took:?}, and {plain:?} for the JSON alone");
    // As many as are taken are read.
    let job = format!(
        r#"{{ "record": {{ "events": [{}] }} }}"#,
        events(Record::MOST_EVENTS)
    );
    let jobs = read_jobs(&job).unwrap();
    assert_eq!(
        jobs[0].as_ref().unwrap().job.record.events.len(),
        Record::MOST_EVENTS
    );
}

#[test]
fn a_file_of_twenty_megabytes_is_refused_by_its_size() {
    let text = " ".repeat(20_000_000);
    assert_eq!(read_jobs(&text), Err(JobFileError::TooLong(20_000_000)));
    let message = JobFileError::TooLong(20_000_000).to_string();
    assert_eq!(
        message,
        "the file has 20000000 bytes; at most 16000000 are read"
    );
}

/// The longest record there is still goes into a file and comes back; two of them do not.
#[test]
fn the_longest_record_has_a_file() {
    let event = Event {
        at: Moment::unix_seconds(u64::MAX),
        struck: true,
        // The letter that takes most in JSON.
        what: What::Note("\u{1}".repeat(Record::MOST_NOTE_CHARACTERS)),
    };
    let mut job = Job::default();
    job.record.events = vec![event; Record::MOST_EVENTS];
    let one = filed(0, job);
    let text = write_jobs(std::slice::from_ref(&one)).unwrap();
    assert!(
        12_000_000 < text.len() && text.len() < MOST_BYTES,
        "{}",
        text.len()
    );
    assert_eq!(read_jobs(&text).unwrap().pop().unwrap().as_ref(), Ok(&one));
    let two = [one.clone(), one];
    assert!(matches!(write_jobs(&two), Err(JobFileError::TooLong(_))));
}

#[test]
fn kept_jobs_go_into_a_file_and_come_back() {
    let kept: Vec<_> = (0..)
        .zip(demo_jobs())
        .map(|(index, job)| {
            Ok(KeptJob {
                id: format!("job-{index}"),
                state: if index == 0 { "" } else { "done" }.to_owned(),
                changed: (index != 0).then(|| Moment::unix_seconds(1_764_000_000)),
                text: encode_to_keep(&job).unwrap(),
            })
        })
        .collect();
    let lines = write_lines(&kept);
    let file = file_of_kept(&lines).unwrap();
    assert_eq!(kept_of_file(&file).as_ref(), Ok(&lines));
    // What cannot be read says so in its line; what no job takes, too.
    let long = "x".repeat(Job::MOST_TITLE_CHARACTERS + 1);
    let file = file_with(&format!(
        r#"{{ "id": "a", "job": {{ "title": 5 }} }}, {{ "id": "b", "job": {{ "title": "{long}" }} }}"#
    ));
    let lines = read_lines(&kept_of_file(&file).unwrap()).unwrap();
    let unread: Vec<_> = lines.into_iter().map(Result::unwrap_err).collect();
    assert_eq!(
        (unread[0].id.as_str(), unread[0].path.as_str()),
        ("a", "title")
    );
    assert_eq!(
        (unread[1].id.as_str(), unread[1].title.as_str()),
        ("b", long.as_str())
    );
    assert!(unread[1].message.contains("80 characters of title"));

    assert_eq!(file_of_kept("x"), Err(KeptFileError::Lines));
    assert_eq!(file_of_kept("-\ta\t\t\twrong"), Err(KeptFileError::Lines));
    let damaged = file_of_kept("+\ta\t\t\tdAAAA").unwrap_err();
    let error = LinkError::Damaged;
    assert_eq!(
        damaged,
        KeptFileError::Kept {
            id: "a".to_owned(),
            error
        }
    );
    assert_eq!(damaged.code(), "damaged");
    assert!(damaged.to_string().contains("the kept job 'a'"));
}
