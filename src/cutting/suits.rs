//! Which tool turns what, by material group and hardness.
//!
//! The limits of hardness stand in the table of hardness limits, with their sources. What else is said here is common
//! practice, no source: ceramic takes no interrupted cut and reacts with aluminium and titanium, boron nitride sticks to
//! ferrite, a grinder on the tool post is slow and its dust is the lathe's worst enemy.

use serde::Serialize;

use crate::quantity::Hardness;
use crate::tables::{
    Condition, CuttingGroup, CuttingGroupData, IsoGroup, SpeedWindow, Spread, SteelFamily,
    ToolKind, hard_steel_window,
};

/// Whether a tool turns a material, and at what speed to begin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Suits {
    /// Yes, with care, or no.
    pub verdict: Verdict,
    /// The window of cutting speed (for grinding: the surface speed of the work); `None` where the verdict is no, or
    /// where nobody gives a figure.
    pub window: Option<SpeedWindow>,
}

/// What there is to say of a tool on a material.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", content = "why", rename_all = "kebab-case")]
pub enum Verdict {
    /// It does.
    Yes,
    /// It does, if care is taken.
    WithCare(Care),
    /// It does not.
    No(Unfit),
}

/// What care to take, the lighter first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Care {
    /// High-speed steel must be a cobalt grade such as T15 or M42.
    CobaltGrade,
    /// Smooth cuts only: ceramic breaks on keyways, flats and cross holes.
    NoInterruptedCut,
    /// Light cuts only.
    LightCuts,
    /// Softer than the tool likes: it wears faster and the chip may stick.
    NearlyTooSoft,
    /// An emergency: finishing cuts only, and the edge will not last.
    Emergency,
    /// It works, slowly; cover the slides and keep the abrasive dust out of them.
    DustAndSlow,
    /// At one end of the range of hardness the tool fails.
    HardnessUncertain,
}

/// Why a tool does not do it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Unfit {
    /// The work is too hard for the edge.
    TooHard,
    /// The work is too soft: boron nitride sticks and wears, and ceramic wants a speed that no manual lathe gives.
    TooSoft,
    /// The edge and the work react with each other.
    Reacts,
    /// Nobody gives a speed for it; the usual tools do better.
    NoFigure,
}

/// Whether a tool turns a material group of this hardness.
///
/// `hardness`: least, likely, greatest, at the depth of the cut; `None` takes that of the group. Below a hard case it is
/// that of the core: there boron nitride sticks. Where to look is up to the caller. It counts for steel, cast iron and
/// hardened metals. Where the tool works at the likely hardness but fails at one end, the verdict says so.
///
/// # Accuracy
/// The limits lie within two or three HRC, by grade and set-up; a window is a start and moves by a third either way.
/// # Source
/// The tables of hardness limits and of material groups; else common practice, no source.
/// # Example
/// ```
/// use skimwright::cutting::{Unfit, Verdict, suits};
/// use skimwright::quantity::Hardness;
/// use skimwright::tables::{CuttingGroup, Spread, ToolKind};
/// let hardened = CuttingGroup::from_code("h-38").unwrap();
/// let at_58 = Some(Spread::exact(Hardness::hrc(58.0)));
/// assert_eq!(suits(hardened, at_58, ToolKind::CubicBoronNitride).verdict, Verdict::Yes);
/// let brazed = suits(hardened, at_58, ToolKind::BrazedCarbide);
/// assert_eq!((brazed.verdict, brazed.window), (Verdict::No(Unfit::TooHard), None));
/// ```
pub fn suits(group: CuttingGroup, hardness: Option<Spread<Hardness>>, tool: ToolKind) -> Suits {
    let Some(row) = group.get() else {
        return no(Unfit::NoFigure);
    };
    let hardness = hardness.or(row.hardness.map(Spread::exact));
    let verdict = verdict(group, row, hardness, tool);
    if matches!(verdict, Verdict::No(_)) {
        return Suits {
            verdict,
            window: None,
        };
    }
    let window = window(group, row, hardness.map(|it| it.typical), tool);
    let asked = match window.and_then(|window| window.condition) {
        Some(Condition::CobaltGrade) => Verdict::WithCare(Care::CobaltGrade),
        Some(Condition::LightCutsTo55Hrc) => Verdict::WithCare(Care::Emergency),
        None => Verdict::Yes,
    };
    Suits {
        verdict: worse(verdict, asked),
        window,
    }
}

fn no(why: Unfit) -> Suits {
    Suits {
        verdict: Verdict::No(why),
        window: None,
    }
}

fn verdict(
    group: CuttingGroup,
    row: &CuttingGroupData,
    hardness: Option<Spread<Hardness>>,
    tool: ToolKind,
) -> Verdict {
    if tool == ToolKind::Grinding {
        return Verdict::WithCare(Care::DustAndSlow);
    }
    // The limits are for iron and steel: what else is as hard is cut by other rules.
    let has_limits = !matches!(row.iso, IsoGroup::N | IsoGroup::S);
    let Some(hardness) = hardness.filter(|_| has_limits) else {
        return by_group(group, row, tool);
    };
    // Soft cast iron is cut by boron nitride and ceramic as well: their lower limit is for steel.
    let is_steel = row.family.is_some();
    let by_limits = |at: Hardness| by_hardness(at, tool, is_steel);
    let likely = match by_limits(hardness.typical) {
        Verdict::Yes | Verdict::WithCare(Care::NoInterruptedCut) if !is_steel => {
            by_group(group, row, tool)
        }
        other => other,
    };
    match likely {
        Verdict::No(_) => likely,
        Verdict::Yes | Verdict::WithCare(_) => [hardness.low, hardness.high]
            .map(by_limits)
            .into_iter()
            .fold(likely, worse),
    }
}

/// The worse of two verdicts, of which the first is that of the likely hardness.
fn worse(likely: Verdict, end: Verdict) -> Verdict {
    match (likely, end) {
        (_, Verdict::No(_)) => Verdict::WithCare(Care::HardnessUncertain),
        (Verdict::WithCare(one), Verdict::WithCare(other)) => Verdict::WithCare(one.max(other)),
        (Verdict::Yes, other) | (other, Verdict::Yes) | (other @ Verdict::No(_), _) => other,
    }
}

/// By the limits of the tool alone.
fn by_hardness(hardness: Hardness, tool: ToolKind, steel: bool) -> Verdict {
    let Some(limits) = tool.hardness_limits() else {
        return Verdict::Yes;
    };
    let (least, easy_from) = (
        limits.least.filter(|_| steel),
        limits.easy_from.filter(|_| steel),
    );
    if limits.most < hardness {
        Verdict::No(Unfit::TooHard)
    } else if least.is_some_and(|least| hardness < least) {
        Verdict::No(Unfit::TooSoft)
    } else if easy_from.is_some_and(|easy| hardness < easy) {
        Verdict::WithCare(Care::NearlyTooSoft)
    } else if limits.easy_to < hardness {
        Verdict::WithCare(match tool {
            ToolKind::HighSpeedSteel => Care::CobaltGrade,
            ToolKind::IndexableCarbide => Care::Emergency,
            _ => Care::LightCuts,
        })
    } else if tool == ToolKind::Ceramic {
        Verdict::WithCare(Care::NoInterruptedCut)
    } else {
        Verdict::Yes
    }
}

/// By what the table of groups knows, without a hardness.
fn by_group(group: CuttingGroup, row: &CuttingGroupData, tool: ToolKind) -> Verdict {
    let is_aluminium_or_titanium = matches!(row.vdi, Some(21..=25 | 36 | 37));
    match (tool, group.window(tool)) {
        (ToolKind::Ceramic, Some(_)) => Verdict::WithCare(Care::NoInterruptedCut),
        (_, Some(_)) => Verdict::Yes,
        (ToolKind::Ceramic, None) if is_aluminium_or_titanium => Verdict::No(Unfit::Reacts),
        (ToolKind::Ceramic | ToolKind::CubicBoronNitride, None)
            if matches!(row.iso, IsoGroup::P | IsoGroup::M | IsoGroup::K) =>
        {
            Verdict::No(Unfit::TooSoft)
        }
        (_, None) => Verdict::No(Unfit::NoFigure),
    }
}

/// Where a tool's window is read: for steel of known hardness from the softest group of its family that is as hard, then
/// from the table for hard steel, then from the hardened groups; else from the group itself.
fn window(
    group: CuttingGroup,
    row: &CuttingGroupData,
    hardness: Option<Hardness>,
    tool: ToolKind,
) -> Option<SpeedWindow> {
    let (Some(family), Some(hardness)) = (row.family, hardness) else {
        return group.window(tool);
    };
    let family = match family {
        // Of steel that is only known as hardened: the commonest kind.
        SteelFamily::Hardened => SteelFamily::LowAlloy,
        other => other,
    };
    let as_hard = |family| {
        windows(family, tool)
            .find(|(place, _)| hardness <= *place)
            .map(|(_, window)| window)
    };
    as_hard(family)
        .or_else(|| hard_steel_window(hardness, tool))
        .or_else(|| as_hard(SteelFamily::Hardened))
        // Past the hardest group its own window is the nearest there is.
        .or_else(|| Some(windows(SteelFamily::Hardened, tool).last()?.1))
}

/// The windows of a tool in a family of steel, softest first.
fn windows(family: SteelFamily, tool: ToolKind) -> impl Iterator<Item = (Hardness, SpeedWindow)> {
    CuttingGroup::all().filter_map(move |group| {
        let row = group.get().filter(|row| row.family == Some(family))?;
        Some((row.hardness?, group.window(tool)?))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use ToolKind as T;

    fn group(code: &str) -> CuttingGroup {
        CuttingGroup::from_code(code).unwrap()
    }

    fn at(code: &str, hrc: f64, tool: ToolKind) -> Suits {
        suits(group(code), Some(Spread::exact(Hardness::hrc(hrc))), tool)
    }

    fn window(suits: Suits) -> Option<(f64, f64)> {
        suits
            .window
            .map(|it| (it.low.to_m_per_min(), it.high.to_m_per_min()))
    }

    /// Hardness of low-alloy steel, tool, verdict, window: the rows of the table of limits, and both sides of each bound.
    #[test]
    #[rustfmt::skip]
    fn steel_is_judged_by_its_hardness() {
        const YES: Verdict = Verdict::Yes;
        const HARD: Verdict = Verdict::No(Unfit::TooHard);
        const SOFT: Verdict = Verdict::No(Unfit::TooSoft);
        let care = Verdict::WithCare;
        for (hrc, tool, verdict, speeds) in [
            (28.0, T::HighSpeedSteel, YES, Some((27.0, 35.0))),
            // The data book's row for 275 to 325 HB is for cobalt grades already.
            (31.0, T::HighSpeedSteel, care(Care::CobaltGrade), Some((21.0, 27.0))),
            (39.0, T::HighSpeedSteel, care(Care::CobaltGrade), Some((17.0, 21.0))),
            (45.0, T::HighSpeedSteel, care(Care::CobaltGrade), Some((11.0, 21.0))),
            (45.1, T::HighSpeedSteel, HARD, None),
            (30.0, T::BrazedCarbide, YES, Some((60.0, 95.0))),
            (44.0, T::BrazedCarbide, YES, Some((30.0, 55.0))),
            (48.0, T::BrazedCarbide, care(Care::LightCuts), Some((20.0, 40.0))),
            (48.0, T::IndexableFlat, care(Care::LightCuts), Some((20.0, 40.0))),
            (50.1, T::BrazedCarbide, HARD, None),
            (35.0, T::IndexableCarbide, YES, Some((115.0, 150.0))),
            (48.0, T::IndexableCarbide, YES, Some((40.0, 120.0))),
            (53.0, T::IndexableCarbide, care(Care::Emergency), Some((20.0, 50.0))),
            (55.1, T::IndexableCarbide, HARD, None),
            (39.9, T::CubicBoronNitride, SOFT, None),
            (42.0, T::CubicBoronNitride, care(Care::NearlyTooSoft), Some((90.0, 180.0))),
            (50.0, T::CubicBoronNitride, YES, Some((90.0, 180.0))),
            (58.0, T::CubicBoronNitride, YES, Some((80.0, 150.0))),
            (64.0, T::CubicBoronNitride, YES, Some((80.0, 150.0))),
            (30.0, T::Ceramic, SOFT, None),
            (58.0, T::Ceramic, care(Care::NoInterruptedCut), Some((60.0, 120.0))),
            (65.5, T::Ceramic, HARD, None),
            (64.0, T::Grinding, care(Care::DustAndSlow), Some((10.0, 20.0))),
        ] {
            for code in ["p-8", "h-38"] {
                let got = at(code, hrc, tool);
                assert_eq!((got.verdict, window(got)), (verdict, speeds), "{code}, {hrc} HRC, {tool:?}");
            }
        }
        // Tool steel is slower than alloy steel of the same hardness.
        assert_eq!(window(at("p-11", 34.0, T::HighSpeedSteel)), Some((12.0, 18.0)));
    }

    #[test]
    #[rustfmt::skip]
    fn what_is_no_steel_is_judged_by_its_group() {
        for (code, tool, verdict) in [
            ("k-15", T::CubicBoronNitride, Verdict::Yes),
            ("k-15", T::Ceramic, Verdict::WithCare(Care::NoInterruptedCut)),
            ("k-17", T::CubicBoronNitride, Verdict::No(Unfit::TooSoft)),
            ("n-22", T::HighSpeedSteel, Verdict::Yes),
            ("n-22", T::Ceramic, Verdict::No(Unfit::Reacts)),
            ("s-37", T::Ceramic, Verdict::No(Unfit::Reacts)),
            ("n-28", T::Ceramic, Verdict::No(Unfit::NoFigure)),
            ("s-34", T::CubicBoronNitride, Verdict::Yes),
            ("m-14", T::CubicBoronNitride, Verdict::No(Unfit::TooSoft)),
            ("p-1", T::CubicBoronNitride, Verdict::No(Unfit::TooSoft)),
            ("p-1", T::HighSpeedSteel, Verdict::Yes),
            ("h-41", T::HighSpeedSteel, Verdict::No(Unfit::TooHard)),
            ("h-41", T::CubicBoronNitride, Verdict::Yes),
            ("h-40", T::HighSpeedSteel, Verdict::No(Unfit::NoFigure)),
            ("h-40", T::BrazedCarbide, Verdict::Yes),
        ] {
            assert_eq!(suits(group(code), None, tool).verdict, verdict, "{code}, {tool:?}");
        }
        // Titanium of 36 HRC is not barred to high-speed steel; grey iron hardened to 50 HRC is.
        assert_eq!(at("s-37", 36.0, T::HighSpeedSteel).verdict, Verdict::Yes);
        assert_eq!(at("k-15", 50.0, T::HighSpeedSteel).verdict, Verdict::No(Unfit::TooHard));
        assert_eq!(at("k-15", 20.0, T::CubicBoronNitride).verdict, Verdict::Yes);
    }

    /// A part whose hardness is not known well may be too hard at one end; a soft core is too soft for boron nitride.
    #[test]
    fn an_uncertain_hardness_is_said() {
        let hrc = |low, typical, high| {
            Some(Spread {
                low: Hardness::hrc(low),
                typical: Hardness::hrc(typical),
                high: Hardness::hrc(high),
            })
        };
        let verdict = |hardness, tool| suits(group("h-39"), hardness, tool).verdict;
        let uncertain = Verdict::WithCare(Care::HardnessUncertain);
        assert_eq!(
            verdict(hrc(30.0, 58.0, 62.0), T::CubicBoronNitride),
            uncertain
        );
        assert_eq!(verdict(hrc(40.0, 48.0, 52.0), T::BrazedCarbide), uncertain);
        let nearly = Verdict::WithCare(Care::NearlyTooSoft);
        assert_eq!(verdict(hrc(42.0, 50.0, 58.0), T::CubicBoronNitride), nearly);
        let core = hrc(25.0, 30.0, 35.0);
        assert_eq!(
            verdict(core, T::CubicBoronNitride),
            Verdict::No(Unfit::TooSoft)
        );
        assert_eq!(verdict(core, T::IndexableCarbide), Verdict::Yes);
    }

    #[test]
    fn a_no_has_no_window_and_every_group_something_that_turns_it() {
        for group in CuttingGroup::all() {
            let turned = ToolKind::ALL
                .into_iter()
                .filter(|tool| *tool != T::Grinding)
                .any(|tool| {
                    let got = suits(group, None, tool);
                    let fits = !matches!(got.verdict, Verdict::No(_));
                    assert!(fits || got.window.is_none());
                    fits && got.window.is_some()
                });
            assert!(turned, "{group:?}");
        }
    }
}
