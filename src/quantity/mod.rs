//! Quantities with their units in the type, how a person types them, and how they are shown.
//!
//! Lengths are kept in millimetres, everything else in the unit that a machine shop reads off a dial.
//! Nothing outside the core does arithmetic on a bare number that has a unit.

mod between;
pub(crate) mod digits;
mod enter;
mod entry;
mod mark;
mod read;
mod read_error;
#[cfg(test)]
mod read_tests;
pub mod show;
#[cfg(test)]
mod show_tests;
mod stopwatch;
mod unit;
mod units;

pub use entry::{Entered, Entry, Number, Term, Typed};
pub use mark::with_mark;
pub use read::read;
pub use read_error::{MOST_CHARACTERS, ReadError, ReadErrorKind};
pub use show::{Grade, Units};
pub use stopwatch::stopwatch;
pub use unit::{Dimension, Unit};
pub use units::{
    Angle, Area, Count, Density, Expansion, Feed, Force, Hardness, Length, Mass, Money, Power,
    RemovalRate, RotationalSpeed, SecondMoment, Share, Speed, Stiffness, Stress, TaperRatio,
    Temperature, TemperatureStep, Time, Torque, Volume,
};
