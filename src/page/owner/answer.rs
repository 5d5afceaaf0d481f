//! The owner's answer: what he chooses, what he writes, and how it gets back.

use skimwright::job::{Job, OwnerSays, Record};
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

use super::state::{OwnerAction, OwnerState};
use crate::page::hooks::clock::{moment, now};
use crate::page::hooks::share::{address_of, copy_link, mail_to, share_link};
use crate::page::markup::{button, hint, paragraph};
use crate::page::sharing::Handed;
use crate::page::words::{OfOwner, Text, Words};

/// Seconds to the milliseconds of the calendar.
const MS: u64 = 1000;

pub(super) fn answer(words: Words, state: &UseReducerHandle<OwnerState>) -> Html {
    let say = |text| words.say(Text::Owner(text));
    let before = state.before.map(|(says, at, sent)| {
        let at = moment(at.to_unix_seconds().saturating_mul(MS));
        words.answered_before(says, at, sent)
    });
    let choice = |says: OwnerSays| {
        let dispatcher = state.dispatcher();
        let onchange =
            Callback::from(move |_: Event| dispatcher.dispatch(OwnerAction::Says(says, now())));
        let checked = state.says == Some(says);
        html! {
            <label class="owner-choice">
                <input type="radio" name="says" {checked} {onchange} />
                <span>{ say(OfOwner::Says(says)) }</span>
            </label>
        }
    };
    html! {
        <section class="group owner-answer" aria-labelledby="owner-answer">
            <h2 id="owner-answer">{ say(OfOwner::AnswerTitle) }</h2>
            { paragraph(say(OfOwner::AnswerLead)) }
            if let Some(before) = before {
                <p class="owner-before">{ before }</p>
            }
            <fieldset class="owner-choices">
                <legend class="for-readers">{ say(OfOwner::AnswerTitle) }</legend>
                { for OwnerSays::ALL.into_iter().map(choice) }
            </fieldset>
            { written(words, state) }
            { paragraph(say(OfOwner::GoesBack)) }
            { ways(words, state) }
        </section>
    }
}

fn written(words: Words, state: &UseReducerHandle<OwnerState>) -> Html {
    let say = |text| words.say(Text::Owner(text));
    let left = Record::MOST_NOTE_CHARACTERS.saturating_sub(state.words.chars().count());
    let on_words = {
        let dispatcher = state.dispatcher();
        Callback::from(move |event: InputEvent| {
            let area: HtmlTextAreaElement = event.target_unchecked_into();
            dispatcher.dispatch(OwnerAction::Words(area.value(), now()));
        })
    };
    let on_name = {
        let dispatcher = state.dispatcher();
        Callback::from(move |event: InputEvent| {
            let input: HtmlInputElement = event.target_unchecked_into();
            dispatcher.dispatch(OwnerAction::By(input.value(), now()));
        })
    };
    html! {
        <>
            <label class="owner-field">
                { say(OfOwner::WordsName(state.says)) }
                <textarea
                    class="field-input owner-words"
                    dir="auto"
                    rows="4"
                    maxlength={Record::MOST_NOTE_CHARACTERS.to_string()}
                    value={state.words.clone()}
                    oninput={on_words}
                    aria-describedby="owner-left"
                />
            </label>
            <p class="field-hint" id="owner-left">{ words.characters_left(left) }</p>
            <label class="owner-field">
                { say(OfOwner::Name) }
                <input
                    class="field-input"
                    type="text"
                    dir="auto"
                    autocomplete="name"
                    maxlength={Job::MOST_NAME_CHARACTERS.to_string()}
                    value={state.by.clone()}
                    oninput={on_name}
                    aria-describedby="owner-name-hint"
                />
            </label>
            <p class="field-hint" id="owner-name-hint">{ say(OfOwner::NameHint) }</p>
        </>
    }
}

/// The ways back, once the answer is whole.
fn ways(words: Words, state: &UseReducerHandle<OwnerState>) -> Html {
    let say = |text| words.say(Text::Owner(text));
    let Some(link) = state.link() else {
        let lacks = if state.lacks_words() {
            OfOwner::WordsFirst
        } else {
            OfOwner::Unsaid
        };
        return html! { <p class="owner-lacks" role="status">{ say(lacks) }</p> };
    };
    let url = address_of(&link);
    let told = {
        let dispatcher = state.dispatcher();
        Callback::from(move |handed| dispatcher.dispatch(OwnerAction::Handed(handed)))
    };
    let send = {
        let (url, told) = (url.clone(), told.clone());
        let title = say(OfOwner::MailSubject);
        Callback::from(move |_: MouseEvent| share_link(title, url.clone(), told.clone()))
    };
    let copy = {
        let url = url.clone();
        Callback::from(move |_: MouseEvent| copy_link(url.clone(), told.clone()))
    };
    let mailed = {
        let dispatcher = state.dispatcher();
        Callback::from(move |_: MouseEvent| dispatcher.dispatch(OwnerAction::Mailed))
    };
    let said = state.handed.map(|handed| match handed {
        Handed::Shared => OfOwner::Sent,
        Handed::Copied => OfOwner::Copied,
        Handed::Failed => OfOwner::Failed,
    });
    html! {
        <>
            <div class="choices owner-ways">
                <button type="button" class="button button-decide" onclick={send}>{ say(OfOwner::Send) }</button>
                { button(say(OfOwner::Copy), copy) }
                <a class="button" href={mail_to(say(OfOwner::MailSubject), &url)} onclick={mailed}>{ say(OfOwner::Mail) }</a>
            </div>
            <div role="status">
                if let Some(said) = said {
                    { hint(say(said)) }
                }
            </div>
            if state.handed == Some(Handed::Failed) {
                <input
                    class="field-input banner-link"
                    type="text"
                    readonly=true
                    aria-label={say(OfOwner::LinkName)}
                    value={url}
                />
            }
        </>
    }
}
