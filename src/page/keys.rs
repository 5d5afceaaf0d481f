//! The row of keys for what a phone's number pad lacks.

use skimwright::quantity::Dimension;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::words::{Text, Words};

/// What stands on a key, what it types, and its name.
pub(crate) type Key = (&'static str, &'static str, Text);

const SLASH: Key = ("/", "/", Text::KeySlash);
const MINUS: Key = ("−", "-", Text::KeyMinus);
const PLUS: Key = ("+", "+", Text::KeyPlus);
const INCH: Key = ("\"", "\"", Text::KeyInch);
const MILLIMETRE: Key = ("mm", "mm", Text::KeyMillimetre);
const SEMICOLON: Key = (";", ";", Text::KeySemicolon);
const SPACE: Key = ("␣", " ", Text::KeySpace);

/// The keys for a list of numbers.
pub(crate) const KEYS_FOR_LISTS: &[Key] = &[SPACE, SLASH, SEMICOLON];

/// The keys that make sense for what a field measures: lengths are summed and mixed of inches and millimetres, tapers
/// and angles can be fractions and lean either way, the rest are plain numbers.
pub(crate) const fn keys_for(dimension: Option<Dimension>) -> &'static [Key] {
    match dimension {
        Some(Dimension::Length) => &[SLASH, MINUS, PLUS, INCH, MILLIMETRE, SPACE],
        Some(Dimension::Taper | Dimension::Angle) => &[SLASH, MINUS, SPACE],
        _ => &[],
    }
}

#[derive(PartialEq, Properties)]
pub(crate) struct KeyRowProps {
    pub(crate) words: Words,
    /// What there is a key for.
    pub(crate) keys: &'static [Key],
    /// The field that the keys type into.
    pub(crate) input: NodeRef,
    /// Gets the whole new text.
    pub(crate) on_type: Callback<String>,
}

/// Each key types its sign where the cursor stands; the field keeps the focus, so the phone's own pad stays up.
#[component]
pub(crate) fn KeyRow(props: &KeyRowProps) -> Html {
    let key = |&(face, sign, name): &Key| {
        let (input, on_type) = (props.input.clone(), props.on_type.clone());
        let onclick = Callback::from(move |_: MouseEvent| {
            // A field of several lines is typed into in the same way as one of a single line.
            let input = input.get().map(JsCast::unchecked_into::<HtmlInputElement>);
            if let Some(text) = input.and_then(|input| type_at_cursor(&input, sign)) {
                on_type.emit(text);
            }
        });
        html! {
            <button
                type="button"
                class="key"
                tabindex="-1"
                aria-label={props.words.say(name)}
                onpointerdown={Callback::from(|event: PointerEvent| event.prevent_default())}
                onmousedown={Callback::from(|event: MouseEvent| event.prevent_default())}
                {onclick}
            >{ face }</button>
        }
    };
    html! {
        <div class="keys" role="group" aria-label={props.words.say(Text::KeysLabel)}>
            { for props.keys.iter().map(key) }
        </div>
    }
}

/// Puts a sign in the place of the selection and the cursor behind it; gives the whole text.
fn type_at_cursor(input: &HtmlInputElement, sign: &str) -> Option<String> {
    let start = input.selection_start().ok().flatten()?;
    let end = input.selection_end().ok().flatten()?;
    input
        .set_range_text_with_start_and_end_and_selection_mode(
            sign,
            start,
            end,
            web_sys::SelectionMode::End,
        )
        .ok()?;
    Some(input.value())
}
