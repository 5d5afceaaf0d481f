//! The form of links: those that were given away still open, and damaged ones never do.
//!
//! `links/v1.txt` holds a line for each job: its link, a space, the job as JSON. The file is only ever added to.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::link::{LinkError, decode, encode};

/// Links of version 1 and their jobs.
fn version_1() -> Vec<(&'static str, Job)> {
    include_str!("links/v1.txt")
        .lines()
        .map(|line| {
            let (link, job) = line.split_once(' ').unwrap();
            (link, serde_json::from_str(job).unwrap())
        })
        .collect()
}

#[test]
fn links_of_version_1_still_open() {
    let links = version_1();
    assert_eq!(links.len(), 5);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

#[test]
fn version_1_is_still_what_is_written() {
    for (link, job) in version_1() {
        assert_eq!(encode(&job).as_deref(), Ok(link), "{}", job.title);
    }
}

#[test]
fn one_wrong_character_is_always_an_error() {
    const INSTEAD: &str = "aAbzZ09-_ #+=/%\u{e9}";
    for job in demo_jobs() {
        let link = encode(&job).unwrap();
        for (place, letter) in link.char_indices() {
            let (before, behind) = (&link[..place], &link[place + 1..]);
            let case = if letter.is_ascii_lowercase() {
                letter.to_ascii_uppercase()
            } else {
                letter.to_ascii_lowercase()
            };
            let next = char::from(link.as_bytes()[place] ^ 1);
            for other in INSTEAD.chars().chain([case, next]) {
                if other != letter {
                    let wrong = format!("{before}{other}{behind}");
                    assert!(decode(&wrong).is_err(), "{other} at {place} in {link}");
                }
                // In front, these are the white space and the mark that are left aside.
                let harmless = matches!(other, ' ' | '#') && place == 0;
                let longer = format!("{before}{other}{letter}{behind}");
                assert_eq!(decode(&longer).is_ok(), harmless, "{other} before {place}");
            }
        }
    }
}

#[test]
fn a_cut_link_is_always_an_error() {
    for job in demo_jobs() {
        let link = encode(&job).unwrap();
        for place in 0..link.len() {
            let (head, tail) = link.split_at(place);
            assert!(decode(head).is_err(), "cut to {place}");
            if place > 0 {
                assert!(decode(tail).is_err(), "cut from {place}");
            }
            let without = format!("{head}{}", &tail[1..]);
            // Of two equal letters it is all one which is missing, but missing it is.
            assert!(decode(&without).is_err(), "without {place}");
        }
        assert_eq!(decode(&link[..link.len() - 1]), Err(LinkError::Damaged));
    }
}

#[test]
fn two_letters_that_changed_places_are_an_error() {
    for job in demo_jobs() {
        let link = encode(&job).unwrap().into_bytes();
        for place in 1..link.len() {
            let mut wrong = link.clone();
            wrong.swap(place - 1, place);
            if wrong != link {
                let wrong = String::from_utf8(wrong).unwrap();
                assert!(decode(&wrong).is_err(), "{place}");
            }
        }
    }
}
