//! What jobs have taught the lathe already, so that the same day is not learned twice, in this visit or in a later one.

use std::rc::Rc;

use skimwright::job::{Job, Learned, Record, What};
use skimwright::link::encode_to_keep;

/// Most marks that are kept; two for each lesson.
const MOST: usize = 64;

/// Characters of a mark.
const MARK: usize = 8;

/// Marks of the records that taught, and of what the lathe knew after each.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Taught {
    marks: Rc<Vec<String>>,
}

impl Taught {
    /// From what [`text`](Self::text) gave; what is no mark is left out.
    pub(crate) fn read(text: &str) -> Self {
        let marks = text.split(' ').filter(|mark| mark.chars().count() == MARK);
        Self {
            marks: Rc::new(marks.take(MOST).map(str::to_owned).collect()),
        }
    }

    /// To be stored.
    pub(crate) fn text(&self) -> String {
        self.marks.join(" ")
    }

    /// Whether this record taught any lathe.
    pub(super) fn by(&self, record: &Record) -> bool {
        self.has(mark(record, &Learned::default()))
    }

    /// Whether the lathe knows what it does with what this record taught.
    pub(super) fn holds(&self, record: &Record, learned: &Learned) -> bool {
        self.has(mark(record, learned))
    }

    /// Notes that a record taught, and what the lathe knows now.
    pub(super) fn note(&mut self, record: &Record, learned: &Learned) {
        let new = [mark(record, &Learned::default()), mark(record, learned)];
        let mut marks: Vec<String> = new.into_iter().flatten().collect();
        let old = self.marks.iter().filter(|old| !marks.contains(old));
        let old: Vec<String> = old.take(MOST - marks.len()).cloned().collect();
        marks.extend(old);
        self.marks = Rc::new(marks);
    }

    fn has(&self, mark: Option<String>) -> bool {
        mark.is_some_and(|mark| self.marks.contains(&mark))
    }
}

/// Of a record only what can teach: a note, an offer, an answer or a name that comes later makes no other day of it, nor
/// does what is struck out of it.
fn lesson(record: &Record) -> Record {
    let teaches = |what: &What| match what {
        What::Reading(_) | What::Cut(_) | What::Change(_) | What::Step(_) => true,
        What::Note(_) | What::Offered(_) | What::Answered(_) => false,
    };
    let events = record.standing().filter(|(_, event)| teaches(&event.what));
    Record {
        events: events.map(|(_, event)| event.clone()).collect(),
        ..Record::default()
    }
}

/// The end of the text that such a job is kept as, where its check sum stands: another in the same words is as good as
/// never.
fn mark(record: &Record, learned: &Learned) -> Option<String> {
    let mut job = Job {
        record: lesson(record),
        ..Job::default()
    };
    job.shop.machine.learned = learned.clone();
    let text = encode_to_keep(&job).ok()?;
    text.get(text.len().checked_sub(MARK)?..).map(str::to_owned)
}

#[cfg(test)]
#[path = "taught_tests.rs"]
mod tests;
