//! What is kept of the shank's strength, what it bears, and what the part weighs.

use skimwright::job::Field;
use skimwright::rework::{Bears, UnderDuty};
use skimwright::strength::Load;
use skimwright::working::Value;
use yew::prelude::*;

use super::figures::figure_list;
use super::markup::{all, button, element, hint, pair, paragraph, text};
use super::state::{Share, Shown};
use super::store::{Store, words};
use super::words::{OfStrength, Text};
use super::working::go_to;

const SHOULDER: [Shown; 3] = [
    Shown::Shoulder(Load::Bending),
    Shown::Shoulder(Load::Torsion),
    Shown::Shoulder(Load::Tension),
];

const MASSES: [Shown; 6] = [
    Shown::MassBefore,
    Shown::OffcutMass,
    Shown::MassChips,
    Shown::MassAfter,
    Shown::BalanceBefore,
    Shown::BalanceAfter,
];

/// All of it; nothing while there is no shank to look at.
pub(crate) fn strength(store: &Store) -> Html {
    let (words, plan) = (words(store), &store.plan);
    let say = |what| words.say(Text::Strength(what));
    let mut groups = Vec::new();
    if let Some(kept) = &plan.kept {
        let mut parts = vec![
            element("h2", "", text(say(OfStrength::Title))),
            figure_list(store, &Share::ALL.map(Shown::Kept)),
            paragraph(words.weakest(&kept.before, &kept.after)),
            hint(words.reckoned_with(&kept.after.bases)),
        ];
        if let Some(bears) = &plan.bears {
            bearing(store, bears, &mut parts);
        }
        groups.push(element("section", "group", all(parts)));
    }
    if plan.masses.is_some() {
        let parts = vec![
            element("h2", "", text(say(OfStrength::MassTitle))),
            figure_list(store, &MASSES),
            hint(say(OfStrength::BalanceNote)),
        ];
        groups.push(element("section", "group", all(parts)));
    }
    all(groups)
}

fn bearing(store: &Store, bears: &Bears, parts: &mut Vec<Html>) {
    let words = words(store);
    let say = |what| words.say(Text::Strength(what));
    let title = |what| element("h3", "", text(say(what)));
    parts.push(title(OfStrength::ShoulderTitle));
    match &bears.shoulder {
        Some(shoulder) => {
            parts.push(figure_list(store, &SHOULDER));
            parts.push(hint(say(OfStrength::ShoulderNote)));
            if !shoulder.checked {
                parts.push(hint(say(OfStrength::ShoulderGuide)));
            }
        }
        None => parts.push(paragraph(say(OfStrength::NoShoulder))),
    }
    let (low, high) = (bears.ultimate.low, bears.ultimate.high);
    let tensile = words.figure_range((Value::Stress(low), Value::Stress(high)));
    let tensile = tensile.unwrap_or_else(|| words.value(Value::Stress(high)));
    parts.extend([
        title(OfStrength::SurfaceTitle),
        paragraph(words.surface_left(bears.surface)),
        element("dl", "pairs", pair(say(OfStrength::Tensile), tensile)),
        title(OfStrength::SafetyTitle),
    ]);
    match &bears.duty {
        Some(duty) => safety(store, duty, parts),
        None => parts.extend([
            paragraph(say(OfStrength::SafetyNone)),
            button(
                say(OfStrength::SafetyEnter),
                go_to(store, Field::DutyTorque),
            ),
        ]),
    }
}

/// Safety, called the estimate that it is, and who decides where lives hang on it.
fn safety(store: &Store, duty: &UnderDuty, parts: &mut Vec<Html>) {
    let words = words(store);
    let say = |what| words.say(Text::Strength(what));
    if duty.against_yield.is_none() && duty.against_fatigue.is_none() {
        parts.push(paragraph(say(OfStrength::NoLoad)));
        return;
    }
    let no_fatigue = match duty.against_fatigue {
        Some(_) => Html::default(),
        None => paragraph(say(OfStrength::NoFatigue)),
    };
    parts.extend([
        figure_list(store, &[Shown::AgainstYield, Shown::AgainstFatigue]),
        no_fatigue,
        paragraph(words.under_duty(duty)),
        hint(say(OfStrength::SafetyNote)),
        element("p", "care-step", text(words.say(Text::CareLives))),
    ]);
}
