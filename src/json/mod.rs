//! The JSON form of a job and of a plan, for scripts.
//!
//! # Job
//! An object with `version`, `title`, `part`, `wanted`, `shop`, `setup` and `record`. What is left out has the value of
//! the default job; what is unknown is refused. `null` stands for an empty field where one may be empty. The version is
//! 2; jobs of version 1, which had no record, no instruments, nothing learned and no temperatures, are read too, and a
//! higher one is refused as newer.
//!
//! Every number is a text as a person types it, **with its unit**: `"25.4 mm"`, `"1 3/8 in"`, `"31.2 - 0.4 mm"`,
//! `"120 m/min"`, `"0.1 mm/rev"`, `"2000 rpm"`, `"13 s"`, `"31 °C"`. Choices are texts too: `"hardened-steel"`, `"h6"`, `"M12"`.
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
//!   "shop": {
//!     "tool": "cubic-boron-nitride",
//!     "cut_off_method": "hand-disc",
//!     "kerf": null,
//!     "instruments": [{ "name": "Outside, 25 to 50", "kind": "micrometer", "graduation": "0.001 mm" }]
//!   },
//!   "setup": { "room_temperature": "26 °C" },
//!   "record": {
//!     "events": [
//!       { "at": 1764000000, "what": { "step": { "step": "rough", "state": "started" } } },
//!       { "at": 1764000060, "what": { "cut": { "kind": "rough", "dialled": "0.5 mm", "reads": "radius" } } },
//!       {
//!         "at": 1764000120,
//!         "what": {
//!           "reading": { "of": { "diameter": "middle" }, "value": "31.02 mm", "instrument": 0, "temperature": "31 °C" }
//!         }
//!       },
//!       { "at": 1764000180, "struck": true, "what": { "reading": { "of": "length", "value": "560.1 mm" } } },
//!       { "at": 1764000200, "what": { "change": "new-edge" } },
//!       { "at": 1764000210, "what": { "note": "Chatters above 400 rpm" } },
//!       { "at": 1764000300, "what": { "step": { "step": "cut-off", "state": { "skipped": "short enough" } } } }
//!     ]
//!   }
//! }
//! ```
//!
//! A section is placed by `from` (`"shoulder"` or `"free-end"`) and `start`; without them it begins where the one
//! before ends. A feature needs them, but for a tang. A hole is made from the free end unless its `end` says
//! `"head-end"`. A tolerance is `{ "class": "h6" }` or two deviations, `{ "upper": "0 mm", "lower": "-0.02 mm" }`.
//!
//! An event of the record is `at` seconds since the beginning of 1970, UTC, and says `what` happened as one field: a
//! `reading`, a `cut`, a `change`, a `note` or a `step`. A diameter is measured `"near-shoulder"`, at the `"middle"`, near
//! the `"free-end"` or `{ "at": "12.5 mm" }` from the shoulder. There are at most [`Record::MOST_EVENTS`](crate::job::Record)
//! events. An instrument is named by its place in `shop.instruments`, from 0.
//!
//! # File of jobs
//! [`read_jobs`] says what it looks like.
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

mod file;
mod kept;
mod read;

pub use file::{FiledJob, FiledJobError, JobFileError, read_jobs, write_jobs};
pub use kept::{KeptFileError, file_of_kept, kept_of_file};
pub use read::{JsonError, MOST_BYTES, read_job, read_job_object};

#[cfg(test)]
mod read_tests;
