//! Spanish: how the part is held, how it is dialled in, and how it is finished.

use skimwright::cutting::{
    ChamferPlan, FilletPlan, FilletWay, FineInfeed, PolishPlan, PolishingVerdict,
};
use skimwright::holding::{
    Caution, DialPlan, GripHeld, GripVerdict, HoldingPlan, JawPacking, Remedy, Shape, Shift,
    Slenderness,
};
use skimwright::quantity::{Angle, Length, RotationalSpeed, show};

use crate::page::words::Words;

/// A move or a packing that shows as nothing.
const NOTHING: Length = Length::mm(0.0005);

pub(in crate::page::words) fn gripped(words: Words, holding: &HoldingPlan) -> String {
    format!(
        "{} de ⌀{}",
        words.length(holding.grip_length),
        words.size(holding.gripped_diameter)
    )
}

pub(in crate::page::words) fn slender(slender: Slenderness) -> String {
    let fear = match slender.caution {
        Caution::None => "No hay que temer vibraciones.",
        Caution::Careful => {
            "Puede vibrar: pasadas ligeras, herramienta afilada, radio de punta pequeño."
        }
        Caution::TooSlender => "Demasiado esbelta: flexará y vibrará.",
    };
    let helps = match slender.remedy {
        Remedy::Nothing => "",
        Remedy::UseCentre => " Ayuda un punto en el extremo, o menos voladizo.",
        Remedy::UseSteady => " Ayuda una luneta.",
    };
    format!("{fear}{helps}")
}

pub(in crate::page::words) fn form(words: Words, holding: &HoldingPlan) -> Option<String> {
    let form = holding.form.as_ref()?;
    let shape = match form.shape {
        Shape::Even => "igual a todo lo largo",
        Shape::BellMouth => "más grueso en el extremo libre",
        Shape::LargerAtShoulder => "más grueso en el resalte",
        Shape::Barrel => "más grueso en el medio, abarrilado",
        Shape::Waist => "más fino en el medio, acinturado",
    };
    Some(format!(
        "La última pasada deja el mango {shape}: unos {}, y se permiten {}. Lo que cede igual a todo lo largo se ve \
         tras la primera de las dos pasadas de acabado, y la segunda lo quita.",
        words.units().difference(form.spread()),
        words.units().difference(holding.allowed)
    ))
}

pub(in crate::page::words) fn copied(share: f64) -> String {
    format!(
        "Del salto o de una demasía desigual, una pasada así deja cerca del {}.",
        show::share(share)
    )
}

pub(in crate::page::words) const fn grip_verdict(grip: &GripHeld) -> &'static str {
    match grip.ratio {
        None => "No se le pide nada.",
        Some(ratio) => match ratio.verdict {
            GripVerdict::Holds => "Aguanta.",
            GripVerdict::SafetyEaten => {
                "Aguanta, pero se come la seguridad: aprieta más, sujeta más largo, corta más ligero."
            }
            GripVerdict::Slips => "Resbala: no la tornees así.",
        },
    }
}

pub(in crate::page::words) fn centre_pressure(holding: &HoldingPlan) -> Option<&'static str> {
    let pressure = holding.tail.as_ref()?.pressure?;
    if pressure.at_most.is_some_and(|ratio| ratio < 1.0) {
        Some(
            "Eso carga el agujero de centrado más de lo que aguanta: avellánalo mayor, o corta más ligero.",
        )
    } else if pressure.certain.is_some_and(|ratio| ratio < 1.0) {
        Some(
            "Eso quizá cargue el agujero de centrado más de lo que aguanta: vigila el punto, o avellánalo mayor.",
        )
    } else {
        None
    }
}

pub(in crate::page::words) fn chuck_speed(speed: RotationalSpeed) -> String {
    format!(
        "No gires nunca el plato a más de {}, que es lo que lleva marcado.",
        show::rotation(speed)
    )
}

pub(in crate::page::words) fn first_move(words: Words, shift: &Shift) -> String {
    format!(
        "Primero, en el plato: mueve la pieza {} {}.",
        words.size(shift.shift.size()),
        towards(shift)
    )
}

pub(in crate::page::words) fn then_tap(words: Words, dial: &DialPlan) -> Option<String> {
    let dial_in = dial.dial_in.as_ref()?;
    let remains = words.size(dial_in.remains_at_free_end);
    if dial_in.at_free_end.shift.size() <= NOTHING {
        return Some(format!(
            "El extremo libre no necesita luego ningún golpe. Los errores de lectura por sí solos pueden dejar ahí \
             {remains}."
        ));
    }
    Some(format!(
        "Luego el extremo libre, que ahora marca {}: llévalo a golpecitos {} {}. Los errores de lectura por sí solos \
         pueden dejar ahí {remains}.",
        words.size(dial_in.runout_between),
        words.size(dial_in.at_free_end.shift.size()),
        towards(&dial_in.at_free_end)
    ))
}

/// An angle to the degree.
fn whole_angle(angle: Angle) -> String {
    format!("{}°", show::decimal(angle.to_degrees(), 0))
}

/// Towards which jaw, and how far beside it.
fn towards(shift: &Shift) -> String {
    let jaw = shift.nearest.jaw;
    let beside = shift.nearest.beside;
    let next = jaw % 3 + 1;
    let before = (jaw + 1) % 3 + 1;
    let (angle, to) = if beside < Angle::ZERO {
        (beside.abs(), before)
    } else {
        (beside, next)
    };
    let angle = whole_angle(angle);
    if angle == "0°" {
        format!("hacia la garra {jaw}")
    } else {
        format!("hacia la garra {jaw}, {angle} más hacia la garra {to}")
    }
}

pub(in crate::page::words) fn packing(words: Words, thickness: [Length; 3]) -> String {
    let under = (1_u8..)
        .zip(thickness)
        .filter(|(_, thick)| NOTHING < *thick);
    let under = under.map(|(jaw, thick)| format!("{} bajo la garra {jaw}", words.size(thick)));
    let under = under.collect::<Vec<_>>().join(", ");
    if under.is_empty() {
        "ninguno".to_owned()
    } else {
        under
    }
}

pub(in crate::page::words) fn thumb(words: Words, packing: &JawPacking) -> String {
    let rule = &packing.line.rule_of_thumb;
    let leaves = rule.leaves.map(|left| words.size(left));
    let leaves = leaves.map_or_else(String::new, |left| format!("; dejaría {left}"));
    format!(
        "La regla de taller, tres cuartos del salto: {} bajo la garra {}{leaves}.",
        words.size(rule.thickness),
        rule.jaw
    )
}

pub(in crate::page::words) fn fillet(words: Words, plan: &FilletPlan) -> String {
    let (fillet, nose) = (words.size(plan.fillet), words.size(plan.nose_radius));
    match &plan.way {
        FilletWay::OwnNose => format!(
            "El radio de punta de {nose} hace él solo el radio de acuerdo: avanza hasta el rincón."
        ),
        FilletWay::NoseTooLarge { largest } if *largest <= Length::ZERO => format!(
            "Un radio de punta de {nose} no deja un rincón vivo: dale al resalte otro tanto de radio, o hazle una \
             garganta."
        ),
        FilletWay::NoseTooLarge { largest } => format!(
            "El radio de punta de {nose} deja en el rincón más que los {fillet} deseados: toma un radio de punta de {} \
             o menos.",
            words.size_at_most(*largest)
        ),
        FilletWay::FormTool => format!(
            "Un radio tan grande, {fillet}, es cosa de una herramienta de forma o de un aparato de tornear radios."
        ),
        FilletWay::Steps(steps) => format!(
            "El radio de punta de {nose} hace el de {fillet} en {}. En cada paso avanza por el mango hasta su sitio y \
             sal recto hacia fuera; quedan crestas de {} para pulir.",
            words.count(steps.steps.len(), "paso", "pasos"),
            words.fine(steps.highest_cusp)
        ),
    }
}

pub(in crate::page::words) fn chamfer(words: Words, plan: &ChamferPlan) -> String {
    format!(
        "{} × {}: carro orientable a {}, {} de recorrido desde que toca.",
        words.size(plan.width),
        whole_angle(plan.angle),
        whole_angle(plan.angle),
        words.size(plan.travel)
    )
}

pub(in crate::page::words) fn polish(words: Words, plan: &PolishPlan) -> String {
    let verdict = match plan.verdict {
        PolishingVerdict::Enough => "Basta para que se vayan las marcas de torneado.",
        PolishingVerdict::MarksMayStay => "Puede que a medida queden algunas marcas de torneado.",
        PolishingVerdict::MarksStay => "Es poco: a medida quedarán marcas de torneado.",
    };
    let stock = words.size(plan.stock);
    let low = words.size(plan.least.low);
    let high = words.size(plan.least.high);
    format!(
        "Quedan {stock} en el diámetro, y las crestas piden cerca de {}. {verdict}",
        words.range(&low, &high)
    )
}

pub(in crate::page::words) fn fine_infeed(words: Words, plan: &FineInfeed) -> String {
    let (infeed, graduation) = (words.fine(plan.infeed), words.size(plan.graduation));
    match &plan.angle {
        Some(angle) => format!(
            "Carro orientable a {}° del eje del torno: una división de {graduation} mete la herramienta {infeed}. \
             Compruébalo con el reloj comparador.",
            show::decimal(angle.value.to_degrees(), 1)
        ),
        None => format!(
            "Una división de {graduation} no puede meter la herramienta {infeed}: pide como mucho una división."
        ),
    }
}
