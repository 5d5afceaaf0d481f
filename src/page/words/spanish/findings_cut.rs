//! Spanish: what was found of lathe, tool, passes and holding, and what to do about it.

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
                Field::LastCut => "Una pasada de acabado",
                _ => "Una pasada de desbaste",
            };
            (
                format!(
                    "{which} de {} de penetración es más fina de lo que corta esta herramienta: solo roza.",
                    size(infeed)
                ),
                format!(
                    "Da {} de penetración o más, o usa una herramienta más afilada.",
                    words.size_at_least(least)
                ),
            )
        }
        Code::LastCutsReduced { each } => (
            format!(
                "Hay menos metal del que piden dos pasadas de acabado: cada una quita {} del diámetro.",
                size(each)
            ),
            "Mide antes de la primera: no hay desbaste del que aprender.".to_owned(),
        ),
        Code::LastCutsLighter { each } => (
            format!(
                "Las pasadas de acabado que pides son demasiado fuertes: en el plan cada una quita {} del diámetro.",
                size(each)
            ),
            "Pide solo eso, o sujeta la pieza con más rigidez.".to_owned(),
        ),
        Code::ToolWithCare { care } => own(care_words(care)),
        Code::SoftCoreUnderTool { pass } => (
            format!(
                "Desde la pasada {pass} la herramienta está bajo la capa dura: el nitruro de boro se pega al acero \
                 blando."
            ),
            "Cambia ahí a metal duro.".to_owned(),
        ),
        Code::NoGears => (
            format!("{}: la lista está vacía.", words.field_in_full(field)),
            "Escribe lo que pone la chapa del cabezal, o elige «Cualquiera, sin escalones»."
                .to_owned(),
        ),
        Code::GearsCrossed => (
            format!(
                "{}: lo más bajo queda por encima.",
                words.field_in_full(field)
            ),
            "Cambia uno de los dos.".to_owned(),
        ),
        Code::NameTooLong => {
            let most = match field {
                Field::Rate(_) => Job::MOST_CURRENCY_CHARACTERS,
                _ => Job::MOST_NAME_CHARACTERS,
            };
            (
                format!("{}: el texto es demasiado largo.", words.field(field)),
                format!("Acórtalo a {most} caracteres."),
            )
        }
        Code::TooLargeToSwing { largest } => (
            format!(
                "La pieza mide ⌀{} y no pasa por encima del carro transversal.",
                size(largest)
            ),
            "Usa un torno mayor, o revisa el diámetro que admite.".to_owned(),
        ),
        Code::NoPass { limit, share } => (
            format!(
                "Hasta la pasada más ligera pide el {} de lo que permite {}.",
                show::share(share),
                cut::limit_inside(limit)
            ),
            cut::ease(limit).to_owned(),
        ),
        Code::PinsOverlap { other } => (
            format!(
                "{} quita el mismo metal que la pasada fija {other}.",
                pin(field)
            ),
            "Cambia el diámetro o la penetración de una de ellas.".to_owned(),
        ),
        Code::PinOutside { start, end } => (
            format!("{} cae fuera del metal que se quita.", pin(field)),
            format!(
                "Tenla entre ⌀{} y ⌀{}.",
                words.size_bare(start),
                size(end)
            ),
        ),
        Code::PinBreaks { limit, share } => (
            format!(
                "{} pide el {} de lo que permite {}.",
                pin(field),
                show::share(share),
                cut::limit_inside(limit)
            ),
            "Hazla más ligera o más lenta, o suéltala.".to_owned(),
        ),
        Code::GivesWay { by, allowed } => (
            format!(
                "Pieza y torno ceden: el diámetro variará {}, y se permiten {}.",
                words.fine(by),
                words.fine(allowed)
            ),
            "Da pasadas de acabado más ligeras, acorta el voladizo o apoya el extremo.".to_owned(),
        ),
        Code::RoughnessNotReached { expected } => (
            format!(
                "Torneado así, Ra puede llegar a {}.",
                words.fine(expected)
            ),
            "Deja demasía para pulir, o toma un radio de punta mayor u otra velocidad.".to_owned(),
        ),
        Code::SpeedAboveWindow { highest } => (
            "La velocidad de corte que pides es más de lo que aguanta esta herramienta en este material."
                .to_owned(),
            format!("Toma {} o menos.", words.units().speed(highest)),
        ),
        Code::TimesCrossed => (
            format!("{} no está en orden.", words.field_in_full(field)),
            "«Como poco» es el tiempo más corto; «Como mucho», el más largo.".to_owned(),
        ),
        Code::MayChatter { ratio, easy } => (
            format!(
                "La pieza sobresale {} veces su diámetro y puede vibrar.",
                show::decimal(ratio, 1)
            ),
            format!(
                "Hasta {} no hay problema: acorta el voladizo, apoya el extremo, o pon una luneta.",
                show::trimmed(easy, 1)
            ),
        ),
        Code::ShortGrip { least } => (
            "Las garras cogen tan poca longitud que la pieza puede volcar y salirse.".to_owned(),
            format!(
                "Sujeta {} por lo menos, o apoya el extremo.",
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
            "Harían falta más de 200 pasadas.",
            "Da más penetración al desbastar.",
        ),
        Code::ToolCannotCut => (
            "Esta herramienta no corta este material.",
            "Elige una herramienta más dura, o rectifícalo.",
        ),
        Code::CobaltGradeNeeded => (
            "El acero rápido corriente no aguanta este material.",
            "Usa uno con cobalto, o metal duro.",
        ),
        Code::ToolAtItsLimit => (
            "Esta herramienta está aquí al límite: solo pasadas ligeras de acabado, y no más de 55 HRC.",
            "Usa nitruro de boro, o rectifícalo.",
        ),
        Code::NoRowOfPasses => (
            "Cada pasada ligera es posible, pero ninguna serie acaba en la medida.",
            "Permite más penetración, pasadas de acabado más ligeras o un tambor más fino.",
        ),
        Code::NoRate => (
            "Se eligió el menor coste, pero no hay tarifa: el plan busca el menor tiempo.",
            "Anota lo que cuesta una hora de taller.",
        ),
        Code::CentreWithoutHole => (
            "Se eligió un punto giratorio, y el extremo no lleva avellanado de centrado.",
            "Dale uno en «Deseado», o sujétala sin punto.",
        ),
        Code::DialNotPossible => (
            "Ningún calzo mueve tanto la pieza.",
            "Revisa las lecturas; si son buenas, sujétala de nuevo, en cuatro garras.",
        ),
        Code::DialIncomplete => (
            "Faltan lecturas del comparador.",
            "Lee por lo menos dos cuartos seguidos; para ver si está torcida, las dos líneas en dos sitios separados.",
        ),
        Code::GrindInstead => (
            "Tornear es aquí el peor camino.",
            "Rectifícala, o mándala a rectificar.",
        ),
        // The catalogue of the other findings names those that stand here.
        _ => ("", ""),
    }
}

const fn care_words(care: Care) -> (&'static str, &'static str) {
    match care {
        Care::NoInterruptedCut => (
            "La cerámica se rompe en planos, chaveteros y agujeros transversales.",
            "Solo cortes seguidos, o usa nitruro de boro.",
        ),
        Care::NearlyTooSoft => (
            "La pieza es casi demasiado blanda para esta herramienta: se gasta, y la viruta puede pegarse.",
            "Usa metal duro, o vigila el filo.",
        ),
        Care::DustAndSlow => (
            "Rectificar en el torno es lento, y el polvo estropea las guías.",
            "Tapa las guías, recoge el polvo, y limpia antes de mover el carro.",
        ),
        Care::HardnessUncertain => (
            "En un extremo de su dureza la pieza no le va a esta herramienta.",
            "Mide la dureza, o prueba la herramienta con una pasada ligera.",
        ),
        Care::CobaltGrade | Care::LightCuts | Care::Emergency => (
            "Esta herramienta está cerca de su límite en este material.",
            "Da pasadas ligeras.",
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
