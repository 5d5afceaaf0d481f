//! What each pass found does: its figures, and what keeps it from being deeper, coarser or faster.

use super::bench::{Bench, Travel};
use super::chip::{CutStage, chip_verdict};
use super::law::{AtFeed, CutPass, LatheLaw};
use super::limit::{HeldBy, Limit, Load, OVER, worst};
use super::passes::{Pass, PassCut, PassKind};
use super::pins::Pinned;
use super::planner::Planner;
use super::roughness::{FinishCut, MACHINE_FLOOR};
use super::search::Found;
use super::turning::{spindle_speed, surface_speed};
use crate::job::Field;
use crate::quantity::{Feed, Force, Length, Power, RotationalSpeed, Stress, Time};
use crate::tables::Spread;

impl Planner<'_> {
    /// Passes with what they do.
    pub(super) fn report(&self, bench: &Bench, found: &[Found], pinned: &[Pinned]) -> Vec<Pass> {
        let pass = |it: &Found| self.pass(bench, it, pinned);
        found.iter().filter_map(pass).collect()
    }

    /// One pass with what it does.
    fn pass(&self, bench: &Bench, found: &Found, pinned: &[Pinned]) -> Option<Pass> {
        let grid = bench.grid;
        let (before, after) = (grid.radius(found.from), grid.radius(found.to));
        let depth = before - after;
        let Travel { metal, way, end } = bench.find_travel(after);
        let in_core = self
            .setup
            .metal
            .is_in_core(self.question.received, before, after);
        let maker = bench.row_maker(in_core);
        let pass = bench.pass(found.kind, found.from, found.to)?;
        let feed = Feed::mm_per_rev(found.feed);
        let at = maker.at(depth, feed);
        let spindle = RotationalSpeed::per_min(found.spindle);
        let feeding = Time::seconds(LatheLaw::feeding(&pass, found.feed, found.spindle));
        let cutting_speed = surface_speed(before * 2.0, spindle);
        let tool = &self.setup.tool;
        let material = self.question.job.part.material;
        let stage = match found.kind {
            PassKind::Rough => CutStage::Rough,
            PassKind::Last | PassKind::Polish => CutStage::Finish,
        };
        let basis = maker.chip(depth, feed).map(|chip| maker.basis(&chip));
        let force = |specific: Stress| {
            basis.map_or(Force::ZERO, |basis| basis.force(specific, depth, feed))
        };
        let kc = maker.force.kc11;
        let finish = FinishCut {
            nose_radius: tool.edge.nose_radius,
            material,
            speed: cutting_speed,
            floor: MACHINE_FLOOR,
        };
        let pin = pinned
            .iter()
            .find(|it| found.pinned && it.pin.from == found.from && it.pin.to == found.to);
        Some(Pass {
            kind: found.kind,
            infeed: depth,
            off_diameter: depth * 2.0,
            diameter_after: after * 2.0,
            metal,
            travel: way,
            ends_at: end,
            cutting_speed,
            spindle_speed: spindle,
            feed,
            time: feeding + self.setup.handling,
            feeding,
            cut: Some(PassCut {
                force: Spread {
                    low: force(kc.low),
                    typical: force(kc.typical),
                    high: Force::newtons(at.tangential),
                },
                along: Force::newtons(at.along),
                across: Force::newtons(at.across),
                power: Power::watts(at.tangential * cutting_speed.to_m_per_min() / 60.0),
                held_by: self.held_by(bench, found, &pass, &at),
                loads: bench.law.loads(&pass, &at, found.feed, found.spindle),
                roughness: finish.roughness(feed),
                edge_used: bench.law.used(&pass, &at, found.feed, found.spindle),
                chip: chip_verdict(
                    material,
                    tool.former,
                    stage,
                    (tool.edge.nose_radius, depth, feed),
                ),
                interrupted: bench.is_interrupted(before, after),
                in_core,
                pinned: pin.map(|it| it.index),
                new_edge: false,
                basis,
            }),
        })
    }

    /// What keeps a pass from being deeper, coarser or faster by the next step of each alone.
    fn held_by(&self, bench: &Bench, found: &Found, pass: &CutPass, at: &AtFeed) -> HeldBy {
        let law = &bench.law;
        let over = |loads: Vec<Load>| {
            let worst = worst(loads);
            worst.filter(|it| OVER < it.share).map(|it| it.limit)
        };
        let next = law.feeds.iter().position(|feed| found.feed < *feed);
        let feed = match next.and_then(|next| Some((pass.row.get(next)?, law.feeds.get(next)?))) {
            Some((coarser, feed)) => over(law.loads(pass, coarser, *feed, found.spindle)),
            None => Some(Limit::Feed),
        };
        let speeds = self.setup.lathe.speeds.clone();
        let most = speeds.most();
        let faster = match speeds.into_list() {
            Some(list) => list.into_iter().find(|speed| found.spindle < *speed),
            None => (found.spindle < most * (1.0 - 1e-9)).then(|| (found.spindle * 1.01).min(most)),
        };
        let speed = match faster {
            Some(faster) => over(law.loads(pass, at, found.feed, faster)),
            None => Some(Limit::SpindleSpeed),
        };
        let deeper = found
            .to
            .checked_sub(1)
            .filter(|_| found.kind == PassKind::Rough);
        let deeper = deeper.and_then(|to| bench.pass(found.kind, found.from, to));
        let depth = deeper.and_then(|deeper| {
            let number = law.feeds.partition_point(|feed| *feed < found.feed);
            let at = deeper.row.get(number)?;
            over(law.loads(&deeper, at, found.feed, found.spindle))
        });
        HeldBy { depth, feed, speed }
    }

    pub(super) fn polish(&self) -> Pass {
        let before = self.aim + self.polishing;
        let bench = self.bench(Time::ZERO);
        let Travel { metal, way, end } = bench.find_travel(self.aim / 2.0);
        let cutting_speed = self.setup.speed;
        let spindle = spindle_speed(cutting_speed, before);
        let spindle = self
            .setup
            .lathe
            .at_most(spindle.min(self.setup.lathe.top_speed));
        let checked = self.question.checked;
        let time = |field| checked.time(field).unwrap_or_default();
        Pass {
            kind: PassKind::Polish,
            infeed: Length::ZERO,
            off_diameter: self.polishing,
            diameter_after: self.aim,
            metal,
            travel: way,
            ends_at: end,
            cutting_speed: surface_speed(before, spindle),
            spindle_speed: spindle,
            feed: self.setup.finish_feed,
            time: time(Field::PolishTime) + time(Field::MeasureTime),
            feeding: Time::ZERO,
            cut: None,
        }
    }
}
