//! The quantities themselves: one private number each, and the operations that each has by itself.

use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

/// Declares a quantity over one `f64`, with sums, differences, scaling and the ratio of two.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $make:ident, $read:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(pub(super) f64);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);

            #[doc = concat!("From a number of ", $unit, ". Meant for finite numbers; see the checked form for outside data.")]
            #[inline]
            pub const fn $make(value: f64) -> Self {
                debug_assert!(value.is_finite(), "a quantity must be finite");
                Self(value)
            }

            #[doc = concat!("The number of ", $unit, ".")]
            #[inline]
            pub const fn $read(self) -> f64 {
                self.0
            }

            /// Whether the number is finite: false only after a fault of our own.
            #[inline]
            pub const fn is_finite(self) -> bool {
                self.0.is_finite()
            }

            /// The smaller of two.
            #[inline]
            #[must_use]
            pub const fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// The larger of two.
            #[inline]
            #[must_use]
            pub const fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// The same size without its sign.
            #[inline]
            #[must_use]
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }

        impl serde::Serialize for $name {
            #[doc = concat!("As a number of ", $unit, ".")]
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_f64(self.0)
            }
        }

        impl core::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, Add::add)
            }
        }
    };
}

quantity!(
    /// A length or a diameter, kept in millimetres.
    Length, mm, to_mm, "millimetres"
);
quantity!(
    /// An area, kept in square millimetres.
    Area, mm2, to_mm2, "square millimetres"
);
quantity!(
    /// A volume, kept in cubic millimetres.
    Volume, mm3, to_mm3, "cubic millimetres"
);
quantity!(
    /// A mass, kept in grams.
    Mass, grams, to_grams, "grams"
);
quantity!(
    /// A density, kept in kilograms per cubic metre.
    Density, kg_per_m3, to_kg_per_m3, "kilograms per cubic metre"
);
quantity!(
    /// A plane angle, kept in radians.
    Angle, radians, to_radians, "radians"
);
quantity!(
    /// A duration, kept in seconds.
    Time, seconds, to_seconds, "seconds"
);
quantity!(
    /// A cutting speed or a travel along the work, kept in metres per minute.
    Speed, m_per_min, to_m_per_min, "metres per minute"
);
quantity!(
    /// A spindle speed, kept in revolutions per minute.
    RotationalSpeed, per_min, to_per_min, "revolutions per minute"
);
quantity!(
    /// A feed: travel along the work in one revolution, kept in millimetres per revolution.
    Feed, mm_per_rev, to_mm_per_rev, "millimetres per revolution"
);
quantity!(
    /// A volume of metal turned into chips in a time, kept in cubic centimetres per minute.
    RemovalRate, cm3_per_min, to_cm3_per_min, "cubic centimetres per minute"
);

quantity!(
    /// A force, kept in newtons.
    Force, newtons, to_newtons, "newtons"
);
quantity!(
    /// A torque or a bending moment, kept in newton metres.
    Torque, newton_metres, to_newton_metres, "newton metres"
);
quantity!(
    /// A power, kept in watts.
    Power, watts, to_watts, "watts"
);
quantity!(
    /// A stress, a strength or a pressure, kept in megapascals (newtons per square millimetre).
    Stress, mpa, to_mpa, "megapascals"
);
quantity!(
    /// A second moment of area, axial or polar, kept in mm⁴.
    SecondMoment, mm4, to_mm4, "millimetres to the fourth"
);
quantity!(
    /// A difference of temperature, kept in kelvins.
    TemperatureStep, kelvins, to_kelvins, "kelvins"
);
quantity!(
    /// A temperature, kept in degrees Celsius. Only differences mean something, and those are [`TemperatureStep`]s.
    Temperature, celsius, to_celsius, "degrees Celsius"
);
quantity!(
    /// A coefficient of linear expansion, kept in micrometres per metre and kelvin.
    Expansion, um_per_m_kelvin, to_um_per_m_kelvin, "micrometres per metre and kelvin"
);
quantity!(
    /// A hardness on the Rockwell C scale, ISO 6508-1. A number of a scale: only differences mean something.
    Hardness, hrc, to_hrc, "points HRC"
);
quantity!(
    /// A taper as 1 in so many: the length on which the diameter changes by one.
    TaperRatio, one_in, to_one_in, "length over change of diameter"
);
quantity!(
    /// A stiffness: the force that bends or pushes something by one micrometre, kept in newtons per micrometre.
    Stiffness, newtons_per_um, to_newtons_per_um, "newtons per micrometre"
);
quantity!(
    /// A share of a whole, kept as a part of one: 80 % is 0.8.
    Share, of_whole, to_whole, "parts of one"
);
quantity!(
    /// So many pieces; whole where pieces are.
    Count, pieces, to_pieces, "pieces"
);
quantity!(
    /// A sum of money, kept in whole units of whatever currency the person names.
    Money, of_currency, to_currency, "units of the currency"
);
