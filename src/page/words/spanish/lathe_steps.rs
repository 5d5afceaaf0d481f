//! Spanish: the steps at the lathe, their figures and cautions.

use skimwright::job::WorkStep;
use skimwright::work::{Dial, StepFigure, StepHow, StepWarning};

use crate::page::words::Words;

pub(super) const fn name(step: WorkStep) -> &'static str {
    match step {
        WorkStep::Receive => "Comprobar lo recibido",
        WorkStep::Hold => "Sujetar la pieza",
        WorkStep::DialIn => "Centrar con comparador",
        WorkStep::CutOff => "Tronzar",
        WorkStep::Face => "Refrentar",
        WorkStep::Centre => "Taladrar el centro",
        WorkStep::Rough => "Desbastar",
        WorkStep::LastCuts => "Pasadas de acabado",
        WorkStep::Polish => "Pulir",
        WorkStep::Chamfer => "Achaflanar, desbarbar",
        WorkStep::Check => "Comprobar",
        WorkStep::Clean => "Limpiar y aceitar",
    }
}

pub(super) const fn how(how: StepHow) -> &'static str {
    match how {
        StepHow::ToDo => "por hacer",
        StepHow::Running => "en marcha",
        StepHow::Paused => "en pausa",
        StepHow::Done => "hecho",
        StepHow::Skipped => "omitido",
    }
}

pub(in crate::page::words) fn step_count(_: Words, number: usize, of: usize) -> String {
    format!("{number} de {of}")
}

pub(in crate::page::words) const fn dial_means(_: Words, dial: &Dial) -> &'static str {
    match dial {
        Dial::AsGiven(_) => "mango según los datos: mídelo",
        Dial::CutMark(_) => "marca el corte, desde el extremo libre",
        Dial::Grip(_) => "sujeta esto de la cabeza",
        Dial::Runout(_) => "salto que puede quedar",
        Dial::Facing(_) => "por refrentar",
        Dial::CentreDepth(_) => "taladra hasta aquí",
        Dial::Infeed(_) => "mete, como marca el tambor",
        Dial::PolishOff(_) => "por pulir, del diámetro",
        Dial::Chamfer(_) => "chaflán, a lo largo del eje, 45°",
        Dial::Diameter(_) => "diámetro deseado",
    }
}

pub(in crate::page::words) const fn figure_name(figure: &StepFigure) -> &'static str {
    match figure {
        StepFigure::HeadDiameter(_) => "Cabeza",
        StepFigure::ShankLength(_) => "Longitud del mango",
        StepFigure::FromShoulder(_) => "Desde el resalte",
        StepFigure::Method(_) => "Con",
        StepFigure::Kerf(_) => "Ancho del corte",
        StepFigure::OffcutLength(_) => "Recorte",
        StepFigure::Support(_) => "Sujeta en",
        StepFigure::HeldDiameter(_) => "Sujeta por",
        StepFigure::Overhang(_) => "Voladizo",
        StepFigure::FinishedLength(_) => "Resalte a extremo",
        StepFigure::DepthFrom(_) => "Prof. desde",
        StepFigure::CentreDrill(_) => "Broca de centrar",
        StepFigure::Mouth(_) => "Avellanado",
        StepFigure::OffDiameter(_) => "Del diámetro",
        StepFigure::DiameterAfter(_) => "Diámetro después",
        StepFigure::DialReads(_) => "El tambor marca",
        StepFigure::PassesLeft(_) => "Pasadas que quedan",
        StepFigure::CompoundAngle(_) => "Carro orientable a",
        StepFigure::CompoundTravel(_) => "Recorrido del carro",
        StepFigure::LowerLimit(_) => "No menos de",
        StepFigure::UpperLimit(_) => "No más de",
        StepFigure::WantedLength(_) => "Longitud deseada",
        StepFigure::Roughness(_) => "Rugosidad Ra",
    }
}

pub(super) const fn warning(warning: StepWarning) -> &'static str {
    match warning {
        StepWarning::ChuckKey => "Quita la llave del plato antes de que gire el husillo.",
        StepWarning::GripWeak => {
            "Las garras aguantan poco para esta pasada: mira las observaciones del plan."
        }
        StepWarning::LosesGrip => "Se sujeta poco: puede salirse de las garras.",
        StepWarning::LongOverhang => "Larga y sin apoyo, puede dar latigazos: arranca despacio.",
        StepWarning::ChuckSpeed => "No gires nunca el plato más deprisa de lo que lleva marcado.",
        StepWarning::CentreNipsUp => {
            "La pieza caliente crece y aprieta el punto giratorio: aflójalo un poco y vuelve a ajustarlo."
        }
        StepWarning::Disc => {
            "Disco: protector puesto, ojos y oídos protegidos, nunca por encima de su velocidad marcada."
        }
        StepWarning::Grit => "Polvo abrasivo: tapa las guías y ponte mascarilla.",
        StepWarning::HotOffcut => "El recorte y el extremo queman.",
        StepWarning::OffcutFalls => "El recorte cae: nunca lo cojas con la mano.",
        StepWarning::PartingJams => {
            "La herramienta de tronzar se clava: afilada, a escuadra, a la altura del eje, corta y con aceite."
        }
        StepWarning::SawOnHard => "Una sierra no corta lo duro.",
        StepWarning::ChipsLong => {
            "Virutas largas: detén el husillo y usa un gancho, nunca los dedos."
        }
        StepWarning::ChipsHard => "Saltan virutas calientes y cortantes: protege los ojos.",
        StepWarning::DustOfCastIron => {
            "La fundición suelta polvo fino: mascarilla, y que no caiga en las guías."
        }
        StepWarning::TitaniumFire => {
            "Las virutas de titanio pueden arder: nunca agua, arena seca a mano."
        }
        StepWarning::Knocks => "Corte interrumpido: un filo duro puede desportillarse.",
        StepWarning::Grinding => {
            "Rectificar: mascarilla, guías tapadas, la muela no más deprisa de lo marcado."
        }
        StepWarning::HotWork => "Caliente mide de más: deja que se enfríe.",
        StepWarning::StopToMeasure => "Detén el husillo para medir.",
        StepWarning::CentreDrillBreaks => {
            "Su punta se rompe: bien centrada, poco avance, saca las virutas."
        }
        StepWarning::CentreOnHard => {
            "El extremo es duro: nada de brocas de centrar de acero rápido."
        }
        StepWarning::FingersAtSpindle => {
            "Lija y lima: la tira, en la mano abierta, nunca enrollada; la lima, con mango."
        }
        StepWarning::SharpEdges => "Las aristas cortan hasta que se matan.",
        StepWarning::UnknownPast => "Lo que se le hizo antes, y las grietas, quizá no se vean.",
        StepWarning::NoAirLine => "Nada de aire a presión: brocha y aspirador.",
    }
}
