//! The holes of the part, as outlines along the axis.

use super::profile::{Pick, Profile};
use super::received::BoreShape;
use crate::job::{Bore, BoreBottom, BoreEnd, BoreField, Field, Hole};
use crate::plan::Checked;
use crate::quantity::{Angle, Length};

/// The point of a twist drill: 118° included, the usual point for steel; common practice, no source.
const DRILL_POINT: Angle = Angle::degrees(118.0);

/// Half the included angle of a centre: 60° after ISO 866, DIN 332-1 and ASME B94.11M.
pub(crate) const CENTRE_HALF_ANGLE: Angle = Angle::degrees(30.0);

/// Where there is metal along the axis, and from which end a hole is made in it.
#[derive(Clone, Copy)]
struct Side {
    space: (Length, Length),
    end: BoreEnd,
}

impl Side {
    /// The place this deep under the end.
    fn at(self, depth: Length) -> Length {
        match self.end {
            BoreEnd::FreeEnd => self.space.1 - depth,
            BoreEnd::HeadEnd => self.space.0 + depth,
        }
    }

    /// A cylinder or cone between two depths, the first of them the shallower.
    fn push(self, profile: &mut Profile, depths: (Length, Length), radii: (Length, Length)) {
        let (near, far) = (self.at(depths.0), self.at(depths.1));
        match self.end {
            BoreEnd::FreeEnd => profile.push_line(far, near, radii.1, radii.0),
            BoreEnd::HeadEnd => profile.push_line(near, far, radii.0, radii.1),
        }
    }

    /// A round hole, its point below the full depth.
    fn hole(self, radius: Length, depth: Length, bottom: BoreBottom) -> Profile {
        let point = match bottom {
            BoreBottom::DrillPoint => cone_height(radius, DRILL_POINT / 2.0),
            BoreBottom::Flat => Length::ZERO,
        };
        let mut pieces = [
            ((Length::ZERO, depth), (radius, radius)),
            ((depth, depth + point), (radius, Length::ZERO)),
        ];
        // Pieces come in order of z, which for a hole from the free end begins at its bottom.
        if self.end == BoreEnd::FreeEnd {
            pieces.reverse();
        }
        let mut profile = Profile::default();
        for (depths, radii) in pieces {
            self.push(&mut profile, depths, radii);
        }
        profile.between(self.space.0, self.space.1)
    }
}

/// A hole with everything resolved; `space` is where there is metal at all along the axis.
pub(super) fn bore_shape(
    index: u8,
    bore: &Bore,
    checked: &Checked,
    space: (Length, Length),
) -> Option<BoreShape> {
    let length = |field| checked.length(Field::Bore(index, field));
    let off_centre = checked.or_usual(Field::Bore(index, BoreField::OffCentre), Length::ZERO)?;
    let side = Side {
        space,
        end: bore.end,
    };
    let mut thread_end = None;
    let mut widest = None;
    let profile = match &bore.hole {
        Hole::Drilled { bottom, .. } => {
            let radius = length(BoreField::Diameter)? / 2.0;
            side.hole(radius, length(BoreField::Depth)?, *bottom)
        }
        Hole::Stepped { bottom, .. } => {
            let narrow = side.hole(
                length(BoreField::Diameter)? / 2.0,
                length(BoreField::Depth)?,
                *bottom,
            );
            let step = side.hole(
                length(BoreField::StepDiameter)? / 2.0,
                length(BoreField::StepDepth)?,
                BoreBottom::Flat,
            );
            narrow.merge(&step, Pick::Larger)
        }
        Hole::Tapped { thread, .. } => {
            let thread = thread.get()?;
            let (thread_depth, drill_depth) = (
                length(BoreField::ThreadDepth)?,
                length(BoreField::DrillDepth)?,
            );
            let drilled = side.hole(
                thread.minor_internal / 2.0,
                drill_depth.max(thread_depth),
                BoreBottom::DrillPoint,
            );
            let threaded = side.hole(thread.major / 2.0, thread_depth, BoreBottom::Flat);
            thread_end = Some(match bore.end {
                BoreEnd::FreeEnd => threaded.start(),
                BoreEnd::HeadEnd => threaded.end(),
            });
            widest = Some(drilled.merge(&threaded, Pick::Larger));
            drilled
        }
        Hole::Reamed { .. } => {
            let (ream_depth, drill_depth) = (
                length(BoreField::ReamDepth)?,
                length(BoreField::DrillDepth)?,
            );
            // What the drill leaves for the reamer does not count beside the hole.
            let radius = length(BoreField::Diameter)? / 2.0;
            side.hole(radius, drill_depth.max(ream_depth), BoreBottom::DrillPoint)
        }
        Hole::Through { .. } => {
            let radius = length(BoreField::Diameter)? / 2.0;
            Profile::cylinder(space.0, space.1, radius)
        }
        Hole::CentreHole { centre_drill } => {
            let drill = centre_drill.get()?;
            let pilot_length = (drill.pilot_length_min + drill.pilot_length_max) / 2.0;
            let mouth = drill.countersink_diameter.unwrap_or(drill.body_diameter);
            centre_from(side, mouth, drill.pilot_diameter, pilot_length)
        }
    };
    Some(BoreShape {
        index,
        end: bore.end,
        widest: widest.unwrap_or_else(|| profile.clone()),
        profile,
        thread_end,
        off_centre,
    })
}

/// A centre hole at the free end of `space`: a 60° cone from its mouth down to the pilot, and the pilot below.
pub(crate) fn centre(
    mouth: Length,
    pilot: Length,
    pilot_length: Length,
    space: (Length, Length),
) -> Profile {
    let end = BoreEnd::FreeEnd;
    centre_from(Side { space, end }, mouth, pilot, pilot_length)
}

fn centre_from(side: Side, mouth: Length, pilot: Length, pilot_length: Length) -> Profile {
    let cone = cone_height((mouth - pilot) / 2.0, CENTRE_HALF_ANGLE);
    let (mouth, pilot) = (mouth / 2.0, pilot / 2.0);
    let mut pieces = [
        ((Length::ZERO, cone), (mouth, pilot)),
        ((cone, cone + pilot_length), (pilot, pilot)),
    ];
    if side.end == BoreEnd::FreeEnd {
        pieces.reverse();
    }
    let mut profile = Profile::default();
    for (depths, radii) in pieces {
        side.push(&mut profile, depths, radii);
    }
    profile.between(side.space.0, side.space.1)
}

/// How high a cone of `half_angle` is over a difference of radius.
pub(crate) fn cone_height(radius_difference: Length, half_angle: Angle) -> Length {
    radius_difference / half_angle.to_radians().tan()
}
