//! What of the shop's own the machinist chose to show.

use skimwright::job::{Field, RateField};
use skimwright::offer::Offer;
use skimwright::plan::Plan;
use skimwright::quantity::{Entered, Money};
use yew::prelude::*;

use super::shown::group;
use crate::page::markup::{all, element, pair};
use crate::page::words::{OfOwner, OfShop, Text, Words};

/// The rates that the cost comes from; nothing where they are not shown, or none was entered.
pub(super) fn rates(words: Words, offer: &Offer) -> Html {
    let rates = &offer.job.shop.rates;
    let listed = [
        (RateField::PerHour, &rates.per_hour),
        (RateField::Least, &rates.least),
        (RateField::Consumables, &rates.consumables),
        (RateField::Postage, &rates.postage),
    ];
    let one = |(rate, sum): (RateField, &Option<Entered<Money>>)| {
        let says = words.money_in(sum.as_ref()?.value(), &rates.currency);
        Some(pair(words.field(Field::Rate(rate)), says))
    };
    let pairs: Vec<Html> = listed.into_iter().filter_map(one).collect();
    if !offer.shows.rates || pairs.is_empty() {
        return Html::default();
    }
    let list = element("dl", "pairs", all(pairs));
    group(OfOwner::RatesTitle, words, list)
}

/// Lathe, tool, how the part is held and what it is measured with; nothing where that is not shown.
pub(super) fn shop(words: Words, offer: &Offer, plan: &Plan) -> Html {
    if !offer.shows.machine {
        return Html::default();
    }
    let (shop, setup) = (&offer.job.shop, &offer.job.setup);
    let say = |text| words.say(Text::Owner(text));
    let named = |name: &str, kind: &str| match name.trim() {
        "" => kind.to_owned(),
        name => format!("{name} ({kind})"),
    };
    let rigidity = words.say(Text::Shop(OfShop::Rigidity(shop.machine.rigidity)));
    let support = plan.holding.as_ref().map(|it| it.support).or(setup.support);
    let held = words.say(Text::Shop(OfShop::Support(support)));
    let tool = words.say(Text::Tool(shop.tool));
    let instruments = shop.instruments.iter().map(|it| words.instrument(it));
    let instruments: Vec<String> = instruments.collect();
    let mut pairs = vec![
        pair(say(OfOwner::Lathe), named(&shop.machine.name, rigidity)),
        pair(say(OfOwner::Tool), named(&shop.edge.name, tool)),
        pair(say(OfOwner::Held), held.to_owned()),
    ];
    if !instruments.is_empty() {
        pairs.push(pair(say(OfOwner::Instruments), instruments.join("; ")));
    }
    let list = element("dl", "pairs", all(pairs));
    group(OfOwner::ShopTitle, words, list)
}
