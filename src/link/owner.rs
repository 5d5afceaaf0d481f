//! What goes to the part's owner and comes back from him, as texts behind `#` like a job. Frozen.
//!
//! | letter | what it is | body |
//! | --- | --- | --- |
//! | `o` | an offer | bits: 1 shows rates, 2 shows the machine, 4 a time, 8 a price; three times; three sums and the currency; a job as in version 4 |
//! | `r` | an answer | the number of what was said, the mark of the offer, the words, the name, the moment in seconds since 1970 |
//! | `u` | a job that is handed back | a job as in version 4 |
//!
//! Jobs themselves have the letters from `a` on. The checksum is that of a job's link.

use crc::{CRC_64_XZ, Crc, NoTable};

use super::bytes::{Read, Reader, Write, Writer};
use super::choice::Numbered;
use super::{LinkError, MOST_CHARACTERS, v4, wrap};
use crate::job::{Answered, Job, Moment, OfferMark, OwnerSays, Shows};
use crate::offer::{Offer, Price};

pub(super) const OFFER: char = 'o';
pub(super) const ANSWER: char = 'r';
pub(super) const HANDED_BACK: char = 'u';

const RATES: u8 = 0b0001;
const MACHINE: u8 = 0b0010;
const TIME: u8 = 0b0100;
const PRICE: u8 = 0b1000;
/// Most characters of an owner's words, and of his name.
const MOST_NOTE: usize = 400;
const MOST_NAME: usize = 40;
/// Most characters of a currency.
const MOST_CURRENCY: usize = 8;

const MARK: Crc<u64, NoTable> = Crc::<u64, NoTable>::new(&CRC_64_XZ);

/// The mark that tells this offer from every other; `None` when it has no link.
pub fn offer_mark(offer: &Offer) -> Option<OfferMark> {
    write_offer(offer).map(|bytes| OfferMark(MARK.checksum(&bytes)))
}

/// An offer as the text behind `#` for the owner.
///
/// # Errors
/// As [`encode`](super::encode).
pub fn encode_offer(offer: &Offer) -> Result<String, LinkError> {
    bounded(OFFER, write_offer(offer))
}

/// An answer as the text behind `#` for the shop.
///
/// # Errors
/// [`LinkError::TooLarge`] when its words or its name are too long.
pub fn encode_answer(answered: &Answered, at: Moment) -> Result<String, LinkError> {
    let mut to = Writer::default();
    let written = answered.says.to_number().and_then(|says| {
        to.byte(says);
        write_answer(answered, &mut to)?;
        to.whole(at.to_unix_seconds());
        Some(to.into_bytes())
    });
    bounded(ANSWER, written)
}

/// A job that is handed back, as the text behind `#` for the owner.
///
/// # Errors
/// As [`encode`](super::encode).
pub fn encode_handed_back(job: &Job) -> Result<String, LinkError> {
    bounded(HANDED_BACK, v4::write(job))
}

fn bounded(letter: char, bytes: Option<Vec<u8>>) -> Result<String, LinkError> {
    let text = wrap(letter, bytes.ok_or(LinkError::TooLarge)?);
    if MOST_CHARACTERS < text.len() {
        return Err(LinkError::TooLong);
    }
    Ok(text)
}

fn write_offer(offer: &Offer) -> Option<Vec<u8>> {
    let mut to = Writer::default();
    let bits = [
        (offer.shows.rates, RATES),
        (offer.shows.machine, MACHINE),
        (offer.time.is_some(), TIME),
        (offer.price.is_some(), PRICE),
    ];
    to.byte(
        bits.into_iter()
            .filter(|(is, _)| *is)
            .map(|(_, bit)| bit)
            .sum(),
    );
    for time in offer.time.iter().flatten() {
        time.write(&mut to)?;
    }
    if let Some(price) = &offer.price {
        price.range.iter().try_for_each(|sum| sum.write(&mut to))?;
        to.text(&price.currency, MOST_CURRENCY)?;
    }
    let mut bytes = to.into_bytes();
    bytes.extend(v4::write(&offer.job)?);
    Some(bytes)
}

pub(super) fn read_offer(bytes: &[u8]) -> Option<Offer> {
    let from = &mut Reader::new(bytes);
    let bits = from.byte();
    let time = (bits & TIME != 0).then(|| core::array::from_fn(|_| Read::<4>::read(from)));
    let price = (bits & PRICE != 0).then(|| Price {
        range: core::array::from_fn(|_| Read::<4>::read(from)),
        currency: from.text(MOST_CURRENCY),
    });
    let sound = bits <= RATES | MACHINE | TIME | PRICE;
    let job = v4::read(from.rest()?)?;
    sound.then_some(Offer {
        job,
        shows: Shows {
            rates: bits & RATES != 0,
            machine: bits & MACHINE != 0,
        },
        time,
        price,
    })
}

/// What was answered, and when.
pub(super) fn read_answered(bytes: &[u8]) -> Option<(Answered, Moment)> {
    let from = &mut Reader::new(bytes);
    let says = from.byte();
    let answered = read_answer(says, from);
    let at = Moment::unix_seconds(from.whole());
    from.is_done().then_some((answered, at))
}

pub(super) fn read_handed_back(bytes: &[u8]) -> Option<Job> {
    v4::read(bytes)
}

/// What an owner said, of this number.
pub(super) fn read_answer(says: u8, from: &mut Reader<'_>) -> Answered {
    Answered {
        says: OwnerSays::from_number(says).unwrap_or_else(|| {
            from.fail();
            OwnerSays::Ask
        }),
        to: read_mark(from),
        words: from.text(MOST_NOTE),
        by: from.text(MOST_NAME),
    }
}

/// All of it but what was said.
pub(super) fn write_answer(answered: &Answered, to: &mut Writer) -> Option<()> {
    write_mark(answered.to, to);
    to.text(&answered.words, MOST_NOTE)?;
    to.text(&answered.by, MOST_NAME)
}

pub(super) fn read_mark(from: &mut Reader<'_>) -> OfferMark {
    OfferMark(u64::from_le_bytes(core::array::from_fn(|_| from.byte())))
}

pub(super) fn write_mark(mark: OfferMark, to: &mut Writer) {
    for byte in mark.0.to_le_bytes() {
        to.byte(byte);
    }
}
