//! Small problems of passes searched through whole: no row is faster or cheaper than the one planned.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::float_cmp,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;
#[path = "support/passes.rs"]
mod passes;
#[path = "support/sound.rs"]
mod sound;

use std::f64::consts::PI;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use skimwright::cutting::{Limit, Pass, PassKind, StockOff};
use skimwright::job::{
    Aim, DialReads, EdgeField, Field, Gears, HoldingField, Job, MachineField, Pin, PinField,
    RateField, Tolerance,
};
use skimwright::plan::plan;
use skimwright::quantity::{Entry, Unit};

use passes::{cuts, edges, loads, time};
use sound::{cylinder, listed, mm, set, sound, taper, with};

const MACHINE: fn(MachineField) -> Field = Field::Machine;

/// A whole number from 0 up, for choices by chance.
fn chance(runner: &mut TestRunner, below: usize) -> usize {
    (0..below).new_tree(runner).unwrap().current()
}

/// A stock of so many tenths of a millimetre on radius, of which the two last cuts take one each, with three feeds, four
/// speeds and a weak motor.
fn small(tenths: u32, power: &str, set_time: &str) -> Job {
    let wanted = format!("{:.1}", 20.0 - 0.2 * f64::from(tenths));
    let mut job = with(
        sound(),
        &[
            (Field::WantedDiameter, &wanted),
            (Field::ShoulderRadius, "0"),
            (Field::LastCut, "0.2"),
            (Field::PolishingStock, "0"),
            (Field::RoughInfeed, "0.4"),
            (Field::SetTime, set_time),
            (MACHINE(MachineField::Graduation), "0.1"),
            (MACHINE(MachineField::Power), power),
            (MACHINE(MachineField::Efficiency), "100 %"),
            (Field::Holding(HoldingField::GripForce), "6 kN"),
            (Field::Edge(EdgeField::LeastFeed), "0.05"),
        ],
    );
    job.shop.machine.dial_reads = DialReads::Radius;
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0.03"),
        lower: mm("-0.03"),
    };
    job.shop.machine.feeds = listed(&["0.06 mm/rev", "0.1 mm/rev", "0.16 mm/rev"]);
    job.shop.machine.speeds = listed(&["300 rpm", "520 rpm", "900 rpm", "1550 rpm"]);
    // A cone, so that rows differ in the way to go as well.
    job.part.sections = vec![taper("20", "18.4", "40"), cylinder("17", "40")];
    job
}

/// A pass of a small problem, from one number of tenths left to another, forced upon the plan at every setting; the best
/// setting that keeps to all limits, in seconds.
fn forced(job: &Job, zero: f64, depth: u32, rough: u32) -> Vec<((u32, u32), f64)> {
    let mut best: Vec<((u32, u32), f64)> = Vec::new();
    let (Gears::Listed(feeds), Gears::Listed(speeds)) =
        (&job.shop.machine.feeds, &job.shop.machine.speeds)
    else {
        panic!("lists");
    };
    let number = |value: f64, unit| Entry::decimal(value, 6, unit).unwrap();
    for offset in 0..depth {
        // Passes of this depth that follow one another, from the two last cuts up.
        let stretches: Vec<(u32, u32)> = (0..rough)
            .map(|place| 2 + offset + place * depth)
            .take_while(|to| to + depth <= rough + 2)
            .map(|to| (to + depth, to))
            .collect();
        if stretches.is_empty() {
            continue;
        }
        for feed in feeds {
            for speed in speeds {
                let mut tried = job.clone();
                tried.setup.pins = stretches
                    .iter()
                    .map(|(_, to)| {
                        Pin {
                            after: mm("1"),
                            infeed: mm("1"),
                            speed: Some(speed.clone()),
                            feed: Some(feed.clone()),
                        }
                        .placed(*to, zero)
                    })
                    .collect();
                for index in 0..u8::try_from(stretches.len()).unwrap() {
                    let infeed = number(f64::from(depth) / 10.0, Unit::Millimetre);
                    assert!(tried.set_entry(Field::Pin(index, PinField::Infeed), Some(infeed)));
                }
                let stock = plan(&tried)
                    .stock_off
                    .expect("pinned passes are planned round");
                for (index, stretch) in (0_u8..).zip(&stretches) {
                    let pinned = |pass: &&Pass| pass.cut.as_ref().unwrap().pinned == Some(index);
                    let pass = *cuts(&stock)
                        .iter()
                        .find(|it| pinned(it))
                        .expect("pinned pass");
                    assert!((pass.infeed.to_mm() - f64::from(depth) / 10.0).abs() < 1e-9);
                    assert_eq!(
                        (pass.feed, pass.spindle_speed),
                        (feed.value(), speed.value())
                    );
                    // What can be said without the plan is said without it: time, cutting speed, power.
                    let (f, n) = (feed.value().to_mm_per_rev(), speed.value().to_per_min());
                    let path = pass.travel.to_mm() + 2.0;
                    let feeding = 60.0 * path / (f * n);
                    assert!((pass.feeding.to_seconds() - feeding).abs() < 1e-9);
                    let v = PI * (pass.diameter_after + pass.off_diameter).to_mm() * n / 1000.0;
                    let watts = pass.cut.as_ref().unwrap().force.high.to_newtons() * v / 60.0;
                    let power = job.shop.machine.power.as_ref().unwrap().value().to_watts();
                    let share = |limit| {
                        loads(pass)
                            .iter()
                            .find(|it| it.limit == limit)
                            .unwrap()
                            .share
                    };
                    assert!((share(Limit::Power) - watts / power).abs() < 1e-9);
                    assert!(
                        (share(Limit::CuttingSpeed) - v / stock.cutting_speed.to_m_per_min()).abs()
                            < 1e-9
                    );
                    if loads(pass).iter().any(|load| 1.0 + 1e-9 < load.share) {
                        continue;
                    }
                    let time = pass.time.to_seconds();
                    match best.iter_mut().find(|(known, _)| known == stretch) {
                        Some((_, known)) => *known = known.min(time),
                        None => best.push((*stretch, time)),
                    }
                }
            }
        }
    }
    best
}

trait Placed {
    /// The same pin after which so many tenths on radius are left above a radius.
    fn placed(self, tenths: u32, zero: f64) -> Self;
}

impl Placed for Pin {
    fn placed(self, tenths: u32, zero: f64) -> Self {
        let after = (zero + f64::from(tenths) / 10.0) * 2.0;
        Self {
            after: mm(&format!("{after:.6}")),
            ..self
        }
    }
}

/// The least time of all rows of passes that lead from so many tenths to the two last cuts, one by one.
fn least(from: u32, passes: &[((u32, u32), f64)]) -> f64 {
    if from == 2 {
        return 0.0;
    }
    let rows = passes.iter().filter(|((start, _), _)| *start == from);
    rows.map(|((_, to), time)| time + least(*to, passes))
        .fold(f64::INFINITY, f64::min)
}

/// Every row of passes, every feed and every speed, one after the other.
#[test]
fn no_row_of_a_small_problem_is_faster_than_the_one_planned() {
    let mut power_held = 0;
    for (tenths, power, set_time) in [
        (12, "60 W", "13"),
        (10, "35 W", "0"),
        (11, "100 W", "3"),
        (8, "25 W", "40"),
    ] {
        let job = small(tenths, power, set_time);
        let found = plan(&job);
        let stock = found.stock_off.expect("passes");
        let zero = found.limits.unwrap().aim.to_mm() / 2.0;
        let rough = tenths - 2;
        let passes: Vec<_> = (1..=4)
            .flat_map(|depth| forced(&job, zero, depth, rough))
            .collect();
        let brute = least(tenths, &passes);
        let planned: f64 = cuts(&stock)
            .iter()
            .filter(|pass| pass.kind == PassKind::Rough)
            .map(|pass| pass.time.to_seconds())
            .sum();
        assert!(brute.is_finite(), "{tenths} tenths");
        assert!(
            // An even row is taken where it costs no more than a hundredth.
            brute - 1e-9 < planned && planned <= brute * 1.01,
            "{tenths} tenths at {power}: {planned} s, brute force {brute} s"
        );
        let by = |pass: &&&Pass| {
            let held = pass.cut.as_ref().unwrap().held_by;
            [held.depth, held.feed, held.speed].contains(&Some(Limit::Power))
        };
        power_held += cuts(&stock).iter().filter(by).count();
    }
    assert!(0 < power_held, "no motor was too weak for anything");
}

#[test]
fn least_cost_never_costs_more_than_least_time() {
    let mut runner = TestRunner::deterministic();
    let (mut compared, mut cheaper) = (0, 0);
    for number in 0..60 {
        let mut job = small(12, "1 kW", "13");
        // Shops with cheap and dear hours, edges that last and edges that do not.
        let per_hour = [5.0, 20.0, 60.0, 120.0][chance(&mut runner, 4)];
        let price = [2.0, 12.0, 40.0][chance(&mut runner, 3)];
        set(
            &mut job,
            Field::Rate(RateField::PerHour),
            &per_hour.to_string(),
        );
        set(&mut job, Field::Edge(EdgeField::Price), &price.to_string());
        set(&mut job, Field::Edge(EdgeField::Edges), "1");
        // High-speed steel wears with the eighth power of the speed.
        job.shop.tool = skimwright::tables::ToolKind::HighSpeedSteel;
        let speed = ["35", "45", "60", "80"][chance(&mut runner, 4)];
        set(&mut job, Field::CuttingSpeed, speed);
        if chance(&mut runner, 2) == 0 {
            job.shop.machine.speeds = Gears::Stepless {
                from: None,
                to: None,
            };
        }
        let of = |aim| {
            let mut job = job.clone();
            job.shop.aim = aim;
            plan(&job).stock_off
        };
        let (Some(fast), Some(cheap)) = (of(Aim::LeastTime), of(Aim::LeastCost)) else {
            continue;
        };
        // An edge costs its price and the 0.7 min in which it is changed.
        let cost = |stock: &StockOff| {
            per_hour / 3600.0 * time(stock) + (price + per_hour / 3600.0 * 42.0) * edges(stock)
        };
        let (fast_cost, cheap_cost) = (cost(&fast), cost(&cheap));
        assert!(
            cheap_cost <= fast_cost * (1.0 + 1e-9),
            "job {number}: {cheap_cost} and {fast_cost}"
        );
        // Where wear already counts because one edge does not last, least time is not the least.
        assert!(
            time(&fast) <= time(&cheap) + 1e-9 || 1.0 < edges(&fast),
            "job {number}"
        );
        compared += 1;
        cheaper += usize::from(cheap_cost < fast_cost * (1.0 - 1e-6));
    }
    assert!(
        40 <= compared && 10 <= cheaper,
        "{compared} compared, {cheaper} cheaper"
    );
}
