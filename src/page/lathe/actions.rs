//! What is done with a step: large buttons at the edge of the screen that the thumb holds.

use skimwright::cutting::PassKind;
use skimwright::job::{CutMadeKind, What, WorkStep};
use skimwright::measuring::{Next, WhyStop, cut_as_advised, cut_without_infeed};
use skimwright::work::{StepHow, StepNow};
use yew::prelude::*;

use super::step::is_cutting;
use super::{LatheAction, PadFor};
use crate::page::edit::RecordEdit;
use crate::page::hooks::clock::at_once;
use crate::page::state::{Action, Spot};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, Text};

pub(super) fn actions(store: &Store, step: &StepNow) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let of = step.step;
    let over = matches!(step.how, StepHow::Done | StepHow::Skipped);
    let look = |to: Option<WorkStep>| on(store, move || Action::Lathe(LatheAction::Look(to)));
    let before = store.step_before(of);
    let back = html! {
        <button type="button" class="act" disabled={before.is_none()} onclick={look(before)}>{ say(OfLathe::Back) }</button>
    };
    let rest = if over {
        let reopen = at_once(store, move |at| LatheAction::Reopen(of, at));
        html! {
            <>
                <button type="button" class="act" onclick={reopen}>{ say(OfLathe::Reopen) }</button>
                <button type="button" class="act act-main" onclick={look(None)} disabled={store.step_to_do().is_none()}>{ say(OfLathe::Next) }</button>
            </>
        }
    } else {
        let asks = store.lathe.skipping.is_some();
        let skip = on(store, move || Action::Lathe(LatheAction::AskSkip(!asks)));
        let done = at_once(store, move |at| LatheAction::Done(of, at));
        let main = if done_is_next(store, of) {
            "act act-main"
        } else {
            "act"
        };
        html! {
            <>
                <button type="button" class="act" id={Spot::Skip.id()} aria-expanded={if asks { "true" } else { "false" }} onclick={skip}>{ say(OfLathe::Skip) }</button>
                <button type="button" class={main} onclick={done}>{ say(OfLathe::Done) }</button>
            </>
        }
    };
    html! {
        <div class="acts" role="group" aria-label={say(OfLathe::ActionsLabel)}>
            if !over {
                { at_work(store, of) }
            }
            <div class="acts-row">{ back }{ rest }</div>
        </div>
    }
}

/// Whether nothing is left to do in a step but to finish it.
pub(super) fn done_is_next(store: &Store, step: WorkStep) -> bool {
    match &store.advice().next {
        _ if !is_cutting(step) => true,
        Next::Stop(why) => !matches!(why, WhyStop::Missing(_)),
        // The next cut belongs to a later step.
        Next::Cut(next) => match next.kind {
            PassKind::Rough => false,
            PassKind::Last => step == WorkStep::Rough,
            PassKind::Polish => step != WorkStep::Polish,
        },
        Next::Polish { .. } => step != WorkStep::Polish,
        Next::Measure(_) | Next::Answer => false,
    }
}

/// What is measured and cut in a step.
fn at_work(store: &Store, step: WorkStep) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let measures = match step {
        WorkStep::Receive | WorkStep::Check => Some(LatheAction::Measure),
        WorkStep::DialIn => Some(LatheAction::OpenPad(PadFor::Runout)),
        step if is_cutting(step) => Some(LatheAction::Measure),
        _ => None,
    };
    let cuts = is_cutting(step) && !done_is_next(store, step);
    let cut = cuts.then(|| cut_button(store, step)).flatten();
    let Some(measures) = measures else {
        return Html::default();
    };
    let main = if cut.is_none() && is_cutting(step) && !done_is_next(store, step) {
        "act act-main"
    } else {
        "act"
    };
    html! {
        <div class="acts-row">
            <button type="button" class={main} onclick={on(store, move || Action::Lathe(measures.clone()))}>{ say(OfLathe::Measure) }</button>
            { cut.unwrap_or_default() }
        </div>
    }
}

/// Says that the advised cut was made.
fn cut_button(store: &Store, step: WorkStep) -> Option<Html> {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let unit = store.unit_of_dial();
    let (label, made) = match &store.advice().next {
        Next::Cut(next) if next.spring => (OfLathe::MadeSpring, cut_as_advised(next, unit)?),
        Next::Cut(next) => (OfLathe::MadeCut, cut_as_advised(next, unit)?),
        Next::Polish { .. } if step == WorkStep::Polish => {
            let reads = store.job.shop.machine.dial_reads;
            let made = cut_without_infeed(CutMadeKind::Polish, reads, unit)?;
            (OfLathe::MadePolish, made)
        }
        _ => return None,
    };
    let onclick = at_once(store, move |at| {
        LatheAction::Record(RecordEdit::Add(What::Cut(made.clone()), at))
    });
    Some(html! {
        <button type="button" class="act act-main" {onclick}>{ say(label) }</button>
    })
}
