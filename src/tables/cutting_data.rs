//! Where to start: windows of cutting speed for longitudinal turning, by material and kind of tool.
//!
//! * Source: The Ferrous Metals Data Book, chapter 9, turning data, for high-speed steel and coated carbide on steels
//!   (converted from feet per minute; the low end for 3.8 mm deep and 0.38 mm a revolution, the high end for 1 mm and
//!   0.18 mm); trade articles and the paper "On machining of hardened AISI D2 steel with PCBN tools" for boron
//!   nitride; the rest is common practice.
//! * Grouping: the windows themselves stand in the table of material groups of VDI 3323. Each class takes that of its
//!   usual group; the two that do not are named in [`cutting_speed`].
//! * Units: metres per minute.
//! * Left out: milling, drilling, parting; diamond; the effect of coolant, overhang and interrupted cuts.
//! * Checked: one source or none, as each cell is marked. All windows are a start, not a promise.
//! * Licence: facts only.

use super::{
    Confirmed::{self, Memory, OneSource},
    ToolKind, WorkMaterial,
    hardness_limits::{BETWEEN_9_AND_38, hard_steel_window},
};
use crate::quantity::Speed;
use Condition::{CobaltGrade, LightCutsTo55Hrc};

/// What must also hold for a window of speed to be true.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Condition {
    /// The high-speed steel must be a cobalt grade such as T15 or M42.
    CobaltGrade,
    /// Only up to 55 HRC, and only finishing cuts of 0.3 mm or less: an emergency.
    LightCutsTo55Hrc,
}

/// From where to where the cutting speed may be set at the start.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpeedWindow {
    /// For deep cuts, long overhang or a worn machine.
    pub low: Speed,
    /// For light cuts with a rigid set-up.
    pub high: Speed,
    /// What else must hold, if anything.
    pub condition: Option<Condition>,
    /// How far the figures were checked.
    pub confirmed: Confirmed,
    /// Where they are from.
    pub source: &'static str,
}

/// The window of cutting speed for a material and a kind of tool.
/// `None`: this tool does not cut this material, or spoils itself on it so fast that no figure is worth giving.
///
/// # Accuracy
/// A starting range. Grades, coatings and set-ups move it by a third either way.
/// # Source
/// The head of this file; each window names its own.
/// # Example
/// ```
/// use skimwright::quantity::Speed;
/// use skimwright::tables::{ToolKind, WorkMaterial, cutting_speed};
/// let mild = cutting_speed(WorkMaterial::LowCarbonSteel, ToolKind::HighSpeedSteel).unwrap();
/// assert_eq!((mild.low, mild.high), (Speed::m_per_min(38.0), Speed::m_per_min(46.0)));
/// assert!(cutting_speed(WorkMaterial::HardenedSteel, ToolKind::HighSpeedSteel).is_none());
/// ```
pub fn cutting_speed(material: WorkMaterial, tool: ToolKind) -> Option<SpeedWindow> {
    use ToolKind as T;
    match (material, tool) {
        // The class goes on to 45 HRC, harder than group 9x, and its windows go further down.
        (
            WorkMaterial::AlloySteelHard,
            T::HighSpeedSteel | T::BrazedCarbide | T::IndexableFlat | T::IndexableCarbide,
        ) => hard_steel_window(BETWEEN_9_AND_38, tool),
        // Cold-work steel D2, which like high-speed steel holds hard carbides, was cut slower than group 39.
        (WorkMaterial::HighSpeedSteelHard, T::CubicBoronNitride) => {
            Some(Cell::at(70, 120, Origin::Paper).window())
        }
        _ => material.usual_cutting_group().window(tool),
    }
}

/// The surface speed of work that a spindle on the tool post grinds.
pub(super) const fn grinding_work_speed() -> SpeedWindow {
    Cell::at(10, 20, Origin::WorkSpeed).window()
}

/// A cell of a table of speeds: whole metres per minute, and where they are from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cell {
    low: u16,
    high: u16,
    origin: Origin,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Origin {
    Book,
    BookCobalt,
    BookProxy,
    Trade,
    Paper,
    Usual,
    Finish,
    WorkSpeed,
}

impl Cell {
    const fn at(low: u16, high: u16, origin: Origin) -> Self {
        Self { low, high, origin }
    }

    /// The window that it stands for.
    pub(super) const fn window(self) -> SpeedWindow {
        let (condition, confirmed, source) = match self.origin {
            Origin::Book => (None, OneSource, DATA_BOOK),
            Origin::BookCobalt => (Some(CobaltGrade), OneSource, DATA_BOOK),
            Origin::BookProxy => (
                None,
                OneSource,
                "The Ferrous Metals Data Book, chapter 9, for medium-carbon steel of 225 to 275 HB",
            ),
            Origin::Trade => (
                None,
                OneSource,
                "within the range of trade articles on hard turning",
            ),
            Origin::Paper => (
                None,
                OneSource,
                "On machining of hardened AISI D2 steel with PCBN tools (62 HRC)",
            ),
            Origin::Usual => (None, Memory, "common practice, from memory"),
            Origin::Finish => (
                Some(LightCutsTo55Hrc),
                Memory,
                "common practice, from memory",
            ),
            Origin::WorkSpeed => (
                None,
                Memory,
                "surface speed of the work in grinding, common practice, from memory",
            ),
        };
        SpeedWindow {
            low: Speed::m_per_min(self.low as f64),
            high: Speed::m_per_min(self.high as f64),
            condition,
            confirmed,
            source,
        }
    }
}

#[expect(
    clippy::unnecessary_wraps,
    reason = "a cell of the table is a window or none"
)]
impl Cell {
    /// Of the data book.
    pub(super) const fn book(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::Book))
    }

    /// Of the data book, for a cobalt grade of high-speed steel.
    pub(super) const fn cobalt(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::BookCobalt))
    }

    /// Of the data book, from its row for a steel much like it.
    pub(super) const fn proxy(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::BookProxy))
    }

    /// Of trade articles.
    pub(super) const fn trade(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::Trade))
    }

    /// From memory.
    pub(super) const fn usual(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::Usual))
    }

    /// From memory, for finishing in an emergency.
    pub(super) const fn finish(low: u16, high: u16) -> Option<Self> {
        Some(Self::at(low, high, Origin::Finish))
    }
}

const DATA_BOOK: &str = "The Ferrous Metals Data Book, chapter 9, turning data";

#[cfg(test)]
mod tests {
    use super::*;
    use ToolKind::{BrazedCarbide, CubicBoronNitride, HighSpeedSteel, IndexableCarbide};

    #[test]
    fn every_material_has_something_that_turns_it() {
        for material in WorkMaterial::ALL {
            assert!(
                ToolKind::ALL
                    .iter()
                    .filter(|tool| **tool != ToolKind::Grinding)
                    .any(|tool| cutting_speed(material, *tool).is_some())
            );
        }
    }

    /// The windows as they were before the groups had a table of their own, so that no plan changes its speeds:
    /// high-speed steel, uncoated and coated carbide, boron nitride. Nought stands for none.
    #[test]
    #[rustfmt::skip]
    fn windows_are_as_they_were() {
        use WorkMaterial as M;
        for (material, windows) in [
            (M::LowCarbonSteel,       [(38, 46),  (110, 160), (190, 290),  (0, 0)]),
            (M::MediumCarbonSteel,    [(30, 40),  (100, 140), (160, 240),  (0, 0)]),
            (M::AlloySteelTempered,   [(21, 27),  (60, 95),   (135, 175),  (0, 0)]),
            (M::AlloySteelHard,       [(11, 21),  (30, 55),   (70, 150),   (0, 0)]),
            (M::ToolSteelAnnealed,    [(20, 28),  (60, 90),   (110, 160),  (0, 0)]),
            (M::HardenedSteel,        [(0, 0),    (0, 0),     (20, 50),    (90, 180)]),
            (M::CaseHardenedSteel,    [(0, 0),    (0, 0),     (0, 0),      (80, 150)]),
            (M::HighSpeedSteelHard,   [(0, 0),    (0, 0),     (0, 0),      (70, 120)]),
            (M::StainlessMartensitic, [(20, 28),  (70, 100),  (110, 170),  (0, 0)]),
            (M::StainlessAustenitic,  [(18, 28),  (60, 100),  (110, 180),  (0, 0)]),
            (M::GreyIron,             [(25, 40),  (70, 110),  (150, 250),  (400, 1000)]),
            (M::DuctileIron,          [(15, 22),  (50, 90),   (110, 170),  (0, 0)]),
            (M::AluminiumAlloy,       [(80, 200), (250, 800), (300, 1200), (0, 0)]),
            (M::Brass,                [(60, 120), (200, 400), (200, 500),  (0, 0)]),
            (M::Bronze,               [(30, 70),  (120, 250), (150, 300),  (0, 0)]),
            (M::TitaniumAlloy,        [(10, 20),  (40, 60),   (40, 80),    (0, 0)]),
        ] {
            let tools = [HighSpeedSteel, BrazedCarbide, IndexableCarbide, CubicBoronNitride];
            for (tool, (low, high)) in tools.into_iter().zip(windows) {
                let wanted = (0 < high).then(|| (f64::from(low), f64::from(high)));
                let got = cutting_speed(material, tool);
                assert_eq!(got.map(|it| (it.low.to_m_per_min(), it.high.to_m_per_min())), wanted, "{material:?}, {tool:?}");
            }
        }
    }

    #[test]
    fn windows_open_upwards_and_better_tools_are_faster() {
        for material in WorkMaterial::ALL {
            let windows: Vec<_> = [HighSpeedSteel, BrazedCarbide, IndexableCarbide]
                .iter()
                .filter_map(|tool| cutting_speed(material, *tool))
                .collect();
            for window in &windows {
                assert!(Speed::ZERO < window.low && window.low < window.high);
            }
            for pair in windows.windows(2) {
                assert!(
                    pair[0].low <= pair[1].low && pair[0].high <= pair[1].high,
                    "{material:?}"
                );
            }
        }
    }

    /// The same tool goes slower, or gives up, as the steel gets harder.
    #[test]
    fn harder_steel_is_slower() {
        use WorkMaterial as M;
        let soft_to_hard = [
            M::LowCarbonSteel,
            M::MediumCarbonSteel,
            M::AlloySteelTempered,
            M::AlloySteelHard,
            M::HardenedSteel,
        ];
        let hard = [
            M::HardenedSteel,
            M::CaseHardenedSteel,
            M::HighSpeedSteelHard,
        ];
        for (tool, materials) in [
            (HighSpeedSteel, &soft_to_hard[..]),
            (BrazedCarbide, &soft_to_hard[..]),
            (IndexableCarbide, &soft_to_hard[..]),
            (CubicBoronNitride, &hard[..]),
        ] {
            for pair in materials.windows(2) {
                let softer = cutting_speed(pair[0], tool).unwrap();
                if let Some(harder) = cutting_speed(pair[1], tool) {
                    assert!(
                        harder.low < softer.low && harder.high < softer.high,
                        "{pair:?}"
                    );
                }
            }
        }
    }

    #[test]
    fn tools_that_fail_are_not_offered() {
        use WorkMaterial as M;
        for hard in [
            M::HardenedSteel,
            M::CaseHardenedSteel,
            M::HighSpeedSteelHard,
        ] {
            assert_eq!(cutting_speed(hard, HighSpeedSteel), None);
            assert_eq!(cutting_speed(hard, BrazedCarbide), None);
            assert!(cutting_speed(hard, CubicBoronNitride).is_some());
        }
        // Boron nitride sticks and wears on soft steel.
        assert_eq!(cutting_speed(M::LowCarbonSteel, CubicBoronNitride), None);
        let emergency = cutting_speed(M::HardenedSteel, IndexableCarbide).unwrap();
        assert_eq!(emergency.condition, Some(LightCutsTo55Hrc));
    }
}
