//! Speed and time of turning, the one home of both formulas.

use core::f64::consts::PI;

use crate::quantity::{Feed, Length, RotationalSpeed, Speed, Time};
use crate::tables::Confirmed;
use crate::working::Source;

/// Where speed and cutting time come from. The numbers of chapters and equations differ between editions.
pub(super) const TURNING_SOURCE: Source = Source::Published {
    title: "M. P. Groover, Fundamentals of Modern Manufacturing, machining operations: cutting conditions in turning",
    confirmed: Confirmed::OneSource,
};

/// The spindle speed that gives a cutting speed on a diameter above zero: n = 1000 v/(π D).
///
/// # Accuracy
/// Exact; the chuck turns a little slower under load.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, cutting conditions in turning: N = v/(π D).
/// # Example
/// ```
/// use skimwright::cutting::spindle_speed;
/// use skimwright::quantity::{Length, Speed};
/// let speed = spindle_speed(Speed::m_per_min(30.0), Length::mm(50.0));
/// assert_eq!(speed.to_per_min().round(), 191.0);
/// ```
pub fn spindle_speed(cutting_speed: Speed, diameter: Length) -> RotationalSpeed {
    debug_assert!(diameter > Length::ZERO, "a diameter above zero");
    RotationalSpeed::per_min(cutting_speed.to_m_per_min() * 1000.0 / (PI * diameter.to_mm()))
}

/// The cutting speed on a diameter at a spindle speed: v = π D n/1000.
///
/// # Source
/// As [`spindle_speed`], turned round.
/// # Example
/// ```
/// use skimwright::cutting::surface_speed;
/// use skimwright::quantity::{Length, RotationalSpeed};
/// let speed = surface_speed(Length::mm(12.5), RotationalSpeed::per_min(400.0));
/// assert!((speed.to_m_per_min() - 15.7).abs() < 0.05);
/// ```
pub fn surface_speed(diameter: Length, spindle: RotationalSpeed) -> Speed {
    Speed::m_per_min(PI * diameter.to_mm() * spindle.to_per_min() / 1000.0)
}

/// How long a travel along or across the work takes under feed, both feed and speed above zero: T = L/(f N).
///
/// # Accuracy
/// Exact for a spindle that keeps its speed.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, cutting conditions in turning.
/// # Example
/// ```
/// use skimwright::cutting::turning_time;
/// use skimwright::quantity::{Feed, Length, RotationalSpeed};
/// // 100 mm at 0.1 mm a revolution are 1000 revolutions: two minutes at 500 a minute.
/// let feed = Feed::mm_per_rev(0.1);
/// let time = turning_time(Length::mm(100.0), feed, RotationalSpeed::per_min(500.0));
/// assert!((time.to_minutes() - 2.0).abs() < 1e-12);
/// ```
pub fn turning_time(travel: Length, feed: Feed, speed: RotationalSpeed) -> Time {
    let along = feed * speed;
    debug_assert!(along > Speed::ZERO, "a feed above zero");
    travel / along
}
