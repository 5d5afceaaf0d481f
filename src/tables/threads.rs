//! Screw threads: metric coarse and fine from 3 to 42 mm, UNC, one UNF and BSW.
//!
//! * Source: ISO 261 (diameters with pitches) and ISO 724 (basic dimensions); ASME B1.1 for UNC and UNF; BS 84 for
//!   BSW. Tap drills: ISO 2306, the drill lists of inch handbooks, BS 1157.
//! * Units: millimetres, inch threads too, diameters to 0.001 mm; threads per inch beside the pitch where it is so named.
//! * What is what: the minor diameter is that of the internal thread, D1, basic size. A tap drill is the usual one in
//!   steel, and always larger than D1.
//! * Left out: other pitches and diameters, left-hand and pipe threads, tolerance classes, the rest of UNF.
//! * Checked: every D1 by the profile (d − 1.0825 P; d − 1.2807 P for BSW); M8 to M22 fine against a printed table, a
//!   Whitworth table, five UNC sizes of a thread library; tap drills by the mark of each row.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use crate::quantity::Length;
use ThreadSeries::{Bsw, MetricCoarse, MetricFine, Unc, Unf};

/// A family of threads with one profile and one rule for the pitch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ThreadSeries {
    /// ISO metric, the pitch that is meant when none is named.
    MetricCoarse,
    /// ISO metric with a finer pitch.
    MetricFine,
    /// Unified coarse.
    Unc,
    /// Unified fine.
    Unf,
    /// British Standard Whitworth, 55°.
    Bsw,
}

/// One size of thread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StandardThread {
    /// The series it belongs to.
    pub series: ThreadSeries,
    /// How a drawing names it, such as `M10x1.25` or `1/2-13 UNC`; also its text in files.
    pub designation: &'static str,
    /// Outside diameter of the screw, basic size.
    pub major: Length,
    /// Distance from thread to thread.
    pub pitch: Length,
    /// Threads per inch, where the thread is named by them.
    pub threads_per_inch: Option<u8>,
    /// Inside diameter of the nut, basic size.
    pub minor_internal: Length,
    /// The usual drill before tapping.
    pub tap_drill: Length,
    /// How far the diameters were checked.
    pub confirmed: Confirmed,
    /// How far the tap drill was checked.
    pub confirmed_tap_drill: Confirmed,
}

row_index!(
    /// A size of thread: the number of its row.
    ///
    /// # Example
    /// ```
    /// use skimwright::quantity::Length;
    /// use skimwright::tables::ThreadSize;
    /// let thread = ThreadSize::from_code("M10").and_then(ThreadSize::get).unwrap();
    /// assert_eq!(thread.pitch, Length::mm(1.5));
    /// assert_eq!(thread.tap_drill, Length::mm(8.5));
    /// ```
    ThreadSize, StandardThread, THREADS, designation
);

impl ThreadSize {
    /// The sizes of one series, smallest first.
    pub fn of(series: ThreadSeries) -> impl Iterator<Item = Self> {
        Self::all().filter(move |size| size.get().is_some_and(|thread| thread.series == series))
    }
}

/// A row, in millimetres.
#[expect(
    clippy::too_many_arguments,
    reason = "the columns of the printed table"
)]
const fn thread(
    series: ThreadSeries,
    designation: &'static str,
    major: f64,
    pitch: f64,
    threads_per_inch: Option<u8>,
    minor_internal: f64,
    tap_drill: f64,
    confirmed: Confirmed,
    confirmed_tap_drill: Confirmed,
) -> StandardThread {
    StandardThread {
        series,
        designation,
        major: Length::mm(major),
        pitch: Length::mm(pitch),
        threads_per_inch,
        minor_internal: Length::mm(minor_internal),
        tap_drill: Length::mm(tap_drill),
        confirmed,
        confirmed_tap_drill,
    }
}

/// The threads. Links store the place of a row: the order is frozen, and a new row goes to the end.
#[rustfmt::skip]
pub static THREADS: &[StandardThread] = &[
    //     series        designation     major    pitch  per inch   minor  drill  checked     drill checked
    thread(MetricCoarse, "M3",            3.000,   0.50, None,      2.459,  2.50, OneSource,  TwoSources),
    thread(MetricCoarse, "M3.5",          3.500,   0.60, None,      2.850,  2.90, OneSource,  TwoSources),
    thread(MetricCoarse, "M4",            4.000,   0.70, None,      3.242,  3.30, OneSource,  TwoSources),
    thread(MetricCoarse, "M4.5",          4.500,   0.75, None,      3.688,  3.70, OneSource,  Memory),
    thread(MetricCoarse, "M5",            5.000,   0.80, None,      4.134,  4.20, OneSource,  TwoSources),
    thread(MetricCoarse, "M6",            6.000,   1.00, None,      4.917,  5.00, OneSource,  TwoSources),
    thread(MetricCoarse, "M7",            7.000,   1.00, None,      5.917,  6.00, OneSource,  Memory),
    thread(MetricCoarse, "M8",            8.000,   1.25, None,      6.647,  6.80, OneSource,  TwoSources),
    thread(MetricCoarse, "M9",            9.000,   1.25, None,      7.647,  7.80, OneSource,  OneSource),
    thread(MetricCoarse, "M10",          10.000,   1.50, None,      8.376,  8.50, OneSource,  TwoSources),
    thread(MetricCoarse, "M11",          11.000,   1.50, None,      9.376,  9.50, OneSource,  OneSource),
    thread(MetricCoarse, "M12",          12.000,   1.75, None,     10.106, 10.20, OneSource,  OneSource),
    thread(MetricCoarse, "M14",          14.000,   2.00, None,     11.835, 12.00, OneSource,  OneSource),
    thread(MetricCoarse, "M16",          16.000,   2.00, None,     13.835, 14.00, OneSource,  TwoSources),
    thread(MetricCoarse, "M18",          18.000,   2.50, None,     15.294, 15.50, OneSource,  OneSource),
    thread(MetricCoarse, "M20",          20.000,   2.50, None,     17.294, 17.50, OneSource,  TwoSources),
    thread(MetricCoarse, "M22",          22.000,   2.50, None,     19.294, 19.50, OneSource,  OneSource),
    thread(MetricCoarse, "M24",          24.000,   3.00, None,     20.752, 21.00, OneSource,  OneSource),
    thread(MetricCoarse, "M27",          27.000,   3.00, None,     23.752, 24.00, OneSource,  OneSource),
    thread(MetricCoarse, "M30",          30.000,   3.50, None,     26.211, 26.50, OneSource,  OneSource),
    thread(MetricCoarse, "M33",          33.000,   3.50, None,     29.211, 29.50, OneSource,  Memory),
    thread(MetricCoarse, "M36",          36.000,   4.00, None,     31.670, 32.00, OneSource,  OneSource),
    thread(MetricCoarse, "M39",          39.000,   4.00, None,     34.670, 35.00, OneSource,  Memory),
    thread(MetricCoarse, "M42",          42.000,   4.50, None,     37.129, 37.50, OneSource,  OneSource),
    thread(MetricFine,   "M3x0.35",       3.000,   0.35, None,      2.621,  2.65, OneSource,  Memory),
    thread(MetricFine,   "M4x0.5",        4.000,   0.50, None,      3.459,  3.50, OneSource,  Memory),
    thread(MetricFine,   "M5x0.5",        5.000,   0.50, None,      4.459,  4.50, OneSource,  Memory),
    thread(MetricFine,   "M6x0.75",       6.000,   0.75, None,      5.188,  5.20, OneSource,  Memory),
    thread(MetricFine,   "M8x0.75",       8.000,   0.75, None,      7.188,  7.20, TwoSources, Memory),
    thread(MetricFine,   "M8x1",          8.000,   1.00, None,      6.917,  7.00, TwoSources, OneSource),
    thread(MetricFine,   "M10x0.75",     10.000,   0.75, None,      9.188,  9.20, TwoSources, Memory),
    thread(MetricFine,   "M10x1",        10.000,   1.00, None,      8.917,  9.00, TwoSources, OneSource),
    thread(MetricFine,   "M10x1.25",     10.000,   1.25, None,      8.647,  8.80, TwoSources, OneSource),
    thread(MetricFine,   "M12x1",        12.000,   1.00, None,     10.917, 11.00, TwoSources, Memory),
    thread(MetricFine,   "M12x1.25",     12.000,   1.25, None,     10.647, 10.80, TwoSources, OneSource),
    thread(MetricFine,   "M12x1.5",      12.000,   1.50, None,     10.376, 10.50, TwoSources, OneSource),
    thread(MetricFine,   "M14x1",        14.000,   1.00, None,     12.917, 13.00, OneSource,  Memory),
    thread(MetricFine,   "M14x1.25",     14.000,   1.25, None,     12.647, 12.80, TwoSources, OneSource),
    thread(MetricFine,   "M14x1.5",      14.000,   1.50, None,     12.376, 12.50, TwoSources, OneSource),
    thread(MetricFine,   "M15x1",        15.000,   1.00, None,     13.917, 14.00, OneSource,  Memory),
    thread(MetricFine,   "M16x1",        16.000,   1.00, None,     14.917, 15.00, TwoSources, Memory),
    thread(MetricFine,   "M16x1.5",      16.000,   1.50, None,     14.376, 14.50, TwoSources, OneSource),
    thread(MetricFine,   "M17x1",        17.000,   1.00, None,     15.917, 16.00, OneSource,  Memory),
    thread(MetricFine,   "M18x1",        18.000,   1.00, None,     16.917, 17.00, TwoSources, Memory),
    thread(MetricFine,   "M18x1.5",      18.000,   1.50, None,     16.376, 16.50, TwoSources, OneSource),
    thread(MetricFine,   "M18x2",        18.000,   2.00, None,     15.835, 16.00, TwoSources, OneSource),
    thread(MetricFine,   "M20x1",        20.000,   1.00, None,     18.917, 19.00, TwoSources, Memory),
    thread(MetricFine,   "M20x1.5",      20.000,   1.50, None,     18.376, 18.50, TwoSources, Memory),
    thread(MetricFine,   "M20x2",        20.000,   2.00, None,     17.835, 18.00, TwoSources, Memory),
    thread(MetricFine,   "M22x1",        22.000,   1.00, None,     20.917, 21.00, OneSource,  Memory),
    thread(MetricFine,   "M22x1.5",      22.000,   1.50, None,     20.376, 20.50, TwoSources, Memory),
    thread(MetricFine,   "M22x2",        22.000,   2.00, None,     19.835, 20.00, TwoSources, Memory),
    thread(MetricFine,   "M24x1",        24.000,   1.00, None,     22.917, 23.00, OneSource,  Memory),
    thread(MetricFine,   "M24x1.5",      24.000,   1.50, None,     22.376, 22.50, OneSource,  Memory),
    thread(MetricFine,   "M24x2",        24.000,   2.00, None,     21.835, 22.00, OneSource,  Memory),
    thread(MetricFine,   "M25x1.5",      25.000,   1.50, None,     23.376, 23.50, OneSource,  Memory),
    thread(MetricFine,   "M27x1.5",      27.000,   1.50, None,     25.376, 25.50, OneSource,  Memory),
    thread(MetricFine,   "M27x2",        27.000,   2.00, None,     24.835, 25.00, OneSource,  Memory),
    thread(MetricFine,   "M30x1",        30.000,   1.00, None,     28.917, 29.00, OneSource,  Memory),
    thread(MetricFine,   "M30x1.5",      30.000,   1.50, None,     28.376, 28.50, OneSource,  Memory),
    thread(MetricFine,   "M30x2",        30.000,   2.00, None,     27.835, 28.00, OneSource,  Memory),
    thread(MetricFine,   "M33x1.5",      33.000,   1.50, None,     31.376, 31.50, OneSource,  Memory),
    thread(MetricFine,   "M33x2",        33.000,   2.00, None,     30.835, 31.00, OneSource,  Memory),
    thread(MetricFine,   "M35x1.5",      35.000,   1.50, None,     33.376, 33.50, OneSource,  Memory),
    thread(MetricFine,   "M36x1.5",      36.000,   1.50, None,     34.376, 34.50, OneSource,  Memory),
    thread(MetricFine,   "M36x2",        36.000,   2.00, None,     33.835, 34.00, OneSource,  Memory),
    thread(MetricFine,   "M36x3",        36.000,   3.00, None,     32.752, 33.00, OneSource,  Memory),
    thread(MetricFine,   "M39x1.5",      39.000,   1.50, None,     37.376, 37.50, OneSource,  Memory),
    thread(MetricFine,   "M39x2",        39.000,   2.00, None,     36.835, 37.00, OneSource,  Memory),
    thread(MetricFine,   "M39x3",        39.000,   3.00, None,     35.752, 36.00, OneSource,  Memory),
    thread(MetricFine,   "M40x1.5",      40.000,   1.50, None,     38.376, 38.50, OneSource,  Memory),
    thread(MetricFine,   "M42x1.5",      42.000,   1.50, None,     40.376, 40.50, OneSource,  Memory),
    thread(MetricFine,   "M42x2",        42.000,   2.00, None,     39.835, 40.00, OneSource,  Memory),
    thread(MetricFine,   "M42x3",        42.000,   3.00, None,     38.752, 39.00, OneSource,  Memory),
    thread(Unc,          "#10-24 UNC",    4.826, 1.0583, Some(24),  3.680,  3.80, TwoSources, OneSource),
    thread(Unc,          "#12-24 UNC",    5.486, 1.0583, Some(24),  4.341,  4.50, OneSource,  OneSource),
    thread(Unc,          "1/4-20 UNC",    6.350,   1.27, Some(20),  4.975,  5.11, TwoSources, OneSource),
    thread(Unc,          "5/16-18 UNC",   7.938, 1.4111, Some(18),  6.410,  6.53, OneSource,  OneSource),
    thread(Unc,          "3/8-16 UNC",    9.525, 1.5875, Some(16),  7.806,  7.94, OneSource,  OneSource),
    thread(Unc,          "7/16-14 UNC",  11.112, 1.8143, Some(14),  9.148,  9.35, OneSource,  OneSource),
    thread(Unc,          "1/2-13 UNC",   12.700, 1.9538, Some(13), 10.585, 10.72, TwoSources, OneSource),
    thread(Unc,          "9/16-12 UNC",  14.287, 2.1167, Some(12), 11.996, 12.30, OneSource,  OneSource),
    thread(Unc,          "5/8-11 UNC",   15.875, 2.3091, Some(11), 13.375, 13.49, OneSource,  OneSource),
    thread(Unc,          "3/4-10 UNC",   19.050,   2.54, Some(10), 16.300, 16.67, TwoSources, OneSource),
    thread(Unc,          "7/8-9 UNC",    22.225, 2.8222, Some(9),  19.170, 19.45, OneSource,  OneSource),
    thread(Unc,          "1-8 UNC",      25.400,  3.175, Some(8),  21.963, 22.22, TwoSources, OneSource),
    thread(Unc,          "1-1/8-7 UNC",  28.575, 3.6286, Some(7),  24.647, 25.00, OneSource,  Memory),
    thread(Unc,          "1-1/4-7 UNC",  31.750, 3.6286, Some(7),  27.822, 28.18, OneSource,  Memory),
    thread(Unc,          "1-3/8-6 UNC",  34.925, 4.2333, Some(6),  30.342, 30.96, OneSource,  Memory),
    thread(Unc,          "1-1/2-6 UNC",  38.100, 4.2333, Some(6),  33.517, 34.13, OneSource,  Memory),
    thread(Unf,          "7/16-20 UNF",  11.112,   1.27, Some(20),  9.738,  9.92, OneSource,  OneSource),
    thread(Bsw,          "1/4-20 BSW",    6.350,   1.27, Some(20),  4.724,  5.10, TwoSources, OneSource),
    thread(Bsw,          "5/16-18 BSW",   7.938, 1.4111, Some(18),  6.130,  6.50, TwoSources, OneSource),
    thread(Bsw,          "3/8-16 BSW",    9.525, 1.5875, Some(16),  7.492,  7.90, TwoSources, OneSource),
    thread(Bsw,          "7/16-14 BSW",  11.112, 1.8143, Some(14),  8.789,  9.25, TwoSources, OneSource),
    thread(Bsw,          "1/2-12 BSW",   12.700, 2.1167, Some(12),  9.989, 10.50, TwoSources, OneSource),
    thread(Bsw,          "9/16-12 BSW",  14.287, 2.1167, Some(12), 11.577, 12.10, TwoSources, OneSource),
    thread(Bsw,          "5/8-11 BSW",   15.875, 2.3091, Some(11), 12.918, 13.50, TwoSources, OneSource),
    thread(Bsw,          "11/16-11 BSW", 17.462, 2.3091, Some(11), 14.505, 15.00, OneSource,  Memory),
    thread(Bsw,          "3/4-10 BSW",   19.050,   2.54, Some(10), 15.797, 16.25, TwoSources, OneSource),
    thread(Bsw,          "7/8-9 BSW",    22.225, 2.8222, Some(9),  18.611, 19.25, TwoSources, OneSource),
    thread(Bsw,          "1-8 BSW",      25.400,  3.175, Some(8),  21.334, 22.00, TwoSources, OneSource),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_series_is_sorted_and_no_designation_stands_twice() {
        for pair in THREADS.windows(2) {
            if pair[0].series == pair[1].series {
                let key = |row: &StandardThread| (row.major.to_mm(), row.pitch.to_mm());
                assert!(key(&pair[0]) < key(&pair[1]), "{}", pair[1].designation);
            }
        }
        for size in ThreadSize::all() {
            assert_eq!(ThreadSize::from_code(size.code()), Some(size));
            assert_eq!(ThreadSize::from_index(size.index()), Some(size));
        }
        assert_eq!(ThreadSize::all().count(), THREADS.len());
    }

    #[test]
    fn a_tap_drill_lies_between_the_minor_and_the_major_diameter() {
        for row in THREADS {
            assert!(row.minor_internal < row.tap_drill, "{}", row.designation);
            assert!(row.tap_drill < row.major, "{}", row.designation);
        }
    }
}
