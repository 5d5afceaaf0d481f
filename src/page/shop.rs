//! What the job is done with and how the part is set up: one panel each for tool, lathe, holding, dialling in, pinned
//! passes and rates.

use skimwright::costing::Step;
use skimwright::job::{
    Aim, DialPlane, DialReads, Field, HoldingField, JawFace, Job, MachineField, Rigidity, Support,
};
use yew::prelude::*;

use super::choice::{Choices, Item, item};
use super::edit::{Edit, ShopEdit, can_pin};
use super::markup::{all, any_button, button, element, hint, paragraph, status, text};
use super::modal::question as question_about;
use super::panel::panel;
use super::panels::{fields_in, place_of, readings_of, times_of};
use super::shelf::{Question, Shelf, ShelfAction, name};
use super::stages::fields_of;
use super::state::{Action, Cover, Panel};
use super::store::{Store, on, words};
use super::tools::tool_choice;
use super::words::{OfInstruments, OfShop, Text, Words};

/// All of them, closed until they are asked for, each with what it holds in one line.
pub(crate) fn shop_panels(store: &Store) -> Html {
    let words = words(store);
    let job = &store.job;
    let say = |text| words.say(Text::Shop(text));
    let tool = words.say(Text::Tool(job.shop.tool));
    let named = |shelf| Some(name(shelf, job).to_owned()).filter(|name| !name.is_empty());
    let tool = named(Shelf::Tools).unwrap_or_else(|| tool.to_owned());
    let lathe = named(Shelf::Lathes)
        .unwrap_or_else(|| say(OfShop::Rigidity(job.shop.machine.rigidity)).to_owned());
    let support = say(OfShop::Support(job.setup.support)).to_owned();
    let pins = job.setup.pins.len();
    let pins = (0 < pins).then(|| pins.to_string());
    let instruments = job.shop.instruments.len();
    let instruments = (0 < instruments).then(|| instruments.to_string());
    let panels = [
        (Panel::Tool, OfShop::Tool, Some(tool)),
        (Panel::Lathe, OfShop::Lathe, Some(lathe)),
        (Panel::Holding, OfShop::Holding, Some(support)),
        (Panel::Dialling, OfShop::Dialling, None),
        (Panel::Pins, OfShop::Pins, pins),
        (Panel::StepTimes, OfShop::StepTimes, None),
        (Panel::Rates, OfShop::Rates, None),
        (
            Panel::Instruments,
            OfShop::Instruments(OfInstruments::Title),
            instruments,
        ),
        (
            Panel::Learned,
            OfShop::Instruments(OfInstruments::LearnedTitle),
            None,
        ),
    ];
    let drawn = panels
        .into_iter()
        .map(|(own, title, line)| panel(store, own, say(title), line, || body(store, own)));
    element("section", "group shop", drawn.collect())
}

fn body(store: &Store, own: Panel) -> Html {
    let shelf = match own {
        Panel::Dialling => return dialling(store),
        Panel::Pins => return pinned(store),
        Panel::StepTimes => return step_times(store),
        Panel::Instruments => return super::instruments::instruments(store),
        Panel::Learned => return super::instruments::learned(store),
        Panel::Tool => Some(Shelf::Tools),
        Panel::Lathe => Some(Shelf::Lathes),
        _ => None,
    };
    let fields = fields_of(store, &fields_in(own));
    let shelf = shelf.map(|shelf| shelf_of(store, shelf));
    let choice = (own == Panel::Tool).then(|| tool_choice(store));
    [fields].into_iter().chain(choice).chain(shelf).collect()
}

/// The choices of one of these fields; `None` for all others.
pub(super) fn shop_choice(words: Words, job: &Job, field: Field) -> Option<Choices> {
    let one = |text, edit, chosen| item(words.say(Text::Shop(text)), Edit::Shop(edit), chosen);
    let items: Vec<Item> = match field {
        Field::Aim => Aim::ALL
            .map(|it| one(OfShop::Aim(it), ShopEdit::Aim(it), it == job.shop.aim))
            .to_vec(),
        Field::Machine(MachineField::Rigidity) => Rigidity::ALL
            .map(|it| {
                let chosen = it == job.shop.machine.rigidity;
                one(OfShop::Rigidity(it), ShopEdit::Rigidity(it), chosen)
            })
            .to_vec(),
        Field::Machine(MachineField::DialReads) => DialReads::ALL
            .map(|it| {
                let chosen = it == job.shop.machine.dial_reads;
                one(OfShop::DialReads(it), ShopEdit::DialReads(it), chosen)
            })
            .to_vec(),
        Field::Instrument(index, field) => {
            return super::instruments::instrument_choice(words, job, index, field);
        }
        Field::Holding(HoldingField::Support) => or_none(&Support::ALL)
            .map(|it| {
                let chosen = it == job.setup.support;
                one(OfShop::Support(it), ShopEdit::Support(it), chosen)
            })
            .collect(),
        Field::Holding(HoldingField::Jaws) => or_none(&JawFace::ALL)
            .map(|it| one(OfShop::Jaws(it), ShopEdit::Jaws(it), it == job.setup.jaws))
            .collect(),
        _ => return None,
    };
    Some(Choices::plain(items))
}

/// None of them first.
fn or_none<T: Copy>(all: &[T]) -> impl Iterator<Item = Option<T>> {
    [None].into_iter().chain(all.iter().copied().map(Some))
}

/// The two planes, each with its place and its four quarters beside one another.
fn dialling(store: &Store) -> Html {
    let words = words(store);
    let plane = |plane: DialPlane| {
        let title = words.say(Text::Shop(OfShop::Plane(plane)));
        let place = fields_of(store, &[place_of(plane)]);
        let quarters = readings_of(plane);
        let quarters = quarters
            .into_iter()
            .map(|field| super::field::field_control(store, field, super::field::Place::List));
        let quarters = element("div", "quarters", quarters.collect());
        let legend = element("legend", "", text(title));
        element("fieldset", "plane", all(vec![legend, place, quarters]))
    };
    all(vec![
        hint(words.say(Text::Shop(OfShop::DiallingLead))),
        plane(DialPlane::Near),
        plane(DialPlane::Far),
    ])
}

/// Three times for each step.
fn step_times(store: &Store) -> Html {
    let words = words(store);
    let lead = hint(words.say(Text::Shop(OfShop::StepTimesLead)));
    let steps = Step::ALL.into_iter().map(|step| {
        let legend = element("legend", "", text(words.step(step)));
        let times = times_of(step)
            .map(|field| super::field::field_control(store, field, super::field::Place::List));
        let times = element("div", "quarters", times.into_iter().collect());
        element("fieldset", "plane step-times", all(vec![legend, times]))
    });
    [lead].into_iter().chain(steps).collect()
}

/// The pinned passes, and the ways to pin one more.
fn pinned(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Shop(text));
    let count = u8::try_from(store.job.setup.pins.len()).unwrap_or(u8::MAX);
    let mut parts = vec![hint(say(OfShop::PinsLead))];
    if count == 0 {
        parts.push(paragraph(say(OfShop::NoPins)));
    }
    parts.extend((0..count).map(|index| {
        let own = Panel::Pin(index);
        panel(
            store,
            own,
            words.pin(index),
            words.pin_line(&store.job, index),
            || {
                let remove = on(store, move || {
                    Action::Edit(Edit::Shop(ShopEdit::RemovePin(index)))
                });
                all(vec![
                    fields_of(store, &fields_in(own)),
                    named_button(words.say(Text::Remove), &words.pin(index), remove),
                ])
            },
        )
    }));
    if Job::MOST_PINS <= usize::from(count) {
        parts.push(hint(words.say(Text::Full)));
        return all(parts);
    }
    let planned = plannable(store);
    if !planned.is_empty() {
        parts.push(panel(
            store,
            Panel::PinPlanned,
            say(OfShop::PinPlanned),
            None,
            || element("div", "kinds", all(planned)),
        ));
    }
    let add = on(store, || Action::Edit(Edit::Shop(ShopEdit::AddPin)));
    parts.push(button(say(OfShop::AddPin), add));
    all(parts)
}

/// A button for each planned pass that can be pinned.
fn plannable(store: &Store) -> Vec<Html> {
    let stock = store.plan.stock_off.as_ref();
    let passes = stock.map_or(&[][..], |stock| &stock.passes);
    let can = |index: &u8| can_pin(&store.job, passes, usize::from(*index), store.units);
    (0..u8::MAX)
        .zip(passes)
        .filter(|(index, _)| can(index))
        .map(|(index, pass)| {
            let number = usize::from(index) + 1;
            let pin = on(store, move || {
                Action::Edit(Edit::Shop(ShopEdit::PinPass(index)))
            });
            button(words(store).planned(number, pass.diameter_after), pin)
        })
        .collect()
}

/// The way to keep what the job has, and all that is kept.
fn shelf_of(store: &Store, shelf: Shelf) -> Html {
    all(vec![keep_one(store, shelf), kept_list(store, shelf)])
}

/// The way to keep what the job has.
pub(super) fn keep_one(store: &Store, shelf: Shelf) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Shop(text));
    let (job, shelves) = (&store.job, &store.shelves);
    let own = name(shelf, job);
    let mut parts = Vec::new();
    if shelves.unread {
        parts.push(paragraph(say(OfShop::ShelfUnread)));
    }
    if own.trim().is_empty() {
        parts.push(hint(say(OfShop::KeepNeedsName(shelf))));
    } else if shelves.holds(shelf, job) {
        parts.push(status(say(OfShop::Kept).into()));
    } else if shelves.has_room(shelf, job) {
        let keep = on(store, move || Action::Shelf(ShelfAction::Keep(shelf)));
        parts.push(button(say(OfShop::Keep(shelf)), keep));
    } else {
        parts.push(hint(say(OfShop::ShelfFull)));
    }
    element("div", "shelf", all(parts))
}

/// All that is kept of a kind.
pub(super) fn kept_list(store: &Store, shelf: Shelf) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Shop(text));
    let shelves = &store.shelves;
    let mut parts = Vec::new();
    let names = shelves.names(shelf);
    if !names.is_empty() {
        parts.push(element("h3", "", text(say(OfShop::Mine(shelf)))));
        let rows = (0_u8..).zip(names);
        let rows = rows.map(|(index, name)| kept_row(store, shelf, index, name));
        parts.push(element("ul", "kept-shop", rows.collect()));
    }
    element("div", "shelf", all(parts))
}

fn kept_row(store: &Store, shelf: Shelf, index: u8, name: &str) -> Html {
    let words = words(store);
    let Some(edit) = store.shelves.take(shelf, index) else {
        return Html::default();
    };
    let take = on(store, move || Action::Edit(edit.clone()));
    let ask = on(store, move || {
        Action::Show(Some(Cover::Ask(Question::Remove(shelf, index))))
    });
    let title = element("span", "kept-title", text(name.to_owned()));
    let take = named_button(words.say(Text::Shop(OfShop::TakeIn)), name, take);
    let remove = named_button(words.say(Text::Remove), name, ask);
    element("li", "kept-one", all(vec![title, take, remove]))
}

/// A button that says to readers what it is about.
pub(super) fn named_button(
    label: &'static str,
    about: &str,
    onclick: Callback<MouseEvent>,
) -> Html {
    let about = element("span", "for-readers", text(format!(" {about}")));
    any_button("button", all(vec![text(label), about]), None, onclick)
}

/// Asks before something that is kept goes.
pub(crate) fn ask_panel(store: &Store, question: Question) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Shop(text));
    let (name, yes) = match question {
        Question::Replace(shelf) => (name(shelf, &store.job), say(OfShop::Replace)),
        Question::Remove(shelf, index) => {
            let names = store.shelves.names(shelf);
            let name = names.get(usize::from(index)).copied();
            (name.unwrap_or_default(), words.say(Text::Remove))
        }
        Question::Forget(lesson) => (
            words.lesson(lesson),
            say(OfShop::Instruments(OfInstruments::Forget)),
        ),
    };
    question_about(
        store,
        say(OfShop::AskTitle(question)),
        words.question(question, name),
        (say(OfShop::AskNo), yes),
        Action::Shelf(ShelfAction::Yes(question)),
    )
}
