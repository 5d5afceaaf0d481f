//! The job in the address, after `#`: written after a pause in typing, opened when another link is put there.

use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use skimwright::link;
use wasm_bindgen::JsValue;
use yew::prelude::*;

use super::storage::store_address;
use crate::page::owner::{Visit, visit};
use crate::page::state::Action;
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
    /// Nobody's: the link brought nothing, and stands there to be tried again until that was read.
    Unopened,
}

/// Keeps the address in step with the job.
#[hook]
pub(crate) fn use_address(store: &Store) {
    let whose = match (&store.notice, &store.own) {
        (Some(notice), _) if notice.is_of_link() => Whose::Unopened,
        // An answer stands there until the job that it belongs to was found.
        _ if store.sharing.answer_waits() => Whose::Unopened,
        (_, Some(_)) => Whose::Visitor,
        (_, None) => Whose::Own,
    };
    let back = store.print.handed_back;
    use_effect_with((store.job.clone(), whose, back), |(job, whose, back)| {
        let (job, whose, back) = (job.clone(), *whose, *back);
        let timeout = (whose != Whose::Unopened).then(|| {
            Timeout::new(PAUSE_IN_MS, move || {
                let text = if back {
                    link::encode_handed_back(&job)
                } else {
                    link::encode(&job)
                };
                if let Ok(text) = text {
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
    let stands = address();
    if stands == text {
        remember();
        return;
    }
    // Put there a moment ago, it is the page of an owner, which is being loaded.
    if visit(&stands) != Visit::Shop {
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
                if text.is_empty() {
                    return;
                }
                // An owner's page is another page.
                if visit(&text) == Visit::Shop {
                    dispatcher.dispatch(Action::OpenLink(text));
                } else {
                    reload();
                }
            })
        });
        move || drop(listener)
    });
}

/// Loads the page anew when another link is put into the address.
#[hook]
pub(crate) fn use_reload_for_links() {
    use_effect_with((), move |()| {
        let listener = web_sys::window()
            .map(|window| EventListener::new(&window, "hashchange", move |_| reload()));
        move || drop(listener)
    });
}

fn reload() {
    // Where it is refused the page stays as it is, and the person loads it himself.
    let _ = web_sys::window().map(|window| window.location().reload());
}
