//! What the indicator's readings of a job say: how far the part is off where, and how to bring it to run true.

use serde::Serialize;

use super::dialling::{DialIn, DialledAxis, DialledPlane};
use super::hold::Hold;
use super::offset::{Jaws, Offset};
use super::packing::{JawContact, Packing, packing};
use super::readings::{Dialled, DiallingError};
use crate::job::{DialPlane, Field, HoldingField, Job, Plane};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::Length;

/// What the readings say. Directions are from jaw 1, the way in which the quarters were read; places from the shoulder.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DialPlan {
    /// Near the chuck.
    pub near: Dialled,
    /// Further out; `None` without enough readings there.
    pub far: Option<Dialled>,
    /// First move the chuck end, then tap the free end; `None` without both planes and their places.
    pub dial_in: Option<DialIn>,
    /// Packing under three jaws for the move at the chuck.
    pub packing: Option<JawPacking>,
}

/// Packing for both ways in which jaws touch.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct JawPacking {
    /// Where jaws are narrow or hollow: they touch along a line.
    pub line: Packing,
    /// Where jaws are flat and wide.
    pub flat: Packing,
}

impl JawPacking {
    /// Whether the kind of jaw matters: by more than a micrometre under any of them.
    pub fn differ(&self) -> bool {
        let pairs = self.line.thickness.into_iter().zip(self.flat.thickness);
        pairs
            .map(|(line, flat)| (line - flat).abs())
            .any(|by| Length::um(1.0) < by)
    }
}

/// One standard uncertainty of a reading.
///
/// # Source
/// Two micrometres, for an indicator of 0.01 mm read to a fifth of a division: common practice, no source.
const READING_ERROR: Length = Length::mm(0.002);

impl DialPlan {
    /// What the readings of a job say; `None` where none were entered, or too few.
    pub(crate) fn read(
        job: &Job,
        checked: &Checked,
        hold: Option<&Hold>,
    ) -> (Option<Self>, Vec<Finding>) {
        let mut findings = Vec::new();
        let near = plane(&job.setup.near, DialPlane::Near, checked, &mut findings);
        let far = plane(&job.setup.far, DialPlane::Far, checked, &mut findings);
        let place = |field| checked.length(Field::Holding(field));
        let places = (
            place(HoldingField::NearPlace),
            place(HoldingField::FarPlace),
        );
        let Some(near) = near else {
            return (None, findings);
        };
        let mut dial_in = None;
        if let (Some(far), Some(hold)) = (far, hold) {
            if let Some(Ok(axis)) = axis(near, far, places) {
                let jaws = Jaws::Three;
                let found = axis.dial_in(hold.chuck_face, hold.end, jaws, READING_ERROR);
                dial_in = found.ok();
            } else {
                let field = Field::Holding(HoldingField::FarPlace);
                findings.push(Finding::at(field, Code::DialIncomplete));
            }
        }
        let wanted = dial_in.map_or(-near.offset, |it| it.at_chuck.shift);
        let packing = hold.map(|hold| jaw_packing(wanted, hold.gripped_diameter / 2.0));
        if packing == Some(None) {
            let field = Field::Dial(DialPlane::Near, 0);
            findings.push(Finding::at(field, Code::DialNotPossible));
        }
        let found = Self {
            near,
            far,
            dial_in,
            packing: packing.flatten(),
        };
        (Some(found), findings)
    }
}

fn axis(
    near: Dialled,
    far: Dialled,
    places: (Option<Length>, Option<Length>),
) -> Option<Result<DialledAxis, DiallingError>> {
    let plane = |z, dialled| DialledPlane { z, dialled };
    Some(DialledAxis::new(
        plane(places.0?, near),
        plane(places.1?, far),
    ))
}

fn jaw_packing(wanted: Offset, radius: Length) -> Option<JawPacking> {
    Some(JawPacking {
        line: packing(wanted, radius, JawContact::Line).ok()?,
        flat: packing(wanted, radius, JawContact::Flat).ok()?,
    })
}

/// The readings of a plane; a finding where there are some, but too few.
fn plane(
    entered: &Plane,
    which: DialPlane,
    checked: &Checked,
    findings: &mut Vec<Finding>,
) -> Option<Dialled> {
    if entered.readings.iter().all(Option::is_none) {
        return None;
    }
    let quarters = [0, 1, 2, 3].map(|quarter| checked.length(Field::Dial(which, quarter)));
    let found = Dialled::from_readings(&quarters);
    if found.is_err() {
        let missing = (0_u8..)
            .zip(&quarters)
            .find(|(_, reading)| reading.is_none());
        let quarter = missing.map_or(0, |(quarter, _)| quarter);
        findings.push(Finding::at(
            Field::Dial(which, quarter),
            Code::DialIncomplete,
        ));
    }
    found.ok()
}
