//! What the holding of a job does under its last cut and its heaviest: form, grip, centre, slenderness.

use serde::Serialize;

use super::centre::{CentreKind, CentrePressure, CentreSeat, thrust_needed};
use super::estimate::Estimate;
use super::form_error::{FormError, copied_share};
use super::grip::{GripLoad, GripRatio, GripSafety, grip_needed, grip_ratio, is_short_grip};
use super::hold::{Hold, NEGLIGIBLE, variation_allowed};
use super::slenderness::{Caution, Hardened, Slenderness, SlendernessLimits, slenderness};
use crate::cutting::{Pass, StockOff, is_hard};
use crate::job::{Field, HoldingField, Job, Support};
use crate::plan::{Code, Finding};
use crate::quantity::{Force, Length, Stiffness};
use crate::rework::{Centre, SizeLimits};
use crate::working::{Figure, Input, Meaning, Source, Value, Working};

/// How the part is held, and what that does. Places are from the shoulder.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct HoldingPlan {
    /// What holds it.
    pub support: Support,
    /// Where the chuck ends; between centres the far end of the head.
    pub chuck_face: Length,
    /// How much of the head is held.
    pub grip_length: Length,
    /// The diameter that is held.
    pub gripped_diameter: Length,
    /// From the chuck to the free end.
    pub overhang: Length,
    /// How slender that is; `None` where there is no beam.
    pub slender: Option<Slenderness>,
    /// The form that the last cut leaves; `None` where there is no beam, or no cut. Its places are from the shoulder too.
    pub form: Option<FormError>,
    /// The force across the work in the last cut, at most.
    pub across: Force,
    /// How much of its diameter may vary: a share of the tolerance.
    pub allowed: Length,
    /// How much larger the diameter comes out where work and tool part most, with its working.
    pub deflection: Option<Figure<Length>>,
    /// Length out of the chuck over the diameter of a plain bar as stiff, with its working.
    pub slender_ratio: Option<Figure<f64>>,
    /// The share of an error of the stock that one pass leaves on the work, where it gives most.
    pub copied: Option<f64>,
    /// Whether the jaws hold the heaviest cut; `None` where nobody knows what they hold with.
    pub grip: Option<GripHeld>,
    /// What the live centre bears; `None` without one.
    pub tail: Option<TailLoad>,
}

/// What the jaws hold with, and what they must.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GripHeld {
    /// Force of all jaws.
    pub held: Estimate<Force>,
    /// What the heaviest cut needs, the safety counted.
    pub needed: Force,
    /// Held over needed, by the careful end; `None` when nothing is needed.
    pub ratio: Option<GripRatio>,
}

/// What a live centre bears.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct TailLoad {
    /// Force across the axis when the tool is at the free end.
    pub across: Force,
    /// How hard to push it in: at least, as a rule, in any case.
    pub thrust: Estimate<Force>,
    /// Pressure in the hole against what it bears; `None` where no hole is planned.
    pub pressure: Option<CentrePressure>,
}

/// How many places the chart has.
const PLACES: u32 = 33;

impl HoldingPlan {
    /// The holding of a job under its passes.
    pub(crate) fn of(
        job: &Job,
        hold: &Hold,
        stock: &StockOff,
        limits: SizeLimits,
        (fillet, centre): (Length, Option<&Centre>),
    ) -> Self {
        let overhang = hold.end - hold.chuck_face;
        let last = stock.last_cut();
        let work = last.and_then(|pass| hold.held(pass.diameter_after));
        let across = last.map_or(Force::ZERO, across_of);
        let form = work.as_ref().map(|work| {
            let stretch = (hold.out(fillet), hold.out(hold.end));
            let mut form = FormError::along(work, |_| across, stretch, PLACES, NEGLIGIBLE);
            let places = form.points.iter_mut();
            for point in places.chain([&mut form.greatest, &mut form.least]) {
                point.at += hold.chuck_face;
            }
            form
        });
        let diameter = work
            .as_ref()
            .map(|work| work.beam().equal_diameter(hold.modulus()));
        let slender =
            diameter.and_then(|it| slenderness(overhang, it, hold.support, hardened(job)));
        let slender_ratio = slender.zip(diameter);
        let slender_ratio = slender_ratio.map(|(it, bar)| ratio_figure(it.ratio, overhang, bar));
        let deflection = work.as_ref().zip(form.as_ref()).and_then(|(work, form)| {
            let stiffness = work.stiffness(hold.out(form.greatest.at))?;
            Some(deflection_figure(
                form.greatest.size_error,
                across,
                stiffness,
            ))
        });
        let copied = work.as_ref().zip(last).and_then(|(work, pass)| {
            let depth = pass.infeed.to_mm() * 1000.0;
            let grows = across.max(Force::ZERO).to_newtons() / depth;
            let greatest = form.as_ref()?.greatest.at;
            let stiffness = work.stiffness(hold.out(greatest));
            (depth > 0.0).then(|| copied_share(Stiffness::newtons_per_um(grows), stiffness))
        });
        let tail = (hold.support == Support::ChuckAndCentre
            || hold.support == Support::BetweenCentres)
            .then(|| tail_load(job, hold, stock, centre));
        Self {
            support: hold.support,
            chuck_face: hold.chuck_face,
            grip_length: hold.grip_length,
            gripped_diameter: hold.gripped_diameter,
            overhang,
            slender,
            form,
            across,
            allowed: variation_allowed(limits),
            deflection,
            slender_ratio,
            copied,
            grip: grip_held(hold, stock),
            tail,
        }
    }

    /// What there is to say of it.
    pub(crate) fn findings(&self, job: &Job) -> Vec<Finding> {
        let mut findings = Vec::new();
        let at = |field, code| Finding::at(Field::Holding(field), code);
        if let Some(slender) = self.slender.filter(|it| it.caution != Caution::None) {
            let easy = SlendernessLimits::of(self.support, hardened(job)).easy;
            let code = Code::MayChatter {
                ratio: slender.ratio,
                easy,
            };
            findings.push(at(HoldingField::Support, code));
        }
        let in_jaws = matches!(self.support, Support::Chuck | Support::ChuckAndCentre);
        // With a centre at the other end the part cannot tip out of the jaws.
        if in_jaws
            && self.support == Support::Chuck
            && is_short_grip(self.grip_length, self.gripped_diameter)
        {
            let least = self.gripped_diameter / 2.0;
            findings.push(at(HoldingField::GripLength, Code::ShortGrip { least }));
        }
        if self.tail.is_some() && job.wanted.countersink.is_none() {
            findings.push(at(HoldingField::Support, Code::CentreWithoutHole));
        }
        findings
    }
}

fn deflection_figure(error: Length, across: Force, stiffness: Stiffness) -> Figure<Length> {
    Figure {
        value: error,
        range: None,
        working: Working {
            symbol: "e",
            formula: "2 · F/k",
            parts: &[],
            inputs: vec![
                Input::new("F", Meaning::AcrossForce, Value::Force(across)),
                Input::new("k", Meaning::StiffnessThere, Value::Stiffness(stiffness)),
            ],
            source: Source::Geometry,
        },
    }
}

fn ratio_figure(ratio: f64, overhang: Length, bar: Length) -> Figure<f64> {
    Figure {
        value: ratio,
        range: None,
        working: Working {
            symbol: "q",
            formula: "L/D",
            parts: &[],
            inputs: vec![
                Input::new("L", Meaning::Overhang, Value::length(overhang)),
                Input::new("D", Meaning::EqualDiameter, Value::size(bar)),
            ],
            source: Source::CommonPractice,
        },
    }
}

fn across_of(pass: &Pass) -> Force {
    pass.cut.as_ref().map_or(Force::ZERO, |cut| cut.across)
}

fn hardened(job: &Job) -> Hardened {
    if is_hard(job.part.material) {
        Hardened::Yes
    } else {
        Hardened::No
    }
}

/// The grip against the pass that asks most of it.
fn grip_held(hold: &Hold, stock: &StockOff) -> Option<GripHeld> {
    let force = hold.grip?;
    let safety = GripSafety::default();
    let needed = |pass: &Pass| {
        let cut = pass.cut.as_ref()?;
        let load = GripLoad {
            cutting: cut.force.high,
            cut_diameter: pass.diameter_after + pass.off_diameter,
            gripped_diameter: hold.gripped_diameter,
            feed: cut.along,
            // The centre pushes the head against the chuck, which holds it there.
            tail_thrust: Force::ZERO,
            stop: Force::ZERO,
        };
        Some(grip_needed(load, hold.friction, safety, Force::ZERO)?.together)
    };
    let needed = stock.passes.iter().filter_map(needed);
    let needed = needed.fold(Force::ZERO, Force::max);
    Some(GripHeld {
        held: force,
        needed,
        ratio: grip_ratio(force.low, needed, safety),
    })
}

fn tail_load(job: &Job, hold: &Hold, stock: &StockOff, centre: Option<&Centre>) -> TailLoad {
    let heaviest = stock
        .passes
        .iter()
        .map(across_of)
        .fold(Force::ZERO, Force::max);
    let along = stock
        .passes
        .iter()
        .filter_map(|pass| Some(pass.cut.as_ref()?.along));
    let along = along.fold(Force::ZERO, Force::max);
    let work = stock
        .last_cut()
        .and_then(|pass| hold.held(pass.diameter_after));
    let across = work.map_or(Force::ZERO, |work| {
        work.tail_reaction(hold.out(hold.end), heaviest)
    });
    let thrust = thrust_needed(along, across);
    let pressure = centre.and_then(|centre| {
        let seat = CentreSeat {
            mouth: centre.mouth,
            pilot: centre.pilot(),
        };
        let kind = if is_hard(job.part.material) {
            CentreKind::LiveInHard
        } else {
            CentreKind::Live
        };
        seat.pressure(across, hold.thrust.unwrap_or(thrust.likely), kind)
    });
    TailLoad {
        across,
        thrust,
        pressure,
    }
}
