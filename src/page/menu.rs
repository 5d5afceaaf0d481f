//! The menu: units, look, examples, starting over, privacy.

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::quantity::Units;
use yew::prelude::*;

use super::markup::{button, option};
use super::modal::{modal, question};
use super::state::{Action, Cover, Look};
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
            <p>
                { button(words.say(Text::ResetJob), on(store, || Action::Show(Some(Cover::Reset)))) }
            </p>
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

/// Asks before the job is replaced by a plain new one.
pub(crate) fn reset_panel(store: &Store) -> Html {
    let words = words(store);
    question(
        store,
        words.say(Text::ResetJob),
        words.say(Text::ResetQuestion).to_owned(),
        (words.say(Text::ResetNo), words.say(Text::ResetYes)),
        Action::Reset,
    )
}
