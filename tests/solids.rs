//! Volumes and centres of gravity of 200 random parts against a numerical integration from outside.
//!
//! `data/solids.jsonl` holds a part a line, made by `data/solids.py` with a fixed seed and integrated with scipy
//! 1.17.1, `quad` over the areas of strips. The first hundred have no features, the others up to seven.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;

use serde_json::Value;
use skimwright::job::{Job, TurnedKind};
use skimwright::json;
use skimwright::plan::plan;

/// Of the part's volume, and of its length for the centre of gravity.
const WITHOUT_FEATURES: f64 = 1e-9;
const WITH_FEATURES: f64 = 1e-6;

fn cases() -> Vec<(Job, Value)> {
    include_str!("data/solids.jsonl")
        .lines()
        .map(|line| {
            let case: Value = serde_json::from_str(line).unwrap();
            (json::read_job(&case["job"].to_string()).unwrap(), case)
        })
        .collect()
}

#[test]
fn every_kind_is_among_the_parts() {
    let cases = cases();
    assert_eq!(cases.len(), 200);
    let of = |kinds: fn(&Job) -> Vec<String>| -> usize {
        let all: BTreeSet<String> = cases.iter().flat_map(|(job, _)| kinds(job)).collect();
        all.len()
    };
    let sections = of(|job| {
        let kinds = job.part.sections.iter().map(|it| it.turned.kind());
        kinds.map(|kind| format!("{kind:?}")).collect()
    });
    let features = of(|job| {
        let kinds = job.part.features.iter().map(|it| it.cut.kind());
        kinds.map(|kind| format!("{kind:?}")).collect()
    });
    let holes = of(|job| {
        let kinds = job.part.bores.iter().map(|it| it.hole.kind());
        kinds.map(|kind| format!("{kind:?}")).collect()
    });
    assert_eq!((sections, features, holes), (TurnedKind::ALL.len(), 5, 6));
    let from_both = |(job, _): &&(Job, Value)| {
        let ends: BTreeSet<String> = job
            .part
            .bores
            .iter()
            .map(|it| format!("{:?}", it.end))
            .collect();
        ends.len() == 2
    };
    assert!(cases.iter().filter(from_both).count() > 20);
}

#[test]
fn metal_and_balance_agree_with_an_integration_from_outside() {
    let mut worst = [(0.0_f64, 0_usize); 10];
    for (number, (job, case)) in cases().into_iter().enumerate() {
        let plan = plan(&job);
        let (masses, metal) = (plan.masses.unwrap(), plan.metal.unwrap());
        let received = plan.shape.received.unwrap();
        let density = job.part.material.density().typical;
        let volume = |grams: f64| grams / density.to_kg_per_m3() * 1e6;
        let wanted = |name: &str| case[name].as_f64().unwrap();
        let whole = wanted("before");
        let long = (received.shank_length - received.head.start()).to_mm();
        let off = [
            (volume(masses.before.value.to_grams()) - whole) / whole,
            (volume(masses.after.value.to_grams()) - wanted("after")) / whole,
            (metal.offcut.to_mm3() - wanted("offcut")) / whole,
            (masses.balance_before.value.to_mm() - wanted("balance_before")) / long,
            (masses.balance_after.value.to_mm() - wanted("balance_after")) / long,
        ]
        .map(f64::abs);
        let (tolerance, first) = if job.part.features.is_empty() {
            (WITHOUT_FEATURES, 0)
        } else {
            (WITH_FEATURES, 5)
        };
        for (figure, off) in off.into_iter().enumerate() {
            assert!(
                off <= tolerance,
                "part {number}, figure {figure}: off by {off:e}, {job:?}"
            );
            let worst = &mut worst[first + figure];
            if off > worst.0 {
                *worst = (off, number);
            }
        }
    }
    println!("before, after, offcut, balance before, after; worst and at which part: {worst:?}");
}
