//! What JavaScript calls: each function reads its job, calls the core and writes the answer.
#![expect(
    unreachable_pub,
    reason = "what is exported to JavaScript must be public, though no Rust code reaches it"
)]

use js_sys::{JSON, JsString, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use skimwright::demo;
use skimwright::job::Job;
use skimwright::json::{self, JsonError};
use skimwright::link::{self, LinkError};
use skimwright::quantity::{Entered, Length, Unit};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("types.ts");

#[wasm_bindgen]
extern "C" {
    /// A job of which any field may be left out.
    #[wasm_bindgen(typescript_type = "JobInput")]
    pub type JobInput;
    /// A complete job.
    #[wasm_bindgen(typescript_type = "Job")]
    pub type JobOutput;
    /// Several complete jobs.
    #[wasm_bindgen(typescript_type = "Job[]")]
    pub type JobList;
    /// A plan.
    #[wasm_bindgen(typescript_type = "Plan")]
    pub type PlanOutput;
    /// What a part could become.
    #[wasm_bindgen(typescript_type = "Becomes[]")]
    pub type BecomesList;
    /// What to do next at the lathe.
    #[wasm_bindgen(typescript_type = "Advice")]
    pub type AdviceOutput;
    /// The steps of the work.
    #[wasm_bindgen(typescript_type = "StepNow[]")]
    pub type StepList;
    /// The unit of a bare number.
    #[wasm_bindgen(typescript_type = "LengthUnit")]
    pub type LengthUnit;
}

/// Computes all that follows from a job. What is wrong with its numbers stands in the plan's findings.
///
/// Throws a `SkimwrightError` with the code "job" when it is no job.
#[wasm_bindgen]
pub fn plan(job: &JobInput) -> Result<PlanOutput, JsValue> {
    to_js(&skimwright::plan::plan(&read(job)?)).map(JsValue::into)
}

/// What to do next at the lathe, by the plan of a job and its record.
///
/// Throws a `SkimwrightError` with the code "job" when it is no job.
#[wasm_bindgen]
pub fn advise(job: &JobInput) -> Result<AdviceOutput, JsValue> {
    let job = read(job)?;
    let plan = skimwright::plan::plan(&job);
    to_js(&skimwright::measuring::advise(&job, &plan)).map(JsValue::into)
}

/// The steps of the work in working order, and how they stand by the record.
///
/// Throws a `SkimwrightError` with the code "job" when it is no job.
#[wasm_bindgen]
pub fn steps(job: &JobInput) -> Result<StepList, JsValue> {
    let job = read(job)?;
    let plan = skimwright::plan::plan(&job);
    to_js(&skimwright::work::steps(&job, &plan)).map(JsValue::into)
}

/// Everything else that the part of a job could become, the best first.
///
/// Throws a `SkimwrightError` with the code "job" when it is no job.
#[wasm_bindgen]
pub fn becomes(job: &JobInput) -> Result<BecomesList, JsValue> {
    to_js(&skimwright::receiver::becomes(&read(job)?)).map(JsValue::into)
}

/// The job that stands for everything left out.
#[wasm_bindgen(js_name = defaultJob)]
pub fn default_job() -> Result<JobOutput, JsValue> {
    to_js(&Job::default()).map(JsValue::into)
}

/// The example jobs of the page.
#[wasm_bindgen(js_name = demoJobs)]
pub fn demo_jobs() -> Result<JobList, JsValue> {
    to_js(&demo::demo_jobs()).map(JsValue::into)
}

/// The job as the text that a link carries behind its #.
///
/// Throws a `SkimwrightError` with the code "job" when it is no job, or "too-large".
#[wasm_bindgen]
pub fn encode(job: &JobInput) -> Result<String, JsValue> {
    link::encode(&read(job)?).map_err(link_error)
}

/// The job in the text of a link, or in a whole address.
///
/// Throws a `SkimwrightError` whose code says what is wrong with the text.
#[wasm_bindgen]
pub fn decode(text: &str) -> Result<JobOutput, JsValue> {
    to_js(&link::decode(text).map_err(link_error)?).map(JsValue::into)
}

/// The text of a file with jobs, from the lines that the page keeps: a line for each job with "+", its id, its state,
/// when it was changed in seconds since 1970, and its text, parted by tabulators.
///
/// Throws a `SkimwrightError` whose code says what is wrong.
#[wasm_bindgen(js_name = writeJobFile)]
pub fn write_job_file(kept: &str) -> Result<String, JsValue> {
    json::file_of_kept(kept).map_err(|wrong| error(wrong.code(), "", &wrong.to_string()))
}

/// The jobs in the text of a file as such lines; a job that cannot be read is a line with "-", its id, its title, the path
/// of the field and what is wrong there.
///
/// Throws a `SkimwrightError` with the code "too-long", "not-json", "not-ours", "newer" or "form" when it is no file of
/// jobs.
#[wasm_bindgen(js_name = readJobFile)]
pub fn read_job_file(text: &str) -> Result<String, JsValue> {
    json::kept_of_file(text).map_err(|wrong| error(wrong.code(), "", &wrong.to_string()))
}

/// Millimetres of a length as a person types it, such as "1 3/8 in" or "31,2 - 0,4"; a bare number takes `unit`.
///
/// Throws a `SkimwrightError` with the code "length".
#[wasm_bindgen(js_name = readLength)]
pub fn read_length(text: &str, unit: &LengthUnit) -> Result<f64, JsValue> {
    let unit = match AsRef::<JsValue>::as_ref(unit).as_string().as_deref() {
        Some("mm") => Unit::Millimetre,
        Some("in") => Unit::Inch,
        _ => return Err(error("unit", "", "the unit must be \"mm\" or \"in\"")),
    };
    Entered::<Length>::read(text, unit)
        .map(|length| length.value().to_mm())
        .map_err(|wrong| error("length", "", &wrong.to_string()))
}

/// Reads a job through its JSON text: the one form that files have too. A direct reader of objects would pass over
/// unknown fields without a word, and would not come back from an object that holds itself.
fn read(job: &JobInput) -> Result<Job, JsValue> {
    let text = JSON::stringify(job.as_ref())
        .map_err(|_| error("job", "", "the job cannot be written as JSON"))?;
    // What has no JSON form, such as undefined or a function, is no text.
    let text = AsRef::<JsValue>::as_ref(&text).as_string();
    let text = text.ok_or_else(|| error("job", "", "the job must be an object"))?;
    json::read_job_object(&text)
        .map_err(|JsonError { path, message }| error("job", &path, &message))
}

/// Optional values become null and maps plain objects, as in JSON.
fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value
        .serialize(&Serializer::json_compatible())
        .map_err(|wrong| error("internal", "", &wrong.to_string()))
}

fn link_error(wrong: LinkError) -> JsValue {
    error(wrong.code(), "", &wrong.to_string())
}

/// An `Error` with a code and the path of the field.
fn error(code: &str, path: &str, message: &str) -> JsValue {
    let error = JsValue::from(js_sys::Error::new(message));
    for (name, value) in [("code", code), ("path", path)] {
        // A new object takes every property.
        let _ = Reflect::set(&error, &JsString::from(name), &JsString::from(value));
    }
    error
}
