//! The link of the job as a QR code on paper.

use skimwright::link;
use skimwright::offer::on_paper;
use skimwright::quantity::Length;
use skimwright::sheet::{Qr, qr, short};
use yew::prelude::*;

use crate::page::hooks::share::address_of;
use crate::page::store::{Store, words};
use crate::page::words::{OfPrint, Text};

/// The code is printed so large where that is enough, larger where its modules would be too small for a phone.
const USUAL_SIDE: Length = Length::mm(34.0);

/// A code that needs more room than this has none on the sheet.
const MOST_SIDE: Length = Length::mm(58.0);

/// The code with a line that says what it is; only a line where the link is too long for one.
pub(super) fn code(store: &Store) -> Html {
    let say = |text| words(store).say(Text::Print(text));
    let Some((code, side, record)) = live_code(store) else {
        return html! { <p class="job-code">{ say(OfPrint::CodeTooLong) }</p> };
    };
    let side = format!("{}mm", short(side.to_mm()));
    let modules = code.side();
    html! {
        <figure class="job-code">
            <svg class="job-code-modules" role="img" aria-label={say(OfPrint::CodeLabel)}
                width={side.clone()} height={side} viewBox={format!("0 0 {modules} {modules}")}
                shape-rendering="crispEdges">
                <path d={code.path()} />
            </svg>
            <figcaption>{ say(OfPrint::CodeSays(record)) }</figcaption>
        </figure>
    }
}

/// The code of the job without what is private, with its record; without the record where that is too long. And whether a record is in it.
fn live_code(store: &Store) -> Option<(Qr, Length, bool)> {
    let job = on_paper(&store.job);
    let whole = link::encode(&job).ok();
    let plain = || link::encode_without_record(&job).ok();
    let recorded = !job.record.events.is_empty();
    let fits = |text: String, record: bool| {
        let code = qr(&address_of(&link::in_digits(&text)?))?;
        let side = code.least_side().max(USUAL_SIDE);
        (side <= MOST_SIDE).then_some((code, side, record))
    };
    let whole = whole.and_then(|text| fits(text, recorded));
    whole.or_else(|| fits(plain()?, false))
}
