//! German: the fixed texts.

use skimwright::cutting::PassKind;
use skimwright::job::{BoreBottom, CentreOrder, CutOffMethod};
use skimwright::plan::Level;
use skimwright::quantity::Units;
use skimwright::rework::CutKind;
use skimwright::sheet::{MarkKind, Measure};
use skimwright::strength::Load;
use skimwright::tables::{TaperSeries, ThreadSeries};

use super::{
    becomes, cut, groups, items, jobs, lathe, link, owner, print, receiver, recognise, sharing,
    shop, stages, strength, time,
};
use crate::page::state::{Look, Share, Shown};
use crate::page::words::{Text, Words};

#[expect(
    clippy::too_many_lines,
    clippy::match_same_arms,
    reason = "one arm a text, in the order of the catalogue; two may read the same in one language"
)]
pub(in crate::page::words) const fn text(text: Text) -> &'static str {
    match text {
        Text::AppName => "Skimwright",
        Text::JobUntitled => "Auftrag ohne Namen",
        Text::StageName(stage) => stages::stage_name(stage),
        Text::StageLead(stage) => stages::stage_lead(stage),
        Text::StagesLabel => "Stufen des Auftrags",
        Text::Undo => "Zurück",
        Text::Redo => "Vor",
        Text::Share => "Teilen",
        Text::Menu => "Menü",
        Text::Close => "Zu",
        Text::SavedState(saved) => jobs::saved(saved),
        Text::DrawingLabel => "Zeichnung des Teils, maßstäblich",
        Text::DrawingHint => "Zum Ändern ein Maß antippen.",
        Text::DrawingKeyReceived => "Ist",
        Text::DrawingKeyFinished => "fertig",
        Text::DrawingKeyRemoved => "fällt weg",
        Text::DrawingKeyCut => "hier abtrennen",
        Text::DrawingKeyKerf => "Schnittfuge",
        Text::DrawingKeySection => "geschnitten",
        Text::DrawingKeyThread => "Gewinde",
        Text::DrawingKeyFlat => "Abflachung",
        Text::DrawingKeyAxis => "Achse",
        Text::DrawingMissing => {
            "Noch nichts zu zeichnen: Ein Maß des Teils fehlt oder ist unmöglich."
        }
        Text::DrawingBroken => {
            "Lange glatte Stücke sind zwischen Bruchlinien ausgelassen; die Maße nennen die wahren Längen."
        }
        Text::DrawingLarger => "Größer",
        Text::DrawingSmaller => "Kleiner",
        Text::DrawingWhole => "Ganz",
        Text::DimensionsAll => "Alle zeigen",
        Text::DimensionsFewer => "Weniger",
        Text::SaveSvg => "Als SVG sichern",
        Text::SavePng => "Als PNG sichern",
        Text::Done => "Fertig",
        Text::Measure(measure) => measure_name(measure),
        Text::GroupPart => "Das Teil",
        Text::GroupMoreOfPart => "Mehr zum Teil",
        Text::GroupErrors => "Wie sicher die Maße sind",
        Text::GroupList(list) => items::group(list),
        Text::GroupDuty => "Was er tragen muss",
        Text::GroupFinished => "Fertiger Schaft",
        Text::GroupReceiver => "Wo er hineinkommt",
        Text::GroupCuttingOff => "Abtrennen, Plandrehen, Zentrieren",
        Text::GroupTurning => "Drehen",
        Text::GroupTimes => "Zeiten je Schnitt",
        Text::NoneListed(list) => items::none(list),
        Text::Full => "Die Liste ist voll.",
        Text::Add(list) => items::add(list),
        Text::Remove => "Löschen",
        Text::MoveOn(list) => items::move_on(list),
        Text::MoveBack(list) => items::move_back(list),
        Text::Copy(list) => items::copy(list),
        Text::Kind(kind) => items::kind(kind),
        Text::AtShoulder => "An der Schulter",
        Text::BehindOneBefore => "Hinter dem davor",
        Text::From(datum) => items::from(datum),
        Text::Flats(flats) => items::flats(flats),
        Text::End(end) => items::end(end),
        Text::Bottom(BoreBottom::DrillPoint) => "Bohrspitze, 118°",
        Text::Bottom(BoreBottom::Flat) => "Flach",
        Text::TaperSeries(series) => taper_series(series),
        Text::ThreadSeries(series) => thread_series(series),
        Text::Material(material) => groups::material(material),
        Text::Tool(tool) => groups::tool(tool),
        Text::CutOffMethod(method) => cut_off_method(method),
        Text::CentreOrder(CentreOrder::AfterFacing) => "Nach dem Plandrehen",
        Text::CentreOrder(CentreOrder::BeforeFacing) => "Vor dem Plandrehen",
        Text::ToleranceClass(class) => class.code(),
        Text::ToleranceLimits => "Eigene Abmaße",
        Text::KeysLabel => "Tasten, die dem Telefon fehlen",
        Text::KeySlash => "Bruchstrich",
        Text::KeyMinus => "Minus",
        Text::KeyPlus => "Plus",
        Text::KeyInch => "Zoll",
        Text::KeyMillimetre => "mm, Millimeter",
        Text::KeySpace => "Leertaste",
        Text::KeySemicolon => "Strichpunkt",
        Text::FiguresLabel => "Die fünf Zahlen",
        Text::FigureName(shown) => figure_name(shown),
        Text::FigureMissing => "noch nicht",
        Text::FigureCut => "Abtrennen",
        Text::FigureShank => "Schaft bleibt",
        Text::FigureStock => "Zustellung",
        Text::FigureCentre => "Zentriertiefe",
        Text::FigureTime => "Gesamtzeit",
        Text::FromFreeEnd => "vom freien Ende",
        Text::ToFaceOff => "plandrehen",
        Text::Gripped => "gespannt",
        Text::NothingOff => "nichts",
        Text::NoCentreWanted => "nicht verlangt",
        Text::OnDrill => "Zentrierbohrer",
        Text::OnHole => "auf Bohrung",
        Text::CutKind(kind) => cut_kind(kind),
        Text::FindingsLabel => "Befunde",
        Text::LevelName(Level::Clear) => "Frei",
        Text::LevelName(Level::Caution) => "Achtung",
        Text::LevelName(Level::Stop) => "Halt",
        Text::ToField => "Ändern",
        Text::PassesLabel => "Schnitte",
        Text::PassNumber => "Nr.",
        Text::PassKind(kind) => pass_kind(kind),
        Text::PassDial => "Skala",
        Text::PassInfeed => "Zust.",
        Text::PassOff => "Vom ⌀",
        Text::PassAfter => "⌀ nach",
        Text::PassMetal => "Länge",
        Text::PassSpeed => "Drehz.",
        Text::PassFeed => "Vorschub",
        Text::PassTime => "Zeit",
        Text::PassMarks => "Notiz",
        Text::NoPasses => "Keine Schnitte: Es ist nichts abzudrehen.",
        Text::NoPassesYet => "Noch keine Schnitte: Die Befunde sagen, warum.",
        Text::PassesNote => {
            "Einen Schnitt antippen: Kräfte und Grenzen. Nach jedem der zwei Schlichtschnitte anhalten und messen: Der \
             erste zeigt, was der zweite tun wird."
        }
        Text::MoreLabel => "Weitere Zahlen",
        Text::LimitsLabel => "Fertigdurchmesser, kleinster bis größter",
        Text::SectionsOffLabel => "Vom Durchmesser ab",
        Text::MetalLabel => "Wohin das Metall des Schafts geht",
        Text::MetalReceived => "Schaft, Ist",
        Text::MetalOffcut => "Abfallstück",
        Text::MetalKerf => "Schnittfuge, zu Staub",
        Text::MetalFacing => "Plangedreht",
        Text::MetalTurned => "Abgedreht",
        Text::MetalCentred => "Beim Zentrieren",
        Text::MetalLeft => "Fertiger Schaft",
        Text::CareLabel => "Vorsicht",
        Text::CareSetUp => {
            "Futterschlüssel abziehen. Schutzbrille; keine Handschuhe, weiten Ärmel oder langen Haare nahe der Spindel. \
             Zum Messen anhalten."
        }
        Text::CareDisc => {
            "Trennscheibe: Schutzhaube dran, Augen- und Gehörschutz, im Schnitt nie verkanten; die Führungen vor \
             Schleifstaub abdecken. Das Teil unter 150 °C halten: keine Anlauffarbe."
        }
        Text::CareDiscSpeed => {
            "Die auf die Scheibe gedruckte Höchstdrehzahl muss über der der Maschine liegen; heruntergefallene oder alte \
             Scheiben wegwerfen."
        }
        Text::CareHard => {
            "Hartes Metall: Späne sind heiß und scharf, eine Schneide kann platzen. Schutzhaube zu lassen; ein hartes \
             Ende mit Hartmetall zentrieren."
        }
        Text::CareChips => "Lange Späne: Spindel anhalten, Spänehaken nehmen, nie die Hand.",
        Text::CareDust => {
            "Gusseisen gibt feinen, schleifenden Staub: Maske, Führungen abdecken, Staubsauger statt Druckluft."
        }
        Text::CareFire => {
            "Titanspäne können brennen: scharfes Werkzeug, keine Haufen feiner Späne, trockener Sand bereit, nie Wasser \
             ins Feuer."
        }
        Text::CarePolish => {
            "Polieren: Den Streifen mit offener Hand halten, nie um das Teil wickeln."
        }
        Text::CareLives => {
            "Über Teile, die Lasten heben, unter Druck stehen oder zu Fahrzeug, Flugzeug oder Medizinprodukt gehören, \
             entscheiden die örtlichen Vorschriften und zugelassene Fachleute, nicht diese Seite."
        }
        Text::CareEstimates => {
            "Zeiten und Massen sind Schätzungen. Wärmebehandlung und verborgene Fehler sind von hier nicht zu sehen."
        }
        Text::Cut(text) => cut::text(text),
        Text::Time(text) => time::text(text),
        Text::Jobs(text) => jobs::text(text),
        Text::Lathe(text) => lathe::text(text),
        Text::Owner(text) => owner::text(text),
        Text::Sharing(text) => sharing::text(text),
        Text::Print(text) => print::text(text),
        Text::Shop(text) => shop::text(text),
        Text::Receiver(text) => receiver::text(text),
        Text::Becoming(text) => becomes::text(text),
        Text::Strength(text) => strength::text(text),
        Text::Taper(text) => recognise::text(text),
        Text::WorkingFormula => "Formel",
        Text::WorkingNumbers => "Mit den Zahlen",
        Text::WorkingInputs => "Was einging",
        Text::WorkingSource => "Quelle",
        Text::WorkingEstimate => "Eine Schätzung",
        Text::WorkingInfeed => "Davon die Hälfte zustellen: Der Planschlitten fährt auf Radius.",
        Text::BadLink(error) => link::bad_link(error),
        Text::BadStore => {
            "Der in diesem Browser aufbewahrte Auftrag war nicht lesbar. Er wurde beiseitegelegt, nicht gelöscht."
        }
        Text::Visiting => {
            "Dieser Auftrag kam mit einem Link und wird nicht aufbewahrt. Die eigenen sind es, unverändert."
        }
        Text::KeepVisitor => "Übernehmen",
        Text::BackToOwn => "Zum eigenen",
        Text::UpdateWaits => {
            "Eine neuere Fassung der Seite ist bereit. Nichts Getipptes geht verloren."
        }
        Text::UpdateNow => "Jetzt nutzen",
        Text::Dismiss => "In Ordnung",
        Text::UnitsLabel => "Einheiten",
        Text::UnitsName(Units::Metric) => "mm",
        Text::UnitsName(Units::InchDecimal) => "Zoll, dezimal",
        Text::UnitsName(Units::InchFraction) => "Zoll, 1/64",
        Text::LanguageLabel => "Sprache",
        Text::LookLabel => "Aussehen",
        Text::LookName(look) => look_name(look),
        Text::ExamplesLabel => "Beispiele",
        Text::ExamplesLead => {
            "Jedes wird ein eigener Auftrag; der bisherige bleibt unter Aufträge."
        }
        Text::PrivacyLabel => "Datenschutz",
        Text::Privacy => {
            "Alles wird auf diesem Gerät berechnet und aufbewahrt. Ein Link enthält den ganzen Auftrag in dem Teil, den \
             Browser nie versenden; wer den Link hat, hat den Auftrag."
        }
        Text::ShareTitle => "Nacharbeit an einem Drehteil",
    }
}

pub(in crate::page::words) fn usual(value: &str) -> String {
    format!("üblich: {value}")
}

/// Dimensions that have no room on the drawing.
pub(in crate::page::words) fn hidden(words: Words, count: usize) -> String {
    words.count(
        count,
        "Maß steht hier nicht. Es steht in den Listen.",
        "Maße stehen hier nicht. Sie stehen in den Listen.",
    )
}

/// A numbered place of the drawing.
pub(in crate::page::words) fn mark(what: MarkKind, at: &str, in_head: bool) -> String {
    let what = match what {
        MarkKind::ThinnestWall => "die dünnste Wand um eine Bohrung",
        MarkKind::TightestCleanUp => "wo das Rohteil am wenigsten übrig hat",
        MarkKind::WeakestSection => "wo der fertige Schaft bei Biegung am schwächsten ist",
    };
    let head = if in_head { ", im Kopf" } else { "" };
    format!("{what}, {at} von der Schulter{head}")
}

pub(in crate::page::words) fn range(low: &str, high: &str) -> String {
    format!("{low} bis {high}")
}

/// A label with the row that it is about, such as a section.
pub(in crate::page::words) fn about_row(label: &str, row: &str) -> String {
    format!("{label}: {row}")
}

pub(in crate::page::words) fn off_diameter(off: &str) -> String {
    format!("nimmt {off} vom\u{a0}⌀")
}

/// The plan in plain words, for whoever is no machinist.
pub(in crate::page::words) fn plan_in_short(
    offcut: Option<&str>,
    shank: &str,
    finished: &str,
) -> String {
    let falls = match offcut {
        Some(offcut) => format!("Vom freien Ende fällt ein Stück von {offcut} ab."),
        None => "Nichts wird abgetrennt.".to_owned(),
    };
    format!(
        "{falls} Ein Schaft von {shank} bleibt und wird auf ⌀{finished} gedreht. Was ab ist, kommt nicht wieder dran."
    )
}

pub(in crate::page::words) fn findings_in_short(
    words: Words,
    stops: usize,
    cautions: usize,
) -> String {
    let to_read = words.count(cautions, "Hinweis", "Hinweise");
    let stop = words.count(stops, "Hindernis", "Hindernisse");
    match (stops, cautions) {
        (0, 0) => "Frei: Nichts spricht gegen den Plan.".to_owned(),
        (0, _) => format!("{to_read} im Plan zu lesen."),
        (_, 0) => format!("{stop} im Plan."),
        _ => format!("{stop} und {to_read} im Plan."),
    }
}

const fn measure_name(measure: Measure) -> &'static str {
    match measure {
        Measure::Entered => "Maß",
        Measure::TotalLength => "Gesamtlänge",
        Measure::TaperStart => "Großes Ende des Kegels",
        Measure::TaperEnd => "Kleines Ende des Kegels",
        Measure::CutFromFreeEnd => "Anriss zum Abtrennen, vom freien Ende",
        Measure::CutFromShoulder => "Anriss zum Abtrennen, von der Schulter",
        Measure::Kerf => "Schnittfuge",
        Measure::FacingTaken => "Plangedreht",
        Measure::ShankFinished => "Schaft nach dem Plandrehen",
        Measure::OffcutLength => "Länge des Abfallstücks",
        Measure::CentreDepth => "Zentriertiefe",
    }
}

const fn taper_series(series: TaperSeries) -> &'static str {
    match series {
        TaperSeries::Morse => "Morse",
        TaperSeries::BrownSharpe => "Brown & Sharpe",
        TaperSeries::Jarno => "Jarno",
        TaperSeries::Metric => "Metrisch",
        TaperSeries::Chuck => "Bohrfutter",
        TaperSeries::Jacobs => "Jacobs",
        TaperSeries::Steep => "Steilkegel 7/24",
        TaperSeries::R8 => "Spannzangenkegel",
    }
}

const fn thread_series(series: ThreadSeries) -> &'static str {
    match series {
        ThreadSeries::MetricCoarse => "Metrisch, Regel",
        ThreadSeries::MetricFine => "Metrisch, fein",
        ThreadSeries::Unc => "UNC",
        ThreadSeries::Unf => "UNF",
        ThreadSeries::Bsw => "BSW",
    }
}

const fn cut_off_method(method: CutOffMethod) -> &'static str {
    match method {
        CutOffMethod::HandDisc => "Trennscheibe von Hand",
        CutOffMethod::ChopWheel => "Trennscheibe im Ständer",
        CutOffMethod::Saw => "Säge",
        CutOffMethod::PartingTool => "Abstechstahl",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::CutAndFace => "Abtrennen",
        CutKind::FaceOnly => "Nur plandrehen",
        CutKind::AsItIs => "Kein Trennschnitt",
    }
}

const fn figure_name(shown: Shown) -> &'static str {
    match shown {
        Shown::CutFromFreeEnd => "Anriss zum Abtrennen, vom freien Ende",
        Shown::CutFromShoulder => "Anriss zum Abtrennen, von der Schulter",
        Shown::OffcutLength => "Länge des Abfallstücks",
        Shown::OffcutMass => "Masse des Abfallstücks",
        Shown::ShankAfterCut => "Schaft nach dem Trennen, vor dem Plandrehen",
        Shown::ShankFinished => "Schaft nach dem Plandrehen",
        Shown::Grip => "Was die Aufnahme spannen kann",
        Shown::StockOff => "Größter Abtrag vom Durchmesser",
        Shown::RoughEach => "Je Schruppschnitt, vom Durchmesser",
        Shown::SpindleSpeed => "Drehzahl des ersten Schnitts",
        Shown::ConeDepth => "Tiefe des Kegels",
        Shown::CentreDepth => "Zentriertiefe",
        Shown::Time => "Gesamtzeit",
        Shown::Cost => "Gesamtkosten",
        Shown::LargestDiameter => "Größter möglicher Durchmesser",
        Shown::Wall(_) => "Kleinste Wand",
        Shown::SleevePressure => "Fugendruck der Hülse",
        Shown::SleeveStress => "Spannung in der Hülse, innen",
        Shown::ShaftStress => "Spannung im Schaft darunter",
        Shown::SleeveHolds => "Drehmoment, das die Hülse hält",
        Shown::WarmerBy => "Hülse wärmer als der Schaft, zum Aufschieben",
        Shown::Kept(Share::Bending) => "Bleibt bei Biegung",
        Shown::Kept(Share::Torsion) => "Bleibt bei Torsion",
        Shown::Kept(Share::Stiffness) => "Bleibt an Biegesteifigkeit",
        Shown::Kept(Share::Twist) => "Bleibt an Torsionssteifigkeit",
        Shown::Shoulder(Load::Bending) => "Formzahl bei Biegung",
        Shown::Shoulder(Load::Torsion) => "Formzahl bei Torsion",
        Shown::Shoulder(Load::Tension) => "Formzahl bei Zug",
        Shown::AgainstYield => "Gegen bleibendes Biegen oder Verdrehen",
        Shown::AgainstFatigue => "Gegen Dauerbruch",
        Shown::MassBefore => "Masse, Ist",
        Shown::MassChips => "Späne, alle",
        Shown::MassAfter => "Masse, fertig",
        Shown::BalanceBefore => "Schwerpunkt, Ist",
        Shown::BalanceAfter => "Schwerpunkt, fertig",
        Shown::PassForce(_) => "Schnittkraft auf das Werkzeug",
        Shown::PassPower(_) => "Leistung an der Schneide, höchstens",
        Shown::PassSpeed(_) => "Drehzahl",
        Shown::Slender => "Auskragung durch Durchmesser",
        Shown::Deflection => "Größer um, wo Teil und Werkzeug am meisten weichen",
        Shown::Ridge => "Rillen des letzten Schnitts",
        Shown::CompoundAngle => "Oberschlitten, gegen die Drehachse",
        Shown::SizeNow => "Durchmesser jetzt, bei 20 °C",
        Shown::AfterNext => "Durchmesser nach diesem Schnitt",
        Shown::PolishNext => "Vom Durchmesser abzupolieren",
        Shown::TaperFound => "Am freien Ende dicker um",
        Shown::TailShift => "Reitstock, quer",
        Shown::Measured(_) => "Gemessen, bei 20 °C",
    }
}

const fn pass_kind(kind: PassKind) -> &'static str {
    match kind {
        PassKind::Rough => "Schruppen",
        PassKind::Last => "Schlichten",
        PassKind::Polish => "Polieren",
    }
}

const fn look_name(look: Look) -> &'static str {
    match look {
        Look::System => "wie das Gerät",
        Look::Light => "hell",
        Look::Dark => "dunkel",
        Look::Sunlight => "Sonne",
    }
}
