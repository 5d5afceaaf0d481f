//! What the readings prove: whether the shank is parallel, and whether it is in tolerance.

use skimwright::measuring::{Verdict, VerdictIs};
use yew::prelude::*;

use super::next_cut::working;
use crate::page::markup::{all, hint, paragraph};
use crate::page::panel::panel;
use crate::page::state::{Panel, Shown};
use crate::page::store::{Store, words};
use crate::page::words::{OfLathe, Text};

pub(super) fn parallel(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let found = store.advice().taper.as_ref();
    let body = || match found {
        None => hint(say(OfLathe::NotTold)),
        Some(found) => all(words
            .taper_found(found)
            .into_iter()
            .map(paragraph)
            .chain([working(
                store,
                &[
                    (
                        Shown::TaperFound,
                        words.say(Text::FigureName(Shown::TaperFound)),
                    ),
                    (
                        Shown::TailShift,
                        words.say(Text::FigureName(Shown::TailShift)),
                    ),
                ],
            )])
            .collect()),
    };
    let line = found.and_then(|found| words.taper_found(found).into_iter().nth(1));
    panel(
        store,
        Panel::Parallel,
        say(OfLathe::ParallelTitle),
        line,
        body,
    )
}

/// The verdicts while there is still something to cut: closed until they are asked for.
pub(super) fn verdicts(store: &Store) -> Html {
    let title = words(store).say(Text::Lathe(OfLathe::VerdictTitle));
    panel(store, Panel::Verdicts, title, None, || verdict_list(store))
}

/// The same as what the last check is about.
pub(super) fn verdicts_at_check(store: &Store) -> Html {
    let title = words(store).say(Text::Lathe(OfLathe::VerdictTitle));
    html! {
        <section class="verdict-sheet" aria-labelledby="verdict-title">
            <h3 id="verdict-title">{ title }</h3>
            { verdict_list(store) }
        </section>
    }
}

fn verdict_list(store: &Store) -> Html {
    let verdicts = &store.advice().verdicts;
    if verdicts.is_empty() {
        return hint(words(store).say(Text::Lathe(OfLathe::NothingAsked)));
    }
    let rows = (0..u8::MAX).zip(verdicts);
    html! { <ul class="verdicts">{ for rows.map(|(at, it)| verdict(store, at, it)) }</ul> }
}

fn verdict(store: &Store, at: u8, verdict: &Verdict) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let limits = words.verdict_limits(verdict);
    html! {
        <li class="verdict">
            <p class="verdict-of">{ words.verdict_of(&verdict.of) }</p>
            <p class={classes!("verdict-is", verdict_class(verdict.is))}>
                { verdict_shape(verdict.is) }
                <strong>{ say(OfLathe::Verdict(verdict.is)) }</strong>
            </p>
            if let Some(measured) = words.verdict_measured(verdict) {
                <p class="verdict-measured">{ measured }</p>
            }
            if let Some(limits) = limits {
                <p>{ say(OfLathe::Limits) }{ ": " }{ limits }</p>
            }
            if let Some(next) = words.verdict_next(verdict) {
                <p>{ next }</p>
            }
            { working(store, &[(Shown::Measured(at), words.say(Text::FigureName(Shown::Measured(at))))]) }
        </li>
    }
}

pub(crate) const fn verdict_class(is: VerdictIs) -> &'static str {
    match is {
        VerdictIs::In => "verdict-in",
        VerdictIs::Over | VerdictIs::Under => "verdict-out",
        VerdictIs::NotProven | VerdictIs::TooCoarse | VerdictIs::NotMeasured => "verdict-open",
    }
}

/// Told by its outline: a tick in a ring, arrows out of a bar, a ring that is not closed.
pub(crate) fn verdict_shape(is: VerdictIs) -> Html {
    let lines = match is {
        VerdictIs::In => "M2 12a10 10 0 1 0 20 0a10 10 0 1 0 -20 0M7 12l4 4l7 -8",
        VerdictIs::Over => "M3 21h18M12 17V3M6 9l6 -6l6 6",
        VerdictIs::Under => "M3 3h18M12 7v14M6 15l6 6l6 -6",
        VerdictIs::NotProven => "M8 8a4 4 0 1 1 4 5v3M12 20v1",
        VerdictIs::TooCoarse => "M2 8h20v8h-20zM7 8v4M12 8v4M17 8v4",
        VerdictIs::NotMeasured => "M4 12h4M10 12h4M16 12h4",
    };
    html! {
        <svg class="verdict-shape" viewBox="0 0 24 24" width="32" height="32" aria-hidden="true"><path d={lines} /></svg>
    }
}
