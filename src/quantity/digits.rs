//! Numbers as digits.
//!
//! The library's own writing of numbers is exact to hundreds of decimals, which takes fourteen kilobytes of program;
//! here nine are enough.

use core::fmt::Write;

/// From here on whole numbers would leave their type; nothing that is shown comes near.
const TOO_LARGE: f64 = 1e18;

/// Adds the digits of a number without its sign, with a fixed count of decimals, at most nine.
///
/// # Accuracy
/// Rounded to the last decimal, halves upward. What is 1e18 or more, or no number, is written `…`.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole numbers from 0 to 1e18"
)]
pub(crate) fn push_digits(text: &mut String, value: f64, decimals: usize) {
    let value = value.abs();
    if value.is_nan() || TOO_LARGE <= value {
        text.push('\u{2026}');
        return;
    }
    let decimals = decimals.min(9);
    let scale = (0..decimals).fold(1.0, |scale, _| scale * 10.0);
    let (mut whole, mut part) = (value.trunc(), (value.fract() * scale).round());
    if scale <= part {
        whole += 1.0;
        part = 0.0;
    }
    let (whole, part) = (whole as u64, part as u64);
    // Writing to a string cannot fail.
    let _ = if decimals == 0 {
        write!(text, "{whole}")
    } else {
        write!(text, "{whole}.{part:0decimals$}")
    };
}

/// Adds a number as SVG writes it: to a hundredth, with a hyphen before what is below zero.
pub(crate) fn push_hundredths(text: &mut String, value: f64) {
    const LEAST: f64 = 0.005;
    if value <= -LEAST {
        text.push('-');
    }
    push_digits(text, value, 2);
    while text.ends_with('0') {
        text.pop();
    }
    if text.ends_with('.') {
        text.pop();
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    fn digits(value: f64, decimals: usize) -> String {
        let mut text = String::new();
        super::push_digits(&mut text, value, decimals);
        text
    }

    fn hundredths(value: f64) -> String {
        let mut text = String::new();
        super::push_hundredths(&mut text, value);
        text
    }

    #[test]
    fn halves_go_upward_and_carry() {
        for (value, decimals, wanted) in [
            (0.35, 1, "0.4"),
            (2.5, 0, "3"),
            (0.125, 2, "0.13"),
            (9.995_1, 2, "10.00"),
            (-0.000_4, 3, "0.000"),
            (12.05, 3, "12.050"),
            (1e17, 0, "100000000000000000"),
            (1e18, 2, "\u{2026}"),
            (f64::NAN, 2, "\u{2026}"),
        ] {
            assert_eq!(digits(value, decimals), wanted, "{value}");
        }
    }

    #[test]
    fn hundredths_end_without_noughts() {
        for (value, wanted) in [
            (0.0, "0"),
            (-0.004, "0"),
            (-0.005, "-0.01"),
            (100.0, "100"),
            (12.5, "12.5"),
            (-7.256, "-7.26"),
        ] {
            assert_eq!(hundredths(value), wanted, "{value}");
        }
    }

    proptest! {
        /// As the library writes it, but for halves.
        #[test]
        fn digits_are_those_of_the_library(value in 0.0..1e7_f64, decimals in 0..6_usize) {
            let (ours, theirs) = (digits(value, decimals), format!("{value:.decimals$}"));
            let half = value * 10_f64.powi(i32::try_from(decimals).unwrap());
            prop_assume!((half.fract() - 0.5).abs() > 1e-4);
            prop_assert_eq!(ours, theirs);
        }
    }
}
