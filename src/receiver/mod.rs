//! What the finished shank goes into: what it asks of the shank, and whether it gets it.

mod asked;
mod becomes;
mod judge;
mod sleeve;
mod take;

pub use asked::{Asked, FlatAsked, Off};
pub use becomes::{Becomes, becomes};

pub use sleeve::SleeveFit;
pub use take::with_its_limits;

pub(crate) use asked::asked;
pub(crate) use judge::findings;

use serde::Serialize;

use crate::job::Job;
use crate::part::Received;
use crate::plan::Checked;
use crate::quantity::Length;
use crate::rework::{SizeLimits, WantedShank};
use crate::working::Range;

/// What follows from the receiver.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ReceiverPlan {
    /// What it asks.
    pub asked: Asked,
    /// The limits of its hole, where it has one; a sleeve's must be bored to them.
    pub hole: Option<Range<Length>>,
    /// How much larger the shank is than its hole, least and greatest; negative is clearance. `None` where the
    /// receiver closes on the shank, or nothing is known of its hole.
    pub fit: Option<Range<Length>>,
    /// A repair sleeve; `None` for other receivers.
    pub sleeve: Option<SleeveFit>,
}

impl ReceiverPlan {
    /// What the job's receiver asks of this shank, and how the two fit.
    pub(crate) fn new(
        job: &Job,
        checked: &Checked,
        limits: SizeLimits,
        nominal: Length,
        shank: &WantedShank,
        received: &Received,
    ) -> Self {
        let asked = asked(job, checked, nominal);
        let fit = asked::fit(job, nominal, limits);
        let sleeve = fit.and_then(|fit| sleeve::sleeve(job, checked, &asked, fit, shank, received));
        let hole = asked::hole(job, nominal);
        Self {
            asked,
            hole,
            fit,
            sleeve,
        }
    }
}
