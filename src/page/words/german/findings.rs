//! German: what was found, and what to do about it.

use skimwright::job::Field;
use skimwright::plan::{Code, Finding};
use skimwright::quantity::{Length, show};
use skimwright::rework::Because;
use skimwright::working::Value;

use super::{becomes, fields, findings_cut, strength};
use crate::page::edit::List;
use crate::page::words::{FindingWords, Words};

#[expect(
    clippy::too_many_lines,
    reason = "one arm a finding, in the order of the codes"
)]
pub(in crate::page::words) fn finding(words: Words, finding: &Finding) -> FindingWords {
    let (length, size) = (
        |value: Length| words.length(value),
        |value| words.size(value),
    );
    // A proposal is rounded to the side on which it mends.
    let (at_most, at_least) = (
        |value| words.size_at_most(value),
        |value| words.size_at_least(value),
    );
    let (long_at_most, long_at_least) = (
        |value| words.length_at_most(value),
        |value| words.length_at_least(value),
    );
    let place = |at: Length| strength::place(words, at);
    // The row that the finding is about, and the name of its field.
    let row = match List::of(finding.field) {
        Some((list, Some(index))) => words.row(list, index),
        _ => words.field(finding.field).to_owned(),
    };
    let its_field = words.field(finding.field);
    let (what, mend) = match finding.code {
        Code::AllClear => (
            "Nichts spricht dagegen, soweit die Zahlen reichen.".to_owned(),
            "Das Teil vor dem ersten Schnitt mit ihnen vergleichen: Es gibt kein Zurück.".to_owned(),
        ),
        Code::OutOfBounds => (
            format!(
                "Mit „{}“ lässt sich so nicht planen.",
                words.field_in_full(finding.field)
            ),
            fields::out_of_bounds(words, finding.field),
        ),
        Code::TitleTooLong => (
            "Der Name des Auftrags ist zu lang.".to_owned(),
            "Auf 80 Zeichen kürzen.".to_owned(),
        ),
        Code::NoSection => (
            "Der Schaft hat keinen Abschnitt.".to_owned(),
            "Unter „Ist“ einen hinzufügen.".to_owned(),
        ),
        Code::TooMany => (
            "Es sind mehr Zeilen, als der Plan fasst.".to_owned(),
            List::of(finding.field).map_or_else(String::new, |(list, _)| {
                format!("Einige zusammenfassen: höchstens {}.", list.most())
            }),
        ),
        Code::TaperTooSteep => (
            format!("{row}: Ein Kegel über 90° von Seite zu Seite ist kein Schaft."),
            format!("„{its_field}“ prüfen: 1 : 1/2 ist das Steilste."),
        ),
        Code::GapBefore { by, mend } => (
            format!("Vor {row} ist auf {} nichts angegeben.", size(by)),
            format!(
                "„{its_field}“ auf {} setzen, oder angeben, was dort ist.",
                size(mend)
            ),
        ),
        Code::SectionsOverlap { by, mend } => (
            format!("{row} beginnt {} vor dem Ende des vorigen.", size(by)),
            if mend.to_mm() < 0.01 {
                "Die Längen beider prüfen.".to_owned()
            } else {
                format!(
                    "„{its_field}“ auf {} setzen, oder den vorigen prüfen.",
                    size(mend)
                )
            },
        ),
        Code::LengthsDisagree { whole, sum } => (
            format!(
                "Die Abschnitte enden {} von der Schulter, der ganze Schaft ist aber {} lang.",
                size(sum),
                size(whole)
            ),
            "Noch einmal messen. Die ganze Länge leeren, wo die Abschnitte sicherer sind.".to_owned(),
        ),
        Code::FeatureOffShank { longest } => (
            format!("{row} liegt neben dem Schaft."),
            format!(
                "Der Schaft endet {} von der Schulter: „{its_field}“ prüfen.",
                length(longest)
            ),
        ),
        Code::FeatureTooDeep => (
            format!("{row} reicht bis zur Achse: Vom Schaft bliebe nichts."),
            format!("„{its_field}“ mit dem Durchmesser dort vergleichen."),
        ),
        Code::FeatureCutsNothing => (
            format!("{row} berührt das Metall nicht."),
            format!("„{its_field}“ mit dem Durchmesser dort vergleichen."),
        ),
        Code::CrossHoleStays { at, longest } => (
            format!("{row} bleibt im fertigen Schaft, {}.", place(at)),
            if longest.to_mm() < 0.5 {
                "Kein Schaft ist frei davon. Dem Besitzer sagen, dass sie bleibt, und leicht darüber schneiden."
                    .to_owned()
            } else {
                format!(
                    "Den Schaft nur {} lang lassen, oder dem Besitzer sagen, dass sie bleibt; leicht darüber schneiden.",
                    long_at_most(longest)
                )
            },
        ),
        Code::BoreTooWide { at, outside } => (
            format!(
                "{row} ist weiter als das Teil: Dort ist es ⌀{}, {}.",
                size(outside),
                place(at)
            ),
            format!("„{its_field}“ prüfen, und wie tief sie geht."),
        ),
        Code::HolesMeet { by } => (
            format!(
                "Bohrungen von beiden Enden treffen sich: Sie überlappen um {}.",
                length(by)
            ),
            "Ist das Teil wirklich durchgehend offen, so lassen; sonst beide Tiefen noch einmal messen."
                .to_owned(),
        ),
        Code::StepNotWider => (
            format!("{row}: Die weite Stufe ist nicht weiter als der Rest."),
            "Beide Durchmesser noch einmal messen.".to_owned(),
        ),
        Code::ReamBelowHole { by } => (
            format!(
                "{row} ist angeblich {} tiefer gerieben als gebohrt.",
                length(by)
            ),
            "Beide Tiefen noch einmal messen.".to_owned(),
        ),
        Code::TaperComesToAPoint => (
            format!("{row}: Dieser Kegel liefe vor seinem Ende spitz zu."),
            "Den Abschnitt kürzen, oder die Größe des Kegels prüfen.".to_owned(),
        ),
        Code::LimitsCrossed { by } => (
            format!("Das obere Grenzmaß liegt {} unter dem unteren.", size(by)),
            "Beide tauschen, oder ihre Vorzeichen prüfen.".to_owned(),
        ),
        Code::NoSuchLimits => (
            "Die Tabelle hat für diesen Durchmesser keine Abmaße.".to_owned(),
            "Die Klassen reichen bis 180 mm. Eigene Abmaße eingeben.".to_owned(),
        ),
        Code::ShankTooShort { short_by, longest } => (
            format!("Der Schaft ist {} zu kurz.", length(short_by)),
            format!("{} oder weniger verlangen.", long_at_most(longest)),
        ),
        Code::NotCleanedUp {
            at,
            short_by,
            largest,
            longest,
            because,
        } => (
            format!(
                "Es ist nicht genug Metall da: Im Durchmesser fehlen {}, {}. {}",
                size(short_by),
                place(at),
                in_the_way(words, because)
            ),
            becomes::enough_metal(words, largest, longest),
        ),
        Code::CleansUpLow { at, largest } => (
            format!(
                "Es wird nur tief in der Toleranz sauber: {} ist das Größte, {}.",
                size(largest),
                place(at)
            ),
            "Genauer ausrichten, weniger zum Polieren lassen, oder eine Stelle hinnehmen, die roh bleibt."
                .to_owned(),
        ),
        Code::BreaksOut { at, smallest } => (
            format!("Eine Bohrung bricht aus dem fertigen Schaft, {}.", place(at)),
            format!(
                "Den Fertigdurchmesser bei {} oder mehr halten.",
                at_least(smallest)
            ),
        ),
        Code::ThinWall { wall, advised, at } => (
            format!(
                "Die Wand um eine Bohrung ist nur noch {}, {}.",
                length(wall),
                place(at)
            ),
            format!(
                "{} oder mehr wäre gut. Weniger abdrehen, oder dem Besitzer sagen, was sie trägt.",
                length(advised)
            ),
        ),
        Code::ThreadLeft { length: left } => (
            format!(
                "Der Trennschnitt geht durch ein Gewinde: {} davon bleiben.",
                length(left)
            ),
            "Grat entfernen und Gewinde nachschneiden; prüfen, ob die Schraube noch genug findet."
                .to_owned(),
        ),
        Code::ThreadCutAway => (
            "Das ganze Gewinde fällt mit dem Abfallstück weg.".to_owned(),
            "Hält eine Anzugsstange oder Schraube das Teil: Gewinde neu bohren und schneiden, und es dem Besitzer sagen."
                .to_owned(),
        ),
        Code::ThreadBelowHole { by } => (
            format!(
                "Das Gewinde ist angeblich {} tiefer als seine Bohrung.",
                length(by)
            ),
            "Beide Tiefen noch einmal messen.".to_owned(),
        ),
        Code::GripTooShort { grip, least } => (
            format!(
                "Die Aufnahme spannt nur {} der nötigen {}.",
                length(grip),
                length(least)
            ),
            match finding.field {
                Field::ReceiverDepth => {
                    "Ihre Tiefe prüfen: Mehr vom Schaft nimmt sie nicht auf.".to_owned()
                }
                _ => "Den Schaft länger lassen, oder Radius und Fase kleiner machen.".to_owned(),
            },
        ),
        Code::ShoulderStandsOff { by } => (
            format!(
                "Die Aufnahme ist voll, bevor die Schulter anliegt: {} stehen heraus.",
                length(by)
            ),
            "Den Schaft kürzen, wenn die Schulter anliegen muss; sonst so lassen.".to_owned(),
        ),
        Code::ReceiverTakesOthers { smallest, largest } => (
            "Die Aufnahme ist für andere Durchmesser gemacht.".to_owned(),
            if smallest == largest {
                format!("Sie nimmt {}.", size(smallest))
            } else {
                format!("Sie nimmt {} bis {}.", size(smallest), size(largest))
            },
        ),
        Code::LimitsAsked { lower, upper } => (
            "Die Aufnahme verlangt andere Grenzmaße.".to_owned(),
            format!("Sie verlangt {} bis {}.", size(lower), size(upper)),
        ),
        Code::MayNotGoIn { most } => (
            format!(
                "Der Schaft kann bis zu {} größer sein als die Bohrung.",
                size(most)
            ),
            "Eine weitere Toleranz nehmen, wenn er von Hand hineinmuss.".to_owned(),
        ),
        Code::FilletMeetsEdge { largest } => (
            "Der Radius ist größer als die Kante der Aufnahme: Die Schulter liegt nicht an.".to_owned(),
            if largest.to_mm() < 0.005 {
                "Die Kante ist scharf: brechen, oder die Schulter freistechen.".to_owned()
            } else {
                format!(
                    "{} oder kleiner nehmen, oder die Schulter freistechen.",
                    at_most(largest)
                )
            },
        ),
        Code::ShoulderTooLow { height, least } => (
            format!("Die Schulter ist nur {} hoch.", size(height)),
            format!(
                "Der Ring sollte an {} oder mehr anliegen: mehr abdrehen, oder einen Ring mit kleinerer Fase nehmen.",
                at_least(least)
            ),
        ),
        Code::FlatMissesShank { least } => (
            "Der Schaft ist zu kurz für die Spannfläche, auf die der Halter klemmt.".to_owned(),
            format!("{} oder länger lassen.", long_at_least(least)),
        ),
        Code::SleeveTooThin { wall, least } => (
            format!("Die fertige Hülse ist nur {} dick.", length(wall)),
            format!(
                "Mindestens {} lassen: den Schaft dünner drehen oder außen größer machen.",
                long_at_least(least)
            ),
        ),
        Code::SleeveYields => (
            "Bei engster Passung würde Hülse oder Schaft nachgeben.".to_owned(),
            "Eine leichtere Passung oder festeren Werkstoff nehmen.".to_owned(),
        ),
        Code::SleeveMaySlip { held } => (
            format!(
                "Bei weitester Passung hält die Hülse nur {}.",
                words.value(Value::Torque(held))
            ),
            "Engere Passung oder längere Hülse nehmen, oder verstiften oder kleben.".to_owned(),
        ),
        Code::CaseTurnedAway { left } => (
            match left {
                Some(left) => format!(
                    "Die harte Schicht wird abgedreht: An der Oberfläche bleiben {}.",
                    words.value(Value::Hardness(left))
                ),
                None => "Die harte Schicht wird abgedreht.".to_owned(),
            },
            "Dem Besitzer sagen: Eine weiche Fläche verschleißt und bekommt Druckstellen. Neu härten oder eine andere \
             Aufnahme geht."
                .to_owned(),
        ),
        Code::CaseDepthUnknown => (
            "Das Teil hat eine harte Schicht, und ihre Tiefe ist nicht eingetragen.".to_owned(),
            "Die Schnittfläche ansehen oder mit der Feile prüfen, und die Tiefe eintragen.".to_owned(),
        ),
        Code::DutyIncomplete => (
            format!("„{its_field}“ fehlt."),
            "Eintragen, sonst zählt, wozu es gehört, nicht mit.".to_owned(),
        ),
        Code::DutyTooMuch { safety } => (
            format!(
                "Der fertige Schaft trägt nur das {}-Fache seiner Last, geschätzt.",
                show::trimmed(safety, 2)
            ),
            "Dicker lassen, größeren Radius geben, oder weniger verlangen.".to_owned(),
        ),
        Code::SafetyLow { safety } => (
            format!(
                "Der fertige Schaft trägt etwa das {}-Fache seiner Last: wenig Reserve.",
                show::trimmed(safety, 2)
            ),
            "Dicker lassen oder größeren Radius geben, wenn Platz ist.".to_owned(),
        ),
        Code::ShorterThanStandard { standard } => (
            "Der Schaft ist kürzer als der Normschaft.".to_owned(),
            format!(
                "Der Normschaft ist {} lang: prüfen, ob er noch gehalten wird.",
                length(standard)
            ),
        ),
        Code::CountersinkTooWide { end } => (
            "Die Zentriersenkung ist größer als das Ende.".to_owned(),
            if end.to_mm() < 0.5 {
                "Die Fase lässt am Ende nichts Ebenes: erst sie kleiner machen.".to_owned()
            } else {
                format!("Das Ebene am Ende misst {}. Darunter bleiben.", at_most(end))
            },
        ),
        Code::CountersinkInHole { bore } => (
            format!(
                "Die Zentriersenkung ist nicht größer als die Bohrung von {} dort.",
                size(bore)
            ),
            format!(
                "Größer als {} machen, oder die Bohrung verschließen.",
                at_least(bore)
            ),
        ),
        Code::CountersinkOnThread { major } => (
            "Die Körnerspitze säße auf dem Gewinde.".to_owned(),
            format!("Die Senkung größer als {} machen.", at_least(major)),
        ),
        Code::NoCentreDrill { largest } => (
            "Kein genormter Zentrierbohrer macht diese Senkung.".to_owned(),
            format!(
                "Sie reichen von 0,5 mm bis {}. Ein 60°-Senker nach Vorbohren geht auch.",
                length(largest)
            ),
        ),
        Code::PointTouchesBottom { least_depth } => (
            "Die Körnerspitze würde den Grund der Bohrung berühren.".to_owned(),
            format!(
                "Vorbohren, bis die Bohrung {} tief ist, ab der fertigen Planfläche.",
                length(least_depth)
            ),
        ),
        Code::FilletTooLarge { largest } => (
            "Der Radius ist höher als die Schulter.".to_owned(),
            format!("{} oder kleiner nehmen.", at_most(largest)),
        ),
        Code::FilletInPart { largest } => (
            "Für den ganzen Radius fehlt dem Rohteil Metall.".to_owned(),
            format!(
                "{} oder kleiner nehmen, oder mit einem unvollständigen Radius leben.",
                at_most(largest)
            ),
        ),
        Code::NoStraightShank => (
            "Radius und Fase lassen keinen geraden Schaft.".to_owned(),
            "Kleiner machen, oder den Schaft länger.".to_owned(),
        ),
        Code::NoShoulder => (
            "Der Kopf ist nicht größer als der fertige Schaft: Es gibt keine Schulter.".to_owned(),
            "Den Kopfdurchmesser prüfen; ohne Schulter fehlt der Anschlag.".to_owned(),
        ),
        Code::SharpShoulder => (
            "An einer scharfen Ecke der Schulter brechen Schäfte.".to_owned(),
            "Mindestens den Eckenradius des Werkzeugs geben.".to_owned(),
        ),
        Code::SharpEnd => (
            "Das Ende bleibt scharf.".to_owned(),
            "Alle scharfen Kanten brechen: 0,3 mm reichen.".to_owned(),
        ),
        Code::FacedBack { by } => (
            format!(
                "Für einen Trennschnitt ist kein Platz: Das Ende wird um {} plangedreht.",
                length(by)
            ),
            "In mehreren Schnitten plandrehen; nichts zum Sägen anreißen.".to_owned(),
        ),
        Code::LengthAlready => (
            "Der Schaft hat schon seine Länge.".to_owned(),
            "Kein Trennschnitt nötig. Sauber plangedreht wird er etwas kürzer.".to_owned(),
        ),
        Code::NothingToTurn => (
            "Bis zum Polieraufmaß ist nichts abzudrehen.".to_owned(),
            "Auf Maß polieren oder schleifen.".to_owned(),
        ),
        Code::InfeedTooFine { .. }
        | Code::LastCutsReduced { .. }
        | Code::LastCutsLighter { .. }
        | Code::TooManyPasses
        | Code::ToolCannotCut
        | Code::CobaltGradeNeeded
        | Code::ToolAtItsLimit
        | Code::ToolWithCare { .. }
        | Code::SoftCoreUnderTool { .. }
        | Code::NoGears
        | Code::GearsCrossed
        | Code::NameTooLong
        | Code::TooLargeToSwing { .. }
        | Code::NoPass { .. }
        | Code::NoRowOfPasses
        | Code::PinsOverlap { .. }
        | Code::PinOutside { .. }
        | Code::PinBreaks { .. }
        | Code::GivesWay { .. }
        | Code::RoughnessNotReached { .. }
        | Code::SpeedAboveWindow { .. }
        | Code::NoRate
        | Code::TimesCrossed
        | Code::MayChatter { .. }
        | Code::ShortGrip { .. }
        | Code::CentreWithoutHole
        | Code::DialNotPossible
        | Code::DialIncomplete
        | Code::GrindInstead => return findings_cut::finding(words, finding),
        Code::SawCannotCut => (
            "Dieser Werkstoff ist härter als eine Säge.".to_owned(),
            "Mit der Trennscheibe abtrennen, von Hand oder im Ständer.".to_owned(),
        ),
        Code::HardEnd => (
            "Das getrennte Ende kann für einen einfachen Zentrierbohrer zu hart sein.".to_owned(),
            "Erst mit Hartmetall plandrehen, dann mit Hartmetall oder geschliffener Spitze zentrieren."
                .to_owned(),
        ),
    };
    FindingWords { what, mend }
}

pub(super) fn in_the_way(words: Words, because: Because) -> String {
    match because {
        Because::Section(index) => {
            format!("{} ist nicht dicker.", words.row(List::Sections, index))
        }
        Because::Feature(index) => {
            format!("{} ist im Weg.", words.row(List::Features, index))
        }
    }
}
