//! The work at the machine: its steps in working order, and what was done of them.

mod clock;
mod done;
mod figures;
mod pace;
mod steps;
mod times;
mod warnings;

pub use clock::{Clock, clock_of, elapsed};
pub use done::{CutsDone, StepDone, Used, UsedWith, WorkDone, work_done};
pub use figures::{Dial, StepFigure};
pub use pace::{StepTimeReal, WhyNoPace, learned_after, paces_after, real_times};
pub use steps::{
    StepHow, StepNow, current, how_of, open_steps, steps, surely_open_steps, time_left,
};
pub use warnings::{StepWarning, cut_off_warnings, holding_warnings, pass_warnings};
