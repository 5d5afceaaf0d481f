//! The clock of a step: it is the moments at which it was started and stopped, so that nothing is lost while the phone
//! sleeps.

use skimwright::job::WorkStep;
use skimwright::quantity::{Time, stopwatch};
use skimwright::work::{Clock, StepHow, elapsed};
use yew::prelude::*;

use super::LatheAction;
use crate::page::hooks::alarm::ring;
use crate::page::hooks::clock::{at_once, use_now};
use crate::page::store::{use_store, words};
use crate::page::words::{OfLathe, Text};

#[derive(PartialEq, Properties)]
pub(super) struct StopwatchProps {
    pub(super) step: WorkStep,
    pub(super) how: StepHow,
    pub(super) clock: Clock,
    /// How long the step takes as a rule.
    pub(super) planned: Option<Time>,
}

#[component]
pub(super) fn Stopwatch(props: &StopwatchProps) -> Html {
    let runs = props.clock.since.is_some();
    let now = use_now(runs);
    let set_back = props.clock.since.is_some_and(|since| now < since);
    let passed = elapsed(props.clock, now);
    let over = runs && props.planned.is_some_and(|planned| planned <= passed);
    let store = use_store();
    let alarm = store.as_ref().is_some_and(|store| store.lathe.alarm);
    // Rings once, when the time runs over while somebody listens.
    use_effect_with((over && alarm, props.step), |(rings, _)| {
        if *rings {
            ring();
        }
    });
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Lathe(text));
    let step = props.step;
    let (label, onclick) = match props.how {
        StepHow::Running => (
            OfLathe::Pause,
            at_once(&store, move |at| LatheAction::Pause(step, at)),
        ),
        how => (
            if how == StepHow::ToDo {
                OfLathe::Start
            } else {
                OfLathe::GoOn
            },
            at_once(&store, move |at| LatheAction::Start(step, at)),
        ),
    };
    let ends = matches!(props.how, StepHow::Done | StepHow::Skipped);
    html! {
        <div class="stopwatch">
            <span class="stopwatch-time" role="timer" aria-label={stopwatch(passed)}>{ stopwatch(passed) }</span>
            if !ends {
                <button type="button" class="button" {onclick}>{ say(label) }</button>
            }
            if props.clock.broken || set_back {
                <p class="stopwatch-note" role="status">{ say(OfLathe::ClockBroken) }</p>
            } else if over {
                <p class="stopwatch-note" role="status">{ say(OfLathe::Overtime) }</p>
            }
        </div>
    }
}
