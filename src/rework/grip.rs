//! How much of the finished shank the receiver holds.

use super::cut_off::CutOff;
use super::finished::WantedShank;
use crate::job::Field;
use crate::part::SAME;
use crate::plan::{Checked, Code, Finding};
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// What the receiver can grip: the straight shank that is inside it.
///
/// The fillet is taken to stand off a receiver whose edge is not chamfered: the careful case.
pub(crate) fn grip(checked: &Checked, cut: &CutOff, shank: &WantedShank) -> Figure<Length> {
    let length = cut.shank_finished.value;
    let inputs = vec![
        ("R₂", Meaning::ShankFinished, length),
        ("r", Meaning::Field(Field::ShoulderRadius), shank.fillet),
        ("h", Meaning::Field(Field::EndChamfer), shank.chamfer),
    ];
    let straight = length - shank.fillet;
    let (inside, formula, depth) = match checked.length(Field::ReceiverDepth) {
        Some(depth) => (straight.min(depth), "min(R₂ − r, B) − h", Some(depth)),
        None => (straight, "R₂ − r − h", None),
    };
    let depth = depth.map(|depth| ("B", Meaning::Field(Field::ReceiverDepth), depth));
    Figure {
        value: (inside - shank.chamfer).max(Length::ZERO),
        range: None,
        working: Working {
            symbol: "g",
            formula,
            parts: &[],
            inputs: inputs
                .into_iter()
                .chain(depth)
                .map(|(symbol, meaning, length)| Input {
                    symbol,
                    meaning,
                    value: Value::length(length),
                })
                .collect(),
            source: Source::Geometry,
        },
    }
}

/// Whether the receiver holds enough, and whether the shoulder comes down on it.
pub(crate) fn findings(
    checked: &Checked,
    grip: Length,
    cut: &CutOff,
    shank: &WantedShank,
) -> Vec<Finding> {
    let length = cut.shank_finished.value;
    let straight = length - shank.fillet;
    let depth = checked.length(Field::ReceiverDepth);
    // A longer shank does not help where the receiver is no deeper.
    let field = match depth {
        Some(depth) if depth < straight => Field::ReceiverDepth,
        _ => Field::WantedLength,
    };
    let short = checked
        .length(Field::LeastGrip)
        .filter(|least| grip.to_mm() < least.to_mm() - SAME)
        .map(|least| Finding::at(field, Code::GripTooShort { grip, least }));
    // The whole shank, fillet and all, must go in before the shoulder comes down.
    let off = depth
        .map(|depth| length - depth)
        .filter(|by| by.to_mm() > SAME)
        .map(|by| Finding::at(Field::ReceiverDepth, Code::ShoulderStandsOff { by }));
    short.into_iter().chain(off).collect()
}
