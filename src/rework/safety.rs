//! How many times its duty the finished shank bears.

use serde::Serialize;

use super::bears::is_steel;
use super::finished::WantedShank;
use crate::job::{Field, Job};
use crate::part::{CutShape, Received};
use crate::plan::{Checked, Code, Finding};
use crate::quantity::{Force, Hardness, Length, Power, Stress, Torque};
use crate::strength::{Assessment, Course, Duty, GOODMAN_SOURCE, Notch, Place, Strength, assess};
use crate::tables::{Spread, WorkMaterial};
use crate::working::{Figure, Input, Meaning, Range, Source, Value, Working};

/// Safety under the duty: how many times as much it would bear.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct UnderDuty {
    /// The torque that counts.
    pub torque: Torque,
    /// The bending moment that counts.
    pub moment: Torque,
    /// Where it is least.
    pub at: Length,
    /// Against bending or twisting out of shape; `None` without load.
    pub against_yield: Option<Figure<f64>>,
    /// Against breaking in the long run; `None` without load, and for metals other than steel.
    pub against_fatigue: Option<Figure<f64>>,
}

/// From this hardness on steel has little give, and the peak of the stress counts, not its mean: common practice, no
/// source.
const BRITTLE: Hardness = Hardness::hrc(45.0);

/// How far endurance limits of one steel scatter to both sides: two standard deviations of 8 %.
///
/// # Source
/// Mechanical Engineering Design, reliability factor; from memory.
const SCATTER: f64 = 0.16;

/// The duty entered; `None` where there is none that can be computed with.
///
/// A torque is taken to come and go, as with each start and each cut: common practice, no source.
pub(crate) fn duty(checked: &Checked) -> Option<Duty> {
    let torque: Option<Torque> = checked.value(Field::DutyTorque);
    let power: Option<Power> = checked.value(Field::DutyPower);
    let carried = power
        .zip(checked.rotation(Field::DutySpeed))
        .map(|(power, speed)| power.torque_at(speed));
    let side_load: Option<Force> = checked.value(Field::DutyForce);
    if torque.is_none() && carried.is_none() && side_load.is_none() {
        return None;
    }
    let overhang = checked.length(Field::DutyOverhang).unwrap_or_default();
    let duty = Duty {
        course: Course::Pulsating,
        ..Duty::torque(torque.unwrap_or_default().max(carried.unwrap_or_default()))
    };
    Some(duty.with_side_load(side_load.unwrap_or_default(), overhang))
}

/// How much the hole or the keyway at a place raises the stress on what is left there.
///
/// # Source
/// Peterson's Stress Concentration Factors, cross hole and end-milled keyway; from memory, rounded up.
pub(super) fn notch_at(received: &Received, shank: &WantedShank, z: Length) -> Notch {
    let radius = shank.diameter / 2.0;
    let here = received
        .features
        .iter()
        .filter(|it| it.from <= z && z <= it.to);
    let notches = here.filter_map(|feature| match feature.cut {
        CutShape::CrossHole { diameter } => Some(Notch {
            tension: 3.0,
            bending: 2.5,
            torsion: 2.5,
            radius: diameter / 2.0,
        }),
        CutShape::Keyway { bottom, .. } | CutShape::Woodruff { bottom, .. } => (bottom < radius)
            .then_some(Notch {
                tension: 2.2,
                bending: 2.2,
                torsion: 3.0,
                radius: shank.diameter * 0.02,
            }),
        CutShape::Flat { .. } | CutShape::Tang { .. } => None,
    });
    notches
        .reduce(|one, other| {
            if other.bending > one.bending {
                other
            } else {
                one
            }
        })
        .unwrap_or(Notch::NONE)
}

/// The least of a safety, and where and how it came about.
struct Least {
    safety: Spread<f64>,
    at: Length,
    found: Assessment,
}

/// Keeps the lesser of two.
fn keep(least: &mut Option<Least>, safety: Option<Spread<f64>>, at: Length, found: &Assessment) {
    let Some(safety) = safety else { return };
    if least
        .as_ref()
        .is_none_or(|least| safety.typical < least.safety.typical)
    {
        let found = *found;
        *least = Some(Least { safety, at, found });
    }
}

/// The least safety of several places; `None` without a duty.
pub(super) fn under_duty(
    job: &Job,
    checked: &Checked,
    strength: &Strength,
    places: [(Length, Place); 2],
) -> Option<UnderDuty> {
    let duty = duty(checked)?;
    let material = job.part.material;
    let brittle = material == WorkMaterial::GreyIron
        || (is_steel(material) && strength.hardness.is_some_and(|hardness| hardness > BRITTLE));
    let (mut yielding, mut breaking) = (None, None);
    for (at, place) in places {
        // Nothing is left there that could bear it.
        let Some(found) = assess(&place, &duty, strength) else {
            let nothing = Spread::exact(0.0);
            return Some(UnderDuty {
                torque: duty.torque,
                moment: duty.moment(),
                at,
                against_yield: Some(safety_figure(nothing, "0", Vec::new(), Source::Geometry)),
                against_fatigue: None,
            });
        };
        let still = if brittle {
            found.against_crack
        } else {
            found.against_yield
        };
        keep(&mut yielding, still, at, &found);
        if is_steel(material) {
            // The likely strength gives the likely safety, and the worst and best of all three the range.
            let likely = found.fatigue.typical.safety;
            let range = found.against_fatigue.zip(likely);
            let safety = range.map(|(range, typical)| Spread {
                low: range.low * (1.0 - SCATTER),
                typical,
                high: range.high * (1.0 + SCATTER),
            });
            keep(&mut breaking, safety, at, &found);
        }
    }
    let input =
        |symbol, meaning, stress: Stress| Input::new(symbol, meaning, Value::Stress(stress));
    let worst = [&yielding, &breaking]
        .into_iter()
        .flatten()
        .min_by(|a, b| a.safety.typical.total_cmp(&b.safety.typical));
    let (at, moment) = (worst?.at, duty.moment());
    let against_yield = yielding.map(|least| {
        let (formula, stress) = if brittle {
            let peak = least.found.stresses.peak;
            ("Rₑ/σₖ", input("σₖ", Meaning::PeakStress, peak))
        } else {
            let equivalent = least.found.stresses.equivalent;
            ("Rₑ/σᵥ", input("σᵥ", Meaning::EquivalentStress, equivalent))
        };
        let strong = input("Rₑ", Meaning::YieldStrength, strength.yields.typical);
        safety_figure(
            least.safety,
            formula,
            vec![strong, stress],
            Source::Geometry,
        )
    });
    let against_fatigue = breaking.map(|least| {
        let fatigue = least.found.fatigue.typical;
        let inputs = vec![
            input("σₐ", Meaning::StressAmplitude, fatigue.amplitude),
            input("σₘ", Meaning::MeanStress, fatigue.mean),
            input("Sₑ", Meaning::EnduranceLimit, fatigue.limit.limit),
            input("Rₘ", Meaning::TensileStrength, strength.ultimate.typical),
        ];
        safety_figure(least.safety, "1/(σₐ/Sₑ + σₘ/Rₘ)", inputs, GOODMAN_SOURCE)
    });
    Some(UnderDuty {
        torque: duty.torque,
        moment,
        at,
        against_yield,
        against_fatigue,
    })
}

fn safety_figure(
    safety: Spread<f64>,
    formula: &'static str,
    inputs: Vec<Input>,
    source: Source,
) -> Figure<f64> {
    Figure {
        value: safety.typical,
        range: Some(Range {
            low: safety.low,
            high: safety.high,
        }),
        working: Working {
            symbol: "n",
            formula,
            parts: &[],
            inputs,
            source,
        },
    }
}

/// What the duty has to say.
pub(super) fn findings(job: &Job, checked: &Checked, duty: Option<&UnderDuty>) -> Vec<Finding> {
    let missing = |given: bool, field: Field| {
        (given && job.entry(field).is_none()).then(|| Finding::at(field, Code::DutyIncomplete))
    };
    let force = checked.value::<Force>(Field::DutyForce).is_some();
    let power = checked.value::<Power>(Field::DutyPower).is_some();
    missing(force, Field::DutyOverhang)
        .into_iter()
        .chain(missing(power, Field::DutySpeed))
        .chain(duty.and_then(safety_finding))
        .collect()
}

/// Under 1 it fails. Under 1.5 by the likely strength, or under 1 by the lowest, little is left for what is not known:
/// common practice, no source.
fn safety_finding(duty: &UnderDuty) -> Option<Finding> {
    const ENOUGH: f64 = 1.5;
    let figures = [&duty.against_yield, &duty.against_fatigue];
    let least = figures
        .into_iter()
        .flatten()
        .map(|figure| {
            (
                figure.value,
                figure.range.map_or(figure.value, |range| range.low),
            )
        })
        .min_by(|a, b| a.0.total_cmp(&b.0))?;
    let (safety, low) = least;
    let code = if safety < 1.0 {
        Code::DutyTooMuch { safety }
    } else if safety < ENOUGH || low < 1.0 {
        Code::SafetyLow { safety }
    } else {
        return None;
    };
    Some(Finding::at(Field::WantedDiameter, code))
}
