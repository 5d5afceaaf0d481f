//! Budgets, means and lines along the work against stored results of `uncertainties` and scipy.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::job::InstrumentKind;
use skimwright::measuring::{
    Corrected, InstrumentFigures, Mean, Placed, Taken, Warmth, bow, correct, line_through,
};
use skimwright::quantity::{Expansion, Length, Temperature, TemperatureStep};
use skimwright::tables::Spread;

/// Made by `tests/outside/measuring.py`: 60 readings, 40 means, 60 lines.
const OUTSIDE: &str = include_str!("outside/measuring.csv");

/// The rows of a kind, an empty cell as `None`.
fn rows(kind: &str) -> Vec<Vec<Option<f64>>> {
    let cell = |it: &str| (!it.is_empty()).then(|| it.parse().unwrap());
    OUTSIDE
        .lines()
        .filter_map(|line| line.strip_prefix(kind)?.strip_prefix(','))
        .map(|line| line.split(',').map(cell).collect())
        .collect()
}

fn spread(cells: &[Option<f64>]) -> Spread<Expansion> {
    let at = |index: usize| Expansion::um_per_m_kelvin(cells[index].unwrap());
    Spread {
        low: at(0),
        typical: at(1),
        high: at(2),
    }
}

fn instrument(cells: &[Option<f64>]) -> InstrumentFigures {
    let at = |index: usize| Length::um(cells[index].unwrap());
    InstrumentFigures {
        kind: InstrumentKind::Micrometer,
        error: at(0),
        compares: false,
        setting: at(1),
        graduation: at(2),
        repeat: at(3),
    }
}

/// Room, its limit, the work's limit, form; then the work's temperature.
fn warmth(cells: &[Option<f64>], work: Option<f64>) -> Warmth {
    let kelvins = |index: usize| TemperatureStep::kelvins(cells[index].unwrap());
    Warmth {
        work: work.map(Temperature::celsius),
        work_limit: kelvins(2),
        room: Temperature::celsius(cells[0].unwrap()),
        room_limit: kelvins(1),
    }
}

/// Whether a number is the wanted one.
#[track_caller]
fn same(got: f64, wanted: f64, within: f64, row: &[Option<f64>]) {
    assert!(
        (got - wanted).abs() <= within,
        "{got} against {wanted}: {row:?}"
    );
}

#[test]
fn readings_are_worth_what_a_library_says() {
    let rows = rows("reading");
    assert_eq!(rows.len(), 60);
    for row in &rows {
        let worth = correct(&Taken {
            shown: Length::mm(row[0].unwrap()),
            instrument: instrument(&row[1..5]),
            instrument_expansion: spread(&row[5..8]),
            work_expansion: spread(&row[8..11]),
            warmth: Some(warmth(&row[11..14], row[15])),
            form: Length::um(row[14].unwrap()),
        });
        // In millimetres and micrometres: twelve digits behind the point were written down.
        same(worth.value.to_mm(), row[16].unwrap(), 2e-12, row);
        same(worth.uncertainty.to_um(), row[17].unwrap(), 1e-10, row);
        same(worth.own.to_um(), row[18].unwrap(), 1e-10, row);
        let squares = worth.own.to_um().hypot(worth.common.to_um());
        same(squares, row[17].unwrap(), 1e-10, row);
    }
}

#[test]
fn means_carry_what_readings_share() {
    let rows = rows("mean");
    assert_eq!(rows.len(), 40);
    for row in &rows {
        let (alpha, work_alpha, bench) = (&row[0..3], &row[3..6], &row[6..10]);
        let count = if row[10] == Some(1.0) { 1 } else { 2 };
        let figures = &row[11..11 + 4 * count];
        let (wanted, readings) = row[11 + 4 * count..].split_at(3);
        let worth: Vec<Corrected> = readings
            .chunks(3)
            .map(|reading| {
                let which = usize::from(reading[0] == Some(1.0));
                let taken = Taken {
                    shown: Length::mm(reading[1].unwrap()),
                    instrument: instrument(&figures[4 * which..]),
                    instrument_expansion: spread(alpha),
                    work_expansion: spread(work_alpha),
                    warmth: Some(warmth(bench, reading[2])),
                    form: Length::um(bench[3].unwrap()),
                };
                Corrected {
                    instrument: Some(u8::try_from(which).unwrap()),
                    ..correct(&taken)
                }
            })
            .collect();
        let mean = Mean::of(&worth).unwrap();
        same(mean.value.to_mm(), wanted[0].unwrap(), 2e-12, row);
        same(mean.uncertainty.to_um(), wanted[1].unwrap(), 1e-9, row);
        same(mean.own.to_um(), wanted[2].unwrap(), 1e-9, row);
    }
}

#[test]
fn lines_and_bows_are_those_of_a_solver() {
    let rows = rows("taper");
    assert_eq!(rows.len(), 60);
    let mut bows = 0;
    for row in &rows {
        let places: Vec<Placed> = row[4..]
            .chunks(3)
            .map(|place| Placed {
                at: Length::mm(place[0].unwrap()),
                diameter: Length::mm(place[1].unwrap()),
                uncertainty: Length::um(place[2].unwrap()),
            })
            .collect();
        let line = line_through(&places).unwrap();
        // The solver stops at about eight digits.
        let slope_uncertainty = row[1].unwrap();
        same(line.slope, row[0].unwrap(), 1e-7 * slope_uncertainty, row);
        same(
            line.slope_uncertainty,
            slope_uncertainty,
            1e-6 * slope_uncertainty,
            row,
        );
        let bow = bow(&places);
        assert_eq!(bow.is_some(), row[2].is_some(), "{row:?}");
        if let (Some(bow), Some(bulge), Some(uncertainty)) = (bow, row[2], row[3]) {
            bows += 1;
            same(bow.bulge.to_mm(), bulge, 1e-6 * uncertainty, row);
            same(
                bow.uncertainty.to_mm(),
                uncertainty,
                1e-6 * uncertainty,
                row,
            );
        }
    }
    assert!(bows >= 40, "{bows}");
}
