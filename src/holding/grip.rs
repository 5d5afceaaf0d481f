//! Whether the jaws hold the work against turning, sliding and tipping.
//!
//! A grip is the sum of the forces with which all jaws press towards the axis. Forces on the work: the cutting force
//! turns it in the jaws, the feed force and the thrust of the tailstock push it into the chuck.

use serde::Serialize;

use super::estimate::Estimate;
use crate::quantity::{Angle, Force, Length, Mass, RotationalSpeed};
use crate::tables::{
    GRIP_SAFETY_OF_CHUCK, GRIP_SAFETY_OF_CUT, GrippedSurface, HAND_TIGHT_SHARE, JawSurface,
    SCROLL_CHUCKS, ScrollChuck, jaw_friction,
};

/// Whether teeth bite the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum WorkHardness {
    /// Soft or tempered work, up to a tensile strength of [`TEETH_BITE_UP_TO`](crate::tables::TEETH_BITE_UP_TO).
    Bites,
    /// Hardened work: teeth only slide on it.
    TooHard,
}

/// Friction between jaws and work.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Friction {
    /// Against turning; above zero.
    pub tangential: f64,
    /// Against sliding along the axis; above zero.
    pub axial: f64,
}

impl Friction {
    /// That of steel work in a kind of jaw; on work too hard to bite, that of smooth jaws.
    ///
    /// # Accuracy
    /// One source; oil, scale and wear change it by a third either way (common practice, no source).
    /// # Source
    /// [`JAW_FRICTION`](crate::tables::JAW_FRICTION).
    pub fn of(jaw: JawSurface, work: GrippedSurface, hardness: WorkHardness) -> Self {
        let jaw = match hardness {
            WorkHardness::Bites => jaw,
            WorkHardness::TooHard => JawSurface::Smooth,
        };
        // The table has every pair; without one, nothing would hold.
        jaw_friction(jaw, work).map_or(
            Self {
                tangential: 0.0,
                axial: 0.0,
            },
            |row| Self {
                tangential: row.tangential,
                axial: row.axial,
            },
        )
    }
}

/// Safety factors of a grip, both one or more.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GripSafety {
    /// On the forces of the cut.
    pub cut: f64,
    /// On the force of the chuck.
    pub chuck: f64,
}

impl Default for GripSafety {
    /// The least that the guideline asks. Some manuals ask 2.0 to 2.4 for one, and 4.0 to 4.8 for long work without a
    /// centre.
    fn default() -> Self {
        Self {
            cut: GRIP_SAFETY_OF_CUT,
            chuck: GRIP_SAFETY_OF_CHUCK,
        }
    }
}

/// What the work in the jaws has to withstand.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GripLoad {
    /// Cutting force, along the surface.
    pub cutting: Force,
    /// Diameter on which it cuts.
    pub cut_diameter: Length,
    /// Diameter in the jaws; above zero.
    pub gripped_diameter: Length,
    /// Feed force towards the chuck; negative when the tool feeds away from it.
    pub feed: Force,
    /// Thrust of the tailstock centre towards the chuck; zero without one.
    pub tail_thrust: Force,
    /// What a shoulder or stop in the chuck bears of a push towards it; zero when the work may slide.
    pub stop: Force,
}

/// The grips that a load needs, safety factors in them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GripNeeded {
    /// Against turning in the jaws.
    pub turning: Force,
    /// Against sliding along the axis.
    pub sliding: Force,
    /// Against both at once.
    pub together: Force,
}

/// The grip that a load needs from all jaws together while the spindle stands.
///
/// `loss`: what the jaws lose by turning, see [`centrifugal_loss`]; zero on slow manual lathes.
///
/// # Accuracy
/// No better than friction and forces, 30 % at best.
/// # Source
/// F = Sₖ (S Fₜ d/(μ D) + loss), d the diameter cut and D the one gripped: the structure of VDI 3106 after chuck
/// makers' manuals. A push towards a stop counts as far as the stop does not bear it. Turning and sliding add like
/// sides of a right angle, since one friction force withstands both: common practice, no source.
/// # Example
/// ```
/// use skimwright::holding::{Friction, GripLoad, GripSafety, grip_needed};
/// use skimwright::quantity::{Force, Length};
/// let load = GripLoad {
///     cutting: Force::newtons(320.0),
///     cut_diameter: Length::mm(18.0),
///     gripped_diameter: Length::mm(20.0),
///     feed: Force::ZERO,
///     tail_thrust: Force::ZERO,
///     stop: Force::ZERO,
/// };
/// let friction = Friction { tangential: 0.12, axial: 0.15 };
/// let needed = grip_needed(load, friction, GripSafety::default(), Force::ZERO).unwrap();
/// assert!((needed.turning.to_newtons() - 5400.0).abs() < 1e-9);
/// ```
pub fn grip_needed(
    load: GripLoad,
    friction: Friction,
    safety: GripSafety,
    loss: Force,
) -> Option<GripNeeded> {
    let holds =
        friction.tangential > 0.0 && friction.axial > 0.0 && load.gripped_diameter > Length::ZERO;
    if !holds {
        return None;
    }
    let lever = load.cut_diameter / load.gripped_diameter;
    let turning = load.cutting.abs() * (safety.cut * lever / friction.tangential);
    let push = load.feed * safety.cut + load.tail_thrust;
    let sliding = if push > Force::ZERO {
        (push - load.stop).max(Force::ZERO)
    } else {
        push.abs()
    } / friction.axial;
    let together = turning.to_newtons().hypot(sliding.to_newtons());
    let with_loss = |force: Force| (force + loss) * safety.chuck;
    Some(GripNeeded {
        turning: with_loss(turning),
        sliding: with_loss(sliding),
        together: with_loss(Force::newtons(together)),
    })
}

/// What a chuck loses of its grip outside when its jaws are flung outward.
///
/// `jaw`: mass of one jaw with its carrier. `centre`: how far its centre of gravity is from the axis. `jaws`: how many.
///
/// # Source
/// m r ω² for each jaw.
pub fn centrifugal_loss(jaw: Mass, centre: Length, jaws: u8, speed: RotationalSpeed) -> Force {
    let turns = speed.to_per_min() / 60.0 * core::f64::consts::TAU;
    // Grams and millimetres are each a thousandth of what makes newtons.
    let each = jaw.to_grams() * centre.to_mm() * 1e-6 * turns * turns;
    Force::newtons(each * f64::from(jaws))
}

/// How a scroll chuck was tightened.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tightening {
    /// At the torque that its maker rates the key for.
    Rated,
    /// As a hand does it, about half.
    ByHand,
}

/// The grip of a hand-operated three-jaw scroll chuck by its diameter; `None` outside the table, 100–160 mm. Between
/// its rows it grows evenly.
///
/// # Accuracy
/// From memory; a dry or worn scroll gives less than the least.
/// # Source
/// [`SCROLL_CHUCKS`].
pub fn scroll_chuck_grip(diameter: Length, tightening: Tightening) -> Option<Estimate<Force>> {
    let pair = SCROLL_CHUCKS
        .windows(2)
        .filter_map(|pair| <&[ScrollChuck; 2]>::try_from(pair).ok())
        .find(|[small, large]| small.diameter <= diameter && diameter <= large.diameter)?;
    let [small, large] = pair;
    let share = (diameter - small.diameter) / (large.diameter - small.diameter);
    let between = |a: Force, b: Force| a + (b - a) * share;
    let least = between(small.least, large.least);
    let most = between(small.most, large.most);
    let part = match tightening {
        Tightening::Rated => 1.0,
        Tightening::ByHand => HAND_TIGHT_SHARE,
    };
    Some(Estimate::new(
        least * part,
        (least + most) * (part / 2.0),
        most * part,
    ))
}

/// The grip of a collet that is pulled into its cone.
///
/// `pull`: along the axis. `half_angle`: between the cone and the axis, 8° for an ISO 15488 collet, 10° for a 5C collet.
/// `friction`: on the cone, 0.1 greased to 0.2 dry (from memory).
///
/// # Accuracy
/// The most: what it takes to close the slit is not counted, and on work off the collet's own size that is much.
/// # Source
/// Wedge: F = pull/tan(half angle + atan friction).
pub fn collet_grip(pull: Force, half_angle: Angle, friction: f64) -> Force {
    let wedge = half_angle.to_radians() + friction.atan();
    let tangent = wedge.tan();
    if 0.0 < wedge && wedge < core::f64::consts::FRAC_PI_2 && tangent > 0.0 {
        pull / tangent
    } else {
        Force::ZERO
    }
}

/// How far from the jaws a force across the axis may act before it tips the work out of them; `None` without a force.
///
/// `jaw_length`: how long the jaws hold along the axis.
///
/// # Accuracy
/// Order of magnitude.
/// # Source
/// Own reckoning: a third of the grip, at the length of the jaws, against the force at its overhang.
pub fn tipping_overhang(grip: Force, jaw_length: Length, across: Force) -> Option<Length> {
    let across = across.abs();
    (across > Force::ZERO).then(|| jaw_length * (grip / across / 3.0))
}

/// Whether the jaws hold so little of the length that the work tips easily: less than half the gripped diameter.
///
/// # Source
/// Common practice, no source.
pub fn is_short_grip(jaw_length: Length, gripped_diameter: Length) -> bool {
    jaw_length < gripped_diameter / 2.0
}

/// What a grip comes to against what is needed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GripRatio {
    /// Held over needed, the safety factors counted as needed.
    pub ratio: f64,
    /// In words.
    pub verdict: GripVerdict,
}

/// Whether a grip holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum GripVerdict {
    /// With the whole safety.
    Holds,
    /// Only by eating into the safety.
    SafetyEaten,
    /// Not even without any safety.
    Slips,
}

/// Compares what is held with what is needed; `None` when nothing is needed.
pub fn grip_ratio(held: Force, needed: Force, safety: GripSafety) -> Option<GripRatio> {
    if needed <= Force::ZERO {
        return None;
    }
    let ratio = held / needed;
    let verdict = if ratio >= 1.0 {
        GripVerdict::Holds
    } else if ratio * safety.cut * safety.chuck >= 1.0 {
        GripVerdict::SafetyEaten
    } else {
        GripVerdict::Slips
    };
    Some(GripRatio { ratio, verdict })
}

#[cfg(test)]
#[path = "grip_tests.rs"]
mod tests;
