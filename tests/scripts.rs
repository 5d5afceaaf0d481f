//! The program for scripts, run as a script runs it.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use serde_json::Value;
use skimwright::demo::demo_jobs;
use skimwright::job::{
    Aim, Change, CutMadeKind, DialReads, InstrumentKind, JawFace, Job, Rigidity, Support, WorkStep,
};
use skimwright::{json, link};

/// Exit status, standard output, standard error.
fn run(arguments: &[&str], input: &str) -> (i32, String, String) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_skimwright-plan"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // A program that wants no input may have ended before it is written.
    let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
    let output = child.wait_with_output().unwrap();
    (
        output.status.code().unwrap(),
        String::from_utf8(output.stdout).unwrap(),
        String::from_utf8(output.stderr).unwrap(),
    )
}

#[track_caller]
fn succeeds(arguments: &[&str], input: &str) -> String {
    let (status, output, errors) = run(arguments, input);
    assert_eq!((status, errors.as_str()), (0, ""), "{arguments:?}");
    output
}

#[track_caller]
fn fails(arguments: &[&str], input: &str, message: &str) {
    let (status, output, errors) = run(arguments, input);
    assert_eq!((status, output.as_str()), (2, ""), "{arguments:?}");
    assert!(errors.contains(message), "{errors}");
    assert_eq!(errors.lines().count(), 1, "{errors}");
}

/// A file with a job, in the folder that cargo keeps for a test's files.
fn file(name: &str, text: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, text).unwrap();
    path
}

#[test]
fn a_job_file_gives_its_plan() {
    let job = r#"{ "wanted": { "length": "60 mm" } }"#;
    let path = file("job.json", job);
    let text = succeeds(&[path.to_str().unwrap()], "");
    let plan: Value = serde_json::from_str(&text).unwrap();
    // 80 mm of shank less 60 mm and 1 mm for facing.
    let mark = &plan["cut_off"]["from_free_end"]["value"];
    assert!((mark.as_f64().unwrap() - 19.0).abs() < 1e-9, "{mark}");
    assert_eq!(text, succeeds(&["-"], job), "from standard input");
}

#[test]
fn a_link_is_a_job_too() {
    for job in demo_jobs() {
        let text = serde_json::to_string(&job).unwrap();
        let link = succeeds(&["--link", "-"], &text);
        assert_eq!(link.trim(), link::encode(&job).unwrap());
        let address = format!("https://shop.example/#{}", link.trim());
        let plan = succeeds(&["-"], &text);
        assert_eq!(plan, succeeds(&[link.trim()], ""), "as an argument");
        assert_eq!(plan, succeeds(&[&address], ""), "as an address");
        assert_eq!(plan, succeeds(&["-"], &link), "from standard input");
        let back = succeeds(&["--job", link.trim()], "");
        assert_eq!(json::read_job(&back), Ok(job));
    }
}

#[test]
fn the_default_job_is_complete() {
    let text = succeeds(&["--default"], "");
    assert_eq!(json::read_job(&text), Ok(Job::default()));
    assert!(succeeds(&["--help"], "").contains("--default"));
}

#[test]
fn what_cannot_be_read_is_said_on_one_line_with_its_path() {
    fails(&[], "", "a job is missing");
    fails(&["--colour", "x"], "", "'--colour x' is not understood");
    fails(&["--colour"], "", "'--colour' is not understood");
    fails(
        &["no-such-file.json"],
        "",
        "there is no file no-such-file.json",
    );
    fails(&["-"], "", "standard input: ");
    fails(&["-"], "{", "standard input: ");
    fails(
        &["-"],
        r#"{ "shop": { "kerf": "2" } }"#,
        "standard input: shop.kerf: the unit is missing (character 1)",
    );
    fails(&["-"], "aAAAAAAAA", "the link was cut or changed");
    fails(&["-"], &" ".repeat(json::MOST_BYTES + 1), "is longer than");
    let folder = env!("CARGO_TARGET_TMPDIR");
    fails(&[folder], "", "cannot be read");
    let path = file(
        "wrong.json",
        r#"{ "part": { "bores": [{ "kind": "slot" }] } }"#,
    );
    fails(
        &[path.to_str().unwrap()],
        "",
        "part.bores[0].kind: unknown variant",
    );
}

#[test]
fn every_name_in_a_plan_or_a_job_has_a_type_for_javascript() {
    let types = include_str!("../src/js/types.ts");
    let jobs = demo_jobs().into_iter().chain([Job::default(), set_up()]);
    for job in jobs {
        check_names(&serde_json::to_value(&job).unwrap(), types);
        let plan = skimwright::plan::plan(&job);
        check_names(&serde_json::to_value(&plan).unwrap(), types);
        let advice = skimwright::measuring::advise(&job, &plan);
        check_names(&serde_json::to_value(&advice).unwrap(), types);
        let steps = skimwright::work::steps(&job, &plan);
        check_names(&serde_json::to_value(&steps).unwrap(), types);
    }
}

/// A job with what no other has: lists of speeds and feeds, and a pinned pass.
fn set_up() -> Job {
    let text = r#"{
        "shop": {
            "instruments": [{}],
            "machine": {
                "speeds": ["70 rpm", "115 rpm"],
                "feeds": { "from": "0.02 mm/rev", "to": null },
                "learned": {
                    "takes": {
                        "share": "90 %",
                        "share_deviation": "3 %",
                        "offset": "0 mm",
                        "offset_deviation": "2 µm",
                        "cuts": "5 pcs"
                    },
                    "paces": [{ "step": "hold", "factor": "110 %", "jobs": "2 pcs" }]
                }
            }
        },
        "record": { "events": [
            { "at": 1, "what": { "reading": { "of": { "diameter": { "at": "5 mm" } }, "value": "20 mm" } } },
            { "at": 2, "what": { "step": { "step": "rough", "state": { "skipped": "no" } } } },
            { "at": 3, "what": { "cut": { "kind": "rough", "dialled": "1 mm", "reads": "radius" } } },
            { "at": 4, "what": { "change": "new-edge" } },
            { "at": 5, "what": { "note": "" } }
        ] },
        "setup": { "support": "chuck", "pins": [{ "after": "18 mm", "infeed": "0.5 mm", "speed": "400 rpm" }] }
    }"#;
    serde_json::from_str(text).unwrap()
}

#[test]
fn every_choice_of_the_shop_has_a_type_for_javascript() {
    let types = include_str!("../src/js/types.ts");
    let all = [
        serde_json::to_value(Aim::ALL),
        serde_json::to_value(DialReads::ALL),
        serde_json::to_value(Rigidity::ALL),
        serde_json::to_value(Support::ALL),
        serde_json::to_value(JawFace::ALL),
        serde_json::to_value(InstrumentKind::ALL),
        serde_json::to_value(CutMadeKind::ALL),
        serde_json::to_value(Change::ALL),
        serde_json::to_value(WorkStep::ALL),
    ];
    for words in all {
        for word in words.unwrap().as_array().unwrap() {
            assert!(types.contains(&word.to_string()), "no type has {word}");
        }
    }
}

/// Every key stands in the types, and every word under a key that holds words from a short list.
fn check_names(value: &Value, types: &str) {
    const WORDS: [&str; 4] = ["kind", "code", "level", "confirmed"];
    match value {
        Value::Array(items) => items.iter().for_each(|item| check_names(item, types)),
        Value::Object(fields) => {
            for (name, value) in fields {
                assert!(
                    types.contains(&format!("{name}:")) || types.contains(&format!("{name}?:")),
                    "no type has the field {name}"
                );
                if let (true, Value::String(word)) = (WORDS.contains(&name.as_str()), value) {
                    assert!(
                        types.contains(&format!("\"{word}\"")),
                        "no type has the {name} {word}"
                    );
                }
                check_names(value, types);
            }
        }
        _ => {}
    }
}

#[test]
fn every_finding_has_a_type_for_javascript() {
    let types = include_str!("../src/js/types.ts");
    // No value of the enum can be listed without writing all of them down a third time; its source can be read.
    let variants: Vec<&str> = include_str!("../src/plan/finding.rs")
        .lines()
        .skip_while(|line| !line.starts_with("pub enum Code"))
        .take_while(|line| *line != "}")
        .filter_map(|line| line.strip_prefix("    "))
        .filter(|line| line.starts_with(|first: char| first.is_ascii_uppercase()))
        .map(|line| line.trim_end_matches([',', ' ', '{']))
        .collect();
    assert!(variants.contains(&"AllClear") && variants.contains(&"HardEnd"));
    for variant in variants {
        let mut code = String::new();
        for letter in variant.chars() {
            if letter.is_ascii_uppercase() && !code.is_empty() {
                code.push('-');
            }
            code.push(letter.to_ascii_lowercase());
        }
        assert!(
            types.contains(&format!("\"{code}\"")),
            "no type has the code {code}"
        );
    }
}
