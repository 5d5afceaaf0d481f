//! Runs other programs and says so.

use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};

use crate::Outcome;

/// Says in one line what begins now.
pub(crate) fn say(what: &str) {
    println!("» {what}");
}

/// Runs a program to its end with its output shown; an error names it and its exit status.
pub(crate) fn run(command: &mut Command) -> Outcome {
    let status = command
        .stdin(Stdio::null())
        .status()
        .map_err(|error| format!("{} could not be started: {error}", name(command)))?;
    if status.success() {
        Ok(())
    } else {
        Err(format!("`{}` failed ({status}).", line(command)))
    }
}

/// What a program prints, or `None` when it cannot be run or fails.
pub(crate) fn output(command: &mut Command) -> Option<String> {
    let output = command
        .stdin(Stdio::null())
        .stderr(Stdio::null())
        .output()
        .ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs a program to its end, shows its standard output line by line and hands each line to `see`.
/// Gives whether it succeeded.
pub(crate) fn watch(command: &mut Command, mut see: impl FnMut(&str)) -> Outcome<bool> {
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{} could not be started: {error}", name(command)))?;
    if let Some(lines) = child.stdout.take() {
        for text in BufReader::new(lines).lines() {
            let text =
                text.map_err(|error| format!("{} cannot be read: {error}", name(command)))?;
            println!("{text}");
            see(&text);
        }
    }
    let status = child
        .wait()
        .map_err(|error| format!("{} was lost: {error}", name(command)))?;
    Ok(status.success())
}

fn name(command: &Command) -> String {
    command.get_program().to_string_lossy().into_owned()
}

fn line(command: &Command) -> String {
    let words = command
        .get_args()
        .map(|word| word.to_string_lossy().into_owned());
    std::iter::once(name(command))
        .chain(words)
        .collect::<Vec<_>>()
        .join(" ")
}
