//! Tools that take metal off on a lathe: their kinds, and the usual shape, cuts and life of each.
//!
//! * Source: the rule of thumb in the notes of an insert maker for the greatest feed with a chip former (nose radius
//!   over 1.6 on corners of 80 and 90 degrees); M. P. Groover, Fundamentals of Modern Manufacturing, for the form of the
//!   law of tool life, that speed matters most, then feed, then depth, and for one exponent of it (two lives of 5 and 41
//!   minutes at 160 and 100 m/min give 0.223); a course note for the ranges of that exponent for high-speed steel,
//!   carbide and ceramic. All else is common practice, from memory: see [`ToolUsual::CONFIRMED`].
//! * Units: millimetres, micrometres for edges, degrees, millimetres a revolution, minutes.
//! * What is what: for a light lathe. Depths are on radius. Rake is the working rake without the chamfer of the edge,
//!   above nought where the face leans away from the chip. The edge angle is between edge and direction of feed: 90° for
//!   a square shoulder.
//! * Left out: single grades and chip formers, wipers, threading and parting tools, diamond.
//! * Checked: as the marks say. They are what a job starts from, and the person changes them.
//! * Licence: facts only.

use super::{Confirmed, Spread};
use crate::quantity::{Angle, Feed, Length, Time};

/// What the cutting edge is made of. The numbers are stored in links and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ToolKind {
    /// High-speed steel, ground by hand or bought as a bit.
    HighSpeedSteel = 0,
    /// Uncoated carbide brazed to a shank.
    BrazedCarbide = 1,
    /// Coated carbide inserts with a chip former.
    IndexableCarbide = 2,
    /// Inserts tipped with cubic boron nitride, for hard turning.
    CubicBoronNitride = 3,
    /// Carbide inserts with a flat top, sharp and mostly uncoated: nothing folds the chip.
    IndexableFlat = 4,
    /// Ceramic inserts, mixed ones for hard steel or white ones for cast iron.
    Ceramic = 5,
    /// A grinding spindle on the tool post.
    Grinding = 6,
}

impl ToolKind {
    /// Every kind, in the order of its numbers: a new one goes to the end.
    pub const ALL: [Self; 7] = [
        Self::HighSpeedSteel,
        Self::BrazedCarbide,
        Self::IndexableCarbide,
        Self::CubicBoronNitride,
        Self::IndexableFlat,
        Self::Ceramic,
        Self::Grinding,
    ];

    /// The text that stands for it in files.
    pub const fn code(self) -> &'static str {
        match self {
            Self::HighSpeedSteel => "high-speed-steel",
            Self::BrazedCarbide => "brazed-carbide",
            Self::IndexableCarbide => "indexable-carbide",
            Self::CubicBoronNitride => "cubic-boron-nitride",
            Self::IndexableFlat => "indexable-flat",
            Self::Ceramic => "ceramic",
            Self::Grinding => "grinding",
        }
    }

    /// The kind with this code, letter for letter.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|tool| tool.code() == code)
    }

    /// Its number, as a link stores it.
    pub const fn index(self) -> u8 {
        self as u8
    }

    /// The kind with this number.
    pub fn from_index(index: u8) -> Option<Self> {
        Self::ALL.get(usize::from(index)).copied()
    }
}

/// The exponents of a tool's life, in `speed × life^exponent × feed^feed_exponent × depth^depth_exponent = constant`.
///
/// The constant belongs to a material: the low end of a window of cutting speed is taken to give the reference life.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taylor {
    /// Of the life; the smaller, the more a little speed costs.
    pub exponent: Spread<f64>,
    /// Of the feed.
    pub feed_exponent: Spread<f64>,
    /// Of the depth of cut.
    pub depth_exponent: Spread<f64>,
    /// The life that the tables of cutting speed are meant for.
    pub reference_life: Time,
}

/// The usual shape, cuts and life of a kind of tool.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToolUsual {
    /// Radius of the corner.
    pub nose_radius: Length,
    /// Angle between the cutting edge and the direction of feed.
    pub cutting_edge_angle: Angle,
    /// Working rake, the chamfer of the edge left out.
    pub rake: Angle,
    /// The least feed at which it cuts well.
    pub feed_least: Feed,
    /// The greatest feed.
    pub feed_most: Feed,
    /// The least depth, on radius, that still cuts rather than rubs.
    pub depth_least: Length,
    /// The greatest depth on radius.
    pub depth_most: Length,
    /// Radius to which the edge itself is rounded.
    pub edge_radius: Length,
    /// Edges of one tool, each used once; one where it is sharpened or dressed again.
    pub edges: u8,
    /// How its life follows from the cut; `None` for a wheel, which is dressed.
    pub taylor: Option<Taylor>,
    /// Whether the face is shaped to fold and break the chip.
    pub chip_former: bool,
}

impl ToolUsual {
    /// How far all these figures were checked, but for the greatest feed with a chip former and the form of the law.
    pub const CONFIRMED: Confirmed = Confirmed::Memory;
}

/// The usual shape, cuts and life of a kind of tool, on a light lathe.
///
/// For grinding, the corner is that of the dressed wheel, the rake and the rounding those of its grains on average, and
/// the feed its travel along the work in one revolution of the work. Forces of grinding do not follow from them.
///
/// # Accuracy
/// A start. Real tools differ: the person gives the figures of the one at hand.
/// # Source
/// The head of this file; beside each figure where it is not common practice.
/// # Example
/// ```
/// use skimwright::quantity::{Feed, Length};
/// use skimwright::tables::{ToolKind, tool_usual};
/// let insert = tool_usual(ToolKind::IndexableCarbide);
/// assert_eq!(insert.nose_radius, Length::mm(0.4));
/// assert_eq!(insert.feed_most, Feed::mm_per_rev(0.25));
/// ```
#[rustfmt::skip]
pub const fn tool_usual(kind: ToolKind) -> ToolUsual {
    let shape = match kind {
        // Edges from memory: ground or honed by hand 5 to 10 µm, thin coating 15 to 30 (thick 30 to 60, for which the
        // least depth would be 0.1 mm), boron nitride 10 to 25 and a chamfer of 0.1 mm at 20°, ceramic likewise.
        // Greatest feed with a chip former: nose radius over 1.6 (an insert maker's note), least a quarter of it.
        // Boron nitride: trade articles on hard turning give 0.1 to 0.3 mm and 0.05 to 0.25 mm a revolution.
        //                               nose  edge°  rake° feed         depth          edge µm edges former
        ToolKind::HighSpeedSteel    => (0.4, 90.0,  10.0, [0.03, 0.25], [0.02,  2.0],   8.0, 1, false),
        ToolKind::BrazedCarbide     => (0.4, 90.0,   5.0, [0.05, 0.25], [0.02,  2.0],  10.0, 1, false),
        ToolKind::IndexableCarbide  => (0.4, 95.0,   6.0, [0.10, 0.25], [0.05,  2.0],  25.0, 4, true),
        ToolKind::CubicBoronNitride => (0.8, 95.0,  -6.0, [0.05, 0.25], [0.02,  0.3],  15.0, 2, false),
        ToolKind::IndexableFlat     => (0.4, 90.0,   0.0, [0.05, 0.25], [0.02,  2.0],  10.0, 3, false),
        ToolKind::Ceramic           => (0.8, 95.0,  -6.0, [0.05, 0.20], [0.05,  0.5],  20.0, 4, false),
        // Roughing 0.01 to 0.02 mm a pass, finishing 0.005; travel well under the width of a wheel of 10 to 20 mm.
        ToolKind::Grinding          => (0.2, 90.0, -45.0, [0.20, 3.00], [0.005, 0.02],  5.0, 1, false),
    };
    let (nose, edge_angle, rake, [feed_least, feed_most], [depth_least, depth_most], edge, edges, chip_former) = shape;
    ToolUsual {
        nose_radius: Length::mm(nose),
        cutting_edge_angle: Angle::degrees(edge_angle),
        rake: Angle::degrees(rake),
        feed_least: Feed::mm_per_rev(feed_least),
        feed_most: Feed::mm_per_rev(feed_most),
        depth_least: Length::mm(depth_least),
        depth_most: Length::mm(depth_most),
        edge_radius: Length::um(edge),
        edges,
        taylor: taylor(kind),
        chip_former,
    }
}

/// Exponents of life, feed and depth: least, likely, greatest, for turning steel.
///
/// Ranges of the first: a course note for high-speed steel, carbide and ceramic. All others from memory; for the feed and
/// depth of ceramic and boron nitride, those of coated carbide for want of better.
#[rustfmt::skip]
const fn taylor(kind: ToolKind) -> Option<Taylor> {
    let (life, feed, depth, minutes) = match kind {
        ToolKind::HighSpeedSteel    => ([0.08, 0.125, 0.20], [0.50, 0.60, 0.70], [0.15, 0.20, 0.25], 60.0),
        ToolKind::BrazedCarbide
        | ToolKind::IndexableFlat   => ([0.20, 0.25,  0.30], [0.30, 0.37, 0.45], [0.10, 0.12, 0.15], 15.0),
        ToolKind::IndexableCarbide  => ([0.20, 0.25,  0.30], [0.25, 0.32, 0.40], [0.10, 0.12, 0.15], 15.0),
        ToolKind::CubicBoronNitride => ([0.30, 0.45,  0.60], [0.25, 0.32, 0.40], [0.10, 0.12, 0.15], 15.0),
        ToolKind::Ceramic           => ([0.40, 0.50,  0.60], [0.25, 0.32, 0.40], [0.10, 0.12, 0.15], 15.0),
        ToolKind::Grinding => return None,
    };
    Some(Taylor {
        exponent: spread(life),
        feed_exponent: spread(feed),
        depth_exponent: spread(depth),
        reference_life: Time::minutes(minutes),
    })
}

const fn spread([low, typical, high]: [f64; 3]) -> Spread<f64> {
    Spread { low, typical, high }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ranges_open_upwards_and_edges_can_cut_their_least_depth() {
        for kind in ToolKind::ALL {
            let usual = tool_usual(kind);
            assert!(Feed::ZERO < usual.feed_least && usual.feed_least < usual.feed_most);
            assert!(
                usual.depth_least < usual.depth_most && 0 < usual.edges,
                "{kind:?}"
            );
            // The least chip is about 0.3 of the edge's rounding, and the depth twice that (from memory).
            assert!(usual.edge_radius * 0.6 < usual.depth_least, "{kind:?}");
            assert!(usual.edge_radius.to_mm() * 0.9 < usual.feed_least.to_mm_per_rev());
            // A feed past twice the corner's radius would leave a thread.
            if kind != ToolKind::Grinding {
                assert!(usual.feed_most.to_mm_per_rev() < 2.0 * usual.nose_radius.to_mm());
            }
        }
    }

    #[test]
    fn a_chip_former_has_the_feed_of_its_corner() {
        let insert = tool_usual(ToolKind::IndexableCarbide);
        let (radius, most) = (insert.nose_radius.to_mm(), insert.feed_most.to_mm_per_rev());
        assert!((most - radius / 1.6).abs() < 1e-12);
        assert!((insert.feed_least.to_mm_per_rev() - radius / 4.0).abs() < 1e-12);
        assert_eq!(
            ToolKind::ALL
                .into_iter()
                .filter(|kind| tool_usual(*kind).chip_former)
                .count(),
            1
        );
    }

    /// Against the book's two lives of 5 and 41 minutes, against a course note's ranges, and the book's order.
    #[test]
    fn lives_are_as_printed() {
        let book = (160.0_f64 / 100.0).ln() / (41.0_f64 / 5.0).ln();
        let carbide = tool_usual(ToolKind::BrazedCarbide).taylor.unwrap().exponent;
        assert!(carbide.low < book && book < carbide.high, "{book}");
        for (kind, low, high) in [
            (ToolKind::HighSpeedSteel, 0.08, 0.20),
            (ToolKind::IndexableCarbide, 0.20, 0.30),
            (ToolKind::Ceramic, 0.40, 0.60),
        ] {
            let exponent = tool_usual(kind).taylor.unwrap().exponent;
            assert_eq!((exponent.low, exponent.high), (low, high), "{kind:?}");
        }
        for kind in ToolKind::ALL {
            let Some(taylor) = tool_usual(kind).taylor else {
                assert_eq!(kind, ToolKind::Grinding);
                continue;
            };
            for range in [taylor.exponent, taylor.feed_exponent, taylor.depth_exponent] {
                assert!(0.0 < range.low && range.low < range.typical && range.typical < range.high);
                assert!(range.high < 1.0, "speed matters most");
            }
            assert!(
                taylor.depth_exponent.high <= taylor.feed_exponent.low,
                "feed before depth"
            );
        }
    }

    #[test]
    fn codes_and_numbers_lead_back() {
        for (index, tool) in (0u8..).zip(ToolKind::ALL) {
            assert_eq!(tool.index(), index);
            assert_eq!(ToolKind::from_index(index), Some(tool));
            assert_eq!(ToolKind::from_code(tool.code()), Some(tool));
        }
        assert_eq!(ToolKind::from_index(7), None);
    }
}
