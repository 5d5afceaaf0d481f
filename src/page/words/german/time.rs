//! German: charts, time and cost.

use skimwright::costing::{CostPart, Feeding};
use skimwright::holding::{FormError, FormPoint};
use skimwright::quantity::{Length, Time};

use super::cut;
use crate::page::words::{OfTime, Words};

pub(super) const fn text(text: OfTime) -> &'static str {
    match text {
        OfTime::KeyRough => "nach dem Schruppen, wo Linien Platz haben",
        OfTime::KeyLast => "nach einem Schlichtschnitt",
        OfTime::KeyPicked => "nach dem gewählten Schnitt",
        OfTime::FormTitle => "Wie weit es nachgibt",
        OfTime::FormLead => {
            "Wie viel größer als eingestellt der letzte Schnitt den Durchmesser lässt, weil Teil und Werkzeug \
             nachgeben."
        }
        OfTime::FormLarger => "Größer um",
        OfTime::FormAlong => "Von der Schulter",
        OfTime::FormBand => "Wie viel es schwanken darf: ein Drittel der Toleranz, so üblich",
        OfTime::NoForm => {
            "Ohne Schlichtschnitt, oder wenn das Teil nicht hält, gibt es nichts zu zeigen."
        }
        OfTime::CountsTitle => "Wie viele Schnitte",
        OfTime::CountsLead => {
            "Die beste Folge zu jeder Zahl von Schnitten, Zustellen, Rücklauf und Messen mitgezählt, Polieren nicht."
        }
        OfTime::CountsPasses => "Schnitte",
        OfTime::CountsPlanned => "geplant",
        OfTime::NoCounts => "Es gibt keine Schnitte zu vergleichen.",
        OfTime::Time => "Zeit",
        OfTime::Cost => "Kosten",
        OfTime::TimeMethod => {
            "Eine Schätzung: Jeder Schritt hat eine kurze, eine wahrscheinliche und eine lange Zeit, und die Summe ist \
             ebenso oft länger wie kürzer. In neun von zehn Fällen dauert es länger als die kleine Zahl, in neun von \
             zehn kürzer als die große."
        }
        OfTime::StepsTitle => "Wohin die Zeit geht",
        OfTime::StepsNote => {
            "Wie oft, und wie lange jedes Mal; was die Maschine vorschiebt, sind alle Schnitte zusammen."
        }
        OfTime::Step(step) => cut::step(step),
        OfTime::Feeding(feeding) => match feeding {
            Feeding::Parting => "Abstechen, im Vorschub",
            Feeding::Facing => "Plandrehen, im Vorschub",
            Feeding::Centring => "Zentrieren, im Vorschub",
            Feeding::Turning => "Längsdrehen, im Vorschub",
        },
        OfTime::NoTime => "Noch nicht bekannt: Eine nötige Zahl fehlt.",
        OfTime::Part(part) => match part {
            CostPart::Labour => "Zeit, Maschine und Mensch",
            CostPart::Edges => "Schneiden, angefangene ganz",
            CostPart::Discs => "Trennscheiben",
            CostPart::Consumables => "Verbrauchsmittel",
            CostPart::ToMinimum => "Bis zum Mindestpreis",
            CostPart::Postage => "Porto",
        },
        OfTime::AtMinimum => "Der Mindestpreis gilt: Die Arbeit selbst kostet weniger.",
        OfTime::CostNote => "Klein und groß sind die der Zeit.",
        OfTime::NoRate => "Kein Satz ist eingetragen.",
        OfTime::EnterRate => "Stundensatz eintragen",
        OfTime::Numbers => "Das Diagramm als Zahlen",
    }
}

pub(in crate::page::words) fn form_ends(words: Words, form: &FormError) -> String {
    let at = |point: &FormPoint| {
        let [place, error] = words.form_point(point);
        format!("{error}, {place} von der Schulter")
    };
    let (most, least) = (at(&form.greatest), at(&form.least));
    format!("Mehr als eingestellt: höchstens {most}; mindestens {least}.")
}

pub(in crate::page::words) fn form_line(words: Words, form: &FormError, allowed: Length) -> String {
    let [spread, allowed] = [form.spread(), allowed].map(|it| words.units().difference(it));
    format!("{spread}; {allowed} erlaubt")
}

pub(in crate::page::words) fn row_takes(words: Words, passes: usize, time: Time) -> String {
    let passes = words.count(passes, "Schnitt", "Schnitte");
    format!("{passes}, {}", words.time(time))
}
