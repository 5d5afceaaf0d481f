//! The form of links: those that were given away still open, and damaged ones never do.
//!
//! `links/v1.txt` and `links/v2.txt` hold a line for each job: its link, a space, the job as JSON. The files are only
//! ever added to.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;

use skimwright::demo::demo_jobs;
use skimwright::job::{CutKind, Field, HoleKind, Job, ReceiverKind, TurnedKind};
use skimwright::link::{LinkError, decode, encode};
use skimwright::plan::number_fields;

/// The links of a file and their jobs.
fn links(lines: &'static str) -> Vec<(&'static str, Job)> {
    lines
        .lines()
        .map(|line| {
            let (link, job) = line.split_once(' ').unwrap();
            (link, serde_json::from_str(job).unwrap())
        })
        .collect()
}

fn version_1() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v1.txt"))
}

fn version_2() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v2.txt"))
}

#[test]
fn links_of_version_1_still_open() {
    let links = version_1();
    assert_eq!(links.len(), 5);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

/// What came in by an older link goes on by a newer one.
#[test]
fn jobs_of_version_1_are_written_anew_as_version_2() {
    for (link, job) in version_1() {
        let newer = encode(&job).unwrap();
        assert!(link.starts_with('a') && newer.starts_with('b'), "{newer}");
        assert_eq!(decode(&newer), Ok(job));
    }
}

#[test]
fn links_of_version_2_still_open() {
    let links = version_2();
    assert_eq!(links.len(), 9);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

#[test]
fn version_2_is_still_what_is_written() {
    for (link, job) in version_2() {
        assert_eq!(encode(&job).as_deref(), Ok(link), "{}", job.title);
    }
}

/// A kind that no kept link holds could change its place without a test that says so.
#[test]
fn every_kind_stands_in_a_kept_link_of_version_2() {
    let jobs = version_2();
    let has = |kept: &dyn Fn(&Job) -> bool| jobs.iter().any(|(_, job)| kept(job));
    for kind in TurnedKind::ALL {
        let of = |job: &Job| job.part.sections.iter().any(|it| it.turned.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in CutKind::ALL {
        let of = |job: &Job| job.part.features.iter().any(|it| it.cut.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in HoleKind::ALL {
        let of = |job: &Job| job.part.bores.iter().any(|it| it.hole.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in ReceiverKind::ALL {
        let of = |job: &Job| job.wanted.receiver.kind() == *kind;
        assert!(has(&of), "{kind:?}");
    }
    // And every field that a job may leave empty is filled in one of them.
    let mut filled = BTreeSet::new();
    let mut optional = BTreeSet::new();
    for (_, job) in &jobs {
        for field in number_fields(job) {
            filled.insert(field);
        }
        let empty = OPTIONAL.iter().filter(|field| job.entry(**field).is_none());
        optional.extend(empty.copied());
    }
    for field in OPTIONAL {
        assert!(
            filled.contains(&field) && optional.contains(&field),
            "{field}"
        );
    }
}

/// Fields of the whole job that may be empty.
const OPTIONAL: [Field; 17] = [
    Field::EndRunout,
    Field::SurfaceHardness,
    Field::CaseDepth,
    Field::CoreHardness,
    Field::ShankLength,
    Field::Countersink,
    Field::ReceiverDepth,
    Field::LeastGrip,
    Field::DutyTorque,
    Field::DutyForce,
    Field::DutyOverhang,
    Field::DutyPower,
    Field::DutySpeed,
    Field::Kerf,
    Field::RoughInfeed,
    Field::CuttingSpeed,
    Field::RoughFeed,
];

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
