//! Dialling in: from readings in two planes to where the work's axis runs, and what to do about it.
//!
//! z is counted from wherever the person counts it, the same for all planes; most count from the chuck face outward.

use serde::Serialize;

use super::offset::{Jaws, NearestJaw, Offset};
use super::readings::{Dialled, DiallingError, Known};
use crate::part::SAME;
use crate::quantity::Length;

/// Readings in one plane across the axis.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DialledPlane {
    /// Where along the axis.
    pub z: Length,
    /// What they tell.
    pub dialled: Dialled,
}

/// The work's axis as two planes show it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DialledAxis {
    first: DialledPlane,
    second: DialledPlane,
}

/// One move that brings the work nearer to running true.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Shift {
    /// Where along the axis.
    pub z: Length,
    /// How far to move the work there, and to which side.
    pub shift: Offset,
    /// The jaw towards which that is most nearly.
    pub nearest: NearestJaw,
}

/// How to bring the work to run true.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DialIn {
    /// First, at the chuck: the whole work with its jaws, packing or chuck body.
    pub at_chuck: Shift,
    /// Then, at the free end: tap or shift it, which turns the work about the chuck.
    pub at_free_end: Shift,
    /// Runout that the free end shows between the two.
    pub runout_between: Length,
    /// Runout that may be left at the free end after both, from errors of reading alone.
    pub remains_at_free_end: Length,
}

impl DialledAxis {
    /// The axis through two planes.
    ///
    /// # Errors
    /// [`DiallingError::SamePlane`], and [`DiallingError::OneLineOnly`] when a plane was read at two places only.
    pub fn new(first: DialledPlane, second: DialledPlane) -> Result<Self, DiallingError> {
        if (first.z - second.z).abs().to_mm() <= SAME {
            return Err(DiallingError::SamePlane);
        }
        let both = |plane: &DialledPlane| plane.dialled.known == Known::Both;
        if !both(&first) || !both(&second) {
            return Err(DiallingError::OneLineOnly);
        }
        Ok(Self { first, second })
    }

    /// How far the axis is off at any place, in a straight line through both planes.
    ///
    /// # Source
    /// e₁ + (z − z₁)(e₂ − e₁)/(z₂ − z₁): plane geometry.
    pub fn offset_at(&self, z: Length) -> Offset {
        let (near, far) = self.shares(z);
        self.first.dialled.offset * near + self.second.dialled.offset * far
    }

    /// How much the offset changes over a length of the axis; over a millimetre it is the tilt.
    pub fn tilt_over(&self, length: Length) -> Offset {
        let step = self.second.dialled.offset - self.first.dialled.offset;
        step * (length / (self.second.z - self.first.z))
    }

    /// How much the offset at a place may be wrong when each reading may be wrong by `reading_error`, both one standard
    /// uncertainty.
    ///
    /// # Source
    /// The two planes' shares, added as squares.
    pub fn error_at(&self, z: Length, reading_error: Length) -> Length {
        let (near, far) = self.shares(z);
        let share =
            (near * self.first.dialled.error_share).hypot(far * self.second.dialled.error_share);
        reading_error.abs() * share
    }

    /// How to bring the work to run true: first at `chuck`, where the jaws hold it, then at `free_end`, where it is
    /// tapped or shifted.
    ///
    /// `reading_error`: one standard uncertainty of a reading.
    ///
    /// # Errors
    /// [`DiallingError::SamePlane`] when chuck and free end are one place.
    /// # Accuracy
    /// Exact for rigid work that turns about the chuck. Packing at one end of the jaws makes the first move, not the
    /// second: the tilt needs seating against a face, packing at the tip of a jaw, or centres.
    pub fn dial_in(
        &self,
        chuck: Length,
        free_end: Length,
        jaws: Jaws,
        reading_error: Length,
    ) -> Result<DialIn, DiallingError> {
        if (chuck - free_end).abs().to_mm() <= SAME {
            return Err(DiallingError::SamePlane);
        }
        let shift = |z: Length, shift: Offset| Shift {
            z,
            shift,
            nearest: shift.nearest_jaw(jaws),
        };
        let between = self.offset_at(free_end) - self.offset_at(chuck);
        Ok(DialIn {
            at_chuck: shift(chuck, -self.offset_at(chuck)),
            at_free_end: shift(free_end, -between),
            runout_between: between.runout(),
            remains_at_free_end: self.error_at(free_end, reading_error) * 2.0,
        })
    }

    /// The runout left at a place when only the first move was made, that at `chuck`.
    pub fn runout_after_chuck(&self, chuck: Length, z: Length) -> Length {
        (self.offset_at(z) - self.offset_at(chuck)).runout()
    }

    /// The shares of the two planes in what is at a place.
    fn shares(&self, z: Length) -> (f64, f64) {
        let far = (z - self.first.z) / (self.second.z - self.first.z);
        (1.0 - far, far)
    }
}

#[cfg(test)]
#[path = "dialling_tests.rs"]
mod tests;
