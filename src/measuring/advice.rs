//! What to do next at the lathe, from the plan and the record.

use serde::Serialize;

use crate::cutting::passes::PassKind;
use crate::job::{DialReads, Field, Job, WorkPlace};
use crate::plan::Plan;
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
#[serde(rename_all = "kebab-case")]
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

/// Taper and barrel along the shank.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TaperFound {
    /// Growth of the diameter from the shoulder end to the free end of the shank, with its range (k = 2); below nothing
    /// where the free end is thinner.
    pub over_length: Figure<Length>,
    /// The length that it is said over.
    pub length: Length,
    /// Its standard uncertainty over that length.
    pub uncertainty: Length,
    /// What the readings can tell.
    pub verdict: TaperVerdict,
    /// How far to shift the tail-stock across, toward the tool where positive; `None` where nothing should be done.
    pub shift: Option<Figure<Length>>,
    /// How much the middle stands above the line through the ends, on diameter; below nothing for a waist. `None`
    /// without three places.
    pub barrel: Option<Length>,
    /// Its standard uncertainty.
    pub barrel_uncertainty: Option<Length>,
}

/// What readings along the shank can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TaperVerdict {
    /// Parallel within what the tolerance forgives, and the readings are good enough to say so.
    Parallel,
    /// A taper is there.
    Tapered,
    /// The readings cannot tell it from noise.
    NotTold,
}

/// Whether one tolerance is kept.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Verdict {
    /// Which.
    pub of: VerdictOf,
    /// What is proven.
    pub is: VerdictIs,
    /// What was measured at 20 °C, with its expanded range; `None` where nothing was.
    pub measured: Option<Figure<Length>>,
    /// Its standard uncertainty; zero where nothing was measured.
    pub uncertainty: Length,
    /// The lower limit; `None` where there is none.
    pub lower: Option<Length>,
    /// The upper limit; `None` where there is none.
    pub upper: Option<Length>,
    /// The guard band on each side.
    pub guard: Length,
    /// The odds that it is in tolerance.
    pub odds_in: Option<Share>,
    /// How many more readings at the same place would prove it, if they show the same; `None` where none would, or
    /// nothing is left to prove.
    pub more_readings: Option<u32>,
}

/// Which tolerance.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "place", rename_all = "kebab-case")]
pub enum VerdictOf {
    /// The diameter at a place.
    Diameter(WorkPlace),
    /// Roughness Ra.
    Roughness,
}

/// What is proven of a tolerance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum VerdictIs {
    /// In tolerance.
    In,
    /// Too large: can be cut again.
    Over,
    /// Too small.
    Under,
    /// Neither is proven.
    NotProven,
    /// No reading could prove it: the instrument is too coarse for the tolerance.
    TooCoarse,
    /// Nothing was measured.
    NotMeasured,
}

/// What to do next, from the plan and the record. Pure and total.
pub fn advise(job: &Job, plan: &Plan) -> Advice {
    let _ = (job, plan);
    Advice {
        size: None,
        next: Next::Measure(WhyMeasure::First),
        takes: Takes {
            share: Share::of_whole(1.0),
            share_deviation: Share::ZERO,
            offset: Length::ZERO,
            offset_deviation: Length::ZERO,
            covariance: Length::ZERO,
            scatter: Length::ZERO,
            left: Length::ZERO,
            cuts: 0,
            from: TakesFrom::Guess,
        },
        doubts: Vec::new(),
        taper: None,
        verdicts: Vec::new(),
    }
}
