//! What is said of the charts, of time and of cost.

use skimwright::costing::{CostPart, Feeding, Step};
use skimwright::holding::{FormError, FormPoint};
use skimwright::quantity::{Length, Time};
use skimwright::working::Value;

use super::Words;

/// A fixed text about the charts, about time and cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum OfTime {
    // The layers of the drawing
    KeyRough,
    KeyLast,
    KeyPicked,
    // How far it gives
    FormTitle,
    FormLead,
    FormLarger,
    FormAlong,
    FormBand,
    NoForm,
    // How many passes
    CountsTitle,
    CountsLead,
    CountsPasses,
    CountsPlanned,
    NoCounts,
    // Time and cost
    Time,
    Cost,
    TimeMethod,
    StepsTitle,
    StepsNote,
    Step(Step),
    Feeding(Feeding),
    NoTime,
    Part(CostPart),
    AtMinimum,
    CostNote,
    NoRate,
    EnterRate,
    Numbers,
}

impl Words {
    /// Where a cut leaves the diameter largest, and where smallest.
    pub(crate) fn form_ends(self, form: &FormError) -> String {
        said!(self, time::form_ends(self, form))
    }

    /// How much the diameter varies, and how much it may.
    pub(crate) fn form_line(self, form: &FormError, allowed: Length) -> String {
        said!(self, time::form_line(self, form, allowed))
    }

    /// How much larger the diameter comes out at a place.
    pub(crate) fn form_point(self, point: &FormPoint) -> [String; 2] {
        [
            self.length(point.at),
            self.marked(self.units.difference(point.size_error)),
        ]
    }

    /// The axis of a chart with its unit.
    pub(crate) fn axis(self, name: &str, unit: &str) -> String {
        if unit.is_empty() {
            name.to_owned()
        } else {
            self.marked(format!("{name}, {unit}"))
        }
    }

    /// What a row of passes takes.
    pub(crate) fn row_takes(self, passes: u32, time: Time) -> String {
        let passes = usize::try_from(passes).unwrap_or(usize::MAX);
        said!(self, time::row_takes(self, passes, time))
    }

    /// How often a step is done, and how long it takes each time.
    pub(crate) fn each(self, count: u32, [low, likely, high]: [Time; 3]) -> String {
        let likely = self.time(likely);
        let range = self.figure_range((Value::Time(low), Value::Time(high)));
        let each = range.map_or_else(|| likely.clone(), |range| self.likely(&likely, &range));
        if count == 1 {
            each
        } else {
            format!("{count} × {each}")
        }
    }
}
