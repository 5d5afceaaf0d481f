//! Threads, and holes beside the axis.
//!
//! Threads after ISO 6410-1: the crests thick, the bottom a thin line, the end of the full thread a thick line; in the
//! section the hatching goes up to the crests. A hole beside the axis is turned into the plane of the section, on its
//! own axis, wherever round the part it is: the model does not say that, and the wall is drawn as it is.

use super::body::{Body, OVERHANG, is_beside, polyline, ring, segments, turns};
use super::geometry::{Role, Shape};
use super::scale::{Scale, Side};
use crate::job::BoreEnd;
use crate::order;
use crate::part::{BoreShape, Pick, Point, Profile, SAME, SectionShape};
use crate::quantity::Length;

/// An axis nearer to that of the part is not drawn by itself, in pixels.
const LEAST_BESIDE: f64 = 2.0;

impl Body<'_> {
    /// Holes beside the axis, up to a place: outline, edges inside, end of the full thread, and their own axis.
    pub(super) fn push_holes_beside(
        &self,
        role: Role,
        end: Length,
        scale: &Scale,
        shapes: &mut Vec<Shape>,
    ) {
        for bore in self.received.bores.iter().filter(|bore| is_beside(bore)) {
            let left = bore.profile.between(self.outer.start(), end);
            if left.is_empty() {
                continue;
            }
            let (low, high) = self.walls(bore, &left);
            for wall in [&low, &high] {
                shapes.push(polyline(role, scale.path(Side::Section, wall)));
            }
            let mut across: Vec<(Length, Length)> = turns(&left)
                .into_iter()
                .filter(|turn| turn.seen)
                .map(|turn| (turn.z, turn.radius))
                .collect();
            across.extend([left.start(), left.end()].map(|z| (z, left.radius_at(z))));
            let edges = across.into_iter().map(|(z, radius)| {
                let most = self.outer.radius_at(z);
                let at = |radius: Length| {
                    scale.point(Side::Section, z, radius.max(Length::ZERO).min(most))
                };
                (at(bore.off_centre - radius), at(bore.off_centre + radius))
            });
            shapes.push(segments(role, edges.collect()));
            if LEAST_BESIDE < bore.off_centre.to_mm() * scale.factor {
                let mut ends = [left.start(), left.end()]
                    .map(|z| scale.point(Side::Section, z, bore.off_centre));
                for (at, out) in ends.iter_mut().zip([-OVERHANG, OVERHANG]) {
                    at.x += out;
                }
                shapes.push(polyline(Role::Axis, ends.to_vec()));
            }
        }
    }

    /// No metal in the holes beside the axis, as received.
    pub(super) fn push_open(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        for bore in self.received.bores.iter().filter(|bore| is_beside(bore)) {
            let (low, high) = self.walls(bore, &bore.profile);
            let mut around = scale.path(Side::Section, &high);
            around.extend(scale.path(Side::Section, &low).into_iter().rev());
            shapes.push(ring(Role::OpenArea, around));
        }
        self.push_open_cuts(scale, shapes);
    }

    /// The wall nearer to the axis of the part and the one farther out, inside the part and on this side of it.
    fn walls(&self, bore: &BoreShape, hole: &Profile) -> (Vec<Point>, Vec<Point>) {
        let inside = |z: Length, radius: Length| Point {
            z,
            radius: radius.max(Length::ZERO).min(self.outer.radius_at(z)),
        };
        // A wide hole may cross the axis or the outside between its points.
        let level = Profile::cylinder(hole.start(), hole.end(), bore.off_centre);
        let crossed = hole.merge(&level, Pick::Larger).points();
        let mut points = hole.points();
        points.extend(crossed.iter().map(|at| Point {
            z: at.z,
            radius: hole.radius_at(at.z),
        }));
        order::by_number(&mut points, |point| point.z.to_mm());
        let wall = |sign: f64| {
            let at = |at: &Point| inside(at.z, bore.off_centre + at.radius * sign);
            points.iter().map(at).collect()
        };
        (wall(-1.0), wall(1.0))
    }

    pub(super) fn push_threads(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        for bore in &self.received.bores {
            if let Some(thread_end) = bore.thread_end {
                self.push_inside_thread(bore, thread_end, scale, shapes);
            }
        }
        for section in &self.received.sections {
            if let Some(root) = section.root_diameter {
                self.push_outside_thread(section, root / 2.0, scale, shapes);
            }
        }
    }

    /// The major diameter of a tapped hole thin, and the end of its full thread.
    fn push_inside_thread(
        &self,
        bore: &BoreShape,
        thread_end: Length,
        scale: &Scale,
        shapes: &mut Vec<Shape>,
    ) {
        let mouth = match bore.end {
            BoreEnd::FreeEnd => self.outer.end(),
            BoreEnd::HeadEnd => self.outer.start(),
        };
        let major = bore.widest.radius_at(mouth);
        let reach = (thread_end.min(mouth), thread_end.max(mouth));
        let at = |z, radius| scale.point(Side::Section, z, radius);
        let radii = if is_beside(bore) {
            vec![bore.off_centre + major, bore.off_centre - major]
        } else {
            vec![major]
        };
        for radius in radii.iter().filter(|radius| **radius > Length::ZERO) {
            let lines = self.in_metal(*radius, reach);
            let lines = lines
                .into_iter()
                .map(|(a, b)| (at(a, *radius), at(b, *radius)));
            shapes.push(segments(Role::ThreadThin, lines.collect()));
        }
        // The end of the full thread is a thick line across, up to the major diameter.
        let most = self.outer.radius_at(thread_end);
        let far = (bore.off_centre + major).min(most);
        let near = if is_beside(bore) {
            (bore.off_centre - major).max(Length::ZERO).min(most)
        } else {
            Length::ZERO
        };
        let face = self.stays().0.end();
        let role = self.role(thread_end < face);
        shapes.push(segments(
            role,
            vec![(at(thread_end, near), at(thread_end, far))],
        ));
    }

    /// The root of an outside thread thin, and the ends of the thread where the outline does not show them.
    fn push_outside_thread(
        &self,
        section: &SectionShape,
        root: Length,
        scale: &Scale,
        shapes: &mut Vec<Shape>,
    ) {
        let major = section.from_diameter / 2.0;
        // A section can be told to begin before the shoulder or to end beyond the shank.
        let end = self.received.shank_length;
        let (from, to) = (section.from.max(Length::ZERO), section.to.min(end));
        if to <= from {
            return;
        }
        let limits = [from, to]
            .into_iter()
            .filter(|z| Length::ZERO < *z && (*z - end).to_mm() < -SAME);
        let limits: Vec<Length> = limits.collect();
        for side in [Side::View, Side::Section] {
            let at = |z, radius| scale.point(side, z, radius);
            let line = vec![(at(from, root), at(to, root))];
            shapes.push(segments(Role::ThreadThin, line));
            let near = match side {
                Side::View => Length::ZERO,
                Side::Section => root,
            };
            for z in &limits {
                let outer = self.finished.as_ref().map(|finished| &finished.shank);
                let stays = outer.is_some_and(|outer| {
                    *z < outer.end() && major.to_mm() - SAME <= outer.radius_at(*z).to_mm()
                });
                shapes.push(segments(
                    self.role(stays),
                    vec![(at(*z, near), at(*z, major))],
                ));
            }
        }
    }

    /// Thick for what is there in the finished part, thin for all else.
    fn role(&self, stays: bool) -> Role {
        if stays && self.finished.is_some() {
            Role::ThickOutline
        } else {
            Role::ThinOutline
        }
    }

    /// Where a line along the axis runs in metal: outside every hole on the axis, inside the part.
    fn in_metal(&self, radius: Length, (from, to): (Length, Length)) -> Vec<(Length, Length)> {
        let holes = match &self.finished {
            Some(finished) => self.holes.merge(&finished.holes, Pick::Larger),
            None => self.holes.clone(),
        };
        let open = holes.above(radius, from, to);
        let metal = self.outer.above(radius, from, to);
        metal
            .into_iter()
            .flat_map(|stretch| without(stretch, &open))
            .collect()
    }
}

fn without(stretch: (Length, Length), holes: &[(Length, Length)]) -> Vec<(Length, Length)> {
    let mut left = vec![stretch];
    for (from, to) in holes {
        left = left
            .into_iter()
            .flat_map(|(start, end)| [(start, end.min(*from)), (start.max(*to), end)])
            .filter(|(start, end)| (*end - *start).to_mm() > SAME)
            .collect();
    }
    left
}
