#![allow(clippy::float_cmp, reason = "exact results are meant")]

use super::super::stages::Stock;
use super::*;

/// A small generator of numbers, the same in every run.
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, most: u32) -> u32 {
        // Constants of the 64-bit linear generator in Knuth, The Art of Computer Programming, volume 2, 3.3.4 (from memory).
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 33) % u64::from(most)) as u32
    }
}

/// A problem with whole costs, so that sums are exact and ties are many.
struct Problem {
    stock: Stock,
    most_depth: Vec<u32>,
    costs: Vec<Vec<Option<f64>>>,
    closings: Vec<Closing>,
}

impl Problem {
    fn random(seed: u64) -> Self {
        let mut numbers = Numbers(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15));
        numbers.below(2);
        let end = numbers.below(3);
        let start = end + numbers.below(11);
        let mut stock = Stock {
            start,
            end,
            most_passes: 1 + numbers.below(8) as usize,
            pins: vec![],
            step: 1 + numbers.below(2) * numbers.below(2),
            stops: vec![],
        };
        for _ in 0..numbers.below(3) {
            let to = end + numbers.below(10);
            let pin = Pin {
                from: to + 1 + numbers.below(4),
                to,
            };
            let with = Stock {
                pins: stock.pins.iter().copied().chain([pin]).collect(),
                ..stock.clone()
            };
            if Stages::new(&with, |_| 1, |_, _| Some(1.0)).is_ok() {
                stock = with;
            }
        }
        let kinds = 1 + numbers.below(12);
        let size = start + 1;
        let mut cost = |_| (numbers.below(8) > 0).then(|| f64::from(1 + numbers.below(kinds)));
        let costs = (0..size)
            .map(|_| (0..size).map(&mut cost).collect())
            .collect();
        let most_depth = (0..size).map(|_| 1 + numbers.below(6)).collect();
        let mut closings = vec![];
        if numbers.below(2) == 0 {
            closings.push(Closing {
                from: end,
                cuts: 0,
                cost: 0.0,
            });
        }
        for _ in 0..numbers.below(4) {
            let cuts = 1 + numbers.below(3);
            let from = end + cuts * (1 + numbers.below(3));
            let cost = f64::from(numbers.below(9));
            closings.push(Closing { from, cuts, cost });
        }
        stock.stops = closings.iter().map(|closing| closing.from).collect();
        Self {
            stock,
            most_depth,
            costs,
            closings,
        }
    }

    fn cost(&self, from: u32, to: u32) -> Option<f64> {
        self.costs[from as usize][to as usize]
    }

    fn stages(&self) -> Result<Stages, Refusal> {
        let most_depth = |from: u32| self.most_depth[from as usize];
        Stages::new(&self.stock, most_depth, |from, to| self.cost(from, to))
    }

    /// Every schedule that keeps to the rules, found by trying all of them, with no thought of what is best.
    fn all(&self) -> Vec<Schedule> {
        let mut all = vec![];
        self.extend(&mut vec![self.stock.start], 0.0, &mut all);
        all.retain(|schedule| {
            let has = |pin: &Pin| schedule.passes().any(|pass| pass == (pin.from, pin.to));
            self.stock.pins.iter().all(has)
        });
        all
    }

    fn extend(&self, stops: &mut Vec<u32>, cost: f64, all: &mut Vec<Schedule>) {
        let here = *stops.last().unwrap();
        for closing in self.closings.iter().filter(|closing| closing.from == here) {
            let each = (here - self.stock.end)
                .checked_div(closing.cuts)
                .unwrap_or(0);
            let after = (1..=closing.cuts).map(|cut| here - cut * each);
            all.push(Schedule {
                cost: cost + closing.cost,
                stops: stops.iter().copied().chain(after).collect(),
                last_cuts: closing.cuts,
            });
        }
        for to in self.stock.end..here {
            let pinned = self.stock.pins.contains(&Pin { from: here, to });
            let near = here - to <= self.most_depth[here as usize];
            if let (true, true, Some(more)) =
                (pinned || near, self.may_stop(to), self.cost(here, to))
            {
                stops.push(to);
                self.extend(stops, cost + more, all);
                stops.pop();
            }
        }
    }

    fn may_stop(&self, at: u32) -> bool {
        let Stock {
            pins,
            step,
            stops,
            end,
            ..
        } = &self.stock;
        (at - end).is_multiple_of(*step)
            || stops.contains(&at)
            || pins.iter().any(|pin| pin.from == at || pin.to == at)
    }
}

/// Cheaper first, then fewer passes, then more even. The bits of floats above zero rise as the floats do.
fn order(schedule: &Schedule) -> (u64, usize, u64) {
    let square = |(from, to): (u32, u32)| u64::from(from - to).pow(2);
    let squares = schedule.passes().map(square).sum();
    (schedule.cost.to_bits(), schedule.count(), squares)
}

#[test]
fn the_best_of_all_schedules_is_found_in_thousands_of_small_problems() {
    let mut seen = [0; 4];
    for seed in 0..6000 {
        let problem = Problem::random(seed);
        let Ok(stages) = problem.stages() else {
            seen[0] += 1;
            continue;
        };
        let all = problem.all();
        let most = problem.stock.most_passes;
        let best = all
            .iter()
            .filter(|schedule| schedule.count() <= most)
            .min_by_key(|schedule| order(schedule));
        match (stages.best(&problem.closings), best) {
            (Ok(found), Some(best)) => {
                assert_eq!(order(&found), order(best), "{seed}: {found:?} {best:?}");
                assert!(all.contains(&found), "{seed}: {found:?}");
                seen[1] += 1;
            }
            (Err(Refusal::TooManyPasses { fewest }), None) => {
                let counts = all.iter().map(Schedule::count);
                assert_eq!(counts.min(), Some(fewest), "{seed}");
                seen[2] += 1;
            }
            (Err(Refusal::NoSchedule), None) => {
                assert_eq!(all, [], "{seed}");
                seen[3] += 1;
            }
            other => panic!("{seed}: {other:?}"),
        }
    }
    // Every kind of answer came up often enough to mean something.
    assert!(seen.iter().all(|count| *count > 50), "{seen:?}");
}

#[test]
fn the_best_of_every_count_is_found_in_thousands_of_small_problems() {
    for seed in 10_000..14_000 {
        let problem = Problem::random(seed);
        let Ok(stages) = problem.stages() else {
            continue;
        };
        let all = problem.all();
        let best = |count: usize| {
            all.iter()
                .filter(|schedule| schedule.count() == count)
                .map(order)
                .min()
        };
        let found = stages.by_count(&problem.closings, 1..=6);
        let wanted: Vec<_> = (1..=problem.stock.most_passes.min(6))
            .filter_map(best)
            .collect();
        assert_eq!(
            found.iter().map(order).collect::<Vec<_>>(),
            wanted,
            "{seed}"
        );
        assert!(
            found.iter().all(|schedule| all.contains(schedule)),
            "{seed}"
        );
    }
}

fn straight(start: u32) -> Stock {
    Stock {
        start,
        end: 0,
        most_passes: 200,
        pins: vec![],
        step: 1,
        stops: vec![],
    }
}

const TO_THE_END: Closing = Closing {
    from: 0,
    cuts: 0,
    cost: 0.0,
};

/// A cost that is the same for every row, but not its sums: the rounding must not choose.
#[test]
fn rounding_breaks_no_tie() {
    let cost = |from: u32, to: u32| Some(f64::from(from - to) * 0.1);
    let stages = Stages::new(&straight(20), |_| 7, cost).unwrap();
    assert_eq!(stages.best(&[TO_THE_END]).unwrap().stops, [20, 13, 6, 0]);
}

#[test]
fn a_pass_each_makes_equal_passes() {
    let cost = |from: u32, to: u32| Some(1.0 + f64::from(from - to).powi(2));
    let stages = Stages::new(&straight(12), |_| 12, cost).unwrap();
    let counts = stages.by_count(&[TO_THE_END], 2..=4);
    assert_eq!(counts[0].stops, [12, 6, 0]);
    assert_eq!(counts[1].stops, [12, 8, 4, 0]);
    assert_eq!(counts[2].stops, [12, 9, 6, 3, 0]);
    assert_eq!(counts[2].cost, 4.0 + 36.0);
}

#[test]
fn nothing_to_take_off_is_an_empty_schedule() {
    let stages = Stages::new(&straight(0), |_| 7, |_, _| Some(1.0)).unwrap();
    let best = stages.best(&[TO_THE_END]).unwrap();
    assert_eq!((best.count(), best.cost, best.stops), (0, 0.0, vec![0]));
}

#[test]
fn two_hundred_passes_are_counted() {
    let stages = Stages::new(&straight(201), |_| 1, |_, _| Some(1.0)).unwrap();
    assert_eq!(
        stages.best(&[TO_THE_END]),
        Err(Refusal::TooManyPasses { fewest: 201 })
    );
    let stages = Stages::new(&straight(200), |_| 1, |_, _| Some(1.0)).unwrap();
    assert_eq!(stages.best(&[TO_THE_END]).unwrap().count(), 200);
}
