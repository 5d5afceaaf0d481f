//! A sleeve pressed or shrunk on a shaft, by the thick-cylinder equations (Lamé).
//!
//! All sizes are diameters, the interference too. The sleeve is as long as the seat, and stress along the axis is
//! left out: the equations for a plate.

use core::f64::consts::PI;

use serde::Serialize;

use crate::quantity::{Expansion, Force, Length, Stress, TemperatureStep, Torque};
use crate::tables::Confirmed;
use crate::working::Source;

/// Where the equations of the press fit come from, for their working.
pub const PRESS_FIT_SOURCE: Source = Source::Published {
    title: "Thick cylinders after Lamé, books of machine design",
    confirmed: Confirmed::TwoSources,
};

/// How a material yields to load.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Elastic {
    /// Modulus of elasticity.
    pub modulus: Stress,
    /// Poisson's ratio, 0 to 0.5.
    pub poisson: f64,
}

/// A sleeve on a shaft.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PressFit {
    /// The hole in the shaft; nothing for a solid one.
    pub shaft_bore: Length,
    /// The diameter at which they meet.
    pub seat: Length,
    /// The sleeve's outside.
    pub outside: Length,
    /// The length of the seat.
    pub length: Length,
    /// The shaft's material.
    pub shaft: Elastic,
    /// The sleeve's material.
    pub sleeve: Elastic,
}

/// What an interference does. Pressing stresses are negative.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pressed {
    /// Pressure between the two.
    pub pressure: Stress,
    /// Hoop stress at the sleeve's bore, its greatest.
    pub sleeve_hoop: Stress,
    /// Equivalent stress there after von Mises.
    pub sleeve_equivalent: Stress,
    /// Hoop stress of the shaft at the seat.
    pub shaft_hoop: Stress,
    /// Hoop stress at the wall of the shaft's hole; the same as at the seat in a solid shaft.
    pub shaft_bore_hoop: Stress,
    /// The shaft's greatest equivalent stress after von Mises.
    pub shaft_equivalent: Stress,
}

/// The largest permissible interference, and which part sets it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Largest {
    /// The interference on diameter.
    pub interference: Length,
    /// The pressure it makes.
    pub pressure: Stress,
    /// Who yields first.
    pub limited_by: Member,
}

/// One of the two.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Member {
    /// The shaft.
    Shaft,
    /// The sleeve.
    Sleeve,
}

impl PressFit {
    /// Pressure and stresses of an interference on diameter; with a gap there is no pressure.
    ///
    /// `None` where a wall has no thickness or a modulus is nothing.
    ///
    /// # Accuracy
    /// Exact while nothing yields, for a sleeve as long as the seat on a shaft that ends with it; where the shaft goes on,
    /// the pressure rises at the sleeve's ends, which is left out.
    /// # Source
    /// Lamé's equations, in any book of machine design: p = (i/d) / (c₁ + c₂), c the compliance of each part.
    /// # Example
    /// A solid steel shaft of 50 mm in a hub of 100 mm with 0.05 mm: 77.6 megapascals.
    /// ```
    /// use skimwright::quantity::{Length, Stress};
    /// use skimwright::strength::{Elastic, PressFit};
    /// let steel = Elastic { modulus: Stress::mpa(207_000.0), poisson: 0.3 };
    /// let fit = PressFit {
    ///     shaft_bore: Length::ZERO,
    ///     seat: Length::mm(50.0),
    ///     outside: Length::mm(100.0),
    ///     length: Length::mm(40.0),
    ///     shaft: steel,
    ///     sleeve: steel,
    /// };
    /// let pressed = fit.pressed(Length::mm(0.05)).unwrap();
    /// assert!((pressed.pressure.to_mpa() - 77.625).abs() < 1e-9);
    /// ```
    pub fn pressed(&self, interference: Length) -> Option<Pressed> {
        let strain = interference.max(Length::ZERO) / self.seat;
        Some(self.at_pressure(Stress::mpa(strain / self.compliance()?)))
    }

    /// The largest interference at which neither part reaches its yield strength anywhere, after von Mises.
    ///
    /// Divide the yield strengths by the safety wanted. `None` as in [`pressed`](Self::pressed).
    pub fn largest_interference(
        &self,
        shaft_yield: Stress,
        sleeve_yield: Stress,
    ) -> Option<Largest> {
        let compliance = self.compliance()?;
        let unit = self.at_pressure(Stress::mpa(1.0));
        let shaft = shaft_yield / unit.shaft_equivalent;
        let sleeve = sleeve_yield / unit.sleeve_equivalent;
        let pressure = f64::min(shaft, sleeve);
        Some(Largest {
            interference: self.seat * (pressure * compliance),
            pressure: Stress::mpa(pressure),
            limited_by: if shaft < sleeve {
                Member::Shaft
            } else {
                Member::Sleeve
            },
        })
    }

    /// The axial force that friction holds at a pressure.
    pub fn axial_hold(&self, pressure: Stress, friction: f64) -> Force {
        let area = (self.seat * self.length).to_mm2() * PI;
        Force::newtons(friction * pressure.to_mpa() * area)
    }

    /// The torque that friction holds at a pressure, with no axial force at the same time.
    pub fn torque_hold(&self, pressure: Stress, friction: f64) -> Torque {
        self.axial_hold(pressure, friction) * (self.seat / 2.0)
    }

    /// By how much the sleeve must be warmer than the shaft to go over it with a clearance on diameter.
    ///
    /// `None` when the sleeve does not grow with heat.
    ///
    /// # Source
    /// Thermal strain: ΔT = (i + s)/(α d).
    pub fn warmer_by(
        &self,
        interference: Length,
        clearance: Length,
        sleeve: Expansion,
    ) -> Option<TemperatureStep> {
        let strain = (interference + clearance).max(Length::ZERO) / self.seat;
        // Micrometres per metre are millionths.
        let per_kelvin = sleeve.to_um_per_m_kelvin() * 1e-6;
        (per_kelvin > 0.0).then(|| TemperatureStep::kelvins(strain / per_kelvin))
    }

    /// (D² + d²)/(D² − d²) of the sleeve and (d² + b²)/(d² − b²) of the shaft.
    fn shapes(&self) -> (f64, f64) {
        let square = |length: Length| length.to_mm() * length.to_mm();
        let (bore, seat, outside) = (
            square(self.shaft_bore),
            square(self.seat),
            square(self.outside),
        );
        (
            (outside + seat) / (outside - seat),
            (seat + bore) / (seat - bore),
        )
    }

    /// Interference over seat that a pressure of one megapascal takes up; `None` where a wall has no thickness.
    fn compliance(&self) -> Option<f64> {
        let sound = Length::ZERO <= self.shaft_bore
            && self.shaft_bore < self.seat
            && self.seat < self.outside
            && self.shaft.modulus > Stress::ZERO
            && self.sleeve.modulus > Stress::ZERO;
        let (sleeve, shaft) = self.shapes();
        sound.then(|| {
            (sleeve + self.sleeve.poisson) / self.sleeve.modulus.to_mpa()
                + (shaft - self.shaft.poisson) / self.shaft.modulus.to_mpa()
        })
    }

    /// The stresses at a pressure.
    fn at_pressure(&self, pressure: Stress) -> Pressed {
        let (sleeve, shaft) = self.shapes();
        let is_solid = self.shaft_bore <= Length::ZERO;
        // At the wall of a hole 2d²/(d² − b²), which is one more than the shape.
        let at_bore = if is_solid { shaft } else { shaft + 1.0 };
        Pressed {
            pressure,
            sleeve_hoop: pressure * sleeve,
            // Hoop and radial stress of opposite sign: √(σ² + σp + p²).
            sleeve_equivalent: pressure * (sleeve * sleeve + sleeve + 1.0).sqrt(),
            shaft_hoop: -pressure * shaft,
            shaft_bore_hoop: -pressure * at_bore,
            // A solid shaft is pressed alike from all sides; at the wall of a hole there is hoop stress alone.
            shaft_equivalent: pressure * at_bore,
        }
    }
}

/// The interference that is left when the peaks of both surfaces have been flattened.
///
/// `sleeve_roughness` and `shaft_roughness`: mean peak-to-valley heights Rz.
///
/// # Source
/// DIN 7190-1, loss of 0.8 (Rz + Rz) on diameter; from memory.
pub fn after_flattening(
    interference: Length,
    sleeve_roughness: Length,
    shaft_roughness: Length,
) -> Length {
    interference - (sleeve_roughness + shaft_roughness) * 0.8
}
