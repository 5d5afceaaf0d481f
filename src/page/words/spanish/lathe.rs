//! Spanish: fixed texts of the work at the lathe, and the keypad.

use skimwright::job::{Change, Instrument, InstrumentKind};
use skimwright::measuring::{VerdictIs, WhyMeasure};

use super::{fields, lathe_steps};
use crate::page::lathe::{PadFor, PadPlace, PadSlot, PadWrong, Thumb};
use crate::page::words::{OfLathe, SkipReason, WhyStopText, Words};

#[expect(
    clippy::too_many_lines,
    reason = "one text a line, nothing to take apart"
)]
pub(super) const fn text(text: OfLathe) -> &'static str {
    match text {
        OfLathe::StepsLabel => "Pasos",
        OfLathe::Step(step) => lathe_steps::name(step),
        OfLathe::How(how) => lathe_steps::how(how),
        OfLathe::Warning(warning) => lathe_steps::warning(warning),
        OfLathe::WatchLabel => "Ojo",
        OfLathe::CautionsTitle => "Ojo también",
        OfLathe::ActionsLabel => "Qué hacer con este paso",
        OfLathe::Start => "Empezar",
        OfLathe::GoOn => "Seguir",
        OfLathe::Pause => "Pausa",
        OfLathe::Done => "Hecho",
        OfLathe::Skip => "Omitir",
        OfLathe::Back => "Atrás",
        OfLathe::Next => "Siguiente",
        OfLathe::Reopen => "Repetir",
        OfLathe::SkipQuestion => "¿Por qué se omite?",
        OfLathe::SkipReady(reason) => match reason {
            SkipReason::NotNeeded => "No hace falta",
            SkipReason::DoneBefore => "Ya estaba hecho",
            SkipReason::DoneElsewhere => "Hecho en otro sitio",
            SkipReason::Later => "Viene después",
        },
        OfLathe::SkipWhy => "Otro motivo",
        OfLathe::SkipYes => "Omitirlo",
        OfLathe::SkipNo => "Hacerlo igualmente",
        OfLathe::GoesOn => "Este paso está hecho: lo que sigue es del siguiente.",
        OfLathe::AllDone => "Todos los pasos están hechos u omitidos.",
        OfLathe::NoFigure => "Aquí no hay nada que ajustar.",
        OfLathe::NoSteps => "El plan aún no tiene pasos: mira sus observaciones.",
        OfLathe::ClockBroken => {
            "El reloj del aparato se atrasó, o esto duró más de un día: su tiempo no cuenta."
        }
        OfLathe::Overtime => "El tiempo previsto ha pasado.",
        OfLathe::HandlingTitle => "Esta pantalla",
        OfLathe::ThumbLabel => "Botones para el",
        OfLathe::Thumb(Thumb::Left) => "Pulgar izquierdo",
        OfLathe::Thumb(Thumb::Right) => "Pulgar derecho",
        OfLathe::AlarmLabel => "Al pasar el tiempo previsto",
        OfLathe::AlarmOn => "Sonar y vibrar",
        OfLathe::AlarmOff => "Callar",
        OfLathe::AwakeYes => "La pantalla sigue encendida mientras estés aquí.",
        OfLathe::AwakeAsked => "Pidiendo al navegador que deje la pantalla encendida.",
        OfLathe::AwakeRefused => {
            "El navegador no deja ahora la pantalla encendida, quizá por la batería. Ajústalo en el aparato."
        }
        OfLathe::AwakeUnknown => {
            "Este navegador no sabe dejar la pantalla encendida. Pon más tiempo en el aparato."
        }
        OfLathe::RecordFull => {
            "En el registro no cabe más. No se añadió nada; lo que hay se queda."
        }
        OfLathe::MeasureWhy(why) => match why {
            WhyMeasure::First => "Mide antes de la primera pasada.",
            WhyMeasure::AfterCut => "Se dio una pasada: mide lo que dejó.",
            WhyMeasure::TooWarm => {
                "Deja que se enfríe y mide: está demasiado caliente para lo que queda."
            }
            WhyMeasure::ToSettle => "Mide una vez más: eso puede decidirlo.",
        },
        OfLathe::Stop => "Alto",
        OfLathe::StopWhy(why) => match why {
            WhyStopText::InTolerance => "Tolerancia cumplida, demostrado. No cortes más.",
            WhyStopText::NotProven => {
                "Probablemente en tolerancia, pero estas lecturas no lo prueban. Ninguna pasada lo hace más seguro."
            }
            WhyStopText::Under => "Por debajo del límite inferior. No cortes más.",
            WhyStopText::NoSafeCut => {
                "Con la menor pasada posible lo más probable es estropearla. No cortes más."
            }
            WhyStopText::Missing => "Aún no se puede decir nada.",
        },
        OfLathe::DialOnDiameter => "mete, en diámetro",
        OfLathe::DialOnSlide => "mete, en el carro",
        OfLathe::DialNothing => "no metas nada: el mismo ajuste otra vez",
        OfLathe::SpringTitle => "Pasada en vacío",
        OfLathe::PolishOff => "por pulir, del diámetro",
        OfLathe::Answer => "Responde antes sobre la última lectura.",
        OfLathe::Speed => "Velocidad de giro",
        OfLathe::Feed => "Avance",
        OfLathe::DiameterAfter => "Diámetro después",
        OfLathe::SizeNow => "Diámetro ahora",
        OfLathe::Under => "Bajo medida",
        OfLathe::CutsLeft => "Pasadas que quedan, con esta",
        OfLathe::Measure | OfLathe::MeasureWhen => "Medir",
        OfLathe::ExpectedDiameter => "Se espera, más o menos",
        OfLathe::MadeCut => "Pasada dada",
        OfLathe::OtherInfeed => "Otra penetración",
        OfLathe::MadeSpring => "Pasada en vacío dada",
        OfLathe::MadePolish => "He pulido",
        OfLathe::ChangedTitle => "Algo cambió",
        OfLathe::ChangedLead => "Entonces una penetración puede quitar más o menos que antes.",
        OfLathe::Change(change) => match change {
            Change::NewEdge => "Filo nuevo",
            Change::HeldAgain => "Sujeta de nuevo",
            Change::DialSet => "Tambor reajustado",
            Change::OtherFeed => "Otro avance o giro",
        },
        OfLathe::Note => "Nota",
        OfLathe::NoteKeep => "Guardar nota",
        OfLathe::TakesTitle => "Lo que quita una penetración",
        OfLathe::ReadingsTitle => "Leído desde la última pasada",
        OfLathe::EarlierTitle => "Antes",
        OfLathe::NoReadings => "Aún no se ha leído nada.",
        OfLathe::Strike => "Tachar",
        OfLathe::Bring => "Recuperar",
        OfLathe::Struck => "Tachado: ",
        OfLathe::DoubtTitle => "¿Es correcta esta lectura?",
        OfLathe::DoubtRight => "Es correcta",
        OfLathe::DoubtStrike => "Tacharla",
        OfLathe::PadTitle(of) | OfLathe::PadName(of) => {
            pad_name(of, matches!(text, OfLathe::PadTitle(_)))
        }
        OfLathe::PadWhat => "Qué se midió",
        OfLathe::PadPlaceLabel => "Dónde",
        OfLathe::Place(place) => match place {
            PadPlace::NearShoulder => "Cerca del resalte",
            PadPlace::Middle => "Medio",
            PadPlace::FreeEnd => "Extremo libre",
            PadPlace::At => "En …",
        },
        OfLathe::PadSlot(slot) => match slot {
            PadSlot::Value => "Valor",
            PadSlot::Position => "Desde el resalte",
            PadSlot::Temperature => "Temp. de la pieza",
        },
        OfLathe::PadInstrument => "Instrumento",
        OfLathe::UsualMicrometer => "Micrómetro, habitual",
        OfLathe::PadRoom => "como el taller",
        OfLathe::PadKeep => "Guardar",
        OfLathe::PadErase => "Borrar",
        OfLathe::PadMark => "Signo decimal",
        OfLathe::PadKeys => "Teclas",
        OfLathe::PadPlain => "El número entero, con su coma.",
        OfLathe::ParallelTitle => "¿Cilíndrico?",
        OfLathe::NotTold => {
            "Las lecturas no lo dicen. Lee cerca del resalte y en el extremo libre, más de una vez cada uno."
        }
        OfLathe::Parallel => "Cilíndrico, hasta donde pide la tolerancia.",
        OfLathe::VerdictTitle => "¿Tolerancia cumplida?",
        OfLathe::Verdict(is) => match is {
            VerdictIs::In => "Cumplida",
            VerdictIs::Over => "De más",
            VerdictIs::Under => "De menos",
            VerdictIs::NotProven => "No demostrada",
            VerdictIs::TooCoarse => "Medida muy basta",
            VerdictIs::NotMeasured => "No medida",
        },
        OfLathe::NothingAsked => "No se pide tolerancia.",
        OfLathe::Limits => "Límites",
        OfLathe::Showing => "Cálculo",
    }
}

const fn pad_name(of: PadFor, title: bool) -> &'static str {
    match of {
        PadFor::Diameter(_) => "Diámetro",
        PadFor::Length => "Longitud",
        PadFor::Runout => "Salto",
        PadFor::Roughness if title => "Rugosidad Ra",
        PadFor::Roughness => "Rugosidad",
        PadFor::Infeed(_) if title => "Penetración, como marca el tambor",
        PadFor::Infeed(_) => "Penetración",
    }
}

pub(in crate::page::words) fn instrument(_: Words, instrument: &Instrument) -> String {
    let name = instrument.name.trim();
    if name.is_empty() {
        match instrument.kind {
            InstrumentKind::Micrometer => "Micrómetro",
            InstrumentKind::Calliper => "Calibre",
            InstrumentKind::Indicator => "Comparador",
            InstrumentKind::Gauge => "Comparación",
        }
        .to_owned()
    } else {
        name.to_owned()
    }
}

pub(in crate::page::words) fn pad_before(_: Words, before: &str, unit: &str) -> String {
    format!("Se espera {before}\u{a0}{unit}. Sin coma, las cifras sustituyen a las últimas.")
}

pub(in crate::page::words) fn pad_wrong(_: Words, wrong: &PadWrong) -> String {
    match wrong {
        PadWrong::Unread(error) => fields::unread(error),
        PadWrong::OutOfBounds => "No puede ser: mira la coma.".to_owned(),
    }
}
