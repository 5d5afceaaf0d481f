//! German: the stages of a job.

use crate::page::state::Stage;

pub(super) const fn stage_name(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "Ist",
        Stage::Wanted => "Soll",
        Stage::Plan => "Plan",
        Stage::Cut => "Drehen",
        Stage::HandBack => "Abgabe",
    }
}

pub(super) const fn stage_lead(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "Das Teil, wie es hereinkam.",
        Stage::Wanted => "Was aus dem Schaft werden soll.",
        Stage::Plan => "Was zu tun ist, und ob es geht.",
        Stage::Cut => "Schritt für Schritt, an der Maschine.",
        Stage::HandBack => "Was getan wurde, und was es jetzt misst.",
    }
}
