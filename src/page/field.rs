//! One field: its label, what was typed, what was understood, what is wrong, and keys of our own.

#![expect(
    clippy::ignored_unit_patterns,
    reason = "written by the macro for an element whose name is chosen while it runs"
)]

use gloo_timers::callback::Timeout;
use skimwright::job::Field;
use skimwright::plan::usual_value;
use skimwright::working::Value;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::choice::{Choice, choice_of};
use super::gears::gears_control;
use super::hooks::focus::{has_focus, use_focus};
use super::keys::{KEYS_FOR_LISTS, KeyRow, keys_for};
use super::state::{Action, Wrong};
use super::store::{Store, use_store, words};
use super::words::Words;

/// Milliseconds for which our own keys stay after a field is left: were they gone at once, what is below would move
/// away from under the finger that leaves the field by tapping it.
const KEYS_STAY: u32 = 300;

/// Where a field stands: one field can be on the page twice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Place {
    /// In the plain list of fields.
    List,
    /// Below the drawing, opened from a dimension: it takes the focus and names its section or hole.
    Picked,
}

/// The control that a field needs: a number, or a choice from a list; nothing where the job has no place for it.
pub(crate) fn field_control(store: &Store, field: Field, place: Place) -> Html {
    let words = words(store);
    let (prefix, label) = match place {
        Place::List => ("list", words.field(field).to_owned()),
        Place::Picked => ("picked", words.field_in_full(field)),
    };
    let focus = place == Place::Picked;
    let id = field_id(prefix, field);
    let key = id.clone();
    if field.of_each().is_some() {
        return gears_control(store, field, id, label, focus);
    }
    if let Some(choice) = choice_of(store, field) {
        // A class of tolerance says nothing to who has no table at hand.
        let limits = store.plan.limits.filter(|_| field == Field::Tolerance);
        let hint = limits
            .map(|limits| {
                words
                    .range(&words.size(limits.lower), &words.size(limits.upper))
                    .into()
            })
            .or_else(|| words.hint(field).map(AttrValue::Static));
        return html! { <Choice {key} {id} {label} {hint} {choice} {focus} /> };
    }
    if !store.job.has(field) && field.most_characters().is_none() {
        return Html::default();
    }
    typed_field(field, id, label, focus)
}

/// A field that is typed into.
pub(crate) fn typed_field(
    field: Field,
    id: String,
    label: impl Into<AttrValue>,
    focus: bool,
) -> Html {
    let key = id.clone();
    html! { <TypedField {key} {field} {id} label={label.into()} {focus} /> }
}

/// The id of a field's control: the list and the drawing's editor can both hold the same field.
pub(crate) fn field_id(place: &str, field: Field) -> String {
    format!("{place}-{field}")
}

#[derive(PartialEq, Properties)]
struct FieldProps {
    field: Field,
    id: AttrValue,
    label: AttrValue,
    focus: bool,
}

/// What is typed: a number, a list of numbers, a name.
#[component]
fn TypedField(props: &FieldProps) -> Html {
    let store = use_store();
    let input = use_node_ref();
    let typing = use_state(|| false);
    use_focus(&input, props.focus);
    let Some(store) = store else {
        return Html::default();
    };
    let (field, words) = (props.field, words(&store));
    let reading = store.reading(field);
    let wrong = reading
        .wrong
        .as_ref()
        .map(|wrong| wrong_words(&store, words, field, wrong));
    let list = store.job.gears(field);
    let said = match &list {
        Some(list) => (!list.is_empty()).then(|| words.gears(field, list)),
        None => reading.said.clone(),
    };
    let said = said.map(|said| format!("= {said}"));
    let hint = match &list {
        Some(_) => Some(words.list_hint()),
        None => words.hint(field),
    };
    let dimension = field.bounds().map(|bounds| bounds.dimension);
    let unit = store.sign_of(field);
    let usual = usual_value(&store.job, field)
        .filter(|_| reading.text.is_empty())
        .map(|value| usual_words(words, value, &unit));
    let keys = match &list {
        Some(_) => KEYS_FOR_LISTS,
        None => keys_for(dimension),
    };
    let id = props.id.clone();
    let note_id = format!("{id}-note");
    let on_type = {
        let dispatcher = store.dispatcher();
        Callback::from(move |text: String| dispatcher.dispatch(Action::Type(field, text)))
    };
    let oninput = on_type
        .reform(|event: InputEvent| event.target_unchecked_into::<HtmlInputElement>().value());
    let onfocus = {
        let typing = typing.clone();
        Callback::from(move |event: FocusEvent| {
            typing.set(true);
            // A name is mended more often than it is typed anew.
            if field.most_characters().is_none() {
                event.target_unchecked_into::<HtmlInputElement>().select();
            }
        })
    };
    let onblur = {
        let (typing, input, dispatcher) = (typing.clone(), input.clone(), store.dispatcher());
        Callback::from(move |_: FocusEvent| {
            dispatcher.dispatch(Action::Leave(field));
            let (typing, input) = (typing.clone(), input.clone());
            Timeout::new(KEYS_STAY, move || typing.set(has_focus(&input))).forget();
        })
    };
    // The phone's own "done" tidies the text, as leaving the field does.
    let onkeydown = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: KeyboardEvent| {
            if event.key() == "Enter" && field.of_each().is_none() {
                dispatcher.dispatch(Action::Leave(field));
            }
        })
    };
    // Pasted lines would run together in an input of one line.
    let (tag, kind, rows) = match list {
        Some(_) => ("textarea", None, Some("2")),
        None => ("input", Some("text"), None),
    };
    let most = field.most_characters();
    let is_text = most.is_some();
    html! {
        <div class={classes!("field", list.is_some().then_some("field-choice"), wrong.is_some().then_some("field-wrong"))}>
            <label for={id.clone()}>{ &props.label }</label>
            <div class="field-line">
                <@{tag}
                    ref={input.clone()}
                    {id}
                    class={if is_text { "field-input field-words" } else { "field-input" }}
                    type={kind}
                    {rows}
                    maxlength={most.map(|most| most.to_string())}
                    inputmode={(!is_text).then_some("decimal")}
                    autocomplete="off"
                    autocapitalize={(!is_text).then_some("off")}
                    spellcheck={(!is_text).then_some("false")}
                    enterkeyhint={kind.map(|_| "done")}
                    value={reading.text.clone()}
                    placeholder={usual}
                    aria-describedby={note_id.clone()}
                    aria-invalid={wrong.is_some().then_some("true")}
                    {oninput} {onfocus} {onblur} {onkeydown}
                />
                if !is_text {
                    <span class="field-unit" aria-hidden="true">{ unit }</span>
                }
            </div>
            if *typing && !keys.is_empty() {
                <KeyRow {words} {keys} {input} on_type={on_type.clone()} />
            }
            <p class="field-note" id={note_id} aria-live="polite">
                if let Some(wrong) = wrong {
                    <span class="field-error">{ wrong }</span>
                } else if let Some(said) = said {
                    <span class="field-said">{ said }</span>
                } else if let Some(hint) = hint {
                    <span class="field-hint">{ hint }</span>
                }
            </p>
        </div>
    }
}

/// The usual value, without its unit where that stands beside the input.
fn usual_words(words: Words, value: Value, unit: &str) -> String {
    let value = words.value(value);
    let bare = value.strip_suffix(unit).unwrap_or(&value);
    words.usual(bare.trim_end())
}

/// What is wrong, and with which figure the plan goes on.
fn wrong_words(store: &Store, words: Words, field: Field, wrong: &Wrong) -> String {
    let kept = match wrong {
        Wrong::Unread(_) => store.job.entry(field).map(|entry| store.told(field, entry)),
        Wrong::OutOfBounds | Wrong::BadList(_) => None,
    };
    words.wrong(field, wrong, kept.as_deref())
}
