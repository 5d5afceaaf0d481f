//! What to do next, from what was read: measure, cut so much, polish, or stop.

use skimwright::job::DialReads;
use skimwright::measuring::{Advice, CutNext, Next, WhyMeasure, WhyStop, divisions, expected};
use skimwright::quantity::Length;
use skimwright::work::StepNow;
use skimwright::working::Value;
use yew::prelude::*;

use super::figure::large_figure;
use super::step::{Fact, dialled, facts, figure_with, plan_facts, with_meaning};
use crate::page::markup::{all, button, element, paragraph, text};
use crate::page::state::{Action, Cover, Shown};
use crate::page::store::{Store, on, words};
use crate::page::words::{OfLathe, Text, WhyStopText, Words};

pub(super) fn next_cut(store: &Store, step: &StepNow) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Lathe(text));
    let advice = store.advice();
    match &advice.next {
        Next::Cut(next) => cut(store, words, advice, next),
        Next::Polish { off } => {
            let size = size_fact(words, advice);
            all(vec![
                figure_with(&words.size(off.value), say(OfLathe::PolishOff)),
                facts(size.into_iter().chain(plan_facts(words, step)).collect()),
                working(store, &[(Shown::PolishNext, say(OfLathe::PolishOff))]),
            ])
        }
        Next::Measure(why) => measure(store, words, step, *why),
        Next::Stop(why) => stop(store, words, advice, *why),
        // The question itself stands in its place.
        Next::Answer => paragraph(say(OfLathe::Answer)),
    }
}

fn cut(store: &Store, words: Words, advice: &Advice, next: &CutNext) -> Html {
    let say = |text| words.say(Text::Lathe(text));
    let range = next.diameter_after.range.map(|it| (it.low, it.high));
    let speed = next.spindle_speed;
    let feed = next.feed;
    let shown: Vec<Option<Fact>> = vec![
        speed.map(|speed| (say(OfLathe::Speed), words.value(Value::Rotation(speed)))),
        feed.map(|feed| (say(OfLathe::Feed), words.value(Value::Feed(feed)))),
        Some((
            say(OfLathe::DiameterAfter),
            words.with_range(next.diameter_after.value, range),
        )),
        Some((say(OfLathe::Under), words.odds_under(next.odds_under))),
        Some((say(OfLathe::MeasureWhen), words.when_measure(next.measure))),
        Some((say(OfLathe::CutsLeft), next.cuts_left.to_string())),
        size_fact(words, advice),
    ];
    let (figure, means) = if next.spring {
        (
            dialled(store, Length::ZERO, Some(next.graduation)),
            OfLathe::DialNothing,
        )
    } else {
        let means = match next.reads {
            DialReads::Diameter => OfLathe::DialOnDiameter,
            DialReads::Radius => OfLathe::DialOnSlide,
        };
        (dialled(store, next.dialled, Some(next.graduation)), means)
    };
    let graduation = dialled(store, next.graduation, Some(next.graduation));
    let marks = divisions(next.dialled, next.graduation)
        .filter(|_| !next.spring)
        .map(|count| words.divisions(&words.marked(count), &graduation));
    let kind = if next.spring {
        say(OfLathe::SpringTitle)
    } else {
        words.say(Text::PassKind(next.kind))
    };
    all(vec![
        figure_with(&figure, say(means)),
        element(
            "p",
            "dial-marks",
            text(marks.unwrap_or_else(|| kind.to_owned())),
        ),
        facts(shown.into_iter().flatten().collect()),
        working(
            store,
            &[
                (Shown::AfterNext, say(OfLathe::DiameterAfter)),
                (Shown::SizeNow, say(OfLathe::SizeNow)),
            ],
        ),
    ])
}

fn size_fact(words: Words, advice: &Advice) -> Option<Fact> {
    let size = advice.size.as_ref()?;
    let range = size.diameter.range.map(|it| (it.low, it.high));
    let name = words.say(Text::Lathe(OfLathe::SizeNow));
    Some((name, words.with_range(size.diameter.value, range)))
}

fn measure(store: &Store, words: Words, step: &StepNow, why: WhyMeasure) -> Html {
    let say = |text| words.say(Text::Lathe(text));
    let about = expected(&store.job, &store.plan);
    let about = about.map(|it| (say(OfLathe::ExpectedDiameter), words.size(it)));
    let planned = step.figures.iter().map(|figure| words.step_figure(figure));
    let lower = planned.filter(|_| why != WhyMeasure::First);
    all(vec![
        with_meaning(
            large_figure(say(OfLathe::Measure), "", say(OfLathe::Measure).to_owned()),
            say(OfLathe::MeasureWhy(why)),
        ),
        facts(
            about
                .into_iter()
                .chain(size_fact(words, store.advice()))
                .chain(lower)
                .collect(),
        ),
    ])
}

fn stop(store: &Store, words: Words, advice: &Advice, why: WhyStop) -> Html {
    let say = |text| words.say(Text::Lathe(text));
    let because = say(OfLathe::StopWhy(WhyStopText::of(why)));
    let missing = match why {
        WhyStop::Missing(field) => {
            let go = on(store, move || Action::Pick(Some(field)));
            all(vec![
                paragraph(words.missing(field)),
                button(words.say(Text::ToField), go),
            ])
        }
        _ => Html::default(),
    };
    all(vec![
        with_meaning(
            large_figure(say(OfLathe::Stop), "", say(OfLathe::Stop).to_owned()),
            because,
        ),
        missing,
        facts(size_fact(words, advice).into_iter().collect()),
        working(store, &[(Shown::SizeNow, say(OfLathe::SizeNow))]),
    ])
}

/// Opens the working of figures that are there.
pub(super) fn working(store: &Store, figures: &[(Shown, &'static str)]) -> Html {
    let name = words(store).say(Text::Lathe(OfLathe::Showing));
    let known = figures
        .iter()
        .filter(|(shown, _)| store.figure(*shown).is_some());
    let buttons = known.map(|&(shown, of)| {
        let onclick = on(store, move || Action::Show(Some(Cover::Working(shown))));
        html! {
            <button type="button" class="link-button" {onclick}>{ name }{ ": " }{ of }</button>
        }
    });
    element("p", "workings", buttons.collect())
}
