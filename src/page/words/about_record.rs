//! What is said of the record and of what it proves: its lines, taper and barrel, what was measured of a tolerance.
//!
//! These sentences are a name with figures behind it, the same in every language: a language gives the names.

use skimwright::job::{
    Answered, CentreOrder, DialReads, Event, Job, Measured, Reading, StepEvent, StepState, What,
    WorkPlace,
};
use skimwright::measuring::{
    COVERAGE, Doubt, DoubtKind, Middle, TaperFound, TaperVerdict, Verdict, VerdictOf,
};
use skimwright::quantity::{Length, Time};
use skimwright::work::StepFigure;
use skimwright::working::{Figure, Value};

use super::about_lathe::OfLathe;
use super::about_sharing::OfSharing;
use super::{OfShop, Text, Words};

/// A piece of a line of the record, or of what it proves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum OfRecord {
    DialledIn,
    OnDiameter,
    OnSlide,
    Note,
    Begun,
    Paused,
    Done,
    LeftOut,
    ToDoAgain,
    Length,
    Runout,
    At,
    SaidRight,
    NearShoulder,
    InMiddle,
    AtFreeEnd,
    FromShoulder,
    ThinnerBy,
    ThickerBy,
    Over,
    Tapered,
    ShiftTail,
    AwayFromTool,
    TowardTool,
    NoBarrel,
    Waist,
    Barrel,
    Diameter,
    OrMore,
    OrLess,
    Planned,
    DepthFrom(Option<CentreOrder>),
}

impl Words {
    fn piece(self, piece: OfRecord) -> &'static str {
        said!(self, record::piece(piece))
    }

    /// A small difference, such as a spread.
    pub(super) fn difference(self, length: Length) -> String {
        self.marked(self.units.difference(length))
    }

    /// A further figure of a step: its name and what it is.
    pub(crate) fn step_figure(self, figure: &StepFigure) -> (&'static str, String) {
        let value = match *figure {
            StepFigure::ShankLength(length)
            | StepFigure::FromShoulder(length)
            | StepFigure::Kerf(length)
            | StepFigure::OffcutLength(length)
            | StepFigure::Overhang(length)
            | StepFigure::FinishedLength(length)
            | StepFigure::WantedLength(length) => self.length(length),
            StepFigure::Method(method) => self.say(Text::CutOffMethod(method)).to_owned(),
            StepFigure::Support(support) => {
                let support = OfShop::Support(Some(support));
                self.say(Text::Shop(support)).to_owned()
            }
            StepFigure::HeadDiameter(diameter)
            | StepFigure::HeldDiameter(diameter)
            | StepFigure::Mouth(diameter) => {
                format!("⌀{}", self.length(diameter))
            }
            StepFigure::DepthFrom(from) => self.piece(OfRecord::DepthFrom(from)).to_owned(),
            StepFigure::CentreDrill(size) => size.to_owned(),
            StepFigure::OffDiameter(size)
            | StepFigure::DiameterAfter(size)
            | StepFigure::CompoundTravel(size) => self.size(size),
            StepFigure::DialReads(reads) => {
                self.say(Text::Shop(OfShop::DialReads(reads))).to_owned()
            }
            StepFigure::PassesLeft(count) => count.to_string(),
            StepFigure::CompoundAngle(angle) => self.value(Value::Angle(angle)),
            StepFigure::LowerLimit(limit) => self.size_at_least(limit),
            StepFigure::UpperLimit(limit) => self.size_at_most(limit),
            StepFigure::Roughness(roughness) => self.value(Value::Fine(roughness)),
        };
        (said!(self, lathe_steps::figure_name(figure)), value)
    }

    /// How long a step takes by the plan.
    pub(crate) fn planned_time(self, [low, likely, high]: [Time; 3]) -> String {
        let time = self.spread(Value::Time(low), Value::Time(likely), Value::Time(high));
        format!("{} {time}", self.piece(OfRecord::Planned))
    }

    /// A value with its range.
    pub(crate) fn with_range(self, value: Length, range: Option<(Length, Length)>) -> String {
        let said = self.size(value);
        match range {
            Some((low, high)) => self.likely(
                &said,
                &self.range(&self.size_bare(low), &self.size_bare(high)),
            ),
            None => said,
        }
    }

    /// An event as a line of the record. What a person wrote in it stays as it was written.
    pub(crate) fn event(self, event: &Event, job: &Job) -> String {
        match &event.what {
            What::Reading(reading) => self.reading_line(reading, job),
            What::Cut(cut) => {
                let kind = self.cut_made(cut.kind);
                if cut.dialled.value() == Length::ZERO {
                    return kind.to_owned();
                }
                let on = match cut.reads {
                    DialReads::Diameter => OfRecord::OnDiameter,
                    DialReads::Radius => OfRecord::OnSlide,
                };
                let (dialled, on) = (self.piece(OfRecord::DialledIn), self.piece(on));
                format!("{kind}, {dialled} {} {on}", self.entered(&cut.dialled))
            }
            What::Change(change) => self.say(Text::Lathe(OfLathe::Change(*change))).to_owned(),
            What::Note(note) => format!("{}: {note}", self.piece(OfRecord::Note)),
            What::Step(StepEvent { step, state }) => {
                let name = self.say(Text::Lathe(OfLathe::Step(*step)));
                let (state, why) = match state {
                    StepState::Started => (OfRecord::Begun, ""),
                    StepState::Paused => (OfRecord::Paused, ""),
                    StepState::Done => (OfRecord::Done, ""),
                    StepState::Skipped(why) => (OfRecord::LeftOut, why.as_str()),
                    StepState::Reopened => (OfRecord::ToDoAgain, ""),
                };
                let comma = if why.is_empty() { "" } else { ", " };
                format!("{name}: {}{comma}{why}", self.piece(state))
            }
            What::Offered(_) => self.say(Text::Sharing(OfSharing::Offered)).to_owned(),
            What::Answered(answered) => self.answered_line(answered),
        }
    }

    fn answered_line(self, answered: &Answered) -> String {
        let mut said = self
            .say(Text::Sharing(OfSharing::Answered(answered.says)))
            .to_owned();
        for (mark, words) in [(", ", &answered.by), (": ", &answered.words)] {
            if !words.is_empty() {
                said.push_str(mark);
                said.push_str(words);
            }
        }
        said
    }

    fn reading_line(self, reading: &Reading, job: &Job) -> String {
        let value = self.entered(&reading.value);
        let mut line = match &reading.of {
            Measured::Diameter(place) => format!("⌀{value} {}", self.work_place(place)),
            Measured::Length => format!("{} {value}", self.piece(OfRecord::Length)),
            Measured::Runout => format!("{} {value}", self.piece(OfRecord::Runout)),
            Measured::Roughness => format!("Ra {value}"),
        };
        let instrument = reading
            .instrument
            .and_then(|at| job.shop.instruments.get(usize::from(at)));
        if let Some(instrument) = instrument {
            line.push_str(", ");
            line.push_str(&self.instrument(instrument));
        }
        if let Some(warm) = &reading.temperature {
            line.push_str(", ");
            line.push_str(self.piece(OfRecord::At));
            line.push(' ');
            line.push_str(&self.entered(warm));
        }
        if reading.confirmed {
            line.push_str(", ");
            line.push_str(self.piece(OfRecord::SaidRight));
        }
        line
    }

    fn work_place(self, place: &WorkPlace) -> String {
        self.piece(match place {
            WorkPlace::NearShoulder => OfRecord::NearShoulder,
            WorkPlace::Middle => OfRecord::InMiddle,
            WorkPlace::FreeEnd => OfRecord::AtFreeEnd,
            WorkPlace::At(at) => {
                let from = self.piece(OfRecord::FromShoulder);
                return format!("{} {from}", self.entered(at));
            }
        })
        .to_owned()
    }

    /// What is odd about a reading.
    pub(crate) fn doubt(self, read: &str, doubt: &Doubt) -> String {
        let expected = doubt.expected.map(|it| self.size(it));
        let against = said!(self, lathe_said::against(read, expected.as_deref()));
        let turn = if self.units.is_inch() {
            "0.025\u{a0}in"
        } else {
            "0.5\u{a0}mm"
        };
        let tail = said!(self, lathe_said::doubt(doubt.kind));
        let turn = match doubt.kind {
            DoubtKind::WholeTurn => self.marked(format!(" {turn}?")),
            _ => String::new(),
        };
        format!("{against}: {tail}{turn}")
    }

    /// A figure and half of its range.
    fn give_or_take(self, value: Length, uncertainty: Length) -> String {
        let value = self.difference(value.abs());
        format!("{value} ± {}", self.difference(uncertainty * COVERAGE))
    }

    /// Taper and barrel along the shank, and what to do about them.
    pub(crate) fn taper_found(self, found: &TaperFound) -> Vec<String> {
        let grows = found.over_length.value;
        let by = if grows < Length::ZERO {
            OfRecord::ThinnerBy
        } else {
            OfRecord::ThickerBy
        };
        let mut said = vec![format!(
            "{} {} {} {}.",
            self.piece(by),
            self.give_or_take(grows, found.uncertainty),
            self.piece(OfRecord::Over),
            self.length(found.length)
        )];
        let verdict = match found.verdict {
            TaperVerdict::Parallel => self.say(Text::Lathe(OfLathe::Parallel)),
            TaperVerdict::Tapered => self.piece(OfRecord::Tapered),
            TaperVerdict::NotTold => self.say(Text::Lathe(OfLathe::NotTold)),
        };
        said.push(verdict.to_owned());
        if let Some(Figure { value: shift, .. }) = &found.shift {
            let to = if *shift < Length::ZERO {
                OfRecord::AwayFromTool
            } else {
                OfRecord::TowardTool
            };
            let (tail, by, to) = (
                self.piece(OfRecord::ShiftTail),
                self.size(shift.abs()),
                self.piece(to),
            );
            said.push(format!("{tail} {by} {to}."));
        }
        if let (Some(middle), Some(barrel), Some(unsure)) =
            (found.middle(), found.barrel, found.barrel_uncertainty)
        {
            let what = match middle {
                Middle::NotTold => OfRecord::NoBarrel,
                Middle::Waist => OfRecord::Waist,
                Middle::Barrel => OfRecord::Barrel,
            };
            let by = self.give_or_take(barrel, unsure);
            said.push(format!("{} {by}.", self.piece(what)));
        }
        if let Some(cause) = found.barrel_cause {
            said.push(said!(self, lathe_said::barrel_cause(cause)).to_owned());
        }
        said
    }

    /// What a verdict is about.
    pub(crate) fn verdict_of(self, of: &VerdictOf) -> String {
        match of {
            VerdictOf::Diameter(place) => {
                let diameter = self.piece(OfRecord::Diameter);
                format!("{diameter} {}", self.work_place(place))
            }
            VerdictOf::Roughness => self
                .say(Text::Lathe(OfLathe::PadTitle(
                    crate::page::lathe::PadFor::Roughness,
                )))
                .to_owned(),
        }
    }

    /// A size, or a roughness where it is about one.
    fn told(self, of: &VerdictOf, length: Length) -> String {
        match of {
            VerdictOf::Diameter(_) => self.size(length),
            VerdictOf::Roughness => self.value(Value::Fine(length)),
        }
    }

    /// What was measured of a tolerance, and how sure that is.
    pub(crate) fn verdict_measured(self, verdict: &Verdict) -> Option<String> {
        let measured = verdict.measured.as_ref()?;
        let value = self.told(&verdict.of, measured.value);
        let half = verdict.uncertainty * COVERAGE;
        let give = match verdict.of {
            VerdictOf::Diameter(_) => self.difference(half),
            VerdictOf::Roughness => self.value(Value::Fine(half)),
        };
        Some(format!("{value} ± {give}"))
    }

    /// The limits of a tolerance.
    pub(crate) fn verdict_limits(self, verdict: &Verdict) -> Option<String> {
        let of = |limit: Length| self.told(&verdict.of, limit);
        match (verdict.lower, verdict.upper) {
            (Some(lower), Some(upper)) => Some(self.range(&of(lower), &of(upper))),
            (Some(lower), None) => Some(format!("{} {}", of(lower), self.piece(OfRecord::OrMore))),
            (None, Some(upper)) => Some(format!("{} {}", of(upper), self.piece(OfRecord::OrLess))),
            (None, None) => None,
        }
    }
}
