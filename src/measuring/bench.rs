//! What the next cut is chosen with: limits, passes, dial and edge of the job. Millimetres on diameter.

use crate::cutting::{Pass, PassKind, StockOff, least_chip_thickness};
use crate::job::{DialReads, Field, Job, MachineField};
use crate::plan::{Checked, Level, Plan};
use crate::quantity::Length;
use crate::tables::tool_usual;

/// One division of a cross-slide's dial where it was not entered: what it is marked with, by what it reads.
///
/// # Source
/// From memory: two hundredths off the diameter on common metric dials.
const fn usual_graduation(reads: DialReads) -> Length {
    Length::mm(match reads {
        DialReads::Diameter => 0.02,
        DialReads::Radius => 0.01,
    })
}

/// The least depth that still cuts and does not rub, over the thinnest chip.
///
/// # Source
/// From memory: a shallow cut's chip is on average half as thick as the cut is deep.
const DEPTH_OVER_CHIP: f64 = 2.0;

/// What the next cut is chosen with.
#[derive(Clone, Debug)]
pub(super) struct Bench<'a> {
    pub(super) stock: &'a StockOff,
    pub(super) lower: f64,
    pub(super) upper: f64,
    /// The finished size aimed at.
    pub(super) aim: f64,
    /// Left on for polishing by the plan.
    pub(super) polishing: f64,
    /// One division as marked.
    pub(super) graduation: Length,
    pub(super) reads: DialReads,
    /// What one division takes off the diameter.
    pub(super) division: f64,
    /// The least that a cut must engage, or it rubs.
    pub(super) rubs: f64,
    /// The least that each of two last cuts should take: what the tool is made for.
    pub(super) made_for: f64,
    /// The most that a cut takes.
    pub(super) deepest: f64,
}

impl<'a> Bench<'a> {
    /// Reads it.
    ///
    /// # Errors
    /// The field that is missing or wrong.
    pub(super) fn read(job: &Job, plan: &'a Plan) -> Result<Self, Field> {
        let checked = Checked::new(job);
        let stopped = || {
            let stop = plan.findings.iter().find(|it| it.level == Level::Stop);
            stop.map(|it| it.field)
        };
        let limits = plan.limits.ok_or_else(|| {
            let nominal = checked.length(Field::WantedDiameter);
            match nominal {
                None => Field::WantedDiameter,
                Some(_) => Field::Tolerance,
            }
        })?;
        let stock = plan
            .stock_off
            .as_ref()
            .ok_or_else(|| stopped().unwrap_or(Field::Tool))?;
        let reads = job.shop.machine.dial_reads;
        let field = Field::Machine(MachineField::Graduation);
        let graduation = checked
            .or_usual(field, usual_graduation(reads))
            .filter(|it| Length::ZERO < *it)
            .ok_or(field)?;
        let usual = tool_usual(job.shop.tool);
        let chip = least_chip_thickness(usual.edge_radius).typical.to_mm();
        let last = stock.last_each.to_mm();
        let each = stock.passes.iter().map(|pass| pass.off_diameter.to_mm());
        Ok(Self {
            lower: limits.lower.to_mm(),
            upper: limits.upper.to_mm(),
            aim: limits.aim.to_mm(),
            polishing: stock.polishing.to_mm(),
            graduation,
            reads,
            division: match reads {
                DialReads::Diameter => graduation.to_mm(),
                DialReads::Radius => graduation.to_mm() * 2.0,
            },
            rubs: chip * DEPTH_OVER_CHIP * 2.0,
            made_for: (usual.depth_least.to_mm() * 2.0).min(last.max(0.0)),
            deepest: each.fold(last, f64::max),
            stock,
        })
    }

    /// The size that turning aims at: what is polished off later is left on.
    pub(super) fn target(&self) -> f64 {
        self.aim + self.polishing
    }

    /// The pass that comes next where the work measures so much, with its number: the first that is not as good as done.
    pub(super) fn next_pass(&self, size: f64) -> Option<(u8, &'a Pass)> {
        let cuts = self.stock.passes.iter().filter(|pass| pass.cut.is_some());
        (0..=u8::MAX).zip(cuts).find(|(_, pass)| {
            let half = pass.off_diameter.to_mm() / 2.0;
            size > pass.diameter_after.to_mm() + half
        })
    }

    /// The first of the planned last cuts, with its number.
    pub(super) fn last_pass(&self, number: u32) -> (Option<u8>, Option<&'a Pass>) {
        let lasts = (0..=u8::MAX).zip(&self.stock.passes);
        let mut lasts = lasts.filter(|(_, pass)| pass.kind == PassKind::Last);
        let first = lasts.next();
        let found = match number {
            0 => first,
            _ => lasts.nth(usize::try_from(number - 1).unwrap_or(usize::MAX)),
        };
        (
            found.map(|(number, _)| number),
            found.or(first).map(|(_, pass)| pass),
        )
    }

    /// The diameter at which roughing is done.
    pub(super) fn roughed(&self) -> f64 {
        self.target() + self.stock.last_each.to_mm() * 2.0
    }
}
