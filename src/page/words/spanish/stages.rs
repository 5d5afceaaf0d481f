//! Spanish: the stages of a job.

use crate::page::state::Stage;

pub(super) const fn stage_name(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "Recibido",
        Stage::Wanted => "Deseado",
        Stage::Plan => "Plan",
        Stage::Cut => "Torno",
        Stage::HandBack => "Entrega",
    }
}

pub(super) const fn stage_lead(stage: Stage) -> &'static str {
    match stage {
        Stage::Received => "La pieza tal como llegó.",
        Stage::Wanted => "En qué se ha de convertir el mango.",
        Stage::Plan => "Qué hay que hacer, y si se puede.",
        Stage::Cut => "Paso a paso, en el torno.",
        Stage::HandBack => "Qué se hizo, y cuánto mide ahora.",
    }
}
