//! Solves the published multi-pass turning problem and prints what came of it and how long it took, as JSON.
//!
//! `tests/outside/multipass.py` runs it, and sets a general-purpose optimiser beside it.
#![allow(
    clippy::print_stdout,
    reason = "a benchmark is there to print its figures"
)]

#[path = "../support/multipass.rs"]
mod multipass;
#[path = "../support/multipass_search.rs"]
mod multipass_search;

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    use multipass_search::Objective::{PassByPass, Weighted};
    use std::hint::black_box;

    const ROUNDS: usize = 15;
    let mut rows = Vec::new();
    for total in [6.0, 8.0, 10.0] {
        for (objective, theta) in [(PassByPass, None), (Weighted(0.5), Some(0.5))] {
            let mut times: Vec<f64> = Vec::new();
            let mut found = None;
            for _ in 0..ROUNDS {
                let start = std::time::Instant::now();
                found = black_box(multipass_search::best(black_box(total), objective));
                times.push(start.elapsed().as_secs_f64());
            }
            times.sort_by(f64::total_cmp);
            rows.extend(found.map(|found| {
                serde_json::json!({
                    "total": total,
                    "theta": theta,
                    "roughing_passes": found.count,
                    "rough": [found.rough.speed, found.rough.feed, found.rough.depth],
                    "finish": [found.finish.speed, found.finish.feed, found.finish.depth],
                    "cost": found.cost,
                    "seconds": times.get(ROUNDS / 2),
                })
            }));
        }
    }
    println!("{}", serde_json::Value::Array(rows));
}
