//! The least of a function of one number, on a logarithmic scale.

use super::law::Window;

/// What came of trying one value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tried<T> {
    /// How far it is from being allowed: zero where it is, above zero in any unit where it is not.
    pub miss: f64,
    /// What it costs; where it is not allowed this counts for nothing.
    pub cost: f64,
    /// What was tried.
    pub what: T,
}

impl<T> Tried<T> {
    /// Whether it is better: nearer to being allowed, and among the allowed cheaper.
    fn beats(&self, other: &Self) -> bool {
        self.miss < other.miss || (self.miss == 0.0 && other.miss == 0.0 && self.cost < other.cost)
    }

    /// What has no finite cost is as far from being allowed as can be.
    fn cleaned(mut self) -> Self {
        if self.miss.is_nan() || !self.cost.is_finite() {
            self.miss = f64::INFINITY;
        }
        self
    }

    /// The value itself where it is allowed.
    pub fn allowed(self) -> Option<T> {
        (self.miss == 0.0).then_some(self.what)
    }
}

/// Parts of the first, coarse look.
const PARTS: u32 = 8;

/// The width, as a difference of logarithms, at which the search ends: a cost that changes by less than ten per cent
/// when the value changes by one per cent is then known to a millionth.
const WIDTH: f64 = 1e-7;

/// The share of the golden section.
const GOLDEN: f64 = 0.618_033_988_749_894_9;

/// The best value in a window whose ends are finite and above zero; `None` where it is empty.
///
/// Nine values in equal ratios first; then, between the neighbours of the best, golden sections. Where an end is the
/// best, one look beside it ends the search.
///
/// # Accuracy
/// In a geometric programme, where costs are sums of products of powers and limits are such products, the logarithms
/// of cost and of what a limit lacks are convex over the logarithm of the value, also after everything else was chosen
/// for the best. So towards the best value first the miss falls, then the cost, and neither turns twice: every
/// comparison throws away a part that cannot hold the best, and the cost is within a millionth of the least.
/// For other functions it finds the bottom of the valley that the first look points to; that a narrower valley between
/// the nine values is lower cannot be excluded.
pub fn least_between<T>(window: Window, mut at: impl FnMut(f64) -> Tried<T>) -> Option<Tried<T>> {
    let Window { least, most } = window;
    if !(0.0 < least && least <= most && most < f64::INFINITY) {
        return None;
    }
    let (low, high) = (least.ln(), most.ln());
    let part = (high - low) / f64::from(PARTS);
    // The ends exactly as they were given: a limit often stands on them.
    let mut on = |logarithm: f64| at(logarithm.exp().clamp(least, most)).cleaned();
    let mut best = on(low);
    if part <= 0.0 {
        return Some(best);
    }
    let mut best_part = 0;
    for number in 1..=PARTS {
        let tried = on(low + part * f64::from(number));
        if tried.beats(&best) {
            (best, best_part) = (tried, number);
        }
    }
    let beside = match best_part {
        0 => Some(low + WIDTH),
        PARTS => Some(high - WIDTH),
        _ => None,
    };
    if beside.is_some_and(|beside| !on(beside).beats(&best)) {
        return Some(best);
    }
    let middle = low + part * f64::from(best_part);
    let ends = ((middle - part).max(low), (middle + part).min(high));
    Some(golden(ends, best, on))
}

/// Golden sections between the ends, on the logarithms; the best of all that was tried.
fn golden<T>(
    (mut low, mut high): (f64, f64),
    mut best: Tried<T>,
    mut on: impl FnMut(f64) -> Tried<T>,
) -> Tried<T> {
    let inner = |low: f64, high: f64| (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
    let (mut left, mut right) = inner(low, high);
    let (mut at_left, mut at_right) = (on(left), on(right));
    while high - low > WIDTH {
        let dropped;
        if at_left.beats(&at_right) {
            high = right;
            (left, right) = (inner(low, high).0, left);
            (at_left, at_right, dropped) = (on(left), at_left, at_right);
        } else {
            low = left;
            (left, right) = (right, inner(low, high).1);
            (dropped, at_left, at_right) = (at_left, at_right, on(right));
        }
        if dropped.beats(&best) {
            best = dropped;
        }
    }
    for last in [at_left, at_right] {
        if last.beats(&best) {
            best = last;
        }
    }
    best
}

#[cfg(test)]
#[allow(clippy::float_cmp, reason = "exact results are meant")]
mod tests {
    use super::*;

    fn found(least: f64, most: f64, at: impl Fn(f64) -> (f64, f64)) -> Option<Tried<f64>> {
        least_between(Window { least, most }, |what| {
            let (miss, cost) = at(what);
            Tried { miss, cost, what }
        })
    }

    #[test]
    fn a_valley_is_found_where_it_is() {
        // x + a/x is least at √a, where it is 2√a.
        for root in [0.11, 0.2, 1.0, 3.0, 8.9] {
            let best = found(0.1, 9.0, |x| (0.0, x + root * root / x)).unwrap();
            assert!((best.cost / (2.0 * root) - 1.0).abs() < 1e-12, "{root}");
        }
    }

    #[test]
    fn an_end_is_taken_exactly_and_soon() {
        let mut looks = 0;
        let window = Window {
            least: 0.1,
            most: 0.3,
        };
        let best = least_between(window, |x| {
            looks += 1;
            Tried {
                miss: 0.0,
                cost: 1.0 / x,
                what: x,
            }
        });
        assert_eq!(best.unwrap().what, 0.3);
        assert_eq!(looks, 10);
    }

    #[test]
    fn a_narrow_gap_between_limits_is_found() {
        // Allowed only from 0.412345 to 0.412346, far narrower than the first look.
        let miss = |x: f64| (0.412_345 / x).ln().max((x / 0.412_346).ln()).max(0.0);
        let best = found(0.1, 9.0, |x| (miss(x), x)).unwrap();
        assert_eq!(best.miss, 0.0);
        assert!((best.cost / 0.412_345 - 1.0).abs() < 1e-6, "{best:?}");
    }

    #[test]
    fn nothing_allowed_is_said() {
        let best = found(0.1, 9.0, |x| (1.0 + x, x)).unwrap();
        assert_eq!(best.allowed(), None);
        assert_eq!(found(2.0, 1.0, |x| (0.0, x)), None);
        assert_eq!(
            found(0.1, 9.0, |x| (0.0, x * f64::NAN)).unwrap().allowed(),
            None
        );
    }

    #[test]
    fn one_value_is_a_window_too() {
        assert_eq!(found(2.0, 2.0, |x| (0.0, x)).unwrap().allowed(), Some(2.0));
    }
}
