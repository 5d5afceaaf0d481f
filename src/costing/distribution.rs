//! The total of many uncertain durations, as a spread with its 10 %, 50 % and 90 % points.
//!
//! Every duration is a triangular variable over its three points. The triangle was chosen over the beta form that
//! network planning uses: it asks for no weight of the middle that nobody knows, its ends are reached, and it is the
//! wider of the two, which suits ends that people set too close. A step done n times is n independent draws.
//!
//! One person's pace is common to all handling, so that it does not average out: all handling is multiplied by one
//! more triangular variable, 1 ± [`PACE_SPREAD`]. What the lathe feeds does not follow the pace.
//!
//! Means and the higher cumulants of independent terms add; those of handling times pace follow from the moments of
//! both. The three points come from the first four cumulants by the expansion of Cornish and Fisher: no draws, no search.

use serde::Serialize;

use super::three_point::ThreePoint;
use crate::quantity::Time;
use crate::tables::Confirmed;
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// How much quicker or slower than usual one person works at the most, as a share. From memory: work study rates paces
/// from about three quarters to five quarters of the normal one.
pub const PACE_SPREAD: f64 = 0.25;

/// The point below which a standard normal variable stays nine times in ten.
const NINE_IN_TEN: f64 = 1.281_551_565_544_600_4;

/// A deviation below it, in seconds, is rounding.
const NO_DEVIATION: f64 = 1e-9;

/// A duration that comes so many times, each drawn anew.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Counted {
    /// Each of them.
    pub each: ThreePoint,
    /// How many.
    pub count: u32,
}

/// What the total of many durations comes to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Spread {
    /// One time in ten it is quicker.
    pub low: Time,
    /// As often quicker as slower: the median.
    pub likely: Time,
    /// One time in ten it is slower.
    pub high: Time,
    /// The mean.
    pub mean: Time,
    /// Of which the lathe feeds.
    pub feeding_mean: Time,
    /// Of which all else.
    pub handling_mean: Time,
    /// The standard deviation.
    pub deviation: Time,
    /// The skewness: above zero with the longer tail on the slow side. Zero without a deviation.
    pub skewness: f64,
}

impl Spread {
    /// The total of handling, which follows the person's pace, and feeding, which does not.
    ///
    /// # Accuracy
    /// Mean, deviation and skewness are exact for the model. The three points are off by at most 0.11 standard
    /// deviations, when one lopsided duration is nearly all there is, and by 0.03 in a whole job
    /// (`tests/cycle_time.rs`).
    /// The model is coarser than that: see [`PACE_SPREAD`] and the usual times.
    /// # Source
    /// Moments of the triangular distribution; E. A. Cornish and R. A. Fisher, Moments and cumulants in the
    /// specification of distributions, 1937, expansion to the fourth cumulant (form seen in one source).
    /// # Example
    /// ```
    /// use skimwright::costing::{Counted, Spread, ThreePoint};
    /// use skimwright::quantity::Time;
    /// let minutes = [1.0, 2.0, 3.0].map(Time::minutes);
    /// let [low, likely, high] = minutes;
    /// let each = ThreePoint::new(low, likely, high).unwrap();
    /// let ten = Spread::of(&[Counted { each, count: 10 }], &[]);
    /// assert_eq!(ten.mean, Time::minutes(20.0));
    /// // Ten draws alone would give ± 1.65 min; the pace makes it ± 3.1.
    /// assert_eq!((ten.high - ten.mean).to_minutes().round(), 3.0);
    /// ```
    pub fn of(handling: &[Counted], feeding: &[Counted]) -> Self {
        let (feeding, handling) = (Cumulants::sum(feeding), Cumulants::sum(handling));
        let total = feeding.plus(handling.at_own_pace(), 1.0);
        let deviation = total.second.sqrt();
        let (skewness, excess) = if deviation < NO_DEVIATION {
            (0.0, 0.0)
        } else {
            (
                total.third / (total.second * deviation),
                total.fourth / (total.second * total.second),
            )
        };
        let point =
            |z: f64| Time::seconds(total.mean + deviation * unit_point(z, skewness, excess));
        Self {
            low: point(-NINE_IN_TEN),
            likely: point(0.0),
            high: point(NINE_IN_TEN),
            mean: Time::seconds(total.mean),
            feeding_mean: Time::seconds(feeding.mean),
            handling_mean: Time::seconds(handling.mean),
            deviation: Time::seconds(deviation),
            skewness,
        }
    }

    /// The likely total with its range and working.
    pub fn figure(&self) -> Figure<Time> {
        Figure {
            value: self.likely,
            range: Some(Range {
                low: self.low,
                high: self.high,
            }),
            working: Working {
                symbol: "t",
                formula: "m₁ + m₂ − g · s/6",
                parts: &[
                    "m = Σ (a + b + c)/3",
                    "s² = s₁² + s₂² + p²/6 · (m₂² + s₂²)",
                    "s₁², s₂² = Σ (a² + b² + c² − a · b − a · c − b · c)/18",
                ],
                inputs: vec![
                    Input::new("m₁", Meaning::FeedingMean, Value::Time(self.feeding_mean)),
                    Input::new("m₂", Meaning::StepsMean, Value::Time(self.handling_mean)),
                    Input::new("s", Meaning::TimeDeviation, Value::Time(self.deviation)),
                    Input::new("g", Meaning::TimeSkewness, Value::Ratio(self.skewness)),
                    Input::new("p", Meaning::PaceSpread, Value::Share(PACE_SPREAD)),
                ],
                source: Source::Published {
                    title: "Sum of triangular variables with one pace; E. A. Cornish, R. A. Fisher, Moments and cumulants in the specification of distributions",
                    confirmed: Confirmed::OneSource,
                },
            },
        }
    }
}

/// The point of a variable of mean 0 and deviation 1 that stands where `z` stands in the normal one.
///
/// Cornish and Fisher, with γ₁ the skewness and γ₂ the excess of the fourth moment over the normal one.
fn unit_point(z: f64, skewness: f64, excess: f64) -> f64 {
    let (square, cube) = (z * z, z * z * z);
    z + (square - 1.0) * skewness / 6.0 + (cube - 3.0 * z) * excess / 24.0
        - (2.0 * cube - 5.0 * z) * skewness * skewness / 36.0
}

/// Mean and second to fourth cumulants, in seconds and their powers.
#[derive(Clone, Copy, Default)]
struct Cumulants {
    mean: f64,
    second: f64,
    third: f64,
    fourth: f64,
}

impl Cumulants {
    /// Those of independent draws, added.
    fn sum(draws: &[Counted]) -> Self {
        draws.iter().fold(Self::default(), |sum, draw| {
            sum.plus(Self::triangular(draw.each), f64::from(draw.count))
        })
    }

    /// Those of one triangular variable.
    fn triangular(each: ThreePoint) -> Self {
        let rise = (each.likely() - each.low()).to_seconds();
        let fall = (each.high() - each.likely()).to_seconds();
        let second = (rise * rise + fall * fall + rise * fall) / 18.0;
        Self {
            mean: each.mean().to_seconds(),
            second,
            third: (fall - rise) * (2.0 * rise + fall) * (rise + 2.0 * fall) / 270.0,
            // The excess of every triangle is −3/5.
            fourth: -0.6 * second * second,
        }
    }

    /// Those of this and `count` independent ones like the other.
    fn plus(self, other: Self, count: f64) -> Self {
        Self {
            mean: self.mean + count * other.mean,
            second: self.second + count * other.second,
            third: self.third + count * other.third,
            fourth: self.fourth + count * other.fourth,
        }
    }

    /// Those of this times an independent pace of 1 + p, p symmetrical.
    ///
    /// With h what is over the mean m, the product is over its own mean by m p + h (1 + p). The powers of that are
    /// written out and averaged term by term, odd powers of p and single h falling away: nothing cancels.
    fn at_own_pace(self) -> Self {
        // Second and fourth moment of a symmetrical triangle.
        let p2 = PACE_SPREAD.powi(2) / 6.0;
        let p4 = PACE_SPREAD.powi(4) / 15.0;
        let m = self.mean;
        let h2 = self.second;
        let h3 = self.third;
        let h4 = self.fourth + 3.0 * h2 * h2;
        let second = m * m * p2 + h2 * (1.0 + p2);
        let third = 6.0 * m * h2 * p2 + h3 * (1.0 + 3.0 * p2);
        let fourth_moment = m.powi(4) * p4
            + 6.0 * m * m * h2 * (p2 + p4)
            + 4.0 * m * h3 * (3.0 * p2 + p4)
            + h4 * (1.0 + 6.0 * p2 + p4);
        Self {
            mean: m,
            second,
            third,
            fourth: fourth_moment - 3.0 * second * second,
        }
    }
}
