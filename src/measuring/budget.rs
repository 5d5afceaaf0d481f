//! What one reading is worth: its size at 20 °C, and the standard uncertainty of each thing that can be off in it.
//!
//! After the Guide to the Expression of Uncertainty in Measurement (JCGM 100): to first order, each thing by itself.
//! A limit is taken as a rectangle: its standard uncertainty is half its width over √3.

use serde::Serialize;

use super::instruments::InstrumentFigures;
use super::temperature::Warmth;
use crate::quantity::{Expansion, Length, TemperatureStep};
use crate::tables::{Confirmed, Spread};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// Expanded ranges of sizes reach so many standard uncertainties, about 95 % (JCGM 100, 6.2).
pub const COVERAGE: f64 = 2.0;

/// The least that a reading's own uncertainty counts, so that none weighs without end: far less than any hand repeats.
pub const LEAST_OWN: Length = Length::um(0.001);

/// How far the form of turned work may make one diameter differ from another at the same place, either way.
///
/// # Source
/// Common practice, no source.
pub const FORM_LIMIT: Length = Length::um(2.0);

/// Something that can be off in a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Contribution {
    /// The instrument's scale, within its permissible error.
    Scale,
    /// The instrument where it only compares with a known size.
    Comparison,
    /// What the instrument is set on.
    Setting,
    /// Steps of the display, or divisions of the scale.
    Step,
    /// Scatter of repeated readings.
    Repeat,
    /// Temperature of the work, measured.
    WorkTemperature,
    /// Temperature of the work, taken to be that of the room.
    WorkUnlikeRoom,
    /// Temperature of the room, and of the instrument.
    RoomTemperature,
    /// Expansion of the work's material.
    WorkExpansion,
    /// Expansion of the instrument.
    InstrumentExpansion,
    /// Form of the work: out of round.
    Form,
}

/// Which readings something is off in alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shared {
    /// None: each reading anew.
    Reading,
    /// Those at one place.
    Place,
    /// Those of one instrument.
    Instrument,
    /// All of the work.
    Work,
}

impl Contribution {
    /// Which readings it is off in alike.
    pub const fn shared(self) -> Shared {
        match self {
            Self::Step | Self::Repeat => Shared::Reading,
            Self::Form => Shared::Place,
            Self::Scale | Self::Comparison | Self::Setting | Self::InstrumentExpansion => {
                Shared::Instrument
            }
            Self::WorkTemperature
            | Self::WorkUnlikeRoom
            | Self::RoomTemperature
            | Self::WorkExpansion => Shared::Work,
        }
    }
}

/// One line of a budget.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BudgetRow {
    /// What can be off.
    pub what: Contribution,
    /// What one standard uncertainty of it does to the size; below nothing where more of it makes the size smaller.
    pub effect: Length,
}

impl BudgetRow {
    /// Its share of the standard uncertainty.
    pub fn standard(self) -> Length {
        self.effect.abs()
    }
}

/// The root of the sum of squares of those rows that `counts` takes.
pub(super) fn root_sum(rows: &[BudgetRow], counts: impl Fn(Shared) -> bool) -> Length {
    let squares = rows.iter().filter(|row| counts(row.what.shared()));
    let sum: f64 = squares.map(|row| row.effect.to_mm().powi(2)).sum();
    Length::mm(sum.sqrt())
}

/// A reading with all that decides what it is worth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken {
    /// What the instrument showed.
    pub shown: Length,
    /// What the instrument is good for there.
    pub instrument: InstrumentFigures,
    /// How warm everything is; `None` where warmth does nothing, as to a roughness.
    pub warmth: Option<Warmth>,
    /// Expansion of the work's material.
    pub work_expansion: Spread<Expansion>,
    /// Expansion of the instrument.
    pub instrument_expansion: Spread<Expansion>,
    /// How far the form of the work may put the reading off, either way.
    pub form: Length,
}

/// A reading at 20 °C with its budget.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Corrected {
    /// The size at 20 °C.
    pub value: Length,
    /// What the instrument showed.
    pub shown: Length,
    /// The size at 20 °C less what was shown.
    pub correction: Length,
    /// What can be off; rows of nothing are left out.
    pub budget: Vec<BudgetRow>,
    /// Standard uncertainty that is the reading's own: repeating it makes the mean surer.
    pub own: Length,
    /// Standard uncertainty that all readings at the place share, or of the instrument, or of the work.
    pub common: Length,
    /// Standard uncertainty of the size.
    pub uncertainty: Length,
    /// The instrument, by its place in the shop's list; `None` is the usual one.
    pub instrument: Option<u8>,
    /// How much warmer than 20 °C the work was.
    pub work_above: TemperatureStep,
    /// How much warmer than 20 °C the instrument was.
    pub room_above: TemperatureStep,
    /// Expansion of the work that was counted with.
    pub work_expansion: Expansion,
    /// Expansion of the instrument that was counted with.
    pub instrument_expansion: Expansion,
}

/// A reading at 20 °C with its budget.
///
/// # Accuracy
/// First order: an uncertain expansion under an uncertain temperature adds less than 0.02 µm on 20 mm.
/// # Source
/// JCGM 100:2008 (GUM), 4.3, 5.1 and example H.1; ISO 1.
pub fn correct(taken: &Taken) -> Corrected {
    let shown = taken.shown;
    let (work, instrument) = (
        taken.work_expansion.typical,
        taken.instrument_expansion.typical,
    );
    let (work_above, room_above) = taken.warmth.map_or_else(Default::default, |warmth| {
        (warmth.work_above(), warmth.room_above())
    });
    let correction = instrument.growth(shown, room_above) - work.growth(shown, work_above);
    let value = shown + correction;
    // What is off in the reading is brought to 20 °C with it; nothing has no share to take.
    let share = if shown > Length::ZERO {
        value / shown
    } else {
        1.0
    };
    let read = |effect: Length| effect * share;
    let mut budget = Vec::new();
    let mut row = |what, effect: Length| {
        if effect != Length::ZERO {
            budget.push(BudgetRow { what, effect });
        }
    };
    let figures = taken.instrument;
    let scale = if figures.compares {
        Contribution::Comparison
    } else {
        Contribution::Scale
    };
    row(scale, read(of_limit(figures.error)));
    row(Contribution::Setting, read(of_limit(figures.setting)));
    row(Contribution::Step, read(of_limit(figures.graduation / 2.0)));
    row(Contribution::Repeat, read(figures.repeat));
    row(Contribution::Form, read(of_limit(taken.form)));
    if let Some(warmth) = taken.warmth {
        let room = step_of_limit(warmth.room_limit);
        let own = step_of_limit(warmth.work_limit);
        let works = work.growth(shown, own);
        let instruments = instrument.growth(shown, room);
        if warmth.work.is_some() {
            row(Contribution::WorkTemperature, -works);
            row(Contribution::RoomTemperature, instruments);
        } else {
            // As warm as the room: what of the room is off is off in both.
            row(Contribution::WorkUnlikeRoom, -works);
            let both = instruments - work.growth(shown, room);
            row(Contribution::RoomTemperature, both);
        }
        let unsure = spread_uncertainty(taken.work_expansion);
        row(
            Contribution::WorkExpansion,
            -unsure.growth(shown, work_above),
        );
        let unsure = spread_uncertainty(taken.instrument_expansion);
        row(
            Contribution::InstrumentExpansion,
            unsure.growth(shown, room_above),
        );
    }
    let own = root_sum(&budget, |shared| shared == Shared::Reading).max(LEAST_OWN);
    let common = root_sum(&budget, |shared| shared != Shared::Reading);
    Corrected {
        value,
        shown,
        correction,
        own,
        common,
        uncertainty: hypot(own, common),
        budget,
        instrument: None,
        work_above,
        room_above,
        work_expansion: work,
        instrument_expansion: instrument,
    }
}

impl Corrected {
    /// What differs between places along the work even with one instrument: the reading's own, and the form there.
    pub fn apart(&self) -> Length {
        self.of(|shared| matches!(shared, Shared::Reading | Shared::Place))
            .max(LEAST_OWN)
    }

    /// The standard uncertainty of some of the rows.
    pub(super) fn of(&self, counts: impl Fn(Shared) -> bool) -> Length {
        root_sum(&self.budget, counts)
    }

    /// The size at 20 °C with its expanded range (k = 2) and its working.
    pub fn figure(&self) -> Figure<Length> {
        let size = |symbol, meaning, value| Input::new(symbol, meaning, Value::size(value));
        Figure {
            value: self.value,
            range: Some(expanded(self.value, self.uncertainty)),
            working: Working {
                symbol: "D",
                formula: "d · (1 − α₁ · t₁ + α₂ · t₂)",
                parts: &["U = 2 · u", "u² = r² + c²"],
                inputs: vec![
                    size("d", Meaning::ReadingShown, self.shown),
                    Input::new(
                        "α₁",
                        Meaning::WorkExpansion,
                        Value::Expansion(self.work_expansion),
                    ),
                    Input::new(
                        "t₁",
                        Meaning::WorkAboveReference,
                        Value::TemperatureStep(self.work_above),
                    ),
                    Input::new(
                        "α₂",
                        Meaning::InstrumentExpansion,
                        Value::Expansion(self.instrument_expansion),
                    ),
                    Input::new(
                        "t₂",
                        Meaning::InstrumentAboveReference,
                        Value::TemperatureStep(self.room_above),
                    ),
                    Input::new("r", Meaning::OwnUncertainty, Value::Fine(self.own)),
                    Input::new("c", Meaning::CommonUncertainty, Value::Fine(self.common)),
                ],
                source: GUM,
            },
        }
    }
}

/// The guide that uncertainties are combined by.
pub(super) const GUM: Source = Source::Published {
    title: "JCGM 100:2008, Guide to the expression of uncertainty in measurement; ISO 1",
    confirmed: Confirmed::OneSource,
};

/// Lowest and highest of a value at [`COVERAGE`].
pub(super) fn expanded(value: Length, uncertainty: Length) -> Range<Length> {
    let reach = uncertainty * COVERAGE;
    Range {
        low: value - reach,
        high: value + reach,
    }
}

/// The root of the sum of two squares.
pub(super) fn hypot(one: Length, other: Length) -> Length {
    Length::mm(one.to_mm().hypot(other.to_mm()))
}

/// Standard uncertainty of a limit, either way: a rectangle (JCGM 100, 4.3.7).
fn of_limit(limit: Length) -> Length {
    limit / 3.0_f64.sqrt()
}

fn step_of_limit(limit: TemperatureStep) -> TemperatureStep {
    limit / 3.0_f64.sqrt()
}

/// Standard uncertainty of an expansion from its spread: a rectangle as wide as the farther end on both sides.
pub(super) fn spread_uncertainty(spread: Spread<Expansion>) -> Expansion {
    let farther = (spread.high - spread.typical).max(spread.typical - spread.low);
    farther.max(Expansion::ZERO) / 3.0_f64.sqrt()
}
