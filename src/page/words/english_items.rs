//! English: what a part has several of: sections, cuts, holes, pieces of the head. Their names, kinds and fields,
//! and one line that says what each is.

use skimwright::job::{
    Bore, BoreEnd, BoreField, Cut, CutKind, Datum, Feature, FeatureField, Flats, HeadField, Hole,
    HoleKind, Job, Place, Section, SectionField, Turned, TurnedKind,
};
use skimwright::quantity::{Entered, Typed, show};
use skimwright::working::Value;

use super::{Text, Words};
use crate::page::edit::{Kind, List};

pub(super) const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Head => "Piece of the head",
        Kind::Section(kind) => section_kind(kind),
        Kind::Feature(kind) => cut_kind(kind),
        Kind::Bore(kind) => hole_kind(kind),
    }
}

const fn section_kind(kind: TurnedKind) -> &'static str {
    match kind {
        TurnedKind::Cylinder => "Cylinder",
        TurnedKind::Taper => "Taper, two diameters",
        TurnedKind::StandardTaper => "Standard taper",
        TurnedKind::RatioTaper => "Taper by ratio",
        TurnedKind::AngleTaper => "Taper by angle",
        TurnedKind::Groove => "Groove",
        TurnedKind::Thread => "Thread",
        TurnedKind::Relief => "Relief",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::Flat => "Flat",
        CutKind::Keyway => "Keyway",
        CutKind::WoodruffKeyway => "Woodruff keyway",
        CutKind::CrossHole => "Cross hole",
        CutKind::Tang => "Tang",
    }
}

const fn hole_kind(kind: HoleKind) -> &'static str {
    match kind {
        HoleKind::Drilled => "Plain hole",
        HoleKind::Stepped => "Stepped hole",
        HoleKind::Tapped => "Tapped hole",
        HoleKind::Reamed => "Reamed hole",
        HoleKind::Through => "Hole right through",
        HoleKind::CentreHole => "Centre hole",
    }
}

pub(super) const fn group(list: List) -> &'static str {
    match list {
        List::Head => "Head, beyond its first piece",
        List::Sections => "Shank, from the shoulder outward",
        List::Features => "Cut into the shank",
        List::Bores => "Holes along the axis",
    }
}

pub(super) const fn add(list: List) -> &'static str {
    match list {
        List::Head => "Add a piece of the head",
        List::Sections => "Add a section, groove or thread",
        List::Features => "Add a flat, keyway, cross hole or tang",
        List::Bores => "Add a hole",
    }
}

pub(super) const fn none(list: List) -> &'static str {
    match list {
        List::Head => "None: the head is one plain piece.",
        List::Sections => "No section: the shank is missing.",
        List::Features => "Nothing: the shank is round all along.",
        List::Bores => "No holes: both ends are solid.",
    }
}

pub(super) const fn move_on(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Move outward",
        List::Features | List::Bores => "Move down",
    }
}

pub(super) const fn move_back(list: List) -> &'static str {
    match list {
        List::Head | List::Sections => "Move inward",
        List::Features | List::Bores => "Move up",
    }
}

pub(super) const fn copy(list: List) -> &'static str {
    match list {
        List::Bores => "Same at the other end",
        _ => "Duplicate",
    }
}

pub(super) const fn end(end: BoreEnd) -> &'static str {
    match end {
        BoreEnd::FreeEnd => "The free end",
        BoreEnd::HeadEnd => "The end of the head",
    }
}

pub(super) const fn from(datum: Datum) -> &'static str {
    match datum {
        Datum::Shoulder => "From the shoulder",
        Datum::FreeEnd => "From the free end",
    }
}

pub(super) const fn flats(flats: Flats) -> &'static str {
    match flats {
        Flats::One => "One",
        Flats::Two => "Two, opposite",
    }
}

/// The name of a row, counted from 1; `cut` is the kind where it is known.
pub(super) fn name(list: List, index: u8, cut: Option<CutKind>) -> String {
    let number = u32::from(index) + 1;
    let name = match list {
        // The first piece of the head is no row of the list.
        List::Head => return format!("Head piece {}", number + 1),
        List::Sections => "Section",
        List::Features => cut.map_or("Cut", cut_kind),
        List::Bores => "Hole",
    };
    format!("{name} {number}")
}

pub(super) const fn head_label(field: HeadField) -> &'static str {
    match field {
        HeadField::Diameter => "Diameter",
        HeadField::Length => "Length",
    }
}

pub(super) const fn section_label(field: SectionField) -> &'static str {
    match field {
        SectionField::Kind => "Kind",
        SectionField::Taper => "Series and size",
        SectionField::Thread => "Thread",
        SectionField::Diameter => "Diameter",
        SectionField::ShoulderDiameter => "Diameter, shoulder side",
        SectionField::EndDiameter => "Diameter, free side",
        SectionField::Ratio => "Taper ratio",
        SectionField::Angle => "Included angle",
        SectionField::PastGauge => "Length before the gauge plane",
        SectionField::Length => "Length",
        SectionField::DiameterError => "Diameters may be off by",
        SectionField::LengthError => "Length may be off by",
        SectionField::From => "Place",
        SectionField::Start => "Distance",
    }
}

pub(super) const fn feature_label(field: FeatureField) -> &'static str {
    match field {
        FeatureField::Kind => "Kind",
        FeatureField::Over => "Size across",
        FeatureField::Flats => "Flats",
        FeatureField::Width => "Width",
        FeatureField::Depth => "Depth",
        FeatureField::Disc => "Cutter diameter",
        FeatureField::Diameter => "Diameter",
        FeatureField::Thickness => "Thickness",
        FeatureField::Length => "Length",
        FeatureField::SlotWidth => "Width of the slot",
        FeatureField::SlotDepth => "Depth of the slot",
        FeatureField::From => "Place",
        FeatureField::Start => "Distance",
    }
}

pub(super) const fn bore_label(field: BoreField) -> &'static str {
    match field {
        BoreField::Kind => "Kind",
        BoreField::End => "Made from",
        BoreField::Diameter => "Diameter",
        BoreField::Depth => "Depth",
        BoreField::Bottom => "Bottom",
        BoreField::StepDiameter => "Diameter of the wide part",
        BoreField::StepDepth => "Depth of the wide part",
        BoreField::Thread => "Thread",
        BoreField::ThreadDepth => "Depth of full thread",
        BoreField::ReamDepth => "Depth reamed",
        BoreField::DrillDepth => "Depth drilled",
        BoreField::CentreDrill => "Centre drill",
        BoreField::OffCentre => "Off centre by",
    }
}

pub(super) const fn section_hint(field: SectionField) -> Option<&'static str> {
    Some(match field {
        SectionField::PastGauge => {
            "0 when the section begins at the gauge plane, where the taper has its nominal size."
        }
        SectionField::Ratio => "20 means 1 in 20. Negative: it grows towards the free end.",
        SectionField::Angle => {
            "Between opposite sides: twice the top-slide angle. Negative: it grows towards the free end."
        }
        SectionField::Start => "Along the axis, to its nearer side.",
        SectionField::DiameterError | SectionField::LengthError => {
            "What your instrument and the worn surface leave in doubt. Empty: the usual."
        }
        _ => return None,
    })
}

pub(super) const fn feature_hint(field: FeatureField) -> Option<&'static str> {
    Some(match field {
        FeatureField::Over => {
            "One flat: from it to the round side opposite. Two: over both, as a spanner takes them."
        }
        FeatureField::Depth => "From the outside of the shank down to the deepest place.",
        FeatureField::Disc => "Of the Woodruff cutter, or twice the height of its arc.",
        FeatureField::SlotWidth => "Across the end of the tang. Empty: no slot.",
        FeatureField::SlotDepth => "From the free end.",
        FeatureField::Start => {
            "Along the axis, to its nearer side; of a cross hole or Woodruff keyway to its middle."
        }
        _ => return None,
    })
}

pub(super) const fn bore_hint(field: BoreField) -> Option<&'static str> {
    Some(match field {
        BoreField::Depth | BoreField::DrillDepth => {
            "From the end as received, to the end of the full diameter."
        }
        BoreField::OffCentre => "How far beside the axis of the shank. Empty: on it.",
        _ => return None,
    })
}

/// What a row is, in one line: kind, main size, where.
pub(super) fn line(words: Words, job: &Job, list: List, index: u8) -> String {
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
            vec![format!("cylinder {}", words.across(diameter)), long(length)]
        }
        Turned::Taper {
            shoulder_diameter,
            end_diameter,
            length,
            ..
        } => {
            let (from, to) = (words.across(shoulder_diameter), words.across(end_diameter));
            vec![format!("taper {from} to {to}"), long(length)]
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
            vec![format!("taper {ratio} from {from}"), long(length)]
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
            vec![format!("taper {angle} from {from}"), long(length)]
        }
        Turned::Groove { diameter, length } => {
            vec![
                format!("groove {}", words.across(diameter)),
                wide(words, length),
            ]
        }
        Turned::Thread { thread, length } => {
            vec![format!("thread {}", thread.code()), long(length)]
        }
        Turned::Relief { diameter, length } => {
            vec![
                format!("relief {}", words.across(diameter)),
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
                Flats::One => "one",
                Flats::Two => "two",
            };
            vec![
                format!("{count}, {} across", words.entered(over)),
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
            format!("{} thick", words.entered(thickness)),
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
            format!("plain {}", words.across(diameter)),
            deep(words, depth),
        ],
        Hole::Stepped {
            diameter,
            depth,
            step_diameter,
            ..
        } => {
            let (wide, narrow) = (words.across(step_diameter), words.across(diameter));
            vec![format!("stepped {wide} and {narrow}"), deep(words, depth)]
        }
        Hole::Tapped {
            thread,
            thread_depth,
            ..
        } => vec![
            format!("tapped {}", thread.code()),
            deep(words, thread_depth),
        ],
        Hole::Reamed {
            diameter,
            ream_depth,
            ..
        } => vec![
            format!("reamed {}", words.across(diameter)),
            deep(words, ream_depth),
        ],
        Hole::Through { diameter } => vec![format!("right through, {}", words.across(diameter))],
        Hole::CentreHole { centre_drill } => vec![format!("centre {}", centre_drill.code())],
    };
    if !matches!(bore.hole, Hole::Through { .. }) {
        parts.push(
            match bore.end {
                BoreEnd::FreeEnd => "from the free end",
                BoreEnd::HeadEnd => "from the head",
            }
            .to_owned(),
        );
    }
    parts.join(", ")
}

fn placed(words: Words, place: &Place) -> String {
    let from = match place.from {
        Datum::Shoulder => "from the shoulder",
        Datum::FreeEnd => "from the free end",
    };
    format!("{} {from}", words.entered(&place.start))
}

fn wide<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} wide", words.entered(size))
}

fn deep<Q: Typed>(words: Words, size: &Entered<Q>) -> String {
    format!("{} deep", words.entered(size))
}

pub(super) fn long(length: &str) -> String {
    format!("{length} long")
}
