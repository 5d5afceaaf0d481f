//! Specific cutting force of a material group, for steels by the hardness measured.
//!
//! * Source: the tables of [`CUTTING_GROUPS`] and [`SECOND_CLASSES`]; here only the lines between their rows. The margins
//!   are from memory: 15 % either way for a known material, 25 % from 40 HRC up.
//! * What is what: for steel the likely force runs straight, by Rockwell C, through the rows of the family (carbon,
//!   low-alloy, high-alloy with tool steel; martensitic stainless steel joins the last at 35 HRC) and on to the
//!   hardened rows, where it is the mean of the two class tables, which lie 20 % apart at 55 HRC. The range takes in both.
//!   Softer than the first row and harder than the last it stays as it is.
//! * Left out: worn edges, other rakes, the speed. One paper on AISI 4340 and D2 found lower forces at 48 HRC with boron
//!   nitride than at 42 with coated carbide, at small feeds and depths.
//! * Checked: as the rows. Where a line runs between a family's last row and the hardened ones, by nothing: see the mark.

use super::cutting_groups::HARDENED_MC;
use super::{
    CUTTING_GROUPS, ClassForce, Confirmed, CuttingGroup, CuttingGroupData, SECOND_CLASSES, Spread,
    SteelFamily,
};
use crate::quantity::{Hardness, Stress};

/// The specific cutting force and how it falls with the thickness of the chip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpecificForce {
    /// Of a chip 1 mm thick and 1 mm wide, sharp edge, rake 0°: least, likely, greatest.
    pub kc11: Spread<Stress>,
    /// By which power of the chip's thickness in millimetres the force falls.
    pub mc: f64,
    /// How far the likely force was checked; the margins are always from memory.
    pub confirmed: Confirmed,
    /// Where it is from.
    pub source: &'static str,
}

/// Of the likely value, either way.
const MARGIN: f64 = 0.15;

/// The same from [`WIDE_FROM`] up, and for hard cast iron.
const WIDE_MARGIN: f64 = 0.25;

const WIDE_FROM: Hardness = Hardness::hrc(40.0);

/// The specific force for a group, with the hardness measured where there is one.
///
/// `hardness`: least, likely and greatest, in this order; `None` takes that of the group. Only steels use it; a wider
/// range of hardness gives a wider range of force. For a hardness below what Rockwell C measures, give `None`.
///
/// # Accuracy
/// 15 % either way for a known material, 25 % from 40 HRC up, more where the class tables or editions disagree.
/// # Source
/// The head of this file.
/// # Example
/// ```
/// use skimwright::quantity::{Hardness, Stress};
/// use skimwright::tables::{CuttingGroup, Spread, specific_force};
/// let tempered = CuttingGroup::from_code("p-8").unwrap();
/// let usual = specific_force(tempered, None);
/// assert!((usual.kc11.typical.to_mpa() - 1725.0).abs() < 1e-9);
/// let hard = specific_force(tempered, Some(Spread::exact(Hardness::hrc(55.0))));
/// assert!(hard.kc11.low < Stress::mpa(3690.0) && Stress::mpa(4600.0) < hard.kc11.high);
/// ```
pub fn specific_force(group: CuttingGroup, hardness: Option<Spread<Hardness>>) -> SpecificForce {
    let row = group.get();
    let family = row.and_then(|row| row.family);
    let own = row.and_then(|row| row.hardness).map(Spread::exact);
    let known = row.and_then(|row| Some((row, row.kc11?)));
    match (family, hardness.or(own), known) {
        (Some(family), Some(hardness), _) => by_hardness(family, hardness),
        (_, _, Some((row, kc11))) => as_printed(row, kc11),
        // Every row has a force or a hardness, which a test looks at; the hardest steel is the careful answer.
        _ => by_hardness(
            SteelFamily::Hardened,
            Spread::exact(Hardness::hrc(f64::MAX)),
        ),
    }
}

fn as_printed(row: &CuttingGroupData, kc11: Stress) -> SpecificForce {
    let margin = if row.mc.is_some() {
        MARGIN
    } else {
        WIDE_MARGIN
    };
    let older = row.kc11_older.unwrap_or(kc11);
    SpecificForce {
        kc11: Spread {
            low: (kc11 * (1.0 - margin)).min(older),
            typical: kc11,
            high: (kc11 * (1.0 + margin)).max(older),
        },
        mc: row.mc.unwrap_or(HARDENED_MC),
        confirmed: CuttingGroupData::CONFIRMED,
        source: CuttingGroupData::SOURCE,
    }
}

fn by_hardness(family: SteelFamily, hardness: Spread<Hardness>) -> SpecificForce {
    let rows = family_rows(family);
    let in_family = rows
        .last()
        .is_some_and(|last| hardness.typical <= last.hardness);
    let knots = knots(&printed(rows), &second_table(family));
    let at = |hardness, value: fn(&Knot) -> f64| {
        between(
            knots.iter().map(|knot| (knot.hardness, value(knot))),
            hardness,
        )
    };
    SpecificForce {
        kc11: Spread {
            low: Stress::mpa(at(hardness.low, |knot| knot.low)),
            typical: Stress::mpa(at(hardness.typical, |knot| knot.likely)),
            high: Stress::mpa(at(hardness.high, |knot| knot.high)),
        },
        mc: at(hardness.typical, |knot| knot.mc),
        confirmed: if in_family {
            CuttingGroupData::CONFIRMED
        } else {
            Confirmed::Memory
        },
        source: if in_family {
            CuttingGroupData::SOURCE
        } else {
            "between two class tables of cutting force, one from a tool maker's catalogue, one from memory"
        },
    }
}

/// A place where a line bends: forces in megapascals.
#[derive(Clone, Copy)]
struct Knot {
    hardness: Hardness,
    low: f64,
    likely: f64,
    high: f64,
    mc: f64,
}

/// The rows of the first table for a family, softest first.
fn family_rows(family: SteelFamily) -> Vec<Knot> {
    let members: &[SteelFamily] = match family {
        // Of a steel that is only known as hardened: the commonest kind.
        SteelFamily::Hardened | SteelFamily::LowAlloy => &[SteelFamily::LowAlloy],
        SteelFamily::NonAlloy => &[SteelFamily::NonAlloy],
        SteelFamily::HighAlloy => &[SteelFamily::HighAlloy],
        SteelFamily::Stainless => &[SteelFamily::Stainless, SteelFamily::HighAlloy],
    };
    members.iter().flat_map(|member| rows_of(*member)).collect()
}

fn rows_of(family: SteelFamily) -> impl Iterator<Item = Knot> {
    CUTTING_GROUPS
        .iter()
        .filter(move |row| row.family == Some(family))
        .filter_map(|row| {
            let force = row.kc11?.to_mpa();
            Some(Knot {
                hardness: row.hardness?,
                low: force,
                likely: force,
                high: force,
                mc: row.mc.unwrap_or(HARDENED_MC),
            })
        })
}

/// What is printed for a family, softest first: its own rows, then the hardened ones. Both class tables know those: the
/// likely force is the mean of the two, and past the end of the first that of the second alone.
fn printed(mut rows: Vec<Knot>) -> Vec<Knot> {
    let last = rows_of(SteelFamily::Hardened)
        .last()
        .map(|row| row.hardness);
    for class in of_family(SteelFamily::Hardened) {
        let second = class.kc11.to_mpa();
        let first = match rows_of(SteelFamily::Hardened).find(|row| row.hardness == class.hardness)
        {
            Some(row) => row.likely,
            None if last < Some(class.hardness) => second,
            // The second table's softest row lies below those of the first: there the line of the first runs on.
            None => continue,
        };
        rows.push(Knot {
            hardness: class.hardness,
            low: first.min(second),
            likely: f64::midpoint(first, second),
            high: first.max(second),
            mc: class.mc,
        });
    }
    rows
}

fn of_family(family: SteelFamily) -> impl Iterator<Item = &'static ClassForce> {
    SECOND_CLASSES
        .iter()
        .filter(move |class| class.family == family)
}

/// The second class table's forces for a family, softest first.
fn second_table(family: SteelFamily) -> Vec<(Hardness, f64)> {
    let soft = match family {
        SteelFamily::HighAlloy | SteelFamily::Stainless => SteelFamily::HighAlloy,
        SteelFamily::NonAlloy | SteelFamily::LowAlloy | SteelFamily::Hardened => {
            SteelFamily::LowAlloy
        }
    };
    of_family(soft)
        .chain(of_family(SteelFamily::Hardened))
        .map(|class| (class.hardness, class.kc11.to_mpa()))
        .collect()
}

/// The places where the likely force or its range bends, softest first.
///
/// The margin grows from one place to the next, not at a step, so that a harder steel never has a lower bound.
fn knots(first: &[Knot], second: &[(Hardness, f64)]) -> Vec<Knot> {
    let mut places: Vec<f64> = first.iter().map(|knot| knot.hardness.to_hrc()).collect();
    places.extend(second.iter().map(|(hardness, _)| hardness.to_hrc()));
    places.push(WIDE_FROM.to_hrc());
    crate::order::numbers(&mut places);
    places.dedup();
    let at = |place| {
        let hardness = Hardness::hrc(place);
        let printed = |value: fn(&Knot) -> f64| {
            between(
                first.iter().map(|knot| (knot.hardness, value(knot))),
                hardness,
            )
        };
        let likely = printed(|knot| knot.likely);
        let margin = if hardness < WIDE_FROM {
            MARGIN
        } else {
            WIDE_MARGIN
        };
        // The second table says nothing of steel softer than its first row.
        let begins = second.first().is_some_and(|class| class.0 <= hardness);
        let other = if begins {
            between(second.iter().copied(), hardness)
        } else {
            likely
        };
        Knot {
            hardness,
            low: (likely * (1.0 - margin))
                .min(printed(|knot| knot.low))
                .min(other),
            likely,
            high: (likely * (1.0 + margin))
                .max(printed(|knot| knot.high))
                .max(other),
            mc: printed(|knot| knot.mc),
        }
    };
    places.into_iter().map(at).collect()
}

/// The value on the straight line between the two points about a hardness; past the ends that of the end.
fn between(points: impl Iterator<Item = (Hardness, f64)>, hardness: Hardness) -> f64 {
    let mut before: Option<(Hardness, f64)> = None;
    for (place, value) in points {
        if hardness <= place {
            return before.map_or(value, |(from, least)| {
                least + (value - least) * ((hardness - from) / (place - from))
            });
        }
        before = Some((place, value));
    }
    before.map_or(0.0, |(_, value)| value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::IsoGroup;

    fn group(code: &str) -> CuttingGroup {
        CuttingGroup::from_code(code).unwrap()
    }

    fn at(code: &str, hrc: f64) -> SpecificForce {
        specific_force(group(code), Some(Spread::exact(Hardness::hrc(hrc))))
    }

    const STEELS: [&str; 6] = ["p-3", "p-8", "p-9x", "p-11", "p-13", "h-38"];

    #[test]
    fn every_group_has_a_force_with_its_range() {
        for group in CuttingGroup::all() {
            let row = group.get().unwrap();
            let force = specific_force(group, None);
            assert!(row.kc11.is_some() || row.hardness.is_some(), "{group:?}");
            assert!(force.kc11.low < force.kc11.typical && force.kc11.typical < force.kc11.high);
            assert!(0.15 < force.mc && force.mc <= 0.3, "{group:?}");
            match row.kc11.filter(|_| row.iso != IsoGroup::H) {
                // At its own hardness a steel has the force that is printed for it.
                Some(printed) => {
                    assert!((force.kc11.typical - printed).abs() < Stress::mpa(1e-6));
                    assert_eq!(Some(force.mc), row.mc, "{group:?}");
                    assert_eq!(force.confirmed, Confirmed::OneSource);
                }
                None => assert!(force.kc11.high / force.kc11.typical >= 1.25 - 1e-9),
            }
        }
    }

    #[test]
    fn harder_steel_takes_more_force_without_a_step() {
        for code in STEELS {
            let mut last: Option<SpecificForce> = None;
            for tenth in 150..=720 {
                let now = at(code, f64::from(tenth) / 10.0);
                assert!(now.kc11.low <= now.kc11.typical && now.kc11.typical <= now.kc11.high);
                if let Some(last) = last {
                    for (before, after) in [
                        (last.kc11.low, now.kc11.low),
                        (last.kc11.typical, now.kc11.typical),
                        (last.kc11.high, now.kc11.high),
                    ] {
                        assert!(before <= after, "{code}, {tenth}");
                        assert!(after / before < 1.02, "{code}, {tenth}: a step");
                    }
                    assert!((now.mc - last.mc).abs() < 0.002, "{code}, {tenth}");
                }
                last = Some(now);
            }
        }
    }

    /// Both class tables lie in the range, each row in its own family.
    #[test]
    fn the_range_takes_in_both_class_tables() {
        for class in SECOND_CLASSES {
            for code in STEELS {
                let soft = group(code).get().unwrap().family;
                if class.family != SteelFamily::Hardened && soft != Some(class.family) {
                    continue;
                }
                let force = at(code, class.hardness.to_hrc()).kc11;
                assert!(
                    force.low <= class.kc11 && class.kc11 <= force.high,
                    "{code}, {class:?}"
                );
            }
        }
        for (hrc, printed) in [(55.0, 4600.0), (60.0, 4700.0)] {
            for code in STEELS {
                let force = at(code, hrc).kc11;
                assert!(Stress::mpa(printed) <= force.high && force.low <= Stress::mpa(printed));
            }
        }
        // Between the last soft row of low-alloy steel and the first hardened one the second table is the higher.
        let at_37 = at("p-9", 37.5).kc11;
        assert!((at_37.high.to_mpa() - 2140.0).abs() < 1e-6, "{at_37:?}");
    }

    /// Straight from 1800 at 37.5 HRC to 3690 and 4600 at 55 HRC gives 2360 to 2630 at 42.7 HRC.
    #[test]
    fn between_the_tables_it_is_as_reckoned_by_hand() {
        let between = specific_force(group("p-9x"), None);
        let typical = between.kc11.typical.to_mpa();
        assert!(2360.0 < typical && typical < 2630.0, "{typical}");
        assert_eq!(between.confirmed, Confirmed::Memory);
        // The mean of both tables at 55 HRC.
        assert!((at("p-8", 55.0).kc11.typical.to_mpa() - 4145.0).abs() < 1e-6);
        assert!((at("p-8", 55.0).mc - 0.25).abs() < 1e-12);
    }

    #[test]
    fn a_range_of_hardness_widens_that_of_the_force() {
        let hrc = |low, typical, high| Spread {
            low: Hardness::hrc(low),
            typical: Hardness::hrc(typical),
            high: Hardness::hrc(high),
        };
        let narrow = specific_force(group("p-8"), Some(hrc(44.0, 45.0, 46.0))).kc11;
        let wide = specific_force(group("p-8"), Some(hrc(40.0, 45.0, 50.0))).kc11;
        assert_eq!(narrow.typical, wide.typical);
        assert!(wide.low < narrow.low && narrow.high < wide.high);
    }

    #[test]
    fn hardness_counts_for_steel_only() {
        let hard = Some(Spread::exact(Hardness::hrc(50.0)));
        for group in CuttingGroup::all() {
            let is_steel = group.get().unwrap().family.is_some();
            let same = specific_force(group, hard) == specific_force(group, None);
            assert_ne!(is_steel, same, "{group:?}");
        }
    }

    /// The editions of the catalogue disagree on titanium: the range holds both.
    #[test]
    fn titanium_is_as_uncertain_as_its_table() {
        for (code, printed, older) in [("s-36", 1160.0, 1700.0), ("s-37", 1245.0, 2110.0)] {
            let force = specific_force(group(code), None).kc11;
            assert_eq!(force.typical, Stress::mpa(printed));
            assert_eq!(force.high, Stress::mpa(older));
        }
    }
}
