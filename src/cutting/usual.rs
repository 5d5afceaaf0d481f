//! The usual depth, feed, speed and kerf where the machinist gives none, by the kind of tool and the class of lathe.

use crate::job::{CutOffMethod, Rigidity};
use crate::quantity::{Feed, Length, Speed};
use crate::tables::{SpeedWindow, ToolKind, WorkMaterial, tool_usual};

/// The deepest usual roughing pass, on radius: what such a lathe stands without chatter, no more than the tool is made
/// for, and shallow in hard work.
///
/// # Source
/// Common practice, no source: half a millimetre on a light lathe. Hard work: guides for boron nitride and carbide say 0.1
/// to 0.3 mm.
pub const fn usual_infeed(material: WorkMaterial, tool: ToolKind, lathe: Rigidity) -> Length {
    const IN_HARD_WORK: Length = Length::mm(0.2);
    let by_lathe = Length::mm(match lathe {
        Rigidity::Light => 0.5,
        Rigidity::Medium => 1.5,
        Rigidity::Heavy => 3.0,
    });
    let most = by_lathe.min(tool_usual(tool).depth_most);
    if is_hard(material) {
        most.min(IN_HARD_WORK)
    } else {
        most
    }
}

/// The usual feed of the last cuts, where no roughness is asked for.
///
/// # Source
/// Common practice, no source. A wheel travels a good part of its width in a turn of the work.
pub const fn usual_finish_feed(tool: ToolKind) -> Feed {
    Feed::mm_per_rev(match tool {
        ToolKind::HighSpeedSteel => 0.06,
        ToolKind::BrazedCarbide
        | ToolKind::IndexableFlat
        | ToolKind::IndexableCarbide
        | ToolKind::CubicBoronNitride
        | ToolKind::Ceramic => 0.08,
        ToolKind::Grinding => 0.5,
    })
}

/// The highest cutting speed to begin with, inside a window: its low end on a light lathe, its high end on a heavy one.
///
/// # Source
/// Common practice, no source: the low end suits a light machine and a careful first cut.
pub fn usual_speed(window: SpeedWindow, lathe: Rigidity) -> Speed {
    match lathe {
        Rigidity::Light => window.low,
        Rigidity::Medium => {
            let (low, high) = (window.low.to_m_per_min(), window.high.to_m_per_min());
            Speed::m_per_min((low * high).sqrt())
        }
        Rigidity::Heavy => window.high,
    }
}

/// Whether the material is hard turned: 45 HRC and above, or near it.
pub const fn is_hard(material: WorkMaterial) -> bool {
    matches!(
        material,
        WorkMaterial::HardenedSteel
            | WorkMaterial::CaseHardenedSteel
            | WorkMaterial::HighSpeedSteelHard
            | WorkMaterial::AlloySteelHard
    )
}

/// The usual width of a cut.
///
/// # Source
/// From memory: hand discs 1.0 to 1.6 mm, wheels in a stand 2.0 to 3.2 mm. Saw and parting tool: common practice.
pub const fn usual_kerf(method: CutOffMethod) -> Length {
    Length::mm(match method {
        CutOffMethod::HandDisc => 1.6,
        CutOffMethod::ChopWheel => 2.5,
        CutOffMethod::Saw => 1.3,
        CutOffMethod::PartingTool => 3.0,
    })
}
