//! What was learned of a lathe by working on it: kept with it, and taken into each job that is done on it.

use serde::{Deserialize, Serialize};

use super::record::WorkStep;
use crate::quantity::{Count, Entered, Length, Share};

/// What was learned of a lathe.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Learned {
    /// What an infeed of a last cut takes off; `None` until a job taught it.
    pub takes: Option<LearnedTakes>,
    /// How long steps take against the plan; each step at most once.
    pub paces: Vec<LearnedPace>,
}

impl Learned {
    /// Most paces: one for each step.
    pub const MOST_PACES: usize = WorkStep::ALL.len();
}

/// What an infeed takes off the diameter: an offset, and a share of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LearnedTakes {
    /// The share of the infeed that comes off.
    pub share: Entered<Share>,
    /// Its standard deviation from job to job.
    pub share_deviation: Entered<Share>,
    /// What comes off whatever the infeed, on diameter; below nothing where the tool rubs first.
    pub offset: Entered<Length>,
    /// Its standard deviation from job to job.
    pub offset_deviation: Entered<Length>,
    /// From how many cuts.
    pub cuts: Entered<Count>,
}

/// How long a step takes against the plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LearnedPace {
    /// Which step.
    pub step: WorkStep,
    /// Real over planned time, as a median over jobs.
    pub factor: Entered<Share>,
    /// From how many jobs.
    pub jobs: Entered<Count>,
}
