//! What a plan has to say: clear, caution or stop, where, and with which figures.
//!
//! The words stand with the page; here are the codes and the values that go into them. Each code carries
//! what its mending needs: the largest diameter that would do, the longest length, the least infeed.

use serde::Serialize;

use crate::cutting::{Care, Limit};
use crate::job::Field;
use crate::quantity::{Hardness, Length, Speed, Torque};
use crate::rework::Because;

/// How bad it is; the order is from best to worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// Nothing stands against it.
    Clear,
    /// It can be done, with care.
    Caution,
    /// It cannot be done so.
    Stop,
}

/// One thing that the plan found.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finding {
    /// How bad it is.
    pub level: Level,
    /// The field to mend first.
    pub field: Field,
    /// What it is.
    #[serde(flatten)]
    pub code: Code,
}

impl Finding {
    /// A finding at a field, as bad as its code is.
    pub(crate) const fn at(field: Field, code: Code) -> Self {
        Self {
            level: code.level(),
            field,
            code,
        }
    }
}

/// What was found. Diameters are differences of diameter, places are from the shoulder.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "kebab-case")]
pub enum Code {
    /// Nothing stands against the job as entered.
    AllClear,
    /// A number outside what the field allows.
    OutOfBounds,
    /// The title is too long.
    TitleTooLong,
    /// The shank has no section.
    NoSection,
    /// More sections or holes than are planned with.
    TooMany,
    /// A taper that would come to a point before its end.
    TaperComesToAPoint,
    /// A taper steeper than 90° included.
    TaperTooSteep,
    /// Nothing is said to stand between this section and the one before.
    GapBefore {
        /// How long the gap is.
        by: Length,
        /// What to enter here instead.
        mend: Length,
    },
    /// This section is said to begin before the one before has ended.
    SectionsOverlap {
        /// By how much.
        by: Length,
        /// What to enter here instead.
        mend: Length,
    },
    /// The sections do not end where the shank does.
    LengthsDisagree {
        /// The shank as measured over all.
        whole: Length,
        /// Where the sections end.
        sum: Length,
    },
    /// A feature lies beside the shank.
    FeatureOffShank {
        /// The shank's length.
        longest: Length,
    },
    /// A feature reaches the axis, so that no shank is left.
    FeatureTooDeep,
    /// A feature does not touch the metal.
    FeatureCutsNothing,
    /// A hole across the axis stays in the finished shank.
    CrossHoleStays {
        /// Where its middle is.
        at: Length,
        /// The longest shank without it.
        longest: Length,
    },
    /// A hole is wider than the part.
    BoreTooWide {
        /// Where the part is thinnest of the places where it is.
        at: Length,
        /// The part's diameter there.
        outside: Length,
    },
    /// Holes from both ends meet.
    HolesMeet {
        /// By how much they overlap.
        by: Length,
    },
    /// The wide part of a stepped hole is no wider than the narrow one.
    StepNotWider,
    /// A hole is said to be reamed deeper than it is drilled.
    ReamBelowHole {
        /// By how much.
        by: Length,
    },
    /// The upper limit lies below the lower.
    LimitsCrossed {
        /// How far.
        by: Length,
    },
    /// The class has no deviations at this diameter.
    NoSuchLimits,
    /// The shank is shorter than the length wanted.
    ShankTooShort {
        /// How much is missing.
        short_by: Length,
        /// The longest shank to be had.
        longest: Length,
    },
    /// The finished cylinder does not lie inside the stock.
    NotCleanedUp {
        /// Where most is missing.
        at: Length,
        /// What is missing there on diameter.
        short_by: Length,
        /// The largest diameter to ask for, with this tolerance, that cleans up over the length.
        largest: Length,
        /// The longest shank that cleans up at the diameter, from the shoulder.
        longest: Length,
        /// What is in the way.
        because: Because,
    },
    /// It cleans up within the tolerance, but not at the size aimed at with the polishing stock on.
    CleansUpLow {
        /// Where least is left.
        at: Length,
        /// The largest diameter to ask for, with this tolerance, that cleans up with its polishing stock.
        largest: Length,
    },
    /// A hole breaks out of the finished shank.
    BreaksOut {
        /// Where.
        at: Length,
        /// The smallest diameter to ask for, with this tolerance, that leaves the wall advised.
        smallest: Length,
    },
    /// A wall thinner than advised.
    ThinWall {
        /// The wall.
        wall: Length,
        /// The wall advised.
        advised: Length,
        /// Where.
        at: Length,
    },
    /// The cut runs through a thread; some of it stays in the end.
    ThreadLeft {
        /// How much.
        length: Length,
    },
    /// The whole thread falls off with the offcut.
    ThreadCutAway,
    /// The thread is said to be deeper than its hole.
    ThreadBelowHole {
        /// By how much.
        by: Length,
    },
    /// What the receiver can grip is less than it must.
    GripTooShort {
        /// What it can grip.
        grip: Length,
        /// What it must.
        least: Length,
    },
    /// The receiver is shallower than the shank is long, so the shoulder stands off.
    ShoulderStandsOff {
        /// By how much.
        by: Length,
    },
    /// The receiver is made for other diameters.
    ReceiverTakesOthers {
        /// The smallest that it is made for.
        smallest: Length,
        /// The largest.
        largest: Length,
    },
    /// The receiver asks for other limits of the diameter.
    LimitsAsked {
        /// The smallest that it asks for.
        lower: Length,
        /// The largest.
        upper: Length,
    },
    /// The shank may be larger than the bore that it shall go into by hand.
    MayNotGoIn {
        /// By how much at most.
        most: Length,
    },
    /// The fillet is larger than the edge of the receiver, so that the shoulder does not come down on it.
    FilletMeetsEdge {
        /// The largest that the edge clears.
        largest: Length,
    },
    /// The shoulder is too low for a bearing ring to sit against.
    ShoulderTooLow {
        /// How high it is, on radius.
        height: Length,
        /// How high it should be.
        least: Length,
    },
    /// The shank is too short for the flat that the holder clamps.
    FlatMissesShank {
        /// The least length of shank that has the whole flat, behind its fillet.
        least: Length,
    },
    /// The shank is shorter than the standard one that the receiver is made for.
    ShorterThanStandard {
        /// The standard length.
        standard: Length,
    },
    /// The finished sleeve is thinner than advised.
    SleeveTooThin {
        /// The wall.
        wall: Length,
        /// The wall advised.
        least: Length,
    },
    /// At the greatest interference sleeve or shank would give way.
    SleeveYields,
    /// At the least interference the sleeve may not hold the torque.
    SleeveMaySlip {
        /// What it holds.
        held: Torque,
    },
    /// The hard case is turned away, in places at least.
    CaseTurnedAway {
        /// The hardness left, where it is known.
        left: Option<Hardness>,
    },
    /// The material has a hard case, and nothing is said of how deep it is.
    CaseDepthUnknown,
    /// A force without its overhang, or a power without its speed.
    DutyIncomplete,
    /// The finished shank does not bear its duty.
    DutyTooMuch {
        /// How many times the duty it bears.
        safety: f64,
    },
    /// The finished shank bears its duty with little to spare.
    SafetyLow {
        /// How many times the duty it bears.
        safety: f64,
    },
    /// The countersink is larger than the finished end leaves room for.
    CountersinkTooWide {
        /// The flat of the end inside the chamfer.
        end: Length,
    },
    /// The countersink is no larger than the hole that is there.
    CountersinkInHole {
        /// The hole at the finished face.
        bore: Length,
    },
    /// The countersink ends on the thread, where the live centre would bear.
    CountersinkOnThread {
        /// The thread's major diameter.
        major: Length,
    },
    /// No standard centre drill makes this countersink.
    NoCentreDrill {
        /// The largest that one makes.
        largest: Length,
    },
    /// The point of a live centre would touch the bottom.
    PointTouchesBottom {
        /// How deep the hole must be at least below the face.
        least_depth: Length,
    },
    /// The fillet is higher than the shoulder.
    FilletTooLarge {
        /// The largest that fits under the shoulder.
        largest: Length,
    },
    /// The shank as received has not the metal for the whole fillet.
    FilletInPart {
        /// The largest that there is metal for.
        largest: Length,
    },
    /// Fillet and chamfer leave no straight shank.
    NoStraightShank,
    /// The head is no larger than the finished shank, so there is no shoulder.
    NoShoulder,
    /// The inside corner at the shoulder is sharp.
    SharpShoulder,
    /// The finished end is sharp.
    SharpEnd,
    /// There is no room for a cut: the end is faced back.
    FacedBack {
        /// What is faced off.
        by: Length,
    },
    /// The shank has the length wanted already.
    LengthAlready,
    /// There is nothing to turn off.
    NothingToTurn,
    /// The last cuts are finer than the tool can cut.
    InfeedTooFine {
        /// The infeed on radius.
        infeed: Length,
        /// The least that this kind of tool cuts.
        least: Length,
    },
    /// There is less stock than the two last cuts want.
    LastCutsReduced {
        /// What each takes off the diameter now.
        each: Length,
    },
    /// More passes than are planned with.
    TooManyPasses,
    /// The tool does not cut this material.
    ToolCannotCut,
    /// Of high-speed steels only the cobalt grades cut this material.
    CobaltGradeNeeded,
    /// The tool cuts this material only in light finishing cuts, and only up to 55 HRC.
    ToolAtItsLimit,
    /// The tool cuts this material if care is taken.
    ToolWithCare {
        /// What care.
        care: Care,
    },
    /// Some passes cut below the hard case with boron nitride, which sticks to soft steel.
    SoftCoreUnderTool {
        /// The first such pass, from 1.
        pass: u32,
    },
    /// A list of speeds or feeds has nothing in it that can be used.
    NoGears,
    /// The lowest of a range stands above the highest.
    GearsCrossed,
    /// A name is too long.
    NameTooLong,
    /// The head does not swing over the cross-slide.
    TooLargeToSwing {
        /// The largest diameter of the part.
        largest: Length,
    },
    /// No pass at all is possible.
    NoPass {
        /// Which limit stands in the way most.
        limit: Limit,
        /// How much of it the lightest pass would use; 1 is all.
        share: f64,
    },
    /// Every light pass is possible, but no row of passes leads to size.
    NoRowOfPasses,
    /// Two pinned passes take off the same metal.
    PinsOverlap {
        /// The other one, from 1.
        other: u32,
    },
    /// A pinned pass lies outside what is turned off.
    PinOutside {
        /// The diameter before the first pass.
        start: Length,
        /// The diameter after the last.
        end: Length,
    },
    /// A pinned pass goes over a limit.
    PinBreaks {
        /// Which.
        limit: Limit,
        /// How much of it is used; 1 is all.
        share: f64,
    },
    /// The last cuts asked for are too heavy; lighter ones are planned.
    LastCutsLighter {
        /// What each takes off the diameter now.
        each: Length,
    },
    /// In the last cuts work and lathe give way unevenly, by more than a share of the tolerance.
    GivesWay {
        /// How much the diameter will vary.
        by: Length,
        /// What is allowed.
        allowed: Length,
    },
    /// The roughness wanted is not to be had so.
    RoughnessNotReached {
        /// What is to be expected at worst.
        expected: Length,
    },
    /// The cutting speed asked for is above the window of the tool in this material.
    SpeedAboveWindow {
        /// Where the window ends.
        highest: Speed,
    },
    /// Cost was to be least, and no rate is entered.
    NoRate,
    /// Three times of a step do not stand in order.
    TimesCrossed,
    /// The part sticks out so far that it may chatter.
    MayChatter {
        /// Length over diameter.
        ratio: f64,
        /// What is easily turned so.
        easy: f64,
    },
    /// The jaws hold little of the length.
    ShortGrip {
        /// The least that holds well.
        least: Length,
    },
    /// A live centre was chosen, and the end gets no countersink.
    CentreWithoutHole,
    /// The packing of the jaws that the readings ask for is not possible.
    DialNotPossible,
    /// The indicator needs more readings, or two places that are apart.
    DialIncomplete,
    /// Grinding is advised instead of turning.
    GrindInstead,
    /// The material is harder than a saw.
    SawCannotCut,
    /// The end of hard work, or what a hot cut made hard, may be too hard for a centre drill of high-speed steel.
    HardEnd,
}
