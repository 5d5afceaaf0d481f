//! The job's typed numbers, each within its bounds or absent.

use super::finding::{Code, Finding};
use crate::costing::Step;
use crate::job::{
    BoreField, DialPlane, EdgeField, FeatureField, Field, HeadField, HoldingField, InstrumentField,
    Job, MachineField, PinField, RateField, SectionField, TimeBound,
};
use crate::quantity::{Entry, Length, RotationalSpeed, Time, Typed};

/// A view of a job that gives only numbers that can be computed with.
pub(crate) struct Checked<'a> {
    job: &'a Job,
}

impl<'a> Checked<'a> {
    pub(crate) const fn new(job: &'a Job) -> Self {
        Self { job }
    }

    /// A number within its bounds.
    pub(crate) fn value<Q: Typed>(&self, field: Field) -> Option<Q> {
        let entry = self.job.entry(field)?;
        let sound = entry.dimension() == Q::DIMENSION && is_in_bounds(field, entry);
        sound.then(|| Q::from_base(entry.base_value()))
    }

    /// What was typed where something was, and then only if it is sound; else the usual value, if there is one.
    pub(crate) fn or_usual<Q: Typed>(
        &self,
        field: Field,
        usual: impl Into<Option<Q>>,
    ) -> Option<Q> {
        match self.job.entry(field) {
            Some(_) => self.value(field),
            None => usual.into(),
        }
    }

    pub(crate) fn length(&self, field: Field) -> Option<Length> {
        self.value(field)
    }

    pub(crate) fn time(&self, field: Field) -> Option<Time> {
        self.value(field)
    }

    pub(crate) fn rotation(&self, field: Field) -> Option<RotationalSpeed> {
        self.value(field)
    }

    /// A finding for every number outside its bounds.
    pub(crate) fn out_of_bounds(&self) -> Vec<Finding> {
        let wrong = |field: Field| {
            let entry = self.job.entry(field)?;
            (!is_in_bounds(field, entry)).then(|| Finding::at(field, Code::OutOfBounds))
        };
        number_fields(self.job)
            .into_iter()
            .filter_map(wrong)
            .collect()
    }
}

/// Whether a value keeps to its bounds, forgiving what conversion between inch and mm rounds.
fn within(value: f64, least: f64, most: f64) -> bool {
    const ROUNDING: f64 = 1e-9;
    least - ROUNDING <= value && value <= most + ROUNDING
}

/// Whether a typed number may stand in a field: the page asks before it takes it.
pub fn is_in_bounds(field: Field, entry: &Entry) -> bool {
    field.bounds().is_some_and(|bounds| {
        bounds.dimension == entry.dimension()
            && within(entry.base_value(), bounds.least, bounds.most)
    })
}

/// Every field of numbers that this job has a place for, in the order of the page.
pub fn number_fields(job: &Job) -> Vec<Field> {
    let mut fields = vec![Field::HeadDiameter, Field::HeadLength];
    for (index, _) in (0..=u8::MAX).zip(&job.part.head_beyond) {
        fields
            .extend([HeadField::Diameter, HeadField::Length].map(|name| Field::Head(index, name)));
    }
    fields.extend([
        Field::Runout,
        Field::EndRunout,
        Field::SurfaceHardness,
        Field::CaseDepth,
        Field::CoreHardness,
        Field::ShankLength,
    ]);
    for (index, section) in (0..=u8::MAX).zip(&job.part.sections) {
        let names = section.turned.numbers();
        let names = names.into_iter().chain([SectionField::Start]);
        fields.extend(names.map(|name| Field::Section(index, name)));
    }
    for (index, feature) in (0..=u8::MAX).zip(&job.part.features) {
        let names = feature.cut.numbers();
        let names = names.into_iter().chain([FeatureField::Start]);
        fields.extend(names.map(|name| Field::Feature(index, name)));
    }
    for (index, bore) in (0..=u8::MAX).zip(&job.part.bores) {
        let names = bore.hole.numbers();
        let names = names.into_iter().chain([BoreField::OffCentre]);
        fields.extend(names.map(|name| Field::Bore(index, name)));
    }
    fields.extend([
        Field::WantedDiameter,
        Field::UpperDeviation,
        Field::LowerDeviation,
        Field::WantedLength,
        Field::ShoulderRadius,
        Field::EndChamfer,
        Field::Countersink,
        Field::Roughness,
    ]);
    fields.extend(
        job.wanted
            .receiver
            .numbers()
            .into_iter()
            .map(Field::Receiver),
    );
    fields.extend([
        Field::ReceiverDepth,
        Field::LeastGrip,
        Field::DutyTorque,
        Field::DutyForce,
        Field::DutyOverhang,
        Field::DutyPower,
        Field::DutySpeed,
        Field::Kerf,
        Field::FacingStock,
        Field::RoughInfeed,
        Field::LastCut,
        Field::PolishingStock,
        Field::CuttingSpeed,
        Field::RoughFeed,
        Field::FinishFeed,
        Field::TopSpeed,
        Field::Approach,
        Field::SetTime,
        Field::ReturnTime,
        Field::MeasureTime,
        Field::PolishTime,
    ]);
    fields.extend(shop_fields());
    for (index, _) in (0..=u8::MAX).zip(&job.setup.pins) {
        let names = [
            PinField::After,
            PinField::Infeed,
            PinField::Speed,
            PinField::Feed,
        ];
        fields.extend(names.map(|name| Field::Pin(index, name)));
    }
    fields.push(Field::RoomTemperature);
    for (index, _) in (0..=u8::MAX).zip(&job.shop.instruments) {
        let names = [
            InstrumentField::Graduation,
            InstrumentField::PermissibleError,
            InstrumentField::Reference,
            InstrumentField::Repeat,
        ];
        fields.extend(names.map(|name| Field::Instrument(index, name)));
    }
    fields.retain(|field| job.has(*field));
    fields
}

/// The numbers of machine, tool, rates and holding, whether this job has them or not.
fn shop_fields() -> impl Iterator<Item = Field> {
    use {EdgeField as E, HoldingField as H, MachineField as M, RateField as R};
    let machine = [
        M::SlowestSpeed,
        M::FastestSpeed,
        M::FinestFeed,
        M::CoarsestFeed,
        M::Power,
        M::Efficiency,
        M::Torque,
        M::Swing,
        M::ChuckTopSpeed,
        M::Graduation,
        M::CompoundGraduation,
        M::FineInfeed,
        M::HeadStiffness,
        M::TailStiffness,
        M::PostStiffness,
    ];
    let edge = [
        E::NoseRadius,
        E::CuttingEdgeAngle,
        E::Rake,
        E::LeastFeed,
        E::MostFeed,
        E::LeastDepth,
        E::MostDepth,
        E::Price,
        E::Edges,
        E::RegrindTime,
    ];
    let bounds = [TimeBound::Low, TimeBound::Likely, TimeBound::High];
    let steps = Step::ALL.map(|step| bounds.map(|bound| Field::Step(step, bound)));
    let rates = [R::PerHour, R::Least, R::Consumables, R::Postage];
    let holding = [
        H::GripLength,
        H::GripForce,
        H::TailForce,
        H::NearPlace,
        H::FarPlace,
    ];
    let planes = [DialPlane::Near, DialPlane::Far];
    let dial = planes.map(|plane| (0..4).map(move |quarter| Field::Dial(plane, quarter)));
    edge.map(Field::Edge)
        .into_iter()
        .chain(machine.map(Field::Machine))
        .chain(steps.into_iter().flatten())
        .chain(rates.map(Field::Rate))
        .chain(holding.map(Field::Holding))
        .chain(dial.into_iter().flatten())
}
