//! How far a job is, told from what was entered and from its record.

use super::{Job, StepState, What, WorkStep};

/// How far a job is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Progress {
    /// Neither the part nor what is wanted of it was entered.
    #[default]
    New,
    /// There is something to plan with.
    Planned,
    /// Something was done or read at the machine.
    Cutting,
    /// What leaves the shop was measured, or the last step was done.
    Done,
}

impl Progress {
    /// Every one, in the order of the work.
    pub const ALL: [Self; 4] = [Self::New, Self::Planned, Self::Cutting, Self::Done];

    /// A short text for what is stored, which never changes.
    pub const fn code(self) -> &'static str {
        match self {
            Self::New => "new",
            Self::Planned => "planned",
            Self::Cutting => "cutting",
            Self::Done => "done",
        }
    }

    /// The one of this text.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.code() == code)
    }
}

impl Job {
    /// How far it is. A step that was done and reopened counts as begun; what was struck out does not count, nor
    /// what the owner was shown and answered.
    ///
    /// # Example
    /// ```
    /// use skimwright::job::{Job, Progress};
    /// assert_eq!(Job::default().progress(), Progress::New);
    /// ```
    pub fn progress(&self) -> Progress {
        if [WorkStep::Check, WorkStep::Clean]
            .into_iter()
            .any(|step| self.is_done(step))
        {
            Progress::Done
        } else if self.record.has_work() {
            Progress::Cutting
        } else {
            let plain = Self::default();
            if self.part == plain.part && self.wanted == plain.wanted {
                Progress::New
            } else {
                Progress::Planned
            }
        }
    }

    /// Whether the last word on a step is that it is done.
    fn is_done(&self, step: WorkStep) -> bool {
        let mut words = self
            .record
            .standing()
            .filter_map(|(_, event)| match &event.what {
                What::Step(about) if about.step == step => Some(&about.state),
                _ => None,
            });
        matches!(words.next_back(), Some(StepState::Done))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::demo::demo_jobs;
    use crate::job::{Event, Moment, OfferMark, Offered, Shows, StepEvent};

    fn event(step: WorkStep, state: StepState) -> Event {
        Event {
            at: Moment::unix_seconds(0),
            struck: false,
            what: What::Step(StepEvent { step, state }),
        }
    }

    #[test]
    fn a_job_is_new_until_the_part_or_what_is_wanted_was_entered() {
        let named = Job {
            title: "Named".to_owned(),
            ..Job::default()
        };
        assert_eq!(named.progress(), Progress::New);
        for job in demo_jobs() {
            assert_eq!(job.progress(), Progress::Planned);
        }
    }

    #[test]
    fn the_record_tells_cutting_and_done() {
        let [mut job, ..] = demo_jobs();
        let mut struck = event(WorkStep::Hold, StepState::Started);
        struck.struck = true;
        job.record.events.push(struck);
        assert_eq!(job.progress(), Progress::Planned, "a wrong entry is none");
        let mut shown = event(WorkStep::Hold, StepState::Started);
        shown.what = What::Offered(Offered {
            mark: OfferMark(1),
            shows: Shows::default(),
            link: String::new(),
        });
        job.record.events.push(shown);
        assert_eq!(job.progress(), Progress::Planned, "nothing was done");
        job.record
            .events
            .push(event(WorkStep::Hold, StepState::Started));
        assert_eq!(job.progress(), Progress::Cutting);
        job.record
            .events
            .push(event(WorkStep::Check, StepState::Done));
        assert_eq!(job.progress(), Progress::Done);
        job.record
            .events
            .push(event(WorkStep::Check, StepState::Reopened));
        assert_eq!(job.progress(), Progress::Cutting);
        job.record
            .events
            .push(event(WorkStep::Clean, StepState::Done));
        assert_eq!(job.progress(), Progress::Done);
    }

    #[test]
    fn every_code_leads_back() {
        for progress in Progress::ALL {
            assert_eq!(Progress::from_code(progress.code()), Some(progress));
        }
    }
}
