//! English: the stages of a job.

use crate::page::state::Stage;

pub(super) const fn stage_name(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "Received",
        Stage::Wanted => "Wanted",
        Stage::Plan => "Plan",
        Stage::Cut => "Cut",
        Stage::HandBack => "Hand back",
    }
}

pub(super) const fn stage_lead(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "The part as it came in.",
        Stage::Wanted => "What the shank shall become.",
        Stage::Plan => "What to do, and whether it can be done.",
        Stage::Cut => "One step at a time, at the lathe.",
        Stage::HandBack => "What was done, and what it measures now.",
    }
}
