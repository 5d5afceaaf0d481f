//! Storage that the browser promises not to clear by itself.

use wasm_bindgen_futures::{JsFuture, spawn_local};
use yew::prelude::*;

use super::storage::asked_to_last;
use crate::page::jobs::JobsAction;
use crate::page::state::{Action, Cover};
use crate::page::store::Store;

/// Asks for it once, after the first real job is kept: a browser that puts the question to the person must not do so
/// before there is anything to keep. Looks what was promised each time the jobs are shown.
#[hook]
pub(crate) fn use_lasting(store: &Store) {
    let real = store.jobs.keeps_a_real_one();
    let shown = store.cover == Some(Cover::Jobs);
    let dispatcher = store.dispatcher();
    use_effect_with((real, shown), move |(real, shown)| {
        let (asks, shown) = (*real && !asked_to_last(), *shown);
        if !asks && !shown {
            return;
        }
        let Some(window) = web_sys::window() else {
            return;
        };
        let storage = window.navigator().storage();
        let promise = if asks {
            storage.persist()
        } else {
            storage.persisted()
        };
        // A browser that cannot say it promises nothing.
        let Ok(promise) = promise else { return };
        spawn_local(async move {
            if let Ok(lasts) = JsFuture::from(promise).await {
                dispatcher.dispatch(Action::Jobs(JobsAction::Lasting(lasts.is_truthy())));
            }
        });
    });
}
