//! Files for other programs: the drawing, the passes, the record, the job.

use std::borrow::Cow;

use skimwright::job::Job;
use skimwright::offer::handed_back;
use skimwright::plan::Plan;
use skimwright::sheet::{self, DecimalMark, file_name_of};
use yew::prelude::*;

use super::PrintAction;
use crate::page::hooks::download::{save_svg, save_text};
use crate::page::hooks::exchange::{save_job, save_jobs};
use crate::page::hooks::printing::decimal_mark;
use crate::page::markup::{button, hint, option};
use crate::page::panel::panel;
use crate::page::state::{Action, Panel, Stage};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfPrint, Text};

const CSV: &str = "text/csv;charset=utf-8";
const DXF: &str = "image/vnd.dxf";

/// The panel of all files.
pub(crate) fn exports(store: &Store) -> Html {
    let title = words(store).say(Text::Print(OfPrint::ExportsTitle));
    panel(store, Panel::Exports, title, None, || body(store))
}

fn body(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Print(text));
    let chosen = mark(store);
    let marks = DecimalMark::ALL.map(|mark| {
        let choose = on(store, move || Action::Print(PrintAction::Mark(mark)));
        option(say(OfPrint::Mark(mark)), mark == chosen, choose)
    });
    let csv = |what: &'static str, text: OfPrint, write: fn(&Store, DecimalMark) -> String| {
        let store = store.clone();
        let save = Callback::from(move |_: MouseEvent| {
            let name = file_name_of(&store.job.title, what);
            save_text(&write(&store, mark(&store)), CSV, &format!("{name}.csv"));
        });
        button(say(text), save)
    };
    html! {
        <>
            <div class="export-files">
                { button(words.say(Text::SaveSvg), saved_svg(store)) }
                { button(say(OfPrint::SaveDxf), saved_dxf(store)) }
                // Speeds, feeds and the figures of the dial are the shop's own, and stay here.
                if store.stage != Stage::HandBack {
                    { csv("passes", OfPrint::SavePasses, |store, mark| {
                        sheet::passes_csv(&store.job, &store.plan, store.units, mark)
                    }) }
                }
                { csv("readings", OfPrint::SaveReadings, |store, mark| sheet::readings_csv(&given(store), mark)) }
                { csv("record", OfPrint::SaveRecord, |store, mark| sheet::events_csv(&given(store), mark)) }
                { button(say(OfPrint::SaveJson), saved_json(store)) }
            </div>
            <fieldset class="options">
                <legend>{ say(OfPrint::MarkLabel) }</legend>
                { for marks }
            </fieldset>
            { hint(say(if store.stage == Stage::HandBack { OfPrint::JsonBackSays } else { OfPrint::JsonSays })) }
        </>
    }
}

fn mark(store: &Store) -> DecimalMark {
    store.print.mark.unwrap_or_else(decimal_mark)
}

/// The job as a file of this stage holds it.
fn given(store: &Store) -> Cow<'_, Job> {
    match store.stage {
        Stage::HandBack => Cow::Owned(handed_back(&store.job)),
        _ => Cow::Borrowed(&store.job),
    }
}

/// As handed back it is the finished part that is drawn, else the plan.
const fn drawn(stage: Stage) -> sheet::Stage {
    match stage {
        Stage::HandBack => sheet::Stage::Wanted,
        _ => sheet::Stage::Plan,
    }
}

fn saved_svg(store: &Store) -> Callback<MouseEvent> {
    saved(store, |job, plan, store| {
        let paper = sheet::paper(job, plan, drawn(store.stage), store.units);
        let unit = words(store).length_unit();
        save_svg(
            &sheet::svg(&paper, &job.title, unit),
            &sheet::file_name(&job.title),
        );
    })
}

fn saved_dxf(store: &Store) -> Callback<MouseEvent> {
    saved(store, |job, plan, store| {
        let text = sheet::dxf(job, plan, drawn(store.stage), store.units);
        save_text(&text, DXF, &format!("{}.dxf", sheet::file_name(&job.title)));
    })
}

/// On Plan the whole job; what is handed back goes without what is the shop's own.
fn saved_json(store: &Store) -> Callback<MouseEvent> {
    saved(store, |job, _, store| {
        if store.stage == Stage::HandBack {
            let name = file_name_of(&job.title, "handed-back");
            save_job(store, &handed_back(job), format!("{name}.json"));
        } else if let Some(id) = store.jobs.current.clone().filter(|_| store.own.is_none()) {
            save_jobs(store, Some(&id));
        } else {
            save_job(
                store,
                job,
                format!("{}.json", file_name_of(&job.title, "job")),
            );
        }
    })
}

fn saved(store: &Store, save: fn(&Job, &Plan, &Store)) -> Callback<MouseEvent> {
    let store = store.clone();
    Callback::from(move |_: MouseEvent| save(&store.job, &store.plan, &store))
}
