//! Calling out that a step's planned time is over: by vibration where the device can, and by a short tone.
//!
//! Called through the browser's objects by name: their bindings would weigh more than the tone.

use core::cell::RefCell;

use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};

thread_local! {
    /// What makes the tone, from the tap that asked for it: a browser lets no page sound before one.
    static SOUND: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

/// High enough to be heard over a lathe, low enough for old ears. Common practice, no source.
const PITCH_IN_HZ: f64 = 880.0;

/// Makes ready to sound; must be called from a tap or a key.
pub(crate) fn make_ready() {
    SOUND.with_borrow_mut(|sound| {
        if sound.is_none() {
            *sound = new_of("AudioContext");
        }
        if let Some(sound) = sound {
            // Where the browser refuses, the vibration and the words are left.
            let _ = call(sound, "resume", &[]);
        }
    });
}

/// Three short tones and as many shakes.
pub(crate) fn ring() {
    if let Some(window) = web_sys::window() {
        let navigator: JsValue = window.navigator().into();
        let shakes: Array = [300, 150, 300, 150, 300]
            .into_iter()
            .map(JsValue::from)
            .collect();
        let _ = call(&navigator, "vibrate", &[shakes.into()]);
    }
    SOUND.with_borrow(|sound| {
        if let Some(sound) = sound {
            for start in [0.0, 0.45, 0.9] {
                let _ = tone(sound, start);
            }
        }
    });
}

/// One tone, so many seconds from now.
fn tone(sound: &JsValue, from_now: f64) -> Option<()> {
    let now = get(sound, "currentTime")?.as_f64()?;
    let (oscillator, gain) = (
        call(sound, "createOscillator", &[])?,
        call(sound, "createGain", &[])?,
    );
    Reflect::set(
        &get(&oscillator, "frequency")?,
        &"value".into(),
        &PITCH_IN_HZ.into(),
    )
    .ok()?;
    Reflect::set(&get(&gain, "gain")?, &"value".into(), &0.3.into()).ok()?;
    call(&oscillator, "connect", std::slice::from_ref(&gain))?;
    call(&gain, "connect", &[get(sound, "destination")?])?;
    call(&oscillator, "start", &[(now + from_now).into()])?;
    call(&oscillator, "stop", &[(now + from_now + 0.3).into()])?;
    Some(())
}

fn get(of: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(of, &name.into())
        .ok()
        .filter(|it| !it.is_undefined())
}

fn call(of: &JsValue, name: &str, with: &[JsValue]) -> Option<JsValue> {
    let function: Function = get(of, name)?.dyn_into().ok()?;
    let with: Array = with.iter().collect();
    Reflect::apply(&function, of, &with).ok()
}

fn new_of(name: &str) -> Option<JsValue> {
    let class: Function = get(&js_sys::global(), name)?.dyn_into().ok()?;
    Reflect::construct(&class, &Array::new()).ok()
}
