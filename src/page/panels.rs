//! Which panels of a stage are open, and where the focus goes when a change takes it away.

use skimwright::costing::Step;
use skimwright::job::{
    DialPlane, EdgeField, Field, HoldingField, InstrumentField, Job, MachineField, PinField,
    RateField, TimeBound,
};

use super::edit::{Edit, List, ShopEdit};
use super::short_map::ShortMap;
use super::view::{Panel, Spot};

/// Most rows of a list that are open unasked: more would bury one another.
const MOST_OPEN: usize = 2;

/// What was opened and closed by hand, and where the focus goes.
#[derive(Clone, Debug, Default)]
pub(crate) struct Panels {
    chosen: ShortMap<Panel, bool>,
    /// Where the focus goes, and how often it was sent: to the same place twice is twice.
    pub(crate) spot: Option<(Spot, u32)>,
}

impl Panels {
    /// Whether a panel is open: as it was chosen; else the rows of a short list, and what holds a figure.
    pub(crate) fn is_open(&self, panel: Panel, job: &Job) -> bool {
        let chosen = self.chosen.get(panel).copied();
        chosen.unwrap_or_else(|| match panel {
            Panel::Row(list, _) => list.len(&job.part) <= MOST_OPEN,
            Panel::Add(_)
            | Panel::Recognise(_)
            | Panel::Becomes
            | Panel::Shank(_)
            | Panel::Most
            | Panel::Tool
            | Panel::Lathe
            | Panel::Holding
            | Panel::Dialling
            | Panel::Pins
            | Panel::PinPlanned
            | Panel::StepTimes
            | Panel::Rates
            | Panel::Instruments
            | Panel::Learned
            | Panel::Savings
            | Panel::Form
            | Panel::Counts
            | Panel::Steps
            | Panel::AllSteps
            | Panel::Cautions
            | Panel::Earlier
            | Panel::Exports
            | Panel::Takes
            | Panel::Changed
            | Panel::Parallel
            | Panel::Verdicts
            | Panel::Handling => false,
            Panel::Readings => true,
            Panel::Pin(_) => job.setup.pins.len() <= MOST_OPEN,
            Panel::Instrument(_) => job.shop.instruments.len() <= MOST_OPEN,
            Panel::MoreOfPart | Panel::Duty | Panel::Errors(_) => {
                let fields = fields_in(panel);
                fields.into_iter().any(|field| job.entry(field).is_some())
            }
        })
    }

    pub(crate) fn set(&mut self, panel: Panel, open: bool) {
        self.chosen.insert(panel, open);
    }

    /// Opens what a field stands in.
    pub(crate) fn open_to(&mut self, field: Field) {
        for panel in panels_round(field) {
            self.set(panel, true);
        }
    }

    pub(crate) fn open_and_focus(&mut self, panel: Panel) {
        self.set(panel, true);
        self.focus(Spot::Opens(panel));
    }

    pub(super) fn focus(&mut self, spot: Spot) {
        let times = self.spot.map_or(0, |(_, times)| times);
        self.spot = Some((spot, times.wrapping_add(1)));
    }

    /// A panel that is open only as it holds a figure must not close while that figure is typed anew.
    pub(crate) fn keep_open_round(&mut self, field: Field, job: &Job) {
        for panel in panels_round(field) {
            if self.is_open(panel, job) {
                self.set(panel, true);
            }
        }
    }

    /// Follows the rows to their new places; what is new is opened, and the focus stays with what was changed.
    pub(crate) fn after_edit(&mut self, edit: &Edit, job: &Job) {
        match *edit {
            Edit::Add(kind) => {
                let list = kind.list();
                self.set(Panel::Add(list), false);
                if let Ok(last) = u8::try_from(list.len(&job.part).saturating_sub(1)) {
                    self.open_and_focus(Panel::Row(list, last));
                }
            }
            Edit::Remove(list, index) => {
                self.follow(list, &|at| match at {
                    gone if gone == index => None,
                    behind if index < behind => Some(behind - 1),
                    before => Some(before),
                });
                let count = u8::try_from(list.len(&job.part)).unwrap_or(u8::MAX);
                self.focus(Spot::Opens(match count.checked_sub(1) {
                    Some(end) => Panel::Row(list, index.min(end)),
                    None => Panel::Add(list),
                }));
            }
            Edit::MoveOn(list, index) => {
                let next = index.saturating_add(1);
                self.follow(list, &|at| Some(swapped(at, index, next)));
                self.focus(Spot::MovesOn(list, next));
            }
            Edit::MoveBack(list, index) => {
                let before = index.saturating_sub(1);
                self.follow(list, &|at| Some(swapped(at, index, before)));
                self.focus(Spot::MovesBack(list, before));
            }
            Edit::Copy(list, index) => {
                let copy = index.saturating_add(1);
                self.follow(list, &|at| {
                    Some(if index < at { at.saturating_add(1) } else { at })
                });
                self.open_and_focus(Panel::Row(list, copy));
            }
            Edit::Shop(ShopEdit::AddPin | ShopEdit::PinPass(_)) => {
                self.set(Panel::PinPlanned, false);
                if let Ok(last) = u8::try_from(job.setup.pins.len().saturating_sub(1)) {
                    self.open_and_focus(Panel::Pin(last));
                }
            }
            Edit::Shop(ShopEdit::RemovePin(gone)) => {
                self.chosen.move_keys(|panel| {
                    Some(match panel {
                        Panel::Pin(at) if at == gone => return None,
                        Panel::Pin(at) if gone < at => Panel::Pin(at - 1),
                        other => other,
                    })
                });
                self.focus(Spot::Opens(Panel::Pins));
            }
            Edit::Shop(ShopEdit::AddInstrument(_) | ShopEdit::TakeInstrument(_)) => {
                if let Ok(last) = u8::try_from(job.shop.instruments.len().saturating_sub(1)) {
                    self.open_and_focus(Panel::Instrument(last));
                }
            }
            Edit::Shop(ShopEdit::RemoveInstrument(gone)) => {
                self.chosen.move_keys(|panel| {
                    Some(match panel {
                        Panel::Instrument(at) if at == gone => return None,
                        Panel::Instrument(at) if gone < at => Panel::Instrument(at - 1),
                        other => other,
                    })
                });
                self.focus(Spot::Opens(Panel::Instruments));
            }
            // The button that had the focus is gone.
            Edit::Shop(ShopEdit::Forget(_)) => self.focus(Spot::Opens(Panel::Learned)),
            _ => {}
        }
    }

    /// After a step of undo: where rows came or went, nobody knows which is which.
    pub(crate) fn after_step(&mut self, before: &Job, after: &Job) {
        for list in List::ALL {
            if list.len(&before.part) != list.len(&after.part) {
                self.follow(list, &|_| None);
            }
        }
        if before.setup.pins.len() != after.setup.pins.len() {
            let pin = |panel| matches!(panel, Panel::Pin(_));
            self.chosen.retain(|panel| !pin(panel));
        }
        if before.shop.instruments.len() != after.shop.instruments.len() {
            let instrument = |panel| matches!(panel, Panel::Instrument(_));
            self.chosen.retain(|panel| !instrument(panel));
        }
    }

    /// Takes the choices of a list's rows to their new places.
    fn follow(&mut self, list: List, to: &dyn Fn(u8) -> Option<u8>) {
        self.chosen.move_keys(|panel| {
            Some(match panel {
                Panel::Row(of, index) if of == list => Panel::Row(of, to(index)?),
                Panel::Errors(index) if list == List::Sections => Panel::Errors(to(index)?),
                Panel::Recognise(index) if list == List::Sections => Panel::Recognise(to(index)?),
                other => other,
            })
        });
    }
}

const fn swapped(at: u8, one: u8, other: u8) -> u8 {
    if at == one {
        other
    } else if at == other {
        one
    } else {
        at
    }
}

/// The panels that hold fields always.
const FOLDED: [Panel; 9] = [
    Panel::MoreOfPart,
    Panel::Duty,
    Panel::Tool,
    Panel::Lathe,
    Panel::Holding,
    Panel::Dialling,
    Panel::StepTimes,
    Panel::Rates,
    Panel::Instruments,
];

/// The panels that a field stands in, the innermost last.
fn panels_round(field: Field) -> Vec<Panel> {
    let row = match List::of(field) {
        Some((list, Some(index))) => Some(Panel::Row(list, index)),
        _ => None,
    };
    let errors = match field {
        Field::Section(index, _) => Some(Panel::Errors(index)),
        _ => None,
    };
    let pin = match field {
        Field::Pin(index, _) => Some(Panel::Pin(index)),
        _ => None,
    };
    let instrument = match field {
        Field::Instrument(index, _) => Some(Panel::Instrument(index)),
        _ => None,
    };
    let folded = FOLDED.into_iter().chain(errors);
    let round = folded.filter(|panel| fields_in(*panel).contains(&field));
    let pins = pin.map(|_| Panel::Pins).into_iter().chain(pin);
    let instruments = instrument.map(|_| Panel::Instruments);
    let instruments = instruments.into_iter().chain(instrument);
    let round = row.into_iter().chain(round);
    round.chain(pins).chain(instruments).collect()
}

/// The fields of a panel, in their order.
pub(crate) fn fields_in(panel: Panel) -> Vec<Field> {
    use skimwright::job::SectionField::{DiameterError, LengthError};
    match panel {
        Panel::MoreOfPart => vec![
            Field::ShankLength,
            Field::EndRunout,
            Field::CuttingGroup,
            Field::SurfaceHardness,
            Field::FileBite,
            Field::CaseDepth,
            Field::CoreHardness,
        ],
        Panel::Duty => vec![
            Field::DutyTorque,
            Field::DutyPower,
            Field::DutySpeed,
            Field::DutyForce,
            Field::DutyOverhang,
        ],
        Panel::Errors(index) => [DiameterError, LengthError]
            .map(|name| Field::Section(index, name))
            .to_vec(),
        Panel::Tool => [Field::Tool]
            .into_iter()
            .chain(TOOL.map(Field::Edge))
            .collect(),
        Panel::Lathe => LATHE.map(Field::Machine).to_vec(),
        Panel::Holding => HOLDING.map(Field::Holding).to_vec(),
        Panel::Dialling => [DialPlane::Near, DialPlane::Far]
            .into_iter()
            .flat_map(|plane| [vec![place_of(plane)], readings_of(plane)].concat())
            .collect(),
        Panel::Pin(index) => PIN.map(|name| Field::Pin(index, name)).to_vec(),
        Panel::Rates => RATES.map(Field::Rate).to_vec(),
        Panel::Instruments => vec![Field::RoomTemperature],
        Panel::Instrument(index) => INSTRUMENT
            .map(|name| Field::Instrument(index, name))
            .to_vec(),
        Panel::StepTimes => Step::ALL.into_iter().flat_map(times_of).collect(),
        Panel::Row(..)
        | Panel::Add(_)
        | Panel::Recognise(_)
        | Panel::Becomes
        | Panel::Shank(_)
        | Panel::Most
        | Panel::Pins
        | Panel::PinPlanned
        | Panel::Learned
        | Panel::Savings
        | Panel::Form
        | Panel::Counts
        | Panel::Steps
        | Panel::AllSteps
        | Panel::Cautions
        | Panel::Readings
        | Panel::Earlier
        | Panel::Takes
        | Panel::Changed
        | Panel::Parallel
        | Panel::Verdicts
        | Panel::Handling
        | Panel::Exports => Vec::new(),
    }
}

const TOOL: [EdgeField; 11] = [
    EdgeField::Name,
    EdgeField::NoseRadius,
    EdgeField::CuttingEdgeAngle,
    EdgeField::Rake,
    EdgeField::LeastFeed,
    EdgeField::MostFeed,
    EdgeField::LeastDepth,
    EdgeField::MostDepth,
    EdgeField::Price,
    EdgeField::Edges,
    EdgeField::RegrindTime,
];
const LATHE: [MachineField; 20] = [
    MachineField::Name,
    MachineField::Rigidity,
    MachineField::Speeds,
    MachineField::SlowestSpeed,
    MachineField::FastestSpeed,
    MachineField::Feeds,
    MachineField::FinestFeed,
    MachineField::CoarsestFeed,
    MachineField::Power,
    MachineField::Efficiency,
    MachineField::Torque,
    MachineField::Swing,
    MachineField::ChuckTopSpeed,
    MachineField::Graduation,
    MachineField::DialReads,
    MachineField::CompoundGraduation,
    MachineField::FineInfeed,
    MachineField::HeadStiffness,
    MachineField::TailStiffness,
    MachineField::PostStiffness,
];
const HOLDING: [HoldingField; 5] = [
    HoldingField::Support,
    HoldingField::Jaws,
    HoldingField::GripLength,
    HoldingField::GripForce,
    HoldingField::TailForce,
];
const PIN: [PinField; 4] = [
    PinField::After,
    PinField::Infeed,
    PinField::Speed,
    PinField::Feed,
];
const INSTRUMENT: [InstrumentField; 6] = [
    InstrumentField::Name,
    InstrumentField::Kind,
    InstrumentField::Graduation,
    InstrumentField::PermissibleError,
    InstrumentField::Reference,
    InstrumentField::Repeat,
];
const RATES: [RateField; 5] = [
    RateField::Currency,
    RateField::PerHour,
    RateField::Least,
    RateField::Consumables,
    RateField::Postage,
];

/// The times of a step.
pub(crate) fn times_of(step: Step) -> [Field; 3] {
    [TimeBound::Low, TimeBound::Likely, TimeBound::High].map(|bound| Field::Step(step, bound))
}

/// Where the readings of a plane were taken.
pub(crate) const fn place_of(plane: DialPlane) -> Field {
    Field::Holding(match plane {
        DialPlane::Near => HoldingField::NearPlace,
        DialPlane::Far => HoldingField::FarPlace,
    })
}

/// The readings of a plane, in the order in which the part is turned.
pub(crate) fn readings_of(plane: DialPlane) -> Vec<Field> {
    (0..4).map(|quarter| Field::Dial(plane, quarter)).collect()
}
