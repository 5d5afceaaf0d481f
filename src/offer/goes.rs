//! What of a part is gone for good after the work.

use crate::job::{BoreEnd, CutKind as Feature, HoleKind, Job, TurnedKind};
use crate::part::{FeatureShape, Profile, Received, SAME, SectionShape};
use crate::plan::Plan;
use crate::quantity::{Length, Mass};
use crate::rework::CutKind;

/// Less than this, in grams, is shown as nothing: half of the last place of a mass in pounds. Own choice.
const LEAST_CHIPS: f64 = 0.227;

/// Something that goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Goes {
    /// The end of the shank, in one piece.
    CutOff {
        /// Its length.
        length: Length,
        /// Its mass.
        mass: Mass,
    },
    /// So much of the end, faced off.
    FacedOff(Length),
    /// What is turned, faced, sawn and drilled to chips.
    Chips {
        /// Its mass.
        mass: Mass,
        /// Whether that is beside the mass of an end that is cut off.
        more: bool,
    },
    /// A thread, a taper or a groove of the shank.
    Turned(TurnedKind, HowMuch),
    /// A keyway, a flat or a tang.
    Cut(Feature, HowMuch),
    /// A hole in the free end.
    Hole(HoleKind, HowMuch),
}

/// How much of it goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HowMuch {
    /// All of it.
    All,
    /// Some of it: what is left is shorter or shallower.
    Some,
}

/// What of a part is gone for good after the work, the most first. Pure and total: empty where nothing is planned.
///
/// # Example
/// ```
/// use skimwright::{job::Job, offer::{Goes, goes}, plan::plan};
/// let job = Job::default();
/// assert!(matches!(goes(&job, &plan(&job))[0], Goes::CutOff { .. }));
/// ```
pub fn goes(job: &Job, plan: &Plan) -> Vec<Goes> {
    let mut list = Vec::new();
    if let Some(cut) = &plan.cut_off {
        match cut.kind {
            CutKind::CutAndFace => list.push(Goes::CutOff {
                length: cut.offcut_length.value,
                mass: cut.offcut_mass.value,
            }),
            CutKind::FaceOnly => list.push(Goes::FacedOff(cut.facing)),
            CutKind::AsItIs => {}
        }
    }
    let more = matches!(list.first(), Some(Goes::CutOff { .. }));
    let chips = plan.masses.as_ref().map(|it| it.chips.value);
    let chips = chips.filter(|mass| LEAST_CHIPS < mass.to_grams());
    list.extend(chips.map(|mass| Goes::Chips { mass, more }));
    if let (Some(received), Some(finished)) = (&plan.shape.received, &plan.shape.finished) {
        list.extend(received.sections.iter().filter_map(|it| {
            let much = of_section(it, finished)?;
            Some(Goes::Turned(it.kind, much))
        }));
        list.extend(received.features.iter().filter_map(|it| {
            let kind = job.part.features.get(usize::from(it.index))?.cut.kind();
            Some(Goes::Cut(kind, of_feature(it, finished)?))
        }));
        list.extend(holes(job, received, finished));
    }
    list
}

/// A plain cylinder that becomes thinner is no loss of its own.
fn of_section(section: &SectionShape, finished: &Profile) -> Option<HowMuch> {
    if section.kind == TurnedKind::Cylinder {
        return None;
    }
    let end = finished.end();
    if end.to_mm() - SAME <= section.from.to_mm() {
        return Some(HowMuch::All);
    }
    let upto = section.to.min(end);
    // Clear of fillet and chamfer.
    let places =
        [0.1, 0.3, 0.5, 0.7, 0.85].map(|share| section.from + (upto - section.from) * share);
    let less = |one: Length, other: Length| one.to_mm() < other.to_mm() - SAME;
    let is_recess = matches!(section.kind, TurnedKind::Groove | TurnedKind::Relief);
    let gone = |z: &&Length| {
        let surface = section.diameter_at(**z) / 2.0;
        match section.root_diameter {
            // Of a thread nothing is left where its bottom is reached.
            Some(root) => !less(root / 2.0, finished.radius_at(**z)),
            // A recess is gone where the finished surface is as low.
            None if is_recess => !less(surface, finished.radius_at(**z)),
            None => less(finished.radius_at(**z), surface),
        }
    };
    let touched = |z: &Length| less(finished.radius_at(*z), section.diameter_at(*z) / 2.0);
    let count = places.iter().filter(gone).count();
    if count == places.len() {
        Some(HowMuch::All)
    } else if 0 < count
        || (!is_recess && places.iter().any(touched))
        || end.to_mm() + SAME < section.to.to_mm()
    {
        Some(HowMuch::Some)
    } else {
        None
    }
}

fn of_feature(feature: &FeatureShape, finished: &Profile) -> Option<HowMuch> {
    let end = finished.end();
    if end.to_mm() - SAME <= feature.from.to_mm() {
        return Some(HowMuch::All);
    }
    let upto = feature.to.min(end);
    let largest = finished.largest(feature.from, upto)?.radius;
    match feature.clear_radius() {
        // Turned below its bottom, nothing of it is left.
        Some(clear) if largest.to_mm() <= clear.to_mm() + SAME => Some(HowMuch::All),
        _ if end.to_mm() + SAME < feature.to.to_mm()
            || largest.to_mm() + SAME < feature.outside.to_mm() =>
        {
            Some(HowMuch::Some)
        }
        _ => None,
    }
}

fn holes<'a>(
    job: &'a Job,
    received: &'a Received,
    finished: &'a Profile,
) -> impl Iterator<Item = Goes> + 'a {
    let end = finished.end();
    let bores = received.bores.iter();
    bores.filter_map(move |bore| {
        let kind = job.part.bores.get(usize::from(bore.index))?.hole.kind();
        let shorter = end.to_mm() + SAME < bore.profile.end().to_mm();
        if bore.end != BoreEnd::FreeEnd || kind == HoleKind::Through || !shorter {
            return None;
        }
        let much = if end.to_mm() - SAME <= bore.profile.start().to_mm() {
            HowMuch::All
        } else {
            HowMuch::Some
        };
        Some(Goes::Hole(kind, much))
    })
}

#[cfg(test)]
#[path = "goes_tests.rs"]
mod tests;
