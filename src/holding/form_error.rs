//! The shape that a cut leaves because work and tool give way, and how much of an error the next pass copies.
//!
//! Places are counted from the chuck face, or from the head centre. Where work and tool part by δ, the diameter comes out
//! larger by 2 δ. The tool is taken to be set to size while nothing presses on it, so that what gives evenly all along is
//! counted too; a trial cut takes that part out.

use serde::Serialize;

use super::supports::Held;
use crate::quantity::{Force, Length, Stiffness};

/// How many places the greatest error is first looked for at; the shape between them is smooth.
const PLACES: u32 = 48;

/// Steps of the search between two places: each leaves 0.618 of the stretch, so 24 of them leave a hundred-thousandth.
const STEPS: u32 = 24;

/// What is left of a stretch by one step of a golden-section search, (√5 − 1)/2.
const GOLDEN: f64 = 0.618_033_988_749_895;

/// The form that the turned stretch has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shape {
    /// The same all along, as far as it matters.
    Even,
    /// Larger at the free end.
    BellMouth,
    /// Larger at the end towards the chuck, or the head centre.
    LargerAtShoulder,
    /// Larger in the middle than at either end.
    Barrel,
    /// Smaller in the middle than at either end.
    Waist,
}

/// One place of the turned stretch.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FormPoint {
    /// From the chuck face.
    pub at: Length,
    /// How far work and tool part there.
    pub parting: Length,
    /// How much larger the diameter comes out than the tool was set to.
    pub size_error: Length,
}

/// The shape that one pass leaves on a stretch.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FormError {
    /// Places evenly along the stretch, from the chuck side, for a chart.
    pub points: Vec<FormPoint>,
    /// The largest diameter.
    pub greatest: FormPoint,
    /// The smallest diameter.
    pub least: FormPoint,
    /// How much larger the free end comes out than the chuck side; negative when smaller.
    pub taper: Length,
    /// What to call it.
    pub shape: Shape,
}

impl FormError {
    /// The shape left between `from` and `to` by a force away from the tool that is `radial` at each place.
    ///
    /// `samples`: how many points to give, at least two. `negligible`: a difference of diameters that does not matter;
    /// below it the shape is even.
    ///
    /// # Accuracy
    /// As good as the force and the springs. The greatest and the least are found among 48 places, then to
    /// a hundred-thousandth of the gap between them.
    /// # Source
    /// Twice the deflection; the shape is named by the larger of bulge, hollow and taper: own rule.
    /// # Example
    /// ```
    /// use skimwright::holding::{Beam, FormError, Held, Segment, Shape, Springs, Support};
    /// use skimwright::quantity::{Force, Length, SecondMoment, Stress};
    /// let bar = Beam::new(&[Segment {
    ///     length: Length::mm(100.0),
    ///     second_moment: SecondMoment::mm4(7854.0),
    ///     modulus: Stress::mpa(210_000.0),
    /// }])
    /// .unwrap();
    /// let held = Held::new(bar, Support::Chuck, Springs::RIGID).unwrap();
    /// let (chuck, end) = (Length::ZERO, Length::mm(100.0));
    /// let left = FormError::along(&held, |_| Force::newtons(100.0), (chuck, end), 11, Length::um(1.0));
    /// assert_eq!(left.shape, Shape::BellMouth);
    /// // Twice F L³/(3 E I).
    /// assert!((left.greatest.size_error.to_um() - 40.42).abs() < 0.01);
    /// ```
    pub fn along(
        held: &Held,
        radial: impl Fn(Length) -> Force,
        (from, to): (Length, Length),
        samples: u32,
        negligible: Length,
    ) -> Self {
        let point = |at: Length| {
            let parting = held.parting(at, radial(at));
            FormPoint {
                at,
                parting,
                size_error: parting * 2.0,
            }
        };
        let points: Vec<FormPoint> = evenly(from, to, samples.max(2)).map(point).collect();
        let error = |at: Length| point(at).size_error.to_mm();
        let greatest = point(highest_place(from, to, error));
        let least = point(highest_place(from, to, |at| -error(at)));
        let ends = (point(from).size_error, point(to).size_error);
        let taper = ends.1 - ends.0;
        let bulge = greatest.size_error - ends.0.max(ends.1);
        let hollow = ends.0.min(ends.1) - least.size_error;
        Self {
            shape: shape(taper, bulge, hollow, negligible),
            points,
            greatest,
            least,
            taper,
        }
    }

    /// Largest less smallest diameter: what the tolerance has to hold even after the size was set by a trial cut.
    pub fn spread(&self) -> Length {
        self.greatest.size_error - self.least.size_error
    }
}

/// Names a shape by what there is most of.
fn shape(taper: Length, bulge: Length, hollow: Length, negligible: Length) -> Shape {
    let most = taper.abs().max(bulge).max(hollow);
    if most <= negligible {
        Shape::Even
    } else if bulge >= most {
        Shape::Barrel
    } else if hollow >= most {
        Shape::Waist
    } else if taper > Length::ZERO {
        Shape::BellMouth
    } else {
        Shape::LargerAtShoulder
    }
}

/// The largest radial force, the same all along, with which the diameter comes out no more than `allowed` too large
/// anywhere between the two places; `None` when nothing gives there, or when nothing is allowed.
///
/// # Accuracy
/// As good as the springs; the worst place to within a hundred-thousandth of the stretch.
pub fn largest_force(held: &Held, (from, to): (Length, Length), allowed: Length) -> Option<Force> {
    let worst = held.gives(highest_place(from, to, |at| held.gives(at)));
    (worst > 0.0 && allowed > Length::ZERO).then(|| Force::newtons(allowed.to_mm() / (2.0 * worst)))
}

/// The share of an error of the surface before that a pass leaves on the surface after it, be it an uneven stock,
/// runout or a wrong size.
///
/// `cutting`: how much the radial force grows with the depth of cut. `holding`: stiffness between work and tool at the
/// place, `None` when nothing gives.
///
/// # Accuracy
/// Exact where the force grows evenly with the depth; a light cut with a blunt edge rubs and leaves more.
/// # Source
/// ε = K c/(1 + K c) with c the inverse of the stiffness: from memory, textbooks of machining.
/// # Example
/// ```
/// use skimwright::holding::copied_share;
/// use skimwright::quantity::Stiffness;
/// let k = Stiffness::newtons_per_um;
/// assert!((copied_share(k(1.0), Some(k(9.0))) - 0.1).abs() < 1e-12);
/// ```
pub fn copied_share(cutting: Stiffness, holding: Option<Stiffness>) -> f64 {
    let cutting = cutting.max(Stiffness::ZERO);
    match holding {
        Some(holding) if holding > Stiffness::ZERO => cutting / (cutting + holding),
        Some(_) if cutting > Stiffness::ZERO => 1.0,
        _ => 0.0,
    }
}

/// The share of an error that is left after several passes, each of which leaves `share` of what it meets: ε to the
/// power of their number.
///
/// # Accuracy
/// Down to where the tool rubs; spring passes with no new infeed are often too light to cut.
pub fn copied_after(share: f64, passes: u32) -> f64 {
    (0..passes).fold(1.0, |left, _| left * share)
}

/// Places evenly from one to another, ends included.
fn evenly(from: Length, to: Length, count: u32) -> impl Iterator<Item = Length> {
    let gaps = f64::from(count.max(2) - 1);
    (0..count).map(move |index| from + (to - from) * (f64::from(index) / gaps))
}

/// Where a smooth function is highest between two places: the best of some, refined between its neighbours by golden
/// section.
fn highest_place(from: Length, to: Length, height: impl Fn(Length) -> f64) -> Length {
    let gap = (to - from) / f64::from(PLACES - 1);
    let best = evenly(from, to, PLACES)
        .map(|at| (at, height(at)))
        .reduce(|best, next| if next.1 > best.1 { next } else { best });
    let (best, best_height) = best.unwrap_or((from, height(from)));
    let (low, high) = (from.min(to), from.max(to));
    let reach = gap.abs();
    let (mut low, mut high) = ((best - reach).max(low), (best + reach).min(high));
    for _ in 0..STEPS {
        let span = high - low;
        let (left, right) = (high - span * GOLDEN, low + span * GOLDEN);
        if height(left) >= height(right) {
            high = right;
        } else {
            low = left;
        }
    }
    let refined = (low + high) / 2.0;
    if height(refined) > best_height {
        refined
    } else {
        best
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::holding::{Beam, Segment, Springs, Support};
    use crate::quantity::{SecondMoment, Stress};
    use crate::strength::ring_second;
    use proptest::prelude::*;

    fn held(support: Support, springs: Springs) -> Held {
        let bar = Segment {
            length: Length::mm(120.0),
            second_moment: SecondMoment::mm4(ring_second(8.0, 0.0)),
            modulus: Stress::mpa(210_000.0),
        };
        Held::new(Beam::new(&[bar]).unwrap(), support, springs).unwrap()
    }

    fn whole() -> (Length, Length) {
        (Length::ZERO, Length::mm(120.0))
    }

    fn left(held: &Held) -> FormError {
        let force = Force::newtons(100.0);
        FormError::along(held, |_| force, whole(), 21, Length::um(0.5))
    }

    #[test]
    fn each_way_of_holding_leaves_its_shape() {
        let spring = |k: f64| Some(Stiffness::newtons_per_um(k));
        let chuck = left(&held(Support::Chuck, Springs::RIGID));
        assert_eq!(chuck.shape, Shape::BellMouth);
        assert_eq!(chuck.greatest.at, whole().1);
        let centre = left(&held(Support::ChuckAndCentre, Springs::RIGID));
        assert_eq!(centre.shape, Shape::Barrel);
        // 2 − √2 of the length: where a³ b²-shaped deflection is greatest.
        assert!((centre.greatest.at.to_mm() / 120.0 - (2.0 - 2.0_f64.sqrt())).abs() < 1e-6);
        let soft = Springs {
            tail: spring(5.0),
            ..Springs::RIGID
        };
        assert_eq!(
            left(&held(Support::ChuckAndCentre, soft)).shape,
            Shape::BellMouth
        );
        let soft_head = Springs {
            head: spring(2.0),
            tail: spring(20.0),
            ..Springs::RIGID
        };
        assert_eq!(
            left(&held(Support::BetweenCentres, soft_head)).shape,
            Shape::LargerAtShoulder
        );
        let slides = Springs {
            tool_post: spring(10.0),
            ..Springs::RIGID
        };
        // On a short stretch at the chuck only the slides give: 2 · 100/10 µm everywhere.
        let short = (Length::ZERO, Length::mm(5.0));
        let even = FormError::along(
            &held(Support::Chuck, slides),
            |_| Force::newtons(100.0),
            short,
            5,
            Length::um(0.5),
        );
        assert_eq!(even.shape, Shape::Even);
        assert!((even.least.size_error.to_um() - 20.0).abs() < 1e-9);
        assert!(even.spread().to_um() < 0.5);
    }

    /// A stiff bar on two soft centres is a see-saw: with 1/k at both ends the middle gives half, a waist.
    #[test]
    fn soft_centres_leave_a_waist() {
        let spring = Some(Stiffness::newtons_per_um(1.0));
        let springs = Springs {
            head: spring,
            tail: spring,
            ..Springs::RIGID
        };
        let error = left(&held(Support::BetweenCentres, springs));
        assert_eq!(error.shape, Shape::Waist);
        assert!((error.points[0].size_error.to_um() - 200.0).abs() < 1e-9);
        assert!(error.taper.abs().to_um() < 1e-9);
    }

    #[test]
    fn spring_passes_take_their_share_each() {
        let k = Stiffness::newtons_per_um;
        assert!((copied_after(copied_share(k(2.0), Some(k(8.0))), 3) - 0.008).abs() < 1e-15);
        assert!(copied_share(k(2.0), None) == 0.0);
        assert!((copied_share(k(2.0), Some(k(0.0))) - 1.0).abs() < 1e-15);
        assert!(copied_share(k(0.0), Some(k(0.0))) == 0.0);
    }

    proptest! {
        /// With the largest force, the greatest error is what was allowed.
        #[test]
        fn the_largest_force_uses_the_allowance(
            tail in 1.0..50.0_f64, allowed in 1.0..100.0_f64, from in 0.0..60.0_f64, span in 5.0..60.0_f64,
        ) {
            let springs = Springs {
                tail: Some(Stiffness::newtons_per_um(tail)),
                tool_post: Some(Stiffness::newtons_per_um(20.0)),
                ..Springs::RIGID
            };
            let range = (Length::mm(from), Length::mm(from + span));
            for support in [Support::Chuck, Support::ChuckAndCentre, Support::BetweenCentres] {
                let held = held(support, springs);
                let force = largest_force(&held, range, Length::um(allowed)).unwrap();
                let error = FormError::along(&held, |_| force, range, 40, Length::ZERO);
                prop_assert!((error.greatest.size_error.to_um() / allowed - 1.0).abs() < 1e-9);
                for point in &error.points {
                    prop_assert!(point.size_error.to_um() <= allowed * (1.0 + 1e-6));
                }
            }
        }
    }
}
