//! Tests of reading a job.

use serde_json::Value;

use super::*;
use crate::job::Job;

#[test]
fn what_is_left_out_has_its_default() {
    assert_eq!(read_job("{}"), Ok(Job::default()));
    let job = read_job(r#"{ "version": 1, "wanted": { "countersink": null } }"#).unwrap();
    assert_eq!(job.wanted.countersink, None);
    assert_eq!(job.wanted.length, Job::default().wanted.length);
}

#[test]
fn each_error_names_its_field() {
    let cases = [
        ("", "", "EOF"),
        ("{} {}", "", "trailing"),
        ("[]", "", "a list has no place"),
        (r#"{ "shop": [] }"#, "shop", "a list has no place"),
        (
            r#"{ "part": { "sections": [["cylinder", "1 mm"]] } }"#,
            "part.sections[0]",
            "a list has no place",
        ),
        (r#"{ "colour": 1 }"#, "colour", "unknown field"),
        (r#"{ "version": 3 }"#, "version", "newer than this program"),
        (
            r#"{ "version": 300 }"#,
            "version",
            "newer than this program",
        ),
        (r#"{ "version": 0 }"#, "version", "no version 0"),
        (r#"{ "title": 5 }"#, "title", "invalid type"),
        (
            r#"{ "wanted": { "length": "50" } }"#,
            "wanted.length",
            "unit is missing (character 1)",
        ),
        (
            r#"{ "wanted": { "length": 50 } }"#,
            "wanted.length",
            "expected a string",
        ),
        (
            r#"{ "wanted": { "length": null } }"#,
            "wanted.length",
            "expected a string",
        ),
        (
            r#"{ "shop": { "top_speed": "20 mm" } }"#,
            "shop.top_speed",
            "'mm' is no unit here",
        ),
        (
            r#"{ "shop": { "kerf": "1 kg" } }"#,
            "shop.kerf",
            "'kg' is no unit here",
        ),
        (
            r#"{ "shop": { "tool": "chisel" } }"#,
            "shop.tool",
            "no tool is called 'chisel'",
        ),
        (
            r#"{ "wanted": { "tolerance": { "class": "H7" } } }"#,
            "wanted.tolerance.class",
            "no tolerance class is called 'H7'",
        ),
        (
            r#"{ "wanted": { "tolerance": { "upper": "0 mm" } } }"#,
            "wanted.tolerance",
            "needs `lower`",
        ),
        (
            r#"{ "wanted": { "tolerance": { "class": "h6", "lower": "0 mm" } } }"#,
            "wanted.tolerance",
            "has no `lower`",
        ),
        (
            r#"{ "part": { "sections": [{ "kind": "cone" }] } }"#,
            "part.sections[0].kind",
            "unknown variant `cone`",
        ),
        (
            r#"{ "part": { "sections": [{ "kind": "cylinder", "diameter": "1 mm", "length": "x" }] } }"#,
            "part.sections[0].length",
            "'x' is no unit here",
        ),
        (
            r#"{ "part": { "sections": [{ "kind": "cylinder", "diameter": "1 mm" }] } }"#,
            "part.sections[0]",
            "a cylinder needs `length`",
        ),
        (
            r#"{ "part": { "bores": [{ "kind": "centre-hole", "depth": "1 mm" }] } }"#,
            "part.bores[0]",
            "a centre hole needs `centre_drill`",
        ),
        (
            r#"{ "part": { "bores": [{ "kind": "tapped", "size": "M12" }] } }"#,
            "part.bores[0].size",
            "unknown field",
        ),
    ];
    name_their_fields(&cases);
}

#[track_caller]
fn name_their_fields(cases: &[(&str, &str, &str)]) {
    for (text, path, message) in cases {
        let error = read_job(text).unwrap_err();
        assert_eq!(error.path, *path, "{text}: {error}");
        assert!(error.message.contains(message), "{text}: {error}");
    }
}

#[test]
fn errors_in_lathe_tool_times_rates_and_set_up_name_their_fields() {
    let cases = [
        (
            r#"{ "part": { "cutting_group": "p-99" } }"#,
            "part.cutting_group",
            "no material group is called 'p-99'",
        ),
        (
            r#"{ "part": { "file_bite": "slides" } }"#,
            "part.file_bite",
            "no way of a file is called 'slides'",
        ),
        (
            r#"{ "shop": { "aim": "least-effort" } }"#,
            "shop.aim",
            "unknown variant `least-effort`",
        ),
        (
            r#"{ "shop": { "times": { "hold": { "low": "2" } } } }"#,
            "shop.times.hold.low",
            "unit is missing (character 1)",
        ),
        (
            r#"{ "shop": { "times": { "hold": { "most": "2 s" } } } }"#,
            "shop.times.hold.most",
            "unknown field",
        ),
        (
            r#"{ "shop": { "times": { "hold": ["2 s"] } } }"#,
            "shop.times.hold",
            "a list has no place",
        ),
        (
            r#"{ "shop": { "times": { "rest": { "low": "2 s" } } } }"#,
            "shop.times.rest",
            "no step is called 'rest'",
        ),
        (
            r#"{ "shop": { "machine": { "speeds": ["70 rpm", "12 mm"] } } }"#,
            "shop.machine.speeds[1]",
            "'mm' is no unit here",
        ),
        (
            r#"{ "shop": { "machine": { "feeds": { "to": "12" } } } }"#,
            "shop.machine.feeds.to",
            "unit is missing (character 1)",
        ),
        (
            r#"{ "shop": { "machine": { "feeds": { "most": "0.2 mm/rev" } } } }"#,
            "shop.machine.feeds.most",
            "unknown field",
        ),
        (
            r#"{ "shop": { "edge": { "rake": "6 mm" } } }"#,
            "shop.edge.rake",
            "'mm' is no unit here",
        ),
        (
            r#"{ "shop": { "rates": { "per_hour": "60 EUR" } } }"#,
            "shop.rates.per_hour",
            "'EUR' is no unit here",
        ),
        (
            r#"{ "setup": { "near": { "readings": [null, "1 mm", "2"] } } }"#,
            "setup.near.readings[2]",
            "unit is missing (character 1)",
        ),
        (
            r#"{ "setup": { "pins": [{ "after": "18 mm" }] } }"#,
            "setup.pins[0]",
            "missing field `infeed`",
        ),
        (
            r#"{ "setup": { "support": "glue" } }"#,
            "setup.support",
            "unknown variant `glue`",
        ),
    ];
    name_their_fields(&cases);
}

#[test]
#[expect(clippy::too_many_lines, reason = "a table of cases")]
fn errors_in_the_record_and_what_goes_with_it_name_their_fields() {
    let event = |what: &str| {
        format!(
            r#"{{ "record": {{ "events": [{{ "at": 1, "what": {{ "note": "" }} }}, {what}] }} }}"#
        )
    };
    let cases = [
        (
            r#"{ "note": 5 }"#,
            "record.events[1].what.note",
            "invalid type",
        ),
        (
            r#"{ "rest": "x" }"#,
            "record.events[1].what",
            "unknown variant `rest`",
        ),
        (r#""note""#, "record.events[1].what.note", "invalid type"),
        (
            r#"{ "change": "mood" }"#,
            "record.events[1].what.change",
            "unknown variant `mood`",
        ),
        (
            r#"{ "step": { "step": "rest", "state": "done" } }"#,
            "record.events[1].what.step.step",
            "`rest`",
        ),
        (
            r#"{ "step": { "step": "hold", "state": { "skipped": 5 } } }"#,
            "record.events[1].what.step.state.skipped",
            "type",
        ),
        (
            r#"{ "cut": { "kind": "rough", "dialled": "0.5", "reads": "radius" } }"#,
            "record.events[1].what.cut.dialled",
            "unit is missing",
        ),
        (
            r#"{ "reading": { "value": "5 mm" } }"#,
            "record.events[1].what.reading",
            "missing field `of`",
        ),
        (
            r#"{ "reading": { "of": "length", "value": "5 s" } }"#,
            "record.events[1].what.reading.value",
            "no unit here",
        ),
        (
            r#"{ "reading": { "of": { "diameter": { "at": "5" } }, "value": "5 mm" } }"#,
            "record.events[1].what.reading.of.diameter.at",
            "unit is missing",
        ),
        (
            r#"{ "reading": { "of": "length", "value": "5 mm", "instrument": 300 } }"#,
            "record.events[1].what.reading.instrument",
            "300",
        ),
        (
            r#"{ "reading": { "of": "length", "value": "5 mm", "temperature": "20 °C + 5 °C" } }"#,
            "record.events[1].what.reading.temperature",
            "character",
        ),
        (
            r#"{ "reading": { "of": ["length"], "value": "5 mm" } }"#,
            "record.events[1].what.reading.of",
            "a list has no place",
        ),
    ];
    for (what, path, message) in cases {
        let text = event(&format!(r#"{{ "at": 2, "what": {what} }}"#));
        name_their_fields(&[(&text, path, message)]);
    }
    for (text, path, message) in [
        (event("5"), "record.events[1]", "expected struct Event"),
        (
            event(r#"{ "what": { "note": "" } }"#),
            "record.events[1]",
            "missing field `at`",
        ),
        (
            event(r#"{ "at": -1, "what": { "note": "" } }"#),
            "record.events[1].at",
            "-1",
        ),
        (
            event(r#"{ "at": 1, "why": 2, "what": { "note": "" } }"#),
            "record.events[1].why",
            "unknown field",
        ),
        (event("[1, 2]"), "record.events[1]", "a list has no place"),
    ] {
        name_their_fields(&[(&text, path, message)]);
    }
    name_their_fields(&[
        (
            r#"{ "record": { "events": {} } }"#,
            "record.events",
            "expected a sequence",
        ),
        (
            r#"{ "record": { "event": [] } }"#,
            "record.event",
            "a list has no place",
        ),
        (
            r#"{ "setup": { "room_temperature": "26" } }"#,
            "setup.room_temperature",
            "unit is missing",
        ),
        (
            r#"{ "shop": { "instruments": [{ "kind": "ruler" }] } }"#,
            "shop.instruments[0].kind",
            "unknown variant `ruler`",
        ),
        (
            r#"{ "shop": { "machine": { "learned": { "paces": [{ "step": "hold", "factor": "2", "jobs": "1 pcs" }] } } } }"#,
            "shop.machine.learned.paces[0].factor",
            "unit is missing",
        ),
        (
            r#"{ "shop": { "machine": { "learned": { "takes": { "share": "2 %" } } } } }"#,
            "shop.machine.learned.takes",
            "missing field",
        ),
    ]);
}

/// A record of too many events is refused with both numbers, before the events are looked at.
#[test]
fn too_many_events_are_refused_with_both_numbers() {
    let events = vec![r#"{ "at": 1, "what": { "rest": 1 } }"#; 100_000].join(",");
    let text = format!(r#"{{ "record": {{ "events": [{events}] }} }}"#);
    let error = read_job(&text).unwrap_err();
    assert_eq!(error.path, "record.events");
    assert_eq!(
        error.message,
        "the record has 100000 events; at most 5000 are taken"
    );
    assert_eq!(read_job_object(&text), Err(error));
}

/// Each value of what was said stands in what was written, under the same names.
fn stands_in(said: &Value, written: &Value, path: &str) {
    match said {
        Value::Object(fields) => {
            for (name, value) in fields {
                stands_in(value, &written[name], &format!("{path}.{name}"));
            }
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                stands_in(item, &written[index], path);
            }
        }
        _ => assert_eq!(said, written, "{path}"),
    }
}

/// Every part of a job that says something comes back as it was; what says nothing is left out of the times alone.
#[test]
fn lathe_tool_times_rates_and_set_up_are_written_as_they_are_read() {
    let text = r#"{
        "part": { "material": "alloy-steel-tempered", "cutting_group": "p-8", "file_bite": "bites" },
        "wanted": { "roughness": "1.6 µm" },
        "shop": {
            "aim": "least-cost",
            "edge": { "name": "Left hand", "rake": "-6 °", "edges": "4 pcs", "price": "8.40 ¤" },
            "machine": {
                "rigidity": "heavy", "speeds": ["70 rpm", "115 rpm"], "feeds": { "from": "0.02 mm/rev" },
                "efficiency": "82.5 %", "head_stiffness": "22 N/µm", "dial_reads": "radius"
            },
            "times": { "pack": { "high": "10 min" }, "hold": { "low": "30 s", "likely": "55 s" } },
            "rates": { "currency": "EUR", "per_hour": "62.50 ¤" }
        },
        "setup": {
            "support": "chuck", "jaws": "serrated", "grip_force": "4.5 kN",
            "near": { "place": "10 mm", "readings": ["20 µm", null, "12 µm", "-2 µm"] },
            "pins": [{ "after": "18 mm", "infeed": "0.5 mm", "speed": "400 rpm" }]
        }
    }"#;
    let job = read_job(text).unwrap();
    let written = serde_json::to_value(&job).unwrap();
    assert_eq!(read_job(&written.to_string()), Ok(job));
    let times = written["shop"]["times"].as_object().unwrap();
    let steps: Vec<&String> = times.keys().collect();
    assert_eq!(steps, ["hold", "pack"], "what says nothing is left out");
    stands_in(&serde_json::from_str(text).unwrap(), &written, "");
    assert_eq!(
        serde_json::to_value(Job::default()).unwrap()["shop"]["times"].to_string(),
        "{}"
    );
}

#[test]
fn a_text_without_end_is_refused_at_once() {
    let text = " ".repeat(MOST_BYTES + 1);
    assert!(read_job(&text).unwrap_err().message.contains("longer than"));
}

#[test]
fn the_documented_example_is_a_job() {
    let example: String = include_str!("mod.rs")
        .lines()
        .skip_while(|line| !line.ends_with("```json"))
        .skip(1)
        .take_while(|line| !line.ends_with("```"))
        .map(|line| line.trim_start_matches("//!"))
        .collect();
    let job = read_job(&example).unwrap();
    assert_eq!((job.part.sections.len(), job.part.bores.len()), (3, 2));
    assert_eq!(
        (job.record.events.len(), job.shop.instruments.len()),
        (7, 1)
    );
    let written = serde_json::to_string(&job).unwrap();
    assert_eq!(read_job(&written), Ok(job));
}
