//! Packing put under the jaws of a three-jaw chuck, to move the work across the axis.
//!
//! The scroll moves all jaws alike, so packing under one of them pushes the work away from it. Directions are counted
//! from jaw 1 towards jaw 2; the jaws stand at 0°, 120° and 240°. Radii and thicknesses, no diameters.
//!
//! Two kinds of jaw are reckoned exactly. A wide flat face touches round work where its normal goes through the work's
//! centre, so the work's radius falls out. A jaw that touches along a line in its middle, narrow, worn convex or with a
//! narrow strip of packing, meets the work a little beside that, which matters when the work moves far.
//!
//! Left out: the give of packing and jaws, and jaws bored to the size of the work.

use serde::Serialize;

use super::offset::{Jaws, Offset};
use crate::quantity::{Angle, Length};

/// The largest move, as a share of the work's radius, for which packing is given.
///
/// Three line contacts no longer enclose work that was moved straight away from a jaw by 1/√3 = 0.577 of its radius: own
/// geometry; a half keeps some margin. It also makes the search in [`movement`] converge on every move up to here: one step maps the distance to the answer onto at most κ/√(1 − κ²) of itself while no place
/// on the way is farther off than κ radii (the Lipschitz bound of the heights √(r² − s²) over three directions at
/// 120°). The search starts within 0.095 radii of the answer, so κ stays below 0.595 and each step leaves 0.75 or less;
/// in truth about half.
pub const FARTHEST_SHARE: f64 = 0.5;

/// Steps of that search, at most: 0.75 to their power is below 10⁻¹⁵.
const MOST_STEPS: u32 = 128;

/// A step shorter than this share of the radius is rounding.
const ROUNDING: f64 = 8.0 * f64::EPSILON;

/// Packing under the jaw at the high side, as a share of the runout, by the rule of thumb. Common practice, no source.
const THUMB_SHARE: f64 = 0.75;

/// How the jaws touch round work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum JawContact {
    /// Flat faces, wide enough for the work to find its place on them.
    Flat,
    /// Along a line in the middle of each jaw.
    Line,
}

/// Why there is no packing.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub enum PackingError {
    /// The work has no radius.
    NoRadius,
    /// The work would have to move farther than packing can move it.
    TooFar {
        /// How far it would move.
        by: Length,
        /// The most.
        most: Length,
    },
    /// A thickness is negative.
    Negative,
}

/// Packing for the three jaws.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Packing {
    /// How thick under each jaw, jaw 1 first; one of them at least is nothing.
    pub thickness: [Length; 3],
    /// How far beside the middle of a jaw the work touches at most: flat faces must be at least twice as wide.
    pub beside_middle: Length,
    /// What the rule of thumb would do instead.
    pub rule_of_thumb: RuleOfThumb,
}

/// Three quarters of the runout under the jaw nearest to the high side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RuleOfThumb {
    /// The jaw, from 1.
    pub jaw: u8,
    /// How thick.
    pub thickness: Length,
    /// Total indicated runout that is left with it, if the jaws touch as was said; `None` when it moves the work too
    /// far to say.
    pub leaves: Option<Length>,
}

/// The packing that moves round work of a radius by `wanted` from where the bare jaws hold it.
///
/// # Errors
/// [`PackingError::NoRadius`], and [`PackingError::TooFar`] beyond [`FARTHEST_SHARE`] of the radius.
/// # Accuracy
/// Exact geometry for perfectly round work and true jaws. While e is small the two kinds of contact differ by 0.44 e²/r
/// at most: a micrometre for a move of 0.15 mm on a radius of 10 mm.
/// # Source
/// Own geometry. A jaw reaches a distance ρ from the spindle's axis to the work. With the work's centre at m and u =
/// m·n its part towards the jaw: flat ρ = r + u, line ρ = u + √(r² − m² + u²). The jaw that reaches farthest needs no
/// packing, each other what it lacks. For one jaw opposite to the move by e: flat t = 1.5 e, line t = 1.5 e − r + √(r²
/// − 0.75 e²).
/// # Example
/// ```
/// use skimwright::holding::{JawContact, Offset, packing};
/// use skimwright::quantity::{Angle, Length};
/// // 0.03 mm away from jaw 1: 0.045 mm under it.
/// let wanted = Offset::towards(Length::um(30.0), Angle::degrees(180.0));
/// let made = packing(wanted, Length::mm(10.0), JawContact::Flat).unwrap();
/// assert!((made.thickness[0].to_um() - 45.0).abs() < 1e-9);
/// assert!(made.thickness[1].to_um().abs() < 1e-9);
/// ```
pub fn packing(
    wanted: Offset,
    radius: Length,
    contact: JawContact,
) -> Result<Packing, PackingError> {
    check(wanted, radius)?;
    let reach = jaw_directions().map(|jaw| reach(wanted, radius, jaw, contact));
    let farthest = reach.into_iter().reduce(Length::max).unwrap_or_default();
    let beside_middle = jaw_directions()
        .map(|jaw| sideways(wanted, jaw).abs())
        .into_iter()
        .reduce(Length::max)
        .unwrap_or_default();
    Ok(Packing {
        thickness: reach.map(|reach| farthest - reach),
        beside_middle,
        rule_of_thumb: rule_of_thumb(wanted, radius, contact),
    })
}

/// The packing that brings work to run true which shows `runout` (total indicated) with its high spot at `high_side`.
///
/// # Errors
/// As [`packing`], for a move of half the runout.
/// # Accuracy
/// As [`packing`]; out-of-round work misleads by what it is out of round.
pub fn packing_for_runout(
    runout: Length,
    high_side: Angle,
    radius: Length,
    contact: JawContact,
) -> Result<Packing, PackingError> {
    packing(-Offset::towards(runout / 2.0, high_side), radius, contact)
}

/// How far packing of given thicknesses moves the work, as when the nearest foil at hand is taken.
///
/// # Errors
/// [`PackingError::NoRadius`], [`PackingError::Negative`], and [`PackingError::TooFar`] beyond [`FARTHEST_SHARE`] of
/// the radius.
/// # Accuracy
/// Exact for flat faces. For a line contact a search that stops when a step changes nothing; its convergence is shown at
/// [`FARTHEST_SHARE`].
/// # Source
/// The inverse of [`packing`]: the parts of a move towards three jaws at 120° sum to nothing, so m = ⅔ Σ −(t + h) n, h
/// the part of each reach that is not u.
pub fn movement(
    thickness: [Length; 3],
    radius: Length,
    contact: JawContact,
) -> Result<Offset, PackingError> {
    if thickness.iter().any(|it| *it < Length::ZERO) {
        return Err(PackingError::Negative);
    }
    let settle = |heights: [Length; 3]| {
        let parts = thickness.into_iter().zip(heights).zip(jaw_directions());
        parts
            .map(|((thickness, height), jaw)| {
                Offset::towards((thickness + height) * (-2.0 / 3.0), jaw)
            })
            .fold(Offset::NONE, |all, part| all + part)
    };
    let mut moved = settle([Length::ZERO; 3]);
    if contact == JawContact::Line {
        for _ in 0..MOST_STEPS {
            let next = settle(jaw_directions().map(|jaw| height(moved, radius, jaw)));
            let step = (next - moved).size();
            moved = next;
            if step <= radius * ROUNDING {
                break;
            }
        }
    }
    check(moved, radius)?;
    Ok(moved)
}

/// Refuses moves that packing cannot make.
fn check(moved: Offset, radius: Length) -> Result<(), PackingError> {
    if radius <= Length::ZERO {
        return Err(PackingError::NoRadius);
    }
    let (by, most) = (moved.size(), radius * FARTHEST_SHARE);
    if by > most {
        return Err(PackingError::TooFar { by, most });
    }
    Ok(())
}

/// The directions of the jaws.
fn jaw_directions() -> [Angle; 3] {
    [0.0, 120.0, 240.0].map(Angle::degrees)
}

/// How far from the spindle's axis a jaw comes to stand on work that is moved.
fn reach(moved: Offset, radius: Length, jaw: Angle, contact: JawContact) -> Length {
    let towards = moved.part_towards(jaw);
    match contact {
        JawContact::Flat => radius + towards,
        JawContact::Line => towards + height(moved, radius, jaw),
    }
}

/// From the foot of the work's centre on a jaw's middle line to where the work's surface crosses it.
fn height(moved: Offset, radius: Length, jaw: Angle) -> Length {
    let (radius, beside) = (radius.to_mm(), sideways(moved, jaw).to_mm());
    Length::mm(((radius - beside) * (radius + beside)).max(0.0).sqrt())
}

/// How far a move goes beside a jaw's middle line.
fn sideways(moved: Offset, jaw: Angle) -> Length {
    moved.part_towards(jaw + Angle::degrees(90.0))
}

/// What the rule of thumb does for work that has to move by `wanted`.
fn rule_of_thumb(wanted: Offset, radius: Length, contact: JawContact) -> RuleOfThumb {
    // The work stands out to the side from which it has to move.
    let jaw = (-wanted).nearest_jaw(Jaws::Three).jaw;
    let thickness = wanted.runout() * THUMB_SHARE;
    let under = [1, 2, 3].map(|it| if it == jaw { thickness } else { Length::ZERO });
    let moved = movement(under, radius, contact);
    RuleOfThumb {
        jaw,
        thickness,
        leaves: moved.ok().map(|moved| (wanted - moved).runout()),
    }
}
