//! Builds the core for JavaScript into `dist/api/`: a module of its own, which the page loads only for files of jobs.

use std::path::{Path, PathBuf};

use crate::build::link_small;
use crate::run::{run, say};
use crate::{Outcome, programs, setup};

/// The program's name, and the name under which JavaScript imports it.
const PROGRAM: &str = "skimwright-js";
const MODULE: &str = "skimwright";

/// Sets up and builds the module, without the page.
pub(crate) fn build_alone(root: &Path) -> Outcome {
    setup::for_build(root)?;
    build_api(root)
}

/// Builds the module with its TypeScript declarations. To be called after the page is built, which empties `dist/`.
pub(crate) fn build_api(root: &Path) -> Outcome {
    say("building the JavaScript interface");
    compile(root)?;
    let program = target(root)
        .join("wasm32-unknown-unknown/release")
        .join(format!("{PROGRAM}.wasm"));
    run(programs::command(root, "wasm-bindgen")?
        .args(["--target", "web", "--out-name", MODULE])
        .args(["--remove-name-section", "--remove-producers-section"])
        .arg("--out-dir")
        .arg(root.join("dist/api"))
        .arg(program))
}

fn target(root: &Path) -> PathBuf {
    root.join("target")
}

/// Compiles the module's program.
pub(crate) fn compile(root: &Path) -> Outcome {
    let mut cargo = programs::cargo(root)?;
    cargo
        .args(["build", "--quiet", "--release", "--features", "js"])
        .args(["--bin", PROGRAM, "--target", "wasm32-unknown-unknown"])
        .arg("--target-dir")
        .arg(target(root));
    // The same flags as for the page, so that nothing is built twice.
    link_small(&mut cargo);
    run(&mut cargo)
}
