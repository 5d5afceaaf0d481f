//! English: the job sheet, the report that goes back, and files.

use skimwright::measuring::{Verdict, VerdictIs};
use skimwright::quantity::{Entered, Temperature};
use skimwright::sheet::DecimalMark;
use skimwright::work::CutsDone;

use super::about_print::OfPrint;
use super::{Moment, Words};

pub(super) const fn text(text: OfPrint) -> &'static str {
    match text {
        OfPrint::SheetTitle => "Job sheet",
        OfPrint::PrintSheet => "Print the job sheet",
        OfPrint::SheetSays => {
            "One page to stand at the machine: drawing, steps, passes, cautions. Whoever scans its code gets the part, what \
             is wanted of it, lathe, tool and record, but no rates."
        }
        OfPrint::InMillimetres => "sizes in mm",
        OfPrint::InInches => "sizes in inches",
        OfPrint::CodeLabel => "QR code of this job",
        OfPrint::CodeSays(true) => "Opens this job with its record",
        OfPrint::CodeSays(false) => "Opens this job",
        OfPrint::CodeTooLong => "This job is too long for a code. Open it by its link or its file.",
        OfPrint::ByTable => "by the table of passes",
        OfPrint::Number => "No.",
        OfPrint::DialIn => "Dial in",
        OfPrint::After => "⌀ after",
        OfPrint::Read => "⌀ read",
        OfPrint::GoesOn => "More passes on the next page.",
        OfPrint::BackBanner => {
            "This part is handed back to you. Nothing of it is kept here unless you want it."
        }
        OfPrint::BackSays => {
            "This is the report of the workshop: what came, what was done, and what it measures now."
        }
        OfPrint::BackKeep => "Keep as a job",
        OfPrint::BackLeave => "Leave the report",
        OfPrint::NoRecord => "Nothing was entered at the lathe yet: this report proves nothing.",
        OfPrint::AsReceived => "As received",
        OfPrint::AsLeft => "As left, drawn to what was wanted",
        OfPrint::NotReadBefore => "Not measured before the first cut.",
        OfPrint::NotReadAfter => "Not measured after the last cut.",
        OfPrint::NothingCut => {
            "No cut is in the record: what was measured is the part as received."
        }
        OfPrint::VerdictSays => {
            "± is the expanded uncertainty, k = 2: about 95 in 100. In tolerance is said only where the odds of being \
             wrong are 5 in 100 at most."
        }
        OfPrint::WhatWasDone => "What was done",
        OfPrint::NoSteps => "No step was begun.",
        OfPrint::NoCuts => "No cut is in the record.",
        OfPrint::Notes => "Notes",
        OfPrint::Answer => "The owner’s answer",
        OfPrint::MeasuredWith => "Measured with",
        OfPrint::By => "By",
        OfPrint::ByNobody => "no name given",
        OfPrint::UsualMicrometer => "Micrometer, usual",
        OfPrint::UsualIndicator => "Indicator, usual",
        OfPrint::RoughnessTester => "Roughness tester, usual",
        OfPrint::WorkAt => "Work",
        OfPrint::RoomAt => "Room",
        OfPrint::UncertaintySays => {
            "Sizes hold at 20 °C. Counted in: error, scale and scatter of the instrument, its setting, warmth, form."
        }
        OfPrint::Times => "Times",
        OfPrint::First => "First entry",
        OfPrint::Last => "Last entry",
        OfPrint::Worked => "Worked, by the clock",
        OfPrint::ClockBroken => {
            "The clock was set back or ran for more than a day: that time is not counted."
        }
        OfPrint::PrintReport => "Print the report",
        OfPrint::ShareTitle => "The part, handed back",
        OfPrint::ShareLink => "Share the report’s link",
        OfPrint::ShareSays => {
            "The link holds part, record and instruments. Lathe, tool, speeds and rates stay here."
        }
        OfPrint::ExportsTitle => "Files for other programs",
        OfPrint::SaveDxf => "Save as DXF",
        OfPrint::SavePasses => "Passes as CSV",
        OfPrint::SaveReadings => "Readings as CSV",
        OfPrint::SaveRecord => "Cuts and notes as CSV",
        OfPrint::SaveJson => "Job as JSON",
        OfPrint::JsonSays => "JSON holds the whole job, with lathe, tool and rates.",
        OfPrint::JsonBackSays => {
            "JSON holds what the report’s link holds: no lathe, tool or rates."
        }
        OfPrint::MarkLabel => "Decimal mark in CSV",
        OfPrint::Mark(DecimalMark::Point) => "Point: 25.4",
        OfPrint::Mark(DecimalMark::Comma) => "Comma: 25,4",
    }
}

pub(super) fn printed_on(words: Words, moment: Moment) -> String {
    format!("Report of {}", words.date_time(moment))
}

pub(super) fn passes_continued(_: Words, page: usize, of: usize) -> String {
    format!("Passes, continued: page {page} of {of}")
}

pub(super) fn steps_open(_: Words, open: &[&str], all: bool) -> String {
    let open = open.join(", ");
    if all {
        format!("The work is not finished. Still to do: {open}.")
    } else {
        format!("The work is not finished. Still to do, at least: {open}.")
    }
}

pub(super) fn of_readings(words: Words, count: u32) -> String {
    format!("from {}", words.many(count, "reading", "readings"))
}

pub(super) fn verdict_told(_: Words, verdict: &Verdict) -> Option<String> {
    let said = match verdict.is {
        VerdictIs::In => return None,
        VerdictIs::Over => "Larger than permitted, proven.",
        VerdictIs::Under => "Smaller than permitted, proven.",
        VerdictIs::NotProven => {
            "These readings prove neither that it is in tolerance nor that it is not."
        }
        VerdictIs::TooCoarse => {
            "The instrument is too coarse for this tolerance: it can prove nothing here."
        }
        VerdictIs::NotMeasured => "Nothing was measured here, so nothing is said.",
    };
    Some(said.to_owned())
}

pub(super) fn cuts_done(words: Words, cuts: &CutsDone, first: &str, last: &str) -> String {
    let kind = words.cut_made(cuts.kind);
    let often = match cuts.count {
        1 => "once".to_owned(),
        count => format!("{count} times"),
    };
    if first == last {
        format!("{kind}: {often}, {first}")
    } else {
        format!("{kind}: {often}, {first} to {last}")
    }
}

pub(super) fn used(words: Words, error: &str, readings: u32) -> String {
    let readings = words.many(readings, "reading", "readings");
    format!("permissible error ± {error}, {readings}")
}

pub(super) fn work_at(words: Words, range: Option<[Temperature; 2]>) -> String {
    match range {
        None => "not measured, taken to be as warm as the room".to_owned(),
        Some([low, high]) if low == high => words.warm(low),
        Some([low, high]) => words.range(&words.warm(low), &words.warm(high)),
    }
}

pub(super) fn room_at(words: Words, room: Option<&Entered<Temperature>>) -> String {
    match room {
        Some(room) => words.entered(room),
        None => "not measured, taken to be at 20\u{a0}°C".to_owned(),
    }
}
