//! Several kept jobs as one text, a line for each: what the page and the module that writes and reads job files say to
//! each other. It is never stored.
//!
//! ```text
//! +  id  state  changed  text         a job; the fields are parted by tabulators
//! -  id  title  path  message         a job that could not be read
//! ```
//!
//! `changed` is seconds since 1970 or empty, `text` is what [`super::encode_to_keep`] gives.

use crate::job::Moment;

/// Most characters of an id or a state.
pub const MOST_WORD_CHARACTERS: usize = 40;

/// A job as it is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptJob {
    /// By what it is told apart from others; a word as [`is_word`] says, or empty.
    pub id: String,
    /// Its state, such a word too, or empty.
    pub state: String,
    /// When it was changed last.
    pub changed: Option<Moment>,
    /// The job as [`super::encode_to_keep`] wrote it.
    pub text: String,
}

/// A job that could not be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnreadJob {
    /// Its id, as far as it has one.
    pub id: String,
    /// Its title, as far as it has one.
    pub title: String,
    /// The path of the field that is wrong; empty when all is.
    pub path: String,
    /// What is wrong there, for a person who knows the form.
    pub message: String,
}

/// Whether a text can be an id or a state: 1 to [`MOST_WORD_CHARACTERS`] letters, digits, `-` and `_`.
pub fn is_word(text: &str) -> bool {
    let letter = |byte: u8| byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_');
    (1..=MOST_WORD_CHARACTERS).contains(&text.len()) && text.bytes().all(letter)
}

/// The jobs, a line for each.
pub fn write_lines(jobs: &[Result<KeptJob, UnreadJob>]) -> String {
    let mut lines = String::new();
    for job in jobs {
        let changed;
        let fields = match job {
            Ok(job) => {
                changed = job.changed.map(|at| at.to_unix_seconds().to_string());
                let changed = changed.as_deref().unwrap_or_default();
                ["+", &job.id, &job.state, changed, &job.text]
            }
            Err(job) => ["-", &job.id, &job.title, &job.path, &job.message],
        };
        for (index, field) in fields.into_iter().enumerate() {
            if index != 0 {
                lines.push('\t');
            }
            // Only a title or a message can hold what parts fields or lines.
            lines.extend(
                field
                    .chars()
                    .map(|letter| if letter.is_control() { ' ' } else { letter }),
            );
        }
        lines.push('\n');
    }
    lines
}

/// The jobs in such a text; `None` when a line has another form.
pub fn read_lines(text: &str) -> Option<Vec<Result<KeptJob, UnreadJob>>> {
    text.lines().map(read_line).collect()
}

fn read_line(line: &str) -> Option<Result<KeptJob, UnreadJob>> {
    let mut fields = line.split('\t').map(str::to_owned);
    let kind = fields.next()?;
    let [first, second, third, fourth] = core::array::from_fn(|_| fields.next());
    let (first, second, third, fourth) = (first?, second?, third?, fourth?);
    if fields.next().is_some() {
        return None;
    }
    match kind.as_str() {
        "+" => {
            let changed = if third.is_empty() {
                None
            } else {
                Some(Moment::unix_seconds(third.parse().ok()?))
            };
            Some(Ok(KeptJob {
                id: first,
                state: second,
                changed,
                text: fourth,
            }))
        }
        "-" => Some(Err(UnreadJob {
            id: first,
            title: second,
            path: third,
            message: fourth,
        })),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_come_back_as_they_were() {
        let job = |id: &str, changed: Option<u64>| KeptJob {
            id: id.to_owned(),
            state: "open".to_owned(),
            changed: changed.map(Moment::unix_seconds),
            text: "dAAAA".to_owned(),
        };
        let unread = UnreadJob {
            id: String::new(),
            title: "Arbor ⌀ 32".to_owned(),
            path: "record.events[3].what".to_owned(),
            message: "unknown variant".to_owned(),
        };
        let jobs = [
            Ok(job("a", Some(u64::MAX))),
            Err(unread.clone()),
            Ok(job("", None)),
        ];
        assert_eq!(read_lines(&write_lines(&jobs)), Some(jobs.to_vec()));
        assert_eq!(read_lines(""), Some(Vec::new()));
        // What would part fields becomes a space.
        let odd = UnreadJob {
            title: "a\tb\nc\u{85}".to_owned(),
            ..unread
        };
        let back = read_lines(&write_lines(&[Err(odd)]))
            .unwrap()
            .pop()
            .unwrap();
        assert_eq!(back.unwrap_err().title, "a b c ");
    }

    #[test]
    fn other_lines_are_refused() {
        for text in [
            "x",
            "+\ta",
            "+\ta\tb\tc\td",
            "+\ta\tb\t1\td\te",
            "*\ta\tb\t1\td",
            "\n",
        ] {
            assert_eq!(read_lines(text), None, "{text:?}");
        }
    }

    #[test]
    fn words_are_plain_and_short() {
        for (text, is) in [
            ("a-Z_9", true),
            ("", false),
            ("a b", false),
            ("é", false),
            ("a\t", false),
        ] {
            assert_eq!(is_word(text), is, "{text:?}");
        }
        assert!(is_word(&"a".repeat(MOST_WORD_CHARACTERS)));
        assert!(!is_word(&"a".repeat(MOST_WORD_CHARACTERS + 1)));
    }
}
