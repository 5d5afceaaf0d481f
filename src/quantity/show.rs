//! Showing quantities: in millimetres or inches, as decimals or as the nearest 1/64.

use super::digits::push_digits;
use super::entry::Entry;
use super::unit::{Dimension, Unit};
use super::units::{
    Area, Feed, Force, Hardness, Length, Mass, Money, Power, RotationalSpeed, SecondMoment, Speed,
    Stress, TaperRatio, TemperatureStep, Time, Torque, Volume,
};

/// How lengths are shown. It never changes a job, only what is seen of it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Millimetres.
    #[default]
    Metric,
    /// Decimal inches.
    InchDecimal,
    /// Inches, lengths to the nearest 1/64; sizes that are measured stay decimal.
    InchFraction,
}

/// How finely a length is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grade {
    /// Lengths that are marked or sawn: 0.01 mm, 0.001 in or 1/64 in.
    Length,
    /// Diameters and infeeds that are measured or dialled: 0.001 mm, 0.0001 in.
    Size,
}

/// The space between a number and its unit; it does not break.
const GAP: char = '\u{a0}';
const MINUS: char = '\u{2212}';

impl Units {
    /// Every way to show lengths.
    pub const ALL: [Self; 3] = [Self::Metric, Self::InchDecimal, Self::InchFraction];

    /// The unit that a bare typed number of `dimension` takes.
    pub const fn typed_unit(self, dimension: Dimension) -> Unit {
        let inch = self.is_inch();
        match dimension {
            Dimension::Length if inch => Unit::Inch,
            Dimension::Length => Unit::Millimetre,
            Dimension::Speed if inch => Unit::FootPerMinute,
            Dimension::Speed => Unit::MetrePerMinute,
            Dimension::Feed if inch => Unit::InchPerRevolution,
            Dimension::Feed => Unit::MillimetrePerRevolution,
            Dimension::Time => Unit::Second,
            Dimension::Rotation => Unit::RevolutionPerMinute,
            Dimension::Angle => Unit::Degree,
            Dimension::Taper => Unit::ToOne,
            Dimension::Force if inch => Unit::PoundForce,
            Dimension::Force => Unit::Newton,
            Dimension::Torque if inch => Unit::PoundFoot,
            Dimension::Torque => Unit::NewtonMetre,
            Dimension::Power if inch => Unit::Horsepower,
            Dimension::Power => Unit::Kilowatt,
            Dimension::Hardness => Unit::RockwellC,
            Dimension::Stiffness => Unit::NewtonPerMicrometre,
            Dimension::Money => Unit::Currency,
            Dimension::Share => Unit::Percent,
            Dimension::Count => Unit::Piece,
            Dimension::Temperature if inch => Unit::Fahrenheit,
            Dimension::Temperature => Unit::Celsius,
        }
    }

    /// Whether these are inches.
    pub const fn is_inch(self) -> bool {
        matches!(self, Self::InchDecimal | Self::InchFraction)
    }

    /// A length with its unit: `31.40 mm`, `1.2362 in`, `≈ 1 15/64 in`.
    ///
    /// A fraction that is more than 0.000 05 in off is marked `≈`.
    pub fn length(self, length: Length, grade: Grade) -> String {
        let bare = self.length_bare(length, grade);
        format!("{bare}{GAP}{}", self.typed_unit(Dimension::Length).sign())
    }

    /// A size rounded down in its last digit, so that what is shown does not exceed it.
    pub fn size_at_most(self, length: Length) -> String {
        self.to_digit(length, Grade::Size, f64::floor)
    }

    /// A size rounded up in its last digit, so that what is shown reaches it.
    pub fn size_at_least(self, length: Length) -> String {
        self.to_digit(length, Grade::Size, f64::ceil)
    }

    /// A length that is marked, rounded down in its last digit or 1/64, so that what is shown does not exceed it.
    pub fn length_at_most(self, length: Length) -> String {
        self.to_digit(length, Grade::Length, f64::floor)
    }

    /// A length that is marked, rounded up in its last digit or 1/64, so that what is shown reaches it.
    pub fn length_at_least(self, length: Length) -> String {
        self.to_digit(length, Grade::Length, f64::ceil)
    }

    /// A length brought to a whole number of last digits; what is off by rounding alone is left where it is.
    fn to_digit(self, length: Length, grade: Grade, round: fn(f64) -> f64) -> String {
        const ROUNDING: f64 = 1e-6;
        let digit = self.digit(grade);
        let digits = length / digit;
        let nearest = digits.round();
        let off = (digits - nearest).abs();
        let whole = if off < ROUNDING {
            nearest
        } else {
            round(digits)
        };
        self.length(digit * whole, grade)
    }

    /// The last digit that is shown, or 1/64 in.
    const fn digit(self, grade: Grade) -> Length {
        match (self, grade) {
            (Self::Metric, Grade::Length) => Length::mm(0.01),
            (Self::Metric, Grade::Size) => Length::mm(0.001),
            (Self::InchDecimal, Grade::Length) => Length::inch(0.001),
            (Self::InchFraction, Grade::Length) => Length::inch(1.0 / 64.0),
            (_, Grade::Size) => Length::inch(0.0001),
        }
    }

    /// A length without its unit, for tables that name the unit once.
    pub fn length_bare(self, length: Length, grade: Grade) -> String {
        match (self, grade) {
            (Self::Metric, Grade::Length) => decimal(length.to_mm(), 2),
            (Self::Metric, Grade::Size) => decimal(length.to_mm(), 3),
            (Self::InchDecimal, Grade::Length) => decimal(length.to_inch(), 3),
            (Self::InchFraction, Grade::Length) => fraction(length.to_inch()),
            (_, Grade::Size) => decimal(length.to_inch(), 4),
        }
    }

    /// What is far finer than a size, such as roughness: `0.8 µm`, `32 µin`.
    pub fn fine(self, length: Length) -> String {
        if self.is_inch() {
            format!("{}{GAP}µin", decimal(length.to_inch() * 1e6, 0))
        } else {
            format!("{}{GAP}µm", trimmed(length.to_um(), 1))
        }
    }

    /// How far two diameters differ: `12 µm`, `0.45 thou`.
    pub fn difference(self, length: Length) -> String {
        let value = self.difference_value(length);
        let number = if self.is_inch() {
            trimmed(value, 2)
        } else {
            whole_or_tenths(value)
        };
        format!("{number}{GAP}{}", self.difference_unit())
    }

    /// The number of the unit that differences of diameters are written in.
    pub(crate) fn difference_value(self, length: Length) -> f64 {
        if self.is_inch() {
            length.to_inch() * 1000.0
        } else {
            length.to_um()
        }
    }

    /// The sign of that unit.
    pub(crate) const fn difference_unit(self) -> &'static str {
        if self.is_inch() {
            Unit::Thou.sign()
        } else {
            Unit::Micrometre.sign()
        }
    }

    /// A cutting speed: `80 m/min`, `262 ft/min`; a slow one with its tenths, `2.5 m/min`.
    pub fn speed(self, speed: Speed) -> String {
        if self.is_inch() {
            format!("{}{GAP}ft/min", whole_or_tenths(speed.to_ft_per_min()))
        } else {
            format!("{}{GAP}m/min", whole_or_tenths(speed.to_m_per_min()))
        }
    }

    /// A feed: `0.12 mm/rev`, `0.125 mm/rev`, `0.0047 in/rev`.
    pub fn feed(self, feed: Feed) -> String {
        if self.is_inch() {
            format!("{}{GAP}in/rev", decimal(feed.to_inch_per_rev(), 4))
        } else {
            let thousandths = decimal(feed.to_mm_per_rev(), 3);
            // The third decimal is shown where there is one: 0.005 mm is no 0.01 mm.
            let short = thousandths.strip_suffix('0').unwrap_or(&thousandths);
            format!("{short}{GAP}mm/rev")
        }
    }

    /// A mass: `182 g`, `1.24 kg`, `0.401 lb`.
    pub fn mass(self, mass: Mass) -> String {
        if self.is_inch() {
            return format!("{}{GAP}lb", decimal(mass.to_pounds(), 3));
        }
        let grams = mass.to_grams();
        if grams.abs() < 999.5 {
            format!(
                "{}{GAP}g",
                decimal(grams, if grams.abs() < 9.995 { 2 } else { 0 })
            )
        } else {
            format!("{}{GAP}kg", decimal(grams / 1000.0, 2))
        }
    }

    /// A volume: `12.30 cm³`, `0.751 in³`.
    pub fn volume(self, volume: Volume) -> String {
        if self.is_inch() {
            format!("{}{GAP}in³", decimal(volume.to_cubic_inches(), 3))
        } else {
            format!("{}{GAP}cm³", decimal(volume.to_mm3() / 1000.0, 2))
        }
    }

    /// An area: `314.2 mm²`, `0.4870 in²`.
    pub fn area(self, area: Area) -> String {
        if self.is_inch() {
            format!("{}{GAP}in²", decimal(area.to_square_inches(), 4))
        } else {
            format!("{}{GAP}mm²", decimal(area.to_mm2(), 1))
        }
    }

    /// A second moment of area: `7854 mm⁴`, `0.0189 in⁴`.
    pub fn second_moment(self, moment: SecondMoment) -> String {
        if self.is_inch() {
            format!("{}{GAP}in⁴", decimal(moment.to_inches4(), 4))
        } else {
            format!("{}{GAP}mm⁴", decimal(moment.to_mm4(), 0))
        }
    }

    /// A force: `850 N`, `12.50 kN`, `191 lbf`.
    pub fn force(self, force: Force) -> String {
        let newtons = force.to_newtons();
        if self.is_inch() {
            format!("{}{GAP}lbf", whole_or_tenths(force.to_pounds_force()))
        } else if newtons.abs() < 9999.5 {
            format!("{}{GAP}N", whole_or_tenths(newtons))
        } else {
            format!("{}{GAP}kN", decimal(newtons / 1000.0, 2))
        }
    }

    /// A torque: `15.0 N·m`, `11.1 lbf·ft`.
    pub fn torque(self, torque: Torque) -> String {
        let (value, unit) = if self.is_inch() {
            (torque.to_pound_feet(), "lbf·ft")
        } else {
            (torque.to_newton_metres(), "N·m")
        };
        format!(
            "{}{GAP}{unit}",
            decimal(value, usize::from(value.abs() < 99.95))
        )
    }

    /// A power: `2.20 kW`, `2.95 hp`.
    pub fn power(self, power: Power) -> String {
        if self.is_inch() {
            format!("{}{GAP}hp", decimal(power.to_horsepower(), 2))
        } else {
            format!("{}{GAP}kW", decimal(power.to_watts() / 1000.0, 2))
        }
    }

    /// A stress: `235 MPa`, `34.1 ksi`.
    pub fn stress(self, stress: Stress) -> String {
        if self.is_inch() {
            format!("{}{GAP}ksi", decimal(stress.to_ksi(), 1))
        } else {
            format!("{}{GAP}MPa", decimal(stress.to_mpa(), 0))
        }
    }

    /// A difference of temperature: `85 K`, `153 °F`.
    pub fn temperature_step(self, step: TemperatureStep) -> String {
        if self.is_inch() {
            format!("{}{GAP}°F", decimal(step.to_kelvins() * 1.8, 0))
        } else {
            format!("{}{GAP}K", decimal(step.to_kelvins(), 0))
        }
    }

    /// An entry as it was typed when it is in the units in use, else converted; with its unit.
    pub fn entry(self, entry: &Entry) -> String {
        if keeps_as_typed(entry, self.typed_unit(entry.dimension())) {
            entry.to_string()
        } else {
            self.entry_value(entry)
        }
    }

    /// The same for a field that names the unit of its bare numbers beside it: only another unit is written out.
    pub fn field_text(self, entry: &Entry, in_use: Unit) -> String {
        let kept = keeps_as_typed(entry, in_use);
        let text = if kept {
            entry.to_string()
        } else {
            self.entry_value_in(entry, in_use).replace(GAP, " ")
        };
        if kept && entry.terms().iter().any(|term| term.unit != in_use) {
            return text;
        }
        match text.strip_suffix(in_use.sign()) {
            Some(bare) => bare.trim_end().to_owned(),
            None => text,
        }
    }

    /// What an entry comes to, in the units in use: the said-back value beside a field.
    pub fn entry_value(self, entry: &Entry) -> String {
        self.entry_value_in(entry, self.typed_unit(entry.dimension()))
    }

    /// What an entry comes to in a unit of its dimension.
    pub fn entry_value_in(self, entry: &Entry, unit: Unit) -> String {
        base_value_in(entry.base_value(), unit)
    }
}

/// Whether an entry is in the system of units of the one in use, so that it is shown as it was typed.
fn keeps_as_typed(entry: &Entry, in_use: Unit) -> bool {
    let unit_free = matches!(
        entry.dimension(),
        Dimension::Time
            | Dimension::Rotation
            | Dimension::Angle
            | Dimension::Taper
            | Dimension::Hardness
            | Dimension::Stiffness
            | Dimension::Money
            | Dimension::Share
            | Dimension::Count
    );
    let mut terms = entry.terms().iter();
    unit_free || terms.all(|term| term.unit.is_inch() == in_use.is_inch())
}

/// A value in the base unit of its dimension, shown in `unit`.
pub(crate) fn base_value_in(value: f64, unit: Unit) -> String {
    let decimals = match (unit.dimension(), unit.is_inch()) {
        (Dimension::Length, false) if unit == Unit::Micrometre => 2,
        (Dimension::Length | Dimension::Feed, true) => 5,
        (Dimension::Length | Dimension::Feed, false) | (Dimension::Angle | Dimension::Taper, _) => {
            4
        }
        (Dimension::Speed, true) | (Dimension::Count, _) => 0,
        (Dimension::Speed, false)
        | (
            Dimension::Time
            | Dimension::Rotation
            | Dimension::Force
            | Dimension::Hardness
            | Dimension::Stiffness
            | Dimension::Share
            | Dimension::Temperature,
            _,
        ) => 1,
        (Dimension::Torque | Dimension::Power | Dimension::Money, _) => 2,
    };
    let number = trimmed(unit.to_number(value), decimals);
    format!("{number}{GAP}{}", unit.sign())
}

/// A duration as a shop says it: `45 s`, `12 min`, `1 h 05 min`.
pub fn time(time: Time) -> String {
    let seconds = time.to_seconds().max(0.0);
    if seconds < 90.0 {
        return format!("{}{GAP}s", decimal(seconds, 0));
    }
    let minutes = (seconds / 60.0).round();
    if minutes < 10.0 {
        return format!("{}{GAP}min", decimal(seconds / 60.0, 1));
    }
    if minutes < 90.0 {
        return format!("{}{GAP}min", decimal(minutes, 0));
    }
    let hours = (minutes / 60.0).floor();
    let rest = minutes - hours * 60.0;
    let tens = if rest < 10.0 { "0" } else { "" };
    format!(
        "{}{GAP}h{GAP}{tens}{}{GAP}min",
        decimal(hours, 0),
        decimal(rest, 0)
    )
}

/// A spindle speed: `955 rpm`; a slow one with its tenths, `4.5 rpm`.
pub fn rotation(speed: RotationalSpeed) -> String {
    format!("{}{GAP}rpm", whole_or_tenths(speed.to_per_min()))
}

/// A hardness: `58 HRC`.
pub fn hardness(hardness: Hardness) -> String {
    format!("{}{GAP}HRC", trimmed(hardness.to_hrc(), 1))
}

/// A sum of money without its currency, which is whatever text the person gives: `48.50`.
pub fn money(money: Money) -> String {
    decimal(money.to_currency(), 2)
}

/// A share of a whole: `51 %`; small ones with their tenths, `3.5 %`.
pub fn share(share: f64) -> String {
    format!("{}{GAP}%", whole_or_tenths(share * 100.0))
}

/// A taper as the trade writes it: `1 : 20.047`.
pub fn taper(ratio: TaperRatio) -> String {
    format!("1{GAP}:{GAP}{}", trimmed(ratio.to_one_in(), 3))
}

/// A number without decimals; below ten with its tenths, which count there.
fn whole_or_tenths(value: f64) -> String {
    const TEN_WHEN_ROUNDED: f64 = 9.95;
    if value.abs() < TEN_WHEN_ROUNDED {
        trimmed(value, 1)
    } else {
        decimal(value, 0)
    }
}

/// A number with a fixed count of decimals and a true minus sign; never a minus before zero.
pub fn decimal(value: f64, decimals: usize) -> String {
    let mut text = String::new();
    push_digits(&mut text, value, decimals);
    let zero = text.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if value < 0.0 && !zero {
        text.insert(0, MINUS);
    }
    text
}

/// A number with at most `decimals` decimals, without trailing zeros.
pub fn trimmed(value: f64, decimals: usize) -> String {
    let text = decimal(value, decimals);
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

/// Inches to the nearest 1/64, reduced; `≈` when more than 0.000 05 in off.
fn fraction(inches: f64) -> String {
    let sixty_fourths = (inches.abs() * 64.0).round();
    let off = (inches.abs() - sixty_fourths / 64.0).abs();
    let about = if off > 0.000_05 { "≈\u{a0}" } else { "" };
    let sign = if inches < 0.0 && sixty_fourths > 0.0 {
        "\u{2212}"
    } else {
        ""
    };
    let whole = (sixty_fourths / 64.0).floor();
    let (mut numerator, mut denominator) = (sixty_fourths - whole * 64.0, 64.0);
    while numerator > 0.0 && numerator % 2.0 == 0.0 {
        numerator /= 2.0;
        denominator /= 2.0;
    }
    let bar = |part: f64, of: f64| format!("{}/{}", decimal(part, 0), decimal(of, 0));
    if numerator == 0.0 {
        format!("{about}{sign}{}", decimal(whole, 0))
    } else if whole == 0.0 {
        format!("{about}{sign}{}", bar(numerator, denominator))
    } else {
        let whole = decimal(whole, 0);
        format!("{about}{sign}{whole} {}", bar(numerator, denominator))
    }
}
