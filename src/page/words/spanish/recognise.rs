//! Spanish: which standard taper a taper is that was measured.

use skimwright::part::{Candidate, LEAST_SHARE, Recognition, Verdict};
use skimwright::quantity::{Length, TaperRatio, show};

use super::strength;
use crate::page::words::{OfTaper, Text, Words};

pub(super) const fn text(text: OfTaper) -> &'static str {
    match text {
        OfTaper::Title => "Qué cono normalizado es",
        OfTaper::Missing => "Falta un diámetro o la longitud, o no son posibles.",
        OfTaper::ShareNote => {
            "El porcentaje: cuántas de 100 medidas así de ese mismo cono se desviarían tanto como las tuyas, o más."
        }
        OfTaper::LargeOutward => {
            "Su extremo grande mira al extremo libre: así no se puede anotar aquí como cono normalizado."
        }
        OfTaper::ItIsThis => "Es este",
    }
}

pub(in crate::page::words) fn verdict(words: Words, found: &Recognition) -> String {
    match found.verdict {
        Verdict::Found => "Coincide un cono normalizado.".to_owned(),
        Verdict::NotToldApart => format!(
            "Coinciden {}, y con estas medidas no se distinguen. Mide en sitios más separados o con un instrumento más \
             fino, o guíate por los diámetros.",
            found.candidates.len()
        ),
        Verdict::NoneOfThese => {
            let nearest = found.candidates.first().map(|it| name(words, it));
            format!(
                "No coincide ningún cono normalizado de las tablas. El más cercano es {}: mide otra vez, o déjalo así.",
                nearest.unwrap_or_default()
            )
        }
        Verdict::NotALength => text(OfTaper::Missing).to_owned(),
        Verdict::NoDistance => {
            "Los sitios no están más separados que la incertidumbre de la longitud. Mide en sitios más separados."
                .to_owned()
        }
        Verdict::NoChange => {
            "Los diámetros no se diferencian más que su propia incertidumbre: puede ser un cilindro. Mide en sitios más \
             separados o con un instrumento más fino."
                .to_owned()
        }
        Verdict::TooSteep => "Más de 90°: eso es un chaflán, no un mango cónico.".to_owned(),
    }
}

pub(in crate::page::words) fn measured(found: &Recognition) -> Option<String> {
    let (ratio, angle) = (found.ratio?, found.half_angle?);
    if ratio.value <= 0.0 {
        return None;
    }
    Some(format!(
        "Medido: {}, carro orientable a {}° ± {}°.",
        show::taper(TaperRatio::one_in(1.0 / ratio.value)),
        show::trimmed(angle.value.to_degrees(), 3),
        show::trimmed(angle.error.to_degrees(), 3)
    ))
}

pub(in crate::page::words) fn name(words: Words, candidate: &Candidate) -> String {
    candidate.size.get().map_or_else(String::new, |row| {
        format!("{} {}", words.say(Text::TaperSeries(row.series)), row.size)
    })
}

pub(in crate::page::words) fn agrees(
    words: Words,
    candidate: &Candidate,
    plane: Option<Length>,
) -> String {
    // In words by how often chance alone would be as far off; common practice, no source.
    let how = match candidate.share {
        share if share >= 0.3 => "coincide bien",
        share if share >= 0.05 => "coincide",
        share if share >= LEAST_SHARE => "coincide por poco",
        _ => "no coincide",
    };
    let mut parts = vec![format!("{how}, {}", show::share(candidate.share))];
    parts.extend(plane.map(|plane| {
        let at = strength::place(words, plane);
        let error = words.length(candidate.gauge_plane.error);
        format!("plano de referencia {at}, ± {error}")
    }));
    parts.push(
        if candidate.on_taper {
            "dentro de la longitud de la tabla"
        } else {
            "más largo de lo que dice la tabla"
        }
        .to_owned(),
    );
    format!("{}.", parts.join("; "))
}
