//! What is read and what is refused.

use super::{Dimension, ReadErrorKind as Kind, Unit, read};
use crate::quantity::{Entered, Length};
use proptest::prelude::*;

#[track_caller]
fn mm(text: &str, unit: Unit) -> f64 {
    match Entered::<Length>::read(text, unit) {
        Ok(entered) => {
            // What is written down reads back to the same entry, whatever unit is in use.
            let written = entered.entry().to_string();
            let again = Entered::<Length>::read(&written, Unit::Metre);
            assert_eq!(again.as_ref(), Ok(&entered), "{written}");
            entered.value().to_mm()
        }
        Err(error) => panic!("{text:?}: {error}"),
    }
}

#[test]
fn typed_lengths() {
    use Unit::{Inch, Millimetre};
    let cases = [
        ("25", Millimetre, 25.0),
        ("25,4", Millimetre, 25.4),
        ("25.4 mm", Inch, 25.4),
        ("25.4mm", Inch, 25.4),
        ("1\"", Millimetre, 25.4),
        ("1 in", Millimetre, 25.4),
        ("1 IN", Millimetre, 25.4),
        ("3/4", Inch, 19.05),
        ("1 3/8 in", Millimetre, 34.925),
        ("1\u{a0}3/8\u{202f}in", Millimetre, 34.925),
        ("1⅜\"", Millimetre, 34.925),
        ("½", Inch, 12.7),
        ("-0.05", Millimetre, -0.05),
        ("\u{2212}0,05", Millimetre, -0.05),
        ("+3", Millimetre, 3.0),
        ("31.2-0.4", Millimetre, 30.8),
        ("31.2 - 0.4 + 2", Millimetre, 32.8),
        ("31.2-0.4 in", Millimetre, 30.8 * 25.4),
        ("1 in - 0.4 mm", Millimetre, 25.0),
        ("1 in - 0.4", Inch, 0.6 * 25.4),
        ("1 - 3/8", Inch, 0.625 * 25.4),
        ("1\"-3/8\"", Millimetre, 0.625 * 25.4),
        ("1\u{2009}250,5", Millimetre, 1250.5),
        ("1\u{a0}250", Millimetre, 1250.0),
        (".5", Millimetre, 0.5),
        ("25.", Millimetre, 25.0),
        (" 25 ", Millimetre, 25.0),
        ("2 cm", Inch, 20.0),
        ("0.1 m", Inch, 100.0),
        ("13 µm", Inch, 0.013),
        ("13um", Inch, 0.013),
        ("5 thou", Millimetre, 0.127),
        ("3''", Millimetre, 76.2),
        ("2.50", Millimetre, 2.5),
    ];
    for (text, unit, wanted) in cases {
        let got = mm(text, unit);
        assert!((got - wanted).abs() < 1e-9, "{text:?}: {got}, not {wanted}");
    }
}

#[test]
fn refused_texts_name_the_place() {
    let unknown = |text: &str| Kind::UnknownUnit(text.to_owned());
    let cases = [
        ("", Kind::Empty, 0),
        ("   ", Kind::Empty, 0),
        ("NaN", unknown("NaN"), 0),
        ("inf", unknown("inf"), 0),
        ("1e999", unknown("e999"), 1),
        ("abc", unknown("abc"), 0),
        ("25 kg", unknown("kg"), 3),
        ("25.4.1", Kind::SecondMark, 4),
        ("1,234.5", Kind::SecondMark, 5),
        ("25 4", Kind::TwoNumbers, 3),
        ("1 250", Kind::TwoNumbers, 2),
        ("25.4 3", Kind::TwoNumbers, 5),
        ("1-3/8", Kind::HyphenOrMinus, 1),
        ("1-⅜", Kind::HyphenOrMinus, 1),
        ("3/0", Kind::ZeroDenominator, 2),
        ("3/", Kind::ZeroDenominator, 2),
        ("/4", Kind::Unexpected('/'), 0),
        ("1 in - 0.4", Kind::UnitUnclear, 7),
        ("31.2-", Kind::NumberMissing, 5),
        ("--5", Kind::NumberMissing, 1),
        (".", Kind::NumberMissing, 0),
        ("70000/3", Kind::FractionTooLarge, 0),
        ("1234567890123456", Kind::TooManyDigits, 15),
        ("0.1234567891", Kind::TooManyDigits, 0),
        ("25*2", Kind::Unexpected('*'), 2),
        ("(25)", Kind::Unexpected('('), 0),
        ("1+1+1+1+1+1+1+1+1", Kind::TooManyTerms, 16),
    ];
    for (text, kind, at) in cases {
        let error = read(text, Dimension::Length, Some(Unit::Millimetre))
            .expect_err("a text that is not read");
        assert_eq!((&error.kind, error.at), (&kind, at), "{text:?}");
        assert!(error.to_string().contains(&format!("character {}", at + 1)));
    }
    let novel = "9".repeat(10_000);
    let error = read(&novel, Dimension::Length, None).expect_err("too long");
    assert_eq!(error.kind, Kind::TooLong);
    let bare = read("25", Dimension::Length, None).expect_err("no unit");
    assert_eq!(bare.kind, Kind::UnitMissing);
}

#[test]
fn other_dimensions_have_their_units() {
    use Dimension::{Feed, Rotation, Speed, Time};
    let cases = [
        ("80", Speed, Unit::MetrePerMinute, 80.0),
        ("100 ft/min", Speed, Unit::MetrePerMinute, 30.48),
        ("0.1", Feed, Unit::MillimetrePerRevolution, 0.1),
        ("0.004 in/rev", Feed, Unit::MillimetrePerRevolution, 0.1016),
        ("1/8", Feed, Unit::InchPerRevolution, 3.175),
        ("15", Time, Unit::Second, 15.0),
        ("1.5 min", Time, Unit::Second, 90.0),
        ("500 rpm", Rotation, Unit::RevolutionPerMinute, 500.0),
    ];
    for (text, dimension, unit, wanted) in cases {
        let entry = read(text, dimension, Some(unit)).expect(text);
        assert!((entry.base_value() - wanted).abs() < 1e-9, "{text}");
    }
}

/// 7.25 of a unit in the base unit of its dimension, by the general-purpose units library `uom`.
fn by_uom(unit: Unit) -> f64 {
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::f64::{AngularVelocity, Force, Length, Power, Time, Torque, Velocity};
    use uom::si::force::{kilonewton, newton, pound_force};
    use uom::si::length::{centimeter, inch, meter, micrometer, mil, millimeter};
    use uom::si::power::{horsepower, kilowatt, watt};
    use uom::si::time::{minute, second};
    use uom::si::torque::{newton_meter, pound_force_foot};
    use uom::si::velocity::{foot_per_minute, meter_per_second};
    match unit {
        Unit::Millimetre | Unit::MillimetrePerRevolution => Length::new::<millimeter>(7.25),
        Unit::Centimetre => Length::new::<centimeter>(7.25),
        Unit::Metre => Length::new::<meter>(7.25),
        Unit::Micrometre => Length::new::<micrometer>(7.25),
        Unit::Inch | Unit::InchPerRevolution => Length::new::<inch>(7.25),
        Unit::Thou => Length::new::<mil>(7.25),
        Unit::MetrePerMinute => {
            let speed = Length::new::<meter>(7.25) / Time::new::<minute>(1.0);
            return speed.get::<meter_per_second>() * 60.0;
        }
        Unit::FootPerMinute => {
            return Velocity::new::<foot_per_minute>(7.25).get::<meter_per_second>() * 60.0;
        }
        Unit::Second => return Time::new::<second>(7.25).get::<second>(),
        Unit::Minute => return Time::new::<minute>(7.25).get::<second>(),
        Unit::RevolutionPerMinute => {
            return AngularVelocity::new::<revolution_per_minute>(7.25)
                .get::<revolution_per_minute>();
        }
        Unit::Degree => {
            return uom::si::f64::Angle::new::<uom::si::angle::degree>(7.25)
                .get::<uom::si::angle::degree>();
        }
        Unit::ToOne
        | Unit::RockwellC
        | Unit::NewtonPerMicrometre
        | Unit::Currency
        | Unit::Piece => return 7.25,
        Unit::Celsius | Unit::Fahrenheit => return by_uom_temperature(unit),
        // 7.25 of a Vickers or Brinell number is 7.25/238 and 7.25/226 of 20 points: see the table.
        Unit::Vickers => return 7.25 * 20.0 / 238.0,
        Unit::Brinell => return 7.25 * 20.0 / 226.0,
        Unit::Percent => return 0.0725,
        Unit::Newton => return Force::new::<newton>(7.25).get::<newton>(),
        Unit::Kilonewton => return Force::new::<kilonewton>(7.25).get::<newton>(),
        Unit::PoundForce => return Force::new::<pound_force>(7.25).get::<newton>(),
        Unit::NewtonMetre => return Torque::new::<newton_meter>(7.25).get::<newton_meter>(),
        Unit::PoundFoot => return Torque::new::<pound_force_foot>(7.25).get::<newton_meter>(),
        Unit::Watt => return Power::new::<watt>(7.25).get::<watt>(),
        Unit::Kilowatt => return Power::new::<kilowatt>(7.25).get::<watt>(),
        Unit::Horsepower => return Power::new::<horsepower>(7.25).get::<watt>(),
    }
    .get::<millimeter>()
}

fn by_uom_temperature(unit: Unit) -> f64 {
    use uom::si::f64::ThermodynamicTemperature as Temperature;
    use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
    match unit {
        Unit::Fahrenheit => Temperature::new::<degree_fahrenheit>(7.25),
        _ => Temperature::new::<degree_celsius>(7.25),
    }
    .get::<degree_celsius>()
}

fn inch_force(unit: Unit) -> bool {
    matches!(unit, Unit::PoundForce | Unit::PoundFoot | Unit::Horsepower)
}

/// Every spelling of every unit, a feed being a length for each revolution.
#[test]
fn units_agree_with_uom() {
    let spellings = [
        (
            Dimension::Length,
            "mm cm m µm μm um \" '' in in. inch inches thou",
        ),
        (Dimension::Speed, "m/min ft/min fpm"),
        (Dimension::Feed, "mm/rev mm/r mm in/rev in/r in \""),
        (Dimension::Time, "s sec min"),
        (Dimension::Rotation, "rpm rev/min /min"),
        (Dimension::Angle, "° deg"),
        (Dimension::Taper, ":1"),
        (Dimension::Force, "N kN lbf lb"),
        (Dimension::Torque, "N·m Nm lbf·ft lbft ftlb"),
        (Dimension::Power, "W kW hp"),
        (Dimension::Hardness, "HRC HV HBW HB"),
        (Dimension::Stiffness, "N/µm N/um"),
        (Dimension::Money, "¤"),
        (Dimension::Share, "%"),
        (Dimension::Count, "pcs"),
        (Dimension::Temperature, "°C C °F F"),
    ];
    let mut seen = Vec::new();
    for (dimension, words) in spellings {
        for word in words.split(' ') {
            let entry = read(&format!("7.25 {word}"), dimension, None).expect(word);
            let (got, wanted) = (entry.base_value(), by_uom(entry.unit()));
            assert!(
                // The library rounds the pound-force to seven digits.
                (got / wanted - 1.0).abs()
                    < if inch_force(entry.unit()) {
                        1e-6
                    } else {
                        1e-12
                    },
                "{word}: {got}, {wanted}"
            );
            seen.push(entry.unit());
        }
    }
    assert!(Unit::ALL.iter().all(|unit| seen.contains(unit)));
}

proptest! {
    /// Any text is either read to a finite value or refused at a place inside it.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,80}") {
        match read(&text, Dimension::Length, Some(Unit::Inch)) {
            Ok(entry) => prop_assert!(entry.base_value().is_finite()),
            Err(error) => prop_assert!(error.at <= text.chars().count()),
        }
    }

    /// Text made of the characters that numbers are made of.
    #[test]
    fn number_like_text_is_read_or_refused(text in "[0-9.,/+ \"inm½\u{a0}-]{0,20}") {
        if let Ok(entry) = read(&text, Dimension::Length, Some(Unit::Millimetre)) {
            prop_assert!(entry.base_value().is_finite());
            let again = read(&entry.to_string(), Dimension::Length, None);
            prop_assert_eq!(again, Ok(entry));
        }
    }
}

#[test]
fn a_sum_that_grows_when_it_is_written_reads_back_from_a_file() {
    let typed = "-1.123456+1.123456-1.12345+1.12345+1.1234-1.1234+1.12-1.12in";
    let entered = Entered::<Length>::read(typed, Unit::Inch).unwrap();
    let written = serde_json::to_string(&entered).unwrap();
    assert!(super::MOST_CHARACTERS < written.len(), "{written}");
    assert_eq!(
        serde_json::from_str::<Entered<Length>>(&written).unwrap(),
        entered
    );
    let endless = format!("\"{}1 mm\"", "1 mm + ".repeat(36));
    assert!(serde_json::from_str::<Entered<Length>>(&endless).is_err());
}
