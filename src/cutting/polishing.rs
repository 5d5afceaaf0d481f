//! How much must be left on a turned surface for polishing: at least its ridges.

use serde::Serialize;

use crate::quantity::Length;
use crate::tables::Spread;

/// The height from valley to peak over the mean roughness: 4 for the arcs of a nose, f²/(8 · r) over f²/(32 · r).
///
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, surface roughness in machining, for the two figures.
const HEIGHT_OVER_MEAN: f64 = 4.0;

/// The least stock on diameter that polishing must take to get below the ridges of a turned surface: 2 · 4 · Ra.
///
/// `roughness`: the real mean roughness to expect, as [`FinishCut::roughness`](super::FinishCut::roughness) gives it.
///
/// # Accuracy
/// Exact for marks of the nose alone. Torn surfaces have single valleys up to twice as deep, which may stay.
/// # Source
/// The ridge on both sides of the diameter; ratio as for the nose.
/// # Example
/// ```
/// use skimwright::cutting::least_polishing_stock;
/// use skimwright::quantity::Length;
/// use skimwright::tables::Spread;
/// let least = least_polishing_stock(Spread::exact(Length::um(1.6)));
/// assert!((least.typical.to_um() - 12.8).abs() < 1e-9);
/// ```
pub fn least_polishing_stock(roughness: Spread<Length>) -> Spread<Length> {
    roughness.map(|mean| mean * (2.0 * HEIGHT_OVER_MEAN))
}

/// What a polishing stock can do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PolishingVerdict {
    /// It is more than the ridges, even at their highest.
    Enough,
    /// Some of the turning marks may stay at size.
    MarksMayStay,
    /// It is less than the ridges at their likely height: marks will stay at size.
    MarksStay,
}

/// Whether a stock on diameter is enough to polish a surface of a roughness. Common practice leaves 0.02 mm.
///
/// # Accuracy
/// As [`least_polishing_stock`].
/// # Example
/// ```
/// use skimwright::cutting::{PolishingVerdict, polishing_verdict};
/// use skimwright::quantity::Length;
/// use skimwright::tables::Spread;
/// let roughness = Spread { low: Length::um(0.8), typical: Length::um(1.6), high: Length::um(3.2) };
/// // The ridges take 6.4, 12.8 or 25.6 µm off the diameter.
/// let common = polishing_verdict(Length::mm(0.02), roughness);
/// assert_eq!(common, PolishingVerdict::MarksMayStay);
/// ```
pub fn polishing_verdict(stock: Length, roughness: Spread<Length>) -> PolishingVerdict {
    let least = least_polishing_stock(roughness);
    if stock < least.typical {
        PolishingVerdict::MarksStay
    } else if stock < least.high {
        PolishingVerdict::MarksMayStay
    } else {
        PolishingVerdict::Enough
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stock_is_judged_on_both_sides_of_its_limits() {
        let roughness = Spread {
            low: Length::um(1.0),
            typical: Length::um(2.0),
            high: Length::um(3.0),
        };
        for (stock, wanted) in [
            (15.9, PolishingVerdict::MarksStay),
            (16.1, PolishingVerdict::MarksMayStay),
            (23.9, PolishingVerdict::MarksMayStay),
            (24.1, PolishingVerdict::Enough),
        ] {
            assert_eq!(
                polishing_verdict(Length::um(stock), roughness),
                wanted,
                "{stock}"
            );
        }
    }
}
