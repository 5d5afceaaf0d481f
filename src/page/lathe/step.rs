//! One step: its number and name, its clock, the figure to set, further figures, what to watch.

use skimwright::job::{Record, WorkStep};
use skimwright::measuring::{Next, dialled_bare};
use skimwright::quantity::{Entered, Length};
use skimwright::work::{Dial, StepHow, StepNow, StepWarning};
use skimwright::working::Value;
use yew::prelude::*;

use super::LatheAction;
use super::actions::done_is_next;
use super::doubts::doubt;
use super::figure::large_figure;
use super::next_cut::next_cut;
use super::proof::verdicts_at_check;
use super::stopwatch::Stopwatch;
use crate::page::hooks::clock::at_once;
use crate::page::markup::{all, any_button, element, hint, paragraph, status, text};
use crate::page::panel::panel;
use crate::page::state::{Action, Panel, Spot};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, SkipReason, Text, Words, split_unit};

/// A name and what belongs to it.
pub(super) type Fact = (&'static str, String);

/// Characters that have room in one of two columns of a narrow phone.
const LONG_FACT: usize = 16;

pub(super) fn facts(facts: Vec<Fact>) -> Html {
    let rows = facts.into_iter().map(|(name, says)| {
        // What would break in its column has a line of its own.
        let wide = (LONG_FACT < says.chars().count()).then_some("fact-wide");
        html! { <div class={classes!(wide)}><dt>{ name }</dt><dd>{ says }</dd></div> }
    });
    html! { <dl class="facts">{ for rows }</dl> }
}

/// Whether the advice speaks at a step.
pub(super) const fn is_cutting(step: WorkStep) -> bool {
    matches!(
        step,
        WorkStep::Rough | WorkStep::LastCuts | WorkStep::Polish
    )
}

pub(super) fn step_view(store: &Store, step: &StepNow) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let steps = store.steps();
    let at = steps.iter().position(|it| it.step == step.step);
    let count = words.step_count(at.map_or(0, |at| at + 1), steps.len());
    let over = matches!(step.how, StepHow::Done | StepHow::Skipped);
    html! {
        <>
            <div class="step-head">
                <h2 id={Spot::StepTitle.id()} class="step-title" tabindex="-1">
                    <span class="step-count">{ count }</span>{ " " }
                    { say(OfLathe::Step(step.step)) }
                    if over {
                        <span class="step-how">{ ": " }{ say(OfLathe::How(step.how)) }</span>
                    }
                </h2>
                <Stopwatch step={step.step} how={step.how} clock={step.clock}
                    planned={step.planned.map(|[_, likely, _]| likely)} />
            </div>
            if store.lathe.skipping.is_some() {
                { skipping(store, step.step) }
            } else {
                { middle(store, step) }
                { watch(store, &step.warnings) }
                if let Some(planned) = step.planned {
                    { hint(words.planned_time(planned)) }
                }
            }
        </>
    }
}

/// As many cautions as are read with the figure; the others stand below the step.
const WATCHED: usize = 2;

/// What to watch, one line each.
fn watch(store: &Store, warnings: &[StepWarning]) -> Html {
    let words = words(store);
    let lines = warnings.iter().take(WATCHED).map(|warning| {
        html! { <li>{ words.say(Text::Lathe(OfLathe::Warning(*warning))) }</li> }
    });
    if warnings.is_empty() {
        return Html::default();
    }
    html! { <ul class="watch" aria-label={words.say(Text::Lathe(OfLathe::WatchLabel))}>{ for lines }</ul> }
}

/// The cautions that had no room beside the figure.
pub(super) fn further_cautions(store: &Store, step: &StepNow) -> Html {
    let Some(further) = step.warnings.get(WATCHED..).filter(|it| !it.is_empty()) else {
        return Html::default();
    };
    let say = |text| words(store).say(Text::Lathe(text));
    let lines = further
        .iter()
        .map(|warning| paragraph(say(OfLathe::Warning(*warning))));
    panel(
        store,
        Panel::Cautions,
        say(OfLathe::CautionsTitle),
        Some(further.len().to_string()),
        || lines.collect(),
    )
}

fn middle(store: &Store, step: &StepNow) -> Html {
    if is_cutting(step.step) {
        if let Some(asked) = doubt(store) {
            return asked;
        }
        let advised = next_cut(store, step);
        let goes_on =
            !matches!(store.advice().next, Next::Stop(_)) && done_is_next(store, step.step);
        let says = goes_on.then(|| status(words(store).say(Text::Lathe(OfLathe::GoesOn)).into()));
        return all(vec![says.unwrap_or_default(), advised]);
    }
    let asked = doubt(store).unwrap_or_default();
    let words = words(store);
    // What was proven takes the place of what is wanted, which stands beside it.
    let proven = step.step == WorkStep::Check
        && (store.advice().verdicts.iter()).any(|verdict| verdict.measured.is_some());
    let figure = match &step.dial {
        _ if proven => verdicts_at_check(store),
        Some(dial) => dial_view(store, words, dial),
        None => paragraph(words.say(Text::Lathe(OfLathe::NoFigure))),
    };
    all(vec![asked, figure, facts(plan_facts(words, step))])
}

/// What the plan says of a step besides its figure.
pub(super) fn plan_facts(words: Words, step: &StepNow) -> Vec<Fact> {
    let say = |text| words.say(Text::Lathe(text));
    let speed = step.spindle_speed;
    let speed = speed.map(|speed| (say(OfLathe::Speed), words.value(Value::Rotation(speed))));
    let feed = step.feed;
    let feed = feed.map(|feed| (say(OfLathe::Feed), words.value(Value::Feed(feed))));
    let further = step.figures.iter().map(|figure| words.step_figure(figure));
    speed.into_iter().chain(feed).chain(further).collect()
}

/// The figure of a step that no advice is needed for.
pub(super) fn dial_view(store: &Store, words: Words, dial: &Dial) -> Html {
    figure_with(&dial_text(store, words, dial), words.dial_means(dial))
}

/// The figure of a step in words.
pub(crate) fn dial_text(store: &Store, words: Words, dial: &Dial) -> String {
    match *dial {
        Dial::AsGiven(length)
        | Dial::CutMark(length)
        | Dial::Grip(length)
        | Dial::CentreDepth(length)
        | Dial::Chamfer(length)
        | Dial::Facing(length) => words.length(length),
        Dial::Runout(length) | Dial::PolishOff(length) | Dial::Diameter(length) => {
            words.size(length)
        }
        Dial::Infeed(length) => dialled(store, length, None),
    }
}

/// What is dialled in, in the unit and with the decimals of the dial.
pub(crate) fn dialled(store: &Store, length: Length, division: Option<Length>) -> String {
    let unit = store.unit_of_dial();
    let entered = store.job.shop.machine.graduation.as_ref();
    let division = division
        .or_else(|| entered.map(Entered::value))
        .unwrap_or_default();
    words(store).marked(format!(
        "{}\u{a0}{}",
        dialled_bare(length, division, unit),
        unit.sign()
    ))
}

/// A figure with what it means below it.
pub(super) fn figure_with(figure: &str, means: &'static str) -> Html {
    let (number, unit) = split_unit(figure);
    let figure = large_figure(number, unit, figure.replace('\u{a0}', " "));
    with_meaning(figure, means)
}

/// What stands large, with what it means below it, or beside it where the screen is low.
pub(super) fn with_meaning(large: Html, means: &'static str) -> Html {
    let means = element("p", "dial-means", text(means));
    element("div", "dial-place", all(vec![large, means]))
}

/// Why a step is left out: a tap on a ready reason is enough.
fn skipping(store: &Store, step: WorkStep) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let ready = SkipReason::ALL.into_iter().map(|reason| {
        let why = say(OfLathe::SkipReady(reason));
        let skip = at_once(store, move |at| LatheAction::Skip(step, why.to_owned(), at));
        any_button("button button-large", text(why), None, skip)
    });
    let typed = store.lathe.skipping.clone().unwrap_or_default();
    let oninput = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: InputEvent| {
            let area: web_sys::HtmlInputElement = event.target_unchecked_into();
            dispatcher.dispatch(Action::Lathe(LatheAction::Why(area.value())));
        })
    };
    let why = typed.clone();
    let skip = at_once(store, move |at| LatheAction::Skip(step, why.clone(), at));
    let most = Record::MOST_NOTE_CHARACTERS.to_string();
    html! {
        <section class="skip" aria-labelledby={Spot::SkipTitle.id()}>
            <h3 id={Spot::SkipTitle.id()} tabindex="-1">{ say(OfLathe::SkipQuestion) }</h3>
            <div class="kinds">{ for ready }</div>
            <label for="skip-why">{ say(OfLathe::SkipWhy) }</label>
            <input id="skip-why" class="field-input field-words" type="text" maxlength={most} value={typed.clone()} {oninput} />
            <div class="row-tools">
                <button type="button" class="button" disabled={typed.trim().is_empty()} onclick={skip}>{ say(OfLathe::SkipYes) }</button>
                { any_button("button", text(say(OfLathe::SkipNo)), None, on(store, || Action::Lathe(LatheAction::AskSkip(false)))) }
            </div>
        </section>
    }
}
