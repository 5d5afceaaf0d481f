//! The engine against a published problem of multi-pass turning whose best answer is known.
//!
//! The problem and its sources stand in `tests/support/multipass.rs`. Wanted costs were computed apart from the engine,
//! with scipy 1.17.1: differential evolution, then SLSQP from twenty starts for each number of passes; that of 6 mm
//! charged pass by pass is proven besides, by geometric programming (2.082560789). Not used are published bests below
//! them: 2.0460 for 6 mm leaves the finishing pass out of the edge changes, and lower ones break the limit of force,
//! as the last tests show.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/multipass.rs"]
mod multipass;
#[path = "support/multipass_depths.rs"]
mod multipass_depths;
#[path = "support/multipass_search.rs"]
mod multipass_search;

use multipass::{
    DEPTHS, EFFICIENCY, FEEDS, FORCE, HEAT, LIVES, MOST_POWER, MOST_ROUGHNESS, NOSE_RADIUS, RATIOS,
    SPEEDS, STABLE, tool_life,
};
use multipass_depths::free_depths;
use multipass_search::Objective::{PassByPass, Weighted};
use multipass_search::{Cut, Solution, best, by_count, cost};

/// Every limit as the quantity that must not be above one.
fn limits(Solution { rough, finish, .. }: &Solution) -> Vec<(&'static str, f64)> {
    let mut limits = vec![
        (
            "roughness",
            finish.feed.powi(2) / (8.0 * NOSE_RADIUS) / MOST_ROUGHNESS,
        ),
        ("ratio of speeds", RATIOS.0 * rough.speed / finish.speed),
        ("ratio of feeds", RATIOS.1 * finish.feed / rough.feed),
        ("ratio of depths", RATIOS.2 * finish.depth / rough.depth),
    ];
    for Cut { depth, feed, speed } in [*rough, *finish] {
        let life = tool_life(depth, feed, speed);
        let force = FORCE.0 * feed.powf(FORCE.1) * depth.powf(FORCE.2);
        let power = force * speed / (6120.0 * EFFICIENCY);
        let stable = speed.powf(STABLE.0) * feed * depth.powf(STABLE.1);
        let heat = HEAT.0 * speed.powf(HEAT.1) * feed.powf(HEAT.2) * depth.powf(HEAT.3);
        limits.extend([
            ("shortest life", LIVES.least / life),
            ("longest life", life / LIVES.most),
            ("force", force / FORCE.3),
            ("power", power / MOST_POWER),
            ("stable cutting", STABLE.2 / stable),
            ("temperature", heat / HEAT.4),
        ]);
        for (value, (least, most)) in [(depth, DEPTHS), (feed, FEEDS), (speed, SPEEDS)] {
            limits.extend([("least", least / value), ("most", value / most)]);
        }
    }
    limits
}

#[track_caller]
fn assert_as_good(found: &Solution, total: f64, wanted: f64) {
    let taken = f64::from(found.count) * found.rough.depth + found.finish.depth;
    assert!((taken - total).abs() < 1e-9, "{found:?}");
    let gap = found.cost / wanted - 1.0;
    // Depths are told apart by steps, so a little dearer than the continuous best is right.
    assert!(
        -1e-6 < gap && gap < 5e-4,
        "gap {gap:.2e}: {found:?}, wanted {wanted}"
    );
    for (name, limit) in limits(found) {
        assert!(limit <= 1.0 + 1e-6, "{name} {limit}: {found:?}");
    }
}

#[test]
fn the_proven_best_of_6_mm_is_found() {
    let found = best(6.0, PassByPass).unwrap();
    assert_as_good(&found, 6.0, 2.082_560_789);
    assert_eq!(found.count, 1);
    assert!((found.cost / 2.082_560_789 - 1.0).abs() < 1e-9, "{found:?}");
    // The life of least cost is (p − 1) · (change + price of an edge ÷ price of a minute) = 4 · 6.5 min.
    for Cut { depth, feed, speed } in [found.rough, found.finish] {
        assert!((tool_life(depth, feed, speed) - 26.0).abs() < 1e-9);
    }
}

#[test]
fn the_full_objective_is_met_for_every_weight_and_stock() {
    // Total depth, weight of the roughing edge's life, roughing passes, cost.
    let rows = [
        (6.0, 0.0, 1, 2.060_038_3),
        (6.0, 0.2, 1, 2.073_452_7),
        (6.0, 0.4, 1, 2.073_232_3),
        (6.0, 0.5, 1, 2.062_059_1),
        (6.0, 0.8, 1, 2.035_079_8),
        (6.0, 1.0, 1, 2.021_090_5),
        (8.0, 0.0, 2, 2.532_746_9),
        (8.0, 0.2, 2, 2.549_896_6),
        (8.0, 0.4, 2, 2.570_754_2),
        (8.0, 0.5, 2, 2.582_968_4),
        (8.0, 0.8, 2, 2.557_988_9),
        (8.0, 1.0, 2, 2.540_740_8),
        (10.0, 0.0, 3, 3.026_667_1),
        (10.0, 0.2, 3, 3.046_758_6),
        (10.0, 0.4, 3, 3.071_194_3),
        (10.0, 0.5, 3, 3.085_506_7),
        (10.0, 0.8, 3, 3.094_266_2),
        (10.0, 1.0, 3, 3.074_452_9),
    ];
    for (total, weight, count, wanted) in rows {
        let found = best(total, Weighted(weight)).unwrap();
        println!("{total} {weight}: {:.6} against {wanted:.6}", found.cost);
        assert_eq!(found.count, count, "{found:?}");
        assert_as_good(&found, total, wanted);
    }
}

#[test]
fn the_best_of_every_number_of_passes_is_found() {
    // Total depth, objective, roughing passes, cost.
    let rows = [
        (6.0, PassByPass, 1, 2.082_560_8),
        (6.0, PassByPass, 2, 2.320_429_5),
        (6.0, PassByPass, 3, 2.792_863_2),
        (6.0, PassByPass, 4, 3.287_271_2),
        (6.0, PassByPass, 5, 3.772_768_2),
        (6.0, Weighted(0.5), 1, 2.062_059_1),
        (6.0, Weighted(0.5), 2, 2.319_224_3),
        (6.0, Weighted(0.5), 3, 2.773_265_1),
        (6.0, Weighted(0.5), 4, 3.253_586_3),
        (6.0, Weighted(0.5), 5, 3.725_520_8),
        (8.0, PassByPass, 2, 2.587_310_5),
        (8.0, PassByPass, 3, 2.869_389_8),
        (8.0, PassByPass, 4, 3.344_402_0),
        (8.0, PassByPass, 5, 3.841_831_0),
        (8.0, Weighted(0.5), 2, 2.582_968_4),
        (8.0, Weighted(0.5), 3, 2.850_854_0),
        (8.0, Weighted(0.5), 4, 3.307_355_5),
        (8.0, Weighted(0.5), 5, 3.790_519_9),
        (10.0, PassByPass, 3, 3.110_550_3),
        (10.0, PassByPass, 4, 3.418_202_0),
        (10.0, PassByPass, 5, 3.895_737_0),
        (10.0, Weighted(0.5), 3, 3.085_506_7),
        (10.0, Weighted(0.5), 4, 3.381_912_1),
        (10.0, Weighted(0.5), 5, 3.841_254_1),
    ];
    let mut found = [6.0, 8.0, 10.0]
        .into_iter()
        .flat_map(|total| [PassByPass, Weighted(0.5)].map(|objective| (total, objective)))
        .flat_map(|(total, objective)| by_count(total, objective));
    for (total, objective, count, wanted) in rows {
        let found = found.next().unwrap();
        println!(
            "{total} {objective:?}: {:.6} against {wanted:.6}",
            found.cost
        );
        assert_eq!(found.count, count);
        assert_as_good(&found, total, wanted);
    }
    assert_eq!(found.next(), None);
}

/// Roughing passes need not be equal: dynamic programming against all 1896 rows of depths in tenths of a millimetre
/// with these numbers of passes, each solved by SLSQP for feeds and speeds together.
#[test]
fn the_best_row_of_unequal_depths_is_found() {
    // Total depth, stops of the best row in tenths, its cost.
    let rows: [(u32, &[u32], f64); 6] = [
        (6, &[60, 30, 0], 2.082_560_788_5),
        (6, &[60, 40, 20, 0], 2.324_233_031_4),
        (8, &[80, 53, 26, 0], 2.600_983_236_3),
        (8, &[80, 59, 38, 17, 0], 2.875_060_680_1),
        (10, &[100, 75, 50, 25, 0], 3.110_550_318_8),
        (10, &[100, 79, 58, 37, 16, 0], 3.425_566_767_9),
    ];
    for (total, stops, wanted) in rows {
        let count = stops.len() - 1;
        let found = free_depths(total, count..=count);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].stops, stops, "{found:?}");
        let gap = found[0].cost / wanted - 1.0;
        assert!(
            gap.abs() < 1e-6,
            "gap {gap:.1e}: {found:?}, wanted {wanted}"
        );
    }
}

fn published(rough: (f64, f64), finish: (f64, f64)) -> Solution {
    let cut = |(speed, feed)| Cut {
        depth: 3.0,
        feed,
        speed,
    };
    let (rough, finish) = (cut(rough), cut(finish));
    let cost = cost(Weighted(0.5), 1, &rough, &finish);
    Solution {
        count: 1,
        rough,
        finish,
        cost,
    }
}

/// The point that is usually given as the best of 6 mm, with a cost of 2.0460, keeps to all limits; but the objective
/// makes 2.0827 of it.
#[test]
fn the_usual_best_costs_more_than_it_says() {
    let usual = published((123.3424, 0.5655), (169.9783, 0.2262));
    assert!((usual.cost - 2.0827).abs() < 5e-5, "{usual:?}");
    assert!(limits(&usual).iter().all(|(_, limit)| *limit <= 1.0 + 1e-6));
    assert!(best(6.0, Weighted(0.5)).unwrap().cost < usual.cost);
}

/// A point that is often copied breaks the limit of force by more than a third.
#[test]
fn a_copied_best_breaks_the_force_limit() {
    let copied = published((94.464, 0.866), (162.289, 0.258));
    let force = limits(&copied)
        .into_iter()
        .find(|(name, _)| *name == "force")
        .unwrap();
    assert!((force.1 - 1.38).abs() < 0.005, "{force:?}");
}
