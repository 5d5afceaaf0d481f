//! The cutting edge: its shape, its kind, and how much of it is in the cut.
//!
//! Angles of the edge are to the direction of feed: 90° is a tool for square shoulders. Depth is on radius.
//! What the nose does is put into an equivalent chip of even thickness, as long as the edge in the cut is.

use core::f64::consts::PI;

use serde::Serialize;

use crate::quantity::{Angle, Feed, Length};
use crate::tables::Spread;

/// The shape of a turning tool, as the cut sees it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ToolEdge {
    /// Nose radius; zero for a sharp corner.
    pub nose_radius: Length,
    /// From the direction of feed to the leading edge, between 0° and 180°: 90° is square, 95° usual.
    pub cutting_edge_angle: Angle,
    /// Rake, positive where the chip runs off easily.
    pub rake: Angle,
    /// How blunt the edge itself is: the radius between its two faces.
    pub edge_radius: Length,
}

/// The chip of even thickness that stands for the real one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct EquivalentChip {
    /// Length of the edge in the cut.
    pub edge_length: Length,
    /// Mean thickness: the chip's section over the edge in the cut.
    pub thickness: Length,
    /// From the direction of feed to the line between the two ends of the edge in the cut.
    pub chord_angle: Angle,
}

impl EquivalentChip {
    /// The equivalent chip of an edge at a depth on radius and a feed.
    ///
    /// `None` when depth or feed is not above zero, or the edge angle not between 0° and 180°: nothing is cut.
    ///
    /// A sharp corner cuts with its straight edge alone. A feed above twice the nose radius counts the whole quarter of
    /// the nose behind the deepest point; a depth below the ridge that the feed leaves counts the nose up to that depth
    /// on both sides, and the tool then only pushes off. Neither case jumps at its border.
    ///
    /// # Accuracy
    /// The geometry is exact, but that the path of one turn is taken as a step sideways, which it is but for a
    /// millionth. That an even chip needs the same force is an approximation, within the spread of the force.
    /// # Source
    /// Own geometry; the rule of the chord (the force stands square to it) is from memory, after Colwell.
    /// # Example
    /// ```
    /// use skimwright::cutting::{EquivalentChip, ToolEdge};
    /// use skimwright::quantity::{Angle, Feed, Length};
    /// let sharp_corner = ToolEdge {
    ///     nose_radius: Length::ZERO,
    ///     cutting_edge_angle: Angle::degrees(90.0),
    ///     rake: Angle::ZERO,
    ///     edge_radius: Length::um(10.0),
    /// };
    /// let chip = EquivalentChip::of(&sharp_corner, Length::mm(2.0), Feed::mm_per_rev(0.1)).unwrap();
    /// assert!((chip.edge_length.to_mm() - 2.0).abs() < 1e-12);
    /// assert!((chip.thickness.to_mm() - 0.1).abs() < 1e-12);
    /// ```
    pub fn of(edge: &ToolEdge, depth: Length, feed: Feed) -> Option<Self> {
        let kappa = edge.cutting_edge_angle.to_radians();
        if depth <= Length::ZERO || feed <= Feed::ZERO || kappa <= 0.0 || PI <= kappa {
            return None;
        }
        let (length, chord_angle) = edge_in_cut(edge.nose_radius.to_mm(), kappa, depth, feed);
        Some(Self {
            edge_length: Length::mm(length),
            thickness: Length::mm((depth * feed).to_mm2() / length),
            chord_angle: Angle::radians(chord_angle),
        })
    }
}

/// Length of the edge in the cut in millimetres, and the angle of its chord in radians.
///
/// θ is counted from the deepest point of the nose, towards the feed; h is how high the nose reaches before the
/// straight edge begins.
fn edge_in_cut(r: f64, kappa: f64, depth: Length, feed: Feed) -> (f64, f64) {
    let a = depth.to_mm();
    if r <= 0.0 {
        return (a / kappa.sin(), kappa);
    }
    let h = r * (1.0 - kappa.cos());
    let (theta_1, straight) = if a <= h {
        ((1.0 - a / r).acos(), 0.0)
    } else {
        (kappa, (a - h) / kappa.sin())
    };
    let half_feed = (feed.in_one_turn().to_mm() / (2.0 * r)).min(1.0);
    let behind = half_feed.asin();
    // Where the depth is less than the ridge of the feed, the nose dips in and out within one turn.
    let ridge = r * (1.0 - behind.cos());
    let theta_0 = -(if a < ridge { theta_1 } else { behind });
    let length = r * (theta_1 - theta_0) + straight;
    let (x_0, y_0) = (r * theta_0.sin(), r * (1.0 - theta_0.cos()));
    let x_1 = r * theta_1.sin() + straight * kappa.cos();
    let y_1 = r * (1.0 - theta_1.cos()) + straight * kappa.sin();
    (length, (y_1 - y_0).atan2(x_1 - x_0))
}

/// The chip of the simple rule that leaves out the nose: thickness f · sin κ, edge in the cut a/sin κ.
///
/// `None` as for [`EquivalentChip::of`].
///
/// # Accuracy
/// Good where the depth is many times the nose radius; too thick a chip, so too low a force, elsewhere.
/// # Source
/// Books of machining, orthogonal turning.
pub fn chip_without_nose(edge: &ToolEdge, depth: Length, feed: Feed) -> Option<EquivalentChip> {
    let sharp = ToolEdge {
        nose_radius: Length::ZERO,
        ..*edge
    };
    EquivalentChip::of(&sharp, depth, feed)
}

/// The state of the edge, as far as the force sideways goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EdgeState {
    /// Ground and keen: high-speed steel or positive carbide.
    Sharp,
    /// An insert for general use.
    General,
    /// Worn, or with a chamfer along the edge.
    WornOrChamfered,
    /// Boron nitride on steel above 45 HRC.
    HardTurning,
}

impl EdgeState {
    /// The force in the plane of the tool, square to the chord, over the tangential force.
    ///
    /// # Accuracy
    /// The spread is that between tools of one kind.
    /// # Source
    /// From memory.
    pub const fn normal_share(self) -> Spread<f64> {
        let (low, typical, high) = match self {
            Self::Sharp => (0.35, 0.43, 0.5),
            Self::General => (0.5, 0.6, 0.7),
            Self::WornOrChamfered => (0.7, 0.85, 1.0),
            Self::HardTurning => (1.0, 1.5, 2.0),
        };
        Spread { low, typical, high }
    }
}

#[cfg(test)]
mod tests {
    use core::f64::consts::FRAC_PI_2;

    use super::*;

    fn edge(nose: f64, kappa: f64) -> ToolEdge {
        ToolEdge {
            nose_radius: Length::mm(nose),
            cutting_edge_angle: Angle::degrees(kappa),
            rake: Angle::ZERO,
            edge_radius: Length::um(10.0),
        }
    }

    fn chip(nose: f64, kappa: f64, depth: f64, feed: f64) -> EquivalentChip {
        EquivalentChip::of(
            &edge(nose, kappa),
            Length::mm(depth),
            Feed::mm_per_rev(feed),
        )
        .unwrap()
    }

    #[track_caller]
    fn alike(one: EquivalentChip, other: EquivalentChip, within: f64) {
        for (a, b) in [
            (one.edge_length.to_mm(), other.edge_length.to_mm()),
            (one.thickness.to_mm(), other.thickness.to_mm()),
            (one.chord_angle.to_radians(), other.chord_angle.to_radians()),
        ] {
            assert!((a - b).abs() <= within, "{one:?} against {other:?}");
        }
    }

    #[test]
    fn what_cuts_nothing_has_no_chip() {
        let none = |kappa: f64, depth: f64, feed: f64| {
            EquivalentChip::of(&edge(0.4, kappa), Length::mm(depth), Feed::mm_per_rev(feed))
                .is_none()
        };
        assert!(none(95.0, 0.0, 0.1));
        assert!(none(95.0, -1.0, 0.1));
        assert!(none(95.0, 1.0, 0.0));
        assert!(none(0.0, 1.0, 0.1));
        assert!(none(180.0, 1.0, 0.1));
        assert!(!none(95.0, 1.0, 0.1));
    }

    #[test]
    fn no_border_between_the_cases_is_a_jump() {
        let hair = 1e-9;
        // A nose that vanishes is a sharp corner.
        alike(chip(0.0, 75.0, 1.0, 0.2), chip(hair, 75.0, 1.0, 0.2), 1e-6);
        // Where the straight edge begins: 0.4 · (1 − cos 60°) = 0.2.
        alike(
            chip(0.4, 60.0, 0.2 - hair, 0.1),
            chip(0.4, 60.0, 0.2 + hair, 0.1),
            1e-6,
        );
        // A feed of twice the nose radius: the arc sine rises steeply there.
        alike(
            chip(0.1, 95.0, 1.0, 0.2 - hair),
            chip(0.1, 95.0, 1.0, 0.2 + hair),
            1e-3,
        );
        // A depth of the ridge: 0.5 − √(0.25 − 0.16) = 0.2 at a feed of 0.8.
        alike(
            chip(0.5, 95.0, 0.2 - hair, 0.8),
            chip(0.5, 95.0, 0.2 + hair, 0.8),
            1e-6,
        );
    }

    #[test]
    fn a_depth_below_the_ridge_only_pushes_off() {
        let chip = chip(0.5, 95.0, 0.1, 0.8);
        assert!(chip.chord_angle.to_radians().abs() < 1e-12);
    }

    /// The quarter that a feed beyond the nose counts: 0.1 · (90° + 90°) and 0.9 mm straight.
    #[test]
    fn a_feed_beyond_the_nose_counts_its_half_circle() {
        let chip = chip(0.1, 90.0, 1.0, 0.5);
        let wanted = 0.1 * (FRAC_PI_2 + FRAC_PI_2) + 0.9;
        assert!((chip.edge_length.to_mm() - wanted).abs() < 1e-12);
    }

    #[test]
    fn the_chip_without_a_nose_is_the_plain_rule() {
        let plain =
            chip_without_nose(&edge(0.8, 45.0), Length::mm(1.0), Feed::mm_per_rev(0.2)).unwrap();
        let root = 2.0_f64.sqrt();
        assert!((plain.edge_length.to_mm() - root).abs() < 1e-12);
        assert!((plain.thickness.to_mm() - 0.2 / root).abs() < 1e-12);
    }
}
