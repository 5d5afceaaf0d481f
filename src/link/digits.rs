//! A link written with decimal digits alone, for a QR code: there three digits take ten bits, so that the job needs a
//! fourth less room than its letters would as bytes.
//!
//! It is the letter form rewritten, whatever its version:
//!
//! ```text
//! 03  digits( body  CRC-32 )  check digits
//! ```
//!
//! | piece | digits |
//! | --- | --- |
//! | the version | two: the place of its letter in the alphabet |
//! | seven bytes, the first the highest | seventeen: 256⁷ is a little less than 10¹⁷, and fits a word of the machine |
//! | the last one to six bytes | 3, 5, 8, 10, 13 or 15, so that their count says how many bytes there are |
//! | check digits over all before them | two, of MOD 97-10 |
//!
//! Seven bytes take 56.7 bits of the code, near the 56 that they hold; longer pieces gain less than one part in a hundred.
//! Noughts in front are written, and what no bytes give is no link, so that a job has one form only.
//!
//! The check digits find every digit that was changed and every two neighbours that changed places, which a checksum of
//! the bytes does not promise: one digit can change seven of them.
//!
//! # Source
//! ISO/IEC 7064, MOD 97-10; ISO/IEC 18004, numeric mode; from memory.

use core::fmt::Write;

use data_encoding::BASE64URL_NOPAD;

use super::{LinkError, MOST_CHARACTERS, encode};
use crate::job::Job;

/// Bytes that are written together.
const PIECE: usize = 7;

/// Digits of a piece, by its count of bytes.
const WIDTHS: [usize; PIECE + 1] = [0, 3, 5, 8, 10, 13, 15, 17];

/// Digits of the version, and of the check.
const PAIR: usize = 2;

/// The job as digits that stand behind `#`: for a QR code, where they take less room than letters.
///
/// [`decode`](super::decode) reads them as it reads letters.
///
/// # Errors
/// [`LinkError::TooLarge`] as [`encode`] says, and when there would be more than [`MOST_CHARACTERS`] digits; the largest
/// code takes 7089.
///
/// # Example
/// ```
/// use skimwright::{job::Job, link};
/// let digits = link::encode_digits(&Job::default())?;
/// assert!(digits.bytes().all(|digit| digit.is_ascii_digit()));
/// assert_eq!(link::decode(&digits)?, Job::default());
/// # Ok::<(), link::LinkError>(())
/// ```
pub fn encode_digits(job: &Job) -> Result<String, LinkError> {
    in_digits(&encode(job)?).ok_or(LinkError::TooLarge)
}

/// A link in letters, the part behind `#`, as digits: for one that was made otherwise than by [`encode`]. `None` when it
/// is none, or there would be more than [`MOST_CHARACTERS`] digits.
pub fn in_digits(link: &str) -> Option<String> {
    let digits = from_letters(link);
    digits.filter(|digits| digits.len() <= MOST_CHARACTERS)
}

/// The digits of a text in letters; `None` when it is none.
fn from_letters(text: &str) -> Option<String> {
    let (letter, rest) = text.split_at_checked(1)?;
    let version = number_of(letter.chars().next()?)?;
    let bytes = BASE64URL_NOPAD.decode(rest.as_bytes()).ok()?;
    let mut digits = String::with_capacity(2 * PAIR + bytes.len() * 5 / 2);
    push(&mut digits, version, PAIR);
    for piece in bytes.chunks(PIECE) {
        let value = piece
            .iter()
            .fold(0, |value, byte| value << 8 | u64::from(*byte));
        push(&mut digits, value, *WIDTHS.get(piece.len())?);
    }
    let check = check(&digits);
    push(&mut digits, check, PAIR);
    Some(digits)
}

/// The text in letters of these digits.
///
/// # Errors
/// [`LinkError::NotALink`] where something is no digit or the version is no letter, [`LinkError::Damaged`] where the check
/// digits are wrong or no bytes have such digits.
pub(super) fn to_letters(digits: &str) -> Result<String, LinkError> {
    if !digits.bytes().all(|digit| digit.is_ascii_digit()) {
        return Err(LinkError::NotALink);
    }
    let cut = digits
        .len()
        .checked_sub(PAIR)
        .and_then(|end| digits.split_at_checked(end));
    let (checked, end) = cut.ok_or(LinkError::Damaged)?;
    if end.parse() != Ok(check(checked)) {
        return Err(LinkError::Damaged);
    }
    let (version, body) = checked.split_at_checked(PAIR).ok_or(LinkError::Damaged)?;
    let letter = ('a'..='z').find(|letter| number_of(*letter) == version.parse().ok());
    let mut text = String::from(letter.ok_or(LinkError::NotALink)?);
    let bytes = bytes_of(body).ok_or(LinkError::Damaged)?;
    BASE64URL_NOPAD.encode_append(&bytes, &mut text);
    Ok(text)
}

/// The bytes of the digits between version and check.
fn bytes_of(body: &str) -> Option<Vec<u8>> {
    let [.., most] = WIDTHS;
    let mut bytes = Vec::with_capacity(body.len() / 2);
    let mut rest = body;
    while !rest.is_empty() {
        let (piece, behind) = rest.split_at_checked(most.min(rest.len()))?;
        let count = WIDTHS.iter().position(|width| *width == piece.len())?;
        let value: u64 = piece.parse().ok()?;
        let (above, own) = value
            .to_be_bytes()
            .split_at_checked(8 - count)
            .map(|(above, own)| (above.to_vec(), own.to_vec()))?;
        // More than so many bytes can be.
        if above.iter().any(|byte| *byte != 0) {
            return None;
        }
        bytes.extend(own);
        rest = behind;
    }
    Some(bytes)
}

/// The place of a version's letter in the alphabet, from 1.
fn number_of(letter: char) -> Option<u64> {
    ('a'..='z')
        .zip(1..)
        .find_map(|(one, number)| (one == letter).then_some(number))
}

fn push(digits: &mut String, value: u64, width: usize) {
    // Writing to a string cannot fail.
    let _ = write!(digits, "{value:0width$}");
}

/// The check digits of MOD 97-10: with them at the end, the whole is one more than a multiple of 97.
fn check(digits: &str) -> u64 {
    let rest = digits.bytes().fold(0, |rest, digit| {
        (rest * 10 + u64::from(digit.wrapping_sub(b'0'))) % 97
    });
    98 - rest * 100 % 97
}

#[cfg(test)]
mod tests {
    #![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

    use super::*;
    use crate::demo::demo_jobs;
    use crate::link::decode;
    use proptest::prelude::*;

    fn letters(bytes: &[u8]) -> String {
        format!("c{}", BASE64URL_NOPAD.encode(bytes))
    }

    #[test]
    fn check_digits_are_those_of_the_standard() {
        // The account numbers GB82 WEST 1234 5698 7654 32 and DE89 3704 0044 0532 0130 00, which are printed as examples
        // everywhere: letters as two digits from A = 10, the country behind, then its check digits.
        assert_eq!(check("32142829123456987654321611"), 82);
        assert_eq!(check("3704004405320130001314"), 89);
    }

    #[test]
    fn pieces_are_as_wide_as_their_largest_number() {
        for (count, width) in WIDTHS.into_iter().enumerate() {
            let largest = 256_u128.pow(u32::try_from(count).unwrap()) - 1;
            let digits = if count == 0 {
                0
            } else {
                largest.to_string().len()
            };
            assert_eq!(digits, width, "{count}");
        }
    }

    /// Reckoned by Python's whole numbers: 0x00ff00ff00ff00 is 280379743338240, 0x0102 is 258, and the check 69.
    #[test]
    fn the_form_is_frozen() {
        let bytes = [0, 0xff, 0, 0xff, 0, 0xff, 0, 1, 2];
        let digits = from_letters(&letters(&bytes)).unwrap();
        assert_eq!(digits, "03002803797433382400025869");
        assert_eq!(to_letters(&digits), Ok(letters(&bytes)));
    }

    #[test]
    fn every_job_comes_back() {
        for job in demo_jobs() {
            let digits = encode_digits(&job).unwrap();
            assert_eq!(decode(&digits), Ok(job.clone()));
            assert_eq!(
                decode(&format!("https://shop.example/#{digits}")),
                Ok(job.clone())
            );
            assert_eq!(Ok(to_letters(&digits).unwrap()), encode(&job));
        }
    }

    #[test]
    fn wrong_digits_have_their_error() {
        let with_check = |text: &str| format!("{text}{:02}", check(text));
        for (text, error) in [
            ("0".to_owned(), LinkError::Damaged),
            ("03".to_owned(), LinkError::Damaged),
            (with_check("03"), LinkError::Damaged),
            (with_check("00123"), LinkError::NotALink),
            (with_check("27123"), LinkError::NotALink),
            (with_check("26123"), LinkError::Newer { version: 'z' }),
            // One digit more than any count of bytes has, and a number that is too large for its bytes.
            (with_check("031234"), LinkError::Damaged),
            (with_check("03256"), LinkError::Damaged),
            (with_check("0399999999999999999"), LinkError::Damaged),
            ("1".repeat(MOST_CHARACTERS + 1), LinkError::TooLong),
            ("1".repeat(MOST_CHARACTERS), LinkError::Damaged),
        ] {
            assert_eq!(decode(&text), Err(error), "{text}");
        }
        assert_eq!(to_letters("03\u{663}"), Err(LinkError::NotALink));
    }

    #[test]
    fn every_wrong_lost_or_swapped_digit_is_an_error() {
        for job in demo_jobs() {
            let digits = encode_digits(&job).unwrap();
            for place in 0..digits.len() {
                assert!(decode(&digits[..place]).is_err(), "cut to {place}");
                let (before, behind) = (&digits[..place], &digits[place + 1..]);
                assert!(decode(&[before, behind].concat()).is_err(), "{place} lost");
                for other in "0123456789".chars() {
                    let wrong = format!("{before}{other}{behind}");
                    assert_eq!(
                        decode(&wrong).is_ok(),
                        wrong == digits,
                        "{other} at {place}"
                    );
                    let longer = format!("{before}{other}{}", &digits[place..]);
                    assert!(decode(&longer).is_err(), "{other} before {place}");
                }
                let mut swapped = digits.clone().into_bytes();
                if place > 0 && swapped[place - 1] != swapped[place] {
                    swapped.swap(place - 1, place);
                    assert!(decode(&String::from_utf8(swapped).unwrap()).is_err());
                }
            }
        }
    }

    proptest! {
        #[test]
        fn any_bytes_come_back(bytes in proptest::collection::vec(any::<u8>(), 0..60)) {
            let text = letters(&bytes);
            let digits = from_letters(&text).unwrap();
            prop_assert_eq!(to_letters(&digits), Ok(text));
        }

        /// What is read at all is written as it was read: one form only.
        #[test]
        fn digits_have_one_form(body in "(0[1-9]|1[0-9]|2[0-6])[0-9]{0,60}") {
            let digits = format!("{body}{:02}", check(&body));
            if let Ok(text) = to_letters(&digits) {
                prop_assert_eq!(from_letters(&text), Some(digits));
            }
        }

        #[test]
        fn any_digits_are_read_without_a_panic(digits in "[0-9]{0,80}") {
            prop_assert!(decode(&digits).is_err());
        }
    }
}
