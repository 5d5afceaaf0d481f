//! The sleeve of a plan against the formulas of thick cylinders, written out by hand with the limits of ISO 286 typed in.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/sound.rs"]
mod sound;

use core::f64::consts::PI;

use proptest::prelude::*;
use skimwright::job::{BoreBottom, Field, Job, Receiver, Tolerance};
use skimwright::plan::{Code, plan};
use skimwright::quantity::{Stress, TemperatureStep, Torque};
use skimwright::receiver::SleeveFit;
use skimwright::tables::{ShaftClass, SleeveDuty, WorkMaterial};
use skimwright::working::Figure;
use sound::{codes, drilled, mm, set, sound, with};

fn sleeved(duty: SleeveDuty, class: ShaftClass, outside: &str) -> Job {
    let mut job = sound();
    job.wanted.tolerance = Tolerance::Class(class);
    job.wanted.receiver = Receiver::Sleeve {
        duty,
        material: WorkMaterial::MediumCarbonSteel,
        outside: mm(outside),
        edge: None,
    };
    job
}

fn sleeve(job: &Job) -> SleeveFit {
    plan(job).receiver.unwrap().sleeve.unwrap()
}

/// What a pressed sleeve does, in megapascals, newton metres and kelvins.
struct ByHand {
    pressure: f64,
    sleeve: f64,
    shaft: f64,
    torque: f64,
}

/// Lamé: each part grows or gives by its own compliance, (D² + d²)/(D² − d²) ± ν over E. All in millimetres and N/mm².
///
/// `interference` on diameter; `hole` in the shaft; both of steel of 205 000 N/mm² and ν 0.29.
fn by_hand(
    interference: f64,
    [hole, seat, outside]: [f64; 3],
    length: f64,
    friction: f64,
) -> ByHand {
    const E: f64 = 205_000.0;
    const POISSON: f64 = 0.29;
    let (inner, middle, outer) = (hole * hole, seat * seat, outside * outside);
    let ring = (outer + middle) / (outer - middle);
    let core = (middle + inner) / (middle - inner);
    let pressure = interference / seat / ((ring + POISSON) / E + (core - POISSON) / E);
    // At the sleeve's bore the hoop pulls and the pressure pushes: von Mises of two stresses of opposite sign.
    let hoop = pressure * ring;
    let sleeve = (hoop * hoop + hoop * pressure + pressure * pressure).sqrt();
    // A solid shaft is pressed alike from all sides; round a hole the hoop stress is 2 d²/(d² − b²) of the pressure.
    let shaft = if hole > 0.0 {
        pressure * 2.0 * middle / (middle - inner)
    } else {
        pressure
    };
    // Friction on the whole seat, at half its diameter, newton millimetres to metres.
    let torque = friction * pressure * PI * seat * length * seat / 2.0 / 1000.0;
    ByHand {
        pressure,
        sleeve,
        shaft,
        torque,
    }
}

#[track_caller]
fn near(what: &str, got: f64, wanted: f64) {
    assert!(
        (got - wanted).abs() <= 1e-9 * wanted.abs().max(1e-3),
        "{what}: {got}, wanted {wanted}"
    );
}

#[track_caller]
fn all_three<Q: Copy>(what: &str, figure: &Figure<Q>, read: fn(Q) -> f64, wanted: [f64; 3]) {
    let range = figure.range.unwrap();
    near(what, read(range.low), wanted[0]);
    near(what, read(figure.value), wanted[1]);
    near(what, read(range.high), wanted[2]);
}

/// ISO 286-2, 10 to 18 mm: H7 +18/0 µm; p6 +29/+18, s6 +39/+28. The peaks of two surfaces of Rz 4 µm take 0.8 of their
/// sum, 6.4 µm, off the least (DIN 7190-1).
#[test]
fn the_figures_are_those_of_thick_cylinders() {
    let cases = [
        (
            SleeveDuty::MediumTorque,
            ShaftClass::P6,
            [18.0, 29.0],
            "24",
            None,
        ),
        (
            SleeveDuty::FullTorque,
            ShaftClass::S6,
            [28.0, 39.0],
            "26",
            None,
        ),
        (
            SleeveDuty::FullTorque,
            ShaftClass::S6,
            [28.0, 39.0],
            "22.5",
            Some("8"),
        ),
    ];
    for (duty, class, [lower, upper], outside, hole) in cases {
        let mut job = sleeved(duty, class, outside);
        job.part.bores = hole
            .map(|hole| drilled(hole, "60", BoreBottom::Flat))
            .into_iter()
            .collect();
        // Smallest shank in the largest hole, largest shank in the smallest hole.
        let loose = f64::max(lower - 18.0 - 0.8 * 8.0, 0.0) / 1000.0;
        let tight = upper / 1000.0;
        let likely = f64::midpoint(loose, tight);
        let seat = 16.0 + (lower + upper) / 2000.0;
        let hole = hole.map_or(0.0, |hole| hole.parse().unwrap());
        let sizes = [hole, seat, outside.parse().unwrap()];
        // 50 mm of shank, less fillet and chamfer.
        let length = 50.0 - 0.8 - 1.0;
        // Friction of dry steel 0.08 to 0.16.
        let [low, middle, high] = [(loose, 0.08), (likely, 0.12), (tight, 0.16)]
            .map(|(interference, friction)| by_hand(interference, sizes, length, friction));
        let three = |read: fn(&ByHand) -> f64| [read(&low), read(&middle), read(&high)];
        let found = sleeve(&job);
        all_three(
            "pressure",
            &found.pressure,
            Stress::to_mpa,
            three(|it| it.pressure),
        );
        all_three(
            "sleeve",
            &found.sleeve_stress,
            Stress::to_mpa,
            three(|it| it.sleeve),
        );
        all_three(
            "shaft",
            &found.shaft_stress,
            Stress::to_mpa,
            three(|it| it.shaft),
        );
        all_three(
            "torque",
            &found.holds,
            Torque::to_newton_metres,
            three(|it| it.torque),
        );
        // Warm it until it is a thousandth of the diameter wider than the shank: 11.5 µm per metre and kelvin.
        let warmer = |interference: f64| (interference + seat / 1000.0) / seat / 11.5e-6;
        // To go on, the peaks must go on too: nothing is flattened yet at the least.
        let least = f64::max(lower - 18.0, 0.0) / 1000.0;
        let wanted = [warmer(least), warmer(likely), warmer(tight)];
        all_three(
            "warmer",
            &found.warmer_by,
            TemperatureStep::to_kelvins,
            wanted,
        );
        near("wall", found.wall.to_mm(), (sizes[2] - seat) / 2.0);
    }
}

/// The sleeve of 24 mm by numbers that anybody can follow: p6 in H7 at its greatest, 0.029 mm on 16.0235 mm.
/// Ring (576 + 256.75)/(576 − 256.75) = 2.6085, so p = 0.029/16.0235 · 205 000/(2.6085 + 1) = 102.8 N/mm², and the sleeve
/// feels p √(2.6085² + 2.6085 + 1) = 331 N/mm².
#[test]
fn one_sleeve_in_round_figures() {
    let found = sleeve(&sleeved(SleeveDuty::MediumTorque, ShaftClass::P6, "24"));
    let pressure = found.pressure.range.unwrap().high.to_mpa();
    let stress = found.sleeve_stress.range.unwrap().high.to_mpa();
    assert!((pressure - 102.8).abs() < 0.1, "{pressure}");
    assert!((stress - 331.0).abs() < 1.0, "{stress}");
    // Loose at its least: 18 µm of shank in 18 µm of hole, so it may hold nothing at all.
    assert!(found.pressure.range.unwrap().low.to_mpa().abs() < 1e-12);
}

/// A sleeve only holds as far as it goes on: no farther than the receiver is deep, nor than the shank is straight.
#[test]
fn the_seat_is_no_longer_than_the_sleeve() {
    let job = sleeved(SleeveDuty::FullTorque, ShaftClass::S6, "26");
    let holds = |job: &Job| sleeve(job).holds.value.to_newton_metres();
    let whole = holds(&job);
    let half = holds(&with(job.clone(), &[(Field::ReceiverDepth, "24.1")]));
    near("half the seat", half, whole / 2.0);
    let deep = holds(&with(job, &[(Field::ReceiverDepth, "60")]));
    near("deeper than the shank", deep, whole);
}

/// Only a bored shank under the sleeve is softer: a hole that ends before it changes nothing.
#[test]
fn only_the_hole_under_the_sleeve_counts() {
    let mut job = with(
        sleeved(SleeveDuty::FullTorque, ShaftClass::S6, "26"),
        &[(Field::ReceiverDepth, "20")],
    );
    let solid = sleeve(&job).pressure.value;
    job.part.bores = vec![drilled("8", "20", BoreBottom::Flat)];
    assert_eq!(sleeve(&job).pressure.value, solid, "it falls off");
    job.part.bores = vec![drilled("8", "40", BoreBottom::Flat)];
    assert!(sleeve(&job).pressure.value < solid);
}

#[test]
fn a_glued_sleeve_is_not_judged_by_its_pressure() {
    let mut job = sleeved(SleeveDuty::Adhesive, ShaftClass::H6, "24");
    set(&mut job, Field::DutyTorque, "20 N·m");
    let plan = plan(&job);
    let judged = |it: &Code| matches!(it, Code::SleeveYields | Code::SleeveMaySlip { .. });
    assert!(
        !plan.findings.iter().any(|it| judged(&it.code)),
        "{:?}",
        codes(&plan)
    );
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    /// More interference presses more everywhere; a thicker sleeve presses more and is itself strained less.
    #[test]
    fn interference_and_wall_go_the_right_way(
        lower in 20_u32..60, width in 1_u32..15, more in 1_u32..40, outside in 190_u32..300, thicker in 1_u32..100,
    ) {
        let job = |shift: u32, outside: u32| {
            let mut job = sleeved(SleeveDuty::FullTorque, ShaftClass::S6, "26");
            let um = |value: u32| mm(&format!("{}.{:03}", value / 1000, value % 1000));
            let (upper, lower) = (um(lower + width + shift), um(lower + shift));
            job.wanted.tolerance = Tolerance::Limits { upper, lower };
            let tenths = format!("{}.{}", outside / 10, outside % 10);
            set(&mut job, Field::Receiver(skimwright::job::ReceiverField::Outside), &tenths);
            job
        };
        let (here, tighter, thick) =
            (sleeve(&job(0, outside)), sleeve(&job(more, outside)), sleeve(&job(0, outside + thicker)));
        for figure in [&here.pressure, &here.sleeve_stress, &here.shaft_stress] {
            let range = figure.range.unwrap();
            prop_assert!(range.low <= figure.value && figure.value <= range.high);
        }
        prop_assert!(tighter.pressure.value > here.pressure.value);
        prop_assert!(tighter.holds.value > here.holds.value);
        prop_assert!(tighter.warmer_by.value > here.warmer_by.value);
        prop_assert!(thick.pressure.value > here.pressure.value);
        prop_assert!(thick.sleeve_stress.value < here.sleeve_stress.value);
    }
}

/// A sleeve with the limits that go with what it has to hold is no mistake; one that is glued has nothing to press.
#[test]
fn an_ordinary_sleeve_does_not_give_way() {
    for duty in SleeveDuty::ALL {
        let job = sleeved(duty, duty.fit().1, "26");
        let plan = plan(&job);
        assert!(
            !codes(&plan).contains(&"sleeve-yields".to_owned()),
            "{duty:?}"
        );
        let receiver = plan.receiver.unwrap();
        assert_eq!(receiver.sleeve.is_none(), duty == SleeveDuty::Adhesive);
        // ISO 286-2, H7 at 16 mm: +18 and 0 micrometres.
        let hole = receiver.hole.unwrap();
        assert!(
            (hole.low.to_mm() - 16.0).abs() < 1e-9 && (hole.high.to_mm() - 16.018).abs() < 1e-9
        );
    }
}

/// 10 kW at 300 revolutions a minute are 318 newton metres, whichever way the torque is entered.
#[test]
fn a_sleeve_slips_under_power_as_under_torque() {
    let slips = |changes: &[(Field, &str)]| {
        let job = with(
            sleeved(SleeveDuty::LightTorque, ShaftClass::P6, "26"),
            changes,
        );
        codes(&plan(&job)).contains(&"sleeve-may-slip".to_owned())
    };
    assert!(slips(&[(Field::DutyTorque, "318 N·m")]));
    assert!(slips(&[
        (Field::DutyPower, "10 kW"),
        (Field::DutySpeed, "300 rpm")
    ]));
}
