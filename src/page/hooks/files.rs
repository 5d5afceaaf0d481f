//! Files of jobs. Reading and writing JSON is in a module of its own, which the start script loads when it is asked for
//! the first time.

use js_sys::{Function, JsString, Promise, Reflect};
use skimwright::link::{KeptJob, UnreadJob, read_lines, write_lines};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::update::call_shell;

/// Why there is no file, or no job in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct FilesError {
    /// `not-loaded` when the module cannot be had, else the code of the core: `too-long`, `not-json`, `not-ours`, `newer`,
    /// `form`, or what is wrong with a kept text.
    pub(crate) code: String,
    /// A sentence for somebody who knows the form.
    #[allow(dead_code, reason = "it is for whoever looks into it")]
    pub(crate) message: String,
}

/// The text of a file with these jobs.
pub(crate) async fn job_file_text(kept: &[KeptJob]) -> Result<String, FilesError> {
    let lines: Vec<Result<KeptJob, UnreadJob>> = kept.iter().cloned().map(Ok).collect();
    call("writeJobFile", &write_lines(&lines)).await
}

/// The jobs in the text of a file, each or what is wrong with it.
pub(crate) async fn read_job_file(
    text: &str,
) -> Result<Vec<Result<KeptJob, UnreadJob>>, FilesError> {
    let lines = call("readJobFile", text).await?;
    read_lines(&lines).ok_or_else(|| not_loaded(&JsValue::NULL))
}

/// Calls a function of the module with a text.
async fn call(name: &str, text: &str) -> Result<String, FilesError> {
    let files = load().await.map_err(|error| not_loaded(&error))?;
    let function = Reflect::get(&files, &JsString::from(name))
        .and_then(JsCast::dyn_into::<Function>)
        .map_err(|error| not_loaded(&error))?;
    let answer = function
        .call1(&JsValue::UNDEFINED, &JsString::from(text))
        .map_err(|error| FilesError {
            code: text_of(&error, "code"),
            message: text_of(&error, "message"),
        })?;
    answer.as_string().ok_or_else(|| not_loaded(&answer))
}

/// The module's functions.
async fn load() -> Result<JsValue, JsValue> {
    let promise: Promise = call_shell("files")?.dyn_into()?;
    JsFuture::from(promise).await
}

fn not_loaded(error: &JsValue) -> FilesError {
    FilesError {
        code: "not-loaded".to_owned(),
        message: text_of(error, "message"),
    }
}

/// A text of an error; empty where it has none.
fn text_of(error: &JsValue, name: &str) -> String {
    let found = Reflect::get(error, &JsString::from(name)).ok();
    found.and_then(|text| text.as_string()).unwrap_or_default()
}
