//! What the rework leaves of the shank's strength and stiffness, section by section.
//!
//! Both are looked at over the same stretch, from the shoulder to the chamfer at the finished end. The new centre is
//! left aside: nothing bears load at the face of the end.

use serde::Serialize;

use super::cuts::{bases_at, section_at};
use super::finished::WantedShank;
use crate::order;
use crate::part::{HAIR, Pick, Profile, Received, SAME};
use crate::quantity::{Length, SecondMoment, Volume};
use crate::strength::{Basis, Section};
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// The weakest places of a shank, each kind of load by itself.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Weakest {
    /// Where it is weakest in bending.
    pub at: Length,
    /// Diameter there.
    pub diameter: Length,
    /// The side of a step on which it is.
    #[serde(skip)]
    pub(crate) beside: Length,
    /// What the section there is made of, and by which approximations it was reckoned.
    pub bases: Vec<Basis>,
    /// Least section modulus in bending.
    pub bending_modulus: Volume,
    /// Least section modulus in torsion.
    pub torsion_modulus: Volume,
    /// Least second moment of area.
    pub second_moment: SecondMoment,
    /// Least torsion constant.
    pub torsion_constant: SecondMoment,
}

/// What is kept, as shares of what was.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Kept {
    /// The weakest places as received.
    pub before: Weakest,
    /// The weakest places when finished.
    pub after: Weakest,
    /// Strength in bending.
    pub bending: Figure<f64>,
    /// Strength in torsion.
    pub torsion: Figure<f64>,
    /// Stiffness in bending.
    pub stiffness: Figure<f64>,
    /// Stiffness in torsion.
    pub twist: Figure<f64>,
}

impl Kept {
    /// How many times as far it bends under the same side load; `None` where nothing is left to bend.
    ///
    /// # Source
    /// Deflection goes with 1/I under the same load: the elastic beam.
    pub fn bends_further(&self) -> Option<f64> {
        let times = self.stiffness.value.recip();
        times.is_finite().then_some(times)
    }
}

/// Looks for the weakest places before and after; `None` where there is no shank, or it bore nothing before.
pub(crate) fn kept(received: &Received, shank: &WantedShank) -> Option<Kept> {
    let end = shank.length.min(received.shank_length) - shank.chamfer;
    let finished = shank.outer.merge(&received.root, Pick::Smaller);
    let places = places(received, &finished, end);
    let before = weakest(received, &received.root, &places, |_| Length::ZERO)?;
    let after = weakest(received, &finished, &places, |z| received.off_axis.at(z))?;
    if before.bending_modulus.to_mm3() <= 0.0 || before.torsion_modulus.to_mm3() <= 0.0 {
        return None;
    }
    let modulus = |of: fn(&Weakest) -> Volume| {
        let (was, is) = (of(&before), of(&after));
        let values = [Value::Volume(was), Value::Volume(is)];
        share(is / was, "W₁/W₀", ["W₀", "W₁"], values)
    };
    let moment = |of: fn(&Weakest) -> SecondMoment| {
        let (was, is) = (of(&before), of(&after));
        let values = [Value::SecondMoment(was), Value::SecondMoment(is)];
        share(is / was, "I₁/I₀", ["I₀", "I₁"], values)
    };
    Some(Kept {
        bending: modulus(|it| it.bending_modulus),
        torsion: modulus(|it| it.torsion_modulus),
        stiffness: moment(|it| it.second_moment),
        twist: moment(|it| it.torsion_constant),
        before,
        after,
    })
}

fn share(
    value: f64,
    formula: &'static str,
    symbols: [&'static str; 2],
    values: [Value; 2],
) -> Figure<f64> {
    let meanings = [Meaning::SectionBefore, Meaning::SectionAfter];
    let inputs = symbols.into_iter().zip(meanings).zip(values);
    Figure {
        value: if value.is_finite() { value } else { 0.0 },
        range: None,
        working: Working {
            symbol: "q",
            formula,
            parts: &[],
            inputs: inputs
                .map(|((symbol, meaning), value)| Input::new(symbol, meaning, value))
                .collect(),
            source: Source::Geometry,
        },
    }
}

/// Every place where the section may be weakest, and where to look for it: both sides of each edge, and the middle of
/// each feature.
fn places(received: &Received, finished: &Profile, end: Length) -> Vec<(Length, Length)> {
    let edges = [&received.root, finished]
        .into_iter()
        .chain(received.bores.iter().map(|bore| &bore.widest))
        .flat_map(Profile::points)
        .map(|point| point.z);
    let features = received
        .features
        .iter()
        .flat_map(|it| [it.from, (it.from + it.to) / 2.0, it.to]);
    let through = received
        .features
        .iter()
        .filter_map(crate::part::FeatureShape::through)
        .flat_map(|(from, to)| [from, to]);
    let mut places: Vec<Length> = edges
        .chain(features)
        .chain(through)
        .chain([end])
        .filter(|z| Length::ZERO <= *z && *z <= end)
        .collect();
    order::by_number(&mut places, |z| z.to_mm());
    places.dedup_by(|a, b| (*a - *b).abs().to_mm() < SAME);
    // A hair to either side tells apart the two sides of a step.
    let sides = places
        .into_iter()
        .flat_map(|z| [(z, z - HAIR), (z, z + HAIR)]);
    sides
        .filter(|(_, beside)| Length::ZERO < *beside && *beside < end)
        .collect()
}

fn weakest(
    received: &Received,
    outer: &Profile,
    places: &[(Length, Length)],
    off_axis: impl Fn(Length) -> Length,
) -> Option<Weakest> {
    // The place that is weakest in bending, and the least of every property anywhere.
    let mut found: Option<(Length, Length, Section)> = None;
    let mut least: Option<Section> = None;
    for (place, z) in places {
        let here = at(received, outer.radius_at(*z), *z, off_axis(*z));
        // Of places that are alike the one nearest to the shoulder, whatever rounding says.
        let weaker = found.as_ref().is_none_or(|(_, _, found)| {
            here.bending_modulus < found.bending_modulus * (1.0 - 1e-9)
        });
        if weaker {
            found = Some((*place, *z, here));
        }
        least = Some(least.map_or(here, |least| least.weaker(here)));
    }
    let ((at, beside, _), least) = (found?, least?);
    let radius = outer.radius_at(beside);
    Some(Weakest {
        at,
        beside,
        diameter: radius * 2.0,
        bases: bases_at(
            radius,
            widest_hole(received, beside, off_axis(beside)),
            &received.features,
            beside,
        ),
        bending_modulus: least.bending_modulus,
        torsion_modulus: least.torsion_modulus,
        second_moment: least.second_moment,
        torsion_constant: least.torsion_constant,
    })
}

/// The widest hole at a place, with how far it is off the axis.
fn widest_hole(received: &Received, z: Length, off_axis: Length) -> (Length, Length) {
    let holes = received
        .bores
        .iter()
        .map(|bore| (bore.widest.radius_at(z), bore.off_centre + off_axis));
    holes
        .filter(|(radius, _)| radius.to_mm() > SAME)
        .max_by(|a, b| a.0.to_mm().total_cmp(&b.0.to_mm()))
        .unwrap_or_default()
}

/// The section of the finished shank at a place.
pub(crate) fn section_of(received: &Received, shank: &WantedShank, z: Length) -> Section {
    let stock = received.root.radius_at(z);
    let radius = shank.outer.radius_at(z).min(stock);
    at(received, radius, z, received.off_axis.at(z))
}

/// The section of a shank with this radius at a place, threads in holes at their major diameter. Of several holes each
/// property has the one that leaves least of it.
fn at(received: &Received, radius: Length, z: Length, off_axis: Length) -> Section {
    let with_hole = |hole| section_at(radius, hole, &received.features, z);
    received
        .bores
        .iter()
        .map(|bore| (bore.widest.radius_at(z), bore.off_centre + off_axis))
        .filter(|(radius, _)| radius.to_mm() > SAME)
        .map(with_hole)
        .reduce(Section::weaker)
        .unwrap_or_else(|| with_hole(Default::default()))
}
