//! Prints how long one plan takes in a real browser, and what the part could become. Run by `cargo xtask bench`; it checks nothing.
#![cfg(target_arch = "wasm32")]

mod measure;

use js_sys::Promise;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::{console_log, wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
async fn print_the_time_of_one_plan() {
    // Milliseconds, coarsened by the browser to a tenth or so: a round of fifty plans is well above that.
    let clock = || js_sys::Date::now();
    let performance = web_sys::window().and_then(|window| window.performance());
    let now = || {
        performance
            .as_ref()
            .map_or_else(clock, web_sys::Performance::now)
            * 1000.0
    };
    for line in measure::lines("in the browser", &now) {
        console_log!("{line}");
        breathe().await;
    }
}

/// Lets the page answer its driver, which gives up on one that is busy for long.
async fn breathe() {
    let soon = Promise::new(&mut |done, _| {
        if let Some(window) = web_sys::window() {
            let _ = window.set_timeout_with_callback(&done);
        }
    });
    let _ = JsFuture::from(soon).await;
}
