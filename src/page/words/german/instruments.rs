//! German: measuring instruments, and what jobs taught of the lathe.

use skimwright::job::{Instrument, InstrumentField, InstrumentKind};

use super::lathe_steps;
use crate::page::shelf::Lesson;
use crate::page::words::OfInstruments;

pub(super) const fn label(field: InstrumentField) -> &'static str {
    match field {
        InstrumentField::Name => "Name des Messmittels",
        InstrumentField::Kind => "Messmittel",
        InstrumentField::Graduation => "Skalenteil, oder Ziffernschritt",
        InstrumentField::PermissibleError => "Fehlergrenze, plus/minus",
        InstrumentField::Reference => "Eingestellt oder verglichen auf",
        InstrumentField::Repeat => "Streuung wiederholter Messungen",
    }
}

pub(super) const fn hint(field: InstrumentField) -> Option<&'static str> {
    Some(match field {
        InstrumentField::Graduation => "Wie angeschrieben. Leer: üblich für seine Art.",
        InstrumentField::PermissibleError => {
            "Aus Papieren oder Kalibrierung. Leer: was die Norm für seine Art und das Maß erlaubt."
        }
        InstrumentField::Reference => {
            "Endmaß oder Einstellnormal nahe dem gemessenen Maß: dann zählt nur der Unterschied. Darf leer bleiben."
        }
        InstrumentField::Repeat => {
            "Standardabweichung von zehn Messungen an einer Stelle. Leer: üblich für seine Art."
        }
        InstrumentField::Name | InstrumentField::Kind => return None,
    })
}

pub(super) const ROOM: &str = "Raumtemperatur";

pub(super) const ROOM_HINT: &str =
    "Auch von Teil und Messmitteln, wo die Messung nichts anderes sagt. Leer: 20 °C.";

/// The name of an instrument, counted from 1.
pub(in crate::page::words) fn title(index: u8) -> String {
    format!("Messmittel {}", u16::from(index) + 1)
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
        InstrumentKind::Micrometer => "Bügelmessschraube",
        InstrumentKind::Calliper => "Messschieber",
        InstrumentKind::Indicator => "Messuhr",
        InstrumentKind::Gauge => "Feinzeiger, nach Einstellnormal",
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
        "1 Schnitt".to_owned()
    } else {
        format!("{cuts} Schnitten")
    };
    format!(
        "Vom Zugestellten gehen {share} ± {share_deviation} ab, und außerdem {offset} ± {offset_deviation} vom \
         Durchmesser. Aus {cuts}."
    )
}

pub(in crate::page::words) fn pace(factor: &str, jobs: &str) -> String {
    let from = if jobs == "1" {
        "1 Auftrag".to_owned()
    } else {
        format!("{jobs} Aufträgen")
    };
    format!("{factor} der üblichen Zeit, aus {from}")
}

pub(in crate::page::words) const fn lesson(lesson: Lesson) -> &'static str {
    match lesson {
        Lesson::Takes => "Was eine Zustellung abnimmt",
        Lesson::Pace(step) => lathe_steps::name(step),
    }
}

pub(in crate::page::words) fn by_own_times(names: &[&str]) -> String {
    format!(
        "Nach eigenen Zeiten an dieser Maschine, aus früheren Aufträgen: {}.",
        names.join(", ")
    )
}

/// What is asked before something that was learned is forgotten.
pub(super) fn ask_forget(name: &str) -> String {
    format!(
        "Vergessen, was diese Maschine zu „{name}“ gelehrt hat? Pläne rechnen wieder wie üblich. Eine gemerkte Maschine \
         bleibt, wie sie ist, bis sie neu gemerkt wird."
    )
}

pub(super) const fn text(text: OfInstruments) -> &'static str {
    match text {
        OfInstruments::Title => "Messmittel",
        OfInstruments::Lead => {
            "Was eine Messung wert ist, hängt am Messmittel. Ohne Angabe gilt eine übliche Bügelmessschraube."
        }
        OfInstruments::NoneYet => "Noch keines.",
        OfInstruments::Add(InstrumentKind::Micrometer) => "Messschraube dazu",
        OfInstruments::Add(InstrumentKind::Calliper) => "Messschieber dazu",
        OfInstruments::Add(InstrumentKind::Indicator) => "Messuhr dazu",
        OfInstruments::Add(InstrumentKind::Gauge) => "Feinzeiger dazu",
        OfInstruments::Kind(of) => kind(of),
        OfInstruments::Used => "Es wurde damit gemessen, darum bleibt es.",
        OfInstruments::LearnedTitle => "Was diese Maschine gelehrt hat",
        OfInstruments::LearnedLead => {
            "Aus Aufträgen an ihr. Es geht mit der Maschine in den nächsten Auftrag und bringt den Plan näher an den \
             eigenen Alltag."
        }
        OfInstruments::NothingLearned => {
            "Noch nichts. Einen Auftrag unter „Drehen“ abarbeiten, dann behalten, was er lehrt."
        }
        OfInstruments::Takes => lesson(Lesson::Takes),
        OfInstruments::Paces => "Zeiten der Schritte",
        OfInstruments::Forget => "Vergessen",
        OfInstruments::Teach => "Gelerntes behalten",
        OfInstruments::TeachNote => {
            "Wie lange die Schritte dauerten, geht mit dieser Maschine, auch in die gemerkte mit ihrem Namen."
        }
    }
}
