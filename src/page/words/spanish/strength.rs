//! Spanish: what is kept of the strength, what the finished shank bears, what it weighs.

use skimwright::quantity::{Length, show};
use skimwright::rework::{SurfaceLeft, UnderDuty, Weakest};
use skimwright::strength::Basis;
use skimwright::working::Value;

use crate::page::words::{OfStrength, Words};

pub(super) const fn text(text: OfStrength) -> &'static str {
    match text {
        OfStrength::Title => "Resistencia que queda",
        OfStrength::ShoulderTitle => "Tensión en el resalte",
        OfStrength::ShoulderNote => {
            "Cuántas veces la tensión del mango liso es la del rincón. Un radio de acuerdo mayor la baja."
        }
        OfStrength::ShoulderGuide => {
            "Este escalón o este radio se sale de lo que se usó para comparar las fórmulas: toma las cifras como guía."
        }
        OfStrength::NoShoulder => "En el resalte no hay escalón que la suba.",
        OfStrength::SurfaceTitle => "Dureza de la superficie acabada",
        OfStrength::SafetyTitle => "Seguridad bajo carga",
        OfStrength::SafetyNone => "No está anotado qué tiene que aguantar el mango.",
        OfStrength::SafetyEnter => "Anotar qué tiene que aguantar",
        OfStrength::SafetyNote => {
            "Cuántas veces esa carga aguantaría. Una estimación: defectos, golpes y tratamiento térmico no se conocen \
             aquí."
        }
        OfStrength::NoLoad => "Sin carga no hay nada que comparar.",
        OfStrength::NoFatigue => "Contra la fatiga no hay cifra para este metal.",
        OfStrength::MassTitle => "Masa y centro de gravedad de toda la pieza",
        OfStrength::BalanceNote => {
            "El centro de gravedad se mide del resalte hacia el extremo libre; bajo cero está en la cabeza."
        }
        OfStrength::Tensile => "Resistencia a la tracción del material",
    }
}

pub(in crate::page::words) fn weakest(words: Words, before: &Weakest, after: &Weakest) -> String {
    let one = |it: &Weakest| format!("⌀{}, {}", words.size(it.diameter), place(words, it.at));
    format!(
        "Lo más débil al recibirla: {}. Acabada: {}.",
        one(before),
        one(after)
    )
}

/// What the weakest section was reckoned with, each approximation once.
pub(in crate::page::words) fn reckoned_with(bases: &[Basis]) -> String {
    let mut names: Vec<&str> = Vec::new();
    for name in bases.iter().map(|it| basis(*it)) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    format!("Acabada, calculada como: {}.", names.join("; "))
}

const fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Round => "redondo, macizo o con agujero en el eje (exacto)",
        Basis::EccentricHole => "agujero fuera del eje (torsión por una serie de manual)",
        Basis::ThreadRoot => "rosca por su núcleo, sin contar la hélice",
        Basis::Flat => "plano cortado en el redondo (exacto)",
        Basis::Keyway => "chavetero como rectángulo quitado",
        Basis::CrossHole => "agujero transversal como banda quitada",
        Basis::Slot => "ranura como dos púas, cada una por su lado",
        Basis::TorsionEstimate => "torsión estimada de una sección con cortes, más bien baja",
    }
}

pub(super) fn place(words: Words, at: Length) -> String {
    if at.to_mm().abs() < 0.005 {
        "en el resalte".to_owned()
    } else if at < Length::ZERO {
        format!("en la cabeza, a {} del resalte", words.length(at.abs()))
    } else {
        format!("a {} del resalte", words.length(at))
    }
}

pub(in crate::page::words) fn surface(left: SurfaceLeft) -> String {
    let (what, hardness) = match left {
        SurfaceLeft::Through(hardness) => ("Tan dura como era por fuera", hardness),
        SurfaceLeft::Case(hardness) => ("La capa dura se queda en todas partes", hardness),
        SurfaceLeft::Core(hardness) => ("La capa dura se va: el núcleo queda al aire", hardness),
        SurfaceLeft::Partly(hardness) => (
            "La capa dura se va en algunos sitios, hasta el núcleo",
            hardness,
        ),
    };
    match hardness {
        Some(hardness) => format!("{what}, {}.", show::hardness(hardness)),
        None => format!("{what}; cuánta dureza es, no está anotado."),
    }
}

pub(in crate::page::words) fn under_duty(words: Words, duty: &UnderDuty) -> String {
    format!(
        "Contado: un par de {} y un momento flector de {}. La menor seguridad contra la rotura está {}.",
        words.value(Value::Torque(duty.torque)),
        words.value(Value::Torque(duty.moment)),
        place(words, duty.at)
    )
}
