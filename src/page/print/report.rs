//! The report that goes back with the part: as it came and as it leaves, what is proven, what was done, with what.

use skimwright::job::{Field, Record, What};
use skimwright::measuring::Verdict;
use skimwright::sheet::{Canvas, Stage, drawing};
use skimwright::work::{WorkDone, open_steps, surely_open_steps, work_done};
use yew::prelude::*;

use super::answer::answer_line;
use super::exports::exports;
use super::picture::picture;
use super::report_done::{measured_with, notes, times, what_was_done};
use crate::page::field::{Place, field_control};
use crate::page::hooks::clock::{calendar, now};
use crate::page::hooks::printing::print_page;
use crate::page::lathe::{verdict_class, verdict_shape};
use crate::page::markup::{button, hint, paragraph};
use crate::page::sharing::{ShareAction, ShareTo};
use crate::page::state::Action;
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, OfOwner, OfPrint, Text};

/// The narrowest phone between its margins: elsewhere it is drawn larger.
const CANVAS: Canvas = Canvas {
    width: 328.0,
    text_height: 16.0,
    target: 27.0,
    height: 200.0,
    all: false,
    picked: None,
    pass: None,
};

/// The stage, and the same for whoever opens a link that hands a job back.
pub(crate) fn hand_back_stage(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let done = work_done(&store.job, store.steps());
    let back = store.print.handed_back;
    html! {
        <div class="report">
            <p class="stage-lead">{ words.say(Text::StageLead(crate::page::state::Stage::HandBack)) }</p>
            if back {
                { hint(say(OfPrint::BackSays)) }
            }
            { open_work(store, &done) }
            { before_and_after(store, &done) }
            { tolerances(store) }
            { answered(store) }
            { what_was_done(store, &done) }
            { notes(store, &done) }
            { measured_with(store, &done) }
            { times(store, &done) }
            <p class="report-printed">{ words.printed_on(calendar(now())) }</p>
            <div class="report-acts">
                if !back {
                    { field_control(store, Field::MeasuredBy, Place::List) }
                }
                <div class="row-tools">
                    { button(say(OfPrint::PrintReport), Callback::from(|_: MouseEvent| print_page())) }
                    { button(say(OfPrint::ShareLink), on(store, || Action::Share(ShareAction::Open(ShareTo::HandBack)))) }
                </div>
                { hint(say(OfPrint::ShareSays)) }
                { exports(store) }
            </div>
        </div>
    }
}

/// What keeps this from being the report of finished work.
fn open_work(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let back = store.print.handed_back;
    let open = if back {
        surely_open_steps(store.steps())
    } else {
        open_steps(store.steps())
    };
    let named = open
        .into_iter()
        .map(|step| words.say(Text::Lathe(OfLathe::Step(step))));
    let open: Vec<&str> = named.collect();
    html! {
        <>
            if done.span.is_none() {
                <p class="report-open"><strong>{ say(OfPrint::NoRecord) }</strong></p>
            } else if !open.is_empty() {
                <p class="report-open"><strong>{ words.steps_open(&open, !back) }</strong></p>
            }
        </>
    }
}

/// What the owner of the part answered; nothing where he was not asked.
fn answered(store: &Store) -> Html {
    let Some(line) = answer_line(store, Record::MOST_NOTE_CHARACTERS) else {
        return Html::default();
    };
    html! {
        <section aria-labelledby="report-answer">
            <h2 id="report-answer">{ words(store).say(Text::Print(OfPrint::Answer)) }</h2>
            <p class="report-answer">{ line }</p>
        </section>
    }
}

fn before_and_after(store: &Store, done: &WorkDone) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let side = |stage: Stage, id: &'static str, title: OfPrint, none: OfPrint, read: &[usize]| {
        let received = store.plan.as_received();
        let left = stage == Stage::Wanted;
        let plan = if left { &*store.plan } else { &received };
        let drawn = drawing(&store.job, plan, stage, CANVAS, store.units);
        let lines = read.iter().filter_map(|at| {
            let event = store.job.record.events.get(*at)?;
            let line = words.event(event, &store.job);
            Some(html! { <li>{ line }</li> })
        });
        html! {
            <section aria-labelledby={id}>
                <h2 {id}>{ say(title) }</h2>
                if !drawn.shapes.is_empty() {
                    { picture(words, &drawn, say(title).to_owned()) }
                    if left {
                        { hint(words.say(Text::Owner(OfOwner::Key))) }
                    }
                }
                if read.is_empty() {
                    { paragraph(say(none)) }
                } else {
                    <ul class="report-lines">{ for lines }</ul>
                }
            </section>
        }
    };
    html! {
        <div class="report-sides">
            { side(Stage::Received, "report-received", OfPrint::AsReceived, OfPrint::NotReadBefore, &done.received) }
            { side(Stage::Wanted, "report-left", OfPrint::AsLeft, OfPrint::NotReadAfter, &done.left) }
        </div>
    }
}

fn tolerances(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let verdicts = &store.advice().verdicts;
    let nothing_cut = !(store.job.record.standing()).any(|(_, it)| matches!(it.what, What::Cut(_)));
    html! {
        <section aria-labelledby="report-tolerances">
            <h2 id="report-tolerances">{ say(OfLathe::VerdictTitle) }</h2>
            if verdicts.is_empty() {
                { paragraph(say(OfLathe::NothingAsked)) }
            } else {
                if nothing_cut && verdicts.iter().any(|it| it.measured.is_some()) {
                    { paragraph(words.say(Text::Print(OfPrint::NothingCut))) }
                }
                <ul class="report-verdicts">{ for verdicts.iter().map(|it| tolerance(store, it)) }</ul>
                { hint(words.say(Text::Print(OfPrint::VerdictSays))) }
            }
        </section>
    }
}

fn tolerance(store: &Store, verdict: &Verdict) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    html! {
        <li class="report-verdict">
            <p class={classes!("verdict-is", verdict_class(verdict.is))}>
                { verdict_shape(verdict.is) }
                <strong>{ say(OfLathe::Verdict(verdict.is)) }</strong>
            </p>
            <div>
                <p class="verdict-of">{ words.verdict_of(&verdict.of) }</p>
                if let Some(measured) = words.verdict_measured(verdict) {
                    <p class="report-measured">{ measured }{ " " }<small>{ words.of_readings(verdict.readings) }</small></p>
                }
                if let Some(limits) = words.verdict_limits(verdict) {
                    <p>{ say(OfLathe::Limits) }{ ": " }{ limits }</p>
                }
                if let Some(says) = words.verdict_told(verdict) {
                    <p>{ says }</p>
                }
            </div>
        </li>
    }
}
