//! German: how the part is held, how it is dialled in, and how it is finished.

use skimwright::cutting::{
    ChamferPlan, FilletPlan, FilletWay, FineInfeed, PolishPlan, PolishingVerdict,
};
use skimwright::holding::{
    Caution, DialPlan, GripHeld, GripVerdict, HoldingPlan, JawPacking, Remedy, Shape, Shift,
    Slenderness,
};
use skimwright::quantity::{Angle, Length, RotationalSpeed, show};

use crate::page::words::Words;

/// A move or a packing that shows as nothing.
const NOTHING: Length = Length::mm(0.0005);

pub(in crate::page::words) fn gripped(words: Words, holding: &HoldingPlan) -> String {
    format!(
        "{} von ⌀{}",
        words.length(holding.grip_length),
        words.size(holding.gripped_diameter)
    )
}

pub(in crate::page::words) fn slender(slender: Slenderness) -> String {
    let fear = match slender.caution {
        Caution::None => "Rattern ist nicht zu befürchten.",
        Caution::Careful => {
            "Es kann rattern: leichte Schnitte, scharfes Werkzeug, kleiner Eckenradius."
        }
        Caution::TooSlender => "Zu schlank: Es wird federn und rattern.",
    };
    let helps = match slender.remedy {
        Remedy::Nothing => "",
        Remedy::UseCentre => " Eine Körnerspitze im Ende hilft, oder weniger Auskragung.",
        Remedy::UseSteady => " Eine Lünette hilft.",
    };
    format!("{fear}{helps}")
}

pub(in crate::page::words) fn form(words: Words, holding: &HoldingPlan) -> Option<String> {
    let form = holding.form.as_ref()?;
    let shape = match form.shape {
        Shape::Even => "überall gleich",
        Shape::BellMouth => "am freien Ende dicker",
        Shape::LargerAtShoulder => "an der Schulter dicker",
        Shape::Barrel => "in der Mitte dicker, ballig",
        Shape::Waist => "in der Mitte dünner, hohl",
    };
    Some(format!(
        "Der letzte Schnitt lässt den Schaft {shape}: um etwa {}, erlaubt sind {}. Was überall gleich nachgibt, zeigt \
         sich nach dem ersten der zwei Schlichtschnitte, und der zweite nimmt es weg.",
        words.units().difference(form.spread()),
        words.units().difference(holding.allowed)
    ))
}

pub(in crate::page::words) fn copied(share: f64) -> String {
    format!(
        "Von einer Rundlaufabweichung oder ungleichem Aufmaß lässt ein solcher Schnitt etwa {} stehen.",
        show::share(share)
    )
}

pub(in crate::page::words) const fn grip_verdict(grip: &GripHeld) -> &'static str {
    match grip.ratio {
        None => "Es wird nichts verlangt.",
        Some(ratio) => match ratio.verdict {
            GripVerdict::Holds => "Es hält.",
            GripVerdict::SafetyEaten => {
                "Es hält, zehrt aber an der Sicherheit: fester, länger spannen, leichter schneiden."
            }
            GripVerdict::Slips => "Es rutscht: so nicht drehen.",
        },
    }
}

pub(in crate::page::words) fn centre_pressure(holding: &HoldingPlan) -> Option<&'static str> {
    let pressure = holding.tail.as_ref()?.pressure?;
    if pressure.at_most.is_some_and(|ratio| ratio < 1.0) {
        Some(
            "Das drückt die Zentrierung mehr, als sie trägt: größere Senkung, oder leichterer Schnitt.",
        )
    } else if pressure.certain.is_some_and(|ratio| ratio < 1.0) {
        Some(
            "Das drückt die Zentrierung vielleicht mehr, als sie trägt: Spitze beobachten, oder größer senken.",
        )
    } else {
        None
    }
}

pub(in crate::page::words) fn chuck_speed(speed: RotationalSpeed) -> String {
    format!(
        "Das Futter nie schneller drehen als die angeschriebenen {}.",
        show::rotation(speed)
    )
}

pub(in crate::page::words) fn first_move(words: Words, shift: &Shift) -> String {
    format!(
        "Zuerst am Futter: das Teil {} verschieben, {}.",
        words.size(shift.shift.size()),
        towards(shift)
    )
}

pub(in crate::page::words) fn then_tap(words: Words, dial: &DialPlan) -> Option<String> {
    let dial_in = dial.dial_in.as_ref()?;
    let remains = words.size(dial_in.remains_at_free_end);
    if dial_in.at_free_end.shift.size() <= NOTHING {
        return Some(format!(
            "Am freien Ende ist dann nicht zu klopfen. Ablesefehler allein können dort {remains} lassen."
        ));
    }
    Some(format!(
        "Dann das freie Ende, das jetzt {} zeigt: um {} klopfen, {}. Ablesefehler allein können dort {remains} lassen.",
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
        format!("auf Backe {jaw} zu")
    } else {
        format!("auf Backe {jaw} zu, {angle} weiter zu Backe {to}")
    }
}

pub(in crate::page::words) fn packing(words: Words, thickness: [Length; 3]) -> String {
    let under = (1_u8..)
        .zip(thickness)
        .filter(|(_, thick)| NOTHING < *thick);
    let under = under.map(|(jaw, thick)| format!("{} unter Backe {jaw}", words.size(thick)));
    let under = under.collect::<Vec<_>>().join(", ");
    if under.is_empty() {
        "keine".to_owned()
    } else {
        under
    }
}

pub(in crate::page::words) fn thumb(words: Words, packing: &JawPacking) -> String {
    let rule = &packing.line.rule_of_thumb;
    let leaves = rule.leaves.map(|left| words.size(left));
    let leaves = leaves.map_or_else(String::new, |left| format!("; sie ließe {left} stehen"));
    format!(
        "Die Faustregel, drei Viertel des Rundlaufs: {} unter Backe {}{leaves}.",
        words.size(rule.thickness),
        rule.jaw
    )
}

pub(in crate::page::words) fn fillet(words: Words, plan: &FilletPlan) -> String {
    let (fillet, nose) = (words.size(plan.fillet), words.size(plan.nose_radius));
    match &plan.way {
        FilletWay::OwnNose => format!(
            "Der Eckenradius {nose} macht den Radius von selbst: bis in die Ecke vorschieben."
        ),
        FilletWay::NoseTooLarge { largest } if *largest <= Length::ZERO => format!(
            "Ein Eckenradius {nose} lässt keine scharfe Ecke: der Schulter den gleichen Radius geben, oder \
             freistechen."
        ),
        FilletWay::NoseTooLarge { largest } => format!(
            "Der Eckenradius {nose} lässt mehr in der Ecke als die verlangten {fillet}: Eckenradius {} oder kleiner \
             nehmen.",
            words.size_at_most(*largest)
        ),
        FilletWay::FormTool => format!(
            "Ein so großer Radius, {fillet}, ist Sache eines Formstahls oder einer Radiendrehvorrichtung."
        ),
        FilletWay::Steps(steps) => format!(
            "Der Eckenradius {nose} macht den Radius {fillet} in {}. Jeder fährt am Schaft entlang an seinen \
             Ort und zieht gerade heraus; Rillen von {} bleiben zum Polieren.",
            words.count(steps.steps.len(), "Schritt", "Schritten"),
            words.fine(steps.highest_cusp)
        ),
    }
}

pub(in crate::page::words) fn chamfer(words: Words, plan: &ChamferPlan) -> String {
    format!(
        "{} × {}: Oberschlitten auf {}, {} Weg ab der ersten Berührung.",
        words.size(plan.width),
        whole_angle(plan.angle),
        whole_angle(plan.angle),
        words.size(plan.travel)
    )
}

pub(in crate::page::words) fn polish(words: Words, plan: &PolishPlan) -> String {
    let verdict = match plan.verdict {
        PolishingVerdict::Enough => "Das reicht, dass die Drehriefen verschwinden.",
        PolishingVerdict::MarksMayStay => "Einige Drehriefen können auf Maß noch da sein.",
        PolishingVerdict::MarksStay => "Das ist zu wenig: Drehriefen bleiben auf Maß stehen.",
    };
    let stock = words.size(plan.stock);
    let low = words.size(plan.least.low);
    let high = words.size(plan.least.high);
    format!(
        "{stock} bleiben auf dem Durchmesser, und die Rillen brauchen etwa {}. {verdict}",
        words.range(&low, &high)
    )
}

pub(in crate::page::words) fn fine_infeed(words: Words, plan: &FineInfeed) -> String {
    let (infeed, graduation) = (words.fine(plan.infeed), words.size(plan.graduation));
    match &plan.angle {
        Some(angle) => format!(
            "Oberschlitten {}° gegen die Drehachse: Ein Teilstrich von {graduation} stellt {infeed} zu. Mit der \
             Messuhr probieren.",
            show::decimal(angle.value.to_degrees(), 1)
        ),
        None => format!(
            "Ein Teilstrich von {graduation} kann nicht {infeed} zustellen: höchstens einen Teilstrich verlangen."
        ),
    }
}
