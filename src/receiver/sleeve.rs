//! A repair sleeve on the finished shank: pressure, stress, what it holds, how warm it must be to go on.

use serde::Serialize;

use super::Asked;
use crate::job::{Field, Job, Receiver, ReceiverField};
use crate::part::{Received, SAME};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::{Length, Stress, TemperatureStep, Torque};
use crate::rework::WantedShank;
use crate::rework::safety::duty as carried;
use crate::strength::{Elastic, PRESS_FIT_SOURCE, PressFit, after_flattening};
use crate::tables::{SleeveDuty, WorkMaterial, least_sleeve_wall};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// A sleeve pressed or shrunk on the shank. Ranges go from the least to the greatest interference of the limits.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SleeveFit {
    /// The finished wall.
    pub wall: Length,
    /// The least wall advised.
    pub least_wall: Length,
    /// Pressure between sleeve and shank.
    pub pressure: Figure<Stress>,
    /// Greatest pull in the sleeve, at its bore; the equivalent stress.
    pub sleeve_stress: Figure<Stress>,
    /// Greatest stress in the shank.
    pub shaft_stress: Figure<Stress>,
    /// The torque that friction holds.
    pub holds: Figure<Torque>,
    /// How much warmer the sleeve must be than the shank to slip on.
    pub warmer_by: Figure<TemperatureStep>,
    /// The usual yield strength of sleeve and shank.
    #[serde(skip)]
    yields: (Stress, Stress),
}

/// Friction of dry turned steel on steel; from memory, 0.08 to 0.16.
const FRICTION: (f64, f64, f64) = (0.08, 0.12, 0.16);

/// Roughness Rz of a turned and polished shank and of a reamed or bored sleeve: 4 µm; common practice, no source.
const ROUGHNESS: Length = Length::um(4.0);

/// Room for a sleeve to slip on by hand: a thousandth of the diameter; common practice, no source.
const ROOM: f64 = 0.001;

/// The sleeve of the job; `None` for other receivers, while a number is missing, and where it has no wall.
pub(super) fn sleeve(
    job: &Job,
    checked: &Checked,
    asked: &Asked,
    fit: Range<Length>,
    shank: &WantedShank,
    received: &Received,
) -> Option<SleeveFit> {
    let Receiver::Sleeve { material, duty, .. } = &job.wanted.receiver else {
        return None;
    };
    // A glued sleeve has clearance, and the adhesive's maker knows what it holds.
    if *duty == SleeveDuty::Adhesive {
        return None;
    }
    let outside = checked.length(Field::Receiver(ReceiverField::Outside))?;
    let seat = shank.diameter;
    let depth = checked.or_usual(Field::ReceiverDepth, asked.depth);
    let straight = shank.length - shank.fillet - shank.chamfer;
    let length = depth.map_or(straight, |depth: Length| depth.min(straight));
    // The hole under the sleeve, at its widest.
    let hole = received.inner.largest(shank.length - length, shank.length);
    let press = PressFit {
        shaft_bore: hole.map_or(Length::ZERO, |hole| hole.radius * 2.0),
        seat,
        outside,
        length,
        shaft: elastic(job.part.material),
        sleeve: elastic(*material),
    };
    // The peaks of both surfaces are flattened when it is pressed on.
    let loose = after_flattening(fit.low, ROUGHNESS, ROUGHNESS).max(Length::ZERO);
    let tight = fit.high.max(Length::ZERO);
    let middle = (loose + tight) / 2.0;
    let at = |interference| press.pressed(interference);
    let (low, likely, high) = (at(loose)?, at(middle)?, at(tight)?);
    let inputs = || {
        vec![
            Input::new("δ", Meaning::Interference, Value::size(middle)),
            Input::new("d", Meaning::AimedDiameter, Value::size(seat)),
            Input::new(
                "D",
                Meaning::Field(Field::Receiver(ReceiverField::Outside)),
                Value::size(outside),
            ),
        ]
    };
    let stress = |symbol, formula, of: fn(&crate::strength::Pressed) -> Stress| {
        figure(
            (of(&low).abs(), of(&likely).abs(), of(&high).abs()),
            (symbol, formula),
            inputs(),
            PRESS_FIT_SOURCE,
        )
    };
    let holds = (
        press.torque_hold(low.pressure, FRICTION.0),
        press.torque_hold(likely.pressure, FRICTION.1),
        press.torque_hold(high.pressure, FRICTION.2),
    );
    let mechanical = material.mechanical();
    let warmer =
        |interference| press.warmer_by(interference, seat * ROOM, mechanical.expansion.typical);
    let warmer = (
        warmer(fit.low.max(Length::ZERO))?,
        warmer(middle)?,
        warmer(tight)?,
    );
    let yields = |material: WorkMaterial| {
        let material = material.mechanical();
        material.tensile_strength.typical * material.yield_share.typical
    };
    Some(SleeveFit {
        wall: (outside - seat) / 2.0,
        least_wall: least_sleeve_wall(seat),
        pressure: stress("p", "δ/(d · c)", |found| found.pressure),
        sleeve_stress: stress("σᵥ", "p · √(q² + q + 1)", |found| {
            found.sleeve_equivalent
        }),
        shaft_stress: stress("σₛ", "p · qₛ", |found| found.shaft_equivalent),
        holds: figure(
            holds,
            ("T", "µ · p · π · d² · l/2"),
            vec![
                Input::new("µ", Meaning::Friction, Value::Ratio(FRICTION.1)),
                Input::new("p", Meaning::Pressure, Value::Stress(likely.pressure)),
                Input::new("d", Meaning::AimedDiameter, Value::size(seat)),
                Input::new("l", Meaning::SeatLength, Value::length(length)),
            ],
            PRESS_FIT_SOURCE,
        ),
        warmer_by: figure(
            warmer,
            ("ΔT", "(δ + s)/(α · d)"),
            vec![
                Input::new("δ", Meaning::Interference, Value::size(middle)),
                Input::new("s", Meaning::RoomToAssemble, Value::size(seat * ROOM)),
                Input::new("d", Meaning::AimedDiameter, Value::size(seat)),
            ],
            Source::CommonPractice,
        ),
        yields: (yields(*material), yields(job.part.material)),
    })
}

fn elastic(material: WorkMaterial) -> Elastic {
    let material = material.mechanical();
    Elastic {
        modulus: material.elastic_modulus.typical,
        poisson: material.poisson,
    }
}

fn figure<Q>(
    (low, value, high): (Q, Q, Q),
    (symbol, formula): (&'static str, &'static str),
    inputs: Vec<Input>,
    source: Source,
) -> Figure<Q> {
    Figure {
        value,
        range: Some(Range { low, high }),
        working: Working {
            symbol,
            formula,
            parts: &[],
            inputs,
            source,
        },
    }
}

/// What stands against the sleeve.
pub(super) fn findings(
    job: &Job,
    checked: &Checked,
    shank: &WantedShank,
    fit: Option<&SleeveFit>,
) -> Vec<Finding> {
    let Receiver::Sleeve { .. } = &job.wanted.receiver else {
        return Vec::new();
    };
    let mut findings = Vec::new();
    let outside = Field::Receiver(ReceiverField::Outside);
    if let Some(diameter) = checked.length(outside) {
        let wall = (diameter - shank.diameter) / 2.0;
        let least = least_sleeve_wall(shank.diameter);
        if wall.to_mm() < least.to_mm() - SAME {
            findings.push(Finding::at(outside, Code::SleeveTooThin { wall, least }));
        }
    }
    let Some(fit) = fit else {
        return findings;
    };
    let (sleeve, shaft) = fit.yields;
    if fit.sleeve_stress.value > sleeve || fit.shaft_stress.value > shaft {
        findings.push(Finding::at(Field::Tolerance, Code::SleeveYields));
    }
    let torque = carried(checked).map_or(Torque::ZERO, |duty| duty.torque);
    let held = fit.holds.range.map_or(fit.holds.value, |range| range.low);
    if held < torque {
        findings.push(Finding::at(Field::Tolerance, Code::SleeveMaySlip { held }));
    }
    findings
}
