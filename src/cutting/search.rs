//! The search for the passes: how many, how deep, at what feed and speed.
//!
//! The stock is counted in whole steps of the dial, so the search looks at every row of passes that can be dialled in, and
//! finds the best of them. Where that would take too long it looks at every so many steps first, and then again closely
//! about the best.

use super::bench::{Bench, Grid, whole_steps};
use super::engine::{
    Choices, Chooser, Closing, Pin, Refusal, Schedule, Setting, Stages, Stock, coarsen, equal_last,
    ladders, near,
};
use super::law::LatheLaw;
use super::passes::PassKind;
use super::pins::Pinned;
use crate::job::Job;
use crate::quantity::Length;

/// Places times depths that one search looks at: what keeps a plan within some milliseconds.
const BUDGET: u32 = 10_000;

/// An even row of passes is easier to dial in: one per cent of the roughing time is no price for it.
///
/// # Source
/// Own rule.
const HARDLY_MORE: f64 = 1.01;

/// How many steps beside the best of a coarse search the fine one looks.
const BESIDE: u32 = 3;

/// Of how many steps the two last cuts are at least, where the dial does not say.
const FINE: f64 = 25.0;

/// One pass of a schedule: where it begins and ends, in steps, and how it is cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Found {
    pub(super) kind: PassKind,
    pub(super) from: u32,
    pub(super) to: u32,
    pub(super) feed: f64,
    pub(super) spindle: f64,
    /// Whether it is pinned by hand.
    pub(super) pinned: bool,
}

/// Looks for the best rows of passes of one job on its lathe.
pub(super) struct Search<'a> {
    pub(super) bench: &'a Bench<'a>,
    pub(super) pinned: &'a [Pinned],
    chooser: Chooser<'a, LatheLaw>,
    /// Seconds that every pass takes besides its feeding.
    handling: f64,
}

impl Grid {
    /// The places for turning from one radius to another, with last cuts of `last` each on radius.
    ///
    /// `division`: of the dial, on radius, where it is known.
    pub(super) fn new(
        (zero, start): (Length, Length),
        last: Length,
        division: Option<Length>,
    ) -> Self {
        let step = division.unwrap_or(last / FINE);
        let whole = whole_steps(start - zero, step);
        let over = start - zero - step * f64::from(whole);
        let rest = u32::from(over > step * 1e-6);
        Self {
            zero,
            start,
            step,
            steps: whole + rest,
        }
    }
}

impl<'a> Search<'a> {
    pub(super) fn new(bench: &'a Bench<'a>, feeds: &Choices, pinned: &'a [Pinned]) -> Self {
        Self {
            bench,
            pinned,
            chooser: Chooser::new(&bench.law, feeds, &bench.setup.lathe.speeds),
            handling: bench.setup.handling.to_seconds(),
        }
    }

    /// The best row of passes; of as many passes the even row, where it costs hardly more.
    pub(super) fn best(&self, last_steps: &[u32]) -> Result<Schedule, Refusal> {
        Ok(self.evened(&self.cheapest(last_steps)?))
    }

    /// The row with the roughing passes between pinned ones alike to a step, the deeper ones first, where that costs no
    /// more than [`HARDLY_MORE`].
    fn evened(&self, best: &Schedule) -> Schedule {
        let rough = roughing_count(best);
        let passes: Vec<(u32, u32)> = best.passes().take(rough).collect();
        let is_pinned = |(from, to): (u32, u32)| {
            let pin = Pin { from, to };
            self.pinned.iter().any(|it| it.pin == pin)
        };
        let mut stops: Vec<u32> = best.stops.iter().take(1).copied().collect();
        let mut cost = best.cost;
        for run in passes.chunk_by(|one, other| !is_pinned(*one) && !is_pinned(*other)) {
            let as_it_is = || run.iter().map(|(_, to)| *to).collect::<Vec<_>>();
            let even = Self::even(run);
            let (was, is) = (
                self.roughing(run),
                even.as_deref().and_then(|it| self.roughing(it)),
            );
            match (even, was, is) {
                (Some(even), Some(was), Some(is)) if is <= was * HARDLY_MORE => {
                    cost += is - was;
                    stops.extend(even.iter().map(|(_, to)| *to));
                }
                _ => stops.extend(as_it_is()),
            }
        }
        stops.extend(best.stops.iter().skip(rough + 1));
        Schedule {
            cost,
            stops,
            last_cuts: best.last_cuts,
        }
    }

    /// As many passes over the same stretch, alike to a step; `None` where there is but one.
    fn even(run: &[(u32, u32)]) -> Option<Vec<(u32, u32)>> {
        let (from, to) = (run.first()?.0, run.last()?.1);
        let count = u32::try_from(run.len()).ok().filter(|count| 1 < *count)?;
        let (each, deeper) = ((from - to) / count, (from - to) % count);
        let below = |number: u32| from - each * number - number.min(deeper);
        Some(
            (0..count)
                .map(|number| (below(number), below(number + 1)))
                .collect(),
        )
    }

    /// What roughing passes cost; `None` where one is not allowed.
    fn roughing(&self, passes: &[(u32, u32)]) -> Option<f64> {
        let cost = |(from, to): &(u32, u32)| {
            let (setting, _) = self.setting(PassKind::Rough, *from, *to)?;
            Some(setting.cost + self.handling)
        };
        passes.iter().map(cost).sum()
    }

    fn cheapest(&self, last_steps: &[u32]) -> Result<Schedule, Refusal> {
        let closings = self.closings(last_steps);
        let (stock, coarse) = self.stock(&closings);
        let best = self.stages(&stock)?.best(&closings)?;
        if coarse == 1 {
            return Ok(best);
        }
        self.stages(&closely(stock, [&best]))?.best(&closings)
    }

    /// The best row of each number of passes from the fewest to some more than the best.
    pub(super) fn by_count(&self, last_steps: &[u32], more: usize) -> Vec<Schedule> {
        let closings = self.closings(last_steps);
        let (stock, coarse) = self.stock(&closings);
        let search = |stock: &Stock| {
            let stages = self.stages(stock).ok()?;
            let best = stages.best(&closings).ok()?;
            Some(stages.by_count(&closings, 1..=best.count() + more))
        };
        let Some(mut found) = search(&stock) else {
            return Vec::new();
        };
        if 1 < coarse {
            found = search(&closely(stock, &found)).unwrap_or(found);
        }
        found
            .into_iter()
            .map(|schedule| self.evened(&schedule))
            .collect()
    }

    /// The passes of a schedule with their settings.
    pub(super) fn passes(&self, schedule: &Schedule) -> Vec<Found> {
        let rough = roughing_count(schedule);
        schedule
            .passes()
            .enumerate()
            .filter_map(|(number, (from, to))| {
                let kind = if number < rough {
                    PassKind::Rough
                } else {
                    PassKind::Last
                };
                let (setting, pinned) = self.setting(kind, from, to)?;
                Some(Found {
                    kind,
                    from,
                    to,
                    feed: setting.feed,
                    spindle: setting.speed,
                    pinned,
                })
            })
            .collect()
    }

    fn closings(&self, last_steps: &[u32]) -> Vec<Closing> {
        equal_last(0, last_steps, 2, |from, to| {
            let (setting, _) = self.setting(PassKind::Last, from, to)?;
            Some(setting.cost + self.handling)
        })
    }

    /// What is to be taken off, and how coarsely it is looked at first.
    fn stock(&self, closings: &[Closing]) -> (Stock, u32) {
        let start = self.bench.grid.steps;
        let deepest = self.bench.most_steps();
        let coarse = coarsen(start, deepest.max(1), BUDGET);
        let ends: Vec<u32> = closings.iter().map(|closing| closing.from).collect();
        let rungs = ladders(&ends, &[deepest], start);
        let stock = Stock {
            start,
            end: 0,
            most_passes: usize::try_from(Job::MOST_PASSES).unwrap_or(usize::MAX),
            pins: self.pinned.iter().map(|it| it.pin).collect(),
            step: coarse,
            stops: [ends, rungs].concat(),
        };
        (stock, coarse)
    }

    fn stages(&self, stock: &Stock) -> Result<Stages, Refusal> {
        let deepest = self.bench.most_steps();
        Stages::new(
            stock,
            |_| deepest,
            |from, to| {
                let (setting, _) = self.setting(PassKind::Rough, from, to)?;
                Some(setting.cost + self.handling)
            },
        )
    }

    /// Feed and speed of a pass, and whether it is pinned; a pinned one is taken as it is, whatever it breaks.
    fn setting(&self, kind: PassKind, from: u32, to: u32) -> Option<(Setting, bool)> {
        let pinned = self.pinned.iter().find(|it| it.pin == Pin { from, to });
        let pass = self.bench.pass(kind, from, to)?;
        let Some(pinned) = pinned else {
            let least = self.bench.setup.tool.depths.low.to_mm();
            // A first pass may be as thin as it likes: its depth is what the stock stands above the dial.
            let too_thin = kind == PassKind::Rough
                && pass.depth < least * (1.0 - 1e-9)
                && from < self.bench.grid.steps;
            return (!too_thin)
                .then(|| self.chooser.best(&pass))
                .flatten()
                .map(|setting| (setting, false));
        };
        let best = self.chooser.best(&pass);
        let feed = pinned.feed.or(best.map(|it| it.feed));
        let spindle = pinned.spindle.or(best.map(|it| it.speed));
        let feed = feed.unwrap_or(self.bench.law.feeds.first().copied()?);
        let spindle = spindle.unwrap_or(self.bench.setup.lathe.speeds.least());
        let cost = LatheLaw::feeding(&pass, feed, spindle);
        let setting = Setting {
            feed,
            speed: spindle,
            cost,
        };
        Some((setting, true))
    }
}

/// How many passes of a schedule come before the two last cuts.
fn roughing_count(schedule: &Schedule) -> usize {
    let last = usize::try_from(schedule.last_cuts).unwrap_or(0);
    schedule.count().saturating_sub(last)
}

/// The same stock, looked at step by step about what a coarse search found, and nowhere else.
fn closely<'a>(coarse: Stock, found: impl IntoIterator<Item = &'a Schedule>) -> Stock {
    let near = found
        .into_iter()
        .flat_map(|schedule| near(schedule, BESIDE));
    Stock {
        step: u32::MAX,
        stops: near.chain(coarse.stops.iter().copied()).collect(),
        ..coarse
    }
}
