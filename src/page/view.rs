//! What can be looked at, and how: stages, looks, panels, notices.

use skimwright::job::OfferMark;
use skimwright::link::LinkError;
use skimwright::strength::Load;

use super::edit::List;
use super::sharing::AnswerTold;
use super::shelf::Question;

/// The stages of a job that the page has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Stage {
    #[default]
    Received,
    Wanted,
    Plan,
    /// The work at the lathe.
    Cut,
    /// What goes back to the owner, and the proof of it.
    HandBack,
}

impl Stage {
    pub(crate) const ALL: [Self; 5] = [
        Self::Received,
        Self::Wanted,
        Self::Plan,
        Self::Cut,
        Self::HandBack,
    ];
}

/// How the page looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Look {
    #[default]
    System,
    Light,
    Dark,
    Sunlight,
}

impl Look {
    pub(crate) const ALL: [Self; 4] = [Self::System, Self::Light, Self::Dark, Self::Sunlight];
}

/// Whether what was typed is safe in the browser's storage.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Saved {
    /// Not tried since the last change.
    #[default]
    Pending,
    /// Nothing was entered.
    Nothing,
    /// Written: the browser said so.
    Yes,
    /// Written, but there is room for this one job only.
    One,
    /// There is no room; it is tried again.
    Full,
    /// The browser refused; it is tried again.
    Again,
    /// The browser keeps nothing.
    Refused,
    /// A visitor's job is looked at, which is not kept unless asked.
    Visiting,
}

/// Something to tell once, above everything else.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Notice {
    /// The link in the address could not be opened.
    BadLink(LinkError),
    /// What was stored could not be read; it is put aside.
    BadStore,
    /// What became of an answer of the owner's.
    Answer(AnswerTold),
    /// A new job was begun beside the others.
    Begun,
    /// Another tab changed the same job: both are kept.
    OtherTab,
    /// So many jobs were kept and are no longer there.
    Cleared(usize),
    /// The browser refused to keep a lathe or a tool.
    NotKept,
    /// The record at the lathe takes no more.
    RecordFull,
}

impl Notice {
    /// Whether it is about a link that brought nothing: it stands in the address until that was read.
    pub(crate) const fn is_of_link(&self) -> bool {
        match self {
            Self::BadLink(_) => true,
            Self::Answer(told) => !matches!(told, AnswerTold::Taken(_)),
            _ => false,
        }
    }
}

/// A figure whose working is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shown {
    CutFromFreeEnd,
    CutFromShoulder,
    OffcutLength,
    OffcutMass,
    ShankAfterCut,
    ShankFinished,
    Grip,
    StockOff,
    RoughEach,
    SpindleSpeed,
    ConeDepth,
    CentreDepth,
    Time,
    Cost,
    LargestDiameter,
    Wall(u8),
    SleevePressure,
    SleeveStress,
    ShaftStress,
    SleeveHolds,
    WarmerBy,
    Kept(Share),
    /// How much the shoulder raises the stress.
    Shoulder(Load),
    AgainstYield,
    AgainstFatigue,
    MassBefore,
    MassChips,
    MassAfter,
    BalanceBefore,
    BalanceAfter,
    /// Of one pass, by its place in the plan.
    PassForce(u8),
    PassPower(u8),
    PassSpeed(u8),
    /// Overhang over diameter.
    Slender,
    /// How far work and tool part.
    Deflection,
    /// Ridges of the last cut.
    Ridge,
    /// The compound slide set over.
    CompoundAngle,
    /// What the work measures now.
    SizeNow,
    /// The diameter to expect after the next cut.
    AfterNext,
    /// What to polish off next.
    PolishNext,
    /// How much the diameter grows along the shank.
    TaperFound,
    /// How far to shift the tail-stock.
    TailShift,
    /// What was measured of a tolerance, by its place among the verdicts.
    Measured(u8),
}

/// What is kept of a shank, as a share.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Share {
    Bending,
    Torsion,
    Stiffness,
    Twist,
}

impl Share {
    pub(crate) const ALL: [Self; 4] = [Self::Bending, Self::Torsion, Self::Stiffness, Self::Twist];
}

/// What covers the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Cover {
    Working(Shown),
    Menu,
    /// All jobs that are kept.
    Jobs,
    /// Links that are given away, and answers that come.
    Share,
    /// An offer as its owner saw it.
    Offer(OfferMark),
    /// Whether what is in the trash may go for good.
    EmptyTrash,
    /// Whether something that is kept may go.
    Ask(Question),
}

/// What can be opened and closed within a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Panel {
    /// A row of a list.
    Row(List, u8),
    /// The kinds of row that can be added to a list.
    Add(List),
    /// What is seldom known of a part.
    MoreOfPart,
    /// What the finished shank has to carry.
    Duty,
    /// How sure the measures of a taper are.
    Errors(u8),
    /// Which standard taper a taper is.
    Recognise(u8),
    /// What else the part could become.
    Becomes,
    /// One standard shank of those, by its place in the table.
    Shank(u8),
    /// The most that can be had.
    Most,
    /// The turning tool.
    Tool,
    /// The lathe.
    Lathe,
    /// What holds the part.
    Holding,
    /// What the indicator showed.
    Dialling,
    /// The passes that are pinned by hand.
    Pins,
    /// One of them.
    Pin(u8),
    /// The planned passes that can be pinned.
    PinPlanned,
    /// What the job costs beside its time.
    /// How long each step takes.
    StepTimes,
    Rates,
    /// The measuring instruments, and the room's temperature.
    Instruments,
    /// One of them.
    Instrument(u8),
    /// What jobs taught of the lathe.
    Learned,
    /// What widening a limit would save.
    Savings,
    /// How far work and tool give along the last cut.
    Form,
    /// What other numbers of passes would take.
    Counts,
    /// The steps that the whole time is made of.
    Steps,
    /// The steps at the lathe.
    AllSteps,
    /// What else to watch at a step.
    Cautions,
    /// What was read and done since the last cut.
    Readings,
    /// What was read and done before it.
    Earlier,
    /// What an infeed is believed to take off.
    Takes,
    /// What changed, so that an infeed takes off something else.
    Changed,
    /// Taper and barrel along the shank.
    Parallel,
    /// Each tolerance.
    Verdicts,
    /// How the screen of the lathe is used: thumb, alarm, keeping it awake.
    Handling,
    /// Files for other programs.
    Exports,
}

impl Panel {
    /// The id of the button that opens it.
    pub(crate) fn id(self) -> String {
        match self {
            Self::Row(list, index) => format!("row-{}-{index}", list.field()),
            Self::Add(list) => format!("add-{}", list.field()),
            Self::MoreOfPart => "more-of-part".to_owned(),
            Self::Duty => "duty".to_owned(),
            Self::Errors(index) => format!("errors-{index}"),
            Self::Recognise(index) => format!("recognise-{index}"),
            Self::Becomes => "becomes".to_owned(),
            Self::Shank(index) => format!("shank-{index}"),
            Self::Most => "most".to_owned(),
            Self::Tool => "tool".to_owned(),
            Self::Lathe => "lathe".to_owned(),
            Self::Holding => "holding".to_owned(),
            Self::Dialling => "dialling".to_owned(),
            Self::Pins => "pins".to_owned(),
            Self::Pin(index) => format!("pin-{index}"),
            Self::PinPlanned => "pin-planned".to_owned(),
            Self::StepTimes => "step-times".to_owned(),
            Self::Rates => "rates".to_owned(),
            Self::Instruments => "instruments".to_owned(),
            Self::Instrument(index) => format!("instrument-{index}"),
            Self::Learned => "learned".to_owned(),
            Self::Savings => "savings".to_owned(),
            Self::Form => "form".to_owned(),
            Self::Counts => "counts".to_owned(),
            Self::Steps => "steps".to_owned(),
            Self::AllSteps => "all-steps".to_owned(),
            Self::Cautions => "cautions".to_owned(),
            Self::Readings => "readings".to_owned(),
            Self::Earlier => "earlier".to_owned(),
            Self::Takes => "takes".to_owned(),
            Self::Changed => "changed".to_owned(),
            Self::Parallel => "parallel".to_owned(),
            Self::Verdicts => "verdicts".to_owned(),
            Self::Handling => "handling".to_owned(),
            Self::Exports => "exports".to_owned(),
        }
    }
}

/// A button that takes the focus after a change, as what had it is gone or has moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Spot {
    Opens(Panel),
    MovesOn(List, u8),
    MovesBack(List, u8),
    /// The detail of the pass that is picked.
    PassDetail,
    /// The button of a pass in the table.
    Pass(u8),
    /// What was done last with the jobs.
    JobsTold,
    /// The name of the step at the lathe.
    StepTitle,
    /// The question why a step is left out, and the button that asks it.
    SkipTitle,
    Skip,
}

impl Spot {
    pub(crate) fn id(self) -> String {
        match self {
            Self::Opens(panel) => panel.id(),
            Self::MovesOn(list, index) => format!("on-{}-{index}", list.field()),
            Self::MovesBack(list, index) => format!("back-{}-{index}", list.field()),
            Self::PassDetail => "pass-detail-title".to_owned(),
            Self::Pass(index) => format!("pass-{index}"),
            Self::JobsTold => "jobs-told".to_owned(),
            Self::StepTitle => "step-title".to_owned(),
            Self::SkipTitle => "skip-title".to_owned(),
            Self::Skip => "skip".to_owned(),
        }
    }

    /// Where the focus goes when that button is not there.
    pub(crate) const fn or_else(self) -> Self {
        match self {
            Self::MovesOn(list, index) | Self::MovesBack(list, index) => {
                Self::Opens(Panel::Row(list, index))
            }
            other => other,
        }
    }
}
