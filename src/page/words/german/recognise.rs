//! German: which standard taper a taper is that was measured.

use skimwright::part::{Candidate, LEAST_SHARE, Recognition, Verdict};
use skimwright::quantity::{Length, TaperRatio, show};

use super::strength;
use crate::page::words::{OfTaper, Text, Words};

pub(super) const fn text(text: OfTaper) -> &'static str {
    match text {
        OfTaper::Title => "Welcher Normkegel es ist",
        OfTaper::Missing => "Ein Durchmesser oder die Länge fehlt oder ist unmöglich.",
        OfTaper::ShareNote => {
            "Die Prozente: wie viele von 100 solchen Messungen genau dieses Kegels so weit danebenlägen wie diese, oder \
             weiter."
        }
        OfTaper::LargeOutward => {
            "Sein großes Ende liegt zum freien Ende hin: So lässt er sich hier nicht als Normkegel eintragen."
        }
        OfTaper::ItIsThis => "Dieser ist es",
    }
}

pub(in crate::page::words) fn verdict(words: Words, found: &Recognition) -> String {
    match found.verdict {
        Verdict::Found => "Ein Normkegel passt.".to_owned(),
        Verdict::NotToldApart => format!(
            "{} passen und sind mit diesen Maßen nicht zu unterscheiden. Weiter auseinander oder feiner messen, oder \
             nach den Durchmessern gehen.",
            found.candidates.len()
        ),
        Verdict::NoneOfThese => {
            let nearest = found.candidates.first().map(|it| name(words, it));
            format!(
                "Kein Normkegel der Tabellen passt. Am nächsten ist {}: noch einmal messen, oder so lassen.",
                nearest.unwrap_or_default()
            )
        }
        Verdict::NotALength => text(OfTaper::Missing).to_owned(),
        Verdict::NoDistance => {
            "Die Messstellen liegen nicht weiter auseinander, als die Länge ungewiss ist. Weiter auseinander messen."
                .to_owned()
        }
        Verdict::NoChange => {
            "Die Durchmesser unterscheiden sich nicht mehr, als sie ungewiss sind: Es kann ein Zylinder sein. Weiter \
             auseinander oder feiner messen."
                .to_owned()
        }
        Verdict::TooSteep => "Steiler als 90°: Das ist eine Fase, kein Kegelschaft.".to_owned(),
    }
}

pub(in crate::page::words) fn measured(found: &Recognition) -> Option<String> {
    let (ratio, angle) = (found.ratio?, found.half_angle?);
    if ratio.value <= 0.0 {
        return None;
    }
    Some(format!(
        "Gemessen: {}, Oberschlitten auf {}° ± {}°.",
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
        share if share >= 0.3 => "passt gut",
        share if share >= 0.05 => "passt",
        share if share >= LEAST_SHARE => "passt knapp",
        _ => "passt nicht",
    };
    let mut parts = vec![format!("{how}, {}", show::share(candidate.share))];
    parts.extend(plane.map(|plane| {
        let at = strength::place(words, plane);
        let error = words.length(candidate.gauge_plane.error);
        format!("Bezugsebene {at}, ± {error}")
    }));
    parts.push(
        if candidate.on_taper {
            "innerhalb der Länge der Tabelle"
        } else {
            "länger, als die Tabelle sagt"
        }
        .to_owned(),
    );
    format!("{}.", parts.join("; "))
}
