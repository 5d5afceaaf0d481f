//! What the owner is shown: the same for himself, and for the machinist who looks at what was offered.

use std::rc::Rc;

use skimwright::offer::{Offer, goes, is_stopped, risks};
use skimwright::plan::{Plan, plan};
use yew::prelude::*;

use super::pictures::{OwnerStage, Picture};
use super::shop::{rates, shop};
use crate::page::hooks::language::use_reader_tongue;
use crate::page::markup::{all, element, hint, pair, paragraph, text};
use crate::page::words::{OfOwner, Text, Words};

#[derive(PartialEq, Properties)]
pub(crate) struct OfferProps {
    pub(crate) offer: Rc<Offer>,
}

/// What the owner is shown.
#[component]
pub(crate) fn OfferShown(props: &OfferProps) -> Html {
    let plan = use_memo(Rc::clone(&props.offer), |offer| plan(&offer.job));
    let offer = &props.offer;
    let words = Words::new(offer.units(), &offer.job).in_tongue(use_reader_tongue());
    let say = |text| words.say(Text::Owner(text));
    let picture = |stage, title| {
        let label = say(title);
        let (offer, plan) = (Rc::clone(offer), Rc::clone(&plan));
        group(
            title,
            words,
            html! { <Picture {offer} {plan} {stage} {label} /> },
        )
    };
    html! {
        <div class="owner-shown">
            { risk_list(words, &plan) }
            <div class="owner-pictures">
                { picture(OwnerStage::Before, OfOwner::BeforeTitle) }
                { picture(OwnerStage::After, OfOwner::AfterTitle) }
            </div>
            <p class="owner-ruler">{ say(OfOwner::Ruler) }</p>
            { group(OfOwner::FitsTitle, words, paragraph(words.fits_into(&offer.job.wanted.receiver))) }
            { gone(words, offer, &plan) }
            { group(OfOwner::StaysTitle, words, list(words.stays(&offer.job, &plan))) }
            { strength(words, &plan) }
            { cost(words, offer) }
            { rates(words, offer) }
            { shop(words, offer, &plan) }
            <div class="group owner-law">
                <p>{ say(OfOwner::Estimates) }</p>
                <p class="care-step">{ words.say(Text::CareLives) }</p>
            </div>
        </div>
    }
}

pub(super) fn group(title: OfOwner, words: Words, inside: Html) -> Html {
    let title = element("h2", "", text(words.say(Text::Owner(title))));
    element("section", "group", all(vec![title, inside]))
}

fn list(lines: impl IntoIterator<Item = String>) -> Html {
    let lines = lines.into_iter().map(|line| element("li", "", text(line)));
    element("ul", "owner-list", lines.collect())
}

fn gone(words: Words, offer: &Offer, plan: &Plan) -> Html {
    let gone = goes(&offer.job, plan);
    if gone.is_empty() {
        return Html::default();
    }
    let lines = list(gone.iter().map(|it| words.goes(it)));
    let lead = paragraph(words.say(Text::Owner(OfOwner::GoesLead)));
    group(OfOwner::GoesTitle, words, all(vec![lines, lead]))
}

fn strength(words: Words, plan: &Plan) -> Html {
    let lines = words.strength_kept(plan);
    let say = |text| words.say(Text::Owner(text));
    let inside = if lines.is_empty() {
        paragraph(say(OfOwner::NoStrength))
    } else {
        all(vec![list(lines), hint(say(OfOwner::StrengthNote))])
    };
    group(OfOwner::StrengthTitle, words, inside)
}

fn risk_list(words: Words, plan: &Plan) -> Html {
    let say = |text| words.say(Text::Owner(text));
    let risks = risks(plan);
    let inside = if risks.is_empty() {
        paragraph(say(OfOwner::NoRisks))
    } else {
        let one = |risk| {
            let [what, means] = words.risk(risk);
            let what = element("strong", "", text(what));
            element("li", "owner-risk", all(vec![what, text(" "), text(means)]))
        };
        element("ul", "owner-list", risks.into_iter().map(one).collect())
    };
    let mut parts = vec![inside];
    if is_stopped(plan) {
        parts.insert(0, element("p", "owner-stop", text(say(OfOwner::Stopped))));
    }
    group(OfOwner::RisksTitle, words, all(parts))
}

fn cost(words: Words, offer: &Offer) -> Html {
    let say = |text| words.say(Text::Owner(text));
    let time = offer.time.as_ref().map(|time| words.time_offered(time));
    let price = offer.price.as_ref().map(|price| words.price_offered(price));
    let or = |said: Option<String>, none| said.unwrap_or_else(|| say(none).to_owned());
    let pairs = vec![
        pair(say(OfOwner::TimeName), or(time, OfOwner::NoTime)),
        pair(say(OfOwner::PriceName), or(price, OfOwner::NoPrice)),
    ];
    let inside = vec![
        element("dl", "pairs", all(pairs)),
        hint(say(OfOwner::CostNote)),
    ];
    group(OfOwner::CostTitle, words, all(inside))
}
