//! What other rows of passes would bring: each number of passes, and each limit widened.

use serde::Serialize;

use super::bench::{Eased, whole_steps};
use super::engine::{Choices, Schedule};
use super::limit::Limit;
use super::passes::{Pass, PassQuestion, StockOff};
use super::planner::Planner;
use super::search::Search;
use super::wear::edges_used;
use crate::quantity::{Money, Time};

/// The best row of one number of passes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CountPoint {
    /// How many passes with the tool, the two last cuts counted.
    pub passes: u32,
    /// How long they take as a rule, setting, returning and measuring counted.
    pub time: Time,
    /// What that time and the edges used up cost; `None` without a rate.
    pub cost: Option<Money>,
    /// Whether it is the row that is planned.
    pub planned: bool,
}

/// What widening one limit would bring.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Saving {
    /// Which limit.
    pub limit: Limit,
    /// How much less time the passes would take.
    pub time: Time,
}

/// By how much a limit is widened to see what that would bring.
pub const WIDENED: f64 = 1.25;

/// How many passes more than the best are looked at.
const MORE: usize = 6;

/// A saving below this is none.
const NOTHING: Time = Time::seconds(0.5);

/// The best row of each number of passes, the fewest first; pinned passes are in each.
///
/// `prices`: what an hour and an edge cost, where both are known.
pub(crate) fn by_count(
    question: &PassQuestion,
    stock: &StockOff,
    prices: Option<(Money, Money)>,
) -> Vec<CountPoint> {
    let Some(planner) = Planner::read(question, &mut Vec::new()) else {
        return Vec::new();
    };
    let bench = planner.bench(planner.edge);
    let Ok(feeds) = Choices::list(bench.law.feeds.iter().copied()) else {
        return Vec::new();
    };
    let pins = planner.pinned(&bench);
    let search = Search::new(&bench, &feeds, &pins);
    let last = whole_steps(stock.last_each / 2.0, bench.grid.step);
    let turned = stock
        .passes
        .iter()
        .filter(|pass| pass.cut.is_some())
        .count();
    let point = |schedule: Schedule| {
        let found = search.passes(&schedule);
        let is_it = schedule.count() == turned;
        let mut passes = planner.report(&bench, &found, &pins);
        if is_it {
            // The row that is planned, and not one as good that this search came by.
            passes.clone_from(&stock.passes);
            passes.retain(|pass| pass.cut.is_some());
        }
        let time = passes.iter().map(|pass| pass.time).sum::<Time>();
        let edges = edges_used(&passes);
        Some(CountPoint {
            passes: u32::try_from(schedule.count()).ok()?,
            time,
            cost: prices.map(|(hour, edge)| hour * (time / Time::minutes(60.0)) + edge * edges),
            planned: is_it,
        })
    };
    search
        .by_count(&[last], MORE)
        .into_iter()
        .filter_map(point)
        .collect()
}

/// What widening each limit that holds a pass back would bring, the most first.
pub(crate) fn savings(question: &PassQuestion, stock: &StockOff) -> Vec<Saving> {
    let Some(planner) = Planner::read(question, &mut Vec::new()) else {
        return Vec::new();
    };
    let time = |stock: &[Pass]| stock.iter().map(|pass| pass.time).sum::<Time>();
    let cuts = stock.passes.iter().filter(|pass| pass.cut.is_some());
    let now: Time = cuts.map(|pass| pass.time).sum();
    let holds = |limit: Limit| {
        let cuts = stock.passes.iter().filter_map(|pass| pass.cut.as_ref());
        cuts.map(|cut| cut.held_by)
            .any(|by| [by.depth, by.feed, by.speed].contains(&Some(limit)))
    };
    let mut savings: Vec<Saving> = Limit::ALL
        .into_iter()
        .filter(|limit| holds(*limit))
        .filter_map(|limit| {
            let passes = planner.eased(Eased { limit, by: WIDENED })?;
            let saved = now - time(&passes);
            (NOTHING < saved).then_some(Saving { limit, time: saved })
        })
        .collect();
    crate::order::by(&mut savings, |one, other| {
        other.time.to_seconds().total_cmp(&one.time.to_seconds())
    });
    savings
}
