//! How quantities are shown.

use super::show::{Grade, Units, money, rotation, time};
use super::units::{Feed, Length, Money, RotationalSpeed, Speed, Time};

const GAP: char = '\u{a0}';

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
    let cases = [
        (Units::Metric, 24.996, "24.99 mm", "25.00 mm"),
        (Units::Metric, 0.29 + 0.01, "0.30 mm", "0.30 mm"),
        (Units::InchDecimal, 25.41, "1.000 in", "1.001 in"),
        (Units::InchFraction, 25.41, "1 in", "1 1/64 in"),
        (Units::InchFraction, 12.7, "1/2 in", "1/2 in"),
    ];
    for (units, mm, down, up) in cases {
        let length = Length::mm(mm);
        assert_eq!(units.length_at_most(length).replace(GAP, " "), down);
        assert_eq!(units.length_at_least(length).replace(GAP, " "), up);
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

#[test]
fn money_is_shown_with_two_decimals_and_no_currency() {
    for (sum, shown) in [
        (0.0, "0.00"),
        (0.004, "0.00"),
        (48.5, "48.50"),
        (1234.567, "1234.57"),
        (-0.001, "0.00"),
        (-2.5, "−2.50"),
    ] {
        assert_eq!(money(Money::of_currency(sum)), shown);
    }
}

#[test]
fn differences_of_diameters_are_told_as_finely_as_they_count() {
    for (um, metric, inch) in [
        (0.0, "0 µm", "0 thou"),
        (0.44, "0.4 µm", "0.02 thou"),
        (12.6, "13 µm", "0.5 thou"),
        (254.0, "254 µm", "10 thou"),
    ] {
        let length = Length::um(um);
        let said = |units: Units| units.difference(length).replace(GAP, " ");
        assert_eq!(said(Units::Metric), metric);
        assert_eq!(said(Units::InchDecimal), inch);
        assert_eq!(said(Units::InchFraction), inch);
    }
}
