//! Wanted: what the shank shall become.

use skimwright::job::Field;
use yew::prelude::*;

use super::{fields_of, group};
use crate::page::becomes::becomes_panel;
use crate::page::curve::most_panel;
use crate::page::panel::panel;
use crate::page::panels::fields_in;
use crate::page::receiver;
use crate::page::state::Panel;
use crate::page::store::{Store, words};
use crate::page::words::Text;

pub(crate) fn wanted_stage(store: &Store) -> Html {
    let words = words(store);
    html! {
        <>
            { group(store, words.say(Text::GroupFinished), &[
                Field::WantedDiameter,
                Field::Tolerance,
                Field::UpperDeviation,
                Field::LowerDeviation,
                Field::WantedLength,
                Field::ShoulderRadius,
                Field::EndChamfer,
                Field::Countersink,
                Field::Roughness,
            ]) }
            <section class="group">
                <h2>{ words.say(Text::GroupReceiver) }</h2>
                { fields_of(store, &receiver::FIELDS) }
                { receiver::asks(store) }
            </section>
            <section class="group">
                { becomes_panel(store) }
                { most_panel(store) }
                { panel(store, Panel::Duty, words.say(Text::GroupDuty), None, || {
                    fields_of(store, &fields_in(Panel::Duty))
                }) }
            </section>
        </>
    }
}
