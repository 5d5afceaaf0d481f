//! German: what was found of lathe, tool, passes and holding, and what to do about it.

use skimwright::cutting::Care;
use skimwright::job::{Field, Job};
use skimwright::plan::{Code, Finding};
use skimwright::quantity::{Length, show};

use super::{cut, fields, shop};
use crate::page::words::{FindingWords, Words};

#[expect(
    clippy::too_many_lines,
    reason = "one arm a finding, in the order of the codes"
)]
pub(super) fn finding(words: Words, finding: &Finding) -> FindingWords {
    let field = finding.field;
    let size = |value: Length| words.size(value);
    let own = |(what, mend): (&str, &str)| (what.to_owned(), mend.to_owned());
    let (what, mend) = match finding.code {
        Code::InfeedTooFine { infeed, least } => {
            let which = match field {
                Field::LastCut => "Ein Schlichtschnitt",
                _ => "Ein Schruppschnitt",
            };
            (
                format!(
                    "{which} mit {} Zustellung ist feiner, als dieses Werkzeug schneidet: Es reibt.",
                    size(infeed)
                ),
                format!(
                    "Mindestens {} zustellen, oder ein schärferes Werkzeug nehmen.",
                    words.size_at_least(least)
                ),
            )
        }
        Code::LastCutsReduced { each } => (
            format!(
                "Es ist weniger Metall da, als zwei Schlichtschnitte wollen: Jeder nimmt {} vom Durchmesser.",
                size(each)
            ),
            "Vor dem ersten messen: Es gibt kein Schruppen, aus dem zu lernen ist.".to_owned(),
        ),
        Code::LastCutsLighter { each } => (
            format!(
                "Die verlangten Schlichtschnitte sind zu schwer: Geplant sind je {} vom Durchmesser.",
                size(each)
            ),
            "Nur so viel verlangen, oder das Teil steifer spannen.".to_owned(),
        ),
        Code::ToolWithCare { care } => own(care_words(care)),
        Code::SoftCoreUnderTool { pass } => (
            format!(
                "Ab Schnitt {pass} ist das Werkzeug unter der harten Schicht: Bornitrid klebt an weichem Stahl."
            ),
            "Dort auf Hartmetall wechseln.".to_owned(),
        ),
        Code::NoGears => (
            format!("{}: Die Liste ist leer.", words.field_in_full(field)),
            "Eintragen, was auf dem Schild am Spindelstock steht, oder „Jede, stufenlos“ wählen."
                .to_owned(),
        ),
        Code::GearsCrossed => (
            format!(
                "{}: Das Kleinste liegt über diesem.",
                words.field_in_full(field)
            ),
            "Eines von beiden ändern.".to_owned(),
        ),
        Code::NameTooLong => {
            let most = match field {
                Field::Rate(_) => Job::MOST_CURRENCY_CHARACTERS,
                _ => Job::MOST_NAME_CHARACTERS,
            };
            (
                format!("{}: Der Text ist zu lang.", words.field(field)),
                format!("Auf {most} Zeichen kürzen."),
            )
        }
        Code::TooLargeToSwing { largest } => (
            format!(
                "Das Teil misst ⌀{} und geht nicht über den Planschlitten.",
                size(largest)
            ),
            "Eine größere Maschine nehmen, oder den Umlaufdurchmesser prüfen.".to_owned(),
        ),
        Code::NoPass { limit, share } => (
            format!(
                "Selbst der leichteste Schnitt braucht {} von dem, was {} erlaubt.",
                show::share(share),
                cut::limit_inside(limit)
            ),
            cut::ease(limit).to_owned(),
        ),
        Code::PinsOverlap { other } => (
            format!(
                "{} nimmt dasselbe Metall wie fester Schnitt {other}.",
                pin(field)
            ),
            "Durchmesser oder Zustellung eines der beiden ändern.".to_owned(),
        ),
        Code::PinOutside { start, end } => (
            format!(
                "{} liegt außerhalb des Metalls, das abgedreht wird.",
                pin(field)
            ),
            format!(
                "Zwischen ⌀{} und ⌀{} halten.",
                words.size_bare(start),
                size(end)
            ),
        ),
        Code::PinBreaks { limit, share } => (
            format!(
                "{} braucht {} von dem, was {} erlaubt.",
                pin(field),
                show::share(share),
                cut::limit_inside(limit)
            ),
            "Leichter oder langsamer machen, oder freigeben.".to_owned(),
        ),
        Code::GivesWay { by, allowed } => (
            format!(
                "Teil und Maschine geben nach: Der Durchmesser wird um {} schwanken, erlaubt sind {}.",
                words.fine(by),
                words.fine(allowed)
            ),
            "Leichter schlichten, weniger auskragen lassen, oder das Ende stützen.".to_owned(),
        ),
        Code::RoughnessNotReached { expected } => (
            format!(
                "So gedreht, kann Ra bis {} betragen.",
                words.fine(expected)
            ),
            "Aufmaß zum Polieren lassen, oder größeren Eckenradius oder andere Drehzahl nehmen."
                .to_owned(),
        ),
        Code::SpeedAboveWindow { highest } => (
            "Die verlangte Schnittgeschwindigkeit ist mehr, als dieses Werkzeug in diesem Werkstoff aushält."
                .to_owned(),
            format!("{} oder weniger nehmen.", words.units().speed(highest)),
        ),
        Code::TimesCrossed => (
            format!("{} passt nicht in die Reihe.", words.field_in_full(field)),
            "„Mindestens“ ist die kürzeste Zeit, „Höchstens“ die längste.".to_owned(),
        ),
        Code::MayChatter { ratio, easy } => (
            format!(
                "Das Teil kragt {}-mal seinen Durchmesser aus und kann rattern.",
                show::decimal(ratio, 1)
            ),
            format!(
                "Bis {} ist unkritisch: weniger auskragen lassen, das Ende stützen, oder eine Lünette nehmen.",
                show::trimmed(easy, 1)
            ),
        ),
        Code::ShortGrip { least } => (
            "Die Backen halten so wenig der Länge, dass das Teil herauskippen kann.".to_owned(),
            format!(
                "Mindestens {} spannen, oder das Ende stützen.",
                words.length_at_least(least)
            ),
        ),
        other => own(plain(other)),
    };
    FindingWords { what, mend }
}

/// What is said without a figure.
const fn plain(code: Code) -> (&'static str, &'static str) {
    match code {
        Code::TooManyPasses => (
            "Mehr als 200 Schnitte wären nötig.",
            "Beim Schruppen tiefer zustellen.",
        ),
        Code::ToolCannotCut => (
            "Dieses Werkzeug schneidet diesen Werkstoff nicht.",
            "Ein härteres Werkzeug wählen, oder schleifen.",
        ),
        Code::CobaltGradeNeeded => (
            "Einfacher Schnellarbeitsstahl hält diesen Werkstoff nicht aus.",
            "Eine Kobaltsorte nehmen, oder Hartmetall.",
        ),
        Code::ToolAtItsLimit => (
            "Dieses Werkzeug ist hier an der Grenze: nur leichtes Schlichten, und nicht über 55 HRC.",
            "Bornitrid nehmen, oder schleifen.",
        ),
        Code::NoRowOfPasses => (
            "Jeder leichte Schnitt geht, aber keine Folge endet auf Maß.",
            "Tiefere Zustellung, leichtere Schlichtschnitte oder eine feinere Skala erlauben.",
        ),
        Code::NoRate => (
            "Kleinste Kosten sind gewählt, aber ohne Satz: Geplant ist die kürzeste Zeit.",
            "Eintragen, was eine Werkstattstunde kostet.",
        ),
        Code::CentreWithoutHole => (
            "Eine Körnerspitze ist gewählt, und das Ende bekommt keine Zentriersenkung.",
            "Ihm unter „Soll“ eine geben, oder ohne Spitze spannen.",
        ),
        Code::DialNotPossible => (
            "Keine Beilage verschiebt das Teil so weit.",
            "Ablesungen prüfen; stimmen sie, neu spannen, in vier Backen.",
        ),
        Code::DialIncomplete => (
            "Die Messuhr braucht mehr Ablesungen.",
            "Mindestens zwei benachbarte Viertel ablesen; für Schieflage beide Linien an zwei Stellen mit Abstand.",
        ),
        Code::GrindInstead => (
            "Drehen ist hier der schlechtere Weg.",
            "Schleifen, oder zum Schleifen weitergeben.",
        ),
        // The catalogue of the other findings names those that stand here.
        _ => ("", ""),
    }
}

const fn care_words(care: Care) -> (&'static str, &'static str) {
    match care {
        Care::NoInterruptedCut => (
            "Keramik bricht an Abflachungen, Nuten und Querbohrungen.",
            "Nur ununterbrochene Schnitte, oder Bornitrid nehmen.",
        ),
        Care::NearlyTooSoft => (
            "Das Teil ist fast zu weich für dieses Werkzeug: Es verschleißt, und der Span kann kleben.",
            "Hartmetall nehmen, oder die Schneide beobachten.",
        ),
        Care::DustAndSlow => (
            "Schleifen auf der Drehmaschine ist langsam, und der Staub verdirbt die Führungen.",
            "Führungen abdecken, Staub fangen, und reinigen, bevor der Bettschlitten fährt.",
        ),
        Care::HardnessUncertain => (
            "An einem Ende seiner Härte passt das Teil nicht zu diesem Werkzeug.",
            "Die Härte messen, oder das Werkzeug mit leichtem Schnitt probieren.",
        ),
        Care::CobaltGrade | Care::LightCuts | Care::Emergency => (
            "Dieses Werkzeug ist in diesem Werkstoff nahe der Grenze.",
            "Leichte Schnitte nehmen.",
        ),
    }
}

/// The name of the pin that a field belongs to.
fn pin(field: Field) -> String {
    match field {
        Field::Pin(index, _) => shop::pin(index),
        _ => fields::label(field).to_owned(),
    }
}
