//! The lathes, tools and instruments that a person keeps for other jobs, as a text of its own beside the job in a link.
//!
//! It is made of the same pieces as a link, with a letter of its own in front, a capital so that neither is ever taken
//! for the other:
//!
//! ```text
//! B  base64url( lathes  tools  instruments  CRC-32(letter, all), low byte first )
//! ```
//!
//! All are lists; a lathe is written as in version 3 of a link and then what was learned of it as in version 4, a tool as
//! what its edge is made of and then its figures, an instrument as in version 4. The older `A` has no instruments, and
//! nothing that was learned. As with links, a change of any of them is a new letter, and the older ones must still be
//! read.

use super::bytes::{Read, Reader, Write, Writer, read_fields, write_fields};
use super::{LinkError, MOST_CHARACTERS, unwrap, wrap};
use crate::job::{Edge, Instrument, Machine, Shop};
use crate::tables::ToolKind;

/// The letter of the version that is written.
const VERSION: char = 'B';

/// What a person keeps for other jobs.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kept {
    /// Lathes; at most [`Kept::MOST`].
    pub machines: Vec<Machine>,
    /// Turning tools; at most [`Kept::MOST`].
    pub tools: Vec<KeptTool>,
    /// Measuring instruments; at most [`Kept::MOST`].
    pub instruments: Vec<Instrument>,
}

/// A turning tool, whole.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptTool {
    /// What its edge is made of.
    pub tool: ToolKind,
    /// Its figures.
    pub edge: Edge,
}

impl KeptTool {
    /// The tool of a shop.
    pub fn of(shop: &Shop) -> Self {
        Self {
            tool: shop.tool,
            edge: shop.edge.clone(),
        }
    }
}

impl Kept {
    /// Most lathes, most tools, and most instruments.
    pub const MOST: usize = 20;
}

read_fields! { 3, KeptTool { tool, edge } }
write_fields! { KeptTool { tool, edge } }

/// What is kept, as a text for the browser's storage.
///
/// # Errors
/// [`LinkError::TooLarge`] when there are more than [`Kept::MOST`] of a kind, a name or a list of speeds is longer than
/// a job takes, or the whole text would be longer than [`MOST_CHARACTERS`].
///
/// # Example
/// ```
/// use skimwright::job::Machine;
/// use skimwright::link::{self, Kept};
/// let lathe = Machine { name: "Old faithful".to_owned(), ..Machine::default() };
/// let kept = Kept { machines: vec![lathe], ..Kept::default() };
/// let text = link::encode_kept(&kept)?;
/// assert!(text.starts_with('B'));
/// assert_eq!(link::decode_kept(&text)?, kept);
/// # Ok::<(), link::LinkError>(())
/// ```
pub fn encode_kept(kept: &Kept) -> Result<String, LinkError> {
    let mut to = Writer::default();
    let written = to
        .list_of(&kept.machines, Kept::MOST, |machine, to| {
            machine.write(to)?;
            machine.learned.write(to)
        })
        .and_then(|()| to.list(&kept.tools, Kept::MOST))
        .and_then(|()| to.list(&kept.instruments, Kept::MOST));
    let text = written.map(|()| wrap(VERSION, to.into_bytes()));
    let fits = text.filter(|text| text.len() <= MOST_CHARACTERS);
    fits.ok_or(LinkError::TooLarge)
}

/// What is kept in a text that [`encode_kept`] made.
///
/// # Errors
/// Every way of [`LinkError`]. A text that was changed or cut is always an error and never something else.
pub fn decode_kept(text: &str) -> Result<Kept, LinkError> {
    if MOST_CHARACTERS < text.len() {
        return Err(LinkError::TooLong);
    }
    let mut letters = text.chars();
    match letters.next() {
        None => Err(LinkError::Empty),
        Some('A') => read_first(&unwrap('A', letters.as_str())?).ok_or(LinkError::BeyondLimits),
        Some(VERSION) => read(&unwrap(VERSION, letters.as_str())?).ok_or(LinkError::BeyondLimits),
        Some(version @ 'C'..='Z') => Err(LinkError::Newer { version }),
        Some(_) => Err(LinkError::NotALink),
    }
}

/// The first version, with lathes and tools only.
fn read_first(bytes: &[u8]) -> Option<Kept> {
    let from = &mut Reader::new(bytes);
    let kept = Kept {
        machines: from.list::<3, _>(Kept::MOST),
        tools: from.list::<3, _>(Kept::MOST),
        instruments: Vec::new(),
    };
    from.is_done().then_some(kept)
}

fn read(bytes: &[u8]) -> Option<Kept> {
    let from = &mut Reader::new(bytes);
    let kept = Kept {
        machines: from.list_of(Kept::MOST, |from| {
            let mut machine: Machine = Read::<3>::read(from);
            machine.learned = Read::<4>::read(from);
            machine
        }),
        tools: from.list::<3, _>(Kept::MOST),
        instruments: from.list::<4, _>(Kept::MOST),
    };
    from.is_done().then_some(kept)
}

#[cfg(test)]
mod tests {
    #![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

    use super::*;
    use crate::job::{Gears, InstrumentKind, Job, Learned, LearnedPace, Rigidity, WorkStep};
    use crate::link::{decode, encode};
    use crate::quantity::{Entered, Typed, Unit};

    fn entered<Q: Typed>(text: &str, unit: Unit) -> Entered<Q> {
        Entered::read(text, unit).unwrap()
    }

    fn lathe(name: &str) -> Machine {
        let speeds = ["70", "115", "200"];
        Machine {
            name: name.to_owned(),
            rigidity: Rigidity::Medium,
            speeds: Gears::Listed(
                speeds
                    .map(|speed| entered(speed, Unit::RevolutionPerMinute))
                    .to_vec(),
            ),
            power: Some(entered("1.5", Unit::Kilowatt)),
            graduation: Some(entered("0.001", Unit::Inch)),
            ..Machine::default()
        }
    }

    fn tool(name: &str) -> KeptTool {
        KeptTool {
            tool: ToolKind::BrazedCarbide,
            edge: Edge {
                name: name.to_owned(),
                nose_radius: Some(entered("1/64", Unit::Inch)),
                rake: Some(entered("-6", Unit::Degree)),
                ..Edge::default()
            },
        }
    }

    fn instrument(name: &str) -> Instrument {
        Instrument {
            name: name.to_owned(),
            kind: InstrumentKind::Gauge,
            graduation: Some(entered("1", Unit::Micrometre)),
            reference: Some(entered("16", Unit::Millimetre)),
            ..Instrument::default()
        }
    }

    fn taught(mut machine: Machine) -> Machine {
        machine.learned.paces = vec![LearnedPace {
            step: WorkStep::LastCuts,
            factor: entered("130", Unit::Percent),
            jobs: entered("4", Unit::Piece),
        }];
        machine
    }

    fn kept() -> Kept {
        Kept {
            machines: vec![
                lathe("Drehbank ⌀"),
                taught(lathe("")),
                Machine::default(),
                taught(Machine::default()),
            ],
            tools: vec![tool("Rougher")],
            instruments: vec![instrument("Bügel"), Instrument::default()],
        }
    }

    #[test]
    fn what_is_kept_comes_back_as_it_was() {
        let full = Kept {
            machines: vec![lathe(&"é".repeat(Job::MOST_NAME_CHARACTERS)); Kept::MOST],
            tools: vec![tool(&"ß".repeat(Job::MOST_NAME_CHARACTERS)); Kept::MOST],
            instruments: vec![instrument(&"µ".repeat(Job::MOST_NAME_CHARACTERS)); Kept::MOST],
        };
        for kept in [Kept::default(), kept(), full] {
            let text = encode_kept(&kept).unwrap();
            assert_eq!(decode_kept(&text), Ok(kept));
        }
    }

    /// The very text, so that what is in people's browsers stays readable.
    #[test]
    fn the_form_is_frozen() {
        let kept = Kept {
            machines: vec![taught(lathe("Old faithful"))],
            tools: Vec::new(),
            instruments: vec![instrument("Comparator")],
        };
        assert_eq!(encode_kept(&kept).unwrap(), FROZEN);
        assert_eq!(decode_kept(FROZEN), Ok(kept));
    }

    const FROZEN: &str = "BAQxPbGQgZmFpdGhmdWwBAQMARgBzAMgBAA4OAQ8ODg4OEwEADg4ODg4CBwCCAQAEAAEKQ29tcGFyYXRvclMwAQAQoT3nuw";

    #[test]
    fn what_was_kept_by_the_first_form_still_opens() {
        let kept = Kept {
            machines: vec![lathe("Old faithful")],
            ..Kept::default()
        };
        assert_eq!(decode_kept(FIRST), Ok(kept.clone()));
        assert!(encode_kept(&kept).unwrap().starts_with('B'));
        assert_eq!(kept.machines[0].learned, Learned::default());
    }

    const FIRST: &str = "AAQxPbGQgZmFpdGhmdWwBAQMARgBzAMgBAA4OAQ8ODg4OEwEADg4ODg4AN_rqAQ";

    #[test]
    fn more_than_is_taken_has_no_text() {
        let mut many = kept();
        many.machines = vec![Machine::default(); Kept::MOST + 1];
        assert_eq!(encode_kept(&many), Err(LinkError::TooLarge));
        let mut long = kept();
        long.tools = vec![tool(&"x".repeat(Job::MOST_NAME_CHARACTERS + 1))];
        assert_eq!(encode_kept(&long), Err(LinkError::TooLarge));
        let mut instruments = kept();
        instruments.instruments = vec![Instrument::default(); Kept::MOST + 1];
        assert_eq!(encode_kept(&instruments), Err(LinkError::TooLarge));
    }

    #[test]
    fn a_damaged_text_is_never_something_else() {
        let text = encode_kept(&kept()).unwrap();
        for end in 0..text.len() {
            assert!(decode_kept(&text[..end]).is_err(), "cut to {end}");
        }
        for at in 0..text.len() {
            for letter in ["A", "a", "0", "-", " ", "\u{0}"] {
                let changed = [&text[..at], letter, &text[at + 1..]].concat();
                if changed != text {
                    assert!(decode_kept(&changed).is_err(), "{letter:?} at {at}");
                }
            }
        }
    }

    #[test]
    fn a_whole_text_of_nonsense_is_refused() {
        for body in [
            &[][..],
            &[0],
            &[0, 0],
            &[0, 0, 0, 0],
            &[21, 0, 0],
            &[0, 0, 21],
            &[0, 0, 1, 0, 4],
            &[1],
            &[0xff; 40],
            &[0, 1, 99, 0],
        ] {
            let text = wrap(VERSION, body.to_vec());
            assert_eq!(decode_kept(&text), Err(LinkError::BeyondLimits), "{body:?}");
        }
        assert_eq!(decode_kept(""), Err(LinkError::Empty));
        assert_eq!(decode_kept("hello"), Err(LinkError::NotALink));
        assert_eq!(decode_kept("Cxyz"), Err(LinkError::Newer { version: 'C' }));
        let novel = "A".repeat(MOST_CHARACTERS + 1);
        assert_eq!(decode_kept(&novel), Err(LinkError::TooLong));
    }

    #[test]
    fn neither_is_taken_for_the_other() {
        let text = encode_kept(&kept()).unwrap();
        assert_eq!(decode(&text), Err(LinkError::NotALink));
        let link = encode(&Job::default()).unwrap();
        assert_eq!(decode_kept(&link), Err(LinkError::NotALink));
    }
}
