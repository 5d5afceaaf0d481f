//! What is keyed in at the lathe: readings by their last digits, and the events that follow from advice.
//!
//! A reading that is keyed in without a decimal mark is aligned with the last digit of the instrument, as the figures
//! of a micrometer are: its digits take the places of the last digits of the number that was read or expected before,
//! and the digits in front of them stay. With a decimal mark it is what it says. The whole number is shown before it
//! counts.

use super::advice::CutNext;
use super::instruments::graduation;
use crate::cutting::PassKind;
use crate::job::{
    CutMade, CutMadeKind, DialReads, Instrument, Job, Measured, Reading, Record, What, WorkPlace,
};
use crate::plan::Plan;
use crate::quantity::{Entered, Entry, Length, ReadError, Share, Unit, show};

/// A number as it was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Keyed {
    /// The number.
    pub value: Entered<Length>,
    /// All of it, without its unit.
    pub text: String,
    /// How many characters at its front were not keyed in, but kept from the number before.
    pub kept: usize,
}

/// Reads a number that was keyed in, in `unit`, with as many `decimals` as the instrument shows.
///
/// `before` is the number whose front stays where only last digits are keyed in; without one the text is read as it is.
///
/// # Errors
/// Every way of [`ReadError`].
/// # Example
/// ```
/// use skimwright::measuring::keyed;
/// use skimwright::quantity::{Length, Unit};
/// let before = Some(Length::mm(20.012));
/// let read = |text| keyed(text, before, Unit::Millimetre, 3).unwrap().text;
/// assert_eq!(read("08"), "20.008");
/// assert_eq!(read("19987"), "19.987");
/// assert_eq!(read("19.9"), "19.9");
/// ```
pub fn keyed(
    text: &str,
    before: Option<Length>,
    unit: Unit,
    decimals: u8,
) -> Result<Keyed, ReadError> {
    let text = text.trim();
    let bare = !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let before = before.filter(|before| before.is_finite() && Length::ZERO < *before);
    let (full, kept) = match before {
        Some(before) if bare => aligned(text, before, unit, decimals),
        _ => (text.to_owned(), 0),
    };
    Ok(Keyed {
        value: Entered::read(&full, unit)?,
        text: full,
        kept,
    })
}

/// A length as an instrument shows it, without its unit.
pub fn shown_bare(length: Length, unit: Unit, decimals: u8) -> String {
    show::decimal(unit.to_number(length.to_mm()), usize::from(decimals))
}

/// Digits in the places of the last ones of a number, and how many characters of it stay in front of them.
fn aligned(digits: &str, before: Length, unit: Unit, decimals: u8) -> (String, usize) {
    let shown = shown_bare(before, unit, decimals);
    let decimals = usize::from(decimals);
    let old: String = shown.chars().filter(char::is_ascii_digit).collect();
    let front = old.len().saturating_sub(digits.len());
    let mut all: String = old.chars().take(front).chain(digits.chars()).collect();
    // Fewer digits than stand behind the mark need noughts before it.
    while all.len() <= decimals {
        all.insert(0, '0');
    }
    let whole = all.len() - decimals;
    if decimals > 0 {
        all.insert(whole, '.');
    }
    // The mark stays with the digits before it.
    let marked = decimals > 0 && front >= whole;
    (all, front + usize::from(marked))
}

/// How many decimals an instrument shows in `unit`: those of its division, entered or usual of its kind; where that has
/// none in `unit`, thousandths of a millimetre or ten-thousandths of an inch. `None` is the usual micrometer.
pub fn shown_decimals(instrument: Option<&Instrument>, unit: Unit) -> u8 {
    let usual = Instrument::default();
    let division = graduation(instrument.unwrap_or(&usual));
    decimals_of(division, unit).unwrap_or(if unit.is_inch() { 4 } else { 3 })
}

/// How many decimals write a step exactly; `None` where five do not.
fn decimals_of(step: Length, unit: Unit) -> Option<u8> {
    const ROUNDING: f64 = 1e-6;
    let number = unit.to_number(step.to_mm());
    (0..=5_u8).find(|decimals| {
        let digits = number * 10_f64.powi(i32::from(*decimals));
        digits > 0.5 && (digits - digits.round()).abs() < ROUNDING * digits
    })
}

/// What is dialled in, with as many decimals as the dial's division needs; without its unit.
///
/// # Example
/// ```
/// use skimwright::measuring::dialled_bare;
/// use skimwright::quantity::{Length, Unit};
/// let text = |mm, division| dialled_bare(Length::mm(mm), Length::mm(division), Unit::Millimetre);
/// assert_eq!(text(0.3, 0.05), "0.30");
/// assert_eq!(text(0.125, 0.005), "0.125");
/// ```
pub fn dialled_bare(dialled: Length, division: Length, unit: Unit) -> String {
    let usual = if unit.is_inch() { 4 } else { 3 };
    let decimals = decimals_of(division, unit).map_or(usual, usize::from);
    show::decimal(unit.to_number(dialled.to_mm()), decimals)
}

/// How many divisions of the dial make an infeed, to a tenth.
pub fn divisions(dialled: Length, division: Length) -> Option<String> {
    let count = dialled / division;
    (count.is_finite() && 0.0 < count).then(|| show::trimmed(count, 1))
}

/// Odds as one in so many, rounded to what can be said: 1 in 2, 5, 20, 500; `None` for less than one in a thousand.
///
/// # Example
/// ```
/// use skimwright::measuring::one_in;
/// use skimwright::quantity::Share;
/// assert_eq!(one_in(Share::of_whole(0.021)), Some(50));
/// assert_eq!(one_in(Share::of_whole(1e-9)), None);
/// ```
pub fn one_in(odds: Share) -> Option<u32> {
    const SAID: [u32; 10] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
    let odds = odds.to_whole();
    // The nearest by ratio, as odds are felt; at a ratio of more than the square root of two below the last, none is.
    let off = |often: u32| (odds * f64::from(often)).ln().abs();
    if odds * 1400.0 < 1.0 {
        return None;
    }
    SAID.into_iter().min_by(|a, b| off(*a).total_cmp(&off(*b)))
}

/// The diameter to expect now: the last reading, less what was dialled in since; before the first reading what the
/// first pass starts from, else the diameter wanted.
///
/// A round number to complete digits by: what the infeed really takes is the advice's concern.
pub fn expected(job: &Job, plan: &Plan) -> Option<Length> {
    let mut off = Length::ZERO;
    let mut last = None;
    for (_, event) in job.record.standing().rev() {
        match &event.what {
            What::Reading(Reading {
                of: Measured::Diameter(_),
                value,
                ..
            }) => {
                last = Some(value.value());
                break;
            }
            What::Cut(cut) => off += off_diameter(cut),
            _ => {}
        }
    }
    let first = || {
        let pass = plan.stock_off.as_ref()?.passes.first()?;
        Some(pass.diameter_after + pass.off_diameter)
    };
    let from = last
        .or_else(first)
        .unwrap_or_else(|| job.wanted.diameter.value());
    Some(from - off).filter(|left| left.is_finite() && Length::ZERO < *left)
}

fn off_diameter(cut: &CutMade) -> Length {
    match cut.reads {
        DialReads::Diameter => cut.dialled.value(),
        DialReads::Radius => cut.dialled.value() * 2.0,
    }
}

/// Where to measure next: after a cut where it was measured before it, then the places that were not measured since.
pub fn next_place(record: &Record) -> WorkPlace {
    let mut since = Vec::new();
    let mut before = None;
    let mut cut = false;
    for (_, event) in record.standing().rev() {
        match &event.what {
            What::Cut(_) => cut = true,
            What::Reading(Reading {
                of: Measured::Diameter(place),
                ..
            }) => {
                if cut {
                    before = Some(place.clone());
                    break;
                }
                since.push(place.clone());
            }
            _ => {}
        }
    }
    if since.is_empty()
        && let Some(before) = before
    {
        return before;
    }
    let usual = [
        WorkPlace::FreeEnd,
        WorkPlace::Middle,
        WorkPlace::NearShoulder,
    ];
    let mut open = usual.into_iter().filter(|place| !since.contains(place));
    open.next().unwrap_or(WorkPlace::FreeEnd)
}

/// A cut as it was advised, in the unit that the dial is marked in.
pub fn cut_as_advised(next: &CutNext, unit: Unit) -> Option<CutMade> {
    let kind = match (next.spring, next.kind) {
        (true, _) => CutMadeKind::Spring,
        (false, PassKind::Rough) => CutMadeKind::Rough,
        (false, PassKind::Last) => CutMadeKind::Last,
        (false, PassKind::Polish) => CutMadeKind::Polish,
    };
    let dialled = if next.spring {
        Length::ZERO
    } else {
        next.dialled
    };
    Some(CutMade {
        kind,
        dialled: plain(dialled, unit)?,
        reads: next.reads,
    })
}

/// A cut that nothing is dialled in for.
pub fn cut_without_infeed(kind: CutMadeKind, reads: DialReads, unit: Unit) -> Option<CutMade> {
    let dialled = plain(Length::ZERO, unit)?;
    Some(CutMade {
        kind,
        dialled,
        reads,
    })
}

/// A length as a plain decimal number, without noughts at its end that say nothing.
fn plain(length: Length, unit: Unit) -> Option<Entered<Length>> {
    Entered::read(&show::trimmed(unit.to_number(length.to_mm()), 5), unit).ok()
}

/// The reading that was meant in the place of a doubted one, with as many decimals.
pub fn as_meant(reading: &Reading, meant: Length) -> Option<Reading> {
    let entry = reading.value.entry();
    let shown = entry.to_string();
    let behind = shown.split(|sign: char| !sign.is_ascii_digit()).nth(1);
    let usual = if entry.unit().is_inch() { 4 } else { 3 };
    let decimals = behind.map_or(usual, str::len).max(usual);
    let number = entry.unit().to_number(meant.to_mm());
    let entry = Entry::decimal(number, u8::try_from(decimals).ok()?, entry.unit())?;
    Some(Reading {
        value: Entered::new(entry)?,
        confirmed: false,
        ..reading.clone()
    })
}

#[cfg(test)]
#[path = "keyed_tests.rs"]
mod tests;
