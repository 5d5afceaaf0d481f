//! How long the longest jobs are, and that what is longer has no link.

use super::*;
use crate::costing::Step;
use crate::demo::demo_jobs;
use crate::job::{
    Aim, Bore, BoreBottom, BoreEnd, Cut, Datum, DialReads, Event, Feature, Gears, HeadPiece, Hole,
    Instrument, InstrumentKind, JawFace, LearnedPace, LearnedTakes, Moment, Pin, Place, Receiver,
    Rigidity, Section, StepEvent, StepState, StepTime, StepTimes, Support, Tolerance, Turned, What,
    WorkStep,
};
use crate::plan::number_fields;
use crate::quantity::{Dimension, Entered, Entry, Number, Term, Typed, Unit};
use crate::tables::{CuttingGroup, FileBite, SleeveDuty, WorkMaterial};

/// The entry that takes most bytes: a sum of `terms` mixed numbers, each in the last unit of what is measured.
fn longest(dimension: Dimension, terms: usize) -> Option<Entry> {
    let unit = Unit::ALL
        .into_iter()
        .rfind(|unit| unit.dimension() == dimension)?;
    let term = Term {
        negative: true,
        number: Number::Fraction {
            whole: u16::MAX,
            numerator: u16::MAX,
            denominator: u16::MAX,
        },
        unit,
    };
    Entry::from_terms(vec![term; terms])
}

fn longest_list<Q: Typed>(terms: usize) -> Gears<Q> {
    let one = longest(Q::DIMENSION, terms).and_then(Entered::new).unwrap();
    Gears::Listed(vec![one; Job::MOST_GEARS])
}

/// A quantity that takes most bytes.
fn longest_entered<Q: Typed>(terms: usize) -> Entered<Q> {
    let terms = terms.min(Q::DIMENSION.most_terms());
    longest(Q::DIMENSION, terms).and_then(Entered::new).unwrap()
}

/// Instruments, what was learned and the temperature of the room, as long as they can be.
fn fill_shop(job: &mut Job, terms: usize) {
    let instrument = Instrument {
        name: "😀".repeat(Job::MOST_NAME_CHARACTERS),
        kind: InstrumentKind::Gauge,
        graduation: Some(longest_entered(terms)),
        permissible_error: Some(longest_entered(terms)),
        reference: Some(longest_entered(terms)),
        repeat: Some(longest_entered(terms)),
    };
    job.shop.instruments = vec![instrument; Job::MOST_INSTRUMENTS];
    job.shop.machine.learned.takes = Some(LearnedTakes {
        share: longest_entered(terms),
        share_deviation: longest_entered(terms),
        offset: longest_entered(terms),
        offset_deviation: longest_entered(terms),
        cuts: longest_entered(terms),
    });
    job.shop.machine.learned.paces = WorkStep::ALL
        .map(|step| LearnedPace {
            step,
            factor: longest_entered(terms),
            jobs: longest_entered(terms),
        })
        .to_vec();
    job.setup.room_temperature = Some(longest_entered(terms));
}

/// The longest job without a record: every list and every name full, and every number a sum of `terms` numbers that
/// take most bytes.
fn largest(terms: usize) -> Job {
    let mut job = Job {
        title: "😀".repeat(Job::MOST_TITLE_CHARACTERS),
        ..Job::default()
    };
    let any = job.wanted.diameter.clone();
    let place = Some(Place {
        from: Datum::FreeEnd,
        start: any.clone(),
    });
    let turned = Turned::Taper {
        shoulder_diameter: any.clone(),
        end_diameter: any.clone(),
        length: any.clone(),
        diameter_error: Some(any.clone()),
        length_error: Some(any.clone()),
    };
    let section = Section {
        turned,
        place: place.clone(),
    };
    job.part.sections = vec![section; Job::MOST_SECTIONS];
    let cut = Cut::Keyway {
        width: any.clone(),
        depth: any.clone(),
        length: any.clone(),
    };
    job.part.features = vec![Feature { cut, place }; Job::MOST_FEATURES];
    let hole = Hole::Stepped {
        diameter: any.clone(),
        depth: any.clone(),
        step_diameter: any.clone(),
        step_depth: any.clone(),
        bottom: BoreBottom::Flat,
    };
    let bore = Bore {
        hole,
        end: BoreEnd::HeadEnd,
        off_centre: Some(any.clone()),
    };
    job.part.bores = vec![bore; Job::MOST_BORES];
    let piece = HeadPiece {
        diameter: any.clone(),
        length: any.clone(),
    };
    job.part.head_beyond = vec![piece; Job::MOST_HEAD_BEYOND];
    job.wanted.tolerance = Tolerance::Limits {
        upper: any.clone(),
        lower: any.clone(),
    };
    job.wanted.receiver = Receiver::Sleeve {
        duty: SleeveDuty::FullTorque,
        material: WorkMaterial::TitaniumAlloy,
        outside: any.clone(),
        edge: Some(any.clone()),
    };
    let name = |most| "😀".repeat(most);
    job.shop.aim = Aim::LeastCost;
    job.shop.edge.name = name(Job::MOST_NAME_CHARACTERS);
    job.shop.machine.name = name(Job::MOST_NAME_CHARACTERS);
    job.shop.machine.rigidity = Rigidity::Heavy;
    job.shop.machine.dial_reads = DialReads::Radius;
    job.shop.machine.speeds = longest_list(terms);
    job.shop.machine.feeds = longest_list(terms);
    job.shop.rates.currency = name(Job::MOST_CURRENCY_CHARACTERS);
    job.setup.support = Some(Support::Collet);
    job.setup.jaws = Some(JawFace::Serrated);
    job.setup.pins = vec![
        Pin {
            after: any.clone(),
            infeed: any,
            speed: None,
            feed: None,
        };
        Job::MOST_PINS
    ];
    job.part.cutting_group = CuttingGroup::all().last();
    job.part.file_bite = Some(FileBite::Skates);
    for step in Step::ALL {
        let any = longest(Dimension::Time, terms).and_then(Entered::new);
        *job.shop.times.of_mut(step).unwrap() = StepTime {
            low: any.clone(),
            likely: any.clone().filter(|_| StepTimes::has_likely(step)),
            high: any,
        };
    }
    for field in number_fields(&job) {
        let dimension = field.bounds().unwrap().dimension;
        let terms = terms.min(dimension.most_terms());
        assert!(job.set_entry(field, longest(dimension, terms)), "{field}");
    }
    fill_shop(&mut job, terms);
    job
}

/// The longest record: each event a note of the most characters, struck out, at a time far from that before.
fn longest_record() -> Record {
    let events = (0..Record::MOST_EVENTS).map(|number| Event {
        at: Moment::unix_seconds(if number % 2 == 0 { 1 << 63 } else { 0 }),
        struck: true,
        what: What::Note("😀".repeat(Record::MOST_NOTE_CHARACTERS)),
    });
    Record {
        events: events.collect(),
        ..Record::default()
    }
}

#[test]
fn the_longest_record_is_kept_but_has_no_link() {
    let mut job = largest(Entry::MOST_TERMS);
    let bare = job.clone();
    job.record = longest_record();
    assert_eq!(encode(&job), Err(LinkError::TooLong));
    assert_eq!(encode_without_record(&job), encode(&bare));
    let text = encode_to_keep(&job).unwrap();
    assert_eq!(text.len(), LARGEST_KEPT);
    assert!(text.len() <= MOST_KEPT_CHARACTERS);
    assert_eq!(decode(&text), Err(LinkError::TooLong));
    assert_eq!(decode_kept_job(&text), Ok(job));
    let novel = "a".repeat(MOST_KEPT_CHARACTERS + 1);
    assert_eq!(decode_kept_job(&novel), Err(LinkError::TooLong));
}

const LARGEST_KEPT: usize = 10_805_015;

#[test]
fn the_largest_job_fits() {
    for (terms, length) in [(1, 8889), (Entry::MOST_TERMS, 51_679)] {
        let job = largest(terms);
        let text = encode(&job).unwrap();
        assert_eq!(text.len(), length, "with {terms} terms");
        assert!(text.len() <= MOST_CHARACTERS);
        assert_eq!(decode(&text), Ok(job));
    }
}

#[test]
#[expect(clippy::large_stack_arrays, reason = "eight jobs in a test")]
fn too_large_a_job_has_no_link() {
    let long = Job {
        title: "é".repeat(Job::MOST_TITLE_CHARACTERS + 1),
        ..Job::default()
    };
    let mut sections = Job::default();
    let section = sections.part.sections[0].clone();
    sections.part.sections = vec![section; Job::MOST_SECTIONS + 1];
    let mut bores = demo_jobs()[0].clone();
    let bore = bores.part.bores[0].clone();
    bores.part.bores = vec![bore; Job::MOST_BORES + 1];
    let mut name = Job::default();
    name.shop.machine.name = "x".repeat(Job::MOST_NAME_CHARACTERS + 1);
    let mut tool = Job::default();
    tool.shop.edge.name = "x".repeat(Job::MOST_NAME_CHARACTERS + 1);
    let mut currency = Job::default();
    currency.shop.rates.currency = "x".repeat(Job::MOST_CURRENCY_CHARACTERS + 1);
    let mut feeds = Job::default();
    let with = |change: &dyn Fn(&mut Job)| {
        let mut job = Job::default();
        change(&mut job);
        assert_eq!(encode(&job), Err(LinkError::TooLarge));
        assert_eq!(encode_to_keep(&job), Err(LinkError::TooLarge));
    };
    let event = |what: What| Event {
        at: Moment::default(),
        struck: false,
        what,
    };
    let novel = || "é".repeat(Record::MOST_NOTE_CHARACTERS + 1);
    with(&|job| job.shop.instruments = vec![Instrument::default(); Job::MOST_INSTRUMENTS + 1]);
    with(&|job| {
        job.shop.instruments = vec![Instrument {
            name: "x".repeat(Job::MOST_NAME_CHARACTERS + 1),
            ..Instrument::default()
        }];
    });
    with(&|job| {
        fill_shop(job, 1);
        let paces = &mut job.shop.machine.learned.paces;
        paces.extend(paces.first().cloned());
    });
    with(&|job| {
        let note = event(What::Note(String::new()));
        job.record.events = vec![note; Record::MOST_EVENTS + 1];
    });
    with(&|job| job.record.events = vec![event(What::Note(novel()))]);
    with(&|job| {
        job.record.events = vec![event(What::Step(StepEvent {
            step: WorkStep::Polish,
            state: StepState::Skipped(novel()),
        }))];
    });
    feeds.shop.machine.feeds = longest_list(1);
    if let Gears::Listed(list) = &mut feeds.shop.machine.feeds {
        list.extend(list.first().cloned());
    }
    let mut pins = largest(1);
    pins.setup.pins.extend(pins.setup.pins.first().cloned());
    for job in [long, sections, bores, name, tool, currency, feeds, pins] {
        assert_eq!(encode(&job), Err(LinkError::TooLarge));
    }
}
