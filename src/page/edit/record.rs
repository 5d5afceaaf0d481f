//! Changes to the record at the lathe: what was read and done is added, struck out and brought back, never changed in
//! what it says. The moment comes with the action, since the reducer knows no clock.

use skimwright::job::{
    Event, Job, Moment, OfferMark, Offered, Reading, Record, StepEvent, StepState, What, WorkStep,
};

/// A change to the record.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum RecordEdit {
    /// Something happened.
    Add(What, Moment),
    /// An event was wrong, and no longer counts; by its place in the record.
    Strike(u32),
    /// It counts again.
    Bring(u32),
    /// A doubted reading is right.
    Confirm(u32),
    /// A doubted reading was meant to be this one.
    Meant(u32, Reading, Moment),
    /// The owner is given this to agree to; the links of older offers that were not answered are let go.
    Offer(Offered, Moment),
    /// A step begins, stops, is done or left out; with it the clock of the next one begins, where one is named.
    Step(WorkStep, StepState, Option<WorkStep>, Moment),
}

impl RecordEdit {
    /// How many events it adds.
    pub(crate) const fn adds(&self) -> usize {
        match self {
            Self::Add(..) | Self::Offer(..) | Self::Meant(..) | Self::Step(_, _, None, _) => 1,
            Self::Step(_, _, Some(_), _) => 2,
            Self::Strike(_) | Self::Bring(_) | Self::Confirm(_) => 0,
        }
    }

    /// Whether the record has no room for it.
    pub(crate) fn is_too_much(&self, record: &Record) -> bool {
        let adds = self.adds();
        0 < adds && Record::MOST_EVENTS < record.events.len().saturating_add(adds)
    }

    pub(super) fn try_on(&self, job: &mut Job) -> Option<()> {
        if self.is_too_much(&job.record) {
            return None;
        }
        let record = &mut job.record;
        match self {
            Self::Add(what, at) => push(record, bounded(what.clone()), *at),
            Self::Strike(event) => event_at(record, *event)?.struck = true,
            Self::Bring(event) => event_at(record, *event)?.struck = false,
            Self::Confirm(event) => reading_at(record, *event)?.confirmed = true,
            Self::Meant(event, reading, at) => {
                event_at(record, *event)?.struck = true;
                push(record, What::Reading(reading.clone()), *at);
            }
            Self::Offer(offered, at) => {
                if newest_offer(record) == Some(offered.mark) {
                    return None;
                }
                forget_unanswered(record);
                push(record, What::Offered(offered.clone()), *at);
            }
            Self::Step(step, state, next, at) => {
                let what = |step, state| What::Step(StepEvent { step, state });
                push(record, bounded(what(*step, state.clone())), *at);
                if let Some(next) = next {
                    push(record, what(*next, StepState::Started), *at);
                }
            }
        }
        Some(())
    }
}

fn push(record: &mut Record, what: What, at: Moment) {
    record.events.push(Event {
        at,
        struck: false,
        what,
    });
}

/// The mark of the offer that was made last.
fn newest_offer(record: &Record) -> Option<OfferMark> {
    record
        .standing()
        .rev()
        .find_map(|(_, event)| match &event.what {
            What::Offered(offered) => Some(offered.mark),
            _ => None,
        })
}

/// Empties the links of the offers that nobody answered: they would make the record grow with every try.
fn forget_unanswered(record: &mut Record) {
    let answered: Vec<OfferMark> = record
        .standing()
        .filter_map(|(_, event)| match &event.what {
            What::Answered(answered) => Some(answered.to),
            _ => None,
        })
        .collect();
    for event in &mut record.events {
        if let What::Offered(offered) = &mut event.what
            && !answered.contains(&offered.mark)
        {
            offered.link.clear();
        }
    }
}

fn event_at(record: &mut Record, event: u32) -> Option<&mut Event> {
    record.events.get_mut(usize::try_from(event).ok()?)
}

fn reading_at(record: &mut Record, event: u32) -> Option<&mut Reading> {
    match &mut event_at(record, event)?.what {
        What::Reading(reading) => Some(reading),
        _ => None,
    }
}

/// Notes and reasons no longer than a link takes.
fn bounded(what: What) -> What {
    let cut = |text: String| -> String {
        let text = text.trim();
        text.chars().take(Record::MOST_NOTE_CHARACTERS).collect()
    };
    match what {
        What::Note(text) => What::Note(cut(text)),
        What::Step(StepEvent {
            step,
            state: StepState::Skipped(why),
        }) => What::Step(StepEvent {
            step,
            state: StepState::Skipped(cut(why)),
        }),
        other => other,
    }
}
