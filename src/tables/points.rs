//! Vickers and Brinell numbers on the scale on which the program keeps hardness: points of Rockwell C.
//!
//! From 20 HRC up that is ASTM E140 read backwards. Rockwell C is not defined below: there the scale
//! runs straight down to nought, so that every number has a place and a harder steel a higher one. Such a place says no
//! more than soft, and is never shown as Rockwell C.

use super::scales::{HardnessBasis, HardnessScales};
use crate::quantity::Hardness;

/// The softest that Rockwell C measures.
const SOFTEST: Hardness = Hardness::hrc(20.0);

/// The hardest Rockwell C that has a Vickers number.
const HARDEST: Hardness = Hardness::hrc(68.0);

/// The hardest that has a Brinell number.
const HARDEST_BRINELL: Hardness = Hardness::hrc(65.0);

/// The place of a Vickers number on the scale of points; any finite number is taken.
///
/// # Accuracy
/// Straight lines between the rows of whole degrees; above the last row the scale goes on in proportion.
/// # Source
/// ASTM E140, table 1; below 238 HV a convention of our own.
pub(crate) fn points_from_vickers(number: f64) -> f64 {
    points(number, HardnessBasis::from_vickers, |scales| {
        Some(scales.vickers)
    })
}

/// The place of a Brinell number (HBW) on the scale of points; any finite number is taken.
///
/// # Accuracy
/// As [`points_from_vickers`]; Brinell from 59 HRC up lies outside the scale's usual range.
/// # Source
/// ASTM E140, table 1; below 226 HBW a convention of our own.
pub(crate) fn points_from_brinell(number: f64) -> f64 {
    points(number, HardnessBasis::from_brinell, |scales| scales.brinell)
}

fn points(
    number: f64,
    table: impl Fn(HardnessBasis, f64) -> Option<HardnessScales>,
    scale: impl Fn(HardnessScales) -> Option<f64>,
) -> f64 {
    const E140: HardnessBasis = HardnessBasis::E140;
    if let Some(points) = table(E140, number).and_then(|scales| scales.rockwell) {
        return points.to_hrc();
    }
    let at = |points: Hardness| E140.from_rockwell(points).and_then(&scale);
    let softest = at(SOFTEST).unwrap_or(1.0);
    if number <= softest {
        return number / softest * SOFTEST.to_hrc();
    }
    // Beyond the table there is no steel; the scale only has to go on.
    let hardest = [HARDEST, HARDEST_BRINELL]
        .into_iter()
        .find_map(|it| Some((it, at(it)?)));
    hardest.map_or(HARDEST.to_hrc(), |(points, last)| {
        points.to_hrc() * number / last
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Each row of the table leads back to its own degree.
    #[test]
    fn rows_lead_back() {
        for degree in 20_u8..=68 {
            let degree = f64::from(degree);
            let basis = HardnessBasis::E140;
            let scales = basis.from_rockwell(Hardness::hrc(degree)).unwrap();
            assert!((points_from_vickers(scales.vickers) - degree).abs() < 1e-9);
            if let Some(brinell) = scales.brinell {
                assert!((points_from_brinell(brinell) - degree).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn soft_steel_keeps_its_order() {
        assert!((points_from_vickers(119.0) - 10.0).abs() < 1e-12);
        assert!(points_from_brinell(180.0) < points_from_brinell(200.0));
        assert!(points_from_brinell(225.9) < 20.0 && 20.0 < points_from_brinell(226.1));
        assert!(68.0 < points_from_vickers(1000.0));
    }
}
