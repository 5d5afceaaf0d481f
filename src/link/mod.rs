//! A whole job as the text behind `#` in an address, which a browser never sends to a server.
//!
//! The text is a version letter, then base64url without padding of the job's bytes and their checksum:
//!
//! ```text
//! d  base64url( body  CRC-32(letter, body), low byte first )
//! ```
//!
//! For a QR code it is written with decimal digits instead, as [`digits`] says, and `clean.rs` finds it in what came by
//! mail or chat. The body of version `d` is in [`v4`], those of the older `c`, `b` and `a` in [`v3`], [`v2`] and [`v1`].
//! Numbers travel as they were typed (digits, decimals, unit), so that the part's owner sees the figures that the
//! machinist typed, and an ordinary job is about 150 characters long.
//!
//! What a browser keeps is the same text; only it may be longer than what is given away, for a long record.
//!
//! # Adding a version
//! The binary form cannot grow by itself: one field more, and every older link would be read askew. A change of
//! the job that a link must carry is a new version:
//! 1. where there is only more to say, write a `v5.rs` that begins with what `v4.rs` has and puts its own behind it, as
//!    `v4.rs` does with `v3.rs`; else copy it whole, and leave the older ones and the layouts that they use as they are;
//! 2. have the older ones fill what they did not have with what it meant then;
//! 3. give [`encode`] the letter `e`, and [`decode`] one more arm;
//! 4. keep the files of `tests/links/`, and check in a `v5.txt` beside them.
//!
//! New materials, tools, threads and other rows at the end of their lists need no version: a link stores their
//! numbers, and an older program says [`LinkError::BeyondLimits`].

mod bytes;
mod choice;
mod clean;
mod digits;
mod events;
mod kept;
mod lines;
mod number;
mod owner;
mod v1;
mod v2;
mod v3;
mod v4;

use core::fmt;

use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use data_encoding::BASE64URL_NOPAD;

pub use clean::MOST_AROUND;
pub use digits::{encode_digits, in_digits};
pub use kept::{Kept, KeptTool, decode_kept, encode_kept};
pub use lines::{KeptJob, MOST_WORD_CHARACTERS, UnreadJob, is_word, read_lines, write_lines};
pub use owner::{encode_answer, encode_handed_back, encode_offer, offer_mark};

use crate::job::{Answered, FormVersion, Job, Learned, Moment, Record};
use crate::offer::Offer;

/// The letter of the version that is written.
const VERSION: char = 'd';

/// Longest text of a link, in bytes. The largest job without a record, with a sum of eight terms in every field, takes
/// 51 679; the largest without sums takes 8889.
pub const MOST_CHARACTERS: usize = 52_000;

/// Longest text of a job that is kept, in bytes. The largest, with the longest note in each of the most events, takes
/// 10 805 015.
pub const MOST_KEPT_CHARACTERS: usize = 11_000_000;

/// Bytes of the checksum.
const CHECK: usize = 4;

/// Bit by bit: a table would cost the page more than it saves on so few bytes.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// Why a text is no job, or a job no text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkError {
    /// There is no text.
    Empty,
    /// The text is longer than [`MOST_CHARACTERS`], or [`MOST_KEPT_CHARACTERS`] where it is kept: the record is too long
    /// for a link. A file takes it.
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
    /// The text holds more than one link, and they are not the same job.
    Several,
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
            Self::Several => "several",
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
            Self::TooLong => write!(
                f,
                "longer than a link may be, which is {MOST_CHARACTERS} characters, or {MOST_KEPT_CHARACTERS} where it is \
                 kept; a file takes a job of any length"
            ),
            Self::NotALink => f.write_str("this is no link of this program"),
            Self::Newer { version } => write!(
                f,
                "the link is of version '{version}', newer than this program reads"
            ),
            Self::Damaged => f.write_str("the link was cut or changed on its way"),
            Self::Several => f.write_str("the text holds more than one link: open one of them"),
            Self::BeyondLimits => {
                f.write_str("the link holds something that this program does not know")
            }
            Self::TooLarge => write!(
                f,
                "a link takes at most {} characters of title and {} of a name, {} sections, {} features, {} holes, \
                 {} further pieces of the head, {} speeds or feeds, {} pinned passes, {} instruments, {} paces, \
                 {} events and {} characters of a note",
                Job::MOST_TITLE_CHARACTERS,
                Job::MOST_NAME_CHARACTERS,
                Job::MOST_SECTIONS,
                Job::MOST_FEATURES,
                Job::MOST_BORES,
                Job::MOST_HEAD_BEYOND,
                Job::MOST_GEARS,
                Job::MOST_PINS,
                Job::MOST_INSTRUMENTS,
                Learned::MOST_PACES,
                Record::MOST_EVENTS,
                Record::MOST_NOTE_CHARACTERS
            ),
        }
    }
}

impl core::error::Error for LinkError {}

/// The job as the text that stands behind `#`.
///
/// # Errors
/// [`LinkError::TooLarge`] when a title, a name, a note or a list is longer than the job's form allows;
/// [`LinkError::TooLong`] when the text would be longer than [`MOST_CHARACTERS`], as only a long record makes it:
/// [`encode_without_record`] has a text for it. Every other job has a link.
///
/// # Example
/// ```
/// use skimwright::{job::Job, link};
/// let text = link::encode(&Job::default())?;
/// assert!(text.starts_with('d') && text.len() < 120);
/// assert_eq!(link::decode(&text)?, Job::default());
/// # Ok::<(), link::LinkError>(())
/// ```
pub fn encode(job: &Job) -> Result<String, LinkError> {
    encode_to(job, MOST_CHARACTERS)
}

/// The same without the record, which stays empty in whoever opens it.
///
/// # Errors
/// As [`encode`]; but the text is never too long.
pub fn encode_without_record(job: &Job) -> Result<String, LinkError> {
    // Not a clone of the whole: the record may be long.
    let bare = Job {
        version: FormVersion,
        title: job.title.clone(),
        part: job.part.clone(),
        wanted: job.wanted.clone(),
        shop: job.shop.clone(),
        setup: job.setup.clone(),
        record: Record::default(),
    };
    encode(&bare)
}

/// The job as a text to keep: that of a link, however long its record is.
///
/// # Errors
/// [`LinkError::TooLarge`] as [`encode`]. Every other job has such a text.
pub fn encode_to_keep(job: &Job) -> Result<String, LinkError> {
    encode_to(job, MOST_KEPT_CHARACTERS)
}

fn encode_to(job: &Job, most: usize) -> Result<String, LinkError> {
    let bytes = v4::write(job).ok_or(LinkError::TooLarge)?;
    let text = wrap(VERSION, bytes);
    if most < text.len() {
        return Err(LinkError::TooLong);
    }
    Ok(text)
}

/// The job in a text that [`encode`] or [`encode_digits`] made and that came by mail or chat: an address up to `#`, text
/// around it, line breaks, quote marks and percent signs are left aside, as the doc of `clean.rs` says.
///
/// # Errors
/// Every way of [`LinkError`] but the last. A text in which one character was changed or left out, or that was
/// cut, is always an error and never another job.
pub fn decode(text: &str) -> Result<Job, LinkError> {
    only_job(open(text)?)
}

/// The job in a text that [`encode_to_keep`] made, or in a link.
///
/// # Errors
/// As [`decode`].
pub fn decode_kept_job(text: &str) -> Result<Job, LinkError> {
    only_job(open_exact(text.trim(), MOST_KEPT_CHARACTERS)?)
}

fn only_job(linked: Linked) -> Result<Job, LinkError> {
    match linked {
        Linked::Job(job) => Ok(*job),
        _ => Err(LinkError::NotALink),
    }
}

/// What a text behind `#` can hold.
#[derive(Clone, Debug, PartialEq)]
pub enum Linked {
    /// A job.
    Job(Box<Job>),
    /// What the owner of a part is shown.
    Offer(Box<Offer>),
    /// What he answered, and when.
    Answer(Answered, Moment),
    /// A job that is handed back to him.
    HandedBack(Box<Job>),
}

/// Whatever is in a text that [`encode`], [`encode_offer`], [`encode_answer`] or [`encode_handed_back`] made.
///
/// # Errors
/// As [`decode`].
pub fn open(text: &str) -> Result<Linked, LinkError> {
    clean::decode(text, |code| open_exact(code, MOST_CHARACTERS))
}

/// What is in the text behind `#`, nothing around it.
fn open_exact(code: &str, most: usize) -> Result<Linked, LinkError> {
    if most < code.len() {
        return Err(LinkError::TooLong);
    }
    let mut letters = code.chars();
    let letter = letters.next().ok_or(LinkError::Empty)?;
    let body = || unwrap(letter, letters.as_str());
    let job = |job: Option<Job>| job.map(|job| Linked::Job(Box::new(job)));
    let read = match letter {
        '0'..='9' => return open_exact(&digits::to_letters(code)?, most),
        'a' => job(v1::read(&body()?)),
        'b' => job(v2::read(&body()?)),
        'c' => job(v3::read(&body()?)),
        'd' => job(v4::read(&body()?)),
        owner::OFFER => owner::read_offer(&body()?).map(|it| Linked::Offer(Box::new(it))),
        owner::ANSWER => owner::read_answered(&body()?).map(|(it, at)| Linked::Answer(it, at)),
        owner::HANDED_BACK => {
            owner::read_handed_back(&body()?).map(|it| Linked::HandedBack(Box::new(it)))
        }
        'e'..='z' => return Err(LinkError::Newer { version: letter }),
        _ => return Err(LinkError::NotALink),
    };
    read.ok_or(LinkError::BeyondLimits)
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
mod events_tests;
#[cfg(test)]
mod frozen_tests;
#[cfg(test)]
mod owner_tests;
#[cfg(test)]
mod size_tests;
#[cfg(test)]
mod tests;
