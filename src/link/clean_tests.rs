//! Links as they come by mail and chat, and damaged ones among them.
#![expect(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use super::*;
use crate::demo::demo_jobs;
use crate::job::Job;
use crate::link::{decode, encode, encode_digits};
use proptest::collection::vec;
use proptest::prelude::*;

const ADDRESS: &str = "https://shop.example/plan/#";

fn job() -> Job {
    let [arbor, ..] = demo_jobs();
    arbor
}

/// A job's link in letters and in digits.
fn codes(job: &Job) -> [String; 2] {
    [encode(job).unwrap(), encode_digits(job).unwrap()]
}

fn percent(text: &str, which: impl Fn(char) -> bool) -> String {
    let coded = |character: char| {
        if which(character) {
            format!("%{:02X}", u32::from(character))
        } else {
            character.to_string()
        }
    };
    text.chars().map(coded).collect()
}

/// Lines of so many characters, with `between` where one ends.
fn wrapped(text: &str, width: usize, between: &str) -> String {
    let letters: Vec<char> = text.chars().collect();
    let lines: Vec<String> = letters
        .chunks(width)
        .map(|line| line.iter().collect())
        .collect();
    lines.join(between)
}

#[test]
fn what_mail_and_chat_do_to_a_link_is_undone() {
    let job = job();
    for code in codes(&job) {
        let link = format!("{ADDRESS}{code}");
        let strange = |c: char| !c.is_ascii_alphanumeric();
        let table = [
            ("as it is", link.clone()),
            ("the code alone", code.clone()),
            ("with its mark", format!("#{code}")),
            (
                "white space around it",
                format!(" \r\n\t{link}\u{a0}\u{3000}\n"),
            ),
            ("wrapped at 72", wrapped(&link, 72, "\n")),
            ("wrapped at 40", wrapped(&link, 40, "\r\n")),
            ("wrapped at 9", wrapped(&link, 9, "\n")),
            ("wrapped right behind the mark", link.replace('#', "#\n")),
            ("quoted-printable", wrapped(&link, 75, "=\r\n")),
            ("quoted", format!("> {}", wrapped(&link, 70, "\r\n> "))),
            (
                "quoted twice",
                format!(">> {}", wrapped(&link, 70, "\n>> ")),
            ),
            (
                "quoted with bars",
                format!("| {}", wrapped(&link, 70, "\n| ")),
            ),
            ("a space in it", format!("{} {}", &link[..60], &link[60..])),
            ("a space after each tenth", wrapped(&link, 10, " ")),
            ("angle brackets", format!("<{link}>")),
            (
                "angle brackets, wrapped",
                format!("<{}>", wrapped(&link, 60, "\n")),
            ),
            ("round brackets", format!("({link})")),
            ("quotes", format!("“{link}”")),
            ("a full stop", format!("{link}.")),
            ("signs behind it", format!("{link}!?…")),
            ("a comma and words", format!("{link}, as we said")),
            ("padding", format!("{link}==")),
            ("breaks without width", wrapped(&link, 8, "\u{200b}")),
            ("soft hyphens", wrapped(&link, 20, "\u{ad}")),
            ("marks of direction", format!("\u{2066}{link}\u{2069}")),
            ("a mark of byte order", format!("\u{feff}{link}")),
            ("percent signs", percent(&link, strange)),
            ("percent signs everywhere", percent(&link, |_| true)),
            (
                "percent signs twice",
                percent(&percent(&link, strange), strange),
            ),
            (
                "percent signs in small letters",
                percent(&link, strange).to_lowercase(),
            ),
            (
                "as part of another address",
                format!("https://mail.example/go?u={}&s=1", percent(&link, strange)),
            ),
            ("words before it", format!("Here is the job: {link}")),
            (
                "words around it",
                format!("Here is the job: {link} regards"),
            ),
            (
                "many words behind it",
                format!("{link} Best regards and see you on Monday"),
            ),
            (
                "words on the next line",
                format!("{link}\nregards\n-- \nJo"),
            ),
            (
                "wrapped, and words behind it",
                format!("Hi,\n{}\nBest regards, Jo", wrapped(&link, 64, "\n")),
            ),
            (
                "numbers with a mark before it",
                format!("Job #7, drawing #c12-b: {link}"),
            ),
            ("a tag behind it", format!("{link} #turning #carbide")),
            ("twice the same", format!("{link} <{link}>")),
            (
                "shown cut short beside it",
                format!("{}… <{link}>", &link[..70]),
            ),
            ("marked up", format!("[{link}]({link})")),
            ("a text with per cents", format!("It is 100% done: {link}")),
        ];
        for (what, text) in table {
            // Digits and hexadecimal alone survive small letters; so does no base64.
            if what.contains("small letters") && code.starts_with('d') {
                continue;
            }
            assert_eq!(decode(&text), Ok(job.clone()), "{what}: {text}");
        }
    }
}

#[test]
fn a_cut_link_says_so_whatever_is_around_it() {
    for code in codes(&job()) {
        for place in [1, 2, 30, code.len() / 2, code.len() - 1] {
            let cut = &code[..place];
            for text in [
                cut.to_owned(),
                format!("{ADDRESS}{cut}"),
                format!("Here is the job: {ADDRESS}{cut}. Regards"),
                format!("{ADDRESS}{cut}\nregards"),
                wrapped(&format!("<{ADDRESS}{cut}>"), 64, "\n> "),
                percent(&format!("{ADDRESS}{cut}"), |c| c == '#'),
            ] {
                assert_eq!(decode(&text), Err(LinkError::Damaged), "{text}");
            }
        }
    }
}

#[test]
fn two_jobs_in_one_text_are_an_error() {
    let [one, other, ..] = demo_jobs();
    let (one, other) = (encode(&one).unwrap(), encode(&other).unwrap());
    let cut = &other[..other.len() - 3];
    for text in [
        format!("{ADDRESS}{one} {ADDRESS}{other}"),
        // The new link is damaged, the old one in the quoted mail is whole.
        format!("The new plan: {ADDRESS}{cut}\n\nOn Monday you wrote:\n> {ADDRESS}{one}"),
        format!("{ADDRESS}{one} and {ADDRESS}{cut}"),
    ] {
        assert_eq!(decode(&text), Err(LinkError::Several), "{text}");
    }
}

#[test]
fn a_text_without_a_link_has_its_error() {
    for (text, error) in [
        ("", LinkError::Empty),
        ("  \n", LinkError::Empty),
        ("https://shop.example/#", LinkError::Empty),
        ("https://shop.example/# ", LinkError::Empty),
        ("#!", LinkError::NotALink),
        ("# . #", LinkError::NotALink),
        ("%", LinkError::NotALink),
        ("%23", LinkError::Empty),
        ("%25%32%33", LinkError::Empty),
        ("\u{200b}", LinkError::NotALink),
    ] {
        assert_eq!(decode(text), Err(error), "{text:?}");
    }
}

#[test]
fn what_is_too_long_is_refused_before_it_is_looked_at() {
    fn never(_: &str) -> Result<Job, LinkError> {
        panic!("looked at")
    }
    for sign in ["c", "#", "%", "\u{200b}", " "] {
        let text = sign.repeat(1_000_000 / sign.len());
        assert_eq!(super::decode(&text, never), Err(LinkError::TooLong));
    }
}

/// The tries are bounded, whatever the text.
#[test]
fn a_text_of_gaps_takes_few_tries() {
    use core::cell::Cell;
    thread_local!(static TRIES: Cell<usize> = const { Cell::new(0) });
    fn count(_: &str) -> Result<Job, LinkError> {
        TRIES.with(|tries| tries.set(tries.get() + 1));
        Err(LinkError::Damaged)
    }
    let text = "c ".repeat(MOST_AROUND / 2);
    assert_eq!(super::decode(&text, count), Err(LinkError::Damaged));
    assert_eq!(TRIES.with(Cell::get), MOST_TRIES);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(512))]

    /// Whatever is put in, taken out or changed: the job itself, or an error.
    #[test]
    fn a_damaged_link_is_never_another_job(
        which in 0..3_usize,
        digits in any::<bool>(),
        width in 5..90_usize,
        between in prop::sample::select(vec!["", "\n", " ", "\r\n> ", "=\r\n", "\u{200b}", "%0A"]),
        changes in vec(
            (any::<prop::sample::Index>(), 0..3_u8, "[a-zA-Z0-9_ #%=<>.\n\u{200b}-]"),
            1..5,
        ),
        behind in "[a-z #.]{0,30}",
    ) {
        let job = demo_jobs()[which].clone();
        let code = codes(&job)[usize::from(digits)].clone();
        let mut letters: Vec<String> = code.chars().map(String::from).collect();
        for (place, how, letter) in changes {
            let place = place.index(letters.len());
            match how {
                0 => letters[place] = letter,
                1 => letters.insert(place, letter),
                _ => { letters.remove(place); }
            }
        }
        let text = format!("Job: {ADDRESS}{}{behind}", wrapped(&letters.concat(), width, between));
        if let Ok(opened) = decode(&text) {
            prop_assert_eq!(opened, job);
        }
    }

    /// Two halves of different links never make a third.
    #[test]
    fn links_that_ran_into_one_another_are_an_error(
        one in 0..3_usize, other in 0..3_usize, digits in any::<bool>(),
        at in any::<prop::sample::Index>(), from in any::<prop::sample::Index>(),
        between in "[ \n>=]{0,2}",
    ) {
        let jobs = demo_jobs();
        let (one, other) = (&jobs[one], &jobs[other]);
        let (head, tail) = (&codes(one)[usize::from(digits)], &codes(other)[usize::from(digits)]);
        let text = format!("{ADDRESS}{}{between}{}", &head[..at.index(head.len())], &tail[from.index(tail.len())..]);
        if let Ok(opened) = decode(&text) {
            prop_assert!(opened == *one || opened == *other);
        }
    }

    #[test]
    fn any_text_is_looked_through_without_a_panic(text in "[\\PC\n%#c0-9A-F<>=]{0,300}") {
        let _ = decode(&text);
    }
}
