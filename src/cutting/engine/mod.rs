//! Searches for the cheapest way to take the stock off: feed and speed of a pass, and the depths of all passes.
//!
//! The engine knows no lathe. What a pass costs, and what forbids it, comes in as a [`Law`]; how deep each pass goes
//! is then found by [`Stages`] from nothing but the costs of single passes. `setting` chooses feed and speed, `stages`
//! holds what each pass from one depth to another costs, `schedule` finds the best row of passes, `equal_last` ends it
//! with equal last cuts, and `coarse` says how fine the depths may be told apart in a given time.
//!
//! Numbers are bare `f64` here, in the units of the law. Laws of metal cutting are products of powers, whose factors
//! hold for one unit each (metres a minute in one handbook, revolutions a minute on one headstock), and a cost may be
//! minutes or money: a type that fits them all says nothing. The law that stands on top takes and gives typed
//! quantities, and converts once. Depths are whole numbers of steps on radius, and a step is a whole number of
//! graduations of the dial, so that every pass can be set.
//!
//! # Example
//! Six millimetres on radius with a dial of 0.01 mm. A pass takes one minute and a tenth more for the way back, and a
//! deeper one than 2 mm goes at half the feed; two equal last cuts of 0.1 to 0.3 mm end it. The first search looks at
//! coarse depths, the second at all depths near what the first found.
//! ```
//! use skimwright::cutting::engine::{Stages, Stock, coarsen, equal_last, ladders, near};
//!
//! let cost = |from: u32, to: u32| Some(if from - to <= 200 { 1.1 } else { 2.1 });
//! let closings = equal_last(0, &[10, 20, 30], 2, |_, _| Some(1.5));
//! let ends: Vec<u32> = closings.iter().map(|closing| closing.from).collect();
//! let coarse = Stock {
//!     start: 600,
//!     end: 0,
//!     most_passes: 200,
//!     pins: vec![],
//!     step: coarsen(600, 300, 2500),
//!     stops: ends.iter().copied().chain(ladders(&ends, &[300, 200], 600)).collect(),
//! };
//! let first = Stages::new(&coarse, |_| 300, cost)?.best(&closings)?;
//! let around = near(&first, coarse.step);
//! let fine = Stock { step: u32::MAX, stops: around.into_iter().chain(ends).collect(), ..coarse };
//! let best = Stages::new(&fine, |_| 300, cost)?.best(&closings)?;
//! assert_eq!(best.count(), 5);
//! assert!((best.cost - 6.3).abs() < 1e-9);
//! # Ok::<(), skimwright::cutting::engine::Refusal>(())
//! ```

mod choices;
mod coarse;
mod equal_last;
mod law;
mod refine;
mod schedule;
mod setting;
mod stages;

pub use choices::{Choices, ChoicesError};
pub use coarse::{coarsen, ladders, near};
pub use equal_last::equal_last;
pub use law::{Law, Window};
pub use refine::{Tried, least_between};
pub use schedule::{Closing, Schedule};
pub use setting::{Chooser, Setting, best_setting};
pub use stages::{Pin, Refusal, Stages, Stock};
