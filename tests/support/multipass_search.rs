//! The published multi-pass turning problem solved by the engine: what couples roughing and finishing is searched
//! outside, the rest inside.
#![allow(
    dead_code,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "each program that includes this file uses some of it; depths are small and above zero"
)]

use skimwright::cutting::engine::{Choices, Chooser, Setting, Tried, Window, least_between};

use super::multipass::{
    Charge, DEPTHS, FEEDS, FORCE, LIVES, MultiPass, Multipass, RATIOS, SPEEDS, cutting_time,
    edge_cost, idle_cost, tool_life,
};

/// How the wear is charged in the whole problem.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Objective {
    /// Pass by pass.
    PassByPass,
    /// All cutting by one life: so much of the roughing edge's and the rest of the finishing edge's.
    Weighted(f64),
}

/// A pass as it was planned: depth, feed, speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Cut {
    pub(crate) depth: f64,
    pub(crate) feed: f64,
    pub(crate) speed: f64,
}

/// Equal roughing passes and a finishing pass.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Solution {
    pub(crate) count: u32,
    pub(crate) rough: Cut,
    pub(crate) finish: Cut,
    pub(crate) cost: f64,
}

/// Depths are told apart so finely: a third of a millimetre is among them, which the best of 8 mm needs.
const STEPS_PER_MM: u32 = 300;

/// The distance of the depths that are tried first.
const SPREAD: usize = 12;

fn depth(steps: u32) -> f64 {
    f64::from(steps) / f64::from(STEPS_PER_MM)
}

fn steps(depth: f64) -> u32 {
    (depth * f64::from(STEPS_PER_MM)).round() as u32
}

/// What the objective makes of a schedule.
pub(crate) fn cost(objective: Objective, count: u32, rough: &Cut, finish: &Cut) -> f64 {
    let times = [
        f64::from(count) * cutting_time(rough.feed, rough.speed),
        cutting_time(finish.feed, finish.speed),
    ];
    let lives = [rough, finish].map(|cut| tool_life(cut.depth, cut.feed, cut.speed));
    let time = times[0] + times[1];
    let edges = match objective {
        Objective::PassByPass => times[0] / lives[0] + times[1] / lives[1],
        Objective::Weighted(share) => time / (share * lives[0] + (1.0 - share) * lives[1]),
    };
    super::multipass::PRICES.0 * time + edge_cost() * edges + idle_cost(count + 1)
}

/// The best for every number of roughing passes from one to five that can be had.
pub(crate) fn by_count(total: f64, objective: Objective) -> Vec<Solution> {
    (1..=5)
        .filter_map(|count| best_of_count(total, objective, count))
        .collect()
}

/// The best of all.
pub(crate) fn best(total: f64, objective: Objective) -> Option<Solution> {
    by_count(total, objective)
        .into_iter()
        .min_by(|one, other| one.cost.total_cmp(&other.cost))
}

/// The best with so many equal roughing passes: among depths at some distance first, then among those around the best.
///
/// Lives are searched coarsely for every pair of depths, and finely for the best.
fn best_of_count(total: f64, objective: Objective, count: u32) -> Option<Solution> {
    let pairs = depth_pairs(steps(total), count);
    let cheapest = |zooms, pairs: &[(u32, u32)]| {
        let solved = pairs
            .iter()
            .enumerate()
            .filter_map(|(number, (rough, finish))| {
                let depths = [depth(*rough), depth(*finish)];
                Some((number, best_of_depths(objective, count, depths, zooms)?))
            });
        solved.min_by(|one, other| one.1.cost.total_cmp(&other.1.cost))
    };
    let last = pairs.last().copied();
    let spread: Vec<_> = pairs.iter().copied().step_by(SPREAD).chain(last).collect();
    let middle = cheapest(1, &spread)?.0 * SPREAD;
    let around = middle.saturating_sub(SPREAD)..(middle + SPREAD).min(pairs.len());
    let near = pairs.get(around)?;
    let best = cheapest(1, near)?.0;
    Some(cheapest(7, near.get(best..=best)?)?.1)
}

/// The depths in steps that so many equal roughing passes and a finishing pass may have.
fn depth_pairs(total: u32, count: u32) -> Vec<(u32, u32)> {
    let (least, most) = (steps(DEPTHS.0), steps(DEPTHS.1));
    let pair = |finish| {
        let rest = total.checked_sub(finish)?;
        let rough = rest / count;
        let fits = rest.is_multiple_of(count) && (least..=most).contains(&rough);
        (fits && f64::from(rough) >= RATIOS.2 * f64::from(finish)).then_some((rough, finish))
    };
    (least..=most).filter_map(pair).collect()
}

/// Parts of each life's window in one look.
const PARTS: u32 = 4;

/// With given depths: an outer search over the least lives of the two edges, where the objective needs it.
///
/// At the best lives of all, the least times under these lives cost no more than the best of all: so the search over
/// lives misses nothing but its own fineness.
fn best_of_depths(
    objective: Objective,
    count: u32,
    [rough, finish]: [f64; 2],
    zooms: u32,
) -> Option<Solution> {
    let Objective::Weighted(share) = objective else {
        return coupled(
            objective,
            Charge::PassByPass,
            count,
            [(rough, LIVES), (finish, LIVES)],
        );
    };
    let mut around = [LIVES, LIVES];
    let mut best: Option<(Solution, [f64; 2])> = None;
    for _ in 0..zooms {
        let at = |window: Window, part: u32| {
            window.least + (window.most - window.least) * f64::from(part) / f64::from(PARTS)
        };
        for parts in
            (0..(PARTS + 1) * (PARTS + 1)).map(|both| [both / (PARTS + 1), both % (PARTS + 1)])
        {
            let lives = [at(around[0], parts[0]), at(around[1], parts[1])];
            let charge = Charge::Life(share * lives[0] + (1.0 - share) * lives[1]);
            let from = |least| Window { least, ..LIVES };
            let passes = [(rough, from(lives[0])), (finish, from(lives[1]))];
            let found = coupled(objective, charge, count, passes);
            if let Some(found) =
                found.filter(|found| best.as_ref().is_none_or(|best| found.cost < best.0.cost))
            {
                best = Some((found, lives));
            }
        }
        let centre = best.as_ref()?.1;
        for (window, centre) in around.iter_mut().zip(centre) {
            let part = (window.most - window.least) / f64::from(PARTS);
            *window = Window {
                least: centre - part,
                most: centre + part,
            }
            .and(LIVES);
        }
    }
    best.map(|best| best.0)
}

/// Roughing and finishing with what couples their feeds and speeds.
///
/// First each by itself: where that keeps to the couplings it is the best. Else the feeds are held apart by a feed
/// between them, and the speeds by a speed between them, for which the best is searched. In logarithms all of it is
/// convex, and stays so when one after the other is chosen for the best.
fn coupled(
    objective: Objective,
    charge: Charge,
    count: u32,
    passes: [(f64, Window); 2],
) -> Option<Solution> {
    let law = Multipass { charge };
    let feeds = Choices::range(FEEDS.0, FEEDS.1).ok()?;
    let speeds = Choices::range(SPEEDS.0, SPEEDS.1).ok()?;
    let chooser = Chooser::new(&law, &feeds, &speeds);
    let search = Search {
        objective,
        chooser,
        count,
        passes,
    };
    let free = search.both(None, None);
    if free.as_ref().is_none_or(keeps_to_ratios) {
        return free;
    }
    let most = most_rough_feed(passes[0].0);
    let between = Window {
        least: FEEDS.0,
        most: most / RATIOS.1,
    };
    let by_feed = |speed| best_between(between, |feed| search.both(Some(feed), speed));
    let by_feed_alone = by_feed(None);
    if by_feed_alone.as_ref().is_none_or(keeps_to_ratios) {
        return by_feed_alone;
    }
    let between = Window {
        least: SPEEDS.0,
        most: SPEEDS.1,
    };
    best_between(between, |speed| by_feed(Some(speed)))
}

fn best_between(window: Window, mut at: impl FnMut(f64) -> Option<Solution>) -> Option<Solution> {
    let tried = |value| {
        let what = at(value);
        let cost = what.as_ref().map_or(f64::INFINITY, |found| found.cost);
        Tried {
            miss: 0.0,
            cost,
            what,
        }
    };
    least_between(window, tried)?.allowed()?
}

fn keeps_to_ratios(solution: &Solution) -> bool {
    let Solution { rough, finish, .. } = solution;
    rough.feed >= RATIOS.1 * finish.feed && finish.speed >= RATIOS.0 * rough.speed
}

struct Search<'a> {
    objective: Objective,
    chooser: Chooser<'a, Multipass>,
    count: u32,
    /// Depth and lives of roughing and finishing.
    passes: [(f64, Window); 2],
}

impl Search<'_> {
    /// Both kinds of pass, with the finishing feed below and the roughing feed above what the first argument asks, and
    /// the speeds below and above the second.
    fn both(&self, feed: Option<f64>, speed: Option<f64>) -> Option<Solution> {
        let below = |most: Option<f64>| Window {
            most: most.unwrap_or(f64::INFINITY),
            ..Window::ALL
        };
        let above = |least: Option<f64>| Window {
            least: least.unwrap_or(0.0),
            ..Window::ALL
        };
        let [(rough, rough_lives), (finish, finish_lives)] = self.passes;
        let coarse = above(feed.map(|feed| RATIOS.1 * feed));
        let fast = above(speed.map(|speed| RATIOS.0 * speed));
        let rough_pass = MultiPass::new(rough, rough_lives, coarse, below(speed));
        let finish_pass = MultiPass::new(finish, finish_lives, below(feed), fast).finishing();
        let set = |depth: f64, setting: Setting| Cut {
            depth,
            feed: setting.feed,
            speed: setting.speed,
        };
        let rough = set(rough, self.chooser.best(&rough_pass)?);
        let finish = set(finish, self.chooser.best(&finish_pass)?);
        let cost = cost(self.objective, self.count, &rough, &finish);
        Some(Solution {
            count: self.count,
            rough,
            finish,
            cost,
        })
    }
}

/// The roughing feed at the limit of force.
pub(crate) fn most_rough_feed(depth: f64) -> f64 {
    (FORCE.3 / (FORCE.0 * depth.powf(FORCE.2)))
        .powf(1.0 / FORCE.1)
        .min(FEEDS.1)
}
