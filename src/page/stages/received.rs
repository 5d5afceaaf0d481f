//! Received: the part as it came in.

use skimwright::job::Field;
use yew::prelude::*;

use super::fields_of;
use super::rows::list_group;
use crate::page::edit::List;
use crate::page::field::{Place, field_control};
use crate::page::panel::panel;
use crate::page::panels::fields_in;
use crate::page::state::Panel;
use crate::page::store::{Store, words};
use crate::page::words::Text;

pub(crate) fn received_stage(store: &Store) -> Html {
    let words = words(store);
    let more = words.say(Text::GroupMoreOfPart);
    html! {
        <>
            <section class="group">{ field_control(store, Field::Title, Place::List) }</section>
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
