//! The decimal mark of a language, in texts that are shown.

/// A shown text with another decimal mark in its numbers: `31.40 mm` as `31,40 mm`.
///
/// Every number in a text of this module has a point for its mark and nothing between its thousands. A point that is
/// none is left: at the end of a sentence, in codes such as `B94.19`, and in chains such as `1.2.3`.
///
/// ```
/// use skimwright::quantity::with_mark;
///
/// assert_eq!(with_mark("⌀31.40 mm.".to_owned(), ','), "⌀31,40 mm.");
/// assert_eq!(with_mark("version 1.2.3".to_owned(), ','), "version 1.2.3");
/// ```
pub fn with_mark(text: String, mark: char) -> String {
    if mark == '.' || !text.contains('.') {
        return text;
    }
    let mut marked = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(start) = rest.find(|it: char| it.is_ascii_digit()) {
        let (before, number) = rest.split_at(start);
        let end = number
            .find(|it: char| !it.is_ascii_digit() && it != '.')
            .unwrap_or(number.len());
        let (number, after) = number.split_at(end);
        marked.push_str(before);
        // What ends a sentence belongs to no number.
        let figures = number.trim_end_matches('.');
        let is_code = before.chars().next_back().is_some_and(char::is_alphabetic);
        match figures.split_once('.') {
            Some((whole, decimals)) if !decimals.contains('.') && !is_code => {
                marked.push_str(whole);
                marked.push(mark);
                marked.push_str(decimals);
            }
            _ => marked.push_str(figures),
        }
        marked.push_str(number.get(figures.len()..).unwrap_or_default());
        rest = after;
    }
    marked.push_str(rest);
    marked
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Dimension, read};

    fn comma(text: &str) -> String {
        with_mark(text.to_owned(), ',')
    }

    #[test]
    fn every_number_gets_the_mark() {
        assert_eq!(comma("0.05 to 0.1 mm"), "0,05 to 0,1 mm");
        assert_eq!(
            comma("⌀16.000, −0.5°, 1 : 20.047"),
            "⌀16,000, −0,5°, 1 : 20,047"
        );
        assert_eq!(comma("≈ 1 15/64 in"), "≈ 1 15/64 in");
    }

    #[test]
    fn other_points_stay() {
        assert_eq!(comma("Takes 12. Then 3."), "Takes 12. Then 3.");
        assert_eq!(comma("It is 2.5."), "It is 2,5.");
        assert_eq!(comma("part 1.2.3, no. 4"), "part 1.2.3, no. 4");
        assert_eq!(comma("a.b .5 5."), "a.b .5 5.");
        assert_eq!(comma("ASME B94.19, 0.5 in"), "ASME B94.19, 0,5 in");
        assert_eq!(comma(""), "");
    }

    #[test]
    fn a_point_as_the_mark_changes_nothing() {
        let text = "31.40 mm";
        assert_eq!(with_mark(text.to_owned(), '.'), text);
    }

    #[test]
    fn what_is_shown_can_be_typed_again() {
        for text in ["31.40 mm", "1.236 in", "1 3/8 in", "12.5+0.02"] {
            assert_eq!(
                read(&comma(text), Dimension::Length, None).map(|it| it.base_value()),
                read(text, Dimension::Length, None).map(|it| it.base_value()),
                "{text}"
            );
        }
    }
}
