//! Spanish: what a part has several of: sections, cuts, holes, pieces of the head. Their names, kinds and fields,
//! and one line that says what each is.

use skimwright::job::{
    Bore, BoreEnd, BoreField, Cut, CutKind, Datum, Feature, FeatureField, Flats, HeadField, Hole,
    HoleKind, Job, Place, Section, SectionField, Turned, TurnedKind,
};
use skimwright::quantity::{Entered, Typed, show};
use skimwright::working::Value;

use crate::page::edit::{Kind, List};
use crate::page::words::{Text, Words};

pub(super) const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Head => "Trozo de la cabeza",
        Kind::Section(kind) => section_kind(kind),
        Kind::Feature(kind) => cut_kind(kind),
        Kind::Bore(kind) => hole_kind(kind),
    }
}

const fn section_kind(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "Cilindro",
        TurnedKind::Taper => "Cono, dos diámetros",
        TurnedKind::StandardTaper => "Cono normalizado",
        TurnedKind::RatioTaper => "Cono por conicidad",
        TurnedKind::AngleTaper => "Cono por ángulo",
        TurnedKind::Groove => "Ranura",
        TurnedKind::Thread => "Rosca",
        TurnedKind::Relief => "Garganta de salida",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "Plano",
        CutKind::Keyway => "Chavetero",
        CutKind::WoodruffKeyway => "Chavetero de media luna",
        CutKind::CrossHole => "Agujero transversal",
        CutKind::Tang => "Lengüeta",
    }
}

const fn hole_kind(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Drilled => "Agujero liso",
        HoleKind::Stepped => "Agujero escalonado",
        HoleKind::Tapped => "Agujero roscado",
        HoleKind::Reamed => "Agujero escariado",
        HoleKind::Through => "Agujero pasante",
        HoleKind::CentreHole => "Agujero de centrado",
    }
}

pub(super) const fn group(list: List) -> &'static str {
    match list {
        List::Head => "Cabeza, tras su primer trozo",
        List::Sections => "Mango, del resalte hacia fuera",
        List::Features => "Labrado en el mango",
        List::Bores => "Agujeros a lo largo del eje",
    }
}

pub(super) const fn add(list: List) -> &'static str {
    match list {
        List::Head => "Añadir un trozo de cabeza",
        List::Sections => "Añadir tramo, ranura o rosca",
        List::Features => "Añadir plano, chavetero, agujero transv. o lengüeta",
        List::Bores => "Añadir un agujero",
    }
}

pub(super) const fn none(list: List) -> &'static str {
    match list {
        List::Head => "Ninguno: la cabeza es de una pieza, lisa.",
        List::Sections => "Ningún tramo: falta el mango.",
        List::Features => "Nada: el mango es redondo a todo lo largo.",
        List::Bores => "Sin agujeros: los dos extremos son macizos.",
    }
}

pub(super) const fn move_on(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Hacia fuera",
        List::Features | List::Bores => "Bajar",
    }
}

pub(super) const fn move_back(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Hacia dentro",
        List::Features | List::Bores => "Subir",
    }
}

pub(super) const fn copy(list: List) -> &'static str {
    match list {
        List::Bores => "Igual en el otro extremo",
        _ => "Duplicar",
    }
}

pub(super) const fn end(end: BoreEnd) -> &'static str {
    match end {
        BoreEnd::FreeEnd => "Extremo libre",
        BoreEnd::HeadEnd => "Extremo de la cabeza",
    }
}

pub(super) const fn from(datum: Datum) -> &'static str {
    match datum {
        Datum::Shoulder => "Desde el resalte",
        Datum::FreeEnd => "Desde el extremo libre",
    }
}

pub(super) const fn flats(flats: Flats) -> &'static str {
    match flats {
        Flats::One => "Uno",
        Flats::Two => "Dos, opuestos",
    }
}

/// The name of a row, counted from 1; `cut` is the kind where it is known.
pub(in crate::page::words) fn name(list: List, index: u8, cut: Option<CutKind>) -> String {
    let number = u32::from(index) + 1;
    let name = match list {
        // The first piece of the head is no row of the list.
        List::Head => return format!("Trozo de cabeza {}", number + 1),
        List::Sections => "Tramo",
        List::Features => cut.map_or("Elemento", cut_kind),
        List::Bores => "Agujero",
    };
    format!("{name} {number}")
}

pub(super) const fn head_label(field: HeadField) -> &'static str {
    match field {
        HeadField::Diameter => "Diámetro",
        HeadField::Length => "Longitud",
    }
}

pub(super) const fn section_label(field: SectionField) -> &'static str {
    match field {
        SectionField::Kind => "Tipo",
        SectionField::Taper => "Serie y tamaño",
        SectionField::Thread => "Rosca",
        SectionField::Diameter => "Diámetro",
        SectionField::ShoulderDiameter => "Diámetro, lado del resalte",
        SectionField::EndDiameter => "Diámetro, lado libre",
        SectionField::Ratio => "Conicidad",
        SectionField::Angle => "Ángulo del cono",
        SectionField::PastGauge => "Longitud antes del plano de referencia",
        SectionField::Length => "Longitud",
        SectionField::DiameterError => "Incertidumbre de los diámetros",
        SectionField::LengthError => "Incertidumbre de la longitud",
        SectionField::From => "Posición",
        SectionField::Start => "Distancia",
    }
}

pub(super) const fn feature_label(field: FeatureField) -> &'static str {
    match field {
        FeatureField::Kind => "Tipo",
        FeatureField::Over => "Medida entre caras",
        FeatureField::Flats => "Planos",
        FeatureField::Width => "Ancho",
        FeatureField::Depth => "Profundidad",
        FeatureField::Disc => "Diámetro de la fresa",
        FeatureField::Diameter => "Diámetro",
        FeatureField::Thickness => "Espesor",
        FeatureField::Length => "Longitud",
        FeatureField::SlotWidth => "Ancho de la ranura",
        FeatureField::SlotDepth => "Profundidad de la ranura",
        FeatureField::From => "Posición",
        FeatureField::Start => "Distancia",
    }
}

pub(super) const fn bore_label(field: BoreField) -> &'static str {
    match field {
        BoreField::Kind => "Tipo",
        BoreField::End => "Hecho desde",
        BoreField::Diameter => "Diámetro",
        BoreField::Depth => "Profundidad",
        BoreField::Bottom => "Fondo",
        BoreField::StepDiameter => "Diámetro de la parte ancha",
        BoreField::StepDepth => "Profundidad de la parte ancha",
        BoreField::Thread => "Rosca",
        BoreField::ThreadDepth => "Profundidad de rosca completa",
        BoreField::ReamDepth => "Profundidad escariada",
        BoreField::DrillDepth => "Profundidad taladrada",
        BoreField::CentreDrill => "Broca de centrar",
        BoreField::OffCentre => "Descentrado",
    }
}

pub(super) const fn section_hint(field: SectionField) -> Option<&'static str> {
    Some(match field {
        SectionField::PastGauge => {
            "0 si el tramo empieza en el plano de referencia, donde el cono tiene su medida nominal."
        }
        SectionField::Ratio => "20 quiere decir 1 : 20. Negativo: crece hacia el extremo libre.",
        SectionField::Angle => {
            "De lado a lado: el doble del ángulo del carro orientable. Negativo: crece hacia el extremo libre."
        }
        SectionField::Start => "A lo largo del eje, hasta su lado más cercano.",
        SectionField::DiameterError | SectionField::LengthError => {
            "Lo que dejan en duda el instrumento y la superficie gastada. Vacío: lo habitual."
        }
        _ => return None,
    })
}

pub(super) const fn feature_hint(field: FeatureField) -> Option<&'static str> {
    Some(match field {
        FeatureField::Over => {
            "Un plano: de él al lado redondo opuesto. Dos: entre ambos, como los coge una llave."
        }
        FeatureField::Depth => "Desde fuera del mango hasta lo más hondo.",
        FeatureField::Disc => "De la fresa de media luna, o el doble de la altura de su arco.",
        FeatureField::SlotWidth => "A través del extremo de la lengüeta. Vacío: sin ranura.",
        FeatureField::SlotDepth => "Desde el extremo libre.",
        FeatureField::Start => {
            "A lo largo del eje, hasta su lado más cercano; en agujero transversal o media luna, hasta su centro."
        }
        _ => return None,
    })
}

pub(super) const fn bore_hint(field: BoreField) -> Option<&'static str> {
    Some(match field {
        BoreField::Depth | BoreField::DrillDepth => {
            "Desde el extremo tal como llegó hasta donde acaba el diámetro completo."
        }
        BoreField::OffCentre => "Cuánto se aparta del eje del mango. Vacío: nada.",
        _ => return None,
    })
}

/// What a row is, in one line: kind, main size, where.
pub(in crate::page::words) fn line(words: Words, job: &Job, list: List, index: u8) -> String {
    let (part, at) = (&job.part, usize::from(index));
    let line = match list {
        List::Head => part.head_beyond.get(at).map(|piece| {
            let parts = [words.across(&piece.diameter), words.long(&piece.length)];
            parts.join(", ")
        }),
        List::Sections => part.sections.get(at).map(|it| section_line(words, it)),
        List::Features => part.features.get(at).map(|it| feature_line(words, it)),
        List::Bores => part.bores.get(at).map(|it| bore_line(words, it)),
    };
    line.unwrap_or_default()
}

fn section_line(words: Words, section: &Section) -> String {
    let long = |length| words.long(length);
    let mut parts = match &section.turned {
        Turned::Cylinder { diameter, length } => {
            vec![format!("cilindro {}", words.across(diameter)), long(length)]
        }
        Turned::Taper {
            shoulder_diameter,
            end_diameter,
            length,
            ..
        } => {
            let (from, to) = (words.across(shoulder_diameter), words.across(end_diameter));
            vec![format!("cono {from} a {to}"), long(length)]
        }
        Turned::StandardTaper { taper, length, .. } => {
            let name = taper.get().map(|row| {
                let series = words.say(Text::TaperSeries(row.series));
                format!("{series} {}", row.size)
            });
            let length = length.as_ref().map(long);
            name.into_iter().chain(length).collect()
        }
        Turned::RatioTaper {
            shoulder_diameter,
            ratio,
            length,
        } => {
            let (ratio, from) = (show::taper(ratio.value()), words.across(shoulder_diameter));
            vec![format!("cono {ratio} desde {from}"), long(length)]
        }
        Turned::AngleTaper {
            shoulder_diameter,
            angle,
            length,
        } => {
            let (angle, from) = (
                words.value(Value::Angle(angle.value())),
                words.across(shoulder_diameter),
            );
            vec![format!("cono {angle} desde {from}"), long(length)]
        }
        Turned::Groove { diameter, length } => {
            vec![
                format!("ranura {}", words.across(diameter)),
                wide(words, length),
            ]
        }
        Turned::Thread { thread, length } => {
            vec![format!("rosca {}", thread.code()), long(length)]
        }
        Turned::Relief { diameter, length } => {
            vec![
                format!("garganta {}", words.across(diameter)),
                wide(words, length),
            ]
        }
    };
    parts.extend(section.place.as_ref().map(|place| placed(words, place)));
    parts.join(", ")
}

/// A cut is named by its kind already.
fn feature_line(words: Words, feature: &Feature) -> String {
    let mut parts = match &feature.cut {
        Cut::Flat {
            over,
            flats,
            length,
        } => {
            let count = match flats {
                Flats::One => "uno",
                Flats::Two => "dos",
            };
            vec![
                format!("{count}, {} entre caras", words.entered(over)),
                words.long(length),
            ]
        }
        Cut::Keyway {
            width,
            depth,
            length,
        } => vec![wide(words, width), deep(words, depth), words.long(length)],
        Cut::WoodruffKeyway { width, depth, .. } => {
            vec![wide(words, width), deep(words, depth)]
        }
        Cut::CrossHole { diameter } => vec![words.across(diameter)],
        Cut::Tang {
            thickness, length, ..
        } => vec![
            format!("{} de espesor", words.entered(thickness)),
            words.long(length),
        ],
    };
    parts.extend(feature.place.as_ref().map(|place| placed(words, place)));
    parts.join(", ")
}

fn bore_line(words: Words, bore: &Bore) -> String {
    let mut parts = match &bore.hole {
        Hole::Drilled {
            diameter, depth, ..
        } => vec![
            format!("liso {}", words.across(diameter)),
            deep(words, depth),
        ],
        Hole::Stepped {
            diameter,
            depth,
            step_diameter,
            ..
        } => {
            let (wide, narrow) = (words.across(step_diameter), words.across(diameter));
            vec![format!("escalonado {wide} y {narrow}"), deep(words, depth)]
        }
        Hole::Tapped {
            thread,
            thread_depth,
            ..
        } => vec![
            format!("roscado {}", thread.code()),
            deep(words, thread_depth),
        ],
        Hole::Reamed {
            diameter,
            ream_depth,
            ..
        } => vec![
            format!("escariado {}", words.across(diameter)),
            deep(words, ream_depth),
        ],
        Hole::Through { diameter } => vec![format!("pasante, {}", words.across(diameter))],
        Hole::CentreHole { centre_drill } => vec![format!("de centrado {}", centre_drill.code())],
    };
    if !matches!(bore.hole, Hole::Through { .. }) {
        parts.push(
            match bore.end {
                BoreEnd::FreeEnd => "desde el extremo libre",
                BoreEnd::HeadEnd => "desde la cabeza",
            }
            .to_owned(),
        );
    }
    parts.join(", ")
}

fn placed(words: Words, place: &Place) -> String {
    let from = match place.from {
        Datum::Shoulder => "del resalte",
        Datum::FreeEnd => "del extremo libre",
    };
    format!("a {} {from}", words.entered(&place.start))
}

fn wide<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} de ancho", words.entered(size))
}

fn deep<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} de hondo", words.entered(size))
}

pub(in crate::page::words) fn long(length: &str) -> String {
    format!("{length} de largo")
}
