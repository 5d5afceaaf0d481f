//! The passes of single jobs: pinned ones, what cannot be turned, tapers, features, and a shaft that gives way.
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
#[path = "support/sound.rs"]
mod sound;

use skimwright::cutting::{Limit, Pass};
use skimwright::job::{
    Cut, Datum, DialReads, Feature, Field, Flats, Gears, HoldingField, Job, MachineField, Pin,
    PinField, Place, SectionField, Support, Tolerance,
};
use skimwright::plan::{Code, Level, Plan, plan};

use passes::{cuts, loads, time};
use sound::{ample, codes, cylinder, entered, listed, mm, set, sound, taper, with};

const MACHINE: fn(MachineField) -> Field = Field::Machine;

fn pin(after: &str, infeed: &str) -> Pin {
    Pin {
        after: mm(after),
        infeed: mm(infeed),
        speed: None,
        feed: None,
    }
}

/// A 20 mm shank on a dial of 0.05 mm on radius that becomes 16 mm without polishing.
fn on_a_dial() -> Job {
    let mut job = with(
        ample(sound()),
        &[
            (Field::PolishingStock, "0"),
            (MACHINE(MachineField::Graduation), "0.05"),
            (Field::LastCut, "0.2"),
        ],
    );
    job.shop.machine.dial_reads = DialReads::Radius;
    job.wanted.tolerance = Tolerance::Limits {
        upper: mm("0.1"),
        lower: mm("-0.1"),
    };
    job
}

#[test]
fn pinned_passes_are_in_the_plan_and_the_rest_is_planned_round_them() {
    let mut job = on_a_dial();
    job.shop.machine.feeds = listed(&["0.05 mm/rev", "0.1 mm/rev", "0.2 mm/rev"]);
    job.shop.machine.speeds = listed(&["400 rpm", "700 rpm", "1200 rpm"]);
    let mut slow = pin("18.6", "0.3");
    slow.speed = Some(entered("400 rpm"));
    slow.feed = Some(entered("0.05 mm/rev"));
    // In another order than they are cut.
    job.setup.pins = vec![pin("17", "0.15"), slow];
    let found = plan(&job);
    let stock = found.stock_off.unwrap();
    let cuts = cuts(&stock);
    let pinned = |index| {
        let of = |pass: &&&Pass| pass.cut.as_ref().unwrap().pinned == Some(index);
        let all: Vec<_> = cuts.iter().filter(of).collect();
        assert_eq!(all.len(), 1, "pin {index}");
        *all[0]
    };
    let (one, two) = (pinned(0), pinned(1));
    assert!(
        (one.diameter_after.to_mm() - 17.0).abs() < 1e-9
            && (one.infeed.to_mm() - 0.15).abs() < 1e-9
    );
    assert!(
        (two.diameter_after.to_mm() - 18.6).abs() < 1e-9 && (two.infeed.to_mm() - 0.3).abs() < 1e-9
    );
    assert_eq!(
        (two.spindle_speed.to_per_min(), two.feed.to_mm_per_rev()),
        (400.0, 0.05)
    );
    // Those that were not pinned come to the same size in the end, and none is as slow without need.
    let size: f64 = cuts.iter().map(|it| it.infeed.to_mm()).sum();
    assert!((size - 2.0).abs() < 1e-9);
    assert!(cuts.iter().all(
        |it| it.spindle_speed.to_per_min() > 400.0 || it.cut.as_ref().unwrap().pinned.is_some()
    ));
    // The same stock without pins is no slower.
    job.setup.pins = Vec::new();
    assert!(time(&plan(&job).stock_off.unwrap()) <= time(&stock) + 1e-9);
}

#[test]
fn pins_that_contradict_one_another_or_the_stock_are_stops() {
    let stops = |pins: Vec<Pin>| {
        let mut job = on_a_dial();
        job.setup.pins = pins;
        let found = plan(&job);
        assert!(found.stock_off.is_none(), "{:?}", found.findings);
        let stop = found
            .findings
            .into_iter()
            .find(|it| it.level == Level::Stop)
            .unwrap();
        (stop.field, stop.code)
    };
    let after = |index| Field::Pin(index, PinField::After);
    // The second begins at 18 and ends at 17.2, the first goes from 18.2 to 17.6.
    let (field, code) = stops(vec![pin("17.6", "0.3"), pin("17.2", "0.4")]);
    assert_eq!((field, code), (after(0), Code::PinsOverlap { other: 2 }));
    // Above the stock, below the size, and across the size.
    for (what, wrong) in [
        ("above", pin("21", "0.3")),
        ("from above", pin("19.8", "0.4")),
        ("below", pin("15", "0.3")),
        ("through the size", pin("15.6", "0.5")),
    ] {
        let (field, code) = stops(vec![pin("18", "0.2"), wrong]);
        assert_eq!(field, after(1), "{what}");
        let Code::PinOutside { start, end } = code else {
            panic!("{what}: {code:?}");
        };
        assert!(
            (start.to_mm() - 20.0).abs() < 1e-9 && (end.to_mm() - 16.0).abs() < 1e-9,
            "{what}"
        );
    }
}

#[test]
fn a_pin_that_breaks_a_limit_is_planned_and_said() {
    let mut job = on_a_dial();
    set(&mut job, MACHINE(MachineField::Power), "30 W");
    let mut heavy = pin("17", "1.2");
    heavy.speed = Some(entered("1200 rpm"));
    heavy.feed = Some(entered("0.2 mm/rev"));
    job.setup.pins = vec![heavy];
    let found = plan(&job);
    let stock = found.stock_off.unwrap();
    let pass = *cuts(&stock)
        .iter()
        .find(|it| it.cut.as_ref().unwrap().pinned == Some(0))
        .unwrap();
    let worst = loads(pass)
        .iter()
        .copied()
        .max_by(|a, b| a.share.total_cmp(&b.share))
        .unwrap();
    assert!(1.0 < worst.share);
    let said = found
        .findings
        .iter()
        .find(|it| it.field == Field::Pin(0, PinField::Infeed))
        .unwrap();
    assert_eq!(
        said.code,
        Code::PinBreaks {
            limit: worst.limit,
            share: worst.share
        }
    );
}

#[test]
fn the_order_of_a_list_and_what_stands_in_it_twice_mean_nothing() {
    let of = |speeds: &[&str], feeds: &[&str]| {
        let mut job = sound();
        job.shop.machine.speeds = listed(speeds);
        job.shop.machine.feeds = listed(feeds);
        plan(&job)
    };
    let rising = of(
        &["200 rpm", "500 rpm", "1250 rpm"],
        &["0.08 mm/rev", "0.12 mm/rev", "0.2 mm/rev"],
    );
    let mixed = of(
        &["1250 rpm", "200 rpm", "500 rpm", "200 rpm", "1250 rpm"],
        &["0.2 mm/rev", "0.12 mm/rev", "0.2 mm/rev", "0.08 mm/rev"],
    );
    assert!(rising.stock_off.is_some());
    assert_eq!(rising, mixed);
}

#[test]
fn a_lathe_without_gears_or_power_stops_the_plan() {
    let mut none = sound();
    none.shop.machine.feeds = Gears::Listed(Vec::new());
    let mut no_speed = sound();
    no_speed.shop.machine.speeds = Gears::Listed(Vec::new());
    for (job, field) in [
        (none, MachineField::Feeds),
        (no_speed, MachineField::Speeds),
    ] {
        let found = plan(&job);
        assert!(found.stock_off.is_none());
        let said = found
            .findings
            .iter()
            .find(|it| it.code == Code::NoGears)
            .unwrap();
        assert_eq!(
            (said.field, said.level),
            (Field::Machine(field), Level::Stop)
        );
    }
    let found = plan(&with(sound(), &[(MACHINE(MachineField::Power), "0 W")]));
    assert!(found.stock_off.is_none());
    let power = Field::Machine(MachineField::Power);
    assert!(
        found
            .findings
            .iter()
            .any(|it| it.field == power && it.code == Code::OutOfBounds)
    );
}

#[test]
fn a_shank_thinner_than_wanted_has_no_passes_and_a_finding() {
    let found = plan(&with(sound(), &[(Field::WantedDiameter, "24")]));
    let stock = found.stock_off.as_ref().unwrap();
    assert!(stock.passes.is_empty());
    let codes = codes(&found);
    assert!(
        codes.contains(&"nothing-to-turn".to_owned())
            && codes.contains(&"not-cleaned-up".to_owned()),
        "{codes:?}"
    );
}

#[test]
fn a_grip_too_weak_for_any_pass_says_how_much_more_it_takes() {
    for force in [1.0, 3.0, 8.0] {
        let mut job = with(sound(), &[(MACHINE(MachineField::Power), "1 kW")]);
        job.wanted.tolerance = Tolerance::Limits {
            upper: mm("0.05"),
            lower: mm("-0.05"),
        };
        let grip = Field::Holding(HoldingField::GripForce);
        set(&mut job, grip, &force.to_string());
        let found = plan(&job);
        assert!(found.stock_off.is_none(), "{force} N");
        let no_pass = |plan: &Plan| {
            plan.findings.iter().find_map(|it| match it.code {
                Code::NoPass { limit, share } => Some((it.field, limit, share)),
                _ => None,
            })
        };
        let (field, limit, share) = no_pass(&found).unwrap();
        assert_eq!((field, limit), (grip, Limit::Grip));
        assert!(1.0 < share);
        // So many times the grip, and a pass is possible: nothing says any more that none is.
        set(&mut job, grip, &format!("{:.6}", force * share * 1.000_001));
        let mended = plan(&job);
        assert_eq!(no_pass(&mended), None, "{force} N times {share}");
        assert!(mended.stock_off.is_some(), "{:?}", mended.findings);
        // And with a little less than that, none is. A hair less may do: a first pass, of what stands above the dial's
        // divisions, may be thinner than the least depth, and what follows it has the smaller lever.
        set(&mut job, grip, &format!("{:.6}", force * share * 0.97));
        assert!(plan(&job).stock_off.is_none(), "{force} N");
    }
}

/// A pass goes along the metal that stands above the diameter it leaves, and no further.
#[test]
fn on_a_taper_passes_are_as_long_as_the_metal_that_they_meet() {
    let mut job = with(
        sound(),
        &[
            (Field::Runout, "0.06"),
            (Field::ShoulderRadius, "0"),
            (Field::WantedLength, "70"),
            (Field::WantedDiameter, "15"),
        ],
    );
    // From the shoulder: 24 down to 18, a cylinder of 17, 19 down to 16.
    let sections: [(f64, f64, f64); 3] =
        [(24.0, 18.0, 30.0), (17.0, 17.0, 12.0), (19.0, 16.0, 36.0)];
    job.part.sections = sections
        .iter()
        .map(|(from, to, long)| taper(&from.to_string(), &to.to_string(), &long.to_string()))
        .collect();
    job.part.sections[1] = cylinder("17", "12");
    let stock = plan(&job).stock_off.unwrap();
    assert!(8 <= cuts(&stock).len());
    for pass in cuts(&stock) {
        // Whatever stands above by the runout too is met in part of each turn.
        let above = pass.diameter_after.to_mm() - 0.06;
        let (mut metal, mut first, mut last, mut start) =
            (0.0_f64, f64::INFINITY, 0.0_f64, 0.0_f64);
        for (from, to, long) in sections {
            let long_here = (70.0 - start).min(long);
            // Where the straight flank comes down to the diameter.
            let meets = if (from - to).abs() < 1e-9 {
                if above < from { long_here } else { 0.0 }
            } else {
                ((from - above) / (from - to) * long).clamp(0.0, long_here)
            };
            if meets > 0.0 {
                metal += meets;
                first = first.min(start);
                last = last.max(start + meets);
            }
            start += long;
        }
        assert!(
            (pass.metal.to_mm() - metal).abs() < 1e-6,
            "{above}: {:?}, by hand {metal}",
            pass.metal
        );
        assert!(
            (pass.travel.to_mm() - (last - first)).abs() < 1e-6,
            "{above}"
        );
        assert!((pass.ends_at.to_mm() - last).abs() < 1e-6, "{above}");
    }
}

/// A 20 mm shank that becomes 16: which passes knock follows from how deep a feature is.
#[test]
fn passes_knock_exactly_where_they_meet_a_feature() {
    let place = |start: &str| {
        Some(Place {
            from: Datum::Shoulder,
            start: mm(start),
        })
    };
    let flat = |over: &str, start| Feature {
        cut: Cut::Flat {
            over: mm(over),
            flats: Flats::One,
            length: mm("10"),
        },
        place: place(start),
    };
    let keyway = |depth: &str| Feature {
        cut: Cut::Keyway {
            width: mm("5"),
            depth: mm(depth),
            length: mm("20"),
        },
        place: place("10"),
    };
    let cross = |start| Feature {
        cut: Cut::CrossHole { diameter: mm("4") },
        place: place(start),
    };
    let tang = Feature {
        cut: Cut::Tang {
            thickness: mm("17"),
            length: mm("12"),
            slot_width: None,
            slot_depth: None,
        },
        place: None,
    };
    // The feature, how long the finished shank is, and from which radius on there is metal all round.
    let cases = [
        ("flat, 1.5 deep", flat("18.5", "20"), "50", Some(8.5)),
        ("flat, 0.5 deep", flat("19.5", "20"), "50", Some(9.5)),
        ("flat on the offcut", flat("18.5", "60"), "50", None),
        ("keyway, 1.2 deep", keyway("1.2"), "50", Some(8.8)),
        ("keyway, 3.5 deep", keyway("3.5"), "50", Some(0.0)),
        ("cross hole", cross("30"), "50", Some(0.0)),
        ("cross hole on the offcut", cross("70"), "50", None),
        ("tang that stays", tang.clone(), "79", Some(8.5)),
        ("tang cut off", tang, "50", None),
    ];
    for (what, feature, length, clear) in cases {
        let mut job = with(
            sound(),
            &[
                (Field::WantedLength, length),
                // Cemented carbide bears knocks where it is tough; this steel tool does in any case.
                (Field::RoughInfeed, "0.3"),
            ],
        );
        job.shop.tool = skimwright::tables::ToolKind::HighSpeedSteel;
        job.part.features = vec![feature];
        let found = plan(&job);
        let stock = found
            .stock_off
            .unwrap_or_else(|| panic!("{what}: {:?}", found.findings));
        let (mut knocked, mut smooth) = (0, 0);
        for pass in cuts(&stock) {
            let before = (pass.diameter_after + pass.off_diameter).to_mm() / 2.0;
            let meets = clear.is_some_and(|clear| clear < before - 1e-9);
            assert_eq!(
                pass.cut.as_ref().unwrap().interrupted,
                meets,
                "{what}: from {before}"
            );
            knocked += usize::from(meets);
            smooth += usize::from(!meets);
        }
        assert_eq!(0 < knocked, clear.is_some(), "{what}");
        assert_eq!(0 < smooth, clear != Some(0.0), "{what}");
    }
}

/// A shaft so slender that it bends away by more than the tolerance leaves is planned all the same, and said.
#[test]
fn a_shaft_that_gives_way_is_planned_and_said() {
    let mut job = with(
        sound(),
        &[
            (Field::Section(0, SectionField::Diameter), "8"),
            (Field::Section(0, SectionField::Length), "160"),
            (Field::WantedDiameter, "6"),
            (Field::WantedLength, "150"),
            (Field::ShoulderRadius, "0.2"),
        ],
    );
    job.wanted.countersink = None;
    job.setup.support = Some(Support::Chuck);
    let found = plan(&job);
    let stock = found.stock_off.as_ref().expect("passes all the same");
    let said = found.findings.iter().find_map(|it| match it.code {
        Code::GivesWay { by, allowed } => Some((it.field, by, allowed)),
        _ => None,
    });
    let (field, by, allowed) = said.expect("it is said that the shaft gives way");
    assert_eq!(field, Field::LastCut);
    // 6 h6 has a tolerance of 8 µm; a third of it may be used up.
    assert!((allowed.to_um() - 8.0 / 3.0).abs() < 1e-6 && allowed < by);
    let holding = found.holding.unwrap();
    let form = holding.form.unwrap();
    let spread = form.greatest.size_error - form.least.size_error;
    assert!(
        (by.to_um() - spread.to_um()).abs() < 1e-3 * spread.to_um(),
        "{by:?}, but {spread:?}"
    );
    assert!(!stock.passes.is_empty());
}
