//! What a part could become against a search that tries everything: each standard shank, each receiver, each length
//! from the standard one downwards, each with the whole plan.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/parts.rs"]
mod parts;
#[path = "support/sound.rs"]
mod sound;

use std::collections::BTreeMap;

use parts::workshop_job;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use skimwright::demo::demo_jobs;
use skimwright::job::{Duty, Field, Gears, Job, Machine, Receiver, Shop, Tolerance};
use skimwright::link::encode;
use skimwright::plan::{Code, Finding, Level, Plan, plan};
use skimwright::quantity::{Entered, Entry, Length, Unit};
use skimwright::receiver::{Becomes, becomes};
use skimwright::tables::{
    ColletSize, Shank, ShankDetail, ShankSize, ShankTolerance, hydraulic_insertion,
};
use sound::{cylinder, drilled, mm, set, sound};

/// The stops that are about the shank wanted, its end and its receiver, so that another shank may be without them.
///
/// All other stops are about the part as entered (its numbers, sections, features, holes, which no shank mends), or
/// about the shop: the tool, the saw, the passes, which can be chosen anew for any shank.
fn is_about_what_is_wanted(finding: &Finding) -> bool {
    match finding.code {
        // A length of nothing is no length.
        Code::OutOfBounds => finding.field.to_string().starts_with("wanted."),
        // Nothing left round a hole; one that breaks out of the head is the part's own.
        Code::BreaksOut { at, .. } => at >= Length::ZERO,
        // No metal for the shank.
        Code::ShankTooShort { .. }
        | Code::NotCleanedUp { .. }
        // Its limits and its ends.
        | Code::LimitsCrossed { .. }
        | Code::NoSuchLimits
        | Code::FilletTooLarge { .. }
        | Code::NoStraightShank
        | Code::CountersinkTooWide { .. }
        | Code::CountersinkInHole { .. }
        | Code::NoCentreDrill { .. }
        // Its receiver.
        | Code::ReceiverTakesOthers { .. }
        | Code::FlatMissesShank { .. }
        | Code::GripTooShort { .. }
        | Code::SleeveYields
        // What it has to carry.
        | Code::DutyTooMuch { .. } => true,
        _ => false,
    }
}

fn is_possible(plan: &Plan) -> bool {
    plan.limits.is_some()
        && plan.shape.received.is_some()
        && !plan
            .findings
            .iter()
            .any(|it| it.level == Level::Stop && is_about_what_is_wanted(it))
}

/// Whether the stops of a plan are about the centre alone.
fn only_the_centre(plan: &Plan) -> bool {
    let mut about = plan
        .findings
        .iter()
        .filter(|it| it.level == Level::Stop && is_about_what_is_wanted(it))
        .peekable();
    about.peek().is_some() && about.all(|it| it.field == Field::Countersink)
}

/// A length as typed, to five decimals.
fn typed(length: Length, inch: bool) -> Entered<Length> {
    let (value, unit) = if inch {
        (length.to_inch(), Unit::Inch)
    } else {
        (length.to_mm(), Unit::Millimetre)
    };
    Entered::new(Entry::decimal(value, 5, unit).unwrap()).unwrap()
}

fn is_inch(entered: &Entered<Length>) -> bool {
    entered.entry().unit().is_inch()
}

/// The step of the rule that shorter lengths are taken by: 0.1 mm, or 0.01 in.
fn step(inch: bool) -> Length {
    if inch {
        Length::inch(0.01)
    } else {
        Length::mm(0.1)
    }
}

fn on_the_rule(length: Length, inch: bool) -> Length {
    let step = step(inch);
    step * (length / step + 1e-6).floor()
}

/// The job with this shank wanted, as long as its standard says and in no known receiver.
fn with_shank(job: &Job, shank: &Shank) -> Job {
    let mut other = job.clone();
    let wanted = &mut other.wanted;
    let inch = matches!(shank.tolerance, ShankTolerance::Limits(_));
    wanted.diameter = typed(shank.diameter, inch);
    wanted.length = typed(shank.length, inch);
    wanted.tolerance = match shank.tolerance {
        ShankTolerance::Class(class) => Tolerance::Class(class),
        ShankTolerance::Limits(limits) => Tolerance::Limits {
            upper: typed(limits.upper, true),
            lower: typed(limits.lower, true),
        },
    };
    wanted.receiver = Receiver::default();
    wanted.receiver_depth = None;
    wanted.least_grip = None;
    // No larger a fillet than the shoulder has room for.
    let shoulder = (job.part.head_diameter.value() - shank.diameter) / 2.0;
    let fillet = wanted.shoulder_radius.clone();
    if fillet.value() > shoulder {
        let inch = is_inch(&fillet);
        let largest = on_the_rule(shoulder.max(Length::ZERO), inch);
        wanted.shoulder_radius = typed(largest, inch);
    }
    other
}

/// The plan of a job, without its centre where that alone stands against it.
fn tried(job: &mut Job) -> Option<Plan> {
    let first = plan(job);
    if is_possible(&first) {
        return Some(first);
    }
    if !only_the_centre(&first) {
        return None;
    }
    job.wanted.countersink = None;
    let second = plan(job);
    is_possible(&second).then_some(second)
}

/// The longest shank that is possible, by trying: every fortieth step of the rule from the standard length downwards,
/// every step of the last 4 mm, and every step above the first that is. A shank is as long as the metal allows; whether
/// that one bears the duty is asked afterwards.
fn longest(job: &Job, shank: &Shank, inch: bool) -> Option<Job> {
    let try_length = |length: Length, standard: bool| {
        let mut other = job.clone();
        if !standard {
            other.wanted.length = typed(length, inch);
        }
        other.wanted.duty = Duty::default();
        tried(&mut other)?;
        other.wanted.duty = job.wanted.duty.clone();
        Some(other)
    };
    if let Some(full) = try_length(shank.length, true) {
        return Some(full);
    }
    let (step, rule) = (step(inch), on_the_rule(shank.length, inch));
    let at = |steps: u32| rule - step * f64::from(steps);
    // A short shank may be possible in a few lengths only, before fillet and chamfer leave nothing of it.
    let in_turn = |steps: &u32| steps.is_multiple_of(COARSE) || at(*steps).to_mm() < 4.0;
    let lengths = (0..).take_while(|steps| at(*steps) > step / 2.0);
    let mut longer = 0;
    for steps in lengths.filter(in_turn) {
        if try_length(at(steps), false).is_some() {
            return (longer..=steps)
                .filter(|steps| at(*steps) <= shank.length)
                .find_map(|steps| try_length(at(steps), false));
        }
        longer = steps;
    }
    None
}

/// Steps of the rule between lengths that are tried first.
const COARSE: u32 = 40;

/// Every receiver for straight shanks.
fn receivers(size: ShankSize) -> Vec<Receiver> {
    let shank = size.get().unwrap();
    match shank.detail {
        ShankDetail::Flat(_) | ShankDetail::InclinedFlat(_) => {
            vec![Receiver::SideLock { shank: size }]
        }
        ShankDetail::Threaded(_) => Vec::new(),
        ShankDetail::Plain => {
            let hydraulic = hydraulic_insertion(shank.diameter).map(|_| Receiver::Hydraulic {});
            let collets = ColletSize::all().map(|collet| Receiver::Collet { collet });
            hydraulic.into_iter().chain(collets).collect()
        }
    }
}

fn takes_others(finding: &Finding) -> bool {
    matches!(finding.code, Code::ReceiverTakesOthers { .. })
}

/// What was found for a shank in a receiver.
struct Found {
    length: Length,
    full_length: bool,
    grip: Length,
    cut_off: Length,
    turned: f64,
    kept: [f64; 3],
}

fn search(job: &Job) -> BTreeMap<String, Found> {
    let mut all = BTreeMap::new();
    // On a lathe without feeds: nothing that is compared here follows from the passes, and planning them takes longest.
    let job = &Job {
        shop: Shop {
            machine: Machine {
                feeds: Gears::Listed(Vec::new()),
                ..Machine::default()
            },
            ..job.shop.clone()
        },
        ..job.clone()
    };
    for size in ShankSize::all() {
        let shank = size.get().unwrap();
        let receivers = receivers(size);
        if receivers.is_empty() {
            continue;
        }
        let Some(longest) = longest(&with_shank(job, shank), shank, is_inch(&job.wanted.length))
        else {
            continue;
        };
        for receiver in receivers {
            let mut other = longest.clone();
            other.wanted.receiver = receiver.clone();
            let Some(plan) = tried(&mut other) else {
                // A receiver that does not hold the longest holds no shorter one; of one for other diameters that is
                // plain.
                if plan(&other).findings.iter().any(takes_others) {
                    continue;
                }
                other.wanted.duty = Duty::default();
                if tried(&mut other).is_some() {
                    continue;
                }
                for share in [0.95, 0.6, 0.3] {
                    let inch = is_inch(&job.wanted.length);
                    let shorter = on_the_rule(longest.wanted.length.value() * share, inch);
                    if shorter > Length::ZERO {
                        other.wanted.length = typed(shorter, inch);
                        assert!(
                            tried(&mut other).is_none(),
                            "{} in {receiver:?} is possible when shorter",
                            shank.code
                        );
                    }
                }
                continue;
            };
            // Of a shank that bore nothing before, no share can be told, and none is offered.
            let Some(kept) = plan.kept else {
                continue;
            };
            let (cut, received) = (plan.cut_off.unwrap(), plan.shape.received.unwrap());
            all.insert(
                key(size, &receiver),
                Found {
                    length: other.wanted.length.value(),
                    full_length: (other.wanted.length.value() - shank.length).abs().to_mm() < 1e-6,
                    grip: plan.grip.unwrap().value,
                    cut_off: received.shank_length - cut.shank_finished.value,
                    turned: plan.metal.unwrap().turned.to_mm3(),
                    kept: [kept.bending.value, kept.torsion.value, kept.stiffness.value],
                },
            );
        }
    }
    all
}

fn key(size: ShankSize, receiver: &Receiver) -> String {
    let receiver = match receiver {
        Receiver::Collet { collet } => collet.code(),
        Receiver::Hydraulic {} => "hydraulic",
        _ => "side-lock",
    };
    format!("{} in {receiver}", size.code())
}

fn link(job: &Job) -> String {
    encode(job).unwrap()
}

#[track_caller]
fn agrees(job: &Job) -> usize {
    let found = becomes(job);
    let searched = search(job);
    let keys: Vec<String> = found
        .iter()
        .map(|one| key(one.shank, &one.wanted.receiver))
        .collect();
    for (key, one) in keys.iter().zip(&found) {
        let Some(other) = searched.get(key) else {
            let mut taken = job.clone();
            taken.wanted = one.wanted.clone();
            panic!(
                "{key} is offered, but: {:?}\n{}",
                plan(&taken).findings,
                link(job)
            );
        };
        let same = |what: &str, got: f64, wanted: f64, off: f64| {
            let close = (got - wanted).abs() <= off;
            assert!(
                close,
                "{key}, {what}: {got}, wanted {wanted}\n{}",
                link(job)
            );
        };
        let length = one.wanted.length.value().to_mm();
        same("length", length, other.length.to_mm(), 1e-4);
        assert_eq!(one.full_length, other.full_length, "{key}");
        same("grip", one.grip.to_mm(), other.grip.to_mm(), 1e-4);
        same("cut off", one.cut_off.to_mm(), other.cut_off.to_mm(), 1e-4);
        same(
            "turned",
            one.turned.to_mm3(),
            other.turned,
            0.2 + other.turned * 1e-6,
        );
        for (got, wanted) in one.kept.into_iter().zip(other.kept) {
            same("kept", got, wanted, 1e-6);
        }
    }
    let missing: Vec<&String> = searched.keys().filter(|key| !keys.contains(key)).collect();
    assert!(
        missing.is_empty(),
        "not offered: {missing:?}\n{}",
        link(job)
    );
    assert_eq!(found.len(), searched.len());
    in_order(&found);
    what_is_offered_can_be_taken(job, &found);
    found.len()
}

/// Full length first, then more strength in bending, then more grip.
fn in_order(found: &[Becomes]) {
    for pair in found.windows(2) {
        let rank = |one: &Becomes| {
            (
                !one.full_length,
                -one.bending_modulus.to_mm3(),
                -one.grip.to_mm(),
            )
        };
        assert!(rank(&pair[0]) <= rank(&pair[1]), "{pair:?}");
    }
}

/// Whoever takes an offer is not told afterwards that it cannot be done.
fn what_is_offered_can_be_taken(job: &Job, found: &[Becomes]) {
    for one in found {
        let mut taken = job.clone();
        taken.wanted = one.wanted.clone();
        let plan = plan(&taken);
        assert!(
            is_possible(&plan),
            "{}: {:?}",
            one.shank.code(),
            plan.findings
        );
    }
}

#[test]
fn the_examples_become_what_a_search_finds() {
    let mut counts = vec![agrees(&sound())];
    counts.extend(demo_jobs().iter().map(agrees));
    println!("offers for the default job and the examples: {counts:?}");
    assert!(counts.iter().all(|count| *count > 0), "{counts:?}");
}

/// Every second of 60 random jobs, beginning with this one: two tests run at the same time.
fn random_parts_agree(first: usize) -> (usize, usize) {
    let mut runner = TestRunner::deterministic();
    let drawn = core::iter::from_fn(|| Some(workshop_job().new_tree(&mut runner).ok()?.current()));
    let jobs = drawn.filter(|job| plan(job).shape.received.is_some());
    let jobs: Vec<Job> = jobs.take(60).skip(first).step_by(2).collect();
    let features = jobs.iter().filter(|job| !job.part.features.is_empty());
    (jobs.iter().map(agrees).sum(), features.count())
}

#[test]
fn random_parts_become_what_a_search_finds() {
    let (offers, features) = random_parts_agree(0);
    println!("30 random jobs, {features} with features: {offers} offers, all found by the search");
    assert!(offers > 500 && features > 15);
}

#[test]
fn other_random_parts_become_what_a_search_finds() {
    let (offers, features) = random_parts_agree(1);
    println!("30 random jobs, {features} with features: {offers} offers, all found by the search");
    assert!(offers > 500 && features > 15);
}

/// A hole exactly as wide as the shank leaves no wall at all.
#[test]
fn a_hole_as_wide_as_the_smallest_shank_ends_it() {
    let mut job = sound();
    set(&mut job, Field::Countersink, "10");
    // 16 h6 is 15.989 mm at the least.
    job.part.bores = vec![drilled("15.989", "50", skimwright::job::BoreBottom::Flat)];
    agrees(&job);
    let found = becomes(&job);
    let plain = found.iter().find(|one| one.shank.code() == "plain-16");
    assert_eq!(
        plain.map(|one| one.wanted.length.value().to_mm()),
        Some(30.0)
    );
}

/// Where inches are typed, shorter shanks are whole hundredths of an inch.
#[test]
fn lengths_keep_to_the_rule_of_the_unit() {
    for (typed, inch) in [("50", false), ("2 in", true)] {
        let mut job = sound();
        job.part.sections = vec![cylinder("20", "41.77")];
        job.wanted.length = mm(typed);
        agrees(&job);
        let shorter = becomes(&job)
            .into_iter()
            .find(|one| !one.full_length)
            .unwrap();
        let length = shorter.wanted.length;
        assert_eq!(is_inch(&length), inch);
        assert_eq!(
            length.entry().to_string(),
            if inch { "1.64 in" } else { "41.7 mm" }
        );
    }
}

/// A duty that a thin shank does not bear is not forgotten.
#[test]
fn no_shank_is_offered_that_does_not_bear_the_duty() {
    let mut job = sound();
    let thinnest = |job: &Job| {
        let diameters = becomes(job)
            .into_iter()
            .map(|it| it.wanted.diameter.value().to_mm());
        diameters.fold(f64::INFINITY, f64::min)
    };
    let free = thinnest(&job);
    set(&mut job, Field::DutyTorque, "40 N·m");
    let loaded = thinnest(&job);
    assert!(free < 6.5 && loaded > 9.0, "{free} {loaded}");
    agrees(&job);
}
