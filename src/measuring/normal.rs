//! The normal law: how likely it is to be above so many standard deviations, and the way back.

use core::f64::consts::{FRAC_2_SQRT_PI, SQRT_2};

/// Beyond this argument of the complement of the error function its continued fraction is used, below its series: both
/// give all digits there.
const SERIES_UP_TO: f64 = 2.5;

/// Levels of the continued fraction, terms of the series: enough for the last digit at the change from one to the other.
const LEVELS: u32 = 60;

/// The chance to be more than `score` standard deviations above the mean; a score that is no number counts as nought.
///
/// # Accuracy
/// Within 1 × 10⁻¹³, and within a part in 10¹¹ of tails down to 10⁻¹⁰⁰.
/// # Source
/// M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 7.1.6 and 7.1.14 (from memory, checked against
/// a library).
/// # Example
/// ```
/// assert_eq!(skimwright::measuring::chance_above(0.0), 0.5);
/// ```
pub fn chance_above(score: f64) -> f64 {
    if score.is_nan() {
        return 0.5;
    }
    let x = score.abs() / SQRT_2;
    let half = complement(x) / 2.0;
    if score < 0.0 { 1.0 - half } else { half }
}

/// The score that is exceeded with a chance, between −40 and 40.
///
/// # Accuracy
/// Within 1 × 10⁻¹¹, for chances from 10⁻⁸ to a half; by halving.
pub fn score_of(chance: f64) -> f64 {
    let (mut low, mut high) = (-40.0, 40.0);
    for _ in 0..64 {
        let middle = f64::midpoint(low, high);
        if chance_above(middle) > chance {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

/// Complement of the error function, for `x` of nought or more.
fn complement(x: f64) -> f64 {
    let bell = (-x * x).exp();
    if x < SERIES_UP_TO {
        // 2/√π e^(−x²) Σ 2ⁿ x^(2n+1)/(1 · 3 · … · (2n+1)): no term is below nought.
        let (mut term, mut sum) = (x, x);
        for n in 1..LEVELS {
            term *= 2.0 * x * x / f64::from(2 * n + 1);
            sum += term;
        }
        return 1.0 - FRAC_2_SQRT_PI * bell * sum;
    }
    // √π e^(x²) erfc x = 1/(x + ½/(x + 1/(x + 3/2/(x + …)))), from the inside out.
    let inside = (1..LEVELS)
        .rev()
        .fold(x, |inner, n| x + f64::from(n) / 2.0 / inner);
    FRAC_2_SQRT_PI / 2.0 * bell / inside
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Computed with scipy 1.17.1, `scipy.stats.norm.sf`.
    #[test]
    fn chances_agree_with_a_library() {
        for (score, wanted) in [
            (0.0, 0.5),
            (0.5, 0.308_537_538_725_986_9),
            (1.0, 0.158_655_253_931_457_05),
            (1.645, 0.049_984_905_539_121_376),
            (2.0, 0.022_750_131_948_179_19),
            (3.5, 0.000_232_629_079_035_525_12),
            (3.6, 0.000_159_108_590_157_533_64),
            (-1.0, 0.841_344_746_068_542_9),
        ] {
            let got = chance_above(score);
            assert!((got - wanted).abs() < 1e-13, "{score}: {got}");
        }
        // Far out the tail itself keeps its digits.
        let far = chance_above(8.0) / 6.220_960_574_271_785e-16;
        assert!((far - 1.0).abs() < 1e-11, "{far}");
    }

    #[test]
    fn the_score_finds_its_chance_again() {
        for chance in [1e-6, 0.001, 0.05, 0.3, 0.5] {
            let back = chance_above(score_of(chance));
            assert!((back / chance - 1.0).abs() < 1e-9, "{chance}: {back}");
        }
        assert!((score_of(0.05) - 1.644_853_626_951_472_7).abs() < 1e-11);
    }
}
