//! The turning tool of a job with everything resolved: what was entered, or what its kind usually has.

use super::chip::ChipFormer;
use super::edge::{EdgeState, ToolEdge};
use super::tool_life::{EdgeDuty, LifeExponents, ToolLife};
use crate::job::{EdgeField, Field, Job};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::{Count, Feed, Length, Money, Time};
use crate::tables::{SpeedWindow, ToolKind, tool_usual};
use crate::working::Range;

/// The turning tool of a job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Tool {
    pub(crate) kind: ToolKind,
    pub(crate) edge: ToolEdge,
    /// The state that it is planned in.
    pub(crate) state: EdgeState,
    pub(crate) former: ChipFormer,
    /// Feeds that it is made for.
    pub(crate) feeds: Range<Feed>,
    /// Depths on radius that it is made for.
    pub(crate) depths: Range<Length>,
    /// What an edge costs, where the price is known.
    pub(crate) edge_price: Option<Money>,
    /// Time to grind it again, where that was entered.
    pub(crate) regrind: Option<Time>,
}

/// The cut for which the upper end of a window of cutting speed is printed: 1 mm deep, 0.18 mm a revolution.
///
/// # Source
/// The Ferrous Metals Data Book, chapter 9, turning data.
const REFERENCE_CUT: (Feed, Length) = (Feed::mm_per_rev(0.18), Length::mm(1.0));

impl Tool {
    /// The tool, and what is wrong with it; `None` while a figure that was entered is out of bounds or contradicts
    /// another.
    pub(crate) fn read(job: &Job, checked: &Checked) -> (Option<Self>, Vec<Finding>) {
        let mut findings = Vec::new();
        let found = read(job, checked, &mut findings);
        (found, findings)
    }

    /// How long its edge lasts in this work; `None` for a wheel, which is dressed.
    ///
    /// The upper end of the window is taken to give the usual life at the cut that it is printed for.
    pub(crate) fn life(&self, window: SpeedWindow) -> Option<ToolLife> {
        let taylor = tool_usual(self.kind).taylor?;
        let (feed, depth) = REFERENCE_CUT;
        let reference = EdgeDuty {
            speed: window.high,
            feed,
            depth,
        };
        let exponents = LifeExponents::from(taylor);
        ToolLife::new(exponents, reference, taylor.reference_life)
    }
}

fn read(job: &Job, checked: &Checked, findings: &mut Vec<Finding>) -> Option<Tool> {
    let kind = job.shop.tool;
    let usual = tool_usual(kind);
    let of = Field::Edge;
    let feeds = Range {
        low: checked.or_usual(of(EdgeField::LeastFeed), usual.feed_least)?,
        high: checked.or_usual(of(EdgeField::MostFeed), usual.feed_most)?,
    };
    let depths = Range {
        low: checked.or_usual(of(EdgeField::LeastDepth), usual.depth_least)?,
        high: checked.or_usual(of(EdgeField::MostDepth), usual.depth_most)?,
    };
    let crossed = [
        (feeds.high < feeds.low, EdgeField::MostFeed),
        (depths.high < depths.low, EdgeField::MostDepth),
    ];
    let crossed = crossed.into_iter().filter(|(is, _)| *is);
    findings.extend(crossed.map(|(_, field)| Finding::at(of(field), Code::GearsCrossed)));
    if !findings.is_empty() {
        return None;
    }
    let usual_edges = Count::pieces(f64::from(usual.edges));
    let edges: Count = checked.or_usual(of(EdgeField::Edges), usual_edges)?;
    let price: Option<Money> = checked.value(of(EdgeField::Price));
    Some(Tool {
        kind,
        edge: ToolEdge {
            nose_radius: checked.or_usual(of(EdgeField::NoseRadius), usual.nose_radius)?,
            cutting_edge_angle: checked
                .or_usual(of(EdgeField::CuttingEdgeAngle), usual.cutting_edge_angle)?,
            rake: checked.or_usual(of(EdgeField::Rake), usual.rake)?,
            edge_radius: usual.edge_radius,
        },
        state: state(kind),
        former: ChipFormer::usual(kind),
        feeds,
        depths,
        edge_price: price.map(|price| price / edges.to_pieces()),
        regrind: checked.time(of(EdgeField::RegrindTime)),
    })
}

/// The state in which a kind of edge is planned.
///
/// # Source
/// From memory, as the shares of each state are.
const fn state(kind: ToolKind) -> EdgeState {
    match kind {
        ToolKind::HighSpeedSteel | ToolKind::BrazedCarbide | ToolKind::IndexableFlat => {
            EdgeState::Sharp
        }
        ToolKind::IndexableCarbide => EdgeState::General,
        ToolKind::CubicBoronNitride | ToolKind::Ceramic | ToolKind::Grinding => {
            EdgeState::HardTurning
        }
    }
}
