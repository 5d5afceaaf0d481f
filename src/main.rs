//! The page's start. On the host there is no page: the program only says where to find it.

#![cfg_attr(
    not(target_arch = "wasm32"),
    allow(
        dead_code,
        unused_imports,
        reason = "the page's state is built on the host for its tests only"
    )
)]

mod page;

#[cfg(target_arch = "wasm32")]
fn main() {
    page::start();
}

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    println!("Skimwright runs in a browser: build and serve it with `cargo xtask serve`.");
}
