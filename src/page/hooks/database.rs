//! The database of all jobs in the browser.
//!
//! A job is a record of plain values under its name: `form` (the version of this form), `id`, `title`, `state`,
//! `created` and `changed` in milliseconds since the beginning of 1970, `trashed`, `job` as text, `revision` and `tab`.
//! A record of a newer form is read for its title alone, and never written.

use std::rc::Rc;

use js_sys::{Function, Object, Promise, Reflect};
use skimwright::job::Progress;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    DomException, IdbDatabase, IdbObjectStore, IdbObjectStoreParameters, IdbOpenDbRequest,
    IdbRequest, IdbTransaction,
};

use crate::page::jobs::{Entry, FORM, Written};

const NAME: &str = "skimwright";
const JOBS: &str = "jobs";
/// The version of the database itself: which stores it has.
const VERSION: u32 = 1;

#[wasm_bindgen]
extern "C" {
    /// A database whose transactions take options: the bindings have them among what is not settled.
    #[wasm_bindgen(extends = Object)]
    type WithOptions;

    #[wasm_bindgen(method, catch, js_name = transaction)]
    fn transaction_with(
        this: &WithOptions,
        store: &str,
        mode: &str,
        options: &Object,
    ) -> Result<IdbTransaction, JsValue>;
}

/// Why something could not be done with the database.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Failure {
    /// There is no room.
    Full,
    /// A newer version of the page has changed it.
    Newer,
    /// Anything else: it is refused, or was closed.
    Refused,
}

impl From<JsValue> for Failure {
    fn from(error: JsValue) -> Self {
        Self::named(error.dyn_ref::<DomException>())
    }
}

impl Failure {
    fn named(error: Option<&DomException>) -> Self {
        match error.map(DomException::name).as_deref() {
            Some("QuotaExceededError") => Self::Full,
            Some("VersionError") => Self::Newer,
            _ => Self::Refused,
        }
    }
}

/// What became of one job that was to be written.
pub(crate) enum Outcome {
    Written(Written),
    /// Another tab had written this in the meantime; it stays.
    Conflict(Entry),
}

/// The database, open.
pub(crate) struct Database(IdbDatabase);

impl Database {
    pub(crate) async fn open() -> Result<Self, Failure> {
        let window = web_sys::window().ok_or(Failure::Refused)?;
        let factory = window.indexed_db()?.ok_or(Failure::Refused)?;
        let request = factory.open_with_u32(NAME, VERSION)?;
        let upgrade = {
            let request = request.clone();
            Closure::once_into_js(move || make_store(&request))
        };
        request.set_onupgradeneeded(Some(upgrade.unchecked_ref()));
        let database: IdbDatabase = result_of(&request).await?.unchecked_into();
        let close = {
            let database = database.clone();
            Closure::once_into_js(move || database.close())
        };
        // A newer version of the page in another tab must not wait for this one.
        database.set_onversionchange(Some(close.unchecked_ref()));
        Ok(Self(database))
    }

    /// Every job.
    pub(crate) async fn all(&self) -> Result<Vec<Entry>, Failure> {
        let store = self.0.transaction_with_str(JOBS)?.object_store(JOBS)?;
        let records = result_of(&store.get_all()?).await?;
        let records: js_sys::Array = records.unchecked_into();
        Ok(records.iter().filter_map(|it| read_entry(&it)).collect())
    }

    /// One job.
    pub(crate) async fn one(&self, id: &str) -> Result<Option<Entry>, Failure> {
        let store = self.0.transaction_with_str(JOBS)?.object_store(JOBS)?;
        let record = result_of(&store.get(&id.into())?).await?;
        Ok(read_entry(&record))
    }

    /// Writes jobs in one transaction, and comes back when the browser has said that they are on the disk.
    ///
    /// One that another tab wrote since this one saw it is left as it is.
    pub(crate) async fn write(
        &self,
        entries: &[Entry],
        tab: &str,
        now: u64,
    ) -> Result<Vec<Outcome>, Failure> {
        let options = Object::new();
        Reflect::set(&options, &"durability".into(), &"strict".into())?;
        let database: &WithOptions = self.0.unchecked_ref();
        let transaction = database.transaction_with(JOBS, "readwrite", &options)?;
        let complete = completion(&transaction);
        let written = write_all(&transaction.object_store(JOBS)?, entries, tab, now).await;
        if written.is_err() {
            // Whatever went wrong, half of it must not stay.
            let _ = transaction.abort();
        }
        let completed = JsFuture::from(complete).await;
        let outcomes = written?;
        match completed {
            Ok(_) => Ok(outcomes),
            Err(_) => Err(Failure::named(transaction.error().as_ref())),
        }
    }
}

async fn write_all(
    store: &IdbObjectStore,
    entries: &[Entry],
    tab: &str,
    now: u64,
) -> Result<Vec<Outcome>, Failure> {
    let mut outcomes = Vec::with_capacity(entries.len());
    for entry in entries {
        let there = result_of(&store.get(&(&*entry.id).into())?).await?;
        let there = read_entry(&there);
        let outcome = match there {
            Some(there) if overtaken(entry, &there, tab) => Outcome::Conflict(there),
            there => {
                let seen = there.as_ref().map_or(0, |it| it.revision);
                let known = [there.as_ref().map_or(0, |it| it.created), entry.created];
                let written = Written {
                    id: Rc::clone(&entry.id),
                    edits: entry.edits,
                    revision: seen.wrapping_add(1),
                    created: known.into_iter().find(|it| 0 < *it).unwrap_or(now),
                    changed: now,
                    gone: entry.gone,
                };
                if entry.gone {
                    result_of(&store.delete(&(&*entry.id).into())?).await?;
                } else {
                    let record = record_of(entry, &written, tab)?;
                    result_of(&store.put(&record)?).await?;
                }
                Outcome::Written(written)
            }
        };
        outcomes.push(outcome);
    }
    Ok(outcomes)
}

/// Whether another tab wrote since this one saw the job; what this tab wrote itself may not have been told yet.
fn overtaken(entry: &Entry, there: &Entry, tab: &str) -> bool {
    there.newer || (there.revision != entry.revision && *there.tab != *tab)
}

fn make_store(request: &IdbOpenDbRequest) {
    let Ok(database) = request.result() else {
        return;
    };
    let database: IdbDatabase = database.unchecked_into();
    let parameters: IdbObjectStoreParameters = Object::new().unchecked_into();
    parameters.set_key_path(&"id".into());
    // Refused, the opening fails and says so.
    let _ = database.create_object_store_with_optional_parameters(JOBS, &parameters);
}

/// What a request brings.
async fn result_of(request: &IdbRequest) -> Result<JsValue, Failure> {
    let answered = Promise::new(&mut |done: Function, failed: Function| {
        request.set_onsuccess(Some(&done));
        request.set_onerror(Some(&failed));
    });
    match JsFuture::from(answered).await {
        Ok(_) => Ok(request.result()?),
        Err(_) => Err(Failure::named(request.error().ok().flatten().as_ref())),
    }
}

/// Kept when a transaction is complete, broken when it is not.
fn completion(transaction: &IdbTransaction) -> Promise {
    Promise::new(&mut |done: Function, failed: Function| {
        transaction.set_oncomplete(Some(&done));
        transaction.set_onabort(Some(&failed));
    })
}

fn record_of(entry: &Entry, written: &Written, tab: &str) -> Result<Object, JsValue> {
    let record = Object::new();
    let put = |name: &str, value: JsValue| Reflect::set(&record, &name.into(), &value).map(|_| ());
    put("form", FORM.into())?;
    put("id", (&*entry.id).into())?;
    put("title", (&*entry.title).into())?;
    put("state", entry.progress.code().into())?;
    put("created", milliseconds(written.created))?;
    put("changed", milliseconds(written.changed))?;
    put("trashed", entry.trashed.into())?;
    put("job", (&*entry.text).into())?;
    put("revision", written.revision.into())?;
    put("tab", tab.into())?;
    Ok(record)
}

/// A job from its record; `None` where there is none. Whatever is missing is as in a job that was never written.
fn read_entry(record: &JsValue) -> Option<Entry> {
    if !record.is_object() {
        return None;
    }
    let get = |name: &str| Reflect::get(record, &name.into()).unwrap_or(JsValue::UNDEFINED);
    let text = |name: &str| Rc::from(get(name).as_string().unwrap_or_default());
    let number = |name: &str| whole(get(name).as_f64().unwrap_or_default());
    let progress = get("state").as_string();
    let progress = progress.as_deref().and_then(Progress::from_code);
    Some(Entry {
        id: get("id").as_string()?.into(),
        title: text("title"),
        progress: progress.unwrap_or_default(),
        created: number("created"),
        changed: number("changed"),
        trashed: get("trashed").is_truthy(),
        text: text("job"),
        revision: u32::try_from(number("revision")).unwrap_or_default(),
        tab: text("tab"),
        newer: u64::from(FORM) < number("form"),
        edits: 0,
        kept: 0,
        gone: false,
    })
}

/// Milliseconds as the browser has them: exact for more years than any job is kept.
#[expect(clippy::cast_precision_loss, reason = "exact up to the year 287 000")]
fn milliseconds(time: u64) -> JsValue {
    JsValue::from_f64(time as f64)
}

/// A number of the browser without its fraction; what is none is nought.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast from a float stops at the ends of the range"
)]
pub(crate) fn whole(number: f64) -> u64 {
    number as u64
}
