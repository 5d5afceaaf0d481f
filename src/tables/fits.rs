//! Fits between a turned shank and a hole, and the rules for a repair sleeve pressed on it.
//!
//! * Source: ISO 286-1 for what a fit is; its preferred fits and the descriptions of ASME B4.2 for the classes; the
//!   handbook allowance rule of 0.0005 to 0.0015 inch per inch for press fits; workshop handbooks for the wall.
//! * Units: interference in micrometres per millimetre of diameter.
//! * Left out: the stress that a press fit causes: work it out before use, in a bronze or thin sleeve above all.
//! * Checked: the sleeve rules are from memory throughout.
//! * Licence: facts only.

use super::Confirmed;
use super::{Deviations, HoleClass, ShaftClass};
use crate::quantity::Length;
use crate::working::Range;

/// How much larger the shaft is than the hole: least and greatest. Negative is clearance.
///
/// Both deviations are from the same nominal diameter.
///
/// # Accuracy
/// Exact; the part that a press fit flattens from the peaks of both surfaces is not taken off.
/// # Source
/// ISO 286-1, definitions of interference and clearance.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::{ShaftClass, bearing_bore, deviations, interference};
/// let seat = Length::mm(25.0);
/// let fit = interference(deviations(ShaftClass::K5, seat).unwrap(), bearing_bore(seat).unwrap());
/// assert!((fit.low.to_um() - 2.0).abs() < 1e-9 && (fit.high.to_um() - 21.0).abs() < 1e-9);
/// ```
pub fn interference(shaft: Deviations, hole: Deviations) -> Range<Length> {
    Range {
        low: shaft.lower - hole.upper,
        high: shaft.upper - hole.lower,
    }
}

/// How a repair sleeve is put on, which says by how much it must be too small.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SleevePress {
    /// A steel sleeve with a wall under a twentieth of the diameter, pressed lightly.
    Light,
    /// A steel sleeve, pressed.
    Standard,
    /// A steel sleeve, heated and shrunk on: the upper practical value.
    Shrink,
    /// A sleeve of cast iron or bronze, pressed.
    IronOrBronze,
}

impl SleevePress {
    /// Every way, in the order in which they are offered.
    pub const ALL: [Self; 4] = [
        Self::Light,
        Self::Standard,
        Self::Shrink,
        Self::IronOrBronze,
    ];

    /// The usual interference on a diameter.
    ///
    /// # Accuracy
    /// A rule of thumb.
    /// # Source
    /// Handbook press-fit allowance rule, 0.0005 to 0.0015 inch per inch; from memory.
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::SleevePress;
    /// let usual = SleevePress::Standard.interference(Length::mm(40.0));
    /// assert!((usual.to_um() - 40.0).abs() < 1e-9);
    /// ```
    pub fn interference(self, diameter: Length) -> Length {
        let micrometres_per_millimetre = match self {
            Self::Light => 0.5,
            Self::Standard => 1.0,
            Self::Shrink => 1.5,
            Self::IronOrBronze => 0.75,
        };
        Length::um(micrometres_per_millimetre * diameter.to_mm())
    }
}

/// What a repair sleeve must carry, which says which classes it and the shank get.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SleeveDuty {
    /// Located, and held with a retaining adhesive: 0.02 to 0.08 mm of clearance on diameter is usual.
    Adhesive,
    /// Pressed on, little torque.
    LightTorque,
    /// Pressed on, some torque.
    MediumTorque,
    /// Pressed or shrunk on, all the torque that the shank carries.
    FullTorque,
}

impl SleeveDuty {
    /// Every duty, in the order in which they are offered.
    pub const ALL: [Self; 4] = [
        Self::Adhesive,
        Self::LightTorque,
        Self::MediumTorque,
        Self::FullTorque,
    ];

    /// The classes of the sleeve's hole and of the shank.
    ///
    /// # Source
    /// ISO 286-1 preferred fits, descriptions of ASME B4.2; from memory. With adhesive anything from H7/h6 to H8/h7 will
    /// do: the finer one is given.
    /// # Example
    /// ```
    /// use skimwright::tables::{HoleClass, ShaftClass, SleeveDuty};
    /// assert_eq!(SleeveDuty::FullTorque.fit(), (HoleClass::H7, ShaftClass::S6));
    /// ```
    pub const fn fit(self) -> (HoleClass, ShaftClass) {
        let shaft = match self {
            Self::Adhesive => ShaftClass::H6,
            Self::LightTorque => ShaftClass::P6,
            Self::MediumTorque => ShaftClass::R6,
            Self::FullTorque => ShaftClass::S6,
        };
        (HoleClass::H7, shaft)
    }
}

/// The least wall of a finished repair sleeve on a shank of this diameter: a twentieth of it, and 2 mm at least.
///
/// # Accuracy
/// A rule of thumb. The floor is given as 1.5 to 2 mm; the greater is used.
/// # Source
/// Workshop handbooks; from memory.
/// # Example
/// ```
/// use skimwright::quantity::Length;
/// use skimwright::tables::least_sleeve_wall;
/// assert_eq!(least_sleeve_wall(Length::mm(25.0)), Length::mm(2.0));
/// assert_eq!(least_sleeve_wall(Length::mm(60.0)), Length::mm(3.0));
/// ```
pub fn least_sleeve_wall(diameter: Length) -> Length {
    (diameter / 20.0).max(Length::mm(2.0))
}

/// How far the sleeve rules were checked.
pub const CONFIRMED_SLEEVE_RULES: Confirmed = Confirmed::Memory;
