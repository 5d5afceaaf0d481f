//! Limit deviations of shafts: h5 to h9, g6, k6 up to 180 mm.
//!
//! * Source: ISO 286-2, tables of limit deviations for shafts (and the grades of ISO 286-1, table 1).
//! * Units: micrometres from the nominal size, upper then lower; a step is over its first and up to and including its
//!   second bound, in millimetres.
//! * Left out: other letters and grades, holes, and sizes over 180 mm.
//! * Checked: every cell against a table made for a fits library, and against one or two printed shaft tables; k6 over
//!   80 mm against the library's table only.
//! * The printed tables rule, not the formulas behind them, which round differently and fail in the first step.
//! * Licence: facts only.

use super::Confirmed;
use crate::quantity::Length;

/// A tolerance class for a shaft: how far its size may lie from the nominal one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ShaftClass {
    /// h5: nominal size or a little below, fine.
    H5,
    /// h6: the usual class of ground shanks and plain shanks.
    H6,
    /// h7: nominal size or below, turned with care.
    H7,
    /// h8: nominal size or below, ordinary turning.
    H8,
    /// h9: nominal size or below, drawn bar and coarse work.
    H9,
    /// g6: always below nominal, to slide or turn in an H7 hole.
    G6,
    /// k6: nominal size or above, to be tapped into an H7 hole.
    K6,
}

impl ShaftClass {
    /// Every class, in the order of the table's columns, which links count them by: append only.
    pub const ALL: [Self; 7] = [
        Self::H5,
        Self::H6,
        Self::H7,
        Self::H8,
        Self::H9,
        Self::G6,
        Self::K6,
    ];

    /// The class as a drawing writes it, such as `h6`; also its text in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::H5 => "h5",
            Self::H6 => "h6",
            Self::H7 => "h7",
            Self::H8 => "h8",
            Self::H9 => "h9",
            Self::G6 => "g6",
            Self::K6 => "k6",
        }
    }

    /// The class with this code. Small letters only: a capital means a hole.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|class| class.code() == code)
    }
}

/// How far the largest and the smallest permitted diameter lie from the nominal one, positive outwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Deviations {
    /// Largest diameter less nominal diameter.
    pub upper: Length,
    /// Smallest diameter less nominal diameter.
    pub lower: Length,
}

/// Within this a computed diameter counts as the bound of a step: 3.000 000 000 4 mm is 3 mm.
/// A millionth of a millimetre is far above the error of the arithmetic and far below any real difference.
const STEP_BOUND: Length = Length::mm(1e-6);

/// The deviations of a class at a nominal diameter over 0 and up to 180 mm; `None` outside it.
///
/// # Accuracy
/// Exact, in whole micrometres as tabled.
/// # Source
/// ISO 286-2, limit deviations for shafts.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{ShaftClass, deviations};
/// let fit = deviations(ShaftClass::G6, Length::mm(25.0)).unwrap();
/// assert_eq!((fit.upper, fit.lower), (Length::um(-7.0), Length::um(-20.0)));
/// assert!(deviations(ShaftClass::G6, Length::mm(181.0)).is_none());
/// ```
pub fn deviations(class: ShaftClass, nominal: Length) -> Option<Deviations> {
    let step = step_of(nominal)?;
    ShaftClass::ALL
        .into_iter()
        .zip(step.columns)
        .find(|(column, _)| *column == class)
        .map(|(_, deviations)| deviations)
}

/// How far the cell that [`deviations`] reads was checked; `None` where it has no cell.
pub fn confirmed_deviations(class: ShaftClass, nominal: Length) -> Option<Confirmed> {
    let step = step_of(nominal)?;
    // Only the fits library was at hand for k6 in the two largest steps.
    let one_source = class == ShaftClass::K6 && step.over >= Length::mm(80.0);
    Some(if one_source {
        Confirmed::OneSource
    } else {
        Confirmed::TwoSources
    })
}

fn step_of(nominal: Length) -> Option<&'static Step> {
    STEPS
        .iter()
        .find(|step| step.over + STEP_BOUND < nominal && nominal <= step.upto + STEP_BOUND)
}

/// A step of nominal sizes with the deviations of every class.
struct Step {
    over: Length,
    upto: Length,
    columns: [Deviations; 7],
}

const fn step(over: f64, upto: f64, columns: [Deviations; 7]) -> Step {
    Step {
        over: Length::mm(over),
        upto: Length::mm(upto),
        columns,
    }
}

const fn um(upper: f64, lower: f64) -> Deviations {
    Deviations {
        upper: Length::um(upper),
        lower: Length::um(lower),
    }
}

#[rustfmt::skip]
static STEPS: &[Step] = &[
    //   over   to      h5                h6                h7                h8                h9                g6                 k6
    step(  0.0,   3.0, [um( 0.0,   -4.0), um( 0.0,   -6.0), um( 0.0,  -10.0), um( 0.0,  -14.0), um( 0.0,  -25.0), um(-2.0,   -8.0), um( 6.0,    0.0)]),
    step(  3.0,   6.0, [um( 0.0,   -5.0), um( 0.0,   -8.0), um( 0.0,  -12.0), um( 0.0,  -18.0), um( 0.0,  -30.0), um(-4.0,  -12.0), um( 9.0,    1.0)]),
    step(  6.0,  10.0, [um( 0.0,   -6.0), um( 0.0,   -9.0), um( 0.0,  -15.0), um( 0.0,  -22.0), um( 0.0,  -36.0), um(-5.0,  -14.0), um(10.0,    1.0)]),
    step( 10.0,  18.0, [um( 0.0,   -8.0), um( 0.0,  -11.0), um( 0.0,  -18.0), um( 0.0,  -27.0), um( 0.0,  -43.0), um(-6.0,  -17.0), um(12.0,    1.0)]),
    step( 18.0,  30.0, [um( 0.0,   -9.0), um( 0.0,  -13.0), um( 0.0,  -21.0), um( 0.0,  -33.0), um( 0.0,  -52.0), um(-7.0,  -20.0), um(15.0,    2.0)]),
    step( 30.0,  50.0, [um( 0.0,  -11.0), um( 0.0,  -16.0), um( 0.0,  -25.0), um( 0.0,  -39.0), um( 0.0,  -62.0), um(-9.0,  -25.0), um(18.0,    2.0)]),
    step( 50.0,  80.0, [um( 0.0,  -13.0), um( 0.0,  -19.0), um( 0.0,  -30.0), um( 0.0,  -46.0), um( 0.0,  -74.0), um(-10.0,  -29.0), um(21.0,    2.0)]),
    step( 80.0, 120.0, [um( 0.0,  -15.0), um( 0.0,  -22.0), um( 0.0,  -35.0), um( 0.0,  -54.0), um( 0.0,  -87.0), um(-12.0,  -34.0), um(25.0,    3.0)]),
    step(120.0, 180.0, [um( 0.0,  -18.0), um( 0.0,  -25.0), um( 0.0,  -40.0), um( 0.0,  -63.0), um( 0.0, -100.0), um(-14.0,  -39.0), um(28.0,    3.0)]),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_join_and_widen() {
        for pair in STEPS.windows(2) {
            assert_eq!(pair[0].upto, pair[1].over);
            for (smaller, larger) in pair[0].columns.iter().zip(&pair[1].columns) {
                assert!(smaller.upper - smaller.lower < larger.upper - larger.lower);
            }
        }
        for step in STEPS {
            for column in step.columns {
                assert!(column.lower < column.upper);
            }
        }
    }

    #[test]
    fn a_bound_belongs_to_the_step_below_it() {
        let lower = |mm| deviations(ShaftClass::H6, Length::mm(mm)).map(|d| d.lower);
        assert_eq!(lower(3.0), Some(Length::um(-6.0)));
        assert_eq!(lower(3.0 + 1e-9), Some(Length::um(-6.0)));
        assert_eq!(lower(3.001), Some(Length::um(-8.0)));
        assert_eq!(lower(180.0), Some(Length::um(-25.0)));
        assert_eq!(lower(0.0), None);
        assert_eq!(lower(-5.0), None);
        assert_eq!(lower(180.001), None);
    }

    #[test]
    fn codes_lead_back() {
        for class in ShaftClass::ALL {
            assert_eq!(ShaftClass::from_code(class.code()), Some(class));
        }
        assert_eq!(ShaftClass::from_code("H6"), None);
    }
}
