//! What weakens a cross-section: holes, flats, keyways, cross holes, slots.
//!
//! All places are measured from the axis of the bar, so that turning the bar down leaves them where they are.

use core::f64::consts::{FRAC_PI_2, PI};

use super::region::HalfPlane;
use crate::quantity::{Angle, Length};

/// A round hole along the bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// Its diameter; a threaded hole at the thread's major diameter.
    pub diameter: Length,
    /// How far its axis lies off the axis of the bar.
    pub offset: Length,
    /// To which side; of no meaning without cuts.
    pub towards: Angle,
}

/// What the outside is at this place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Outside {
    /// A plain round surface.
    #[default]
    Plain,
    /// A thread; the diameter given is that at its root.
    ThreadRoot,
}

/// A cut that takes a part of the section away.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cut {
    /// A flat: all beyond `distance` from the axis, on the side `at`.
    Flat {
        /// From the axis to the flat.
        distance: Length,
        /// On which side.
        at: Angle,
    },
    /// A keyway with a flat floor.
    Keyway {
        /// Its width.
        width: Length,
        /// From the axis to its floor; see [`Cut::keyway`] for one given by its depth.
        floor: Length,
        /// On which side.
        at: Angle,
    },
    /// A hole across the bar through its axis, in the plane through the hole's own axis.
    CrossHole {
        /// Its diameter.
        diameter: Length,
        /// The direction of its axis.
        along: Angle,
    },
    /// A slot through the axis that parts the bar in two prongs.
    Slot {
        /// Its width.
        width: Length,
        /// The direction in which it runs across.
        along: Angle,
    },
}

impl Cut {
    /// A keyway by its depth under the outside of a bar.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::{Angle, Length};
    /// use skimwright::strength::Cut;
    /// let cut = Cut::keyway(Length::mm(6.0), Length::mm(3.5), Length::mm(20.0), Angle::ZERO);
    /// assert!(matches!(cut, Cut::Keyway { floor, .. } if floor == Length::mm(6.5)));
    /// ```
    pub fn keyway(width: Length, depth: Length, bar_diameter: Length, at: Angle) -> Self {
        Self::Keyway {
            width,
            floor: bar_diameter / 2.0 - depth,
            at,
        }
    }

    /// The two flats of a tang.
    pub fn tang(thickness: Length, at: Angle) -> [Self; 2] {
        [at, at + Angle::radians(PI)].map(|at| Self::Flat {
            distance: thickness / 2.0,
            at,
        })
    }

    pub(super) const fn is_flat(&self) -> bool {
        matches!(self, Self::Flat { .. })
    }

    /// Whether it runs along the bar, so that it weakens it in torsion by its whole length.
    pub(super) const fn runs_along(self) -> bool {
        !matches!(self, Self::CrossHole { .. })
    }

    /// The half-planes whose common part it takes away; flats and slots bound what is left themselves.
    pub(super) fn removed(self) -> Option<[HalfPlane; 3]> {
        let (width, along, from) = match self {
            Self::Keyway { width, floor, at } => (width, at, floor.to_mm()),
            // No floor: from far outside right through.
            Self::CrossHole { diameter, along } => (diameter, along, f64::NEG_INFINITY),
            Self::Flat { .. } | Self::Slot { .. } => return None,
        };
        let half = width.max(Length::ZERO).to_mm() / 2.0;
        let along = along.to_radians();
        Some([
            HalfPlane::new(along + FRAC_PI_2, half),
            HalfPlane::new(along - FRAC_PI_2, half),
            HalfPlane::new(along + PI, -from),
        ])
    }
}
