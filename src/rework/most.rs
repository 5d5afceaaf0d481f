//! The most that can be had of the stock: the largest diameter at any length, the lengths worth stopping at, and what
//! to ask for so that it cleans up.

use super::clean_up::CleanUp;
use super::finished::Nominal;
use crate::job::{Field, Job, Wanted};
use crate::order;
use crate::part::SAME;
use crate::plan::{Checked, is_in_bounds};
use crate::quantity::{Entered, Length, Units};

/// What to ask for at a place of the curve.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// Shoulder to finished end.
    pub length: Entered<Length>,
    /// The largest finished diameter that cleans up over it, with the tolerance as it is and the polishing stock on.
    pub diameter: Entered<Length>,
}

/// Which part of an offer is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Take {
    /// Diameter and length.
    Both,
    /// The diameter, the length as it is.
    Diameter,
    /// The length, the diameter as it is.
    Length,
}

impl Take {
    /// Every one, in the order in which they are offered.
    pub const ALL: [Self; 3] = [Self::Both, Self::Diameter, Self::Length];
}

/// More stops than these would be no help.
const MOST_STOPS: f64 = 240.0;

impl CleanUp {
    /// The largest diameter that cleans up over a length from the shoulder; nought where there is no stock.
    ///
    /// # Accuracy
    /// Exact: the curve is made of straight lines. Right where it drops the length still ends before the drop.
    ///
    /// # Example
    /// ```
    /// use skimwright::{job::Job, plan::plan, quantity::Length};
    /// let found = plan(&Job::default()).clean_up.unwrap();
    /// assert_eq!(found.largest_over(Length::mm(50.0)), Length::mm(20.0));
    /// assert_eq!(found.largest_over(Length::mm(81.0)), Length::ZERO);
    /// ```
    pub fn largest_over(&self, length: Length) -> Length {
        for pair in self.most.windows(2) {
            let [from, to] = pair else { continue };
            if length.to_mm() <= to.length.to_mm() + SAME {
                let run = to.length - from.length;
                if run.to_mm() <= SAME {
                    return from.diameter;
                }
                let share = ((length - from.length) / run).clamp(0.0, 1.0);
                return from.diameter + (to.diameter - from.diameter) * share;
            }
        }
        Length::ZERO
    }

    /// The lengths at which a hand that moves along the curve stops, shortest first: round ones in the units in use,
    /// and those at which the curve bends. Empty where there is nothing to be had.
    pub fn stops(&self, units: Units) -> Vec<Length> {
        let whole = self.most.last().map_or(Length::ZERO, |last| last.length);
        let steps = if units.is_inch() {
            [0.05, 0.1, 0.25, 0.5, 1.0].map(Length::inch)
        } else {
            [1.0, 2.0, 5.0, 10.0, 20.0].map(Length::mm)
        };
        let step = steps.into_iter().find(|step| whole / *step <= MOST_STOPS);
        let step = step.unwrap_or(whole / MOST_STOPS);
        let bends = self.most.iter().map(|most| most.length);
        let bends = bends.filter_map(|bend| Some(units.enter_at_most(bend)?.value()));
        let round = (1_u32..)
            .map(|count| step * f64::from(count))
            .take_while(|at| *at < whole);
        let takes = |length: &Length| {
            let entered = units.enter_at_most(*length);
            entered.is_some_and(|it| is_in_bounds(Field::WantedLength, it.entry()))
        };
        let mut found: Vec<Length> = round.chain(bends).filter(takes).collect();
        order::by_number(&mut found, |at| at.to_mm());
        found.dedup_by(|a, b| (*a - *b).abs().to_mm() < SAME);
        found
    }
}

/// The stop nearest to a length, by its place among the stops; nought where there is none.
pub fn nearest_stop(stops: &[Length], length: Length) -> usize {
    let off = |at: &Length| (*at - length).abs().to_mm();
    let nearest = stops
        .iter()
        .enumerate()
        .min_by(|(_, a), (_, b)| off(a).total_cmp(&off(b)));
    nearest.map_or(0, |(place, _)| place)
}

/// What to ask for to have the most over a length: it cleans up, with the tolerance as it is and enough left on for
/// polishing. `None` where nothing that can be entered would.
///
/// # Example
/// ```
/// use skimwright::{job::Job, plan::plan, quantity::{Length, Units}, rework::offer};
/// let job = Job::default();
/// let found = plan(&job).clean_up.unwrap();
/// // h6 aims 0.0065 below nominal, and 0.02 mm are left for polishing: 19.986 of the 20 mm, down to a hundredth.
/// let most = offer(&job, &found, Length::mm(50.0), Units::Metric).unwrap();
/// assert_eq!(most.diameter.entry().to_string(), "19.98 mm");
/// ```
pub fn offer(job: &Job, found: &CleanUp, length: Length, units: Units) -> Option<Offer> {
    let checked = Checked::new(job);
    let polishing = checked.length(Field::PolishingStock).unwrap_or_default();
    let nominal = Nominal {
        job,
        checked: &checked,
    };
    let length = units.enter_at_most(length)?;
    let largest = found.largest_over(length.value());
    let asked = nominal.at_most(largest - polishing, |limits| limits.aim);
    let diameter = units.enter_at_most(asked.min(largest))?;
    let sound = is_in_bounds(Field::WantedDiameter, diameter.entry())
        && is_in_bounds(Field::WantedLength, length.entry());
    sound.then_some(Offer { length, diameter })
}

impl Offer {
    /// What is wanted once it is taken.
    pub fn taken(&self, wanted: &Wanted, take: Take) -> Wanted {
        let mut wanted = wanted.clone();
        if take != Take::Length {
            wanted.diameter = self.diameter.clone();
        }
        if take != Take::Diameter {
            wanted.length = self.length.clone();
        }
        wanted
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::demo::demo_jobs;
    use crate::plan::{Code, plan};
    use crate::rework::Most;

    fn curve(points: &[(f64, f64)]) -> CleanUp {
        let mut found = plan(&Job::default()).clean_up.unwrap();
        found.most = points
            .iter()
            .map(|(length, diameter)| Most {
                length: Length::mm(*length),
                diameter: Length::mm(*diameter),
            })
            .collect();
        found
    }

    #[test]
    fn between_its_points_the_curve_is_straight_and_a_drop_belongs_to_what_is_before_it() {
        let found = curve(&[(0.0, 30.0), (10.0, 30.0), (10.0, 24.0), (30.0, 20.0)]);
        let at = |length| found.largest_over(Length::mm(length)).to_mm();
        for (length, diameter) in [(0.0, 30.0), (10.0, 30.0), (20.0, 22.0), (30.0, 20.0)] {
            assert!((at(length) - diameter).abs() < 1e-9, "{length}");
        }
        assert!(at(10.001) < 24.0 && at(30.1) == 0.0);
    }

    #[test]
    fn stops_are_round_lengths_and_bends() {
        let found = curve(&[(0.0, 30.0), (10.456, 30.0), (10.456, 24.0), (12.0, 20.0)]);
        let stops = found.stops(Units::Metric);
        let mm: Vec<f64> = stops.iter().map(|at| at.to_mm()).collect();
        let wanted: Vec<f64> = (1..=12).map(f64::from).collect();
        assert_eq!(mm.len(), 13, "{mm:?}");
        assert!(wanted.iter().all(|at| mm.contains(at)) && mm.contains(&10.45));
        // A bend is rounded to the side where the diameter still is.
        assert_eq!(found.largest_over(Length::mm(10.45)), Length::mm(30.0));
        assert_eq!(nearest_stop(&stops, Length::mm(10.4)), 10);
        assert_eq!(nearest_stop(&stops, Length::mm(500.0)), 12);
        let inches = found.stops(Units::InchDecimal);
        assert_eq!(inches.first(), Some(&Length::inch(0.05)));
        assert!(curve(&[]).stops(Units::Metric).is_empty());
        assert!(
            curve(&[(0.0, 30.0), (3000.0, 30.0)])
                .stops(Units::Metric)
                .len()
                < 260
        );
    }

    #[test]
    fn what_is_offered_cleans_up() {
        let mut count = 0;
        for job in demo_jobs().into_iter().chain([Job::default()]) {
            let Some(found) = plan(&job).clean_up else {
                continue;
            };
            for units in Units::ALL {
                for length in found.stops(units) {
                    let Some(offer) = offer(&job, &found, length, units) else {
                        continue;
                    };
                    let mut job = job.clone();
                    job.wanted = offer.taken(&job.wanted, Take::Both);
                    let findings = plan(&job).findings;
                    let short = findings.iter().find(|it| {
                        matches!(
                            it.code,
                            Code::NotCleanedUp { .. } | Code::CleansUpLow { .. }
                        )
                    });
                    assert_eq!(
                        short,
                        None,
                        "{} {}",
                        offer.length.entry(),
                        offer.diameter.entry()
                    );
                    count += 1;
                }
            }
        }
        assert!(count > 300, "{count}");
    }

    #[test]
    fn each_part_of_an_offer_can_be_taken_alone() {
        let job = Job::default();
        let found = plan(&job).clean_up.unwrap();
        let offer = offer(&job, &found, Length::mm(60.0), Units::Metric).unwrap();
        let sizes = |take| {
            let wanted = offer.taken(&job.wanted, take);
            [wanted.diameter, wanted.length].map(|it| it.entry().to_string())
        };
        assert_eq!(sizes(Take::Both), ["19.98 mm", "60 mm"]);
        assert_eq!(sizes(Take::Diameter), ["19.98 mm", "50 mm"]);
        assert_eq!(sizes(Take::Length), ["16 mm", "60 mm"]);
    }
}
