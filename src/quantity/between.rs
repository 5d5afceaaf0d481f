//! Quantities in other units, and the products and quotients of two that mean a third.

use core::ops::{Div, Mul};

use super::units::{
    Angle, Area, Density, Expansion, Feed, Force, Length, Mass, Power, RemovalRate,
    RotationalSpeed, SecondMoment, Speed, Stress, TemperatureStep, Time, Torque, Volume,
};

/// Millimetres in an inch, exact since 1959.
pub(super) const MM_PER_INCH: f64 = 25.4;

/// Exact by definition: nought Celsius is 32 °F, and 180 °F are 100 K.
pub(super) fn celsius_from_fahrenheit(degrees: f64) -> f64 {
    (degrees - 32.0) / 1.8
}

/// The other way round.
pub(super) fn fahrenheit_from_celsius(degrees: f64) -> f64 {
    degrees * 1.8 + 32.0
}

/// Metres in a foot of twelve inches.
pub(super) const METRES_PER_FOOT: f64 = 0.3048;

/// Seconds in a minute.
pub(super) const SECONDS_PER_MINUTE: f64 = 60.0;

/// Grams in a pound avoirdupois, exact since 1959.
const GRAMS_PER_POUND: f64 = 453.592_37;

/// Newtons in a pound-force: the pound at the standard acceleration of 9.80665 m/s².
pub(super) const NEWTONS_PER_POUND_FORCE: f64 = 4.448_221_615_260_5;

/// Newton metres in a pound-force foot.
pub(super) const NEWTON_METRES_PER_POUND_FOOT: f64 = NEWTONS_PER_POUND_FORCE * METRES_PER_FOOT;

/// Watts in a mechanical horsepower of 550 pound-force feet a second.
pub(super) const WATTS_PER_HORSEPOWER: f64 = 550.0 * NEWTON_METRES_PER_POUND_FOOT;

impl Length {
    /// From a number of inches.
    #[inline]
    pub const fn inch(value: f64) -> Self {
        Self::mm(value * MM_PER_INCH)
    }

    /// From a number of micrometres, as tolerance tables print them.
    #[inline]
    pub const fn um(value: f64) -> Self {
        Self::mm(value / 1000.0)
    }

    /// The number of inches.
    #[inline]
    pub const fn to_inch(self) -> f64 {
        self.0 / MM_PER_INCH
    }

    /// The number of micrometres.
    #[inline]
    pub const fn to_um(self) -> f64 {
        self.0 * 1000.0
    }
}

impl Area {
    /// The number of square inches.
    #[inline]
    pub const fn to_square_inches(self) -> f64 {
        self.0 / (MM_PER_INCH * MM_PER_INCH)
    }
}

impl Force {
    /// The number of pounds-force.
    #[inline]
    pub const fn to_pounds_force(self) -> f64 {
        self.0 / NEWTONS_PER_POUND_FORCE
    }
}

impl Torque {
    /// The number of pound-force feet.
    #[inline]
    pub const fn to_pound_feet(self) -> f64 {
        self.0 / NEWTON_METRES_PER_POUND_FOOT
    }
}

impl Power {
    /// The number of mechanical horsepower.
    #[inline]
    pub const fn to_horsepower(self) -> f64 {
        self.0 / WATTS_PER_HORSEPOWER
    }

    /// The torque that carries this power at a speed; the speed must not be zero.
    pub fn torque_at(self, speed: RotationalSpeed) -> Torque {
        let radians_per_second = speed.0 / SECONDS_PER_MINUTE * core::f64::consts::TAU;
        Torque(self.0 / radians_per_second)
    }
}

impl Stress {
    /// The number of thousands of pounds-force per square inch.
    #[inline]
    pub const fn to_ksi(self) -> f64 {
        self.0 * MM_PER_INCH * MM_PER_INCH / NEWTONS_PER_POUND_FORCE / 1000.0
    }
}

impl SecondMoment {
    /// The number of inches to the fourth.
    #[inline]
    pub const fn to_inches4(self) -> f64 {
        self.0 / (MM_PER_INCH * MM_PER_INCH * MM_PER_INCH * MM_PER_INCH)
    }
}

impl Expansion {
    /// How much a length grows by a change of temperature.
    pub fn growth(self, length: Length, step: TemperatureStep) -> Length {
        Length(length.0 * self.0 * 1e-6 * step.0)
    }
}

impl Volume {
    /// The number of cubic inches.
    #[inline]
    pub const fn to_cubic_inches(self) -> f64 {
        self.0 / (MM_PER_INCH * MM_PER_INCH * MM_PER_INCH)
    }
}

impl Mass {
    /// The number of pounds (avoirdupois).
    #[inline]
    pub const fn to_pounds(self) -> f64 {
        self.0 / GRAMS_PER_POUND
    }
}

impl Angle {
    /// From a number of degrees.
    #[inline]
    pub const fn degrees(value: f64) -> Self {
        Self::radians(value * (core::f64::consts::PI / 180.0))
    }

    /// The number of degrees.
    #[inline]
    pub const fn to_degrees(self) -> f64 {
        self.0 * (180.0 / core::f64::consts::PI)
    }
}

impl Time {
    /// From a number of minutes.
    #[inline]
    pub const fn minutes(value: f64) -> Self {
        Self::seconds(value * SECONDS_PER_MINUTE)
    }

    /// The number of minutes.
    #[inline]
    pub const fn to_minutes(self) -> f64 {
        self.0 / SECONDS_PER_MINUTE
    }
}

impl Speed {
    /// From a number of feet per minute.
    #[inline]
    pub const fn ft_per_min(value: f64) -> Self {
        Self::m_per_min(value * METRES_PER_FOOT)
    }

    /// The number of feet per minute.
    #[inline]
    pub const fn to_ft_per_min(self) -> f64 {
        self.0 / METRES_PER_FOOT
    }
}

impl Feed {
    /// From a number of inches per revolution.
    #[inline]
    pub const fn inch_per_rev(value: f64) -> Self {
        Self::mm_per_rev(value * MM_PER_INCH)
    }

    /// The number of inches per revolution.
    #[inline]
    pub const fn to_inch_per_rev(self) -> f64 {
        self.0 / MM_PER_INCH
    }

    /// The feed that goes this far in each revolution.
    #[inline]
    pub const fn each_turn(travel: Length) -> Self {
        Self::mm_per_rev(travel.0)
    }

    /// How far it goes in one revolution.
    #[inline]
    pub const fn in_one_turn(self) -> Length {
        Length::mm(self.0)
    }
}

impl Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area(self.0 * other.0)
    }
}

impl Mul<Length> for Area {
    type Output = Volume;
    fn mul(self, length: Length) -> Volume {
        Volume(self.0 * length.0)
    }
}

impl Mul<Length> for Force {
    type Output = Torque;
    /// The moment of a force at an arm.
    fn mul(self, arm: Length) -> Torque {
        Torque(self.0 * arm.0 / 1000.0)
    }
}

impl Div<Volume> for Torque {
    type Output = Stress;
    /// The stress that a moment causes at a section modulus, which must not be zero.
    fn div(self, modulus: Volume) -> Stress {
        Stress(self.0 * 1000.0 / modulus.0)
    }
}

impl Div<Area> for Force {
    type Output = Stress;
    /// The stress of a force spread over an area, which must not be zero.
    fn div(self, area: Area) -> Stress {
        Stress(self.0 / area.0)
    }
}

impl Div<Length> for SecondMoment {
    type Output = Volume;
    /// The section modulus at a distance from the axis, which must not be zero.
    fn div(self, distance: Length) -> Volume {
        Volume(self.0 / distance.0)
    }
}

impl Mul<Density> for Volume {
    type Output = Mass;
    /// Grams: a cubic millimetre at one kilogram per cubic metre weighs a millionth of a gram.
    fn mul(self, density: Density) -> Mass {
        Mass(self.0 * density.0 * 1e-6)
    }
}

impl Mul<Feed> for Length {
    type Output = Area;
    /// The section of the chip: depth times feed.
    fn mul(self, feed: Feed) -> Area {
        Area(self.0 * feed.0)
    }
}

impl Mul<Area> for Stress {
    type Output = Force;
    /// The force of a stress on an area.
    fn mul(self, area: Area) -> Force {
        Force(self.0 * area.0)
    }
}

impl Mul<Speed> for Force {
    type Output = Power;
    /// The power of a force at a speed in its own direction.
    fn mul(self, speed: Speed) -> Power {
        Power(self.0 * speed.0 / SECONDS_PER_MINUTE)
    }
}

impl Mul<Speed> for Area {
    type Output = RemovalRate;
    /// The metal that a section sweeps: a square millimetre at one metre per minute is a cubic centimetre per minute.
    fn mul(self, speed: Speed) -> RemovalRate {
        RemovalRate(self.0 * speed.0)
    }
}

impl Mul<RemovalRate> for Stress {
    type Output = Power;
    /// The power of cutting with a specific energy: a megapascal is a millijoule for each cubic millimetre.
    fn mul(self, rate: RemovalRate) -> Power {
        Power(self.0 * rate.0 / SECONDS_PER_MINUTE)
    }
}

impl Div<RemovalRate> for Power {
    type Output = Stress;
    /// The specific energy of cutting, as the stress it is equal to. The rate must not be zero.
    fn div(self, rate: RemovalRate) -> Stress {
        Stress(self.0 * SECONDS_PER_MINUTE / rate.0)
    }
}

impl Mul<RotationalSpeed> for Feed {
    type Output = Speed;
    /// The travel along the work in metres per minute.
    fn mul(self, speed: RotationalSpeed) -> Speed {
        Speed(self.0 * speed.0 / 1000.0)
    }
}

impl Div<Speed> for Length {
    type Output = Time;
    /// How long a travel takes. The speed must not be zero.
    fn div(self, speed: Speed) -> Time {
        Time(self.0 / (speed.0 * 1000.0) * SECONDS_PER_MINUTE)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::f64 as si;

    /// Every factor against the general-purpose units library `uom`.
    #[test]
    fn factors_agree_with_uom() {
        use uom::si::{
            angle, area, force, length, mass, mass_density, power, pressure, time, torque,
            velocity, volume,
        };
        let same = |ours: f64, theirs: f64| {
            assert!(
                (ours - theirs).abs() <= 1e-12 * theirs.abs(),
                "{ours} against {theirs}"
            );
        };
        same(
            Length::inch(3.25).to_mm(),
            si::Length::new::<length::inch>(3.25).get::<length::millimeter>(),
        );
        same(
            Length::um(13.0).to_mm(),
            si::Length::new::<length::micrometer>(13.0).get::<length::millimeter>(),
        );
        same(
            Length::mm(19.05).to_inch(),
            si::Length::new::<length::millimeter>(19.05).get::<length::inch>(),
        );
        same(
            Speed::ft_per_min(120.0).to_m_per_min(),
            si::Velocity::new::<velocity::foot_per_minute>(120.0)
                .get::<velocity::meter_per_second>()
                * 60.0,
        );
        same(
            Time::minutes(1.5).to_seconds(),
            si::Time::new::<time::minute>(1.5).get::<time::second>(),
        );
        same(
            Angle::degrees(60.0).to_radians(),
            si::Angle::new::<angle::degree>(60.0).get::<angle::radian>(),
        );
        same(
            Feed::inch_per_rev(0.004).to_mm_per_rev(),
            si::Length::new::<length::inch>(0.004).get::<length::millimeter>(),
        );
        let close = |ours: f64, theirs: f64| {
            // The library rounds the pound-force to seven digits.
            assert!(
                (ours / theirs - 1.0).abs() < 1e-6,
                "{ours} against {theirs}"
            );
        };
        close(
            Force::newtons(1000.0).to_pounds_force(),
            si::Force::new::<force::newton>(1000.0).get::<force::pound_force>(),
        );
        close(
            Torque::newton_metres(50.0).to_pound_feet(),
            si::Torque::new::<torque::newton_meter>(50.0).get::<torque::pound_force_foot>(),
        );
        close(
            Power::watts(1500.0).to_horsepower(),
            si::Power::new::<power::watt>(1500.0).get::<power::horsepower>(),
        );
        close(
            Stress::mpa(700.0).to_ksi(),
            si::Pressure::new::<pressure::megapascal>(700.0).get::<pressure::psi>() / 1000.0,
        );
        close(
            Area::mm2(700.0).to_square_inches(),
            si::Area::new::<area::square_millimeter>(700.0).get::<area::square_inch>(),
        );
        // The library's cubic inch is rounded to seven digits, so an inch is cubed.
        let edge = si::Length::new::<length::inch>(2.0);
        same(
            Volume::mm3((edge * edge * edge).get::<volume::cubic_millimeter>()).to_cubic_inches(),
            8.0,
        );
        // The library rounds the pound to seven digits; ours is the exact 453.592 37 g.
        let pounds = si::Mass::new::<mass::kilogram>(1.0).get::<mass::pound>();
        assert!((Mass::grams(1000.0).to_pounds() / pounds - 1.0).abs() < 1e-7);
        let heavy = si::MassDensity::new::<mass_density::kilogram_per_cubic_meter>(7850.0)
            * si::Volume::new::<volume::cubic_millimeter>(12_345.0);
        same(
            (Volume::mm3(12_345.0) * Density::kg_per_m3(7850.0)).to_grams(),
            heavy.get::<mass::gram>(),
        );
    }

    /// By hand: 2.2 kW at 1400 rpm are 2200/(2π · 1400/60) = 15.006 newton metres; on a modulus of π 20³/16 = 1570.8 mm³
    /// they cause 9.553 megapascals; 500 N at 30 mm bend with 15 newton metres.
    #[test]
    fn moments_and_stresses_keep_their_units() {
        let torque = Power::watts(2200.0).torque_at(RotationalSpeed::per_min(1400.0));
        assert!((torque.to_newton_metres() - 15.006).abs() < 1e-3);
        let stress = torque / Volume::mm3(1570.796);
        assert!((stress.to_mpa() - 9.553).abs() < 1e-3);
        let bending = Force::newtons(500.0) * Length::mm(30.0);
        assert!((bending.to_newton_metres() - 15.0).abs() < 1e-12);
        let pull = Force::newtons(1000.0) / Area::mm2(50.0);
        assert!((pull.to_mpa() - 20.0).abs() < 1e-12);
        let modulus = SecondMoment::mm4(7854.0) / Length::mm(10.0);
        assert!((modulus.to_mm3() - 785.4).abs() < 1e-9);
    }

    #[test]
    fn travel_takes_length_over_feed_and_speed() {
        // 100 mm at 0.1 mm a revolution and 500 revolutions a minute: two minutes.
        let travel = Feed::mm_per_rev(0.1) * RotationalSpeed::per_min(500.0);
        let time = Length::mm(100.0) / travel;
        assert!((time.to_minutes() - 2.0).abs() < 1e-12);
    }

    /// By hand: 1557 N at 100 m/min are 155.7 kJ/min = 2595 W. They come from 1038 megapascals on 1.5 mm², which sweep
    /// 150 cm³/min, so that 1038 megapascals · 150 cm³/min must be the same power.
    #[test]
    fn force_power_and_removal_rate_belong_together() {
        let section = Length::mm(3.0) * Feed::mm_per_rev(0.5);
        let energy = Stress::mpa(1038.0);
        let speed = Speed::m_per_min(100.0);
        let force = energy * section;
        assert!((force.to_newtons() - 1557.0).abs() < 1e-9);
        assert!(((force * speed).to_watts() - 2595.0).abs() < 1e-9);
        let rate = section * speed;
        assert!((rate.to_cm3_per_min() - 150.0).abs() < 1e-12);
        assert!(((energy * rate).to_watts() - 2595.0).abs() < 1e-9);
        assert!((force * speed / rate - energy).to_mpa().abs() < 1e-9);
        let travel = Feed::each_turn(Length::mm(0.2)).in_one_turn();
        assert_eq!(travel, Length::mm(0.2));
    }
}
