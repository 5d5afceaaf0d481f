//! English: passes and what limits them, the steps of a rework, fixed texts of holding and finishing.

use skimwright::costing::Step;
use skimwright::cutting::{ChipVerdict, HeldBy, Limit, Pass, Saving};
use skimwright::job::TimeBound;
use skimwright::quantity::show;

use super::about_cut::OfCut;
use super::english_fields::lower_first;
use super::{Text, Words};

pub(super) const fn text(text: OfCut) -> &'static str {
    match text {
        OfCut::Limit(limit) => limit_name(limit),
        OfCut::Pinned => "pinned",
        OfCut::FreshEdge => "fresh edge first",
        OfCut::Knocks => "knocks: interrupted cut",
        OfCut::Core => "core, below the case",
        OfCut::Loads => "How much of each limit is used",
        OfCut::Along => "Force along the work, at most",
        OfCut::Across => "Force across the work, at most",
        OfCut::CuttingSpeed => "Cutting speed",
        OfCut::Roughness => "Roughness Ra, turned",
        OfCut::EdgeUsed => "Of one edge used up",
        OfCut::Chip => "Chip",
        OfCut::ChipVerdict(verdict) => chip(verdict),
        OfCut::Pin => "Pin this pass",
        OfCut::Unpin => "Unpin",
        OfCut::Estimates => {
            "Forces, power, roughness and wear are estimates; the plan goes by the careful end."
        }
        OfCut::DialReadsDiameter => {
            "The dial reads diameter: what is dialled in comes off the diameter, and the slide moves half of it, the \
             infeed. Length is that of the metal met."
        }
        OfCut::DialReadsRadius => {
            "The dial reads what the slide moves: twice what is dialled in comes off the diameter. Length is that of \
             the metal met."
        }
        OfCut::SavingsTitle => "What would help",
        OfCut::SavingsLead => {
            "What the passes would save, estimated, if one limit were wider by a quarter."
        }
        OfCut::NoSavings => "A quarter more of any one limit saves no time.",
        OfCut::HoldingTitle => "Holding under the cut",
        OfCut::Held => "Held in",
        OfCut::Gripped => "Gripped",
        OfCut::SticksOut => "Sticks out",
        OfCut::GripTitle => "Grip",
        OfCut::JawsHold => "The jaws hold with, estimated",
        OfCut::CutNeeds => "The heaviest cut needs, safety counted",
        OfCut::CentreTitle => "Live centre",
        OfCut::Thrust => "Push it in with, estimated",
        OfCut::DialTitle => "What the indicator says",
        OfCut::RunoutNear => "Runout near the chuck",
        OfCut::RunoutFar => "Runout further out",
        OfCut::OneLine => {
            "Read at two opposite places, it tells of this line alone: read the other two as well."
        }
        OfCut::FlatJaws => "Packing, flat wide jaws",
        OfCut::NarrowJaws => "Packing, narrow jaws",
        OfCut::Packing => "Packing",
        OfCut::FinishTitle => "Shoulder, end and surface",
        OfCut::FilletTitle => "Fillet",
        OfCut::FromFace => "From the face",
        OfCut::InfeedLeft => "Infeed left",
        OfCut::Divisions => "Divisions of",
        OfCut::ChamferTitle => "Chamfer",
        OfCut::PolishTitle => "Polishing",
        OfCut::FineTitle => "Fine infeed",
        OfCut::CareKnocks => {
            "Interrupted cut on a hard edge: it may chip and fly. Guard down, out of its line, slower, a tough grade."
        }
        OfCut::CareGrinding => {
            "Grinding: a mask, and the ways covered; the wheel no faster than marked, stand aside as it starts."
        }
        OfCut::CareLong => {
            "Unsupported length can whip and climb out of the jaws: start slowly, and support the end."
        }
        OfCut::CareChuck => "Never turn the chuck faster than is marked on it.",
    }
}

const fn chip(verdict: ChipVerdict) -> &'static str {
    match verdict {
        ChipVerdict::ShortByNature => "short by nature",
        ChipVerdict::Breaks => "breaks",
        ChipVerdict::MayBeLong => "may be long: pause the feed now and then",
        ChipVerdict::Stringy => "string or ribbon: stop, and use a hook, never the hand",
    }
}

const fn limit_name(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "Depth",
        Limit::Feed => "Feed",
        Limit::Finish => "Finish",
        Limit::CuttingSpeed => "Cutting speed",
        Limit::ToolLife => "Tool life",
        Limit::SpindleSpeed => "Spindle speed",
        Limit::Power => "Power",
        Limit::Torque => "Torque",
        Limit::Grip => "Grip",
        Limit::Deflection => "Deflection",
    }
}

pub(super) fn pass_title(words: Words, number: u32, pass: &Pass) -> String {
    let kind = words.say(Text::PassKind(pass.kind));
    format!(
        "Pass {number}, {kind}, to ⌀{}",
        words.size(pass.diameter_after)
    )
}

pub(super) fn held_by(by: HeldBy) -> String {
    let said = [("depth", by.depth), ("feed", by.feed), ("speed", by.speed)]
        .into_iter()
        .filter_map(|(what, limit)| Some(format!("{what} – {}", lower_first(limit_name(limit?)))))
        .collect::<Vec<_>>();
    if said.is_empty() {
        "Held back by nothing that is reckoned here.".to_owned()
    } else {
        format!("Held back by: {}.", said.join(", "))
    }
}

pub(super) fn saving(saving: &Saving) -> String {
    format!("saves {}", show::time(saving.time))
}

/// What limits a cut, inside a sentence.
pub(super) const fn limit_inside(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "the tool's depth",
        Limit::Feed => "the tool's feed",
        Limit::Finish => "the finish",
        Limit::CuttingSpeed => "the cutting speed",
        Limit::ToolLife => "the life of an edge",
        Limit::SpindleSpeed => "the spindle speed",
        Limit::Power => "the power",
        Limit::Torque => "the torque",
        Limit::Grip => "the grip",
        Limit::Deflection => "the deflection",
    }
}

/// What makes room where a limit forbids every pass.
pub(super) const fn ease(limit: Limit) -> &'static str {
    match limit {
        Limit::Depth => "Take a tool for such a depth, or allow a deeper infeed.",
        Limit::Feed => "The lathe has no feed so fine: check its list, or take another tool.",
        Limit::Finish => "Take a larger nose radius, a finer feed, or allow a rougher surface.",
        Limit::CuttingSpeed => {
            "The lathe has no speed so slow: check its list, or take another tool."
        }
        Limit::ToolLife => "Take a slower speed or a harder tool.",
        Limit::SpindleSpeed => "Check the list of speeds against the top speeds of chuck and work.",
        Limit::Power => "Check the motor power, or take a finer feed.",
        Limit::Torque => "Check the torque, or take a finer feed.",
        Limit::Grip => "Grip harder or longer, or support the end; do not turn it so.",
        Limit::Deflection => "Take lighter last cuts, shorten the overhang, or support the end.",
    }
}

pub(super) const fn step(step: Step) -> &'static str {
    match step {
        Step::ReceiveAndCheck => "Receive and check",
        Step::Hold => "Hold the part",
        Step::DialIn => "Dial in",
        Step::CutOff => "Cut off",
        Step::Face => "Face the end",
        Step::Centre => "Make the centre",
        Step::SetDepth => "Set the depth",
        Step::Return => "Return",
        Step::Measure => "Measure",
        Step::ToolChange => "Change the tool",
        Step::Regrind => "Grind the edge",
        Step::Polish => "Polish",
        Step::Chamfer => "Chamfer and deburr",
        Step::Clean => "Clean and oil",
        Step::FinalCheck => "Final check",
        Step::Pack => "Pack",
    }
}

pub(super) const fn time_bound(bound: TimeBound) -> &'static str {
    match bound {
        TimeBound::Low => "At best",
        TimeBound::Likely => "As a rule",
        TimeBound::High => "At worst",
    }
}
