//! Spanish: what else the part could become, and the most that can be had.

use skimwright::quantity::Length;
use skimwright::receiver::Becomes;
use skimwright::rework::{Because, Offer, Take};
use skimwright::tables::Shank;

use super::{findings, receiver, strength};
use crate::page::options::Standard;
use crate::page::words::{OfBecoming, Words};

pub(super) const fn text(text: OfBecoming) -> &'static str {
    match text {
        OfBecoming::Title => "En qué más se puede convertir",
        OfBecoming::Lead => {
            "Todos los mangos normalizados para los que hay metal, los mejores primero: la longitud entera antes que \
             la corta, y luego lo que conserva más resistencia. Cada uno sale de la pieza tal como llegó. Los \
             porcentajes son del punto más débil en la misma longitud. Faltan los mangos con rosca; un plano que aún \
             hay que fresar no cuenta en la resistencia."
        }
        OfBecoming::AnyReceiver => "Cualquiera",
        OfBecoming::ReceiverFilter => "Para qué alojamiento",
        OfBecoming::StandardFilter => "Normas en",
        OfBecoming::Standard(Standard::Any) => "mm y pulgadas",
        OfBecoming::Standard(Standard::Metric) => "solo mm",
        OfBecoming::Standard(Standard::Inch) => "solo pulgadas",
        OfBecoming::FullOnly => "Solo con la longitud entera",
        OfBecoming::Bending => "Resistencia",
        OfBecoming::Torsion => "Resistencia a torsión",
        OfBecoming::Stiffness => "Rigidez",
        OfBecoming::CutOff => "Se quita de la longitud",
        OfBecoming::TurnedOff => "Se quita al tornear",
        OfBecoming::Standards => "Normas",
        OfBecoming::GoesInto => "Entra en: elige uno para anotarlo",
        OfBecoming::NoneAtAll => "De esta pieza no sale ningún mango normalizado.",
        OfBecoming::NoneOfThese => {
            "Ninguno de estos: elige cualquier alojamiento, cualquier longitud o las dos unidades."
        }
        OfBecoming::NoPart => {
            "Aún no se puede decir nada: falta una medida de la pieza o no es posible."
        }
        OfBecoming::ShowAll => "Ver todos",
        OfBecoming::MostTitle => "Lo máximo que se puede sacar",
        OfBecoming::MostLead => {
            "El mayor diámetro para cada longitud, contados ranuras, agujeros y salto; un agujero transversal se \
             queda. Arrastra por la línea, o usa las flechas."
        }
        OfBecoming::MostSlider => "Longitud, y el mayor diámetro en ella",
        OfBecoming::AxisLength => "longitud",
        OfBecoming::AxisDiameter => "diámetro",
        OfBecoming::WantedPoint => "deseado",
        OfBecoming::Take(Take::Both) => "Coger los dos",
        OfBecoming::Take(Take::Diameter) => "Solo el diámetro",
        OfBecoming::Take(Take::Length) => "Solo la longitud",
        OfBecoming::Entered => "Anotado: es lo que se desea ahora.",
        OfBecoming::NothingToHave => {
            "Aún no se puede sacar nada: faltan medidas, o no hay material."
        }
    }
}

pub(in crate::page::words) fn how_long(words: Words, one: &Becomes) -> String {
    let length = one.wanted.length.value();
    let standard = one.shank.get().map_or(length, |shank| shank.length);
    if one.full_length {
        "longitud entera".to_owned()
    } else {
        format!(
            "{} de largo, le faltan {}",
            words.length(length),
            words.length(standard - length)
        )
    }
}

pub(in crate::page::words) fn gripped_by(words: Words, one: &Becomes) -> String {
    let receiver = receiver::name(&one.wanted.receiver);
    format!("{receiver}: sujeta {}", words.length(one.grip))
}

pub(in crate::page::words) fn taken(shank: &Shank) -> String {
    format!(
        "Anotado: {}. Está arriba y en el plan; «Deshacer» trae lo que se deseaba antes.",
        receiver::shank_in_full(shank, None)
    )
}

pub(in crate::page::words) fn how_many(words: Words, shanks: usize) -> String {
    words.count(shanks, "mango normalizado", "mangos normalizados")
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
        format!(
            " Lo máximo que se puede sacar: {}.",
            self::offer(words, offer)
        )
    });
    format!(
        "{what} Donde menos queda es {place}.{most} Un mango propio más corto o más fino quizá sirva."
    )
}

pub(in crate::page::words) fn offer(words: Words, offer: &Offer) -> String {
    format!(
        "⌀{} en {}",
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
        (false, Some(keep)) => {
            format!(
                "Toma un diámetro de {diameter} o menos, o deja el mango en {keep} desde el resalte."
            )
        }
        (false, None) => format!("Toma un diámetro de {diameter} o menos."),
        (true, Some(keep)) => format!("Ningún diámetro queda limpio: deja el mango en {keep}."),
        (true, None) => "Ningún diámetro queda limpio.".to_owned(),
    }
}
