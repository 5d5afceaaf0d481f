//! What the tool meets: how hard it is, at the surface and below a hard case, and how it cuts.

use super::suits::{Suits, suits};
use crate::job::{Field, Job};
use crate::part::Received;
use crate::plan::Checked;
use crate::quantity::{Hardness, Length};
use crate::tables::{
    CuttingGroup, FileHardness, SpecificForce, Spread, ToolKind, WorkMaterial, specific_force,
};

/// How one kind of metal in the part cuts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Zone {
    pub(crate) group: CuttingGroup,
    /// Its hardness, where it was measured or judged; else that of its group counts.
    pub(crate) hardness: Option<Spread<Hardness>>,
    pub(crate) force: SpecificForce,
    /// Whether the tool cuts it, and how fast.
    pub(crate) suits: Suits,
}

/// The metal of the part.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Metal {
    /// At the surface, and all through where there is no case.
    pub(crate) outer: Zone,
    /// Below a hard case, and how deep that is.
    pub(crate) core: Option<(Length, Zone)>,
}

/// Steel softer than this is not measured in Rockwell C: what stands below only says soft.
const SOFTEST_MEASURED: Hardness = Hardness::hrc(20.0);

impl Metal {
    pub(crate) fn read(job: &Job, checked: &Checked, tool: ToolKind) -> Self {
        let material = job.part.material;
        let group = job
            .part
            .cutting_group
            .filter(|group| material.cutting_groups().contains(group));
        let group = group.unwrap_or(material.usual_cutting_group());
        let measured = |field| checked.value::<Hardness>(field).map(Spread::exact);
        let surface = measured(Field::SurfaceHardness).or_else(|| judged(job));
        let outer = Zone::new(group, surface, tool);
        let core = checked.length(Field::CaseDepth).map(|depth| {
            let hardness = measured(Field::CoreHardness);
            (
                depth,
                Zone::new(core_group(material, group), hardness, tool),
            )
        });
        Self { outer, core }
    }

    /// Whether a pass from one radius to another meets nothing but the core.
    pub(crate) fn is_in_core(&self, received: &Received, before: Length, after: Length) -> bool {
        let Some((case, _)) = &self.core else {
            return false;
        };
        let skin = |radius: Length| after < radius && radius < before + *case;
        !received.sections.iter().any(|section| {
            let (one, other) = (section.from_diameter / 2.0, section.to_diameter / 2.0);
            skin(one)
                || skin(other)
                || (one.min(other) <= after && before + *case <= one.max(other))
        })
    }

    /// The zone of a pass.
    pub(crate) fn zone(&self, in_core: bool) -> &Zone {
        match &self.core {
            Some((_, core)) if in_core => core,
            _ => &self.outer,
        }
    }
}

impl Zone {
    fn new(group: CuttingGroup, hardness: Option<Spread<Hardness>>, tool: ToolKind) -> Self {
        let hardness = hardness.filter(|it| SOFTEST_MEASURED <= it.low);
        Self {
            group,
            hardness,
            force: specific_force(group, hardness),
            suits: suits(group, hardness, tool),
        }
    }
}

/// What a try with a file says; how soft a steel is that a file cuts freely, it does not.
fn judged(job: &Job) -> Option<Spread<Hardness>> {
    match job.part.file_bite?.hardness() {
        FileHardness::Within(spread) => Some(spread),
        FileHardness::UpTo(_) => None,
    }
}

/// What lies below a case: steel that takes one is low-carbon or low-alloy, tempered by the same heat.
///
/// # Source
/// Common practice, no source: 28 HRC where the core was not measured.
fn core_group(material: WorkMaterial, own: CuttingGroup) -> CuttingGroup {
    match material {
        WorkMaterial::CaseHardenedSteel | WorkMaterial::HardenedSteel => {
            CuttingGroup::from_code("p-7").unwrap_or(own)
        }
        _ => own,
    }
}
