//! Spanish: what was found, and what to do about it.

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
    // The row that the finding is about, and the name of its field. Rows are of both genders, and are said without
    // an article.
    let row = match List::of(finding.field) {
        Some((list, Some(index))) => words.row(list, index),
        _ => words.field(finding.field).to_owned(),
    };
    let its_field = words.field(finding.field);
    let (what, mend) = match finding.code {
        Code::AllClear => (
            "Nada lo impide, hasta donde llegan las cifras.".to_owned(),
            "Compara la pieza con ellas antes de la primera pasada: no hay vuelta atrás.".to_owned(),
        ),
        Code::OutOfBounds => (
            format!(
                "Con «{}» así no se puede planear.",
                words.field_in_full(finding.field)
            ),
            fields::out_of_bounds(words, finding.field),
        ),
        Code::TitleTooLong => (
            "El nombre del trabajo es demasiado largo.".to_owned(),
            "Acórtalo a 80 caracteres.".to_owned(),
        ),
        Code::NoSection => (
            "El mango no tiene ningún tramo.".to_owned(),
            "Añade uno en «Recibido».".to_owned(),
        ),
        Code::TooMany => (
            "Hay más filas de las que caben en el plan.".to_owned(),
            List::of(finding.field).map_or_else(String::new, |(list, _)| {
                format!("Junta algunas: {} como mucho.", list.most())
            }),
        ),
        Code::TaperTooSteep => (
            format!("{row}: un cono de más de 90° de lado a lado no es un mango."),
            format!("Revisa «{its_field}»: 1 : 1/2 es lo más inclinado."),
        ),
        Code::GapBefore { by, mend } => (
            format!("{row}: en los {} de antes no se dice qué hay.", size(by)),
            format!(
                "Pon «{its_field}» en {}, o di qué hay ahí.",
                size(mend)
            ),
        ),
        Code::SectionsOverlap { by, mend } => (
            format!("{row} empieza {} antes de que acabe el anterior.", size(by)),
            if mend.to_mm() < 0.01 {
                "Revisa las longitudes de los dos.".to_owned()
            } else {
                format!(
                    "Pon «{its_field}» en {}, o revisa el anterior.",
                    size(mend)
                )
            },
        ),
        Code::LengthsDisagree { whole, sum } => (
            format!(
                "Los tramos acaban a {} del resalte, pero el mango entero mide {}.",
                size(sum),
                size(whole)
            ),
            "Mide otra vez. Vacía la longitud de todo el mango si los tramos son más seguros.".to_owned(),
        ),
        Code::FeatureOffShank { longest } => (
            format!("{row} cae fuera del mango."),
            format!(
                "El mango acaba a {} del resalte: revisa «{its_field}».",
                length(longest)
            ),
        ),
        Code::FeatureTooDeep => (
            format!("{row} llega al eje: no quedaría mango."),
            format!("Compara «{its_field}» con el diámetro de ahí."),
        ),
        Code::FeatureCutsNothing => (
            format!("{row} no toca el metal."),
            format!("Compara «{its_field}» con el diámetro de ahí."),
        ),
        Code::CrossHoleStays { at, longest } => (
            format!("{row} se queda en el mango acabado, {}.", place(at)),
            if longest.to_mm() < 0.5 {
                "Ningún mango se libra de él. Dile al dueño que se queda, y pasa ligero por encima."
                    .to_owned()
            } else {
                format!(
                    "Deja el mango en {}, o dile al dueño que se queda; pasa ligero por encima.",
                    long_at_most(longest)
                )
            },
        ),
        Code::BoreTooWide { at, outside } => (
            format!(
                "{row} es más ancho que la pieza, que ahí mide ⌀{}, {}.",
                size(outside),
                place(at)
            ),
            format!("Revisa «{its_field}» y hasta dónde llega."),
        ),
        Code::HolesMeet { by } => (
            format!(
                "Los agujeros de los dos extremos se encuentran: se solapan {}.",
                length(by)
            ),
            "Si la pieza es hueca de lado a lado, déjalo así; si no, mide otra vez las dos profundidades."
                .to_owned(),
        ),
        Code::StepNotWider => (
            format!("{row}: la parte ancha no es más ancha que el resto."),
            "Mide otra vez los dos diámetros.".to_owned(),
        ),
        Code::ReamBelowHole { by } => (
            format!(
                "{row} figura escariado {} más hondo que taladrado.",
                length(by)
            ),
            "Mide otra vez las dos profundidades.".to_owned(),
        ),
        Code::TaperComesToAPoint => (
            format!("{row}: este cono acabaría en punta antes de su final."),
            "Acorta el tramo, o revisa el tamaño del cono.".to_owned(),
        ),
        Code::LimitsCrossed { by } => (
            format!("El límite superior queda {} por debajo del inferior.", size(by)),
            "Cambia uno por otro, o revisa los signos.".to_owned(),
        ),
        Code::NoSuchLimits => (
            "La tabla no tiene desviaciones para este diámetro.".to_owned(),
            "Las clases llegan a 180 mm. Escribe desviaciones propias.".to_owned(),
        ),
        Code::ShankTooShort { short_by, longest } => (
            format!("Al mango le faltan {} de longitud.", length(short_by)),
            format!("Pide {} o menos.", long_at_most(longest)),
        ),
        Code::NotCleanedUp {
            at,
            short_by,
            largest,
            longest,
            because,
        } => (
            format!(
                "No hay metal bastante: al diámetro le faltan {}, {}. {}",
                size(short_by),
                place(at),
                in_the_way(words, because)
            ),
            becomes::enough_metal(words, largest, longest),
        ),
        Code::CleansUpLow { at, largest } => (
            format!(
                "Solo queda limpio en lo bajo de la tolerancia: {} es lo máximo, {}.",
                size(largest),
                place(at)
            ),
            "Céntrala mejor, deja menos para pulir, o acepta una zona que no se limpie.".to_owned(),
        ),
        Code::BreaksOut { at, smallest } => (
            format!("Un agujero asoma fuera del mango acabado, {}.", place(at)),
            format!(
                "Deja el diámetro acabado en {} o más.",
                at_least(smallest)
            ),
        ),
        Code::ThinWall { wall, advised, at } => (
            format!(
                "La pared alrededor de un agujero se queda en {}, {}.",
                length(wall),
                place(at)
            ),
            format!(
                "Convienen {} o más. Quita menos, o dile al dueño lo que aguanta.",
                length(advised)
            ),
        ),
        Code::ThreadLeft { length: left } => (
            format!(
                "El corte pasa por una rosca: quedan {} de ella.",
                length(left)
            ),
            "Quita la rebaba y repasa la rosca; mira si al tornillo le queda bastante rosca.".to_owned(),
        ),
        Code::ThreadCutAway => (
            "Toda la rosca se va con el recorte.".to_owned(),
            "Si un tirante o tornillo sujeta la pieza, taladra y rosca de nuevo, y díselo al dueño."
                .to_owned(),
        ),
        Code::ThreadBelowHole { by } => (
            format!(
                "La rosca figura {} más honda que su agujero.",
                length(by)
            ),
            "Mide otra vez las dos profundidades.".to_owned(),
        ),
        Code::GripTooShort { grip, least } => (
            format!(
                "El alojamiento sujeta solo {} de los {} que necesita.",
                length(grip),
                length(least)
            ),
            match finding.field {
                Field::ReceiverDepth => {
                    "Revisa su profundidad: no admite más mango.".to_owned()
                }
                _ => "Deja el mango más largo, o haz menores el radio y el chaflán.".to_owned(),
            },
        ),
        Code::ShoulderStandsOff { by } => (
            format!(
                "El alojamiento se llena antes de que asiente el resalte: quedan fuera {}.",
                length(by)
            ),
            "Acorta el mango si el resalte tiene que asentar; si no, déjalo.".to_owned(),
        ),
        Code::ReceiverTakesOthers { smallest, largest } => (
            "El alojamiento es para otros diámetros.".to_owned(),
            if smallest == largest {
                format!("Admite {}.", size(smallest))
            } else {
                format!("Admite de {} a {}.", size(smallest), size(largest))
            },
        ),
        Code::LimitsAsked { lower, upper } => (
            "El alojamiento pide otros límites del diámetro.".to_owned(),
            format!("Pide de {} a {}.", size(lower), size(upper)),
        ),
        Code::MayNotGoIn { most } => (
            format!(
                "El mango puede ser hasta {} mayor que el agujero.",
                size(most)
            ),
            "Toma una tolerancia más holgada si tiene que entrar a mano.".to_owned(),
        ),
        Code::FilletMeetsEdge { largest } => (
            "El radio de acuerdo es mayor que la arista del alojamiento: el resalte no asienta."
                .to_owned(),
            if largest.to_mm() < 0.005 {
                "La arista es viva: mátala, o haz una garganta en el resalte.".to_owned()
            } else {
                format!(
                    "Toma {} o menos, o haz una garganta en el resalte.",
                    at_most(largest)
                )
            },
        ),
        Code::ShoulderTooLow { height, least } => (
            format!("El resalte tiene solo {} de alto.", size(height)),
            format!(
                "El aro debería apoyar en {} o más: quita más, o toma un aro con un chaflán menor.",
                at_least(least)
            ),
        ),
        Code::FlatMissesShank { least } => (
            "El mango es demasiado corto para el plano que aprieta el portaútil.".to_owned(),
            format!("Déjalo en {} o más.", long_at_least(least)),
        ),
        Code::SleeveTooThin { wall, least } => (
            format!("El casquillo acabado tiene solo {} de pared.", length(wall)),
            format!(
                "Déjale {} por lo menos: tornea el mango más fino o haz mayor el exterior.",
                long_at_least(least)
            ),
        ),
        Code::SleeveYields => (
            "Con el ajuste más apretado cedería el casquillo o el mango.".to_owned(),
            "Toma un ajuste más suave o un material más resistente.".to_owned(),
        ),
        Code::SleeveMaySlip { held } => (
            format!(
                "Con el ajuste más flojo el casquillo solo aguanta {}.",
                words.value(Value::Torque(held))
            ),
            "Toma un ajuste más apretado o un casquillo más largo, o ponle pasador o adhesivo."
                .to_owned(),
        ),
        Code::CaseTurnedAway { left } => (
            match left {
                Some(left) => format!(
                    "La capa dura se va al tornear: en la superficie quedan {}.",
                    words.value(Value::Hardness(left))
                ),
                None => "La capa dura se va al tornear.".to_owned(),
            },
            "Díselo al dueño: una superficie blanda se gasta y se marca. Se puede volver a endurecer, o elegir otro \
             alojamiento."
                .to_owned(),
        ),
        Code::CaseDepthUnknown => (
            "La pieza tiene una capa dura, y no está anotada su profundidad.".to_owned(),
            "Mira la cara cortada, o pruébala con una lima, y anota la profundidad.".to_owned(),
        ),
        Code::DutyIncomplete => (
            format!("Falta «{its_field}»."),
            "Anótalo, o no contará aquello de lo que forma parte.".to_owned(),
        ),
        Code::DutyTooMuch { safety } => (
            format!(
                "El mango acabado solo aguanta {} veces su carga, estimado.",
                show::trimmed(safety, 2)
            ),
            "Déjalo más grueso, dale un radio mayor, o pídele menos.".to_owned(),
        ),
        Code::SafetyLow { safety } => (
            format!(
                "El mango acabado aguanta unas {} veces su carga: poca reserva.",
                show::trimmed(safety, 2)
            ),
            "Déjalo más grueso o dale un radio mayor, si hay sitio.".to_owned(),
        ),
        Code::ShorterThanStandard { standard } => (
            "El mango es más corto que el normalizado.".to_owned(),
            format!(
                "El normalizado mide {}: comprueba que aún se sujeta.",
                length(standard)
            ),
        ),
        Code::CountersinkTooWide { end } => (
            "El avellanado de centrado es mayor que el extremo.".to_owned(),
            if end.to_mm() < 0.5 {
                "El chaflán no deja nada plano en el extremo: hazlo antes menor.".to_owned()
            } else {
                format!("La parte plana del extremo mide {}. No la pases.", at_most(end))
            },
        ),
        Code::CountersinkInHole { bore } => (
            format!(
                "El avellanado de centrado no es mayor que el agujero de {} que hay ahí.",
                size(bore)
            ),
            format!("Hazlo mayor de {}, o tapona el agujero.", at_least(bore)),
        ),
        Code::CountersinkOnThread { major } => (
            "El punto giratorio apoyaría en la rosca.".to_owned(),
            format!("Haz el avellanado mayor de {}.", at_least(major)),
        ),
        Code::NoCentreDrill { largest } => (
            "Ninguna broca de centrar normalizada hace este avellanado.".to_owned(),
            format!(
                "Van de 0,5 mm a {}. También sirve un avellanador de 60° tras un taladro previo.",
                length(largest)
            ),
        ),
        Code::PointTouchesBottom { least_depth } => (
            "La punta del punto giratorio tocaría el fondo del agujero.".to_owned(),
            format!(
                "Taladra antes hasta que el agujero baje {} desde la cara acabada.",
                length(least_depth)
            ),
        ),
        Code::FilletTooLarge { largest } => (
            "El radio de acuerdo es más alto que el resalte.".to_owned(),
            format!("Toma {} o menos.", at_most(largest)),
        ),
        Code::FilletInPart { largest } => (
            "No hay metal para el radio de acuerdo entero.".to_owned(),
            format!(
                "Toma {} o menos, o confórmate con un radio a medias.",
                at_most(largest)
            ),
        ),
        Code::NoStraightShank => (
            "El radio y el chaflán no dejan mango recto.".to_owned(),
            "Hazlos menores, o el mango más largo.".to_owned(),
        ),
        Code::NoShoulder => (
            "La cabeza no es mayor que el mango acabado: no hay resalte.".to_owned(),
            "Revisa el diámetro de la cabeza; sin resalte el alojamiento no tiene tope.".to_owned(),
        ),
        Code::SharpShoulder => (
            "Los mangos rompen por un rincón vivo en el resalte.".to_owned(),
            "Dale por lo menos el radio de punta de la herramienta.".to_owned(),
        ),
        Code::SharpEnd => (
            "El extremo queda con arista viva.".to_owned(),
            "Mata todas las aristas: basta con 0,3 mm.".to_owned(),
        ),
        Code::FacedBack { by } => (
            format!(
                "No hay sitio para tronzar: el extremo se refrenta {}.",
                length(by)
            ),
            "Refréntalo en varias pasadas; no marques nada para serrar.".to_owned(),
        ),
        Code::LengthAlready => (
            "El mango ya tiene su longitud.".to_owned(),
            "No hay que cortar. Al refrentarlo limpio queda un poco más corto.".to_owned(),
        ),
        Code::NothingToTurn => (
            "No hay nada que cilindrar hasta la demasía de pulido.".to_owned(),
            "Púlelo o rectifícalo a medida.".to_owned(),
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
            "Este material es más duro que una sierra.".to_owned(),
            "Córtalo con disco abrasivo, a mano o en tronzadora.".to_owned(),
        ),
        Code::HardEnd => (
            "El extremo cortado puede ser demasiado duro para una broca de centrar corriente."
                .to_owned(),
            "Refrenta antes con metal duro, y centra con metal duro o con punta rectificada."
                .to_owned(),
        ),
    };
    FindingWords { what, mend }
}

pub(super) fn in_the_way(words: Words, because: Because) -> String {
    match because {
        Because::Section(index) => {
            format!("{} no es más grueso.", words.row(List::Sections, index))
        }
        Because::Feature(index) => {
            format!("{} estorba.", words.row(List::Features, index))
        }
    }
}
