//! How deep to go for a wanted countersink: on solid stock with a centre drill, or on a hole that is there.
//!
//! All centres are 60° included, so the cone is 0.866 times as deep as its diameters differ.

use serde::Serialize;

use crate::job::{CentreOrder, Field};
use crate::part::{CENTRE_HALF_ANGLE, HAIR, Profile, Received, SAME, centre, cone_height};
use crate::plan::{Code, Finding};
use crate::quantity::Length;
use crate::tables::{CentreDrill, CentreDrillSize, CentreDrillStandard};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

use super::finished::WantedShank;

/// How deep to go for the countersink.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Centre {
    /// The countersink's mouth at the finished face.
    pub mouth: Length,
    /// On solid stock or on a hole.
    pub on: CentreOn,
    /// Depth of the cone alone.
    pub cone_depth: Figure<Length>,
    /// What to feed in: from the face as it is when the centre is made, or from first touch on a hole's edge, at
    /// or above the finished face.
    pub feed_depth: Figure<Length>,
    /// How deep a sharp live centre reaches below the finished face.
    pub point_reach: Length,
}

impl Centre {
    /// Diameter where the cone ends: of the pilot, or of the hole.
    pub const fn pilot(&self) -> Length {
        match self.on {
            CentreOn::Solid { pilot, .. } => pilot,
            CentreOn::Hole { bore } => bore,
        }
    }
}

/// What the centre is made on.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum CentreOn {
    /// Solid stock: a centre drill makes pilot and cone.
    Solid {
        /// The drill's designation.
        drill: &'static str,
        /// Its pilot diameter.
        pilot: Length,
    },
    /// A hole is there: only its edge is countersunk.
    Hole {
        /// Diameter of the hole at the finished face.
        bore: Length,
    },
}

/// What the centre needs to know.
pub(crate) struct CentreQuestion<'a> {
    pub(crate) received: &'a Received,
    pub(crate) shank: &'a WantedShank,
    /// Shoulder to finished face.
    pub(crate) face: Length,
    pub(crate) mouth: Length,
    pub(crate) facing: Length,
    pub(crate) order: CentreOrder,
}

/// The centre, its outline, and what was found; no centre where there is no metal or no drill for it.
pub(crate) fn plan_centre(question: &CentreQuestion) -> (Option<Centre>, Profile, Vec<Finding>) {
    let mut findings = Vec::new();
    let at = |code| Finding::at(Field::Countersink, code);
    let end = question.shank.end_diameter();
    if question.mouth.to_mm() > end.to_mm() + SAME {
        findings.push(at(Code::CountersinkTooWide { end }));
    }
    let bore = hole_at(question.received, question.face);
    if bore.to_mm() > SAME && question.mouth.to_mm() <= bore.to_mm() + SAME {
        findings.push(at(Code::CountersinkInHole { bore }));
        return (None, Profile::default(), findings);
    }
    if let Some(seat) = seat_in_hole(question, bore) {
        findings.extend(thread_finding(question));
        if seat.point_blocked {
            let least_depth = point_reach(question.mouth);
            findings.push(at(Code::PointTouchesBottom { least_depth }));
        }
        let (found, outline) = on_hole(question, bore, &seat);
        return (Some(found), outline, findings);
    }
    let clearance = widening(still_on(question));
    let Some(drill) = choose_drill(question.mouth, question.mouth + clearance) else {
        let largest = CentreDrillSize::of(CentreDrillStandard::Iso)
            .filter_map(CentreDrillSize::get)
            .map(|drill| drill.body_diameter)
            .fold(Length::ZERO, Length::max);
        let largest = (largest - clearance).max(Length::ZERO);
        findings.push(at(Code::NoCentreDrill { largest }));
        return (None, Profile::default(), findings);
    };
    let (found, outline) = on_solid(question, drill);
    (Some(found), outline, findings)
}

/// Diameter of whatever hole opens at the finished face; zero on solid stock.
fn hole_at(received: &Received, face: Length) -> Length {
    // A hair inside the face, where a hole that just ends there is gone.
    received.inner.radius_at(face - HAIR) * 2.0
}

/// How deep the sharp point of a live centre reaches under a mouth.
fn point_reach(mouth: Length) -> Length {
    cone_height(mouth / 2.0, CENTRE_HALF_ANGLE)
}

/// The cone of a live centre, to its sharp point, in the finished face.
fn whole_cone(question: &CentreQuestion) -> Profile {
    let mut cone = Profile::default();
    let point = question.face - point_reach(question.mouth);
    cone.push_line(point, question.face, Length::ZERO, question.mouth / 2.0);
    cone
}

/// Where the cone ends in a hole that is there.
struct Seat {
    /// Diameter of the hole where the cone runs out into it.
    diameter: Length,
    /// Whether the point of a live centre meets metal below that.
    point_blocked: bool,
}

/// The seat of the cone in a hole; `None` on solid stock, and where what is left of a hole is shallower than the
/// cone, so that the centre has to be drilled as on solid stock.
fn seat_in_hole(question: &CentreQuestion, bore: Length) -> Option<Seat> {
    let cone = whole_cone(question);
    // Beyond the far end of the head there is air again.
    let inside = cone.between(question.received.head.start(), question.face);
    let metal = inside.beyond(&question.received.inner);
    let (runs_out, _) = metal.last().copied()?;
    if (runs_out - inside.start()).to_mm() <= SAME {
        return None;
    }
    let diameter = cone.radius_at(runs_out) * 2.0;
    let straight = (diameter - bore).abs().to_mm() <= SAME;
    Some(Seat {
        diameter: if straight { bore } else { diameter },
        point_blocked: metal.len() > 1,
    })
}

/// The ISO type A drill whose standard mouth is nearest to the wanted one, of those whose cone can make it.
///
/// `widest` is the mouth in the face as it is when the centre is drilled.
///
/// # Source
/// ISO 866 type A for the drills; the choice of the nearest is common practice.
fn choose_drill(mouth: Length, widest: Length) -> Option<&'static CentreDrill> {
    let makes = |drill: &CentreDrill| {
        drill.pilot_diameter < mouth && widest.to_mm() <= drill.body_diameter.to_mm() + SAME
    };
    let off = |drill: &CentreDrill| {
        let standard = drill.countersink_diameter.unwrap_or(drill.body_diameter);
        (standard - mouth).abs().to_mm()
    };
    CentreDrillSize::of(CentreDrillStandard::Iso)
        .filter_map(CentreDrillSize::get)
        .filter(|drill| makes(drill))
        .min_by(|a, b| off(a).total_cmp(&off(b)))
}

/// How much wider the cone is over a height.
fn widening(height: Length) -> Length {
    height * (2.0 * CENTRE_HALF_ANGLE.to_radians().tan())
}

/// Depth of a 60° cone from diameter `inner` up to diameter `outer`.
///
/// # Source
/// Right triangle at the cone: (C − d)/(2 tan 30°).
/// # Example
/// A 5.3 mm mouth over a 2.5 mm pilot is 2.42 mm deep, as DIN 332-1 prints for A 2.5.
fn cone_depth(outer: Length, inner: Length, inner_input: Input, source: Source) -> Figure<Length> {
    Figure {
        value: cone_height((outer - inner) / 2.0, CENTRE_HALF_ANGLE),
        range: None,
        working: Working {
            symbol: "c",
            formula: "(C − d)/(2 · tan α)",
            parts: &[],
            inputs: vec![
                Input::new(
                    "C",
                    Meaning::Field(Field::Countersink),
                    Value::length(outer),
                ),
                inner_input,
                half_angle_input(),
            ],
            source,
        },
    }
}

fn half_angle_input() -> Input {
    Input::new("α", Meaning::HalfAngle, Value::Angle(CENTRE_HALF_ANGLE))
}

/// The facing stock that is still on when the centre is made.
fn still_on(question: &CentreQuestion) -> Length {
    match question.order {
        CentreOrder::AfterFacing => Length::ZERO,
        CentreOrder::BeforeFacing => question.facing,
    }
}

fn still_on_input(facing: Length) -> Input {
    Input::new("f", Meaning::FacingStillOn, Value::length(facing))
}

fn on_solid(question: &CentreQuestion, drill: &'static CentreDrill) -> (Centre, Profile) {
    let mouth = question.mouth;
    let source = Source::Published {
        title: "ISO 866, centre drills type A",
        confirmed: drill.confirmed_tool,
    };
    let cone = cone_depth(
        mouth,
        drill.pilot_diameter,
        Input::new(
            "d",
            Meaning::PilotDiameter,
            Value::length(drill.pilot_diameter),
        ),
        source,
    );
    let facing = still_on(question);
    let (shortest, longest) = (drill.pilot_length_min, drill.pilot_length_max);
    let pilot_length = (shortest + longest) / 2.0;
    let total = |pilot: Length| pilot + cone.value + facing;
    let feed_depth = Figure {
        value: total(pilot_length),
        range: Some(Range {
            low: total(shortest),
            high: total(longest),
        }),
        working: Working {
            symbol: "t",
            formula: "l + c + f",
            parts: &[],
            inputs: vec![
                Input::new("l", Meaning::PilotLength, Value::length(pilot_length)),
                Input::new("c", Meaning::ConeDepth, Value::length(cone.value)),
                still_on_input(facing),
            ],
            source,
        },
    };
    let space = (question.received.head.start(), question.face);
    let outline = centre(mouth, drill.pilot_diameter, pilot_length, space);
    let found = Centre {
        mouth,
        on: CentreOn::Solid {
            drill: drill.designation,
            pilot: drill.pilot_diameter,
        },
        cone_depth: cone,
        feed_depth,
        point_reach: point_reach(mouth),
    };
    (found, outline)
}

fn on_hole(question: &CentreQuestion, bore: Length, seat: &Seat) -> (Centre, Profile) {
    let mouth = question.mouth;
    let inner = |meaning, diameter| Input {
        symbol: "d",
        meaning,
        value: Value::length(diameter),
    };
    let runs_out = if seat.diameter == bore {
        Meaning::BoreAtFace
    } else {
        Meaning::BoreAtCone
    };
    let cone = cone_depth(
        mouth,
        seat.diameter,
        inner(runs_out, seat.diameter),
        Source::Geometry,
    );
    let (edge, above) = first_touch(question, bore);
    let mut feed_depth = cone_depth(
        mouth,
        edge,
        inner(Meaning::BoreAtFace, edge),
        Source::Geometry,
    );
    feed_depth.value += above;
    feed_depth.working.symbol = "t";
    feed_depth.working.formula = "(C − d)/(2 · tan α) + f";
    feed_depth.working.inputs.push(still_on_input(above));
    let mut outline = Profile::default();
    outline.push_line(
        question.face - cone.value,
        question.face,
        seat.diameter / 2.0,
        mouth / 2.0,
    );
    let found = Centre {
        mouth,
        on: CentreOn::Hole { bore },
        cone_depth: cone,
        feed_depth,
        point_reach: point_reach(mouth),
    };
    (found, outline)
}

/// The edge of the hole, from the rough face down to the finished one, that the tool touches first: its diameter,
/// and how far it stands above the finished face. Edges below the finished face are left aside.
fn first_touch(question: &CentreQuestion, bore: Length) -> (Length, Length) {
    let rough = question.face + still_on(question);
    let hole = question.received.inner.between(question.face, rough);
    // Diameter of the tool's cone at the finished face when it meets an edge: the smaller, the earlier.
    let met = |edge: (Length, Length)| edge.0 - widening(edge.1);
    let edges = hole
        .points()
        .into_iter()
        .map(|point| (point.radius * 2.0, point.z - question.face));
    edges.fold((bore, Length::ZERO), |first, edge| {
        // In an old centre hole all edges are met at once, and the lowest stands for them.
        let earlier = (met(first) - met(edge)).to_mm() > SAME;
        if earlier { edge } else { first }
    })
}

/// A live centre must bear on the cone, not on the thread inside it.
fn thread_finding(question: &CentreQuestion) -> Option<Finding> {
    let inside = question.face - HAIR;
    let major = question
        .received
        .bores
        .iter()
        .filter(|bore| bore.thread_end.is_some_and(|end| end < inside))
        .map(|bore| bore.widest.radius_at(inside) * 2.0)
        .fold(Length::ZERO, Length::max);
    let bears = major.to_mm() > SAME && question.mouth.to_mm() <= major.to_mm() + SAME;
    bears.then(|| Finding::at(Field::Countersink, Code::CountersinkOnThread { major }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_drill_that_can_make_the_mouth_is_chosen() {
        // ISO 866 type A: 2.5 has a standard mouth of 5.3 and a body of 6.3.
        let cases = [(5.3, "2.5"), (6.3, "3.15"), (8.0, "4"), (2.0, "1")];
        for (mouth, wanted) in cases {
            let drill = choose_drill(Length::mm(mouth), Length::mm(mouth)).unwrap();
            assert!(
                drill.designation.contains(wanted),
                "{mouth}: {}",
                drill.designation
            );
        }
        let none = |mouth| choose_drill(Length::mm(mouth), Length::mm(mouth)).is_none();
        assert!(none(59.0) && none(0.3));
        // A millimetre of facing stock widens the cone to 6.45 at the rough face: past the body of A2.5.
        let wider = choose_drill(Length::mm(5.3), Length::mm(6.45)).unwrap();
        assert_eq!(wider.designation, "A3.15");
    }
}
