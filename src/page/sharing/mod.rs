//! Links that are given away, to a colleague or to the part's owner, and the owner's answers that come back.

mod answers;
mod state;

#[cfg(target_arch = "wasm32")]
mod agreed;
#[cfg(target_arch = "wasm32")]
mod dialog;

#[cfg(test)]
mod offer_tests;
#[cfg(test)]
mod state_tests;

pub(crate) use answers::LINK_LIKE;
pub(crate) use state::{AnswerTold, Handed, NoLink, ShareAction, ShareTo, Sharing};

#[cfg(target_arch = "wasm32")]
pub(crate) use agreed::{agreed, offered_panel};
#[cfg(target_arch = "wasm32")]
pub(crate) use dialog::share_panel;
