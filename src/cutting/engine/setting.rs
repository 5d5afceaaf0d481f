//! Feed and speed of one pass.

use super::choices::{Choices, Offered};
use super::law::{Law, Window};
use super::refine::{Tried, least_between};

/// Feed and speed of a pass, and what it costs with them, in the units of the law.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting {
    /// The feed.
    pub feed: f64,
    /// The speed.
    pub speed: f64,
    /// What the pass costs.
    pub cost: f64,
}

/// Chooses feed and speed for many passes under one law, from what the machine offers.
///
/// All that depends on a listed feed or speed alone is reckoned when it is made; [`best`](Self::best) allocates nothing.
pub struct Chooser<'a, L: Law> {
    law: &'a L,
    feeds: Ready<L::Feed>,
    speeds: Ready<L::Speed>,
}

enum Ready<T> {
    List(Vec<(f64, T)>),
    Range(Window),
}

impl<T> Ready<T> {
    fn new(choices: &Choices, ready: impl Fn(f64) -> T) -> Self {
        match &choices.0 {
            Offered::List(list) => {
                Self::List(list.iter().map(|value| (*value, ready(*value))).collect())
            }
            Offered::Range { least, most } => Self::Range(Window {
                least: *least,
                most: *most,
            }),
        }
    }
}

impl<'a, L: Law> Chooser<'a, L> {
    /// Makes the listed feeds and speeds ready.
    pub fn new(law: &'a L, feeds: &Choices, speeds: &Choices) -> Self {
        Self {
            law,
            feeds: Ready::new(feeds, |feed| law.feed(feed)),
            speeds: Ready::new(speeds, |speed| law.speed(speed)),
        }
    }

    /// The cheapest feed and speed for a pass; `None` where no choice is allowed. Of equal ones the coarsest feed.
    ///
    /// # Accuracy
    /// Exact where feeds are listed: at each feed the cost falls up to the ideal speed and rises after it, so only the
    /// listed speeds on either side of it count, or the free speed nearest to it. With a free range of feeds as
    /// [`least_between`] says; there, with listed speeds, each speed is searched by itself, because only at a fixed
    /// speed is there one valley.
    ///
    /// Time: with `F` listed feeds and `S` listed speeds `F · log S` at most, and a few of the feeds as a rule, where
    /// the law knows its [`least_cost`](Law::least_cost); with free feeds 10 to 40 costs, for each of the listed speeds.
    pub fn best(&self, pass: &L::Pass) -> Option<Setting> {
        let window = self.law.feed_window(pass);
        match (&self.feeds, &self.speeds) {
            (Ready::List(feeds), Ready::List(speeds)) => {
                self.of_feeds(pass, feeds, window, |feed| self.listed(pass, feed, speeds))
            }
            (Ready::List(feeds), Ready::Range(speeds)) => {
                self.of_feeds(pass, feeds, window, |feed| {
                    self.free(pass, feed, *speeds).allowed()
                })
            }
            (Ready::Range(feeds), Ready::Range(speeds)) => {
                least_between(feeds.and(window), |feed| {
                    self.free(pass, &(feed, self.law.feed(feed)), *speeds)
                })?
                .allowed()
            }
            (Ready::Range(feeds), Ready::List(speeds)) => {
                let best = |speed| {
                    least_between(feeds.and(window), |feed| {
                        self.fixed(pass, &(feed, self.law.feed(feed)), speed)
                    })?
                    .allowed()
                };
                speeds.iter().filter_map(best).reduce(cheaper)
            }
        }
    }

    /// The cheapest of the listed feeds, the coarsest first, until no finer one can be cheaper.
    fn of_feeds(
        &self,
        pass: &L::Pass,
        feeds: &[(f64, L::Feed)],
        window: Window,
        at_feed: impl Fn(&(f64, L::Feed)) -> Option<Setting>,
    ) -> Option<Setting> {
        let mut best: Option<Setting> = None;
        for feed in feeds.iter().rev().filter(|(feed, _)| window.holds(*feed)) {
            if let Some(best) = best
                && best.cost <= self.law.least_cost(pass, &feed.1)
            {
                break;
            }
            let found = at_feed(feed).filter(|found| found.cost.is_finite());
            best = best.into_iter().chain(found).reduce(cheaper);
        }
        best
    }

    /// At one feed, the better of the listed speeds beside the ideal one, as far as the window allows.
    fn listed(
        &self,
        pass: &L::Pass,
        feed: &(f64, L::Feed),
        speeds: &[(f64, L::Speed)],
    ) -> Option<Setting> {
        let window = self.law.speed_window(pass, &feed.1);
        if window.least > window.most {
            return None;
        }
        // Where the ideal is outside, the speed nearest to that end is the best, and beyond it none is allowed.
        let ideal = self.law.ideal_speed(pass, &feed.1);
        let target = ideal.min(window.most).max(window.least);
        let above = speeds.partition_point(|(speed, _)| *speed < target);
        let slower = above.checked_sub(1).and_then(|below| speeds.get(below));
        slower
            .into_iter()
            .chain(speeds.get(above))
            .filter(|(speed, _)| window.holds(*speed))
            .map(|speed| self.setting(pass, feed, speed))
            .reduce(cheaper)
    }

    /// At one feed, the free speed nearest to the ideal one.
    fn free(&self, pass: &L::Pass, feed: &(f64, L::Feed), speeds: Window) -> Tried<Setting> {
        let window = self.law.speed_window(pass, &feed.1).and(speeds);
        let ideal = self.law.ideal_speed(pass, &feed.1);
        let speed = ideal.min(window.most).max(window.least);
        let setting = self.setting(pass, feed, &(speed, self.law.speed(speed)));
        Tried {
            miss: window.lack(),
            cost: setting.cost,
            what: setting,
        }
    }

    /// One feed with one speed.
    fn fixed(
        &self,
        pass: &L::Pass,
        feed: &(f64, L::Feed),
        speed: &(f64, L::Speed),
    ) -> Tried<Setting> {
        let setting = self.setting(pass, feed, speed);
        Tried {
            miss: self.law.speed_window(pass, &feed.1).miss(speed.0),
            cost: setting.cost,
            what: setting,
        }
    }

    fn setting(
        &self,
        pass: &L::Pass,
        (feed, ready_feed): &(f64, L::Feed),
        (speed, ready_speed): &(f64, L::Speed),
    ) -> Setting {
        Setting {
            feed: *feed,
            speed: *speed,
            cost: self.law.cost(pass, ready_feed, ready_speed),
        }
    }
}

/// The cheaper; the first of equal ones, and the second where the first has no finite cost.
fn cheaper(one: Setting, other: Setting) -> Setting {
    if other.cost < one.cost || !one.cost.is_finite() {
        other
    } else {
        one
    }
}

/// The cheapest feed and speed for a single pass: a [`Chooser`] used once.
pub fn best_setting<L: Law>(
    law: &L,
    pass: &L::Pass,
    feeds: &Choices,
    speeds: &Choices,
) -> Option<Setting> {
    Chooser::new(law, feeds, speeds).best(pass)
}

#[cfg(test)]
#[path = "setting_tests.rs"]
mod tests;
