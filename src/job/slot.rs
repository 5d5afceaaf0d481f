//! Finding the typed number behind a field, without knowing what it measures.

use super::{
    BoreField, DialPlane, EdgeField, FeatureField, Field, Gears, HeadField, HoldingField,
    InstrumentField, Job, MachineField, PinField, RateField, SectionField, StepTimes, TimeBound,
    Tolerance,
};
use crate::quantity::{Entered, Entry, Typed};

/// A place in the job that holds a typed number, or may.
pub(super) trait Slot {
    fn entry(&self) -> Option<&Entry>;
    /// Puts an entry in, or takes it out; false when the place cannot hold that.
    fn put(&mut self, entry: Option<Entry>) -> bool;
}

impl<Q: Typed> Slot for Entered<Q> {
    fn entry(&self) -> Option<&Entry> {
        Some(Entered::entry(self))
    }

    fn put(&mut self, entry: Option<Entry>) -> bool {
        let Some(entered) = entry.and_then(Self::new) else {
            return false;
        };
        *self = entered;
        true
    }
}

impl<Q: Typed> Slot for Option<Entered<Q>> {
    fn entry(&self) -> Option<&Entry> {
        self.as_ref().map(Entered::entry)
    }

    fn put(&mut self, entry: Option<Entry>) -> bool {
        let Some(entry) = entry else {
            *self = None;
            return true;
        };
        let Some(entered) = Entered::new(entry) else {
            return false;
        };
        *self = Some(entered);
        true
    }
}

/// The one list of which field stands where, once for reading and once for changing.
macro_rules! slot {
    ($job:ident, $field:ident, $get:ident, $slot:ident, $as_ref:ident, $of:ident $(, $mutable:tt)?) => {{
        let (part, wanted, shop, setup) = (
            & $($mutable)? $job.part,
            & $($mutable)? $job.wanted,
            & $($mutable)? $job.shop,
            & $($mutable)? $job.setup,
        );
        Some(match $field {
            Field::HeadDiameter => & $($mutable)? part.head_diameter,
            Field::HeadLength => & $($mutable)? part.head_length,
            Field::Runout => & $($mutable)? part.runout,
            Field::EndRunout => & $($mutable)? part.end_runout,
            Field::SurfaceHardness => & $($mutable)? part.surface_hardness,
            Field::CaseDepth => & $($mutable)? part.case_depth,
            Field::CoreHardness => & $($mutable)? part.core_hardness,
            Field::ShankLength => & $($mutable)? part.shank_length,
            Field::Head(index, field) => {
                let piece = part.head_beyond.$get(usize::from(index))?;
                match field {
                    HeadField::Diameter => & $($mutable)? piece.diameter,
                    HeadField::Length => & $($mutable)? piece.length,
                }
            }
            Field::Section(index, field) => {
                let section = part.sections.$get(usize::from(index))?;
                match field {
                    SectionField::Start => & $($mutable)? section.place.$as_ref()?.start,
                    _ => return section.turned.$slot(field),
                }
            }
            Field::Feature(index, field) => {
                let feature = part.features.$get(usize::from(index))?;
                match field {
                    FeatureField::Start => & $($mutable)? feature.place.$as_ref()?.start,
                    _ => return feature.cut.$slot(field),
                }
            }
            Field::Bore(index, field) => {
                let bore = part.bores.$get(usize::from(index))?;
                match field {
                    BoreField::OffCentre => & $($mutable)? bore.off_centre,
                    _ => return bore.hole.$slot(field),
                }
            }
            Field::WantedDiameter => & $($mutable)? wanted.diameter,
            Field::UpperDeviation => match & $($mutable)? wanted.tolerance {
                Tolerance::Limits { upper, .. } => upper,
                Tolerance::Class(_) => return None,
            },
            Field::LowerDeviation => match & $($mutable)? wanted.tolerance {
                Tolerance::Limits { lower, .. } => lower,
                Tolerance::Class(_) => return None,
            },
            Field::WantedLength => & $($mutable)? wanted.length,
            Field::ShoulderRadius => & $($mutable)? wanted.shoulder_radius,
            Field::EndChamfer => & $($mutable)? wanted.end_chamfer,
            Field::Countersink => & $($mutable)? wanted.countersink,
            Field::Roughness => & $($mutable)? wanted.roughness,
            Field::Receiver(field) => return wanted.receiver.$slot(field),
            Field::ReceiverDepth => & $($mutable)? wanted.receiver_depth,
            Field::LeastGrip => & $($mutable)? wanted.least_grip,
            Field::DutyTorque => & $($mutable)? wanted.duty.torque,
            Field::DutyForce => & $($mutable)? wanted.duty.side_load,
            Field::DutyOverhang => & $($mutable)? wanted.duty.overhang,
            Field::DutyPower => & $($mutable)? wanted.duty.power,
            Field::DutySpeed => & $($mutable)? wanted.duty.speed,
            Field::Kerf => & $($mutable)? shop.kerf,
            Field::FacingStock => & $($mutable)? shop.facing_stock,
            Field::RoughInfeed => & $($mutable)? shop.rough_infeed,
            Field::LastCut => & $($mutable)? shop.last_cut,
            Field::PolishingStock => & $($mutable)? shop.polishing_stock,
            Field::CuttingSpeed => & $($mutable)? shop.cutting_speed,
            Field::RoughFeed => & $($mutable)? shop.rough_feed,
            Field::FinishFeed => & $($mutable)? shop.finish_feed,
            Field::TopSpeed => & $($mutable)? shop.top_speed,
            Field::Approach => & $($mutable)? shop.approach,
            Field::SetTime => & $($mutable)? shop.set_time,
            Field::ReturnTime => & $($mutable)? shop.return_time,
            Field::MeasureTime => & $($mutable)? shop.measure_time,
            Field::PolishTime => & $($mutable)? shop.polish_time,
            Field::Edge(field) => {
                let edge = & $($mutable)? shop.edge;
                match field {
                    EdgeField::Name => return None,
                    EdgeField::NoseRadius => & $($mutable)? edge.nose_radius,
                    EdgeField::CuttingEdgeAngle => & $($mutable)? edge.cutting_edge_angle,
                    EdgeField::Rake => & $($mutable)? edge.rake,
                    EdgeField::LeastFeed => & $($mutable)? edge.least_feed,
                    EdgeField::MostFeed => & $($mutable)? edge.most_feed,
                    EdgeField::LeastDepth => & $($mutable)? edge.least_depth,
                    EdgeField::MostDepth => & $($mutable)? edge.most_depth,
                    EdgeField::Price => & $($mutable)? edge.price,
                    EdgeField::Edges => & $($mutable)? edge.edges,
                    EdgeField::RegrindTime => & $($mutable)? edge.regrind_time,
                }
            }
            Field::Machine(field) => {
                let machine = & $($mutable)? shop.machine;
                match field {
                    MachineField::Name
                    | MachineField::Rigidity
                    | MachineField::Speeds
                    | MachineField::Feeds
                    | MachineField::DialReads => return None,
                    MachineField::SlowestSpeed => match & $($mutable)? machine.speeds {
                        Gears::Stepless { from, .. } => from,
                        Gears::Listed(_) => return None,
                    },
                    MachineField::FastestSpeed => match & $($mutable)? machine.speeds {
                        Gears::Stepless { to, .. } => to,
                        Gears::Listed(_) => return None,
                    },
                    MachineField::FinestFeed => match & $($mutable)? machine.feeds {
                        Gears::Stepless { from, .. } => from,
                        Gears::Listed(_) => return None,
                    },
                    MachineField::CoarsestFeed => match & $($mutable)? machine.feeds {
                        Gears::Stepless { to, .. } => to,
                        Gears::Listed(_) => return None,
                    },
                    MachineField::Power => & $($mutable)? machine.power,
                    MachineField::Efficiency => & $($mutable)? machine.efficiency,
                    MachineField::Torque => & $($mutable)? machine.torque,
                    MachineField::Swing => & $($mutable)? machine.swing,
                    MachineField::ChuckTopSpeed => & $($mutable)? machine.chuck_top_speed,
                    MachineField::Graduation => & $($mutable)? machine.graduation,
                    MachineField::CompoundGraduation => & $($mutable)? machine.compound_graduation,
                    MachineField::FineInfeed => & $($mutable)? machine.fine_infeed,
                    MachineField::HeadStiffness => & $($mutable)? machine.head_stiffness,
                    MachineField::TailStiffness => & $($mutable)? machine.tail_stiffness,
                    MachineField::PostStiffness => & $($mutable)? machine.post_stiffness,
                }
            }
            // The shop has these by themselves.
            Field::Step(step, TimeBound::Likely) if !StepTimes::has_likely(step) => return None,
            Field::Step(step, bound) => {
                let time = shop.times.$of(step)?;
                match bound {
                    TimeBound::Low => & $($mutable)? time.low,
                    TimeBound::Likely => & $($mutable)? time.likely,
                    TimeBound::High => & $($mutable)? time.high,
                }
            }
            Field::Rate(field) => {
                let rates = & $($mutable)? shop.rates;
                match field {
                    RateField::Currency => return None,
                    RateField::PerHour => & $($mutable)? rates.per_hour,
                    RateField::Least => & $($mutable)? rates.least,
                    RateField::Consumables => & $($mutable)? rates.consumables,
                    RateField::Postage => & $($mutable)? rates.postage,
                }
            }
            Field::Holding(field) => match field {
                HoldingField::Support | HoldingField::Jaws => return None,
                HoldingField::GripLength => & $($mutable)? setup.grip_length,
                HoldingField::GripForce => & $($mutable)? setup.grip_force,
                HoldingField::TailForce => & $($mutable)? setup.tail_force,
                HoldingField::NearPlace => & $($mutable)? setup.near.place,
                HoldingField::FarPlace => & $($mutable)? setup.far.place,
            },
            Field::Dial(plane, quarter) => {
                let plane = match plane {
                    DialPlane::Near => & $($mutable)? setup.near,
                    DialPlane::Far => & $($mutable)? setup.far,
                };
                plane.readings.$get(usize::from(quarter))?
            }
            Field::Pin(index, field) => {
                let pin = setup.pins.$get(usize::from(index))?;
                match field {
                    PinField::After => & $($mutable)? pin.after,
                    PinField::Infeed => & $($mutable)? pin.infeed,
                    PinField::Speed => & $($mutable)? pin.speed,
                    PinField::Feed => & $($mutable)? pin.feed,
                }
            }
            Field::RoomTemperature => & $($mutable)? setup.room_temperature,
            Field::Instrument(index, field) => {
                let instrument = shop.instruments.$get(usize::from(index))?;
                match field {
                    InstrumentField::Name | InstrumentField::Kind => return None,
                    InstrumentField::Graduation => & $($mutable)? instrument.graduation,
                    InstrumentField::PermissibleError => & $($mutable)? instrument.permissible_error,
                    InstrumentField::Reference => & $($mutable)? instrument.reference,
                    InstrumentField::Repeat => & $($mutable)? instrument.repeat,
                }
            }
            Field::Title
            | Field::Material
            | Field::CuttingGroup
            | Field::FileBite
            | Field::HeadBeyond
            | Field::Sections
            | Field::Features
            | Field::Bores
            | Field::Tolerance
            | Field::Tool
            | Field::Aim
            | Field::Pins
            | Field::Instruments
            | Field::MeasuredBy
            | Field::CutOffMethod
            | Field::CentreOrder => return None,
        })
    }};
}

fn slot(job: &Job, field: Field) -> Option<&dyn Slot> {
    slot!(job, field, get, slot, as_ref, of)
}

fn slot_mut(job: &mut Job, field: Field) -> Option<&mut dyn Slot> {
    slot!(job, field, get_mut, slot_mut, as_mut, of_mut, mut)
}

impl Job {
    /// The typed number of a field; `None` when it is empty, absent in this job, or no number.
    pub fn entry(&self, field: Field) -> Option<&Entry> {
        slot(self, field)?.entry()
    }

    /// Whether this job has a place for a number under this field, filled or not.
    pub fn has(&self, field: Field) -> bool {
        slot(self, field).is_some()
    }

    /// Puts a typed number into a field, or empties it.
    ///
    /// Returns false, and changes nothing, when the field is absent in this job, measures something else, or
    /// may not be empty.
    pub fn set_entry(&mut self, field: Field, entry: Option<Entry>) -> bool {
        slot_mut(self, field).is_some_and(|slot| slot.put(entry))
    }
}
