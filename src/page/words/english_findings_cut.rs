//! English: what was found of lathe, tool, passes and holding, and what to do about it.

use skimwright::cutting::Care;
use skimwright::job::{Field, Job};
use skimwright::plan::{Code, Finding};
use skimwright::quantity::{Length, show};

use super::{FindingWords, Words, english_cut, english_fields, english_shop};

#[expect(
    clippy::too_many_lines,
    reason = "one arm a finding, in the order of the codes"
)]
pub(super) fn finding(words: Words, finding: &Finding) -> FindingWords {
    let field = finding.field;
    let size = |value: Length| words.size(value);
    let own = |(what, mend): (&str, &str)| (what.to_owned(), mend.to_owned());
    let (what, mend) = match finding.code {
        Code::InfeedTooFine { infeed, least } => {
            let which = match field {
                Field::LastCut => "A last cut",
                _ => "A roughing pass",
            };
            (
                format!(
                    "{which} of {} infeed is finer than this tool can cut: it rubs.",
                    size(infeed)
                ),
                format!(
                    "Take {} infeed or more, or a sharper tool.",
                    words.size_at_least(least)
                ),
            )
        }
        Code::LastCutsReduced { each } => (
            format!(
                "There is less metal than two last cuts want: each takes {} off the diameter.",
                size(each)
            ),
            "Measure before the first: there is no roughing to learn from.".to_owned(),
        ),
        Code::LastCutsLighter { each } => (
            format!(
                "The last cuts asked for are too heavy: {} off the diameter each is planned.",
                size(each)
            ),
            "Ask for so much, or hold the work more stiffly.".to_owned(),
        ),
        Code::ToolWithCare { care } => own(care_words(care)),
        Code::SoftCoreUnderTool { pass } => (
            format!(
                "From pass {pass} on the tool is below the hard case: boron nitride sticks to soft steel."
            ),
            "Change to carbide there.".to_owned(),
        ),
        Code::NoGears => (
            format!("{}: the list is empty.", words.field_in_full(field)),
            "Type what stands on the headstock's plate, or choose any, without steps.".to_owned(),
        ),
        Code::GearsCrossed => (
            format!(
                "{}: the lowest is above this one.",
                words.field_in_full(field)
            ),
            "Change one of the two.".to_owned(),
        ),
        Code::NameTooLong => {
            let most = match field {
                Field::Rate(_) => Job::MOST_CURRENCY_CHARACTERS,
                _ => Job::MOST_NAME_CHARACTERS,
            };
            (
                format!("{}: the text is too long.", words.field(field)),
                format!("Shorten it to {most} characters."),
            )
        }
        Code::TooLargeToSwing { largest } => (
            format!(
                "The part is {} across and does not swing over the cross-slide.",
                size(largest)
            ),
            "Take a larger lathe, or check the swing.".to_owned(),
        ),
        Code::NoPass { limit, share } => (
            format!(
                "Even the lightest pass takes {} of what {} allows.",
                show::share(share),
                english_cut::limit_inside(limit)
            ),
            english_cut::ease(limit).to_owned(),
        ),
        Code::PinsOverlap { other } => (
            format!(
                "{} takes off the same metal as pinned pass {other}.",
                pin(field)
            ),
            "Change the diameter or the infeed of one of them.".to_owned(),
        ),
        Code::PinOutside { start, end } => (
            format!("{} lies outside the metal that is turned off.", pin(field)),
            format!(
                "Keep it between ⌀{} and ⌀{}.",
                words.size_bare(start),
                size(end)
            ),
        ),
        Code::PinBreaks { limit, share } => (
            format!(
                "{} takes {} of what {} allows.",
                pin(field),
                show::share(share),
                english_cut::limit_inside(limit)
            ),
            "Make it lighter or slower, or unpin it.".to_owned(),
        ),
        Code::GivesWay { by, allowed } => (
            format!(
                "Work and lathe give way: the diameter will vary by {}, and {} is allowed.",
                words.units().fine(by),
                words.units().fine(allowed)
            ),
            "Take lighter last cuts, shorten the overhang, or support the end.".to_owned(),
        ),
        Code::RoughnessNotReached { expected } => (
            format!(
                "Turned so, Ra may be as much as {}.",
                words.units().fine(expected)
            ),
            "Leave stock for polishing, or take a larger nose radius or another speed.".to_owned(),
        ),
        Code::SpeedAboveWindow { highest } => (
            "The cutting speed asked for is more than this tool stands in this material."
                .to_owned(),
            format!("Take {} or less.", words.units().speed(highest)),
        ),
        Code::TimesCrossed => (
            format!("{} is out of order.", words.field_in_full(field)),
            "Best is the shortest time, worst the longest.".to_owned(),
        ),
        Code::MayChatter { ratio, easy } => (
            format!(
                "The work sticks out {} times its diameter and may chatter.",
                show::decimal(ratio, 1)
            ),
            format!(
                "Up to {} is easy: shorten it, support the end, or use a steady rest.",
                show::trimmed(easy, 1)
            ),
        ),
        Code::ShortGrip { least } => (
            "The jaws hold so little of the length that the work may tip out.".to_owned(),
            format!(
                "Hold {} at least, or support the end.",
                words.length_at_least(least)
            ),
        ),
        other => own(plain(other)),
    };
    FindingWords { what, mend }
}

/// What is said without a figure.
const fn plain(code: Code) -> (&'static str, &'static str) {
    match code {
        Code::TooManyPasses => (
            "More than 200 passes would be needed.",
            "Take a deeper infeed when roughing.",
        ),
        Code::ToolCannotCut => (
            "This tool does not cut this material.",
            "Choose a harder tool, or grind it.",
        ),
        Code::CobaltGradeNeeded => (
            "Plain high-speed steel does not stand this material.",
            "Take a cobalt grade, or carbide.",
        ),
        Code::ToolAtItsLimit => (
            "This tool is at its limit here: light finishing cuts, and no harder than 55 HRC.",
            "Take boron nitride, or grind it.",
        ),
        Code::NoRowOfPasses => (
            "Each light pass is possible, but no row of passes ends at size.",
            "Allow a deeper infeed, lighter last cuts, or a finer dial.",
        ),
        Code::NoRate => (
            "Least cost was chosen without a rate: least time is planned.",
            "Enter what an hour of the shop costs.",
        ),
        Code::CentreWithoutHole => (
            "A live centre was chosen, and the end gets no countersink.",
            "Give it one on Wanted, or hold it without a centre.",
        ),
        Code::DialNotPossible => (
            "No packing moves the work so far.",
            "Check the readings; where they are right, hold it anew, in four jaws.",
        ),
        Code::DialIncomplete => (
            "The indicator needs more readings.",
            "Read two neighbouring quarters at least; for a tilt, both lines at two places apart.",
        ),
        Code::GrindInstead => (
            "Turning is the poorer way here.",
            "Grind it, or leave it for grinding.",
        ),
        // The catalogue of the other findings names those that stand here.
        _ => ("", ""),
    }
}

const fn care_words(care: Care) -> (&'static str, &'static str) {
    match care {
        Care::NoInterruptedCut => (
            "Ceramic breaks on flats, keyways and cross holes.",
            "Smooth cuts only, or take boron nitride.",
        ),
        Care::NearlyTooSoft => (
            "The work is nearly too soft for this tool: it wears, and the chip may stick.",
            "Take carbide, or watch the edge.",
        ),
        Care::DustAndSlow => (
            "Grinding on the lathe is slow, and its dust ruins the slides.",
            "Cover the ways, catch the dust, and clean before the carriage moves.",
        ),
        Care::HardnessUncertain => (
            "At one end of its hardness the work does not suit this tool.",
            "Measure the hardness, or try the tool with a light cut.",
        ),
        Care::CobaltGrade | Care::LightCuts | Care::Emergency => (
            "This tool is near its limit in this material.",
            "Take light cuts.",
        ),
    }
}

/// The name of the pin that a field belongs to.
fn pin(field: Field) -> String {
    match field {
        Field::Pin(index, _) => english_shop::pin(index),
        _ => english_fields::label(field).to_owned(),
    }
}
