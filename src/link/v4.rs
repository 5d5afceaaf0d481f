//! Version 4 of the job in a link. Frozen: links of this form are in other people's letters.
//!
//! It is what version 3 is, with further blocks behind those of version 3: the instruments, what was learned of the
//! lathe, the temperature of the room, the events of the record, which [`super::events`]
//! lays out, and the name of whoever does the work.
//!
//! | piece | bytes |
//! | --- | --- |
//! | an instrument | its name; a byte with its kind in the low four bits and a bit for each number that is there; those numbers |
//! | what was learned | a whole number, twice how many paces and one more where an infeed taught something; that; the paces |
//! | a pace | the number of its step, its two numbers |

use super::bytes::{Read, Reader, Write, Writer, read_fields, write_fields};
use super::choice::Numbered;
use super::events::{read_events, write_events};
use super::v3::{self, Block, block, read_blocks, write_blocks};
use crate::job::{Instrument, InstrumentKind, Job, Learned, LearnedPace, LearnedTakes, WorkStep};

/// Most instruments.
const MOST_INSTRUMENTS: usize = 8;
/// Most characters of a name.
const MOST_NAME: usize = 40;
/// Most steps with a pace.
const MOST_PACES: usize = 12;

/// The job in these bytes; `None` when they are not exactly one job within its limits.
pub(super) fn read(bytes: &[u8]) -> Option<Job> {
    read_blocks(bytes, v3::BLOCKS.iter().chain(BLOCKS))
}

/// The bytes of a job; `None` when a text or a list is too long.
pub(super) fn write(job: &Job) -> Option<Vec<u8>> {
    write_blocks(job, v3::BLOCKS.iter().chain(BLOCKS))
}

/// In this order behind those of version 3, and more only behind the last, in newer versions.
const BLOCKS: &[Block] = &[
    Block {
        is_there: |job| !job.shop.instruments.is_empty(),
        read: |from, job| job.shop.instruments = from.list::<4, _>(MOST_INSTRUMENTS),
        write: |job, to| to.list(&job.shop.instruments, MOST_INSTRUMENTS),
    },
    block!(4, shop.machine.learned),
    block!(4, setup.room_temperature),
    Block {
        is_there: |job| !job.record.events.is_empty(),
        read: |from, job| job.record.events = read_events(from),
        write: |job, to| write_events(&job.record.events, to),
    },
    Block {
        is_there: |job| !job.record.by.is_empty(),
        read: |from, job| job.record.by = from.text(MOST_NAME),
        write: |job, to| to.text(&job.record.by, MOST_NAME),
    },
];

/// The bits of an instrument's kind, and the first of those of its numbers.
const KIND: u8 = 0b1111;
const FIRST_NUMBER: u8 = 0b1_0000;

impl Read<4> for Instrument {
    fn read(from: &mut Reader<'_>) -> Self {
        let name = from.text(MOST_NAME);
        let head = from.byte();
        let kind = from.must(InstrumentKind::from_number(head & KIND));
        let mut bit = FIRST_NUMBER;
        let mut next = || {
            let there = head & bit != 0;
            bit <<= 1;
            there.then(|| Read::<4>::read(from))
        };
        Self {
            name,
            kind,
            graduation: next(),
            permissible_error: next(),
            reference: next(),
            repeat: next(),
        }
    }
}

impl Write for Instrument {
    fn write(&self, to: &mut Writer) -> Option<()> {
        to.text(&self.name, MOST_NAME)?;
        let numbers = [
            &self.graduation,
            &self.permissible_error,
            &self.reference,
            &self.repeat,
        ];
        let there = numbers.iter().rev().fold(0, |bits, number| {
            bits << 1 | if number.is_some() { FIRST_NUMBER } else { 0 }
        });
        to.byte(self.kind.to_number()? | there);
        numbers
            .into_iter()
            .flatten()
            .try_for_each(|number| number.write(to))
    }
}

macro_rules! fields {
    ($($list:tt)*) => {
        read_fields! { 4, $($list)* }
        write_fields! { $($list)* }
    };
}
fields! {
    LearnedTakes { share, share_deviation, offset, offset_deviation, cuts }
    LearnedPace { step, factor, jobs }
}

impl Read<4> for WorkStep {
    fn read(from: &mut Reader<'_>) -> Self {
        Self::from_index(from.byte()).unwrap_or_else(|| {
            from.fail();
            Self::Receive
        })
    }
}

impl Write for WorkStep {
    fn write(&self, to: &mut Writer) -> Option<()> {
        to.byte(self.index());
        Some(())
    }
}

impl Read<4> for Learned {
    fn read(from: &mut Reader<'_>) -> Self {
        let head = from.whole();
        let takes = (head & 1 == 1).then(|| Read::<4>::read(from));
        let paces = from.items(head >> 1, MOST_PACES, Read::<4>::read);
        Self { takes, paces }
    }
}

impl Write for Learned {
    fn write(&self, to: &mut Writer) -> Option<()> {
        let short = Some(self.paces.len()).filter(|count| *count <= MOST_PACES);
        to.whole(u64::try_from(short?).ok()? << 1 | u64::from(self.takes.is_some()));
        if let Some(takes) = &self.takes {
            takes.write(to)?;
        }
        self.paces.iter().try_for_each(|pace| pace.write(to))
    }
}
