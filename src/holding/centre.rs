//! The tailstock centre in its hole: what the hole bears, how hard to push, and what heat adds.
//!
//! The hole is a cone of 60° between its mouth and its pilot. Loads across the axis press on one side of it, thrust
//! along the axis all round.

use core::f64::consts::{FRAC_PI_4, FRAC_PI_6};

use serde::Serialize;

use super::estimate::Estimate;
use crate::quantity::{Area, Expansion, Force, Length, Stress, TemperatureStep};
use crate::tables::{HARD_CENTRE_HOLE, PLAIN_CENTRE_HOLE, SOFT_CENTRE_HOLE};

/// Least thrust that seats a live centre on small work; from memory, 200–500 N.
const LEAST_THRUST: Force = Force::newtons(200.0);

/// Thrust that seats a live centre on small work in any case; from memory, 200–500 N.
const FULL_THRUST: Force = Force::newtons(500.0);

/// The cone of a centre hole.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CentreSeat {
    /// Diameter at the mouth.
    pub mouth: Length,
    /// Diameter of the pilot, or of a bore, where the cone ends; smaller than the mouth.
    pub pilot: Length,
}

/// What kind of centre sits in the hole, and in what work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum CentreKind {
    /// A live centre in soft steel.
    Live,
    /// A live centre in hardened steel.
    LiveInHard,
    /// A plain centre, on which the work turns, greased.
    Plain,
}

impl CentreKind {
    /// The pressure that the hole bears: a warning, not a limit.
    ///
    /// # Source
    /// From memory: 20–60 N/mm² in soft steel, 5–10 under a plain centre, 100 and more in hardened steel, for which no
    /// most is given here.
    pub const fn pressure_borne(self) -> (Stress, Option<Stress>) {
        match self {
            Self::Live => (SOFT_CENTRE_HOLE.0, Some(SOFT_CENTRE_HOLE.1)),
            Self::LiveInHard => (HARD_CENTRE_HOLE, None),
            Self::Plain => (PLAIN_CENTRE_HOLE.0, Some(PLAIN_CENTRE_HOLE.1)),
        }
    }
}

/// The loads on a centre, pressure by pressure.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CentrePressure {
    /// From the load across the axis.
    pub radial: Stress,
    /// From the thrust along it.
    pub axial: Stress,
    /// What the hole bears for certain, over the larger of the two: 1 and more is safe. `None` without load.
    pub certain: Option<f64>,
    /// What it bears at most, over the larger of the two: below 1 is too much. `None` without load, or where no most is
    /// known.
    pub at_most: Option<f64>,
}

impl CentreSeat {
    /// The area that bears a load across the axis: the cone seen from the side.
    ///
    /// # Source
    /// (d₂² − d₁²)/(4 tan 30°): plane geometry.
    pub fn radial_area(self) -> Area {
        self.squares() / (4.0 * FRAC_PI_6.tan())
    }

    /// The area that bears a thrust: the cone seen along the axis.
    ///
    /// # Source
    /// π (d₂² − d₁²)/4: plane geometry.
    pub fn axial_area(self) -> Area {
        self.squares() * FRAC_PI_4
    }

    fn squares(self) -> Area {
        let ring = self.mouth * self.mouth - self.pilot * self.pilot;
        ring.max(Area::ZERO)
    }

    /// How the pressure in the hole compares with what it bears; `None` when the cone has no area.
    ///
    /// # Accuracy
    /// A warning only: the pressures are from memory, and a worn or dirty hole bears less.
    pub fn pressure(
        self,
        across: Force,
        thrust: Force,
        kind: CentreKind,
    ) -> Option<CentrePressure> {
        if self.squares() <= Area::ZERO {
            return None;
        }
        let radial = across.abs() / self.radial_area();
        let axial = thrust.abs() / self.axial_area();
        let worst = radial.max(axial);
        let (least, most) = kind.pressure_borne();
        let over = |borne: Stress| (worst > Stress::ZERO).then(|| borne / worst);
        Some(CentrePressure {
            radial,
            axial,
            certain: over(least),
            at_most: most.and_then(over),
        })
    }
}

/// How hard to push a live centre into the work so that it stays seated.
///
/// `feed`: feed force. `tail`: what the centre bears across the axis.
///
/// # Accuracy
/// A guess: between half the feed force and all of it, 200–500 N on small work, and never less than the cone asks,
/// since a load across it pushes the centre out.
/// # Source
/// From memory; the cone: tail × tan 30°, without friction.
pub fn thrust_needed(feed: Force, tail: Force) -> Estimate<Force> {
    let cone = tail.abs() * FRAC_PI_6.tan();
    let feed = feed.abs();
    let low = LEAST_THRUST.max(feed / 2.0).max(cone);
    let high = FULL_THRUST.max(feed).max(cone);
    Estimate::new(low, (low + high) / 2.0, high)
}

/// The thrust that warming work adds between a chuck and a tailstock that do not give.
///
/// `area`: section of the work; of a stepped part that of its longest piece. `warmer`: how much warmer it got since the
/// centre was set.
///
/// # Accuracy
/// The most: bed and tailstock do give. Ease the centre off after roughing.
/// # Source
/// E A α ΔT.
pub fn heating_thrust(
    modulus: Stress,
    area: Area,
    expansion: Expansion,
    warmer: TemperatureStep,
) -> Force {
    // What a millimetre would grow, prevented: a strain.
    let strain = expansion.growth(Length::mm(1.0), warmer).to_mm();
    Force::newtons(modulus.to_mpa() * area.to_mm2() * strain)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seat(pilot: f64, mouth: f64) -> CentreSeat {
        CentreSeat {
            mouth: Length::mm(mouth),
            pilot: Length::mm(pilot),
        }
    }

    /// Areas worked apart, to two digits behind the point.
    #[test]
    fn areas_of_standard_holes() {
        for (pilot, mouth, area) in [
            (1.0, 2.12, 1.51),
            (1.6, 3.35, 3.75),
            (2.0, 4.25, 6.09),
            (2.5, 5.3, 9.46),
            (3.15, 6.7, 15.14),
            (4.0, 8.5, 24.36),
        ] {
            let got = seat(pilot, mouth).radial_area().to_mm2();
            assert!((got - area).abs() < 0.006, "{pilot}: {got}, wanted {area}");
        }
        // The cone seen from the side is a trapezium: mean width times depth, (d₂ + d₁)/2 · (d₂ − d₁)/(2 tan 30°).
        let by_trapezium = f64::midpoint(5.3, 2.5) * (5.3 - 2.5) / (2.0 * FRAC_PI_6.tan());
        assert!((seat(2.5, 5.3).radial_area().to_mm2() - by_trapezium).abs() < 1e-12);
    }

    #[test]
    fn pressure_is_judged_by_the_worse_of_two() {
        let hole = seat(2.5, 5.3);
        let pressure = hole.pressure(
            Force::newtons(189.1),
            Force::newtons(300.0),
            CentreKind::Live,
        );
        let pressure = pressure.unwrap();
        assert!((pressure.radial.to_mpa() - 20.0).abs() < 0.01);
        assert!(pressure.axial < pressure.radial);
        assert!((pressure.certain.unwrap() - 1.0).abs() < 1e-3);
        assert!((pressure.at_most.unwrap() - 3.0).abs() < 2e-3);
        assert_eq!(
            seat(5.3, 5.3).pressure(Force::ZERO, Force::ZERO, CentreKind::Live),
            None
        );
        let free = hole
            .pressure(Force::ZERO, Force::ZERO, CentreKind::Plain)
            .unwrap();
        assert_eq!((free.certain, free.at_most), (None, None));
    }

    /// A 16 mm bar, 10 K warmer, fully held: 4.9 kN, worked apart with 11.5 µm/(m K).
    #[test]
    fn heat_pushes_hard() {
        let area = Area::mm2(FRAC_PI_4 * 256.0);
        let thrust = heating_thrust(
            Stress::mpa(210_000.0),
            area,
            Expansion::um_per_m_kelvin(11.5),
            TemperatureStep::kelvins(10.0),
        );
        assert!((thrust.to_newtons() - 4856.0).abs() < 1.0, "{thrust:?}");
    }

    #[test]
    fn thrust_seats_the_centre() {
        let light = thrust_needed(Force::newtons(100.0), Force::newtons(50.0));
        assert_eq!(light.low, Force::newtons(200.0));
        assert_eq!(light.high, Force::newtons(500.0));
        let heavy = thrust_needed(Force::newtons(1000.0), Force::newtons(3000.0));
        // 3000 N · tan 30° is more than the whole feed force.
        assert!((heavy.low.to_newtons() - 1732.05).abs() < 0.01);
        assert_eq!(heavy.low, heavy.high);
    }
}
