//! How the part is set up in the lathe: what holds it, what the indicator showed, which passes are pinned by hand.

use serde::{Deserialize, Serialize};

use super::choice::{JawFace, Support};
use crate::quantity::{Entered, Feed, Force, Length, RotationalSpeed, Temperature};

/// How the part is set up.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Setup {
    /// What holds the part; `None` is a chuck on the head, and a live centre where the end gets a countersink.
    pub support: Option<Support>,
    /// What the jaws are like; `None` is smooth.
    pub jaws: Option<JawFace>,
    /// How much of the head is held; `None` is the usual.
    pub grip_length: Option<Entered<Length>>,
    /// Force of all jaws together on the part; `None` is the usual of a hand-tightened chuck.
    pub grip_force: Option<Entered<Force>>,
    /// Temperature of the room, and of work and instruments where nothing else is said; `None` is 20 °C.
    pub room_temperature: Option<Entered<Temperature>>,
    /// Force of the live centre along the axis; `None` is the usual.
    pub tail_force: Option<Entered<Force>>,
    /// What the indicator showed near the chuck.
    pub near: Plane,
    /// What it showed further out.
    pub far: Plane,
    /// Passes that are pinned by hand; at most [`Job::MOST_PINS`](super::Job).
    pub pins: Vec<Pin>,
}

/// Readings of an indicator round the part at one place, at four quarters.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Plane {
    /// From the shoulder, outward; negative on the head.
    pub place: Option<Entered<Length>>,
    /// With jaw 1, a quarter turn on, half a turn on, three quarters on under the indicator.
    pub readings: [Option<Entered<Length>>; 4],
}

/// One pass that is pinned by hand.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pin {
    /// The diameter after it.
    pub after: Entered<Length>,
    /// What is dialled in, on radius.
    pub infeed: Entered<Length>,
    /// Its spindle speed; `None` is planned.
    #[serde(default)]
    pub speed: Option<Entered<RotationalSpeed>>,
    /// Its feed; `None` is planned.
    #[serde(default)]
    pub feed: Option<Entered<Feed>>,
}
