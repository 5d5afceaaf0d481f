//! Which standard taper a cone is, from two diameters and the distance between the places where they were measured.
//!
//! Distances are along the axis. A shank may have been cut short and the places may be anywhere, so only two things are
//! known of a taper that might be it: its ratio, and between which diameters it runs. Both are weighed against what the
//! instruments can be off, by least squares: the three readings are moved, each in measure of its own error, until they
//! lie on the taper.
//!
//! Left out: wear, and how far the part itself was made off its standard. Whoever expects either adds it to the errors.

use super::chi_square::upper_tail;
use crate::order;
use crate::quantity::{Angle, Length};
use crate::tables::{StandardTaper, TAPERS, TaperSeries, TaperSize};

/// A figure and how far it can be off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured<T = Length> {
    /// The figure itself.
    pub value: T,
    /// Half the width of what it can be off, taken as two standard deviations: about 19 in 20 lie within it.
    pub error: T,
}

/// Two diameters of a cone and how far apart they were measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TaperReading {
    /// Diameter at the place nearer to the shoulder, above 0 and up to 10 m; it should be the larger.
    pub large: Measured,
    /// Diameter at the place nearer to the free end, above 0 and up to 10 m.
    pub small: Measured,
    /// From the one place to the other along the axis, up to 10 m.
    pub distance: Measured,
}

/// To which side the large end of the cone lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LargeEnd {
    /// As on a taper shank: it goes into a socket small end first.
    TowardShoulder,
    /// The diameters came in the other order: this cone cannot go into a socket, or it was measured from the other side.
    TowardFreeEnd,
}

/// What can be said of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// One standard taper alone agrees: the only candidate.
    Found,
    /// Several agree, and these instruments cannot tell them apart: all candidates.
    NotToldApart,
    /// None agrees. The nearest is the only candidate, to be shown with how far it is off.
    NoneOfThese,
    /// A diameter is not above nought, an error is below nought, or a figure is not finite or beyond 10 m.
    NotALength,
    /// The places are no farther apart than the distance can be off. Measure farther apart.
    NoDistance,
    /// The diameters differ by no more than they can be off: parallel, or measured too near together.
    NoChange,
    /// More than 90° included. No standard taper is; such a face is a chamfer.
    TooSteep,
}

/// A standard taper that a cone may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Candidate {
    /// Which it is.
    pub size: TaperSize,
    /// Share of measurements of such a taper that would be as far off as this one or farther, from 0 to 1.
    pub share: f64,
    /// Measured change of diameter less that of this taper over the measured distance, in standard deviations of what
    /// the instruments can be off. Above nought the cone is steeper than the taper.
    pub residual: f64,
    /// How likely the reading is for this taper, as against the first candidate; see [`recognise`].
    pub likelihood: f64,
    /// From the place of the large diameter to this taper's gauge plane, away from the small one: towards the shoulder,
    /// or with [`LargeEnd::TowardFreeEnd`] towards the free end. Below nought it lies on the small side of that place.
    pub gauge_plane: Measured,
    /// Whether both places lie on the length that the table gives, its run past the gauge plane included, as far as the
    /// reading can tell.
    pub on_taper: bool,
}

/// What [`recognise`] finds.
#[derive(Clone, Debug, PartialEq)]
pub struct Recognition {
    /// Change of diameter over distance, never below nought; `None` without a distance to divide by.
    pub ratio: Option<Measured<f64>>,
    /// Angle between axis and side, to which a top slide is set; `None` together with the ratio.
    pub half_angle: Option<Measured<Angle>>,
    /// Where the large end lies.
    pub large_end: LargeEnd,
    /// The tapers that agree, likeliest first.
    pub candidates: Vec<Candidate>,
    /// What follows.
    pub verdict: Verdict,
}

/// A taper is excluded when fewer than this share of its measurements would be as far off.
///
/// 1 % and not the usual 5 %: metal is cut by the answer, and one name too many costs less than the right one left out.
pub const LEAST_SHARE: f64 = 0.01;

/// The sum of three squares that [`LEAST_SHARE`] of all measurements reach: beyond it no taper is left.
/// Chi-square table, three degrees of freedom.
const FARTHEST: f64 = 11.345;

/// An error is at least this: the tables themselves are rounded, and their rows close within 4 µm.
const LEAST_ERROR: Length = Length::um(4.0);

/// No turned part of this trade is longer or wider, and no square of it overflows.
const GREATEST: Length = Length::mm(10_000.0);

/// How far a cone may run past its gauge plane, as a share of its length. Morse and metric shanks do by 4 to 9.4 %
/// (ISO 296).
const PAST_GAUGE: f64 = 0.10;

/// The same for Brown & Sharpe, whose longest other plug depths are 13.75 % beyond the table (no 10, 5 11/16 for 5 in).
const PAST_GAUGE_BROWN_SHARPE: f64 = 0.14;

/// How far a cone may run past the small end of its table, as a share of its length: published lengths of one size
/// differ by up to 4.4 % (7/24 no 40, 65.4 mm and 2.687 in).
const PAST_SMALL_END: f64 = 0.05;

/// How much less likely a reading is taken to be when a place lies beyond the length of the table. A judgement of ours:
/// such cones are made, but few. It changes the order of the candidates only.
const BEYOND_TABLE: f64 = 0.1;

/// Which standard tapers a cone may be, from two diameters and the distance between them.
///
/// `share` of a candidate: the readings are moved by least squares until they lie on the taper. The sum of squares that
/// remains, each in standard deviations, is chi-square with one degree of freedom, that of the ratio, and with one more
/// for each place that would lie beyond an end of the taper (10 % of the length past its gauge plane, 14 % for
/// Brown & Sharpe, and 5 % past its small end, are still on it). So a taper is as often excluded wrongly as
/// [`LEAST_SHARE`] says, and no more often with a place near its end.
///
/// Candidates are ordered by `likelihood`: that of the readings if both places may be anywhere on the taper, a tenth of it
/// with a place beyond the length of the table. Of two with the same ratio, the one of which the places span the greater
/// part comes first: a drill-chuck taper before the Morse taper that it is a piece of. It is no reason to leave out the
/// second.
///
/// # Findings
/// All input is accepted; [`Verdict`] says what is wrong with it. Diameters in the other order are swapped, and
/// [`LargeEnd::TowardFreeEnd`] says so.
/// # Accuracy
/// Ratio and angle to first order in the errors. The share is exact, to the sixth decimal, for normal errors apart from
/// each other and places away from the ends; near an end it may be too great, never too small.
/// # Source
/// Least squares with bounds and the chi-square test, as in any textbook of statistics; the limits are named above.
/// # Example
/// ```
/// use skimwright::part::{Measured, TaperReading, Verdict, recognise};
/// use skimwright::quantity::Length;
/// let mm = |value, error| Measured { value: Length::mm(value), error: Length::mm(error) };
/// let seen = recognise(&TaperReading {
///     large: mm(23.72, 0.02),
///     small: mm(19.96, 0.02),
///     distance: mm(75.0, 0.1),
/// });
/// assert_eq!(seen.verdict, Verdict::Found);
/// assert_eq!(seen.candidates[0].size.code(), "morse-3");
/// ```
pub fn recognise(reading: &TaperReading) -> Recognition {
    let (seen, large_end) = Seen::of(reading);
    let mut answer = Recognition {
        ratio: None,
        half_angle: None,
        large_end,
        candidates: Vec::new(),
        verdict: Verdict::NotALength,
    };
    if !is_possible(reading) {
        return answer;
    }
    if seen.distance <= 2.0 * seen.distance_variance.sqrt() {
        answer.verdict = Verdict::NoDistance;
        return answer;
    }
    let ratio = seen.ratio();
    answer.ratio = Some(ratio);
    answer.half_angle = Some(half_angle(ratio));
    answer.verdict = if seen.is_parallel() {
        Verdict::NoChange
    } else if ratio.value > STEEPEST {
        Verdict::TooSteep
    } else {
        answer.candidates = candidates(&seen);
        match answer.candidates.as_slice() {
            [only] if only.share >= LEAST_SHARE => Verdict::Found,
            [] | [_] => Verdict::NoneOfThese,
            _ => Verdict::NotToldApart,
        }
    };
    answer
}

/// Change of diameter over distance of a cone of 90° included.
const STEEPEST: f64 = 2.0;

/// Whether every figure is one that can be reckoned with. The distance may be nought or less here.
fn is_possible(reading: &TaperReading) -> bool {
    let diameters = [reading.large.value, reading.small.value];
    let errors = [
        reading.large.error,
        reading.small.error,
        reading.distance.error,
    ];
    // Written so that a NaN fails.
    diameters
        .iter()
        .all(|&diameter| Length::ZERO < diameter && diameter <= GREATEST)
        && errors
            .iter()
            .all(|&error| Length::ZERO <= error && error <= GREATEST)
        && reading.distance.value.abs() <= GREATEST
}

/// A reading in millimetres and square millimetres, the larger diameter first.
struct Seen {
    large: f64,
    small: f64,
    distance: f64,
    large_variance: f64,
    small_variance: f64,
    distance_variance: f64,
}

impl Seen {
    fn of(reading: &TaperReading) -> (Self, LargeEnd) {
        let reversed = reading.large.value < reading.small.value;
        let (large, small, large_end) = if reversed {
            (reading.small, reading.large, LargeEnd::TowardFreeEnd)
        } else {
            (reading.large, reading.small, LargeEnd::TowardShoulder)
        };
        let seen = Self {
            large: large.value.to_mm(),
            small: small.value.to_mm(),
            distance: reading.distance.value.to_mm(),
            large_variance: variance(large.error),
            small_variance: variance(small.error),
            distance_variance: variance(reading.distance.error),
        };
        (seen, large_end)
    }

    /// What the change of diameter can be off, squared.
    fn change_variance(&self) -> f64 {
        self.large_variance + self.small_variance
    }

    fn is_parallel(&self) -> bool {
        self.large - self.small <= 2.0 * self.change_variance().sqrt()
    }

    fn ratio(&self) -> Measured<f64> {
        let value = (self.large - self.small) / self.distance;
        let variance = self.change_variance() + value * value * self.distance_variance;
        Measured {
            value,
            error: 2.0 * variance.sqrt() / self.distance,
        }
    }
}

/// The square of one standard deviation, of which an error is two.
fn variance(error: Length) -> f64 {
    let deviation = error.max(LEAST_ERROR).to_mm() / 2.0;
    deviation * deviation
}

fn half_angle(ratio: Measured<f64>) -> Measured<Angle> {
    let tangent = ratio.value / 2.0;
    Measured {
        value: Angle::radians(tangent.atan()),
        error: Angle::radians(ratio.error / 2.0 / (1.0 + tangent * tangent)),
    }
}

/// The tapers that are not excluded, likeliest first; the nearest alone if all are.
fn candidates(seen: &Seen) -> Vec<Candidate> {
    let near = (0_u8..)
        .zip(TAPERS)
        .filter(|(_, taper)| may_agree(seen, taper));
    let mut found: Vec<(Candidate, f64)> = near
        .filter_map(|(index, taper)| weigh(seen, taper, index))
        .filter(|(candidate, _)| candidate.share >= LEAST_SHARE)
        .collect();
    if found.is_empty() {
        // Far off, every share is nought: the sum of squares behind it still has an order.
        let nearest = (0_u8..)
            .zip(TAPERS)
            .min_by(|(_, a), (_, b)| fit(seen, a).squares.total_cmp(&fit(seen, b).squares));
        found.extend(nearest.and_then(|(index, taper)| weigh(seen, taper, index)));
    }
    order::by_number(&mut found, |(_, number)| -number);
    let best = found.first().map_or(0.0, |(_, log)| *log);
    found
        .into_iter()
        .map(|(candidate, log)| Candidate {
            likelihood: (log - best).exp(),
            ..candidate
        })
        .collect()
}

/// Whether ratio and ends, each alone, leave this taper in question: quick tests before the whole sum, which is never
/// less than any of them.
fn may_agree(seen: &Seen, taper: &StandardTaper) -> bool {
    let ratio = taper.ratio;
    let off = seen.large - seen.small - ratio * seen.distance;
    let variance = seen.change_variance() + ratio * ratio * seen.distance_variance;
    if off * off > FARTHEST * variance {
        return false;
    }
    let (most, least) = ends(taper);
    let beyond_large = (seen.large - most).max(0.0);
    let beyond_small = (least - seen.small).max(0.0);
    beyond_large * beyond_large <= FARTHEST * seen.large_variance
        && beyond_small * beyond_small <= FARTHEST * seen.small_variance
}

/// A taper as a candidate, and the logarithm of its likelihood.
fn weigh(seen: &Seen, taper: &'static StandardTaper, index: u8) -> Option<(Candidate, f64)> {
    let fit = fit(seen, taper);
    let length = taper.length.to_mm();
    let from_gauge = |diameter: f64| (taper.large_diameter.to_mm() - diameter) / taper.ratio;
    let to_gauge = Measured {
        value: from_gauge(fit.large),
        error: 2.0 * fit.large_variance.sqrt() / taper.ratio,
    };
    let small_error = 2.0 * fit.small_variance.sqrt() / taper.ratio;
    let past_gauge = taper.past_gauge.map_or(0.0, Length::to_mm);
    let candidate = Candidate {
        size: TaperSize::from_index(index)?,
        share: upper_tail(fit.squares, fit.count),
        residual: fit.off / fit.variance.sqrt(),
        likelihood: 1.0,
        gauge_plane: Measured {
            value: Length::mm(to_gauge.value),
            error: Length::mm(to_gauge.error),
        },
        on_taper: to_gauge.value >= -past_gauge - to_gauge.error
            && from_gauge(fit.small) <= length + small_error,
    };
    // Both places anywhere on the length, and the normal law of the ratio's residual: density of the three readings.
    let mut log = -(fit.squares + fit.variance.ln()) / 2.0 - taper.ratio.ln() - 2.0 * length.ln();
    if !candidate.on_taper {
        log += BEYOND_TABLE.ln();
    }
    Some((candidate, log))
}

/// The largest and the smallest diameter in millimetres that are still on the taper.
fn ends(taper: &StandardTaper) -> (f64, f64) {
    let change = taper.length.to_mm() * taper.ratio;
    (
        taper.large_diameter.to_mm() + change * past_share(taper),
        taper.small_diameter.to_mm() - change * PAST_SMALL_END,
    )
}

/// How far the cone may run past its gauge plane, as a share of its length.
fn past_share(taper: &StandardTaper) -> f64 {
    if taper.series == TaperSeries::BrownSharpe {
        PAST_GAUGE_BROWN_SHARPE
    } else {
        PAST_GAUGE
    }
}

/// How readings lie to one taper.
struct Fit {
    /// Measured change of diameter less that of the taper.
    off: f64,
    /// The square of what `off` can be.
    variance: f64,
    /// The diameters that ratio and distance make of the readings, and the squares of what they can be off.
    large: f64,
    small: f64,
    large_variance: f64,
    small_variance: f64,
    /// Least sum of squares with both places on the taper, and how many squares it is of.
    squares: f64,
    count: u8,
}

/// Least squares in the two true diameters, which may not lie beyond the ends of the taper.
fn fit(seen: &Seen, taper: &StandardTaper) -> Fit {
    let Seen {
        large,
        small,
        large_variance,
        small_variance,
        ..
    } = *seen;
    let ratio = taper.ratio;
    let (most, least) = ends(taper);
    let change = ratio * seen.distance;
    let change_variance = ratio * ratio * seen.distance_variance;
    let variance = large_variance + small_variance + change_variance;
    let off = large - small - change;
    let mut fit = Fit {
        off,
        variance,
        large: large - off * large_variance / variance,
        small: small + off * small_variance / variance,
        large_variance: large_variance * (small_variance + change_variance) / variance,
        small_variance: small_variance * (large_variance + change_variance) / variance,
        squares: off * off / variance,
        count: 1,
    };
    if fit.large <= most && least <= fit.small {
        return fit;
    }
    // The least sum lies with one place at its end, or with both: the best of these that leaves the other on the taper.
    let beyond_large = (large - most).powi(2) / large_variance;
    let beyond_small = (small - least).powi(2) / small_variance;
    let small_off = small + change - most;
    let large_off = large - change - least;
    let with_small = small_variance + change_variance;
    let with_large = large_variance + change_variance;
    fit.squares = beyond_large + beyond_small + (most - least - change).powi(2) / change_variance;
    fit.count = 3;
    for (squares, is_on) in [
        (
            beyond_large + small_off * small_off / with_small,
            least <= small - small_off * small_variance / with_small,
        ),
        (
            beyond_small + large_off * large_off / with_large,
            large - large_off * large_variance / with_large <= most,
        ),
    ] {
        if is_on && squares < fit.squares {
            fit.squares = squares;
            fit.count = 2;
        }
    }
    fit
}
