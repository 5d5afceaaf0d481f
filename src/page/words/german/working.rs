//! German: what symbols stand for, and where formulas come from.

use skimwright::tables::Confirmed;
use skimwright::working::{Meaning, Source};

use super::fields;
use crate::page::words::Words;

#[expect(
    clippy::too_many_lines,
    reason = "one arm a meaning, nothing to take apart"
)]
pub(in crate::page::words) fn meaning(words: Words, meaning: Meaning) -> String {
    let fixed = match meaning {
        Meaning::Field(field) => return fields::in_full(words, field),
        Meaning::ShankReceived => "Schaft, Ist",
        Meaning::CutFromShoulder => "Anriss von der Schulter",
        Meaning::ShankFinished => "Schaft nach dem Plandrehen",
        Meaning::FacingTaken => "Plangedreht",
        Meaning::LargestDiameter => "Größter Durchmesser des Rohteils",
        Meaning::AimedDiameter => "Angestrebter Durchmesser, Mitte der Toleranz",
        Meaning::ToTurn => "Vom Durchmesser abzudrehen, Polieraufmaß bleibt",
        Meaning::BoreAtFace => "Bohrung an der fertigen Planfläche",
        Meaning::BoreAtCone => "Bohrung, wo der Kegel in sie ausläuft",
        Meaning::PilotDiameter => "Zapfendurchmesser des Bohrers",
        Meaning::PilotLength => "Zapfenlänge des Bohrers, Mitte",
        Meaning::HalfAngle => "Halber Kegelwinkel",
        Meaning::ConeDepth => "Tiefe des Kegels",
        Meaning::FacingStillOn => "Planaufmaß, noch daran",
        Meaning::OffcutVolume => "Volumen",
        Meaning::SectionBefore => "Schwächster Querschnitt, Ist",
        Meaning::SectionAfter => "Schwächster Querschnitt, fertig",
        Meaning::PartVolume => "Volumen des ganzen Teils",
        Meaning::VolumeMoment => {
            "Jedes Stück Volumen mal seinem Abstand von der Schulter, zusammengezählt"
        }
        Meaning::ChipVolume => "Volumen aller Späne",
        Meaning::MaterialDensity => "Dichte des Werkstoffs",
        Meaning::PassCount => "Zahl der Schruppschnitte",
        Meaning::CuttingTime => "Im Vorschub, mit Anlauf",
        Meaning::HandlingTime => "Zustellen, Rücklauf, Messen, alle Schnitte",
        Meaning::PolishingTime => "Polieren und Messen",
        Meaning::SmallestStock => "Kleinster Durchmesser des Rohteils über die Länge",
        Meaning::EngagedDiameter => "Größter geschnittener Durchmesser",
        Meaning::BoreDiameter => "Bohrung dort, Gewinde mit Außendurchmesser",
        Meaning::OuterDiameter => "Außen dort, kleinster erlaubter",
        Meaning::AxisOffset => "Wie weit Bohrungs- und Schaftachse auseinanderliegen können",
        Meaning::StepAtShoulder => "Kopf durch Schaft, Durchmesser",
        Meaning::ReceiverLength => "Länge der Aufnahme selbst",
        Meaning::FilletThatCounts => "Übergangsradius, der geht; scharfe Ecke zählt 0,2 mm",
        Meaning::PeakStress => "Spannungsspitze, wo die Sicherheit am kleinsten ist",
        Meaning::FilletShare => "Übergangsradius durch Schaftdurchmesser",
        Meaning::HeadAtShoulder => "Kopf an der Schulter",
        Meaning::YieldStrength => "Streckgrenze, wahrscheinlich",
        Meaning::TensileStrength => "Zugfestigkeit, wahrscheinlich",
        Meaning::EquivalentStress => "Vergleichsspannung, wo die Sicherheit am kleinsten ist",
        Meaning::StressAmplitude => "Spannung, die mit jeder Umdrehung wechselt",
        Meaning::MeanStress => "Spannung, die bleibt",
        Meaning::EnduranceLimit => "Was der Stahl auf Dauer aushält",
        Meaning::Interference => {
            "Übermaß, Mitte; beim kleinsten werden 2 · 0,8 · 4 µm Rauheit plattgedrückt"
        }
        Meaning::Pressure => "Fugendruck zwischen Hülse und Schaft",
        Meaning::Friction => "Reibzahl, wahrscheinlich",
        Meaning::SeatLength => "Länge des Sitzes",
        Meaning::RoomToAssemble => "Spiel zum Aufschieben",
        Meaning::SpindlePower => "Leistung, die an der Spindel ankommt",
        Meaning::HighForce => "Schnittkraft, oberes Ende",
        Meaning::SpecificForce => {
            "Spezifische Schnittkraft bei einem Span von 1 mm × 1 mm, wahrscheinlich"
        }
        Meaning::ChipThickness => "Mittlere Spanungsdicke",
        Meaning::ForceExponent => "Wie sie mit der Dicke fällt",
        Meaning::PassInfeed => "Zustellung des Schnitts",
        Meaning::PassFeed => "Vorschub des Schnitts",
        Meaning::PassSpeed => "Schnittgeschwindigkeit des Schnitts",
        Meaning::RakeFactor => "Faktor für den Spanwinkel",
        Meaning::SlowFactor => "Faktor für langsames Schneiden",
        Meaning::AcrossForce => "Kraft quer im letzten Schnitt, höchstens",
        Meaning::StiffnessThere => "Steifigkeit zwischen Teil und Werkzeug dort",
        Meaning::Overhang => "Kragt aus",
        Meaning::EqualDiameter => "Glatter Stab, der so steif ist",
        Meaning::RunoutThere => "Rundlauf dort, voller Ausschlag",
        Meaning::FeedingMean => "Im Vorschub, Mittel",
        Meaning::StepsMean => "Alles andere, Mittel",
        Meaning::TimeDeviation => "Standardabweichung der Summe",
        Meaning::TimeSkewness => "Schiefe: über null dauert es öfter viel länger als viel kürzer",
        Meaning::PaceSpread => "Wie viel schneller oder langsamer als üblich jemand arbeiten mag",
        Meaning::TotalTime => "Gesamtzeit, wahrscheinlich",
        Meaning::MeasuredNow => "Jetzt gemessen",
        Meaning::TakesOffset => "Geht ab, was auch zugestellt wird",
        Meaning::TakesShare => "Anteil der Zustellung, der abgeht",
        Meaning::DialledOnDiameter => "Zugestellt, im Durchmesser",
        Meaning::LeftStanding => "Vorher zugestellt, noch nicht ab",
        Meaning::HourlyRate => "Preis einer Stunde",
        Meaning::EdgesCharged => "Berechnete Schneiden",
        Meaning::EdgePrice => "Preis einer Schneide",
        Meaning::DiscsUsed => "Verbrauchte Trennscheiben",
        Meaning::DiscPrice => "Preis einer Scheibe",
        Meaning::Consumables => "Öl, Lappen, Schleifmittel, Packung",
        Meaning::MinimumCharge => "Mindestpreis, ohne Porto",
        Meaning::Postage => "Porto",
        Meaning::ReadingShown => "Anzeige des Messmittels",
        Meaning::ReadingCount => "Messungen",
        Meaning::WorkExpansion => "Ausdehnung des Teils",
        Meaning::WorkAboveReference => "Teil wärmer als 20 °C",
        Meaning::InstrumentExpansion => "Ausdehnung des Messmittels",
        Meaning::InstrumentAboveReference => "Messmittel wärmer als 20 °C",
        Meaning::OwnUncertainty => "Standardunsicherheit, die mehr Messungen verkleinern",
        Meaning::CommonUncertainty => "Standardunsicherheit, die alle Messungen teilen",
        Meaning::TaperSlope => "Zunahme des Durchmessers längs des Schafts",
        Meaning::TaperUncertainty => "Ihre Standardunsicherheit über die Länge",
        Meaning::StraightPart => "Gerader Teil des Schafts",
        Meaning::BetweenSupports => "Futter bis Körnerspitze",
    };
    fixed.to_owned()
}

/// The titles of the sources stay in the language in which they are printed.
pub(in crate::page::words) fn source(source: Source) -> String {
    match source {
        Source::Geometry => "Reine Geometrie.".to_owned(),
        Source::CommonPractice => "So üblich, keine Quelle.".to_owned(),
        Source::Published { title, confirmed } => {
            let mark = match confirmed {
                Confirmed::TwoSources => "Zahlen in zwei Quellen gesehen",
                Confirmed::OneSource => "Zahlen in einer Quelle gesehen",
                Confirmed::Memory => "Zahlen aus dem Gedächtnis: das eigene Stück messen",
            };
            format!("{title}; {mark}.")
        }
    }
}
