//! The form of links: those that were given away still open, and damaged ones never do.
//!
//! `links/v1.txt` to `links/v4.txt` hold a line for each job: its link, a space, the job as JSON. The
//! files are only ever added to.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;

use skimwright::costing::Step;
use skimwright::demo::demo_jobs;
use skimwright::job::{
    Aim, Change, CutKind, CutMadeKind, DialPlane, DialReads, EdgeField, Event, Field, Gears,
    HoldingField, HoleKind, Instrument, InstrumentKind, JawFace, Job, MachineField, Measured,
    PinField, RateField, Reading, ReceiverKind, Rigidity, StepState, StepTime, Support, TimeBound,
    TurnedKind, What, WorkPlace, WorkStep,
};
use skimwright::link::{LinkError, decode, encode};
use skimwright::plan::number_fields;
use skimwright::quantity::{Entered, Length};
use skimwright::tables::FileBite;

/// The links of a file and their jobs.
fn links(lines: &'static str) -> Vec<(&'static str, Job)> {
    lines
        .lines()
        .map(|line| {
            let (link, job) = line.split_once(' ').unwrap();
            (link, serde_json::from_str(job).unwrap())
        })
        .collect()
}

fn version_1() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v1.txt"))
}

fn version_2() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v2.txt"))
}

fn version_3() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v3.txt"))
}

fn version_4() -> Vec<(&'static str, Job)> {
    links(include_str!("links/v4.txt"))
}

#[test]
fn links_of_version_1_still_open() {
    let links = version_1();
    assert_eq!(links.len(), 5);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

/// What came in by an older link goes on by a newer one.
#[test]
fn jobs_of_older_versions_are_written_anew_as_version_4() {
    let older = [version_1(), version_2(), version_3()];
    for (link, job) in older.into_iter().flatten() {
        let newer = encode(&job).unwrap();
        assert!(!link.starts_with('d') && newer.starts_with('d'), "{newer}");
        assert_eq!(decode(&newer), Ok(job));
    }
}

#[test]
fn links_of_version_2_still_open() {
    let links = version_2();
    assert_eq!(links.len(), 9);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

#[test]
fn links_of_version_3_still_open() {
    let links = version_3();
    assert_eq!(links.len(), 8);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

#[test]
fn links_of_version_4_still_open() {
    let links = version_4();
    assert_eq!(links.len(), 9);
    for (link, job) in links {
        assert_eq!(decode(link).as_ref(), Ok(&job), "{link}");
    }
}

/// Version 4 is what is written: the kept links come out again, letter for letter.
#[test]
fn links_of_version_4_are_what_is_written() {
    for (link, job) in version_4() {
        assert_eq!(encode(&job).as_deref(), Ok(link));
    }
}

/// Every kind of event and of what goes with it, and every number that may be left out, there in one kept link and
/// missing in another.
#[test]
fn everything_of_version_4_stands_in_a_kept_link() {
    let jobs = version_4();
    let has = |kept: &dyn Fn(&Job) -> bool| jobs.iter().any(|(_, job)| kept(job));
    let event = |is: &dyn Fn(&Event) -> bool| has(&|job| job.record.events.iter().any(is));
    let reading = |is: &dyn Fn(&Reading) -> bool| {
        event(&|event| matches!(&event.what, What::Reading(reading) if is(reading)))
    };
    for (what, is) in [
        ("near the shoulder", |of| {
            *of == Measured::Diameter(WorkPlace::NearShoulder)
        }),
        ("middle", |of| *of == Measured::Diameter(WorkPlace::Middle)),
        ("free end", |of| {
            *of == Measured::Diameter(WorkPlace::FreeEnd)
        }),
        ("at", |of| {
            matches!(of, Measured::Diameter(WorkPlace::At(_)))
        }),
        ("length", |of| *of == Measured::Length),
        ("runout", |of| *of == Measured::Runout),
        ("roughness", |of| *of == Measured::Roughness),
    ] as [(&str, fn(&Measured) -> bool); 7]
    {
        assert!(reading(&|reading| is(&reading.of)), "{what}");
    }
    for yes in [true, false] {
        assert!(reading(&|reading| reading.confirmed == yes));
        assert!(reading(&|reading| reading.instrument.is_some() == yes));
        assert!(reading(&|reading| reading.temperature.is_some() == yes));
        assert!(reading(&|reading| reading.value.entry().is_plain() == yes));
        assert!(event(&|event| event.struck == yes));
        assert!(has(&|job| job.record.events.is_empty() == yes));
        assert!(has(&|job| job.setup.room_temperature.is_some() == yes));
        assert!(has(&|job| job.shop.machine.learned.takes.is_some() == yes));
        assert!(has(&|job| job.shop.machine.learned.paces.is_empty() == yes));
        for number in [
            |it| &it.graduation,
            |it| &it.permissible_error,
            |it| &it.reference,
            |it| &it.repeat,
        ] as [fn(&Instrument) -> &Option<Entered<Length>>; 4]
        {
            let is = |it: &Instrument| number(it).is_some() == yes;
            assert!(has(&|job| job.shop.instruments.iter().any(is)));
        }
    }
    for kind in InstrumentKind::ALL {
        assert!(has(&|job| job
            .shop
            .instruments
            .iter()
            .any(|it| it.kind == kind)));
    }
    for step in WorkStep::ALL {
        assert!(has(&|job| job
            .shop
            .machine
            .learned
            .paces
            .iter()
            .any(|it| it.step == step)));
        let is = |what: &What| matches!(what, What::Step(of) if of.step == step);
        assert!(event(&|event| is(&event.what)), "{step:?}");
    }
    for kind in CutMadeKind::ALL {
        let is = |what: &What| matches!(what, What::Cut(cut) if cut.kind == kind);
        assert!(event(&|event| is(&event.what)), "{kind:?}");
    }
    for reads in DialReads::ALL {
        let is = |what: &What| matches!(what, What::Cut(cut) if cut.reads == reads);
        assert!(event(&|event| is(&event.what)), "{reads:?}");
    }
    for change in Change::ALL {
        assert!(
            event(&|event| event.what == What::Change(change)),
            "{change:?}"
        );
    }
    assert!(event(
        &|event| matches!(&event.what, What::Note(text) if !text.is_ascii())
    ));
    for is in [
        |state| *state == StepState::Started,
        |state| *state == StepState::Paused,
        |state| *state == StepState::Done,
        |state| matches!(state, StepState::Skipped(why) if !why.is_empty()),
        |state| *state == StepState::Reopened,
    ] as [fn(&StepState) -> bool; 5]
    {
        assert!(event(
            &|event| matches!(&event.what, What::Step(step) if is(&step.state))
        ));
    }
    // A clock that was set back.
    assert!(has(&|job| job
        .record
        .events
        .windows(2)
        .any(|pair| pair[1].at < pair[0].at)));
}

/// As of version 2: every choice and every field that version 3 has beyond it, filled in one kept link and empty in
/// another.
#[test]
fn every_field_of_version_3_stands_in_a_kept_link() {
    let jobs = version_3();
    let has = |kept: &dyn Fn(&Job) -> bool| jobs.iter().any(|(_, job)| kept(job));
    for aim in Aim::ALL {
        assert!(has(&|job| job.shop.aim == aim), "{aim:?}");
    }
    for reads in DialReads::ALL {
        assert!(
            has(&|job| job.shop.machine.dial_reads == reads),
            "{reads:?}"
        );
    }
    for rigidity in Rigidity::ALL {
        assert!(
            has(&|job| job.shop.machine.rigidity == rigidity),
            "{rigidity:?}"
        );
    }
    for support in Support::ALL.map(Some).into_iter().chain([None]) {
        assert!(has(&|job| job.setup.support == support), "{support:?}");
    }
    for jaws in JawFace::ALL.map(Some).into_iter().chain([None]) {
        assert!(has(&|job| job.setup.jaws == jaws), "{jaws:?}");
    }
    for bite in FileBite::ALL.map(Some).into_iter().chain([None]) {
        assert!(has(&|job| job.part.file_bite == bite), "{bite:?}");
    }
    for group in [true, false] {
        assert!(has(&|job| job.part.cutting_group.is_some() == group));
    }
    for step in Step::ALL {
        let said = |job: &Job| job.shop.times.of(step) != Some(&StepTime::default());
        assert!(has(&said) && has(&|job| !said(job)), "{step:?}");
    }
    for (what, name) in [
        (
            "machine",
            (|job| &job.shop.machine.name) as fn(&Job) -> &String,
        ),
        ("tool", |job| &job.shop.edge.name),
        ("currency", |job| &job.shop.rates.currency),
    ] {
        assert!(
            has(&|job| name(job).is_empty()) && has(&|job| !name(job).is_ascii()),
            "{what}"
        );
    }
    // Lists of none, of some, and free ranges.
    let listed = |job: &Job| {
        [
            job.shop.machine.speeds.count(),
            job.shop.machine.feeds.count(),
        ]
    };
    assert!(has(&|job| listed(job).iter().all(|count| 3 < *count)));
    assert!(has(
        &|job| matches!(&job.shop.machine.feeds, Gears::Listed(list) if list.is_empty())
    ));
    for field in optional_of_version_3() {
        let filled = |job: &Job| job.entry(field).is_some();
        let empty = |job: &Job| job.has(field) && job.entry(field).is_none();
        assert!(has(&filled) && has(&empty), "{field}");
    }
}

/// Fields of numbers that version 3 has beyond version 2.
fn optional_of_version_3() -> Vec<Field> {
    use EdgeField as E;
    use HoldingField as H;
    use MachineField as M;
    let machine = [
        M::SlowestSpeed,
        M::FastestSpeed,
        M::FinestFeed,
        M::CoarsestFeed,
        M::Power,
        M::Efficiency,
        M::Torque,
        M::Swing,
        M::ChuckTopSpeed,
        M::Graduation,
        M::CompoundGraduation,
        M::FineInfeed,
        M::HeadStiffness,
        M::TailStiffness,
        M::PostStiffness,
    ];
    let edge = [
        E::NoseRadius,
        E::CuttingEdgeAngle,
        E::Rake,
        E::LeastFeed,
        E::MostFeed,
        E::LeastDepth,
        E::MostDepth,
        E::Price,
        E::Edges,
        E::RegrindTime,
    ];
    let holding = [
        H::GripLength,
        H::GripForce,
        H::TailForce,
        H::NearPlace,
        H::FarPlace,
    ];
    let rates = [
        RateField::PerHour,
        RateField::Least,
        RateField::Consumables,
        RateField::Postage,
    ];
    let planes = [DialPlane::Near, DialPlane::Far];
    let readings = planes.map(|plane| [0, 1, 2, 3].map(|quarter| Field::Dial(plane, quarter)));
    let bounds = [TimeBound::Low, TimeBound::Likely, TimeBound::High];
    let pins =
        [0, 1].map(|pin| [PinField::Speed, PinField::Feed].map(|field| Field::Pin(pin, field)));
    [Field::Roughness, Field::FinishFeed]
        .into_iter()
        .chain(machine.map(Field::Machine))
        .chain(edge.map(Field::Edge))
        .chain(holding.map(Field::Holding))
        .chain(rates.map(Field::Rate))
        .chain(readings.into_iter().flatten())
        .chain(bounds.map(|bound| Field::Step(Step::Hold, bound)))
        .chain(pins.into_iter().flatten())
        .collect()
}

/// A kind that no kept link holds could change its place without a test that says so.
#[test]
fn every_kind_stands_in_a_kept_link_of_version_2() {
    let jobs = version_2();
    let has = |kept: &dyn Fn(&Job) -> bool| jobs.iter().any(|(_, job)| kept(job));
    for kind in TurnedKind::ALL {
        let of = |job: &Job| job.part.sections.iter().any(|it| it.turned.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in CutKind::ALL {
        let of = |job: &Job| job.part.features.iter().any(|it| it.cut.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in HoleKind::ALL {
        let of = |job: &Job| job.part.bores.iter().any(|it| it.hole.kind() == *kind);
        assert!(has(&of), "{kind:?}");
    }
    for kind in ReceiverKind::ALL {
        let of = |job: &Job| job.wanted.receiver.kind() == *kind;
        assert!(has(&of), "{kind:?}");
    }
    // And every field that a job may leave empty is filled in one of them.
    let mut filled = BTreeSet::new();
    let mut optional = BTreeSet::new();
    for (_, job) in &jobs {
        for field in number_fields(job) {
            filled.insert(field);
        }
        let empty = OPTIONAL.iter().filter(|field| job.entry(**field).is_none());
        optional.extend(empty.copied());
    }
    for field in OPTIONAL {
        assert!(
            filled.contains(&field) && optional.contains(&field),
            "{field}"
        );
    }
}

/// Fields of the whole job that may be empty.
const OPTIONAL: [Field; 17] = [
    Field::EndRunout,
    Field::SurfaceHardness,
    Field::CaseDepth,
    Field::CoreHardness,
    Field::ShankLength,
    Field::Countersink,
    Field::ReceiverDepth,
    Field::LeastGrip,
    Field::DutyTorque,
    Field::DutyForce,
    Field::DutyOverhang,
    Field::DutyPower,
    Field::DutySpeed,
    Field::Kerf,
    Field::RoughInfeed,
    Field::CuttingSpeed,
    Field::RoughFeed,
];

#[test]
fn one_wrong_character_is_always_an_error() {
    const INSTEAD: &str = "aAbzZ09-_ #+=/%\u{e9}";
    for job in demo_jobs() {
        let link = encode(&job).unwrap();
        for (place, letter) in link.char_indices() {
            let (before, behind) = (&link[..place], &link[place + 1..]);
            let case = if letter.is_ascii_lowercase() {
                letter.to_ascii_uppercase()
            } else {
                letter.to_ascii_lowercase()
            };
            let next = char::from(link.as_bytes()[place] ^ 1);
            for other in INSTEAD.chars().chain([case, next]) {
                if other != letter {
                    let wrong = format!("{before}{other}{behind}");
                    assert!(decode(&wrong).is_err(), "{other} at {place} in {link}");
                }
                // Some are left aside where they were put in; then it is the same job.
                let harmless = matches!(other, ' ' | '=') || (other == '#' && place == 0);
                let longer = format!("{before}{other}{letter}{behind}");
                let opened = decode(&longer);
                assert_eq!(opened.is_ok(), harmless, "{other} before {place}");
                assert!(opened.is_err() || opened.as_ref() == Ok(&job));
            }
        }
    }
}

#[test]
fn a_cut_link_is_always_an_error() {
    for job in demo_jobs() {
        let link = encode(&job).unwrap();
        for place in 0..link.len() {
            let (head, tail) = link.split_at(place);
            assert!(decode(head).is_err(), "cut to {place}");
            if place > 0 {
                assert!(decode(tail).is_err(), "cut from {place}");
            }
            let without = format!("{head}{}", &tail[1..]);
            // Of two equal letters it is all one which is missing, but missing it is.
            assert!(decode(&without).is_err(), "without {place}");
        }
        assert_eq!(decode(&link[..link.len() - 1]), Err(LinkError::Damaged));
    }
}

#[test]
fn two_letters_that_changed_places_are_an_error() {
    for job in demo_jobs() {
        let link = encode(&job).unwrap().into_bytes();
        for place in 1..link.len() {
            let mut wrong = link.clone();
            wrong.swap(place - 1, place);
            if wrong != link {
                let wrong = String::from_utf8(wrong).unwrap();
                assert!(decode(&wrong).is_err(), "{place}");
            }
        }
    }
}
