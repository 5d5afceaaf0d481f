//! English: charts, time and cost.

use skimwright::costing::{CostPart, Feeding};
use skimwright::holding::{FormError, FormPoint};
use skimwright::quantity::{Length, Time};

use super::about_time::OfTime;
use super::{Words, english_cut};

pub(super) const fn text(text: OfTime) -> &'static str {
    match text {
        OfTime::KeyRough => "after roughing, where lines have room",
        OfTime::KeyLast => "after a last cut",
        OfTime::KeyPicked => "after the picked pass",
        OfTime::FormTitle => "How far it gives",
        OfTime::FormLead => {
            "How much larger the last cut leaves the diameter than the tool was set to, as work and tool give way."
        }
        OfTime::FormLarger => "Larger by",
        OfTime::FormAlong => "From the shoulder",
        OfTime::FormBand => "How much it may vary: a third of the tolerance, common practice",
        OfTime::NoForm => {
            "Without a last cut, or with a part that holds nothing, there is nothing to show."
        }
        OfTime::CountsTitle => "How many passes",
        OfTime::CountsLead => {
            "The best row for each number of passes, setting, returning and measuring counted, polishing not."
        }
        OfTime::CountsPasses => "Passes",
        OfTime::CountsPlanned => "planned",
        OfTime::NoCounts => "There are no passes to compare.",
        OfTime::Time => "Time",
        OfTime::Cost => "Cost",
        OfTime::TimeMethod => {
            "An estimate: every step has a low, a likely and a high time, and the sum is as often longer as shorter. Nine \
             times in ten it takes more than the low figure, nine in ten less than the high one."
        }
        OfTime::StepsTitle => "Where the time goes",
        OfTime::StepsNote => {
            "How often, and how long each time; what the lathe feeds is all passes together."
        }
        OfTime::Step(step) => english_cut::step(step),
        OfTime::Feeding(feeding) => match feeding {
            Feeding::Parting => "Parting off, under feed",
            Feeding::Facing => "Facing, under feed",
            Feeding::Centring => "Drilling the centre, under feed",
            Feeding::Turning => "Turning, under feed",
        },
        OfTime::NoTime => "Not known yet: a figure that it needs is missing.",
        OfTime::Part(part) => match part {
            CostPart::Labour => "Time, lathe and person",
            CostPart::Edges => "Edges, begun ones whole",
            CostPart::Discs => "Cut-off discs",
            CostPart::Consumables => "Consumables",
            CostPart::ToMinimum => "Up to the least charge",
            CostPart::Postage => "Postage",
        },
        OfTime::AtMinimum => "The least charge applies: the work itself comes to less.",
        OfTime::CostNote => "Low and high are those of the time.",
        OfTime::NoRate => "No rate is entered.",
        OfTime::EnterRate => "Enter what an hour costs",
        OfTime::Numbers => "The chart as numbers",
    }
}

pub(super) fn form_ends(words: Words, form: &FormError) -> String {
    let at = |point: &FormPoint| {
        let [place, error] = words.form_point(point);
        format!("{error}, {place} from the shoulder")
    };
    let (most, least) = (at(&form.greatest), at(&form.least));
    format!("More than set: at most {most}; at least {least}.")
}

pub(super) fn form_line(words: Words, form: &FormError, allowed: Length) -> String {
    let [spread, allowed] = [form.spread(), allowed].map(|it| words.units().difference(it));
    format!("{spread}; {allowed} allowed")
}

pub(super) fn row_takes(words: Words, passes: usize, time: Time) -> String {
    let passes = words.count(passes, "pass", "passes");
    format!("{passes}, {}", words.time(time))
}
