//! Sets up what building needs: the wasm target, Trunk and the wasm-bindgen programs.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::thread::{self, ScopedJoinHandle};

use crate::run::{output, run, say};
use crate::{Outcome, api, build, pins, programs};

const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// Installs what is missing for building the page; a fraction of a second when nothing is.
pub(crate) fn for_build(root: &Path) -> Outcome {
    toolchain(root, &[])?;
    let trunk = Program {
        name: "trunk",
        version: pins::trunk(root)?,
        install: install_trunk,
    };
    let wasm_bindgen = Program {
        name: "wasm-bindgen",
        version: pins::wasm_bindgen(root)?,
        install: install_wasm_bindgen,
    };
    install_missing(root, &[trunk, wasm_bindgen])
}

/// Installs what is missing for formatting and linting.
pub(crate) fn for_linters(root: &Path) -> Outcome {
    toolchain(root, &["fmt", "clippy"])
}

/// Installs what is missing for building the page and for tests of WebAssembly, the browser itself apart.
pub(crate) fn for_browser_tests(root: &Path) -> Outcome {
    for_build(root)?;
    // It comes with wasm-bindgen, unless that one was found on the PATH alone.
    let runner = Program {
        name: "wasm-bindgen-test-runner",
        version: pins::wasm_bindgen(root)?,
        install: install_wasm_bindgen,
    };
    install_missing(root, &[runner])
}

/// A program that must be there in exactly one version.
struct Program {
    name: &'static str,
    version: String,
    install: fn(&Path, &str) -> Outcome,
}

/// Installs each program unless that very version is in the tools folder or on the PATH.
///
/// All at once, and the page and the JavaScript interface are compiled beside them: each has stretches in which it keeps only one core busy.
fn install_missing(root: &Path, programs: &[Program]) -> Outcome {
    let mut missing = Vec::new();
    for program in programs {
        if !is_there(root, program)? {
            missing.push(program);
        }
    }
    if missing.is_empty() {
        return Ok(());
    }
    let names: Vec<String> = missing
        .iter()
        .map(|program| format!("{} {}", program.name, program.version))
        .collect();
    say(&format!(
        "not there yet: {}; building into .tools, once, in a few minutes",
        names.join(" and ")
    ));
    thread::scope(|scope| {
        let page = scope.spawn(|| build::compile(root).and_then(|()| api::compile(root)));
        let installs: Vec<_> = missing
            .iter()
            .map(|program| scope.spawn(|| (program.install)(root, &program.version)))
            .collect();
        installs.into_iter().try_for_each(finished)?;
        finished(page)
    })
}

/// Waits for a part of the setup that runs beside others.
pub(crate) fn finished(job: ScopedJoinHandle<'_, Outcome>) -> Outcome {
    job.join()
        .unwrap_or_else(|_| Err("a part of the setup stopped short.".to_owned()))
}

fn is_there(root: &Path, program: &Program) -> Outcome<bool> {
    let words = output(programs::command(root, program.name)?.arg("--version"));
    Ok(words.is_some_and(|words| words.split_whitespace().any(|word| word == program.version)))
}

/// The toolchain's pieces, which `rust-toolchain.toml` names.
fn toolchain(root: &Path, subcommands: &[&str]) -> Outcome {
    let target_there =
        sysroot().is_some_and(|folder| folder.join("lib/rustlib").join(WASM_TARGET).is_dir());
    let mut missing: Vec<&str> = Vec::new();
    if !target_there {
        missing.push(WASM_TARGET);
    }
    for subcommand in subcommands {
        if output(programs::cargo(root)?.args([subcommand, "--version"])).is_none() {
            missing.push(subcommand);
        }
    }
    if missing.is_empty() {
        return Ok(());
    }
    say(&format!("Rust toolchain: adding {}", missing.join(", ")));
    if programs::find(&["rustup"]).is_none() {
        return Err(format!(
            "the Rust toolchain lacks {}, and rustup is not there to add it. \
             Install rustup, or add what is missing the way Rust was installed.",
            missing.join(", ")
        ));
    }
    // Without a name it reads rust-toolchain.toml; rustup itself must stay as it is.
    let mut rustup = programs::command(root, "rustup")?;
    run(rustup
        .env_remove("RUSTUP_TOOLCHAIN")
        .args(["toolchain", "install", "--no-self-update"]))
}

fn sysroot() -> Option<PathBuf> {
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    output(Command::new(rustc).args(["--print", "sysroot"])).map(PathBuf::from)
}

/// It downloads nothing here, so it needs no encryption.
fn install_trunk(root: &Path, version: &str) -> Outcome {
    run(installer(root, "trunk", version)?.args(["--locked", "--no-default-features"]))
}

// Not with --locked: the lock file that came with 0.2.130 names a package that is no longer to be had.
fn install_wasm_bindgen(root: &Path, version: &str) -> Outcome {
    run(installer(root, "wasm-bindgen-cli", version)?.arg("--no-default-features"))
}

/// In the debug profile: the build takes a third of the time, and the programs are quick enough.
fn installer(root: &Path, package: &str, version: &str) -> Outcome<Command> {
    let mut cargo = programs::cargo(root)?;
    cargo
        .args([
            "install",
            "--quiet",
            "--debug",
            "--force",
            "--version",
            version,
            "--root",
        ])
        .arg(programs::tools(root))
        .arg(package)
        .env("CARGO_PROFILE_DEV_DEBUG", "0")
        .env("CARGO_INCREMENTAL", "0");
    Ok(cargo)
}
