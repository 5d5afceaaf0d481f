//! What programs outside the project say, in a Python environment of pinned packages: the pass planner's engine beside a
//! general-purpose optimiser, and the files that leave the page.

use std::path::Path;
use std::process::Command;

use crate::run::{run, say};
use crate::{Outcome, browser, build, programs};

/// Makes the environment when it is missing, and runs the comparison.
pub(crate) fn outside(root: &Path) -> Outcome {
    let environment = root.join(".tools/outside");
    let python = environment.join("bin/python");
    if !python.exists() {
        say("a Python environment for the comparison");
        run(Command::new("python3")
            .args(["-m", "venv"])
            .arg(&environment))?;
    }
    let wanted = root.join("tests/outside/requirements.txt");
    run(Command::new(&python)
        .args(["-m", "pip", "install", "--quiet", "--requirement"])
        .arg(&wanted))?;
    say("QR codes, drawings and tables, read by other programs");
    run(Command::new(&python).arg(root.join("tests/outside/files.py")))?;
    printed(root, &python)?;
    say("the same problem by both, in one run");
    run(Command::new(&python).arg(root.join("tests/outside/multipass.py")))
}

/// Prints what is printed, and has the codes read from the paper.
fn printed(root: &Path, python: &Path) -> Outcome {
    let chromium = browser::chromium()?;
    let node = browser::node(root)?;
    build::build(root)?;
    say("what is printed, as a scanner sees it");
    let folder = root.join("target/printed");
    run(programs::command(root, node)?
        .arg(root.join("tests/outside/printed.mjs"))
        .arg(&folder)
        .env("SKIMWRIGHT_CHROMIUM", chromium))?;
    run(Command::new(python)
        .arg(root.join("tests/outside/printed.py"))
        .arg(&folder))
}
