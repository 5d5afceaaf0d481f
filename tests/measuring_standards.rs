//! Readings, taper and verdicts against standards and worked examples.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::job::InstrumentKind;
use skimwright::measuring::{
    Contribution, GUARD, InstrumentFigures, Placed, Taken, VerdictIs, Warmth, Zone, correct,
    line_through,
};
use skimwright::quantity::{Expansion, Length, Temperature, TemperatureStep};
use skimwright::tables::Spread;

fn micrometer(error: f64, step: f64, repeat: f64) -> InstrumentFigures {
    InstrumentFigures {
        kind: InstrumentKind::Micrometer,
        graduation: Length::um(step),
        repeat: Length::um(repeat),
        error: Length::um(error),
        compares: false,
        setting: Length::ZERO,
    }
}

fn steel(by: f64) -> Spread<Expansion> {
    Spread {
        low: Expansion::um_per_m_kelvin(11.5 - by),
        typical: Expansion::um_per_m_kelvin(11.5),
        high: Expansion::um_per_m_kelvin(11.5 + by),
    }
}

fn warm(work: f64, limit: f64) -> Warmth {
    Warmth {
        work: Some(Temperature::celsius(work)),
        work_limit: TemperatureStep::kelvins(limit),
        room: Temperature::celsius(20.0),
        room_limit: TemperatureStep::ZERO,
    }
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64) {
    assert!((got - wanted).abs() <= within, "{got} against {wanted}");
}

/// 20.012 mm (u 2.3 µm) read on work of 31 °C (u 1 K), expansion 11.5(6): 20.009 468 482 mm, u 2.314 97 µm by three
/// libraries for the GUM (uncertainties 3.2.3, GTC 1.5.1, metrolopy 1.1.1).
#[test]
fn a_warm_shaft_by_three_libraries() {
    let root3 = 3.0_f64.sqrt();
    let cold = correct(&Taken {
        shown: Length::mm(20.012),
        instrument: micrometer(2.3 * root3, 0.0, 0.0),
        warmth: Some(warm(31.0, root3)),
        work_expansion: steel(0.6 * root3),
        instrument_expansion: steel(0.0),
        form: Length::ZERO,
    });
    close(cold.value.to_mm(), 20.009_468_482, 5e-10);
    close(cold.uncertainty.to_um(), 2.314_97, 5e-5);
}

/// A micrometer of 25 mm on a shaft of 20 mm, 11 K warm: permissible error 4 µm, step 1 µm, three readings that scatter by
/// 1.5 µm, temperature ± 2 K, expansion ± 1, form ± 2 µm. Worked apart: 2.309, 0.289, 0.866, 0.266, 0.127, 1.155 µm,
/// together 2.754 µm. There the step does not shrink with the readings.
#[test]
fn a_micrometer_row_by_row() {
    let taken = Taken {
        shown: Length::mm(20.0),
        instrument: micrometer(4.0, 1.0, 1.5 / 3.0_f64.sqrt()),
        warmth: Some(warm(31.0, 2.0)),
        work_expansion: steel(1.0),
        instrument_expansion: steel(0.0),
        form: Length::um(2.0),
    };
    let worth = correct(&taken);
    let rows = [
        (Contribution::Scale, 2.309),
        (Contribution::Step, 0.289),
        (Contribution::Repeat, 0.866),
        (Contribution::Form, 1.155),
        (Contribution::WorkTemperature, 0.266),
        (Contribution::WorkExpansion, 0.127),
    ];
    assert_eq!(worth.budget.len(), rows.len(), "{worth:?}");
    for (row, (what, wanted)) in worth.budget.iter().zip(rows) {
        assert_eq!(row.what, what);
        close(row.standard().to_um(), wanted, 5e-4);
    }
    close(worth.uncertainty.to_um(), 2.754, 5e-4);
    // Set on a known size near the shaft, within a micrometre: about 1.6 µm.
    let compared = correct(&Taken {
        instrument: InstrumentFigures {
            compares: true,
            ..micrometer(1.0, 1.0, 1.5 / 3.0_f64.sqrt())
        },
        ..taken
    });
    assert_eq!(compared.budget[0].what, Contribution::Comparison);
    close(compared.uncertainty.to_um(), 1.6, 0.05);
}

/// JCGM 100:2008 (GUM), example H.1: an end gauge of 50 mm compared with a standard. 50.000 838 mm, u 32 nm.
///
/// Covered: to first order, the calibrated standard (25 nm), the comparator (repeated observations 5.8 nm, random effects
/// 3.9 nm, systematic effects 6.7 nm), the difference of expansions (2.9 nm) and of temperatures (16.6 nm); that expansion
/// and temperature which both gauges share do nothing. Not covered: terms of second order (34 nm with them), degrees of
/// freedom.
#[test]
fn the_end_gauge_of_the_gum() {
    let root3 = 3.0_f64.sqrt();
    let nm = |it: f64| Length::um(it / 1000.0);
    let comparator = 3.9_f64.hypot(6.7);
    let worth = correct(&Taken {
        shown: Length::mm(50.000_623) + nm(215.0),
        instrument: InstrumentFigures {
            kind: InstrumentKind::Gauge,
            graduation: Length::ZERO,
            repeat: nm(5.8),
            error: nm(comparator * root3),
            compares: true,
            setting: nm(25.0 * root3),
        },
        // The mean temperature of the bed, 19.9 °C; both gauges follow it, the one unlike the other by 0.05 K.
        warmth: Some(Warmth {
            work: None,
            work_limit: TemperatureStep::kelvins(0.05),
            room: Temperature::celsius(19.9),
            room_limit: TemperatureStep::kelvins(0.41 * root3),
        }),
        work_expansion: steel(1.0),
        instrument_expansion: steel(0.0),
        form: Length::ZERO,
    });
    close(worth.value.to_mm(), 50.000_838, 5e-7);
    close(worth.uncertainty.to_um() * 1000.0, 32.0, 0.5);
    let of = |what| {
        let row = worth.budget.iter().find(|row| row.what == what);
        row.map_or(0.0, |row| row.standard().to_um() * 1000.0)
    };
    close(of(Contribution::Setting), 25.0, 0.01);
    close(
        of(Contribution::Repeat).hypot(of(Contribution::Comparison)),
        9.7,
        0.05,
    );
    close(of(Contribution::WorkExpansion), 2.9, 0.05);
    close(of(Contribution::WorkUnlikeRoom), 16.6, 0.05);
    close(of(Contribution::RoomTemperature), 0.0, 1e-9);
}

/// Expansion by hand: 20 mm of steel at 11.5 grow by 0.23 µm/K, and a part 30 K above the room reads 7 µm large. In a room
/// of 30 °C, aluminium of 23.6 shrinks by (23.6 − 11.5) · 10 · 50 mm = 6.05 µm more than a steel scale.
#[test]
fn work_shrinks_by_the_tabled_expansion() {
    let at = |work: Option<f64>, room: f64, shown: f64, alpha: f64| {
        let worth = correct(&Taken {
            shown: Length::mm(shown),
            instrument: micrometer(4.0, 1.0, 1.5),
            warmth: Some(Warmth {
                work: work.map(Temperature::celsius),
                work_limit: TemperatureStep::kelvins(2.0),
                room: Temperature::celsius(room),
                room_limit: TemperatureStep::kelvins(1.0),
            }),
            work_expansion: Spread::exact(Expansion::um_per_m_kelvin(alpha)),
            instrument_expansion: steel(1.0),
            form: Length::um(2.0),
        });
        worth.correction.to_um()
    };
    close(at(Some(21.0), 20.0, 20.0, 11.5), -0.23, 1e-9);
    close(at(Some(50.0), 20.0, 20.0, 11.5), -6.9, 1e-9);
    close(at(None, 30.0, 50.0, 23.6), -6.05, 1e-9);
    close(at(None, 30.0, 50.0, 11.5), 0.0, 1e-9);
}

/// A shaft of 19.987 to 20.000 mm, u 2.754 µm, worked apart: band 4.53 µm, proven from 19.9915 to 19.9955 mm; at 19.9885 mm
/// the odds are 0.707. With 4 µm the two bands are wider than the tolerance.
#[test]
fn guard_bands_leave_a_zone() {
    let zone = Zone {
        lower: Some(Length::mm(19.987)),
        upper: Some(Length::mm(20.0)),
    };
    let u = Length::um(2.754);
    close((u * GUARD).to_um(), 4.53, 5e-3);
    let judge = |size: f64| zone.judge(Length::mm(size), u);
    for (size, wanted) in [
        (19.9824, VerdictIs::Under),
        (19.9826, VerdictIs::NotProven),
        (19.9915, VerdictIs::NotProven),
        (19.9916, VerdictIs::In),
        (19.9954, VerdictIs::In),
        (19.9955, VerdictIs::NotProven),
        (20.0045, VerdictIs::NotProven),
        (20.0046, VerdictIs::Over),
    ] {
        assert_eq!(judge(size), wanted, "{size}");
    }
    let odds = zone.odds_in(Length::mm(19.9885), u).to_whole();
    close(odds, 0.707, 5e-4);
    let coarse = |size: f64| zone.judge(Length::mm(size), Length::um(4.0));
    assert_eq!(coarse(19.9935), VerdictIs::TooCoarse);
    assert_eq!(coarse(20.01), VerdictIs::Over);
    assert_eq!(coarse(19.977), VerdictIs::Under);
}

/// JCGM 106:2012, table 1: a single limit is kept with these odds where the size is so many standard uncertainties inside
/// it (from memory, two decimals).
#[test]
fn odds_at_a_single_limit() {
    let zone = Zone {
        lower: None,
        upper: Some(Length::um(1.6)),
    };
    for (odds, inside) in [
        (0.80, 0.84),
        (0.90, 1.28),
        (0.95, 1.64),
        (0.99, 2.33),
        (0.999, 3.09),
    ] {
        let u = Length::um(0.1);
        let size = Length::um(1.6) - u * inside;
        let got = zone.odds_in(size, u).to_whole();
        close(got, odds, 2e-3);
        let proven = zone.judge(size, u) == VerdictIs::In;
        assert_eq!(proven, inside > 1.645, "{inside}");
    }
}

/// Four diameters, u 1.8 µm, worked apart: mean 20.01025 mm, slope 1.3667e-4 ± 2.683e-5, about the line 1.16 µm; over 90 mm
/// 12.3 ± 4.8 µm, and half of that over 150 mm, 10.3 µm, is the shift. Then four more, by an ordinary-least-squares library
/// (statsmodels 0.15.0): 1.4000e-4 ± 1.41421e-5 from the scatter alone.
#[test]
fn lines_worked_apart() {
    let line = |at: [f64; 4], sizes: [f64; 4], u: f64| {
        let place = |(at, size): (f64, f64)| Placed {
            at: Length::mm(at),
            diameter: Length::mm(size),
            uncertainty: Length::um(u),
        };
        let places: Vec<Placed> = at.into_iter().zip(sizes).map(place).collect();
        line_through(&places).unwrap()
    };
    let four = [20.004, 20.009, 20.011, 20.017];
    let first = line([5.0, 35.0, 65.0, 95.0], four, 1.8);
    close(first.mean.to_mm(), 20.010_25, 1e-9);
    close(first.slope, 1.366_7e-4, 5e-9);
    close(first.slope_uncertainty, 2.683e-5, 5e-9);
    close(first.residual.unwrap().to_um(), 1.16, 5e-3);
    close(first.mean_uncertainty.to_um(), 0.9, 1e-9);
    close(first.slope * 90.0 * 1e3, 12.3, 0.05);
    close(first.slope_uncertainty * 2.0 * 90.0 * 1e3, 4.8, 0.05);
    close(first.slope * 75.0 * 1e3, 10.3, 0.06);
    let scattered = [20.006, 20.009, 20.015, 20.018];
    let second = line([10.0, 40.0, 70.0, 100.0], scattered, 0.01);
    close(second.slope, 1.4e-4, 1e-12);
    close(second.slope_uncertainty, 1.414_21e-5, 5e-11);
}
