//! The room that the drawing has.

use gloo_events::EventListener;
use web_sys::Element;
use yew::prelude::*;

/// The width of an element and the height of the window in CSS pixels, kept up as the window changes; 0 before they
/// are known.
///
/// While the width stays, the height only grows: the keys of a phone that come up over the page change nothing.
#[hook]
pub(crate) fn use_room(element: &NodeRef) -> (i32, i32) {
    let room = use_state_eq(|| (0, 0));
    let last = use_mut_ref(|| (0, 0));
    {
        let (room, element) = (room.clone(), element.clone());
        use_effect_with((), move |()| {
            let measure = move || {
                let root =
                    web_sys::window().and_then(|window| window.document()?.document_element());
                if let (Some(element), Some(root)) = (element.cast::<Element>(), root) {
                    let (width, mut height) = (element.client_width(), root.client_height());
                    let before = *last.borrow();
                    if before.0 == width {
                        height = height.max(before.1);
                    }
                    *last.borrow_mut() = (width, height);
                    room.set((width, height));
                }
            };
            measure();
            let listener = web_sys::window()
                .map(|window| EventListener::new(&window, "resize", move |_| measure()));
            move || drop(listener)
        });
    }
    *room
}
