//! English: links that are given away, and the owner's answers to them.

use skimwright::job::{Moment, OwnerSays};
use skimwright::link::LinkError;
use skimwright::offer::{Agreement, Fit};

use super::Words;
use super::about_jobs::Moment as Calendar;
use super::about_sharing::{Holds, OfAnswer, OfSharing, SAFE_LINK};
use crate::page::sharing::{AnswerTold, Handed, NoLink, ShareTo};

pub(super) const fn text(text: OfSharing) -> &'static str {
    match text {
        OfSharing::Title => "Share",
        OfSharing::ToWhom => "Who is it for?",
        OfSharing::To(ShareTo::Colleague) => "A colleague",
        OfSharing::To(ShareTo::Owner) => "The part’s owner",
        OfSharing::To(ShareTo::HandBack) => "Whoever gets the part back",
        OfSharing::ToHint(ShareTo::HandBack) => {
            "The report: what was measured and done, and with what. Nothing in it can be changed."
        }
        OfSharing::ToHint(ShareTo::Colleague) => "The whole job, to look at and to go on with.",
        OfSharing::ToHint(ShareTo::Owner) => {
            "A page in plain words: what is done, what is lost, time and cost. The owner answers with a link of his own."
        }
        OfSharing::ShowsToo => "Show the owner too",
        OfSharing::ShowsRates => "Your rates",
        OfSharing::ShowsMachine => "Lathe, tool, instruments and how the part is held",
        OfSharing::Holds(this) => holds(this),
        OfSharing::InIt => "In the link",
        OfSharing::NotInIt => "Not in the link",
        OfSharing::Link => "The link",
        OfSharing::Share => "Share the link",
        OfSharing::Copy => "Copy the link",
        OfSharing::Qr => "Show as QR code",
        OfSharing::QrHide => "Hide the QR code",
        OfSharing::QrName => "QR code of the link",
        OfSharing::QrTooLong => "The link is too long for a QR code. Share or copy it instead.",
        OfSharing::QrDense => "A fine code: show it large, and hold the camera still and close.",
        OfSharing::Handed(Handed::Shared) => "Handed on.",
        OfSharing::Handed(Handed::Copied) => "The link is copied. Paste it into a message.",
        OfSharing::Handed(Handed::Failed) => {
            "This browser lets no page share or copy. Here is the link, to copy by hand:"
        }
        OfSharing::NoLink(NoLink::OfferTooLong) => {
            "What the owner is shown is too long for a link. Take out sections or holes that do not matter, or shorten names."
        }
        OfSharing::NoLink(NoLink::RecordFull) => {
            "The record at the lathe is full: an answer could not be taken in. Nothing can be offered from this job any more; duplicate it, and offer the copy."
        }
        OfSharing::NoLink(NoLink::NotOnesOwn) => {
            "This job came from somebody else. Keep it as a job of your own to offer it."
        }
        OfSharing::OwnPlanStops => {
            "Your own plan stops. The owner is not told of your lathe and your tool: see what stops it before you offer."
        }
        OfSharing::NoLink(NoLink::TooLong) => {
            "With its record it is too long for a link. Save it as a file instead: it holds the same."
        }
        OfSharing::WithoutRecord => {
            "The record at the lathe is too long for a link, and stays out of it. A file takes the whole job."
        }
        OfSharing::SaveFile => "Save as a file",
        OfSharing::AnswerTitle => "An answer came?",
        OfSharing::AnswerHint => "Open its link, or paste it here. Words around it do no harm.",
        OfSharing::AnswerField => "The owner’s answer",
        OfSharing::AnswerTake => "Take the answer",
        OfSharing::Told(told) => answer_told(told),
        OfSharing::Offered => "Shown to the owner",
        OfSharing::Answered(OwnerSays::Agree) => "The owner agreed",
        OfSharing::Answered(OwnerSays::AgreeWithChange) => "The owner agreed with a change",
        OfSharing::Answered(OwnerSays::Decline) => "The owner declined",
        OfSharing::Answered(OwnerSays::Ask) => "The owner asks something",
        OfSharing::Answer(piece) => answer(piece),
        OfSharing::StandsLabel => "The owner",
        OfSharing::HisWords => "In the owner’s words",
        OfSharing::Shown => "Show what was offered",
        OfSharing::ShownTitle => "What the owner was shown",
        OfSharing::ShownLead => {
            "This is the version that the answer is to. It cannot be changed here."
        }
        OfSharing::ShownUnanswered => {
            "This is what was offered. No answer to it came yet. It cannot be changed here."
        }
        OfSharing::OfferAgain => "Offer it again",
    }
}

/// A piece of what is said of an answer.
const fn answer(piece: OfAnswer) -> &'static str {
    match piece {
        OfAnswer::What(OwnerSays::Agree) => "Agreed",
        OfAnswer::What(OwnerSays::AgreeWithChange) => "Agreed with a change",
        OfAnswer::What(OwnerSays::Decline) => "Declined",
        OfAnswer::What(OwnerSays::Ask) => "A question was asked",
        OfAnswer::By => "by",
        OfAnswer::ToWhatWasShown => "to what was shown on",
        OfAnswer::InWords(OwnerSays::AgreeWithChange) => "change asked",
        OfAnswer::InWords(OwnerSays::Ask) => "asked",
        OfAnswer::InWords(OwnerSays::Agree | OwnerSays::Decline) => "in the owner’s words",
        OfAnswer::ChangedSince => "The job was changed since.",
        OfAnswer::CannotTell => {
            "Whether the job is still what was shown cannot be told from this report."
        }
        OfAnswer::NewerOffer => "A newer offer was made since.",
    }
}

const fn answer_told(told: AnswerTold) -> &'static str {
    match told {
        AnswerTold::Taken(Fit::Current) => {
            "The owner’s answer is taken in: it is to the job as it is now."
        }
        AnswerTold::Taken(Fit::Changed) => {
            "The owner’s answer is taken in. The job was changed since it was offered: offer it again."
        }
        AnswerTold::Taken(_) => {
            "The owner’s answer is taken in. It is to an older offer: a newer one was made since."
        }
        AnswerTold::Same => "This answer was taken in before.",
        AnswerTold::Earlier => "A later answer was taken in before. This one is left aside.",
        AnswerTold::Foreign => "This answer belongs to no job on this device.",
        AnswerTold::InTrash => {
            "This answer belongs to a job in the trash. Restore it there, and open the answer again."
        }
        AnswerTold::Full => "The record of the job takes no more. The answer was not taken in.",
        AnswerTold::NotAnAnswer => "This is no answer but another link. Open it as a link.",
        AnswerTold::Bad(error) => match error {
            LinkError::Empty => "There is nothing to take in yet.",
            LinkError::TooLong => "This is far longer than any answer. Paste only the answer.",
            LinkError::Newer { .. } => {
                "The answer comes from a newer version. Load this page anew, and try again."
            }
            LinkError::Several => "There is more than one link in it. Paste only the answer.",
            LinkError::Damaged | LinkError::BeyondLimits => {
                "The answer was cut or changed on its way. Ask for it to be sent again."
            }
            LinkError::NotALink | LinkError::TooLarge => "There is no answer in this text.",
        },
    }
}

/// What a link holds, or does not.
const fn holds(holds: Holds) -> &'static str {
    match holds {
        Holds::Name => "The name of the job",
        Holds::Part => "The part, and what is wanted of it",
        Holds::Shop => {
            "Your lathe, tool, times, rates and instruments, and what was learned of them"
        }
        Holds::Held => "How the part is held",
        Holds::Record => "The record at the lathe, with times",
        Holds::Answers => "The owner’s answers, with his name and words",
        Holds::Measuring => "Your instruments, how warm the room was, and who measured",
        Holds::CutOff => "How the end is cut off",
        Holds::Cost => "Time and cost from low to high",
        Holds::Rates => "Your rates",
        Holds::Machine => "Lathe, tool, instruments and how the part is held",
        Holds::Turning => "Lathe, tool, and how the part is held",
        Holds::TimesAndRecord => "Your times of each step, and the record at the lathe",
        Holds::RecordTooLong => "The record at the lathe, which is too long",
        Holds::OtherJobs => "Your other jobs",
    }
}

pub(super) fn entries(words: Words, count: usize) -> String {
    words.count(count, "entry", "entries")
}

pub(super) fn link_length(words: Words, characters: usize) -> String {
    let long = words.count(characters, "character", "characters");
    if SAFE_LINK < characters {
        format!("The link has {long}. Some chats cut links so long: send it by mail, or by itself.")
    } else {
        format!("The link has {long}.")
    }
}

pub(super) fn stands(
    words: Words,
    agreement: &Agreement<'_>,
    when: &dyn Fn(Moment) -> Calendar,
) -> Option<String> {
    let (offered_at, _) = agreement.offered?;
    let day = |at| words.moment(when(at));
    let Some((at, answered)) = agreement.answered else {
        let offered = day(offered_at);
        return Some(if agreement.unchanged {
            format!("Shown to the owner ({offered}). No answer was taken in yet.")
        } else {
            format!("Shown to the owner ({offered}), but the job was changed since: show it again.")
        });
    };
    let said = words.answer_of(answered, &day(at));
    Some(match (agreement.fit, answered.says) {
        (Some(Fit::Current), OwnerSays::AgreeWithChange) => {
            format!("{said}. Change the job as he wants, and offer it again.")
        }
        (Some(Fit::Current), _) => format!("{said}."),
        (Some(Fit::Changed), _) => {
            format!("{said}, but the job was changed since: offer it again.")
        }
        _ => format!("{said}, to an older offer: a newer one waits for an answer."),
    })
}
