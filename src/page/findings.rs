//! The findings, worst first: a shape, a word, what it is, what to do, and the way to the field.

use skimwright::plan::{Code, Finding, Level};
use yew::prelude::*;

use super::hooks::focus::focus_first;
use super::state::Action;
use super::store::{Store, on, use_store, words};
use super::words::Text;
use super::working::go_to;

const TITLE: &str = "findings-title";

#[component]
pub(crate) fn Findings() -> Html {
    let store = use_store();
    let called = store.as_ref().map_or(0, |store| store.to_findings);
    use_effect_with(called, |called| {
        if *called > 0 {
            focus_first(&[TITLE.to_owned()]);
        }
    });
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    html! {
        <section class="findings" aria-labelledby={TITLE} aria-live="polite">
            <h2 id={TITLE} tabindex="-1">{ words.say(Text::FindingsLabel) }</h2>
            <ul>{ for store.plan.findings.iter().map(|found| finding(&store, found)) }</ul>
        </section>
    }
}

fn finding(store: &Store, found: &Finding) -> Html {
    let words = words(store);
    let said = words.finding(found);
    let change = match found.code {
        Code::AllClear => Html::default(),
        _ => html! {
            <button type="button" class="button" onclick={go_to(store, found.field)}>
                { words.say(Text::ToField) }
                <span class="for-readers">{ ": " }{ words.field_in_full(found.field) }</span>
            </button>
        },
    };
    html! {
        <li class={classes!("finding", level_class(found.level))}>
            { level_shape(found.level) }
            <div class="finding-words">
                <p class="finding-what">
                    <strong>{ words.say(Text::LevelName(found.level)) }</strong>{ ": " }{ said.what }
                </p>
                <p class="finding-mend">{ said.mend }</p>
            </div>
            { change }
        </li>
    }
}

const fn level_class(level: Level) -> &'static str {
    match level {
        Level::Clear => "level-clear",
        Level::Caution => "level-caution",
        Level::Stop => "level-stop",
    }
}

/// A shape for each level, told apart without colour: a ring, a bar on its end, a crossed square.
fn level_shape(level: Level) -> Html {
    let inside = match level {
        Level::Clear => html! { <circle cx="12" cy="12" r="9" /> },
        Level::Caution => {
            html! { <><rect x="8" y="1.5" width="8" height="21" /><path d="M8 12h8" /></> }
        }
        Level::Stop => html! { <path d="M3 3h18v18h-18zM3 3l18 18M21 3l-18 18" /> },
    };
    html! { <svg class="level-shape" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">{ inside }</svg> }
}

/// Where the findings themselves are not in sight: what they come to, and the way to them.
pub(crate) fn finding_summary(store: &Store) -> Html {
    let words = words(store);
    let count = |level: Level| {
        store
            .plan
            .findings
            .iter()
            .filter(|found| found.level == level)
            .count()
    };
    let worst = store
        .plan
        .findings
        .first()
        .map_or(Level::Clear, |found| found.level);
    html! {
        <button
            type="button"
            class={classes!("summary", level_class(worst))}
            onclick={on(store, || Action::ReadFindings)}
        >
            { level_shape(worst) }
            <span>{ words.findings_in_short(count(Level::Stop), count(Level::Caution)) }</span>
        </button>
    }
}
