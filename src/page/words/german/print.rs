//! German: the job sheet, the report that goes back, and files.

use skimwright::measuring::{Verdict, VerdictIs};
use skimwright::quantity::{Entered, Temperature};
use skimwright::sheet::DecimalMark;
use skimwright::work::CutsDone;

use crate::page::words::{Moment, OfPrint, Words};

pub(super) const fn text(text: OfPrint) -> &'static str {
    match text {
        OfPrint::SheetTitle => "Auftragsblatt",
        OfPrint::PrintSheet => "Auftragsblatt drucken",
        OfPrint::SheetSays => {
            "Ein Blatt für die Maschine: Zeichnung, Schritte, Schnitte, Vorsicht. Wer den Code darauf scannt, bekommt Teil, \
             Wunsch, Maschine, Werkzeug und Protokoll, aber keine Sätze."
        }
        OfPrint::InMillimetres => "Maße in mm",
        OfPrint::InInches => "Maße in Zoll",
        OfPrint::CodeLabel => "QR-Code dieses Auftrags",
        OfPrint::CodeSays(true) => "Öffnet diesen Auftrag samt Protokoll",
        OfPrint::CodeSays(false) => "Öffnet diesen Auftrag",
        OfPrint::CodeTooLong => {
            "Dieser Auftrag ist zu lang für einen Code. Mit seinem Link oder seiner Datei öffnen."
        }
        OfPrint::ByTable => "nach der Tabelle der Schnitte",
        OfPrint::Number => "Nr.",
        OfPrint::DialIn => "Zustellen",
        OfPrint::After => "⌀ danach",
        OfPrint::Read => "⌀ gemessen",
        OfPrint::GoesOn => "Weitere Schnitte auf der nächsten Seite.",
        OfPrint::BackBanner => {
            "Dieses Teil wird zurückgegeben. Hier bleibt nichts davon, es sei denn auf Wunsch."
        }
        OfPrint::BackSays => {
            "Das ist der Bericht der Werkstatt: was kam, was getan wurde, und was es jetzt misst."
        }
        OfPrint::BackKeep => "Auftrag behalten",
        OfPrint::BackLeave => "Bericht verlassen",
        OfPrint::NoRecord => {
            "An der Maschine wurde noch nichts eingetragen: Dieser Bericht weist nichts nach."
        }
        OfPrint::AsReceived => "Wie gekommen",
        OfPrint::AsLeft => "Wie abgegeben, gezeichnet nach Soll",
        OfPrint::NotReadBefore => "Vor dem ersten Schnitt nicht gemessen.",
        OfPrint::NotReadAfter => "Nach dem letzten Schnitt nicht gemessen.",
        OfPrint::NothingCut => {
            "Im Protokoll steht kein Schnitt: Gemessen wurde das Teil, wie es kam."
        }
        OfPrint::VerdictSays => {
            "± ist die erweiterte Messunsicherheit, k = 2: etwa 95 von 100. „Eingehalten“ heißt es nur, wo das Risiko \
             eines Irrtums höchstens 5 von 100 ist."
        }
        OfPrint::WhatWasDone => "Was getan wurde",
        OfPrint::NoSteps => "Kein Schritt wurde begonnen.",
        OfPrint::NoCuts => "Im Protokoll steht kein Schnitt.",
        OfPrint::Notes => "Notizen",
        OfPrint::Answer => "Antwort des Besitzers",
        OfPrint::MeasuredWith => "Gemessen mit",
        OfPrint::By => "Von",
        OfPrint::ByNobody => "kein Name angegeben",
        OfPrint::UsualMicrometer => "Bügelmessschraube, üblich",
        OfPrint::UsualIndicator => "Messuhr, üblich",
        OfPrint::RoughnessTester => "Rauheitsmessgerät, üblich",
        OfPrint::WorkAt => "Teil",
        OfPrint::RoomAt => "Raum",
        OfPrint::UncertaintySays => {
            "Maße gelten bei 20 °C. Mitgezählt: Messabweichung, Skala und Streuung des Messmittels, seine Einstellung, \
             Wärme, Form."
        }
        OfPrint::Times => "Zeiten",
        OfPrint::First => "Erster Eintrag",
        OfPrint::Last => "Letzter Eintrag",
        OfPrint::Worked => "Gearbeitet, nach der Uhr",
        OfPrint::ClockBroken => {
            "Die Uhr wurde zurückgestellt oder lief länger als einen Tag: Diese Zeit zählt nicht."
        }
        OfPrint::PrintReport => "Bericht drucken",
        OfPrint::ShareTitle => "Das Teil, zurückgegeben",
        OfPrint::ShareLink => "Link des Berichts teilen",
        OfPrint::ShareSays => {
            "Der Link enthält Teil, Protokoll und Messmittel. Maschine, Werkzeug, Drehzahlen und Sätze bleiben hier."
        }
        OfPrint::ExportsTitle => "Dateien für andere Programme",
        OfPrint::SaveDxf => "Als DXF sichern",
        OfPrint::SavePasses => "Schnitte als CSV",
        OfPrint::SaveReadings => "Messungen als CSV",
        OfPrint::SaveRecord => "Protokoll als CSV",
        OfPrint::SaveJson => "Auftrag als JSON",
        OfPrint::JsonSays => "JSON enthält den ganzen Auftrag, mit Maschine, Werkzeug und Sätzen.",
        OfPrint::JsonBackSays => {
            "JSON enthält, was der Link des Berichts enthält: keine Maschine, kein Werkzeug, keine Sätze."
        }
        OfPrint::MarkLabel => "Dezimalzeichen in CSV",
        OfPrint::Mark(DecimalMark::Point) => "Punkt: 25.4",
        OfPrint::Mark(DecimalMark::Comma) => "Komma: 25,4",
    }
}

pub(in crate::page::words) fn printed_on(words: Words, moment: Moment) -> String {
    format!("Bericht vom {}", words.date_time(moment))
}

pub(in crate::page::words) fn passes_continued(_: Words, page: usize, of: usize) -> String {
    format!("Schnitte, Fortsetzung: Seite {page} von {of}")
}

pub(in crate::page::words) fn steps_open(_: Words, open: &[&str], all: bool) -> String {
    let open = open.join(", ");
    if all {
        format!("Die Arbeit ist nicht fertig. Noch zu tun: {open}.")
    } else {
        format!("Die Arbeit ist nicht fertig. Noch zu tun ist mindestens: {open}.")
    }
}

pub(in crate::page::words) fn of_readings(words: Words, count: u32) -> String {
    format!("aus {}", words.many(count, "Messung", "Messungen"))
}

pub(in crate::page::words) fn verdict_told(_: Words, verdict: &Verdict) -> Option<String> {
    let said = match verdict.is {
        VerdictIs::In => return None,
        VerdictIs::Over => "Größer als erlaubt, nachgewiesen.",
        VerdictIs::Under => "Kleiner als erlaubt, nachgewiesen.",
        VerdictIs::NotProven => {
            "Diese Messungen weisen weder nach, dass die Toleranz eingehalten ist, noch, dass sie es nicht ist."
        }
        VerdictIs::TooCoarse => {
            "Das Messmittel ist zu grob für diese Toleranz: Es kann hier nichts nachweisen."
        }
        VerdictIs::NotMeasured => "Hier wurde nichts gemessen, also wird nichts gesagt.",
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
    let often = words.many(cuts.count, "Mal", "Mal");
    if first == last {
        format!("{kind}: {often}, {first}")
    } else {
        format!("{kind}: {often}, {first} bis {last}")
    }
}

pub(in crate::page::words) fn used(words: Words, error: &str, readings: u32) -> String {
    let readings = words.many(readings, "Messung", "Messungen");
    format!("Fehlergrenze ± {error}, {readings}")
}

pub(in crate::page::words) fn work_at(words: Words, range: Option<[Temperature; 2]>) -> String {
    match range {
        None => "nicht gemessen, so warm wie der Raum gerechnet".to_owned(),
        Some([low, high]) if low == high => words.warm(low),
        Some([low, high]) => words.range(&words.warm(low), &words.warm(high)),
    }
}

pub(in crate::page::words) fn room_at(words: Words, room: Option<&Entered<Temperature>>) -> String {
    match room {
        Some(room) => words.entered(room),
        None => "nicht gemessen, mit 20\u{a0}°C gerechnet".to_owned(),
    }
}
