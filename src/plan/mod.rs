//! All that follows from a job.
//!
//! [`plan`] is total: whatever is entered, it returns what can be computed and says in findings what cannot.

mod checked;
mod finding;
mod judge;
mod level;
mod shape;
mod timing;
mod usual;

use serde::Serialize;

pub(crate) use checked::Checked;
pub use checked::{is_in_bounds, number_fields};
pub use finding::{Code, Finding, Level};
pub(crate) use judge::{end_is_hard, shoulder_findings};
pub(crate) use timing::section;
pub use usual::usual_value;

use crate::costing::{Cost, PlannedTime};
use crate::cutting::passes::PassQuestion;
use crate::cutting::{
    CountPoint, FinishPlan, Saving, StockOff, ToolChoice, by_count, savings, stock_off, usual_kerf,
};
use crate::holding::{DialPlan, Hold, HoldingPlan};
use crate::job::{Field, Job};
use crate::order;
use crate::part::{Pick, Profile, Received};
use crate::quantity::Length;
use crate::receiver::{self, ReceiverPlan};
use crate::rework::centre::{CentreQuestion, plan_centre};
use crate::rework::finished::{Nominal, size_limits};
use crate::rework::metal::{masses, metal_budget};
use crate::rework::{
    Bears, Centre, CleanUp, CutOff, Kept, Masses, MetalBudget, SizeLimits, Wall, WantedShank,
    bears, clean_up, cut_off, grip, kept, wall,
};
use crate::tables::ToolKind;
use crate::working::Figure;
use timing::TimeQuestion;

/// All that follows from a job. What could not be computed is `None`, and a finding says why.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Plan {
    /// Where to cut, what falls off, how long the shank is then.
    pub cut_off: Option<CutOff>,
    /// What the receiver asks, and how the shank fits into it.
    pub receiver: Option<ReceiverPlan>,
    /// What the receiver can grip.
    pub grip: Option<Figure<Length>>,
    /// What is turned off, pass by pass.
    pub stock_off: Option<StockOff>,
    /// How deep to go for the countersink.
    pub centre: Option<Centre>,
    /// Which tools turn the metal, and whether grinding is better.
    pub tools: Option<ToolChoice>,
    /// How shoulder, end and surface are finished.
    pub finish: Option<FinishPlan>,
    /// How the part is held, and what that does.
    pub holding: Option<HoldingPlan>,
    /// What the indicator's readings say.
    pub dial: Option<DialPlan>,
    /// How long all of it takes.
    pub time: Option<PlannedTime>,
    /// What it costs; `None` without a rate.
    pub cost: Option<Cost>,
    /// The size limits of the finished diameter.
    pub limits: Option<SizeLimits>,
    /// The most that could be had of the stock.
    pub clean_up: Option<CleanUp>,
    /// The wall round each hole.
    pub walls: Vec<Wall>,
    /// Where the metal goes.
    pub metal: Option<MetalBudget>,
    /// What is kept of strength and stiffness.
    pub kept: Option<Kept>,
    /// What the finished shank bears.
    pub bears: Option<Bears>,
    /// What the whole part weighs before and after.
    pub masses: Option<Masses>,
    /// What there is to say, worst first; never empty.
    pub findings: Vec<Finding>,
    /// The outlines, for the drawing.
    #[serde(skip)]
    pub shape: Shape,
}

/// The outlines of the part before and after.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shape {
    /// The part as received.
    pub received: Option<Received>,
    /// The shank wanted.
    pub shank: Option<WantedShank>,
    /// What will be left of the shank: the wanted outline where there is metal for it.
    pub finished: Option<Profile>,
    /// The holes of the finished shank, the new centre included.
    pub finished_holes: Option<Profile>,
    /// The new centre alone; empty where none is made.
    pub new_centre: Profile,
}

impl Plan {
    /// What is known of the part as it was received, to be drawn: nothing of what is planned.
    #[must_use]
    pub fn as_received(&self) -> Self {
        Self {
            shape: Shape {
                received: self.shape.received.clone(),
                ..Shape::default()
            },
            ..Self::default()
        }
    }
}

/// Computes all that follows from a job. Pure and total: it never panics and shows no number that is not finite.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan};
/// let plan = plan(&Job::default());
/// // A 20 mm shank of 80 mm that becomes 50 mm, faced by 1 mm: the mark is 29 mm from the free end.
/// let mark = plan.cut_off.unwrap().from_free_end.value;
/// assert!((mark.to_mm() - 29.0).abs() < 1e-9);
/// ```
pub fn plan(job: &Job) -> Plan {
    let checked = Checked::new(job);
    let mut plan = Plan {
        findings: checked.out_of_bounds(),
        ..Plan::default()
    };
    plan.findings.extend(judge::form_findings(job));
    plan.findings.extend(judge::taper_findings(job, &checked));
    plan.findings.extend(judge::hole_findings(job, &checked));
    match size_limits(job, &checked) {
        Ok(limits) => plan.limits = limits,
        Err(finding) => plan.findings.push(finding),
    }
    if let Some(received) = Received::from_job(job, &checked) {
        plan.findings.extend(shape::findings(job, &received));
        plan_part(job, &checked, received, &mut plan);
    }
    // A hole wider than the part has been said; what it does to the finished shank says nothing more.
    if plan
        .findings
        .iter()
        .any(|it| matches!(it.code, Code::BoreTooWide { .. }))
    {
        plan.findings
            .retain(|it| !matches!(it.code, Code::BreaksOut { .. }));
    }
    plan.findings.dedup();
    // Stable, so that findings of one level stay in the order of the work.
    order::by(&mut plan.findings, |a, b| b.level.cmp(&a.level));
    if plan.findings.is_empty() {
        plan.findings.push(Finding {
            level: Level::Clear,
            field: Field::WantedDiameter,
            code: Code::AllClear,
        });
    }
    plan
}

/// What other rows of passes would bring: each number of passes, and each limit widened by [`WIDENED`].
///
/// Takes several times as long as [`plan`], so that it is asked for by itself. Empty where there are no passes.
///
/// [`WIDENED`]: crate::cutting::WIDENED
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::{compare, plan}};
/// let job = Job::default();
/// let compared = compare(&job, &plan(&job));
/// let best = compared.counts.iter().find(|point| point.planned).unwrap();
/// // Rows are evened where that costs no more than a hundredth.
/// assert!(compared.counts.iter().all(|point| best.time <= point.time * 1.01));
/// ```
pub fn compare(job: &Job, plan: &Plan) -> Compared {
    let checked = Checked::new(job);
    let known = (
        plan.stock_off.as_ref(),
        plan.limits,
        plan.shape.received.as_ref(),
        plan.shape.shank.as_ref(),
    );
    let (Some(stock), Some(limits), Some(received), Some(shank)) = known else {
        return Compared::default();
    };
    let hold = Hold::read(
        job,
        &checked,
        received,
        shank.length.min(received.shank_length),
    );
    let question = PassQuestion {
        job,
        checked: &checked,
        received,
        shank,
        limits,
        hold: hold.as_ref(),
    };
    Compared {
        counts: by_count(&question, stock, timing::prices(job, &checked)),
        savings: savings(&question, stock),
    }
}

/// What other rows of passes would bring.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Compared {
    /// The best row of each number of passes, the fewest first.
    pub counts: Vec<CountPoint>,
    /// What widening a limit would bring, the most first.
    pub savings: Vec<Saving>,
}

fn plan_part(job: &Job, checked: &Checked, received: Received, plan: &mut Plan) {
    let kerf = checked.or_usual(Field::Kerf, usual_kerf(job.shop.cut_off_method));
    let density = job.part.material.density();
    plan.cut_off = kerf.and_then(|kerf| cut_off::cut_off(&received, checked, kerf, density));
    let shank = wanted_shank(checked, plan.limits);
    if let Some(cut) = &plan.cut_off {
        plan.findings
            .extend(judge::length_findings(cut, checked, &received));
        plan.findings.extend(judge::saw_finding(job, cut));
        plan.findings.extend(judge::thread_findings(&received, cut));
    }
    if let Some(shank) = &shank {
        plan.findings
            .extend(shoulder_findings(checked, &received, shank));
    }
    let nominal = checked.length(Field::WantedDiameter).unwrap_or_default();
    let asked = receiver::asked(job, checked, nominal);
    if let (Some(shank), Some(limits)) = (&shank, plan.limits) {
        let goes_into = ReceiverPlan::new(job, checked, limits, nominal, shank, &received);
        plan.findings.extend(receiver::findings(
            job, checked, &goes_into, limits, nominal, shank, &received,
        ));
        plan.receiver = Some(goes_into);
    }
    if let (Some(shank), Some(cut)) = (&shank, &plan.cut_off) {
        let figure = grip::grip(checked, &asked, cut, shank);
        plan.findings
            .extend(grip::findings(checked, &asked, figure.value, cut, shank));
        plan.grip = Some(figure);
    }
    if let Some(shank) = &shank {
        plan.findings.extend(shape::through_findings(
            &received.features,
            shank.length,
            shank.diameter,
        ));
    }
    let end = shank.as_ref().map(|shank| shank.length);
    let end = end
        .unwrap_or(received.shank_length)
        .min(received.shank_length);
    let hold = Hold::read(job, checked, &received, end);
    if let (Some(shank), Some(limits)) = (&shank, plan.limits) {
        let question = PassQuestion {
            job,
            checked,
            received: &received,
            shank,
            limits,
            hold: hold.as_ref(),
        };
        plan_turning(&question, plan);
    }
    plan_end(job, checked, &received, shank.as_ref(), plan);
    plan_work(
        job,
        checked,
        &received,
        (shank.as_ref(), hold.as_ref()),
        plan,
    );
    plan.shape.shank = shank;
    plan.shape.received = Some(received);
}

/// The shank wanted; `None` while a number of it is missing.
fn wanted_shank(checked: &Checked, limits: Option<SizeLimits>) -> Option<WantedShank> {
    Some(WantedShank::new(
        limits?.aim,
        checked.length(Field::WantedLength)?,
        checked.length(Field::ShoulderRadius)?,
        checked.length(Field::EndChamfer)?,
    ))
}

fn plan_turning(question: &PassQuestion, plan: &mut Plan) {
    let PassQuestion {
        job,
        checked,
        received,
        shank,
        limits,
        ..
    } = *question;
    plan.clean_up = clean_up::clean_up(received, shank, limits);
    let polishing = checked.length(Field::PolishingStock).unwrap_or_default();
    let clean = plan.clean_up.as_ref();
    let nominal = Nominal { job, checked };
    plan.findings
        .extend(clean.and_then(|found| clean_up::finding(found, limits, polishing, &nominal)));
    plan.kept = kept::kept(received, shank);
    if let Some(kept) = &plan.kept {
        let found = bears::bears(job, checked, received, shank, &kept.after);
        plan.findings.extend(bears::findings(job, checked, &found));
        plan.bears = Some(found);
    }
    plan.walls = wall::walls(received, shank, limits);
    plan.findings
        .extend(wall::findings(&plan.walls, limits, &nominal));
    let (turning, findings) = stock_off(question);
    plan.findings.extend(findings);
    let stock = turning.as_ref().map(|it| it.most.value / 2.0);
    let tools = ToolChoice::of(job, checked, limits, stock.unwrap_or_default());
    if !tools.grind.is_empty() && job.shop.tool != ToolKind::Grinding {
        plan.findings
            .push(Finding::at(Field::Tool, Code::GrindInstead));
    }
    plan.tools = Some(tools);
    plan.stock_off = turning;
}

/// The centre in the end, and where all the metal goes.
fn plan_end(
    job: &Job,
    checked: &Checked,
    received: &Received,
    shank: Option<&WantedShank>,
    plan: &mut Plan,
) {
    let (Some(cut), Some(shank)) = (&plan.cut_off, shank) else {
        return;
    };
    let face = cut.shank_finished.value;
    let mut outline = Profile::default();
    if let Some(mouth) = checked.length(Field::Countersink) {
        let question = CentreQuestion {
            received,
            shank,
            face,
            mouth,
            facing: cut.facing,
            order: job.shop.centre_order,
        };
        let (centre, made, findings) = plan_centre(&question);
        plan.centre = centre;
        outline = made;
        plan.findings.extend(findings);
        if plan.centre.is_some() && end_is_hard(job, cut) {
            plan.findings
                .push(Finding::at(Field::Countersink, Code::HardEnd));
        }
    }
    let stock = received.outer.between(Length::ZERO, face);
    let finished = shank.outer.merge(&stock, Pick::Smaller);
    let holes = received
        .inner
        .between(received.head.start(), face)
        .merge(&outline, Pick::Larger);
    let budget = metal_budget(received, cut, &finished, &outline);
    let density = job.part.material.density();
    plan.masses = masses(received, &finished, &holes, budget.offcut, density);
    plan.metal = Some(budget);
    plan.shape.finished_holes = Some(holes);
    plan.shape.finished = Some(finished);
    plan.shape.new_centre = outline;
}

/// How the part is held under the passes, how long all of it takes, and what it costs.
fn plan_work(
    job: &Job,
    checked: &Checked,
    received: &Received,
    (shank, hold): (Option<&WantedShank>, Option<&Hold>),
    plan: &mut Plan,
) {
    plan.findings
        .extend(judge::swing_finding(checked, received));
    let (dial, findings) = DialPlan::read(job, checked, hold);
    plan.findings.extend(findings);
    plan.dial = dial;
    if let Some(shank) = shank {
        let has_shoulder = judge::shoulder_height(received, shank).is_some();
        let stock = plan.stock_off.as_ref();
        plan.finish = Some(FinishPlan::of(job, checked, (shank, has_shoulder), stock));
    }
    let Some(stock) = &plan.stock_off else {
        return;
    };
    if let (Some(hold), Some(limits), Some(shank)) = (hold, plan.limits, shank) {
        let end = (shank.fillet, plan.centre.as_ref());
        let holding = HoldingPlan::of(job, hold, stock, limits, end);
        plan.findings.extend(holding.findings(job));
        plan.holding = Some(holding);
    }
    let Some(cut) = &plan.cut_off else {
        return;
    };
    let question = TimeQuestion {
        job,
        checked,
        received,
        cut,
        stock,
    };
    let mut findings = Vec::new();
    let time = timing::time(&question, plan, &mut findings);
    plan.cost = time
        .as_ref()
        .and_then(|time| timing::price(&question, time));
    plan.time = time;
    plan.findings.extend(findings);
}
