//! The width that the drawing has.

use gloo_events::EventListener;
use web_sys::Element;
use yew::prelude::*;

/// The width of an element in CSS pixels, kept up as the window changes; 0 before it is known.
#[hook]
pub(crate) fn use_width(element: &NodeRef) -> i32 {
    let width = use_state_eq(|| 0);
    {
        let (width, element) = (width.clone(), element.clone());
        use_effect_with((), move |()| {
            let measure = move || {
                if let Some(element) = element.cast::<Element>() {
                    width.set(element.client_width());
                }
            };
            measure();
            let listener = web_sys::window()
                .map(|window| EventListener::new(&window, "resize", move |_| measure()));
            move || drop(listener)
        });
    }
    *width
}
