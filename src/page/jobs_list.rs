//! The rows of the list of jobs, and those of the trash.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::hooks::clock::moment;
use super::hooks::exchange::save_jobs;
use super::jobs::{Entry, JobsAction};
use super::markup::{all, any_button, element, paragraph, text};
use super::state::{Action, Cover};
use super::store::{Store, on, words};
use super::words::{OfJobs, Text};

/// So many are shown until more are asked for: a phone takes its time over hundreds.
const SHOWN: usize = 40;

/// The name of a job as it is shown.
pub(crate) fn title_of(store: &Store, entry: &Entry) -> AttrValue {
    if entry.title.trim().is_empty() {
        AttrValue::Static(words(store).say(Text::JobUntitled))
    } else {
        AttrValue::from(entry.title.clone())
    }
}

/// Those that the search finds, newest first.
pub(crate) fn job_rows(store: &Store) -> Html {
    let words = words(store);
    let jobs = &store.jobs;
    let found = jobs.matching().count();
    if found == 0 {
        let searched = !jobs.search.trim().is_empty();
        return if searched {
            paragraph(words.say(Text::Jobs(OfJobs::NoneFound)))
        } else {
            Html::default()
        };
    }
    let shown = if jobs.shows_all { found } else { SHOWN };
    let rows = jobs.matching().take(shown).map(|it| row(store, it));
    let mut parts = vec![element("ul", "jobs", rows.collect())];
    if shown < found {
        let more = on(store, || Action::Jobs(JobsAction::ShowAll));
        parts.push(any_button(
            "button",
            text(words.show_more(found - shown)),
            None,
            more,
        ));
    }
    all(parts)
}

fn row(store: &Store, entry: &Entry) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let title = title_of(store, entry);
    let is_open = store.jobs.current.as_ref() == Some(&entry.id);
    let reads = entry.job().is_some();
    let is_picked = store.jobs.picked.as_ref() == Some(&entry.id);
    let open = {
        let id = entry.id.clone();
        on(store, move || Action::Jobs(JobsAction::Open(id.clone())))
    };
    let pick = {
        let id = (!is_picked).then(|| entry.id.clone());
        on(store, move || Action::Jobs(JobsAction::Pick(id.clone())))
    };
    let ways_id = format!("job-{}", entry.id);
    html! {
        <li class="jobs-one" key={&*entry.id}>
            <button
                type="button"
                class="jobs-open"
                aria-current={is_open.then_some("true")}
                disabled={!reads}
                onclick={open}
            >
                <span class="jobs-title">{ title.clone() }</span>
                { " " }
                <span class="jobs-line">{ line(store, entry, is_open) }</span>
            </button>
            <button
                type="button"
                class="button"
                aria-expanded={if is_picked { "true" } else { "false" }}
                aria-controls={is_picked.then(|| ways_id.clone())}
                onclick={pick}
            >{ say(OfJobs::More) }<span class="for-readers">{ words.more_about(&title) }</span></button>
            if is_picked {
                <div class="jobs-ways" id={ways_id}>{ ways(store, entry, reads) }</div>
            }
        </li>
    }
}

/// How far it is, and when it was changed.
fn line(store: &Store, entry: &Entry, is_open: bool) -> String {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    if entry.newer {
        return say(OfJobs::FromNewer).to_owned();
    }
    if entry.job().is_none() {
        return say(OfJobs::NotRead).to_owned();
    }
    let mut line = say(OfJobs::Progress(entry.progress)).to_owned();
    if 0 < entry.changed {
        line.push_str(" · ");
        line.push_str(&words.moment(moment(entry.changed)));
    }
    if is_open {
        line.push_str(" · ");
        line.push_str(say(OfJobs::Open));
    }
    line
}

/// What can be done with a job beside opening it.
fn ways(store: &Store, entry: &Entry, reads: bool) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let act = |action: fn(super::jobs::JobId) -> JobsAction| {
        let id = entry.id.clone();
        on(store, move || Action::Jobs(action(id.clone())))
    };
    let save = {
        let (store, id) = (store.clone(), entry.id.clone());
        Callback::from(move |_: MouseEvent| save_jobs(&store, Some(&id)))
    };
    let rename = {
        let (dispatcher, id) = (store.dispatcher(), entry.id.clone());
        Callback::from(move |event: InputEvent| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let title = input.value();
            dispatcher.dispatch(Action::Jobs(JobsAction::Rename(id.clone(), title)));
        })
    };
    html! {
        <>
            if reads {
                <label class="jobs-name">
                    { say(OfJobs::Name) }
                    <input
                        type="text"
                        class="field-input"
                        maxlength="80"
                        value={AttrValue::from(entry.title.clone())}
                        oninput={rename}
                    />
                </label>
                { any_button("button", text(say(OfJobs::SaveFile)), None, save) }
                { any_button("button", text(say(OfJobs::Duplicate)), None, act(JobsAction::Duplicate)) }
            }
            if !entry.newer {
                { any_button("button", text(say(OfJobs::ToTrash)), None, act(JobsAction::Trash)) }
            }
        </>
    }
}

/// What is in the trash; nothing where it is empty.
pub(crate) fn trash_rows(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let count = store.jobs.trash().count();
    if count == 0 {
        return Html::default();
    }
    let shows = store.jobs.shows_trash;
    let toggle = on(store, move || Action::Jobs(JobsAction::ShowTrash(!shows)));
    let rows = store.jobs.trash().map(|entry| {
        let title = title_of(store, entry);
        let id = entry.id.clone();
        let restore = on(store, move || Action::Jobs(JobsAction::Restore(id.clone())));
        let inside = html! {
            <>{ say(OfJobs::Restore) }<span class="for-readers">{ " " }{ title.clone() }</span></>
        };
        html! {
            <li class="jobs-one" key={&*entry.id}>
                <span class="jobs-title">{ title }</span>
                { any_button("button", inside, None, restore) }
            </li>
        }
    });
    let empty = on(store, || Action::Show(Some(Cover::EmptyTrash)));
    html! {
        <div class="jobs-trash">
            <button
                type="button"
                class="button"
                aria-expanded={if shows { "true" } else { "false" }}
                onclick={toggle}
            >{ format!("{} ({count})", say(OfJobs::Trash)) }</button>
            if shows {
                <ul class="jobs">{ for rows }</ul>
                { any_button("button", text(say(OfJobs::EmptyTrash)), None, empty) }
            }
        </div>
    }
}
