use super::*;
use crate::job::{
    Answered, CutMade, DialReads, Event, OfferMark, Offered, OwnerSays, Shows, WorkPlace,
};
use crate::plan::plan;
use crate::quantity::Unit;
use crate::work::steps;

fn mm(text: &str) -> Entered<Length> {
    Entered::read(text, Unit::Millimetre).unwrap()
}

fn read(of: Measured, text: &str) -> What {
    What::Reading(Reading {
        of,
        value: mm(text),
        instrument: None,
        temperature: None,
        confirmed: false,
    })
}

fn diameter(text: &str) -> What {
    read(Measured::Diameter(WorkPlace::Middle), text)
}

fn cut(kind: CutMadeKind) -> What {
    What::Cut(CutMade {
        kind,
        dialled: mm("0.5"),
        reads: DialReads::Radius,
    })
}

fn step(step: WorkStep, state: StepState) -> What {
    What::Step(StepEvent { step, state })
}

/// A job with these events, one a minute.
fn job(events: Vec<What>) -> Job {
    let mut job = Job::default();
    let moments = (1_000_u64..).step_by(60);
    let events = moments.zip(events).map(|(seconds, what)| Event {
        at: Moment::unix_seconds(seconds),
        struck: false,
        what,
    });
    job.record.events = events.collect();
    job
}

fn done(job: &Job) -> WorkDone {
    work_done(job, &steps(job, &plan(job)))
}

#[test]
fn readings_are_of_what_came_until_the_first_cut_and_of_what_leaves_after_the_last() {
    use CutMadeKind::{Last, Rough};
    let mut job = job(vec![
        cut(Rough),
        diameter("20.1"),
        cut(Rough),
        diameter("18"),
        cut(Last),
        diameter("16.002"),
        diameter("16.001"),
    ]);
    assert_eq!(done(&job).received, [0_usize; 0]);
    job.record.events[0].struck = true;
    let found = done(&job);
    assert_eq!((found.received, found.left), (vec![1], vec![5, 6]));
    let counts: Vec<_> = found.cuts.iter().map(|it| (it.kind, it.count)).collect();
    assert_eq!(counts, [(Rough, 1), (Last, 1)]);
    assert_eq!(
        found.span.unwrap().map(Moment::to_unix_seconds),
        [1060, 1360]
    );
}

#[test]
fn without_a_cut_nothing_is_said_of_what_leaves() {
    let found = done(&job(vec![diameter("20"), diameter("20.01")]));
    assert_eq!((found.received, found.left), (vec![0, 1], vec![]));
}

#[test]
fn a_step_says_when_it_ended_and_why_it_was_left_out() {
    let found = done(&job(vec![
        step(WorkStep::Hold, StepState::Started),
        step(WorkStep::Hold, StepState::Done),
        step(
            WorkStep::DialIn,
            StepState::Skipped(" ran true ".to_owned()),
        ),
        step(WorkStep::CutOff, StepState::Done),
        step(WorkStep::CutOff, StepState::Reopened),
    ]));
    let of = |step| found.steps.iter().find(|it| it.step == step).unwrap();
    let hold = of(WorkStep::Hold);
    assert_eq!(
        (hold.how, hold.at),
        (StepHow::Done, Some(Moment::unix_seconds(1060)))
    );
    assert_eq!(hold.worked, Time::seconds(60.0));
    assert_eq!(of(WorkStep::DialIn).why, "ran true");
    assert_eq!(of(WorkStep::CutOff).at, None);
    assert_eq!(found.worked, Time::seconds(60.0));
    assert!(!found.broken);
}

#[test]
fn instruments_and_temperatures_are_those_of_the_proof() {
    let warm = |text: &str| Entered::read(text, Unit::Celsius).ok();
    let mut job = job(vec![
        diameter("32"),
        cut(CutMadeKind::Rough),
        read(Measured::Diameter(WorkPlace::At(mm("5"))), "120"),
        cut(CutMadeKind::Last),
        diameter("25"),
        read(Measured::Runout, "0.01"),
        read(Measured::Roughness, "0.0008"),
    ]);
    for (at, celsius) in [(2, "80"), (4, "24"), (5, "22")] {
        if let What::Reading(reading) = &mut job.record.events[at].what {
            reading.temperature = warm(celsius);
        }
    }
    let found = done(&job);
    let with: Vec<_> = found.used.iter().map(|it| (it.with, it.readings)).collect();
    assert_eq!(
        with,
        [
            (UsedWith::Usual, 2),
            (UsedWith::UsualIndicator, 1),
            (UsedWith::RoughnessTester, 1),
        ]
    );
    // A usual micrometer at 32 mm: 4 µm up to 50 mm by DIN 863-1, and the 120 mm between the cuts are no proof.
    assert_eq!(found.used[0].error, Length::um(4.0));
    assert_eq!(
        found.temperatures.map(|it| it.map(Temperature::to_celsius)),
        Some([22.0, 24.0])
    );
}

#[test]
fn the_span_is_of_the_work_and_not_of_offers_and_answers() {
    let mark = OfferMark(1);
    let mut job = job(vec![
        What::Offered(Offered {
            mark,
            shows: Shows::default(),
            link: String::new(),
        }),
        cut(CutMadeKind::Rough),
        What::Answered(Answered {
            to: mark,
            says: OwnerSays::Agree,
            words: String::new(),
            by: String::new(),
        }),
    ]);
    let at = Moment::unix_seconds(1_060);
    assert_eq!(done(&job).span, Some([at, at]));
    job.record.events.retain(|it| it.what.is_with_owner());
    assert_eq!(done(&job).span, None);
}
