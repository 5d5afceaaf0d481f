//! The names of the files that leave the page.

use crate::letter::is_letter;

/// The name of a drawing's file, without what follows the dot: see [`file_name_of`].
///
/// # Example
/// ```
/// use skimwright::sheet::file_name;
/// assert_eq!(file_name("Arbor, 32 mm / 25 mm"), "arbor-32-mm-25-mm-drawing");
/// assert_eq!(file_name("../.."), "drawing");
/// ```
pub fn file_name(title: &str) -> String {
    file_name_of(title, "drawing")
}

/// A file name from what a job is called and what the file holds: letters of any script and digits, all else a hyphen, at
/// most 48 characters of the title.
///
/// # Example
/// ```
/// use skimwright::sheet::file_name_of;
/// assert_eq!(file_name_of("Arbor no. 2", "passes"), "arbor-no-2-passes");
/// ```
pub fn file_name_of(title: &str, what: &str) -> String {
    const MOST: usize = 48;
    let safe: String = title
        .chars()
        .map(|character| {
            if character.is_ascii_digit() || is_letter(character) {
                character.to_ascii_lowercase()
            } else {
                '-'
            }
        })
        .collect();
    let words = safe.split('-').filter(|word| !word.is_empty());
    let short: String = words
        .collect::<Vec<_>>()
        .join("-")
        .chars()
        .take(MOST)
        .collect();
    // The ending keeps off the names that some systems hold for devices.
    match short.trim_end_matches('-') {
        "" => what.to_owned(),
        name => format!("{name}-{what}"),
    }
}
