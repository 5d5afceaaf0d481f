//! The best row of passes: dynamic programming over the steps left.
//!
//! What is still to come does not depend on how the stock came down so far, so the best way on from each place is the
//! cheapest first pass together with the best way on from where it ends. Going up from the end, every pass is looked at
//! once: no row of passes is left out, and the result is the best of all of them.

use core::ops::RangeInclusive;

use super::stages::{Pin, Refusal, Stages};
use crate::order;

/// Equal cuts that end a schedule, from `from` steps left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Closing {
    /// Steps left before the first of them: the place where the passes before end.
    pub from: u32,
    /// How many; none when the passes before go all the way.
    pub cuts: u32,
    /// What they cost together.
    pub cost: f64,
}

/// A row of passes.
#[derive(Clone, Debug, PartialEq)]
pub struct Schedule {
    /// What all of it costs.
    pub cost: f64,
    /// Steps left before the first pass, and after each.
    pub stops: Vec<u32>,
    /// How many of the passes, at the end, are equal last cuts.
    pub last_cuts: u32,
}

impl Schedule {
    /// How many passes.
    pub fn count(&self) -> usize {
        self.stops.len().saturating_sub(1)
    }

    /// Steps left before and after each pass.
    pub fn passes(&self) -> impl Iterator<Item = (u32, u32)> {
        let after = self.stops.iter().skip(1).copied();
        self.stops.iter().copied().zip(after)
    }
}

/// Costs that differ by less than this share count as equal: their difference is only the rounding of sums.
const EQUAL: f64 = 1e-12;

/// The way on from a place.
#[derive(Clone, Copy, Debug)]
struct Way {
    cost: f64,
    /// How many passes, and the sum of their squared depths: of two rows of as many passes the one with the smaller
    /// sum is the more even.
    rank: (u32, u64),
    next: Next,
}

#[derive(Clone, Copy, Debug)]
enum Next {
    Nowhere,
    /// A pass to the place of this number.
    Pass(usize),
    /// The closing of this number.
    Close(usize),
}

const NO_WAY: Way = Way {
    cost: f64::INFINITY,
    rank: (u32::MAX, u64::MAX),
    next: Next::Nowhere,
};

impl Stages {
    /// The cheapest schedule that ends with one of the closings. Of equal ones that of fewer passes, then the more even,
    /// then the one that takes the deeper pass first.
    ///
    /// Time: [`size`](Self::size) additions; where the result has more than the most passes, as many again for each of
    /// these.
    ///
    /// # Errors
    /// [`Refusal::NoSchedule`] or [`Refusal::TooManyPasses`].
    /// # Accuracy
    /// Exact; at each pass, costs within a part in 10¹² count as equal.
    pub fn best(&self, closings: &[Closing]) -> Result<Schedule, Refusal> {
        let closings = self.fitting(closings);
        let mut ways = Vec::with_capacity(self.rows.len());
        for number in 0..self.rows.len() {
            let way = self.way(number, &ways, &closings, |_| true);
            ways.push(way);
        }
        let next = |_, number: usize| ways.get(number).map(|way| way.next);
        let cost = ways.last().map_or(f64::INFINITY, |way| way.cost);
        let schedule = self
            .follow(cost, &closings, next)
            .ok_or(Refusal::NoSchedule)?;
        if schedule.count() <= self.most_passes {
            return Ok(schedule);
        }
        let cheaper = |best: Schedule, next: Schedule| {
            if next.cost < best.cost * (1.0 - EQUAL) {
                next
            } else {
                best
            }
        };
        let fitting = self.counted(&closings, 0..=self.most_passes);
        fitting.into_iter().reduce(cheaper).ok_or_else(|| {
            let fewest = self.fewest_below(&closings).last().copied();
            Refusal::TooManyPasses {
                fewest: fewest.unwrap_or(usize::MAX),
            }
        })
    }

    /// The cheapest schedule of each number of passes in the window, the fewest first; numbers that no schedule has are
    /// left out, and so are those above the most passes.
    ///
    /// Time: [`size`](Self::size) additions at most for every number from one to the highest of the window; far fewer where
    /// that is near the fewest passes possible.
    ///
    /// # Accuracy
    /// As of [`best`](Self::best).
    pub fn by_count(&self, closings: &[Closing], counts: RangeInclusive<usize>) -> Vec<Schedule> {
        let highest = self.most_passes.min(*counts.end());
        self.counted(&self.fitting(closings), *counts.start()..=highest)
    }

    /// The same for closings that were checked. Layer after layer: the best ways of exactly so many passes follow from
    /// those of one pass less. Places that no row of the highest number of passes meets in a layer are left out.
    fn counted(&self, closings: &[Ending], counts: RangeInclusive<usize>) -> Vec<Schedule> {
        let (below, above) = (self.fewest_below(closings), self.fewest_above());
        let meets = |number: usize, count: usize| {
            let fewest = |passes: &[usize]| passes.get(number).copied().unwrap_or(usize::MAX);
            fewest(&below) <= count && fewest(&above).saturating_add(count) <= *counts.end()
        };
        let mut schedules = Vec::new();
        let mut layers: Vec<Vec<Next>> = Vec::new();
        let mut ways = vec![NO_WAY; self.rows.len()];
        for count in 0..=*counts.end() {
            let way = |number: usize| {
                let fits = |closing: &Closing| closing.cuts as usize == count;
                if meets(number, count) {
                    self.way(number, &ways, closings, fits)
                } else {
                    NO_WAY
                }
            };
            ways = (0..self.rows.len()).map(way).collect();
            layers.push(ways.iter().map(|way| way.next).collect());
            let next = |passed: usize, number: usize| {
                let layer = layers.get(count.checked_sub(passed)?)?;
                layer.get(number).copied()
            };
            let cost = ways.last().map_or(f64::INFINITY, |way| way.cost);
            if counts.contains(&count) {
                schedules.extend(self.follow(cost, closings, next));
            }
        }
        schedules
    }

    /// The best way on from a place, when those from the places below are known.
    ///
    /// `counts`: which of the closings may be taken.
    fn way(
        &self,
        number: usize,
        below: &[Way],
        closings: &[Ending],
        counts: impl Fn(&Closing) -> bool,
    ) -> Way {
        let Some((row, from)) = self.rows.get(number).zip(self.places.get(number)) else {
            return NO_WAY;
        };
        let costs = self.costs(*row);
        let reached = row.lowest..row.lowest + costs.len();
        let below = below.get(reached.clone()).unwrap_or_default();
        let passed = costs.iter().zip(below).map(|(cost, way)| cost + way.cost);
        let closings = closings_from(closings, number).filter(|(_, closing)| counts(closing));
        let closed = closings.clone().map(|(_, closing)| closing.cost);
        let least = passed.clone().chain(closed).fold(f64::INFINITY, f64::min);
        if least == f64::INFINITY {
            return NO_WAY;
        }
        let most = least + least.abs() * EQUAL;
        let mut best = NO_WAY;
        let mut offer = |way: Way| {
            if way.rank < best.rank {
                best = way;
            }
        };
        for ((cost, way), to) in passed.zip(below).zip(reached) {
            if cost <= most {
                let depth = u64::from(from - self.places.get(to).unwrap_or(from));
                offer(Way {
                    cost,
                    rank: (way.rank.0 + 1, way.rank.1 + depth * depth),
                    next: Next::Pass(to),
                });
            }
        }
        for (which, closing) in closings.filter(|(_, closing)| closing.cost <= most) {
            offer(Way {
                cost: closing.cost,
                rank: (closing.cuts, self.squares(closing)),
                next: Next::Close(which),
            });
        }
        best
    }

    /// The schedule from the start, where `next` tells the way on after so many passes at a place.
    fn follow(
        &self,
        cost: f64,
        closings: &[Ending],
        next: impl Fn(usize, usize) -> Option<Next>,
    ) -> Option<Schedule> {
        let mut number = self.places.len().checked_sub(1)?;
        let mut stops = Vec::new();
        loop {
            let passed = stops.len();
            stops.push(*self.places.get(number)?);
            match next(passed, number)? {
                Next::Nowhere => return None,
                Next::Pass(to) => number = to,
                Next::Close(which) => {
                    let (_, closing) = closings.get(which)?;
                    stops.extend(self.cuts(closing).map(|pass| pass.to));
                    return Some(Schedule {
                        cost,
                        stops,
                        last_cuts: closing.cuts,
                    });
                }
            }
        }
    }

    /// The fewest passes from each place to the end; `usize::MAX` where there is no way.
    fn fewest_below(&self, closings: &[Ending]) -> Vec<usize> {
        let mut fewest: Vec<usize> = Vec::with_capacity(self.rows.len());
        for (number, row) in self.rows.iter().enumerate() {
            let closed = closings_from(closings, number);
            let below = fewest.get(row.lowest..).unwrap_or_default();
            let passed = self.costs(*row).iter().zip(below);
            let passed = passed.filter(|(cost, _)| cost.is_finite());
            let counts = closed
                .map(|(_, closing)| closing.cuts as usize)
                .chain(passed.map(|(_, count)| count.saturating_add(1)));
            let best = counts.min().unwrap_or(usize::MAX);
            fewest.push(best);
        }
        fewest
    }

    /// The fewest passes from the start to each place; `usize::MAX` where there is no way.
    fn fewest_above(&self) -> Vec<usize> {
        let mut fewest = vec![usize::MAX; self.rows.len()];
        if let Some(start) = fewest.last_mut() {
            *start = 0;
        }
        for (number, row) in self.rows.iter().enumerate().rev() {
            let next = fewest
                .get(number)
                .map_or(usize::MAX, |count| count.saturating_add(1));
            let reached = fewest.iter_mut().skip(row.lowest);
            for (to, cost) in reached.zip(self.costs(*row)) {
                if cost.is_finite() {
                    *to = next.min(*to);
                }
            }
        }
        fewest
    }

    /// The closings that begin at a place and respect the pins, with the numbers of their places, rising.
    fn fitting(&self, closings: &[Closing]) -> Vec<Ending> {
        let mut fitting: Vec<Ending> = closings
            .iter()
            .filter(|closing| closing.cost.is_finite() && self.is_fitting(closing))
            .filter_map(|closing| Some((self.places.binary_search(&closing.from).ok()?, *closing)))
            .collect();
        order::by(&mut fitting, |one, other| one.0.cmp(&other.0));
        fitting
    }

    fn is_fitting(&self, closing: &Closing) -> bool {
        let Some(off) = closing.from.checked_sub(self.end()) else {
            return false;
        };
        let is_equal = off == 0 || (closing.cuts <= off && off.is_multiple_of(closing.cuts));
        let apart = |pin: &Pin, cut: &Pin| cut.from <= pin.to || pin.from <= cut.to || pin == cut;
        is_equal
            && (off == 0) == (closing.cuts == 0)
            && self
                .cuts(closing)
                .all(|cut| self.pins.iter().all(|pin| apart(pin, &cut)))
    }

    /// The cuts of a closing.
    fn cuts(&self, closing: &Closing) -> impl Iterator<Item = Pin> {
        let (from, cuts) = (closing.from, closing.cuts);
        let each = from
            .saturating_sub(self.end())
            .checked_div(cuts)
            .unwrap_or(0);
        (0..cuts).map(move |cut| Pin {
            from: from - cut * each,
            to: from - (cut + 1) * each,
        })
    }

    fn squares(&self, closing: &Closing) -> u64 {
        let square = |cut: Pin| u64::from(cut.from - cut.to).pow(2);
        self.cuts(closing).map(square).sum()
    }

    fn end(&self) -> u32 {
        self.places.first().copied().unwrap_or(0)
    }
}

/// A closing with the number of the place where it begins.
type Ending = (usize, Closing);

/// Those that begin at a place, with their numbers.
fn closings_from(
    closings: &[Ending],
    number: usize,
) -> impl Iterator<Item = (usize, &Closing)> + Clone {
    let first = closings.partition_point(|(place, _)| *place < number);
    let rest = closings.iter().enumerate().skip(first);
    rest.take_while(move |(_, (place, _))| *place == number)
        .map(|(which, (_, closing))| (which, closing))
}

#[cfg(test)]
#[path = "schedule_tests.rs"]
mod tests;
