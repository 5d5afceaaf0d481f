//! The published multi-pass turning problem, charged pass by pass, with roughing passes that need not be equal: dynamic
//! programming over all depths to a tenth of a millimetre, the finishing pass as a last cut.

use std::ops::RangeInclusive;

use skimwright::cutting::engine::{
    Choices, Chooser, Closing, Schedule, Stages, Stock, Window, equal_last,
};

use super::multipass::{Charge, FEEDS, LIVES, MultiPass, Multipass, RATIOS, SPEEDS, idle_cost};
use super::multipass_search::most_rough_feed;

/// The least and the most depth, in tenths of a millimetre.
const LEAST: u32 = 10;
const MOST: u32 = 30;

/// The cheapest for each number of passes in all; places in tenths of a millimetre.
///
/// A pass is the cheaper the coarser its feed, so the finishing feed stands at its own limit, or where the roughing feed
/// of some depth, at the limit of force, holds it: these few feeds are tried.
pub(crate) fn free_depths(total: u32, counts: RangeInclusive<usize>) -> Vec<Schedule> {
    let mut cheapest: Vec<Schedule> = Vec::new();
    let pairs = (LEAST..=MOST).flat_map(|held| (LEAST..=MOST).map(move |finish| (held, finish)));
    let found = pairs.filter_map(|(held, finish)| {
        let feed = most_rough_feed(millimetres(held)) / RATIOS.1;
        let (stages, closings) = stages(total, feed, finish)?;
        Some(stages.by_count(&closings, counts.clone()))
    });
    for mut found in found.flatten() {
        found.cost += idle_cost(0);
        let same = |known: &&mut Schedule| known.count() == found.count();
        match cheapest.iter_mut().find(same) {
            Some(known) if known.cost <= found.cost => {}
            Some(known) => *known = found,
            None => cheapest.push(found),
        }
    }
    cheapest
}

/// With a finishing feed of at most `feed`, and a finishing pass so deep, no deeper than any roughing pass.
fn stages(total: u32, feed: f64, finish: u32) -> Option<(Stages, Vec<Closing>)> {
    let law = Multipass {
        charge: Charge::PassByPass,
    };
    let feeds = Choices::range(FEEDS.0, FEEDS.1).ok()?;
    let speeds = Choices::range(SPEEDS.0, SPEEDS.1).ok()?;
    let chooser = Chooser::new(&law, &feeds, &speeds);
    let own = idle_cost(1) - idle_cost(0);
    let cost = |pass: &MultiPass| Some(chooser.best(pass)?.cost + own);
    let pass = |depth, feeds| MultiPass::new(millimetres(depth), LIVES, feeds, Window::ALL);
    let coarse = Window {
        least: RATIOS.1 * feed,
        ..Window::ALL
    };
    let fine = Window {
        most: feed,
        ..Window::ALL
    };
    let rough = |depth| cost(&pass(depth, coarse)).filter(|_| finish <= depth);
    let by_depth: Vec<Option<f64>> = (0..=MOST).map(rough).collect();
    let last = cost(&pass(finish, fine).finishing());
    let closings = equal_last(0, &[finish], 1, |_, _| last);
    let stock = Stock {
        start: 10 * total,
        end: 0,
        most_passes: 200,
        pins: vec![],
        step: 1,
        stops: vec![],
    };
    let found = |from, to| by_depth.get((from - to) as usize).copied().flatten();
    Some((Stages::new(&stock, |_| MOST, found).ok()?, closings))
}

fn millimetres(tenths: u32) -> f64 {
    f64::from(tenths) / 10.0
}
