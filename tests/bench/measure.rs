//! How long one plan of each example job takes, how long it takes to find all that the part could become and what other
//! rows of passes would bring, and how a plan grows with its passes and with the machine's gears; by whatever clock the
//! place has.

use std::hint::black_box;

use skimwright::demo::demo_jobs;
use skimwright::job::{EdgeField, Field, Gears, HoldingField, Job, MachineField, SectionField};
use skimwright::plan::{compare, plan};
use skimwright::quantity::{Dimension, Entered, Typed, Unit, read};
use skimwright::receiver::becomes;

const ROUNDS: usize = 101;

/// What is measured: its name, how often in one round, and the call.
type Measured = (&'static str, u32, fn(&Job));

const MEASURED: [Measured; 3] = [
    ("one plan", 20, |job| {
        black_box(plan(black_box(job)));
    }),
    ("all that a part could become", 2, |job| {
        black_box(becomes(black_box(job)));
    }),
    ("a plan and all that it is compared with", 1, |job| {
        let plan = plan(black_box(job));
        black_box(compare(black_box(job), &plan));
    }),
];

/// Passes that a plan of the scaling has, about.
const PASSES: [u32; 6] = [1, 5, 20, 50, 100, 190];

/// Speeds and feeds that its machine has.
const GEARS: [(u32, u32); 3] = [(5, 2), (10, 10), (40, 25)];

/// Measures with a clock of microseconds; a line for each example job and each machine, measured as it is asked for.
pub(crate) fn lines<'a>(
    place: &'a str,
    now: &'a impl Fn() -> f64,
) -> impl Iterator<Item = String> + 'a {
    let of = move |(what, times, call): Measured| {
        let head = format!("{what}, {place}, median of {ROUNDS} rounds of {times}:");
        let measured = demo_jobs().map(move |job| line(&job, times, call, now));
        [head].into_iter().chain(measured)
    };
    let scaling =
        format!("one plan by passes and speeds times feeds, {place}, median of {ROUNDS} rounds:");
    let machines = |passes| GEARS.into_iter().map(move |gears| (passes, gears));
    MEASURED.into_iter().flat_map(of).chain([scaling]).chain(
        PASSES
            .into_iter()
            .flat_map(machines)
            .map(|(passes, gears)| scaled(passes, gears, now)),
    )
}

/// A plan of about so many roughing passes on a machine of so many gears and no other limit.
fn scaled(passes: u32, (speeds, feeds): (u32, u32), now: &impl Fn() -> f64) -> String {
    let mut job = Job::default();
    // 9 mm on radius less the two last cuts, in passes of a depth that a strong machine takes.
    put(&mut job, Field::WantedDiameter, "30 mm");
    put(&mut job, Field::HeadDiameter, "90 mm");
    put(
        &mut job,
        Field::RoughInfeed,
        &format!("{:.4} mm", 8.7 / f64::from(passes)),
    );
    put(&mut job, Field::Machine(MachineField::Power), "400 kW");
    put(&mut job, Field::Edge(EdgeField::LeastDepth), "0.01 mm");
    put(&mut job, Field::Edge(EdgeField::MostDepth), "10 mm");
    put(&mut job, Field::Holding(HoldingField::GripForce), "9000 kN");
    job.set_entry(
        Field::Section(0, SectionField::Diameter),
        read("48 mm", Dimension::Length, None).ok(),
    );
    job.shop.machine.speeds =
        Gears::Listed(steps(speeds, (40.0, 2000.0), Unit::RevolutionPerMinute));
    job.shop.machine.feeds =
        Gears::Listed(steps(feeds, (0.06, 0.25), Unit::MillimetrePerRevolution));
    let made = plan(&job).stock_off.map_or(0, |stock| stock.passes.len());
    let line = line(
        &job,
        1,
        |job| {
            black_box(plan(black_box(job)));
        },
        now,
    );
    format!("{line}{made} passes, {} pairs", speeds * feeds)
}

fn put(job: &mut Job, field: Field, text: &str) {
    let dimension = field.bounds().map(|bounds| bounds.dimension);
    let entry = dimension.and_then(|dimension| read(text, dimension, None).ok());
    assert!(job.set_entry(field, entry), "{field} takes {text}");
}

/// So many values in even ratios.
fn steps<Q: Typed>(count: u32, (low, high): (f64, f64), unit: Unit) -> Vec<Entered<Q>> {
    let at = |number: u32| low * (high / low).powf(f64::from(number) / f64::from(count.max(2) - 1));
    let entered = |value: f64| Entered::read(&format!("{value:.4}"), unit).ok();
    (0..count)
        .filter_map(|number| entered(at(number)))
        .collect()
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
