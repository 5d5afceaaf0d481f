//! The least wall between a hole and the finished outside.
//!
//! Threads in holes count with their major diameter, outside threads with their bottom, flats and keyways with
//! theirs. A hole is taken as true to the shank as received, or as far off as entered, and turning the shank true
//! to the features that stay moves it off centre by half the runout there.

use serde::Serialize;

use super::finished::{Nominal, SizeLimits, WantedShank};
use crate::job::Field;
use crate::part::{BoreShape, HAIR, OffAxis, Pick, Profile, Received, SAME};
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::tables::Confirmed;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// The wall round one hole.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Wall {
    /// The hole's place in the job's list.
    pub bore: u8,
    /// The least wall; negative where the hole breaks out.
    pub least: Figure<Length>,
    /// Where.
    pub at: Length,
    /// The wall advised for this hole.
    pub advised: Length,
    /// The hole's diameter there, threads at their major diameter.
    pub bore_diameter: Length,
    /// How far the hole's axis may lie beside that of the finished shank there.
    pub offset: Length,
}

/// The wall round every hole that is left in the finished shank.
pub(crate) fn walls(received: &Received, shank: &WantedShank, limits: SizeLimits) -> Vec<Wall> {
    let length = shank.length.min(received.shank_length);
    // The smallest permitted shank, without its chamfer: the end has its own finding.
    let straight = WantedShank::new(limits.lower, length, shank.fillet, Length::ZERO).outer;
    let outer = straight
        .merge(&received.sound.between(Length::ZERO, length), Pick::Smaller)
        .merge(&received.head, Pick::Larger);
    received
        .bores
        .iter()
        .filter_map(|bore| wall(bore, &outer, length, shank.fillet, &received.off_axis))
        .collect()
}

/// One place where the wall may be thinnest.
struct Candidate {
    at: Length,
    least: Length,
    bore_diameter: Length,
    outer_diameter: Length,
    offset: Length,
}

/// The thinnest place of a hole; `None` where the hole is gone, or nothing is left round it.
fn thinnest(
    bore: &BoreShape,
    outer: &Profile,
    length: Length,
    fillet: Length,
    off_axis: &OffAxis,
) -> Option<Candidate> {
    let left = bore.widest.between(outer.start(), length);
    // Between these places both are straight, or the outline is the fillet: the least wall is at one of them, or
    // where the fillet falls as steeply as the hole does.
    let (places, ends) = (left.points(), outer.points());
    let alike = places.windows(2).filter_map(|pair| {
        let [from, to] = pair else { return None };
        // In the head the axis stays beside by the same amount, so only the shank's part of the hole counts.
        let start = from.z.max(Length::ZERO);
        let (hole, shank) = (to.z - from.z, to.z - start);
        if shank.to_mm() <= SAME {
            return None;
        }
        let beside = (off_axis.at(start) - off_axis.at(to.z)) / shank;
        let z = as_steep(fillet, (from.radius - to.radius) / hole + beside);
        (from.z < z && z < to.z).then_some(z)
    });
    let inside = |z: &Length| left.start() <= *z && *z <= left.end();
    let candidates: Vec<Candidate> = places
        .iter()
        .chain(&ends)
        .map(|point| point.z)
        .chain(alike)
        .filter(inside)
        // A hair to either side tells apart the two sides of a step.
        .flat_map(|z| [(z, z - HAIR), (z, z + HAIR)])
        .filter_map(|(at, beside)| {
            let (hole, around) = (left.radius_at(beside), outer.radius_at(beside));
            (hole > Length::ZERO && around > Length::ZERO).then(|| Candidate {
                at,
                least: around - hole - bore.off_centre - off_axis.at(at),
                bore_diameter: hole * 2.0,
                outer_diameter: around * 2.0,
                offset: bore.off_centre + off_axis.at(at),
            })
        })
        .collect();
    let least = candidates.iter().map(|it| it.least).reduce(Length::min)?;
    // Of places that are alike the one nearest to the shoulder, whatever rounding says.
    candidates
        .into_iter()
        .filter(|it| (it.least - least).to_mm() <= SAME)
        .min_by(|a, b| a.at.to_mm().total_cmp(&b.at.to_mm()))
}

/// Where a fillet falls by `slope`, for each millimetre along the axis: at the shoulder it falls straight down, and at
/// its end not at all.
fn as_steep(fillet: Length, slope: f64) -> Length {
    fillet * (1.0 - slope.max(0.0) / slope.hypot(1.0))
}

fn wall(
    bore: &BoreShape,
    outer: &Profile,
    length: Length,
    fillet: Length,
    off_axis: &OffAxis,
) -> Option<Wall> {
    let Candidate {
        at,
        least,
        bore_diameter,
        outer_diameter,
        offset,
    } = thinnest(bore, outer, length, fillet, off_axis)?;
    Some(Wall {
        bore: bore.index,
        least: Figure {
            value: least,
            range: None,
            working: Working {
                symbol: "w",
                formula: "(d − B)/2 − e",
                parts: &[],
                inputs: vec![
                    Input::new("d", Meaning::OuterDiameter, Value::size(outer_diameter)),
                    Input::new("B", Meaning::BoreDiameter, Value::size(bore_diameter)),
                    Input::new("e", Meaning::AxisOffset, Value::size(offset)),
                ],
                source: Source::Geometry,
            },
        },
        at,
        advised: advised_wall(bore_diameter),
        bore_diameter,
        offset,
    })
}

/// The least wall advised round a hole: 1.5 mm, or 0.15 of the hole where that is more.
///
/// # Source
/// From memory, a warning level and no limit of any standard.
pub(crate) fn advised_wall(bore_diameter: Length) -> Length {
    Length::mm(1.5).max(bore_diameter * 0.15)
}

/// Where the advised wall comes from, for its working.
pub const ADVISED_WALL_SOURCE: Source = Source::Published {
    title: "Least wall 1.5 mm or 0.15 of the hole",
    confirmed: Confirmed::Memory,
};

/// What the walls mean: a stop where a hole breaks out, a caution where the wall is thin.
pub(crate) fn findings(walls: &[Wall], limits: SizeLimits, nominal: &Nominal) -> Vec<Finding> {
    let judge = |wall: &Wall| {
        let least = wall.least.value;
        if least.to_mm() <= SAME {
            let lower = wall.bore_diameter + (wall.advised + wall.offset) * 2.0;
            let smallest = nominal.at_least(lower, |limits| limits.lower);
            return Some(Finding::at(
                Field::WantedDiameter,
                Code::BreaksOut {
                    at: wall.at,
                    smallest: smallest.max(limits.aim),
                },
            ));
        }
        (least.to_mm() < wall.advised.to_mm() - 10.0 * SAME).then(|| {
            Finding::at(
                Field::WantedDiameter,
                Code::ThinWall {
                    wall: least,
                    advised: wall.advised,
                    at: wall.at,
                },
            )
        })
    };
    walls.iter().filter_map(judge).collect()
}
