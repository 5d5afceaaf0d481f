//! Whether the finished cylinder lies inside the stock, and the most that could be had.
//!
//! Everything that cuts into the stock counts: tapers, grooves, the bottom of threads, flats, keyways, the tang.
//! Runout is counted as an axis that is off by half of it: a stock of diameter D then holds a true cylinder of
//! D less the runout there, which changes along a shank that is tilted.

use serde::Serialize;

use super::finished::{Nominal, SizeLimits, WantedShank};
use crate::job::Field;
use crate::part::{HAIR, Point, Profile, Received, SAME, SectionShape};
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// How well the finished cylinder cleans up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CleanUp {
    /// Where least is left.
    pub at: Length,
    /// What leaves so little there.
    pub because: Because,
    /// The largest diameter that cleans up over the length wanted.
    pub largest_diameter: Figure<Length>,
    /// The longest shank that cleans up at the diameter wanted, from the shoulder.
    pub longest: Length,
    /// The most that can be had: from length to length in straight lines, the diameter never growing.
    pub most: Vec<Most>,
}

/// The largest diameter that cleans up over a length.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Most {
    /// From the shoulder.
    pub length: Length,
    /// The largest diameter.
    pub diameter: Length,
}

/// What of the part as received is in the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", content = "index", rename_all = "kebab-case")]
pub enum Because {
    /// An outer section, by its place in the job's list.
    Section(u8),
    /// A feature, by its place in the job's list.
    Feature(u8),
}

/// Finds the tightest place; `None` when there is no stock where the shank shall be.
pub(crate) fn clean_up(
    received: &Received,
    shank: &WantedShank,
    limits: SizeLimits,
) -> Option<CleanUp> {
    let stock = received.shank_length.min(shank.length);
    let Point { z, radius } = received.solid.smallest(Length::ZERO, stock)?;
    let runout = received.off_axis.runout_at(z);
    // The first place, seen from the shoulder, where the stock is too thin ends what can be had.
    let needed = Profile::cylinder(Length::ZERO, received.shank_length, limits.lower / 2.0);
    let short = needed.beyond(&received.solid);
    let longest = short
        .first()
        .map_or(received.shank_length, |(from, _)| *from);
    Some(CleanUp {
        at: z,
        because: because(received, z, radius)?,
        largest_diameter: Figure {
            value: radius * 2.0,
            range: None,
            working: Working {
                symbol: "d",
                formula: "D − T",
                parts: &[],
                inputs: vec![
                    Input::new(
                        "D",
                        Meaning::SmallestStock,
                        Value::size(radius * 2.0 + runout),
                    ),
                    Input::new("T", Meaning::RunoutThere, Value::size(runout)),
                ],
                source: Source::Geometry,
            },
        },
        longest,
        most: most(&received.solid),
    })
}

/// What leaves the stock as thin as `radius` at a place: a feature if one reaches as deep, or the section there.
fn because(received: &Received, z: Length, radius: Length) -> Option<Because> {
    let bare = radius + received.off_axis.at(z);
    let spans = |from: Length, to: Length| from - HAIR <= z && z <= to + HAIR;
    let feature = received.features.iter().find(|feature| {
        let clear = feature.clear_radius().map(|clear| clear.max(Length::ZERO));
        spans(feature.from, feature.to) && clear.is_some_and(|clear| (clear - bare).to_mm() <= SAME)
    });
    if let Some(feature) = feature {
        return Some(Because::Feature(feature.index));
    }
    // Of two sections that meet there the one that leaves less.
    let left = |section: &SectionShape| section.root_diameter.unwrap_or(section.diameter_at(z));
    let there = received
        .sections
        .iter()
        .filter(|section| spans(section.from, section.to))
        .min_by(|a, b| left(a).to_mm().total_cmp(&left(b).to_mm()));
    let section = there.or(received.sections.last())?;
    Some(Because::Section(section.index))
}

/// The most that can be had of the stock, over its whole length.
fn most(solid: &Profile) -> Vec<Most> {
    let mut most: Vec<Most> = Vec::new();
    let mut push = |z: Length, radius: Length| {
        let next = Most {
            length: z,
            diameter: radius * 2.0,
        };
        if most.last() != Some(&next) {
            most.push(next);
        }
    };
    let mut least: Option<Length> = None;
    for pair in solid.points().windows(2) {
        let [from, to] = pair else { continue };
        let before = *least.get_or_insert(from.radius);
        push(from.z, before.min(from.radius));
        let after = before.min(from.radius).min(to.radius);
        // It goes on level until the outline falls below what was least before.
        let drop = from.radius - to.radius;
        if after < before && from.radius > before && drop.to_mm() > SAME {
            let share = (from.radius - before) / drop;
            push(from.z + (to.z - from.z) * share, before);
        }
        push(to.z, after);
        least = Some(after);
    }
    most
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
                because: found.because,
            },
        ));
    }
    (largest.to_mm() < (limits.aim + polishing).to_mm() - SAME).then(|| {
        let largest = nominal.at_most(largest - polishing, |limits| limits.aim);
        Finding::at(Field::WantedDiameter, Code::CleansUpLow { at, largest })
    })
}
