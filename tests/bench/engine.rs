//! Prints how long the engine takes for schedules of 1 to 200 passes with 10 to 1000 pairs of feed and speed.
//!
//! Two thousand steps come off. Every pass from one place to another is given its own feed and speed, as on a lathe
//! where the diameter changes what a spindle speed cuts.
#![allow(
    clippy::print_stdout,
    clippy::expect_used,
    reason = "a benchmark is there to print its figures, and may stop at the first surprise"
)]

#[path = "../support/multipass.rs"]
mod multipass;

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    timed::print();
}

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
mod timed {
    use std::hint::black_box;
    use std::time::Instant;

    use skimwright::cutting::engine::{
        Choices, Chooser, Closing, Schedule, Stages, Stock, Window, coarsen,
    };

    use super::multipass::{Charge, MultiPass, Multipass};

    const STEPS: u32 = 2000;
    const BUDGET: u32 = 25_000;
    const PASSES: [u32; 8] = [1, 2, 5, 10, 20, 50, 100, 200];
    /// Feeds and speeds.
    const OFFERED: [(u32, u32); 5] = [(2, 5), (5, 6), (10, 10), (15, 20), (25, 40)];
    const ROUNDS: usize = 15;
    const TO_THE_END: Closing = Closing {
        from: 0,
        cuts: 0,
        cost: 0.0,
    };

    pub(super) fn print() {
        println!(
            "milliseconds, median of {ROUNDS}; {STEPS} steps in all, coarsened to {BUDGET} places × depths"
        );
        println!(
            "passes  step  looked at |  feed × speed pairs: 10, 30, 100, 300, 1000 |  search alone  counts ± 5"
        );
        for passes in PASSES {
            println!("{}", line(passes));
        }
    }

    fn line(passes: u32) -> String {
        let deepest = STEPS / passes;
        let step = coarsen(STEPS, deepest, BUDGET);
        let timed = OFFERED.map(|(feeds, speeds)| median(|| solve(passes, step, feeds, speeds)));
        let text: Vec<String> = timed
            .iter()
            .map(|(time, _)| format!("{time:7.2}"))
            .collect();
        let [.., (_, (stages, schedule))] = timed;
        let count = schedule.count();
        let (search, _) = median(|| stages.best(&[TO_THE_END]));
        let counts = count.saturating_sub(5)..=count + 5;
        let (chart, _) = median(|| stages.by_count(&[TO_THE_END], counts.clone()));
        let size = stages.size();
        format!(
            "{count:6}  {step:4}  {size:9} | {} | {search:7.2} {chart:7.2}",
            text.join(" ")
        )
    }

    /// From the feeds and speeds to the schedule. The deepest pass is 2.9 mm whatever its steps, so that the limits bite.
    fn solve(passes: u32, step: u32, feeds: u32, speeds: u32) -> (Stages, Schedule) {
        let law = Multipass {
            charge: Charge::PassByPass,
        };
        let list = |least: f64, most: f64, count: u32| {
            let part = |number: u32| f64::from(number) / f64::from(count - 1);
            Choices::list((0..count).map(|number| least * (most / least).powf(part(number))))
        };
        let feeds = list(0.05, 0.9, feeds).expect("feeds above zero");
        let speeds = list(20.0, 500.0, speeds).expect("speeds above zero");
        let chooser = Chooser::new(&law, &feeds, &speeds);
        let deepest = STEPS / passes;
        let lives = Window {
            least: 5.0,
            most: 1e5,
        };
        let pass = |depth: u32| {
            let depth = 2.9 * f64::from(depth) / f64::from(deepest);
            MultiPass::new(depth, lives, Window::ALL, Window::ALL)
        };
        let by_depth: Vec<MultiPass> = (0..=deepest).map(pass).collect();
        // A pass by itself costs 0.2 besides.
        let cost = |from: u32, to: u32| {
            let pass = by_depth.get((from - to) as usize)?;
            Some(0.2 + chooser.best(pass)?.cost)
        };
        let stock = Stock {
            start: STEPS,
            end: 0,
            most_passes: 250,
            pins: vec![],
            step,
            stops: (0..passes).map(|pass| pass * deepest).collect(),
        };
        let stages = Stages::new(&stock, |_| deepest, cost).expect("no pins");
        let best = stages.best(&[TO_THE_END]).expect("some pass is allowed");
        (stages, best)
    }

    fn median<T>(mut call: impl FnMut() -> T) -> (f64, T) {
        let mut times: Vec<f64> = Vec::new();
        let mut result = call();
        for _ in 0..ROUNDS {
            let start = Instant::now();
            result = black_box(call());
            times.push(start.elapsed().as_secs_f64() * 1e3);
        }
        times.sort_by(f64::total_cmp);
        (times.get(ROUNDS / 2).copied().unwrap_or_default(), result)
    }
}
