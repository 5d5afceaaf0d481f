//! The lists of what a part has several of: one row each, its fields behind its heading, and the way to add one.

use skimwright::job::{BoreField, FeatureField, Field, HeadField, SectionField};
use yew::prelude::*;

use super::fields_of;
use crate::page::edit::{Edit, Kind, List};
use crate::page::markup::button;
use crate::page::panel::panel;
use crate::page::panels::fields_in;
use crate::page::recognise::recognised;
use crate::page::state::{Action, Panel, Spot};
use crate::page::store::{Store, on, words};
use crate::page::words::Text;

/// A whole list with its heading.
pub(super) fn list_group(store: &Store, list: List) -> Html {
    let words = words(store);
    let count = list.len(&store.job.part);
    html! {
        <section class="group">
            <h2>{ words.say(Text::GroupList(list)) }</h2>
            if count == 0 {
                <p>{ words.say(Text::NoneListed(list)) }</p>
            } else {
                <div class="rows">{ for (0_u8..).take(count).map(|index| row(store, list, index)) }</div>
            }
            { adder(store, list) }
        </section>
    }
}

fn row(store: &Store, list: List, index: u8) -> Html {
    let words = words(store);
    let line = words.row_line(&store.job, list, index);
    panel(
        store,
        Panel::Row(list, index),
        words.row(list, index),
        Some(line),
        || {
            html! {
                <>
                    { fields_of(store, &fields(list, index)) }
                    { errors(store, list, index) }
                    if list == List::Sections {
                        { recognised(store, index) }
                    }
                    { tools(store, list, index) }
                </>
            }
        },
    )
}

/// The fields of a row in their order; which of them it has, its kind decides.
fn fields(list: List, index: u8) -> Vec<Field> {
    match list {
        List::Head => [HeadField::Diameter, HeadField::Length]
            .map(|name| Field::Head(index, name))
            .to_vec(),
        List::Sections => [
            SectionField::Kind,
            SectionField::Taper,
            SectionField::Thread,
            SectionField::Diameter,
            SectionField::ShoulderDiameter,
            SectionField::EndDiameter,
            SectionField::Ratio,
            SectionField::Angle,
            SectionField::PastGauge,
            SectionField::Length,
            SectionField::From,
            SectionField::Start,
        ]
        .map(|name| Field::Section(index, name))
        .to_vec(),
        List::Features => [
            FeatureField::Kind,
            FeatureField::Flats,
            FeatureField::Over,
            FeatureField::Width,
            FeatureField::Depth,
            FeatureField::Disc,
            FeatureField::Diameter,
            FeatureField::Thickness,
            FeatureField::Length,
            FeatureField::SlotWidth,
            FeatureField::SlotDepth,
            FeatureField::From,
            FeatureField::Start,
        ]
        .map(|name| Field::Feature(index, name))
        .to_vec(),
        List::Bores => [
            BoreField::Kind,
            BoreField::End,
            BoreField::Thread,
            BoreField::CentreDrill,
            BoreField::Diameter,
            BoreField::Depth,
            BoreField::StepDiameter,
            BoreField::StepDepth,
            BoreField::ThreadDepth,
            BoreField::ReamDepth,
            BoreField::DrillDepth,
            BoreField::Bottom,
            BoreField::OffCentre,
        ]
        .map(|name| Field::Bore(index, name))
        .to_vec(),
    }
}

/// How sure the measures of a taper are, where the row is one.
fn errors(store: &Store, list: List, index: u8) -> Html {
    let own = Panel::Errors(index);
    let fields = fields_in(own);
    if list != List::Sections || !fields.iter().any(|field| store.job.has(*field)) {
        return Html::default();
    }
    let title = words(store).say(Text::GroupErrors);
    panel(store, own, title, None, || fields_of(store, &fields))
}

/// What can be done with a row as a whole.
fn tools(store: &Store, list: List, index: u8) -> Html {
    let count = list.len(&store.job.part);
    let name = words(store).row(list, index);
    let tool = |text: Text, id: Option<String>, edit: Edit| {
        html! {
            <button type="button" class="button" {id} onclick={on(store, move || Action::Edit(edit.clone()))}>
                { words(store).say(text) }
                <span class="for-readers">{ " " }{ &name }</span>
            </button>
        }
    };
    // A shank has one section at least.
    let can_go = list != List::Sections || 1 < count;
    html! {
        <p class="row-tools">
            if 0 < index {
                { tool(Text::MoveBack(list), Some(Spot::MovesBack(list, index).id()), Edit::MoveBack(list, index)) }
            }
            if usize::from(index) + 1 < count {
                { tool(Text::MoveOn(list), Some(Spot::MovesOn(list, index).id()), Edit::MoveOn(list, index)) }
            }
            if list.can_copy(&store.job.part, index) {
                { tool(Text::Copy(list), None, Edit::Copy(list, index)) }
            }
            if can_go {
                { tool(Text::Remove, None, Edit::Remove(list, index)) }
            }
        </p>
    }
}

/// The way to add a row: a list of one kind adds it at once, the others ask for the kind.
fn adder(store: &Store, list: List) -> Html {
    let words = words(store);
    if list.most() <= list.len(&store.job.part) {
        return html! { <p class="field-hint">{ words.say(Text::Full) }</p> };
    }
    let add = |kind: Kind| on::<MouseEvent>(store, move || Action::Edit(Edit::Add(kind)));
    let name = words.say(Text::Add(list));
    let kinds = list.kinds();
    if let [only] = kinds.as_slice() {
        let id = Panel::Add(list).id();
        return html! { <button type="button" class="button" {id} onclick={add(*only)}>{ name }</button> };
    }
    panel(store, Panel::Add(list), name, None, || {
        html! {
            <div class="kinds">
                { for kinds.into_iter().map(|kind| html! {
                    { button(words.say(Text::Kind(kind)), add(kind)) }
                }) }
            </div>
        }
    })
}
