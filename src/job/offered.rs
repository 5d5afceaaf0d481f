//! What the part's owner was shown, and what he said.

use core::fmt;

use serde::{Deserialize, Serialize};

/// Tells one offer from every other: a checksum over all that the owner was shown.
///
/// Two offers that say the same have the same mark. It guards against mistakes, not against forgers: whoever wants to can
/// make up an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct OfferMark(pub(crate) u64);

impl fmt::Display for OfferMark {
    /// Sixteen hexadecimal digits.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:016x}", self.0)
    }
}

impl Serialize for OfferMark {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for OfferMark {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let digits = text.len() == 16 && text.bytes().all(|digit| digit.is_ascii_hexdigit());
        let mark = digits
            .then(|| u64::from_str_radix(&text, 16).ok())
            .flatten();
        mark.map(Self)
            .ok_or_else(|| serde::de::Error::custom("a mark has sixteen hexadecimal digits"))
    }
}

/// What of the shop's own the owner is shown beside the work itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Shows {
    /// What an hour costs, and the other rates.
    pub rates: bool,
    /// Lathe, tool, instruments and how the part is held.
    pub machine: bool,
}

/// The owner was given something to agree to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Offered {
    /// Which offer.
    pub mark: OfferMark,
    /// What of the shop's own it showed.
    pub shows: Shows,
    /// The text of its link behind `#`, at most [`Offered::MOST_LINK_CHARACTERS`] characters; empty where the job travels
    /// in a link itself, which would double its length.
    #[serde(default)]
    pub link: String,
}

impl Offered {
    /// Longest text of its link.
    pub const MOST_LINK_CHARACTERS: usize = 44_000;
}

/// What the owner said.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answered {
    /// To which offer.
    pub to: OfferMark,
    /// What.
    pub says: OwnerSays,
    /// In his own words; at most [`Record::MOST_NOTE_CHARACTERS`](super::Record) characters, and may be empty.
    #[serde(default)]
    pub words: String,
    /// Who, as he names himself; at most [`Job::MOST_NAME_CHARACTERS`](super::Job) characters, and may be empty.
    #[serde(default)]
    pub by: String,
}

/// What an owner can say to an offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum OwnerSays {
    /// Do it so.
    Agree,
    /// Do it, with the change that his words name.
    AgreeWithChange,
    /// Do not do it.
    Decline,
    /// He asks something first.
    Ask,
}

impl OwnerSays {
    /// Every one, in the order that links count them by: append only.
    pub const ALL: [Self; 4] = [Self::Agree, Self::AgreeWithChange, Self::Decline, Self::Ask];
}
