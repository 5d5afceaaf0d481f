//! Lengths that the program enters for a person: in the unit in use, with no more digits than a shop works to.

use super::{Dimension, Entered, Entry, Length, Units};

/// What rounding alone can put a length off, as a share of the last digit.
const ROUNDING: f64 = 1e-6;

impl Units {
    /// A length as it would be typed, down to its last hundredth of a millimetre or thousandth of an inch.
    ///
    /// `None` for a length too large to be typed.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::{Length, Units};
    /// let typed = Units::Metric.enter_at_most(Length::mm(17.999)).unwrap();
    /// assert_eq!(typed.entry().to_string(), "17.99 mm");
    /// ```
    pub fn enter_at_most(self, length: Length) -> Option<Entered<Length>> {
        self.enter(length, |digits| (digits + ROUNDING).floor())
    }

    /// The same to the nearest hundredth of a millimetre or thousandth of an inch.
    pub fn enter_near(self, length: Length) -> Option<Entered<Length>> {
        self.enter(length, f64::round)
    }

    fn enter(self, length: Length, round: fn(f64) -> f64) -> Option<Entered<Length>> {
        let (decimals, value): (u8, f64) = if self.is_inch() {
            (3, length.to_inch())
        } else {
            (2, length.to_mm())
        };
        let digits = 10_f64.powi(i32::from(decimals));
        let value = round(value * digits) / digits;
        // No zeros behind that say nothing.
        let needed = (0..decimals).find(|decimals| {
            let scale = 10_f64.powi(i32::from(*decimals));
            ((value * scale).round() / scale - value).abs() < ROUNDING
        });
        let unit = self.typed_unit(Dimension::Length);
        Entry::decimal(value, needed.unwrap_or(decimals), unit).and_then(Entered::new)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(entered: Option<Entered<Length>>) -> String {
        entered.unwrap().entry().to_string()
    }

    #[test]
    fn rounding_goes_down_or_to_the_nearest_and_leaves_what_is_round() {
        let metric = Units::Metric;
        assert_eq!(text(metric.enter_at_most(Length::mm(20.0))), "20 mm");
        assert_eq!(text(metric.enter_at_most(Length::mm(19.9))), "19.9 mm");
        assert_eq!(text(metric.enter_at_most(Length::mm(19.9999))), "19.99 mm");
        assert_eq!(text(metric.enter_near(Length::mm(19.9999))), "20 mm");
        assert_eq!(text(metric.enter_near(Length::mm(-1.266))), "-1.27 mm");
        // 0.75 in is 19.05 mm; a hair less is a thousandth less.
        let inch = Units::InchFraction;
        assert_eq!(text(inch.enter_at_most(Length::mm(19.05))), "0.75 in");
        assert_eq!(text(inch.enter_at_most(Length::mm(19.04))), "0.749 in");
    }
}
