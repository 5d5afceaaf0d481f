//! The charts of the plan: how far work and tool give along the cut, and what other numbers of passes would take.

use skimwright::holding::{FormError, HoldingPlan};
use skimwright::sheet::{Compare, count_chart, form_chart};
use yew::prelude::*;

use super::hooks::width::use_room;
use super::markup::{all, element, hint, option, paragraph, text};
use super::panel::panel;
use super::plot::{numbers, plot};
use super::state::Panel;
use super::store::{Store, use_store, words};
use super::words::{OfTime, Text, Words};

/// The narrowest chart that is still of use.
const LEAST_WIDTH: i32 = 240;

/// How many of the places along the work stand in the table: every fourth of those in the chart.
const EVERY: usize = 4;

/// Both, closed until they are asked for.
pub(crate) fn chart_panels(store: &Store) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Time(text));
    let line = form(store).map(|(holding, form)| words.form_line(form, holding.allowed));
    let cuts = store.plan.stock_off.iter().flat_map(|it| &it.passes);
    let count = cuts.filter(|pass| pass.cut.is_some()).count();
    let count = (0 < count).then(|| words.labelled(say(OfTime::CountsPlanned), &count.to_string()));
    let panels = vec![
        panel(store, Panel::Form, say(OfTime::FormTitle), line, || {
            html! { <FormChart /> }
        }),
        panel(
            store,
            Panel::Counts,
            say(OfTime::CountsTitle),
            count,
            || {
                html! { <CountChart /> }
            },
        ),
    ];
    element("section", "group", all(panels))
}

fn form(store: &Store) -> Option<(&HoldingPlan, &FormError)> {
    let holding = store.plan.holding.as_ref()?;
    Some((holding, holding.form.as_ref()?))
}

/// The room of a chart once it is known.
fn room(width: i32) -> Option<f64> {
    (0 < width).then(|| f64::from(width.max(LEAST_WIDTH)))
}

#[component]
fn FormChart() -> Html {
    let store = use_store();
    let frame = use_node_ref();
    let (width, _) = use_room(&frame);
    let Some(store) = store else {
        return Html::default();
    };
    let inside = form_inside(&store, width);
    html! { <div class="charted" ref={frame}>{ inside }</div> }
}

fn form_inside(store: &Store, width: i32) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Time(text));
    let Some((holding, form)) = form(store) else {
        return paragraph(say(OfTime::NoForm));
    };
    let shape = words.form(holding).unwrap_or_default();
    let says = format!("{shape} {}", words.form_ends(form));
    let finished = store.plan.shape.finished.as_ref();
    let drawn = room(width)
        .and_then(|width| form_chart(form, holding.allowed, finished, width, store.units))
        .map(|chart| {
            let axes = [
                words.axis(say(OfTime::FormAlong), chart.across_unit),
                words.axis(say(OfTime::FormLarger), chart.up_unit),
            ];
            plot(
                words,
                &chart,
                "form-chart",
                say(OfTime::FormTitle),
                says.clone(),
                axes,
            )
        });
    let points = form.points.iter().step_by(EVERY);
    let rows = points
        .map(|point| words.form_point(point).to_vec())
        .collect();
    let heads = [OfTime::FormAlong, OfTime::FormLarger].map(say);
    all(vec![
        paragraph(says),
        drawn.unwrap_or_default(),
        element("p", "chart-key", text(say(OfTime::FormBand))),
        hint(say(OfTime::FormLead)),
        numbers(say(OfTime::Numbers), &heads, rows),
    ])
}

#[component]
fn CountChart() -> Html {
    let store = use_store();
    let frame = use_node_ref();
    let (width, _) = use_room(&frame);
    let what = use_state_eq(|| Compare::Time);
    let Some(store) = store else {
        return Html::default();
    };
    let inside = counts_inside(&store, width, &what);
    html! { <div class="charted" ref={frame}>{ inside }</div> }
}

fn counts_inside(store: &Store, width: i32, what: &UseStateHandle<Compare>) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Time(text));
    let counts = &store.compared().counts;
    if counts.is_empty() {
        return paragraph(say(OfTime::NoCounts));
    }
    let currency = &store.job.shop.rates.currency;
    let costed = counts.iter().any(|it| it.cost.is_some());
    let shown = if costed { **what } else { Compare::Time };
    let name = |what| match what {
        Compare::Time => say(OfTime::Time),
        Compare::Cost => say(OfTime::Cost),
    };
    let choices = [Compare::Time, Compare::Cost].map(|one| {
        let what = what.clone();
        option(
            name(one),
            shown == one,
            Callback::from(move |_| what.set(one)),
        )
    });
    let planned = counts.iter().find(|it| it.planned);
    let says = planned.map(|it| {
        words.labelled(
            say(OfTime::CountsPlanned),
            &words.row_takes(it.passes, it.time),
        )
    });
    let drawn = room(width)
        .and_then(|width| count_chart(counts, shown, width))
        .map(|chart| {
            let unit = match shown {
                Compare::Time => chart.up_unit,
                Compare::Cost => currency.as_str(),
            };
            let axes = [
                say(OfTime::CountsPasses).to_owned(),
                words.axis(name(shown), unit),
            ];
            let says = says.unwrap_or_default();
            plot(
                words,
                &chart,
                "count-chart",
                say(OfTime::CountsTitle),
                says,
                axes,
            )
        });
    all(vec![
        hint(say(OfTime::CountsLead)),
        if costed {
            element("div", "filter", all(choices.to_vec()))
        } else {
            Html::default()
        },
        drawn.unwrap_or_default(),
        count_table(store, words, costed),
    ])
}

fn count_table(store: &Store, words: Words, costed: bool) -> Html {
    let say = |text| words.say(Text::Time(text));
    let currency = &store.job.shop.rates.currency;
    let mut heads = vec![OfTime::CountsPasses, OfTime::Time];
    if costed {
        heads.push(OfTime::Cost);
    }
    let row = |point: &skimwright::cutting::CountPoint| {
        let passes = point.passes.to_string();
        let passes = if point.planned {
            words.labelled(&passes, say(OfTime::CountsPlanned))
        } else {
            passes
        };
        let cost = point.cost.map(|cost| words.money_in(cost, currency));
        [passes, words.time(point.time)]
            .into_iter()
            .chain(cost)
            .collect()
    };
    let rows = store.compared().counts.iter().map(row).collect();
    let heads: Vec<_> = heads.into_iter().map(say).collect();
    numbers(say(OfTime::Numbers), &heads, rows)
}
