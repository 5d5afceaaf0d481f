//! What the whole rework takes, and what it costs.

use skimwright::costing::{Cost, PlannedTime, ThreePoint};
use skimwright::job::{Field, RateField};
use yew::prelude::*;

use super::figures::figure_list;
use super::markup::{all, bar, button, element, hint, pair, paragraph, text};
use super::panel::panel;
use super::state::{Panel, Shown};
use super::store::{Store, words};
use super::words::{OfTime, Text};
use super::working::go_to;

/// Time first, then cost.
pub(crate) fn spending(store: &Store) -> Html {
    let say = |what| words(store).say(Text::Time(what));
    let mut of_time = vec![element("h2", "", text(say(OfTime::Time)))];
    match &store.plan.time {
        Some(time) => of_time.extend([
            total(store, Shown::Time),
            hint(say(OfTime::TimeMethod)),
            steps(store, time),
        ]),
        None => of_time.push(paragraph(say(OfTime::NoTime))),
    }
    let mut of_cost = vec![element("h2", "", text(say(OfTime::Cost)))];
    let rate = Field::Rate(RateField::PerHour);
    match &store.plan.cost {
        Some(cost) => price(store, cost, &mut of_cost),
        None if store.job.entry(rate).is_none() => of_cost.extend([
            paragraph(say(OfTime::NoRate)),
            button(say(OfTime::EnterRate), go_to(store, rate)),
        ]),
        None => of_cost.push(paragraph(say(OfTime::NoTime))),
    }
    let group = |parts| element("section", "group spending", all(parts));
    all(vec![group(of_time), group(of_cost)])
}

/// A total with its range, large; its working is a tap away.
fn total(store: &Store, shown: Shown) -> Html {
    element("div", "total", figure_list(store, &[shown]))
}

/// One line of the list: what, how often, how long, and its part of the whole.
struct Line {
    name: OfTime,
    count: u32,
    each: ThreePoint,
    share: f64,
}

fn steps(store: &Store, time: &PlannedTime) -> Html {
    let words = words(store);
    let say = |what| words.say(Text::Time(what));
    let done = time.steps.iter().map(|it| Line {
        name: OfTime::Step(it.step),
        count: it.count,
        each: it.each,
        share: it.share,
    });
    let fed = time.feeding.iter().map(|it| Line {
        name: OfTime::Feeding(it.feeding),
        count: 1,
        each: it.together,
        share: it.share,
    });
    let lines: Vec<Line> = done.chain(fed).collect();
    let longest = lines
        .iter()
        .reduce(|most, it| if most.share < it.share { it } else { most });
    let most = longest.map(|it| words.labelled(say(it.name), &words.share(it.share)));
    panel(store, Panel::Steps, say(OfTime::StepsTitle), most, || {
        let rows = lines.iter().map(|line| {
            let each = [line.each.low(), line.each.likely(), line.each.high()];
            let parts = vec![
                element("span", "step-name", text(say(line.name))),
                element("span", "more-value", text(words.share(line.share))),
                bar(line.share),
                element("span", "step-each", text(words.each(line.count, each))),
            ];
            element("li", "step", all(parts))
        });
        let rows = element("ul", "steps", all(rows.collect()));
        let own = words.by_own_times(&time.learned);
        let own = own.map_or_else(Html::default, hint);
        all(vec![rows, own, hint(say(OfTime::StepsNote))])
    })
}

fn price(store: &Store, cost: &Cost, parts: &mut Vec<Html>) {
    let words = words(store);
    let say = |what| words.say(Text::Time(what));
    let currency = &store.job.shop.rates.currency;
    parts.push(total(store, Shown::Cost));
    if cost.minimum_applied {
        parts.push(paragraph(say(OfTime::AtMinimum)));
    }
    let row =
        |(part, money): &(_, _)| pair(say(OfTime::Part(*part)), words.money_in(*money, currency));
    parts.push(element(
        "dl",
        "pairs",
        all(cost.parts.iter().map(row).collect()),
    ));
    parts.push(hint(say(OfTime::CostNote)));
}
