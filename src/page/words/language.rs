//! The languages of the page, and how each writes numbers and counts things.

use skimwright::quantity::with_mark;

use super::{Ask, FindingWords, Moment};

/// The languages of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Language {
    #[default]
    English,
    German,
    Spanish,
}

impl Language {
    pub(crate) const ALL: [Self; 3] = [Self::English, Self::German, Self::Spanish];

    /// Its code by ISO 639-1, as `lang` and the browser have it.
    pub(crate) const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::Spanish => "es",
        }
    }

    /// Its name in itself: who cannot read the language of the page still finds it.
    pub(crate) const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
            Self::Spanish => "Español",
        }
    }

    /// The first of a person's languages that the page has; tags such as `de-AT`, the dearest first.
    pub(crate) fn first_of<'a>(tags: impl IntoIterator<Item = &'a str>) -> Self {
        let known = |tag: &str| {
            let code = tag.split('-').next().unwrap_or_default();
            Self::ALL
                .into_iter()
                .find(|language| language.code().eq_ignore_ascii_case(code))
        };
        tags.into_iter().find_map(known).unwrap_or_default()
    }
}

/// A language with the decimal mark that the browser has for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Tongue {
    language: Language,
    mark: char,
}

impl Default for Tongue {
    fn default() -> Self {
        Self {
            language: Language::English,
            mark: '.',
        }
    }
}

impl Tongue {
    pub(crate) const fn new(language: Language, mark: char) -> Self {
        Self { language, mark }
    }

    pub(crate) const fn language(self) -> Language {
        self.language
    }

    pub(crate) const fn decimal_mark(self) -> char {
        self.mark
    }

    /// A text of the core with the decimal mark of the language.
    pub(crate) fn marked(self, text: String) -> String {
        with_mark(text, self.mark)
    }

    /// A day of the calendar.
    pub(crate) fn day(self, moment: Moment) -> String {
        day(self.language, moment)
    }

    /// What the day is called that is today.
    pub(crate) fn today(self) -> String {
        today(self.language)
    }

    /// How many of something, in the form that the number asks for.
    pub(crate) fn count(self, number: usize, one: &str, more: &str) -> String {
        let form = if is_one(self.language, number) {
            one
        } else {
            more
        };
        format!("{number} {form}")
    }
}

/// What the browser knows of calendars.
#[cfg(target_arch = "wasm32")]
use crate::page::hooks::language::{day, today};

/// The same on the host, where tests have no browser to ask: a day by its numbers.
#[cfg(not(target_arch = "wasm32"))]
fn day(_: Language, moment: Moment) -> String {
    format!("{} {} {}", moment.day, moment.month + 1, moment.year)
}

#[cfg(not(target_arch = "wasm32"))]
fn today(_: Language) -> String {
    String::new()
}

/// Whether a number takes the singular.
#[cfg(target_arch = "wasm32")]
fn is_one(language: Language, number: usize) -> bool {
    crate::page::hooks::language::is_one(language, number)
}

/// The same on the host, where tests have no browser to ask: all three languages have one singular.
#[cfg(not(target_arch = "wasm32"))]
fn is_one(_: Language, number: usize) -> bool {
    number == 1
}

/// What a language says, brought to its decimal mark.
pub(super) trait Said {
    fn marked(self, tongue: Tongue) -> Self;
}

/// A fixed text has the mark of its language already.
impl Said for &'static str {
    fn marked(self, _: Tongue) -> Self {
        self
    }
}

impl Said for String {
    fn marked(self, tongue: Tongue) -> Self {
        tongue.marked(self)
    }
}

impl<T: Said> Said for Option<T> {
    fn marked(self, tongue: Tongue) -> Self {
        self.map(|said| said.marked(tongue))
    }
}

impl<T: Said> Said for Vec<T> {
    fn marked(self, tongue: Tongue) -> Self {
        self.into_iter().map(|said| said.marked(tongue)).collect()
    }
}

impl<T: Said, const N: usize> Said for [T; N] {
    fn marked(self, tongue: Tongue) -> Self {
        self.map(|said| said.marked(tongue))
    }
}

impl Said for FindingWords {
    fn marked(self, tongue: Tongue) -> Self {
        Self {
            what: tongue.marked(self.what),
            mend: tongue.marked(self.mend),
        }
    }
}

impl Said for Ask {
    fn marked(self, tongue: Tongue) -> Self {
        Self {
            says: tongue.marked(self.says),
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_language_that_the_page_has_is_taken() {
        for (tags, language) in [
            (&["de-AT", "en"][..], Language::German),
            (&["fr", "es-MX", "de"], Language::Spanish),
            (&["EN-us"], Language::English),
            (&["nl"], Language::English),
            (&["den"], Language::English),
            (&[], Language::English),
        ] {
            assert_eq!(
                Language::first_of(tags.iter().copied()),
                language,
                "{tags:?}"
            );
        }
    }

    #[test]
    fn what_is_counted_has_its_form() {
        let tongue = Tongue::new(Language::German, ',');
        assert_eq!(tongue.count(1, "Schnitt", "Schnitte"), "1 Schnitt");
        assert_eq!(tongue.count(0, "Schnitt", "Schnitte"), "0 Schnitte");
        assert_eq!(tongue.marked("1.5".to_owned()), "1,5");
    }
}
