//! What the report says of the work: steps, cuts, notes, what it was measured with, and times.

use skimwright::job::{Event, What};
use skimwright::quantity::Time;
use skimwright::work::{CutsDone, StepDone, StepHow, Used, UsedWith, WorkDone};
use yew::prelude::*;

use crate::page::hooks::clock::calendar;
use crate::page::markup::{hint, pair, paragraph};
use crate::page::store::{Store, words};
use crate::page::words::{OfLathe, OfPrint, Text};

/// The steps with their dates, and the cuts.
pub(super) fn what_was_done(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let begun = done.steps.iter().filter(|it| it.how != StepHow::ToDo);
    let rows: Vec<Html> = begun.map(|it| step(store, it)).collect();
    html! {
        <section aria-labelledby="report-done">
            <h2 id="report-done">{ say(OfPrint::WhatWasDone) }</h2>
            if rows.is_empty() {
                { paragraph(say(OfPrint::NoSteps)) }
            } else {
                <ul class="report-lines report-steps">{ for rows }</ul>
            }
            if done.cuts.is_empty() {
                { paragraph(say(OfPrint::NoCuts)) }
            } else {
                <ul class="report-lines">{ for done.cuts.iter().map(|it| cuts(store, it)) }</ul>
            }
        </section>
    }
}

fn step(store: &Store, step: &StepDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let at = step.at.map(|at| words.date_time(calendar(at)));
    html! {
        <li>
            <strong>{ say(OfLathe::Step(step.step)) }</strong>{ ": " }{ say(OfLathe::How(step.how)) }
            if let Some(at) = at { { ", " }{ at } }
            if !step.why.is_empty() { { ": " }{ &step.why } }
        </li>
    }
}

fn cuts(store: &Store, cuts: &CutsDone) -> Html {
    let words = words(store);
    let (first, last) = (
        words.date_time(calendar(cuts.first)),
        words.date_time(calendar(cuts.last)),
    );
    html! { <li>{ words.cuts_done(cuts, &first, &last) }</li> }
}

pub(super) fn notes(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let event = |at: &usize| store.job.record.events.get(*at);
    let lines = done
        .notes
        .iter()
        .filter_map(event)
        .filter_map(|it| match it {
            Event {
                what: What::Note(says),
                at,
                ..
            } => Some(html! { <li>{ words.date_time(calendar(*at)) }{ ": " }{ says }</li> }),
            _ => None,
        });
    if done.notes.is_empty() {
        return Html::default();
    }
    html! {
        <section aria-labelledby="report-notes">
            <h2 id="report-notes">{ words.say(Text::Print(OfPrint::Notes)) }</h2>
            <ul class="report-lines">{ for lines }</ul>
        </section>
    }
}

/// Who measured, with what, and how warm it was.
pub(super) fn measured_with(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let by = match store.job.record.by.trim() {
        "" => say(OfPrint::ByNobody).to_owned(),
        by => by.to_owned(),
    };
    let room = store.job.setup.room_temperature.as_ref();
    html! {
        <section aria-labelledby="report-with">
            <h2 id="report-with">{ say(OfPrint::MeasuredWith) }</h2>
            <dl class="report-pairs">
                { pair(say(OfPrint::By), by) }
                { for done.used.iter().map(|it| instrument(store, it)) }
                { pair(say(OfPrint::WorkAt), words.work_at(done.temperatures)) }
                { pair(say(OfPrint::RoomAt), words.room_at(room)) }
            </dl>
            { hint(say(OfPrint::UncertaintySays)) }
        </section>
    }
}

fn instrument(store: &Store, used: &Used) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text)).to_owned();
    let listed = |place: u8| store.job.shop.instruments.get(usize::from(place));
    let name = match used.with {
        UsedWith::Listed(place) => listed(place).map(|it| words.instrument(it)),
        UsedWith::Usual => None,
        UsedWith::UsualIndicator => Some(say(OfPrint::UsualIndicator)),
        UsedWith::RoughnessTester => Some(say(OfPrint::RoughnessTester)),
    };
    let name = name.unwrap_or_else(|| say(OfPrint::UsualMicrometer));
    html! { <div><dt>{ name }</dt><dd>{ words.used(used) }</dd></div> }
}

pub(super) fn times(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let Some([first, last]) = done.span else {
        return Html::default();
    };
    let worked = Time::ZERO < done.worked;
    html! {
        <section aria-labelledby="report-times">
            <h2 id="report-times">{ say(OfPrint::Times) }</h2>
            <dl class="report-pairs">
                { pair(say(OfPrint::First), words.date_time(calendar(first))) }
                { pair(say(OfPrint::Last), words.date_time(calendar(last))) }
                if worked {
                    { pair(say(OfPrint::Worked), words.time(done.worked)) }
                }
            </dl>
            if done.broken {
                { hint(say(OfPrint::ClockBroken)) }
            }
        </section>
    }
}
