//! Machine tapers: Morse, Brown & Sharpe, Jarno, metric, drill-chuck, Jacobs, 7/24, and that of R8 collets.
//!
//! * Source: handbook tables of standard tapers, which follow ISO 296 and ASME B5.10 for Morse, the makers' own series
//!   for Brown & Sharpe and Jacobs, and the rule of the series for Jarno (N/8, N/10 and N/2 inches); ISO 296 and its
//!   national copy GOST 25557 for metric; DIN 238-1 and GOST 9953 for drill-chuck tapers, ISO 239 for what they are cut
//!   from; ISO 297, DIN 2080 and MAS 403 for 7/24; common practice of milling-machine makers for R8.
//! * Units: as printed: inches, or millimetres below the metric heading, and inches of diameter per foot throughout
//!   (0.6 is 1:20, 3.5 is 7:24); how far a shank runs past its gauge plane is in millimetres, from ISO 296.
//! * What is what: the large diameter is that at the gauge plane, the small one that of the plug's end, the length the
//!   distance between the two. A Brown & Sharpe number is made with more than one length; its small end and taper are
//!   fixed, and the large end goes with the length. A drill-chuck taper is a piece of a Morse taper: B10 and B12 of
//!   no 1, B16 and B18 of no 2, B22 and B24 of no 3.
//! * Left out: sockets, tangs, drawbar threads, Morse stub tapers, tolerances. Nos 4½ and 7 of Morse are in no ISO
//!   table. The ISO length of a shank is not the plug depth given here: know a taper by its ratio and diameters.
//! * Checked: ends against ratio and length in every row; ratios, ends and half angles of Morse, Brown & Sharpe and
//!   Jacobs against a second published list. The mark of a row is that of its weakest figure, `past_gauge` apart,
//!   which has one source. Gauge diameters and ratio of 7/24 nos 30, 40, 45, 50 and 60 have two, their lengths one.
//!   The small ends of metric, drill-chuck and 7/24 rows are ratio times length below the large end; printed to 0.1 mm
//!   they agree, those of 7/24 to 0.001 mm. The fifth decimal of a Jacobs taper per foot is from memory. Of R8 only
//!   the angle, 16° 51′ included, was seen in print.
//! * Disagreements: Morse 0, large end 0.3651 in one list (digits swapped), and Morse 1, 9.065 mm in one copy (12.065);
//!   B10, 10.094 or 10.095 mm; Jacobs 2 short, 0.5490 and a length of 0.97861 in one list (a slip: that is its taper per
//!   foot); Jacobs 3, length 1.21 in one list; cone of 7/24 on flanged shanks of ASME B5.50, 1.875, 2.687, 3.250, 4.000
//!   and 6.375 in for nos 30, 40, 45, 50 and 60; R8, length 0.912 in in one list.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use crate::quantity::{Angle, Length};
use TaperSeries::{BrownSharpe, Chuck, Jacobs, Jarno, Metric, Morse, R8, Steep};

/// A family of tapers that share a name and a way of numbering.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TaperSeries {
    /// Morse: drills, sleeves, tailstocks. Each number has a ratio of its own, near 1:20.
    Morse,
    /// Brown & Sharpe: older milling cutters and collets, near 1:24.
    BrownSharpe,
    /// Jarno: 1:20 throughout.
    Jarno,
    /// Metric 5 %: 1:20 throughout, below and above the Morse sizes.
    Metric,
    /// Drill-chuck tapers B of DIN 238 and ISO 239: either end of a Morse taper.
    Chuck,
    /// Jacobs: drill chucks. Each number has a ratio of its own, from 1:12 to 1:20.
    Jacobs,
    /// 7/24 of ISO 297: milling arbors. It holds by its drawbar, not by itself.
    Steep,
    /// The cone of R8 collets, 16° 51′ included: one size.
    R8,
}

impl TaperSeries {
    /// Every series, in the order in which they are offered.
    pub const ALL: [Self; 8] = [Morse, BrownSharpe, Jarno, Metric, Chuck, Jacobs, Steep, R8];
}

/// One size of a standard taper, as its table prints it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StandardTaper {
    /// The series it belongs to.
    pub series: TaperSeries,
    /// The text that stands for it in files, such as `morse-4.5`.
    pub code: &'static str,
    /// Its number within the series, such as `4.5`.
    pub size: &'static str,
    /// Change of diameter over change of length: 0.05 for 1:20.
    pub ratio: f64,
    /// Diameter at the gauge plane.
    pub large_diameter: Length,
    /// Diameter at the small end of the plug.
    pub small_diameter: Length,
    /// From the gauge plane to the small end of the plug.
    pub length: Length,
    /// How far the shank goes on beyond the gauge plane, towards its large end.
    pub past_gauge: Option<Length>,
    /// How far the weakest figure of the row was checked; `past_gauge` has one source throughout.
    pub confirmed: Confirmed,
}

impl StandardTaper {
    /// The angle between the axis and the side, to which a top slide is set.
    ///
    /// # Accuracy
    /// Exact for the printed ratio, whose last digit is worth 0.1 second of arc; of Jacobs, 1 second.
    /// # Source
    /// Right triangle: half the change of diameter over the length.
    /// # Example
    /// ```
    /// use skimwright::tables::TaperSize;
    /// let jarno = TaperSize::from_code("jarno-7").and_then(TaperSize::get).unwrap();
    /// assert!((jarno.half_angle().to_degrees() - 1.4321).abs() < 1e-4);
    /// ```
    pub fn half_angle(&self) -> Angle {
        Angle::radians((self.ratio / 2.0).atan())
    }
}

row_index!(
    /// A size of standard taper: the number of its row.
    TaperSize, StandardTaper, TAPERS, code
);

impl TaperSize {
    /// The size of this number in a series; `None` if the table has no such size.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::{TaperSeries, TaperSize};
    /// let no_3 = TaperSize::find(TaperSeries::Morse, "3").unwrap();
    /// assert_eq!(no_3.code(), "morse-3");
    /// assert!(TaperSize::find(TaperSeries::Jarno, "1").is_none());
    /// ```
    pub fn find(series: TaperSeries, size: &str) -> Option<Self> {
        Self::all().find(|row| {
            row.get()
                .is_some_and(|taper| taper.series == series && taper.size == size)
        })
    }
}

/// A row of lengths with units, taper in inches per foot, the run past the gauge plane in millimetres.
const fn row(
    series: TaperSeries,
    code: &'static str,
    size: &'static str,
    inches_per_foot: f64,
    [large_diameter, small_diameter, length]: [Length; 3],
    past_gauge: Option<f64>,
    confirmed: Confirmed,
) -> StandardTaper {
    StandardTaper {
        series,
        code,
        size,
        ratio: inches_per_foot / 12.0,
        large_diameter,
        small_diameter,
        length,
        past_gauge: match past_gauge {
            Some(millimetres) => Some(Length::mm(millimetres)),
            None => None,
        },
        confirmed,
    }
}

/// A row whose diameters and length are in inches.
#[expect(
    clippy::too_many_arguments,
    reason = "the columns of the printed table"
)]
const fn taper(
    series: TaperSeries,
    code: &'static str,
    size: &'static str,
    inches_per_foot: f64,
    large: f64,
    small: f64,
    length: f64,
    past_gauge: Option<f64>,
    confirmed: Confirmed,
) -> StandardTaper {
    let lengths = [
        Length::inch(large),
        Length::inch(small),
        Length::inch(length),
    ];
    row(
        series,
        code,
        size,
        inches_per_foot,
        lengths,
        past_gauge,
        confirmed,
    )
}

/// A row whose diameters and length are in millimetres, with one source.
#[expect(
    clippy::too_many_arguments,
    reason = "the columns of the printed table"
)]
const fn mm(
    series: TaperSeries,
    code: &'static str,
    size: &'static str,
    inches_per_foot: f64,
    large: f64,
    small: f64,
    length: f64,
    past_gauge: Option<f64>,
) -> StandardTaper {
    let lengths = [Length::mm(large), Length::mm(small), Length::mm(length)];
    row(
        series,
        code,
        size,
        inches_per_foot,
        lengths,
        past_gauge,
        OneSource,
    )
}

/// The tapers. Links store the place of a row: the order is frozen, and a new row goes to the end.
#[rustfmt::skip]
pub static TAPERS: &[StandardTaper] = &[
    //    series       code               size   in/ft    large    small    length    past, mm   checked
    taper(Morse,       "morse-0",         "0",   0.62460, 0.35610, 0.25200,  2.00000, Some(3.0), TwoSources),
    taper(Morse,       "morse-1",         "1",   0.59858, 0.47500, 0.36900,  2.12500, Some(3.5), TwoSources),
    taper(Morse,       "morse-2",         "2",   0.59941, 0.70000, 0.57200,  2.56250, Some(5.0), TwoSources),
    taper(Morse,       "morse-3",         "3",   0.60235, 0.93800, 0.77800,  3.18750, Some(5.0), TwoSources),
    taper(Morse,       "morse-4",         "4",   0.62326, 1.23100, 1.02000,  4.06250, Some(6.5), TwoSources),
    taper(Morse,       "morse-4.5",       "4.5", 0.62400, 1.50000, 1.26600,  4.50000, None,      TwoSources),
    taper(Morse,       "morse-5",         "5",   0.63151, 1.74800, 1.47500,  5.18750, Some(6.5), TwoSources),
    taper(Morse,       "morse-6",         "6",   0.62565, 2.49400, 2.11600,  7.25000, Some(8.0), TwoSources),
    taper(Morse,       "morse-7",         "7",   0.62400, 3.27000, 2.75000, 10.00000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-1",  "1",   0.50200, 0.23922, 0.20000,  0.93750, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-2",  "2",   0.50200, 0.29968, 0.25000,  1.18750, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-3",  "3",   0.50200, 0.37525, 0.31250,  1.50000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-4",  "4",   0.50240, 0.42065, 0.35000,  1.68750, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-5",  "5",   0.50160, 0.53883, 0.45000,  2.12500, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-6",  "6",   0.50329, 0.59961, 0.50000,  2.37500, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-7",  "7",   0.50147, 0.72015, 0.60000,  2.87500, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-8",  "8",   0.50100, 0.89873, 0.75000,  3.56250, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-9",  "9",   0.50085, 1.07748, 0.90010,  4.25000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-10", "10",  0.51612, 1.25970, 1.04465,  5.00000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-11", "11",  0.50100, 1.49784, 1.24995,  5.93750, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-12", "12",  0.49973, 1.79681, 1.50010,  7.12500, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-13", "13",  0.50020, 2.07310, 1.75005,  7.75000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-14", "14",  0.50000, 2.34375, 2.00000,  8.25000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-15", "15",  0.50000, 2.61458, 2.25000,  8.75000, None,      TwoSources),
    taper(BrownSharpe, "brown-sharpe-16", "16",  0.50000, 2.88542, 2.50000,  9.25000, None,      TwoSources),
    taper(Jarno,       "jarno-2",         "2",   0.60000, 0.25000, 0.20000,  1.00000, None,      TwoSources),
    taper(Jarno,       "jarno-3",         "3",   0.60000, 0.37500, 0.30000,  1.50000, None,      TwoSources),
    taper(Jarno,       "jarno-4",         "4",   0.60000, 0.50000, 0.40000,  2.00000, None,      TwoSources),
    taper(Jarno,       "jarno-5",         "5",   0.60000, 0.62500, 0.50000,  2.50000, None,      TwoSources),
    taper(Jarno,       "jarno-6",         "6",   0.60000, 0.75000, 0.60000,  3.00000, None,      TwoSources),
    taper(Jarno,       "jarno-7",         "7",   0.60000, 0.87500, 0.70000,  3.50000, None,      TwoSources),
    taper(Jarno,       "jarno-8",         "8",   0.60000, 1.00000, 0.80000,  4.00000, None,      TwoSources),
    taper(Jarno,       "jarno-9",         "9",   0.60000, 1.12500, 0.90000,  4.50000, None,      TwoSources),
    taper(Jarno,       "jarno-10",        "10",  0.60000, 1.25000, 1.00000,  5.00000, None,      TwoSources),
    taper(Jarno,       "jarno-11",        "11",  0.60000, 1.37500, 1.10000,  5.50000, None,      TwoSources),
    taper(Jarno,       "jarno-12",        "12",  0.60000, 1.50000, 1.20000,  6.00000, None,      TwoSources),
    taper(Jarno,       "jarno-13",        "13",  0.60000, 1.62500, 1.30000,  6.50000, None,      TwoSources),
    taper(Jarno,       "jarno-14",        "14",  0.60000, 1.75000, 1.40000,  7.00000, None,      TwoSources),
    taper(Jarno,       "jarno-15",        "15",  0.60000, 1.87500, 1.50000,  7.50000, None,      TwoSources),
    taper(Jarno,       "jarno-16",        "16",  0.60000, 2.00000, 1.60000,  8.00000, None,      TwoSources),
    taper(Jarno,       "jarno-17",        "17",  0.60000, 2.12500, 1.70000,  8.50000, None,      TwoSources),
    taper(Jarno,       "jarno-18",        "18",  0.60000, 2.25000, 1.80000,  9.00000, None,      TwoSources),
    taper(Jarno,       "jarno-19",        "19",  0.60000, 2.37500, 1.90000,  9.50000, None,      TwoSources),
    taper(Jarno,       "jarno-20",        "20",  0.60000, 2.50000, 2.00000, 10.00000, None,      TwoSources),
    // In millimetres, with one source.
    //  series       code               size   in/ft    large     small   length  past
    mm(Metric,         "metric-4",        "4",   0.60000,   4.0000,   2.8500,  23.0, Some(2.0)),
    mm(Metric,         "metric-6",        "6",   0.60000,   6.0000,   4.4000,  32.0, Some(3.0)),
    mm(Metric,         "metric-80",       "80",  0.60000,  80.0000,  70.2000, 196.0, Some(8.0)),
    mm(Metric,         "metric-100",      "100", 0.60000, 100.0000,  88.4000, 232.0, Some(10.0)),
    mm(Metric,         "metric-120",      "120", 0.60000, 120.0000, 106.6000, 268.0, Some(12.0)),
    mm(Metric,         "metric-160",      "160", 0.60000, 160.0000, 143.0000, 340.0, Some(16.0)),
    mm(Metric,         "metric-200",      "200", 0.60000, 200.0000, 179.4000, 412.0, Some(20.0)),
    mm(Chuck,          "chuck-b10",       "B10", 0.59858,  10.0940,   9.3707,  14.5, None),
    mm(Chuck,          "chuck-b12",       "B12", 0.59858,  12.0650,  11.1422,  18.5, None),
    mm(Chuck,          "chuck-b16",       "B16", 0.59941,  15.7330,  14.5342,  24.0, None),
    mm(Chuck,          "chuck-b18",       "B18", 0.59941,  17.7800,  16.1816,  32.0, None),
    mm(Chuck,          "chuck-b22",       "B22", 0.60235,  21.7930,  19.7601,  40.5, None),
    mm(Chuck,          "chuck-b24",       "B24", 0.60235,  23.8250,  21.2901,  50.5, None),
    // In inches.
    taper(Jacobs,      "jacobs-0",        "0",   0.59145, 0.25000, 0.22844,  0.43750, None,      TwoSources),
    taper(Jacobs,      "jacobs-1",        "1",   0.92508, 0.38400, 0.33341,  0.65625, None,      TwoSources),
    taper(Jacobs,      "jacobs-2",        "2",   0.97861, 0.55900, 0.48764,  0.87500, None,      TwoSources),
    taper(Jacobs,      "jacobs-2-short",  "2 short", 0.97861, 0.54880, 0.48764,  0.75000, None,      TwoSources),
    taper(Jacobs,      "jacobs-3",        "3",   0.63898, 0.81100, 0.74610,  1.21875, None,      TwoSources),
    taper(Jacobs,      "jacobs-4",        "4",   0.62886, 1.12400, 1.03720,  1.65625, None,      TwoSources),
    taper(Jacobs,      "jacobs-5",        "5",   0.62010, 1.41300, 1.31611,  1.87500, None,      TwoSources),
    taper(Jacobs,      "jacobs-6",        "6",   0.62292, 0.67600, 0.62409,  1.00000, None,      TwoSources),
    taper(Jacobs,      "jacobs-33",       "33",  0.76194, 0.62401, 0.56051,  1.00000, None,      TwoSources),
    // In millimetres, with one source.
    mm(Steep,          "steep-30",        "30",  3.50000,  31.7500,  17.6333,  48.4, None),
    mm(Steep,          "steep-35",        "35",  3.50000,  38.1000,  21.6500,  56.4, None),
    mm(Steep,          "steep-40",        "40",  3.50000,  44.4500,  25.3750,  65.4, None),
    mm(Steep,          "steep-45",        "45",  3.50000,  57.1500,  33.0000,  82.8, None),
    mm(Steep,          "steep-50",        "50",  3.50000,  69.8500,  40.1583, 101.8, None),
    mm(Steep,          "steep-55",        "55",  3.50000,  88.9000,  51.9167, 126.8, None),
    mm(Steep,          "steep-60",        "60",  3.50000, 107.9500,  60.7583, 161.8, None),
    // In inches.
    taper(R8,          "r8",              "R8",  3.55471, 1.25000, 0.97229,  0.93750, None,      Memory),
];

#[cfg(test)]
mod tests {
    use super::*;

    /// How far the printed ends may differ from ratio and length: the last digits of all four figures together.
    const PRINTED_ENDS: f64 = 0.004;

    #[test]
    fn ends_agree_with_ratio_and_length() {
        for row in TAPERS {
            let change = row.large_diameter - row.small_diameter;
            let difference = (change - row.length * row.ratio).abs().to_mm();
            assert!(difference <= PRINTED_ENDS, "{}: {difference} mm", row.code);
        }
    }

    #[test]
    fn each_series_grows_and_no_code_stands_twice() {
        for pair in TAPERS.windows(2) {
            // The numbers of Jacobs do not stand in the order of their sizes.
            if pair[0].series == pair[1].series && pair[0].series != Jacobs {
                assert!(pair[0].large_diameter < pair[1].large_diameter);
                assert!(pair[0].small_diameter < pair[1].small_diameter);
                assert!(pair[0].length < pair[1].length);
            }
        }
        for size in TaperSize::all() {
            let row = size.get().unwrap();
            assert_eq!(TaperSize::from_code(size.code()), Some(size));
            assert_eq!(TaperSize::from_index(size.index()), Some(size));
            assert_eq!(TaperSize::find(row.series, row.size), Some(size));
            let name = match row.series {
                Morse => "morse",
                BrownSharpe => "brown-sharpe",
                Jarno => "jarno",
                Metric => "metric",
                Chuck => "chuck",
                Jacobs => "jacobs",
                Steep => "steep",
                R8 => {
                    assert_eq!(row.code, "r8");
                    continue;
                }
            };
            let size = row.size.to_lowercase().replace(' ', "-");
            assert_eq!(row.code, format!("{name}-{size}"));
        }
        assert_eq!(TaperSize::all().count(), TAPERS.len());
        assert!(TaperSize::from_index(u8::MAX).is_none());
        assert!(TaperSize::from_code("").is_none());
    }
}
