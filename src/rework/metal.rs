//! Where the metal goes, what it weighs, and where it balances.

use serde::Serialize;

use super::cut_off::CutOff;
use super::cuts::cuts_at;
use crate::order;
use crate::part::{CutShape, FeatureShape, Pick, Profile, Received, SAME};
use crate::quantity::{Angle, Length, Mass, SecondMoment, Volume};
use crate::strength::Cut;
use crate::tables::DensityRange;
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// The metal between an outline and the holes in it, less what is cut into it.
#[derive(Clone, Copy)]
pub(crate) struct Metal<'a> {
    pub(crate) outer: &'a Profile,
    pub(crate) holes: &'a Profile,
    pub(crate) features: &'a [FeatureShape],
}

/// A volume, and that volume times how far its centre lies from the shoulder, in mm⁴.
#[derive(Clone, Copy, Default)]
struct Content {
    volume: f64,
    moment: f64,
}

impl Metal<'_> {
    /// How much there is.
    ///
    /// # Accuracy
    /// Exact for the turned body and its holes; what is cut into it by Gauss's rule, to a hundred-thousandth of the cut.
    pub(crate) fn volume(self) -> Volume {
        Volume::mm3(self.content().volume)
    }

    fn content(self) -> Content {
        let holes = self.outer.merge(self.holes, Pick::Smaller);
        let cut = self.cut_out();
        Content {
            volume: self.outer.volume().to_mm3() - holes.volume().to_mm3() - cut.volume,
            moment: self.outer.moment() - holes.moment() - cut.moment,
        }
    }

    /// What the features take away.
    fn cut_out(self) -> Content {
        let mut sum = Content::default();
        if self.features.is_empty() {
            return sum;
        }
        let (start, end) = (self.outer.start(), self.outer.end());
        let edges = self.features.iter().flat_map(|it| [it.from, it.to]);
        let through = self.features.iter().filter_map(FeatureShape::through);
        let outlines = [self.outer, self.holes]
            .into_iter()
            .flat_map(Profile::points);
        let bends = self.features.iter().flat_map(|it| self.bends(it));
        let mut places: Vec<f64> = edges
            .chain(through.flat_map(<[Length; 2]>::from))
            .chain(bends)
            .chain(outlines.map(|point| point.z))
            .filter(|z| start <= *z && *z <= end)
            .map(Length::to_mm)
            .collect();
        order::numbers(&mut places);
        for (from, to) in places.iter().zip(places.iter().skip(1)) {
            if to - from <= SAME {
                continue;
            }
            let middle = Length::mm(f64::midpoint(*from, *to));
            let here: Vec<&FeatureShape> = self
                .features
                .iter()
                .filter(|it| it.from < middle && middle < it.to)
                .collect();
            if !here.is_empty() {
                self.cut_between(&here, (*from, *to), &mut sum);
            }
        }
        sum
    }

    /// Where what a feature takes away begins or ends within it: where an outline comes out from under its floor, and
    /// where a hole is as wide as the hole across it.
    fn bends(self, feature: &FeatureShape) -> Vec<Length> {
        let outlines = [self.outer, self.holes];
        let middle = (feature.from + feature.to) / 2.0;
        // The square of how far beside its middle a round feature meets an outline of this radius.
        let beside = |radius: f64| {
            if let CutShape::Woodruff {
                bottom,
                disc_radius,
                ..
            } = feature.cut
            {
                let (disc, over) = (disc_radius.to_mm(), radius - bottom.to_mm());
                disc * disc - (disc - over) * (disc - over)
            } else {
                let half = (feature.to - feature.from).to_mm() / 2.0;
                half * half - radius * radius
            }
        };
        if let CutShape::CrossHole { .. } | CutShape::Woodruff { .. } = feature.cut {
            return outlines
                .into_iter()
                .map(|outline| beside(outline.radius_at(middle).to_mm()))
                .filter(|square| *square > 0.0)
                .map(|square| Length::mm(square.sqrt()))
                .flat_map(|off| [middle - off, middle + off])
                .collect();
        }
        let floor = feature.clear_radius().unwrap_or_default();
        outlines
            .into_iter()
            .flat_map(|outline| outline.above(floor.max(Length::ZERO), feature.from, feature.to))
            .flat_map(<[Length; 2]>::from)
            .collect()
    }

    /// Adds what some features take away on a stretch where none of them begins or ends and no outline steps.
    fn cut_between(self, features: &[&FeatureShape], ends: (f64, f64), sum: &mut Content) {
        // The chord of a round hole begins steeply at both ends: there the places go with the angle, not along the axis.
        let round = features.iter().find_map(|it| match it.cut {
            CutShape::CrossHole { diameter } => {
                let middle = f64::midpoint(it.from.to_mm(), it.to.to_mm());
                Some((middle, diameter.to_mm() / 2.0))
            }
            _ => None,
        });
        let to_parameter = |z: f64| match round {
            Some((middle, radius)) => ((z - middle) / radius).clamp(-1.0, 1.0).asin(),
            None => z,
        };
        let place = |parameter: f64| match round {
            Some((middle, radius)) => (middle + radius * parameter.sin(), radius * parameter.cos()),
            None => (parameter, 1.0),
        };
        let (from, to) = (to_parameter(ends.0), to_parameter(ends.1));
        let step = (to - from) / f64::from(STRETCHES);
        let mut low = from;
        for _ in 0..STRETCHES {
            let high = low + step;
            // Gauss's places lie inside, so both outlines are met on this side of any step.
            gauss(low, high, |parameter, weight| {
                let (z, stretch) = place(parameter);
                let lost = self.lost(features, Length::mm(z)) * weight * stretch;
                sum.volume += lost;
                sum.moment += lost * z;
            });
            low = high;
        }
    }

    /// The area that features take away at a place, in mm².
    fn lost(self, features: &[&FeatureShape], z: Length) -> f64 {
        let within = |outline: &Profile| cut_area(features, outline.radius_at(z).to_mm(), z);
        (within(self.outer) - within(self.holes)).max(0.0)
    }
}

/// Stretches that Gauss's rule is used on, between two bends of an outline.
const STRETCHES: u8 = 4;

/// Places and weights of Gauss's rule with five places.
fn gauss(from: f64, to: f64, mut each: impl FnMut(f64, f64)) {
    const PLACES: [(f64, f64); 5] = [
        (-0.906_179_845_938_664, 0.236_926_885_056_189),
        (-0.538_469_310_105_683, 0.478_628_670_499_366),
        (0.0, 0.568_888_888_888_889),
        (0.538_469_310_105_683, 0.478_628_670_499_366),
        (0.906_179_845_938_664, 0.236_926_885_056_189),
    ];
    let (middle, half) = (f64::midpoint(from, to), (to - from) / 2.0);
    for (place, weight) in PLACES {
        each(middle + half * place, half * weight);
    }
}

/// The area of a round of this radius that features take away together at a place, in mm².
///
/// All lie on one side or the other of one diameter: each is a strip about it, from its floor outward.
fn cut_area(features: &[&FeatureShape], radius: f64, z: Length) -> f64 {
    let mut sides: [Vec<(f64, f64)>; 2] = [Vec::new(), Vec::new()];
    let [near, far] = &mut sides;
    for feature in features {
        for cut in cuts_at(feature, z) {
            match cut {
                Cut::Flat { distance, at } if at == Angle::ZERO => {
                    near.push((radius, distance.to_mm()));
                }
                Cut::Flat { distance, .. } => far.push((radius, distance.to_mm())),
                Cut::Keyway { width, floor, .. } => near.push((width.to_mm() / 2.0, floor.to_mm())),
                Cut::CrossHole {
                    diameter: width, ..
                }
                | Cut::Slot { width, .. } => {
                    near.push((width.to_mm() / 2.0, 0.0));
                    far.push((width.to_mm() / 2.0, 0.0));
                }
            }
        }
    }
    sides.map(|strips| union_area(strips, radius)).iter().sum()
}

/// The area that strips of these half widths and floors take away together on one side.
fn union_area(mut strips: Vec<(f64, f64)>, radius: f64) -> f64 {
    // From the widest inward, what is as wide as here or wider has cut down to the lowest of its floors.
    order::by_number(&mut strips, |(half, _)| -half);
    let mut area = 0.0;
    let mut floor = f64::INFINITY;
    for (place, (half, own)) in strips.iter().enumerate() {
        floor = floor.min(*own);
        let next = strips.get(place + 1).map_or(0.0, |(half, _)| *half);
        let to = |half: f64| strip(radius, half.min(radius), floor, radius);
        area += to(*half) - to(next);
    }
    area
}

/// The area of a round of this radius within `half` to both sides of a diameter, from `low` up to `high` along it.
fn strip(radius: f64, half: f64, low: f64, high: f64) -> f64 {
    // Half a chord at a height, and the area under the circle from the middle out to there.
    let chord = |height: f64| (radius * radius - height * height).max(0.0).sqrt();
    let under = |x: f64| {
        let share = if radius > 0.0 {
            (x / radius).min(1.0)
        } else {
            0.0
        };
        f64::midpoint(x * chord(x), radius * radius * share.asin())
    };
    // A cut below the axis is taken up to it: what lies beyond has a finding of its own.
    let low = low.max(0.0);
    if low >= high {
        return 0.0;
    }
    let (level, rim) = (half.min(chord(high)), half.min(chord(low)));
    2.0 * ((high - low) * level + under(rim) - under(level) - low * (rim - level))
}

/// Where the metal of the shank as received goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct MetalBudget {
    /// The shank as received.
    pub received: Volume,
    /// The piece that falls off.
    pub offcut: Volume,
    /// What the cut turns into dust.
    pub kerf: Volume,
    /// What is faced off.
    pub facing: Volume,
    /// What is turned off, the chamfer included.
    pub turned: Volume,
    /// What the new centre takes; where it is deeper than the shank is long, out of the head too.
    pub centred: Volume,
    /// The finished shank.
    pub left: Volume,
}

/// Counts where the metal goes, each share from its own outlines; they add up to the shank as received, and what the
/// centre takes out of the head.
pub(crate) fn metal_budget(
    received: &Received,
    cut: &CutOff,
    finished_outer: &Profile,
    centre: &Profile,
) -> MetalBudget {
    let (finished, mark, end) = (
        cut.shank_finished.value,
        cut.shank_after_cut.value,
        received.shank_length,
    );
    let old_holes = &received.inner;
    let all_holes = old_holes.merge(centre, Pick::Larger);
    let left = |outer: &Profile, holes: &Profile| {
        let metal = Metal {
            outer,
            holes,
            features: &received.features,
        };
        metal.volume()
    };
    let with_head = finished_outer.merge(&received.head, Pick::Larger);
    // All up to a place, so that the differences add up whatever rounding there is in each.
    let up_to = |place| volume_up_to(received, place);
    let (whole, sawn, marked, faced) = (
        up_to(end),
        up_to(mark + cut.kerf),
        up_to(mark),
        up_to(finished),
    );
    MetalBudget {
        received: whole,
        offcut: whole - sawn,
        kerf: sawn - marked,
        facing: marked - faced,
        turned: faced - left(finished_outer, old_holes),
        centred: left(&with_head, old_holes) - left(&with_head, &all_holes),
        left: left(finished_outer, &all_holes),
    }
}

/// The metal of the shank as received between two places.
pub(crate) fn net_volume(received: &Received, from: Length, to: Length) -> Volume {
    volume_up_to(received, to) - volume_up_to(received, from)
}

/// The metal of the shank as received from the shoulder to a place.
fn volume_up_to(received: &Received, place: Length) -> Volume {
    let metal = Metal {
        outer: &received.outer.between(Length::ZERO, place),
        holes: &received.inner,
        features: &received.features,
    };
    metal.volume()
}

/// What the whole part weighs, head and all, and where it balances.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Masses {
    /// The part as received.
    pub before: Figure<Mass>,
    /// What is turned, faced, sawn and drilled to chips.
    pub chips: Figure<Mass>,
    /// The finished part.
    pub after: Figure<Mass>,
    /// Centre of gravity as received, from the shoulder towards the free end; negative in the head.
    pub balance_before: Figure<Length>,
    /// Centre of gravity of the finished part.
    pub balance_after: Figure<Length>,
}

/// Weighs the part before and after; `None` where nothing is left of it.
pub(crate) fn masses(
    received: &Received,
    finished_outer: &Profile,
    holes: &Profile,
    offcut: Volume,
    density: DensityRange,
) -> Option<Masses> {
    let whole = |shank: &Profile, holes: &Profile| {
        let metal = Metal {
            outer: &shank.merge(&received.head, Pick::Larger),
            holes,
            features: &received.features,
        };
        metal.content()
    };
    let before = whole(&received.outer, &received.inner);
    let after = whole(finished_outer, holes);
    let (whole_before, whole_after) = (Volume::mm3(before.volume), Volume::mm3(after.volume));
    // A centre deeper than the shank goes on into the head, so the shank's own budget is not all.
    let chips = whole_before - whole_after - offcut;
    Some(Masses {
        before: mass(whole_before, Meaning::PartVolume, density),
        chips: mass(chips, Meaning::ChipVolume, density),
        after: mass(whole_after, Meaning::PartVolume, density),
        balance_before: balance(before)?,
        balance_after: balance(after)?,
    })
}

/// The centre of gravity; `None` where there is no metal.
fn balance(content: Content) -> Option<Figure<Length>> {
    let moment = SecondMoment::mm4(content.moment);
    (content.volume > SAME).then(|| Figure {
        value: Length::mm(content.moment / content.volume),
        range: None,
        working: Working {
            symbol: "z",
            formula: "S/V",
            parts: &[],
            inputs: vec![
                Input::new("S", Meaning::VolumeMoment, Value::SecondMoment(moment)),
                Input::new(
                    "V",
                    Meaning::PartVolume,
                    Value::Volume(Volume::mm3(content.volume)),
                ),
            ],
            source: Source::Geometry,
        },
    })
}

/// A mass with the range of the material's density.
pub(crate) fn mass(volume: Volume, meaning: Meaning, density: DensityRange) -> Figure<Mass> {
    Figure {
        value: volume * density.typical,
        range: Some(Range {
            low: volume * density.low,
            high: volume * density.high,
        }),
        working: Working {
            symbol: "m",
            formula: "V · ρ",
            parts: &[],
            inputs: vec![
                Input::new("V", meaning, Value::Volume(volume)),
                Input::new(
                    "ρ",
                    Meaning::MaterialDensity,
                    Value::Density(density.typical),
                ),
            ],
            source: Source::Published {
                title: density.source,
                confirmed: density.confirmed,
            },
        },
    }
}
