//! Runs every check of the project and counts what ran.

use std::fs;
use std::path::Path;
use std::process::Command;
use std::thread;
use std::time::Instant;

use crate::run::{run, say, watch};
use crate::{Outcome, browser, build, programs, setup};

/// Which part is asked for.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Choice {
    All,
    Native,
    Web,
    Page,
}

impl Choice {
    /// Reads the word after `test`, if there is one.
    pub(crate) fn read(words: &[&str]) -> Outcome<Self> {
        match words {
            [] => Ok(Self::All),
            ["native"] => Ok(Self::Native),
            ["web"] => Ok(Self::Web),
            ["page"] => Ok(Self::Page),
            _ => Err(format!(
                "test knows native, web and page, not {}.",
                words.join(" ")
            )),
        }
    }

    fn includes(self, part: Self) -> bool {
        self == Self::All || self == part
    }
}

/// How many tests of a part did what.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Counts {
    passed: u32,
    failed: u32,
    skipped: u32,
}

/// Runs one part: what was counted, and whether all of it passed.
type Part = fn(&Path) -> Outcome<(Counts, bool)>;

/// Sets up, runs the parts asked for, and prints one line of counts for each. Stops after the first part that fails.
pub(crate) fn test(root: &Path, choice: Choice) -> Outcome {
    let begun = Instant::now();
    setup::for_linters(root)?;
    let parts: [(Choice, &str, Part); 3] = [
        (Choice::Native, "native", native),
        (Choice::Web, "web", web),
        (Choice::Page, "page", page),
    ];
    thread::scope(|scope| {
        // What the browser's parts need is built beside the tests on this machine: each leaves a core idle at times.
        let wanted = choice != Choice::Native;
        let mut tools = wanted.then(|| scope.spawn(|| setup::for_browser_tests(root)));
        let mut ran = Vec::new();
        for (part, name, run_part) in parts {
            if !choice.includes(part) {
                continue;
            }
            if part != Choice::Native
                && let Some(tools) = tools.take()
            {
                setup::finished(tools)?;
            }
            let (counts, passed) = run_part(root)?;
            ran.push((name, counts));
            if !passed {
                print_counts(&ran, begun);
                return Err(format!("the {name} tests failed: see above."));
            }
            if counts.passed == 0 {
                return Err(format!("the {name} part ran no test."));
            }
        }
        print_counts(&ran, begun);
        Ok(())
    })
}

/// Formatting, both linters, and the core's tests on this machine.
fn native(root: &Path) -> Outcome<(Counts, bool)> {
    say("formatting");
    run(programs::cargo(root)?.args(["fmt", "--check"]))?;
    say("clippy, this machine's build");
    run(programs::cargo(root)?.args([
        "clippy",
        "--quiet",
        "--all-targets",
        "--features",
        "xtask,json",
        "--",
        "-D",
        "warnings",
    ]))?;
    say("clippy, the page's build");
    run(programs::cargo(root)?
        .args([
            "clippy",
            "--quiet",
            "--target",
            "wasm32-unknown-unknown",
            "--lib",
            "--bins",
            "--test",
            "web",
            "--test",
            "bench_browser",
            "--features",
            "js,bench",
        ])
        .args(["--", "-D", "warnings"]))?;
    say("tests on this machine");
    count_cargo(programs::cargo(root)?.args([
        "test",
        "--quiet",
        "--no-fail-fast",
        "--features",
        "xtask,json",
    ]))
}

/// The core's tests as WebAssembly in a real browser.
fn web(root: &Path) -> Outcome<(Counts, bool)> {
    browser::chromium()?;
    let driver = browser::chromedriver()?;
    say("tests in the browser");
    count_cargo(
        programs::cargo(root)?
            .args([
                "test",
                "--target",
                "wasm32-unknown-unknown",
                "--test",
                "web",
            ])
            .env(
                "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
                "wasm-bindgen-test-runner",
            )
            .env("CHROMEDRIVER", driver),
    )
}

/// The built page, from end to end, as a person uses it.
fn page(root: &Path) -> Outcome<(Counts, bool)> {
    let chromium = browser::chromium()?;
    let node = browser::node(root)?;
    build::build(root)?;
    say("tests of the page, end to end");
    let folder = root.join("tests/browser");
    let mut counts = Counts::default();
    let mut node = programs::command(root, node)?;
    node.current_dir(&folder)
        // Two files at a time: each waits a good part of its time, and opens a server and a browser of its own.
        .args(["--test", "--test-concurrency=2", "--test-reporter=spec"])
        .args(test_files(&folder)?)
        .env("SKIMWRIGHT_CHROMIUM", chromium);
    let passed = watch(&mut node, |line| count_node(line, &mut counts))?;
    Ok((counts, passed))
}

/// Every file of end-to-end tests, sorted.
fn test_files(folder: &Path) -> Outcome<Vec<String>> {
    let entries = fs::read_dir(folder)
        .map_err(|error| format!("cannot read {}: {error}", folder.display()))?;
    let mut names: Vec<String> = entries
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .filter(|name| name.ends_with(".test.mjs"))
        .collect();
    names.sort();
    Ok(names)
}

fn count_cargo(command: &mut Command) -> Outcome<(Counts, bool)> {
    let mut counts = Counts::default();
    let passed = watch(command, |line| count_libtest(line, &mut counts))?;
    Ok((counts, passed))
}

/// Adds up a closing line such as `test result: ok. 2 passed; 0 failed; 1 ignored; …`.
fn count_libtest(line: &str, counts: &mut Counts) {
    let Some(rest) = line.strip_prefix("test result:") else {
        return;
    };
    let words: Vec<&str> = rest
        .split([' ', ';'])
        .filter(|word| !word.is_empty())
        .collect();
    for pair in words.windows(2) {
        if let [number, what] = pair
            && let Ok(number) = number.parse::<u32>()
        {
            match *what {
                "passed" => counts.passed += number,
                "failed" => counts.failed += number,
                "ignored" => counts.skipped += number,
                _ => {}
            }
        }
    }
}

/// Adds up a closing line such as `ℹ pass 5`.
fn count_node(line: &str, counts: &mut Counts) {
    let words: Vec<&str> = line.split_whitespace().collect();
    if let ["ℹ" | "#", what, number] = words.as_slice()
        && let Ok(number) = number.parse::<u32>()
    {
        match *what {
            "pass" => counts.passed += number,
            "fail" | "cancelled" => counts.failed += number,
            "skipped" | "todo" => counts.skipped += number,
            _ => {}
        }
    }
}

fn print_counts(ran: &[(&str, Counts)], begun: Instant) {
    let mut all = Counts::default();
    println!("\nAfter {} s:", begun.elapsed().as_secs());
    for (name, counts) in ran {
        print_line(name, *counts);
        all.passed += counts.passed;
        all.failed += counts.failed;
        all.skipped += counts.skipped;
    }
    print_line("all", all);
}

fn print_line(name: &str, counts: Counts) {
    let Counts {
        passed,
        failed,
        skipped,
    } = counts;
    println!("{name}: {passed} passed, {failed} failed, {skipped} skipped");
}

#[cfg(test)]
mod tests {
    use super::{Counts, count_libtest, count_node};

    #[test]
    fn the_closing_lines_of_both_runners_are_read() {
        let mut counts = Counts::default();
        count_libtest(
            "test result: ok. 2 passed; 1 failed; 3 ignored; 0 measured; 0 filtered out; finished in 0.01s",
            &mut counts,
        );
        assert_eq!(
            counts,
            Counts {
                passed: 2,
                failed: 1,
                skipped: 3
            }
        );
        count_node("ℹ pass 5", &mut counts);
        count_node("ℹ fail 1", &mut counts);
        count_node("ℹ duration_ms 512.3", &mut counts);
        assert_eq!(
            counts,
            Counts {
                passed: 7,
                failed: 2,
                skipped: 3
            }
        );
    }
}
