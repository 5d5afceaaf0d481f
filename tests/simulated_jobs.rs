//! What comes of many jobs on reckoned lathes, by what is advised and by two plain rules.
//!
//! `cargo xtask bench` prints the same for a hundred thousand jobs of each sort.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/simulated.rs"]
mod simulated;

use simulated::{Bench, Gauge, Sort, Tally, Width};

const JOBS: u64 = 3000;

fn run(width: Width, gauge: Gauge, polished: bool) -> [Tally; 3] {
    let bench = Bench::new(Sort {
        width,
        gauge,
        polished,
    });
    let mut tallies = [Tally::default(); 3];
    for seed in 0..JOBS {
        bench.run(seed.wrapping_mul(0x2545_f491_4f6c_dd1d), &mut tallies);
    }
    tallies
}

/// Fewer are scrapped than by either rule, far fewer where nothing is polished, and more come into tolerance, at every width that the instrument can
/// tell.
#[test]
fn advice_scraps_less_and_finishes_more_than_plain_rules() {
    for (width, gauge, polished) in [
        (Width::H6, Gauge::Good, true),
        (Width::H9, Gauge::Good, false),
        (Width::H9, Gauge::Good, true),
        (Width::H9, Gauge::Poor, false),
        (Width::Tenth, Gauge::Good, false),
        (Width::Tenth, Gauge::Poor, false),
    ] {
        let [advised, all_at_once, halves] = run(width, gauge, polished);
        assert_eq!(advised.endless, 0);
        assert!(
            advised.scrap() < all_at_once.scrap() / 10.0,
            "{width:?} {advised:?} {halves:?}"
        );
        // Polishing is slow and watched by both, so that the rule scraps less with it.
        let of_halves = if polished { 1.0 } else { 0.5 };
        assert!(
            advised.scrap() < halves.scrap() * of_halves,
            "{width:?} {advised:?} {halves:?}"
        );
        assert!(
            advised.in_tolerance() > all_at_once.in_tolerance(),
            "{width:?}"
        );
        assert!(
            advised.in_tolerance() > halves.in_tolerance(),
            "{width:?} {advised:?} {halves:?}"
        );
        // One more cut than the rule of halves is the dearest that it may be.
        assert!(advised.mean(advised.cuts) < halves.mean(halves.cuts) + 1.0);
        // An honest reading is seldom doubted.
        assert!(advised.mean(advised.doubts) < 0.1);
    }
}

/// Where the instrument is too coarse for the tolerance, the part is left too large rather than scrapped.
#[test]
fn a_coarse_instrument_leaves_the_part_too_large() {
    for polished in [false, true] {
        let [advised, all_at_once, halves] = run(Width::H6, Gauge::Poor, polished);
        assert!(advised.scrap() < 0.02);
        assert!(advised.scrap() < halves.scrap() && advised.scrap() < all_at_once.scrap());
    }
}
