//! The head of the page, and the stages.

use yew::prelude::*;

use super::hooks::focus::scroll_to_top;
use super::markup::button;
use super::state::{Action, Cover, Saved, Stage};
use super::store::{Store, on, words};
use super::words::{OfJobs, Text};

pub(crate) fn header(store: &Store) -> Html {
    let words = words(store);
    let title = if store.job.title.trim().is_empty() {
        AttrValue::Static(words.say(Text::JobUntitled))
    } else {
        AttrValue::from(store.job.title.clone())
    };
    html! {
        <header class="header">
            <p class="brand">{ words.say(Text::AppName) }</p>
            <div class="header-job">
                <h1 class="job-title">{ title }</h1>
                <p class="saved" aria-live={alarms(store.saved).then_some("polite")}>{ words.say(Text::SavedState(store.saved)) }</p>
            </div>
            <div class="header-tools">
                <button type="button" class="button" disabled={!store.can_undo()} onclick={on(store, || Action::Undo)}>
                    { words.say(Text::Undo) }
                </button>
                <button type="button" class="button" disabled={!store.can_redo()} onclick={on(store, || Action::Redo)}>
                    { words.say(Text::Redo) }
                </button>
                { button(words.say(Text::Share), on(store, || Action::Show(Some(Cover::Share)))) }
                { button(words.say(Text::Jobs(OfJobs::Title)), on(store, || Action::Show(Some(Cover::Jobs)))) }
                { button(words.say(Text::Menu), on(store, || Action::Show(Some(Cover::Menu)))) }
            </div>
        </header>
    }
}

/// Whether it has to be read out that something is not saved.
const fn alarms(saved: Saved) -> bool {
    matches!(saved, Saved::Refused | Saved::Full | Saved::Again)
}

/// The stages: any of them can be opened at any time.
pub(crate) fn stage_bar(store: &Store) -> Html {
    let words = words(store);
    let go_to = |stage: Stage| {
        on(store, move || {
            scroll_to_top();
            Action::GoTo(stage)
        })
    };
    let stage = |stage: Stage| {
        let current = store.stage == stage;
        html! {
            <li>
                <button
                    type="button"
                    class={classes!("stage", current.then_some("stage-current"))}
                    aria-current={current.then_some("page")}
                    onclick={go_to(stage)}
                >{ words.say(Text::StageName(stage)) }</button>
            </li>
        }
    };
    html! {
        <nav class="stage-bar" aria-label={words.say(Text::StagesLabel)}>
            <ol>{ for Stage::ALL.into_iter().map(stage) }</ol>
        </nav>
    }
}
