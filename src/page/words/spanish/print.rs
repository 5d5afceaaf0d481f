//! Spanish: the job sheet, the report that goes back, and files.

use skimwright::measuring::{Verdict, VerdictIs};
use skimwright::quantity::{Entered, Temperature};
use skimwright::sheet::DecimalMark;
use skimwright::work::CutsDone;

use crate::page::words::{Moment, OfPrint, Words};

pub(super) const fn text(text: OfPrint) -> &'static str {
    match text {
        OfPrint::SheetTitle => "Hoja de trabajo",
        OfPrint::PrintSheet => "Imprimir la hoja",
        OfPrint::SheetSays => {
            "Una hoja para el torno: dibujo, pasos, pasadas, avisos. Quien escanee su código recibe la pieza, lo deseado, \
             torno, herramienta y registro, pero ninguna tarifa."
        }
        OfPrint::InMillimetres => "medidas en mm",
        OfPrint::InInches => "medidas en pulgadas",
        OfPrint::CodeLabel => "Código QR de este trabajo",
        OfPrint::CodeSays(true) => "Abre este trabajo con su registro",
        OfPrint::CodeSays(false) => "Abre este trabajo",
        OfPrint::CodeTooLong => {
            "Este trabajo es demasiado largo para un código. Ábrelo con su enlace o su archivo."
        }
        OfPrint::ByTable => "según la tabla de pasadas",
        OfPrint::Number => "N.º",
        OfPrint::DialIn => "Meter",
        OfPrint::After => "⌀ tras",
        OfPrint::Read => "⌀ leído",
        OfPrint::GoesOn => "Más pasadas en la página siguiente.",
        OfPrint::BackBanner => {
            "Esta pieza te llega de vuelta. Aquí no se guarda nada de ella si no quieres."
        }
        OfPrint::BackSays => {
            "Este es el informe del taller: qué llegó, qué se hizo y cuánto mide ahora."
        }
        OfPrint::BackKeep => "Guardar trabajo",
        OfPrint::BackLeave => "Salir del informe",
        OfPrint::NoRecord => "En el torno aún no se apuntó nada: este informe no demuestra nada.",
        OfPrint::AsReceived => "Como llegó",
        OfPrint::AsLeft => "Como queda, dibujada según lo deseado",
        OfPrint::NotReadBefore => "No se midió antes de la primera pasada.",
        OfPrint::NotReadAfter => "No se midió después de la última pasada.",
        OfPrint::NothingCut => {
            "En el registro no hay ninguna pasada: lo medido es la pieza como llegó."
        }
        OfPrint::VerdictSays => {
            "± es la incertidumbre expandida, k = 2: unas 95 de cada 100. Solo se dice «cumplida» cuando el riesgo de \
             error es de 5 de cada 100 como mucho."
        }
        OfPrint::WhatWasDone => "Qué se hizo",
        OfPrint::NoSteps => "No se empezó ningún paso.",
        OfPrint::NoCuts => "En el registro no hay ninguna pasada.",
        OfPrint::Notes => "Notas",
        OfPrint::Answer => "La respuesta del dueño",
        OfPrint::MeasuredWith => "Medido con",
        OfPrint::By => "Por",
        OfPrint::ByNobody => "sin nombre",
        OfPrint::UsualMicrometer => "Micrómetro, habitual",
        OfPrint::UsualIndicator => "Comparador, habitual",
        OfPrint::RoughnessTester => "Rugosímetro, habitual",
        OfPrint::WorkAt => "Pieza",
        OfPrint::RoomAt => "Taller",
        OfPrint::UncertaintySays => {
            "Las medidas valen a 20 °C. Se cuenta: error, escala y dispersión del instrumento, su ajuste, calor, forma."
        }
        OfPrint::Times => "Tiempos",
        OfPrint::First => "Primera entrada",
        OfPrint::Last => "Última entrada",
        OfPrint::Worked => "Trabajado, según el reloj",
        OfPrint::ClockBroken => "El reloj se atrasó o corrió más de un día: ese tiempo no cuenta.",
        OfPrint::PrintReport => "Imprimir informe",
        OfPrint::ShareTitle => "La pieza, de vuelta",
        OfPrint::ShareLink => "Compartir el informe",
        OfPrint::ShareSays => {
            "El enlace lleva pieza, registro e instrumentos. Torno, herramienta, velocidades y tarifas se quedan aquí."
        }
        OfPrint::ExportsTitle => "Archivos para otros programas",
        OfPrint::SaveDxf => "Guardar DXF",
        OfPrint::SavePasses => "Pasadas en CSV",
        OfPrint::SaveReadings => "Lecturas en CSV",
        OfPrint::SaveRecord => "Registro en CSV",
        OfPrint::SaveJson => "Trabajo en JSON",
        OfPrint::JsonSays => "JSON lleva el trabajo entero, con torno, herramienta y tarifas.",
        OfPrint::JsonBackSays => {
            "JSON lleva lo mismo que el enlace del informe: ni torno, ni herramienta, ni tarifas."
        }
        OfPrint::MarkLabel => "Signo decimal en CSV",
        OfPrint::Mark(DecimalMark::Point) => "Punto: 25.4",
        OfPrint::Mark(DecimalMark::Comma) => "Coma: 25,4",
    }
}

pub(in crate::page::words) fn printed_on(words: Words, moment: Moment) -> String {
    format!("Informe del {}", words.date_time(moment))
}

pub(in crate::page::words) fn passes_continued(_: Words, page: usize, of: usize) -> String {
    format!("Pasadas, continuación: página {page} de {of}")
}

pub(in crate::page::words) fn steps_open(_: Words, open: &[&str], all: bool) -> String {
    let open = open.join(", ");
    if all {
        format!("El trabajo no está acabado. Falta: {open}.")
    } else {
        format!("El trabajo no está acabado. Falta al menos: {open}.")
    }
}

pub(in crate::page::words) fn of_readings(words: Words, count: u32) -> String {
    format!("de {}", words.many(count, "lectura", "lecturas"))
}

pub(in crate::page::words) fn verdict_told(_: Words, verdict: &Verdict) -> Option<String> {
    let said = match verdict.is {
        VerdictIs::In => return None,
        VerdictIs::Over => "Mayor de lo permitido, demostrado.",
        VerdictIs::Under => "Menor de lo permitido, demostrado.",
        VerdictIs::NotProven => {
            "Estas lecturas no demuestran ni que la tolerancia se cumple ni que no."
        }
        VerdictIs::TooCoarse => {
            "El instrumento es demasiado basto para esta tolerancia: aquí no demuestra nada."
        }
        VerdictIs::NotMeasured => "Aquí no se midió nada, así que no se dice nada.",
    };
    Some(said.to_owned())
}

pub(in crate::page::words) fn cuts_done(
    words: Words,
    cuts: &CutsDone,
    first: &str,
    last: &str,
) -> String {
    let kind = words.cut_made(cuts.kind);
    let often = words.many(cuts.count, "vez", "veces");
    if first == last {
        format!("{kind}: {often}, {first}")
    } else {
        format!("{kind}: {often}, de {first} a {last}")
    }
}

pub(in crate::page::words) fn used(words: Words, error: &str, readings: u32) -> String {
    let readings = words.many(readings, "lectura", "lecturas");
    format!("error permitido ± {error}, {readings}")
}

pub(in crate::page::words) fn work_at(words: Words, range: Option<[Temperature; 2]>) -> String {
    match range {
        None => "no medida, se toma la del taller".to_owned(),
        Some([low, high]) if low == high => words.warm(low),
        Some([low, high]) => words.range(&words.warm(low), &words.warm(high)),
    }
}

pub(in crate::page::words) fn room_at(words: Words, room: Option<&Entered<Temperature>>) -> String {
    match room {
        Some(room) => words.entered(room),
        None => "no medido, se toman 20\u{a0}°C".to_owned(),
    }
}
