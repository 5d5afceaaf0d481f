//! Where the focus goes when what had it is gone.

use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

use crate::page::state::Spot;

/// Takes the focus to a control when it appears, if it is wanted there.
#[hook]
pub(crate) fn use_focus(control: &NodeRef, wanted: bool) {
    let control = control.clone();
    use_effect_with(wanted, move |wanted| {
        if *wanted && let Some(control) = control.cast::<HtmlElement>() {
            let _ = control.focus();
        }
    });
}

/// Focuses the first of these elements that is there. An element of a drawing has the same `focus` as any other.
pub(crate) fn focus_first(ids: &[String]) {
    let document = web_sys::window().and_then(|window| window.document());
    let Some(document) = document else { return };
    let found = ids.iter().find_map(|id| document.get_element_by_id(id));
    if let Some(element) = found {
        let _ = element.unchecked_into::<HtmlElement>().focus();
    }
}

/// Whether an element that is still there has the focus.
pub(crate) fn has_focus(control: &NodeRef) -> bool {
    let document = web_sys::window().and_then(|window| window.document());
    let focused = document.and_then(|document| document.active_element());
    focused.is_some() && focused == control.cast::<Element>()
}

/// Takes the focus to where a change left off, each time it is sent there.
#[hook]
pub(crate) fn use_spot(spot: Option<(Spot, u32)>) {
    use_effect_with(spot, |spot| {
        if let Some((spot, _)) = spot {
            focus_first(&[spot.id(), spot.or_else().id()]);
        }
    });
}

/// To the top of the page, where another stage begins.
pub(crate) fn scroll_to_top() {
    if let Some(window) = web_sys::window() {
        window.scroll_to_with_x_and_y(0.0, 0.0);
    }
}
