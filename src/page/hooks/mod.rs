//! What the page does to the browser: storage, address, sharing, look, updates. One file each.

pub(crate) mod address;
pub(crate) mod alarm;
pub(crate) mod awake;
pub(crate) mod clock;
pub(crate) mod database;
pub(crate) mod download;
pub(crate) mod exchange;
pub(crate) mod files;
pub(crate) mod focus;
pub(crate) mod jobs;
pub(crate) mod language;
pub(crate) mod lasting;
pub(crate) mod look;
pub(crate) mod printing;
pub(crate) mod share;
pub(crate) mod storage;
pub(crate) mod tabs;
pub(crate) mod update;
pub(crate) mod width;
pub(crate) mod zoom;
