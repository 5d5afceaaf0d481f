//! How long an edge lasts: Taylor's law with feed and depth, v · Tⁿ · f^x · a^y = K.
//!
//! The constant K has no unit worth a name, so the law is kept by one cut whose life is known, its reference.
//! Depth is on radius.

use serde::Serialize;

use crate::quantity::{Feed, Length, Money, Speed, Time};
use crate::tables::Taylor;

/// How life hangs on speed, feed and depth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LifeExponents {
    /// Of the life (n), above 0 and below 1: the smaller, the more speed costs.
    pub life: f64,
    /// Of the feed (x), 0 or more.
    pub feed: f64,
    /// Of the depth (y), 0 or more; feed costs more life than depth.
    pub depth: f64,
}

impl From<Taylor> for LifeExponents {
    /// The likely ones of a kind of tool.
    fn from(taylor: Taylor) -> Self {
        Self {
            life: taylor.exponent.typical,
            feed: taylor.feed_exponent.typical,
            depth: taylor.depth_exponent.typical,
        }
    }
}

/// What a cut asks of the edge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct EdgeDuty {
    /// Cutting speed.
    pub speed: Speed,
    /// Feed.
    pub feed: Feed,
    /// Depth on radius.
    pub depth: Length,
}

impl EdgeDuty {
    fn cuts(&self) -> bool {
        self.speed > Speed::ZERO && self.feed > Feed::ZERO && self.depth > Length::ZERO
    }
}

/// Taylor's law for one edge in one material.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ToolLife {
    exponents: LifeExponents,
    reference: EdgeDuty,
    reference_life: Time,
}

impl ToolLife {
    /// The law through one cut whose life is known.
    ///
    /// `None` when speed, feed, depth or life is not above zero, n not between 0 and 1, or another exponent negative.
    pub fn new(exponents: LifeExponents, reference: EdgeDuty, life: Time) -> Option<Self> {
        let LifeExponents {
            life: n,
            feed,
            depth,
        } = exponents;
        let lawful = 0.0 < n && n < 1.0 && 0.0 <= feed && 0.0 <= depth;
        (lawful && reference.cuts() && life > Time::ZERO).then_some(Self {
            exponents,
            reference,
            reference_life: life,
        })
    }

    /// The law from two speeds whose lives are known, at one feed and depth: n = ln(v₁/v₂)/ln(T₂/T₁).
    ///
    /// Feed and depth then do not count. `None` when the faster does not wear out sooner, or n is not under 1.
    ///
    /// # Accuracy
    /// Two points are gone through exactly, with all their scatter: a third may be off by a factor of 1.5.
    /// # Source
    /// M. P. Groover, Fundamentals of Modern Manufacturing, example 22.1.
    /// # Example
    /// ```
    /// use skimwright::cutting::{EdgeDuty, ToolLife};
    /// use skimwright::quantity::{Feed, Length, Speed, Time};
    /// let duty = EdgeDuty {
    ///     speed: Speed::m_per_min(160.0),
    ///     feed: Feed::mm_per_rev(0.2),
    ///     depth: Length::mm(1.0),
    /// };
    /// let slower = (Speed::m_per_min(100.0), Time::minutes(41.0));
    /// let law = ToolLife::through(duty, Time::minutes(5.0), slower).unwrap();
    /// assert!((law.exponents().life - 0.223).abs() < 0.0005);
    /// ```
    pub fn through(first: EdgeDuty, life: Time, second: (Speed, Time)) -> Option<Self> {
        if !first.cuts() || life <= Time::ZERO || second.0 <= Speed::ZERO || second.1 <= Time::ZERO
        {
            return None;
        }
        let exponents = LifeExponents {
            life: (first.speed / second.0).ln() / (second.1 / life).ln(),
            feed: 0.0,
            depth: 0.0,
        };
        Self::new(exponents, first, life)
    }

    /// The exponents.
    pub const fn exponents(&self) -> LifeExponents {
        self.exponents
    }

    /// What feed and depth leave of the speed at the reference: (f₀/f)^x · (a₀/a)^y.
    fn share_of_speed(&self, feed: Feed, depth: Length) -> f64 {
        (self.reference.feed / feed).powf(self.exponents.feed)
            * (self.reference.depth / depth).powf(self.exponents.depth)
    }

    /// How long the edge lasts in a cut: T = T₀ · (v₀/v · (f₀/f)^x · (a₀/a)^y)^(1/n).
    ///
    /// `None` when speed, feed or depth is not above zero, or the cut is so light that the figure has no end.
    ///
    /// # Accuracy
    /// Within a factor of two; further from the reference, worse. Above about two hours an edge chips sooner than it
    /// wears, and at speeds with a built-up edge the law does not hold.
    /// # Source
    /// M. P. Groover, Fundamentals of Modern Manufacturing, equations 22.1 and 22.3.
    /// # Example
    /// ```
    /// use skimwright::cutting::{EdgeDuty, LifeExponents, ToolLife};
    /// use skimwright::quantity::{Feed, Length, Speed, Time};
    /// let reference = EdgeDuty {
    ///     speed: Speed::m_per_min(200.0),
    ///     feed: Feed::mm_per_rev(0.2),
    ///     depth: Length::mm(1.0),
    /// };
    /// let exponents = LifeExponents { life: 0.25, feed: 0.3, depth: 0.1 };
    /// let law = ToolLife::new(exponents, reference, Time::minutes(15.0)).unwrap();
    /// let half_speed = EdgeDuty { speed: Speed::m_per_min(100.0), ..reference };
    /// // Sixteen times as long at half the speed.
    /// assert!((law.life(&half_speed).unwrap().to_minutes() - 240.0).abs() < 1e-9);
    /// ```
    pub fn life(&self, duty: &EdgeDuty) -> Option<Time> {
        if !duty.cuts() {
            return None;
        }
        let room = self.reference.speed / duty.speed * self.share_of_speed(duty.feed, duty.depth);
        let life = self.reference_life * room.powf(1.0 / self.exponents.life);
        (life.is_finite() && life > Time::ZERO).then_some(life)
    }

    /// The speed at which the edge lasts for a time: v = v₀ · (T₀/T)ⁿ · (f₀/f)^x · (a₀/a)^y.
    ///
    /// `None` when life, feed or depth is not above zero.
    ///
    /// # Accuracy
    /// Within a tenth or two: a factor of two in life is little in speed.
    /// # Source
    /// As [`life`](Self::life), turned round.
    pub fn speed_for(&self, life: Time, feed: Feed, depth: Length) -> Option<Speed> {
        if life <= Time::ZERO || feed <= Feed::ZERO || depth <= Length::ZERO {
            return None;
        }
        let share = (self.reference_life / life).powf(self.exponents.life);
        let speed = self.reference.speed * (share * self.share_of_speed(feed, depth));
        speed.is_finite().then_some(speed)
    }

    /// The share of an edge that a cut of a duration uses up: t/T; above 1 the edge does not last through it.
    ///
    /// `None` as for [`life`](Self::life).
    ///
    /// # Accuracy
    /// As the life. Shares of several cuts add up only as a rule.
    /// # Source
    /// Common practice, no source.
    pub fn share_used(&self, duty: &EdgeDuty, duration: Time) -> Option<f64> {
        let share = duration / self.life(duty)?;
        share.is_finite().then_some(share)
    }
}

/// The life at which a turned part is cheapest: T* = (1/n − 1) · (change + edge/rate).
///
/// `change`: time to change the edge and set it again. `edge`: what one edge costs. `machine_hour`: what an hour of
/// machine and man costs. `None` when n is not between 0 and 1, the hour costs nothing, or a sum is negative.
///
/// # Accuracy
/// As good as n. The cost is flat round the best: half or twice the life costs a few per cent.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, minimising cost per unit.
/// # Example
/// ```
/// use skimwright::cutting::economic_life;
/// use skimwright::quantity::{Money, Time};
/// // 3 · (2 min + 3/60 h) = 3 · 5 min.
/// let (edge, hour) = (Money::of_currency(3.0), Money::of_currency(60.0));
/// let best = economic_life(0.25, Time::minutes(2.0), edge, hour).unwrap();
/// assert!((best.to_minutes() - 15.0).abs() < 1e-9);
/// ```
pub fn economic_life(n: f64, change: Time, edge: Money, machine_hour: Money) -> Option<Time> {
    let lawful = 0.0 < n && n < 1.0 && change >= Time::ZERO && edge >= Money::ZERO;
    if !lawful || machine_hour <= Money::ZERO {
        return None;
    }
    let hour = Time::minutes(60.0);
    let best = (change + hour * (edge / machine_hour)) * (1.0 / n - 1.0);
    best.is_finite().then_some(best)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn duty(speed: f64, feed: f64, depth: f64) -> EdgeDuty {
        EdgeDuty {
            speed: Speed::m_per_min(speed),
            feed: Feed::mm_per_rev(feed),
            depth: Length::mm(depth),
        }
    }

    #[test]
    fn what_is_not_a_law_is_refused() {
        let good = LifeExponents {
            life: 0.25,
            feed: 0.32,
            depth: 0.12,
        };
        let reference = duty(200.0, 0.2, 1.0);
        let quarter = Time::minutes(15.0);
        assert!(ToolLife::new(good, reference, quarter).is_some());
        assert!(ToolLife::new(good, reference, Time::ZERO).is_none());
        assert!(ToolLife::new(good, duty(0.0, 0.2, 1.0), quarter).is_none());
        for life in [0.0, 1.0, -0.2, f64::NAN] {
            assert!(ToolLife::new(LifeExponents { life, ..good }, reference, quarter).is_none());
        }
        let slower = |speed, minutes| (Speed::m_per_min(speed), Time::minutes(minutes));
        assert!(ToolLife::through(reference, quarter, slower(100.0, 5.0)).is_none());
        assert!(ToolLife::through(reference, quarter, slower(200.0, 15.0)).is_none());
        assert!(ToolLife::through(reference, quarter, slower(0.0, 15.0)).is_none());
    }

    #[test]
    fn a_cut_with_no_end_of_life_says_so() {
        let law = ToolLife::new(
            LifeExponents {
                life: 0.125,
                feed: 0.6,
                depth: 0.2,
            },
            duty(30.0, 0.1, 0.5),
            Time::minutes(60.0),
        )
        .unwrap();
        assert!(law.life(&duty(0.0, 0.1, 0.5)).is_none());
        assert!(law.life(&duty(1e-60, 0.1, 0.5)).is_none());
        assert!(law.share_used(&duty(30.0, 0.0, 0.5), Time::ZERO).is_none());
        let used = law
            .share_used(&duty(30.0, 0.1, 0.5), Time::minutes(15.0))
            .unwrap();
        assert!((used - 0.25).abs() < 1e-12);
    }

    #[test]
    fn an_economic_life_needs_an_hour_that_costs() {
        let euros = Money::of_currency;
        let change = Time::minutes(2.0);
        assert!(economic_life(0.25, change, euros(3.0), euros(0.0)).is_none());
        assert!(economic_life(0.0, change, euros(3.0), euros(60.0)).is_none());
        let free = economic_life(0.2, change, euros(0.0), euros(60.0)).unwrap();
        assert!((free.to_minutes() - 8.0).abs() < 1e-9);
    }
}
