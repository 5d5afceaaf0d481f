//! What a steel stands when it turns under load for ever: notch sensitivity and endurance limit.
//!
//! For steels. Irons, aluminium and copper alloys have other numbers, and aluminium has no limit at all.

use serde::Serialize;

use super::concentration::Load;
use crate::quantity::{Hardness, Length, Stress};
use crate::tables::{Confirmed, Spread};
use crate::working::Source;

/// How the surface at the place was made last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Surface {
    /// Ground with care and coolant, without burn.
    Ground,
    /// Turned, or dressed with a disc or belt.
    Machined,
    /// Hot-rolled skin.
    AsRolled,
}

impl Surface {
    /// The surface factor a·Sᵇ, S the tensile strength in megapascals; never above 1.
    fn factor(self, ultimate: f64) -> f64 {
        // Mechanical Engineering Design, surface factors, 9th and 10th edition; from memory.
        let (a, b) = match self {
            Self::Ground => (1.58, -0.085),
            Self::Machined => (4.51, -0.265),
            Self::AsRolled => (57.7, -0.718),
        };
        f64::min(a * ultimate.powf(b), 1.0)
    }
}

/// How much of a stress concentration a steel feels, from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NotchSensitivity {
    /// The share q of Kt − 1 that counts.
    pub share: f64,
    /// Whether the strength lies in the range of the formula; outside, the share is on the high side.
    pub in_range: bool,
}

impl NotchSensitivity {
    /// The fatigue factor Kf = 1 + q (Kt − 1).
    pub fn fatigue_factor(self, concentration: f64) -> f64 {
        1.0 + self.share * (concentration - 1.0)
    }
}

/// The strengths that the notch formula is for.
const NOTCH_RANGE: (f64, f64) = (340.0, 1700.0);

/// Where the notch sensitivity comes from, for its working.
pub const NOTCH_SOURCE: Source = Source::Published {
    title: "Mechanical Engineering Design: notch sensitivity after Neuber",
    confirmed: Confirmed::OneSource,
};

/// Notch sensitivity after Neuber, q = 1/(1 + √a/√r).
///
/// `ultimate`: tensile strength, 340–1700 megapascals. `radius`: of the notch; a sharp corner feels nothing by this formula, so
/// give it the tool's nose radius.
///
/// # Source
/// Course notes that quote Mechanical Engineering Design (cubic for √a in mm^½, S in megapascals); one source.
/// # Example
/// ```
/// use skimwright::quantity::{Length, Stress};
/// use skimwright::strength::{Load, notch_sensitivity};
/// let felt = notch_sensitivity(Load::Bending, Stress::mpa(690.0), Length::mm(3.0));
/// assert!((felt.fatigue_factor(1.65) - 1.55).abs() < 0.005);
/// ```
pub fn notch_sensitivity(load: Load, ultimate: Stress, radius: Length) -> NotchSensitivity {
    let (least, most) = NOTCH_RANGE;
    let given = ultimate.to_mpa();
    let strength = given.max(least).min(most);
    let [c0, c1, c2, c3] = match load {
        Load::Bending | Load::Tension => [1.24, -2.25e-3, 1.60e-6, -4.11e-10],
        Load::Torsion => [0.958, -1.83e-3, 1.43e-6, -4.11e-10],
    };
    // The cubic for torsion turns negative near the end of its range: nothing is milder than full sensitivity there.
    let root = (c0 + strength * (c1 + strength * (c2 + strength * c3))).max(0.0);
    let radius = radius.to_mm().max(0.0).sqrt();
    NotchSensitivity {
        share: if radius > 0.0 {
            radius / (radius + root)
        } else {
            0.0
        },
        in_range: least <= given && given <= most,
    }
}

/// An endurance limit with what it is made of: limit = base · surface · size · load · hard.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct EnduranceLimit {
    /// Of a polished specimen in rotating bending: half the tensile strength, 700 megapascals at most.
    pub base: Stress,
    /// The surface factor.
    pub surface: f64,
    /// The size factor.
    pub size: f64,
    /// The load factor.
    pub load: f64,
    /// The share left by a damaged hard surface.
    pub hard: f64,
    /// The limit, as an amplitude.
    pub limit: Stress,
}

/// Where the endurance limit comes from, for its working.
pub const ENDURANCE_SOURCE: Source = Source::Published {
    title: "Mechanical Engineering Design: endurance limit and its factors",
    confirmed: Confirmed::Memory,
};

/// The endurance limit of a steel at a place.
///
/// `ultimate`: tensile strength. `diameter`: of the round there, 2.8–254 mm. `hard`: see [`hard_surface`].
///
/// # Accuracy
/// Half of all specimens fail below it; 0.81 of it holds for 99 of 100. Values found for one steel spread by ±15 %
/// (from memory).
/// # Source
/// Mechanical Engineering Design, endurance limit and its factors; from memory.
pub fn endurance_limit(
    load: Load,
    ultimate: Stress,
    surface: Surface,
    diameter: Length,
    hard: f64,
) -> EnduranceLimit {
    let base = (ultimate * 0.5).min(Stress::mpa(700.0));
    let finish = surface.factor(ultimate.to_mpa().max(1.0));
    let diameter = diameter.to_mm();
    let (size, load) = match load {
        // No gradient of stress, no effect of size.
        Load::Tension => (1.0, 0.85),
        Load::Bending => (size_factor(diameter), 1.0),
        Load::Torsion => (size_factor(diameter), 0.59),
    };
    EnduranceLimit {
        base,
        surface: finish,
        size,
        load,
        hard,
        limit: base * (finish * size * load * hard),
    }
}

/// 1.24 d^−0.107 up to 51 mm, 1.51 d^−0.157 above; a thin bar gains nothing by its size here.
fn size_factor(diameter: f64) -> f64 {
    if diameter <= 51.0 {
        f64::min(1.24 * diameter.max(1.0).powf(-0.107), 1.0)
    } else {
        1.51 * diameter.powf(-0.157)
    }
}

/// Above this hardness the state of the surface, not the strength, decides.
const HARD: Hardness = Hardness::hrc(45.0);

/// What a reworked hard surface leaves of the endurance limit: all up to 45 HRC or when ground with care, else 0.5 to
/// 0.7, for the white layer, the burn and the pulling stresses of dressing hard steel.
///
/// # Source
/// From memory.
pub fn hard_surface(hardness: Option<Hardness>, surface: Surface) -> Spread<f64> {
    match hardness {
        Some(hardness) if hardness > HARD && surface != Surface::Ground => Spread {
            low: 0.5,
            typical: 0.6,
            high: 0.7,
        },
        _ => Spread::exact(1.0),
    }
}
