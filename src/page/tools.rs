//! Which kinds of tool turn the metal of the job, and what speaks for grinding.

use skimwright::cutting::ToolVerdict;
use skimwright::working::Value;
use yew::prelude::*;

use super::markup::{all, element, hint, paragraph, text};
use super::store::{Store, words};
use super::words::{OfShop, Text};

/// A list of the tools, each with its verdict and speeds; nothing while it cannot be said.
pub(crate) fn tool_choice(store: &Store) -> Html {
    let words = words(store);
    let say = |what| words.say(Text::Shop(what));
    let Some(choice) = &store.plan.tools else {
        return Html::default();
    };
    let row = |it: &ToolVerdict| {
        let name = element("dt", "", text(words.say(Text::Tool(it.tool))));
        let mut says = words.tool_verdict(it.verdict).to_owned();
        if let Some(speeds) = it.speeds {
            let range = (Value::Speed(speeds.low), Value::Speed(speeds.high));
            let range = words.figure_range(range);
            says = [says, range.unwrap_or_default()].join(" · ");
        }
        let says = element("dd", "", text(says));
        element("div", "ask", all(vec![name, says]))
    };
    let mut parts = vec![
        element("h3", "", text(say(OfShop::ToolChoice))),
        hint(say(OfShop::ToolChoiceLead)),
        element("dl", "ask-list", choice.tools.iter().map(row).collect()),
    ];
    if !choice.grind.is_empty() {
        parts.push(element("h3", "", text(say(OfShop::WhyGrind))));
        let reasons = choice.grind.iter();
        parts.extend(reasons.map(|reason| paragraph(words.grind_reason(*reason))));
    }
    element("div", "asks", all(parts))
}
