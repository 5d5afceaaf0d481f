#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "steps of a test, all small and above zero"
)]

use super::super::{Closing, Stages, Stock, equal_last};
use super::*;

#[test]
fn the_coarse_step_keeps_to_the_budget_and_is_the_least() {
    for (stock, depth) in [
        (2000_u32, 200),
        (1800, 15),
        (400, 400),
        (7, 3),
        (20_000, 2000),
    ] {
        let places = |step: u32| stock.div_ceil(step);
        let pairs =
            |step: u32| u64::from(places(step)) * u64::from((depth / step).min(places(step)));
        let step = coarsen(stock, depth, 25_000);
        assert!(pairs(step) <= 25_000, "{stock} {depth} {step}");
        assert!(
            step == 1 || pairs(step - 1) > 25_000,
            "{stock} {depth} {step}"
        );
    }
}

#[test]
fn a_pass_is_left_even_without_a_budget() {
    assert_eq!(coarsen(2000, 50, 0), 50);
    assert_eq!(coarsen(20, 50, 0), 20);
    assert_eq!(coarsen(0, 50, 0), 1);
    assert_eq!(coarsen(9, 0, 0), 1);
}

const FEEDS: [f64; 12] = [
    0.05, 0.08, 0.1, 0.12, 0.15, 0.18, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5,
];

/// A job on a lathe with a dial of 0.01 mm on radius: times in minutes.
struct Turning {
    stock: u32,
    most_depth: u32,
    /// Going back and setting the dial.
    idle: f64,
    length: f64,
    diameter: f64,
    most_force: f64,
}

impl Turning {
    fn random(seed: u32) -> Self {
        // Shares spread evenly over the unit interval by multiples of irrational numbers.
        let share = |root: f64| (f64::from(seed) * root.sqrt()).fract();
        let between = |least: f64, most: f64, root: f64| least * (most / least).powf(share(root));
        Self {
            stock: between(300.0, 2400.0, 2.0) as u32,
            most_depth: between(60.0, 400.0, 3.0) as u32,
            idle: between(0.1, 0.8, 5.0),
            length: between(20.0, 200.0, 7.0),
            diameter: between(20.0, 120.0, 11.0),
            most_force: between(400.0, 3000.0, 13.0),
        }
    }

    /// Specific force 1700 N/mm² at 1 mm, exponent 0.25: of the usual size for steel, for this test alone.
    fn deepest_at(&self, feed: f64) -> f64 {
        self.most_force / (1700.0 * feed.powf(0.75))
    }

    /// The deepest pass with each feed, in steps.
    fn deepest(&self) -> Vec<u32> {
        let steps = FEEDS.map(|feed| (self.deepest_at(feed) * 100.0) as u32);
        steps.map(|depth| depth.min(self.most_depth)).to_vec()
    }

    /// The time of a pass with the coarsest feed that the force allows, at the speed of an economic life.
    fn cost(&self, from: u32, to: u32) -> Option<f64> {
        let depth = f64::from(from - to) / 100.0;
        let feed = FEEDS
            .into_iter()
            .rfind(|feed| depth <= self.deepest_at(*feed))?;
        let speed = 120.0 / (feed.powf(0.35) * depth.powf(0.15));
        let diameter = self.diameter + f64::from(from) / 50.0;
        let turns = 1000.0 * speed / (std::f64::consts::PI * diameter);
        Some(self.idle + self.length / (feed * turns))
    }

    fn last_cuts(&self) -> Vec<Closing> {
        let finish = |from, to| Some(1.5 * self.cost(from, to)? + f64::from(from - to) * 1e-3);
        equal_last(0, &[10, 15, 20, 25, 30], 2, finish)
    }

    fn best(&self, step: u32, stops: &[u32]) -> (Schedule, usize) {
        let closings = self.last_cuts();
        let stock = Stock {
            start: self.stock,
            end: 0,
            most_passes: 200,
            pins: vec![],
            step,
            stops: closings
                .iter()
                .map(|closing| closing.from)
                .chain(stops.iter().copied())
                .collect(),
        };
        let stages =
            Stages::new(&stock, |_| self.most_depth, |from, to| self.cost(from, to)).unwrap();
        (stages.best(&closings).unwrap(), stages.size())
    }
}

#[test]
fn ladders_stay_within_the_stock() {
    assert_eq!(ladders(&[10, 95], &[50, 0], 100), [10, 60, 95]);
    assert!(ladders(&[101], &[50], 100).is_empty());
}

/// What coarse depths cost against those of the dial, and what a second search mends. Shown with `--nocapture`.
#[test]
fn coarse_depths_cost_little_and_a_second_search_mends_them() {
    let (mut bare, mut coarse, mut mended) =
        (Losses::default(), Losses::default(), Losses::default());
    for seed in 1..=100 {
        let job = Turning::random(seed);
        let step = coarsen(job.stock, job.most_depth, 25_000);
        let fine = job.best(1, &[]).0.cost;
        bare.add(&job.best(step, &[]), fine);
        let ends: Vec<u32> = job.last_cuts().iter().map(|closing| closing.from).collect();
        let first = job.best(step, &ladders(&ends, &[job.most_depth], job.stock));
        coarse.add(&first, fine);
        let end = first.0.stops[first.0.count() - 2];
        let mut stops = near(&first.0, step);
        stops.extend(ladders(&[end], &job.deepest(), job.stock));
        mended.add(&job.best(u32::MAX, &stops), fine);
    }
    println!("multiples alone: {bare:?}\nwith ladders: {coarse:?}\nsecond search: {mended:?}");
    // Multiples alone may need a pass more, when the deepest pass is none of them: hence the ladders.
    assert!(0.05 < bare.worst && bare.worst < 0.15);
    assert!(coarse.worst < 0.015 && coarse.sum / 100.0 < 0.001);
    assert!(mended.worst < 0.006 && mended.sum / 100.0 < 0.0004);
}

/// How much dearer than with all depths of the dial, as a share; and how many passes were looked at.
#[derive(Debug, Default)]
struct Losses {
    worst: f64,
    sum: f64,
    size: usize,
}

impl Losses {
    fn add(&mut self, (schedule, size): &(Schedule, usize), fine: f64) {
        let loss = schedule.cost / fine - 1.0;
        assert!(-1e-9 <= loss, "cheaper than the best: {schedule:?}");
        self.worst = self.worst.max(loss);
        self.sum += loss;
        self.size = self.size.max(*size);
    }
}
