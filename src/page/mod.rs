//! The page: a view of a job and of all that follows from it.
//!
//! State, edits and words are plain Rust, tested on the host; the components exist in the browser only.

mod chart;
mod edit;
mod jobs;
mod lathe;
mod opening;
mod options;
mod owner;
mod panels;
mod print;
mod reading;
mod sharing;
mod shelf;
mod short_map;
mod state;
mod taught;
mod view;
mod words;

#[cfg(test)]
mod cut_tests;
#[cfg(test)]
mod edit_tests;
#[cfg(test)]
mod fresh_tests;
#[cfg(test)]
mod instruments_tests;
#[cfg(test)]
mod lathe_tests;
#[cfg(test)]
mod print_tests;
#[cfg(test)]
mod shelf_tests;
#[cfg(test)]
mod shop_tests;
#[cfg(test)]
mod state_tests;
#[cfg(test)]
mod wanted_tests;

#[cfg(target_arch = "wasm32")]
mod app;
#[cfg(target_arch = "wasm32")]
mod banner;
#[cfg(target_arch = "wasm32")]
mod becomes;
#[cfg(target_arch = "wasm32")]
mod choice;
#[cfg(target_arch = "wasm32")]
mod compared;
#[cfg(target_arch = "wasm32")]
mod curve;
#[cfg(target_arch = "wasm32")]
mod drawing;
#[cfg(target_arch = "wasm32")]
mod field;
#[cfg(target_arch = "wasm32")]
mod figures;
#[cfg(target_arch = "wasm32")]
mod findings;
#[cfg(target_arch = "wasm32")]
mod finish;
#[cfg(target_arch = "wasm32")]
mod gears;
#[cfg(target_arch = "wasm32")]
mod header;
#[cfg(target_arch = "wasm32")]
mod holding;
#[cfg(target_arch = "wasm32")]
mod hooks;
#[cfg(target_arch = "wasm32")]
mod instruments;
#[cfg(target_arch = "wasm32")]
mod jobs_list;
#[cfg(target_arch = "wasm32")]
mod jobs_panel;
#[cfg(target_arch = "wasm32")]
mod keys;
#[cfg(target_arch = "wasm32")]
mod markup;
#[cfg(target_arch = "wasm32")]
mod menu;
#[cfg(target_arch = "wasm32")]
mod modal;
#[cfg(target_arch = "wasm32")]
mod panel;
#[cfg(target_arch = "wasm32")]
mod pass_detail;
#[cfg(target_arch = "wasm32")]
mod passes;
#[cfg(target_arch = "wasm32")]
mod plot;
#[cfg(target_arch = "wasm32")]
mod receiver;
#[cfg(target_arch = "wasm32")]
mod recognise;
#[cfg(target_arch = "wasm32")]
mod sheet;
#[cfg(target_arch = "wasm32")]
mod shop;
#[cfg(target_arch = "wasm32")]
mod spending;
#[cfg(target_arch = "wasm32")]
mod stages;
#[cfg(target_arch = "wasm32")]
mod store;
#[cfg(target_arch = "wasm32")]
mod strength;
#[cfg(target_arch = "wasm32")]
mod tools;
#[cfg(target_arch = "wasm32")]
mod working;

#[cfg(target_arch = "wasm32")]
pub(crate) use app::start;
