//! Showing quantities: in millimetres or inches, as decimals or as the nearest 1/64.

use super::entry::{Dimension, Entry, Unit};
use super::units::{
    Area, Feed, Force, Hardness, Length, Mass, Power, RotationalSpeed, SecondMoment, Speed, Stress,
    TaperRatio, TemperatureStep, Time, Torque, Volume,
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
        self.length(self.to_digit(length, f64::floor), Grade::Size)
    }

    /// A size rounded up in its last digit, so that what is shown reaches it.
    pub fn size_at_least(self, length: Length) -> String {
        self.length(self.to_digit(length, f64::ceil), Grade::Size)
    }

    /// A length brought to a whole number of last digits; what is off by rounding alone is left where it is.
    fn to_digit(self, length: Length, round: fn(f64) -> f64) -> Length {
        const ROUNDING: f64 = 1e-6;
        let digit = if self.is_inch() {
            Length::inch(0.0001)
        } else {
            Length::mm(0.001)
        };
        let digits = length / digit;
        let nearest = digits.round();
        if (digits - nearest).abs() < ROUNDING {
            digit * nearest
        } else {
            digit * round(digits)
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
        if self.keeps_as_typed(entry) {
            entry.to_string()
        } else {
            self.entry_value(entry)
        }
    }

    /// The same for a field that names the unit in use beside it: only another unit is written out.
    pub fn field_text(self, entry: &Entry) -> String {
        let in_use = self.typed_unit(entry.dimension());
        let text = if self.keeps_as_typed(entry) {
            entry.to_string()
        } else {
            self.entry_value(entry).replace(GAP, " ")
        };
        if entry.terms().iter().any(|term| term.unit != in_use) && self.keeps_as_typed(entry) {
            return text;
        }
        match text.strip_suffix(in_use.sign()) {
            Some(bare) => bare.trim_end().to_owned(),
            None => text,
        }
    }

    /// Whether an entry is in the units in use, so that it is shown as it was typed.
    fn keeps_as_typed(self, entry: &Entry) -> bool {
        let unit_free = matches!(
            entry.dimension(),
            Dimension::Time
                | Dimension::Rotation
                | Dimension::Angle
                | Dimension::Taper
                | Dimension::Hardness
        );
        unit_free
            || entry
                .terms()
                .iter()
                .all(|term| term.unit.is_inch() == self.is_inch())
    }

    /// What an entry comes to, in the units in use: the said-back value beside a field.
    pub fn entry_value(self, entry: &Entry) -> String {
        let unit = self.typed_unit(entry.dimension());
        let decimals = match (entry.dimension(), self.is_inch()) {
            (Dimension::Length | Dimension::Feed, true) => 5,
            (Dimension::Length | Dimension::Feed, false)
            | (Dimension::Angle | Dimension::Taper, _) => 4,
            (Dimension::Speed, true) => 0,
            (Dimension::Speed, false)
            | (Dimension::Time | Dimension::Rotation | Dimension::Force | Dimension::Hardness, _) => {
                1
            }
            (Dimension::Torque | Dimension::Power, _) => 2,
        };
        let number = trimmed(entry.base_value() / unit.in_base_units(), decimals);
        format!("{number}{GAP}{}", unit.sign())
    }
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
    format!("{}{GAP}h{GAP}{rest:02.0}{GAP}min", decimal(hours, 0))
}

/// A spindle speed: `955 rpm`; a slow one with its tenths, `4.5 rpm`.
pub fn rotation(speed: RotationalSpeed) -> String {
    format!("{}{GAP}rpm", whole_or_tenths(speed.to_per_min()))
}

/// A hardness: `58 HRC`.
pub fn hardness(hardness: Hardness) -> String {
    format!("{}{GAP}HRC", trimmed(hardness.to_hrc(), 1))
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
    let text = format!("{:.decimals$}", value.abs());
    let zero = text.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if value < 0.0 && !zero {
        format!("{MINUS}{text}")
    } else {
        text
    }
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
    if numerator == 0.0 {
        format!("{about}{sign}{whole:.0}")
    } else if whole == 0.0 {
        format!("{about}{sign}{numerator:.0}/{denominator:.0}")
    } else {
        format!("{about}{sign}{whole:.0} {numerator:.0}/{denominator:.0}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_shown_in_each_style() {
        let cases = [
            (Units::Metric, 31.4, Grade::Length, "31.40 mm"),
            (Units::Metric, -0.0004, Grade::Size, "0.000 mm"),
            (Units::InchDecimal, 31.75, Grade::Size, "1.2500 in"),
            (Units::InchFraction, 34.925, Grade::Length, "1 3/8 in"),
            (Units::InchFraction, 25.0, Grade::Length, "≈ 63/64 in"),
            (Units::InchFraction, 25.4, Grade::Length, "1 in"),
            (Units::InchFraction, -12.7, Grade::Length, "−1/2 in"),
            (Units::InchFraction, 34.925, Grade::Size, "1.3750 in"),
            (Units::Metric, -2.5, Grade::Length, "−2.50 mm"),
        ];
        for (units, mm, grade, wanted) in cases {
            let shown = units.length(Length::mm(mm), grade).replace(GAP, " ");
            assert_eq!(shown, wanted);
        }
    }

    #[test]
    fn proposals_are_rounded_to_the_side_on_which_they_mend() {
        let cases = [
            (Units::Metric, 24.9996, "24.999 mm", "25.000 mm"),
            (Units::Metric, 25.0, "25.000 mm", "25.000 mm"),
            (Units::InchDecimal, 25.4, "1.0000 in", "1.0000 in"),
            (Units::InchFraction, 25.401, "1.0000 in", "1.0001 in"),
        ];
        for (units, mm, down, up) in cases {
            let length = Length::mm(mm);
            assert_eq!(units.size_at_most(length).replace(GAP, " "), down);
            assert_eq!(units.size_at_least(length).replace(GAP, " "), up);
        }
    }

    /// The least that can be typed: 0.5 m/min, 0.005 mm a revolution, 5 rpm.
    #[test]
    fn slow_speeds_and_fine_feeds_keep_the_digits_that_count() {
        let plain = |text: String| text.replace(GAP, " ");
        for (m_per_min, metric, inch) in [
            (0.5, "0.5 m/min", "1.6 ft/min"),
            (9.96, "10 m/min", "33 ft/min"),
            (80.0, "80 m/min", "262 ft/min"),
        ] {
            let speed = Speed::m_per_min(m_per_min);
            assert_eq!(plain(Units::Metric.speed(speed)), metric);
            assert_eq!(plain(Units::InchDecimal.speed(speed)), inch);
        }
        for (mm_per_rev, metric, inch) in [
            (0.005, "0.005 mm/rev", "0.0002 in/rev"),
            (0.1, "0.10 mm/rev", "0.0039 in/rev"),
            (0.125, "0.125 mm/rev", "0.0049 in/rev"),
            (3.0, "3.00 mm/rev", "0.1181 in/rev"),
        ] {
            let feed = Feed::mm_per_rev(mm_per_rev);
            assert_eq!(plain(Units::Metric.feed(feed)), metric);
            assert_eq!(plain(Units::InchFraction.feed(feed)), inch);
        }
        for (per_min, shown) in [(0.16, "0.2 rpm"), (5.0, "5 rpm"), (954.9, "955 rpm")] {
            assert_eq!(plain(rotation(RotationalSpeed::per_min(per_min))), shown);
        }
    }

    #[test]
    fn times_are_shown_as_a_shop_says_them() {
        let cases = [
            (0.0, "0 s"),
            (45.0, "45 s"),
            (100.0, "1.7 min"),
            (725.0, "12 min"),
            (3900.0, "65 min"),
            (7500.0, "2 h 05 min"),
        ];
        for (seconds, wanted) in cases {
            assert_eq!(time(Time::seconds(seconds)).replace(GAP, " "), wanted);
        }
    }
}
