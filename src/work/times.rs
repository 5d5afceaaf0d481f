//! The plan's times by the steps of the work.

use crate::costing::{Counted, PartOf, PlannedTime, Spread, ThreePoint, TimePart};
use crate::job::WorkStep;

/// What some steps of the work take together at their pace; `None` where none of them has a time.
pub(super) fn spread(time: &PlannedTime, steps: &[WorkStep]) -> Option<Spread> {
    of_parts(time, steps, TimePart::paced)
}

/// The same as if nothing had been learned of them.
pub(super) fn spread_at_usual_pace(time: &PlannedTime, steps: &[WorkStep]) -> Option<Spread> {
    of_parts(time, steps, |part| part.each)
}

fn of_parts(
    time: &PlannedTime,
    steps: &[WorkStep],
    each: impl Fn(&TimePart) -> ThreePoint,
) -> Option<Spread> {
    let mut handling = Vec::new();
    let mut feeding = Vec::new();
    let inside = |part: &&TimePart| part.work.is_some_and(|work| steps.contains(&work));
    for part in time.parts.iter().filter(inside) {
        let draw = Counted {
            each: each(part),
            count: part.count,
        };
        match part.of {
            PartOf::Handling(_) => handling.push(draw),
            PartOf::Fed(_) => feeding.push(draw),
        }
    }
    let some = !(handling.is_empty() && feeding.is_empty());
    some.then(|| Spread::of(&handling, &feeding))
}

/// Whether the person typed a time of a step of the work.
pub(super) fn is_typed(time: &PlannedTime, step: WorkStep) -> bool {
    let own = |part: &&TimePart| part.work == Some(step);
    time.parts.iter().filter(own).any(|part| part.typed)
}
