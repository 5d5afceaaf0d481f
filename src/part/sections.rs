//! The outer sections of the shank, put in their places.

use super::profile::{Profile, SAME};
use super::taper::TaperEnds;
use super::thread::root_diameter;
use crate::job::{Datum, Field, Job, Place, Section, SectionField, Turned, TurnedKind};
use crate::order;
use crate::plan::Checked;
use crate::quantity::Length;

/// One outer section with everything resolved.
#[derive(Clone, Copy, Debug, PartialEq, serde::Serialize)]
pub struct SectionShape {
    /// Its place in the job's list.
    pub index: u8,
    /// What it is.
    pub kind: TurnedKind,
    /// Whether it is cut into the sections that are there, and takes no length of its own.
    pub cut_in: bool,
    /// From the shoulder to its beginning.
    pub from: Length,
    /// From the shoulder to its end.
    pub to: Length,
    /// Diameter at its beginning; the major diameter of a thread.
    pub from_diameter: Length,
    /// Diameter at its end.
    pub to_diameter: Length,
    /// Diameter at the bottom of an outside thread.
    pub root_diameter: Option<Length>,
}

impl SectionShape {
    /// Its diameter at a place inside it.
    pub fn diameter_at(&self, z: Length) -> Length {
        let share = ((z - self.from) / (self.to - self.from)).clamp(0.0, 1.0);
        self.from_diameter + (self.to_diameter - self.from_diameter) * share
    }
}

/// The sections in order from the shoulder, and the shank's length; `None` while a number is missing or out of
/// bounds, or there is no section.
pub(super) fn sections(job: &Job, checked: &Checked) -> Option<(Vec<SectionShape>, Length)> {
    let listed: Vec<(u8, &Section)> = (0..=u8::MAX)
        .zip(job.part.sections.iter().take(Job::MOST_SECTIONS))
        .collect();
    let mut measures = Vec::with_capacity(listed.len());
    for (index, section) in &listed {
        measures.push(measure(*index, section, checked)?);
    }
    // A groove or relief with a place of its own is cut into what is there; all else follows one another.
    let chain = |section: &Section| !(section.place.is_some() && is_recess(section.turned.kind()));
    let follows = listed
        .iter()
        .zip(&measures)
        .filter(|((_, section), _)| chain(section));
    let sum: Length = follows.map(|(_, measure)| measure.length).sum();
    let whole = checked.or_usual(Field::ShankLength, sum)?;
    let mut end = Length::ZERO;
    let mut shapes = Vec::with_capacity(listed.len());
    for ((index, section), measure) in listed.into_iter().zip(measures) {
        let cut_in = !chain(section);
        let from = start(
            index,
            section.place.as_ref(),
            measure.length,
            end,
            whole,
            checked,
        )?;
        let to = from + measure.length;
        if !cut_in {
            end = to;
        }
        shapes.push(SectionShape {
            index,
            kind: section.turned.kind(),
            cut_in,
            from,
            to,
            from_diameter: measure.from_diameter,
            to_diameter: measure.to_diameter,
            root_diameter: measure.root_diameter,
        });
    }
    order::by_number(&mut shapes, |shape| shape.from.to_mm());
    (whole > Length::ZERO && !shapes.is_empty()).then_some((shapes, whole))
}

/// Where a section begins: as it is placed, or behind the one before.
fn start(
    index: u8,
    place: Option<&Place>,
    length: Length,
    before: Length,
    whole: Length,
    checked: &Checked,
) -> Option<Length> {
    let Some(place) = place else {
        return Some(before);
    };
    let start = checked.length(Field::Section(index, SectionField::Start))?;
    Some(match place.from {
        Datum::Shoulder => start,
        Datum::FreeEnd => whole - start - length,
    })
}

struct SectionMeasure {
    from_diameter: Length,
    to_diameter: Length,
    length: Length,
    root_diameter: Option<Length>,
}

/// The diameters and the length of a section, wherever it is.
fn measure(index: u8, section: &Section, checked: &Checked) -> Option<SectionMeasure> {
    let number = |field| checked.length(Field::Section(index, field));
    let mut root = None;
    let (from_diameter, to_diameter, length) = match &section.turned {
        Turned::Cylinder { .. } | Turned::Groove { .. } | Turned::Relief { .. } => {
            let diameter = number(SectionField::Diameter)?;
            (diameter, diameter, number(SectionField::Length)?)
        }
        Turned::Taper { .. }
        | Turned::StandardTaper { .. }
        | Turned::RatioTaper { .. }
        | Turned::AngleTaper { .. } => {
            let ends = TaperEnds::of_section(index, &section.turned, checked)?;
            (ends.from_diameter, ends.to_diameter, ends.length)
        }
        Turned::Thread { thread, .. } => {
            let thread = thread.get()?;
            root = Some(root_diameter(thread));
            (thread.major, thread.major, number(SectionField::Length)?)
        }
    };
    // A standard taper that begins beyond its small end has no length; its finding says so.
    if length.to_mm() <= SAME {
        return None;
    }
    Some(SectionMeasure {
        // A taper that is told to be too long comes to a point, and has a finding.
        from_diameter: from_diameter.max(Length::ZERO),
        to_diameter: to_diameter.max(Length::ZERO),
        length,
        root_diameter: root,
    })
}

/// The outline of the sections over the whole shank.
///
/// Where they leave a gap the thinner neighbour goes on, and where they overlap the one nearer to the shoulder
/// counts: there is always an outline, and findings say what is wrong. `root`: with threads at their bottom.
pub(super) fn outline(sections: &[SectionShape], whole: Length, root: bool) -> Profile {
    let mut outline = Profile::default();
    let mut end = Length::ZERO;
    let mut last: Option<Length> = None;
    for section in sections.iter().filter(|section| !section.cut_in) {
        let radius = |z: Length| {
            let diameter = match section.root_diameter.filter(|_| root) {
                Some(root) => root,
                None => section.diameter_at(z),
            };
            diameter / 2.0
        };
        let from = section.from.min(whole).max(end);
        let to = section.to.min(whole);
        let first = radius(from);
        let gap = last.map_or(first, |last| last.min(first));
        outline.push_line(end, from, gap, gap);
        end = from;
        if (to - from).to_mm() > SAME {
            outline.push_line(from, to, first, radius(to));
            last = Some(radius(to));
            end = to;
        }
    }
    let rest = last.unwrap_or_default();
    outline.push_line(end, whole, rest, rest);
    let recesses = sections.iter().filter(|section| section.cut_in);
    recesses.fold(outline, |outline, recess| {
        outline.capped(recess.from, recess.to, recess.from_diameter / 2.0)
    })
}

/// Whether a section of this kind is a recess in another.
pub(crate) const fn is_recess(kind: TurnedKind) -> bool {
    matches!(kind, TurnedKind::Groove | TurnedKind::Relief)
}
