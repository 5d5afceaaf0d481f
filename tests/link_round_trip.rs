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
use skimwright::job::{Job, Learned, Record, StepState, StepTime, What};
use skimwright::link::{
    LinkError, MOST_CHARACTERS, decode, decode_kept_job, encode, encode_to_keep,
    encode_without_record,
};
use skimwright::plan::plan;

proptest! {
    #[test]
    fn a_link_opens_to_the_same_job(job in jobs::any_job()) {
        let kept = encode_to_keep(&job).unwrap();
        prop_assert!(kept.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_'));
        match encode(&job) {
            Ok(link) => {
                prop_assert!(link.len() <= MOST_CHARACTERS);
                prop_assert_eq!(decode(&link), Ok(job.clone()));
                prop_assert_eq!(&link, &kept);
            }
            // Only what was written down makes it so long.
            Err(error) => {
                prop_assert!(!job.record.events.is_empty());
                prop_assert!(error == LinkError::TooLong && MOST_CHARACTERS < kept.len());
                prop_assert_eq!(decode(&kept), Err(LinkError::TooLong));
            }
        }
        prop_assert_eq!(decode_kept_job(&kept), Ok(job.clone()));
        let bare = decode(&encode_without_record(&job).unwrap());
        prop_assert_eq!(bare, Ok(Job { record: Record::default(), ..job }));
    }

    #[test]
    fn a_workshop_job_has_a_short_link(job in jobs::job(jobs::Numbers::Usual)) {
        // A letter of the title takes up to four bytes; the rest are rows of about ten characters.
        let part = &job.part;
        let rows = part.sections.len() + part.features.len() + part.bores.len() + part.head_beyond.len();
        let (machine, edge) = (&job.shop.machine, &job.shop.edge);
        let texts = job.title.len() + machine.name.len() + edge.name.len() + job.shop.rates.currency.len();
        let times = Step::ALL.into_iter().filter(|step| job.shop.times.of(*step) != Some(&StepTime::default()));
        let rows = rows + job.setup.pins.len() + times.count() + job.shop.instruments.len() * 2;
        let learned = &machine.learned;
        let learned = if *learned == Learned::default() { 0 } else { learned.paces.len() * 8 + 40 };
        let names: usize = job.shop.instruments.iter().map(|it| it.name.len()).sum();
        let events: usize = job.record.events.iter().map(|event| match &event.what {
            What::Note(text) => text.len() * 4 / 3 + 20,
            What::Step(step) => match &step.state {
                StepState::Skipped(why) => why.len() * 4 / 3 + 20,
                _ => 20,
            }
            What::Offered(offered) => offered.link.len() * 4 / 3 + 40,
            What::Answered(answered) => (answered.words.len() + answered.by.len()) * 4 / 3 + 40,
            _ => 34,
        }).sum();
        let events = events + job.record.by.len() * 4 / 3;
        let gears = machine.speeds.count() + machine.feeds.count();
        // Of lathe, tool, rates and holding there are some forty numbers.
        let most = (texts + names) * 4 / 3 + rows * 20 + gears * 7 + learned + events + 420;
        let link = encode_to_keep(&job).unwrap();
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
        let _ = decode(&format!("d{code}"));
        prop_assert!(decode(&code).is_err());
    }

    #[test]
    fn a_mutated_link_never_opens(
        job in jobs::any_job(),
        changes in vec((any::<prop::sample::Index>(), "[a-zA-Z0-9_-]"), 1..4),
    ) {
        let link = encode_to_keep(&job).unwrap();
        let mut wrong = link.clone();
        for (place, letter) in changes {
            let place = place.index(wrong.len());
            wrong.replace_range(place..=place, &letter);
        }
        prop_assert_eq!(decode_kept_job(&wrong).is_ok(), wrong == link);
    }

    #[test]
    fn whatever_a_link_holds_has_a_plan(job in jobs::any_job()) {
        let opened = decode_kept_job(&encode_to_keep(&job).unwrap()).unwrap();
        prop_assert!(!plan(&opened).findings.is_empty());
    }
}
