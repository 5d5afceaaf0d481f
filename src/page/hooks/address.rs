//! The job in the address, after `#`: written after a pause in typing, opened when another link is put there.

use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use skimwright::link;
use wasm_bindgen::JsValue;
use yew::prelude::*;

use super::storage::store_address;
use crate::page::state::{Action, Notice};
use crate::page::store::Store;

/// Browsers drop or refuse address changes that come too fast.
const PAUSE_IN_MS: u32 = 700;

/// What stands after `#`, without it.
pub(crate) fn address() -> String {
    let hash = web_sys::window().and_then(|window| window.location().hash().ok());
    hash.map(|hash| hash.trim_start_matches('#').to_owned())
        .unwrap_or_default()
}

/// Whose job is in the address.
#[derive(Clone, Copy, PartialEq)]
enum Whose {
    /// One's own: the address is known again when the page is loaded anew.
    Own,
    /// That of a link that was opened: loading the page anew must ask again.
    Visitor,
    /// Nobody's: the link could not be opened, and stands there to be tried again until that was read.
    Unopened,
}

/// Keeps the address in step with the job.
#[hook]
pub(crate) fn use_address(store: &Store) {
    let whose = match (&store.notice, &store.own) {
        (Some(Notice::BadLink(_)), _) => Whose::Unopened,
        (_, Some(_)) => Whose::Visitor,
        (_, None) => Whose::Own,
    };
    use_effect_with((store.job.clone(), whose), |(job, whose)| {
        let (job, whose) = (job.clone(), *whose);
        let timeout = (whose != Whose::Unopened).then(|| {
            Timeout::new(PAUSE_IN_MS, move || {
                if let Ok(text) = link::encode(&job) {
                    write_address(&text, whose);
                }
            })
        });
        // A newer change takes the place of this one before it is written.
        move || drop(timeout)
    });
}

fn write_address(text: &str, whose: Whose) {
    let remember = || {
        if whose == Whose::Own {
            store_address(text);
        }
    };
    if address() == text {
        remember();
        return;
    }
    let Some(history) = web_sys::window().and_then(|window| window.history().ok()) else {
        return;
    };
    // Refusals are left alone: the next change writes again.
    let done = history.replace_state_with_url(&JsValue::NULL, "", Some(&format!("#{text}")));
    if done.is_ok() {
        remember();
    }
}

/// Opens a link that is put into the address while the page is open.
#[hook]
pub(crate) fn use_links_opened(store: &Store) {
    let dispatcher = store.dispatcher();
    use_effect_with((), move |()| {
        let listener = web_sys::window().map(|window| {
            EventListener::new(&window, "hashchange", move |_| {
                let text = address();
                if !text.is_empty() {
                    dispatcher.dispatch(Action::OpenLink(text));
                }
            })
        });
        move || drop(listener)
    });
}
