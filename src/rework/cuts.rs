//! One cross-section of the part: a round with the hole and the features that cross it there.

use crate::part::{CutShape, FeatureShape, SAME};
use crate::quantity::{Angle, Length};
use crate::strength::{Basis, CrossSection, Cut, Hole, Outside, Section};

/// The properties of the section at a place: the outside radius, the hole's radius and offset, and the features.
///
/// How features lie to one another round the axis is not entered: they are all taken on one side, flats first.
pub(crate) fn section_at(
    radius: Length,
    hole: (Length, Length),
    features: &[FeatureShape],
    z: Length,
) -> Section {
    #[expect(
        clippy::redundant_closure_for_method_calls,
        reason = "the method itself is tied to one lifetime"
    )]
    with_section(radius, hole, features, z, |section| section.properties())
}

/// What the properties of that section rest on, each approximation once.
pub(crate) fn bases_at(
    radius: Length,
    hole: (Length, Length),
    features: &[FeatureShape],
    z: Length,
) -> Vec<Basis> {
    with_section(radius, hole, features, z, |section| {
        let mut bases = Vec::new();
        for basis in section.bases() {
            if !bases.contains(&basis) {
                bases.push(basis);
            }
        }
        bases
    })
}

fn with_section<R>(
    radius: Length,
    hole: (Length, Length),
    features: &[FeatureShape],
    z: Length,
    read: impl FnOnce(&CrossSection) -> R,
) -> R {
    let mut cuts: Vec<Cut> = features
        .iter()
        .flat_map(|feature| cuts_at(feature, z))
        .collect();
    join_pockets(&mut cuts);
    let (hole_radius, offset) = hole;
    read(&CrossSection {
        diameter: radius * 2.0,
        outside: Outside::Plain,
        hole: (hole_radius.to_mm() > SAME).then_some(Hole {
            diameter: hole_radius * 2.0,
            offset,
            towards: Angle::ZERO,
        }),
        cuts: &cuts,
    })
}

/// Makes one keyway of several at one place, as wide and as deep as any of them: all lie on one side, and each by itself
/// would double the work.
fn join_pockets(cuts: &mut Vec<Cut>) {
    let mut joined: Option<(Length, Length, Angle)> = None;
    cuts.retain(|cut| {
        let Cut::Keyway { width, floor, at } = *cut else {
            return true;
        };
        joined = Some(match joined {
            Some((wide, low, at)) => (wide.max(width), low.min(floor), at),
            None => (width, floor, at),
        });
        false
    });
    cuts.extend(joined.map(|(width, floor, at)| Cut::Keyway { width, floor, at }));
}

/// What a feature cuts away at a place; nothing beside it.
pub(crate) fn cuts_at(feature: &FeatureShape, z: Length) -> Vec<Cut> {
    if z < feature.from || feature.to < z {
        return Vec::new();
    }
    let at = Angle::ZERO;
    // Half the chord of a circle of this radius about the feature's middle.
    let chord = |radius: Length| {
        let beside = (z - (feature.from + feature.to) / 2.0).to_mm();
        let radius = radius.to_mm();
        Length::mm((radius * radius - beside * beside).max(0.0).sqrt())
    };
    match feature.cut {
        CutShape::Flat { distance, both } => {
            let opposite = both.then_some(Cut::Flat {
                distance,
                at: Angle::degrees(180.0),
            });
            [Cut::Flat { distance, at }]
                .into_iter()
                .chain(opposite)
                .collect()
        }
        CutShape::Keyway { width, bottom } => vec![Cut::Keyway {
            width,
            floor: bottom,
            at,
        }],
        CutShape::Woodruff {
            width,
            bottom,
            disc_radius,
        } => vec![Cut::Keyway {
            width,
            floor: bottom + disc_radius - chord(disc_radius),
            at,
        }],
        CutShape::CrossHole { diameter } => vec![Cut::CrossHole {
            diameter: chord(diameter / 2.0) * 2.0,
            along: at,
        }],
        CutShape::Tang { half, slot } => {
            let mut cuts = Cut::tang(half * 2.0, at).to_vec();
            let slotted = slot.filter(|(_, depth)| feature.to - *depth <= z);
            cuts.extend(slotted.map(|(width, _)| Cut::Slot { width, along: at }));
            cuts
        }
    }
}
