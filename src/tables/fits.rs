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

/// What a shaft is like in a hole whose smallest size is the nominal one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FitKind {
    /// It always has room.
    Clearance,
    /// It has room or is too large, as the two happen to come out.
    Transition,
    /// It is always too large.
    Interference,
}

impl FitKind {
    /// Every kind, loosest first.
    pub const ALL: [Self; 3] = [Self::Clearance, Self::Transition, Self::Interference];

    /// The shaft classes that give this fit in an H hole, the common ones first.
    ///
    /// # Accuracy
    /// In an H7 hole above 3 mm; in a coarser or smaller hole a p shaft may come out as a transition fit.
    /// # Source
    /// ISO 286-1, the hole-basis system. Which are common: its preferred fits, and bearing seats; from memory.
    /// # Example
    /// ```
    /// use skimwright::tables::{FitKind, ShaftClass};
    /// assert_eq!(FitKind::Interference.classes()[0], ShaftClass::P6);
    /// ```
    pub const fn classes(self) -> &'static [ShaftClass] {
        use ShaftClass::{F7, G5, G6, H5, H6, H7, H8, H9, H11, J5, J6, Js5, Js6, K5, K6};
        use ShaftClass::{M5, M6, N6, P6, R6, S6};
        match self {
            Self::Clearance => &[H6, H7, G6, H9, F7, H8, H11, H5, G5],
            Self::Transition => &[K6, Js6, N6, J6, M6, K5, Js5, J5, M5],
            Self::Interference => &[P6, S6, R6],
        }
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
    /// Every duty, in the order in which links count them: append only.
    pub const ALL: [Self; 4] = [
        Self::Adhesive,
        Self::LightTorque,
        Self::MediumTorque,
        Self::FullTorque,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Adhesive => "adhesive",
            Self::LightTorque => "light-torque",
            Self::MediumTorque => "medium-torque",
            Self::FullTorque => "full-torque",
        }
    }

    /// The duty with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|duty| duty.code() == code)
    }

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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::{deviations, hole_deviations};

    #[test]
    fn every_class_has_one_kind_of_fit_and_its_limits_say_the_same() {
        let all = FitKind::ALL.into_iter().flat_map(FitKind::classes);
        let mut count = 0;
        for class in ShaftClass::ALL {
            assert_eq!(
                all.clone().filter(|it| **it == class).count(),
                1,
                "{class:?}"
            );
        }
        for kind in FitKind::ALL {
            for class in kind.classes() {
                for diameter in [5.0, 8.0, 16.0, 25.0, 40.0, 60.0, 100.0] {
                    let nominal = Length::mm(diameter);
                    let hole = hole_deviations(HoleClass::H7, nominal).unwrap();
                    let Some(shaft) = deviations(*class, nominal) else {
                        continue;
                    };
                    let fit = interference(shaft, hole);
                    let found = if fit.high <= Length::ZERO {
                        FitKind::Clearance
                    } else if fit.low >= Length::ZERO {
                        FitKind::Interference
                    } else {
                        FitKind::Transition
                    };
                    assert_eq!(found, kind, "{class:?} {diameter}");
                    count += 1;
                }
            }
        }
        assert!(count > 120, "{count}");
    }
}
