//! Spanish: the fixed texts.

use skimwright::cutting::PassKind;
use skimwright::job::{BoreBottom, CentreOrder, CutOffMethod};
use skimwright::plan::Level;
use skimwright::quantity::Units;
use skimwright::rework::CutKind;
use skimwright::sheet::{MarkKind, Measure};
use skimwright::strength::Load;
use skimwright::tables::{TaperSeries, ThreadSeries};

use super::{
    becomes, cut, fields, groups, items, jobs, lathe, link, owner, print, receiver, recognise,
    sharing, shop, stages, strength, time,
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
        Text::JobUntitled => "Trabajo sin nombre",
        Text::StageName(stage) => stages::stage_name(stage),
        Text::StageLead(stage) => stages::stage_lead(stage),
        Text::StagesLabel => "Etapas del trabajo",
        Text::Undo => "Deshacer",
        Text::Redo => "Rehacer",
        Text::Share => "Compartir",
        Text::Menu => "Menú",
        Text::Close => "Cerrar",
        Text::SavedState(saved) => jobs::saved(saved),
        Text::DrawingLabel => "Dibujo de la pieza, a escala",
        Text::DrawingHint => "Toca una cota para cambiarla.",
        Text::DrawingKeyReceived => "recibido",
        Text::DrawingKeyFinished => "acabado",
        Text::DrawingKeyRemoved => "se quita",
        Text::DrawingKeyCut => "tronzar aquí",
        Text::DrawingKeyKerf => "ancho del corte",
        Text::DrawingKeySection => "en sección",
        Text::DrawingKeyThread => "rosca",
        Text::DrawingKeyFlat => "plano",
        Text::DrawingKeyAxis => "eje",
        Text::DrawingMissing => {
            "Aún no hay nada que dibujar: falta una medida de la pieza o no es posible."
        }
        Text::DrawingBroken => {
            "Los tramos largos y lisos se acortan entre líneas de rotura; las cotas dan las longitudes reales."
        }
        Text::DrawingLarger => "Ampliar",
        Text::DrawingSmaller => "Reducir",
        Text::DrawingWhole => "Entero",
        Text::DimensionsAll => "Ver todas",
        Text::DimensionsFewer => "Ver menos",
        Text::SaveSvg => "Guardar en SVG",
        Text::SavePng => "Guardar en PNG",
        Text::Done => "Listo",
        Text::Measure(measure) => measure_name(measure),
        Text::GroupPart => "La pieza",
        Text::GroupMoreOfPart => "Más de la pieza",
        Text::GroupErrors => "Qué seguras son las medidas",
        Text::GroupList(list) => items::group(list),
        Text::GroupDuty => "Qué tiene que aguantar",
        Text::GroupFinished => "Mango acabado",
        Text::GroupReceiver => "Dónde va a entrar",
        Text::GroupCuttingOff => "Tronzar, refrentar, centrar",
        Text::GroupTurning => "Torneado",
        Text::GroupTimes => "Tiempos por pasada",
        Text::NoneListed(list) => items::none(list),
        Text::Full => "La lista está llena.",
        Text::Add(list) => items::add(list),
        Text::Remove => "Quitar",
        Text::MoveOn(list) => items::move_on(list),
        Text::MoveBack(list) => items::move_back(list),
        Text::Copy(list) => items::copy(list),
        Text::Kind(kind) => items::kind(kind),
        Text::AtShoulder => "Junto al resalte",
        Text::BehindOneBefore => "A continuación del anterior",
        Text::From(datum) => items::from(datum),
        Text::Flats(flats) => items::flats(flats),
        Text::End(end) => items::end(end),
        Text::Bottom(BoreBottom::DrillPoint) => "Punta de broca, 118°",
        Text::Bottom(BoreBottom::Flat) => "Plano",
        Text::TaperSeries(series) => taper_series(series),
        Text::ThreadSeries(series) => thread_series(series),
        Text::Material(material) => groups::material(material),
        Text::Tool(tool) => groups::tool(tool),
        Text::CutOffMethod(method) => cut_off_method(method),
        Text::CentreOrder(CentreOrder::AfterFacing) => "Después de refrentar",
        Text::CentreOrder(CentreOrder::BeforeFacing) => "Antes de refrentar",
        Text::ToleranceClass(class) => class.code(),
        Text::ToleranceLimits => "Desviaciones propias",
        Text::KeysLabel => "Teclas que faltan en el teléfono",
        Text::KeySlash => "Barra de fracción",
        Text::KeyMinus => "Menos",
        Text::KeyPlus => "Más",
        Text::KeyInch => "Pulgada",
        Text::KeyMillimetre => "mm, milímetro",
        Text::KeySpace => "Espacio",
        Text::KeySemicolon => "Punto y coma",
        Text::FiguresLabel => "Las cinco cifras",
        Text::FigureName(shown) => figure_name(shown),
        Text::FigureMissing => "aún no",
        Text::FigureCut => "Tronzar",
        Text::FigureShank => "Mango que queda",
        Text::FigureStock => "Penetración",
        Text::FigureCentre => "Prof. de centrado",
        Text::FigureTime => "Tiempo total",
        Text::FromFreeEnd => "desde el extremo libre",
        Text::ToFaceOff => "por refrentar",
        Text::Gripped => "sujeción",
        Text::NothingOff => "nada",
        Text::NoCentreWanted => "no se pide",
        Text::OnDrill => "broca de centrar",
        Text::OnHole => "en agujero de",
        Text::CutKind(kind) => cut_kind(kind),
        Text::FindingsLabel => "Observaciones",
        Text::LevelName(Level::Clear) => "Libre",
        Text::LevelName(Level::Caution) => "Aviso",
        Text::LevelName(Level::Stop) => "Alto",
        Text::ToField => "Cambiar",
        Text::PassesLabel => "Pasadas",
        Text::PassNumber => "N.º",
        Text::PassKind(kind) => pass_kind(kind),
        Text::PassDial => "Tambor",
        Text::PassInfeed => "Penetr.",
        Text::PassOff => "Del ⌀",
        Text::PassAfter => "⌀ tras",
        Text::PassMetal => "Largo",
        Text::PassSpeed => "Giro",
        Text::PassFeed => "Avance",
        Text::PassTime => "Tiempo",
        Text::PassMarks => "Notas",
        Text::NoPasses => "Sin pasadas: no hay nada que cilindrar.",
        Text::NoPassesYet => "Aún sin pasadas: las observaciones dicen por qué.",
        Text::PassesNote => {
            "Toca una pasada para ver sus fuerzas y sus límites. Para y mide después de cada una de las dos pasadas \
             de acabado: la primera enseña lo que hará la segunda."
        }
        Text::MoreLabel => "Más cifras",
        Text::LimitsLabel => "Diámetro acabado, de menor a mayor",
        Text::SectionsOffLabel => "Se quita del diámetro",
        Text::MetalLabel => "Adónde va el metal del mango",
        Text::MetalReceived => "Mango recibido",
        Text::MetalOffcut => "Recorte",
        Text::MetalKerf => "Corte, hecho polvo",
        Text::MetalFacing => "Refrentado",
        Text::MetalTurned => "Cilindrado",
        Text::MetalCentred => "Centrado",
        Text::MetalLeft => "Mango acabado",
        Text::CareLabel => "Ten cuidado",
        Text::CareSetUp => {
            "Quita la llave del plato. Gafas puestas; ni guantes, ni mangas anchas, ni pelo largo cerca del husillo. \
             Páralo para medir."
        }
        Text::CareDisc => {
            "Disco abrasivo: protector puesto, ojos y oídos protegidos, no lo ladees nunca en el corte; tapa las guías \
             contra el abrasivo. No dejes que la pieza pase de 150 °C: que no coja color."
        }
        Text::CareDiscSpeed => {
            "La velocidad máxima impresa en el disco tiene que ser mayor que la de la máquina; tira los discos que se hayan caído \
             o viejos."
        }
        Text::CareHard => {
            "Pieza dura: las virutas queman y cortan, y un filo puede estallar. Deja la pantalla bajada; centra un \
             extremo duro con broca de metal duro."
        }
        Text::CareChips => "Virutas largas: detén el husillo y usa un gancho, nunca la mano.",
        Text::CareDust => {
            "La fundición suelta un polvo fino y abrasivo: mascarilla, guías tapadas, y aspirador en vez de aire a \
             presión."
        }
        Text::CareFire => {
            "Las virutas de titanio pueden arder: herramienta afilada, nada de montones de viruta fina, arena seca a \
             mano, nunca agua al fuego."
        }
        Text::CarePolish => {
            "Pulir: sujeta la tira con la mano abierta, nunca enrollada en la pieza."
        }
        Text::CareLives => {
            "En piezas que izan cargas, aguantan presión o son de un vehículo, un avión o un aparato médico deciden las \
             normas del lugar y un técnico titulado, no esta página."
        }
        Text::CareEstimates => {
            "Los tiempos y las masas son estimaciones. El tratamiento térmico y los defectos ocultos no se ven desde \
             aquí."
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
        Text::WorkingFormula => "Fórmula",
        Text::WorkingNumbers => "Con los números",
        Text::WorkingInputs => "De qué sale",
        Text::WorkingSource => "Fuente",
        Text::WorkingEstimate => "Una estimación",
        Text::WorkingInfeed => "Mete la mitad: el carro transversal se mueve en radio.",
        Text::BadLink(error) => link::bad_link(error),
        Text::BadStore => {
            "El trabajo guardado en este navegador no se pudo leer. Se ha apartado, no borrado."
        }
        Text::Visiting => {
            "Este trabajo vino con un enlace y no se guarda. Los tuyos sí, y sin cambios."
        }
        Text::KeepVisitor => "Quedármelo",
        Text::BackToOwn => "Volver al mío",
        Text::UpdateWaits => {
            "Hay una versión más nueva de la página. No se pierde nada de lo escrito."
        }
        Text::UpdateNow => "Usarla ya",
        Text::Dismiss => "De acuerdo",
        Text::UnitsLabel => "Unidades",
        Text::UnitsName(Units::Metric) => "mm",
        Text::UnitsName(Units::InchDecimal) => "pulgada, decimal",
        Text::UnitsName(Units::InchFraction) => "pulgada, 1/64",
        Text::LanguageLabel => "Idioma",
        Text::LookLabel => "Aspecto",
        Text::LookName(look) => look_name(look),
        Text::ExamplesLabel => "Ejemplos",
        Text::ExamplesLead => "Cada uno es un trabajo aparte; el tuyo sigue en Trabajos.",
        Text::PrivacyLabel => "Privacidad",
        Text::Privacy => {
            "Todo se calcula y se guarda en este aparato. Un enlace lleva el trabajo entero en la parte que los \
             navegadores nunca envían; quien tiene el enlace tiene el trabajo."
        }
        Text::ShareTitle => "Remecanizado de una pieza torneada",
    }
}

pub(in crate::page::words) fn usual(value: &str) -> String {
    format!("lo habitual: {value}")
}

/// Dimensions that have no room on the drawing.
pub(in crate::page::words) fn hidden(words: Words, count: usize) -> String {
    words.count(
        count,
        "cota no cabe aquí. Está en las listas.",
        "cotas no caben aquí. Están en las listas.",
    )
}

/// A numbered place of the drawing.
pub(in crate::page::words) fn mark(what: MarkKind, at: &str, in_head: bool) -> String {
    let what = match what {
        MarkKind::ThinnestWall => "la pared más fina alrededor de un agujero",
        MarkKind::TightestCleanUp => "donde menos material sobra",
        MarkKind::WeakestSection => "donde el mango acabado es más débil a flexión",
    };
    let head = if in_head { ", en la cabeza" } else { "" };
    format!("{what}, a {at} del resalte{head}")
}

pub(in crate::page::words) fn range(low: &str, high: &str) -> String {
    format!("{low} a {high}")
}

/// A label with the row that it is about, such as a section.
pub(in crate::page::words) fn about_row(label: &str, row: &str) -> String {
    format!("{label}: {}", fields::lower_first(row))
}

pub(in crate::page::words) fn off_diameter(off: &str) -> String {
    format!("quita {off} del\u{a0}⌀")
}

/// The plan in plain words, for whoever is no machinist.
pub(in crate::page::words) fn plan_in_short(
    offcut: Option<&str>,
    shank: &str,
    finished: &str,
) -> String {
    let falls = match offcut {
        Some(offcut) => format!("Del extremo libre cae un trozo de {offcut}."),
        None => "No se corta nada.".to_owned(),
    };
    format!(
        "{falls} Queda un mango de {shank}, que se tornea a ⌀{finished}. Lo que se quita no se puede volver a poner."
    )
}

pub(in crate::page::words) fn findings_in_short(
    words: Words,
    stops: usize,
    cautions: usize,
) -> String {
    let to_read = words.count(cautions, "aviso", "avisos");
    let stop = words.count(stops, "impedimento", "impedimentos");
    match (stops, cautions) {
        (0, 0) => "Libre: nada impide el plan.".to_owned(),
        (0, _) => format!("{to_read} por leer en el plan."),
        (_, 0) => format!("{stop} en el plan."),
        _ => format!("{stop} y {to_read} en el plan."),
    }
}

const fn measure_name(measure: Measure) -> &'static str {
    match measure {
        Measure::Entered => "Cota",
        Measure::TotalLength => "Longitud total",
        Measure::TaperStart => "Extremo grande del cono",
        Measure::TaperEnd => "Extremo pequeño del cono",
        Measure::CutFromFreeEnd => "Marca para tronzar, desde el extremo libre",
        Measure::CutFromShoulder => "Marca para tronzar, desde el resalte",
        Measure::Kerf => "Ancho del corte",
        Measure::FacingTaken => "Refrentado",
        Measure::ShankFinished => "Mango tras refrentar",
        Measure::OffcutLength => "Longitud del recorte",
        Measure::CentreDepth => "Profundidad de centrado",
    }
}

const fn taper_series(series: TaperSeries) -> &'static str {
    match series {
        TaperSeries::Morse => "Morse",
        TaperSeries::BrownSharpe => "Brown & Sharpe",
        TaperSeries::Jarno => "Jarno",
        TaperSeries::Metric => "Métrico",
        TaperSeries::Chuck => "Portabrocas",
        TaperSeries::Jacobs => "Jacobs",
        TaperSeries::Steep => "Cono 7/24",
        TaperSeries::R8 => "Cono de pinza",
    }
}

const fn thread_series(series: ThreadSeries) -> &'static str {
    match series {
        ThreadSeries::MetricCoarse => "Métrica, paso normal",
        ThreadSeries::MetricFine => "Métrica, paso fino",
        ThreadSeries::Unc => "UNC",
        ThreadSeries::Unf => "UNF",
        ThreadSeries::Bsw => "BSW",
    }
}

const fn cut_off_method(method: CutOffMethod) -> &'static str {
    match method {
        CutOffMethod::HandDisc => "Disco abrasivo a mano",
        CutOffMethod::ChopWheel => "Tronzadora de disco abrasivo",
        CutOffMethod::Saw => "Sierra",
        CutOffMethod::PartingTool => "Herramienta de tronzar",
    }
}

const fn cut_kind(kind: CutKind) -> &'static str {
    match kind {
        CutKind::CutAndFace => "Tronzar",
        CutKind::FaceOnly => "Solo refrentar",
        CutKind::AsItIs => "Sin corte",
    }
}

const fn figure_name(shown: Shown) -> &'static str {
    match shown {
        Shown::CutFromFreeEnd => "Marca para tronzar, desde el extremo libre",
        Shown::CutFromShoulder => "Marca para tronzar, desde el resalte",
        Shown::OffcutLength => "Longitud del recorte",
        Shown::OffcutMass => "Masa del recorte",
        Shown::ShankAfterCut => "Mango tras tronzar, antes de refrentar",
        Shown::ShankFinished => "Mango tras refrentar",
        Shown::Grip => "Lo que puede sujetar el alojamiento",
        Shown::StockOff => "Lo máximo que se quita del diámetro",
        Shown::RoughEach => "Cada pasada de desbaste, del diámetro",
        Shown::SpindleSpeed => "Velocidad de giro de la primera pasada",
        Shown::ConeDepth => "Profundidad del cono",
        Shown::CentreDepth => "Profundidad de centrado",
        Shown::Time => "Tiempo total",
        Shown::Cost => "Coste total",
        Shown::LargestDiameter => "Mayor diámetro posible",
        Shown::Wall(_) => "Pared mínima",
        Shown::SleevePressure => "Presión del casquillo",
        Shown::SleeveStress => "Tensión en el casquillo, por dentro",
        Shown::ShaftStress => "Tensión en el mango, debajo",
        Shown::SleeveHolds => "Par que aguanta el casquillo",
        Shown::WarmerBy => "Casquillo más caliente que el mango, para calarlo",
        Shown::Kept(Share::Bending) => "Queda a flexión",
        Shown::Kept(Share::Torsion) => "Queda a torsión",
        Shown::Kept(Share::Stiffness) => "Queda de rigidez a flexión",
        Shown::Kept(Share::Twist) => "Queda de rigidez a torsión",
        Shown::Shoulder(Load::Bending) => "Concentración de tensión a flexión",
        Shown::Shoulder(Load::Torsion) => "Concentración de tensión a torsión",
        Shown::Shoulder(Load::Tension) => "Concentración de tensión a tracción",
        Shown::AgainstYield => "Contra la deformación permanente",
        Shown::AgainstFatigue => "Contra la rotura por fatiga",
        Shown::MassBefore => "Masa al recibirla",
        Shown::MassChips => "Virutas, todas",
        Shown::MassAfter => "Masa al acabarla",
        Shown::BalanceBefore => "Centro de gravedad al recibirla",
        Shown::BalanceAfter => "Centro de gravedad al acabarla",
        Shown::PassForce(_) => "Fuerza de corte sobre la herramienta",
        Shown::PassPower(_) => "Potencia en el filo, como mucho",
        Shown::PassSpeed(_) => "Velocidad de giro",
        Shown::Slender => "Voladizo entre diámetro",
        Shown::Deflection => "Más grueso, donde más ceden pieza y herramienta",
        Shown::Ridge => "Crestas de la última pasada",
        Shown::CompoundAngle => "Carro orientable, respecto al eje del torno",
        Shown::SizeNow => "Diámetro ahora, a 20 °C",
        Shown::AfterNext => "Diámetro tras esta pasada",
        Shown::PolishNext => "Por pulir, del diámetro",
        Shown::TaperFound => "Más grueso en el extremo libre",
        Shown::TailShift => "Contrapunto, de través",
        Shown::Measured(_) => "Medido, a 20 °C",
    }
}

const fn pass_kind(kind: PassKind) -> &'static str {
    match kind {
        PassKind::Rough => "desbaste",
        PassKind::Last => "acabado",
        PassKind::Polish => "pulido",
    }
}

const fn look_name(look: Look) -> &'static str {
    match look {
        Look::System => "como el aparato",
        Look::Light => "claro",
        Look::Dark => "oscuro",
        Look::Sunlight => "a pleno sol",
    }
}
