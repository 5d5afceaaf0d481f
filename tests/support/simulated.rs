//! Jobs done on a reckoned lathe, by what is advised and by two plain rules.
//!
//! The advice is the real one: a job is planned once, its record grows, and [`advise`] is asked after each entry.
#![allow(dead_code, reason = "each user takes a part of it")]

#[path = "lathe.rs"]
mod lathe;

pub(crate) use lathe::Gauge;
use lathe::{Draw, Lathe};
use skimwright::job::{
    CutMade, CutMadeKind, DialReads, Event, Field, Instrument, InstrumentKind, Job, MachineField,
    Measured, Moment, Reading, Tolerance, What, WorkPlace,
};
use skimwright::measuring::{Next, advise};
use skimwright::plan::{Plan, plan};
use skimwright::quantity::{Dimension, Entered, Entry, Unit, read};
use skimwright::tables::{ShaftClass, ToolKind};

/// The tolerance of a simulated job, of 16 mm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Width {
    /// 11 µm.
    H6,
    /// 43 µm.
    H9,
    /// 100 µm.
    Tenth,
}

/// One sort of job.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sort {
    pub(crate) width: Width,
    pub(crate) gauge: Gauge,
    /// Whether 0.02 mm is left for polishing.
    pub(crate) polished: bool,
}

/// How the last cuts are chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Policy {
    /// As advised.
    Advised,
    /// All that is left is dialled at once.
    AllAtOnce,
    /// Half of what is left, then what that cut has shown.
    Halves,
}

impl Policy {
    pub(crate) const ALL: [Self; 3] = [Self::Advised, Self::AllAtOnce, Self::Halves];
}

/// What came of many jobs.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Tally {
    pub(crate) jobs: u32,
    pub(crate) scrapped: u32,
    pub(crate) over: u32,
    pub(crate) cuts: u64,
    pub(crate) readings: u64,
    pub(crate) doubts: u64,
    /// Jobs that the advice never ended.
    pub(crate) endless: u32,
}

impl Tally {
    pub(crate) fn share(&self, count: u32) -> f64 {
        f64::from(count) / f64::from(self.jobs.max(1))
    }

    pub(crate) fn scrap(&self) -> f64 {
        self.share(self.scrapped)
    }

    pub(crate) fn left_over(&self) -> f64 {
        self.share(self.over)
    }

    pub(crate) fn in_tolerance(&self) -> f64 {
        1.0 - self.scrap() - self.left_over()
    }

    #[allow(clippy::cast_precision_loss, reason = "small counts")]
    pub(crate) fn mean(&self, sum: u64) -> f64 {
        sum as f64 / f64::from(self.jobs.max(1))
    }

    fn end(&mut self, lathe: &Lathe, limits: (f64, f64)) {
        let (small, large) = lathe.really();
        self.jobs += 1;
        if small < limits.0 {
            self.scrapped += 1;
        } else if limits.1 < large {
            self.over += 1;
        }
    }
}

/// A planned job of each dial and tool that are drawn.
pub(crate) struct Bench {
    sort: Sort,
    planned: Vec<(Job, Plan)>,
    pub(crate) limits: (f64, f64),
    target: f64,
    aim: f64,
}

const STOCK: f64 = 20.0;

impl Bench {
    pub(crate) fn new(sort: Sort) -> Self {
        let mut planned = Vec::new();
        for tool in [
            ToolKind::HighSpeedSteel,
            ToolKind::IndexableFlat,
            ToolKind::IndexableCarbide,
        ] {
            for graduation in ["0.005 mm", "0.01 mm", "0.02 mm"] {
                let job = job(sort, tool, graduation);
                let plan = plan(&job);
                assert!(plan.stock_off.is_some(), "{:?}", plan.findings);
                planned.push((job, plan));
            }
        }
        let limits = planned[0].1.limits.unwrap();
        let polishing = planned[0].1.stock_off.as_ref().unwrap().polishing.to_mm();
        Self {
            sort,
            planned,
            limits: (limits.lower.to_mm(), limits.upper.to_mm()),
            target: limits.aim.to_mm() + polishing,
            aim: limits.aim.to_mm(),
        }
    }

    /// One job by each policy, from the same roughed shank on the same lathe.
    pub(crate) fn run(&self, seed: u64, tallies: &mut [Tally; 3]) {
        let mut draw = Draw::new(seed ^ 0x5eed);
        let (job, plan) =
            &self.planned[usize::try_from(draw.bits() % self.planned.len() as u64).unwrap()];
        let mut job = job.clone();
        let mut lathe = Lathe::draw(seed, STOCK, self.sort.gauge);
        let [advised, all_at_once, halves] = tallies;
        let division = job
            .shop
            .machine
            .graduation
            .as_ref()
            .unwrap()
            .value()
            .to_mm();
        let mut roughed = None;
        let mut steps = 0;
        loop {
            steps += 1;
            if steps > 80 {
                advised.endless += 1;
                break;
            }
            let advice = advise(&job, plan);
            match advice.next {
                Next::Measure(_) => {
                    advised.readings += u64::from(roughed.is_some()) * 2;
                    measure(&mut lathe, &mut job);
                }
                Next::Answer => {
                    advised.doubts += 1;
                    let event = advice.doubts.last().unwrap().event;
                    let event = &mut job.record.events[usize::try_from(event).unwrap()];
                    let What::Reading(reading) = &mut event.what else {
                        panic!("a doubt of something else");
                    };
                    reading.confirmed = true;
                }
                Next::Cut(cut) => {
                    let rough = cut.kind == skimwright::cutting::PassKind::Rough;
                    if !rough && roughed.is_none() {
                        roughed = Some(lathe.clone());
                        advised.readings += 2;
                    }
                    advised.cuts += u64::from(!rough);
                    let dialled = cut.dialled.to_mm();
                    lathe.cut(dialled, rough);
                    let kind = match (rough, cut.spring) {
                        (true, _) => CutMadeKind::Rough,
                        (_, true) => CutMadeKind::Spring,
                        (..) => CutMadeKind::Last,
                    };
                    push_cut(&mut job, kind, dialled);
                }
                Next::Polish { off } => {
                    if !self.sort.polished {
                        break;
                    }
                    lathe.polish(off.value.to_mm());
                    push_cut(&mut job, CutMadeKind::Polish, 0.0);
                }
                Next::Stop(_) => break,
            }
        }
        advised.end(&lathe, self.limits);
        let roughed = roughed.unwrap_or(lathe);
        self.all_at_once(roughed.clone(), division, all_at_once);
        self.halves(roughed, division, halves);
    }

    fn mean(lathe: &mut Lathe, tally: &mut Tally) -> f64 {
        tally.readings += 2;
        let [one, other] = lathe.read();
        f64::midpoint(one, other)
    }

    fn all_at_once(&self, mut lathe: Lathe, division: f64, tally: &mut Tally) {
        let size = Self::mean(&mut lathe, tally);
        lathe.cut(whole(size - self.target, division), false);
        tally.cuts += 1;
        self.finish(lathe, tally);
    }

    fn halves(&self, mut lathe: Lathe, division: f64, tally: &mut Tally) {
        let first = Self::mean(&mut lathe, tally);
        let dialled = whole((first - self.target) / 2.0, division);
        lathe.cut(dialled, false);
        let second = Self::mean(&mut lathe, tally);
        let came_off = (first - second).max(dialled / 4.0);
        let rest = (second - self.target).max(0.0);
        lathe.cut(whole(rest * dialled / came_off, division), false);
        tally.cuts += 2;
        self.finish(lathe, tally);
    }

    /// The last reading, and polishing where that is planned.
    fn finish(&self, mut lathe: Lathe, tally: &mut Tally) {
        let mut size = Self::mean(&mut lathe, tally);
        let mut most = 30;
        while self.sort.polished && size - self.aim > 0.001 && size - self.aim < 0.03 && most > 0 {
            lathe.polish(size - self.aim);
            size = Self::mean(&mut lathe, tally);
            most -= 1;
        }
        tally.end(&lathe, self.limits);
    }
}

fn whole(length: f64, division: f64) -> f64 {
    (length / division).round().max(0.0) * division
}

fn job(sort: Sort, tool: ToolKind, graduation: &str) -> Job {
    let mut job = Job::default();
    job.shop.tool = tool;
    let mut put = |field: Field, text: &str| {
        let dimension = field.bounds().map_or(Dimension::Length, |it| it.dimension);
        assert!(
            job.set_entry(field, read(text, dimension, None).ok()),
            "{field}"
        );
    };
    put(Field::Machine(MachineField::Graduation), graduation);
    put(
        Field::PolishingStock,
        if sort.polished { "0.02 mm" } else { "0 mm" },
    );
    let mm = |text: &str| Entered::read(text, Unit::Millimetre).unwrap();
    job.wanted.tolerance = match sort.width {
        Width::H6 => Tolerance::Class(ShaftClass::H6),
        Width::H9 => Tolerance::Class(ShaftClass::H9),
        Width::Tenth => Tolerance::Limits {
            upper: mm("0.05"),
            lower: mm("-0.05"),
        },
    };
    job.shop.instruments = vec![match sort.gauge {
        Gauge::Good => Instrument {
            kind: InstrumentKind::Micrometer,
            graduation: Some(mm("0.001")),
            ..Instrument::default()
        },
        Gauge::Poor => Instrument {
            kind: InstrumentKind::Calliper,
            graduation: Some(mm("0.01")),
            permissible_error: Some(mm("0.02")),
            repeat: Some(mm("0.006")),
            ..Instrument::default()
        },
    }];
    job
}

fn measure(lathe: &mut Lathe, job: &mut Job) {
    let places = [WorkPlace::NearShoulder, WorkPlace::FreeEnd];
    for (value, place) in lathe.read().into_iter().zip(places) {
        push(job, What::Reading(shown(value, place)));
    }
}

fn shown(value: f64, place: WorkPlace) -> Reading {
    Reading {
        of: Measured::Diameter(place),
        value: entered(value),
        instrument: Some(0),
        temperature: None,
        confirmed: false,
    }
}

fn push_cut(job: &mut Job, kind: CutMadeKind, dialled: f64) {
    push(
        job,
        What::Cut(CutMade {
            kind,
            dialled: entered(dialled),
            reads: DialReads::Diameter,
        }),
    );
}

fn push(job: &mut Job, what: What) {
    job.record.events.push(Event {
        at: Moment::default(),
        struck: false,
        what,
    });
}

fn entered(millimetres: f64) -> Entered<skimwright::quantity::Length> {
    Entered::new(Entry::decimal(millimetres, 4, Unit::Millimetre).unwrap()).unwrap()
}

/// How long one piece of advice takes on a record of so many readings and cuts.
#[cfg(not(target_arch = "wasm32"))]
pub(crate) fn microseconds(events: usize) -> f64 {
    const ROUNDS: u32 = 20;
    let sort = Sort {
        width: Width::H9,
        gauge: Gauge::Good,
        polished: false,
    };
    let mut job = job(sort, ToolKind::HighSpeedSteel, "0.01 mm");
    let plan = plan(&job);
    for number in 0..events {
        if number % 2 == 0 {
            let size = 19.0 - 0.000_5 * f64::from(u16::try_from(number).unwrap());
            push(&mut job, What::Reading(shown(size, WorkPlace::Middle)));
        } else {
            push_cut(&mut job, CutMadeKind::Last, 0.001);
        }
    }
    let begun = std::time::Instant::now();
    for _ in 0..ROUNDS {
        std::hint::black_box(advise(std::hint::black_box(&job), &plan));
    }
    begun.elapsed().as_secs_f64() * 1e6 / f64::from(ROUNDS)
}
