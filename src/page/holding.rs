//! How the part is held under the cut, and what the indicator says.

use skimwright::holding::{DialPlan, Dialled, GripHeld, Known};
use skimwright::working::Value;
use yew::prelude::*;

use super::figures::figure_list;
use super::markup::{all, element, hint, pair, paragraph, text};
use super::stages::care_at_holding;
use super::state::Shown;
use super::store::{Store, words};
use super::words::{OfCut, OfShop, Text};

/// How the part is held, with what that does; nothing while there is nothing to turn.
pub(crate) fn holding(store: &Store) -> Html {
    let Some(holding) = &store.plan.holding else {
        return Html::default();
    };
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let support = words.say(Text::Shop(OfShop::Support(Some(holding.support))));
    let pairs = vec![
        pair(say(OfCut::Held), support.to_owned()),
        pair(say(OfCut::Gripped), words.gripped(holding)),
        pair(say(OfCut::SticksOut), words.length(holding.overhang)),
    ];
    let mut parts = vec![
        element("h2", "", text(say(OfCut::HoldingTitle))),
        care_at_holding(store),
        element("dl", "pairs", all(pairs)),
        figure_list(store, &[Shown::Slender, Shown::Deflection]),
    ];
    parts.extend(holding.slender.map(|it| paragraph(words.slender(it))));
    parts.extend(words.form(holding).map(paragraph));
    parts.extend(holding.copied.map(|share| hint(words.copied(share))));
    if let Some(held) = &holding.grip {
        parts.push(grip(store, held));
    }
    if let Some(tail) = &holding.tail {
        let thrust = words.force_estimate(tail.thrust);
        parts.extend([
            element("h3", "", text(say(OfCut::CentreTitle))),
            element("dl", "pairs", pair(say(OfCut::Thrust), thrust)),
        ]);
        parts.extend(words.centre_pressure(holding).map(paragraph));
    }
    element("section", "group", all(parts))
}

fn grip(store: &Store, grip: &GripHeld) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let needed = words.value(Value::Force(grip.needed));
    let pairs = vec![
        pair(say(OfCut::JawsHold), words.force_estimate(grip.held)),
        pair(say(OfCut::CutNeeds), needed),
    ];
    all(vec![
        element("h3", "", text(say(OfCut::GripTitle))),
        element("dl", "pairs", all(pairs)),
        paragraph(words.grip_verdict(grip)),
    ])
}

/// How to bring the part to run true; nothing without readings.
pub(crate) fn dialling_in(store: &Store) -> Html {
    let Some(dial) = &store.plan.dial else {
        return Html::default();
    };
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let runout = |plane: &Dialled| words.size(plane.offset.runout());
    let mut pairs = vec![pair(say(OfCut::RunoutNear), runout(&dial.near))];
    pairs.extend(
        dial.far
            .map(|far| pair(say(OfCut::RunoutFar), runout(&far))),
    );
    let mut parts = vec![
        element("h2", "", text(say(OfCut::DialTitle))),
        element("dl", "pairs", all(pairs)),
    ];
    let planes = [Some(dial.near), dial.far];
    let mut planes = planes.iter().flatten();
    if planes.any(|plane| plane.known == Known::AlongOneLine) {
        parts.push(paragraph(say(OfCut::OneLine)));
    }
    if let Some(dial_in) = &dial.dial_in {
        parts.push(paragraph(words.first_move(&dial_in.at_chuck)));
    }
    packing(store, dial, &mut parts);
    parts.extend(words.then_tap(dial).map(paragraph));
    element("section", "group", all(parts))
}

/// Packing for the move at the chuck: by both kinds of jaw where that matters.
fn packing(store: &Store, dial: &DialPlan, parts: &mut Vec<Html>) {
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let Some(packing) = &dial.packing else { return };
    let (line, flat) = (packing.line.thickness, packing.flat.thickness);
    let rows = if packing.differ() {
        vec![(OfCut::FlatJaws, flat), (OfCut::NarrowJaws, line)]
    } else {
        vec![(OfCut::Packing, flat)]
    };
    let rows = rows.into_iter();
    let rows = rows.map(|(name, thickness)| pair(say(name), words.packing(thickness)));
    parts.extend([
        element("dl", "pairs", all(rows.collect())),
        hint(words.thumb(packing)),
    ]);
}
