//! The chosen look, as an attribute that the style sheets know.

use yew::prelude::*;

use crate::page::state::Look;
use crate::page::store::Store;

#[hook]
pub(crate) fn use_look(store: &Store) {
    use_effect_with(store.look, |look| {
        let root = web_sys::window()
            .and_then(|window| window.document())
            .and_then(|document| document.document_element());
        let Some(root) = root else { return };
        let theme = match look {
            Look::System => None,
            Look::Light => Some("light"),
            Look::Dark => Some("dark"),
            Look::Sunlight => Some("contrast"),
        };
        // Without its attribute the page still works, in the look of the device.
        let _ = match theme {
            Some(theme) => root.set_attribute("data-theme", theme),
            None => root.remove_attribute("data-theme"),
        };
    });
}
