//! English: what else the part could become, and the most that can be had.

use skimwright::quantity::Length;
use skimwright::receiver::Becomes;
use skimwright::rework::{Because, Offer, Take};
use skimwright::tables::Shank;

use super::about::OfBecoming;
use super::{Words, english_findings, english_receiver, english_strength};
use crate::page::options::Standard;

pub(super) const fn text(text: OfBecoming) -> &'static str {
    match text {
        OfBecoming::Title => "What else it could become",
        OfBecoming::Lead => {
            "Every standard shank that there is metal for, the best first: full length before short, then what keeps \
             the most strength. Each is what the part as received can be turned to. Shares are of the weakest place \
             over the same length. Threaded shanks are left out; a flat that is still to be milled is not counted in \
             the strength."
        }
        OfBecoming::AnyReceiver => "Any",
        OfBecoming::ReceiverFilter => "For which receiver",
        OfBecoming::StandardFilter => "Standards in",
        OfBecoming::Standard(Standard::Any) => "mm and inch",
        OfBecoming::Standard(Standard::Metric) => "mm only",
        OfBecoming::Standard(Standard::Inch) => "inch only",
        OfBecoming::FullOnly => "Only in full length",
        OfBecoming::Bending => "Strength",
        OfBecoming::Torsion => "Strength in torsion",
        OfBecoming::Stiffness => "Stiffness",
        OfBecoming::CutOff => "Comes off the length",
        OfBecoming::TurnedOff => "Turned off",
        OfBecoming::Standards => "Standards",
        OfBecoming::GoesInto => "Goes into: choose one to enter it",
        OfBecoming::NoneAtAll => "No standard shank can be made of this part.",
        OfBecoming::NoneOfThese => "None of these: choose any receiver, any length or both units.",
        OfBecoming::NoPart => {
            "Nothing can be said yet: a figure of the part is missing or out of range."
        }
        OfBecoming::ShowAll => "Show all",
        OfBecoming::MostTitle => "The most that can be had",
        OfBecoming::MostLead => {
            "The largest diameter for each length, all cuts, holes and runout counted; a hole across stays a hole. \
             Drag along the line, or use the arrow keys."
        }
        OfBecoming::MostSlider => "Length, and the largest diameter over it",
        OfBecoming::AxisLength => "length",
        OfBecoming::AxisDiameter => "diameter",
        OfBecoming::WantedPoint => "wanted",
        OfBecoming::Take(Take::Both) => "Take both",
        OfBecoming::Take(Take::Diameter) => "Only the diameter",
        OfBecoming::Take(Take::Length) => "Only the length",
        OfBecoming::Entered => "Entered: it is what is wanted now.",
        OfBecoming::NothingToHave => {
            "Nothing can be had yet: figures are missing, or there is no stock."
        }
    }
}

pub(super) fn how_long(words: Words, one: &Becomes) -> String {
    let length = one.wanted.length.value();
    let standard = one.shank.get().map_or(length, |shank| shank.length);
    if one.full_length {
        "full length".to_owned()
    } else {
        format!(
            "{} long, {} short",
            words.length(length),
            words.length(standard - length)
        )
    }
}

pub(super) fn gripped_by(words: Words, one: &Becomes) -> String {
    let receiver = english_receiver::name(&one.wanted.receiver);
    format!("{receiver}: grips {}", words.length(one.grip))
}

pub(super) fn taken(shank: &Shank) -> String {
    format!(
        "Entered: {}. It stands above and on the plan; undo brings back what was wanted.",
        english_receiver::shank_in_full(shank, None)
    )
}

pub(super) fn how_many(words: Words, shanks: usize) -> String {
    words.count(shanks, "standard shank", "standard shanks")
}

pub(super) fn in_the_way(
    words: Words,
    because: Because,
    at: Length,
    offer: Option<&Offer>,
) -> String {
    let what = english_findings::in_the_way(words, because);
    let place = english_strength::place(words, at);
    let most = offer.map_or_else(String::new, |offer| {
        format!(" The most that can be had: {}.", self::offer(words, offer))
    });
    format!(
        "{what} Least is left {place}.{most} A shorter or thinner shank of your own may still do."
    )
}

pub(super) fn offer(words: Words, offer: &Offer) -> String {
    format!(
        "⌀{} over {}",
        words.units().entry(offer.diameter.entry()),
        words.units().entry(offer.length.entry())
    )
}

/// What cleans up: a diameter below what can be turned, or a length below it, is none to propose.
pub(super) fn enough_metal(words: Words, largest: Length, longest: Length) -> String {
    const LEAST: Length = Length::mm(0.5);
    let keep = (LEAST < longest).then(|| words.length_at_most(longest));
    let diameter = words.size_at_most(largest);
    match (largest < LEAST, keep) {
        (false, Some(keep)) => {
            format!(
                "Take {diameter} diameter or less, or keep the shank to {keep} from the shoulder."
            )
        }
        (false, None) => format!("Take {diameter} diameter or less."),
        (true, Some(keep)) => format!("No diameter cleans up: keep the shank to {keep}."),
        (true, None) => "No diameter cleans up.".to_owned(),
    }
}
