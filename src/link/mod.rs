//! A whole job as the text behind `#` in an address, which a browser never sends to a server.
//!
//! The text is a version letter, then base64url without padding of the job's bytes and their checksum:
//!
//! ```text
//! c  base64url( body  CRC-32(letter, body), low byte first )
//! ```
//!
//! The body of version `c` is in [`v3`], those of the older `b` and `a` in [`v2`] and [`v1`]. Numbers travel as they
//! were typed (digits, decimals, unit), so that the part's owner sees the figures that the machinist typed, and an
//! ordinary job is about 150 characters long.
//!
//! # Adding a version
//! The binary form cannot grow by itself: one field more, and every older link would be read askew. A change of
//! the job that a link must carry is a new version:
//! 1. where there is only more to say, write a `v4.rs` that begins with what `v3.rs` has and puts its own behind it, as
//!    `v3.rs` does with `v2.rs`; else copy it whole, and leave the older ones and the layouts that they use as they are;
//! 2. have the older ones fill what they did not have with what it meant then;
//! 3. give [`encode`] the letter `d`, and [`decode`] one more arm;
//! 4. keep the files of `tests/links/`, and check in a `v4.txt` beside them.
//!
//! New materials, tools, threads and other rows at the end of their lists need no version: a link stores their
//! numbers, and an older program says [`LinkError::BeyondLimits`].

mod bytes;
mod choice;
mod kept;
mod number;
mod v1;
mod v2;
mod v3;

use core::fmt;

use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use data_encoding::BASE64URL_NOPAD;

pub use kept::{Kept, KeptTool, decode_kept, encode_kept};

use crate::job::Job;

/// The letter of the version that is written.
const VERSION: char = 'c';

/// Longest text that is read, in bytes. The largest job, with a sum of eight terms in every field, takes 43 320;
/// the largest without sums takes 6305.
pub const MOST_CHARACTERS: usize = 44_000;

/// Bytes of the checksum.
const CHECK: usize = 4;

/// Bit by bit: a table would cost the page more than it saves on so few bytes.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// Why a text is no job, or a job no text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkError {
    /// There is no text.
    Empty,
    /// The text is longer than [`MOST_CHARACTERS`].
    TooLong,
    /// The text was not made by this program: another beginning, or characters that it never writes.
    NotALink,
    /// The text comes from a newer release. Reloading the page may mend it.
    Newer {
        /// The letter of its version.
        version: char,
    },
    /// The text was cut or changed on its way. Sending it again mends it.
    Damaged,
    /// The text is whole, but holds something that this release does not know or take.
    BeyondLimits,
    /// A title, a name or a list of the job is too long to become a text.
    TooLarge,
}

impl LinkError {
    /// A short text for scripts, which never changes.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::TooLong => "too-long",
            Self::NotALink => "not-a-link",
            Self::Newer { .. } => "newer",
            Self::Damaged => "damaged",
            Self::BeyondLimits => "beyond-limits",
            Self::TooLarge => "too-large",
        }
    }
}

impl fmt::Display for LinkError {
    /// A plain sentence for scripts; the page has its own words.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("the link holds no job"),
            Self::TooLong => {
                write!(f, "the link is longer than {MOST_CHARACTERS} characters")
            }
            Self::NotALink => f.write_str("this is no link of this program"),
            Self::Newer { version } => write!(
                f,
                "the link is of version '{version}', newer than this program reads"
            ),
            Self::Damaged => f.write_str("the link was cut or changed on its way"),
            Self::BeyondLimits => {
                f.write_str("the link holds something that this program does not know")
            }
            Self::TooLarge => write!(
                f,
                "a link takes at most {} characters of title and {} of a name, {} sections, {} features, {} holes, \
                 {} further pieces of the head, {} speeds or feeds and {} pinned passes",
                Job::MOST_TITLE_CHARACTERS,
                Job::MOST_NAME_CHARACTERS,
                Job::MOST_SECTIONS,
                Job::MOST_FEATURES,
                Job::MOST_BORES,
                Job::MOST_HEAD_BEYOND,
                Job::MOST_GEARS,
                Job::MOST_PINS
            ),
        }
    }
}

impl core::error::Error for LinkError {}

/// The job as the text that stands behind `#`.
///
/// # Errors
/// [`LinkError::TooLarge`] when a title, a name or a list is longer than the job's form allows. Every other job has a
/// link.
///
/// # Example
/// ```
/// use skimwright::{job::Job, link};
/// let text = link::encode(&Job::default())?;
/// assert!(text.starts_with('c') && text.len() < 120);
/// assert_eq!(link::decode(&text)?, Job::default());
/// # Ok::<(), link::LinkError>(())
/// ```
pub fn encode(job: &Job) -> Result<String, LinkError> {
    let bytes = v3::write(job).ok_or(LinkError::TooLarge)?;
    Ok(wrap(VERSION, bytes))
}

/// The job in a text that [`encode`] made; white space around it, and an address up to `#`, are left aside.
///
/// # Errors
/// Every way of [`LinkError`] but the last. A text in which one character was changed or left out, or that was
/// cut, is always an error and never another job.
pub fn decode(text: &str) -> Result<Job, LinkError> {
    if text.len() > MOST_CHARACTERS {
        return Err(LinkError::TooLong);
    }
    let trimmed = text.trim();
    let code = trimmed
        .rsplit_once('#')
        .map_or(trimmed, |(_, behind)| behind);
    let mut letters = code.chars();
    match letters.next() {
        None => Err(LinkError::Empty),
        Some('a') => v1::read(&unwrap('a', letters.as_str())?).ok_or(LinkError::BeyondLimits),
        Some('b') => v2::read(&unwrap('b', letters.as_str())?).ok_or(LinkError::BeyondLimits),
        Some('c') => v3::read(&unwrap('c', letters.as_str())?).ok_or(LinkError::BeyondLimits),
        Some(version @ 'd'..='z') => Err(LinkError::Newer { version }),
        Some(_) => Err(LinkError::NotALink),
    }
}

/// The text of a body: its version letter, then the body with its checksum.
fn wrap(version: char, mut bytes: Vec<u8>) -> String {
    let check = checksum(version, &bytes);
    bytes.extend_from_slice(&check);
    let mut text = String::from(version);
    BASE64URL_NOPAD.encode_append(&bytes, &mut text);
    text
}

/// The body of a text without its version letter, its checksum proved and taken off.
fn unwrap(version: char, text: &str) -> Result<Vec<u8>, LinkError> {
    let foreign = |letter: u8| !(letter.is_ascii_alphanumeric() || matches!(letter, b'-' | b'_'));
    if text.bytes().any(foreign) {
        return Err(LinkError::NotALink);
    }
    let mut bytes = BASE64URL_NOPAD
        .decode(text.as_bytes())
        .map_err(|_| LinkError::Damaged)?;
    let body = bytes.len().checked_sub(CHECK).ok_or(LinkError::Damaged)?;
    let check = bytes.split_off(body);
    if check == checksum(version, &bytes) {
        Ok(bytes)
    } else {
        Err(LinkError::Damaged)
    }
}

/// Over the version letter too, so that no body is ever read by the rules of another version.
fn checksum(version: char, body: &[u8]) -> [u8; CHECK] {
    let mut digest = CRC.digest();
    digest.update(version.encode_utf8(&mut [0; 4]).as_bytes());
    digest.update(body);
    digest.finalize().to_le_bytes()
}

#[cfg(test)]
mod frozen_tests;
#[cfg(test)]
mod tests;
