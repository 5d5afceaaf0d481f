//! A link that came by mail or chat: what was put into it or around it on its way is left aside.
//!
//! | on its way | what is done |
//! | --- | --- |
//! | percent signs, also those of percent signs | decoded, up to three times |
//! | an address or words before it | the link begins behind `#` |
//! | line breaks, spaces, `>` and `\|` of a quoted mail, `<` `>` around it, `=` at the end of a line | left out |
//! | characters that nobody sees, such as breaks without width | left out |
//! | a full stop, a bracket, any other sign behind it | the link ends before it |
//! | words behind it | the link ends where its checksum says so |
//!
//! Words are made of the letters of links. So a text with gaps may end at any of them, and each end is tried: the first
//! ones and the last ones, [`MOST_TRIES`] in all. Nothing is accepted but what its checksum proves. A damaged link passes
//! one try by chance once in 2³² times, and must then still be a whole job in its one form.
//!
//! A text with two links to different jobs is an error, also where one of them is damaged: it would open the other one,
//! and nobody would know. A link that is shown cut short beside itself is no second link.

use std::borrow::Cow;

use super::{LinkError, MOST_CHARACTERS};

/// Longest text that is looked through for a link, in bytes: the longest link with as much again around it.
pub const MOST_AROUND: usize = 2 * MOST_CHARACTERS;

/// Most ends that are tried for one beginning; half of them from the front.
const MOST_TRIES: usize = 64;

/// How often a text is freed of percent signs.
const MOST_ROUNDS: usize = 3;

/// What has a piece as long as this was meant as a link; words and numbers behind a `#` are shorter.
const LINK_LIKE: usize = 24;

/// What is in a text, `exact` being what reads a link with nothing around it.
pub(super) fn decode<T: PartialEq>(
    text: &str,
    exact: fn(&str) -> Result<T, LinkError>,
) -> Result<T, LinkError> {
    if MOST_AROUND < text.len() {
        return Err(LinkError::TooLong);
    }
    let text = without_percent(text);
    let tails = text.split('#').skip(usize::from(text.contains('#')));
    let mut sound: Option<(String, T)> = None;
    let mut damaged: Vec<String> = Vec::new();
    // The most likely reason: of what looks most like a link.
    let mut reason = (0, LinkError::Empty);
    for tail in tails {
        let found = Found::at(tail);
        match (found.read(exact), &sound) {
            (Err(error), _) => {
                let longest = found.longest_piece();
                if LINK_LIKE <= longest {
                    damaged.push(found.first_piece().to_owned());
                }
                if reason.0 <= longest && (reason.1 == LinkError::Empty || reason.0 < longest) {
                    reason = (longest, error);
                }
            }
            (Ok((_, job)), Some((_, other))) if job != *other => return Err(LinkError::Several),
            (Ok((code, job)), _) => sound = Some((code.to_owned(), job)),
        }
    }
    let (code, job) = sound.ok_or(reason.1)?;
    if damaged.iter().all(|piece| code.starts_with(piece.as_str())) {
        Ok(job)
    } else {
        Err(LinkError::Several)
    }
}

/// What may be a link, its pieces joined.
struct Found {
    code: String,
    /// Where each piece ends.
    ends: Vec<usize>,
    /// Whether there was nothing at all.
    nothing: bool,
}

impl Found {
    /// What stands at the front of a text.
    fn at(tail: &str) -> Self {
        let mut code = String::new();
        let mut ends = Vec::new();
        let mut in_gap = false;
        for character in tail.chars() {
            match Sign::of(character) {
                Sign::Code => {
                    if in_gap && !code.is_empty() {
                        ends.push(code.len());
                    }
                    in_gap = false;
                    code.push(character);
                }
                Sign::Gap => in_gap = true,
                Sign::Unseen => {}
                Sign::End => break,
            }
        }
        ends.push(code.len());
        let nothing = tail.trim().is_empty();
        Self {
            code,
            ends,
            nothing,
        }
    }

    /// The link and its job.
    fn read<T>(&self, exact: fn(&str) -> Result<T, LinkError>) -> Result<(&str, T), LinkError> {
        if self.code.is_empty() {
            return Err(if self.nothing {
                LinkError::Empty
            } else {
                LinkError::NotALink
            });
        }
        let first = self.ends.iter().take(MOST_TRIES / 2);
        let last = self.ends.iter().skip(MOST_TRIES / 2).rev();
        let mut reason = None;
        for end in first.chain(last.take(MOST_TRIES / 2)) {
            let code = self.code.get(..*end).unwrap_or_default();
            match exact(code) {
                Ok(job) => return Ok((code, job)),
                // Another end may mend these; words behind digits are no link.
                Err(error @ (LinkError::Damaged | LinkError::TooLong | LinkError::NotALink)) => {
                    reason = reason.or(Some(error));
                }
                Err(error) => return Err(error),
            }
        }
        Err(reason.unwrap_or(LinkError::Damaged))
    }

    fn first_piece(&self) -> &str {
        let end = self.ends.first().copied().unwrap_or_default();
        self.code.get(..end).unwrap_or_default()
    }

    fn longest_piece(&self) -> usize {
        let starts = core::iter::once(&0).chain(&self.ends);
        let lengths = self.ends.iter().zip(starts).map(|(end, start)| end - start);
        lengths.max().unwrap_or_default()
    }
}

/// What a character is to a link.
enum Sign {
    /// A character of links.
    Code,
    /// Left out; the link may end before it.
    Gap,
    /// Left out.
    Unseen,
    /// The end of the link.
    End,
}

impl Sign {
    fn of(character: char) -> Self {
        match character {
            'a'..='z' | 'A'..='Z' | '0'..='9' | '-' | '_' => Self::Code,
            '<' | '>' | '=' | '|' => Self::Gap,
            // The soft hyphen, spaces and joiners without width, marks of direction, the mark of byte order.
            '\u{ad}'
            | '\u{200b}'..='\u{200f}'
            | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{2069}'
            | '\u{feff}' => Self::Unseen,
            other if other.is_whitespace() => Self::Gap,
            _ => Self::End,
        }
    }
}

/// A text with its percent signs decoded (RFC 3986, section 2.1), and those that they stood for.
fn without_percent(text: &str) -> Cow<'_, str> {
    let mut text = Cow::Borrowed(text);
    for _ in 0..MOST_ROUNDS {
        match decoded(text.as_bytes()) {
            Some(plain) => text = Cow::Owned(plain),
            None => break,
        }
    }
    text
}

/// The text without its percent signs; `None` where there is none to decode. What is no UTF-8 then, which no link is,
/// becomes a mark at which a link ends.
fn decoded(text: &[u8]) -> Option<String> {
    let mut found = false;
    let mut plain = Vec::with_capacity(text.len());
    let mut rest = text;
    while let Some((first, behind)) = rest.split_first() {
        let byte = match behind {
            [high, low, ..] if *first == b'%' => hex(*high).zip(hex(*low)),
            _ => None,
        };
        if let Some((high, low)) = byte {
            found = true;
            plain.push(high << 4 | low);
            rest = behind.get(2..).unwrap_or_default();
        } else {
            plain.push(*first);
            rest = behind;
        }
    }
    found.then(|| String::from_utf8_lossy(&plain).into_owned())
}

fn hex(digit: u8) -> Option<u8> {
    match digit {
        b'0'..=b'9' => Some(digit - b'0'),
        b'a'..=b'f' => Some(digit - b'a' + 10),
        b'A'..=b'F' => Some(digit - b'A' + 10),
        _ => None,
    }
}

#[cfg(test)]
#[path = "clean_tests.rs"]
mod tests;
