//! What is told once, above everything else.

use yew::prelude::*;

use super::hooks::exchange::save_jobs;
use super::hooks::update::apply_update;
use super::jobs::{JobId, JobsAction, Trouble};
use super::markup::button;
use super::state::{Action, Cover, Notice};
use super::store::{Store, on, words};
use super::words::{OfJobs, OfLathe, OfPrint, OfSharing, OfShop, Text};

pub(crate) fn banners(store: &Store) -> Html {
    let words = words(store);
    html! {
        <div class="banners" aria-live="polite">
            if store.print.handed_back {
                <div class="banner">
                    <p>{ words.say(Text::Print(OfPrint::BackBanner)) }</p>
                    { button(words.say(Text::Print(OfPrint::BackKeep)), on(store, || Action::KeepVisitor)) }
                    { button(words.say(Text::Print(OfPrint::BackLeave)), on(store, || Action::BackToOwn)) }
                </div>
            } else if store.own.is_some() {
                <div class="banner">
                    <p>{ words.say(Text::Visiting) }</p>
                    { button(words.say(Text::KeepVisitor), on(store, || Action::KeepVisitor)) }
                    { button(words.say(Text::BackToOwn), on(store, || Action::BackToOwn)) }
                </div>
            }
            { standing(store) }
            if let Some(told) = &store.notice {
                { notice(store, told) }
            }
            if store.update_waits {
                <div class="banner">
                    <p>{ words.say(Text::UpdateWaits) }</p>
                    { button(words.say(Text::UpdateNow), Callback::from(|_: MouseEvent| apply_update())) }
                </div>
            }
        </div>
    }
}

/// Said for as long as it is so: no room, or another tab with the same job.
fn standing(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text));
    let has_trash = store.jobs.trash().next().is_some();
    html! {
        <>
            if store.jobs.trouble == Some(Trouble::Full) {
                <div class="banner">
                    <p>{ say(OfJobs::Full) }</p>
                    if let Some(id) = store.jobs.current.clone() {
                        { button(say(OfJobs::SaveFile), save_one(store, id)) }
                    }
                    if has_trash {
                        { button(say(OfJobs::EmptyTrash), on(store, || Action::Show(Some(Cover::EmptyTrash)))) }
                    }
                </div>
            }
            if store.jobs.elsewhere {
                <div class="banner">
                    <p>{ say(OfJobs::Elsewhere) }</p>
                    { button(words.say(Text::Dismiss), on(store, || Action::Jobs(JobsAction::Elsewhere(false)))) }
                </div>
            }
        </>
    }
}

fn save_one(store: &Store, id: JobId) -> Callback<MouseEvent> {
    let store = store.clone();
    Callback::from(move |_: MouseEvent| save_jobs(&store, Some(&id)))
}

fn notice(store: &Store, told: &Notice) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Jobs(text)).to_owned();
    let text = match told {
        Notice::BadLink(error) => words.say(Text::BadLink(*error)).to_owned(),
        Notice::BadStore => words.say(Text::BadStore).to_owned(),
        Notice::Answer(told) => words.say(Text::Sharing(OfSharing::Told(*told))).to_owned(),
        Notice::Begun => say(OfJobs::Begun),
        Notice::OtherTab => say(OfJobs::OtherTab),
        Notice::Cleared(count) => words.cleared(*count),
        Notice::RecordFull => words.say(Text::Lathe(OfLathe::RecordFull)).to_owned(),
        Notice::NotKept => words.say(Text::Shop(OfShop::ShelfRefused)).to_owned(),
    };
    let goes_back = *told == Notice::Begun && store.jobs.before.is_some();
    html! {
        <div class="banner">
            <p>{ text }</p>
            if goes_back {
                { button(words.say(Text::Jobs(OfJobs::Back)), on(store, || Action::Jobs(JobsAction::Back))) }
            }
            { button(words.say(Text::Dismiss), on(store, || Action::Tell(None))) }
        </div>
    }
}
