//! The passes as layers of the metal that goes: a line along the surface that each leaves, where it meets metal.
//!
//! They stand in the outside view, where no hatching is in their way; the picked one stands in the section too.

use super::body::segments;
use super::geometry::{Point, Role, Shape};
use super::scale::{Scale, Side};
use crate::cutting::{Pass, PassKind, StockOff};
use crate::part::{Profile, Received};
use crate::quantity::Length;

/// Lines nearer to one another than this run together, in pixels.
pub(super) const APART: f64 = 2.0;

/// The layers of all passes that have room but the picked one, which is named by its place.
pub(super) fn layers(
    stock: &StockOff,
    received: &Received,
    scale: &Scale,
    picked: Option<u8>,
) -> [Shape; 2] {
    let (mut rough, mut last) = (Vec::new(), Vec::new());
    // The last pass leaves the finished outline, which is drawn thick.
    let finished = stock.passes.last().map(|pass| pass.diameter_after);
    let mut drawn = None;
    for (pass, place) in stock.passes.iter().zip(0..=u8::MAX) {
        if picked == Some(place) {
            continue;
        }
        let gap = |other: Length| (pass.diameter_after - other).abs().to_mm() / 2.0 * scale.factor;
        if [drawn, finished]
            .into_iter()
            .flatten()
            .all(|it| APART <= gap(it))
        {
            drawn = Some(pass.diameter_after);
            let lines = match pass.kind {
                PassKind::Rough => &mut rough,
                PassKind::Last | PassKind::Polish => &mut last,
            };
            lines.extend(lines_of(pass, &received.outer, scale, Side::View));
        }
    }
    [(Role::RoughLayer, rough), (Role::LastLayer, last)].map(|(role, lines)| segments(role, lines))
}

/// The layer of a pass that is looked at, whether it has room or not, on both sides.
pub(super) fn picked_layer(pass: &Pass, received: &Received, scale: &Scale) -> Shape {
    let sides = [Side::View, Side::Section].into_iter();
    let lines = sides.flat_map(|side| picked_lines(pass, received, scale, side));
    segments(Role::PickedLayer, lines.collect())
}

/// The stretches of metal that a pass meets, at the radius that it leaves.
fn lines_of(
    pass: &Pass,
    outer: &Profile,
    scale: &Scale,
    side: Side,
) -> impl Iterator<Item = (Point, Point)> {
    let radius = pass.diameter_after / 2.0;
    let from = pass.ends_at - pass.travel;
    let met = outer.above(radius, from, pass.ends_at).into_iter();
    met.map(move |(from, to)| {
        let at = |z| scale.point(side, z, radius);
        (at(from), at(to))
    })
}

/// The same. A pass that meets nothing but what runs out goes along the surface.
fn picked_lines(
    pass: &Pass,
    received: &Received,
    scale: &Scale,
    side: Side,
) -> Vec<(Point, Point)> {
    let outer = &received.outer;
    let lines: Vec<_> = lines_of(pass, outer, scale, side).collect();
    let (from, to) = (pass.ends_at - pass.travel, pass.ends_at);
    match outer.largest(from, to) {
        Some(most) if lines.is_empty() => {
            let radius = most.radius.min(pass.diameter_after / 2.0);
            vec![(
                scale.point(side, from, radius),
                scale.point(side, to, radius),
            )]
        }
        _ => lines,
    }
}
