//! Readings of a job at 20 °C, and what several at one place are worth together.

use serde::Serialize;

use super::budget::{
    BudgetRow, Corrected, FORM_LIMIT, GUM, Shared, Taken, correct, expanded, hypot, root_sum,
};
use super::instruments::instrument_figures;
use super::temperature::{INSTRUMENT_EXPANSION, Warmth};
use crate::job::{Job, Measured, Reading};
use crate::quantity::Length;
use crate::working::{Figure, Input, Meaning, Value, Working};

/// The largest diameter or length that a reading is believed to be of.
pub const MOST_READ: Length = Length::mm(2000.0);

/// A reading of a job at 20 °C with its uncertainty; `None` where size or temperature cannot be believed: nothing or
/// less, more than [`MOST_READ`], or outside −20…200 °C.
///
/// # Accuracy
/// As good as what the instrument is believed to be good for: see [`instrument_figures`].
/// # Source
/// [`correct`].
/// # Example
/// ```
/// use skimwright::job::{Job, Measured, Reading, WorkPlace};
/// use skimwright::measuring::corrected;
/// use skimwright::quantity::{Entered, Unit};
/// let reading = Reading {
///     of: Measured::Diameter(WorkPlace::Middle),
///     value: Entered::read("20.012", Unit::Millimetre).unwrap(),
///     instrument: None,
///     temperature: Some(Entered::read("31", Unit::Celsius).unwrap()),
///     confirmed: false,
/// };
/// let cold = corrected(&Job::default(), &reading).unwrap();
/// assert!((cold.value.to_mm() - 20.0095).abs() < 0.0001);
/// assert!(cold.own < cold.common);
/// ```
pub fn corrected(job: &Job, reading: &Reading) -> Option<Corrected> {
    let shown = reading.value.value();
    let may_be_nothing = reading.of == Measured::Runout;
    let sound =
        shown <= MOST_READ && (shown > Length::ZERO || (may_be_nothing && shown >= Length::ZERO));
    if !sound {
        return None;
    }
    let warmth = Warmth::of(job, reading)?;
    let instrument = reading
        .instrument
        .filter(|index| usize::from(*index) < job.shop.instruments.len());
    let taken = Taken {
        shown,
        instrument: instrument_figures(job, instrument, &reading.of, shown),
        // Heat does nothing to a ridge, nor to the difference that an indicator shows.
        warmth: match reading.of {
            Measured::Diameter(_) | Measured::Length => Some(warmth),
            Measured::Runout | Measured::Roughness => None,
        },
        work_expansion: job.part.material.mechanical().expansion,
        instrument_expansion: INSTRUMENT_EXPANSION,
        form: match reading.of {
            Measured::Diameter(_) => FORM_LIMIT,
            Measured::Length | Measured::Runout | Measured::Roughness => Length::ZERO,
        },
    };
    Some(Corrected {
        instrument,
        ..correct(&taken)
    })
}

/// Several readings at one place together.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mean {
    /// The weighted mean at 20 °C.
    pub value: Length,
    /// Standard uncertainty of what is each reading's own; shrinks with more readings.
    pub own: Length,
    /// Standard uncertainty of what the readings share; does not shrink.
    pub common: Length,
    /// Standard uncertainty of the mean.
    pub uncertainty: Length,
    /// What can be off in the mean.
    pub budget: Vec<BudgetRow>,
    /// How many readings.
    pub readings: u32,
    /// What each instrument adds.
    #[serde(skip)]
    groups: Vec<Group>,
    /// Variance that no reading shrinks: form and temperature.
    #[serde(skip)]
    rest: f64,
}

/// The readings of one instrument at a place. Variances, in square millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Group {
    instrument: Option<u8>,
    /// One over the variance of their mean, as far as it is their own.
    information: f64,
    /// Variance of the last one, as far as it is its own.
    own: f64,
    /// Variance that the instrument has in all of them.
    instruments: f64,
}

impl Group {
    /// Variance of their mean, form and temperature apart.
    fn variance(self) -> f64 {
        1.0 / self.information + self.instruments
    }
}

/// Variance of the weighted mean of groups.
fn together(groups: &[Group]) -> f64 {
    1.0 / groups.iter().map(|it| 1.0 / it.variance()).sum::<f64>()
}

impl Mean {
    /// Several readings at one place together; `None` without any.
    ///
    /// Readings of one instrument count by what is their own; instruments count by what their means are worth, form and
    /// temperature apart, which they share.
    ///
    /// # Accuracy
    /// The mean of readings taken equally warm is never less sure for one more of them.
    /// # Source
    /// JCGM 100:2008 (GUM), 5.2: what is off in several inputs alike is added with its sign, what is not by squares.
    pub fn of(readings: &[Corrected]) -> Option<Self> {
        let groups = grouped(readings);
        let all: f64 = groups.iter().map(|it| 1.0 / it.variance()).sum();
        let weights: Vec<f64> = readings
            .iter()
            .map(|reading| {
                let group = groups.iter().find(|it| it.instrument == reading.instrument);
                group.map_or(0.0, |group| {
                    let within = 1.0 / square(reading.own) / group.information;
                    within / group.variance() / all
                })
            })
            .collect();
        let first = readings.first()?;
        // Differences from the first: sums of whole sizes would lose the last digits.
        let moves = readings.iter().zip(&weights);
        let off: Length = moves
            .map(|(reading, weight)| (reading.value - first.value) * *weight)
            .sum();
        let budget = combined(readings, &weights);
        let own: f64 = readings
            .iter()
            .zip(&weights)
            .map(|(reading, weight)| square(reading.own) * weight * weight)
            .sum();
        let own = Length::mm(own.sqrt());
        let common = root_sum(&budget, |shared| shared != Shared::Reading);
        let rest = root_sum(&budget, |shared| {
            matches!(shared, Shared::Place | Shared::Work)
        });
        Some(Self {
            value: first.value + off,
            own,
            common,
            uncertainty: hypot(own, common),
            budget,
            readings: u32::try_from(readings.len()).unwrap_or(u32::MAX),
            groups,
            rest: square(rest),
        })
    }

    /// The standard uncertainty with so many more readings of the best of the instruments, taken as the others were.
    pub fn uncertainty_with(&self, more: u32) -> Length {
        let mut groups = self.groups.clone();
        let best = groups
            .iter_mut()
            .reduce(|a, b| if b.variance() < a.variance() { b } else { a });
        if let Some(best) = best {
            best.information += f64::from(more) / best.own;
        }
        let variance = together(&groups) + self.rest;
        Length::mm(variance.sqrt()).min(self.uncertainty)
    }

    /// The standard uncertainty that is left however often the same instruments are read.
    pub fn uncertainty_at_best(&self) -> Length {
        self.uncertainty_with(u32::MAX)
    }

    /// The mean with its expanded range (k = 2) and its working.
    pub fn figure(&self) -> Figure<Length> {
        Figure {
            value: self.value,
            range: Some(expanded(self.value, self.uncertainty)),
            working: Working {
                symbol: "D",
                formula: "Σ w · d",
                parts: &["Σ w = 1", "U = 2 · √(r² + c²)"],
                inputs: vec![
                    Input::new("n", Meaning::ReadingCount, Value::Count(self.readings)),
                    Input::new("r", Meaning::OwnUncertainty, Value::Fine(self.own)),
                    Input::new("c", Meaning::CommonUncertainty, Value::Fine(self.common)),
                ],
                source: GUM,
            },
        }
    }
}

/// The readings by instrument, in the order in which they come.
fn grouped(readings: &[Corrected]) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for reading in readings {
        let own = square(reading.own);
        let instruments = square(reading.of(|shared| shared == Shared::Instrument));
        match groups
            .iter_mut()
            .find(|it| it.instrument == reading.instrument)
        {
            Some(group) => {
                group.information += 1.0 / own;
                group.own = group.own.max(own);
                group.instruments = group.instruments.max(instruments);
            }
            None => groups.push(Group {
                instrument: reading.instrument,
                information: 1.0 / own,
                own,
                instruments,
            }),
        }
    }
    groups
}

/// The budget of a weighted mean.
fn combined(readings: &[Corrected], weights: &[f64]) -> Vec<BudgetRow> {
    /// What is off alike, and by how much it puts the mean off; of what is each reading's own, the square of that.
    struct Sum {
        row: BudgetRow,
        instrument: Option<u8>,
        squares: f64,
    }
    let mut sums: Vec<Sum> = Vec::new();
    for (reading, weight) in readings.iter().zip(weights) {
        for row in &reading.budget {
            let shared = row.what.shared();
            let instrument = match shared {
                Shared::Instrument => reading.instrument,
                _ => None,
            };
            let effect = row.effect * *weight;
            let same = |it: &&mut Sum| it.row.what == row.what && it.instrument == instrument;
            let sum = sums.iter_mut().find(same);
            if let Some(sum) = sum {
                sum.row.effect += effect;
                sum.squares += square(effect);
            } else {
                sums.push(Sum {
                    row: BudgetRow {
                        what: row.what,
                        effect,
                    },
                    instrument,
                    squares: square(effect),
                });
            }
        }
    }
    let each = sums.into_iter().map(|sum| {
        if sum.row.what.shared() == Shared::Reading {
            BudgetRow {
                effect: Length::mm(sum.squares.sqrt()),
                ..sum.row
            }
        } else {
            sum.row
        }
    });
    each.collect()
}

/// A length in millimetres, squared.
pub(super) fn square(length: Length) -> f64 {
    length.to_mm() * length.to_mm()
}
