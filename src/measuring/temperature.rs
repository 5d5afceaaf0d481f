//! How warm work, room and instrument are, and what of it is known.
//!
//! Sizes hold at 20 °C (ISO 1). The instrument is as warm as the room; so is the work where nothing else is said.

use serde::Serialize;

use crate::job::{Job, Reading};
use crate::quantity::{Entered, Expansion, Temperature, TemperatureStep};
use crate::tables::Spread;

/// The temperature at which sizes hold, ISO 1.
pub const REFERENCE_TEMPERATURE: Temperature = Temperature::celsius(20.0);

/// Coldest and warmest that work or room are believed to be.
pub const BELIEVED_TEMPERATURES: [Temperature; 2] =
    [Temperature::celsius(-20.0), Temperature::celsius(200.0)];

/// How far a temperature of the work may be off, either way, whether measured or taken to be that of the room.
///
/// # Source
/// Common practice, no source.
pub const WORK_LIMIT: TemperatureStep = TemperatureStep::kelvins(2.0);

/// How far the temperature of the room, and of the instrument in it, may be off where it was entered.
///
/// # Source
/// Common practice, no source: the instrument is held in a warm hand.
pub const ROOM_LIMIT: TemperatureStep = TemperatureStep::kelvins(1.0);

/// The same where nobody said how warm the room is.
///
/// # Source
/// Common practice, no source.
pub const UNSAID_ROOM_LIMIT: TemperatureStep = TemperatureStep::kelvins(3.0);

/// Expansion of instruments and of what they are set on: steel, 11.5 ± 1 micrometres per metre and kelvin, the value
/// that ISO 3650 asks of gauge blocks.
///
/// # Source
/// ISO 3650, from memory.
pub const INSTRUMENT_EXPANSION: Spread<Expansion> = Spread {
    low: Expansion::um_per_m_kelvin(10.5),
    typical: Expansion::um_per_m_kelvin(11.5),
    high: Expansion::um_per_m_kelvin(12.5),
};

/// How warm everything is while a reading is taken.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Warmth {
    /// Of the work; `None` is that of the room.
    pub work: Option<Temperature>,
    /// How far the work's may be off, either way.
    pub work_limit: TemperatureStep,
    /// Of the room, and the instrument.
    pub room: Temperature,
    /// How far that may be off, either way.
    pub room_limit: TemperatureStep,
}

impl Warmth {
    /// How warm it was when a reading of a job was taken; `None` where a temperature cannot be believed.
    ///
    /// # Example
    /// ```
    /// use skimwright::job::{Job, Measured, Reading};
    /// use skimwright::measuring::{REFERENCE_TEMPERATURE, Warmth};
    /// use skimwright::quantity::{Entered, Unit};
    /// let mut reading = Reading {
    ///     of: Measured::Length,
    ///     value: Entered::read("50", Unit::Millimetre).unwrap(),
    ///     instrument: None,
    ///     temperature: None,
    ///     confirmed: false,
    /// };
    /// let warmth = Warmth::of(&Job::default(), &reading).unwrap();
    /// assert_eq!((warmth.room, warmth.work), (REFERENCE_TEMPERATURE, None));
    /// reading.temperature = Some(Entered::read("400", Unit::Celsius).unwrap());
    /// assert_eq!(Warmth::of(&Job::default(), &reading), None);
    /// ```
    pub fn of(job: &Job, reading: &Reading) -> Option<Self> {
        let room = job.setup.room_temperature.as_ref().map(Entered::value);
        let work = reading.temperature.as_ref().map(Entered::value);
        let believed = [room, work].into_iter().flatten().all(is_believed);
        believed.then_some(Self {
            work,
            work_limit: WORK_LIMIT,
            room: room.unwrap_or(REFERENCE_TEMPERATURE),
            room_limit: match room {
                Some(_) => ROOM_LIMIT,
                None => UNSAID_ROOM_LIMIT,
            },
        })
    }

    /// How much warmer than 20 °C the work is.
    pub fn work_above(self) -> TemperatureStep {
        above_reference(self.work.unwrap_or(self.room))
    }

    /// How much warmer than 20 °C room and instrument are.
    pub fn room_above(self) -> TemperatureStep {
        above_reference(self.room)
    }
}

/// Whether work or room can be as warm as this.
fn is_believed(temperature: Temperature) -> bool {
    let [coldest, warmest] = BELIEVED_TEMPERATURES;
    coldest <= temperature && temperature <= warmest
}

fn above_reference(temperature: Temperature) -> TemperatureStep {
    TemperatureStep::kelvins((temperature - REFERENCE_TEMPERATURE).to_celsius())
}
