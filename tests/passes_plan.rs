//! The plan of the passes from outside: what every row of passes keeps to, and that none is better.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::float_cmp,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/passes.rs"]
mod passes;
#[path = "support/planned.rs"]
mod planned;
#[path = "support/sound.rs"]
mod sound;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use skimwright::cutting::{Limit, PassKind};
use skimwright::job::{
    DialReads, Field, Gears, HoldingField, Job, MachineField, Support, Tolerance,
};
use skimwright::plan::{Code, Compared, compare, plan};
use skimwright::quantity::{Length, Unit};

use passes::{cuts, edges, loads, time};
use planned::planned;
use sound::{listed, mm, set, sound, with};

const MACHINE: fn(MachineField) -> Field = Field::Machine;

/// A whole number from 0 up, for choices by chance.
fn chance(runner: &mut TestRunner, below: usize) -> usize {
    (0..below).new_tree(runner).unwrap().current()
}

/// The fastest setting of one lathe or another: speeds and feeds as a small lathe has them.
const SPEEDS: [&str; 8] = [
    "70 rpm", "115 rpm", "190 rpm", "310 rpm", "500 rpm", "800 rpm", "1250 rpm", "2000 rpm",
];
const FEEDS: [&str; 6] = [
    "0.05 mm/rev",
    "0.08 mm/rev",
    "0.1 mm/rev",
    "0.14 mm/rev",
    "0.2 mm/rev",
    "0.25 mm/rev",
];

/// A job of a workshop, and by chance a lathe with lists, a dial, more power, another way of holding, a wide tolerance.
fn workshop(runner: &mut TestRunner) -> Job {
    let mut job = planned()
        .new_tree(runner)
        .unwrap()
        .current()
        .job(Unit::Millimetre, 1);
    if chance(runner, 2) == 0 {
        job.shop.machine.speeds = listed(&SPEEDS);
    }
    if chance(runner, 2) == 0 {
        job.shop.machine.feeds = listed(&FEEDS);
    }
    match chance(runner, 3) {
        0 => set(&mut job, MACHINE(MachineField::Graduation), "0.05"),
        1 => {
            set(&mut job, MACHINE(MachineField::Graduation), "0.02");
            job.shop.machine.dial_reads = DialReads::Radius;
        }
        _ => {}
    }
    if chance(runner, 2) == 0 {
        set(&mut job, MACHINE(MachineField::Power), "1.1 kW");
    }
    if chance(runner, 2) == 0 {
        set(&mut job, Field::Holding(HoldingField::GripForce), "8 kN");
    }
    if chance(runner, 2) == 0 {
        job.wanted.tolerance = Tolerance::Limits {
            upper: mm("0.05"),
            lower: mm("-0.05"),
        };
    }
    if chance(runner, 3) == 0 {
        let support = Support::ALL[chance(runner, Support::ALL.len())];
        job.setup.support = Some(support);
    }
    job
}

#[test]
fn every_pass_keeps_to_its_limits_its_dial_and_its_lists() {
    let mut runner = TestRunner::deterministic();
    let (mut planned, mut passes, mut on_dial, mut from_list) = (0, 0, 0, 0);
    for number in 0..300 {
        let job = workshop(&mut runner);
        let plan = plan(&job);
        let Some(stock) = &plan.stock_off else {
            continue;
        };
        planned += 1;
        let gives_way = plan
            .findings
            .iter()
            .any(|it| matches!(it.code, Code::GivesWay { .. }));
        let cuts = cuts(stock);
        passes += cuts.len();
        let mut radius = plan.limits.unwrap().aim.to_mm() / 2.0 + stock.most.value.to_mm() / 2.0;
        for (place, pass) in cuts.iter().enumerate() {
            for load in loads(pass) {
                // Where work and lathe give way too much even in the lightest cut, the plan is made all the same.
                let excused = load.limit == Limit::Deflection && gives_way;
                assert!(
                    load.share <= 1.0 + 1e-9 || excused,
                    "job {number}, pass {place}: {load:?}"
                );
            }
            // Infeeds add up, each from where the one before left off.
            radius -= pass.infeed.to_mm();
            let after = pass.diameter_after.to_mm() / 2.0;
            assert!((radius - after).abs() < 1e-9, "job {number}, pass {place}");
            assert!(pass.infeed > Length::ZERO);
            // A speed and a feed that the lathe has.
            if let Gears::Listed(list) = &job.shop.machine.speeds {
                from_list += 1;
                let speed = pass.spindle_speed;
                assert!(list.iter().any(|one| one.value() == speed), "{speed:?}");
            }
            if let Gears::Listed(list) = &job.shop.machine.feeds {
                let feed = pass.feed;
                assert!(list.iter().any(|one| one.value() == feed), "{feed:?}");
            }
            // Whole divisions of the dial, but for what the stock stands above them.
            let rough = cuts[0].kind == PassKind::Rough;
            if let (Some(marked), true) = (&job.shop.machine.graduation, 0 < place && rough) {
                let division = match job.shop.machine.dial_reads {
                    DialReads::Diameter => marked.value().to_mm() / 2.0,
                    DialReads::Radius => marked.value().to_mm(),
                };
                let whole = pass.infeed.to_mm() / division;
                assert!(
                    (whole - whole.round()).abs() < 1e-6,
                    "job {number}: {whole}"
                );
                on_dial += 1;
            }
        }
        if !cuts.is_empty() {
            let aimed = plan.limits.unwrap().aim + stock.polishing;
            assert!((radius * 2.0 - aimed.to_mm()).abs() < 1e-9);
            // The two last cuts are equal, so that the first shows what the second will do.
            let [.., one, two] = cuts.as_slice() else {
                panic!("job {number}: {} cuts", cuts.len());
            };
            assert_eq!((one.kind, two.kind), (PassKind::Last, PassKind::Last));
            assert!(
                (one.infeed - two.infeed).abs().to_mm() < 1e-9,
                "job {number}"
            );
            assert_eq!(
                cuts.iter().filter(|it| it.kind == PassKind::Last).count(),
                2
            );
        }
    }
    // Some tools do not cut some materials, and some stock has nothing to turn.
    assert!(
        100 <= planned && 500 <= passes && 100 <= on_dial && 200 <= from_list,
        "{planned} jobs, {passes} passes, {on_dial} on a dial, {from_list} from a list"
    );
}

/// One change of a job.
type Widen = fn(&mut Job);

/// More of anything never makes the passes slower: the row that was best before can still be cut.
#[test]
fn widening_a_limit_never_costs_time() {
    let mut runner = TestRunner::deterministic();
    let (mut compared, mut faster) = (0, 0);
    for number in 0..120 {
        // Steel or brass turned down by 2 to 5 mm on a lathe that its limits hold back, coarse enough a dial that every
        // row is looked at.
        let mut job = with(
            sound(),
            &[
                (MACHINE(MachineField::Graduation), "0.05"),
                (
                    MACHINE(MachineField::Power),
                    ["120 W", "250 W", "600 W"][chance(&mut runner, 3)],
                ),
                (
                    Field::Holding(HoldingField::GripForce),
                    ["1500", "3000", "9000"][chance(&mut runner, 3)],
                ),
                (Field::Holding(HoldingField::GripLength), "20"),
                (
                    Field::RoughInfeed,
                    ["0.3", "0.5", "0.7"][chance(&mut runner, 3)],
                ),
                (
                    Field::WantedDiameter,
                    ["17.8", "17", "16", "15.2"][chance(&mut runner, 4)],
                ),
                (Field::Approach, ["1", "2", "3"][chance(&mut runner, 3)]),
            ],
        );
        job.shop.machine.dial_reads = DialReads::Radius;
        job.wanted.tolerance = Tolerance::Limits {
            upper: mm("0.03"),
            lower: mm("-0.03"),
        };
        let some = |runner: &mut TestRunner, list: &[&'static str]| {
            let drop = chance(runner, list.len() - 1);
            let kept = list.iter().enumerate().filter(|(place, _)| *place != drop);
            kept.map(|(_, text)| *text).collect::<Vec<_>>()
        };
        job.shop.machine.speeds = listed(&some(&mut runner, &SPEEDS));
        job.shop.machine.feeds = listed(&some(&mut runner, &FEEDS));
        let Some(before) = plan(&job).stock_off else {
            continue;
        };
        let wider_by: [(&str, Widen); 8] = [
            ("power", |job| {
                set(job, MACHINE(MachineField::Power), "1.5 kW");
            }),
            ("grip", |job| {
                set(job, Field::Holding(HoldingField::GripForce), "12000");
            }),
            ("infeed", |job| set(job, Field::RoughInfeed, "0.9")),
            ("speeds", |job| job.shop.machine.speeds = listed(&SPEEDS)),
            ("feeds", |job| job.shop.machine.feeds = listed(&FEEDS)),
            ("top speed", |job| set(job, Field::TopSpeed, "2500")),
            ("cutting speed", |job| {
                let now = plan(job).stock_off.unwrap().cutting_speed.to_m_per_min() * 1.1;
                set(job, Field::CuttingSpeed, &format!("{now:.6}"));
            }),
            ("stiffness", |job| {
                for field in [
                    MachineField::HeadStiffness,
                    MachineField::TailStiffness,
                    MachineField::PostStiffness,
                ] {
                    set(job, MACHINE(field), "500 N/µm");
                }
            }),
        ];
        for (what, widen) in wider_by {
            let mut wider = job.clone();
            widen(&mut wider);
            let after = plan(&wider).stock_off;
            let after = after.unwrap_or_else(|| panic!("job {number}: none with more {what}"));
            // Past one edge, wear counts too, and least time is no longer all that is asked.
            if 1.0 < edges(&before) || 1.0 < edges(&after) {
                continue;
            }
            let (before, after) = (time(&before), time(&after));
            assert!(
                // Rows are evened where that costs no more than a hundredth.
                after <= before * 1.01,
                "job {number}, more {what}: {before} s, then {after} s"
            );
            compared += 1;
            faster += usize::from(after < before - 1e-6);
        }
    }
    assert!(
        400 <= compared && 60 <= faster,
        "{compared} compared, {faster} faster"
    );
}

/// What the comparison shows of other numbers of passes and of limits is not better than the plan, and finite.
#[test]
fn no_number_of_passes_is_better_than_the_one_planned() {
    let mut runner = TestRunner::deterministic();
    let (mut seen, mut savings) = (0, 0);
    for number in 0..40 {
        let job = workshop(&mut runner);
        let found = plan(&job);
        let compared = compare(&job, &found);
        let Some(stock) = found.stock_off.filter(|stock| !cuts(stock).is_empty()) else {
            assert_eq!(compared, Compared::default(), "job {number} has no passes");
            continue;
        };
        for saving in &compared.savings {
            let saved = saving.time.to_seconds();
            assert!(
                0.5 < saved && saved < time(&stock),
                "job {number}: {saving:?}"
            );
            savings += 1;
        }
        // Past one edge, wear counts too.
        if 1.0 < edges(&stock) {
            continue;
        }
        let planned = compared.counts.iter().find(|it| it.planned);
        let Some(planned) = planned else {
            panic!("job {number}: {:?}", compared.counts);
        };
        assert!(
            (planned.time.to_seconds() - time(&stock)).abs() < 1e-6 * time(&stock),
            "job {number}: {planned:?}, but the plan takes {} s",
            time(&stock)
        );
        for other in &compared.counts {
            assert!(
                planned.time.to_seconds() <= other.time.to_seconds() * 1.01,
                "job {number}: {other:?}"
            );
            seen += 1;
        }
    }
    assert!(
        40 <= seen && 10 <= savings,
        "{seen} numbers of passes, {savings} savings"
    );
}
