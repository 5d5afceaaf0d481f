//! The project's own tasks: set up, build, serve, test, sizes. Run as `cargo xtask …`.
//!
//! Each task sets up what it needs first, installs only what is missing, and says what it does.

mod api;
mod bench;
mod browser;
mod build;
mod mime;
mod outside;
mod pins;
mod programs;
mod run;
mod sections;
mod serve;
mod setup;
mod sizes;
mod test;
mod worker;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// What a task gives: its result, or the words that say what stopped it and what would mend it.
type Outcome<T = ()> = Result<T, String>;

const HELP: &str = "\
cargo xtask serve [--lan] [--port N]   build the page and serve it on this machine, with --lan also to phones in the same network
cargo xtask test [native|web|page]     check everything, or one part
cargo xtask build                      build the page into dist/
cargo xtask api                        build the JavaScript interface into dist/api/
cargo xtask sizes                      sizes of the last build
cargo xtask bench                      time of one plan, here and in the browser
cargo xtask outside                    other programs read our files; the pass planner beside an optimiser
Each sets up what it needs first.";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match choose(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("\nStopped: {message}");
            ExitCode::FAILURE
        }
    }
}

fn choose(arguments: &[String]) -> Outcome {
    let root = root()?;
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match words.as_slice() {
        ["serve", options @ ..] => serve::serve(&root, &serve::Options::read(options)?),
        ["build"] => build::build(&root),
        ["api"] => api::build_alone(&root),
        ["test", part @ ..] => test::test(&root, test::Choice::read(part)?),
        ["bench"] => bench::bench(&root),
        ["outside"] => outside::outside(&root),
        ["sizes"] => sizes::print(&root).map(|_| ()),
        [] | ["help" | "--help" | "-h"] => {
            println!("{HELP}");
            Ok(())
        }
        _ => Err(format!("no such task: {}\n{HELP}", words.join(" "))),
    }
}

/// The checkout's top folder, as cargo names it.
fn root() -> Outcome<PathBuf> {
    let folder = std::env::var_os("CARGO_MANIFEST_DIR")
        .ok_or("start this through cargo: `cargo xtask …`.")?;
    Ok(Path::new(&folder).to_path_buf())
}
