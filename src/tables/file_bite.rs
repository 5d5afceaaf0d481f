//! What a hand file tells of hardness where there is no tester.
//!
//! * Source: common practice, no source. A new file is about 62 to 65 HRC; it cuts freely up to 30 or 35 HRC, bites with
//!   effort about 40 to 50, only scratches from 50 to 60, and skates from 60 up.
//! * Units: HRC.
//! * What is what: practice leaves a gap between cutting and biting; here a steel of 35 to 40 HRC counts as biting.
//! * Left out: sets of test files of known hardness, which tell it within some 5 HRC; worn files, which skate sooner.
//! * Licence: facts only.

use super::{Confirmed, Spread};
use crate::quantity::Hardness;

/// How a new smooth hand file takes to a steel part. The numbers never change; a new one goes to the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FileBite {
    /// It cuts freely, with chips at every stroke.
    Cuts = 0,
    /// It takes hold and removes metal, but only under hard pressure.
    Bites = 1,
    /// It leaves marks and hardly removes anything.
    Scratches = 2,
    /// It slides off like on glass, and its teeth suffer.
    Skates = 3,
}

/// What a try with the file says of a hardness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FileHardness {
    /// At most so hard: how soft it is the file does not tell.
    UpTo(Hardness),
    /// Between the least and the greatest.
    Within(Spread<Hardness>),
}

impl FileBite {
    /// Every way, the softest steel first.
    pub const ALL: [Self; 4] = [Self::Cuts, Self::Bites, Self::Scratches, Self::Skates];

    /// How far the figures were checked.
    pub const CONFIRMED: Confirmed = Confirmed::Memory;

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Cuts => "cuts",
            Self::Bites => "bites",
            Self::Scratches => "scratches",
            Self::Skates => "skates",
        }
    }

    /// The way with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|bite| bite.code() == code)
    }

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The way with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }

    /// The hardness that it points to.
    ///
    /// # Accuracy
    /// Rough: hands and files differ, and a thin skin (scale, a decarburised layer, a plated part) deceives the file. Try
    /// it on bare metal.
    /// # Source
    /// Common practice, no source. The top of the last range is the top of the scale's tables.
    /// # Example
    /// ```
    /// use skimwright::quantity::Hardness;
    /// use skimwright::tables::{FileBite, FileHardness};
    /// assert_eq!(FileBite::Cuts.hardness(), FileHardness::UpTo(Hardness::hrc(35.0)));
    /// ```
    pub const fn hardness(self) -> FileHardness {
        match self {
            Self::Cuts => FileHardness::UpTo(Hardness::hrc(35.0)),
            Self::Bites => within(35.0, 45.0, 50.0),
            Self::Scratches => within(50.0, 55.0, 60.0),
            Self::Skates => within(60.0, 62.0, 68.0),
        }
    }
}

const fn within(low: f64, typical: f64, high: f64) -> FileHardness {
    FileHardness::Within(Spread {
        low: Hardness::hrc(low),
        typical: Hardness::hrc(typical),
        high: Hardness::hrc(high),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ranges_follow_each_other_without_a_gap() {
        let mut end = None;
        for bite in FileBite::ALL {
            match bite.hardness() {
                FileHardness::UpTo(most) => {
                    assert_eq!((bite, end), (FileBite::Cuts, None));
                    end = Some(most);
                }
                FileHardness::Within(range) => {
                    assert_eq!(end, Some(range.low), "{bite:?}");
                    assert!(range.low < range.typical && range.typical < range.high);
                    end = Some(range.high);
                }
            }
        }
    }

    /// A file of 62 to 65 HRC does not skate on a steel that is clearly softer than itself.
    #[test]
    fn it_skates_only_on_what_is_about_as_hard_as_a_file() {
        let FileHardness::Within(skates) = FileBite::Skates.hardness() else {
            panic!("a range");
        };
        let file = Hardness::hrc(62.0);
        assert!(file - skates.low <= Hardness::hrc(2.0) && file < skates.high);
    }

    #[test]
    fn codes_and_numbers_lead_back() {
        for (index, bite) in (0u8..).zip(FileBite::ALL) {
            assert_eq!(bite.index(), index);
            assert_eq!(FileBite::from_index(index), Some(bite));
            assert_eq!(FileBite::from_code(bite.code()), Some(bite));
        }
        assert_eq!(FileBite::from_index(4), None);
        assert_eq!(FileBite::from_code("Cuts"), None);
    }
}
