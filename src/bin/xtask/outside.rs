//! What programs outside the project say, in a Python environment of pinned packages: the pass planner's engine beside a
//! general-purpose optimiser, and the files that leave the page.

use std::path::Path;
use std::process::Command;

use crate::Outcome;
use crate::run::{run, say};

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
    say("the same problem by both, in one run");
    run(Command::new(&python).arg(root.join("tests/outside/multipass.py")))
}
