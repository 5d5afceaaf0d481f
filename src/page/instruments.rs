//! The measuring instruments of a job, and what jobs taught of its lathe.

use skimwright::job::{InstrumentField, InstrumentKind, Job, Learned};
use yew::prelude::*;

use super::choice::{Choices, item};
use super::edit::{Edit, ShopEdit, is_read_with};
use super::markup::{all, button, element, hint, paragraph, text};
use super::panel::panel;
use super::panels::fields_in;
use super::shelf::{Lesson, Question, Shelf, ShelfAction};
use super::shop::{keep_one, kept_list, named_button};
use super::stages::fields_of;
use super::state::{Action, Cover, Panel};
use super::store::{Store, on, words};
use super::words::{OfInstruments, OfShop, Text, Words};

fn say(words: Words, text: OfInstruments) -> &'static str {
    words.say(Text::Shop(OfShop::Instruments(text)))
}

/// The instruments of the job, the ways to add one, those that are kept, and the temperature of the room.
pub(super) fn instruments(store: &Store) -> Html {
    let words = words(store);
    let count = u8::try_from(store.job.shop.instruments.len()).unwrap_or(u8::MAX);
    let mut parts = vec![hint(say(words, OfInstruments::Lead))];
    if count == 0 {
        parts.push(paragraph(say(words, OfInstruments::NoneYet)));
    }
    parts.extend((0..count).map(|index| instrument(store, index)));
    if Job::MOST_INSTRUMENTS <= usize::from(count) {
        parts.push(hint(words.say(Text::Full)));
    } else {
        let add = InstrumentKind::ALL.map(|kind| {
            let edit = move || Action::Edit(Edit::Shop(ShopEdit::AddInstrument(kind)));
            button(say(words, OfInstruments::Add(kind)), on(store, edit))
        });
        parts.push(element("div", "kinds", add.into_iter().collect()));
    }
    parts.push(fields_of(store, &fields_in(Panel::Instruments)));
    parts.push(kept_list(store, Shelf::Instruments(0)));
    all(parts)
}

fn instrument(store: &Store, index: u8) -> Html {
    let words = words(store);
    let own = Panel::Instrument(index);
    let title = words.instrument_title(index);
    let line = words.instrument_line(&store.job, index);
    panel(store, own, title.clone(), line, || {
        let remove = if is_read_with(&store.job, index) {
            hint(say(words, OfInstruments::Used))
        } else {
            let edit = move || Action::Edit(Edit::Shop(ShopEdit::RemoveInstrument(index)));
            named_button(words.say(Text::Remove), &title, on(store, edit))
        };
        all(vec![
            fields_of(store, &fields_in(own)),
            keep_one(store, Shelf::Instruments(index)),
            remove,
        ])
    })
}

/// The choice of the kind of an instrument; `None` for its other fields.
pub(super) fn instrument_choice(
    words: Words,
    job: &Job,
    index: u8,
    field: InstrumentField,
) -> Option<Choices> {
    let of = job.shop.instruments.get(usize::from(index))?;
    (field == InstrumentField::Kind).then(|| {
        Choices::plain(InstrumentKind::ALL.map(|kind| {
            let edit = Edit::Shop(ShopEdit::InstrumentKind(index, kind));
            item(say(words, OfInstruments::Kind(kind)), edit, kind == of.kind)
        }))
    })
}

/// What jobs taught of the lathe, each with a way to forget it.
pub(super) fn learned(store: &Store) -> Html {
    let words = words(store);
    let learned = &store.job.shop.machine.learned;
    let mut parts = vec![hint(say(words, OfInstruments::LearnedLead))];
    if *learned == Learned::default() {
        parts.push(paragraph(say(words, OfInstruments::NothingLearned)));
    }
    if let Some(takes) = &learned.takes {
        let title = say(words, OfInstruments::Takes);
        parts.push(element("h3", "", text(title)));
        let said = words.learned_takes(takes);
        let row = row(store, Lesson::Takes, said);
        parts.push(element("ul", "kept-shop", row));
    }
    if !learned.paces.is_empty() {
        let title = say(words, OfInstruments::Paces);
        parts.push(element("h3", "", text(title)));
        let rows = learned.paces.iter().map(|pace| {
            let lesson = Lesson::Pace(pace.step);
            let said = words.labelled(words.lesson(lesson), &words.learned_pace(pace));
            row(store, lesson, said)
        });
        parts.push(element("ul", "kept-shop", rows.collect()));
    }
    parts.push(teach(store));
    all(parts)
}

fn row(store: &Store, lesson: Lesson, said: String) -> Html {
    let words = words(store);
    let ask = on(store, move || {
        Action::Show(Some(Cover::Ask(Question::Forget(lesson))))
    });
    let said = element("span", "kept-title", text(said));
    let forget = say(words, OfInstruments::Forget);
    let forget = named_button(forget, words.lesson(lesson), ask);
    element("li", "kept-one", all(vec![said, forget]))
}

/// The button that keeps what the job taught; nothing while the work is not over, and where it taught nothing new.
pub(crate) fn teach(store: &Store) -> Html {
    if store.lesson().is_none() {
        return Html::default();
    }
    let words = words(store);
    let teach = on(store, || Action::Shelf(ShelfAction::Teach));
    all(vec![
        button(say(words, OfInstruments::Teach), teach),
        hint(say(words, OfInstruments::TeachNote)),
    ])
}
