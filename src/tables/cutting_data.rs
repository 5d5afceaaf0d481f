//! Where to start: windows of cutting speed for longitudinal turning, by material and kind of tool.
//!
//! * Source: The Ferrous Metals Data Book, chapter 9, turning data, for high-speed steel and coated carbide on steels
//!   (converted from feet per minute; the low end for 3.8 mm deep and 0.38 mm a revolution, the high end for 1 mm and
//!   0.18 mm); trade articles and the paper "On machining of hardened AISI D2 steel with PCBN tools" for boron
//!   nitride; the rest is common practice.
//! * Grouping: the material groups of VDI 3323, of which each class takes the nearest one, named beside its row.
//! * Units: metres per minute.
//! * Left out: milling, drilling, parting; ceramics and diamond; the effect of coolant, overhang and interrupted cuts.
//! * Checked: one source or none, as each cell is marked. All windows are a start, not a promise.
//! * Licence: facts only.

use super::{
    Confirmed::{self, Memory, OneSource},
    WorkMaterial,
};
use crate::quantity::Speed;
use Condition::{CobaltGrade, LightCutsTo55Hrc};

/// What the cutting edge is made of. The numbers are stored in links and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ToolKind {
    /// High-speed steel, ground by hand or bought as a bit.
    HighSpeedSteel = 0,
    /// Uncoated carbide brazed to a shank.
    BrazedCarbide = 1,
    /// Coated carbide inserts.
    IndexableCarbide = 2,
    /// Inserts tipped with cubic boron nitride, for hard turning.
    CubicBoronNitride = 3,
}

impl ToolKind {
    /// Every kind, in the order of its numbers: a new one goes to the end.
    pub const ALL: [Self; 4] = [
        Self::HighSpeedSteel,
        Self::BrazedCarbide,
        Self::IndexableCarbide,
        Self::CubicBoronNitride,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::HighSpeedSteel => "high-speed-steel",
            Self::BrazedCarbide => "brazed-carbide",
            Self::IndexableCarbide => "indexable-carbide",
            Self::CubicBoronNitride => "cubic-boron-nitride",
        }
    }

    /// The kind with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|tool| tool.code() == code)
    }

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The kind with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }
}

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
    let row = ROWS.iter().find(|row| row.material == material)?;
    match tool {
        ToolKind::HighSpeedSteel => row.high_speed_steel,
        ToolKind::BrazedCarbide => row.brazed,
        ToolKind::IndexableCarbide => row.indexable,
        ToolKind::CubicBoronNitride => row.boron_nitride,
    }
}

struct Row {
    material: WorkMaterial,
    high_speed_steel: Option<SpeedWindow>,
    brazed: Option<SpeedWindow>,
    indexable: Option<SpeedWindow>,
    boron_nitride: Option<SpeedWindow>,
}

#[expect(
    clippy::unnecessary_wraps,
    reason = "a cell of the table is a window or none"
)]
const fn window(
    low: f64,
    high: f64,
    condition: Option<Condition>,
    confirmed: Confirmed,
    source: &'static str,
) -> Option<SpeedWindow> {
    Some(SpeedWindow {
        low: Speed::m_per_min(low),
        high: Speed::m_per_min(high),
        condition,
        confirmed,
        source,
    })
}

const DATA_BOOK: &str = "The Ferrous Metals Data Book, chapter 9, turning data";

const fn book(low: f64, high: f64) -> Option<SpeedWindow> {
    window(low, high, None, OneSource, DATA_BOOK)
}

const fn cobalt(low: f64, high: f64) -> Option<SpeedWindow> {
    window(low, high, Some(CobaltGrade), OneSource, DATA_BOOK)
}

const fn usual(low: f64, high: f64) -> Option<SpeedWindow> {
    window(low, high, None, Memory, "common practice, from memory")
}

const fn finish(low: f64, high: f64) -> Option<SpeedWindow> {
    window(
        low,
        high,
        Some(LightCutsTo55Hrc),
        Memory,
        "common practice, from memory",
    )
}

const fn trade(low: f64, high: f64) -> Option<SpeedWindow> {
    window(
        low,
        high,
        None,
        OneSource,
        "within the range of trade articles on hard turning",
    )
}

const fn paper(low: f64, high: f64) -> Option<SpeedWindow> {
    window(
        low,
        high,
        None,
        OneSource,
        "On machining of hardened AISI D2 steel with PCBN tools (62 HRC)",
    )
}

const fn row(
    material: WorkMaterial,
    high_speed_steel: Option<SpeedWindow>,
    brazed: Option<SpeedWindow>,
    indexable: Option<SpeedWindow>,
    boron_nitride: Option<SpeedWindow>,
) -> Row {
    Row {
        material,
        high_speed_steel,
        brazed,
        indexable,
        boron_nitride,
    }
}

#[rustfmt::skip]
static ROWS: &[Row] = {
    use WorkMaterial as M;
    &[
    //  material                  high-speed steel     brazed               indexable             boron nitride         nearest group
    row(M::LowCarbonSteel,        book(38.0, 46.0),    usual(110.0, 160.0), book(190.0, 290.0),   None),             // 1, annealed, 125 HB
    row(M::MediumCarbonSteel,     book(30.0, 40.0),    usual(100.0, 140.0), book(160.0, 240.0),   None),             // 2, annealed, 190 HB
    row(M::AlloySteelTempered,    cobalt(21.0, 27.0),  usual(60.0, 95.0),   book(135.0, 175.0),   None),             // 8, tempered, 300 HB; 275 HB would be faster
    row(M::AlloySteelHard,        cobalt(11.0, 21.0),  usual(30.0, 55.0),   book(70.0, 150.0),    None),             // none: 375–425 HB between 9 and 38; boron nitride is possible, without a figure
    row(M::ToolSteelAnnealed,     usual(20.0, 28.0),   usual(60.0, 90.0),   usual(110.0, 160.0),  None),             // 10, annealed, 200 HB
    row(M::HardenedSteel,         None,                None,                finish(20.0, 50.0),   trade(90.0, 180.0)),  // 38, 55 HRC
    row(M::CaseHardenedSteel,     None,                None,                None,                 trade(80.0, 150.0)),  // 39, 60 HRC, in the case
    row(M::HighSpeedSteelHard,    None,                None,                None,                 paper(70.0, 120.0)),  // 39 for lack of a better: D2 also holds hard carbides
    row(M::StainlessMartensitic,  usual(20.0, 28.0),   usual(70.0, 100.0),  usual(110.0, 170.0),  None),             // 13, tempered, 240 HB
    row(M::StainlessAustenitic,   usual(18.0, 28.0),   usual(60.0, 100.0),  usual(110.0, 180.0),  None),             // 14, 180 HB
    row(M::GreyIron,              usual(25.0, 40.0),   usual(70.0, 110.0),  usual(150.0, 250.0),  usual(400.0, 1000.0)), // 15, 180 HB
    row(M::DuctileIron,           usual(15.0, 22.0),   usual(50.0, 90.0),   usual(110.0, 170.0),  None),             // 18, pearlitic, 250 HB; ferritic is faster
    row(M::AluminiumAlloy,        usual(80.0, 200.0),  usual(250.0, 800.0), usual(300.0, 1200.0), None),             // 22, wrought, aged, 100 HB
    row(M::Brass,                 usual(60.0, 120.0),  usual(200.0, 400.0), usual(200.0, 500.0),  None),             // 26, free-cutting
    row(M::Bronze,                usual(30.0, 70.0),   usual(120.0, 250.0), usual(150.0, 300.0),  None),             // 28
    row(M::TitaniumAlloy,         usual(10.0, 20.0),   usual(40.0, 60.0),   usual(40.0, 80.0),    None),             // 37, aged
    ]
};

#[cfg(test)]
mod tests {
    use super::*;
    use ToolKind::{BrazedCarbide, CubicBoronNitride, HighSpeedSteel, IndexableCarbide};

    #[test]
    fn every_material_has_one_row_and_something_that_cuts_it() {
        assert_eq!(ROWS.len(), WorkMaterial::ALL.len());
        for material in WorkMaterial::ALL {
            assert_eq!(
                ROWS.iter().filter(|row| row.material == material).count(),
                1
            );
            assert!(
                ToolKind::ALL
                    .iter()
                    .any(|tool| cutting_speed(material, *tool).is_some())
            );
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

    #[test]
    fn codes_and_numbers_lead_back() {
        for (index, tool) in (0u8..).zip(ToolKind::ALL) {
            assert_eq!(tool.index(), index);
            assert_eq!(ToolKind::from_index(index), Some(tool));
            assert_eq!(ToolKind::from_code(tool.code()), Some(tool));
        }
        assert_eq!(ToolKind::from_index(4), None);
    }
}
