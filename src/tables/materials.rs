//! What turned parts are made of: densities of single materials, and the classes that the page offers.
//!
//! * Source: EN 10088-1, EN 1561 and EN 1563 (annexes with physical properties), handbook tables of steels, tool steels,
//!   aluminium, copper, titanium and nickel alloys.
//! * Units: kilograms per cubic metre at room temperature; least, typical, greatest value found in print or remembered.
//! * Left out: everything but the density; plastics, cemented carbide. Hardening takes away up to half a per cent of a
//!   steel's density, less than the spread between steels, and is not counted.
//! * Checked: the mark of each row is that of its typical density.
//! * Licence: facts only.

use super::Confirmed::{self, Memory, OneSource, TwoSources};
use crate::quantity::Density;

/// One material with its density.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MaterialDensity {
    /// What it is.
    pub name: &'static str,
    /// Grades that it stands for.
    pub example: &'static str,
    /// Its density.
    pub density: DensityRange,
}

/// A density and the spread of its published values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DensityRange {
    /// The least value.
    pub low: Density,
    /// The value to use.
    pub typical: Density,
    /// The greatest value.
    pub high: Density,
    /// How far the typical value was checked.
    pub confirmed: Confirmed,
    /// Where it is from.
    pub source: &'static str,
}

/// A class of work materials that are turned alike. The numbers are stored in links and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WorkMaterial {
    /// Steel under a quarter of a per cent of carbon, soft: mild steel, bright bar.
    LowCarbonSteel = 0,
    /// Steel with about 0.45 % of carbon, normalised or annealed.
    MediumCarbonSteel = 1,
    /// Chromium-molybdenum steel, quenched and tempered to about 30 HRC.
    AlloySteelTempered = 2,
    /// Alloy steel, quenched and tempered to 40–45 HRC.
    AlloySteelHard = 3,
    /// Tool steel as bought, annealed.
    ToolSteelAnnealed = 4,
    /// Tool or bearing steel, hardened right through to 50–62 HRC.
    HardenedSteel = 5,
    /// Low-carbon or alloy steel with a hard case of about 60 HRC on a softer core.
    CaseHardenedSteel = 6,
    /// High-speed steel at 62–66 HRC: drills, reamers, cutters.
    HighSpeedSteelHard = 7,
    /// Stainless steel that hardens, about 23 HRC.
    StainlessMartensitic = 8,
    /// Stainless steel that does not harden by heat, such as 304 and 316.
    StainlessAustenitic = 9,
    /// Cast iron with flake graphite.
    GreyIron = 10,
    /// Cast iron with round graphite.
    DuctileIron = 11,
    /// Wrought aluminium, aged.
    AluminiumAlloy = 12,
    /// Free-cutting brass.
    Brass = 13,
    /// Tin, phosphor or aluminium bronze.
    Bronze = 14,
    /// Titanium alloy of the 6 % aluminium, 4 % vanadium kind.
    TitaniumAlloy = 15,
}

impl WorkMaterial {
    /// Every class, in the order of its numbers: a new one goes to the end.
    pub const ALL: [Self; 16] = [
        Self::LowCarbonSteel,
        Self::MediumCarbonSteel,
        Self::AlloySteelTempered,
        Self::AlloySteelHard,
        Self::ToolSteelAnnealed,
        Self::HardenedSteel,
        Self::CaseHardenedSteel,
        Self::HighSpeedSteelHard,
        Self::StainlessMartensitic,
        Self::StainlessAustenitic,
        Self::GreyIron,
        Self::DuctileIron,
        Self::AluminiumAlloy,
        Self::Brass,
        Self::Bronze,
        Self::TitaniumAlloy,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::LowCarbonSteel => "low-carbon-steel",
            Self::MediumCarbonSteel => "medium-carbon-steel",
            Self::AlloySteelTempered => "alloy-steel-tempered",
            Self::AlloySteelHard => "alloy-steel-hard",
            Self::ToolSteelAnnealed => "tool-steel-annealed",
            Self::HardenedSteel => "hardened-steel",
            Self::CaseHardenedSteel => "case-hardened-steel",
            Self::HighSpeedSteelHard => "high-speed-steel-hard",
            Self::StainlessMartensitic => "stainless-martensitic",
            Self::StainlessAustenitic => "stainless-austenitic",
            Self::GreyIron => "grey-iron",
            Self::DuctileIron => "ductile-iron",
            Self::AluminiumAlloy => "aluminium-alloy",
            Self::Brass => "brass",
            Self::Bronze => "bronze",
            Self::TitaniumAlloy => "titanium-alloy",
        }
    }

    /// The class with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|material| material.code() == code)
    }

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The class with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }

    /// The density of the class: the typical value of its commonest material, and the spread over all that belong to it.
    ///
    /// # Accuracy
    /// As wide as the class: a fraction of a per cent for plain steels, much more for bronzes.
    /// # Source
    /// The rows of [`DENSITIES`]; the mark is the weakest of the rows that take part.
    /// # Example
    /// ```
    /// use skimwright::quantity::Density;
    /// use skimwright::tables::WorkMaterial;
    /// let steel = WorkMaterial::LowCarbonSteel.density();
    /// assert_eq!(steel.typical, Density::kg_per_m3(7850.0));
    /// ```
    pub fn density(self) -> DensityRange {
        let (commonest, others) = self.members();
        others
            .iter()
            .fold(commonest.density, |range, other| DensityRange {
                low: range.low.min(other.density.low),
                high: range.high.max(other.density.high),
                confirmed: range.confirmed.weaker(other.density.confirmed),
                ..range
            })
    }

    /// The commonest material of the class, and the others.
    const fn members(self) -> (MaterialDensity, &'static [MaterialDensity]) {
        use rows::{
            ALUMINIUM_6000, ALUMINIUM_7000, ALUMINIUM_BRONZE, AUSTENITIC, AUSTENITIC_MO, BRASS,
            CHROMIUM_MOLYBDENUM, COLD_WORK, DUCTILE_IRON, GREY_IRON, HIGH_SPEED, HOT_WORK,
            LEADED_BRONZE, LOW_CARBON, MARTENSITIC, MARTENSITIC_HIGH_CARBON, MEDIUM_CARBON,
            OIL_HARDENING, PHOSPHOR_BRONZE, TITANIUM,
        };
        match self {
            Self::LowCarbonSteel => (LOW_CARBON, &[]),
            Self::MediumCarbonSteel => (MEDIUM_CARBON, &[]),
            Self::AlloySteelTempered | Self::AlloySteelHard => (CHROMIUM_MOLYBDENUM, &[]),
            // Bearing steel lies within the range of the tool steels.
            Self::ToolSteelAnnealed | Self::HardenedSteel => {
                (OIL_HARDENING, &[COLD_WORK, HOT_WORK])
            }
            Self::CaseHardenedSteel => (LOW_CARBON, &[CHROMIUM_MOLYBDENUM]),
            Self::HighSpeedSteelHard => (HIGH_SPEED, &[]),
            Self::StainlessMartensitic => (MARTENSITIC, &[MARTENSITIC_HIGH_CARBON]),
            Self::StainlessAustenitic => (AUSTENITIC, &[AUSTENITIC_MO]),
            Self::GreyIron => (GREY_IRON, &[]),
            Self::DuctileIron => (DUCTILE_IRON, &[]),
            Self::AluminiumAlloy => (ALUMINIUM_6000, &[ALUMINIUM_7000]),
            Self::Brass => (BRASS, &[]),
            Self::Bronze => (PHOSPHOR_BRONZE, &[LEADED_BRONZE, ALUMINIUM_BRONZE]),
            Self::TitaniumAlloy => (TITANIUM, &[]),
        }
    }
}

/// The rows: least, typical, greatest density.
#[rustfmt::skip]
mod rows {
    use super::{Memory, MaterialDensity, OneSource, TwoSources, row};

    const STEEL: &str = "handbook steel tables";
    const TOOL_STEEL: &str = "tool-steel handbook";
    const STAINLESS: &str = "EN 10088-1, annex";
    const GREY: &str = "EN 1561, annex";
    const DUCTILE: &str = "EN 1563, annex";
    const LIGHT: &str = "handbook aluminium tables";
    const COPPER_ALLOY: &str = "handbook copper tables";
    const TITANIUM_TABLES: &str = "handbook titanium tables";
    const NICKEL_TABLES: &str = "handbook nickel-alloy tables";

    pub(super) const MEDIUM_CARBON:           MaterialDensity = row("carbon steel",                               "C45, AISI 1045",        7850.0, 7850.0, 7870.0, STEEL,           OneSource);
    pub(super) const LOW_CARBON:              MaterialDensity = row("low-carbon steel",                           "S235, AISI 1020",       7850.0, 7850.0, 7870.0, STEEL,           TwoSources);
    pub(super) const CHROMIUM_MOLYBDENUM:     MaterialDensity = row("chromium-molybdenum steel",                  "42CrMo4, AISI 4140",    7830.0, 7850.0, 7850.0, STEEL,           TwoSources);
    pub(super) const COLD_WORK:               MaterialDensity = row("tool steel, cold work",                      "X153CrMoV12, AISI D2",  7670.0, 7700.0, 7700.0, TOOL_STEEL,      Memory);
    pub(super) const HOT_WORK:                MaterialDensity = row("tool steel, hot work",                       "X40CrMoV5-1, AISI H13", 7750.0, 7800.0, 7800.0, TOOL_STEEL,      Memory);
    pub(super) const OIL_HARDENING:           MaterialDensity = row("tool steel, oil hardening",                  "100MnCrW4, AISI O1",    7800.0, 7830.0, 7850.0, TOOL_STEEL,      Memory);
    pub(super) const HIGH_SPEED:              MaterialDensity = row("high-speed steel",                           "HS6-5-2, AISI M2",      8100.0, 8160.0, 8200.0, TOOL_STEEL,      Memory);
    pub(super) const MARTENSITIC:             MaterialDensity = row("martensitic stainless steel",                "1.4021, AISI 420",      7700.0, 7700.0, 7750.0, STAINLESS,       TwoSources);
    pub(super) const MARTENSITIC_HIGH_CARBON: MaterialDensity = row("martensitic stainless steel, high carbon",   "1.4125, AISI 440C",     7650.0, 7700.0, 7800.0, STAINLESS,       OneSource);
    pub(super) const PRECIPITATION:           MaterialDensity = row("precipitation-hardening stainless steel",    "1.4542, 17-4 PH",       7750.0, 7800.0, 7800.0, STAINLESS,       OneSource);
    pub(super) const AUSTENITIC:              MaterialDensity = row("austenitic stainless steel",                 "1.4301, AISI 304",      7900.0, 7900.0, 8030.0, STAINLESS,       TwoSources);
    pub(super) const AUSTENITIC_MO:           MaterialDensity = row("austenitic stainless steel with molybdenum", "1.4401, AISI 316",      7980.0, 8000.0, 8030.0, STAINLESS,       TwoSources);
    pub(super) const GREY_IRON:               MaterialDensity = row("grey iron",                                  "EN-GJL-250",            7100.0, 7200.0, 7250.0, GREY,            OneSource);
    pub(super) const DUCTILE_IRON:            MaterialDensity = row("ductile iron",                               "EN-GJS-400-15, 500-7",  7100.0, 7100.0, 7200.0, DUCTILE,         TwoSources);
    pub(super) const ALUMINIUM_6000:          MaterialDensity = row("aluminium 6000 series",                      "6061-T6, 6082-T6",      2700.0, 2700.0, 2710.0, LIGHT,           TwoSources);
    pub(super) const ALUMINIUM_7000:          MaterialDensity = row("aluminium 7000 series",                      "7075-T6",               2800.0, 2810.0, 2810.0, LIGHT,           TwoSources);
    pub(super) const BRASS:                   MaterialDensity = row("free-cutting brass",                         "CuZn39Pb3, C36000",     8470.0, 8500.0, 8500.0, COPPER_ALLOY,    OneSource);
    pub(super) const LEADED_BRONZE:           MaterialDensity = row("leaded tin bronze",                          "CuSn7Zn4Pb7, C93200",   8800.0, 8930.0, 8930.0, COPPER_ALLOY,    Memory);
    pub(super) const PHOSPHOR_BRONZE:         MaterialDensity = row("phosphor bronze",                            "CuSn8, C51000-C52100",  8800.0, 8830.0, 8860.0, COPPER_ALLOY,    Memory);
    pub(super) const ALUMINIUM_BRONZE:        MaterialDensity = row("aluminium bronze",                           "CuAl10Fe, C95400",      7450.0, 7450.0, 7600.0, COPPER_ALLOY,    Memory);
    pub(super) const COPPER:                  MaterialDensity = row("copper",                                     "Cu-ETP, C11000",        8890.0, 8940.0, 8960.0, COPPER_ALLOY,    OneSource);
    pub(super) const TITANIUM:                MaterialDensity = row("titanium alloy",                             "Ti-6Al-4V grade 5",     4420.0, 4430.0, 4430.0, TITANIUM_TABLES, TwoSources);
    pub(super) const NICKEL:                  MaterialDensity = row("nickel alloy",                               "alloy 718, UNS N07718", 8190.0, 8190.0, 8230.0, NICKEL_TABLES,   Memory);
}

/// Every material that has a row, including some that are in no class of [`WorkMaterial`].
pub const DENSITIES: [MaterialDensity; 23] = [
    rows::LOW_CARBON,
    rows::MEDIUM_CARBON,
    rows::CHROMIUM_MOLYBDENUM,
    rows::COLD_WORK,
    rows::HOT_WORK,
    rows::OIL_HARDENING,
    rows::HIGH_SPEED,
    rows::MARTENSITIC,
    rows::MARTENSITIC_HIGH_CARBON,
    rows::PRECIPITATION,
    rows::AUSTENITIC,
    rows::AUSTENITIC_MO,
    rows::GREY_IRON,
    rows::DUCTILE_IRON,
    rows::ALUMINIUM_6000,
    rows::ALUMINIUM_7000,
    rows::BRASS,
    rows::LEADED_BRONZE,
    rows::PHOSPHOR_BRONZE,
    rows::ALUMINIUM_BRONZE,
    rows::COPPER,
    rows::TITANIUM,
    rows::NICKEL,
];

const fn row(
    name: &'static str,
    example: &'static str,
    low: f64,
    typical: f64,
    high: f64,
    source: &'static str,
    confirmed: Confirmed,
) -> MaterialDensity {
    MaterialDensity {
        name,
        example,
        density: DensityRange {
            low: Density::kg_per_m3(low),
            typical: Density::kg_per_m3(typical),
            high: Density::kg_per_m3(high),
            confirmed,
            source,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_typical_density_lies_in_its_range() {
        let classes = WorkMaterial::ALL.map(WorkMaterial::density);
        for range in DENSITIES.iter().map(|row| row.density).chain(classes) {
            assert!(range.low <= range.typical && range.typical <= range.high);
        }
        for (place, row) in DENSITIES.iter().enumerate() {
            assert!(
                DENSITIES
                    .iter()
                    .skip(place + 1)
                    .all(|other| other.name != row.name)
            );
        }
    }

    /// Against the usual pocket-book figures in grams per cubic centimetre, from memory.
    #[test]
    fn classes_agree_with_a_pocket_book() {
        for (material, pocket_book, tolerance) in [
            (WorkMaterial::LowCarbonSteel, 7.85, 0.02),
            (WorkMaterial::StainlessAustenitic, 7.93, 0.1),
            (WorkMaterial::GreyIron, 7.2, 0.1),
            (WorkMaterial::AluminiumAlloy, 2.7, 0.02),
            (WorkMaterial::Brass, 8.5, 0.05),
            (WorkMaterial::Bronze, 8.8, 0.1),
            (WorkMaterial::TitaniumAlloy, 4.43, 0.01),
            (WorkMaterial::HighSpeedSteelHard, 8.15, 0.05),
        ] {
            let typical = material.density().typical.to_kg_per_m3() / 1000.0;
            assert!(
                (typical - pocket_book).abs() <= tolerance,
                "{material:?}: {typical}"
            );
        }
    }

    #[test]
    fn a_class_takes_in_all_its_members() {
        let bronze = WorkMaterial::Bronze.density();
        assert_eq!(bronze.low, Density::kg_per_m3(7450.0));
        assert_eq!(bronze.high, Density::kg_per_m3(8930.0));
        let case_hardened = WorkMaterial::CaseHardenedSteel.density();
        assert_eq!(case_hardened.confirmed, TwoSources);
        assert_eq!(case_hardened.low, Density::kg_per_m3(7830.0));
    }

    #[test]
    fn codes_and_numbers_lead_back() {
        for (index, material) in (0u8..).zip(WorkMaterial::ALL) {
            assert_eq!(material.index(), index);
            assert_eq!(WorkMaterial::from_index(index), Some(material));
            assert_eq!(WorkMaterial::from_code(material.code()), Some(material));
        }
        assert_eq!(WorkMaterial::from_index(16), None);
        assert_eq!(WorkMaterial::from_code("Brass"), None);
    }
}
