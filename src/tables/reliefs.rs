//! Undercuts at a shoulder, forms E and F of DIN 509, for grinding and for a mating part without a fillet.
//!
//! * Source: DIN 509, table 1, edition of 1998 with the changes of 2006.
//! * Units: millimetres; a row is for diameters over its first and up to and including its second bound.
//! * What is what: form E cuts into the diameter alone, form F into the diameter and the face. Radius ±0.1, depth +0.1/0,
//!   width +0.2/0, depth into the face +0.05/0; the width on the face is about.
//! * Where sources disagree: the older edition keeps 0.4 x 0.2 to diameters up to 10 mm, and has the smallest row alone; on
//!   the face 0.8 x 0.3 is 2.3 or 2.4 wide, of which the wider, which the mating part must clear, stands.
//! * Left out: forms G and H.
//! * Checked: by the marks of the rows; the width on the face has one source throughout.
//! * Licence: facts only.

use super::Confirmed::{self, OneSource, TwoSources};
use super::iso286::STEP_BOUND;
use crate::quantity::Length;
use UndercutDuty::{Alternating, Usual};

/// What the shaft bears at the shoulder.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum UndercutDuty {
    /// The usual load.
    Usual,
    /// Alternating load: longer radii for a shaft that must not tire.
    Alternating,
}

/// One size of undercut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Undercut {
    /// Radius by depth, as the standard names it, such as `0.8x0.3`.
    pub designation: &'static str,
    /// What it is meant for.
    pub duty: UndercutDuty,
    /// The diameters that it is meant for are over this.
    pub over: Length,
    /// The largest diameter that it is meant for; `None` where there is no bound.
    pub upto: Option<Length>,
    /// Radius, r.
    pub radius: Length,
    /// Depth into the radius of the shaft, t1.
    pub depth: Length,
    /// Width along the axis, f.
    pub width: Length,
    /// Form F only: depth into the face, t2.
    pub face_depth: Length,
    /// Form F only: width on the face, g, about; `None` where it is not known.
    pub face_width: Option<Length>,
    /// How far the row was checked.
    pub confirmed: Confirmed,
}

/// The undercuts for a finished diameter, smallest radius first; none for a diameter that is not above zero.
///
/// # Source
/// DIN 509, table 1.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{UndercutDuty, undercuts};
/// let names: Vec<_> = undercuts(UndercutDuty::Usual, Length::mm(25.0))
///     .map(|undercut| undercut.designation)
///     .collect();
/// assert_eq!(names, ["0.6x0.3", "0.8x0.3"]);
/// ```
pub fn undercuts(duty: UndercutDuty, diameter: Length) -> impl Iterator<Item = &'static Undercut> {
    UNDERCUTS.iter().filter(move |row| {
        row.duty == duty
            && row.over + STEP_BOUND < diameter
            && row.upto.is_none_or(|upto| diameter <= upto + STEP_BOUND)
    })
}

const fn undercut(
    designation: &'static str,
    duty: UndercutDuty,
    (over, upto): (f64, Option<f64>),
    [radius, depth, width, face_depth]: [f64; 4],
    face_width: Option<f64>,
    confirmed: Confirmed,
) -> Undercut {
    Undercut {
        designation,
        duty,
        over: Length::mm(over),
        upto: match upto {
            Some(upto) => Some(Length::mm(upto)),
            None => None,
        },
        radius: Length::mm(radius),
        depth: Length::mm(depth),
        width: Length::mm(width),
        face_depth: Length::mm(face_depth),
        face_width: match face_width {
            Some(width) => Some(Length::mm(width)),
            None => None,
        },
        confirmed,
    }
}

/// The undercuts, forms E and F.
#[rustfmt::skip]
pub static UNDERCUTS: &[Undercut] = &[
    //        name       duty          over    up to          r    t1   f    t2     g          checked
    undercut("0.1x0.1", Usual,       (  0.0, Some(  1.6)), [0.1, 0.1, 0.5, 0.1], None,      OneSource),
    undercut("0.2x0.1", Usual,       (  1.6, Some(  3.0)), [0.2, 0.1, 1.0, 0.1], Some(0.9), TwoSources),
    undercut("0.4x0.2", Usual,       (  3.0, Some( 18.0)), [0.4, 0.2, 2.0, 0.1], Some(1.1), TwoSources),
    undercut("0.6x0.2", Usual,       ( 10.0, Some( 18.0)), [0.6, 0.2, 2.0, 0.1], Some(1.4), TwoSources),
    undercut("0.6x0.3", Usual,       ( 18.0, Some( 80.0)), [0.6, 0.3, 2.5, 0.2], Some(2.1), TwoSources),
    undercut("0.8x0.3", Usual,       ( 18.0, Some( 80.0)), [0.8, 0.3, 2.5, 0.2], Some(2.4), OneSource),
    undercut("1x0.2",   Alternating, ( 18.0, Some( 50.0)), [1.0, 0.2, 2.5, 0.1], Some(1.8), TwoSources),
    undercut("1x0.4",   Usual,       ( 80.0, None),        [1.0, 0.4, 4.0, 0.3], Some(3.2), TwoSources),
    undercut("1.2x0.2", Alternating, ( 18.0, Some( 50.0)), [1.2, 0.2, 2.5, 0.1], Some(2.0), OneSource),
    undercut("1.2x0.4", Usual,       ( 80.0, None),        [1.2, 0.4, 4.0, 0.3], Some(3.4), OneSource),
    undercut("1.6x0.3", Alternating, ( 50.0, Some( 80.0)), [1.6, 0.3, 4.0, 0.2], Some(3.1), TwoSources),
    undercut("2.5x0.4", Alternating, ( 80.0, Some(125.0)), [2.5, 0.4, 5.0, 0.3], Some(4.8), TwoSources),
    undercut("4x0.5",   Alternating, (125.0, None),        [4.0, 0.5, 7.0, 0.3], Some(6.4), TwoSources),
];
