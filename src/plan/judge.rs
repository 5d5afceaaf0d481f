//! What the plan says of a job beyond single numbers: its form, its lengths, its threads, its shoulder, its end.

use super::Checked;
use super::finding::{Code, Finding};
use crate::cutting::is_hard;
use crate::job::{
    Bore, BoreEnd, BoreField, CentreOrder, CutOffMethod, EdgeField, Field, Hole, Job, MachineField,
    RateField, Section, SectionField, Turned,
};
use crate::part::{BoreShape, Received, SAME, STEEPEST, TaperEnds};
use crate::quantity::{Angle, Length, TaperRatio};
use crate::rework::{CutKind, CutOff, WantedShank};
use crate::tables::WorkMaterial;

/// What is wrong with the form of a job, beyond single numbers.
pub(super) fn form_findings(job: &Job) -> Vec<Finding> {
    let mut findings = Vec::new();
    if job.title.chars().count() > Job::MOST_TITLE_CHARACTERS {
        findings.push(Finding::at(Field::Title, Code::TitleTooLong));
    }
    if job.part.sections.is_empty() {
        findings.push(Finding::at(Field::Sections, Code::NoSection));
    }
    let part = &job.part;
    let names = [
        (
            &job.shop.machine.name,
            Job::MOST_NAME_CHARACTERS,
            Field::Machine(MachineField::Name),
        ),
        (
            &job.shop.edge.name,
            Job::MOST_NAME_CHARACTERS,
            Field::Edge(EdgeField::Name),
        ),
        (
            &job.shop.rates.currency,
            Job::MOST_CURRENCY_CHARACTERS,
            Field::Rate(RateField::Currency),
        ),
    ];
    let long = names
        .into_iter()
        .filter(|(name, most, _)| name.chars().count() > *most);
    findings.extend(long.map(|(_, _, field)| Finding::at(field, Code::NameTooLong)));
    let lists = [
        (
            Field::HeadBeyond,
            part.head_beyond.len(),
            Job::MOST_HEAD_BEYOND,
        ),
        (Field::Sections, part.sections.len(), Job::MOST_SECTIONS),
        (Field::Features, part.features.len(), Job::MOST_FEATURES),
        (Field::Bores, part.bores.len(), Job::MOST_BORES),
        (
            Field::Machine(MachineField::Speeds),
            job.shop.machine.speeds.count(),
            Job::MOST_GEARS,
        ),
        (
            Field::Machine(MachineField::Feeds),
            job.shop.machine.feeds.count(),
            Job::MOST_GEARS,
        ),
        (Field::Pins, job.setup.pins.len(), Job::MOST_PINS),
        (
            Field::Instruments,
            job.shop.instruments.len(),
            Job::MOST_INSTRUMENTS,
        ),
    ];
    let long = lists.into_iter().filter(|(_, count, most)| count > most);
    findings.extend(long.map(|(field, ..)| Finding::at(field, Code::TooMany)));
    findings
}

/// A thread or a reamed part cannot be deeper than the hole that it is cut in, nor a step narrower than the hole.
pub(super) fn hole_findings(job: &Job, checked: &Checked) -> Vec<Finding> {
    let wrong = |(index, bore): (u8, &Bore)| {
        let length = |name| checked.length(Field::Bore(index, name));
        let at = |name, code| Some(Finding::at(Field::Bore(index, name), code));
        let deeper = |upper| {
            let by = length(upper)? - length(BoreField::DrillDepth)?;
            (by.to_mm() > SAME).then_some(by)
        };
        match bore.hole {
            Hole::Tapped { .. } => {
                let by = deeper(BoreField::ThreadDepth)?;
                at(BoreField::DrillDepth, Code::ThreadBelowHole { by })
            }
            Hole::Reamed { .. } => {
                let by = deeper(BoreField::ReamDepth)?;
                at(BoreField::DrillDepth, Code::ReamBelowHole { by })
            }
            Hole::Stepped { .. } => {
                let wider = length(BoreField::StepDiameter)? - length(BoreField::Diameter)?;
                if wider.to_mm() > SAME {
                    return None;
                }
                at(BoreField::StepDiameter, Code::StepNotWider)
            }
            Hole::Drilled { .. } | Hole::Through { .. } | Hole::CentreHole { .. } => None,
        }
    };
    (0..=u8::MAX)
        .zip(&job.part.bores)
        .filter_map(wrong)
        .collect()
}

/// A taper told to be longer than its cone has no end, and one steeper than 90° is no shank.
pub(super) fn taper_findings(job: &Job, checked: &Checked) -> Vec<Finding> {
    let wrong = |(index, section): (u8, &Section)| {
        let field = |name| Field::Section(index, name);
        let at = |name, code| Some(Finding::at(field(name), code));
        match &section.turned {
            Turned::RatioTaper { .. } => {
                let ratio: TaperRatio = checked.value(field(SectionField::Ratio))?;
                if ratio.to_one_in().abs() < STEEPEST {
                    return at(SectionField::Ratio, Code::TaperTooSteep);
                }
            }
            Turned::AngleTaper { .. } => {
                let angle: Angle = checked.value(field(SectionField::Angle))?;
                if angle.to_degrees().abs() > 90.0 {
                    return at(SectionField::Angle, Code::TaperTooSteep);
                }
            }
            _ => {}
        }
        let ends = TaperEnds::of_section(index, &section.turned, checked)?;
        // Only a standard taper that begins beyond its small end; other lengths have bounds of their own.
        if ends.length <= Length::ZERO {
            return at(SectionField::PastGauge, Code::OutOfBounds);
        }
        if ends.to_diameter <= Length::ZERO {
            return at(SectionField::Length, Code::TaperComesToAPoint);
        }
        // Half the included angle is 45° where the radius changes as much as the length.
        let steep = (ends.from_diameter - ends.to_diameter).abs() / 2.0;
        let too_steep = steep.to_mm() > ends.length.to_mm() + SAME;
        too_steep.then(|| Finding::at(field(SectionField::Length), Code::TaperTooSteep))
    };
    (0..=u8::MAX)
        .zip(&job.part.sections)
        .filter_map(wrong)
        .collect()
}

/// Whether the part swings over the cross-slide.
pub(super) fn swing_finding(checked: &Checked, received: &Received) -> Option<Finding> {
    let field = Field::Machine(MachineField::Swing);
    let swing = checked.length(field)?;
    let all = received.whole_outer();
    let largest = all.largest(all.start(), all.end())?.radius * 2.0;
    let stop = Code::TooLargeToSwing { largest };
    (swing < largest).then(|| Finding::at(field, stop))
}

/// What happens to a shank that is too short for a cut, or has its length already.
pub(super) fn length_findings(
    cut: &CutOff,
    checked: &Checked,
    received: &Received,
) -> Vec<Finding> {
    let Some(wanted) = checked.length(Field::WantedLength) else {
        return Vec::new();
    };
    let at = |code| Finding::at(Field::WantedLength, code);
    let short_by = wanted - received.shank_length;
    let finding = match cut.kind {
        CutKind::AsItIs if short_by.to_mm() > SAME => Some(at(Code::ShankTooShort {
            short_by,
            longest: received.shank_length,
        })),
        CutKind::AsItIs => Some(at(Code::LengthAlready)),
        CutKind::FaceOnly => Some(at(Code::FacedBack { by: cut.facing })),
        CutKind::CutAndFace => None,
    };
    finding.into_iter().collect()
}

/// Steel harder than the saw only spoils it.
pub(super) fn saw_finding(job: &Job, cut: &CutOff) -> Option<Finding> {
    let sawn = cut.kind == CutKind::CutAndFace && job.shop.cut_off_method == CutOffMethod::Saw;
    // Quenched and tempered alloy steel just below 45 HRC is slow, but it can be sawn.
    let hard = is_hard(job.part.material) && job.part.material != WorkMaterial::AlloySteelHard;
    (sawn && hard).then(|| Finding::at(Field::CutOffMethod, Code::SawCannotCut))
}

/// What the cut does to threads in the end.
pub(super) fn thread_findings(received: &Received, cut: &CutOff) -> Vec<Finding> {
    if cut.kind == CutKind::AsItIs {
        return Vec::new();
    }
    let cut_thread = |bore: &BoreShape| {
        if bore.end == BoreEnd::HeadEnd {
            return None;
        }
        let length = cut.shank_finished.value - bore.thread_end?;
        let code = if length.to_mm() <= SAME {
            Code::ThreadCutAway
        } else {
            Code::ThreadLeft { length }
        };
        let field = Field::Bore(bore.index, BoreField::Thread);
        Some(Finding::at(field, code))
    };
    received.bores.iter().filter_map(cut_thread).collect()
}

/// What is wrong with the fillet at the shoulder and the chamfer at the end.
pub(crate) fn shoulder_findings(
    checked: &Checked,
    received: &Received,
    shank: &WantedShank,
) -> Vec<Finding> {
    let (Some(fillet), Some(chamfer)) = (
        checked.length(Field::ShoulderRadius),
        checked.length(Field::EndChamfer),
    ) else {
        return Vec::new();
    };
    let too_long = (fillet + chamfer).to_mm() >= shank.length.to_mm() - SAME;
    let end = |code| Some(Finding::at(Field::EndChamfer, code));
    let end = if too_long || chamfer * 2.0 >= shank.diameter {
        end(Code::NoStraightShank)
    } else if chamfer.to_mm() <= SAME {
        end(Code::SharpEnd)
    } else {
        None
    };
    let shoulder = fillet_finding(received, shank, fillet);
    shoulder.into_iter().chain(end).collect()
}

/// How high the shoulder stands above the finished shank; `None` where it is none.
pub(super) fn shoulder_height(received: &Received, shank: &WantedShank) -> Option<Length> {
    /// A step no higher than a broken edge holds nothing: common practice, no source.
    const NO_STEP: Length = Length::mm(0.05);
    let height = received.head.radius_at(Length::ZERO) - shank.diameter / 2.0;
    (NO_STEP <= height).then_some(height)
}

fn fillet_finding(received: &Received, shank: &WantedShank, fillet: Length) -> Option<Finding> {
    let at = |code| Some(Finding::at(Field::ShoulderRadius, code));
    let Some(shoulder) = shoulder_height(received, shank) else {
        return Some(Finding::at(Field::HeadDiameter, Code::NoShoulder));
    };
    // The fillet is cut from the shank as received: it cannot be higher than the metal there.
    let metal = received.solid.radius_at(Length::ZERO) - shank.diameter / 2.0;
    if fillet.to_mm() > shoulder.to_mm() + SAME {
        at(Code::FilletTooLarge { largest: shoulder })
    } else if fillet.to_mm() <= SAME {
        at(Code::SharpShoulder)
    } else if metal.to_mm() > SAME && fillet.to_mm() > metal.to_mm() + SAME {
        at(Code::FilletInPart { largest: metal })
    } else {
        None
    }
}

/// Whether the end is too hard to centre with high-speed steel, by nature or from a hot cut.
///
/// # Source
/// Over 45 HRC wants carbide or a ground centre: common practice, no source. A dry abrasive cut hardens steel that
/// can be hardened, some tenths of a millimetre deep: from memory.
pub(crate) fn end_is_hard(job: &Job, cut: &CutOff) -> bool {
    use WorkMaterial as M;
    /// Facing stock that takes off what a hot cut hardens.
    const FACED_CLEAN: Length = Length::mm(0.5);
    let hot = matches!(
        job.shop.cut_off_method,
        CutOffMethod::HandDisc | CutOffMethod::ChopWheel
    );
    let skin_stays = job.shop.centre_order == CentreOrder::BeforeFacing || cut.facing < FACED_CLEAN;
    match job.part.material {
        M::HardenedSteel | M::HighSpeedSteelHard => true,
        // A cut lays the soft core open; the end as received has its case.
        M::CaseHardenedSteel => cut.kind != CutKind::CutAndFace,
        M::MediumCarbonSteel
        | M::AlloySteelTempered
        | M::AlloySteelHard
        | M::ToolSteelAnnealed
        | M::StainlessMartensitic => hot && skin_stays && cut.kind == CutKind::CutAndFace,
        M::LowCarbonSteel
        | M::StainlessAustenitic
        | M::GreyIron
        | M::DuctileIron
        | M::AluminiumAlloy
        | M::Brass
        | M::Bronze
        | M::TitaniumAlloy => false,
    }
}
