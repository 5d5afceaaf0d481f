//! Tables as text for a spreadsheet or a script: comma-separated values.
//!
//! What was decided, so that a file opens by itself wherever it is opened:
//! - UTF-8 with a mark of byte order: spreadsheets read it as a local code page without one, and what reads CSV skips it.
//! - The decimal mark chooses the separator: a comma stands between cells beside decimal points, a semicolon beside
//!   decimal commas, which is what spreadsheets expect where people write so. A first line `sep=;` is not written: only
//!   one spreadsheet knows it, to everything else it is a row.
//! - Lines end with CR LF, and what holds a separator or a quote is quoted, as RFC 4180 says. A row is one line: what has
//!   line breaks gets spaces for them.
//! - Numbers are plain, with a hyphen before what is below nought; their unit stands in the head of the column. What is not
//!   there, or is no number, is an empty cell.
//! - A text that a spreadsheet would take for a formula gets an apostrophe in front. Numbers never do.
//!
//! Heads are names for scripts too, and do not change.

use crate::quantity::digits::push_digits;

/// How a number is written, and with it what stands between cells.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum DecimalMark {
    /// 25.4, and commas between cells.
    #[default]
    Point,
    /// 25,4, and semicolons between cells.
    Comma,
}

impl DecimalMark {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Point, Self::Comma];

    /// What stands between cells.
    pub const fn separator(self) -> char {
        match self {
            Self::Point => ',',
            Self::Comma => ';',
        }
    }

    /// A figure as it was typed, with this mark.
    pub(super) fn typed(self, typed: &str) -> String {
        match self {
            Self::Point => typed.to_owned(),
            Self::Comma => typed.replace('.', ","),
        }
    }
}

/// A table that grows cell by cell.
pub(super) struct Table {
    text: String,
    mark: DecimalMark,
    /// Whether the row has a cell.
    begun: bool,
}

impl Table {
    pub(super) fn new(mark: DecimalMark, heads: &[&str]) -> Self {
        let mut table = Self {
            text: String::from('\u{feff}'),
            mark,
            begun: false,
        };
        for head in heads {
            table.say(head);
        }
        table.end_row();
        table
    }

    pub(super) fn into_text(self) -> String {
        self.text
    }

    pub(super) fn end_row(&mut self) {
        self.text.push_str("\r\n");
        self.begun = false;
    }

    fn next(&mut self) {
        if self.begun {
            self.text.push(self.mark.separator());
        }
        self.begun = true;
    }

    pub(super) fn empty(&mut self) {
        self.next();
    }

    /// A number to so many decimals, noughts at the end left out.
    pub(super) fn number(&mut self, value: impl Into<Option<f64>>, decimals: usize) {
        /// What is larger is no figure of a workshop, and would not be exact.
        const MOST: f64 = 1e15;
        self.next();
        let Some(value) = value.into().filter(|value| value.abs() < MOST) else {
            return;
        };
        let mut digits = String::new();
        push_digits(&mut digits, value, decimals);
        let short = if digits.contains('.') {
            digits.trim_end_matches('0').trim_end_matches('.')
        } else {
            &digits
        };
        if value < 0.0 && short != "0" {
            self.text.push('-');
        }
        self.text.push_str(&self.mark.typed(short));
    }

    pub(super) fn yes(&mut self, yes: bool) {
        self.say(if yes { "yes" } else { "no" });
    }

    /// Any text.
    pub(super) fn say(&mut self, text: &str) {
        self.next();
        let plain: String = text
            .chars()
            .map(|character| if is_break(character) { ' ' } else { character })
            .collect();
        // What stands behind white space is a formula to some.
        let formula = plain.trim_start().starts_with(is_formula);
        let quoted =
            plain.contains(['"', ',', ';']) || plain.starts_with(' ') || plain.ends_with(' ');
        if quoted {
            self.text.push('"');
        }
        if formula {
            self.text.push('\'');
        }
        self.text.push_str(&plain.replace('"', "\"\""));
        if quoted {
            self.text.push('"');
        }
    }
}

/// What would end a row or a cell, or has no place in a text.
fn is_break(character: char) -> bool {
    character.is_control() || matches!(character, '\u{2028}' | '\u{2029}')
}

/// What makes a formula of a cell, the full-width forms counted.
fn is_formula(first: char) -> bool {
    matches!(
        first,
        '=' | '+' | '-' | '@' | '\u{ff1d}' | '\u{ff0b}' | '\u{ff0d}' | '\u{ff20}'
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(mark: DecimalMark, fill: impl Fn(&mut Table)) -> String {
        let mut table = Table::new(mark, &[]);
        fill(&mut table);
        table
            .into_text()
            .trim_start_matches(['\u{feff}', '\r', '\n'])
            .to_owned()
    }

    #[test]
    fn numbers_are_plain() {
        for (value, decimals, point, comma) in [
            (25.4, 4, "25.4", "25,4"),
            (-0.012, 4, "-0.012", "-0,012"),
            (-0.000_01, 4, "0", "0"),
            (0.0, 2, "0", "0"),
            (1200.0, 0, "1200", "1200"),
            (12_345.678_9, 3, "12345.679", "12345,679"),
            (f64::NAN, 3, "", ""),
            (f64::INFINITY, 3, "", ""),
            (-1e15, 3, "", ""),
        ] {
            assert_eq!(
                cells(DecimalMark::Point, |to| to.number(value, decimals)),
                point
            );
            assert_eq!(
                cells(DecimalMark::Comma, |to| to.number(value, decimals)),
                comma
            );
        }
        assert_eq!(cells(DecimalMark::Point, |to| to.number(None, 3)), "");
    }

    #[test]
    fn texts_are_quoted_and_harmless() {
        for (text, wanted) in [
            ("plain", "plain"),
            ("two words", "two words"),
            ("a,b", "\"a,b\""),
            ("a;b", "\"a;b\""),
            ("say \"so\"", "\"say \"\"so\"\"\""),
            ("line\r\nline\ttab\u{2028}\0", "\"line  line tab  \""),
            ("=1+1", "'=1+1"),
            ("+1", "'+1"),
            ("-0.02 mm", "'-0.02 mm"),
            ("@SUM(A1)", "'@SUM(A1)"),
            (" =1", "\"' =1\""),
            ("\t=1", "\"' =1\""),
            ("\u{ff1d}1", "'\u{ff1d}1"),
            ("=A1,\"x\"", "\"'=A1,\"\"x\"\"\""),
            ("Ø 25 µm 軸", "Ø 25 µm 軸"),
            ("", ""),
        ] {
            assert_eq!(
                cells(DecimalMark::Point, |to| to.say(text)),
                wanted,
                "{text:?}"
            );
        }
    }

    #[test]
    fn cells_stand_between_separators() {
        let row = |mark| {
            let mut table = Table::new(mark, &["a", "b"]);
            table.number(1.5, 1);
            table.empty();
            table.yes(true);
            table.end_row();
            table.into_text()
        };
        assert_eq!(row(DecimalMark::Point), "\u{feff}a,b\r\n1.5,,yes\r\n");
        assert_eq!(row(DecimalMark::Comma), "\u{feff}a;b\r\n1,5;;yes\r\n");
    }
}
