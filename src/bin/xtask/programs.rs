//! Where programs are found: in the checkout's own tools folder, or on the PATH.

use std::env;
use std::ffi::{OsStr, OsString};
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::Outcome;

/// The folder that git ignores and that holds what setup installs.
pub(crate) fn tools(root: &Path) -> PathBuf {
    root.join(".tools")
}

/// The PATH with the checkout's own tools first.
pub(crate) fn search_path(root: &Path) -> Outcome<OsString> {
    let before = env::var_os("PATH").unwrap_or_default();
    let folders = std::iter::once(tools(root).join("bin")).chain(env::split_paths(&before));
    env::join_paths(folders).map_err(|error| format!("the PATH cannot be extended: {error}"))
}

/// A program by name that finds the checkout's own tools first, started in the top folder.
pub(crate) fn command(root: &Path, program: impl AsRef<OsStr>) -> Outcome<Command> {
    let path = search_path(root)?;
    let found = program
        .as_ref()
        .to_str()
        .and_then(|name| find_in(&path, name))
        .map_or_else(|| program.as_ref().to_owned(), PathBuf::into_os_string);
    let mut command = Command::new(found);
    command.env("PATH", path).current_dir(root);
    Ok(command)
}

/// The cargo that runs this task.
pub(crate) fn cargo(root: &Path) -> Outcome<Command> {
    command(root, env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// The first of several names that is on the PATH.
pub(crate) fn find(names: &[&str]) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    names.iter().find_map(|name| find_in(&path, name))
}

fn find_in(path: &OsStr, name: &str) -> Option<PathBuf> {
    env::split_paths(path)
        .map(|folder| folder.join(format!("{name}{}", env::consts::EXE_SUFFIX)))
        .find(|file| file.is_file())
}
