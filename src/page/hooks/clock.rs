//! The clock and the calendar of the device: read where something is done or shown, and once a second while something
//! runs.

use gloo_timers::callback::Interval;
use js_sys::Date;
use skimwright::job::Moment;
use wasm_bindgen::JsValue;
use yew::prelude::*;

use super::database::whole;
use crate::page::lathe::LatheAction;
use crate::page::state::Action;
use crate::page::store::Store;
use crate::page::words::Moment as Calendar;

/// A time in milliseconds since the beginning of 1970 by the person's own calendar.
pub(crate) fn moment(time: u64) -> Calendar {
    let date = Date::new(&JsValue::from_f64(f64_of(time)));
    let now = Date::new_0();
    Calendar {
        year: date.get_full_year(),
        month: date.get_month(),
        day: date.get_date(),
        hour: date.get_hours(),
        minute: date.get_minutes(),
        is_today: date.get_full_year() == now.get_full_year()
            && date.get_month() == now.get_month()
            && date.get_date() == now.get_date(),
    }
}

/// What day it is, for the name of a file: `2026-11-28`.
pub(crate) fn today() -> String {
    let now = moment(whole(Date::now()));
    format!("{}-{:02}-{:02}", now.year, now.month + 1, now.day)
}

#[expect(clippy::cast_precision_loss, reason = "exact up to the year 287 000")]
pub(super) fn f64_of(time: u64) -> f64 {
    time as f64
}

/// What the clock of the device says.
pub(crate) fn now() -> Moment {
    let seconds = Date::now() / 1000.0;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a date before 1970 is nought, and what a date can be fits by far"
    )]
    let seconds = seconds as u64;
    Moment::unix_seconds(seconds)
}

/// The same, drawn anew each second while something runs. It is read as it is drawn: an older one would lie before what
/// was begun this moment.
#[hook]
pub(crate) fn use_now(runs: bool) -> Moment {
    let drawn = use_state_eq(now);
    use_effect_with(runs, move |runs| {
        // More often than once a second, so that no second is skipped.
        let ticks = runs.then(|| Interval::new(500, move || drawn.set(now())));
        move || drop(ticks)
    });
    now()
}

/// A callback that does something at the lathe at the moment of the event.
pub(crate) fn at_once<E: 'static>(
    store: &Store,
    action: impl Fn(Moment) -> LatheAction + 'static,
) -> Callback<E> {
    let dispatcher = store.dispatcher();
    Callback::from(move |_: E| dispatcher.dispatch(Action::Lathe(action(now()))))
}

/// A moment of the record by the person's own calendar.
pub(crate) fn calendar(at: Moment) -> Calendar {
    moment(at.to_unix_seconds().saturating_mul(1000))
}
