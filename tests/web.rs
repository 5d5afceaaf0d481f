//! The core as WebAssembly in a real browser: the same figures as on the developer's machine.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::expect_used, reason = "a test may stop at the first surprise")]

use skimwright::demo::demo_jobs;
use skimwright::job::Job;
use skimwright::link::{decode, encode};
use skimwright::plan::plan;
use skimwright::quantity::Length;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn an_inch_is_an_inch_here_too() {
    assert_eq!(Length::inch(1.0).to_mm().to_bits(), 25.4_f64.to_bits());
}

/// The figures of the default job, by hand: an 80 mm shank that becomes 50 mm, 1 mm faced, 1.3 mm kerf; the
/// countersink of 5.3 mm is (5.3 − 2.5)/(2 tan 30°) = 2.425 mm of cone over a pilot of 3.1 to 4.1 mm.
#[wasm_bindgen_test]
fn the_default_job_comes_out_as_by_hand() {
    let plan = plan(&Job::default());
    let cut = plan.cut_off.expect("a cut");
    let centre = plan.centre.expect("a centre");
    let figures = [
        (cut.from_free_end.value, 29.0),
        (cut.from_shoulder.value, 51.0),
        (cut.offcut_length.value, 27.7),
        (cut.shank_finished.value, 50.0),
        (centre.cone_depth.value, 2.424_871),
        (centre.feed_depth.value, 6.024_871),
    ];
    for (figure, by_hand) in figures {
        assert!(
            (figure.to_mm() - by_hand).abs() < 1e-6,
            "{figure:?}, not {by_hand}"
        );
    }
}

#[wasm_bindgen_test]
fn a_link_holds_the_whole_job_here_too() {
    for job in demo_jobs() {
        let link = encode(&job).expect("a link");
        assert_eq!(decode(&link).as_ref(), Ok(&job));
    }
}
