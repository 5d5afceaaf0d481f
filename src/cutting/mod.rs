//! Turning to size: the usual cuts, the passes, and how long they take.

pub mod engine;
pub(crate) mod passes;
mod split;
pub(crate) mod time;
mod turning;
mod usual;

pub use passes::{Pass, PassKind, SectionStock, StockOff, TimeRange};
pub use time::CycleTime;
pub use turning::{spindle_speed, surface_speed, turning_time};
pub use usual::{UsualCut, is_hard, usual_cut, usual_kerf, usual_speed};
