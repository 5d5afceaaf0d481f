//! The keypad: large keys for gloves, the number as it is understood, where and with what it was measured. Real keys work
//! too: its fields are real ones that call up no keys of the device.

use skimwright::job::{Instrument, Job};
use skimwright::measuring::{Keyed, shown_bare};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::{Keypad, LatheAction, PadAction, PadFor, PadKey, PadPlace, PadSlot, PadWrong};
use crate::page::hooks::clock::{at_once, now};
use crate::page::markup::option;
use crate::page::modal::modal_closing;
use crate::page::state::Action;
use crate::page::store::{Store, on, use_store, words};
use crate::page::words::{OfLathe, Text};

/// The keys in three columns, as on a phone.
const KEYS: [char; 9] = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];

/// The keypad over the page while it is open.
pub(super) fn pad(store: &Store) -> Html {
    let Some(pad) = &store.lathe.pad else {
        return Html::default();
    };
    let title = words(store).say(Text::Lathe(OfLathe::PadTitle(pad.of)));
    modal_closing(
        title.into(),
        Action::Lathe(LatheAction::ClosePad),
        html! { <Pad /> },
    )
}

fn act(store: &Store, action: PadAction) -> Callback<MouseEvent> {
    on(store, move || {
        Action::Lathe(LatheAction::Pad(action.clone()))
    })
}

#[component]
fn Pad() -> Html {
    let Some(store) = use_store() else {
        return Html::default();
    };
    let Some(pad) = &store.lathe.pad else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Lathe(text));
    let understood = pad.understood(&store.job, &store.plan, store.units);
    let keep = at_once(&store, LatheAction::Keep);
    html! {
        <div class="pad">
            <div class="pad-said">
            if !matches!(pad.of, PadFor::Infeed(_)) {
                { measured(&store, pad) }
            }
            { shown(&store, pad, &understood) }
            { slot(&store, pad, PadSlot::Value) }
            if pad.of == PadFor::Diameter(PadPlace::At) {
                { slot(&store, pad, PadSlot::Position) }
            }
            if !matches!(pad.of, PadFor::Infeed(_)) {
                { how(&store, pad) }
            }
            </div>
            <div class="pad-hand">
            <div class="pad-keys" role="group" aria-label={say(OfLathe::PadKeys)}>
                { for KEYS.into_iter().map(|sign| key(&store, sign)) }
                { any_key(&store, PadKey::Erase, "⌫", Some(say(OfLathe::PadErase))) }
                { key(&store, '0') }
                { any_key(&store, PadKey::Sign('.'), &words.decimal_mark().to_string(), Some(say(OfLathe::PadMark))) }
            </div>
            <button type="button" class="act act-main pad-keep" onclick={keep}>{ say(OfLathe::PadKeep) }</button>
            </div>
        </div>
    }
}

/// What was measured, and where.
fn measured(store: &Store, pad: &Keypad) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let what = PadFor::MEASURED.into_iter().map(|of| {
        let chosen = pad.of.is_like(of);
        let of = if chosen { pad.of } else { of };
        option(
            say(OfLathe::PadName(of)),
            chosen,
            act(store, PadAction::For(of)),
        )
    });
    let place = |at: PadPlace| {
        let of = PadFor::Diameter(at);
        option(
            say(OfLathe::Place(at)),
            pad.of == of,
            act(store, PadAction::For(of)),
        )
    };
    html! {
        <>
            <fieldset class="pad-options"><legend class="for-readers">{ say(OfLathe::PadWhat) }</legend>{ for what }</fieldset>
            if matches!(pad.of, PadFor::Diameter(_)) {
                <fieldset class="pad-options"><legend class="for-readers">{ say(OfLathe::PadPlaceLabel) }</legend>{ for PadPlace::ALL.into_iter().map(place) }</fieldset>
            }
        </>
    }
}

/// The whole number, large: what was typed in ink, what stays before it soft.
fn shown(store: &Store, pad: &Keypad, understood: &Result<Keyed, PadWrong>) -> Html {
    let words = words(store);
    let unit = pad.unit(PadSlot::Value, store.units).sign();
    let number = match understood {
        Ok(keyed) => {
            let text = words.marked(keyed.text.clone());
            let front: String = text.chars().take(keyed.kept).collect();
            let back: String = text.chars().skip(keyed.kept).collect();
            html! { <><span class="pad-kept">{ front }</span>{ back }</> }
        }
        Err(_) if pad.value.is_empty() => html! { <span class="pad-kept">{ "–" }</span> },
        Err(_) => html! { { words.marked(pad.value.clone()) } },
    };
    let wrong = match understood {
        Err(wrong) if !pad.value.is_empty() || pad.tried => Some(words.pad_wrong(wrong)),
        _ => None,
    };
    let before = pad.before(&store.job, &store.plan);
    let rule = match before {
        Some(before) => {
            let decimals = pad.decimals(&store.job, store.units);
            let unit = pad.unit(PadSlot::Value, store.units);
            words.pad_before(
                &words.marked(shown_bare(before, unit, decimals)),
                unit.sign(),
            )
        }
        None => words.say(Text::Lathe(OfLathe::PadPlain)).to_owned(),
    };
    html! {
        <>
            <output class="pad-shown" for={slot_id(PadSlot::Value)}>{ number }<span class="pad-unit">{ "\u{a0}" }{ unit }</span></output>
            <p class="pad-note" id="pad-note" aria-live="polite">
                if let Some(wrong) = wrong {
                    <span class="field-error">{ wrong }</span>
                } else {
                    { rule }
                }
            </p>
        </>
    }
}

const fn slot_id(slot: PadSlot) -> &'static str {
    match slot {
        PadSlot::Value => "pad-value",
        PadSlot::Position => "pad-position",
        PadSlot::Temperature => "pad-temperature",
    }
}

/// A field that the keys type into while it is the chosen one.
fn slot(store: &Store, pad: &Keypad, slot: PadSlot) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let wrong = match slot {
        PadSlot::Value => None,
        PadSlot::Position => pad.position(store.units).err(),
        PadSlot::Temperature => pad.temperature(store.units).err(),
    };
    let wrong = wrong.filter(|_| pad.tried || !pad.text(slot).is_empty());
    let oninput = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: InputEvent| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let text = PadAction::Text(slot, input.value());
            dispatcher.dispatch(Action::Lathe(LatheAction::Pad(text)));
        })
    };
    let onfocus = on(store, move || {
        Action::Lathe(LatheAction::Pad(PadAction::Slot(slot)))
    });
    let onkeydown = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: KeyboardEvent| {
            if event.key() == "Enter" {
                event.prevent_default();
                dispatcher.dispatch(Action::Lathe(LatheAction::Keep(now())));
            }
        })
    };
    let id = slot_id(slot);
    let told = match slot {
        PadSlot::Value => "pad-note".to_owned(),
        _ => format!("{id}-note"),
    };
    let placeholder = (slot == PadSlot::Temperature).then(|| say(OfLathe::PadRoom));
    html! {
        <div class={classes!("pad-slot", (pad.slot == slot).then_some("pad-slot-chosen"))}>
            <label for={id}>{ say(OfLathe::PadSlot(slot)) }</label>
            <input {id} autofocus={slot == PadSlot::Value} class="field-input" type="text" inputmode="none" autocomplete="off" enterkeyhint="done"
                value={words.marked(pad.text(slot).to_owned())} {placeholder}
                aria-describedby={told.clone()} aria-invalid={wrong.is_some().then_some("true")}
                {oninput} {onfocus} {onkeydown} />
            <span aria-hidden="true">{ pad.unit(slot, store.units).sign() }</span>
            if slot != PadSlot::Value {
                <span id={told} class="field-error" aria-live="polite">{ wrong.map(|wrong| words.pad_wrong(&wrong)) }</span>
            }
        </div>
    }
}

/// The instrument and the temperature of the work.
fn how(store: &Store, pad: &Keypad) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let onchange = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: Event| {
            let select: web_sys::HtmlSelectElement = event.target_unchecked_into();
            let chosen = PadAction::Instrument(select.value().parse().ok());
            dispatcher.dispatch(Action::Lathe(LatheAction::Pad(chosen)));
        })
    };
    html! {
        <div class="pad-how">
            if !store.job.shop.instruments.is_empty() {
                <div class="pad-slot">
                    <label for="pad-instrument">{ say(OfLathe::PadInstrument) }</label>
                    <select id="pad-instrument" class="field-input" {onchange}>
                        <option value="" selected={pad.instrument.is_none()}>{ say(OfLathe::UsualMicrometer) }</option>
                        { for instruments(&store.job).map(|(at, instrument)| html! {
                            <option value={at.to_string()} selected={pad.instrument == Some(at)}>{ words.instrument(instrument) }</option>
                        }) }
                    </select>
                </div>
            }
            { slot(store, pad, PadSlot::Temperature) }
        </div>
    }
}

fn instruments(job: &Job) -> impl Iterator<Item = (u8, &Instrument)> {
    (0..u8::MAX).zip(&job.shop.instruments)
}

fn key(store: &Store, sign: char) -> Html {
    any_key(store, PadKey::Sign(sign), &sign.to_string(), None)
}

/// A key leaves the focus in its field, so that real keys go on working.
fn any_key(store: &Store, key: PadKey, face: &str, name: Option<&'static str>) -> Html {
    html! {
        <button type="button" class="pad-key" aria-label={name}
            onpointerdown={Callback::from(|event: PointerEvent| event.prevent_default())}
            onmousedown={Callback::from(|event: MouseEvent| event.prevent_default())}
            onclick={act(store, PadAction::Key(key))}
        >{ face.to_owned() }</button>
    }
}
