//! The JSON form of a job and of a plan, for scripts.
//!
//! # Job
//! An object with `version` (always 1), `title`, `part`, `wanted` and `shop`. What is left out has the value of the
//! default job; what is unknown is refused. `null` stands for an empty field where one may be empty.
//!
//! Every number is a text as a person types it, **with its unit**: `"25.4 mm"`, `"1 3/8 in"`, `"31.2 - 0.4 mm"`,
//! `"120 m/min"`, `"0.1 mm/rev"`, `"2000 rpm"`, `"13 s"`. Choices are texts too: `"hardened-steel"`, `"h6"`, `"M12"`.
//! Names of fields are those of [`Job`] and of the types in it.
//!
//! ```json
//! {
//!   "title": "Arbor, 32 mm to 25 mm",
//!   "part": {
//!     "material": "hardened-steel",
//!     "head_diameter": "50 mm",
//!     "sections": [
//!       { "kind": "cylinder", "diameter": "32 mm", "length": "50 mm" },
//!       { "kind": "taper", "shoulder_diameter": "32 mm", "end_diameter": "30 mm", "length": "20 mm" },
//!       { "kind": "standard-taper", "taper": "morse-2", "past_gauge": "3 mm", "length": null }
//!     ],
//!     "features": [
//!       { "kind": "keyway", "width": "8 mm", "depth": "4 mm", "length": "25 mm", "from": "free-end", "start": "5 mm" }
//!     ],
//!     "bores": [
//!       { "kind": "tapped", "thread": "M12", "thread_depth": "30 mm", "drill_depth": "38 mm" },
//!       { "kind": "drilled", "diameter": "6 mm", "depth": "60 mm", "bottom": "drill-point", "end": "head-end" }
//!     ]
//!   },
//!   "wanted": {
//!     "diameter": "25 mm",
//!     "tolerance": { "class": "h6" },
//!     "length": "56 mm",
//!     "least_grip": "48 mm"
//!   },
//!   "shop": { "tool": "cubic-boron-nitride", "cut_off_method": "hand-disc", "kerf": null }
//! }
//! ```
//!
//! A section is placed by `from` (`"shoulder"` or `"free-end"`) and `start`; without them it begins where the one
//! before ends. A feature needs them, but for a tang. A hole is made from the free end unless its `end` says
//! `"head-end"`. A tolerance is `{ "class": "h6" }` or two deviations, `{ "upper": "0 mm", "lower": "-0.02 mm" }`.
//!
//! # Plan
//! The fields of [`Plan`](crate::plan::Plan). Numbers are plain, each always in the same unit:
//!
//! | quantity | unit |
//! | --- | --- |
//! | length, diameter, infeed | mm |
//! | area | mm² |
//! | volume, section modulus | mm³ |
//! | second moment of area | mm⁴ |
//! | force | N |
//! | torque | N·m |
//! | power | W |
//! | stress, strength, pressure | N/mm² |
//! | temperature difference | K |
//! | hardness | HRC |
//! | mass | g |
//! | density | kg/m³ |
//! | time | s |
//! | cutting speed, travel | m/min |
//! | feed | mm/rev |
//! | spindle speed | rev/min |
//! | angle | rad |
//!
//! A figure is an object with its `value`, its `range` (`null` or `low` and `high`) and its `working`. What could not
//! be computed is `null`, and `findings` says why: each has a `level` (`clear`, `caution`, `stop`), the `field` to mend
//! as a path in the job, such as `part.sections[0].length`, a `code`, and the lengths that belong to the code.
//! New fields and new codes may be added; those that are there keep their names.

use core::fmt;

use serde_json::Value;

use crate::job::Job;

/// Longest text of a job that is read, in bytes.
pub const MOST_BYTES: usize = 200_000;

/// Why a text is no job, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JsonError {
    /// The path of the field, such as `part.sections[0].length`; empty when the whole text is meant.
    pub path: String,
    /// What is wrong there.
    pub message: String,
}

impl fmt::Display for JsonError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.path.is_empty() {
            write!(f, "{}: ", self.path)?;
        }
        f.write_str(&self.message)
    }
}

impl core::error::Error for JsonError {}

/// The job in a JSON text.
///
/// # Errors
/// [`JsonError`] when the text is no JSON, holds a field that a job does not have, lacks one that has no default, or a
/// field cannot be read. Numbers outside what a field allows are no error here: the plan has a finding for them.
///
/// # Example
/// ```
/// use skimwright::json;
/// let job = json::read_job(r#"{ "wanted": { "diameter": "5/8 in" } }"#)?;
/// assert!((job.wanted.diameter.value().to_mm() - 15.875).abs() < 1e-9);
/// let error = json::read_job(r#"{ "wanted": { "diameter": "5/8" } }"#).unwrap_err();
/// assert_eq!(error.path, "wanted.diameter");
/// # Ok::<(), json::JsonError>(())
/// ```
pub fn read_job(text: &str) -> Result<Job, JsonError> {
    check_length(text)?;
    let tree = serde_json::from_str(text).map_err(|error| no_json(&error))?;
    check_lists(&tree, "")?;
    // Read once more from the text, so that messages can name line and column.
    read_from(&mut serde_json::Deserializer::from_str(text))
}

/// The same for a text that a program made of an object, so that the places of letters in it mean nothing: they are
/// left out of the messages.
///
/// # Errors
/// As [`read_job`].
pub fn read_job_object(text: &str) -> Result<Job, JsonError> {
    check_length(text)?;
    let tree = serde_json::from_str(text).map_err(|error| no_json(&error))?;
    check_lists(&tree, "")?;
    read_from(tree)
}

/// Where a list belongs.
const LISTS: [&str; 9] = [
    "part.head_beyond",
    "part.sections",
    "part.features",
    "part.bores",
    "shop.machine.speeds",
    "shop.machine.feeds",
    "setup.near.readings",
    "setup.far.readings",
    "setup.pins",
];

/// Refuses a list where an object belongs: serde would take its items for the fields in their order.
fn check_lists(tree: &Value, path: &str) -> Result<(), JsonError> {
    match tree {
        Value::Array(_) if !LISTS.contains(&path) => Err(JsonError {
            path: path.to_owned(),
            message: "a list has no place here".to_owned(),
        }),
        Value::Array(items) => (0..).zip(items).try_for_each(|(index, item): (usize, _)| {
            check_lists(item, &format!("{path}[{index}]"))
        }),
        Value::Object(fields) => fields.iter().try_for_each(|(name, field)| {
            let dot = if path.is_empty() { "" } else { "." };
            check_lists(field, &format!("{path}{dot}{name}"))
        }),
        _ => Ok(()),
    }
}

fn check_length(text: &str) -> Result<(), JsonError> {
    if text.len() <= MOST_BYTES {
        return Ok(());
    }
    Err(JsonError {
        path: String::new(),
        message: format!("the text is longer than {MOST_BYTES} bytes"),
    })
}

fn no_json(error: &serde_json::Error) -> JsonError {
    JsonError {
        path: String::new(),
        message: error.to_string(),
    }
}

fn read_from<'de, D>(reader: D) -> Result<Job, JsonError>
where
    D: serde::Deserializer<'de, Error = serde_json::Error>,
{
    serde_path_to_error::deserialize(reader).map_err(|error| JsonError {
        path: match error.path().to_string() {
            // The whole of it.
            path if path == "." => String::new(),
            path => path,
        },
        message: error.inner().to_string(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

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
            (r#"{ "version": 2 }"#, "version", "version 2"),
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
        let example: String = include_str!("json.rs")
            .lines()
            .skip_while(|line| !line.ends_with("```json"))
            .skip(1)
            .take_while(|line| !line.ends_with("```"))
            .map(|line| line.trim_start_matches("//!"))
            .collect();
        let job = read_job(&example).unwrap();
        assert_eq!((job.part.sections.len(), job.part.bores.len()), (3, 2));
        let written = serde_json::to_string(&job).unwrap();
        assert_eq!(read_job(&written), Ok(job));
    }
}
