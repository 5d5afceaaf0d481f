//! Which material groups of VDI 3323 belong to which class of work materials.
//!
//! * Source: the classes' own words, and the hardness, strength and kind of the groups. Common practice, no source.
//! * What is what: a class is what the person picks, a group what the tables of cutting force and speed know. A group may
//!   belong to several classes; the usual one is that of the class's commonest member.
//! * Left out: groups 31 to 35, heat-resistant alloys, and 40 and 41, chilled and hardened cast iron, belong to no class:
//!   there is none for them. Malleable iron counts with ductile iron, whose carbon is as compact; cast aluminium with
//!   wrought, quenched carbon steel with the medium-carbon class, annealed low-alloy steel with alloy and tool steel.
//! * Licence: facts only.

use super::{CuttingGroup, WorkMaterial};

const fn vdi(number: u8) -> CuttingGroup {
    CuttingGroup::vdi(number)
}

impl WorkMaterial {
    /// The groups that belong to the class, the usual one first.
    ///
    /// For a case-hardened part: the case first, then what the core may be.
    ///
    /// # Source
    /// The head of this file.
    /// # Example
    /// ```
    /// use skimwright::tables::{CuttingGroup, WorkMaterial};
    /// let codes: Vec<_> = WorkMaterial::GreyIron.cutting_groups().iter().map(|it| it.code()).collect();
    /// assert_eq!(codes, ["k-15", "k-16"]);
    /// ```
    pub const fn cutting_groups(self) -> &'static [CuttingGroup] {
        match self {
            Self::LowCarbonSteel => &[CuttingGroup::FIRST],
            Self::MediumCarbonSteel => &const { [vdi(2), vdi(3), vdi(4), vdi(5)] },
            Self::AlloySteelTempered => &const { [vdi(8), vdi(6), vdi(7), vdi(9)] },
            Self::AlloySteelHard => &const { [CuttingGroup::NINE_X, vdi(9)] },
            Self::ToolSteelAnnealed => &const { [vdi(10), vdi(6), vdi(11)] },
            Self::HardenedSteel => &const { [vdi(38), vdi(39)] },
            Self::CaseHardenedSteel => {
                &const { [vdi(39), vdi(38), vdi(1), vdi(6), vdi(7), vdi(8)] }
            }
            Self::HighSpeedSteelHard => &const { [vdi(39)] },
            Self::StainlessMartensitic => &const { [vdi(13), vdi(12)] },
            Self::StainlessAustenitic => &const { [vdi(14)] },
            Self::GreyIron => &const { [vdi(15), vdi(16)] },
            Self::DuctileIron => &const { [vdi(18), vdi(17), vdi(19), vdi(20)] },
            Self::AluminiumAlloy => &const { [vdi(22), vdi(21), vdi(23), vdi(24), vdi(25)] },
            Self::Brass => &const { [vdi(26), vdi(27)] },
            Self::Bronze => &const { [vdi(28), vdi(26)] },
            Self::TitaniumAlloy => &const { [vdi(37), vdi(36)] },
        }
    }

    /// The group of the class's commonest member.
    ///
    /// # Example
    /// ```
    /// use skimwright::tables::WorkMaterial;
    /// assert_eq!(WorkMaterial::AlloySteelTempered.usual_cutting_group().code(), "p-8");
    /// ```
    pub fn usual_cutting_group(self) -> CuttingGroup {
        // No list is empty: a test looks at each.
        self.cutting_groups()
            .first()
            .copied()
            .unwrap_or(CuttingGroup::FIRST)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::IsoGroup;

    #[test]
    fn every_class_has_groups_and_names_none_twice() {
        for class in WorkMaterial::ALL {
            let groups = class.cutting_groups();
            assert_eq!(
                groups.first(),
                Some(&class.usual_cutting_group()),
                "{class:?}"
            );
            for (place, group) in groups.iter().enumerate() {
                assert!(group.get().is_some(), "{class:?}");
                assert!(!groups[..place].contains(group), "{class:?}");
            }
        }
    }

    #[test]
    fn only_groups_without_a_class_belong_to_none() {
        let none: Vec<_> = CuttingGroup::all()
            .filter(|group| {
                !WorkMaterial::ALL
                    .iter()
                    .any(|class| class.cutting_groups().contains(group))
            })
            .map(CuttingGroup::code)
            .collect();
        assert_eq!(
            none,
            ["s-31", "s-32", "s-33", "s-34", "s-35", "h-40", "h-41"]
        );
    }

    /// Against the strengths and hardnesses of the classes, which come from other books.
    #[test]
    fn the_usual_group_is_as_strong_and_hard_as_its_class() {
        let mut strengths = 0;
        for class in WorkMaterial::ALL {
            let group = class.usual_cutting_group().get().unwrap();
            let mechanical = class.mechanical();
            if let (Some(strength), true) = (group.tensile_strength, group.iso != IsoGroup::H) {
                let range = mechanical.tensile_strength;
                assert!(range.low <= strength && strength <= range.high, "{class:?}");
                strengths += 1;
            }
            if let (Some(hardness), Some(range)) = (group.hardness, mechanical.usual_hardness) {
                // The class of high-speed steel is harder than the hardest group.
                let room = if class == WorkMaterial::HighSpeedSteelHard {
                    2.0
                } else {
                    0.0
                };
                assert!(range.low.to_hrc() - room <= hardness.to_hrc(), "{class:?}");
                assert!(hardness <= range.high, "{class:?}");
            }
        }
        assert!(strengths >= 8, "{strengths}");
    }
}
