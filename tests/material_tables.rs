//! Stiffness, expansion and strength of the material classes, against published values of single materials.
//!
//! EN 10088-1, EN 1561, EN 1563 and handbook tables; a tool maker's list of material groups to ISO 513 and VDI 3323.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::{Expansion, Length, Stress, TemperatureStep};
use skimwright::tables::{Mechanical, Spread, WorkMaterial, tensile_strength};

/// Only takes up the arithmetic.
const SAME: f64 = 1e-9;

/// A material; modulus in gigapascals, Poisson's ratio, expansion in 10⁻⁶ per kelvin: least, typical, greatest.
type Published = (&'static str, [f64; 3], f64, [f64; 3]);

#[rustfmt::skip]
const PUBLISHED: &[Published] = &[
    ("carbon steel", [200.0, 205.0, 210.0], 0.29, [11.1, 11.5, 12.1]),
    ("low-carbon steel", [200.0, 205.0, 210.0], 0.29, [11.5, 11.7, 12.1]),
    ("Cr-Mo steel", [200.0, 205.0, 210.0], 0.29, [11.1, 12.2, 12.3]),
    ("tool steel, cold work", [205.0, 210.0, 210.0], 0.28, [10.4, 10.4, 10.5]),
    ("tool steel, hot work", [207.0, 210.0, 215.0], 0.3, [10.4, 10.4, 11.5]),
    ("tool steel, oil hardening", [190.0, 210.0, 214.0], 0.29, [10.6, 11.0, 11.7]),
    ("high-speed steel", [207.0, 215.0, 230.0], 0.29, [10.1, 11.0, 11.6]),
    ("martensitic stainless", [200.0, 215.0, 215.0], 0.28, [10.3, 10.5, 10.5]),
    ("martensitic stainless, high carbon", [200.0, 215.0, 215.0], 0.28, [10.1, 10.4, 10.4]),
    ("austenitic stainless", [193.0, 200.0, 200.0], 0.29, [16.0, 16.0, 17.3]),
    ("austenitic stainless, Mo", [193.0, 200.0, 200.0], 0.29, [15.9, 16.0, 16.5]),
    ("grey iron", [103.0, 110.0, 118.0], 0.26, [10.0, 10.5, 12.1]),
    ("ductile iron", [169.0, 169.0, 176.0], 0.275, [11.0, 12.5, 12.5]),
    ("aluminium 6xxx", [68.9, 69.0, 70.0], 0.33, [23.1, 23.6, 24.0]),
    ("aluminium 7xxx", [71.0, 71.7, 72.0], 0.33, [23.0, 23.4, 23.6]),
    ("brass, free cutting", [96.0, 97.0, 103.0], 0.34, [19.0, 20.5, 21.0]),
    ("bronze, leaded tin", [95.0, 100.0, 103.0], 0.34, [18.0, 18.0, 18.5]),
    ("bronze, phosphor", [110.0, 110.0, 117.0], 0.34, [17.8, 17.8, 18.5]),
    ("bronze, aluminium", [107.0, 107.0, 120.0], 0.32, [16.0, 16.2, 17.0]),
    ("titanium alloy", [110.0, 114.0, 120.0], 0.34, [8.6, 8.6, 9.5]),
];

/// The materials of each class, the commonest first.
#[rustfmt::skip]
const CLASSES: &[(WorkMaterial, &[&str])] = &[
    (WorkMaterial::LowCarbonSteel, &["low-carbon steel"]),
    (WorkMaterial::MediumCarbonSteel, &["carbon steel"]),
    (WorkMaterial::AlloySteelTempered, &["Cr-Mo steel"]),
    (WorkMaterial::AlloySteelHard, &["Cr-Mo steel"]),
    (WorkMaterial::ToolSteelAnnealed, &["tool steel, oil hardening", "tool steel, cold work", "tool steel, hot work"]),
    (WorkMaterial::HardenedSteel, &["tool steel, oil hardening", "tool steel, cold work", "tool steel, hot work"]),
    (WorkMaterial::CaseHardenedSteel, &["low-carbon steel", "Cr-Mo steel"]),
    (WorkMaterial::HighSpeedSteelHard, &["high-speed steel"]),
    (WorkMaterial::StainlessMartensitic, &["martensitic stainless", "martensitic stainless, high carbon"]),
    (WorkMaterial::StainlessAustenitic, &["austenitic stainless", "austenitic stainless, Mo"]),
    (WorkMaterial::GreyIron, &["grey iron"]),
    (WorkMaterial::DuctileIron, &["ductile iron"]),
    (WorkMaterial::AluminiumAlloy, &["aluminium 6xxx", "aluminium 7xxx"]),
    (WorkMaterial::Brass, &["brass, free cutting"]),
    (WorkMaterial::Bronze, &["bronze, phosphor", "bronze, leaded tin", "bronze, aluminium"]),
    (WorkMaterial::TitaniumAlloy, &["titanium alloy"]),
];

fn published(name: &str) -> &'static Published {
    PUBLISHED.iter().find(|row| row.0 == name).unwrap()
}

/// The typical value of the commonest, from the least of all to the greatest of all.
fn taken_together(names: &[&str], columns: impl Fn(&Published) -> [f64; 3]) -> [f64; 3] {
    let rows = || names.iter().map(|name| columns(published(name)));
    let least = rows()
        .map(|[least, ..]| least)
        .fold(f64::INFINITY, f64::min);
    let greatest = rows().map(|[.., greatest]| greatest).fold(0.0, f64::max);
    [least, columns(published(names[0]))[1], greatest]
}

#[track_caller]
fn same(what: WorkMaterial, got: [f64; 3], wanted: [f64; 3]) {
    let near = got
        .iter()
        .zip(wanted)
        .all(|(got, wanted)| (got - wanted).abs() < SAME);
    assert!(near, "{what:?}: got {got:?}, wanted {wanted:?}");
}

#[test]
fn stiffness_and_expansion_are_as_published() {
    assert_eq!(CLASSES.len(), WorkMaterial::ALL.len());
    for &(material, names) in CLASSES {
        let got = material.mechanical();
        let modulus = |stress: Stress| stress.to_mpa() / 1000.0;
        let Spread { low, typical, high } = got.elastic_modulus;
        let mut wanted = taken_together(names, |row| row.1);
        if material == WorkMaterial::GreyIron {
            // Low grades go down to 67; the row is that of one grade.
            wanted[0] = 67.0;
        }
        same(material, [low, typical, high].map(modulus), wanted);
        let Spread { low, typical, high } = got.expansion;
        let expansion = [low, typical, high].map(Expansion::to_um_per_m_kelvin);
        same(material, expansion, taken_together(names, |row| row.3));
        assert!((got.poisson - published(names[0]).2).abs() < SAME);
    }
}

/// Tool-maker's list of material groups (two editions agree): tensile strength of the group, megapascals.
#[test]
fn strengths_take_in_those_of_a_second_list() {
    for (material, strength) in [
        (WorkMaterial::LowCarbonSteel, 420.0),
        (WorkMaterial::MediumCarbonSteel, 650.0),
        (WorkMaterial::MediumCarbonSteel, 750.0),
        (WorkMaterial::AlloySteelTempered, 930.0),
        (WorkMaterial::AlloySteelTempered, 1000.0),
        (WorkMaterial::AlloySteelHard, 1350.0),
        (WorkMaterial::ToolSteelAnnealed, 680.0),
        (WorkMaterial::HardenedSteel, 2075.0),
        (WorkMaterial::StainlessMartensitic, 820.0),
        (WorkMaterial::StainlessAustenitic, 600.0),
        (WorkMaterial::TitaniumAlloy, 1050.0),
    ] {
        let range = material.mechanical().tensile_strength;
        let listed = Stress::mpa(strength);
        assert!(
            range.low <= listed && listed <= range.high,
            "{material:?}: {listed:?}"
        );
    }
}

/// Where a class has a hardness that the conversion table of steels covers, both say the same of its strength.
#[test]
fn strength_and_hardness_agree() {
    let mut compared = 0;
    for material in [
        WorkMaterial::AlloySteelTempered,
        WorkMaterial::AlloySteelHard,
        WorkMaterial::StainlessMartensitic,
        WorkMaterial::HardenedSteel,
    ] {
        let got = material.mechanical();
        let hardness = got.usual_hardness.unwrap();
        for end in [hardness.low, hardness.high] {
            if let Some(converted) = tensile_strength(end) {
                compared += 1;
                assert!(
                    got.tensile_strength.low * 0.9 <= converted.high,
                    "{material:?}"
                );
                assert!(
                    converted.low <= got.tensile_strength.high * 1.1,
                    "{material:?}"
                );
            }
        }
    }
    assert_eq!(compared, 7);
}

#[test]
fn ranges_are_in_order() {
    for material in WorkMaterial::ALL {
        let got = material.mechanical();
        let Mechanical {
            elastic_modulus: e,
            expansion: a,
            tensile_strength: s,
            yield_share: y,
            ..
        } = got;
        assert!(e.low <= e.typical && e.typical <= e.high);
        assert!(a.low <= a.typical && a.typical <= a.high);
        assert!(s.low < s.typical && s.typical < s.high);
        assert!(0.0 < y.low && y.low < y.typical && y.typical < y.high && y.high < 1.0);
        assert!(0.2 < got.poisson && got.poisson < 0.5);
        assert!(
            got.usual_hardness
                .is_none_or(|range| range.low < range.high)
        );
    }
}

/// 100 mm of steel at 11.5 grow by 23 µm over 20 kelvins.
#[test]
fn a_length_grows_by_its_expansion() {
    let steel = WorkMaterial::MediumCarbonSteel
        .mechanical()
        .expansion
        .typical;
    let growth = steel.growth(Length::mm(100.0), TemperatureStep::kelvins(20.0));
    assert!((growth.to_um() - 23.0).abs() < SAME);
}
