//! The menu: units, look, examples, privacy.

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::quantity::Units;
use yew::prelude::*;

use super::markup::{button, option};
use super::modal::modal;
use super::state::{Action, Look};
use super::store::{Store, on, words};
use super::words::Text;

pub(crate) fn menu_panel(store: &Store) -> Html {
    let words = words(store);
    let inside = html! {
        <>
            <fieldset class="options">
                <legend>{ words.say(Text::UnitsLabel) }</legend>
                { for Units::ALL.into_iter().map(|units| choice(
                    store, Text::UnitsName(units), store.units == units, Action::ShowUnits(units),
                )) }
            </fieldset>
            <fieldset class="options">
                <legend>{ words.say(Text::LookLabel) }</legend>
                { for Look::ALL.into_iter().map(|look| choice(
                    store, Text::LookName(look), store.look == look, Action::ShowLook(look),
                )) }
            </fieldset>
            <h3>{ words.say(Text::ExamplesLabel) }</h3>
            <p class="field-hint">{ words.say(Text::ExamplesLead) }</p>
            <ul class="examples">{ for demo_jobs().into_iter().map(|job| example(store, job)) }</ul>
            <h3>{ words.say(Text::PrivacyLabel) }</h3>
            <p>{ words.say(Text::Privacy) }</p>
        </>
    };
    modal(words.say(Text::Menu).into(), inside)
}

/// One of several that exclude one another.
fn choice(store: &Store, name: Text, chosen: bool, action: Action) -> Html {
    let onclick = on(store, move || action.clone());
    option(words(store).say(name), chosen, onclick)
}

fn example(store: &Store, job: Job) -> Html {
    let title = job.title.clone();
    let job = Rc::new(job);
    let onclick = on(store, move || Action::TakeExample(Rc::clone(&job)));
    html! { <li>{ button(title, onclick) }</li> }
}
