//! What is said of the charts, of time and of cost.

use skimwright::costing::{CostPart, Feeding, Step};
use skimwright::holding::{FormError, FormPoint};
use skimwright::quantity::{Length, Money, Time, show};
use skimwright::working::Value;

use super::{Language, Words, english_time};

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
        match self.language {
            Language::English => english_time::form_ends(self, form),
        }
    }

    /// How much the diameter varies, and how much it may.
    pub(crate) fn form_line(self, form: &FormError, allowed: Length) -> String {
        match self.language {
            Language::English => english_time::form_line(self, form, allowed),
        }
    }

    /// How much larger the diameter comes out at a place.
    pub(crate) fn form_point(self, point: &FormPoint) -> [String; 2] {
        [
            self.length(point.at),
            self.units.difference(point.size_error),
        ]
    }

    /// The axis of a chart with its unit.
    pub(crate) fn axis(self, name: &str, unit: &str) -> String {
        match self.language {
            Language::English if unit.is_empty() => name.to_owned(),
            Language::English => format!("{name}, {unit}"),
        }
    }

    /// What a row of passes takes.
    pub(crate) fn row_takes(self, passes: u32, time: Time) -> String {
        match self.language {
            Language::English => english_time::row_takes(passes, time),
        }
    }

    /// How often a step is done, and how long it takes each time.
    pub(crate) fn each(self, count: u32, [low, likely, high]: [Time; 3]) -> String {
        let likely = show::time(likely);
        let range = self.figure_range((Value::Time(low), Value::Time(high)));
        let each = range.map_or_else(|| likely.clone(), |range| format!("{likely} ({range})"));
        if count == 1 {
            each
        } else {
            format!("{count} × {each}")
        }
    }
}

/// A sum of money in the currency of the job.
pub(crate) fn money_in(money: Money, currency: &str) -> String {
    let sum = show::money(money);
    if currency.is_empty() {
        sum
    } else {
        format!("{sum}\u{a0}{currency}")
    }
}
