//! The whole page of the owner.

use std::rc::Rc;

use skimwright::link::LinkError;
use skimwright::offer::Offer;
use yew::prelude::*;

use super::answer::answer;
use super::shown::OfferShown;
use super::state::{OwnerAction, OwnerState};
use crate::page::hooks::address::use_reload_for_links;
use crate::page::hooks::language::{use_language, use_reader_tongue};
use crate::page::hooks::printing::print_page;
use crate::page::hooks::storage::{keep_answer, kept_answer};
use crate::page::markup::{button, paragraph};
use crate::page::words::{OfOwner, Text, Words};

impl Reducible for OwnerState {
    type Action = OwnerAction;

    fn reduce(self: Rc<Self>, action: OwnerAction) -> Rc<Self> {
        Rc::new(Rc::unwrap_or_clone(self).after(action))
    }
}

#[derive(PartialEq, Properties)]
pub(crate) struct OwnerProps {
    pub(crate) offer: Rc<Offer>,
}

/// The page of the owner: what is to be done, and his answer.
#[component]
pub(crate) fn OwnerPage(props: &OwnerProps) -> Html {
    let offer = Rc::clone(&props.offer);
    let state = {
        let offer = Rc::clone(&offer);
        use_reducer(move || {
            let plain = OwnerState::open(&offer, None);
            let kept = plain.to.and_then(kept_answer);
            OwnerState::open(&offer, kept.as_deref())
        })
    };
    use_reload_for_links();
    {
        let kept = state.to.zip(state.kept());
        use_effect_with(kept, |kept| {
            if let Some((mark, text)) = kept {
                keep_answer(*mark, text);
            }
        });
    }
    let tongue = use_reader_tongue();
    use_language(tongue.language());
    let words = Words::new(offer.units(), &offer.job).in_tongue(tongue);
    let say = |text| words.say(Text::Owner(text));
    let title = if offer.job.title.trim().is_empty() {
        AttrValue::Static(words.say(Text::JobUntitled))
    } else {
        AttrValue::from(offer.job.title.clone())
    };
    html! {
        <div class="owner">
            <header class="owner-head">
                <p class="brand">{ words.say(Text::AppName) }</p>
                <h1 class="owner-title" dir="auto">{ title }</h1>
                <p>{ say(OfOwner::Lead) }</p>
                { button(say(OfOwner::Print), Callback::from(|_: MouseEvent| print_page())) }
            </header>
            <OfferShown {offer} />
            { answer(words, &state) }
        </div>
    }
}

#[derive(PartialEq, Properties)]
pub(crate) struct BadLinkProps {
    pub(crate) error: LinkError,
}

/// What an owner sees whose link cannot be opened.
#[component]
pub(crate) fn BadLinkPage(props: &BadLinkProps) -> Html {
    use_reload_for_links();
    let tongue = use_reader_tongue();
    use_language(tongue.language());
    let words = Words::default().in_tongue(tongue);
    let say = |text| words.say(Text::Owner(text));
    let why = match props.error {
        LinkError::Newer { .. } | LinkError::BeyondLimits => OfOwner::Bad,
        _ => OfOwner::BadLead,
    };
    html! {
        <div class="owner">
            <header class="owner-head">
                <p class="brand">{ words.say(Text::AppName) }</p>
                <h1 class="owner-title">{ say(OfOwner::BadTitle) }</h1>
                { paragraph(say(why)) }
            </header>
        </div>
    }
}
