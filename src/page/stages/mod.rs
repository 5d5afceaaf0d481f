//! What stands on each stage below the drawing.

mod care;
mod plan;
mod received;
mod rows;
mod wanted;

use skimwright::job::Field;
use yew::prelude::*;

pub(crate) use care::{care_at_holding, care_at_passes};
pub(crate) use plan::plan_stage;
pub(crate) use received::received_stage;
pub(crate) use wanted::wanted_stage;

use super::field::{Place, field_control};
use super::store::Store;

/// A titled group of fields.
fn group(store: &Store, title: &'static str, fields: &[Field]) -> Html {
    html! {
        <section class="group">
            <h2>{ title }</h2>
            { fields_of(store, fields) }
        </section>
    }
}

/// Fields one below the other; those that the job has no place for are left out.
pub(super) fn fields_of(store: &Store, fields: &[Field]) -> Html {
    html! {
        <div class="fields">
            { for fields.iter().map(|field| field_control(store, *field, Place::List)) }
        </div>
    }
}
