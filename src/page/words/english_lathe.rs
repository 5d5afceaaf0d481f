//! English: fixed texts of the work at the lathe, and the keypad.

use skimwright::job::{Change, Instrument, InstrumentKind};
use skimwright::measuring::{VerdictIs, WhyMeasure};

use super::about_lathe::{OfLathe, SkipReason, WhyStopText};
use super::{Words, english_fields, english_lathe_steps};
use crate::page::lathe::{PadFor, PadPlace, PadSlot, PadWrong, Thumb};

#[expect(
    clippy::too_many_lines,
    reason = "one text a line, nothing to take apart"
)]
pub(super) const fn text(text: OfLathe) -> &'static str {
    match text {
        OfLathe::StepsLabel => "Steps",
        OfLathe::Step(step) => english_lathe_steps::name(step),
        OfLathe::How(how) => english_lathe_steps::how(how),
        OfLathe::Warning(warning) => english_lathe_steps::warning(warning),
        OfLathe::WatchLabel => "Watch",
        OfLathe::CautionsTitle => "Watch also",
        OfLathe::ActionsLabel => "What to do with this step",
        OfLathe::Start => "Start",
        OfLathe::GoOn => "Go on",
        OfLathe::Pause => "Pause",
        OfLathe::Done => "Done",
        OfLathe::Skip => "Skip",
        OfLathe::Back => "Back",
        OfLathe::Next => "Next",
        OfLathe::Reopen => "Do again",
        OfLathe::SkipQuestion => "Why is it left out?",
        OfLathe::SkipReady(reason) => match reason {
            SkipReason::NotNeeded => "Not needed",
            SkipReason::DoneBefore => "Was done before",
            SkipReason::DoneElsewhere => "Done elsewhere",
            SkipReason::Later => "Comes later",
        },
        OfLathe::SkipWhy => "Another reason",
        OfLathe::SkipYes => "Leave it out",
        OfLathe::SkipNo => "Do it after all",
        OfLathe::GoesOn => "This step is done: what comes next belongs to the next one.",
        OfLathe::AllDone => "All steps are done or left out.",
        OfLathe::NoFigure => "Nothing to dial in here.",
        OfLathe::NoSteps => "The plan has no steps yet: look at its findings.",
        OfLathe::ClockBroken => {
            "The device's clock was set back, or this ran for more than a day: its time does not count."
        }
        OfLathe::Overtime => "The planned time is over.",
        OfLathe::HandlingTitle => "This screen",
        OfLathe::ThumbLabel => "Buttons for the",
        OfLathe::Thumb(Thumb::Left) => "Left thumb",
        OfLathe::Thumb(Thumb::Right) => "Right thumb",
        OfLathe::AlarmLabel => "When the planned time is over",
        OfLathe::AlarmOn => "Sound and shake",
        OfLathe::AlarmOff => "Stay quiet",
        OfLathe::AwakeYes => "The screen stays on while you are here.",
        OfLathe::AwakeAsked => "Asking the browser to keep the screen on.",
        OfLathe::AwakeRefused => {
            "The browser will not keep the screen on now, perhaps to save the battery. Set it in the device."
        }
        OfLathe::AwakeUnknown => {
            "This browser cannot keep the screen on. Set a longer time in the device."
        }
        OfLathe::RecordFull => {
            "The record takes no more events. Nothing was added; what is there stays."
        }
        OfLathe::MeasureWhy(why) => match why {
            WhyMeasure::First => "Measure before the first cut.",
            WhyMeasure::AfterCut => "A cut was made: measure what it left.",
            WhyMeasure::TooWarm => "Let it cool, then measure: it is too warm for what is left.",
            WhyMeasure::ToSettle => "Measure once more: that may settle it.",
        },
        OfLathe::Stop => "Stop",
        OfLathe::StopWhy(why) => match why {
            WhyStopText::InTolerance => "In tolerance, proven. Cut no more.",
            WhyStopText::NotProven => {
                "Likely in tolerance, but these readings cannot prove it. No cut makes it surer."
            }
            WhyStopText::Under => "Below the lower limit. Cut no more.",
            WhyStopText::NoSafeCut => {
                "The smallest cut that can be made would sooner scrap it than not. Cut no more."
            }
            WhyStopText::Missing => "Nothing can be said yet.",
        },
        OfLathe::DialOnDiameter => "dial in, on the diameter",
        OfLathe::DialOnSlide => "dial in, on the slide",
        OfLathe::DialNothing => "dial in nothing: the same setting once more",
        OfLathe::SpringTitle => "Spring pass",
        OfLathe::PolishOff => "polish off, on the diameter",
        OfLathe::Answer => "First answer for the last reading.",
        OfLathe::Speed => "Speed",
        OfLathe::Feed => "Feed",
        OfLathe::DiameterAfter => "Diameter after",
        OfLathe::SizeNow => "Diameter now",
        OfLathe::Under => "Under size",
        OfLathe::CutsLeft => "Cuts left, with this",
        OfLathe::Measure | OfLathe::MeasureWhen => "Measure",
        OfLathe::ExpectedDiameter => "Expected, about",
        OfLathe::MadeCut => "I made this cut",
        OfLathe::OtherInfeed => "Other infeed",
        OfLathe::MadeSpring => "Spring pass made",
        OfLathe::MadePolish => "I polished",
        OfLathe::ChangedTitle => "Something changed",
        OfLathe::ChangedLead => "Then an infeed may take off something else than before.",
        OfLathe::Change(change) => match change {
            Change::NewEdge => "New edge",
            Change::HeldAgain => "Held again",
            Change::DialSet => "Dial set anew",
            Change::OtherFeed => "Other feed or speed",
        },
        OfLathe::Note => "Note",
        OfLathe::NoteKeep => "Keep the note",
        OfLathe::TakesTitle => "What an infeed takes off",
        OfLathe::ReadingsTitle => "Read since the last cut",
        OfLathe::EarlierTitle => "Earlier",
        OfLathe::NoReadings => "Nothing was read yet.",
        OfLathe::Strike => "Strike out",
        OfLathe::Bring => "Bring back",
        OfLathe::Struck => "Struck out: ",
        OfLathe::DoubtTitle => "Is this reading right?",
        OfLathe::DoubtRight => "It is right",
        OfLathe::DoubtStrike => "Strike it out",
        OfLathe::PadTitle(of) | OfLathe::PadName(of) => {
            pad_name(of, matches!(text, OfLathe::PadTitle(_)))
        }
        OfLathe::PadWhat => "What was measured",
        OfLathe::PadPlaceLabel => "Where",
        OfLathe::Place(place) => match place {
            PadPlace::NearShoulder => "Near the shoulder",
            PadPlace::Middle => "Middle",
            PadPlace::FreeEnd => "Free end",
            PadPlace::At => "At …",
        },
        OfLathe::PadSlot(slot) => match slot {
            PadSlot::Value => "Value",
            PadSlot::Position => "From the shoulder",
            PadSlot::Temperature => "Work temperature",
        },
        OfLathe::PadInstrument => "Instrument",
        OfLathe::UsualMicrometer => "Micrometer, usual",
        OfLathe::PadRoom => "as the room",
        OfLathe::PadKeep => "Keep",
        OfLathe::PadErase => "Erase",
        OfLathe::PadMark => "Decimal mark",
        OfLathe::PadKeys => "Keys",
        OfLathe::PadPlain => "All of the number, with its decimal mark.",
        OfLathe::ParallelTitle => "Parallel?",
        OfLathe::NotTold => {
            "The readings cannot tell. Read near the shoulder and at the free end, each more than once."
        }
        OfLathe::Parallel => "Parallel, as far as the tolerance asks.",
        OfLathe::VerdictTitle => "In tolerance?",
        OfLathe::Verdict(is) => match is {
            VerdictIs::In => "In",
            VerdictIs::Over => "Over",
            VerdictIs::Under => "Under",
            VerdictIs::NotProven => "Not proven",
            VerdictIs::TooCoarse => "Too coarse",
            VerdictIs::NotMeasured => "Not measured",
        },
        OfLathe::NothingAsked => "No tolerance is asked for.",
        OfLathe::Limits => "Limits",
        OfLathe::Showing => "Working",
    }
}

const fn pad_name(of: PadFor, title: bool) -> &'static str {
    match of {
        PadFor::Diameter(_) => "Diameter",
        PadFor::Length => "Length",
        PadFor::Runout => "Runout",
        PadFor::Roughness if title => "Roughness Ra",
        PadFor::Roughness => "Roughness",
        PadFor::Infeed(_) if title => "Dialled in, as marked",
        PadFor::Infeed(_) => "Infeed",
    }
}

const fn kind_name(kind: InstrumentKind) -> &'static str {
    match kind {
        InstrumentKind::Micrometer => "Micrometer",
        InstrumentKind::Calliper => "Calliper",
        InstrumentKind::Indicator => "Indicator",
        InstrumentKind::Gauge => "Comparator",
    }
}

pub(super) fn instrument(_: Words, instrument: &Instrument) -> String {
    let name = instrument.name.trim();
    if name.is_empty() {
        kind_name(instrument.kind).to_owned()
    } else {
        name.to_owned()
    }
}

pub(super) fn pad_before(_: Words, before: &str, unit: &str) -> String {
    format!("Expected {before}\u{a0}{unit}. Without a decimal mark, digits replace the last ones.")
}

pub(super) fn pad_wrong(_: Words, wrong: &PadWrong) -> String {
    match wrong {
        PadWrong::Unread(error) => english_fields::unread(error),
        PadWrong::OutOfBounds => "That cannot be: look at the decimal mark.".to_owned(),
    }
}
