//! The work in its supports: how far it gives under a force across it, and what the supports bear.
//!
//! Places are counted from the chuck face, or from the head centre, and the far end is where the tailstock centre sits.
//! Deflections and reactions are positive the way the force pushes and the way the supports push back.
//!
//! A chuck clamps the work rigidly but for its two springs. A tailstock centre holds its end across the axis alone.
//! Between centres both do so.
//!
//! Left out: the play of the supports, the couple of the feed force, and what the pull of the tailstock bends.

use super::beam::{Beam, Sums};
use super::springs::{Give, SpringError, Springs, pushed};
use crate::job::Support;
use crate::quantity::{Force, Length, Stiffness, Torque};

/// Work in its supports.
///
/// # Example
/// ```
/// use skimwright::holding::{Beam, Held, Segment, Springs, Support};
/// use skimwright::quantity::{Force, Length, SecondMoment, Stress};
/// // Steel, 16 mm in diameter, 120 mm out of the chuck, a centre at its end.
/// let bar = Beam::new(&[Segment {
///     length: Length::mm(120.0),
///     second_moment: SecondMoment::mm4(3216.99),
///     modulus: Stress::mpa(210_000.0),
/// }])
/// .unwrap();
/// let held = Held::new(bar, Support::ChuckAndCentre, Springs::RIGID).unwrap();
/// let bent = held.deflection(Length::mm(70.0), Force::newtons(300.0));
/// assert!((bent.to_um() - 7.529).abs() < 0.001);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    beam: Beam,
    support: Support,
    give: Give,
    /// What the free end gives when only the head holds the work, in mm/N: every place needs it.
    end_gives: f64,
}

impl Held {
    /// Work in its supports. A spring that the support does not have is not counted: no tail without a centre, no tilting
    /// between centres.
    ///
    /// # Errors
    /// [`SpringError`] names the first spring that is zero or negative.
    pub fn new(beam: Beam, support: Support, springs: Springs) -> Result<Self, SpringError> {
        let give = springs.give()?;
        let mut held = Self {
            beam,
            support,
            give,
            end_gives: 0.0,
        };
        let end = held.beam.end();
        held.end_gives = held.cantilever(end, held.length_mm(), held.length_mm());
        Ok(held)
    }

    /// The shaft itself.
    pub const fn beam(&self) -> &Beam {
        &self.beam
    }

    /// How it is held.
    pub const fn support(&self) -> Support {
        self.support
    }

    /// From the chuck face, or the head centre, to the far end.
    pub fn length(&self) -> Length {
        self.beam.length()
    }

    /// How far the work gives where the force is, with the springs of its supports, in the force's direction.
    ///
    /// `at`: from the chuck face, held to the work.
    ///
    /// # Accuracy
    /// Exact for the beam and the springs given; near a rigid centre the last digits go, to 10⁻¹² of what the shaft
    /// would give without it.
    /// # Source
    /// Unit-load method with springs in the supports, any textbook of strength of materials.
    pub fn deflection(&self, at: Length, force: Force) -> Length {
        pushed(self.work_gives(at.to_mm()), force)
    }

    /// How far the work gives at one place under a force at another.
    ///
    /// # Accuracy
    /// As [`deflection`](Self::deflection).
    pub fn deflection_elsewhere(&self, at: Length, load_at: Length, force: Force) -> Length {
        let (near, far) = (at.min(load_at).to_mm(), at.max(load_at).to_mm());
        pushed(self.influence(near, far), force)
    }

    /// How far work and tool move apart where the force is: the deflection of the work and the tool post's own.
    pub fn parting(&self, at: Length, force: Force) -> Length {
        pushed(self.gives(at), force)
    }

    /// The stiffness between work and tool at a place; `None` when nothing gives there.
    pub fn stiffness(&self, at: Length) -> Option<Stiffness> {
        let gives = self.gives(at);
        (gives > 0.0).then(|| Stiffness::newtons_per_um(1e-3 / gives))
    }

    /// What the tailstock centre bears across the axis; zero without one.
    pub fn tail_reaction(&self, at: Length, force: Force) -> Force {
        force * self.tail_share(at.to_mm())
    }

    /// What chuck, collet or head centre bears across the axis: the force less what the tailstock bears.
    pub fn head_reaction(&self, at: Length, force: Force) -> Force {
        force - self.tail_reaction(at, force)
    }

    /// The moment that chuck or collet bears at its face; zero between centres. With a centre it may turn negative.
    pub fn head_moment(&self, at: Length, force: Force) -> Torque {
        let at = self.beam.within(at.to_mm());
        match self.support {
            Support::BetweenCentres => Torque::ZERO,
            Support::Chuck | Support::Collet => force * Length::mm(at),
            Support::ChuckAndCentre => {
                force * Length::mm(at - self.tail_share(at) * self.length_mm())
            }
        }
    }

    fn length_mm(&self) -> f64 {
        self.beam.length().to_mm()
    }

    /// What parts work and tool at a place, in mm/N.
    pub(super) fn gives(&self, at: Length) -> f64 {
        self.work_gives(at.to_mm()) + self.give.tool
    }

    fn work_gives(&self, at: f64) -> f64 {
        self.influence(at, at)
    }

    /// With `far` as the unit force's place and `near` the place looked at, or the other way round: the same by
    /// reciprocity.
    fn influence(&self, near: f64, far: f64) -> f64 {
        let (near, far) = (self.beam.within(near), self.beam.within(far));
        let here = self.beam.sums(near);
        let free = self.cantilever(here, near, far);
        match self.support {
            Support::Chuck | Support::Collet => free,
            Support::ChuckAndCentre => {
                // f₁₁ − R f₁₂ with R = f₁₂/f₂₂: the centre pushes the end back to where its own spring lets it.
                let near_to_end = self.to_end(here, near);
                let far_to_end = if far > near {
                    self.to_end(self.beam.sums(far), far)
                } else {
                    near_to_end
                };
                free - near_to_end * far_to_end / (self.end_gives + self.give.tail)
            }
            Support::BetweenCentres => {
                // As bent when clamped at the head, then turned and moved as a whole until both ends sit on their centres.
                let end = self.length_mm();
                let (near_share, far_share) = (near / end, far / end);
                let near_to_end = self.to_end(here, near);
                let far_to_end = self.to_end(self.beam.sums(far), far);
                let bent = free - far_share * near_to_end - near_share * far_to_end
                    + near_share * far_share * self.end_gives;
                bent + (1.0 - near_share) * (1.0 - far_share) * self.give.head
                    + near_share * far_share * self.give.tail
            }
        }
    }

    /// What one place gives under a unit force at another, farther out, when only the head holds the work.
    fn cantilever(&self, here: Sums, near: f64, far: f64) -> f64 {
        let bent = here.influence(far);
        if self.support == Support::BetweenCentres {
            return bent;
        }
        bent + self.give.head + self.give.tilt * near * far
    }

    fn to_end(&self, here: Sums, near: f64) -> f64 {
        self.cantilever(here, near, self.length_mm())
    }

    /// The share of a force that the tailstock bears.
    fn tail_share(&self, at: f64) -> f64 {
        let at = self.beam.within(at);
        match self.support {
            Support::Chuck | Support::Collet => 0.0,
            Support::BetweenCentres => at / self.length_mm(),
            Support::ChuckAndCentre => {
                self.to_end(self.beam.sums(at), at) / (self.end_gives + self.give.tail)
            }
        }
    }
}
