//! The passes as a table: what to dial in, speed and feed to set, and what to know before each.

use skimwright::cutting::{Pass, PassCut, PassKind};
use skimwright::job::DialReads;
use skimwright::plan::{Code, Finding, Level};
use skimwright::quantity::Dimension;
use yew::prelude::*;

use super::markup::{all, element, hint, paragraph, text};
use super::pass_detail::{pass_detail, savings_panel};
use super::stages::care_at_passes;
use super::state::{Action, Spot};
use super::store::{Store, on, words};
use super::words::{OfCut, Text, Words};

pub(crate) fn pass_table(store: &Store) -> Html {
    let words = words(store);
    let passes = store
        .plan
        .stock_off
        .as_ref()
        .map_or(&[][..], |stock| &stock.passes);
    let mut parts = vec![html! { <h2 id="passes-title">{ words.say(Text::PassesLabel) }</h2> }];
    if passes.is_empty() {
        // What the metal itself asks for holds before there is a plan.
        parts.extend([paragraph(words.say(why_none(store))), care_at_passes(store)]);
    } else {
        let dial = match store.job.shop.machine.dial_reads {
            DialReads::Diameter => OfCut::DialReadsDiameter,
            DialReads::Radius => OfCut::DialReadsRadius,
        };
        parts.extend([
            table(store, passes),
            hint(words.say(Text::Cut(dial))),
            hint(words.say(Text::PassesNote)),
            care_at_passes(store),
            pass_detail(store, passes),
            savings_panel(store),
        ]);
    }
    html! { <section class="group" aria-labelledby="passes-title">{ all(parts) }</section> }
}

/// Its rows are several lines high where there is no room for one: the roles say that it is a table still.
fn table(store: &Store, passes: &[Pass]) -> Html {
    let words = words(store);
    let unit = words.length_unit();
    let reads = store.job.shop.machine.dial_reads;
    let (rotation, feed) = (words.unit(Dimension::Rotation), words.unit(Dimension::Feed));
    let heads = [
        (Text::PassNumber, ""),
        (Text::PassDial, unit),
        (beside_dial(reads), unit),
        (Text::PassAfter, unit),
        (Text::PassMetal, unit),
        (Text::PassSpeed, rotation),
        (Text::PassFeed, feed),
        (Text::PassTime, ""),
        (Text::PassMarks, ""),
    ];
    let rows = (0..u8::MAX).zip(passes);
    html! {
        <div class="table-frame">
            <table class="passes" role="table" aria-labelledby="passes-title">
                <thead role="rowgroup"><tr role="row">
                    { for heads.into_iter().map(|(head, unit)| html! {
                        <th role="columnheader" scope="col">{ words.say(head) }<small>{ unit }</small></th>
                    }) }
                </tr></thead>
                <tbody role="rowgroup">{ for rows.map(|(index, pass)| row(store, pass, index)) }</tbody>
            </table>
        </div>
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

/// What the dial does not say itself: the infeed on radius, or what comes off the diameter.
const fn beside_dial(reads: DialReads) -> Text {
    match reads {
        DialReads::Diameter => Text::PassInfeed,
        DialReads::Radius => Text::PassOff,
    }
}

fn row(store: &Store, pass: &Pass, index: u8) -> Html {
    let words = words(store);
    let turned = pass.kind != PassKind::Polish;
    let only = |text: String| if turned { text } else { "–".to_owned() };
    let reads = store.job.shop.machine.dial_reads;
    let marks = pass.cut.as_ref().map_or_else(Vec::new, marks);
    let marks = marks.into_iter().map(|mark| {
        let said = text(words.say(Text::Cut(mark)));
        element("span", "pass-mark", said)
    });
    let cells = [
        only(words.size_bare(pass.dialled(reads))),
        match reads {
            DialReads::Diameter => only(words.size_bare(pass.infeed)),
            DialReads::Radius => words.size_bare(pass.off_diameter),
        },
        words.size_bare(pass.diameter_after),
        words.length_bare(pass.metal),
        only(words.rotation_bare(pass.spindle_speed)),
        only(words.feed_bare(pass.feed)),
        words.time(pass.time),
    ];
    html! {
        <tr role="row">
            <th role="rowheader" scope="row">{ name(store, words, pass, index) }</th>
            { for cells.into_iter().map(|cell| html! { <td role="cell">{ cell }</td> }) }
            <td role="cell">{ all(marks.collect()) }</td>
        </tr>
    }
}

/// Number and kind; of a pass with the tool they open its detail.
fn name(store: &Store, words: Words, pass: &Pass, index: u8) -> Html {
    let number = (u16::from(index) + 1).to_string();
    let kind = element("small", "", text(words.say(Text::PassKind(pass.kind))));
    let name = all(vec![text(number), text(" "), kind]);
    if pass.cut.is_none() {
        return name;
    }
    let open = store.pass == Some(index);
    let onclick = on(store, move || Action::PickPass((!open).then_some(index)));
    html! {
        <button type="button" class="pass-button" id={Spot::Pass(index).id()} {onclick}
            aria-expanded={if open { "true" } else { "false" }}
            aria-controls={open.then_some("pass-detail")}>
            { name }
        </button>
    }
}

/// What to know before a pass.
fn marks(cut: &PassCut) -> Vec<OfCut> {
    [
        (cut.pinned.is_some(), OfCut::Pinned),
        (cut.new_edge, OfCut::FreshEdge),
        (cut.interrupted, OfCut::Knocks),
        (cut.in_core, OfCut::Core),
    ]
    .into_iter()
    .filter_map(|(is, mark)| is.then_some(mark))
    .collect()
}
