//! The one catalogue of all text that the page shows.
//!
//! A sentence is asked for by what it says, never written where it is shown. Each language is a module with the
//! same functions, each a `match` over all that can be said, so that the compiler finds what is missing.

#[macro_use]
mod said;

mod about;
mod about_cut;
mod about_instruments;
mod about_jobs;
mod about_lathe;
mod about_owner;
mod about_print;
mod about_record;
mod about_sharing;
mod about_time;
mod english;
mod english_becomes;
mod english_cut;
mod english_examples;
mod english_fields;
mod english_findings;
mod english_findings_cut;
mod english_groups;
mod english_holding;
mod english_instruments;
mod english_items;
mod english_jobs;
mod english_lathe;
mod english_lathe_said;
mod english_lathe_steps;
mod english_link;
mod english_owner;
mod english_print;
mod english_receiver;
mod english_recognise;
mod english_record;
mod english_sharing;
mod english_shop;
mod english_stages;
mod english_strength;
mod english_time;
mod english_tools;
mod english_working;
mod german;
mod language;
mod spanish;
mod text;

use skimwright::job::{CutKind, Field, Job};
use skimwright::plan::Finding;
use skimwright::quantity::{
    Dimension, Entered, Entry, Feed, Grade, Length, Money, RotationalSpeed, Time, Typed, Units,
    show,
};
use skimwright::sheet::{Mark, Measure};
use skimwright::working::{Input, Meaning, Source, Value};

pub(crate) use about::{Ask, OfBecoming, OfReceiver, OfShop, OfStrength, OfTaper};
pub(crate) use about_cut::OfCut;
pub(crate) use about_instruments::OfInstruments;
pub(crate) use about_jobs::{Moment, OfJobs};
pub(crate) use about_lathe::{OfLathe, SkipReason, WhyStopText};
pub(crate) use about_owner::OfOwner;
pub(crate) use about_print::OfPrint;
pub(crate) use about_sharing::{AnswerOnPaper, OfSharing};
pub(crate) use about_time::OfTime;
pub(crate) use english_findings::FindingWords;
pub(crate) use language::{Language, Tongue};
pub(crate) use text::Text;

use super::edit::List;
use super::state::{Shown, Wrong};

/// The modules of English by the names that the other languages give theirs.
mod in_english {
    pub(super) use super::{
        english as fixed, english_becomes as becomes, english_cut as cut,
        english_examples as examples, english_fields as fields, english_findings as findings,
        english_groups as groups, english_holding as holding, english_instruments as instruments,
        english_items as items, english_jobs as jobs, english_lathe as lathe,
        english_lathe_said as lathe_said, english_lathe_steps as lathe_steps,
        english_owner as owner, english_print as print, english_receiver as receiver,
        english_recognise as recognise, english_record as record, english_sharing as sharing,
        english_shop as shop, english_strength as strength, english_time as time,
        english_tools as tools, english_working as working,
    };
}

/// The words in one language, with figures in the units in use.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Words {
    tongue: Tongue,
    units: Units,
    /// What is cut into the shank of the job: a cut is called by its kind.
    cuts: [Option<CutKind>; Job::MOST_FEATURES],
}

impl Words {
    pub(crate) fn new(units: Units, job: &Job) -> Self {
        let mut cuts = [None; Job::MOST_FEATURES];
        for (slot, feature) in cuts.iter_mut().zip(&job.part.features) {
            *slot = Some(feature.cut.kind());
        }
        Self {
            tongue: Tongue::default(),
            units,
            cuts,
        }
    }

    /// The same words in a language.
    pub(crate) const fn in_tongue(self, tongue: Tongue) -> Self {
        Self { tongue, ..self }
    }

    /// Text of the core with the decimal mark of the language: all figures leave through here.
    pub(crate) fn marked(self, shown: String) -> String {
        self.tongue.marked(shown)
    }

    /// What the language writes between a number and its decimals.
    pub(crate) const fn decimal_mark(self) -> char {
        self.tongue.decimal_mark()
    }

    /// How many of something, in the form that the number asks for.
    pub(crate) fn count(self, number: usize, one: &str, more: &str) -> String {
        self.tongue.count(number, one, more)
    }

    /// A fixed text.
    pub(crate) fn say(self, text: Text) -> &'static str {
        said!(self, fixed::text(text))
    }

    /// The name of an example, counted from 0.
    pub(crate) fn example(self, example: usize) -> &'static str {
        said!(self, examples::name(example))
    }

    /// The label of a field, as it stands beside it.
    pub(crate) fn field(self, field: Field) -> &'static str {
        said!(self, fields::label(field))
    }

    /// The name of a field where it stands alone: with the section or hole that it belongs to.
    pub(crate) fn field_in_full(self, field: Field) -> String {
        said!(self, fields::in_full(self, field))
    }

    /// A short note under a field, where there is something to know.
    pub(crate) fn hint(self, field: Field) -> Option<&'static str> {
        said!(self, fields::hint(field))
    }

    /// What is wrong with a field, and what would mend it.
    pub(crate) fn wrong(self, field: Field, wrong: &Wrong, kept: Option<&str>) -> String {
        said!(self, fields::wrong(self, field, wrong, kept))
    }

    /// A finding and what to do about it.
    pub(crate) fn finding(self, finding: &Finding) -> FindingWords {
        said!(self, findings::finding(self, finding))
    }

    /// What a symbol stands for.
    pub(crate) fn meaning(self, meaning: Meaning) -> String {
        said!(self, working::meaning(self, meaning))
    }

    /// Where a formula comes from.
    pub(crate) fn source(self, source: Source) -> String {
        said!(self, working::source(source))
    }

    /// A length that is marked or sawn.
    pub(crate) fn length(self, length: Length) -> String {
        self.marked(self.units.length(length, Grade::Length))
    }

    /// A diameter or infeed that is measured or dialled.
    pub(crate) fn size(self, length: Length) -> String {
        self.marked(self.units.length(length, Grade::Size))
    }

    /// A size that must not be exceeded, rounded down.
    pub(crate) fn size_at_most(self, length: Length) -> String {
        self.marked(self.units.size_at_most(length))
    }

    /// A size that must be reached, rounded up.
    pub(crate) fn size_at_least(self, length: Length) -> String {
        self.marked(self.units.size_at_least(length))
    }

    /// A length that must not be exceeded, rounded down.
    pub(crate) fn length_at_most(self, length: Length) -> String {
        self.marked(self.units.length_at_most(length))
    }

    /// A length that must be reached, rounded up.
    pub(crate) fn length_at_least(self, length: Length) -> String {
        self.marked(self.units.length_at_least(length))
    }

    /// The same without its unit, for a table that names it once.
    pub(crate) fn size_bare(self, length: Length) -> String {
        self.marked(self.units.length_bare(length, Grade::Size))
    }

    /// The same for a length.
    pub(crate) fn length_bare(self, length: Length) -> String {
        self.marked(self.units.length_bare(length, Grade::Length))
    }

    pub(crate) const fn units(self) -> Units {
        self.units
    }

    /// A feed without its unit.
    pub(crate) fn feed_bare(self, feed: Feed) -> String {
        without_unit(&self.value(Value::Feed(feed)))
    }

    /// The sign of the unit in use.
    pub(crate) const fn unit(self, dimension: Dimension) -> &'static str {
        self.units.typed_unit(dimension).sign()
    }

    /// The sign of the length unit in use.
    pub(crate) const fn length_unit(self) -> &'static str {
        self.unit(Dimension::Length)
    }

    /// A value of any kind.
    pub(crate) fn value(self, value: Value) -> String {
        let shown = match value {
            Value::Length(grade, length) => self.units.length(length, grade),
            Value::Fine(length) => self.units.fine(length),
            Value::Angle(angle) => format!("{}°", show::trimmed(angle.to_degrees(), 3)),
            Value::Time(time) => show::time(time),
            Value::Speed(speed) => self.units.speed(speed),
            Value::Feed(feed) => self.units.feed(feed),
            Value::Rotation(speed) => show::rotation(speed),
            Value::Mass(mass) => self.units.mass(mass),
            Value::Volume(volume) => self.units.volume(volume),
            Value::Density(density) => {
                format!("{}\u{a0}kg/m³", show::decimal(density.to_kg_per_m3(), 0))
            }
            Value::Area(area) => self.units.area(area),
            Value::SecondMoment(moment) => self.units.second_moment(moment),
            Value::Force(force) => self.units.force(force),
            Value::Torque(torque) => self.units.torque(torque),
            Value::Power(power) => self.units.power(power),
            Value::Stress(stress) => self.units.stress(stress),
            Value::Stiffness(stiffness) => {
                let stiffness = show::trimmed(stiffness.to_newtons_per_um(), 1);
                format!("{stiffness}\u{a0}N/µm")
            }
            Value::TemperatureStep(step) => self.units.temperature_step(step),
            Value::Expansion(expansion) => {
                let expansion = show::trimmed(expansion.to_um_per_m_kelvin(), 1);
                format!("{expansion}\u{a0}µm/(m·K)")
            }
            Value::Hardness(hardness) => show::hardness(hardness),
            Value::Taper(ratio) => show::taper(ratio),
            Value::Share(share) => show::share(share),
            Value::Ratio(ratio) => show::trimmed(ratio, 4),
            Value::Count(count) => count.to_string(),
            Value::Money(money) => show::money(money),
        };
        self.marked(shown)
    }

    /// A value as a figure of its own: a factor is an estimate and needs no more than two decimals.
    pub(crate) fn figure(self, value: Value) -> String {
        match value {
            Value::Ratio(factor) => self.marked(show::trimmed(factor, 2)),
            other => self.value(other),
        }
    }

    /// Lowest and highest of an estimate; `None` where they read the same.
    pub(crate) fn figure_range(self, (low, high): (Value, Value)) -> Option<String> {
        let (low, high) = (self.figure(low), self.figure(high));
        (low != high).then(|| self.range(&low, &high))
    }

    /// An input of a formula: what it is and what it was.
    pub(crate) fn input(self, input: &Input) -> (String, String) {
        (self.meaning(input.meaning), self.value(input.value))
    }

    /// What an empty field stands for.
    pub(crate) fn usual(self, value: &str) -> String {
        said!(self, fixed::usual(value))
    }

    /// How many dimensions have no room on the drawing.
    pub(crate) fn hidden(self, count: usize) -> String {
        said!(self, fixed::hidden(self, count))
    }

    /// A numbered place of the drawing.
    pub(crate) fn mark(self, mark: &Mark) -> String {
        said!(
            self,
            fixed::mark(mark.what, &self.length(mark.z.abs()), mark.z < Length::ZERO)
        )
    }

    /// A figure behind its short label.
    pub(crate) fn labelled(self, label: &str, value: &str) -> String {
        self.marked(format!("{label} {value}"))
    }

    /// A label with the section or hole that it is about.
    fn about_row(self, label: &str, row: &str) -> String {
        said!(self, fixed::about_row(label, row))
    }

    /// What a pass takes off the diameter.
    pub(crate) fn off_diameter(self, off: &str) -> String {
        said!(self, fixed::off_diameter(off))
    }

    /// The plan in plain words: what falls off, what stays.
    pub(crate) fn plan_in_short(self, offcut: Option<&str>, shank: &str, finished: &str) -> String {
        said!(self, fixed::plan_in_short(offcut, shank, finished))
    }

    /// What the findings come to.
    pub(crate) fn findings_in_short(self, stops: usize, cautions: usize) -> String {
        said!(self, fixed::findings_in_short(self, stops, cautions))
    }

    /// The name of a row, counted from 1: a section, a cut, a hole, a piece of the head.
    pub(crate) fn row(self, list: List, index: u8) -> String {
        let cut = self.cuts.get(usize::from(index)).copied().flatten();
        said!(self, items::name(list, index, cut))
    }

    /// What a row is, in one line.
    pub(crate) fn row_line(self, job: &Job, list: List, index: u8) -> String {
        said!(self, items::line(self, job, list, index))
    }

    /// An entry as it was typed, where that is in the units in use.
    pub(crate) fn typed(self, entry: &Entry) -> String {
        self.marked(self.units.entry(entry))
    }

    /// A duration.
    pub(crate) fn time(self, time: Time) -> String {
        self.value(Value::Time(time))
    }

    /// A share of a whole.
    pub(crate) fn share(self, share: f64) -> String {
        self.value(Value::Share(share))
    }

    /// What is far finer than a size.
    pub(crate) fn fine(self, length: Length) -> String {
        self.value(Value::Fine(length))
    }

    /// A sum of money in the currency of the job.
    pub(crate) fn money_in(self, money: Money, currency: &str) -> String {
        let sum = self.value(Value::Money(money));
        let currency = currency.trim();
        if currency.is_empty() {
            sum
        } else {
            format!("{sum}\u{a0}{currency}")
        }
    }

    /// A spindle speed without its unit.
    pub(crate) fn rotation_bare(self, speed: RotationalSpeed) -> String {
        without_unit(&self.value(Value::Rotation(speed)))
    }

    /// A quantity as it was typed, where that is in the units in use; it does not break at the end of a line.
    fn entered<Q: Typed>(self, entered: &Entered<Q>) -> String {
        self.typed(entered.entry()).replace(' ', "\u{a0}")
    }

    fn across(self, diameter: &Entered<Length>) -> String {
        format!("⌀{}", self.entered(diameter))
    }

    fn long(self, length: &Entered<Length>) -> String {
        said!(self, items::long(&self.entered(length)))
    }

    /// What comes off a section, as a label.
    pub(crate) fn section_off(self, index: u8) -> String {
        self.about_row(
            self.say(Text::SectionsOffLabel),
            &self.row(List::Sections, index),
        )
    }

    /// The name of a figure, with the hole that it belongs to.
    pub(crate) fn figure_name(self, shown: Shown) -> String {
        let name = self.say(Text::FigureName(shown));
        match shown {
            Shown::Wall(bore) => self.about_row(name, &self.row(List::Bores, bore)),
            _ => name.to_owned(),
        }
    }

    /// A dimension on the drawing, as a reader says it: what it is and what it is now.
    pub(crate) fn dimension(self, field: Field, measure: Measure, text: &str) -> String {
        let name = match measure {
            Measure::Entered => self.field_in_full(field),
            other => self.say(Text::Measure(other)).to_owned(),
        };
        self.labelled(&name, text)
    }

    /// Low and high with one dash between.
    pub(crate) fn range(self, low: &str, high: &str) -> String {
        said!(self, fixed::range(low, high))
    }
}

/// The number before the gap that every shown unit stands behind.
fn without_unit(shown: &str) -> String {
    split_unit(shown).0.to_owned()
}

/// A number and its unit, apart.
pub(crate) fn split_unit(shown: &str) -> (&str, &str) {
    shown.rsplit_once('\u{a0}').unwrap_or((shown, ""))
}
