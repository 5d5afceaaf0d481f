//! English: how the part is held, how it is dialled in, and how it is finished.

use skimwright::cutting::{
    ChamferPlan, FilletPlan, FilletWay, FineInfeed, PolishPlan, PolishingVerdict,
};
use skimwright::holding::{
    Caution, DialPlan, GripHeld, GripVerdict, HoldingPlan, JawPacking, Remedy, Shape, Shift,
    Slenderness,
};
use skimwright::quantity::{Angle, Length, RotationalSpeed, show};

use super::Words;

/// A move or a packing that shows as nothing.
const NOTHING: Length = Length::mm(0.0005);

pub(super) fn gripped(words: Words, holding: &HoldingPlan) -> String {
    format!(
        "{} of ⌀{}",
        words.length(holding.grip_length),
        words.size(holding.gripped_diameter)
    )
}

pub(super) fn slender(slender: Slenderness) -> String {
    let fear = match slender.caution {
        Caution::None => "No chatter is to be feared.",
        Caution::Careful => "It may chatter: light cuts, a sharp tool, a small nose.",
        Caution::TooSlender => "Too slender: it will spring and chatter.",
    };
    let helps = match slender.remedy {
        Remedy::Nothing => "",
        Remedy::UseCentre => " A centre in the end, or less sticking out, helps.",
        Remedy::UseSteady => " A steady rest helps.",
    };
    format!("{fear}{helps}")
}

pub(super) fn form(words: Words, holding: &HoldingPlan) -> Option<String> {
    let form = holding.form.as_ref()?;
    let shape = match form.shape {
        Shape::Even => "even all along",
        Shape::BellMouth => "larger at the free end",
        Shape::LargerAtShoulder => "larger at the shoulder",
        Shape::Barrel => "thicker in the middle, a barrel",
        Shape::Waist => "thinner in the middle, a waist",
    };
    Some(format!(
        "The last cut leaves the shank {shape}: by about {}, and {} is allowed. What gives alike all along shows after \
         the first of the two last cuts, and the second takes it out.",
        words.units().difference(form.spread()),
        words.units().difference(holding.allowed)
    ))
}

pub(super) fn copied(share: f64) -> String {
    format!(
        "Of runout or an uneven stock, one such cut leaves about {}.",
        show::share(share)
    )
}

pub(super) const fn grip_verdict(grip: &GripHeld) -> &'static str {
    match grip.ratio {
        None => "Nothing is asked of it.",
        Some(ratio) => match ratio.verdict {
            GripVerdict::Holds => "It holds.",
            GripVerdict::SafetyEaten => {
                "It holds, but eats into the safety: tighten, grip longer, cut lighter."
            }
            GripVerdict::Slips => "It slips: do not turn it so.",
        },
    }
}

pub(super) fn centre_pressure(holding: &HoldingPlan) -> Option<&'static str> {
    let pressure = holding.tail.as_ref()?.pressure?;
    if pressure.at_most.is_some_and(|ratio| ratio < 1.0) {
        Some("That presses the hole more than it bears: a larger countersink, or a lighter cut.")
    } else if pressure.certain.is_some_and(|ratio| ratio < 1.0) {
        Some("That may press the hole more than it bears: watch the centre, or countersink larger.")
    } else {
        None
    }
}

pub(super) fn chuck_speed(speed: RotationalSpeed) -> String {
    format!(
        "Never turn the chuck faster than the {} marked on it.",
        show::rotation(speed)
    )
}

pub(super) fn first_move(words: Words, shift: &Shift) -> String {
    format!(
        "First, at the chuck: move the part {} {}.",
        words.size(shift.shift.size()),
        towards(shift)
    )
}

pub(super) fn then_tap(words: Words, dial: &DialPlan) -> Option<String> {
    let dial_in = dial.dial_in.as_ref()?;
    let remains = words.size(dial_in.remains_at_free_end);
    if dial_in.at_free_end.shift.size() <= NOTHING {
        return Some(format!(
            "The free end then needs no tap. Errors of reading alone may leave {remains} there."
        ));
    }
    Some(format!(
        "Then the free end, which shows {} now: tap it {} {}. Errors of reading alone may leave {remains} there.",
        words.size(dial_in.runout_between),
        words.size(dial_in.at_free_end.shift.size()),
        towards(&dial_in.at_free_end)
    ))
}

/// An angle to the degree.
fn whole_angle(angle: Angle) -> String {
    format!("{}°", show::decimal(angle.to_degrees(), 0))
}

/// Towards which jaw, and how far beside it.
fn towards(shift: &Shift) -> String {
    let jaw = shift.nearest.jaw;
    let beside = shift.nearest.beside;
    let next = jaw % 3 + 1;
    let before = (jaw + 1) % 3 + 1;
    let (angle, to) = if beside < Angle::ZERO {
        (beside.abs(), before)
    } else {
        (beside, next)
    };
    let angle = whole_angle(angle);
    if angle == "0°" {
        format!("towards jaw {jaw}")
    } else {
        format!("towards jaw {jaw}, {angle} on to jaw {to}")
    }
}

pub(super) fn packing(words: Words, thickness: [Length; 3]) -> String {
    let under = (1_u8..)
        .zip(thickness)
        .filter(|(_, thick)| NOTHING < *thick);
    let under = under.map(|(jaw, thick)| format!("{} under jaw {jaw}", words.size(thick)));
    let under = under.collect::<Vec<_>>().join(", ");
    if under.is_empty() {
        "none".to_owned()
    } else {
        under
    }
}

pub(super) fn thumb(words: Words, packing: &JawPacking) -> String {
    let rule = &packing.line.rule_of_thumb;
    let leaves = rule.leaves.map(|left| words.size(left));
    let leaves = leaves.map_or_else(String::new, |left| format!("; it would leave {left}"));
    format!(
        "The rule of thumb, three quarters of the runout: {} under jaw {}{leaves}.",
        words.size(rule.thickness),
        rule.jaw
    )
}

pub(super) fn fillet(words: Words, plan: &FilletPlan) -> String {
    let (fillet, nose) = (words.size(plan.fillet), words.size(plan.nose_radius));
    match &plan.way {
        FilletWay::OwnNose => {
            format!("The nose of {nose} makes the fillet by itself: feed into the corner.")
        }
        FilletWay::NoseTooLarge { largest } if *largest <= Length::ZERO => format!(
            "A nose of {nose} leaves no sharp corner: give the shoulder a fillet of as much, or undercut it."
        ),
        FilletWay::NoseTooLarge { largest } => format!(
            "The nose of {nose} leaves more in the corner than the {fillet} wanted: take a nose of {} or less.",
            words.size_at_most(*largest)
        ),
        FilletWay::FormTool => {
            format!("So large a fillet, {fillet}, is a form tool's or a radius attachment's.")
        }
        FilletWay::Steps(steps) => format!(
            "The nose of {nose} makes the fillet of {fillet} in {} steps. Each feeds along the shank to its place and \
             draws straight out; ridges of {} are left for polishing.",
            steps.steps.len(),
            words.units().fine(steps.highest_cusp)
        ),
    }
}

pub(super) fn chamfer(words: Words, plan: &ChamferPlan) -> String {
    format!(
        "{} × {}: compound slide at {}, {} of travel from the first touch.",
        words.size(plan.width),
        whole_angle(plan.angle),
        whole_angle(plan.angle),
        words.size(plan.travel)
    )
}

pub(super) fn polish(words: Words, plan: &PolishPlan) -> String {
    let verdict = match plan.verdict {
        PolishingVerdict::Enough => "That is enough for the turning marks to go.",
        PolishingVerdict::MarksMayStay => "Some turning marks may stay at size.",
        PolishingVerdict::MarksStay => "That is too little: turning marks will stay at size.",
    };
    let stock = words.size(plan.stock);
    let low = words.size(plan.least.low);
    let high = words.size(plan.least.high);
    format!(
        "{stock} is left on the diameter, and the ridges take about {}. {verdict}",
        words.range(&low, &high)
    )
}

pub(super) fn fine_infeed(words: Words, plan: &FineInfeed) -> String {
    let (infeed, graduation) = (words.units().fine(plan.infeed), words.size(plan.graduation));
    match &plan.angle {
        Some(angle) => format!(
            "Compound slide {}° from the lathe's axis: a division of {graduation} moves the tool in by {infeed}. Try \
             it with an indicator.",
            show::decimal(angle.value.to_degrees(), 1)
        ),
        None => format!(
            "A division of {graduation} cannot move the tool in by {infeed}: ask for no more than a division."
        ),
    }
}
