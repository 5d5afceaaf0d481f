//! Prints what comes of many simulated jobs, by what is advised and by two plain rules, and how long advice takes.
//!
//! So many jobs as the first argument that is a number says, 100 000 without one.
#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a benchmark is there to print its figures, and may stop at the first surprise"
)]

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
#[path = "../support/simulated.rs"]
mod simulated;

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    use simulated::{Bench, Gauge, Policy, Sort, Tally, Width};

    println!("advice on a record of so many events, microseconds each:");
    for events in [10, 100, 1000, 5000] {
        println!("{events:6} {:9.1}", simulated::microseconds(events));
    }
    let jobs = std::env::args()
        .find_map(|it| it.parse().ok())
        .unwrap_or(100_000_u64);
    println!("{jobs} jobs each; per cent; cuts and readings after roughing");
    println!(
        "tolerance gauge polish  policy      scrapped  in tol.  over size   cuts  readings  doubts endless"
    );
    for width in [Width::H6, Width::H9, Width::Tenth] {
        for gauge in [Gauge::Good, Gauge::Poor] {
            for polished in [false, true] {
                let bench = Bench::new(Sort {
                    width,
                    gauge,
                    polished,
                });
                let mut tallies = [Tally::default(); 3];
                for seed in 0..jobs {
                    bench.run(seed.wrapping_mul(0x2545_f491_4f6c_dd1d), &mut tallies);
                }
                for (policy, tally) in Policy::ALL.into_iter().zip(&tallies) {
                    println!(
                        "{:9} {:5} {:6}  {:11} {:8.3} {:8.2} {:9.2} {:7.2} {:8.2} {:8.3} {:5}",
                        format!("{width:?}"),
                        format!("{gauge:?}"),
                        polished,
                        format!("{policy:?}"),
                        tally.scrap() * 100.0,
                        tally.in_tolerance() * 100.0,
                        tally.left_over() * 100.0,
                        tally.mean(tally.cuts),
                        tally.mean(tally.readings),
                        tally.mean(tally.doubts),
                        tally.endless,
                    );
                }
            }
        }
    }
}
