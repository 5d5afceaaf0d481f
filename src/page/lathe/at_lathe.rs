//! What is seen at the lathe, and what is done there.

use std::rc::Rc;

use skimwright::job::{Job, Moment, Reading, StepState, WorkStep};
use skimwright::measuring::{Advice, advise};
use skimwright::quantity::{Dimension, Unit};
use skimwright::work::{StepHow, StepNow, current, steps};

use super::keypad::{Keypad, PadAction, PadFor};
use crate::page::edit::{Edit, RecordEdit};
use crate::page::state::{Notice, Spot, State};

/// What is seen at the lathe.
#[derive(Clone, Debug, Default)]
pub(crate) struct AtLathe {
    /// The step that is looked at; `None` is the one to do.
    pub(crate) step: Option<WorkStep>,
    pub(crate) pad: Option<Keypad>,
    /// Why the step is to be left out, while that is asked.
    pub(crate) skipping: Option<String>,
    pub(crate) thumb: Thumb,
    /// Whether a step's planned time is called out; never kept, since a browser lets a page sound only after a tap.
    pub(crate) alarm: bool,
}

impl AtLathe {
    /// Leaves what was looked at or typed, as the job is another one.
    pub(crate) fn leave(&mut self) {
        self.step = None;
        self.pad = None;
        self.skipping = None;
    }
}

/// The thumb that the buttons are within reach of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Thumb {
    #[default]
    Right,
    Left,
}

impl Thumb {
    pub(crate) const ALL: [Self; 2] = [Self::Left, Self::Right];
}

/// What is done at the lathe.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum LatheAction {
    /// Another step is looked at; `None` is the one to do.
    Look(Option<WorkStep>),
    /// The clock of a step begins or goes on.
    Start(WorkStep, Moment),
    Pause(WorkStep, Moment),
    Done(WorkStep, Moment),
    /// Asks why a step is left out, or no longer asks.
    AskSkip(bool),
    Why(String),
    Skip(WorkStep, String, Moment),
    Reopen(WorkStep, Moment),
    /// Opens the keypad for the diameter where it is to be measured next.
    Measure,
    OpenPad(PadFor),
    Pad(PadAction),
    ClosePad,
    /// What was keyed in goes into the record.
    Keep(Moment),
    Record(RecordEdit),
    /// A doubted reading, by its place in the record, was meant to be this one.
    Meant(u32, Reading, Moment),
    Thumb(Thumb),
    Alarm(bool),
}

impl State {
    /// The steps of the work as they stand.
    pub(crate) fn steps(&self) -> &[StepNow] {
        self.steps
            .get_or_init(|| Rc::from(steps(&self.job, &self.plan)))
    }

    /// What to do next at the lathe.
    pub(crate) fn advice(&self) -> &Advice {
        self.advice
            .get_or_init(|| Rc::new(advise(&self.job, &self.plan)))
    }

    /// The unit that the dial is marked in: that of its division, as it was entered.
    pub(crate) fn unit_of_dial(&self) -> Unit {
        let division = self.job.shop.machine.graduation.as_ref();
        match division.map(|division| division.entry().unit().is_inch()) {
            Some(true) => Unit::Inch,
            Some(false) => Unit::Millimetre,
            None => self.units.typed_unit(Dimension::Length),
        }
    }

    /// The step to work on; `None` where none is left.
    pub(crate) fn step_to_do(&self) -> Option<WorkStep> {
        let steps = self.steps();
        steps.get(current(steps)).map(|step| step.step)
    }

    /// The step on the screen; the last one where all are done.
    pub(crate) fn step_shown(&self) -> Option<&StepNow> {
        let steps = self.steps();
        let wanted = self.lathe.step.or_else(|| self.step_to_do());
        let found = wanted.and_then(|wanted| steps.iter().find(|step| step.step == wanted));
        found.or(steps.last())
    }

    /// The step before one in the list.
    pub(crate) fn step_before(&self, step: WorkStep) -> Option<WorkStep> {
        let steps = self.steps();
        let at = steps.iter().position(|it| it.step == step)?;
        steps.get(at.checked_sub(1)?).map(|it| it.step)
    }

    /// The next step that is still to do, once this one is finished.
    fn step_after(&self, step: WorkStep) -> Option<WorkStep> {
        let steps = self.steps();
        let at = steps.iter().position(|it| it.step == step)?;
        let (before, after) = (steps.get(..at)?, steps.get(at + 1..)?);
        let mut open = after.iter().chain(before).filter(|it| !it.how.is_over());
        open.next().map(|it| it.step)
    }

    pub(crate) fn at_lathe(&mut self, action: LatheAction) {
        match action {
            LatheAction::Look(step) => {
                self.lathe.step = step;
                self.lathe.skipping = None;
                self.panels.focus(Spot::StepTitle);
            }
            LatheAction::Start(step, at) => {
                self.record_step(step, StepState::Started, None, at);
            }
            LatheAction::Pause(step, at) => self.record_step(step, StepState::Paused, None, at),
            LatheAction::Done(step, at) => self.finish(step, StepState::Done, at),
            LatheAction::AskSkip(ask) => {
                self.lathe.skipping = ask.then(String::new);
                self.panels
                    .focus(if ask { Spot::SkipTitle } else { Spot::Skip });
            }
            LatheAction::Why(why) => self.lathe.skipping = Some(why),
            LatheAction::Skip(step, why, at) => self.finish(step, StepState::Skipped(why), at),
            LatheAction::Reopen(step, at) => {
                self.record_step(step, StepState::Reopened, None, at);
                self.panels.focus(Spot::StepTitle);
            }
            LatheAction::Measure => {
                let dial = self.unit_of_dial();
                self.lathe.pad = Some(Keypad::for_diameter(&self.job, self.units, dial));
            }
            LatheAction::OpenPad(of) => {
                self.lathe.pad = Some(Keypad::open(of, &self.job, self.unit_of_dial()));
            }
            LatheAction::Pad(action) => {
                self.lathe.pad = self.lathe.pad.take().map(|pad| pad.after(action));
            }
            LatheAction::ClosePad => self.lathe.pad = None,
            LatheAction::Keep(at) => self.keep_pad(at),
            LatheAction::Record(edit) => self.record(edit),
            LatheAction::Meant(event, reading, at) => {
                self.record(RecordEdit::Meant(event, reading, at));
            }
            LatheAction::Thumb(thumb) => self.lathe.thumb = thumb,
            LatheAction::Alarm(on) => self.lathe.alarm = on,
        }
    }

    fn keep_pad(&mut self, at: Moment) {
        let Some(pad) = &mut self.lathe.pad else {
            return;
        };
        match pad.what(&self.job, &self.plan, self.units) {
            Ok(what) => {
                let adds = RecordEdit::Add(what, at);
                // With no room left it stays open, so that the number is not lost.
                if !adds.is_too_much(&self.job.record) {
                    self.lathe.pad = None;
                }
                self.record(adds);
            }
            Err((slot, _)) => {
                pad.slot = slot;
                pad.tried = true;
            }
        }
    }

    /// A step is behind; the clock of the next one begins, and it comes on the screen.
    fn finish(&mut self, step: WorkStep, state: StepState, at: Moment) {
        let next = self.step_after(step);
        let stands = |wanted: WorkStep, how: StepHow| {
            let mut steps = self.steps().iter();
            steps.any(|it| it.step == wanted && it.how == how)
        };
        // Whose clock never ran did the work without it: the next one's is not begun unasked.
        let starts =
            next.filter(|next| stands(step, StepHow::Running) && !stands(*next, StepHow::Running));
        self.record_step(step, state, starts, at);
        self.lathe.step = next;
        self.lathe.skipping = None;
        self.panels.focus(Spot::StepTitle);
    }

    fn record_step(
        &mut self,
        step: WorkStep,
        state: StepState,
        next: Option<WorkStep>,
        at: Moment,
    ) {
        self.record(RecordEdit::Step(step, state, next, at));
    }

    fn record(&mut self, edit: RecordEdit) {
        if edit.is_too_much(&self.job.record) {
            self.notice = Some(Notice::RecordFull);
        }
        self.edit(&Edit::Record(edit));
    }
}

/// Whether two jobs differ in their records at most, so that they have the same plan.
pub(crate) fn same_but_record(one: &Job, other: &Job) -> bool {
    // Named one by one, so that a new part of a job is not forgotten here.
    let Job {
        version: _,
        title,
        part,
        wanted,
        shop,
        setup,
        record: _,
    } = one;
    *title == other.title
        && *part == other.part
        && *wanted == other.wanted
        && *shop == other.shop
        && *setup == other.setup
}
