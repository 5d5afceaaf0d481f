//! What is said at the lathe: steps, readings, the next cut, doubts, parallelism, verdicts.

use skimwright::job::{Change, CutMadeKind, Event, Instrument, Job, WorkStep};
use skimwright::measuring::{
    Doubt, DoubtKind, Takes, TaperFound, Verdict, VerdictIs, VerdictOf, WhenMeasure, WhyMeasure,
    WhyStop,
};
use skimwright::quantity::{Length, Share, Time};
use skimwright::work::{Dial, StepFigure, StepHow, StepWarning};

use super::{Language, Words, english_lathe, english_lathe_said, english_lathe_steps};
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

macro_rules! said {
    ($($(#[$doc:meta])* $name:ident($($arg:ident: $of:ty),*) -> $gives:ty = $module:ident;)*) => {
        impl Words {$(
            $(#[$doc])*
            pub(crate) fn $name(self, $($arg: $of),*) -> $gives {
                match self.language {
                    Language::English => $module::$name(self, $($arg),*),
                }
            }
        )*}
    };
}
said! {
    /// Which step of how many.
    step_count(number: usize, of: usize) -> String = english_lathe_steps;
    /// What the figure of a step means.
    dial_means(dial: &Dial) -> &'static str = english_lathe_steps;
    /// A further figure of a step: its name and what it is.
    step_figure(figure: &StepFigure) -> (&'static str, String) = english_lathe_steps;
    /// How long a step takes by the plan.
    planned_time(times: [Time; 3]) -> String = english_lathe_steps;
    /// The field that is missing for advice.
    missing(field: skimwright::job::Field) -> String = english_lathe_said;
    /// Divisions of the dial.
    divisions(count: &str, of: &str) -> String = english_lathe_said;
    /// The odds of going under size.
    odds_under(odds: Share) -> String = english_lathe_said;
    /// When to measure again.
    when_measure(when: WhenMeasure) -> String = english_lathe_said;
    /// A value with its range.
    with_range(value: Length, range: Option<(Length, Length)>) -> String = english_lathe_said;
    /// What an infeed is believed to take off.
    takes(takes: &Takes) -> Vec<String> = english_lathe_said;
    /// An event as a line of the record.
    event(event: &Event, job: &Job) -> String = english_lathe_said;
    /// What is odd about a reading.
    doubt(read: &str, doubt: &Doubt) -> String = english_lathe_said;
    /// What a doubted reading was meant to be.
    i_meant(meant: &str) -> String = english_lathe_said;
    /// Taper and barrel along the shank, and what to do about them.
    taper_found(found: &TaperFound) -> Vec<String> = english_lathe_said;
    /// What a verdict is about.
    verdict_of(of: &VerdictOf) -> String = english_lathe_said;
    /// What was measured of a tolerance, and how sure that is.
    verdict_measured(verdict: &Verdict) -> Option<String> = english_lathe_said;
    /// The limits of a tolerance.
    verdict_limits(verdict: &Verdict) -> Option<String> = english_lathe_said;
    /// What more readings would settle.
    verdict_next(verdict: &Verdict) -> Option<String> = english_lathe_said;
    /// What is wrong with what was keyed in.
    pad_wrong(wrong: &PadWrong) -> String = english_lathe;
    /// What stays in front of the last digits that are typed.
    pad_before(before: &str, unit: &str) -> String = english_lathe;
    /// An instrument by its name or kind.
    instrument(instrument: &Instrument) -> String = english_lathe;
    /// Which kind of cut was made.
    cut_made(kind: CutMadeKind) -> &'static str = english_lathe_said;
    /// What is odd, in a few words, for the list.
    doubt_short(kind: DoubtKind) -> &'static str = english_lathe_said;
}
