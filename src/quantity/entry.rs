//! A quantity as a person typed it: digits, decimals, fractions and unit, kept to the letter.
//!
//! A link carries these, so that the part's owner sees the figure that the machinist typed.

use core::fmt;
use core::marker::PhantomData;

use super::read::{read, read_written};
use super::read_error::ReadError;
use super::unit::{Dimension, Unit};
use super::units::{
    Angle, Count, Feed, Force, Hardness, Length, Money, Power, RotationalSpeed, Share, Speed,
    Stiffness, TaperRatio, Temperature, Time, Torque,
};

/// One number as typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Number {
    /// `digits` without the mark, of which the last `decimals` stand behind it: 25.40 is 2540 and 2.
    Decimal {
        /// All digits as one whole number, at most fifteen digits.
        digits: u64,
        /// How many of them stand behind the decimal mark, at most nine.
        decimals: u8,
    },
    /// A fraction, with a whole number before it or not: 1 3/8.
    Fraction {
        /// The whole number before the fraction; 0 when there is none.
        whole: u16,
        /// Above the bar.
        numerator: u16,
        /// Below the bar, never 0.
        denominator: u16,
    },
}

impl Number {
    /// Most digits that a typed number may have: all of them are exact in a double.
    pub const MOST_DIGITS: usize = 15;
    /// Most digits behind the decimal mark.
    pub const MOST_DECIMALS: u8 = 9;

    #[expect(
        clippy::cast_precision_loss,
        reason = "at most fifteen digits, exact in a double"
    )]
    fn value(self) -> f64 {
        match self {
            // Dividing by the exact power of ten rounds once; multiplying by 0.1 would round twice.
            Self::Decimal { digits, decimals } => digits as f64 / 10_f64.powi(i32::from(decimals)),
            Self::Fraction {
                whole,
                numerator,
                denominator,
            } => f64::from(whole) + f64::from(numerator) / f64::from(denominator),
        }
    }

    /// Whether it keeps to the limits above.
    pub const fn is_valid(self) -> bool {
        match self {
            Self::Decimal { digits, decimals } => {
                digits < 1_000_000_000_000_000 && decimals <= Self::MOST_DECIMALS
            }
            Self::Fraction { denominator, .. } => denominator != 0,
        }
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Decimal {
                digits,
                decimals: 0,
            } => write!(f, "{digits}"),
            Self::Decimal { digits, decimals } => {
                let unit = 10_u64.pow(u32::from(decimals));
                let width = usize::from(decimals);
                write!(f, "{}.{:0width$}", digits / unit, digits % unit)
            }
            Self::Fraction {
                whole: 0,
                numerator,
                denominator,
            } => write!(f, "{numerator}/{denominator}"),
            Self::Fraction {
                whole,
                numerator,
                denominator,
            } => write!(f, "{whole} {numerator}/{denominator}"),
        }
    }
}

/// One term of a sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Term {
    /// Whether it is taken off.
    pub negative: bool,
    /// The number.
    pub number: Number,
    /// Its unit.
    pub unit: Unit,
}

/// A typed quantity of any dimension: one term or a sum of up to eight, all of one dimension.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    terms: Vec<Term>,
}

impl Entry {
    /// Most terms in a sum.
    pub const MOST_TERMS: usize = 8;

    /// From its terms; `None` when there is no term, more than [`Dimension::most_terms`], a number outside its limits, or
    /// two dimensions.
    pub fn from_terms(terms: Vec<Term>) -> Option<Self> {
        let dimension = terms.first()?.unit.dimension();
        let sound = terms.len() <= dimension.most_terms()
            && terms
                .iter()
                .all(|term| term.unit.dimension() == dimension && term.number.is_valid());
        sound.then_some(Self { terms })
    }

    /// The terms, at least one.
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// What it measures.
    pub fn dimension(&self) -> Dimension {
        self.unit().dimension()
    }

    /// The unit of the first term.
    pub fn unit(&self) -> Unit {
        self.terms
            .first()
            .map_or(Unit::Millimetre, |term| term.unit)
    }

    /// Whether it is one plain decimal number, so that there is nothing to work out.
    pub fn is_plain(&self) -> bool {
        matches!(
            self.terms.as_slice(),
            [Term {
                number: Number::Decimal { .. },
                ..
            }]
        )
    }

    /// The value in the base unit of its dimension; always finite.
    pub(crate) fn base_value(&self) -> f64 {
        self.terms
            .iter()
            .map(|term| {
                let size = term.number.value();
                term.unit.to_base(if term.negative { -size } else { size })
            })
            .sum()
    }

    /// A plain decimal entry of `value` in `unit`, rounded to `decimals` (at most nine).
    pub fn decimal(value: f64, decimals: u8, unit: Unit) -> Option<Self> {
        let decimals = decimals.min(Number::MOST_DECIMALS);
        let scaled = (value.abs() * 10_f64.powi(i32::from(decimals))).round();
        if !scaled.is_finite() || scaled >= 1e15 {
            return None;
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a whole number between 0 and 1e15"
        )]
        let digits = scaled as u64;
        Self::from_terms(vec![Term {
            negative: value < 0.0 && digits != 0,
            number: Number::Decimal { digits, decimals },
            unit,
        }])
    }
}

impl fmt::Display for Entry {
    /// As typed, in a plain form that reads back to the same entry: `31.2-0.4 mm`, `1 3/8 in`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let first = self.unit();
        let one_unit = self.terms.iter().all(|term| term.unit == first);
        for (index, term) in self.terms.iter().enumerate() {
            // Spaces round the sign keep `1 - 3/8` apart from the mixed number `1 3/8`.
            match (index, term.negative) {
                (0, true) => f.write_str("-")?,
                (0, false) => {}
                (_, true) => f.write_str(" - ")?,
                (_, false) => f.write_str(" + ")?,
            }
            write!(f, "{}", term.number)?;
            if !one_unit {
                write!(f, " {}", term.unit.sign())?;
            }
        }
        if one_unit {
            write!(f, " {}", first.sign())?;
        }
        Ok(())
    }
}

/// A quantity that a person can type.
pub trait Typed: Copy {
    /// What it measures.
    const DIMENSION: Dimension;
    /// From the base unit of the dimension.
    fn from_base(value: f64) -> Self;
    /// To the base unit of the dimension.
    fn to_base(self) -> f64;
}

macro_rules! typed {
    ($($name:ident, $make:ident, $read:ident, $dimension:ident;)*) => {$(
        impl Typed for $name {
            const DIMENSION: Dimension = Dimension::$dimension;
            fn from_base(value: f64) -> Self {
                Self::$make(value)
            }
            fn to_base(self) -> f64 {
                self.$read()
            }
        }
    )*};
}
typed! {
    Length, mm, to_mm, Length;
    Speed, m_per_min, to_m_per_min, Speed;
    Feed, mm_per_rev, to_mm_per_rev, Feed;
    Time, seconds, to_seconds, Time;
    RotationalSpeed, per_min, to_per_min, Rotation;
    Angle, degrees, to_degrees, Angle;
    TaperRatio, one_in, to_one_in, Taper;
    Force, newtons, to_newtons, Force;
    Torque, newton_metres, to_newton_metres, Torque;
    Power, watts, to_watts, Power;
    Hardness, hrc, to_hrc, Hardness;
    Stiffness, newtons_per_um, to_newtons_per_um, Stiffness;
    Money, of_currency, to_currency, Money;
    Share, of_whole, to_whole, Share;
    Count, pieces, to_pieces, Count;
    Temperature, celsius, to_celsius, Temperature;
}

/// An entry known to be of the dimension of `Q`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entered<Q> {
    entry: Entry,
    quantity: PhantomData<fn() -> Q>,
}

impl<Q: Typed> Entered<Q> {
    /// From an entry; `None` when it measures something else.
    pub fn new(entry: Entry) -> Option<Self> {
        (entry.dimension() == Q::DIMENSION).then_some(Self {
            entry,
            quantity: PhantomData,
        })
    }

    /// Reads what was typed, with `unit` for a bare number.
    ///
    /// # Errors
    /// Every way of [`ReadError`].
    pub fn read(text: &str, unit: Unit) -> Result<Self, ReadError> {
        let entry = read(text, Q::DIMENSION, Some(unit))?;
        Ok(Self {
            entry,
            quantity: PhantomData,
        })
    }

    /// A plain decimal number, for defaults and examples: 25.4 is 254 with one decimal.
    ///
    /// The unit must measure `Q`, and there must be no more than nine decimals.
    pub(crate) fn plain(digits: u32, decimals: u8, unit: Unit) -> Self {
        let digits = u64::from(digits);
        Self::one(Number::Decimal { digits, decimals }, unit)
    }

    /// A mixed number, for defaults and examples; the denominator must not be 0.
    pub(crate) fn mixed(whole: u16, numerator: u16, denominator: u16, unit: Unit) -> Self {
        let number = Number::Fraction {
            whole,
            numerator,
            denominator,
        };
        Self::one(number, unit)
    }

    /// A plain decimal number below zero, for defaults and examples.
    pub(crate) fn negative(digits: u32, decimals: u8, unit: Unit) -> Self {
        let mut entered = Self::plain(digits, decimals, unit);
        for term in &mut entered.entry.terms {
            term.negative = true;
        }
        entered
    }

    fn one(number: Number, unit: Unit) -> Self {
        debug_assert!(unit.dimension() == Q::DIMENSION, "a unit of another kind");
        debug_assert!(number.is_valid(), "a number outside its limits");
        let term = Term {
            negative: false,
            number,
            unit,
        };
        Self {
            entry: Entry { terms: vec![term] },
            quantity: PhantomData,
        }
    }

    /// The quantity that was typed.
    pub fn value(&self) -> Q {
        Q::from_base(self.entry.base_value())
    }

    /// How it was typed.
    pub fn entry(&self) -> &Entry {
        &self.entry
    }
}

impl<Q> serde::Serialize for Entered<Q> {
    /// As text with its unit: `"31.2 - 0.4 mm"`.
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.entry)
    }
}

impl<'de, Q: Typed> serde::Deserialize<'de> for Entered<Q> {
    /// From text that names its unit.
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let entry = read_written(&text, Q::DIMENSION).map_err(serde::de::Error::custom)?;
        Ok(Self {
            entry,
            quantity: PhantomData,
        })
    }
}
