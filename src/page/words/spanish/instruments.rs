//! Spanish: measuring instruments, and what jobs taught of the lathe.

use skimwright::job::{Instrument, InstrumentField, InstrumentKind};

use super::fields::lower_first;
use super::lathe_steps;
use crate::page::shelf::Lesson;
use crate::page::words::OfInstruments;

pub(super) const fn label(field: InstrumentField) -> &'static str {
    match field {
        InstrumentField::Name => "Nombre del instrumento",
        InstrumentField::Kind => "Instrumento",
        InstrumentField::Graduation => "Una división, o salto de la pantalla",
        InstrumentField::PermissibleError => "Error máximo permitido, más o menos",
        InstrumentField::Reference => "Ajustado o comparado con",
        InstrumentField::Repeat => "Dispersión al repetir la lectura",
    }
}

pub(super) const fn hint(field: InstrumentField) -> Option<&'static str> {
    Some(match field {
        InstrumentField::Graduation => "Como lleva marcado. Vacío: lo habitual en su clase.",
        InstrumentField::PermissibleError => {
            "De sus papeles o su calibración. Vacío: lo que permite la norma para su clase y la medida."
        }
        InstrumentField::Reference => {
            "Un bloque patrón o una pieza patrón cerca de la medida: entonces solo cuenta la diferencia. Puede quedar \
             vacío."
        }
        InstrumentField::Repeat => {
            "Desviación típica de diez lecturas en un sitio. Vacío: lo habitual en su clase."
        }
        InstrumentField::Name | InstrumentField::Kind => return None,
    })
}

pub(super) const ROOM: &str = "Temperatura del taller";

pub(super) const ROOM_HINT: &str =
    "También la de pieza e instrumentos, si la lectura no dice otra cosa. Vacío: 20 °C.";

/// The name of an instrument, counted from 1.
pub(in crate::page::words) fn title(index: u8) -> String {
    format!("Instrumento {}", u16::from(index) + 1)
}

pub(in crate::page::words) fn line(instrument: &Instrument, graduation: Option<String>) -> String {
    let name = instrument.name.trim();
    let name = if name.is_empty() {
        kind(instrument.kind)
    } else {
        name
    };
    match graduation {
        Some(graduation) => format!("{name}, {graduation}"),
        None => name.to_owned(),
    }
}

const fn kind(kind: InstrumentKind) -> &'static str {
    match kind {
        InstrumentKind::Micrometer => "Micrómetro de exteriores",
        InstrumentKind::Calliper => "Calibre pie de rey",
        InstrumentKind::Indicator => "Reloj comparador",
        InstrumentKind::Gauge => "Comparación con patrón",
    }
}

pub(in crate::page::words) fn takes(
    share: &[String; 2],
    offset: &[String; 2],
    cuts: &str,
) -> String {
    let [share, share_deviation] = share;
    let [offset, offset_deviation] = offset;
    let cuts = if cuts == "1" {
        "1 pasada".to_owned()
    } else {
        format!("{cuts} pasadas")
    };
    format!(
        "De lo que se mete se quita {share} ± {share_deviation}, y además {offset} ± {offset_deviation} del diámetro. De \
         {cuts}."
    )
}

pub(in crate::page::words) fn pace(factor: &str, jobs: &str) -> String {
    let from = if jobs == "1" {
        "1 trabajo".to_owned()
    } else {
        format!("{jobs} trabajos")
    };
    format!("{factor} del tiempo habitual, de {from}")
}

pub(in crate::page::words) const fn lesson(lesson: Lesson) -> &'static str {
    match lesson {
        Lesson::Takes => "Lo que quita una penetración",
        Lesson::Pace(step) => lathe_steps::name(step),
    }
}

pub(in crate::page::words) fn by_own_times(names: &[&str]) -> String {
    let names: Vec<String> = names.iter().map(|name| lower_first(name)).collect();
    format!(
        "Con tus propios tiempos en este torno, de trabajos anteriores: {}.",
        names.join(", ")
    )
}

/// What is asked before something that was learned is forgotten.
pub(super) fn ask_forget(name: &str) -> String {
    format!(
        "¿Olvidar lo que este torno enseñó de «{}»? Los planes vuelven a lo habitual. Un torno guardado queda como está \
         hasta que lo guardes de nuevo.",
        lower_first(name)
    )
}

pub(super) const fn text(text: OfInstruments) -> &'static str {
    match text {
        OfInstruments::Title => "Instrumentos de medida",
        OfInstruments::Lead => {
            "Lo que vale una lectura depende de con qué se tomó. Sin ninguno, se cuenta con un micrómetro habitual."
        }
        OfInstruments::NoneYet => "Ninguno aún.",
        OfInstruments::Add(InstrumentKind::Micrometer) => "Añadir micrómetro",
        OfInstruments::Add(InstrumentKind::Calliper) => "Añadir calibre",
        OfInstruments::Add(InstrumentKind::Indicator) => "Añadir comparador",
        OfInstruments::Add(InstrumentKind::Gauge) => "Añadir comparación",
        OfInstruments::Kind(of) => kind(of),
        OfInstruments::Used => "Se midió con él, así que se queda.",
        OfInstruments::LearnedTitle => "Lo que ha enseñado este torno",
        OfInstruments::LearnedLead => {
            "De trabajos hechos en él. Pasa con el torno al trabajo siguiente y acerca su plan a tu día a día."
        }
        OfInstruments::NothingLearned => {
            "Nada aún. Haz un trabajo en la etapa Torno y quédate con lo que enseñe."
        }
        OfInstruments::Takes => lesson(Lesson::Takes),
        OfInstruments::Paces => "Tiempos de los pasos",
        OfInstruments::Forget => "Olvidar",
        OfInstruments::Teach => "Guardar lo aprendido",
        OfInstruments::TeachNote => {
            "Lo que duraron los pasos va con este torno, y con el guardado que lleve su nombre."
        }
    }
}
