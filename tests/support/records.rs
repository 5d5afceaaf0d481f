//! Records, instruments and what was learned, of every kind; [`super`] makes whole jobs of them.

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use skimwright::job::{
    Answered, Change, CutMade, CutMadeKind, DialReads, Event, Instrument, InstrumentKind, Job,
    Learned, LearnedPace, LearnedTakes, Measured, Moment, OfferMark, Offered, OwnerSays, Reading,
    Record, Shows, StepEvent, StepState, What, WorkPlace, WorkStep,
};

use super::{Numbers, entered, length};

/// Any record; most often none, seldom more than a few events.
pub(crate) fn record(numbers: Numbers) -> impl Strategy<Value = Record> {
    prop_oneof![2 => Just(Record::default()), 2 => some_record(numbers)]
}

/// A record of some events.
fn some_record(numbers: Numbers) -> impl Strategy<Value = Record> {
    let by =
        prop_oneof![2 => Just(String::new()), 1 => super::shops::name(Job::MOST_NAME_CHARACTERS)];
    (by, vec(event(numbers), 0..=24)).prop_map(|(by, events)| Record { by, events })
}

/// Times of a workshop's day, and any other.
fn moment() -> impl Strategy<Value = Moment> {
    let seconds = prop_oneof![
        8 => 1_764_000_000_u64..1_764_040_000,
        1 => any::<u64>(),
        1 => select(vec![0, 1, u64::MAX, u64::MAX / 2, u64::MAX / 2 + 1]),
    ];
    seconds.prop_map(Moment::unix_seconds)
}

fn note() -> impl Strategy<Value = String> {
    let letters = prop_oneof![
        4 => vec(any::<char>(), 0..=30),
        1 => vec(any::<char>(), Record::MOST_NOTE_CHARACTERS),
    ];
    letters.prop_map(|letters| letters.into_iter().collect())
}

/// Any event.
pub(crate) fn event(numbers: Numbers) -> impl Strategy<Value = Event> {
    let what = prop_oneof![
        4 => reading(numbers).prop_map(What::Reading),
        2 => cut(numbers).prop_map(What::Cut),
        1 => select(Change::ALL.to_vec()).prop_map(What::Change),
        1 => note().prop_map(What::Note),
        3 => step().prop_map(What::Step),
        1 => offered().prop_map(What::Offered),
        1 => answered().prop_map(What::Answered),
    ];
    (moment(), any::<bool>(), what).prop_map(|(at, struck, what)| Event { at, struck, what })
}

fn reading(numbers: Numbers) -> impl Strategy<Value = Reading> {
    let place = prop_oneof![
        Just(WorkPlace::NearShoulder),
        Just(WorkPlace::Middle),
        Just(WorkPlace::FreeEnd),
        length(numbers).prop_map(WorkPlace::At),
    ];
    let of = prop_oneof![
        4 => place.prop_map(Measured::Diameter),
        1 => Just(Measured::Length),
        1 => Just(Measured::Runout),
        1 => Just(Measured::Roughness),
    ];
    let instrument = prop_oneof![
        Just(None),
        (0_u8..3).prop_map(Some),
        option::of(any::<u8>())
    ];
    (
        of,
        length(numbers),
        instrument,
        option::weighted(0.3, entered(numbers)),
        any::<bool>(),
    )
        .prop_map(|(of, value, instrument, temperature, confirmed)| Reading {
            of,
            value,
            instrument,
            temperature,
            confirmed,
        })
}

fn cut(numbers: Numbers) -> impl Strategy<Value = CutMade> {
    (
        select(CutMadeKind::ALL.to_vec()),
        length(numbers),
        select(DialReads::ALL.to_vec()),
    )
        .prop_map(|(kind, dialled, reads)| CutMade {
            kind,
            dialled,
            reads,
        })
}

fn step() -> impl Strategy<Value = StepEvent> {
    let state = prop_oneof![
        2 => Just(StepState::Started),
        2 => Just(StepState::Done),
        1 => Just(StepState::Paused),
        1 => note().prop_map(StepState::Skipped),
        1 => Just(StepState::Reopened),
    ];
    (select(WorkStep::ALL.to_vec()), state).prop_map(|(step, state)| StepEvent { step, state })
}

/// A mark can only be read: no job is asked for it here.
fn mark() -> impl Strategy<Value = OfferMark> {
    any::<u64>().prop_map(|mark| serde_json::from_str(&format!("\"{mark:016x}\"")).unwrap())
}

fn offered() -> impl Strategy<Value = Offered> {
    (mark(), any::<bool>(), any::<bool>(), note()).prop_map(|(mark, rates, machine, link)| {
        Offered {
            mark,
            shows: Shows { rates, machine },
            link,
        }
    })
}

fn answered() -> impl Strategy<Value = Answered> {
    let by = super::shops::name(Job::MOST_NAME_CHARACTERS);
    (mark(), select(OwnerSays::ALL.to_vec()), note(), by).prop_map(|(to, says, words, by)| {
        Answered {
            to,
            says,
            words,
            by,
        }
    })
}

/// Any instruments; most often none.
pub(crate) fn instruments(numbers: Numbers) -> impl Strategy<Value = Vec<Instrument>> {
    let one = (
        super::shops::name(Job::MOST_NAME_CHARACTERS),
        select(InstrumentKind::ALL.to_vec()),
        option::of(length(numbers)),
        option::of(length(numbers)),
        option::of(length(numbers)),
        option::of(length(numbers)),
    )
        .prop_map(
            |(name, kind, graduation, permissible_error, reference, repeat)| Instrument {
                name,
                kind,
                graduation,
                permissible_error,
                reference,
                repeat,
            },
        );
    prop_oneof![2 => Just(Vec::new()), 1 => vec(one, 0..=Job::MOST_INSTRUMENTS)]
}

/// Anything learned of a lathe; most often nothing.
pub(crate) fn learned(numbers: Numbers) -> impl Strategy<Value = Learned> {
    let takes = (
        entered(numbers),
        entered(numbers),
        length(numbers),
        length(numbers),
        entered(numbers),
    )
        .prop_map(
            |(share, share_deviation, offset, offset_deviation, cuts)| LearnedTakes {
                share,
                share_deviation,
                offset,
                offset_deviation,
                cuts,
            },
        );
    let steps = proptest::sample::subsequence(WorkStep::ALL.to_vec(), 0..=WorkStep::ALL.len());
    let paces = steps.prop_shuffle().prop_flat_map(move |steps| {
        steps
            .into_iter()
            .map(|step| pace(step, numbers))
            .collect::<Vec<_>>()
    });
    let any = (option::of(takes), paces).prop_map(|(takes, paces)| Learned { takes, paces });
    prop_oneof![2 => Just(Learned::default()), 1 => any]
}

fn pace(step: WorkStep, numbers: Numbers) -> impl Strategy<Value = LearnedPace> {
    (entered(numbers), entered(numbers)).prop_map(move |(factor, jobs)| LearnedPace {
        step,
        factor,
        jobs,
    })
}
