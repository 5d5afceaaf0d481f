//! German: fixed texts of the work at the lathe, and the keypad.

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
        OfLathe::StepsLabel => "Schritte",
        OfLathe::Step(step) => lathe_steps::name(step),
        OfLathe::How(how) => lathe_steps::how(how),
        OfLathe::Warning(warning) => lathe_steps::warning(warning),
        OfLathe::WatchLabel => "Achtung",
        OfLathe::CautionsTitle => "Auch beachten",
        OfLathe::ActionsLabel => "Was mit diesem Schritt zu tun ist",
        OfLathe::Start => "Anfangen",
        OfLathe::GoOn => "Weiter",
        OfLathe::Pause => "Pause",
        OfLathe::Done => "Erledigt",
        OfLathe::Skip | OfLathe::SkipYes => "Auslassen",
        OfLathe::Back => "Zurück",
        OfLathe::Next => "Nächster",
        OfLathe::Reopen => "Noch einmal",
        OfLathe::SkipQuestion => "Warum wird er ausgelassen?",
        OfLathe::SkipReady(reason) => match reason {
            SkipReason::NotNeeded => "Nicht nötig",
            SkipReason::DoneBefore => "Schon erledigt",
            SkipReason::DoneElsewhere => "Anderswo erledigt",
            SkipReason::Later => "Kommt später",
        },
        OfLathe::SkipWhy => "Ein anderer Grund",
        OfLathe::SkipNo => "Doch tun",
        OfLathe::GoesOn => "Dieser Schritt ist erledigt: Was nun kommt, gehört zum nächsten.",
        OfLathe::AllDone => "Alle Schritte sind erledigt oder ausgelassen.",
        OfLathe::NoFigure => "Hier ist nichts einzustellen.",
        OfLathe::NoSteps => "Noch keine Schritte: Die Befunde im Plan sagen, warum.",
        OfLathe::ClockBroken => {
            "Die Uhr des Geräts wurde zurückgestellt, oder es lief länger als einen Tag: Diese Zeit zählt nicht."
        }
        OfLathe::Overtime => "Die geplante Zeit ist um.",
        OfLathe::HandlingTitle => "Dieser Bildschirm",
        OfLathe::ThumbLabel => "Knöpfe für den",
        OfLathe::Thumb(Thumb::Left) => "Linken Daumen",
        OfLathe::Thumb(Thumb::Right) => "Rechten Daumen",
        OfLathe::AlarmLabel => "Wenn die geplante Zeit um ist",
        OfLathe::AlarmOn => "Ton und Vibration",
        OfLathe::AlarmOff => "Still bleiben",
        OfLathe::AwakeYes => "Der Bildschirm bleibt an, solange diese Seite offen ist.",
        OfLathe::AwakeAsked => "Der Browser wird gebeten, den Bildschirm anzulassen.",
        OfLathe::AwakeRefused => {
            "Der Browser lässt den Bildschirm jetzt nicht an, vielleicht wegen des Akkus. Im Gerät einstellen."
        }
        OfLathe::AwakeUnknown => {
            "Dieser Browser kann den Bildschirm nicht anlassen. Im Gerät eine längere Zeit einstellen."
        }
        OfLathe::RecordFull => "Das Protokoll ist voll. Nichts kam hinzu; was darin steht, bleibt.",
        OfLathe::MeasureWhy(why) => match why {
            WhyMeasure::First => "Vor dem ersten Schnitt messen.",
            WhyMeasure::AfterCut => "Ein Schnitt wurde gemacht: messen, was er stehen ließ.",
            WhyMeasure::TooWarm => {
                "Abkühlen lassen, dann messen: Für das, was noch dran ist, ist es zu warm."
            }
            WhyMeasure::ToSettle => "Noch einmal messen: Das entscheidet es vielleicht.",
        },
        OfLathe::Stop => "Halt",
        OfLathe::StopWhy(why) => match why {
            WhyStopText::InTolerance => "Toleranz nachweislich eingehalten. Nichts mehr abdrehen.",
            WhyStopText::NotProven => {
                "Wohl in der Toleranz, aber diese Messungen weisen es nicht nach. Kein Schnitt macht es sicherer."
            }
            WhyStopText::Under => "Unter dem Mindestmaß. Nichts mehr abdrehen.",
            WhyStopText::NoSafeCut => {
                "Der kleinste mögliche Schnitt macht es eher zu Ausschuss als nicht. Nichts mehr abdrehen."
            }
            WhyStopText::Missing => "Noch lässt sich nichts sagen.",
        },
        OfLathe::DialOnDiameter => "zustellen, im Durchmesser",
        OfLathe::DialOnSlide => "zustellen, am Schlitten",
        OfLathe::DialNothing => "nichts zustellen: dieselbe Einstellung noch einmal",
        OfLathe::SpringTitle => "Leerschnitt",
        OfLathe::PolishOff => "abpolieren, vom Durchmesser",
        OfLathe::Answer => "Erst zur letzten Messung antworten.",
        OfLathe::Speed => "Drehzahl",
        OfLathe::Feed => "Vorschub",
        OfLathe::DiameterAfter => "Durchmesser danach",
        OfLathe::SizeNow => "Durchmesser jetzt",
        OfLathe::Under => "Untermaß",
        OfLathe::CutsLeft => "Schnitte übrig, mit diesem",
        OfLathe::Measure | OfLathe::MeasureWhen => "Messen",
        OfLathe::ExpectedDiameter => "Erwartet, etwa",
        OfLathe::MadeCut => "Schnitt gemacht",
        OfLathe::OtherInfeed => "Anders zugestellt",
        OfLathe::MadeSpring => "Leerschnitt gemacht",
        OfLathe::MadePolish => "Poliert",
        OfLathe::ChangedTitle => "Etwas ist anders",
        OfLathe::ChangedLead => {
            "Dann nimmt eine Zustellung vielleicht mehr oder weniger ab als vorher."
        }
        OfLathe::Change(change) => match change {
            Change::NewEdge => "Neue Schneide",
            Change::HeldAgain => "Neu gespannt",
            Change::DialSet => "Skala neu gestellt",
            Change::OtherFeed => "Vorschub, Drehzahl neu",
        },
        OfLathe::Note => "Notiz",
        OfLathe::NoteKeep => "Notiz behalten",
        OfLathe::TakesTitle => "Was eine Zustellung abnimmt",
        OfLathe::ReadingsTitle => "Gemessen seit dem letzten Schnitt",
        OfLathe::EarlierTitle => "Früher",
        OfLathe::NoReadings => "Noch nichts gemessen.",
        OfLathe::Strike | OfLathe::DoubtStrike => "Streichen",
        OfLathe::Bring => "Zurückholen",
        OfLathe::Struck => "Gestrichen: ",
        OfLathe::DoubtTitle => "Stimmt diese Messung?",
        OfLathe::DoubtRight => "Sie stimmt",
        OfLathe::PadTitle(of) | OfLathe::PadName(of) => {
            pad_name(of, matches!(text, OfLathe::PadTitle(_)))
        }
        OfLathe::PadWhat => "Was gemessen wurde",
        OfLathe::PadPlaceLabel => "Wo",
        OfLathe::Place(place) => match place {
            PadPlace::NearShoulder => "Nahe der Schulter",
            PadPlace::Middle => "Mitte",
            PadPlace::FreeEnd => "Freies Ende",
            PadPlace::At => "Bei …",
        },
        OfLathe::PadSlot(slot) => match slot {
            PadSlot::Value => "Wert",
            PadSlot::Position => "Ab Schulter",
            PadSlot::Temperature => "Temp. des Teils",
        },
        OfLathe::PadInstrument => "Messmittel",
        OfLathe::UsualMicrometer => "Messschraube, üblich",
        OfLathe::PadRoom => "wie der Raum",
        OfLathe::PadKeep => "Behalten",
        OfLathe::PadErase => "Löschen",
        OfLathe::PadMark => "Komma",
        OfLathe::PadKeys => "Tasten",
        OfLathe::PadPlain => "Die ganze Zahl, mit Komma.",
        OfLathe::ParallelTitle => "Zylindrisch?",
        OfLathe::NotTold => {
            "Die Messungen sagen es nicht. Nahe der Schulter und am freien Ende messen, je mehr als einmal."
        }
        OfLathe::Parallel => "Zylindrisch, soweit die Toleranz es verlangt.",
        OfLathe::VerdictTitle => "Toleranz eingehalten?",
        OfLathe::Verdict(is) => match is {
            VerdictIs::In => "Eingehalten",
            VerdictIs::Over => "Zu groß",
            VerdictIs::Under => "Zu klein",
            VerdictIs::NotProven => "Nicht nachgewiesen",
            VerdictIs::TooCoarse => "Zu grob gemessen",
            VerdictIs::NotMeasured => "Nicht gemessen",
        },
        OfLathe::NothingAsked => "Keine Toleranz verlangt.",
        OfLathe::Limits => "Grenzen",
        OfLathe::Showing => "Rechenweg",
    }
}

const fn pad_name(of: PadFor, title: bool) -> &'static str {
    match of {
        PadFor::Diameter(_) if title => "Durchmesser",
        PadFor::Diameter(_) => "Durchm.",
        PadFor::Length => "Länge",
        PadFor::Runout => "Rundlauf",
        PadFor::Roughness if title => "Rauheit Ra",
        PadFor::Roughness => "Rauheit",
        PadFor::Infeed(_) if title => "Zugestellt, wie die Skala zeigt",
        PadFor::Infeed(_) => "Zustellung",
    }
}

pub(in crate::page::words) fn instrument(_: Words, instrument: &Instrument) -> String {
    let name = instrument.name.trim();
    if name.is_empty() {
        match instrument.kind {
            InstrumentKind::Micrometer => "Messschraube",
            InstrumentKind::Calliper => "Messschieber",
            InstrumentKind::Indicator => "Messuhr",
            InstrumentKind::Gauge => "Feinzeiger",
        }
        .to_owned()
    } else {
        name.to_owned()
    }
}

pub(in crate::page::words) fn pad_before(_: Words, before: &str, unit: &str) -> String {
    format!("Erwartet {before}\u{a0}{unit}. Ohne Komma ersetzen Ziffern die letzten.")
}

pub(in crate::page::words) fn pad_wrong(_: Words, wrong: &PadWrong) -> String {
    match wrong {
        PadWrong::Unread(error) => fields::unread(error),
        PadWrong::OutOfBounds => "Das kann nicht sein: aufs Komma achten.".to_owned(),
    }
}
