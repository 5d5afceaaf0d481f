//! English: what is kept of the strength, what the finished shank bears, what it weighs.

use skimwright::quantity::{Hardness, Length, show};
use skimwright::rework::{SurfaceLeft, UnderDuty, Weakest};
use skimwright::strength::Basis;
use skimwright::working::Value;

use super::Words;
use super::about::OfStrength;

pub(super) const fn text(text: OfStrength) -> &'static str {
    match text {
        OfStrength::Title => "Strength that is kept",
        OfStrength::ShoulderTitle => "Stress at the shoulder",
        OfStrength::ShoulderNote => {
            "How many times the stress in the corner is that of the plain shank. A larger fillet lowers it."
        }
        OfStrength::ShoulderGuide => {
            "This step or fillet is outside what the formulas were compared on: take the figures as a guide."
        }
        OfStrength::NoShoulder => "There is no step at the shoulder to raise it.",
        OfStrength::SurfaceTitle => "Hardness of the finished surface",
        OfStrength::SafetyTitle => "Safety under its duty",
        OfStrength::SafetyNone => "What the shank has to carry is not entered.",
        OfStrength::SafetyEnter => "Enter what it has to carry",
        OfStrength::SafetyNote => {
            "How many times as much it would bear. An estimate: flaws, shocks and heat treatment are not known here."
        }
        OfStrength::NoLoad => "Without load there is nothing to compare.",
        OfStrength::NoFatigue => "No figure against breaking in the long run for this metal.",
        OfStrength::MassTitle => "Mass and balance of the whole part",
        OfStrength::BalanceNote => {
            "The centre of gravity is measured from the shoulder towards the free end; below zero it lies in the head."
        }
        OfStrength::Tensile => "Tensile strength of the material",
    }
}

pub(super) fn weakest(words: Words, before: &Weakest, after: &Weakest) -> String {
    let one = |it: &Weakest| format!("⌀{}, {}", words.size(it.diameter), place(words, it.at));
    format!(
        "Weakest as received: {}. Finished: {}.",
        one(before),
        one(after)
    )
}

/// What the weakest section was reckoned with, each approximation once.
pub(super) fn reckoned_with(bases: &[Basis]) -> String {
    let mut names: Vec<&str> = Vec::new();
    for name in bases.iter().map(|it| basis(*it)) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    format!("Finished, reckoned with: {}.", names.join("; "))
}

const fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Round => "a round, solid or with a hole on the axis (exact)",
        Basis::EccentricHole => "a hole off the axis (torsion by a handbook series)",
        Basis::ThreadRoot => "a thread at its root, the helix not counted",
        Basis::Flat => "a flat cut off the round (exact)",
        Basis::Keyway => "a keyway as a rectangle cut away",
        Basis::CrossHole => "a cross hole as a strip cut away",
        Basis::Slot => "a slot as two prongs, each for itself",
        Basis::TorsionEstimate => "torsion of a section with cuts by estimate, on the low side",
    }
}

pub(super) fn place(words: Words, at: Length) -> String {
    if at.to_mm().abs() < 0.005 {
        "at the shoulder".to_owned()
    } else if at < Length::ZERO {
        format!("in the head, {} from the shoulder", words.length(at.abs()))
    } else {
        format!("{} from the shoulder", words.length(at))
    }
}

pub(super) fn surface(left: SurfaceLeft) -> String {
    let (what, hardness) = match left {
        SurfaceLeft::Through(hardness) => ("As hard as it was outside", hardness),
        SurfaceLeft::Case(hardness) => ("The hard case stays all over", hardness),
        SurfaceLeft::Core(hardness) => ("The hard case is turned away: the core is bare", hardness),
        SurfaceLeft::Partly(hardness) => (
            "The hard case is turned away in places, down to the core",
            hardness,
        ),
    };
    match hardness {
        Some(hardness) => format!("{what}, {}.", shown(hardness)),
        None => format!("{what}; how hard that is, is not entered."),
    }
}

fn shown(hardness: Hardness) -> String {
    show::hardness(hardness)
}

pub(super) fn under_duty(words: Words, duty: &UnderDuty) -> String {
    format!(
        "Counted: a torque of {} and a bending moment of {}. Safety against breaking is least {}.",
        words.value(Value::Torque(duty.torque)),
        words.value(Value::Torque(duty.moment)),
        place(words, duty.at)
    )
}
