//! How large the drawing is drawn: by two fingers, by the wheel with the control key, by keys and by buttons.
//!
//! One finger and the wheel alone are left to the browser, so that they scroll the drawing and, at its ends, the page.

use core::cell::Cell;
use std::rc::Rc;

use gloo_events::{EventListener, EventListenerOptions};
use wasm_bindgen::JsCast;
use web_sys::{Element, TouchEvent, WheelEvent};
use yew::prelude::*;

/// The largest drawing over the whole one.
const MOST: f64 = 8.0;

/// What a button or a key makes larger.
const STEP: f64 = 1.5;

/// How large the drawing is drawn, and what changes it.
#[derive(Clone, PartialEq)]
pub(crate) struct Zoom {
    /// Over the width of the frame, from 1.
    pub(crate) factor: f64,
    set: Callback<(f64, f64)>,
}

impl Zoom {
    pub(crate) fn larger(&self) {
        self.by(STEP);
    }

    pub(crate) fn smaller(&self) {
        self.by(1.0 / STEP);
    }

    /// The whole drawing in its frame.
    pub(crate) fn whole(&self) {
        self.set.emit((1.0, 0.5));
    }

    fn by(&self, times: f64) {
        self.set.emit((self.factor * times, 0.5));
    }

    /// The keys of the drawing; true for one of them.
    pub(crate) fn key(&self, event: &KeyboardEvent) -> bool {
        // Together with these the keys are the browser's own.
        if event.ctrl_key() || event.meta_key() || event.alt_key() {
            return false;
        }
        match event.key().as_str() {
            "+" | "=" => self.larger(),
            "-" => self.smaller(),
            "0" => self.whole(),
            _ => return false,
        }
        true
    }
}

/// The zoom of what `scroll` holds.
#[hook]
pub(crate) fn use_zoom(scroll: &NodeRef) -> Zoom {
    // The factor, and where in the frame the drawing stays in place, as a share of its width.
    let state = use_state_eq(|| (1.0_f64, 0.5_f64));
    let (factor, focus) = *state;
    // Gestures come faster than the drawing is drawn: the factor last asked for, and the one last drawn.
    let (latest, drawn) = (use_mut_ref(|| 1.0_f64), use_mut_ref(|| 1.0_f64));
    let set = {
        let latest = latest.clone();
        use_callback((), move |(wanted, focus): (f64, f64), ()| {
            let wanted = wanted.clamp(1.0, MOST);
            *latest.borrow_mut() = wanted;
            state.set((wanted, focus));
        })
    };
    {
        let scroll = scroll.clone();
        use_effect_with(factor, move |factor| {
            let before = drawn.replace(*factor);
            if let Some(element) = scroll.cast::<Element>() {
                keep_in_place(&element, factor / before, focus);
            }
        });
    }
    {
        let (scroll, set) = (scroll.clone(), set.clone());
        use_effect_with((), move |()| {
            let listeners = scroll
                .cast::<Element>()
                .map(|element| listen(&element, &latest, &set));
            move || drop(listeners)
        });
    }
    Zoom { factor, set }
}

type Latest = Rc<core::cell::RefCell<f64>>;

fn listen(element: &Element, latest: &Latest, set: &Callback<(f64, f64)>) -> [EventListener; 3] {
    let wheel = {
        let (latest, set, frame) = (latest.clone(), set.clone(), element.clone());
        let options = EventListenerOptions::enable_prevent_default();
        EventListener::new_with_options(element, "wheel", options, move |event| {
            let Some(event) = event.dyn_ref::<WheelEvent>() else {
                return;
            };
            if event.ctrl_key() {
                event.prevent_default();
                // A notch of a wheel is about 100; a pinch on a touch pad comes in many small ones.
                let times = (-event.delta_y() / 250.0).exp();
                // Not borrowed while it is set.
                let wanted = *latest.borrow() * times;
                set.emit((wanted, share(&frame, event.client_x().into())));
            }
        })
    };
    // What the drawing was when two fingers were put down, over how far apart they were.
    let begun = Rc::new(Cell::new(None::<f64>));
    let start = {
        let (latest, begun) = (latest.clone(), begun.clone());
        EventListener::new(element, "touchstart", move |event| {
            let apart = event.dyn_ref().and_then(fingers).map(|(apart, _)| apart);
            begun.set(apart.map(|apart| *latest.borrow() / apart));
        })
    };
    let moved = {
        let (set, frame) = (set.clone(), element.clone());
        EventListener::new(element, "touchmove", move |event| {
            let fingers = event.dyn_ref().and_then(fingers);
            if let (Some((apart, middle)), Some(begun)) = (fingers, begun.get()) {
                set.emit((begun * apart, share(&frame, middle)));
            }
        })
    };
    [wheel, start, moved]
}

/// How far apart two fingers are and the middle between them; `None` for any other number of fingers.
fn fingers(event: &TouchEvent) -> Option<(f64, f64)> {
    let touches = event.touches();
    if touches.length() != 2 {
        return None;
    }
    let (one, other) = (touches.get(0)?, touches.get(1)?);
    let (x, y) = (
        f64::from(one.client_x() - other.client_x()),
        f64::from(one.client_y() - other.client_y()),
    );
    let middle = f64::midpoint(one.client_x().into(), other.client_x().into());
    // Fingers on one point say nothing.
    Some((x.hypot(y), middle)).filter(|(apart, _)| *apart > 1.0)
}

/// Where in the frame a place of the window is, from 0 to 1.
fn share(frame: &Element, x: f64) -> f64 {
    let area = frame.get_bounding_client_rect();
    ((x - area.left()) / area.width().max(1.0)).clamp(0.0, 1.0)
}

/// Scrolls so that what was at a share of the frame is there again after the drawing has grown.
fn keep_in_place(frame: &Element, times: f64, focus: f64) {
    let at = f64::from(frame.client_width()) * focus;
    let left = (f64::from(frame.scroll_left()) + at) * times - at;
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a scroll position is whole pixels"
    )]
    frame.set_scroll_left(left.round() as i32);
}
