//! The job sheet: one page to stand at the machine. It is in the document only to be printed.

use skimwright::quantity::Units;
use skimwright::sheet::{Canvas, Stage, drawing};
use yew::prelude::*;

use super::PrintAction;
use super::answer::answer_line;
use super::code::code;
use super::job_passes::{further_passes, passes};
use super::job_steps::{cautions, steps};
use super::picture::picture;
use crate::page::figures::five_said;
use crate::page::hooks::clock::{calendar, now};
use crate::page::hooks::printing::print_page;
use crate::page::markup::{button, hint};
use crate::page::state::Action;
use crate::page::store::{Store, on, use_store, words};
use crate::page::words::{OfPrint, Text};

/// What is drawn on: a page 190 mm wide, whose text is then 3.8 mm high.
const CANVAS: Canvas = Canvas {
    width: 700.0,
    text_height: 15.0,
    target: 25.0,
    height: 150.0,
    all: false,
    picked: None,
    pass: None,
};

/// Of the owner's words so many characters are printed: more would take the room of the work.
const MOST_WORDS: usize = 120;

/// The button that prints the sheet.
pub(crate) fn print_tools(store: &Store) -> Html {
    let say = |text| words(store).say(Text::Print(text));
    html! {
        <section class="group print-tools" aria-labelledby="print-title">
            <h2 id="print-title">{ say(OfPrint::SheetTitle) }</h2>
            { button(say(OfPrint::PrintSheet), on(store, || Action::Print(PrintAction::Sheet))) }
            { hint(say(OfPrint::SheetSays)) }
        </section>
    }
}

#[component]
pub(crate) fn JobSheet() -> Html {
    let store = use_store();
    let asked = store.as_ref().map_or(0, |store| store.print.asked);
    use_effect_with(asked, |asked| {
        if 0 < *asked {
            print_page();
        }
    });
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Print(text));
    let title = match store.job.title.trim() {
        "" => words.say(Text::JobUntitled).to_owned(),
        title => title.to_owned(),
    };
    let mut drawn = drawing(&store.job, &store.plan, Stage::Plan, CANVAS, store.units);
    // What they point out was decided on Plan.
    drawn.marks.clear();
    html! {
        <article class="job-sheet" aria-label={say(OfPrint::SheetTitle)}>
            <div class="job-top">
                <div class="job-about">
                    <p class="job-title-line">{ &title }</p>
                    <p>{ words.date(calendar(now())) }{ " · " }{ words.say(Text::Material(store.job.part.material)) }{ " · " }
                        { say(unit_says(store.units)) }</p>
                    if let Some(line) = answer_line(&store, MOST_WORDS) {
                        <p class="job-answer">{ words.say(Text::Print(OfPrint::Answer)) }{ ": " }{ line }</p>
                    }
                    <dl class="job-figures">{ for five_said(&store).map(figure) }</dl>
                </div>
                { code(&store) }
            </div>
            { picture(words, &drawn, words.say(Text::DrawingLabel).to_owned()) }
            <div class="job-columns">
                { steps(&store) }
                { passes(&store) }
            </div>
            { cautions(&store) }
            { further_passes(&store, &title) }
        </article>
    }
}

fn figure((name, value, below): (&'static str, String, String)) -> Html {
    html! {
        <div><dt>{ name }</dt><dd><strong>{ value }</strong>
            if !below.is_empty() { <span>{ below }</span> }
        </dd></div>
    }
}

/// What figures without a unit are in.
const fn unit_says(units: Units) -> OfPrint {
    if units.is_inch() {
        OfPrint::InInches
    } else {
        OfPrint::InMillimetres
    }
}
