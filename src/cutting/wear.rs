//! What wear counts for, and where a fresh edge is taken.

use super::limit::OVER;
use super::passes::{Pass, PassKind, PassQuestion};
use super::setup::Setup;
use crate::costing::{HoldingWay, Step, StepContext, usual};
use crate::job::{Aim, Field, RateField, TimeBound};
use crate::plan::{Code, Finding};
use crate::quantity::{Money, Time};

/// How long a change of edge takes as a rule: it makes the planner weigh wear where one edge does not last.
pub(super) fn change(question: &PassQuestion) -> Option<Time> {
    let context = StepContext {
        holding: HoldingWay::Chuck,
        severing: None,
    };
    let usual = usual(Step::ToolChange, &context).likely();
    let field = Field::Step(Step::ToolChange, TimeBound::Likely);
    question.checked.or_usual(field, usual)
}

/// The time of the shop that an edge counts for; nothing where time is to be least.
pub(super) fn edge_in_time(
    question: &PassQuestion,
    setup: &Setup,
    change: Time,
    findings: &mut Vec<Finding>,
) -> Time {
    if question.job.shop.aim == Aim::LeastTime {
        return Time::ZERO;
    }
    let rate = Field::Rate(RateField::PerHour);
    let per_hour: Option<Money> = question.checked.value(rate);
    let Some(per_hour) = per_hour.filter(|rate| *rate > Money::ZERO) else {
        findings.push(Finding::at(rate, Code::NoRate));
        return Time::ZERO;
    };
    let price = setup.tool.edge_price.unwrap_or_default();
    let again = setup.tool.regrind.unwrap_or_default();
    change + again + Time::minutes(60.0) * (price / per_hour)
}

/// How much of cutting edges passes use up: 1 is one whole edge.
pub(super) fn edges_used<'a>(passes: impl IntoIterator<Item = &'a Pass>) -> f64 {
    let cuts = passes.into_iter().filter_map(|pass| pass.cut.as_ref());
    cuts.map(|cut| cut.edge_used).sum()
}

/// Takes a fresh edge before each pass for which the one in use does not last; the two last cuts share one. Returns how
/// many are taken.
pub(super) fn place_edges(passes: &mut [Pass]) -> u32 {
    let (mut used, mut changes) = (0.0, 0);
    let last = passes.iter().position(|it| it.kind == PassKind::Last);
    let together = edges_used(passes.iter().filter(|it| it.kind == PassKind::Last));
    for (number, pass) in passes.iter_mut().enumerate() {
        let Some(cut) = &mut pass.cut else { continue };
        let needs = if Some(number) == last {
            together
        } else if pass.kind == PassKind::Last {
            0.0
        } else {
            cut.edge_used
        };
        if 0.0 < used && OVER < used + needs {
            cut.new_edge = true;
            changes += 1;
            used = 0.0;
        }
        used += needs;
    }
    changes
}
