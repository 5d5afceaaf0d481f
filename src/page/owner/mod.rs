//! The page of the part's owner: what is to be done to his part, in plain words, and his answer.

mod state;

#[cfg(target_arch = "wasm32")]
mod answer;
#[cfg(target_arch = "wasm32")]
mod pictures;
#[cfg(target_arch = "wasm32")]
mod screen;
#[cfg(target_arch = "wasm32")]
mod shop;
#[cfg(target_arch = "wasm32")]
mod shown;

#[cfg(test)]
mod state_tests;

pub(crate) use state::{Visit, visit};

#[cfg(target_arch = "wasm32")]
pub(crate) use screen::{BadLinkPage, OwnerPage};
#[cfg(target_arch = "wasm32")]
pub(crate) use shown::OfferShown;
