//! How long one plan of each example job takes, and how long it takes to find all that the part could become, by
//! whatever clock the place has.

use std::hint::black_box;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::plan::plan;
use skimwright::receiver::becomes;

const ROUNDS: usize = 101;

/// What is measured: its name, how often in one round, and the call.
type Measured = (&'static str, u32, fn(&Job));

const MEASURED: [Measured; 2] = [
    ("one plan", 20, |job| {
        black_box(plan(black_box(job)));
    }),
    ("all that a part could become", 2, |job| {
        black_box(becomes(black_box(job)));
    }),
];

/// Measures with a clock of microseconds; a line for each example job.
pub(crate) fn lines(place: &str, now: impl Fn() -> f64) -> Vec<String> {
    let of = |(what, times, call): Measured| {
        let head = format!("{what}, {place}, median of {ROUNDS} rounds of {times}:");
        let measured = demo_jobs().map(|job| line(&job, times, call, &now));
        [head].into_iter().chain(measured)
    };
    MEASURED.into_iter().flat_map(of).collect()
}

fn line(job: &Job, times: u32, call: fn(&Job), now: impl Fn() -> f64) -> String {
    let mut rounds: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = now();
            for _ in 0..times {
                call(job);
            }
            (now() - start) / f64::from(times)
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
}
