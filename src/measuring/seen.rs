//! Readings as the reckoning takes them: at 20 °C, in numbers, with what makes them uncertain.

use super::budget::Shared;
use super::corrected::corrected;
use crate::job::{Job, Measured, Reading, WorkPlace};

/// One reading of a diameter. Millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Seen {
    /// At 20 °C.
    pub(super) diameter: f64,
    /// Standard uncertainty that is this reading's own: another reading would be off otherwise.
    pub(super) own: f64,
    /// Standard uncertainty that all readings of this instrument and this work share.
    pub(super) common: f64,
    /// The part of that which comes of the temperature of work and room.
    pub(super) warmth: f64,
    /// How much warmer than 20 °C the work is, in kelvins.
    pub(super) above: f64,
    /// How much warmer than the room it is, in kelvins.
    pub(super) warmer: f64,
    /// Where.
    pub(super) place: Place,
    /// The instrument, by its place in the shop's list.
    pub(super) instrument: Option<u8>,
}

/// A place along the shank, so that two readings can be told to be of one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Place {
    NearShoulder,
    Middle,
    FreeEnd,
    /// Millimetres from the shoulder.
    At(f64),
}

/// Two entered places no farther apart than this are one, in millimetres.
const SAME: f64 = 0.1;

impl Place {
    /// Whether two places are one.
    pub(super) fn is(self, other: Self) -> bool {
        match (self, other) {
            (Self::At(one), Self::At(other)) => (one - other).abs() <= SAME,
            _ => self == other,
        }
    }
}

/// A diameter as it was seen; `None` where the reading is of something else, or cannot be reckoned with.
pub(super) fn seen(job: &Job, reading: &Reading) -> Option<Seen> {
    let Measured::Diameter(place) = &reading.of else {
        return None;
    };
    let place = match place {
        WorkPlace::NearShoulder => Place::NearShoulder,
        WorkPlace::Middle => Place::Middle,
        WorkPlace::FreeEnd => Place::FreeEnd,
        WorkPlace::At(length) => Place::At(length.value().to_mm()),
    };
    let corrected = corrected(job, reading)?;
    Some(Seen {
        diameter: corrected.value.to_mm(),
        own: corrected.own.to_mm(),
        common: corrected.common.to_mm(),
        warmth: corrected.of(|shared| shared == Shared::Work).to_mm(),
        above: corrected.work_above.to_kelvins(),
        warmer: (corrected.work_above - corrected.room_above).to_kelvins(),
        place,
        instrument: corrected.instrument,
    })
}
