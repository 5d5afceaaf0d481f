//! Spanish: what symbols stand for, and where formulas come from.

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
        Meaning::ShankReceived => "Mango recibido",
        Meaning::CutFromShoulder => "Marca desde el resalte",
        Meaning::ShankFinished => "Mango tras refrentar",
        Meaning::FacingTaken => "Refrentado",
        Meaning::LargestDiameter => "Mayor diámetro del material",
        Meaning::AimedDiameter => "Diámetro buscado, centro de la tolerancia",
        Meaning::ToTurn => "Que quitar del diámetro, dejando la demasía de pulido",
        Meaning::BoreAtFace => "Agujero en la cara acabada",
        Meaning::BoreAtCone => "Agujero donde acaba en él el cono",
        Meaning::PilotDiameter => "Diámetro del piloto de la broca",
        Meaning::PilotLength => "Longitud del piloto de la broca, media",
        Meaning::HalfAngle => "Mitad del ángulo del cono",
        Meaning::ConeDepth => "Profundidad del cono",
        Meaning::FacingStillOn => "Demasía para refrentar, aún puesta",
        Meaning::OffcutVolume => "Volumen",
        Meaning::SectionBefore => "Sección más débil, al recibirla",
        Meaning::SectionAfter => "Sección más débil, acabada",
        Meaning::PartVolume => "Volumen de toda la pieza",
        Meaning::VolumeMoment => "Cada trozo de volumen por su distancia al resalte, todo sumado",
        Meaning::ChipVolume => "Volumen de todas las virutas",
        Meaning::MaterialDensity => "Densidad del material",
        Meaning::PassCount => "Número de pasadas de desbaste",
        Meaning::CuttingTime => "Con avance, aproximación incluida",
        Meaning::HandlingTime => "Poner la pasada, retroceder, medir, todas las pasadas",
        Meaning::PolishingTime => "Pulir y medir",
        Meaning::SmallestStock => "Menor diámetro del material en la longitud",
        Meaning::EngagedDiameter => "Mayor diámetro que se corta",
        Meaning::BoreDiameter => "Agujero ahí, roscas por su diámetro exterior",
        Meaning::OuterDiameter => "Exterior ahí, el menor permitido",
        Meaning::AxisOffset => "Cuánto pueden separarse los ejes de agujero y mango",
        Meaning::StepAtShoulder => "Cabeza entre mango, diámetros",
        Meaning::ReceiverLength => "Longitud del propio alojamiento",
        Meaning::FilletThatCounts => {
            "Radio de acuerdo que se puede hacer; un rincón vivo cuenta 0,2 mm"
        }
        Meaning::PeakStress => "Pico de tensión donde la seguridad es menor",
        Meaning::FilletShare => "Radio de acuerdo entre diámetro del mango",
        Meaning::HeadAtShoulder => "Cabeza en el resalte",
        Meaning::YieldStrength => "Límite de fluencia, probable",
        Meaning::TensileStrength => "Resistencia a la tracción, probable",
        Meaning::EquivalentStress => "Tensión equivalente donde la seguridad es menor",
        Meaning::StressAmplitude => "Tensión que cambia de signo en cada vuelta",
        Meaning::MeanStress => "Tensión que se mantiene",
        Meaning::EnduranceLimit => "Límite de fatiga: lo que el acero aguanta siempre",
        Meaning::Interference => {
            "Apriete, medio; en el menor se aplastan 2 · 0,8 · 4 µm de rugosidad"
        }
        Meaning::Pressure => "Presión entre casquillo y mango",
        Meaning::Friction => "Rozamiento, probable",
        Meaning::SeatLength => "Longitud del asiento",
        Meaning::RoomToAssemble => "Juego para calarlo",
        Meaning::SpindlePower => "Potencia que llega al husillo",
        Meaning::HighForce => "Fuerza de corte, extremo alto",
        Meaning::SpecificForce => "Fuerza específica de corte con viruta de 1 mm × 1 mm, probable",
        Meaning::ChipThickness => "Espesor medio de viruta",
        Meaning::ForceExponent => "Cómo baja con el espesor",
        Meaning::PassInfeed => "Penetración de la pasada",
        Meaning::PassFeed => "Avance de la pasada",
        Meaning::PassSpeed => "Velocidad de corte de la pasada",
        Meaning::RakeFactor => "Factor por el ángulo de desprendimiento",
        Meaning::SlowFactor => "Factor por cortar despacio",
        Meaning::AcrossForce => "Fuerza de través en la última pasada, como mucho",
        Meaning::StiffnessThere => "Rigidez ahí entre pieza y herramienta",
        Meaning::Overhang => "Voladizo",
        Meaning::EqualDiameter => "Barra lisa igual de rígida",
        Meaning::RunoutThere => "Salto ahí, lectura total",
        Meaning::FeedingMean => "Con avance, media",
        Meaning::StepsMean => "Todo lo demás, media",
        Meaning::TimeDeviation => "Desviación típica del total",
        Meaning::TimeSkewness => {
            "Asimetría: sobre cero, se tarda más a menudo mucho más que mucho menos"
        }
        Meaning::PaceSpread => {
            "Cuánto más deprisa o despacio de lo habitual puede trabajar alguien"
        }
        Meaning::TotalTime => "Tiempo total, probable",
        Meaning::MeasuredNow => "Medido ahora",
        Meaning::TakesOffset => "Se quita, se meta lo que se meta",
        Meaning::TakesShare => "Parte de la penetración que se quita",
        Meaning::DialledOnDiameter => "Penetración, en diámetro",
        Meaning::LeftStanding => "Metido antes, aún sin quitar",
        Meaning::HourlyRate => "Precio de una hora",
        Meaning::EdgesCharged => "Filos cobrados",
        Meaning::EdgePrice => "Precio de un filo",
        Meaning::DiscsUsed => "Discos de corte gastados",
        Meaning::DiscPrice => "Precio de un disco",
        Meaning::Consumables => "Aceite, trapos, abrasivo, embalaje",
        Meaning::MinimumCharge => "Precio mínimo, sin portes",
        Meaning::Postage => "Portes",
        Meaning::ReadingShown => "Lo que muestra el instrumento",
        Meaning::ReadingCount => "Lecturas",
        Meaning::WorkExpansion => "Dilatación de la pieza",
        Meaning::WorkAboveReference => "Pieza más caliente que 20 °C",
        Meaning::InstrumentExpansion => "Dilatación del instrumento",
        Meaning::InstrumentAboveReference => "Instrumento más caliente que 20 °C",
        Meaning::OwnUncertainty => "Incertidumbre típica que se reduce con más lecturas",
        Meaning::CommonUncertainty => "Incertidumbre típica común a todas las lecturas",
        Meaning::TaperSlope => "Crecimiento del diámetro a lo largo del mango",
        Meaning::TaperUncertainty => "Su incertidumbre típica en esa longitud",
        Meaning::StraightPart => "Parte recta del mango",
        Meaning::BetweenSupports => "Del plato al punto giratorio",
    };
    fixed.to_owned()
}

/// The titles of the sources stay in the language in which they are printed.
pub(in crate::page::words) fn source(source: Source) -> String {
    match source {
        Source::Geometry => "Pura geometría.".to_owned(),
        Source::CommonPractice => "Práctica común, sin fuente.".to_owned(),
        Source::Published { title, confirmed } => {
            let mark = match confirmed {
                Confirmed::TwoSources => "cifras vistas en dos fuentes",
                Confirmed::OneSource => "cifras vistas en una fuente",
                Confirmed::Memory => "cifras de memoria: mide la tuya",
            };
            format!("{title}; {mark}.")
        }
    }
}
