//! Changes to what is wanted: the receiver and its choices, its limits, a standard shank, the most that can be had.

use std::rc::Rc;

use skimwright::job::{Field, Job, Receiver, ReceiverField, ReceiverKind, Wanted};
use skimwright::quantity::{Entered, Length, Units};
use skimwright::receiver::with_its_limits;
use skimwright::rework::{Offer, Take};
use skimwright::tables::{
    ColletSize, HoleClass, SeatLoad, ShankForm, ShankSize, SleeveDuty, WorkMaterial,
    least_sleeve_wall,
};

use super::With;

/// One change of what is wanted.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum WantedEdit {
    Kind(ReceiverKind),
    Collet(ColletSize),
    Shank(ShankSize),
    Hole(HoleClass),
    Load(SeatLoad),
    SleeveDuty(SleeveDuty),
    SleeveMaterial(WorkMaterial),
    /// The limits that the receiver asks for.
    TakeLimits,
    /// All of it at once, as a standard shank asks.
    Become(Rc<Wanted>),
    /// The most that can be had, or a part of it.
    Most(Offer, Take),
}

impl WantedEdit {
    /// Whether it puts a number into this field, so that a text which was not understood there has to go.
    pub(crate) fn fills(&self, field: Field) -> bool {
        match self {
            Self::Kind(_) | Self::Collet(_) | Self::Shank(_) => matches!(
                field,
                Field::Receiver(_) | Field::ReceiverDepth | Field::LeastGrip
            ),
            Self::TakeLimits => matches!(
                field,
                Field::WantedDiameter | Field::UpperDeviation | Field::LowerDeviation
            ),
            Self::Become(_) => matches!(
                field,
                Field::WantedDiameter
                    | Field::UpperDeviation
                    | Field::LowerDeviation
                    | Field::WantedLength
                    | Field::ShoulderRadius
                    | Field::Countersink
                    | Field::Receiver(_)
                    | Field::ReceiverDepth
                    | Field::LeastGrip
            ),
            Self::Most(_, take) => match field {
                Field::WantedDiameter => *take != Take::Length,
                Field::WantedLength => *take != Take::Diameter,
                _ => false,
            },
            Self::Hole(_) | Self::Load(_) | Self::SleeveDuty(_) | Self::SleeveMaterial(_) => false,
        }
    }

    pub(super) fn try_on(&self, job: &mut Job, with: With) -> Option<()> {
        let wanted = &mut job.wanted;
        match (self, &mut wanted.receiver) {
            (Self::Kind(kind), _) => {
                let fresh = fresh(*kind, job, with)?;
                set_receiver(&mut job.wanted, fresh);
            }
            (Self::Collet(size), Receiver::Collet { .. }) => {
                set_receiver(wanted, Receiver::Collet { collet: *size });
            }
            (Self::Shank(size), Receiver::SideLock { .. }) => {
                set_receiver(wanted, Receiver::SideLock { shank: *size });
            }
            (Self::Hole(class), Receiver::PlainBore { hole, .. }) => *hole = *class,
            (Self::Load(choice), Receiver::Bearing { load, .. }) => *load = *choice,
            (Self::SleeveDuty(choice), Receiver::Sleeve { duty, .. }) => *duty = *choice,
            (Self::SleeveMaterial(choice), Receiver::Sleeve { material, .. }) => {
                *material = *choice;
            }
            (Self::TakeLimits, _) => job.wanted = with_its_limits(job)?,
            (Self::Become(other), _) => *wanted = Wanted::clone(other),
            (Self::Most(offer, take), _) => *wanted = offer.taken(wanted, *take),
            _ => return None,
        }
        Some(())
    }
}

/// Depth and least grip that were typed belonged to the receiver before.
fn set_receiver(wanted: &mut Wanted, receiver: Receiver) {
    wanted.receiver = receiver;
    wanted.receiver_depth = None;
    wanted.least_grip = None;
}

/// A receiver of another kind that suits the diameter wanted; the edge at its mouth stays as it was.
fn fresh(kind: ReceiverKind, job: &Job, with: With) -> Option<Receiver> {
    let wanted = &job.wanted;
    let nominal = wanted.diameter.value();
    let edge = job.entry(Field::Receiver(ReceiverField::Edge)).cloned();
    let edge = edge.and_then(Entered::new);
    Some(match kind {
        ReceiverKind::Own => Receiver::Own { edge },
        ReceiverKind::Collet => Receiver::Collet {
            collet: collet_for(nominal)?,
        },
        ReceiverKind::SideLock => Receiver::SideLock {
            shank: shank_for(nominal, with.units)?,
        },
        ReceiverKind::Hydraulic => Receiver::Hydraulic {},
        ReceiverKind::PlainBore => Receiver::PlainBore {
            hole: HoleClass::H7,
            edge,
        },
        ReceiverKind::Bearing => Receiver::Bearing {
            load: SeatLoad::RotatingNormal,
            ring_chamfer: with.units.enter_near(ring_chamfer(nominal))?,
        },
        ReceiverKind::Sleeve => Receiver::Sleeve {
            duty: SleeveDuty::MediumTorque,
            material: WorkMaterial::MediumCarbonSteel,
            outside: with.units.enter_near(outside(nominal, with))?,
            edge,
        },
    })
}

/// The smallest collet that takes the diameter, or the last one in the list.
fn collet_for(nominal: Length) -> Option<ColletSize> {
    let takes = |size: &ColletSize| {
        let collet = size.get();
        collet.is_some_and(|collet| collet.nominal_bore_for(nominal).is_some())
    };
    ColletSize::all().find(takes).or(ColletSize::all().last())
}

/// The standard shank with a flat that is nearest in diameter, of the units in use.
fn shank_for(nominal: Length, units: Units) -> Option<ShankSize> {
    let off = |size: &ShankSize| {
        let shank = size
            .get()
            .filter(|shank| shank.is_inch() == units.is_inch());
        shank.map_or(f64::MAX, |shank| (shank.diameter - nominal).abs().to_mm())
    };
    ShankSize::of(ShankForm::Flat).min_by(|a, b| off(a).total_cmp(&off(b)))
}

/// The least chamfer of most ball bearings up to this bore; from memory, to be typed over.
fn ring_chamfer(bore: Length) -> Length {
    Length::mm(if bore <= Length::mm(17.0) { 0.6 } else { 1.0 })
}

/// A sleeve brings the shank back to what it was, if that leaves it a wall.
fn outside(nominal: Length, with: With) -> Length {
    let least = nominal + least_sleeve_wall(nominal) * 2.0;
    let before = with
        .received
        .map(|it| it.outer.radius_at(Length::ZERO) * 2.0);
    before.map_or(least, |before| before.max(least))
}
