//! Collets that a straight shank can be turned for: ISO 15488 (also known as DIN 6499), 5C and R8.
//!
//! * Source: ISO 15488 / DIN 6499 as dimension sheets and collet guides give it; common practice for 5C and R8, which
//!   have no ISO standard.
//! * Units: millimetres; inch sizes are written as inches.
//! * What is what: a collet only closes. It holds a shank from its nominal bore down by its collapse, never a larger one.
//!   The body is the largest diameter of the outer cone, or the parallel part of 5C and R8. The back bore is the hole in
//!   the holder behind the collet.
//! * Where two compilations disagree, the careful value stands: size 50 from 10 mm bore (the other says 6); size 8 is
//!   13.6 mm long (13.5); collapse of 5C and R8 0.10 mm (0.13); largest 5C bore 1 1/16 in (1 1/8 in is sold); body of 5C
//!   31.75 mm (1.238 in is its thread); smallest R8 bore 3 mm (1/16 in is sold). Some sheets begin sizes 20 and 25 at
//!   0.5 mm and size 32 at 1 mm, and one guide lets the collapse of 1 mm begin at 2.5 mm bore.
//! * Left out: sealed and tapping collets, bores above the standard's ("extended"), 1:10 collets, nuts and their torque.
//! * Checked: two compilations against each other; the marks of each row. Bores in steps and the collapse of size 50 are
//!   from memory.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use super::ShaftClass;
use super::iso286::STEP_BOUND;
use crate::quantity::Length;
use ColletSystem::{FiveC, Iso15488, R8};

/// A family of collets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ColletSystem {
    /// ISO 15488: double-slotted collets with an outer cone of 8° a side, in a holder with a nut.
    Iso15488,
    /// 5C: the work-holding collet of lathes and indexing fixtures, drawn in from behind.
    FiveC,
    /// R8: the collet that sits straight in the spindle of many milling machines.
    R8,
}

impl ColletSystem {
    /// Every system, in the order in which they are offered.
    pub const ALL: [Self; 3] = [Iso15488, FiveC, R8];
}

/// One size of collet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Collet {
    /// The system it belongs to.
    pub system: ColletSystem,
    /// The text that stands for it in files, such as `collet-32`.
    pub code: &'static str,
    /// The smallest nominal bore of the set; no smaller shank is counted as held.
    pub smallest_bore: Length,
    /// The largest nominal bore of the set.
    pub largest_bore: Length,
    /// Largest diameter of the body.
    pub body_diameter: Length,
    /// Length of the collet.
    pub overall_length: Length,
    /// The hole behind the collet through which a longer shank can pass; `None` where it is not known.
    pub back_bore: Option<Length>,
    /// The class asked of a shank for the best hold and run-out.
    pub shank_class: ShaftClass,
    /// How far body and length were checked.
    pub confirmed: Confirmed,
    /// How far the range of bores and the collapse were checked.
    pub confirmed_bores: Confirmed,
    /// How far a collet closes: with a bore up to [`SMALL_BORE`], and above it.
    collapse: (Length, Length),
}

/// The largest bore that closes by the lesser amount.
const SMALL_BORE: Length = Length::mm(3.0);

/// The share of an ISO 15488 collet's length that a shank must fill at least. One source, a tool maker's technical page;
/// it speaks of the bore's length, which is a little less than the whole length counted here.
const LEAST_GRIP: f64 = 2.0 / 3.0;

row_index!(
    /// A size of collet: the number of its row.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::ColletSize;
    /// let collet = ColletSize::from_code("collet-32").and_then(ColletSize::get).unwrap();
    /// assert_eq!(collet.largest_bore, Length::mm(20.0));
    /// ```
    ColletSize, Collet, COLLETS, code
);

impl ColletSize {
    /// The sizes of one system, smallest first.
    pub fn of(system: ColletSystem) -> impl Iterator<Item = Self> {
        Self::all().filter(move |size| size.get().is_some_and(|collet| collet.system == system))
    }
}

impl Collet {
    /// How far a collet with this nominal bore closes: the smallest shank that it holds is so much below the bore.
    ///
    /// # Source
    /// ISO 15488: 0.5 mm up to 3 mm bore, 1 mm above (one source). Size 8 and 11 throughout 0.5 mm, size 50 2 mm (from
    /// memory). 5C and R8: common practice.
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::ColletSize;
    /// let collet = ColletSize::from_code("collet-25").and_then(ColletSize::get).unwrap();
    /// assert_eq!(collet.collapse(Length::mm(12.0)), Length::mm(1.0));
    /// assert_eq!(collet.collapse(Length::mm(3.0)), Length::mm(0.5));
    /// ```
    pub fn collapse(&self, bore: Length) -> Length {
        if bore <= SMALL_BORE + STEP_BOUND {
            self.collapse.0
        } else {
            self.collapse.1
        }
    }

    /// The nominal bore of the collet that takes a shank of this diameter; `None` where the set has none.
    ///
    /// For ISO 15488 any diameter in the range is held. A 5C or R8 collet is bored size for size: the diameter must be
    /// that of an inch or a whole-millimetre bore, or less by the collapse at most.
    ///
    /// # Source
    /// ISO 15488 for the rule that a shank lies between bore less collapse and bore. The steps of the bores are common
    /// practice, no source: half millimetres up to 3 mm (size 8 and 11 throughout), whole ones above, every second one in
    /// size 50; 5C by 1/64 in, R8 by 1/16 in, both by whole millimetres.
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::ColletSize;
    /// let bore = |code, mm| {
    ///     let collet = ColletSize::from_code(code).and_then(ColletSize::get).unwrap();
    ///     collet.nominal_bore_for(Length::mm(mm)).map(Length::to_mm)
    /// };
    /// assert_eq!(bore("collet-32", 12.4), Some(13.0));
    /// assert_eq!(bore("collet-32", 20.1), None);
    /// assert_eq!(bore("collet-5c", 12.4), None);
    /// assert_eq!(bore("collet-5c", 11.95), Some(12.0));
    /// ```
    pub fn nominal_bore_for(&self, diameter: Length) -> Option<Length> {
        // A millimetre bore comes first, so that it wins where an inch bore is the same within the arithmetic.
        let steps = match self.system {
            // With bores one collapse apart no diameter is left out.
            Iso15488 => [Some(self.collapse(diameter)), None],
            FiveC => [Some(Length::mm(1.0)), Some(Length::inch(1.0 / 64.0))],
            R8 => [Some(Length::mm(1.0)), Some(Length::inch(1.0 / 16.0))],
        };
        steps
            .into_iter()
            .flatten()
            .map(|step| step * ((diameter - STEP_BOUND) / step).ceil())
            .filter(|&bore| {
                self.smallest_bore - STEP_BOUND <= diameter
                    && bore <= self.largest_bore + STEP_BOUND
                    && bore - self.collapse(bore) <= diameter + STEP_BOUND
            })
            .reduce(Length::min)
    }

    /// The least length of shank that must sit in the collet: two thirds of its length. `None` for 5C and R8, for which
    /// no figure was found.
    ///
    /// # Source
    /// Technical page of a tool maker; one source.
    /// # Example
    /// ```
    /// use skimwright::tables::ColletSize;
    /// let least = |code| ColletSize::from_code(code).and_then(ColletSize::get).unwrap().least_grip();
    /// assert!((least("collet-32").unwrap().to_mm() - 26.67).abs() < 0.01);
    /// assert!(least("collet-r8").is_none());
    /// ```
    pub fn least_grip(&self) -> Option<Length> {
        match self.system {
            Iso15488 => Some(self.overall_length * LEAST_GRIP),
            FiveC | R8 => None,
        }
    }
}

/// A row of ISO 15488, in millimetres: bores, collapse up to 3 mm bore and above, body, length, back bore.
#[expect(
    clippy::too_many_arguments,
    reason = "the columns of the printed table"
)]
const fn iso(
    code: &'static str,
    smallest: f64,
    largest: f64,
    collapse: (f64, f64),
    body: f64,
    length: f64,
    back_bore: Option<f64>,
    confirmed: Confirmed,
    confirmed_bores: Confirmed,
) -> Collet {
    Collet {
        system: Iso15488,
        code,
        smallest_bore: Length::mm(smallest),
        largest_bore: Length::mm(largest),
        body_diameter: Length::mm(body),
        overall_length: Length::mm(length),
        back_bore: match back_bore {
            Some(bore) => Some(Length::mm(bore)),
            None => None,
        },
        shank_class: ShaftClass::H6,
        confirmed,
        confirmed_bores,
        collapse: (Length::mm(collapse.0), Length::mm(collapse.1)),
    }
}

/// The collets. Links store the place of a row: the order is frozen, and a new row goes to the end.
#[rustfmt::skip]
pub static COLLETS: &[Collet] = &[
    //  code         bores        collapse    body  length  back bore   checked     bores checked
    iso("collet-8",   0.5,  5.0, (0.5, 0.5),  8.5,  13.6,  None,       OneSource,  Memory),
    iso("collet-11",  0.5,  7.0, (0.5, 0.5), 11.5,  18.0,  Some( 7.5), TwoSources, OneSource),
    iso("collet-16",  0.5, 10.0, (0.5, 1.0), 17.0,  27.5,  Some(10.5), TwoSources, OneSource),
    iso("collet-20",  1.0, 13.0, (0.5, 1.0), 21.0,  31.5,  Some(13.5), TwoSources, OneSource),
    iso("collet-25",  1.0, 16.0, (0.5, 1.0), 26.0,  34.0,  Some(18.0), TwoSources, OneSource),
    iso("collet-32",  2.0, 20.0, (0.5, 1.0), 33.0,  40.0,  Some(23.5), TwoSources, OneSource),
    iso("collet-40",  3.0, 26.0, (0.5, 1.0), 41.0,  46.0,  Some(30.5), TwoSources, Memory),
    iso("collet-50", 10.0, 34.0, (2.0, 2.0), 52.0,  60.0,  None,       OneSource,  Memory),
    Collet {
        system: FiveC,
        code: "collet-5c",
        smallest_bore: Length::inch(1.0 / 16.0),
        largest_bore: Length::inch(1.062_5),
        body_diameter: Length::inch(1.25),
        overall_length: Length::mm(83.3),
        back_bore: None,
        shank_class: ShaftClass::H9,
        confirmed: Memory,
        confirmed_bores: Memory,
        collapse: (Length::mm(0.1), Length::mm(0.1)),
    },
    Collet {
        system: R8,
        code: "collet-r8",
        smallest_bore: Length::mm(3.0),
        largest_bore: Length::inch(0.875),
        body_diameter: Length::inch(0.949),
        overall_length: Length::mm(101.6),
        back_bore: None,
        shank_class: ShaftClass::H6,
        confirmed: Memory,
        confirmed_bores: Memory,
        collapse: (Length::mm(0.1), Length::mm(0.1)),
    },
];
