//! English: the steps at the lathe, their figures and cautions.

use skimwright::job::{CentreOrder, WorkStep};
use skimwright::quantity::{Time, show};
use skimwright::work::{Dial, StepFigure, StepHow, StepWarning};
use skimwright::working::Value;

use super::{OfShop, Text, Words};

pub(super) const fn name(step: WorkStep) -> &'static str {
    match step {
        WorkStep::Receive => "Check what came",
        WorkStep::Hold => "Hold the part",
        WorkStep::DialIn => "Dial in",
        WorkStep::CutOff => "Cut off",
        WorkStep::Face => "Face the end",
        WorkStep::Centre => "Drill the centre",
        WorkStep::Rough => "Rough",
        WorkStep::LastCuts => "Last cuts",
        WorkStep::Polish => "Polish",
        WorkStep::Chamfer => "Chamfer, deburr",
        WorkStep::Check => "Check",
        WorkStep::Clean => "Clean and oil",
    }
}

pub(super) const fn how(how: StepHow) -> &'static str {
    match how {
        StepHow::ToDo => "to do",
        StepHow::Running => "running",
        StepHow::Paused => "paused",
        StepHow::Done => "done",
        StepHow::Skipped => "left out",
    }
}

pub(super) fn step_count(_: Words, number: usize, of: usize) -> String {
    format!("{number} of {of}")
}

pub(super) const fn dial_means(_: Words, dial: &Dial) -> &'static str {
    match dial {
        Dial::AsGiven(_) => "shank as given: measure it",
        Dial::CutMark(_) => "mark the cut, from the free end",
        Dial::Grip(_) => "grip so much of the head",
        Dial::Runout(_) => "runout that may be left",
        Dial::Facing(_) => "face off",
        Dial::CentreDepth(_) => "drill so deep",
        Dial::Infeed(_) => "dial in, as marked",
        Dial::PolishOff(_) => "polish off, on the diameter",
        Dial::Chamfer(_) => "chamfer, along the axis, 45°",
        Dial::Diameter(_) => "diameter wanted",
    }
}

pub(super) fn step_figure(words: Words, figure: &StepFigure) -> (&'static str, String) {
    match *figure {
        StepFigure::HeadDiameter(diameter) => ("Head", format!("⌀{}", words.length(diameter))),
        StepFigure::ShankLength(length) => ("Shank length", words.length(length)),
        StepFigure::FromShoulder(at) => ("From the shoulder", words.length(at)),
        StepFigure::Method(method) => ("By", words.say(Text::CutOffMethod(method)).to_owned()),
        StepFigure::Kerf(width) => ("Kerf", words.length(width)),
        StepFigure::OffcutLength(length) => ("Falls off", words.length(length)),
        StepFigure::Support(support) => (
            "Held in",
            words
                .say(Text::Shop(OfShop::Support(Some(support))))
                .to_owned(),
        ),
        StepFigure::HeldDiameter(diameter) => ("Held on", format!("⌀{}", words.length(diameter))),
        StepFigure::Overhang(length) => ("Sticks out", words.length(length)),
        StepFigure::FinishedLength(length) => ("Shoulder to end", words.length(length)),
        StepFigure::DepthFrom(from) => (
            "Depth from",
            match from {
                Some(CentreOrder::BeforeFacing) => "the rough face",
                Some(CentreOrder::AfterFacing) => "the finished face",
                None => "first touch on the hole's edge",
            }
            .to_owned(),
        ),
        StepFigure::CentreDrill(size) => ("Centre drill", size.to_owned()),
        StepFigure::Mouth(diameter) => ("Mouth", format!("⌀{}", words.length(diameter))),
        StepFigure::OffDiameter(off) => ("Off diameter", words.size(off)),
        StepFigure::DiameterAfter(diameter) => ("Diameter after", words.size(diameter)),
        StepFigure::DialReads(reads) => (
            "The dial reads",
            words.say(Text::Shop(OfShop::DialReads(reads))).to_owned(),
        ),
        StepFigure::PassesLeft(count) => ("Passes left", count.to_string()),
        StepFigure::CompoundAngle(angle) => ("Compound slide at", words.value(Value::Angle(angle))),
        StepFigure::CompoundTravel(length) => ("Slide travels", words.size(length)),
        StepFigure::LowerLimit(limit) => ("Not under", words.size_at_least(limit)),
        StepFigure::UpperLimit(limit) => ("Not over", words.size_at_most(limit)),
        StepFigure::WantedLength(length) => ("Length wanted", words.length(length)),
        StepFigure::Roughness(roughness) => ("Roughness Ra", words.value(Value::Fine(roughness))),
    }
}

pub(super) fn planned_time(words: Words, [low, likely, high]: [Time; 3]) -> String {
    let likely = show::time(likely);
    match words.figure_range((Value::Time(low), Value::Time(high))) {
        Some(range) => format!("Planned {likely} ({range})"),
        None => format!("Planned {likely}"),
    }
}

pub(super) const fn warning(warning: StepWarning) -> &'static str {
    match warning {
        StepWarning::ChuckKey => "Take the chuck key out before the spindle turns.",
        StepWarning::GripWeak => "The jaws hold too little for this cut: see the plan's findings.",
        StepWarning::LosesGrip => "Little of it is held: it may come out of the jaws.",
        StepWarning::LongOverhang => "Long and unsupported, it can whip: start slowly.",
        StepWarning::ChuckSpeed => "Never turn the chuck faster than is marked on it.",
        StepWarning::CentreNipsUp => {
            "Warm work grows and nips the live centre: ease it, set it again."
        }
        StepWarning::Disc => "Disc: guard on, eyes and ears covered, never above its marked speed.",
        StepWarning::Grit => "Abrasive dust: cover the ways, wear a mask.",
        StepWarning::HotOffcut => "Offcut and end are hot.",
        StepWarning::OffcutFalls => "The offcut falls: never catch it by hand.",
        StepWarning::PartingJams => {
            "A parting tool grabs: sharp, square, on centre, short, with oil."
        }
        StepWarning::SawOnHard => "A saw does not cut hard work.",
        StepWarning::ChipsLong => "Long chips: stop the spindle, use a hook, never fingers.",
        StepWarning::ChipsHard => "Hot, sharp chips fly: cover your eyes.",
        StepWarning::DustOfCastIron => {
            "Cast iron makes fine dust: wear a mask, keep it off the ways."
        }
        StepWarning::TitaniumFire => "Titanium chips can burn: no water, keep dry sand at hand.",
        StepWarning::Knocks => "Interrupted cut: a hard edge may chip.",
        StepWarning::Grinding => "Grinding: mask on, ways covered, wheel no faster than marked.",
        StepWarning::HotWork => "Warm work measures too large: let it cool.",
        StepWarning::StopToMeasure => "Stop the spindle to measure.",
        StepWarning::CentreDrillBreaks => {
            "Its tip breaks off: on centre, light feed, clear the chips."
        }
        StepWarning::CentreOnHard => "The end is hard: no high-speed steel centre drill.",
        StepWarning::FingersAtSpindle => {
            "Emery and file: strip held open-handed, never wound round; handle on the file."
        }
        StepWarning::SharpEdges => "Edges are sharp until they are broken.",
        StepWarning::UnknownPast => "What was done to it before, and cracks, may not be seen.",
        StepWarning::NoAirLine => "No air line: brush and vacuum cleaner.",
    }
}
