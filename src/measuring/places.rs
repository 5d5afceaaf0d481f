//! Where along the finished shank it is measured.

use crate::job::{Job, WorkPlace};
use crate::plan::Plan;
use crate::quantity::Length;
use crate::tables::MICROMETER_FACE;

/// The straight part of the finished shank, between fillet and chamfer, from the shoulder; `None` while there is no plan
/// of it, or nothing of it is straight.
pub fn straight_part(plan: &Plan) -> Option<[Length; 2]> {
    let shank = plan.shape.shank.as_ref()?;
    let cut = plan.cut_off.as_ref().map(|cut| cut.shank_finished.value);
    let end = cut.unwrap_or(shank.length).min(shank.length);
    let part = [shank.fillet, end - shank.chamfer];
    let [from, to] = part;
    (from < to).then_some(part)
}

/// How far from the shoulder a place lies: the middle of a micrometer's faces as near to fillet or end chamfer as they
/// bear on the full diameter; `None` where that is beside the straight part of the shank.
///
/// # Source
/// Measuring faces of 6.5 mm, from memory; on a shank that is shorter than the faces all places are its middle.
/// # Example
/// ```
/// use skimwright::{job::{Job, WorkPlace}, measuring::place_along, plan::plan};
/// let job = Job::default();
/// let plan = plan(&job);
/// // A fillet of 0.8 mm and half a face of 6.5 mm.
/// let near = place_along(&job, &plan, &WorkPlace::NearShoulder).unwrap();
/// assert!((near.to_mm() - 4.05).abs() < 1e-9);
/// ```
pub fn place_along(job: &Job, plan: &Plan, place: &WorkPlace) -> Option<Length> {
    let _ = job;
    let [from, to] = straight_part(plan)?;
    let middle = (from + to) / 2.0;
    let clear = MICROMETER_FACE / 2.0;
    match place {
        WorkPlace::NearShoulder => Some((from + clear).min(middle)),
        WorkPlace::Middle => Some(middle),
        WorkPlace::FreeEnd => Some((to - clear).max(middle)),
        WorkPlace::At(entered) => {
            let at = entered.value();
            (from <= at && at <= to).then_some(at)
        }
    }
}
