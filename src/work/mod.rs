//! The work at the machine: its steps in working order, and what was done of them.

mod clock;
mod steps;

pub use clock::{Clock, clock_of};
pub use steps::{Dial, StepHow, StepNow, StepWarning, steps};
