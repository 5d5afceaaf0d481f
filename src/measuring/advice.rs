//! What to do next at the lathe, from the plan and the record.

use serde::Serialize;

use super::taper::TaperFound;
use super::verdict::Verdict;
use crate::cutting::passes::PassKind;
use crate::job::{DialReads, Field};
use crate::quantity::{Feed, Length, RotationalSpeed, Share};
use crate::working::Figure;

/// What to do next, and what is known so far.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Advice {
    /// What the work measures now; `None` before the first reading, or after a cut that was not measured yet.
    pub size: Option<SizeNow>,
    /// What to do next.
    pub next: Next,
    /// What is believed of the infeed.
    pub takes: Takes,
    /// Readings that contradict what is believed and are not yet confirmed or struck out, the newest last.
    pub doubts: Vec<Doubt>,
    /// Taper and barrel along the shank; `None` without readings at two places.
    pub taper: Option<TaperFound>,
    /// Each tolerance that is asked for.
    pub verdicts: Vec<Verdict>,
}

/// What the work measures now.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SizeNow {
    /// The diameter at 20 °C, mean of the places measured since the last cut, with its expanded range (k = 2).
    pub diameter: Figure<Length>,
    /// Its standard uncertainty.
    pub uncertainty: Length,
    /// The smallest of the places, which must not go under the lower limit.
    pub smallest: Length,
    /// The largest of the places.
    pub largest: Length,
    /// How many readings it rests on.
    pub readings: u32,
}

/// What to do next.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Next {
    /// Measure, and why.
    Measure(WhyMeasure),
    /// Say whether the reading of the last doubt is right.
    Answer,
    /// Make a cut.
    Cut(Box<CutNext>),
    /// Polish off what is left: on diameter, with its range.
    Polish {
        /// What to polish off.
        off: Figure<Length>,
    },
    /// Stop cutting, and why.
    Stop(WhyStop),
}

/// Why to measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "why", rename_all = "kebab-case")]
pub enum WhyMeasure {
    /// Nothing was measured yet.
    First,
    /// A cut was made since.
    AfterCut,
    /// The work is too warm for what is left: let it cool first.
    TooWarm,
    /// One more reading settles what is not proven.
    ToSettle,
}

/// Why to stop cutting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "why", content = "of", rename_all = "kebab-case")]
pub enum WhyStop {
    /// In tolerance, proven.
    InTolerance,
    /// The likely size is in tolerance, but the readings cannot prove it; no cut would make it surer.
    NotProven,
    /// Already below the lower limit.
    Under,
    /// The smallest cut that this dial, edge and spring allow would more likely scrap it than not.
    NoSafeCut,
    /// Nothing can be said before this is entered or mended.
    Missing(Field),
}

/// The next cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CutNext {
    /// Which pass of the plan it is; `None` beyond the planned ones.
    pub pass: Option<u8>,
    /// What kind.
    #[serde(rename = "pass_kind")] // What is to do next has a kind of its own.
    pub kind: PassKind,
    /// Whether it goes over the same setting once more.
    pub spring: bool,
    /// How many divisions of the dial to turn in; 0 for a spring pass.
    pub divisions: u32,
    /// One division of the dial, as marked.
    pub graduation: Length,
    /// What the dial's marks mean.
    pub reads: DialReads,
    /// What is dialled in, as marked.
    pub dialled: Length,
    /// What it should take off the diameter.
    pub off_diameter: Length,
    /// The diameter to expect at 20 °C, with its range (k = 2).
    pub diameter_after: Figure<Length>,
    /// The odds of going under the lower limit.
    pub odds_under: Share,
    /// Cuts left with this one.
    pub cuts_left: u32,
    /// When to measure again.
    pub measure: WhenMeasure,
    /// Spindle speed, by the plan.
    pub spindle_speed: Option<RotationalSpeed>,
    /// Feed, by the plan.
    pub feed: Option<Feed>,
}

/// When to measure again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "when", content = "cuts", rename_all = "kebab-case")]
pub enum WhenMeasure {
    /// After this cut.
    AfterThis,
    /// After so many cuts.
    After(u32),
}

/// What an infeed takes off the diameter, as believed: an offset, and a share of the infeed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Takes {
    /// The share that comes off.
    pub share: Share,
    /// Its standard deviation.
    pub share_deviation: Share,
    /// What comes off beside it, on diameter; below nothing where the tool rubs first.
    pub offset: Length,
    /// Its standard deviation.
    pub offset_deviation: Length,
    /// Covariance of the two.
    pub covariance: Length,
    /// Scatter from cut to cut, on diameter.
    pub scatter: Length,
    /// What was dialled in and has not come off yet, on diameter: sprung away.
    pub left: Length,
    /// How many measured cuts it rests on.
    pub cuts: u32,
    /// Where the belief started.
    pub from: TakesFrom,
}

/// Where a belief about the infeed started.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TakesFrom {
    /// A wide guess.
    Guess,
    /// The stiffness of work and lathe in the plan.
    Stiffness,
    /// Other jobs on this lathe.
    Learned,
}

/// A reading that contradicts what is believed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Doubt {
    /// The event, by its place in the record.
    pub event: u32,
    /// What is odd.
    pub kind: DoubtKind,
    /// What was expected; `None` where nothing was.
    pub expected: Option<Length>,
    /// What it would be if the likely slip was made; `None` where there is none.
    pub meant: Option<Length>,
}

/// What is odd about a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum DoubtKind {
    /// 25.4 times too large or too small: inches for millimetres, or the other way round.
    WrongUnit,
    /// Off by a whole turn of the thimble, 0.5 mm or 0.025 in.
    WholeTurn,
    /// Two digits are swapped.
    SwappedDigits,
    /// The decimal mark slipped by one place.
    SlippedMark,
    /// Larger than before, though metal came off.
    Larger,
    /// Far from what the cut should have left.
    Unlikely,
    /// Larger than the part that was received.
    Impossible,
}
