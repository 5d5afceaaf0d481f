//! The part itself: outlines, cut surfaces, metal that goes, the cut and the axis.
//!
//! Above the axis is the outside view, below it the section. Line types after ISO 128-2 and ISO 128-3. Holes beside
//! the axis and threads are in `holes.rs`, what is cut into the shank in `cuts.rs`.

use super::drawing::Stage;
use super::geometry::{Geometry, Point, Role, Shape};
use super::hatch::{Lean, hatch};
use super::layers::{layers, picked_layer};
use super::scale::{Scale, Side};
use crate::cutting::StockOff;
use crate::part::{Pick, Profile, Received, SAME};
use crate::plan::Plan;
use crate::quantity::Length;

/// How far axis and cut line stand out of the part, in pixels.
pub(crate) const OVERHANG: f64 = 10.0;

/// Distance of hatch lines, in pixels.
const HATCH_PITCH: f64 = 6.0;

/// The outlines that a drawing is made of.
pub(crate) struct Body<'a> {
    pub(super) received: &'a Received,
    /// Head and shank as received.
    pub(super) outer: Profile,
    /// The holes on the axis as received.
    pub(super) holes: Profile,
    /// What is wanted, where there is metal for it.
    pub(super) finished: Option<Finished>,
    /// Where the cut is marked, and where the offcut begins.
    cut: Option<(Length, Length)>,
    /// The passes whose layers are drawn.
    pub(super) passes: Option<&'a StockOff>,
    /// The place of the picked one of them.
    pub(super) pass: Option<u8>,
}

/// The outlines of the finished part.
pub(super) struct Finished {
    /// The shank alone.
    pub(super) shank: Profile,
    /// Head and shank.
    pub(super) outer: Profile,
    /// The holes on the axis.
    pub(super) holes: Profile,
}

impl<'a> Body<'a> {
    /// The outlines of a plan; what is not planned is left out, and so are the passes.
    pub(crate) fn new(received: &'a Received, plan: &Plan) -> Self {
        let on_axis = received.bores.iter().filter(|bore| !is_beside(bore));
        let holes = on_axis.fold(Profile::default(), |all, bore| {
            all.merge(&bore.profile, Pick::Larger)
        });
        let finished = plan.shape.finished.as_ref().map(|shank| {
            let left = holes.between(received.head.start(), shank.end());
            Finished {
                shank: shank.clone(),
                outer: shank.merge(&received.head, Pick::Larger),
                holes: left.merge(&plan.shape.new_centre, Pick::Larger),
            }
        });
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
            holes,
            finished,
            cut,
            passes: None,
            pass: None,
        }
    }

    /// The same with the passes where a stage shows them, `pass` being the one that is looked at.
    pub(crate) fn of_stage(
        received: &'a Received,
        plan: &'a Plan,
        stage: Stage,
        pass: Option<u8>,
    ) -> Self {
        let mut body = Self::new(received, plan);
        if stage == Stage::Plan {
            body.passes = plan.stock_off.as_ref();
            body.pass = pass;
        }
        body
    }

    /// Where anything of the part begins, ends or bends along the axis.
    pub(crate) fn places(&self) -> Vec<Length> {
        let mut outlines = vec![&self.outer, &self.holes];
        if let Some(finished) = &self.finished {
            outlines.extend([&finished.outer, &finished.holes]);
        }
        outlines.extend(self.received.bores.iter().map(|bore| &bore.widest));
        let points = outlines.into_iter().flat_map(Profile::points);
        let mut places: Vec<Length> = points.map(|point| point.z).collect();
        for section in &self.received.sections {
            places.extend([section.from, section.to]);
        }
        for feature in &self.received.features {
            places.extend([feature.from, feature.to]);
        }
        places.extend(
            self.received
                .bores
                .iter()
                .filter_map(|bore| bore.thread_end),
        );
        places.extend(
            self.cut
                .into_iter()
                .flat_map(|(mark, offcut)| [mark, offcut]),
        );
        places
    }

    /// How far the part reaches from the axis at a place, in pixels.
    pub(crate) fn reach_at(&self, z: Length, scale: &Scale) -> f64 {
        self.outer.radius_at(z).to_mm() * scale.factor
    }

    /// Everything of the part, in the order that it is painted.
    pub(crate) fn shapes(&self, scale: &Scale) -> Vec<Shape> {
        let mut shapes = Vec::new();
        self.push_removed(scale, &mut shapes);
        self.push_section(scale, &mut shapes);
        if let Some(stock) = self.passes {
            shapes.extend(layers(stock, self.received, scale, self.pass));
        }
        self.push_open(scale, &mut shapes);
        self.push_received(scale, &mut shapes);
        self.push_threads(scale, &mut shapes);
        self.push_finished(scale, &mut shapes);
        self.push_cuts(scale, &mut shapes);
        if let Some((stock, place)) = self.passes.zip(self.pass)
            && let Some(pass) = stock.passes.get(usize::from(place))
        {
            shapes.push(picked_layer(pass, self.received, scale));
        }
        self.push_cut_line(scale, &mut shapes);
        let ends = [
            scale.x(self.outer.start()) - OVERHANG,
            scale.x(self.outer.end()) + OVERHANG,
        ];
        shapes.push(polyline(
            Role::Axis,
            ends.map(|x| Point::new(x, scale.axis)).to_vec(),
        ));
        shapes.retain(|shape| !shape.geometry.is_empty());
        shapes
    }

    /// Metal that goes: a tint on both sides, hatching in the section, the kerf by itself.
    fn push_removed(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let Some(finished) = &self.finished else {
            return;
        };
        let end = self.outer.end();
        let (mark, offcut) = self.cut.unwrap_or((end, end));
        let nothing = Profile::default();
        let shank = |from, to| self.received.outer.between(from, to);
        let mut hatched = Vec::new();
        for (side, holes) in [(Side::View, &nothing), (Side::Section, &self.holes)] {
            let stays = finished.outer.merge(holes, Pick::Larger);
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
        let new_hole = finished.holes.merge(&finished.outer, Pick::Smaller);
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

    /// The outline and the holes on the axis of what stays.
    pub(super) fn stays(&self) -> (&Profile, &Profile) {
        let finished = self.finished.as_ref();
        finished.map_or((&self.outer, &self.holes), |it| (&it.outer, &it.holes))
    }

    /// The part as received, thin. Edges that the finished part covers are left out.
    fn push_received(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        for side in [Side::View, Side::Section] {
            shapes.push(polyline(Role::ThinOutline, scale.line(side, &self.outer)));
        }
        push_runs(Role::ThinOutline, scale, &self.holes, shapes);
        let nothing = Profile::default();
        let finished = self.finished.as_ref().map(|finished| &finished.outer);
        let edges = corners(&self.outer).map(|(z, radius)| {
            let covered = finished.unwrap_or(&nothing).radius_at(z).min(radius);
            let at = |radius| scale.point(Side::View, z, radius);
            (at(covered), at(radius))
        });
        shapes.push(segments(Role::ThinOutline, edges.collect()));
        let from = finished.map_or(self.outer.start(), Profile::end);
        let edges = hole_edges(scale, &self.holes, from, self.outer.end());
        shapes.push(segments(Role::ThinOutline, edges.collect()));
        self.push_holes_beside(Role::ThinOutline, self.outer.end(), scale, shapes);
    }

    /// The finished part, thick: its outline, its holes in the section, its edges in the view.
    fn push_finished(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
        let Some(Finished { outer, holes, .. }) = &self.finished else {
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
        self.push_holes_beside(Role::ThickOutline, outer.end(), scale, shapes);
    }

    fn push_cut_line(&self, scale: &Scale, shapes: &mut Vec<Shape>) {
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

/// Whether a hole lies beside the axis of the shank.
pub(super) fn is_beside(bore: &crate::part::BoreShape) -> bool {
    bore.off_centre.to_mm() > SAME
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

pub(super) struct Turn {
    pub(super) z: Length,
    /// The smaller radius at a step: the rest of it is outline already.
    pub(super) radius: Length,
    pub(super) seen: bool,
}

/// The places inside each stretch of an outline where its direction changes.
pub(super) fn turns(profile: &Profile) -> Vec<Turn> {
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

fn push_runs(role: Role, scale: &Scale, profile: &Profile, shapes: &mut Vec<Shape>) {
    for run in profile.runs() {
        shapes.push(polyline(role, scale.run(Side::Section, &run)));
    }
}

pub(super) fn polyline(role: Role, points: Vec<Point>) -> Shape {
    let closed = false;
    Shape {
        role,
        geometry: Geometry::Polyline { points, closed },
    }
}

pub(super) fn ring(role: Role, points: Vec<Point>) -> Shape {
    let closed = true;
    Shape {
        role,
        geometry: Geometry::Polyline { points, closed },
    }
}

pub(super) fn segments(role: Role, lines: Vec<(Point, Point)>) -> Shape {
    Shape {
        role,
        geometry: Geometry::Segments(lines),
    }
}
