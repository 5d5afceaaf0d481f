//! Printing, and how the browser's language writes numbers.

use gloo_events::EventListener;
use js_sys::Array;
use skimwright::sheet::DecimalMark;
use yew::prelude::*;

use super::language::mark_in;
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
    match mark_in(&Array::new()) {
        Some(',') => DecimalMark::Comma,
        _ => DecimalMark::Point,
    }
}
