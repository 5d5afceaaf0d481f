//! The passes as a table.

use skimwright::cutting::{Pass, PassKind};
use skimwright::plan::{Code, Finding, Level};
use skimwright::quantity::{Dimension, show};
use yew::prelude::*;

use super::store::{Store, words};
use super::words::{Text, Words, rotation_bare};

pub(crate) fn pass_table(store: &Store) -> Html {
    let words = words(store);
    let passes = store
        .plan
        .stock_off
        .as_ref()
        .map_or(&[][..], |stock| &stock.passes);
    let unit = words.length_unit();
    let (rotation, feed) = (words.unit(Dimension::Rotation), words.unit(Dimension::Feed));
    let heads = [
        (Text::PassNumber, ""),
        (Text::PassInfeed, unit),
        (Text::PassOff, unit),
        (Text::PassAfter, unit),
        (Text::PassMetal, unit),
        (Text::PassSpeed, rotation),
        (Text::PassFeed, feed),
        (Text::PassTime, ""),
    ];
    html! {
        <section class="group" aria-labelledby="passes-title">
            <h2 id="passes-title">{ words.say(Text::PassesLabel) }</h2>
            if passes.is_empty() {
                <p>{ words.say(why_none(store)) }</p>
            } else {
                // Its rows are two lines high where there is no room for one: the roles say that it is a table still.
                <div class="table-frame">
                    <table class="passes" role="table" aria-labelledby="passes-title">
                        <thead role="rowgroup"><tr role="row">
                            { for heads.into_iter().map(|(head, unit)| html! {
                                <th role="columnheader" scope="col">{ words.say(head) }<small>{ unit }</small></th>
                            }) }
                        </tr></thead>
                        <tbody role="rowgroup">{ for passes.iter().zip(1_u32..).map(|(pass, number)| row(words, pass, number)) }</tbody>
                    </table>
                </div>
                <p class="field-hint">{ words.say(Text::PassesNote) }</p>
            }
        </section>
    }
}

/// Why there are no passes. Without the stock, with a stop, or with a tool that cannot cut, nobody knows yet.
fn why_none(store: &Store) -> Text {
    let mut findings = store.plan.findings.iter();
    let stands = |it: &Finding| it.level == Level::Stop || it.code == Code::ToolCannotCut;
    if store.plan.stock_off.is_none() || findings.any(stands) {
        Text::NoPassesYet
    } else {
        Text::NoPasses
    }
}

fn row(words: Words, pass: &Pass, number: u32) -> Html {
    let turned = pass.kind != PassKind::Polish;
    let only = |text: String| if turned { text } else { "–".to_owned() };
    html! {
        <tr role="row">
            <th role="rowheader" scope="row">
                { number }{ " " }<small>{ words.say(Text::PassKind(pass.kind)) }</small>
            </th>
            <td role="cell" class="pass-infeed">{ only(words.size_bare(pass.infeed)) }</td>
            <td role="cell">{ words.size_bare(pass.off_diameter) }</td>
            <td role="cell">{ words.size_bare(pass.diameter_after) }</td>
            <td role="cell">{ words.length_bare(pass.metal) }</td>
            <td role="cell">{ only(rotation_bare(pass.spindle_speed)) }</td>
            <td role="cell">{ only(words.feed_bare(pass.feed)) }</td>
            <td role="cell">{ show::time(pass.time.likely) }</td>
        </tr>
    }
}
