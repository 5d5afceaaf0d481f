//! The work at the lathe: one step at a time, readings, the next cut, the verdict.

mod at_lathe;
mod keypad;

#[cfg(target_arch = "wasm32")]
mod actions;
#[cfg(target_arch = "wasm32")]
mod doubts;
#[cfg(target_arch = "wasm32")]
mod figure;
#[cfg(target_arch = "wasm32")]
mod handling;
#[cfg(target_arch = "wasm32")]
mod next_cut;
#[cfg(target_arch = "wasm32")]
mod pad;
#[cfg(target_arch = "wasm32")]
mod proof;
#[cfg(target_arch = "wasm32")]
mod readings;
#[cfg(target_arch = "wasm32")]
mod screen;
#[cfg(target_arch = "wasm32")]
mod step;
#[cfg(target_arch = "wasm32")]
mod stopwatch;

pub(crate) use at_lathe::{AtLathe, LatheAction, Thumb, same_but_record};
pub(crate) use keypad::{Keypad, PadAction, PadFor, PadKey, PadPlace, PadSlot, PadWrong};

#[cfg(target_arch = "wasm32")]
pub(crate) use proof::{verdict_class, verdict_shape};
#[cfg(target_arch = "wasm32")]
pub(crate) use screen::CutStage;
#[cfg(target_arch = "wasm32")]
pub(crate) use step::{dial_text, dialled};
