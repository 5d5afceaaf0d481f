//! Reading what a person typed: `25`, `25,4`, `1"`, `1 3/8 in`, `31.2-0.4 mm`.
//!
//! A comma and a point are both decimal marks; there is no thousands mark but a thin or non-breaking space.
//! What could be meant in two ways is an error that names the place, never a guess.

use super::entry::{Entry, Number, Term};
use super::read_error::{MOST_CHARACTERS, ReadError, ReadErrorKind};
use super::unit::{Dimension, Unit};
use crate::letter::is_letter;

/// The longest text in a file. What was typed without spaces grows when it is written: eight terms of the most
/// digits, each with a unit and spaced signs, are 216 characters.
const MOST_WRITTEN: usize = 256;

/// Reads a typed text as an entry of `dimension`; a bare number takes `unit`, or is refused when that is `None`.
///
/// A unit behind the last term counts for all terms before it that have none: `31.2-0.4 in` is all inches.
///
/// # Errors
/// Every way of [`ReadErrorKind`], with its place.
pub fn read(text: &str, dimension: Dimension, unit: Option<Unit>) -> Result<Entry, ReadError> {
    read_bounded(text, dimension, unit, MOST_CHARACTERS)
}

/// Reads an entry as [`Entry`] writes it, each number with its unit.
pub(super) fn read_written(text: &str, dimension: Dimension) -> Result<Entry, ReadError> {
    read_bounded(text, dimension, None, MOST_WRITTEN)
}

fn read_bounded(
    text: &str,
    dimension: Dimension,
    unit: Option<Unit>,
    most: usize,
) -> Result<Entry, ReadError> {
    // Bounded before anything is copied, so that a pasted novel costs nothing.
    let characters: Vec<char> = text.chars().take(most + 1).map(plain).collect();
    if characters.len() > most {
        return Err(ReadError {
            kind: ReadErrorKind::TooLong,
            at: most,
        });
    }
    let terms = Reader {
        characters: &characters,
        at: 0,
        dimension,
    }
    .sum()?;
    resolve_units(terms, unit)
}

/// One written form for each character that has several.
fn plain(character: char) -> char {
    match character {
        '\u{2212}' | '\u{2010}'..='\u{2013}' => '-',
        '\u{2033}' | '\u{201d}' | '\u{201c}' => '"',
        '\u{2044}' | '\u{2215}' => '/',
        // Non-breaking, narrow, figure and thin spaces may stand between groups of digits.
        '\u{a0}' | '\u{202f}' | '\u{2007}' | '\u{2008}' | '\u{2009}' => THIN,
        '\t' => ' ',
        '\u{3bc}' => 'µ',
        other => other,
    }
}

/// The one stand-in for every space that does not end a number.
const THIN: char = '\u{2009}';

/// A term as read, before it is known which unit counts.
struct RawTerm {
    negative: bool,
    number: Number,
    unit: Option<Unit>,
    at: usize,
}

struct Reader<'a> {
    characters: &'a [char],
    at: usize,
    dimension: Dimension,
}

impl Reader<'_> {
    fn peek(&self) -> Option<char> {
        self.characters.get(self.at).copied()
    }

    fn peek_after(&self, offset: usize) -> Option<char> {
        self.characters.get(self.at + offset).copied()
    }

    fn error<T>(&self, kind: ReadErrorKind) -> Result<T, ReadError> {
        self.error_at(self.at, kind)
    }

    #[expect(clippy::unused_self, reason = "reads beside `error`")]
    fn error_at<T>(&self, at: usize, kind: ReadErrorKind) -> Result<T, ReadError> {
        Err(ReadError { kind, at })
    }

    fn skip_spaces(&mut self) {
        while matches!(self.peek(), Some(' ' | THIN)) {
            self.at += 1;
        }
    }

    fn sum(mut self) -> Result<Vec<RawTerm>, ReadError> {
        self.skip_spaces();
        if self.peek().is_none() {
            return self.error_at(0, ReadErrorKind::Empty);
        }
        let mut terms = Vec::new();
        let mut negative = self.take_sign().unwrap_or(false);
        loop {
            self.skip_spaces();
            if terms.len() == Entry::MOST_TERMS {
                return self.error(ReadErrorKind::TooManyTerms);
            }
            let term = self.term(negative)?;
            terms.push(term);
            self.skip_spaces();
            let Some(character) = self.peek() else {
                return Ok(terms);
            };
            // What cannot be added ends with its first number.
            let adds = 1 < self.dimension.most_terms();
            let Some(next_negative) = adds.then(|| self.take_sign()).flatten() else {
                return self.error(ReadErrorKind::Unexpected(character));
            };
            negative = next_negative;
        }
    }

    /// Takes a plus or minus; true for a minus.
    fn take_sign(&mut self) -> Option<bool> {
        let negative = match self.peek()? {
            '+' => false,
            '-' => true,
            _ => return None,
        };
        self.at += 1;
        Some(negative)
    }

    fn term(&mut self, negative: bool) -> Result<RawTerm, ReadError> {
        let at = self.at;
        let number = self.number()?;
        self.refuse_hyphenated_fraction(number)?;
        self.skip_spaces();
        let unit = self.unit()?;
        Ok(RawTerm {
            negative,
            number,
            unit,
            at,
        })
    }

    fn number(&mut self) -> Result<Number, ReadError> {
        if let Some((numerator, denominator)) = self.peek().and_then(written_fraction) {
            self.at += 1;
            return Ok(Number::Fraction {
                whole: 0,
                numerator,
                denominator,
            });
        }
        let start = self.at;
        let (whole, count) = self.digits(0, true)?;
        match self.peek() {
            Some('.' | ',') => self.decimals(start, whole, count),
            _ if count == 0 => self.no_number(),
            Some('/') if self.peek_after(1).is_some_and(|c| c.is_ascii_digit()) => {
                self.fraction(start, 0, whole)
            }
            Some('/') if self.dimension == Dimension::Length => {
                self.at += 1;
                self.error(ReadErrorKind::ZeroDenominator)
            }
            _ => self.mixed_or_whole(start, whole),
        }
    }

    /// Says that a number is missing, or names the character that stands in its place.
    fn no_number<T>(&self) -> Result<T, ReadError> {
        match self.peek() {
            None | Some('+' | '-') => self.error(ReadErrorKind::NumberMissing),
            Some(other) if is_letter(other) => self.error(ReadErrorKind::UnknownUnit(self.word())),
            Some(other) => self.error(ReadErrorKind::Unexpected(other)),
        }
    }

    /// Digits from here on, added behind `value`; in `grouped` ones a thin space may part threes.
    fn digits(&mut self, mut value: u64, grouped: bool) -> Result<(u64, usize), ReadError> {
        let mut count = 0;
        loop {
            match self.peek() {
                Some(digit) if digit.is_ascii_digit() => {
                    count += 1;
                    value = value
                        .saturating_mul(10)
                        .saturating_add(u64::from(digit.to_digit(10).unwrap_or(0)));
                    if value >= 10_u64.pow(15) {
                        return self.error(ReadErrorKind::TooManyDigits);
                    }
                    self.at += 1;
                }
                Some(THIN) if grouped && count > 0 && self.is_group() => self.at += 1,
                _ => return Ok((value, count)),
            }
        }
    }

    /// Whether exactly three digits follow the space here, and no fraction bar behind them.
    fn is_group(&self) -> bool {
        let digit = |offset| self.peek_after(offset).is_some_and(|c| c.is_ascii_digit());
        digit(1) && digit(2) && digit(3) && !digit(4) && self.peek_after(4) != Some('/')
    }

    fn decimals(&mut self, start: usize, whole: u64, count: usize) -> Result<Number, ReadError> {
        self.at += 1;
        let (digits, decimals) = self.digits(whole, false)?;
        if count == 0 && decimals == 0 {
            return self.error_at(start, ReadErrorKind::NumberMissing);
        }
        if matches!(self.peek(), Some('.' | ',')) {
            return self.error(ReadErrorKind::SecondMark);
        }
        match u8::try_from(decimals) {
            Ok(decimals) if decimals <= Number::MOST_DECIMALS => {
                self.refuse_second_number()?;
                Ok(Number::Decimal { digits, decimals })
            }
            _ => self.error_at(start, ReadErrorKind::TooManyDigits),
        }
    }

    /// The fraction whose numerator was just read; the bar stands here.
    fn fraction(&mut self, start: usize, whole: u64, top: u64) -> Result<Number, ReadError> {
        self.at += 1;
        let below = self.at;
        let (bottom, _) = self.digits(0, false)?;
        if bottom == 0 {
            return self.error_at(below, ReadErrorKind::ZeroDenominator);
        }
        let parts = (
            u16::try_from(whole),
            u16::try_from(top),
            u16::try_from(bottom),
        );
        let (Ok(whole), Ok(numerator), Ok(denominator)) = parts else {
            return self.error_at(start, ReadErrorKind::FractionTooLarge);
        };
        self.refuse_second_number()?;
        Ok(Number::Fraction {
            whole,
            numerator,
            denominator,
        })
    }

    /// A whole number, or the mixed number that it begins.
    fn mixed_or_whole(&mut self, start: usize, whole: u64) -> Result<Number, ReadError> {
        let behind = self.at;
        self.skip_spaces();
        if let Some((numerator, denominator)) = self.peek().and_then(written_fraction) {
            self.at += 1;
            let Ok(whole) = u16::try_from(whole) else {
                return self.error_at(start, ReadErrorKind::FractionTooLarge);
            };
            return Ok(Number::Fraction {
                whole,
                numerator,
                denominator,
            });
        }
        if self.at > behind && self.peek().is_some_and(|c| c.is_ascii_digit()) {
            let second = self.at;
            let (top, _) = self.digits(0, false)?;
            if self.peek() == Some('/') {
                return self.fraction(start, whole, top);
            }
            return self.error_at(second, ReadErrorKind::TwoNumbers);
        }
        self.at = behind;
        Ok(Number::Decimal {
            digits: whole,
            decimals: 0,
        })
    }

    /// `25.4 3` and `3/8 5` are two numbers, whatever was meant.
    fn refuse_second_number(&mut self) -> Result<(), ReadError> {
        let behind = self.at;
        self.skip_spaces();
        if self.peek().is_some_and(|c| c.is_ascii_digit()) {
            return self.error(ReadErrorKind::TwoNumbers);
        }
        self.at = behind;
        Ok(())
    }

    /// `1-3/8` without spaces or units is written for both 1 3/8 and 1 less 3/8.
    fn refuse_hyphenated_fraction(&self, number: Number) -> Result<(), ReadError> {
        let whole = matches!(number, Number::Decimal { decimals: 0, .. });
        if !whole || self.peek() != Some('-') {
            return Ok(());
        }
        let rest = self.characters.get(self.at + 1..).unwrap_or(&[]);
        let top = rest.iter().take_while(|c| c.is_ascii_digit()).count();
        let fraction = (top > 0 && rest.get(top) == Some(&'/'))
            || rest.first().copied().and_then(written_fraction).is_some();
        if fraction {
            return self.error(ReadErrorKind::HyphenOrMinus);
        }
        Ok(())
    }

    fn word(&self) -> String {
        self.characters
            .get(self.at..)
            .unwrap_or(&[])
            .iter()
            .take_while(|&&c| !matches!(c, ' ' | '+' | '-' | THIN))
            .collect()
    }

    fn unit(&mut self) -> Result<Option<Unit>, ReadError> {
        match self.peek() {
            None | Some('+' | '-') => return Ok(None),
            Some(_) => {}
        }
        let word = self.word();
        let lower = word.to_ascii_lowercase();
        let known = spellings(self.dimension)
            .iter()
            .find(|(spelling, _)| *spelling == lower);
        if let Some((_, unit)) = known {
            self.at += word.chars().count();
            return Ok(Some(*unit));
        }
        match word.chars().next() {
            Some(first) if !(is_letter(first) || first == '"' || first == '\'') => {
                self.error(ReadErrorKind::Unexpected(first))
            }
            _ => self.error(ReadErrorKind::UnknownUnit(word)),
        }
    }
}

/// The fractions that have a character of their own.
fn written_fraction(character: char) -> Option<(u16, u16)> {
    Some(match character {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        _ => return None,
    })
}

/// Every spelling of a unit that is taken, in lower case.
fn spellings(dimension: Dimension) -> &'static [(&'static str, Unit)] {
    match dimension {
        Dimension::Length => &[
            ("mm", Unit::Millimetre),
            ("cm", Unit::Centimetre),
            ("m", Unit::Metre),
            ("µm", Unit::Micrometre),
            ("um", Unit::Micrometre),
            ("\"", Unit::Inch),
            ("''", Unit::Inch),
            ("in", Unit::Inch),
            ("in.", Unit::Inch),
            ("inch", Unit::Inch),
            ("inches", Unit::Inch),
            ("thou", Unit::Thou),
        ],
        Dimension::Speed => &[
            ("m/min", Unit::MetrePerMinute),
            ("ft/min", Unit::FootPerMinute),
            ("fpm", Unit::FootPerMinute),
        ],
        Dimension::Feed => &[
            ("mm/rev", Unit::MillimetrePerRevolution),
            ("mm/r", Unit::MillimetrePerRevolution),
            ("mm", Unit::MillimetrePerRevolution),
            ("in/rev", Unit::InchPerRevolution),
            ("in/r", Unit::InchPerRevolution),
            ("in", Unit::InchPerRevolution),
            ("\"", Unit::InchPerRevolution),
        ],
        Dimension::Time => &[
            ("s", Unit::Second),
            ("sec", Unit::Second),
            ("min", Unit::Minute),
        ],
        Dimension::Rotation => &[
            ("rpm", Unit::RevolutionPerMinute),
            ("rev/min", Unit::RevolutionPerMinute),
            ("/min", Unit::RevolutionPerMinute),
        ],
        Dimension::Angle => &[("°", Unit::Degree), ("deg", Unit::Degree)],
        Dimension::Taper => &[(":1", Unit::ToOne)],
        Dimension::Force => &[
            ("n", Unit::Newton),
            ("kn", Unit::Kilonewton),
            ("lbf", Unit::PoundForce),
            ("lb", Unit::PoundForce),
        ],
        Dimension::Torque => &[
            ("n·m", Unit::NewtonMetre),
            ("nm", Unit::NewtonMetre),
            ("lbf·ft", Unit::PoundFoot),
            ("lbft", Unit::PoundFoot),
            ("ftlb", Unit::PoundFoot),
        ],
        Dimension::Power => &[
            ("w", Unit::Watt),
            ("kw", Unit::Kilowatt),
            ("hp", Unit::Horsepower),
        ],
        Dimension::Hardness => &[
            ("hrc", Unit::RockwellC),
            ("hv", Unit::Vickers),
            ("hbw", Unit::Brinell),
            ("hb", Unit::Brinell),
        ],
        Dimension::Stiffness => &[
            ("n/µm", Unit::NewtonPerMicrometre),
            ("n/um", Unit::NewtonPerMicrometre),
        ],
        Dimension::Money => &[("¤", Unit::Currency)],
        Dimension::Share => &[("%", Unit::Percent)],
        Dimension::Count => &[("pcs", Unit::Piece)],
        Dimension::Temperature => &[
            ("°c", Unit::Celsius),
            ("c", Unit::Celsius),
            ("°f", Unit::Fahrenheit),
            ("f", Unit::Fahrenheit),
        ],
    }
}

/// Gives each bare term its unit.
fn resolve_units(terms: Vec<RawTerm>, in_use: Option<Unit>) -> Result<Entry, ReadError> {
    let named: Vec<Unit> = terms.iter().filter_map(|term| term.unit).collect();
    let last_named = terms.last().and_then(|term| term.unit);
    let one_behind_all = last_named.filter(|_| named.len() == 1);
    let mut resolved = Vec::with_capacity(terms.len());
    for term in terms {
        let unit = match (term.unit, one_behind_all, in_use) {
            (Some(unit), _, _) | (None, Some(unit), _) => unit,
            (None, None, Some(unit)) if named.iter().all(|other| *other == unit) => unit,
            (None, None, Some(_)) => {
                return Err(ReadError {
                    kind: ReadErrorKind::UnitUnclear,
                    at: term.at,
                });
            }
            (None, None, None) => {
                return Err(ReadError {
                    kind: ReadErrorKind::UnitMissing,
                    at: term.at,
                });
            }
        };
        resolved.push(Term {
            negative: term.negative,
            number: term.number,
            unit,
        });
    }
    Entry::from_terms(resolved).ok_or(ReadError {
        kind: ReadErrorKind::Empty,
        at: 0,
    })
}
