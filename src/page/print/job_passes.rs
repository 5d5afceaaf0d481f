//! The passes on the job sheet: what to dial in, and a box for what was read after each.

use skimwright::cutting::{Pass, PassKind};
use skimwright::quantity::Dimension;
use yew::prelude::*;

use crate::page::lathe::dialled;
use crate::page::store::{Store, words};
use crate::page::words::{OfPrint, Text, split_unit};

/// As many as have room beside the steps.
const ON_FIRST: usize = 20;

/// As many as have room on a page of their own, on the shorter of the two sizes of paper.
const ON_EACH: usize = 28;

fn planned(store: &Store) -> &[Pass] {
    let stock = store.plan.stock_off.as_ref();
    stock.map_or(&[][..], |stock| &stock.passes)
}

/// How many pages there are of them.
fn pages(count: usize) -> usize {
    1 + count.saturating_sub(ON_FIRST).div_ceil(ON_EACH)
}

/// The first of them.
pub(super) fn passes(store: &Store) -> Html {
    let words = words(store);
    let all = planned(store);
    let goes_on = ON_FIRST < all.len();
    html! {
        <section class="job-passes">
            <h2>{ words.say(Text::PassesLabel) }</h2>
            if all.is_empty() {
                <p>{ words.say(Text::NoPasses) }</p>
            } else {
                { table(store, all.iter().take(ON_FIRST), 1) }
            }
            if goes_on {
                <p><strong>{ words.say(Text::Print(OfPrint::GoesOn)) }</strong></p>
            }
        </section>
    }
}

/// The others, each page with a heading that says what it goes on from.
pub(super) fn further_passes(store: &Store, title: &str) -> Html {
    let words = words(store);
    let all = planned(store);
    let pages = pages(all.len());
    let further = all.get(ON_FIRST..).unwrap_or_default().chunks(ON_EACH);
    let further = (0..).zip(further).map(|(at, chunk): (usize, &[Pass])| {
        let first = ON_FIRST + at * ON_EACH + 1;
        html! {
            <section class="job-further">
                <p class="job-title-line">{ title }</p>
                <h2>{ words.passes_continued(at + 2, pages) }</h2>
                { table(store, chunk.iter(), first) }
            </section>
        }
    });
    html! { <>{ for further }</> }
}

fn table<'a>(store: &Store, passes: impl Iterator<Item = &'a Pass>, first: usize) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let unit = words.length_unit();
    let dial = store.unit_of_dial().sign();
    let heads = [
        (say(OfPrint::Number), ""),
        (say(OfPrint::DialIn), dial),
        (say(OfPrint::After), unit),
        (words.say(Text::PassSpeed), words.unit(Dimension::Rotation)),
        (words.say(Text::PassFeed), words.unit(Dimension::Feed)),
        (say(OfPrint::Read), unit),
    ];
    let rows = (first..)
        .zip(passes)
        .map(|(number, pass)| row(store, number, pass));
    html! {
        <table class="job-table">
            <thead><tr>{ for heads.into_iter().map(|(head, unit)| html! {
                <th scope="col">{ head }<br />{ unit }</th>
            }) }</tr></thead>
            <tbody>{ for rows }</tbody>
        </table>
    }
}

fn row(store: &Store, number: usize, pass: &Pass) -> Html {
    let words = words(store);
    let after = words.size_bare(pass.diameter_after);
    let cells = if pass.kind == PassKind::Polish {
        let polish = words.say(Text::PassKind(pass.kind)).to_owned();
        html! { <><td class="job-words">{ polish }</td><td>{ after }</td><td>{ "–" }</td><td>{ "–" }</td></> }
    } else {
        let dialled = dialled(store, pass.dialled(store.job.shop.machine.dial_reads), None);
        html! {
            <>
                <td>{ split_unit(&dialled).0 }</td>
                <td>{ after }</td>
                <td>{ words.rotation_bare(pass.spindle_speed) }</td>
                <td>{ words.feed_bare(pass.feed) }</td>
            </>
        }
    };
    html! { <tr><th scope="row">{ number }</th>{ cells }<td class="job-box"></td></tr> }
}
