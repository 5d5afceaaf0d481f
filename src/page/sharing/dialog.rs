//! The dialog of giving a job away: to whom, what is in the link, and the ways to hand it on.

use skimwright::link::in_digits;
use skimwright::offer::handed_back;
use skimwright::plan::Level;
use skimwright::sheet::{Qr, file_name_of, qr};
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

use super::state::{Given, Handed, NoLink, ShareAction, ShareTo};
use crate::page::hooks::clock::now;
use crate::page::hooks::exchange::save_job;
use crate::page::hooks::share::{address_of, copy_link, image_of, share_link};
use crate::page::markup::{all, button, element, hint, paragraph, text};
use crate::page::modal::modal;
use crate::page::state::Action;
use crate::page::store::{Store, on, words};
use crate::page::words::{OfPrint, OfSharing, Text};

/// From this version on a code has so many modules that a phone must be held close: common practice, no source.
const DENSE: u8 = 20;

pub(crate) fn share_panel(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let given = store.given();
    let inside = vec![
        to_whom(store),
        own_plan(store),
        what_is_in(store, given.as_ref().ok()),
        match &given {
            Ok(given) => ways(store, given),
            Err(why) => all(vec![
                paragraph(say(OfSharing::NoLink(*why))),
                match why {
                    NoLink::TooLong => file(store).unwrap_or_default(),
                    NoLink::OfferTooLong | NoLink::RecordFull | NoLink::NotOnesOwn => {
                        Html::default()
                    }
                },
            ]),
        },
        answer_came(store),
    ];
    modal(say(OfSharing::Title).into(), all(inside))
}

fn to_whom(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let sharing = &store.sharing;
    let choice = |to: ShareTo| {
        let onchange = on(store, move || Action::Share(ShareAction::To(to)));
        html! {
            <label key={say(OfSharing::To(to))} class="owner-choice">
                <input type="radio" name="share-to" checked={sharing.to == to} {onchange} />
                <span>
                    <strong>{ say(OfSharing::To(to)) }</strong>
                    <span class="share-hint">{ say(OfSharing::ToHint(to)) }</span>
                </span>
            </label>
        }
    };
    let tick = |name, checked: bool, action: fn(bool) -> ShareAction| {
        let dispatcher = store.dispatcher();
        let onchange = Callback::from(move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            dispatcher.dispatch(Action::Share(action(input.checked())));
        });
        html! {
            <label class="owner-choice">
                <input type="checkbox" {checked} {onchange} />
                <span>{ say(name) }</span>
            </label>
        }
    };
    html! {
        <>
            <fieldset class="owner-choices">
                <legend>{ say(OfSharing::ToWhom) }</legend>
                { for store.share_to().map(choice) }
            </fieldset>
            if sharing.to == ShareTo::Owner {
                <fieldset class="owner-choices">
                    <legend>{ say(OfSharing::ShowsToo) }</legend>
                    { tick(OfSharing::ShowsRates, sharing.shows.rates, ShareAction::Rates) }
                    { tick(OfSharing::ShowsMachine, sharing.shows.machine, ShareAction::Machine) }
                </fieldset>
            }
        </>
    }
}

/// The owner is not told of what only the shop's own plan stops at.
fn own_plan(store: &Store) -> Html {
    let mut found = store.plan.findings.iter();
    let stops = found.any(|it| it.level == Level::Stop);
    if stops && store.sharing.to == ShareTo::Owner {
        paragraph(words(store).say(Text::Sharing(OfSharing::OwnPlanStops)))
    } else {
        Html::default()
    }
}

fn what_is_in(store: &Store, given: Option<&Given>) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let sharing = &store.sharing;
    let line = |line: AttrValue| element("li", "", text(line));
    let record = given.is_none_or(|given| !given.without_record);
    let inside = words.in_link(&store.job, sharing.to, sharing.shows, record);
    let outside = words.not_in_link(sharing.to, sharing.shows, record);
    html! {
        <div class="share-lists">
            <div>
                <h3>{ say(OfSharing::InIt) }</h3>
                <ul class="owner-list">{ for inside.into_iter().map(|it| line(it.into())) }</ul>
            </div>
            <div>
                <h3>{ say(OfSharing::NotInIt) }</h3>
                <ul class="owner-list">{ for outside.into_iter().map(|it| line(it.into())) }</ul>
            </div>
        </div>
    }
}

fn ways(store: &Store, given: &Given) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let sharing = &store.sharing;
    let url = address_of(&given.text);
    let told = {
        let dispatcher = store.dispatcher();
        Callback::from(move |handed| {
            dispatcher.dispatch(Action::Share(ShareAction::Handed(handed)));
        })
    };
    let hand = |way: fn(&str, String, Callback<Handed>)| {
        let (dispatcher, url, told) = (store.dispatcher(), url.clone(), told.clone());
        let title = match sharing.to {
            ShareTo::HandBack => words.say(Text::Print(OfPrint::ShareTitle)),
            _ => words.say(Text::ShareTitle),
        };
        Callback::from(move |_: MouseEvent| {
            way(title, url.clone(), told.clone());
            dispatcher.dispatch(Action::Share(ShareAction::Given(now())));
        })
    };
    let qr_shown = sharing.qr;
    let qr_name = if qr_shown {
        OfSharing::QrHide
    } else {
        OfSharing::Qr
    };
    html! {
        <>
            <p class="field-hint">{ words.link_length(url.len()) }</p>
            if given.without_record {
                { paragraph(say(OfSharing::WithoutRecord)) }
                { file(store).unwrap_or_default() }
            }
            <div class="choices">
                <button type="button" class="button button-decide" onclick={hand(share_link)}>{ say(OfSharing::Share) }</button>
                { button(say(OfSharing::Copy), hand(|_, url, told| copy_link(url, told))) }
                <button
                    type="button"
                    class="button"
                    aria-expanded={if qr_shown { "true" } else { "false" }}
                    onclick={on(store, move || Action::Share(ShareAction::Qr(!qr_shown, now())))}
                >{ say(qr_name) }</button>
            </div>
            <div role="status">
                if let Some(handed) = sharing.handed {
                    { paragraph(say(OfSharing::Handed(handed))) }
                }
            </div>
            if sharing.handed == Some(Handed::Failed) {
                <input
                    class="field-input banner-link"
                    type="text"
                    readonly=true
                    aria-label={say(OfSharing::Link)}
                    value={url}
                />
            }
            if qr_shown {
                { code(store, &given.text) }
            }
        </>
    }
}

/// The same as a file, where its record is too long for a link; `None` for the owner, who is shown no record.
fn file(store: &Store) -> Option<Html> {
    let back = match store.sharing.to {
        ShareTo::Owner => return None,
        ShareTo::HandBack => true,
        ShareTo::Colleague => false,
    };
    let store_of = store.clone();
    let save = Callback::from(move |_: MouseEvent| {
        let job = &store_of.job;
        let name = |what| format!("{}.json", file_name_of(&job.title, what));
        if back {
            let job = handed_back(job);
            save_job(&store_of, &job, name("handed-back"));
        } else {
            save_job(&store_of, job, name("job"));
        }
    });
    let label = words(store).say(Text::Sharing(OfSharing::SaveFile));
    Some(button(label, save))
}

/// The link as a QR code, its text in digits.
fn code(store: &Store, link: &str) -> Html {
    let say = |text| words(store).say(Text::Sharing(text));
    let made = in_digits(link).and_then(|digits| qr(&address_of(&digits)));
    let Some(made) = made else {
        return paragraph(say(OfSharing::QrTooLong));
    };
    html! {
        <>
            <img class="share-qr" alt={say(OfSharing::QrName)} src={image_of(&made.svg(Qr::LEAST_MODULE, ""))} />
            if DENSE < made.version() {
                { hint(say(OfSharing::QrDense)) }
            }
        </>
    }
}

/// Where an answer that came otherwise than as a link to tap is pasted.
fn answer_came(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Sharing(text));
    let oninput = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: InputEvent| {
            let area: HtmlTextAreaElement = event.target_unchecked_into();
            dispatcher.dispatch(Action::Share(ShareAction::Paste(area.value())));
        })
    };
    html! {
        <section class="group">
            <h3>{ say(OfSharing::AnswerTitle) }</h3>
            { hint(say(OfSharing::AnswerHint)) }
            <label class="owner-field">
                { say(OfSharing::AnswerField) }
                <textarea class="field-input owner-words" rows="3" value={store.sharing.pasted.clone()} {oninput} />
            </label>
            { button(say(OfSharing::AnswerTake), on(store, || Action::Share(ShareAction::TakePasted))) }
            <div role="status">
                if let Some(told) = store.sharing.told {
                    { paragraph(say(OfSharing::Told(told))) }
                }
            </div>
        </section>
    }
}
