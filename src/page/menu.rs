//! The menu: units, language, look, examples, privacy.

use std::rc::Rc;

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::quantity::Units;
use yew::prelude::*;

use super::hooks::language::tongue;
use super::markup::{button, option};
use super::modal::modal;
use super::state::{Action, Look};
use super::store::{Store, on, words};
use super::words::{Language, Text};

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
                <legend>{ words.say(Text::LanguageLabel) }</legend>
                { for Language::ALL.into_iter().map(|language| spoken(store, language)) }
            </fieldset>
            <fieldset class="options">
                <legend>{ words.say(Text::LookLabel) }</legend>
                { for Look::ALL.into_iter().map(|look| choice(
                    store, Text::LookName(look), store.look == look, Action::ShowLook(look),
                )) }
            </fieldset>
            <h3>{ words.say(Text::ExamplesLabel) }</h3>
            <p class="field-hint">{ words.say(Text::ExamplesLead) }</p>
            <ul class="examples">{ for demo_jobs().into_iter().enumerate().map(|(place, job)| example(store, place, job)) }</ul>
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

/// A language by its own name.
fn spoken(store: &Store, language: Language) -> Html {
    let chosen = store.tongue.language() == language;
    let onclick = on(store, move || Action::Speak(tongue(language)));
    let name = option(language.own_name(), chosen, onclick);
    html! { <span lang={language.code()}>{ name }</span> }
}

/// An example goes by the name that it has in the language of the page.
fn example(store: &Store, place: usize, job: Job) -> Html {
    let title = words(store).example(place);
    let job = Rc::new(Job {
        title: title.to_owned(),
        ..job
    });
    let onclick = on(store, move || Action::TakeExample(Rc::clone(&job)));
    html! { <li>{ button(title, onclick) }</li> }
}
