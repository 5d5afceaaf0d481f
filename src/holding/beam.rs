//! A stepped shaft, clamped at the chuck face, and how far it bends under a force across it.
//!
//! x runs from the chuck face outward. Bending only: shear is left out, which for a solid round makes the true figure
//! larger by about 0.55 (D/L)² of itself at the end of a bar of diameter D and length L (own reckoning with the shear
//! factor 0.886). So is the little that a feed force bends by its lever about the axis.
//!
//! A unit force at a bends the shaft at b by the unit-load integral ∫(a − x)(b − x)/(E I) dx up to the nearer of the two.
//! With the bends summed up to a, each weighted by the power of how far it lies behind a,
//!
//! S₁(a) = ∫(a − x)/(E I) dx and S₂(a) = ∫(a − x)²/(E I) dx,
//!
//! that integral is S₂(a) + (b − a) S₁(a). The sums at the start of every piece are kept, so that a place costs one
//! search among the pieces. Hardly a term of them is negative, so no digits are lost to differences.

use core::f64::consts::PI;

use crate::quantity::{Force, Length, SecondMoment, Stress};

/// A stretch of the shaft that is alike all along.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// How long it is; above zero.
    pub length: Length,
    /// Second moment of area about a diameter; above zero.
    pub second_moment: SecondMoment,
    /// Modulus of elasticity; above zero.
    pub modulus: Stress,
}

/// Why there is no beam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BeamError {
    /// No segment at all, or nothing between the two places.
    Empty,
    /// A segment, counted from zero at the chuck, has no length.
    NoLength {
        /// Which one.
        segment: usize,
    },
    /// Nothing resists bending at this distance from the chuck face: no metal, or a hole as wide as the outside.
    NoMetal {
        /// Where, from the chuck face.
        at: Length,
    },
}

/// A stepped shaft from the chuck face outward.
///
/// # Example
/// ```
/// use skimwright::holding::{Beam, Segment};
/// use skimwright::quantity::{Force, Length, Stress};
/// use skimwright::strength::CrossSection;
/// let bar = Beam::new(&[Segment {
///     length: Length::mm(100.0),
///     second_moment: CrossSection::round(Length::mm(20.0)).properties().second_moment,
///     modulus: Stress::mpa(210_000.0),
/// }])
/// .unwrap();
/// // F L³/(3 E I) with 300 N: 60.6 micrometres.
/// let end = Length::mm(100.0);
/// let bent = bar.deflection(end, end, Force::newtons(300.0));
/// assert!((bent.to_um() - 60.63).abs() < 0.01);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Beam {
    /// In order from the chuck face; never empty.
    pieces: Vec<Piece>,
    /// At the free end.
    end: Sums,
}

/// One piece, with the sums over all before it.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Piece {
    before: Sums,
    bend: Bend,
}

/// How easily a piece bends: 1/(E I), growing evenly along it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Bend {
    /// At its start, in 1/(N mm²).
    pub(super) start: f64,
    /// What is added on each millimetre.
    pub(super) growth: f64,
}

/// The bends up to a place, each times the power of how far it lies behind that place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Sums {
    /// The place, in mm from the chuck face.
    at: f64,
    /// S₀, in 1/(N mm): the slope that a unit couple gives.
    zeroth: f64,
    /// S₁, in 1/N.
    first: f64,
    /// S₂, in mm/N.
    second: f64,
}

impl Sums {
    /// The sums farther out by `step` on one piece, `bend` being that of the start of the step.
    fn onward(self, step: f64, bend: Bend) -> Self {
        // Each power of the lever integrated over the stretch: 1/2 and 1/6, 1/3 and 1/12 are of a level and a slope.
        let (level, slope) = (bend.start * step, bend.growth * step * step);
        Self {
            at: self.at + step,
            zeroth: self.zeroth + level + slope / 2.0,
            first: self.first + step * (self.zeroth + level / 2.0 + slope / 6.0),
            second: self.second
                + step * (2.0 * self.first + step * (self.zeroth + level / 3.0 + slope / 12.0)),
        }
    }

    /// How far the shaft gives here, in mm, under a newton at `beyond`, no nearer to the chuck than here.
    pub(super) fn influence(self, beyond: f64) -> f64 {
        self.second + (beyond - self.at) * self.first
    }
}

impl Beam {
    /// A shaft of segments, in order from the chuck face.
    ///
    /// # Errors
    /// [`BeamError::Empty`] without segments, [`BeamError::NoLength`] and [`BeamError::NoMetal`] where a segment has
    /// nothing of a thing that must be above zero.
    pub fn new(segments: &[Segment]) -> Result<Self, BeamError> {
        let mut checked = Vec::with_capacity(segments.len());
        let mut at = Length::ZERO;
        for (index, segment) in segments.iter().enumerate() {
            let stiffness = segment.modulus.to_mpa() * segment.second_moment.to_mm4();
            if !positive(segment.length.to_mm()) {
                return Err(BeamError::NoLength { segment: index });
            }
            if !positive(stiffness) {
                return Err(BeamError::NoMetal { at });
            }
            let even = Bend {
                start: 1.0 / stiffness,
                growth: 0.0,
            };
            checked.push((segment.length.to_mm(), even));
            at += segment.length;
        }
        Self::from_pieces(checked)
    }

    /// A shaft of pieces, each with its length in mm, all of them good.
    pub(super) fn from_pieces(
        checked: impl IntoIterator<Item = (f64, Bend)>,
    ) -> Result<Self, BeamError> {
        let mut end = Sums::default();
        let pieces: Vec<Piece> = checked
            .into_iter()
            .map(|(length, bend)| {
                let before = end;
                end = end.onward(length, bend);
                Piece { before, bend }
            })
            .collect();
        if pieces.is_empty() {
            return Err(BeamError::Empty);
        }
        Ok(Self { pieces, end })
    }

    /// How far it sticks out of the chuck.
    pub fn length(&self) -> Length {
        Length::mm(self.end.at)
    }

    /// The deflection at a place under a force across the axis at another, in the direction of the force, when the end
    /// in the chuck is clamped and nothing else holds it. Both from the chuck face; beyond the ends counts as at the
    /// end.
    ///
    /// # Accuracy
    /// Exact for small deflections of a slender bar.
    /// # Source
    /// Unit-load method, any textbook of strength of materials.
    pub fn deflection(&self, at: Length, load_at: Length, force: Force) -> Length {
        let (near, far) = (at.min(load_at), at.max(load_at));
        let influence = self.sums(near.to_mm()).influence(self.within(far.to_mm()));
        Length::mm(influence * force.to_newtons())
    }

    /// The diameter of the plain solid bar of the same length that gives as much at the free end.
    ///
    /// A modulus for that bar; with the work's own, the figure that slenderness rules want for a stepped part.
    pub fn equal_diameter(&self, modulus: Stress) -> Length {
        // L³/(3 E I) is the second sum at the end.
        let second_moment = self.end.at.powi(3) / (3.0 * modulus.to_mpa() * self.end.second);
        Length::mm((64.0 * second_moment / PI).max(0.0).sqrt().sqrt())
    }

    /// The sums up to a place in mm, from which all deflections there follow.
    pub(super) fn sums(&self, at: f64) -> Sums {
        let at = self.within(at);
        let next = self.pieces.partition_point(|piece| piece.before.at <= at);
        let piece = next.checked_sub(1).and_then(|index| self.pieces.get(index));
        piece.map_or(self.end, |piece| {
            piece.before.onward(at - piece.before.at, piece.bend)
        })
    }

    /// The sums up to the free end.
    pub(super) const fn end(&self) -> Sums {
        self.end
    }

    /// A place in mm, held to the work.
    pub(super) fn within(&self, at: f64) -> f64 {
        at.max(0.0).min(self.end.at)
    }
}

/// Whether a number is above zero and finite.
pub(super) fn positive(value: f64) -> bool {
    value > 0.0 && value.is_finite()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::strength::ring_second;

    const STEEL: Stress = Stress::mpa(210_000.0);

    fn mm(value: f64) -> Length {
        Length::mm(value)
    }

    fn segment(length: f64, diameter: f64) -> Segment {
        Segment {
            length: mm(length),
            second_moment: SecondMoment::mm4(ring_second(diameter / 2.0, 0.0)),
            modulus: STEEL,
        }
    }

    /// 1 + 1 is the same bar as 2, wherever the load is.
    #[test]
    fn a_cut_without_a_step_changes_nothing() {
        let whole = Beam::new(&[segment(80.0, 12.0)]).unwrap();
        let cut = Beam::new(&[segment(13.0, 12.0), segment(67.0, 12.0)]).unwrap();
        let force = Force::newtons(100.0);
        for (at, load) in [(5.0, 13.0), (13.0, 80.0), (80.0, 40.0), (13.0, 13.0)] {
            let (one, two) = (
                whole.deflection(mm(at), mm(load), force),
                cut.deflection(mm(at), mm(load), force),
            );
            assert!((one / two - 1.0).abs() < 1e-13, "{at} {load}");
        }
        assert!((whole.equal_diameter(STEEL).to_mm() - 12.0).abs() < 1e-12);
    }

    #[test]
    fn what_cannot_be_bent_is_refused() {
        assert_eq!(Beam::new(&[]), Err(BeamError::Empty));
        let wrong = [segment(5.0, 4.0), segment(0.0, 4.0)];
        assert_eq!(Beam::new(&wrong), Err(BeamError::NoLength { segment: 1 }));
    }
}
