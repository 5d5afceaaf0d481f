//! When to grind a surface instead of turning it.

use serde::Serialize;

use super::suits::{Verdict, suits};
use crate::quantity::{Hardness, Length};
use crate::tables::{CuttingGroup, HARDEST_TURNED, Spread, ToolKind, tolerance_grade, tool_usual};

/// What is known of a surface that is to come to size.
#[derive(Clone, Copy, Debug)]
pub struct GrindQuestion<'a> {
    /// What it is of.
    pub group: CuttingGroup,
    /// How hard it is there: least, likely, greatest; `None` takes that of the group.
    pub hardness: Option<Spread<Hardness>>,
    /// The diameter that it comes to.
    pub diameter: Length,
    /// What is still on, on radius.
    pub stock_on_radius: Length,
    /// The width of the tolerance, on diameter.
    pub tolerance: Option<Length>,
    /// The tools at hand.
    pub tools: &'a [ToolKind],
}

/// Why to grind a surface instead of turning it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum GrindReason {
    /// None of the tools at hand turns it.
    NoToolCuts,
    /// Harder than any edge turns to a trusted size.
    HarderThanTurned {
        /// The limit.
        most: Hardness,
    },
    /// So little is on that the tools at hand would only rub.
    LittleStock {
        /// The least depth on radius of the finest of them.
        least: Length,
    },
    /// The tolerance is finer than turning holds.
    FineTolerance {
        /// The finest width that it does.
        finest: Length,
    },
}

/// The finest standard tolerance grade to hope for from turning; grinding reaches it with ease. Common practice, no
/// source: a manual lathe holds grade 7, and 6 or 5 with care and an abrasive cloth.
const FINEST_TURNED: u8 = 5;

/// The reasons to grind a surface instead of turning it, the weightiest first; empty: turn it.
///
/// It says what follows from hardness, stock and tolerance alone. Roundness, roughness and the surface's length it does
/// not know.
///
/// # Accuracy
/// Rules of thumb: a reason is advice, not a bar.
/// # Source
/// Least depths: [`tool_usual`]. Above 65 HRC: the table of hardness limits. The finest grade of turning: common
/// practice, no source.
/// # Example
/// ```
/// use skimwright::cutting::{GrindQuestion, GrindReason, when_to_grind};
/// use skimwright::quantity::Length;
/// use skimwright::tables::{CuttingGroup, ToolKind};
/// let mut surface = GrindQuestion {
///     group: CuttingGroup::from_code("h-39").unwrap(),
///     hardness: None,
///     diameter: Length::mm(25.0),
///     stock_on_radius: Length::mm(0.2),
///     tolerance: Some(Length::um(13.0)),
///     tools: &[ToolKind::BrazedCarbide],
/// };
/// assert_eq!(when_to_grind(&surface), [GrindReason::NoToolCuts]);
/// surface.tools = &[ToolKind::CubicBoronNitride];
/// assert!(when_to_grind(&surface).is_empty());
/// ```
pub fn when_to_grind(surface: &GrindQuestion) -> Vec<GrindReason> {
    let row = surface.group.get();
    let own = row.and_then(|row| row.hardness);
    let hardness = surface.hardness.map(|it| it.typical).or(own);
    let fit = |tool: &&ToolKind| {
        **tool != ToolKind::Grinding
            && !matches!(
                suits(surface.group, surface.hardness, **tool).verdict,
                Verdict::No(_)
            )
    };
    let least = surface
        .tools
        .iter()
        .filter(fit)
        .map(|tool| tool_usual(*tool).depth_least)
        .reduce(Length::min);
    let stock = surface.stock_on_radius;
    let finest = tolerance_grade(FINEST_TURNED, surface.diameter);
    let reasons = [
        least.is_none().then_some(GrindReason::NoToolCuts),
        hardness
            .filter(|hardness| HARDEST_TURNED < *hardness)
            .map(|_| GrindReason::HarderThanTurned {
                most: HARDEST_TURNED,
            }),
        least
            .filter(|least| Length::ZERO < stock && stock < *least)
            .map(|least| GrindReason::LittleStock { least }),
        finest
            .filter(|finest| surface.tolerance.is_some_and(|width| width < *finest))
            .map(|finest| GrindReason::FineTolerance { finest }),
    ];
    reasons.into_iter().flatten().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use ToolKind as T;

    /// Each reason on both sides of its limit.
    #[test]
    fn grinding_is_advised_where_turning_ends() {
        let surface = GrindQuestion {
            group: CuttingGroup::from_code("h-39").unwrap(),
            hardness: None,
            diameter: Length::mm(25.0),
            stock_on_radius: Length::mm(0.2),
            tolerance: Some(Length::um(9.0)),
            tools: &[T::HighSpeedSteel, T::CubicBoronNitride],
        };
        assert_eq!(when_to_grind(&surface), []);
        let few = GrindQuestion {
            tools: &[T::HighSpeedSteel, T::Grinding],
            ..surface
        };
        assert_eq!(when_to_grind(&few), [GrindReason::NoToolCuts]);
        let at = |hrc| GrindQuestion {
            hardness: Some(Spread::exact(Hardness::hrc(hrc))),
            ..surface
        };
        assert_eq!(when_to_grind(&at(65.0)), []);
        let most = HARDEST_TURNED;
        assert_eq!(
            when_to_grind(&at(65.5)),
            [GrindReason::HarderThanTurned { most }]
        );
        let least = tool_usual(T::CubicBoronNitride).depth_least;
        let stock = |mm| GrindQuestion {
            stock_on_radius: Length::mm(mm),
            ..surface
        };
        assert_eq!(when_to_grind(&stock(least.to_mm())), []);
        assert_eq!(
            when_to_grind(&stock(0.01)),
            [GrindReason::LittleStock { least }]
        );
        assert_eq!(when_to_grind(&stock(0.0)), []);
        // IT5 over 18 and up to 30 mm is 9 µm.
        let finest = Length::um(9.0);
        let fine = GrindQuestion {
            tolerance: Some(Length::um(8.0)),
            ..surface
        };
        assert_eq!(
            when_to_grind(&fine),
            [GrindReason::FineTolerance { finest }]
        );
        assert_eq!(
            when_to_grind(&GrindQuestion {
                tolerance: None,
                ..fine
            }),
            []
        );
    }
}
