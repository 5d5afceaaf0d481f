//! The speeds or feeds of a machine as one typed text: `70 115 200 330; 500 / 800`.
//!
//! Numbers are parted by spaces, new lines, semicolons, slashes, or a comma with a space behind it: a comma inside a
//! number is its decimal mark. They come in any order; the list is kept in order and without repeats. A slash before
//! letters belongs to a unit, as in `rev/min`.

use core::fmt;

use super::{Field, Gears, Job, MachineField};
use crate::order;
use crate::plan::is_in_bounds;
use crate::quantity::{Entered, Entry, ReadError, ReadErrorKind, Typed, Unit, read};

/// The longest text that is read: every number of the longest list at its longest.
pub const MOST_LIST_CHARACTERS: usize = 2600;

/// Why a text is no list of speeds or feeds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum GearsError {
    /// This piece of it is no number.
    Unread {
        /// As it was typed.
        piece: String,
        /// What is wrong with it.
        error: ReadError,
    },
    /// This number is outside what a machine can have.
    OutOfBounds {
        /// As it was typed.
        piece: String,
    },
    /// There are more than [`Job::MOST_GEARS`] of them, or the text is longer than [`MOST_LIST_CHARACTERS`].
    TooMany,
}

impl fmt::Display for GearsError {
    /// A plain sentence for scripts; the page has its own words.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unread { piece, error } => write!(f, "'{piece}': {error}"),
            Self::OutOfBounds { piece } => {
                write!(f, "'{piece}' is more or less than any machine has")
            }
            Self::TooMany => write!(f, "more than {} numbers", Job::MOST_GEARS),
        }
    }
}

impl core::error::Error for GearsError {}

impl Field {
    /// The field whose range holds for each number of this list; `None` for fields that are no lists of numbers.
    pub const fn of_each(self) -> Option<Self> {
        match self {
            Self::Machine(MachineField::Speeds) => Some(Self::Machine(MachineField::SlowestSpeed)),
            Self::Machine(MachineField::Feeds) => Some(Self::Machine(MachineField::FinestFeed)),
            _ => None,
        }
    }
}

/// Reads a list for a field of speeds or feeds, the lowest first; a bare number takes `unit`. A unit behind the last
/// number alone counts for all. An empty text is an empty list, and so is any text for another field.
///
/// # Errors
/// [`GearsError`], with the first piece that is wrong.
///
/// # Example
/// ```
/// use skimwright::{job::{Field, MachineField, read_gears}, quantity::Unit};
/// let field = Field::Machine(MachineField::Speeds);
/// let list = read_gears(field, "800 70; 115 / 70", Unit::RevolutionPerMinute)?;
/// let texts: Vec<String> = list.iter().map(|it| it.to_string()).collect();
/// assert_eq!(texts, ["70 rpm", "115 rpm", "800 rpm"]);
/// # Ok::<(), skimwright::job::GearsError>(())
/// ```
pub fn read_gears(field: Field, text: &str, unit: Unit) -> Result<Vec<Entry>, GearsError> {
    let Some(each) = field.of_each() else {
        return Ok(Vec::new());
    };
    if MOST_LIST_CHARACTERS < text.len() {
        return Err(GearsError::TooMany);
    }
    let pieces = pieces(text);
    let units: Vec<Option<Unit>> = pieces.iter().map(|it| unit_of(it, unit)).collect();
    // As in a sum: a unit behind the last number alone is that of all.
    let bare = match units.split_last() {
        Some((Some(last), before)) if before.iter().all(Option::is_none) => *last,
        _ => unit,
    };
    let is_clear = units.iter().flatten().all(|named| *named == bare);
    let mut list: Vec<Entry> = Vec::new();
    for (piece, named) in pieces.into_iter().zip(units) {
        let unclear = ReadError {
            kind: ReadErrorKind::UnitUnclear,
            at: 0,
        };
        let entry = match read(&piece, unit.dimension(), Some(bare)) {
            Ok(entry) if is_clear || named.is_some() => entry,
            found => {
                let error = found.err().unwrap_or(unclear);
                return Err(GearsError::Unread { piece, error });
            }
        };
        if !is_in_bounds(each, &entry) {
            return Err(GearsError::OutOfBounds { piece });
        }
        if !list.iter().any(|other| is_same(other, &entry)) {
            list.push(entry);
        }
    }
    if Job::MOST_GEARS < list.len() {
        return Err(GearsError::TooMany);
    }
    order::by_number(&mut list, Entry::base_value);
    Ok(list)
}

/// Whether two numbers are one gear: what conversion between inch and millimetre rounds is no difference.
fn is_same(one: &Entry, other: &Entry) -> bool {
    const ROUNDING: f64 = 1e-9;
    let (one, other) = (one.base_value(), other.base_value());
    (one - other).abs() <= ROUNDING * one.abs()
}

/// The unit that a piece names; `None` when it is bare, or no number.
fn unit_of(piece: &str, like: Unit) -> Option<Unit> {
    let entry = read(piece, like.dimension(), None);
    entry.ok().map(|entry| entry.unit())
}

/// The numbers of a list, each with the unit behind it.
fn pieces(text: &str) -> Vec<String> {
    let mut pieces: Vec<String> = Vec::new();
    let mut apart = true;
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        let next = letters.peek().copied();
        let parts = match letter {
            ' ' | '\t' | '\n' | '\r' | ';' => true,
            ',' => next.is_none_or(char::is_whitespace),
            '/' => next.is_none_or(|next| !next.is_ascii_alphabetic()),
            _ => false,
        };
        if parts {
            apart = true;
            continue;
        }
        // What begins like a number begins one; anything else is a unit that belongs to the number before it.
        let is_number =
            letter.is_ascii_digit() || matches!(letter, '.' | ',' | '+' | '-' | '\u{2212}');
        match pieces.last_mut() {
            Some(piece) if !apart => piece.push(letter),
            Some(piece) if !is_number && is_bare(piece) => {
                piece.push(' ');
                piece.push(letter);
            }
            _ => pieces.push(letter.into()),
        }
        apart = false;
    }
    pieces
}

/// Whether a piece is a number still without a unit.
fn is_bare(piece: &str) -> bool {
    piece.ends_with(|last: char| last.is_ascii_digit() || matches!(last, '.' | ','))
}

/// The numbers of a list of any quantity.
trait List {
    fn entries(&self) -> Option<Vec<&Entry>>;
    fn put(&mut self, entries: Vec<Entry>) -> bool;
}

impl<Q: Typed> List for Gears<Q> {
    fn entries(&self) -> Option<Vec<&Entry>> {
        match self {
            Self::Listed(list) => Some(list.iter().map(Entered::entry).collect()),
            Self::Stepless { .. } => None,
        }
    }

    fn put(&mut self, entries: Vec<Entry>) -> bool {
        let list: Option<Vec<Entered<Q>>> = entries.into_iter().map(Entered::new).collect();
        match (self, list) {
            (Self::Listed(place), Some(list)) => {
                *place = list;
                true
            }
            _ => false,
        }
    }
}

impl Job {
    /// The speeds or feeds of a list; `None` where the machine has every one, and for fields that are no lists.
    pub fn gears(&self, field: Field) -> Option<Vec<&Entry>> {
        let list: &dyn List = match field {
            Field::Machine(MachineField::Speeds) => &self.shop.machine.speeds,
            Field::Machine(MachineField::Feeds) => &self.shop.machine.feeds,
            _ => return None,
        };
        list.entries()
    }

    /// Puts other speeds or feeds into a list. False, and nothing changed, where there is no list or they measure
    /// something else.
    pub fn set_gears(&mut self, field: Field, entries: Vec<Entry>) -> bool {
        let list: &mut dyn List = match field {
            Field::Machine(MachineField::Speeds) => &mut self.shop.machine.speeds,
            Field::Machine(MachineField::Feeds) => &mut self.shop.machine.feeds,
            _ => return false,
        };
        list.put(entries)
    }
}

#[cfg(test)]
mod tests {
    #![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

    use super::*;

    const SPEEDS: Field = Field::Machine(MachineField::Speeds);
    const FEEDS: Field = Field::Machine(MachineField::Feeds);

    fn texts(field: Field, text: &str, unit: Unit) -> Vec<String> {
        let list = read_gears(field, text, unit).unwrap();
        list.iter().map(ToString::to_string).collect()
    }

    fn speeds(text: &str) -> Vec<String> {
        texts(SPEEDS, text, Unit::RevolutionPerMinute)
    }

    fn feeds(text: &str) -> Vec<String> {
        texts(FEEDS, text, Unit::MillimetrePerRevolution)
    }

    #[test]
    fn numbers_are_parted_in_many_ways() {
        let five = ["70 rpm", "115 rpm", "200 rpm", "330 rpm", "500 rpm"];
        for text in [
            "70 115 200 330 500",
            "70;115;200;330;500",
            "70 115 200 330; 500",
            "70, 115, 200, 330, 500",
            "70/115/200 / 330/ 500",
            "  70\n115\r\n200\t330 ;; 500 /",
            "500 330 200 115 70 70, 500",
            "70 rpm 115rpm 200 rev/min 330/min 500 /min",
            "70 115 200 330 500 rpm",
            "70,0 115 200.00 330 500,",
        ] {
            let found: Vec<f64> = read_gears(SPEEDS, text, Unit::RevolutionPerMinute)
                .unwrap()
                .iter()
                .map(Entry::base_value)
                .collect();
            assert_eq!(found, [70.0, 115.0, 200.0, 330.0, 500.0], "{text:?}");
        }
        assert_eq!(speeds("70 115 200 330; 500"), five);
        assert_eq!(speeds(" ;, / \n"), Vec::<String>::new());
        assert_eq!(speeds(""), Vec::<String>::new());
    }

    #[test]
    fn a_comma_inside_a_number_is_its_mark() {
        assert_eq!(
            feeds("0,1 0,05, 0,2"),
            ["0.05 mm/rev", "0.1 mm/rev", "0.2 mm/rev"]
        );
    }

    #[test]
    fn each_number_may_have_its_unit() {
        assert_eq!(
            feeds("0.1 mm/rev 0.002 in/rev"),
            ["0.002 in/rev", "0.1 mm/rev"]
        );
        // Behind the last alone it counts for all.
        assert_eq!(
            feeds("0.002 0.004 in/rev"),
            ["0.002 in/rev", "0.004 in/rev"]
        );
        // The same feed in both units is one.
        assert_eq!(feeds("0.0254 mm/rev 0.001 in/rev"), ["0.0254 mm/rev"]);
        let unclear = read_gears(FEEDS, "0.002 in/rev 0.1", Unit::MillimetrePerRevolution);
        let Err(GearsError::Unread { piece, error }) = unclear else {
            panic!("{unclear:?}");
        };
        assert_eq!(
            (piece.as_str(), error.kind),
            ("0.1", ReadErrorKind::UnitUnclear)
        );
    }

    #[test]
    fn what_is_wrong_is_named() {
        let bad = |text: &str| read_gears(SPEEDS, text, Unit::RevolutionPerMinute).unwrap_err();
        for (text, wrong) in [
            ("70 1l5 200", "1l5"),
            ("70,115,200", "70,115,200"),
            ("70 fast", "70 fast"),
            ("fast 70", "fast"),
            ("70 mm 80", "70 mm"),
            ("70 - 80", "-"),
            ("70 rpm rpm", "rpm"),
        ] {
            let GearsError::Unread { piece, .. } = bad(text) else {
                panic!("{text}: {:?}", bad(text));
            };
            assert_eq!(piece, wrong, "{text}");
        }
        for (text, wrong) in [("70 0 80", "0"), ("70-115", "70-115"), ("5 99999", "99999")] {
            let piece = wrong.to_owned();
            assert_eq!(bad(text), GearsError::OutOfBounds { piece }, "{text}");
        }
    }

    #[test]
    fn a_list_has_its_bounds() {
        let many = |count: usize| {
            let list: Vec<String> = (1..=count).map(|it| it.to_string()).collect();
            read_gears(SPEEDS, &list.join(" "), Unit::RevolutionPerMinute)
        };
        assert_eq!(
            many(Job::MOST_GEARS).map(|list| list.len()),
            Ok(Job::MOST_GEARS)
        );
        assert_eq!(many(Job::MOST_GEARS + 1), Err(GearsError::TooMany));
        // Repeats are none of them.
        let repeats = "70 ".repeat(300);
        assert_eq!(speeds(&repeats), ["70 rpm"]);
        let novel = "9 ".repeat(MOST_LIST_CHARACTERS);
        let read = read_gears(SPEEDS, &novel, Unit::RevolutionPerMinute);
        assert_eq!(read, Err(GearsError::TooMany));
    }

    #[test]
    fn a_list_goes_into_its_own_place_alone() {
        let mut job = Job::default();
        let list = read_gears(SPEEDS, "70 115", Unit::RevolutionPerMinute).unwrap();
        assert!(!job.set_gears(SPEEDS, list.clone()), "stepless");
        job.shop.machine.speeds = Gears::Listed(Vec::new());
        job.shop.machine.feeds = Gears::Listed(Vec::new());
        assert!(!job.set_gears(FEEDS, list.clone()), "speeds are no feeds");
        assert_eq!(job.gears(FEEDS), Some(Vec::new()));
        assert!(job.set_gears(SPEEDS, list.clone()));
        let all: Vec<&Entry> = list.iter().collect();
        assert_eq!(job.gears(SPEEDS), Some(all));
        assert_eq!(job.gears(Field::Kerf), None);
    }
}
