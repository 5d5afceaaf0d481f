//! All that the page remembers, and the one way it changes.
//!
//! Nothing here knows the browser: storage, address and sharing are effects of their own in `hooks`.

use std::cell::OnceCell;
use std::rc::Rc;

use skimwright::job::{Field, Job};
use skimwright::measuring::Advice;
use skimwright::plan::{Compared, Plan, compare, plan};
use skimwright::quantity::Units;
use skimwright::work::StepNow;

use super::edit::{Edit, List, ShopEdit, stands};
use super::jobs::{Jobs, JobsAction};
use super::lathe::{AtLathe, LatheAction, same_but_record};
use super::options::Filter;
use super::panels::Panels;
use super::print::{AtPrint, PrintAction};
use super::sharing::{ShareAction, Sharing};
use super::shelf::{ShelfAction, Shelves};
use super::short_map::ShortMap;
use super::taught::Taught;
use super::words::Tongue;

pub(crate) use super::reading::Wrong;
pub(crate) use super::view::{Cover, Look, Notice, Panel, Saved, Share, Shown, Spot, Stage};

/// All that the page remembers.
#[derive(Clone, Debug)]
pub(crate) struct State {
    /// How many actions led here: what two states are told apart by, without looking through job and plan.
    actions: u64,
    pub(crate) job: Rc<Job>,
    pub(crate) plan: Rc<Plan>,
    /// What other rows of passes would bring: worked out when it is first asked for.
    compared: OnceCell<Rc<Compared>>,
    /// The steps of the work and what to do next, in the same way.
    pub(super) steps: OnceCell<Rc<[StepNow]>>,
    pub(super) advice: OnceCell<Rc<Advice>>,
    pub(super) past: Vec<Rc<Job>>,
    pub(super) future: Vec<Rc<Job>>,
    /// The field that is being typed into: its changes are one step of undo.
    pub(crate) editing: Option<Field>,
    /// Texts as typed, until they are left and understood.
    pub(super) drafts: ShortMap<Field, String>,
    pub(crate) stage: Stage,
    pub(crate) units: Units,
    pub(crate) look: Look,
    pub(crate) tongue: Tongue,
    /// The field opened from the drawing.
    pub(crate) picked: Option<Field>,
    /// How often a field was opened: opening the same one again takes the focus there again.
    pub(crate) times_picked: u32,
    /// How often the findings were asked for on this visit to the stage, so that the focus goes there each time; 0: not.
    pub(crate) to_findings: u32,
    /// The pass whose detail is open, by its place in the plan.
    pub(crate) pass: Option<u8>,
    /// What is opened and closed within the stages, and where the focus goes.
    pub(crate) panels: Panels,
    pub(crate) filter: Filter,
    pub(crate) lathe: AtLathe,
    pub(crate) print: AtPrint,
    pub(crate) cover: Option<Cover>,
    pub(crate) notice: Option<Notice>,
    /// One's own job, while a visitor's is looked at.
    pub(crate) own: Option<Rc<Job>>,
    /// All jobs that are kept.
    pub(crate) jobs: Jobs,
    /// Links that are given away, and answers that come.
    pub(crate) sharing: Sharing,
    /// Lathes and tools that are kept for other jobs.
    pub(crate) shelves: Shelves,
    /// What jobs have taught already.
    pub(crate) taught: Taught,
    pub(crate) saved: Saved,
    pub(crate) update_waits: bool,
}

/// What a person does, in his words.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Action {
    Type(Field, String),
    Leave(Field),
    Edit(Edit),
    Undo,
    Redo,
    GoTo(Stage),
    /// To the findings on Plan.
    ReadFindings,
    ShowUnits(Units),
    ShowLook(Look),
    Speak(Tongue),
    Pick(Option<Field>),
    Open(Panel, bool),
    /// Opens the detail of a pass, or closes it.
    PickPass(Option<u8>),
    /// Pins the pass that is picked, or takes its pin away.
    PinPicked,
    /// Which of the things that the part could become are shown.
    Filter(Filter),
    /// Something at the lathe.
    Lathe(LatheAction),
    /// Something about printing and files.
    Print(PrintAction),
    Show(Option<Cover>),
    /// A plain new job beside the others.
    Reset,
    /// An example as a job of one's own beside the others.
    TakeExample(Rc<Job>),
    OpenLink(String),
    /// A visitor's job as one of one's own beside the others.
    KeepVisitor,
    BackToOwn,
    /// Something with the lathes and tools that are kept.
    Shelf(ShelfAction),
    /// Something with the jobs that are kept.
    Jobs(JobsAction),
    /// Something with links that are given away.
    Share(ShareAction),
    Tell(Option<Notice>),
    /// Whether the small copy of the job is kept.
    Stored(bool),
    UpdateWaits,
}

impl PartialEq for State {
    /// Whether nothing was done between the two.
    fn eq(&self, other: &Self) -> bool {
        self.actions == other.actions
    }
}

/// Most steps of undo that are kept.
const MOST_STEPS: usize = 200;

impl State {
    /// With a job and nothing else.
    pub(super) fn of(job: Job) -> Self {
        let plan = Rc::new(plan(&job));
        Self {
            job: Rc::new(job),
            plan,
            compared: OnceCell::new(),
            steps: OnceCell::new(),
            advice: OnceCell::new(),
            actions: 0,
            past: Vec::new(),
            future: Vec::new(),
            editing: None,
            drafts: ShortMap::default(),
            stage: Stage::default(),
            units: Units::default(),
            look: Look::default(),
            tongue: Tongue::default(),
            picked: None,
            times_picked: 0,
            to_findings: 0,
            pass: None,
            panels: Panels::default(),
            filter: Filter::default(),
            lathe: AtLathe::default(),
            print: AtPrint::default(),
            cover: None,
            notice: None,
            own: None,
            jobs: Jobs::default(),
            sharing: Sharing::default(),
            shelves: Shelves::default(),
            taught: Taught::default(),
            saved: Saved::default(),
            update_waits: false,
        }
    }

    pub(crate) fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    pub(crate) fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// The state after an action.
    pub(crate) fn after(mut self, action: Action) -> Self {
        self.actions += 1;
        match action {
            Action::Type(field, text) if field.most_characters().is_some() => {
                return self.after(Action::Edit(Edit::Text(field, text)));
            }
            Action::Type(field, text) => self.type_into(field, text),
            Action::Leave(field) => self.leave(field),
            Action::Edit(edit) => self.edit(&edit),
            Action::Undo => self.step(true),
            Action::Redo => self.step(false),
            Action::GoTo(stage) => {
                self.stage = stage;
                self.print.put_away();
                self.picked = None;
                self.pass = None;
                self.to_findings = 0;
            }
            Action::ReadFindings => {
                self.stage = Stage::Plan;
                self.picked = None;
                // Never nought, which is not at all.
                self.to_findings = self.to_findings.wrapping_add(1).max(1);
            }
            Action::ShowUnits(units) => {
                self.drafts.clear();
                self.units = units;
            }
            Action::ShowLook(look) => self.look = look,
            Action::Speak(tongue) => self.tongue = tongue,
            Action::Pick(field) => {
                self.picked = field.and_then(|field| self.field_to_open(field));
                self.times_picked = self.times_picked.wrapping_add(1);
                let list = match field {
                    Some(Field::Pins) => Some(Panel::Pins),
                    Some(Field::Instruments) => Some(Panel::Instruments),
                    _ => None,
                };
                if let Some(list) = list {
                    // It has no field of its own: there a pass is pinned, or an instrument added.
                    self.picked = None;
                    self.panels.open_and_focus(list);
                }
                match (self.picked, field.and_then(List::of)) {
                    (Some(field), _) => self.panels.open_to(field),
                    // An empty list has no field: there a row is added.
                    (None, Some((list, _))) => self.panels.open_and_focus(Panel::Add(list)),
                    (None, None) => {}
                }
            }
            Action::Open(panel, open) => self.panels.set(panel, open),
            Action::PickPass(pass) => {
                // Closed, the focus goes back to where it was opened.
                let spot = match (pass, self.pass) {
                    (Some(_), _) => Some(Spot::PassDetail),
                    (None, open) => open.map(Spot::Pass),
                };
                self.pass = pass;
                if let Some(spot) = spot {
                    self.panels.focus(spot);
                }
            }
            Action::PinPicked => self.pin_picked(),
            Action::Filter(filter) => self.filter = filter,
            Action::Lathe(action) => self.at_lathe(action),
            Action::Print(action) => self.at_print(action),
            Action::Show(cover) => {
                // Back from a question, the list is as it was.
                if cover == Some(Cover::Jobs) && self.cover.is_none() {
                    self.jobs.open_list();
                }
                if cover == Some(Cover::Share) {
                    self.open_sharing();
                }
                self.cover = cover;
            }
            Action::Reset => self.begin(Rc::new(Job::default())),
            Action::TakeExample(job) => self.begin(job),
            Action::OpenLink(text) => {
                self = self.open_link(&text);
                self.know_own_link();
            }
            Action::KeepVisitor => self.keep_visitor(),
            Action::BackToOwn => {
                if let Some(own) = self.own.take() {
                    self.forget_edits();
                    self.set_job(own);
                }
            }
            Action::Shelf(action) => self.do_with_shelf(action),
            Action::Tell(notice) => self.notice = notice,
            Action::Jobs(action) => self.do_with_jobs(action),
            Action::Share(action) => self.do_sharing(action),
            Action::Stored(done) => self.jobs.note_small(done),
            Action::UpdateWaits => self.update_waits = true,
        }
        self.note_job();
        self
    }

    /// What other rows of passes would bring. The first time for a job it takes as long as several plans.
    pub(crate) fn compared(&self) -> &Compared {
        self.compared
            .get_or_init(|| Rc::new(compare(&self.job, &self.plan)))
    }

    pub(super) fn edit(&mut self, edit: &Edit) {
        let mut job = Job::clone(&self.job);
        if !edit.apply(&mut job, &self.plan, self.units) || job == *self.job {
            return;
        }
        if let Some(list) = edit.moves_fields() {
            // Texts that were not understood would stand at another row than they were typed for.
            self.drafts
                .retain(|field| List::of(field).is_none_or(|(of, _)| of != list));
        }
        // They would hide what is put there now.
        self.drafts.retain(|field| !edit.fills(field));
        if edit.moves_rows() {
            self.picked = None;
        }
        self.panels.after_edit(edit, &job);
        if edit.typing().is_none() || self.editing != edit.typing() {
            self.remember();
        }
        self.editing = edit.typing();
        self.set_job(Rc::new(job));
        self.picked = self.picked.filter(|field| stands(&self.job, *field));
    }

    /// The pin of a pass in the plan, by its place among the pins.
    fn pin_at(&self, pass: u8) -> Option<u8> {
        let stock = self.plan.stock_off.as_ref()?;
        let cut = stock.passes.get(usize::from(pass))?.cut.as_ref()?;
        cut.pinned
    }

    /// Pins or unpins the picked pass; the detail stays with the pass that has the new pin, the focus with the button.
    fn pin_picked(&mut self) {
        let Some(pass) = self.pass else { return };
        let spot = self.panels.spot;
        if let Some(pin) = self.pin_at(pass) {
            self.edit(&Edit::Shop(ShopEdit::RemovePin(pin)));
        } else {
            self.edit(&Edit::Shop(ShopEdit::PinPass(pass)));
            let count = u8::try_from(self.job.setup.pins.len()).ok();
            let last = count.and_then(|count| count.checked_sub(1));
            let pinned = (0..u8::MAX).find(|at| last.is_some() && self.pin_at(*at) == last);
            self.pass = pinned.or(self.pass);
        }
        self.panels.spot = spot;
    }

    /// The field that is opened for another: a list as a whole has none of its own, and its last row is meant.
    fn field_to_open(&self, field: Field) -> Option<Field> {
        match List::of(field) {
            Some((list, None)) => list.last_field(&self.job.part),
            _ => Some(field),
        }
    }

    fn type_into(&mut self, field: Field, text: String) {
        let mut job = Job::clone(&self.job);
        let read = self.read_into(&mut job, field, &text);
        self.drafts.insert(field, text);
        self.panels.keep_open_round(field, &self.job);
        if !read {
            // The last list that was one is not passed through like a figure: it stays.
            if self.job.gears(field).is_none() {
                self.take_back_typing(field);
            }
        } else if job != *self.job {
            if self.editing != Some(field) {
                self.remember();
                self.editing = Some(field);
            }
            self.set_job(Rc::new(job));
        }
    }

    /// While a text is not understood the job is as it was before the typing began: a figure that was only passed
    /// through, such as the `1` of `1 3/8 kg`, is nobody's.
    fn take_back_typing(&mut self, field: Field) {
        if self.editing != Some(field) {
            return;
        }
        self.editing = None;
        if let Some(before) = self.past.pop() {
            self.set_job(before);
        }
    }

    /// A field is left: what was understood is shown as it is kept, what was not stays as it was typed.
    fn leave(&mut self, field: Field) {
        self.editing = None;
        if self
            .drafts
            .get(field)
            .is_some_and(|text| self.is_read(field, text))
        {
            self.drafts.remove(field);
        }
    }

    /// One step of undo from here.
    fn remember(&mut self) {
        self.past.push(Rc::clone(&self.job));
        if self.past.len() > MOST_STEPS {
            self.past.remove(0);
        }
        self.future.clear();
    }

    fn step(&mut self, back: bool) {
        let (from, to) = if back {
            (&mut self.past, &mut self.future)
        } else {
            (&mut self.future, &mut self.past)
        };
        if let Some(job) = from.pop() {
            to.push(Rc::clone(&self.job));
            self.editing = None;
            self.drafts.clear();
            self.picked = self.picked.filter(|field| stands(&job, *field));
            self.panels.after_step(&self.job, &job);
            self.lathe.leave();
            self.set_job(job);
        }
    }

    pub(super) fn forget_edits(&mut self) {
        self.past.clear();
        self.future.clear();
        self.drafts.clear();
        self.editing = None;
        self.picked = None;
        self.pass = None;
        self.panels = Panels::default();
        self.lathe.leave();
        self.print.handed_back = false;
    }

    pub(super) fn set_job(&mut self, job: Rc<Job>) {
        // Whoever goes on with the job that is here has read it.
        if self.notice.as_ref().is_some_and(Notice::is_of_link) {
            self.notice = None;
        }
        // What happens at the lathe changes nothing that was planned.
        if !same_but_record(&self.job, &job) {
            self.plan = Rc::new(plan(&job));
            self.compared = OnceCell::new();
        }
        (self.steps, self.advice) = (OnceCell::new(), OnceCell::new());
        self.print.put_away();
        self.job = job;
    }
}
