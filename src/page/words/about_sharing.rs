//! What is said of links that are given away, and of the owner's answers to them.

use skimwright::job::{Answered, Job, OwnerSays, Shows, What};
use skimwright::offer::{Agreement, Fit};

use super::{Moment, Text, Words};
use crate::page::sharing::{AnswerTold, Handed, NoLink, ShareTo};

/// Some mail programs and chats cut links that have more characters. Common practice, no source.
pub(super) const SAFE_LINK: usize = 2000;

/// A fixed text about links that are given away.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfSharing {
    Title,
    ToWhom,
    To(ShareTo),
    ToHint(ShareTo),
    ShowsToo,
    ShowsRates,
    ShowsMachine,
    Holds(Holds),
    InIt,
    NotInIt,
    Link,
    Share,
    Copy,
    Qr,
    QrHide,
    QrName,
    QrTooLong,
    QrDense,
    Handed(Handed),
    NoLink(NoLink),
    /// The shop's own plan stops, which its owner is not told.
    OwnPlanStops,
    WithoutRecord,
    SaveFile,
    // Answers
    AnswerTitle,
    AnswerHint,
    AnswerField,
    AnswerTake,
    Told(AnswerTold),
    // Lines of the record
    Offered,
    Answered(OwnerSays),
    Answer(OfAnswer),
    // The state of the agreement
    StandsLabel,
    HisWords,
    Shown,
    ShownTitle,
    ShownLead,
    /// The same where no answer to it came.
    ShownUnanswered,
    OfferAgain,
}

/// What a link holds, or does not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Holds {
    Name,
    Part,
    Shop,
    Held,
    Record,
    Answers,
    Measuring,
    CutOff,
    Cost,
    Rates,
    Machine,
    Turning,
    TimesAndRecord,
    RecordTooLong,
    OtherJobs,
}

/// A piece of what is said of an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum OfAnswer {
    What(OwnerSays),
    By,
    ToWhatWasShown,
    /// Before his words.
    InWords(OwnerSays),
    ChangedSince,
    /// What is there does not say whether the job is still what was shown.
    CannotTell,
    NewerOffer,
}

/// What is printed of the owner's answer.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct AnswerOnPaper<'a> {
    pub(crate) agreement: Agreement<'a>,
    /// When he was shown what he answered to.
    pub(crate) shown: Option<skimwright::job::Moment>,
    /// Whether the whole job is there, so that it can be told whether it is still what he was shown.
    pub(crate) whole: bool,
}

/// What somebody else wrote, kept apart whatever the direction of its letters.
fn apart(text: &str) -> String {
    format!("\u{2068}{text}\u{2069}")
}

impl Words {
    fn holds(self, holds: Holds) -> &'static str {
        self.say(Text::Sharing(OfSharing::Holds(holds)))
    }

    /// What is in a link.
    pub(crate) fn in_link(self, job: &Job, to: ShareTo, shows: Shows, record: bool) -> Vec<String> {
        let mut list = vec![Holds::Name, Holds::Part];
        match to {
            ShareTo::Colleague => list.extend([Holds::Shop, Holds::Held]),
            ShareTo::HandBack => list.push(Holds::Measuring),
            ShareTo::Owner => {
                list.extend([Holds::CutOff, Holds::Cost]);
                list.extend(shows.rates.then_some(Holds::Rates));
                list.extend(shows.machine.then_some(Holds::Machine));
            }
        }
        let mut list: Vec<String> = list
            .into_iter()
            .map(|it| self.holds(it).to_owned())
            .collect();
        let events = &job.record.events;
        let goes = match to {
            ShareTo::Colleague => record,
            ShareTo::HandBack => true,
            ShareTo::Owner => false,
        };
        if goes && !events.is_empty() {
            let entries = said!(self, sharing::entries(self, events.len()));
            list.push(format!("{}: {entries}", self.holds(Holds::Record)));
            if events.iter().any(|it| matches!(it.what, What::Answered(_))) {
                list.push(self.holds(Holds::Answers).to_owned());
            }
        }
        list
    }

    /// What is kept out of a link.
    pub(crate) fn not_in_link(self, to: ShareTo, shows: Shows, record: bool) -> Vec<&'static str> {
        let mut list = Vec::new();
        list.extend((!record).then_some(Holds::RecordTooLong));
        match to {
            ShareTo::Colleague => {}
            ShareTo::HandBack => list.extend([Holds::Rates, Holds::Turning]),
            ShareTo::Owner => {
                list.extend((!shows.rates).then_some(Holds::Rates));
                list.extend((!shows.machine).then_some(Holds::Machine));
                list.push(Holds::TimesAndRecord);
            }
        }
        list.push(Holds::OtherJobs);
        list.into_iter().map(|it| self.holds(it)).collect()
    }

    /// How long a link is.
    pub(crate) fn link_length(self, characters: usize) -> String {
        said!(self, sharing::link_length(self, characters))
    }

    /// How the job stands with its owner; `None` where he was shown nothing.
    pub(crate) fn stands_with_owner(
        self,
        agreement: &Agreement<'_>,
        when: impl Fn(skimwright::job::Moment) -> Moment,
    ) -> Option<String> {
        spoken!(self, sharing::stands(self, agreement, &when))
    }

    fn of_answer(self, piece: OfAnswer) -> &'static str {
        self.say(Text::Sharing(OfSharing::Answer(piece)))
    }

    /// What the owner answered, with the day of it, and by whom if he said so.
    pub(super) fn answer_of(self, answered: &Answered, day: &str) -> String {
        let said = format!("{} ({day})", self.of_answer(OfAnswer::What(answered.says)));
        if answered.by.is_empty() {
            said
        } else {
            let by = self.of_answer(OfAnswer::By);
            format!("{said} {by} {}", apart(&answered.by))
        }
    }

    /// The owner's answer in one line for paper: what, when, who, to which version, and his words, at most so many
    /// characters of them. `None` where there is none.
    pub(crate) fn answer_in_a_line(
        self,
        answer: &AnswerOnPaper<'_>,
        most: usize,
        when: impl Fn(skimwright::job::Moment) -> Moment,
    ) -> Option<String> {
        let (at, answered) = answer.agreement.answered?;
        let day = |at| self.date_time(when(at));
        let mut line = self.of_answer(OfAnswer::What(answered.says)).to_owned();
        if !answered.by.is_empty() {
            let by = self.of_answer(OfAnswer::By);
            line.extend([format!(" {by} {}", apart(&answered.by))]);
        }
        line.extend([format!(", {}", day(at))]);
        if let Some(shown) = answer.shown {
            let to = self.of_answer(OfAnswer::ToWhatWasShown);
            line.extend([format!(", {to} {}", day(shown))]);
        }
        if !answered.words.is_empty() {
            let mut said: String = answered.words.chars().take(most).collect();
            if said.len() < answered.words.len() {
                said.push('…');
            }
            let before = self.of_answer(OfAnswer::InWords(answered.says));
            line.extend([format!("; {before}: {}", apart(&said))]);
        }
        line.push('.');
        let since = match answer.agreement.fit {
            Some(Fit::Changed) if answer.whole => Some(OfAnswer::ChangedSince),
            Some(Fit::Changed) => Some(OfAnswer::CannotTell),
            Some(Fit::Older) => Some(OfAnswer::NewerOffer),
            _ => None,
        };
        if let Some(since) = since {
            line.push(' ');
            line.push_str(self.of_answer(since));
        }
        Some(line)
    }
}
