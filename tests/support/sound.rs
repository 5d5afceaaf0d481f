//! An ordinary job that nothing stands against, and how to change it field by field. A test takes this file in
//! with `#[path = "support/sound.rs"] mod sound;`.
#![allow(dead_code, reason = "each test uses a part of it")]

use skimwright::job::{
    Bore, BoreBottom, EdgeField, Field, Gears, HoldingField, Hole, Job, MachineField, Section,
    Turned,
};
use skimwright::plan::{Finding, Plan};
use skimwright::quantity::{Entered, Entry, Length, Typed, Unit, read};
use skimwright::tables::ThreadSize;

/// A length as typed in millimetres, or with its own unit.
#[track_caller]
pub(crate) fn mm(text: &str) -> Entered<Length> {
    Entered::read(text, Unit::Millimetre).expect("a length")
}

/// Types a text into a field of numbers; a bare number is in millimetres, seconds, m/min, mm/rev or rpm.
#[track_caller]
pub(crate) fn set(job: &mut Job, field: Field, text: &str) {
    let bounds = field.bounds().expect("a field of numbers");
    let unit = Unit::ALL
        .into_iter()
        .find(|unit| unit.dimension() == bounds.dimension);
    let entry = read(text, bounds.dimension, unit).expect("a number");
    assert!(job.set_entry(field, Some(entry)), "{field} takes {text}");
}

/// Types a length that the plan gave into a field, to nine decimals.
#[track_caller]
pub(crate) fn set_length(job: &mut Job, field: Field, length: Length) {
    let entry = Entry::decimal(length.to_mm(), 9, Unit::Millimetre);
    assert!(job.set_entry(field, entry), "{field} takes {length:?}");
}

/// A job with some numbers typed in.
#[track_caller]
pub(crate) fn with(mut job: Job, changes: &[(Field, &str)]) -> Job {
    for (field, text) in changes {
        set(&mut job, *field, text);
    }
    job
}

/// A soft steel shank of 20 mm by 80 mm that becomes 16 h6 by 50 mm; nothing stands against it.
pub(crate) fn sound() -> Job {
    Job::default()
}

/// The same on a lathe, in jaws and with a tool that nothing is too much for, in metal that wears no edge: only the
/// speeds and feeds that are asked for limit a cut.
pub(crate) fn ample(mut job: Job) -> Job {
    job.part.material = skimwright::tables::WorkMaterial::Brass;
    with(
        job,
        &[
            (Field::Machine(MachineField::Power), "1000 kW"),
            (Field::Machine(MachineField::Efficiency), "100 %"),
            (Field::Machine(MachineField::SlowestSpeed), "5"),
            (Field::Machine(MachineField::FastestSpeed), "50000"),
            (Field::Machine(MachineField::HeadStiffness), "10000 N/µm"),
            (Field::Machine(MachineField::TailStiffness), "10000 N/µm"),
            (Field::Machine(MachineField::PostStiffness), "10000 N/µm"),
            (Field::Holding(HoldingField::GripForce), "10000 kN"),
            (Field::Edge(EdgeField::LeastFeed), "0.01"),
            (Field::Edge(EdgeField::MostFeed), "3"),
            (Field::Edge(EdgeField::LeastDepth), "0.01"),
            (Field::Edge(EdgeField::MostDepth), "20"),
        ],
    )
}

/// A list of speeds or feeds, each as typed with its unit.
#[track_caller]
pub(crate) fn listed<Q: Typed>(texts: &[&str]) -> Gears<Q> {
    Gears::Listed(texts.iter().map(|text| entered(text)).collect())
}

/// A number as typed, with its unit.
#[track_caller]
pub(crate) fn entered<Q: Typed>(text: &str) -> Entered<Q> {
    let entry = read(text, Q::DIMENSION, None).expect("a number with its unit");
    Entered::new(entry).expect("its own dimension")
}

pub(crate) fn cylinder(diameter: &str, length: &str) -> Section {
    Turned::Cylinder {
        diameter: mm(diameter),
        length: mm(length),
    }
    .into()
}

pub(crate) fn taper(shoulder: &str, end: &str, length: &str) -> Section {
    Turned::Taper {
        shoulder_diameter: mm(shoulder),
        end_diameter: mm(end),
        length: mm(length),
        diameter_error: None,
        length_error: None,
    }
    .into()
}

pub(crate) fn drilled(diameter: &str, depth: &str, bottom: BoreBottom) -> Bore {
    Hole::Drilled {
        diameter: mm(diameter),
        depth: mm(depth),
        bottom,
    }
    .into()
}

#[track_caller]
pub(crate) fn tapped(thread: &str, thread_depth: &str, drill_depth: &str) -> Bore {
    Hole::Tapped {
        thread: ThreadSize::from_code(thread).expect("a thread"),
        thread_depth: mm(thread_depth),
        drill_depth: mm(drill_depth),
    }
    .into()
}

/// The code of a finding as scripts see it.
pub(crate) fn code(finding: &Finding) -> String {
    let json = serde_json::to_value(finding).expect("a finding as JSON");
    json["code"].as_str().expect("a code").to_owned()
}

/// All codes of a plan, worst first.
pub(crate) fn codes(plan: &Plan) -> Vec<String> {
    plan.findings.iter().map(code).collect()
}
