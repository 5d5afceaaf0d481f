//! All passes that may be taken, each with its cost.

/// A pass that must be taken, from one number of steps left to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin {
    /// Steps left before it, on radius.
    pub from: u32,
    /// Steps left after it.
    pub to: u32,
}

/// What is to be taken off, and where passes may stop. All in whole steps that are left, on radius.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stock {
    /// Steps left before the first pass. Each takes a byte of memory: some ten thousand are usual, millions are meant
    /// to be told apart more coarsely.
    pub start: u32,
    /// Steps left after the last one; zero at size.
    pub end: u32,
    /// Most passes.
    pub most_passes: usize,
    /// Passes that must be taken, in any order.
    pub pins: Vec<Pin>,
    /// Passes may stop at every whole multiple of this, counted from the end; also at start, end and pins.
    pub step: u32,
    /// Where passes may stop besides, as before last cuts.
    pub stops: Vec<u32>,
}

/// Why there is no schedule. A pin is named by its place in the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// The end is above the start.
    EndAboveStart,
    /// The pin takes nothing off: its end is not below its start.
    PinTakesNothing {
        /// Which.
        pin: usize,
    },
    /// The pin begins above the start or goes below the end.
    PinOutOfStock {
        /// Which.
        pin: usize,
    },
    /// Two pins take off the same steps.
    PinsOverlap {
        /// The one that comes first in the list.
        one: usize,
        /// The other.
        other: usize,
    },
    /// No setting allows the pinned pass.
    PinNotAllowed {
        /// Which.
        pin: usize,
    },
    /// No row of allowed passes leads from start to end.
    NoSchedule,
    /// Every row of allowed passes is longer than the most passes.
    TooManyPasses {
        /// The fewest that would do.
        fewest: usize,
    },
}

/// All passes that may be taken, each with its cost.
///
/// Places are where passes may stop, rising; of each, the row holds the costs of the passes from there to every lower
/// place within reach, the deepest first. A pass that is not allowed costs infinity.
#[derive(Clone, Debug)]
pub struct Stages {
    pub(super) places: Vec<u32>,
    pub(super) rows: Vec<Row>,
    costs: Vec<f64>,
    pub(super) pins: Vec<Pin>,
    pub(super) most_passes: usize,
}

/// The passes from one place.
#[derive(Clone, Copy, Debug)]
pub(super) struct Row {
    /// The lowest place within reach, by its number.
    pub(super) lowest: usize,
    /// Where its costs begin and end.
    from: usize,
    to: usize,
}

impl Stages {
    /// Asks for the cost of every pass that may be taken, once each.
    ///
    /// `most_depth`: most steps of a pass that begins with so many steps left; a pinned pass may be deeper.
    /// `cost`: of the pass from so many steps left to so many, both given; `None` where it is not allowed. Not finite
    /// is not allowed.
    ///
    /// Time and memory: one cost for each pair of places not further apart than the most depth, at most places × depths.
    ///
    /// # Errors
    /// The first [`Refusal`] that names the end or a pin.
    pub fn new(
        stock: &Stock,
        most_depth: impl Fn(u32) -> u32,
        mut cost: impl FnMut(u32, u32) -> Option<f64>,
    ) -> Result<Self, Refusal> {
        check(stock)?;
        let places = places(stock);
        let mut stages = Self {
            rows: Vec::with_capacity(places.len()),
            costs: Vec::new(),
            pins: stock.pins.clone(),
            most_passes: stock.most_passes,
            places: Vec::new(),
        };
        for (number, &from) in places.iter().enumerate() {
            let (lowest, highest) = reach(&stock.pins, from, most_depth(from));
            let below = |steps: u32| places.partition_point(|place| *place < steps);
            let begins = stages.costs.len();
            let first = below(lowest);
            let last = below(highest.saturating_add(1)).min(number);
            for &to in places.get(first..last).unwrap_or_default() {
                let found = cost(from, to).filter(|cost| cost.is_finite());
                if let (None, Some(pin)) = (found, stages.pin(from, to)) {
                    return Err(Refusal::PinNotAllowed { pin });
                }
                stages.costs.push(found.unwrap_or(f64::INFINITY));
            }
            stages.rows.push(Row {
                lowest: first,
                from: begins,
                to: stages.costs.len(),
            });
        }
        stages.places = places;
        Ok(stages)
    }

    /// The costs of the passes of a row.
    pub(super) fn costs(&self, row: Row) -> &[f64] {
        self.costs.get(row.from..row.to).unwrap_or_default()
    }

    /// How many passes are held, allowed or not: what the time of every search grows with.
    pub fn size(&self) -> usize {
        self.costs.len()
    }

    fn pin(&self, from: u32, to: u32) -> Option<usize> {
        self.pins.iter().position(|pin| *pin == Pin { from, to })
    }
}

/// The least and most steps left that a pass from here may end at; the least above the most where there is none.
///
/// A pinned pass is in every schedule when no other pass touches what it takes off.
fn reach(pins: &[Pin], from: u32, most_depth: u32) -> (u32, u32) {
    let mut lowest = from.saturating_sub(most_depth);
    for pin in pins {
        if pin.from == from {
            return (pin.to, pin.to);
        }
        if pin.to < from && from < pin.from {
            return (1, 0);
        }
        if pin.from < from {
            lowest = lowest.max(pin.from);
        }
    }
    (lowest, from)
}

fn check(stock: &Stock) -> Result<(), Refusal> {
    if stock.start < stock.end {
        return Err(Refusal::EndAboveStart);
    }
    for (pin, Pin { from, to }) in stock.pins.iter().enumerate() {
        if from <= to {
            return Err(Refusal::PinTakesNothing { pin });
        }
        if stock.start < *from || *to < stock.end {
            return Err(Refusal::PinOutOfStock { pin });
        }
        let before = stock.pins.iter().take(pin);
        if let Some(one) = before
            .clone()
            .position(|earlier| earlier.to < *from && *to < earlier.from)
        {
            return Err(Refusal::PinsOverlap { one, other: pin });
        }
    }
    Ok(())
}

/// All places where passes may stop, rising, each once. Ticking them off takes a byte a step and no sorting.
fn places(stock: &Stock) -> Vec<u32> {
    let mut stops = vec![false; (stock.start - stock.end) as usize + 1];
    for stop in stops.iter_mut().step_by(stock.step.max(1) as usize) {
        *stop = true;
    }
    let pinned = stock.pins.iter().flat_map(|pin| [pin.from, pin.to]);
    for steps in stock
        .stops
        .iter()
        .copied()
        .chain(pinned)
        .chain([stock.start])
    {
        let above_end = steps.checked_sub(stock.end);
        if let Some(stop) = above_end.and_then(|number| stops.get_mut(number as usize)) {
            *stop = true;
        }
    }
    let places = (stock.end..=stock.start).zip(stops);
    places
        .filter_map(|(steps, stop)| stop.then_some(steps))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stock(start: u32, pins: &[(u32, u32)]) -> Stock {
        Stock {
            start,
            end: 0,
            most_passes: 200,
            pins: pins.iter().map(|&(from, to)| Pin { from, to }).collect(),
            step: 1,
            stops: Vec::new(),
        }
    }

    fn refusal(stock: &Stock) -> Option<Refusal> {
        Stages::new(stock, |_| 5, |_, _| Some(1.0)).err()
    }

    #[test]
    fn contradictions_are_named() {
        let cases = [
            (stock(9, &[(3, 3)]), Refusal::PinTakesNothing { pin: 0 }),
            (
                stock(9, &[(4, 2), (11, 8)]),
                Refusal::PinOutOfStock { pin: 1 },
            ),
            (
                stock(9, &[(9, 7), (5, 2), (6, 4)]),
                Refusal::PinsOverlap { one: 1, other: 2 },
            ),
            (
                stock(9, &[(5, 2), (5, 2)]),
                Refusal::PinsOverlap { one: 0, other: 1 },
            ),
            (
                Stock {
                    end: 10,
                    ..stock(9, &[])
                },
                Refusal::EndAboveStart,
            ),
        ];
        for (stock, wanted) in cases {
            assert_eq!(refusal(&stock), Some(wanted), "{stock:?}");
        }
        assert_eq!(refusal(&stock(9, &[(5, 2), (9, 5), (2, 0)])), None);
    }

    #[test]
    fn a_pin_that_no_setting_allows_is_named() {
        let made = Stages::new(
            &stock(9, &[(9, 8), (5, 2)]),
            |_| 5,
            |from, to| (from - to < 3).then_some(1.0),
        );
        assert_eq!(made.err(), Some(Refusal::PinNotAllowed { pin: 1 }));
    }

    #[test]
    fn each_cost_is_asked_for_once_and_none_across_a_pin() {
        let mut asked = Vec::new();
        Stages::new(
            &stock(6, &[(4, 2)]),
            |_| 3,
            |from, to| {
                asked.push((from, to));
                Some(1.0)
            },
        )
        .unwrap();
        assert_eq!(
            asked,
            [(1, 0), (2, 0), (2, 1), (4, 2), (5, 4), (6, 4), (6, 5)]
        );
    }

    #[test]
    fn a_coarse_stock_stops_at_multiples_and_at_what_was_named() {
        let coarse = Stock {
            step: 4,
            end: 1,
            stops: vec![3, 40],
            ..stock(12, &[(8, 7)])
        };
        assert_eq!(places(&coarse), [1, 3, 5, 7, 8, 9, 12]);
    }
}
