//! What one pass does: how much of each limit it uses, its forces, and the way to pin it; and what would help.

use skimwright::cutting::{HeldBy, Load, Pass, PassCut};
use skimwright::sheet::short;
use skimwright::working::Value;
use yew::prelude::*;

use super::edit::can_pin;
use super::figures::figure_list;
use super::markup::{all, button, element, hint, pair, paragraph, text};
use super::panel::panel;
use super::state::{Action, Panel, Shown, Spot};
use super::store::{Store, on, words};
use super::words::{OfCut, Text};

/// The detail of the pass that is picked; nothing while none is.
pub(crate) fn pass_detail(store: &Store, passes: &[Pass]) -> Html {
    let picked = store.pass.and_then(|index| {
        let pass = passes.get(usize::from(index))?;
        Some((index, pass, pass.cut.as_ref()?))
    });
    let Some((index, pass, cut)) = picked else {
        return Html::default();
    };
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let title_id = Spot::PassDetail.id();
    let title = words.pass_title(u32::from(index) + 1, pass);
    let parts = vec![
        html! { <h3 id={title_id.clone()} tabindex="-1">{ title }</h3> },
        paragraph(words.held_by(cut.held_by)),
        element("h4", "", text(say(OfCut::Loads))),
        loads(store, cut),
        figure_list(
            store,
            &[
                Shown::PassForce(index),
                Shown::PassPower(index),
                Shown::PassSpeed(index),
            ],
        ),
        further(store, pass, cut),
        hint(say(OfCut::Estimates)),
        tools(store, cut, passes, index),
    ];
    html! {
        <section id="pass-detail" class="pass-detail" aria-labelledby={title_id}>{ all(parts) }</section>
    }
}

/// A bar for each load, told by its figure and its name: the mark stands where all of the limit is used.
fn loads(store: &Store, cut: &PassCut) -> Html {
    let words = words(store);
    let one = |load: &Load| {
        let name = words.say(Text::Cut(OfCut::Limit(load.limit)));
        let holds = if holds(cut.held_by, load) {
            "load load-holds"
        } else {
            "load"
        };
        let parts = vec![
            element("span", "load-name", text(name)),
            text(" "),
            element("span", "more-value", text(words.share(load.share))),
            load_bar(load.share),
        ];
        element("li", holds, all(parts))
    };
    element("ul", "loads", all(cut.loads.iter().map(one).collect()))
}

/// Whether a limit holds the pass back.
fn holds(by: HeldBy, load: &Load) -> bool {
    [by.depth, by.feed, by.speed].contains(&Some(load.limit))
}

fn load_bar(share: f64) -> Html {
    let width = short(share.clamp(0.0, 1.2) * 100.0);
    html! {
        <svg class="bar" viewBox="0 0 120 8" preserveAspectRatio="none" aria-hidden="true">
            <rect class="bar-whole" width="100" height="8" />
            <rect class="bar-share" y="2" {width} height="4" />
            <rect class="bar-end" x="99" width="2" height="8" />
        </svg>
    }
}

fn further(store: &Store, pass: &Pass, cut: &PassCut) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let mut pairs = vec![
        pair(say(OfCut::Along), words.value(Value::Force(cut.along))),
        pair(say(OfCut::Across), words.value(Value::Force(cut.across))),
        pair(
            say(OfCut::CuttingSpeed),
            words.value(Value::Speed(pass.cutting_speed)),
        ),
    ];
    if let Some(roughness) = cut.roughness {
        let fine = |length| words.fine(length);
        let range = words.range(&fine(roughness.low), &fine(roughness.high));
        pairs.push(pair(
            say(OfCut::Roughness),
            words.likely(&fine(roughness.typical), &range),
        ));
    }
    pairs.push(pair(say(OfCut::EdgeUsed), words.share(cut.edge_used)));
    pairs.push(pair(
        say(OfCut::Chip),
        say(OfCut::ChipVerdict(cut.chip)).to_owned(),
    ));
    element("dl", "pairs", all(pairs))
}

fn tools(store: &Store, cut: &PassCut, passes: &[Pass], index: u8) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let pin = || on(store, || Action::PinPicked);
    let mut tools = Vec::new();
    if cut.pinned.is_some() {
        tools.push(button(say(OfCut::Unpin), pin()));
    } else if can_pin(&store.job, passes, usize::from(index), store.units) {
        tools.push(button(say(OfCut::Pin), pin()));
    }
    tools.push(button(
        words.say(Text::Close),
        on(store, || Action::PickPass(None)),
    ));
    element("p", "row-tools", all(tools))
}

/// What widening one limit would save; worked out only while it is open.
pub(crate) fn savings_panel(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    panel(
        store,
        Panel::Savings,
        say(OfCut::SavingsTitle),
        None,
        || {
            let savings = &store.compared().savings;
            if savings.is_empty() {
                return paragraph(say(OfCut::NoSavings));
            }
            let pairs = savings.iter();
            let pairs = pairs.map(|it| pair(say(OfCut::Limit(it.limit)), words.saving(it)));
            all(vec![
                hint(say(OfCut::SavingsLead)),
                element("dl", "pairs", all(pairs.collect())),
            ])
        },
    )
}
