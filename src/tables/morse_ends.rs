//! What a Morse shank has beyond its two gauge diameters: the tang at its small end, and the run past the gauge plane.
//!
//! * Source: ISO 296 and DIN 228-1, form B (with a tang), as reproduced in a published table; the largest diameter from
//!   GOST 25557, the national copy of ISO 296.
//! * Units: millimetres. Lengths of tang and shank and the diameter of the tang are the greatest that the table allows.
//! * How far a shank runs past its gauge plane stands in the table of tapers, once: [`MorseEnd::past_gauge`] reads it.
//! * Left out: the radii of the tang, its tolerances, shanks with a drawbar thread; nos 4½ and 7, which no ISO table has.
//! * Checked: gauge plane to tang end and the run past the gauge plane against the length of the whole shank; the
//!   largest diameter against ratio and run past the gauge plane. One source for every figure. Handbook tables in
//!   inches print shorter shanks: their plug depth is another dimension.
//! * Licence: facts only.

use super::{Confirmed, TAPERS, TaperSeries, TaperSize};
use crate::quantity::Length;

/// The ends of one size of Morse shank with a tang.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MorseEnd {
    /// Its number within the Morse series, such as `2`.
    pub size: &'static str,
    /// Diameter where the cone ends at the shoulder, past the gauge plane.
    pub largest_diameter: Length,
    /// From the gauge plane to the end of the tang, at most.
    pub gauge_to_tang_end: Length,
    /// Length of the tang along the axis, at most.
    pub tang_length: Length,
    /// Thickness of the tang, across its flats.
    pub tang_thickness: Length,
    /// Diameter that the tang is turned to, at most.
    pub tang_diameter: Length,
}

impl MorseEnd {
    /// How far every figure of the table was checked.
    pub const CONFIRMED: Confirmed = Confirmed::OneSource;

    /// The ends of this size; `None` if it is no Morse taper, or one that the table has not.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::{MorseEnd, TaperSize};
    /// let no_2 = TaperSize::from_code("morse-2").and_then(MorseEnd::of).unwrap();
    /// assert!((no_2.tang_thickness.to_mm() - 6.3).abs() < 1e-9);
    /// assert!(TaperSize::from_code("jarno-2").and_then(MorseEnd::of).is_none());
    /// ```
    pub fn of(size: TaperSize) -> Option<&'static Self> {
        let taper = size.get()?;
        let is_morse = taper.series == TaperSeries::Morse;
        MORSE_ENDS
            .iter()
            .find(|end| is_morse && end.size == taper.size)
    }

    /// How far the shank goes on beyond the gauge plane, towards the shoulder.
    pub fn past_gauge(&self) -> Option<Length> {
        TAPERS
            .iter()
            .find(|taper| taper.series == TaperSeries::Morse && taper.size == self.size)?
            .past_gauge
    }
}

/// A row, in millimetres.
const fn end(
    size: &'static str,
    largest: f64,
    gauge_to_tang_end: f64,
    tang_length: f64,
    tang_thickness: f64,
    tang_diameter: f64,
) -> MorseEnd {
    MorseEnd {
        size,
        largest_diameter: Length::mm(largest),
        gauge_to_tang_end: Length::mm(gauge_to_tang_end),
        tang_length: Length::mm(tang_length),
        tang_thickness: Length::mm(tang_thickness),
        tang_diameter: Length::mm(tang_diameter),
    }
}

/// The sizes of ISO 296 that have a tang.
#[rustfmt::skip]
pub static MORSE_ENDS: &[MorseEnd] = &[
    //  size largest  to end  tang: long  thick  diameter
    end("0",  9.2,    56.5,   10.5,        3.9,   6.0),
    end("1", 12.2,    62.0,   13.5,        5.2,   8.7),
    end("2", 18.0,    75.0,   16.0,        6.3,  13.5),
    end("3", 24.1,    94.0,   20.0,        7.9,  18.5),
    end("4", 31.6,   117.5,   24.0,       11.9,  24.5),
    end("5", 44.7,   149.5,   29.0,       15.9,  35.7),
    end("6", 63.8,   210.0,   40.0,       19.0,  51.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    /// Half the last printed digit of the largest diameter, and the printed diameter's own rounding up.
    const PRINTED: f64 = 0.1;

    #[test]
    fn the_cone_reaches_the_largest_diameter_past_the_gauge_plane() {
        for end in MORSE_ENDS {
            let size = TaperSize::find(TaperSeries::Morse, end.size).unwrap();
            assert_eq!(MorseEnd::of(size), Some(end));
            let taper = size.get().unwrap();
            let largest = taper.large_diameter + end.past_gauge().unwrap() * taper.ratio;
            let difference = (end.largest_diameter - largest).abs().to_mm();
            assert!(difference <= PRINTED, "{}: {difference} mm", end.size);
        }
    }

    #[test]
    fn a_tang_is_thinner_than_its_diameter_and_goes_through_the_small_end() {
        for pair in MORSE_ENDS.windows(2) {
            assert!(pair[0].tang_thickness < pair[1].tang_thickness);
            assert!(pair[0].gauge_to_tang_end < pair[1].gauge_to_tang_end);
        }
        for end in MORSE_ENDS {
            let taper = TaperSize::find(TaperSeries::Morse, end.size)
                .and_then(TaperSize::get)
                .unwrap();
            assert!(end.tang_thickness < end.tang_diameter);
            assert!(end.tang_diameter < taper.small_diameter);
            assert!(end.gauge_to_tang_end > taper.length);
        }
    }

    #[test]
    fn other_series_and_sizes_have_no_tang_here() {
        for code in ["morse-4.5", "morse-7", "jarno-3", "jacobs-3"] {
            assert!(MorseEnd::of(TaperSize::from_code(code).unwrap()).is_none());
        }
    }
}
