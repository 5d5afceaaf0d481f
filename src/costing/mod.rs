//! What a rework takes in time and money: the steps beside the feeding, their total as a spread, and the charge.
//!
//! Durations are estimates throughout: every one has a low, a likely and a high value.

mod cost;
mod distribution;
mod parts;
mod planned;
#[cfg(test)]
mod planned_tests;
mod severing;
mod step;
mod three_point;

pub use cost::{
    Cost, CostError, CostPart, EdgeCounting, Insert, LARGEST_PRICE, MOST_USED, PriceField, Rates,
    Used, cost,
};
pub use distribution::{Counted, PACE_SPREAD, Spread};
pub use parts::{LEAST_PACE, MOST_PACE, Pace, PartOf, TimePart};
pub use planned::{FeedLine, Feeding, Operations, PlannedTime, SpindleSteps, StepLine, planned};
pub use severing::{LARGEST_SECTION, RatePerMinute, Severing, SeveringError, severing_rate};
pub use step::{HoldingWay, Per, Step, StepContext, usual};
pub use three_point::{LONGEST, ThreePoint, ThreePointError};
