//! Spanish: the labels of the fields, the notes under them, and what is wrong with what was typed.

use skimwright::job::{Field, ReceiverField};
use skimwright::quantity::{Entry, MOST_CHARACTERS, ReadError, ReadErrorKind};

use super::{cut, instruments, items, shop};
use crate::page::edit::List;
use crate::page::state::Wrong;
use crate::page::words::{OfInstruments, Words};

pub(super) use crate::page::words::english_fields::short;

pub(in crate::page::words) const fn label(field: Field) -> &'static str {
    match field {
        Field::Title => "Nombre del trabajo",
        Field::MeasuredBy => "Medido por",
        Field::Material => "Material",
        Field::HeadDiameter => "Diámetro de la cabeza",
        Field::HeadLength => "Longitud de la cabeza",
        Field::HeadBeyond => "Trozos de la cabeza",
        Field::Head(_, field) => items::head_label(field),
        Field::CuttingGroup => "Grupo de mecanizado",
        Field::FileBite => "Prueba con lima nueva",
        Field::Runout => "Salto (lectura total)",
        Field::EndRunout => "Salto cerca del extremo libre",
        Field::SurfaceHardness => "Dureza por fuera",
        Field::CaseDepth => "Profundidad de la capa dura",
        Field::CoreHardness => "Dureza del núcleo",
        Field::ShankLength => "Longitud de todo el mango",
        Field::Sections => "Tramos",
        Field::Section(_, field) => items::section_label(field),
        Field::Features => "Planos, chaveteros, agujeros",
        Field::Feature(_, field) => items::feature_label(field),
        Field::Bores => "Agujeros",
        Field::Bore(_, field) => items::bore_label(field),
        Field::WantedDiameter => "Diámetro acabado",
        Field::Tolerance => "Tolerancia",
        Field::UpperDeviation => "Desviación superior",
        Field::LowerDeviation => "Desviación inferior",
        Field::WantedLength => "Longitud acabada",
        Field::ShoulderRadius => "Radio de acuerdo en el resalte",
        Field::EndChamfer => "Chaflán del extremo, 45°",
        Field::Countersink => "⌀ del avellanado, 60°",
        Field::Roughness => "Rugosidad Ra",
        Field::Receiver(field) => receiver_label(field),
        Field::ReceiverDepth => "Profundidad del alojamiento",
        Field::LeastGrip => "Mínima longitud sujeta",
        Field::DutyTorque => "Par",
        Field::DutyForce => "Carga lateral",
        Field::DutyOverhang => "Brazo de la carga lateral",
        Field::DutyPower => "Potencia",
        Field::DutySpeed => "Velocidad de trabajo",
        Field::Tool => "Herramienta de tornear",
        Field::Edge(field) => shop::edge_label(field),
        Field::Machine(field) => shop::machine_label(field),
        Field::Aim => "Pasadas elegidas por",
        Field::CutOffMethod => "Tronzar con",
        Field::Kerf => "Ancho del corte",
        Field::FacingStock => "Demasía para refrentar",
        Field::CentreOrder => "Centrar",
        Field::RoughInfeed => "Mayor penetración al desbastar",
        Field::LastCut => "Cada pasada de acabado, del ⌀",
        Field::PolishingStock => "Demasía para pulir, en ⌀",
        Field::CuttingSpeed => "Mayor velocidad de corte",
        Field::RoughFeed => "Mayor avance, desbaste",
        Field::FinishFeed => "Mayor avance, acabado",
        Field::TopSpeed => "Mayor velocidad de giro",
        Field::Approach => "Aproximación",
        Field::SetTime => "Poner la pasada y embragar",
        Field::ReturnTime => "Retroceso",
        Field::MeasureTime => "Medir",
        Field::PolishTime => "Pulir, una vez",
        Field::Step(_, bound) => cut::time_bound(bound),
        Field::Rate(field) => shop::rate_label(field),
        Field::Holding(field) => shop::holding_label(field),
        Field::Dial(_, quarter) => shop::quarter(quarter),
        Field::Pins => "Pasadas fijas",
        Field::Pin(_, field) => shop::pin_label(field),
        Field::RoomTemperature => instruments::ROOM,
        Field::Instruments => instruments::text(OfInstruments::Title),
        Field::Instrument(_, field) => instruments::label(field),
    }
}

const fn receiver_label(field: ReceiverField) -> &'static str {
    match field {
        ReceiverField::Kind => "Alojamiento",
        ReceiverField::Collet => "Pinza",
        ReceiverField::Shank => "Mango normalizado",
        ReceiverField::Hole => "Clase del agujero",
        ReceiverField::Load => "Carga del rodamiento",
        ReceiverField::RingChamfer => "Chaflán del aro",
        ReceiverField::SleeveDuty => "Qué tiene que aguantar el casquillo",
        ReceiverField::SleeveMaterial => "Material del casquillo",
        ReceiverField::Outside => "Diámetro exterior del casquillo",
        ReceiverField::Edge => "Arista de la boca",
    }
}

pub(in crate::page::words) fn in_full(words: Words, field: Field) -> String {
    let (row, name) = match field {
        Field::Dial(plane, quarter) => return shop::reading(plane, quarter),
        Field::Pin(index, _) => (shop::pin(index), label(field)),
        Field::Instrument(index, _) => (instruments::title(index), label(field)),
        Field::Step(step, bound) => (cut::step(step).to_owned(), cut::time_bound(bound)),
        _ => match List::of(field) {
            Some((list, Some(index))) => (words.row(list, index), label(field)),
            _ => return label(field).to_owned(),
        },
    };
    format!("{row}: {}", lower_first(name))
}

/// A name within a sentence: a small first letter, also where it has an accent.
pub(super) fn lower_first(text: &str) -> String {
    let mut rest = text.chars();
    let Some(first) = rest.next() else {
        return String::new();
    };
    let small = match first {
        'Á' => 'á',
        'É' => 'é',
        'Í' => 'í',
        'Ó' => 'ó',
        'Ú' => 'ú',
        'Ñ' => 'ñ',
        other => other.to_ascii_lowercase(),
    };
    format!("{small}{}", rest.as_str())
}

pub(in crate::page::words) const fn hint(field: Field) -> Option<&'static str> {
    Some(match field {
        Field::CuttingGroup => {
            "VDI 3323, como numeran los catálogos de herramientas. Vacío: el del material."
        }
        Field::FileBite => {
            "Pruébala donde cortará la herramienta, si no hay durómetro. Puede quedar vacío."
        }
        Field::Step(..) => "Cada vez. Vacío: lo habitual.",
        Field::Runout => {
            "Comparador sobre el mango, cerca del resalte; pieza centrada por lo que se queda."
        }
        Field::EndRunout => {
            "Lectura total cerca del extremo libre, con la misma sujeción: enseña si está torcida. Vacío: como junto \
             al resalte."
        }
        Field::SurfaceHardness => {
            "Donde cortará la herramienta, con durómetro o limas de dureza. Puede quedar vacío."
        }
        Field::CaseDepth => {
            "Hasta dónde llega la capa dura: por los papeles, o atacada con ácido en una cara cortada. Vacío: igual de \
             dura hasta el centro."
        }
        Field::CoreHardness => "Bajo la capa dura. Puede quedar vacío.",
        Field::ShankLength => {
            "Del resalte al extremo libre, con sonda o gramil. Vacío: la suma de los tramos."
        }
        Field::Section(_, field) => return items::section_hint(field),
        Field::Feature(_, field) => return items::feature_hint(field),
        Field::Bore(_, field) => return items::bore_hint(field),
        Field::DutyTorque => "El mayor, con los picos. O da potencia y velocidad.",
        Field::DutyPower => "La del motor que lo mueve, sin contar pérdidas.",
        Field::DutySpeed => "La más lenta a plena potencia: ahí el par es mayor.",
        Field::DutyForce => "Perpendicular al eje, en la cabeza: de una fresa, correa o rueda.",
        Field::DutyOverhang => "Del resalte a donde actúa la carga lateral.",
        Field::WantedLength => "Del resalte al extremo acabado.",
        Field::Countersink => "Para el punto giratorio. Vacío: sin él.",
        Field::Roughness => "Del mango torneado, como 1,6 µm. Vacío: no se pide.",
        Field::ReceiverDepth => {
            "Cuánto mango admite el portaútil, agujero o rodamiento. Puede quedar vacío."
        }
        Field::LeastGrip => "Lo que pide el fabricante del alojamiento. Puede quedar vacío.",
        Field::Kerf => "Lo que se come el corte. Vacío: lo habitual.",
        Field::FacingStock => "Lo que se deja en el extremo para refrentarlo.",
        Field::RoughInfeed => "En radio; menos donde menos sea mejor. Vacío: lo elige el plan.",
        Field::CuttingSpeed | Field::RoughFeed | Field::FinishFeed => {
            "Menos donde menos sea mejor. Vacío: lo elige el plan."
        }
        Field::Aim => "El coste compara una hora de taller con los filos que se gastan.",
        Field::Edge(field) => return shop::edge_hint(field),
        Field::Machine(field) => return shop::machine_hint(field),
        Field::Holding(field) => return shop::holding_hint(field),
        Field::Pin(_, field) => return shop::pin_hint(field),
        Field::Instrument(_, field) => return instruments::hint(field),
        Field::RoomTemperature => instruments::ROOM_HINT,
        Field::Rate(field) => shop::rate_hint(field),
        Field::LastCut => "Dos iguales: la primera enseña lo que hará la segunda.",
        Field::TopSpeed => "La menor de las de torno, plato y pieza.",
        Field::Approach => "Recorrido antes de que la herramienta toque metal.",
        Field::UpperDeviation | Field::LowerDeviation => "Desde el diámetro acabado, como -0,02.",
        _ => return None,
    })
}

pub(in crate::page::words) fn wrong(
    words: Words,
    field: Field,
    wrong: &Wrong,
    kept: Option<&str>,
) -> String {
    match wrong {
        Wrong::Unread(error) => {
            let what = unread(error);
            match kept {
                Some(kept) => format!("{what} El plan sigue con {kept}."),
                None => what,
            }
        }
        Wrong::OutOfBounds => out_of_bounds(words, field),
        Wrong::BadList(error) => words.bad_list(field, error),
    }
}

/// What a field takes, said with its ends in the units in use.
pub(super) fn out_of_bounds(words: Words, field: Field) -> String {
    let each = field.of_each().unwrap_or(field);
    let (Some(bounds), Some(unit)) = (each.bounds(), field.typed_unit(words.units())) else {
        return String::new();
    };
    let [least, most] = bounds.shown_in(unit);
    format!("Aquí cabe de {least} a {most}.")
}

pub(super) fn unread(error: &ReadError) -> String {
    use ReadErrorKind as Kind;
    let place = error.at + 1;
    match &error.kind {
        Kind::Empty => "Escribe una cifra.".to_owned(),
        Kind::TooLong => format!("No más de {MOST_CHARACTERS} caracteres, por favor."),
        Kind::NumberMissing => format!("Falta un número en el carácter {place}."),
        Kind::Unexpected(found) => {
            format!("«{found}», en el carácter {place}, no va en una cifra.")
        }
        Kind::SecondMark => {
            format!("Hay una segunda coma en el carácter {place}. Los miles no llevan ninguna.")
        }
        Kind::TooManyDigits => "Son más cifras de las que se pueden querer decir.".to_owned(),
        Kind::TwoNumbers => {
            format!(
                "En el carácter {place} empieza un segundo número. Quita el espacio, o pon + o −."
            )
        }
        Kind::HyphenOrMinus => {
            "¿Es un número o una resta? Escribe 1 3/8, o 1 - 3/8 con espacios.".to_owned()
        }
        Kind::ZeroDenominator => {
            format!("A la fracción le falta un número bajo la barra, en el carácter {place}.")
        }
        Kind::FractionTooLarge => {
            "Las dos partes de una fracción llegan hasta 65535 como mucho.".to_owned()
        }
        Kind::UnknownUnit(unit) => format!("«{}» no es aquí una unidad.", short(unit)),
        Kind::UnitUnclear => {
            format!(
                "¿Qué unidad tiene el número del carácter {place}? Escribe mm o in a continuación."
            )
        }
        Kind::UnitMissing => "Falta la unidad.".to_owned(),
        Kind::TooManyTerms => {
            format!(
                "Una suma puede tener {} números como mucho.",
                Entry::MOST_TERMS
            )
        }
    }
}
