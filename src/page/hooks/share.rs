//! Handing the link on: by the system's share sheet, else by the clipboard, else by hand.

use skimwright::link;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

use crate::page::state::{Action, Notice};
use crate::page::store::{Store, words};
use crate::page::words::Text;

/// Shares the job; must be called from a tap or a key, or browsers refuse.
pub(crate) fn share_job(store: &Store) {
    let Some(url) = link_of(store) else { return };
    let dispatcher = store.dispatcher();
    let sheet = ask_share_sheet(words(store).say(Text::ShareTitle), &url);
    spawn_local(async move {
        if let Some(sheet) = sheet {
            match JsFuture::from(sheet).await {
                Ok(_) => return,
                // The person closed the sheet: nothing more is wanted.
                Err(error) if is_abort(&error) => return,
                Err(_) => {}
            }
        }
        let told = if copy(&url).await {
            Notice::Copied
        } else {
            Notice::ShareFailed(url)
        };
        dispatcher.dispatch(Action::Tell(Some(told)));
    });
}

/// The page's address with the job in it.
fn link_of(store: &Store) -> Option<String> {
    let text = link::encode(&store.job).ok()?;
    let href = web_sys::window()?.location().href().ok()?;
    let page = href.split('#').next().unwrap_or_default();
    Some(format!("{page}#{text}"))
}

/// The promise of the share sheet, where the browser has one.
fn ask_share_sheet(title: &str, url: &str) -> Option<js_sys::Promise> {
    let navigator: JsValue = web_sys::window()?.navigator().into();
    let share: js_sys::Function = js_sys::Reflect::get(&navigator, &"share".into())
        .ok()?
        .dyn_into()
        .ok()?;
    let data = js_sys::Object::new();
    js_sys::Reflect::set(&data, &"title".into(), &title.into()).ok()?;
    js_sys::Reflect::set(&data, &"url".into(), &url.into()).ok()?;
    share.call1(&navigator, &data).ok()?.dyn_into().ok()
}

fn is_abort(error: &JsValue) -> bool {
    let name = js_sys::Reflect::get(error, &"name".into()).ok();
    name.and_then(|name| name.as_string()).as_deref() == Some("AbortError")
}

async fn copy(text: &str) -> bool {
    let Some(window) = web_sys::window() else {
        return false;
    };
    let navigator: JsValue = window.navigator().into();
    // Outside https there is no clipboard at all, whatever the bindings say.
    let clipboard = js_sys::Reflect::get(&navigator, &"clipboard".into()).ok();
    let Some(clipboard) = clipboard.filter(JsValue::is_object) else {
        return false;
    };
    let clipboard: web_sys::Clipboard = clipboard.unchecked_into();
    JsFuture::from(clipboard.write_text(text)).await.is_ok()
}
