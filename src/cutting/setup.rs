//! What the passes of a job are planned with: lathe, tool, metal and holding, and what was asked of the cuts.

use super::lathe::Lathe;
use super::metal::Metal;
use super::passes::PassQuestion;
use super::roughness::{FinishCut, MACHINE_FLOOR, feed_for_ridge_height, roughness_ratio};
use super::suits::Verdict;
use super::tool::Tool;
use super::tool_life::ToolLife;
use super::usual::{usual_finish_feed, usual_infeed, usual_speed};
use super::{Care, ChipKind};
use crate::holding::Hold;
use crate::job::Field;
use crate::plan::{Code, Finding};
use crate::quantity::{Feed, Length, Speed, Time};
use crate::tables::{SpeedWindow, ToolKind};

/// What passes are planned with.
pub(super) struct Setup {
    pub(super) lathe: Lathe,
    pub(super) tool: Tool,
    pub(super) metal: Metal,
    /// Tangential force times diameter, and force along the work, that the grip withstands; `None` where nobody knows.
    pub(super) grip: Option<(f64, f64)>,
    /// Tangential force times diameter that the drive holds.
    pub(super) torque: f64,
    /// The highest cutting speed.
    pub(super) speed: Speed,
    pub(super) life: Option<ToolLife>,
    /// The deepest roughing pass, on radius.
    pub(super) most_infeed: Length,
    /// The highest feeds asked for.
    pub(super) rough_feed: Feed,
    pub(super) finish_feed: Feed,
    /// The highest feed for the finish that is wanted.
    pub(super) finish: Feed,
    pub(super) approach: Length,
    /// Where the shank ends while it is turned.
    pub(super) end: Length,
    /// Seconds of setting, returning and measuring.
    pub(super) handling: Time,
}

impl Setup {
    pub(super) fn read(question: &PassQuestion, findings: &mut Vec<Finding>) -> Option<Self> {
        let PassQuestion {
            job,
            checked,
            received,
            shank,
            ..
        } = question;
        let (lathe, found) = Lathe::read(job, checked);
        findings.extend(found);
        let (tool, found) = Tool::read(job, checked);
        findings.extend(found);
        let metal = Metal::read(job, checked, job.shop.tool);
        findings.extend(tool_finding(&metal));
        let lathe_class = job.shop.machine.rigidity;
        let window = metal.outer.suits.window;
        let usual = window.map(|window| usual_speed(window, lathe_class));
        let speed = checked.or_usual(Field::CuttingSpeed, usual);
        let end = shank.length.min(received.shank_length);
        if let (Some(window), Some(speed)) = (window, speed)
            && window.high < speed
        {
            let highest = window.high;
            let code = Code::SpeedAboveWindow { highest };
            findings.push(Finding::at(Field::CuttingSpeed, code));
        }
        let (lathe, tool, speed) = (lathe?, tool?, speed?);
        let most = checked.or_usual(
            Field::RoughInfeed,
            usual_infeed(job.part.material, job.shop.tool, lathe_class).min(tool.depths.high),
        )?;
        let finish_feed = checked.or_usual(Field::FinishFeed, usual_finish_feed(job.shop.tool))?;
        let turning = |force: crate::quantity::Force, hold: &Hold| {
            force.to_newtons() * hold.gripped_diameter.to_mm()
        };
        let grip = question.hold.and_then(|hold| {
            let (round, along) = hold.withstands()?;
            Some((turning(round, hold), along.to_newtons()))
        });
        Some(Self {
            torque: lathe
                .torque
                .map_or(f64::INFINITY, |torque| torque.to_newton_metres() * 2000.0),
            life: window.and_then(|window: SpeedWindow| tool.life(window)),
            most_infeed: most,
            rough_feed: checked.or_usual(Field::RoughFeed, tool.feeds.high)?,
            finish: finish(question, &tool, speed)?,
            finish_feed: if job.wanted.roughness.is_some() && job.shop.finish_feed.is_none() {
                tool.feeds.high
            } else {
                finish_feed
            },
            approach: checked.length(Field::Approach)?,
            handling: checked.time(Field::SetTime)?
                + checked.time(Field::ReturnTime)?
                + checked.time(Field::MeasureTime)?,
            lathe,
            tool,
            metal,
            grip,
            speed,
            end,
        })
    }

    /// The exponent of life; 1 for a wheel.
    pub(super) fn exponent(&self) -> f64 {
        self.life.map_or(1.0, |life| life.exponents().life)
    }
}

/// The highest feed that leaves the finish: what is wanted of the turned surface, or, where it is polished, ridges that
/// the polishing stock covers.
fn finish(question: &PassQuestion, tool: &Tool, speed: Speed) -> Option<Feed> {
    let PassQuestion { job, checked, .. } = question;
    // What a wheel leaves does not follow from its corner.
    if tool.kind == ToolKind::Grinding {
        return Some(tool.feeds.high);
    }
    let nose = tool.edge.nose_radius;
    let polishing = checked.length(Field::PolishingStock)?;
    let ratio = roughness_ratio(ChipKind::of(job.part.material), speed).high;
    if polishing > Length::ZERO && nose > Length::ZERO {
        // Ridges stand on both sides.
        return Some(feed_for_ridge_height(polishing / (2.0 * ratio), nose));
    }
    if job.entry(Field::Roughness).is_none() {
        return Some(tool.feeds.high);
    }
    let cut = FinishCut {
        nose_radius: nose,
        material: job.part.material,
        speed,
        floor: MACHINE_FLOOR,
    };
    let wanted = checked.length(Field::Roughness)?;
    // Where no feed gives it at this speed, the finest there is is taken, and a finding says so.
    Some(cut.largest_feed(wanted).likely.unwrap_or(tool.feeds.low))
}

/// What there is to say of the tool in this metal.
fn tool_finding(metal: &Metal) -> Option<Finding> {
    let code = match metal.outer.suits.verdict {
        Verdict::Yes => return None,
        Verdict::No(_) => Code::ToolCannotCut,
        Verdict::WithCare(Care::CobaltGrade) => Code::CobaltGradeNeeded,
        Verdict::WithCare(Care::Emergency | Care::LightCuts) => Code::ToolAtItsLimit,
        Verdict::WithCare(care) => Code::ToolWithCare { care },
    };
    Some(Finding::at(Field::Tool, code))
}
