//! A duration as a stopwatch shows it.

use super::Time;

/// Minutes and seconds, from an hour on with the hours: `3:07`, `61:07` is `1:01:07`.
///
/// Whole seconds that have passed; nothing for what is below zero or no number.
///
/// # Example
/// ```
/// use skimwright::quantity::{Time, stopwatch};
/// assert_eq!(stopwatch(Time::seconds(187.9)), "3:07");
/// assert_eq!(stopwatch(Time::seconds(3667.0)), "1:01:07");
/// ```
pub fn stopwatch(time: Time) -> String {
    const MOST: f64 = 999.0 * 3600.0;
    let seconds = time.to_seconds();
    let seconds = if seconds.is_finite() {
        seconds.clamp(0.0, MOST)
    } else {
        0.0
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between nought and some millions"
    )]
    let seconds = seconds as u32;
    let (minutes, rest) = (seconds / 60, seconds % 60);
    match minutes / 60 {
        0 => format!("{minutes}:{rest:02}"),
        hours => format!("{hours}:{:02}:{rest:02}", minutes % 60),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_seconds_that_have_passed_are_shown() {
        for (seconds, text) in [
            (0.0, "0:00"),
            (0.99, "0:00"),
            (59.0, "0:59"),
            (60.0, "1:00"),
            (3599.9, "59:59"),
            (3600.0, "1:00:00"),
            (-5.0, "0:00"),
            (1e300, "999:00:00"),
        ] {
            assert_eq!(stopwatch(Time::seconds(seconds)), text, "{seconds} s");
        }
    }
}
