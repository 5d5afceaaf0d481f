//! The core for JavaScript: a module of its own, apart from the page.
//!
//! The build writes it into `dist/api/`, with declarations for TypeScript made of `interface.rs` and `types.ts`:
//!
//! ```js
//! import init, { plan, encode } from './api/skimwright.js';
//! await init();
//! const job = { wanted: { diameter: '25 mm', length: '56 mm' } };
//! console.log(plan(job).cut_off.from_free_end.value, encode(job));
//! ```
//!
//! A job and a plan have the form that `skimwright::json` describes. On the host there is nothing to build.

#[cfg(target_arch = "wasm32")]
mod interface;

/// Nothing happens when the module is loaded.
fn main() {}
