//! Readings round the work in one plane, and how far its axis is off there.
//!
//! The indicator stands still while the work is turned. A reading belongs to the side of the work that is under the
//! indicator, counted from jaw 1 towards jaw 2; it is higher where the work stands out.
//!
//! The readings of one plane are fitted by a mean and one wave a turn, by least squares: the wave is the offset of the
//! axis, what is left over is the form of the work and errors of reading.

use core::f64::consts::TAU;

use serde::Serialize;

use super::offset::Offset;
use crate::quantity::{Angle, Length};

/// The fewest readings round one plane.
pub const FEWEST_READINGS: usize = 2;

/// The most readings round one plane.
pub const MOST_READINGS: usize = 8;

/// Below this readings lie at fewer than three places: the worst three of eight, side by side, have 0.057.
const LEAST_DETERMINANT: f64 = 1e-6;

/// Why readings give no offset.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum DiallingError {
    /// Fewer than two places round the work.
    TooFew,
    /// More than eight.
    TooMany,
    /// So many readings are missing that those left do not say to which side the axis is off.
    Missing {
        /// How many more are needed at least.
        more: usize,
    },
    /// Both planes lie at the same place, so nothing says how the axis is tilted.
    SamePlane,
    /// A plane was read at two places round only, which gives the offset along one line and not its direction.
    OneLineOnly,
}

/// What the readings of one plane tell.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Dialled {
    /// How far the work's axis is off, and to which side.
    pub offset: Offset,
    /// Whether that is all of it.
    pub known: Known,
    /// Largest less smallest of the readings as they were taken.
    pub span: Length,
    /// The largest distance of a reading from the fitted wave: out of round, or misread. Zero where there are no more
    /// readings than unknowns.
    pub left_over: Length,
    /// How much the offset may be wrong, in its worst direction, for each part that a reading may be wrong.
    pub error_share: f64,
}

/// How much of an offset the readings tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Known {
    /// Both size and direction.
    Both,
    /// Only its part along the line through the two places that were read.
    AlongOneLine,
}

impl Dialled {
    /// The offset from readings at places spread evenly round the work, the first at jaw 1; `None` where one was not
    /// taken.
    ///
    /// With four places: at 0°, 90°, 180°, 270°. Two places give only the part along their line.
    ///
    /// # Errors
    /// [`DiallingError::TooFew`], [`DiallingError::TooMany`], and [`DiallingError::Missing`] with fewer than three
    /// readings at three or more places, or fewer than two at two.
    /// # Accuracy
    /// Exact for round work and true readings. Times the standard uncertainty of a reading,
    /// [`error_share`](Self::error_share) gives that of the offset.
    /// # Source
    /// Least squares. With n ≥ 3 even places this is the first harmonic, e = (2/n) Σ R (cos, sin) with share √(2/n);
    /// with four, (R₀ − R₁₈₀)/2 and (R₉₀ − R₂₇₀)/2.
    /// # Example
    /// ```
    /// use skimwright::holding::Dialled;
    /// use skimwright::quantity::Length;
    /// let readings = [20.0, 34.0, 12.0, -2.0].map(|it| Some(Length::um(it)));
    /// let found = Dialled::from_readings(&readings).unwrap();
    /// assert!((found.offset.x().to_um() - 4.0).abs() < 1e-9);
    /// assert!((found.offset.y().to_um() - 18.0).abs() < 1e-9);
    /// ```
    pub fn from_readings(readings: &[Option<Length>]) -> Result<Self, DiallingError> {
        let places = readings.len();
        if places < FEWEST_READINGS {
            return Err(DiallingError::TooFew);
        }
        if places > MOST_READINGS {
            return Err(DiallingError::TooMany);
        }
        let taken: Vec<Reading> = readings
            .iter()
            .zip((0_u8..).map(f64::from))
            .filter_map(|(reading, index)| {
                let (sin, cos) = (TAU * index / places_as_number(readings)).sin_cos();
                reading.map(|it| Reading {
                    value: it.to_mm(),
                    cos,
                    sin,
                })
            })
            .collect();
        let needed = places.min(3);
        if taken.len() < needed {
            let more = needed - taken.len();
            return Err(DiallingError::Missing { more });
        }
        let fit = match taken.as_slice() {
            [first, second] => Fit::along_one_line(*first, *second),
            _ => Fit::least_squares(&taken).ok_or(DiallingError::Missing { more: 1 })?,
        };
        Ok(fit.dialled(&taken))
    }

    /// Total indicated runout of the axis alone: twice the offset.
    pub fn runout(&self) -> Length {
        self.offset.runout()
    }

    /// How far off the direction may be when a reading may be wrong by `reading_error`; `None` when it may be any.
    pub fn direction_error(&self, reading_error: Length) -> Option<Angle> {
        let (wrong, size) = (reading_error.abs() * self.error_share, self.offset.size());
        (self.known == Known::Both && wrong < size).then(|| Angle::radians((wrong / size).asin()))
    }
}

/// The number of places, which is small.
fn places_as_number(readings: &[Option<Length>]) -> f64 {
    readings.iter().map(|_| 1.0).sum()
}

/// One reading in mm, and where round the work.
#[derive(Clone, Copy)]
struct Reading {
    value: f64,
    cos: f64,
    sin: f64,
}

/// A mean and a wave.
struct Fit {
    mean: f64,
    x: f64,
    y: f64,
    known: Known,
    error_share: f64,
}

impl Fit {
    /// Two readings opposite each other.
    fn along_one_line(first: Reading, second: Reading) -> Self {
        let half = (first.value - second.value) / 2.0;
        Self {
            mean: f64::midpoint(first.value, second.value),
            x: half * first.cos,
            y: half * first.sin,
            known: Known::AlongOneLine,
            error_share: core::f64::consts::FRAC_1_SQRT_2,
        }
    }

    /// Three readings or more; `None` if they lie so that they cannot tell, which needs two at one place.
    fn least_squares(taken: &[Reading]) -> Option<Self> {
        let count: f64 = taken.iter().map(|_| 1.0).sum();
        let mean_of = |of: fn(&Reading) -> f64| taken.iter().map(of).sum::<f64>() / count;
        let (value, cos, sin) = (
            mean_of(|it| it.value),
            mean_of(|it| it.cos),
            mean_of(|it| it.sin),
        );
        // About the means, so that the mean falls out and two unknowns are left.
        let sum = |of: &dyn Fn(f64, f64, f64) -> f64| -> f64 {
            let parts = taken.iter();
            parts
                .map(|it| of(it.value - value, it.cos - cos, it.sin - sin))
                .sum()
        };
        let (xx, yy, xy) = (
            sum(&|_, c, _| c * c),
            sum(&|_, _, s| s * s),
            sum(&|_, c, s| c * s),
        );
        let (vx, vy) = (sum(&|v, c, _| v * c), sum(&|v, _, s| v * s));
        let determinant = xx * yy - xy * xy;
        if determinant <= LEAST_DETERMINANT {
            return None;
        }
        let x = (vx * yy - vy * xy) / determinant;
        let y = (vy * xx - vx * xy) / determinant;
        // The variance in the worst direction is the inverse of the smaller eigenvalue.
        let least = f64::midpoint(xx, yy) - ((xx - yy) / 2.0).hypot(xy);
        Some(Self {
            mean: value - x * cos - y * sin,
            x,
            y,
            known: Known::Both,
            error_share: 1.0 / least.sqrt(),
        })
    }

    fn dialled(&self, taken: &[Reading]) -> Dialled {
        let values = || taken.iter().map(|it| it.value);
        let highest = values().fold(f64::NEG_INFINITY, f64::max);
        let lowest = values().fold(f64::INFINITY, f64::min);
        let left_over = taken
            .iter()
            .map(|it| (it.value - self.mean - self.x * it.cos - self.y * it.sin).abs())
            .fold(0.0, f64::max);
        Dialled {
            offset: Offset::new(Length::mm(self.x), Length::mm(self.y)),
            known: self.known,
            span: Length::mm(highest - lowest),
            left_over: Length::mm(left_over),
            error_share: self.error_share,
        }
    }
}
