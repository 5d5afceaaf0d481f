//! What a rework costs: the time at the shop's rate, the edges and discs used, consumables, postage.
//!
//! Sums are kept unrounded in whole units of whatever currency the person names. Regrinding costs time, which is in
//! the total time already. The spread of the cost is that of the time: all else is a fixed sum.

use core::fmt;
use core::num::NonZeroU8;

use serde::Serialize;

use super::distribution::Spread;
use crate::quantity::{Money, Time};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// The largest price; it keeps every cost finite, and any currency has room for a rework below it.
pub const LARGEST_PRICE: Money = Money::of_currency(1e12);

/// The most edges or discs.
pub const MOST_USED: f64 = 1e6;

/// What an insert costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Insert {
    /// The price of one insert.
    pub price: Money,
    /// How many edges it has.
    pub edges: NonZeroU8,
}

/// What the shop asks and pays; all of it from zero to [`LARGEST_PRICE`], and `None` counts as nothing but for the rate.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rates {
    /// For one hour of work, machine and person together. Without it there is no cost.
    pub hourly: Option<Money>,
    /// The least that is charged for a rework, postage apart.
    pub minimum_charge: Option<Money>,
    /// Oil, cloth, abrasive, packing: the sum for one rework.
    pub consumables: Option<Money>,
    /// Sending it back.
    pub postage: Option<Money>,
    /// The inserts in use; `None` for tools ground in the shop.
    pub insert: Option<Insert>,
    /// The price of one cut-off disc or wheel.
    pub disc_price: Option<Money>,
}

/// What a rework wears out; each from zero to [`MOST_USED`], parts of one allowed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Used {
    /// Edges, as time in the cut over tool life gives them.
    pub edges: f64,
    /// Cut-off discs.
    pub discs: f64,
}

/// How edges are charged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EdgeCounting {
    /// The share used: what the work costs the shop in the long run, for comparing ways.
    Share,
    /// Whole edges, a begun one as one: what is charged, for nobody takes back a used edge.
    Whole,
}

/// One part of a cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum CostPart {
    /// Time at the shop's rate.
    Labour,
    /// Edges of inserts.
    Edges,
    /// Cut-off discs.
    Discs,
    /// Oil, cloth, abrasive, packing.
    Consumables,
    /// What lifts the rest to the minimum charge.
    ToMinimum,
    /// Sending it back.
    Postage,
}

/// What a rework costs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cost {
    /// At the low time.
    pub low: Money,
    /// At the likely time.
    pub likely: Money,
    /// At the high time.
    pub high: Money,
    /// What the likely cost is made of, those of nothing left out; together they are the likely cost.
    pub parts: Vec<(CostPart, Money)>,
    /// Whether the likely cost was lifted to the minimum charge.
    pub minimum_applied: bool,
    /// How it came about.
    pub working: Working,
}

/// Why there is no cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CostError {
    /// No hourly rate: enter one.
    NoRate,
    /// A price is below zero, above [`LARGEST_PRICE`], or no number.
    Price(PriceField),
    /// A number of edges or discs is below zero, above [`MOST_USED`], or no number.
    Amount(CostPart),
}

/// A price of the [`Rates`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "each is documented where the rates hold it")]
pub enum PriceField {
    Hourly,
    MinimumCharge,
    Consumables,
    Postage,
    Insert,
    Disc,
}

impl Cost {
    /// The likely cost with its range and working.
    pub fn figure(&self) -> Figure<Money> {
        Figure {
            value: self.likely,
            range: Some(Range {
                low: self.low,
                high: self.high,
            }),
            working: self.working.clone(),
        }
    }
}

/// The cost of a rework from its time and what it wears out.
///
/// The minimum charge holds for all but the postage, which is passed on as it is.
///
/// # Errors
/// [`CostError::NoRate`] without an hourly rate; [`CostError::Price`] and [`CostError::Amount`] name a price or an
/// amount that is out of its range.
/// # Accuracy
/// Unrounded. Low and high are those of the time's spread.
/// # Source
/// Common practice, no source. Edge price as price of the insert over its edges: M. P. Groover, Fundamentals of Modern
/// Manufacturing, machining economics (from memory).
/// # Example
/// ```
/// use skimwright::costing::{Counted, EdgeCounting, Rates, Spread, ThreePoint, Used, cost};
/// use skimwright::quantity::{Money, Time};
/// let hour = ThreePoint::exact(Time::minutes(60.0)).unwrap();
/// let time = Spread::of(&[], &[Counted { each: hour, count: 1 }]);
/// let rates = Rates { hourly: Some(Money::of_currency(50.0)), ..Rates::default() };
/// let cost = cost(&time, &Used::default(), &rates, EdgeCounting::Whole).unwrap();
/// assert_eq!(cost.likely, Money::of_currency(50.0));
/// ```
pub fn cost(
    time: &Spread,
    used: &Used,
    rates: &Rates,
    counting: EdgeCounting,
) -> Result<Cost, CostError> {
    let prices = Prices::of(rates)?;
    let edges = match counting {
        EdgeCounting::Share => amount(used.edges, CostPart::Edges)?,
        EdgeCounting::Whole => whole(amount(used.edges, CostPart::Edges)?),
    };
    let discs = amount(used.discs, CostPart::Discs)?;
    let fixed = [
        (CostPart::Edges, prices.edge * edges),
        (CostPart::Discs, prices.disc * discs),
        (CostPart::Consumables, prices.consumables),
    ];
    let before_minimum = |time: Time| {
        let worn: Money = fixed.iter().map(|(_, money)| *money).sum();
        prices.hourly * (time / HOUR) + worn
    };
    let charge = |time: Time| before_minimum(time).max(prices.minimum) + prices.postage;
    let lifted = prices.minimum - before_minimum(time.likely);
    let labour = (CostPart::Labour, prices.hourly * (time.likely / HOUR));
    let last = [
        (CostPart::ToMinimum, lifted.max(Money::ZERO)),
        (CostPart::Postage, prices.postage),
    ];
    let parts = core::iter::once(labour)
        .chain(fixed)
        .chain(last)
        .filter(|(_, money)| *money > Money::ZERO)
        .collect();
    Ok(Cost {
        low: charge(time.low),
        likely: charge(time.likely),
        high: charge(time.high),
        parts,
        minimum_applied: lifted > Money::ZERO,
        working: prices.working(time.likely, edges, discs),
    })
}

const HOUR: Time = Time::minutes(60.0);

/// A begun edge is a whole one; what is over by rounding alone is not begun.
fn whole(edges: f64) -> f64 {
    const ROUNDING: f64 = 1e-9;
    (edges - ROUNDING).ceil().max(0.0)
}

fn amount(number: f64, part: CostPart) -> Result<f64, CostError> {
    if (0.0..=MOST_USED).contains(&number) {
        Ok(number)
    } else {
        Err(CostError::Amount(part))
    }
}

/// The rates, checked, nothing in the place of what was left out.
struct Prices {
    hourly: Money,
    minimum: Money,
    consumables: Money,
    postage: Money,
    edge: Money,
    disc: Money,
}

impl Prices {
    fn of(rates: &Rates) -> Result<Self, CostError> {
        let price = |given: Option<Money>, field| {
            let price = given.unwrap_or(Money::ZERO);
            if (Money::ZERO..=LARGEST_PRICE).contains(&price) {
                Ok(price)
            } else {
                Err(CostError::Price(field))
            }
        };
        if rates.hourly.is_none() {
            return Err(CostError::NoRate);
        }
        let insert = price(rates.insert.map(|insert| insert.price), PriceField::Insert)?;
        let edges = rates.insert.map_or(1, |insert| insert.edges.get());
        Ok(Self {
            hourly: price(rates.hourly, PriceField::Hourly)?,
            minimum: price(rates.minimum_charge, PriceField::MinimumCharge)?,
            consumables: price(rates.consumables, PriceField::Consumables)?,
            postage: price(rates.postage, PriceField::Postage)?,
            edge: insert / f64::from(edges),
            disc: price(rates.disc_price, PriceField::Disc)?,
        })
    }

    fn working(&self, time: Time, edges: f64, discs: f64) -> Working {
        let money = |symbol, meaning, money| Input::new(symbol, meaning, Value::Money(money));
        let number = |symbol, meaning, number| Input::new(symbol, meaning, Value::Ratio(number));
        Working {
            symbol: "K",
            formula: "max(t/(60 min) · r + e · p + w · d + c, M) + v",
            parts: &[],
            inputs: vec![
                Input::new("t", Meaning::TotalTime, Value::Time(time)),
                money("r", Meaning::HourlyRate, self.hourly),
                number("e", Meaning::EdgesCharged, edges),
                money("p", Meaning::EdgePrice, self.edge),
                number("w", Meaning::DiscsUsed, discs),
                money("d", Meaning::DiscPrice, self.disc),
                money("c", Meaning::Consumables, self.consumables),
                money("M", Meaning::MinimumCharge, self.minimum),
                money("v", Meaning::Postage, self.postage),
            ],
            source: Source::CommonPractice,
        }
    }
}

impl fmt::Display for CostError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoRate => f.write_str("there is no hourly rate: enter one"),
            Self::Price(field) => {
                let what = match field {
                    PriceField::Hourly => "hourly rate",
                    PriceField::MinimumCharge => "minimum charge",
                    PriceField::Consumables => "sum for consumables",
                    PriceField::Postage => "postage",
                    PriceField::Insert => "price of an insert",
                    PriceField::Disc => "price of a disc",
                };
                write!(
                    f,
                    "the {what} is not from zero to {}",
                    LARGEST_PRICE.to_currency()
                )
            }
            Self::Amount(CostPart::Discs) => {
                write!(f, "the discs used are not from zero to {MOST_USED}")
            }
            Self::Amount(_) => write!(f, "the edges used are not from zero to {MOST_USED}"),
        }
    }
}

impl core::error::Error for CostError {}
