//! Volumes and masses in a plan against closed forms of solid geometry, against an integration that knows nothing of
//! the program's outlines, and against the masses of bars in trade tables.
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

use skimwright::job::{BoreBottom, Field, Job};
use skimwright::plan::plan;
use skimwright::rework::MetalBudget;
use skimwright::tables::WorkMaterial;
use sound::{cylinder, drilled, set, sound, taper, tapped, with};

#[track_caller]
fn close(what: &str, got: f64, wanted: f64, relative: f64) {
    let off = (got - wanted).abs();
    assert!(
        off <= relative * wanted.abs().max(1.0),
        "{what}: {got}, wanted {wanted}"
    );
}

fn metal(job: &Job) -> MetalBudget {
    plan(job).metal.unwrap()
}

/// A bar of one metre that falls off a shank.
fn bar(diameter: &str) -> Job {
    let mut job = with(sound(), &[(Field::Kerf, "0"), (Field::FacingStock, "0")]);
    job.part.sections = vec![cylinder(diameter, "1050")];
    job
}

/// Diameter, kilograms of a metre and half of the last printed digit: round steel bars, EN 10060, mass per metre at
/// 7.85 kg/dm³; from memory.
#[rustfmt::skip]
const BARS: &[(&str, f64, f64)] = &[
    ("10", 0.617, 0.0005), ("12", 0.888, 0.0005), ("16", 1.58, 0.005), ("20", 2.47, 0.005), ("25", 3.85, 0.005),
    ("30", 5.55, 0.005), ("40", 9.86, 0.005), ("50", 15.4, 0.05), ("80", 39.5, 0.05), ("100", 61.7, 0.05),
];

#[test]
fn a_metre_of_steel_bar_weighs_what_trade_tables_say() {
    for &(diameter, printed, half_digit) in BARS {
        let cut = plan(&bar(diameter)).cut_off.unwrap();
        assert!((cut.offcut_length.value.to_mm() - 1000.0).abs() < 1e-9);
        let kilograms = cut.offcut_mass.value.to_grams() / 1000.0;
        assert!(
            (kilograms - printed).abs() <= half_digit,
            "{diameter}: {kilograms}"
        );
    }
}

/// A metre of 20 mm bar is 314.16 cm³; densities in g/cm³ as shop tables give them, from memory.
#[test]
fn other_metals_weigh_by_their_densities() {
    for (material, density) in [
        (WorkMaterial::AluminiumAlloy, 2.7),
        (WorkMaterial::Brass, 8.5),
        (WorkMaterial::StainlessAustenitic, 7.9),
        (WorkMaterial::GreyIron, 7.2),
        (WorkMaterial::TitaniumAlloy, 4.43),
    ] {
        let mut job = bar("20");
        job.part.material = material;
        let mass = plan(&job).cut_off.unwrap().offcut_mass;
        close("grams", mass.value.to_grams(), 314.159_265 * density, 1e-6);
        let range = mass.range.unwrap();
        assert!(range.low <= mass.value && mass.value <= range.high);
    }
}

/// Closed forms: cylinder πr²h, frustum πh(R² + Rr + r²)/3, ring π(R² − r²)h, cone πr²h/3, and for the fillet
/// Pappus: area times the path of its centroid.
#[test]
fn simple_bodies_agree_with_closed_forms() {
    let mut job = with(
        sound(),
        &[(Field::ShoulderRadius, "1.5"), (Field::Countersink, "4.25")],
    );
    job.part.bores = vec![drilled("3", "20", BoreBottom::DrillPoint)];
    let budget = metal(&job);
    let hole = PI * 1.5 * 1.5 * 20.0 + PI * 1.5 * 1.5 * (1.5 / 59_f64.to_radians().tan()) / 3.0;
    close(
        "received",
        budget.received.to_mm3(),
        PI * 100.0 * 80.0 - hole,
        1e-12,
    );
    // 80 − 50 − 1 − 1.3 mm fall off, of which 20 mm are drilled.
    close(
        "offcut",
        budget.offcut.to_mm3(),
        PI * 100.0 * 27.7 - hole,
        1e-12,
    );
    close("kerf", budget.kerf.to_mm3(), PI * 100.0 * 1.3, 1e-12);
    close("facing", budget.facing.to_mm3(), PI * 100.0, 1e-12);
    // The finished shank: aim of 16 h6 (0 to −11 µm), chamfer a frustum, fillet a square ring less a quarter round.
    let (r, f) = (7.997_25, 1.5_f64);
    let chamfer = PI * (r * r + r * (r - 1.0) + (r - 1.0) * (r - 1.0)) / 3.0;
    let square = f * f * 2.0 * PI * (r + f / 2.0);
    let quarter = PI * f * f / 4.0 * 2.0 * PI * (r + f - 4.0 * f / (3.0 * PI));
    let shank = PI * r * r * 49.0 + chamfer + square - quarter;
    // Centre drill A2: pilot 2 mm by 2.5 to 3.3 mm, cone from 4.25 mm.
    let cone = (4.25 - 2.0) / 2.0 * 3_f64.sqrt();
    let centre = PI * 2.9 + PI * cone * (2.125 * 2.125 + 2.125 + 1.0) / 3.0;
    close("centred", budget.centred.to_mm3(), centre, 1e-9);
    close("left", budget.left.to_mm3(), shank - centre, 1e-9);
    close(
        "turned",
        budget.turned.to_mm3(),
        PI * 100.0 * 50.0 - shank,
        1e-9,
    );
}

/// π ∫ (outer² − inner²) dz in thin slices, from radii given as plain functions.
fn integrate(from: f64, to: f64, outer: impl Fn(f64) -> f64, inner: impl Fn(f64) -> f64) -> f64 {
    const SLICES: u32 = 400_000;
    let width = (to - from) / f64::from(SLICES);
    (0..SLICES)
        .map(|slice| {
            let z = from + width * (f64::from(slice) + 0.5);
            let (outer, inner) = (outer(z), inner(z).min(outer(z)));
            PI * (outer * outer - inner * inner) * width
        })
        .sum()
}

/// A part with a taper, a step, a tapped hole in a drilled one and a countersink, sliced by hand.
#[test]
fn a_part_of_many_shapes_agrees_with_slices() {
    let mut job = with(
        sound(),
        &[
            (Field::WantedDiameter, "21"),
            (Field::WantedLength, "60"),
            (Field::ShoulderRadius, "2"),
            (Field::Countersink, "14"),
            (Field::Kerf, "2.5"),
        ],
    );
    job.part.sections = vec![
        taper("26", "23", "40"),
        cylinder("30", "15"),
        taper("28", "24", "45"),
    ];
    job.part.bores = vec![
        drilled("6", "70", BoreBottom::DrillPoint),
        tapped("M10", "45", "52"),
    ];
    let received = |z: f64| {
        if z < 40.0 {
            13.0 - 1.5 * z / 40.0
        } else if z < 55.0 {
            15.0
        } else {
            14.0 - 2.0 * (z - 55.0) / 45.0
        }
    };
    // M10 is 8.376 mm at its crests (ISO 724); a drill point is 118°.
    let slope = 59_f64.to_radians().tan();
    let blind = |z: f64, radius: f64, bottom: f64| {
        if z >= bottom {
            radius
        } else {
            (radius - (bottom - z) * slope).max(0.0)
        }
    };
    let crests = 8.376_202_384_1 / 2.0;
    let hole = |z: f64| blind(z, 3.0, 30.0).max(blind(z, crests, 48.0));
    // 21 h6 is 0 to −13 µm.
    let radius = (21.0 - 0.0065) / 2.0;
    let wanted = |z: f64| {
        if z < 2.0 {
            let u: f64 = 2.0 - z;
            radius + 2.0 - (4.0 - u * u).sqrt()
        } else if z > 59.0 {
            radius - (z - 59.0)
        } else {
            radius
        }
    };
    let countersink = |z: f64| 7.0 - (60.0 - z) * 30_f64.to_radians().tan();
    let finished = |z: f64| wanted(z).min(received(z));
    let budget = metal(&job);
    let relative = 2e-5;
    close(
        "received",
        budget.received.to_mm3(),
        integrate(0.0, 100.0, received, hole),
        relative,
    );
    close(
        "facing",
        budget.facing.to_mm3(),
        integrate(60.0, 61.0, received, hole),
        relative,
    );
    close(
        "kerf",
        budget.kerf.to_mm3(),
        integrate(61.0, 63.5, received, hole),
        relative,
    );
    let offcut = integrate(63.5, 100.0, received, hole);
    close("offcut", budget.offcut.to_mm3(), offcut, relative);
    close(
        "turned",
        budget.turned.to_mm3(),
        integrate(0.0, 60.0, received, finished),
        relative,
    );
    let opened = |z: f64| hole(z).max(countersink(z).min(7.0));
    close(
        "left",
        budget.left.to_mm3(),
        integrate(0.0, 60.0, finished, |z| {
            if z > 55.0 { opened(z) } else { hole(z) }
        }),
        relative,
    );
    close(
        "centred",
        budget.centred.to_mm3(),
        integrate(55.0, 60.0, opened, hole),
        1e-4,
    );
    let mass = plan(&job).cut_off.unwrap().offcut_mass.value.to_grams();
    close("mass", mass, offcut * 7.85e-3, relative);
}

/// A hole wider than the shank leaves no metal, and takes none away that was never there.
#[test]
fn a_hole_wider_than_the_part_leaves_nothing_and_no_less() {
    let mut job = sound();
    job.part.bores = vec![drilled("30", "25", BoreBottom::Flat)];
    set(&mut job, Field::Countersink, "5.3");
    let budget = metal(&job);
    close("offcut", budget.offcut.to_mm3(), PI * 100.0 * 2.7, 1e-9);
    close(
        "received",
        budget.received.to_mm3(),
        PI * 100.0 * 55.0,
        1e-9,
    );
}
