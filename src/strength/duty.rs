//! Stresses at a section under a duty, and how far they are from yielding and from fatigue.
//!
//! The part turns and the side load stands still, so bending is fully reversed.

use serde::Serialize;

use super::concentration::{Concentration, Load};
use super::fatigue::{EnduranceLimit, Surface, endurance_limit, hard_surface, notch_sensitivity};
use super::section::Section;
use crate::order;
use crate::quantity::{Force, Hardness, Length, Power, RotationalSpeed, Stress, Torque};
use crate::tables::{Confirmed, Spread};
use crate::working::Source;

/// How the torque runs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Course {
    /// One way and even: a mean stress.
    #[default]
    Steady,
    /// From nothing to full, one way: half mean, half amplitude.
    Pulsating,
    /// To and fro: all amplitude.
    Reversed,
}

impl Course {
    /// The shares that are amplitude and mean.
    const fn shares(self) -> (f64, f64) {
        match self {
            Self::Steady => (0.0, 1.0),
            Self::Pulsating => (0.5, 0.5),
            Self::Reversed => (1.0, 0.0),
        }
    }
}

/// What the part has to carry. The default is nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Duty {
    /// Torque.
    pub torque: Torque,
    /// How the torque runs.
    pub course: Course,
    /// Force across the axis, standing still while the part turns.
    pub side_load: Force,
    /// From the section to where the side load acts.
    pub overhang: Length,
    /// Steady pull or push along the axis.
    pub axial: Force,
}

impl Duty {
    /// A torque alone.
    pub fn torque(torque: Torque) -> Self {
        Self {
            torque,
            ..Self::default()
        }
    }

    /// The torque that carries a power at a speed; `None` when it stands still.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::{Power, RotationalSpeed};
    /// use skimwright::strength::Duty;
    /// let duty = Duty::power(Power::watts(2200.0), RotationalSpeed::per_min(1400.0)).unwrap();
    /// assert!((duty.torque.to_newton_metres() - 15.0).abs() < 0.01);
    /// ```
    pub fn power(power: Power, speed: RotationalSpeed) -> Option<Self> {
        (speed > RotationalSpeed::ZERO).then(|| Self::torque(power.torque_at(speed)))
    }

    /// The same with a side load.
    #[must_use]
    pub fn with_side_load(self, side_load: Force, overhang: Length) -> Self {
        Self {
            side_load,
            overhang,
            ..self
        }
    }

    /// The bending moment at the section.
    pub fn moment(&self) -> Torque {
        self.side_load * self.overhang
    }
}

/// What raises the stress at the section: one factor a load, and the radius it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Notch {
    /// On the stress along the axis.
    pub tension: f64,
    /// On the bending stress.
    pub bending: f64,
    /// On the torsion stress.
    pub torsion: f64,
    /// The radius at its root.
    pub radius: Length,
}

impl Notch {
    /// A smooth place.
    pub const NONE: Self = Self {
        tension: 1.0,
        bending: 1.0,
        torsion: 1.0,
        radius: Length::mm(1.0),
    };

    /// From a factor for each load in turn.
    pub fn new(radius: Length, mut at: impl FnMut(Load) -> Option<Concentration>) -> Option<Self> {
        let mut factor = |load| at(load).map(|found| found.factor);
        Some(Self {
            tension: factor(Load::Tension)?,
            bending: factor(Load::Bending)?,
            torsion: factor(Load::Torsion)?,
            radius,
        })
    }
}

/// What the steel stands.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Strength {
    /// Tensile strength.
    pub ultimate: Spread<Stress>,
    /// Yield strength.
    pub yields: Spread<Stress>,
    /// Hardness, if known.
    pub hardness: Option<Hardness>,
}

/// The place that is judged.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Place {
    /// Its cross-section.
    pub section: Section,
    /// Its diameter, for the effect of size.
    pub diameter: Length,
    /// What raises the stress.
    pub notch: Notch,
    /// How the surface was made.
    pub surface: Surface,
}

/// Nominal stresses at a section.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Stresses {
    /// Along the axis by the axial force, without sign.
    pub axial: Stress,
    /// By bending.
    pub bending: Stress,
    /// Shear by the torque.
    pub torsion: Stress,
    /// Equivalent after von Mises, √(σ² + 3τ²) with σ the sum of both along the axis.
    pub equivalent: Stress,
    /// The same with each stress raised by its factor: what a brittle or through-hardened part feels.
    pub peak: Stress,
}

/// Fatigue with one strength.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Fatigue {
    /// Fatigue factor on the stress along the axis.
    pub tension_factor: f64,
    /// Fatigue factor in bending.
    pub bending_factor: f64,
    /// Fatigue factor in torsion.
    pub torsion_factor: f64,
    /// Equivalent amplitude.
    pub amplitude: Stress,
    /// Equivalent mean stress.
    pub mean: Stress,
    /// The endurance limit in bending.
    pub limit: EnduranceLimit,
    /// Safety factor; `None` without stress.
    pub safety: Option<f64>,
}

/// The verdict at one place.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Assessment {
    /// The bending moment there.
    pub moment: Torque,
    /// Nominal stresses.
    pub stresses: Stresses,
    /// Yield strength over the nominal equivalent stress, for a ductile part; `None` without load.
    pub against_yield: Option<Spread<f64>>,
    /// Yield strength over the peak stress, for a part that is hard right through; `None` without load.
    pub against_crack: Option<Spread<f64>>,
    /// Fatigue with the low, the likely and the high strength.
    pub fatigue: Spread<Fatigue>,
    /// The safety factors of these three in order of size; `None` without load.
    pub against_fatigue: Option<Spread<f64>>,
}

/// Where the safety against fatigue comes from, for its working.
pub const GOODMAN_SOURCE: Source = Source::Published {
    title: "Mechanical Engineering Design: shafts, distortion energy and modified Goodman line",
    confirmed: Confirmed::Memory,
};

/// Stresses and safety factors of a place under a duty.
///
/// `None` where the section carries nothing of a load that is asked of it: its safety is nought.
///
/// # Accuracy
/// As good as the strengths given and the factors of [`endurance_limit`]: read a fatigue safety under 1.5 as not proven.
/// # Source
/// Static: von Mises. Fatigue: distortion energy with the modified Goodman line, 1/n = σₐ/Sₑ + σₘ/Sᵤ, fatigue factors on
/// amplitude and mean alike (Mechanical Engineering Design, shafts; from memory).
pub fn assess(place: &Place, duty: &Duty, strength: &Strength) -> Option<Assessment> {
    let Place { section, notch, .. } = place;
    let moment = duty.moment();
    let axial = stress(duty.axial.to_newtons(), section.area.to_mm2())?;
    let bending = stress(
        moment.to_newton_metres() * 1000.0,
        section.bending_modulus.to_mm3(),
    )?;
    let torsion = stress(
        duty.torque.to_newton_metres() * 1000.0,
        section.torsion_modulus.to_mm3(),
    )?;
    let stresses = Stresses {
        axial,
        bending,
        torsion,
        equivalent: von_mises(axial + bending, torsion),
        peak: von_mises(
            axial * notch.tension + bending * notch.bending,
            torsion * notch.torsion,
        ),
    };
    let over = |stress: Stress| {
        (stress > Stress::ZERO).then(|| strength.yields.map(|yields| yields / stress))
    };
    let hard = hard_surface(strength.hardness, place.surface);
    let fatigue = strength
        .ultimate
        .zip(hard)
        .map(|(ultimate, hard)| fatigue(place, duty.course, &stresses, ultimate, hard));
    Some(Assessment {
        moment,
        stresses,
        against_yield: over(stresses.equivalent),
        against_crack: over(stresses.peak),
        fatigue,
        against_fatigue: in_order(&fatigue),
    })
}

/// The stress of a load on a section property; nothing of a load is no stress on any section.
fn stress(load: f64, property: f64) -> Option<Stress> {
    let load = load.abs();
    if load <= 0.0 {
        return Some(Stress::ZERO);
    }
    (property > 0.0).then(|| Stress::mpa(load / property))
}

fn von_mises(direct: Stress, shear: Stress) -> Stress {
    Stress::mpa(direct.to_mpa().hypot(3.0_f64.sqrt() * shear.to_mpa()))
}

fn fatigue(
    place: &Place,
    course: Course,
    stresses: &Stresses,
    ultimate: Stress,
    hard: f64,
) -> Fatigue {
    let notch = &place.notch;
    let felt =
        |load, factor| notch_sensitivity(load, ultimate, notch.radius).fatigue_factor(factor);
    let tension_factor = felt(Load::Tension, notch.tension);
    let bending_factor = felt(Load::Bending, notch.bending);
    let torsion_factor = felt(Load::Torsion, notch.torsion);
    let (swing, steady) = course.shares();
    let shear = stresses.torsion * torsion_factor;
    let amplitude = von_mises(stresses.bending * bending_factor, shear * swing);
    let mean = von_mises(stresses.axial * tension_factor, shear * steady);
    let limit = endurance_limit(Load::Bending, ultimate, place.surface, place.diameter, hard);
    Fatigue {
        tension_factor,
        bending_factor,
        torsion_factor,
        amplitude,
        mean,
        limit,
        safety: goodman(amplitude, mean, limit.limit, ultimate),
    }
}

/// The safety factor by the modified Goodman line; `None` without stress.
///
/// A push along the axis is counted like a pull, which is careful.
pub fn goodman(amplitude: Stress, mean: Stress, limit: Stress, ultimate: Stress) -> Option<f64> {
    let used = amplitude / limit + mean / ultimate;
    (used > 0.0).then(|| 1.0 / used)
}

/// A stronger steel can have the lower safety: it is more sensitive to notch and surface.
fn in_order(fatigue: &Spread<Fatigue>) -> Option<Spread<f64>> {
    let mut found = [
        fatigue.low.safety?,
        fatigue.typical.safety?,
        fatigue.high.safety?,
    ];
    order::numbers(&mut found);
    let [low, typical, high] = found;
    Some(Spread { low, typical, high })
}
