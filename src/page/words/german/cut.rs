//! German: passes and what limits them, the steps of a rework, fixed texts of holding and finishing.

use skimwright::costing::Step;
use skimwright::cutting::{ChipVerdict, HeldBy, Limit, Pass, Saving};
use skimwright::job::TimeBound;

use crate::page::words::{OfCut, Text, Words};

pub(super) const fn text(text: OfCut) -> &'static str {
    match text {
        OfCut::Limit(limit) => limit_name(limit),
        OfCut::Pinned => "fest",
        OfCut::FreshEdge => "vorher neue Schneide",
        OfCut::Knocks => "schlägt: unterbrochen",
        OfCut::Core => "Kern, unter der Schicht",
        OfCut::Loads => "Wie weit jede Grenze genutzt ist",
        OfCut::Along => "Kraft längs, höchstens",
        OfCut::Across => "Kraft quer, höchstens",
        OfCut::CuttingSpeed => "Schnittgeschwindigkeit",
        OfCut::Roughness => "Rauheit Ra, gedreht",
        OfCut::EdgeUsed => "Verbrauch einer Schneide",
        OfCut::Chip => "Span",
        OfCut::ChipVerdict(verdict) => chip(verdict),
        OfCut::Pin => "Schnitt festlegen",
        OfCut::Unpin => "Freigeben",
        OfCut::Estimates => {
            "Kräfte, Leistung, Rauheit und Verschleiß sind Schätzungen; der Plan hält sich ans vorsichtige Ende."
        }
        OfCut::DialReadsDiameter => {
            "Die Skala zeigt Durchmesser: Was eingestellt wird, geht vom Durchmesser ab, und der Schlitten fährt die \
             Hälfte, die Zustellung. Länge ist die des getroffenen Metalls."
        }
        OfCut::DialReadsRadius => {
            "Die Skala zeigt den Weg des Schlittens: Vom Durchmesser geht das Doppelte des Eingestellten ab. Länge ist \
             die des getroffenen Metalls."
        }
        OfCut::SavingsTitle => "Was helfen würde",
        OfCut::SavingsLead => {
            "Was die Schnitte geschätzt sparen, wäre eine Grenze um ein Viertel weiter."
        }
        OfCut::NoSavings => "Ein Viertel mehr an einer Grenze allein spart keine Zeit.",
        OfCut::HoldingTitle => "Einspannung im Schnitt",
        OfCut::Held => "Gespannt",
        OfCut::Gripped => "Gefasst",
        OfCut::SticksOut => "Kragt aus",
        OfCut::GripTitle => "Spannkraft",
        OfCut::JawsHold => "Die Backen halten, geschätzt",
        OfCut::CutNeeds => "Der schwerste Schnitt braucht, mit Sicherheit",
        OfCut::CentreTitle => "Körnerspitze",
        OfCut::Thrust => "Andrücken mit, geschätzt",
        OfCut::DialTitle => "Was die Messuhr sagt",
        OfCut::RunoutNear => "Rundlauf am Futter",
        OfCut::RunoutFar => "Rundlauf weiter außen",
        OfCut::OneLine => {
            "An zwei Stellen gegenüber abgelesen, sagt es nur etwas über diese Linie: die anderen zwei auch ablesen."
        }
        OfCut::FlatJaws => "Beilage, breite Backen",
        OfCut::NarrowJaws => "Beilage, schmale Backen",
        OfCut::Packing => "Beilage",
        OfCut::FinishTitle => "Schulter, Ende, Oberfläche",
        OfCut::FilletTitle => "Radius",
        OfCut::FromFace => "Ab Planfläche",
        OfCut::InfeedLeft => "Zust. übrig",
        OfCut::Divisions => "Striche zu",
        OfCut::ChamferTitle => "Fase",
        OfCut::PolishTitle => "Polieren",
        OfCut::FineTitle => "Feinzustellung",
        OfCut::CareKnocks => {
            "Unterbrochener Schnitt mit harter Schneide: Sie kann ausbrechen und fliegen. Schutzhaube zu, nicht in ihrer \
             Bahn stehen, langsamer, zähe Sorte."
        }
        OfCut::CareGrinding => {
            "Schleifen: Maske, Führungen abdecken; Scheibe nie schneller als angeschrieben, beim Anlaufen beiseite \
             stehen."
        }
        OfCut::CareLong => {
            "Ungestützte Länge kann schlagen und aus den Backen klettern: langsam anfahren und das Ende stützen."
        }
        OfCut::CareChuck => "Das Futter nie schneller drehen, als angeschrieben ist.",
    }
}

const fn chip(verdict: ChipVerdict) -> &'static str {
    match verdict {
        ChipVerdict::ShortByNature => "von Natur kurz",
        ChipVerdict::Breaks => "bricht",
        ChipVerdict::MayBeLong => "wird vielleicht lang: Vorschub ab und zu aussetzen",
        ChipVerdict::Stringy => "Wirr- oder Bandspan: anhalten, Spänehaken nehmen, nie die Hand",
    }
}

const fn limit_name(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "Tiefe",
        Limit::Feed => "Vorschub",
        Limit::Finish => "Oberfläche",
        Limit::CuttingSpeed => "Schnittgeschwindigkeit",
        Limit::ToolLife => "Standzeit",
        Limit::SpindleSpeed => "Drehzahl",
        Limit::Power => "Leistung",
        Limit::Torque => "Moment",
        Limit::Grip => "Spannkraft",
        Limit::Deflection => "Nachgeben",
    }
}

pub(in crate::page::words) fn pass_title(words: Words, number: u32, pass: &Pass) -> String {
    let kind = words.say(Text::PassKind(pass.kind));
    format!(
        "Schnitt {number}, {kind}, auf ⌀{}",
        words.size(pass.diameter_after)
    )
}

pub(in crate::page::words) fn held_by(by: HeldBy) -> String {
    let said = [
        ("Tiefe", by.depth),
        ("Vorschub", by.feed),
        ("Geschwindigkeit", by.speed),
    ]
    .into_iter()
    .filter_map(|(what, limit)| Some(format!("{what} – {}", limit_name(limit?))))
    .collect::<Vec<_>>();
    if said.is_empty() {
        "Von nichts begrenzt, was hier gerechnet wird.".to_owned()
    } else {
        format!("Begrenzt durch: {}.", said.join(", "))
    }
}

pub(in crate::page::words) fn saving(saving: &Saving) -> String {
    format!("spart {}", skimwright::quantity::show::time(saving.time))
}

/// What limits a cut, inside a sentence, as its subject.
pub(super) const fn limit_inside(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "die Tiefe des Werkzeugs",
        Limit::Feed => "der Vorschub des Werkzeugs",
        Limit::Finish => "die Oberflächengüte",
        Limit::CuttingSpeed => "die Schnittgeschwindigkeit",
        Limit::ToolLife => "die Standzeit",
        Limit::SpindleSpeed => "die Drehzahl",
        Limit::Power => "die Leistung",
        Limit::Torque => "das Drehmoment",
        Limit::Grip => "die Spannkraft",
        Limit::Deflection => "das Nachgeben",
    }
}

/// What makes room where a limit forbids every pass.
pub(super) const fn ease(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "Ein Werkzeug für solche Tiefe nehmen, oder tiefere Zustellung erlauben.",
        Limit::Feed => {
            "So feinen Vorschub hat die Maschine nicht: Liste prüfen, oder anderes Werkzeug nehmen."
        }
        Limit::Finish => {
            "Größeren Eckenradius oder feineren Vorschub nehmen, oder rauere Fläche erlauben."
        }
        Limit::CuttingSpeed => {
            "So langsam dreht die Maschine nicht: Liste prüfen, oder anderes Werkzeug nehmen."
        }
        Limit::ToolLife => "Langsamer drehen oder härteres Werkzeug nehmen.",
        Limit::SpindleSpeed => {
            "Die Liste der Drehzahlen mit den Höchstdrehzahlen von Futter und Teil vergleichen."
        }
        Limit::Power => "Motorleistung prüfen, oder feineren Vorschub nehmen.",
        Limit::Torque => "Drehmoment prüfen, oder feineren Vorschub nehmen.",
        Limit::Grip => "Fester oder länger spannen, oder das Ende stützen; so nicht drehen.",
        Limit::Deflection => {
            "Leichter schlichten, weniger auskragen lassen, oder das Ende stützen."
        }
    }
}

pub(in crate::page::words) const fn step(step: Step) -> &'static str {
    match step {
        Step::ReceiveAndCheck => "Annehmen und prüfen",
        Step::Hold => "Teil spannen",
        Step::DialIn => "Ausrichten",
        Step::CutOff => "Abtrennen",
        Step::Face => "Plandrehen",
        Step::Centre => "Zentrieren",
        Step::SetDepth => "Zustellen",
        Step::Return => "Rücklauf",
        Step::Measure => "Messen",
        Step::ToolChange => "Werkzeugwechsel",
        Step::Regrind => "Schneide schleifen",
        Step::Polish => "Polieren",
        Step::Chamfer => "Anfasen, entgraten",
        Step::Clean => "Reinigen und ölen",
        Step::FinalCheck => "Endprüfung",
        Step::Pack => "Verpacken",
    }
}

pub(super) const fn time_bound(bound: TimeBound) -> &'static str {
    match bound {
        TimeBound::Low => "Mindestens",
        TimeBound::Likely => "In der Regel",
        TimeBound::High => "Höchstens",
    }
}
