//! What opens and closes within a stage: a heading that is a button, and what stands below it while it is open.

use yew::prelude::*;

use super::state::{Action, Panel};
use super::store::{Store, on};

/// A panel with its title, one line that says what is inside, and its body, which is only made while it is open.
pub(crate) fn panel(
    store: &Store,
    panel: Panel,
    title: impl Into<AttrValue>,
    line: Option<String>,
    body: impl FnOnce() -> Html,
) -> Html {
    panel_with(store, panel, title, line, Html::default(), body)
}

/// The same with something below the heading that stays in sight.
pub(crate) fn panel_with(
    store: &Store,
    panel: Panel,
    title: impl Into<AttrValue>,
    line: Option<String>,
    stays: Html,
    body: impl FnOnce() -> Html,
) -> Html {
    let open = store.panels.is_open(panel, &store.job);
    let body = open.then(body);
    drawn(store, panel, title.into(), line, stays, body)
}

/// All of it but the making of its body: written once, as a function of every kind of body would be one each.
#[inline(never)]
fn drawn(
    store: &Store,
    panel: Panel,
    title: AttrValue,
    line: Option<String>,
    stays: Html,
    body: Option<Html>,
) -> Html {
    let open = body.is_some();
    let id = panel.id();
    let body_id = format!("{id}-body");
    let onclick = on(store, move || Action::Open(panel, !open));
    let key = id.clone();
    let button = html! {
        <button
            type="button"
            id={id.clone()}
            class="panel-button"
            aria-expanded={if open { "true" } else { "false" }}
            aria-controls={open.then(|| body_id.clone())}
            {onclick}
        >
            { mark(open) }
            <span class="panel-title">{ title }</span>
            if let Some(line) = line {
                <span class="panel-line"><span class="for-readers">{ ": " }</span>{ line }</span>
            }
        </button>
    };
    html! {
        <div class="panel" {key}>
            { heading(panel, button) }
            { stays }
            if let Some(body) = body {
                <div id={body_id} class="panel-body" role="group" aria-labelledby={id}>{ body }</div>
            }
        </div>
    }
}

/// The heading's rank follows where the panel stands.
fn heading(panel: Panel, button: Html) -> Html {
    match panel {
        Panel::Duty
        | Panel::Becomes
        | Panel::Most
        | Panel::Tool
        | Panel::Lathe
        | Panel::Holding
        | Panel::Dialling
        | Panel::Pins
        | Panel::StepTimes
        | Panel::Form
        | Panel::Counts
        | Panel::Instruments
        | Panel::Learned
        | Panel::Rates
        | Panel::AllSteps
        | Panel::Cautions
        | Panel::Readings
        | Panel::Earlier
        | Panel::Takes
        | Panel::Changed
        | Panel::Parallel
        | Panel::Verdicts
        | Panel::Handling
        | Panel::Exports => {
            html! { <h2 class="panel-head">{ button }</h2> }
        }
        Panel::Row(..)
        | Panel::MoreOfPart
        | Panel::Shank(_)
        | Panel::Pin(_)
        | Panel::Instrument(_)
        | Panel::PinPlanned
        | Panel::Savings
        | Panel::Steps => {
            html! { <h3 class="panel-head">{ button }</h3> }
        }
        Panel::Errors(_) | Panel::Recognise(_) => html! { <h4 class="panel-head">{ button }</h4> },
        Panel::Add(_) => button,
    }
}

/// A plus where there is more to see, a minus where it is open.
fn mark(open: bool) -> Html {
    let lines = if open { "M3 10h14" } else { "M3 10h14M10 3v14" };
    html! {
        <svg class="panel-mark" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true"><path d={lines} /></svg>
    }
}
