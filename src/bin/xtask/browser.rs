//! Finds what the tests in a browser need, and installs it where a package manager can.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::run::{output, run, say};
use crate::{Outcome, programs};

/// The oldest Node that has all the test runner's parts in use here.
const LEAST_NODE: u32 = 20;

const CHROMIUM: &[&str] = &[
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
];

/// The browser, or the one that the environment names in `SKIMWRIGHT_CHROMIUM`.
pub(crate) fn chromium() -> Outcome<PathBuf> {
    find_or_install(
        "SKIMWRIGHT_CHROMIUM",
        CHROMIUM,
        &["chromium", "fonts-dejavu-core"],
    )
}

/// The program that drives the browser, or the one that the environment names in `CHROMEDRIVER`.
pub(crate) fn chromedriver() -> Outcome<PathBuf> {
    find_or_install("CHROMEDRIVER", &["chromedriver"], &["chromium-driver"])
}

/// Node, or the one that the environment names in `SKIMWRIGHT_NODE`, once the packages that the end-to-end tests
/// are written with are there.
pub(crate) fn node(root: &Path) -> Outcome<PathBuf> {
    let node = find_or_install("SKIMWRIGHT_NODE", &["node"], &["nodejs", "npm"])?;
    let version = output(Command::new(&node).arg("--version")).unwrap_or_default();
    let major = version
        .trim_start_matches('v')
        .split('.')
        .next()
        .and_then(|number| number.parse().ok());
    if major.is_none_or(|number: u32| number < LEAST_NODE) {
        return Err(format!(
            "the end-to-end tests need Node {LEAST_NODE} or newer; here is {version}."
        ));
    }
    let folder = root.join("tests/browser");
    if packages_are_fresh(&folder) {
        return Ok(node);
    }
    let npm = find_or_install("SKIMWRIGHT_NPM", &["npm"], &["npm"])?;
    say("packages of the end-to-end tests: npm ci");
    let options = [
        "ci",
        "--no-audit",
        "--no-fund",
        "--ignore-scripts",
        "--loglevel=error",
    ];
    run(programs::command(root, npm)?
        .args(options)
        .current_dir(folder))?;
    Ok(node)
}

/// Whether the installed packages are at least as new as the list that names them.
fn packages_are_fresh(folder: &Path) -> bool {
    let changed = |file: &str| {
        fs::metadata(folder.join(file))
            .and_then(|data| data.modified())
            .ok()
    };
    match (
        changed("node_modules/.package-lock.json"),
        changed("package-lock.json"),
    ) {
        (Some(installed), Some(listed)) => listed <= installed,
        _ => false,
    }
}

fn find_or_install(variable: &str, names: &[&str], packages: &[&str]) -> Outcome<PathBuf> {
    if let Some(chosen) = env::var_os(variable).map(PathBuf::from) {
        return if chosen.is_file() {
            Ok(chosen)
        } else {
            Err(format!(
                "{variable} names {}, which is not there.",
                chosen.display()
            ))
        };
    }
    if let Some(found) = programs::find(names) {
        return Ok(found);
    }
    let wanted = names.first().copied().unwrap_or(variable);
    let by_hand = format!(
        "install {wanted} ({}), or name it in {variable}.",
        packages.join(", ")
    );
    let Some(mut apt) = apt_get() else {
        return Err(format!("{wanted} is missing: {by_hand}"));
    };
    say(&format!(
        "{wanted} is missing: installing {}",
        packages.join(", ")
    ));
    run(apt.args(["-qq", "update"]))?;
    let mut apt = apt_get().ok_or_else(|| by_hand.clone())?;
    run(apt
        .args(["-qq", "--yes", "--no-install-recommends", "install"])
        .args(packages))?;
    programs::find(names).ok_or(by_hand)
}

/// The Debian package manager with the right to install: as root, or through a sudo that asks nothing.
fn apt_get() -> Option<Command> {
    let apt = programs::find(&["apt-get"])?;
    let mut command = if output(Command::new("id").arg("-u")).as_deref() == Some("0") {
        Command::new(apt)
    } else {
        output(Command::new("sudo").args(["-n", "true"]))?;
        let mut sudo = Command::new("sudo");
        sudo.args(["-n", "DEBIAN_FRONTEND=noninteractive"]).arg(apt);
        sudo
    };
    command.env("DEBIAN_FRONTEND", "noninteractive");
    Some(command)
}
