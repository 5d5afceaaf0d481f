//! The drawing as the form: a tap on a dimension opens its field right below.

use std::rc::Rc;

use skimwright::job::Field;
use skimwright::sheet::{self, Canvas, Role, drawing};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::drawing::{PartDrawing, dimension_id};
use super::field::{Place, field_control, field_id};
use super::hooks::focus::focus_first;
use super::hooks::width::use_width;
use super::state::{Action, Stage};
use super::store::{Store, use_store, words};
use super::words::Text;

/// The narrowest drawing that is still of use.
const LEAST_WIDTH: i32 = 240;

#[component]
pub(crate) fn DrawingSheet() -> Html {
    let store = use_store();
    let frame = use_node_ref();
    let width = use_width(&frame);
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    let canvas = Canvas {
        width: f64::from(width.max(LEAST_WIDTH)),
        ..Canvas::default()
    };
    let stage = match store.stage {
        Stage::Received => sheet::Stage::Received,
        Stage::Wanted => sheet::Stage::Wanted,
        Stage::Plan => sheet::Stage::Plan,
    };
    let drawn = Rc::new(drawing(&store.job, &store.plan, stage, canvas, store.units));
    let names: Rc<[AttrValue]> = drawn
        .dimensions
        .iter()
        .map(|mark| words.dimension(mark.field, mark.measure, &mark.text).into())
        .collect();
    let on_pick = {
        let dispatcher = store.dispatcher();
        Callback::from(move |field: Field| dispatcher.dispatch(Action::Pick(Some(field))))
    };
    let empty = drawn.shapes.is_empty();
    let cut = drawn.shapes.iter().any(|shape| shape.role == Role::CutLine);
    html! {
        <section class="sheet" aria-label={words.say(Text::DrawingLabel)}>
            <div ref={frame} class="sheet-frame">
                if width > 0 && !empty {
                    <PartDrawing
                        drawing={drawn}
                        label={words.say(Text::DrawingLabel)}
                        {names}
                        picked={store.picked}
                        {on_pick}
                    />
                }
            </div>
            if empty {
                <p>{ words.say(Text::DrawingMissing) }</p>
            } else {
                <ul class="sheet-key" aria-hidden="true">
                    <li class="key-received">{ words.say(Text::DrawingKeyReceived) }</li>
                    <li class="key-finished">{ words.say(Text::DrawingKeyFinished) }</li>
                    <li class="key-removed">{ words.say(Text::DrawingKeyRemoved) }</li>
                    if cut {
                        <li class="key-cut">{ words.say(Text::DrawingKeyCut) }</li>
                    }
                </ul>
            }
            if let Some(field) = store.picked {
                { picked(&store, field) }
            } else if !empty {
                <p class="field-hint">{ words.say(Text::DrawingHint) }</p>
            }
        </section>
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
            <button type="button" class="button" onclick={close.reform(|_: MouseEvent| ())}>
                { words(store).say(Text::Done) }
            </button>
        </div>
    }
}
