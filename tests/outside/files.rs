//! Writes files that leave the page, and what they must hold, for `files.py` beside it. Run by `cargo xtask outside`.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "../support/jobs.rs"]
mod jobs;

use std::fs;
use std::path::{Path, PathBuf};

use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use serde_json::{Value, json};
use skimwright::demo::demo_jobs;
use skimwright::job::{
    Change, CutMade, CutMadeKind, DialReads, Event, Job, Measured, Moment, Reading, StepEvent,
    StepState, What, WorkPlace, WorkStep,
};
use skimwright::link::{encode, encode_digits};
use skimwright::part::Pick;
use skimwright::plan::{Plan, plan};
use skimwright::quantity::{Entered, Length, Unit, Units};
use skimwright::sheet::{DecimalMark, Qr, Stage, dxf, events_csv, passes_csv, qr, readings_csv};

const ADDRESS: &str = "https://shop.example/plan/#";

/// Random parts whose drawings are written.
const RANDOM: usize = 60;

#[test]
#[ignore = "writes files for another program"]
fn write_files() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("files");
    let _ = fs::remove_dir_all(&folder);
    for kind in ["dxf", "qr", "csv"] {
        fs::create_dir_all(folder.join(kind)).unwrap();
    }
    let [arbor, other, third] = demo_jobs();
    let known = [
        ("usual", Job::default()),
        ("demo-1", arbor),
        ("demo-2", other),
        ("demo-3", third),
    ];
    for (name, job) in &known {
        write_dxf(&folder, name, job);
        write_codes(&folder, name, job);
        write_tables(&folder, name, job);
    }
    let digits = "0123456789".repeat(700);
    write_code(&folder, "largest", &format!("{ADDRESS}{digits}"), 0);
    let mut runner = TestRunner::deterministic();
    let any = jobs::job(jobs::Numbers::Usual);
    let mut count = 0;
    while count < RANDOM {
        let job = any.new_tree(&mut runner).unwrap().current();
        if plan(&job).shape.received.is_some() {
            write_dxf(&folder, &format!("random-{count}"), &job);
            count += 1;
        }
    }
    println!("{}", folder.display());
}

fn write(folder: &Path, name: &str, text: &str) {
    fs::write(folder.join(name), text).unwrap();
}

fn write_dxf(folder: &Path, name: &str, job: &Job) {
    let plan = plan(job);
    for (stage, word) in [(Stage::Received, "received"), (Stage::Plan, "plan")] {
        let file = dxf(job, &plan, stage, Units::Metric);
        write(folder, &format!("dxf/{name}-{word}.dxf"), &file);
        let wanted = outlines(&plan).to_string();
        write(folder, &format!("dxf/{name}-{word}.json"), &wanted);
    }
}

/// The radii of the plan's outlines at many places, and the ends.
fn outlines(plan: &Plan) -> Value {
    let received = plan.shape.received.as_ref().unwrap();
    let whole = received.whole_outer();
    let finished = plan
        .shape
        .finished
        .as_ref()
        .map(|it| it.merge(&received.head, Pick::Larger));
    let shank = plan.shape.shank.as_ref();
    let (start, end) = (whole.start().to_mm(), whole.end().to_mm());
    let places = (0..400_u32).map(|place| start + (end - start) * (f64::from(place) + 0.5) / 400.0);
    let radii: Vec<[f64; 3]> = places
        .map(|z| {
            let at = Length::mm(z);
            let finished = finished.as_ref().map_or(0.0, |it| it.radius_at(at).to_mm());
            [z, whole.radius_at(at).to_mm(), finished]
        })
        .collect();
    json!({
        "start": start,
        "end": end,
        "finished_end": finished.map(|it| it.end().to_mm()),
        "diameter": shank.map(|it| it.diameter.to_mm()),
        "fillet": shank.map(|it| it.fillet.to_mm()),
        "chamfer": shank.map(|it| it.chamfer.to_mm()),
        "length": shank.map(|it| it.length.to_mm()),
        "radii": radii,
    })
}

fn write_codes(folder: &Path, name: &str, job: &Job) {
    let (letters, digits) = (encode(job).unwrap(), encode_digits(job).unwrap());
    for (form, link) in [("letters", letters), ("digits", digits)] {
        let address = format!("{ADDRESS}{link}");
        write_code(folder, &format!("{name}-{form}"), &address, link.len());
    }
}

fn write_code(folder: &Path, name: &str, address: &str, characters: usize) {
    let code = qr(address).unwrap();
    write(
        folder,
        &format!("qr/{name}.svg"),
        &code.svg(Qr::LEAST_MODULE, name),
    );
    let about = json!({
        "address": address,
        "characters": characters,
        "version": code.version(),
        "level": format!("{:?}", code.level()),
        "side": code.side(),
        "printed": code.least_side().to_mm(),
    });
    write(folder, &format!("qr/{name}.json"), &about.to_string());
}

fn write_tables(folder: &Path, name: &str, job: &Job) {
    let mut job = job.clone();
    job.record.events = record();
    let plan = plan(&job);
    let passes = plan.stock_off.as_ref().unwrap().passes.iter();
    let passes: Vec<Value> = passes
        .map(|pass| {
            json!([
                pass.diameter_after.to_mm(),
                pass.time.to_seconds(),
                pass.spindle_speed.to_per_min()
            ])
        })
        .collect();
    let readings: Vec<Value> = job
        .record
        .events
        .iter()
        .filter_map(|event| match &event.what {
            What::Reading(reading) => {
                let warm = reading
                    .temperature
                    .as_ref()
                    .map(|it| it.value().to_celsius());
                Some(json!([
                    event.at.to_unix_seconds(),
                    reading.value.value().to_mm(),
                    warm,
                    event.struck
                ]))
            }
            _ => None,
        })
        .collect();
    let others = job.record.events.len() - readings.len();
    for (mark, word) in [(DecimalMark::Point, "point"), (DecimalMark::Comma, "comma")] {
        let tables = [
            ("passes", passes_csv(&job, &plan, Units::Metric, mark)),
            ("readings", readings_csv(&job, mark)),
            ("events", events_csv(&job, mark)),
        ];
        for (table, text) in tables {
            write(folder, &format!("csv/{name}-{table}-{word}.csv"), &text);
        }
    }
    let about = json!({ "passes": passes, "readings": readings, "others": others, "notes": NOTES });
    write(folder, &format!("csv/{name}.json"), &about.to_string());
}

/// Notes that a spreadsheet would take for something else.
const NOTES: [&str; 7] = [
    "=1+1",
    "@SUM(A1:A9)",
    "-2+3",
    "two\nlines; \"quoted\", and more",
    "+49 30 1234",
    "Grüße, 軸 ⌀25",
    "",
];

fn record() -> Vec<Event> {
    let length = |text: &str| Entered::read(text, Unit::Millimetre).unwrap();
    let reading = |of, value: &str, temperature: Option<&str>| {
        What::Reading(Reading {
            of,
            value: length(value),
            instrument: None,
            temperature: temperature.map(|text| Entered::read(text, Unit::Celsius).unwrap()),
            confirmed: false,
        })
    };
    let mut whats = vec![
        reading(Measured::Diameter(WorkPlace::Middle), "25.013", None),
        reading(
            Measured::Diameter(WorkPlace::At(length("1/2 in"))),
            "0.98425 in",
            Some("23.5"),
        ),
        reading(Measured::Runout, "0.01", None),
        reading(Measured::Length, "31.2 - 0.4 mm", Some("-4")),
        reading(Measured::Roughness, "0.8 um", None),
        What::Cut(CutMade {
            kind: CutMadeKind::Rough,
            dialled: length("0.5"),
            reads: DialReads::Radius,
        }),
        What::Change(Change::NewEdge),
        What::Step(StepEvent {
            step: WorkStep::DialIn,
            state: StepState::Skipped("=true".to_owned()),
        }),
    ];
    whats.extend(NOTES.map(|note| What::Note(note.to_owned())));
    let event = |(number, what): (u64, What)| Event {
        at: Moment::unix_seconds(1_700_000_000 + number * 86_461),
        struck: number == 2,
        what,
    };
    (0..).zip(whats).map(event).collect()
}
