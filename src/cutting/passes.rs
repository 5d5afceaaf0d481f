//! What is turned off, pass by pass: roughing, two equal last cuts, and the stock left for polishing.
//!
//! Infeeds are on radius; "off" and "after" are on diameter. A pass is as long as the metal that it meets: on a
//! taper the first passes meet only the big end, and near the shoulder each ends at the fillet.

use serde::Serialize;

use super::usual::{usual_cut, usual_speed};
use crate::job::{Field, Job};
use crate::part::{Received, SAME};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::{Feed, Length, RotationalSpeed, Speed, Time};
use crate::rework::{SizeLimits, WantedShank};
use crate::tables::Condition;
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

use super::split::{Depths, Split, rough_each};
use super::time::{CycleTime, PassTimes, cycle_time, pass_time};
use super::turning::{TURNING_SOURCE, spindle_speed, surface_speed};

/// What kind of pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PassKind {
    /// Takes metal off quickly.
    Rough,
    /// One of the two equal last cuts: the first shows what the second will do.
    Last,
    /// Brings the work to size with abrasive.
    Polish,
}

/// One pass.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// What kind.
    pub kind: PassKind,
    /// Infeed on radius; zero for polishing.
    pub infeed: Length,
    /// Metal off, on diameter.
    pub off_diameter: Length,
    /// Diameter after it.
    pub diameter_after: Length,
    /// Length of metal that it meets.
    pub metal: Length,
    /// Travel of the tool from the first metal to the last.
    pub travel: Length,
    /// Cutting speed at the diameter that it starts from.
    pub cutting_speed: Speed,
    /// Spindle speed.
    pub spindle_speed: RotationalSpeed,
    /// Feed.
    pub feed: Feed,
    /// How long it takes, all counted.
    pub time: TimeRange,
}

/// A low, a likely and a high duration.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct TimeRange {
    /// Low.
    pub low: Time,
    /// Likely.
    pub likely: Time,
    /// High.
    pub high: Time,
}

/// What comes off one section of the shank as received, as measured there: runout comes on top.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SectionStock {
    /// The section's place in the job's list.
    pub section: u8,
    /// Off the diameter at the end nearer to the shoulder.
    pub at_start: Length,
    /// Off the diameter at its far end, or at the finished end where that comes first.
    pub at_end: Length,
}

/// All that is turned off.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StockOff {
    /// The most that comes off the diameter anywhere.
    pub most: Figure<Length>,
    /// What comes off each section.
    pub sections: Vec<SectionStock>,
    /// Off the diameter in a roughing pass; `None` without roughing.
    pub rough_each: Option<Figure<Length>>,
    /// Off the diameter in each of the two last cuts.
    pub last_each: Length,
    /// Left on the diameter for polishing: what was asked for, or all where less is on.
    pub polishing: Length,
    /// The passes in order.
    pub passes: Vec<Pass>,
    /// Spindle speed of the first pass.
    pub spindle_speed: Option<Figure<RotationalSpeed>>,
    /// The cutting speed asked for: the one typed, or the usual one. A pass that the top speed holds back is slower.
    pub cutting_speed: Speed,
}

impl StockOff {
    /// Whether the work is brought to size by polishing.
    pub fn is_polished(&self) -> bool {
        self.passes.iter().any(|pass| pass.kind == PassKind::Polish)
    }
}

/// What the passes are planned from.
pub(crate) struct PassQuestion<'a> {
    pub(crate) job: &'a Job,
    pub(crate) checked: &'a Checked<'a>,
    pub(crate) received: &'a Received,
    pub(crate) shank: &'a WantedShank,
    pub(crate) limits: SizeLimits,
}

/// Plans the passes and their time; `None` while a number is missing, the tool does not cut, or there are far too many.
pub(crate) fn stock_off(question: &PassQuestion) -> (Option<(StockOff, CycleTime)>, Vec<Finding>) {
    let mut findings = Vec::new();
    let found = plan_passes(question, &mut findings);
    (found, findings)
}

fn plan_passes(
    question: &PassQuestion,
    findings: &mut Vec<Finding>,
) -> Option<(StockOff, CycleTime)> {
    let PassQuestion {
        checked,
        received,
        shank,
        limits,
        ..
    } = question;
    let end = shank.length.min(received.shank_length);
    let met = received.swept.largest(Length::ZERO, end)?;
    let start = met.radius * 2.0;
    let runout = received.off_axis.runout_at(met.z);
    let aim = limits.aim;
    let speed = cutting_speed(question, findings)?;
    let maker = PassMaker::read(question, end, speed)?;
    let depths = depths(question)?;
    let polishing = checked.length(Field::PolishingStock)?;
    // Where less is on than the polishing stock, that is all there is to polish off.
    let polishing = polishing.min((start - aim).max(Length::ZERO));
    let to_turn = start - aim - polishing;
    let split = Split::of(to_turn.max(Length::ZERO), &depths);
    if to_turn.to_mm() <= SAME {
        findings.push(Finding::at(Field::WantedDiameter, Code::NothingToTurn));
    } else {
        findings.extend(split.findings(&depths));
    }
    if split.rough_count > Job::MOST_PASSES {
        return None;
    }
    let passes = maker.all(start, &split, polishing);
    let spindle_speed = passes.first().map(|_| maker.spindle_figure(start));
    let time = cycle_time(&passes, &maker.times);
    let stock = StockOff {
        most: most_off(start, aim, runout),
        sections: section_stock(received, aim, end),
        rough_each: (split.rough_count > 0).then(|| rough_each(&split, to_turn)),
        last_each: split.last,
        polishing,
        passes,
        spindle_speed,
        cutting_speed: speed,
    };
    Some((stock, time))
}

/// The cutting speed typed, or the usual one; `None` where there is neither.
fn cutting_speed(question: &PassQuestion, findings: &mut Vec<Finding>) -> Option<Speed> {
    let (job, checked) = (question.job, question.checked);
    let found = usual_speed(job.part.material, job.shop.tool);
    let usual = found.map(|(speed, _)| speed);
    let told = match found.map(|(_, window)| window.condition) {
        None => Some(Code::ToolCannotCut),
        Some(Some(Condition::CobaltGrade)) => Some(Code::CobaltGradeNeeded),
        Some(Some(Condition::LightCutsTo55Hrc)) => Some(Code::ToolAtItsLimit),
        Some(None) => None,
    };
    findings.extend(told.map(|code| Finding::at(Field::Tool, code)));
    checked.or_usual(Field::CuttingSpeed, usual)
}

/// What the passes may take.
fn depths(question: &PassQuestion) -> Option<Depths> {
    let (job, checked) = (question.job, question.checked);
    let usual = usual_cut(job.part.material, job.shop.tool);
    Some(Depths {
        most_infeed: checked.or_usual(Field::RoughInfeed, usual.rough_infeed)?,
        least_infeed: usual.least_infeed,
        last: checked.length(Field::LastCut)?,
    })
}

#[derive(Clone, Copy)]
struct Feeds {
    rough: Feed,
    finish: Feed,
}

struct PassMaker<'a> {
    question: &'a PassQuestion<'a>,
    end: Length,
    speed: Speed,
    top_speed: RotationalSpeed,
    feeds: Feeds,
    times: PassTimes,
}

impl<'a> PassMaker<'a> {
    fn read(question: &'a PassQuestion<'a>, end: Length, speed: Speed) -> Option<Self> {
        let (job, checked) = (question.job, question.checked);
        let usual = usual_cut(job.part.material, job.shop.tool);
        Some(Self {
            question,
            end,
            speed,
            top_speed: checked.rotation(Field::TopSpeed)?,
            feeds: Feeds {
                rough: checked.or_usual(Field::RoughFeed, usual.rough_feed)?,
                finish: checked.or_usual(Field::FinishFeed, usual.finish_feed)?,
            },
            times: PassTimes::read(checked)?,
        })
    }

    fn all(&self, start: Length, split: &Split, polishing: Length) -> Vec<Pass> {
        let mut passes = Vec::new();
        let mut diameter = start;
        let rough = (0..split.rough_count).map(|_| (PassKind::Rough, split.rough_each));
        let last_cuts = if split.last.to_mm() > SAME { 2 } else { 0 };
        let last = (0..last_cuts).map(|_| (PassKind::Last, split.last));
        for (kind, off) in rough.chain(last) {
            passes.push(self.pass(kind, diameter, off));
            diameter = diameter - off;
        }
        if polishing.to_mm() > SAME {
            passes.push(self.pass(PassKind::Polish, diameter, polishing));
        }
        passes
    }

    fn pass(&self, kind: PassKind, before: Length, off: Length) -> Pass {
        let after = before - off;
        let stretches = self.metal(after);
        let metal = stretches.iter().map(|(from, to)| *to - *from).sum();
        let travel = match (stretches.first(), stretches.last()) {
            (Some((first, _)), Some((_, last))) => *last - *first,
            _ => Length::ZERO,
        };
        let spindle_speed = self.spindle_speed(before);
        let feed = match kind {
            PassKind::Rough => self.feeds.rough,
            PassKind::Last | PassKind::Polish => self.feeds.finish,
        };
        Pass {
            kind,
            infeed: if kind == PassKind::Polish {
                Length::ZERO
            } else {
                off / 2.0
            },
            off_diameter: off,
            diameter_after: after,
            metal,
            travel,
            cutting_speed: surface_speed(before, spindle_speed),
            spindle_speed,
            feed,
            time: pass_time(&self.times, kind, travel, (feed, spindle_speed)),
        }
    }

    /// Where the stock, runout counted, stands above the diameter after the pass.
    fn metal(&self, after: Length) -> Vec<(Length, Length)> {
        let PassQuestion {
            received, shank, ..
        } = self.question;
        // Near the shoulder the fillet stays, so the pass ends where the finished outline rises above it. At size
        // that is where the fillet begins: there it rises so gently that a crossing would be lost in rounding.
        let fillet_end = if (after - shank.diameter).to_mm() <= SAME {
            shank.fillet
        } else {
            let rising = shank.outer.above(after / 2.0, Length::ZERO, shank.fillet);
            rising.last().map_or(Length::ZERO, |(_, end)| *end)
        };
        received.swept.above(after / 2.0, fillet_end, self.end)
    }

    /// The spindle speed at a diameter, held below the highest allowed.
    fn spindle_speed(&self, diameter: Length) -> RotationalSpeed {
        spindle_speed(self.speed, diameter).min(self.top_speed)
    }

    /// The same with its working.
    fn spindle_figure(&self, diameter: Length) -> Figure<RotationalSpeed> {
        Figure {
            value: self.spindle_speed(diameter),
            range: None,
            working: Working {
                symbol: "n",
                formula: "min(1000 · v/(π · D), nₘₐₓ)",
                parts: &[],
                inputs: vec![
                    Input::new(
                        "v",
                        Meaning::Field(Field::CuttingSpeed),
                        Value::Speed(self.speed),
                    ),
                    Input::new("D", Meaning::EngagedDiameter, Value::size(diameter)),
                    Input::new(
                        "nₘₐₓ",
                        Meaning::Field(Field::TopSpeed),
                        Value::Rotation(self.top_speed),
                    ),
                ],
                source: TURNING_SOURCE,
            },
        }
    }
}

fn most_off(start: Length, aim: Length, runout: Length) -> Figure<Length> {
    Figure {
        value: (start - aim).max(Length::ZERO),
        range: None,
        working: Working {
            symbol: "s",
            formula: "D + T − d",
            parts: &[],
            inputs: vec![
                Input::new("D", Meaning::LargestDiameter, Value::size(start - runout)),
                Input::new("T", Meaning::RunoutThere, Value::size(runout)),
                Input::new("d", Meaning::AimedDiameter, Value::size(aim)),
            ],
            source: Source::Geometry,
        },
    }
}

/// What comes off each section that is turned, without the runout.
fn section_stock(received: &Received, aim: Length, end: Length) -> Vec<SectionStock> {
    let off = |diameter: Length| (diameter - aim).max(Length::ZERO);
    received
        .sections
        .iter()
        .filter(|section| (end - section.from).to_mm() > SAME)
        .map(|section| {
            let share = ((end - section.from) / (section.to - section.from)).min(1.0);
            let end_diameter =
                section.from_diameter + (section.to_diameter - section.from_diameter) * share;
            SectionStock {
                section: section.index,
                at_start: off(section.from_diameter),
                at_end: off(end_diameter),
            }
        })
        .collect()
}
