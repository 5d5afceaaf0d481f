//! What an instrument of the shop is good for at a size: entered, or usual of its kind.

use serde::Serialize;

use crate::job::{Instrument, InstrumentKind, Job, Measured};
use crate::quantity::{Entered, Length};
use crate::tables::{COMPARATOR_ERROR, instrument_error, instrument_errors, usual_instrument};

/// How far a pocket roughness tester may be off, either way, as a share of what it shows, and how much the surface
/// itself varies from stroke to stroke, as a standard deviation.
///
/// # Source
/// From memory of makers' lists; the variation is common practice, no source.
pub const ROUGHNESS_ERROR: [f64; 2] = [0.10, 0.10];

/// What an instrument is good for at a size. Limits are either way.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct InstrumentFigures {
    /// What it is.
    pub kind: InstrumentKind,
    /// One division of its scale or step of its display.
    pub graduation: Length,
    /// Standard deviation of repeated readings at one place.
    pub repeat: Length,
    /// How far its own scale may be off between what it is set on and the size.
    pub error: Length,
    /// Whether it only compares with a known size.
    pub compares: bool,
    /// How far what it is set on may be off; zero where its scale alone counts.
    pub setting: Length,
}

/// What an instrument of a job's shop is good for when it measures `of` and shows `size`; an instrument that is not in
/// the list, or `None`, is a usual micrometer, and of a runout a usual indicator.
///
/// # Source
/// Permissible errors: [`instrument_errors`]; past the end of a table in proportion to the size, common practice.
/// Between the known size and the instrument's range away from it, the error of a comparison grows in proportion to the
/// whole permissible error: common practice, no source. A known size is as good as a gauge block of grade 1; an
/// indicator without one was set with a micrometer.
/// # Example
/// ```
/// use skimwright::job::{Job, Measured, WorkPlace};
/// use skimwright::measuring::instrument_figures;
/// use skimwright::quantity::Length;
/// let of = Measured::Diameter(WorkPlace::Middle);
/// let usual = instrument_figures(&Job::default(), None, &of, Length::mm(16.0));
/// assert_eq!(usual.error, Length::um(4.0));
/// ```
pub fn instrument_figures(
    job: &Job,
    instrument: Option<u8>,
    of: &Measured,
    size: Length,
) -> InstrumentFigures {
    let listed = instrument.and_then(|index| job.shop.instruments.get(usize::from(index)));
    match (listed, of) {
        (_, Measured::Roughness) => roughness_figures(size),
        (Some(instrument), _) => figures(instrument, of, size),
        (None, Measured::Runout) => figures(&usual_of(InstrumentKind::Indicator), of, size),
        (None, _) => figures(&usual_of(InstrumentKind::Micrometer), of, size),
    }
}

/// How far an instrument may be off at a size, either way: as entered, or by the table of its kind.
pub fn permissible_error(instrument: &Instrument, size: Length) -> Length {
    entered(instrument.permissible_error.as_ref())
        .unwrap_or_else(|| usual_error(instrument.kind, graduation(instrument), size))
}

/// One division of an instrument: as entered, or usual of its kind.
pub fn graduation(instrument: &Instrument) -> Length {
    let usual = usual_instrument(instrument.kind).graduation;
    entered(instrument.graduation.as_ref()).unwrap_or(usual)
}

/// Standard deviation of repeated readings: as entered, or usual of the kind of instrument.
pub fn repeat(instrument: &Instrument) -> Length {
    let usual = usual_instrument(instrument.kind).repeat;
    entered(instrument.repeat.as_ref()).unwrap_or(usual)
}

fn usual_of(kind: InstrumentKind) -> Instrument {
    Instrument {
        kind,
        ..Instrument::default()
    }
}

/// The most that an entered step, scatter or error can be; anything beyond is a slip, and the usual counts.
const MOST_ENTERED: Length = Length::mm(5.0);

/// An entered step, scatter or error, where it can be one.
fn entered(it: Option<&Entered<Length>>) -> Option<Length> {
    let value = it?.value();
    (Length::ZERO <= value && value <= MOST_ENTERED).then_some(value)
}

fn usual_error(kind: InstrumentKind, step: Length, size: Length) -> Length {
    if kind == InstrumentKind::Gauge {
        return COMPARATOR_ERROR;
    }
    tabled(kind, step, size)
}

/// From the table of a kind; past its end in proportion to the size.
fn tabled(kind: InstrumentKind, step: Length, size: Length) -> Length {
    let last = instrument_errors(kind, step).last();
    instrument_error(kind, step, size)
        .or_else(|| last.map(|row| row.error * (size / row.size)))
        .unwrap_or_default()
}

fn figures(instrument: &Instrument, of: &Measured, size: Length) -> InstrumentFigures {
    let kind = instrument.kind;
    let usual = usual_instrument(kind);
    let step = graduation(instrument);
    // A gauge without a known size is set on gauge blocks of the size wanted, so near that nothing is lost.
    let reference = instrument.reference.as_ref().map(Entered::value);
    let reference = reference.filter(|it| *it > Length::ZERO);
    let reference = match (kind, of) {
        (InstrumentKind::Indicator, Measured::Runout) => None,
        (InstrumentKind::Gauge, _) => Some(reference.unwrap_or(size)),
        _ => reference,
    };
    let (error, setting) = match (reference, kind, of) {
        (Some(reference), ..) => {
            let away = (size - reference).abs();
            let whole = match kind {
                InstrumentKind::Indicator => permissible_error(instrument, away),
                _ => permissible_error(instrument, size),
            };
            let error = usual.comparison + whole * (away / usual.range);
            let block = tabled(InstrumentKind::Gauge, step, reference);
            (error.min(whole), block)
        }
        (None, InstrumentKind::Indicator, Measured::Runout) => {
            (permissible_error(instrument, size), Length::ZERO)
        }
        (None, InstrumentKind::Indicator, _) => (
            permissible_error(instrument, Length::ZERO),
            tabled(InstrumentKind::Micrometer, step, size),
        ),
        (None, ..) => (permissible_error(instrument, size), Length::ZERO),
    };
    InstrumentFigures {
        kind,
        graduation: step,
        repeat: repeat(instrument),
        error,
        compares: reference.is_some(),
        setting,
    }
}

/// A roughness tester belongs to no kind of the list: all that is known is a share of what it shows.
fn roughness_figures(shown: Length) -> InstrumentFigures {
    let [error, varies] = ROUGHNESS_ERROR;
    InstrumentFigures {
        kind: InstrumentKind::Gauge,
        graduation: Length::ZERO,
        repeat: shown * varies,
        error: shown * error,
        compares: false,
        setting: Length::ZERO,
    }
}
