//! The part itself: outlines, cut surfaces, metal that goes, threads, the cut and the axis.
//!
//! Above the axis is the outside view, below it the section. Line types after ISO 128-2 and ISO 128-3, threads
//! after ISO 6410-1: the crests of a tapped hole thick, its major diameter thin, the hatching up to the crests.

use super::geometry::{Geometry, Point, Role, Shape};
use super::hatch::{Lean, hatch};
use super::scale::{Scale, Side};
use crate::part::{BoreShape, Pick, Profile, Received, SAME};
use crate::plan::Plan;
use crate::quantity::Length;

/// How far axis and cut line stand out of the part, in pixels.
pub(crate) const OVERHANG: f64 = 10.0;

/// Distance of hatch lines, in pixels.
const HATCH_PITCH: f64 = 6.0;

/// The outlines that a drawing is made of.
pub(crate) struct Body<'a> {
    received: &'a Received,
    /// Head and shank as received.
    outer: Profile,
    /// The holes as received.
    holes: Profile,
    /// Head and finished shank, with the finished holes.
    finished: Option<(Profile, Profile)>,
    /// Where the cut is marked, and where the offcut begins.
    cut: Option<(Length, Length)>,
}

impl<'a> Body<'a> {
    /// The outlines of a plan; what is not planned is left out.
    pub(crate) fn new(received: &'a Received, plan: &Plan) -> Self {
        let finished = plan
            .shape
            .finished
            .as_ref()
            .zip(plan.shape.finished_holes.as_ref())
            .map(|(shank, holes)| (shank.merge(&received.head, Pick::Larger), holes.clone()));
        let cut = plan
            .cut_off
            .as_ref()
            .filter(|cut| cut.offcut_length.value.to_mm() > SAME)
            .map(|cut| {
                let mark = cut.from_shoulder.value;
                (mark, mark + cut.kerf)
            });
        Self {
            received,
            outer: received.whole_outer(),
            holes: received.inner.clone(),
            finished,
            cut,
        }
    }

    /// Everything of the part, in the order that it is painted.
    pub(crate) fn shapes(&self, scale: &Scale) -> Vec<Shape> {
        let mut shapes = Vec::new();
        self.push_removed(scale, &mut shapes);
        self.push_section(scale, &mut shapes);
        self.push_received(scale, &mut shapes);
        self.push_threads(scale, &mut shapes);
        self.push_finished(scale, &mut shapes);
        self.push_cut(scale, &mut shapes);
        let ends = [
            scale.x(self.outer.start()) - OVERHANG,
            scale.x(self.outer.end()) + OVERHANG,
        ];
        shapes.push(polyline(
            Role::Axis,
            ends.map(|x| Point::new(x, scale.axis)).to_vec(),
        ));
        shapes
    }

    /// Metal that goes: a tint on both sides, hatching in the section, the kerf by itself.
    fn push_removed(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let Some((finished, finished_holes)) = &self.finished else {
            return;
        };
        let end = self.outer.end();
        let (mark, offcut) = self.cut.unwrap_or((end, end));
        let nothing = Profile::default();
        let shank = |from, to| self.received.outer.between(from, to);
        let mut hatched = Vec::new();
        for (side, holes) in [(Side::View, &nothing), (Side::Section, &self.holes)] {
            let stays = finished.merge(holes, Pick::Larger);
            for piece in [shank(Length::ZERO, mark), shank(offcut, end)] {
                if !piece.is_empty() {
                    hatched.push((side, scale.ring(side, &piece, &stays)));
                }
            }
            let kerf = shank(mark, offcut);
            if !kerf.is_empty() {
                shapes.push(ring(Role::KerfArea, scale.ring(side, &kerf, holes)));
            }
        }
        // The new centre: what is hole afterwards and was metal before.
        let new_hole = finished_holes.merge(finished, Pick::Smaller);
        hatched.push((
            Side::Section,
            scale.ring(Side::Section, &new_hole, &self.holes),
        ));
        let section: Vec<Vec<Point>> = hatched
            .iter()
            .filter(|(side, _)| *side == Side::Section)
            .map(|(_, points)| points.clone())
            .collect();
        shapes.extend(
            hatched
                .into_iter()
                .map(|(_, points)| ring(Role::RemovedArea, points)),
        );
        let lines = hatch(&section, HATCH_PITCH, Lean::Left);
        shapes.push(segments(Role::RemovedHatch, lines));
    }

    /// The cut surfaces of the metal that stays; of all metal while nothing is planned.
    fn push_section(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let (outer, holes) = self.stays();
        let cut_surface = scale.ring(Side::Section, outer, holes);
        let lines = hatch(&[cut_surface], HATCH_PITCH, Lean::Right);
        shapes.push(segments(Role::SectionHatch, lines));
    }

    fn stays(&self) -> (&Profile, &Profile) {
        self.finished
            .as_ref()
            .map_or((&self.outer, &self.holes), |(outer, holes)| (outer, holes))
    }

    /// The part as received, thin. Edges that the finished part covers are left out.
    fn push_received(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        for side in [Side::View, Side::Section] {
            shapes.push(polyline(Role::ThinOutline, scale.line(side, &self.outer)));
        }
        push_runs(Role::ThinOutline, scale, &self.holes, shapes);
        let (finished, face) = match &self.finished {
            Some((finished, _)) => (finished.clone(), finished.end()),
            None => (Profile::default(), self.outer.start()),
        };
        let mut edges: Vec<(Point, Point)> = corners(&self.outer)
            .map(|(z, radius)| {
                let covered = finished.radius_at(z).min(radius);
                let at = |radius| scale.point(Side::View, z, radius);
                (at(covered), at(radius))
            })
            .collect();
        edges.extend(hole_edges(scale, &self.holes, face, self.outer.end()));
        shapes.push(segments(Role::ThinOutline, edges));
    }

    fn push_threads(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let face = self.stays().0.end();
        for bore in &self.received.bores {
            let Some(thread_end) = bore.thread_end else {
                continue;
            };
            let major = bore.widest.radius_at(bore.widest.end());
            let lines = self
                .threaded(bore, major)
                .into_iter()
                .map(|(from, to)| {
                    let at = |z| scale.point(Side::Section, z, major);
                    (at(from), at(to))
                })
                .collect();
            shapes.push(segments(Role::ThreadThin, lines));
            // The end of the full thread is a thick line across, up to the major diameter.
            let at = |radius| scale.point(Side::Section, thread_end, radius);
            let limit = (at(Length::ZERO), at(major));
            let stays = self.finished.is_some() && thread_end < face;
            let role = if stays {
                Role::ThickOutline
            } else {
                Role::ThinOutline
            };
            shapes.push(segments(role, vec![limit]));
        }
    }

    /// Where the major diameter of a thread lies in metal: outside every hole, inside the part.
    fn threaded(&self, bore: &BoreShape, major: Length) -> Vec<(Length, Length)> {
        let Some(thread_end) = bore.thread_end else {
            return Vec::new();
        };
        let end = self.outer.end();
        let holes = match &self.finished {
            Some((_, finished)) => self.holes.merge(finished, Pick::Larger),
            None => self.holes.clone(),
        };
        let open = holes.above(major, thread_end, end);
        let metal = self.outer.above(major, thread_end, end);
        metal
            .into_iter()
            .flat_map(|stretch| without(stretch, &open))
            .collect()
    }

    /// The finished part, thick: its outline, its holes in the section, its edges in the view.
    fn push_finished(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let Some((outer, holes)) = &self.finished else {
            return;
        };
        let mut around = scale.line(Side::View, outer);
        around.extend(scale.line(Side::Section, outer).into_iter().rev());
        shapes.push(ring(Role::ThickOutline, around));
        let holes = holes.merge(outer, Pick::Smaller);
        push_runs(Role::ThickOutline, scale, &holes, shapes);
        let mut edges: Vec<(Point, Point)> = corners(outer)
            .map(|(z, radius)| {
                let at = |radius| scale.point(Side::View, z, radius);
                (at(Length::ZERO), at(radius))
            })
            .collect();
        edges.extend(hole_edges(scale, &holes, outer.start(), outer.end()));
        shapes.push(segments(Role::ThickOutline, edges));
    }

    fn push_cut(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let Some((mark, _)) = self.cut else {
            return;
        };
        let radius = self.outer.radius_at(mark);
        let mut ends = [Side::View, Side::Section].map(|side| scale.point(side, mark, radius));
        for (end, out) in ends.iter_mut().zip([-OVERHANG, OVERHANG]) {
            end.y += out;
        }
        shapes.push(polyline(Role::CutLine, ends.to_vec()));
    }
}

/// The edges that are seen from outside: where the outline turns or steps, except into the fillet.
fn corners(outer: &Profile) -> impl Iterator<Item = (Length, Length)> {
    turns(outer)
        .into_iter()
        .filter(|turn| turn.seen)
        .map(|turn| (turn.z, turn.radius))
}

/// The edges seen inside the holes between two places: across from the axis, in the section.
fn hole_edges(
    scale: &Scale,
    holes: &Profile,
    from: Length,
    to: Length,
) -> impl Iterator<Item = (Point, Point)> {
    turns(holes)
        .into_iter()
        .filter(move |turn| turn.seen && from < turn.z && turn.z <= to)
        .map(|turn| {
            let at = |radius| scale.point(Side::Section, turn.z, radius);
            (at(Length::ZERO), at(turn.radius))
        })
}

struct Turn {
    z: Length,
    /// The smaller radius at a step: the rest of it is outline already.
    radius: Length,
    seen: bool,
}

/// The places inside each stretch of an outline where its direction changes.
fn turns(profile: &Profile) -> Vec<Turn> {
    /// Two chords of an arc differ less in slope than this, an edge worth drawing more.
    const SMOOTH: f64 = 0.16;
    let mut turns = Vec::new();
    for run in profile.runs() {
        for window in run.windows(4) {
            let [before, a, b, after] = window else {
                continue;
            };
            if (b.z - a.z).to_mm() > SAME {
                continue;
            }
            let angle = |from: &crate::part::Point, to: &crate::part::Point| {
                let (run, rise) = (to.z - from.z, to.radius - from.radius);
                rise.to_mm().atan2(run.to_mm())
            };
            let step = (a.radius - b.radius).abs().to_mm() > SAME;
            turns.push(Turn {
                z: a.z,
                radius: a.radius.min(b.radius),
                seen: step || (angle(before, a) - angle(b, after)).abs() > SMOOTH,
            });
        }
    }
    turns
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

fn push_runs(role: Role, scale: &Scale, profile: &Profile, shapes: &mut Vec<Shape>) {
    for run in profile.runs() {
        shapes.push(polyline(role, scale.run(Side::Section, &run)));
    }
}

fn polyline(role: Role, points: Vec<Point>) -> Shape {
    let closed = false;
    Shape {
        role,
        geometry: Geometry::Polyline { points, closed },
    }
}

fn ring(role: Role, points: Vec<Point>) -> Shape {
    let closed = true;
    Shape {
        role,
        geometry: Geometry::Polyline { points, closed },
    }
}

fn segments(role: Role, lines: Vec<(Point, Point)>) -> Shape {
    Shape {
        role,
        geometry: Geometry::Segments(lines),
    }
}
