//! What a plan has to say: clear, caution or stop, where, and with which figures.
//!
//! The words stand with the page; here are the codes and the values that go into them. Each code carries
//! what its mending needs: the largest diameter that would do, the longest length, the least infeed.

use serde::Serialize;

use crate::job::Field;
use crate::quantity::Length;

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
    /// A standard taper that would come to a point before its end.
    TaperComesToAPoint,
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
    /// The material is harder than a saw.
    SawCannotCut,
    /// The end of hard work, or what a hot cut made hard, may be too hard for a centre drill of high-speed steel.
    HardEnd,
}

impl Code {
    /// How bad it is.
    pub const fn level(self) -> Level {
        match self {
            Self::AllClear => Level::Clear,
            Self::OutOfBounds
            | Self::NoSection
            | Self::TooMany
            | Self::TaperComesToAPoint
            | Self::LimitsCrossed { .. }
            | Self::NoSuchLimits
            | Self::ShankTooShort { .. }
            | Self::NotCleanedUp { .. }
            | Self::BreaksOut { .. }
            | Self::GripTooShort { .. }
            | Self::CountersinkTooWide { .. }
            | Self::CountersinkInHole { .. }
            | Self::NoCentreDrill { .. }
            | Self::FilletTooLarge { .. }
            | Self::NoStraightShank
            | Self::TooManyPasses
            | Self::ToolCannotCut
            | Self::SawCannotCut => Level::Stop,
            Self::TitleTooLong
            | Self::CobaltGradeNeeded
            | Self::ToolAtItsLimit
            | Self::CleansUpLow { .. }
            | Self::ThinWall { .. }
            | Self::ThreadLeft { .. }
            | Self::ThreadCutAway
            | Self::ThreadBelowHole { .. }
            | Self::FilletInPart { .. }
            | Self::ShoulderStandsOff { .. }
            | Self::CountersinkOnThread { .. }
            | Self::PointTouchesBottom { .. }
            | Self::NoShoulder
            | Self::SharpShoulder
            | Self::SharpEnd
            | Self::FacedBack { .. }
            | Self::LengthAlready
            | Self::NothingToTurn
            | Self::InfeedTooFine { .. }
            | Self::LastCutsReduced { .. }
            | Self::HardEnd => Level::Caution,
        }
    }
}
