//! What the work is measured with.

use serde::{Deserialize, Serialize};

use crate::quantity::{Entered, Length};

/// A measuring instrument.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Instrument {
    /// What the person calls it; at most [`Job::MOST_NAME_CHARACTERS`](super::Job) characters.
    pub name: String,
    /// What it is.
    pub kind: InstrumentKind,
    /// One division of its scale or step of its display; `None` is the usual of its kind.
    pub graduation: Option<Entered<Length>>,
    /// Its maximum permissible error, either way; `None` is that of the standard for its kind and the size measured.
    pub permissible_error: Option<Entered<Length>>,
    /// The known size that it is set on or compared with, near the one measured: then only the difference is its own.
    pub reference: Option<Entered<Length>>,
    /// Standard deviation of repeated readings at one place; `None` is the usual of its kind.
    pub repeat: Option<Entered<Length>>,
}

/// What an instrument is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum InstrumentKind {
    /// An outside micrometer.
    #[default]
    Micrometer,
    /// A calliper.
    Calliper,
    /// A dial gauge or lever indicator.
    Indicator,
    /// A comparator set on gauge blocks or a master.
    Gauge,
}

impl InstrumentKind {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 4] = [
        Self::Micrometer,
        Self::Calliper,
        Self::Indicator,
        Self::Gauge,
    ];
}
