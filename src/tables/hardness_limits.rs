//! How hard a steel each kind of tool turns, and how fast between the soft groups and the hardened ones.
//!
//! * Source: The Ferrous Metals Data Book, chapter 9, for high-speed steel and coated carbide up to 425 HB; a note on boron
//!   nitride inserts, that they wear and stick on soft steel; papers on turning AISI 4340 of 42 and 48 HRC and D2
//!   with coated carbide, and 52100 and D2 of 62 HRC with boron nitride; a trade white paper, that hard turning begins at 45
//!   HRC. The limits from 50 HRC up, those of ceramic, and the windows above 45 HRC are from memory.
//! * Units: HRC, metres per minute.
//! * Left out: interrupted cuts, which take a tougher grade and bring every limit down; grinding, which has none.
//! * Checked: one source or none, as said above.
//! * Licence: facts only.

use super::cutting_data::{Cell, SpeedWindow};
use super::{Confirmed, ToolKind};
use crate::quantity::Hardness;

/// Between which hardnesses of steel a tool works.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HardnessLimits {
    /// Softer than this it does not work at all; `None` where nothing is too soft.
    pub least: Option<Hardness>,
    /// From here up it works well; `None` where nothing is too soft.
    pub easy_from: Option<Hardness>,
    /// Up to here it works well.
    pub easy_to: Hardness,
    /// Up to here it works with care; harder than this it fails.
    pub most: Hardness,
}

/// The limit above which turned steel is ground instead, whatever the edge. From memory: an edge of boron nitride still
/// cuts there, but for a short life and with doubtful size.
pub const HARDEST_TURNED: Hardness = Hardness::hrc(65.0);

impl ToolKind {
    /// Between which hardnesses of steel the tool works; `None` for grinding, which has no limit.
    ///
    /// For high-speed steel the range of care is that of cobalt grades; for carbide that of light cuts.
    ///
    /// # Accuracy
    /// Two or three HRC either way, by grade and set-up.
    /// # Source
    /// The head of this file.
    /// # Example
    /// ```
    /// use skimwright::quantity::Hardness;
    /// use skimwright::tables::ToolKind;
    /// let coated = ToolKind::IndexableCarbide.hardness_limits().unwrap();
    /// assert_eq!((coated.easy_to, coated.most), (Hardness::hrc(50.0), Hardness::hrc(55.0)));
    /// ```
    pub const fn hardness_limits(self) -> Option<HardnessLimits> {
        Some(match self {
            Self::HighSpeedSteel => up_to(32.0, 45.0),
            Self::BrazedCarbide | Self::IndexableFlat => up_to(45.0, 50.0),
            Self::IndexableCarbide => up_to(50.0, 55.0),
            Self::CubicBoronNitride => from_40(68.0),
            Self::Ceramic => from_40(65.0),
            Self::Grinding => return None,
        })
    }
}

const fn up_to(easy: f64, most: f64) -> HardnessLimits {
    HardnessLimits {
        least: None,
        easy_from: None,
        easy_to: Hardness::hrc(easy),
        most: Hardness::hrc(most),
    }
}

/// From 40 HRC with care and from 45 well, up to a limit.
const fn from_40(most: f64) -> HardnessLimits {
    HardnessLimits {
        least: Some(Hardness::hrc(40.0)),
        easy_from: Some(Hardness::hrc(45.0)),
        easy_to: Hardness::hrc(most),
        most: Hardness::hrc(most),
    }
}

/// The hardness up to which a row holds, and the windows of high-speed steel, uncoated and coated carbide.
struct Row {
    up_to: Hardness,
    windows: [Option<Cell>; 3],
}

/// Steel of any family, above the hardness that the soft groups end at.
#[rustfmt::skip]
static HARD_STEEL: [Row; 3] = [
    Row { up_to: Hardness::hrc(40.0), windows: [Cell::cobalt(15, 25), Cell::usual(40, 90), Cell::book(110, 200)] }, // 300 to 375 HB
    Row { up_to: BETWEEN_9_AND_38,    windows: [Cell::cobalt(11, 21), Cell::usual(30, 55), Cell::book(70, 150)] },  // 375 to 425 HB
    Row { up_to: Hardness::hrc(50.0), windows: [None,                 Cell::usual(20, 40), Cell::usual(40, 120)] }, // papers went to 234 m/min at 50 HRC
];

/// The hardest steel of the class between groups 9 and 38.
pub(super) const BETWEEN_9_AND_38: Hardness = Hardness::hrc(45.0);

/// How far the limits were checked: the weakest of them.
pub const CONFIRMED_HARDNESS_LIMITS: Confirmed = Confirmed::Memory;

/// The window of a tool on steel of more than 32 HRC and up to 50; `None` where the table has none.
pub(crate) fn hard_steel_window(hardness: Hardness, tool: ToolKind) -> Option<SpeedWindow> {
    let row = HARD_STEEL.iter().find(|row| hardness <= row.up_to)?;
    let [high_speed, uncoated, coated] = row.windows;
    match tool {
        ToolKind::HighSpeedSteel => high_speed,
        ToolKind::BrazedCarbide | ToolKind::IndexableFlat => uncoated,
        ToolKind::IndexableCarbide => coated,
        ToolKind::CubicBoronNitride | ToolKind::Ceramic | ToolKind::Grinding => None,
    }
    .map(Cell::window)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::{CuttingGroup, HardnessBasis};

    #[test]
    fn limits_are_in_order_and_better_edges_reach_further() {
        for limits in ToolKind::ALL
            .map(ToolKind::hardness_limits)
            .into_iter()
            .flatten()
        {
            assert_eq!(limits.least.is_some(), limits.easy_from.is_some());
            if let (Some(least), Some(easy)) = (limits.least, limits.easy_from) {
                assert!(least < easy && easy < limits.easy_to);
            }
            assert!(limits.easy_to <= limits.most);
        }
        let most = |tool: ToolKind| tool.hardness_limits().unwrap().most;
        assert!(most(ToolKind::HighSpeedSteel) < most(ToolKind::BrazedCarbide));
        assert!(most(ToolKind::BrazedCarbide) < most(ToolKind::IndexableCarbide));
        assert!(most(ToolKind::IndexableCarbide) < most(ToolKind::Ceramic));
        assert!(
            most(ToolKind::Ceramic) <= HARDEST_TURNED
                && HARDEST_TURNED < most(ToolKind::CubicBoronNitride)
        );
    }

    #[test]
    fn harder_steel_is_slower_row_by_row() {
        for tool in [
            ToolKind::HighSpeedSteel,
            ToolKind::BrazedCarbide,
            ToolKind::IndexableCarbide,
        ] {
            let windows: Vec<_> = [38.0, 43.0, 48.0]
                .into_iter()
                .filter_map(|hrc| hard_steel_window(Hardness::hrc(hrc), tool))
                .collect();
            assert!(
                windows
                    .windows(2)
                    .all(|pair| pair[1].low < pair[0].low && pair[1].high < pair[0].high)
            );
            assert!(windows.iter().all(|window| window.low < window.high));
            assert_eq!(hard_steel_window(Hardness::hrc(50.1), tool), None);
        }
    }

    /// The data book's rows are by Brinell: 300, 375 and 425 HB.
    #[test]
    fn the_bounds_are_those_of_the_data_book() {
        for (brinell, hrc) in [(300.0, 32.0), (375.0, 40.0), (425.0, 45.0)] {
            for basis in HardnessBasis::ALL {
                let got = basis
                    .from_brinell(brinell)
                    .unwrap()
                    .rockwell
                    .unwrap()
                    .to_hrc();
                assert!((got - hrc).abs() < 0.6, "{brinell} HBW: {got}");
            }
        }
    }

    /// Rows for single groups of the same hardness lie within the row for all steels.
    #[test]
    fn the_groups_agree() {
        for (group, hrc) in [("p-9", 37.5), ("p-9x", 42.7)] {
            let group = CuttingGroup::from_code(group).unwrap();
            for tool in [
                ToolKind::HighSpeedSteel,
                ToolKind::BrazedCarbide,
                ToolKind::IndexableCarbide,
            ] {
                let one = group.window(tool).unwrap();
                let all = hard_steel_window(Hardness::hrc(hrc), tool).unwrap();
                assert!(
                    all.low <= one.low && one.high <= all.high,
                    "{group:?}, {tool:?}"
                );
            }
        }
    }
}
