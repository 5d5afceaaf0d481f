//! Readings that contradict what is believed, and what was likely meant.
//!
//! A wrong number costs a question here, and a part if it is believed.

use super::advice::DoubtKind;
use super::learn::OUTLIER;
use crate::quantity::{Entered, Length, Number};

/// Millimetres in an inch.
const INCH: f64 = 25.4;

/// One turn of the thimble of a micrometer, metric and inch.
///
/// # Source
/// The screws of common micrometers: 0.5 mm, and 40 threads to the inch.
const TURNS: [f64; 2] = [0.5, 0.635];

/// By how much a slip is still told from the number meant, at least. Own choice: a fiftieth of a millimetre is what
/// nobody misses by who read the rest right.
const LEAST_REACH: f64 = 0.02;

/// How far a first reading may lie from the size as received, as a share of it, to be taken for the same number slipped.
/// Own choice.
const FIRST_REACH: f64 = 0.05;

/// How far below the lower limit a first reading is doubted. Own choice: such a part would not be worked on.
const FIRST_BELOW: f64 = 0.3;

/// What a reading is held against. Millimetres at 20 °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Known {
    /// What was expected, and its deviation with the reading's own error.
    pub(super) expected: Option<(f64, f64)>,
    /// What it measured before metal came off, and how far two readings of one size lie apart at most.
    pub(super) before: Option<(f64, f64)>,
    /// The largest diameter as received, what it may be off by counted.
    pub(super) received: Option<f64>,
    /// The lower limit of the finished size.
    pub(super) lower: Option<f64>,
}

/// What is odd about a reading, and what was likely meant; `None` where nothing is odd.
///
/// `diameter`: what was read, at 20 °C. `typed`: the same as it was typed.
pub(super) fn doubt(
    diameter: f64,
    typed: &Entered<Length>,
    known: &Known,
) -> Option<(DoubtKind, Option<f64>)> {
    let larger = known
        .before
        .is_some_and(|(before, apart)| diameter > before + apart);
    let impossible = known.received.is_some_and(|received| diameter > received);
    let (expected, reach) = match known.expected {
        Some((expected, deviation)) => {
            let reach = OUTLIER * deviation;
            let near = (diameter - expected).abs() <= reach;
            if near && !larger && !impossible {
                return None;
            }
            (Some(expected), reach.max(LEAST_REACH))
        }
        None if larger && !impossible => return Some((DoubtKind::Larger, None)),
        None if impossible => (known.received, 0.0),
        None => {
            let lower = known.lower?;
            if diameter >= lower - FIRST_BELOW {
                return None;
            }
            (known.received, 0.0)
        }
    };
    // Before anything was measured only a slip of the whole number can be told.
    let reach = match (known.expected, expected) {
        (None, Some(received)) => received * FIRST_REACH,
        _ => reach,
    };
    if let Some((kind, meant)) =
        expected.and_then(|expected| slip(diameter, typed, expected, reach))
    {
        let turns = kind == DoubtKind::WholeTurn || kind == DoubtKind::SwappedDigits;
        if known.expected.is_some() || !turns {
            return Some((kind, Some(meant)));
        }
    }
    let kind = if impossible {
        DoubtKind::Impossible
    } else if larger {
        DoubtKind::Larger
    } else {
        DoubtKind::Unlikely
    };
    Some((kind, None))
}

/// The slip that explains a reading best, within reach.
fn slip(
    diameter: f64,
    typed: &Entered<Length>,
    expected: f64,
    reach: f64,
) -> Option<(DoubtKind, f64)> {
    let whole = [
        (DoubtKind::WrongUnit, diameter * INCH),
        (DoubtKind::WrongUnit, diameter / INCH),
        (DoubtKind::SlippedMark, diameter * 10.0),
        (DoubtKind::SlippedMark, diameter / 10.0),
    ];
    let turns = TURNS.into_iter().flat_map(|turn| {
        [-2.0, -1.0, 1.0, 2.0].map(|turns| (DoubtKind::WholeTurn, diameter + turns * turn))
    });
    let swapped = swapped(typed)
        .into_iter()
        .map(|ratio| (DoubtKind::SwappedDigits, diameter * ratio));
    let miss = |meant: f64| (meant - expected).abs();
    whole
        .into_iter()
        .chain(turns)
        .chain(swapped)
        .filter(|(_, meant)| meant.is_finite() && miss(*meant) <= reach)
        .reduce(|best, next| {
            // Alike, the earlier in the list is the commoner slip.
            if miss(next.1) < miss(best.1) - 1e-9 {
                next
            } else {
                best
            }
        })
}

/// What a plain decimal number becomes, over itself, with two neighbouring digits swapped.
fn swapped(typed: &Entered<Length>) -> Vec<f64> {
    let [term] = typed.entry().terms() else {
        return Vec::new();
    };
    let Number::Decimal { digits, .. } = term.number else {
        return Vec::new();
    };
    let mut found = Vec::new();
    let mut place = 1_u64;
    while place <= digits / 10 {
        let (low, high) = (digits / place % 10, digits / place / 10 % 10);
        let without = digits - (high * 10 + low) * place;
        let other = without + (low * 10 + high) * place;
        if low != high && digits != 0 {
            found.push(ratio(other, digits));
        }
        place = place.saturating_mul(10);
    }
    found
}

/// Two whole numbers of at most fifteen digits, which a float holds exactly.
fn ratio(a: u64, b: u64) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "at most fifteen digits")]
    let ratio = a as f64 / b as f64;
    ratio
}
