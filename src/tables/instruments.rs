//! How far measuring instruments may be off, by kind and size, and what is usual of each kind.
//!
//! * Source of outside micrometers and callipers: DIN 863 and DIN 862, a seller's sheet that prints both; the sheet's
//!   merged cells are spread out here. ISO 3611 and ISO 13385-1 name the characteristics and leave the limits to others.
//! * Source of gauge blocks: DIN 861 after ISO 3650, grade 1, two sellers' sheets.
//! * Source of dial gauges: DIN 878, from memory; ISO 463 has no values.
//! * Source of what is usual (step, scatter of repeated readings, error of a comparison): from memory of makers' lists
//!   and common practice; steps of digital instruments.
//! * Units: micrometres, either way, sizes up to and with so many millimetres. A dial gauge's size is the travel that is
//!   used, not the size of the work.
//! * Left out: inside and depth measurements with callipers, which may be off by 20 micrometres more.
//! * Checked: by the marks below.
//! * Licence: facts only.

use super::Confirmed;
use crate::job::InstrumentKind;
use crate::quantity::Length;

/// How far something may be off up to a size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UpTo {
    /// Up to and with this size, or travel.
    pub size: Length,
    /// Either way.
    pub error: Length,
}

/// Outside micrometers, DIN 863.
#[rustfmt::skip]
pub const MICROMETER_ERRORS: [UpTo; 10] = [
    row( 50.0,  4.0),
    row(100.0,  5.0),
    row(150.0,  6.0),
    row(200.0,  7.0),
    row(250.0,  8.0),
    row(300.0,  9.0),
    row(350.0, 10.0),
    row(400.0, 11.0),
    row(450.0, 12.0),
    row(500.0, 13.0),
];

/// Callipers with a step or vernier of 0.02 mm or finer, DIN 862. Above a metre that of a vernier alone.
#[rustfmt::skip]
pub const FINE_CALLIPER_ERRORS: [UpTo; 5] = [
    row( 100.0, 20.0),
    row( 600.0, 30.0),
    row(1000.0, 40.0),
    row(1600.0, 50.0),
    row(2000.0, 60.0),
];

/// Callipers with a vernier of 0.05 or 0.1 mm, DIN 862.
#[rustfmt::skip]
pub const COARSE_CALLIPER_ERRORS: [UpTo; 13] = [
    row( 300.0,  50.0),
    row( 400.0,  60.0),
    row( 500.0,  70.0),
    row( 600.0,  80.0),
    row( 700.0,  90.0),
    row( 800.0, 100.0),
    row( 900.0, 110.0),
    row(1000.0, 120.0),
    row(1200.0, 140.0),
    row(1400.0, 160.0),
    row(1600.0, 180.0),
    row(1800.0, 200.0),
    row(2000.0, 220.0),
];

/// A calliper with a coarser step than this belongs to [`COARSE_CALLIPER_ERRORS`].
pub const FINE_CALLIPER_STEP: Length = Length::mm(0.02);

/// Dial gauges with divisions of 0.01 mm, by the travel used: deviation span over it.
#[rustfmt::skip]
pub const INDICATOR_ERRORS: [UpTo; 5] = [
    row( 0.4,  7.0),
    row( 0.8,  9.0),
    row( 3.0, 12.0),
    row( 5.0, 14.0),
    row(10.0, 17.0),
];

/// Gauge blocks of grade 1, by their length.
#[rustfmt::skip]
pub const GAUGE_BLOCK_ERRORS: [UpTo; 16] = [
    row(  10.0, 0.2),
    row(  25.0, 0.3),
    row(  50.0, 0.4),
    row(  75.0, 0.5),
    row( 100.0, 0.6),
    row( 150.0, 0.8),
    row( 200.0, 1.0),
    row( 250.0, 1.2),
    row( 300.0, 1.4),
    row( 400.0, 1.8),
    row( 500.0, 2.2),
    row( 600.0, 2.6),
    row( 700.0, 3.0),
    row( 800.0, 3.4),
    row( 900.0, 3.8),
    row(1000.0, 4.2),
];

/// What is usual of a kind of instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualInstrument {
    /// One division of its scale or step of its display.
    pub graduation: Length,
    /// Standard deviation of repeated readings at one place, in a machinist's hand.
    pub repeat: Length,
    /// How far it may be off, either way, when it only compares with a known size close by.
    pub comparison: Length,
    /// Its measuring range: so far from the known size its whole permissible error counts again.
    pub range: Length,
}

/// How far a comparator may be off over its own range, either way; from memory.
pub const COMPARATOR_ERROR: Length = Length::um(1.0);

/// What is usual of a kind of instrument.
///
/// # Example
/// ```
/// use skimwright::job::InstrumentKind;
/// use skimwright::quantity::Length;
/// use skimwright::tables::usual_instrument;
/// assert_eq!(usual_instrument(InstrumentKind::Calliper).graduation, Length::mm(0.01));
/// ```
#[rustfmt::skip]
pub const fn usual_instrument(kind: InstrumentKind) -> UsualInstrument {
    match kind {
        //                                     step, scatter, comparison, range in mm
        InstrumentKind::Micrometer => usual([  1.0,   1.5,    1.0,         25.0]),
        InstrumentKind::Calliper   => usual([ 10.0,  10.0,   10.0,        150.0]),
        InstrumentKind::Indicator  => usual([ 10.0,   3.0,    3.0,         10.0]),
        InstrumentKind::Gauge      => usual([  1.0,   0.5,    0.5,          0.1]),
    }
}

/// How far the limits of a kind of instrument were checked.
pub const fn confirmed_instrument_errors(kind: InstrumentKind) -> Confirmed {
    match kind {
        InstrumentKind::Micrometer | InstrumentKind::Calliper => Confirmed::OneSource,
        InstrumentKind::Gauge => Confirmed::TwoSources,
        InstrumentKind::Indicator => Confirmed::Memory,
    }
}

/// How far [`usual_instrument`] was checked.
pub const CONFIRMED_USUAL_INSTRUMENTS: Confirmed = Confirmed::Memory;

/// Diameter of the measuring faces of an outside micrometer: the usual 6.5 mm, from memory.
pub const MICROMETER_FACE: Length = Length::mm(6.5);

/// How far an instrument of a kind may be off at a size, as published; `None` past the end of its table. Of an indicator
/// the size is the travel used; of a gauge it is that of the blocks it is set on. `step` is that of a calliper.
///
/// # Example
/// ```
/// use skimwright::job::InstrumentKind;
/// use skimwright::quantity::Length;
/// use skimwright::tables::instrument_error;
/// let at = |size| instrument_error(InstrumentKind::Micrometer, Length::mm(0.001), Length::mm(size));
/// assert_eq!(at(50.0), Some(Length::um(4.0)));
/// assert_eq!(at(50.1), Some(Length::um(5.0)));
/// assert_eq!(at(501.0), None);
/// ```
pub fn instrument_error(kind: InstrumentKind, step: Length, size: Length) -> Option<Length> {
    instrument_errors(kind, step)
        .iter()
        .find(|row| size <= row.size)
        .map(|row| row.error)
}

/// The limits of a kind of instrument, smallest first.
pub const fn instrument_errors(kind: InstrumentKind, step: Length) -> &'static [UpTo] {
    match kind {
        InstrumentKind::Micrometer => &MICROMETER_ERRORS,
        InstrumentKind::Calliper if step.to_mm() <= FINE_CALLIPER_STEP.to_mm() => {
            &FINE_CALLIPER_ERRORS
        }
        InstrumentKind::Calliper => &COARSE_CALLIPER_ERRORS,
        InstrumentKind::Indicator => &INDICATOR_ERRORS,
        InstrumentKind::Gauge => &GAUGE_BLOCK_ERRORS,
    }
}

const fn row(size: f64, error: f64) -> UpTo {
    UpTo {
        size: Length::mm(size),
        error: Length::um(error),
    }
}

const fn usual([graduation, repeat, comparison, range]: [f64; 4]) -> UsualInstrument {
    UsualInstrument {
        graduation: Length::um(graduation),
        repeat: Length::um(repeat),
        comparison: Length::um(comparison),
        range: Length::mm(range),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn larger_may_be_off_by_more() {
        for kind in InstrumentKind::ALL {
            for step in [0.01, 0.05] {
                let rows = instrument_errors(kind, Length::mm(step));
                for pair in rows.windows(2) {
                    assert!(pair[0].size < pair[1].size, "{kind:?}");
                    assert!(pair[0].error < pair[1].error, "{kind:?}");
                }
            }
        }
    }

    /// DIN 863:1999 gave outside micrometers 4 µm + L/50 mm, L the lower end of the range: from memory.
    #[test]
    fn micrometers_follow_the_old_formula() {
        let mut lower = 0.0;
        for row in MICROMETER_ERRORS {
            assert!((row.error.to_um() - (4.0 + lower / 50.0)).abs() < 1e-9);
            lower = row.size.to_mm();
        }
    }

    /// Three rows of a second seller's sheet of DIN 861, grade 1.
    #[test]
    fn gauge_blocks_agree_with_a_second_sheet() {
        for (length, error) in [(25.0, 0.3), (75.0, 0.5), (1000.0, 4.2)] {
            let got = instrument_error(InstrumentKind::Gauge, Length::ZERO, Length::mm(length));
            assert_eq!(got, Some(Length::um(error)));
        }
    }
}
