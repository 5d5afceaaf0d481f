//! Laws of the link and of the JSON form, for jobs of every kind.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;

use proptest::collection::vec;
use proptest::prelude::*;
use skimwright::costing::Step;
use skimwright::job::{Job, StepTime};
use skimwright::link::{MOST_CHARACTERS, decode, encode};
use skimwright::plan::plan;

proptest! {
    #[test]
    fn a_link_opens_to_the_same_job(job in jobs::any_job()) {
        let link = encode(&job).unwrap();
        prop_assert!(link.len() <= MOST_CHARACTERS);
        prop_assert!(link.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_'));
        prop_assert_eq!(decode(&link), Ok(job));
    }

    #[test]
    fn a_workshop_job_has_a_short_link(job in jobs::job(jobs::Numbers::Usual)) {
        // A letter of the title takes up to four bytes; the rest are rows of about ten characters.
        let part = &job.part;
        let rows = part.sections.len() + part.features.len() + part.bores.len() + part.head_beyond.len();
        let (machine, edge) = (&job.shop.machine, &job.shop.edge);
        let texts = job.title.len() + machine.name.len() + edge.name.len() + job.shop.rates.currency.len();
        let times = Step::ALL.into_iter().filter(|step| job.shop.times.of(*step) != Some(&StepTime::default()));
        let rows = rows + job.setup.pins.len() + times.count();
        let gears = machine.speeds.count() + machine.feeds.count();
        // Of lathe, tool, rates and holding there are some forty numbers.
        let most = texts * 4 / 3 + rows * 20 + gears * 7 + 420;
        let link = encode(&job).unwrap();
        prop_assert!(link.len() <= most, "{} > {}", link.len(), most);
    }

    #[test]
    fn json_reads_back_to_the_same_job(job in jobs::any_job()) {
        let text = serde_json::to_string(&job).unwrap();
        let back: Job = serde_json::from_str(&text).unwrap();
        prop_assert_eq!(back, job);
    }

    #[test]
    fn any_text_is_read_without_a_panic(text in "\\PC{0,200}", code in "[a-zA-Z0-9_-]{0,300}") {
        let _ = decode(&text);
        let _ = decode(&format!("a{code}"));
        prop_assert!(decode(&code).is_err());
    }

    #[test]
    fn a_mutated_link_never_opens(
        job in jobs::any_job(),
        changes in vec((any::<prop::sample::Index>(), "[a-zA-Z0-9_-]"), 1..4),
    ) {
        let link = encode(&job).unwrap();
        let mut wrong = link.clone();
        for (place, letter) in changes {
            let place = place.index(wrong.len());
            wrong.replace_range(place..=place, &letter);
        }
        prop_assert_eq!(decode(&wrong).is_ok(), wrong == link);
    }

    #[test]
    fn whatever_a_link_holds_has_a_plan(job in jobs::any_job()) {
        let opened = decode(&encode(&job).unwrap()).unwrap();
        prop_assert!(!plan(&opened).findings.is_empty());
    }
}
