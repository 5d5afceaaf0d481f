//! How long the whole rework takes, and what it costs.

use core::num::NonZeroU8;

use super::{Checked, Code, Finding, Plan};
use crate::costing::{
    Cost, EdgeCounting, HoldingWay, Insert, Operations, Pace, PlannedTime, Rates, Severing,
    SpindleSteps, Step, StepContext, ThreePoint, Used, cost, planned, usual,
};
use crate::cutting::passes::PassKind;
use crate::cutting::{
    CENTRE_DRILL_FEED, CENTRE_DRILL_SPEED, PARTING_SPEED_SHARE, StockOff,
    centre_drill_spindle_speed, centre_drilling_time, facing_time, parting_feeds, parting_time,
    spindle_speed,
};
use crate::holding::support;
use crate::job::{
    CutOffMethod, EdgeField, Field, Job, RateField, Shop, StepTime, Support, TimeBound,
};
use crate::part::{HAIR, Pick, Received};
use crate::quantity::{Area, Count, Length, Money, RotationalSpeed, Time};
use crate::rework::{CutKind, CutOff};
use crate::tables::tool_usual;

/// What the time is made of.
pub(super) struct TimeQuestion<'a> {
    pub(super) job: &'a Job,
    pub(super) checked: &'a Checked<'a>,
    pub(super) received: &'a Received,
    pub(super) cut: &'a CutOff,
    pub(super) stock: &'a StockOff,
}

/// The whole time with its steps; `None` where a time that was entered cannot be used.
pub(super) fn time(
    question: &TimeQuestion,
    plan: &Plan,
    findings: &mut Vec<Finding>,
) -> Option<PlannedTime> {
    let TimeQuestion {
        job,
        checked,
        stock,
        cut,
        ..
    } = question;
    let context = StepContext {
        holding: holding_way(job),
        severing: severing(question),
    };
    let top = question.checked.rotation(Field::TopSpeed)?;
    let centring = plan.centre.as_ref().map(|centre| {
        let pilot = centre.pilot();
        let spindle = centre_drill_spindle_speed(pilot, CENTRE_DRILL_SPEED.typical, top);
        centre_drilling_time(centre.feed_depth.value, CENTRE_DRILL_FEED.typical, spindle)
    });
    let facing = (cut.facing > Length::ZERO).then(|| facing(question, top));
    let turned = || stock.passes.iter().filter(|pass| pass.cut.is_some());
    let last = turned().filter(|pass| pass.kind == PassKind::Last).count();
    let ground = job.entry(Field::Edge(EdgeField::RegrindTime)).is_some();
    let operations = Operations {
        context,
        passes: turned().map(|pass| pass.feeding).collect(),
        last_passes: u32::try_from(last).unwrap_or(u32::MAX),
        facing,
        centring,
        spindle: SpindleSteps::Known,
        tool_changes: stock.tool_changes,
        regrinds: if ground { stock.tool_changes } else { 0 },
        polished: stock.is_polished(),
        own: own_times(job, checked, &context, findings)?,
        typed: typed_steps(job),
        paces: paces(job),
    };
    planned(&operations).ok()
}

/// What it costs; `None` without a rate.
pub(super) fn price(question: &TimeQuestion, time: &PlannedTime) -> Option<Cost> {
    let checked = question.checked;
    let money = |field| checked.value::<Money>(Field::Rate(field));
    let edges = tool_usual(question.job.shop.tool).edges;
    let edges = checked.or_usual(
        Field::Edge(EdgeField::Edges),
        Count::pieces(f64::from(edges)),
    )?;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number from 1 to 100"
    )]
    let edges = NonZeroU8::new(edges.to_pieces().round().clamp(1.0, 100.0) as u8)?;
    let price = checked.value(Field::Edge(EdgeField::Price));
    let rates = Rates {
        hourly: money(RateField::PerHour),
        minimum_charge: money(RateField::Least),
        consumables: money(RateField::Consumables),
        postage: money(RateField::Postage),
        insert: price.map(|price| Insert { price, edges }),
        disc_price: None,
    };
    let used = Used {
        edges: question.stock.edges_used,
        discs: 0.0,
    };
    cost(&time.spread, &used, &rates, EdgeCounting::Whole).ok()
}

/// What an hour costs, and what an edge does; `None` without a rate.
pub(super) fn prices(job: &Job, checked: &Checked) -> Option<(Money, Money)> {
    let hour = checked.value(Field::Rate(RateField::PerHour))?;
    let edges = Count::pieces(f64::from(tool_usual(job.shop.tool).edges));
    let edges: Count = checked.or_usual(Field::Edge(EdgeField::Edges), edges)?;
    let price: Option<Money> = checked.value(Field::Edge(EdgeField::Price));
    Some((hour, price.unwrap_or_default() / edges.to_pieces()))
}

pub(super) fn holding_way(job: &Job) -> HoldingWay {
    let dialled = job.setup.near.readings.iter().any(Option::is_some);
    match support(job) {
        Support::Chuck if dialled => HoldingWay::ChuckWithPacking,
        Support::Chuck => HoldingWay::Chuck,
        Support::ChuckAndCentre => HoldingWay::ChuckAndCentre,
        Support::BetweenCentres => HoldingWay::BetweenCentres,
        Support::Collet => HoldingWay::Collet,
    }
}

/// The ring of metal where the offcut comes off: its diameter, and that of the hole in it.
pub(crate) fn section(received: &Received, cut: &CutOff) -> (Length, Length) {
    // Where the facing takes all that is too long, rounding must not put the place beyond the end.
    let end = received.shank_length - HAIR;
    let at = (cut.shank_finished.value + cut.facing).min(end);
    let whole = received.outer.merge(&received.head, Pick::Larger);
    (
        whole.radius_at(at) * 2.0,
        received.inner.radius_at(at) * 2.0,
    )
}

fn severing(question: &TimeQuestion) -> Option<Severing> {
    let TimeQuestion { job, cut, .. } = question;
    if cut.kind != CutKind::CutAndFace {
        return None;
    }
    let (outside, hole) = section(question.received, cut);
    let method = job.shop.cut_off_method;
    if method == CutOffMethod::PartingTool
        && let Some(feeds) = parting_feeds(job.shop.tool)
    {
        let speed = question.stock.cutting_speed * PARTING_SPEED_SHARE.typical;
        let top = question.checked.rotation(Field::TopSpeed)?;
        let spindle = spindle_speed(speed, outside).min(top);
        let time = parting_time(outside, hole, feeds.typical, spindle);
        return Severing::under_feed(time).ok();
    }
    let squares = outside * outside - hole * hole;
    let ring: Area = squares * core::f64::consts::FRAC_PI_4;
    Severing::new(method, ring, job.part.material).ok()
}

/// Facing at the speed of the last cuts.
fn facing(question: &TimeQuestion, top: RotationalSpeed) -> Time {
    let (outside, hole) = section(question.received, question.cut);
    let last = question.stock.last_cut();
    let feed = last.map(|pass| pass.feed);
    let feed = feed.unwrap_or(crate::cutting::usual_finish_feed(question.job.shop.tool));
    let spindle = last.map_or(top, |pass| pass.spindle_speed);
    facing_time(outside, hole, feed, spindle)
}

/// The steps whose time the person typed, in whole or in part.
fn typed_steps(job: &Job) -> Vec<Step> {
    let usual = Shop::default();
    let shop = &job.shop;
    let typed = |step| {
        let likely = match step {
            Step::SetDepth => shop.set_time != usual.set_time,
            Step::Return => shop.return_time != usual.return_time,
            Step::Measure => shop.measure_time != usual.measure_time,
            Step::Polish => shop.polish_time != usual.polish_time,
            _ => false,
        };
        let own = shop.times.of(step);
        likely || own.is_some_and(|own| *own != StepTime::default())
    };
    let steps = Step::ALL.into_iter();
    steps.filter(|step| typed(*step)).collect()
}

/// What earlier jobs on this lathe taught of the steps, the newest for each.
fn paces(job: &Job) -> Vec<Pace> {
    let learned = job.shop.machine.learned.paces.iter();
    learned
        .map(|it| {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a whole number within the bounds of its type"
            )]
            let jobs = it.jobs.value().to_pieces().round().clamp(0.0, 1e6) as u32;
            Pace::new(it.step, it.factor.value().to_whole(), jobs)
        })
        .collect()
}

/// The times that were entered: what is not said of a step is the usual, stretched as its likely time is.
fn own_times(
    job: &Job,
    checked: &Checked,
    context: &StepContext,
    findings: &mut Vec<Finding>,
) -> Option<Vec<(Step, ThreePoint)>> {
    let mut own = Vec::new();
    for step in Step::ALL {
        let entered = |bound| checked.time(Field::Step(step, bound));
        let likely = match step {
            Step::SetDepth => Some(checked.time(Field::SetTime)?),
            Step::Return => Some(checked.time(Field::ReturnTime)?),
            Step::Measure => Some(checked.time(Field::MeasureTime)?),
            Step::Polish => Some(checked.time(Field::PolishTime)?),
            _ => entered(TimeBound::Likely),
        };
        let (low, high) = (entered(TimeBound::Low), entered(TimeBound::High));
        if likely.is_none() && low.is_none() && high.is_none() {
            continue;
        }
        let usual = usual(step, context);
        let likely = likely.unwrap_or(usual.likely());
        let stretched = |time: Time| {
            if usual.likely() > Time::ZERO {
                likely * (time / usual.likely())
            } else {
                likely
            }
        };
        let low = low.unwrap_or_else(|| stretched(usual.low()));
        let high = high.unwrap_or_else(|| stretched(usual.high()));
        if let Ok(time) = ThreePoint::new(low, likely, high) {
            own.push((step, time));
        } else {
            let bound = if likely < low {
                TimeBound::Low
            } else {
                TimeBound::High
            };
            findings.push(Finding::at(Field::Step(step, bound), Code::TimesCrossed));
        }
    }
    debug_assert!(
        job.shop.times.of(Step::Hold).is_some(),
        "every step has a place"
    );
    Some(own)
}
