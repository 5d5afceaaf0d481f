//! What the owner of a part has answered so far, and what his address holds.

use std::rc::Rc;

use skimwright::job::{Answered, Job, Moment, OfferMark, OwnerSays, Record};
use skimwright::link::{self, LinkError, Linked};
use skimwright::offer::Offer;

use crate::page::sharing::{Handed, LINK_LIKE};

/// Who an address is for.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Visit {
    /// Whoever plans jobs.
    Shop,
    /// The owner of a part.
    Owner(Rc<Offer>),
    /// The same, or whoever gets the part back, but the link cannot be opened.
    BadLink(LinkError),
}

/// Before what is kept of words that were written with nothing chosen yet.
const UNSAID: &str = "unsaid";

/// What links begin with that go to somebody who plans nothing: an offer, and a part that is handed back.
const TO_OWNERS: [char; 2] = ['o', 'u'];

/// Who an address is for, by what stands after `#`.
pub(crate) fn visit(address: &str) -> Visit {
    match link::open(address) {
        Ok(Linked::Offer(offer)) => Visit::Owner(Rc::from(offer)),
        Err(error) if address.starts_with(TO_OWNERS) && LINK_LIKE <= address.len() => {
            Visit::BadLink(error)
        }
        // A report too: the page shows it beside the jobs of this device, and touches none.
        _ => Visit::Shop,
    }
}

/// What the owner has answered so far.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct OwnerState {
    /// The offer; `None` where it has no mark, which none that came as a link is without.
    pub(crate) to: Option<OfferMark>,
    pub(crate) says: Option<OwnerSays>,
    pub(crate) words: String,
    pub(crate) by: String,
    /// When it was changed last. The same answer has the same moment however often it is sent.
    pub(crate) at: Moment,
    /// Whether it was handed on as it is.
    pub(crate) sent: bool,
    /// What was kept on this device as the page opened: what, when, and whether it was handed on.
    pub(crate) before: Option<(OwnerSays, Moment, bool)>,
    pub(crate) handed: Option<Handed>,
}

/// What the owner does.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum OwnerAction {
    Says(OwnerSays, Moment),
    Words(String, Moment),
    By(String, Moment),
    Handed(Handed),
    /// His mail program was opened.
    Mailed,
}

impl OwnerState {
    /// The answer as the page opens, with what this device has kept of it.
    pub(crate) fn open(offer: &Offer, kept: Option<&str>) -> Self {
        let to = link::offer_mark(offer);
        let mut state = Self {
            to,
            says: None,
            words: String::new(),
            by: String::new(),
            at: Moment::default(),
            sent: false,
            before: None,
            handed: None,
        };
        let kept = kept.and_then(|kept| kept.split_once(' '));
        if let Some((sent, text)) = kept
            && let Ok(Linked::Answer(answered, at)) = link::open(text)
            && Some(answered.to) == to
        {
            if sent != UNSAID {
                state.sent = sent == "sent";
                state.before = Some((answered.says, at, state.sent));
                state.says = Some(answered.says);
            }
            (state.words, state.by, state.at) = (answered.words, answered.by, at);
        }
        state
    }

    pub(crate) fn after(mut self, action: OwnerAction) -> Self {
        match action {
            OwnerAction::Says(says, at) => {
                if self.says != Some(says) {
                    self.says = Some(says);
                    self.changed(at);
                }
            }
            OwnerAction::Words(words, at) => {
                self.words = bounded(&words, Record::MOST_NOTE_CHARACTERS);
                self.changed(at);
            }
            OwnerAction::By(by, at) => {
                self.by = bounded(&by, Job::MOST_NAME_CHARACTERS);
                self.changed(at);
            }
            OwnerAction::Handed(handed) => {
                self.handed = Some(handed);
                self.sent |= handed != Handed::Failed;
            }
            OwnerAction::Mailed => {
                self.handed = Some(Handed::Shared);
                self.sent = true;
            }
        }
        self
    }

    fn changed(&mut self, at: Moment) {
        self.at = at;
        self.sent = false;
        self.handed = None;
    }

    /// Whether what was chosen needs words that are not there.
    pub(crate) fn lacks_words(&self) -> bool {
        let needs = matches!(self.says, Some(OwnerSays::AgreeWithChange | OwnerSays::Ask));
        needs && self.words.trim().is_empty()
    }

    /// The answer as a text behind `#`, once it is whole.
    pub(crate) fn link(&self) -> Option<String> {
        if self.lacks_words() {
            return None;
        }
        self.text()
    }

    /// What this device keeps; `None` while nothing is chosen or written.
    pub(crate) fn kept(&self) -> Option<String> {
        if self.says.is_none() {
            // What was written before stands beside an answer that is none.
            let written = self.at != Moment::default();
            let text = written.then(|| self.text_with(OwnerSays::Ask))??;
            return Some(format!("{UNSAID} {text}"));
        }
        let sent = if self.sent { "sent" } else { "draft" };
        Some(format!("{sent} {}", self.text()?))
    }

    fn text(&self) -> Option<String> {
        self.text_with(self.says?)
    }

    fn text_with(&self, says: OwnerSays) -> Option<String> {
        let answered = Answered {
            to: self.to?,
            says,
            words: self.words.trim().to_owned(),
            by: self.by.trim().to_owned(),
        };
        link::encode_answer(&answered, self.at).ok()
    }
}

fn bounded(text: &str, most: usize) -> String {
    text.chars().take(most).collect()
}
