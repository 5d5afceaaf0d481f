//! Limit deviations of shafts and holes, and the standard tolerance grades IT5 to IT11, up to 180 mm.
//!
//! * Source: ISO 286-1, table 1 (grades) and the tables of fundamental deviations; ISO 286-2, tables of limit deviations.
//! * Units: micrometres; a step is over the bound before it and up to and including its own, in millimetres.
//! * How it is kept: as the standard builds it, a grade and where a letter begins. One limit is printed, the other lies
//!   one grade away. Holes K, N, P of grade 7 are printed as such: their shift of IT7 less IT6 is already counted.
//! * Left out: other letters and grades, and sizes over 180 mm.
//! * Checked: every limit against a table made for a fits library, and against one or two printed tables (shafts of
//!   general use, bearing seats and housings). [`confirmed_deviations`] and [`confirmed_hole_deviations`] say which cell
//!   had one source only; j5 and j6 over 120 mm are from memory.
//! * The printed tables rule, not the formulas behind them, which round differently and fail in the first step.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
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
    /// js5: evenly about the nominal size, small bearing seats.
    Js5,
    /// j5: about the nominal size, small bearing seats.
    J5,
    /// j6: about the nominal size, bearing seats under light load.
    J6,
    /// js6: evenly about the nominal size.
    Js6,
    /// k5: nominal size or above, the usual bearing seat.
    K5,
    /// m5: above nominal, larger bearing seats.
    M5,
    /// m6: above nominal, to be driven into an H7 hole.
    M6,
    /// n6: above nominal, a tight transition fit in H7.
    N6,
    /// p6: above nominal, a light press fit in H7.
    P6,
    /// r6: above nominal, a press fit in H7.
    R6,
    /// s6: above nominal, a heavy press or shrink fit in H7.
    S6,
    /// f7: below nominal, to turn freely in an H8 hole.
    F7,
    /// g5: always below nominal, a fine sliding fit.
    G5,
    /// h11: nominal size or far below, black and drawn bar.
    H11,
}

impl ShaftClass {
    /// Every class, in the order in which links count them: append only.
    pub const ALL: [Self; 21] = [
        Self::H5,
        Self::H6,
        Self::H7,
        Self::H8,
        Self::H9,
        Self::G6,
        Self::K6,
        Self::Js5,
        Self::J5,
        Self::J6,
        Self::Js6,
        Self::K5,
        Self::M5,
        Self::M6,
        Self::N6,
        Self::P6,
        Self::R6,
        Self::S6,
        Self::F7,
        Self::G5,
        Self::H11,
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
            Self::Js5 => "js5",
            Self::J5 => "j5",
            Self::J6 => "j6",
            Self::Js6 => "js6",
            Self::K5 => "k5",
            Self::M5 => "m5",
            Self::M6 => "m6",
            Self::N6 => "n6",
            Self::P6 => "p6",
            Self::R6 => "r6",
            Self::S6 => "s6",
            Self::F7 => "f7",
            Self::G5 => "g5",
            Self::H11 => "h11",
        }
    }

    /// The class with this code. Small letters only: a capital means a hole.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|class| class.code() == code)
    }

    /// The tolerance grade that gives its width: 6 for h6.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::ShaftClass;
    /// assert_eq!(ShaftClass::Js5.grade(), 5);
    /// ```
    pub const fn grade(self) -> u8 {
        match self {
            Self::H5 | Self::Js5 | Self::J5 | Self::K5 | Self::M5 | Self::G5 => 5,
            Self::H6
            | Self::G6
            | Self::K6
            | Self::J6
            | Self::Js6
            | Self::M6
            | Self::N6
            | Self::P6
            | Self::R6
            | Self::S6 => 6,
            Self::H7 | Self::F7 => 7,
            Self::H8 => 8,
            Self::H9 => 9,
            Self::H11 => 11,
        }
    }
}

/// A tolerance class for a hole: how far its size may lie from the nominal one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HoleClass {
    /// H6: nominal size or a little above, fine.
    H6,
    /// H7: the usual reamed or bored hole.
    H7,
    /// H8: nominal size or above, ordinary boring.
    H8,
    /// G7: always above nominal.
    G7,
    /// K7: about the nominal size.
    K7,
    /// N7: below nominal, a tight transition fit on h6.
    N7,
    /// P7: below nominal, a press fit on h6.
    P7,
}

impl HoleClass {
    /// Every class, in the order in which links count them: append only.
    pub const ALL: [Self; 7] = [
        Self::H6,
        Self::H7,
        Self::H8,
        Self::G7,
        Self::K7,
        Self::N7,
        Self::P7,
    ];

    /// The class as a drawing writes it, such as `H7`; also its text in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::H6 => "H6",
            Self::H7 => "H7",
            Self::H8 => "H8",
            Self::G7 => "G7",
            Self::K7 => "K7",
            Self::N7 => "N7",
            Self::P7 => "P7",
        }
    }

    /// The class with this code. Capitals only: a small letter means a shaft.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|class| class.code() == code)
    }

    /// The tolerance grade that gives its width: 7 for H7.
    pub const fn grade(self) -> u8 {
        match self {
            Self::H6 => 6,
            Self::H7 | Self::G7 | Self::K7 | Self::N7 | Self::P7 => 7,
            Self::H8 => 8,
        }
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

impl Deviations {
    /// From micrometres, as tables print them.
    pub(crate) const fn um(upper: f64, lower: f64) -> Self {
        Self {
            upper: Length::um(upper),
            lower: Length::um(lower),
        }
    }
}

/// Within this a computed diameter counts as the bound of a step: 3.000 000 000 4 mm is 3 mm.
/// A millionth of a millimetre is far above the error of the arithmetic and far below any real difference.
pub(super) const STEP_BOUND: Length = Length::mm(1e-6);

/// The deviations of a shaft class at a nominal diameter over 0 and up to 180 mm; `None` outside it.
///
/// # Accuracy
/// Exact, as tabled: whole micrometres, halves for js.
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
#[expect(clippy::many_single_char_names, reason = "the letters of the standard")]
pub fn deviations(class: ShaftClass, nominal: Length) -> Option<Deviations> {
    use ShaftClass as S;
    let step = step_of(nominal)?;
    let width = step.width(class.grade())?;
    let [f, g, j, k, m, n, p] = step.letters.map(f64::from);
    let from_lower = |lower: f64| Deviations::um(lower + width, lower);
    let from_upper = |upper: f64| Deviations::um(upper, upper - width);
    Some(match class {
        S::H5 | S::H6 | S::H7 | S::H8 | S::H9 | S::H11 => from_upper(0.0),
        S::F7 => from_upper(f),
        S::G5 | S::G6 => from_upper(g),
        S::Js5 | S::Js6 => Deviations::um(width / 2.0, -width / 2.0),
        S::J5 | S::J6 => from_lower(j),
        S::K5 | S::K6 => from_lower(k),
        S::M5 | S::M6 => from_lower(m),
        S::N6 => from_lower(n),
        S::P6 => from_lower(p),
        S::R6 => from_lower(f64::from(press_step_of(nominal)?.r)),
        S::S6 => from_lower(f64::from(press_step_of(nominal)?.s)),
    })
}

/// The deviations of a hole class at a nominal diameter over 0 and up to 180 mm; `None` outside it.
///
/// # Accuracy
/// Exact, in whole micrometres as tabled.
/// # Source
/// ISO 286-2, limit deviations for holes.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{HoleClass, hole_deviations};
/// let hole = hole_deviations(HoleClass::H7, Length::mm(25.0)).unwrap();
/// assert_eq!((hole.upper, hole.lower), (Length::um(21.0), Length::ZERO));
/// assert!(hole_deviations(HoleClass::H7, Length::ZERO).is_none());
/// ```
pub fn hole_deviations(class: HoleClass, nominal: Length) -> Option<Deviations> {
    let step = step_of(nominal)?;
    let width = step.width(class.grade())?;
    let [_, g, ..] = step.letters.map(f64::from);
    let [k, n, p] = step.holes.map(f64::from);
    let from_upper = |upper: f64| Deviations::um(upper, upper - width);
    Some(match class {
        HoleClass::H6 | HoleClass::H7 | HoleClass::H8 => Deviations::um(width, 0.0),
        // A hole G begins as far above the nominal size as a shaft g ends below it.
        HoleClass::G7 => Deviations::um(width - g, -g),
        HoleClass::K7 => from_upper(k),
        HoleClass::N7 => from_upper(n),
        HoleClass::P7 => from_upper(p),
    })
}

/// The width of a standard tolerance grade at a nominal diameter over 0 and up to 180 mm.
///
/// `grade`: 5 to 11. `None` for another grade or outside the diameters.
///
/// # Accuracy
/// Exact, in whole micrometres as tabled.
/// # Source
/// ISO 286-1, table 1.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::tolerance_grade;
/// assert_eq!(tolerance_grade(7, Length::mm(25.0)), Some(Length::um(21.0)));
/// assert_eq!(tolerance_grade(12, Length::mm(25.0)), None);
/// ```
pub fn tolerance_grade(grade: u8, diameter: Length) -> Option<Length> {
    step_of(diameter)?.width(grade).map(Length::um)
}

/// How far the cell that [`deviations`] reads was checked; `None` where it has no cell.
pub fn confirmed_deviations(class: ShaftClass, nominal: Length) -> Option<Confirmed> {
    use ShaftClass as S;
    let upto = step_of(nominal)?.upto;
    Some(match class {
        S::J5 | S::J6 if upto > 120 => Memory,
        S::J5 | S::J6 if upto > 80 || upto <= 3 => OneSource,
        // Only the fits library was at hand in the two largest steps, and only a table of common shafts for r6.
        S::K5 | S::K6 | S::M5 | S::M6 | S::N6 | S::P6 | S::S6 if upto > 80 => OneSource,
        S::R6 => OneSource,
        _ => TwoSources,
    })
}

/// How far the cell that [`hole_deviations`] reads was checked; `None` where it has no cell.
pub fn confirmed_hole_deviations(class: HoleClass, nominal: Length) -> Option<Confirmed> {
    let upto = step_of(nominal)?.upto;
    Some(match class {
        // Built by the standard's rule from the shaft g; nothing printed was seen.
        HoleClass::G7 => OneSource,
        HoleClass::P7 if upto <= 6 => OneSource,
        _ => TwoSources,
    })
}

fn step_of(nominal: Length) -> Option<&'static Step> {
    find_step(STEPS, |step| step.upto, nominal)
}

fn press_step_of(nominal: Length) -> Option<&'static PressStep> {
    find_step(PRESS_STEPS, |step| step.upto, nominal)
}

/// The step that a diameter lies in, of steps that join each other and begin at nought.
pub(super) fn find_step<S>(
    steps: &'static [S],
    upto: impl Fn(&S) -> u8,
    nominal: Length,
) -> Option<&'static S> {
    if nominal <= STEP_BOUND {
        return None;
    }
    steps
        .iter()
        .find(|step| nominal <= Length::mm(f64::from(upto(step))) + STEP_BOUND)
}

/// The first grade that [`Step::grades`] holds.
const FIRST_GRADE: u8 = 5;

/// A step of nominal sizes.
struct Step {
    /// Its upper bound in millimetres; the lower one is that of the row before.
    upto: u8,
    /// IT5 to IT11.
    grades: [u8; 7],
    /// Upper deviations of f and g, lower ones of j, k, m, n and p.
    letters: [i8; 7],
    /// Upper deviations of the holes K7, N7 and P7.
    holes: [i8; 3],
}

impl Step {
    /// The width of a grade in micrometres.
    fn width(&self, grade: u8) -> Option<f64> {
        let place = grade.checked_sub(FIRST_GRADE)?;
        self.grades.get(usize::from(place)).copied().map(f64::from)
    }
}

const fn step(upto: u8, grades: [u8; 7], letters: [i8; 7], holes: [i8; 3]) -> Step {
    Step {
        upto,
        grades,
        letters,
        holes,
    }
}

#[rustfmt::skip]
static STEPS: &[Step] = &[
    //   to   IT5  IT6  IT7  IT8  IT9  IT10 IT11    f    g    j   k   m   n   p     K7   N7   P7
    step(  3, [ 4,   6,  10,  14,  25,  40,  60], [ -6,  -2,  -2, 0,  2,  4,  6], [ 0,  -4,  -6]),
    step(  6, [ 5,   8,  12,  18,  30,  48,  75], [-10,  -4,  -2, 1,  4,  8, 12], [ 3,  -4,  -8]),
    step( 10, [ 6,   9,  15,  22,  36,  58,  90], [-13,  -5,  -2, 1,  6, 10, 15], [ 5,  -4,  -9]),
    step( 18, [ 8,  11,  18,  27,  43,  70, 110], [-16,  -6,  -3, 1,  7, 12, 18], [ 6,  -5, -11]),
    step( 30, [ 9,  13,  21,  33,  52,  84, 130], [-20,  -7,  -4, 2,  8, 15, 22], [ 6,  -7, -14]),
    step( 50, [11,  16,  25,  39,  62, 100, 160], [-25,  -9,  -5, 2,  9, 17, 26], [ 7,  -8, -17]),
    step( 80, [13,  19,  30,  46,  74, 120, 190], [-30, -10,  -7, 2, 11, 20, 32], [ 9,  -9, -21]),
    step(120, [15,  22,  35,  54,  87, 140, 220], [-36, -12,  -9, 3, 13, 23, 37], [10, -10, -24]),
    step(180, [18,  25,  40,  63, 100, 160, 250], [-43, -14, -11, 3, 15, 27, 43], [12, -12, -28]),
];

/// A step of the press fits, which are finer above 50 mm: lower deviations of r and s.
struct PressStep {
    upto: u8,
    r: i8,
    s: i8,
}

const fn press(upto: u8, r: i8, s: i8) -> PressStep {
    PressStep { upto, r, s }
}

#[rustfmt::skip]
static PRESS_STEPS: &[PressStep] = &[
    //    to    r    s
    press(  3, 10,  14),
    press(  6, 15,  19),
    press( 10, 19,  23),
    press( 18, 23,  28),
    press( 30, 28,  35),
    press( 50, 34,  43),
    press( 65, 41,  53),
    press( 80, 43,  59),
    press(100, 51,  71),
    press(120, 54,  79),
    press(140, 63,  92),
    press(160, 65, 100),
    press(180, 68, 108),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_grow() {
        for pair in STEPS.windows(2) {
            assert!(pair[0].upto < pair[1].upto);
            for (smaller, larger) in pair[0].grades.iter().zip(pair[1].grades) {
                assert!(*smaller < larger);
            }
        }
        for step in STEPS {
            assert!(step.grades.is_sorted_by(|a, b| a < b));
            assert!(step.letters.is_sorted());
            assert!(step.holes.is_sorted_by(|a, b| a > b));
            // Every bound of the coarse steps is one of the fine ones too.
            assert!(PRESS_STEPS.iter().any(|press| press.upto == step.upto));
        }
        assert!(
            PRESS_STEPS
                .is_sorted_by(|one, next| one.upto < next.upto && one.r < next.r && one.s < next.s)
        );
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
            assert_eq!(HoleClass::from_code(class.code()), None);
        }
        for class in HoleClass::ALL {
            assert_eq!(HoleClass::from_code(class.code()), Some(class));
            assert_eq!(ShaftClass::from_code(class.code()), None);
        }
    }
}
