//! The time of one plan, on this machine and in the browser, side by side.

use std::path::Path;

use crate::run::{run, say};
use crate::{Outcome, browser, programs, setup};

/// Runs both benchmarks; each prints its own figures.
pub(crate) fn bench(root: &Path) -> Outcome {
    setup::for_browser_tests(root)?;
    say("one plan on this machine");
    run(programs::cargo(root)?.args(["bench", "--quiet", "--bench", "plan"]))?;
    say("the search for passes on this machine");
    run(programs::cargo(root)?.args(["bench", "--quiet", "--bench", "engine"]))?;
    say("a hundred thousand jobs of each sort on reckoned lathes");
    run(programs::cargo(root)?.args(["bench", "--quiet", "--bench", "simulated"]))?;
    browser::chromium()?;
    let driver = browser::chromedriver()?;
    say("one plan in the browser");
    run(programs::cargo(root)?
        .args([
            "test",
            "--release",
            "--target",
            "wasm32-unknown-unknown",
            "--features",
            "bench",
            "--test",
            "bench_browser",
            "--",
            "--nocapture",
        ])
        .env(
            "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
            "wasm-bindgen-test-runner",
        )
        // Seconds: measuring takes longer than a test may.
        .env("WASM_BINDGEN_TEST_TIMEOUT", "300")
        .env("CHROMEDRIVER", driver))
}
