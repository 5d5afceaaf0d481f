//! A duration as three numbers: low, likely, high.
//!
//! Low and high are the ends: shorter and longer does not happen while nothing goes wrong.

use core::fmt;

use serde::Serialize;

use crate::quantity::Time;

/// The longest duration of one step, ten thousand hours: it keeps every total finite, and is far beyond any job.
pub const LONGEST: Time = Time::minutes(600_000.0);

/// The low, the likely and the high duration of one step, in this order.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ThreePoint {
    low: Time,
    likely: Time,
    high: Time,
}

/// Why three durations are no estimate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ThreePointError {
    /// The low one is below zero, or no number: raise it.
    LowBelowZero(Time),
    /// The likely one is below the low one: raise it, or lower the low one.
    LikelyBelowLow {
        /// The low one.
        low: Time,
        /// The likely one.
        likely: Time,
    },
    /// The high one is below the likely one: raise it, or lower the likely one.
    HighBelowLikely {
        /// The likely one.
        likely: Time,
        /// The high one.
        high: Time,
    },
    /// The high one is above [`LONGEST`].
    TooLong(Time),
}

impl ThreePoint {
    /// No time at all.
    pub const ZERO: Self = Self {
        low: Time::ZERO,
        likely: Time::ZERO,
        high: Time::ZERO,
    };

    /// Three durations, from zero to [`LONGEST`], none below the one before it.
    ///
    /// # Errors
    /// [`ThreePointError`] names the first duration that is out of order.
    /// # Example
    /// ```
    /// use skimwright::costing::{ThreePoint, ThreePointError};
    /// use skimwright::quantity::Time;
    /// let [two, three, seven] = [2.0, 3.0, 7.0].map(Time::minutes);
    /// assert_eq!(ThreePoint::new(two, three, seven).unwrap().mean(), Time::minutes(4.0));
    /// let wrong = ThreePoint::new(three, two, seven);
    /// assert_eq!(wrong, Err(ThreePointError::LikelyBelowLow { low: three, likely: two }));
    /// ```
    pub fn new(low: Time, likely: Time, high: Time) -> Result<Self, ThreePointError> {
        // What is no number is in no order with anything.
        if !matches!(low.partial_cmp(&Time::ZERO), Some(order) if order.is_ge()) {
            Err(ThreePointError::LowBelowZero(low))
        } else if !matches!(likely.partial_cmp(&low), Some(order) if order.is_ge()) {
            Err(ThreePointError::LikelyBelowLow { low, likely })
        } else if !matches!(high.partial_cmp(&likely), Some(order) if order.is_ge()) {
            Err(ThreePointError::HighBelowLikely { likely, high })
        } else if high > LONGEST {
            Err(ThreePointError::TooLong(high))
        } else {
            Ok(Self { low, likely, high })
        }
    }

    /// A duration without any spread.
    ///
    /// # Errors
    /// As [`ThreePoint::new`].
    pub fn exact(time: Time) -> Result<Self, ThreePointError> {
        Self::new(time, time, time)
    }

    /// Three durations known to be in order.
    pub(super) const fn known(low: Time, likely: Time, high: Time) -> Self {
        Self { low, likely, high }
    }

    /// The low one.
    pub const fn low(self) -> Time {
        self.low
    }

    /// The likely one: the peak of the triangle.
    pub const fn likely(self) -> Time {
        self.likely
    }

    /// The high one.
    pub const fn high(self) -> Time {
        self.high
    }

    /// The mean of the triangle over the three.
    ///
    /// # Source
    /// The triangular distribution: a third of the sum of its ends and its peak.
    pub fn mean(self) -> Time {
        (self.low + self.likely + self.high) / 3.0
    }

    /// A share of it, from nothing to all.
    pub(super) fn part(self, share: f64) -> Self {
        Self {
            low: self.low * share,
            likely: self.likely * share,
            high: self.high * share,
        }
    }

    /// Two durations that go long or short together, as one.
    pub(super) fn with(self, other: Self) -> Self {
        Self {
            low: self.low + other.low,
            likely: self.likely + other.likely,
            high: self.high + other.high,
        }
    }
}

impl fmt::Display for ThreePointError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let seconds = |time: &Time| time.to_seconds();
        match self {
            Self::LowBelowZero(low) => {
                write!(f, "the low time of {} s is not zero or more", seconds(low))
            }
            Self::LikelyBelowLow { low, likely } => {
                let (low, likely) = (seconds(low), seconds(likely));
                write!(
                    f,
                    "the likely time of {likely} s is below the low one of {low} s"
                )
            }
            Self::HighBelowLikely { likely, high } => {
                let (likely, high) = (seconds(likely), seconds(high));
                write!(
                    f,
                    "the high time of {high} s is below the likely one of {likely} s"
                )
            }
            Self::TooLong(high) => {
                write!(
                    f,
                    "the high time of {} s is over {} s",
                    seconds(high),
                    seconds(&LONGEST)
                )
            }
        }
    }
}

impl core::error::Error for ThreePointError {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_time_out_of_order_is_named() {
        let s = Time::seconds;
        let told = |low, likely, high| match ThreePoint::new(s(low), s(likely), s(high)) {
            Ok(_) => String::new(),
            Err(error) => error.to_string(),
        };
        assert_eq!(told(0.0, 0.0, 0.0), "");
        assert_eq!(told(1.0, 1.0, LONGEST.to_seconds()), "");
        assert_eq!(
            told(-1.0, 2.0, 3.0),
            "the low time of -1 s is not zero or more"
        );
        assert_eq!(
            told(2.0, 1.0, 0.0),
            "the likely time of 1 s is below the low one of 2 s"
        );
        assert_eq!(
            told(1.0, 3.0, 2.0),
            "the high time of 2 s is below the likely one of 3 s"
        );
        assert_eq!(
            told(1.0, 3.0, 4e7),
            "the high time of 40000000 s is over 36000000 s"
        );
    }
}
