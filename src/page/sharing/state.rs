//! What is given away, and to whom.

use std::rc::Rc;

use skimwright::job::{Answered, Job, Moment, OfferMark, Offered, Record, Shows, What};
use skimwright::link::{self, LinkError, Linked};
use skimwright::offer::{Fit, Offer, handed_back};

use crate::page::edit::{Edit, RecordEdit};
use crate::page::jobs::JobId;
use crate::page::state::{Cover, Notice, State};

/// Who a link is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum ShareTo {
    #[default]
    Colleague,
    Owner,
    /// Whoever gets the finished part: the report.
    HandBack,
}

/// What became of a link that was handed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Handed {
    /// By the share sheet of the device.
    Shared,
    Copied,
    /// The browser did neither.
    Failed,
}

/// What became of an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum AnswerTold {
    /// It is in the record now.
    Taken(Fit),
    /// It was there before.
    Same,
    /// A later one was.
    Earlier,
    /// No job on this device made that offer.
    Foreign,
    /// A job in the trash did.
    InTrash,
    /// The record has no room.
    Full,
    /// It is another kind of link.
    NotAnAnswer,
    /// It cannot be read.
    Bad(LinkError),
}

/// Links that are given away, and answers that come.
#[derive(Clone, Debug, Default)]
pub(crate) struct Sharing {
    pub(crate) to: ShareTo,
    pub(crate) shows: Shows,
    pub(crate) qr: bool,
    pub(crate) handed: Option<Handed>,
    /// What was pasted as an answer.
    pub(crate) pasted: String,
    /// What became of it.
    pub(crate) told: Option<AnswerTold>,
    /// An answer that came while the kept jobs were still being read.
    pub(super) waiting: Option<(Answered, Moment)>,
    /// What was given to the browser and is not handed on yet: a share sheet may be closed again.
    giving: Option<Giving>,
}

/// An offer on its way to its owner.
#[derive(Clone, Debug)]
struct Giving {
    /// The job that makes it.
    of: Option<JobId>,
    offered: Offered,
    at: Moment,
}

impl Sharing {
    /// Whether an answer waits for the kept jobs.
    pub(crate) const fn answer_waits(&self) -> bool {
        self.waiting.is_some()
    }

    /// Nothing is given away yet of what the dialog now says.
    pub(super) fn begin_anew(&mut self) {
        (self.qr, self.handed, self.giving) = (false, None, None);
    }
}

/// Why there is no link.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NoLink {
    /// With its record it is too long; a file takes it.
    TooLong,
    /// What the owner is shown is too long.
    OfferTooLong,
    /// The record has no room to note an offer, so that no answer to it could be taken in.
    RecordFull,
    /// The job is a visitor's: who made it offers it.
    NotOnesOwn,
}

/// What is done in the dialog.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ShareAction {
    To(ShareTo),
    Rates(bool),
    Machine(bool),
    /// Shows the QR code at this moment, or hides it.
    Qr(bool, Moment),
    /// The link was given to the browser at this moment.
    Given(Moment),
    Handed(Handed),
    /// Opens the dialog for somebody.
    Open(ShareTo),
    Paste(String),
    TakePasted,
}

/// The text of a link behind `#`.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Given {
    pub(crate) text: String,
    /// The record was too long, and stayed out.
    pub(crate) without_record: bool,
}

impl State {
    /// Whether an offer can be made here: an answer must find the job that made it.
    pub(crate) const fn may_offer(&self) -> bool {
        self.own.is_none() && !self.print.handed_back
    }

    /// Who a link can be for: a report only where there is something to report, or it was asked for.
    pub(crate) fn share_to(&self) -> impl Iterator<Item = ShareTo> {
        let report = self.job.record.has_work() || self.sharing.to == ShareTo::HandBack;
        let owner = self.may_offer().then_some(ShareTo::Owner);
        let back = report.then_some(ShareTo::HandBack);
        [ShareTo::Colleague].into_iter().chain(owner).chain(back)
    }

    /// The link that is given away, or why there is none.
    pub(crate) fn given(&self) -> Result<Given, NoLink> {
        let whole = |text| Given {
            text,
            without_record: false,
        };
        match self.sharing.to {
            ShareTo::Owner if !self.may_offer() => Err(NoLink::NotOnesOwn),
            ShareTo::Owner => {
                let offer = self.offer();
                let text = link::encode_offer(&offer).map_err(|_| NoLink::OfferTooLong)?;
                if self.has_room_for(link::offer_mark(&offer)) {
                    Ok(whole(text))
                } else {
                    Err(NoLink::RecordFull)
                }
            }
            ShareTo::HandBack => {
                let job = handed_back(&self.job);
                let text = link::encode_handed_back(&job);
                text.map(whole).map_err(|_| NoLink::TooLong)
            }
            ShareTo::Colleague => match link::encode(&self.job) {
                Err(LinkError::TooLong) => Ok(Given {
                    text: link::encode_without_record(&self.job).map_err(|_| NoLink::TooLong)?,
                    without_record: true,
                }),
                text => text.map(whole).map_err(|_| NoLink::TooLong),
            },
        }
    }

    /// Whether the record takes an offer, or holds it already.
    fn has_room_for(&self, mark: Option<OfferMark>) -> bool {
        let (newest, _) = newest_offer(&self.job).unzip();
        self.job.record.events.len() < Record::MOST_EVENTS || (mark.is_some() && newest == mark)
    }

    fn offer(&self) -> Offer {
        Offer::of(&self.job, &self.plan, self.sharing.shows)
    }

    pub(in crate::page) fn do_sharing(&mut self, action: ShareAction) {
        let sharing = &mut self.sharing;
        match action {
            ShareAction::To(to) => {
                sharing.to = to;
                sharing.begin_anew();
            }
            ShareAction::Rates(shows) => {
                sharing.shows.rates = shows;
                sharing.begin_anew();
            }
            ShareAction::Machine(shows) => {
                sharing.shows.machine = shows;
                sharing.begin_anew();
            }
            ShareAction::Qr(shows, at) => {
                sharing.qr = shows;
                if shows {
                    let given = self.giving(at);
                    self.note_offer(given);
                }
            }
            ShareAction::Given(at) => self.sharing.giving = self.giving(at),
            ShareAction::Handed(handed) => {
                sharing.handed = Some(handed);
                let given = sharing.giving.take();
                self.note_offer(given);
            }
            ShareAction::Open(to) => {
                self.open_sharing();
                if to != ShareTo::Owner || self.may_offer() {
                    self.sharing.to = to;
                }
                self.cover = Some(Cover::Share);
            }
            ShareAction::Paste(text) => {
                sharing.pasted = text;
                sharing.told = None;
            }
            ShareAction::TakePasted => self.take_pasted(),
        }
    }

    /// The dialog as it is opened. What the owner of this job was shown last is ticked, and nothing that another was.
    pub(in crate::page) fn open_sharing(&mut self) {
        let newest = newest_offer(&self.job);
        let shows = newest.map(|(_, shows)| shows).unwrap_or_default();
        let can_be = match self.sharing.to {
            ShareTo::Colleague => true,
            ShareTo::Owner => self.may_offer(),
            // The last one to be handed back was another job.
            ShareTo::HandBack => self.job.record.has_work(),
        };
        let sharing = &mut self.sharing;
        sharing.begin_anew();
        sharing.told = None;
        sharing.pasted.clear();
        sharing.shows = shows;
        if !can_be {
            sharing.to = ShareTo::default();
        }
    }

    /// The offer that is given to the browser at a moment; `None` where what is given is none.
    fn giving(&self, at: Moment) -> Option<Giving> {
        if self.sharing.to != ShareTo::Owner || !self.may_offer() {
            return None;
        }
        let offer = self.offer();
        let text = link::encode_offer(&offer).ok()?;
        let link = if text.len() <= Offered::MOST_LINK_CHARACTERS {
            text
        } else {
            String::new()
        };
        let offered = Offered {
            mark: link::offer_mark(&offer)?,
            shows: offer.shows,
            link,
        };
        let of = self.jobs.current.clone();
        Some(Giving { of, offered, at })
    }

    /// An offer that was handed on goes into the record; the same one again does not. No undo takes it back: it is with
    /// its owner, and the answer must find the job that made it.
    fn note_offer(&mut self, given: Option<Giving>) {
        let Some(Giving { of, offered, at }) = given else {
            return;
        };
        if !self.may_offer() || self.jobs.current != of {
            return;
        }
        if !self.has_room_for(Some(offered.mark)) {
            self.notice = Some(Notice::RecordFull);
            return;
        }
        let edit = Edit::Record(RecordEdit::Offer(offered, at));
        let with = |job: &Rc<Job>| {
            let mut noted = Job::clone(job);
            let changed = edit.apply(&mut noted, &self.plan, self.units);
            changed.then(|| Rc::new(noted))
        };
        let Some(job) = with(&self.job) else { return };
        let all = |jobs: &[Rc<Job>]| -> Vec<Rc<Job>> {
            let noted = jobs
                .iter()
                .map(|job| with(job).unwrap_or_else(|| Rc::clone(job)));
            noted.collect()
        };
        (self.past, self.future) = (all(&self.past), all(&self.future));
        self.set_job(job);
    }

    /// The offer that was made with a mark, as its owner saw it; `None` where its link is not kept.
    pub(crate) fn offer_made(&self, mark: OfferMark) -> Option<Offer> {
        let mut offers = self.job.record.standing().rev();
        let text = offers.find_map(|(_, event)| match &event.what {
            What::Offered(offered) if offered.mark == mark && !offered.link.is_empty() => {
                Some(&offered.link)
            }
            _ => None,
        })?;
        match link::open(text) {
            // A job that came as a link may bring any text: only what has the mark was shown.
            Ok(Linked::Offer(offer)) if link::offer_mark(&offer) == Some(mark) => Some(*offer),
            _ => None,
        }
    }
}

/// The mark of the offer that a job made last, and what of the shop's own it showed.
fn newest_offer(job: &Job) -> Option<(OfferMark, Shows)> {
    let mut events = job.record.standing().rev();
    events.find_map(|(_, event)| match &event.what {
        What::Offered(offered) => Some((offered.mark, offered.shows)),
        _ => None,
    })
}
