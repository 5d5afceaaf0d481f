//! How bad each finding is.

use super::finding::{Code, Level};

impl Code {
    /// How bad it is.
    pub const fn level(self) -> Level {
        match self {
            Self::AllClear => Level::Clear,
            Self::OutOfBounds
            | Self::NoSection
            | Self::TooMany
            | Self::TaperComesToAPoint
            | Self::TaperTooSteep
            | Self::GapBefore { .. }
            | Self::SectionsOverlap { .. }
            | Self::LengthsDisagree { .. }
            | Self::FeatureTooDeep
            | Self::BoreTooWide { .. }
            | Self::LimitsCrossed { .. }
            | Self::NoSuchLimits
            | Self::ShankTooShort { .. }
            | Self::NotCleanedUp { .. }
            | Self::BreaksOut { .. }
            | Self::GripTooShort { .. }
            | Self::ReceiverTakesOthers { .. }
            | Self::FlatMissesShank { .. }
            | Self::SleeveYields
            | Self::DutyTooMuch { .. }
            | Self::CountersinkTooWide { .. }
            | Self::CountersinkInHole { .. }
            | Self::NoCentreDrill { .. }
            | Self::FilletTooLarge { .. }
            | Self::NoStraightShank
            | Self::TooManyPasses
            | Self::ToolCannotCut
            | Self::NoGears
            | Self::GearsCrossed
            | Self::TooLargeToSwing { .. }
            | Self::NoPass { .. }
            | Self::NoRowOfPasses
            | Self::PinsOverlap { .. }
            | Self::PinOutside { .. }
            | Self::PinBreaks { .. }
            | Self::TimesCrossed
            | Self::SawCannotCut => Level::Stop,
            Self::TitleTooLong
            | Self::CobaltGradeNeeded
            | Self::ToolAtItsLimit
            | Self::ToolWithCare { .. }
            | Self::SoftCoreUnderTool { .. }
            | Self::NameTooLong
            | Self::GivesWay { .. }
            | Self::LastCutsLighter { .. }
            | Self::RoughnessNotReached { .. }
            | Self::SpeedAboveWindow { .. }
            | Self::NoRate
            | Self::MayChatter { .. }
            | Self::ShortGrip { .. }
            | Self::CentreWithoutHole
            | Self::DialNotPossible
            | Self::DialIncomplete
            | Self::GrindInstead
            | Self::CleansUpLow { .. }
            | Self::ThinWall { .. }
            | Self::ThreadLeft { .. }
            | Self::ThreadCutAway
            | Self::ThreadBelowHole { .. }
            | Self::ReamBelowHole { .. }
            | Self::StepNotWider
            | Self::HolesMeet { .. }
            | Self::FeatureOffShank { .. }
            | Self::FeatureCutsNothing
            | Self::CrossHoleStays { .. }
            | Self::FilletInPart { .. }
            | Self::ShoulderStandsOff { .. }
            | Self::CountersinkOnThread { .. }
            | Self::PointTouchesBottom { .. }
            | Self::NoShoulder
            | Self::LimitsAsked { .. }
            | Self::SleeveTooThin { .. }
            | Self::SleeveMaySlip { .. }
            | Self::CaseTurnedAway { .. }
            | Self::CaseDepthUnknown
            | Self::DutyIncomplete
            | Self::SafetyLow { .. }
            | Self::MayNotGoIn { .. }
            | Self::FilletMeetsEdge { .. }
            | Self::ShoulderTooLow { .. }
            | Self::ShorterThanStandard { .. }
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
