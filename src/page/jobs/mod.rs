//! The jobs that are kept: what is known of each, what is done with them, and how what two places kept is brought
//! together. How they are written is an effect in `hooks`.

mod act;
mod entry;
mod found;
mod import;
mod list;
mod written;

#[cfg(test)]
mod found_tests;
#[cfg(test)]
mod import_tests;
#[cfg(test)]
mod list_tests;

pub(crate) use act::{JobsAction, Told, Written};
pub(crate) use entry::{Entry, FORM, JobId, Of, read_of, write_of};
pub(crate) use found::Found;
pub(crate) use import::{Fate, FileTrouble, Incoming};
pub(crate) use list::{Jobs, Keeping, Trouble};
