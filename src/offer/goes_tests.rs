//! What of a part is gone for good.

#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use super::*;
use crate::demo::demo_jobs;
use crate::job::{Section, Turned};
use crate::plan::plan;
use crate::quantity::{Entered, Unit};
use crate::tables::ThreadSize;

fn mm(text: &str) -> Entered<Length> {
    Entered::read(text, Unit::Millimetre).unwrap()
}

fn of(job: &Job) -> Vec<Goes> {
    goes(job, &plan(job))
}

#[test]
fn the_offcut_and_the_chips_are_those_of_the_plan() {
    let job = Job::default();
    let plan = plan(&job);
    let cut = plan.cut_off.as_ref().unwrap();
    let list = goes(&job, &plan);
    let offcut = Goes::CutOff {
        length: cut.offcut_length.value,
        mass: cut.offcut_mass.value,
    };
    assert_eq!(list[0], offcut);
    let chips = Goes::Chips {
        mass: plan.masses.unwrap().chips.value,
        more: true,
    };
    assert_eq!(list[1], chips);
    assert_eq!(list.len(), 2, "{list:?}");
}

#[test]
fn chips_are_told_of_where_there_are_some() {
    let chips = |job: &Job| {
        let list = of(job);
        list.iter().find_map(|it| match it {
            Goes::Chips { mass, more } => Some((mass.to_grams(), *more)),
            _ => None,
        })
    };
    let mut job = Job::default();
    assert!(matches!(chips(&job), Some((_, true))));
    // As long as wanted already: nothing is cut off beside them.
    job.wanted.length = mm("80");
    assert!(matches!(chips(&job), Some((grams, false)) if grams > 1.0));
    // Nothing is turned either.
    job.wanted.countersink = None;
    let thinner = chips(&job);
    job.wanted.diameter = mm("19.999");
    let fewer = chips(&job);
    assert!(
        fewer.is_none_or(|(grams, _)| LEAST_CHIPS < grams),
        "{thinner:?} {fewer:?}"
    );
}

#[test]
fn a_thread_at_the_end_goes_with_it() {
    let mut job = Job::default();
    // The shank is 80 mm and becomes 50: a thread on its last 20 mm is cut off.
    job.part.sections = vec![
        Section::from(Turned::Cylinder {
            diameter: mm("20"),
            length: mm("60"),
        }),
        Section::from(Turned::Thread {
            thread: ThreadSize::from_code("M20x1.5").unwrap(),
            length: mm("20"),
        }),
    ];
    let list = of(&job);
    let thread = |it: &&Goes| matches!(it, Goes::Turned(..));
    let threads: Vec<&Goes> = list.iter().filter(thread).collect();
    assert_eq!(threads, [&Goes::Turned(TurnedKind::Thread, HowMuch::All)]);
}

#[test]
fn nothing_is_said_to_go_that_is_not_cut_off_or_turned() {
    let mut job = Job::default();
    // A centre hole in the free end of a shank that keeps its length.
    job.wanted.length = mm("80");
    assert!(
        !of(&job)
            .iter()
            .any(|it| matches!(it, Goes::Hole(..) | Goes::CutOff { .. }))
    );
    job.part.sections.clear();
    assert_eq!(of(&job), []);
}

#[test]
fn the_examples_lose_what_they_have() {
    for job in demo_jobs() {
        let list = of(&job);
        assert!(!list.is_empty(), "{}", job.title);
        for goes in list {
            if let Goes::Turned(kind, _) = goes {
                assert_ne!(kind, TurnedKind::Cylinder);
            }
        }
    }
}
