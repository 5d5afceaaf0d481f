//! What the page does to the browser: storage, address, sharing, look, updates. One file each.

pub(crate) mod address;
pub(crate) mod download;
pub(crate) mod focus;
pub(crate) mod look;
pub(crate) mod share;
pub(crate) mod storage;
pub(crate) mod update;
pub(crate) mod width;
pub(crate) mod zoom;
