//! English: the steps at the lathe, their figures and cautions.

use skimwright::job::WorkStep;
use skimwright::work::{Dial, StepFigure, StepHow, StepWarning};

use super::Words;

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

pub(super) const fn figure_name(figure: &StepFigure) -> &'static str {
    match figure {
        StepFigure::HeadDiameter(_) => "Head",
        StepFigure::ShankLength(_) => "Shank length",
        StepFigure::FromShoulder(_) => "From the shoulder",
        StepFigure::Method(_) => "By",
        StepFigure::Kerf(_) => "Kerf",
        StepFigure::OffcutLength(_) => "Falls off",
        StepFigure::Support(_) => "Held in",
        StepFigure::HeldDiameter(_) => "Held on",
        StepFigure::Overhang(_) => "Sticks out",
        StepFigure::FinishedLength(_) => "Shoulder to end",
        StepFigure::DepthFrom(_) => "Depth from",
        StepFigure::CentreDrill(_) => "Centre drill",
        StepFigure::Mouth(_) => "Mouth",
        StepFigure::OffDiameter(_) => "Off diameter",
        StepFigure::DiameterAfter(_) => "Diameter after",
        StepFigure::DialReads(_) => "The dial reads",
        StepFigure::PassesLeft(_) => "Passes left",
        StepFigure::CompoundAngle(_) => "Compound slide at",
        StepFigure::CompoundTravel(_) => "Slide travels",
        StepFigure::LowerLimit(_) => "Not under",
        StepFigure::UpperLimit(_) => "Not over",
        StepFigure::WantedLength(_) => "Length wanted",
        StepFigure::Roughness(_) => "Roughness Ra",
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
