//! What is cut into the shank: flats, keyways, cross holes, the tang.
//!
//! Each is shown twice: in the view as it looks from the front, turned towards the reader, and in the section as it is
//! cut through, turned into the plane. The model does not say where round the shank a feature is. A flat face has the
//! crossed narrow diagonals of ISO 128-3; they span the half of it that a half view shows.

use super::body::{Body, OVERHANG, polyline, ring, segments};
use super::geometry::{Geometry, Point, Role, Shape};
use super::scale::{Scale, Side};
use crate::part::{self, CutShape, FeatureShape, Pick, Profile, SAME};
use crate::quantity::Length;

/// Chords of a quarter circle.
const CHORDS: u32 = 8;

impl Body<'_> {
    /// No metal in what is cut in, in the section, as received.
    pub(super) fn push_open_cuts(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let outer = &self.received.outer;
        for feature in &self.received.features {
            let top = outer.between(feature.from, feature.to);
            let floor = match feature.cut {
                CutShape::CrossHole { .. } => Profile::default(),
                _ => bottom(feature, &top),
            };
            shapes.push(open(&top, &floor, scale));
            if let Some((from, to)) = slot(feature) {
                shapes.push(open(&floor.between(from, to), &Profile::default(), scale));
            }
        }
    }

    /// The lines of what is cut in: thin as received, thick where it is in the finished part.
    pub(super) fn push_cuts(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        for feature in &self.received.features {
            let received = lines(feature, &self.received.outer, Role::ThinOutline, scale);
            let finished = self.finished.as_ref().map_or_else(Vec::new, |finished| {
                lines(feature, &finished.shank, Role::ThickOutline, scale)
            });
            // The face is marked once: as it will be, or else as it was.
            let is_mark = |shape: &Shape| shape.role == Role::FlatMark;
            let again = finished.iter().any(is_mark);
            let received = received.into_iter();
            shapes.extend(received.filter(|shape| !(again && is_mark(shape))));
            shapes.extend(finished);
            if matches!(feature.cut, CutShape::CrossHole { .. }) {
                shapes.push(self.cross_axis(feature, scale));
            }
        }
    }

    /// The axis of a cross hole, from side to side.
    fn cross_axis(&self, feature: &FeatureShape, scale: &Scale) -> Shape {
        let middle = (feature.from + feature.to) / 2.0;
        let reach = self.reach_at(middle, scale) + OVERHANG;
        let x = scale.x(middle);
        let ends = [scale.axis - reach, scale.axis + reach].map(|y| Point::new(x, y));
        polyline(Role::Axis, ends.to_vec())
    }
}

/// The area between an outline and a floor, or the axis where there is no floor.
fn open(top: &Profile, floor: &Profile, scale: &Scale) -> Shape {
    let mut floor = floor.points();
    if floor.is_empty() {
        floor = vec![on_axis(top.start()), on_axis(top.end())];
    }
    let mut around = scale.path(Side::Section, &top.points());
    around.extend(scale.path(Side::Section, &floor).into_iter().rev());
    ring(Role::OpenArea, around)
}

/// The lines of a feature on an outline; nothing where the outline is clear of it.
fn lines(feature: &FeatureShape, outer: &Profile, role: Role, scale: &Scale) -> Vec<Shape> {
    let top = outer.between(feature.from, feature.to);
    if top.is_empty() {
        return Vec::new();
    }
    if let CutShape::CrossHole { diameter } = feature.cut {
        return cross_hole(feature, &top, diameter / 2.0, role, scale);
    }
    let bottom = bottom(feature, &top);
    let cut = top.beyond(&bottom);
    let (Some((from, _)), Some((_, to))) = (cut.first(), cut.last()) else {
        return Vec::new();
    };
    let mut shapes = Vec::new();
    for (from, to) in &cut {
        let floor = bottom.between(*from, *to);
        let mut points = vec![edge(&top, *from)];
        points.extend(floor.points());
        points.push(edge(&top, *to));
        shapes.push(polyline(role, scale.path(Side::Section, &points)));
    }
    let face = top.between(*from, *to);
    let front = match feature.cut {
        CutShape::Flat { distance, .. } => chords(&face, distance),
        CutShape::Tang { half, .. } => chords(&face, half),
        CutShape::Keyway { width, .. } => stadium(feature, &face, outer.end(), width / 2.0),
        CutShape::Woodruff { width, .. } => level(&face, width / 2.0),
        CutShape::CrossHole { .. } => Vec::new(),
    };
    let (Some(first), Some(last)) = (front.first(), front.last()) else {
        return shapes;
    };
    let mut around = vec![on_axis(first.z)];
    around.extend(front.iter().copied());
    around.push(on_axis(last.z));
    shapes.push(polyline(role, scale.path(Side::View, &around)));
    if matches!(feature.cut, CutShape::Flat { .. } | CutShape::Tang { .. }) {
        let at = |point: part::Point| scale.point(Side::View, point.z, point.radius);
        let diagonals = vec![
            (at(on_axis(first.z)), at(*last)),
            (at(*first), at(on_axis(last.z))),
        ];
        shapes.push(segments(Role::FlatMark, diagonals));
    }
    if let (
        Some((from, to)),
        CutShape::Tang {
            slot: Some((width, _)),
            half,
        },
    ) = (slot(feature), feature.cut)
    {
        let to = to.min(outer.end());
        if (to - from).to_mm() > SAME {
            let side = |z, radius| part::Point { z, radius };
            let wide = (width / 2.0).min(top.radius_at(to));
            let notch = [on_axis(from), side(from, wide), side(to, wide)];
            shapes.push(polyline(role, scale.path(Side::View, &notch)));
            let end = [on_axis(from), side(from, half.min(top.radius_at(from)))];
            shapes.push(polyline(role, scale.path(Side::Section, &end)));
        }
    }
    shapes
}

/// The bottom of a feature along the axis, no farther out than the outline.
fn bottom(feature: &FeatureShape, top: &Profile) -> Profile {
    let (from, to) = (top.start(), top.end());
    let bottom = if let CutShape::Woodruff {
        bottom,
        disc_radius,
        ..
    } = feature.cut
    {
        arc(feature, bottom, disc_radius).between(from, to)
    } else {
        let clear = feature.clear_radius().unwrap_or_default();
        Profile::cylinder(from, to, clear.max(Length::ZERO))
    };
    bottom.merge(top, Pick::Smaller)
}

/// The round bottom of a Woodruff keyway, in chords.
fn arc(feature: &FeatureShape, bottom: Length, disc_radius: Length) -> Profile {
    let count = 2 * CHORDS;
    let (middle, radius) = ((feature.from + feature.to) / 2.0, disc_radius.to_mm());
    let at = |chord: u32| {
        let share = f64::from(chord) / f64::from(count);
        let z = feature.from + (feature.to - feature.from) * share;
        let off = (z - middle).to_mm();
        let rise = radius - (radius * radius - off * off).max(0.0).sqrt();
        (z, (bottom + Length::mm(rise)).max(Length::ZERO))
    };
    let mut arc = Profile::default();
    for chord in 0..count {
        let (a, b) = (at(chord), at(chord + 1));
        arc.push_line(a.0, b.0, a.1, b.1);
    }
    arc
}

/// From where to where a tang is slotted.
fn slot(feature: &FeatureShape) -> Option<(Length, Length)> {
    match feature.cut {
        CutShape::Tang { slot: Some(_), .. } => feature.through(),
        _ => None,
    }
}

/// A hole across: a circle in the view, two lines in the section.
fn cross_hole(
    feature: &FeatureShape,
    top: &Profile,
    radius: Length,
    role: Role,
    scale: &Scale,
) -> Vec<Shape> {
    let middle = (feature.from + feature.to) / 2.0;
    let count = 4 * CHORDS;
    let arc: Vec<part::Point> = (0..=count)
        .map(|chord| {
            let turn = core::f64::consts::PI * f64::from(chord) / f64::from(count);
            (middle - radius * turn.cos(), radius * turn.sin())
        })
        // Beside the part there is no hole, and the face cuts it off.
        .filter(|(z, _)| top.start() <= *z && *z <= top.end())
        .map(|(z, radius)| part::Point {
            z,
            radius: radius.min(top.radius_at(z)),
        })
        .collect();
    let sides = [feature.from, feature.to]
        .into_iter()
        .filter(|z| top.start() <= *z && *z <= top.end())
        .map(|z| {
            let at = |radius| scale.point(Side::Section, z, radius);
            (at(Length::ZERO), at(top.radius_at(z)))
        });
    vec![
        polyline(role, scale.path(Side::View, &arc)),
        segments(role, sides.collect()),
    ]
}

/// Half as wide as a flat at `distance` from the axis is, along an outline.
fn chords(outer: &Profile, distance: Length) -> Vec<part::Point> {
    let distance = distance.max(Length::ZERO).to_mm();
    let half = |radius: Length| {
        let radius = radius.to_mm();
        Length::mm((radius * radius - distance * distance).max(0.0).sqrt())
    };
    let points = outer.points();
    let next = points.iter().skip(1);
    let fine = points.iter().zip(next).flat_map(|(a, b)| {
        // Along a cone the edge is a curve; along a cylinder it is straight.
        let count = if (a.radius - b.radius).abs().to_mm() > SAME && (b.z - a.z).to_mm() > SAME {
            CHORDS
        } else {
            1
        };
        (0..=count).map(move |chord| {
            let share = f64::from(chord) / f64::from(count);
            part::Point {
                z: a.z + (b.z - a.z) * share,
                radius: half(a.radius + (b.radius - a.radius) * share),
            }
        })
    });
    fine.collect()
}

/// The edge of a keyway with round ends, one that reaches the free end or the shoulder open there.
fn stadium(feature: &FeatureShape, outer: &Profile, end: Length, half: Length) -> Vec<part::Point> {
    let round = half.min((feature.to - feature.from) / 2.0);
    let quarter = |chord: u32| {
        let turn = core::f64::consts::FRAC_PI_2 * f64::from(chord) / f64::from(CHORDS);
        (round * (1.0 - turn.cos()), half * turn.sin())
    };
    let mut points = Vec::new();
    if feature.from.to_mm() > SAME {
        points.extend(
            (0..=CHORDS)
                .map(quarter)
                .map(|(in_from, up)| (feature.from + in_from, up)),
        );
    } else {
        points.push((outer.start(), half));
    }
    if (end - feature.to).to_mm() > SAME {
        let from_end = (0..=CHORDS).rev().map(quarter);
        points.extend(from_end.map(|(in_from, up)| (feature.to - in_from, up)));
    } else {
        points.push((outer.end(), half));
    }
    points
        .into_iter()
        .filter(|(z, _)| outer.start() <= *z && *z <= outer.end())
        .map(|(z, radius)| part::Point {
            z,
            radius: radius.min(outer.radius_at(z)),
        })
        .collect()
}

/// An edge along the axis, no farther out than the outline.
fn level(outer: &Profile, half: Length) -> Vec<part::Point> {
    Profile::cylinder(outer.start(), outer.end(), half)
        .merge(outer, Pick::Smaller)
        .points()
}

fn on_axis(z: Length) -> part::Point {
    part::Point {
        z,
        radius: Length::ZERO,
    }
}

fn edge(outer: &Profile, z: Length) -> part::Point {
    part::Point {
        z,
        radius: outer.radius_at(z),
    }
}

impl Geometry {
    /// Whether there is nothing to draw.
    pub(super) fn is_empty(&self) -> bool {
        match self {
            Self::Polyline { points, .. } => points.len() < 2,
            Self::Segments(lines) => lines.is_empty(),
        }
    }
}
