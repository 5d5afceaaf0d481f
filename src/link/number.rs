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

use core::fmt;
use core::marker::PhantomData;

use serde::de::{Deserializer, Error, SeqAccess, Visitor};
use serde::ser::{SerializeTuple, Serializer};

use crate::quantity::{Dimension, Entered, Entry, Number, Term, Typed, Unit};

const FRACTION: u8 = 10;
const MIXED: u8 = 11;
const EMPTY: u8 = 14;
const SUM: u8 = 15;
const SHAPE: u8 = 0b1111;
const NEGATIVE: u8 = 0b1000_0000;

/// Most parts of one number: the tag of a sum, and four of each term.
const MOST_PARTS: usize = 1 + 4 * Entry::MOST_TERMS;

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
        Dimension::Hardness => &[Unit::RockwellC],
    }
}

/// A field that always holds a number.
pub(super) mod filled {
    use super::{Deserializer, Entered, Error, Serializer, Typed, read, write};

    pub(in super::super) fn serialize<Q: Typed, S: Serializer>(
        entered: &Entered<Q>,
        serializer: S,
    ) -> Result<S::Ok, S::Error> {
        write(Some(entered.entry()), serializer)
    }

    pub(in super::super) fn deserialize<'de, Q: Typed, D: Deserializer<'de>>(
        deserializer: D,
    ) -> Result<Entered<Q>, D::Error> {
        read(deserializer)?.ok_or_else(|| D::Error::custom("a number is missing"))
    }
}

/// A field that may be empty.
pub(super) mod optional {
    use super::{Deserializer, Entered, Serializer, Typed, read, write};

    #[expect(
        clippy::ref_option,
        reason = "the form that serde calls a field's function with"
    )]
    pub(in super::super) fn serialize<Q: Typed, S: Serializer>(
        entered: &Option<Entered<Q>>,
        serializer: S,
    ) -> Result<S::Ok, S::Error> {
        write(entered.as_ref().map(Entered::entry), serializer)
    }

    pub(in super::super) fn deserialize<'de, Q: Typed, D: Deserializer<'de>>(
        deserializer: D,
    ) -> Result<Option<Entered<Q>>, D::Error> {
        read(deserializer)
    }
}

fn write<S: Serializer>(entry: Option<&Entry>, serializer: S) -> Result<S::Ok, S::Error> {
    let mut tuple = serializer.serialize_tuple(MOST_PARTS)?;
    match entry.map(Entry::terms) {
        None => tuple.serialize_element(&EMPTY)?,
        Some([term]) => write_term(term, &mut tuple)?,
        Some(terms) => {
            let count = u8::try_from(terms.len())
                .ok()
                .filter(|count| usize::from(*count) <= Entry::MOST_TERMS)
                .ok_or_else(|| serde::ser::Error::custom("too many terms"))?;
            tuple.serialize_element(&(SUM | count << 4))?;
            for term in terms {
                write_term(term, &mut tuple)?;
            }
        }
    }
    tuple.end()
}

fn write_term<T: SerializeTuple>(term: &Term, tuple: &mut T) -> Result<(), T::Error> {
    let unit = units(term.unit.dimension())
        .iter()
        .position(|unit| *unit == term.unit)
        .and_then(|place| u8::try_from(place).ok())
        .ok_or_else(|| serde::ser::Error::custom("a unit without a number"))?;
    let sign = if term.negative { NEGATIVE } else { 0 };
    let unit_and_sign = unit << 4 | sign;
    match term.number {
        Number::Decimal { digits, decimals } => {
            tuple.serialize_element(&(decimals | unit_and_sign))?;
            tuple.serialize_element(&digits)
        }
        Number::Fraction {
            whole,
            numerator,
            denominator,
        } => {
            if whole == 0 {
                tuple.serialize_element(&(FRACTION | unit_and_sign))?;
            } else {
                tuple.serialize_element(&(MIXED | unit_and_sign))?;
                tuple.serialize_element(&whole)?;
            }
            tuple.serialize_element(&numerator)?;
            tuple.serialize_element(&denominator)
        }
    }
}

fn read<'de, Q: Typed, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Option<Entered<Q>>, D::Error> {
    let entry = deserializer.deserialize_tuple(
        MOST_PARTS,
        EntryVisitor {
            dimension: Q::DIMENSION,
            lifetime: PhantomData,
        },
    )?;
    let Some(entry) = entry else {
        return Ok(None);
    };
    match Entered::new(entry) {
        Some(entered) => Ok(Some(entered)),
        None => Err(D::Error::custom("it measures something else")),
    }
}

/// Takes as many parts as the tag says, and no more.
struct EntryVisitor<'de> {
    dimension: Dimension,
    lifetime: PhantomData<&'de ()>,
}

impl<'de> Visitor<'de> for EntryVisitor<'de> {
    type Value = Option<Entry>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number as typed")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut parts: A) -> Result<Self::Value, A::Error> {
        let tag: u8 = part(&mut parts)?;
        let terms = match (tag & SHAPE, tag >> 4) {
            (EMPTY, 0) => return Ok(None),
            (SUM, count @ 2..) if usize::from(count) <= Entry::MOST_TERMS => {
                let mut terms = Vec::with_capacity(usize::from(count));
                for _ in 0..count {
                    let tag = part(&mut parts)?;
                    terms.push(read_term(tag, self.dimension, &mut parts)?);
                }
                terms
            }
            _ => vec![read_term(tag, self.dimension, &mut parts)?],
        };
        let entry = Entry::from_terms(terms);
        Ok(Some(entry.ok_or_else(|| {
            A::Error::custom("a number outside its limits")
        })?))
    }
}

fn part<'de, T: serde::Deserialize<'de>, A: SeqAccess<'de>>(parts: &mut A) -> Result<T, A::Error> {
    let part = parts.next_element()?;
    part.ok_or_else(|| A::Error::custom("a number that ends too soon"))
}

fn read_term<'de, A: SeqAccess<'de>>(
    tag: u8,
    dimension: Dimension,
    parts: &mut A,
) -> Result<Term, A::Error> {
    let unit = units(dimension)
        .get(usize::from((tag & !NEGATIVE) >> 4))
        .copied()
        .ok_or_else(|| A::Error::custom("no such unit"))?;
    let number = match tag & SHAPE {
        decimals @ 0..=Number::MOST_DECIMALS => Number::Decimal {
            digits: part(parts)?,
            decimals,
        },
        shape @ (FRACTION | MIXED) => {
            let whole = if shape == MIXED { part(parts)? } else { 0 };
            if shape == MIXED && whole == 0 {
                return Err(A::Error::custom("a mixed number without a whole one"));
            }
            Number::Fraction {
                whole,
                numerator: part(parts)?,
                denominator: part(parts)?,
            }
        }
        _ => return Err(A::Error::custom("no such number")),
    };
    Ok(Term {
        negative: tag & NEGATIVE != 0,
        number,
        unit,
    })
}
