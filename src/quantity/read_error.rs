//! Why a typed text is no quantity.

use core::fmt;

use super::entry::Entry;

/// Why a text is no quantity, and where: `at` counts characters from 0.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ReadError {
    /// What is wrong.
    pub kind: ReadErrorKind,
    /// The character where it is wrong, counted from 0.
    pub at: usize,
}

/// What is wrong with a typed text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ReadErrorKind {
    /// Nothing was typed.
    Empty,
    /// Longer than [`MOST_CHARACTERS`]; in a file, which may hold a long sum, longer than four times that.
    TooLong,
    /// A number is missing here.
    NumberMissing,
    /// A character that has no place here.
    Unexpected(char),
    /// A second decimal mark in one number.
    SecondMark,
    /// More digits than a shop can mean: fifteen in all, nine behind the mark.
    TooManyDigits,
    /// Two numbers with a space between that are no mixed number: one number or two?
    TwoNumbers,
    /// `1-3/8`: the mixed number 1 3/8, or 1 less 3/8?
    HyphenOrMinus,
    /// A fraction with nothing or 0 below the bar.
    ZeroDenominator,
    /// A part of a fraction above 65535.
    FractionTooLarge,
    /// Letters that are no unit of this kind of quantity.
    UnknownUnit(String),
    /// A number without a unit beside one with another unit than the one in use: which is meant?
    UnitUnclear,
    /// No unit, where the text must name one (files and the JavaScript interface).
    UnitMissing,
    /// More terms than [`Entry::MOST_TERMS`].
    TooManyTerms,
}

/// The longest text that is read.
pub const MOST_CHARACTERS: usize = 64;

impl fmt::Display for ReadError {
    /// A plain sentence for files and scripts; the page has its own words.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use ReadErrorKind as Kind;
        match &self.kind {
            Kind::Empty => f.write_str("nothing was typed")?,
            Kind::TooLong => write!(f, "more than {} characters", self.at)?,
            Kind::NumberMissing => f.write_str("a number is missing")?,
            Kind::Unexpected(found) => write!(f, "'{found}' has no place here")?,
            Kind::SecondMark => f.write_str("a second decimal mark")?,
            Kind::TooManyDigits => f.write_str("too many digits")?,
            Kind::TwoNumbers => f.write_str("two numbers with a space between")?,
            Kind::HyphenOrMinus => f.write_str("a mixed number or a difference? add spaces")?,
            Kind::ZeroDenominator => f.write_str("nothing below the fraction bar")?,
            Kind::FractionTooLarge => f.write_str("the fraction is too large")?,
            Kind::UnknownUnit(unit) => write!(f, "'{unit}' is no unit here")?,
            Kind::UnitUnclear => f.write_str("this number needs its own unit")?,
            Kind::UnitMissing => f.write_str("the unit is missing")?,
            Kind::TooManyTerms => write!(f, "more than {} terms", Entry::MOST_TERMS)?,
        }
        write!(f, " (character {})", self.at + 1)
    }
}

impl core::error::Error for ReadError {}
