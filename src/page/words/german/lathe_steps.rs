//! German: the steps at the lathe, their figures and cautions.

use skimwright::job::WorkStep;
use skimwright::work::{Dial, StepFigure, StepHow, StepWarning};

use crate::page::words::Words;

pub(super) const fn name(step: WorkStep) -> &'static str {
    match step {
        WorkStep::Receive => "Annehmen und prüfen",
        WorkStep::Hold => "Teil spannen",
        WorkStep::DialIn => "Ausrichten",
        WorkStep::CutOff => "Abtrennen",
        WorkStep::Face => "Plandrehen",
        WorkStep::Centre => "Zentrieren",
        WorkStep::Rough => "Schruppen",
        WorkStep::LastCuts => "Schlichten",
        WorkStep::Polish => "Polieren",
        WorkStep::Chamfer => "Anfasen, entgraten",
        WorkStep::Check => "Prüfen",
        WorkStep::Clean => "Reinigen und ölen",
    }
}

pub(super) const fn how(how: StepHow) -> &'static str {
    match how {
        StepHow::ToDo => "offen",
        StepHow::Running => "läuft",
        StepHow::Paused => "Pause",
        StepHow::Done => "erledigt",
        StepHow::Skipped => "ausgelassen",
    }
}

pub(in crate::page::words) fn step_count(_: Words, number: usize, of: usize) -> String {
    format!("{number} von {of}")
}

pub(in crate::page::words) const fn dial_means(_: Words, dial: &Dial) -> &'static str {
    match dial {
        Dial::AsGiven(_) => "Schaft laut Angabe: nachmessen",
        Dial::CutMark(_) => "Anriss zum Trennen, vom freien Ende",
        Dial::Grip(_) => "so viel vom Kopf spannen",
        Dial::Runout(_) => "Rundlauf, der bleiben darf",
        Dial::Facing(_) => "plandrehen",
        Dial::CentreDepth(_) => "so tief bohren",
        Dial::Infeed(_) => "zustellen, wie die Skala zeigt",
        Dial::PolishOff(_) => "abpolieren, vom Durchmesser",
        Dial::Chamfer(_) => "Fase, längs der Achse, 45°",
        Dial::Diameter(_) => "Solldurchmesser",
    }
}

pub(in crate::page::words) const fn figure_name(figure: &StepFigure) -> &'static str {
    match figure {
        StepFigure::HeadDiameter(_) => "Kopf",
        StepFigure::ShankLength(_) => "Schaftlänge",
        StepFigure::FromShoulder(_) => "Von der Schulter",
        StepFigure::Method(_) => "Mit",
        StepFigure::Kerf(_) => "Schnittfuge",
        StepFigure::OffcutLength(_) => "Abfallstück",
        StepFigure::Support(_) => "Gespannt",
        StepFigure::HeldDiameter(_) => "Gefasst an",
        StepFigure::Overhang(_) => "Kragt aus",
        StepFigure::FinishedLength(_) => "Schulter bis Ende",
        StepFigure::DepthFrom(_) => "Tiefe ab",
        StepFigure::CentreDrill(_) => "Zentrierbohrer",
        StepFigure::Mouth(_) => "Senkung",
        StepFigure::OffDiameter(_) => "Vom Durchmesser",
        StepFigure::DiameterAfter(_) => "Durchmesser danach",
        StepFigure::DialReads(_) => "Die Skala zeigt",
        StepFigure::PassesLeft(_) => "Schnitte übrig",
        StepFigure::CompoundAngle(_) => "Oberschlitten auf",
        StepFigure::CompoundTravel(_) => "Schlittenweg",
        StepFigure::LowerLimit(_) => "Nicht unter",
        StepFigure::UpperLimit(_) => "Nicht über",
        StepFigure::WantedLength(_) => "Solllänge",
        StepFigure::Roughness(_) => "Rauheit Ra",
    }
}

pub(super) const fn warning(warning: StepWarning) -> &'static str {
    match warning {
        StepWarning::ChuckKey => "Futterschlüssel abziehen, bevor die Spindel dreht.",
        StepWarning::GripWeak => {
            "Die Backen halten zu wenig für diesen Schnitt: Befunde im Plan lesen."
        }
        StepWarning::LosesGrip => "Wenig ist gespannt: Es kann aus den Backen kommen.",
        StepWarning::LongOverhang => "Lang und ungestützt kann es schlagen: langsam anfahren.",
        StepWarning::ChuckSpeed => "Das Futter nie schneller drehen, als angeschrieben ist.",
        StepWarning::CentreNipsUp => {
            "Warm wächst das Teil und klemmt die Körnerspitze: etwas nachlassen, neu anstellen."
        }
        StepWarning::Disc => {
            "Scheibe: Haube dran, Augen- und Gehörschutz, nie über der aufgedruckten Drehzahl."
        }
        StepWarning::Grit => "Schleifstaub: Führungen abdecken, Maske auf.",
        StepWarning::HotOffcut => "Abfallstück und Ende sind heiß.",
        StepWarning::OffcutFalls => "Das Abfallstück fällt: nie mit der Hand fangen.",
        StepWarning::PartingJams => {
            "Ein Abstechstahl hakt ein: scharf, rechtwinklig, auf Mitte, kurz, mit Öl."
        }
        StepWarning::SawOnHard => "Eine Säge schneidet nichts Hartes.",
        StepWarning::ChipsLong => "Lange Späne: Spindel anhalten, Spänehaken, nie die Finger.",
        StepWarning::ChipsHard => "Heiße, scharfe Späne fliegen: Augen schützen.",
        StepWarning::DustOfCastIron => {
            "Gusseisen staubt fein: Maske auf, Staub von den Führungen fernhalten."
        }
        StepWarning::TitaniumFire => {
            "Titanspäne können brennen: kein Wasser, trockenen Sand bereithalten."
        }
        StepWarning::Knocks => "Unterbrochener Schnitt: Eine harte Schneide kann ausbrechen.",
        StepWarning::Grinding => {
            "Schleifen: Maske auf, Führungen abgedeckt, Scheibe nicht schneller als angeschrieben."
        }
        StepWarning::HotWork => "Ein warmes Teil misst zu groß: abkühlen lassen.",
        StepWarning::StopToMeasure => "Zum Messen die Spindel anhalten.",
        StepWarning::CentreDrillBreaks => {
            "Der Zapfen bricht leicht: auf Mitte, wenig Vorschub, Späne räumen."
        }
        StepWarning::CentreOnHard => "Das Ende ist hart: kein Zentrierbohrer aus Schnellstahl.",
        StepWarning::FingersAtSpindle => {
            "Schmirgel und Feile: Streifen mit offener Hand, nie herumwickeln; Heft an der Feile."
        }
        StepWarning::SharpEdges => "Kanten sind scharf, bis sie gebrochen sind.",
        StepWarning::UnknownPast => {
            "Was früher damit geschah, und Risse, sind vielleicht nicht zu sehen."
        }
        StepWarning::NoAirLine => "Keine Druckluft: Pinsel und Staubsauger.",
    }
}
