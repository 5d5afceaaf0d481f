//! What the finished shank bears: stress at the shoulder, hardness left at its surface, safety under its duty.

use serde::Serialize;

use super::finished::WantedShank;
use super::kept::{Weakest, section_of};
use super::safety::{self, UnderDuty};
use crate::job::{Field, Job};
use crate::part::{HAIR, Received, SAME};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::{Hardness, Length, Stress};
use crate::strength::{Load, Notch, Place, SHOULDER_SOURCE, Strength, Surface, shoulder};
use crate::tables::{Mechanical, Spread, WorkMaterial, tensile_strength};
use crate::working::{Figure, Input, Meaning, Value, Working};

/// What the finished shank bears.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bears {
    /// How much the fillet at the shoulder raises the stress; `None` without a step.
    pub shoulder: Option<Shoulder>,
    /// What is left at the surface of a part with a hard case.
    pub surface: SurfaceLeft,
    /// Its strength, where it is a metal of known strength.
    pub ultimate: Spread<Stress>,
    /// What follows from the duty; `None` where none is entered.
    pub duty: Option<UnderDuty>,
}

/// How many times the nominal stress of the shank stands at its shoulder. A corner without a fillet counts with the nose
/// radius of a tool.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Shoulder {
    /// In bending.
    pub bending: Figure<f64>,
    /// In torsion.
    pub torsion: Figure<f64>,
    /// Along the axis.
    pub tension: Figure<f64>,
    /// Whether the shape is within what the formulas were compared with finite elements on; else they are a guide.
    pub checked: bool,
}

/// What is at the surface of the finished shank.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "hardness", rename_all = "kebab-case")]
pub enum SurfaceLeft {
    /// The part is as hard all through, as far as is known.
    Through(Option<Hardness>),
    /// The case everywhere.
    Case(Option<Hardness>),
    /// The core everywhere: the case is turned away.
    Core(Option<Hardness>),
    /// The case in one place, the core in another; the core's hardness.
    Partly(Option<Hardness>),
}

/// A corner without a fillet has at least the nose radius of a tool with a sharp corner: ISO 3286, 0.2 mm.
const SHARP: Length = Length::mm(0.2);

/// Looks at the finished shank's shoulder, surface and duty.
pub(crate) fn bears(
    job: &Job,
    checked: &Checked,
    received: &Received,
    shank: &WantedShank,
    weakest: &Weakest,
) -> Bears {
    let material = job.part.material.mechanical();
    let surface = surface_left(checked, received, shank);
    let strength = strength(job, checked, &material, surface);
    let notch = notch(received, shank);
    Bears {
        shoulder: shoulder_figures(received, shank),
        surface,
        ultimate: strength.ultimate,
        duty: safety::under_duty(
            job,
            checked,
            &strength,
            [
                (
                    shank.fillet,
                    Place {
                        section: section_of(
                            received,
                            shank,
                            (shank.fillet + HAIR).min(shank.length),
                        ),
                        diameter: shank.diameter,
                        notch,
                        surface: Surface::Machined,
                    },
                ),
                (
                    weakest.at,
                    Place {
                        section: section_of(received, shank, weakest.beside),
                        diameter: weakest.diameter,
                        notch: safety::notch_at(received, shank, weakest.beside),
                        surface: Surface::Machined,
                    },
                ),
            ],
        ),
    }
}

/// The strength below the surface: from the hardness measured there, or what is usual of the material.
///
/// Where a hard surface is left, its burns and fine cracks count.
fn strength(job: &Job, checked: &Checked, material: &Mechanical, surface: SurfaceLeft) -> Strength {
    let core: Option<Hardness> = checked.value(Field::CoreHardness);
    let outside: Option<Hardness> = checked.value(Field::SurfaceHardness);
    // Outside is inside only where there is no case.
    let cased = job.part.material == WorkMaterial::CaseHardenedSteel || has_case(checked).is_some();
    let hardness = core.or(outside.filter(|_| !cased));
    // The table holds for steels that harden; the softest that it knows stands for all that is softer.
    let told = hardness
        .filter(|_| hardness_tells(job.part.material))
        .and_then(|hardness| tensile_strength(hardness.max(SOFTEST)));
    let ultimate = told.unwrap_or(material.tensile_strength);
    let shares = ultimate.zip(material.yield_share);
    let usual = || material.usual_hardness.map(|usual| usual.high);
    Strength {
        ultimate,
        yields: shares.map(|(ultimate, share)| ultimate * share),
        hardness: match surface {
            SurfaceLeft::Core(core) => core,
            SurfaceLeft::Through(_) | SurfaceLeft::Case(_) | SurfaceLeft::Partly(_) => {
                outside.or_else(usual)
            }
        },
    }
}

/// The softest steel whose hardness says its strength: where Rockwell C begins.
const SOFTEST: Hardness = Hardness::hrc(20.0);

/// Whether the hardness of a material says its strength: of steels, but for the austenitic.
const fn hardness_tells(material: WorkMaterial) -> bool {
    is_steel(material) && !matches!(material, WorkMaterial::StainlessAustenitic)
}

/// How deep the hard case is; `None` where there is none.
fn has_case(checked: &Checked) -> Option<Length> {
    checked
        .length(Field::CaseDepth)
        .filter(|depth| depth.to_mm() > SAME)
}

/// Whether the case is turned away: it is where as much comes off the radius as it is deep.
fn surface_left(checked: &Checked, received: &Received, shank: &WantedShank) -> SurfaceLeft {
    let outside = checked.value(Field::SurfaceHardness);
    let core = checked.value(Field::CoreHardness);
    let Some(depth) = has_case(checked) else {
        return SurfaceLeft::Through(outside);
    };
    let end = shank.length.min(received.shank_length);
    let radius = shank.diameter / 2.0;
    let off = |point: crate::part::Point| point.radius - radius;
    let least = received.outer.smallest(Length::ZERO, end).map(off);
    // Where the axis is off, one side loses more than the other.
    let most = received.swept.largest(Length::ZERO, end).map(off);
    let least = least.map(|least| least - received.off_axis.most());
    if most.is_none_or(|most| most.to_mm() < depth.to_mm() - SAME) {
        SurfaceLeft::Case(outside)
    } else if least.is_some_and(|least| least >= depth) {
        SurfaceLeft::Core(core)
    } else {
        SurfaceLeft::Partly(core)
    }
}

/// The fillet that can be cut: no higher than the metal there, and no sharper than a tool.
fn fillet(received: &Received, shank: &WantedShank) -> Length {
    let metal = received.solid.radius_at(Length::ZERO) - shank.diameter / 2.0;
    // Where nothing is turned off, the corner is what it was, and what is asked for is all that is known of it.
    let cut = if metal.to_mm() > SAME {
        shank.fillet.min(metal)
    } else {
        shank.fillet
    };
    cut.max(SHARP)
}

fn notch(received: &Received, shank: &WantedShank) -> Notch {
    let large = received.head.radius_at(Length::ZERO) * 2.0;
    let fillet = fillet(received, shank);
    let at = |load| shoulder(load, large, shank.diameter, fillet);
    Notch::new(fillet, at).unwrap_or(Notch::NONE)
}

fn shoulder_figures(received: &Received, shank: &WantedShank) -> Option<Shoulder> {
    let large = received.head.radius_at(Length::ZERO) * 2.0;
    let fillet = fillet(received, shank);
    if (large - shank.diameter).to_mm() <= SAME {
        return None;
    }
    let mut checked = true;
    let mut figure = |load: Load| {
        let found = shoulder(load, large, shank.diameter, fillet)?;
        checked &= found.in_range;
        Some(Figure {
            value: found.factor,
            range: None,
            working: Working {
                symbol: "Kₜ",
                formula: load.formula(),
                parts: &["q = D/d", "k = r/d"],
                inputs: vec![
                    Input::new(
                        "q",
                        Meaning::StepAtShoulder,
                        Value::Ratio(large / shank.diameter),
                    ),
                    Input::new(
                        "k",
                        Meaning::FilletShare,
                        Value::Ratio(fillet / shank.diameter),
                    ),
                    Input::new("D", Meaning::HeadAtShoulder, Value::size(large)),
                    Input::new("d", Meaning::AimedDiameter, Value::size(shank.diameter)),
                    Input::new("r", Meaning::FilletThatCounts, Value::length(fillet)),
                ],
                source: SHOULDER_SOURCE,
            },
        })
    };
    Some(Shoulder {
        bending: figure(Load::Bending)?,
        torsion: figure(Load::Torsion)?,
        tension: figure(Load::Tension)?,
        checked,
    })
}

/// Whether the rules for the fatigue of steel hold.
pub(super) const fn is_steel(material: WorkMaterial) -> bool {
    !matches!(
        material,
        WorkMaterial::GreyIron
            | WorkMaterial::DuctileIron
            | WorkMaterial::AluminiumAlloy
            | WorkMaterial::Brass
            | WorkMaterial::Bronze
            | WorkMaterial::TitaniumAlloy
    )
}

/// What the surface and the duty have to say.
pub(crate) fn findings(job: &Job, checked: &Checked, bears: &Bears) -> Vec<Finding> {
    let mut findings = Vec::new();
    let at = |field, code| Finding::at(field, code);
    match bears.surface {
        SurfaceLeft::Core(left) | SurfaceLeft::Partly(left) => {
            findings.push(at(Field::CaseDepth, Code::CaseTurnedAway { left }));
        }
        SurfaceLeft::Through(_) if job.part.material == WorkMaterial::CaseHardenedSteel => {
            findings.push(at(Field::CaseDepth, Code::CaseDepthUnknown));
        }
        SurfaceLeft::Through(_) | SurfaceLeft::Case(_) => {}
    }
    findings.extend(safety::findings(job, checked, bears.duty.as_ref()));
    findings
}
