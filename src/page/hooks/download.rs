//! Saving a drawing or jobs as a file, made on this device: nothing is sent anywhere.

use js_sys::{Array, encode_uri_component};
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{
    Blob, BlobPropertyBag, CanvasRenderingContext2d, Document, HtmlAnchorElement,
    HtmlCanvasElement, HtmlImageElement, Url,
};

const SVG: &str = "image/svg+xml";

/// How much finer the picture is than the drawing in the browser's own pixels.
const FINER: u32 = 3;

/// Saves an SVG file.
pub(crate) fn save_svg(svg: &str, name: &str) {
    save_text(svg, SVG, &format!("{name}.svg"));
}

/// Saves a text as a file of a kind.
pub(crate) fn save_text(text: &str, kind: &str, name: &str) {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &options);
    if let (Ok(blob), Some(document)) = (blob, document()) {
        save(&document, &blob, name);
    }
}

/// Saves a picture of an SVG file, three times as fine. Must be called from a tap or a key, as every saving.
pub(crate) fn save_png(svg: &str, name: &str) {
    let Ok(image) = HtmlImageElement::new() else {
        return;
    };
    let drawn = {
        let (image, name) = (image.clone(), format!("{name}.png"));
        Closure::once_into_js(move || {
            paint(&image, name);
        })
    };
    image.set_onload(Some(drawn.unchecked_ref()));
    // A picture from a data address is of this page's own origin, so the canvas may be read again.
    let data = String::from(encode_uri_component(svg));
    image.set_src(&format!("data:{SVG};charset=utf-8,{data}"));
}

/// Draws the picture that has been read, and saves it.
fn paint(image: &HtmlImageElement, name: String) -> Option<()> {
    let document = document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    let (width, height) = (image.width() * FINER, image.height() * FINER);
    canvas.set_width(width);
    canvas.set_height(height);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    let (width, height) = (f64::from(width), f64::from(height));
    context
        .draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height)
        .ok()?;
    let saved = Closure::once_into_js(move |blob: Option<Blob>| {
        if let Some(blob) = blob {
            save(&document, &blob, &name);
        }
    });
    canvas.to_blob(saved.unchecked_ref()).ok()
}

/// Hands a file to the browser's own downloads.
fn save(document: &Document, blob: &Blob, name: &str) -> Option<()> {
    let address = Url::create_object_url_with_blob(blob).ok()?;
    let link: HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The download has begun with the click and keeps the file itself.
    Url::revoke_object_url(&address).ok()
}

fn document() -> Option<Document> {
    web_sys::window()?.document()
}
