//! Recognising standard tapers: simulated measurements of every size, and the calibration of shares and errors.
//!
//! The errors are normal, two standard deviations being what an instrument is said to be off. Everything is drawn from a
//! generator with a fixed seed, so that every run is the same. The rates are printed: `cargo test --test
//! taper_recognition -- --nocapture`.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

#[path = "support/cones.rs"]
mod cones;

use cones::{CALLIPER, Dice, MICROMETER, Setting, measure, row, whole};
use skimwright::part::{LEAST_SHARE, Recognition, Verdict, recognise};
use skimwright::tables::{StandardTaper, TaperSeries, TaperSize};

/// Measurements of each size in each setting.
const DRAWS: u32 = 10_000;

fn holds(answer: &Recognition, size: TaperSize) -> bool {
    matches!(answer.verdict, Verdict::Found | Verdict::NotToldApart)
        && answer
            .candidates
            .iter()
            .any(|candidate| candidate.size == size)
}

/// How one size, or the sizes of one series, came out.
#[derive(Clone, Copy, Default)]
struct Rates {
    draws: u32,
    first: u32,
    named: u32,
    alone: u32,
    candidates: usize,
}

impl Rates {
    fn add(&mut self, answer: &Recognition, size: TaperSize) {
        let is_named = holds(answer, size);
        let is_first = is_named && answer.candidates[0].size == size;
        self.draws += 1;
        self.first += u32::from(is_first);
        self.named += u32::from(is_named);
        self.alone += u32::from(is_first && answer.verdict == Verdict::Found);
        self.candidates += answer.candidates.len();
    }

    fn join(&mut self, other: Self) {
        self.draws += other.draws;
        self.first += other.first;
        self.named += other.named;
        self.alone += other.alone;
        self.candidates += other.candidates;
    }

    fn share(self, count: u32) -> f64 {
        f64::from(count) / f64::from(self.draws)
    }

    fn print(self, name: &str) {
        println!(
            "{name:<28} first {:6.2} %, named {:6.2} %, alone {:6.2} %, candidates {:.2}",
            100.0 * self.share(self.first),
            100.0 * self.share(self.named),
            100.0 * self.share(self.alone),
            f64::from(u32::try_from(self.candidates).unwrap()) / f64::from(self.draws),
        );
    }
}

/// Where the two places are, drawn anew for each measurement.
type Places = fn(&mut Dice, &StandardTaper) -> [f64; 2];

/// A shank cut short: the first place in the first quarter, the second anywhere from the half on.
fn cut_short(dice: &mut Dice, taper: &StandardTaper) -> [f64; 2] {
    let length = taper.length.to_mm();
    [
        dice.between(0.0, 0.25) * length,
        dice.between(0.5, 1.0) * length,
    ]
}

/// The least shares of right answers.
struct Least {
    /// Of each size: named, alone or among those not told apart.
    named: f64,
    /// Of each size: named first.
    first: f64,
    /// Of all sizes together: named first.
    first_of_all: f64,
}

/// Measures every size, prints the rates, and checks them.
fn simulate(setting: Setting, draws: u32, places: Places, least: &Least) {
    let mut dice = Dice(20);
    let mut by_series = vec![Rates::default(); TaperSeries::ALL.len()];
    let mut all = Rates::default();
    for size in TaperSize::all() {
        let taper = size.get().unwrap();
        let mut rates = Rates::default();
        for _ in 0..draws {
            let places = places(&mut dice, taper);
            let reading = measure(&mut dice, taper, places, setting);
            rates.add(&recognise(&reading), size);
        }
        rates.print(&format!("{} {}", setting.name, size.code()));
        let [named, first] = [rates.named, rates.first].map(|count| rates.share(count));
        assert!(named >= least.named, "{}: {named} named", size.code());
        assert!(first >= least.first, "{}: {first} first", size.code());
        let series = TaperSeries::ALL
            .iter()
            .position(|&series| series == taper.series)
            .unwrap();
        by_series[series].join(rates);
        all.join(rates);
    }
    for (series, rates) in TaperSeries::ALL.iter().zip(by_series) {
        rates.print(&format!("{} {series:?}, all", setting.name));
    }
    all.print(&format!("{} all sizes", setting.name));
    let first = all.share(all.first);
    assert!(first >= least.first_of_all, "{first} first");
}

#[test]
fn micrometer_names_the_right_taper() {
    simulate(
        MICROMETER,
        DRAWS,
        whole,
        &Least {
            named: 0.985,
            first: 0.97,
            first_of_all: 0.98,
        },
    );
}

#[test]
fn calliper_names_the_right_taper() {
    simulate(
        CALLIPER,
        DRAWS,
        whole,
        &Least {
            named: 0.985,
            first: 0.94,
            first_of_all: 0.98,
        },
    );
}

#[test]
fn a_shank_cut_short_is_still_named() {
    simulate(
        MICROMETER,
        DRAWS / 10,
        cut_short,
        &Least {
            named: 0.975,
            first: 0.5,
            first_of_all: 0.95,
        },
    );
}

/// The shares that one size is given at two places, smallest first.
fn shares(code: &str, places: [f64; 2], setting: Setting) -> Vec<f64> {
    let (size, taper) = row(code);
    let mut dice = Dice(7);
    let mut shares: Vec<f64> = (0..DRAWS)
        .map(|_| {
            let answer = recognise(&measure(&mut dice, taper, places, setting));
            answer
                .candidates
                .iter()
                .find(|candidate| candidate.size == size)
                .map_or(0.0, |candidate| candidate.share)
        })
        .collect();
    shares.sort_by(f64::total_cmp);
    shares
}

/// Of a true taper, a tenth of the shares lie below 0.1, two tenths below 0.2: within four standard deviations of
/// such a count. Below the least share the taper is not named, which counts as nought here.
fn assert_even(shares: &[f64], what: &str) {
    for tenth in 1..10 {
        let wanted = f64::from(tenth) / 10.0;
        let below = shares.iter().filter(|&&share| share < wanted).count();
        let got = f64::from(u32::try_from(below).unwrap()) / f64::from(DRAWS);
        let deviation = (wanted * (1.0 - wanted) / f64::from(DRAWS)).sqrt();
        assert!(
            (got - wanted).abs() < 4.0 * deviation,
            "{what}: {got} of the shares below {wanted}"
        );
    }
}

#[test]
fn the_share_is_even_under_the_truth() {
    assert_even(
        &shares("morse-3", [5.0, 70.0], MICROMETER),
        "in the middle, micrometer",
    );
    assert_even(
        &shares("jarno-10", [20.0, 100.0], CALLIPER),
        "in the middle, calliper",
    );
    assert_even(
        &shares("steep-40", [5.0, 55.0], MICROMETER),
        "in the middle, steep",
    );
}

/// With one place, or both, right at the last diameter that still counts, squares of one and of two places mix.
#[test]
fn the_share_is_even_at_the_ends_too() {
    let (_, taper) = row("jarno-10");
    let length = taper.length.to_mm();
    let [first, last] = [-0.10 * length, 1.05 * length];
    assert_even(
        &shares("jarno-10", [first, 80.0], MICROMETER),
        "at the large end",
    );
    assert_even(
        &shares("jarno-10", [40.0, last], MICROMETER),
        "at the small end",
    );
    let both = shares("jarno-10", [first, last], MICROMETER);
    let excluded = both.iter().filter(|&&share| share < LEAST_SHARE).count();
    let got = f64::from(u32::try_from(excluded).unwrap()) / f64::from(DRAWS);
    assert!(got <= 1.5 * LEAST_SHARE, "both ends: {got} excluded");
}

/// Two standard deviations hold 95.45 % of normal errors.
#[test]
fn errors_hold_as_often_as_they_say() {
    let (size, taper) = row("morse-4");
    let places = [10.0, 90.0];
    let mut dice = Dice(3);
    let [mut ratios, mut angles, mut gauges, mut named] = [0_u32; 4];
    for _ in 0..DRAWS {
        let answer = recognise(&measure(&mut dice, taper, places, MICROMETER));
        let ratio = answer.ratio.unwrap();
        ratios += u32::from((ratio.value - taper.ratio).abs() <= ratio.error);
        let angle = answer.half_angle.unwrap();
        angles += u32::from((angle.value - taper.half_angle()).abs() <= angle.error);
        if let Some(found) = answer.candidates.iter().find(|found| found.size == size) {
            named += 1;
            let off = (found.gauge_plane.value.to_mm() - places[0]).abs();
            gauges += u32::from(off <= found.gauge_plane.error.to_mm());
        }
    }
    for (what, held, of) in [
        ("ratio", ratios, DRAWS),
        ("angle", angles, DRAWS),
        ("gauge plane", gauges, named),
    ] {
        let share = f64::from(held) / f64::from(of);
        assert!((share - 0.9545).abs() < 0.01, "{what}: {share}");
    }
}
