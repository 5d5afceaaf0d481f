//! What else the part could become: every standard shank that there is metal for, looked for while the list is open.

use std::rc::Rc;

use skimwright::job::ReceiverKind;
use skimwright::receiver::{Becomes, becomes};
use skimwright::rework::offer;
use skimwright::working::Value;
use yew::prelude::*;

use super::edit::{Edit, WantedEdit};
use super::markup::{all, bar, button, element, hint, option, pair, paragraph, status, text};
use super::options::{Filter, Group, RECEIVERS, Standard, groups};
use super::panel::{panel, panel_with};
use super::state::{Action, Panel};
use super::store::{Store, on, use_store, words};
use super::words::{OfBecoming, OfReceiver, Text};

/// So many are shown at first: what comes after keeps less.
const FIRST: usize = 8;

pub(crate) fn becomes_panel(store: &Store) -> Html {
    let title = words(store).say(Text::Becoming(OfBecoming::Title));
    panel(store, Panel::Becomes, title, None, || html! { <Options /> })
}

/// The list itself: made only while the panel is open, and worked out anew only when the job has changed.
#[component]
fn Options() -> Html {
    let store = use_store();
    let open = use_state(|| false);
    let job = store.as_ref().map(|store| Rc::clone(&store.job));
    let found = use_memo(job, |job| job.as_deref().map(becomes).unwrap_or_default());
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Becoming(text));
    if found.is_empty() {
        return paragraph(none_at_all(&store));
    }
    let groups = groups(&found, store.filter);
    let shown = if *open { groups.len() } else { FIRST };
    let more = groups.len() > shown;
    let show_all = Callback::from(move |_: MouseEvent| open.set(true));
    let count = if groups.is_empty() {
        say(OfBecoming::NoneOfThese).to_owned()
    } else {
        words.how_many(groups.len())
    };
    let rows = groups.iter().take(shown);
    let rows = rows.map(|group| group_row(&store, group, group.told_apart(&groups)));
    let mut parts = vec![
        hint(say(OfBecoming::Lead)),
        filters(&store),
        status(count.into()),
        element("ul", "rows", all(rows.collect())),
    ];
    if more {
        parts.push(button(say(OfBecoming::ShowAll), show_all));
    }
    element("div", "shanks", all(parts))
}

/// Why nothing can be made of it, and what would mend it.
fn none_at_all(store: &Store) -> String {
    let words = words(store);
    let Some(found) = &store.plan.clean_up else {
        return words.say(Text::Becoming(OfBecoming::NoPart)).to_owned();
    };
    let wanted = store.job.wanted.length.value();
    let most = offer(&store.job, found, wanted, store.units);
    format!(
        "{} {}",
        words.say(Text::Becoming(OfBecoming::NoneAtAll)),
        words.in_the_way(found.because, found.at, most.as_ref())
    )
}

fn filters(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Becoming(text));
    let now = store.filter;
    let one = |label: &'static str, filter: Filter, chosen: bool| {
        option(label, chosen, on(store, move || Action::Filter(filter)))
    };
    let receiver = |receiver: Option<ReceiverKind>| {
        let label = match receiver {
            Some(kind) => words.say(Text::Receiver(OfReceiver::Kind(kind))),
            None => say(OfBecoming::AnyReceiver),
        };
        one(label, Filter { receiver, ..now }, now.receiver == receiver)
    };
    let standard = |standard: Standard| {
        let label = say(OfBecoming::Standard(standard));
        one(label, Filter { standard, ..now }, now.standard == standard)
    };
    let full = Filter {
        full_length: !now.full_length,
        ..now
    };
    let kinds = [None].into_iter().chain(RECEIVERS.map(Some));
    let mut standards: Vec<Html> = Standard::ALL.into_iter().map(standard).collect();
    standards.push(one(say(OfBecoming::FullOnly), full, now.full_length));
    let set = |name: OfBecoming, inside: Vec<Html>| {
        let legend = element("legend", "", text(say(name)));
        let inside = element("div", "filter", all(inside));
        element("fieldset", "", all(vec![legend, inside]))
    };
    let sets = vec![
        set(OfBecoming::ReceiverFilter, kinds.map(receiver).collect()),
        set(OfBecoming::StandardFilter, standards),
    ];
    element("div", "filters", all(sets))
}

/// One standard shank: what it keeps at a glance, and behind that what it costs and what it goes into.
fn group_row(store: &Store, group: &Group, standard: Option<&'static str>) -> Html {
    let words = words(store);
    let Some(shank) = group.shank.get() else {
        return Html::default();
    };
    let own = Panel::Shank(group.shank.index());
    let [bending, torsion, stiffness] = group.best.kept;
    let say = |text| words.say(Text::Becoming(text));
    let taken = group.all.iter().any(|one| one.wanted == store.job.wanted);
    let line = words.how_long(group.best);
    let body = || {
        let pairs = vec![
            pair(say(OfBecoming::Torsion), words.share(torsion)),
            pair(say(OfBecoming::CutOff), words.length(group.best.cut_off)),
            pair(
                say(OfBecoming::TurnedOff),
                words.value(Value::Volume(group.best.turned)),
            ),
            pair(say(OfBecoming::Standards), shank.standards.to_owned()),
        ];
        let receivers = group.all.iter().map(|one| receiver_button(store, one));
        all(vec![
            element("dl", "pairs", all(pairs)),
            element("p", "shanks-into", text(say(OfBecoming::GoesInto))),
            element("div", "kinds", all(receivers.collect())),
            entered(store, taken, words.taken(shank)),
        ])
    };
    let kept = |name, share: f64| {
        let name = element("span", "kept-name", text(say(name)));
        let value = element("span", "more-value", text(words.share(share)));
        element("li", "kept", all(vec![name, text(" "), value, bar(share)]))
    };
    let kept = vec![
        kept(OfBecoming::Bending, bending),
        kept(OfBecoming::Stiffness, stiffness),
    ];
    let kept = element("ul", "kept-list", all(kept));
    let title = words.shank_in_full(shank, standard);
    html! { <li key={own.id()}>{ panel_with(store, own, title, Some(line), kept, body) }</li> }
}

/// Says that what is offered was entered, with the way back beside it.
pub(super) fn entered(store: &Store, is_entered: bool, says: impl Into<AttrValue>) -> Html {
    if !is_entered || !store.can_undo() {
        return status(AttrValue::Static(""));
    }
    let undo = on(store, || Action::Undo);
    all(vec![
        status(says.into()),
        button(words(store).say(Text::Undo), undo),
    ])
}

fn receiver_button(store: &Store, one: &Becomes) -> Html {
    let wanted = Rc::new(one.wanted.clone());
    let take = on(store, move || {
        Action::Edit(Edit::Wanted(WantedEdit::Become(Rc::clone(&wanted))))
    });
    let chosen = one.wanted == store.job.wanted;
    option(words(store).gripped_by(one), chosen, take)
}
