//! How the part of a job is held, with everything resolved, and what that allows a cut.
//!
//! The part is held by its head, and its shank sticks out. Places on the part are counted from the shoulder, as
//! everywhere; the beam counts from the chuck face.

use super::beam::Beam;
use super::estimate::Estimate;
use super::form_error::FormError;
use super::grip::{Friction, GripSafety, Tightening, WorkHardness, scroll_chuck_grip};
use super::springs::Springs;
use super::supports::Held;
use crate::cutting::is_hard;
use crate::job::{Field, HoldingField, JawFace, Job, MachineField, Rigidity, Support};
use crate::part::{Pick, Profile, Received};
use crate::plan::Checked;
use crate::quantity::{Force, Length, Stiffness, Stress};
use crate::rework::SizeLimits;
use crate::tables::{GrippedSurface, JawSurface};

/// How the part of a job is held.
#[derive(Clone, Debug)]
pub(crate) struct Hold {
    pub(crate) support: Support,
    /// Where the chuck ends, from the shoulder: on the head, so below nought; between centres the head's far end.
    pub(crate) chuck_face: Length,
    /// The free end while it is turned.
    pub(crate) end: Length,
    pub(crate) grip_length: Length,
    pub(crate) gripped_diameter: Length,
    /// What the jaws hold with; `None` where nobody knows: in a collet, or between centres.
    pub(crate) grip: Option<Estimate<Force>>,
    pub(crate) friction: Friction,
    /// What the live centre was asked to push with.
    pub(crate) thrust: Option<Force>,
    springs: Springs,
    modulus: Stress,
    head: Profile,
    root: Profile,
    inner: Profile,
}

/// The usual grip: two thirds of the head, and no more than jaws are long.
///
/// # Source
/// Common practice, no source.
const USUAL_GRIP: (f64, Length) = (2.0 / 3.0, Length::mm(40.0));

/// What of the tolerance the giving way may use up in the last cuts.
///
/// # Source
/// A third: common practice, no source.
const SHARE_OF_TOLERANCE: f64 = 1.0 / 3.0;

/// A variation of the diameter that nobody measures; less is not asked for, however narrow the limits are.
pub(crate) const NEGLIGIBLE: Length = Length::mm(0.0005);

/// How much the diameter may vary along the work in the last cuts.
pub(crate) fn variation_allowed(limits: SizeLimits) -> Length {
    ((limits.upper - limits.lower) * SHARE_OF_TOLERANCE).max(NEGLIGIBLE)
}

impl Hold {
    /// How the part is held while its shank ends at `end`; `None` while a figure that was entered is out of bounds.
    pub(crate) fn read(
        job: &Job,
        checked: &Checked,
        received: &Received,
        end: Length,
    ) -> Option<Self> {
        let support = support(job);
        let head = received.head.clone();
        let length = -head.start();
        let (share, most) = USUAL_GRIP;
        let usual = (length * share).min(most);
        let field = Field::Holding;
        let grip_length: Length = checked.or_usual(field(HoldingField::GripLength), usual)?;
        let grip_length = grip_length.min(length);
        let between = support == Support::BetweenCentres;
        let chuck_face = if between {
            head.start()
        } else {
            head.start() + grip_length
        };
        let gripped_diameter = head.radius_at(head.start() + grip_length / 2.0) * 2.0;
        let thrust = checked.value(field(HoldingField::TailForce));
        if job.entry(field(HoldingField::TailForce)).is_some() && thrust.is_none() {
            return None;
        }
        Some(Self {
            support,
            chuck_face,
            end,
            grip_length,
            gripped_diameter,
            grip: grip(job, checked, support)?,
            friction: friction(job),
            thrust,
            springs: springs(job, checked)?,
            modulus: job.part.material.mechanical().elastic_modulus.typical,
            head,
            root: received.root.clone(),
            inner: received.inner.clone(),
        })
    }

    /// Stiffness of the metal.
    pub(crate) const fn modulus(&self) -> Stress {
        self.modulus
    }

    /// From the chuck face to a place on the part.
    pub(crate) fn out(&self, z: Length) -> Length {
        z - self.chuck_face
    }

    /// The work in its supports while the shank is no thicker than `diameter`; `None` where there is no beam: nothing
    /// sticks out, or nothing is left round a hole.
    pub(crate) fn held(&self, diameter: Length) -> Option<Held> {
        let start = Length::ZERO;
        let stock = self.root.between(start, self.end);
        let turned = stock.merge(
            &Profile::cylinder(start, self.end, diameter / 2.0),
            Pick::Smaller,
        );
        let outer = turned.merge(&self.head, Pick::Larger);
        let beam =
            Beam::from_outlines(&outer, &self.inner, self.chuck_face, self.end, self.modulus)
                .ok()?;
        Held::new(beam, self.support, self.springs).ok()
    }

    /// The largest force across the work, the same all along the turned stretch from `from`, with which its diameter
    /// varies by no more than `allowed`; infinite where nothing gives.
    ///
    /// What gives evenly all along is not counted: the first of the two last cuts shows it, and the second takes it out.
    pub(crate) fn largest_across(&self, held: &Held, from: Length, allowed: Length) -> Force {
        let one = Force::newtons(1.0);
        let form = FormError::along(
            held,
            |_| one,
            (self.out(from), self.out(self.end)),
            2,
            Length::ZERO,
        );
        let spread = form.spread();
        if spread > Length::ZERO {
            one * (allowed / spread)
        } else {
            Force::newtons(f64::MAX)
        }
    }

    /// The tangential force times the diameter it acts on that the grip withstands, in newtons times length, and the
    /// force along the work; `None` where nobody knows.
    ///
    /// The careful end of the grip counts.
    pub(crate) fn withstands(&self) -> Option<(Force, Force)> {
        let safety = GripSafety::default();
        let least = self.grip?.low * (1.0 / (safety.cut * safety.chuck));
        Some((
            least * self.friction.tangential,
            least * self.friction.axial,
        ))
    }
}

/// What holds the part: as chosen, or a chuck, with a centre where the end gets a countersink.
pub(crate) fn support(job: &Job) -> Support {
    let usual = match job.wanted.countersink {
        Some(_) => Support::ChuckAndCentre,
        None => Support::Chuck,
    };
    job.setup.support.unwrap_or(usual)
}

/// What the jaws hold with: as entered, or as a hand tightens the chuck that such a lathe has.
///
/// # Source
/// Which chuck a class of lathe has: from memory.
#[expect(
    clippy::option_option,
    reason = "out of bounds, or nobody knows, or a force"
)]
fn grip(job: &Job, checked: &Checked, support: Support) -> Option<Option<Estimate<Force>>> {
    let field = Field::Holding(HoldingField::GripForce);
    if job.entry(field).is_some() {
        let force: Force = checked.value(field)?;
        return Some(Some(Estimate::new(force, force, force)));
    }
    let chuck = Length::mm(match job.shop.machine.rigidity {
        Rigidity::Light => 100.0,
        Rigidity::Medium => 125.0,
        Rigidity::Heavy => 160.0,
    });
    Some(match support {
        Support::Chuck | Support::ChuckAndCentre => scroll_chuck_grip(chuck, Tightening::ByHand),
        Support::Collet | Support::BetweenCentres => None,
    })
}

/// Friction in the jaws, on a head that was turned or ground before.
fn friction(job: &Job) -> Friction {
    let hard = is_hard(job.part.material);
    let jaws = match job.setup.jaws {
        Some(JawFace::Serrated) => JawSurface::Serrated,
        Some(JawFace::Smooth) | None => JawSurface::Smooth,
    };
    let (surface, hardness) = if hard {
        (GrippedSurface::Ground, WorkHardness::TooHard)
    } else {
        (GrippedSurface::Turned, WorkHardness::Bites)
    };
    Friction::of(jaws, surface, hardness)
}

/// What gives beside the work: as measured, or as such a lathe usually does.
fn springs(job: &Job, checked: &Checked) -> Option<Springs> {
    let usual = job.shop.machine.rigidity.springs().likely;
    let or = |field, usual: Option<Stiffness>| match usual {
        Some(usual) => checked.or_usual(Field::Machine(field), usual).map(Some),
        None => Some(checked.value(Field::Machine(field))),
    };
    Some(Springs {
        head: or(MachineField::HeadStiffness, usual.head)?,
        tail: or(MachineField::TailStiffness, usual.tail)?,
        tool_post: or(MachineField::PostStiffness, usual.tool_post)?,
        ..usual
    })
}
