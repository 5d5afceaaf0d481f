//! Power, torque and metal removed. Depth is on radius; the diameter is the one before the cut unless named otherwise.

use super::turning::surface_speed;
use crate::quantity::{
    Feed, Force, Length, Power, RemovalRate, RotationalSpeed, Speed, Stress, Torque,
};
use crate::tables::Spread;

/// The power at the edge: P = Fc · v.
///
/// # Accuracy
/// Exact for the force put in; the feed takes next to nothing.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, power and energy relationships in machining.
/// # Example
/// ```
/// use skimwright::cutting::cutting_power;
/// use skimwright::quantity::{Force, Speed};
/// let power = cutting_power(Force::newtons(600.0), Speed::m_per_min(100.0));
/// assert!((power.to_watts() - 1000.0).abs() < 1e-9);
/// ```
pub fn cutting_power(tangential: Force, speed: Speed) -> Power {
    tangential * speed
}

/// The share of the motor's power that reaches the edge of a lathe with belt and gears: 0.7 to 0.85. From memory.
pub const LATHE_EFFICIENCY: Spread<f64> = Spread {
    low: 0.7,
    typical: 0.8,
    high: 0.85,
};

/// What the motor must give for a power at the edge: P/η, with the efficiency above 0 and up to 1.
///
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, as [`cutting_power`].
pub fn motor_power(at_the_edge: Power, efficiency: f64) -> Power {
    debug_assert!(
        0.0 < efficiency && efficiency <= 1.0,
        "a share of the power"
    );
    at_the_edge / efficiency
}

/// The moment that a cut puts on the chuck: T = Fc · D/2, with the diameter where the force acts.
///
/// # Source
/// Plain statics.
/// # Example
/// ```
/// use skimwright::cutting::cutting_torque;
/// use skimwright::quantity::{Force, Length};
/// let torque = cutting_torque(Force::newtons(1000.0), Length::mm(40.0));
/// assert!((torque.to_newton_metres() - 20.0).abs() < 1e-12);
/// ```
pub fn cutting_torque(tangential: Force, diameter: Length) -> Torque {
    tangential * (diameter / 2.0)
}

/// The torque at the spindle that a motor can hold at a spindle speed above zero: P · η/ω.
///
/// # Accuracy
/// For a lathe that gears its motor down. One that slows the motor itself has less torque at low speed than this.
/// # Source
/// Plain mechanics: 9550 · P · η/n in kilowatts and revolutions per minute.
pub fn spindle_torque(motor: Power, efficiency: f64, spindle: RotationalSpeed) -> Torque {
    (motor * efficiency).torque_at(spindle)
}

/// The metal that a cut removes by the handbook's product of depth, feed and speed: Q = a · f · v.
///
/// # Accuracy
/// Exact when the speed is that at the middle of the cut; with the speed before the cut it is a share a/D too much.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, cutting conditions in turning.
pub fn removal_rate(depth: Length, feed: Feed, speed: Speed) -> RemovalRate {
    (depth * feed) * speed
}

/// The metal really removed at a spindle speed: Q = π · (D − a) · a · f · n.
///
/// # Accuracy
/// Exact.
/// # Source
/// S. Kalpakjian and S. Schmid, Manufacturing Engineering and Technology, turning: the mean diameter.
/// # Example
/// ```
/// use skimwright::cutting::exact_removal_rate;
/// use skimwright::quantity::{Feed, Length, RotationalSpeed};
/// // 12.5 to 12 mm at 400 rpm and 0.5 mm a revolution.
/// let (depth, feed) = (Length::mm(0.25), Feed::mm_per_rev(0.5));
/// let rate = exact_removal_rate(Length::mm(12.5), depth, feed, RotationalSpeed::per_min(400.0));
/// assert!((rate.to_cm3_per_min() - 1.924).abs() < 0.001);
/// ```
pub fn exact_removal_rate(
    diameter: Length,
    depth: Length,
    feed: Feed,
    spindle: RotationalSpeed,
) -> RemovalRate {
    removal_rate(depth, feed, surface_speed(diameter - depth, spindle))
}

/// The power for a removal rate at a specific energy: P = u · Q. A joule a cubic millimetre is 1000 megapascals.
///
/// # Accuracy
/// As good as the energy, which depends on the chip's thickness: printed values spread by a third.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, and Kalpakjian and Schmid: unit power, specific energy.
pub fn power_by_energy(energy: Stress, rate: RemovalRate) -> Power {
    energy * rate
}
