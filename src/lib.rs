//! The core of Skimwright: what is entered about a turned part, and all that follows from it.
//!
//! Plain Rust without a browser: no clock, no storage, no randomness.
#![forbid(unsafe_code)]
#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::indexing_slicing,
        reason = "a test may stop at the first surprise"
    )
)]

pub mod costing;
pub mod cutting;
pub mod demo;
pub mod holding;
pub mod job;
#[cfg(feature = "json")]
pub mod json;
mod letter;
pub mod link;
pub mod measuring;
pub mod offer;
mod order;
pub mod part;
pub mod plan;
pub mod quantity;
pub mod receiver;
pub mod rework;
pub mod sheet;
pub mod strength;
pub mod tables;
pub mod work;
pub mod working;
