#![allow(clippy::float_cmp, reason = "exact results are meant")]

use super::*;
use proptest::prelude::*;

/// A law of powers: time and wear, a limit of force, one of power, and one of least speed.
#[derive(Clone, Debug)]
struct Powers {
    wear: f64,
    life_speed: f64,
    life_feed: f64,
    most_force: f64,
    most_power: f64,
    least_built_up: f64,
}

impl Law for Powers {
    /// The depth alone.
    type Pass = f64;
    type Feed = f64;
    type Speed = f64;

    fn feed(&self, feed: f64) -> f64 {
        feed
    }

    fn speed(&self, speed: f64) -> f64 {
        speed
    }

    fn feed_window(&self, depth: &f64) -> Window {
        Window {
            most: (self.most_force / depth).powf(1.0 / 0.75),
            ..Window::ALL
        }
    }

    fn speed_window(&self, depth: &f64, feed: &f64) -> Window {
        Window {
            least: (self.least_built_up / feed).sqrt(),
            most: self.most_power / (depth * feed.powf(0.75)),
        }
    }

    fn ideal_speed(&self, depth: &f64, feed: &f64) -> f64 {
        let wear = self.wear * feed.powf(self.life_feed) * depth.powf(0.75);
        ((self.life_speed - 1.0) * wear).powf(-1.0 / self.life_speed)
    }

    fn least_cost(&self, depth: &f64, feed: &f64) -> f64 {
        if self.life_feed < self.life_speed {
            let wear = 1.0 / (self.life_speed - 1.0);
            (1.0 + wear) / (feed * self.ideal_speed(depth, feed))
        } else {
            f64::NEG_INFINITY
        }
    }

    fn cost(&self, depth: &f64, feed: &f64, speed: &f64) -> f64 {
        let time = 1.0 / (feed * speed);
        let wear = self.wear * feed.powf(self.life_feed) * depth.powf(0.75);
        time * (1.0 + wear * speed.powf(self.life_speed))
    }
}

fn law() -> impl Strategy<Value = Powers> {
    (
        (-16.0..-5.0_f64, 3.0..6.0_f64, 1.1..3.0_f64),
        (0.05..2.0_f64, 5.0..200.0_f64, 10.0..8000.0_f64),
    )
        .prop_map(
            |((wear, life_speed, life_feed), (most_force, most_power, least_built_up))| Powers {
                wear: 10.0_f64.powf(wear),
                life_speed,
                life_feed,
                most_force,
                most_power,
                least_built_up,
            },
        )
}

/// The cheapest of all pairs, by trying each.
fn by_trying(law: &Powers, depth: f64, feeds: &[f64], speeds: &[f64]) -> Option<Setting> {
    let allowed = |feed: f64, speed: f64| {
        law.feed_window(&depth).holds(feed) && law.speed_window(&depth, &feed).holds(speed)
    };
    let pairs = feeds.iter().flat_map(|&feed| {
        speeds
            .iter()
            .filter(move |speed| allowed(feed, **speed))
            .map(move |&speed| Setting {
                feed,
                speed,
                cost: law.cost(&depth, &feed, &speed),
            })
    });
    pairs.reduce(cheaper)
}

/// Values in equal ratios, both ends included.
fn ratios(least: f64, most: f64, count: u32) -> Vec<f64> {
    (0..count)
        .map(|number| least * (most / least).powf(f64::from(number) / f64::from(count - 1)))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn lists_give_the_cheapest_of_all_pairs(
        law in law(),
        depth in 0.2..4.0_f64,
        feeds in proptest::collection::vec(0.03..1.0_f64, 1..12),
        speeds in proptest::collection::vec(5.0..500.0_f64, 1..25),
    ) {
        let offered = |list: &[f64]| Choices::list(list.iter().copied()).unwrap();
        let best = best_setting(&law, &depth, &offered(&feeds), &offered(&speeds));
        let tried = by_trying(&law, depth, &feeds, &speeds);
        prop_assert_eq!(best.map(|best| best.cost), tried.map(|tried| tried.cost));
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(150))]

    /// Against 600 × 300 pairs: never dearer than the best of them, and not much cheaper, which the grid's own
    /// coarseness bounds.
    #[test]
    fn ranges_give_no_more_than_the_best_of_a_dense_grid(law in law(), depth in 0.2..4.0_f64) {
        let feeds = Choices::range(0.05, 0.9).unwrap();
        let speeds = Choices::range(20.0, 400.0).unwrap();
        let best = best_setting(&law, &depth, &feeds, &speeds);
        let tried = by_trying(&law, depth, &ratios(0.05, 0.9, 600), &ratios(20.0, 400.0, 300));
        match (best, tried) {
            (Some(best), Some(tried)) => {
                prop_assert!(best.cost <= tried.cost * (1.0 + 1e-6), "{best:?} {tried:?}");
                prop_assert!(law.feed_window(&depth).holds(best.feed));
                prop_assert!(law.speed_window(&depth, &best.feed).holds(best.speed));
            }
            (None, Some(tried)) => prop_assert!(false, "missed {tried:?}"),
            // A gap between the limits may be narrower than the grid.
            (_, None) => {}
        }
    }

    /// At each listed speed there is one valley over the feeds, so that a dense grid of feeds is never cheaper.
    #[test]
    fn free_feeds_with_listed_speeds_are_searched_speed_by_speed(
        law in law(),
        depth in 0.2..4.0_f64,
        speeds in proptest::collection::vec(20.0..400.0_f64, 1..8),
    ) {
        let offered = Choices::list(speeds.iter().copied()).unwrap();
        let best = best_setting(&law, &depth, &Choices::range(0.05, 0.9).unwrap(), &offered);
        if let Some(tried) = by_trying(&law, depth, &ratios(0.05, 0.9, 4000), &speeds) {
            let best = best.unwrap();
            prop_assert!(best.cost <= tried.cost * (1.0 + 1e-6), "{best:?} {tried:?}");
            prop_assert!(law.speed_window(&depth, &best.feed).holds(best.speed));
        }
    }
}

const PLAIN: Powers = Powers {
    wear: 1e-12,
    life_speed: 5.0,
    life_feed: 1.75,
    most_force: 10.0,
    most_power: 1e6,
    least_built_up: 1e-3,
};

/// Without limits the speed is the ideal one, as the derivative gives it.
#[test]
fn a_free_speed_without_limits_is_the_ideal_one() {
    let feeds = Choices::list([0.2]).unwrap();
    let best = best_setting(&PLAIN, &1.0, &feeds, &Choices::range(1.0, 1e6).unwrap()).unwrap();
    assert_eq!(best.speed, PLAIN.ideal_speed(&1.0, &0.2));
    // (p − 1) · wear = 1 in the cost-optimal life.
    let wear = PLAIN.cost(&1.0, &0.2, &best.speed) * 0.2 * best.speed - 1.0;
    assert!((wear * 4.0 - 1.0).abs() < 1e-12, "{wear}");
}

#[test]
fn what_no_speed_allows_is_no_setting() {
    let law = Powers {
        most_power: 1e-3,
        ..PLAIN
    };
    let (feeds, free_feeds) = (
        Choices::list([0.2]).unwrap(),
        Choices::range(0.1, 0.3).unwrap(),
    );
    let (speeds, free_speeds) = (
        Choices::list([50.0]).unwrap(),
        Choices::range(20.0, 90.0).unwrap(),
    );
    for feeds in [&feeds, &free_feeds] {
        for speeds in [&speeds, &free_speeds] {
            assert_eq!(best_setting(&law, &1.0, feeds, speeds), None);
        }
    }
}

/// Where faster is always cheaper, the fastest allowed is taken.
#[test]
fn an_endless_ideal_speed_takes_the_fastest() {
    let law = Powers { wear: 0.0, ..PLAIN };
    assert_eq!(law.ideal_speed(&1.0, &0.2), f64::INFINITY);
    let feeds = Choices::list([0.2]).unwrap();
    let listed = Choices::list([50.0, 80.0, 120.0]).unwrap();
    let free = Choices::range(50.0, 120.0).unwrap();
    for speeds in [listed, free] {
        let best = best_setting(&law, &1.0, &feeds, &speeds).unwrap();
        assert_eq!(best.speed, 120.0);
    }
}
