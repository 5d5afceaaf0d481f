//! The menu: units, look, examples, starting over, privacy.

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::quantity::Units;
use yew::prelude::*;

use super::modal::Modal;
use super::state::{Action, Cover, Look};
use super::store::{Store, on, words};
use super::words::Text;

pub(crate) fn menu_panel(store: &Store) -> Html {
    let words = words(store);
    html! {
        <Modal title={words.say(Text::Menu)}>
            <fieldset class="options">
                <legend>{ words.say(Text::UnitsLabel) }</legend>
                { for Units::ALL.into_iter().map(|units| option(
                    store, Text::UnitsName(units), store.units == units, Action::ShowUnits(units),
                )) }
            </fieldset>
            <fieldset class="options">
                <legend>{ words.say(Text::LookLabel) }</legend>
                { for Look::ALL.into_iter().map(|look| option(
                    store, Text::LookName(look), store.look == look, Action::ShowLook(look),
                )) }
            </fieldset>
            <h3>{ words.say(Text::ExamplesLabel) }</h3>
            <p class="field-hint">{ words.say(Text::ExamplesLead) }</p>
            <ul class="examples">{ for demo_jobs().into_iter().map(|job| example(store, job)) }</ul>
            <p>
                <button type="button" class="button" onclick={on(store, || Action::Show(Some(Cover::Reset)))}>
                    { words.say(Text::ResetJob) }
                </button>
            </p>
            <h3>{ words.say(Text::PrivacyLabel) }</h3>
            <p>{ words.say(Text::Privacy) }</p>
        </Modal>
    }
}

/// One of several that exclude one another.
fn option(store: &Store, name: Text, chosen: bool, action: Action) -> Html {
    let onclick = on(store, move || action.clone());
    html! {
        <button type="button" class="option" aria-pressed={if chosen { "true" } else { "false" }} {onclick}>
            { words(store).say(name) }
        </button>
    }
}

fn example(store: &Store, job: Job) -> Html {
    let title = job.title.clone();
    let job = Rc::new(job);
    let onclick = on(store, move || Action::TakeExample(Rc::clone(&job)));
    html! { <li><button type="button" class="button" {onclick}>{ title }</button></li> }
}

/// Asks before the job is replaced by a plain new one.
pub(crate) fn reset_panel(store: &Store) -> Html {
    let words = words(store);
    html! {
        <Modal title={words.say(Text::ResetJob)}>
            <p>{ words.say(Text::ResetQuestion) }</p>
            <p class="choices">
                <button type="button" class="button" onclick={on(store, || Action::Show(None))}>
                    { words.say(Text::ResetNo) }
                </button>
                <button type="button" class="button button-decide" onclick={on(store, || Action::Reset)}>
                    { words.say(Text::ResetYes) }
                </button>
            </p>
        </Modal>
    }
}
