//! What is printed and handed over: the job sheet, the report that goes back with the part, files for other programs.

mod at_print;

#[cfg(target_arch = "wasm32")]
mod answer;
#[cfg(target_arch = "wasm32")]
mod code;
#[cfg(target_arch = "wasm32")]
mod exports;
#[cfg(target_arch = "wasm32")]
mod job_passes;
#[cfg(target_arch = "wasm32")]
mod job_steps;
#[cfg(target_arch = "wasm32")]
mod picture;
#[cfg(target_arch = "wasm32")]
mod report;
#[cfg(target_arch = "wasm32")]
mod report_done;
#[cfg(target_arch = "wasm32")]
mod sheet;

pub(crate) use at_print::{AtPrint, PrintAction};

#[cfg(target_arch = "wasm32")]
pub(crate) use exports::exports;
#[cfg(target_arch = "wasm32")]
pub(crate) use report::hand_back_stage;
#[cfg(target_arch = "wasm32")]
pub(crate) use sheet::{JobSheet, print_tools};
