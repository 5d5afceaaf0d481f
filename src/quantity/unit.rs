//! The units that can be typed, and what each measures.

use super::between::{
    METRES_PER_FOOT, MM_PER_INCH, NEWTON_METRES_PER_POUND_FOOT, NEWTONS_PER_POUND_FORCE,
    SECONDS_PER_MINUTE, WATTS_PER_HORSEPOWER, celsius_from_fahrenheit, fahrenheit_from_celsius,
};
use super::entry::Entry;

/// What kind of quantity an entry is; decides which units it may carry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// Lengths and diameters; base unit millimetre.
    Length,
    /// Cutting speeds; base unit metre per minute.
    Speed,
    /// Feeds; base unit millimetre per revolution.
    Feed,
    /// Durations; base unit second.
    Time,
    /// Spindle speeds; base unit revolution per minute.
    Rotation,
    /// Angles; base unit degree.
    Angle,
    /// Tapers as 1 in so many.
    Taper,
    /// Forces; base unit newton.
    Force,
    /// Torques; base unit newton metre.
    Torque,
    /// Powers; base unit watt.
    Power,
    /// Hardness; Rockwell C.
    Hardness,
    /// Stiffness; base unit newton per micrometre.
    Stiffness,
    /// Money of whatever currency.
    Money,
    /// Shares of a whole; base unit the whole.
    Share,
    /// Whole pieces.
    Count,
    /// Temperatures; base unit degree Celsius.
    Temperature,
}

impl Dimension {
    /// Most terms of a sum: temperatures are not added.
    pub const fn most_terms(self) -> usize {
        match self {
            Self::Temperature => 1,
            _ => Entry::MOST_TERMS,
        }
    }
}

/// A unit that can be typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "each name is the unit itself")]
pub enum Unit {
    Millimetre,
    Centimetre,
    Metre,
    Micrometre,
    Inch,
    Thou,
    MetrePerMinute,
    FootPerMinute,
    MillimetrePerRevolution,
    InchPerRevolution,
    Second,
    Minute,
    RevolutionPerMinute,
    Degree,
    ToOne,
    Newton,
    Kilonewton,
    PoundForce,
    NewtonMetre,
    PoundFoot,
    Watt,
    Kilowatt,
    Horsepower,
    RockwellC,
    Vickers,
    Brinell,
    NewtonPerMicrometre,
    Currency,
    Percent,
    Piece,
    Celsius,
    Fahrenheit,
}

impl Unit {
    /// Every unit, by dimension, the metric base unit of each first. Links have an order of their own.
    pub const ALL: [Self; 32] = [
        Self::Millimetre,
        Self::Centimetre,
        Self::Metre,
        Self::Micrometre,
        Self::Inch,
        Self::Thou,
        Self::MetrePerMinute,
        Self::FootPerMinute,
        Self::MillimetrePerRevolution,
        Self::InchPerRevolution,
        Self::Second,
        Self::Minute,
        Self::RevolutionPerMinute,
        Self::Degree,
        Self::ToOne,
        Self::Newton,
        Self::Kilonewton,
        Self::PoundForce,
        Self::NewtonMetre,
        Self::PoundFoot,
        Self::Watt,
        Self::Kilowatt,
        Self::Horsepower,
        Self::RockwellC,
        Self::Vickers,
        Self::Brinell,
        Self::NewtonPerMicrometre,
        Self::Currency,
        Self::Percent,
        Self::Piece,
        Self::Celsius,
        Self::Fahrenheit,
    ];

    /// What the unit measures.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Millimetre
            | Self::Centimetre
            | Self::Metre
            | Self::Micrometre
            | Self::Inch
            | Self::Thou => Dimension::Length,
            Self::MetrePerMinute | Self::FootPerMinute => Dimension::Speed,
            Self::MillimetrePerRevolution | Self::InchPerRevolution => Dimension::Feed,
            Self::Second | Self::Minute => Dimension::Time,
            Self::RevolutionPerMinute => Dimension::Rotation,
            Self::Degree => Dimension::Angle,
            Self::ToOne => Dimension::Taper,
            Self::Newton | Self::Kilonewton | Self::PoundForce => Dimension::Force,
            Self::NewtonMetre | Self::PoundFoot => Dimension::Torque,
            Self::Watt | Self::Kilowatt | Self::Horsepower => Dimension::Power,
            Self::RockwellC | Self::Vickers | Self::Brinell => Dimension::Hardness,
            Self::NewtonPerMicrometre => Dimension::Stiffness,
            Self::Currency => Dimension::Money,
            Self::Percent => Dimension::Share,
            Self::Piece => Dimension::Count,
            Self::Celsius | Self::Fahrenheit => Dimension::Temperature,
        }
    }

    /// The usual sign of the unit, as it is shown and written into files.
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
            Self::Micrometre => "µm",
            Self::Inch => "in",
            Self::Thou => "thou",
            Self::MetrePerMinute => "m/min",
            Self::FootPerMinute => "ft/min",
            Self::MillimetrePerRevolution => "mm/rev",
            Self::InchPerRevolution => "in/rev",
            Self::Second => "s",
            Self::Minute => "min",
            Self::RevolutionPerMinute => "rpm",
            Self::Degree => "°",
            Self::ToOne => ":1",
            Self::Newton => "N",
            Self::Kilonewton => "kN",
            Self::PoundForce => "lbf",
            Self::NewtonMetre => "N·m",
            Self::PoundFoot => "lbf·ft",
            Self::Watt => "W",
            Self::Kilowatt => "kW",
            Self::Horsepower => "hp",
            Self::RockwellC => "HRC",
            Self::Vickers => "HV",
            Self::Brinell => "HBW",
            Self::NewtonPerMicrometre => "N/µm",
            Self::Currency => "¤",
            Self::Percent => "%",
            Self::Piece => "pcs",
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
        }
    }

    /// How many base units of its dimension one of it is; exact by definition of the inch and the foot.
    ///
    /// Vickers and Brinell numbers have no such factor: [`Self::to_base`] reads their table. Degrees Fahrenheit count
    /// from another nought.
    pub(crate) const fn in_base_units(self) -> f64 {
        match self {
            Self::Millimetre
            | Self::MetrePerMinute
            | Self::MillimetrePerRevolution
            | Self::Second
            | Self::RevolutionPerMinute
            | Self::Degree
            | Self::ToOne
            | Self::Newton
            | Self::NewtonMetre
            | Self::Watt
            | Self::RockwellC
            | Self::Vickers
            | Self::Brinell
            | Self::NewtonPerMicrometre
            | Self::Currency
            | Self::Piece
            | Self::Celsius
            | Self::Fahrenheit => 1.0,
            Self::Percent => 0.01,
            Self::Centimetre => 10.0,
            Self::Metre | Self::Kilonewton | Self::Kilowatt => 1000.0,
            Self::Micrometre => 0.001,
            Self::Inch | Self::InchPerRevolution => MM_PER_INCH,
            Self::Thou => MM_PER_INCH / 1000.0,
            Self::FootPerMinute => METRES_PER_FOOT,
            Self::Minute => SECONDS_PER_MINUTE,
            Self::PoundForce => NEWTONS_PER_POUND_FORCE,
            Self::PoundFoot => NEWTON_METRES_PER_POUND_FOOT,
            Self::Horsepower => WATTS_PER_HORSEPOWER,
        }
    }

    /// A number of this unit in the base unit of its dimension; any finite number is taken.
    pub(crate) fn to_base(self, number: f64) -> f64 {
        match self {
            Self::Vickers => crate::tables::points_from_vickers(number),
            Self::Brinell => crate::tables::points_from_brinell(number),
            Self::Fahrenheit => celsius_from_fahrenheit(number),
            _ => number * self.in_base_units(),
        }
    }

    /// A number of the base unit of the dimension in this unit. Vickers and Brinell numbers are not found back.
    pub(crate) fn to_number(self, base: f64) -> f64 {
        match self {
            Self::Fahrenheit => fahrenheit_from_celsius(base),
            _ => base / self.in_base_units(),
        }
    }

    /// Whether the unit belongs to the inch system.
    pub const fn is_inch(self) -> bool {
        matches!(
            self,
            Self::Inch
                | Self::Thou
                | Self::FootPerMinute
                | Self::InchPerRevolution
                | Self::PoundForce
                | Self::PoundFoot
                | Self::Horsepower
                | Self::Fahrenheit
        )
    }
}
