//! Spanish: passes and what limits them, the steps of a rework, fixed texts of holding and finishing.

use skimwright::costing::Step;
use skimwright::cutting::{ChipVerdict, HeldBy, Limit, Pass, Saving};
use skimwright::job::TimeBound;

use super::fields::lower_first;
use crate::page::words::{OfCut, Text, Words};

pub(super) const fn text(text: OfCut) -> &'static str {
    match text {
        OfCut::Limit(limit) => limit_name(limit),
        OfCut::Pinned => "fija",
        OfCut::FreshEdge => "antes, filo nuevo",
        OfCut::Knocks => "golpea: corte interrumpido",
        OfCut::Core => "núcleo, bajo la capa dura",
        OfCut::Loads => "Cuánto se usa de cada límite",
        OfCut::Along => "Fuerza a lo largo, como mucho",
        OfCut::Across => "Fuerza de través, como mucho",
        OfCut::CuttingSpeed => "Velocidad de corte",
        OfCut::Roughness => "Rugosidad Ra, torneado",
        OfCut::EdgeUsed => "Gasto de un filo",
        OfCut::Chip => "Viruta",
        OfCut::ChipVerdict(verdict) => chip(verdict),
        OfCut::Pin => "Fijar esta pasada",
        OfCut::Unpin => "Soltar",
        OfCut::Estimates => {
            "Fuerzas, potencia, rugosidad y desgaste son estimaciones; el plan se queda con el lado prudente."
        }
        OfCut::DialReadsDiameter => {
            "El tambor marca diámetro: lo que metes se quita del diámetro, y el carro se mueve la mitad, la \
             penetración. «Largo» es el del metal que se corta."
        }
        OfCut::DialReadsRadius => {
            "El tambor marca lo que se mueve el carro: del diámetro se quita el doble de lo que metes. El largo es el \
             del metal que se corta."
        }
        OfCut::SavingsTitle => "Qué ayudaría",
        OfCut::SavingsLead => {
            "Lo que ahorrarían las pasadas, estimado, si un límite fuera un cuarto más amplio."
        }
        OfCut::NoSavings => "Un cuarto más en un solo límite no ahorra tiempo.",
        OfCut::HoldingTitle => "Sujeción durante el corte",
        OfCut::Held => "Sujeta en",
        OfCut::Gripped => "Agarre",
        OfCut::SticksOut => "Voladizo",
        OfCut::GripTitle => "Apriete",
        OfCut::JawsHold => "Lo que aguantan las garras, estimado",
        OfCut::CutNeeds => "Lo que pide la pasada más fuerte, con seguridad",
        OfCut::CentreTitle => "Punto giratorio",
        OfCut::Thrust => "Empújalo con, estimado",
        OfCut::DialTitle => "Lo que dice el comparador",
        OfCut::RunoutNear => "Salto cerca del plato",
        OfCut::RunoutFar => "Salto más afuera",
        OfCut::OneLine => {
            "Leído en dos sitios opuestos, solo habla de esa línea: lee también los otros dos."
        }
        OfCut::FlatJaws => "Calzo, garras anchas",
        OfCut::NarrowJaws => "Calzo, garras estrechas",
        OfCut::Packing => "Calzo",
        OfCut::FinishTitle => "Resalte, extremo y superficie",
        OfCut::FilletTitle => "Radio de acuerdo",
        OfCut::FromFace => "Desde la cara",
        OfCut::InfeedLeft => "Penetr. que falta",
        OfCut::Divisions => "Divisiones de",
        OfCut::ChamferTitle => "Chaflán",
        OfCut::PolishTitle => "Pulido",
        OfCut::FineTitle => "Penetración fina",
        OfCut::CareKnocks => {
            "Corte interrumpido con un filo duro: puede romperse y salir volando. Pantalla bajada, apártate de su línea, \
             más despacio, calidad tenaz."
        }
        OfCut::CareGrinding => {
            "Rectificar: mascarilla y guías tapadas; la muela nunca más deprisa de lo marcado, y apártate al arrancar."
        }
        OfCut::CareLong => {
            "Una longitud sin apoyo puede dar latigazos y salirse de las garras: arranca despacio y apoya el extremo."
        }
        OfCut::CareChuck => "No gires nunca el plato más deprisa de lo que lleva marcado.",
    }
}

const fn chip(verdict: ChipVerdict) -> &'static str {
    match verdict {
        ChipVerdict::ShortByNature => "corta de por sí",
        ChipVerdict::Breaks => "se rompe",
        ChipVerdict::MayBeLong => "quizá larga: detén el avance de vez en cuando",
        ChipVerdict::Stringy => "hilo o cinta: para y usa un gancho, nunca la mano",
    }
}

const fn limit_name(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "Profundidad",
        Limit::Feed => "Avance",
        Limit::Finish => "Acabado",
        Limit::CuttingSpeed => "Velocidad de corte",
        Limit::ToolLife => "Vida del filo",
        Limit::SpindleSpeed => "Velocidad de giro",
        Limit::Power => "Potencia",
        Limit::Torque => "Par",
        Limit::Grip => "Apriete",
        Limit::Deflection => "Flexión",
    }
}

pub(in crate::page::words) fn pass_title(words: Words, number: u32, pass: &Pass) -> String {
    let kind = words.say(Text::PassKind(pass.kind));
    format!(
        "Pasada {number}, {kind}, a ⌀{}",
        words.size(pass.diameter_after)
    )
}

pub(in crate::page::words) fn held_by(by: HeldBy) -> String {
    let said = [
        ("profundidad", by.depth),
        ("avance", by.feed),
        ("velocidad", by.speed),
    ]
    .into_iter()
    .filter_map(|(what, limit)| Some(format!("{what} – {}", lower_first(limit_name(limit?)))))
    .collect::<Vec<_>>();
    if said.is_empty() {
        "No la frena nada de lo que se calcula aquí.".to_owned()
    } else {
        format!("La frena: {}.", said.join(", "))
    }
}

pub(in crate::page::words) fn saving(saving: &Saving) -> String {
    format!("ahorra {}", skimwright::quantity::show::time(saving.time))
}

/// What limits a cut, inside a sentence, as its subject.
pub(super) const fn limit_inside(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "la profundidad de la herramienta",
        Limit::Feed => "el avance de la herramienta",
        Limit::Finish => "el acabado",
        Limit::CuttingSpeed => "la velocidad de corte",
        Limit::ToolLife => "la vida del filo",
        Limit::SpindleSpeed => "la velocidad de giro",
        Limit::Power => "la potencia",
        Limit::Torque => "el par",
        Limit::Grip => "el apriete",
        Limit::Deflection => "la flexión",
    }
}

/// What makes room where a limit forbids every pass.
pub(super) const fn ease(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => {
            "Usa una herramienta para esa profundidad, o permite una penetración mayor."
        }
        Limit::Feed => {
            "El torno no tiene un avance tan fino: revisa su lista, o usa otra herramienta."
        }
        Limit::Finish => {
            "Toma un radio de punta mayor, un avance más fino, o permite una superficie más basta."
        }
        Limit::CuttingSpeed => {
            "El torno no gira tan lento: revisa su lista, o usa otra herramienta."
        }
        Limit::ToolLife => "Gira más despacio, o usa una herramienta más dura.",
        Limit::SpindleSpeed => {
            "Compara la lista de velocidades con las máximas del plato y de la pieza."
        }
        Limit::Power => "Revisa la potencia del motor, o toma un avance más fino.",
        Limit::Torque => "Revisa el par, o toma un avance más fino.",
        Limit::Grip => "Aprieta más, sujeta más largo o apoya el extremo; no la tornees así.",
        Limit::Deflection => {
            "Da pasadas de acabado más ligeras, acorta el voladizo o apoya el extremo."
        }
    }
}

pub(in crate::page::words) const fn step(step: Step) -> &'static str {
    match step {
        Step::ReceiveAndCheck => "Recibir y comprobar",
        Step::Hold => "Sujetar la pieza",
        Step::DialIn => "Centrar con comparador",
        Step::CutOff => "Tronzar",
        Step::Face => "Refrentar",
        Step::Centre => "Taladrar el centro",
        Step::SetDepth => "Poner la pasada",
        Step::Return => "Retroceso",
        Step::Measure => "Medir",
        Step::ToolChange => "Cambiar la herramienta",
        Step::Regrind => "Afilar",
        Step::Polish => "Pulir",
        Step::Chamfer => "Achaflanar, desbarbar",
        Step::Clean => "Limpiar y aceitar",
        Step::FinalCheck => "Comprobación final",
        Step::Pack => "Embalar",
    }
}

pub(super) const fn time_bound(bound: TimeBound) -> &'static str {
    match bound {
        TimeBound::Low => "Como poco",
        TimeBound::Likely => "Por lo general",
        TimeBound::High => "Como mucho",
    }
}
