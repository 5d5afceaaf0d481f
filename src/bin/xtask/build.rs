//! Builds the page into `dist/`: Trunk first, then the module for JavaScript, which reads and writes the page's files of
//! jobs, then the service worker's list, then the sizes.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::run::{run, say};
use crate::{Outcome, api, programs, sections, setup, sizes, worker};

/// Sets up, builds, finishes, prints the sizes and checks them against the budget.
pub(crate) fn build(root: &Path) -> Outcome {
    setup::for_build(root)?;
    say("building the page");
    run(&mut trunk(root)?)?;
    pin_files(&root.join("dist"))?;
    api::build_api(root)?;
    worker::write(root)?;
    let total = sizes::print(root)?;
    sizes::check(total)
}

/// The names of functions are a third of a small WebAssembly file: the linker drops them.
/// One section says which WebAssembly features are in use, and must stay for wasm-bindgen.
const LINKER: [&str; 2] = [
    "-Clink-arg=--strip-all",
    "-Clink-arg=--keep-section=target_features",
];

/// Trunk's minifier does not know the form of export that wasm-bindgen writes, and leaves that file as it is:
/// a warning at each build that says nothing new.
const LOG: &str = "warn,trunk::processing::minify=error";

fn trunk(root: &Path) -> Outcome<Command> {
    let mut trunk = programs::command(root, "trunk")?;
    trunk
        .args(["--skip-version-check", "--log", LOG, "build", "--release"])
        // Trunk takes it for a switch of its own and refuses the value 1.
        .env_remove("NO_COLOR");
    link_small(&mut trunk);
    Ok(trunk)
}

/// Compiles the page just as Trunk will ask for it, so that Trunk then finds it done.
pub(crate) fn compile(root: &Path) -> Outcome {
    let mut cargo = programs::command(root, "cargo")?;
    link_small(cargo.args([
        "build",
        "--quiet",
        "--release",
        "--target",
        "wasm32-unknown-unknown",
        "--bin",
        "skimwright",
    ]));
    run(&mut cargo)
}

/// Has cargo link a small file that says nothing of the machine it was built on.
pub(crate) fn link_small(command: &mut Command) {
    let flags = LINKER
        .map(str::to_owned)
        .into_iter()
        .chain(anonymous_paths());
    // The form that takes paths with spaces; it goes before all others.
    command.env(
        "CARGO_ENCODED_RUSTFLAGS",
        flags.collect::<Vec<_>>().join("\u{1f}"),
    );
}

/// Panics name the file that they come from, dependencies by their full path: the flags that cut it short.
fn anonymous_paths() -> Vec<String> {
    let home = std::env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| Some(PathBuf::from(std::env::var_os("HOME")?).join(".cargo")));
    let sources = home.map(|home| home.join("registry/src"));
    let folders = sources.and_then(|sources| fs::read_dir(sources).ok());
    let mut flags: Vec<String> = folders
        .into_iter()
        .flatten()
        .filter_map(|folder| folder.ok()?.path().to_str().map(str::to_owned))
        .map(|folder| format!("--remap-path-prefix={folder}=crates"))
        .collect();
    // Cargo builds anew when the order changes.
    flags.sort();
    flags
}

/// Puts the integrity of the program's two files into the page, where `Trunk.toml` left a place for each.
fn pin_files(dist: &Path) -> Outcome {
    let page = dist.join("index.html");
    let mut text = fs::read_to_string(&page)
        .map_err(|error| format!("dist/index.html cannot be read: {error}"))?;
    let files = worker::files(dist)?;
    for (place, ending) in [("[wasm]", ".wasm"), ("[js]", ".js")] {
        // Only the program's own files bear its name.
        let (_, path) = files
            .iter()
            .find(|(address, _)| address.starts_with("skimwright-") && address.ends_with(ending))
            .ok_or_else(|| format!("dist/ holds no program file that ends in {ending}."))?;
        if !text.contains(place) {
            return Err(format!(
                "dist/index.html has no place {place} for an integrity."
            ));
        }
        if ending == ".wasm" {
            // wasm-bindgen puts names in again.
            sections::strip(path)?;
        }
        text = text.replace(place, &worker::integrity(path)?);
    }
    fs::write(&page, text).map_err(|error| format!("dist/index.html cannot be written: {error}"))
}
