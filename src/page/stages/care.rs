//! The usual cautions, one line each, where this job has the step.

use skimwright::cutting::{StockOff, is_hard};
use skimwright::job::CutOffMethod;
use skimwright::rework::CutKind;
use yew::prelude::*;

use crate::page::store::{Store, words};
use crate::page::words::Text;

pub(crate) fn care(store: &Store) -> Html {
    let words = words(store);
    let cut = store
        .plan
        .cut_off
        .as_ref()
        .is_some_and(|cut| cut.kind == CutKind::CutAndFace);
    let disc = matches!(
        store.job.shop.cut_off_method,
        CutOffMethod::HandDisc | CutOffMethod::ChopWheel
    );
    let hard = is_hard(store.job.part.material);
    let polished = store
        .plan
        .stock_off
        .as_ref()
        .is_some_and(StockOff::is_polished);
    let lines = [
        Some(Text::CareSetUp),
        (cut && disc).then_some(Text::CareDisc),
        Some(if hard {
            Text::CareHard
        } else {
            Text::CareChips
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
