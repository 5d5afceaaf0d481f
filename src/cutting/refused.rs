//! What there is to say of the passes: of the depths asked for, of what was found, and of why nothing was.

use super::bench::Bench;
use super::engine::Refusal;
use super::limit::{Limit, Load, OVER, worst};
use super::passes::{Pass, PassKind};
use super::pins::Pinned;
use super::planner::Planner;
use crate::holding::variation_allowed;
use crate::job::{Field, HoldingField, MachineField, PinField};
use crate::part::SAME;
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::tables::ToolKind;

impl Planner<'_> {
    /// What there is to say of the depths before any search.
    pub(super) fn cut_findings(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        // With roughing before them the last cuts are as asked for, or a finding says why not.
        if !self.roughs && self.last.to_mm() < self.asked.to_mm() - SAME {
            let each = self.last;
            findings.push(Finding::at(Field::LastCut, Code::LastCutsReduced { each }));
        }
        let least = self.setup.tool.depths.low;
        let mut judge = |field, infeed: Length| {
            if infeed.to_mm() < least.to_mm() - SAME {
                findings.push(Finding::at(field, Code::InfeedTooFine { infeed, least }));
            }
        };
        judge(Field::LastCut, self.last / 2.0);
        if self.roughs {
            judge(Field::RoughInfeed, self.setup.most_infeed);
        }
        findings
    }

    /// What there is to say of the passes found.
    pub(super) fn pass_findings(&self, passes: &[Pass]) -> Vec<Finding> {
        let mut findings = Vec::new();
        let cuts = || {
            (1_u32..)
                .zip(passes)
                .filter_map(|(number, it)| Some((number, it, it.cut.as_ref()?)))
        };
        for (_, _, cut) in cuts() {
            let worst = worst(cut.loads.iter().copied());
            if let (Some(pin), Some(Load { limit, share })) = (cut.pinned, worst)
                && OVER < share
            {
                let field = Field::Pin(pin, PinField::Infeed);
                findings.push(Finding::at(field, Code::PinBreaks { limit, share }));
            }
        }
        let last = cuts().last();
        if let Some((_, _, cut)) = last.filter(|(_, _, cut)| cut.pinned.is_none()) {
            let allowed = variation_allowed(self.question.limits);
            let give = cut
                .loads
                .iter()
                .find(|load| load.limit == Limit::Deflection);
            if let Some(load) = give.filter(|load| OVER < load.share) {
                let by = allowed * load.share;
                findings.push(Finding::at(Field::LastCut, Code::GivesWay { by, allowed }));
            }
            let wanted = self.question.checked.length(Field::Roughness);
            let high = cut.roughness.map(|it| it.high);
            if let (Some(wanted), Some(expected)) = (wanted, high)
                && self.polishing.to_mm() <= SAME
                && wanted < expected
            {
                let code = Code::RoughnessNotReached { expected };
                findings.push(Finding::at(Field::Roughness, code));
            }
        }
        let soft = cuts().find(|(_, _, cut)| cut.in_core);
        let sticks = self.setup.tool.kind == ToolKind::CubicBoronNitride;
        if let Some((pass, _, _)) = soft.filter(|_| sticks) {
            findings.push(Finding::at(Field::Tool, Code::SoftCoreUnderTool { pass }));
        }
        findings
    }

    pub(super) fn refused(&self, refusal: &Refusal, bench: &Bench, pinned: &[Pinned]) -> Finding {
        let index = |pin: usize| pinned.get(pin).map_or(0, |it| it.index);
        let at_pin = |pin: usize, code| Finding::at(Field::Pin(index(pin), PinField::After), code);
        match *refusal {
            Refusal::PinsOverlap { one, other } => {
                let other = u32::from(index(other)) + 1;
                at_pin(one, Code::PinsOverlap { other })
            }
            Refusal::PinTakesNothing { pin }
            | Refusal::PinOutOfStock { pin }
            | Refusal::PinNotAllowed { pin } => at_pin(
                pin,
                Code::PinOutside {
                    start: self.start,
                    end: self.aim + self.polishing,
                },
            ),
            Refusal::TooManyPasses { .. } => Finding::at(Field::RoughInfeed, Code::TooManyPasses),
            Refusal::EndAboveStart | Refusal::NoSchedule => {
                let kinds = if self.roughs {
                    [PassKind::Rough, PassKind::Last]
                } else {
                    [PassKind::Last, PassKind::Last]
                };
                let loads = kinds
                    .iter()
                    .filter_map(|kind| self.lightest(bench, *kind))
                    .flatten();
                let worst = worst(loads).filter(|load| OVER < load.share);
                match worst {
                    Some(Load { limit, share }) => {
                        Finding::at(field_of(limit), Code::NoPass { limit, share })
                    }
                    None => Finding::at(Field::RoughInfeed, Code::NoRowOfPasses),
                }
            }
        }
    }

    /// Whether giving way alone forbids the lightest last cut.
    pub(super) fn gives_way(&self, bench: &Bench) -> bool {
        let lightest = self.lightest(bench, PassKind::Last);
        lightest.is_some_and(|loads| {
            loads
                .iter()
                .any(|load| load.limit == Limit::Deflection && OVER < load.share)
        })
    }

    /// What the lightest cut uses of each limit: the least depth, the finest feed, the slowest speed.
    fn lightest(&self, bench: &Bench, kind: PassKind) -> Option<Vec<Load>> {
        let grid = bench.grid;
        let depth = match kind {
            // With roughing before them the last cuts may be shallower than was asked.
            PassKind::Last if self.roughs => self.setup.tool.depths.low.min(self.last / 2.0),
            PassKind::Last => self.last / 2.0,
            _ => self.setup.tool.depths.low.min(self.to_turn / 2.0),
        };
        let before = match kind {
            PassKind::Last => grid.zero + depth,
            _ => grid.start,
        };
        let after = before - depth;
        let travel = bench.find_travel(after).way;
        let in_core = self
            .setup
            .metal
            .is_in_core(self.question.received, before, after);
        let row = bench.row_maker(in_core).row(depth, &bench.law.feeds);
        let pass = bench.pass_of(kind, (before, after), travel, row)?;
        // The finest feed that the tool likes; where the lathe has none so coarse, its coarsest.
        let feeds = &bench.law.feeds;
        let number = feeds.partition_point(|feed| *feed < pass.limits.feed.least);
        let number = number.min(feeds.len().checked_sub(1)?);
        let (feed, at) = (*feeds.get(number)?, *pass.row.get(number)?);
        let spindle = self.setup.lathe.speeds.least();
        Some(bench.law.loads(&pass, &at, feed, spindle))
    }
}

/// The field to mend first where a limit forbids every pass.
const fn field_of(limit: Limit) -> Field {
    match limit {
        Limit::Depth => Field::RoughInfeed,
        Limit::Feed => Field::Machine(MachineField::Feeds),
        Limit::Finish => Field::Roughness,
        Limit::CuttingSpeed | Limit::ToolLife => Field::CuttingSpeed,
        Limit::SpindleSpeed => Field::Machine(MachineField::Speeds),
        Limit::Power => Field::Machine(MachineField::Power),
        Limit::Torque => Field::Machine(MachineField::Torque),
        Limit::Grip => Field::Holding(HoldingField::GripForce),
        Limit::Deflection => Field::LastCut,
    }
}
