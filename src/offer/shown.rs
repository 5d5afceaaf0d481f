//! What the owner of a part is shown: the job without what is the shop's own, and what it will take and cost.
//!
//! Time and cost are figures of the shop's lathe and rates, which the owner does not see: so they travel as they were told.

use crate::costing::Cost;
use crate::job::{
    Edge, FormVersion, Job, Learned, Machine, Offered, Rates, Record, Setup, Shop, Shows,
    StepEvent, StepState, StepTimes, What,
};
use crate::plan::Plan;
use crate::quantity::{Entered, Entry, Money, Time, Typed, Unit, Units};

/// What the owner is shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// The job, with no record and without what is the shop's own.
    pub job: Job,
    /// What of the shop's own is in it all the same.
    pub shows: Shows,
    /// The low, the likely and the high time, in whole minutes; `None` where the plan has none.
    pub time: Option<[Entered<Time>; 3]>,
    /// What it costs; `None` where no rate was entered.
    pub price: Option<Price>,
}

/// What it costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Price {
    /// The low, the likely and the high cost.
    pub range: [Entered<Money>; 3],
    /// The currency, as the shop writes it; at most [`Job::MOST_CURRENCY_CHARACTERS`] characters.
    pub currency: String,
}

impl Offer {
    /// The offer that a job makes by its plan.
    ///
    /// # Example
    /// ```
    /// use skimwright::{demo::demo_jobs, job::Shows, offer::Offer, plan::plan};
    /// let [job, ..] = demo_jobs();
    /// let offer = Offer::of(&job, &plan(&job), Shows::default());
    /// assert_eq!(offer.job.part, job.part);
    /// assert_eq!(offer.job.shop.rates, Default::default());
    /// ```
    pub fn of(job: &Job, plan: &Plan, shows: Shows) -> Self {
        Self {
            job: without_shop(job, shows, Record::default()),
            shows,
            time: plan.time.as_ref().and_then(|time| {
                let spread = &time.total;
                let range = spread.range?;
                all([range.low, spread.value, range.high].map(minutes))
            }),
            price: plan
                .cost
                .as_ref()
                .and_then(|cost| price(cost, &job.shop.rates)),
        }
    }
}

impl Offer {
    /// The units that the work is described in: those that its diameter was entered in.
    pub fn units(&self) -> Units {
        if self.job.wanted.diameter.entry().unit().is_inch() {
            Units::InchDecimal
        } else {
            Units::Metric
        }
    }
}

/// The job as it is handed back: without what is the shop's own, the offers of its record without their links, and what
/// was struck out of it without its words.
pub fn handed_back(job: &Job) -> Job {
    let mut record = job.record.clone();
    for event in &mut record.events {
        match &mut event.what {
            What::Offered(Offered { link, .. }) => link.clear(),
            what if event.struck => without_words(what),
            _ => {}
        }
    }
    let mut back = without_shop(job, Shows::default(), record);
    // What was measured with is part of the proof.
    back.shop.instruments.clone_from(&job.shop.instruments);
    back.setup
        .room_temperature
        .clone_from(&job.setup.room_temperature);
    back
}

/// What somebody took back is not handed on; that there was something stays.
fn without_words(what: &mut What) {
    match what {
        What::Note(says) => says.clear(),
        What::Step(StepEvent {
            state: StepState::Skipped(why),
            ..
        }) => why.clear(),
        What::Answered(answered) => {
            answered.words.clear();
            answered.by.clear();
        }
        What::Reading(_) | What::Cut(_) | What::Change(_) | What::Step(_) | What::Offered(_) => {}
    }
}

/// The job as its code on paper holds it: whoever sees the paper can read it, so that it is without what things cost, what
/// was learned of the lathe, and what went to the owner and came from him.
pub fn on_paper(job: &Job) -> Job {
    let mut job = job.clone();
    job.shop.rates = Rates::default();
    job.shop.edge.price = None;
    job.shop.machine.learned = Learned::default();
    let is_owners = |what: &What| matches!(what, What::Offered(_) | What::Answered(_));
    job.record.events.retain(|event| !is_owners(&event.what));
    job
}

/// What decides on shape, size and the way of cutting off stays; lathe, tool, speeds, times and rates go.
fn without_shop(job: &Job, shows: Shows, record: Record) -> Job {
    let (shop, plain) = (&job.shop, Shop::default());
    let machine = |is: bool| if is { shop } else { &plain };
    let of = machine(shows.machine);
    Job {
        version: FormVersion,
        title: job.title.clone(),
        part: job.part.clone(),
        wanted: job.wanted.clone(),
        shop: Shop {
            tool: of.tool,
            edge: if shows.machine {
                Edge {
                    price: None,
                    ..shop.edge.clone()
                }
            } else {
                Edge::default()
            },
            machine: Machine {
                learned: plain.machine.learned.clone(),
                ..of.machine.clone()
            },
            aim: of.aim,
            cut_off_method: shop.cut_off_method,
            kerf: shop.kerf.clone(),
            facing_stock: shop.facing_stock.clone(),
            centre_order: shop.centre_order,
            rough_infeed: of.rough_infeed.clone(),
            last_cut: of.last_cut.clone(),
            polishing_stock: shop.polishing_stock.clone(),
            cutting_speed: of.cutting_speed.clone(),
            rough_feed: of.rough_feed.clone(),
            finish_feed: of.finish_feed.clone(),
            top_speed: of.top_speed.clone(),
            approach: plain.approach.clone(),
            set_time: plain.set_time.clone(),
            return_time: plain.return_time.clone(),
            measure_time: plain.measure_time.clone(),
            polish_time: plain.polish_time.clone(),
            times: StepTimes::default(),
            rates: if shows.rates {
                shop.rates.clone()
            } else {
                Rates::default()
            },
            instruments: of.instruments.clone(),
        },
        setup: if shows.machine {
            job.setup.clone()
        } else {
            Setup::default()
        },
        record,
    }
}

fn minutes(time: Time) -> Option<Entered<Time>> {
    // A job of seconds is still one of minutes.
    decimal(time.to_minutes().max(1.0), 0, Unit::Minute)
}

fn price(cost: &Cost, rates: &Rates) -> Option<Price> {
    let range = all([cost.low, cost.likely, cost.high]
        .map(|money| decimal(money.to_currency(), 2, Unit::Currency)))?;
    Some(Price {
        range,
        currency: rates.currency.clone(),
    })
}

fn decimal<Q: Typed>(value: f64, decimals: u8, unit: Unit) -> Option<Entered<Q>> {
    Entry::decimal(value, decimals, unit).and_then(Entered::new)
}

fn all<T>([low, likely, high]: [Option<T>; 3]) -> Option<[T; 3]> {
    Some([low?, likely?, high?])
}
