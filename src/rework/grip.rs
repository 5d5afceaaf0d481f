//! How much of the finished shank the receiver holds.

use super::cut_off::{CutOff, exact};
use super::finished::WantedShank;
use crate::job::Field;
use crate::part::SAME;
use crate::plan::{Checked, Code, Finding};
use crate::quantity::Length;
use crate::receiver::Asked;
use crate::working::{Figure, Meaning};

/// What the receiver can grip: the straight shank that is inside it.
///
/// The fillet is taken to stand off a receiver whose edge is not chamfered: the careful case.
pub(crate) fn grip(
    checked: &Checked,
    asked: &Asked,
    cut: &CutOff,
    shank: &WantedShank,
) -> Figure<Length> {
    let length = cut.shank_finished.value;
    let straight = length - shank.fillet;
    let mut inputs = vec![
        ("R₂", Meaning::ShankFinished, length),
        ("r", Meaning::Field(Field::ShoulderRadius), shank.fillet),
        ("h", Meaning::Field(Field::EndChamfer), shank.chamfer),
    ];
    let (inside, formula) = match checked.or_usual(Field::ReceiverDepth, asked.depth) {
        Some(depth) => {
            inputs.push(("B", Meaning::Field(Field::ReceiverDepth), depth));
            (straight.min(depth), "min(R₂ − r, B) − h")
        }
        None => (straight, "R₂ − r − h"),
    };
    let value = (inside - shank.chamfer).max(Length::ZERO);
    // A short receiver grips no more than it is long.
    if let Some(most) = asked.most_grip.filter(|most| *most < value) {
        return exact(most, "g", "G", &[("G", Meaning::ReceiverLength, most)]);
    }
    exact(value, "g", formula, &inputs)
}

/// Whether the receiver holds enough, and whether the shoulder comes down on it.
pub(crate) fn findings(
    checked: &Checked,
    asked: &Asked,
    grip: Length,
    cut: &CutOff,
    shank: &WantedShank,
) -> Vec<Finding> {
    let length = cut.shank_finished.value;
    let straight = length - shank.fillet;
    let depth = checked.or_usual(Field::ReceiverDepth, asked.depth);
    // A longer shank does not help where the receiver is no deeper.
    let field = match depth {
        Some(depth) if depth < straight => Field::ReceiverDepth,
        _ => Field::WantedLength,
    };
    let short = checked
        .or_usual(Field::LeastGrip, asked.least_grip)
        .filter(|least: &Length| grip.to_mm() < least.to_mm() - SAME)
        .map(|least| Finding::at(field, Code::GripTooShort { grip, least }));
    // The whole shank, fillet and all, must go in before the shoulder comes down.
    let off = depth
        .map(|depth| length - depth)
        .filter(|by| by.to_mm() > SAME)
        .map(|by| Finding::at(Field::ReceiverDepth, Code::ShoulderStandsOff { by }));
    short.into_iter().chain(off).collect()
}
