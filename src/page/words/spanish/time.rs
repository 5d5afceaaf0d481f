//! Spanish: charts, time and cost.

use skimwright::costing::{CostPart, Feeding};
use skimwright::holding::{FormError, FormPoint};
use skimwright::quantity::{Length, Time};

use super::cut;
use crate::page::words::{OfTime, Words};

pub(super) const fn text(text: OfTime) -> &'static str {
    match text {
        OfTime::KeyRough => "tras el desbaste, donde caben líneas",
        OfTime::KeyLast => "tras una pasada de acabado",
        OfTime::KeyPicked => "tras la pasada elegida",
        OfTime::FormTitle => "Cuánto cede",
        OfTime::FormLead => {
            "Cuánto más grueso de lo ajustado deja el diámetro la última pasada, porque pieza y herramienta ceden."
        }
        OfTime::FormLarger => "Más grueso",
        OfTime::FormAlong => "Desde el resalte",
        OfTime::FormBand => "Cuánto puede variar: un tercio de la tolerancia, práctica común",
        OfTime::NoForm => {
            "Sin pasada de acabado, o con una pieza que no aguanta, no hay nada que enseñar."
        }
        OfTime::CountsTitle => "Cuántas pasadas",
        OfTime::CountsLead => {
            "La mejor serie para cada número de pasadas, contando poner la pasada, retroceder y medir, pero no pulir."
        }
        OfTime::CountsPasses => "Pasadas",
        OfTime::CountsPlanned => "en el plan",
        OfTime::NoCounts => "No hay pasadas que comparar.",
        OfTime::Time => "Tiempo",
        OfTime::Cost => "Coste",
        OfTime::TimeMethod => {
            "Una estimación: cada paso tiene un tiempo corto, uno probable y uno largo, y la suma sale tantas veces \
             por encima como por debajo. Nueve de cada diez veces se tarda más que la cifra baja, y nueve de cada diez \
             menos que la alta."
        }
        OfTime::StepsTitle => "En qué se va el tiempo",
        OfTime::StepsNote => {
            "Cuántas veces, y cuánto cada vez; lo que avanza el torno son todas las pasadas juntas."
        }
        OfTime::Step(step) => cut::step(step),
        OfTime::Feeding(feeding) => match feeding {
            Feeding::Parting => "Tronzar, con avance",
            Feeding::Facing => "Refrentar, con avance",
            Feeding::Centring => "Taladrar el centro, con avance",
            Feeding::Turning => "Cilindrar, con avance",
        },
        OfTime::NoTime => "Aún no se sabe: falta una cifra que hace falta.",
        OfTime::Part(part) => match part {
            CostPart::Labour => "Tiempo, torno y persona",
            CostPart::Edges => "Filos, los empezados enteros",
            CostPart::Discs => "Discos de corte",
            CostPart::Consumables => "Consumibles",
            CostPart::ToMinimum => "Hasta el precio mínimo",
            CostPart::Postage => "Portes",
        },
        OfTime::AtMinimum => "Vale el precio mínimo: el trabajo en sí sale por menos.",
        OfTime::CostNote => "Lo bajo y lo alto son los del tiempo.",
        OfTime::NoRate => "No hay tarifa anotada.",
        OfTime::EnterRate => "Anotar lo que cuesta una hora",
        OfTime::Numbers => "El gráfico en números",
    }
}

pub(in crate::page::words) fn form_ends(words: Words, form: &FormError) -> String {
    let at = |point: &FormPoint| {
        let [place, error] = words.form_point(point);
        format!("{error}, a {place} del resalte")
    };
    let (most, least) = (at(&form.greatest), at(&form.least));
    format!("Más de lo ajustado: como mucho {most}; como poco {least}.")
}

pub(in crate::page::words) fn form_line(words: Words, form: &FormError, allowed: Length) -> String {
    let [spread, allowed] = [form.spread(), allowed].map(|it| words.units().difference(it));
    format!("{spread}; se permiten {allowed}")
}

pub(in crate::page::words) fn row_takes(words: Words, passes: usize, time: Time) -> String {
    let passes = words.count(passes, "pasada", "pasadas");
    format!("{passes}, {}", words.time(time))
}
