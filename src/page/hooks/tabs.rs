//! What the tabs of one browser tell one another: which job each has open, and which it wrote.

use gloo_events::EventListener;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

const NAME: &str = "skimwright";

/// What is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Word {
    /// This job was written.
    Wrote,
    /// This job was opened, and is there another that has it open?
    Opened,
    /// So it is here.
    Also,
    /// This job is open here no longer.
    Left,
}

impl Word {
    const ALL: [Self; 4] = [Self::Wrote, Self::Opened, Self::Also, Self::Left];

    const fn code(self) -> &'static str {
        match self {
            Self::Wrote => "wrote",
            Self::Opened => "opened",
            Self::Also => "also",
            Self::Left => "left",
        }
    }
}

/// The way to the other tabs; nobody is told anything where the browser has none.
pub(crate) struct Tabs(Option<BroadcastChannel>);

impl Tabs {
    pub(crate) fn open() -> Self {
        Self(BroadcastChannel::new(NAME).ok())
    }

    pub(crate) fn tell(&self, word: Word, id: &str) {
        if let Some(channel) = &self.0 {
            // Unheard, it is found out when the job is written.
            let _ = channel.post_message(&JsValue::from_str(&format!("{} {id}", word.code())));
        }
    }

    pub(crate) fn listen(&self, hear: impl Fn(Word, String) + 'static) -> Option<EventListener> {
        let channel = self.0.as_ref()?;
        Some(EventListener::new(channel, "message", move |event| {
            let said = event.dyn_ref::<MessageEvent>().map(MessageEvent::data);
            let said = said.and_then(|said| said.as_string()).unwrap_or_default();
            let Some((word, id)) = said.split_once(' ') else {
                return;
            };
            // Words of a newer version are none of ours.
            if let Some(word) = Word::ALL.into_iter().find(|it| it.code() == word) {
                hear(word, id.to_owned());
            }
        }))
    }
}
