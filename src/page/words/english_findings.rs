//! English: what was found, and what to do about it.

use skimwright::job::Field;
use skimwright::plan::{Code, Finding};
use skimwright::quantity::Length;

use super::{Words, english_fields};

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
    let place = |at: Length| match length(at) {
        _ if at.to_mm() < 0.005 => "at the shoulder".to_owned(),
        far => format!("{far} from the shoulder"),
    };
    let (what, mend) = match finding.code {
        Code::AllClear => (
            "Nothing stands against it, as far as the figures go.".to_owned(),
            "Check the part against them before the first cut: it cannot be put back.".to_owned(),
        ),
        Code::OutOfBounds => (
            format!(
                "{} cannot be planned with.",
                english_fields::in_full(finding.field)
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
            "Join some of them: 12 sections and 6 holes at most.".to_owned(),
        ),
        Code::TaperComesToAPoint => (
            "This taper would come to a point before its end.".to_owned(),
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
            format!("Ask for {} or less.", length(longest)),
        ),
        Code::NotCleanedUp {
            at,
            short_by,
            largest,
            longest,
        } => (
            format!(
                "There is not enough metal: {} is missing on diameter, {}.",
                size(short_by),
                place(at)
            ),
            if longest.to_mm() > 0.5 {
                format!(
                    "Take {} diameter or less, or keep the shank to {} from the shoulder.",
                    at_most(largest),
                    length(longest)
                )
            } else {
                format!("Take {} diameter or less.", at_most(largest))
            },
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
                length(largest)
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
        Code::InfeedTooFine { infeed, least } => (
            format!(
                "A last cut of {} infeed is finer than this tool can cut: it rubs.",
                size(infeed)
            ),
            format!(
                "Take {} infeed or more, or a sharper tool.",
                at_least(least)
            ),
        ),
        Code::LastCutsReduced { each } => (
            format!(
                "There is less metal than two last cuts want: each takes {} off the diameter.",
                size(each)
            ),
            "Measure before the first: there is no roughing to learn from.".to_owned(),
        ),
        Code::TooManyPasses => (
            "More than 200 passes would be needed.".to_owned(),
            "Take a deeper infeed when roughing.".to_owned(),
        ),
        Code::ToolCannotCut => (
            "This tool does not cut this material.".to_owned(),
            "Choose a harder tool, or grind it.".to_owned(),
        ),
        Code::CobaltGradeNeeded => (
            "Plain high-speed steel does not stand this material.".to_owned(),
            "Take a cobalt grade, or carbide.".to_owned(),
        ),
        Code::ToolAtItsLimit => (
            "This tool is at its limit here: light finishing cuts, and no harder than 55 HRC."
                .to_owned(),
            "Take boron nitride, or grind it.".to_owned(),
        ),
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
