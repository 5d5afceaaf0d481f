//! The speeds or feeds of the lathe: without steps, or those of a list that is typed as one text.

use skimwright::job::{Field, Gears, Job, MachineField};
use yew::prelude::*;

use super::choice::{Choice, Choices, item};
use super::edit::{Edit, ShopEdit};
use super::field::typed_field;
use super::markup::all;
use super::store::{Store, words};
use super::words::{OfShop, Text};

/// The choice between the two, and below it the list where there is one. The ends of a drive without steps are fields of
/// their own.
pub(crate) fn gears_control(
    store: &Store,
    field: Field,
    id: String,
    label: String,
    focus: bool,
) -> Html {
    let words = words(store);
    let listed = store.job.gears(field).is_some();
    let choose = |text, list: bool| {
        let label = words.say(Text::Shop(text));
        item(label, changed(&store.job, field, list), list == listed)
    };
    let choice = Choices::plain([
        choose(OfShop::Stepless, false),
        choose(OfShop::Listed, true),
    ]);
    let list_id = format!("{id}-list");
    let key = id.clone();
    let mut parts = vec![html! {
        <Choice {key} {id} {label} hint={None::<AttrValue>} {choice} focus={focus && !listed} />
    }];
    if listed {
        parts.push(typed_field(field, list_id, words.list_label(field), focus));
    }
    all(parts)
}

/// The change to a list or to none; what is chosen already stays as it is.
fn changed(job: &Job, field: Field, list: bool) -> Edit {
    let machine = &job.shop.machine;
    Edit::Shop(match field {
        Field::Machine(MachineField::Feeds) => ShopEdit::Feeds(other(&machine.feeds, list)),
        _ => ShopEdit::Speeds(other(&machine.speeds, list)),
    })
}

fn other<Q: Clone>(now: &Gears<Q>, list: bool) -> Gears<Q> {
    match (now, list) {
        (Gears::Stepless { .. }, true) => Gears::Listed(Vec::new()),
        (Gears::Listed(_), false) => Gears::default(),
        (same, _) => same.clone(),
    }
}
