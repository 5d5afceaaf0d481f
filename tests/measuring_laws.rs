//! Laws of readings, means, tapers and verdicts on jobs of every kind.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/jobs.rs"]
mod jobs;

use jobs::{Numbers, any_job, entered};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Instrument, InstrumentKind, Job, Measured,
    Moment, Reading, Record, Support, What, WorkPlace,
};
use skimwright::measuring::{
    BarrelCause, Mean, TaperVerdict, Verdict, VerdictIs, VerdictOf, Zone, corrected, diameters_now,
    place_along, taper, verdicts,
};
use skimwright::plan::plan;
use skimwright::quantity::{Entered, Entry, Length, Temperature, Unit};

fn mm(value: f64) -> Entered<Length> {
    Entered::new(Entry::decimal(value, 4, Unit::Millimetre).unwrap()).unwrap()
}

fn celsius(value: f64) -> Entered<Temperature> {
    Entered::new(Entry::decimal(value, 1, Unit::Celsius).unwrap()).unwrap()
}

fn event(what: What) -> Event {
    Event {
        at: Moment::default(),
        struck: false,
        what,
    }
}

fn reading_of(of: Measured, value: Entered<Length>) -> Reading {
    Reading {
        of,
        value,
        instrument: None,
        temperature: None,
        confirmed: false,
    }
}

fn diameter(place: WorkPlace, value: f64) -> Reading {
    reading_of(Measured::Diameter(place), mm(value))
}

/// The default job, a shank of 16 h6 by 50 mm, with readings since the last cut.
fn job_with(readings: Vec<Reading>) -> Job {
    let cut = event(What::Cut(CutMade {
        kind: CutMadeKind::Last,
        dialled: mm(0.1),
        reads: DialReads::Diameter,
    }));
    let read = readings.into_iter().map(|it| event(What::Reading(it)));
    Job {
        record: Record {
            events: [cut].into_iter().chain(read).collect(),
            ..Record::default()
        },
        ..Job::default()
    }
}

fn verdict_at(job: &Job, place: &WorkPlace) -> Verdict {
    let all = verdicts(job, &plan(job));
    let found = all
        .into_iter()
        .find(|it| it.of == VerdictOf::Diameter(place.clone()));
    found.expect("each place has its verdict")
}

#[test]
fn only_readings_that_stand_since_the_last_cut_count() {
    let mut job = job_with(vec![diameter(WorkPlace::Middle, 15.9945)]);
    let is = |job: &Job| verdict_at(job, &WorkPlace::Middle).is;
    assert_eq!(is(&job), VerdictIs::In);
    assert_eq!(
        verdict_at(&job, &WorkPlace::FreeEnd).is,
        VerdictIs::NotMeasured
    );
    job.record.events[1].struck = true;
    assert_eq!(is(&job), VerdictIs::NotMeasured);
    job.record.events[1].struck = false;
    let polish = event(What::Cut(CutMade {
        kind: CutMadeKind::Polish,
        dialled: mm(0.0),
        reads: DialReads::Diameter,
    }));
    job.record.events.push(polish);
    assert_eq!(is(&job), VerdictIs::NotMeasured);
    // A cut that was struck was none; a change is none either.
    job.record.events[2].struck = true;
    job.record.events.push(event(What::Change(Change::NewEdge)));
    assert_eq!(is(&job), VerdictIs::In);
}

/// Class h6 of 16 mm is 15.989 to 16.000 mm.
#[test]
fn each_verdict_is_reached() {
    let is = |size: f64| {
        let job = job_with(vec![diameter(WorkPlace::Middle, size)]);
        verdict_at(&job, &WorkPlace::Middle)
    };
    assert_eq!(is(16.006).is, VerdictIs::Over);
    assert_eq!(is(15.983).is, VerdictIs::Under);
    let open = is(15.9905);
    assert_eq!(open.is, VerdictIs::NotProven);
    assert!(open.odds_in.unwrap().to_whole() > 0.6);
    // With a calliper nothing of the 11 µm can be proven but what is far out.
    let mut job = job_with(vec![Reading {
        instrument: Some(0),
        ..diameter(WorkPlace::Middle, 15.99)
    }]);
    job.shop.instruments = vec![Instrument {
        kind: InstrumentKind::Calliper,
        ..Instrument::default()
    }];
    let coarse = verdict_at(&job, &WorkPlace::Middle);
    assert_eq!(coarse.is, VerdictIs::TooCoarse);
    assert_eq!(coarse.more_readings, None);
}

#[test]
fn roughness_has_one_limit() {
    let um = |it: f64| Entered::new(Entry::decimal(it, 2, Unit::Micrometre).unwrap()).unwrap();
    let is = |ra: Option<f64>| {
        let readings = ra.map(|ra| reading_of(Measured::Roughness, um(ra)));
        let mut job = job_with(readings.into_iter().collect());
        assert!(
            verdicts(&job, &plan(&job))
                .iter()
                .all(|it| it.of != VerdictOf::Roughness)
        );
        job.wanted.roughness = Some(um(0.8));
        let all = verdicts(&job, &plan(&job));
        let last = all.last().unwrap().clone();
        assert_eq!((last.of, last.lower), (VerdictOf::Roughness, None));
        last.is
    };
    assert_eq!(is(None), VerdictIs::NotMeasured);
    assert_eq!(is(Some(0.5)), VerdictIs::In);
    assert_eq!(is(Some(0.79)), VerdictIs::NotProven);
    assert_eq!(is(Some(1.2)), VerdictIs::Over);
}

#[test]
fn what_cannot_be_believed_is_left_out() {
    let job = Job::default();
    let of = |value: f64| corrected(&job, &diameter(WorkPlace::Middle, value));
    assert!(of(0.0).is_none() && of(-3.0).is_none() && of(2000.1).is_none());
    assert!(of(2000.0).is_some());
    let warm = |value: f64| Reading {
        temperature: Some(celsius(value)),
        ..diameter(WorkPlace::Middle, 16.0)
    };
    assert!(corrected(&job, &warm(200.1)).is_none() && corrected(&job, &warm(-20.1)).is_none());
    assert!(corrected(&job, &warm(200.0)).is_some());
    let runout = |value: f64| corrected(&job, &reading_of(Measured::Runout, mm(value)));
    assert!(runout(0.0).is_some() && runout(-0.1).is_none());
    // An instrument that is not there is the usual micrometer.
    let missing = Reading {
        instrument: Some(7),
        ..diameter(WorkPlace::Middle, 16.0)
    };
    assert_eq!(corrected(&job, &missing), of(16.0));
}

/// A known size near the work leaves only the difference to the instrument.
#[test]
fn a_known_size_near_by_makes_a_micrometer_surer() {
    let mut job = Job::default();
    let with = |job: &Job| {
        let reading = Reading {
            instrument: Some(0),
            ..diameter(WorkPlace::Middle, 20.0)
        };
        corrected(job, &reading).unwrap().uncertainty.to_um()
    };
    let mut set = |reference: Option<f64>| {
        job.shop.instruments = vec![Instrument {
            reference: reference.map(mm),
            ..Instrument::default()
        }];
        with(&job)
    };
    let (plain, near, far) = (set(None), set(Some(20.0)), set(Some(45.0)));
    assert!(near < 0.75 * plain, "{near} {plain}");
    // A turn of the spindle away it is nearly as good, at the far end of the range no better.
    assert!(set(Some(20.5)) < near * 1.01);
    assert!(far >= plain, "{far} {plain}");
}

#[test]
fn a_taper_asks_for_the_tail_stock() {
    let at = |near: f64, far: f64| {
        let end = |place: WorkPlace, size: f64| vec![diameter(place, size); 3];
        let mut readings = end(WorkPlace::NearShoulder, near);
        readings.extend(end(WorkPlace::FreeEnd, far));
        job_with(readings)
    };
    let large_end = at(15.990, 16.010);
    let planned = plan(&large_end);
    let found = taper(&large_end, &planned).unwrap();
    assert_eq!(found.verdict, TaperVerdict::Tapered);
    // From 4.05 to 45.75 mm the diameter grows by 20 µm; the straight part is 48.2 mm long.
    let over = 20.0 * 48.2 / 41.7;
    assert!(
        (found.over_length.value.to_um() - over).abs() < 1e-6,
        "{found:?}"
    );
    let shift = found.shift.unwrap().value;
    let between = planned.holding.as_ref().unwrap().overhang.to_mm();
    assert!((shift.to_um() - 20.0 / 41.7 * between / 2.0).abs() < 1e-6);
    let small_end = at(16.010, 15.990);
    let found = taper(&small_end, &planned).unwrap();
    assert!(found.shift.unwrap().value < Length::ZERO);
    // Nothing to shift in a chuck alone.
    let mut free = large_end.clone();
    free.setup.support = Some(Support::Chuck);
    let found = taper(&free, &plan(&free)).unwrap();
    assert_eq!((found.verdict, found.shift), (TaperVerdict::Tapered, None));
    let same = at(15.995, 15.995);
    let found = taper(&same, &planned).unwrap();
    assert_eq!((found.verdict, found.shift), (TaperVerdict::Parallel, None));
    assert!(found.barrel.is_none());
    let once = job_with(vec![
        diameter(WorkPlace::NearShoulder, 15.993),
        diameter(WorkPlace::FreeEnd, 15.997),
    ]);
    let found = taper(&once, &planned).unwrap();
    assert_eq!(found.verdict, TaperVerdict::NotTold);
    assert!(taper(&job_with(vec![diameter(WorkPlace::Middle, 16.0)]), &planned).is_none());
}

#[test]
fn a_barrel_is_the_middle_against_the_ends() {
    let with = |middle: f64| {
        let mut readings = Vec::new();
        for (place, size) in [
            (WorkPlace::NearShoulder, 15.990),
            (WorkPlace::Middle, middle),
            (WorkPlace::FreeEnd, 15.996),
        ] {
            readings.extend(vec![diameter(place, size); 5]);
        }
        let job = job_with(readings);
        taper(&job, &plan(&job)).unwrap()
    };
    let barrel = with(16.003);
    assert!(
        (barrel.barrel.unwrap().to_um() - 10.0).abs() < 1e-6,
        "{barrel:?}"
    );
    // The default work is short and stiff: nothing of that bends.
    assert_eq!(barrel.barrel_cause, Some(BarrelCause::Elsewhere));
    let waist = with(15.983);
    assert!((waist.barrel.unwrap().to_um() + 10.0).abs() < 1e-6);
    assert_eq!(with(15.9935).barrel_cause, None);
}

/// A long thin shank between chuck and centre bends away in the middle.
#[test]
fn a_slender_shank_explains_its_barrel() {
    let mut job = job_with(Vec::new());
    job.part.sections = vec![
        skimwright::job::Turned::Cylinder {
            diameter: mm(14.0),
            length: mm(260.0),
        }
        .into(),
    ];
    job.wanted.diameter = mm(12.0);
    job.wanted.length = mm(230.0);
    let form = |job: &Job| plan(job).holding.unwrap().form.unwrap();
    let planned = form(&job);
    let middle = planned.greatest.size_error - planned.points[0].size_error;
    let bulge = (planned.greatest.size_error
        - planned.points[0]
            .size_error
            .max(planned.points.last().unwrap().size_error))
    .to_mm();
    assert!(bulge > 0.004, "{middle:?}: no barrel is foreseen");
    for (place, size) in [
        (WorkPlace::NearShoulder, 11.99),
        (WorkPlace::Middle, 11.99 + bulge),
        (WorkPlace::FreeEnd, 11.99),
    ] {
        for _ in 0..5 {
            job.record
                .events
                .push(event(What::Reading(diameter(place.clone(), size))));
        }
    }
    let found = taper(&job, &plan(&job)).unwrap();
    assert_eq!(
        found.barrel_cause,
        Some(BarrelCause::WorkBends),
        "{found:?}"
    );
}

/// Readings of one place, by up to three instruments, all equally warm.
fn equally_warm() -> impl Strategy<Value = (Job, Vec<Reading>)> {
    let kind = select(InstrumentKind::ALL.to_vec());
    let tool = (kind, option::of(0.0..0.02_f64), option::of(0.0..0.01_f64));
    let tools = vec(tool, 0..3).prop_map(|tools| {
        let each = tools.into_iter().map(|(kind, error, repeat)| Instrument {
            kind,
            permissible_error: error.map(mm),
            repeat: repeat.map(mm),
            ..Instrument::default()
        });
        each.collect::<Vec<_>>()
    });
    let base = 3.0..300.0_f64;
    let each = vec((-0.01..0.01_f64, option::of(0..3_u8)), 1..12);
    let warm = (option::of(-5.0..90.0_f64), option::of(5.0..35.0_f64));
    (tools, base, each, warm).prop_map(|(instruments, base, each, (work, room))| {
        let mut job = Job::default();
        job.shop.instruments = instruments;
        job.setup.room_temperature = room.map(celsius);
        let reading = |(off, instrument): (f64, Option<u8>)| Reading {
            instrument,
            temperature: work.map(celsius),
            ..diameter(WorkPlace::Middle, base + off)
        };
        (job, each.into_iter().map(reading).collect())
    })
}

fn mean_of(job: &Job, readings: &[Reading]) -> Mean {
    let worth: Vec<_> = readings
        .iter()
        .map(|it| corrected(job, it).unwrap())
        .collect();
    Mean::of(&worth).unwrap()
}

/// Whatever can stand in a record.
fn any_record() -> impl Strategy<Value = Record> {
    let place = || {
        prop_oneof![
            Just(WorkPlace::NearShoulder),
            Just(WorkPlace::Middle),
            Just(WorkPlace::FreeEnd),
            entered(Numbers::Any).prop_map(WorkPlace::At),
        ]
    };
    let of = prop_oneof![
        4 => place().prop_map(Measured::Diameter),
        1 => Just(Measured::Length),
        1 => Just(Measured::Runout),
        1 => Just(Measured::Roughness),
    ];
    let value = prop_oneof![
        entered(Numbers::Usual),
        entered(Numbers::Any),
        (5.0..60.0_f64).prop_map(mm),
    ];
    let reading = (
        of,
        value,
        option::of(0..12_u8),
        option::of((-40.0..250.0_f64).prop_map(celsius)),
    )
        .prop_map(|(of, value, instrument, temperature)| {
            What::Reading(Reading {
                of,
                value,
                instrument,
                temperature,
                confirmed: false,
            })
        });
    let cut = entered(Numbers::Any).prop_map(|dialled| {
        What::Cut(CutMade {
            kind: CutMadeKind::Last,
            dialled,
            reads: DialReads::Radius,
        })
    });
    let event =
        (prop_oneof![9 => reading, 1 => cut], any::<bool>()).prop_map(|(what, struck)| Event {
            struck,
            ..event(what)
        });
    vec(event, 0..16).prop_map(|events| Record {
        events,
        ..Record::default()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    /// One more reading never makes the mean less sure, and the same readings in another order make the same mean.
    #[test]
    fn more_readings_are_never_worse((job, readings) in equally_warm()) {
        let mut last = f64::INFINITY;
        for count in 1..=readings.len() {
            let mean = mean_of(&job, &readings[..count]);
            let now = mean.uncertainty.to_um();
            // The last digits: sizes that differ by 0.01 mm are heated by as much.
            prop_assert!(now <= last * (1.0 + 1e-5), "{now} after {last}");
            prop_assert!(mean.uncertainty_with(0).to_um() <= now);
            prop_assert!(mean.uncertainty_with(5) <= mean.uncertainty_with(4));
            prop_assert!(mean.uncertainty_at_best() <= mean.uncertainty_with(5));
            last = now;
        }
        let there = mean_of(&job, &readings);
        let back: Vec<Reading> = readings.iter().rev().cloned().collect();
        let back = mean_of(&job, &back);
        prop_assert!((there.value - back.value).abs().to_mm() < 1e-12);
        prop_assert!((there.uncertainty - back.uncertainty).abs().to_mm() < 1e-12);
        let smallest = readings.iter().map(|it| corrected(&job, it).unwrap().value.to_mm()).fold(f64::MAX, f64::min);
        prop_assert!(there.value.to_mm() >= smallest - 1e-9);
    }

    /// What a mean would be worth with more readings is what it is worth with them.
    #[test]
    fn promised_readings_keep_their_word((mut job, readings) in equally_warm(), more in 1..20_u32) {
        job.shop.instruments.truncate(1);
        let first = &readings[..1];
        let promised = mean_of(&job, first).uncertainty_with(more);
        let all = vec![readings[0].clone(); usize::try_from(more).unwrap() + 1];
        let kept = mean_of(&job, &all).uncertainty;
        prop_assert!((promised.to_mm() / kept.to_mm() - 1.0).abs() < 1e-9, "{promised:?} {kept:?}");
    }

    /// Inch and degrees Fahrenheit change nothing: 0.0001 in are 0.00254 mm, 5 K are 9 °F.
    #[test]
    fn units_change_nothing(tenths in 50_000..300_000_u32, fives in 0..15_i32, error in option::of(1..8_u32)) {
        let (digits, degrees) = (f64::from(tenths), f64::from(fives));
        let inch = |it: f64| Entered::new(Entry::decimal(it * 1e-4, 4, Unit::Inch).unwrap()).unwrap();
        let metric = |it: f64| Entered::new(Entry::decimal(it * 0.002_54, 5, Unit::Millimetre).unwrap()).unwrap();
        let fahrenheit = Entry::decimal(degrees * 9.0 + 32.0, 0, Unit::Fahrenheit).unwrap();
        let worth = |length: &dyn Fn(f64) -> Entered<Length>, temperature| {
            let mut job = Job::default();
            job.shop.instruments = vec![Instrument {
                permissible_error: error.map(|it| length(f64::from(it))),
                ..Instrument::default()
            }];
            let reading = Reading {
                of: Measured::Diameter(WorkPlace::Middle),
                value: length(digits),
                instrument: Some(0),
                temperature: Some(temperature),
                confirmed: false,
            };
            corrected(&job, &reading).unwrap()
        };
        let ours = worth(&metric, celsius(degrees * 5.0));
        let theirs = worth(&inch, Entered::new(fahrenheit).unwrap());
        prop_assert!((ours.value - theirs.value).abs().to_mm() < 1e-10);
        prop_assert!((ours.uncertainty - theirs.uncertainty).abs().to_mm() < 1e-10);
    }

    /// At a limit of a wide zone the odds are even; anywhere they are a share.
    #[test]
    fn odds_are_even_at_a_limit(low in 1.0..100.0_f64, width in 0.05..1.0_f64, u in 0.1..5.0_f64, at in -2.0..3.0_f64) {
        let zone = Zone { lower: Some(Length::mm(low)), upper: Some(Length::mm(low + width)) };
        let odds = |size: f64| zone.odds_in(Length::mm(size), Length::um(u)).to_whole();
        prop_assert!((odds(low) - 0.5).abs() < 1e-6);
        prop_assert!((odds(low + width) - 0.5).abs() < 1e-6);
        let any = odds(low + width * at);
        prop_assert!((0.0..=1.0).contains(&any));
        // In is proven only with odds of 90 % at least: 5 % on either side.
        if zone.judge(Length::mm(low + width * at), Length::um(u)) == VerdictIs::In {
            prop_assert!(any > 0.9);
        }
    }

    /// So many more readings as the verdict says prove it, and one less do not.
    #[test]
    fn verdicts_say_how_many_readings_are_missing(off in -6.0..6.0_f64, count in 1..4_usize) {
        let size = 15.9945 + (off * 10.0).round() / 1e4;
        let with = |count: usize| {
            let job = job_with(vec![diameter(WorkPlace::Middle, size); count]);
            verdict_at(&job, &WorkPlace::Middle)
        };
        let first = with(count);
        if let Some(more) = first.more_readings {
            let more = usize::try_from(more).unwrap();
            prop_assert!(first.is != VerdictIs::In);
            prop_assert_eq!(with(count + more).is, VerdictIs::In);
            prop_assert!(more == 1 || with(count + more - 1).is != VerdictIs::In);
        } else if first.is == VerdictIs::NotProven {
            prop_assert!(with(count + 30).is != VerdictIs::In);
        }
    }

    /// Whatever was recorded on whatever job: all is finite, and each verdict is what its figures say.
    #[test]
    fn nothing_recorded_breaks_anything(mut job in any_job(), record in any_record()) {
        job.record = record;
        let planned = plan(&job);
        for (_, readings) in diameters_now(&job) {
            for worth in &readings {
                prop_assert!(worth.value.is_finite() && worth.uncertainty.is_finite());
                prop_assert!(worth.uncertainty > Length::ZERO);
            }
            let mean = Mean::of(&readings).unwrap();
            prop_assert!(mean.value.is_finite() && mean.uncertainty_with(3).is_finite());
        }
        for verdict in verdicts(&job, &planned) {
            prop_assert!(verdict.uncertainty.is_finite() && verdict.guard.is_finite());
            prop_assert_eq!(verdict.measured.is_none(), verdict.is == VerdictIs::NotMeasured);
            if let Some(figure) = verdict.measured {
                let range = figure.range.unwrap();
                prop_assert!(range.low.is_finite() && range.high.is_finite() && range.low <= range.high);
            }
            if let Some(odds) = verdict.odds_in {
                prop_assert!((0.0..=1.0).contains(&odds.to_whole()));
            }
        }
        if let Some(found) = taper(&job, &planned) {
            prop_assert!(found.over_length.value.is_finite() && found.uncertainty.is_finite());
            for length in [found.barrel, found.barrel_uncertainty, found.barrel_planned].into_iter().flatten() {
                prop_assert!(length.is_finite());
            }
            if let Some(shift) = found.shift {
                prop_assert!(shift.value.is_finite());
            }
        }
        let places = [WorkPlace::NearShoulder, WorkPlace::Middle, WorkPlace::FreeEnd];
        let [near, middle, end] = places.map(|place| place_along(&job, &planned, &place));
        prop_assert!(near <= middle && middle <= end);
    }
}
