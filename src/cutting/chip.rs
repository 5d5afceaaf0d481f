//! What the chip does: which kind a material gives, when it breaks, and how thin it may be before the edge only rubs.
//!
//! Depths are on radius.

use serde::Serialize;

use super::usual::is_hard;
use crate::quantity::{Feed, Length};
use crate::tables::{Spread, ToolKind, WorkMaterial};

/// What kind of chip a material gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ChipKind {
    /// Long and tough: steel, aluminium, titanium.
    Ductile,
    /// Short curls: free-cutting brass and steel, bronze.
    FreeCutting,
    /// Crumbs: cast iron.
    CastIron,
}

impl ChipKind {
    /// The kind of a class of materials.
    ///
    /// # Source
    /// Common practice, no source.
    pub const fn of(material: WorkMaterial) -> Self {
        match material {
            WorkMaterial::Brass | WorkMaterial::Bronze => Self::FreeCutting,
            WorkMaterial::GreyIron | WorkMaterial::DuctileIron => Self::CastIron,
            WorkMaterial::LowCarbonSteel
            | WorkMaterial::MediumCarbonSteel
            | WorkMaterial::AlloySteelTempered
            | WorkMaterial::AlloySteelHard
            | WorkMaterial::ToolSteelAnnealed
            | WorkMaterial::HardenedSteel
            | WorkMaterial::CaseHardenedSteel
            | WorkMaterial::HighSpeedSteelHard
            | WorkMaterial::StainlessMartensitic
            | WorkMaterial::StainlessAustenitic
            | WorkMaterial::AluminiumAlloy
            | WorkMaterial::TitaniumAlloy => Self::Ductile,
        }
    }
}

/// Whether a class is steel soft enough to flow: all but hardened steel and other metals.
pub(super) const fn is_soft_steel(material: WorkMaterial) -> bool {
    matches!(
        material,
        WorkMaterial::LowCarbonSteel
            | WorkMaterial::MediumCarbonSteel
            | WorkMaterial::AlloySteelTempered
            | WorkMaterial::ToolSteelAnnealed
            | WorkMaterial::StainlessMartensitic
            | WorkMaterial::StainlessAustenitic
    )
}

/// What on the tool breaks the chip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ChipFormer {
    /// Moulded into an insert with a corner of 80° or 90°.
    WideInsert,
    /// Moulded into an insert with a corner of 55° or 60°.
    PointedInsert,
    /// Nothing: a brazed tip, a bit without a groove, a flat insert.
    None,
}

impl ChipFormer {
    /// What a kind of tool usually has; an insert is taken for a wide one.
    ///
    /// # Source
    /// Common practice, no source.
    pub const fn usual(tool: ToolKind) -> Self {
        match tool {
            ToolKind::IndexableCarbide => Self::WideInsert,
            ToolKind::HighSpeedSteel
            | ToolKind::BrazedCarbide
            | ToolKind::IndexableFlat
            | ToolKind::CubicBoronNitride
            | ToolKind::Ceramic
            | ToolKind::Grinding => Self::None,
        }
    }
}

/// Whether the cut is one of the first or one of the last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum CutStage {
    /// Taking metal off.
    Rough,
    /// Coming to size.
    Finish,
}

/// Within what the chip breaks.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ChipWindow {
    /// The least feed: below it the chip is too thin to fold.
    pub least_feed: Feed,
    /// The largest feed: above it the former jams.
    pub largest_feed: Feed,
    /// The least depth: below it the nose alone cuts and the chip has no shape.
    pub least_depth: Length,
}

impl ChipWindow {
    /// The window of a nose radius above zero; `None` without a chip former or a nose.
    ///
    /// # Accuracy
    /// A start: makers print a window for each former.
    /// # Source
    /// Largest feed (nose radius/1.6 for wide, /2.5 for pointed inserts): one maker's note. Least feed (a quarter of
    /// the nose radius) and least depth (the nose radius, two thirds of it for finishing): from memory.
    /// # Example
    /// ```
    /// use skimwright::cutting::{ChipFormer, ChipWindow, CutStage};
    /// use skimwright::quantity::Length;
    /// let window = ChipWindow::of(Length::mm(0.8), ChipFormer::WideInsert, CutStage::Rough).unwrap();
    /// assert!((window.least_feed.to_mm_per_rev() - 0.2).abs() < 1e-12);
    /// assert!((window.largest_feed.to_mm_per_rev() - 0.5).abs() < 1e-12);
    /// assert_eq!(window.least_depth, Length::mm(0.8));
    /// ```
    pub fn of(nose_radius: Length, former: ChipFormer, stage: CutStage) -> Option<Self> {
        let divisor = match former {
            ChipFormer::WideInsert => 1.6,
            ChipFormer::PointedInsert => 2.5,
            ChipFormer::None => return None,
        };
        if nose_radius <= Length::ZERO {
            return None;
        }
        let least_depth = match stage {
            CutStage::Rough => nose_radius,
            CutStage::Finish => nose_radius * (2.0 / 3.0),
        };
        Some(Self {
            least_feed: Feed::each_turn(nose_radius * 0.25),
            largest_feed: Feed::each_turn(nose_radius / divisor),
            least_depth,
        })
    }

    /// Whether a cut lies within it.
    pub fn holds(&self, depth: Length, feed: Feed) -> bool {
        self.least_feed <= feed && feed <= self.largest_feed && self.least_depth <= depth
    }
}

/// What to expect of the chip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ChipVerdict {
    /// It is short by the material's nature.
    ShortByNature,
    /// The former breaks it.
    Breaks,
    /// It may come off long: stop the feed now and then, and clear it with a hook.
    MayBeLong,
    /// It comes off as string or ribbon, which winds itself round work and hand.
    Stringy,
}

/// The feed below which tough steel comes off in strings where nothing breaks the chip. From memory.
pub const STRINGY_BELOW: Feed = Feed::mm_per_rev(0.12);

/// What to expect of the chip of a cut.
///
/// # Accuracy
/// A warning for safety, not a forecast.
/// # Source
/// [`ChipWindow::of`] and [`STRINGY_BELOW`]; that hardened steel comes off in brittle ribbons: from memory.
/// # Example
/// ```
/// use skimwright::cutting::{ChipFormer, ChipVerdict, CutStage, chip_verdict};
/// use skimwright::quantity::{Feed, Length};
/// use skimwright::tables::WorkMaterial;
/// let (nose, depth, feed) = (Length::mm(0.4), Length::mm(0.5), Feed::mm_per_rev(0.06));
/// let cut = (nose, depth, feed);
/// let verdict = chip_verdict(WorkMaterial::AlloySteelTempered, ChipFormer::None, CutStage::Rough, cut);
/// assert_eq!(verdict, ChipVerdict::Stringy);
/// ```
pub fn chip_verdict(
    material: WorkMaterial,
    former: ChipFormer,
    stage: CutStage,
    (nose_radius, depth, feed): (Length, Length, Feed),
) -> ChipVerdict {
    match ChipKind::of(material) {
        ChipKind::FreeCutting | ChipKind::CastIron => return ChipVerdict::ShortByNature,
        ChipKind::Ductile => {}
    }
    match ChipWindow::of(nose_radius, former, stage) {
        Some(window) if window.holds(depth, feed) => ChipVerdict::Breaks,
        None if feed < STRINGY_BELOW && !is_hard(material) => ChipVerdict::Stringy,
        Some(_) | None => ChipVerdict::MayBeLong,
    }
}

/// The thinnest chip that an edge still cuts, over its radius.
///
/// # Source
/// Papers on the minimum uncut chip thickness give 0.2 to 0.4; the numbers from memory.
pub const LEAST_CHIP_SHARE: Spread<f64> = Spread {
    low: 0.2,
    typical: 0.3,
    high: 0.4,
};

/// The thinnest chip that an edge of this radius still cuts: below it the edge only rubs.
///
/// # Accuracy
/// A third either way: [`LEAST_CHIP_SHARE`].
/// # Example
/// ```
/// use skimwright::cutting::least_chip_thickness;
/// use skimwright::quantity::Length;
/// let least = least_chip_thickness(Length::um(30.0));
/// assert!((least.typical.to_um() - 9.0).abs() < 1e-9);
/// ```
pub fn least_chip_thickness(edge_radius: Length) -> Spread<Length> {
    LEAST_CHIP_SHARE.map(|share| edge_radius * share)
}

/// The least feed that cuts and does not rub: three times the thinnest chip.
///
/// # Source
/// From memory.
pub fn least_feed(edge_radius: Length) -> Spread<Feed> {
    least_chip_thickness(edge_radius).map(|thinnest| Feed::each_turn(thinnest * 3.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    const TOUGH: WorkMaterial = WorkMaterial::AlloySteelTempered;

    fn verdict(material: WorkMaterial, former: ChipFormer, depth: f64, feed: f64) -> ChipVerdict {
        let cut = (Length::mm(0.8), Length::mm(depth), Feed::mm_per_rev(feed));
        chip_verdict(material, former, CutStage::Rough, cut)
    }

    #[test]
    fn the_chip_breaks_inside_the_window_alone() {
        let wide = ChipFormer::WideInsert;
        assert_eq!(verdict(TOUGH, wide, 0.8, 0.2), ChipVerdict::Breaks);
        assert_eq!(verdict(TOUGH, wide, 0.79, 0.2), ChipVerdict::MayBeLong);
        assert_eq!(verdict(TOUGH, wide, 0.8, 0.19), ChipVerdict::MayBeLong);
        assert_eq!(verdict(TOUGH, wide, 0.8, 0.51), ChipVerdict::MayBeLong);
        let pointed = ChipFormer::PointedInsert;
        assert_eq!(verdict(TOUGH, pointed, 0.8, 0.32), ChipVerdict::Breaks);
        assert_eq!(verdict(TOUGH, pointed, 0.8, 0.33), ChipVerdict::MayBeLong);
    }

    #[test]
    fn without_a_former_fine_feeds_in_tough_steel_string() {
        let none = ChipFormer::None;
        assert_eq!(verdict(TOUGH, none, 1.0, 0.119), ChipVerdict::Stringy);
        assert_eq!(verdict(TOUGH, none, 1.0, 0.12), ChipVerdict::MayBeLong);
        let hard = WorkMaterial::HardenedSteel;
        assert_eq!(verdict(hard, none, 0.2, 0.08), ChipVerdict::MayBeLong);
        for short in [WorkMaterial::Brass, WorkMaterial::GreyIron] {
            assert_eq!(verdict(short, none, 1.0, 0.05), ChipVerdict::ShortByNature);
        }
    }

    #[test]
    fn a_finishing_cut_may_be_two_thirds_of_the_nose() {
        let window =
            ChipWindow::of(Length::mm(0.6), ChipFormer::WideInsert, CutStage::Finish).unwrap();
        assert!((window.least_depth.to_mm() - 0.4).abs() < 1e-12);
        assert!(ChipWindow::of(Length::ZERO, ChipFormer::WideInsert, CutStage::Finish).is_none());
        assert!(ChipWindow::of(Length::mm(0.4), ChipFormer::None, CutStage::Finish).is_none());
    }

    /// 0.3 of 60 µm is 18, and three times that the feed.
    #[test]
    fn the_least_feed_follows_the_edge() {
        let blunt = Length::um(60.0);
        assert!((least_feed(blunt).typical.to_mm_per_rev() - 0.054).abs() < 1e-12);
    }
}
