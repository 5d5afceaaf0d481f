//! The language: what the browser knows of it, and the attribute that tells readers which it is.

use std::cell::RefCell;

use js_sys::Intl::{NumberFormat, PluralRules, RelativeTimeFormat};
use js_sys::{Array, Date, JsString, Object, Reflect};
use wasm_bindgen::JsValue;
use yew::prelude::*;

use super::storage::stored_view;
use crate::page::words::{Language, Moment, Tongue};

/// The language that the person's browser asks for.
pub(crate) fn asked_language() -> Language {
    let tags = web_sys::window().map(|window| window.navigator().languages());
    let tags: Vec<String> = tags
        .unwrap_or_default()
        .iter()
        .filter_map(|tag| tag.as_string())
        .collect();
    Language::first_of(tags.iter().map(String::as_str))
}

/// The language of whoever reads a page that is not his own job: the one he chose here, or that of his browser.
#[hook]
pub(crate) fn use_reader_tongue() -> Tongue {
    *use_memo((), |()| {
        let (.., chosen) = stored_view();
        tongue(chosen.unwrap_or_else(asked_language))
    })
}

/// A language with its decimal mark.
pub(crate) fn tongue(language: Language) -> Tongue {
    Tongue::new(language, mark_in(&locales(language)).unwrap_or('.'))
}

/// The decimal mark, point or comma, as the browser writes one and a half in a language; without one in its own.
pub(super) fn mark_in(locales: &Array) -> Option<char> {
    let format = NumberFormat::new(locales, &Object::new()).format();
    let shown = format.call1(&JsValue::UNDEFINED, &JsValue::from_f64(1.5));
    let shown = shown.ok()?.as_string()?;
    shown.chars().find(|it| matches!(it, '.' | ','))
}

fn locales(language: Language) -> Array {
    let code = JsString::from(language.code());
    Array::of1(&code)
}

thread_local! {
    /// The rules of plurals last asked for: it takes the browser long to make them.
    static RULES: RefCell<Option<(Language, PluralRules)>> = const { RefCell::new(None) };
}

/// Whether a number takes the singular in a language.
pub(crate) fn is_one(language: Language, number: usize) -> bool {
    // More than this is never counted here.
    let number = u32::try_from(number).unwrap_or(u32::MAX);
    RULES.with_borrow_mut(|rules| {
        let kept = rules.take().filter(|(of, _)| *of == language);
        let (_, kept) = rules.insert(kept.unwrap_or_else(|| {
            let made = PluralRules::new(&locales(language), &Object::new());
            (language, made)
        }));
        kept.select(f64::from(number)) == "one"
    })
}

/// The locale whose calendar is that of a language: English is written here as the British write it.
const fn calendar(language: Language) -> &'static str {
    match language {
        Language::English => "en-GB",
        other => other.code(),
    }
}

/// A day as the language writes it, its month by its short name.
pub(crate) fn day(language: Language, moment: Moment) -> String {
    let date = Date::new_with_year_month_day(
        moment.year,
        i32::try_from(moment.month).unwrap_or_default(),
        i32::try_from(moment.day).unwrap_or(1),
    );
    let how = Object::new();
    for (part, form) in [("day", "numeric"), ("month", "short"), ("year", "numeric")] {
        // A plain object takes any of them.
        let _ = Reflect::set(&how, &JsValue::from_str(part), &JsValue::from_str(form));
    }
    date.to_locale_date_string(calendar(language), &how).into()
}

/// What a language calls this day.
pub(crate) fn today(language: Language) -> String {
    let how = Object::new();
    let _ = Reflect::set(
        &how,
        &JsValue::from_str("numeric"),
        &JsValue::from_str("auto"),
    );
    RelativeTimeFormat::new(&locales(language), &how)
        .format(0.0, "day")
        .into()
}

/// Tells the browser and readers the language of the page.
#[hook]
pub(crate) fn use_language(language: Language) {
    use_effect_with(language, |language| {
        let root = web_sys::window()
            .and_then(|window| window.document())
            .and_then(|document| document.document_element());
        if let Some(root) = root {
            // Without it the page is still read, with the voice of another language.
            let _ = root.set_attribute("lang", language.code());
        }
    });
}
