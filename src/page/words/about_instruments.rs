//! What can be said about measuring instruments, and about what jobs taught of the lathe.

use skimwright::costing::Pace;
use skimwright::job::{InstrumentKind, Job, LearnedPace, LearnedTakes};

use super::Words;
use crate::page::shelf::Lesson;

/// A fixed text about instruments and learning.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfInstruments {
    Title,
    Lead,
    NoneYet,
    Add(InstrumentKind),
    Kind(InstrumentKind),
    Used,
    LearnedTitle,
    LearnedLead,
    NothingLearned,
    Takes,
    Paces,
    Forget,
    Teach,
    TeachNote,
}

impl Words {
    /// The name of an instrument, counted from 1.
    pub(crate) fn instrument_title(self, index: u8) -> String {
        said!(self, instruments::title(index))
    }

    /// What an instrument is, in one line.
    pub(crate) fn instrument_line(self, job: &Job, index: u8) -> Option<String> {
        let instrument = job.shop.instruments.get(usize::from(index))?;
        let graduation = instrument.graduation.as_ref().map(|it| self.entered(it));
        Some(spoken!(self, instruments::line(instrument, graduation)))
    }

    /// What an infeed takes off, as jobs taught it.
    pub(crate) fn learned_takes(self, takes: &LearnedTakes) -> String {
        let share = [&takes.share, &takes.share_deviation].map(|it| self.entered(it));
        let offset = [&takes.offset, &takes.offset_deviation].map(|it| self.entered(it));
        let cuts = format!("{:.0}", takes.cuts.value().to_pieces());
        said!(self, instruments::takes(&share, &offset, &cuts))
    }

    /// How long a step takes against the plan, as jobs taught it.
    pub(crate) fn learned_pace(self, pace: &LearnedPace) -> String {
        let factor = self.entered(&pace.factor);
        let jobs = format!("{:.0}", pace.jobs.value().to_pieces());
        said!(self, instruments::pace(&factor, &jobs))
    }

    /// What was learned, by its name.
    pub(crate) fn lesson(self, lesson: Lesson) -> &'static str {
        said!(self, instruments::lesson(lesson))
    }

    /// Which steps were reckoned by the person's own times; `None` where none was.
    pub(crate) fn by_own_times(self, learned: &[Pace]) -> Option<String> {
        let names: Vec<&str> = learned
            .iter()
            .map(|pace| self.lesson(Lesson::Pace(pace.step)))
            .collect();
        (!names.is_empty()).then(|| said!(self, instruments::by_own_times(&names)))
    }
}
