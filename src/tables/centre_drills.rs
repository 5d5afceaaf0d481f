//! Centre drills with a 60° countersink: ISO type A and the inch series.
//!
//! * Source: ISO 866, centre drills type A (the same as DIN 333 form A); DIN 332-1 and ISO 6411, centre holes form A,
//!   for the mouth of the hole and its least depth; ASME B94.11M, combined drills and countersinks, plain type.
//! * Units: millimetres for type A, inches for the inch series.
//! * What is what: the mouth is the diameter of the countersink at the face of the work in a standard hole; the largest
//!   mouth a drill can cut is its body diameter. The least hole depth goes from the face to the end of the pilot's
//!   full diameter. The pilot length goes from the point to where the cone begins.
//! * Left out: types B and R, bell-type inch drills, holes with a pilot over 10 mm, the point angle of the pilot.
//! * Checked: pilot, mouth and depth of the holes against one published table, and by the geometry of the cone. The
//!   tools themselves (body, pilot length, overall length) are from memory in two passes, except inch Nos 3 and 10.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource};
use crate::quantity::Length;

/// Which standard a centre drill follows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CentreDrillStandard {
    /// ISO 866 type A.
    Iso,
    /// ASME B94.11M plain type.
    Asme,
}

/// One size of centre drill, and the standard hole it makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CentreDrill {
    /// The standard it follows.
    pub standard: CentreDrillStandard,
    /// The text that stands for it in files, such as `A2.5` or `asme-3`.
    pub code: &'static str,
    /// How the trade calls it, such as `A2.5` or `No 3`.
    pub designation: &'static str,
    /// Diameter of the pilot.
    pub pilot_diameter: Length,
    /// Diameter of the countersink at the face in a standard hole; the inch series sets none.
    pub countersink_diameter: Option<Length>,
    /// Least length of the pilot; the same as the greatest where the table prints one length.
    pub pilot_length_min: Length,
    /// Greatest length of the pilot.
    pub pilot_length_max: Length,
    /// Diameter of the body: the largest countersink this drill can cut.
    pub body_diameter: Length,
    /// Length over all, of a new drill.
    pub overall_length: Option<Length>,
    /// Least depth of a standard hole, from the face to the end of the pilot's full diameter.
    pub hole_depth_min: Option<Length>,
    /// How far pilot diameter, countersink and hole depth were checked.
    pub confirmed_hole: Confirmed,
    /// How far pilot length, body and overall length were checked.
    pub confirmed_tool: Confirmed,
}

row_index!(
    /// A size of centre drill: the number of its row.
    CentreDrillSize, CentreDrill, CENTRE_DRILLS, code
);

impl CentreDrillSize {
    /// The sizes of one standard, smallest first.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::{CentreDrillSize, CentreDrillStandard};
    /// let smallest = CentreDrillSize::of(CentreDrillStandard::Iso).next().unwrap();
    /// assert_eq!(smallest.code(), "A0.5");
    /// ```
    pub fn of(standard: CentreDrillStandard) -> impl Iterator<Item = Self> {
        Self::all().filter(move |size| size.get().is_some_and(|drill| drill.standard == standard))
    }
}

const fn optional(millimetres: Option<f64>) -> Option<Length> {
    match millimetres {
        Some(millimetres) => Some(Length::mm(millimetres)),
        None => None,
    }
}

/// A row of type A, in millimetres.
#[expect(
    clippy::too_many_arguments,
    reason = "the columns of the printed table"
)]
const fn iso(
    code: &'static str,
    pilot: f64,
    countersink: f64,
    pilot_length_min: f64,
    pilot_length_max: f64,
    body: f64,
    overall: Option<f64>,
    hole_depth_min: Option<f64>,
    confirmed_hole: Confirmed,
) -> CentreDrill {
    CentreDrill {
        standard: CentreDrillStandard::Iso,
        code,
        designation: code,
        pilot_diameter: Length::mm(pilot),
        countersink_diameter: Some(Length::mm(countersink)),
        pilot_length_min: Length::mm(pilot_length_min),
        pilot_length_max: Length::mm(pilot_length_max),
        body_diameter: Length::mm(body),
        overall_length: optional(overall),
        hole_depth_min: optional(hole_depth_min),
        confirmed_hole,
        confirmed_tool: Memory,
    }
}

/// A row of the inch series, in inches.
const fn asme(
    code: &'static str,
    designation: &'static str,
    pilot: f64,
    pilot_length: f64,
    body: f64,
    overall: f64,
    confirmed: Confirmed,
) -> CentreDrill {
    CentreDrill {
        standard: CentreDrillStandard::Asme,
        code,
        designation,
        pilot_diameter: Length::inch(pilot),
        countersink_diameter: None,
        pilot_length_min: Length::inch(pilot_length),
        pilot_length_max: Length::inch(pilot_length),
        body_diameter: Length::inch(body),
        overall_length: Some(Length::inch(overall)),
        hole_depth_min: None,
        confirmed_hole: confirmed,
        confirmed_tool: confirmed,
    }
}

/// The centre drills. Links store the place of a row: the order is frozen, and a new row goes to the end.
#[rustfmt::skip]
pub static CENTRE_DRILLS: &[CentreDrill] = &[
    //  code    pilot mouth  pilot length body  overall      hole depth  hole checked
    // Overall lengths of the three smallest are left open: 20 and 25 mm are both remembered.
    // The hole of 0.63 is in no table that was seen.
    iso("A0.5",   0.5, 1.06,  0.8,  1.0, 3.15,        None,  Some(1.0), OneSource),
    iso("A0.63", 0.63, 1.32,  0.9,  1.2, 3.15,        None,       None, Memory),
    iso("A0.8",   0.8,  1.7,  1.1,  1.5, 3.15,        None,  Some(1.5), OneSource),
    iso("A1",     1.0, 2.12,  1.3,  1.9, 3.15,  Some(31.5),  Some(1.9), OneSource),
    iso("A1.25", 1.25, 2.65,  1.6,  2.2, 3.15,  Some(31.5),  Some(2.3), OneSource),
    iso("A1.6",   1.6, 3.35,  2.0,  2.8,  4.0,  Some(35.5),  Some(2.9), OneSource),
    iso("A2",     2.0, 4.25,  2.5,  3.3,  5.0,  Some(40.0),  Some(3.7), OneSource),
    iso("A2.5",   2.5,  5.3,  3.1,  4.1,  6.3,  Some(45.0),  Some(4.6), OneSource),
    iso("A3.15", 3.15,  6.7,  3.9,  4.9,  8.0,  Some(50.0),  Some(5.9), OneSource),
    iso("A4",     4.0,  8.5,  5.0,  6.2, 10.0,  Some(56.0),  Some(7.4), OneSource),
    iso("A5",     5.0, 10.6,  6.3,  7.5, 12.5,  Some(63.0),  Some(9.2), OneSource),
    iso("A6.3",   6.3, 13.2,  8.0,  9.2, 16.0,  Some(71.0), Some(11.5), OneSource),
    iso("A8",     8.0, 17.0, 10.1, 11.5, 20.0,  Some(80.0), Some(14.8), OneSource),
    iso("A10",   10.0, 21.2, 12.8, 14.2, 25.0, Some(100.0), Some(18.4), OneSource),
    //   code       name     pilot   length  body    overall  checked
    // Nos 00 and 0 were once made with a body of 5/64 in: measure an old one.
    // No 10 is a trade size beyond the standard's table; there is no No 9.
    asme("asme-00", "No 00", 0.0250, 0.0300, 0.1250, 1.1250, Memory),
    asme("asme-0",  "No 0",  0.0312, 0.0380, 0.1250, 1.1250, Memory),
    asme("asme-1",  "No 1",  0.0469, 0.0469, 0.1250, 1.2500, Memory),
    asme("asme-2",  "No 2",  0.0781, 0.0781, 0.1875, 1.8750, Memory),
    asme("asme-3",  "No 3",  0.1094, 0.1094, 0.2500, 2.0000, OneSource),
    asme("asme-4",  "No 4",  0.1250, 0.1250, 0.3125, 2.1250, Memory),
    asme("asme-5",  "No 5",  0.1875, 0.1875, 0.4375, 2.7500, Memory),
    asme("asme-6",  "No 6",  0.2188, 0.2188, 0.5000, 3.0000, Memory),
    asme("asme-7",  "No 7",  0.2500, 0.2500, 0.6250, 3.2500, Memory),
    asme("asme-8",  "No 8",  0.3125, 0.3125, 0.7500, 3.5000, Memory),
    asme("asme-10", "No 10", 0.3750, 0.3750, 1.0000, 3.7500, OneSource),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_standard_grows_and_no_code_stands_twice() {
        for pair in CENTRE_DRILLS.windows(2) {
            if pair[0].standard == pair[1].standard {
                assert!(pair[0].pilot_diameter < pair[1].pilot_diameter);
                assert!(pair[0].pilot_length_max < pair[1].pilot_length_max);
                assert!(pair[0].body_diameter <= pair[1].body_diameter);
                assert!(pair[0].overall_length <= pair[1].overall_length);
            }
        }
        for size in CentreDrillSize::all() {
            assert_eq!(CentreDrillSize::from_code(size.code()), Some(size));
            assert_eq!(CentreDrillSize::from_index(size.index()), Some(size));
        }
        assert_eq!(CentreDrillSize::all().count(), CENTRE_DRILLS.len());
        let iso = CentreDrillSize::of(CentreDrillStandard::Iso).count();
        let asme = CentreDrillSize::of(CentreDrillStandard::Asme).count();
        assert_eq!((iso, asme), (14, 11));
    }

    #[test]
    fn a_drill_can_cut_its_own_standard_hole() {
        for drill in CENTRE_DRILLS {
            assert!(drill.pilot_length_min <= drill.pilot_length_max);
            assert!(drill.pilot_diameter < drill.body_diameter);
            if let Some(mouth) = drill.countersink_diameter {
                assert!(drill.pilot_diameter < mouth && mouth < drill.body_diameter);
            }
        }
    }
}
