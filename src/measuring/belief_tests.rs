//! The line against a worked example, against other statistics, and against chance itself.

#[path = "../../tests/support/draw.rs"]
mod draw;

use draw::Draw;

use super::belief::{Belief, Expected, Row};
use super::normal::chance_above;

/// Cuts of the worked example: engaged, off.
const CUTS: [(f64, f64); 3] = [(0.200, 0.189), (0.161, 0.154), (0.097, 0.095)];
const SCATTER: f64 = 0.003;

fn row((engaged, off): (f64, f64)) -> Row {
    Row {
        engaged,
        off,
        variance: SCATTER * SCATTER,
    }
}

fn example() -> Belief {
    let prior = Belief::apart((-0.004, 0.006), (0.97, 0.05));
    prior.after_all(CUTS.map(row))
}

/// Size, its deviation and lower limit of the worked example, and what stands of earlier infeeds.
const SIZE: f64 = 25.062;
const OF_SIZE: f64 = 0.0018;
const LOWER: f64 = 24.987;
const LEFT: f64 = 0.002;

/// Size after an infeed, its deviation, and the odds that it is under the limit.
fn after(belief: &Belief, infeed: f64) -> (f64, f64, f64) {
    let Expected { off, variance } = belief.at(infeed + LEFT);
    let size = SIZE - off;
    let deviation = (variance + SCATTER * SCATTER + OF_SIZE * OF_SIZE).sqrt();
    (size, deviation, chance_above((size - LOWER) / deviation))
}

/// The infeed with so much odds of going under.
fn infeed_for(belief: &Belief, odds: f64) -> f64 {
    let (mut low, mut high) = (0.0, 0.2);
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if after(belief, middle).2 > odds {
            high = middle;
        } else {
            low = middle;
        }
    }
    low
}

/// A worked example computed with numpy, and again as least squares with the prior as two rows more: 25.500, 25.311,
/// 25.157 and 25.062 mm measured, 0.200, 0.150 and 0.090 mm dialled.
#[test]
fn the_worked_example_comes_out_to_its_digits() {
    let belief = example();
    assert!(
        (belief.offset * 1e3 - 0.0974).abs() < 5e-5,
        "{}",
        belief.offset
    );
    assert!((belief.share - 0.95346).abs() < 5e-6, "{}", belief.share);
    let (of_offset, of_share) = (belief.offset_variance.sqrt(), belief.share_variance.sqrt());
    assert!((of_offset * 1e3 - 3.90).abs() < 5e-3, "{of_offset}");
    assert!((of_share - 0.02501).abs() < 5e-6, "{of_share}");
    let correlation = belief.covariance / of_offset / of_share;
    assert!((correlation + 0.904).abs() < 5e-4, "{correlation}");
    for (odds, infeed, size) in [
        (0.20, 0.0728, 24.9905),
        (0.10, 0.0709, 24.9924),
        (0.05, 0.0692, 24.9940),
        (0.01, 0.0661, 24.9970),
        (0.001, 0.0626, 25.0003),
    ] {
        let found = infeed_for(&belief, odds);
        assert!((found - infeed).abs() < 5.1e-5, "{odds}: {found}");
        let (left, deviation, _) = after(&belief, found);
        assert!((left - size).abs() < 5.1e-5, "{odds}: {left}");
        assert!((0.00415..0.00435).contains(&deviation), "{deviation}");
    }
    // Aimed at the middle, both sides are missed alike.
    let engaged = belief.engaged_for(SIZE - 24.9935).unwrap();
    assert!((engaged - LEFT - 0.0697).abs() < 5.1e-5, "{engaged}");
    let (_, _, under) = after(&belief, engaged - LEFT);
    assert!((under - 0.063).abs() < 5e-4, "{under}");
}

/// One case of the stored file.
struct Case {
    prior: [f64; 5],
    cuts: Vec<(f64, f64)>,
    posterior: [f64; 5],
    plain: [f64; 2],
    under: [f64; 5],
}

fn numbers<const N: usize>(text: &str) -> [f64; N] {
    let found: Vec<f64> = text.split(' ').map(|it| it.parse().unwrap()).collect();
    found.try_into().unwrap()
}

fn cases() -> Vec<Case> {
    let file = include_str!("../../tests/outside/last_cuts.csv");
    let case = |line: &str| {
        let [prior, cuts, posterior, plain, under] =
            line.split(',').collect::<Vec<_>>().try_into().unwrap();
        let cut = |text: &str| {
            let (engaged, off) = text.split_once(':').unwrap();
            (engaged.parse().unwrap(), off.parse().unwrap())
        };
        Case {
            prior: numbers(prior),
            cuts: cuts.split(' ').map(cut).collect(),
            posterior: numbers(posterior),
            plain: numbers(plain),
            under: numbers(under),
        }
    };
    file.lines().map(case).collect()
}

impl Case {
    /// What is believed, with the prior's deviations so many times wider.
    fn belief(&self, wider: f64) -> Belief {
        let [offset, of_offset, share, of_share, scatter] = self.prior;
        let prior = Belief::apart((offset, of_offset * wider), (share, of_share * wider));
        prior.after_all(self.cuts.iter().map(|&(engaged, off)| Row {
            engaged,
            off,
            variance: scatter * scatter,
        }))
    }
}

/// `tests/outside/last_cuts.py` says by what the stored results were found.
#[test]
fn beliefs_and_odds_agree_with_other_statistics() {
    let cases = cases();
    assert!(cases.len() >= 30);
    for case in &cases {
        let belief = case.belief(1.0);
        let [offset, share, of_offset, of_share, covariance] = case.posterior;
        assert!((belief.offset - offset).abs() < 1e-10);
        assert!((belief.share - share).abs() < 1e-9);
        assert!((belief.offset_variance.sqrt() / of_offset - 1.0).abs() < 1e-7);
        assert!((belief.share_variance.sqrt() / of_share - 1.0).abs() < 1e-7);
        assert!((belief.covariance / covariance - 1.0).abs() < 1e-6);
        let [size, lower, of_size, engaged, odds] = case.under;
        let Expected { off, variance } = belief.at(engaged);
        let deviation = (variance + case.prior[4].powi(2) + of_size * of_size).sqrt();
        let found = chance_above((size - off - lower) / deviation);
        assert!((found - odds).abs() < 1e-9, "{found} {odds}");
    }
}

/// A prior that knows nothing leaves what ordinary least squares find, and comes nearer as it widens.
#[test]
fn a_widening_prior_comes_to_least_squares() {
    for case in cases() {
        let miss = |wider: f64| {
            let belief = case.belief(wider);
            let [offset, share] = case.plain;
            (belief.offset - offset).abs() + (belief.share - share).abs()
        };
        let misses = [1e1, 1e2, 1e3].map(miss);
        let spread = case.cuts.iter().map(|cut| cut.0).fold(0.0, f64::max)
            - case.cuts.iter().map(|cut| cut.0).fold(1.0, f64::min);
        // Two cuts of nearly one depth tell no slope: there the prior holds out longer.
        let near = case.prior[4] / spread.max(1e-3);
        assert!(misses[2] < 1e-6 + near * near * 5e-3, "{misses:?}");
        assert!(
            misses[2] <= misses[1] && misses[1] <= misses[0] + 1e-12,
            "{misses:?}"
        );
    }
}

/// Lines drawn from what is believed, and cuts from the lines, go under as often as was said: within three deviations of
/// the count.
#[test]
fn as_many_cuts_go_under_as_was_said() {
    const DRAWS: u32 = 100_000;
    let belief = example();
    let mut draw = Draw::new(7);
    for odds in [0.2, 0.05, 0.01] {
        let engaged = infeed_for(&belief, odds) + LEFT;
        let of_offset = belief.offset_variance.sqrt();
        let slope = belief.covariance / belief.offset_variance;
        let rest = (belief.share_variance - slope * belief.covariance).sqrt();
        let mut under = 0;
        for _ in 0..DRAWS {
            let by_offset = of_offset * draw.normal();
            let offset = belief.offset + by_offset;
            let share = belief.share + slope * by_offset + rest * draw.normal();
            let noise = SCATTER.hypot(OF_SIZE) * draw.normal();
            under += u32::from(SIZE - offset - share * engaged - noise < LOWER);
        }
        let wanted = odds * f64::from(DRAWS);
        let allowed = 3.0 * (wanted * (1.0 - odds)).sqrt();
        assert!(
            (f64::from(under) - wanted).abs() < allowed,
            "{odds}: {under}"
        );
    }
}

#[test]
fn a_row_that_says_nothing_teaches_nothing() {
    let belief = example();
    for (engaged, off, variance) in [
        (0.1, 0.1, 0.0),
        (0.1, 0.1, -1.0),
        (f64::NAN, 0.1, 1e-5),
        (0.1, f64::INFINITY, 1e-5),
        (f64::INFINITY, 0.1, 1e-5),
    ] {
        let row = Row {
            engaged,
            off,
            variance,
        };
        assert_eq!(belief.after(&row), belief);
    }
    let flat = Belief::apart((0.0, 0.01), (0.0, 0.1));
    assert!(flat.engaged_for(0.1).is_none());
}
