//! Handing a link on: by the system's share sheet, else by the clipboard, else by hand.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use yew::Callback;

use crate::page::sharing::Handed;

/// The address of this page with a text behind `#`.
pub(crate) fn address_of(text: &str) -> String {
    let href = web_sys::window().and_then(|window| window.location().href().ok());
    let href = href.unwrap_or_default();
    let page = href.split('#').next().unwrap_or_default();
    format!("{page}#{text}")
}

/// Shares a link; must be called from a tap or a key, or browsers refuse. Nothing is told where the person closed the
/// sheet.
pub(crate) fn share_link(title: &str, url: String, told: Callback<Handed>) {
    let sheet = ask_share_sheet(title, &url);
    spawn_local(async move {
        if let Some(sheet) = sheet {
            match JsFuture::from(sheet).await {
                Ok(_) => return told.emit(Handed::Shared),
                // The person closed the sheet: nothing more is wanted.
                Err(error) if is_abort(&error) => return,
                Err(_) => {}
            }
        }
        told.emit(copied(&url).await);
    });
}

/// Copies a link.
pub(crate) fn copy_link(url: String, told: Callback<Handed>) {
    spawn_local(async move { told.emit(copied(&url).await) });
}

async fn copied(url: &str) -> Handed {
    if copy(url).await {
        Handed::Copied
    } else {
        Handed::Failed
    }
}

/// A letter to nobody yet, for the person's own mail program.
pub(crate) fn mail_to(subject: &str, url: &str) -> String {
    let part = |text: &str| String::from(js_sys::encode_uri_component(text));
    format!("mailto:?subject={}&body={}", part(subject), part(url))
}

/// An image that stands in the page itself.
pub(crate) fn image_of(svg: &str) -> String {
    let text = String::from(js_sys::encode_uri_component(svg));
    format!("data:image/svg+xml,{text}")
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
