//! Received: the part as it came in.

use skimwright::job::{BoreField, Field, Job, SectionField};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::{fields_of, group};
use crate::page::edit::{BoreKind, Edit, SectionKind};
use crate::page::state::Action;
use crate::page::store::{Store, on, words};
use crate::page::words::Text;

pub(crate) fn received_stage(store: &Store) -> Html {
    let words = words(store);
    let job = &store.job;
    html! {
        <>
            <section class="group">{ title_field(store) }</section>
            { group(store, words.say(Text::GroupPart), &[
                Field::Material, Field::HeadDiameter, Field::HeadLength, Field::Runout,
            ]) }
            <section class="group">
                <h2>{ words.say(Text::GroupShank) }</h2>
                { for (0_u8..).zip(&job.part.sections).map(|(index, _)| section(store, index)) }
                <button
                    type="button"
                    class="button"
                    disabled={job.part.sections.len() >= Job::MOST_SECTIONS}
                    onclick={on(store, || Action::Edit(Edit::AddSection(SectionKind::Cylinder)))}
                >{ words.say(Text::AddSection) }</button>
            </section>
            <section class="group">
                <h2>{ words.say(Text::GroupHoles) }</h2>
                if job.part.bores.is_empty() {
                    <p>{ words.say(Text::NoHoles) }</p>
                }
                { for (0_u8..).zip(&job.part.bores).map(|(index, _)| hole(store, index)) }
                <button
                    type="button"
                    class="button"
                    disabled={job.part.bores.len() >= Job::MOST_BORES}
                    onclick={on(store, || Action::Edit(Edit::AddBore(BoreKind::Drilled)))}
                >{ words.say(Text::AddHole) }</button>
            </section>
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

fn section(store: &Store, index: u8) -> Html {
    let words = words(store);
    let field = |name| Field::Section(index, name);
    let alone = store.job.part.sections.len() == 1;
    let last = usize::from(index) + 1 == store.job.part.sections.len();
    html! {
        <fieldset class="row-set" key={format!("section-{index}")}>
            <legend>{ words.section(index) }</legend>
            { fields_of(store, &[
                field(SectionField::Kind),
                field(SectionField::Taper),
                field(SectionField::Diameter),
                field(SectionField::ShoulderDiameter),
                field(SectionField::EndDiameter),
                field(SectionField::PastGauge),
                field(SectionField::Length),
            ]) }
            <p class="row-tools">
                if !last {
                    <button type="button" class="button" onclick={on(store, move || Action::Edit(Edit::MoveSectionOut(index)))}>
                        { words.say(Text::MoveOutward) }
                        <span class="for-readers">{ " " }{ words.section(index) }</span>
                    </button>
                }
                if !alone {
                    <button type="button" class="button" onclick={on(store, move || Action::Edit(Edit::RemoveSection(index)))}>
                        { words.say(Text::Remove) }
                        <span class="for-readers">{ " " }{ words.section(index) }</span>
                    </button>
                }
            </p>
        </fieldset>
    }
}

fn hole(store: &Store, index: u8) -> Html {
    let words = words(store);
    let field = |name| Field::Bore(index, name);
    html! {
        <fieldset class="row-set" key={format!("hole-{index}")}>
            <legend>{ words.hole(index) }</legend>
            { fields_of(store, &[
                field(BoreField::Kind),
                field(BoreField::Thread),
                field(BoreField::CentreDrill),
                field(BoreField::Diameter),
                field(BoreField::Depth),
                field(BoreField::ThreadDepth),
                field(BoreField::DrillDepth),
                field(BoreField::Bottom),
            ]) }
            <p class="row-tools">
                <button type="button" class="button" onclick={on(store, move || Action::Edit(Edit::RemoveBore(index)))}>
                    { words.say(Text::Remove) }
                    <span class="for-readers">{ " " }{ words.hole(index) }</span>
                </button>
            </p>
        </fieldset>
    }
}
