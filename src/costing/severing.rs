//! How long it takes to cut the shank through: by the area of the section, or under the lathe's own feed.

use core::fmt;

use serde::Serialize;

use super::three_point::{ThreePoint, ThreePointError};
use crate::cutting::is_hard;
use crate::job::CutOffMethod;
use crate::quantity::{Area, Time};
use crate::tables::WorkMaterial;

/// The largest section that the rates are meant for: a solid bar of 350 mm.
pub const LARGEST_SECTION: Area = Area::mm2(100_000.0);

/// The area cut through in one minute.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RatePerMinute {
    /// At the slowest.
    pub low: Area,
    /// Likely.
    pub likely: Area,
    /// At the quickest.
    pub high: Area,
}

/// Cutting through a section, with its time. One that exists can be done.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Severing {
    method: CutOffMethod,
    by_area: ThreePoint,
    feeding: Option<Time>,
}

/// Why a section cannot be cut through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SeveringError {
    /// A saw does not cut this material: use a disc or a wheel.
    TooHardToSaw(WorkMaterial),
    /// The area is not above zero, or is above [`LARGEST_SECTION`].
    Section(Area),
    /// The time under feed is no duration.
    Feeding(ThreePointError),
}

/// How fast a method goes through a material; `None` for a saw in hard material.
///
/// # Accuracy
/// A wide guess: machine, blade and hand each count for a factor of two. "Hard" is as [`is_hard`] says; titanium and
/// stainless steels lie at the slow end. In hard work the rate of disc and wheel counts the pauses for cooling.
/// # Source
/// From memory. Saw: the slow end is a hacksaw, the quick end a band saw.
/// # Example
/// ```
/// use skimwright::costing::severing_rate;
/// use skimwright::job::CutOffMethod::{HandDisc, Saw};
/// use skimwright::tables::WorkMaterial::{HardenedSteel, LowCarbonSteel};
/// assert_eq!(severing_rate(HandDisc, LowCarbonSteel).unwrap().likely.to_mm2(), 400.0);
/// assert_eq!(severing_rate(Saw, HardenedSteel), None);
/// ```
pub const fn severing_rate(method: CutOffMethod, material: WorkMaterial) -> Option<RatePerMinute> {
    let (low, likely, high) = match (method, is_hard(material)) {
        (CutOffMethod::HandDisc, false) => (200.0, 400.0, 800.0),
        (CutOffMethod::HandDisc, true) => (80.0, 200.0, 400.0),
        (CutOffMethod::ChopWheel, false) => (800.0, 2000.0, 4000.0),
        (CutOffMethod::ChopWheel, true) => (300.0, 800.0, 2000.0),
        (CutOffMethod::Saw, false) => (60.0, 400.0, 1500.0),
        (CutOffMethod::Saw, true) => return None,
        (CutOffMethod::PartingTool, false) => (200.0, 500.0, 1200.0),
        (CutOffMethod::PartingTool, true) => (50.0, 150.0, 400.0),
    };
    Some(RatePerMinute {
        low: Area::mm2(low),
        likely: Area::mm2(likely),
        high: Area::mm2(high),
    })
}

impl Severing {
    /// Cuts through a section at the usual rate.
    ///
    /// `section`: the metal in the cut, holes taken off; above zero, at most [`LARGEST_SECTION`].
    ///
    /// # Errors
    /// [`SeveringError::TooHardToSaw`] for a saw in hard material, [`SeveringError::Section`] for an area out of range.
    /// # Accuracy
    /// That of [`severing_rate`].
    /// # Source
    /// Area over rate; rates from memory.
    /// # Example
    /// ```
    /// use skimwright::costing::Severing;
    /// use skimwright::job::CutOffMethod;
    /// use skimwright::quantity::{Area, Time};
    /// use skimwright::tables::WorkMaterial;
    /// // 800 mm² at 400 mm² a minute.
    /// let steel = WorkMaterial::LowCarbonSteel;
    /// let cut = Severing::new(CutOffMethod::HandDisc, Area::mm2(800.0), steel).unwrap();
    /// assert_eq!(cut.by_area().likely(), Time::minutes(2.0));
    /// ```
    pub fn new(
        method: CutOffMethod,
        section: Area,
        material: WorkMaterial,
    ) -> Result<Self, SeveringError> {
        let in_range = Area::ZERO < section && section <= LARGEST_SECTION;
        if !in_range {
            return Err(SeveringError::Section(section));
        }
        let rate = severing_rate(method, material).ok_or(SeveringError::TooHardToSaw(material))?;
        let at = |per_minute: Area| Time::minutes(section / per_minute);
        Ok(Self {
            method,
            by_area: ThreePoint::known(at(rate.high), at(rate.likely), at(rate.low)),
            feeding: None,
        })
    }

    /// Parts off in the lathe under a feed, whose time is known and counts as feeding.
    ///
    /// # Errors
    /// [`SeveringError::Feeding`] when the time is below zero or too long.
    pub fn under_feed(feeding: Time) -> Result<Self, SeveringError> {
        ThreePoint::exact(feeding).map_err(SeveringError::Feeding)?;
        Ok(Self {
            method: CutOffMethod::PartingTool,
            by_area: ThreePoint::ZERO,
            feeding: Some(feeding),
        })
    }

    /// How it is cut.
    pub const fn method(self) -> CutOffMethod {
        self.method
    }

    /// The time in the cut by its area; zero under feed.
    pub const fn by_area(self) -> ThreePoint {
        self.by_area
    }

    /// The time under feed, where the lathe feeds and it is known.
    pub const fn feeding(self) -> Option<Time> {
        self.feeding
    }
}

impl fmt::Display for SeveringError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooHardToSaw(material) => {
                let material = material.code();
                write!(f, "a saw does not cut {material}: use a disc or a wheel")
            }
            Self::Section(area) => {
                let (area, most) = (area.to_mm2(), LARGEST_SECTION.to_mm2());
                write!(
                    f,
                    "a section of {area} mm² is not above zero and at most {most} mm²"
                )
            }
            Self::Feeding(error) => error.fmt(f),
        }
    }
}

impl core::error::Error for SeveringError {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_rate_is_in_order_and_slower_in_hard_metal() {
        let hard = WorkMaterial::HardenedSteel;
        for method in CutOffMethod::ALL {
            let soft = severing_rate(method, WorkMaterial::LowCarbonSteel).unwrap();
            assert!(Area::ZERO < soft.low && soft.low < soft.likely && soft.likely < soft.high);
            match severing_rate(method, hard) {
                None => assert_eq!(method, CutOffMethod::Saw),
                Some(rate) => {
                    assert!(rate.low < rate.likely && rate.likely < rate.high);
                    assert!(rate.low < soft.low && rate.high < soft.high);
                }
            }
        }
    }

    #[test]
    fn what_cannot_be_cut_is_refused_with_its_reason() {
        let told = |section: f64| {
            Severing::new(
                CutOffMethod::Saw,
                Area::mm2(section),
                WorkMaterial::HardenedSteel,
            )
            .unwrap_err()
            .to_string()
        };
        assert_eq!(
            told(300.0),
            "a saw does not cut hardened-steel: use a disc or a wheel"
        );
        for out in [0.0, -1.0, 100_001.0] {
            let wanted = format!("a section of {out} mm² is not above zero and at most 100000 mm²");
            assert_eq!(told(out), wanted);
        }
        let error = Severing::under_feed(Time::seconds(-2.0)).unwrap_err();
        assert_eq!(
            error.to_string(),
            "the low time of -2 s is not zero or more"
        );
    }

    #[test]
    fn the_longest_cut_is_an_allowed_duration() {
        for method in CutOffMethod::ALL {
            for material in WorkMaterial::ALL {
                if let Ok(cut) = Severing::new(method, LARGEST_SECTION, material) {
                    let time = cut.by_area();
                    assert_eq!(
                        ThreePoint::new(time.low(), time.likely(), time.high()),
                        Ok(time)
                    );
                }
            }
        }
    }
}
