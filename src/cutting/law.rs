//! The law of passes on the lathe of a job: what each limit allows, and what a pass costs.
//!
//! Inside, numbers are bare: millimetres, newtons, revolutions a minute, metres a minute, minutes of life, and seconds
//! for the cost. Forces are the high ones of their range: a limit that holds for them holds.

use core::f64::consts::PI;
use std::rc::Rc;

use super::edge::EquivalentChip;
use super::engine::{Law, Window};
use super::force::{rake_factor, speed_factor};
use super::limit::{Limit, Load};
use super::pass_figures::ForceBasis;
use super::tool::Tool;
use super::tool_life::ToolLife;
use super::trust::{THIN_CHIP_EXCESS, THINNEST_FITTED, THINNEST_USABLE};
use crate::quantity::{Feed, Length, Speed, Time};
use crate::tables::{SpecificForce, ToolKind};

/// What a depth and a feed of the list ask, whatever the diameter.
#[derive(Clone, Copy, Debug)]
pub(super) struct AtFeed {
    /// High tangential force.
    pub(super) tangential: f64,
    /// High force along the work.
    pub(super) along: f64,
    /// High force across the work.
    pub(super) across: f64,
    /// The speed in m/min at which an edge lasts one minute; infinite for a wheel.
    pub(super) one_minute: f64,
    /// How many minutes an edge lasts at the highest speed allowed.
    pub(super) least_life: f64,
}

/// What does not change from one row to the next.
pub(super) struct RowMaker<'a> {
    pub(super) tool: &'a Tool,
    pub(super) force: SpecificForce,
    pub(super) life: Option<ToolLife>,
    /// The highest cutting speed, m/min.
    pub(super) speed: f64,
}

impl RowMaker<'_> {
    /// What a depth asks at each feed.
    pub(super) fn row(&self, depth: Length, feeds: &[f64]) -> Rc<[AtFeed]> {
        let at = |feed: &f64| self.at(depth, Feed::mm_per_rev(*feed));
        feeds.iter().map(at).collect()
    }

    /// The chip of a depth and a feed. For a wheel no law of force is known here: it has none, and nothing is limited by it.
    pub(super) fn chip(&self, depth: Length, feed: Feed) -> Option<EquivalentChip> {
        let wheel = self.tool.kind == ToolKind::Grinding;
        EquivalentChip::of(&self.tool.edge, depth, feed).filter(|_| !wheel)
    }

    /// What the force on a chip is reckoned from.
    ///
    pub(super) fn basis(&self, chip: &EquivalentChip) -> ForceBasis {
        let edge = &self.tool.edge;
        ForceBasis {
            specific: self.force.kc11,
            exponent: self.force.mc,
            thickness: chip.thickness,
            rake: rake_factor(edge.rake),
            slow: speed_factor(Speed::m_per_min(self.speed)),
            excess: ploughing(chip.thickness),
        }
    }

    /// The high forces and the life at one depth and feed.
    pub(super) fn at(&self, depth: Length, feed: Feed) -> AtFeed {
        let chip = self.chip(depth, feed);
        let (tangential, chord) = chip.map_or((0.0, 0.0), |chip| {
            let force = self.basis(&chip).high(depth, feed);
            (force.to_newtons(), chip.chord_angle.to_radians())
        });
        let normal = tangential * self.tool.state.normal_share().high;
        let minute = Time::minutes(1.0);
        let speed_for = |life: &ToolLife| life.speed_for(minute, feed, depth);
        let one_minute = self.life.as_ref().and_then(speed_for);
        let one_minute = one_minute.map_or(f64::INFINITY, Speed::to_m_per_min);
        let exponent = self.life.map_or(1.0, |life| life.exponents().life);
        AtFeed {
            tangential,
            along: normal * chord.sin(),
            across: normal * chord.cos(),
            one_minute,
            least_life: (one_minute / self.speed).powf(1.0 / exponent),
        }
    }
}

/// What a thin chip may take on top of the law of force, as a share: nothing from the thinnest that the constants were
/// measured on, the whole excess from the thinnest that the law is of use for, and evenly between, so that no depth is
/// worth avoiding for a jump that is not there.
fn ploughing(thickness: Length) -> f64 {
    let room = THINNEST_FITTED - THINNEST_USABLE;
    THIN_CHIP_EXCESS * ((THINNEST_FITTED - thickness) / room).clamp(0.0, 1.0)
}

/// One pass to choose feed and speed for.
#[derive(Clone, Debug)]
pub(super) struct CutPass {
    /// For each feed of the list.
    pub(super) row: Rc<[AtFeed]>,
    /// Depth on radius, and the most that is allowed.
    pub(super) depth: f64,
    pub(super) most_depth: f64,
    /// Diameter that it starts from.
    pub(super) diameter: f64,
    /// Travel under feed, the approach in it.
    pub(super) path: f64,
    pub(super) limits: Limits,
}

/// What limits one pass.
#[derive(Clone, Copy, Debug)]
pub(super) struct Limits {
    /// Feeds of the tool.
    pub(super) feed: Window,
    /// The largest feed for the finish.
    pub(super) finish: f64,
    /// Cutting speed, m/min.
    pub(super) speed: f64,
    /// Spindle speed.
    pub(super) spindle: f64,
    /// Tangential force times the diameter that the grip holds, N·mm.
    pub(super) grip: f64,
    /// The same of the drive.
    pub(super) torque: f64,
    /// Force along the work that the grip holds.
    pub(super) along: f64,
    /// Force across the work.
    pub(super) across: f64,
    /// How often one edge has to last through the pass.
    pub(super) lasts: f64,
}

/// The law.
#[derive(Clone, Debug)]
pub(super) struct LatheLaw {
    /// The feeds of the machine, rising.
    pub(super) feeds: Vec<f64>,
    /// Watts at the spindle.
    pub(super) power: f64,
    /// The exponent of life; 1 for a wheel.
    pub(super) life: f64,
    /// Seconds that a whole edge counts for: what changing it takes, and what it costs in time of the shop.
    pub(super) edge: f64,
}

/// A feed of the list, and its number in it.
#[derive(Clone, Copy, Debug)]
pub(super) struct AFeed {
    pub(super) feed: f64,
    pub(super) number: usize,
}

impl LatheLaw {
    /// The spindle speed at which the power of the spindle is used up.
    fn at_full_power(&self, pass: &CutPass, at: &AtFeed) -> f64 {
        // P = F v/60 with v = π D n/1000.
        self.power * 60_000.0 / (at.tangential * PI * pass.diameter)
    }

    /// The spindle speed of a cutting speed.
    fn spindle(pass: &CutPass, speed: f64) -> f64 {
        speed * 1000.0 / (PI * pass.diameter)
    }

    /// The share of the grip that is used: turning and sliding are withstood by one friction force.
    fn grip(limits: &Limits, turning: f64, along: f64) -> f64 {
        (turning / limits.grip).hypot(along / limits.along)
    }

    /// How many minutes an edge lasts.
    fn life(&self, pass: &CutPass, at: &AtFeed, spindle: f64) -> f64 {
        let speed = PI * pass.diameter * spindle / 1000.0;
        (at.one_minute / speed).powf(1.0 / self.life)
    }

    /// The share of an edge that a pass uses up.
    pub(super) fn used(&self, pass: &CutPass, at: &AtFeed, feed: f64, spindle: f64) -> f64 {
        pass.path / (feed * spindle) / self.life(pass, at, spindle)
    }

    /// Seconds under feed.
    pub(super) fn feeding(pass: &CutPass, feed: f64, spindle: f64) -> f64 {
        pass.path / (feed * spindle) * 60.0
    }

    /// How much of each limit a pass uses, in the order of [`Limit::ALL`]; what is not limited is left out.
    pub(super) fn loads(&self, pass: &CutPass, at: &AtFeed, feed: f64, spindle: f64) -> Vec<Load> {
        let limits = &pass.limits;
        let turning = at.tangential * pass.diameter;
        let share = |limit: Limit| match limit {
            Limit::Depth => pass.depth / pass.most_depth,
            Limit::Feed => (feed / limits.feed.most).max(limits.feed.least / feed),
            Limit::Finish => feed / limits.finish,
            Limit::CuttingSpeed => spindle / Self::spindle(pass, limits.speed),
            Limit::ToolLife => self.used(pass, at, feed, spindle) * limits.lasts,
            Limit::SpindleSpeed => spindle / limits.spindle,
            Limit::Power => spindle / self.at_full_power(pass, at),
            Limit::Torque => turning / limits.torque,
            Limit::Grip => Self::grip(limits, turning, at.along),
            Limit::Deflection => at.across / limits.across,
        };
        // Nothing is used of what has no end, and a tool that draws in does not push off.
        let all = Limit::ALL.map(|limit| Load {
            limit,
            share: share(limit),
        });
        all.into_iter()
            .filter(|load| load.share.is_finite() && 0.0 < load.share)
            .collect()
    }
}

impl Law for LatheLaw {
    type Pass = CutPass;
    type Feed = AFeed;
    type Speed = f64;

    fn feed(&self, feed: f64) -> AFeed {
        let number = self.feeds.partition_point(|one| *one < feed);
        AFeed { feed, number }
    }

    fn speed(&self, speed: f64) -> f64 {
        speed
    }

    fn feed_window(&self, pass: &CutPass) -> Window {
        let finish = Window {
            least: 0.0,
            most: pass.limits.finish,
        };
        pass.limits.feed.and(finish)
    }

    fn speed_window(&self, pass: &CutPass, feed: &AFeed) -> Window {
        const NONE: Window = Window {
            least: 1.0,
            most: 0.0,
        };
        let limits = &pass.limits;
        let Some(at) = pass.row.get(feed.number) else {
            return NONE;
        };
        let turning = at.tangential * pass.diameter;
        let held = Self::grip(limits, turning, at.along) <= 1.0
            && turning <= limits.torque
            && at.across <= limits.across;
        if !held {
            return NONE;
        }
        let most = Self::spindle(pass, limits.speed)
            .min(limits.spindle)
            .min(self.at_full_power(pass, at));
        // An edge lasts longest at the least speed: only a pass longer than its shortest life is looked at closely.
        let minutes = limits.lasts * pass.path / feed.feed;
        let most = if minutes / most <= at.least_life {
            most
        } else {
            let room = Self::spindle(pass, at.one_minute).powf(1.0 / self.life) / minutes;
            most.min(room.powf(self.life / (1.0 - self.life)))
        };
        Window { least: 0.0, most }
    }

    fn least_cost(&self, pass: &CutPass, feed: &AFeed) -> f64 {
        let limits = &pass.limits;
        let fastest = Self::spindle(pass, limits.speed).min(limits.spindle);
        Self::feeding(pass, feed.feed, fastest)
    }

    fn ideal_speed(&self, pass: &CutPass, feed: &AFeed) -> f64 {
        if self.edge <= 0.0 {
            return f64::INFINITY;
        }
        let Some(at) = pass.row.get(feed.number) else {
            return f64::INFINITY;
        };
        // The economic life, (1/n − 1) · what an edge counts for.
        let life = (1.0 / self.life - 1.0) * self.edge / 60.0;
        Self::spindle(pass, at.one_minute * life.powf(-self.life))
    }

    fn cost(&self, pass: &CutPass, feed: &AFeed, spindle: &f64) -> f64 {
        let time = Self::feeding(pass, feed.feed, *spindle);
        if self.edge <= 0.0 {
            return time;
        }
        match pass.row.get(feed.number) {
            Some(at) => time + self.edge * self.used(pass, at, feed.feed, *spindle),
            None => f64::INFINITY,
        }
    }
}
