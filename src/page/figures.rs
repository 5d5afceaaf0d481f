//! The five figures, and the further ones, each of which shows its working on tap.

use skimwright::cutting::StockOff;
use skimwright::job::Field;
use skimwright::plan::Plan;
use skimwright::rework::{Centre, CentreOn, CutKind};
use skimwright::working::{Range, Value};
use yew::prelude::*;

use super::markup::{all, any_button, bar, element, text};
use super::state::{Action, Cover, Shown};
use super::store::{Store, on, words};
use super::words::{Text, Words, split_unit};
use super::working::figure_of;

/// What a card of the five figures says.
struct Card {
    name: Text,
    /// Whose working it opens.
    shown: Option<Shown>,
    /// The large figure; `None` while it cannot be computed.
    value: Option<String>,
    /// What stands below it.
    below: String,
}

fn five_cards(store: &Store) -> [Card; 5] {
    let words = words(store);
    let plan = &store.plan;
    [
        cut_card(words, plan),
        shank_card(words, plan),
        stock_card(words, plan),
        centre_card(words, plan, store.job.entry(Field::Countersink).is_some()),
        time_card(words, plan),
    ]
}

/// The five figures in words: what each is, itself, and what stands below it.
pub(crate) fn five_said(store: &Store) -> [(&'static str, String, String); 5] {
    let words = words(store);
    five_cards(store).map(|card| {
        let missing = || words.say(Text::FigureMissing).to_owned();
        (
            words.say(card.name),
            card.value.unwrap_or_else(missing),
            card.below,
        )
    })
}

/// The five figures, always in sight on Plan.
pub(crate) fn five_figures(store: &Store) -> Html {
    let words = words(store);
    let cards = five_cards(store);
    html! {
        <section class="figures" aria-label={words.say(Text::FiguresLabel)}>
            { for cards.into_iter().map(|card| card_button(store, words, card)) }
        </section>
    }
}

fn card_button(store: &Store, words: Words, card: Card) -> Html {
    let show = card
        .shown
        .filter(|shown| figure_of(&store.plan, *shown).is_some());
    let known = show.is_some();
    let onclick = on(store, move || Action::Show(show.map(Cover::Working)));
    let value = card
        .value
        .unwrap_or_else(|| words.say(Text::FigureMissing).to_owned());
    // Split so that the unit can stand smaller; the gap between stays.
    let (number, unit) = match split_unit(&value) {
        (number, "") => (number, String::new()),
        (number, unit) => (number, format!("\u{a0}{unit}")),
    };
    html! {
        <button type="button" class="figure" {onclick} disabled={!known}>
            <span class="figure-name">{ words.say(card.name) }</span>
            <span class="figure-value">{ number }<span class="figure-unit">{ unit }</span></span>
            <span class="figure-below">{ card.below }</span>
        </button>
    }
}

fn cut_card(words: Words, plan: &Plan) -> Card {
    let say = |text| words.say(text).to_owned();
    let Some(cut) = &plan.cut_off else {
        return Card {
            name: Text::FigureCut,
            shown: None,
            value: None,
            below: say(Text::FromFreeEnd),
        };
    };
    // Without a cut there is nothing to mark.
    let (shown, value, below) = match cut.kind {
        CutKind::CutAndFace => (
            Some(Shown::CutFromFreeEnd),
            words.length(cut.from_free_end.value),
            say(Text::FromFreeEnd),
        ),
        CutKind::FaceOnly => (None, words.length(cut.facing), say(Text::ToFaceOff)),
        CutKind::AsItIs => (None, say(Text::NothingOff), String::new()),
    };
    Card {
        name: Text::CutKind(cut.kind),
        shown,
        value: Some(value),
        below,
    }
}

fn shank_card(words: Words, plan: &Plan) -> Card {
    let grip = plan.grip.as_ref().map(|grip| words.length_bare(grip.value));
    Card {
        name: Text::FigureShank,
        shown: Some(Shown::ShankFinished),
        value: plan
            .cut_off
            .as_ref()
            .map(|cut| words.length(cut.shank_finished.value)),
        below: grip.map_or_else(String::new, |grip| {
            words.labelled(words.say(Text::Gripped), &grip)
        }),
    }
}

fn stock_card(words: Words, plan: &Plan) -> Card {
    let stock = plan.stock_off.as_ref();
    let each = stock.and_then(StockOff::each_pass);
    let shown = match stock {
        Some(StockOff {
            rough_each: Some(_),
            ..
        }) => Shown::RoughEach,
        _ => Shown::StockOff,
    };
    Card {
        name: Text::FigureStock,
        shown: Some(shown),
        value: match (stock, each) {
            (Some(_), Some((infeed, _))) => Some(words.size(infeed)),
            (Some(_), None) => Some(words.say(Text::NothingOff).to_owned()),
            (None, _) => None,
        },
        below: each.map_or_else(String::new, |(_, off)| {
            words.off_diameter(&words.size_bare(off))
        }),
    }
}

fn centre_card(words: Words, plan: &Plan, wanted: bool) -> Card {
    let centre = plan.centre.as_ref();
    let value = match (centre, wanted) {
        (Some(centre), _) => Some(words.length(centre.feed_depth.value)),
        (None, false) => Some(words.say(Text::NoCentreWanted).to_owned()),
        (None, true) => None,
    };
    Card {
        name: Text::FigureCentre,
        shown: Some(Shown::CentreDepth),
        value,
        below: centre.map_or_else(String::new, |centre| made_on(words, centre)),
    }
}

fn made_on(words: Words, centre: &Centre) -> String {
    match &centre.on {
        CentreOn::Solid { drill, .. } => words.labelled(words.say(Text::OnDrill), drill),
        CentreOn::Hole { bore } => words.labelled(words.say(Text::OnHole), &words.length(*bore)),
    }
}

fn time_card(words: Words, plan: &Plan) -> Card {
    let total = plan.time.as_ref().map(|time| &time.total);
    let range = total.and_then(|total| total.range);
    Card {
        name: Text::FigureTime,
        shown: Some(Shown::Time),
        value: total.map(|total| words.time(total.value)),
        below: range.map_or_else(String::new, |Range { low, high }| {
            words.range(&words.time(low), &words.time(high))
        }),
    }
}

/// The figures behind the five: marks, masses, walls, what could be had, where the metal goes.
pub(crate) fn more_figures(store: &Store) -> Html {
    let words = words(store);
    let plan = &store.plan;
    let mut shown = vec![
        Shown::CutFromFreeEnd,
        Shown::CutFromShoulder,
        Shown::ShankAfterCut,
        Shown::ShankFinished,
        Shown::Grip,
        Shown::OffcutLength,
        Shown::StockOff,
        Shown::RoughEach,
        Shown::SpindleSpeed,
        Shown::ConeDepth,
        Shown::CentreDepth,
        Shown::LargestDiameter,
    ];
    shown.extend(plan.walls.iter().map(|wall| Shown::Wall(wall.bore)));
    html! {
        <section class="group">
            <h2>{ words.say(Text::MoreLabel) }</h2>
            { figure_list(store, &shown) }
            { limits(words, plan) }
            { metal(words, plan) }
        </section>
    }
}

/// Figures one below the other, each with its range where it is an estimate; those that are not known are left out.
pub(crate) fn figure_list(store: &Store, shown: &[Shown]) -> Html {
    let rows: Vec<Html> = shown
        .iter()
        .filter_map(|shown| figure_row(store, *shown))
        .collect();
    if rows.is_empty() {
        return Html::default();
    }
    element("ul", "more-list", all(rows))
}

fn figure_row(store: &Store, shown: Shown) -> Option<Html> {
    let words = words(store);
    let figure = figure_of(&store.plan, shown)?;
    let onclick = on(store, move || Action::Show(Some(Cover::Working(shown))));
    let mut parts = vec![
        element("span", "more-name", text(words.figure_name(shown))),
        element("span", "more-value", text(in_currency(store, figure.value))),
    ];
    if let Value::Share(share) = figure.value {
        parts.push(bar(share));
    }
    let range = figure.range.and_then(|range| words.figure_range(range));
    parts.extend(range.map(|range| element("span", "more-range", text(range))));
    let button = any_button("more", all(parts), None, onclick);
    Some(element("li", "", button))
}

/// A value as a figure; a sum of money in the currency of the job.
pub(crate) fn in_currency(store: &Store, value: Value) -> String {
    match value {
        Value::Money(money) => words(store).money_in(money, &store.job.shop.rates.currency),
        other => words(store).figure(other),
    }
}

fn limits(words: Words, plan: &Plan) -> Html {
    let Some(limits) = plan.limits else {
        return Html::default();
    };
    let range = words.range(&words.size(limits.lower), &words.size(limits.upper));
    html! {
        <dl class="pairs">
            <div><dt>{ words.say(Text::LimitsLabel) }</dt><dd>{ range }</dd></div>
            { for plan.stock_off.iter().flat_map(|stock| &stock.sections).map(|section| html! {
                <div>
                    <dt>{ words.section_off(section.section) }</dt>
                    <dd>{ words.range(&words.size(section.at_start), &words.size(section.at_end)) }</dd>
                </div>
            }) }
        </dl>
    }
}

fn metal(words: Words, plan: &Plan) -> Html {
    let Some(metal) = plan.metal else {
        return Html::default();
    };
    let rows = [
        (Text::MetalReceived, metal.received),
        (Text::MetalOffcut, metal.offcut),
        (Text::MetalKerf, metal.kerf),
        (Text::MetalFacing, metal.facing),
        (Text::MetalTurned, metal.turned),
        (Text::MetalCentred, metal.centred),
        (Text::MetalLeft, metal.left),
    ];
    html! {
        <>
            <h3>{ words.say(Text::MetalLabel) }</h3>
            <dl class="pairs">
                { for rows.into_iter().map(|(name, volume)| html! {
                    <div><dt>{ words.say(name) }</dt><dd>{ words.value(Value::Volume(volume)) }</dd></div>
                }) }
            </dl>
        </>
    }
}
