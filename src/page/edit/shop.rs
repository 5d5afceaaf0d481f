//! Changes to the lathe, the tool, the holding and the pinned passes that are no typed number.

use std::rc::Rc;

use skimwright::cutting::{Pass, PassKind};
use skimwright::job::{
    Aim, DialReads, Field, Gears, Instrument, InstrumentKind, JawFace, Job, Learned, Machine,
    MachineField, Pin, Rigidity, Support, What,
};
use skimwright::link::KeptTool;
use skimwright::quantity::{Dimension, Feed, RotationalSpeed, Unit, Units};

use super::With;
use super::fresh::{exact, plain};
use crate::page::shelf::Lesson;

/// One change of the shop or of how the part is set up.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ShopEdit {
    Aim(Aim),
    Support(Option<Support>),
    Jaws(Option<JawFace>),
    Rigidity(Rigidity),
    DialReads(DialReads),
    Speeds(Gears<RotationalSpeed>),
    Feeds(Gears<Feed>),
    /// A pass of one's own, with round figures.
    AddPin,
    /// The planned pass of this place in the plan, as it is.
    PinPass(u8),
    RemovePin(u8),
    /// A lathe that was kept.
    TakeLathe(Rc<Machine>),
    /// A tool that was kept.
    TakeTool(Rc<KeptTool>),
    /// A usual instrument of this kind.
    AddInstrument(InstrumentKind),
    /// One that no reading was taken with.
    RemoveInstrument(u8),
    InstrumentKind(u8, InstrumentKind),
    /// An instrument that was kept.
    TakeInstrument(Rc<Instrument>),
    /// What jobs taught of the lathe.
    Learn(Rc<Learned>),
    Forget(Lesson),
}

impl ShopEdit {
    /// Whether it puts a number into this field, or another's number, so that a text which was not understood there has
    /// to go.
    pub(crate) const fn fills(&self, field: Field) -> bool {
        match (self, field) {
            (
                Self::Speeds(_),
                Field::Machine(
                    MachineField::Speeds | MachineField::SlowestSpeed | MachineField::FastestSpeed,
                ),
            )
            | (
                Self::Feeds(_),
                Field::Machine(
                    MachineField::Feeds | MachineField::FinestFeed | MachineField::CoarsestFeed,
                ),
            )
            | (Self::TakeLathe(_), Field::Machine(_))
            | (Self::TakeTool(_), Field::Edge(_)) => true,
            (Self::RemovePin(gone), Field::Pin(index, _))
            | (Self::RemoveInstrument(gone), Field::Instrument(index, _)) => *gone <= index,
            _ => false,
        }
    }

    pub(super) fn try_on(&self, job: &mut Job, with: With) -> Option<()> {
        let (shop, setup) = (&mut job.shop, &mut job.setup);
        match self {
            Self::Aim(aim) => shop.aim = *aim,
            Self::Support(support) => setup.support = *support,
            Self::Jaws(jaws) => setup.jaws = *jaws,
            Self::Rigidity(rigidity) => shop.machine.rigidity = *rigidity,
            Self::DialReads(reads) => shop.machine.dial_reads = *reads,
            Self::Speeds(speeds) => shop.machine.speeds.clone_from(speeds),
            Self::Feeds(feeds) => shop.machine.feeds.clone_from(feeds),
            Self::AddPin => {
                let pin = fresh_pin(job, with)?;
                add_pin(job, pin)?;
            }
            Self::PinPass(index) => {
                let pin = pin_of(with.passes.get(usize::from(*index))?, with)?;
                add_pin(job, pin)?;
            }
            Self::RemovePin(index) => {
                let index = usize::from(*index);
                setup.pins.get(index)?;
                setup.pins.remove(index);
            }
            Self::TakeLathe(machine) => shop.machine = Machine::clone(machine),
            Self::TakeTool(tool) => {
                shop.tool = tool.tool;
                shop.edge.clone_from(&tool.edge);
            }
            Self::AddInstrument(kind) => {
                let kind = *kind;
                add_instrument(
                    job,
                    Instrument {
                        kind,
                        ..Instrument::default()
                    },
                )?;
            }
            Self::TakeInstrument(instrument) => {
                // The same one twice says nothing more.
                if shop.instruments.contains(instrument) {
                    return None;
                }
                add_instrument(job, Instrument::clone(instrument))?;
            }
            Self::RemoveInstrument(index) => remove_instrument(job, *index)?,
            Self::InstrumentKind(index, kind) => {
                shop.instruments.get_mut(usize::from(*index))?.kind = *kind;
            }
            Self::Learn(learned) => shop.machine.learned.clone_from(learned),
            Self::Forget(lesson) => {
                let learned = &mut shop.machine.learned;
                match lesson {
                    Lesson::Takes => learned.takes = None,
                    Lesson::Pace(step) => learned.paces.retain(|it| it.step != *step),
                }
            }
        }
        Some(())
    }
}

/// Whether the job has this planned pass among its pins already, or it cannot be pinned.
pub(crate) fn can_pin(job: &Job, passes: &[Pass], index: usize, units: Units) -> bool {
    let with = With {
        received: None,
        passes,
        units,
    };
    let pin = passes.get(index).and_then(|pass| pin_of(pass, with));
    pin.is_some_and(|pin| !job.setup.pins.contains(&pin))
}

fn add_pin(job: &mut Job, pin: Pin) -> Option<()> {
    let pins = &mut job.setup.pins;
    if Job::MOST_PINS <= pins.len() || pins.contains(&pin) {
        return None;
    }
    pins.push(pin);
    Some(())
}

fn add_instrument(job: &mut Job, instrument: Instrument) -> Option<()> {
    let instruments = &mut job.shop.instruments;
    (instruments.len() < Job::MOST_INSTRUMENTS).then(|| instruments.push(instrument))
}

/// Whether a reading in the record was taken with this instrument of the job: then it stays, or the reading would be
/// worth something else.
pub(crate) fn is_read_with(job: &Job, index: u8) -> bool {
    let mut events = job.record.events.iter();
    events.any(|event| matches!(&event.what, What::Reading(it) if it.instrument == Some(index)))
}

fn remove_instrument(job: &mut Job, index: u8) -> Option<()> {
    let at = usize::from(index);
    if is_read_with(job, index) || job.shop.instruments.len() <= at {
        return None;
    }
    job.shop.instruments.remove(at);
    // Readings name their instrument by its place.
    for event in &mut job.record.events {
        if let What::Reading(reading) = &mut event.what
            && let Some(place) = reading.instrument.filter(|place| index < *place)
        {
            reading.instrument = Some(place - 1);
        }
    }
    Some(())
}

/// A planned pass as a pin, as fine as it can be dialled and measured.
fn pin_of(pass: &Pass, with: With) -> Option<Pin> {
    if pass.kind == PassKind::Polish {
        return None;
    }
    let feed = pass.feed;
    let (feed, decimals) = if with.units.is_inch() {
        (feed.to_inch_per_rev(), 5)
    } else {
        (feed.to_mm_per_rev(), 4)
    };
    let speed = pass.spindle_speed.to_per_min();
    Some(Pin {
        after: exact(pass.diameter_after, with.units)?,
        infeed: exact(pass.infeed, with.units)?,
        speed: plain(speed, 1, Unit::RevolutionPerMinute),
        feed: plain(feed, decimals, with.units.typed_unit(Dimension::Feed)),
    })
}

/// The first planned pass that is not pinned, in round figures and with its speed and feed left to the planner; where
/// nothing is planned, the last cut to the finished diameter.
fn fresh_pin(job: &Job, with: With) -> Option<Pin> {
    let round = |pass: &Pass| {
        Some(Pin {
            after: with.units.enter_near(pass.diameter_after)?,
            infeed: with.units.enter_near(pass.infeed)?,
            speed: None,
            feed: None,
        })
    };
    let turned = with.passes.iter().filter(|it| it.kind != PassKind::Polish);
    let planned = turned
        .filter_map(round)
        .find(|pin| job.setup.pins.iter().all(|it| it.after != pin.after));
    planned.or_else(|| {
        Some(Pin {
            after: job.wanted.diameter.clone(),
            infeed: with.units.enter_near(job.shop.last_cut.value() / 2.0)?,
            speed: None,
            feed: None,
        })
    })
}
