//! What jobs have taught the lathe already, so that the same day is not learned twice, in this visit or in a later one.

use std::rc::Rc;

use skimwright::job::{Job, Learned, Record};
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
        self.has(&mark(record, &Learned::default()))
    }

    /// Whether the lathe knows what it does with what this record taught.
    pub(super) fn holds(&self, record: &Record, learned: &Learned) -> bool {
        self.has(&mark(record, learned))
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

    fn has(&self, mark: &Option<String>) -> bool {
        mark.as_ref().is_some_and(|mark| self.marks.contains(mark))
    }
}

/// The end of the text that such a job is kept as, where its check sum stands: another in the same words is as good as
/// never.
fn mark(record: &Record, learned: &Learned) -> Option<String> {
    let mut job = Job {
        record: record.clone(),
        ..Job::default()
    };
    job.shop.machine.learned = learned.clone();
    let text = encode_to_keep(&job).ok()?;
    text.get(text.len().checked_sub(MARK)?..).map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use skimwright::job::{Event, Learned, Moment, Record, StepEvent, StepState, What, WorkStep};

    use super::{MOST, Taught};

    fn day(at: u64) -> Record {
        let state = StepState::Done;
        let step = WorkStep::Hold;
        Record {
            events: vec![Event {
                at: Moment::unix_seconds(at),
                struck: false,
                what: What::Step(StepEvent { step, state }),
            }],
            ..Record::default()
        }
    }

    #[test]
    fn a_day_is_known_again_from_what_was_stored() {
        let known = Learned::default();
        let mut taught = Taught::default();
        assert!(!taught.by(&day(1)) && !taught.holds(&day(1), &known));
        taught.note(&day(1), &known);
        let again = Taught::read(&taught.text());
        assert_eq!(again, taught);
        assert!(again.by(&day(1)) && again.holds(&day(1), &known));
        assert!(!again.by(&day(2)));
    }

    #[test]
    fn the_oldest_days_are_forgotten_and_rubbish_is_none() {
        let mut taught = Taught::default();
        for at in 1..=200 {
            taught.note(&day(at), &Learned::default());
        }
        assert!(taught.by(&day(200)) && !taught.by(&day(1)));
        assert!(taught.text().len() <= MOST * 9);
        assert_eq!(Taught::read("  x y\u{e4}\u{e4}\u{e4}"), Taught::default());
    }
}
