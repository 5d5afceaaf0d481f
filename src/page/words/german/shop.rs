//! German: the lathe, the tool, the holding, dialling in, pinned passes and rates.

use skimwright::job::{
    Aim, DialPlane, DialReads, EdgeField, Field, GearsError, HoldingField, JawFace, Job,
    MachineField, PinField, RateField, Rigidity, Support,
};

use super::fields::{out_of_bounds, short, unread};
use super::instruments;
use crate::page::shelf::{Question, Shelf};
use crate::page::words::{OfShop, Words};

pub(super) const fn machine_label(field: MachineField) -> &'static str {
    match field {
        MachineField::Name => "Name der Drehmaschine",
        MachineField::Rigidity => "Bauart der Maschine",
        MachineField::Speeds => "Drehzahlen",
        MachineField::SlowestSpeed => "Kleinste Drehzahl",
        MachineField::FastestSpeed => "Größte Drehzahl",
        MachineField::Feeds => "Längsvorschübe",
        MachineField::FinestFeed => "Feinster Vorschub",
        MachineField::CoarsestFeed => "Gröbster Vorschub",
        MachineField::Power => "Motorleistung",
        MachineField::Efficiency => "Anteil an der Spindel",
        MachineField::Torque => "Größtes Drehmoment der Spindel",
        MachineField::Swing => "Umlauf-⌀ über dem Planschlitten",
        MachineField::ChuckTopSpeed => "Höchstdrehzahl des Futters",
        MachineField::Graduation => "Planschlitten, ein Teilstrich",
        MachineField::DialReads => "Skala des Planschlittens zeigt",
        MachineField::CompoundGraduation => "Oberschlitten, ein Teilstrich",
        MachineField::FineInfeed => "Feinzustellung, ein Teilstrich",
        MachineField::HeadStiffness => "Steifigkeit am Futter",
        MachineField::TailStiffness => "Steifigkeit am Reitstock",
        MachineField::PostStiffness => "Steifigkeit am Stahlhalter",
    }
}

pub(super) const fn machine_hint(field: MachineField) -> Option<&'static str> {
    Some(match field {
        MachineField::Rigidity => "Zählt, wo keine Steifigkeit gemessen ist.",
        MachineField::SlowestSpeed | MachineField::FastestSpeed => {
            "Wie am Antrieb angeschrieben. Leer: üblich für ihre Bauart."
        }
        MachineField::FinestFeed | MachineField::CoarsestFeed => {
            "Weg des Bettschlittens je Umdrehung. Leer: üblich für ihre Bauart."
        }
        MachineField::Power => "Vom Motorschild. Leer: üblich für ihre Bauart.",
        MachineField::Efficiency => {
            "Was Riemen, Räder und Lager übrig lassen. Leer: üblich für ihre Bauart."
        }
        MachineField::Torque => {
            "Wo der Riemen rutscht oder der Antrieb abschaltet. Leer: Nur die Leistung begrenzt."
        }
        MachineField::Swing => {
            "Größter Durchmesser, der am Planschlitten vorbeigeht. Darf leer bleiben."
        }
        MachineField::ChuckTopSpeed => "Am Futterkörper angeschrieben. Darf leer bleiben.",
        MachineField::Graduation => {
            "Wie am Skalenring: Schnitte halten dann ganze Teilstriche ein. Leer: nicht."
        }
        MachineField::DialReads => {
            "Durchmesser: Ein Strich von 0,05 nimmt 0,05 vom Durchmesser. Radius: Der Schlitten fährt 0,05."
        }
        MachineField::CompoundGraduation => {
            "Wie angeschrieben: was der Schlitten selbst fährt. Darf leer bleiben."
        }
        MachineField::FineInfeed => {
            "Auf Radius, mit schräg gestelltem Oberschlitten, etwa 0,001 mm. Darf leer bleiben."
        }
        MachineField::HeadStiffness => {
            "Mit Federwaage quer ans Futter drücken oder ein Gewicht anhängen; auf der anderen Seite die Messuhr \
             ablesen. Kraft durch Weg. Leer: üblich für ihre Bauart."
        }
        MachineField::TailStiffness => {
            "Ebenso an der Körnerspitze, Pinole so weit aus wie bei der Arbeit. Leer: üblich für ihre Bauart."
        }
        MachineField::PostStiffness => {
            "Ebenso an der Werkzeugspitze, vom Teil weggedrückt. Leer: üblich für ihre Bauart."
        }
        MachineField::Name | MachineField::Speeds | MachineField::Feeds => return None,
    })
}

/// The note under a list of speeds or feeds.
pub(in crate::page::words) const LIST_HINT: &str = "Vom Schild am Spindelstock, in beliebiger Folge, mit Leerzeichen dazwischen: 70 115 200. Eine leere Liste hält \
     den Plan an.";

/// The label of the list itself, below the choice between a list and stepless.
pub(in crate::page::words) const fn list_label(field: Field) -> &'static str {
    match field {
        Field::Machine(MachineField::Feeds) => "Liste der Vorschübe",
        _ => "Liste der Drehzahlen",
    }
}

pub(super) const fn edge_label(field: EdgeField) -> &'static str {
    match field {
        EdgeField::Name => "Name des Werkzeugs",
        EdgeField::NoseRadius => "Eckenradius",
        EdgeField::CuttingEdgeAngle => "Einstellwinkel",
        EdgeField::Rake => "Spanwinkel",
        EdgeField::LeastFeed => "Kleinster Vorschub",
        EdgeField::MostFeed => "Größter Vorschub",
        EdgeField::LeastDepth => "Kleinste Schnitttiefe",
        EdgeField::MostDepth => "Größte Schnitttiefe",
        EdgeField::Price => "Preis einer Platte",
        EdgeField::Edges => "Schneiden daran",
        EdgeField::RegrindTime => "Zeit zum Nachschleifen",
    }
}

pub(super) const fn edge_hint(field: EdgeField) -> Option<&'static str> {
    Some(match field {
        EdgeField::NoseRadius => {
            "Im Code der Platte (04 ist 0,4 mm), oder mit Radiuslehre. Leer: üblich für das Werkzeug."
        }
        EdgeField::CuttingEdgeAngle => {
            "Zwischen Schneide und Vorschubrichtung: 90° dreht eine rechtwinklige Schulter. Leer: üblich für das \
             Werkzeug."
        }
        EdgeField::Rake => {
            "Negativ, wo sich die Spanfläche nach vorn gegen den Span neigt. Leer: üblich für das Werkzeug."
        }
        EdgeField::LeastFeed | EdgeField::MostFeed => {
            "Auf der Schachtel der Platte, für ihren Spanbrecher. Leer: üblich für das Werkzeug."
        }
        EdgeField::LeastDepth | EdgeField::MostDepth => {
            "Auf Radius, von der Schachtel der Platte. Leer: üblich für das Werkzeug."
        }
        EdgeField::Price => "Was eine neue kostet. Darf leer bleiben.",
        EdgeField::Edges => "Ecken, auf die gewendet werden kann. Leer: üblich für das Werkzeug.",
        EdgeField::RegrindTime => "Von der Maschine und wieder auf Spitzenhöhe. Leer: üblich.",
        EdgeField::Name => return None,
    })
}

pub(super) const fn holding_label(field: HoldingField) -> &'static str {
    match field {
        HoldingField::Support => "Gespannt",
        HoldingField::Jaws => "Backen",
        HoldingField::GripLength => "Länge des Kopfs in den Backen",
        HoldingField::GripForce => "Kraft aller Backen",
        HoldingField::TailForce => "Kraft der Körnerspitze",
        HoldingField::NearPlace => "Ort der nahen Ablesungen",
        HoldingField::FarPlace => "Ort der fernen Ablesungen",
    }
}

pub(super) const fn holding_hint(field: HoldingField) -> Option<&'static str> {
    Some(match field {
        HoldingField::GripLength => "Längs der Achse. Leer: üblich.",
        HoldingField::GripForce => {
            "Aus den Papieren des Futters oder mit Kraftmesser. Leer: üblich für ein von Hand gespanntes Futter."
        }
        HoldingField::TailForce => "Längs der Achse, wie die Pinole drückt. Leer: üblich.",
        HoldingField::NearPlace | HoldingField::FarPlace => {
            "Von der Schulter nach außen; negativ am Kopf."
        }
        HoldingField::Support | HoldingField::Jaws => return None,
    })
}

pub(super) const fn pin_label(field: PinField) -> &'static str {
    match field {
        PinField::After => "Durchmesser danach",
        PinField::Infeed => "Zustellung, auf Radius",
        PinField::Speed => "Drehzahl",
        PinField::Feed => "Vorschub",
    }
}

pub(super) const fn pin_hint(field: PinField) -> Option<&'static str> {
    match field {
        PinField::Speed | PinField::Feed => Some("Leer: Die Planung wählt."),
        PinField::After | PinField::Infeed => None,
    }
}

pub(super) const fn rate_label(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "Währung",
        RateField::PerHour => "Werkstattstunde",
        RateField::Least => "Mindestpreis je Auftrag",
        RateField::Consumables => "Scheiben, Schleifmittel, Öl",
        RateField::Postage => "Porto und Verpackung",
    }
}

pub(super) const fn rate_hint(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "Wie sie geschrieben wird: Alle Beträge sind in dieser.",
        RateField::PerHour => "Leer: Es werden keine Kosten berechnet.",
        RateField::Least | RateField::Consumables | RateField::Postage => "Leer: nichts.",
    }
}

/// A quarter of the turn, counted from 0.
pub(super) const fn quarter(quarter: u8) -> &'static str {
    match quarter {
        0 => "An Backe 1",
        1 => "Eine Vierteldrehung weiter",
        2 => "Halbe Drehung",
        _ => "Dreiviertel weiter",
    }
}

/// The name of a reading of the indicator where it stands alone.
pub(super) fn reading(plane: DialPlane, at: u8) -> String {
    let plane = match plane {
        DialPlane::Near => "Messuhr nahe am Futter",
        DialPlane::Far => "Messuhr weiter außen",
    };
    format!("{plane}: {}", quarter(at))
}

/// The name of a pinned pass, counted from 1.
pub(in crate::page::words) fn pin(index: u8) -> String {
    format!("Fester Schnitt {}", u16::from(index) + 1)
}

pub(in crate::page::words) fn pin_line(after: &str, infeed: &str) -> String {
    format!("auf ⌀{after}, Zustellung {infeed}")
}

/// A planned pass as one that can be pinned.
pub(in crate::page::words) fn planned(number: usize, after: &str) -> String {
    format!("Schnitt {number}, auf ⌀{after}")
}

/// What a list comes to.
pub(in crate::page::words) fn gears(
    words: Words,
    field: Field,
    count: usize,
    from: &str,
    to: &str,
) -> String {
    let (one, more, none) = match field {
        Field::Machine(MachineField::Feeds) => ("Vorschub", "Vorschübe", "Noch kein Vorschub."),
        _ => ("Drehzahl", "Drehzahlen", "Noch keine Drehzahl."),
    };
    match count {
        0 => none.to_owned(),
        1 => format!("{}, {to}", words.count(count, one, more)),
        _ => format!("{}, {from} bis {to}", words.count(count, one, more)),
    }
}

/// What is wrong with a list, and where.
pub(in crate::page::words) fn bad_list(words: Words, field: Field, error: &GearsError) -> String {
    let what = match error {
        GearsError::Unread { piece, error } => format!("„{}“: {}", short(piece), unread(error)),
        GearsError::OutOfBounds { piece } => {
            format!("„{}“: {}", short(piece), out_of_bounds(words, field))
        }
        GearsError::TooMany => format!(
            "Eine Liste kann höchstens {} Zahlen haben.",
            Job::MOST_GEARS
        ),
    };
    format!("{what} Der Plan rechnet weiter mit der letzten lesbaren Liste.")
}

pub(super) const fn text(text: OfShop) -> &'static str {
    match text {
        OfShop::Tool => "Das Werkzeug in Zahlen",
        OfShop::Lathe => "Drehmaschine",
        OfShop::Holding => "Einspannung",
        OfShop::Dialling => "Ausrichten",
        OfShop::DiallingLead => {
            "Messuhr an einer Rundung, die laufen muss, Teil von Hand gedreht. Mit Backe 1 oben und nach jeder \
             Vierteldrehung ablesen, plus, wo der Taster hineingeht. Am besten an zwei Stellen, weit auseinander."
        }
        OfShop::Pins => "Feste Schnitte",
        OfShop::PinsLead => "Selbst festgelegte Schnitte. Der Rest wird um sie herum geplant.",
        OfShop::NoPins => "Keine: Alle Schnitte sind geplant.",
        OfShop::PinPlanned => "Geplanten festlegen",
        OfShop::AddPin => "Eigenen Schnitt festlegen",
        OfShop::ToolChoice => "Welche Werkzeuge dieses Metall drehen",
        OfShop::ToolChoiceLead => {
            "An der Oberfläche, nach Härte und Gruppe. Geschwindigkeiten sind ein Anfang, kein Versprechen."
        }
        OfShop::WhyGrind => "Warum besser schleifen",
        OfShop::StepTimes => "Zeiten der Schritte",
        OfShop::StepTimesLead => {
            "Jedes Mal, wenn ein Schritt getan wird. Was leer ist, ist üblich oder folgt aus der Zeit „In der Regel“."
        }
        OfShop::Rates => "Sätze",
        OfShop::Plane(DialPlane::Near) => "Nahe am Futter",
        OfShop::Plane(DialPlane::Far) => "Weiter außen",
        OfShop::Stepless => "Jede, stufenlos",
        OfShop::Listed => "Aus einer Liste",
        OfShop::Support(None) => "Wie das Ende wird: mit Spitze, wo eine Zentriersenkung ist",
        OfShop::Support(Some(Support::Chuck)) => "Nur im Futter",
        OfShop::Support(Some(Support::ChuckAndCentre)) => "Futter und Körnerspitze",
        OfShop::Support(Some(Support::BetweenCentres)) => "Zwischen Spitzen",
        OfShop::Support(Some(Support::Collet)) => "Spannzange",
        OfShop::Jaws(None) => "Üblich: als glatt gerechnet",
        OfShop::Jaws(Some(JawFace::Smooth)) => "Glatt: geschliffen, abgenutzt, weich",
        OfShop::Jaws(Some(JawFace::Serrated)) => "Verzahnt",
        OfShop::Rigidity(Rigidity::Light) => "Leicht: Tischmaschine, oder ausgeleiert",
        OfShop::Rigidity(Rigidity::Medium) => "Mittel: Werkstattmaschine in Ordnung",
        OfShop::Rigidity(Rigidity::Heavy) => "Schwer: schwere Maschine, Führungen eng",
        OfShop::DialReads(DialReads::Diameter) => "Durchmesser",
        OfShop::DialReads(DialReads::Radius) => "Radius: den Weg des Schlittens",
        OfShop::Aim(Aim::LeastTime) => "Kürzeste Zeit",
        OfShop::Aim(Aim::LeastCost) => "Kleinste Kosten",
        OfShop::Mine(Shelf::Lathes) => "Meine Maschinen",
        OfShop::Mine(Shelf::Tools) => "Meine Werkzeuge",
        OfShop::Mine(Shelf::Instruments(_)) => "Meine Messmittel",
        OfShop::Keep(Shelf::Instruments(_)) => "Messmittel merken",
        OfShop::KeepNeedsName(Shelf::Instruments(_)) => {
            "Oben einen Namen geben, dann lässt sich das Messmittel für andere Aufträge merken."
        }
        OfShop::Instruments(text) => instruments::text(text),
        OfShop::Keep(Shelf::Lathes) => "Maschine merken",
        OfShop::Keep(Shelf::Tools) => "Werkzeug merken",
        OfShop::KeepNeedsName(Shelf::Lathes) => {
            "Oben einen Namen geben, dann lässt sich die Maschine für andere Aufträge merken."
        }
        OfShop::KeepNeedsName(Shelf::Tools) => {
            "Oben einen Namen geben, dann lässt sich das Werkzeug für andere Aufträge merken."
        }
        OfShop::Kept => "In diesem Browser gemerkt, wie es hier steht.",
        OfShop::ShelfFull => "Mehr geht nicht: Erst eines löschen.",
        OfShop::ShelfUnread => {
            "Was in diesem Browser gemerkt war, ist nicht lesbar. Es bleibt, wie es ist, bis Neues gemerkt wird und an \
             seine Stelle tritt."
        }
        OfShop::TakeIn => "In den Auftrag",
        OfShop::ShelfRefused => {
            "NICHT gemerkt: Dieser Browser bewahrt nichts auf. Maschine, Werkzeug und Messmittel stehen im Auftrag \
             selbst; seinen Link an sich selbst senden."
        }
        OfShop::AskTitle(Question::Replace(_)) => "Ersetzen?",
        OfShop::AskTitle(Question::Remove(..)) => "Löschen?",
        OfShop::AskTitle(Question::Forget(_)) => "Vergessen?",
        OfShop::Replace => "Ersetzen",
        OfShop::AskNo => "So lassen",
    }
}

/// What is asked before something that is kept goes.
pub(in crate::page::words) fn question(question: Question, name: &str) -> String {
    match question {
        Question::Replace(_) => format!(
            "„{name}“ ist schon gemerkt, mit anderen Zahlen. Die dieses Auftrags an ihre Stelle setzen?"
        ),
        Question::Forget(_) => instruments::ask_forget(name),
        Question::Remove(..) => {
            format!(
                "„{name}“ aus dem löschen, was dieser Browser gemerkt hat? Aufträge behalten ihre Kopie."
            )
        }
    }
}
