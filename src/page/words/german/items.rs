//! German: what a part has several of: sections, cuts, holes, pieces of the head. Their names, kinds and fields,
//! and one line that says what each is.

use skimwright::job::{
    Bore, BoreEnd, BoreField, Cut, CutKind, Datum, Feature, FeatureField, Flats, HeadField, Hole,
    HoleKind, Job, Place, Section, SectionField, Turned, TurnedKind,
};
use skimwright::quantity::{Entered, Typed, show};
use skimwright::working::Value;

use crate::page::edit::{Kind, List};
use crate::page::words::{Text, Words};

pub(super) const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Head => "Stück des Kopfs",
        Kind::Section(kind) => section_kind(kind),
        Kind::Feature(kind) => cut_kind(kind),
        Kind::Bore(kind) => hole_kind(kind),
    }
}

const fn section_kind(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "Zylinder",
        TurnedKind::Taper => "Kegel, zwei Durchmesser",
        TurnedKind::StandardTaper => "Normkegel",
        TurnedKind::RatioTaper => "Kegel nach Verhältnis",
        TurnedKind::AngleTaper => "Kegel nach Winkel",
        TurnedKind::Groove => "Einstich",
        TurnedKind::Thread => "Gewinde",
        TurnedKind::Relief => "Freistich",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "Abflachung",
        CutKind::Keyway => "Passfedernut",
        CutKind::WoodruffKeyway => "Scheibenfedernut",
        CutKind::CrossHole => "Querbohrung",
        CutKind::Tang => "Lappen",
    }
}

const fn hole_kind(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Drilled => "Glatte Bohrung",
        HoleKind::Stepped => "Stufenbohrung",
        HoleKind::Tapped => "Gewindebohrung",
        HoleKind::Reamed => "Geriebene Bohrung",
        HoleKind::Through => "Durchgangsbohrung",
        HoleKind::CentreHole => "Zentrierbohrung",
    }
}

pub(super) const fn group(list: List) -> &'static str {
    match list {
        List::Head => "Kopf, hinter seinem ersten Stück",
        List::Sections => "Schaft, von der Schulter nach außen",
        List::Features => "In den Schaft gearbeitet",
        List::Bores => "Bohrungen längs der Achse",
    }
}

pub(super) const fn add(list: List) -> &'static str {
    match list {
        List::Head => "Kopfstück hinzufügen",
        List::Sections => "Abschnitt, Einstich oder Gewinde dazu",
        List::Features => "Abflachung, Nut, Querbohrung, Lappen dazu",
        List::Bores => "Bohrung dazu",
    }
}

pub(super) const fn none(list: List) -> &'static str {
    match list {
        List::Head => "Keine: Der Kopf ist ein glattes Stück.",
        List::Sections => "Kein Abschnitt: Der Schaft fehlt.",
        List::Features => "Nichts: Der Schaft ist überall rund.",
        List::Bores => "Keine Bohrungen: Beide Enden sind voll.",
    }
}

pub(super) const fn move_on(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Nach außen",
        List::Features | List::Bores => "Nach unten",
    }
}

pub(super) const fn move_back(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Nach innen",
        List::Features | List::Bores => "Nach oben",
    }
}

pub(super) const fn copy(list: List) -> &'static str {
    match list {
        List::Bores => "Ebenso am anderen Ende",
        _ => "Duplizieren",
    }
}

pub(super) const fn end(end: BoreEnd) -> &'static str {
    match end {
        BoreEnd::FreeEnd => "Freies Ende",
        BoreEnd::HeadEnd => "Ende des Kopfs",
    }
}

pub(super) const fn from(datum: Datum) -> &'static str {
    match datum {
        Datum::Shoulder => "Von der Schulter",
        Datum::FreeEnd => "Vom freien Ende",
    }
}

pub(super) const fn flats(flats: Flats) -> &'static str {
    match flats {
        Flats::One => "Eine",
        Flats::Two => "Zwei, gegenüber",
    }
}

/// The name of a row, counted from 1; `cut` is the kind where it is known.
pub(in crate::page::words) fn name(list: List, index: u8, cut: Option<CutKind>) -> String {
    let number = u32::from(index) + 1;
    let name = match list {
        // The first piece of the head is no row of the list.
        List::Head => return format!("Kopfstück {}", number + 1),
        List::Sections => "Abschnitt",
        List::Features => cut.map_or("Element", cut_kind),
        List::Bores => "Bohrung",
    };
    format!("{name} {number}")
}

pub(super) const fn head_label(field: HeadField) -> &'static str {
    match field {
        HeadField::Diameter => "Durchmesser",
        HeadField::Length => "Länge",
    }
}

pub(super) const fn section_label(field: SectionField) -> &'static str {
    match field {
        SectionField::Kind => "Art",
        SectionField::Taper => "Reihe und Größe",
        SectionField::Thread => "Gewinde",
        SectionField::Diameter => "Durchmesser",
        SectionField::ShoulderDiameter => "Durchmesser, Schulterseite",
        SectionField::EndDiameter => "Durchmesser, freie Seite",
        SectionField::Ratio => "Kegelverhältnis",
        SectionField::Angle => "Kegelwinkel",
        SectionField::PastGauge => "Länge vor der Bezugsebene",
        SectionField::Length => "Länge",
        SectionField::DiameterError => "Durchmesser ungewiss um",
        SectionField::LengthError => "Länge ungewiss um",
        SectionField::From => "Ort",
        SectionField::Start => "Abstand",
    }
}

pub(super) const fn feature_label(field: FeatureField) -> &'static str {
    match field {
        FeatureField::Kind => "Art",
        FeatureField::Over => "Maß darüber",
        FeatureField::Flats => "Abflachungen",
        FeatureField::Width => "Breite",
        FeatureField::Depth => "Tiefe",
        FeatureField::Disc => "Fräserdurchmesser",
        FeatureField::Diameter => "Durchmesser",
        FeatureField::Thickness => "Dicke",
        FeatureField::Length => "Länge",
        FeatureField::SlotWidth => "Breite des Schlitzes",
        FeatureField::SlotDepth => "Tiefe des Schlitzes",
        FeatureField::From => "Ort",
        FeatureField::Start => "Abstand",
    }
}

pub(super) const fn bore_label(field: BoreField) -> &'static str {
    match field {
        BoreField::Kind => "Art",
        BoreField::End => "Gebohrt von",
        BoreField::Diameter => "Durchmesser",
        BoreField::Depth => "Tiefe",
        BoreField::Bottom => "Grund",
        BoreField::StepDiameter => "Durchmesser der weiten Stufe",
        BoreField::StepDepth => "Tiefe der weiten Stufe",
        BoreField::Thread => "Gewinde",
        BoreField::ThreadDepth => "Tiefe des vollen Gewindes",
        BoreField::ReamDepth => "Reibtiefe",
        BoreField::DrillDepth => "Bohrtiefe",
        BoreField::CentreDrill => "Zentrierbohrer",
        BoreField::OffCentre => "Außermittig um",
    }
}

pub(super) const fn section_hint(field: SectionField) -> Option<&'static str> {
    Some(match field {
        SectionField::PastGauge => {
            "0, wenn der Abschnitt an der Bezugsebene beginnt, wo der Kegel sein Nennmaß hat."
        }
        SectionField::Ratio => "20 heißt 1 : 20. Negativ: wird zum freien Ende dicker.",
        SectionField::Angle => {
            "Zwischen den Seiten: das Doppelte des Oberschlittenwinkels. Negativ: wird zum freien Ende dicker."
        }
        SectionField::Start => "Längs der Achse, bis zur näheren Seite.",
        SectionField::DiameterError | SectionField::LengthError => {
            "Was Messmittel und abgenutzte Fläche offenlassen. Leer: das Übliche."
        }
        _ => return None,
    })
}

pub(super) const fn feature_hint(field: FeatureField) -> Option<&'static str> {
    Some(match field {
        FeatureField::Over => {
            "Eine Abflachung: von ihr zur runden Seite gegenüber. Zwei: über beide, als Schlüsselweite."
        }
        FeatureField::Depth => "Von außen am Schaft bis zur tiefsten Stelle.",
        FeatureField::Disc => "Des Scheibenfederfräsers, oder die doppelte Höhe seines Bogens.",
        FeatureField::SlotWidth => "Quer durch das Ende des Lappens. Leer: kein Schlitz.",
        FeatureField::SlotDepth => "Vom freien Ende.",
        FeatureField::Start => {
            "Längs der Achse, bis zur näheren Seite; bei Querbohrung oder Scheibenfedernut bis zur Mitte."
        }
        _ => return None,
    })
}

pub(super) const fn bore_hint(field: BoreField) -> Option<&'static str> {
    Some(match field {
        BoreField::Depth | BoreField::DrillDepth => {
            "Vom Ende, wie es ist, bis zum Ende des vollen Durchmessers."
        }
        BoreField::OffCentre => "Wie weit neben der Schaftachse. Leer: auf ihr.",
        _ => return None,
    })
}

/// What a row is, in one line: kind, main size, where.
pub(in crate::page::words) fn line(words: Words, job: &Job, list: List, index: u8) -> String {
    let (part, at) = (&job.part, usize::from(index));
    let line = match list {
        List::Head => part.head_beyond.get(at).map(|piece| {
            let parts = [words.across(&piece.diameter), words.long(&piece.length)];
            parts.join(", ")
        }),
        List::Sections => part.sections.get(at).map(|it| section_line(words, it)),
        List::Features => part.features.get(at).map(|it| feature_line(words, it)),
        List::Bores => part.bores.get(at).map(|it| bore_line(words, it)),
    };
    line.unwrap_or_default()
}

fn section_line(words: Words, section: &Section) -> String {
    let long = |length| words.long(length);
    let mut parts = match &section.turned {
        Turned::Cylinder { diameter, length } => {
            vec![format!("Zylinder {}", words.across(diameter)), long(length)]
        }
        Turned::Taper {
            shoulder_diameter,
            end_diameter,
            length,
            ..
        } => {
            let (from, to) = (words.across(shoulder_diameter), words.across(end_diameter));
            vec![format!("Kegel {from} auf {to}"), long(length)]
        }
        Turned::StandardTaper { taper, length, .. } => {
            let name = taper.get().map(|row| {
                let series = words.say(Text::TaperSeries(row.series));
                format!("{series} {}", row.size)
            });
            let length = length.as_ref().map(long);
            name.into_iter().chain(length).collect()
        }
        Turned::RatioTaper {
            shoulder_diameter,
            ratio,
            length,
        } => {
            let (ratio, from) = (show::taper(ratio.value()), words.across(shoulder_diameter));
            vec![format!("Kegel {ratio} ab {from}"), long(length)]
        }
        Turned::AngleTaper {
            shoulder_diameter,
            angle,
            length,
        } => {
            let (angle, from) = (
                words.value(Value::Angle(angle.value())),
                words.across(shoulder_diameter),
            );
            vec![format!("Kegel {angle} ab {from}"), long(length)]
        }
        Turned::Groove { diameter, length } => {
            vec![
                format!("Einstich {}", words.across(diameter)),
                wide(words, length),
            ]
        }
        Turned::Thread { thread, length } => {
            vec![format!("Gewinde {}", thread.code()), long(length)]
        }
        Turned::Relief { diameter, length } => {
            vec![
                format!("Freistich {}", words.across(diameter)),
                wide(words, length),
            ]
        }
    };
    parts.extend(section.place.as_ref().map(|place| placed(words, place)));
    parts.join(", ")
}

/// A cut is named by its kind already.
fn feature_line(words: Words, feature: &Feature) -> String {
    let mut parts = match &feature.cut {
        Cut::Flat {
            over,
            flats,
            length,
        } => {
            let count = match flats {
                Flats::One => "eine",
                Flats::Two => "zwei",
            };
            vec![
                format!("{count}, {} darüber", words.entered(over)),
                words.long(length),
            ]
        }
        Cut::Keyway {
            width,
            depth,
            length,
        } => vec![wide(words, width), deep(words, depth), words.long(length)],
        Cut::WoodruffKeyway { width, depth, .. } => {
            vec![wide(words, width), deep(words, depth)]
        }
        Cut::CrossHole { diameter } => vec![words.across(diameter)],
        Cut::Tang {
            thickness, length, ..
        } => vec![
            format!("{} dick", words.entered(thickness)),
            words.long(length),
        ],
    };
    parts.extend(feature.place.as_ref().map(|place| placed(words, place)));
    parts.join(", ")
}

fn bore_line(words: Words, bore: &Bore) -> String {
    let mut parts = match &bore.hole {
        Hole::Drilled {
            diameter, depth, ..
        } => vec![
            format!("glatt {}", words.across(diameter)),
            deep(words, depth),
        ],
        Hole::Stepped {
            diameter,
            depth,
            step_diameter,
            ..
        } => {
            let (wide, narrow) = (words.across(step_diameter), words.across(diameter));
            vec![format!("gestuft {wide} und {narrow}"), deep(words, depth)]
        }
        Hole::Tapped {
            thread,
            thread_depth,
            ..
        } => vec![
            format!("Gewinde {}", thread.code()),
            deep(words, thread_depth),
        ],
        Hole::Reamed {
            diameter,
            ream_depth,
            ..
        } => vec![
            format!("gerieben {}", words.across(diameter)),
            deep(words, ream_depth),
        ],
        Hole::Through { diameter } => vec![format!("durchgehend, {}", words.across(diameter))],
        Hole::CentreHole { centre_drill } => vec![format!("Zentrierung {}", centre_drill.code())],
    };
    if !matches!(bore.hole, Hole::Through { .. }) {
        parts.push(
            match bore.end {
                BoreEnd::FreeEnd => "vom freien Ende",
                BoreEnd::HeadEnd => "vom Kopf",
            }
            .to_owned(),
        );
    }
    parts.join(", ")
}

fn placed(words: Words, place: &Place) -> String {
    let from = match place.from {
        Datum::Shoulder => "von der Schulter",
        Datum::FreeEnd => "vom freien Ende",
    };
    format!("{} {from}", words.entered(&place.start))
}

fn wide<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} breit", words.entered(size))
}

fn deep<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} tief", words.entered(size))
}

pub(in crate::page::words) fn long(length: &str) -> String {
    format!("{length} lang")
}
