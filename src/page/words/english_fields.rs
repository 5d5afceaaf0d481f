//! English: the labels of the fields, the notes under them, and what is wrong with what was typed.

use skimwright::job::{BoreField, Field, SectionField};
use skimwright::quantity::{Entry, MOST_CHARACTERS, ReadError, ReadErrorKind};

use super::Words;
use crate::page::state::Wrong;

pub(super) const fn label(field: Field) -> &'static str {
    match field {
        Field::Title => "Name of the job",
        Field::Material => "Material",
        Field::HeadDiameter => "Head diameter",
        Field::HeadLength => "Head length",
        Field::Runout => "Runout (full reading)",
        Field::Sections => "Sections",
        Field::Section(_, field) => section_label(field),
        Field::Bores => "Holes",
        Field::Bore(_, field) => bore_label(field),
        Field::WantedDiameter => "Finished diameter",
        Field::Tolerance => "Tolerance",
        Field::UpperDeviation => "Upper deviation",
        Field::LowerDeviation => "Lower deviation",
        Field::WantedLength => "Finished length",
        Field::ShoulderRadius => "Fillet radius at the shoulder",
        Field::EndChamfer => "Chamfer at the end, 45°",
        Field::Countersink => "Countersink diameter, 60°",
        Field::ReceiverDepth => "Depth of the receiver",
        Field::LeastGrip => "Least length gripped",
        Field::Tool => "Turning tool",
        Field::CutOffMethod => "Cut off with",
        Field::Kerf => "Kerf",
        Field::FacingStock => "Facing stock",
        Field::CentreOrder => "Centre made",
        Field::RoughInfeed => "Most infeed when roughing",
        Field::LastCut => "Each last cut, off diameter",
        Field::PolishingStock => "Left for polishing, on diameter",
        Field::CuttingSpeed => "Cutting speed",
        Field::RoughFeed => "Feed, roughing",
        Field::FinishFeed => "Feed, last cuts",
        Field::TopSpeed => "Highest spindle speed",
        Field::Approach => "Approach",
        Field::SetTime => "Set depth and engage",
        Field::ReturnTime => "Return",
        Field::MeasureTime => "Measure",
        Field::PolishTime => "Polish, once",
    }
}

const fn section_label(field: SectionField) -> &'static str {
    match field {
        SectionField::Kind => "Kind",
        SectionField::Diameter => "Diameter",
        SectionField::ShoulderDiameter => "Diameter, shoulder side",
        SectionField::EndDiameter => "Diameter, free side",
        SectionField::Length => "Length",
        SectionField::Taper => "Series and size",
        SectionField::PastGauge => "Length before the gauge plane",
    }
}

const fn bore_label(field: BoreField) -> &'static str {
    match field {
        BoreField::Kind => "Kind",
        BoreField::Diameter => "Diameter",
        BoreField::Depth => "Depth",
        BoreField::Bottom => "Bottom",
        BoreField::Thread => "Thread",
        BoreField::ThreadDepth => "Depth of full thread",
        BoreField::DrillDepth => "Depth of the tapping hole",
        BoreField::CentreDrill => "Centre drill",
    }
}

pub(super) fn in_full(field: Field) -> String {
    match field {
        Field::Section(index, part) => {
            format!("{}: {}", section(index), lower_first(section_label(part)))
        }
        Field::Bore(index, part) => {
            format!("{}: {}", hole(index), lower_first(bore_label(part)))
        }
        other => label(other).to_owned(),
    }
}

pub(super) fn section(index: u8) -> String {
    format!("Section {}", u32::from(index) + 1)
}

pub(super) fn hole(index: u8) -> String {
    format!("Hole {}", u32::from(index) + 1)
}

fn lower_first(text: &str) -> String {
    let mut characters = text.chars();
    match characters.next() {
        Some(first) => first.to_lowercase().chain(characters).collect(),
        None => String::new(),
    }
}

pub(super) const fn hint(field: Field) -> Option<&'static str> {
    Some(match field {
        Field::Runout => "Indicator on the shank, part held true by the features that stay.",
        Field::Section(_, SectionField::PastGauge) => {
            "0 when the section begins at the gauge plane, where the taper has its nominal size."
        }
        Field::Bore(_, BoreField::Depth | BoreField::DrillDepth) => {
            "From the free end as received, to the end of the full diameter."
        }
        Field::WantedLength => "From the shoulder to the finished end.",
        Field::Countersink => "For the live centre. Empty: none.",
        Field::ReceiverDepth => {
            "How deep the holder, bore or bearing takes the shank. May stay empty."
        }
        Field::LeastGrip => "What the holder's maker asks for. May stay empty.",
        Field::Kerf => "Width of the cut. Empty: the usual one.",
        Field::FacingStock => "Left on the end, to be faced off.",
        Field::RoughInfeed => "On radius. Empty: usual for tool and material.",
        Field::CuttingSpeed | Field::RoughFeed | Field::FinishFeed => {
            "Empty: usual for tool and material."
        }
        Field::LastCut => "Two equal ones: the first shows what the second will do.",
        Field::TopSpeed => "Of machine, chuck and work, whichever is least.",
        Field::Approach => "Travel before the tool meets metal.",
        Field::UpperDeviation | Field::LowerDeviation => {
            "From the finished diameter, such as -0.02."
        }
        _ => return None,
    })
}

pub(super) fn wrong(words: Words, field: Field, wrong: &Wrong, kept: Option<&str>) -> String {
    match wrong {
        Wrong::Unread(error) => {
            let what = unread(error);
            match kept {
                Some(kept) => format!("{what} The plan goes on with {kept}."),
                None => what,
            }
        }
        Wrong::OutOfBounds => out_of_bounds(words, field),
    }
}

/// What a field takes, said with its ends in the units in use.
pub(super) fn out_of_bounds(words: Words, field: Field) -> String {
    let Some(bounds) = field.bounds() else {
        return String::new();
    };
    let unit = words_base_unit(bounds.dimension);
    let shown = |value: f64| {
        Entry::decimal(value, 3, unit)
            .map_or_else(String::new, |entry| words.units().entry_value(&entry))
    };
    format!(
        "This takes {} to {}.",
        shown(bounds.least),
        shown(bounds.most)
    )
}

const fn words_base_unit(dimension: skimwright::quantity::Dimension) -> skimwright::quantity::Unit {
    skimwright::quantity::Units::Metric.typed_unit(dimension)
}

fn unread(error: &ReadError) -> String {
    use ReadErrorKind as Kind;
    let place = error.at + 1;
    match &error.kind {
        Kind::Empty => "Type a figure.".to_owned(),
        Kind::TooLong => format!("No more than {MOST_CHARACTERS} characters, please."),
        Kind::NumberMissing => format!("A number is missing at character {place}."),
        Kind::Unexpected(found) => {
            format!("“{found}” at character {place} has no place in a figure.")
        }
        Kind::SecondMark => {
            format!("There is a second decimal mark at character {place}. Thousands need none.")
        }
        Kind::TooManyDigits => "That is more digits than can be meant.".to_owned(),
        Kind::TwoNumbers => {
            format!(
                "A second number begins at character {place}. Take the space out, or write + or −."
            )
        }
        Kind::HyphenOrMinus => {
            "Is that one number or a difference? Write 1 3/8, or 1 - 3/8 with spaces.".to_owned()
        }
        Kind::ZeroDenominator => {
            format!("The fraction needs a number below its bar, at character {place}.")
        }
        Kind::FractionTooLarge => "The parts of a fraction can be 65535 at most.".to_owned(),
        Kind::UnknownUnit(unit) => format!("“{}” is no unit here.", short(unit)),
        Kind::UnitUnclear => {
            format!("Which unit has the number at character {place}? Write mm or in behind it.")
        }
        Kind::UnitMissing => "The unit is missing.".to_owned(),
        Kind::TooManyTerms => format!("A sum can have {} numbers at most.", Entry::MOST_TERMS),
    }
}

fn short(text: &str) -> String {
    text.chars().take(12).collect()
}
