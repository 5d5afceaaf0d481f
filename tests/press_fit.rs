//! Sleeves on shafts against printed examples, a numerical solution of the equation behind them, and laws.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use core::f64::consts::PI;

use proptest::prelude::*;
use skimwright::quantity::Expansion;
use skimwright::quantity::{Length, Stress};
use skimwright::strength::{Elastic, Member, PressFit, after_flattening};

const fn elastic(modulus: f64, poisson: f64) -> Elastic {
    Elastic {
        modulus: Stress::mpa(modulus),
        poisson,
    }
}

/// Shaft's hole, seat, outside; both materials; the seat 100 mm long.
const fn fit(sizes: [f64; 3], shaft: Elastic, sleeve: Elastic) -> PressFit {
    PressFit {
        shaft_bore: Length::mm(sizes[0]),
        seat: Length::mm(sizes[1]),
        outside: Length::mm(sizes[2]),
        length: Length::mm(100.0),
        shaft,
        sleeve,
    }
}

#[track_caller]
fn near(got: f64, wanted: f64, share: f64) {
    assert!(
        (got / wanted - 1.0).abs() <= share,
        "{got}, wanted {wanted}"
    );
}

/// Machine-design lecture example (inputs from slides, answers from memory): steel shaft 50/100 mm in a cast-iron disc of
/// 250 mm, hub hoop 30 N/mm², friction 0.15. Printed: 21.72 N/mm², 0.0324 mm on radius, 102.4 kN, 5.12 kN·m.
#[test]
fn the_hub_of_cast_iron_comes_out_as_printed() {
    let fit = fit(
        [50.0, 100.0, 250.0],
        elastic(210e3, 0.3),
        elastic(70e3, 0.25),
    );
    let pressed = fit.pressed(Length::mm(2.0 * 0.0324)).unwrap();
    near(pressed.pressure.to_mpa(), 21.72, 2e-3);
    near(pressed.sleeve_hoop.to_mpa(), 30.0, 2e-3);
    let pressure = Stress::mpa(21.7241);
    near(fit.axial_hold(pressure, 0.15).to_newtons(), 102.4e3, 5e-4);
    near(
        fit.torque_hold(pressure, 0.15).to_newton_metres(),
        5.12e3,
        5e-4,
    );
}

/// Advanced strength-of-materials textbook, compound cylinder of one material: radii 150, 200, 250 mm, 0.1 mm on radius,
/// 200 kN/mm². Printed 12.3 N/mm² (from memory). Poisson's ratio drops out.
#[test]
fn the_compound_cylinder_comes_out_as_printed() {
    for poisson in [0.0, 0.3] {
        let steel = elastic(200e3, poisson);
        let fit = fit([300.0, 400.0, 500.0], steel, steel);
        near(
            fit.pressed(Length::mm(0.2)).unwrap().pressure.to_mpa(),
            12.3,
            5e-4,
        );
    }
}

/// Mechanical Engineering Design, equation for a solid shaft in a hub of the same material, p = E i (D² − d²)/(2 d D²):
/// 50 mm in 100 mm with 0.05 mm at 207 kN/mm² gives 77.625 N/mm² and a hoop of 129.375 N/mm².
#[test]
fn the_solid_shaft_agrees_with_the_short_formula() {
    let steel = elastic(207e3, 0.292);
    let got = fit([0.0, 50.0, 100.0], steel, steel)
        .pressed(Length::mm(0.05))
        .unwrap();
    near(got.pressure.to_mpa(), 77.625, 1e-12);
    near(got.sleeve_hoop.to_mpa(), 129.375, 1e-12);
    near(got.shaft_hoop.to_mpa(), -77.625, 1e-12);
    near(got.shaft_equivalent.to_mpa(), 77.625, 1e-12);
}

/// Shaft's hole, seat, outside, interference, E and ν of the shaft, of the sleeve; pressure, hoop stress of the sleeve's
/// bore, of the shaft at the seat, at the wall of its hole.
///
/// Computed with scipy 1.17.1, `solve_bvp` of u″ + u′/r − u/r² = 0 in both parts at once, tolerance 1e-9.
#[rustfmt::skip]
const SOLVED: &[([f64; 8], [f64; 4])] = &[
    ([50.0, 100.0, 250.0, 0.06475, 210_000.0, 0.3, 70_000.0, 0.25], [21.72290, 29.99829, -36.20483, -57.92773]),
    ([8.0, 20.0, 26.0, 0.02, 207_000.0, 0.29, 207_000.0, 0.29], [39.20824, 152.85529, -54.14471, -93.35294]),
    ([10.0, 20.0, 24.0, 0.015, 205_000.0, 0.29, 105_000.0, 0.34], [11.94888, 66.26196, -19.91480, -31.86368]),
    ([6.0, 12.7, 19.05, 0.012, 210_000.0, 0.3, 110_000.0, 0.35], [28.73027, 74.69871, -45.24061, -73.97088]),
    ([15.0, 25.0, 28.0, 0.02, 200_000.0, 0.27, 70_000.0, 0.33], [5.69054, 50.42753, -12.09241, -17.78295]),
    ([30.0, 60.0, 110.0, 0.05, 115_000.0, 0.26, 206_000.0, 0.3], [36.78445, 67.94304, -61.30742, -98.09187]),
    // A solid shaft, as one with a hole of a thousandth, which doubles the hoop stress at its own wall only.
    ([0.0, 20.0, 26.0, 0.02, 207_000.0, 0.29, 207_000.0, 0.29], [42.25738, 164.74254, -42.25746, -42.25738]),
];

#[test]
fn stresses_agree_with_a_numerical_solution() {
    for &(input, wanted) in SOLVED {
        let [
            bore,
            seat,
            outside,
            interference,
            shaft,
            shaft_poisson,
            sleeve,
            sleeve_poisson,
        ] = input;
        let fit = fit(
            [bore, seat, outside],
            elastic(shaft, shaft_poisson),
            elastic(sleeve, sleeve_poisson),
        );
        let got = fit.pressed(Length::mm(interference)).unwrap();
        let got = [
            got.pressure,
            got.sleeve_hoop,
            got.shaft_hoop,
            got.shaft_bore_hoop,
        ];
        for (got, wanted) in got.into_iter().zip(wanted) {
            assert!(
                (got.to_mpa() / wanted - 1.0).abs() < 1e-4,
                "{input:?}: {} for {wanted}",
                got.to_mpa()
            );
        }
    }
}

/// By hand: 0.02 mm and 0.03 mm clearance on 20 mm at 11.5 µm/(m K): 0.05/(20 · 11.5e-6) = 217.4 K.
#[test]
fn the_sleeve_goes_on_warm() {
    let steel = elastic(207e3, 0.29);
    let fit = fit([0.0, 20.0, 26.0], steel, steel);
    let warm = |expansion| {
        let expansion = Expansion::um_per_m_kelvin(expansion);
        fit.warmer_by(Length::mm(0.02), Length::mm(0.03), expansion)
    };
    near(warm(11.5).unwrap().to_kelvins(), 217.39, 1e-4);
    assert!(warm(0.0).is_none());
}

/// By hand: 20 µm with Rz 4 and 6 µm leave 12 µm.
#[test]
fn flattened_peaks_take_interference_away() {
    let left = after_flattening(Length::um(20.0), Length::um(4.0), Length::um(6.0));
    near(left.to_um(), 12.0, 1e-12);
}

#[test]
fn impossible_fits_are_refused_and_a_gap_presses_nothing() {
    let steel = elastic(207e3, 0.29);
    for sizes in [
        [20.0, 20.0, 26.0],
        [0.0, 20.0, 20.0],
        [-1.0, 20.0, 26.0],
        [0.0, 0.0, 26.0],
    ] {
        assert!(fit(sizes, steel, steel).pressed(Length::mm(0.01)).is_none());
    }
    let soft = elastic(0.0, 0.29);
    assert!(
        fit([0.0, 20.0, 26.0], steel, soft)
            .pressed(Length::mm(0.01))
            .is_none()
    );
    let gap = fit([0.0, 20.0, 26.0], steel, steel)
        .pressed(Length::mm(-0.01))
        .unwrap();
    assert!(gap.pressure.to_mpa().abs() <= 0.0);
}

proptest! {
    #[test]
    fn pressure_follows_sizes_and_materials(
        bore in 0.0..0.9_f64, seat in 3.0..100.0_f64, wall in 0.03..1.0_f64, interference in 0.0001..0.002_f64,
        more in 1.05..2.0_f64, shaft in 60e3..230e3_f64, sleeve in 60e3..230e3_f64, poisson in 0.2..0.4_f64,
    ) {
        let build = |bore: f64, wall: f64, sleeve: f64| fit(
            [bore * seat, seat, seat * (1.0 + 2.0 * wall)], elastic(shaft, poisson), elastic(sleeve, poisson),
        );
        let fit = build(bore, wall, sleeve);
        let press = |fit: PressFit, share: f64| fit.pressed(Length::mm(seat * share)).unwrap();
        let here = press(fit, interference);
        prop_assert!(here.pressure.to_mpa() > 0.0);
        // In proportion to the interference, less with a thinner sleeve, a wider hole, a softer sleeve.
        prop_assert!((press(fit, interference * more).pressure / here.pressure / more - 1.0).abs() < 1e-9);
        prop_assert!(press(build(bore, wall / more, sleeve), interference).pressure < here.pressure);
        prop_assert!(press(build((bore + 0.01) * more.min(1.05), wall, sleeve), interference).pressure < here.pressure);
        prop_assert!(press(build(bore, wall, sleeve / more), interference).pressure < here.pressure);
        // Forces balance over half the sleeve: the mean hoop stress of a thin one is p d over twice the wall.
        prop_assert!(here.sleeve_hoop.to_mpa() > here.pressure.to_mpa() / (2.0 * wall));
        // Hold: pressure times the area of the seat times friction.
        let area = PI * seat * 100.0;
        let hold = fit.axial_hold(here.pressure, 0.12).to_newtons();
        prop_assert!((hold / (0.12 * area * here.pressure.to_mpa()) - 1.0).abs() < 1e-9);
    }

    /// At the largest interference the part named is at its yield strength, and the other is not past it.
    #[test]
    fn the_largest_interference_just_yields(
        bore in 0.0..0.9_f64, wall in 0.03..1.0_f64, shaft in 100.0..1500.0_f64, sleeve in 100.0..1500.0_f64,
    ) {
        let steel = elastic(207e3, 0.29);
        let fit = fit([bore * 20.0, 20.0, 20.0 * (1.0 + 2.0 * wall)], steel, steel);
        let largest = fit.largest_interference(Stress::mpa(shaft), Stress::mpa(sleeve)).unwrap();
        let pressed = fit.pressed(largest.interference).unwrap();
        prop_assert!((pressed.pressure / largest.pressure - 1.0).abs() < 1e-9);
        let used = [pressed.shaft_equivalent.to_mpa() / shaft, pressed.sleeve_equivalent.to_mpa() / sleeve];
        let (yielding, other) = match largest.limited_by {
            Member::Shaft => (used[0], used[1]),
            Member::Sleeve => (used[1], used[0]),
        };
        prop_assert!((yielding - 1.0).abs() < 1e-9 && other <= 1.0 + 1e-9);
    }
}
