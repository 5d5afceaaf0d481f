//! Received: the part as it came in.

use skimwright::job::{Field, Job};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::fields_of;
use super::rows::list_group;
use crate::page::edit::{Edit, List};
use crate::page::panel::panel;
use crate::page::panels::fields_in;
use crate::page::state::{Action, Panel};
use crate::page::store::{Store, on, words};
use crate::page::words::Text;

pub(crate) fn received_stage(store: &Store) -> Html {
    let words = words(store);
    let more = words.say(Text::GroupMoreOfPart);
    html! {
        <>
            <section class="group">{ title_field(store) }</section>
            <section class="group">
                <h2>{ words.say(Text::GroupPart) }</h2>
                { fields_of(store, &[
                    Field::Material, Field::HeadDiameter, Field::HeadLength, Field::Runout,
                ]) }
                { panel(store, Panel::MoreOfPart, more, None, || fields_of(store, &fields_in(Panel::MoreOfPart))) }
            </section>
            { for [List::Sections, List::Features, List::Bores, List::Head].map(|list| list_group(store, list)) }
        </>
    }
}

fn title_field(store: &Store) -> Html {
    let words = words(store);
    let dispatcher = store.dispatcher();
    let oninput = Callback::from(move |event: InputEvent| {
        let title = event.target_unchecked_into::<HtmlInputElement>().value();
        dispatcher.dispatch(Action::Edit(Edit::Title(title)));
    });
    html! {
        <div class="field">
            <label for="list-title">{ words.say(Text::JobName) }</label>
            <input
                id="list-title"
                class="field-input field-words"
                type="text"
                autocomplete="off"
                maxlength={Job::MOST_TITLE_CHARACTERS.to_string()}
                value={store.job.title.clone()}
                {oninput}
                onblur={on(store, || Action::Leave(Field::Title))}
            />
        </div>
    }
}
