//! What is said at the lathe: steps, readings, the next cut, doubts, parallelism, verdicts.

use skimwright::job::{Change, CutMadeKind, Instrument, WorkStep};
use skimwright::measuring::{
    DoubtKind, Takes, Verdict, VerdictIs, WhenMeasure, WhyMeasure, WhyStop,
};
use skimwright::quantity::Share;
use skimwright::work::{Dial, StepHow, StepWarning};

use super::Words;
use crate::page::lathe::{PadFor, PadPlace, PadSlot, PadWrong, Thumb};

/// A fixed text at the lathe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfLathe {
    // Steps
    StepsLabel,
    Step(WorkStep),
    How(StepHow),
    Warning(StepWarning),
    WatchLabel,
    CautionsTitle,
    ActionsLabel,
    Start,
    GoOn,
    Pause,
    Done,
    Skip,
    Back,
    Next,
    Reopen,
    SkipQuestion,
    SkipReady(SkipReason),
    SkipWhy,
    SkipYes,
    SkipNo,
    AllDone,
    GoesOn,
    NoFigure,
    NoSteps,
    // The clock
    ClockBroken,
    Overtime,
    // How it is handled
    HandlingTitle,
    ThumbLabel,
    Thumb(Thumb),
    AlarmLabel,
    AlarmOn,
    AlarmOff,
    AwakeYes,
    AwakeAsked,
    AwakeRefused,
    AwakeUnknown,
    RecordFull,
    // The next cut
    Measure,
    MeasureWhy(WhyMeasure),
    Stop,
    StopWhy(WhyStopText),
    DialOnDiameter,
    DialOnSlide,
    DialNothing,
    SpringTitle,
    PolishOff,
    Answer,
    Speed,
    Feed,
    DiameterAfter,
    SizeNow,
    Under,
    CutsLeft,
    MeasureWhen,
    ExpectedDiameter,
    MadeCut,
    OtherInfeed,
    MadeSpring,
    MadePolish,
    // What changed
    ChangedTitle,
    ChangedLead,
    Change(Change),
    Note,
    NoteKeep,
    TakesTitle,
    // Readings
    ReadingsTitle,
    EarlierTitle,
    NoReadings,
    Strike,
    Bring,
    Struck,
    // Doubts
    DoubtTitle,
    DoubtRight,
    DoubtStrike,
    // The keypad
    PadTitle(PadFor),
    PadWhat,
    PadName(PadFor),
    PadPlaceLabel,
    Place(PadPlace),
    PadSlot(PadSlot),
    PadInstrument,
    UsualMicrometer,
    PadRoom,
    PadKeep,
    PadErase,
    PadMark,
    PadKeys,
    PadPlain,
    // Parallelism
    ParallelTitle,
    NotTold,
    Parallel,
    // Verdicts
    VerdictTitle,
    Verdict(VerdictIs),
    NothingAsked,
    Limits,
    Showing,
}

/// A ready reason for leaving a step out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SkipReason {
    NotNeeded,
    DoneBefore,
    DoneElsewhere,
    Later,
}

impl SkipReason {
    pub(crate) const ALL: [Self; 4] = [
        Self::NotNeeded,
        Self::DoneBefore,
        Self::DoneElsewhere,
        Self::Later,
    ];
}

/// Why to stop, where the words are fixed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum WhyStopText {
    InTolerance,
    NotProven,
    Under,
    NoSafeCut,
    Missing,
}

impl WhyStopText {
    pub(crate) const fn of(why: WhyStop) -> Self {
        match why {
            WhyStop::InTolerance => Self::InTolerance,
            WhyStop::NotProven => Self::NotProven,
            WhyStop::Under => Self::Under,
            WhyStop::NoSafeCut => Self::NoSafeCut,
            WhyStop::Missing(_) => Self::Missing,
        }
    }
}

macro_rules! asked {
    ($($(#[$doc:meta])* $name:ident($($arg:ident: $of:ty),*) -> $gives:ty = $module:ident;)*) => {
        impl Words {$(
            $(#[$doc])*
            pub(crate) fn $name(self, $($arg: $of),*) -> $gives {
                spoken!(self, $module::$name(self, $($arg),*))
            }
        )*}
    };
}
asked! {
    /// Which step of how many.
    step_count(number: usize, of: usize) -> String = lathe_steps;
    /// What the figure of a step means.
    dial_means(dial: &Dial) -> &'static str = lathe_steps;
    /// The field that is missing for advice.
    missing(field: skimwright::job::Field) -> String = lathe_said;
    /// Divisions of the dial.
    divisions(count: &str, of: &str) -> String = lathe_said;
    /// The odds of going under size.
    odds_under(odds: Share) -> String = lathe_said;
    /// When to measure again.
    when_measure(when: WhenMeasure) -> String = lathe_said;
    /// What an infeed is believed to take off.
    takes(takes: &Takes) -> Vec<String> = lathe_said;
    /// What a doubted reading was meant to be.
    i_meant(meant: &str) -> String = lathe_said;
    /// What more readings would settle.
    verdict_next(verdict: &Verdict) -> Option<String> = lathe_said;
    /// What is wrong with what was keyed in.
    pad_wrong(wrong: &PadWrong) -> String = lathe;
    /// What stays in front of the last digits that are typed.
    pad_before(before: &str, unit: &str) -> String = lathe;
    /// An instrument by its name or kind.
    instrument(instrument: &Instrument) -> String = lathe;
    /// Which kind of cut was made.
    cut_made(kind: CutMadeKind) -> &'static str = lathe_said;
    /// What is odd, in a few words, for the list.
    doubt_short(kind: DoubtKind) -> &'static str = lathe_said;
}
