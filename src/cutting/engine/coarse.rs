//! How finely depths are told apart, so that the search keeps to its time.

use super::schedule::Schedule;

/// The least whole multiple of the step with which places × depths keep to the budget; ladders and pins come on top.
///
/// `stock_steps`: all that comes off. `most_depth_steps`: the deepest pass. The first pass takes up what is no whole
/// multiple. Never more than the deepest pass, so that a pass is left; then the budget may be missed.
///
/// # Accuracy
/// A hundred random turning jobs of 3 to 24 mm on radius with a dial of 0.01 mm, at a budget of 25 000, with
/// [`ladders`] of the deepest pass: dearer than with all depths by 0.08 % in the mean and 1.4 % at most; after a second
/// search [`near`] the first, with ladders of the deepest pass of each feed, by 0.03 % and 0.4 %. Multiples alone lose
/// up to 10 %, where the deepest pass is none of them and one more pass is needed.
///
/// # Example
/// ```
/// use skimwright::cutting::engine::coarsen;
/// assert_eq!(coarsen(2000, 200, 25_000), 4); // 500 places × 50 depths
/// assert_eq!(coarsen(100, 50, 25_000), 1);
/// ```
pub fn coarsen(stock_steps: u32, most_depth_steps: u32, budget: u32) -> u32 {
    let pairs = |step: u32| {
        let places = stock_steps.div_ceil(step);
        u64::from(places) * u64::from((most_depth_steps / step).min(places))
    };
    let most = most_depth_steps.min(stock_steps).max(1);
    let fits = |step: &u32| pairs(*step) <= u64::from(budget);
    (1..=most).find(fits).unwrap_or(most)
}

/// The places within `radius` steps of where a schedule stops: as the stops of a second search, with every other place
/// left out, they mend what a coarse first search lost.
pub fn near(schedule: &Schedule, radius: u32) -> Vec<u32> {
    let around = |stop: &u32| stop.saturating_sub(radius)..=stop.saturating_add(radius);
    schedule.stops.iter().flat_map(around).collect()
}

/// The places that rows of equally deep passes stop at on their way down to an end.
///
/// `ends`: steps left after such a row, as before last cuts. `depths`: steps of each pass; worth naming are the deepest
/// pass, and the deepest with each feed: the best passes are often exactly so deep, and multiples of a coarse step miss
/// them. `start`: no place is above it. Depths of few steps make long ladders, and gain little.
///
/// # Example
/// ```
/// use skimwright::cutting::engine::ladders;
/// assert_eq!(ladders(&[10], &[30, 50], 100), [10, 40, 70, 100, 10, 60]);
/// ```
pub fn ladders(ends: &[u32], depths: &[u32], start: u32) -> Vec<u32> {
    let pairs = ends
        .iter()
        .flat_map(|end| depths.iter().map(move |depth| (*end, *depth)));
    pairs
        .filter(|(_, depth)| *depth > 0)
        .flat_map(|(end, depth)| (end..=start).step_by(depth as usize))
        .collect()
}

#[cfg(test)]
#[path = "coarse_tests.rs"]
mod tests;
