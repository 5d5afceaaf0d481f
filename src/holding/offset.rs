//! How far an axis lies beside another, and to which side.
//!
//! Seen along the spindle, x points to jaw 1 and directions are counted from it towards jaw 2.

use core::f64::consts::TAU;
use core::ops::{Add, Mul, Neg, Sub};

use serde::Serialize;

use crate::quantity::{Angle, Length};

/// A step across the axis: how far, and to which side.
///
/// # Example
/// ```
/// use skimwright::holding::Offset;
/// use skimwright::quantity::{Angle, Length};
/// let offset = Offset::towards(Length::um(50.0), Angle::degrees(90.0));
/// assert!((offset.y().to_um() - 50.0).abs() < 1e-9);
/// assert!((offset.runout().to_um() - 100.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Offset {
    x: Length,
    y: Length,
}

/// A jaw, and how far beside it a direction lies.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NearestJaw {
    /// Its number, from 1.
    pub jaw: u8,
    /// From the jaw to the direction; negative towards the jaw before.
    pub beside: Angle,
}

/// How many jaws a chuck has, spread evenly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Jaws {
    /// Three.
    Three,
    /// Four.
    Four,
}

impl Jaws {
    /// Their number.
    pub const fn count(self) -> u8 {
        match self {
            Self::Three => 3,
            Self::Four => 4,
        }
    }
}

impl Offset {
    /// None at all.
    pub const NONE: Self = Self {
        x: Length::ZERO,
        y: Length::ZERO,
    };

    /// From its two parts, the first towards jaw 1, the second a quarter turn on.
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }

    /// By `size` to the side that lies at `direction` from jaw 1.
    pub fn towards(size: Length, direction: Angle) -> Self {
        let (sin, cos) = direction.to_radians().sin_cos();
        Self::new(size * cos, size * sin)
    }

    /// The part towards jaw 1.
    pub const fn x(self) -> Length {
        self.x
    }

    /// The part towards a quarter turn after jaw 1.
    pub const fn y(self) -> Length {
        self.y
    }

    /// How far.
    pub fn size(self) -> Length {
        Length::mm(self.x.to_mm().hypot(self.y.to_mm()))
    }

    /// To which side, from jaw 1, 0 up to a whole turn; jaw 1 itself when there is none.
    pub fn direction(self) -> Angle {
        let angle = self.y.to_mm().atan2(self.x.to_mm()).rem_euclid(TAU);
        // A hair below nought comes out as a whole turn.
        Angle::radians(if angle < TAU { angle } else { 0.0 })
    }

    /// Total indicated runout of round work whose axis lies this far beside the spindle's: twice as much.
    pub fn runout(self) -> Length {
        self.size() * 2.0
    }

    /// How much of it goes towards a direction.
    pub fn part_towards(self, direction: Angle) -> Length {
        let (sin, cos) = direction.to_radians().sin_cos();
        self.x * cos + self.y * sin
    }

    /// The jaw that it points to most nearly; of two alike the first.
    pub fn nearest_jaw(self, jaws: Jaws) -> NearestJaw {
        let pitch = TAU / f64::from(jaws.count());
        let direction = self.direction().to_radians();
        let beside = |jaw: u8| {
            let off = direction - pitch * f64::from(jaw);
            // Counted the shorter way round.
            if off > TAU / 2.0 { off - TAU } else { off }
        };
        let mut nearest = NearestJaw {
            jaw: 1,
            beside: Angle::radians(beside(0)),
        };
        for jaw in 1..jaws.count() {
            let beside = Angle::radians(beside(jaw));
            if beside.abs() < nearest.beside.abs() {
                nearest = NearestJaw {
                    jaw: jaw + 1,
                    beside,
                };
            }
        }
        nearest
    }
}

impl Add for Offset {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Offset {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl Neg for Offset {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y)
    }
}

impl Mul<f64> for Offset {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.x * factor, self.y * factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn directions_and_jaws() {
        for (degrees, jaws, jaw, beside) in [
            (0.0, Jaws::Three, 1, 0.0),
            (59.0, Jaws::Three, 1, 59.0),
            (61.0, Jaws::Three, 2, -59.0),
            (239.0, Jaws::Three, 3, -1.0),
            (350.0, Jaws::Three, 1, -10.0),
            (200.0, Jaws::Four, 3, 20.0),
            (316.0, Jaws::Four, 1, -44.0),
        ] {
            let offset = Offset::towards(Length::um(30.0), Angle::degrees(degrees));
            assert!((offset.direction().to_degrees() - degrees).abs() < 1e-9);
            let nearest = offset.nearest_jaw(jaws);
            assert_eq!(nearest.jaw, jaw, "{degrees}");
            assert!(
                (nearest.beside.to_degrees() - beside).abs() < 1e-9,
                "{degrees}"
            );
        }
        assert_eq!(Offset::NONE.direction(), Angle::ZERO);
        let hair = Offset::new(Length::mm(1.0), Length::mm(-1e-300));
        assert_eq!(hair.direction(), Angle::ZERO);
    }
}
