//! Equal last cuts: the first shows what the next will do, since all of them spring the work and the tool alike.

use super::schedule::Closing;

/// The closings of `cuts` equal last cuts, one for each depth that they may have.
///
/// `end`: steps left after the last cut. `depths`: steps that each cut may take off. `cuts`: how many; one or two as a
/// rule. `cost`: of the cut from so many steps left to so many; `None` where it is not allowed, and then that depth is
/// left out.
///
/// Their places must be among the stops of the [`Stock`](super::Stock); [`Stages::best`](super::Stages::best) then
/// chooses depth and passes before together, in one search for all depths, since what the passes before cost does not
/// depend on what the last cuts do with their place.
///
/// # Example
/// Twenty steps come off in passes of at most eight, the last two of them alike. A pass costs 1, and a last cut the
/// more the further its depth is from three steps.
/// ```
/// use skimwright::cutting::engine::{Stages, Stock, equal_last};
///
/// let closings = equal_last(0, &[1, 2, 3, 4], 2, |from, to| Some(1.0 + f64::from((from - to).abs_diff(3))));
/// let stock = Stock {
///     start: 20,
///     end: 0,
///     most_passes: 200,
///     pins: vec![],
///     step: 1,
///     stops: closings.iter().map(|closing| closing.from).collect(),
/// };
/// let best = Stages::new(&stock, |_| 8, |_, _| Some(1.0))?.best(&closings)?;
/// assert_eq!(best.stops, [20, 13, 6, 3, 0]);
/// assert_eq!(best.cost, 4.0);
/// # Ok::<(), skimwright::cutting::engine::Refusal>(())
/// ```
pub fn equal_last(
    end: u32,
    depths: &[u32],
    cuts: u32,
    mut cost: impl FnMut(u32, u32) -> Option<f64>,
) -> Vec<Closing> {
    let closing = |depth: &u32| {
        let from = end.checked_add(depth.checked_mul(cuts)?)?;
        let after = (0..cuts).map(|cut| from - cut * depth);
        let costs = after.map(|before| cost(before, before - depth));
        let cost = costs.sum::<Option<f64>>()?;
        Some(Closing { from, cuts, cost })
    };
    let taking = depths.iter().filter(|depth| **depth > 0 && cuts > 0);
    taking.filter_map(closing).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_depth_is_one_closing() {
        let closings = equal_last(10, &[0, 1, 3, 5], 2, |from, to| {
            (from - to < 5).then(|| f64::from(from))
        });
        let wanted = [
            Closing {
                from: 12,
                cuts: 2,
                cost: 23.0,
            },
            Closing {
                from: 16,
                cuts: 2,
                cost: 29.0,
            },
        ];
        assert_eq!(closings, wanted);
        assert_eq!(equal_last(0, &[2], 0, |_, _| Some(1.0)), []);
    }
}
