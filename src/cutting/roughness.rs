//! How rough a turned surface comes out, and the largest feed for a roughness that is wanted.
//!
//! Rt is the height from valley to peak, Ra the mean distance from the mean line. What the nose alone leaves is
//! geometry; the built-up edge, side flow and the machine add to it.

use serde::Serialize;

use super::chip::{ChipKind, is_soft_steel};
use crate::quantity::{Angle, Feed, Length, Speed};
use crate::tables::{Spread, WorkMaterial};

/// The height of the ridges that a nose leaves: Rt = r − √(r² − f²/4).
///
/// `None` when the feed is more than twice the nose radius, or there is no nose: the tool then cuts a thread, not a
/// surface.
///
/// # Accuracy
/// Exact up to [`largest_arc_feed`]. From there to twice the nose radius the straight edge behind the nose flattens
/// the ridges, so that the real height is less.
/// # Source
/// Circle of the nose; M. P. Groover, Fundamentals of Modern Manufacturing, surface roughness in machining, prints the
/// approximation.
/// # Example
/// ```
/// use skimwright::cutting::ridge_height;
/// use skimwright::quantity::{Feed, Length};
/// let height = ridge_height(Feed::mm_per_rev(0.2), Length::mm(0.8)).unwrap();
/// assert!((height.to_um() - 6.275).abs() < 0.001);
/// assert!(ridge_height(Feed::mm_per_rev(0.2), Length::mm(0.09)).is_none());
/// ```
pub fn ridge_height(feed: Feed, nose_radius: Length) -> Option<Length> {
    let (r, half_feed) = (nose_radius.to_mm(), feed.in_one_turn().to_mm() / 2.0);
    if r <= 0.0 || r < half_feed || half_feed < 0.0 {
        return None;
    }
    // The plain difference loses digits for fine feeds; this is the same with the difference taken out.
    let root = ((r - half_feed) * (r + half_feed)).sqrt();
    Some(Length::mm(half_feed * half_feed / (r + root)))
}

/// The largest feed that leaves arcs of the nose alone: f = 2 · r · sin κ′.
///
/// `end_angle`: from the finished surface to the straight edge behind the nose, above 0° and up to 90°; 5° for an
/// insert of 80° held at 95°.
///
/// # Accuracy
/// Exact.
/// # Source
/// Plain geometry.
pub fn largest_arc_feed(nose_radius: Length, end_angle: Angle) -> Feed {
    Feed::each_turn(nose_radius * (2.0 * end_angle.to_radians().sin()))
}

/// The feed that leaves ridges of a height: f = 2 · √(2 · r · Rt − Rt²); twice the nose radius for higher ones.
///
/// # Accuracy
/// Exact, as [`ridge_height`], whose inverse it is.
/// # Source
/// The same circle.
pub fn feed_for_ridge_height(height: Length, nose_radius: Length) -> Feed {
    let (r, h) = (nose_radius.to_mm().max(0.0), height.to_mm());
    let h = h.clamp(0.0, r);
    Feed::mm_per_rev(2.0 * (h * (2.0 * r - h)).sqrt())
}

/// The divisor of the handbooks' mean roughness, Ra = f²/(32 · r).
///
/// This and not the exact 18·√3 = 31.18 is used here because the measured ratios are to it.
const HANDBOOK_DIVISOR: f64 = 32.0;

/// How much the exact mean of the arcs is more than the handbooks' one, for feeds up to half the nose radius.
pub const MEAN_SHORTFALL: f64 = 0.04;

/// The mean roughness that a nose alone leaves: Ra = f²/(32 · r).
///
/// `None` as for [`ridge_height`].
///
/// # Accuracy
/// The exact mean of the arcs, f²/(18 · √3 · r), is 2.6 % more for fine feeds, and [`MEAN_SHORTFALL`] for a feed of
/// half the nose radius.
/// # Source
/// M. P. Groover, Fundamentals of Modern Manufacturing, equation 23.1.
/// # Example
/// ```
/// use skimwright::cutting::ideal_roughness;
/// use skimwright::quantity::{Feed, Length};
/// let ideal = ideal_roughness(Feed::mm_per_rev(0.16), Length::mm(0.8)).unwrap();
/// assert!((ideal.to_um() - 1.0).abs() < 1e-9);
/// ```
pub fn ideal_roughness(feed: Feed, nose_radius: Length) -> Option<Length> {
    ridge_height(feed, nose_radius)?;
    let travel = feed.in_one_turn();
    Some(travel * (travel / (nose_radius * HANDBOOK_DIVISOR)))
}

/// The feed whose nose marks alone have a mean roughness: f = √(32 · r · Ra), and no more than twice the nose radius.
///
/// # Accuracy
/// As [`ideal_roughness`], whose inverse it is.
/// # Source
/// The same, turned round.
pub fn feed_for_ideal_roughness(roughness: Length, nose_radius: Length) -> Feed {
    let r = nose_radius.max(Length::ZERO);
    let squared = (r * HANDBOOK_DIVISOR) * roughness.max(Length::ZERO);
    Feed::mm_per_rev(squared.to_mm2().sqrt()).min(Feed::each_turn(r * 2.0))
}

/// The speeds at which steel builds up an edge, worst near 20 m/min.
///
/// # Source
/// A handbook page on turned roughness over speed: about 15 to 60, gone above 80.
pub const BUILT_UP_EDGE: (Speed, Speed) = (Speed::m_per_min(15.0), Speed::m_per_min(60.0));

/// Whether a built-up edge spoils the surface: soft steel between the two speeds of [`BUILT_UP_EDGE`].
///
/// # Accuracy
/// The borders move by a third with feed, rake and lubricant.
/// # Source
/// [`BUILT_UP_EDGE`]; that hardened steel has none: from memory.
pub fn has_built_up_edge(material: WorkMaterial, speed: Speed) -> bool {
    // A speed that was worked back from the spindle's stands a hair beside the border that it was meant for.
    const HAIR: f64 = 1.0 + 1e-9;
    let (least, most) = BUILT_UP_EDGE;
    is_soft_steel(material) && least <= speed * HAIR && speed <= most * HAIR
}

/// What not to promise better than with a built-up edge: from 1.6 to 3.2 µm, whatever the feed. From memory.
const BUILT_UP_ROUGHNESS: (Length, Length) = (Length::um(1.6), Length::um(3.2));

/// What the machine itself adds to the mean roughness. From memory.
pub const MACHINE_FLOOR: Spread<Length> = Spread {
    low: Length::um(0.2),
    typical: Length::um(0.3),
    high: Length::um(0.4),
};

/// The real mean roughness over the ideal one.
///
/// # Accuracy
/// Read off trends; new edges are near the low value, worn ones near the high.
/// # Source
/// Ductile metals, 1.25 at 100 m/min, and that the ratio falls with speed: M. P. Groover, Fundamentals of Modern
/// Manufacturing, example 23.2 and the chart beside it. All other points: from memory.
pub fn roughness_ratio(chip: ChipKind, speed: Speed) -> Spread<f64> {
    // Speed in m/min, then low, likely and high; held beyond both ends.
    const DUCTILE: [(f64, [f64; 3]); 3] = [
        (25.0, [2.0, 2.2, 2.4]),
        (100.0, [1.15, 1.25, 1.4]),
        (150.0, [1.0, 1.05, 1.1]),
    ];
    const FREE_CUTTING: [(f64, [f64; 3]); 3] = [
        (25.0, [1.2, 1.35, 1.5]),
        (100.0, [1.0, 1.05, 1.15]),
        (150.0, [1.0, 1.0, 1.1]),
    ];
    const CAST_IRON: [(f64, [f64; 3]); 3] = [
        (25.0, [1.2, 1.3, 1.4]),
        (100.0, [1.2, 1.3, 1.4]),
        (150.0, [1.2, 1.3, 1.4]),
    ];
    let [slow, middle, fast] = match chip {
        ChipKind::Ductile => DUCTILE,
        ChipKind::FreeCutting => FREE_CUTTING,
        ChipKind::CastIron => CAST_IRON,
    };
    let speed = speed.to_m_per_min();
    let (from, to) = if speed < middle.0 {
        (slow, middle)
    } else {
        (middle, fast)
    };
    let share = ((speed - from.0) / (to.0 - from.0)).clamp(0.0, 1.0);
    let [low, typical, high] = from.1;
    let [low_to, typical_to, high_to] = to.1;
    let between = |one: f64, other: f64| one + (other - one) * share;
    Spread {
        low: between(low, low_to),
        typical: between(typical, typical_to),
        high: between(high, high_to),
    }
}

/// What a surface is finished with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FinishCut {
    /// Nose radius of the tool.
    pub nose_radius: Length,
    /// What is turned.
    pub material: WorkMaterial,
    /// Cutting speed.
    pub speed: Speed,
    /// What the machine adds; [`MACHINE_FLOOR`] where nothing is known of it.
    pub floor: Spread<Length>,
}

/// The largest feed for a wanted roughness; `None` where no feed gives it at this speed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FeedFor {
    /// Which keeps even the high value of the roughness at what is wanted.
    pub safe: Option<Feed>,
    /// Which brings the likely value to what is wanted.
    pub likely: Option<Feed>,
}

impl FinishCut {
    /// The mean roughness to expect: ratio times ideal, and the machine's share.
    ///
    /// `None` as for [`ridge_height`].
    ///
    /// # Accuracy
    /// The spread says it. A built-up edge lifts the likely and the high value to what may not be promised better.
    /// # Source
    /// [`roughness_ratio`], [`has_built_up_edge`], [`MACHINE_FLOOR`].
    pub fn roughness(&self, feed: Feed) -> Option<Spread<Length>> {
        let ideal = ideal_roughness(feed, self.nose_radius)?;
        let ratio = roughness_ratio(ChipKind::of(self.material), self.speed);
        let least = self.least_promised();
        Some(Spread {
            low: ideal * ratio.low + self.floor.low,
            typical: (ideal * ratio.typical + self.floor.typical).max(least.0),
            high: (ideal * ratio.high + self.floor.high).max(least.1),
        })
    }

    /// The likely and the high roughness under which nothing may be promised.
    fn least_promised(&self) -> (Length, Length) {
        if has_built_up_edge(self.material, self.speed) {
            BUILT_UP_ROUGHNESS
        } else {
            (Length::ZERO, Length::ZERO)
        }
    }

    /// The largest feed for a wanted mean roughness, and no more than twice the nose radius.
    ///
    /// # Accuracy
    /// The inverse of [`roughness`](Self::roughness).
    /// # Source
    /// The same.
    pub fn largest_feed(&self, wanted: Length) -> FeedFor {
        let ratio = roughness_ratio(ChipKind::of(self.material), self.speed);
        let least = self.least_promised();
        let feed = |ratio: f64, floor: Length, least: Length| {
            let for_the_nose = wanted - floor;
            let reachable =
                least <= wanted && for_the_nose > Length::ZERO && self.nose_radius > Length::ZERO;
            reachable.then(|| feed_for_ideal_roughness(for_the_nose / ratio, self.nose_radius))
        };
        FeedFor {
            safe: feed(ratio.high, self.floor.high, least.1),
            likely: feed(ratio.typical, self.floor.typical, least.0),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The mean of the arc itself, by summing its distance from its mean line, against Ra = f²/(32 · r).
    #[test]
    fn the_handbook_mean_falls_short_of_the_arc_by_what_is_said() {
        let r = 0.8;
        // 32/(18 · √3) − 1 for a fine feed; the others computed in Python with ten times the points.
        for (feed, wanted) in [(0.01, 0.02641), (0.2, 0.02963), (0.4, 0.03956)] {
            let steps = 20_000;
            let heights: Vec<f64> = (0..steps)
                .map(|step| (f64::from(step) + 0.5) / f64::from(steps) * feed - feed / 2.0)
                .map(|x: f64| r - (r * r - x * x).sqrt())
                .collect();
            let mean = heights.iter().sum::<f64>() / f64::from(steps);
            let exact = heights.iter().map(|y| (y - mean).abs()).sum::<f64>() / f64::from(steps);
            let ours = ideal_roughness(Feed::mm_per_rev(feed), Length::mm(r)).unwrap();
            let excess = exact / ours.to_mm() - 1.0;
            assert!((excess - wanted).abs() < 1e-4, "{feed}: {excess}");
            assert!(excess <= MEAN_SHORTFALL);
        }
    }

    #[test]
    fn ratios_go_through_their_points_and_are_held_beyond() {
        let ratio = |speed| roughness_ratio(ChipKind::Ductile, Speed::m_per_min(speed)).typical;
        assert!((ratio(5.0) - 2.2).abs() < 1e-12);
        assert!((ratio(62.5) - 1.725).abs() < 1e-12);
        assert!((ratio(100.0) - 1.25).abs() < 1e-12);
        assert!((ratio(400.0) - 1.05).abs() < 1e-12);
    }

    #[test]
    fn the_built_up_edge_is_soft_steel_at_middling_speed() {
        let steel = WorkMaterial::MediumCarbonSteel;
        let at = |material, speed| has_built_up_edge(material, Speed::m_per_min(speed));
        assert!(!at(steel, 14.9) && at(steel, 15.0) && at(steel, 60.0) && !at(steel, 60.1));
        assert!(!at(WorkMaterial::Brass, 30.0));
        assert!(!at(WorkMaterial::HardenedSteel, 30.0));
    }

    #[test]
    fn with_a_built_up_edge_no_feed_gives_a_fine_surface() {
        let slow = FinishCut {
            nose_radius: Length::mm(0.4),
            material: WorkMaterial::MediumCarbonSteel,
            speed: Speed::m_per_min(25.0),
            floor: MACHINE_FLOOR,
        };
        let feeds = slow.largest_feed(Length::um(1.5));
        assert_eq!((feeds.safe, feeds.likely), (None, None));
        let feeds = slow.largest_feed(Length::um(1.6));
        assert!(feeds.safe.is_none() && feeds.likely.is_some());
        let fast = FinishCut {
            speed: Speed::m_per_min(180.0),
            ..slow
        };
        assert!(fast.largest_feed(Length::um(0.8)).safe.is_some());
        assert!(fast.largest_feed(Length::um(0.3)).safe.is_none());
    }

    #[test]
    fn without_a_nose_there_is_no_surface() {
        assert!(ridge_height(Feed::mm_per_rev(0.1), Length::ZERO).is_none());
        assert!(ideal_roughness(Feed::mm_per_rev(0.3), Length::mm(0.1)).is_none());
        let half = ridge_height(Feed::mm_per_rev(0.2), Length::mm(0.1)).unwrap();
        assert!((half.to_mm() - 0.1).abs() < 1e-12);
    }
}
