//! The usual cautions, one line each, at the step that they belong to.

use skimwright::cutting::{StockOff, is_hard};
use skimwright::job::CutOffMethod;
use skimwright::rework::CutKind;
use skimwright::tables::WorkMaterial;
use yew::prelude::*;

use crate::page::store::{Store, words};
use crate::page::words::Text;

/// Above how the part is cut off: what an abrasive disc asks for.
pub(crate) fn care_at_cut(store: &Store) -> Html {
    let cut = store
        .plan
        .cut_off
        .as_ref()
        .is_some_and(|cut| cut.kind == CutKind::CutAndFace);
    let disc = matches!(
        store.job.shop.cut_off_method,
        CutOffMethod::HandDisc | CutOffMethod::ChopWheel
    );
    if !(cut && disc) {
        return Html::default();
    }
    html! { <p class="care-step">{ words(store).say(Text::CareDisc) }</p> }
}

/// Below the passes: turning, polishing, and what holds for all of it.
pub(crate) fn care(store: &Store) -> Html {
    let words = words(store);
    let material = store.job.part.material;
    let polished = store
        .plan
        .stock_off
        .as_ref()
        .is_some_and(StockOff::is_polished);
    let lines = [
        Some(Text::CareSetUp),
        Some(match material {
            WorkMaterial::GreyIron | WorkMaterial::DuctileIron => Text::CareDust,
            WorkMaterial::TitaniumAlloy => Text::CareFire,
            _ if is_hard(material) => Text::CareHard,
            _ => Text::CareChips,
        }),
        polished.then_some(Text::CarePolish),
        Some(Text::CareLives),
        Some(Text::CareEstimates),
    ];
    html! {
        <section class="group care">
            <h2>{ words.say(Text::CareLabel) }</h2>
            <ul>{ for lines.into_iter().flatten().map(|line| html! { <li>{ words.say(line) }</li> }) }</ul>
        </section>
    }
}
