//! What is said on the job sheet, in the report that goes back, and of the files that leave the page.

use skimwright::measuring::Verdict;
use skimwright::quantity::{Entered, Temperature, show};
use skimwright::sheet::DecimalMark;
use skimwright::work::{CutsDone, Used, UsedWith};
use skimwright::working::Value;

use super::{Moment, Words};

/// A fixed text about what is printed and handed over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfPrint {
    // The job sheet
    SheetTitle,
    PrintSheet,
    SheetSays,
    InMillimetres,
    InInches,
    CodeLabel,
    /// Whether the record is in it.
    CodeSays(bool),
    CodeTooLong,
    ByTable,
    Number,
    DialIn,
    After,
    Read,
    GoesOn,
    // The report
    BackBanner,
    BackSays,
    BackKeep,
    BackLeave,
    NoRecord,
    AsReceived,
    AsLeft,
    NotReadBefore,
    NotReadAfter,
    NothingCut,
    VerdictSays,
    WhatWasDone,
    NoSteps,
    NoCuts,
    Notes,
    Answer,
    MeasuredWith,
    By,
    ByNobody,
    UsualMicrometer,
    UsualIndicator,
    RoughnessTester,
    WorkAt,
    RoomAt,
    UncertaintySays,
    Times,
    First,
    Last,
    Worked,
    ClockBroken,
    PrintReport,
    ShareTitle,
    ShareLink,
    ShareSays,
    // Files
    ExportsTitle,
    SaveDxf,
    SavePasses,
    SaveReadings,
    SaveRecord,
    SaveJson,
    JsonSays,
    JsonBackSays,
    MarkLabel,
    Mark(DecimalMark),
}

macro_rules! asked {
    ($($(#[$doc:meta])* $name:ident($($arg:ident: $of:ty),*) -> $gives:ty;)*) => {
        impl Words {$(
            $(#[$doc])*
            pub(crate) fn $name(self, $($arg: $of),*) -> $gives {
                said!(self, print::$name(self, $($arg),*))
            }
        )*}
    };
}
asked! {
    /// When the report was printed.
    printed_on(moment: Moment) -> String;
    /// The heading of a further page of passes.
    passes_continued(page: usize, of: usize) -> String;
    /// Which steps are neither done nor left out: all of them, or those of which it can be told.
    steps_open(open: &[&str], all: bool) -> String;
    /// How many readings a figure rests on.
    of_readings(count: u32) -> String;
    /// What a verdict means for who gets the part.
    verdict_told(verdict: &Verdict) -> Option<String>;
    /// How many cuts of a kind were made, and when.
    cuts_done(cuts: &CutsDone, first: &str, last: &str) -> String;
    /// How warm the work was.
    work_at(range: Option<[Temperature; 2]>) -> String;
    /// How warm the room was.
    room_at(room: Option<&Entered<Temperature>>) -> String;
}

impl Words {
    /// How far off an instrument may be, and how often it was read.
    pub(crate) fn used(self, used: &Used) -> String {
        let error = match used.with {
            UsedWith::RoughnessTester => self.value(Value::Fine(used.error)),
            _ => self.difference(used.error),
        };
        said!(self, print::used(self, &error, used.readings))
    }

    /// A temperature in the units in use.
    pub(super) fn warm(self, temperature: Temperature) -> String {
        let celsius = temperature.to_celsius();
        self.marked(if self.units().is_inch() {
            format!("{}\u{a0}°F", show::decimal(celsius * 1.8 + 32.0, 0))
        } else {
            format!("{}\u{a0}°C", show::trimmed(celsius, 1))
        })
    }

    /// How many of what is never many, in the form that the number asks for.
    pub(super) fn many(self, count: u32, one: &str, more: &str) -> String {
        self.count(usize::try_from(count).unwrap_or(usize::MAX), one, more)
    }
}
