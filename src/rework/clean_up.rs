//! Whether the finished cylinder lies inside the stock, and the most that could be had.
//!
//! Runout is counted as an axis that is off by half of it: a stock of diameter D then holds a true cylinder of
//! D less the runout.

use serde::Serialize;

use super::finished::{Nominal, SizeLimits, WantedShank};
use crate::job::Field;
use crate::part::{Point, Received, SAME};
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// How well the finished cylinder cleans up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CleanUp {
    /// Where least is left.
    pub at: Length,
    /// The largest diameter that cleans up over the length wanted.
    pub largest_diameter: Figure<Length>,
    /// The longest shank that cleans up at the diameter wanted, from the shoulder.
    pub longest: Length,
}

/// Finds the tightest place; `None` when there is no stock where the shank shall be.
pub(crate) fn clean_up(
    received: &Received,
    shank: &WantedShank,
    limits: SizeLimits,
) -> Option<CleanUp> {
    let stock = received.shank_length.min(shank.length);
    let Point { z, radius } = received.outer.smallest(Length::ZERO, stock)?;
    let smallest = radius * 2.0;
    let needed_radius = (limits.lower + received.runout) / 2.0;
    // The first place, seen from the shoulder, where the stock is too thin ends what can be had.
    let longest = received
        .sections
        .iter()
        .find_map(|section| {
            let (from, to) = (section.from_diameter / 2.0, section.to_diameter / 2.0);
            if from.to_mm() < needed_radius.to_mm() - SAME {
                return Some(section.from);
            }
            if to.to_mm() >= needed_radius.to_mm() - SAME {
                return None;
            }
            let share = (from - needed_radius) / (from - to);
            Some(section.from + (section.to - section.from) * share)
        })
        .unwrap_or(received.shank_length);
    Some(CleanUp {
        at: z,
        largest_diameter: Figure {
            value: (smallest - received.runout).max(Length::ZERO),
            range: None,
            working: Working {
                symbol: "d",
                formula: "D − T",
                parts: &[],
                inputs: vec![
                    Input::new("D", Meaning::SmallestStock, Value::size(smallest)),
                    Input::new(
                        "T",
                        Meaning::Field(Field::Runout),
                        Value::size(received.runout),
                    ),
                ],
                source: Source::Geometry,
            },
        },
        longest,
    })
}

/// What the clean-up means: a stop below the tolerance, a caution where only its lower part is left.
///
/// The largest diameter that a finding names is one to ask for: with the tolerance as it is, the finding goes.
pub(crate) fn finding(
    found: &CleanUp,
    limits: SizeLimits,
    polishing: Length,
    nominal: &Nominal,
) -> Option<Finding> {
    let largest = found.largest_diameter.value;
    let at = found.at;
    if largest.to_mm() < limits.lower.to_mm() - SAME {
        return Some(Finding::at(
            Field::WantedDiameter,
            Code::NotCleanedUp {
                at,
                short_by: limits.lower - largest,
                largest: nominal.at_most(largest, |limits| limits.lower).min(largest),
                longest: found.longest,
            },
        ));
    }
    (largest.to_mm() < (limits.aim + polishing).to_mm() - SAME).then(|| {
        let largest = nominal.at_most(largest - polishing, |limits| limits.aim);
        Finding::at(Field::WantedDiameter, Code::CleansUpLow { at, largest })
    })
}
