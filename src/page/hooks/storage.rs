//! What is kept in local storage: the small copy of the open job, the shop's lathes and tools, and the view.

use gloo_events::EventListener;
use skimwright::job::OfferMark;
use skimwright::link::encode_kept;
use skimwright::quantity::Units;
use yew::prelude::*;

use crate::page::lathe::Thumb;
use crate::page::shelf::ShelfAction;
use crate::page::state::{Action, Look, Stage};
use crate::page::store::Store;
use crate::page::taught::Taught;
use crate::page::words::Language;

const JOB: &str = "skimwright.job";
/// What could not be read is put here rather than lost.
const ASIDE: &str = "skimwright.job.aside";
/// Whose the kept job is: its name, revision and time.
const OF: &str = "skimwright.job.of";
/// How many jobs are in the database.
const COUNT: &str = "skimwright.jobs";
/// Whether it was asked for storage that lasts.
const ASKED: &str = "skimwright.asked";
/// Which days have taught the lathes already.
const TAUGHT: &str = "skimwright.taught";
const VIEW: &str = "skimwright.view";
/// Lathes and tools that are kept for other jobs.
const SHOP: &str = "skimwright.shop";
/// The answer to an offer, kept on its owner's device; the mark of the offer stands behind it.
const ANSWER: &str = "skimwright.answer.";
/// What this page itself wrote into the address last.
const ADDRESS: &str = "skimwright.address";

fn storage() -> Option<web_sys::Storage> {
    web_sys::window()?.local_storage().ok()?
}

fn read(key: &str) -> Option<String> {
    storage()?.get_item(key).ok()?
}

/// Writes, and reads back: only what is really there counts as saved.
fn write(key: &str, text: &str) -> bool {
    let Some(storage) = storage() else {
        return false;
    };
    storage.set_item(key, text).is_ok() && read(key).as_deref() == Some(text)
}

/// The job kept in this browser, as link text.
pub(crate) fn stored_job() -> Option<String> {
    read(JOB)
}

/// The address that this page wrote last.
pub(crate) fn stored_address() -> Option<String> {
    read(ADDRESS)
}

pub(crate) fn store_address(address: &str) {
    write(ADDRESS, address);
}

/// Puts away what could not be read.
pub(crate) fn put_aside(text: &str) {
    write(ASIDE, text);
}

/// What was answered to an offer on this device.
pub(crate) fn kept_answer(to: OfferMark) -> Option<String> {
    read(&format!("{ANSWER}{to}"))
}

/// Keeps it.
pub(crate) fn keep_answer(to: OfferMark, text: &str) {
    write(&format!("{ANSWER}{to}"), text);
}

/// What was put away.
pub(crate) fn stored_aside() -> Option<String> {
    read(ASIDE)
}

/// Whose the kept job is, as it stands beside it.
pub(crate) fn stored_of() -> Option<String> {
    read(OF)
}

/// Keeps the small copy of the open job, and whose it is; `true` where the job stands there.
pub(crate) fn write_small(of: &str, job: &str) -> bool {
    let stands = write(JOB, job);
    write(OF, of);
    stands
}

/// Keeps whose the small copy is.
pub(crate) fn write_small_of(of: &str) {
    write(OF, of);
}

/// How many jobs there must be in the database; nought where that was never noted.
pub(crate) fn noted_count() -> usize {
    read(COUNT).and_then(|text| text.parse().ok()).unwrap_or(0)
}

/// Notes it, so that a database which the browser has cleared is told from one that was never filled.
pub(crate) fn note_count(count: usize) {
    let text = count.to_string();
    if read(COUNT).as_deref() != Some(text.as_str()) {
        write(COUNT, &text);
    }
}

/// Whether the browser was asked before to clear nothing by itself; notes that it was.
pub(crate) fn asked_to_last() -> bool {
    let asked = read(ASKED).is_some();
    if !asked {
        write(ASKED, "1");
    }
    asked
}

/// Reads the lathes and tools that are kept as the page opens, and again when another window changed them; keeps them
/// after every change made here.
#[hook]
pub(crate) fn use_shelf_kept(store: &Store) {
    let dispatcher = store.dispatcher();
    use_effect_with((), move |()| {
        let mut last = None;
        let mut find = move || {
            let found = read(SHOP);
            // Another window that only writes its job says nothing of these.
            if found != last {
                last.clone_from(&found);
                dispatcher.dispatch(Action::Shelf(ShelfAction::Found(found)));
            }
        };
        find();
        let listener =
            web_sys::window().map(|window| EventListener::new(&window, "storage", move |_| find()));
        move || drop(listener)
    });
    let dispatcher = store.dispatcher();
    let kept = store.shelves.kept.clone();
    use_effect_with(store.shelves.changes, move |changes| {
        let written = || encode_kept(&kept).is_ok_and(|text| write(SHOP, &text));
        if 0 < *changes && !written() {
            dispatcher.dispatch(Action::Shelf(ShelfAction::Refused));
        }
    });
}

/// What jobs had taught when the page opened.
pub(crate) fn stored_taught() -> Taught {
    read(TAUGHT).map_or_else(Taught::default, |text| Taught::read(&text))
}

/// Keeps what jobs have taught.
#[hook]
pub(crate) fn use_taught_kept(store: &Store) {
    use_effect_with(store.taught.clone(), |taught| {
        if *taught != Taught::default() {
            write(TAUGHT, &taught.text());
        }
    });
}

/// Keeps units, look, stage and thumb, and the language once the person chose one: until then the browser's is followed.
#[hook]
pub(crate) fn use_view_kept(store: &Store) {
    let first = use_memo((), {
        let language = store.tongue.language();
        move |()| language
    });
    use_effect_with(
        (
            store.units,
            store.look,
            store.stage,
            store.lathe.thumb,
            store.tongue.language(),
        ),
        move |(units, look, stage, thumb, language)| {
            let units = match units {
                Units::Metric => 'm',
                Units::InchDecimal => 'i',
                Units::InchFraction => 'f',
            };
            let look = match look {
                Look::System => 's',
                Look::Light => 'l',
                Look::Dark => 'd',
                Look::Sunlight => 'c',
            };
            let stage = match stage {
                Stage::Received => 'r',
                Stage::Wanted => 'w',
                Stage::Plan => 'p',
                Stage::Cut => 'c',
                Stage::HandBack => 'h',
            };
            let thumb = match thumb {
                Thumb::Right => 'r',
                Thumb::Left => 'l',
            };
            let is_chosen = language != &*first || stored_view().4.is_some();
            let language = match language {
                _ if !is_chosen => None,
                Language::English => Some('e'),
                Language::German => Some('d'),
                Language::Spanish => Some('s'),
            };
            let marks = [units, look, stage, thumb].into_iter().chain(language);
            write(VIEW, &marks.collect::<String>());
        },
    );
}

/// The view kept; whatever cannot be read is as at first. No language: none was chosen yet.
pub(crate) fn stored_view() -> (Units, Look, Stage, Thumb, Option<Language>) {
    let text = read(VIEW).unwrap_or_default();
    let mut marks = text.chars();
    let units = match marks.next() {
        Some('i') => Units::InchDecimal,
        Some('f') => Units::InchFraction,
        _ => Units::Metric,
    };
    let look = match marks.next() {
        Some('l') => Look::Light,
        Some('d') => Look::Dark,
        Some('c') => Look::Sunlight,
        _ => Look::System,
    };
    let stage = match marks.next() {
        Some('w') => Stage::Wanted,
        Some('p') => Stage::Plan,
        Some('c') => Stage::Cut,
        Some('h') => Stage::HandBack,
        _ => Stage::Received,
    };
    let thumb = match marks.next() {
        Some('l') => Thumb::Left,
        _ => Thumb::Right,
    };
    let language = match marks.next() {
        Some('e') => Some(Language::English),
        Some('d') => Some(Language::German),
        Some('s') => Some(Language::Spanish),
        _ => None,
    };
    (units, look, stage, thumb, language)
}
