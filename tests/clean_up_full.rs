//! Clean-up and walls of parts with everything on them, against looking everywhere along a part that is written down
//! anew from its job.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/parts.rs"]
mod parts;
#[path = "support/slices.rs"]
mod slices;
#[path = "support/sound.rs"]
mod sound;

use parts::workshop_job;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use skimwright::job::{
    Bore, BoreBottom, Cut, Datum, Feature, Field, Flats, Hole, Job, Place, Section, Turned,
};
use skimwright::link::encode;
use skimwright::plan::{Code, Plan, plan};
use skimwright::rework::Because;
use skimwright::tables::ThreadSize;
use slices::{BESIDE, Slices};
use sound::{cylinder, drilled, mm, set, sound, taper, with};

/// What both ways of computing may differ by, in millimetres: a few times the hair beside an edge, and its slope.
const OFF: f64 = 1e-5;

/// The smallest cylinder of what is left, by looking everywhere: where, and its radius.
fn least(slices: &Slices, length: f64) -> (f64, f64) {
    let places = slices.places(0.0, length);
    let all = places.into_iter().map(|z| (z, slices.solid(z)));
    all.min_by(|a, b| a.1.total_cmp(&b.1)).unwrap()
}

/// Compares everything of the clean-up; gives the worst difference.
fn clean_up_agrees(job: &Job, plan: &Plan) -> Result<f64, String> {
    let Some(found) = &plan.clean_up else {
        return Ok(0.0);
    };
    let slices = Slices::new(job);
    let length = job.wanted.length.value().to_mm().min(slices.whole);
    let (_, radius) = least(&slices, length);
    let got = found.largest_diameter.value.to_mm();
    let off = (got - radius * 2.0).abs();
    if off > OFF {
        return Err(format!("largest {got}, by looking {}", radius * 2.0));
    }
    // It is met at the place named, on one side of it or the other.
    let at = found.at.to_mm();
    let there = [at - BESIDE, at + BESIDE].map(|z| slices.solid(z.clamp(BESIDE, length - BESIDE)));
    if there[0].min(there[1]) > radius + OFF {
        return Err(format!("at {at} there is {there:?}, least {radius}"));
    }
    because_is_there(&slices, found.because, at, radius)?;
    longest_agrees(&slices, plan, found.longest.to_mm())?;
    most_agrees(&slices, plan)?;
    Ok(off)
}

/// What is named reaches as deep as the least radius at that place, and a section only where no feature does.
fn because_is_there(slices: &Slices, because: Because, at: f64, radius: f64) -> Result<(), String> {
    let near = 1e-4;
    let spans = |from: f64, to: f64| from - near <= at && at <= to + near;
    let bare = radius + slices.off_axis(at);
    let deep: Vec<u8> = slices
        .features
        .iter()
        .filter(|it| spans(it.from, it.to))
        .filter(|it| it.clear.is_some_and(|clear| clear.max(0.0) <= bare + OFF))
        .map(|it| it.index)
        .collect();
    let right = match because {
        Because::Feature(index) => deep.contains(&index),
        Because::Section(index) => {
            let line = &slices.roots[usize::from(index)];
            let beside = [at - BESIDE, at + BESIDE]
                .map(|z| slices.root(z.clamp(line.from + BESIDE, line.to - BESIDE)));
            deep.is_empty() && spans(line.from, line.to) && beside[0].min(beside[1]) <= bare + OFF
        }
    };
    if right {
        Ok(())
    } else {
        Err(format!("{because:?} at {at}, where {deep:?} cut to {bare}"))
    }
}

/// Everything nearer to the shoulder cleans up, and right behind it does not.
fn longest_agrees(slices: &Slices, plan: &Plan, longest: f64) -> Result<(), String> {
    let lower = plan.limits.unwrap().lower.to_mm() / 2.0;
    let short = |z: &f64| slices.solid(*z) < lower - OFF;
    let first = slices.places(0.0, slices.whole).into_iter().find(short);
    if let Some(first) = first.filter(|first| *first < longest - 4.0 * BESIDE) {
        return Err(format!("longest {longest}, but short at {first}"));
    }
    let behind = slices.solid(longest + 2.0 * BESIDE);
    if longest < slices.whole - 1e-6 && behind > lower + OFF {
        return Err(format!(
            "longest {longest}, but {behind} behind it for {lower}"
        ));
    }
    Ok(())
}

/// The most that can be had, at 200 lengths, by looking everywhere up to each.
fn most_agrees(slices: &Slices, plan: &Plan) -> Result<(), String> {
    const LENGTHS: u32 = 200;
    let most = &plan.clean_up.as_ref().unwrap().most;
    for pair in most.windows(2) {
        let grows = (pair[1].diameter - pair[0].diameter).to_mm() > 1e-9;
        if grows || pair[1].length < pair[0].length {
            return Err(format!("the most grows: {pair:?}"));
        }
    }
    let places = slices.places(0.0, slices.whole);
    let mut places = places.into_iter().peekable();
    let mut least = f64::INFINITY;
    for n in 1..LENGTHS {
        let length = slices.whole * f64::from(n) / f64::from(LENGTHS) + 1.3e-5;
        let mut edge = false;
        while let Some(z) = places.next_if(|z| *z <= length) {
            least = least.min(slices.solid(z));
            edge = length - z < OFF;
        }
        least = least.min(slices.solid(length));
        // The last point at or before this length, and the first behind it.
        let behind = most.partition_point(|it| it.length.to_mm() <= length);
        let (Some(before), after) = (most.get(behind.wrapping_sub(1)), most.get(behind)) else {
            return Err(format!("the most begins behind {length}"));
        };
        let after = after.unwrap_or(before);
        let long = (after.length - before.length).to_mm();
        let share = if long > 1e-9 {
            (length - before.length.to_mm()) / long
        } else {
            0.0
        };
        let got = before.diameter.to_mm() + (after.diameter - before.diameter).to_mm() * share;
        let off = (got - least * 2.0).abs();
        // Where the stock comes to nothing within a section, the outline is straightened; nobody turns a hair.
        if off > 3.0 * OFF && !edge && least > 0.1 {
            return Err(format!(
                "most at {length}: {got}, by looking {}",
                least * 2.0
            ));
        }
    }
    Ok(())
}

/// The thinnest wall round each hole, by looking everywhere; gives how many walls, and the worst difference.
fn walls_agree(job: &Job, plan: &Plan) -> Result<(usize, f64), String> {
    let (Some(limits), Some(shank)) = (plan.limits, plan.shape.shank.as_ref()) else {
        return Ok((0, 0.0));
    };
    let slices = Slices::new(job);
    let length = shank.length.to_mm().min(slices.whole);
    let fillet = job.wanted.shoulder_radius.value().to_mm().min(length);
    let lower = limits.lower.to_mm() / 2.0;
    let outer = |z: f64| {
        if z < 0.0 {
            return slices.head(z);
        }
        let beside = (fillet - z).max(0.0);
        let round = fillet - (fillet * fillet - beside * beside).max(0.0).sqrt();
        slices.sound(z).min(lower + round)
    };
    let (mut count, mut worst) = (0, 0.0_f64);
    for hole in &slices.holes {
        let wall = |z: f64| outer(z) - hole.radius(z) - hole.off_centre - slices.off_axis(z);
        // More places in the fillet, closer together where it is steeper.
        let round = (1..4000_u32).map(|n| fillet * (f64::from(n) / 4000.0).powi(2));
        let left = slices
            .places(slices.head_start, length)
            .into_iter()
            .chain(round)
            .filter(|z| hole.radius(*z) > 0.0 && outer(*z) > 0.0);
        let thinnest = left
            .map(|z| (z, wall(z)))
            .min_by(|a, b| a.1.total_cmp(&b.1));
        let found = plan.walls.iter().find(|it| it.bore == hole.index);
        let ((z, thin), found) = match (thinnest, found) {
            (Some(thinnest), Some(found)) => (thinnest, found),
            (None, None) => continue,
            // A hair of a hole is left of it, or is not.
            (Some((z, _)), None) if length - z < 1e-4 => continue,
            (None, Some(_)) => return Err(format!("a wall round hole {}", hole.index)),
            (Some((z, _)), None) => return Err(format!("no wall of {} at {z}", hole.index)),
        };
        let got = found.least.value.to_mm();
        let off = (got - thin).abs();
        // Where the fillet is steep, a hair beside the shoulder is a part of it.
        let steep = if (0.0..1e-4).contains(&z) { 0.02 } else { 0.0 };
        if off > 8.0 * OFF + steep {
            return Err(format!(
                "hole {}: wall {got}, by looking {thin} at {z}",
                hole.index
            ));
        }
        let at = found.at.to_mm();
        let there = [at - BESIDE, at + BESIDE].map(|z| {
            let inside = hole.radius(z) > 0.0 && outer(z) > 0.0 && z < length;
            if inside { wall(z) } else { f64::INFINITY }
        });
        if there[0].min(there[1]) > thin + 6.0 * OFF + steep {
            return Err(format!("hole {}: at {at} there is {there:?}", hole.index));
        }
        if steep <= 0.0 {
            worst = worst.max(off);
        }
        count += 1;
    }
    Ok((count, worst))
}

#[track_caller]
fn agree(job: &Job) -> Plan {
    let plan = plan(job);
    if let Err(why) = clean_up_agrees(job, &plan) {
        panic!("{why}\n{}", encode(job).unwrap());
    }
    if let Err(why) = walls_agree(job, &plan) {
        panic!("{why}\n{}", encode(job).unwrap());
    }
    plan
}

#[test]
fn a_thousand_parts_with_everything_agree() {
    const JOBS: u32 = 1000;
    let mut runner = TestRunner::deterministic();
    let (mut compared, mut walls, mut by_feature) = (0, 0, 0);
    let mut worst = (0.0_f64, 0.0_f64);
    for _ in 0..JOBS {
        let job = workshop_job().new_tree(&mut runner).unwrap().current();
        let plan = agree(&job);
        let Some(found) = &plan.clean_up else {
            continue;
        };
        compared += 1;
        by_feature += u32::from(matches!(found.because, Because::Feature(_)));
        worst.0 = worst.0.max(clean_up_agrees(&job, &plan).unwrap());
        let (count, off) = walls_agree(&job, &plan).unwrap();
        walls += count;
        worst.1 = worst.1.max(off);
    }
    println!(
        "{compared} of {JOBS} parts, {by_feature} with a feature in the way, {walls} walls; worst {worst:?} mm"
    );
    assert!(compared > 900 && by_feature > 200 && walls > 700);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_cleans_up_and_what_is_left_round_holes_agree(job in workshop_job()) {
        let plan = plan(&job);
        prop_assert!(clean_up_agrees(&job, &plan).is_ok(), "{:?}\n{}", clean_up_agrees(&job, &plan), encode(&job).unwrap());
        prop_assert!(walls_agree(&job, &plan).is_ok(), "{:?}", walls_agree(&job, &plan));
    }

    /// Metal that is taken off the part before never lets more clean up.
    #[test]
    fn a_feature_or_runout_more_never_helps(job in workshop_job(), more in 1_u32..50) {
        let bare = Job {
            part: skimwright::job::Part { features: Vec::new(), ..job.part.clone() },
            ..job.clone()
        };
        let mut off = job.clone();
        let runout = job.part.runout.value().to_mm() + f64::from(more) / 100.0;
        set(&mut off, Field::Runout, &format!("{runout:.2}"));
        if job.part.end_runout.is_none() {
            off.part.end_runout = None;
        }
        let largest = |job: &Job| plan(job).clean_up.map(|it| it.largest_diameter.value.to_mm());
        let (bare, cut, off) = (largest(&bare), largest(&job), largest(&off));
        if let (Some(bare), Some(cut), Some(off)) = (bare, cut, off) {
            prop_assert!(cut <= bare + 1e-9 && off <= cut + 1e-9, "{bare} {cut} {off}");
        }
    }
}

fn at(cut: Cut, from: Datum, start: &str) -> Feature {
    Feature {
        cut,
        place: Some(Place {
            from,
            start: mm(start),
        }),
    }
}

fn groove(diameter: &str, width: &str) -> Section {
    Turned::Groove {
        diameter: mm(diameter),
        length: mm(width),
    }
    .into()
}

fn keyway(depth: &str) -> Cut {
    Cut::Keyway {
        width: mm("6"),
        depth: mm(depth),
        length: mm("20"),
    }
}

fn flat(over: &str, flats: Flats) -> Cut {
    Cut::Flat {
        over: mm(over),
        flats,
        length: mm("12"),
    }
}

/// What a row changes of the sound job.
type Change = fn(&mut Job);

/// 80 mm of 20 mm diameter, 50 mm wanted: by hand, the largest diameter, where, why, and the longest for 16 h6
/// (15.989 at the least).
#[test]
#[expect(clippy::too_many_lines, reason = "a table of cases")]
fn each_thing_in_the_way_is_found_by_hand() {
    let cases: [(&str, Change, f64, f64, Because, f64); 9] = [
        (
            "groove",
            |job| {
                job.part.sections = vec![
                    cylinder("20", "30"),
                    groove("15", "4"),
                    cylinder("20", "46"),
                ];
            },
            15.0,
            30.0,
            Because::Section(1),
            30.0,
        ),
        (
            "thread: 20 less 17/12 of 0.866 of the pitch of 1.5",
            |job| {
                let thread = ThreadSize::from_code("M20x1.5").unwrap();
                let length = mm("60");
                let thread = Turned::Thread { thread, length };
                job.part.sections = vec![cylinder("20", "20"), thread.into()];
            },
            20.0 - 17.0 / 12.0 * 0.866_025_404 * 1.5,
            20.0,
            Because::Section(1),
            80.0,
        ),
        (
            "flat: 17 over it leaves 7 to the axis",
            |job| job.part.features = vec![at(flat("17", Flats::One), Datum::Shoulder, "10")],
            14.0,
            10.0,
            Because::Feature(0),
            10.0,
        ),
        (
            "two flats",
            |job| job.part.features = vec![at(flat("15", Flats::Two), Datum::FreeEnd, "50")],
            15.0,
            18.0,
            Because::Feature(0),
            18.0,
        ),
        (
            "keyway: 10 less 3",
            |job| job.part.features = vec![at(keyway("3"), Datum::Shoulder, "25")],
            14.0,
            25.0,
            Because::Feature(0),
            25.0,
        ),
        (
            "keyway that ends where the shank does",
            |job| job.part.features = vec![at(keyway("3"), Datum::Shoulder, "50")],
            20.0,
            0.0,
            Because::Section(0),
            50.0,
        ),
        (
            "tang of 60 mm",
            |job| {
                let cut = Cut::Tang {
                    thickness: mm("12"),
                    length: mm("60"),
                    slot_width: None,
                    slot_depth: None,
                };
                job.part.features = vec![Feature { cut, place: None }];
            },
            12.0,
            20.0,
            Because::Feature(0),
            20.0,
        ),
        (
            "tilt: runout 0 at the shoulder, 0.8 at 80 mm is 0.5 at 50 mm",
            |job| set(job, Field::EndRunout, "0.8"),
            19.5,
            50.0,
            Because::Section(0),
            80.0,
        ),
        (
            "a taper ends it: 20 to 12 over 80 mm is 15 at 50 mm, 15.989 at 40.11 mm",
            |job| job.part.sections = vec![taper("20", "12", "80")],
            15.0,
            50.0,
            Because::Section(0),
            40.11,
        ),
    ];
    for (what, change, largest, place, because, longest) in cases {
        let mut job = sound();
        change(&mut job);
        let found = agree(&job).clean_up.unwrap();
        let close = |got: f64, wanted: f64| {
            assert!(
                (got - wanted).abs() < 1e-6,
                "{what}: {got}, wanted {wanted}"
            );
        };
        close(found.largest_diameter.value.to_mm(), largest);
        close(found.at.to_mm(), place);
        assert_eq!(found.because, because, "{what}");
        close(found.longest.to_mm(), longest);
    }
}

/// By hand: 16 h6 is 15.989 at the least, its wall 7.9945 less the hole, less what its axis is off.
#[test]
fn walls_by_hand() {
    let off_centre = |bore: Bore, off: &str| Bore {
        off_centre: Some(mm(off)),
        ..bore
    };
    let hole = || drilled("6", "60", BoreBottom::Flat);
    let through = Bore::from(Hole::Through { diameter: mm("6") });
    let cases: [(&str, Bore, Change, f64, f64); 6] = [
        ("on the axis", hole(), |_| {}, 4.9945, 20.0),
        ("beside it", off_centre(hole(), "1.5"), |_| {}, 3.4945, 20.0),
        (
            "tilted: 0.25 off at 50 mm",
            hole(),
            |job| set(job, Field::EndRunout, "0.8"),
            4.7445,
            50.0,
        ),
        (
            "0.4 off at the shoulder, none at 80 mm: where the fillet of 2 mm falls as steeply, by 1 in 200",
            through,
            |job| {
                set(job, Field::Runout, "0.8");
                set(job, Field::EndRunout, "0");
                set(job, Field::ShoulderRadius, "2");
            },
            4.604_475_000_156,
            1.990_000_125,
        ),
        (
            "under a keyway of 4 mm from 25 mm on, 6 less 3",
            hole(),
            |job| job.part.features = vec![at(keyway("4"), Datum::Shoulder, "25")],
            3.0,
            25.0,
        ),
        (
            "off to the side under two flats",
            off_centre(hole(), "0.5"),
            |job| job.part.features = vec![at(flat("14", Flats::Two), Datum::Shoulder, "30")],
            3.5,
            30.0,
        ),
    ];
    for (what, bore, change, wall, place) in cases {
        let mut job = with(sound(), &[(Field::ShoulderRadius, "0.5")]);
        job.wanted.countersink = None;
        job.part.bores = vec![bore];
        change(&mut job);
        let plan = agree(&job);
        let found = &plan.walls[0];
        let (got, there) = (found.least.value.to_mm(), found.at.to_mm());
        assert!((got - wall).abs() < 1e-7, "{what}: {got}, wanted {wall}");
        assert!((there - place).abs() < 1e-6, "{what}: at {there}");
    }
}

/// The finding says the same as the figures.
#[test]
fn the_finding_names_what_is_in_the_way() {
    let mut job = sound();
    job.part.features = vec![
        at(flat("18.5", Flats::One), Datum::Shoulder, "2"),
        at(keyway("3"), Datum::Shoulder, "25"),
    ];
    let plan = agree(&job);
    let named = plan.findings.iter().find_map(|it| match it.code {
        Code::NotCleanedUp { because, at, .. } => Some((because, at.to_mm())),
        _ => None,
    });
    assert_eq!(named, Some((Because::Feature(1), 25.0)));
}
