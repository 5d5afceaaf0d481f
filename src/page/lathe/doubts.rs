//! A reading that cannot be right, or hardly: asked about before anything is learned from it.

use skimwright::job::{Reading, What};
use skimwright::measuring::{Doubt, as_meant};
use yew::prelude::*;

use super::LatheAction;
use crate::page::edit::RecordEdit;
use crate::page::hooks::clock::at_once;
use crate::page::markup::{any_button, text};
use crate::page::state::Action;
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, Text};

/// The newest doubt as a question, where there is one.
pub(super) fn doubt(store: &Store) -> Option<Html> {
    let doubt = store.advice().doubts.last()?;
    let at = usize::try_from(doubt.event).ok()?;
    let What::Reading(reading) = &store.job.record.events.get(at)?.what else {
        return None;
    };
    Some(question(store, *doubt, reading))
}

fn question(store: &Store, doubt: Doubt, reading: &Reading) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let event = doubt.event;
    let read = words.typed(reading.value.entry());
    let meant = doubt.meant.and_then(|meant| as_meant(reading, meant));
    let meant = meant.map(|meant| {
        let label = words.i_meant(&words.typed(meant.value.entry()));
        let act = at_once(store, move |at| {
            LatheAction::Meant(event, meant.clone(), at)
        });
        any_button("button button-large button-decide", text(label), None, act)
    });
    let edit = |edit: RecordEdit| {
        on(store, move || {
            Action::Lathe(LatheAction::Record(edit.clone()))
        })
    };
    html! {
        <section class="doubt" aria-labelledby="doubt-title">
            <h3 id="doubt-title">{ say(OfLathe::DoubtTitle) }</h3>
            <p class="doubt-says" role="status">{ words.doubt(&read, &doubt) }</p>
            <div class="doubt-choices">
                { meant.unwrap_or_default() }
                { any_button("button button-large", text(say(OfLathe::DoubtRight)), None, edit(RecordEdit::Confirm(event))) }
                { any_button("button button-large", text(say(OfLathe::DoubtStrike)), None, edit(RecordEdit::Strike(event))) }
            </div>
        </section>
    }
}
