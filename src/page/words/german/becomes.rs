//! German: what else the part could become, and the most that can be had.

use skimwright::quantity::Length;
use skimwright::receiver::Becomes;
use skimwright::rework::{Because, Offer, Take};
use skimwright::tables::Shank;

use super::{findings, receiver, strength};
use crate::page::options::Standard;
use crate::page::words::{OfBecoming, Words};

pub(super) const fn text(text: OfBecoming) -> &'static str {
    match text {
        OfBecoming::Title => "Was sonst daraus werden kann",
        OfBecoming::Lead => {
            "Jeder Normschaft, für den Metall da ist, die besten zuerst: volle Länge vor kurz, dann, was am meisten \
             Festigkeit behält. Jeder lässt sich aus dem Teil, wie es ist, drehen. Anteile gelten für die schwächste \
             Stelle auf gleicher Länge. Schäfte mit Gewinde fehlen; eine Spannfläche, die noch zu fräsen ist, zählt bei der \
             Festigkeit nicht."
        }
        OfBecoming::AnyReceiver => "Alle",
        OfBecoming::ReceiverFilter => "Für welche Aufnahme",
        OfBecoming::StandardFilter => "Normen in",
        OfBecoming::Standard(Standard::Any) => "mm und Zoll",
        OfBecoming::Standard(Standard::Metric) => "nur mm",
        OfBecoming::Standard(Standard::Inch) => "nur Zoll",
        OfBecoming::FullOnly => "Nur in voller Länge",
        OfBecoming::Bending => "Festigkeit",
        OfBecoming::Torsion => "Festigkeit bei Torsion",
        OfBecoming::Stiffness => "Steifigkeit",
        OfBecoming::CutOff => "Von der Länge ab",
        OfBecoming::TurnedOff => "Abgedreht",
        OfBecoming::Standards => "Normen",
        OfBecoming::GoesInto => "Passt in: zum Eintragen eine wählen",
        OfBecoming::NoneAtAll => "Aus diesem Teil lässt sich kein Normschaft machen.",
        OfBecoming::NoneOfThese => {
            "Keiner davon: jede Aufnahme, jede Länge oder beide Einheiten wählen."
        }
        OfBecoming::NoPart => "Noch nichts zu sagen: Ein Maß des Teils fehlt oder ist unmöglich.",
        OfBecoming::ShowAll => "Alle zeigen",
        OfBecoming::MostTitle => "Was höchstens zu haben ist",
        OfBecoming::MostLead => {
            "Der größte Durchmesser zu jeder Länge, Nuten, Bohrungen und Rundlauf mitgezählt; eine Querbohrung bleibt. \
             Entlang der Linie ziehen, oder die Pfeiltasten nehmen."
        }
        OfBecoming::MostSlider => "Länge, und der größte Durchmesser darüber",
        OfBecoming::AxisLength => "Länge",
        OfBecoming::AxisDiameter => "Durchmesser",
        OfBecoming::WantedPoint => "Soll",
        OfBecoming::Take(Take::Both) => "Beide",
        OfBecoming::Take(Take::Diameter) => "Nur Durchmesser",
        OfBecoming::Take(Take::Length) => "Nur die Länge",
        OfBecoming::Entered => "Eingetragen: Das ist jetzt das Soll.",
        OfBecoming::NothingToHave => {
            "Noch nichts zu haben: Maße fehlen, oder es ist kein Aufmaß da."
        }
    }
}

pub(in crate::page::words) fn how_long(words: Words, one: &Becomes) -> String {
    let length = one.wanted.length.value();
    let standard = one.shank.get().map_or(length, |shank| shank.length);
    if one.full_length {
        "volle Länge".to_owned()
    } else {
        format!(
            "{} lang, {} zu kurz",
            words.length(length),
            words.length(standard - length)
        )
    }
}

pub(in crate::page::words) fn gripped_by(words: Words, one: &Becomes) -> String {
    let receiver = receiver::name(&one.wanted.receiver);
    format!("{receiver}: spannt {}", words.length(one.grip))
}

pub(in crate::page::words) fn taken(shank: &Shank) -> String {
    format!(
        "Eingetragen: {}. Es steht oben und im Plan; „Zurück“ holt das vorige Soll wieder.",
        receiver::shank_in_full(shank, None)
    )
}

pub(in crate::page::words) fn how_many(words: Words, shanks: usize) -> String {
    words.count(shanks, "Normschaft", "Normschäfte")
}

pub(in crate::page::words) fn in_the_way(
    words: Words,
    because: Because,
    at: Length,
    offer: Option<&Offer>,
) -> String {
    let what = findings::in_the_way(words, because);
    let place = strength::place(words, at);
    let most = offer.map_or_else(String::new, |offer| {
        format!(" Höchstens zu haben: {}.", self::offer(words, offer))
    });
    format!(
        "{what} Am wenigsten bleibt {place}.{most} Ein kürzerer oder dünnerer eigener Schaft kann noch gehen."
    )
}

pub(in crate::page::words) fn offer(words: Words, offer: &Offer) -> String {
    format!(
        "⌀{} auf {}",
        words.typed(offer.diameter.entry()),
        words.typed(offer.length.entry())
    )
}

/// What cleans up: a diameter below what can be turned, or a length below it, is none to propose.
pub(super) fn enough_metal(words: Words, largest: Length, longest: Length) -> String {
    const LEAST: Length = Length::mm(0.5);
    let keep = (LEAST < longest).then(|| words.length_at_most(longest));
    let diameter = words.size_at_most(largest);
    match (largest < LEAST, keep) {
        (false, Some(keep)) => format!(
            "Durchmesser {diameter} oder kleiner nehmen, oder den Schaft nur {keep} ab der Schulter lang lassen."
        ),
        (false, None) => format!("Durchmesser {diameter} oder kleiner nehmen."),
        (true, Some(keep)) => {
            format!("Kein Durchmesser wird sauber: den Schaft nur {keep} lang lassen.")
        }
        (true, None) => "Kein Durchmesser wird sauber.".to_owned(),
    }
}
