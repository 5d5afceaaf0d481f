//! What is told once, above everything else.

use yew::prelude::*;

use super::hooks::update::apply_update;
use super::markup::button;
use super::state::{Action, Notice};
use super::store::{Store, on, words};
use super::words::{OfShop, Text};

pub(crate) fn banners(store: &Store) -> Html {
    let words = words(store);
    html! {
        <div class="banners" aria-live="polite">
            if store.own.is_some() {
                <div class="banner">
                    <p>{ words.say(Text::Visiting) }</p>
                    { button(words.say(Text::KeepVisitor), on(store, || Action::KeepVisitor)) }
                    { button(words.say(Text::BackToOwn), on(store, || Action::BackToOwn)) }
                </div>
            }
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

fn notice(store: &Store, told: &Notice) -> Html {
    let words = words(store);
    let (text, link) = match told {
        Notice::BadLink(error) => (words.say(Text::BadLink(*error)), None),
        Notice::BadStore => (words.say(Text::BadStore), None),
        Notice::Copied => (words.say(Text::Copied), None),
        Notice::ShareFailed(link) => (words.say(Text::ShareFailed), Some(link.clone())),
        Notice::Replaced => (words.say(Text::Replaced), None),
        Notice::NotKept => (words.say(Text::Shop(OfShop::ShelfRefused)), None),
    };
    html! {
        <div class="banner">
            <p>{ text }</p>
            if let Some(link) = link {
                <input
                    class="field-input banner-link"
                    type="text"
                    readonly=true
                    aria-label={words.say(Text::Share)}
                    value={link}
                />
            }
            { button(words.say(Text::Dismiss), on(store, || Action::Tell(None))) }
        </div>
    }
}
