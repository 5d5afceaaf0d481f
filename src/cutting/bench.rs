//! One lathe, tool, part and holding ready to plan passes on: from a stretch of steps to the limits of its pass.
//!
//! Steps are counted on radius from the size that is turned to, outward; a step is a whole part of the dial.

use std::cell::RefCell;
use std::rc::Rc;

use super::chip::least_feed;
use super::derate::{Cooling, Derate, EdgeMaterial, Engagement, Skin, derate};
use super::engine::Window;
use super::law::{AtFeed, CutPass, LatheLaw, Limits, RowMaker};
use super::limit::Limit;
use super::passes::{PassKind, PassQuestion};
use super::setup::Setup;
use crate::holding::variation_allowed;
use crate::part::{FeatureShape, SAME};
use crate::quantity::{Length, Time};

/// All that is needed to say what a pass may do.
pub(super) struct Bench<'a> {
    pub(super) question: &'a PassQuestion<'a>,
    pub(super) setup: &'a Setup,
    pub(super) grid: Grid,
    pub(super) law: LatheLaw,
    /// Each of the two last cuts, on radius.
    pub(super) last: Length,
    /// Limits that are left out of account, or widened: to see what they cost.
    pub(super) eased: Vec<Eased>,
    /// Rows of the outer metal and of the core, by depth, as far as they were asked for.
    outer: RefCell<Rows>,
    core: RefCell<Rows>,
    travels: RefCell<Vec<Option<Travel>>>,
    across: Across,
}

/// What depths ask at each feed, by their steps.
type Rows = Vec<Option<Rc<[AtFeed]>>>;

/// A limit that is widened by a factor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Eased {
    pub(super) limit: Limit,
    pub(super) by: f64,
}

/// The places where passes may stop.
#[derive(Clone, Copy, Debug)]
pub(super) struct Grid {
    /// Radius that is turned to.
    pub(super) zero: Length,
    /// Radius before the first pass.
    pub(super) start: Length,
    pub(super) step: Length,
    /// Steps to the start, the last one not whole.
    pub(super) steps: u32,
}

/// What a pass that ends at a place meets.
#[derive(Clone, Copy, Debug)]
pub(super) struct Travel {
    /// Length of metal.
    pub(super) metal: Length,
    /// From the first metal to the last.
    pub(super) way: Length,
    /// Where the last of it is.
    pub(super) end: Length,
}

/// The most force across the work, by the diameter that a roughing pass leaves, and in the last cuts.
struct Across {
    rough: Vec<(f64, f64)>,
    last: f64,
}

impl Grid {
    /// The radius with so many steps left.
    pub(super) fn radius(&self, steps: u32) -> Length {
        if self.steps <= steps {
            self.start
        } else {
            self.zero + self.step * f64::from(steps)
        }
    }
}

impl<'a> Bench<'a> {
    pub(super) fn new(
        question: &'a PassQuestion<'a>,
        setup: &'a Setup,
        grid: Grid,
        last: Length,
        edge: Time,
    ) -> Self {
        let law = LatheLaw {
            feeds: setup.lathe.feeds.clone(),
            power: setup.lathe.spindle_power.to_watts(),
            life: setup.exponent(),
            edge: edge.to_seconds(),
        };
        let places = usize::try_from(grid.steps).unwrap_or(0) + 1;
        Self {
            question,
            setup,
            law,
            last,
            eased: Vec::new(),
            outer: RefCell::new(vec![None; places]),
            core: RefCell::new(vec![None; places]),
            travels: RefCell::new(vec![None; places]),
            across: across(question, &grid, last),
            grid,
        }
    }

    /// How deep roughing passes may be, in steps.
    pub(super) fn most_steps(&self) -> u32 {
        whole_steps(self.most_depth(), self.grid.step)
    }

    /// The deepest roughing pass.
    fn most_depth(&self) -> Length {
        self.setup.most_infeed * self.ease(Limit::Depth)
    }

    fn ease(&self, limit: Limit) -> f64 {
        let eased = self.eased.iter().filter(|eased| eased.limit == limit);
        eased.map(|eased| eased.by).product()
    }

    /// What a pass that ends at a place meets, runout counted.
    pub(super) fn travel(&self, to: u32) -> Travel {
        let place = usize::try_from(to).unwrap_or(usize::MAX);
        if let Some(Some(known)) = self.travels.borrow().get(place) {
            return *known;
        }
        let found = self.find_travel(self.grid.radius(to));
        if let Some(slot) = self.travels.borrow_mut().get_mut(place) {
            *slot = Some(found);
        }
        found
    }

    /// Where the stock, runout counted, stands above the radius after a pass.
    pub(super) fn find_travel(&self, after: Length) -> Travel {
        let PassQuestion {
            received, shank, ..
        } = self.question;
        // Near the shoulder the fillet stays, so the pass ends where the finished outline rises above it. At size
        // that is where the fillet begins: there it rises so gently that a crossing would be lost in rounding.
        let fillet_end = if (after - shank.diameter / 2.0).to_mm() <= SAME {
            shank.fillet
        } else {
            let rising = shank.outer.above(after, Length::ZERO, shank.fillet);
            rising.last().map_or(Length::ZERO, |(_, end)| *end)
        };
        let met = received.swept.above(after, fillet_end, self.setup.end);
        let metal = met.iter().map(|(from, to)| *to - *from).sum();
        let (travel, end) = match (met.first(), met.last()) {
            (Some((first, _)), Some((_, last))) => (*last - *first, *last),
            _ => (Length::ZERO, Length::ZERO),
        };
        Travel {
            metal,
            way: travel,
            end,
        }
    }

    /// Whether a pass knocks: it meets a flat, a keyway, a cross hole or a tang.
    pub(super) fn is_interrupted(&self, before: Length, after: Length) -> bool {
        let meets = |feature: &FeatureShape| {
            let reaches = feature.clear_radius().is_none_or(|clear| clear < before);
            reaches && after < feature.outside && feature.from < self.setup.end
        };
        self.question.received.features.iter().any(meets)
    }

    /// The forces and lives of a depth, feed by feed.
    fn row(&self, in_core: bool, steps: u32) -> Rc<[AtFeed]> {
        let rows = if in_core { &self.core } else { &self.outer };
        let place = usize::try_from(steps).unwrap_or(0);
        if let Some(Some(row)) = rows.borrow().get(place) {
            return Rc::clone(row);
        }
        let depth = self.grid.step * f64::from(steps);
        let row = self.row_maker(in_core).row(depth, &self.law.feeds);
        if let Some(slot) = rows.borrow_mut().get_mut(place) {
            *slot = Some(Rc::clone(&row));
        }
        row
    }

    pub(super) fn row_maker(&self, in_core: bool) -> RowMaker<'_> {
        RowMaker {
            tool: &self.setup.tool,
            force: self.setup.metal.zone(in_core).force,
            life: self.setup.life,
            speed: self.setup.speed.to_m_per_min() * self.ease(Limit::CuttingSpeed),
        }
    }

    /// The pass from so many steps left to so many; `None` where the tool cannot take it at all.
    pub(super) fn pass(&self, kind: PassKind, from: u32, to: u32) -> Option<CutPass> {
        let (before, after) = (self.grid.radius(from), self.grid.radius(to));
        let in_core = self
            .setup
            .metal
            .is_in_core(self.question.received, before, after);
        let row = self.row(in_core, from.saturating_sub(to));
        self.pass_of(kind, (before, after), self.travel(to).way, row)
    }

    /// The same for radii that need not stand on the grid.
    pub(super) fn pass_of(
        &self,
        kind: PassKind,
        (before, after): (Length, Length),
        travel: Length,
        row: Rc<[AtFeed]>,
    ) -> Option<CutPass> {
        let setup = self.setup;
        let depth = before - after;
        let knocks = self.derate(before, after)?;
        let ease = |limit| self.ease(limit);
        let is_last = kind == PassKind::Last;
        // Whoever asks for a finer feed than the tool likes gets it.
        let asked = if is_last {
            setup.finish_feed
        } else {
            setup.rough_feed
        };
        let least = if is_last {
            least_feed(setup.tool.edge.edge_radius).typical
        } else {
            setup.tool.feeds.low
        };
        let most = asked.min(setup.tool.feeds.high).to_mm_per_rev() * knocks.feed;
        let (grip, along) = setup.grip.unwrap_or((f64::INFINITY, f64::INFINITY));
        Some(CutPass {
            row,
            depth: depth.to_mm(),
            most_depth: if is_last {
                self.last.to_mm()
            } else {
                self.most_depth().to_mm()
            },
            diameter: before.to_mm() * 2.0,
            path: if travel.to_mm() > SAME {
                (travel + setup.approach).to_mm()
            } else {
                // Only air is met: no more than the approach.
                setup.approach.to_mm().max(SAME)
            },
            limits: Limits {
                feed: Window {
                    least: least.to_mm_per_rev().min(most),
                    most: most * ease(Limit::Feed),
                },
                finish: if is_last {
                    setup.finish.to_mm_per_rev() * ease(Limit::Finish)
                } else {
                    f64::INFINITY
                },
                speed: setup.speed.to_m_per_min()
                    * knocks.speed.typical
                    * ease(Limit::CuttingSpeed),
                spindle: setup.lathe.top_speed.to_per_min() * ease(Limit::SpindleSpeed),
                grip: grip * ease(Limit::Grip),
                torque: setup.torque * ease(Limit::Torque),
                along: along * ease(Limit::Grip),
                across: self.across.at(kind, after.to_mm() * 2.0) * ease(Limit::Deflection),
                lasts: if is_last { 2.0 } else { 1.0 } / ease(Limit::ToolLife),
            },
        })
    }

    /// What knocks take off speed and feed; `None` where the tool would break.
    fn derate(&self, before: Length, after: Length) -> Option<Derate> {
        let engagement = if self.is_interrupted(before, after) {
            Engagement::Interrupted
        } else {
            Engagement::Steady
        };
        derate(
            EdgeMaterial::from(self.setup.tool.kind),
            (engagement, Skin::Clean, Cooling::Flood),
        )
    }
}

impl Across {
    fn at(&self, kind: PassKind, diameter: f64) -> f64 {
        if kind == PassKind::Last {
            return self.last;
        }
        // The thinner, the less: between two diameters the thinner one counts.
        let thicker = self.rough.partition_point(|(one, _)| *one <= diameter);
        let below = thicker.saturating_sub(1);
        self.rough
            .get(below)
            .map_or(f64::INFINITY, |(_, force)| *force)
    }
}

/// How many diameters the give of the work is reckoned at while it is roughed.
const DIAMETERS: u32 = 4;

/// The most force across the work.
///
/// In the last cuts the work may vary by a share of its tolerance; in roughing by half of what one of the last cuts takes
/// off, so that these find metal everywhere.
///
/// # Source
/// The share of the tolerance: [`variation_allowed`]. Roughing: own rule.
fn across(question: &PassQuestion, grid: &Grid, last: Length) -> Across {
    let Some(hold) = question.hold else {
        return Across {
            rough: Vec::new(),
            last: f64::INFINITY,
        };
    };
    let from = question.shank.fillet;
    let most = |radius: Length, allowed: Length| {
        hold.held(radius * 2.0).map_or(f64::INFINITY, |held| {
            hold.largest_across(&held, from, allowed).to_newtons()
        })
    };
    let rough = (0..DIAMETERS).map(|number| {
        let share = f64::from(number) / f64::from(DIAMETERS);
        let radius = grid.zero + (grid.start - grid.zero) * share;
        // A last cut of `last` on radius takes twice that off: half of it is `last`.
        (radius.to_mm() * 2.0, most(radius, last))
    });
    Across {
        rough: rough.collect(),
        last: most(grid.zero, variation_allowed(question.limits)),
    }
}

/// How many whole steps a length is, a hair of rounding forgiven.
pub(super) fn whole_steps(length: Length, step: Length) -> u32 {
    let steps = (length / step + 1e-6)
        .floor()
        .clamp(0.0, f64::from(u32::MAX));
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number within the bounds of its type"
    )]
    let steps = steps as u32;
    steps
}
