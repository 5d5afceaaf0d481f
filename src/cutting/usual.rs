//! The usual depth, speed, feed and kerf where the machinist gives none.
//!
//! Depths and feeds are for a light lathe, by common practice without a source. Speeds are the low end of the
//! windows in the table of cutting data, which suits a light machine and a careful first cut.

use crate::job::CutOffMethod;
use crate::quantity::{Feed, Length, Speed};
use crate::tables::{SpeedWindow, ToolKind, WorkMaterial, cutting_speed};

/// Depth, feeds and least infeed of one kind of tool.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualCut {
    /// Infeed of a roughing pass, on radius.
    pub rough_infeed: Length,
    /// Feed of a roughing pass.
    pub rough_feed: Feed,
    /// Feed of the last cuts.
    pub finish_feed: Feed,
    /// The finest infeed on radius that still cuts rather than rubs.
    pub least_infeed: Length,
}

/// The usual cut of a tool in a material.
///
/// # Source
/// Depths and feeds: common practice, no source. Least infeed from memory: 0.02 mm for a sharp edge, 0.05 mm for
/// a thin coating, 0.02 mm for boron nitride with a fine hone.
pub const fn usual_cut(material: WorkMaterial, tool: ToolKind) -> UsualCut {
    let (rough, rough_feed, finish_feed, least) = match tool {
        ToolKind::HighSpeedSteel => (0.5, 0.12, 0.06, 0.02),
        ToolKind::BrazedCarbide => (0.5, 0.12, 0.08, 0.02),
        ToolKind::IndexableCarbide => (0.5, 0.15, 0.08, 0.05),
        ToolKind::CubicBoronNitride => (0.2, 0.10, 0.08, 0.02),
    };
    // Hard work is taken in shallow cuts, whatever the edge: CBN and carbide guides say 0.1 to 0.3 mm.
    let rough = if is_hard(material) && rough > 0.2 {
        0.2
    } else {
        rough
    };
    UsualCut {
        rough_infeed: Length::mm(rough),
        rough_feed: Feed::mm_per_rev(rough_feed),
        finish_feed: Feed::mm_per_rev(finish_feed),
        least_infeed: Length::mm(least),
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

/// The usual cutting speed, and the window it is taken from; `None` when the tool does not cut the material.
pub fn usual_speed(material: WorkMaterial, tool: ToolKind) -> Option<(Speed, SpeedWindow)> {
    cutting_speed(material, tool).map(|window| (window.low, window))
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
