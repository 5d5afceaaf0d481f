//! What is turned off, pass by pass: roughing, two equal last cuts, and the stock left for polishing.
//!
//! Infeeds are on radius; "off" and "after" are on diameter. A pass is as long as the metal that it meets: on a
//! taper the first passes meet only the big end, and near the shoulder each ends at the fillet.

use serde::Serialize;

use super::chip::ChipVerdict;
use super::limit::{HeldBy, Load};
use super::pass_figures::{ForceBasis, SpindleLimits};
use crate::holding::Hold;
use crate::job::{DialReads, Field, Job};
use crate::part::Received;
use crate::plan::Checked;
use crate::quantity::{Feed, Force, Length, Power, RotationalSpeed, Speed, Time};
use crate::rework::{SizeLimits, WantedShank};
use crate::tables::Spread;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// What kind of pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PassKind {
    /// Takes metal off quickly.
    Rough,
    /// One of the two equal last cuts: the first shows what the second will do.
    Last,
    /// Brings the work to size with abrasive.
    Polish,
}

/// One pass.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// What kind.
    pub kind: PassKind,
    /// Infeed on radius; zero for polishing.
    pub infeed: Length,
    /// Metal off, on diameter.
    pub off_diameter: Length,
    /// Diameter after it.
    pub diameter_after: Length,
    /// Length of metal that it meets.
    pub metal: Length,
    /// Travel of the tool from the first metal to the last.
    pub travel: Length,
    /// Where the last metal is that it meets, from the shoulder.
    pub ends_at: Length,
    /// Cutting speed at the diameter that it starts from.
    pub cutting_speed: Speed,
    /// Spindle speed.
    pub spindle_speed: RotationalSpeed,
    /// Feed.
    pub feed: Feed,
    /// How long it takes as a rule, setting, returning and measuring counted.
    pub time: Time,
    /// How long the tool feeds; nothing for polishing.
    pub feeding: Time,
    /// What the cut does; `None` for polishing.
    pub cut: Option<PassCut>,
}

/// What a cut does to tool, machine and work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PassCut {
    /// Tangential force: down onto the tool.
    pub force: Spread<Force>,
    /// Force along the work, at most.
    pub along: Force,
    /// Force across the work, at most; it bends it.
    pub across: Force,
    /// Power at the spindle, at most.
    pub power: Power,
    /// How much of each limit is used.
    pub loads: Vec<Load>,
    /// What keeps it from being deeper, coarser or faster.
    pub held_by: HeldBy,
    /// Roughness Ra to expect; `None` where the feed leaves a thread.
    pub roughness: Option<Spread<Length>>,
    /// The share of an edge that it uses up.
    pub edge_used: f64,
    /// What chip to expect.
    pub chip: ChipVerdict,
    /// Whether the tool knocks: over a flat, a keyway, a cross hole or a tang.
    pub interrupted: bool,
    /// Whether it meets nothing but the core below a hard case.
    pub in_core: bool,
    /// Its place among the pinned passes, from 0; `None` where it was planned.
    pub pinned: Option<u8>,
    /// Whether a fresh edge is taken before it.
    pub new_edge: bool,
    /// What the force was reckoned from; `None` for a wheel, for which no law of force is known here.
    #[serde(skip)]
    pub basis: Option<ForceBasis>,
}

impl Pass {
    /// What is dialled in for it on a cross-slide whose dial reads so.
    pub fn dialled(&self, reads: DialReads) -> Length {
        match reads {
            DialReads::Diameter => self.off_diameter,
            DialReads::Radius => self.infeed,
        }
    }

    /// The diameter that it starts from.
    pub fn diameter_before(&self) -> Length {
        self.diameter_after + self.off_diameter
    }
}

/// What comes off one section of the shank as received, as measured there: runout comes on top.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SectionStock {
    /// The section's place in the job's list.
    pub section: u8,
    /// Off the diameter at the end nearer to the shoulder.
    pub at_start: Length,
    /// Off the diameter at its far end, or at the finished end where that comes first.
    pub at_end: Length,
}

/// All that is turned off.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StockOff {
    /// The most that comes off the diameter anywhere.
    pub most: Figure<Length>,
    /// What comes off each section.
    pub sections: Vec<SectionStock>,
    /// Off the diameter in a roughing pass, on average; `None` without roughing.
    pub rough_each: Option<Figure<Length>>,
    /// Off the diameter in each of the two last cuts.
    pub last_each: Length,
    /// Left on the diameter for polishing: what was asked for, or all where less is on.
    pub polishing: Length,
    /// The passes in order.
    pub passes: Vec<Pass>,
    /// Spindle speed of the first pass.
    pub spindle_speed: Option<Figure<RotationalSpeed>>,
    /// The highest cutting speed: the one typed, or the usual one.
    pub cutting_speed: Speed,
    /// What power reaches the spindle, and above which speed spindle, chuck or work must not turn.
    #[serde(skip)]
    pub spindle: SpindleLimits,
    /// How many edges are used up, the last one in part.
    pub edges_used: f64,
    /// How often a fresh edge is taken between passes.
    pub tool_changes: u32,
}

impl StockOff {
    /// Whether the work is brought to size by polishing.
    pub fn is_polished(&self) -> bool {
        self.passes.iter().any(|pass| pass.kind == PassKind::Polish)
    }

    /// The infeed of a pass, and what it takes off the diameter: of the roughing passes on average, or, without any, of
    /// the first pass that cuts; `None` where nothing is cut.
    pub fn each_pass(&self) -> Option<(Length, Length)> {
        let first = || self.passes.iter().find(|pass| pass.cut.is_some());
        let off = match &self.rough_each {
            Some(each) => each.value,
            None => first()?.off_diameter,
        };
        Some((off / 2.0, off))
    }

    /// The last pass that cuts.
    pub fn last_cut(&self) -> Option<&Pass> {
        self.passes.iter().rev().find(|pass| pass.cut.is_some())
    }
}

/// What the passes are planned from.
pub(crate) struct PassQuestion<'a> {
    pub(crate) job: &'a Job,
    pub(crate) checked: &'a Checked<'a>,
    pub(crate) received: &'a Received,
    pub(crate) shank: &'a WantedShank,
    pub(crate) limits: SizeLimits,
    /// How the part is held; `None` where that cannot be said.
    pub(crate) hold: Option<&'a Hold>,
}

/// The most that comes off the diameter.
pub(super) fn most_off(start: Length, aim: Length, runout: Length) -> Figure<Length> {
    Figure {
        value: (start - aim).max(Length::ZERO),
        range: None,
        working: Working {
            symbol: "s",
            formula: "D + T − d",
            parts: &[],
            inputs: vec![
                Input::new("D", Meaning::LargestDiameter, Value::size(start - runout)),
                Input::new("T", Meaning::RunoutThere, Value::size(runout)),
                Input::new("d", Meaning::AimedDiameter, Value::size(aim)),
            ],
            source: Source::Geometry,
        },
    }
}

/// What a roughing pass takes off on average.
pub(super) fn rough_each(count: u32, to_turn: Length, last: Length) -> Option<Figure<Length>> {
    if count == 0 {
        return None;
    }
    Some(Figure {
        value: (to_turn - last * 2.0) / f64::from(count),
        range: None,
        working: Working {
            symbol: "a",
            formula: "(w − 2 · q)/i",
            parts: &[],
            inputs: vec![
                Input::new("w", Meaning::ToTurn, Value::size(to_turn)),
                Input::new("q", Meaning::Field(Field::LastCut), Value::size(last)),
                Input::new("i", Meaning::PassCount, Value::Count(count)),
            ],
            source: Source::CommonPractice,
        },
    })
}

/// What comes off each section that is turned, without the runout.
pub(super) fn section_stock(received: &Received, aim: Length, end: Length) -> Vec<SectionStock> {
    let off = |diameter: Length| (diameter - aim).max(Length::ZERO);
    received
        .sections
        .iter()
        .filter(|section| (end - section.from).to_mm() > crate::part::SAME)
        .map(|section| {
            let share = ((end - section.from) / (section.to - section.from)).min(1.0);
            let end_diameter =
                section.from_diameter + (section.to_diameter - section.from_diameter) * share;
            SectionStock {
                section: section.index,
                at_start: off(section.from_diameter),
                at_end: off(end_diameter),
            }
        })
        .collect()
}
