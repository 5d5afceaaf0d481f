//! What chuck jaws hold by: friction on the work, and the force of hand-operated scroll chucks.
//!
//! * Source of the friction with smooth jaws: a clamping-head maker's operating manual, steel work. For serrated jaws
//!   it gives a range without saying which surface has which; its ends are put to ground and rough work here, its middle
//!   to turned.
//! * Source of the chuck forces: from memory, three-jaw scroll chucks at the key torque their makers rate them for
//!   (60–140 N m), jaws greased. Tightened by hand without a wrench for torque they hold about half, from memory.
//! * Source of the safety factors: chuck makers' operating manuals that follow VDI 3106.
//! * Source of the pressures in centre holes: from memory.
//! * Units: ratios; newtons for all jaws together; megapascals.
//! * Left out: soft jaws bored to the work, which hold better; work of other metals.
//! * Checked: nothing against a second source.
//! * Licence: facts only.

use super::Confirmed;
use crate::quantity::{Force, Length, Stress};

/// How the gripping faces of the jaws are made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum JawSurface {
    /// Ground or bored; also jaws with soft shims.
    Smooth,
    /// Hardened with teeth that bite.
    Serrated,
}

/// How the work's surface is where the jaws grip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum GrippedSurface {
    /// Ground or polished.
    Ground,
    /// Turned.
    Turned,
    /// As rolled, forged or cast.
    Rough,
}

/// Friction between jaw and work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JawFriction {
    /// What the jaws are like.
    pub jaw: JawSurface,
    /// What the work is like.
    pub work: GrippedSurface,
    /// Against turning in the jaws.
    pub tangential: f64,
    /// Against sliding along the axis.
    pub axial: f64,
}

/// Friction of steel work, by jaw and by surface.
#[rustfmt::skip]
pub const JAW_FRICTION: [JawFriction; 6] = [
    row(JawSurface::Smooth,   GrippedSurface::Ground, 0.06, 0.08),
    row(JawSurface::Smooth,   GrippedSurface::Turned, 0.10, 0.13),
    row(JawSurface::Smooth,   GrippedSurface::Rough,  0.14, 0.16),
    row(JawSurface::Serrated, GrippedSurface::Ground, 0.15, 0.20),
    row(JawSurface::Serrated, GrippedSurface::Turned, 0.20, 0.25),
    row(JawSurface::Serrated, GrippedSurface::Rough,  0.25, 0.30),
];

/// How far [`JAW_FRICTION`] was checked; for serrated jaws the split by surface is our own.
pub const CONFIRMED_JAW_FRICTION: Confirmed = Confirmed::OneSource;

/// Above this tensile strength, as on hardened work, teeth do not bite and the friction of smooth jaws holds. The same
/// manual.
pub const TEETH_BITE_UP_TO: Stress = Stress::mpa(1300.0);

/// Safety factor on the cutting force, at least. VDI 3106 after chuck makers' manuals.
pub const GRIP_SAFETY_OF_CUT: f64 = 1.5;

/// Safety factor on the force of the chuck, at least. VDI 3106 after chuck makers' manuals.
pub const GRIP_SAFETY_OF_CHUCK: f64 = 1.5;

/// The force of one size of scroll chuck, all jaws together, at its rated key torque.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScrollChuck {
    /// Outside diameter of the chuck.
    pub diameter: Length,
    /// The least to expect.
    pub least: Force,
    /// The most to expect.
    pub most: Force,
}

/// Scroll chucks, smallest first.
#[rustfmt::skip]
pub const SCROLL_CHUCKS: [ScrollChuck; 3] = [
    chuck(100.0, 12_000.0, 18_000.0),
    chuck(125.0, 18_000.0, 25_000.0),
    chuck(160.0, 25_000.0, 35_000.0),
];

/// How far [`SCROLL_CHUCKS`] and [`HAND_TIGHT_SHARE`] were checked.
pub const CONFIRMED_SCROLL_CHUCKS: Confirmed = Confirmed::Memory;

/// What a chuck holds, tightened by hand, of what it holds at its rated torque.
pub const HAND_TIGHT_SHARE: f64 = 0.5;

/// Pressure that a 60° centre hole in soft steel bears under a live centre: least and most.
pub const SOFT_CENTRE_HOLE: (Stress, Stress) = (Stress::mpa(20.0), Stress::mpa(60.0));

/// The same under a plain centre, on which the work turns.
pub const PLAIN_CENTRE_HOLE: (Stress, Stress) = (Stress::mpa(5.0), Stress::mpa(10.0));

/// The least that a hardened hole bears under a live centre; no most is remembered.
pub const HARD_CENTRE_HOLE: Stress = Stress::mpa(100.0);

/// How far the pressures in centre holes were checked.
pub const CONFIRMED_CENTRE_HOLES: Confirmed = Confirmed::Memory;

/// The friction of a kind of jaw on a kind of surface.
///
/// # Example
/// ```
/// use skimwright::tables::{GrippedSurface, JawSurface, jaw_friction};
/// let row = jaw_friction(JawSurface::Smooth, GrippedSurface::Turned).unwrap();
/// assert_eq!(row.tangential, 0.10);
/// ```
pub fn jaw_friction(jaw: JawSurface, work: GrippedSurface) -> Option<&'static JawFriction> {
    JAW_FRICTION
        .iter()
        .find(|row| row.jaw == jaw && row.work == work)
}

const fn row(jaw: JawSurface, work: GrippedSurface, tangential: f64, axial: f64) -> JawFriction {
    JawFriction {
        jaw,
        work,
        tangential,
        axial,
    }
}

const fn chuck(diameter: f64, least: f64, most: f64) -> ScrollChuck {
    ScrollChuck {
        diameter: Length::mm(diameter),
        least: Force::newtons(least),
        most: Force::newtons(most),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_jaw_has_every_surface_and_rougher_holds_better() {
        let surfaces = [
            GrippedSurface::Ground,
            GrippedSurface::Turned,
            GrippedSurface::Rough,
        ];
        for jaw in [JawSurface::Smooth, JawSurface::Serrated] {
            let rows = surfaces.map(|work| jaw_friction(jaw, work).unwrap());
            for pair in rows.windows(2) {
                assert!(pair[0].tangential < pair[1].tangential && pair[0].axial < pair[1].axial);
            }
            assert!(rows.iter().all(|row| row.tangential < row.axial));
        }
    }

    #[test]
    fn larger_chucks_hold_more() {
        for pair in SCROLL_CHUCKS.windows(2) {
            assert!(pair[0].diameter < pair[1].diameter && pair[0].most <= pair[1].least);
        }
        assert!(SCROLL_CHUCKS.iter().all(|row| row.least < row.most));
    }
}
