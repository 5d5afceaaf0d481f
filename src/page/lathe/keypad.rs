//! The keypad at the lathe: what was typed, where it belongs, and what it comes to.

use skimwright::job::{
    CutMade, CutMadeKind, Field, Instrument, Job, Measured, Reading, What, WorkPlace,
};
use skimwright::measuring::{Keyed, expected, keyed, next_place, shown_decimals};
use skimwright::plan::{Plan, is_in_bounds};
use skimwright::quantity::{Dimension, Entered, Length, ReadError, Temperature, Unit, Units};

/// What is keyed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PadFor {
    /// The diameter at a place.
    Diameter(PadPlace),
    /// Shoulder to end.
    Length,
    Runout,
    Roughness,
    /// What was dialled in for a cut of this kind.
    Infeed(CutMadeKind),
}

impl PadFor {
    /// What can be measured, the diameter at its usual place.
    pub(crate) const MEASURED: [Self; 4] = [
        Self::Diameter(PadPlace::FreeEnd),
        Self::Length,
        Self::Runout,
        Self::Roughness,
    ];

    /// Whether it is the same thing, wherever along the work.
    pub(crate) fn is_like(self, other: Self) -> bool {
        core::mem::discriminant(&self) == core::mem::discriminant(&other)
    }
}

/// A place along the shank.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PadPlace {
    NearShoulder,
    Middle,
    FreeEnd,
    /// So far from the shoulder as is typed.
    At,
}

impl PadPlace {
    /// In the order in which they stand on the work, those by name first.
    pub(crate) const ALL: [Self; 4] = [Self::NearShoulder, Self::Middle, Self::FreeEnd, Self::At];
}

/// What the keys type into.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PadSlot {
    Value,
    Position,
    Temperature,
}

/// A key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PadKey {
    Sign(char),
    Erase,
}

/// What is done at the keypad.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum PadAction {
    /// A key was pressed.
    Key(PadKey),
    /// The whole text of a slot, typed on real keys.
    Text(PadSlot, String),
    Slot(PadSlot),
    For(PadFor),
    Instrument(Option<u8>),
}

/// What is wrong with what was typed.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum PadWrong {
    Unread(ReadError),
    /// A number that cannot be measured or dialled.
    OutOfBounds,
}

/// The keypad while it is open.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Keypad {
    pub(crate) of: PadFor,
    pub(crate) value: String,
    pub(crate) position: String,
    pub(crate) temperature: String,
    pub(crate) instrument: Option<u8>,
    pub(crate) slot: PadSlot,
    /// The unit that the dial is marked in.
    dial: Unit,
    /// Whether it was tried to keep it, so that what is missing is said.
    pub(crate) tried: bool,
}

/// More than any number has.
const MOST_CHARACTERS: usize = 16;

impl Keypad {
    /// For one thing, with the instrument that was used last.
    pub(crate) fn open(of: PadFor, job: &Job, dial: Unit) -> Self {
        let mut last = job.record.standing().rev().filter_map(|(_, event)| {
            let What::Reading(reading) = &event.what else {
                return None;
            };
            Some(reading.instrument)
        });
        Self {
            of,
            value: String::new(),
            position: String::new(),
            temperature: String::new(),
            instrument: last.next().flatten(),
            slot: PadSlot::Value,
            dial,
            tried: false,
        }
    }

    /// For the diameter where it is to be measured next.
    pub(crate) fn for_diameter(job: &Job, units: Units, dial: Unit) -> Self {
        let mut position = String::new();
        let place = match next_place(&job.record) {
            WorkPlace::NearShoulder => PadPlace::NearShoulder,
            WorkPlace::Middle => PadPlace::Middle,
            WorkPlace::FreeEnd => PadPlace::FreeEnd,
            WorkPlace::At(at) => {
                let unit = units.typed_unit(Dimension::Length);
                position = units.field_text(at.entry(), unit);
                PadPlace::At
            }
        };
        Self {
            position,
            ..Self::open(PadFor::Diameter(place), job, dial)
        }
    }

    pub(crate) fn after(mut self, action: PadAction) -> Self {
        match action {
            PadAction::Key(key) => {
                let text = self.text_mut(self.slot);
                match key {
                    PadKey::Sign(sign) if text.chars().count() < MOST_CHARACTERS => text.push(sign),
                    PadKey::Sign(_) => {}
                    PadKey::Erase => {
                        text.pop();
                    }
                }
                self.tried = false;
            }
            PadAction::Text(slot, text) => {
                *self.text_mut(slot) = text.chars().take(MOST_CHARACTERS).collect();
                self.tried = false;
            }
            PadAction::Slot(slot) => self.slot = slot,
            PadAction::For(of) => {
                self.of = of;
                self.slot = match of {
                    PadFor::Diameter(PadPlace::At) => PadSlot::Position,
                    _ => PadSlot::Value,
                };
                self.tried = false;
            }
            PadAction::Instrument(instrument) => self.instrument = instrument,
        }
        self
    }

    pub(crate) fn text(&self, slot: PadSlot) -> &str {
        match slot {
            PadSlot::Value => &self.value,
            PadSlot::Position => &self.position,
            PadSlot::Temperature => &self.temperature,
        }
    }

    fn text_mut(&mut self, slot: PadSlot) -> &mut String {
        match slot {
            PadSlot::Value => &mut self.value,
            PadSlot::Position => &mut self.position,
            PadSlot::Temperature => &mut self.temperature,
        }
    }

    /// The unit of a bare number.
    pub(crate) fn unit(&self, slot: PadSlot, units: Units) -> Unit {
        match slot {
            PadSlot::Value if self.of == PadFor::Roughness => Unit::Micrometre,
            PadSlot::Value if matches!(self.of, PadFor::Infeed(_)) => self.dial,
            PadSlot::Value | PadSlot::Position => units.typed_unit(Dimension::Length),
            PadSlot::Temperature => units.typed_unit(Dimension::Temperature),
        }
    }

    fn instrument<'a>(&self, job: &'a Job) -> Option<&'a Instrument> {
        let at = usize::from(self.instrument?);
        job.shop.instruments.get(at)
    }

    /// The number whose front stays where only last digits are typed.
    pub(crate) fn before(&self, job: &Job, plan: &Plan) -> Option<Length> {
        match self.of {
            PadFor::Diameter(_) => expected(job, plan),
            _ => None,
        }
    }

    /// How many decimals belong to the value.
    pub(crate) fn decimals(&self, job: &Job, units: Units) -> u8 {
        shown_decimals(self.instrument(job), self.unit(PadSlot::Value, units))
    }

    /// What the value comes to.
    ///
    /// # Errors
    /// What is wrong with it.
    pub(crate) fn understood(
        &self,
        job: &Job,
        plan: &Plan,
        units: Units,
    ) -> Result<Keyed, PadWrong> {
        let unit = self.unit(PadSlot::Value, units);
        let before = self.before(job, plan);
        let keyed = keyed(&self.value, before, unit, self.decimals(job, units))
            .map_err(PadWrong::Unread)?;
        let value = keyed.value.value();
        let sound = match self.of {
            PadFor::Diameter(_) => is_in_bounds(Field::WantedDiameter, keyed.value.entry()),
            PadFor::Length => is_in_bounds(Field::WantedLength, keyed.value.entry()),
            PadFor::Infeed(_) => Length::ZERO < value && value <= Length::mm(100.0),
            PadFor::Runout | PadFor::Roughness => {
                Length::ZERO <= value && value <= Length::mm(100.0)
            }
        };
        sound.then_some(keyed).ok_or(PadWrong::OutOfBounds)
    }

    /// What a position comes to.
    pub(crate) fn position(&self, units: Units) -> Result<Entered<Length>, PadWrong> {
        let unit = self.unit(PadSlot::Position, units);
        let position = Entered::read(&self.position, unit).map_err(PadWrong::Unread)?;
        let sound = is_in_bounds(Field::WantedLength, position.entry());
        sound.then_some(position).ok_or(PadWrong::OutOfBounds)
    }

    /// What the temperature comes to; nothing typed is that of the room.
    pub(crate) fn temperature(
        &self,
        units: Units,
    ) -> Result<Option<Entered<Temperature>>, PadWrong> {
        if self.temperature.trim().is_empty() {
            return Ok(None);
        }
        let unit = self.unit(PadSlot::Temperature, units);
        let read = Entered::<Temperature>::read(&self.temperature, unit);
        let temperature = read.map_err(PadWrong::Unread)?;
        let bounds = COLDEST <= temperature.value() && temperature.value() <= HOTTEST;
        bounds
            .then_some(Some(temperature))
            .ok_or(PadWrong::OutOfBounds)
    }

    /// The event that it comes to.
    ///
    /// # Errors
    /// The first slot that is wrong, and what is wrong with it.
    pub(crate) fn what(
        &self,
        job: &Job,
        plan: &Plan,
        units: Units,
    ) -> Result<What, (PadSlot, PadWrong)> {
        let keyed = self.understood(job, plan, units);
        let value = keyed.map_err(|wrong| (PadSlot::Value, wrong))?.value;
        let of = match self.of {
            PadFor::Infeed(kind) => {
                return Ok(What::Cut(CutMade {
                    kind,
                    dialled: value,
                    reads: job.shop.machine.dial_reads,
                }));
            }
            PadFor::Diameter(place) => Measured::Diameter(match place {
                PadPlace::NearShoulder => WorkPlace::NearShoulder,
                PadPlace::Middle => WorkPlace::Middle,
                PadPlace::FreeEnd => WorkPlace::FreeEnd,
                PadPlace::At => WorkPlace::At(
                    self.position(units)
                        .map_err(|wrong| (PadSlot::Position, wrong))?,
                ),
            }),
            PadFor::Length => Measured::Length,
            PadFor::Runout => Measured::Runout,
            PadFor::Roughness => Measured::Roughness,
        };
        let temperature = self
            .temperature(units)
            .map_err(|wrong| (PadSlot::Temperature, wrong))?;
        Ok(What::Reading(Reading {
            of,
            value,
            instrument: self.instrument.filter(|_| self.instrument(job).is_some()),
            temperature,
            confirmed: false,
        }))
    }
}

/// Work that can be measured by hand: a shop in frost, and what burns the fingers.
const COLDEST: Temperature = Temperature::celsius(-20.0);
const HOTTEST: Temperature = Temperature::celsius(150.0);
