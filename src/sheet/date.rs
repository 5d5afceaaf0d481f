//! A moment as date and time.

use crate::job::Moment;

/// A moment in UTC as ISO 8601 writes it: `2024-02-29T12:00:00Z`. `None` after the year 9999, which takes five digits.
///
/// # Source
/// Days to a date of the Gregorian calendar by H. Hinnant, "chrono-compatible low-level date algorithms",
/// `civil_from_days`: years are counted from March, so that a leap day is their last.
///
/// # Example
/// ```
/// use skimwright::{job::Moment, sheet::iso_utc};
/// let moment = Moment::unix_seconds(1_709_208_000);
/// assert_eq!(iso_utc(moment).as_deref(), Some("2024-02-29T12:00:00Z"));
/// ```
pub fn iso_utc(moment: Moment) -> Option<String> {
    const DAY: u64 = 86_400;
    const ERA: u64 = 146_097;
    let seconds = moment.to_unix_seconds();
    // From 1 March of the year 0.
    let days = seconds / DAY + 719_468;
    let (era, day) = (days / ERA, days % ERA);
    let year = (day - day / 1460 + day / 36_524 - day / 146_096) / 365;
    let day = day - (365 * year + year / 4 - year / 100);
    let month = (5 * day + 2) / 153;
    let date = day - (153 * month + 2) / 5 + 1;
    let (month, later) = if month < 10 {
        (month + 3, 0)
    } else {
        (month - 9, 1)
    };
    let year = year + era * 400 + later;
    let time = seconds % DAY;
    let (hour, minute, second) = (time / 3600, time / 60 % 60, time % 60);
    (year <= 9999)
        .then(|| format!("{year:04}-{month:02}-{date:02}T{hour:02}:{minute:02}:{second:02}Z"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// From the program `date -u` of GNU coreutils.
    #[test]
    fn known_moments() {
        for (seconds, wanted) in [
            (0, "1970-01-01T00:00:00Z"),
            (951_782_399, "2000-02-28T23:59:59Z"),
            (951_782_400, "2000-02-29T00:00:00Z"),
            (951_868_800, "2000-03-01T00:00:00Z"),
            (1_000_000_000, "2001-09-09T01:46:40Z"),
            (1_735_689_599, "2024-12-31T23:59:59Z"),
            (4_107_542_400, "2100-03-01T00:00:00Z"),
            (253_402_300_799, "9999-12-31T23:59:59Z"),
        ] {
            let moment = Moment::unix_seconds(seconds);
            assert_eq!(iso_utc(moment).as_deref(), Some(wanted));
        }
        for seconds in [253_402_300_800, u64::MAX] {
            assert_eq!(iso_utc(Moment::unix_seconds(seconds)), None);
        }
    }

    /// Every day of eight centuries follows the one before.
    #[test]
    fn no_day_is_left_out() {
        let day = |days: u64| iso_utc(Moment::unix_seconds(days * 86_400)).unwrap();
        let (mut year, mut month, mut date) = (1970, 1, 1);
        for days in 0..292_194 {
            assert!(day(days).starts_with(&format!("{year:04}-{month:02}-{date:02}T00")));
            let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
            let long = [
                31,
                if leap { 29 } else { 28 },
                31,
                30,
                31,
                30,
                31,
                31,
                30,
                31,
                30,
                31,
            ];
            date += 1;
            if date > long[month - 1] {
                (month, date) = (month + 1, 1);
            }
            if month > 12 {
                (year, month) = (year + 1, 1);
            }
        }
    }
}
