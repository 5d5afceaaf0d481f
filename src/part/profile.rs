//! The outline of a turned body: a radius along the axis.
//!
//! z is counted from the shoulder, growing towards the free end. Where no piece stands, the radius is zero:
//! outside the body, or where there is no hole. Everything is exact for cylinders, cones and the fillet.

use super::curve::Curve;
use crate::order;
use crate::quantity::{Length, Volume};

/// Lengths closer than this are one and the same: a nanometre, far below what can be turned or measured.
pub(crate) const SAME: f64 = 1e-6;

/// How far beside a place to look, to tell apart the two sides of a step there: a few times [`SAME`].
pub(crate) const HAIR: Length = Length::mm(4.0 * SAME);

/// A point of an outline.
#[derive(Clone, Copy, Debug, PartialEq, serde::Serialize)]
pub struct Point {
    /// Along the axis from the shoulder.
    pub z: Length,
    /// Distance from the axis.
    pub radius: Length,
}

/// Which of two outlines counts where both stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pick {
    /// The outer one.
    Larger,
    /// The inner one.
    Smaller,
}

/// A radius along the axis, piece by piece.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Profile {
    /// In order of z, none empty, none overlapping.
    pieces: Vec<Piece>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
struct Piece {
    from: f64,
    to: f64,
    curve: Curve,
}

impl Profile {
    /// Adds a cylinder or cone behind the last piece; one without length is left out.
    pub fn push_line(&mut self, from: Length, to: Length, from_radius: Length, to_radius: Length) {
        let (from, to) = (from.to_mm(), to.to_mm());
        if to - from <= SAME {
            return;
        }
        let slope = (to_radius.to_mm() - from_radius.to_mm()) / (to - from);
        self.push(
            from,
            to,
            Curve::Line {
                z: from,
                radius: from_radius.to_mm(),
                slope,
            },
        );
    }

    /// Adds the fillet between the shoulder at z = 0 and a shank of `shank_radius`; none without radius.
    pub fn push_fillet(&mut self, shank_radius: Length, fillet: Length) {
        let curve = Curve::Fillet {
            shank: shank_radius.to_mm(),
            fillet: fillet.to_mm(),
        };
        self.push(0.0, fillet.to_mm(), curve);
    }

    fn push(&mut self, from: f64, to: f64, curve: Curve) {
        debug_assert!(
            self.pieces.last().is_none_or(|last| last.to <= from + SAME),
            "pieces come in order"
        );
        if to - from > SAME {
            self.pieces.push(Piece { from, to, curve });
        }
    }

    /// A plain cylinder.
    pub fn cylinder(from: Length, to: Length, radius: Length) -> Self {
        let mut profile = Self::default();
        profile.push_line(from, to, radius, radius);
        profile
    }

    /// Whether there is nothing.
    pub fn is_empty(&self) -> bool {
        self.pieces.is_empty()
    }

    /// Where it begins; z = 0 when empty.
    pub fn start(&self) -> Length {
        Length::mm(self.pieces.first().map_or(0.0, |piece| piece.from))
    }

    /// Where it ends; z = 0 when empty.
    pub fn end(&self) -> Length {
        Length::mm(self.pieces.last().map_or(0.0, |piece| piece.to))
    }

    /// The radius at a place; the larger one at a step, zero where nothing stands.
    pub fn radius_at(&self, z: Length) -> Length {
        let z = z.to_mm();
        let radius = self
            .pieces
            .iter()
            .filter(|piece| piece.from <= z && z <= piece.to)
            .map(|piece| piece.curve.radius_at(z))
            .fold(0.0, f64::max);
        Length::mm(radius)
    }

    /// The part of it between two places.
    #[must_use]
    pub fn between(&self, from: Length, to: Length) -> Self {
        let (from, to) = (from.to_mm(), to.to_mm());
        let mut cut = Self::default();
        for piece in &self.pieces {
            let (start, end) = (piece.from.max(from), piece.to.min(to));
            if end - start > SAME {
                cut.push(start, end, piece.curve);
            }
        }
        cut
    }

    /// The outer or the inner one of two outlines at every place.
    #[must_use]
    pub fn merge(&self, other: &Self, pick: Pick) -> Self {
        let mut merged = Self::default();
        for (from, to) in self.stretches(other) {
            merged.push_picked(self, other, from, to, pick);
        }
        merged
    }

    /// The outline with its radius held to at most `radius` between two places.
    #[must_use]
    pub fn capped(&self, from: Length, to: Length, radius: Length) -> Self {
        let (start, end) = (self.start(), self.end());
        let middle = self
            .between(from, to)
            .merge(&Self::cylinder(from, to, radius), Pick::Smaller);
        let mut capped = self.between(start, from.min(end));
        capped.pieces.extend(middle.pieces);
        capped
            .pieces
            .extend(self.between(to.max(start), end).pieces);
        capped
    }

    /// The outline farther out everywhere by what `by` gives for a place: a straight line along z.
    ///
    /// For outlines of lines; a fillet is left as it is. A radius does not fall below zero.
    #[must_use]
    pub(crate) fn shifted(&self, by: impl Fn(Length) -> Length) -> Self {
        let mut shifted = Self::default();
        for piece in &self.pieces {
            let (from, to) = (Length::mm(piece.from), Length::mm(piece.to));
            let radius = |z: Length| {
                (Length::mm(piece.curve.radius_at(z.to_mm())) + by(z)).max(Length::ZERO)
            };
            match piece.curve {
                Curve::Line { .. } => shifted.push_line(from, to, radius(from), radius(to)),
                Curve::Fillet { .. } => shifted.push(piece.from, piece.to, piece.curve),
            }
        }
        shifted
    }

    /// The stretches where this outline stands farther out than another, in order; nothing counts as zero.
    pub fn beyond(&self, other: &Self) -> Vec<(Length, Length)> {
        let mut found: Vec<(Length, Length)> = Vec::new();
        for (from, to) in self.stretches(other) {
            let middle = f64::midpoint(from, to);
            let radius = |profile: &Self| {
                let curve = profile.curve_at(middle);
                curve.map_or(0.0, |curve| curve.radius_at(middle))
            };
            if radius(self) <= radius(other) + SAME {
                continue;
            }
            match found.last_mut() {
                Some((_, end)) if (end.to_mm() - from).abs() <= SAME => *end = Length::mm(to),
                _ => found.push((Length::mm(from), Length::mm(to))),
            }
        }
        found
    }

    /// The stretches between places where either outline begins or ends or the two cross, in order.
    fn stretches(&self, other: &Self) -> Vec<(f64, f64)> {
        let mut places: Vec<f64> = self.ends().chain(other.ends()).collect();
        for piece in &self.pieces {
            for rival in &other.pieces {
                let (from, to) = (piece.from.max(rival.from), piece.to.min(rival.to));
                if to > from {
                    let crossings = piece.curve.crossings(rival.curve);
                    let inside = |z: &f64| from < *z && *z < to;
                    places.extend(crossings.into_iter().flatten().filter(inside));
                }
            }
        }
        order::numbers(&mut places);
        // A sliver thinner than a nanometre is left to the next stretch, so that no gap opens.
        places.dedup_by(|place, kept| *place - *kept <= SAME);
        let ends = places.iter().skip(1).copied();
        places.iter().copied().zip(ends).collect()
    }

    /// The curve that stands at a place; the first of two where they meet.
    fn curve_at(&self, z: f64) -> Option<Curve> {
        let mut pieces = self.pieces.iter();
        let here = pieces.find(|piece| piece.from <= z && z <= piece.to);
        here.map(|piece| piece.curve)
    }

    /// Adds what counts on a stretch where neither outline begins, ends or crosses the other.
    fn push_picked(&mut self, one: &Self, other: &Self, from: f64, to: f64, pick: Pick) {
        let middle = f64::midpoint(from, to);
        let picked = match (one.curve_at(middle), other.curve_at(middle), pick) {
            (Some(a), Some(b), _) => {
                let larger = a.radius_at(middle) >= b.radius_at(middle);
                Some(if larger == (pick == Pick::Larger) {
                    a
                } else {
                    b
                })
            }
            (Some(only), None, Pick::Larger) | (None, Some(only), Pick::Larger) => Some(only),
            _ => None,
        };
        if let Some(curve) = picked {
            self.push(from, to, curve);
        }
    }

    fn ends(&self) -> impl Iterator<Item = f64> + '_ {
        self.pieces.iter().flat_map(|piece| [piece.from, piece.to])
    }

    /// The volume of the solid body with this outline.
    pub fn volume(&self) -> Volume {
        let volume = self
            .pieces
            .iter()
            .map(|piece| piece.curve.volume(piece.from, piece.to))
            .sum();
        Volume::mm3(volume)
    }

    /// The first moment of that body about the shoulder, in mm⁴: its volume times how far its centre lies out.
    pub(crate) fn moment(&self) -> f64 {
        let of = |piece: &Piece| piece.curve.moment(piece.from, piece.to);
        self.pieces.iter().map(of).sum()
    }

    /// The smallest radius between two places and where it is first met; `None` where nothing stands.
    ///
    /// Both sides of a step count.
    pub fn smallest(&self, from: Length, to: Length) -> Option<Point> {
        self.extreme(from, to, Length::min)
    }

    /// The largest radius between two places and where it is first met; `None` where nothing stands.
    pub fn largest(&self, from: Length, to: Length) -> Option<Point> {
        self.extreme(from, to, Length::max)
    }

    fn extreme(
        &self,
        from: Length,
        to: Length,
        better: impl Fn(Length, Length) -> Length,
    ) -> Option<Point> {
        // Lines and the fillet only rise or only fall, so the ends of the pieces hold the extremes.
        let ends: Vec<Point> = self
            .between(from, to)
            .pieces
            .iter()
            .flat_map(|piece| [piece.from, piece.to].map(|z| (z, piece.curve.radius_at(z))))
            .map(|(z, radius)| Point {
                z: Length::mm(z),
                radius: Length::mm(radius),
            })
            .collect();
        let radius = ends.iter().map(|end| end.radius).reduce(better)?;
        // Rounding must not choose between places that are alike.
        let first = ends
            .iter()
            .find(|end| (end.radius - radius).abs().to_mm() <= SAME)?;
        Some(Point { z: first.z, radius })
    }

    /// The stretches between two places where the radius is above `radius`, in order.
    pub fn above(&self, radius: Length, from: Length, to: Length) -> Vec<(Length, Length)> {
        let level = Self::cylinder(from, to, radius);
        self.between(from, to).beyond(&level)
    }

    /// The outline as points to draw, arcs in short chords; a step gives two points.
    pub fn points(&self) -> Vec<Point> {
        self.runs().concat()
    }

    /// The outline as points to draw, one list for each stretch without a gap; arcs in short chords, a step
    /// gives two points.
    pub fn runs(&self) -> Vec<Vec<Point>> {
        const CHORDS: u32 = 12;
        let mut runs: Vec<Vec<Point>> = Vec::new();
        let mut end = None;
        for piece in &self.pieces {
            let chords = match piece.curve {
                Curve::Line { .. } => 1,
                Curve::Fillet { .. } => CHORDS,
            };
            let points = (0..=chords).map(|chord| {
                let share = f64::from(chord) / f64::from(chords);
                // The end itself, not a hair beyond it by rounding.
                let z = (piece.from + (piece.to - piece.from) * share).min(piece.to);
                Point {
                    z: Length::mm(z),
                    radius: Length::mm(piece.curve.radius_at(z)),
                }
            });
            match runs.last_mut() {
                Some(run) if end.is_some_and(|end| piece.from - end <= SAME) => run.extend(points),
                _ => runs.push(points.collect()),
            }
            end = Some(piece.to);
        }
        runs
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;
    use proptest::prelude::*;

    fn mm(value: f64) -> Length {
        Length::mm(value)
    }

    /// Volume by the midpoint rule, from nothing but `radius_at`.
    fn summed(profile: &Profile, from: f64, to: f64) -> f64 {
        const STRIPS: u32 = 20_000;
        let width = (to - from) / f64::from(STRIPS);
        (0..STRIPS)
            .map(|strip| {
                let z = from + width * (f64::from(strip) + 0.5);
                let radius = profile.radius_at(mm(z)).to_mm();
                PI * radius * radius * width
            })
            .sum()
    }

    #[test]
    fn volumes_of_simple_bodies() {
        // Closed forms of solid geometry: cylinder πr²h, frustum πh(R²+Rr+r²)/3.
        let cylinder = Profile::cylinder(mm(0.0), mm(10.0), mm(3.0));
        assert!((cylinder.volume().to_mm3() - 90.0 * PI).abs() < 1e-9);
        let mut cone = Profile::default();
        cone.push_line(mm(0.0), mm(6.0), mm(0.0), mm(2.0));
        assert!((cone.volume().to_mm3() - 8.0 * PI).abs() < 1e-9);
        // Pappus: a fillet round a shank is the square ring less the quarter circle, each times 2π·centroid.
        let (shank, fillet) = (8.0, 1.5);
        let mut round = Profile::default();
        round.push_fillet(mm(shank), mm(fillet));
        let square = fillet * fillet * 2.0 * PI * (shank + fillet / 2.0);
        let quarter_area = PI * fillet * fillet / 4.0;
        let quarter = quarter_area * 2.0 * PI * (shank + fillet - 4.0 * fillet / (3.0 * PI));
        let wanted = PI * shank * shank * fillet + square - quarter;
        assert!((round.volume().to_mm3() - wanted).abs() < 1e-9);
    }

    #[test]
    fn a_taper_stands_above_a_level_as_far_as_it_should() {
        let mut taper = Profile::default();
        taper.push_line(mm(0.0), mm(100.0), mm(16.0), mm(11.0));
        let above = taper.above(mm(13.5), mm(0.0), mm(80.0));
        assert_eq!(above.len(), 1);
        assert!((above[0].0.to_mm() - 0.0).abs() < 1e-9);
        assert!((above[0].1.to_mm() - 50.0).abs() < 1e-9);
        assert!(taper.above(mm(16.0), mm(0.0), mm(80.0)).is_empty());
    }

    #[test]
    fn a_cone_crosses_a_fillet_where_the_circle_says() {
        let mut round = Profile::default();
        round.push_fillet(mm(8.0), mm(2.0));
        let mut cone = Profile::default();
        cone.push_line(mm(0.0), mm(2.0), mm(10.0), mm(8.0));
        // The chord of the quarter circle: it lies outside the arc all along.
        let outer = round.merge(&cone, Pick::Larger);
        assert!((outer.volume() - cone.volume()).to_mm3().abs() < 1e-6);
        let inner = round.merge(&cone, Pick::Smaller);
        assert!((inner.volume() - round.volume()).to_mm3().abs() < 1e-6);
    }

    /// Whole thousandths of an inch, whose sums and differences round.
    #[test]
    fn no_point_lies_outside_the_outline() {
        for end in 1..2000_u32 {
            let (from, to) = (mm(1.161_3), mm(1.161_3 + f64::from(end) * 0.0254));
            let points = Profile::cylinder(from, to, mm(1.0)).points();
            assert!(points.iter().all(|point| from <= point.z && point.z <= to));
            assert!((points[1].z - to).to_mm().abs() < 1e-12);
        }
    }

    fn any_profile() -> impl Strategy<Value = Profile> {
        let piece = (0.01..40.0_f64, 0.1..30.0_f64, 0.1..30.0_f64, any::<bool>());
        (0.1..5.0_f64, proptest::collection::vec(piece, 1..6)).prop_map(|(fillet, pieces)| {
            let mut profile = Profile::default();
            let mut z = 0.0;
            if let Some((_, shank, ..)) = pieces.first().filter(|(.., round)| *round) {
                profile.push_fillet(mm(*shank), mm(fillet));
                z = fillet;
            }
            for (length, from, to, gap) in pieces {
                let start = if gap { z + 1.0 } else { z };
                z = start + length;
                profile.push_line(mm(start), mm(z), mm(from), mm(to));
            }
            profile
        })
    }

    proptest! {
        /// What both have plus what either has is what one and the other have.
        #[test]
        fn merging_loses_no_volume(a in any_profile(), b in any_profile()) {
            let larger = a.merge(&b, Pick::Larger).volume();
            let smaller = a.merge(&b, Pick::Smaller).volume();
            let sum = (a.volume() + b.volume()).to_mm3();
            prop_assert!(((larger + smaller).to_mm3() - sum).abs() <= 1e-9 * sum + 0.01);
        }

        /// The closed forms agree with an independent summation of thin slices.
        #[test]
        fn volume_agrees_with_slices(profile in any_profile()) {
            let exact = profile.volume().to_mm3();
            let slices = summed(&profile, profile.start().to_mm(), profile.end().to_mm());
            prop_assert!((exact - slices).abs() <= 2e-3 * exact + 1.0, "{exact} {slices}");
        }

        #[test]
        fn parts_add_up(profile in any_profile(), share in 0.0..1.0_f64) {
            let cut = profile.start() + (profile.end() - profile.start()) * share;
            let parts = profile.between(profile.start(), cut).volume()
                + profile.between(cut, profile.end()).volume();
            prop_assert!((parts - profile.volume()).to_mm3().abs() <= 0.02);
        }
    }
}
