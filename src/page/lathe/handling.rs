//! What stands below the step: what an infeed takes off, what changed, and how this screen is used.

use skimwright::job::{Change, CutMadeKind, What, WorkStep};
use skimwright::work::StepNow;
use yew::prelude::*;

use super::{LatheAction, PadFor, Thumb};
use crate::page::edit::RecordEdit;
use crate::page::hooks::alarm::make_ready;
use crate::page::hooks::awake::Awake;
use crate::page::hooks::clock::{at_once, now};
use crate::page::markup::{all, any_button, hint, option, paragraph, text};
use crate::page::panel::panel;
use crate::page::state::{Action, Panel};
use crate::page::store::{Store, on, use_store, words};
use crate::page::words::{OfLathe, Text};

pub(super) fn takes(store: &Store) -> Html {
    let words = words(store);
    let title = words.say(Text::Lathe(OfLathe::TakesTitle));
    panel(store, Panel::Takes, title, None, || {
        let said = words.takes(&store.advice().takes);
        all(said.into_iter().map(paragraph).collect())
    })
}

/// Cuts that were made otherwise than advised, and what changed since.
pub(super) fn changed(store: &Store, step: &StepNow) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let add = |what: What| {
        at_once(store, move |at| {
            LatheAction::Record(RecordEdit::Add(what.clone(), at))
        })
    };
    let kind = match step.step {
        WorkStep::LastCuts => CutMadeKind::Last,
        _ => CutMadeKind::Rough,
    };
    let other = on(store, move || {
        Action::Lathe(LatheAction::OpenPad(PadFor::Infeed(kind)))
    });
    let unit = store.unit_of_dial();
    let without = |kind| {
        let reads = store.job.shop.machine.dial_reads;
        let made = skimwright::measuring::cut_without_infeed(kind, reads, unit)?;
        let label = words.cut_made(kind);
        Some(any_button(
            "button button-large",
            text(label),
            None,
            add(What::Cut(made)),
        ))
    };
    let changes = [
        Change::NewEdge,
        Change::HeldAgain,
        Change::DialSet,
        Change::OtherFeed,
    ];
    let changes = changes.into_iter().map(|change| {
        let label = text(say(OfLathe::Change(change)));
        any_button(
            "button button-large",
            label,
            None,
            add(What::Change(change)),
        )
    });
    panel(
        store,
        Panel::Changed,
        say(OfLathe::ChangedTitle),
        None,
        || {
            html! {
                <>
                    <div class="kinds">
                        { any_button("button button-large", text(say(OfLathe::OtherInfeed)), None, other) }
                        { without(CutMadeKind::Spring).unwrap_or_default() }
                        { without(CutMadeKind::Polish).unwrap_or_default() }
                    </div>
                    { hint(say(OfLathe::ChangedLead)) }
                    <div class="kinds">{ for changes }</div>
                    <NoteField />
                </>
            }
        },
    )
}

/// A note that is kept with the record.
#[component]
fn NoteField() -> Html {
    let typed = use_state_eq(String::new);
    let Some(store) = use_store() else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Lathe(text));
    let oninput = {
        let typed = typed.clone();
        Callback::from(move |event: InputEvent| {
            let input: web_sys::HtmlInputElement = event.target_unchecked_into();
            typed.set(input.value());
        })
    };
    let keep = {
        let (typed, dispatcher) = (typed.clone(), store.dispatcher());
        Callback::from(move |_: MouseEvent| {
            let note = What::Note((*typed).clone());
            let edit = RecordEdit::Add(note, now());
            dispatcher.dispatch(Action::Lathe(LatheAction::Record(edit)));
            typed.set(String::new());
        })
    };
    let most = skimwright::job::Record::MOST_NOTE_CHARACTERS.to_string();
    html! {
        <div class="field">
            <label for="lathe-note">{ say(OfLathe::Note) }</label>
            <div class="field-line">
                <input id="lathe-note" class="field-input field-words" type="text" maxlength={most} value={(*typed).clone()} {oninput} />
                <button type="button" class="button" disabled={typed.trim().is_empty()} onclick={keep}>{ say(OfLathe::NoteKeep) }</button>
            </div>
        </div>
    }
}

/// Thumb, alarm, and whether the screen stays on.
pub(super) fn handling(store: &Store, awake: Awake) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let thumb = Thumb::ALL.into_iter().map(|thumb| {
        let choose = on(store, move || Action::Lathe(LatheAction::Thumb(thumb)));
        option(
            say(OfLathe::Thumb(thumb)),
            store.lathe.thumb == thumb,
            choose,
        )
    });
    let alarm = [true, false].into_iter().map(|wanted| {
        let dispatcher = store.dispatcher();
        let choose = Callback::from(move |_: MouseEvent| {
            if wanted {
                make_ready();
            }
            dispatcher.dispatch(Action::Lathe(LatheAction::Alarm(wanted)));
        });
        let label = if wanted {
            OfLathe::AlarmOn
        } else {
            OfLathe::AlarmOff
        };
        option(say(label), store.lathe.alarm == wanted, choose)
    });
    let line = say(match awake {
        Awake::Asked => OfLathe::AwakeAsked,
        Awake::Yes => OfLathe::AwakeYes,
        Awake::Refused => OfLathe::AwakeRefused,
        Awake::Unknown => OfLathe::AwakeUnknown,
    });
    panel(
        store,
        Panel::Handling,
        say(OfLathe::HandlingTitle),
        Some(line.to_owned()),
        || {
            html! {
                <>
                    <fieldset class="options"><legend>{ say(OfLathe::ThumbLabel) }</legend>{ for thumb }</fieldset>
                    <fieldset class="options"><legend>{ say(OfLathe::AlarmLabel) }</legend>{ for alarm }</fieldset>
                </>
            }
        },
    )
}
