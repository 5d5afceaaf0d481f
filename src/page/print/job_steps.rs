//! The steps of the work on the job sheet, each with a box to tick, and the cautions.

use skimwright::job::WorkStep;
use skimwright::plan::Level;
use skimwright::work::{StepFigure, StepNow, StepWarning};
use yew::prelude::*;

use crate::page::lathe::dial_text;
use crate::page::store::{Store, words};
use crate::page::words::{OfLathe, OfPrint, Text};

pub(super) fn steps(store: &Store) -> Html {
    let rows = store.steps().iter().map(|step| row(store, step));
    html! {
        <section class="job-steps">
            <h2>{ words(store).say(Text::Lathe(OfLathe::StepsLabel)) }</h2>
            <ol>{ for rows }</ol>
        </section>
    }
}

fn row(store: &Store, step: &StepNow) -> Html {
    let words = words(store);
    let cutting = matches!(step.step, WorkStep::Rough | WorkStep::LastCuts);
    let (figure, means) = match &step.dial {
        _ if cutting => (String::new(), words.say(Text::Print(OfPrint::ByTable))),
        Some(dial) => (dial_text(store, words, dial), words.dial_means(dial)),
        None => (String::new(), ""),
    };
    let further: Vec<String> = step
        .figures
        .iter()
        .filter(|_| !cutting)
        .filter(|figure| is_needed(figure))
        .map(|figure| {
            let (name, says) = words.step_figure(figure);
            format!("{name}: {says}")
        })
        .collect();
    html! {
        <li>
            <span class="job-tick"></span>
            <span class="job-step">
                <strong>{ words.say(Text::Lathe(OfLathe::Step(step.step))) }</strong>
                if !figure.is_empty() {
                    { " " }<strong class="job-figure">{ figure }</strong>
                }
                if !means.is_empty() {
                    { " " }{ means }
                }
                if !further.is_empty() {
                    <br />{ further.join("; ") }
                }
            </span>
        </li>
    }
}

/// Which further figures are set or marked at the machine; the others are in the drawing or the table.
const fn is_needed(figure: &StepFigure) -> bool {
    matches!(
        figure,
        StepFigure::FromShoulder(_)
            | StepFigure::Method(_)
            | StepFigure::Kerf(_)
            | StepFigure::Support(_)
            | StepFigure::Overhang(_)
            | StepFigure::FinishedLength(_)
            | StepFigure::DepthFrom(_)
            | StepFigure::CentreDrill(_)
            | StepFigure::LowerLimit(_)
            | StepFigure::UpperLimit(_)
            | StepFigure::Roughness(_)
    )
}

/// What stops the work or needs care by the plan, then the cautions of all steps, each once and in a line.
pub(super) fn cautions(store: &Store) -> Html {
    let words = words(store);
    let found = store.plan.findings.iter();
    let found = found.filter(|it| it.level != Level::Clear).map(|it| {
        let level = words.say(Text::LevelName(it.level));
        let says = words.finding(it);
        html! { <li class="job-found"><strong>{ level }{ ":" }</strong>{ " " }{ says.what }</li> }
    });
    let mut said: Vec<StepWarning> = Vec::new();
    for warning in store.steps().iter().flat_map(|step| &step.warnings) {
        if !said.contains(warning) {
            said.push(*warning);
        }
    }
    let said = said.into_iter().map(|warning| {
        html! { <li>{ words.say(Text::Lathe(OfLathe::Warning(warning))) }</li> }
    });
    html! {
        <section class="job-cautions">
            <h2>{ words.say(Text::Lathe(OfLathe::WatchLabel)) }</h2>
            <ul>{ for found }{ for said }</ul>
        </section>
    }
}
