//! What the finished shank goes into: its choices, and what it asks of the shank.

use skimwright::job::{Field, Receiver, ReceiverField, ReceiverKind};
use skimwright::receiver::with_its_limits;
use skimwright::tables::{
    ColletSize, ColletSystem, HoleClass, SeatLoad, ShankForm, ShankSize, SleeveDuty, WorkMaterial,
};
use yew::prelude::*;

use super::choice::{Choices, Item, item};
use super::edit::{Edit, WantedEdit};
use super::figures::figure_list;
use super::markup::{all, button, element, text};
use super::state::{Action, Shown};
use super::store::{Store, on, words};
use super::words::{Ask, OfReceiver, Text, Words};

/// The fields of every kind of receiver, in the order of the page; the job has those of its own kind.
pub(crate) const FIELDS: [Field; 12] = [
    Field::Receiver(ReceiverField::Kind),
    Field::Receiver(ReceiverField::Collet),
    Field::Receiver(ReceiverField::Shank),
    Field::Receiver(ReceiverField::Hole),
    Field::Receiver(ReceiverField::Load),
    Field::Receiver(ReceiverField::RingChamfer),
    Field::Receiver(ReceiverField::SleeveDuty),
    Field::Receiver(ReceiverField::SleeveMaterial),
    Field::Receiver(ReceiverField::Outside),
    Field::Receiver(ReceiverField::Edge),
    Field::ReceiverDepth,
    Field::LeastGrip,
];

/// The choices of one of its fields; `None` for numbers, and for what this kind does not have.
pub(crate) fn receiver_choice(
    words: Words,
    receiver: &Receiver,
    field: ReceiverField,
) -> Option<Choices> {
    let say = |text| words.say(Text::Receiver(text));
    let plain = |items: Vec<Item>| Some(Choices::plain(items));
    match (field, receiver) {
        (ReceiverField::Kind, _) => plain(each(ReceiverKind::ALL, |kind| {
            let label = say(OfReceiver::Kind(kind));
            (label, WantedEdit::Kind(kind), kind == receiver.kind())
        })),
        (ReceiverField::Collet, Receiver::Collet { collet }) => Some(collets(words, *collet)),
        (ReceiverField::Shank, Receiver::SideLock { shank }) => Some(shanks(words, *shank)),
        (ReceiverField::Hole, Receiver::PlainBore { hole, .. }) => {
            plain(each(&HoleClass::ALL, |class| {
                let label = say(OfReceiver::Hole(class));
                (label, WantedEdit::Hole(class), class == *hole)
            }))
        }
        (ReceiverField::Load, Receiver::Bearing { load, .. }) => {
            plain(each(&SeatLoad::ALL, |one| {
                let label = say(OfReceiver::Load(one));
                (label, WantedEdit::Load(one), one == *load)
            }))
        }
        (ReceiverField::SleeveDuty, Receiver::Sleeve { duty, .. }) => {
            plain(each(&SleeveDuty::ALL, |one| {
                let label = say(OfReceiver::Duty(one));
                (label, WantedEdit::SleeveDuty(one), one == *duty)
            }))
        }
        (ReceiverField::SleeveMaterial, Receiver::Sleeve { material, .. }) => {
            plain(each(&WorkMaterial::ALL, |one| {
                let label = words.say(Text::Material(one));
                (label, WantedEdit::SleeveMaterial(one), one == *material)
            }))
        }
        _ => None,
    }
}

fn each<T: Copy>(all: &[T], one: impl Fn(T) -> (&'static str, WantedEdit, bool)) -> Vec<Item> {
    let item = |it: &T| {
        let (label, edit, chosen) = one(*it);
        choice(label, edit, chosen)
    };
    all.iter().map(item).collect()
}

fn choice(label: impl Into<AttrValue>, edit: WantedEdit, chosen: bool) -> Item {
    item(label, Edit::Wanted(edit), chosen)
}

fn collets(words: Words, chosen: ColletSize) -> Choices {
    let one = |size| choice(words.collet(size), WantedEdit::Collet(size), size == chosen);
    let iso = ColletSize::of(ColletSystem::Iso15488).map(one).collect();
    let others = [ColletSystem::FiveC, ColletSystem::R8]
        .into_iter()
        .flat_map(ColletSize::of);
    Choices::grouped([
        (words.say(Text::Receiver(OfReceiver::IsoCollets)), iso),
        (
            words.say(Text::Receiver(OfReceiver::OtherCollets)),
            others.map(one).collect(),
        ),
    ])
}

/// The shanks that are clamped by a flat, each with its standards: some differ in the flat alone.
fn shanks(words: Words, chosen: ShankSize) -> Choices {
    let forms = [ShankForm::Flat, ShankForm::InclinedFlat];
    Choices::grouped(forms.map(|form| {
        let sizes = ShankSize::of(form).filter_map(|size| {
            let shank = size.get()?;
            let label = format!("{}, {}", words.shank(shank), shank.standards);
            Some(choice(label, WantedEdit::Shank(size), size == chosen))
        });
        let name = words.say(Text::Receiver(OfReceiver::Form(form)));
        (name, sizes.collect())
    }))
}

/// What the receiver asks, in words, and the way to take its limits.
pub(crate) fn asks(store: &Store) -> Html {
    let words = words(store);
    let asks = words.asks(&store.job, &store.plan);
    let say = |what| words.say(Text::Receiver(what));
    if asks.is_empty() {
        return Html::default();
    }
    let one = |ask: Ask| {
        let class = if ask.off { "ask ask-off" } else { "ask" };
        let name = element("dt", "", text(ask.name));
        element(
            "div",
            class,
            all(vec![name, element("dd", "", text(ask.says))]),
        )
    };
    let mut parts = vec![
        element("h3", "", text(say(OfReceiver::Asks))),
        element("dl", "ask-list", all(asks.into_iter().map(one).collect())),
    ];
    if with_its_limits(&store.job).is_some() {
        let take = on(store, || Action::Edit(Edit::Wanted(WantedEdit::TakeLimits)));
        parts.push(button(say(OfReceiver::TakeLimits), take));
    }
    parts.push(figure_list(store, &SLEEVE));
    element("div", "asks", all(parts))
}

/// What a sleeve adds.
const SLEEVE: [Shown; 5] = [
    Shown::SleevePressure,
    Shown::SleeveStress,
    Shown::ShaftStress,
    Shown::SleeveHolds,
    Shown::WarmerBy,
];
