//! English: which standard taper a taper is that was measured.

use skimwright::part::{Candidate, Recognition, Verdict};
use skimwright::quantity::{Length, TaperRatio, show};

use super::about::OfTaper;
use super::{Text, Words, english_strength};

pub(super) const fn text(text: OfTaper) -> &'static str {
    match text {
        OfTaper::Title => "Which standard taper it is",
        OfTaper::Missing => "A diameter or the length is missing or out of range.",
        OfTaper::ShareNote => {
            "The percentage: how many of 100 such readings of that very taper would be as far off as yours, or farther."
        }
        OfTaper::LargeOutward => {
            "Its large end lies towards the free end: it cannot be entered as a standard taper here."
        }
        OfTaper::ItIsThis => "It is this one",
    }
}

pub(super) fn verdict(words: Words, found: &Recognition) -> String {
    match found.verdict {
        Verdict::Found => "One standard taper agrees.".to_owned(),
        Verdict::NotToldApart => format!(
            "{} agree and cannot be told apart by these measures. Measure farther apart or with a finer instrument, or \
             go by the diameters.",
            found.candidates.len()
        ),
        Verdict::NoneOfThese => {
            let nearest = found.candidates.first().map(|it| name(words, it));
            format!(
                "No standard taper of the tables agrees. The nearest is {}: measure again, or keep it as it is.",
                nearest.unwrap_or_default()
            )
        }
        Verdict::NotALength => text(OfTaper::Missing).to_owned(),
        Verdict::NoDistance => {
            "The places are no farther apart than the length may be off. Measure farther apart.".to_owned()
        }
        Verdict::NoChange => {
            "The diameters differ by no more than they may be off: it may be a cylinder. Measure farther apart, or \
             with a finer instrument."
                .to_owned()
        }
        Verdict::TooSteep => "Steeper than 90°: that is a chamfer, no taper shank.".to_owned(),
    }
}

pub(super) fn measured(found: &Recognition) -> Option<String> {
    let (ratio, angle) = (found.ratio?, found.half_angle?);
    if ratio.value <= 0.0 {
        return None;
    }
    Some(format!(
        "Measured: {}, top slide at {}° ± {}°.",
        show::taper(TaperRatio::one_in(1.0 / ratio.value)),
        show::trimmed(angle.value.to_degrees(), 3),
        show::trimmed(angle.error.to_degrees(), 3)
    ))
}

pub(super) fn name(words: Words, candidate: &Candidate) -> String {
    candidate.size.get().map_or_else(String::new, |row| {
        format!("{} {}", words.say(Text::TaperSeries(row.series)), row.size)
    })
}

pub(super) fn agrees(words: Words, candidate: &Candidate, plane: Option<Length>) -> String {
    // In words by how often chance alone would be as far off; common practice, no source.
    let how = match candidate.share {
        share if share >= 0.3 => "agrees well",
        share if share >= 0.05 => "agrees",
        share if share >= skimwright::part::LEAST_SHARE => "just agrees",
        _ => "does not agree",
    };
    let mut parts = vec![format!("{how}, {}", show::share(candidate.share))];
    parts.extend(plane.map(|plane| {
        let at = english_strength::place(words, plane);
        let error = words.length(candidate.gauge_plane.error);
        format!("gauge plane {at}, ± {error}")
    }));
    parts.push(
        if candidate.on_taper {
            "within the length of the table"
        } else {
            "longer than the table says"
        }
        .to_owned(),
    );
    format!("{}.", parts.join("; "))
}
