//! The part as received, as outlines along the axis.

use super::bores::bore_shape;
use super::features::{FeatureShape, features, lowered};
use super::profile::{Pick, Profile};
use super::sections::{SectionShape, outline, sections};
use crate::job::{BoreEnd, Field, HeadField, Job};
use crate::plan::Checked;
use crate::quantity::Length;

/// One hole of the part with everything resolved, z from the shoulder.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreShape {
    /// Its place in the job's list.
    pub index: u8,
    /// The end that it was made from.
    pub end: BoreEnd,
    /// The hole as it is, thread crests counted as its surface.
    pub profile: Profile,
    /// The hole with threads at their major diameter, for walls.
    pub widest: Profile,
    /// Where the full thread ends, for a tapped hole.
    pub thread_end: Option<Length>,
    /// How far its axis lies beside that of the shank.
    pub off_centre: Length,
}

/// How far the axis of the shank lies beside that of the features that stay: half the runout, in a straight line
/// from the shoulder to the free end.
///
/// Two readings do not say to which sides the axis is off, so this is the most that it can be at every place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct OffAxis {
    /// At the shoulder.
    pub at_shoulder: Length,
    /// At the free end.
    pub at_end: Length,
    /// Shoulder to free end.
    pub length: Length,
}

impl OffAxis {
    /// At a place; in the head as at the shoulder.
    pub fn at(&self, z: Length) -> Length {
        let share = (z / self.length).clamp(0.0, 1.0);
        self.at_shoulder + (self.at_end - self.at_shoulder) * share
    }

    /// Total indicated runout at a place.
    pub fn runout_at(&self, z: Length) -> Length {
        self.at(z) * 2.0
    }

    /// The most of it anywhere on the shank.
    pub fn most(&self) -> Length {
        self.at_shoulder.max(self.at_end)
    }
}

/// The part as received.
#[derive(Clone, Debug, PartialEq)]
pub struct Received {
    /// The sections in order from the shoulder.
    pub sections: Vec<SectionShape>,
    /// What is cut into the shank.
    pub features: Vec<FeatureShape>,
    /// The shank's outline, z from 0, threads at their major diameter.
    pub outer: Profile,
    /// The same with threads at their bottom.
    pub root: Profile,
    /// What of it is metal all round: under threads, flats, keyways and the tang.
    pub sound: Profile,
    /// What the tool meets at most: the outline on an axis that is off.
    pub swept: Profile,
    /// The largest true body inside the shank: what is metal all round, less what the axis is off.
    pub solid: Profile,
    /// The head's outline, z below 0.
    pub head: Profile,
    /// Shoulder to free end.
    pub shank_length: Length,
    /// How far the shank's axis is off.
    pub off_axis: OffAxis,
    /// Every hole that could be resolved.
    pub bores: Vec<BoreShape>,
    /// All these holes as one outline.
    pub inner: Profile,
}

impl Received {
    /// The part as received; `None` while a dimension that it needs is missing or out of bounds.
    ///
    /// A hole or feature with a bad dimension is left out; its finding says so.
    pub(crate) fn from_job(job: &Job, checked: &Checked) -> Option<Self> {
        let (sections, shank_length) = sections(job, checked)?;
        let outer = outline(&sections, shank_length, false);
        let features = features(job, checked, &outer);
        let root = outline(&sections, shank_length, true);
        let sound = lowered(&root, &features);
        let runout = checked.length(Field::Runout)?;
        let off_axis = OffAxis {
            at_shoulder: runout / 2.0,
            at_end: checked.or_usual(Field::EndRunout, runout)? / 2.0,
            length: shank_length,
        };
        let head = head(job, checked)?;
        let space = (head.start(), shank_length);
        let bores = (0..=u8::MAX)
            .zip(job.part.bores.iter().take(Job::MOST_BORES))
            .filter_map(|(index, bore)| bore_shape(index, bore, checked, space))
            .collect::<Vec<_>>();
        let inner = bores.iter().fold(Profile::default(), |all, bore| {
            all.merge(&bore.profile, Pick::Larger)
        });
        Some(Self {
            swept: outer.shifted(|z| off_axis.at(z)),
            solid: sound.shifted(|z| -off_axis.at(z)),
            sections,
            features,
            outer,
            root,
            sound,
            head,
            shank_length,
            off_axis,
            bores,
            inner,
        })
    }

    /// Shank and head as one outline.
    pub fn whole_outer(&self) -> Profile {
        self.outer.merge(&self.head, Pick::Larger)
    }
}

/// The head, piece by piece from the shoulder; `None` while a dimension is missing or out of bounds.
fn head(job: &Job, checked: &Checked) -> Option<Profile> {
    let mut pieces = vec![(
        checked.length(Field::HeadDiameter)?,
        checked.length(Field::HeadLength)?,
    )];
    let beyond = job.part.head_beyond.iter().take(Job::MOST_HEAD_BEYOND);
    for (index, _) in (0..=u8::MAX).zip(beyond) {
        pieces.push((
            checked.length(Field::Head(index, HeadField::Diameter))?,
            checked.length(Field::Head(index, HeadField::Length))?,
        ));
    }
    // Counted from the shoulder, so that the head ends at nought itself and not a rounding beside it.
    let mut end = Length::ZERO;
    let mut spans = Vec::with_capacity(pieces.len());
    for (diameter, length) in pieces {
        spans.push((end - length, end, diameter / 2.0));
        end = end - length;
    }
    let mut head = Profile::default();
    // The piece at the shoulder comes first in the list and last along z.
    for (from, to, radius) in spans.into_iter().rev() {
        head.push_line(from, to, radius, radius);
    }
    Some(head)
}
