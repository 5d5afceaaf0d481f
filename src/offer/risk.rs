//! What the owner of a part has to know of what the plan found: by what it means for his part, not by what the machinist
//! does about it.
//!
//! An offer holds no lathe and no tool, so what a plan of it finds about those is left aside.

use crate::job::Field;
use crate::plan::{Code, Finding, Level, Plan};

/// What can go wrong with the part, or be otherwise than hoped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Risk {
    /// Figures are missing or do not go together: the plan is not whole.
    FiguresDisagree,
    /// There is not enough metal for the size wanted.
    TooLittleMetal,
    /// A hole would open through the side.
    BreaksOut,
    /// It breaks or bends under the duty that was named.
    TooWeak,
    /// It is held on less than it asks for, or is of another size than the receiver takes.
    DoesNotFit,
    /// It may not go in, or not up to the shoulder.
    MayNotFit,
    /// It is shorter than its receiver was made for.
    ShortShank,
    /// The repair sleeve would give way or slip.
    SleeveWeak,
    /// Traces of the old surface may stay.
    TracesStay,
    /// The wall round a hole becomes thin.
    ThinWall,
    /// A thread is left where it weakens the part, or only some of one is left.
    ThreadLeft,
    /// A hole across the shank stays in it.
    HoleStays,
    /// The hard skin is turned away.
    HardnessGoes,
    /// How deep the hard skin is, is not known.
    HardnessUnknown,
    /// Under the duty that was named there is little to spare.
    LittleToSpare,
    /// The corner at the shoulder is sharp, where cracks begin.
    SharpCorner,
    /// A new centre for later work cannot be made as wanted.
    CentreInDoubt,
}

/// The risks of a plan, the worst first, each once.
pub fn risks(plan: &Plan) -> Vec<Risk> {
    let mut list: Vec<Risk> = Vec::new();
    for risk in plan.findings.iter().filter_map(risk) {
        if !list.contains(&risk) {
            list.push(risk);
        }
    }
    crate::order::by(&mut list, Ord::cmp);
    list
}

/// Whether the plan of an offer says that it cannot be done so.
pub fn is_stopped(plan: &Plan) -> bool {
    let mut found = plan.findings.iter();
    found.any(|it| it.level == Level::Stop && risk(it).is_some())
}

const fn risk(finding: &Finding) -> Option<Risk> {
    // A figure of the shop that is out of bounds says nothing of the part.
    if matches!(finding.code, Code::OutOfBounds | Code::TooMany) && is_of_shop(finding.field) {
        return None;
    }
    risk_of(finding.code)
}

/// Whether a field is of the lathe, its tool and what it is set to, of times, rates and instruments, and not of the part,
/// of what is wanted or of how its end is cut.
const fn is_of_shop(field: Field) -> bool {
    matches!(
        field,
        Field::Tool
            | Field::Edge(_)
            | Field::Machine(_)
            | Field::Aim
            | Field::RoughInfeed
            | Field::LastCut
            | Field::PolishingStock
            | Field::CuttingSpeed
            | Field::RoughFeed
            | Field::FinishFeed
            | Field::TopSpeed
            | Field::Approach
            | Field::SetTime
            | Field::ReturnTime
            | Field::MeasureTime
            | Field::PolishTime
            | Field::Step(..)
            | Field::Rate(_)
            | Field::Holding(_)
            | Field::Dial(..)
            | Field::Pins
            | Field::Pin(..)
            | Field::RoomTemperature
            | Field::Instruments
            | Field::Instrument(..)
            | Field::MeasuredBy
    )
}

const fn risk_of(code: Code) -> Option<Risk> {
    Some(match code {
        Code::OutOfBounds
        | Code::NoSection
        | Code::TooMany
        | Code::TaperComesToAPoint
        | Code::TaperTooSteep
        | Code::GapBefore { .. }
        | Code::SectionsOverlap { .. }
        | Code::LengthsDisagree { .. }
        | Code::FeatureOffShank { .. }
        | Code::FeatureTooDeep
        | Code::BoreTooWide { .. }
        | Code::ReamBelowHole { .. }
        | Code::ThreadBelowHole { .. }
        | Code::StepNotWider
        | Code::LimitsCrossed { .. }
        | Code::NoSuchLimits
        | Code::FilletTooLarge { .. }
        | Code::NoStraightShank => Risk::FiguresDisagree,
        Code::NotCleanedUp { .. } | Code::ShankTooShort { .. } => Risk::TooLittleMetal,
        Code::BreaksOut { .. } | Code::HolesMeet { .. } => Risk::BreaksOut,
        Code::DutyTooMuch { .. } => Risk::TooWeak,
        Code::GripTooShort { .. }
        | Code::ReceiverTakesOthers { .. }
        | Code::FlatMissesShank { .. } => Risk::DoesNotFit,
        Code::MayNotGoIn { .. }
        | Code::LimitsAsked { .. }
        | Code::FilletMeetsEdge { .. }
        | Code::ShoulderStandsOff { .. }
        | Code::ShoulderTooLow { .. } => Risk::MayNotFit,
        Code::ShorterThanStandard { .. } => Risk::ShortShank,
        Code::SleeveTooThin { .. } | Code::SleeveYields | Code::SleeveMaySlip { .. } => {
            Risk::SleeveWeak
        }
        Code::CleansUpLow { .. } => Risk::TracesStay,
        Code::ThinWall { .. } => Risk::ThinWall,
        Code::ThreadLeft { .. } | Code::ThreadCutAway => Risk::ThreadLeft,
        Code::CrossHoleStays { .. } => Risk::HoleStays,
        Code::CaseTurnedAway { .. } => Risk::HardnessGoes,
        Code::CaseDepthUnknown => Risk::HardnessUnknown,
        Code::SafetyLow { .. } => Risk::LittleToSpare,
        Code::SharpShoulder => Risk::SharpCorner,
        Code::CountersinkTooWide { .. }
        | Code::CountersinkInHole { .. }
        | Code::CountersinkOnThread { .. }
        | Code::NoCentreDrill { .. }
        | Code::PointTouchesBottom { .. } => Risk::CentreInDoubt,
        // The machinist's: his lathe, his tools, his figures, or nothing to worry about.
        Code::AllClear
        | Code::TitleTooLong
        | Code::NameTooLong
        | Code::FeatureCutsNothing
        | Code::DutyIncomplete
        | Code::FilletInPart { .. }
        | Code::NoShoulder
        | Code::SharpEnd
        | Code::FacedBack { .. }
        | Code::LengthAlready
        | Code::NothingToTurn
        | Code::InfeedTooFine { .. }
        | Code::LastCutsReduced { .. }
        | Code::TooManyPasses
        | Code::ToolCannotCut
        | Code::CobaltGradeNeeded
        | Code::ToolAtItsLimit
        | Code::ToolWithCare { .. }
        | Code::SoftCoreUnderTool { .. }
        | Code::NoGears
        | Code::GearsCrossed
        | Code::TooLargeToSwing { .. }
        | Code::NoPass { .. }
        | Code::NoRowOfPasses
        | Code::PinsOverlap { .. }
        | Code::PinOutside { .. }
        | Code::PinBreaks { .. }
        | Code::LastCutsLighter { .. }
        | Code::GivesWay { .. }
        | Code::RoughnessNotReached { .. }
        | Code::SpeedAboveWindow { .. }
        | Code::NoRate
        | Code::TimesCrossed
        | Code::MayChatter { .. }
        | Code::ShortGrip { .. }
        | Code::CentreWithoutHole
        | Code::DialNotPossible
        | Code::DialIncomplete
        | Code::GrindInstead
        | Code::SawCannotCut
        | Code::HardEnd => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::demo::demo_jobs;
    use crate::job::{Field, Job, Shows};
    use crate::offer::Offer;
    use crate::plan::{Finding, plan};

    #[test]
    fn what_is_the_machinists_is_left_aside_and_the_rest_is_told_once() {
        let at = |code| Finding::at(Field::WantedDiameter, code);
        let found = Plan {
            findings: vec![
                at(Code::CaseDepthUnknown),
                at(Code::SharpShoulder),
                at(Code::ToolCannotCut),
                at(Code::SharpShoulder),
                at(Code::NoRate),
            ],
            ..Plan::default()
        };
        assert_eq!(risks(&found), [Risk::HardnessUnknown, Risk::SharpCorner]);
        assert!(!is_stopped(&found));
        let stopped = Plan {
            findings: vec![at(Code::SleeveYields)],
            ..Plan::default()
        };
        assert!(is_stopped(&stopped));
        let shop = Plan {
            findings: vec![
                Finding::at(Field::CuttingSpeed, Code::OutOfBounds),
                Finding::at(Field::Instruments, Code::TooMany),
            ],
            ..Plan::default()
        };
        assert!(risks(&shop).is_empty() && !is_stopped(&shop));
        let part = Plan {
            findings: vec![Finding::at(Field::ShankLength, Code::OutOfBounds)],
            ..Plan::default()
        };
        assert_eq!(risks(&part), [Risk::FiguresDisagree]);
    }

    #[test]
    fn an_offer_tells_the_same_risks_as_its_job() {
        for job in demo_jobs() {
            let whole = plan(&job);
            let offer = Offer::of(&job, &whole, Shows::default());
            assert_eq!(risks(&plan(&offer.job)), risks(&whole), "{}", job.title);
        }
    }

    #[test]
    fn a_job_whose_figures_disagree_says_so() {
        let mut job = Job::default();
        job.part.sections.clear();
        assert!(risks(&plan(&job)).contains(&Risk::FiguresDisagree));
    }
}
