//! German: the labels of the fields, the notes under them, and what is wrong with what was typed.

use skimwright::job::{Field, ReceiverField};
use skimwright::quantity::{Entry, MOST_CHARACTERS, ReadError, ReadErrorKind};

use super::{cut, instruments, items, shop};
use crate::page::edit::List;
use crate::page::state::Wrong;
use crate::page::words::{OfInstruments, Words};

pub(super) use crate::page::words::english_fields::short;

pub(in crate::page::words) const fn label(field: Field) -> &'static str {
    match field {
        Field::Title => "Auftragsname",
        Field::MeasuredBy => "Gemessen von",
        Field::Material => "Werkstoff",
        Field::HeadDiameter => "Kopfdurchmesser",
        Field::HeadLength => "Kopflänge",
        Field::HeadBeyond => "Stücke des Kopfs",
        Field::Head(_, field) => items::head_label(field),
        Field::CuttingGroup => "Zerspanungsgruppe",
        Field::FileBite => "Neue Handfeile darauf",
        Field::Runout => "Rundlauf (voller Ausschlag)",
        Field::EndRunout => "Rundlauf nahe dem freien Ende",
        Field::SurfaceHardness => "Härte außen",
        Field::CaseDepth => "Tiefe der harten Schicht",
        Field::CoreHardness => "Härte des Kerns",
        Field::ShankLength => "Ganze Schaftlänge",
        Field::Sections => "Abschnitte",
        Field::Section(_, field) => items::section_label(field),
        Field::Features => "Abflachungen, Nuten, Löcher",
        Field::Feature(_, field) => items::feature_label(field),
        Field::Bores => "Bohrungen",
        Field::Bore(_, field) => items::bore_label(field),
        Field::WantedDiameter => "Fertigdurchmesser",
        Field::Tolerance => "Toleranz",
        Field::UpperDeviation => "Oberes Abmaß",
        Field::LowerDeviation => "Unteres Abmaß",
        Field::WantedLength => "Fertiglänge",
        Field::ShoulderRadius => "Übergangsradius an der Schulter",
        Field::EndChamfer => "Fase am Ende, 45°",
        Field::Countersink => "Zentriersenkung ⌀, 60°",
        Field::Roughness => "Rauheit Ra",
        Field::Receiver(field) => receiver_label(field),
        Field::ReceiverDepth => "Tiefe der Aufnahme",
        Field::LeastGrip => "Kleinste Spannlänge",
        Field::DutyTorque => "Drehmoment",
        Field::DutyForce => "Querkraft",
        Field::DutyOverhang => "Hebelarm der Querkraft",
        Field::DutyPower => "Leistung",
        Field::DutySpeed => "Drehzahl im Betrieb",
        Field::Tool => "Drehwerkzeug",
        Field::Edge(field) => shop::edge_label(field),
        Field::Machine(field) => shop::machine_label(field),
        Field::Aim => "Schnitte gewählt nach",
        Field::CutOffMethod => "Abtrennen mit",
        Field::Kerf => "Schnittfuge",
        Field::FacingStock => "Planaufmaß",
        Field::CentreOrder => "Zentrieren",
        Field::RoughInfeed => "Größte Zustellung beim Schruppen",
        Field::LastCut => "Je Schlichtschnitt, vom ⌀",
        Field::PolishingStock => "Aufmaß zum Polieren, auf ⌀",
        Field::CuttingSpeed => "Höchste Schnittgeschwindigkeit",
        Field::RoughFeed => "Größter Vorschub, Schruppen",
        Field::FinishFeed => "Größter Vorschub, Schlichten",
        Field::TopSpeed => "Höchste Drehzahl",
        Field::Approach => "Anlauf",
        Field::SetTime => "Zustellen und einrücken",
        Field::ReturnTime => "Rücklauf",
        Field::MeasureTime => "Messen",
        Field::PolishTime => "Polieren, einmal",
        Field::Step(_, bound) => cut::time_bound(bound),
        Field::Rate(field) => shop::rate_label(field),
        Field::Holding(field) => shop::holding_label(field),
        Field::Dial(_, quarter) => shop::quarter(quarter),
        Field::Pins => "Feste Schnitte",
        Field::Pin(_, field) => shop::pin_label(field),
        Field::RoomTemperature => instruments::ROOM,
        Field::Instruments => instruments::text(OfInstruments::Title),
        Field::Instrument(_, field) => instruments::label(field),
    }
}

const fn receiver_label(field: ReceiverField) -> &'static str {
    match field {
        ReceiverField::Kind => "Aufnahme",
        ReceiverField::Collet => "Spannzange",
        ReceiverField::Shank => "Normschaft",
        ReceiverField::Hole => "Klasse der Bohrung",
        ReceiverField::Load => "Last des Lagers",
        ReceiverField::RingChamfer => "Fase des Rings",
        ReceiverField::SleeveDuty => "Was die Hülse tragen muss",
        ReceiverField::SleeveMaterial => "Werkstoff der Hülse",
        ReceiverField::Outside => "Außendurchmesser der Hülse",
        ReceiverField::Edge => "Kante an der Öffnung",
    }
}

/// Nouns keep their capital, wherever they stand.
pub(in crate::page::words) fn in_full(words: Words, field: Field) -> String {
    match field {
        Field::Dial(plane, quarter) => return shop::reading(plane, quarter),
        Field::Pin(index, _) => return format!("{}: {}", shop::pin(index), label(field)),
        Field::Instrument(index, _) => {
            return format!("{}: {}", instruments::title(index), label(field));
        }
        Field::Step(step, bound) => {
            return format!("{}: {}", cut::step(step), cut::time_bound(bound));
        }
        _ => {}
    }
    match List::of(field) {
        Some((list, Some(index))) => format!("{}: {}", words.row(list, index), label(field)),
        _ => label(field).to_owned(),
    }
}

pub(in crate::page::words) const fn hint(field: Field) -> Option<&'static str> {
    Some(match field {
        Field::CuttingGroup => "VDI 3323, wie Werkzeugkataloge zählen. Leer: die des Werkstoffs.",
        Field::FileBite => {
            "Dort versucht, wo das Werkzeug schneidet, wenn kein Härteprüfer da ist. Darf leer bleiben."
        }
        Field::Step(..) => "Jedes Mal. Leer: üblich.",
        Field::Runout => {
            "Messuhr am Schaft nahe der Schulter; Teil an dem, was bleibt, rundlaufend gespannt."
        }
        Field::EndRunout => {
            "Voller Ausschlag nahe dem freien Ende, ebenso gespannt: zeigt eine Schieflage. Leer: wie an der Schulter."
        }
        Field::SurfaceHardness => {
            "Wo das Werkzeug schneidet, mit Härteprüfer oder Prüffeilen. Darf leer bleiben."
        }
        Field::CaseDepth => {
            "Wie tief die harte Schicht reicht: aus Papieren oder an einer Schnittfläche geätzt. Leer: durch und durch \
             so hart."
        }
        Field::CoreHardness => "Unter der harten Schicht. Darf leer bleiben.",
        Field::ShankLength => {
            "Schulter bis freies Ende, mit Tiefenmaß oder Höhenreißer. Leer: Summe der Abschnitte."
        }
        Field::Section(_, field) => return items::section_hint(field),
        Field::Feature(_, field) => return items::feature_hint(field),
        Field::Bore(_, field) => return items::bore_hint(field),
        Field::DutyTorque => "Das größte, Spitzen mitgezählt. Oder Leistung und Drehzahl angeben.",
        Field::DutyPower => "Des Motors dahinter, Verluste nicht abgezogen.",
        Field::DutySpeed => "Die kleinste bei voller Leistung: Da ist das Drehmoment am größten.",
        Field::DutyForce => "Quer zur Achse, am Kopf: von Fräser, Riemen, Rad.",
        Field::DutyOverhang => "Von der Schulter bis dahin, wo die Querkraft angreift.",
        Field::WantedLength => "Von der Schulter bis zum fertigen Ende.",
        Field::Countersink => "Für die Körnerspitze. Leer: keine.",
        Field::Roughness => "Des gedrehten Schafts, etwa 1,6 µm. Leer: nichts verlangt.",
        Field::ReceiverDepth => {
            "Wie tief Halter, Bohrung oder Lager den Schaft aufnimmt. Darf leer bleiben."
        }
        Field::LeastGrip => "Was der Hersteller des Halters verlangt. Darf leer bleiben.",
        Field::Kerf => "Breite des Schnitts. Leer: die übliche.",
        Field::FacingStock => "Bleibt am Ende stehen, zum Plandrehen.",
        Field::RoughInfeed => {
            "Auf Radius; weniger, wo weniger besser ist. Leer: Die Planung wählt."
        }
        Field::CuttingSpeed | Field::RoughFeed | Field::FinishFeed => {
            "Weniger, wo weniger besser ist. Leer: Die Planung wählt."
        }
        Field::Aim => "Die Kosten wägen eine Stunde Werkstatt gegen die verbrauchten Schneiden.",
        Field::Edge(field) => return shop::edge_hint(field),
        Field::Machine(field) => return shop::machine_hint(field),
        Field::Holding(field) => return shop::holding_hint(field),
        Field::Pin(_, field) => return shop::pin_hint(field),
        Field::Instrument(_, field) => return instruments::hint(field),
        Field::RoomTemperature => instruments::ROOM_HINT,
        Field::Rate(field) => shop::rate_hint(field),
        Field::LastCut => "Zwei gleiche: Der erste zeigt, was der zweite tun wird.",
        Field::TopSpeed => "Von Maschine, Futter und Teil, was am kleinsten ist.",
        Field::Approach => "Weg, bevor das Werkzeug Metall trifft.",
        Field::UpperDeviation | Field::LowerDeviation => "Vom Fertigdurchmesser aus, etwa -0,02.",
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
                Some(kept) => format!("{what} Der Plan rechnet weiter mit {kept}."),
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
    format!("Möglich ist {least} bis {most}.")
}

pub(super) fn unread(error: &ReadError) -> String {
    use ReadErrorKind as Kind;
    let place = error.at + 1;
    match &error.kind {
        Kind::Empty => "Eine Zahl eingeben.".to_owned(),
        Kind::TooLong => format!("Bitte höchstens {MOST_CHARACTERS} Zeichen."),
        Kind::NumberMissing => format!("Bei Zeichen {place} fehlt eine Zahl."),
        Kind::Unexpected(found) => {
            format!("„{found}“ bei Zeichen {place} gehört in keine Zahl.")
        }
        Kind::SecondMark => {
            format!("Bei Zeichen {place} steht ein zweites Komma. Tausender brauchen keins.")
        }
        Kind::TooManyDigits => "Das sind mehr Ziffern, als gemeint sein können.".to_owned(),
        Kind::TwoNumbers => format!(
            "Bei Zeichen {place} beginnt eine zweite Zahl. Leerzeichen weglassen, oder + oder − schreiben."
        ),
        Kind::HyphenOrMinus => {
            "Eine Zahl oder eine Differenz? 1 3/8 schreiben, oder 1 - 3/8 mit Leerzeichen."
                .to_owned()
        }
        Kind::ZeroDenominator => {
            format!("Der Bruch braucht eine Zahl unter dem Strich, bei Zeichen {place}.")
        }
        Kind::FractionTooLarge => "Zähler und Nenner können höchstens 65535 sein.".to_owned(),
        Kind::UnknownUnit(unit) => format!("„{}“ ist hier keine Einheit.", short(unit)),
        Kind::UnitUnclear => {
            format!(
                "Welche Einheit hat die Zahl bei Zeichen {place}? Dahinter mm oder in schreiben."
            )
        }
        Kind::UnitMissing => "Die Einheit fehlt.".to_owned(),
        Kind::TooManyTerms => {
            format!(
                "Eine Summe kann höchstens {} Zahlen haben.",
                Entry::MOST_TERMS
            )
        }
    }
}
