//! Everything fixed that the page can say, by what it says.

use skimwright::cutting::PassKind;
use skimwright::job::{BoreBottom, BoreEnd, CentreOrder, CutOffMethod, Datum, Flats};
use skimwright::link::LinkError;
use skimwright::plan::Level;
use skimwright::quantity::Units;
use skimwright::rework::CutKind;
use skimwright::sheet::Measure;
use skimwright::tables::{ShaftClass, TaperSeries, ThreadSeries, ToolKind, WorkMaterial};

use super::about::{OfBecoming, OfReceiver, OfShop, OfStrength, OfTaper};
use super::about_cut::OfCut;
use super::about_jobs::OfJobs;
use super::about_lathe::OfLathe;
use super::about_owner::OfOwner;
use super::about_print::OfPrint;
use super::about_sharing::OfSharing;
use super::about_time::OfTime;
use crate::page::edit::{Kind, List};
use crate::page::state::{Look, Saved, Shown, Stage};

/// A fixed text of the page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Text {
    AppName,
    JobUntitled,
    StageName(Stage),
    StageLead(Stage),
    StagesLabel,
    Undo,
    Redo,
    Share,
    Menu,
    Close,
    SavedState(Saved),
    // Drawing
    DrawingLabel,
    DrawingHint,
    DrawingKeyReceived,
    DrawingKeyFinished,
    DrawingKeyRemoved,
    DrawingKeyCut,
    DrawingKeyKerf,
    DrawingKeySection,
    DrawingKeyThread,
    DrawingKeyFlat,
    DrawingKeyAxis,
    DrawingMissing,
    DrawingBroken,
    DrawingLarger,
    DrawingSmaller,
    DrawingWhole,
    DimensionsAll,
    DimensionsFewer,
    SaveSvg,
    SavePng,
    Done,
    Measure(Measure),
    // Groups of fields
    GroupPart,
    GroupMoreOfPart,
    GroupErrors,
    GroupList(List),
    GroupDuty,
    GroupFinished,
    GroupReceiver,
    GroupCuttingOff,
    GroupTurning,
    GroupTimes,
    NoneListed(List),
    Full,
    Add(List),
    Remove,
    MoveOn(List),
    MoveBack(List),
    Copy(List),
    Kind(Kind),
    AtShoulder,
    BehindOneBefore,
    From(Datum),
    Flats(Flats),
    End(BoreEnd),
    Bottom(BoreBottom),
    TaperSeries(TaperSeries),
    ThreadSeries(ThreadSeries),
    Material(WorkMaterial),
    Tool(ToolKind),
    CutOffMethod(CutOffMethod),
    CentreOrder(CentreOrder),
    ToleranceClass(ShaftClass),
    ToleranceLimits,
    // Keys of our own under a field
    KeysLabel,
    KeySlash,
    KeyMinus,
    KeyPlus,
    KeyInch,
    KeyMillimetre,
    KeySpace,
    KeySemicolon,
    // Figures
    FiguresLabel,
    FigureName(Shown),
    FigureMissing,
    FigureCut,
    FigureShank,
    FigureStock,
    FigureCentre,
    FigureTime,
    FromFreeEnd,
    ToFaceOff,
    Gripped,
    NothingOff,
    NoCentreWanted,
    OnDrill,
    OnHole,
    CutKind(CutKind),
    // Findings
    FindingsLabel,
    LevelName(Level),
    ToField,
    // Passes
    PassesLabel,
    PassNumber,
    PassKind(PassKind),
    PassDial,
    PassInfeed,
    PassOff,
    PassAfter,
    PassMetal,
    PassSpeed,
    PassFeed,
    PassTime,
    PassMarks,
    NoPasses,
    NoPassesYet,
    PassesNote,
    // More figures
    MoreLabel,
    LimitsLabel,
    SectionsOffLabel,
    MetalLabel,
    MetalReceived,
    MetalOffcut,
    MetalKerf,
    MetalFacing,
    MetalTurned,
    MetalCentred,
    MetalLeft,
    // Care
    CareLabel,
    CareSetUp,
    CareDisc,
    CareDiscSpeed,
    CareHard,
    CareChips,
    CareDust,
    CareFire,
    CarePolish,
    CareLives,
    CareEstimates,
    // Passes, holding, finishing
    Cut(OfCut),
    // Charts, time and cost
    Time(OfTime),
    // The jobs that are kept
    Jobs(OfJobs),
    // What is printed and handed over
    Print(OfPrint),
    // The work at the lathe
    Lathe(OfLathe),
    // The part's owner, and links
    Owner(OfOwner),
    Sharing(OfSharing),
    // The shop and how the part is set up
    Shop(OfShop),
    // Receivers, what it could become, strength, tapers that were measured
    Receiver(OfReceiver),
    Becoming(OfBecoming),
    Strength(OfStrength),
    Taper(OfTaper),
    // Working
    WorkingFormula,
    WorkingNumbers,
    WorkingInputs,
    WorkingSource,
    WorkingEstimate,
    WorkingInfeed,
    // Notices
    BadLink(LinkError),
    BadStore,
    Visiting,
    KeepVisitor,
    BackToOwn,
    UpdateWaits,
    UpdateNow,
    Dismiss,
    // Menu
    UnitsLabel,
    UnitsName(Units),
    LanguageLabel,
    LookLabel,
    LookName(Look),
    ExamplesLabel,
    ExamplesLead,
    PrivacyLabel,
    Privacy,
    ShareTitle,
}
