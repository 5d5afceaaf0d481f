//! The Cut stage: one step fills the screen of a phone; at a desk the list of steps stands beside it.

use skimwright::job::WorkStep;
use skimwright::work::{StepHow, StepNow};
use yew::prelude::*;

use super::actions::actions;
use super::handling::{changed, handling, takes};
use super::pad::pad;
use super::proof::{parallel, verdicts};
use super::readings::readings;
use super::step::{further_cautions, is_cutting, step_view};
use super::{LatheAction, Thumb};
use crate::page::hooks::awake::{Awake, use_awake};
use crate::page::markup::{paragraph, status};
use crate::page::panel::panel;
use crate::page::state::{Action, Panel, Spot};
use crate::page::store::{Store, on, use_store, words};
use crate::page::words::{OfLathe, Text};

#[component]
pub(crate) fn CutStage() -> Html {
    let awake = use_awake();
    let Some(store) = use_store() else {
        return Html::default();
    };
    let say = |text| words(&store).say(Text::Lathe(text));
    let Some(step) = store.step_shown() else {
        return html! { <div class="cut">{ paragraph(say(OfLathe::NoSteps)) }</div> };
    };
    let class = match store.lathe.thumb {
        Thumb::Right => "cut",
        Thumb::Left => "cut cut-left",
    };
    let all_done = store.step_to_do().is_none();
    html! {
        <div {class}>
            <section class="cut-list" aria-label={say(OfLathe::StepsLabel)}>{ step_list(&store, step.step) }</section>
            <section class="cut-step" aria-labelledby={Spot::StepTitle.id()}>
                if all_done {
                    { status(say(OfLathe::AllDone).into()) }
                }
                { step_view(&store, step) }
            </section>
            { actions(&store, step) }
            <div class="cut-more">{ more(&store, step, awake) }</div>
            { pad(&store) }
        </div>
    }
}

/// What stands below the step, by what is done in it.
fn more(store: &Store, step: &StepNow, awake: Awake) -> Html {
    let cutting = is_cutting(step.step);
    let check = step.step == WorkStep::Check;
    html! {
        <>
            { further_cautions(store, step) }
            { readings(store) }
            if cutting || check {
                { parallel(store) }
            }
            if cutting {
                { verdicts(store) }
                { takes(store) }
            }
            { changed(store, step) }
            <div class="cut-all">{ all_steps(store, step.step) }</div>
            { handling(store, awake) }
        </>
    }
}

fn all_steps(store: &Store, shown: WorkStep) -> Html {
    let title = words(store).say(Text::Lathe(OfLathe::StepsLabel));
    panel(store, Panel::AllSteps, title, None, || {
        step_list(store, shown)
    })
}

fn step_list(store: &Store, shown: WorkStep) -> Html {
    let rows = store
        .steps()
        .iter()
        .map(|step| step_row(store, step, step.step == shown));
    html! { <ol class="step-list">{ for rows }</ol> }
}

fn step_row(store: &Store, step: &StepNow, shown: bool) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let of = step.step;
    let look = on(store, move || Action::Lathe(LatheAction::Look(Some(of))));
    let mark = match step.how {
        StepHow::ToDo => "M4 4h12v12h-12z",
        StepHow::Running => "M4 4h12v12h-12zM8 6l6 4l-6 4z",
        StepHow::Paused => "M4 4h12v12h-12zM8 7v6M12 7v6",
        StepHow::Done => "M3 10l5 5l9 -10",
        StepHow::Skipped => "M4 10h12",
    };
    html! {
        <li>
            <button type="button" class="step-row" aria-current={shown.then_some("step")} onclick={look}>
                <svg class="step-mark" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true"><path d={mark} /></svg>
                <span>{ say(OfLathe::Step(of)) }</span>
                <span class="step-row-how">{ say(OfLathe::How(step.how)) }</span>
            </button>
        </li>
    }
}
