//! Keeping the screen on: the few calls of the Screen Wake Lock, which the bindings do not have yet.
//!
//! A browser takes the lock away when the page is hidden; it is asked for again when the page is back.

use core::cell::RefCell;
use std::rc::Rc;

use gloo_events::EventListener;
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use yew::prelude::*;

/// Whether the screen stays on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Awake {
    /// Asked for, not answered yet.
    #[default]
    Asked,
    Yes,
    /// The browser said no: the battery is low, or the page may not.
    Refused,
    /// The browser has no such thing.
    Unknown,
}

/// What is held, and whether it is still wanted: the answer may come when nobody asks any more.
#[derive(Default)]
struct Held {
    lock: Option<JsValue>,
    wanted: bool,
    asking: bool,
}

/// Keeps the screen on as long as the component is there, and says whether that is so.
#[hook]
pub(crate) fn use_awake() -> Awake {
    let said = use_state_eq(Awake::default);
    {
        let said = said.clone();
        use_effect_with((), move |()| {
            let held = Rc::new(RefCell::new(Held {
                wanted: true,
                ..Held::default()
            }));
            ask(&held, &said);
            let document = web_sys::window().and_then(|window| window.document());
            let listener = document.map(|document| {
                let held = held.clone();
                EventListener::new(&document, "visibilitychange", move |_| ask(&held, &said))
            });
            move || {
                drop(listener);
                let mut held = held.borrow_mut();
                held.wanted = false;
                if let Some(lock) = held.lock.take() {
                    release(&lock);
                }
            }
        });
    }
    *said
}

/// Asks for the lock unless it is held; a hidden page gets none.
fn ask(held: &Rc<RefCell<Held>>, said: &UseStateHandle<Awake>) {
    let hidden = web_sys::window()
        .and_then(|window| window.document())
        .is_none_or(|document| document.hidden());
    {
        let mut held = held.borrow_mut();
        let stands = held.lock.as_ref().is_some_and(|lock| !is_released(lock));
        if hidden || stands || held.asking {
            return;
        }
        held.asking = true;
    }
    let Some(promise) = request() else {
        held.borrow_mut().asking = false;
        said.set(Awake::Unknown);
        return;
    };
    let (held, said) = (held.clone(), said.clone());
    spawn_local(async move {
        let answer = JsFuture::from(promise).await;
        let mut held = held.borrow_mut();
        held.asking = false;
        match answer {
            Ok(lock) if held.wanted => {
                held.lock = Some(lock);
                said.set(Awake::Yes);
            }
            Ok(lock) => release(&lock),
            Err(_) if held.wanted => said.set(Awake::Refused),
            Err(_) => {}
        }
    });
}

/// The promise of a lock; `None` where the browser knows none, as it does outside https.
fn request() -> Option<Promise> {
    let navigator: JsValue = web_sys::window()?.navigator().into();
    let locks = Reflect::get(&navigator, &"wakeLock".into()).ok()?;
    let request: Function = Reflect::get(&locks, &"request".into())
        .ok()?
        .dyn_into()
        .ok()?;
    request
        .call1(&locks, &"screen".into())
        .ok()?
        .dyn_into()
        .ok()
}

fn is_released(lock: &JsValue) -> bool {
    let released = Reflect::get(lock, &"released".into()).ok();
    released.and_then(|released| released.as_bool()) != Some(false)
}

/// Gives it back; what the browser answers to that is of no use.
fn release(lock: &JsValue) {
    let release = Reflect::get(lock, &"release".into());
    if let Ok(release) = release.and_then(JsCast::dyn_into::<Function>) {
        let _ = release.call0(lock);
    }
}
