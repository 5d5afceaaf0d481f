//! Rockwell C, Vickers, Brinell and tensile strength of steel, each from any other, by either of two published tables.
//!
//! * Source: ISO 18265, table A.1 (non-alloy and low-alloy steel and steel castings), every row of 80 to 940 HV; ASTM
//!   E140, table 1 (non-austenitic steel), with the tensile strengths of SAE J417, whose columns stand beside
//!   [`other_scales`](super::other_scales).
//! * Units: HV, HBW (10 mm ball, 3000 kgf), HRC, megapascals. Straight lines between rows.
//! * Left out: Rockwell A and B; other materials. Nothing is carried on past the ends: a steel softer than 20 HRC
//!   (20.3 in ISO) has no Rockwell C here, but from 80 HV a Brinell hardness and a strength.
//! * Where they disagree: at equal HRC at most 2 HV, up to 8 HBW (57 HRC), 40 to 120 megapascals from 45 HRC up and up
//!   to 35 the other way near 35 HRC. Use one at a time. A sheet of DIN 50150 prints 20.3 HRC at 245 HV and 292 for 295
//!   HV, which are misprints; charts from other fits lie about 12 HV off at 20 HRC.
//! * Checked: ISO against printed copies by two sources up to 700 HV, by one above; E140 by two sources; J417 from 34
//!   HRC up by two, below from memory.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use super::hardness::{BRINELL, FIRST_ROW, J417, J417_CONFIRMED_FROM, VICKERS};
use crate::quantity::{Hardness, Stress};

/// The published table by which one scale of hardness is turned into another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HardnessBasis {
    /// ASTM E140, table 1: 20 to 68 HRC. Strengths are those of SAE J417, up to 59 HRC.
    E140,
    /// ISO 18265, table A.1: 80 to 940 HV, Rockwell C from 20.3. Strengths up to 650 HV.
    Iso18265,
}

/// One hardness on every scale that its table gives for it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HardnessScales {
    /// Vickers, HV: a number of its scale.
    pub vickers: f64,
    /// Brinell with a hard-metal ball, HBW: a number of its scale; `None` above 739 HBW (E140) or 618 (ISO).
    pub brinell: Option<f64>,
    /// Rockwell C; `None` for a steel too soft for it.
    pub rockwell: Option<Hardness>,
    /// Tensile strength; `None` above 59 HRC (E140) or 650 HV (ISO).
    pub tensile_strength: Option<Stress>,
    /// How far the hardnesses were checked.
    pub confirmed: Confirmed,
    /// How far the strength was checked, where there is one.
    pub confirmed_strength: Confirmed,
}

impl HardnessBasis {
    /// Both, the one to use first at the head: it has the soft steels too.
    pub const ALL: [Self; 2] = [Self::Iso18265, Self::E140];

    /// All scales at a Rockwell hardness; `None` outside 20 to 68 HRC (20.3 to 68 by ISO).
    ///
    /// # Accuracy
    /// Straight lines between the rows. What the tables themselves are off on a single steel they do not say.
    /// # Source
    /// The head of this file.
    /// # Example
    /// ```
    /// use skimwright::quantity::Hardness;
    /// use skimwright::tables::HardnessBasis;
    /// let scales = HardnessBasis::E140.from_rockwell(Hardness::hrc(45.0)).unwrap();
    /// assert_eq!((scales.vickers, scales.brinell), (446.0, Some(421.0)));
    /// ```
    pub fn from_rockwell(self, hardness: Hardness) -> Option<HardnessScales> {
        self.find(hardness.to_hrc(), |row| row.rockwell.map(Hardness::to_hrc))
    }

    /// All scales at a Vickers hardness; `None` outside 238 to 940 HV (80 to 940 by ISO).
    ///
    /// # Accuracy
    /// As [`from_rockwell`](Self::from_rockwell).
    /// # Source
    /// The head of this file.
    /// # Example
    /// ```
    /// use skimwright::quantity::Stress;
    /// use skimwright::tables::HardnessBasis;
    /// let soft = HardnessBasis::Iso18265.from_vickers(150.0).unwrap();
    /// assert_eq!((soft.brinell, soft.rockwell), (Some(143.0), None));
    /// assert_eq!(soft.tensile_strength, Some(Stress::mpa(480.0)));
    /// ```
    pub fn from_vickers(self, vickers: f64) -> Option<HardnessScales> {
        self.find(vickers, |row| Some(row.vickers))
    }

    /// All scales at a Brinell hardness; `None` outside 226 to 739 HBW (76 to 618 by ISO).
    ///
    /// # Accuracy
    /// As [`from_rockwell`](Self::from_rockwell).
    /// # Source
    /// The head of this file.
    pub fn from_brinell(self, brinell: f64) -> Option<HardnessScales> {
        self.find(brinell, |row| row.brinell)
    }

    /// The point on the straight line between the two rows about a value of one column.
    fn find(
        self,
        value: f64,
        column: impl Fn(&HardnessScales) -> Option<f64>,
    ) -> Option<HardnessScales> {
        let mut rows = (0..).map_while(|index| self.row(index));
        let mut lower = rows.next()?;
        for upper in rows {
            if let (Some(least), Some(most)) = (column(&lower), column(&upper))
                && least <= value
                && value <= most
            {
                return Some(lower.towards(&upper, (value - least) / (most - least)));
            }
            lower = upper;
        }
        None
    }

    fn row(self, index: usize) -> Option<HardnessScales> {
        match self {
            Self::E140 => {
                let brinell = BRINELL.get(index).copied().map(f64::from);
                let strength = J417.get(index).copied().map(f64::from);
                let degrees = f64::from(FIRST_ROW) + f64::from(u8::try_from(index).ok()?);
                let rockwell = Hardness::hrc(degrees);
                Some(HardnessScales {
                    vickers: f64::from(*VICKERS.get(index)?),
                    brinell,
                    rockwell: Some(rockwell),
                    tensile_strength: strength.map(Stress::mpa),
                    confirmed: TwoSources,
                    confirmed_strength: if rockwell < J417_CONFIRMED_FROM {
                        Memory
                    } else {
                        TwoSources
                    },
                })
            }
            Self::Iso18265 => {
                let &(vickers, brinell, rockwell, strength) = ISO_18265.get(index)?;
                Some(HardnessScales {
                    vickers,
                    brinell,
                    rockwell: rockwell.map(Hardness::hrc),
                    tensile_strength: strength.map(Stress::mpa),
                    confirmed: if vickers <= 700.0 {
                        TwoSources
                    } else {
                        OneSource
                    },
                    confirmed_strength: TwoSources,
                })
            }
        }
    }
}

impl HardnessScales {
    /// The point a share of the way to the next row; a column counts where both rows have it. At a row itself the row
    /// stands, with all that it has.
    fn towards(self, upper: &Self, share: f64) -> Self {
        if share <= 0.0 {
            return self;
        }
        if share >= 1.0 {
            return *upper;
        }
        let mix = |lower: f64, upper: f64| lower + (upper - lower) * share;
        let both = |lower: Option<f64>, upper: Option<f64>| Some(mix(lower?, upper?));
        Self {
            vickers: mix(self.vickers, upper.vickers),
            brinell: both(self.brinell, upper.brinell),
            rockwell: both(
                self.rockwell.map(Hardness::to_hrc),
                upper.rockwell.map(Hardness::to_hrc),
            )
            .map(Hardness::hrc),
            tensile_strength: both(
                self.tensile_strength.map(Stress::to_mpa),
                upper.tensile_strength.map(Stress::to_mpa),
            )
            .map(Stress::mpa),
            confirmed: self.confirmed.weaker(upper.confirmed),
            confirmed_strength: self.confirmed_strength.weaker(upper.confirmed_strength),
        }
    }
}

/// The Rockwell hardness of a steel with this Vickers hardness; `None` below 20 HRC (20.3 by ISO) and above 940 HV.
///
/// # Accuracy
/// Straight lines between the rows; the two bases lie at most 2 HV apart.
/// # Source
/// The head of this file.
/// # Example
/// ```
/// use skimwright::quantity::Hardness;
/// use skimwright::tables::{HardnessBasis, rockwell_from_vickers};
/// assert_eq!(rockwell_from_vickers(600.0, HardnessBasis::Iso18265), Some(Hardness::hrc(55.2)));
/// assert_eq!(rockwell_from_vickers(200.0, HardnessBasis::Iso18265), None);
/// ```
pub fn rockwell_from_vickers(vickers: f64, basis: HardnessBasis) -> Option<Hardness> {
    basis.from_vickers(vickers)?.rockwell
}

/// The Rockwell hardness of a steel with this Brinell hardness; `None` below 20 HRC (20.3 by ISO), above 739 HBW (618
/// by ISO).
///
/// # Accuracy
/// Straight lines between the rows; the two bases lie up to 8 HBW apart. From 59 HRC up Brinell is outside its usual
/// range.
/// # Source
/// The head of this file.
/// # Example
/// ```
/// use skimwright::quantity::Hardness;
/// use skimwright::tables::{HardnessBasis, rockwell_from_brinell};
/// assert_eq!(rockwell_from_brinell(301.0, HardnessBasis::E140), Some(Hardness::hrc(32.0)));
/// ```
pub fn rockwell_from_brinell(brinell: f64, basis: HardnessBasis) -> Option<Hardness> {
    basis.from_brinell(brinell)?.rockwell
}

/// HV, HBW, HRC, tensile strength in megapascals.
type PrintedRow = (f64, Option<f64>, Option<f64>, Option<f64>);

/// Every row.
#[rustfmt::skip]
static ISO_18265: &[PrintedRow] = &[
    ( 80.0, Some(76.0),  None,       Some(255.0)),
    ( 85.0, Some(80.7),  None,       Some(270.0)),
    ( 90.0, Some(85.5),  None,       Some(285.0)),
    ( 95.0, Some(90.2),  None,       Some(305.0)),
    (100.0, Some(95.0),  None,       Some(320.0)),
    (105.0, Some(99.8),  None,       Some(335.0)),
    (110.0, Some(105.0), None,       Some(350.0)),
    (115.0, Some(109.0), None,       Some(370.0)),
    (120.0, Some(114.0), None,       Some(385.0)),
    (125.0, Some(119.0), None,       Some(400.0)),
    (130.0, Some(124.0), None,       Some(415.0)),
    (135.0, Some(128.0), None,       Some(430.0)),
    (140.0, Some(133.0), None,       Some(450.0)),
    (145.0, Some(138.0), None,       Some(465.0)),
    (150.0, Some(143.0), None,       Some(480.0)),
    (155.0, Some(147.0), None,       Some(495.0)),
    (160.0, Some(152.0), None,       Some(510.0)),
    (165.0, Some(156.0), None,       Some(530.0)),
    (170.0, Some(162.0), None,       Some(545.0)),
    (175.0, Some(166.0), None,       Some(560.0)),
    (180.0, Some(171.0), None,       Some(575.0)),
    (185.0, Some(176.0), None,       Some(595.0)),
    (190.0, Some(181.0), None,       Some(610.0)),
    (195.0, Some(185.0), None,       Some(625.0)),
    (200.0, Some(190.0), None,       Some(640.0)),
    (205.0, Some(195.0), None,       Some(660.0)),
    (210.0, Some(199.0), None,       Some(675.0)),
    (215.0, Some(204.0), None,       Some(690.0)),
    (220.0, Some(209.0), None,       Some(705.0)),
    (225.0, Some(214.0), None,       Some(720.0)),
    (230.0, Some(219.0), None,       Some(740.0)),
    (235.0, Some(223.0), None,       Some(755.0)),
    (240.0, Some(228.0), Some(20.3), Some(770.0)),
    (245.0, Some(233.0), Some(21.3), Some(785.0)),
    (250.0, Some(238.0), Some(22.2), Some(800.0)),
    (255.0, Some(242.0), Some(23.1), Some(820.0)),
    (260.0, Some(247.0), Some(24.0), Some(835.0)),
    (265.0, Some(252.0), Some(24.8), Some(850.0)),
    (270.0, Some(257.0), Some(25.6), Some(865.0)),
    (275.0, Some(261.0), Some(26.4), Some(880.0)),
    (280.0, Some(266.0), Some(27.1), Some(900.0)),
    (285.0, Some(271.0), Some(27.8), Some(915.0)),
    (290.0, Some(276.0), Some(28.5), Some(930.0)),
    (295.0, Some(280.0), Some(29.2), Some(950.0)),
    (300.0, Some(285.0), Some(29.8), Some(965.0)),
    (310.0, Some(295.0), Some(31.0), Some(995.0)),
    (320.0, Some(304.0), Some(32.2), Some(1030.0)),
    (330.0, Some(314.0), Some(33.3), Some(1060.0)),
    (340.0, Some(323.0), Some(34.4), Some(1095.0)),
    (350.0, Some(333.0), Some(35.5), Some(1125.0)),
    (360.0, Some(342.0), Some(36.6), Some(1155.0)),
    (370.0, Some(352.0), Some(37.7), Some(1190.0)),
    (380.0, Some(361.0), Some(38.8), Some(1220.0)),
    (390.0, Some(371.0), Some(39.8), Some(1255.0)),
    (400.0, Some(380.0), Some(40.8), Some(1290.0)),
    (410.0, Some(390.0), Some(41.8), Some(1320.0)),
    (420.0, Some(399.0), Some(42.7), Some(1350.0)),
    (430.0, Some(409.0), Some(43.6), Some(1385.0)),
    (440.0, Some(418.0), Some(44.5), Some(1420.0)),
    (450.0, Some(428.0), Some(45.3), Some(1455.0)),
    (460.0, Some(437.0), Some(46.1), Some(1485.0)),
    (470.0, Some(447.0), Some(46.9), Some(1520.0)),
    (480.0, Some(456.0), Some(47.7), Some(1555.0)),
    (490.0, Some(466.0), Some(48.4), Some(1595.0)),
    (500.0, Some(475.0), Some(49.1), Some(1630.0)),
    (510.0, Some(485.0), Some(49.8), Some(1665.0)),
    (520.0, Some(494.0), Some(50.5), Some(1700.0)),
    (530.0, Some(504.0), Some(51.1), Some(1740.0)),
    (540.0, Some(513.0), Some(51.7), Some(1775.0)),
    (550.0, Some(523.0), Some(52.3), Some(1810.0)),
    (560.0, Some(532.0), Some(53.0), Some(1845.0)),
    (570.0, Some(542.0), Some(53.6), Some(1880.0)),
    (580.0, Some(551.0), Some(54.1), Some(1920.0)),
    (590.0, Some(561.0), Some(54.7), Some(1955.0)),
    (600.0, Some(570.0), Some(55.2), Some(1995.0)),
    (610.0, Some(580.0), Some(55.7), Some(2030.0)),
    (620.0, Some(589.0), Some(56.3), Some(2070.0)),
    (630.0, Some(599.0), Some(56.8), Some(2105.0)),
    (640.0, Some(608.0), Some(57.3), Some(2145.0)),
    (650.0, Some(618.0), Some(57.8), Some(2180.0)),
    (660.0, None,        Some(58.3), None),
    (670.0, None,        Some(58.8), None),
    (680.0, None,        Some(59.2), None),
    (690.0, None,        Some(59.7), None),
    (700.0, None,        Some(60.1), None),
    (720.0, None,        Some(61.0), None),
    (740.0, None,        Some(61.8), None),
    (760.0, None,        Some(62.5), None),
    (780.0, None,        Some(63.3), None),
    (800.0, None,        Some(64.0), None),
    (820.0, None,        Some(64.7), None),
    (840.0, None,        Some(65.3), None),
    (860.0, None,        Some(65.9), None),
    (880.0, None,        Some(66.4), None),
    (900.0, None,        Some(67.0), None),
    (920.0, None,        Some(67.5), None),
    (940.0, None,        Some(68.0), None),
];
