//! The part as received, as outlines along the axis.

use super::profile::{Pick, Profile};
use super::taper::TaperEnds;
use crate::job::{Bore, BoreBottom, BoreField, Field, Job, Section, SectionField};
use crate::plan::Checked;
use crate::quantity::{Angle, Length};

/// The point of a twist drill: 118° included, the usual point for steel; common practice, no source.
const DRILL_POINT: Angle = Angle::degrees(118.0);

/// Half the included angle of a centre: 60° after ISO 866, DIN 332-1 and ASME B94.11M.
pub(crate) const CENTRE_HALF_ANGLE: Angle = Angle::degrees(30.0);

/// One outer section with everything resolved.
#[derive(Clone, Copy, Debug, PartialEq, serde::Serialize)]
pub struct SectionShape {
    /// Its place in the job's list.
    pub index: u8,
    /// From the shoulder to its beginning.
    pub from: Length,
    /// From the shoulder to its end.
    pub to: Length,
    /// Diameter at its beginning.
    pub from_diameter: Length,
    /// Diameter at its end.
    pub to_diameter: Length,
}

/// One hole of the part with everything resolved, z from the shoulder.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreShape {
    /// Its place in the job's list.
    pub index: u8,
    /// The hole as it is, thread crests counted as its surface.
    pub profile: Profile,
    /// The hole with threads at their major diameter, for walls.
    pub widest: Profile,
    /// Where the full thread ends, for a tapped hole.
    pub thread_end: Option<Length>,
}

/// The part as received.
#[derive(Clone, Debug, PartialEq)]
pub struct Received {
    /// The sections in order from the shoulder.
    pub sections: Vec<SectionShape>,
    /// The shank's outline, z from 0.
    pub outer: Profile,
    /// The head's outline, z below 0.
    pub head: Profile,
    /// Shoulder to free end.
    pub shank_length: Length,
    /// Total indicated runout.
    pub runout: Length,
    /// Every hole that could be resolved.
    pub bores: Vec<BoreShape>,
    /// All these holes as one outline.
    pub inner: Profile,
}

impl Received {
    /// The part as received; `None` while a dimension that it needs is missing or out of bounds.
    ///
    /// A hole with a bad dimension is left out; its finding says so.
    pub(crate) fn from_job(job: &Job, checked: &Checked) -> Option<Self> {
        let sections = sections(job, checked)?;
        let mut outer = Profile::default();
        for section in &sections {
            outer.push_line(
                section.from,
                section.to,
                section.from_diameter / 2.0,
                section.to_diameter / 2.0,
            );
        }
        let shank_length = sections.last()?.to;
        let head_length = checked.length(Field::HeadLength)?;
        let head = Profile::cylinder(
            -head_length,
            Length::ZERO,
            checked.length(Field::HeadDiameter)? / 2.0,
        );
        let space = (-head_length, shank_length);
        let bores = (0..=u8::MAX)
            .zip(&job.part.bores)
            .filter_map(|(index, bore)| bore_shape(index, bore, checked, space))
            .collect::<Vec<_>>();
        let inner = bores.iter().fold(Profile::default(), |all, bore| {
            all.merge(&bore.profile, Pick::Larger)
        });
        Some(Self {
            sections,
            outer,
            head,
            shank_length,
            runout: checked.length(Field::Runout)?,
            bores,
            inner,
        })
    }

    /// Shank and head as one outline.
    pub fn whole_outer(&self) -> Profile {
        self.outer.merge(&self.head, Pick::Larger)
    }
}

fn sections(job: &Job, checked: &Checked) -> Option<Vec<SectionShape>> {
    let mut from = Length::ZERO;
    let mut shapes = Vec::with_capacity(job.part.sections.len());
    for (index, section) in (0..=u8::MAX).zip(&job.part.sections) {
        let length = |field| checked.length(Field::Section(index, field));
        let (from_diameter, to_diameter, long) = match section {
            Section::Cylinder { .. } => {
                let diameter = length(SectionField::Diameter)?;
                (diameter, diameter, length(SectionField::Length)?)
            }
            Section::Taper { .. } => (
                length(SectionField::ShoulderDiameter)?,
                length(SectionField::EndDiameter)?,
                length(SectionField::Length)?,
            ),
            Section::StandardTaper {
                taper,
                length: typed,
                ..
            } => {
                let ends = TaperEnds::of_section(index, *taper, typed.as_ref(), checked)?;
                (ends.from_diameter, ends.to_diameter, ends.length)
            }
        };
        // A standard taper that is told to be too long would come to a point.
        if long <= Length::ZERO || from_diameter <= Length::ZERO || to_diameter <= Length::ZERO {
            return None;
        }
        let to = from + long;
        shapes.push(SectionShape {
            index,
            from,
            to,
            from_diameter,
            to_diameter,
        });
        from = to;
    }
    Some(shapes)
}

/// A hole from the free end; `space` is where there is metal at all along the axis.
fn bore_shape(
    index: u8,
    bore: &Bore,
    checked: &Checked,
    space: (Length, Length),
) -> Option<BoreShape> {
    let length = |field| checked.length(Field::Bore(index, field));
    match bore {
        Bore::Drilled { bottom, .. } => {
            let radius = length(BoreField::Diameter)? / 2.0;
            let profile = hole(radius, length(BoreField::Depth)?, *bottom, space);
            Some(BoreShape {
                index,
                widest: profile.clone(),
                profile,
                thread_end: None,
            })
        }
        Bore::Tapped { thread, .. } => {
            let thread = thread.get()?;
            let (thread_depth, drill_depth) = (
                length(BoreField::ThreadDepth)?,
                length(BoreField::DrillDepth)?,
            );
            let profile = hole(
                thread.minor_internal / 2.0,
                drill_depth.max(thread_depth),
                BoreBottom::DrillPoint,
                space,
            );
            let threaded = hole(thread.major / 2.0, thread_depth, BoreBottom::Flat, space);
            Some(BoreShape {
                index,
                thread_end: Some(threaded.start()),
                widest: profile.merge(&threaded, Pick::Larger),
                profile,
            })
        }
        Bore::CentreHole { centre_drill } => {
            let drill = centre_drill.get()?;
            let pilot_length = (drill.pilot_length_min + drill.pilot_length_max) / 2.0;
            let mouth = drill.countersink_diameter.unwrap_or(drill.body_diameter);
            let profile = centre(mouth, drill.pilot_diameter, pilot_length, space);
            Some(BoreShape {
                index,
                widest: profile.clone(),
                profile,
                thread_end: None,
            })
        }
    }
}

/// A round hole from the free end, its point below the full depth.
fn hole(radius: Length, depth: Length, bottom: BoreBottom, space: (Length, Length)) -> Profile {
    let (lowest, end) = space;
    let bottom_at = end - depth;
    let mut profile = Profile::default();
    if bottom == BoreBottom::DrillPoint {
        let point = cone_height(radius, DRILL_POINT / 2.0);
        profile.push_line(bottom_at - point, bottom_at, Length::ZERO, radius);
    }
    profile.push_line(bottom_at, end, radius, radius);
    profile.between(lowest, end)
}

/// A centre hole at the end of `space`: a 60° cone from its mouth down to the pilot, and the pilot below.
pub(crate) fn centre(
    mouth: Length,
    pilot: Length,
    pilot_length: Length,
    space: (Length, Length),
) -> Profile {
    let (lowest, end) = space;
    let cone = cone_height((mouth - pilot) / 2.0, CENTRE_HALF_ANGLE);
    let mut profile = Profile::default();
    let pilot_end = end - cone;
    profile.push_line(
        pilot_end - pilot_length,
        pilot_end,
        pilot / 2.0,
        pilot / 2.0,
    );
    profile.push_line(pilot_end, end, pilot / 2.0, mouth / 2.0);
    profile.between(lowest, end)
}

/// How high a cone of `half_angle` is over a difference of radius.
pub(crate) fn cone_height(radius_difference: Length, half_angle: Angle) -> Length {
    radius_difference / half_angle.to_radians().tan()
}
