//! What a Rockwell C hardness means on other scales, and in tensile strength.
//!
//! * Source: ASTM E140, table 1, for Vickers and Brinell; ISO 18265, table A.1, at whole degrees of Rockwell C, and SAE
//!   J417 for tensile strength of non-alloy and low-alloy steel.
//! * Units: HRC, HV, HBW (10 mm ball, 3000 kgf), megapascals (J417 prints thousands of pounds per square inch).
//! * Left out: other materials, which these tables are not for; hardness below 20 HRC; strength above 57 HRC, where ISO
//!   gives none. ISO begins at 20.3 HRC: its 20 HRC is run on from there by the slope of the first step.
//! * Where they disagree: ISO and J417 by 40 to 120 megapascals from 45 HRC up, and by up to 35 the other way near 35
//!   HRC; both are kept. 62 HRC is 745 or 746 HV by copy (746 here), 42 HRC 194 or 195 ksi (194 here). Brinell from 59
//!   HRC up lies outside the scale's usual range.
//! * Checked: Vickers and Brinell by two sources; ISO strengths by two (20 HRC by none); J417 from 34 HRC up by two,
//!   below from memory.
//! * Licence: facts only.

use super::{Confirmed, Spread};
use crate::quantity::{Hardness, Stress};

/// A Rockwell C hardness on the other scales.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OtherScales {
    /// Vickers, HV: a number of its scale.
    pub vickers: f64,
    /// Brinell with a hard-metal ball, HBW: a number of its scale; `None` above 65 HRC.
    pub brinell: Option<f64>,
}

/// A hardness of 20 to 68 HRC on the Vickers and Brinell scales; `None` outside it.
///
/// # Accuracy
/// Rows at whole degrees, straight lines between them. ISO 18265 gives Vickers within 2, Brinell within 8.
/// # Source
/// ASTM E140, table 1: non-austenitic steels.
/// # Example
/// ```
/// use skimwright::quantity::Hardness;
/// use skimwright::tables::other_scales;
/// let scales = other_scales(Hardness::hrc(45.0)).unwrap();
/// assert_eq!((scales.vickers, scales.brinell), (446.0, Some(421.0)));
/// ```
pub fn other_scales(hardness: Hardness) -> Option<OtherScales> {
    Some(OtherScales {
        vickers: between(VICKERS, hardness, |row| f64::from(*row))?,
        brinell: between(BRINELL, hardness, |row| f64::from(*row)),
    })
}

/// The tensile strength of a steel of 20 to 57 HRC; `None` outside it.
///
/// For non-alloy and low-alloy steel. The range covers the two tables, which disagree a little; the likely value is that
/// of ISO. A single steel can lie several per cent outside.
///
/// # Accuracy
/// An estimate: a tensile test decides.
/// # Source
/// ISO 18265, table A.1, and SAE J417.
/// # Example
/// ```
/// use skimwright::quantity::{Hardness, Stress};
/// use skimwright::tables::tensile_strength;
/// let strength = tensile_strength(Hardness::hrc(50.0)).unwrap();
/// assert_eq!(strength.typical, Stress::mpa(1675.0));
/// assert_eq!(strength.high, Stress::mpa(1758.0));
/// assert!(tensile_strength(Hardness::hrc(60.0)).is_none());
/// ```
pub fn tensile_strength(hardness: Hardness) -> Option<Spread<Stress>> {
    let iso = Stress::mpa(between(STRENGTHS, hardness, |row| f64::from(*row))?);
    let j417 = Stress::mpa(between(J417, hardness, |row| f64::from(*row))?);
    Some(Spread {
        low: iso.min(j417),
        typical: iso,
        high: iso.max(j417),
    })
}

/// How far the strength that [`tensile_strength`] gives was checked; `None` where it gives none.
pub fn confirmed_tensile_strength(hardness: Hardness) -> Option<Confirmed> {
    tensile_strength(hardness)?;
    Some(if hardness < J417_CONFIRMED_FROM {
        Confirmed::Memory
    } else {
        Confirmed::TwoSources
    })
}

/// From here up two sources print the strengths of SAE J417.
pub(super) const J417_CONFIRMED_FROM: Hardness = Hardness::hrc(34.0);

/// The value on the straight line between the two rows about a hardness, of rows at whole degrees from the first.
fn between<R>(rows: &[R], hardness: Hardness, value: impl Fn(&R) -> f64) -> Option<f64> {
    (FIRST_ROW..)
        .zip(rows.windows(2))
        .find_map(|(degree, pair)| {
            let [lower, upper] = pair else { return None };
            let share = hardness.to_hrc() - f64::from(degree);
            let (lower, upper) = (value(lower), value(upper));
            (0.0..=1.0)
                .contains(&share)
                .then_some(lower + (upper - lower) * share)
        })
}

/// The hardness of the first row of each table, HRC.
pub(super) const FIRST_ROW: u8 = 20;

/// Tensile strength in megapascals from 20 HRC, by whole degrees, ISO 18265: worked out between the rows of
/// [`HardnessBasis::Iso18265`](super::HardnessBasis::Iso18265), to the nearest whole number. A test holds the two together.
#[rustfmt::skip]
static STRENGTHS: &[u16] = &[
     765,  780,  797,  818,  835,  854,  872,  897,  919,  944, // 20
     970,  995, 1024, 1052, 1082, 1111, 1139, 1168, 1198, 1227, // 30
    1262, 1296, 1327, 1362, 1401, 1442, 1481, 1524, 1572, 1625, // 40
    1675, 1733, 1792, 1845, 1912, 1979, 2050, 2121, // 50
];

/// Tensile strength in megapascals from 20 HRC, by whole degrees, SAE J417.
#[rustfmt::skip]
pub(super) static J417: &[u16] = &[
     758,  772,  793,  807,  820,  848,  862,  883,  903,  931, // 20
     951,  972, 1007, 1027, 1048, 1076, 1110, 1145, 1179, 1220, // 30
    1255, 1296, 1338, 1386, 1434, 1482, 1524, 1579, 1641, 1696, // 40
    1758, 1820, 1882, 1951, 2013, 2075, 2158, 2241, 2330, 2420, // 50
];

/// Vickers from 20 HRC, by whole degrees.
#[rustfmt::skip]
pub(super) static VICKERS: &[u16] = &[
    238, 243, 248, 254, 260, 266, 272, 279, 286, 294, // 20
    302, 310, 318, 327, 336, 345, 354, 363, 372, 382, // 30
    392, 402, 412, 423, 434, 446, 458, 471, 484, 498, // 40
    513, 528, 544, 560, 577, 595, 613, 633, 653, 674, // 50
    697, 720, 746, 772, 800, 832, 865, 900, 940, // 60
];

/// Brinell from 20 HRC, by whole degrees.
#[rustfmt::skip]
pub(super) static BRINELL: &[u16] = &[
    226, 231, 237, 243, 247, 253, 258, 264, 271, 279, // 20
    286, 294, 301, 311, 319, 327, 336, 344, 353, 362, // 30
    371, 381, 390, 400, 409, 421, 432, 443, 455, 469, // 40
    481, 496, 512, 525, 543, 560, 577, 595, 615, 634, // 50
    654, 670, 688, 705, 722, 739, // 60
];
