//! What is cut into the shank, put in its place: how far from the axis it leaves metal all round.

use super::profile::{Profile, SAME};
use crate::job::{Cut, Datum, Feature, FeatureField, Field, Flats, Job};
use crate::plan::Checked;
use crate::quantity::Length;

/// One feature with everything resolved, z from the shoulder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FeatureShape {
    /// Its place in the job's list.
    pub index: u8,
    /// Where it begins.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// Largest radius of the shank along it.
    pub outside: Length,
    /// What it is.
    pub cut: CutShape,
}

/// The shape of a feature, distances from the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CutShape {
    /// A flat, or two opposite ones.
    Flat {
        /// From the axis; zero or less where it cuts through the axis.
        distance: Length,
        /// Whether there is another opposite.
        both: bool,
    },
    /// A keyway with a flat bottom.
    Keyway {
        /// Its width.
        width: Length,
        /// Its bottom, from the axis.
        bottom: Length,
    },
    /// A keyway with a round bottom.
    Woodruff {
        /// Its width.
        width: Length,
        /// Its lowest place, from the axis.
        bottom: Length,
        /// Radius of the cutter.
        disc_radius: Length,
    },
    /// A hole across the axis.
    CrossHole {
        /// Its diameter.
        diameter: Length,
    },
    /// A tang.
    Tang {
        /// Half its thickness.
        half: Length,
        /// Width and depth of a slot across it.
        slot: Option<(Length, Length)>,
    },
}

impl FeatureShape {
    /// How far from the axis there is metal all round, for what cuts in from outside; `None` for a cross hole,
    /// which no smaller diameter is clear of.
    pub fn clear_radius(&self) -> Option<Length> {
        Some(match self.cut {
            CutShape::Flat { distance, .. } => distance,
            CutShape::Keyway { bottom, .. } | CutShape::Woodruff { bottom, .. } => bottom,
            CutShape::Tang { half, .. } => half,
            CutShape::CrossHole { .. } => return None,
        })
    }

    /// The stretch on which nothing is left on the axis itself: a cross hole, or the slot of a tang.
    pub fn through(&self) -> Option<(Length, Length)> {
        match self.cut {
            CutShape::CrossHole { .. } => Some((self.from, self.to)),
            CutShape::Tang {
                slot: Some((_, depth)),
                ..
            } => Some((self.to - depth, self.to)),
            _ => None,
        }
    }
}

/// Every feature that can be resolved, in the order of the list; one with a bad number is left out, as its finding
/// says.
pub(super) fn features(job: &Job, checked: &Checked, outer: &Profile) -> Vec<FeatureShape> {
    (0..=u8::MAX)
        .zip(job.part.features.iter().take(Job::MOST_FEATURES))
        .filter_map(|(index, feature)| shape(index, feature, checked, outer))
        .collect()
}

fn shape(index: u8, feature: &Feature, checked: &Checked, outer: &Profile) -> Option<FeatureShape> {
    let number = |field| checked.length(Field::Feature(index, field));
    let whole = outer.end();
    // From the datum to the middle of what is placed by its middle, to the nearer side of all else.
    let span = |long: Length, by_middle: bool| {
        let place = feature.place.as_ref()?;
        let start = number(FeatureField::Start)?;
        let from = match (place.from, by_middle) {
            (Datum::Shoulder, false) => start,
            (Datum::Shoulder, true) => start - long / 2.0,
            (Datum::FreeEnd, false) => whole - start - long,
            (Datum::FreeEnd, true) => whole - start - long / 2.0,
        };
        Some((from, from + long))
    };
    let middle = feature.is_placed_by_middle();
    let (from, to) = match &feature.cut {
        Cut::Flat { .. } | Cut::Keyway { .. } => span(number(FeatureField::Length)?, middle)?,
        Cut::WoodruffKeyway { .. } => span(woodruff_length(checked, index)?, middle)?,
        Cut::CrossHole { .. } => span(number(FeatureField::Diameter)?, middle)?,
        Cut::Tang { .. } => (whole - number(FeatureField::Length)?, whole),
    };
    let (from, to) = (from.max(Length::ZERO), to.min(whole));
    if (to - from).to_mm() <= SAME {
        return None;
    }
    let outside = outer.largest(from, to)?.radius;
    // A depth is measured from the surface, which on a taper is nearest to the axis at the thin end.
    let surface = outer.smallest(from, to)?.radius;
    let cut = match &feature.cut {
        Cut::Flat { flats, .. } => {
            let over = number(FeatureField::Over)?;
            match flats {
                Flats::One => CutShape::Flat {
                    distance: over - outside,
                    both: false,
                },
                Flats::Two => CutShape::Flat {
                    distance: over / 2.0,
                    both: true,
                },
            }
        }
        Cut::Keyway { .. } => CutShape::Keyway {
            width: number(FeatureField::Width)?,
            bottom: surface - number(FeatureField::Depth)?,
        },
        Cut::WoodruffKeyway { .. } => CutShape::Woodruff {
            width: number(FeatureField::Width)?,
            bottom: surface - number(FeatureField::Depth)?,
            disc_radius: number(FeatureField::Disc)? / 2.0,
        },
        Cut::CrossHole { .. } => CutShape::CrossHole {
            diameter: number(FeatureField::Diameter)?,
        },
        Cut::Tang { .. } => CutShape::Tang {
            half: number(FeatureField::Thickness)? / 2.0,
            slot: number(FeatureField::SlotWidth)
                .zip(number(FeatureField::SlotDepth))
                .filter(|(width, depth)| width.to_mm() > SAME && depth.to_mm() > SAME)
                .map(|(width, depth)| (width, depth.min(to - from))),
        },
    };
    Some(FeatureShape {
        index,
        from,
        to,
        outside,
        cut,
    })
}

/// How long a Woodruff keyway is at the surface: the chord of its disc.
fn woodruff_length(checked: &Checked, index: u8) -> Option<Length> {
    let number = |field| checked.length(Field::Feature(index, field));
    let radius = (number(FeatureField::Disc)? / 2.0).to_mm();
    // A cutter does not go in deeper than to its own middle.
    let depth = number(FeatureField::Depth)?.to_mm().min(radius);
    Some(Length::mm(
        2.0 * (radius * radius - (radius - depth) * (radius - depth)).sqrt(),
    ))
}

/// The outline lowered to what is metal all round. A Woodruff keyway counts at its full depth all along.
pub(super) fn lowered(outer: &Profile, features: &[FeatureShape]) -> Profile {
    features.iter().fold(outer.clone(), |outer, feature| {
        match feature.clear_radius() {
            Some(clear) => outer.capped(feature.from, feature.to, clear.max(Length::ZERO)),
            None => outer,
        }
    })
}
