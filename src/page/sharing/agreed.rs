//! How the job stands with its owner, on Plan and Cut, and what he was shown.

use std::rc::Rc;

use skimwright::job::{OfferMark, What};
use skimwright::offer::{Agreement, Fit, agreement};
use yew::prelude::*;

use super::state::{ShareAction, ShareTo};
use crate::page::hooks::clock::calendar;
use crate::page::markup::{all, button, element, hint, text};
use crate::page::modal::modal;
use crate::page::owner::OfferShown;
use crate::page::state::{Action, Cover};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfSharing, Text};

/// One line on how the job stands with its owner; nothing where he was shown nothing.
pub(crate) fn agreed(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let agreement = agreement(&store.job, &store.plan);
    let Some(line) = words.stands_with_owner(&agreement, calendar) else {
        return Html::default();
    };
    let class = if agreement.holds() {
        "agreed agreed-holds"
    } else if asks_again(&agreement) {
        "agreed agreed-warns"
    } else {
        "agreed"
    };
    let mark = match (&agreement.answered, &agreement.offered) {
        (Some((_, answered)), _) => Some(answered.to),
        (None, Some((_, offered))) => Some(offered.mark),
        (None, None) => None,
    };
    let shown = mark.filter(|mark| store.offer_made(*mark).is_some());
    let said = agreement.answered.map(|(_, answered)| &answered.words);
    let said = said.filter(|said| !said.is_empty());
    html! {
        <section {class} aria-label={say(OfSharing::StandsLabel)}>
            <p class="agreed-line">{ line }</p>
            if let Some(said) = said {
                <blockquote class="agreed-words" dir="auto" aria-label={say(OfSharing::HisWords)}>{ said.clone() }</blockquote>
            }
            <div class="choices">
                if let Some(mark) = shown {
                    { button(say(OfSharing::Shown), on(store, move || Action::Show(Some(Cover::Offer(mark))))) }
                }
                if asks_again(&agreement) && store.may_offer() {
                    { button(say(OfSharing::OfferAgain), on(store, || Action::Share(ShareAction::Open(ShareTo::Owner)))) }
                }
            </div>
        </section>
    }
}

/// Whether the job is not what the owner was shown last, or he wants it otherwise.
fn asks_again(agreement: &Agreement<'_>) -> bool {
    let changed = !agreement.unchanged || agreement.fit == Some(Fit::Changed);
    let wants = agreement
        .answered
        .is_some_and(|(_, answered)| answered.says == skimwright::job::OwnerSays::AgreeWithChange);
    changed || wants
}

/// An offer as its owner saw it.
pub(crate) fn offered_panel(store: &Store, mark: OfferMark) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let Some(offer) = store.offer_made(mark) else {
        return Html::default();
    };
    let title = element("p", "owner-title", text(offer.job.title.clone()));
    let offer = Rc::new(offer);
    let is_answer = |what: &What| matches!(what, What::Answered(answered) if answered.to == mark);
    let answered = store
        .job
        .record
        .standing()
        .any(|(_, event)| is_answer(&event.what));
    let lead = if answered {
        OfSharing::ShownLead
    } else {
        OfSharing::ShownUnanswered
    };
    let inside = vec![hint(say(lead)), title, html! { <OfferShown {offer} /> }];
    modal(say(OfSharing::ShownTitle).into(), all(inside))
}
