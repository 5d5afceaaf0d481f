//! Prints how long one plan takes on this machine, and what the part could become. `cargo xtask bench` puts the browser's figures beside it.
#![allow(
    clippy::print_stdout,
    reason = "a benchmark is there to print its figures"
)]

#[cfg(not(target_arch = "wasm32"))]
mod measure;

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    let begun = std::time::Instant::now();
    let now = || begun.elapsed().as_secs_f64() * 1e6;
    for line in measure::lines("native", &now) {
        println!("{line}");
    }
}

/// The browser has a program of its own: `browser.rs`.
#[cfg(target_arch = "wasm32")]
fn main() {}
