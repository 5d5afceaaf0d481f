//! How a link stores a number as typed. Frozen.
//!
//! A tag byte, then whole numbers of variable length (seven bits a byte, low first):
//!
//! | low four bits | number behind the tag | bits 4–6 | bit 7 |
//! | --- | --- | --- | --- |
//! | 0–9 | that many decimals: the digits as one whole number | unit | negative |
//! | 10 | a fraction: numerator, denominator | unit | negative |
//! | 11 | a mixed number: whole, numerator, denominator | unit | negative |
//! | 14 | an empty field: nothing | 0 | 0 |
//! | 15 | a sum: so many terms, each with its own tag | number of terms, 2–8, in bits 4–7 | |
//!
//! Units are counted within what the field measures, so three bits are enough for them.

use super::bytes::{Read, Reader, Write, Writer};
use crate::quantity::{Dimension, Entered, Entry, Number, Term, Typed, Unit};

const FRACTION: u8 = 10;
const MIXED: u8 = 11;
const EMPTY: u8 = 14;
const SUM: u8 = 15;
const SHAPE: u8 = 0b1111;
const NEGATIVE: u8 = 0b1000_0000;

/// The units of each dimension in the order of their numbers.
const fn units(dimension: Dimension) -> &'static [Unit] {
    match dimension {
        Dimension::Length => &[
            Unit::Millimetre,
            Unit::Inch,
            Unit::Thou,
            Unit::Micrometre,
            Unit::Centimetre,
            Unit::Metre,
        ],
        Dimension::Speed => &[Unit::MetrePerMinute, Unit::FootPerMinute],
        Dimension::Feed => &[Unit::MillimetrePerRevolution, Unit::InchPerRevolution],
        Dimension::Time => &[Unit::Second, Unit::Minute],
        Dimension::Rotation => &[Unit::RevolutionPerMinute],
        Dimension::Angle => &[Unit::Degree],
        Dimension::Taper => &[Unit::ToOne],
        Dimension::Force => &[Unit::Newton, Unit::Kilonewton, Unit::PoundForce],
        Dimension::Torque => &[Unit::NewtonMetre, Unit::PoundFoot],
        Dimension::Power => &[Unit::Kilowatt, Unit::Watt, Unit::Horsepower],
        Dimension::Hardness => &[Unit::RockwellC, Unit::Vickers, Unit::Brinell],
        Dimension::Stiffness => &[Unit::NewtonPerMicrometre],
        Dimension::Money => &[Unit::Currency],
        Dimension::Share => &[Unit::Percent],
        Dimension::Count => &[Unit::Piece],
        Dimension::Temperature => &[Unit::Celsius, Unit::Fahrenheit],
    }
}

fn first_unit(dimension: Dimension) -> Unit {
    let first = units(dimension).first();
    first.copied().unwrap_or(Unit::Millimetre)
}

/// A field that always holds a number.
impl<Q: Typed, const VERSION: u8> Read<VERSION> for Entered<Q> {
    fn read(from: &mut Reader<'_>) -> Self {
        let entered = read(Q::DIMENSION, from).and_then(Self::new);
        entered.unwrap_or_else(|| {
            from.fail();
            Self::plain(0, 0, first_unit(Q::DIMENSION))
        })
    }
}

impl<Q: Typed> Write for Entered<Q> {
    fn write(&self, to: &mut Writer) -> Option<()> {
        write(Some(self.entry()), to)
    }
}

/// A field that may be empty.
impl<Q: Typed, const VERSION: u8> Read<VERSION> for Option<Entered<Q>> {
    fn read(from: &mut Reader<'_>) -> Self {
        read(Q::DIMENSION, from).and_then(Entered::new)
    }
}

impl<Q: Typed> Write for Option<Entered<Q>> {
    fn write(&self, to: &mut Writer) -> Option<()> {
        write(self.as_ref().map(Entered::entry), to)
    }
}

// One copy, as of reading.
#[inline(never)]
fn write(entry: Option<&Entry>, to: &mut Writer) -> Option<()> {
    match entry.map(Entry::terms) {
        None => to.byte(EMPTY),
        Some([term]) => write_term(term, to)?,
        Some(terms) => {
            let count = u8::try_from(terms.len()).ok()?;
            to.byte(SUM | count << 4);
            for term in terms {
                write_term(term, to)?;
            }
        }
    }
    Some(())
}

fn write_term(term: &Term, to: &mut Writer) -> Option<()> {
    let mut units = units(term.unit.dimension()).iter();
    let unit = u8::try_from(units.position(|unit| *unit == term.unit)?).ok()?;
    let sign = if term.negative { NEGATIVE } else { 0 };
    let unit_and_sign = unit << 4 | sign;
    match term.number {
        Number::Decimal { digits, decimals } => {
            to.byte(decimals | unit_and_sign);
            to.whole(digits);
        }
        Number::Fraction {
            whole,
            numerator,
            denominator,
        } => {
            if whole == 0 {
                to.byte(FRACTION | unit_and_sign);
            } else {
                to.byte(MIXED | unit_and_sign);
                to.whole(whole.into());
            }
            to.whole(numerator.into());
            to.whole(denominator.into());
        }
    }
    Some(())
}

/// The next number; `None` for an empty field, and when reading failed.
// It stands in each of some sixty fields: one copy of it is enough.
#[inline(never)]
fn read(dimension: Dimension, from: &mut Reader<'_>) -> Option<Entry> {
    let tag = from.byte();
    if tag == EMPTY {
        return None;
    }
    let entry = read_terms(tag, dimension, from).and_then(Entry::from_terms);
    if entry.is_none() {
        from.fail();
    }
    entry
}

fn read_terms(tag: u8, dimension: Dimension, from: &mut Reader<'_>) -> Option<Vec<Term>> {
    match (tag & SHAPE, tag >> 4) {
        (SUM, count @ 2..) if usize::from(count) <= Entry::MOST_TERMS => {
            let mut terms = Vec::with_capacity(usize::from(count));
            for _ in 0..count {
                let tag = from.byte();
                terms.push(read_term(tag, dimension, from)?);
            }
            Some(terms)
        }
        _ => Some(vec![read_term(tag, dimension, from)?]),
    }
}

fn read_term(tag: u8, dimension: Dimension, from: &mut Reader<'_>) -> Option<Term> {
    let unit = units(dimension).get(usize::from((tag & !NEGATIVE) >> 4))?;
    let number = match tag & SHAPE {
        decimals @ 0..=Number::MOST_DECIMALS => Number::Decimal {
            digits: from.whole(),
            decimals,
        },
        FRACTION => fraction(0, from),
        MIXED => match small(from) {
            // Without a whole number it is a fraction, which has its own shape.
            0 => return None,
            whole => fraction(whole, from),
        },
        _ => return None,
    };
    Some(Term {
        negative: tag & NEGATIVE != 0,
        number,
        unit: *unit,
    })
}

fn fraction(whole: u16, from: &mut Reader<'_>) -> Number {
    Number::Fraction {
        whole,
        numerator: small(from),
        denominator: small(from),
    }
}

fn small(from: &mut Reader<'_>) -> u16 {
    let small = u16::try_from(from.whole()).ok();
    from.must(small)
}
