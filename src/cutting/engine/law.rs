//! What a pass costs, and what forbids it.

/// All values from `least` to `most`, both included; none at all where `least` is above `most`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window {
    /// The least value allowed.
    pub least: f64,
    /// The most; `f64::INFINITY` where nothing limits.
    pub most: f64,
}

impl Window {
    /// No limit: every value above zero.
    pub const ALL: Self = Self {
        least: 0.0,
        most: f64::INFINITY,
    };

    /// What both windows allow.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            least: self.least.max(other.least),
            most: self.most.min(other.most),
        }
    }

    /// Whether the value is allowed.
    pub fn holds(self, value: f64) -> bool {
        self.least <= value && value <= self.most
    }

    /// How far the window is from having room, as the logarithm of a ratio: zero where it has.
    pub(super) fn lack(self) -> f64 {
        if self.least <= self.most {
            0.0
        } else if self.most > 0.0 {
            (self.least / self.most).ln()
        } else {
            f64::INFINITY
        }
    }

    /// How far the value is outside, as the logarithm of a ratio: zero inside.
    pub(super) fn miss(self, value: f64) -> f64 {
        let below = Self {
            most: value,
            ..self
        };
        let above = Self {
            least: value,
            ..self
        };
        below.lack().max(above.lack())
    }
}

/// What passes cost on one machine in one material, and what forbids them, in the law's own units.
///
/// The law is asked for a few feeds and speeds of very many passes. So what depends on the pass alone, the feed alone
/// or the speed alone is reckoned once, into [`Pass`](Self::Pass), [`Feed`](Self::Feed) and [`Speed`](Self::Speed)
/// (the powers of each, as a rule), and the functions of several of them need only multiply.
///
/// A cost that is not finite forbids; the ends of a window are numbers.
pub trait Law {
    /// One pass: its depth and diameter, with all that follows from them. The law makes it as it likes.
    type Pass;
    /// A feed, with all that follows from it alone.
    type Feed;
    /// A speed, with all that follows from it alone.
    type Speed;

    /// Makes a feed ready. It is above zero.
    fn feed(&self, feed: f64) -> Self::Feed;

    /// Makes a speed ready. It is above zero.
    fn speed(&self, speed: f64) -> Self::Speed;

    /// The feeds that can be allowed at all in this pass. A limit that does not depend on the speed, as of force,
    /// belongs here: in a free range of feeds the best often stands exactly on it.
    fn feed_window(&self, _pass: &Self::Pass) -> Window {
        Window::ALL
    }

    /// The speeds that every limit allows at this depth and feed. Where limits contradict, the window is empty; its
    /// ends then show by how much, and lead the search of a free range of feeds to where there is room.
    fn speed_window(&self, pass: &Self::Pass, feed: &Self::Feed) -> Window;

    /// The speed of least cost if nothing limits it; `f64::INFINITY` where faster is always cheaper.
    fn ideal_speed(&self, pass: &Self::Pass, feed: &Self::Feed) -> f64;

    /// What no speed can undercut with this feed or any finer one. It ends the search of a list of feeds early, from
    /// the coarsest down: the closer it is the better. A law of powers has it without limits counted: what the pass
    /// costs at the ideal speed, which rises as the feed gets finer where life falls less with feed than with speed.
    fn least_cost(&self, _pass: &Self::Pass, _feed: &Self::Feed) -> f64 {
        f64::NEG_INFINITY
    }

    /// What the pass costs. At a given feed it must fall with speed up to the ideal speed and rise after it.
    fn cost(&self, pass: &Self::Pass, feed: &Self::Feed, speed: &Self::Speed) -> f64;
}

#[cfg(test)]
#[allow(clippy::float_cmp, reason = "exact results are meant")]
mod tests {
    use super::*;

    #[test]
    fn a_window_tells_what_it_lacks() {
        let wide = Window {
            least: 2.0,
            most: 8.0,
        };
        let high = Window {
            least: 16.0,
            ..Window::ALL
        };
        assert!(wide.holds(2.0) && wide.holds(8.0) && !wide.holds(8.1) && !wide.holds(f64::NAN));
        assert_eq!(wide.lack(), 0.0);
        assert_eq!(wide.and(high).lack(), 2.0_f64.ln());
        assert_eq!(wide.miss(1.0), 2.0_f64.ln());
        assert_eq!(wide.miss(4.0), 0.0);
        assert_eq!(wide.miss(32.0), 4.0_f64.ln());
        assert!(wide.miss(f64::NAN) > 0.0);
    }
}
