//! English: the labels of the fields, the notes under them, and what is wrong with what was typed.

use skimwright::job::{Field, ReceiverField};
use skimwright::quantity::{Entry, MOST_CHARACTERS, ReadError, ReadErrorKind};

use super::about_instruments::OfInstruments;
use super::{Words, english_cut, english_instruments, english_items, english_shop};
use crate::page::edit::List;
use crate::page::state::Wrong;

pub(super) const fn label(field: Field) -> &'static str {
    match field {
        Field::Title => "Name of the job",
        Field::MeasuredBy => "Measured by",
        Field::Material => "Material",
        Field::HeadDiameter => "Head diameter",
        Field::HeadLength => "Head length",
        Field::HeadBeyond => "Pieces of the head",
        Field::Head(_, field) => english_items::head_label(field),
        Field::CuttingGroup => "Cutting group",
        Field::FileBite => "A new hand file on it",
        Field::Runout => "Runout (full reading)",
        Field::EndRunout => "Runout near the free end",
        Field::SurfaceHardness => "Hardness outside",
        Field::CaseDepth => "Depth of the hard case",
        Field::CoreHardness => "Hardness of the core",
        Field::ShankLength => "Whole shank length",
        Field::Sections => "Sections",
        Field::Section(_, field) => english_items::section_label(field),
        Field::Features => "Cuts into the shank",
        Field::Feature(_, field) => english_items::feature_label(field),
        Field::Bores => "Holes",
        Field::Bore(_, field) => english_items::bore_label(field),
        Field::WantedDiameter => "Finished diameter",
        Field::Tolerance => "Tolerance",
        Field::UpperDeviation => "Upper deviation",
        Field::LowerDeviation => "Lower deviation",
        Field::WantedLength => "Finished length",
        Field::ShoulderRadius => "Fillet radius at the shoulder",
        Field::EndChamfer => "Chamfer at the end, 45°",
        Field::Countersink => "Countersink diameter, 60°",
        Field::Roughness => "Roughness Ra",
        Field::Receiver(field) => receiver_label(field),
        Field::ReceiverDepth => "Depth of the receiver",
        Field::LeastGrip => "Least length gripped",
        Field::DutyTorque => "Torque",
        Field::DutyForce => "Side load",
        Field::DutyOverhang => "Overhang of the side load",
        Field::DutyPower => "Power",
        Field::DutySpeed => "Speed that it runs at",
        Field::Tool => "Turning tool",
        Field::Edge(field) => english_shop::edge_label(field),
        Field::Machine(field) => english_shop::machine_label(field),
        Field::Aim => "Passes chosen for",
        Field::CutOffMethod => "Cut off with",
        Field::Kerf => "Kerf",
        Field::FacingStock => "Facing stock",
        Field::CentreOrder => "Centre made",
        Field::RoughInfeed => "Most infeed when roughing",
        Field::LastCut => "Each last cut, off diameter",
        Field::PolishingStock => "Left for polishing, on diameter",
        Field::CuttingSpeed => "Highest cutting speed",
        Field::RoughFeed => "Highest feed, roughing",
        Field::FinishFeed => "Highest feed, last cuts",
        Field::TopSpeed => "Highest spindle speed",
        Field::Approach => "Approach",
        Field::SetTime => "Set depth and engage",
        Field::ReturnTime => "Return",
        Field::MeasureTime => "Measure",
        Field::PolishTime => "Polish, once",
        Field::Step(_, bound) => english_cut::time_bound(bound),
        Field::Rate(field) => english_shop::rate_label(field),
        Field::Holding(field) => english_shop::holding_label(field),
        Field::Dial(_, quarter) => english_shop::quarter(quarter),
        Field::Pins => "Pinned passes",
        Field::Pin(_, field) => english_shop::pin_label(field),
        Field::RoomTemperature => english_instruments::ROOM,
        Field::Instruments => english_instruments::text(OfInstruments::Title),
        Field::Instrument(_, field) => english_instruments::label(field),
    }
}

const fn receiver_label(field: ReceiverField) -> &'static str {
    match field {
        ReceiverField::Kind => "Receiver",
        ReceiverField::Collet => "Collet",
        ReceiverField::Shank => "Standard shank",
        ReceiverField::Hole => "Class of the bore",
        ReceiverField::Load => "Load of the bearing",
        ReceiverField::RingChamfer => "Chamfer of the ring",
        ReceiverField::SleeveDuty => "What the sleeve must carry",
        ReceiverField::SleeveMaterial => "Material of the sleeve",
        ReceiverField::Outside => "Outside diameter of the sleeve",
        ReceiverField::Edge => "Edge at the mouth",
    }
}

pub(super) fn in_full(words: Words, field: Field) -> String {
    match field {
        Field::Dial(plane, quarter) => return english_shop::reading(plane, quarter),
        Field::Pin(index, _) => {
            let pin = english_shop::pin(index);
            return format!("{pin}: {}", lower_first(label(field)));
        }
        Field::Instrument(index, _) => {
            let of = english_instruments::title(index);
            return format!("{of}: {}", lower_first(label(field)));
        }
        Field::Step(step, bound) => {
            let (step, bound) = (english_cut::step(step), english_cut::time_bound(bound));
            return format!("{step}: {}", lower_first(bound));
        }
        _ => {}
    }
    match List::of(field) {
        Some((list, Some(index))) => {
            format!("{}: {}", words.row(list, index), lower_first(label(field)))
        }
        _ => label(field).to_owned(),
    }
}

pub(super) fn lower_first(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_lowercase();
    }
    text
}

pub(super) const fn hint(field: Field) -> Option<&'static str> {
    Some(match field {
        Field::CuttingGroup => {
            "VDI 3323, as tool catalogues number them. Empty: that of the material."
        }
        Field::FileBite => {
            "Tried where the tool will cut, where there is no hardness tester. May stay empty."
        }
        Field::Step(..) => "Each time. Empty: usual.",
        Field::Runout => {
            "Indicator on the shank near the shoulder, part held true by the features that stay."
        }
        Field::EndRunout => {
            "Full reading near the free end, held the same way: it shows a tilt. Empty: as near the shoulder."
        }
        Field::SurfaceHardness => {
            "Where the tool will cut, by a hardness tester or test files. May stay empty."
        }
        Field::CaseDepth => {
            "How deep the hard skin reaches: from papers, or etched on a cut face. Empty: as hard all through."
        }
        Field::CoreHardness => "Below the hard case. May stay empty.",
        Field::ShankLength => {
            "Shoulder to free end, by depth rod or height gauge. Empty: the sections added up."
        }
        Field::Section(_, field) => return english_items::section_hint(field),
        Field::Feature(_, field) => return english_items::feature_hint(field),
        Field::Bore(_, field) => return english_items::bore_hint(field),
        Field::DutyTorque => "The largest, peaks counted. Or give power and speed.",
        Field::DutyPower => "Of the motor behind it, losses left out.",
        Field::DutySpeed => "The slowest at full power: there the torque is largest.",
        Field::DutyForce => "Across the axis, on the head: from a cutter, a belt, a wheel.",
        Field::DutyOverhang => "From the shoulder to where the side load acts.",
        Field::WantedLength => "From the shoulder to the finished end.",
        Field::Countersink => "For the live centre. Empty: none.",
        Field::Roughness => "Of the turned shank, such as 1.6 µm. Empty: nothing is asked.",
        Field::ReceiverDepth => {
            "How deep the holder, bore or bearing takes the shank. May stay empty."
        }
        Field::LeastGrip => "What the holder's maker asks for. May stay empty.",
        Field::Kerf => "Width of the cut. Empty: the usual one.",
        Field::FacingStock => "Left on the end, to be faced off.",
        Field::RoughInfeed => {
            "On radius; less is taken where less is better. Empty: the planner chooses."
        }
        Field::CuttingSpeed | Field::RoughFeed | Field::FinishFeed => {
            "Less is taken where less is better. Empty: the planner chooses."
        }
        Field::Aim => "Cost counts an hour of the shop against the edges that are used up.",
        Field::Edge(field) => return english_shop::edge_hint(field),
        Field::Machine(field) => return english_shop::machine_hint(field),
        Field::Holding(field) => return english_shop::holding_hint(field),
        Field::Pin(_, field) => return english_shop::pin_hint(field),
        Field::Instrument(_, field) => return english_instruments::hint(field),
        Field::RoomTemperature => english_instruments::ROOM_HINT,
        Field::Rate(field) => english_shop::rate_hint(field),
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
        Wrong::BadList(error) => words.bad_list(field, error),
    }
}

/// What a field takes, said with its ends in the units in use.
pub(super) fn out_of_bounds(words: Words, field: Field) -> String {
    let each = field.of_each().unwrap_or(field);
    let (Some(bounds), Some(unit)) = (each.bounds(), field.typed_unit(words.units())) else {
        return String::new();
    };
    let [least, most] = bounds.shown_in(unit);
    format!("This takes {least} to {most}.")
}

pub(super) fn unread(error: &ReadError) -> String {
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

pub(super) fn short(text: &str) -> String {
    text.chars().take(12).collect()
}
