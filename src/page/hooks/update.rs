//! A newer version of the page: told when it waits, used only when the person agrees.

use gloo_events::EventListener;
use wasm_bindgen::{JsCast, JsValue};
use yew::prelude::*;

use crate::page::state::Action;
use crate::page::store::Store;

/// Listens for the start script, which watches the service worker.
#[hook]
pub(crate) fn use_updates(store: &Store) {
    let dispatcher = store.dispatcher();
    use_effect_with((), move |()| {
        // The worker may have been quicker than the page.
        if call_shell("updateWaits").is_ok_and(|waits| waits.is_truthy()) {
            dispatcher.dispatch(Action::UpdateWaits);
        }
        let listener = web_sys::window().map(|window| {
            EventListener::new(&window, "skimwright:update", move |_| {
                dispatcher.dispatch(Action::UpdateWaits);
            })
        });
        move || drop(listener)
    });
}

/// Asks the start script to change over.
pub(crate) fn apply_update() {
    // Without the start script there is nothing to change over to.
    let _ = call_shell("applyUpdate");
}

/// Calls a function of the start script, which stands on the window.
pub(super) fn call_shell(name: &str) -> Result<JsValue, JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let shell = js_sys::Reflect::get(&window, &"skimwright".into())?;
    let function: js_sys::Function = js_sys::Reflect::get(&shell, &name.into())?.dyn_into()?;
    function.call0(&shell)
}
