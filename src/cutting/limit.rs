//! What limits a cut, and how much of each limit a pass uses.

use serde::Serialize;

/// What limits a cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Limit {
    /// Depth that the tool is made for, or that was asked for.
    Depth,
    /// Feed that the tool is made for, or that was asked for.
    Feed,
    /// Feed that leaves the roughness wanted.
    Finish,
    /// Cutting speed for this material and tool.
    CuttingSpeed,
    /// How long an edge lasts.
    ToolLife,
    /// Spindle speed of the machine, its chuck, or the work.
    SpindleSpeed,
    /// Power of the motor.
    Power,
    /// Torque of the drive.
    Torque,
    /// Grip of the chuck or the collet.
    Grip,
    /// How far work and lathe give way.
    Deflection,
}

impl Limit {
    /// Every one, in the order of the page.
    pub const ALL: [Self; 10] = [
        Self::Depth,
        Self::Feed,
        Self::Finish,
        Self::CuttingSpeed,
        Self::ToolLife,
        Self::SpindleSpeed,
        Self::Power,
        Self::Torque,
        Self::Grip,
        Self::Deflection,
    ];
}

/// How much of a limit a pass uses: 1 is all of it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Load {
    /// Which limit.
    pub limit: Limit,
    /// The share of it that is used; more than 1 only where a pinned pass goes over it.
    pub share: f64,
}

/// What keeps a pass from being deeper, coarser or faster; `None` where nothing of this list does.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct HeldBy {
    /// What keeps it from a deeper cut.
    pub depth: Option<Limit>,
    /// What keeps it from a coarser feed.
    pub feed: Option<Limit>,
    /// What keeps it from a higher speed.
    pub speed: Option<Limit>,
}

/// More than all of a limit, rounding forgiven.
pub(super) const OVER: f64 = 1.0 + 1e-9;

/// The largest of some loads.
pub(super) fn worst(loads: impl IntoIterator<Item = Load>) -> Option<Load> {
    let larger = |one: Load, other: Load| if other.share <= one.share { one } else { other };
    loads.into_iter().reduce(larger)
}
