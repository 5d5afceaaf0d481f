//! The jobs that are kept: the dialog with the list, the trash and what can be said of how safe they are.

use std::rc::Rc;

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::hooks::exchange::{open_file, save_jobs};
use super::jobs::{Fate, JobsAction, Keeping, Told};
use super::jobs_list::{job_rows, trash_rows};
use super::markup::{all, any_button, button, element, hint, paragraph, text};
use super::modal::modal;
use super::state::{Action, Cover, Spot};
use super::store::{Store, on, words};
use super::words::{OfJobs, Text};

/// From so many jobs on they can be searched.
const SEARCHED_FROM: usize = 4;

pub(crate) fn jobs_panel(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let new = any_button(
        "button button-decide",
        text(say(OfJobs::New)),
        None,
        on(store, || Action::Reset),
    );
    let count = store.jobs.standing().count();
    let mut parts = vec![element("p", "choices", new), told(store)];
    if store.jobs.keeping == Keeping::Reading {
        parts.push(hint(say(OfJobs::StillReading)));
    } else if count == 0 {
        parts.push(paragraph(say(OfJobs::None)));
    }
    if SEARCHED_FROM <= count {
        parts.push(search(store));
    }
    parts.push(job_rows(store));
    parts.push(trash_rows(store));
    parts.push(files(store, count));
    parts.extend(safety(store).map(|says| hint(say(says))));
    modal(say(OfJobs::Title).into(), taking_drops(store, all(parts)))
}

/// The whole of the dialog takes a file that is dropped: beside it, the browser would leave the page for the file.
fn taking_drops(store: &Store, inside: Html) -> Html {
    let ondragover = Callback::from(|event: DragEvent| event.prevent_default());
    let store = store.clone();
    let ondrop = Callback::from(move |event: DragEvent| {
        event.prevent_default();
        let files = event.data_transfer().and_then(|dropped| dropped.files());
        for file in files
            .iter()
            .flat_map(|files| (0..files.length()).filter_map(|at| files.get(at)))
        {
            open_file(&store, file);
        }
    });
    html! { <div class="jobs-all" {ondragover} {ondrop}>{ inside }</div> }
}

/// Saving all, and opening a file.
fn files(store: &Store, count: usize) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let save = {
        let store = store.clone();
        Callback::from(move |_: MouseEvent| save_jobs(&store, None))
    };
    let onchange = {
        let store = store.clone();
        Callback::from(move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            if let Some(file) = input.files().and_then(|files| files.get(0)) {
                open_file(&store, file);
            }
            // The same file can be chosen once more.
            input.set_value("");
        })
    };
    html! {
        <div class="jobs-files">
            if 0 < count {
                { button(say(OfJobs::SaveAll), save) }
            }
            <label class="button jobs-file">
                { say(OfJobs::OpenFile) }
                <input type="file" class="for-readers" accept=".json,application/json" {onchange} />
            </label>
            { hint(say(OfJobs::DropHere)) }
        </div>
    }
}

/// How safe the jobs are, as far as the browser says.
fn safety(store: &Store) -> Option<OfJobs> {
    match (store.jobs.keeping, store.jobs.lasting) {
        (Keeping::Reading, _) | (Keeping::All, None) => None,
        (Keeping::All, Some(true)) => Some(OfJobs::Lasting),
        (Keeping::All, Some(false)) => Some(OfJobs::NotLasting),
        (Keeping::One, _) => Some(OfJobs::OneOnly),
        (Keeping::Newer, _) => Some(OfJobs::NewerKeeps),
    }
}

fn search(store: &Store) -> Html {
    let dispatcher = store.dispatcher();
    let oninput = Callback::from(move |event: InputEvent| {
        let input: HtmlInputElement = event.target_unchecked_into();
        dispatcher.dispatch(Action::Jobs(JobsAction::Search(input.value())));
    });
    html! {
        <input
            type="search"
            class="field-input"
            aria-label={words(store).say(Text::Jobs(OfJobs::Search))}
            placeholder={words(store).say(Text::Jobs(OfJobs::Search))}
            value={store.jobs.search.clone()}
            {oninput}
        />
    }
}

/// What was done last. It takes the focus when what had it is gone.
fn told(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let (says, undo) = match &store.jobs.told {
        None => (String::new(), None),
        Some(Told::Trashed(id)) => (say(OfJobs::Trashed).to_owned(), Some(id.clone())),
        Some(Told::Restored) => (say(OfJobs::Restored).to_owned(), None),
        Some(Told::Duplicated) => (say(OfJobs::Duplicated).to_owned(), None),
        Some(Told::Emptied(count)) => (words.emptied(*count), None),
        Some(Told::Saved(count)) => (words.in_file(*count), None),
        Some(Told::FileFailed(trouble)) => (say(OfJobs::FileFailed(*trouble)).to_owned(), None),
        Some(Told::TakenIn(_)) => (say(OfJobs::TakenIn).to_owned(), None),
    };
    let undo = undo.map(|id| {
        let restore = on(store, move || Action::Jobs(JobsAction::Restore(id.clone())));
        button(say(OfJobs::UndoTrash), restore)
    });
    let fates = match &store.jobs.told {
        Some(Told::TakenIn(fates)) => {
            let one =
                |(title, fate): &(Rc<str>, Fate)| element("li", "", text(words.fate(title, fate)));
            element("ul", "jobs-doomed", fates.iter().map(one).collect())
        }
        _ => Html::default(),
    };
    html! {
        <div class="jobs-told" id={Spot::JobsTold.id()} tabindex="-1" role="status">
            if !says.is_empty() {
                <p>{ says }</p>
                { undo }
                { fates }
            }
        </div>
    }
}

/// Asks before the jobs in the trash go for good.
pub(crate) fn empty_trash_panel(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let no = button(
        say(OfJobs::EmptyNo),
        on(store, || Action::Show(Some(Cover::Jobs))),
    );
    let yes = any_button(
        "button button-decide",
        text(say(OfJobs::EmptyTrash)),
        None,
        on(store, || Action::Jobs(JobsAction::EmptyTrash)),
    );
    let titles = store.jobs.trash().map(|it| {
        let title = super::jobs_list::title_of(store, it);
        element("li", "", text(title))
    });
    let inside = vec![
        paragraph(say(OfJobs::EmptyQuestion)),
        element("ul", "jobs-doomed", titles.collect()),
        element("p", "choices", all(vec![no, yes])),
    ];
    modal(say(OfJobs::EmptyTrash).into(), all(inside))
}
