//! How long one plan of each example job takes, by whatever clock the place has.

use std::hint::black_box;

use skimwright::demo::demo_jobs;
use skimwright::plan::plan;

const ROUNDS: usize = 301;
const PLANS_A_ROUND: u32 = 50;

/// Measures with a clock of microseconds; a line for each example job.
pub(crate) fn lines(place: &str, now: impl Fn() -> f64) -> Vec<String> {
    let head = format!("one plan, {place}, median of {ROUNDS} rounds of {PLANS_A_ROUND}:");
    let measured = demo_jobs().map(|job| {
        let mut rounds: Vec<f64> = (0..ROUNDS)
            .map(|_| {
                let start = now();
                for _ in 0..PLANS_A_ROUND {
                    black_box(plan(black_box(&job)));
                }
                (now() - start) / f64::from(PLANS_A_ROUND)
            })
            .collect();
        rounds.sort_by(f64::total_cmp);
        let at = |share: usize| {
            rounds
                .get(ROUNDS * share / 100)
                .copied()
                .unwrap_or_default()
        };
        format!(
            "{:8.1} µs  ({:.1} to {:.1}, 5 to 95 per cent)  {}",
            at(50),
            at(5),
            at(95),
            job.title
        )
    });
    [head].into_iter().chain(measured).collect()
}
