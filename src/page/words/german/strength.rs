//! German: what is kept of the strength, what the finished shank bears, what it weighs.

use skimwright::quantity::{Length, show};
use skimwright::rework::{SurfaceLeft, UnderDuty, Weakest};
use skimwright::strength::Basis;
use skimwright::working::Value;

use crate::page::words::{OfStrength, Words};

pub(super) const fn text(text: OfStrength) -> &'static str {
    match text {
        OfStrength::Title => "Festigkeit, die bleibt",
        OfStrength::ShoulderTitle => "Spannung an der Schulter",
        OfStrength::ShoulderNote => {
            "Das Wievielfache des glatten Schafts die Spannung in der Ecke ist. Ein größerer Radius senkt sie."
        }
        OfStrength::ShoulderGuide => {
            "Dieser Absatz oder Radius liegt außerhalb dessen, woran die Formeln verglichen wurden: nur ein Anhalt."
        }
        OfStrength::NoShoulder => "An der Schulter ist kein Absatz, der sie erhöht.",
        OfStrength::SurfaceTitle => "Härte der fertigen Oberfläche",
        OfStrength::SafetyTitle => "Sicherheit unter Last",
        OfStrength::SafetyNone => "Was der Schaft tragen muss, ist nicht eingetragen.",
        OfStrength::SafetyEnter => "Eintragen, was er tragen muss",
        OfStrength::SafetyNote => {
            "Das Wievielfache er aushielte. Eine Schätzung: Fehler, Stöße und Wärmebehandlung sind hier nicht bekannt."
        }
        OfStrength::NoLoad => "Ohne Last gibt es nichts zu vergleichen.",
        OfStrength::NoFatigue => "Gegen Dauerbruch gibt es für dieses Metall keine Zahl.",
        OfStrength::MassTitle => "Masse und Schwerpunkt des ganzen Teils",
        OfStrength::BalanceNote => {
            "Der Schwerpunkt zählt von der Schulter zum freien Ende; unter null liegt er im Kopf."
        }
        OfStrength::Tensile => "Zugfestigkeit des Werkstoffs",
    }
}

pub(in crate::page::words) fn weakest(words: Words, before: &Weakest, after: &Weakest) -> String {
    let one = |it: &Weakest| format!("⌀{}, {}", words.size(it.diameter), place(words, it.at));
    format!(
        "Am schwächsten im Ist: {}. Fertig: {}.",
        one(before),
        one(after)
    )
}

/// What the weakest section was reckoned with, each approximation once.
pub(in crate::page::words) fn reckoned_with(bases: &[Basis]) -> String {
    let mut names: Vec<&str> = Vec::new();
    for name in bases.iter().map(|it| basis(*it)) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    format!("Fertig, gerechnet als: {}.", names.join("; "))
}

const fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Round => "Rundstab, voll oder mittig gebohrt (genau)",
        Basis::EccentricHole => "Bohrung außer der Mitte (Torsion nach Handbuchreihe)",
        Basis::ThreadRoot => "Gewinde am Kerndurchmesser, ohne Steigung",
        Basis::Flat => "Abflachung am Rundstab (genau)",
        Basis::Keyway => "Passfedernut als weggeschnittenes Rechteck",
        Basis::CrossHole => "Querbohrung als weggeschnittener Streifen",
        Basis::Slot => "Schlitz als zwei Zinken, jede für sich",
        Basis::TorsionEstimate => {
            "Torsion eines Querschnitts mit Ausschnitten geschätzt, eher zu niedrig"
        }
    }
}

pub(super) fn place(words: Words, at: Length) -> String {
    if at.to_mm().abs() < 0.005 {
        "an der Schulter".to_owned()
    } else if at < Length::ZERO {
        format!("im Kopf, {} von der Schulter", words.length(at.abs()))
    } else {
        format!("{} von der Schulter", words.length(at))
    }
}

pub(in crate::page::words) fn surface(left: SurfaceLeft) -> String {
    let (what, hardness) = match left {
        SurfaceLeft::Through(hardness) => ("So hart, wie es außen war", hardness),
        SurfaceLeft::Case(hardness) => ("Die harte Schicht bleibt überall", hardness),
        SurfaceLeft::Core(hardness) => (
            "Die harte Schicht ist abgedreht: Der Kern liegt bloß",
            hardness,
        ),
        SurfaceLeft::Partly(hardness) => (
            "Die harte Schicht ist stellenweise abgedreht, bis auf den Kern",
            hardness,
        ),
    };
    match hardness {
        Some(hardness) => format!("{what}, {}.", show::hardness(hardness)),
        None => format!("{what}; wie hart das ist, ist nicht eingetragen."),
    }
}

pub(in crate::page::words) fn under_duty(words: Words, duty: &UnderDuty) -> String {
    format!(
        "Gerechnet: ein Drehmoment von {} und ein Biegemoment von {}. Die Sicherheit gegen Bruch ist am kleinsten {}.",
        words.value(Value::Torque(duty.torque)),
        words.value(Value::Torque(duty.moment)),
        place(words, duty.at)
    )
}
