//! The state as the components see it.

use std::rc::Rc;

use yew::prelude::*;

use super::state::{Action, State};
use super::words::Words;

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(Rc::unwrap_or_clone(self).after(action))
    }
}

/// The state and the way to change it, handed to every component.
pub(crate) type Store = UseReducerHandle<State>;

/// The state of the page, in any component below the app.
#[hook]
pub(crate) fn use_store() -> Option<Store> {
    use_context::<Store>()
}

/// The words in the language and the units in use.
pub(crate) fn words(store: &Store) -> Words {
    Words::new(store.units, &store.job).in_tongue(store.tongue)
}

/// A callback that does an action whatever the event.
pub(crate) fn on<E: 'static>(store: &Store, action: impl Fn() -> Action + 'static) -> Callback<E> {
    let dispatcher = store.dispatcher();
    Callback::from(move |_: E| dispatcher.dispatch(action()))
}
