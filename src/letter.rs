//! Which characters are letters, near enough for names and units.
//!
//! The library's tables know every script, and take two kilobytes of the page.

/// Whether a character is a letter: of ASCII, or of the blocks in which living scripts have theirs.
///
/// # Accuracy
/// Marks and digits between the letters of those blocks pass too; signs, dashes, spaces and marks of direction do not.
pub(crate) const fn is_letter(character: char) -> bool {
    match character {
        '\u{d7}' | '\u{f7}' => false,
        // The micro sign stands apart; from À on Latin to Greek, then kana to Hangul.
        '\u{b5}' | '\u{c0}'..='\u{1fff}' | '\u{3041}'..='\u{d7ff}' => true,
        other => other.is_ascii_alphabetic(),
    }
}

#[cfg(test)]
mod tests {
    use super::is_letter;

    #[test]
    fn letters_are_told_from_signs() {
        for letter in "azAZµÀßéčŁΩжאع中ひ한".chars() {
            assert!(is_letter(letter), "{letter}");
        }
        for other in "0 -_⌀×÷°–…“”\u{202e}\u{200f}€→\u{3000}、\u{feff}".chars() {
            assert!(!is_letter(other), "{other}");
        }
    }
}
