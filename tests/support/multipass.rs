//! The published multi-pass turning problem: `n` equal roughing passes and one finishing pass, as a law for the engine.
//!
//! Source: data and limits as first given in "A simulated annealing approach for optimization of multi-pass turning
//! operations", International Journal of Production Research 34(10), 1996, 2803–2825 (numbers from memory); objective
//! after "Optimization of machining parameters using estimation of distribution algorithms". Units as there: m/min,
//! mm/rev, mm, kgf, kW, °C, min, dollars a piece.
#![allow(
    dead_code,
    reason = "each program that includes this file uses some of it"
)]

use std::f64::consts::PI;

use skimwright::cutting::engine::{Law, Window};

pub(crate) const DIAMETER: f64 = 50.0;
pub(crate) const LENGTH: f64 = 300.0;
/// Taylor's factor and exponents of speed, feed and depth.
pub(crate) const LIFE: (f64, f64, f64, f64) = (6e11, 5.0, 1.75, 0.75);
pub(crate) const LIVES: Window = Window {
    least: 25.0,
    most: 45.0,
};
pub(crate) const SPEEDS: (f64, f64) = (50.0, 500.0);
pub(crate) const FEEDS: (f64, f64) = (0.1, 0.9);
pub(crate) const DEPTHS: (f64, f64) = (1.0, 3.0);
/// Force: factor, exponents of feed and depth, most.
pub(crate) const FORCE: (f64, f64, f64, f64) = (108.0, 0.75, 0.95, 200.0);
pub(crate) const EFFICIENCY: f64 = 0.85;
pub(crate) const MOST_POWER: f64 = 5.0;
/// Stable cutting: exponents of speed and depth, least.
pub(crate) const STABLE: (f64, f64, f64) = (2.0, -1.0, 140.0);
/// Temperature: factor, exponents of speed, feed and depth, most.
pub(crate) const HEAT: (f64, f64, f64, f64, f64) = (132.0, 0.4, 0.2, 0.105, 1000.0);
pub(crate) const NOSE_RADIUS: f64 = 1.2;
pub(crate) const MOST_ROUGHNESS: f64 = 0.010;
/// A minute; an edge.
pub(crate) const PRICES: (f64, f64) = (0.5, 2.5);
/// Minutes of travel: a millimetre of length, a pass.
pub(crate) const TRAVEL: (f64, f64) = (7e-4, 0.3);
/// Minutes of loading, and of changing an edge.
pub(crate) const LOAD: f64 = 0.75;
pub(crate) const EDGE_CHANGE: f64 = 1.5;
/// Least ratios: finishing speed to roughing speed, roughing feed to finishing feed, roughing depth to finishing depth.
pub(crate) const RATIOS: (f64, f64, f64) = (1.0, 2.5, 1.0);

/// What an edge costs: its price and the time of changing it.
pub(crate) fn edge_cost() -> f64 {
    PRICES.0 * EDGE_CHANGE + PRICES.1
}

/// What is paid for loading and travel.
pub(crate) fn idle_cost(passes: u32) -> f64 {
    let travel = TRAVEL.0 * LENGTH + TRAVEL.1;
    PRICES.0 * (LOAD + travel * f64::from(passes))
}

pub(crate) fn cutting_time(feed: f64, speed: f64) -> f64 {
    PI * DIAMETER * LENGTH / (1000.0 * speed * feed)
}

pub(crate) fn tool_life(depth: f64, feed: f64, speed: f64) -> f64 {
    let (factor, of_speed, of_feed, of_depth) = LIFE;
    factor / (speed.powf(of_speed) * feed.powf(of_feed) * depth.powf(of_depth))
}

/// How the wear of the edge is charged.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Charge {
    /// Each pass for the share of the edge's life that it uses up.
    PassByPass,
    /// The same for every minute of cutting, as if the edge lived so long whatever the pass.
    Life(f64),
}

/// The law of the problem for cutting alone: what is idle is the same for every feed and speed.
pub(crate) struct Multipass {
    pub(crate) charge: Charge,
}

/// A pass, with the limits that other passes set to it, and what its depth alone makes of all limits: the speeds are
/// those at a feed of one.
pub(crate) struct MultiPass {
    feeds: Window,
    speeds: Window,
    life: f64,
    of_lives: Window,
    ideal: f64,
    force: f64,
    stable: f64,
    hot: f64,
}

impl MultiPass {
    pub(crate) fn new(depth: f64, lives: Window, feeds: Window, speeds: Window) -> Self {
        let of_depth = depth.powf(LIFE.3);
        let force = FORCE.0 * depth.powf(FORCE.2);
        let forced = Window {
            most: (FORCE.3 / force).powf(1.0 / FORCE.1),
            ..Window::ALL
        };
        let of_life = |life: f64| (LIFE.0 / (life * of_depth)).powf(1.0 / LIFE.1);
        Self {
            feeds: feeds.and(forced),
            speeds,
            life: of_depth,
            of_lives: Window {
                least: of_life(lives.most),
                most: of_life(lives.least),
            },
            // The life of least cost, from the derivative of a pass's own cost.
            ideal: of_life((LIFE.1 - 1.0) * edge_cost() / PRICES.0),
            force,
            stable: (STABLE.2 / depth.powf(STABLE.1)).powf(1.0 / STABLE.0),
            hot: (HEAT.4 / (HEAT.0 * depth.powf(HEAT.3))).powf(1.0 / HEAT.1),
        }
    }

    /// A finishing pass: the theoretical roughness limits its feed besides.
    pub(crate) fn finishing(mut self) -> Self {
        let most = (8.0 * NOSE_RADIUS * MOST_ROUGHNESS).sqrt();
        self.feeds.most = self.feeds.most.min(most);
        self
    }
}

/// A feed with its powers: in life and force, and by what it divides the speeds of a life, of stability and of heat.
pub(crate) struct MultiFeed {
    feed: f64,
    life: f64,
    force: f64,
    of_life: f64,
    stable: f64,
    hot: f64,
}

/// A speed with its power.
pub(crate) struct MultiSpeed {
    speed: f64,
    life: f64,
}

impl Law for Multipass {
    type Pass = MultiPass;
    type Feed = MultiFeed;
    type Speed = MultiSpeed;

    fn feed(&self, feed: f64) -> MultiFeed {
        MultiFeed {
            feed,
            life: feed.powf(LIFE.2),
            force: feed.powf(FORCE.1),
            of_life: feed.powf(LIFE.2 / LIFE.1),
            stable: feed.powf(1.0 / STABLE.0),
            hot: feed.powf(HEAT.2 / HEAT.1),
        }
    }

    fn speed(&self, speed: f64) -> MultiSpeed {
        MultiSpeed {
            speed,
            life: speed.powf(LIFE.1),
        }
    }

    fn feed_window(&self, pass: &MultiPass) -> Window {
        pass.feeds
    }

    fn speed_window(&self, pass: &MultiPass, feed: &MultiFeed) -> Window {
        let of_life = Window {
            least: pass.of_lives.least / feed.of_life,
            most: pass.of_lives.most / feed.of_life,
        };
        let power = MOST_POWER * 6120.0 * EFFICIENCY / (pass.force * feed.force);
        let others = Window {
            least: pass.stable / feed.stable,
            most: power.min(pass.hot / feed.hot),
        };
        of_life.and(others).and(pass.speeds)
    }

    fn ideal_speed(&self, pass: &MultiPass, feed: &MultiFeed) -> f64 {
        match self.charge {
            Charge::PassByPass => pass.ideal / feed.of_life,
            Charge::Life(_) => f64::INFINITY,
        }
    }

    fn least_cost(&self, pass: &MultiPass, feed: &MultiFeed) -> f64 {
        match self.charge {
            // At the ideal speed the edge costs a share of the time, which the derivative gives.
            Charge::PassByPass => {
                let time = cutting_time(feed.feed, self.ideal_speed(pass, feed));
                time * PRICES.0 * LIFE.1 / (LIFE.1 - 1.0)
            }
            Charge::Life(_) => f64::NEG_INFINITY,
        }
    }

    fn cost(&self, pass: &MultiPass, feed: &MultiFeed, speed: &MultiSpeed) -> f64 {
        let edges = match self.charge {
            Charge::PassByPass => speed.life * feed.life * pass.life / LIFE.0,
            Charge::Life(life) => 1.0 / life,
        };
        cutting_time(feed.feed, speed.speed) * (PRICES.0 + edge_cost() * edges)
    }
}
