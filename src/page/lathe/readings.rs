//! What was read and done, the newest first: wrong things are struck out, stay, and can be brought back.

use skimwright::job::{Event, What};
use yew::prelude::*;

use super::LatheAction;
use crate::page::edit::RecordEdit;
use crate::page::markup::{all, hint};
use crate::page::panel::panel;
use crate::page::state::{Action, Panel};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, Text};

/// Most events that are listed at once: who looks for more has the file.
const MOST: usize = 100;

pub(super) fn readings(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let events = &store.job.record.events;
    let last_cut = events
        .iter()
        .rposition(|event| !event.struck && matches!(event.what, What::Cut(_)));
    let listed = |event: &Event| !matches!(event.what, What::Step(_));
    let rows: Vec<(u32, &Event)> = (0..u32::MAX)
        .zip(events)
        .filter(|(_, event)| listed(event))
        .collect();
    let split = |since: bool| -> Vec<(u32, &Event)> {
        let is_since =
            |at: u32| last_cut.is_none_or(|cut| usize::try_from(at).is_ok_and(|at| cut <= at));
        let rows = rows.iter().rev().filter(|(at, _)| is_since(*at) == since);
        rows.copied().take(MOST).collect()
    };
    let (now, earlier) = (split(true), split(false));
    let count = |rows: &[(u32, &Event)]| (!rows.is_empty()).then(|| rows.len().to_string());
    let body = |rows: &[(u32, &Event)]| list(store, rows);
    all(vec![
        panel(
            store,
            Panel::Readings,
            say(OfLathe::ReadingsTitle),
            count(&now),
            || {
                if now.is_empty() {
                    hint(say(OfLathe::NoReadings))
                } else {
                    body(&now)
                }
            },
        ),
        if earlier.is_empty() {
            Html::default()
        } else {
            panel(
                store,
                Panel::Earlier,
                say(OfLathe::EarlierTitle),
                count(&earlier),
                || body(&earlier),
            )
        },
    ])
}

fn list(store: &Store, rows: &[(u32, &Event)]) -> Html {
    let rows = rows.iter().map(|(at, event)| row(store, *at, event));
    html! { <ul class="events">{ for rows }</ul> }
}

fn row(store: &Store, at: u32, event: &Event) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let line = words.event(event, &store.job);
    let (label, edit) = if event.struck {
        (OfLathe::Bring, RecordEdit::Bring(at))
    } else {
        (OfLathe::Strike, RecordEdit::Strike(at))
    };
    let doubt = store.advice().doubts.iter().find(|it| it.event == at);
    let onclick = on(store, move || {
        Action::Lathe(LatheAction::Record(edit.clone()))
    });
    let name = format!("{}: {line}", say(label));
    html! {
        <li class="event" key={at}>
            <span class="event-line">
                if event.struck {
                    <span class="for-readers">{ say(OfLathe::Struck) }</span>
                    <del>{ line }</del>
                } else {
                    { line }
                }
                if let Some(doubt) = doubt {
                    <strong class="event-doubt">{ " " }{ words.doubt_short(doubt.kind) }</strong>
                }
            </span>
            <button type="button" class="button" aria-label={name} {onclick}>{ say(label) }</button>
        </li>
    }
}
