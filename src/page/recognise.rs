//! Which standard taper a section is that was measured by two diameters, and the way to enter it as that.

use skimwright::part::{Candidate, LargeEnd, Recognition, TaperReading, Verdict, recognise};
use yew::prelude::*;

use super::edit::Edit;
use super::markup::{all, any_button, element, hint, paragraph, status, text};
use super::panel::panel;
use super::state::{Action, Panel};
use super::store::{Store, on, words};
use super::words::{OfTaper, Text};

/// What a section of two diameters may be; nothing for other sections.
pub(crate) fn recognised(store: &Store, index: u8) -> Html {
    let Some(reading) = TaperReading::of_section(&store.job, index) else {
        return Html::default();
    };
    let words = words(store);
    let found = recognise(&reading);
    let line = match found.verdict {
        Verdict::Found | Verdict::NotToldApart => {
            let names = found.candidates.iter().map(|it| words.candidate(it));
            Some(names.collect::<Vec<_>>().join(", "))
        }
        _ => None,
    };
    let title = words.say(Text::Taper(OfTaper::Title));
    panel(store, Panel::Recognise(index), title, line, || {
        answer(store, index, &found)
    })
}

fn answer(store: &Store, index: u8, found: &Recognition) -> Html {
    let words = words(store);
    let say = |what| words.say(Text::Taper(what));
    let outward = found.large_end == LargeEnd::TowardFreeEnd;
    let agree = matches!(found.verdict, Verdict::Found | Verdict::NotToldApart);
    let mut parts = vec![status(words.verdict(found).into())];
    parts.extend(words.measured_taper(found).map(paragraph));
    if !found.candidates.is_empty() {
        if outward {
            parts.push(paragraph(say(OfTaper::LargeOutward)));
        }
        let each = found.candidates.iter();
        let each = each.map(|it| candidate(store, index, it, agree && !outward));
        parts.push(element("ul", "tapers", all(each.collect())));
        parts.push(hint(say(OfTaper::ShareNote)));
    }
    all(parts)
}

fn candidate(store: &Store, index: u8, it: &Candidate, can_be_taken: bool) -> Html {
    let words = words(store);
    let received = store.plan.shape.received.as_ref();
    let plane = received
        .filter(|_| can_be_taken)
        .and_then(|received| it.gauge_plane_from_shoulder(received, index));
    let name = words.candidate(it);
    let mut parts = vec![
        element("p", "taper-name", text(name.clone())),
        paragraph(words.agrees(it, plane)),
    ];
    if can_be_taken {
        let edit = Edit::Recognised(index, *it);
        let take = on(store, move || Action::Edit(edit.clone()));
        let label = all(vec![
            text(words.say(Text::Taper(OfTaper::ItIsThis))),
            element("span", "for-readers", text(format!(": {name}"))),
        ]);
        parts.push(any_button("button", label, None, take));
    }
    element("li", "taper", all(parts))
}
