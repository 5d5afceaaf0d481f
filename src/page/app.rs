//! The whole page.

use std::rc::Rc;

use skimwright::job::Field;
use skimwright::plan::Level;
use skimwright::rework::CutKind;
use yew::prelude::*;

use super::banner::banners;
use super::figures::five_figures;
use super::findings::{Findings, finding_summary};
use super::header::{header, stage_bar};
use super::hooks::address::{address, use_address, use_links_opened};
use super::hooks::focus::use_spot;
use super::hooks::jobs::{new_tab, use_jobs_kept};
use super::hooks::language::{asked_language, tongue, use_language};
use super::hooks::lasting::use_lasting;
use super::hooks::look::use_look;
use super::hooks::printing::use_printing;
use super::hooks::storage::{
    put_aside, stored_address, stored_job, stored_of, stored_taught, stored_view, use_shelf_kept,
    use_taught_kept, use_view_kept,
};
use super::hooks::update::use_updates;
use super::jobs::read_of;
use super::jobs_panel::{empty_trash_panel, jobs_panel};
use super::lathe::CutStage;
use super::menu::menu_panel;
use super::owner::{BadLinkPage, OwnerPage, Visit, visit};
use super::print::{JobSheet, hand_back_stage};
use super::sharing::{agreed, offered_panel, share_panel};
use super::sheet::DrawingSheet;
use super::shop::ask_panel;
use super::stages::{plan_stage, received_stage, wanted_stage};
use super::state::{Cover, Notice, Stage, State};
use super::store::{Store, words};
use super::words::Text;
use super::working::working_panel;

/// Shows the page in the place that `index.html` has for it.
pub(crate) fn start() {
    let place = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.get_element_by_id("app"));
    if let Some(place) = place {
        // The note that stands there while the page loads.
        place.set_text_content(None);
        yew::Renderer::<Root>::with_root(place).render();
    }
}

/// The state as the page opens, from the browser's storage and the address.
fn opening_state() -> State {
    let stored = stored_job();
    let mut state = State::open(stored.as_deref(), &address(), stored_address().as_deref());
    let (units, look, last_stage, thumb, language) = stored_view();
    (state.units, state.look, state.lathe.thumb) = (units, look, thumb);
    state.tongue = tongue(language.unwrap_or_else(asked_language));
    state.taught = stored_taught();
    if state.stage == Stage::default() {
        state.stage = last_stage;
    }
    if state.notice == Some(Notice::BadStore)
        && let Some(stored) = stored
    {
        put_aside(&stored);
    }
    let small = stored_of().zip(stored_job());
    let small = small.and_then(|(said, text)| read_of(&said, &text));
    state.with_kept(new_tab(), small.as_ref())
}

/// The page of whoever the address is for.
#[component]
fn Root() -> Html {
    let visit = use_memo((), |()| visit(&address()));
    match &*visit {
        Visit::Shop => html! { <App /> },
        Visit::Owner(offer) => html! { <OwnerPage offer={Rc::clone(offer)} /> },
        Visit::BadLink(error) => html! { <BadLinkPage error={*error} /> },
    }
}

#[component]
fn App() -> Html {
    let store = use_reducer(opening_state);
    use_jobs_kept(&store);
    use_lasting(&store);
    use_view_kept(&store);
    use_shelf_kept(&store);
    use_taught_kept(&store);
    use_address(&store);
    use_links_opened(&store);
    use_look(&store);
    use_language(store.tongue.language());
    use_spot(store.panels.spot);
    use_updates(&store);
    use_printing(&store);
    let stage = match store.stage {
        Stage::Received => received_stage(&store),
        Stage::Wanted => wanted_stage(&store),
        Stage::Plan => plan_stage(&store),
        Stage::Cut => Html::default(),
        Stage::HandBack => hand_back_stage(&store),
    };
    let on_plan = store.stage == Stage::Plan;
    html! {
        <ContextProvider<Store> context={store.clone()}>
            { header(&store) }
            { banners(&store) }
            if !store.print.handed_back {
                { stage_bar(&store) }
            }
            if matches!(store.stage, Stage::Plan | Stage::Cut) && !store.print.handed_back {
                { agreed(&store) }
            }
            if store.stage == Stage::Cut {
                <CutStage />
            } else if store.stage == Stage::HandBack {
                { stage }
            } else {
            <div class="columns">
                if on_plan {
                    { five_figures(&store) }
                    if !is_clear(&store) {
                        { finding_summary(&store) }
                    }
                }
                <div class="column-sheet">
                    <p class="stage-lead">{ lead(&store) }</p>
                    <DrawingSheet />
                    if on_plan {
                        <Findings />
                    } else {
                        { finding_summary(&store) }
                    }
                </div>
                <div class="column-fields">{ stage }</div>
            </div>
            }
            if on_plan && store.print.sheet {
                <JobSheet />
            }
            { cover(&store) }
        </ContextProvider<Store>>
    }
}

/// Whether nothing was found that has to be read.
fn is_clear(store: &Store) -> bool {
    let mut findings = store.plan.findings.iter();
    findings.all(|found| found.level == Level::Clear)
}

/// What the stage is about; on Plan the plan itself in plain words, unless something stops it.
fn lead(store: &Store) -> String {
    let words = words(store);
    let stopped = store
        .plan
        .findings
        .iter()
        .any(|found| found.level == Level::Stop);
    let planned = store
        .plan
        .cut_off
        .as_ref()
        .zip(store.job.entry(Field::WantedDiameter));
    match planned {
        Some((cut, wanted)) if store.stage == Stage::Plan && !stopped => {
            let offcut =
                (cut.kind == CutKind::CutAndFace).then(|| words.length(cut.offcut_length.value));
            words.plan_in_short(
                offcut.as_deref(),
                &words.length(cut.shank_finished.value),
                &words.typed(wanted),
            )
        }
        _ => words.say(Text::StageLead(store.stage)).to_owned(),
    }
}

fn cover(store: &Store) -> Html {
    match store.cover {
        None => Html::default(),
        Some(Cover::Working(shown)) => working_panel(store, shown),
        Some(Cover::Menu) => menu_panel(store),
        Some(Cover::Jobs) => jobs_panel(store),
        Some(Cover::Share) => share_panel(store),
        Some(Cover::Offer(mark)) => offered_panel(store, mark),
        Some(Cover::EmptyTrash) => empty_trash_panel(store),
        Some(Cover::Ask(question)) => ask_panel(store, question),
    }
}
