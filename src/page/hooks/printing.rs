//! Printing, and how the browser's language writes numbers.

use gloo_events::EventListener;
use js_sys::{Array, Intl, Object};
use skimwright::sheet::DecimalMark;
use wasm_bindgen::JsValue;
use yew::prelude::*;

use crate::page::print::PrintAction;
use crate::page::state::Action;
use crate::page::store::Store;

/// Puts the job sheet into the document when the browser prints by itself, as with Ctrl and P.
#[hook]
pub(crate) fn use_printing(store: &Store) {
    let dispatcher = store.dispatcher();
    use_effect_with((), move |()| {
        let listener = web_sys::window().map(|window| {
            EventListener::new(&window, "beforeprint", move |_| {
                dispatcher.dispatch(Action::Print(PrintAction::Ready));
            })
        });
        move || drop(listener)
    });
}

/// Opens the browser's print dialog.
pub(crate) fn print_page() {
    if let Some(window) = web_sys::window() {
        // Where there is nothing to print with, nothing happens.
        let _ = window.print();
    }
}

/// The decimal mark of the browser's language.
pub(crate) fn decimal_mark() -> DecimalMark {
    let format = Intl::NumberFormat::new(&Array::new(), &Object::new()).format();
    let said = format.call1(&JsValue::UNDEFINED, &JsValue::from_f64(1.5));
    let said = said.ok().and_then(|said| said.as_string());
    match said {
        Some(said) if said.contains(',') => DecimalMark::Comma,
        _ => DecimalMark::Point,
    }
}
