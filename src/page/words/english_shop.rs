//! English: the lathe, the tool, the holding, dialling in, pinned passes and rates.

use skimwright::job::{
    Aim, DialPlane, DialReads, EdgeField, Field, GearsError, HoldingField, JawFace, Job,
    MachineField, PinField, RateField, Rigidity, Support,
};

use super::Words;
use super::about::{OfShop, Question};
use super::english_fields::{lower_first, out_of_bounds, short, unread};
use super::english_instruments;
use crate::page::shelf::Shelf;

pub(super) const fn machine_label(field: MachineField) -> &'static str {
    match field {
        MachineField::Name => "Name of the lathe",
        MachineField::Rigidity => "Build of the lathe",
        MachineField::Speeds => "Spindle speeds",
        MachineField::SlowestSpeed => "Slowest speed",
        MachineField::FastestSpeed => "Fastest speed",
        MachineField::Feeds => "Feeds along the work",
        MachineField::FinestFeed => "Finest feed",
        MachineField::CoarsestFeed => "Coarsest feed",
        MachineField::Power => "Motor power",
        MachineField::Efficiency => "Share that reaches the spindle",
        MachineField::Torque => "Most torque at the spindle",
        MachineField::Swing => "Swing over the cross-slide",
        MachineField::ChuckTopSpeed => "Top speed of the chuck",
        MachineField::Graduation => "Cross-slide, one division",
        MachineField::DialReads => "The cross-slide's dial reads",
        MachineField::CompoundGraduation => "Compound slide, one division",
        MachineField::FineInfeed => "Fine infeed, one division",
        MachineField::HeadStiffness => "Stiffness at the chuck",
        MachineField::TailStiffness => "Stiffness at the tailstock",
        MachineField::PostStiffness => "Stiffness at the tool post",
    }
}

pub(super) const fn machine_hint(field: MachineField) -> Option<&'static str> {
    Some(match field {
        MachineField::Rigidity => "Counts where no stiffness was measured.",
        MachineField::SlowestSpeed | MachineField::FastestSpeed => {
            "As the drive is marked. Empty: usual of its class."
        }
        MachineField::FinestFeed | MachineField::CoarsestFeed => {
            "Carriage travel in one turn of the spindle. Empty: usual of its class."
        }
        MachineField::Power => "From the motor's plate. Empty: usual of its class.",
        MachineField::Efficiency => {
            "What belts, gears and bearings leave of it. Empty: usual of its class."
        }
        MachineField::Torque => {
            "Where the belt slips or the drive cuts out. Empty: the power alone limits."
        }
        MachineField::Swing => "The largest diameter that clears the cross-slide. May stay empty.",
        MachineField::ChuckTopSpeed => "Marked on the chuck's body. May stay empty.",
        MachineField::Graduation => {
            "As marked on the dial: passes then keep to whole divisions. Empty: they do not."
        }
        MachineField::DialReads => {
            "Diameter: a division of 0.05 takes 0.05 off the diameter. Radius: the slide itself moves 0.05."
        }
        MachineField::CompoundGraduation => {
            "As marked: what the slide itself moves. May stay empty."
        }
        MachineField::FineInfeed => {
            "On radius, with the compound slide set over, such as 0.001 mm. May stay empty."
        }
        MachineField::HeadStiffness => {
            "Push across the chuck with a spring balance, or hang a weight there; read the indicator on the other \
             side. Force by movement. Empty: usual of its class."
        }
        MachineField::TailStiffness => {
            "The same at the live centre, quill out as for the work. Empty: usual of its class."
        }
        MachineField::PostStiffness => {
            "The same at the tool's point, pushed away from the work. Empty: usual of its class."
        }
        MachineField::Name | MachineField::Speeds | MachineField::Feeds => return None,
    })
}

/// The note under a list of speeds or feeds.
pub(super) const LIST_HINT: &str = "From the plate on the headstock, in any order, with spaces between: 70 115 200. A list that is empty stops the \
     plan.";

/// The label of the list itself, below the choice between a list and stepless.
pub(super) const fn list_label(field: Field) -> &'static str {
    match field {
        Field::Machine(MachineField::Feeds) => "List of the feeds",
        _ => "List of the speeds",
    }
}

pub(super) const fn edge_label(field: EdgeField) -> &'static str {
    match field {
        EdgeField::Name => "Name of the tool",
        EdgeField::NoseRadius => "Nose radius",
        EdgeField::CuttingEdgeAngle => "Cutting edge angle",
        EdgeField::Rake => "Rake",
        EdgeField::LeastFeed => "Least feed of the tool",
        EdgeField::MostFeed => "Most feed of the tool",
        EdgeField::LeastDepth => "Least depth of cut",
        EdgeField::MostDepth => "Most depth of cut",
        EdgeField::Price => "Price of an insert or tip",
        EdgeField::Edges => "Cutting edges on it",
        EdgeField::RegrindTime => "Time to grind it again",
    }
}

pub(super) const fn edge_hint(field: EdgeField) -> Option<&'static str> {
    Some(match field {
        EdgeField::NoseRadius => {
            "In the insert's code (04 is 0.4 mm), or by a radius gauge. Empty: usual of the tool."
        }
        EdgeField::CuttingEdgeAngle => {
            "Between the edge and the way the tool travels: 90° turns a square shoulder. Empty: usual of the tool."
        }
        EdgeField::Rake => {
            "Negative where the face leans forward, against the chip. Empty: usual of the tool."
        }
        EdgeField::LeastFeed | EdgeField::MostFeed => {
            "On the insert's box, for its chip breaker. Empty: usual of the tool."
        }
        EdgeField::LeastDepth | EdgeField::MostDepth => {
            "On radius, from the insert's box. Empty: usual of the tool."
        }
        EdgeField::Price => "What a new one costs. May stay empty.",
        EdgeField::Edges => "Corners that can be turned to. Empty: usual of the tool.",
        EdgeField::RegrindTime => "Off the lathe and back on centre height. Empty: usual.",
        EdgeField::Name => return None,
    })
}

pub(super) const fn holding_label(field: HoldingField) -> &'static str {
    match field {
        HoldingField::Support => "Held in",
        HoldingField::Jaws => "Jaws",
        HoldingField::GripLength => "Length of head in the jaws",
        HoldingField::GripForce => "Force of all jaws",
        HoldingField::TailForce => "Force of the live centre",
        HoldingField::NearPlace => "Where the near readings are",
        HoldingField::FarPlace => "Where the far readings are",
    }
}

pub(super) const fn holding_hint(field: HoldingField) -> Option<&'static str> {
    Some(match field {
        HoldingField::GripLength => "Along the axis. Empty: usual.",
        HoldingField::GripForce => {
            "From the chuck's papers or a force gauge. Empty: usual of a chuck tightened by hand."
        }
        HoldingField::TailForce => "Along the axis, as the quill pushes. Empty: usual.",
        HoldingField::NearPlace | HoldingField::FarPlace => {
            "From the shoulder outward; negative on the head."
        }
        HoldingField::Support | HoldingField::Jaws => return None,
    })
}

pub(super) const fn pin_label(field: PinField) -> &'static str {
    match field {
        PinField::After => "Diameter after it",
        PinField::Infeed => "Infeed, on radius",
        PinField::Speed => "Spindle speed",
        PinField::Feed => "Feed",
    }
}

pub(super) const fn pin_hint(field: PinField) -> Option<&'static str> {
    match field {
        PinField::Speed | PinField::Feed => Some("Empty: the planner chooses."),
        PinField::After | PinField::Infeed => None,
    }
}

pub(super) const fn rate_label(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "Currency",
        RateField::PerHour => "An hour of the shop",
        RateField::Least => "Least charged for a job",
        RateField::Consumables => "Discs, abrasive, oil",
        RateField::Postage => "Postage and packing",
    }
}

pub(super) const fn rate_hint(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "As you write it: all sums are in this one.",
        RateField::PerHour => "Empty: no cost is worked out.",
        RateField::Least | RateField::Consumables | RateField::Postage => "Empty: nothing.",
    }
}

/// A quarter of the turn, counted from 0.
pub(super) const fn quarter(quarter: u8) -> &'static str {
    match quarter {
        0 => "At jaw 1",
        1 => "A quarter turn on",
        2 => "Half a turn on",
        _ => "Three quarters on",
    }
}

/// The name of a reading of the indicator where it stands alone.
pub(super) fn reading(plane: DialPlane, at: u8) -> String {
    let plane = match plane {
        DialPlane::Near => "Indicator near the chuck",
        DialPlane::Far => "Indicator further out",
    };
    format!("{plane}: {}", lower_first(quarter(at)))
}

/// The name of a pinned pass, counted from 1.
pub(super) fn pin(index: u8) -> String {
    format!("Pinned pass {}", u16::from(index) + 1)
}

pub(super) fn pin_line(after: &str, infeed: &str) -> String {
    format!("to ⌀{after}, infeed {infeed}")
}

/// A planned pass as one that can be pinned.
pub(super) fn planned(number: usize, after: &str) -> String {
    format!("Pass {number}, to ⌀{after}")
}

/// What a list comes to.
pub(super) fn gears(words: Words, field: Field, count: usize, from: &str, to: &str) -> String {
    let (one, more) = match field {
        Field::Machine(MachineField::Feeds) => ("feed", "feeds"),
        _ => ("speed", "speeds"),
    };
    match count {
        0 => format!("No {more} yet."),
        1 => format!("{}, {to}", words.count(count, one, more)),
        _ => format!("{}, {from} to {to}", words.count(count, one, more)),
    }
}

/// What is wrong with a list, and where.
pub(super) fn bad_list(words: Words, field: Field, error: &GearsError) -> String {
    let what = match error {
        GearsError::Unread { piece, error } => format!("“{}”: {}", short(piece), unread(error)),
        GearsError::OutOfBounds { piece } => {
            format!("“{}”: {}", short(piece), out_of_bounds(words, field))
        }
        GearsError::TooMany => format!("A list can have {} numbers at most.", Job::MOST_GEARS),
    };
    format!("{what} The plan goes on with the last list that was read.")
}

pub(super) const fn text(text: OfShop) -> &'static str {
    match text {
        OfShop::Tool => "The tool in its figures",
        OfShop::Lathe => "Lathe",
        OfShop::Holding => "How it is held",
        OfShop::Dialling => "Dialling in",
        OfShop::DiallingLead => {
            "Indicator on a round that must run true, part turned by hand. Read it with jaw 1 on top and at each \
             quarter turn, plus where the plunger goes in. Best at two places, far apart."
        }
        OfShop::Pins => "Pinned passes",
        OfShop::PinsLead => "Passes that you set yourself. The rest is planned round them.",
        OfShop::NoPins => "None: all passes are planned.",
        OfShop::PinPlanned => "Pin a planned pass",
        OfShop::AddPin => "Pin a pass of my own",
        OfShop::ToolChoice => "Which tools turn this metal",
        OfShop::ToolChoiceLead => {
            "At its surface, by hardness and group. Speeds are a start, not a promise."
        }
        OfShop::WhyGrind => "Why to grind instead",
        OfShop::StepTimes => "Times of the steps",
        OfShop::StepTimesLead => {
            "Each time a step is done. What is empty is the usual, or follows from the time as a rule."
        }
        OfShop::Rates => "Rates",
        OfShop::Plane(DialPlane::Near) => "Near the chuck",
        OfShop::Plane(DialPlane::Far) => "Further out",
        OfShop::Stepless => "Any, without steps",
        OfShop::Listed => "Those in a list",
        OfShop::Support(None) => "As the end is made: with a centre where there is a countersink",
        OfShop::Support(Some(Support::Chuck)) => "Chuck alone",
        OfShop::Support(Some(Support::ChuckAndCentre)) => "Chuck and live centre",
        OfShop::Support(Some(Support::BetweenCentres)) => "Between centres",
        OfShop::Support(Some(Support::Collet)) => "Collet",
        OfShop::Jaws(None) => "Usual: taken as smooth",
        OfShop::Jaws(Some(JawFace::Smooth)) => "Smooth: ground, worn or soft",
        OfShop::Jaws(Some(JawFace::Serrated)) => "Serrated, with teeth",
        OfShop::Rigidity(Rigidity::Light) => "Light: a bench lathe, or a worn one",
        OfShop::Rigidity(Rigidity::Medium) => "Medium: a workshop lathe in fair order",
        OfShop::Rigidity(Rigidity::Heavy) => "Heavy: a heavy lathe, its gibs close",
        OfShop::DialReads(DialReads::Diameter) => "Diameter",
        OfShop::DialReads(DialReads::Radius) => "Radius: what the slide moves",
        OfShop::Aim(Aim::LeastTime) => "Least time",
        OfShop::Aim(Aim::LeastCost) => "Least cost",
        OfShop::Mine(Shelf::Lathes) => "My lathes",
        OfShop::Mine(Shelf::Tools) => "My tools",
        OfShop::Mine(Shelf::Instruments(_)) => "My instruments",
        OfShop::Keep(Shelf::Lathes) => "Keep this lathe",
        OfShop::Keep(Shelf::Tools) => "Keep this tool",
        OfShop::Keep(Shelf::Instruments(_)) => "Keep this instrument",
        OfShop::KeepNeedsName(Shelf::Lathes) => {
            "Give the lathe a name above, and it can be kept for other jobs."
        }
        OfShop::KeepNeedsName(Shelf::Tools) => {
            "Give the tool a name above, and it can be kept for other jobs."
        }
        OfShop::KeepNeedsName(Shelf::Instruments(_)) => {
            "Give the instrument a name above, and it can be kept for other jobs."
        }
        OfShop::Kept => "Kept in this browser as it is here.",
        OfShop::ShelfFull => "No more can be kept: remove one first.",
        OfShop::ShelfUnread => {
            "What was kept in this browser could not be read. It is left as it is until something is kept anew, which \
             takes its place."
        }
        OfShop::TakeIn => "Take into this job",
        OfShop::ShelfRefused => {
            "NOT kept: this browser keeps nothing. The job itself has its lathe, tool and instruments; share its \
             link to yourself."
        }
        OfShop::AskTitle(Question::Replace(_)) => "Replace?",
        OfShop::AskTitle(Question::Remove(..)) => "Remove?",
        OfShop::AskTitle(Question::Forget(_)) => "Forget?",
        OfShop::Instruments(text) => english_instruments::text(text),
        OfShop::Replace => "Replace",
        OfShop::AskNo => "Leave it as it is",
    }
}

/// What is asked before something that is kept goes.
pub(super) fn question(question: Question, name: &str) -> String {
    match question {
        Question::Replace(_) => format!(
            "“{name}” is kept already, with other figures. Put those of this job in their place?"
        ),
        Question::Forget(_) => english_instruments::ask_forget(name),
        Question::Remove(..) => {
            format!("Remove “{name}” from what is kept in this browser? Jobs keep their own copy.")
        }
    }
}
