//! Keeps every job: in the database on every change, and the open one a second time in local storage, at once.

use core::cell::{Cell, RefCell};
use std::rc::Rc;

use data_encoding::BASE64URL_NOPAD;
use gloo_events::EventListener;
use gloo_timers::callback::{Interval, Timeout};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use super::database::{Database, Failure, Outcome, whole};
use super::storage::{
    note_count, noted_count, stored_aside, stored_of, write_small, write_small_of,
};
use super::tabs::{Tabs, Word};
use crate::page::jobs::{Entry, Found, JobId, JobsAction, Keeping, Of, Trouble, write_of};
use crate::page::state::{Action, State};
use crate::page::store::Store;

/// How long after a refusal it is tried again.
const AGAIN_IN_MS: u32 = 3000;

/// How often it is asked whether another tab still has the job open.
const ASK_IN_MS: u32 = 3000;

/// A random name for this tab.
pub(crate) fn new_tab() -> Rc<str> {
    let mut bytes = [0_u8; 12];
    let random = web_sys::window()
        .and_then(|window| window.crypto().ok())
        .is_some_and(|crypto| crypto.get_random_values_with_u8_array(&mut bytes).is_ok());
    if random {
        BASE64URL_NOPAD.encode(&bytes).into()
    } else {
        // Two tabs that begin within the same microsecond are one person's too many.
        let chance = js_sys::Math::random().to_bits() ^ js_sys::Date::now().to_bits();
        chance.to_string().into()
    }
}

type Dispatcher = UseReducerDispatcher<State>;

/// What does the writing, for as long as the page is there.
struct Keeper {
    tab: Rc<str>,
    tabs: Tabs,
    database: RefCell<Option<Rc<Database>>>,
    /// What is to be written next, and its time.
    next: RefCell<Option<(Vec<Entry>, u64)>>,
    busy: Cell<bool>,
    last_time: Cell<u64>,
    /// Whether another tab has said of late that it has the same job open.
    heard: Cell<bool>,
    /// The job that is open here.
    current: RefCell<Option<JobId>>,
    dispatcher: Dispatcher,
}

impl Keeper {
    /// The time, later than any that was given before and than this one.
    fn time_after(&self, other: u64) -> u64 {
        let now = whole(js_sys::Date::now());
        let time = now.max(self.last_time.get() + 1).max(other + 1);
        self.last_time.set(time);
        time
    }

    async fn database(&self) -> Result<Rc<Database>, Failure> {
        if let Some(open) = self.database.borrow().clone() {
            return Ok(open);
        }
        let opened = Rc::new(Database::open().await?);
        *self.database.borrow_mut() = Some(Rc::clone(&opened));
        Ok(opened)
    }

    fn act(&self, action: JobsAction) {
        self.dispatcher.dispatch(Action::Jobs(action));
    }

    /// Reads all that is kept.
    async fn read(&self) {
        let read = match self.database().await {
            Ok(database) => database.all().await,
            Err(failure) => Err(failure),
        };
        self.act(match read {
            Ok(entries) => JobsAction::Found(Rc::new(Found {
                entries,
                noted: noted_count(),
                aside: stored_aside(),
            })),
            Err(Failure::Newer) => JobsAction::NoDatabase(Keeping::Newer),
            Err(_) => JobsAction::NoDatabase(Keeping::One),
        });
    }

    /// Writes what waits, and what comes to wait meanwhile.
    fn begin(self: &Rc<Self>) {
        if self.busy.replace(true) {
            return;
        }
        let keeper = Rc::clone(self);
        spawn_local(async move {
            while keeper.write_next().await {}
            keeper.busy.set(false);
        });
    }

    /// Writes what waits at once, though the last writing may not have come back: the page may be about to go.
    fn hurry(self: &Rc<Self>) {
        let keeper = Rc::clone(self);
        spawn_local(async move {
            keeper.write_next().await;
        });
    }

    async fn write_next(&self) -> bool {
        let Some((entries, time)) = self.next.take() else {
            return false;
        };
        let written = match self.database().await {
            Ok(database) => database.write(&entries, &self.tab, time).await,
            Err(failure) => Err(failure),
        };
        match written {
            Ok(outcomes) => self.tell(outcomes),
            Err(Failure::Newer) => self.act(JobsAction::NoDatabase(Keeping::Newer)),
            Err(failure) => {
                // It may have been closed from outside: the next try opens it anew.
                self.database.take();
                self.act(JobsAction::Failed(match failure {
                    Failure::Full => Trouble::Full,
                    _ => Trouble::Refused,
                }));
                let dispatcher = self.dispatcher.clone();
                Timeout::new(AGAIN_IN_MS, move || {
                    dispatcher.dispatch(Action::Jobs(JobsAction::TryAgain));
                })
                .forget();
            }
        }
        true
    }

    fn tell(&self, outcomes: Vec<Outcome>) {
        let mut written = Vec::new();
        for outcome in outcomes {
            match outcome {
                Outcome::Written(one) => {
                    self.tabs.tell(Word::Wrote, &one.id);
                    written.push(one);
                }
                Outcome::Conflict(stored) => self.act(JobsAction::Conflict(Rc::new(stored))),
            }
        }
        self.act(JobsAction::Written(Rc::new(written)));
    }

    /// What another tab says.
    fn hear(self: &Rc<Self>, word: Word, id: String) {
        let is_open = self.current.borrow().as_deref() == Some(id.as_str());
        match word {
            Word::Wrote => {
                let keeper = Rc::clone(self);
                spawn_local(async move {
                    let Ok(database) = keeper.database().await else {
                        return;
                    };
                    match database.one(&id).await {
                        Ok(Some(entry)) => keeper.act(JobsAction::Seen(Rc::new(entry))),
                        Ok(None) => keeper.act(JobsAction::SeenGone(id.into())),
                        // What was not read is found out when it is written.
                        Err(_) => {}
                    }
                });
            }
            Word::Opened if is_open => self.tabs.tell(Word::Also, &id),
            Word::Also if is_open => {
                self.heard.set(true);
                self.act(JobsAction::Elsewhere(true));
            }
            Word::Left if is_open => {
                self.act(JobsAction::Elsewhere(false));
                // There may be a third.
                self.tabs.tell(Word::Opened, &id);
            }
            _ => {}
        }
    }

    /// Asks whether another tab still has the job open: one that was killed cannot say that it left.
    fn ask_again(&self) {
        if !self.heard.replace(false) {
            self.act(JobsAction::Elsewhere(false));
        }
        if let Some(id) = self.current.borrow().as_ref() {
            self.tabs.tell(Word::Opened, id);
        }
    }

    /// Notes which job is open here, and tells the others.
    fn note_open(&self, id: Option<&JobId>) {
        let before = self.current.replace(id.cloned());
        if before.as_ref() == id {
            return;
        }
        if let Some(before) = before {
            self.tabs.tell(Word::Left, &before);
        }
        if let Some(id) = id {
            self.tabs.tell(Word::Opened, id);
        }
    }
}

/// Keeps the jobs, and listens to the other tabs.
#[hook]
pub(crate) fn use_jobs_kept(store: &Store) {
    let keeper = {
        let (tab, dispatcher) = (store.jobs.tab.clone(), store.dispatcher());
        use_memo((), move |()| {
            Rc::new(Keeper {
                tab,
                tabs: Tabs::open(),
                database: RefCell::new(None),
                next: RefCell::new(None),
                busy: Cell::new(false),
                last_time: Cell::new(0),
                heard: Cell::new(false),
                current: RefCell::new(None),
                dispatcher,
            })
        })
    };
    {
        let keeper = Rc::clone(&keeper);
        use_effect_with((), move |()| {
            let listeners = listen(&keeper);
            spawn_local(async move { keeper.read().await });
            move || drop(listeners)
        });
    }
    {
        let keeper = Rc::clone(&keeper);
        let current = store.jobs.current.clone();
        use_effect_with(current, move |current| keeper.note_open(current.as_ref()));
    }
    {
        let keeper = Rc::clone(&keeper);
        use_effect_with(store.jobs.elsewhere, move |elsewhere| {
            let asks = elsewhere.then(|| Interval::new(ASK_IN_MS, move || keeper.ask_again()));
            move || drop(asks)
        });
    }
    // A change, or another try.
    {
        let (keeper, latest) = (Rc::clone(&keeper), store.clone());
        use_effect_with((store.jobs.calls, store.jobs.keeping), move |_| {
            let jobs = &latest.jobs;
            let times = jobs.list.iter().map(|it| it.changed);
            let time = keeper.time_after(times.max().unwrap_or_default());
            if let Some(open) = jobs.open_entry() {
                keep_small(open, &keeper.tab, time, &latest);
            }
            let waiting = jobs.waiting();
            if jobs.keeping == Keeping::All && !waiting.is_empty() {
                *keeper.next.borrow_mut() = Some((waiting, time));
                keeper.begin();
            }
        });
    }
    let count = (store.jobs.keeping == Keeping::All).then(|| store.jobs.kept_count());
    use_effect_with(count, |count| {
        if let Some(count) = count {
            note_count(*count);
        }
    });
    // What the browser has said to be kept is the base of the next change.
    let open = store.jobs.open_entry();
    let kept = open.map(|it| (it.id.clone(), it.revision, it.waits()));
    let (keeper, latest) = (Rc::clone(&keeper), store.clone());
    use_effect_with(kept, move |kept| {
        if let (Some((id, _, false)), Some(open)) = (kept, latest.jobs.open_entry())
            && latest.jobs.keeping == Keeping::All
            && small_is_of(id)
        {
            let at = keeper.last_time.get().max(open.changed);
            let of = of(open, &open.tab, open.changed, at);
            write_small_of(&write_of(&of, &open.text));
        }
    });
}

fn of(entry: &Entry, tab: &Rc<str>, changed: u64, at: u64) -> Of {
    Of {
        id: entry.id.clone(),
        revision: entry.revision,
        changed,
        at,
        tab: tab.clone(),
    }
}

fn small_is_of(id: &str) -> bool {
    stored_of().is_some_and(|of| of.split(' ').nth(1) == Some(id))
}

/// The second copy of the open job. Another tab's is only replaced by a change, or where another job was opened.
fn keep_small(open: &Entry, tab: &Rc<str>, time: u64, store: &Store) {
    let reading = store.jobs.keeping == Keeping::Reading;
    if !open.waits() && (reading || small_is_of(&open.id)) {
        // A job that is changed in the list while this one is open was not open later.
        if !reading && !store.jobs.waiting().is_empty() {
            let of = of(open, &open.tab, open.changed, time);
            write_small_of(&write_of(&of, &open.text));
        }
        return;
    }
    let of = if open.waits() {
        of(open, tab, time, time)
    } else {
        of(open, &open.tab, open.changed, time)
    };
    let stands = write_small(&write_of(&of, &open.text), &open.text);
    store.dispatch(Action::Stored(stands));
}

fn listen(keeper: &Rc<Keeper>) -> Vec<EventListener> {
    let mut listeners = Vec::new();
    {
        let hears = Rc::clone(keeper);
        listeners.extend(keeper.tabs.listen(move |word, id| hears.hear(word, id)));
    }
    let Some(window) = web_sys::window() else {
        return listeners;
    };
    {
        let keeper = Rc::clone(keeper);
        listeners.push(EventListener::new(&window, "pagehide", move |_| {
            keeper.hurry();
            if let Some(id) = keeper.current.borrow().as_ref() {
                keeper.tabs.tell(Word::Left, id);
            }
        }));
    }
    if let Some(document) = window.document() {
        let (keeper, hidden) = (Rc::clone(keeper), document.clone());
        listeners.push(EventListener::new(
            &document,
            "visibilitychange",
            move |_| {
                if hidden.hidden() {
                    keeper.hurry();
                }
            },
        ));
    }
    listeners
}
