//! How much slower to go when the cut knocks, the skin is hard, or nothing cools.

use serde::Serialize;

use crate::quantity::Length;
use crate::tables::{Spread, ToolKind};

/// What the edge is made of, as far as knocks go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EdgeMaterial {
    /// High-speed steel: tough.
    HighSpeedSteel,
    /// Carbide, brazed or as an insert; a tougher grade is better.
    Carbide,
    /// Cubic boron nitride.
    BoronNitride,
    /// Oxide or nitride ceramic: it breaks.
    Ceramic,
    /// A grinding wheel: it does not mind.
    Wheel,
}

impl From<ToolKind> for EdgeMaterial {
    fn from(tool: ToolKind) -> Self {
        match tool {
            ToolKind::HighSpeedSteel => Self::HighSpeedSteel,
            ToolKind::BrazedCarbide | ToolKind::IndexableCarbide | ToolKind::IndexableFlat => {
                Self::Carbide
            }
            ToolKind::CubicBoronNitride => Self::BoronNitride,
            ToolKind::Ceramic => Self::Ceramic,
            ToolKind::Grinding => Self::Wheel,
        }
    }
}

/// Whether the edge stays in the metal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Engagement {
    /// All the way round.
    Steady,
    /// Over flats, keyways, cross holes or a sawn corner.
    Interrupted,
}

/// What lies on the metal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Skin {
    /// Turned, ground or drawn: nothing.
    Clean,
    /// Scale, sand or rust.
    Scale,
    /// Hardened by a flame or a cut-off wheel.
    Hardened,
}

/// Whether the cut is cooled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cooling {
    /// A steady flow.
    Flood,
    /// None.
    Dry,
}

/// What to multiply the usual speed and feed with.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Derate {
    /// On the cutting speed.
    pub speed: Spread<f64>,
    /// On the feed.
    pub feed: f64,
}

/// What to multiply the usual speed and feed with; `None` where the tool is not to be used at all.
///
/// Causes multiply.
///
/// # Accuracy
/// The spread is that of the rules of thumb.
/// # Source
/// From memory: 0.7 to 0.8 on the speed and 0.8 on the feed for knocks, 0.7 to 0.8 on the speed for scale or a hard
/// skin, 0.7 for high-speed steel without coolant; carbide, boron nitride and ceramic may run dry.
/// # Example
/// ```
/// use skimwright::cutting::{Cooling, EdgeMaterial, Engagement, Skin, derate};
/// let cut = (Engagement::Interrupted, Skin::Clean, Cooling::Dry);
/// let carbide = derate(EdgeMaterial::Carbide, cut).unwrap();
/// assert_eq!((carbide.speed.typical, carbide.feed), (0.75, 0.8));
/// assert!(derate(EdgeMaterial::Ceramic, cut).is_none());
/// ```
pub fn derate(
    edge: EdgeMaterial,
    (engagement, skin, cooling): (Engagement, Skin, Cooling),
) -> Option<Derate> {
    const QUARTER_OFF: Spread<f64> = Spread {
        low: 0.7,
        typical: 0.75,
        high: 0.8,
    };
    let (for_knocks, feed) = match (engagement, edge) {
        (Engagement::Interrupted, EdgeMaterial::Ceramic) => return None,
        (Engagement::Steady, _) | (_, EdgeMaterial::Wheel) => (Spread::exact(1.0), 1.0),
        (Engagement::Interrupted, _) => (QUARTER_OFF, 0.8),
    };
    let for_skin = match skin {
        Skin::Clean => Spread::exact(1.0),
        Skin::Scale | Skin::Hardened => QUARTER_OFF,
    };
    let for_heat = match (cooling, edge) {
        (Cooling::Dry, EdgeMaterial::HighSpeedSteel) => 0.7,
        (Cooling::Dry | Cooling::Flood, _) => 1.0,
    };
    let speed = for_knocks
        .zip(for_skin)
        .map(|(knocks, skin)| knocks * skin * for_heat);
    Some(Derate { speed, feed })
}

/// How deep a flame or a cut-off wheel hardens an end face: what to assume before a centre is drilled.
///
/// # Source
/// From memory.
pub const HARDENED_END: Spread<Length> = Spread {
    low: Length::mm(0.3),
    typical: Length::mm(0.4),
    high: Length::mm(0.5),
};

/// Whether the first cut goes below the skin, so that the nose works in sound metal.
///
/// # Source
/// Common practice, no source.
pub fn first_cut_clears(depth: Length, skin: Length) -> bool {
    skin < depth
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn causes_multiply() {
        let bad = (Engagement::Interrupted, Skin::Scale, Cooling::Dry);
        let steel = derate(EdgeMaterial::HighSpeedSteel, bad).unwrap();
        assert!((steel.speed.low - 0.343).abs() < 1e-12);
        assert!((steel.speed.typical - 0.75 * 0.75 * 0.7).abs() < 1e-12);
        assert!((steel.speed.high - 0.448).abs() < 1e-12);
        let carbide = derate(EdgeMaterial::Carbide, bad).unwrap();
        assert!((carbide.speed.low - 0.49).abs() < 1e-12);
    }

    #[test]
    fn a_steady_clean_cut_is_as_usual() {
        for edge in [
            EdgeMaterial::HighSpeedSteel,
            EdgeMaterial::Carbide,
            EdgeMaterial::BoronNitride,
            EdgeMaterial::Ceramic,
        ] {
            let usual = derate(edge, (Engagement::Steady, Skin::Clean, Cooling::Flood)).unwrap();
            assert_eq!((usual.speed, usual.feed), (Spread::exact(1.0), 1.0));
        }
    }

    #[test]
    fn the_first_cut_goes_below_the_skin() {
        assert!(first_cut_clears(Length::mm(0.6), HARDENED_END.high));
        assert!(!first_cut_clears(Length::mm(0.5), HARDENED_END.high));
    }
}
