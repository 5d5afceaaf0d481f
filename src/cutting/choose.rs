//! Which kinds of tool turn the metal of a job, how fast, and whether grinding is the better way.

use serde::Serialize;

use super::grinding::{GrindQuestion, GrindReason, when_to_grind};
use super::metal::Metal;
use super::suits::{Verdict, suits};
use crate::job::Job;
use crate::plan::Checked;
use crate::quantity::{Length, Speed};
use crate::rework::SizeLimits;
use crate::tables::ToolKind;
use crate::working::Range;

/// Which kinds of tool turn the metal, and what speaks for grinding.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ToolChoice {
    /// Every kind of tool.
    pub tools: Vec<ToolVerdict>,
    /// Why to grind it, the weightiest first; empty: turn it.
    pub grind: Vec<GrindReason>,
}

/// Whether one kind of tool turns the metal at the surface.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ToolVerdict {
    /// Which kind.
    pub tool: ToolKind,
    /// Yes, with care, or no, and why.
    pub verdict: Verdict,
    /// From where to where the cutting speed may be set at the start, where there is a figure.
    pub speeds: Option<Range<Speed>>,
}

impl ToolChoice {
    /// What turns the metal of a job; `stock` is on the radius.
    pub(crate) fn of(job: &Job, checked: &Checked, limits: SizeLimits, stock: Length) -> Self {
        let surface = Metal::read(job, checked, job.shop.tool).outer;
        let verdict = |tool: ToolKind| {
            let found = suits(surface.group, surface.hardness, tool);
            ToolVerdict {
                tool,
                verdict: found.verdict,
                speeds: found.window.map(|window| Range {
                    low: window.low,
                    high: window.high,
                }),
            }
        };
        let grind = when_to_grind(&GrindQuestion {
            group: surface.group,
            hardness: surface.hardness,
            diameter: limits.aim,
            stock_on_radius: stock,
            tolerance: Some(limits.upper - limits.lower),
            tools: &ToolKind::ALL,
        });
        Self {
            tools: ToolKind::ALL.map(verdict).to_vec(),
            grind,
        }
    }
}
