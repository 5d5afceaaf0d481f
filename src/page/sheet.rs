//! The drawing as the form: a tap on a dimension opens its field right below.

use std::rc::Rc;

use skimwright::job::Field;
use skimwright::sheet::{self, Canvas, Drawing, Role, drawing};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::drawing::{PartDrawing, dimension_id};
use super::field::{Place, field_control, field_id};
use super::hooks::download::{save_png, save_svg};
use super::hooks::focus::focus_first;
use super::hooks::width::use_room;
use super::hooks::zoom::{Zoom, use_zoom};
use super::markup::button as plain_button;
use super::state::{Action, Stage};
use super::store::{Store, use_store, words};
use super::words::{OfTime, Text, Words};

/// The narrowest drawing that is still of use.
const LEAST_WIDTH: i32 = 240;

/// How much of the window's height a drawing with its dimensions takes, so that a field has room below it.
const SHARE: f64 = 0.6;

#[component]
pub(crate) fn DrawingSheet() -> Html {
    let store = use_store();
    let (frame, scroll) = (use_node_ref(), use_node_ref());
    let (width, height) = use_room(&frame);
    let zoom = use_zoom(&scroll);
    let all = use_state_eq(|| false);
    let last_picked = use_mut_ref(|| None);
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    // It stays in sight when its field is closed: the focus goes back to it.
    if let Some(field) = store.editing.or(store.picked) {
        *last_picked.borrow_mut() = Some(field);
    }
    let canvas = Canvas {
        width: f64::from(width.max(LEAST_WIDTH)) * zoom.factor,
        height: f64::from(height) * SHARE * zoom.factor,
        all: *all,
        picked: *last_picked.borrow(),
        pass: store.pass,
        ..Canvas::default()
    };
    let mut drawn = drawing(&store.job, &store.plan, stage(&store), canvas, store.units);
    for mark in &mut drawn.dimensions {
        mark.text = words.marked(core::mem::take(&mut mark.text));
    }
    let drawn = Rc::new(drawn);
    let names: Rc<[AttrValue]> = drawn
        .dimensions
        .iter()
        .map(|mark| words.dimension(mark.field, mark.measure, &mark.text).into())
        .collect();
    let on_pick = {
        let dispatcher = store.dispatcher();
        Callback::from(move |field: Field| dispatcher.dispatch(Action::Pick(Some(field))))
    };
    let onkeydown = {
        let zoom = zoom.clone();
        Callback::from(move |event: KeyboardEvent| {
            if zoom.key(&event) {
                event.prevent_default();
            }
        })
    };
    let empty = drawn.shapes.is_empty();
    html! {
        <section class={classes!("sheet", all.then_some("sheet-all"))} aria-label={words.say(Text::DrawingLabel)}>
            <div ref={frame} class="sheet-frame">
                <div ref={scroll} class="sheet-scroll" {onkeydown}>
                    if width > 0 && !empty {
                        <PartDrawing
                            drawing={drawn.clone()}
                            label={words.say(Text::DrawingLabel)}
                            {names}
                            picked={store.picked}
                            {on_pick}
                        />
                    }
                </div>
            </div>
            if empty {
                <p>{ words.say(Text::DrawingMissing) }</p>
            } else {
                { key(words, &drawn) }
                { fewer(words, drawn.hidden, &all) }
            }
            if let Some(field) = store.picked {
                { picked(&store, field) }
            } else if !empty {
                <p class="field-hint">{ words.say(Text::DrawingHint) }</p>
            }
            if !empty {
                { tools(&store, words, &zoom) }
            }
        </section>
    }
}

fn stage(store: &Store) -> sheet::Stage {
    match store.stage {
        Stage::Received => sheet::Stage::Received,
        Stage::Wanted => sheet::Stage::Wanted,
        Stage::Plan | Stage::Cut | Stage::HandBack => sheet::Stage::Plan,
    }
}

/// What the lines and tints stand for; break lines have a sentence of their own.
const KEY: [(Role, &str, Text); 12] = [
    (Role::ThinOutline, "key-thin", Text::DrawingKeyReceived),
    (Role::ThickOutline, "key-thick", Text::DrawingKeyFinished),
    (Role::RemovedArea, "key-removed", Text::DrawingKeyRemoved),
    (Role::RoughLayer, "key-layer", Text::Time(OfTime::KeyRough)),
    (Role::LastLayer, "key-last", Text::Time(OfTime::KeyLast)),
    (
        Role::PickedLayer,
        "key-picked",
        Text::Time(OfTime::KeyPicked),
    ),
    (Role::CutLine, "key-cut", Text::DrawingKeyCut),
    (Role::KerfArea, "key-kerf", Text::DrawingKeyKerf),
    (Role::SectionHatch, "key-section", Text::DrawingKeySection),
    (Role::ThreadThin, "key-thread", Text::DrawingKeyThread),
    (Role::FlatMark, "key-flat", Text::DrawingKeyFlat),
    (Role::Axis, "key-axis", Text::DrawingKeyAxis),
];

/// What the lines stand for, and what is marked.
fn key(words: Words, drawn: &Drawing) -> Html {
    let kinds = KEY
        .iter()
        .filter(|(role, ..)| drawn.shapes.iter().any(|shape| shape.role == *role));
    html! {
        <>
            <ul class="sheet-key" aria-hidden="true">
                { for kinds.map(|&(_, class, text)| html! { <li {class}>{ words.say(text) }</li> }) }
            </ul>
            if !drawn.marks.is_empty() {
                <ol class="sheet-marks">
                    { for drawn.marks.iter().map(|mark| html! { <li>{ words.mark(mark) }</li> }) }
                </ol>
            }
            if drawn.breaks > 0 {
                <p class="field-hint">{ words.say(Text::DrawingBroken) }</p>
            }
        </>
    }
}

/// How many dimensions are left out, and a button that shows them after all.
fn fewer(words: Words, hidden: usize, all: &UseStateHandle<bool>) -> Html {
    if hidden == 0 && !**all {
        return Html::default();
    }
    let text = if **all {
        Text::DimensionsFewer
    } else {
        Text::DimensionsAll
    };
    let onclick = {
        let all = all.clone();
        Callback::from(move |_: MouseEvent| all.set(!*all))
    };
    html! {
        <div class="sheet-hidden">
            if hidden > 0 {
                <p class="field-hint">{ words.hidden(hidden) }</p>
            }
            { plain_button(words.say(text), onclick) }
        </div>
    }
}

/// The buttons below the drawing: its size, and its files.
fn tools(store: &Store, words: Words, zoom: &Zoom) -> Html {
    let button = |text, onclick: Callback<MouseEvent>| {
        html! {
            { plain_button(words.say(text), onclick) }
        }
    };
    let zoomed = |change: fn(&Zoom)| {
        let zoom = zoom.clone();
        Callback::from(move |_: MouseEvent| change(&zoom))
    };
    let saved = |save: fn(&str, &str)| {
        let (store, stage) = (store.clone(), stage(store));
        Callback::from(move |_: MouseEvent| {
            let paper = sheet::paper(&store.job, &store.plan, stage, store.units);
            let title = &store.job.title;
            let unit = words.length_unit();
            save(&sheet::svg(&paper, title, unit), &sheet::file_name(title));
        })
    };
    html! {
        <div class="sheet-tools">
            { button(Text::DrawingLarger, zoomed(Zoom::larger)) }
            { button(Text::DrawingSmaller, zoomed(Zoom::smaller)) }
            { button(Text::DrawingWhole, zoomed(Zoom::whole)) }
            { button(Text::SaveSvg, saved(save_svg)) }
            { button(Text::SavePng, saved(save_png)) }
        </div>
    }
}

/// The open field. Enter, Escape and its button close it, and the focus goes back to where it was opened.
fn picked(store: &Store, field: Field) -> Html {
    let dispatcher = store.dispatcher();
    let close = Callback::from(move |()| {
        focus_first(&[dimension_id(field), field_id("list", field)]);
        dispatcher.dispatch(Action::Pick(None));
    });
    let onkeydown = {
        let close = close.clone();
        Callback::from(move |event: KeyboardEvent| {
            let typed_in = event.target_dyn_into::<HtmlInputElement>().is_some();
            if event.key() == "Escape" || (typed_in && event.key() == "Enter") {
                event.prevent_default();
                close.emit(());
            }
        })
    };
    html! {
        <div class="picked" {onkeydown}>
            { field_control(store, field, Place::Picked) }
            // Pressed, it leaves the focus in the field: without it the field's keys go, and the button moves away
            // from under the pointer.
            <button type="button" class="button" onclick={close.reform(|_: MouseEvent| ())}
                onmousedown={|event: MouseEvent| event.prevent_default()}>
                { words(store).say(Text::Done) }
            </button>
        </div>
    }
}
