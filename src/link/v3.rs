//! Version 3 of the job in a link. Frozen: links of this form are in other people's letters.
//!
//! It is what version 2 is, and behind that what version 2 did not have, in blocks: a whole number says which of them
//! there are, a bit for each, the lowest for the first. A block in which nothing is entered is left out.

use super::bytes::{Read, Reader, Write, Writer, read_fields, write_fields};
use super::choice::Numbered;
use super::v2;
use crate::costing::Step;
use crate::job::{
    Edge, Gears, Job, Learned, Machine, Pin, Plane, Rates, Setup, StepTime, StepTimes,
};
use crate::quantity::{Entered, Typed};
use crate::tables::{CuttingGroup, FileBite};

/// Most characters of a name.
const MOST_NAME: usize = 40;
/// Most characters of a currency.
const MOST_CURRENCY: usize = 8;
/// Most speeds or feeds in a list.
const MOST_GEARS: usize = 40;
/// Most pinned passes.
const MOST_PINS: usize = 12;

/// The job in these bytes; `None` when they are not exactly one job within its limits.
pub(super) fn read(bytes: &[u8]) -> Option<Job> {
    read_blocks(bytes, BLOCKS.iter())
}

/// The job in these bytes, with as many blocks as a version has.
pub(super) fn read_blocks<'b>(bytes: &[u8], known: impl Iterator<Item = &'b Block>) -> Option<Job> {
    let from = &mut Reader::new(bytes);
    let mut job = v2::read_base(from);
    let mut blocks = from.whole();
    for block in known {
        if blocks & 1 == 1 {
            (block.read)(from, &mut job);
            // What is there says something: nothing has one form only.
            if !(block.is_there)(&job) {
                from.fail();
            }
        }
        blocks >>= 1;
    }
    (blocks == 0 && from.is_done()).then_some(job)
}

/// The bytes of a job, with as many blocks as a version has; `None` when a text or a list is too long.
pub(super) fn write_blocks<'b>(
    job: &Job,
    known: impl DoubleEndedIterator<Item = &'b Block> + Clone,
) -> Option<Vec<u8>> {
    let mut to = Writer::default();
    v2::write_base(job, &mut to)?;
    let flags = known.clone().rev().fold(0, |flags, block| {
        flags << 1 | u64::from((block.is_there)(job))
    });
    to.whole(flags);
    for block in known {
        if (block.is_there)(job) {
            (block.write)(job, &mut to)?;
        }
    }
    Some(to.into_bytes())
}

/// What an older version did not have, piece by piece.
pub(super) struct Block {
    pub(super) is_there: fn(&Job) -> bool,
    pub(super) read: fn(&mut Reader<'_>, &mut Job),
    pub(super) write: fn(&Job, &mut Writer) -> Option<()>,
}

/// A block that is one place of the job.
macro_rules! block {
    ($version:literal, $($place:ident).+) => {
        Block {
            is_there: |job| job.$($place).+ != Job::default().$($place).+,
            read: |from, job| job.$($place).+ = Read::<$version>::read(from),
            write: |job, to| job.$($place).+.write(to),
        }
    };
}
pub(super) use block;

/// In this order, and more only behind the last, in newer versions.
pub(super) const BLOCKS: &[Block] = &[
    block!(3, wanted.roughness),
    block!(3, shop.aim),
    block!(3, shop.edge),
    Block {
        is_there: has_machine,
        ..block!(3, shop.machine)
    },
    block!(3, shop.rates),
    Block {
        is_there: has_setup,
        ..block!(3, setup)
    },
    block!(3, shop.times),
    block!(3, part.cutting_group),
    block!(3, part.file_bite),
];

/// Whether a lathe says something that this version has.
fn has_machine(job: &Job) -> bool {
    let known = Machine {
        learned: Learned::default(),
        ..job.shop.machine.clone()
    };
    known != Machine::default()
}

/// The same for the set-up.
fn has_setup(job: &Job) -> bool {
    let known = Setup {
        room_temperature: None,
        ..job.setup.clone()
    };
    known != Setup::default()
}

macro_rules! fields {
    ($($list:tt)*) => {
        read_fields! { 3, $($list)* }
        write_fields! { $($list)* }
    };
}
fields! {
    Pin { after, infeed, speed, feed }
}

/// A type with a text in it, which has a bound of its own.
macro_rules! with_text {
    ($($type:ident { $text:ident to $most:ident, $($field:ident),* $(,)? })*) => {$(
        impl Read<3> for $type {
            fn read(from: &mut Reader<'_>) -> Self {
                let mut read = Self::default();
                read.$text = from.text($most);
                $(read.$field = Read::<3>::read(from);)*
                read
            }
        }

        impl Write for $type {
            fn write(&self, to: &mut Writer) -> Option<()> {
                to.text(&self.$text, $most)?;
                $(self.$field.write(to)?;)*
                Some(())
            }
        }
    )*};
}
with_text! {
    Edge {
        name to MOST_NAME,
        nose_radius, cutting_edge_angle, rake, least_feed, most_feed, least_depth, most_depth, price, edges,
        regrind_time,
    }
    Machine {
        name to MOST_NAME,
        rigidity, speeds, feeds, power, efficiency, torque, swing, chuck_top_speed, graduation, dial_reads,
        compound_graduation, fine_infeed, head_stiffness, tail_stiffness, post_stiffness,
    }
    Rates { currency to MOST_CURRENCY, per_hour, least, consumables, postage }
}

const STEPLESS: u8 = 0;
const LISTED: u8 = 1;

impl<Q: Typed> Read<3> for Gears<Q> {
    fn read(from: &mut Reader<'_>) -> Self {
        match from.byte() {
            STEPLESS => Self::Stepless {
                from: Read::<3>::read(from),
                to: Read::<3>::read(from),
            },
            LISTED => Self::Listed(from.list::<3, Entered<Q>>(MOST_GEARS)),
            _ => {
                from.fail();
                Self::default()
            }
        }
    }
}

impl<Q: Typed> Write for Gears<Q> {
    fn write(&self, to: &mut Writer) -> Option<()> {
        match self {
            Self::Stepless { from, to: most } => {
                to.byte(STEPLESS);
                from.write(to)?;
                most.write(to)
            }
            Self::Listed(list) => {
                to.byte(LISTED);
                to.list(list, MOST_GEARS)
            }
        }
    }
}

impl Read<3> for Plane {
    fn read(from: &mut Reader<'_>) -> Self {
        if !from.is_there() {
            return Self::default();
        }
        Self {
            place: Read::<3>::read(from),
            readings: core::array::from_fn(|_| Read::<3>::read(from)),
        }
    }
}

impl Write for Plane {
    fn write(&self, to: &mut Writer) -> Option<()> {
        let there = *self != Self::default();
        to.is_there(there);
        if there {
            self.place.write(to)?;
            self.readings.iter().try_for_each(|it| it.write(to))?;
        }
        Some(())
    }
}

/// A choice that may not be made: nought, or one more than its number.
fn read_choice<T: Numbered>(from: &mut Reader<'_>) -> Option<T> {
    let number = from.byte().checked_sub(1)?;
    let choice = T::from_number(number);
    if choice.is_none() {
        from.fail();
    }
    choice
}

fn write_choice<T: Numbered>(choice: Option<T>, to: &mut Writer) -> Option<()> {
    to.byte(match choice {
        None => 0,
        Some(choice) => choice.to_number()?.checked_add(1)?,
    });
    Some(())
}

impl Read<3> for StepTimes {
    /// Those that say something, in the order of their numbers: how many, then each step with its times.
    fn read(from: &mut Reader<'_>) -> Self {
        let mut times = Self::default();
        let count = from.byte();
        let mut next = 0;
        for _ in 0..count {
            let number = from.byte();
            let time = StepTime {
                low: Read::<3>::read(from),
                likely: Read::<3>::read(from),
                high: Read::<3>::read(from),
            };
            // Each step once, in its order, and only where there is something to say: times have one form only.
            let step = Step::from_index(number);
            let likely = step.is_some_and(StepTimes::has_likely) || time.likely.is_none();
            let sound = next <= number && likely && time != StepTime::default();
            match step.and_then(|step| times.of_mut(step)) {
                Some(place) if sound => *place = time,
                _ => from.fail(),
            }
            next = number.saturating_add(1);
        }
        times
    }
}

impl Write for StepTimes {
    fn write(&self, to: &mut Writer) -> Option<()> {
        let all = Step::ALL
            .into_iter()
            .filter_map(|step| Some((step, self.of(step)?)));
        let said: Vec<_> = all
            .filter(|(_, time)| **time != StepTime::default())
            .collect();
        to.byte(u8::try_from(said.len()).ok()?);
        for (step, time) in said {
            to.byte(step.index());
            time.low.write(to)?;
            time.likely.write(to)?;
            time.high.write(to)?;
        }
        Some(())
    }
}

/// A group of materials, or the way of a file, where one is named.
macro_rules! maybe {
    ($($name:ident)*) => {$(
        impl Read<3> for Option<$name> {
            fn read(from: &mut Reader<'_>) -> Self {
                read_choice(from)
            }
        }

        impl Write for Option<$name> {
            fn write(&self, to: &mut Writer) -> Option<()> {
                write_choice(*self, to)
            }
        }
    )*};
}
maybe! { CuttingGroup FileBite }

impl Read<3> for Setup {
    fn read(from: &mut Reader<'_>) -> Self {
        Self {
            support: read_choice(from),
            jaws: read_choice(from),
            grip_length: Read::<3>::read(from),
            grip_force: Read::<3>::read(from),
            tail_force: Read::<3>::read(from),
            near: Read::<3>::read(from),
            far: Read::<3>::read(from),
            pins: from.list::<3, _>(MOST_PINS),
            room_temperature: None,
        }
    }
}

impl Write for Setup {
    fn write(&self, to: &mut Writer) -> Option<()> {
        write_choice(self.support, to)?;
        write_choice(self.jaws, to)?;
        self.grip_length.write(to)?;
        self.grip_force.write(to)?;
        self.tail_force.write(to)?;
        self.near.write(to)?;
        self.far.write(to)?;
        to.list(&self.pins, MOST_PINS)
    }
}
