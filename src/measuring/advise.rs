//! What to do next, from the plan and the record.

use std::borrow::Cow;

use super::advice::{Advice, Doubt, Next, SizeNow, WhyStop};
use super::bench::Bench;
use super::budget::{GUM, expanded};
use super::next_cut::Chooser;
use super::progress::Progress;
use super::state::State;
use super::taper::taper;
use super::verdict::verdicts;
use crate::job::Job;
use crate::plan::Plan;
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Value, Working};

/// What to do next, from the plan and the record. Pure and total.
pub fn advise(job: &Job, plan: &Plan) -> Advice {
    let progress = Progress::of(job, plan);
    let next = match Bench::read(job, plan) {
        Ok(bench) => Chooser {
            bench: &bench,
            progress: &progress,
        }
        .next(),
        Err(field) => Next::Stop(WhyStop::Missing(field)),
    };
    let job = without(job, &progress.doubts);
    let measured = progress.state.as_ref();
    let measured = measured.filter(|_| progress.since.is_nothing());
    Advice {
        size: measured.map(size_now),
        next,
        takes: progress.learner.takes(),
        doubts: progress.doubts,
        taper: taper(&job, plan),
        verdicts: verdicts(&job, plan),
    }
}

/// The job without the readings that are in doubt: they count for nothing until they are answered.
fn without<'a>(job: &'a Job, doubts: &[Doubt]) -> Cow<'a, Job> {
    let mut job = Cow::Borrowed(job);
    for doubt in doubts {
        let event = usize::try_from(doubt.event).ok();
        if let Some(event) = event.and_then(|at| job.to_mut().record.events.get_mut(at)) {
            event.struck = true;
        }
    }
    job
}

fn size_now(state: &State) -> SizeNow {
    let (diameter, uncertainty) = (Length::mm(state.mean()), Length::mm(state.uncertainty()));
    let own = Length::mm(state.own_variance().sqrt());
    let common = Length::mm(state.common_variance().sqrt());
    SizeNow {
        diameter: Figure {
            value: diameter,
            range: Some(expanded(diameter, uncertainty)),
            working: Working {
                symbol: "D",
                formula: "Σ d/n",
                parts: &["U = 2 · √(r² + c²)"],
                inputs: vec![
                    Input::new("n", Meaning::ReadingCount, Value::Count(state.readings)),
                    Input::new("r", Meaning::OwnUncertainty, Value::Fine(own)),
                    Input::new("c", Meaning::CommonUncertainty, Value::Fine(common)),
                ],
                source: GUM,
            },
        },
        uncertainty,
        smallest: Length::mm(state.smallest()),
        largest: Length::mm(state.largest()),
        readings: state.readings,
    }
}
