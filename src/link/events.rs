//! The record of a job in a link. Frozen.
//!
//! A list of events. Each is short where it is as the one before:
//!
//! | piece | bytes |
//! | --- | --- |
//! | head | kind in the low three bits, bit 3 struck out, bits 4–7 as below |
//! | time | seconds since the event before as a whole number, of which the lowest bit says that they go back; the first counts from 1970 |
//! | 0, a reading | bits: of what it was before; a number like the one before; held as before; confirmed. Then what of these is not so |
//! | 1, a cut | two bits of its kind, a bit for an infeed on radius, a bit for a number like the one before; the number |
//! | 2, a change | its number in the bits |
//! | 3, a note | its text |
//! | 4, a step begins; 5, it is done | the number of the step in the bits |
//! | 6, a step otherwise | as 4; then 0 paused, 1 skipped and why, 2 reopened |
//! | 7, an offer | bits: 1 shows rates, 2 shows the machine; eight bytes of its mark, low first; the text of its link |
//! | 7, an answer | bits: 8 and the number of what was said; the mark; the words; the name |
//!
//! *Of what*: 0 near the shoulder, 1 half way, 2 near the end, 3 at a place, which follows, 4 length, 5 runout,
//! 6 roughness. *Held*: a whole number, one more than the instrument's or 0, doubled, and one more where a temperature
//! follows; at first 0. *A number like the one before* has its unit, its decimals and its sign, and is stored as the
//! difference of their digits, as the time is; diameters, lengths, runouts, roughnesses and cuts each have their own
//! number before. Whatever can be short must be: a record has one form only.

use super::bytes::{Read, Reader, Write, Writer};
use super::choice::Numbered;
use super::owner::{read_answer, read_mark, write_answer, write_mark};
use crate::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Measured, Moment, Offered, Reading, Shows,
    StepEvent, StepState, What, WorkPlace, WorkStep,
};
use crate::quantity::{Entered, Entry, Length, Number, Temperature, Term, Unit};

/// Most events.
const MOST_EVENTS: usize = 5000;
/// Most characters of the link of an offer.
const MOST_LINK: usize = 44_000;
/// Most characters of a note or a reason.
const MOST_NOTE: usize = 400;

const KIND: u8 = 0b111;
const STRUCK: u8 = 0b1000;
/// How far up the bits are that belong to the kind.
const OWN: u8 = 4;
/// The largest number in them.
const MOST_OWN: u8 = 0b1111;

const READING: u8 = 0;
const CUT: u8 = 1;
const CHANGE: u8 = 2;
const NOTE: u8 = 3;
const STARTED: u8 = 4;
const DONE: u8 = 5;
const STEP: u8 = 6;
const OWNER: u8 = 7;

const SAME_OF: u8 = 0b0001;
const SAME_NUMBER: u8 = 0b0010;
const SAME_HELD: u8 = 0b0100;
const CONFIRMED: u8 = 0b1000;

const CUT_KIND: u8 = 0b0011;
const RADIUS: u8 = 0b0100;
const SAME_DIAL: u8 = 0b1000;

const SHOWS_RATES: u8 = 0b0001;
const SHOWS_MACHINE: u8 = 0b0010;
const ANSWER: u8 = 0b1000;

const PAUSED: u8 = 0;
const SKIPPED: u8 = 1;
const REOPENED: u8 = 2;

/// The events in front of these bytes.
pub(super) fn read_events(from: &mut Reader<'_>) -> Vec<Event> {
    let mut before = Before::default();
    from.list_of(MOST_EVENTS, |from| before.read_event(from))
}

/// The bytes of a record's events; `None` when they are too many or a text in them is too long.
pub(super) fn write_events(events: &[Event], to: &mut Writer) -> Option<()> {
    let mut before = Before::default();
    to.list_of(events, MOST_EVENTS, |event, to| {
        before.write_event(event, to)
    })
}

/// A plain decimal number: what is the same in one like it, and its digits.
#[derive(Clone, Copy)]
struct Plain {
    shape: (bool, u8, Unit),
    digits: u64,
}

impl Plain {
    fn of(number: &Entered<Length>) -> Option<Self> {
        match number.entry().terms() {
            [
                Term {
                    negative,
                    number: Number::Decimal { digits, decimals },
                    unit,
                },
            ] => Some(Self {
                shape: (*negative, *decimals, *unit),
                digits: *digits,
            }),
            _ => None,
        }
    }

    fn number(self) -> Option<Entered<Length>> {
        let (negative, decimals, unit) = self.shape;
        let number = Number::Decimal {
            digits: self.digits,
            decimals,
        };
        let term = Term {
            negative,
            number,
            unit,
        };
        Entry::from_terms(vec![term]).and_then(Entered::new)
    }
}

/// What was before, so that the next is short where it is alike.
struct Before {
    at: u64,
    of: Measured,
    instrument: Option<u8>,
    temperature: Option<Entered<Temperature>>,
    /// Of diameters, lengths, runouts, roughnesses and cuts.
    numbers: [Option<Plain>; 5],
}

impl Default for Before {
    fn default() -> Self {
        Self {
            at: 0,
            of: Measured::Diameter(WorkPlace::NearShoulder),
            instrument: None,
            temperature: None,
            numbers: [None; 5],
        }
    }
}

impl Before {
    fn read_event(&mut self, from: &mut Reader<'_>) -> Event {
        let head = from.byte();
        self.at = after(self.at, from.whole());
        let own = head >> OWN;
        let what = match head & KIND {
            READING => What::Reading(self.read_reading(own, from)),
            CUT => What::Cut(self.read_cut(own, from)),
            CHANGE => What::Change(Change::from_number(own).unwrap_or_else(|| {
                from.fail();
                Change::NewEdge
            })),
            NOTE if own == 0 => What::Note(from.text(MOST_NOTE)),
            STARTED => step(own, StepState::Started, from),
            DONE => step(own, StepState::Done, from),
            STEP => {
                let state = match from.byte() {
                    PAUSED => StepState::Paused,
                    SKIPPED => StepState::Skipped(from.text(MOST_NOTE)),
                    REOPENED => StepState::Reopened,
                    _ => {
                        from.fail();
                        StepState::Paused
                    }
                };
                step(own, state, from)
            }
            OWNER if own & ANSWER != 0 => What::Answered(read_answer(own & !ANSWER, from)),
            OWNER if own <= SHOWS_RATES | SHOWS_MACHINE => What::Offered(Offered {
                shows: Shows {
                    rates: own & SHOWS_RATES != 0,
                    machine: own & SHOWS_MACHINE != 0,
                },
                mark: read_mark(from),
                link: from.text(MOST_LINK),
            }),
            _ => {
                from.fail();
                What::Note(String::new())
            }
        };
        Event {
            at: Moment::unix_seconds(self.at),
            struck: head & STRUCK != 0,
            what,
        }
    }

    fn write_event(&mut self, event: &Event, to: &mut Writer) -> Option<()> {
        let at = event.at.to_unix_seconds();
        let time = difference(self.at, at);
        self.at = at;
        let struck = if event.struck { STRUCK } else { 0 };
        let start = |kind: u8, own: u8, to: &mut Writer| {
            to.byte(own << OWN | struck | kind);
            to.whole(time);
        };
        match &event.what {
            What::Reading(reading) => {
                let own = self.likeness(reading);
                start(READING, own, to);
                self.write_reading(reading, own, to)
            }
            What::Cut(cut) => {
                let same = self.is_like(CUTS, &cut.dialled);
                let own = fits(cut.kind.to_number()?, CUT_KIND)?
                    | if cut.reads == DialReads::Radius {
                        RADIUS
                    } else {
                        0
                    }
                    | if same { SAME_DIAL } else { 0 };
                start(CUT, own, to);
                self.write_number(CUTS, &cut.dialled, to)
            }
            What::Change(change) => {
                start(CHANGE, fits(change.to_number()?, MOST_OWN)?, to);
                Some(())
            }
            What::Note(text) => {
                start(NOTE, 0, to);
                to.text(text, MOST_NOTE)
            }
            What::Offered(offered) => {
                let bit = |is: bool, bit| if is { bit } else { 0 };
                let shows = offered.shows;
                let own = bit(shows.rates, SHOWS_RATES) | bit(shows.machine, SHOWS_MACHINE);
                start(OWNER, own, to);
                write_mark(offered.mark, to);
                to.text(&offered.link, MOST_LINK)
            }
            What::Answered(answered) => {
                let says = fits(answered.says.to_number()?, !ANSWER & MOST_OWN)?;
                start(OWNER, ANSWER | says, to);
                write_answer(answered, to)
            }
            What::Step(StepEvent { step, state }) => {
                let kind = match state {
                    StepState::Started => STARTED,
                    StepState::Done => DONE,
                    _ => STEP,
                };
                start(kind, fits(step.index(), MOST_OWN)?, to);
                match state {
                    StepState::Started | StepState::Done => {}
                    StepState::Paused => to.byte(PAUSED),
                    StepState::Reopened => to.byte(REOPENED),
                    StepState::Skipped(why) => {
                        to.byte(SKIPPED);
                        to.text(why, MOST_NOTE)?;
                    }
                }
                Some(())
            }
        }
    }

    fn read_reading(&mut self, own: u8, from: &mut Reader<'_>) -> Reading {
        if own & SAME_OF == 0 {
            self.of = different(&self.of, read_of(from), from);
        }
        if own & SAME_HELD == 0 {
            let held = read_held(from);
            let before = (self.instrument, self.temperature.take());
            (self.instrument, self.temperature) = different(&before, held, from);
        }
        let value = self.read_number(numbers_of(&self.of), own & SAME_NUMBER != 0, from);
        Reading {
            of: self.of.clone(),
            value,
            instrument: self.instrument,
            temperature: self.temperature.clone(),
            confirmed: own & CONFIRMED != 0,
        }
    }

    /// Which of a reading is as it was before.
    fn likeness(&self, reading: &Reading) -> u8 {
        let held = self.instrument == reading.instrument && self.temperature == reading.temperature;
        [
            (self.of == reading.of, SAME_OF),
            (
                self.is_like(numbers_of(&reading.of), &reading.value),
                SAME_NUMBER,
            ),
            (held, SAME_HELD),
            (reading.confirmed, CONFIRMED),
        ]
        .into_iter()
        .fold(0, |bits, (is, bit)| if is { bits | bit } else { bits })
    }

    fn write_reading(&mut self, reading: &Reading, own: u8, to: &mut Writer) -> Option<()> {
        if own & SAME_OF == 0 {
            write_of(&reading.of, to)?;
            self.of = reading.of.clone();
        }
        if own & SAME_HELD == 0 {
            write_held(reading, to)?;
            self.instrument = reading.instrument;
            self.temperature.clone_from(&reading.temperature);
        }
        self.write_number(numbers_of(&reading.of), &reading.value, to)
    }

    fn read_cut(&mut self, own: u8, from: &mut Reader<'_>) -> CutMade {
        let kind = CutMadeKind::from_number(own & CUT_KIND).unwrap_or_else(|| {
            from.fail();
            CutMadeKind::Rough
        });
        CutMade {
            kind,
            dialled: self.read_number(CUTS, own & SAME_DIAL != 0, from),
            reads: if own & RADIUS == 0 {
                DialReads::Diameter
            } else {
                DialReads::Radius
            },
        }
    }

    fn before(&self, kind: usize) -> Option<Plain> {
        self.numbers.get(kind).copied().flatten()
    }

    fn is_like(&self, kind: usize, number: &Entered<Length>) -> bool {
        match (self.before(kind), Plain::of(number)) {
            (Some(before), Some(now)) => before.shape == now.shape,
            _ => false,
        }
    }

    fn keep(&mut self, kind: usize, number: &Entered<Length>) {
        if let (Some(place), Some(plain)) = (self.numbers.get_mut(kind), Plain::of(number)) {
            *place = Some(plain);
        }
    }

    fn read_number(&mut self, kind: usize, same: bool, from: &mut Reader<'_>) -> Entered<Length> {
        let number = if same {
            let digits = from.whole();
            self.before(kind).and_then(|before| {
                Plain {
                    digits: after(before.digits, digits),
                    ..before
                }
                .number()
            })
        } else {
            let number: Entered<Length> = Read::<4>::read(from);
            Some(number).filter(|number| !self.is_like(kind, number))
        };
        let number = number.unwrap_or_else(|| {
            from.fail();
            Entered::plain(0, 0, Unit::Millimetre)
        });
        self.keep(kind, &number);
        number
    }

    fn write_number(
        &mut self,
        kind: usize,
        number: &Entered<Length>,
        to: &mut Writer,
    ) -> Option<()> {
        match (self.before(kind), Plain::of(number)) {
            (Some(before), Some(now)) if before.shape == now.shape => {
                to.whole(difference(before.digits, now.digits));
            }
            _ => number.write(to)?,
        }
        self.keep(kind, number);
        Some(())
    }
}

/// Where the number before is kept.
const CUTS: usize = 4;

const fn numbers_of(of: &Measured) -> usize {
    match of {
        Measured::Diameter(_) => 0,
        Measured::Length => 1,
        Measured::Runout => 2,
        Measured::Roughness => 3,
    }
}

/// A number that has room in the bits of its kind.
fn fits(number: u8, most: u8) -> Option<u8> {
    (number <= most).then_some(number)
}

/// What was read, which fails where it is as before: then it has a shorter form.
fn different<T: PartialEq>(before: &T, now: T, from: &mut Reader<'_>) -> T {
    if *before == now {
        from.fail();
    }
    now
}

fn step(number: u8, state: StepState, from: &mut Reader<'_>) -> What {
    let step = WorkStep::from_index(number).unwrap_or_else(|| {
        from.fail();
        WorkStep::Receive
    });
    What::Step(StepEvent { step, state })
}

fn read_of(from: &mut Reader<'_>) -> Measured {
    match from.byte() {
        0 => Measured::Diameter(WorkPlace::NearShoulder),
        1 => Measured::Diameter(WorkPlace::Middle),
        2 => Measured::Diameter(WorkPlace::FreeEnd),
        3 => Measured::Diameter(WorkPlace::At(Read::<4>::read(from))),
        4 => Measured::Length,
        5 => Measured::Runout,
        6 => Measured::Roughness,
        _ => {
            from.fail();
            Measured::Length
        }
    }
}

fn write_of(of: &Measured, to: &mut Writer) -> Option<()> {
    to.byte(match of {
        Measured::Diameter(WorkPlace::NearShoulder) => 0,
        Measured::Diameter(WorkPlace::Middle) => 1,
        Measured::Diameter(WorkPlace::FreeEnd) => 2,
        Measured::Diameter(WorkPlace::At(place)) => {
            to.byte(3);
            return place.write(to);
        }
        Measured::Length => 4,
        Measured::Runout => 5,
        Measured::Roughness => 6,
    });
    Some(())
}

fn read_held(from: &mut Reader<'_>) -> (Option<u8>, Option<Entered<Temperature>>) {
    let held = from.whole();
    let instrument = (held >> 1).checked_sub(1).map(|number| {
        let number = u8::try_from(number).ok();
        from.must(number)
    });
    let temperature = (held & 1 == 1).then(|| Read::<4>::read(from));
    (instrument, temperature)
}

fn write_held(reading: &Reading, to: &mut Writer) -> Option<()> {
    let instrument = reading
        .instrument
        .map_or(0, |number| u64::from(number).saturating_add(1));
    to.whole(instrument << 1 | u64::from(reading.temperature.is_some()));
    match &reading.temperature {
        Some(temperature) => temperature.write(to),
        None => Some(()),
    }
}

/// From one number to the next as a whole number, small where they are near to each other, whichever is larger.
const fn difference(before: u64, now: u64) -> u64 {
    let forward = now.wrapping_sub(before);
    if forward <= u64::MAX / 2 {
        forward << 1
    } else {
        !forward << 1 | 1
    }
}

/// The way back.
const fn after(before: u64, difference: u64) -> u64 {
    let half = difference >> 1;
    before.wrapping_add(if difference & 1 == 0 { half } else { !half })
}
