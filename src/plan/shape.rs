//! What is wrong with the shape of the part as entered: sections that do not join, features and holes that miss it.

use super::finding::{Code, Finding};
use crate::job::{BoreEnd, BoreField, Cut, Datum, FeatureField, Field, Hole, Job, SectionField};
use crate::part::{BoreShape, CutShape, FeatureShape, HAIR, Received, SAME, SectionShape};
use crate::quantity::Length;

/// Every fault of the shape; each names what to change, and to what.
pub(super) fn findings(job: &Job, received: &Received) -> Vec<Finding> {
    let mut findings = section_findings(job, received);
    findings.extend(feature_findings(job, received));
    findings.extend(bore_findings(job, received));
    findings
}

/// Sections must follow one another without a gap, from the shoulder to the free end.
fn section_findings(job: &Job, received: &Received) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut end = Length::ZERO;
    let (recesses, chain): (Vec<&SectionShape>, Vec<&SectionShape>) =
        received.sections.iter().partition(|section| section.cut_in);
    for section in chain {
        let by = section.from - end;
        if by.abs().to_mm() > SAME {
            let (field, mend) = mend(job, received, section, end);
            let code = if by > Length::ZERO {
                Code::GapBefore { by, mend }
            } else {
                Code::SectionsOverlap { by: -by, mend }
            };
            findings.push(Finding::at(field, code));
        }
        end = end.max(section.to);
    }
    let left = received.shank_length - end;
    // Without a length over all there is nothing to disagree with.
    if left.abs().to_mm() > SAME && job.entry(Field::ShankLength).is_some() {
        let code = Code::LengthsDisagree {
            whole: received.shank_length,
            sum: end,
        };
        findings.push(Finding::at(Field::ShankLength, code));
    }
    findings.extend(
        recesses
            .into_iter()
            .filter_map(|it| recess_finding(received, it)),
    );
    findings
}

/// A groove that is cut in must lie on the shank and be thinner than it.
fn recess_finding(received: &Received, recess: &SectionShape) -> Option<Finding> {
    let at = |field, code| Some(Finding::at(Field::Section(recess.index, field), code));
    let longest = received.shank_length;
    if recess.from < Length::ZERO || recess.to.to_mm() > longest.to_mm() + SAME {
        return at(SectionField::Start, Code::FeatureOffShank { longest });
    }
    let beside = [recess.from - HAIR, recess.to + HAIR].map(|z| received.outer.radius_at(z));
    let deep = beside
        .into_iter()
        .any(|radius| radius.to_mm() > recess.from_diameter.to_mm() / 2.0 + SAME);
    if deep {
        return None;
    }
    at(SectionField::Diameter, Code::FeatureCutsNothing)
}

/// The field to change so that a section begins where the one before ends, and the value for it; a section without
/// a place of its own follows by itself once the others are right.
fn mend(job: &Job, received: &Received, section: &SectionShape, end: Length) -> (Field, Length) {
    let listed = job.part.sections.get(usize::from(section.index));
    let Some(place) = listed.and_then(|listed| listed.place.as_ref()) else {
        let field = Field::Section(section.index, SectionField::Length);
        return (field, (section.to - end).max(Length::ZERO));
    };
    let start = match place.from {
        Datum::Shoulder => end,
        Datum::FreeEnd => received.shank_length - end - (section.to - section.from),
    };
    let field = Field::Section(section.index, SectionField::Start);
    (field, start.max(Length::ZERO))
}

/// A feature must lie on the shank, cut into it, and leave metal on the axis.
fn feature_findings(job: &Job, received: &Received) -> Vec<Finding> {
    let judge = |(index, feature): (u8, &crate::job::Feature)| {
        let field = |name| Field::Feature(index, name);
        let numbers_are_sound = feature
            .cut
            .numbers()
            .into_iter()
            .chain([FeatureField::Start])
            .map(field)
            .all(|field| {
                let entry = job.entry(field);
                entry.is_none_or(|entry| super::is_in_bounds(field, entry))
            });
        let found = received.features.iter().find(|shape| shape.index == index);
        let Some(shape) = found else {
            let longest = received.shank_length;
            return numbers_are_sound.then(|| {
                Finding::at(
                    field(place_field(&feature.cut)),
                    Code::FeatureOffShank { longest },
                )
            });
        };
        let clear = shape.clear_radius()?;
        let depth = field(depth_field(&feature.cut));
        if clear.to_mm() <= SAME {
            return Some(Finding::at(depth, Code::FeatureTooDeep));
        }
        (clear.to_mm() >= shape.outside.to_mm() - SAME)
            .then(|| Finding::at(depth, Code::FeatureCutsNothing))
    };
    (0..=u8::MAX)
        .zip(job.part.features.iter().take(Job::MOST_FEATURES))
        .filter_map(judge)
        .collect()
}

const fn place_field(cut: &Cut) -> FeatureField {
    match cut {
        Cut::Tang { .. } => FeatureField::Length,
        _ => FeatureField::Start,
    }
}

const fn depth_field(cut: &Cut) -> FeatureField {
    match cut {
        Cut::Flat { .. } => FeatureField::Over,
        Cut::Keyway { .. } | Cut::WoodruffKeyway { .. } => FeatureField::Depth,
        Cut::CrossHole { .. } => FeatureField::Diameter,
        Cut::Tang { .. } => FeatureField::Thickness,
    }
}

/// A hole must be narrower than the part, and holes from both ends should not meet by mistake.
fn bore_findings(job: &Job, received: &Received) -> Vec<Finding> {
    let outer = received.whole_outer();
    let too_wide = |bore: &BoreShape| {
        let beyond = bore.widest.beyond(&outer).into_iter();
        let narrow = beyond.filter_map(|(from, to)| outer.smallest(from, to));
        let least = narrow.min_by(|a, b| a.radius.to_mm().total_cmp(&b.radius.to_mm()))?;
        let hole = &job.part.bores.get(usize::from(bore.index))?.hole;
        let at = Field::Bore(bore.index, size_field(hole));
        let code = Code::BoreTooWide {
            at: least.z,
            outside: least.radius * 2.0,
        };
        Some(Finding::at(at, code))
    };
    let wide = received.bores.iter().filter_map(too_wide);
    wide.chain(meeting(job, received)).collect()
}

/// The first pair of holes from both ends that meet, but for a through hole.
fn meeting(job: &Job, received: &Received) -> Option<Finding> {
    let from = |end: BoreEnd| {
        received.bores.iter().filter(move |bore| {
            let hole = job.part.bores.get(usize::from(bore.index));
            bore.end == end && hole.is_some_and(|bore| !matches!(bore.hole, Hole::Through { .. }))
        })
    };
    let free = from(BoreEnd::FreeEnd).min_by(|a, b| {
        a.profile
            .start()
            .to_mm()
            .total_cmp(&b.profile.start().to_mm())
    })?;
    let head = from(BoreEnd::HeadEnd)
        .max_by(|a, b| a.profile.end().to_mm().total_cmp(&b.profile.end().to_mm()))?;
    let by = head.profile.end() - free.profile.start();
    if by.to_mm() <= SAME {
        return None;
    }
    let hole = &job.part.bores.get(usize::from(head.index))?.hole;
    let at = Field::Bore(head.index, depth_of(hole));
    let at = if job.entry(at).is_some() {
        at
    } else {
        Field::Bore(head.index, BoreField::Kind)
    };
    Some(Finding::at(at, Code::HolesMeet { by }))
}

const fn size_field(hole: &Hole) -> BoreField {
    match hole {
        Hole::Drilled { .. } | Hole::Reamed { .. } | Hole::Through { .. } => BoreField::Diameter,
        Hole::Stepped { .. } => BoreField::StepDiameter,
        Hole::Tapped { .. } => BoreField::Thread,
        Hole::CentreHole { .. } => BoreField::CentreDrill,
    }
}

const fn depth_of(hole: &Hole) -> BoreField {
    match hole {
        Hole::Drilled { .. } | Hole::Stepped { .. } => BoreField::Depth,
        Hole::Tapped { .. } | Hole::Reamed { .. } => BoreField::DrillDepth,
        Hole::Through { .. } => BoreField::Diameter,
        Hole::CentreHole { .. } => BoreField::CentreDrill,
    }
}

/// Where a feature that goes through the axis stays in a finished shank of this length and diameter.
pub(super) fn through_findings(
    features: &[FeatureShape],
    finished: Length,
    diameter: Length,
) -> Vec<Finding> {
    let stays = |feature: &FeatureShape| {
        let (from, to) = feature.through()?;
        let at = Field::Feature(feature.index, FeatureField::Kind);
        // As wide as the shank, it cuts it in two.
        if let CutShape::CrossHole { diameter: hole } = feature.cut
            && from < finished
            && hole >= diameter
        {
            let at = Field::Feature(feature.index, FeatureField::Diameter);
            return Some(Finding::at(at, Code::FeatureTooDeep));
        }
        (from.to_mm() < finished.to_mm() - SAME).then(|| {
            Finding::at(
                at,
                Code::CrossHoleStays {
                    at: (from + to) / 2.0,
                    longest: from.max(Length::ZERO),
                },
            )
        })
    };
    features.iter().filter_map(stays).collect()
}
