//! Times of cuts that go across the work, into it or along a cone: facing, parting off, centre drilling.
//!
//! Diameters throughout; a cut that ends on the axis ends at zero. Time is that under feed alone, without handling.

use super::force::{SpecificForce, tangential_force};
use super::turning::{spindle_speed, surface_speed, turning_time};
use crate::quantity::{Feed, Force, Length, RotationalSpeed, Speed, Time};
use crate::tables::{Spread, ToolKind};

/// How long facing takes from one diameter to another at one spindle speed: t = (D₁ − D₂)/(2 · f · n).
///
/// Feed and speed must be above zero.
///
/// # Accuracy
/// Exact for a spindle that keeps its speed.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, operations related to turning.
/// # Example
/// ```
/// use skimwright::cutting::facing_time;
/// use skimwright::quantity::{Feed, Length, RotationalSpeed};
/// let (feed, spindle) = (Feed::mm_per_rev(0.1), RotationalSpeed::per_min(500.0));
/// let time = facing_time(Length::mm(40.0), Length::ZERO, feed, spindle);
/// assert!((time.to_minutes() - 0.4).abs() < 1e-12);
/// ```
pub fn facing_time(from: Length, to: Length, feed: Feed, spindle: RotationalSpeed) -> Time {
    turning_time((from - to).abs() / 2.0, feed, spindle)
}

/// A spindle that keeps a cutting speed as the diameter changes, up to its highest speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeldSpeed {
    /// The cutting speed that it keeps, above zero.
    pub cutting_speed: Speed,
    /// The highest spindle speed, above zero.
    pub top: RotationalSpeed,
}

impl HeldSpeed {
    /// The diameter under which the spindle goes no faster: D = 1000 · v/(π · n).
    ///
    /// # Source
    /// As [`spindle_speed`], solved for the diameter.
    pub fn capped_below(&self) -> Length {
        // The surface speed of one millimetre is the speed for each millimetre of diameter.
        let each = surface_speed(Length::mm(1.0), self.top);
        Length::mm(self.cutting_speed / each)
    }

    /// The spindle speed at a diameter.
    pub fn at(&self, diameter: Length) -> RotationalSpeed {
        if diameter <= self.capped_below() {
            self.top
        } else {
            spindle_speed(self.cutting_speed, diameter)
        }
    }
}

/// How long a cut along a cone takes while the cutting speed is held: t = π · D · L/(1000 · v · f) with the mean
/// diameter, and L/(f · n) on the part where the spindle is at its highest.
///
/// `path` is the way of the tool from one diameter to the other, along the surface. Feed above zero.
///
/// # Accuracy
/// Exact; with the length along the axis for the path it is short by the cosine of the cone's half angle.
/// # Source
/// Integral of the plain cutting time; M. P. Groover, Fundamentals of Modern Manufacturing, problems of chapter 22.
pub fn held_speed_time(
    (from, to): (Length, Length),
    path: Length,
    feed: Feed,
    held: HeldSpeed,
) -> Time {
    let (small, large) = (from.min(to).max(Length::ZERO), from.max(to));
    let border = held.capped_below().max(small).min(large);
    let capped_share = if small < large {
        (border - small) / (large - small)
    } else if large <= held.capped_below() {
        1.0
    } else {
        0.0
    };
    let capped = turning_time(path * capped_share, feed, held.top);
    if capped_share >= 1.0 {
        return capped;
    }
    let mean = (large + border) / 2.0;
    let free = path * (1.0 - capped_share);
    // A cone unrolled has the same area as a cylinder of its mean diameter.
    capped + turning_time(free, feed, spindle_speed(held.cutting_speed, mean))
}

/// How long facing takes while the cutting speed is held.
///
/// # Accuracy
/// As [`held_speed_time`].
/// # Source
/// The same, with the way across the face.
/// # Example
/// ```
/// use skimwright::cutting::{HeldSpeed, facing_time_at_held_speed};
/// use skimwright::quantity::{Feed, Length, RotationalSpeed, Speed};
/// let held = HeldSpeed {
///     cutting_speed: Speed::m_per_min(80.0),
///     top: RotationalSpeed::per_min(1500.0),
/// };
/// let time = facing_time_at_held_speed(Length::mm(40.0), Length::ZERO, Feed::mm_per_rev(0.1), held);
/// assert!((time.to_minutes() - 0.1854).abs() < 0.0001);
/// ```
pub fn facing_time_at_held_speed(from: Length, to: Length, feed: Feed, held: HeldSpeed) -> Time {
    held_speed_time((from, to), (from - to).abs() / 2.0, feed, held)
}

/// How far from the end of parting off the feed is halved, on radius.
///
/// # Source
/// From memory.
pub const PARTING_LAST: Length = Length::mm(2.0);

/// How long parting off takes from a diameter to the hole or the axis, the feed halved over the last way.
///
/// # Accuracy
/// Exact for a spindle that keeps its speed.
/// # Source
/// Time under feed as for [`facing_time`]; the half feed from memory.
pub fn parting_time(from: Length, to: Length, feed: Feed, spindle: RotationalSpeed) -> Time {
    let way = (from - to).abs() / 2.0;
    let last = way.min(PARTING_LAST);
    turning_time(way - last, feed, spindle) + turning_time(last, feed / 2.0, spindle)
}

/// The feeds for parting off.
///
/// # Source
/// From memory; for boron nitride there is none, it does not part off here.
pub const fn parting_feeds(tool: ToolKind) -> Option<Spread<Feed>> {
    let (low, typical, high) = match tool {
        ToolKind::HighSpeedSteel => (0.03, 0.05, 0.10),
        ToolKind::BrazedCarbide | ToolKind::IndexableCarbide | ToolKind::IndexableFlat => {
            (0.05, 0.08, 0.15)
        }
        ToolKind::CubicBoronNitride | ToolKind::Ceramic | ToolKind::Grinding => return None,
    };
    Some(Spread {
        low: Feed::mm_per_rev(low),
        typical: Feed::mm_per_rev(typical),
        high: Feed::mm_per_rev(high),
    })
}

/// The cutting speed for parting off over that for turning. From memory.
pub const PARTING_SPEED_SHARE: Spread<f64> = Spread {
    low: 0.5,
    typical: 0.6,
    high: 0.7,
};

/// How far a parting blade may stand out, as a multiple of its width. From memory.
pub const PARTING_OVERHANG: f64 = 8.0;

/// The tangential force of parting off with a blade of a width: Fc = kc1.1 · f^(1−mc) · w, feed and width above zero.
///
/// # Accuracy
/// As [`SpecificForce::at`] for a chip as thick as the feed; chips that jam in the slot add to it.
/// # Source
/// O. Kienzle's law on a chip as wide as the blade.
/// # Example
/// ```
/// use skimwright::cutting::{SpecificForce, parting_force};
/// use skimwright::quantity::{Feed, Length, Stress};
/// let steel = SpecificForce { at_one: Stress::mpa(1500.0), exponent: 0.25 };
/// // 3000 N/mm² on 3 · 0.0625 mm².
/// let force = parting_force(steel, Feed::mm_per_rev(0.0625), Length::mm(3.0));
/// assert!((force.to_newtons() - 562.5).abs() < 1e-9);
/// ```
pub fn parting_force(specific: SpecificForce, feed: Feed, width: Length) -> Force {
    tangential_force(specific, feed.in_one_turn(), width * feed)
}

/// The cutting speed at the pilot of a centre drill of high-speed steel. From memory.
pub const CENTRE_DRILL_SPEED: Spread<Speed> = Spread {
    low: Speed::m_per_min(15.0),
    typical: Speed::m_per_min(20.0),
    high: Speed::m_per_min(25.0),
};

/// The feed of a centre drill with a pilot of 1 to 3 mm. From memory.
pub const CENTRE_DRILL_FEED: Spread<Feed> = Spread {
    low: Feed::mm_per_rev(0.02),
    typical: Feed::mm_per_rev(0.03),
    high: Feed::mm_per_rev(0.05),
};

/// The spindle speed for a centre drill by its pilot, and no more than the lathe has; in a hole of no width that.
///
/// # Accuracy
/// Exact for the cutting speed. The rim of the cone then runs three times as fast, which its short cut allows.
/// # Source
/// As [`spindle_speed`]; the speed by the pilot: from memory.
/// # Example
/// ```
/// use skimwright::cutting::{CENTRE_DRILL_SPEED, centre_drill_spindle_speed};
/// use skimwright::quantity::{Length, RotationalSpeed};
/// let (pilot, top) = (Length::mm(2.0), RotationalSpeed::per_min(2000.0));
/// // 20 m/min on 2 mm would be 3183 revolutions a minute.
/// assert_eq!(centre_drill_spindle_speed(pilot, CENTRE_DRILL_SPEED.typical, top), top);
/// ```
pub fn centre_drill_spindle_speed(
    pilot: Length,
    cutting_speed: Speed,
    top: RotationalSpeed,
) -> RotationalSpeed {
    if pilot <= Length::ZERO {
        return top;
    }
    spindle_speed(cutting_speed, pilot).min(top)
}

/// How long a centre drill feeds to a depth; feed and speed above zero. Backing out to clear chips is not counted.
///
/// # Accuracy
/// By hand on the tailstock the feed is a guess, so the time is too: half to twice.
/// # Source
/// Time under feed, as [`turning_time`].
pub fn centre_drilling_time(depth: Length, feed: Feed, spindle: RotationalSpeed) -> Time {
    turning_time(depth, feed, spindle)
}

#[cfg(test)]
mod tests {
    use core::f64::consts::PI;

    use super::*;

    const HELD: HeldSpeed = HeldSpeed {
        cutting_speed: Speed::m_per_min(80.0),
        top: RotationalSpeed::per_min(1500.0),
    };

    fn face(from: f64, to: f64) -> f64 {
        let feed = Feed::mm_per_rev(0.1);
        facing_time_at_held_speed(Length::mm(from), Length::mm(to), feed, HELD).to_minutes()
    }

    #[test]
    fn the_cap_begins_where_the_spindle_is_at_its_highest() {
        assert!((HELD.capped_below().to_mm() - 16.977).abs() < 0.001);
        assert_eq!(HELD.at(Length::ZERO), HELD.top);
        assert_eq!(HELD.at(Length::mm(16.0)), HELD.top);
        assert!(HELD.at(Length::mm(40.0)) < HELD.top);
    }

    /// Two stretches that meet anywhere take the time of the whole, before the cap, across it and under it.
    #[test]
    fn facing_in_two_stretches_takes_the_same_time() {
        for between in [30.0, 16.977, 10.0] {
            let parts = face(40.0, between) + face(between, 0.0);
            assert!((parts - face(40.0, 0.0)).abs() < 1e-12, "{between}");
        }
        // Under the cap it is the plain rule: 5 mm at 150 mm/min.
        assert!((face(10.0, 0.0) - 5.0 / 150.0).abs() < 1e-12);
        assert!((face(0.0, 40.0) - face(40.0, 0.0)).abs() < 1e-12);
    }

    #[test]
    fn a_cylinder_is_a_cone_that_does_not_close() {
        let feed = Feed::mm_per_rev(0.1);
        let along = |diameter| {
            let both = (Length::mm(diameter), Length::mm(diameter));
            held_speed_time(both, Length::mm(100.0), feed, HELD).to_minutes()
        };
        let turns = 80_000.0 / (PI * 40.0);
        assert!((along(40.0) - 100.0 / (0.1 * turns)).abs() < 1e-12);
        assert!((along(10.0) - 100.0 / 150.0).abs() < 1e-12);
    }

    /// 20 mm solid at 0.05 and 400: 8 mm at 20 mm/min and 2 mm at 10 mm/min.
    #[test]
    fn parting_off_ends_at_half_the_feed() {
        let (feed, spindle) = (Feed::mm_per_rev(0.05), RotationalSpeed::per_min(400.0));
        let time = parting_time(Length::mm(20.0), Length::ZERO, feed, spindle);
        assert!((time.to_minutes() - 0.6).abs() < 1e-12);
        let tube = parting_time(Length::mm(20.0), Length::mm(18.0), feed, spindle);
        assert!((tube.to_minutes() - 0.1).abs() < 1e-12);
    }
}
