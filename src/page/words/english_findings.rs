//! English: what was found, and what to do about it.

use skimwright::job::Field;
use skimwright::plan::{Code, Finding};
use skimwright::quantity::{Length, show};
use skimwright::rework::Because;
use skimwright::working::Value;

use super::{Words, english_becomes, english_fields, english_findings_cut, english_strength};
use crate::page::edit::List;

/// A finding in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct FindingWords {
    /// What it is.
    pub(crate) what: String,
    /// What would mend it.
    pub(crate) mend: String,
}

#[expect(
    clippy::too_many_lines,
    reason = "one arm a finding, in the order of the codes"
)]
pub(super) fn finding(words: Words, finding: &Finding) -> FindingWords {
    let (length, size) = (
        |value: Length| words.length(value),
        |value| words.size(value),
    );
    // A proposal is rounded to the side on which it mends.
    let (at_most, at_least) = (
        |value| words.size_at_most(value),
        |value| words.size_at_least(value),
    );
    let (long_at_most, long_at_least) = (
        |value| words.length_at_most(value),
        |value| words.length_at_least(value),
    );
    let place = |at: Length| english_strength::place(words, at);
    // The row that the finding is about, and the name of its field.
    let row = match List::of(finding.field) {
        Some((list, Some(index))) => words.row(list, index),
        _ => words.field(finding.field).to_owned(),
    };
    let its_field = || english_fields::lower_first(words.field(finding.field));
    let (what, mend) = match finding.code {
        Code::AllClear => (
            "Nothing stands against it, as far as the figures go.".to_owned(),
            "Check the part against them before the first cut: it cannot be put back.".to_owned(),
        ),
        Code::OutOfBounds => (
            format!(
                "{} cannot be planned with.",
                words.field_in_full(finding.field)
            ),
            english_fields::out_of_bounds(words, finding.field),
        ),
        Code::TitleTooLong => (
            "The name of the job is too long.".to_owned(),
            "Shorten it to 80 characters.".to_owned(),
        ),
        Code::NoSection => (
            "The shank has no section.".to_owned(),
            "Add one on Received.".to_owned(),
        ),
        Code::TooMany => (
            "There are more rows than the plan can take.".to_owned(),
            List::of(finding.field).map_or_else(String::new, |(list, _)| {
                format!("Join some of them: {} at most.", list.most())
            }),
        ),
        Code::TaperTooSteep => (
            format!("{row}: a taper steeper than 90°, side to side, is no shank."),
            format!("Check its {}: 1 in 1/2 is the steepest.", its_field()),
        ),
        Code::GapBefore { by, mend } => (
            format!("Nothing is said to stand for {} before {row}.", size(by)),
            format!(
                "Make its {} {}, or say what stands there.",
                its_field(),
                size(mend)
            ),
        ),
        Code::SectionsOverlap { by, mend } => (
            format!("{row} begins {} before the one before it ends.", size(by)),
            if mend.to_mm() < 0.01 {
                "Check the lengths of both.".to_owned()
            } else {
                format!(
                    "Make its {} {}, or check the one before.",
                    its_field(),
                    size(mend)
                )
            },
        ),
        Code::LengthsDisagree { whole, sum } => (
            format!(
                "The sections end {} from the shoulder, but the whole shank is {} long.",
                size(sum),
                size(whole)
            ),
            "Measure again. Empty the whole length where the sections are surer.".to_owned(),
        ),
        Code::FeatureOffShank { longest } => (
            format!("{row} lies beside the shank."),
            format!(
                "The shank ends {} from the shoulder: check its {}.",
                length(longest),
                its_field()
            ),
        ),
        Code::FeatureTooDeep => (
            format!("{row} reaches the axis: there would be no shank left."),
            format!("Check its {} against the diameter there.", its_field()),
        ),
        Code::FeatureCutsNothing => (
            format!("{row} does not touch the metal."),
            format!("Check its {} against the diameter there.", its_field()),
        ),
        Code::CrossHoleStays { at, longest } => (
            format!("{row} stays in the finished shank, {}.", place(at)),
            if longest.to_mm() < 0.5 {
                "No shank is free of it. Tell the owner that it stays, and take light cuts over it."
                    .to_owned()
            } else {
                format!(
                    "Keep the shank to {}, or tell the owner that it stays; take light cuts over it.",
                    long_at_most(longest)
                )
            },
        ),
        Code::BoreTooWide { at, outside } => (
            format!(
                "{row} is wider than the part: that is ⌀{} there, {}.",
                size(outside),
                place(at)
            ),
            format!("Check its {} and how deep it goes.", its_field()),
        ),
        Code::HolesMeet { by } => (
            format!("Holes from both ends meet: they overlap by {}.", length(by)),
            "Where the part is open right through, leave it so; else measure both depths again."
                .to_owned(),
        ),
        Code::StepNotWider => (
            format!(
                "The wide part of {} is no wider than the rest.",
                english_fields::lower_first(&row)
            ),
            "Measure both diameters again.".to_owned(),
        ),
        Code::ReamBelowHole { by } => (
            format!(
                "{row} is said to be reamed {} deeper than drilled.",
                length(by)
            ),
            "Measure both depths again.".to_owned(),
        ),
        Code::TaperComesToAPoint => (
            format!("{row}: this taper would come to a point before its end."),
            "Shorten the section, or check the size of the taper.".to_owned(),
        ),
        Code::LimitsCrossed { by } => (
            format!("The upper limit lies {} below the lower.", size(by)),
            "Swap the two, or check their signs.".to_owned(),
        ),
        Code::NoSuchLimits => (
            "The table has no deviations for this diameter.".to_owned(),
            "The classes reach to 180 mm. Type limits of your own.".to_owned(),
        ),
        Code::ShankTooShort { short_by, longest } => (
            format!("The shank is {} too short.", length(short_by)),
            format!("Ask for {} or less.", long_at_most(longest)),
        ),
        Code::NotCleanedUp {
            at,
            short_by,
            largest,
            longest,
            because,
        } => (
            format!(
                "There is not enough metal: {} is missing on diameter, {}. {}",
                size(short_by),
                place(at),
                in_the_way(words, because)
            ),
            english_becomes::enough_metal(words, largest, longest),
        ),
        Code::CleansUpLow { at, largest } => (
            format!(
                "It cleans up only low in the tolerance: {} is the most, {}.",
                size(largest),
                place(at)
            ),
            "Dial in closer, leave less for polishing, or accept a patch that stays.".to_owned(),
        ),
        Code::BreaksOut { at, smallest } => (
            format!("A hole breaks out of the finished shank, {}.", place(at)),
            format!(
                "Keep the finished diameter at {} or more.",
                at_least(smallest)
            ),
        ),
        Code::ThinWall { wall, advised, at } => (
            format!(
                "The wall round a hole is down to {}, {}.",
                length(wall),
                place(at)
            ),
            format!(
                "{} or more is advised. Turn less off, or tell the owner what it can bear.",
                length(advised)
            ),
        ),
        Code::ThreadLeft { length: left } => (
            format!(
                "The cut runs through a thread: {} of it stays.",
                length(left)
            ),
            "Clear the burr and chase the thread; check that the screw still finds enough."
                .to_owned(),
        ),
        Code::ThreadCutAway => (
            "The whole thread falls off with the offcut.".to_owned(),
            "If a drawbar or screw holds the part, drill and tap anew, and tell the owner."
                .to_owned(),
        ),
        Code::ThreadBelowHole { by } => (
            format!(
                "The thread is said to be {} deeper than its hole.",
                length(by)
            ),
            "Measure both depths again.".to_owned(),
        ),
        Code::GripTooShort { grip, least } => (
            format!(
                "The receiver grips only {} of the {} it needs.",
                length(grip),
                length(least)
            ),
            match finding.field {
                Field::ReceiverDepth => {
                    "Check its depth: it takes no more of the shank.".to_owned()
                }
                _ => "Leave the shank longer, or make fillet and chamfer smaller.".to_owned(),
            },
        ),
        Code::ShoulderStandsOff { by } => (
            format!(
                "The receiver is full before the shoulder meets it: {} stands out.",
                length(by)
            ),
            "Shorten the shank if the shoulder must seat; else leave it.".to_owned(),
        ),
        Code::ReceiverTakesOthers { smallest, largest } => (
            "The receiver is made for other diameters.".to_owned(),
            if smallest == largest {
                format!("It takes {}.", size(smallest))
            } else {
                format!("It takes {} to {}.", size(smallest), size(largest))
            },
        ),
        Code::LimitsAsked { lower, upper } => (
            "The receiver asks for other limits of the diameter.".to_owned(),
            format!("It asks for {} to {}.", size(lower), size(upper)),
        ),
        Code::MayNotGoIn { most } => (
            format!(
                "The shank may be up to {} larger than the bore.",
                size(most)
            ),
            "Take a looser tolerance if it must go in by hand.".to_owned(),
        ),
        Code::FilletMeetsEdge { largest } => (
            "The fillet is larger than the edge of the receiver: the shoulder stands off it."
                .to_owned(),
            if largest.to_mm() < 0.005 {
                "The edge is sharp: break it, or undercut the shoulder.".to_owned()
            } else {
                format!(
                    "Take {} or less, or undercut the shoulder.",
                    at_most(largest)
                )
            },
        ),
        Code::ShoulderTooLow { height, least } => (
            format!("The shoulder is only {} high.", size(height)),
            format!(
                "The ring should sit against {} or more: turn more off, or take a ring with a smaller chamfer.",
                at_least(least)
            ),
        ),
        Code::FlatMissesShank { least } => (
            "The shank is too short for the flat that the holder clamps.".to_owned(),
            format!("Leave it {} or longer.", long_at_least(least)),
        ),
        Code::SleeveTooThin { wall, least } => (
            format!("The finished sleeve is only {} thick.", length(wall)),
            format!(
                "Make it {} at least: turn the shank smaller or the outside larger.",
                long_at_least(least)
            ),
        ),
        Code::SleeveYields => (
            "At the tightest fit the sleeve or the shank would give way.".to_owned(),
            "Take a lighter fit or a stronger material.".to_owned(),
        ),
        Code::SleeveMaySlip { held } => (
            format!(
                "At the loosest fit the sleeve holds only {}.",
                words.value(Value::Torque(held))
            ),
            "Take a tighter fit or a longer sleeve, or pin or glue it.".to_owned(),
        ),
        Code::CaseTurnedAway { left } => (
            match left {
                Some(left) => format!(
                    "The hard case is turned away: {} is left at the surface.",
                    words.value(Value::Hardness(left))
                ),
                None => "The hard case is turned away.".to_owned(),
            },
            "Tell the owner: a soft surface wears and dents. It can be hardened again, or another receiver chosen."
                .to_owned(),
        ),
        Code::CaseDepthUnknown => (
            "The part has a hard case, and its depth is not entered.".to_owned(),
            "Look at the cut face, or try a file on it, and enter the depth.".to_owned(),
        ),
        Code::DutyIncomplete => (
            format!("{} is missing.", words.field(finding.field)),
            "Enter it, or what it belongs to is counted as nothing.".to_owned(),
        ),
        Code::DutyTooMuch { safety } => (
            format!(
                "The finished shank bears only {} times its duty, by estimate.",
                show::trimmed(safety, 2)
            ),
            "Keep it thicker, give it a larger fillet, or ask less of it.".to_owned(),
        ),
        Code::SafetyLow { safety } => (
            format!(
                "The finished shank bears about {} times its duty: little to spare.",
                show::trimmed(safety, 2)
            ),
            "Keep it thicker or give it a larger fillet, if there is room.".to_owned(),
        ),
        Code::ShorterThanStandard { standard } => (
            "The shank is shorter than the standard one.".to_owned(),
            format!(
                "The standard one is {} long: check that it is still held.",
                length(standard)
            ),
        ),
        Code::CountersinkTooWide { end } => (
            "The countersink is larger than the end.".to_owned(),
            if end.to_mm() < 0.5 {
                "The chamfer leaves no flat on the end: make it smaller first.".to_owned()
            } else {
                format!("The flat of the end is {}. Stay below it.", at_most(end))
            },
        ),
        Code::CountersinkInHole { bore } => (
            format!(
                "The countersink is no larger than the hole of {} that is there.",
                size(bore)
            ),
            format!("Make it larger than {}, or plug the hole.", at_least(bore)),
        ),
        Code::CountersinkOnThread { major } => (
            "The live centre would bear on the thread.".to_owned(),
            format!("Make the countersink larger than {}.", at_least(major)),
        ),
        Code::NoCentreDrill { largest } => (
            "No standard centre drill makes this countersink.".to_owned(),
            format!(
                "They reach from 0.5 mm to {}. A 60° countersink after a pilot hole does it too.",
                length(largest)
            ),
        ),
        Code::PointTouchesBottom { least_depth } => (
            "The point of a live centre would touch the bottom of the hole.".to_owned(),
            format!(
                "Drill a pilot until the hole is {} deep below the finished face.",
                length(least_depth)
            ),
        ),
        Code::FilletTooLarge { largest } => (
            "The fillet is higher than the shoulder.".to_owned(),
            format!("Take {} or less.", at_most(largest)),
        ),
        Code::FilletInPart { largest } => (
            "The stock has not the metal for the whole fillet.".to_owned(),
            format!(
                "Take {} or less, or live with a fillet in part.",
                at_most(largest)
            ),
        ),
        Code::NoStraightShank => (
            "Fillet and chamfer leave no straight shank.".to_owned(),
            "Make them smaller, or the shank longer.".to_owned(),
        ),
        Code::NoShoulder => (
            "The head is no larger than the finished shank: there is no shoulder.".to_owned(),
            "Check the head's diameter; without a shoulder the receiver has no stop.".to_owned(),
        ),
        Code::SharpShoulder => (
            "A sharp corner at the shoulder is where shanks break.".to_owned(),
            "Give it the tool's nose radius at least.".to_owned(),
        ),
        Code::SharpEnd => (
            "The end is left sharp.".to_owned(),
            "Break all sharp corners: 0.3 mm will do.".to_owned(),
        ),
        Code::FacedBack { by } => (
            format!(
                "There is no room for a cut: the end is faced back by {}.",
                length(by)
            ),
            "Face it in several cuts; mark nothing to saw.".to_owned(),
        ),
        Code::LengthAlready => (
            "The shank has its length already.".to_owned(),
            "No cut is needed. Facing the end clean leaves it a little short.".to_owned(),
        ),
        Code::NothingToTurn => (
            "There is nothing to turn off down to the polishing stock.".to_owned(),
            "Polish or grind to size.".to_owned(),
        ),
        Code::InfeedTooFine { .. }
        | Code::LastCutsReduced { .. }
        | Code::LastCutsLighter { .. }
        | Code::TooManyPasses
        | Code::ToolCannotCut
        | Code::CobaltGradeNeeded
        | Code::ToolAtItsLimit
        | Code::ToolWithCare { .. }
        | Code::SoftCoreUnderTool { .. }
        | Code::NoGears
        | Code::GearsCrossed
        | Code::NameTooLong
        | Code::TooLargeToSwing { .. }
        | Code::NoPass { .. }
        | Code::NoRowOfPasses
        | Code::PinsOverlap { .. }
        | Code::PinOutside { .. }
        | Code::PinBreaks { .. }
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
        | Code::GrindInstead => return english_findings_cut::finding(words, finding),
        Code::SawCannotCut => (
            "This material is harder than a saw.".to_owned(),
            "Cut it with an abrasive disc or wheel.".to_owned(),
        ),
        Code::HardEnd => (
            "The cut end may be too hard for a plain centre drill.".to_owned(),
            "Face with carbide first, and centre with carbide or a ground point.".to_owned(),
        ),
    };
    FindingWords { what, mend }
}

pub(super) fn in_the_way(words: Words, because: Because) -> String {
    match because {
        Because::Section(index) => {
            format!("{} is no thicker.", words.row(List::Sections, index))
        }
        Because::Feature(index) => {
            format!("{} is in the way.", words.row(List::Features, index))
        }
    }
}
